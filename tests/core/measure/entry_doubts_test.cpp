// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/entry_doubts.h"
#include "measure/entry_mend.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage {
namespace {

constexpr UtcMs start_ms = 1'810'310'400'000; // 2027-05-14T16:00Z
constexpr UtcMs hour_ms = 3'600'000;

ReadingValues noted(double hours, std::optional<double> gauge, std::optional<double> wh) {
    ReadingValues values;
    values.time_ms = start_ms + static_cast<UtcMs>(hours * static_cast<double>(hour_ms));
    values.gauge_percent = gauge;
    values.register_wh = wh;
    return values;
}

/// A 1200 Wh, 600 W unit (believable up to 780 W) that was read at 0 h, 1 h and 2 h.
RunRecord record() {
    RunRecord made;
    made.unit.rated_energy_wh = 1200;
    made.unit.rated_output_w = 600;
    made.meter = Meter{};
    long sequence = 0;
    for (const ReadingValues& values : {noted(0, 100, 4312), noted(1, 95, 4376), noted(2, 90, 4440)}) {
        Reading reading;
        reading.sequence = ++sequence;
        reading.values = values;
        made.readings.push_back(reading);
    }
    return made;
}

std::vector<DoubtKind> kinds(const RunRecord& run, const ReadingValues& values, double now_h) {
    std::vector<DoubtKind> found;
    for (const Doubt& doubt : entry_doubts(run, values, noted(now_h, {}, {}).time_ms)) {
        EXPECT_FALSE(doubt.sentence.empty());
        found.push_back(doubt.kind);
    }
    return found;
}

using Kinds = std::vector<DoubtKind>;

TEST(EntryDoubts, a_reading_that_continues_the_run_raises_none) {
    EXPECT_EQ(kinds(record(), noted(3, 85, 4504), 3), Kinds{});
    EXPECT_EQ(kinds(record(), noted(3, {}, {}), 3), Kinds{});
}

TEST(EntryDoubts, the_first_reading_of_a_run_raises_none) {
    RunRecord empty = record();
    empty.readings.clear();
    EXPECT_EQ(kinds(empty, noted(0, 100, 4312), 0), Kinds{});
}

TEST(EntryDoubts, a_gauge_that_rises_is_doubted_in_a_drain_and_one_that_falls_in_a_charge) {
    EXPECT_EQ(kinds(record(), noted(3, 91, {}), 3), Kinds{DoubtKind::gauge_rose});
    RunRecord charge = record();
    charge.run.kind = RunKind::charge;
    EXPECT_EQ(kinds(charge, noted(3, 91, {}), 3), Kinds{});
    EXPECT_EQ(kinds(charge, noted(3, 89, {}), 3), Kinds{DoubtKind::gauge_rose});
}

TEST(EntryDoubts, a_meter_zeroed_in_the_minute_of_its_last_reading_explains_the_next) {
    RunRecord run = record();
    Reading zeroed;
    zeroed.sequence = 4;
    zeroed.values = noted(2, {}, {});
    zeroed.values.mark = MarkKind::meter_zeroed;
    run.readings.push_back(zeroed);
    EXPECT_EQ(kinds(run, noted(3, 85, 64), 3), Kinds{});
    // Zeroed before the reading of that minute, the mark explains nothing of what follows it.
    std::swap(run.readings[2], run.readings[3]);
    EXPECT_EQ(kinds(run, noted(3, 85, 64), 3), Kinds{DoubtKind::register_fell});
}

TEST(EntryDoubts, a_register_that_falls_is_doubted_unless_a_mark_explains_it) {
    ReadingValues fallen = noted(3, 85, 64);
    EXPECT_EQ(kinds(record(), fallen, 3), Kinds{DoubtKind::register_fell});
    fallen.mark = MarkKind::meter_zeroed;
    EXPECT_EQ(kinds(record(), fallen, 3), Kinds{});
    fallen.mark = MarkKind::meter_swapped;
    EXPECT_EQ(kinds(record(), fallen, 3), Kinds{});
    fallen.mark = MarkKind::load_changed;
    EXPECT_EQ(kinds(record(), fallen, 3), Kinds{DoubtKind::register_fell});
}

TEST(EntryDoubts, a_rollover_of_a_known_span_is_believed_when_its_power_is) {
    RunRecord run = record();
    run.meter->span_wh = 4500;
    EXPECT_EQ(kinds(run, noted(3, 85, 4), 3), Kinds{}); // 64 Wh in an hour
    run.meter->span_wh = 10000;
    EXPECT_EQ(kinds(run, noted(3, 85, 4), 3), Kinds{DoubtKind::register_fell}); // 5564 Wh in an hour
}

TEST(EntryDoubts, more_power_than_the_unit_can_deliver_is_doubted) {
    // One hour and twice a minute: 806 Wh is 780 W, the limit; 900 Wh is 871 W.
    EXPECT_EQ(kinds(record(), noted(3, 85, 4440 + 806), 3), Kinds{});
    EXPECT_EQ(kinds(record(), noted(3, 85, 4440 + 900), 3), Kinds{DoubtKind::too_much_power});
    ReadingValues shown = noted(3, 85, {});
    shown.meter_w = 6400;
    EXPECT_EQ(kinds(record(), shown, 3), Kinds{DoubtKind::too_much_power});
    shown.meter_w.reset();
    shown.display_w = 6400;
    EXPECT_EQ(kinds(record(), shown, 3), Kinds{DoubtKind::too_much_power});
}

TEST(EntryDoubts, a_second_note_within_the_same_minute_is_not_doubted_for_its_power) { EXPECT_EQ(kinds(record(), noted(2, 90, 4441), 2), Kinds{}); }

TEST(EntryDoubts, a_time_before_the_last_reading_or_in_the_future_is_doubted) {
    EXPECT_EQ(kinds(record(), noted(1.5, 92, 4408), 2), Kinds{DoubtKind::before_last});
    EXPECT_EQ(kinds(record(), noted(3.2, 85, 4500), 3), Kinds{DoubtKind::in_future});
    EXPECT_EQ(kinds(record(), noted(3.01, 85, 4500), 3), Kinds{}); // less than a minute ahead
}

TEST(EntryDoubts, a_reading_put_between_others_is_held_against_the_later_one_too) {
    EXPECT_EQ(kinds(record(), noted(1.5, 88, 4408), 2), (Kinds{DoubtKind::before_last, DoubtKind::gauge_rose}));
    EXPECT_EQ(kinds(record(), noted(1.5, 92, 4450), 2), (Kinds{DoubtKind::before_last, DoubtKind::register_overtakes}));
}

TEST(EntryDoubts, a_run_that_has_ended_is_doubted) {
    RunRecord run = record();
    run.run.end = RunEnd::cut_off_seen;
    EXPECT_EQ(kinds(run, noted(3, 85, 4504), 3), Kinds{DoubtKind::run_ended});
}

TEST(EntryDoubts, withdrawn_readings_are_not_held_against_it) {
    RunRecord run = record();
    run.readings.back().withdrawn = true;
    EXPECT_EQ(kinds(run, noted(1.5, 92, 4408), 2), Kinds{});
}

/// What is offered instead of a register at 3 h; 64 Wh an hour so far, so that 4504 Wh is expected.
std::optional<double> offered(double register_wh) {
    const RunRecord run = record();
    const ReadingValues values = noted(3, 85, register_wh);
    const UtcMs now_ms = values.time_ms;
    const auto mended = mended_entry(run, values, entry_doubts(run, values, now_ms), now_ms);
    return mended ? mended->register_wh : std::nullopt;
}

TEST(EntryMend, a_digit_or_a_decimal_place_too_many_or_too_few_is_offered_mended) {
    EXPECT_EQ(offered(45040), 4504.0);
    EXPECT_EQ(offered(450.4), 4504.0);
    EXPECT_EQ(offered(4.504), 4504.0) << "kWh";
    EXPECT_FALSE(offered(4504)) << "not doubted";
    EXPECT_FALSE(offered(431)) << "4310 Wh is less than was read before";
    EXPECT_FALSE(offered(0)) << "a reset";
}

TEST(EntryMend, a_leap_of_which_a_tenth_goes_on_as_before_is_doubted_though_the_unit_could_do_it) {
    // A register that was set to 0 shows 64 and 128 Wh; 1920 Wh an hour later would be 1792 W of a 2000 W unit, 192 Wh are 64 W again.
    RunRecord run = record();
    for (Reading& reading : run.readings) *reading.values.register_wh -= 4312;
    run.unit.rated_output_w = 2000;
    const ReadingValues values = noted(3, 85, 1920);
    const auto doubts = entry_doubts(run, values, values.time_ms);
    ASSERT_EQ(doubts.size(), 1u);
    EXPECT_EQ(doubts[0].kind, DoubtKind::tenfold_load);
    EXPECT_NE(doubts[0].sentence.text().find("about 64 W before"), std::string::npos) << doubts[0].sentence;
    const auto mended = mended_entry(run, values, doubts, values.time_ms);
    ASSERT_TRUE(mended);
    EXPECT_EQ(mended->register_wh, 192.0);
    EXPECT_TRUE(entry_doubts(run, noted(3, 85, 850), values.time_ms).empty()) << "a load may well become eleven times as high";
}

} // namespace
} // namespace ullage
