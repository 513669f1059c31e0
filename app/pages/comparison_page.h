// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "exchange/table.h"
#include "fleet/fair_comparison.h"
#include "pages/column_order.h"
#include "pages/comparison_pictures.h"

#include <QWidget>

#include <string>
#include <vector>

class QButtonGroup;
class QLabel;
class QPushButton;
class QSortFilterProxyModel;
class QTabWidget;
class QTableView;

namespace ullage {

class BarChart;
class ComparisonChoice;
class LineChart;
class PageHead;
class PairsModel;
class Prompts;
class TableModel;
class VesselRow;

/// Units side by side, as tested or at one load: vessels at one height scale, the table with columns of the tester's choice, and as tabs the
/// bars with error bars, which differences are resolved, and curves of several units in one picture. Follows the document.
class ComparisonPage final : public QWidget {
    Q_OBJECT
public:
    /// `prompts` asks for the file of an export and must outlive the page.
    ComparisonPage(Document& document, Prompts& prompts, QWidget* parent = nullptr);

    void refresh();
    /// Opens the export dialog.
    void exportComparison();
    /// Puts the whole table, in the order shown, on the clipboard and says so by told().
    void copyTable();
    [[nodiscard]] CompareRows rows() const;
    /// Columns chosen and ordered before, as columnsChosen() told them.
    void setColumns(const QString& choice);
    /// What is shown now: the units wanted, at one load or as tested, and what is expected of them.
    [[nodiscard]] const Comparison& comparison() const { return comparison_; }
    [[nodiscard]] const FairComparison& fair() const { return fair_; }
    [[nodiscard]] ExpectationBand band() const;

signals:
    /// Something that the person should be told.
    void told(const QString& sentence);
    /// The person has chosen or moved columns; the text is for setColumns().
    void columnsChosen(const QString& choice);
    /// A row was opened: show that run.
    void runRequested(const QString& runUuid);

private:
    void build();
    QWidget* buildHead();
    QWidget* buildVessels();
    void buildTable();
    /// The table with rows and columns in the order shown, hidden columns too; `chosen_only` the selected rows, where there are any.
    [[nodiscard]] Table shownTable(bool chosen_only) const;
    QTabWidget* buildTabs();
    void showTable();
    void showPictures();
    void showWords();
    void chooseColumns(const QPoint& place); ///< the menu of the table's heads
    void arrangeColumns();
    void columnMoved();
    [[nodiscard]] std::vector<std::string> columnsInOrder() const;
    [[nodiscard]] bool isColumnHidden(const std::string& key) const;

    Document& document_;
    Prompts& prompts_;
    Comparison comparison_; ///< what is wanted of the document's
    FairComparison fair_;
    ColumnChoice columns_chosen_;
    bool arranging_ = false; ///< columns are moved by the program
    ComparisonChoice* choice_;
    TableModel* model_;
    PairsModel* pairs_model_;
    QSortFilterProxyModel* sorted_;
    PageHead* head_ = nullptr;
    QLabel *about_label_, *remarks_label_;
    QButtonGroup* rows_group_;
    QPushButton *copy_button_, *export_button_;
    VesselRow* vessels_;
    QTableView* table_;
    BarChart* bars_;
    QTableView* pairs_;
    LineChart *errors_, *fractions_;
};

} // namespace ullage
