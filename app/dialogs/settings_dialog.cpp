// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/settings_dialog.h"

#include "dialogs/field_text.h"
#include "dialogs/run_fields.h"
#include "services/reading_rules.h"
#include "services/settings.h"
#include "style/languages.h"
#include "style/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QTimer>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr int settings_letters = 74, lines_of_introduction = 3;
constexpr int percent_a_step = 10;

QString kind_title(RunKind kind) {
    switch (kind) {
    case RunKind::drain: return SettingsDialog::tr("Drain");
    case RunKind::no_load_drain: return SettingsDialog::tr("No-load drain");
    case RunKind::charge: return SettingsDialog::tr("Charge");
    case RunKind::sustained_output: return SettingsDialog::tr("Sustained output");
    case RunKind::peak_output: return SettingsDialog::tr("Peak output");
    case RunKind::standby: return SettingsDialog::tr("Standby");
    }
    return {};
}

QCheckBox* check(const char* name, const QString& text, bool on) {
    auto* made = new QCheckBox(text);
    made->setObjectName(QString::fromLatin1(name));
    made->setChecked(on);
    return made;
}

Result<double> parse_days(std::string_view text) {
    const Result<double> days = number_in({{say(phrase("dialogs", "days")), 1}, {"days", 1}, {"day", 1}, {"d", 1}}, {{}, false})(text);
    if (!days) return days;
    const double least = Settings::least_backup_days, most = Settings::most_backup_days;
    if (days.value() < least || days.value() > most || days.value() != std::floor(days.value()))
        return Error{Failure::bad_input,
                     say(phrase("dialogs", "copies are kept for whole days from 1 to 3650")),
                     {},
                     say(phrase("dialogs", "enter a number such as 30"))};
    return days;
}

} // namespace

SettingsDialog::SettingsDialog(const ChosenSettings& chosen, const SettingsSurroundings& around, QWidget* parent)
    : FormDialog(tr("Settings"), tr("OK"), parent), chosen_(chosen), given_folder_(chosen.backup_folder) {
    setObjectName(QStringLiteral("settingsDialog"));
    addLook();
    addTests(around);
    addReports(around);
    addBackup();
    fitText();
    language_->setFocus();
}

void SettingsDialog::addLook() {
    addTab(tr("Look"));
    language_ = addChoice(QStringLiteral("language"), tr("&Language"));
    language_->addItem(tr("as the desktop"), QString());
    for (const SpokenLanguage& each : spoken_languages()) language_->addItem(each.own_name, each.code);
    choose_data(*language_, chosen_.language);
    addParagraph(QStringLiteral("language"), tr("Another language counts from the next start of the program."));
    theme_ = addChoice(QStringLiteral("theme"), tr("&Theme"));
    theme_->addItem(tr("as the desktop"), static_cast<int>(Theme::system));
    theme_->addItem(tr("light"), static_cast<int>(Theme::light));
    theme_->addItem(tr("dark"), static_cast<int>(Theme::dark));
    choose_data(*theme_, static_cast<int>(chosen_.theme));
    text_size_ = addChoice(QStringLiteral("textSize"), tr("Te&xt size"));
    for (int step = Settings::least_text_step; step <= Settings::most_text_step; ++step) {
        const int percent = 100 + percent_a_step * step;
        text_size_->addItem(step == 0 ? tr("100 %, as the desktop") : tr("%1 %").arg(percent), step);
    }
    choose_data(*text_size_, chosen_.text_step);
    addParagraph(QStringLiteral("look"), tr("Theme and text size are shown at once. Cancel takes them back."));
    for (auto* choice : {theme_, text_size_}) connect(choice, &QComboBox::currentIndexChanged, this, &SettingsDialog::tellLook);
}

