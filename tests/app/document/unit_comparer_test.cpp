// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include "document/unit_comparer.h"

#include <QTest>

namespace ullage {

namespace {

class UnitComparerTest : public test::DocumentTest {
protected:
    /// A drain from full to 10 %, stopped there.
    ullage::Run drain(Document& into, const Unit& unit, double delivered_wh) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.started_full = true;
        run.end = RunEnd::stopped_by_tester;
        run = into.addRun(run).value();
        for (int part = 0; part <= 3; ++part) {
            ReadingValues values;
            values.time_ms = clock.now_ms();
            values.gauge_percent = 100 - 30 * part;
            values.register_wh = delivered_wh * part / 3;
            EXPECT_TRUE(into.record(run.uuid, values));
            clock.advance_hours(2);
        }
        return run;
    }

    /// Another logbook with one drained unit of that name; its path.
    QString other_logbook(const char* name, const char* unit_name) {
        Document other(clock);
        EXPECT_TRUE(other.create(file(name)));
        Unit unit;
        unit.name = unit_name;
        unit.rated_energy_wh = 900;
        const Unit added = other.addUnit(unit).value();
        drain(other, added, 600);
        const Reading last = other.runs().front()->readings.back();
        ReadingValues corrected = last.values;
        corrected.remark = "read again";
        EXPECT_TRUE(other.amend(last.uuid, corrected, QStringLiteral("a remark")));
        return file(name);
    }

    void wait_for_end() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !comparer.isWorking(); }));
    }

    UnitComparer comparer{document};
};

TEST_F(UnitComparerTest, a_unit_is_compared_anew_only_after_a_change_of_its_own_runs) {
    const auto first = drain(document, add_unit(), 900);
    drain(document, add_unit("Pelm 900"), 600);
    EXPECT_EQ(comparer.waitingUnits(CompareRows::one_per_unit), 2U);
    EXPECT_EQ(comparer.comparison(CompareRows::one_per_unit).rows.size(), 2U);
    EXPECT_EQ(comparer.waitingUnits(CompareRows::one_per_unit), 0U);
    EXPECT_EQ(comparer.waitingUnits(CompareRows::every_drain), 2U);
    note(first, 5, 950);
    EXPECT_EQ(comparer.waitingUnits(CompareRows::one_per_unit), 1U);
    EXPECT_DOUBLE_EQ(*comparer.comparison(CompareRows::one_per_unit).rows[0].usable_fraction.value,
                     *compare_as_tested(document.runs(), CompareRows::one_per_unit).rows[0].usable_fraction.value);
    Unit claims = document.units()[1];
    claims.price = 500;
    ASSERT_TRUE(document.updateUnit(claims));
    EXPECT_EQ(comparer.waitingUnits(CompareRows::one_per_unit), 1U);
    EXPECT_EQ(comparer.comparison(CompareRows::one_per_unit).rows[1].unit.price, 500);
}

TEST_F(UnitComparerTest, threads_of_their_own_give_the_same_and_tell_how_far_they_are) {
    for (int i = 0; i < 30; ++i) drain(document, add_unit(("unit " + std::to_string(10 + i)).c_str()), 700 + 10 * i);
    std::vector<std::pair<int, int>> told;
    int ends = 0;
    QObject::connect(&comparer, &UnitComparer::progressed, [&](int done, int of) { told.emplace_back(done, of); });
    QObject::connect(&comparer, &UnitComparer::ended, [&] { ++ends; });
    comparer.start(CompareRows::one_per_unit);
    comparer.start(CompareRows::one_per_unit);
    wait_for_end();
    EXPECT_EQ(ends, 1);
    ASSERT_FALSE(told.empty());
    EXPECT_EQ(told.front(), std::pair(0, 30));
    EXPECT_EQ(comparer.waitingUnits(CompareRows::one_per_unit), 0U);
    const Comparison comparison = comparer.comparison(CompareRows::one_per_unit);
    const Comparison expected = compare_as_tested(document.runs(), CompareRows::one_per_unit);
    ASSERT_EQ(comparison.rows.size(), expected.rows.size());
    for (std::size_t i = 0; i < expected.rows.size(); ++i) {
        EXPECT_EQ(comparison.rows[i].unit.name, expected.rows[i].unit.name);
        EXPECT_EQ(comparison.rows[i].delivered_wh.value, expected.rows[i].delivered_wh.value);
    }
}

