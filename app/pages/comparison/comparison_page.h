// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "formats/tables/table.h"
#include "pages/comparison/comparison_presenter.h"

#include <QWidget>

class QButtonGroup;
class QComboBox;
class QLabel;
class QPushButton;
class QSortFilterProxyModel;
class QTabWidget;
class QTableView;
class QTimer;

namespace ullage {

class AnswerView;
class BarChart;
class ComparingBar;
class ComparisonChoice;
class LateTabs;
class LineChart;
class ModelsView;
class PageHead;
class PairsModel;
class Prompts;
class TableModel;
class TurnSteps;
class VesselRow;

/// The widgets of units side by side, filled with what ComparisonPresenter says: vessels at one height scale, the table with columns of the tester's
/// choice, and as tabs the bars with error bars, which differences are resolved, and curves of several units in one picture. Follows the document
/// while it is in sight; many units are compared in threads of their own, with progress.
class ComparisonPage final : public QWidget {
    Q_OBJECT
public:
    /// `prompts` asks for the file of an export and must outlive the page.
    ComparisonPage(Document& document, Prompts& prompts, QWidget* parent = nullptr);

    /// Brings the page up to date at once where it is in sight, else when it comes in sight.
    void refresh();
    void readOtherLogbooks();
    /// Compares the units of these logbooks too; each that cannot be read is told by error().
    void addLogbooks(const QStringList& paths);
    /// The same from an earlier session, read when the page comes in sight; nothing is chosen by it.
    void setOtherLogbooks(const QStringList& paths);
    /// What the page compares with; its runs may be of other logbooks.
    [[nodiscard]] UnitComparer& comparer() { return presenter_.comparer(); }
    /// Whether what is shown is all there is; while units are still being compared, or stopped, it says so by notice().
    [[nodiscard]] bool isComplete();
    /// Opens the export dialog.
    void exportComparison();
    /// Puts the table as it is shown on the clipboard and says so by notice().
    void copyTable();
    [[nodiscard]] CompareRows rows() const;
    /// Opens the dialog in which columns are chosen; the logbook keeps what comes of it.
    void chooseColumns();
    /// The columns in sight, by key: what every export, copy and report of the page has.
    [[nodiscard]] std::vector<std::string> shownColumns() const;
    /// What is shown now: the units wanted, at one load or as tested, and what is expected of them.
    [[nodiscard]] const Comparison& comparison() const { return presenter_.comparison(); }
    [[nodiscard]] const FairComparison& fair() const { return presenter_.fair(); }
    [[nodiscard]] const ExpectationBand& band() const { return presenter_.band(); }

signals:
    /// Something that the person should know, or that went wrong.
    void notice(const QString& sentence);
    void error(const QString& sentence);
    /// The person has added a logbook or left one out; for setOtherLogbooks().
    void otherLogbooksChosen(const QStringList& paths);
    /// A row was opened: show that run.
    void runAsked(const RunId& runUuid);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void showComparison();
    void settleLoad();
    void tellChosenLogbooks();
    void openRow(int row);
    QWidget* buildHead();
    QWidget* buildVessels();
    void buildTable();
    /// The table with rows and columns in the order shown; `chosen_only` the selected rows, where there are any.
    [[nodiscard]] Table shownTable(bool chosen_only) const;
    QTabWidget* buildTabs();
    QWidget* buildPairs();
    void takeTable(); ///< what the table is to show, and which run each of its rows opens
    void showTable();
    void fitToText(); ///< what is measured by the program, after a change of style or text size; put off until the page is in sight
    void fitColumns();
    void fitWideColumns();
    void fitTableHeight(); ///< few rows are all in sight; the page scrolls rather than they
    void fitPairs();
    void showPairs();
    [[nodiscard]] PairFigure pairFigure() const;
    void showWords();
    void showHeadMenu(const QPoint& place); ///< of the table's heads
    void readColumns();
    void keepColumns(); ///< in the logbook, and shows them
    void columnMoved();

    Document& document_;
    Prompts& prompts_;
    ComparisonPresenter presenter_;
    QStringList other_logbooks_;    ///< to be read when the page comes in sight
    bool stale_ = true;             ///< something has changed while the page was out of sight
    bool unfitted_ = false;         ///< style or text size has changed while the page was out of sight
    bool arranging_ = false;        ///< columns are moved by the program
    Table whole_;                   ///< of which the table in sight has the columns chosen
    std::vector<RowTarget> opened_; ///< by the rows of that table
    bool load_settled_ = false;     ///< the load to begin with has been found, or the person has chosen one
    ComparisonChoice* choice_;
    ComparingBar* comparing_bar_;
    AnswerView* answer_;
    TableModel* model_;
    PairsModel* pairs_model_;
    QSortFilterProxyModel* sorted_;
    PageHead* head_ = nullptr;
    QLabel *about_label_, *remarks_label_, *pairs_label_, *unknown_label_;
    QButtonGroup* rows_group_;
    QPushButton *columns_button_, *copy_button_, *export_button_;
    VesselRow* vessels_;
    QTableView* table_;
    BarChart* bars_;
    QTableView* pairs_;
    QComboBox* figure_combo_; ///< the figure in which units are held against each other
    LineChart *errors_, *fractions_;
    QTabWidget* tabs_ = nullptr;
    LateTabs* late_ = nullptr; ///< fills those tabs
    TurnSteps* steps_;         ///< in which a comparison comes on the page
    ModelsView* models_view_;
    QTimer* refresh_timer_;
};

} // namespace ullage
