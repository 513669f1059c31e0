// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/bench_display.h"

#include "forecast/near_moment.h"
#include "pages/bench/display_card.h"
#include "pages/bench/display_entry.h"
#include "pages/parts/page_parts.h"
#include "services/reminders.h"
#include "services/settings.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QCloseEvent>
#include <QKeyEvent>
#include <QLayout>
#include <QPainter>
#include <QScreen>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

const QString dimming_name = QStringLiteral("bench-display-dimming");
constexpr int gap_px = spacing::panel_gap_px;
constexpr double foot_share = 0.032; ///< of the screen's height
constexpr int least_foot_px = 22;

QFont display_font(const QFont& font, double px, bool bold) {
    QFont sized = font;
    sized.setPixelSize(std::max(9, static_cast<int>(px)));
    sized.setBold(bold);
    return sized;
}

} // namespace

BenchDisplay::BenchDisplay(Document& document, Reminders& reminders, Settings& settings, QWidget* parent)
    : QWidget(parent, Qt::Window), document_(document), reminders_(reminders), settings_(settings),
      dimming_(dimming_from(settings.remembered(dimming_name))), colours_(display_palette(false)), entry_(new DisplayEntry(document, this)) {
    setObjectName(QStringLiteral("benchDisplay"));
    setWindowTitle(tr("Running tests"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    setFocusPolicy(Qt::StrongFocus);
    const auto follow = [this] {
        if (isVisible()) refresh();
    };
    connect(&reminders_, &Reminders::looked, this, follow);
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, follow);
    minute_timer_.setSingleShot(true);
    connect(&minute_timer_, &QTimer::timeout, this, follow);
    connect(&document_, &Document::stepDone, this, [this](const QString& words) {
        done_words_ = words;
        done_at_ = document_.undoStack().index();
        update();
    });
    connect(&document_.undoStack(), &QUndoStack::indexChanged, this, [this](int index) {
        if (index != done_at_) done_words_.clear();
        update();
    });
    connect(&document_, &Document::closed, this, &QWidget::close);
    connect(entry_, &DisplayEntry::resized, this, &BenchDisplay::placeEntry);
    connect(entry_, &DisplayEntry::left, this, [this](const RunId& run) {
        setFocus(Qt::OtherFocusReason);
        emit draftChanged(run);
    });
}

void BenchDisplay::open(const QWidget& beside) {
    // Without a window manager nobody else makes it as large as the screen.
    if (const QScreen* screen = beside.screen()) setGeometry(screen->geometry());
    showFullScreen();
    raise();
    activateWindow();
    setFocus(Qt::OtherFocusReason);
    refresh();
}

bool BenchDisplay::dim() const { return is_dim(dimming_, to_local(document_.clock().now_ms(), machine_zone()).hour); }

void BenchDisplay::refresh() {
    minute_timer_.start(ms_to_next_minute(document_.clock().now_ms()));
    const auto entries = bench_entries(document_, reminders_);
    while (cards_.size() > entries.size()) {
        delete cards_.back();
        cards_.pop_back();
    }
    while (cards_.size() < entries.size()) {
        auto* card = new DisplayCard(this);
        connect(card, &DisplayCard::readingAsked, this, &BenchDisplay::enterReading);
        card->show();
        cards_.push_back(card);
    }
    for (std::size_t i = 0; i < entries.size(); ++i) cards_[i]->setEntry(entries[i]);
    const bool gone = std::ranges::none_of(entries, [this](const BenchEntry& each) { return each.run_uuid == entry_->runUuid(); });
    if (entry_->isVisible() && gone) entry_->leave();
    applyLook();
    arrange();
    update();
}

void BenchDisplay::applyLook() {
    colours_ = display_palette(dim());
    for (DisplayCard* card : cards_) card->setColours(colours_);
    entry_->setLook(colours_, std::max(28, height() / 14));
}

QSize BenchDisplay::gridOf(int cards, const QSize& screen) {
    const int more = std::max(1, static_cast<int>(std::ceil(std::sqrt(cards)))), fewer = std::max(1, (cards + more - 1) / more);
    return screen.width() >= screen.height() ? QSize(more, fewer) : QSize(fewer, more);
}

int BenchDisplay::footHeight() const { return std::max(least_foot_px, static_cast<int>(height() * foot_share)); }

QRect BenchDisplay::cell(int place) const {
    const QSize grid = gridOf(static_cast<int>(cards_.size()), size());
    const int column = place % grid.width(), row = place / grid.width();
    const int whole_px = width() - gap_px, high_px = height() - footHeight() - gap_px;
    const int left = gap_px + whole_px * column / grid.width(), right = whole_px * (column + 1) / grid.width();
    const int top = gap_px + high_px * row / grid.height(), bottom = high_px * (row + 1) / grid.height();
    return {left, top, right - left, bottom - top};
}

void BenchDisplay::arrange() {
    for (std::size_t i = 0; i < cards_.size(); ++i) cards_[i]->setGeometry(cell(static_cast<int>(i)));
    placeEntry();
}

void BenchDisplay::placeEntry() {
    if (!entry_->isVisible()) return;
    QRect room = rect().adjusted(gap_px, gap_px, -gap_px, -gap_px);
    for (const DisplayCard* card : cards_)
        if (card->entry().run_uuid == entry_->runUuid()) room = card->geometry();
    entry_->ensurePolished();
    // Over its card, larger where the card does not hold it, within the screen.
    const int wide = std::min(std::max(room.width(), entry_->minimumSizeHint().width()), width());
    const int high = std::min(std::max(entry_->layout()->hasHeightForWidth() ? entry_->layout()->heightForWidth(wide) : entry_->sizeHint().height(),
                                       entry_->minimumSizeHint().height()),
                              height());
    const int left = std::clamp(room.center().x() - wide / 2, 0, width() - wide), top = std::clamp(room.center().y() - high / 2, 0, height() - high);
    entry_->setGeometry(left, top, wide, high);
    entry_->raise();
}

void BenchDisplay::enterReading(const RunId& runUuid) {
    for (const DisplayCard* card : cards_)
        if (card->entry().run_uuid == runUuid) {
            const BenchEntry& entry = card->entry();
            entry_->open(runUuid, QStringLiteral("%1  %2, %3").arg(entry.number).arg(entry.unit, entry.kind));
            return;
        }
}

void BenchDisplay::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    const bool plain = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (event->matches(QKeySequence::Undo)) return document_.undoStack().undo();
    if (event->matches(QKeySequence::Redo)) return document_.undoStack().redo();
    if (plain && (key == Qt::Key_Escape || key == Qt::Key_F11)) {
        close();
    } else if (plain && key == Qt::Key_N) {
        dimming_ = after(dimming_);
        settings_.remember(dimming_name, kept_dimming(dimming_));
        refresh();
    } else if (plain && key >= Qt::Key_1 && key <= Qt::Key_9) {
        const auto place = static_cast<std::size_t>(key - Qt::Key_1);
        if (place < cards_.size()) enterReading(cards_[place]->entry().run_uuid);
    } else {
        QWidget::keyPressEvent(event);
    }
}

