// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"

#include <QWidget>

class QLabel;

namespace ullage {

/// The usable fraction in large figures with its kind above and the reason below.
class UsableView final : public QWidget {
    Q_OBJECT
public:
    explicit UsableView(QWidget* parent = nullptr);

    void setFraction(const Quantity& fraction);
    /// For a run that tests another claim: what it tests, what came of it, the sentence that says so, and more for a tool tip.
    void setTested(const QString& what, const QString& outcome, const QString& sentence, const QString& details = {});

protected:
    void changeEvent(QEvent* event) override;

private:
    void applyFonts();

    QLabel *kind_label_, *value_label_, *reason_label_;
};

} // namespace ullage
