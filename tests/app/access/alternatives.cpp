// SPDX-License-Identifier: GPL-3.0-or-later
// What charts and vessels say to who does not see them.
#include "looks.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"

#include <QAccessible>
#include <QGraphicsView>
#include <QRegularExpression>

#include <algorithm>

namespace ullage::test {
namespace {

struct Spoken {
    QString name, description;
};

Spoken spoken(QWidget& widget) {
    auto* face = QAccessible::queryAccessibleInterface(&widget);
    return {face->text(QAccessible::Name), face->text(QAccessible::Description)};
}

} // namespace

void look_at_charts(Place& place, Complaints& complaints) {
    const auto expect_told = [&](QWidget& widget, const QString& what, const QStringList& figures) {
        complaints.looked_at_one();
        const Spoken said = spoken(widget);
        if (what.isEmpty() || said.name != what) complaints.add(place.name, QStringLiteral("a chart is called “%1”, not “%2”").arg(said.name, what));
        for (const QString& figure : figures)
            if (!said.description.contains(figure))
                complaints.add(place.name, QStringLiteral("“%1” does not tell “%2”: %3").arg(what, figure, said.description));
        static const QRegularExpression digit(QStringLiteral("\\d"));
        const bool known = !said.description.contains(QStringLiteral("nothing known"));
        const bool empty = !figures.isEmpty() && said.description == figures.first();
        if (!figures.isEmpty() && known && !empty && !said.description.contains(digit))
            complaints.add(place.name, QStringLiteral("“%1” tells no figure").arg(what));
    };
    for (auto* chart : place.root.findChildren<LineChart*>()) {
        if (!chart->isVisible()) continue;
        QStringList names;
        for (const ChartSeries& series : chart->content().series)
            if (!series.name.isEmpty() && !series.points.empty()) names << series.name;
        const bool empty = std::ranges::all_of(chart->content().series, [](const auto& series) { return series.points.empty(); });
        expect_told(*chart->findChild<QGraphicsView*>(), chart->content().description, empty ? QStringList{chart->content().empty_text} : names);
    }
    for (auto* chart : place.root.findChildren<BarChart*>()) {
        if (!chart->isVisible()) continue;
        QStringList names;
        for (const ChartBar& bar : chart->content().bars) names << bar.name;
        expect_told(*chart->findChild<QGraphicsView*>(), chart->content().description,
                    names.isEmpty() ? QStringList{chart->content().empty_text} : names);
    }
    for (auto* row : place.root.findChildren<VesselRow*>()) {
        if (!row->isVisible()) continue;
        QStringList names;
        for (const VesselColumn& column : row->content().columns) names << column.name << vessel_value_text(column);
        expect_told(*row, row->content().description, names.isEmpty() ? QStringList{row->content().empty_text} : names);
    }
}

} // namespace ullage::test
