// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/between_runs.h"

#include "core/unit/between_runs_samples.h"
#include "support/has_text.h"
#include "support/record_builder.h"
#include "support/scenario.h"
#include "support/scenario_parts.h"
#include "unit/between_runs_predict.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

std::vector<RunRecord> sample_runs(const std::string& unit_name) {
    std::vector<RunRecord> records;
    for (const ScenarioRun& run : sample_scenario())
        if (run.simulated.record.unit.name == unit_name) records.push_back(run.simulated.record);
    return records;
}

TEST(BetweenRuns, sample_units_with_several_drains_cover_their_truth) {
    for (const CompanyUnit& unit : {osk_1200(), pelm_900()}) {
        const UnitFit fit = fit_unit(sample_runs(unit.claims.name));
        EXPECT_EQ(fit.used_drains, 3u) << unit.claims.name;
        EXPECT_TRUE(covers(fit.deliverable_at_no_time_cost_wh, unit.physics.deliverable_wh())) << fit.sentence;
        EXPECT_TRUE(covers(fit.no_load_draw_w, unit.physics.no_load_draw_w())) << fit.sentence;
        EXPECT_TRUE(covers(fit.no_load_endurance_h, unit.physics.run_time_h(0))) << quantity_text(fit.no_load_endurance_h);
        for (const double load_w : {20.0, 64.0, 150.0, 300.0, 600.0})
            EXPECT_TRUE(covers(predict_at(fit, unit.claims, load_w).deliverable_wh, unit.physics.delivered_wh(load_w)))
                << unit.claims.name << " at " << load_w << " W";
        // Useful, not merely true: E* to 3 %, P* to 5 W.
        EXPECT_LT(fit.deliverable_at_no_time_cost_wh.half_width().value(), 0.03 * unit.physics.deliverable_wh()) << fit.sentence;
        EXPECT_LT(fit.no_load_draw_w.half_width().value(), 5) << fit.sentence;
    }
}

TEST(BetweenRuns, a_unit_with_one_full_drain_is_refused_with_a_load_to_try) {
    const UnitFit fit = fit_unit(sample_runs("Tarrow 2k"));
    EXPECT_EQ(fit.used_drains, 1u);
    EXPECT_FALSE(fit.parameters);
    for (const Quantity* quantity : {&fit.deliverable_at_no_time_cost_wh, &fit.no_load_draw_w, &fit.no_load_endurance_h, &fit.curvature_per_w}) {
        EXPECT_EQ(quantity->kind, Kind::not_known);
        EXPECT_TRUE(contains(quantity->reason, "one drain only")) << quantity->reason;
        EXPECT_TRUE(contains(quantity->reason, "make a drain near ")) << quantity->reason;
    }
    EXPECT_EQ(fit.drains.back().reason, "it was stopped before the cut-off");
    EXPECT_EQ(predict_at(fit, tarrow_2k().claims, 100).deliverable_wh.kind, Kind::not_known);
}

TEST(BetweenRuns, drains_at_close_loads_are_refused) {
    const UnitFit fit = fit_unit(simulate_loads({60, 66, 75}, 1)); // run times differ by 1.2 times
    EXPECT_FALSE(fit.parameters);
    EXPECT_EQ(fit.no_load_draw_w.kind, Kind::not_known);
    EXPECT_TRUE(contains(fit.no_load_draw_w.reason, "the drains are too alike")) << fit.no_load_draw_w.reason;
    EXPECT_TRUE(contains(fit.no_load_draw_w.reason, "make a drain near ")) << fit.no_load_draw_w.reason;
    EXPECT_TRUE(fit_unit(simulate_loads({60, 110}, 1)).parameters) << "run times that differ by 1.7 times are enough";
}

TEST(BetweenRuns, no_runs_at_all_say_so) {
    const UnitFit fit = fit_unit({});
    EXPECT_EQ(fit.no_load_draw_w.kind, Kind::not_known);
    EXPECT_TRUE(contains(fit.sentence, "make one")) << fit.sentence;
}

