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

std::vector<std::string> row(const ReadingValues& values, const std::string& zone) {
    return {format_iso8601(values.time_ms, zone),
            cell(values.gauge_percent),
            cell(values.register_wh),
            cell(values.meter_w),
            cell(values.display_w),
            values.mark ? std::string(mark_text(*values.mark)) : std::string(),
            guarded_text(values.remark)};
}

} // namespace

std::string write_run_sheet(const RunRecord& record) {
    std::string text;
    for (const SheetKey& key : sheet_keys())
        if (const std::string value = key.text(record); !value.empty()) append_preface_line(text, key.name, value);
    for (const auto& [key, value] : record.run.extra) append_preface_line(text, key, value);

    append_csv_record(text, {std::begin(sheet_column_names), std::end(sheet_column_names)});
    std::vector<Reading> readings = record.readings;
    std::erase_if(readings, [](const Reading& reading) { return reading.withdrawn; });
    sort_by_time(readings);
    for (const Reading& reading : readings) append_csv_record(text, row(reading.values, record.run.time_zone));
    return text;
}

} // namespace ullage
