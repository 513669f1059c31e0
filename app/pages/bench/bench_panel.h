// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/parts/result_strip.h"

#include <QFrame>

#include <vector>

class QLabel;
class QPushButton;

namespace ullage {

/// What the bench page shows of one running test.
struct BenchEntry {
    QString run_uuid;
    QString unit, about; ///< "Osk 1200", "drain, 14 May, socket meter A"
    QString keys;        ///< "Ctrl+1"; empty beyond the ninth
    std::vector<StripFigure> figures;
    QString due;           ///< "in 12 min", "overdue 3 min", or why nothing is due
    bool asked = false;    ///< there is a reminder
    bool counting = false; ///< there is a moment to count down to
    bool overdue = false;
};

/// One running test: its figures, when its next reading is due, and the way to it. An overdue one says so in a word on a chip with a
/// triangle and carries a thick edge, besides the colour.
class BenchPanel final : public QFrame {
    Q_OBJECT
public:
    explicit BenchPanel(QWidget* parent = nullptr);

    void setEntry(const BenchEntry& entry);
    [[nodiscard]] const BenchEntry& entry() const { return entry_; }
    /// Width in which its cells have room, pixels; grows with the text.
    [[nodiscard]] static int comfortableWidth();

signals:
    void readingAsked(const QString& runUuid);
    void ruleAsked(const QString& runUuid);
    void snoozeAsked(const QString& runUuid, int minutes);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    BenchEntry entry_;
    QLabel *unit_label_, *about_label_, *due_label_, *keys_label_;
    ResultStrip* strip_;
    QPushButton *read_button_, *rule_button_, *snooze_button_;
};

} // namespace ullage
