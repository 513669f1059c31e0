// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/models_view.h"

#include "delegates/quantity_delegate.h"
#include "models/table_model.h"
#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace ullage {

ModelsView::ModelsView(QWidget* parent) : QWidget(parent), model_(new TableModel(this)), table_(new QTableView), words_(new QLabel) {
    setObjectName(QStringLiteral("modelsView"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::grid_px, spacing::half_px, 0, 0);
    column->setSpacing(spacing::half_px);
    words_->setObjectName(QStringLiteral("modelsLabel"));
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    set_text_style(*words_, Tone::ink);
    column->addWidget(words_);
    table_->setObjectName(QStringLiteral("modelsTable"));
    table_->setAccessibleName(tr("Models by their specimens"));
    table_->setTabKeyNavigation(false);
    table_->setModel(model_);
    table_->setItemDelegate(new QuantityDelegate(table_));
    make_table(*table_);
    column->addWidget(table_, 1);
}

void ModelsView::setModels(Table table, const QStringList& sentences) {
    model_->setTable(std::move(table));
    words_->setText(sentences.join(QLatin1Char('\n')));
    fit();
}

void ModelsView::fit() { table_->resizeColumnsToContents(); }

void ModelsView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    QTimer::singleShot(0, this, [this] {
        make_table(*table_); // its rows are as high as their text
        fit();
    });
}

} // namespace ullage
