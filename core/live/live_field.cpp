// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_field.h"

#include "base/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>
#include <vector>

namespace ullage {

namespace {

constexpr std::pair<SourceKind, std::string_view> kind_words[] = {{SourceKind::modbus_tcp, "modbus-tcp"},
                                                                  {SourceKind::modbus_rtu, "modbus-rtu"},
                                                                  {SourceKind::mqtt, "mqtt"},
                                                                  {SourceKind::http, "http"},
                                                                  {SourceKind::serial_lines, "lines"},
                                                                  {SourceKind::readout, "iec62056-21"},
                                                                  {SourceKind::scpi_tcp, "scpi-tcp"},
                                                                  {SourceKind::scpi_device, "scpi-device"}};

using Type = RegisterNumber::Type;
constexpr std::pair<Type, std::string_view> type_words[] = {{Type::u16, "u16"}, {Type::s16, "s16"}, {Type::u32, "u32"}, {Type::s32, "s32"},
                                                            {Type::u64, "u64"}, {Type::s64, "s64"}, {Type::f32, "f32"}, {Type::f64, "f64"}};

constexpr std::string_view low_first_word = "low-word-first", bytes_word = "bytes-swapped";
constexpr std::size_t longest_place = 1000;

Error bad_field(const Message& what, const Message& remedy) { return {Failure::bad_input, what, say(phrase("live", "what is read")), remedy}; }

std::vector<std::string_view> words_of(std::string_view line) {
    std::vector<std::string_view> words;
    for (std::size_t at = 0; at < line.size();) {
        const auto begin = line.find_first_not_of(" \t", at);
        if (begin == std::string_view::npos) break;
        at = std::min(line.find_first_of(" \t", begin), line.size());
        words.push_back(line.substr(begin, at - begin));
    }
    return words;
}

bool whole_number(std::string_view text, int lowest, int highest, int& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() && number >= lowest && number <= highest;
}

bool holds_values(ColumnRole role) { return is_of_meter(role) || is_of_unit(role); }

LogQuantity quantity_of(ColumnRole role) { return std::ranges::find(column_roles(), role, &RoleEntry::role)->quantity; }

bool sound_pointer(std::string_view pointer) {
    if (!pointer.empty() && pointer.front() != '/') return false;
    for (std::size_t at = pointer.find('~'); at != std::string_view::npos; at = pointer.find('~', at + 1))
        if (at + 1 >= pointer.size() || (pointer[at + 1] != '0' && pointer[at + 1] != '1')) return false;
    return true;
}

/// The place of a field, as its words between role and options say it.
Result<void> settle_place(SourceKind kind, const std::vector<std::string_view>& words, LiveField& field) {
    std::string place;
    for (const std::string_view word : words) place += (place.empty() ? "" : " ") + std::string(word);
    if (place.empty())
        return bad_field(say(phrase("live", "it does not say where the value stands")),
                         say(phrase("live", "write it like `power holding 52 as f32 in W`")));
    if (place.size() > longest_place) return bad_field(say(phrase("live", "the place is too long")), say(phrase("live", "shorten it")));
    if (is_modbus(kind)) {
        int address = 0;
        if (words.size() != 2 || (words[0] != "holding" && words[0] != "input") || !whole_number(words[1], 0, 65'535, address))
            return bad_field(say(phrase("live", "`%1` is no Modbus register"), place),
                             say(phrase("live", "write `holding 52` or `input 52`, counted from 0 to 65535")));
        field.table = words[0] == "input" ? RegisterTable::input : RegisterTable::holding;
        field.place = std::string(words[1]);
        return {};
    }
    if (kind == SourceKind::mqtt || kind == SourceKind::http) {
        const auto hash = place.find('#');
        if (hash != std::string::npos) field.pointer = place.substr(hash + 1);
        field.place = place.substr(0, hash);
        if (field.pointer && !sound_pointer(*field.pointer))
            return bad_field(say(phrase("live", "`%1` is no JSON pointer"), *field.pointer),
                             say(phrase("live", "write it like #/meters/0/power (RFC 6901)")));
        if (kind == SourceKind::http && !field.place.empty() && field.place != "body")
            return bad_field(say(phrase("live", "`%1` is no place in an answer"), field.place),
                             say(phrase("live", "write a JSON pointer like #/meters/0/power, or `body`")));
        if (kind == SourceKind::http) field.place.clear();
        if (kind == SourceKind::mqtt && (field.place.empty() || field.place.find('+') != std::string::npos))
            return bad_field(say(phrase("live", "a topic without wildcards is needed")),
                             say(phrase("live", "write it like `power bench/plug/power` or `power bench/plug#/power`")));
        return {};
    }
    if (kind == SourceKind::serial_lines) {
        int column = 0;
        if (words.size() == 2 && words[0] == "column" && whole_number(words[1], 1, 500, column)) {
            field.place = std::to_string(column);
            return {};
        }
        return bad_field(say(phrase("live", "`%1` is no column"), place), say(phrase("live", "write `column 3`, counted from 1")));
    }
    if (kind == SourceKind::readout && place.find_first_not_of("0123456789.:-*CFPL") != std::string::npos)
        return bad_field(say(phrase("live", "`%1` is no OBIS code"), place), say(phrase("live", "write it like 1.8.0 or 1-0:16.7.0")));
    if (is_scpi(kind) && std::ranges::any_of(place, [](char c) { return static_cast<unsigned char>(c) < 32; }))
        return bad_field(say(phrase("live", "a query holds no control characters")), say(phrase("live", "write it like MEAS:POW?")));
    // A program message without `?` sets something, and two queries of IEEE 488.2 do; this program only reads.
    const std::string header = place.substr(0, place.find(' '));
    if (is_scpi(kind) && (header.back() != '?' || place.find(';') != std::string::npos || header == "*TST?" || header == "*CAL?"))
        return bad_field(say(phrase("live", "`%1` is no query that only reads: its first word ends with `?`"), place),
                         say(phrase("live", "write it like MEAS:POW?")));
    field.place = place;
    return {};
}

Result<void> take_option(SourceKind kind, std::string_view option, std::string_view value, LiveField& field) {
    if (option == "as") {
        const auto* const type = std::ranges::find(type_words, value, &std::pair<Type, std::string_view>::second);
        if (!is_modbus(kind) || type == std::end(type_words))
            return bad_field(say(phrase("live", "`%1` is no type of a number in registers"), value),
                             say(phrase("live", "use u16, s16, u32, s32, u64, s64, f32 or f64")));
        field.number.type = type->first;
        return {};
    }
    if (option == "item") {
        if (!is_scpi(kind) || !whole_number(value, 1, 1000, field.item))
            return bad_field(say(phrase("live", "an item is counted from 1")), say(phrase("live", "write `item 2`")));
        return {};
    }
    if (option == "in") {
        const auto unit = unit_named(value);
        if (!unit || unit->quantity != quantity_of(field.role))
            return bad_field(say(phrase("live", "`%1` is no unit of %2"), value, say_role(field.role)),
                             say(phrase("live", "use one such as %1"), basic_unit(field.role).name));
        field.unit = unit->name;
        return {};
    }
    const Result<double> times = parse_number(value);
    if (!times || times.value() == 0 || std::abs(times.value()) > 1e12)
        return bad_field(say(phrase("live", "`%1` is no factor"), value), say(phrase("live", "write `times 0.1`")));
    field.times = times.value();
    return {};
}

} // namespace

std::string_view kind_word(SourceKind kind) { return std::ranges::find(kind_words, kind, &std::pair<SourceKind, std::string_view>::first)->second; }

std::optional<SourceKind> kind_from(std::string_view word) {
    const auto* const found = std::ranges::find(kind_words, word, &std::pair<SourceKind, std::string_view>::second);
    return found == std::end(kind_words) ? std::nullopt : std::optional(found->first);
}

bool is_modbus(SourceKind kind) { return kind == SourceKind::modbus_tcp || kind == SourceKind::modbus_rtu; }
bool is_scpi(SourceKind kind) { return kind == SourceKind::scpi_tcp || kind == SourceKind::scpi_device; }
bool has_line_settings(SourceKind kind) {
    return kind == SourceKind::modbus_rtu || kind == SourceKind::serial_lines || kind == SourceKind::readout || kind == SourceKind::scpi_device;
}

std::size_t registers_of(RegisterNumber::Type type) {
    switch (type) {
    case Type::u16:
    case Type::s16: return 1;
    case Type::u32:
    case Type::s32:
    case Type::f32: return 2;
    case Type::u64:
    case Type::s64:
    case Type::f64: break;
    }
    return 4;
}

std::optional<double> LiveField::value_of(double given) const { return value_of(given, {}); }

std::optional<double> LiveField::value_of(double given, std::string_view unit_with_it) const {
    const std::optional<LogUnit> said = unit_with_it.empty() ? unit_named(unit) : unit_named(unit_with_it);
    const LogUnit in = said.value_or(basic_unit(role));
    if (in.quantity != quantity_of(role)) return std::nullopt;
    // A power of ten below 1 is divided by, so that 69.5 mW is the double next to 0.0695.
    const double power = std::pow(10.0, std::abs(in.exponent));
    const double value = (in.exponent < 0 ? given / power : given * power) * in.factor / in.divisor * times;
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

Result<LiveField> field_from(SourceKind kind, std::string_view line) {
    const auto words = words_of(line);
    LiveField field;
    const auto role = words.empty() ? std::nullopt : role_from(words[0]);
    if (!role || !holds_values(*role))
        return bad_field(say(phrase("live", "`%1` does not begin with what the value is"), trimmed(line)),
                         say(phrase("live", "begin with register, power, voltage, current, gauge or output")));
    field.role = *role;
    constexpr std::string_view options[] = {"as", "item", "in", "times"};
    std::size_t at = 1;
    std::vector<std::string_view> place;
    const auto is_option = [&](std::string_view word) { return std::ranges::find(options, word) != std::end(options); };
    for (; at < words.size() && !is_option(words[at]); ++at) place.push_back(words[at]);
    if (auto settled = settle_place(kind, place, field); !settled) return settled.error();
    for (; at < words.size(); ++at) {
        if (is_modbus(kind) && words[at] == low_first_word) field.number.words_swapped = true;
        else if (is_modbus(kind) && words[at] == bytes_word) field.number.bytes_swapped = true;
        else if (!is_option(words[at]) || at + 1 == words.size())
            return bad_field(say(phrase("live", "`%1` is not understood"), words[at]),
                             say(phrase("live", "what may follow: as TYPE, item N, in UNIT, times X")));
        else {
            if (auto taken = take_option(kind, words[at], words[at + 1], field); !taken) return taken.error();
            ++at;
        }
    }
    return field;
}

std::string field_line(SourceKind kind, const LiveField& field) {
    std::string line(role_text(field.role));
    line += ' ';
    if (is_modbus(kind)) line += field.table == RegisterTable::input ? "input " : "holding ";
    if (kind == SourceKind::serial_lines) line += "column ";
    line += field.place;
    if (kind == SourceKind::http && !field.pointer) line += "body";
    if (field.pointer) line += '#' + *field.pointer;
    if (is_modbus(kind)) {
        line += fmt::format(" as {}", std::ranges::find(type_words, field.number.type, &std::pair<Type, std::string_view>::first)->second);
        if (field.number.words_swapped) line += fmt::format(" {}", low_first_word);
        if (field.number.bytes_swapped) line += fmt::format(" {}", bytes_word);
    }
    if (field.item != 1) line += fmt::format(" item {}", field.item);
    if (!field.unit.empty()) line += " in " + field.unit;
    if (field.times != 1) line += fmt::format(" times {}", field.times);
    return line;
}

} // namespace ullage
