// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/run_tested.h"

#include "base/number.h"
#include "run_analysis/charge_run.h"
#include "run_analysis/output_run.h"
#include "style/numbers.h"
#include "style/words.h"

namespace ullage {

namespace {

QString named(const QString& name, const Quantity& quantity, int decimals) {
    return quantity.kind == Kind::not_known ? QString() : QStringLiteral("%1 %2").arg(name, shown_quantity(quantity, decimals).plain());
}

TestedOutcome tested_charge(const RunRecord& record, const EnergyAnalysis& energy) {
    const ChargeRun charge = analyse_charge(record, energy);
    QStringList parts{named(tr("mean"), charge.mean_charge_w, 0), named(tr("peak"), charge.peak_charge_w, 0), named(tr("taper"), charge.taper_h, 1)};
    parts.removeAll(QString());
    QString sentence = text_of(charge.sentence);
    if (!parts.isEmpty()) {
        const QString powers = parts.join(QStringLiteral(", "));
        sentence += QLatin1Char(' ') + powers.left(1).toUpper() + powers.mid(1) + QLatin1Char('.');
    }
    if (charge.taper_gauge_percent)
        sentence += tr(" The power began to fall at a gauge of %1 %.").arg(text_of(say_digits(exact_text(*charge.taper_gauge_percent))));
    return {tr("energy in"), shown_quantity(charge.charged_wh, 0).plain(), sentence, {}};
}

TestedOutcome tested_output(const RunRecord& record, const EnergyAnalysis& energy) {
    const OutputRun run = analyse_output(record, energy);
    QString outcome = text_of(say_output_outcome(run.outcome));
    outcome = outcome.left(1).toUpper() + outcome.mid(1);
    QStringList steps;
    for (const OutputStep& step : run.steps)
        steps << tr("%1 for %2 min, %3")
                     .arg(shown_quantity(step.watts, 0).plain())
                     .arg(60 * step.hours(), 0, 'f', 0)
                     .arg(text_of(say_output_end(step.end)));
    const QString sentence = text_of(run.sentence) + tr(" Trips: %1, resets: %2.").arg(run.trips).arg(run.resets);
    return {record.run.kind == RunKind::peak_output ? tr("peak output") : tr("sustained output"), outcome, sentence, steps.join(QLatin1Char('\n'))};
}

TestedOutcome tested_fraction(const Quantity& fraction) {
    // "at least" stands in the value itself.
    const bool name_kind = fraction.kind != Kind::not_known && fraction.kind != Kind::at_least;
    return {name_kind ? tr("usable fraction, %1").arg(text_of(say_kind(fraction.kind))) : tr("usable fraction"),
            shown_quantity(fraction, 2).plain(),
            text_of(fraction.reason),
            {}};
}

} // namespace

TestedOutcome run_tested(const RunRecord& record, const EnergyAnalysis& energy) {
    switch (record.run.kind) {
    case RunKind::charge: return tested_charge(record, energy);
    case RunKind::sustained_output:
    case RunKind::peak_output: return tested_output(record, energy);
    case RunKind::drain:
    case RunKind::no_load_drain:
    case RunKind::standby: break;
    }
    return tested_fraction(energy.usable_fraction);
}

} // namespace ullage
