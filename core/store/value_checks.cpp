// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/value_checks.h"

#include "model/tags.h"

#include <cmath>
#include <initializer_list>
#include <optional>
#include <string>
#include <utility>

namespace ullage::store {

namespace {

using Field = std::pair<const char*, std::optional<double>>;

Result<void> all_finite(std::initializer_list<Field> fields) {
    for (const auto& [name, value] : fields)
        if (value && !std::isfinite(*value))
            return Error{Failure::bad_input, "the value is no finite number", name,
                         "enter a number or leave it empty"};
    return {};
}

} // namespace

Result<void> check(const Unit& unit) {
    if (unit.name.empty()) return Error{Failure::bad_input, "the unit has no name", "name", "give it a name"};
    const auto tags = tags_from(tags_text(unit.tags));
    if (!tags) return tags.error();
    if (tags.value() != unit.tags)
        return Error{Failure::bad_input, "the tags are not in order, or one holds a semicolon, a comma or blanks around it", "tags",
                     "give short words, each once"};
    return all_finite({{"rated energy", unit.rated_energy_wh},
                       {"rated output", unit.rated_output_w},
                       {"peak output", unit.peak_output_w},
                       {"PV voltage limit", unit.pv_max_v},
                       {"PV current limit", unit.pv_max_a},
                       {"PV power limit", unit.pv_max_w},
                       {"PV start voltage", unit.pv_start_v},
                       {"charge time", unit.charge_time_h},
                       {"price", unit.price},
                       {"price paid", unit.paid_price},
                       {"mass", unit.mass_kg},
                       {"warranty", unit.warranty_years},
                       {"gauge step", unit.gauge_step_percent}});
}

Result<void> check(const Meter& meter) {
    if (meter.name.empty())
        return Error{Failure::bad_input, "the meter has no name", "name", "give it a name"};
    return all_finite({{"step", meter.step_wh},
                       {"error limit", meter.limit_percent},
                       {"span", meter.span_wh},
                       {"correction", meter.correction}});
}

Result<void> check(const Run& run) {
    return all_finite({{"ambient temperature", run.ambient_c}});
}

Result<void> check(const ReadingValues& values) {
    return all_finite({{"gauge", values.gauge_percent},
                       {"register", values.register_wh},
                       {"meter power", values.meter_w},
                       {"display power", values.display_w}});
}

Result<void> check(const PvSheet& sheet) {
    if (sheet.name.empty()) return Error{Failure::bad_input, "the PV sheet has no name", "name", "give it a name"};
    if (sheet.series < 1 || sheet.parallel < 1)
        return Error{Failure::bad_input, "a string has at least one module", "series, parallel", "give 1 or more"};
    const auto value_of = [](const std::optional<PvCoefficient>& coefficient) {
        return coefficient ? std::optional(coefficient->value) : std::nullopt;
    };
    return all_finite({{"Voc", sheet.voc_v},
                       {"Vmp", sheet.vmp_v},
                       {"Isc", sheet.isc_a},
                       {"Imp", sheet.imp_a},
                       {"coefficient of Voc", value_of(sheet.voc_coefficient)},
                       {"coefficient of Vmp", value_of(sheet.vmp_coefficient)},
                       {"coefficient of power", value_of(sheet.power_coefficient)},
                       {"NOCT", sheet.noct_c},
                       {"coldest ambient", sheet.coldest_c},
                       {"hottest ambient", sheet.hottest_c},
                       {"hottest cell", sheet.hottest_cell_c},
                       {"irradiance", sheet.irradiance_w_m2}});
}

} // namespace ullage::store
