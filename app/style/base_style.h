// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace ullage {

/// Fusion with what a style sheet cannot say: room beside a cell's text, a thin frame around the current cell, and flat
/// check boxes and radio buttons, and the list of a choice as wide as its entries, in the colours of current_palette(). It leaves the background of
/// cells to their model, which a style sheet would not. An icon of its own is read when it is painted first: for the first one Qt loads every plugin
/// for pictures.
class BaseStyle : public QProxyStyle {
    Q_OBJECT

public:
    BaseStyle();

    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part, const QWidget* widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const override;

private:
    void drawCheck(const QStyleOption& option, QPainter& painter, bool round) const;
};

} // namespace ullage
