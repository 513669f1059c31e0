// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

namespace ullage {

namespace {

class UnitFitTest : public test::DocumentTest {
protected:
    /// A drain from full to cut-off with this much energy in this many hours, by the meter where there is one.
    ullage::Run full_drain(const Unit& unit, double delivered_wh, int hours) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.started_full = true;
        if (!meter.uuid.empty()) run.meter_uuid = meter.uuid;
        run = document.addRun(run).value();
        for (int part = 0; part <= 4; ++part) {
            note(run, 100 - 25 * part, delivered_wh * part / 4);
            clock.advance_hours(hours / 4.0);
        }
        run.end = RunEnd::cut_off_seen;
        EXPECT_TRUE(document.updateRun(run));
        clock.advance_hours(24);
        return run;
    }
    void add_meter() {
        meter.name = "Socket meter A";
        meter.step_wh = 1;
        meter.limit_percent = 1;
        meter = document.addMeter(meter).value();
    }

    Meter meter;
};

TEST_F(UnitFitTest, it_is_what_all_runs_of_the_unit_say_together) {
    const auto unit = add_unit();
    const auto other = add_unit("Pelm 900");
    EXPECT_EQ(document.unitFit(unit.uuid).drains.size(), 0U);
    full_drain(unit, 800, 16);
    full_drain(unit, 950, 4);
    full_drain(other, 500, 8);
    const auto& fit = document.unitFit(unit.uuid);
    EXPECT_EQ(fit.drains.size(), 2U);
    // 800 = E* − 16 P* and 950 = E* − 4 P*, so P* = 12.5 W and as much more as the bounds on the quadratic loss ask for.
    ASSERT_TRUE(fit.no_load_draw_w.value) << fit.sentence;
    EXPECT_NEAR(*fit.no_load_draw_w.value, 12.5, 4);
    EXPECT_EQ(&fit, &document.unitFit(unit.uuid)) << "computed once";
    EXPECT_EQ(document.unitFit(other.uuid).used_drains, 1U);
    EXPECT_TRUE(document.unitFit(UnitId("no such unit")).drains.empty());
}

TEST_F(UnitFitTest, half_a_drain_is_projected_through_the_curve_of_the_full_one_and_follows_its_changes) {
    add_meter();
    const auto unit = add_unit();
    const auto note_drain = [&](int last_part, RunEnd end) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.meter_uuid = meter.uuid;
        run.started_full = true;
        run = document.addRun(run).value();
        for (int part = 0; part <= last_part; ++part) {
            note(run, 100 - 10 * part + part * (10 - part) / 2, 100.0 * part); // 12 points too high half way
            clock.advance_hours(1);
        }
        run.end = end;
        EXPECT_TRUE(document.updateRun(run));
        clock.advance_hours(24);
        return run;
    };
    const auto full = note_drain(10, RunEnd::cut_off_seen);
    const auto half = note_drain(5, RunEnd::stopped_by_tester);
    const double rated_wh = *unit.rated_energy_wh;
    EXPECT_EQ(document.analysis(half.uuid).curve_run_uuid, full.uuid);
    EXPECT_NEAR(*document.analysis(half.uuid).energy.usable_fraction.value, 1000 / rated_wh, 0.01);
    ASSERT_TRUE(document.withdrawRun(full.uuid));
    const Quantity alone = document.analysis(half.uuid).energy.usable_fraction;
    EXPECT_LT(*alone.lower, 500 / rated_wh) << "no unit explains such a gauge: from what was delivered on all may be";
    EXPECT_GT(*alone.upper, 1000 / rated_wh);
    document.undoStack().undo();
    EXPECT_NEAR(*document.analysis(half.uuid).energy.usable_fraction.value, 1000 / rated_wh, 0.01);
}

TEST_F(UnitFitTest, a_reading_amended_and_the_amendment_undone_reach_the_fit) {
    const auto unit = add_unit();
    full_drain(unit, 800, 16);
    const auto run = full_drain(unit, 950, 4);
    const double before_w = document.unitFit(unit.uuid).no_load_draw_w.value.value();
    const auto last = document.run(run.uuid)->readings.back();
    auto values = last.values;
    values.register_wh = 980;
    ASSERT_TRUE(document.amend(last.uuid, values, "misread"));
    EXPECT_GT(document.unitFit(unit.uuid).no_load_draw_w.value.value(), before_w + 1);
    document.undoStack().undo();
    EXPECT_DOUBLE_EQ(document.unitFit(unit.uuid).no_load_draw_w.value.value(), before_w);
}

TEST_F(UnitFitTest, a_run_withdrawn_a_claim_and_a_meters_limit_reach_the_fit) {
    add_meter();
    auto unit = add_unit();
    full_drain(unit, 800, 16);
    const auto run = full_drain(unit, 950, 4);
    const double half_w = document.unitFit(unit.uuid).deliverable_at_no_time_cost_wh.half_width().value();
    meter.limit_percent = 5;
    ASSERT_TRUE(document.updateMeter(meter));
    EXPECT_GT(document.unitFit(unit.uuid).deliverable_at_no_time_cost_wh.half_width().value(), 1.2 * half_w)
        << "the scatter between drains is in both";
    const double before_per_w = document.unitFit(unit.uuid).c_bounds.high;
    unit.rated_output_w = 3000;
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_LT(document.unitFit(unit.uuid).c_bounds.high, before_per_w);
    ASSERT_TRUE(document.withdrawRun(run.uuid));
    EXPECT_EQ(document.unitFit(unit.uuid).used_drains, 1U);
    document.close();
    EXPECT_TRUE(document.unitFit(unit.uuid).drains.empty());
}

} // namespace

} // namespace ullage
