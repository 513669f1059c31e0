// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/bar_chart.h"

#include "charts/bar_view.h"
#include "charts/picture_copy.h"
#include "charts/spoken_chart.h"
#include "style/theme.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <algorithm>

namespace ullage {

BarView::BarView(QWidget* parent) : QChartView(new QChart, parent), stage_(*chart()) {
    setObjectName(QStringLiteral("bar_view"));
    setFrameShape(QFrame::NoFrame);
    setRenderHint(QPainter::Antialiasing);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
}

void BarView::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    stage_.setSize(QSizeF(viewport()->size()));
}

void BarView::wheelEvent(QWheelEvent* event) { event->ignore(); }

void BarView::mousePressEvent(QMouseEvent* event) { event->accept(); }

void BarView::mouseMoveEvent(QMouseEvent* event) { event->accept(); }

void BarView::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    const int row = event->button() == Qt::LeftButton ? stage_.rowAt(event->position()) : -1;
    if (row >= 0) emit clicked(row);
}

void BarView::mouseDoubleClickEvent(QMouseEvent* event) { event->accept(); }

void BarView::contextMenuEvent(QContextMenuEvent* event) { event->ignore(); }

bool BarView::viewportEvent(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QChartView::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const int row = stage_.rowAt(help->pos());
    if (row < 0) {
        QToolTip::hideText();
        return true;
    }
    const ChartBar& bar = stage_.content().bars[static_cast<std::size_t>(row)];
    QString text = bar.name + QLatin1Char('\n') + stage_.layout().value_texts[static_cast<std::size_t>(row)];
    if (!bar.note.isEmpty()) text += QLatin1Char('\n') + bar.note;
    QToolTip::showText(help->globalPos(), text, viewport());
    return true;
}

BarChart::BarChart(QWidget* parent) : QWidget(parent), view_(new BarView(this)) {
    setObjectName(QStringLiteral("bar_chart"));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(view_);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    view_->stage().setLook(screen_look(*this));
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, [this] { view_->stage().setLook(screen_look(*this)); });
    connect(view_, &BarView::clicked, this, &BarChart::barClicked);
    offer_copy(*this);
    speak_charts();
}

BarChart::~BarChart() = default;

void BarChart::setContent(BarContent content) {
    setAccessibleName(content.description);
    view_->setAccessibleName(content.description);
    view_->stage().setContent(std::move(content));
    updateGeometry();
}

const BarContent& BarChart::content() const { return view_->stage().content(); }

QRectF BarChart::rowPlace(int row) const {
    const BarLayout& layout = view_->stage().layout();
    const QRectF place(0, layout.rowMiddle(static_cast<std::size_t>(row)) - layout.row_height / 2, view_->width(), layout.row_height);
    return {view_->mapTo(this, place.topLeft()), place.size()};
}

QSize BarChart::sizeHint() const {
    const int rows = std::max<int>(3, static_cast<int>(content().bars.size()));
    return {40 * fontMetrics().averageCharWidth() + 200, static_cast<int>((rows * 2.6 + 4) * fontMetrics().height())};
}

QSize BarChart::minimumSizeHint() const {
    const int rows = std::max<int>(2, static_cast<int>(content().bars.size()));
    return {240, static_cast<int>((rows * 1.3 + 3.5) * fontMetrics().height())};
}

void BarChart::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) view_->stage().setLook(screen_look(*this));
    QWidget::changeEvent(event);
}

} // namespace ullage