void SettingsDialog::addTests(const SettingsSurroundings& around) {
    addTab(tr("Tests"));
    meter_ = addChoice(QStringLiteral("defaultMeter"), tr("Default &meter"));
    fill_meter_choice(*meter_, around.meters, chosen_.meter);
    meter_->setEnabled(around.logbook_open && !around.meters.empty());
    addParagraph(QStringLiteral("defaultMeter"), !around.logbook_open
                                                     ? tr("The meter that Start run proposes. Open a logbook to choose among its meters.")
                                                 : around.meters.empty() ? tr("The meter that Start run proposes. This logbook has no meter yet.")
                                                                         : tr("The meter of this logbook that Start run proposes."));
    addGroup(tr("Reminders"));
    kind_ = addChoice(QStringLiteral("ruleKind"), tr("&Kind of run"));
    for (const RunKind kind : all_run_kinds) kind_->addItem(kind_title(kind), static_cast<int>(kind));
    const auto rule = addLineGroup(QStringLiteral("rule"), tr("&Remind me to read"),
                                   {{QStringLiteral("every"), tr("every"), tr("never")},
                                    {QStringLiteral("drop"), tr("when the gauge is down by"), tr("points")},
                                    {QStringLiteral("before"), tr("before the cut-off"), tr("never")}});
    every_ = rule[0], drop_ = rule[1], before_ = rule[2];
    showRule();
    connect(kind_, &QComboBox::currentIndexChanged, this, [this] {
        const auto asked = static_cast<RunKind>(kind_->currentData().toInt());
        if (asked == shown_kind_) return;
        clearErrors();
        if (!readRule()) { // what is typed stays until it is understood
            choose_data(*kind_, static_cast<int>(shown_kind_));
            return fit();
        }
        shown_kind_ = asked;
        showRule();
    });
    addParagraph(QStringLiteral("rule"), tr("Start run proposes these for a new run of that kind, and remembers what you enter there."));
    addWide(on_desktop_ = check("reminderOnDesktopCheck", tr("Call me by a &notice of the desktop too"), chosen_.reminder_on_desktop));
    addWide(sound_ = check("reminderSoundCheck", tr("With a &sound"), chosen_.reminder_sound));
    connect(on_desktop_, &QCheckBox::toggled, sound_, &QWidget::setEnabled);
    sound_->setEnabled(on_desktop_->isChecked());
}

void SettingsDialog::addReports(const SettingsSurroundings& around) {
    addTab(tr("Reports"));
    paper_ = addChoice(QStringLiteral("paper"), tr("&Paper"));
    paper_->addItem(tr("as the desktop's region: %1").arg(around.desktop_paper), QString());
    paper_->addItem(tr("A4"), QStringLiteral("a4"));
    paper_->addItem(tr("Letter"), QStringLiteral("letter"));
    choose_data(*paper_, chosen_.paper);
    addGroup(tr("Published by"));
    publisher_name_ = addLine(QStringLiteral("publisherName"), tr("&Name"), tr("yours, or that of the paper"));
    licence_ = addLine(QStringLiteral("publisherLicence"), tr("Lice&nce of the text"), tr("such as CC BY 4.0"));
    publisher_title_ = addLine(QStringLiteral("publisherTitle"), tr("&Title"), tr("in place of the report's own"));
    introduction_ = new QPlainTextEdit;
    introduction_->setObjectName(QStringLiteral("publisherIntroductionEdit"));
    introduction_->setPlaceholderText(tr("a paragraph before the answers"));
    introduction_->setTabChangesFocus(true);
    introduction_->setFixedHeight((lines_of_introduction + 1) * fontMetrics().height());
    addField(QStringLiteral("publisherIntroduction"), tr("&Introduction"), introduction_);
    publisher_name_->setText(raw_text(chosen_.publisher.name));
    publisher_title_->setText(raw_text(chosen_.publisher.title));
    introduction_->setPlainText(raw_text(chosen_.publisher.introduction));
    licence_->setText(raw_text(chosen_.publisher.licence));
    for (QWidget* field : {static_cast<QWidget*>(publisher_title_), static_cast<QWidget*>(introduction_)})
        field->setEnabled(around.logbook_open && !around.logbook_fixed);
    for (QWidget* field : {publisher_name_, licence_}) field->setEnabled(!around.logbook_fixed);
    addParagraph(
        QStringLiteral("publisher"),
        around.logbook_fixed  ? tr("These are kept in the logbook, into which another program records. They can be changed when that has ended.")
        : around.logbook_open ? tr("These are kept in the logbook. Name and licence are proposed for other logbooks too.")
                              : tr("Name and licence are proposed for every logbook. Title and introduction are kept in a logbook: open one."));
}

