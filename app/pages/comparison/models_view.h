// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace ullage {

class TableModel;

/// Units of one model as a sample of that model: the table that `compare --by-model` prints, with a sentence for each model.
class ModelsView final : public QWidget {
    Q_OBJECT
public:
    explicit ModelsView(QWidget* parent = nullptr);

    /// Shows models_table() and below it what is said of each model.
    void setModels(Table table, const QStringList& sentences);

protected:
    void changeEvent(QEvent* event) override;

private:
    void fit();

    TableModel* model_;
    QTableView* table_;
    QLabel* words_;
};

} // namespace ullage