TEST(BetweenRuns, every_run_left_out_says_why) {
    std::vector<RunSetup> setups(6, specimen_drain(100));
    setups[0].start_depth = 0.2;
    setups[1].tester.end = RunEnd::stopped_by_tester;
    setups[1].tester.stop_after_h = 3;
    setups[2].faults = {{.kind = FaultKind::reset_with_mark, .hours = 4, .read_before = false}};
    std::vector<RunRecord> records = simulate_drains(setups, 5);
    records[3].run.started_full.reset();
    records[4].run.kind = RunKind::charge;
    records[5].run.unit_uuid = UnitId("another");
    std::vector<RunRecord> good = simulate_loads({50, 300}, 6);
    records.insert(records.begin(), good.begin(), good.end());
    const UnitFit fit = fit_unit(records);
    ASSERT_EQ(fit.drains.size(), 8u);
    EXPECT_EQ(fit.used_drains, 2u);
    EXPECT_EQ(fit.drains[2].reason, "it did not start full");
    EXPECT_EQ(fit.drains[3].reason, "it was stopped before the cut-off");
    EXPECT_TRUE(contains(fit.drains[4].reason, "energy")) << fit.drains[4].reason;
    EXPECT_EQ(fit.drains[5].reason, "whether it started full is not stated");
    EXPECT_EQ(fit.drains[6].reason, "a charge run is no drain");
    EXPECT_EQ(fit.drains[7].reason, "it is a run of another unit");
    const UnitFit without = fit_unit(good);
    EXPECT_EQ(fit.parameters.value().p_star_w, without.parameters.value().p_star_w);
}

TEST(BetweenRuns, a_no_load_drain_without_a_meter_counts_as_nothing_delivered) {
    std::vector<RunRecord> records = simulate_loads({200, 0}, 3);
    for (Reading& reading : records[1].readings) reading.values.register_wh.reset();
    records[1].meter.reset();
    const UnitFit fit = fit_unit(records);
    EXPECT_EQ(fit.used_drains, 2u) << fit.drains[1].reason;
    EXPECT_EQ(fit.lowest_load_w, 0);
    EXPECT_TRUE(covers(fit.no_load_draw_w, specimen.no_load_draw_w()));
    EXPECT_TRUE(covers(fit.no_load_endurance_h, specimen.run_time_h(0)));
    EXPECT_TRUE(predict_at(fit, specimen_claims(), 30).within_tested_loads);
}

TEST(BetweenRuns, a_no_load_drain_narrows_the_draw) {
    const double without = fit_unit(simulate_loads({60, 300}, 4)).no_load_draw_w.half_width().value();
    const double with = fit_unit(simulate_loads({60, 300, 0}, 4)).no_load_draw_w.half_width().value();
    EXPECT_LT(with, without / 3);
}

TEST(BetweenRuns, a_drain_found_off_brings_its_bracket_as_uncertainty) {
    std::vector<RunSetup> setups{specimen_drain(50), specimen_drain(300)};
    setups[0].load = LoadProfile::stepped({{1, 30}, {1, 70}}, true);
    const UnitFit seen = fit_unit(simulate_drains(setups, 9));
    setups[0].tester.end = RunEnd::found_off;
    setups[0].tester.found_after_h = 4;
    const UnitFit found = fit_unit(simulate_drains(setups, 9));
    ASSERT_TRUE(found.drains[0].used) << found.drains[0].reason;
    // The last round was at most 1.2 intervals before: the bracket is 4 to 6 h wide.
    EXPECT_GT(found.drains[0].u_hours, 4 / std::sqrt(12.0));
    EXPECT_LT(found.drains[0].u_hours, 6 / std::sqrt(12.0));
    const double from_time_wh = found.parameters->p_star_w * found.drains[0].u_hours;
    EXPECT_NEAR(std::hypot(seen.drains[0].u_wh, from_time_wh), found.drains[0].u_wh, 0.05 * found.drains[0].u_wh);
    EXPECT_GT(found.no_load_draw_w.half_width().value(), seen.no_load_draw_w.half_width().value());
    EXPECT_TRUE(covers(found.no_load_draw_w, specimen.no_load_draw_w()));
}

TEST(BetweenRuns, time_with_the_output_tripped_does_not_count) {
    std::vector<RunRecord> records = simulate_loads({50, 300}, 2);
    const double before_h = fit_unit(records).drains[0].hours;
    auto& readings = records[0].readings;
    readings[4].values.mark = MarkKind::output_tripped;
    readings[5].values.mark = MarkKind::output_reset;
    const double off_h = hours_between(readings[4].values.time_ms, readings[5].values.time_ms);
    EXPECT_NEAR(fit_unit(records).drains[0].hours, before_h - off_h, 1e-9);
    readings[5].values.mark.reset();
    EXPECT_TRUE(contains(fit_unit(records).drains[0].reason, "tripped"));
}

