// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/vessel.h"

#include <QStringList>
#include <QWidget>

#include <vector>

namespace ullage {

/// One unit in a row of vessels.
struct VesselColumn {
    QString name = {};
    VesselData vessel = {};
    QString value_text = {}; ///< under the name, "937 ± 19 Wh"; empty: the delivered value with its interval, or "not known"
};

struct VesselRowContent {
    QString description = {};
    std::vector<VesselColumn> columns = {};
    QString empty_text = {};
    QString subject = {}; ///< as those of ChartContent
    QString key = {};
};

/// Where a row of vessels puts its parts; one entry a column.
struct VesselRowLayout {
    std::vector<QRectF> cells = {};  ///< the column's whole area
    std::vector<QRectF> bodies = {}; ///< the vessels' outlines, standing on one line, at one height scale
};

/// Places for `content` in `area`. Heights are in proportion to the rated energies over all columns.
[[nodiscard]] VesselRowLayout vessel_row_layout(const VesselRowContent& content, const QRectF& area, const ChartLook& look);

/// Draws `content` into `area`: rated label, vessel, name and value of each. Does not paint the ground.
void paint_vessel_row(QPainter& painter, const VesselRowContent& content, const QRectF& area, const ChartLook& look);

/// Text under a column's name.
[[nodiscard]] QString vessel_value_text(const VesselColumn& column);

/// Text above a vessel: "rated 1200 Wh", or that the rating is not known.
[[nodiscard]] QString vessel_rated_text(const VesselData& vessel);

/// What a vessel tells beside its name: rating, what was delivered, what the no-load draw took.
[[nodiscard]] QStringList vessel_facts(const VesselColumn& column);

/// Several vessels side by side, following the theme. Put it into a scroll area where there may be many: its minimum
/// width grows with their number. With the keyboard, Left, Right, Home and End go from one to the next, each telling its facts, and Enter or Space
/// does what a click does.
class VesselRow : public QWidget {
    Q_OBJECT

public:
    explicit VesselRow(QWidget* parent = nullptr);

    void setContent(VesselRowContent content);
    [[nodiscard]] const VesselRowContent& content() const { return content_; }
    /// The vessel that the keys are at; -1 where there is none.
    [[nodiscard]] int current() const { return current_; }
    /// Where the column stands, in pixels of this widget.
    [[nodiscard]] QRectF columnPlace(int column) const;
    /// Does what a click on it does.
    void choose(int column);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// A vessel was clicked, or chosen by the keyboard; the column's position in the content.
    void vesselClicked(int column);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] VesselRowLayout layoutHere() const;
    [[nodiscard]] int columnAt(const QPointF& place) const;
    void setCurrent(int column);
    void tellFacts(const QPoint& global_place, int column);

    VesselRowContent content_;
    int current_ = -1;
    bool by_keys_ = false; ///< the keyboard was brought here by keys, so that its place is marked
};

} // namespace ullage
