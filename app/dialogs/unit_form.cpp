// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/unit_form.h"

#include "dialogs/field_text.h"
#include "formats/entry/entry_text.h"
#include "model/limits.h"
#include "model/tags.h"
#include "style/words.h"

#include <QLineEdit>
#include <QRegularExpression>

namespace ullage {

UnitForm::UnitForm(const Unit& unit, QWidget* parent)
    : FormDialog(unit.uuid.empty() ? tr("Add unit") : tr("Claims of %1").arg(text_of(unit.name)),
                 unit.uuid.empty() ? tr("Add unit") : tr("Save claims"), parent),
      unit_(unit) {
    setObjectName(QStringLiteral("unitForm"));
    name_ = addLine(QStringLiteral("name"), tr("&Name"), tr("as printed on the case"));
    rated_energy_ = addLine(QStringLiteral("ratedEnergy"), tr("Rated &energy"), tr("1200 Wh or 1.2 kWh"));
    rated_output_ = addLine(QStringLiteral("ratedOutput"), tr("Rated &output"), tr("600 W"));
    gauge_step_ = addLine(QStringLiteral("gaugeStep"), tr("&Gauge step"), tr("1 %, the smallest step that the gauge shows"));
    addMore(tr("Maker and model, further claims, limits of the PV input, the unit at hand"));
    maker_ = addLine(QStringLiteral("maker"), tr("&Maker"));
    model_ = addLine(QStringLiteral("model"), tr("Mode&l"), tr("the same for every specimen of it"));
    addGroup(tr("What the maker claims further"));
    peak_output_ = addLine(QStringLiteral("peakOutput"), tr("&Peak output"), tr("1200 W"));
    price_ = addLine(QStringLiteral("price"), tr("List p&rice"), tr("799"));
    currency_ = addLine(QStringLiteral("currency"), tr("&Currency"), tr("three letters, such as EUR"));
    mass_ = addLine(QStringLiteral("mass"), tr("M&ass"), tr("12.4 kg"));
    warranty_ = addLine(QStringLiteral("warranty"), tr("&Warranty"), tr("2 years"));
    charge_time_ = addLine(QStringLiteral("chargeTime"), tr("C&harge time"), tr("1.5 h, from cut-off to full, from the wall"));
    addGroup(tr("Limits of the PV input"));
    pv_volts_ = addLine(QStringLiteral("pvVolts"), tr("&Voltage"), tr("60 V"));
    pv_amps_ = addLine(QStringLiteral("pvAmps"), tr("C&urrent"), tr("12 A"));
    pv_watts_ = addLine(QStringLiteral("pvWatts"), tr("Po&wer"), tr("500 W"));
    pv_start_ = addLine(QStringLiteral("pvStart"), tr("&Start voltage"), tr("12 V, the lowest at which the input works"));
    pv_short_circuit_ = addLine(QStringLiteral("pvShortCircuit"), tr("Short c&ircuit"), tr("15 A, the current that the input withstands"));
    addGroup(tr("The unit at hand"));
    serial_number_ = addLine(QStringLiteral("serialNumber"), tr("Serial &number"));
    chemistry_ = addLine(QStringLiteral("chemistry"), tr("Cells"), tr("their chemistry, such as LFP"));
    purchased_ = addLine(QStringLiteral("purchased"), tr("Purchased"), tr("2027-02-28"));
    cycles_before_ = addLine(QStringLiteral("cyclesBefore"), tr("Cycles before"), tr("full charges before its first run here"));
    paid_price_ = addLine(QStringLiteral("paidPrice"), tr("Price pai&d"), tr("for this one, in the same currency"));
    tags_ = addLine(QStringLiteral("tags"), tr("&Tags"), tr("short words to find units by, such as: lent; tent"));
    remark_ = addLine(QStringLiteral("remark"), tr("Remar&k"));

    name_->setText(raw_text(unit.name));
    maker_->setText(raw_text(unit.maker));
    model_->setText(raw_text(unit.model));
    rated_energy_->setText(field_text(unit.rated_energy_wh, QStringLiteral("Wh")));
    rated_output_->setText(field_text(unit.rated_output_w, QStringLiteral("W")));
    peak_output_->setText(field_text(unit.peak_output_w, QStringLiteral("W")));
    price_->setText(field_text(unit.price));
    currency_->setText(raw_text(unit.currency));
    mass_->setText(field_text(unit.mass_kg, QStringLiteral("kg")));
    warranty_->setText(field_text(unit.warranty_years, QStringLiteral("years")));
    pv_volts_->setText(field_text(unit.pv_max_v, QStringLiteral("V")));
    pv_amps_->setText(field_text(unit.pv_max_a, QStringLiteral("A")));
    pv_watts_->setText(field_text(unit.pv_max_w, QStringLiteral("W")));
    charge_time_->setText(field_text(unit.charge_time_h, QStringLiteral("h")));
    pv_start_->setText(field_text(unit.pv_start_v, QStringLiteral("V")));
    pv_short_circuit_->setText(field_text(unit.pv_short_circuit_a, QStringLiteral("A")));
    serial_number_->setText(raw_text(unit.serial_number));
    chemistry_->setText(raw_text(unit.chemistry));
    purchased_->setText(raw_text(unit.purchased));
    cycles_before_->setText(field_text(unit.cycles_before));
    gauge_step_->setText(field_text(unit.gauge_step_percent, QStringLiteral("%")));
    paid_price_->setText(field_text(unit.paid_price));
    tags_->setText(raw_text(tags_text(unit.tags, "; ")));
    remark_->setText(raw_text(unit.remark));
    if (!unit.uuid.empty()) showMore(); // whoever edits a unit looks for any of them
    name_->setFocus();
}

void UnitForm::read() {
    unit_.name = text(name_, tr("The unit needs a name, by which lists and sheets call it."));
    unit_.maker = text(maker_);
    unit_.model = text(model_);
    unit_.remark = text(remark_);
    unit_.serial_number = text(serial_number_);
    unit_.chemistry = text(chemistry_);
    unit_.purchased = text(purchased_);
    if (const auto good = check_date({}, unit_.purchased); !good) explain(purchased_, tr("Write the day like 2027-02-28: year, month, day."));
    unit_.cycles_before = number(cycles_before_, number_in({}, {{}, false}));
    readClaims();
    readPrice();
    auto tags = tags_from(text(tags_));
    if (tags) unit_.tags = std::move(tags).value();
    else explain(tags_, text_of(tags.error().sentence()));
}

void UnitForm::readClaims() {
    unit_.rated_energy_wh = number(rated_energy_, above_zero(parse_energy_wh, say(phrase("dialogs", "the rated energy"))));
    unit_.rated_output_w = number(rated_output_, above_zero(parse_power_w, say(phrase("dialogs", "the rated output"))));
    unit_.peak_output_w = number(peak_output_, above_zero(parse_power_w, say(phrase("dialogs", "the peak output"))));
    unit_.mass_kg = number(mass_, number_in({{"kg", 1}, {"g", 0.001}, {"lb", 0.45359237}}, {say(phrase("dialogs", "the mass"))}));
    unit_.warranty_years = number(warranty_, number_in({{say(phrase("dialogs", "years")), 1},
                                                        {"years", 1},
                                                        {"year", 1},
                                                        {"a", 1},
                                                        {say(phrase("dialogs", "months")), 1.0 / 12},
                                                        {"months", 1.0 / 12}},
                                                       {say(phrase("dialogs", "the warranty"))}));
    unit_.pv_max_v = number(pv_volts_, number_in({{"V", 1}, {"V DC", 1}}, {say(phrase("dialogs", "the voltage limit"))}));
    unit_.pv_max_a = number(pv_amps_, number_in({{"A", 1}}, {say(phrase("dialogs", "the current limit"))}));
    unit_.pv_max_w = number(pv_watts_, above_zero(parse_power_w, say(phrase("dialogs", "the power limit"))));
    unit_.pv_start_v = number(pv_start_, number_in({{"V", 1}, {"V DC", 1}}, {say(phrase("dialogs", "the start voltage"))}));
    unit_.pv_short_circuit_a = number(pv_short_circuit_, number_in({{"A", 1}}, {say(phrase("dialogs", "the short-circuit current"))}));
    if (unit_.pv_short_circuit_a && unit_.pv_max_a && *unit_.pv_short_circuit_a < *unit_.pv_max_a)
        explain(pv_short_circuit_, tr("The short-circuit current must not lie below the current limit."));
    if (unit_.pv_start_v && unit_.pv_max_v && *unit_.pv_start_v >= *unit_.pv_max_v)
        explain(pv_start_, tr("The start voltage must lie below the voltage limit."));
    unit_.charge_time_h = number(charge_time_, number_in({{"h", 1}, {"min", 1.0 / 60}}, {say(phrase("dialogs", "the charge time"))}));
    const auto step = number(gauge_step_, number_in({{"%", 1}, {"pt", 1}}, {say(phrase("dialogs", "the gauge step"))}));
    if (step && *step > 50) explain(gauge_step_, tr("A gauge step of more than 50 % shows nothing; enter what the gauge counts by."));
    unit_.gauge_step_percent = step.value_or(1.0);
}

void UnitForm::readPrice() {
    static const QRegularExpression three_letters(QStringLiteral("^[A-Za-z]{3}$"));
    const auto code = currency_->text().trimmed();
    unit_.price = number(price_, number_in({}, {say(phrase("dialogs", "the price"))}));
    unit_.paid_price = number(paid_price_, number_in({}, {say(phrase("dialogs", "the price paid"))}));
    if (!code.isEmpty() && !three_letters.match(code).hasMatch())
        explain(currency_, tr("Enter the currency's three letters (ISO 4217), such as EUR or KES."));
    else if ((unit_.price || unit_.paid_price) && code.isEmpty())
        explain(currency_, tr("The price needs a currency: three letters (ISO 4217), such as EUR."));
    unit_.currency = utf8_of(code.toUpper());
}

} // namespace ullage
