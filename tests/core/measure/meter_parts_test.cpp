// SPDX-License-Identifier: GPL-3.0-or-later
// The meters of a run as instruments: corrections by load, meters that took over, what goes beyond a certificate.
#include "measure/energy_analysis.h"
#include "numerics/monte_carlo.h"
#include "support/has_text.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

/// 4 h at 100 W, then 1 h at 400 W, as the register says.
RecordBuilder two_loads() {
    RecordBuilder run;
    run.at(0, 100, 1000).at(2, 80, 1200).at(4, 60, 1400).at(5, 20, 1800);
    return run;
}

bool says(const std::vector<Message>& remarks, const std::string& part) {
    return std::ranges::any_of(remarks, [&](const Message& remark) { return remark.text().find(part) != std::string::npos; });
}

TEST(MeterParts, each_load_gets_its_own_correction_and_uncertainty) {
    RecordBuilder run = two_loads();
    run.record().meter->points = {{100, 0.98, 0.4, 2.0}, {400, 1.01, 0.8, 2.0}};
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_NEAR(energy.track.total_wh(), 0.98 * 400 + 1.01 * 400, 1e-9);
    ASSERT_EQ(energy.track.meters.size(), 1u);
    // Of one meter: what its gain adds at both loads has one sign.
    EXPECT_NEAR(energy.track.meters[0].u_wh, 0.002 * 392 + 0.004 * 404, 1e-9);
    const Budget& budget = energy.budget;
    EXPECT_EQ(budget.lines[0].shape, "normal");
    EXPECT_NEAR(budget.lines[0].standard_wh, 0.002 * 392 + 0.004 * 404, 1e-9);
    const double steps_wh = std::sqrt(1.0 / 6) * 0.995;
    EXPECT_NEAR(budget.half_width_wh.value(), 1.959964 * std::hypot(0.002 * 392 + 0.004 * 404, steps_wh), 1e-4);
    EXPECT_NEAR(budget.coverage_factor.value(), 1.959964, 1e-5) << "all of it is normal";
    EXPECT_TRUE(energy.meter_remarks.empty());
}

TEST(MeterParts, points_replace_the_single_correction_and_limit) {
    RecordBuilder run = two_loads();
    run.record().meter->correction = 1.5;
    run.record().meter->limit_percent = 20;
    run.record().meter->points = {{100, 1, 0.2, 2.0}, {400, 1, 0.2, 2.0}};
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_NEAR(energy.track.total_wh(), 800, 1e-9);
    EXPECT_LT(energy.budget.half_width_wh.value(), 2.5);
}

TEST(MeterParts, a_coarse_register_does_not_pass_for_a_varying_load) {
    // 60 W read each 5 minutes by a register of 10 Wh: it shows 0 or 120 W between two readings.
    RecordBuilder run;
    run.record().meter->step_wh = 10;
    run.record().meter->points = {{50, 0.9, 0.4, 2.0}, {150, 1.1, 0.4, 2.0}};
    for (int i = 0; i <= 120; ++i) run.at(i / 12.0, 100 - 0.5 * i, 10 * std::floor(5.0 * i / 10));
    EXPECT_NEAR(analyse_energy(run.record()).track.total_wh(), 600 * 0.92, 1e-6);
}

TEST(MeterParts, loads_outside_certificate_and_range_and_an_expired_certificate_are_said) {
    RecordBuilder run = two_loads();
    Meter& meter = *run.record().meter;
    meter.points = {{150, 0.99, 0.4, 2.0}, {900, 1.01, 0.8, 2.0}};
    meter.range_low_w = 5;
    meter.range_high_w = 300;
    meter.certificate.valid_until = "2027-05-10";
    const EnergyAnalysis energy = analyse_energy(run.record()); // on 2027-05-11
    EXPECT_TRUE(says(energy.meter_remarks, "396 Wh of 795 Wh flowed outside its certificate's loads of 150 W to 900 W"))
        << energy.meter_remarks.at(0);
    EXPECT_TRUE(says(energy.meter_remarks, "399 Wh of 795 Wh flowed outside its range of 5 W to 300 W"));
    EXPECT_TRUE(says(energy.meter_remarks, "valid until 2027-05-10"));
    meter.certificate.valid_until = "2027-05-11";
    meter.range_high_w = 400;
    meter.points = {{100, 0.99, 0.4, 2.0}, {400, 1.01, 0.8, 2.0}};
    EXPECT_TRUE(analyse_energy(run.record()).meter_remarks.empty());
    run.record().readings[1].values.meter_w = 430;
    EXPECT_TRUE(says(analyse_energy(run.record()).meter_remarks, "showed a power outside its range"));
}

