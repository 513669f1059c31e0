// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook is read and checked as a whole each time it is opened for looking, its photos with it.
#include "command_fixture.h"

#include "support/open_count.h"
#include "support/source_dir.h"

namespace ullage::test {
namespace {

using OpenedOnce = Commands;

TEST_F(OpenedOnce, a_command_that_shows_what_a_logbook_says_opens_it_once) {
    const std::string path = logbook();
    ASSERT_EQ(run({"import-loads", (source_dir() / "sample-data" / "load-lists" / "show-night.csv").string(), "--logbook", path}).code, exit_good);
    const long once = times_opened_to_look(path);
    ASSERT_GT(once, 0);
    const std::vector<std::vector<std::string>> commands{{"analyse", path},
                                                         {"compare", path, "--load-list", "Show night"},
                                                         {"size", path, "--load-list", "Show night"},
                                                         {"export-readings", path, "--unit", "Other", "--run", "1"},
                                                         {"loads", "--logbook", path, "--list", "Show night"}};
    for (const std::vector<std::string>& command : commands)
        EXPECT_EQ(times_opened(path, [&] { EXPECT_EQ(run(command).code, exit_good) << run(command).err; }), once) << command.front();
}

} // namespace
} // namespace ullage::test
