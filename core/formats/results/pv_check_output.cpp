// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"
#include "base/number.h"
#include "base/version.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/tables/table.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableCell cell(const PvComparison& of, const std::optional<double>& value) {
    if (!value) return Message("-");
    return say_measure(*value, of.unit == "W" ? 0 : 1, of.unit);
}

Table comparisons_table(const PvCheck& check) {
    Table table;
    table.columns = {{"title", say(phrase("results", "comparison")), {}, Content::text, 0},
                     {"value", say(phrase("results", "string")), {}, Content::text, 0},
                     {"limit", say(phrase("results", "limit")), {}, Content::text, 0},
                     {"margin", say(phrase("results", "margin")), {}, Content::text, 0},
                     {"outcome", {}, {}, Content::text, 0},
                     {"sentence", say(phrase("results", "based on")), {}, Content::text, 0}};
    for (const PvComparison& each : check.comparisons)
        table.rows.push_back(
            {each.title, cell(each, each.value), cell(each, each.limit), cell(each, each.margin), say_pv_outcome(each.outcome), each.sentence});
    return table;
}

/// Of letters beyond ASCII those of Latin-1, which the languages of the program have.
std::string in_capitals(std::string text) {
    constexpr int from_small_to_capital = 'A' - 'a'; // in UTF-8 too, behind 0xC3
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool latin = i > 0 && text[i - 1] == '\xC3' && text[i] >= '\xA0' && text[i] <= '\xBE' && text[i] != '\xB7';
        if (latin || (text[i] >= 'a' && text[i] <= 'z')) text[i] = static_cast<char>(text[i] + from_small_to_capital);
    }
    return text;
}

Json count_json(const std::optional<int>& count) {
    if (!count) return nullptr;
    return *count;
}

} // namespace

std::string pv_check_text(const PvSheetText& sheet, const PvCheck& check) {
    const PvSheet& data = sheet.sheet;
    const Message name = data.name.empty() ? say(phrase("results", "PV input check")) : Message(data.name);
    const std::string head = one_line((sheet.unit.empty() ? name : say(phrase("results", "%1, PV input of %2"), name, sheet.unit)).text());
    std::string text = head + '\n' + std::string(display_width(head), '=') + '\n';
    const Message strings = say(phrase("results", "%1 in series, %2 parallel"), say_number(data.series), say_number(data.parallel));
    text += one_line((data.module.empty() ? strings : say(phrase("results", "%1: %2"), data.module, strings)).text()) + '\n';
    const std::string verdict = is_danger(check.verdict) ? in_capitals(check.verdict_text) : check.verdict_text.text();
    text += '\n' + say(phrase("results", "Verdict: %1"), verdict).text() + '\n' + one_line(std::string(check.headline)) + "\n\n" +
            table_text(comparisons_table(check), TableFormat::text);
    text += "\n" + check.suggestion.text() + "\n";
    if (check.conductor_a)
        text += say(phrase("results", "Conductors and fuses of a string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8)."),
                    say_number(*check.conductor_a, 1))
                    .text() +
                '\n';
    if (!check.string_fuses.empty()) text += std::string(check.string_fuses) + '\n';
    text += '\n' + say(phrase("results", "Assumed")).text() + '\n';
    for (const Message& line : check.assumptions) text += "  " + line.text() + '\n';
    text += '\n' + say(phrase("results", "Cautions")).text() + '\n';
    for (const auto& line : pv_cautions()) text += "  " + std::string(line) + '\n';
    return text;
}

std::string pv_check_json(const PvSheetText& sheet, const PvCheck& check) {
    const SpeakingIn for_machines(english());
    Json keys = Json::object();
    for (const PvKey& key : pv_keys())
        if (const std::string value = key.text(sheet); !value.empty()) keys[std::string(key.name)] = value;
    Json comparisons = Json::array();
    for (const PvComparison& each : check.comparisons)
        comparisons.push_back({{"key", each.key},
                               {"title", each.title},
                               {"value", number_json(each.value)},
                               {"worst", number_json(each.worst)},
                               {"limit", number_json(each.limit)},
                               {"margin", number_json(each.margin)},
                               {"unit", each.unit},
                               {"outcome", std::string(pv_outcome_text(each.outcome))},
                               {"sentence", each.sentence}});
    Json missing = Json::array();
    for (const PvMissing& each : check.missing) missing.push_back(say(phrase("results", "%1 of %2"), each.what, each.of));
    return json_text({{"program", "ullage"},
                      {"version", std::string(program_version())},
                      {"format_version", json_format_version},
                      {"sheet", std::move(keys)},
                      {"verdict", check.verdict_text},
                      {"verdict_key", std::string(pv_verdict_key(check.verdict))},
                      {"missing", std::move(missing)},
                      {"headline", check.headline},
                      {"comparisons", std::move(comparisons)},
                      {"voc_tolerance_percent", check.voc_tolerance_percent},
                      {"cold_voc_v", number_json(check.cold_voc_v)},
                      {"hot_vmp_v", number_json(check.hot_vmp_v)},
                      {"hot_cell_c", number_json(check.hot_cell_c)},
                      {"standard_w", number_json(check.standard_w)},
                      {"hot_w", number_json(check.hot_w)},
                      {"conductor_a", number_json(check.conductor_a)},
                      {"reverse_a", number_json(check.reverse_a)},
                      {"least_fuse_a", number_json(check.least_fuse_a)},
                      {"most_fuse_a", number_json(check.most_fuse_a)},
                      {"string_fuses", check.string_fuses},
                      {"least_series", count_json(check.least_series)},
                      {"largest_series", count_json(check.largest_series)},
                      {"largest_parallel", count_json(check.largest_parallel)},
                      {"suggestion", check.suggestion},
                      {"assumptions", check.assumptions},
                      {"cautions", pv_cautions()}});
}

} // namespace ullage
