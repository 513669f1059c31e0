// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window is killed while readings are typed into it. That the disk has what the store has taken is shown in the store's own tests.
#include "document/document.h"
#include "support/child_process.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QString>

#include <random>
#include <set>

namespace ullage {
namespace {

using namespace test;

TEST(KilledTypist, no_reading_that_the_row_has_recorded_is_lost_and_a_half_typed_one_comes_back) {
    const TempFolder folder;
    FakeClock clock;
    const QString path = QString::fromStdString((folder / "bench.ullage").string());
    std::string run;
    {
        Document document(clock);
        ASSERT_TRUE(document.create(path));
        Unit unit;
        unit.name = "Osk 1200";
        ullage::Run drain;
        drain.unit_uuid = document.addUnit(unit).value().uuid;
        run = document.addRun(drain).value().uuid;
    }
    std::mt19937 random(20271103);
    std::set<std::string> recorded;
    int came_back = 0, typed = 0;
    // So few actions that all rounds together type fewer than 100 rows, from which on the gauge would begin again and be questioned.
    for (int round = 0; round < 25; ++round) {
        ChildProcess typist({ULLAGE_TYPIST, path.toStdString(), run, std::to_string(20 + random() % 80)});
        std::string last;
        const auto take = [&](const std::optional<std::string>& line) {
            if (line && line->starts_with("kept ")) recorded.insert(line->substr(5));
            if (line) last = *line;
        };
        while (const auto line = typist.line()) take(line);
        typed += !last.empty(); // else it died while it opened the logbook

        Document document(clock);
        ASSERT_TRUE(document.open(path)) << "round " << round;
        std::set<std::string> kept;
        for (const Reading& reading : document.run(run)->readings) kept.insert(reading.uuid);
        for (const auto& uuid : recorded) EXPECT_TRUE(kept.contains(uuid)) << "round " << round;
        EXPECT_LE(kept.size(), recorded.size() + static_cast<std::size_t>(round) + 1);
        // Killed after the row was kept and before it was recorded: the half-typed entry waits.
        if (last.starts_with("half ") && kept.size() == recorded.size()) {
            EXPECT_TRUE(document.draft(run).contains(QString::fromStdString(last.substr(5)))) << "round " << round;
            ++came_back;
        }
        recorded = kept; // one may have been on its way when the kill came
    }
    EXPECT_GT(recorded.size(), 25U);
    EXPECT_GT(typed, 15);
    EXPECT_GT(came_back, 0);
}

} // namespace
} // namespace ullage
