// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window is killed while readings are typed into it. That the disk has what the store has taken is shown in the store's own tests.
#include "document/document.h"
#include "support/child_process.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QString>

#include <chrono>
#include <random>
#include <set>
#include <thread>

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
    int came_back = 0;
    for (int round = 0; round < 25; ++round) {
        ChildProcess typist({ULLAGE_TYPIST, path.toStdString(), run});
        const auto lines_wanted = 1 + random() % 9;
        std::string last;
        const auto take = [&](const std::optional<std::string>& line) {
            if (line && line->starts_with("kept ")) recorded.insert(line->substr(5));
            if (line) last = *line;
        };
        for (unsigned i = 0; i < lines_wanted; ++i) take(typist.line());
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 3000));
        typist.kill();
        while (const auto line = typist.line()) take(line);
        ASSERT_FALSE(last.empty()) << "the typist did not start";

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
    EXPECT_GT(came_back, 0);
}

} // namespace
} // namespace ullage