/// 200 Wh by the first meter, then 300 Wh by another.
RecordBuilder swapped() {
    RecordBuilder run;
    run.record().meter->correction = 1.02;
    run.at(0, 100, 500).at(2, 80, 700).at(2, {}, 9000, MarkKind::meter_swapped).at(5, 50, 9300);
    return run;
}

TEST(MeterParts, after_a_swap_the_second_meter_has_its_own_correction_and_limit) {
    RecordBuilder run = swapped();
    run.record().second_meter = Meter{MeterId("other"), "Other", 1.0, 2.0, std::nullopt, 0.97, {}};
    run.record().run.second_meter_uuid = MeterId("other");
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_NEAR(energy.track.total_wh(), 1.02 * 200 + 0.97 * 300, 1e-9);
    ASSERT_EQ(energy.track.meters.size(), 2u);
    EXPECT_EQ(energy.track.meters[0].meter, MeterOfRun::first);
    EXPECT_EQ(energy.track.meters[1].meter, MeterOfRun::second);
    EXPECT_NEAR(energy.track.meters[0].limit_wh, 2.04, 1e-9);
    EXPECT_NEAR(energy.track.meters[1].limit_wh, 5.82, 1e-9);
    // The errors of two meters are independent: the wider rectangle, convolved with the other and the rest.
    const double others_wh = std::hypot(energy.budget.independent_wh, 2.04 / std::sqrt(3.0));
    EXPECT_NEAR(energy.budget.half_width_wh.value() - energy.budget.unread_mean_wh,
                half_width_of_sum(5.82, std::sqrt(others_wh * others_wh - std::pow(energy.budget.unread_mean_wh, 2))), 1e-9);
}

TEST(MeterParts, after_a_swap_to_a_meter_that_is_not_stated_there_is_no_interval_and_why_is_said) {
    const EnergyAnalysis energy = analyse_energy(swapped().record());
    EXPECT_NEAR(energy.track.total_wh(), 1.02 * 200 + 300, 1e-9) << "nothing is known of its correction";
    EXPECT_FALSE(energy.budget.half_width_wh.has_value());
    EXPECT_NE(energy.budget.half_width_method.text().find("another meter took over"), std::string::npos) << energy.budget.half_width_method;
    EXPECT_FALSE(energy.delivered_wh.lower.has_value());
    RecordBuilder limitless = swapped();
    limitless.record().second_meter = Meter{MeterId("other"), "Other", 1.0, std::nullopt, std::nullopt, 1.0, {}};
    EXPECT_NE(analyse_energy(limitless.record()).budget.half_width_method.text().find("of meter Other is not stated"), std::string::npos);
}

TEST(MeterParts, each_line_of_a_budget_is_sensitivity_times_the_uncertainty_of_its_input) {
    RecordBuilder run = swapped();
    run.record().second_meter = Meter{MeterId("other"), "Other", 1.0, 2.0, std::nullopt, 0.97, {}};
    run.record().second_meter->points = {{100, 0.97, 0.3, 2.0}};
    const Budget budget = analyse_energy(run.record()).budget;
    ASSERT_GE(budget.lines.size(), 4u);
    for (const BudgetLine& line : budget.lines) {
        EXPECT_NEAR(line.standard_wh, line.sensitivity * line.input_u, 1e-12) << line.source;
        EXPECT_EQ(line.evaluation, "B") << line.source;
        EXPECT_FALSE(line.degrees_of_freedom.has_value()) << line.source;
    }
    // 291 Wh by the second meter: a percent of its gain is 2.91 Wh.
    EXPECT_NEAR(budget.lines[1].sensitivity, 2.91, 1e-9);
    EXPECT_NEAR(budget.lines[1].input_u, 0.15, 1e-9);
    EXPECT_FALSE(budget.effective_degrees_of_freedom.has_value()) << "infinite";
    EXPECT_NEAR(budget.coverage_factor.value(), *budget.half_width_wh / budget.combined_standard_wh, 1e-12);
}

} // namespace
} // namespace ullage
