// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "dialogs/photo_dialog.h"
#include "formats/sheets/run_sheet.h"
#include "pages/run/photo_strip.h"
#include "support/photo_bytes.h"

#include <QBuffer>
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QLabel>
#include <QMenu>
#include <QStandardPaths>
#include <QTreeView>

namespace ullage {

using test::WindowTest;

TEST_F(WindowTest, a_file_that_is_no_logbook_is_refused_in_words_and_the_open_one_stays) {
    new_logbook();
    prompts.to_open = {write("letter.ullage", "Dear tester, this is no logbook.\n")};
    trigger("openLogbookAction");
    EXPECT_TRUE(message().contains("letter.ullage")) << message().toStdString();
    EXPECT_EQ(document.path(), file("bench.ullage"));
    EXPECT_FALSE(settings.recentFiles().contains(file("letter.ullage")));
}

TEST_F(WindowTest, how_long_the_check_of_a_logbook_took_is_said_where_it_was_long) {
    new_logbook();
    const auto said_of = [&](const char* copy, double seconds) {
        EXPECT_TRUE(QFile::copy(file("bench.ullage"), file(copy)));
        clock.make_each_measurement_take_s(seconds);
        prompts.to_open = {file(copy)};
        trigger("openLogbookAction");
        EXPECT_EQ(document.path(), file(copy));
        return message();
    };
    EXPECT_EQ(said_of("long.ullage", 2.5),
              "The logbook was checked from end to end, which took 2.5 s. It is done when a file was not closed properly or comes from elsewhere.");
    EXPECT_EQ(said_of("short.ullage", 0.9), "");
}

TEST_F(WindowTest, a_new_logbook_over_an_existing_file_is_refused_and_the_file_kept) {
    write("taken.ullage", "mine");
    prompts.to_save = file("taken.ullage");
    trigger("newLogbookAction");
    EXPECT_FALSE(document.isOpen());
    EXPECT_TRUE(message().contains("taken.ullage"));
    QFile kept(file("taken.ullage"));
    ASSERT_TRUE(kept.open(QFile::ReadOnly));
    EXPECT_EQ(kept.readAll(), "mine");
}

TEST_F(WindowTest, nothing_that_is_saved_takes_the_place_of_a_logbook) {
    new_logbook("other.ullage");
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    ASSERT_TRUE(QFile::link(file("bench.ullage"), file("link.csv")));
    for (const char* target : {"bench.ullage", "other.ullage", "link.csv"}) {
        QFile before(file(target));
        const qint64 size = before.size();
        prompts.to_save = file(target);
        trigger("exportSheetAction");
        EXPECT_TRUE(message().contains(target)) << message().toStdString();
        EXPECT_EQ(QFile(file(target)).size(), size);
    }
    EXPECT_TRUE(document.isOpen());
}

TEST_F(WindowTest, recent_files_stand_latest_first_and_open_again) {
    new_logbook("one.ullage");
    new_logbook("two.ullage");
    EXPECT_EQ(settings.recentFiles(), (QStringList{file("two.ullage"), file("one.ullage")}));
    auto* menu = window->findChild<QMenu*>("recentMenu");
    ASSERT_NE(menu, nullptr);
    emit menu->aboutToShow();
    ASSERT_EQ(menu->actions().size(), 2);
    menu->actions().at(1)->trigger();
    EXPECT_EQ(document.path(), file("one.ullage"));
}

TEST_F(WindowTest, a_recent_file_that_is_gone_says_so_and_leaves_the_list) {
    new_logbook("one.ullage");
    trigger("closeLogbookAction");
    EXPECT_EQ(page(), "welcomePage");
    ASSERT_TRUE(QFile::remove(file("one.ullage")));
    click("recentFileButton");
    EXPECT_FALSE(document.isOpen());
    EXPECT_TRUE(message().contains("one.ullage"));
    EXPECT_TRUE(settings.recentFiles().isEmpty());
}

TEST_F(WindowTest, the_last_logbook_opens_at_the_next_start) {
    new_logbook();
    add_unit();
    window->close();
    document.close();
    show();
    open_last_logbook();
    EXPECT_TRUE(document.isOpen());
    EXPECT_EQ(page(), "unitPage");
}

TEST_F(WindowTest, the_sample_logbook_opens_with_its_units_and_a_clean_undo) {
    click("sampleLogbookButton");
    ASSERT_EQ(document.loadLists().size(), 1u);
    EXPECT_EQ(document.loadLists()[0].name, "Show night");
    ASSERT_TRUE(document.isOpen()) << message().toStdString();
    EXPECT_GE(document.units().size(), 3U);
    EXPECT_FALSE(document.runs().empty());
    EXPECT_FALSE(enabled("undoAction"));
    EXPECT_NE(page(), "welcomePage");
}

TEST_F(WindowTest, a_dropped_logbook_opens) {
    new_logbook("one.ullage");
    add_unit();
    new_logbook("two.ullage");
    drop({file("one.ullage")});
    EXPECT_EQ(document.path(), file("one.ullage"));
}

TEST_F(WindowTest, a_dropped_run_sheet_is_imported_and_shown_with_its_notices) {
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_EQ(page(), "runPage");
    EXPECT_TRUE(message().contains("bench")) << "the key that is not known is told: " << message().toStdString();
    trigger("undoAction");
    EXPECT_TRUE(document.runs().empty());
}

TEST_F(WindowTest, a_dropped_file_of_another_kind_is_named_and_refused) {
    new_logbook();
    drop({write("photo.png", "not a picture")});
    EXPECT_TRUE(message().contains("photo.png"));
    EXPECT_TRUE(document.runs().empty());
}

TEST_F(WindowTest, a_run_sheet_without_a_logbook_says_what_to_do_first) {
    drop({write("tarrow.csv", sheet())});
    EXPECT_TRUE(message().contains("New or Open"));
}

TEST_F(WindowTest, a_wrong_run_sheet_is_refused_with_its_line_and_nothing_is_imported) {
    new_logbook();
    auto wrong = sheet();
    wrong.replace(",82,", ",eighty,");
    prompts.to_open = {write("wrong.csv", wrong), write("tarrow.csv", sheet())};
    trigger("importSheetAction");
    EXPECT_TRUE(message().contains("wrong.csv")) << message().toStdString();
    EXPECT_TRUE(message().contains("line 10")) << message().toStdString();
    EXPECT_EQ(document.runs().size(), 1U) << "the other sheet is imported all the same";
}

TEST_F(WindowTest, an_exported_run_sheet_reads_back_as_the_same_run) {
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    prompts.to_save = file("out.csv");
    trigger("exportSheetAction");
    EXPECT_TRUE(prompts.suggested.endsWith("tarrow-2k-drain-1.csv")) << prompts.suggested.toStdString();
    QFile out(file("out.csv"));
    ASSERT_TRUE(out.open(QFile::ReadOnly)) << message().toStdString();
    const auto back = read_run_sheet(out.readAll().toStdString(), "out.csv");
    ASSERT_TRUE(back) << back.error().sentence();
    ASSERT_EQ(back.value().record.readings.size(), 2U);
    EXPECT_EQ(back.value().record.readings[1].values, document.runs()[0]->readings[1].values);
}

TEST_F(WindowTest, the_logbook_goes_out_as_a_folder_and_comes_back_as_one_step) {
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    prompts.to_save = file("all of it");
    trigger("exportFolderAction");
    EXPECT_TRUE(message().contains("1 run")) << message().toStdString();
    ASSERT_TRUE(QFile::exists(file("all of it/contents.csv")));
    trigger("exportFolderAction");
    EXPECT_TRUE(message().contains("name a new folder")) << message().toStdString();

    new_logbook("other.ullage");
    prompts.folder = file("all of it");
    trigger("importFolderAction");
    ASSERT_EQ(document.runs().size(), 1U) << message().toStdString();
    EXPECT_EQ(document.runs()[0]->readings.size(), 2U);
    trigger("undoAction");
    EXPECT_TRUE(document.runs().empty());
    trigger("redoAction");
    EXPECT_EQ(document.runs().size(), 1U);
    drop({file("all of it")});
    EXPECT_EQ(document.runs().size(), 1U) << "what is there already is left out";
    EXPECT_TRUE(message().contains("already in the logbook")) << message().toStdString();
}

TEST_F(WindowTest, a_folder_without_a_run_sheet_is_refused_and_one_of_run_sheets_imported) {
    new_logbook();
    prompts.folder = file("sheets");
    ASSERT_TRUE(QDir(file("")).mkdir("sheets"));
    trigger("importFolderAction");
    EXPECT_TRUE(message().contains("sheets holds no run sheet")) << message().toStdString();
    write("sheets/tarrow.csv", sheet());
    trigger("importFolderAction");
    EXPECT_EQ(document.runs().size(), 1U) << message().toStdString();
}

TEST_F(WindowTest, an_export_that_cannot_be_written_is_told) {
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    prompts.to_save = file("no such folder/out.csv");
    trigger("exportSheetAction");
    EXPECT_TRUE(message().contains("out.csv"));
    EXPECT_FALSE(QFile::exists(file("no such folder/out.csv")));
}

TEST_F(WindowTest, a_copy_is_saved_beside_the_logbook) {
    new_logbook();
    add_unit();
    prompts.to_save = file("copy.ullage");
    trigger("saveCopyAction");
    EXPECT_TRUE(QFile::exists(file("copy.ullage")));
    EXPECT_EQ(document.path(), file("bench.ullage"));
    trigger("saveCopyAction");
    EXPECT_TRUE(message().contains("copy.ullage")) << "a second copy does not overwrite the first";
    Document copy(clock);
    ASSERT_TRUE(copy.open(file("copy.ullage")));
    EXPECT_EQ(copy.units().size(), 1U);
}

TEST_F(WindowTest, a_chosen_photo_is_attached_and_thinking_better_of_it_changes_nothing) {
    new_logbook();
    add_unit();
    start_run();
    const auto run = document.runs().at(0)->run.uuid;
    trigger("attachPhotoAction");
    EXPECT_TRUE(document.photos(run).value().empty());
    const auto png = test::bare_png();
    prompts.to_open = {write("display.png", QByteArray::fromStdString(png))};
    trigger("attachPhotoAction");
    ASSERT_EQ(document.photos(run).value().size(), 1U);
    EXPECT_EQ(settings.folder(), QFileInfo(prompts.to_open[0]).absolutePath());
    click("photoButton");
    EXPECT_EQ(document.photos(run).value().size(), 2U);
}

TEST_F(WindowTest, the_paste_key_takes_a_picture_unless_a_field_takes_text) {
    new_logbook();
    EXPECT_FALSE(enabled("pastePhotoAction"));
    add_unit();
    start_run();
    const auto run = document.runs().at(0)->run.uuid;
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QImage image(8, 8, QImage::Format_RGB32);
    image.fill(Qt::red);
    QApplication::clipboard()->setImage(image);
    find<QTreeView>("logbookTree")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(document.photos(run).value().size(), 1U);
    QApplication::clipboard()->setText(QStringLiteral("lamp on"));
    find<QLineEdit>("remarkEdit")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>("remarkEdit")->text(), QStringLiteral("lamp on"));
    EXPECT_EQ(document.photos(run).value().size(), 1U);
}

