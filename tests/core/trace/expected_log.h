// SPDX-License-Identifier: GPL-3.0-or-later
// The corpus of logs with what is expected of each.
#pragma once

#include "base/number.h"
#include "support/source_dir.h"
#include "trace/trace_import.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

inline std::filesystem::path corpus_folder() { return source_dir() / "tests/corpus/traces"; }

/// Names of all logs, without ending.
inline std::vector<std::string> expected_logs() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(corpus_folder()))
        if (entry.path().extension() == ".log") names.push_back(entry.path().stem().string());
    std::ranges::sort(names);
    return names;
}

inline std::string trouble_key(RowTrouble trouble) {
    constexpr const char* keys[] = {"fields",          "quote",     "too_long",    "time",         "skipped_time", "value",        "no_value",
                                    "repeated_header", "duplicate", "same_moment", "out_of_order", "swapped",      "doubled_hour", "gap"};
    return keys[static_cast<std::size_t>(trouble)];
}

inline std::string question_key(OpenQuestion question) {
    constexpr const char* keys[] = {"date_order", "decimal_sign", "clock_meaning", "energy_unit",
                                    "no_time",    "no_values",    "whose_values",  "gauge_unit"};
    return keys[static_cast<std::size_t>(question)];
}

struct ExpectedLog {
    std::string path;
    LayoutAnswers answers;
    TraceReadOptions options;
    std::vector<std::pair<std::string, std::string>> lines;

    static ExpectedLog of(const std::string& name) {
        ExpectedLog expected;
        expected.path = (corpus_folder() / (name + ".log")).string();
        std::ifstream file(corpus_folder() / (name + ".expect"));
        if (!file) throw std::runtime_error("no expectation for " + name);
        for (std::string line; std::getline(file, line);) {
            if (line.empty() || line.front() == '#') continue;
            const auto colon = line.find(": ");
            if (colon == std::string::npos) throw std::runtime_error("no key: " + line);
            expected.take(line.substr(0, colon), line.substr(colon + 2));
        }
        return expected;
    }

    [[nodiscard]] bool has(const std::string& key) const {
        return std::ranges::any_of(lines, [&key](const auto& line) { return line.first == key; });
    }
    [[nodiscard]] std::string value(const std::string& key, const std::string& otherwise = {}) const {
        const auto found = std::ranges::find(lines, key, &std::pair<std::string, std::string>::first);
        return found == lines.end() ? otherwise : found->second;
    }
    [[nodiscard]] std::vector<std::string> odd() const {
        std::vector<std::string> named;
        for (const auto& [key, text] : lines)
            if (key == "left out" || key == "doubt") named.push_back(key + ": " + text);
        return named;
    }

private:
    void take(const std::string& key, const std::string& text) {
        if (key == "zone") options.zone = text;
        else if (key == "start") options.start_ms = parse_iso8601(text, "UTC").value();
        else if (key == "gap-limit") options.gap_limit_s = parse_number(text).value();
        else if (key == "date-order") answers.date_order = text == "month-first" ? DateOrder::month_first : DateOrder::day_first;
        else if (key == "times") answers.time_form = text == "clock" ? TimeForm::clock : TimeForm::elapsed_clock;
        else if (key == "map") take_column(text);
        else lines.emplace_back(key, text);
    }
    void take_column(const std::string& text) {
        const auto equals = text.find('='), colon = std::min(text.find(':'), text.size());
        answers.columns.push_back(
            {role_from(text.substr(0, equals)).value(), std::stoul(text.substr(equals + 1)) - 1, colon < text.size() ? text.substr(colon + 1) : ""});
    }
};

} // namespace ullage::test
