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

/// An empty run of a new logbook; its uuid.
std::string new_run(const QString& path, const Clock& clock) {
    Document document(clock);
    EXPECT_TRUE(document.create(path));
    Unit unit;
    unit.name = "Osk 1200";
    ullage::Run drain;
    drain.unit_uuid = document.addUnit(unit).value().uuid;
    return document.addRun(drain).value().uuid;
}

TEST(KilledTypist, no_reading_that_the_row_has_recorded_is_lost_and_a_half_typed_one_comes_back) {
    const TempFolder folder;
    FakeClock clock;
    const QString path = QString::fromStdString((folder / "bench.ullage").string());
    const std::string run = new_run(path, clock);
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

TEST(TypistOnAFullDisk, every_row_that_was_recorded_is_there_and_the_one_that_was_not_stays_in_the_entry_row_with_the_reason) {
    FakeClock clock;
    int refused = 0, recorded = 0;
    for (long action = 1; action <= 121; action += 8) {
        SCOPED_TRACE("full from action " + std::to_string(action));
        const TempFolder folder;
        const QString path = QString::fromStdString((folder / "bench.ullage").string());
        const std::string run = new_run(path, clock);
        ChildProcess typist({ULLAGE_TYPIST, path.toStdString(), run, std::to_string(action), "full"});
        std::set<std::string> kept;
        std::string last;
        while (const auto line = typist.line()) {
            if (line->starts_with("kept ")) kept.insert(line->substr(5));
            last = *line;
        }
        if (last.starts_with("refused ")) { // else the logbook could not be opened
            ++refused;
            EXPECT_TRUE(last.starts_with("refused 1")) << "the row was emptied: " << last;
            EXPECT_NE(last.find("disk is full"), std::string::npos) << last;
        }
        Document document(clock);
        ASSERT_TRUE(document.open(path));
        EXPECT_EQ(document.run(run)->readings.size(), kept.size());
        for (const Reading& reading : document.run(run)->readings) EXPECT_TRUE(kept.contains(reading.uuid));
        recorded += static_cast<int>(kept.size());
    }
    EXPECT_GT(refused, 8);
    EXPECT_GT(recorded, 20);
}

} // namespace
} // namespace ullage
