// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/meter_form.h"

#include "dialogs/field_text.h"
#include "formats/entry/entry_text.h"
#include "style/words.h"

#include <QLineEdit>

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
    remark_ = addLine(QStringLiteral("remark"), tr("Remar&k"));
    addParagraph(QStringLiteral("meterHelp"),
                 tr("The error limit stands on the data sheet as ± a percentage of energy. Without it no interval can be given for "
                    "delivered energy. A part of it differs from load to load and does not cancel between loads that differ by more than a "
                    "factor of two. True energy is the correction times what the register counted."));
    name_->setText(raw_text(meter.name));
    step_->setText(field_text(meter.step_wh, QStringLiteral("Wh")));
    limit_->setText(field_text(meter.limit_percent, QStringLiteral("%")));
    load_part_->setText(field_text(meter.load_part_percent, QStringLiteral("%")));
    span_->setText(field_text(meter.span_wh, QStringLiteral("Wh")));
    correction_->setText(field_text(meter.correction));
    remark_->setText(raw_text(meter.remark));
    name_->setFocus();
}

void MeterForm::read() {
    meter_.name = text(name_, tr("The meter needs a name, by which lists and sheets call it."));
    meter_.step_wh = number(step_, above_zero(parse_energy_wh, "the register step"));
    meter_.limit_percent = number(limit_, number_in({{"%", 1}}, {"the error limit"}));
    if (meter_.limit_percent && *meter_.limit_percent > 100)
        explain(limit_, tr("An error limit over 100 % says nothing; enter a percentage of the reading."));
    meter_.load_part_percent = number(load_part_, number_in({{"%", 1}}, {"the part of each load"}));
    if (meter_.load_part_percent && *meter_.load_part_percent > meter_.limit_percent.value_or(0))
        explain(load_part_, tr("It is a part of the error limit, so it cannot be larger; leave it empty for a quarter."));
    meter_.span_wh = number(span_, above_zero(parse_energy_wh, "the register span"));
    if (meter_.span_wh && meter_.step_wh && *meter_.span_wh <= *meter_.step_wh)
        explain(span_, tr("The span must be larger than one step of the register."));
    meter_.correction = number(correction_, number_in({}, {"the correction"})).value_or(1.0);
    meter_.remark = text(remark_);
}

} // namespace ullage
