// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/parts/strip_figure.h"

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>
#include <QWidget>

#include <vector>

class QPainter;

namespace ullage {

/// A figure that is read from across a workshop: the value in large digits, its unit and what else belongs to it small.
struct BigFigure {
    QString value; ///< "38", "1 234", "–"
    QString rest;  ///< its unit, or "to 720 Wh"
    QString note;  ///< above it, such as "at least" or "± 9 Wh"; may be empty
};

/// A cell of a strip as a big figure: words before the number and the interval stand above it.
[[nodiscard]] BigFigure big_figure_of(const StripFigure& figure);

/// Where each figure stands and how large. `digit_px` is the height of a digit in each.
struct BigFigureLayout {
    int font_px = 0;
    double digit_px = 0;
    std::vector<QRectF> cells; ///< one for each figure
};

/// Lays figures out in `room`, side by side or one above the other, whichever makes the larger digits; all have the same size. The values may not
/// touch: each cell is as wide as its value, its rest and a gap.
[[nodiscard]] BigFigureLayout lay_out(const std::vector<BigFigure>& figures, const QRectF& room, const QFont& font);

/// Paints them, each value from the left of its cell.
void paint_figures(QPainter& painter, const std::vector<BigFigure>& figures, const BigFigureLayout& layout, const QFont& font, const QColor& ink,
                   const QColor& soft);

/// Figures as large as the widget holds. Where they would hardly be larger than text it is empty.
class BigFiguresView final : public QWidget {
    Q_OBJECT
public:
    explicit BigFiguresView(QWidget* parent);

    void setFigures(const std::vector<BigFigure>& figures);
    [[nodiscard]] bool shows() const; ///< there is room for them
    [[nodiscard]] QSize sizeHint() const override { return {}; }

signals:
    void roomChanged(); ///< shows() may have changed

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    std::vector<BigFigure> figures_;
};

} // namespace ullage
