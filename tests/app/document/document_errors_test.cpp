// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include <csignal>
#include <fstream>

#include <sys/resource.h>

namespace ullage {

using test::DocumentTest;

namespace {

/// While it lives, files of this process cannot grow: every write that needs room fails, as on a full disk.
class FullDisk {
public:
    FullDisk() {
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        auto none = before_;
        none.rlim_cur = 0;
        setrlimit(RLIMIT_FSIZE, &none);
    }
    ~FullDisk() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit before_{};
    void (*handler_)(int) = nullptr;
};

} // namespace

TEST_F(DocumentTest, a_file_that_is_no_logbook_leaves_the_open_one_open) {
    add_unit();
    std::ofstream(folder / "letter.ullage") << "Dear tester, this is a letter and no logbook at all.\n";
    events.clear();
    const auto opened = document.open(file("letter.ullage"));
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().failure, Failure::not_a_logbook);
    EXPECT_TRUE(document.isOpen());
    EXPECT_EQ(document.path(), file());
    EXPECT_EQ(document.units().size(), 1U);
    EXPECT_TRUE(events.isEmpty());
}

TEST_F(DocumentTest, creating_over_an_existing_file_is_refused) {
    std::ofstream(folder / "notes.ullage") << "kept";
    ASSERT_FALSE(document.create(file("notes.ullage")));
    EXPECT_EQ(document.path(), file());
}

TEST_F(DocumentTest, opening_the_logbook_that_is_open_is_no_error) {
    add_unit();
    EXPECT_TRUE(document.open(file()));
    EXPECT_EQ(document.units().size(), 1U);
}

TEST_F(DocumentTest, commands_without_a_logbook_say_so) {
    document.close();
    const auto added = document.addUnit(Unit{});
    ASSERT_FALSE(added);
    EXPECT_EQ(added.error().failure, Failure::refused);
    EXPECT_FALSE(document.record(RunId("none"), {}));
    EXPECT_FALSE(document.saveCopy(file("copy.ullage")));
}

TEST_F(DocumentTest, a_refused_command_changes_nothing_and_is_no_step) {
    const auto run = start_drain(add_unit());
    const auto reading = note(run, 71, 4774);
    const auto steps = document.undoStack().count();
    events.clear();
    EXPECT_FALSE(document.amend(reading.uuid, reading.values, "nothing new"));
    EXPECT_FALSE(document.amend(ReadingId("no such reading"), reading.values, ""));
    EXPECT_FALSE(document.withdrawRun(RunId("no such run")));
    EXPECT_FALSE(document.record(RunId("no such run"), reading.values));
    EXPECT_EQ(document.undoStack().count(), steps);
    EXPECT_TRUE(events.isEmpty());
}

TEST_F(DocumentTest, a_meter_that_runs_name_is_not_withdrawn) {
    Meter meter;
    meter.name = "Socket meter A";
    meter = document.addMeter(meter).value();
    ullage::Run run;
    run.unit_uuid = add_unit().uuid;
    run.meter_uuid = meter.uuid;
    ASSERT_TRUE(document.addRun(run));
    EXPECT_FALSE(document.withdrawMeter(meter.uuid));
    EXPECT_EQ(document.meters().size(), 1U);
}

TEST_F(DocumentTest, an_undo_that_can_never_be_done_is_said_and_does_not_bar_the_way_to_earlier_steps) {
    const auto unit = add_unit();
    Meter meter;
    meter.name = "Socket meter A";
    meter = document.addMeter(meter).value();
    ullage::Run run;
    run.unit_uuid = unit.uuid;
    run.meter_uuid = meter.uuid;
    ASSERT_TRUE(document.addRun(run));
    document.undoStack().undo();
    document.undoStack().undo(); // the meter is still named by the withdrawn run
    EXPECT_EQ(failures.size(), 1);
    EXPECT_EQ(document.meters().size(), 1U);
    ASSERT_TRUE(document.undoStack().canUndo());
    document.undoStack().undo();
    EXPECT_TRUE(document.units().empty());
}

TEST_F(DocumentTest, a_full_disk_refuses_the_reading_and_leaves_the_run_as_it_was) {
    const auto run = start_drain(add_unit());
    note(run, 100, 4312);
    const auto steps = document.undoStack().count();
    ReadingValues values;
    values.time_ms = clock.now_ms() + 60'000;
    values.gauge_percent = 99;
    values.remark = std::string(20'000, 'x');
    bool taken = true;
    {
        const FullDisk full;
        taken = document.record(run.uuid, values).ok();
    }
    EXPECT_FALSE(taken);
    EXPECT_EQ(document.run(run.uuid)->readings.size(), 1U);
    EXPECT_EQ(document.undoStack().count(), steps);
    EXPECT_TRUE(document.record(run.uuid, values)) << "the logbook works again once there is room";
}

TEST_F(DocumentTest, an_undo_that_the_disk_refuses_can_be_tried_again) {
    const auto run = start_drain(add_unit());
    note(run, 71, 4774);
    {
        const FullDisk full;
        document.undoStack().undo();
    }
    ASSERT_EQ(failures.size(), 1);
    EXPECT_FALSE(document.run(run.uuid)->readings[0].withdrawn);
    ASSERT_TRUE(document.undoStack().canUndo());
    EXPECT_FALSE(document.undoStack().canRedo());
    document.undoStack().undo();
    EXPECT_TRUE(document.run(run.uuid)->readings[0].withdrawn);
    {
        const FullDisk full;
        document.undoStack().redo();
    }
    EXPECT_EQ(failures.size(), 2);
    EXPECT_TRUE(document.run(run.uuid)->readings[0].withdrawn);
    document.undoStack().redo();
    EXPECT_FALSE(document.run(run.uuid)->readings[0].withdrawn);
}

} // namespace ullage
