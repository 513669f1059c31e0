// SPDX-License-Identifier: GPL-3.0-or-later
// While the application is styled, headers of tables that nobody sees are not told, as each would have its table measured: see app/style/theme.cpp.
#include "style/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QHeaderView>
#include <QStandardItemModel>
#include <QTableView>
#include <QTest>

namespace ullage::test {
namespace {

/// A table whose columns are as wide as what is in them.
class RestyledTable : public testing::Test {
protected:
    RestyledTable() {
        model_.setHorizontalHeaderLabels({QStringLiteral("delivered"), QStringLiteral("share of the rated energy")});
        model_.appendRow({new QStandardItem(QStringLiteral("1,234.5 Wh")), new QStandardItem(QStringLiteral("87.6 %"))});
        for (QTableView* table : {&restyled_, &fresh_}) {
            table->setModel(&model_);
            table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
            table->resize(600, 200);
        }
    }
    ~RestyledTable() override {
        QFont font = QApplication::font();
        font.setPointSizeF(usual_pt_);
        QApplication::setFont(font);
        apply_theme(*qApp, Theme::light);
    }

    void enlargeText() {
        QFont font = QApplication::font();
        font.setPointSizeF(2 * usual_pt_);
        QApplication::setFont(font);
        apply_theme(*qApp, Theme::light);
    }
    static void show(QTableView& table) {
        table.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&table));
        QCoreApplication::processEvents();
    }
    void expectAlike() {
        EXPECT_EQ(restyled_.horizontalHeader()->height(), fresh_.horizontalHeader()->height());
        for (int column = 0; column < model_.columnCount(); ++column) EXPECT_EQ(restyled_.columnWidth(column), fresh_.columnWidth(column)) << column;
    }

    const double usual_pt_ = QApplication::font().pointSizeF();
    QStandardItemModel model_;
    QTableView restyled_, fresh_;
};

TEST_F(RestyledTable, that_was_measured_before_it_was_styled_looks_as_one_that_was_not) {
    apply_theme(*qApp, Theme::light);
    const QSize before = restyled_.horizontalHeader()->sizeHint();
    enlargeText();
    show(restyled_);
    fresh_.horizontalHeader()->headerDataChanged(Qt::Horizontal, 0, 1); // forgets what it may have measured
    show(fresh_);
    EXPECT_GT(restyled_.horizontalHeader()->height(), before.height());
    expectAlike();
}

TEST_F(RestyledTable, that_was_hidden_while_text_grew_fits_it_when_it_is_shown_again) {
    apply_theme(*qApp, Theme::light);
    show(restyled_);
    const int before_px = restyled_.horizontalHeader()->height();
    restyled_.hide();
    enlargeText();
    show(restyled_);
    show(fresh_);
    EXPECT_GT(restyled_.horizontalHeader()->height(), before_px);
    expectAlike();
}

} // namespace
} // namespace ullage::test
