// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/bench/bench_facts.h"
#include "pages/bench/big_figures.h"
#include "pages/parts/result_strip.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace ullage {

/// One running test: its figures (gauge and energy large where the panel has room), when its next reading is due, and the way to it. An overdue one
/// says so in a word on a chip with a triangle and carries a thick edge, besides the colour.
class BenchPanel final : public QFrame {
    Q_OBJECT
public:
    explicit BenchPanel(QWidget* parent = nullptr);

    void setEntry(const BenchEntry& entry);
    [[nodiscard]] const BenchEntry& entry() const { return entry_; }
    /// Width in which its cells have room, pixels; grows with the text.
    [[nodiscard]] static int comfortableWidth();

signals:
    void readingAsked(const RunId& runUuid);
    void ruleAsked(const RunId& runUuid);
    void snoozeAsked(const RunId& runUuid, int minutes);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void showFigures();

    BenchEntry entry_;
    QLabel *unit_label_, *about_label_, *due_label_, *keys_label_;
    BigFiguresView* face_;
    ResultStrip* strip_;
    QPushButton *read_button_, *rule_button_, *snooze_button_;
};

} // namespace ullage
