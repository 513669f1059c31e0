// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/photo_dialog.h"
#include "dialogs/photo_image.h"
#include "models/readings_model.h"
#include "pages/photo_strip.h"
#include "pages/readings_view.h"
#include "pages/run_photos.h"
#include "pages/waiting_photos.h"
#include "run_page_fixture.h"
#include "support/photo_bytes.h"

#include <QAbstractItemModelTester>
#include <QBuffer>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTest>

namespace ullage {

using test::FullDisk;
using test::RunPageTest;

namespace {

QImage scene(QSize size = {640, 480}) {
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) image.setPixel(x, y, qRgb(x % 256, y % 256, (x + y) % 256));
    return image;
}

/// A whole JPEG whose camera wrote this local time.
std::string camera_jpeg(const char* date_time, QSize size = {640, 480}, const char* offset = "") {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    scene(size).save(&buffer, "JPG");
    return *date_time ? test::jpeg_with_exif(bytes.toStdString(), test::exif_block(date_time, offset)) : bytes.toStdString();
}

class PhotosTest : public RunPageTest {
protected:
    void SetUp() override {
        RunPageTest::SetUp();
        QApplication::clipboard()->clear();
        recordSample(4);
        showPage();
        view = find<ReadingsView>("readingsView");
    }

    QString write(const char* name, const std::string& bytes) const {
        QFile out(QString::fromStdString((folder / name).string()));
        EXPECT_TRUE(out.open(QFile::WriteOnly));
        out.write(bytes.data(), static_cast<qint64>(bytes.size()));
        return out.fileName();
    }

    /// As with a real pointer: the widget below gets the entering, and whoever accepts it gets the drop.
    void drop(QMimeData& data, QWidget* over, QPoint at) {
        QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(over, &enter);
        accepted = enter.isAccepted();
        if (!accepted) return;
        QDropEvent event(QPointF(at), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(over, &event);
        QApplication::processEvents();
    }
    void dropFiles(const QStringList& files, QWidget* over, QPoint at) {
        QMimeData data;
        QList<QUrl> urls;
        for (const QString& file : files) urls << QUrl::fromLocalFile(file);
        data.setUrls(urls);
        drop(data, over, at);
    }
    [[nodiscard]] QPoint rowOf(std::size_t at) const {
        const int row = find<QAbstractItemView>("readingsView")->model()->match(
            view->model()->index(0, 0), ReadingsModel::UuidRole, QString::fromStdString(readings()[at].uuid)).value(0).row();
        return view->visualRect(view->model()->index(row, ReadingsRow::gauge)).center();
    }
    [[nodiscard]] std::vector<Photo> photos() const { return document.photos(run.uuid).value(); }
    [[nodiscard]] QString uuid(std::size_t at) const { return QString::fromStdString(readings()[at].uuid); }
    [[nodiscard]] PhotoStrip& strip(const char* name = "readingPhotoStrip") const { return *find<PhotoStrip>(name); }
    [[nodiscard]] QString error() const {
        const auto* bar = find<QWidget>("runErrorBar");
        return bar->isVisible() ? find<QLabel>("runErrorLabel")->text() : QString();
    }
    [[nodiscard]] PhotoDialog* dialog() const { return window->findChild<PhotoDialog*>(QStringLiteral("photoDialog")); }
    void click(const char* name) {
        auto* button = find<QPushButton>(name);
        ASSERT_TRUE(button->isVisible()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
        QApplication::processEvents();
    }

    ReadingsView* view = nullptr;
    bool accepted = false;
};

} // namespace

TEST_F(PhotosTest, a_photo_dropped_on_a_row_is_attached_to_that_reading_and_shown) {
    view->selectReadings({uuid(0)});
    dropFiles({write("display.jpg", camera_jpeg(""))}, view->viewport(), rowOf(2));
    ASSERT_TRUE(accepted);
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].reading_uuid, readings()[2].uuid);
    EXPECT_EQ(photos()[0].file_name, "display.jpg");
    EXPECT_EQ(view->selectedReadings(), QStringList{uuid(2)});
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

TEST_F(PhotosTest, the_photos_time_is_offered_for_the_entry_and_taken_with_one_click) {
    clock.advance_ms(30 * 60'000);
    type("gaugeEdit", "75");
    page->attachPhotos({write("display.jpg", camera_jpeg("2027:05:14 22:20:12"))}); // 20:20:12 UTC; the run is in Paris
    EXPECT_EQ(text("timeEdit"), QString()); // never by itself
    const auto* label = find<QLabel>("waitingPhotosLabel");
    EXPECT_TRUE(label->text().contains(QStringLiteral("14 May 2027 22:20:12"))) << label->text().toStdString();
    EXPECT_TRUE(label->text().contains(QStringLiteral("no time zone; read in Europe/Paris"))) << label->text().toStdString();
    click("takePhotoTimeButton");
    EXPECT_EQ(text("timeEdit"), QStringLiteral("14 May 2027 22:20:12"));
    EXPECT_FALSE(find<QPushButton>("takePhotoTimeButton")->isVisible());
    find<QLineEdit>("gaugeEdit")->setFocus();
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 5U) << questionText().toStdString() << entry().message().toStdString();
    EXPECT_EQ(readings()[4].values.time_ms, clock.now_ms() - (16 * 60 - 12) * 1000);
}

TEST_F(PhotosTest, the_offered_time_can_be_taken_by_key) {
    page->attachPhotos({write("display.jpg", camera_jpeg("2027:05:14 21:50:12"))});
    press(Qt::Key_T, Qt::AltModifier);
    // A button pressed by its key shows itself pressed for a moment first.
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("timeEdit") == QStringLiteral("14 May 2027 21:50:12"); }, 5000));
}

