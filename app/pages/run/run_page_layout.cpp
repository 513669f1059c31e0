// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/page_parts.h"
#include "pages/parts/result_strip.h"
#include "pages/parts/run_head.h"
#include "pages/parts/usable_view.h"
#include "pages/run/accounts_view.h"
#include "pages/run/entry_row.h"
#include "pages/run/findings_view.h"
#include "pages/run/live_bar.h"
#include "pages/run/log_view.h"
#include "pages/run/readings_view.h"
#include "pages/run/run_charts_panel.h"
#include "pages/run/run_page.h"
#include "pages/run/run_photos.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

/// Lines of text that the levels of the page need at least.
constexpr int table_lines = 14, charts_lines = 14, results_lines = 8;
constexpr int head_lines = 7; ///< of head and strip, while nothing has been laid out

/// Scrolls its content up and down only: it is never narrower than that.
class UpDownScroll final : public QScrollArea {
public:
    UpDownScroll(QWidget& content, QWidget* parent) : QScrollArea(parent) {
        setWidgetResizable(true);
        setFrameShape(QFrame::NoFrame);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        setWidget(&content);
        viewport()->setAutoFillBackground(false);
        content.setAutoFillBackground(false);
    }
    [[nodiscard]] QSize minimumSizeHint() const override {
        const int content_px = widget()->minimumSizeHint().width();
        return {content_px + verticalScrollBar()->sizeHint().width(), QScrollArea::minimumSizeHint().height()};
    }

protected:
    bool event(QEvent* event) override {
        if (event->type() == QEvent::LayoutRequest) updateGeometry(); // the content may have become wider
        return QScrollArea::event(event);
    }
};

} // namespace

void RunPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px + 2);
    column->addWidget(head_);
    column->addWidget(strip_);
    column->addWidget(live_);
    column->addWidget(accounts_);
    accounts_->hide();

    halves_ = new QSplitter(Qt::Horizontal, this);
    halves_->setObjectName(QStringLiteral("readingsSplitter"));
    halves_->setChildrenCollapsible(false);
    halves_->addWidget(buildReadings());
    pictures_panel_ = new_panel(halves_);
    auto* pictures_column = new QVBoxLayout(pictures_panel_);
    pictures_column->setContentsMargins(1, 1, 1, 1);
    charts_->addTab(log_, tr("Log"));
    pictures_column->addWidget(charts_);
    halves_->addWidget(pictures_panel_);
    levels_ = new QSplitter(Qt::Vertical, this);
    levels_->setObjectName(QStringLiteral("resultsSplitter"));
    levels_->setChildrenCollapsible(false);
    levels_->addWidget(halves_);
    levels_->addWidget(buildResults());
    levels_->setStretchFactor(0, 1);
    levels_->setStretchFactor(1, 0);
    column->addWidget(levels_, 1);
    // The smallest form first: a larger one would enlarge a small window before the page knows its size.
    placeResults(true);
    placeReadings(true);
}

QWidget* RunPage::buildReadings() {
    readings_panel_ = new_panel(halves_);
    table_ = new QWidget(readings_panel_);
    table_->setObjectName(QStringLiteral("tableWidget"));
    auto* table_column = new QVBoxLayout(table_);
    table_column->setContentsMargins(0, 0, 0, 0);
    table_column->setSpacing(0);
    table_column->addWidget(readings_, 1);
    table_column->addWidget(photos_);
    auto* column = new QVBoxLayout(readings_panel_);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(table_, 1);
    column->addWidget(entry_);
    return readings_panel_;
}

QWidget* RunPage::buildResults() {
    results_panel_ = new_panel(levels_);
    // It becomes a tab where the page is low (see arrange), and must not keep the page from becoming low.
    results_panel_->setMinimumHeight(spacing::group_gap_px);
    auto* column = new QVBoxLayout(results_panel_);
    column->setContentsMargins(1, 1, 1, 1);
    results_ = new QWidget(results_panel_);
    results_->setObjectName(QStringLiteral("resultsWidget"));
    column->addWidget(results_);
    auto* line = new QHBoxLayout(results_);
    line->setContentsMargins(14, spacing::grid_px, spacing::grid_px, spacing::grid_px);
    line->setSpacing(spacing::group_gap_px);
    // Larger text than the panel was laid out for scrolls, rather than squeezing the lines onto one another.
    auto* usable = new UpDownScroll(*usable_, results_);
    usable->setObjectName(QStringLiteral("usableScroll"));
    line->addWidget(usable, 1);
    line->addWidget(findings_, 3);
    return results_panel_;
}

