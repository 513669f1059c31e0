// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QList>
#include <QString>
#include <QTextLayout>

#include <memory>

class QPaintDevice;
class QPainter;

namespace ullage {

/// A stretch of a text in another colour or weight.
struct TextAccent {
    int from = 0, length = 0;
    QColor colour; ///< invalid: as the rest
    bool bold = false;
};

/// Text broken into lines of a given width, measured for the device that will show it. A word longer than a line is broken
/// within, so nothing sticks out. Lengths in the device's units.
class FlowedText {
public:
    FlowedText(const QString& text, const QFont& font, QPaintDevice& device, double width, bool right = false, const QList<TextAccent>& accents = {});

    [[nodiscard]] int lines() const { return layout_->lineCount(); }
    /// Height of the lines from `from` to before `to`.
    [[nodiscard]] double height(int from, int to) const;
    [[nodiscard]] double height() const { return height(0, lines()); }
    /// How many lines from `from` on fit into `room`.
    [[nodiscard]] int linesWithin(int from, double room) const;
    /// Draws the lines from `from` to before `to` with the first of them at `place`, in `colour`.
    void draw(QPainter& painter, const QPointF& place, int from, int to, const QColor& colour) const;

private:
    std::unique_ptr<QTextLayout> layout_;
};

/// Width of the widest word, and of the whole text on one line.
struct TextWidths {
    double word = 0, whole = 0;
};
[[nodiscard]] TextWidths text_widths(const QString& text, const QFont& font, QPaintDevice& device);

} // namespace ullage
