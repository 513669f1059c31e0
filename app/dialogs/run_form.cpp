// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/run_form.h"

#include "base/instant.h"
#include "dialogs/field_text.h"
#include "dialogs/run_fields.h"
#include "style/words.h"

#include <QComboBox>
#include <QLineEdit>

#include <string_view>

namespace ullage {

RunForm::RunForm(const Run& run, const std::vector<Unit>& units, const std::vector<Meter>& meters, QWidget* parent)
    : FormDialog(tr("Edit run"), tr("Save run"), parent), run_(run) {
    setObjectName(QStringLiteral("runForm"));
    unit_ = addChoice(QStringLiteral("unit"), tr("&Unit"));
    kind_ = addChoice(QStringLiteral("kind"), tr("&Kind of run"));
    meter_ = addChoice(QStringLiteral("meter"), tr("&Meter"));
    second_meter_ = addChoice(QStringLiteral("secondMeter"), tr("S&econd meter"));
    load_ = addLine(QStringLiteral("load"), tr("&Load"), tr("what is plugged in, in your words"));
    full_ = addChoice(QStringLiteral("startedFull"), tr("Started &full"));
    end_ = addChoice(QStringLiteral("end"), tr("E&nded"));
    noticed_ = addLine(QStringLiteral("noticedWithin"), tr("End noti&ced within"), tr("2 min, where you know; else 5 min is taken"));
    ambient_ = addLine(QStringLiteral("ambient"), tr("&Ambient temperature"), tr("18 °C"));
    ambient_end_ = addLine(QStringLiteral("ambientEnd"), tr("… at the en&d"), tr("18 °C"));
    source_ = addChoice(QStringLiteral("chargeSource"), tr("&Charged from"));
    zone_ = addChoice(QStringLiteral("timeZone"), tr("&Time zone"));

    for (const auto& unit : units) unit_->addItem(text_of(unit.name), raw_text(unit.uuid));
    choose_data(*unit_, raw_text(run_.unit_uuid));
    unit_->setEnabled(false); // a run stays with the specimen that it tested
    for (const auto kind : all_run_kinds) kind_->addItem(text_of(say_run_kind(kind)), static_cast<int>(kind));
    choose_data(*kind_, static_cast<int>(run_.kind));
    fill_meter_choice(*meter_, meters, run_.meter_uuid);
    fill_meter_choice(*second_meter_, meters, run_.second_meter_uuid);
    second_meter_->setToolTip(tr("One in series, whose register you note too; or the one that took over at a mark \"meter swapped\""));
    fill_full_choice(*full_, run_.started_full);
    for (const auto end : all_run_ends) end_->addItem(text_of(say_run_end(end)), static_cast<int>(end));
    choose_data(*end_, static_cast<int>(run_.end));
    noticed_->setText(field_text(run_.end_noticed_within_min, QStringLiteral("min")));
    const auto only_of_cut_off = [this] {
        const auto end = static_cast<RunEnd>(end_->currentData().toInt());
        noticed_->setEnabled(end == RunEnd::cut_off_seen || end == RunEnd::found_off);
    };
    connect(end_, &QComboBox::currentIndexChanged, this, only_of_cut_off);
    only_of_cut_off();
    load_->setText(raw_text(run_.load));
    load_->setCursorPosition(0); // long words show their beginning
    ambient_->setText(field_text(run_.ambient_c, QStringLiteral("°C")));
    ambient_end_->setText(field_text(run_.ambient_end_c, QStringLiteral("°C")));
    fill_charge_source_choice(*source_, run_.charge_source);
    const auto only_of_charge = [this] { source_->setEnabled(kind_->currentData().toInt() == static_cast<int>(RunKind::charge)); };
    connect(kind_, &QComboBox::currentIndexChanged, this, only_of_charge);
    only_of_charge();
    fill_zone_choice(*zone_, run_.time_zone);
}

void RunForm::read() {
    run_.kind = static_cast<RunKind>(kind_->currentData().toInt());
    run_.meter_uuid = chosen_meter(*meter_);
    run_.second_meter_uuid = chosen_meter(*second_meter_);
    if (run_.second_meter_uuid && run_.second_meter_uuid == run_.meter_uuid)
        explain(second_meter_, tr("The second meter is the first one; choose another, or none."));
    run_.load = text(load_);
    run_.started_full = chosen_full(*full_);
    run_.end = static_cast<RunEnd>(end_->currentData().toInt());
    run_.charge_source = run_.kind == RunKind::charge ? chosen_charge_source(*source_) : std::nullopt;
    run_.end_noticed_within_min = noticed_->isEnabled() ? number(noticed_, parse_noticed_min) : std::nullopt;
    run_.ambient_c = number(ambient_, parse_ambient_c);
    run_.ambient_end_c = number(ambient_end_, parse_ambient_c);
    const auto zone = utf8_of(zone_->currentText().trimmed());
    if (!zone_exists(zone)) explain(zone_, tr("No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC."));
    run_.time_zone = zone;
}

} // namespace ullage
