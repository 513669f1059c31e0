// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/column_role.h"

#include <algorithm>

namespace ullage {

namespace {

// English, German, French, Spanish, as headers of logs have them.
constexpr std::string_view energy_words[] = {"energy", "register", "energie", "energia", "consumption", "kwh", "wh"};
constexpr std::string_view power_words[] = {"power", "watt", "watts", "leistung", "puissance", "potencia", "p"};
constexpr std::string_view voltage_words[] = {"voltage", "volt", "volts", "spannung", "tension", "u", "v"};
constexpr std::string_view current_words[] = {"current", "amps", "ampere", "amperes", "strom", "courant", "corriente", "i"};
constexpr std::string_view gauge_words[] = {"gauge", "soc", "ladestand"}; // without a percent sign no other word is clear

constexpr RoleEntry role_entries[] = {
    {ColumnRole::unused, "unused"},
    {ColumnRole::time, "time"},
    {ColumnRole::date, "date"},
    {ColumnRole::energy, "register", LogQuantity::energy, "Wh", &TraceSample::register_wh, energy_words},
    {ColumnRole::power, "power", LogQuantity::power, "W", &TraceSample::power_w, power_words},
    {ColumnRole::voltage, "voltage", LogQuantity::voltage, "V", &TraceSample::voltage_v, voltage_words},
    {ColumnRole::current, "current", LogQuantity::current, "A", &TraceSample::current_a, current_words},
    {ColumnRole::gauge, "gauge", LogQuantity::share, "%", &TraceSample::gauge_percent, gauge_words},
    {ColumnRole::output, "output", LogQuantity::power, "W", &TraceSample::output_w},
};

const RoleEntry& entry_of(ColumnRole role) { return *std::ranges::find(role_entries, role, &RoleEntry::role); }

} // namespace

std::span<const RoleEntry> column_roles() { return role_entries; }

std::string_view role_text(ColumnRole role) { return entry_of(role).word; }

Message say_role(ColumnRole role) {
    switch (role) {
    case ColumnRole::unused: return say(phrase("trace", "unused"));
    case ColumnRole::time: return say(phrase("trace", "time"));
    case ColumnRole::date: return say(phrase("trace", "date"));
    case ColumnRole::energy: return say(phrase("trace", "register"));
    case ColumnRole::power: return say(phrase("trace", "power"));
    case ColumnRole::voltage: return say(phrase("trace", "voltage"));
    case ColumnRole::current: return say(phrase("trace", "current"));
    case ColumnRole::gauge: return say(phrase("trace", "gauge"));
    case ColumnRole::output: return say(phrase("trace", "output"));
    }
    return {};
}

std::optional<ColumnRole> role_from(std::string_view text) {
    const auto* const found = std::ranges::find(role_entries, text, &RoleEntry::word);
    return found == std::end(role_entries) ? std::nullopt : std::optional(found->role);
}

ColumnRole role_of(LogQuantity quantity) {
    const auto* const found = std::ranges::find(role_entries, quantity, &RoleEntry::quantity);
    return found == std::end(role_entries) ? ColumnRole::unused : found->role;
}

ColumnRole role_of_header_word(std::string_view word) {
    for (const RoleEntry& entry : role_entries)
        if (std::ranges::find(entry.header_words, word) != entry.header_words.end()) return entry.role;
    return ColumnRole::unused;
}

LogUnit basic_unit(ColumnRole role) { return unit_named(entry_of(role).basic_unit).value_or(LogUnit()); }

} // namespace ullage
