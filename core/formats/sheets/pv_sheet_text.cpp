// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/pv_sheet_text.h"

#include "base/number.h"
#include "formats/text/preface_text.h"
#include "formats/text/sheet_keys.h"
#include "model/limits.h"
#include "pv/module_voltage.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

using OptionalNumber = std::optional<double>;

Error pv_error(const Message& what, const Message& remedy) { return {Failure::bad_input, what, {}, remedy}; }

std::string number_text(const OptionalNumber& number) { return number ? exact_text(*number) : std::string(); }

PvKey number_key(std::string_view name, const Phrase& help, std::function<OptionalNumber&(PvSheetText&)> at) {
    return {name, help, [at](const PvSheetText& sheet) { return number_text(at(const_cast<PvSheetText&>(sheet))); },
            [at](PvSheetText& sheet, std::string_view value) -> Result<void> {
                const Result<double> number = parse_number(value);
                if (!number) return number.error();
                at(sheet) = number.value();
                return {};
            }};
}

PvKey limit_key(std::string_view name, const Phrase& help, const NumberRange& range, OptionalNumber PvLimits::*member) {
    PvKey key = number_key(name, help, [member](PvSheetText& sheet) -> OptionalNumber& { return sheet.limits.*member; });
    key.read = [read = key.read, range, member](PvSheetText& sheet, std::string_view value) -> Result<void> {
        if (Result<void> done = read(sheet, value); !done) return done;
        if (!(*(sheet.limits.*member) > 0))
            return pv_error(say(phrase("sheets", "a limit is above 0")), say(phrase("sheets", "enter what the unit's label says")));
        return check_number({}, sheet.limits.*member, range);
    };
    return key;
}

PvKey sheet_number(std::string_view name, const Phrase& help, OptionalNumber PvSheet::*member) {
    return number_key(name, help, [member](PvSheetText& sheet) -> OptionalNumber& { return sheet.sheet.*member; });
}

PvKey words_key(std::string_view name, const Phrase& help, std::function<std::string&(PvSheetText&)> at) {
    return {name, help, [at](const PvSheetText& sheet) { return at(const_cast<PvSheetText&>(sheet)); },
            [at](PvSheetText& sheet, std::string_view value) -> Result<void> {
                at(sheet) = value;
                return {};
            }};
}

PvKey coefficient_key(std::string_view name, const Phrase& help, std::optional<PvCoefficient> PvSheet::*member) {
    return {name, help,
            [member](const PvSheetText& sheet) -> std::string {
                const auto& coefficient = sheet.sheet.*member;
                if (!coefficient) return {};
                return exact_text(coefficient->value) + (coefficient->per == PvPerDegree::percent ? " %/°C" : " mV/°C");
            },
            [member](PvSheetText& sheet, std::string_view value) -> Result<void> {
                const Result<PvCoefficient> coefficient = parse_pv_coefficient(value);
                if (!coefficient) return coefficient.error();
                sheet.sheet.*member = coefficient.value();
                return {};
            }};
}

PvKey count_key(std::string_view name, const Phrase& help, int PvSheet::*member) {
    return {name, help, [member](const PvSheetText& sheet) { return std::to_string(sheet.sheet.*member); },
            [member](PvSheetText& sheet, std::string_view value) -> Result<void> {
                const Result<double> number = parse_number(value);
                if (!number) return number.error();
                if (number.value() != std::floor(number.value()) || number.value() < 1 || number.value() > 1000)
                    return pv_error(say(phrase("sheets", "`%1` is no number of modules"), value),
                                    say(phrase("sheets", "give a whole number from 1 to 1000")));
                sheet.sheet.*member = static_cast<int>(number.value());
                return {};
            }};
}

PvKey cell_key() {
    return {"cells", phrase("sheets", "crystalline silicon, or other (then no table of factors applies)"),
            [](const PvSheetText& sheet) { return std::string(sheet.sheet.crystalline_silicon ? "crystalline silicon" : "other"); },
            [](PvSheetText& sheet, std::string_view value) -> Result<void> {
                const std::string kind = lower_case(value);
                if (kind != "crystalline silicon" && kind != "other")
                    return pv_error(say(phrase("sheets", "`%1` is no kind of cell"), value),
                                    say(phrase("sheets", "use `crystalline silicon` or `other`")));
                sheet.sheet.crystalline_silicon = kind != "other";
                return {};
            }};
}

} // namespace

PvCheck check_pv(const PvSheetText& sheet) { return check_pv(sheet.sheet, sheet.limits); }