void RunPage::arrange() {
    const int both_px = readings_->neededWidth() + charts_->neededWidth() + 2 * spacing::page_margin_px + halves_->handleWidth();
    const bool stacked = charts_shown_ && (window()->width() < spacing::stacking_width_px || width() < both_px);
    const int line_px = QFontMetrics(text_font(TextSize::body)).height();
    const bool laid_out = isVisible() || !testAttribute(Qt::WA_PendingResizeEvent);
    const int head_px = laid_out ? head_->height() + strip_->height() : line_px * head_lines;
    int free_px = height() - head_px - 3 * spacing::page_margin_px;
    if (accounts_told_) {
        // The entry row and some readings come first; both accounts give way to a tab where they would take their room.
        const int accounts_px = accounts_->heightIn(std::max(1, width() - 2 * spacing::page_margin_px)) + spacing::grid_px + 2;
        const bool as_tab = charts_shown_ && free_px - accounts_px < line_px * table_lines;
        placeAccounts(as_tab);
        if (!as_tab) free_px -= accounts_px;
    }
    placeResults(charts_shown_ && free_px < line_px * (table_lines + results_lines + (stacked ? charts_lines : 0)));
    placeReadings(stacked && free_px < line_px * (table_lines + charts_lines));

    const Qt::Orientation wanted = stacked ? Qt::Vertical : Qt::Horizontal;
    if (halves_->orientation() != wanted || !parts_sized_) {
        halves_->setOrientation(wanted);
        const int table_px = std::max(readings_->neededWidth() + 2, width() * 48 / 100);
        const int entry_px = entry_->sizeHint().height();
        if (charts_->indexOf(table_) >= 0) halves_->setSizes({height() - entry_px, entry_px});
        else halves_->setSizes(stacked ? QList<int>{height() / 2, height() / 2} : QList<int>{table_px, width() - table_px});
    }
    if (!parts_sized_) {
        const int results_px = results_lines * line_px + 2 * spacing::grid_px;
        levels_->setSizes({height() - results_px, results_px});
        parts_sized_ = isVisible();
    }
}

void RunPage::arrangeAhead() {
    // Under a style sheet, which comes just before the window is shown, each part that changes its place is styled anew with all that is in it.
    if (parts_sized_ || window() == this || window()->isVisible()) return;
    resize(window()->width() * 5 / 6, window()->height() - 5 * fontMetrics().height()); // beside the logbook, between menus and status
    arrange();
}

void RunPage::placeResults(bool as_tab) {
    const int tab = charts_->indexOf(results_);
    if (as_tab == (tab >= 0)) return;
    if (as_tab) {
        charts_->addTab(results_, tr("Findings"));
    } else {
        charts_->removeTab(tab);
        results_panel_->layout()->addWidget(results_);
        results_->show();
    }
    results_panel_->setVisible(!as_tab);
    // A tab is high and narrow: beside the figure the findings would be a slit.
    auto* line = static_cast<QBoxLayout*>(results_->layout());
    line->setDirection(as_tab ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    QWidget* usable = line->itemAt(0)->widget();
    line->setStretchFactor(usable, as_tab ? 0 : 1);
    usable->setSizePolicy(QSizePolicy::Preferred, as_tab ? QSizePolicy::Maximum : QSizePolicy::Preferred);
}

void RunPage::placeAccounts(bool as_tab) {
    if (as_tab == (accounts_area_ != nullptr)) return;
    accounts_->setScrolled(as_tab);
    if (as_tab) {
        accounts_area_ = new UpDownScroll(*accounts_, charts_);
        charts_->addTab(accounts_area_, tr("Right or wrong"));
    } else {
        charts_->removeTab(charts_->indexOf(accounts_area_));
        accounts_area_->takeWidget();
        delete std::exchange(accounts_area_, nullptr);
        // After the head and the strip.
        static_cast<QVBoxLayout*>(layout())->insertWidget(layout()->indexOf(strip_) + 1, accounts_);
        accounts_->setVisible(accounts_told_);
    }
}

void RunPage::placeReadings(bool as_tab) {
    const int tab = charts_->indexOf(table_);
    if (as_tab == (tab >= 0)) return;
    if (as_tab) {
        charts_->insertTab(0, table_, tr("Readings"));
        charts_->setCurrentWidget(table_);
        halves_->insertWidget(0, pictures_panel_);
    } else {
        charts_->removeTab(tab);
        static_cast<QVBoxLayout*>(readings_panel_->layout())->insertWidget(0, table_, 1);
        table_->show();
        halves_->insertWidget(0, readings_panel_);
    }
    // With the table a tab, only the entry row is left in its panel and wants no more than its own height.
    readings_panel_->setSizePolicy(QSizePolicy::Preferred, as_tab ? QSizePolicy::Maximum : QSizePolicy::Preferred);
    halves_->setStretchFactor(halves_->indexOf(pictures_panel_), 1);
    halves_->setStretchFactor(halves_->indexOf(readings_panel_), as_tab ? 0 : 1);
    parts_sized_ = false;
}

void RunPage::setChartsShown(bool shown) {
    charts_shown_ = shown;
    arrange();
    pictures_panel_->setVisible(shown);
}

void RunPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void RunPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    // Its parts have the new size of text only after this event.
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) QTimer::singleShot(0, this, &RunPage::arrange);
}

void RunPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
    arrange();
}

} // namespace ullage
