// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison_fixture.h"

#include "services/appearance.h"
#include "services/settings.h"

#include <QDoubleSpinBox>

namespace ullage::test {

TEST_F(ComparisonPageTest, units_are_rows_with_value_and_unit_in_sight) {
    QAbstractItemModelTester tester(view()->model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(view()->model()->rowCount(), 3);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Osk 1200"));
    EXPECT_EQ(cell(0, "rated energy Wh"), QStringLiteral("1200"));
    EXPECT_EQ(cell(2, "usable fraction"), QStringLiteral("0.797"));
    EXPECT_FALSE(cell(0, "price per delivered kWh EUR/kWh").isEmpty());
    EXPECT_EQ(page->findChild<VesselRow*>()->content().columns.size(), 3u);
    EXPECT_EQ(page->findChild<BarChart*>()->content().bars.size(), 3u);
    EXPECT_FALSE(page->findChild<QLabel*>(QStringLiteral("comparisonRemarksLabel"))->text().isEmpty());
}

TEST_F(ComparisonPageTest, every_drain_gives_each_its_row_and_shows_which_run_it_is) {
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("everyDrainButton")), Qt::LeftButton);
    EXPECT_EQ(view()->model()->rowCount(), 7);
    EXPECT_EQ(cell(0, "run"), QStringLiteral("drain 12 May, 311 W"));
    EXPECT_FALSE(view()->isColumnHidden(2));
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("onePerUnitButton")), Qt::LeftButton);
    EXPECT_EQ(view()->model()->rowCount(), 3);
}

TEST_F(ComparisonPageTest, sorting_is_by_number_not_by_text) {
    const auto* model = view()->model();
    int rated = -1;
    for (int column = 0; column < model->columnCount(); ++column)
        if (model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().startsWith(QLatin1String("rated"))) rated = column;
    ASSERT_GE(rated, 0);
    view()->sortByColumn(rated, Qt::AscendingOrder);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Pelm 900"));
    EXPECT_EQ(cell(2, "unit"), QStringLiteral("Tarrow 2k"));
}

TEST_F(ComparisonPageTest, a_new_reading_of_a_unit_changes_its_row_at_once) {
    const QString before = cell(0, "delivered energy Wh");
    const auto runs = document.runs();
    const RunRecord* osk = nullptr;
    for (const RunRecord* run : runs)
        if (run->unit.name == "Osk 1200" && run->number == 2) osk = run;
    ASSERT_NE(osk, nullptr);
    ReadingValues last = osk->readings.back().values;
    last.register_wh = *last.register_wh + 20;
    ASSERT_TRUE(document.amend(osk->readings.back().uuid, last, QStringLiteral("misread")));
    EXPECT_NE(cell(0, "delivered energy Wh"), before);
}

TEST_F(ComparisonPageTest, units_are_held_against_each_other_in_the_figure_that_is_chosen) {
    const auto* pairs = page->findChild<QTableView*>(QStringLiteral("pairsView"))->model();
    auto* figures = page->findChild<QComboBox*>(QStringLiteral("pairFigureCombo"));
    const QString fraction = pairs->index(0, 1).data().toString();
    figures->setCurrentIndex(figures->findText(QStringLiteral("price per delivered kWh")));
    const QString price = pairs->index(0, 1).data().toString();
    EXPECT_NE(price, fraction);
    EXPECT_TRUE(price.contains(QLatin1String("EUR/kWh"))) << price.toStdString();
}

TEST_F(ComparisonPageTest, opening_a_row_asks_for_its_run) {
    QString asked;
    QObject::connect(page.get(), &ComparisonPage::runAsked, [&](const QString& uuid) { asked = uuid; });
    emit view()->activated(view()->model()->index(2, 0));
    const RunRecord* run = document.run(asked.toStdString());
    ASSERT_NE(run, nullptr);
    EXPECT_EQ(run->unit.name, "Tarrow 2k");
}

TEST_F(ComparisonPageTest, a_logbook_without_drains_says_what_to_do_and_offers_no_export) {
    document.close();
    EXPECT_EQ(view()->model()->rowCount(), 0);
    EXPECT_FALSE(page->findChild<QPushButton*>(QStringLiteral("exportButton"))->isEnabled());
    EXPECT_TRUE(page->findChild<VesselRow*>()->content().empty_text.contains(QLatin1String("Record a drain")));
}

TEST_F(ComparisonPageTest, a_tag_leaves_only_its_units_and_stays_chosen) {
    auto* tags = page->findChild<QComboBox*>(QStringLiteral("tagCombo"));
    ASSERT_TRUE(tags->isVisible());
    EXPECT_EQ(tags->count(), 4) << "any, lent, projector, tent";
    tags->setCurrentIndex(tags->findText(QStringLiteral("lent")));
    ASSERT_EQ(view()->model()->rowCount(), 1);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Pelm 900"));
    page->refresh();
    EXPECT_EQ(tags->currentText(), QStringLiteral("lent"));
    EXPECT_EQ(view()->model()->rowCount(), 1);
    for (Unit unit : std::vector<Unit>(document.units())) {
        unit.tags.clear();
        ASSERT_TRUE(document.updateUnit(unit));
    }
    EXPECT_FALSE(tags->isVisible()) << "without tags there is nothing to choose";
    EXPECT_EQ(view()->model()->rowCount(), 3);
}

