// SPDX-License-Identifier: GPL-3.0-or-later
// The check of the installation: what it looks at, what it says of what is missing, and what it keeps to itself.
#include "services/installation_check.h"

#include "base/version.h"
#include "dialogs/installation_dialog.h"
#include "style/words.h"
#include "window_fixture.h"

#include <QClipboard>
#include <QDir>
#include <QLabel>
#include <QTextBrowser>

#include <algorithm>
#include <optional>

namespace ullage {

using test::WindowTest;

namespace {

std::optional<InstallationRow> row_of(const QList<InstallationRow>& rows, const QString& subject) {
    const auto found = std::ranges::find(rows, subject, &InstallationRow::subject);
    return found == rows.end() ? std::nullopt : std::optional(*found);
}

class InstallationTest : public ::testing::Test {
protected:
    [[nodiscard]] QString in_folder(const char* name) const { return QString::fromStdString((folder / name).string()); }
    [[nodiscard]] InstallationRow looked(const QString& subject, const QString& logbooks = {}) const {
        const auto row = row_of(check_installation(settings, {logbooks, QStringLiteral("A4")}), subject);
        EXPECT_TRUE(row.has_value()) << subject.toStdString();
        return row.value_or(InstallationRow());
    }

    test::TempFolder folder;
    Settings settings{in_folder("settings.ini")};
};

} // namespace

TEST_F(InstallationTest, versions_are_those_that_run_and_those_that_it_was_built_with) {
    const auto rows = check_installation(settings, {});
    EXPECT_EQ(row_of(rows, QStringLiteral("Ullage"))->found, raw_text(program_version()));
    EXPECT_EQ(row_of(rows, QStringLiteral("Qt"))->found.section(QLatin1Char(','), 0, 0), QString::fromLatin1(qVersion()));
    EXPECT_TRUE(row_of(rows, QStringLiteral("SQLite"))->found.startsWith(QStringLiteral("3.")))
        << row_of(rows, QStringLiteral("SQLite"))->found.toStdString();
    const auto with_number = std::ranges::count_if(
        rows, [](const InstallationRow& row) { return row.group == QLatin1String("Versions") && row.found.contains(QStringLiteral(".so.")); });
    EXPECT_GE(with_number, 5) << "libraries that parts of the program stand on";
}

TEST_F(InstallationTest, every_group_is_looked_at_and_what_is_not_good_says_what_follows) {
    QStringList groups, subjects;
    for (const auto& row : check_installation(settings, {in_folder(""), QStringLiteral("A4")})) {
        if (!groups.contains(row.group)) groups << row.group;
        EXPECT_FALSE(row.found.isEmpty()) << row.subject.toStdString();
        EXPECT_FALSE(subjects.contains(row.subject)) << row.subject.toStdString() << " stands twice";
        subjects << row.subject;
        EXPECT_TRUE(row.state == InstallationRow::State::good || !row.follows.isEmpty()) << row.subject.toStdString();
    }
    EXPECT_EQ(groups, (QStringList{"Versions", "Places", "Desktop", "Text", "Pictures", "Region"}));
}

TEST_F(InstallationTest, a_place_is_tried_by_writing_and_nothing_stays_there) {
    const InstallationRow good = looked(QStringLiteral("folder of the logbook"), in_folder(""));
    EXPECT_NE(good.state, InstallationRow::State::fault) << good.found.toStdString();
    EXPECT_TRUE(good.found.contains(QStringLiteral("free"))) << good.found.toStdString();
    EXPECT_TRUE(QDir(in_folder("")).entryList(QDir::Files | QDir::Hidden).isEmpty());
    // Nobody, not even an administrator, makes files there.
    const InstallationRow bad = looked(QStringLiteral("folder of the logbook"), QStringLiteral("/proc"));
    EXPECT_EQ(bad.state, InstallationRow::State::fault);
    EXPECT_EQ(bad.follows, QStringLiteral("Nothing can be recorded there."));
    settings.setBackupFolder(QStringLiteral("/proc/copies"));
    EXPECT_EQ(looked(QStringLiteral("copies of logbooks")).state, InstallationRow::State::fault);
}

TEST_F(InstallationTest, paths_below_the_own_folder_begin_with_a_tilde) {
    const QByteArray home = qgetenv("HOME");
    qputenv("HOME", in_folder("").toLocal8Bit());
    const QString text = installation_text(check_installation(settings, {in_folder("tests"), {}}));
    qputenv("HOME", home);
    EXPECT_TRUE(text.contains(QStringLiteral("~/tests, written"))) << text.toStdString();
    EXPECT_FALSE(text.contains(in_folder("settings"))) << text.toStdString();
}

TEST_F(InstallationTest, without_a_desktop_its_services_are_notes_and_nothing_is_a_fault) {
    // The bus of this process is none.
    EXPECT_EQ(looked(QStringLiteral("passwords of meters")).state, InstallationRow::State::note);
    EXPECT_EQ(looked(QStringLiteral("notices of readings that are due")).follows, QStringLiteral("Reminders stand in the window alone."));
    EXPECT_EQ(looked(QStringLiteral("display")).found, QStringLiteral("none"));
}

TEST(InstallationText, says_first_what_is_missing_and_lines_its_columns_up) {
    const QList<InstallationRow> rows{{"Places", "settings", InstallationRow::State::good, "~/a, written", {}},
                                      {"Places", "copies", InstallationRow::State::fault, "~/b", "No copies are made."},
                                      {"Text", "figures", InstallationRow::State::note, "of unequal width", "Another font helps."}};
    EXPECT_EQ(installation_text(rows), "Check of the installation: Missing: copies. Notes on: figures.\n"
                                       "\nPlaces\n"
                                       "  found    settings  ~/a, written\n"
                                       "  missing  copies    ~/b. No copies are made.\n"
                                       "\nText\n"
                                       "  note     figures   of unequal width. Another font helps.\n");
    EXPECT_EQ(installation_sentence(rows.mid(0, 1)), "All is there.");
}

TEST_F(WindowTest, the_check_of_the_installation_opens_from_help_and_its_copy_holds_nothing_of_the_logbook) {
    new_logbook("secret name.ullage");
    add_unit("Osk 1200");
    trigger("checkInstallationAction");
    auto* dialog = find<InstallationDialog>("installationDialog");
    ASSERT_TRUE(dialog->isVisible());
    const QString shown = find<QTextBrowser>("installationBrowser")->toPlainText();
    for (const char* words : {"SQLite", "folder of the logbook", "keeping the machine awake", "signs", "time zone"})
        EXPECT_TRUE(shown.contains(QString::fromLatin1(words))) << words;
    click("copyInstallationButton");
    const QString copied = QApplication::clipboard()->text();
    EXPECT_TRUE(copied.contains(QStringLiteral("SQLite"))) << copied.toStdString();
    EXPECT_FALSE(copied.contains(QStringLiteral("Osk"))) << copied.toStdString();
    EXPECT_FALSE(copied.contains(QStringLiteral("secret name"))) << copied.toStdString();
    settings.setBackupFolder(QStringLiteral("/proc/copies"));
    click("checkAgainButton");
    EXPECT_TRUE(find<QTextBrowser>("installationBrowser")->toPlainText().contains(QStringLiteral("No copies are made")));
    EXPECT_TRUE(find<QLabel>("installationLabel")->text().contains(QStringLiteral("Missing: copies of logbooks")))
        << find<QLabel>("installationLabel")->text().toStdString();
    trigger("checkInstallationAction");
    EXPECT_EQ(window->findChildren<InstallationDialog*>().size(), 1) << "there is one";
}

} // namespace ullage
