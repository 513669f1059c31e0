// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/picture_copy.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "style/theme.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QMimeData>
#include <QWidget>

#include <algorithm>
#include <memory>

namespace ullage {
namespace {

constexpr double sharp_scale = 2; // stays sharp in a page that is printed

bool has_points(const ChartContent& content) {
    return std::ranges::any_of(content.series, [](const ChartSeries& series) { return !series.points.empty(); });
}

ChartContent in_view(const LineChart& chart) {
    ChartContent content = chart.content();
    const auto [from, to] = chart.visibleSpan();
    content.x.minimum = from;
    content.x.maximum = to;
    std::erase_if(content.series,
                  [&](const ChartSeries& series) { return !chart.isGroupVisible(series.group.isEmpty() ? series.id : series.group); });
    return content;
}

Error nothing_drawn() {
    return {Failure::bad_input, say(phrase("charts", "there is nothing drawn here yet")), say(phrase("charts", "picture")),
            say(phrase("charts", "choose a run with readings"))};
}

} // namespace

PictureSpec shown_spec(const QWidget& drawing) {
    PictureSpec spec;
    spec.size = drawing.size();
    spec.scale = sharp_scale;
    spec.palette = current_palette();
    spec.ground = spec.palette.panel;
    spec.font = drawing.font();
    return spec;
}

std::optional<PictureContent> shown_picture(const QWidget& drawing) {
    if (const auto* lines = qobject_cast<const LineChart*>(&drawing); lines && has_points(lines->content())) return in_view(*lines);
    if (const auto* bars = qobject_cast<const BarChart*>(&drawing); bars && !bars->content().bars.empty()) return bars->content();
    if (const auto* row = qobject_cast<const VesselRow*>(&drawing); row && !row->content().columns.empty()) return row->content();
    return std::nullopt;
}

QWidget* drawing_in_sight(QWidget& page) {
    QList<QWidget*> drawings;
    for (auto* widget : page.findChildren<QWidget*>())
        if (widget->isVisible() && shown_picture(*widget)) drawings << widget;
    for (auto* drawing : drawings)
        if (drawing->hasFocus() || drawing->isAncestorOf(QApplication::focusWidget())) return drawing;
    for (auto* drawing : drawings)
        if (drawing->underMouse()) return drawing;
    return drawings.isEmpty() ? nullptr : drawings.first();
}

Result<void> copy_picture(const QWidget& drawing) {
    const auto content = shown_picture(drawing);
    if (!content) return nothing_drawn();
    const PictureSpec spec = shown_spec(drawing);
    auto image = render_picture(*content, spec);
    if (!image) return image.error();
    auto svg = svg_picture(*content, spec);
    if (!svg) return svg.error();
    auto data = std::make_unique<QMimeData>();
    data->setImageData(image.value());
    data->setData(QStringLiteral("image/svg+xml"), svg.value());
    QApplication::clipboard()->setMimeData(data.release());
    return {};
}

void offer_copy(QWidget& drawing) {
    auto* copy = new QAction(QAction::tr("Copy picture"), &drawing);
    copy->setObjectName(QStringLiteral("copyPictureAction"));
    copy->setShortcut(QKeySequence::Copy);
    copy->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(copy, &QAction::triggered, &drawing, [&drawing] { (void)copy_picture(drawing); });
    drawing.addAction(copy);
    drawing.setContextMenuPolicy(Qt::ActionsContextMenu);
}

} // namespace ullage