TEST_F(ComparisonPageTest, what_was_paid_has_a_column_while_any_unit_has_a_price_paid) {
    const auto shown = [this](const char* key) {
        const auto& columns = page->findChild<TableModel*>()->table().columns;
        const auto found = std::ranges::find(columns, key, &TableColumn::key);
        return found != columns.end() && !view()->isColumnHidden(static_cast<int>(found - columns.begin()));
    };
    EXPECT_TRUE(shown("paid_per_delivered_kwh"));
    for (Unit unit : std::vector<Unit>(document.units())) {
        unit.paid_price.reset();
        ASSERT_TRUE(document.updateUnit(unit));
    }
    EXPECT_FALSE(shown("paid_per_delivered_kwh"));
}

TEST_F(ComparisonPageTest, a_load_list_gives_the_load_and_its_name_until_it_is_withdrawn) {
    auto* at_list = page->findChild<QPushButton*>(QStringLiteral("atListButton"));
    auto* lists = page->findChild<QComboBox*>(QStringLiteral("loadListCombo"));
    EXPECT_FALSE(at_list->isVisible()) << "there is no list yet";
    const LoadList added = document.addLoadList(sample_load_list().second).value();
    ASSERT_TRUE(at_list->isVisible());
    EXPECT_FALSE(lists->isVisible());
    QTest::mouseClick(at_list, Qt::LeftButton);
    ASSERT_TRUE(lists->isVisible());
    EXPECT_FALSE(page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"))->isVisible()) << "the list says how much";
    EXPECT_TRUE(lists->currentText().startsWith(QLatin1String("Show night, ")) && lists->currentText().endsWith(QLatin1String(" W")));
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QLatin1String("Show night")));
    const TableModel* table = page->findChild<TableModel*>();
    EXPECT_GE(table->columnOf("run_time_h"), 0);
    LoadList heavier = added;
    heavier.appliances[0].count = 3;
    const QString before = lists->currentText();
    ASSERT_TRUE(document.updateLoadList(heavier));
    EXPECT_NE(lists->currentText(), before) << "the comparison follows the list";
    ASSERT_TRUE(document.withdrawLoadList(added.uuid));
    EXPECT_LT(table->columnOf("run_time_h"), 0);
    EXPECT_TRUE(page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->isChecked());
}

TEST_F(ComparisonPageTest, moved_and_chosen_columns_come_back_in_another_page_and_in_exports) {
    QString kept;
    QObject::connect(page.get(), &ComparisonPage::columnsChosen, page.get(), [&kept](const QString& choice) { kept = choice; });
    const auto shown = [](const QTableView& table, const TableModel& model) {
        QStringList keys;
        for (int place = 0; place < table.horizontalHeader()->count(); ++place) {
            const int column = table.horizontalHeader()->logicalIndex(place);
            if (!table.isColumnHidden(column)) keys << QString::fromStdString(model.table().columns[static_cast<std::size_t>(column)].key);
        }
        return keys;
    };
    auto* heads = view()->horizontalHeader();
    ASSERT_TRUE(heads->sectionsMovable());
    auto* model = page->findChild<TableModel*>();
    heads->moveSection(heads->visualIndex(model->columnOf("usable_fraction")), 0);
    ASSERT_FALSE(kept.isEmpty());
    const QStringList before = shown(*view(), *model);
    EXPECT_EQ(before.first(), QStringLiteral("usable_fraction"));
    EXPECT_TRUE(save(0, "c.csv").startsWith("usable_fraction,"));

    // At one load there are more columns; those that were moved stay, and the new ones come in beside their neighbours.
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("atLoadButton")), Qt::LeftButton);
    EXPECT_EQ(shown(*view(), *model).first(), QStringLiteral("usable_fraction"));
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("asTestedButton")), Qt::LeftButton);
    EXPECT_EQ(shown(*view(), *model), before);

    ComparisonPage other(document, prompts);
    other.show();
    other.setColumns(kept);
    EXPECT_EQ(shown(*other.findChild<QTableView*>(QStringLiteral("comparisonView")), *other.findChild<TableModel*>()), before);
    other.setColumns(QStringLiteral("nonsense,,unit-+,meter+,") + kept);
    EXPECT_TRUE(
        shown(*other.findChild<QTableView*>(QStringLiteral("comparisonView")), *other.findChild<TableModel*>()).contains(QStringLiteral("meter")));
}

