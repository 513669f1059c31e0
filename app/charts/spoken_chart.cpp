// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/spoken_chart.h"

#include "charts/bar_view.h"
#include "charts/line_view.h"
#include "charts/spoken_vessels.h"
#include "charts/ticks.h"
#include "charts/vessel_row.h"
#include "style/numbers.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

namespace ullage {
namespace {

constexpr std::size_t most_parts = 40; ///< told of one picture

/// The texts of this file, whole sentences.
struct SpokenChart {
    Q_DECLARE_TR_FUNCTIONS(ullage::SpokenChart)
};

/// The span of the values along one axis, and the digits that tell them apart.
class SpokenAxis {
public:
    explicit SpokenAxis(QString unit) : unit_(std::move(unit)) {}
    void take(double value) {
        if (!std::isfinite(value)) return;
        lowest_ = std::min(lowest_, value);
        highest_ = std::max(highest_, value);
    }
    [[nodiscard]] QString text(double value) const {
        const double span = highest_ > lowest_ ? highest_ - lowest_ : std::fabs(value);
        const double step = span > 0 ? std::pow(10.0, std::floor(std::log10(span)) - 2) : 1;
        return unit_.isEmpty() ? tick_text(value, step) : tick_text(value, step) + QLatin1Char(' ') + unit_;
    }

private:
    QString unit_;
    double lowest_ = std::numeric_limits<double>::infinity(), highest_ = -std::numeric_limits<double>::infinity();
};

QString name_of(const ChartContent& content, const ChartSeries& series) {
    if (!series.name.isEmpty()) return series.name;
    for (const ChartSeries& other : content.series)
        if (!series.group.isEmpty() && other.group == series.group && !other.name.isEmpty()) return other.name;
    return SpokenChart::tr("Curve without a name");
}

QString sentence_of(const QString& name, const std::vector<ChartPoint>& points, const SpokenAxis& x, const SpokenAxis& y) {
    std::vector<ChartPoint> known;
    std::ranges::copy_if(points, std::back_inserter(known), [](const ChartPoint& point) { return std::isfinite(point.y); });
    if (known.empty()) return SpokenChart::tr("%1: nothing known.").arg(name);
    const ChartPoint &first = known.front(), &last = known.back();
    if (known.size() == 1) return SpokenChart::tr("%1: one point, %2 at %3.").arg(name, y.text(first.y), x.text(first.x));
    const auto [low, high] = std::ranges::minmax_element(known, {}, &ChartPoint::y);
    return SpokenChart::tr("%1: %2 points, from %3 at %4 to %5 at %6; lowest %7, highest %8.")
        .arg(name, QString::number(known.size()), y.text(first.y), x.text(first.x), y.text(last.y), x.text(last.x), y.text(low->y), y.text(high->y));
}

QString value_of(const ChartBar& bar, const QString& unit) {
    if (!bar.value_text.isEmpty()) return bar.value_text;
    const bool known = bar.lower && bar.upper;
    return shown_value(bar.value, known ? std::optional((*bar.upper - *bar.lower) / 2) : std::nullopt, unit, 2).plain();
}

QString joined(const QStringList& sentences, std::size_t left_out) {
    QStringList all = sentences;
    if (left_out > 0) all << SpokenChart::tr("And %1 more.").arg(left_out);
    return all.join(QLatin1Char(' '));
}

/// A picture as the tree shows it.
template <class Picture>
class ChartFace final : public QAccessibleWidget {
public:
    explicit ChartFace(Picture& picture) : QAccessibleWidget(&picture, QAccessible::Chart) {}
    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        if (kind != QAccessible::Description) return QAccessibleWidget::text(kind);
        return spoken_figures(static_cast<Picture*>(widget())->stage().content());
    }
    /// What Qt Charts makes inside says nothing.
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
};

QAccessibleInterface* face_of(const QString&, QObject* object) {
    if (auto* lines = qobject_cast<LineView*>(object)) return new ChartFace<LineView>(*lines);
    if (auto* bars = qobject_cast<BarView*>(object)) return new ChartFace<BarView>(*bars);
    if (auto* vessels = qobject_cast<VesselRow*>(object)) return face_of_vessels(*vessels);
    return nullptr;
}

} // namespace

QString spoken_figures(const ChartContent& content) {
    SpokenAxis x(content.x.unit), y(content.y.unit);
    std::vector<const ChartSeries*> shown;
    for (const ChartSeries& series : content.series) {
        if (!series.points.empty()) shown.push_back(&series);
        for (const ChartPoint& point : series.points) x.take(point.x), y.take(point.y);
    }
    if (shown.empty()) return content.empty_text;
    QStringList sentences;
    if (!content.subject.isEmpty()) sentences << SpokenChart::tr("Of %1.").arg(content.subject);
    for (const ChartSeries* series : shown) {
        if (static_cast<std::size_t>(sentences.size()) >= most_parts) break;
        sentences << sentence_of(name_of(content, *series), series->points, x, y);
    }
    const std::size_t told = std::min(shown.size(), most_parts - (content.subject.isEmpty() ? 0 : 1));
    for (const ChartHorizontalLine& line : content.horizontal_lines)
        if (!line.label.isEmpty()) sentences << SpokenChart::tr("Line at %1: %2.").arg(y.text(line.value), line.label);
    for (const ChartHorizontalBand& band : content.horizontal_bands)
        if (!band.label.isEmpty()) sentences << SpokenChart::tr("Band from %1 to %2: %3.").arg(y.text(band.lower), y.text(band.upper), band.label);
    for (const ChartVerticalLine& line : content.vertical_lines)
        if (!line.label.isEmpty()) sentences << SpokenChart::tr("Line at %1: %2.").arg(x.text(line.value), line.label);
    for (const ChartRegion& region : content.regions)
        if (!region.label.isEmpty()) sentences << SpokenChart::tr("From %1 to %2: %3.").arg(x.text(region.from), x.text(region.to), region.label);
    return joined(sentences, shown.size() - told);
}

QString spoken_figures(const BarContent& content) {
    if (content.bars.empty()) return content.empty_text;
    QStringList sentences;
    for (std::size_t n = 0; n < content.bars.size() && n < most_parts; ++n) {
        const ChartBar& bar = content.bars[n];
        const QString value = value_of(bar, content.axis.unit);
        sentences << (bar.note.isEmpty() ? SpokenChart::tr("%1: %2.").arg(bar.name, value)
                                         : SpokenChart::tr("%1: %2, %3.").arg(bar.name, value, bar.note));
    }
    return joined(sentences, content.bars.size() - static_cast<std::size_t>(sentences.size()));
}

QString spoken_figures(const VesselRowContent& content) {
    if (content.columns.empty()) return content.empty_text;
    QStringList sentences;
    for (std::size_t n = 0; n < content.columns.size() && n < most_parts; ++n) {
        const VesselColumn& column = content.columns[n];
        sentences << SpokenChart::tr("%1: %2 delivered, %3.").arg(column.name, vessel_value_text(column), vessel_rated_text(column.vessel));
    }
    return joined(sentences, content.columns.size() - static_cast<std::size_t>(sentences.size()));
}

void speak_charts() {
    static const bool once = (QAccessible::installFactory(face_of), true);
    Q_UNUSED(once);
}

} // namespace ullage
