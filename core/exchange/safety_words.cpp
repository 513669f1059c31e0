// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/safety_words.h"

namespace ullage {

std::vector<std::string> safety_words() {
    return {
        "Stay in attendance for high-power runs, or use a fire-safe place.",
        "Never exceed the ratings of sockets, cords and the unit.",
        "Stop on heat, smell, swelling or noise.",
        "Mind ventilation, and keep children away.",
        "PV strings are live in daylight and can carry dangerous DC voltage.",
        "Local electrical codes and a licensed electrician come first.",
        "Results are measurements of one specimen, not a safety certification.",
    };
}

} // namespace ullage
