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

} // namespace ullage::store
