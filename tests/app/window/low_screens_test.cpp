// SPDX-License-Identifier: GPL-3.0-or-later
// What stays in sight at 1280x800.
#include "window/message_bar.h"
#include "window_fixture.h"

#include <QHeaderView>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTableView>

namespace ullage {

using test::WindowTest;

namespace {

/// Rows that the table shows whole at once.
int whole_rows(const QTableView& table) {
    int rows = 0;
    for (int row = 0; row < table.model()->rowCount(); ++row)
        rows += table.rowViewportPosition(row) >= 0 && table.rowViewportPosition(row) + table.rowHeight(row) <= table.viewport()->height() ? 1 : 0;
    return rows;
}

} // namespace

TEST_F(WindowTest, every_unit_of_a_small_comparison_has_its_row_whole) {
    trigger("sampleLogbookAction");
    trigger("comparisonAction");
    const auto* table = find<QTableView>("comparisonView");
    ASSERT_EQ(table->model()->rowCount(), 4);
    EXPECT_EQ(whole_rows(*table), 4);
}

TEST_F(WindowTest, every_run_of_a_unit_has_its_row_whole_and_claims_tested_leave_the_curves_in_sight) {
    trigger("sampleLogbookAction");
    window->showUnit(document.units().front().uuid);
    QApplication::processEvents();
    const auto* runs = find<QTableView>("runsTable");
    ASSERT_EQ(runs->model()->rowCount(), 6);
    EXPECT_EQ(whole_rows(*runs), 6);
    find<QTabWidget>("unitBelowTabs")->setCurrentIndex(1);
    QApplication::processEvents();
    EXPECT_TRUE(find<QWidget>("unitFitPanel")->isVisible());
    EXPECT_FALSE(find<QWidget>("claimsTableLabel")->visibleRegion().isEmpty()) << "the claims come into sight by themselves";
}

TEST_F(WindowTest, a_message_moves_nothing_on_the_page) {
    trigger("sampleLogbookAction");
    const auto* pages = find<QStackedWidget>("pagesStack");
    const QRect before(pages->mapTo(window.get(), QPoint()), pages->size());
    find<MessageBar>("messageBar")->showError(QStringLiteral("A sentence of some length that says what went wrong, where, and what to do."));
    QApplication::processEvents();
    const auto* bar = find<MessageBar>("messageBar");
    EXPECT_TRUE(bar->isVisible());
    EXPECT_EQ(QRect(pages->mapTo(window.get(), QPoint()), pages->size()), before);
    EXPECT_TRUE(before.contains(QRect(bar->mapTo(window.get(), QPoint()), bar->size()))) << "it lies over the page's foot";
    EXPECT_FALSE(bar->visibleRegion().isEmpty());
}

} // namespace ullage
