// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/budget_view.h"

#include "base/number.h"
#include "models/budget_model.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace ullage {

BudgetView::BudgetView(QWidget* parent) : QWidget(parent), model_(new BudgetModel(this)), view_(new QTableView(this)), sum_label_(new QLabel(this)) {
    setObjectName(QStringLiteral("budgetWidget"));
    view_->setObjectName(QStringLiteral("budgetView"));
    view_->setAccessibleName(tr("Uncertainty budget of the delivered energy"));
    view_->setModel(model_);
    make_table(*view_);
    view_->setSelectionMode(QAbstractItemView::NoSelection);
    view_->setFocusPolicy(Qt::TabFocus);
    view_->setTabKeyNavigation(false);
    view_->setWordWrap(true);
    sum_label_->setObjectName(QStringLiteral("budgetSumLabel"));
    sum_label_->setWordWrap(true);
    sum_label_->setTextFormat(Qt::PlainText);
    sum_label_->setMargin(spacing::grid_px);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(view_, 1);
    column->addWidget(sum_label_);
    fitColumns();
    connect(view_->horizontalHeader(), &QHeaderView::sectionResized, this, &BudgetView::fitRows);
    clear();
}

void BudgetView::fitColumns() {
    set_text_style(*sum_label_, Tone::soft, TextSize::caption);
    QHeaderView* header = view_->horizontalHeader();
    header->setSectionResizeMode(BudgetModel::SourceColumn, QHeaderView::Stretch);
    header->setSectionResizeMode(BudgetModel::CorrelationColumn, QHeaderView::Stretch);
    for (const int column : {BudgetModel::ShapeColumn, BudgetModel::StandardColumn, BudgetModel::ShareColumn})
        header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
}

void BudgetView::fitRows() {
    if (!isVisible()) return; // it is a tab, and measuring wrapped rows takes long
    // A wrapped row's own height leaves no air to the next.
    view_->resizeRowsToContents();
    for (int row = 0; row < model_->rowCount(); ++row) view_->setRowHeight(row, view_->rowHeight(row) + spacing::grid_px + 2);
}

void BudgetView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) {
        make_table(*view_);
        view_->setWordWrap(true);
        fitColumns();
        fitRows();
    }
}

void BudgetView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fitRows();
}

void BudgetView::setEnergy(const EnergyAnalysis& energy) {
    model_->setBudget(energy.budget);
    const Budget& budget = energy.budget;
    QString text;
    if (budget.lines.empty()) {
        text = tr("No budget yet: it needs two readings of the meter's register.");
    } else {
        text = text_of(begin_sentence(say_combined_uncertainty(budget))) + QLatin1Char('.');
        if (budget.half_width_wh)
            text += tr(" 95 % interval: ± %1 Wh").arg(text_of(say_number(*budget.half_width_wh, decimals_for(*budget.half_width_wh))));
        if (!budget.half_width_method.empty())
            text += (budget.half_width_wh ? QStringLiteral(" (%1).") : QStringLiteral(" %1.")).arg(text_of(budget.half_width_method));
    }
    sum_label_->setText(text);
    fitRows();
}

void BudgetView::clear() { setEnergy({}); }

} // namespace ullage
