// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/bench/bench_facts.h"
#include "pages/bench/big_figures.h"
#include "style/palette.h"

#include <QWidget>

namespace ullage {

/// One running test on the bench display: gauge and energy in digits as large as the card holds, then the time to the cut-off from now and the next
/// reading with a bar that empties. Where a reading is due the card says "look now" with a triangle and has an edge, besides the colour.
class DisplayCard final : public QWidget {
    Q_OBJECT
public:
    explicit DisplayCard(QWidget* parent);

    void setEntry(const BenchEntry& entry);
    void setColours(const Palette& colours);
    [[nodiscard]] const BenchEntry& entry() const { return entry_; }
    /// Where the digits stand, in the card.
    [[nodiscard]] BigFigureLayout figureLayout() const;

signals:
    void readingAsked(const RunId& runUuid); ///< it was clicked

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] double unit() const; ///< what all sizes on the card are multiples of, pixels
    [[nodiscard]] std::vector<BigFigure> figures() const;
    void paintHead(QPainter& painter) const;
    void paintFoot(QPainter& painter) const;
    /// A label, a value and what belongs to it, within `room`.
    void paintTelling(QPainter& painter, const QRectF& room, const QString& label, const QString& value, const QString& detail, bool alarm) const;

    BenchEntry entry_;
    Palette colours_;
};

} // namespace ullage
