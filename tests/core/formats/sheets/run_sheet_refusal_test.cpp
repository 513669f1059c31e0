// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_sheet_samples.h"

using namespace ullage;
using namespace ullage::test;

namespace {

struct Refusal {
    const char* from;  ///< part of the normal sheet
    const char* to;    ///< what stands there instead
    const char* where; ///< after the file's name
    const char* what;  ///< part of the message
};

} // namespace

TEST(RunSheetRefusal, names_line_and_key_of_a_wrong_value_in_the_preface) {
    const Refusal refusals[] = {
        {"# rated_energy_wh: 512", "# rated_energy_wh: big", "line 3, key `rated_energy_wh`", "`big` is no number"},
        {"# rated_energy_wh: 512", "# rated_energy_wh: 0", "line 3, key `rated_energy_wh`", "out of range"},
        {"# rated_energy_wh: 512", "# rated_energy_wh: 1.024,5", "line 3, key `rated_energy_wh`", "more than one way"},
        {"# price: 449.5", "# price: -1", "line 5, key `price`", "out of range"},
        {"# gauge_step_percent: 1", "# gauge_step_percent: 0", "line 8, key `gauge_step_percent`", "out of range"},
        {"# meter_span_wh: 10000", "# meter_correction: 0", "line 12, key `meter_correction`", "out of range"},
        {"# run: drain", "# run: draining", "line 13, key `run`", "no kind of run"},
        {"# started_full: yes", "# started_full: 1", "line 14, key `started_full`", "neither yes nor no"},
        {"# ended: cut-off seen", "# ended: off", "line 15, key `ended`", "no way a run ends"},
        {"# time_zone: Europe/Vienna", "# time_zone: Mars/Olympus", "line 16, key `time_zone`", "no time zone"},
        {"# ambient_c: 21.5", "# ambient_c: -300", "line 18, key `ambient_c`", "out of range"},
        {"# load: projector", "# load: C:\\p", "line 17, key `load`", "backslash"},
        {"# maker: Quillwater", "# unit: Other", "line 2, key `unit`", "in line 1 already"},
        {"# maker: Quillwater", "# Unit: Other", "line 2, key `unit`", "in line 1 already"},
        {"# maker: Quillwater", "# x: 1\n# x: 1", "line 3, key `x`", "in line 2 already"},
        {"# maker: Quillwater", "# : 1", "line 2", "no key"},
    };
    for (const Refusal& refusal : refusals) {
        const Error error = read_bad(replaced(normal_sheet, refusal.from, refusal.to));
        EXPECT_EQ(error.where, std::string("a.csv, ") + refusal.where) << refusal.to;
        EXPECT_TRUE(mentions(error.what, refusal.what)) << refusal.to << ": " << error.what;
        EXPECT_FALSE(error.remedy.empty()) << refusal.to;
        EXPECT_EQ(error.sentence().find('\n'), std::string::npos) << refusal.to;
    }
}

TEST(RunSheetRefusal, names_line_and_column_of_a_wrong_cell) {
    const Refusal refusals[] = {
        {"+02:00,100,0,64", "+02:00,101,0,64", "line 20, column 2 (gauge_percent)", "out of range"},
        {"+02:00,100,0,64", "+02:00,-1,0,64", "line 20, column 2 (gauge_percent)", "out of range"},
        {"+02:00,100,0,64", "+02:00,100,-1,64", "line 20, column 3 (register_wh)", "out of range"},
        {"+02:00,100,0,64", "+02:00,100,0,64 W", "line 20, column 4 (meter_w)", "no number"},
        {"64,66", "64,nan", "line 20, column 5 (display_w)", "no number"},
        {",load changed,", ",load change,", "line 21, column 6 (mark)", "no mark"},
        {"2027-05-14T18:00+02:00", "14.05.2027 18:00", "line 20, column 1 (time)", "no date and time"},
        {"2027-05-14T18:00+02:00", "2027-02-30T18:00Z", "line 20, column 1 (time)", "no date of the calendar"},
        {"2027-05-14T18:00+02:00", "", "line 20, column 1 (time)", "no time"},
        {"64,66,,", "64,66,", "line 20", "6 fields"},
        {"64,66,,", "64,66,,a,b", "line 20", "8 fields"},
        {"2027-05-14T18:00+02:00,100,0,64,66,,", "# load: x", "line 20", "below the header row"},
        {"meter_w,", "meter_watts,", "line 19, column 4", "`meter_watts` is not known"},
        {"meter_w,", "time,", "line 19, column 4", "stands twice, first as column 1"},
        {"time,gauge", "when,gauge", "line 19, column 1", "`when` is not known"},
        {",remark\n", ",\n", "line 21, column 7", "column without a name"},
        {"\"lamp", "a\"lamp", "line 21, character 49", "quote stands inside"},
        {"\"\"bright\"\"\"", "\"\"bright", "line 21, character 48", "never closed"},
    };
    for (const Refusal& refusal : refusals) {
        const Error error = read_bad(replaced(normal_sheet, refusal.from, refusal.to));
        EXPECT_EQ(error.where, std::string("a.csv, ") + refusal.where) << refusal.to;
        EXPECT_TRUE(mentions(error.what, refusal.what)) << refusal.to << ": " << error.what;
        EXPECT_FALSE(error.remedy.empty()) << refusal.to;
    }
}

