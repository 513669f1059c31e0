// SPDX-License-Identifier: GPL-3.0-or-later
// Work that goes on in another thread while the document's own goes on.
#include "document_fixture.h"

#include <new>
#include <optional>
#include <thread>

namespace ullage {

using test::DocumentTest;

namespace {

/// A drain of a unit and a meter that the logbook does not know yet.
RunRecord sheet_of(const std::string& unit_name, UtcMs start_ms) {
    RunRecord record;
    record.unit.name = unit_name;
    record.unit.rated_energy_wh = 1000;
    record.run.time_zone = "UTC";
    for (int i = 0; i < 3; ++i) {
        Reading reading;
        reading.sequence = i + 1;
        reading.values.time_ms = start_ms + i * 3'600'000;
        reading.values.gauge_percent = 100 - 10 * i;
        reading.values.register_wh = 90 * i;
        record.readings.push_back(reading);
    }
    return record;
}

void in_a_thread(const std::function<void()>& work) { std::thread(work).join(); }

const auto always = [](std::size_t) { return true; };

} // namespace

TEST_F(DocumentTest, many_records_imported_in_another_thread_are_announced_once_and_undone_one_by_one) {
    const auto brought =
        document.importAll({sheet_of("Osk 1200", 1'000'000'000), sheet_of("Pelm 900", 2'000'000'000), sheet_of("Osk 1200", 0)}, in_a_thread, always);
    ASSERT_EQ(brought.size(), 3U);
    for (const auto& each : brought) EXPECT_TRUE(each);
    EXPECT_EQ(events.count("runs"), 1);
    ASSERT_EQ(document.runs().size(), 3U);
    EXPECT_EQ(document.units().size(), 2U);
    EXPECT_EQ(document.run(brought[2].value().run_uuid)->number, 1) << "runs of a unit are numbered by their first reading";
    EXPECT_EQ(document.run(brought[0].value().run_uuid)->number, 2);
    document.undoStack().undo();
    EXPECT_EQ(document.run(brought[2].value().run_uuid), nullptr);
    EXPECT_EQ(document.run(brought[0].value().run_uuid)->number, 1);
    document.undoStack().undo();
    EXPECT_EQ(document.runs().size(), 1U);
    document.undoStack().redo();
    EXPECT_EQ(document.runs().size(), 2U);
}

TEST_F(DocumentTest, an_import_that_is_stopped_keeps_the_records_before_whole_and_no_other) {
    const auto brought =
        document.importAll({sheet_of("Osk 1200", 0), sheet_of("Pelm 900", 0)}, in_a_thread, [](std::size_t done) { return done < 1; });
    ASSERT_EQ(brought.size(), 1U);
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_EQ(document.runs()[0]->readings.size(), 3U);
    EXPECT_EQ(document.units().size(), 1U);
}

TEST_F(DocumentTest, while_another_thread_imports_commands_are_refused_and_a_draft_is_kept_for_later) {
    const auto run = start_drain(add_unit());
    const auto beside = [&](const std::function<void()>& work) {
        EXPECT_TRUE(document.isOpen());
        EXPECT_EQ(document.path(), file());
        EXPECT_TRUE(document.isImporting());
        EXPECT_EQ(document.record(run.uuid, {}).error().failure, Failure::refused);
        EXPECT_TRUE(document.keepDraft(run.uuid, "88"));
        EXPECT_EQ(document.draft(run.uuid), "88");
        in_a_thread(work);
    };
    ASSERT_TRUE(document.importAll({sheet_of("Pelm 900", 0)}, beside, always).front());
    EXPECT_FALSE(document.isImporting());
    document.close();
    ASSERT_TRUE(document.open(file()));
    EXPECT_EQ(document.draft(run.uuid), "88");
}

TEST_F(DocumentTest, work_that_throws_in_the_middle_of_an_import_leaves_the_logbook_usable) {
    const auto unit = add_unit();
    const auto beside = [](const std::function<void()>&) { throw std::bad_alloc(); };
    EXPECT_THROW(static_cast<void>(document.importAll({sheet_of("Pelm 900", 0)}, beside, always)), std::bad_alloc);
    EXPECT_TRUE(document.isOpen());
    note(start_drain(unit), 100, 0);
    EXPECT_EQ(document.runs().size(), 1U);
}

TEST_F(DocumentTest, what_another_thread_analysed_is_dropped_where_the_run_changed_meanwhile) {
    const auto unit = add_unit();
    const auto run = start_drain(unit);
    note(run, 100, 0);
    clock.advance_ms(3'600'000);
    note(run, 90, 100);
    document.analyseBeside({unit.uuid}, true, in_a_thread, always);
    EXPECT_EQ(document.readingsToAnalyse({unit.uuid}, true), 0U);
    EXPECT_EQ(document.analysis(run.uuid).energy.delivered_wh.value, 100);

    clock.advance_ms(3'600'000);
    note(run, 80, 200);
    EXPECT_EQ(document.readingsToAnalyse({unit.uuid}, true), 3U);
    document.analyseBeside(
        {unit.uuid}, true,
        [&](const std::function<void()>& work) {
            in_a_thread(work);
            clock.advance_ms(3'600'000);
            note(run, 70, 300); // the result of the thread is late
        },
        always);
    EXPECT_EQ(document.readingsToAnalyse({unit.uuid}, true), 4U);
    EXPECT_EQ(document.analysis(run.uuid).energy.delivered_wh.value, 300);
    document.undoStack().undo();
    EXPECT_EQ(document.analysis(run.uuid).energy.delivered_wh.value, 200);
}

TEST_F(DocumentTest, a_change_of_one_unit_leaves_the_fits_of_others) {
    const auto one = add_unit("Osk 1200"), other = add_unit("Pelm 900");
    const auto run = start_drain(one);
    note(start_drain(other), 100, 0);
    static_cast<void>(document.unitFit(other.uuid));
    note(run, 100, 0);
    EXPECT_EQ(document.readingsToAnalyse({other.uuid}, false), 0U);
    EXPECT_EQ(document.readingsToAnalyse({one.uuid}, false), 1U);
}

TEST_F(DocumentTest, a_logbook_read_in_another_thread_is_the_one_that_open_gives) {
    note(start_drain(add_unit()), 100, 0);
    document.close();
    std::optional<Result<OpenedLogbook>> opened;
    in_a_thread([&] { opened.emplace(open_logbook(file(), clock)); });
    ASSERT_TRUE(*opened);
    document.adopt(std::move(*opened).value());
    EXPECT_TRUE(document.isOpenAt(file()));
    ASSERT_EQ(document.runs().size(), 1U);
    const RunRecord adopted = *document.runs()[0];
    note(document.runs()[0]->run, 90, 100);
    document.undoStack().undo();
    document.close();
    ASSERT_TRUE(document.open(file()));
    ASSERT_EQ(document.runs()[0]->readings.size(), 2U);
    EXPECT_EQ(document.runs()[0]->readings[0], adopted.readings[0]);
    EXPECT_TRUE(document.runs()[0]->readings[1].withdrawn);
}

} // namespace ullage
