// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison_fixture.h"

#include "comparison/comparison_answer.h"
#include "dialogs/columns_dialog.h"
#include "formats/results/comparison_columns.h"

#include "services/appearance.h"
#include "services/settings.h"

#include <QDoubleSpinBox>

namespace ullage::test {

TEST_F(ComparisonPageTest, units_are_rows_with_value_and_unit_in_sight) {
    QAbstractItemModelTester tester(view()->model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(view()->model()->rowCount(), 3);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Osk 1200"));
    EXPECT_EQ(cell(0, "rated energy Wh"), QStringLiteral("1200"));
    EXPECT_NEAR(cell(2, "usable fraction %").toDouble(), 100 * *page->comparison().rows[2].usable_fraction.value, 0.1);
    EXPECT_FALSE(cell(0, "price per usable kWh EUR/kWh").isEmpty());
    EXPECT_EQ(page->findChild<VesselRow*>()->content().columns.size(), 3u);
    EXPECT_EQ(page->findChild<BarChart*>()->content().bars.size(), 3u);
    EXPECT_FALSE(page->findChild<QLabel*>(QStringLiteral("comparisonRemarksLabel"))->text().isEmpty());
}

TEST_F(ComparisonPageTest, every_drain_gives_each_its_row_and_shows_which_run_it_is) {
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("everyDrainButton")), Qt::LeftButton);
    EXPECT_EQ(view()->model()->rowCount(), 7);
    EXPECT_EQ(cell(0, "run"), QStringLiteral("drain 12 May, 311 W"));
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
    const auto* pairs = in_front<QTableView>(*page, QStringLiteral("pairsView"))->model();
    auto* figures = page->findChild<QComboBox*>(QStringLiteral("pairFigureCombo"));
    const QString fraction = pairs->index(0, 1).data().toString();
    figures->setCurrentIndex(figures->findText(QStringLiteral("price per usable kWh")));
    const QString price = pairs->index(0, 1).data().toString();
    EXPECT_NE(price, fraction);
    EXPECT_TRUE(price.contains(QLatin1String("EUR/kWh"))) << price.toStdString();
}

