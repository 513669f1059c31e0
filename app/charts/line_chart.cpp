// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_chart.h"

#include "charts/line_view.h"
#include "charts/picture_copy.h"
#include "charts/spoken_chart.h"
#include "style/theme.h"

#include <QEvent>
#include <QResizeEvent>

#include <algorithm>
#include <set>
#include <utility>

namespace ullage {

LineChart::LineChart(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("line_chart"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, [this] {
        if (view_) view_->stage().setLook(screen_look(*this));
    });
    offer_copy(*this);
    speak_charts();
}

LineView& LineChart::view() const {
    if (view_) return *view_;
    auto* const self = const_cast<LineChart*>(this);
    view_ = new LineView(self);
    view_->setGeometry(rect());
    view_->setAccessibleName(waiting_.description);
    view_->stage().setLook(screen_look(*this));
    view_->stage().setContent(std::exchange(self->waiting_, {}));
    QWidget::setTabOrder(self, view_); // where it would stand had it been made with the chart
    self->setFocusProxy(view_);
    connect(view_, &LineView::clicked, this, &LineChart::pointClicked);
    connect(view_, &LineView::hovered, this, &LineChart::pointHovered);
    connect(view_, &LineView::spanChanged, this, &LineChart::visibleSpanChanged);
    connect(view_, &LineView::toggled, this, &LineChart::groupVisibilityChanged);
    if (isVisible()) view_->show();
    return *view_;
}

LineChart::~LineChart() = default;

void LineChart::setContent(ChartContent content) {
    setAccessibleName(content.description);
    if (!view_) {
        waiting_ = std::move(content);
        return;
    }
    view_->setAccessibleName(content.description);
    view_->stage().setContent(std::move(content));
    const ChartWindow whole = view_->stage().layout().whole;
    if (const auto window = view_->stage().window(); window && (window->from >= whole.to || window->to <= whole.from))
        resetZoom(); // the old view shows nothing of the new content
}

const ChartContent& LineChart::content() const { return view_ ? view_->stage().content() : waiting_; }

void LineChart::setHighlighted(const QString& series_id, const std::vector<int>& indices) {
    std::set<std::size_t> chosen;
    for (const int index : indices)
        if (index >= 0) chosen.insert(static_cast<std::size_t>(index));
    if (!view_ && chosen.empty()) return;
    view().stage().setHighlighted(series_id, std::move(chosen));
}

void LineChart::setGroupVisible(const QString& group, bool visible) {
    if (isGroupVisible(group) != visible) view().toggle(group);
}

bool LineChart::isGroupVisible(const QString& group) const { return !view().stage().state().hidden.contains(group); }

void LineChart::zoomTo(double from, double to) {
    const LineLayout& layout = view().stage().layout();
    const double lo = std::max(std::min(from, to), layout.whole.from);
    const double hi = std::min(std::max(from, to), layout.whole.to);
    if (layout.empty || !(hi > lo)) return;
    view().applyWindow(zoomed_window({lo, hi}, layout.whole, lo, 1, 0, layout.axes.x_logarithmic));
}

void LineChart::resetZoom() {
    if (view_) view_->applyWindow(std::nullopt);
}

std::pair<double, double> LineChart::visibleSpan() const {
    const TickScale& x = view().stage().layout().x;
    return {x.minimum, x.maximum};
}

QPointF LineChart::pixelOf(double x, double y) const {
    const LineLayout& layout = view().stage().layout();
    return view().mapTo(this, QPointF(layout.pixelX(x), layout.pixelY(y)));
}

QRectF LineChart::plotArea() const {
    const QRectF plot = view().stage().layout().plot;
    return {view().mapTo(this, plot.topLeft()), plot.size()};
}

QRectF LineChart::labelPlace(const QString& group) const {
    for (const ChartLabel& label : view().stage().layout().labels)
        if (!group.isEmpty() && label.group == group) return {view().mapTo(this, label.place.topLeft()), label.place.size()};
    return {};
}

QString LineChart::readout() const {
    const LineStage& stage = view().stage();
    return stage.state().hovered ? readout_text(stage.content(), stage.layout(), *stage.state().hovered) : QString();
}

QSize LineChart::sizeHint() const { return {40 * fontMetrics().averageCharWidth() + 240, 24 * fontMetrics().height()}; }

QSize LineChart::minimumSizeHint() const { return {240, 120}; }

void LineChart::changeEvent(QEvent* event) {
    if (view_ && event->type() == QEvent::FontChange) view_->stage().setLook(screen_look(*this));
    QWidget::changeEvent(event);
}

void LineChart::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    view().setGeometry(rect()); // the first comes before it is shown
}

} // namespace ullage
