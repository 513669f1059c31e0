// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/charts/sample_content.h"
#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/picture_copy.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QMimeData>
#include <QTest>
#include <QVBoxLayout>

namespace ullage {
namespace {

class PictureCopy : public testing::Test {
protected:
    void SetUp() override {
        auto* box = new QVBoxLayout(&page_);
        box->addWidget(lines_ = new LineChart);
        box->addWidget(bars_ = new BarChart);
        page_.resize(600, 700);
        page_.show();
        QApplication::processEvents();
    }

    QWidget page_;
    LineChart* lines_ = nullptr;
    BarChart* bars_ = nullptr;
};

} // namespace

TEST_F(PictureCopy, control_c_in_a_chart_puts_a_sharp_image_and_a_drawing_on_the_clipboard) {
    lines_->setContent(sample::drain());
    lines_->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_C, Qt::ControlModifier);
    const QMimeData* data = QApplication::clipboard()->mimeData();
    ASSERT_TRUE(data->hasImage());
    EXPECT_EQ(data->imageData().value<QImage>().size(), lines_->size() * 2);
    EXPECT_TRUE(data->data(QStringLiteral("image/svg+xml")).contains("</svg>"));
}

TEST_F(PictureCopy, the_picture_holds_what_is_in_view_and_leaves_out_what_is_hidden) {
    lines_->setContent(sample::drain());
    lines_->zoomTo(2, 5);
    lines_->setGroupVisible(QStringLiteral("gauge"), false);
    const auto shown = shown_picture(*lines_);
    ASSERT_TRUE(shown);
    const auto& content = std::get<ChartContent>(*shown);
    EXPECT_DOUBLE_EQ(*content.x.minimum, lines_->visibleSpan().first);
    EXPECT_DOUBLE_EQ(*content.x.maximum, lines_->visibleSpan().second);
    for (const ChartSeries& series : content.series) EXPECT_NE(series.id, QStringLiteral("gauge"));
}

TEST_F(PictureCopy, a_command_means_the_drawing_with_the_keyboard_else_the_first_that_shows_something) {
    EXPECT_EQ(drawing_in_sight(page_), nullptr);
    EXPECT_FALSE(copy_picture(*lines_));
    bars_->setContent(sample::bars());
    EXPECT_EQ(drawing_in_sight(page_), bars_);
    lines_->setContent(sample::drain());
    lines_->setFocus();
    EXPECT_EQ(drawing_in_sight(page_), lines_);
}

} // namespace ullage