TEST_F(ComparisonPageTest, opening_a_row_asks_for_its_run) {
    RunId asked;
    QObject::connect(page.get(), &ComparisonPage::runAsked, [&](const RunId& uuid) { asked = uuid; });
    emit view()->activated(view()->model()->index(2, 0));
    const RunRecord* run = document.run(asked);
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

TEST_F(ComparisonPageTest, what_is_the_testers_own_affair_is_in_no_table_unless_asked_for) {
    const TableModel* table = page->findChild<TableModel*>();
    for (const char* own : {"paid_per_delivered_kwh", "paid_per_rated_kwh", "tags"}) EXPECT_LT(table->columnOf(own), 0) << own;
    EXPECT_FALSE(save(0, "c.csv").contains("paid"));
    const auto asked = page_with_columns("unit,paid_per_delivered_kwh");
    EXPECT_GE(asked->findChild<TableModel*>()->columnOf("paid_per_delivered_kwh"), 0);
}

TEST_F(ComparisonPageTest, opens_where_most_units_meet_and_stays_where_it_was_put) {
    ASSERT_TRUE(opened_at);
    EXPECT_EQ(opened_at, suggested_load(compare_as_tested(document.runs(), CompareRows::one_per_unit)));
    ASSERT_FALSE(page->fair().load);
    page->refresh();
    EXPECT_FALSE(page->fair().load) << "the person has chosen";
}

TEST_F(ComparisonPageTest, the_answer_stands_above_the_table_and_a_caution_in_its_place_stands_out) {
    const auto* order = page->findChild<QLabel*>(QStringLiteral("orderLabel"));
    const auto* units = page->findChild<QLabel*>(QStringLiteral("unitAnswersLabel"));
    const auto* chip = page->findChild<QLabel*>(QStringLiteral("cautionChip"));
    const auto answer = [this] { return comparison_answer(page->comparison(), page->fair()); };
    EXPECT_TRUE(order->isVisible() && chip->isVisible());
    EXPECT_EQ(order->text().toStdString(), answer().order);
    EXPECT_TRUE(order->text().startsWith(QLatin1String("As tested there is no order")));
    EXPECT_EQ(units->text().split(QLatin1Char('\n')).size(), 3);
    EXPECT_LT(order->mapTo(page.get(), QPoint()).y(), view()->mapTo(page.get(), QPoint()).y());
    page->findChild<QPushButton*>(QStringLiteral("atLoadButton"))->click();
    EXPECT_EQ(page->fair().load, opened_at);
    EXPECT_FALSE(chip->isVisible());
    EXPECT_EQ(order->text().toStdString(), answer().order);
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

TEST_F(ComparisonPageTest, moved_columns_come_back_from_the_logbook_and_go_out_so) {
    auto* heads = view()->horizontalHeader();
    ASSERT_TRUE(heads->sectionsMovable());
    heads->moveSection(page->findChild<TableModel*>()->columnOf("usable_fraction"), 0);
    ASSERT_TRUE(QTest::qWaitFor([this] { return page->shownColumns().front() == "usable_fraction"; }));
    QApplication::processEvents();
    EXPECT_TRUE(save(0, "c.csv").startsWith("usable_fraction,"));
    const auto before = page->shownColumns();
    // At one load the figures there stand in their places.
    page->findChild<QPushButton*>(QStringLiteral("atLoadButton"))->click();
    EXPECT_EQ(page->shownColumns().front(), "usable_fraction_at_load");
    page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    EXPECT_EQ(page->shownColumns(), before);
    ComparisonPage other(document, prompts);
    other.show();
    other.findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    EXPECT_EQ(other.shownColumns(), before);
}

TEST_F(ComparisonPageTest, the_dialog_chooses_columns_and_keeps_sets_under_a_name) {
    page->findChild<QPushButton*>(QStringLiteral("columnsButton"))->click();
    auto* dialog = page->findChild<ColumnsDialog*>(QStringLiteral("columnsDialog"));
    ASSERT_NE(dialog, nullptr);
    auto* sets = dialog->findChild<QComboBox*>(QStringLiteral("setCombo"));
    EXPECT_EQ(sets->currentText(), QStringLiteral("for readers"));
    auto* list = dialog->findChild<QListWidget*>(QStringLiteral("columnsList"));
    const auto item = [list](const char* title) { return list->findItems(QLatin1String(title), Qt::MatchExactly).value(0); };
    ASSERT_TRUE(item("gauge") && item("meter"));
    EXPECT_EQ(item("gauge")->checkState(), Qt::Checked);
    item("gauge")->setCheckState(Qt::Unchecked);
    item("meter")->setCheckState(Qt::Checked);
    EXPECT_EQ(sets->currentIndex(), 0) << "no longer the ready set";
    dialog->findChild<QLineEdit*>(QStringLiteral("nameEdit"))->setText(QStringLiteral("for the bench"));
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton);
    QApplication::processEvents();
    const auto shown = page->shownColumns();
    EXPECT_EQ(std::ranges::count(shown, "gauge_verdict"), 0);
    EXPECT_EQ(std::ranges::count(shown, "meter"), 1);
    const auto kept = document.columnSets();
    ASSERT_TRUE(kept.contains("for the bench") && kept.contains(""));
    EXPECT_EQ(kept.at("for the bench"), kept.at(""));
    const QByteArray csv = save(0, "c.csv");
    EXPECT_TRUE(csv.contains(",meter") && !csv.contains("gauge_verdict"));

    ColumnsDialog later(ready_columns(readers_set).value(), {{"for the bench", column_keys_from(kept.at("for the bench"))}});
    auto* later_sets = later.findChild<QComboBox*>(QStringLiteral("setCombo"));
    later_sets->setCurrentIndex(later_sets->findText(QStringLiteral("for the bench")));
    emit later_sets->activated(later_sets->currentIndex());
    later.findChild<QPushButton*>(QStringLiteral("removeSetButton"))->click();
    EXPECT_LT(later_sets->findText(QStringLiteral("for the bench")), 0);
    later.findChild<QPushButton*>(QStringLiteral("submitButton"))->click();
    EXPECT_TRUE(later.changedSets().at("for the bench").empty());
    EXPECT_EQ(later.chosen(), column_keys_from(kept.at("for the bench"))) << "what it chose stays chosen";
}

TEST_F(ComparisonPageTest, a_dialog_without_a_tick_or_with_the_name_of_a_ready_set_waits) {
    ColumnsDialog dialog({"unit"}, {});
    int submitted = 0;
    QObject::connect(&dialog, &ColumnsDialog::submitted, [&submitted] { ++submitted; });
    auto* list = dialog.findChild<QListWidget*>(QStringLiteral("columnsList"));
    auto* submit = dialog.findChild<QPushButton*>(QStringLiteral("submitButton"));
    list->item(0)->setCheckState(Qt::Unchecked);
    submit->click();
    EXPECT_EQ(submitted, 0);
    list->item(0)->setCheckState(Qt::Checked);
    dialog.findChild<QLineEdit*>(QStringLiteral("nameEdit"))->setText(QStringLiteral("readers"));
    submit->click();
    EXPECT_EQ(submitted, 0);
    dialog.findChild<QLineEdit*>(QStringLiteral("nameEdit"))->clear();
    QTest::keyClick(list, Qt::Key_Down, Qt::AltModifier);
    submit->click();
    EXPECT_EQ(submitted, 1);
    EXPECT_EQ(list->item(1)->checkState(), Qt::Checked) << "Alt and an arrow key move a line";
}

TEST_F(ComparisonPageTest, units_that_are_not_told_apart_show_one_rank_and_a_filter_does_not_renumber) {
    const auto ranked = page_with_columns("unit,rank");
    const TableModel* table = ranked->findChild<TableModel*>();
    const auto ranks = [&] {
        std::vector<QString> all;
        for (int row = 0; row < table->rowCount(); ++row) all.push_back(table->index(row, 1).data().toString());
        return all;
    };
    const std::vector<QString> before = ranks();
    ASSERT_EQ(before.size(), 3u);
    const std::set<QString> places(before.begin(), before.end());
    EXPECT_EQ(places.size(), 2u) << "of three units two share a place";
    EXPECT_TRUE(places.contains(QStringLiteral("1")));
    for (int row = 0; row < 3; ++row) {
        ranked->findChild<QLineEdit*>(QStringLiteral("filterEdit"))
            ->setText(QString::fromStdString(ranked->comparison().rows[static_cast<std::size_t>(row)].unit.name));
        ASSERT_EQ(table->rowCount(), 1);
        EXPECT_EQ(ranks().front(), before[static_cast<std::size_t>(row)]);
        ranked->findChild<QLineEdit*>(QStringLiteral("filterEdit"))->clear();
    }
    ranked->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    for (const QString& rank : ranks()) EXPECT_EQ(rank, QStringLiteral("not known")) << "at unlike loads there is no rank";
}

TEST_F(ComparisonPageTest, at_one_load_units_are_moved_and_the_page_says_where_each_stands) {
    page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"))->setValue(120);
    page->findChild<QPushButton*>(QStringLiteral("atLoadButton"))->click();
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QStringLiteral("at 120 W")));
    EXPECT_TRUE(cell(0, "based on").endsWith(QStringLiteral("drains together"))) << cell(0, "based on").toStdString();
    EXPECT_TRUE(cell(2, "based on").startsWith(QStringLiteral("as tested at ")));
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonRemarksLabel"))->text().contains(QStringLiteral("other way round")));
    page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QStringLiteral("as tested")));
}