TEST_F(WindowTest, thinking_better_of_a_file_changes_nothing) {
    for (const char* name : {"newLogbookAction", "openLogbookAction"}) trigger(name);
    EXPECT_FALSE(document.isOpen());
    EXPECT_TRUE(message().isEmpty());
}

TEST_F(WindowTest, a_photo_is_saved_out_of_the_logbook_byte_for_byte) {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    QImage(40, 30, QImage::Format_RGB32).save(&buffer, "PNG");
    new_logbook();
    add_unit();
    window->showUnit(document.units()[0].uuid);
    start_run();
    const RunId run = document.runs().front()->run.uuid;
    ASSERT_TRUE(document.addPhoto(run, {}, {"../display.png", png.toStdString(), {}})); // it waits with the entry row
    window->showRun(run);
    QApplication::processEvents();
    auto* strip = find<PhotoStrip>("waitingPhotoStrip");
    ASSERT_EQ(strip->count(), 1);
    strip->openPhoto(document.photos(run).value().front().uuid);
    auto* dialog = find<PhotoDialog>("photoDialog");
    const auto said = [dialog] { return dialog->findChild<QLabel*>(QStringLiteral("photoMessageLabel"))->text(); };
    prompts.to_save = file("no-such-folder/out.png");
    click("savePhotoButton");
    EXPECT_FALSE(said().isEmpty());
    EXPECT_FALSE(said().contains(QStringLiteral("stands in")));
    prompts.to_save = file("out.png");
    click("savePhotoButton");
    EXPECT_EQ(QFileInfo(prompts.suggested).fileName(), QStringLiteral("display.png"));
    EXPECT_FALSE(prompts.suggested.contains(QStringLiteral(".."))) << "the photo's own name does not choose the folder";
    EXPECT_TRUE(said().contains(QStringLiteral("out.png"))) << said().toStdString();
    QFile out(file("out.png"));
    ASSERT_TRUE(out.open(QFile::ReadOnly));
    EXPECT_EQ(out.readAll(), png);
}

} // namespace ullage
