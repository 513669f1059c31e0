// SPDX-License-Identifier: GPL-3.0-or-later
// Simulated units with known truth through the whole analysis: does it cover the truth as often as it claims, does it find what was planted,
// does it leave honest gauges in peace? Usage: ensemble [--seeds N] [--markdown]; exit code 1 where a row breaks its rule.
#include "ensemble/cases.h"

#include <fmt/format.h>

#include <charconv>
#include <cstdint>
#include <cstdio>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace {

constexpr std::uint64_t default_seeds = 200;

int usage(std::string_view what) {
    fmt::print(stderr, "{}. Usage: ensemble [--seeds N] [--markdown], N from 100 to 100000 (default {}).\n", what, default_seeds);
    return 2;
}

} // namespace

int main(int argc, char** argv) {
    using namespace ullage::test;
    std::uint64_t seeds = default_seeds;
    bool markdown = false;
    for (int i = 1; i < argc; ++i) {
        const std::string_view word = argv[i];
        if (word == "--markdown") {
            markdown = true;
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
    run_loads(seeds, report);
    run_gauges(seeds, report);
    run_registers(seeds, report);
    run_logs(seeds, report);
    run_units(seeds, report);
    run_forecasts(seeds / 2, report); // each row pools several, and a forecast is slow
    run_drift(seeds, report);
    fmt::print("{}", report.tables(markdown));
    const std::vector<std::string> failures = report.failures();
    for (const std::string& failure : failures) fmt::print("WRONG: {}\n", failure);
    fmt::print("\n{} passed, {} failed\n", report.rows() - failures.size(), failures.size());
    return failures.empty() ? 0 : 1;
}
