// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_chart.h"

#include "charts/line_view.h"
#include "charts/picture_copy.h"
#include "style/theme.h"

#include <QEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace ullage {

LineChart::LineChart(QWidget* parent) : QWidget(parent), view_(new LineView(this)) {
    setObjectName(QStringLiteral("line_chart"));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(view_);
    setFocusProxy(view_);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    view_->stage().setLook(screen_look(*this));
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, [this] { view_->stage().setLook(screen_look(*this)); });
    connect(view_, &LineView::clicked, this, &LineChart::pointClicked);
    connect(view_, &LineView::hovered, this, &LineChart::pointHovered);
    connect(view_, &LineView::spanChanged, this, &LineChart::visibleSpanChanged);
    connect(view_, &LineView::toggled, this, &LineChart::groupVisibilityChanged);
    offer_copy(*this);
}

LineChart::~LineChart() = default;

void LineChart::setContent(ChartContent content) {
    setAccessibleName(content.description);
    view_->setAccessibleName(content.description);
    view_->stage().setContent(std::move(content));
    const ChartWindow whole = view_->stage().layout().whole;
    if (const auto window = view_->stage().window(); window && (window->from >= whole.to || window->to <= whole.from))
        resetZoom(); // the old view shows nothing of the new content
}

const ChartContent& LineChart::content() const { return view_->stage().content(); }

void LineChart::setHighlighted(const QString& series_id, const std::vector<int>& indices) {
    std::set<std::size_t> chosen;
    for (const int index : indices)
        if (index >= 0) chosen.insert(static_cast<std::size_t>(index));
    view_->stage().setHighlighted(series_id, std::move(chosen));
}

void LineChart::setGroupVisible(const QString& group, bool visible) {
    if (isGroupVisible(group) != visible) view_->toggle(group);
}

bool LineChart::isGroupVisible(const QString& group) const { return !view_->stage().state().hidden.contains(group); }

void LineChart::zoomTo(double from, double to) {
    const LineLayout& layout = view_->stage().layout();
    const double lo = std::max(std::min(from, to), layout.whole.from);
    const double hi = std::min(std::max(from, to), layout.whole.to);
    if (layout.empty || !(hi > lo)) return;
    view_->applyWindow(zoomed_window({lo, hi}, layout.whole, lo, 1, 0, layout.axes.x_logarithmic));
}

void LineChart::resetZoom() { view_->applyWindow(std::nullopt); }

std::pair<double, double> LineChart::visibleSpan() const {
    const TickScale& x = view_->stage().layout().x;
    return {x.minimum, x.maximum};
}

QPointF LineChart::pixelOf(double x, double y) const {
    const LineLayout& layout = view_->stage().layout();
    return view_->mapTo(this, QPointF(layout.pixelX(x), layout.pixelY(y)));
}

QRectF LineChart::plotArea() const {
    const QRectF plot = view_->stage().layout().plot;
    return {view_->mapTo(this, plot.topLeft()), plot.size()};
}

QRectF LineChart::labelPlace(const QString& group) const {
    for (const ChartLabel& label : view_->stage().layout().labels)
        if (!group.isEmpty() && label.group == group) return {view_->mapTo(this, label.place.topLeft()), label.place.size()};
    return {};
}

QString LineChart::readout() const {
    const LineStage& stage = view_->stage();
    return stage.state().hovered ? readout_text(stage.content(), stage.layout(), *stage.state().hovered) : QString();
}

QSize LineChart::sizeHint() const { return {40 * fontMetrics().averageCharWidth() + 240, 24 * fontMetrics().height()}; }

QSize LineChart::minimumSizeHint() const { return {240, 120}; }

void LineChart::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) view_->stage().setLook(screen_look(*this));
    QWidget::changeEvent(event);
}

} // namespace ullage
