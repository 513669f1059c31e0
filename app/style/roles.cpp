// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/roles.h"

#include <QApplication>
#include <QEvent>
#include <QFontMetrics>
#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStyle>
#include <QTableView>
#include <QTreeView>

namespace ullage {
namespace {

constexpr int rows_measured = 100; ///< for the width of a column; a table may have a million

// Style sheet rules with properties are looked up when a widget is polished, so a later change needs a new polish.
void set_role(QWidget& widget, const char* name, const QVariant& value) {
    if (widget.property(name) == value) return;
    widget.setProperty(name, value);
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
    widget.update();
}

const char* tone_name(Tone tone) {
    switch (tone) {
    case Tone::ink: return "ink";
    case Tone::soft: return "soft";
    case Tone::accent: return "accent";
    case Tone::delivered: return "delivered";
    case Tone::good: return "good";
    case Tone::fault: return "fault";
    }
    return "ink";
}

const char* chip_name(Chip chip) {
    switch (chip) {
    case Chip::note: return "note";
    case Chip::good: return "good";
    case Chip::doubt: return "doubt";
    case Chip::fault: return "fault";
    }
    return "note";
}

const char* size_name(TextSize size) {
    switch (size) {
    case TextSize::small: return "small";
    case TextSize::caption: return "caption";
    case TextSize::body: return "body";
    case TextSize::group: return "group";
    case TextSize::figure: return "figure";
    case TextSize::title: return "title";
    }
    return "body";
}

/// Keeps the rows of a table as high as its text, also where that becomes larger; leaves rows alone that somebody else has set.
class RowKeeper final : public QObject {
public:
    explicit RowKeeper(QTableView& table) : QObject(&table), table_(table) {
        keep();
        table.installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        const bool same = table_.verticalHeader()->defaultSectionSize() == kept_px_;
        if (same && (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)) keep();
        return QObject::eventFilter(watched, event);
    }

private:
    void keep() {
        kept_px_ = QFontMetrics(table_.font()).height() + 9;
        table_.verticalHeader()->setDefaultSectionSize(kept_px_);
    }

    QTableView& table_;
    int kept_px_ = 0;
};

} // namespace

double text_factor(TextSize size) {
    switch (size) {
    case TextSize::small: return 0.80;
    case TextSize::caption: return 0.86;
    case TextSize::body: return 1.0;
    case TextSize::group: return 0.86;
    case TextSize::figure: return 1.62;
    case TextSize::title: return 1.38;
    }
    return 1.0;
}

QFont text_font(TextSize size) {
    QFont font = QApplication::font();
    const double factor = text_factor(size);
    if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * factor);
    else font.setPixelSize(qMax(1, qRound(font.pixelSize() * factor)));
    font.setBold(size == TextSize::figure || size == TextSize::title);
    if (size == TextSize::group) {
        font.setCapitalization(QFont::AllUppercase);
        font.setLetterSpacing(QFont::PercentageSpacing, 104);
    }
    return tabular(font);
}

QFont tabular(QFont font) {
    // Qt before 6.7 cannot switch on a font's "tnum" feature. Kerning is what moves figures out of their columns
    // in fonts whose default figures are tabular already, as nearly all interface fonts' are.
    font.setKerning(false);
    return font;
}

void make_primary(QPushButton& button) { set_role(button, "primary", true); }

void make_quiet(QWidget& button) { set_role(button, "quiet", true); }

void make_panel(QFrame& frame) {
    frame.setFrameShape(QFrame::NoFrame);
    set_role(frame, "panel", true);
}

void make_rule(QFrame& frame, bool vertical) {
    frame.setFrameShape(QFrame::NoFrame);
    set_role(frame, "rule", true);
    if (vertical) frame.setFixedWidth(1);
    else frame.setFixedHeight(1);
}

void set_text_style(QLabel& label, Tone tone, TextSize size) {
    set_role(label, "tone", QString::fromLatin1(tone_name(tone)));
    set_role(label, "textSize", QString::fromLatin1(size_name(size)));
}

void make_chip(QLabel& label, Chip chip) {
    set_role(label, "chip", QString::fromLatin1(chip_name(chip)));
    label.setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void set_wrong(QWidget& field, bool wrong) { set_role(field, "wrong", wrong); }

void make_table(QTableView& table) {
    table.setShowGrid(false);
    table.setFrameShape(QFrame::NoFrame);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setWordWrap(false);
    table.verticalHeader()->hide();
    new RowKeeper(table);
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setResizeContentsPrecision(rows_measured);
    table.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
}

void make_side_tree(QTreeView& tree) {
    tree.setFrameShape(QFrame::NoFrame);
    tree.setHeaderHidden(true);
    tree.setRootIsDecorated(false);
    tree.setIconSize(QSize(16, 24));
    tree.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    set_role(tree, "side", true);
}

void make_thin(QSplitter& splitter) {
    splitter.setHandleWidth(1);
    set_role(splitter, "thin", true);
}

} // namespace ullage