TEST_F(ComparisonPageTest, below_the_table_stands_why_a_figure_is_not_known) {
    const QString words = page->findChild<QLabel*>(QStringLiteral("unknownLabel"))->text();
    EXPECT_TRUE(words.contains(QStringLiteral("Not known of Tarrow 2k: "))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("there is one drain only"))) << words.toStdString();
}

TEST_F(ComparisonPageTest, the_matrix_of_differences_is_turned_round_below_its_diagonal) {
    const auto* pairs = in_front<QTableView>(*page, QStringLiteral("pairsView"))->model();
    QAbstractItemModelTester tester(const_cast<QAbstractItemModel*>(pairs), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(pairs->rowCount(), 3);
    const QString above = pairs->index(0, 2).data().toString(), below = pairs->index(2, 0).data().toString();
    EXPECT_TRUE(above.endsWith(QStringLiteral("\nclearly different"))) << above.toStdString();
    EXPECT_NE(above.contains(QStringLiteral(" less\n")), below.contains(QStringLiteral(" less\n"))) << above.toStdString() << below.toStdString();
    EXPECT_NE(above.contains(QStringLiteral(" more\n")), below.contains(QStringLiteral(" more\n")));
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
    EXPECT_DOUBLE_EQ(band.lower, 70);
    EXPECT_DOUBLE_EQ(band.upper, 80);
}

TEST_F(ComparisonPageTest, several_units_share_one_picture_of_gauge_errors_and_one_of_fractions) {
    EXPECT_EQ(in_front<LineChart>(*page, QStringLiteral("errorsChart"))->content().series.size(), 3u);
    std::set<QString> groups;
    for (const ChartSeries& series : in_front<LineChart>(*page, QStringLiteral("fractionsChart"))->content().series) groups.insert(series.group);
    EXPECT_EQ(groups.size(), 3u);
}

TEST_F(ComparisonPageTest, rows_and_fields_grow_with_the_text_at_once) {
    Settings settings(file("settings.ini"));
    const auto* spin = page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"));
    const auto* pairs = in_front<QTableView>(*page, QStringLiteral("pairsView"));
    for (const int step : {Settings::most_text_step, 0}) {
        settings.setTextStep(step);
        apply_appearance(*qApp, settings);
        EXPECT_TRUE(QTest::qWaitFor([&] { return view()->rowHeight(0) >= QFontMetrics(view()->font()).height(); })) << view()->rowHeight(0);
        EXPECT_TRUE(QTest::qWaitFor([&] { return pairs->rowHeight(0) >= 2 * QFontMetrics(pairs->font()).height(); })) << pairs->rowHeight(0);
        EXPECT_GE(spin->minimumWidth(), 9 * spin->fontMetrics().averageCharWidth());
    }
}

TEST_F(ComparisonPageTest, columns_fit_text_that_changed_its_size_while_the_page_was_out_of_sight) {
    Settings settings(file("settings.ini"));
    const auto* pairs = in_front<QTableView>(*page, QStringLiteral("pairsView"));
    const auto widths_at = [&](int step, bool in_sight) {
        page->setVisible(in_sight);
        settings.setTextStep(step);
        apply_appearance(*qApp, settings);
        QTest::qWait(50);
        page->show();
        QTest::qWait(50);
        return std::pair(view()->columnWidth(1), pairs->columnWidth(1));
    };
    const auto usual = widths_at(0, true), large = widths_at(Settings::most_text_step, true);
    EXPECT_GT(large.first, usual.first);
    EXPECT_GT(large.second, usual.second);
    EXPECT_EQ(widths_at(0, false), usual);
    EXPECT_EQ(widths_at(Settings::most_text_step, false), large);
    EXPECT_EQ(widths_at(0, true), usual);
}

} // namespace ullage::test
