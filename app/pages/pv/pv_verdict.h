// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pv/pv_check.h"

#include <QFrame>

class QLabel;

namespace ullage {

/// The verdict on a PV string, told by words, shape and colour alike: an octagon with a bar on the ground of a fault for too much voltage or
/// short-circuit current, a triangle where it is too close to call, too low, not known or for the maker to say, a half-filled disc for clipping, a
/// tick for a string that fits.
class PvVerdictView final : public QFrame {
    Q_OBJECT
public:
    explicit PvVerdictView(QWidget* parent = nullptr);

    void setCheck(const PvCheck& check);
    /// While the fields cannot be read.
    void setUnreadable();
    [[nodiscard]] PvVerdict verdict() const { return verdict_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void showVerdict(PvVerdict verdict, const QString& title, const QString& sentence);
    void applyTones();

    PvVerdict verdict_ = PvVerdict::not_known;
    QLabel *title_, *sentence_, *suggestion_;
};

} // namespace ullage
