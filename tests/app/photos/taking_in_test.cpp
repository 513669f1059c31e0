// SPDX-License-Identifier: GPL-3.0-or-later
// How photos come in: dropped, pasted, chosen, waiting for the next reading, or refused.
#include "photos_fixture.h"

#include "dialogs/photo_image.h"
#include "pages/run/photo_intake.h"
#include "pages/run/waiting_photos.h"

#include <QApplication>
#include <QClipboard>
#include <QTest>

#include <sys/fsuid.h>
#include <sys/stat.h>

namespace ullage::test {
namespace {

/// In its scope files are opened as by somebody else, also where the tests are run by an administrator, and by threads that begin in it.
class AsNobody {
public:
    AsNobody() { ::setfsuid(65534); }
    ~AsNobody() { ::setfsuid(::geteuid()); }
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;
};

std::string refusal(const QString& path) {
    const PhotoIntake taken = photos_from_files({path}, nullptr);
    return taken.size() == 1 && !taken[0] ? taken[0].error().sentence() : std::string();
}

} // namespace

TEST_F(PhotosTest, a_photo_dropped_on_a_row_is_attached_to_that_reading_and_shown) {
    view->selectReadings({uuid(0)});
    dropFiles({write("display.jpg", camera_jpeg(""))}, view->viewport(), rowOf(2));
    ASSERT_TRUE(accepted);
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].reading_uuid, readings()[2].uuid);
    EXPECT_EQ(photos()[0].file_name, "display.jpg");
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(2)});
    EXPECT_TRUE(strip().isVisible());
    EXPECT_EQ(strip().count(), 1);
    EXPECT_TRUE(strip().item(0)->data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("display.jpg")));
}

TEST_F(PhotosTest, a_photo_dropped_beside_the_rows_goes_to_the_chosen_reading) {
    view->selectReadings({uuid(1)});
    dropFiles({write("display.jpg", camera_jpeg(""))}, page, QPoint(page->width() - 5, 5));
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].reading_uuid, readings()[1].uuid);
}

TEST_F(PhotosTest, a_photo_dropped_on_a_field_waits_with_the_entry_and_goes_with_the_reading) {
    view->selectReadings({uuid(1)});
    type("gaugeEdit", "75");
    dropFiles({write("display.jpg", camera_jpeg(""))}, find<QLineEdit>("remarkEdit"), QPoint(3, 3));
    ASSERT_TRUE(accepted);
    EXPECT_EQ(text("remarkEdit"), QString()); // not the file's name
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].reading_uuid, std::nullopt);
    EXPECT_TRUE(find<WaitingPhotos>("waitingPhotos")->isVisible());
    find<QLineEdit>("gaugeEdit")->setFocus();
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 5U) << questionText().toStdString() << entry().message().toStdString();
    EXPECT_EQ(photos()[0].reading_uuid, readings()[4].uuid);
    EXPECT_FALSE(find<WaitingPhotos>("waitingPhotos")->isVisible());
}

TEST_F(PhotosTest, a_waiting_photo_comes_back_beside_the_half_typed_entry) {
    type("gaugeEdit", "75");
    page->attachPhotos({write("display.jpg", camera_jpeg(""))});
    entry().keepDraft();
    const QString path = document.path();
    window.reset();
    document.close();
    ASSERT_TRUE(document.open(path));
    showPage();
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("75"));
    EXPECT_TRUE(find<WaitingPhotos>("waitingPhotos")->isVisible());
    EXPECT_EQ(strip("waitingPhotoStrip").count(), 1);
}

TEST_F(PhotosTest, clearing_the_row_leaves_its_photo_waiting_and_withdrawing_takes_it_out) {
    page->attachPhotos({write("display.jpg", camera_jpeg(""))});
    press(Qt::Key_Escape);
    EXPECT_TRUE(find<WaitingPhotos>("waitingPhotos")->isVisible());
    strip("waitingPhotoStrip").setFocus();
    press(Qt::Key_Delete);
    EXPECT_TRUE(photos().empty());
    EXPECT_FALSE(find<WaitingPhotos>("waitingPhotos")->isVisible());
    document.undoStack().undo();
    EXPECT_TRUE(find<WaitingPhotos>("waitingPhotos")->isVisible());
}