TEST(RunSheetRefusal, an_error_below_a_remark_with_line_breaks_has_the_right_line) {
    std::string text = replaced(normal_sheet, "lamp added", "lamp\n\nadded");
    text = replaced(text, ",0,438,", ",x,438,");
    EXPECT_EQ(read_bad(text).where, "a.csv, line 24, column 2 (gauge_percent)");
}

TEST(RunSheetRefusal, what_is_no_run_sheet_is_said_to_be_none) {
    EXPECT_EQ(read_bad("").what, "the file is empty");
    EXPECT_EQ(read_bad("\xEF\xBB\xBF\r\n \n").what, "the file is empty");
    EXPECT_EQ(read_bad(std::string_view("SQLite format 3\0\x10", 17)).what, "the file is no text");
    EXPECT_EQ(read_bad(std::string_view("\xFF\xFE#\0 \0", 6)).what, "the file is encoded in UTF-16");
    const Error latin = read_bad("# unit: Caf\xE9\ntime\n");
    EXPECT_EQ(latin.where, "a.csv, line 1, character 12");
    EXPECT_EQ(latin.remedy, "save the file as UTF-8");
    EXPECT_EQ(read_bad("# unit: A\n").what, "there is no header row");
    EXPECT_TRUE(mentions(read_bad("time\n2027-05-14T18:00Z\n").what, "does not name the unit"));
    EXPECT_TRUE(mentions(read_bad("# unit: A\n# meter_step_wh: 1\ntime\n").what, "does not name it"));
    EXPECT_TRUE(mentions(read_bad("# unit: A\nremark\n").what, "no column `time`"));
    EXPECT_EQ(read_run_sheet("", "").error().where, "");
}

TEST(RunSheetRefusal, other_separators_are_named) {
    std::string text = normal_sheet;
    for (char& c : text)
        if (c == ',') c = ';';
    Error error = read_bad(replaced(text, "# price: 449.5\n", "# price: 449.5;;;;;;\n"));
    EXPECT_EQ(error.where, "a.csv, line 19");
    EXPECT_TRUE(mentions(error.what, "semicolons"));
    for (char& c : text)
        if (c == ';') c = '\t';
    error = read_bad(text);
    EXPECT_TRUE(mentions(error.what, "tabs"));
    EXPECT_TRUE(mentions(error.remedy, "commas"));
}

TEST(RunSheetRefusal, no_damage_to_a_sheet_makes_the_reader_fail_otherwise_than_by_an_error) {
    for (std::size_t at = 0; at < normal_sheet.size(); ++at)
        for (const char* piece : {"", "\"", ",", "\n", "\r", "#", "\\", "\x80", ":", "-"}) {
            std::string text = normal_sheet;
            text.replace(at, 1, piece);
            const auto import = read_run_sheet(text, "a.csv");
            if (!import) {
                ASSERT_FALSE(import.error().what.empty());
                continue;
            }
            const std::string written = write_run_sheet(import.value().record);
            ASSERT_EQ(write_run_sheet(read_good(written).record), written);
        }
}

TEST(RunSheetRefusal, a_sheet_cut_off_anywhere_is_read_or_refused) {
    for (std::size_t length = 0; length < normal_sheet.size(); ++length) {
        const auto import = read_run_sheet(std::string_view(normal_sheet).substr(0, length), "a.csv");
        if (import) {
            ASSERT_LE(import.value().record.readings.size(), 3u);
        } else {
            ASSERT_FALSE(import.error().what.empty());
        }
    }
}