TEST(ColumnChoice, text_of_a_choice_reads_back_and_new_columns_stand_beside_their_neighbours) {
    const ColumnChoice choice{{"b", "a", "c_1"}, {{"a", false}, {"c_1", true}}};
    EXPECT_EQ(column_choice_text(choice), "b,a-,c_1+");
    EXPECT_EQ(column_choice_from("b,a-,c_1+"), choice);
    const ColumnChoice unordered{{}, {{"a", false}, {"b", true}}};
    EXPECT_EQ(column_choice_from(column_choice_text(unordered)), unordered);
    EXPECT_EQ(column_choice_from(column_choice_text({})), ColumnChoice{});
    EXPECT_EQ(arranged({"a", "b", "c", "d"}, {"d", "gone", "b"}), (std::vector<std::string>{"a", "d", "b", "c"}));
    EXPECT_EQ(arranged({"a", "b"}, {}), (std::vector<std::string>{"a", "b"}));
}

TEST_F(ComparisonPageTest, units_that_are_not_told_apart_show_one_rank) {
    const TableModel* table = page->findChild<TableModel*>();
    const int rank = table->columnOf("rank");
    ASSERT_GE(rank, 0);
    EXPECT_FALSE(view()->isColumnHidden(rank));
    std::set<QString> ranks;
    for (int row = 0; row < 3; ++row) ranks.insert(table->index(row, rank).data().toString());
    EXPECT_EQ(ranks.size(), 2u) << "of three units two share a place";
    EXPECT_TRUE(ranks.contains(QStringLiteral("1")));
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("everyDrainButton")), Qt::LeftButton);
    EXPECT_TRUE(view()->isColumnHidden(rank)) << "drains of one unit have no rank";
}

TEST_F(ComparisonPageTest, at_one_load_units_are_moved_and_the_page_says_where_each_stands) {
    page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"))->setValue(120);
    page->findChild<QPushButton*>(QStringLiteral("atLoadButton"))->click();
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QStringLiteral("at 120 W")));
    EXPECT_EQ(cell(0, "at this load"), QStringLiteral("moved to this load"));
    EXPECT_TRUE(cell(2, "at this load").startsWith(QStringLiteral("as tested: ")));
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonRemarksLabel"))->text().contains(QStringLiteral("other way round")));
    page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QStringLiteral("as tested")));
}

TEST_F(ComparisonPageTest, the_matrix_of_differences_is_turned_round_below_its_diagonal) {
    const auto* pairs = page->findChild<QTableView*>(QStringLiteral("pairsView"))->model();
    QAbstractItemModelTester tester(const_cast<QAbstractItemModel*>(pairs), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(pairs->rowCount(), 3);
    const QString above = pairs->index(0, 2).data().toString(), below = pairs->index(2, 0).data().toString();
    EXPECT_TRUE(above.contains(QStringLiteral("resolved"))) << above.toStdString();
    EXPECT_NE(above.startsWith(QLatin1Char('+')), below.startsWith(QLatin1Char('+')));
    EXPECT_EQ(pairs->index(1, 1).data().toString(), QString());
}

TEST_F(ComparisonPageTest, a_filter_and_a_size_leave_out_units) {
    page->findChild<QLineEdit*>(QStringLiteral("filterEdit"))->setText(QStringLiteral("OSK"));
    EXPECT_EQ(view()->model()->rowCount(), 1);
    page->findChild<QLineEdit*>(QStringLiteral("filterEdit"))->clear();
    page->findChild<QDoubleSpinBox*>(QStringLiteral("mostSpin"))->setValue(1300);
    EXPECT_EQ(view()->model()->rowCount(), 2);
}

TEST_F(ComparisonPageTest, the_expected_band_is_the_testers) {
    page->findChild<QDoubleSpinBox*>(QStringLiteral("lowerBandSpin"))->setValue(70);
    const auto& band = page->findChild<BarChart*>()->content().bands.at(0);
    EXPECT_DOUBLE_EQ(band.lower, 0.70);
    EXPECT_DOUBLE_EQ(band.upper, 0.80);
}

TEST_F(ComparisonPageTest, several_units_share_one_picture_of_gauge_errors_and_one_of_fractions) {
    EXPECT_EQ(page->findChild<LineChart*>(QStringLiteral("errorsChart"))->content().series.size(), 3u);
    std::set<QString> groups;
    for (const ChartSeries& series : page->findChild<LineChart*>(QStringLiteral("fractionsChart"))->content().series) groups.insert(series.group);
    EXPECT_EQ(groups.size(), 3u);
}

TEST_F(ComparisonPageTest, rows_and_fields_grow_with_the_text_at_once) {
    Settings settings(file("settings.ini"));
    const auto* spin = page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"));
    const auto* pairs = page->findChild<QTableView*>(QStringLiteral("pairsView"));
    for (const int step : {Settings::most_text_step, 0}) {
        settings.setTextStep(step);
        apply_appearance(*qApp, settings);
        EXPECT_TRUE(QTest::qWaitFor([&] { return view()->rowHeight(0) >= QFontMetrics(view()->font()).height(); })) << view()->rowHeight(0);
        EXPECT_TRUE(QTest::qWaitFor([&] { return pairs->rowHeight(0) >= 2 * QFontMetrics(pairs->font()).height(); })) << pairs->rowHeight(0);
        EXPECT_GE(spin->minimumWidth(), 9 * spin->fontMetrics().averageCharWidth());
    }
}

} // namespace ullage::test
