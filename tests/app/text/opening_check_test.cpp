// SPDX-License-Identifier: GPL-3.0-or-later
// How long the full check of a logbook took is said by every command that opens one.
#include "command_fixture.h"

#include "support/leaping_clock.h"
#include "support/source_dir.h"

#include <chrono>
#include <cstdlib>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

class LongCheck : public Commands {
protected:
    LongCheck() { ::setenv("XDG_STATE_HOME", (folder_ / "state").c_str(), 1); }
    /// What a command says of a logbook that this machine has not seen, when its check takes so long.
    Outcome run_checking_for(std::chrono::milliseconds check, const std::vector<std::string>& words) {
        fs::remove_all(folder_ / "state");
        const LeapingClock clock(check);
        return run(words);
    }
};

TEST_F(LongCheck, is_told_with_its_seconds_by_every_command_that_opens_a_logbook_and_a_short_one_is_not) {
    const std::string book = logbook(), other = folder_ / "other.ullage", list = source_dir() / "sample-data/load-lists/show-night.csv";
    ASSERT_EQ(run({"import", other, written("4.csv", drain_sheet("Fourth"))}).code, exit_good);
    ASSERT_EQ(run({"import-loads", list, "--logbook", book}).code, exit_good);
    const std::string log = written("log.csv", "epoch,register (Wh),power (W)\n1809842400,0,80\n");
    const std::vector<std::vector<std::string>> commands{{"import", book, folder_ / "1.csv"},
                                                         {"import-loads", list, "--logbook", book},
                                                         {"import-trace", log, "--logbook", book, "--unit", "Other", "--run", "1", "--preview"},
                                                         {"analyse", book},
                                                         {"compare", book},
                                                         {"export-readings", book},
                                                         {"export-sheet", book, "--unit", "Other", "--run", "1"},
                                                         {"export-folder", book, "--into", folder_ / "all"},
                                                         {"loads", "--logbook", book},
                                                         {"size", book, "--load-list", "Show night"},
                                                         {"pv-check", "--logbook", book, "--unit", "Specimen", "--voc-v", "24.3"},
                                                         {"join", book, other, "--dry-run"}};
    for (const auto& words : commands) {
        const Outcome longer = run_checking_for(3s, words);
        EXPECT_EQ(longer.code, exit_good) << words.front() << longer.err;
        const std::string said =
            "ullage: " + book + ": checked from end to end, as it comes from elsewhere or was not closed properly; that took 3.0 s\n";
        EXPECT_NE(longer.err.find(said), std::string::npos) << words.front() << ": " << longer.err;
        fs::remove_all(folder_ / "all");
        const Outcome quick = run_checking_for(900ms, words);
        EXPECT_EQ(quick.code, exit_good) << words.front() << quick.err;
        EXPECT_EQ(quick.err.find("checked from end to end"), std::string::npos) << words.front() << ": " << quick.err;
    }
    EXPECT_NE(run_checking_for(3s, {"join", book, other, "--dry-run"}).err.find("ullage: " + other + ": checked"), std::string::npos);
    // One that is known to be sound is not checked, and nothing is said.
    const LeapingClock clock(3s);
    EXPECT_EQ(run({"analyse", book}).err, "");
}

} // namespace
} // namespace ullage::test
