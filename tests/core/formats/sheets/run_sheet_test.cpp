// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_sheet_samples.h"

using namespace ullage;
using namespace ullage::test;

TEST(RunSheet, every_key_and_cell_reaches_the_record) {
    const SheetImport import = read_good(normal_sheet);
    EXPECT_TRUE(import.notices.empty());
    const RunRecord& record = import.record;
    EXPECT_EQ(record.unit.name, "Brook 500");
    EXPECT_EQ(record.unit.maker, "Quillwater");
    EXPECT_EQ(record.unit.rated_energy_wh, 512);
    EXPECT_EQ(record.unit.rated_output_w, 600);
    EXPECT_EQ(record.unit.price, 449.5);
    EXPECT_EQ(record.unit.currency, "EUR");
    EXPECT_EQ(record.unit.mass_kg, 6.4);
    EXPECT_EQ(record.unit.gauge_step_percent, 1);
    EXPECT_FALSE(record.unit.peak_output_w.has_value());
    ASSERT_TRUE(record.meter.has_value());
    EXPECT_EQ(record.meter->name, "bench meter 2");
    EXPECT_EQ(record.meter->step_wh, 1);
    EXPECT_EQ(record.meter->limit_percent, 1);
    EXPECT_EQ(record.meter->span_wh, 10000);
    EXPECT_EQ(record.meter->correction, 1);
    EXPECT_EQ(record.run.kind, RunKind::drain);
    EXPECT_EQ(record.run.started_full, true);
    EXPECT_EQ(record.run.end, RunEnd::cut_off_seen);
    EXPECT_EQ(record.run.time_zone, "Europe/Vienna");
    EXPECT_EQ(record.run.load, "projector, sound");
    EXPECT_EQ(record.run.ambient_c, 21.5);
    ASSERT_EQ(record.readings.size(), 3u);
    const ReadingValues& second = record.readings[1].values;
    EXPECT_EQ(second.time_ms, parse_iso8601("2027-05-14T17:30:30Z", "UTC").value());
    EXPECT_EQ(second.gauge_percent, 80);
    EXPECT_EQ(second.register_wh, 96);
    EXPECT_FALSE(second.meter_w || second.display_w);
    EXPECT_EQ(second.mark, MarkKind::load_changed);
    EXPECT_EQ(second.remark, "lamp added, \"bright\"");
    EXPECT_EQ(record.readings[0].values.display_w, 66);
    EXPECT_EQ(record.readings[2].sequence, 3);
    EXPECT_TRUE(record.readings[0].uuid.empty() && record.unit.uuid.empty() && record.run.uuid.empty());
}

TEST(RunSheet, the_normal_form_is_written_byte_for_byte) { EXPECT_EQ(write_run_sheet(read_good(normal_sheet).record), normal_sheet); }

TEST(RunSheet, what_is_not_set_is_not_written) {
    RunRecord record;
    record.unit.name = "A";
    EXPECT_EQ(write_run_sheet(record), "# unit: A\n# gauge_step_percent: 1\n# run: drain\n# ended: still running\n# time_zone: UTC\n"
                                       "time,gauge_percent,register_wh,meter_w,display_w,mark,remark\n");
}

TEST(RunSheet, withdrawn_readings_are_left_out_and_the_rest_is_in_order_of_time) {
    RunRecord record = read_good(normal_sheet).record;
    record.readings[1].withdrawn = true;
    std::swap(record.readings[0], record.readings[2]);
    const std::string text = write_run_sheet(record);
    EXPECT_FALSE(mentions(text, "lamp added"));
    EXPECT_LT(text.find("T18:00+02:00"), text.find("T02:40+02:00"));
}

TEST(RunSheet, carriage_returns_a_byte_order_mark_and_a_missing_last_line_end_change_nothing) {
    std::string text = "\xEF\xBB\xBF";
    for (char c : normal_sheet) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
    text.erase(text.size() - 2);
    EXPECT_EQ(write_run_sheet(read_good(text).record), normal_sheet);
}

TEST(RunSheet, what_a_spreadsheet_does_to_the_preface_changes_nothing) {
    std::string text = replaced(normal_sheet, "# unit: Brook 500\n", "# unit: Brook 500,,,,,,\n");
    text = replaced(text, "# load: projector, sound\n", "\"# load: projector, sound\",,,,,,\n");
    text = replaced(text, "# ambient_c: 21.5\n", "# ambient_c: 21.5,,,,,,\n,,,,,,\n");
    text += ",,,,,,\n";
    const SheetImport import = read_good(text);
    EXPECT_EQ(write_run_sheet(import.record), normal_sheet);
    ASSERT_EQ(import.notices.size(), 1u);
    EXPECT_EQ(import.notices[0], "line 24: the row is empty; left out");
}

