// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/base_style.h"

#include "style/theme.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QIcon>
#include <QIconEngine>
#include <QPainter>
#include <QPointer>
#include <QScrollBar>
#include <QStyleFactory>
#include <QStyleOption>

#include <utility>

namespace ullage {

namespace {

/// An icon of Fusion's that is asked for when it is wanted first.
class LateIconEngine final : public QIconEngine {
public:
    LateIconEngine(QStyle& base, QStyle::StandardPixmap which) : base_(&base), which_(which) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override {
        icon().paint(painter, rect, Qt::AlignCenter, mode, state);
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override { return icon().pixmap(size, mode, state); }
    QSize actualSize(const QSize& size, QIcon::Mode mode, QIcon::State state) override { return icon().actualSize(size, mode, state); }
    QList<QSize> availableSizes(QIcon::Mode mode, QIcon::State state) override { return icon().availableSizes(mode, state); }
    QIconEngine* clone() const override { return new LateIconEngine(*this); }
    QString key() const override { return QStringLiteral("ullage-late-icon"); }
    bool isNull() override { return icon().isNull(); }

private:
    const QIcon& icon() {
        if (base_) icon_ = std::exchange(base_, nullptr)->standardIcon(which_);
        return icon_;
    }

    QPointer<QStyle> base_;
    QStyle::StandardPixmap which_;
    QIcon icon_;
};

} // namespace

BaseStyle::BaseStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

int BaseStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    switch (metric) {
    case PM_FocusFrameHMargin: return 6; // item delegates keep one pixel more than this free beside their text
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight: return qMax(16, option ? option->fontMetrics.height() - 1 : 16); // grows with the text
    default: return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

QIcon BaseStyle::standardIcon(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const {
    // Of a menu bar that is too narrow, and of a field with a text to be cleared.
    if (which == SP_ToolBarHorizontalExtensionButton || which == SP_LineEditClearButton) return QIcon(new LateIconEngine(*baseStyle(), which));
    return QProxyStyle::standardIcon(which, option, widget);
}

QRect BaseStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part, const QWidget* widget) const {
    QRect rect = QProxyStyle::subControlRect(control, option, part, widget);
    const auto* combo = control == CC_ComboBox && part == SC_ComboBoxListBoxPopup ? qobject_cast<const QComboBox*>(widget) : nullptr;
    if (combo) {
        const QAbstractItemView& list = *combo->view();
        const int bar_px = list.verticalScrollBar()->sizeHint().width();
        rect.setWidth(qMax(rect.width(), list.sizeHintForColumn(combo->modelColumn()) + bar_px + 2 * list.frameWidth()));
    }
    return rect;
}

void BaseStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const {
    switch (element) {
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck: drawCheck(*option, *painter, false); return;
    case PE_IndicatorRadioButton: drawCheck(*option, *painter, true); return;
    case PE_FrameFocusRect:
        if (qobject_cast<const QAbstractItemView*>(widget)) {
            painter->save();
            painter->setRenderHint(QPainter::Antialiasing, false);
            painter->setPen(current_palette().accent);
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
            painter->restore();
            return;
        }
        break;
    default: break;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void BaseStyle::drawCheck(const QStyleOption& option, QPainter& painter, bool round) const {
    const bool enabled = option.state.testFlag(State_Enabled);
    const bool on = option.state.testFlag(State_On);
    const bool partly = option.state.testFlag(State_NoChange);
    const double side = qMin(option.rect.width(), option.rect.height()) - 2.0;
    QRectF box(0, 0, side, side);
    box.moveCenter(QRectF(option.rect).center());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (!enabled) painter.setOpacity(painter.opacity() * 0.5);
    const bool live = option.state.testFlag(State_HasFocus) || option.state.testFlag(State_MouseOver);
    const bool filled = on || partly;
    painter.setPen(QPen(filled || live ? current_palette().accent : current_palette().soft, live ? 1.8 : 1.2));
    painter.setBrush(filled ? current_palette().accent : current_palette().panel);
    if (round) painter.drawEllipse(box);
    else painter.drawRoundedRect(box, 3, 3);
    if (round && on) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(current_palette().on_accent);
        painter.drawEllipse(box.center(), side * 0.2, side * 0.2);
    } else if (filled) {
        painter.setPen(QPen(current_palette().on_accent, side * 0.13, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        const auto at = [&box, side](double x, double y) { return box.topLeft() + QPointF(x * side, y * side); };
        if (partly) painter.drawLine(at(0.26, 0.5), at(0.74, 0.5));
        else painter.drawPolyline(QPolygonF({at(0.24, 0.52), at(0.43, 0.72), at(0.77, 0.30)}));
    }
    painter.restore();
}

} // namespace ullage
