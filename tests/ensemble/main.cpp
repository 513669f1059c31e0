// SPDX-License-Identifier: GPL-3.0-or-later
// Simulated units with known truth through the whole analysis: does it cover the truth as often as it claims, does it find what was planted,
// does it leave honest gauges in peace? Usage: ensemble [--seeds N] [--markdown] [--only PART];
// exit code 1 where a row breaks its rule.
#include "ensemble/cases.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace {

constexpr std::uint64_t default_seeds = 200;

struct Part {
    std::string_view name;
    void (*run)(std::uint64_t seeds, ullage::test::Report& report);
    std::uint64_t divisor = 1; ///< of the seeds: of a slow part, or one whose rows pool several cases
};

constexpr Part parts[] = {
    {"loads", ullage::test::run_loads},
    {"gauges", ullage::test::run_gauges},
    {"registers", ullage::test::run_registers},
    {"logs", ullage::test::run_logs},
    {"units", ullage::test::run_units},
    {"forecasts", ullage::test::run_forecasts, 10},
    {"few-forecasts", ullage::test::run_few_forecasts, 16},
    {"few-runs", ullage::test::run_few_runs, 2},
    {"few-logs", ullage::test::run_few_logs, 16},
    {"drift", ullage::test::run_drift},
};

int usage(std::string_view what) {
    fmt::print(stderr, "{}. Usage: ensemble [--seeds N] [--markdown] [--only PART], N from 100 to 100000 (default {}), PART one of", what,
               default_seeds);
    for (const Part& part : parts) fmt::print(stderr, " {}", part.name);
    fmt::print(stderr, ".\n");
    return 2;
}

} // namespace

int main(int argc, char** argv) {
    using namespace ullage::test;
    std::uint64_t seeds = default_seeds;
    bool markdown = false;
    std::string_view only;
    for (int i = 1; i < argc; ++i) {
        const std::string_view word = argv[i];
        if (word == "--markdown") {
            markdown = true;
        } else if (word == "--only" && i + 1 < argc) {
            only = argv[++i];
            if (std::ranges::find(parts, only, &Part::name) == std::end(parts)) return usage(fmt::format("\"{}\" is no part", only));
        } else if (word == "--seeds" && i + 1 < argc) {
            const std::string_view number = argv[++i];
            const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), seeds);
            if (error != std::errc{} || end != number.data() + number.size() || seeds < 100 || seeds > 100'000)
                return usage(fmt::format("\"{}\" is no number of seeds", number));
        } else {
            return usage(fmt::format("\"{}\" is not understood", word));
        }
    }
    Report report;
    for (const Part& part : parts)
        if (only.empty() || part.name == only) part.run(seeds / part.divisor, report);
    fmt::print("{}", report.tables(markdown));
    const std::vector<std::string> failures = report.failures();
    for (const std::string& failure : failures) fmt::print("WRONG: {}\n", failure);
    fmt::print("\n{} passed, {} failed\n", report.rows() - failures.size(), failures.size());
    return failures.empty() ? 0 : 1;
}