TEST(BetweenRuns, a_gain_that_all_drains_share_cancels_in_the_endurance_but_not_between_meters) {
    std::vector<RunSetup> setups{specimen_drain(40), specimen_drain(300)};
    const UnitFit shared = fit_unit(simulate_drains(setups, 8));
    setups[1].meter->meter.uuid = MeterId("other meter");
    const UnitFit different = fit_unit(simulate_drains(setups, 8));
    EXPECT_GT(different.no_load_endurance_h.half_width().value(), 1.15 * shared.no_load_endurance_h.half_width().value());
    for (RunSetup& setup : setups) setup.meter->meter.limit_percent = 5;
    setups[1].meter->meter.uuid = MeterId("meter");
    const UnitFit coarse = fit_unit(simulate_drains(setups, 8));
    const auto relative = [](const UnitFit& fit) { return fit.no_load_endurance_h.half_width().value() / *fit.no_load_endurance_h.value; };
    EXPECT_NEAR(relative(coarse), relative(shared), 0.2 * relative(shared)) << "the draw is the same, the limit of the meter is not";
    EXPECT_GT(coarse.deliverable_at_no_time_cost_wh.half_width().value(), 0.045 * specimen.deliverable_wh());
}

TEST(BetweenRuns, a_meter_without_a_stated_limit_leaves_no_interval_but_on_the_endurance) {
    std::vector<RunSetup> setups{specimen_drain(40), specimen_drain(300)};
    for (RunSetup& setup : setups) setup.meter->meter.limit_percent.reset();
    const UnitFit fit = fit_unit(simulate_drains(setups, 8));
    EXPECT_TRUE(fit.deliverable_at_no_time_cost_wh.value);
    EXPECT_FALSE(fit.deliverable_at_no_time_cost_wh.lower);
    EXPECT_TRUE(contains(fit.deliverable_at_no_time_cost_wh.reason, "error limit of Meter is not stated"));
    EXPECT_FALSE(predict_at(fit, specimen_claims(), 100).deliverable_wh.lower);
    int covered = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed)
        covered += covers(fit_unit(simulate_drains(setups, seed)).no_load_endurance_h, specimen.run_time_h(0));
    EXPECT_GE(covered, 34); // of 40 at 95 %: fewer once in 70 times
}

TEST(BetweenRuns, curvature_is_bounded_with_two_loads_and_fitted_where_the_drains_narrow_it) {
    const UnitFit two = fit_unit(simulate_loads({50, 300}, 1));
    EXPECT_EQ(two.curvature_source, CurvatureSource::bounded);
    EXPECT_EQ(two.curvature_per_w.kind, Kind::bracket);
    EXPECT_DOUBLE_EQ(two.curvature_per_w.upper.value(), 0.10 / 1200);
    std::vector<RunSetup> setups;
    for (int i = 0; i < 6; ++i)
        for (const double load_w : {30.0, 350.0, 1200.0}) {
            setups.push_back(specimen_drain(load_w));
            setups.back().repeatability_percent = 0.1;
        }
    MeasureOptions options;
    options.repeatability_percent = 0.1;
    const UnitFit many = fit_unit(simulate_drains(setups, 1), options);
    EXPECT_EQ(many.curvature_source, CurvatureSource::fitted);
    EXPECT_EQ(many.curvature_per_w.kind, Kind::measured);
    EXPECT_TRUE(covers(many.curvature_per_w, specimen.curvature_per_w())) << *many.curvature_per_w.value;
    EXPECT_LT(many.curvature_per_w.half_width().value(), two.curvature_per_w.half_width().value());
}

TEST(BetweenRuns, without_a_rated_output_the_highest_load_bounds_the_curvature) {
    std::vector<RunRecord> records = simulate_loads({50, 300}, 1);
    for (RunRecord& record : records) record.unit.rated_output_w.reset();
    const UnitFit fit = fit_unit(records);
    EXPECT_NEAR(fit.curvature_per_w.upper.value(), 0.10 / fit.highest_load_w, 1e-12);
    EXPECT_TRUE(fit.parameters);
}

