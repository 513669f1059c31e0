// SPDX-License-Identifier: GPL-3.0-or-later
#include "two_logbooks.h"

#include "base/instant.h"

namespace ullage {
namespace {

using namespace test;

TEST(Join, of_two_logbooks_that_say_the_same_brings_nothing) {
    TwoLogbooks two;
    const std::string before = seen(*two.here);
    EXPECT_TRUE(take(plan_join(*two.here, *two.there)).empty());
    const Joined joined = two.joined();
    EXPECT_FALSE(joined.changed());
    EXPECT_EQ(say_outcome(joined), "nothing came in");
    EXPECT_EQ(seen(*two.here), before);
}

TEST(Join, brings_units_meters_runs_photos_logs_lists_and_sheets_with_their_identifiers_and_histories) {
    TwoLogbooks two;
    Unit unit = sample_unit();
    unit.name = "Second";
    unit = take(two.there->add(unit));
    Meter meter = sample_meter();
    meter.name = "other meter";
    meter = take(two.there->add(meter));
    meter.limit_percent = 1;
    take(two.there->update(meter, "calibrated"));
    const ullage::Run run = take(two.there->add(sample_run(unit.uuid, meter.uuid)));
    const Reading first = take(two.there->record(run.uuid, sample_values(two.clock.now_ms())));
    ReadingValues amended = first.values;
    amended.register_wh = 7;
    take(two.there->amend(first.uuid, amended, "read wrongly"));
    const Reading gone = take(two.there->record(run.uuid, sample_values(two.clock.now_ms() + 60'000)));
    take(two.there->set_withdrawn(gone.uuid, true, "entered twice"));
    const Photo photo = take(two.there->add_photo(run.uuid, first.uuid, {"display.jpg", bare_jpeg(8, 8, 3000), PhotoMoment{5, true}}));
    take(two.there->add_trace(sample_trace(run.uuid, "meter.csv"), log_of(two.clock.now_ms(), 5000, "f1")));
    take(two.there->add(sample_list("boat")));
    PvSheet sheet;
    sheet.name = "roof";
    sheet.unit_uuid = unit.uuid;
    sheet = take(two.there->add(sheet));

    const Joined joined = two.joined();
    EXPECT_EQ(say_outcome(joined), "1 unit, 1 meter, 1 run, 1 reading, 1 photo, 1 log, 1 load list, 1 PV sheet came in");
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    const RunRecord record = take(two.here->run_record(run.uuid));
    EXPECT_EQ(record.readings, take(two.there->run_record(run.uuid)).readings);
    const auto history = take(two.here->history(first.uuid));
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[1].reason, "read wrongly");
    EXPECT_EQ(history[0].written_ms, take(two.there->history(first.uuid))[0].written_ms);
    EXPECT_EQ(take(two.here->history(gone.uuid)).back().reason, "entered twice");
    EXPECT_EQ(take(two.here->meter_history(meter.uuid)).back().reason, "calibrated");
    EXPECT_EQ(take(two.here->meter_history(meter.uuid)).front().meter, take(two.there->meter_history(meter.uuid)).front().meter);
    EXPECT_EQ(take(two.here->photos(run.uuid)), take(two.there->photos(run.uuid)));
    EXPECT_EQ(take(two.here->photo_bytes(photo.uuid)), bare_jpeg(8, 8, 3000));
    EXPECT_EQ(take(two.here->traces(run.uuid)), take(two.there->traces(run.uuid)));
    EXPECT_EQ(take(two.here->load_lists()), take(two.there->load_lists()));
    EXPECT_EQ(take(two.here->pv_sheets()), take(two.there->pv_sheets()));
    EXPECT_TRUE(take(plan_join(*two.here, *two.there)).empty()) << "a second time there is nothing to bring";
}

TEST(Join, brings_a_run_that_was_continued_in_both_the_readings_photos_and_logs_of_either) {
    TwoLogbooks two;
    take(two.here->record(two.run.uuid, sample_values(two.clock.now_ms() + 4 * 3'600'000)));
    const Reading added = take(two.there->record(two.run.uuid, sample_values(two.clock.now_ms() + 90'000)));
    take(two.there->add_photo(two.run.uuid, added.uuid, {"new.jpg", bare_jpeg(), {}}));
    take(two.there->add_photo(two.run.uuid, two.readings[0].uuid, {"old.jpg", bare_jpeg(), {}}));
    take(two.there->add_trace(sample_trace(two.run.uuid, "meter.csv"), log_of(two.clock.now_ms(), 10, "f1")));
    const JoinPlan plan = take(plan_join(*two.here, *two.there));
    ASSERT_EQ(plan.arrivals.size(), 1U);
    EXPECT_TRUE(plan.arrivals[0].known);
    EXPECT_EQ(say_arrival(plan.arrivals[0]), "1 reading, 2 photos, 1 log");
    EXPECT_TRUE(plan.differences.empty());
    (void)two.joined();
    const RunRecord record = take(two.here->run_record(two.run.uuid));
    ASSERT_EQ(record.readings.size(), 5U);
    EXPECT_EQ(record.readings[1].uuid, added.uuid) << "at its place in time";
    EXPECT_EQ(record.readings[1].sequence, 5) << "after those that were here";
    EXPECT_EQ(take(two.here->photos(two.run.uuid)).size(), 2U);
    EXPECT_EQ(take(two.here->traces(two.run.uuid)).size(), 1U);
    EXPECT_TRUE(take(plan_join(*two.here, *two.there)).empty());
}

TEST(Join, shows_what_differs_and_keeps_this_logbook_s_unless_told) {
    TwoLogbooks two;
    Unit unit = two.unit;
    unit.rated_energy_wh = 1100;
    unit.tags = {"lent"};
    take(two.there->update(unit));
    ullage::Run run = two.run;
    run.load = "heater";
    take(two.there->update(run));
    LoadList list = two.list;
    list.appliances[0].power_w = 60;
    take(two.there->update(list));
    const std::string before = seen(*two.here);
    EXPECT_EQ(field_texts(two.difference("unit Lantern 900").fields),
              (FieldTexts{{"rated energy (Wh)", "1000.25", "1100"}, {"tags", "lent; zelt ≈", "lent"}}));
    EXPECT_EQ(field_texts(two.difference("no-load drain of Lantern 900").fields), (FieldTexts{{"load", "projector and sound", "heater"}}));
    EXPECT_EQ(field_texts(two.difference("load list kitchen").fields),
              (FieldTexts{{"line 1", "1 × lamp, 40 W, 4 h a day", "1 × lamp, 60 W, 4 h a day"}}));
    const Joined kept = two.joined();
    EXPECT_EQ(say_outcome(kept), "nothing came in; 3 differences stay as here");
    EXPECT_EQ(seen(*two.here), before);
    const Joined taken = two.joined({two.difference("unit Lantern 900").key()});
    EXPECT_EQ(say_outcome(taken), "nothing came in; 1 difference taken from the other logbook; 2 differences stay as here");
    EXPECT_EQ(take(two.here->units())[0], unit);
    (void)two.joined_taking_all();
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    EXPECT_EQ(take(two.here->load_lists())[0], list);
}

TEST(Join, takes_a_reading_that_was_amended_there_alone_with_its_history_and_never_undoes_an_amendment_here) {
    TwoLogbooks two;
    ReadingValues values = two.readings[0].values;
    values.register_wh = 5;
    take(two.there->amend(two.readings[0].uuid, values, "misread"));
    values.register_wh = 6;
    take(two.here->amend(two.readings[1].uuid, values, "checked the photo"));
    const JoinPlan plan = take(plan_join(*two.here, *two.there));
    ASSERT_EQ(plan.differences.size(), 1U) << "what is newer here is no difference";
    EXPECT_TRUE(plan.differences[0].changed_there_only);
    EXPECT_EQ(field_texts(plan.differences[0].fields), (FieldTexts{{"register (Wh)", "0.1", "5"}}));
    EXPECT_EQ(plan.keys_changed_there_only(), plan.all_keys());
    const Joined joined = two.joined(plan.all_keys());
    const auto history = take(two.here->history(two.readings[0].uuid));
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[1].reason, "misread");
    EXPECT_EQ(history[1].written_ms, take(two.there->history(two.readings[0].uuid))[1].written_ms);
    EXPECT_EQ(take(two.here->history(two.readings[1].uuid)).back().values.register_wh, 6);
    take(undo_join(*two.here, joined));
    EXPECT_EQ(take(two.here->history(two.readings[0].uuid)).back().values.register_wh, 0.1);
    take(redo_join(*two.here, joined));
    EXPECT_EQ(take(two.here->history(two.readings[0].uuid)).back().values.register_wh, 5);
}

TEST(Join, takes_a_reading_that_was_amended_in_both_as_a_further_amendment_that_says_where_from) {
    TwoLogbooks two;
    ReadingValues values = two.readings[0].values;
    values.register_wh = 5;
    take(two.there->amend(two.readings[0].uuid, values, "there"));
    values.register_wh = 6;
    take(two.here->amend(two.readings[0].uuid, values, "here"));
    const JoinDifference difference = two.difference("reading of");
    EXPECT_FALSE(difference.changed_there_only);
    (void)two.joined({difference.key()});
    const auto history = take(two.here->history(two.readings[0].uuid));
    ASSERT_EQ(history.size(), 3U);
    EXPECT_EQ(history[1].reason, "here");
    EXPECT_EQ(history[2].values.register_wh, 5);
    EXPECT_EQ(history[2].reason, "joined with there.ullage");
}

TEST(Join, leaves_withdrawn_what_was_withdrawn_here_with_all_that_belongs_to_it_until_it_is_taken_back) {
    TwoLogbooks two;
    take(two.there->record(two.run.uuid, sample_values(two.clock.now_ms() + 90'000)));
    take(two.there->add(sample_run(two.unit.uuid)));
    take(two.here->set_unit_withdrawn(two.unit.uuid, true));
    const Joined kept = two.joined();
    EXPECT_EQ(kept.left_out, 2U);
    EXPECT_TRUE(take(two.here->units()).empty());
    EXPECT_FALSE(kept.changed());
    const Joined back = two.joined({two.difference("unit Lantern 900").key()});
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    take(undo_join(*two.here, back));
    EXPECT_TRUE(take(two.here->units()).empty());
}

TEST(Join, withdraws_here_what_was_withdrawn_there_only_where_that_is_taken) {
    TwoLogbooks two;
    take(two.there->set_run_withdrawn(two.run.uuid, true));
    take(two.there->set_load_list_withdrawn(two.list.uuid, true));
    const std::string before = seen(*two.here);
    (void)two.joined();
    EXPECT_EQ(seen(*two.here), before);
    const Joined joined = two.joined_taking_all();
    EXPECT_TRUE(take(two.here->run_records()).empty());
    EXPECT_TRUE(take(two.here->load_lists()).empty());
    take(undo_join(*two.here, joined));
    EXPECT_EQ(seen(*two.here), before);
}

TEST(Join, brings_no_record_that_is_withdrawn_there) {
    TwoLogbooks two;
    const Unit unit = take(two.there->add([] {
        Unit fresh;
        fresh.name = "Gone";
        return fresh;
    }()));
    take(two.there->add(sample_run(unit.uuid)));
    take(two.there->set_unit_withdrawn(unit.uuid, true));
    const LoadList list = take(two.there->add(sample_list("gone")));
    take(two.there->set_load_list_withdrawn(list.uuid, true));
    EXPECT_TRUE(take(plan_join(*two.here, *two.there)).empty());
}

TEST(Join, of_a_stranger_s_logbook_says_that_a_name_stands_for_something_else_and_keeps_the_two_apart) {
    TwoLogbooks two;
    write_logbook(two.folder / "stranger.ullage");
    two.there.emplace(take(Logbook::open(two.folder / "stranger.ullage", OpenMode::read_only, two.clock)));
    const JoinPlan plan = take(plan_join(*two.here, *two.there));
    EXPECT_TRUE(plan.differences.empty());
    ASSERT_EQ(plan.notices.size(), 2U);
    EXPECT_EQ(plan.notices[0], "there is a unit Lantern 900 already, which is not the same one: it comes in as a further unit of this name");
    (void)two.joined();
    EXPECT_EQ(take(two.here->units()).size(), 2U);
    EXPECT_EQ(take(two.here->run_records()).size(), 2U);
}

TEST(Join, leaves_out_a_run_with_the_same_readings_as_one_here_unless_it_is_taken) {
    TwoLogbooks two;
    const ullage::Run twin = take(two.there->add(sample_run(two.unit.uuid, two.meter.uuid)));
    for (const Reading& reading : two.readings) take(two.there->record(twin.uuid, reading.values));
    const JoinPlan plan = take(plan_join(*two.here, *two.there));
    ASSERT_EQ(plan.differences.size(), 1U);
    EXPECT_EQ(plan.differences[0].matter, JoinMatter::same_readings);
    EXPECT_EQ(two.joined().left_out, 1U);
    EXPECT_EQ(take(two.here->run_records()).size(), 1U);
    (void)two.joined(plan.all_keys());
    EXPECT_EQ(take(two.here->run_records()).size(), 2U);
}

TEST(Join, gives_a_load_list_whose_name_is_taken_another_and_passes_over_one_that_is_equal) {
    TwoLogbooks two;
    take(two.here->add(sample_list("Boat", 10)));
    take(two.there->add(sample_list("boat", 20)));
    take(two.here->add(sample_list("equal")));
    take(two.there->add(sample_list("equal")));
    const Joined joined = two.joined();
    EXPECT_EQ(joined.load_lists, 1U);
    ASSERT_EQ(joined.notices.size(), 1U);
    EXPECT_EQ(joined.notices[0], "there is another load list boat already: it comes in as boat (2)");
    std::vector<std::string> names;
    for (const LoadList& list : take(two.here->load_lists())) names.push_back(list.name);
    EXPECT_EQ(names, (std::vector<std::string>{"Boat", "boat (2)", "equal", "kitchen"}));
    take(undo_join(*two.here, joined));
    EXPECT_EQ(take(two.here->load_lists()).size(), 3U);
    take(redo_join(*two.here, joined));
    EXPECT_EQ(take(two.here->load_lists()).size(), 4U);
}

TEST(Join, replaces_a_log_that_has_grown_there_or_overlaps_one_here_only_where_it_is_taken) {
    TwoLogbooks two;
    take(two.here->add_trace(sample_trace(two.run.uuid, "own.csv"), log_of(two.clock.now_ms(), 10, "f1")));
    take(two.there->add_trace(sample_trace(two.run.uuid, "theirs.csv"), log_of(two.clock.now_ms() + 120'000, 30, "f2")));
    const std::string before = seen(*two.here);
    EXPECT_EQ(two.difference("log theirs.csv").matter, JoinMatter::overlapping);
    (void)two.joined();
    EXPECT_EQ(seen(*two.here), before);
    const Joined joined = two.joined_taking_all();
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    take(undo_join(*two.here, joined));
    EXPECT_EQ(seen(*two.here), before);
    take(redo_join(*two.here, joined));
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    EXPECT_TRUE(take(plan_join(*two.here, *two.there)).empty());

    // The same log, which was followed further there.
    two.there.reset();
    take(two.here->save_copy(two.folder / "again.ullage"));
    two.there.emplace(take(Logbook::open(two.folder / "again.ullage", OpenMode::record, two.clock)));
    const Trace copied = take(two.there->traces(two.run.uuid)).back();
    const std::vector<TraceSample> more = {{copied.last_ms + 60'000, 900.0, {}, {}, {}}};
    take(two.there->extend_trace(copied, {more, copied.size_bytes + 20, "f3", 0, false}));
    const JoinDifference grown = two.difference("log theirs.csv");
    EXPECT_TRUE(grown.changed_there_only);
    (void)two.joined({grown.key()});
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    EXPECT_TRUE(take(plan_join(*two.here, *two.there)).empty());
}

TEST(Join, takes_over_that_a_photo_was_tied_or_withdrawn_there) {
    TwoLogbooks two;
    const Photo waiting = take(two.here->add_photo(two.run.uuid, {}, {"waits.jpg", bare_jpeg(), {}}));
    const Photo second = take(two.here->add_photo(two.run.uuid, two.readings[0].uuid, {"b.jpg", bare_jpeg(), {}}));
    two.there.reset();
    take(two.here->save_copy(two.folder / "again.ullage"));
    two.there.emplace(take(Logbook::open(two.folder / "again.ullage", OpenMode::record, two.clock)));
    take(two.there->record(two.run.uuid, sample_values(two.clock.now_ms() + 90'000), {waiting.uuid}));
    take(two.there->set_photo_withdrawn(second.uuid, true));
    EXPECT_EQ(take(plan_join(*two.here, *two.there)).keys_changed_there_only().size(), 2U);
    const Joined joined = two.joined_taking_all();
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    take(undo_join(*two.here, joined));
    EXPECT_EQ(take(two.here->photos(two.run.uuid))[1].withdrawn, false);
    take(redo_join(*two.here, joined));
    EXPECT_EQ(seen(*two.here), seen(*two.there));
}

TEST(Join, brings_back_a_meter_that_was_withdrawn_here_where_a_run_that_comes_in_names_it) {
    TwoLogbooks two;
    Meter meter = sample_meter();
    meter.name = "second";
    meter = take(two.here->add(meter));
    two.there.reset();
    take(two.here->save_copy(two.folder / "again.ullage"));
    two.there.emplace(take(Logbook::open(two.folder / "again.ullage", OpenMode::record, two.clock)));
    take(two.here->set_meter_withdrawn(meter.uuid, true));
    const std::string before = seen(*two.here);
    take(two.there->add(sample_run(two.unit.uuid, meter.uuid)));
    const Joined joined = two.joined();
    ASSERT_EQ(joined.notices.size(), 1U);
    EXPECT_EQ(joined.notices[0], "meter second was withdrawn here; it comes back, as a run that comes in names it");
    EXPECT_EQ(seen(*two.here), seen(*two.there));
    take(undo_join(*two.here, joined));
    EXPECT_EQ(seen(*two.here), before);
    take(redo_join(*two.here, joined));
    EXPECT_EQ(seen(*two.here), seen(*two.there));
}

TEST(Join, is_one_step_that_can_be_undone_and_done_again) {
    TwoLogbooks two;
    Unit unit = sample_unit();
    unit.name = "Second";
    unit = take(two.there->add(unit));
    Meter meter = sample_meter();
    meter.name = "other";
    meter = take(two.there->add(meter));
    const ullage::Run run = take(two.there->add(sample_run(unit.uuid, meter.uuid)));
    take(two.there->record(run.uuid, sample_values(two.clock.now_ms())));
    take(two.there->record(two.run.uuid, sample_values(two.clock.now_ms() + 90'000)));
    take(two.there->add_photo(two.run.uuid, two.readings[0].uuid, {"old.jpg", bare_jpeg(), {}}));
    take(two.there->add_trace(sample_trace(two.run.uuid, "meter.csv"), log_of(two.clock.now_ms(), 10, "f1")));
    Unit changed = two.unit;
    changed.remark = "changed";
    take(two.there->update(changed));
    Meter stated = two.meter;
    stated.limit_percent = 3;
    take(two.there->update(stated, "new sheet"));
    ullage::Run moved = two.run;
    moved.unit_uuid = unit.uuid;
    moved.meter_uuid = meter.uuid;
    take(two.there->update(moved));
    const std::string before = seen(*two.here), wanted = seen(*two.there);
    const Joined joined = two.joined_taking_all();
    EXPECT_EQ(seen(*two.here), wanted);
    for (int i = 0; i < 2; ++i) {
        take(undo_join(*two.here, joined));
        EXPECT_EQ(seen(*two.here), before);
        take(redo_join(*two.here, joined));
        EXPECT_EQ(seen(*two.here), wanted);
    }
    // The file passes every check, also after it.
    two.here.reset();
    EXPECT_EQ(seen(take(Logbook::open(two.folder / "here.ullage", OpenMode::record, two.clock))), wanted);
}

TEST(Join, that_is_stopped_or_fails_leaves_the_logbook_as_it_was) {
    TwoLogbooks two;
    const Unit unit = take(two.there->add([] {
        Unit fresh;
        fresh.name = "Fresh";
        return fresh;
    }()));
    const ullage::Run run = take(two.there->add(sample_run(unit.uuid)));
    take(two.there->add_photo(run.uuid, {}, {"a.jpg", bare_jpeg(), {}}));
    const std::string before = seen(*two.here);
    const auto stopped = join(*two.here, *two.there, {}, [](double) { return false; });
    EXPECT_EQ(failure_of(stopped), Failure::refused);
    EXPECT_EQ(seen(*two.here), before);
    EXPECT_EQ(two.joined().runs, 1U);
}

TEST(Join, heeds_what_changed_since_the_plan_was_shown) {
    TwoLogbooks two;
    Unit unit = two.unit;
    unit.remark = "there";
    take(two.there->update(unit));
    const std::set<std::string> keys = take(plan_join(*two.here, *two.there)).all_keys();
    take(two.here->update(unit));
    EXPECT_FALSE(two.joined(keys).changed()) << "both say the same by now";
}

TEST(Join, refuses_the_logbook_itself_under_any_name) {
    const TwoLogbooks two;
    std::filesystem::create_symlink(two.folder / "here.ullage", two.folder / "link.ullage");
    const auto refused = same_file_error(two.folder / "here.ullage", two.folder / "link.ullage");
    ASSERT_TRUE(refused);
    EXPECT_EQ(refused->what, "this is the same logbook");
    EXPECT_FALSE(same_file_error(two.folder / "here.ullage", two.folder / "there.ullage"));
}

} // namespace
} // namespace ullage
