// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_role.h"

#include "base/number.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <vector>

namespace ullage {

namespace {

constexpr TableRoleEntry table_role_entries[] = {
    {TableRole::unused, "unused"},
    {TableRole::time, "time"},
    {TableRole::date, "date"},
    {TableRole::elapsed, "elapsed"},
    {TableRole::gauge, "gauge"},
    {TableRole::energy, "register"},
    {TableRole::second_energy, "second-register"},
    {TableRole::power, "load-power"},
    {TableRole::display_power, "display-power"},
    {TableRole::mark, "mark"},
    {TableRole::remark, "remark"},
    {TableRole::run, "run"},
    {TableRole::unit, "unit"},
};

using Words = std::span<const std::string_view>;

constexpr std::string_view remark_heads[] = {"note",        "notes",       "remark",       "remarks",       "comment",   "comments",    "bemerkung",
                                             "bemerkungen", "notiz",       "notizen",      "anmerkung",     "remarque",  "remarques",   "nota",
                                             "notas",       "observation", "observations", "observaciones", "kommentar", "commentaire", "happened"};
constexpr std::string_view mark_heads[] = {"mark", "marks", "event", "events", "ereignis", "evento"};
constexpr std::string_view run_heads[] = {"run", "test", "lauf", "versuch", "essai", "prueba", "trial"};
constexpr std::string_view unit_heads[] = {"unit", "device", "station", "specimen", "model", "appareil", "equipo", "box", "ger\u00E4t", "geraet"};
constexpr std::string_view gauge_heads[] = {"gauge",          "soc",       "battery", "batt",   "bat",          "akku",    "batterie", "ladestand",
                                            "f\u00FCllstand", "akkustand", "level",   "niveau", "bater\u00EDa", "bateria", "percent",  "prozent"};
constexpr std::string_view date_heads[] = {"date", "datum", "day", "tag", "jour", "fecha", "d\u00EDa", "dia"};
constexpr std::string_view time_heads[] = {"time", "zeit",      "uhrzeit",  "uhr",       "heure",  "hora", "clock",
                                           "when", "timestamp", "datetime", "zeitpunkt", "moment", "at"};
constexpr std::string_view elapsed_heads[] = {"elapsed",    "duration",      "dauer", "laufzeit", "runtime", "since",
                                              "dur\u00E9e", "duraci\u00F3n", "hours", "stunden",  "minutes", "minuten"};
constexpr std::string_view energy_heads[] = {"energy",       "register", "meter",    "z\u00E4hler",  "zaehler",      "z\u00E4hlerstand",
                                             "zaehlerstand", "energie",  "energia",  "energ\u00EDa", "\u00E9nergie", "consumption",
                                             "counter",      "compteur", "contador", "verbrauch",    "plug"};
constexpr std::string_view power_heads[] = {"power", "load", "watt", "watts", "leistung", "puissance", "potencia", "last"};
constexpr std::string_view display_heads[] = {"display", "displayed", "shown", "unit", "screen", "anzeige", "output", "out", "ausgang", "box"};
/// A column with one of these is not the quantity itself.
constexpr std::string_view other_heads[] = {"remaining",   "left",  "rest",       "verbleibend", "restant", "price",   "cost",    "preis",
                                            "temperature", "temp",  "max",        "peak",        "factor",  "voltage", "volts",   "current",
                                            "delta",       "diff",  "difference", "delivered",   "error",   "second",  "average", "avg",
                                            "mean",        "used%", "spannung",   "strom",       "rated"};

/// Of a register: that of a second meter.
constexpr std::string_view second_heads[] = {"second", "2nd", "zweiter", "zweites", "zweite", "deuxi\u00E8me", "segundo"};
/// Of a power: worked out from the register.
constexpr std::string_view derived_heads[] = {"since", "seit"};

bool has_any(const std::vector<std::string>& words, Words known) {
    return std::ranges::any_of(words, [known](const std::string& word) { return std::ranges::find(known, word) != known.end(); });
}

/// Words in lower case; capital umlauts and accents of Latin-1 too.
std::vector<std::string> words_of_head(std::string_view title, std::vector<std::string>& as_written) {
    std::vector<std::string> words(1);
    as_written.assign(1, {});
    for (std::size_t i = 0; i < title.size(); ++i) {
        const auto c = static_cast<unsigned char>(title[i]);
        if (std::isalnum(c) != 0 || c == '%' || c >= 0x80) {
            as_written.back() += static_cast<char>(c);
            const bool capital = i > 0 && static_cast<unsigned char>(title[i - 1]) == 0xC3 && c >= 0x80 && c <= 0x9E;
            words.back() += static_cast<char>(c < 0x80 ? std::tolower(c) : capital ? c + 0x20 : c);
            // "SoC%" is a word and a unit.
            if (c == '%' && words.back().size() > 1) {
                words.back().pop_back(), as_written.back().pop_back();
                words.emplace_back("%"), as_written.emplace_back("%");
            }
        } else if (!words.back().empty()) {
            words.emplace_back(), as_written.emplace_back();
        }
    }
    if (words.back().empty()) words.pop_back(), as_written.pop_back();
    return words;
}

/// The unit that a head such as `Hours` is itself.
std::string unit_of_words(const std::vector<std::string>& words) {
    if (words.size() != 1) return {};
    if (words[0] == "hours" || words[0] == "stunden") return "h";
    return words[0] == "minutes" || words[0] == "minuten" ? "min" : "";
}

HeadMeaning meant(TableRole role, std::string unit, std::string_view title) {
    HeadMeaning meaning{role, std::move(unit), {}, true};
    meaning.why = role == TableRole::unused ? say(phrase("foreign_tables", "`%1` is not needed"), title)
                  : meaning.unit.empty()    ? say(phrase("foreign_tables", "`%1` names it"), title)
                                            : say(phrase("foreign_tables", "`%1` names it, in %2"), title, meaning.unit);
    return meaning;
}

} // namespace

std::span<const TableRoleEntry> table_roles() { return table_role_entries; }

Message say_table_role(TableRole role) {
    switch (role) {
    case TableRole::unused: return say(phrase("foreign_tables", "unused"));
    case TableRole::time: return say(phrase("foreign_tables", "time"));
    case TableRole::date: return say(phrase("foreign_tables", "date"));
    case TableRole::elapsed: return say(phrase("foreign_tables", "elapsed"));
    case TableRole::gauge: return say(phrase("foreign_tables", "gauge"));
    case TableRole::energy: return say(phrase("foreign_tables", "register"));
    case TableRole::second_energy: return say(phrase("foreign_tables", "second register"));
    case TableRole::power: return say(phrase("foreign_tables", "power of the load"));
    case TableRole::display_power: return say(phrase("foreign_tables", "power shown by the unit"));
    case TableRole::mark: return say(phrase("foreign_tables", "mark"));
    case TableRole::remark: return say(phrase("foreign_tables", "remark"));
    case TableRole::run: return say(phrase("foreign_tables", "run"));
    case TableRole::unit: return say(phrase("foreign_tables", "unit"));
    }
    return {};
}

std::string_view table_role_text(TableRole role) { return std::ranges::find(table_role_entries, role, &TableRoleEntry::role)->word; }

std::optional<TableRole> table_role_from(std::string_view text) {
    const auto* const found = std::ranges::find(table_role_entries, text, &TableRoleEntry::word);
    return found == std::end(table_role_entries) ? std::nullopt : std::optional(found->role);
}

bool holds_numbers(TableRole role) {
    return role == TableRole::gauge || role == TableRole::energy || role == TableRole::second_energy || role == TableRole::power ||
           role == TableRole::display_power;
}

std::optional<std::string> known_table_unit(std::string_view word) {
    if (word == "%" || word == "percent" || word == "Prozent") return "%";
    if (const auto unit = unit_named(word)) return std::string(unit->name);
    return std::nullopt;
}

HeadMeaning meaning_of_head(std::string_view title) {
    title = trimmed(title);
    std::vector<std::string> written;
    const std::vector<std::string> words = words_of_head(title, written);
    if (words.empty()) return {};
    // In workbooks of this program it says again what the time beside it says.
    if (title == "time, local") return meant(TableRole::unused, {}, title);
    std::string unit;
    LogQuantity quantity = LogQuantity::unknown;
    for (std::size_t i = written.size(); i-- > 0 && unit.empty();) {
        // A first letter such as the P of "P (W)" is no unit.
        if (i == 0 && written.size() > 1 && written[i].size() == 1 && written[i] != "%") continue;
        if (written[i] == "a") continue;
        if (const auto found = known_table_unit(written[i])) {
            unit = *found;
            quantity = unit == "%" ? LogQuantity::other : unit_named(unit)->quantity;
        }
    }
    const bool of_time = quantity == LogQuantity::time;
    const bool names_time = has_any(words, time_heads), names_date = has_any(words, date_heads);
    if (has_any(words, remark_heads)) return meant(TableRole::remark, {}, title);
    const bool second = has_any(words, second_heads) && !of_time && (quantity == LogQuantity::energy || has_any(words, energy_heads));
    if (second) return meant(TableRole::second_energy, quantity == LogQuantity::energy ? unit : std::string(), title);
    if (has_any(words, other_heads) || (quantity == LogQuantity::power && has_any(words, derived_heads))) return meant(TableRole::unused, {}, title);
    if (quantity == LogQuantity::energy) return meant(TableRole::energy, unit, title);
    if (quantity == LogQuantity::power) return meant(has_any(words, display_heads) ? TableRole::display_power : TableRole::power, unit, title);
    if (unit == "%") return meant(TableRole::gauge, unit, title);
    if (quantity == LogQuantity::voltage || quantity == LogQuantity::current || quantity == LogQuantity::charge || quantity == LogQuantity::other)
        return meant(TableRole::unused, {}, title);
    if (has_any(words, elapsed_heads) || (of_time && (names_time || words.size() <= 2)) || (has_any(words, run_heads) && names_time))
        return meant(TableRole::elapsed, of_time ? unit : unit_of_words(words), title);
    if (names_date && names_time) return meant(TableRole::time, {}, title);
    if (names_date) return meant(TableRole::date, {}, title);
    if (has_any(words, mark_heads)) return meant(TableRole::mark, {}, title);
    if (has_any(words, gauge_heads)) return meant(TableRole::gauge, {}, title);
    if (has_any(words, energy_heads)) return meant(TableRole::energy, {}, title);
    if (has_any(words, power_heads)) return meant(has_any(words, display_heads) ? TableRole::display_power : TableRole::power, {}, title);
    if (names_time) return meant(TableRole::time, {}, title);
    if (has_any(words, run_heads)) return meant(TableRole::run, {}, title);
    if (has_any(words, unit_heads)) return meant(TableRole::unit, {}, title);
    return {};
}

} // namespace ullage