TEST_F(PhotosTest, in_an_hour_that_occurs_twice_the_offered_text_says_which) {
    const UtcMs later_ms = 1'824'946'200'000; // 2027-10-31T01:30:00Z, the second 02:30 of Paris
    for (const UtcMs time_ms : {later_ms, later_ms - 3'600'000}) {
        const QString text = field_text_of(time_ms + 250, later_ms + 3'600'000, "Europe/Paris");
        EntryTexts texts;
        texts.time = text;
        texts.gauge = QStringLiteral("1");
        const auto read = read_entry(texts, later_ms + 3'600'000, "Europe/Paris");
        ASSERT_TRUE(read.values) << text.toStdString();
        EXPECT_EQ(read.values->time_ms, time_ms) << text.toStdString();
    }
}

TEST_F(PhotosTest, a_photo_that_tells_another_time_than_its_reading_offers_to_amend_it) {
    view->selectReadings({uuid(3)});
    view->setFocus();
    page->attachPhotos({write("display.jpg", camera_jpeg("2027:05:14 22:08:30"))}); // the reading says 22:06
    const auto* label = find<QLabel>("photoTimeLabel");
    ASSERT_TRUE(label->isVisible());
    EXPECT_TRUE(label->text().contains(QStringLiteral("22:08:30"))) << label->text().toStdString();
    EXPECT_EQ(readings()[3].version, 1);
    click("amendToPhotoTimeButton");
    EXPECT_EQ(readings()[3].version, 2);
    EXPECT_EQ(readings()[3].values.time_ms, clock.now_ms() + 150'000);
    EXPECT_EQ(document.history(readings()[3].uuid).value().back().reason, "time of the photo");
    EXPECT_FALSE(label->isVisible());
    EXPECT_EQ(view->selectedReadings(), QStringList{uuid(3)});
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(PhotosTest, a_photo_within_the_minute_of_its_reading_offers_nothing_and_an_offer_can_be_left) {
    view->selectReadings({uuid(3)});
    view->setFocus();
    page->attachPhotos({write("near.jpg", camera_jpeg("2027:05:14 22:06:59"))});
    EXPECT_FALSE(find<QLabel>("photoTimeLabel")->isVisible());
    page->attachPhotos({write("far.jpg", camera_jpeg("2027:05:14 22:07:00"))});
    ASSERT_TRUE(find<QLabel>("photoTimeLabel")->isVisible());
    click("leavePhotoTimeButton");
    EXPECT_FALSE(find<QLabel>("photoTimeLabel")->isVisible());
    EXPECT_EQ(readings()[3].version, 1);
    EXPECT_EQ(strip().count(), 2);
}

TEST_F(PhotosTest, a_picture_on_the_clipboard_is_pasted_as_png) {
    view->selectReadings({uuid(1)});
    view->setFocus();
    QApplication::clipboard()->setImage(scene());
    page->pastePhotos();
    ASSERT_EQ(photos().size(), 1U) << error().toStdString();
    EXPECT_EQ(photos()[0].format, PhotoFormat::png);
    EXPECT_EQ(photos()[0].reading_uuid, readings()[1].uuid);
    EXPECT_EQ(photo_image(document.photoBytes(photos()[0].uuid).value()).convertToFormat(QImage::Format_RGB32), scene());
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
    page->attachPhotos({write("notes.jpg", "just words"), heavy, QStringLiteral("/no/such/file.png"),
                        QString::fromStdString(folder.path().string()), write("display.jpg", camera_jpeg(""))});
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

TEST_F(PhotosTest, the_table_marks_readings_with_photos_and_says_how_many) {
    ReadingsModel model(document);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRun(QString::fromStdString(run.uuid));
    const QModelIndex remark = model.index(model.rowOf(uuid(0)), ReadingsRow::remark);
    const QImage before = view->grab().toImage();
    EXPECT_EQ(remark.data(ReadingsModel::PhotosRole).toInt(), 0);
    for (int i = 0; i < 2; ++i) ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    EXPECT_EQ(remark.data(ReadingsModel::PhotosRole).toInt(), 2);
    EXPECT_EQ(remark.data(Qt::AccessibleTextRole).toString(), QStringLiteral("start, full, 2 photos"));
    EXPECT_TRUE(remark.data(Qt::ToolTipRole).toString().endsWith(QStringLiteral("2 photos")));
    EXPECT_EQ(remark.siblingAtColumn(ReadingsRow::gauge).data(ReadingsModel::PhotosRole).toInt(), 0);
    EXPECT_NE(view->grab().toImage(), before);
    document.undoStack().undo();
    EXPECT_EQ(remark.data(Qt::AccessibleTextRole).toString(), QStringLiteral("start, full, 1 photo"));
}

TEST_F(PhotosTest, a_withdrawn_reading_takes_its_photos_out_of_sight_and_undo_brings_both_back) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    EXPECT_TRUE(strip().isVisible());
    ASSERT_TRUE(document.withdrawReading(readings()[0].uuid, {}));
    EXPECT_FALSE(strip().isVisible());
    document.undoStack().undo();
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(PhotosTest, small_pictures_appear_and_a_damaged_one_gets_a_sign) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"b.jpg", test::bare_jpeg(64, 64, 200), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    ASSERT_TRUE(QTest::qWaitFor([this] { return strip().loaded(); }, 5000));
    const QImage picture = strip().item(0)->icon().pixmap(72, 54).toImage();
    EXPECT_EQ(picture.size(), QSize(72, 54));
    EXPECT_NE(picture.pixel(2, 2), picture.pixel(40, 40));
    strip().setFocus();
    press(Qt::Key_Right);
    press(Qt::Key_Return);
    ASSERT_NE(dialog(), nullptr);
    EXPECT_TRUE(dialog()->findChild<QLabel*>(QStringLiteral("photoPictureLabel"))->text().contains(QStringLiteral("cannot be shown")));
    EXPECT_FALSE(dialog()->findChild<QPushButton*>(QStringLiteral("photoFitButton"))->isEnabled());
}

TEST_F(PhotosTest, a_photo_opens_in_full_size_with_its_facts_and_zooms_by_key) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid,
                                  {"display.jpg", camera_jpeg("2027:05:14 18:00:12", {3000, 2000}, "+02:00"), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    QTest::mouseClick(strip().viewport(), Qt::LeftButton, {}, strip().visualItemRect(strip().item(0)).center());
    ASSERT_NE(dialog(), nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog()));
    EXPECT_EQ(dialog()->findChild<QLabel*>(QStringLiteral("photoNameLabel"))->text(), QStringLiteral("display.jpg"));
    const QString about = dialog()->findChild<QLabel*>(QStringLiteral("photoAboutLabel"))->text();
    EXPECT_TRUE(about.contains(QStringLiteral("3000 x 2000 pixels, taken 14 May 2027 18:00:12"))) << about.toStdString();
    const auto* picture = dialog()->findChild<QLabel*>(QStringLiteral("photoPictureLabel"));
    const auto* scroll = dialog()->findChild<QScrollArea*>(QStringLiteral("photoScroll"));
    EXPECT_TRUE(dialog()->fitted());
    EXPECT_LE(picture->width(), scroll->viewport()->width());
    EXPECT_GT(picture->width(), scroll->viewport()->width() / 2);
    QTest::keyClick(dialog(), Qt::Key_1);
    EXPECT_EQ(picture->size(), QSize(3000, 2000));
    QTest::keyClick(dialog(), Qt::Key_F);
    EXPECT_LE(picture->width(), scroll->viewport()->width());
    QTest::keyClick(dialog(), Qt::Key_Escape);
    EXPECT_FALSE(dialog()->isVisible());
}

TEST_F(PhotosTest, a_photo_is_withdrawn_from_its_window_and_undo_brings_it_back) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    strip().setFocus();
    press(Qt::Key_Space);
    ASSERT_NE(dialog(), nullptr);
    {
        const FullDisk full;
        QTest::mouseClick(dialog()->findChild<QPushButton*>(QStringLiteral("withdrawPhotoButton")), Qt::LeftButton);
    }
    ASSERT_TRUE(dialog()->isVisible());
    EXPECT_TRUE(dialog()->findChild<QLabel*>(QStringLiteral("photoMessageLabel"))->isVisible());
    QTest::mouseClick(dialog()->findChild<QPushButton*>(QStringLiteral("withdrawPhotoButton")), Qt::LeftButton);
    EXPECT_FALSE(dialog()->isVisible());
    EXPECT_TRUE(photos().empty());
    EXPECT_FALSE(strip().isVisible());
    document.undoStack().undo();
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(PhotosTest, a_photo_taken_upright_is_shown_upright) {
    // Exif Orientation 6: turned by 90 degrees clockwise (Exif 2.32, 4.6.4, tag 0x0112).
    using namespace std::string_literals;
    const std::string block = "MM\x00\x2a\x00\x00\x00\x08"s + test::big_endian(1, 2) + test::big_endian(0x0112, 2) +
                              test::big_endian(3, 2) + test::big_endian(1, 4) + test::big_endian(6, 2) + test::big_endian(0, 2) +
                              test::big_endian(0, 4);
    const std::string upright = test::jpeg_with_exif(camera_jpeg(""), block);
    EXPECT_EQ(photo_image(upright).size(), QSize(480, 640));
    EXPECT_EQ(photo_image(upright, {72, 54}).size(), QSize(40, 54));
    EXPECT_EQ(photo_image(camera_jpeg(""), {72, 54}).size(), QSize(72, 54));
    EXPECT_EQ(photo_image(camera_jpeg("", {20, 10}), {72, 54}).size(), QSize(20, 10));
    EXPECT_TRUE(photo_image("no picture").isNull());
}

TEST_F(PhotosTest, the_keyboard_reaches_the_photos_between_table_and_entry) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    view->setFocus();
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), QStringLiteral("readingPhotoStrip"));
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
}

} // namespace ullage