/// Full drains by their means, each switched at its power (0: steady).
UnitFit switched_drains(const std::vector<CommonLoad>& loads) {
    std::vector<RunRecord> records;
    for (const CommonLoad& load : loads) {
        RecordBuilder builder;
        double hours = 0, wh = 0;
        builder.at(0, 100, 0);
        // On and off in turns of an hour's share each, until some 800 Wh are taken.
        while (wh < 800) {
            builder.at(hours + load.duty, {}, wh += load.power_w * load.duty);
            hours += 1;
            if (load.duty < 1) builder.at(hours, {}, wh);
        }
        builder.record().readings.back().values.mark = MarkKind::cut_off;
        builder.record().run.uuid = RunId("run " + std::to_string(records.size()));
        records.push_back(builder.record());
    }
    return fit_unit(records);
}

TEST(BetweenRuns, a_load_that_is_switched_lies_between_the_tested_ones_by_its_mean_and_by_its_power_while_on) {
    const Unit unit = specimen_claims();
    const UnitFit steady = switched_drains({{40, 1, {}}, {200, 1, {}}});
    ASSERT_TRUE(steady.parameters);
    EXPECT_NEAR(steady.highest_power_w, 200, 1e-6);
    EXPECT_TRUE(predict_under(steady, unit, {100, 0.5, {}}).within_tested_loads);
    const LoadPrediction strong = predict_under(steady, unit, {500, 0.2, {}});
    EXPECT_FALSE(strong.within_tested_loads) << "its mean is 100 W, but no drain was at 500 W";
    EXPECT_TRUE(
        contains(strong.run_time_h.reason, "beyond the tested loads (40 to 200 W on average, as this one, but 40 to 200 W while on, this one 500 W)"))
        << strong.run_time_h.reason;
    EXPECT_FALSE(predict_under(steady, unit, {100, 0.2, {}}).within_tested_loads) << "20 W on average";

    const UnitFit switched = switched_drains({{200, 0.25, {}}, {400, 0.5, {}}});
    ASSERT_TRUE(switched.parameters);
    EXPECT_NEAR(switched.lowest_load_w, 50, 1);
    EXPECT_NEAR(switched.lowest_power_w, 200, 1);
    EXPECT_NEAR(switched.highest_power_w, 400, 1);
    EXPECT_TRUE(predict_under(switched, unit, {300, 0.5, {}}).within_tested_loads);
    EXPECT_FALSE(predict_at(switched, unit, 100).within_tested_loads) << "no drain was at less than 200 W while on";
    EXPECT_FALSE(predict_at(switched, unit, 300).within_tested_loads) << "no drain took more than 200 W on average";
}

TEST(BetweenRuns, predictions_refuse_loads_that_make_no_sense_and_say_when_they_leave_the_tested_loads) {
    const UnitFit fit = fit_unit(simulate_loads({50, 300}, 1));
    const Unit unit = specimen_claims();
    for (const double load_w : {0.0, -5.0, std::nan(""), 1300.0})
        EXPECT_EQ(predict_at(fit, unit, load_w).deliverable_wh.kind, Kind::not_known) << load_w;
    const std::vector<LoadPrediction> curve = predict_curve(fit, unit, {20, 100, 800});
    ASSERT_EQ(curve.size(), 3u);
    EXPECT_FALSE(curve[0].within_tested_loads);
    EXPECT_TRUE(curve[1].within_tested_loads);
    EXPECT_FALSE(curve[2].within_tested_loads);
    EXPECT_TRUE(contains(curve[0].run_time_h.reason, "beyond the tested loads (50 to ")) << curve[0].run_time_h.reason;
    const auto relative = [](const LoadPrediction& p) { return p.deliverable_wh.half_width().value() / *p.deliverable_wh.value; };
    EXPECT_GT(relative(curve[0]), relative(curve[1]));
    EXPECT_GT(relative(curve[2]), relative(curve[1]));
    Unit unrated = unit;
    unrated.rated_energy_wh.reset();
    EXPECT_EQ(predict_at(fit, unrated, 100).usable_fraction.reason, "the rated energy of the unit is not stated");
}

} // namespace
} // namespace ullage::test
