// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/run_form.h"

#include "base/instant.h"
#include "dialogs/cautions.h"
#include "dialogs/field_text.h"

#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QTimeZone>

#include <string_view>

namespace ullage {

namespace {

QString words(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

void choose(QComboBox& combo, const QVariant& value) {
    const int at = combo.findData(value);
    combo.setCurrentIndex(at < 0 ? 0 : at);
}

int full_code(const std::optional<bool>& full) { return !full ? -1 : *full ? 1 : 0; }

} // namespace

RunForm::RunForm(const Run& run, const std::vector<Unit>& units, const std::vector<Meter>& meters, QWidget* parent)
    : FormDialog(run.uuid.empty() ? tr("Start run") : tr("Edit run"), run.uuid.empty() ? tr("Start run") : tr("Save run"), parent),
      run_(run) {
    setObjectName(QStringLiteral("runForm"));
    if (run_.uuid.empty() && (run_.time_zone.empty() || run_.time_zone == "UTC")) run_.time_zone = machine_zone();
    unit_ = addChoice(QStringLiteral("unit"), tr("&Unit"));
    kind_ = addChoice(QStringLiteral("kind"), tr("&Kind of run"));
    meter_ = addChoice(QStringLiteral("meter"), tr("&Meter"));
    load_ = addLine(QStringLiteral("load"), tr("&Load"), tr("what is plugged in, in your words"));
    full_ = addChoice(QStringLiteral("startedFull"), tr("Started &full"));
    if (!run_.uuid.empty()) end_ = addChoice(QStringLiteral("end"), tr("Ende&d"));
    ambient_ = addLine(QStringLiteral("ambient"), tr("&Ambient temperature"), tr("18 °C"));
    zone_ = addChoice(QStringLiteral("timeZone"), tr("&Time zone"));

    fill_units(units);
    fill_meters(meters);
    fill_zones();
    for (const auto kind : all_run_kinds) kind_->addItem(words(run_kind_text(kind)), static_cast<int>(kind));
    choose(*kind_, static_cast<int>(run_.kind));
    full_->addItem(tr("not stated"), -1);
    full_->addItem(tr("yes, full"), 1);
    full_->addItem(tr("no"), 0);
    choose(*full_, full_code(run_.started_full));
    if (end_) {
        for (const auto end : all_run_ends) end_->addItem(words(run_end_text(end)), static_cast<int>(end));
        choose(*end_, static_cast<int>(run_.end));
    }
    load_->setText(QString::fromStdString(run_.load));
    ambient_->setText(field_text(run_.ambient_c, QStringLiteral("°C")));

    if (run_.uuid.empty()) {
        QString list;
        for (const auto& caution : cautions()) list += QStringLiteral("<li>%1</li>").arg(caution.toHtmlEscaped());
        addParagraph(QStringLiteral("cautions"),
                     tr("<b>Before you start</b>") + QStringLiteral("<ul style='margin:4px 0 0 -24px'>%1</ul>").arg(list));
        kind_->setFocus();
    }
}

void RunForm::fill_units(const std::vector<Unit>& units) {
    for (const auto& unit : units) unit_->addItem(QString::fromStdString(unit.name), QString::fromStdString(unit.uuid));
    choose(*unit_, QString::fromStdString(run_.unit_uuid));
    // A run stays with the specimen that it tested.
    unit_->setEnabled(run_.uuid.empty());
}

void RunForm::fill_meters(const std::vector<Meter>& meters) {
    meter_->addItem(meters.empty() ? tr("none yet: gauge only") : tr("none"), QString());
    for (const auto& meter : meters) meter_->addItem(QString::fromStdString(meter.name), QString::fromStdString(meter.uuid));
    if (run_.meter_uuid)
        choose(*meter_, QString::fromStdString(*run_.meter_uuid));
    else if (run_.uuid.empty() && !meters.empty())
        meter_->setCurrentIndex(1); // the job is to meter; "none" is one key away
}

void RunForm::fill_zones() {
    zone_->setEditable(true);
    zone_->setInsertPolicy(QComboBox::NoInsert);
    for (const auto& id : QTimeZone::availableTimeZoneIds()) {
        // Only the zones named by region; the others are doubles or fixed offsets.
        if (id.contains('/') && !id.startsWith("Etc/") && !id.startsWith("SystemV/")) zone_->addItem(QString::fromLatin1(id));
    }
    zone_->insertItem(0, QStringLiteral("UTC"));
    zone_->completer()->setFilterMode(Qt::MatchContains);
    zone_->completer()->setCompletionMode(QCompleter::PopupCompletion);
    zone_->setCurrentText(QString::fromStdString(run_.time_zone));
}

void RunForm::read() {
    run_.unit_uuid = unit_->currentData().toString().toStdString();
    run_.kind = static_cast<RunKind>(kind_->currentData().toInt());
    const auto meter = meter_->currentData().toString().toStdString();
    run_.meter_uuid = meter.empty() ? std::nullopt : std::optional(meter);
    run_.load = text(load_);
    const int full = full_->currentData().toInt();
    run_.started_full = full < 0 ? std::nullopt : std::optional(full == 1);
    if (end_) run_.end = static_cast<RunEnd>(end_->currentData().toInt());
    run_.ambient_c = number(ambient_, number_in({{"°C", 1}, {"C", 1}}, {"the temperature", false}));
    if (run_.ambient_c && (*run_.ambient_c < -60 || *run_.ambient_c > 80))
        explain(ambient_, tr("%1 °C is outside what a bench can be; enter degrees Celsius, such as 18.")
                              .arg(QString::fromStdString(text(ambient_)).remove(QStringLiteral("°C")).trimmed()));
    const auto zone = zone_->currentText().trimmed().toStdString();
    if (!zone_exists(zone))
        explain(zone_, tr("No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC."));
    run_.time_zone = zone;
}

} // namespace ullage
