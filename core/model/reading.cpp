// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/reading.h"

#include <algorithm>
#include <tuple>

namespace ullage {

std::string_view mark_text(MarkKind mark) {
    switch (mark) {
    case MarkKind::load_changed: return "load changed";
    case MarkKind::meter_zeroed: return "meter zeroed";
    case MarkKind::meter_swapped: return "meter swapped";
    case MarkKind::output_tripped: return "output tripped";
    case MarkKind::output_reset: return "output reset";
    case MarkKind::cut_off: return "cut-off";
    }
    return "load changed";
}

Message say_mark(MarkKind mark) {
    switch (mark) {
    case MarkKind::load_changed: return say(phrase("model", "load changed"));
    case MarkKind::meter_zeroed: return say(phrase("model", "meter zeroed"));
    case MarkKind::meter_swapped: return say(phrase("model", "meter swapped"));
    case MarkKind::output_tripped: return say(phrase("model", "output tripped"));
    case MarkKind::output_reset: return say(phrase("model", "output reset"));
    case MarkKind::cut_off: return say(phrase("model", "cut-off"));
    }
    return say(phrase("model", "load changed"));
}

std::optional<MarkKind> mark_from(std::string_view text) {
    for (MarkKind mark : all_mark_kinds)
        if (mark_text(mark) == text) return mark;
    return std::nullopt;
}

namespace {

bool earlier(const Reading& a, const Reading& b) { return std::tie(a.values.time_ms, a.sequence) < std::tie(b.values.time_ms, b.sequence); }

} // namespace

void sort_by_time(std::vector<Reading>& readings) {
    // Most are in order already, and sorting takes half as much memory again.
    if (!std::ranges::is_sorted(readings, earlier)) std::ranges::stable_sort(readings, earlier);
}

void put_reading(std::vector<Reading>& readings, Reading reading) {
    const auto before = std::ranges::find(readings, reading.uuid, &Reading::uuid);
    if (before != readings.end()) readings.erase(before);
    const auto place = std::ranges::upper_bound(readings, reading, earlier);
    readings.insert(place, std::move(reading));
}

} // namespace ullage
