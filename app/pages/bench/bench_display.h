// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/bench/display_look.h"

#include <QTimer>
#include <QWidget>

#include <string>
#include <vector>

namespace ullage {

class DisplayCard;
class DisplayEntry;
class Reminders;
class Settings;

/// The running tests over the whole screen, to be read from across the workshop: a card for each (DisplayCard), in a grid that fills the screen. Keys
/// 1 to 9 open the entry of that card (DisplayEntry), N changes when it is dimmed, Ctrl+Z takes the last step back, Esc leaves. The hours of the
/// night and the clock go by the machine's zone.
///
/// A window of its own, so that the page below stays as it was. Follows reminders and document while it is in sight; the readings that a followed log
/// brings show at once. Document, reminders and settings must outlive it.
class BenchDisplay final : public QWidget {
    Q_OBJECT
public:
    BenchDisplay(Document& document, Reminders& reminders, Settings& settings, QWidget* parent);

    /// Fills the screen on which `beside` stands.
    void open(const QWidget& beside);
    /// Opens the entry of this run's card; nothing where it is not running.
    void enterReading(const RunId& runUuid);
    /// The cards in their order.
    [[nodiscard]] const std::vector<DisplayCard*>& cards() const { return cards_; }
    [[nodiscard]] bool dim() const;
    /// What stands at its foot: keys, and what was done last.
    [[nodiscard]] QString footWords() const;

    /// Columns and rows of the grid for so many cards on a screen of this shape: one or two side by side on a wide one, one above the other on a high
    /// one, then fields of equal count both ways.
    [[nodiscard]] static QSize gridOf(int cards, const QSize& screen);

signals:
    void left();                         ///< it is closed
    void draftChanged(const RunId& run); ///< what is half typed of a run was changed here, or recorded

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    bool event(QEvent* event) override;

private:
    void refresh();
    void arrange();
    void placeEntry();
    void applyLook();
    [[nodiscard]] QRect cell(int place) const;
    [[nodiscard]] int footHeight() const;
    void paintClock(QPainter& painter, const QRect& room) const;

    Document& document_;
    Reminders& reminders_;
    Settings& settings_;
    Dimming dimming_;
    Palette colours_;
    QTimer minute_timer_;
    std::vector<DisplayCard*> cards_;
    DisplayEntry* entry_;
    QString done_words_;
    int done_at_ = -1; ///< index of the undo stack
};

} // namespace ullage
