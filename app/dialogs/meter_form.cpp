// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/meter_form.h"

#include "dialogs/field_text.h"
#include "formats/entry/entry_text.h"
#include "formats/text/meter_points_text.h"
#include "model/limits.h"
#include "style/words.h"

#include <QLineEdit>

#include <utility>

namespace ullage {

MeterForm::MeterForm(const Meter& meter, QWidget* parent)
    : FormDialog(meter.uuid.empty() ? tr("Add meter") : tr("Meter %1").arg(text_of(meter.name)),
                 meter.uuid.empty() ? tr("Add meter") : tr("Save meter"), parent),
      meter_(meter) {
    setObjectName(QStringLiteral("meterForm"));
    name_ = addLine(QStringLiteral("name"), tr("&Name"), tr("as you call it at the bench"));
    step_ = addLine(QStringLiteral("step"), tr("Register &step"), tr("1 Wh or 0.01 kWh"));
    limit_ = addLine(QStringLiteral("limit"), tr("&Error limit"), tr("1 % of the reading"));
    load_part_ =
        addLine(QStringLiteral("loadPart"), tr("of it, each load's o&wn"), tr("a quarter of the limit; 0 after a calibration at your loads"));
    span_ = addLine(QStringLiteral("span"), tr("Register s&pan"), tr("10000 kWh, where it returns to 0"));
    correction_ = addLine(QStringLiteral("correction"), tr("&Correction"), tr("1, or from a calibration"));
    buildCertificate();
    remark_ = addLine(QStringLiteral("remark"), tr("Remar&k"));
    if (!meter.uuid.empty()) why_ = addLine(QStringLiteral("reason"), tr("Wh&y it changes"), tr("kept in the meter's history"));
    addParagraph(QStringLiteral("meterHelp"),
                 tr("The error limit stands on the data sheet as ± a percentage of energy. Without it no interval can be given for "
                    "delivered energy. A part of it differs from load to load and does not cancel between loads that differ by more than a "
                    "factor of two. True energy is the correction times what the register counted. Points of a certificate replace correction and "
                    "limit: load in W, correction, then U in % and k."));
    showValues();
    name_->setFocus();
}

void MeterForm::buildCertificate() {
    addGroup(tr("Class and range"));
    const auto plate =
        addLineGroup(QStringLiteral("plate"), tr("C&lass"),
                     {{QStringLiteral("accuracyClass"), tr("class"), tr("B")}, {QStringLiteral("standard"), tr("of"), tr("EN 50470-3")}});
    class_ = plate[0];
    standard_ = plate[1];
    const auto range = addLineGroup(QStringLiteral("range"), tr("Ran&ge"),
                                    {{QStringLiteral("rangeLow"), tr("from"), tr("5 W")},
                                     {QStringLiteral("rangeHigh"), tr("to"), tr("3600 W")},
                                     {QStringLiteral("startingCurrent"), tr("starts at"), tr("0.02 A")}});
    range_low_ = range[0];
    range_high_ = range[1];
    starting_current_ = range[2];
    addGroup(tr("Certificate"));
    const auto paper = addLineGroup(QStringLiteral("paper"), tr("N&umber"),
                                    {{QStringLiteral("certificate"), tr("number"), {}}, {QStringLiteral("laboratory"), tr("laboratory"), {}}});
    certificate_ = paper[0];
    laboratory_ = paper[1];
    const auto dates = addLineGroup(QStringLiteral("dates"), tr("&Date"),
                                    {{QStringLiteral("certificateDate"), tr("date"), QStringLiteral("2027-05-14")},
                                     {QStringLiteral("validUntil"), tr("valid until"), QStringLiteral("2029-05-14")}});
    date_ = dates[0];
    valid_until_ = dates[1];
    points_ = addLine(QStringLiteral("points"), tr("P&oints"), QStringLiteral("100 0.998 0.3 2; 500 1.001 0.25 2"));
}

void MeterForm::showValues() {
    name_->setText(raw_text(meter_.name));
    step_->setText(field_text(meter_.step_wh, QStringLiteral("Wh")));
    limit_->setText(field_text(meter_.limit_percent, QStringLiteral("%")));
    load_part_->setText(field_text(meter_.load_part_percent, QStringLiteral("%")));
    span_->setText(field_text(meter_.span_wh, QStringLiteral("Wh")));
    correction_->setText(field_text(meter_.correction));
    class_->setText(raw_text(meter_.accuracy_class));
    standard_->setText(raw_text(meter_.standard));
    range_low_->setText(field_text(meter_.range_low_w, QStringLiteral("W")));
    range_high_->setText(field_text(meter_.range_high_w, QStringLiteral("W")));
    starting_current_->setText(field_text(meter_.starting_current_a, QStringLiteral("A")));
    certificate_->setText(raw_text(meter_.certificate.number));
    laboratory_->setText(raw_text(meter_.certificate.laboratory));
    date_->setText(raw_text(meter_.certificate.date));
    valid_until_->setText(raw_text(meter_.certificate.valid_until));
    points_->setText(raw_text(meter_points_text(meter_.points)));
    remark_->setText(raw_text(meter_.remark));
}

void MeterForm::read() {
    meter_.name = text(name_, tr("The meter needs a name, by which lists and sheets call it."));
    meter_.step_wh = number(step_, above_zero(parse_energy_wh, say(phrase("dialogs", "the register step"))));
    meter_.limit_percent = number(limit_, number_in({{"%", 1}}, {say(phrase("dialogs", "the error limit"))}));
    if (meter_.limit_percent && *meter_.limit_percent > 100)
        explain(limit_, tr("An error limit over 100 % says nothing; enter a percentage of the reading."));
    meter_.load_part_percent = number(load_part_, number_in({{"%", 1}}, {say(phrase("dialogs", "the part of each load"))}));
    if (meter_.load_part_percent && *meter_.load_part_percent > meter_.limit_percent.value_or(0))
        explain(load_part_, tr("It is a part of the error limit, so it cannot be larger; leave it empty for a quarter."));
    meter_.span_wh = number(span_, above_zero(parse_energy_wh, say(phrase("dialogs", "the register span"))));
    if (meter_.span_wh && meter_.step_wh && *meter_.span_wh <= *meter_.step_wh)
        explain(span_, tr("The span must be larger than one step of the register."));
    meter_.correction = number(correction_, number_in({}, {say(phrase("dialogs", "the correction"))})).value_or(1.0);
    meter_.remark = text(remark_);
    readCertificate();
    reason_ = why_ != nullptr ? text(why_) : std::string();
}

void MeterForm::readCertificate() {
    meter_.accuracy_class = text(class_);
    meter_.standard = text(standard_);
    meter_.starting_current_a = number(starting_current_, number_in({{"A", 1}, {"mA", 0.001}}, {say(phrase("dialogs", "the starting current"))}));
    meter_.range_low_w = number(range_low_, parse_power_w);
    meter_.range_high_w = number(range_high_, parse_power_w);
    if (meter_.range_low_w && meter_.range_high_w && *meter_.range_low_w > *meter_.range_high_w)
        explain(range_high_, tr("The range must end above where it begins."));
    meter_.certificate = {text(certificate_), text(date_), text(laboratory_), text(valid_until_)};
    for (auto* field : {date_, valid_until_})
        if (!check_date({}, text(field))) explain(field, tr("Enter a date like 2027-05-14."));
    auto points = meter_points_from(text(points_));
    if (points) meter_.points = std::move(points).value();
    else explain(points_, text_of(points.error().sentence()));
}

} // namespace ullage
