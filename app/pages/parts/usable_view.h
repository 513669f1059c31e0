// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/parts/tested_outcome.h"

#include <QWidget>

class QLabel;

namespace ullage {

/// What a run tests, such as the usable fraction: its outcome in large figures with its name above and the reason below.
class UsableView final : public QWidget {
    Q_OBJECT
public:
    explicit UsableView(QWidget* parent = nullptr);

    void setTested(const TestedOutcome& tested);

protected:
    void changeEvent(QEvent* event) override;

private:
    void applyFonts();

    QLabel *kind_label_, *value_label_, *reason_label_;
};

} // namespace ullage
