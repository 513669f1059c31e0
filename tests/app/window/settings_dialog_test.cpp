// SPDX-License-Identifier: GPL-3.0-or-later
// The one dialog of settings, from its key to what the program then does.
#include "dialogs/settings_dialog.h"
#include "services/appearance.h"
#include "services/reading_rules.h"
#include "style/theme.h"
#include "window/run_defaults.h"
#include "window_fixture.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSettings>
#include <QTabWidget>

namespace ullage {

namespace {

class SettingsDialogTest : public test::WindowTest {
protected:
    void TearDown() override {
        settings.setTheme(Theme::light);
        settings.setTextStep(0);
        apply_appearance(*qApp, settings);
    }
    void open() {
        trigger("settingsAction");
        ASSERT_NE(dialog(), nullptr);
    }
    [[nodiscard]] SettingsDialog* dialog() const { return window->findChild<SettingsDialog*>(); }
    template <class Widget>
    Widget* of(const char* name) const {
        auto* found = dialog()->findChild<Widget*>(QString::fromLatin1(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void choose(const char* combo, const QVariant& data) {
        const int at = of<QComboBox>(combo)->findData(data);
        ASSERT_GE(at, 0) << combo;
        of<QComboBox>(combo)->setCurrentIndex(at);
        QApplication::processEvents();
    }
    void put(const char* field, const QString& text) { of<QLineEdit>(field)->setText(text); }
    void press(const char* name) {
        QTest::mouseClick(of<QPushButton>(name), Qt::LeftButton);
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void accept() {
        press("submitButton");
        ASSERT_EQ(dialog(), nullptr);
    }
};

} // namespace

TEST_F(SettingsDialogTest, every_setting_stands_in_one_dialog_that_the_usual_key_opens) {
    EXPECT_EQ(window->action("settingsAction")->shortcut().toString(), "Ctrl+,");
    open();
    for (const char* name : {"languageCombo", "themeCombo", "textSizeCombo", "defaultMeterCombo", "everyEdit", "dropEdit", "beforeEdit",
                             "reminderOnDesktopCheck", "reminderSoundCheck", "paperCombo", "publisherNameEdit", "publisherTitleEdit",
                             "publisherIntroductionEdit", "publisherLicenceEdit", "backupCheck", "backupFolderEdit", "backupDaysEdit"})
        EXPECT_NE(of<QWidget>(name), nullptr);
    for (const auto* field : dialog()->findChildren<QWidget*>()) {
        const auto* button = qobject_cast<const QAbstractButton*>(field);
        if (!qobject_cast<const QLineEdit*>(field) && !qobject_cast<const QComboBox*>(field) && !qobject_cast<const QPlainTextEdit*>(field) &&
            !button)
            continue;
        if (field->objectName().startsWith(QLatin1String("qt_")) || field->objectName() == QLatin1String("ScrollLeftButton") ||
            field->objectName() == QLatin1String("ScrollRightButton"))
            continue; // of Qt's own parts
        EXPECT_FALSE(field->accessibleName().isEmpty() && (!button || button->text().isEmpty())) << field->objectName().toStdString();
    }
}

TEST_F(SettingsDialogTest, the_keys_for_the_next_and_the_previous_tab_turn_it_from_a_choice_too) {
    open();
    auto* tabs = of<QTabWidget>("formTabs");
    QTest::keyClick(of<QComboBox>("languageCombo"), Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(tabs->currentIndex(), 1);
    QTest::keyClick(of<QComboBox>("languageCombo"), Qt::Key_Backtab, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(tabs->currentIndex(), 0);
}

TEST_F(SettingsDialogTest, theme_and_text_size_are_shown_at_once_and_cancel_takes_both_back) {
    trigger("lightThemeAction");
    const double usual = QApplication::font().pointSizeF();
    open();
    choose("themeCombo", static_cast<int>(Theme::dark));
    choose("textSizeCombo", 5);
    EXPECT_TRUE(current_palette().dark);
    EXPECT_NEAR(QApplication::font().pointSizeF(), 1.5 * usual, 0.05);
    EXPECT_TRUE(window->action("darkThemeAction")->isChecked()) << "the menu says the same";
    press("cancelButton");
    EXPECT_FALSE(current_palette().dark);
    EXPECT_NEAR(QApplication::font().pointSizeF(), usual, 0.05);
    EXPECT_EQ(settings.theme(), Theme::light);
    EXPECT_EQ(settings.textStep(), 0);
    EXPECT_TRUE(window->action("lightThemeAction")->isChecked());
}

TEST_F(SettingsDialogTest, what_is_accepted_stands_in_the_file_of_settings_and_in_the_dialog_again) {
    open();
    choose("languageCombo", QStringLiteral("fr"));
    choose("themeCombo", static_cast<int>(Theme::dark));
    of<QCheckBox>("reminderOnDesktopCheck")->setChecked(false);
    of<QCheckBox>("reminderSoundCheck")->setChecked(true);
    choose("paperCombo", QStringLiteral("letter"));
    put("backupFolderEdit", QDir::tempPath());
    put("backupDaysEdit", QStringLiteral("7 days"));
    accept();
    const Settings again(file("settings.ini"));
    EXPECT_EQ(again.language(), "fr");
    EXPECT_EQ(again.theme(), Theme::dark);
    EXPECT_FALSE(again.reminderOnDesktop());
    EXPECT_TRUE(again.reminderSound());
    EXPECT_EQ(again.paper(), "letter");
    EXPECT_EQ(again.backupFolder(), QDir::tempPath());
    EXPECT_EQ(again.backupDays(), 7);
    EXPECT_EQ(QSettings(file("settings.ini"), QSettings::IniFormat).value(QStringLiteral("view/language")).toString(), "fr");
    EXPECT_TRUE(window->action("reminderSoundAction")->isChecked());
    trigger("reminderSoundAction"); // the menu's word counts in the dialog too
    open();
    EXPECT_FALSE(of<QCheckBox>("reminderSoundCheck")->isChecked());
    EXPECT_EQ(of<QComboBox>("languageCombo")->currentText(), QString::fromUtf8("Français"));
    EXPECT_TRUE(of<QLabel>("languageLabel")->text().contains("next start"));
}

TEST_F(SettingsDialogTest, a_kept_word_that_is_none_of_the_known_ones_counts_as_the_default) {
    settings.setLanguage(QStringLiteral("xx"));
    settings.setPaper(QStringLiteral("parchment"));
    EXPECT_EQ(settings.language(), "");
    EXPECT_EQ(settings.paper(), "");
}

TEST_F(SettingsDialogTest, a_run_starts_with_the_default_meter_of_its_logbook_and_the_reminders_of_its_kind) {
    new_logbook();
    add_unit();
    add_meter("Socket meter A");
    add_meter("Socket meter B");
    open();
    const MeterId second = document.meters()[1].uuid;
    choose("defaultMeterCombo", raw_text(second));
    put("everyEdit", QStringLiteral("45 min"));
    choose("ruleKindCombo", static_cast<int>(RunKind::charge));
    put("everyEdit", QStringLiteral("2 h"));
    accept();
    EXPECT_EQ(default_rule(settings, RunKind::charge).every_min, 120.0);
    start_run();
    EXPECT_EQ(document.runs()[0]->run.meter_uuid, second);
    EXPECT_EQ(window->reminders().rule(document.runs()[0]->run.uuid).every_min, 45.0);
    new_logbook("other.ullage");
    EXPECT_EQ(default_meter(settings, document), std::nullopt) << "a meter is the default of the logbook that has it";
}

TEST_F(SettingsDialogTest, the_publisher_is_kept_in_the_logbook_and_name_and_licence_are_proposed_for_others) {
    new_logbook();
    open();
    put("publisherNameEdit", QStringLiteral("The Lantern"));
    put("publisherTitleEdit", QStringLiteral("Bench notes"));
    put("publisherLicenceEdit", QStringLiteral("CC BY 4.0"));
    accept();
    EXPECT_EQ(document.publisher().name, "The Lantern");
    EXPECT_EQ(document.publisher().title, "Bench notes");
    new_logbook("other.ullage");
    EXPECT_EQ(document.publisher(), Publisher()) << "nothing is written into a logbook unasked";
    const Publisher proposed = publisher_of(settings, document);
    EXPECT_EQ(proposed.name, "The Lantern");
    EXPECT_EQ(proposed.licence, "CC BY 4.0");
    EXPECT_EQ(proposed.title, "");
    trigger("closeLogbookAction");
    open();
    EXPECT_FALSE(of<QLineEdit>("publisherTitleEdit")->isEnabled()) << "there is no logbook to keep it in";
    EXPECT_EQ(of<QLineEdit>("publisherNameEdit")->text(), "The Lantern");
}

TEST_F(SettingsDialogTest, reports_begin_with_the_paper_that_is_set) {
    trigger("sampleLogbookAction");
    settings.setPaper(QStringLiteral("letter"));
    trigger("comparisonReportAction");
    auto* report = window->findChild<QDialog*>(QStringLiteral("reportForm"));
    ASSERT_NE(report, nullptr);
    EXPECT_EQ(report->findChild<QComboBox*>(QStringLiteral("paperCombo"))->currentText(), "Letter");
    report->reject();
}

TEST_F(SettingsDialogTest, a_field_that_is_not_understood_is_explained_on_its_tab_and_nothing_is_kept) {
    open();
    choose("languageCombo", QStringLiteral("de"));
    put("backupFolderEdit", file("no such folder"));
    put("backupDaysEdit", QStringLiteral("0"));
    press("submitButton");
    ASSERT_NE(dialog(), nullptr);
    const auto* tabs = of<QTabWidget>("formTabs");
    EXPECT_EQ(tabs->tabText(tabs->currentIndex()), "Backup");
    EXPECT_TRUE(of<QLabel>("backupFolderErrorLabel")->isVisible());
    EXPECT_TRUE(of<QLabel>("backupDaysErrorLabel")->text().contains("3650")) << of<QLabel>("backupDaysErrorLabel")->text().toStdString();
    EXPECT_EQ(settings.language(), "");
    put("backupFolderEdit", {});
    put("backupDaysEdit", QStringLiteral("5.5"));
    press("submitButton");
    EXPECT_TRUE(of<QLabel>("backupDaysErrorLabel")->isVisible()) << "half a day is none";
    put("backupDaysEdit", QStringLiteral("90"));
    accept();
    EXPECT_EQ(settings.backupDays(), 90);
    EXPECT_EQ(settings.language(), "de");
}

TEST_F(SettingsDialogTest, a_reminder_that_is_not_understood_holds_its_kind_in_sight) {
    open();
    put("everyEdit", QStringLiteral("soon"));
    choose("ruleKindCombo", static_cast<int>(RunKind::standby));
    EXPECT_EQ(of<QComboBox>("ruleKindCombo")->currentData().toInt(), static_cast<int>(RunKind::drain));
    EXPECT_TRUE(of<QLabel>("ruleErrorLabel")->text().contains("soon"));
    press("cancelButton");
    EXPECT_EQ(default_rule(settings, RunKind::drain), usual_rule(RunKind::drain));
}

TEST_F(SettingsDialogTest, a_folder_for_copies_that_is_away_stays_chosen) {
    settings.setBackupFolder(file("disk that is not plugged in"));
    open();
    choose("paperCombo", QStringLiteral("a4"));
    accept();
    EXPECT_EQ(settings.backupFolder(), file("disk that is not plugged in"));
    open();
    prompts.folder = QDir::tempPath();
    press("backupFolderButton");
    EXPECT_EQ(of<QLineEdit>("backupFolderEdit")->text(), QDir::tempPath());
}

TEST_F(SettingsDialogTest, at_twice_the_text_the_dialog_fits_a_screen_of_1280_by_800) {
    open();
    choose("textSizeCombo", Settings::most_text_step);
    EXPECT_TRUE(QTest::qWaitFor([this] { return dialog()->minimumWidth() > 700; }));
    EXPECT_LE(dialog()->width(), 1280);
    EXPECT_LE(dialog()->height(), 800);
    EXPECT_LE(dialog()->minimumSizeHint().width(), 1280);
    press("cancelButton");
}

} // namespace ullage
