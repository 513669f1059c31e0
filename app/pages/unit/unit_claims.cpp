// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/unit/unit_claims.h"

#include "base/number.h"
#include "model/tags.h"
#include "style/numbers.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

/// Claims are shown with the digits that the maker printed.
QString stated(const std::optional<double>& value, const QString& unit) {
    if (!value) return {};
    const auto exact = exact_text(*value);
    const auto point = exact.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(exact.size() - point - 1);
    const auto digits = shown_number(value, std::min(decimals, 3));
    return unit.isEmpty() ? digits : QStringLiteral("%1 %2").arg(digits, unit);
}

QString pv_limits_text(const Unit& unit) {
    QStringList parts;
    if (unit.pv_max_v) parts << stated(unit.pv_max_v, QStringLiteral("V"));
    if (unit.pv_max_a) parts << stated(unit.pv_max_a, QStringLiteral("A"));
    if (unit.pv_max_w) parts << stated(unit.pv_max_w, QStringLiteral("W"));
    if (unit.pv_start_v) parts << tr("from %1").arg(stated(unit.pv_start_v, QStringLiteral("V")));
    if (unit.pv_short_circuit_a) parts << tr("%1 short circuit").arg(stated(unit.pv_short_circuit_a, QStringLiteral("A")));
    return parts.join(QStringLiteral(", "));
}

/// As a comparison chooses: a cut-off that was seen before one found off, then what is at least known, then what is projected.
int rank(const RunRecord& record, const EnergyAnalysis& energy) {
    switch (energy.usable_fraction.kind) {
    case Kind::measured: return record.run.end == RunEnd::found_off ? 1 : 0;
    case Kind::at_least: return 2;
    case Kind::projected: return 3;
    case Kind::bracket:
    case Kind::not_known: return 4;
    }
    return 4;
}

/// What a drain from full to cut-off says of the unit carries how well the unit repeats.
Quantity for_the_unit(const Quantity& delivered_wh, const UnitFit& fit, const RunId& run_uuid) {
    for (const RepeatMean& mean : fit.repeats)
        for (const std::size_t place : mean.drains)
            if (fit.drains[place].run_uuid == run_uuid) return mean.delivered_wh;
    return delivered_wh;
}

} // namespace

QList<ClaimText> unit_claims(const Unit& unit) {
    return {
        {tr("rated energy"), stated(unit.rated_energy_wh, QStringLiteral("Wh"))},
        {tr("rated output"), stated(unit.rated_output_w, QStringLiteral("W"))},
        {tr("peak output"), stated(unit.peak_output_w, QStringLiteral("W"))},
        {tr("charge time"), stated(unit.charge_time_h, QStringLiteral("h"))},
        {tr("price"), stated(unit.price, text_of(unit.currency))},
        {tr("price paid"), stated(unit.paid_price, text_of(unit.currency))},
        {tr("mass"), stated(unit.mass_kg, QStringLiteral("kg"))},
        {tr("warranty"), stated(unit.warranty_years, tr("years"))},
        {tr("PV input, at most"), pv_limits_text(unit)},
        {tr("gauge step"), stated(unit.gauge_step_percent, QStringLiteral("%"))},
        {tr("tags"), text_of(tags_text(unit.tags, ", "))},
    };
}

std::optional<RepresentativeRun> representative_run(const Document& document, const UnitId& unit_uuid) {
    const UnitFit& fit = document.unitFit(unit_uuid);
    if (!fit.repeats.empty() && fit.repeats.front().count() > 1) {
        const RepeatMean& mean = fit.repeats.front();
        const QString words = tr("mean of %1 drains from full to cut-off, near %2%3W")
                                  .arg(mean.count())
                                  .arg(text_of(say_number(mean.mean_load_w, 0)))
                                  .arg(QChar(QChar::Nbsp));
        return RepresentativeRun{fit.drains[mean.drains.back()].run_uuid, mean.delivered_wh, words};
    }
    std::optional<RepresentativeRun> told;
    int told_rank = 0;
    for (const auto* record : document.runs(unit_uuid)) {
        if (record->run.kind != RunKind::drain) continue;
        const auto& energy = document.analysis(record->run.uuid).energy;
        const int this_rank = rank(*record, energy);
        if (!energy.delivered_wh.value || (told && this_rank > told_rank)) continue;
        told_rank = this_rank;
        const auto title = text_of(run_title(*record, energy));
        const auto source = record->run.end == RunEnd::still_running        ? tr("so far, %1")
                            : energy.usable_fraction.kind == Kind::measured ? tr("from full to cut-off, %1")
                                                                            : tr("not the whole unit, %1");
        told = RepresentativeRun{record->run.uuid, for_the_unit(energy.delivered_wh, fit, record->run.uuid), source.arg(title)};
    }
    return told;
}

} // namespace ullage
