// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "formats/sheets/run_sheet.h"
#include "formats/text/csv.h"
#include "formats/text/preface_text.h"
#include "formats/text/sheet_keys.h"
#include "formats/text/spreadsheet_text.h"

#include <algorithm>

namespace ullage {

namespace {

void append_preface_line(std::string& text, std::string_view key, std::string_view value) {
    text += "# ";
    text += key;
    text += ':';
    if (!value.empty()) text += ' ' + escaped_preface(value);
    text += '\n';
}

std::string cell(const std::optional<double>& number) { return number ? exact_text(*number) : std::string(); }

/// A cell for each column, in their order.
std::vector<std::string> row(const ReadingValues& values, const std::string& zone) {
    return {format_iso8601(values.time_ms, zone),
            cell(values.gauge_percent),
            cell(values.register_wh),
            cell(values.second_register_wh),
            cell(values.meter_w),
            cell(values.display_w),
            values.mark ? std::string(mark_text(*values.mark)) : std::string(),
            guarded_text(values.remark)};
}

bool read_a_second_meter(const std::vector<Reading>& readings) {
    return std::ranges::any_of(readings, [](const Reading& reading) { return reading.values.second_register_wh.has_value(); });
}

} // namespace

std::string write_run_sheet(const RunRecord& record) {
    std::string text;
    for (const SheetKey& key : sheet_keys())
        if (const std::string value = key.text(record); !value.empty()) append_preface_line(text, key.name, value);
    for (const auto& [key, value] : record.run.extra) append_preface_line(text, key, value);

    std::vector<Reading> readings = record.readings;
    std::erase_if(readings, [](const Reading& reading) { return reading.withdrawn; });
    sort_by_time(readings);
    const bool second = read_a_second_meter(readings);
    const auto append = [&](std::vector<std::string> cells) {
        if (!second) cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(SheetColumn::second_register_wh));
        append_csv_record(text, cells);
    };
    append({std::begin(sheet_column_names), std::end(sheet_column_names)});
    for (const Reading& reading : readings) append(row(reading.values, record.run.time_zone));
    return text;
}

} // namespace ullage
