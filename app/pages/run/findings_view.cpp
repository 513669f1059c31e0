// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/findings_view.h"

#include "pages/run/finding_tag.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/wrapped_label.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>

namespace ullage {

FindingRow::FindingRow(const FindingItem& item, QWidget* parent)
    : QFrame(parent), item_(item), sentence_label_(new WrappedLabel(QString(), this)), evidence_label_(new WrappedLabel(QString(), this)) {
    setObjectName(QStringLiteral("findingRow"));
    setAccessibleName(finding_word(item.sort) + QStringLiteral(": ") + item.sentence);
    setAccessibleDescription(item.evidence);
    if (!item.readings.empty()) {
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
        setToolTip(tr("Select its readings in table and chart"));
    }
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(spacing::half_px, 2, spacing::half_px, 2);
    line->setSpacing(spacing::grid_px + 2);
    line->addWidget(new FindingTag(item.sort, this), 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    for (QLabel* label : {sentence_label_, evidence_label_}) {
        label->setTextFormat(Qt::PlainText);
        words->addWidget(label);
    }
    sentence_label_->setText(item.sentence);
    evidence_label_->setText(item.evidence);
    evidence_label_->setVisible(!item.evidence.isEmpty());
    line->addLayout(words, 1);
    if (item.acceptable) {
        auto* accept = new QPushButton(tr("Accept"), this);
        accept->setObjectName(QStringLiteral("acceptButton"));
        accept->setAccessibleName(tr("Accept: %1").arg(item.sentence));
        accept->setToolTip(tr("Write this into the reading, with its reason in the history; undo brings the old value back"));
        make_quiet(*accept);
        connect(accept, &QPushButton::clicked, this, &FindingRow::accepted);
        line->addWidget(accept, 0, Qt::AlignTop);
    }
    applyFonts();
}

void FindingRow::applyFonts() {
    set_text_style(*sentence_label_, Tone::ink, TextSize::body);
    set_text_style(*evidence_label_, Tone::soft, TextSize::small);
}

void FindingRow::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::StyleChange) applyFonts();
}

void FindingRow::setSelected(bool selected) {
    selected_ = selected;
    update();
}

void FindingRow::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && rect().contains(event->position().toPoint())) emit activated();
}

void FindingRow::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter: emit activated(); return;
    default: QFrame::keyPressEvent(event);
    }
}

void FindingRow::paintEvent(QPaintEvent*) {
    if (!selected_ && !hasFocus()) return;
    const Palette& palette = current_palette();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(hasFocus() ? QPen(palette.accent) : QPen(Qt::NoPen));
    painter.setBrush(selected_ ? palette.selection : QColor(Qt::transparent));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), spacing::small_radius_px, spacing::small_radius_px);
}

FindingsView::FindingsView(QWidget* parent) : QScrollArea(parent) {
    setObjectName(QStringLiteral("findingsView"));
    setAccessibleName(tr("Findings"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    setFocusPolicy(Qt::NoFocus);
    auto* content = new QWidget;
    column_ = new QVBoxLayout(content);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(2);
    setWidget(content);
    content->setAutoFillBackground(false);
}

void FindingsView::setItems(const std::vector<FindingItem>& items, const QString& empty_text) {
    if (items == items_ && empty_text == empty_text_) return;
    items_ = items;
    empty_text_ = empty_text;
    rebuild();
}

void FindingsView::rebuild() {
    rows_.clear();
    unknown_button_ = nullptr;
    const auto unknown = std::ranges::count(items_, FindingItem::Sort::not_known, &FindingItem::sort);
    const bool foldable = unknown > 0 && unknown < static_cast<std::ptrdiff_t>(items_.size());
    // The content stays: with another the list would be laid out at once, and again when it is shown.
    while (const std::unique_ptr<QLayoutItem> item{column_->takeAt(0)}) delete item->widget();
    QWidget* content = widget();
    for (const FindingItem& item : items_) {
        if (foldable && item.sort == FindingItem::Sort::not_known && unknown_button_ == nullptr) {
            unknown_button_ = new QPushButton(content);
            unknown_button_->setObjectName(QStringLiteral("notKnownButton"));
            unknown_button_->setCheckable(true);
            unknown_button_->setAutoDefault(false);
            make_quiet(*unknown_button_);
            connect(unknown_button_, &QPushButton::clicked, this, [this] { fold(!folded_); });
            column_->addWidget(unknown_button_, 0, Qt::AlignLeft);
        }
        auto* row = new FindingRow(item, content);
        connect(row, &FindingRow::activated, this, [this, row] { select(row); });
        connect(row, &FindingRow::accepted, this, [this, row] {
            // The list is rebuilt by what follows: the row must not be in use then.
            const ReadingId reading = row->item().readings.empty() ? ReadingId() : row->item().readings.front();
            QTimer::singleShot(0, this, [this, reading] { emit assumptionAccepted(reading); });
        });
        column_->addWidget(row);
        rows_.push_back(row);
    }
    if (items_.empty() && !empty_text_.isEmpty()) {
        auto* nothing = new WrappedLabel(empty_text_, content);
        set_text_style(*nothing, Tone::soft, TextSize::body);
        column_->addWidget(nothing);
    }
    column_->addStretch();
    if (isVisible())
        for (QObject* part : content->children())
            if (auto* shown = qobject_cast<QWidget*>(part)) shown->show();
    fold(folded_);
}

void FindingsView::fold(bool folded) {
    if (unknown_button_ == nullptr) return;
    folded_ = folded;
    int unknown = 0;
    for (FindingRow* row : rows_) {
        if (row->item().sort != FindingItem::Sort::not_known) continue;
        row->setVisible(!folded);
        ++unknown;
    }
    unknown_button_->setChecked(!folded);
    unknown_button_->setText((folded ? QStringLiteral("▸ ") : QStringLiteral("▾ ")) + tr("Not known: %1").arg(unknown));
}

void FindingsView::clearSelection() {
    for (FindingRow* row : rows_) row->setSelected(false);
}

void FindingsView::select(FindingRow* chosen) {
    for (FindingRow* row : rows_) row->setSelected(row == chosen && !row->item().readings.empty());
    if (!chosen->item().readings.empty()) emit readingsChosen(chosen->item().readings);
}

void FindingsView::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    const auto at = std::ranges::find_if(rows_, [](const FindingRow* row) { return row->hasFocus(); });
    if (step == 0 || at == rows_.end()) {
        QScrollArea::keyPressEvent(event);
        return;
    }
    for (auto next = static_cast<int>(at - rows_.begin()) + step; next >= 0 && next < static_cast<int>(rows_.size()); next += step) {
        FindingRow* row = rows_[static_cast<std::size_t>(next)];
        if (row->focusPolicy() == Qt::NoFocus) continue;
        row->setFocus(Qt::TabFocusReason);
        ensureWidgetVisible(row);
        return;
    }
}

} // namespace ullage