TEST_F(PhotosTest, a_picture_on_the_clipboard_is_pasted_as_png) {
    view->selectReadings({uuid(1)});
    view->setFocus();
    QApplication::clipboard()->setImage(scene());
    page->pastePhotos();
    ASSERT_EQ(photos().size(), 1U) << error().toStdString();
    EXPECT_EQ(photos()[0].format, PhotoFormat::png);
    EXPECT_EQ(photos()[0].reading_uuid, readings()[1].uuid);
    EXPECT_EQ(photo_image(document.photoBytes(photos()[0].uuid).value(), photos()[0].format).image.convertToFormat(QImage::Format_RGB32), scene());
}

TEST_F(PhotosTest, pasting_in_a_field_pastes_text_as_ever_and_a_picture_as_a_photo_of_the_entry) {
    auto* remark = find<QLineEdit>("remarkEdit");
    remark->setFocus();
    QApplication::clipboard()->setText(QStringLiteral("lamp on"));
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(remark->text(), QStringLiteral("lamp on"));
    EXPECT_TRUE(photos().empty());

    // A table copied from elsewhere comes as text and as a picture of it: a field wants the text.
    auto* both = new QMimeData;
    both->setText(QStringLiteral(" again"));
    both->setImageData(scene());
    QApplication::clipboard()->setMimeData(both);
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(remark->text(), QStringLiteral("lamp on again"));
    EXPECT_TRUE(photos().empty());

    auto* file = new QMimeData;
    file->setUrls({QUrl::fromLocalFile(write("display.jpg", camera_jpeg("")))});
    file->setText(QStringLiteral("/some/where/display.jpg"));
    QApplication::clipboard()->setMimeData(file);
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(remark->text(), QStringLiteral("lamp on again"));
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].reading_uuid, std::nullopt);
    QApplication::clipboard()->setImage(scene());
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(photos().size(), 2U);
}

TEST_F(PhotosTest, a_clipboard_without_a_picture_is_said) {
    QApplication::clipboard()->setText(QStringLiteral("lamp on"));
    page->pastePhotos();
    EXPECT_TRUE(error().contains(QStringLiteral("holds no picture"))) << error().toStdString();
    EXPECT_TRUE(photos().empty());
}

TEST_F(PhotosTest, what_cannot_be_taken_is_named_with_the_reason_and_the_rest_is_kept) {
    const QString heavy = write("heavy.jpg", std::string(static_cast<std::size_t>(photo_limit_bytes) + 1, 'x'));
    page->attachPhotos({write("notes.jpg", "just words"), heavy, QStringLiteral("/no/such/file.png"), QString::fromStdString(folder.path().string()),
                        write("display.jpg", camera_jpeg(""))});
    EXPECT_EQ(photos().size(), 1U);
    for (const char* words : {"notes.jpg: this is neither a JPEG nor a PNG", "heavy.jpg: the file has 20.1 MB", "at most 20 MB",
                              "file.png: there is no such file", "this is no file"})
        EXPECT_TRUE(error().contains(QLatin1String(words))) << words << "\n" << error().toStdString();
}

TEST_F(PhotosTest, on_a_full_disk_the_photo_is_refused_in_words) {
    const QString path = write("display.jpg", camera_jpeg(""));
    {
        const FullDisk full;
        page->attachPhotos({path});
    }
    EXPECT_TRUE(photos().empty());
    EXPECT_TRUE(error().contains(QStringLiteral("nothing was recorded"))) << error().toStdString();
}

TEST_F(PhotosTest, other_files_are_left_to_the_window) {
    dropFiles({write("sheet.csv", "time")}, view->viewport(), rowOf(2));
    EXPECT_FALSE(accepted);
    dropFiles({write("sheet.csv", "time"), write("display.jpg", camera_jpeg(""))}, view->viewport(), rowOf(2));
    EXPECT_FALSE(accepted);
    QMimeData words;
    words.setText(QStringLiteral("lamp on"));
    drop(words, view->viewport(), rowOf(2));
    EXPECT_FALSE(accepted);
}

TEST_F(PhotosTest, a_file_that_cannot_be_read_is_refused_in_words_of_ours) {
    const QString path = write("display.jpg", camera_jpeg(""));
    ::chmod(folder.path().c_str(), 0711);
    ::chmod(path.toStdString().c_str(), 0);
    {
        const AsNobody nobody;
        EXPECT_EQ(refusal(path), "display.jpg: the file cannot be opened; check that you may read it");
    }
    ::chmod(path.toStdString().c_str(), 0600);
    EXPECT_EQ(refusal(path), "");
    // Reading the first page of a process's memory fails, whoever tries: proc(5).
    EXPECT_EQ(refusal(QStringLiteral("/proc/self/mem")),
              "mem: the file cannot be read to its end; check the disk or card that it is on, or copy it elsewhere");
}

} // namespace ullage::test
