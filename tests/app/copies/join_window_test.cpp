// SPDX-License-Identifier: GPL-3.0-or-later
// Another logbook joined, and a copy opened, as a person does it in the window.
#include "window_fixture.h"

#include "store/backup.h"

#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QTreeWidget>

namespace ullage {

using test::WindowTest;

namespace {

/// A bench logbook with a unit and a run, and a copy of it in which a unit was added and the first one changed.
class JoinInWindow : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        drop({write("tarrow.csv", sheet())});
        ASSERT_EQ(document.runs().size(), 1U);
        ASSERT_TRUE(document.saveCopy(file("laptop.ullage")));
        Logbook other = Logbook::open((folder / "laptop.ullage"), OpenMode::record, clock).value();
        Unit unit = other.units().value().front();
        unit.rated_energy_wh = 2100;
        ASSERT_TRUE(other.update(unit));
        Unit second;
        second.name = "Pelm 900";
        ASSERT_TRUE(other.add(second));
        ReadingValues values;
        values.time_ms = document.runs()[0]->readings.back().values.time_ms + 3'600'000;
        values.gauge_percent = 60;
        ASSERT_TRUE(other.record(document.runs()[0]->run.uuid, values));
        prompts.to_open = {file("laptop.ullage")};
    }
    [[nodiscard]] std::size_t readings() const { return document.runs()[0]->readings.size(); }
    [[nodiscard]] double rated() const { return document.unit(document.runs()[0]->unit.uuid)->rated_energy_wh.value(); }
};

TEST_F(JoinInWindow, shows_what_comes_and_what_differs_and_joins_as_one_step) {
    trigger("joinLogbookAction");
    auto* arrivals = find<QListWidget>("arrivalsList");
    auto* differences = find<QTreeWidget>("differencesTree");
    ASSERT_TRUE(arrivals && differences);
    ASSERT_EQ(arrivals->count(), 2);
    EXPECT_EQ(arrivals->item(0)->text(), "unit Pelm 900");
    EXPECT_EQ(arrivals->item(1)->text(), "drain of Tarrow 2k, 6 May 2027: 1 reading");
    ASSERT_EQ(differences->topLevelItemCount(), 1);
    const auto* item = differences->topLevelItem(0);
    EXPECT_EQ(item->text(0), "unit Tarrow 2k: not the same");
    ASSERT_EQ(item->childCount(), 1);
    EXPECT_EQ(item->child(0)->text(0), "rated energy (Wh)");
    EXPECT_EQ(item->child(0)->text(1), "2000");
    EXPECT_EQ(item->child(0)->text(2), "2100");
    click("submitButton");
    EXPECT_TRUE(message().contains("Joined: 1 unit, 1 reading came in; 1 difference stays as here.")) << message().toStdString();
    EXPECT_EQ(document.units().size(), 2U);
    EXPECT_EQ(readings(), 3U);
    EXPECT_EQ(rated(), 2000);
    ASSERT_TRUE(document.undoStack().canUndo());
    document.undoStack().undo();
    EXPECT_EQ(document.units().size(), 1U);
    EXPECT_EQ(std::ranges::count(document.runs()[0]->readings, false, &Reading::withdrawn), 2);
    document.undoStack().redo();
    EXPECT_EQ(document.units().size(), 2U);
    EXPECT_EQ(std::ranges::count(document.runs()[0]->readings, false, &Reading::withdrawn), 3);
}

TEST_F(JoinInWindow, takes_from_the_other_what_is_ticked) {
    trigger("joinLogbookAction");
    click("takeAllButton");
    EXPECT_EQ(find<QTreeWidget>("differencesTree")->topLevelItem(0)->checkState(0), Qt::Checked);
    click("keepAllButton");
    EXPECT_EQ(find<QTreeWidget>("differencesTree")->topLevelItem(0)->checkState(0), Qt::Unchecked);
    click("takeAllButton");
    click("submitButton");
    EXPECT_EQ(rated(), 2100);
    document.undoStack().undo();
    EXPECT_EQ(rated(), 2000);
    EXPECT_EQ(document.units().size(), 1U);
}

TEST_F(JoinInWindow, says_so_where_there_is_nothing_to_join_or_it_is_the_same_logbook) {
    trigger("joinLogbookAction");
    click("takeAllButton");
    click("submitButton");
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    trigger("joinLogbookAction");
    EXPECT_TRUE(message().contains("This logbook has all that laptop.ullage has already")) << message().toStdString();
    prompts.to_open = {file("bench.ullage")};
    trigger("joinLogbookAction");
    EXPECT_TRUE(message().contains("this is the same logbook")) << message().toStdString();
    prompts.to_open = {write("letter.ullage", "Dear tester")};
    trigger("joinLogbookAction");
    EXPECT_TRUE(message().contains("letter.ullage")) << message().toStdString();
}

TEST_F(JoinInWindow, a_copy_tells_what_it_holds_and_is_saved_as_a_logbook_that_is_opened) {
    trigger("copiesAction");
    EXPECT_TRUE(message().contains("There is no copy of bench.ullage beside it.")) << message().toStdString();
    ASSERT_TRUE(back_up(folder / "bench.ullage", {}, clock));
    trigger("copiesAction");
    auto* list = find<QListWidget>("copiesList");
    ASSERT_TRUE(list);
    ASSERT_EQ(list->count(), 1);
    click("lookButton");
    EXPECT_TRUE(find<QLabel>("copyWordsLabel")->text().contains("the last reading is of 6 May 2027, "))
        << find<QLabel>("copyWordsLabel")->text().toStdString();
    prompts.to_save = file("restored.ullage");
    click("submitButton");
    EXPECT_EQ(document.path(), file("restored.ullage"));
    EXPECT_EQ(document.runs().size(), 1U);
    EXPECT_TRUE(prompts.suggested.endsWith("bench as of 2027-05-14.ullage")) << prompts.suggested.toStdString();
    EXPECT_FALSE(document.isLooking());
}

TEST_F(JoinInWindow, the_copies_of_a_logbook_that_cannot_be_opened_any_more_are_reached) {
    ASSERT_TRUE(back_up(folder / "bench.ullage", {}, clock));
    document.close();
    write("bench.ullage", "damaged");
    prompts.to_open = {file("bench.ullage")};
    prompts.to_save = file("restored.ullage");
    trigger("copiesAction");
    click("submitButton");
    EXPECT_EQ(document.path(), file("restored.ullage"));
    document.close();
    prompts.to_open = {file("bench.2027-05-14.ullage-copy")};
    prompts.to_save = file("again.ullage");
    trigger("copiesAction");
    EXPECT_EQ(document.path(), file("again.ullage"));
    EXPECT_EQ(document.runs().size(), 1U);
}

} // namespace
} // namespace ullage
