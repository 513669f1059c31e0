// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "chart_content/comparison_pictures.h"
#include "comparison/comparison_answer.h"
#include "comparison/fair_comparison.h"
#include "document/unit_comparer.h"
#include "formats/tables/table.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// Units held against each other, as their matrix shows them.
struct ShownPairs {
    std::vector<std::string> names;    ///< of the rows that are paired
    std::vector<PairVerdict> verdicts; ///< in the order of compare_pairs()
};

/// What opening a row of the comparison leads to: one of the two is empty.
struct RowTarget {
    RunId run_uuid; ///< of the open logbook, to be shown
    QString notice; ///< why the run cannot be shown here
};

/// Turns what the logbooks say of their units into what the comparison page shows, and keeps what is chosen of it: which units, at which load,
/// which columns. Knows no widget. What it returns is of the last compare() and choose().
class ComparisonPresenter {
    Q_DECLARE_TR_FUNCTIONS(ullage::ComparisonPresenter)

public:
    /// The document must outlive it.
    explicit ComparisonPresenter(Document& document) : document_(document), comparer_(document) { setColumns({}); }

    [[nodiscard]] UnitComparer& comparer() { return comparer_; }
    /// The logbooks beside the document's own.
    [[nodiscard]] QStringList logbookPaths() const;
    [[nodiscard]] QStringList logbookErrors() const; ///< why some of them could not be read

    // How far the comparing is.
    enum class Progress { complete, working, stopped };
    /// Looks at what is still to be compared: complete where that takes less than a blink, stopped where the person has stopped it.
    Progress look(CompareRows rows);
    [[nodiscard]] bool isComplete() const { return complete_; } ///< at the last look()
    [[nodiscard]] int waiting() const { return waiting_; }      ///< units still to be compared at the last look()
    void stop() { stopped_ = true; }
    void resume() { stopped_ = false; }

    /// Takes in what all units say: one row for each, or for every drain. choose() must follow.
    void compare(CompareRows rows);
    void clear();                                        ///< no units; choose() must follow
    [[nodiscard]] std::vector<std::string> tags() const; ///< of the units in sight, each once, in order
    /// The load at which most units of compare() meet, to begin with; absent where none is needed or found.
    [[nodiscard]] std::optional<CommonLoad> suggestedLoad() const { return suggested_load(comparison_); }
    /// Keeps the units that are wanted and holds them against each other at a load, or as tested. Their ranks stay those among all units.
    void choose(const std::function<bool(const Unit&)>& wants, const std::optional<CommonLoad>& load, const ExpectationBand& band);

    [[nodiscard]] const Comparison& comparison() const { return comparison_; }
    [[nodiscard]] const FairComparison& fair() const { return fair_; }
    [[nodiscard]] const ExpectationBand& band() const { return band_; }
    [[nodiscard]] bool isEmpty() const { return comparison_.rows.empty(); }
    /// Of each row of comparison().
    [[nodiscard]] std::vector<RowTarget> targets() const;

    // Words.
    [[nodiscard]] const ComparisonAnswer& answer() const { return answer_; }
    [[nodiscard]] QString about() const;      ///< "7 units, 16 drains, at 120 W"
    [[nodiscard]] QString loadInFull() const; ///< what the common load consists of; empty as tested
    [[nodiscard]] QString remarks();          ///< a line each
    [[nodiscard]] QString pairsNote() const;  ///< that not all rows are paired; empty where they are

    // Pictures and tables.
    [[nodiscard]] VesselRowContent vessels() const;
    [[nodiscard]] BarContent bars() const;
    [[nodiscard]] ChartContent fractions() const;
    [[nodiscard]] ChartContent gaugeErrors();
    [[nodiscard]] Table table() const; ///< every row and column
    [[nodiscard]] ShownPairs pairs(PairFigure figure) const;
    [[nodiscard]] bool hasModels() const; ///< some unit names its model
    [[nodiscard]] Table modelsTable() const;
    [[nodiscard]] QStringList modelSentences() const;
    [[nodiscard]] Table pairsTable(PairFigure figure) const; ///< for a file; of all rows where they are not too many

    // Columns of table(), by key (formats/results/comparison_columns.h).
    void setColumns(std::vector<std::string> keys); ///< none: those for readers
    [[nodiscard]] const std::vector<std::string>& columns() const { return columns_; }
    /// The columns chosen as they stand in `table`, from left to right.
    [[nodiscard]] std::vector<std::string> shownColumns(const Table& table) const;
    /// What stands in sight has been put in this order. What is chosen but not there now is kept behind it.
    void orderColumns(const Table& table, const std::vector<std::string>& shown);
    /// Puts a column behind those in sight, or takes it out; the last one stays.
    void showColumn(const Table& table, const std::string& key, bool shown);

private:
    Document& document_;
    UnitComparer comparer_;
    CompareRows rows_ = CompareRows::one_per_unit;
    bool complete_ = true; ///< every unit is compared
    bool stopped_ = false; ///< the person has stopped the comparing
    int waiting_ = 0;
    Comparison comparison_; ///< what is wanted of all
    FairComparison fair_;
    ComparisonAnswer answer_;
    ExpectationBand band_;
    std::vector<std::size_t> paired_; ///< rows that are held against each other
    std::vector<std::string> columns_;
};

} // namespace ullage
