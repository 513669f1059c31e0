// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"
#include "command_fixture.h"

namespace ullage::test {
namespace {

using Usage = Commands;

TEST_F(Usage, version_and_help_go_to_standard_output) {
    EXPECT_EQ(run({"--version"}).out, "ullage " + std::string(program_version()) + "\n");
    EXPECT_EQ(run({"--version"}).code, exit_good);
    const Outcome help = run({"--help"});
    EXPECT_EQ(help.code, exit_good);
    EXPECT_EQ(help.err, "");
    for (const char* command : {"import", "import-trace", "analyse", "compare", "export-readings", "export-sheet", "pv-check"}) {
        EXPECT_NE(help.out.find(command), std::string::npos);
        const Outcome own = run({command, "--help"});
        EXPECT_EQ(own.code, exit_good);
        EXPECT_NE(own.out.find(std::string(command) == "import-trace" ? "--logbook" : "LOGBOOK"), std::string::npos) << own.out;
    }
    EXPECT_NE(run({"compare", "--help"}).out.find("--every-drain"), std::string::npos);
}

TEST_F(Usage, wrong_usage_ends_in_2_with_one_line) {
    const std::vector<std::vector<std::string>> wrong{{},
                                                      {"weigh"},
                                                      {"import"},
                                                      {"import", "a.ullage"},
                                                      {"analyse"},
                                                      {"analyse", "a", "b"},
                                                      {"analyse", "a", "--format", "xlsx"},
                                                      {"analyse", "a", "--run", "0"},
                                                      {"analyse", "a", "--run", "first"},
                                                      {"compare", "a", "--format", "pdf"},
                                                      {"compare", "a", "--output"},
                                                      {"compare", "a", "--format", "xlsx"},
                                                      {"compare", "a", "--wrong"},
                                                      {"export-readings"},
                                                      {"export-readings", "a", "--format", "xlsx"},
                                                      {"export-readings", "a", "--run", "0"},
                                                      {"export-sheet", "a", "--unit", "x"},
                                                      {"export-sheet", "a", "--run", "1"}};
    for (const auto& args : wrong) {
        const Outcome outcome = run(args);
        EXPECT_EQ(outcome.code, exit_usage) << testing::PrintToString(args);
        EXPECT_EQ(outcome.out, "") << testing::PrintToString(args);
        expect_one_line(outcome.err);
    }
}

TEST_F(Usage, the_first_argument_tells_whether_a_window_is_wanted) {
    EXPECT_TRUE(names_command("compare", text_commands()));
    EXPECT_TRUE(names_command("--version", text_commands()));
    EXPECT_FALSE(names_command("bench.ullage", text_commands()));
    EXPECT_FALSE(names_command("", text_commands()));
}

TEST_F(Usage, a_logbook_that_is_not_there_or_none_is_said_in_one_line) {
    const std::string text_file = written("notes.ullage", "no logbook at all, but a text that is long enough to have a header of its own");
    for (const std::string& path : {std::string(folder_ / "none.ullage"), text_file, std::string(folder_ / "none.csv"), folder_.path().string()}) {
        for (const std::vector<std::string>& args :
             std::vector<std::vector<std::string>>{{"analyse", path}, {"compare", path}, {"export-sheet", path, "--unit", "x", "--run", "1"}}) {
            const Outcome outcome = run(args);
            EXPECT_EQ(outcome.code, exit_bad_input) << path;
            EXPECT_EQ(outcome.out, "");
            expect_one_line(outcome.err);
            EXPECT_NE(outcome.err.find(path), std::string::npos) << outcome.err;
        }
    }
    EXPECT_EQ(file_text(text_file).substr(0, 10), "no logbook");
    EXPECT_FALSE(std::filesystem::exists(folder_ / "none.ullage")) << "looking makes no file";
}

TEST_F(Usage, a_result_that_cannot_be_written_is_an_error) {
    const std::string path = logbook();
    std::ostringstream out, err;
    out.setstate(std::ios::badbit);
    const std::vector<std::string> args{"compare", path};
    EXPECT_EQ(run_command(args, text_commands(), out, err), exit_bad_input);
    expect_one_line(err.str());
}

} // namespace
} // namespace ullage::test
