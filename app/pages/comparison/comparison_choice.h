// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "comparison/fair_comparison.h"
#include "model/load_list.h"

#include <QWidget>

#include <optional>
#include <string>
#include <utility>
#include <vector>

class QButtonGroup;
class QComboBox;
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

    /// The common load, that of the chosen load list with its name; absent for "as tested".
    [[nodiscard]] std::optional<CommonLoad> load() const;
    /// Fractions of rated energy between which units commonly lie.
    [[nodiscard]] double bandLower() const;
    [[nodiscard]] double bandUpper() const;
    /// Whether a unit is wanted: every word of the filter stands in its name, maker or remark (in any case), it
    /// has the tag chosen, and its rated energy lies within.
    [[nodiscard]] bool wants(const Unit& unit) const;

    /// The tags that units have, to choose one of; the choice stays while it is among them.
    void setTags(const std::vector<std::string>& tags);
    /// The load lists to choose from; the choice stays while its list is among them and takes anything.
    void setLoadLists(const std::vector<LoadList>& lists);
    void setLoad(const std::optional<CommonLoad>& load);

signals:
    void changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    static void fit(QDoubleSpinBox& spin);
    QDoubleSpinBox* addSpin(QHBoxLayout& line, const char* name, const QString& label, const QString& suffix, double low, double high, double value);

    void showWay();

    QButtonGroup* way_group_;
    std::vector<std::pair<LoadListId, CommonLoad>> list_loads_; ///< in the order of list_combo_
    std::vector<QWidget*> load_parts_;                          ///< fields and words of the load that is typed
    QComboBox* list_combo_;
    QDoubleSpinBox *load_spin_, *duty_spin_, *least_spin_, *most_spin_, *lower_spin_, *upper_spin_;
    QLineEdit* filter_edit_;
    QComboBox* tag_combo_;
};

} // namespace ullage
