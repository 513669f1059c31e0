// SPDX-License-Identifier: GPL-3.0-or-later
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
    if (!value) return std::string("-");
    return (of.unit == "W" ? fixed_text(*value, 0) : fixed_text(*value, 1)) + ' ' + of.unit;
}

Table comparisons_table(const PvCheck& check) {
    Table table;
    table.columns = {{"title", "comparison", {}, Content::text, 0}, {"value", "string", {}, Content::text, 0},
                     {"limit", "limit", {}, Content::text, 0},      {"margin", "margin", {}, Content::text, 0},
                     {"outcome", "", {}, Content::text, 0},         {"sentence", "based on", {}, Content::text, 0}};
    for (const PvComparison& each : check.comparisons)
        table.rows.push_back({each.title, cell(each, each.value), cell(each, each.limit), cell(each, each.margin),
                              std::string(pv_outcome_text(each.outcome)), each.sentence});
    return table;
}

Json count_json(const std::optional<int>& count) {
    if (!count) return nullptr;
    return *count;
}

} // namespace

std::string pv_check_text(const PvSheetText& sheet, const PvCheck& check) {
    const PvSheet& data = sheet.sheet;
    std::string head = data.name.empty() ? "PV input check" : data.name;
    if (!sheet.unit.empty()) head += ", PV input of " + sheet.unit;
    head = one_line(head);
    std::string text = head + '\n' + std::string(display_width(head), '=') + '\n';
    if (!data.module.empty()) text += one_line(data.module) + ": ";
    text += fmt::format("{} in series, {} parallel\n", data.series, data.parallel);
    std::string verdict = check.verdict_text;
    if (is_danger(check.verdict))
        for (char& letter : verdict)
            if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    text += "\nVerdict: " + verdict + '\n' + one_line(check.headline.text()) + "\n\n" + table_text(comparisons_table(check), TableFormat::text);
    text += "\n" + check.suggestion.text() + "\n";
    if (check.conductor_a)
        text += fmt::format("Conductors and fuses of a string: for at least {} A (1.25 × 1.25 × short-circuit current, NEC 690.8).\n",
                            fixed_text(*check.conductor_a, 1));
    if (!check.string_fuses.empty()) text += check.string_fuses.text() + '\n';
    text += "\nAssumed\n";
    for (const Message& line : check.assumptions) text += "  " + line.text() + '\n';
    text += "\nCautions\n";
    for (const Message& line : pv_cautions()) text += "  " + line.text() + '\n';
    return text;
}

std::string pv_check_json(const PvSheetText& sheet, const PvCheck& check) {
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
    for (const PvMissing& each : check.missing) missing.push_back(each.what + " of " + each.of);
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
                      {"cautions", texts(pv_cautions())}});
}

} // namespace ullage