TEST(RunSheet, columns_may_come_in_any_order_and_may_be_missing) {
    const SheetImport import = read_good(rows_in("UTC", ""));
    EXPECT_EQ(texts(import.notices), std::vector<std::string>{"the sheet has no readings"});
    const RunRecord record = read_good("# unit: A\nremark, Register_Wh ,time\nx,\"12,5\",2027-05-14T18:00Z\n").record;
    ASSERT_EQ(record.readings.size(), 1u);
    EXPECT_EQ(record.readings[0].values.register_wh, 12.5);
    EXPECT_EQ(record.readings[0].values.remark, "x");
    EXPECT_FALSE(record.readings[0].values.gauge_percent.has_value());
}

TEST(RunSheet, unknown_keys_are_kept_and_reported) {
    const std::string text = replaced(normal_sheet, "time,gauge", "# vessel: blue: 2\n# Tester-1:\ntime,gauge");
    const SheetImport import = read_good(text);
    ASSERT_EQ(import.notices.size(), 2u);
    EXPECT_EQ(import.notices[0], "line 19: key `vessel` is not known; kept with the run");
    EXPECT_EQ(import.record.run.extra, (std::vector<std::pair<std::string, std::string>>{{"vessel", "blue: 2"}, {"Tester-1", ""}}));
    EXPECT_EQ(write_run_sheet(import.record), text);
}

TEST(RunSheet, a_comment_is_reported_and_not_kept) {
    const SheetImport import = read_good("# my first test\n#\n" + normal_sheet);
    EXPECT_EQ(texts(import.notices), std::vector<std::string>{"line 1: the comment `my first test` is not kept"});
    EXPECT_EQ(write_run_sheet(import.record), normal_sheet);
}

TEST(RunSheet, missing_keys_have_a_stated_meaning) {
    const SheetImport import = read_good("# UNIT: A\n# price:\ntime\n2027-05-14T18:00Z\n");
    EXPECT_EQ(import.record.run.kind, RunKind::drain);
    EXPECT_EQ(import.record.run.end, RunEnd::still_running);
    EXPECT_FALSE(import.record.run.started_full || import.record.meter || import.record.unit.price);
    ASSERT_EQ(import.notices.size(), 2u);
    EXPECT_TRUE(mentions(import.notices[0], "`run`"));
    EXPECT_TRUE(mentions(import.notices[1], "`ended`"));
}

TEST(RunSheet, local_times_are_those_of_the_sheets_zone) {
    const RunRecord record = read_good(rows_in("Asia/Kathmandu", "2027-05-14 18:00,\n2027-05-14T18:00+02:00,\n")).record;
    EXPECT_EQ(record.readings[0].values.time_ms, parse_iso8601("2027-05-14T12:15Z", "UTC").value());
    EXPECT_EQ(record.readings[1].values.time_ms, parse_iso8601("2027-05-14T16:00Z", "UTC").value());
}

TEST(RunSheet, a_local_time_without_any_zone_is_refused) {
    const Error error = read_bad("# unit: A\ntime\n2027-05-14T18:00\n");
    EXPECT_EQ(error.where, "a.csv, line 3, column 1 (time)");
    EXPECT_TRUE(mentions(error.what, "names no time zone"));
}

TEST(RunSheet, a_doubled_local_time_is_told_apart_by_the_order_of_rows) {
    const SheetImport import = read_good(rows_in("Europe/Vienna", "2027-10-31T01:50,\n2027-10-31T02:20,\n2027-10-31T02:50,\n"
                                                                  "2027-10-31T02:20,\n2027-10-31T02:50,\n2027-10-31T03:20,\n"));
    const char* utc[] = {"2027-10-30T23:50Z", "2027-10-31T00:20Z", "2027-10-31T00:50Z",
                         "2027-10-31T01:20Z", "2027-10-31T01:50Z", "2027-10-31T02:20Z"};
    ASSERT_EQ(import.record.readings.size(), 6u);
    for (std::size_t i = 0; i < 6; ++i) EXPECT_EQ(format_iso8601(import.record.readings[i].values.time_ms, "UTC"), utc[i]);
    ASSERT_EQ(import.notices.size(), 4u);
    EXPECT_EQ(import.notices[0], "line 7: 2027-10-31T02:20 occurs twice in Europe/Vienna; by the order of the rows it is read as the "
                                 "earlier, 2027-10-31T02:20+02:00");
    EXPECT_TRUE(mentions(import.notices[2], "the later, 2027-10-31T02:20+01:00"));
}

TEST(RunSheet, a_skipped_local_time_is_refused) {
    const Error error = read_bad(rows_in("Europe/Vienna", "2027-03-28T02:30,\n"));
    EXPECT_EQ(error.where, "a.csv, line 6, column 1 (time)");
    EXPECT_TRUE(mentions(error.what, "does not exist"));
}

TEST(RunSheet, rows_out_of_order_are_put_in_order_of_time_and_reported) {
    const SheetImport import = read_good(rows_in("UTC", "2027-05-14T19:00,b\n2027-05-14T18:00,a\n2027-05-14T19:00,c\n"));
    ASSERT_EQ(import.record.readings.size(), 3u);
    EXPECT_EQ(import.record.readings[0].values.remark, "a");
    EXPECT_EQ(import.record.readings[1].values.remark, "b");
    EXPECT_EQ(import.record.readings[2].values.remark, "c");
    EXPECT_EQ(import.notices.size(), 1u);
}
