// SPDX-License-Identifier: GPL-3.0-or-later
// What the comparison page shows, without the page.
#include "pages/comparison/comparison_presenter.h"

#include "formats/results/comparison_columns.h"
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
    [[nodiscard]] bool isShown(const char* key) const {
        const auto keys = presenter.shownColumns(presenter.table());
        return std::ranges::count(keys, key) > 0;
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

TEST_F(ComparisonPresenterTest, which_columns_are_in_sight_follows_the_choice_the_rows_and_the_load) {
    show(CompareRows::one_per_unit);
    EXPECT_TRUE(isShown("delivered_wh"));
    EXPECT_FALSE(isShown("run"));
    show(CompareRows::every_drain);
    EXPECT_TRUE(isShown("run")) << "the unit alone does not tell the rows apart";
    show(CompareRows::one_per_unit, CommonLoad{120, 1, {}});
    EXPECT_TRUE(isShown("deliverable_wh"));
    EXPECT_FALSE(isShown("delivered_wh")) << "the figure at the load stands in its place";
    presenter.showColumn(presenter.table(), "delivered_wh", true);
    EXPECT_TRUE(isShown("deliverable_wh") && isShown("delivered_wh")) << "unless both are asked for";
    presenter.showColumn(presenter.table(), "gauge_verdict", false);
    EXPECT_FALSE(isShown("gauge_verdict"));
    ComparisonPresenter later{document};
    later.setColumns(presenter.columns());
    EXPECT_EQ(later.columns(), presenter.columns());
    later.setColumns({});
    EXPECT_EQ(later.columns(), ready_columns(readers_set));
}

TEST_F(ComparisonPresenterTest, what_is_chosen_but_not_there_now_comes_back) {
    show(CompareRows::one_per_unit, CommonLoad{120, 1, {}});
    presenter.setColumns({"unit", "standing", "rated_wh"});
    EXPECT_TRUE(isShown("standing"));
    show(CompareRows::one_per_unit);
    EXPECT_FALSE(isShown("standing"));
    presenter.orderColumns(presenter.table(), {"rated_wh", "unit"});
    show(CompareRows::one_per_unit, CommonLoad{120, 1, {}});
    EXPECT_EQ(presenter.shownColumns(presenter.table()), (std::vector<std::string>{"rated_wh", "unit", "standing"}));
}

TEST_F(ComparisonPresenterTest, the_last_column_stays) {
    show(CompareRows::one_per_unit);
    presenter.setColumns({"rated_wh"});
    presenter.showColumn(presenter.table(), "rated_wh", false);
    EXPECT_TRUE(isShown("rated_wh"));
}

TEST_F(ComparisonPresenterTest, each_row_leads_to_its_run) {
    show(CompareRows::one_per_unit);
    const auto targets = presenter.targets();
    ASSERT_EQ(targets.size(), presenter.comparison().rows.size());
    EXPECT_EQ(document.run(targets[2].run_uuid)->unit.name, "Tarrow 2k");
    EXPECT_TRUE(targets[2].notice.isEmpty());
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