const std::vector<PvKey>& pv_keys() {
    static const std::vector<PvKey> keys = {
        words_key("name", phrase("sheets", "what the sheet is called"), [](PvSheetText& sheet) -> std::string& { return sheet.sheet.name; }),
        words_key("unit", phrase("sheets", "name of the unit whose PV input it is meant for"),
                  [](PvSheetText& sheet) -> std::string& { return sheet.unit; }),
        words_key("module", phrase("sheets", "the module, as its label says"), [](PvSheetText& sheet) -> std::string& { return sheet.sheet.module; }),
        sheet_number("voc_v", phrase("sheets", "open-circuit voltage of one module, V"), &PvSheet::voc_v),
        sheet_number("vmp_v", phrase("sheets", "voltage at maximum power, V"), &PvSheet::vmp_v),
        sheet_number("isc_a", phrase("sheets", "short-circuit current, A"), &PvSheet::isc_a),
        sheet_number("imp_a", phrase("sheets", "current at maximum power, A"), &PvSheet::imp_a),
        coefficient_key("voc_coefficient", phrase("sheets", "temperature coefficient of Voc, %/°C or mV/°C"), &PvSheet::voc_coefficient),
        coefficient_key("vmp_coefficient", phrase("sheets", "temperature coefficient of Vmp, %/°C or mV/°C"), &PvSheet::vmp_coefficient),
        coefficient_key("power_coefficient", phrase("sheets", "temperature coefficient of the power, %/°C"), &PvSheet::power_coefficient),
        sheet_number("voc_tolerance_percent", phrase("sheets", "tolerance of the module's voltages, %; 3 where not stated"),
                     &PvSheet::voc_tolerance_percent),
        sheet_number("noct_c", phrase("sheets", "nominal operating cell temperature, °C"), &PvSheet::noct_c),
        cell_key(),
        count_key("series", phrase("sheets", "modules in a string"), &PvSheet::series),
        count_key("parallel", phrase("sheets", "strings side by side"), &PvSheet::parallel),
        sheet_number("coldest_c", phrase("sheets", "coldest ambient temperature in daylight, °C"), &PvSheet::coldest_c),
        sheet_number("hottest_c", phrase("sheets", "hottest ambient temperature, °C"), &PvSheet::hottest_c),
        sheet_number("hottest_cell_c", phrase("sheets", "hottest cell temperature instead, °C"), &PvSheet::hottest_cell_c),
        sheet_number("irradiance_w_m2", phrase("sheets", "irradiance at the hottest, W/m²; 1000 where not stated"), &PvSheet::irradiance_w_m2),
        limit_key("pv_max_v", phrase("sheets", "voltage limit of the PV input, V"), voltage_range, &PvLimits::max_v),
        limit_key("pv_max_a", phrase("sheets", "operating current that the PV input is made for, A"), current_range, &PvLimits::max_a),
        limit_key("pv_short_circuit_a", phrase("sheets", "short-circuit current that the PV input withstands, A"), current_range,
                  &PvLimits::short_circuit_a),
        limit_key("pv_max_w", phrase("sheets", "power limit of the PV input, W"), rated_power_range, &PvLimits::max_w),
        limit_key("pv_start_v", phrase("sheets", "lowest voltage at which the PV input starts, V"), voltage_range, &PvLimits::start_v),
        words_key("remark", phrase("sheets", "anything else"), [](PvSheetText& sheet) -> std::string& { return sheet.sheet.remark; }),
    };
    return keys;
}

Result<PvCoefficient> parse_pv_coefficient(std::string_view text) {
    std::string typed(trimmed(text));
    // A true minus sign is typed by few and pasted by many.
    if (typed.starts_with("−")) typed.replace(0, std::string_view("−").size(), "-");
    const std::size_t end = typed.find_first_not_of("+-0123456789.,");
    const std::string unit = lower_case(trimmed(end == std::string::npos ? std::string_view() : std::string_view(typed).substr(end)));
    PvCoefficient coefficient;
    static constexpr std::string_view percents[] = {"", "%", "%/°c", "%/c", "%/k"}, millis[] = {"mv/°c", "mv/c", "mv/k"};
    if (std::ranges::count(millis, unit) > 0) coefficient.per = PvPerDegree::milli;
    else if (std::ranges::count(percents, unit) == 0)
        return pv_error(say(phrase("sheets", "`%1` has an unknown unit"), typed), say(phrase("sheets", "use %/°C or mV/°C")));
    std::string_view digits = trimmed(std::string_view(typed).substr(0, std::min(end, typed.size())));
    if (digits.starts_with('+')) digits.remove_prefix(1);
    const Result<double> number = parse_number(digits);
    if (!number) return number.error();
    coefficient.value = number.value();
    return coefficient;
}

Result<PvSheetText> read_pv_sheet(std::string_view text, const std::string& where) {
    PvSheetText sheet;
    std::vector<std::string_view> seen;
    int line_number = 0;
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    while (!text.empty()) {
        ++line_number;
        const std::size_t end = text.find('\n');
        std::string_view line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (line.ends_with('\r')) line.remove_suffix(1);
        line = trimmed(line);
        if (line.empty() || line.starts_with('#')) continue;
        const std::size_t colon = line.find(':');
        const std::string name = lower_case(trimmed(line.substr(0, colon)));
        const auto at_line = [&](Error error) {
            error.where = say(phrase("sheets", "%1, line %2"), where, say_number(line_number));
            return error;
        };
        if (colon == std::string_view::npos)
            return at_line(
                pv_error(say(phrase("sheets", "the line has no colon")), say(phrase("sheets", "write `key: value`, or begin a comment with #"))));
        const auto key = std::ranges::find(pv_keys(), std::string_view(name), &PvKey::name);
        if (key == pv_keys().end())
            return at_line(
                pv_error(say(phrase("sheets", "the key `%1` is not known"), name), say(phrase("sheets", "see ullage pv-check --help for the keys"))));
        if (std::ranges::count(seen, key->name) > 0)
            return at_line(pv_error(say(phrase("sheets", "the key `%1` stands twice"), name), say(phrase("sheets", "keep one of the two"))));
        seen.push_back(key->name);
        const Result<std::string> value = unescaped_preface(line.substr(colon + 1));
        if (!value) return at_line(value.error());
        if (value.value().empty()) continue;
        if (Result<void> done = key->read(sheet, value.value()); !done) return at_line(done.error());
    }
    if (Result<void> good = check_pv_sheet(sheet.sheet); !good) {
        Error error = good.error();
        error.where = say_joined({where, error.where}, ", ");
        return error;
    }
    return sheet;
}

std::string pv_sheet_text(const PvSheetText& sheet) {
    std::string text;
    for (const PvKey& key : pv_keys())
        if (const std::string value = key.text(sheet); !value.empty()) text += fmt::format("{}: {}\n", key.name, escaped_preface(value));
    return text;
}

} // namespace ullage
