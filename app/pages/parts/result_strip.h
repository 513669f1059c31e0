// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/parts/strip_figure.h"

#include <QFrame>

#include <vector>

class QGridLayout;
class QLabel;

namespace ullage {

/// The few figures at the head of a run, side by side; in two or three lines where the width does not hold them.
class ResultStrip final : public QFrame {
    Q_OBJECT
public:
    enum class Frame { panel, none };

    /// Without a frame it stands in a panel of the caller's.
    explicit ResultStrip(QWidget* parent = nullptr, Frame frame = Frame::panel);

    void setFigures(const std::vector<StripFigure>& figures);

    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Cell {
        QFrame* frame = nullptr;
        QLabel *label = nullptr, *value = nullptr, *rest = nullptr;
        bool alarm = false;
    };
    Cell addCell();
    void applyFonts(const Cell& cell);
    void arrange();
    [[nodiscard]] int widthIn(int columns) const; ///< that shows every cell whole in so many columns, pixels

    std::vector<Cell> cells_;
    QGridLayout* grid_;
    int columns_ = 0;
    bool placed_ = false; ///< has been given a width
};

} // namespace ullage
