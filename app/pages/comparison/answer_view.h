// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "comparison/comparison_answer.h"

#include <QScrollArea>

class QLabel;

namespace ullage {

/// What a comparison says before any table: the order, or in its place a caution that stands out, and a sentence for each unit. As high as its
/// sentences up to some lines; of more units the others are a scroll away. Hidden while there is nothing to say.
class AnswerView final : public QScrollArea {
    Q_OBJECT
public:
    explicit AnswerView(QWidget* parent = nullptr);

    void setAnswer(const ComparisonAnswer& answer);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();

    QLabel *chip_, *order_, *units_;
};

} // namespace ullage
