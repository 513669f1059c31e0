// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/text/commands.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

namespace ullage::test {

/// Lines that were broken to fit a terminal, as one.
inline std::string on_one_line(const std::string& text) {
    std::string line;
    bool blank = false;
    for (const char c : text) {
        const bool space = c == '\n' || c == ' ';
        if (!space) line += blank ? std::string(" ") + c : std::string(1, c);
        blank = space;
    }
    return line;
}

/// What a command said and how it ended.
struct Outcome {
    int code = -1;
    std::string out, err;
};

/// A full drain of a 1000 Wh unit as a run sheet: 100 to 0 % and 0 to 800 Wh in 10 h, so 80 W and a usable fraction of 0.8.
inline std::string drain_sheet(const std::string& unit = "Specimen", int day = 11, int last_register_wh = 800) {
    std::string text = "# unit: " + unit +
                       "\n# maker: Invented Works\n# rated_energy_wh: 1000\n# rated_output_w: 1500\n# price: 500\n# currency: EUR\n"
                       "# gauge_step_percent: 1\n# meter: Bench meter\n# meter_step_wh: 1\n# meter_limit_percent: 1\n"
                       "# run: drain\n# started_full: yes\n# ended: cut-off seen\n# end_noticed_within_min: 0\n# time_zone: UTC\n"
                       "time,gauge_percent,register_wh,meter_w,display_w,mark,remark\n";
    for (int step = 0; step <= 10; ++step) {
        std::string hour = std::to_string(6 + step);
        if (hour.size() < 2) hour.insert(0, "0");
        text += "2027-05-" + std::to_string(day) + "T" + hour + ":00Z," + std::to_string(100 - 10 * step) + ',' +
                std::to_string(last_register_wh * step / 10) + ",,," + (step == 10 ? "cut-off" : "") + ",\n";
    }
    return text;
}

/// Runs commands in a folder of its own.
class Commands : public testing::Test {
protected:
    static Outcome run(const std::vector<std::string>& args) {
        std::ostringstream out, err;
        Outcome outcome;
        outcome.code = run_command(args, text_commands(), out, err);
        outcome.out = out.str();
        outcome.err = err.str();
        return outcome;
    }

    std::string written(const std::string& name, const std::string& text) {
        std::ofstream(folder_ / name, std::ios::binary) << text;
        return folder_ / name;
    }

    static std::string file_text(const std::string& path) {
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

    /// A logbook with two full drains of "Specimen" and one of "Other".
    std::string logbook() {
        const std::string path = folder_ / "bench.ullage";
        const Outcome outcome = run({"import", path, written("1.csv", drain_sheet()), written("2.csv", drain_sheet("Specimen", 12, 780)),
                                     written("3.csv", drain_sheet("Other", 13, 850))});
        EXPECT_EQ(outcome.code, exit_good) << outcome.err;
        return path;
    }

    /// One clear line: begins with the program's name, ends in its only line feed.
    static void expect_one_line(const std::string& err) {
        EXPECT_EQ(err.rfind("ullage: ", 0), 0u) << err;
        EXPECT_EQ(std::count(err.begin(), err.end(), '\n'), 1) << err;
        EXPECT_EQ(err.back(), '\n');
    }

    TempFolder folder_;
};

} // namespace ullage::test
