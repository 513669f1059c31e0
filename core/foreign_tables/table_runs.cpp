// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_runs.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t bytes_of_a_head = 16 * 1024;

} // namespace

RunRecord record_of_table(const ForeignRun& run, const TableFacts& facts) {
    RunRecord record;
    record.unit = facts.unit;
    record.meter = facts.meter;
    record.second_meter = facts.second_meter;
    record.run.kind = facts.kind;
    record.run.started_full = facts.started_full;
    record.run.end = facts.end.value_or(RunEnd::stopped_by_tester);
    if (!facts.end) record.run.extra.emplace_back("ended_not_known", "the table did not say how the run ended");
    record.run.load = facts.load;
    record.run.time_zone = facts.zone;
    for (const ReadingValues& values : run.readings) {
        Reading reading;
        reading.sequence = static_cast<long>(record.readings.size()) + 1;
        reading.values = values;
        record.readings.push_back(std::move(reading));
    }
    return record;
}

bool may_be_foreign_table(std::string_view bytes) {
    if (bytes.starts_with("PK\x03\x04") || bytes.starts_with("\xD0\xCF\x11\xE0")) return true;
    const std::string_view head = bytes.substr(0, bytes_of_a_head);
    if (head.find_first_not_of(" \t\r\n,;\xEF\xBB\xBF") == std::string_view::npos) return false;
    // A column of tables that this program exports, which run sheets do not have.
    if (head.find("delivered_wh") != std::string_view::npos) return true;
    std::string_view rest = head;
    while (!rest.empty()) {
        std::string_view line = rest.substr(0, rest.find('\n'));
        rest.remove_prefix(std::min(line.size() + 1, rest.size()));
        if (line.starts_with("\xEF\xBB\xBF")) line.remove_prefix(3);
        const auto first = line.find_first_not_of(" \t\"");
        // A `#` alone heads a column of numbers; one of ours has a word behind it.
        if (first != std::string_view::npos && line[first] == '#' && line.find(':', first) != std::string_view::npos) return false;
    }
    return head.find("gauge_percent") == std::string_view::npos && head.find("register_wh") == std::string_view::npos;
}

} // namespace ullage
