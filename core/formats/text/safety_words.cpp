// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/safety_words.h"

namespace ullage {

namespace {

constexpr const char* pv_words = "PV strings are live in daylight and can carry dangerous DC voltage.";

} // namespace

std::vector<std::string> safety_words() {
    return {
        "Stay in attendance for high-power runs, or use a fire-safe place.",
        "Never exceed the ratings of sockets, cords and the unit.",
        "Stop on heat, smell, swelling or noise.",
        "Mind ventilation, and keep children away.",
        pv_words,
        "Local electrical codes and a licensed electrician come first.",
    };
}

std::vector<std::string> safety_words(RunKind kind) {
    std::vector<std::string> words = safety_words();
    // PV is at the bench of a charge alone.
    if (kind != RunKind::charge) std::erase(words, pv_words);
    const auto first = [&words](const char* special) { words.insert(words.begin(), special); };
    switch (kind) {
    case RunKind::drain: break;
    case RunKind::no_load_drain: first("The output stays live for as long as the run lasts: cover the sockets."); break;
    case RunKind::charge:
        first("Charge only from a source within the input limits of the unit; never charge a unit that is hot, wet or damaged.");
        break;
    case RunKind::sustained_output:
        first("At the rated output cords and sockets grow hot: unwind cords, use no adapters in a chain, stay beside it.");
        break;
    case RunKind::peak_output:
        first("Peak loads can trip, arc or start by surprise: switch at the load, keep hands and tools clear, stay beside it.");
        break;
    case RunKind::standby: first("A unit left alone for days needs a fire-safe place; do not let it rest empty or in the heat."); break;
    }
    return words;
}

} // namespace ullage
