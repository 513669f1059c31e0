// SPDX-License-Identifier: GPL-3.0-or-later
// What others do to the file of the open logbook, and what the toolkit's own dialogs do.
#include "window_fixture.h"

#include <QAbstractButton>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QProcess>
#include <QTimer>

namespace ullage {

using test::WindowTest;

TEST_F(WindowTest, a_file_that_is_taken_away_is_said_at_once_and_the_open_logbook_goes_on_elsewhere_with_what_is_typed) {
    new_logbook();
    add_unit();
    add_meter();
    start_run();
    const std::size_t before = document.runs().front()->readings.size();
    ASSERT_TRUE(QFile::remove(file("bench.ullage")));
    auto* bar = find<QWidget>("fileBar");
    EXPECT_TRUE(QTest::qWaitFor([&] { return bar->isVisible(); }, 5000));
    EXPECT_TRUE(find<QLabel>("fileBarLabel")->text().contains("was removed"));
    EXPECT_TRUE(find<QLabel>("savedLabel")->text().isEmpty()) << "nothing is saved there any more";

    type("gaugeEdit", "83");
    type("registerEdit", "120");
    QTest::keyClick(find<QLineEdit>("registerEdit"), Qt::Key_Return);
    EXPECT_EQ(document.runs().front()->readings.size(), before) << "nothing may be said to be saved";
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "83");

    prompts.to_save = file("elsewhere.ullage");
    click("saveElsewhereButton");
    EXPECT_EQ(document.path(), file("elsewhere.ullage"));
    EXPECT_FALSE(bar->isVisible());
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "83");
    EXPECT_EQ(find<QLineEdit>("registerEdit")->text(), "120");
    QTest::keyClick(find<QLineEdit>("registerEdit"), Qt::Key_Return);
    ASSERT_EQ(document.runs().size(), 1u);
    EXPECT_EQ(document.runs().front()->readings.size(), before + 1);
}

TEST_F(WindowTest, a_half_typed_entry_is_in_the_file_itself_a_few_seconds_later) {
    new_logbook();
    add_unit();
    start_run();
    type("gaugeEdit", "83");
    const RunId run = document.runs().front()->run.uuid;
    const auto in_copy = [&] {
        QFile::remove(file("copy.ullage"));
        EXPECT_TRUE(QFile::copy(file("bench.ullage"), file("copy.ullage")));
        const auto copy = Logbook::open((folder / "copy.ullage"), OpenMode::read_only, clock);
        return copy && copy.value().draft(run) && copy.value().draft(run).value().find("83") != std::string::npos;
    };
    EXPECT_TRUE(QTest::qWaitFor(in_copy, 5000));
}

TEST_F(WindowTest, a_file_dialog_that_looks_into_the_folder_of_the_open_logbook_leaves_it_held) {
    new_logbook();
    add_unit();
    qputenv("QT_NO_XDG_DESKTOP_PORTAL", "1");
    QFileDialog dialog(window.get(), "Open", file("."));
    dialog.setOption(QFileDialog::DontUseNativeDialog);
    QTimer::singleShot(300, &dialog, [&] { dialog.reject(); });
    dialog.exec();
    // As the dialog does to tell what kind a file is.
    {
        QFile sniffed(file("bench.ullage"));
        ASSERT_TRUE(sniffed.open(QFile::ReadOnly));
        EXPECT_FALSE(sniffed.read(100).isEmpty());
    }
    QProcess other;
    other.start("sqlite3", {file("bench.ullage"), "UPDATE units SET name = 'taken over'"});
    ASSERT_TRUE(other.waitForFinished());
    EXPECT_NE(other.exitCode(), 0) << "another program could write into the open logbook";
    EXPECT_EQ(document.units().front().name, "Osk 1200");
    EXPECT_FALSE(document.displaced());
}

} // namespace ullage
