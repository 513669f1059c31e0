// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/feasibility.h"

#include "gauge/drain_series.h"
#include "gauge/loss_fit.h"
#include "gauge/share_bounds.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace ullage::test {
namespace {

GaugeFeasibility bound_of(RecordBuilder& run) { return gauge_feasibility(run.record(), analyse_energy(run.record())); }

/// The same by trying units on a grid: E* and P* finely, the best s0 for each in closed form.
double brute_force_pt(RecordBuilder& run) {
    const MeasureOptions options;
    const EnergyAnalysis energy = analyse_energy(run.record(), options);
    const DrainSeries series = drain_series(run.record(), energy, 100);
    const double step_pt = run.record().unit.gauge_step_percent;
    const double least_x = 100 / (options.most_of_label * *run.record().unit.rated_energy_wh * (1 + *run.record().meter->limit_percent / 100));
    const double most_c = most_curvature_per_w(run.record(), series, options);
    const auto bulge = [&](std::size_t i) { return 4 * series.gauge_percent[i] / 100 * (1 - series.gauge_percent[i] / 100); };
    double least = INFINITY;
    constexpr int cells = 300, few = 4;
    for (int cell = 0; cell < (cells + 1) * (few + 1) * (few + 1); ++cell)
        for (int b = 0; b <= cells; ++b) {
            const int a = cell % (cells + 1), c = cell / (cells + 1) % (few + 1), w = cell / (cells + 1) / (few + 1);
            const double x = least_x * (1 + 0.01 * a), y = 0.06 * b, z = x * most_c * c / few, charge_pt = charge_for_energy_pt * w / few;
            // Point i asks for s0 within low - e to high + e.
            double low = -INFINITY, high = INFINITY;
            for (std::size_t i = 0; i < series.size(); ++i) {
                const double model = x * (series.delivered_wh[i] - series.delivered_wh[0]) + y * series.on_hours[i] +
                                     z * (series.squared_w2h[i] - series.squared_w2h[0]) - charge_pt * (bulge(i) - bulge(0));
                const double room = step_pt / 2 + 3 * x * series.u_wh[i] + y * options.moment_doubt_min / 60;
                low = std::max(low, series.gauge_percent[i] + model - room);
                high = std::min(high, series.gauge_percent[i] + model + room);
            }
            const double first = series.gauge_percent[0];
            const double s0 = std::clamp((low + high) / 2, first - step_pt, first + step_pt);
            least = std::min(least, std::max({0.0, low - s0, s0 - high}));
        }
    return least;
}

TEST(Feasibility, an_honest_gauge_needs_no_error) {
    RecordBuilder run;
    for (int i = 0; i <= 10; ++i) run.at(i, 100 - 10 * i, 1000 + 80 * i);
    const GaugeFeasibility bound = bound_of(run);
    EXPECT_EQ(bound.least_error_pt.value, 0.0);
    EXPECT_EQ(bound.least_error_pt.kind, Kind::at_least);
    EXPECT_TRUE(bound.readings.empty());
    EXPECT_EQ(bound.sentence, "An accurate gauge could have shown all of this.");
}

TEST(Feasibility, agrees_with_brute_force_over_units) {
    RecordBuilder stuck, lags, varied;
    for (int i = 0; i <= 10; ++i) {
        stuck.at(i, i < 3 || i > 6 ? 100 - 10 * i : 70, 1000 + 80 * i);
        lags.at(i, 100 - 6 * i, 1000 + 80 * i); // 60 points for 800 Wh of a 1000 Wh label: the battery's limit binds
        varied.at(i, 100 - 5 * i - (i > 4 ? 22 : 0), 1000 + 60 * i + (i % 3) * 20);
    }
    for (RecordBuilder* run : {&stuck, &lags, &varied}) {
        const GaugeFeasibility bound = bound_of(*run);
        const double tried = brute_force_pt(*run);
        EXPECT_GT(tried, 1.0);
        // The grid can only miss the best unit: by less than half a cell of E* at the end, 0.005 x 72 pt, and of P*, 0.03 x 10 h.
        EXPECT_LE(*bound.least_error_pt.value, tried + 1e-9);
        EXPECT_NEAR(*bound.least_error_pt.value, tried, 0.66);
        EXPECT_NE(bound.sentence.text().find("wrong by at least"), std::string::npos);
        EXPECT_FALSE(bound.readings.empty());
    }
}

TEST(Feasibility, a_lagging_gauge_is_bound_by_what_the_label_can_hold) {
    // By hand: slope at least 100/(1.1 x 1000 x 1.01) pt/Wh, so 72.007 pt for 800 Wh where the gauge fell by 60; s0 gives 1 pt, half a
    // step 0.5, 3 u of the register step (3 x 0.2887 Wh x 0.09001 pt/Wh = 0.078), and a charge-counting gauge that shows 40 % lies up to
    // 2.2 x 4 x 0.4 x 0.6 pt above the energy share.
    RecordBuilder run;
    for (int i = 0; i <= 10; ++i) run.at(i, 100 - 6 * i, 1000 + 80 * i);
    const double slope = 100 / (1.1 * 1000 * 1.01);
    const double at_end = 800 * slope - 60 - 0.5 - 3 * slope / std::sqrt(12.0);
    // The first reading asks s0 - 100 <= e + 0.5 + 0.078, which the limit of one step meets first.
    EXPECT_NEAR(*bound_of(run).least_error_pt.value, at_end - 1 - charge_for_energy_pt * 4 * 0.4 * 0.6, 1e-6);
    run.record().unit.rated_energy_wh.reset();
    EXPECT_EQ(bound_of(run).least_error_pt.value, 0.0) << "a linear gauge, and any battery is allowed";
}

// A label that understates its battery is no proof against the gauge.
TEST(Feasibility, a_perfect_gauge_of_a_unit_that_delivers_more_than_its_label_needs_no_error) {
    for (const double delivered_wh : {1155.0, 1400.0}) {
        RecordBuilder run;
        for (int i = 0; i <= 10; ++i) run.at(i, 100 - 10 * i, delivered_wh / 10 * i);
        EXPECT_EQ(bound_of(run).least_error_pt.value, 0.0) << delivered_wh;
    }
}

TEST(Feasibility, thinning_never_raises_the_bound) {
    RecordBuilder all, half;
    for (int i = 0; i <= 5000; ++i) {
        const double hours = i * 0.002, gauge = std::round(100 - 10 * hours + 6 * std::sin(hours));
        all.at(hours, gauge, 1000 + 80 * hours);
        if (i % 100 == 0) half.at(hours, gauge, 1000 + 80 * hours);
    }
    EXPECT_GT(*bound_of(all).least_error_pt.value, 0.0);
    EXPECT_LE(*bound_of(half).least_error_pt.value, *bound_of(all).least_error_pt.value + 1e-9);
}

TEST(Feasibility, two_readings_are_enough_for_a_gauge_that_hardly_falls) {
    RecordBuilder run;
    // 500 Wh of a battery that holds at most 1100 Wh (and the meter 1 % more) are 45 points at least; a charge-counting gauge at 90 % lies up to 0.8
    // points above.
    run.at(0, 100, 1000).at(5, 90, 1500);
    EXPECT_NEAR(*bound_of(run).least_error_pt.value, 45.0 - 10 - 1.5 - 0.8, 0.3);
}

TEST(Feasibility, one_reading_is_refused_with_the_reason) {
    RecordBuilder run;
    run.at(0, 100, 1000).at(1, {}, 1080);
    EXPECT_EQ(bound_of(run).least_error_pt.kind, Kind::not_known);
    EXPECT_EQ(bound_of(run).sentence, "The least error of the gauge is not known: the gauge and the register have not been read together twice.");
}

} // namespace
} // namespace ullage::test
