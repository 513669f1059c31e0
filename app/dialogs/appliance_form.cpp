// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/appliance_form.h"

#include "dialogs/field_text.h"
#include "formats/entry/entry_text.h"
#include "style/words.h"

#include <QComboBox>
#include <QLineEdit>

#include <cmath>

namespace ullage {

namespace {

std::function<Result<double>(std::string_view)> hours_a_day() {
    return number_in({{"h", 1}, {"hours", 1}, {"hour", 1}, {say(phrase("dialogs", "hours")), 1}, {"min", 1.0 / 60}}, {{}, false});
}

} // namespace

ApplianceForm::ApplianceForm(const Appliance& appliance, const std::string& list_name, QWidget* parent)
    : FormDialog(appliance.name.empty() ? tr("Add appliance to %1").arg(text_of(list_name)) : tr("Appliance %1").arg(text_of(appliance.name)),
                 appliance.name.empty() ? tr("Add appliance") : tr("Save appliance"), parent),
      appliance_(appliance) {
    setObjectName(QStringLiteral("applianceForm"));
    name_ = addLine(QStringLiteral("name"), tr("&Name"), tr("such as: lamp"));
    count_ = addLine(QStringLiteral("count"), tr("How &many alike"), tr("1"));
    addGroup(tr("What one of them takes"));
    power_ = addLine(QStringLiteral("power"), tr("&Power while on"), tr("9 W"));
    duty_ = addLine(QStringLiteral("duty"), tr("&Duty, share of the time on"), tr("100 %; a refrigerator some 35 %"));
    const auto measured = addLineGroup(QStringLiteral("measured"), tr("&Or as measured in use"),
                                       {{QStringLiteral("measured"), tr("energy"), tr("500 Wh")}, {QStringLiteral("over"), tr("over"), tr("24 h")}});
    measured_ = measured[0];
    over_ = measured[1];
    start_ = addLine(QStringLiteral("start"), tr("Highest power of its &start"), tr("no more than while on"));
    addGroup(tr("When it is in use"));
    hours_ = addLine(QStringLiteral("hours"), tr("&Hours per day"), tr("5 h"));
    night_ = addLine(QStringLiteral("night"), tr("Of these at ni&ght"), tr("0 h"));
    connected_ = addChoice(QStringLiteral("connected"), tr("&Output of the unit"));
    connected_->addItem(tr("on while it is in use"));
    connected_->addItem(tr("always on for it"));

    name_->setText(raw_text(appliance.name));
    power_->setText(field_text(appliance.power_w, QStringLiteral("W")));
    if (appliance.measured) {
        measured_->setText(field_text(appliance.measured->energy_wh, QStringLiteral("Wh")));
        over_->setText(field_text(appliance.measured->hours, QStringLiteral("h")));
    }
    start_->setText(field_text(appliance.start_peak_w, QStringLiteral("W")));
    if (!appliance.name.empty()) {
        count_->setText(QString::number(appliance.count));
        duty_->setText(field_text(100 * appliance.duty, QStringLiteral("%")));
        hours_->setText(field_text(appliance.hours_per_day, QStringLiteral("h")));
        night_->setText(field_text(appliance.night_hours, QStringLiteral("h")));
    }
    connected_->setCurrentIndex(appliance.always_connected ? 1 : 0);
    name_->setFocus();
}

void ApplianceForm::read() {
    appliance_.name = text(name_, tr("The appliance needs a name."));
    const auto count = number(count_, number_in({}, {say(phrase("dialogs", "how many there are"))})).value_or(1);
    if (count != std::floor(count) || count < 1 || count > most_alike) explain(count_, tr("Enter a whole number, 1 to %1.").arg(most_alike));
    else appliance_.count = static_cast<int>(count);
    appliance_.always_connected = connected_->currentIndex() == 1;
    readPower();
    readUse();
}

void ApplianceForm::readPower() {
    const auto limit = [](double value, double low, double high) { return value > low && value <= high; };
    appliance_.power_w = number(power_, above_zero(parse_power_w, say(phrase("dialogs", "the power"))));
    const double duty = number(duty_, number_in({{"%", 1}}, {say(phrase("dialogs", "the duty"))})).value_or(100);
    if (!limit(duty, 0, 100)) explain(duty_, tr("The duty is a share of the time: more than 0 %, at most 100 %."));
    appliance_.duty = duty / 100;
    const auto energy = number(measured_, above_zero(parse_energy_wh, say(phrase("dialogs", "the measured energy"))));
    const auto over = number(
        over_,
        number_in({{"h", 1}, {"hours", 1}, {say(phrase("dialogs", "hours")), 1}, {"d", 24}, {"days", 24}, {say(phrase("dialogs", "days")), 24}},
                  {say(phrase("dialogs", "the time over which it was measured"))}));
    appliance_.measured.reset();
    if (energy && over) appliance_.measured = MeasuredUse{*energy, *over};
    else if (energy && over_->text().trimmed().isEmpty()) explain(over_, tr("Say over how many hours that energy was measured."));
    else if (over && measured_->text().trimmed().isEmpty()) explain(measured_, tr("Say how much energy was measured over those hours."));
    if (power_->text().trimmed().isEmpty() && measured_->text().trimmed().isEmpty())
        explain(power_, tr("Enter its power while on, or below what it took over some hours."));
    appliance_.start_peak_w = number(start_, above_zero(parse_power_w, say(phrase("dialogs", "the power of its start"))));
    if (appliance_.power_w && appliance_.measured && mean_in_use_w(appliance_) > *appliance_.power_w * (1 + 1e-9))
        explain(measured_,
                tr("That is %1 W on average, more than its power while on. Correct one of the two.").arg(mean_in_use_w(appliance_), 0, 'f', 1));
    if (appliance_.start_peak_w && (appliance_.power_w || appliance_.measured) && *appliance_.start_peak_w < running_w(appliance_) * (1 - 1e-9))
        explain(start_, tr("The start is below its power while on; leave it empty where nothing more is taken."));
}

void ApplianceForm::readUse() {
    const auto hours = number(hours_, hours_a_day());
    if (hours_->text().trimmed().isEmpty()) explain(hours_, tr("Say for how many hours of a day it is in use."));
    else if (hours && !(*hours > 0 && *hours <= 24)) explain(hours_, tr("A day has 24 h: enter more than 0 h, at most 24 h."));
    appliance_.hours_per_day = hours.value_or(0);
    const auto night = number(night_, hours_a_day()).value_or(0);
    if (hours && !(night >= 0 && night <= *hours)) explain(night_, tr("At most its hours per day lie at night."));
    appliance_.night_hours = night;
}

} // namespace ullage
