// SPDX-License-Identifier: GPL-3.0-or-later
// What the comparison page shows, without the page.
#include "pages/comparison/comparison_presenter.h"

#include "formats/sheets/run_sheet.h"
#include "support/fake_clock.h"
#include "support/scenario.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {

namespace {

bool any_unit(const Unit&) { return true; }

class ComparisonPresenterTest : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(QString::fromStdString((folder / "bench.ullage").string())));
        for (const ScenarioRun& run : sample_scenario()) {
            const auto sheet = read_run_sheet(write_run_sheet(run.simulated.record), run.file_name);
            ASSERT_TRUE(sheet.ok());
            ASSERT_TRUE(document.import(sheet.value().record).ok());
        }
    }

    void show(CompareRows rows, const std::optional<CommonLoad>& load = {}) {
        presenter.compare(rows);
        presenter.choose(any_unit, load, {0.8, 0.9});
    }
    [[nodiscard]] bool isHidden(const char* key) const {
        const Table table = presenter.table();
        const auto column = std::ranges::find(table.columns, key, &TableColumn::key);
        EXPECT_NE(column, table.columns.end()) << key;
        return presenter.isColumnHidden(table, static_cast<std::size_t>(column - table.columns.begin()));
    }

    TempFolder folder;
    FakeClock clock;
    Document document{clock};
    ComparisonPresenter presenter{document};
};

TEST_F(ComparisonPresenterTest, the_line_beside_the_title_counts_units_and_drains_and_names_the_load) {
    show(CompareRows::one_per_unit);
    EXPECT_EQ(presenter.about(), QStringLiteral("3 units, 7 drains, as tested"));
    EXPECT_TRUE(presenter.loadInFull().isEmpty());
    show(CompareRows::every_drain);
    EXPECT_EQ(presenter.about(), QStringLiteral("3 units, 7 drains, as tested"));
    CommonLoad switched;
    switched.power_w = 120;
    switched.duty = 0.5;
    show(CompareRows::one_per_unit, switched);
    EXPECT_TRUE(presenter.about().startsWith(QStringLiteral("3 units, 7 drains, at "))) << presenter.about().toStdString();
    EXPECT_FALSE(presenter.about().contains(QLatin1Char('('))) << "what the load consists of has no room there";
    EXPECT_TRUE(presenter.loadInFull().contains(QLatin1Char('(')));
}

TEST_F(ComparisonPresenterTest, only_wanted_units_are_kept_and_none_says_so) {
    presenter.compare(CompareRows::one_per_unit);
    presenter.choose([](const Unit& unit) { return unit.name == "Tarrow 2k"; }, {}, {0.8, 0.9});
    EXPECT_EQ(presenter.table().rows.size(), 1U);
    EXPECT_EQ(presenter.vessels().columns.size(), 1U);
    EXPECT_EQ(presenter.pairs(PairFigure::usable_fraction).names, std::vector<std::string>{"Tarrow 2k"});
    presenter.clear();
    presenter.choose(any_unit, {}, {});
    EXPECT_TRUE(presenter.isEmpty());
    EXPECT_EQ(presenter.about(), QStringLiteral("no drains to show"));
}

TEST_F(ComparisonPresenterTest, which_columns_are_in_sight_follows_the_rows_the_load_and_the_choice) {
    show(CompareRows::one_per_unit);
    EXPECT_FALSE(isHidden("rank"));
    EXPECT_TRUE(isHidden("run"));
    EXPECT_FALSE(isHidden("delivered_wh"));
    show(CompareRows::every_drain);
    EXPECT_TRUE(isHidden("rank"));
    EXPECT_FALSE(isHidden("run"));
    CommonLoad load;
    load.power_w = 120;
    show(CompareRows::one_per_unit, load);
    EXPECT_TRUE(isHidden("delivered_wh")) << "at one load what was tested is told by the fraction";
    presenter.showColumn("delivered_wh", true);
    presenter.showColumn("rank", false);
    EXPECT_FALSE(isHidden("delivered_wh"));
    EXPECT_TRUE(isHidden("rank"));
    ComparisonPresenter later{document};
    later.setColumns(presenter.columns());
    EXPECT_EQ(later.columns(), presenter.columns());
}

TEST_F(ComparisonPresenterTest, a_column_that_is_away_keeps_its_place_when_others_are_moved) {
    show(CompareRows::one_per_unit);
    auto order = presenter.columnOrder(presenter.table());
    ASSERT_GT(order.size(), 3U);
    presenter.orderColumns(order);
    const std::string away = order[2], before = order[1];
    order.erase(order.begin() + 2);
    std::swap(order[0], order[order.size() - 1]);
    presenter.orderColumns(order);
    const auto back = presenter.columnOrder(presenter.table());
    const auto place = std::ranges::find(back, away);
    ASSERT_NE(place, back.end());
    ASSERT_NE(place, back.begin());
    EXPECT_EQ(*(place - 1), before);
    EXPECT_EQ(back.back(), order.back());
}

TEST_F(ComparisonPresenterTest, a_row_leads_to_its_run_and_no_row_to_nothing) {
    show(CompareRows::one_per_unit);
    const auto target = presenter.target(2);
    ASSERT_TRUE(target);
    EXPECT_EQ(document.run(target->run_uuid.toStdString())->unit.name, "Tarrow 2k");
    EXPECT_TRUE(target->notice.isEmpty());
    EXPECT_FALSE(presenter.target(3));
    EXPECT_FALSE(presenter.target(-1));
}

TEST_F(ComparisonPresenterTest, few_units_are_complete_at_once_and_every_pair_of_them_is_shown) {
    EXPECT_EQ(presenter.look(CompareRows::one_per_unit), ComparisonPresenter::Progress::complete);
    presenter.stop();
    EXPECT_EQ(presenter.look(CompareRows::one_per_unit), ComparisonPresenter::Progress::complete);
    show(CompareRows::one_per_unit);
    EXPECT_EQ(presenter.pairs(PairFigure::usable_fraction).verdicts.size(), 3U);
    EXPECT_TRUE(presenter.pairsNote().isEmpty());
}

} // namespace

} // namespace ullage::test