void SettingsDialog::addBackup() {
    addTab(tr("Backup"));
    addWide(backup_ = check("backupCheck", tr("Make a &copy of each logbook automatically"), chosen_.backup_on));
    backup_folder_ = addLine(QStringLiteral("backupFolder"), tr("&Folder"), tr("beside each logbook"));
    backup_folder_->setText(QDir::toNativeSeparators(chosen_.backup_folder));
    auto* choose = new QPushButton(tr("Choo&se folder…"));
    choose->setObjectName(QStringLiteral("backupFolderButton"));
    choose->setAutoDefault(false);
    connect(choose, &QPushButton::clicked, this, [this] { emit backupFolderAsked(backup_folder_->text().trimmed()); });
    auto* box = new QWidget;
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(choose);
    line->addStretch();
    addField(QStringLiteral("backupFolderChoice"), {}, box);
    backup_days_ = addLine(QStringLiteral("backupDays"), tr("&Keep for days"), tr("1 to 3650"));
    backup_days_->setText(QString::number(chosen_.backup_days));
    addParagraph(QStringLiteral("backup"), tr("Older copies are removed. A folder on another disk also helps when this disk fails."));
    const auto only_with_copies = [this, choose] {
        for (QWidget* field : {static_cast<QWidget*>(backup_folder_), static_cast<QWidget*>(choose), static_cast<QWidget*>(backup_days_)})
            field->setEnabled(backup_->isChecked());
    };
    connect(backup_, &QCheckBox::toggled, this, only_with_copies);
    only_with_copies();
}

void SettingsDialog::setBackupFolder(const QString& folder) { backup_folder_->setText(QDir::toNativeSeparators(folder)); }

void SettingsDialog::tellLook() { emit lookChosen(static_cast<Theme>(theme_->currentData().toInt()), text_size_->currentData().toInt()); }

void SettingsDialog::showRule() {
    const ReadingRule& rule = chosen_.rules[shown_kind_];
    every_->setText(minutes_text(rule.every_min));
    drop_->setText(field_text(rule.gauge_drop_pt));
    before_->setText(minutes_text(rule.before_cut_off_min));
}

bool SettingsDialog::readRule() {
    ReadingRule rule{number(every_, parse_minutes), number(drop_, parse_points), number(before_, parse_minutes)};
    if (rule.every_min == 0) rule.every_min.reset();
    if (rule.gauge_drop_pt == 0) rule.gauge_drop_pt.reset();
    const auto is_read = [](const QLineEdit* field) { return field->accessibleDescription().isEmpty(); };
    if (!is_read(every_) || !is_read(drop_) || !is_read(before_)) return false;
    chosen_.rules[shown_kind_] = rule;
    return true;
}

void SettingsDialog::read() {
    chosen_.language = language_->currentData().toString();
    chosen_.theme = static_cast<Theme>(theme_->currentData().toInt());
    chosen_.text_step = text_size_->currentData().toInt();
    chosen_.meter = chosen_meter(*meter_);
    (void)readRule();
    chosen_.reminder_on_desktop = on_desktop_->isChecked();
    chosen_.reminder_sound = sound_->isChecked();
    chosen_.paper = paper_->currentData().toString();
    chosen_.publisher = {text(publisher_name_), text(publisher_title_), utf8_of(introduction_->toPlainText().trimmed()), text(licence_)};
    chosen_.backup_on = backup_->isChecked();
    if (!chosen_.backup_on) return; // what nobody asks for is left as it was
    const QString folder = QDir::fromNativeSeparators(backup_folder_->text().trimmed());
    const QFileInfo there(folder);
    // One that is away for now, such as a disk that is not plugged in, stays chosen.
    const bool other = folder != given_folder_ && !folder.isEmpty();
    if (other && !QDir::isAbsolutePath(folder))
        explain(backup_folder_, tr("Name the folder from the root on, such as /media/disk/copies, or leave the field empty."));
    else if (other && !there.isDir()) explain(backup_folder_, tr("There is no such folder. Make it, or choose another."));
    else if (other && !there.isWritable()) explain(backup_folder_, tr("Nothing can be written into this folder. Choose another."));
    chosen_.backup_folder = folder;
    if (backup_days_->text().trimmed().isEmpty()) explain(backup_days_, tr("Enter for how many days a copy is kept, such as 30."));
    if (const auto days = number(backup_days_, parse_days)) chosen_.backup_days = static_cast<int>(*days);
}

void SettingsDialog::changeEvent(QEvent* event) {
    FormDialog::changeEvent(event);
    // The text grows under the dialog that makes it grow.
    if (event->type() == QEvent::StyleChange && isVisible()) QTimer::singleShot(0, this, &SettingsDialog::fitText);
}

void SettingsDialog::fitText() {
    introduction_->setFixedHeight((lines_of_introduction + 1) * fontMetrics().height());
    setMinimumWidth(fontMetrics().averageCharWidth() * settings_letters);
    fit();
    if (!isVisible() || !screen()) return;
    const QRect room = screen()->availableGeometry(), here = frameGeometry();
    move(std::max(room.left(), std::min(here.left(), room.right() + 1 - here.width())),
         std::max(room.top(), std::min(here.top(), room.bottom() + 1 - here.height())));
}

} // namespace ullage
