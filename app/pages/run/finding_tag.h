// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/run/findings_items.h"

#include <QWidget>

namespace ullage {

/// The weight of a finding, told by word, shape and colour: fault a triangle, doubt a diamond, note a disc, assumed a bar, not
/// known a ring.
class FindingTag final : public QWidget {
    Q_OBJECT
public:
    explicit FindingTag(FindingItem::Sort sort, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    FindingItem::Sort sort_;
};

} // namespace ullage