TEST_F(UnitComparerTest, a_reading_that_comes_in_meanwhile_leaves_its_unit_waiting) {
    const auto first = drain(document, add_unit(), 900);
    drain(document, add_unit("Pelm 900"), 600);
    comparer.start(CompareRows::one_per_unit);
    note(first, 5, 950);
    wait_for_end();
    EXPECT_EQ(comparer.waitingUnits(CompareRows::one_per_unit), 1U);
}

TEST_F(UnitComparerTest, stopping_ends_it_and_what_is_missing_can_still_be_compared) {
    for (int i = 0; i < 30; ++i) drain(document, add_unit(("unit " + std::to_string(10 + i)).c_str()), 700 + 10 * i);
    comparer.start(CompareRows::one_per_unit);
    comparer.cancel();
    wait_for_end();
    EXPECT_EQ(comparer.comparison(CompareRows::one_per_unit).rows.size(), 30U);
}

TEST_F(UnitComparerTest, units_of_another_logbook_stand_beside_those_of_the_open_one_under_its_name) {
    drain(document, add_unit(), 900);
    ASSERT_TRUE(comparer.addLogbook(other_logbook("shed.ullage", "Pelm 900")));
    const Comparison comparison = comparer.comparison(CompareRows::one_per_unit);
    ASSERT_EQ(comparison.rows.size(), 2U);
    EXPECT_TRUE(comparison.several_sources);
    EXPECT_EQ(comparison.rows[0].source, "bench.ullage");
    EXPECT_EQ(comparison.rows[1].source, "shed.ullage");
    const RunId run = comparison.rows[1].run.uuid;
    EXPECT_EQ(document.run(run), nullptr);
    ASSERT_NE(comparer.run(run), nullptr);
    EXPECT_EQ(comparer.analysis(run).energy.usable_fraction.value, comparison.rows[1].usable_fraction.value);
    const auto histories = comparer.histories(run);
    ASSERT_TRUE(histories.ok());
    ASSERT_EQ(histories.value().size(), 1U);
    EXPECT_EQ(histories.value()[0].versions.back().reason, "a remark");
    comparer.removeLogbook(file("shed.ullage"));
    EXPECT_EQ(comparer.comparison(CompareRows::one_per_unit).rows.size(), 1U);
    EXPECT_FALSE(comparer.comparison(CompareRows::one_per_unit).several_sources);
}

TEST_F(UnitComparerTest, a_copy_of_the_open_logbook_counts_its_runs_once_and_says_so) {
    drain(document, add_unit(), 900);
    ASSERT_TRUE(document.saveCopy(file("copy.ullage")));
    ASSERT_TRUE(comparer.addLogbook(file("copy.ullage")));
    const Comparison comparison = comparer.comparison(CompareRows::every_drain);
    EXPECT_EQ(comparison.rows.size(), 1U);
    ASSERT_EQ(comparer.notices().size(), 1U);
    EXPECT_NE(comparer.notices()[0].text().find("counted once"), std::string::npos);
}

TEST_F(UnitComparerTest, what_cannot_be_added_is_refused_in_words_and_nothing_changes) {
    drain(document, add_unit(), 900);
    const auto open_one = comparer.addLogbook(file());
    ASSERT_FALSE(open_one);
    EXPECT_EQ(open_one.error().failure, Failure::refused);
    EXPECT_EQ(comparer.addLogbook(file("nowhere.ullage")).error().failure, Failure::not_found);
    const QString shed = other_logbook("shed.ullage", "Pelm 900");
    ASSERT_TRUE(comparer.addLogbook(shed));
    EXPECT_EQ(comparer.addLogbook(shed).error().failure, Failure::refused);
    EXPECT_EQ(comparer.logbooks().size(), 1U);
    ReadingValues later;
    later.time_ms = clock.now_ms();
    later.gauge_percent = 4;
    EXPECT_TRUE(document.record(document.runs().front()->run.uuid, later)) << "its file is still ours";
}

TEST_F(UnitComparerTest, one_that_is_gone_since_stays_listed_with_the_reason) {
    const QString shed = other_logbook("shed.ullage", "Pelm 900");
    comparer.setLogbooks({shed, file("gone.ullage")});
    ASSERT_EQ(comparer.logbooks().size(), 2U);
    EXPECT_TRUE(comparer.logbooks()[0].error.isEmpty());
    EXPECT_TRUE(comparer.logbooks()[1].error.contains(QLatin1String("gone.ullage")));
    EXPECT_EQ(comparer.comparison(CompareRows::one_per_unit).rows.size(), 1U);
}

} // namespace

} // namespace ullage
