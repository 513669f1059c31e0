// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/fair_comparison.h"
#include "core/unit/repeated_drains.h"
#include "numerics/monte_carlo.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <random>
#include <utility>

namespace ullage::test {
namespace {

/// Logbooks of units whose drains scatter by `scatter`, each measured by the one meter of its own gain error within ±1 %: how often the interval of a
/// mean holds the truth, and how often two units that are equal are called different.
struct Covered {
    double means = 0, equal_resolved = 0;
};

Covered covered(double scatter, std::size_t units, std::size_t repeats, std::uint64_t seed) {
    std::mt19937_64 engine(seed);
    constexpr int logbooks = 1500;
    int held = 0, tried = 0, resolved = 0, pairs = 0;
    for (int book = 0; book < logbooks; ++book) {
        const double gain = 1 + 0.01 * draw(Input{Shape::rectangular, 1}, engine);
        std::vector<std::vector<DrainSummary>> all;
        for (std::size_t u = 0; u < units; ++u) {
            std::vector<double> wh;
            for (std::size_t k = 0; k < repeats; ++k) wh.push_back(900 * gain * (1 + scatter * draw(Input{Shape::normal, 1}, engine)));
            all.push_back(drains(wh));
        }
        const MeasureOptions options = with_pooled_repeatability({}, all);
        std::vector<RepeatMean> means;
        for (const auto& unit : all) {
            means.push_back(repeat_means(unit, options).front());
            const Quantity& found = means.back().delivered_wh;
            held += *found.lower <= 900 && *found.upper >= 900 ? 1 : 0;
            ++tried;
        }
        for (std::size_t u = 1; u < units; u += 2) {
            Comparison comparison;
            FairComparison fair;
            for (const std::size_t each : {u - 1, u}) {
                ComparisonRow row;
                row.unit.name = std::to_string(each);
                row.unit.uuid = UnitId(row.unit.name);
                row.unit.rated_energy_wh = 1000;
                row.fit = comparison.fits.size();
                comparison.fits.emplace_back().options = options;
                FairRow at;
                at.mean = means[each];
                at.deliverable_wh = means[each].delivered_wh;
                comparison.rows.push_back(row);
                fair.rows.push_back(at);
            }
            resolved += compare_pair(comparison, fair, 0, 1).resolved ? 1 : 0;
            ++pairs;
        }
    }
    return {static_cast<double>(held) / tried, pairs > 0 ? static_cast<double>(resolved) / pairs : 0};
}

// Whatever the scatter, which the program is not told: units alone with two to five repeats, and logbooks in which it is pooled.
TEST(Repeats, intervals_of_means_cover_and_equal_units_are_not_told_apart_at_any_scatter) {
    std::uint64_t seed = 1;
    for (const double scatter : {0.002, 0.005, 0.01, 0.03})
        for (const auto& [units, repeats] : {std::pair{1, 2}, {1, 3}, {1, 5}, {2, 3}, {4, 2}, {6, 3}, {10, 2}}) {
            const Covered found = covered(scatter, static_cast<std::size_t>(units), static_cast<std::size_t>(repeats), ++seed);
            SCOPED_TRACE(testing::Message() << 100 * scatter << " %, " << units << " units, " << repeats << " repeats");
            EXPECT_GE(found.means, 0.93);
            // A 95 % interval leaves the truth out once in twenty times; 1500 logbooks tell that to ±1 %.
            EXPECT_LT(found.equal_resolved, 0.06);
        }
}

} // namespace
} // namespace ullage::test
