// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/safety_words.h"

namespace ullage {

namespace {

constexpr Phrase pv_words = phrase("safety", "PV strings are live in daylight and can carry dangerous DC voltage.");

} // namespace

std::vector<Message> safety_words() {
    return {
        say(phrase("safety", "Stay in attendance for high-power runs, or use a fire-safe place.")),
        say(phrase("safety", "Never exceed the ratings of sockets, cords and the unit.")),
        say(phrase("safety", "Stop on heat, smell, swelling or noise.")),
        say(phrase("safety", "Mind ventilation, and keep children away.")),
        say(pv_words),
        say(phrase("safety", "Local electrical codes and a licensed electrician come first.")),
    };
}

std::vector<Message> safety_words(RunKind kind) {
    std::vector<Message> words = safety_words();
    // PV is at the bench of a charge alone.
    if (kind != RunKind::charge) std::erase(words, say(pv_words));
    const auto first = [&words](const Phrase& special) { words.insert(words.begin(), say(special)); };
    switch (kind) {
    case RunKind::drain: break;
    case RunKind::no_load_drain: first(phrase("safety", "The output stays live for as long as the run lasts: cover the sockets.")); break;
    case RunKind::charge:
        first(phrase("safety", "Charge only from a source within the input limits of the unit; never charge a unit that is hot, wet or damaged."));
        break;
    case RunKind::sustained_output:
        first(phrase("safety", "At the rated output cords and sockets grow hot: unwind cords, use no adapters in a chain, stay beside it."));
        break;
    case RunKind::peak_output:
        first(phrase("safety", "Peak loads can trip, arc or start by surprise: switch at the load, keep hands and tools clear, stay beside it."));
        break;
    case RunKind::standby:
        first(phrase("safety", "A unit left alone for days needs a fire-safe place; do not let it rest empty or in the heat."));
        break;
    }
    return words;
}

} // namespace ullage
