// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window is killed in, or finds the disk full from, the numbered actions of an evening on the disk (typist/typist.cpp). That the disk has
// what the store has taken is shown in the store's own tests.
#include "document/document.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "support/watched_process.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QString>

#include <map>
#include <sstream>

namespace ullage::test {
namespace {

/// What a person at the window knows of a reading.
struct Known {
    double gauge_percent = 0;
    bool withdrawn = false;
};

/// What the typist said, in order.
struct Told {
    std::map<ReadingId, Known> readings;
    bool ended = false;
    std::string half;    ///< the half-typed gauge that was kept last
    std::string step;    ///< the last one
    bool done = true;    ///< the last step was confirmed
    std::string refused; ///< what followed that word

    explicit Told(const std::vector<std::string>& lines) {
        for (const std::string& line : lines) {
            std::istringstream words(line);
            std::string verb, uuid;
            words >> verb >> uuid;
            if (verb == "step") step = uuid;
            done = verb != "step";
            if (verb == "half") half = uuid;
            if (verb == "kept" || verb == "amended") words >> readings[ReadingId(uuid)].gauge_percent;
            if (verb == "withdrawn") readings[ReadingId(uuid)].withdrawn = true;
            if (verb == "run") ended = true;
            if (verb == "refused") refused = line.substr(verb.size() + 1);
        }
    }
    /// Whether the window was in the midst of this: then it may be there or not.
    [[nodiscard]] bool amidst(const char* wanted) const { return step == wanted && !done; }
};

class WindowOnAFailingDisk : public testing::Test {
protected:
    WindowOnAFailingDisk() {
        Document document(clock_);
        EXPECT_TRUE(document.create(at("first.ullage")));
        Unit unit;
        unit.name = "Osk 1200";
        ullage::Run drain;
        drain.unit_uuid = document.addUnit(unit).value().uuid;
        run_ = document.addRun(drain).value().uuid;
    }

    [[nodiscard]] QString at(const char* name) const { return QString::fromStdString((folder_ / name).string()); }

    /// The evening on a logbook of its own, which is then `path_`.
    WatchedProcess evening(const std::string& fault, long action) {
        path_ = at((fault + std::to_string(action) + ".ullage").c_str());
        EXPECT_TRUE(QFile::copy(at("first.ullage"), path_));
        return watch({ULLAGE_TYPIST, fault, std::to_string(action), path_.toStdString(), run_.text(), (folder_ / "settings.ini").string()});
    }

    /// Opens the logbook again and holds what is in it against what the window had confirmed.
    void expect_kept(const Told& told) const {
        Document document(clock_);
        const auto opened = document.open(path_);
        ASSERT_TRUE(opened) << opened.error().sentence();
        const RunRecord& record = *document.run(run_);
        std::size_t unheard = 0;
        std::map<ReadingId, const Reading*> found;
        for (const Reading& reading : record.readings) {
            found[reading.uuid] = &reading;
            unheard += told.readings.contains(reading.uuid) ? 0 : 1;
        }
        for (const auto& [uuid, known] : told.readings) {
            ASSERT_TRUE(found.contains(uuid)) << "a confirmed reading is lost";
            const Reading& reading = *found[uuid];
            if (!told.amidst("amend")) {
                EXPECT_EQ(reading.values.gauge_percent, known.gauge_percent);
            }
            if (!told.amidst("withdraw")) {
                EXPECT_EQ(reading.withdrawn, known.withdrawn);
            }
        }
        EXPECT_LE(unheard, told.amidst("record") ? 1U : 0U);
        if (!told.amidst("end")) {
            EXPECT_EQ(record.run.end != RunEnd::still_running, told.ended);
        }
        // Killed after the row was kept and before it was recorded: the half-typed entry waits.
        if (told.step == "record" && told.refused.empty() && !told.done && unheard == 0) {
            EXPECT_TRUE(document.draft(run_).contains(QString::fromStdString(told.half))) << document.draft(run_).toStdString();
        }
    }

    static constexpr std::size_t most_kills = 48, most_full = 24;

    FakeClock clock_;
    TempFolder folder_;
    QString path_;
    RunId run_;
};

/// An evening that nothing disturbed has done all of it.
void expect_whole(const WatchedProcess& watched, const Told& told) {
    EXPECT_EQ(watched.code, 0) << told.refused;
    EXPECT_EQ(told.readings.size(), 4U);
    EXPECT_TRUE(told.ended);
    for (const char* step : {"type", "record", "amend", "withdraw", "end"})
        for (const char* action : {": write log", ": sync log", ": write logbook", ": sync logbook"}) {
            if (std::string(step) == "type" && std::string(action).ends_with("logbook")) continue; // taken into the file within seconds
            EXPECT_EQ(std::ranges::count(watched.actions, std::string(step) + action) > 0, true) << step << action;
        }
}

TEST_F(WindowOnAFailingDisk, killed_in_any_kind_of_action_loses_nothing_that_it_had_confirmed_and_a_half_typed_row_comes_back) {
    const FaultsTried tried = try_numbered_faults(
        {"killed"}, most_kills, [this](const std::string& fault, long action) { return evening(fault, action); },
        [this](const std::string& name, const WatchedProcess& watched) {
            SCOPED_TRACE(name + ", " + watched.killed_in);
            const Told told(watched.lines);
            if (name == "undisturbed") expect_whole(watched, told);
            else EXPECT_EQ(watched.code, -1);
            expect_kept(told);
            return !HasFatalFailure();
        });
    EXPECT_EQ(tried.died_in, tried.kinds) << "a kind of action in which the window was not killed";
}

TEST_F(WindowOnAFailingDisk, full_from_any_kind_of_action_keeps_what_it_had_confirmed_and_leaves_the_rest_in_its_field_with_the_reason) {
    std::map<std::string, int> refused;
    try_numbered_faults(
        {"full"}, most_full, [this](const std::string& fault, long action) { return evening(fault, action); },
        [&](const std::string& name, const WatchedProcess& watched) {
            SCOPED_TRACE(name);
            EXPECT_GE(watched.code, 0) << "a full disk ended the window";
            const Told told(watched.lines);
            expect_kept(told);
            if (told.refused.empty()) return !HasFatalFailure();
            std::istringstream words(told.refused);
            std::string step, field;
            words >> step >> field;
            ++refused[step];
            EXPECT_NE(told.refused.find("disk is full"), std::string::npos) << told.refused;
            if (step == "record") {
                EXPECT_EQ(field, told.half + ":") << "the row was emptied";
            }
            if (step == "amend") {
                EXPECT_EQ(field, "96:") << "the form was emptied";
            }
            return !HasFatalFailure();
        });
    for (const char* step : {"record", "amend", "withdraw", "end"}) EXPECT_GT(refused[step], 0) << step;
}

} // namespace
} // namespace ullage::test
