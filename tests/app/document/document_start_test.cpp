// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include <limits>

namespace ullage {

using test::DocumentTest;

TEST_F(DocumentTest, a_start_brings_run_first_reading_and_gauge_step_and_one_undo_takes_all_back) {
    const auto unit = add_unit();
    ullage::Run run;
    run.unit_uuid = unit.uuid;
    ReadingValues first;
    first.time_ms = clock.now_ms();
    first.gauge_percent = 100;
    const int steps = document.undoStack().count();
    const auto started = document.startRun(run, first, 5);
    ASSERT_TRUE(started) << started.error().sentence();
    EXPECT_EQ(document.undoStack().count(), steps + 1);
    ASSERT_NE(document.run(started.value().uuid), nullptr);
    ASSERT_EQ(document.run(started.value().uuid)->readings.size(), 1U);
    EXPECT_EQ(document.run(started.value().uuid)->readings[0].values, first);
    EXPECT_EQ(document.unit(unit.uuid)->gauge_step_percent, 5.0);
    EXPECT_EQ(document.run(started.value().uuid)->unit.gauge_step_percent, 5.0);

    document.undoStack().undo();
    EXPECT_EQ(document.run(started.value().uuid), nullptr);
    EXPECT_EQ(document.unit(unit.uuid)->gauge_step_percent, 1.0);
    document.undoStack().redo();
    ASSERT_NE(document.run(started.value().uuid), nullptr);
    EXPECT_FALSE(document.run(started.value().uuid)->readings[0].withdrawn);
    EXPECT_EQ(document.unit(unit.uuid)->gauge_step_percent, 5.0);
}

TEST_F(DocumentTest, a_start_without_reading_and_step_touches_nothing_else) {
    const auto unit = add_unit();
    events.clear();
    ullage::Run run;
    run.unit_uuid = unit.uuid;
    const auto started = document.startRun(run, std::nullopt, std::nullopt);
    ASSERT_TRUE(started);
    EXPECT_TRUE(document.run(started.value().uuid)->readings.empty());
    EXPECT_FALSE(events.contains("units"));
    EXPECT_EQ(*document.unit(unit.uuid), unit);
}

TEST_F(DocumentTest, a_start_whose_reading_is_refused_leaves_no_run_in_sight) {
    const auto unit = add_unit();
    ullage::Run run;
    run.unit_uuid = unit.uuid;
    ReadingValues impossible;
    impossible.time_ms = clock.now_ms();
    impossible.gauge_percent = std::numeric_limits<double>::infinity();
    const int steps = document.undoStack().count();
    EXPECT_FALSE(document.startRun(run, impossible, 5));
    EXPECT_TRUE(document.runs().empty());
    EXPECT_EQ(document.undoStack().count(), steps);
    EXPECT_EQ(document.unit(unit.uuid)->gauge_step_percent, 1.0);
    ASSERT_TRUE(document.open(file()));
    EXPECT_TRUE(document.runs().empty());
}

TEST_F(DocumentTest, a_start_for_an_unknown_unit_is_refused) {
    ullage::Run run;
    run.unit_uuid = UnitId("nobody");
    const auto started = document.startRun(run, std::nullopt, std::nullopt);
    ASSERT_FALSE(started);
    EXPECT_EQ(started.error().failure, Failure::not_found);
}

} // namespace ullage
