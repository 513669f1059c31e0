// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/fair_comparison.h"

#include <QWidget>

#include <optional>

class QButtonGroup;
class QDoubleSpinBox;
class QHBoxLayout;
class QLineEdit;

namespace ullage {

/// The line above a comparison where the tester says at which load units are compared, which of them, and what share of rated energy is
/// commonly expected. Every change is announced at once.
class ComparisonChoice final : public QWidget {
    Q_OBJECT
public:
    explicit ComparisonChoice(QWidget* parent = nullptr);

    /// The common load; absent for "as tested".
    [[nodiscard]] std::optional<CommonLoad> load() const;
    /// Fractions of rated energy between which units commonly lie.
    [[nodiscard]] double bandLower() const;
    [[nodiscard]] double bandUpper() const;
    /// Whether a unit is wanted: every word of the filter stands in its name, maker or remark (in any case), and its rated energy lies within.
    [[nodiscard]] bool wants(const Unit& unit) const;

    void setLoad(const std::optional<CommonLoad>& load);

signals:
    void changed();

private:
    QDoubleSpinBox* addSpin(QHBoxLayout& line, const char* name, const QString& label, const QString& suffix, double low, double high, double value);

    QButtonGroup* way_group_;
    QDoubleSpinBox *load_spin_, *duty_spin_, *least_spin_, *most_spin_, *lower_spin_, *upper_spin_;
    QLineEdit* filter_edit_;
};

} // namespace ullage
