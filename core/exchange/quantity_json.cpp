// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/quantity_json.h"

#include <cmath>

namespace ullage {

Json number_json(std::optional<double> number) {
    if (!number || !std::isfinite(*number)) return nullptr;
    return *number;
}

Json quantity_json(const Quantity& quantity) {
    return {{"value", number_json(quantity.value)}, {"lower", number_json(quantity.lower)},
            {"upper", number_json(quantity.upper)}, {"unit", quantity.unit},
            {"kind", std::string(kind_text(quantity.kind))}, {"reason", quantity.reason}};
}

std::string json_text(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

} // namespace ullage
