// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/run_analysis.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace ullage {

class BudgetModel;

/// The uncertainty budget as a table, and below it the combined uncertainty with the way it was formed.
class BudgetView final : public QWidget {
    Q_OBJECT
public:
    explicit BudgetView(QWidget* parent = nullptr);

    void setEnergy(const EnergyAnalysis& energy);
    void clear();

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void fitColumns();
    void fitRows();

    BudgetModel* model_;
    QTableView* view_;
    QLabel* sum_label_;
};

} // namespace ullage