QString BenchDisplay::footWords() const {
    const auto count = static_cast<int>(cards_.size());
    QStringList words;
    if (!done_words_.isEmpty()) words << tr("%1, Ctrl+Z takes it back").arg(done_words_);
    if (count == 1) words << tr("1 reading");
    if (count > 1) words << tr("1 to %1 reading").arg(std::min(count, most_bench_keys));
    words << tr("N %1").arg(dimming_words(dimming_)) << tr("Esc back");
    return words.join(QStringLiteral("  ·  "));
}

void BenchDisplay::paintClock(QPainter& painter, const QRect& room) const {
    const UtcMs now_ms = document_.clock().now_ms();
    const std::string zone = machine_zone();
    const double px = std::min(room.height() * 0.28, room.width() * 0.2);
    painter.setPen(colours_.soft);
    painter.setFont(display_font(font(), px, true));
    painter.drawText(room.adjusted(0, 0, 0, -static_cast<int>(px / 2)), Qt::AlignCenter, raw_text(clock_text(now_ms, zone)));
    painter.setFont(display_font(font(), px * 0.25, false));
    painter.drawText(room.adjusted(0, static_cast<int>(px * 1.1), 0, 0), Qt::AlignCenter,
                     raw_text(weekday_text(now_ms, zone) + ' ' + day_text(now_ms, zone)));
}

void BenchDisplay::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), colours_.ground);
    const int foot_px = footHeight();
    const QRect foot(gap_px, height() - foot_px, width() - 2 * gap_px, foot_px);
    const QSize grid = gridOf(static_cast<int>(cards_.size()), size());
    const bool spare = cards_.size() < static_cast<std::size_t>(grid.width() * grid.height());
    painter.setFont(display_font(font(), foot_px * 0.62, false));
    painter.setPen(colours_.soft);
    QString clock;
    if (cards_.empty()) {
        painter.setFont(display_font(font(), foot_px * 1.2, false));
        painter.drawText(rect().adjusted(width() / 6, height() / 2, -width() / 6, -foot_px), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                         tr("No test is running. Esc goes back; Ctrl+R starts one there."));
        paintClock(painter, rect().adjusted(0, 0, 0, -height() / 2));
    } else if (spare) {
        paintClock(painter, cell(static_cast<int>(cards_.size())));
    } else {
        clock = raw_text(clock_text(document_.clock().now_ms(), machine_zone()));
    }
    painter.setFont(display_font(font(), foot_px * 0.62, false));
    painter.setPen(colours_.soft);
    const int clock_px = clock.isEmpty() ? 0 : painter.fontMetrics().horizontalAdvance(clock) + gap_px;
    painter.drawText(foot.adjusted(0, 0, -clock_px, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(footWords(), Qt::ElideRight, foot.width() - clock_px));
    painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter, clock);
}

void BenchDisplay::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    applyLook();
    arrange();
}

bool BenchDisplay::event(QEvent* event) {
    // A question that closes by its answer leaves the keyboard with nobody.
    const bool handled = QWidget::event(event);
    if (event->type() == QEvent::WindowActivate && !focusWidget()) setFocus(Qt::OtherFocusReason);
    return handled;
}

void BenchDisplay::closeEvent(QCloseEvent* event) {
    if (entry_->isVisible()) entry_->leave();
    QWidget::closeEvent(event);
    emit left();
}

} // namespace ullage
