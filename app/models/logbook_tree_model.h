// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QAbstractItemModel>

#include <memory>
#include <optional>
#include <set>
#include <string>

namespace ullage {

/// The logbook as a tree of one column: the running tests, a section of units with their runs, one of meters, one of load lists, and one of pages
/// that span units. A section without entries holds a hint that says what to do. Follows the document: changes in what there is reset the model; new
/// readings only change the run's row.
class LogbookTreeModel final : public QAbstractItemModel {
    Q_OBJECT
public:
    enum class Row { section, unit, run, meter, comparison, hint, bench, pv_input, load_list, sizing };
    enum Role {
        RowRole = Qt::UserRole + 1, ///< int, a Row
        UuidRole,                   ///< QString of unit, run, meter or load list; of a hint the action that it offers; empty in other rows
        OpenRole,                   ///< bool: a run that is still running
        RatedRole,                  ///< double Wh, of a unit that states it
        OverdueRole,                ///< bool: a run whose next reading is overdue
        /// double Wh: up to where the unit's vessel is filled. While a test of it runs that is what its gauge last showed of the label, as on the
        /// unit itself; else what the run that says most delivered. Invalid where neither is known.
        FilledRole,
    };

    explicit LogbookTreeModel(const Document& document, QObject* parent = nullptr);
    ~LogbookTreeModel() override;

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& child) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

    [[nodiscard]] Row rowKind(const QModelIndex& index) const;
    /// Where a unit, run, meter or load list stands; invalid when it does not. Rows are of many kinds, and `kind` says of which the text is.
    [[nodiscard]] QModelIndex indexOf(Row kind, const std::string& uuid = {}) const;

    /// The runs whose next reading is overdue.
    void setOverdue(const std::set<RunId>& run_uuids);

private:
    struct Node;
    [[nodiscard]] static std::unique_ptr<Node> makeTree(const Document& document);
    [[nodiscard]] const Node* nodeAt(const QModelIndex& index) const;
    [[nodiscard]] QModelIndex indexOf(const Node& node) const;
    [[nodiscard]] QString title(const Node& node) const;
    [[nodiscard]] QString runTitle(const RunRecord& record, const EnergyAnalysis& energy) const; ///< short, with its year where they differ
    void findYears();
    [[nodiscard]] QString toolTip(const Node& node) const;
    /// Its runs are so long that painting must not begin to analyse them; that is done when the unit is shown.
    [[nodiscard]] bool waitsForAnalysis(const UnitId& unit_uuid) const;
    [[nodiscard]] std::optional<double> filledWh(const UnitId& unit_uuid) const;
    void rebuild();
    void runChanged(const RunId& run_uuid);

    const Document& document_;
    std::unique_ptr<Node> root_;
    std::set<RunId> overdue_;
    bool several_years_ = false; ///< the runs are not all of one year
};

} // namespace ullage
