// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logbook_tree_model.h"

#include "base/number.h"
#include "style/words.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <utility>
#include <vector>

namespace ullage {

namespace {

constexpr int month_letters = 3;

} // namespace

struct LogbookTreeModel::Node {
    Row kind = Row::section;
    std::string uuid; ///< of the record that `kind` says, so a text; of a hint the action that it offers
    QString text;     ///< of sections and hints; the others are named by the document
    const Node* parent = nullptr;
    int row = 0;
    std::vector<std::unique_ptr<Node>> children;

    Node& add(Row child_kind, std::string child_uuid, const QString& child_text = {}) {
        auto child = std::make_unique<Node>();
        child->kind = child_kind;
        child->uuid = std::move(child_uuid);
        child->text = child_text;
        child->parent = this;
        child->row = static_cast<int>(children.size());
        children.push_back(std::move(child));
        return *children.back();
    }

    [[nodiscard]] const Node* find(Row wanted, const std::string& wanted_uuid) const {
        if (kind == wanted && uuid == wanted_uuid) return this;
        for (const auto& child : children)
            if (const auto* found = child->find(wanted, wanted_uuid)) return found;
        return nullptr;
    }
};

LogbookTreeModel::LogbookTreeModel(const Document& document, QObject* parent)
    : QAbstractItemModel(parent), document_(document), root_(makeTree(document)) {
    findYears();
    connect(&document, &Document::opened, this, &LogbookTreeModel::rebuild);
    connect(&document, &Document::closed, this, &LogbookTreeModel::rebuild);
    connect(&document, &Document::unitsChanged, this, &LogbookTreeModel::rebuild);
    connect(&document, &Document::metersChanged, this, &LogbookTreeModel::rebuild);
    connect(&document, &Document::loadListsChanged, this, &LogbookTreeModel::rebuild);
    connect(&document, &Document::runsChanged, this, &LogbookTreeModel::rebuild);
    connect(&document, &Document::readingsChanged, this, &LogbookTreeModel::runChanged);
}

LogbookTreeModel::~LogbookTreeModel() = default;

std::unique_ptr<LogbookTreeModel::Node> LogbookTreeModel::makeTree(const Document& document) {
    auto root = std::make_unique<Node>();
    if (!document.isOpen()) return root;
    root->add(Row::bench, {});
    auto& units = root->add(Row::section, {}, tr("Units"));
    for (const auto& unit : document.units()) {
        auto& node = units.add(Row::unit, unit.uuid.text());
        for (const auto* record : document.runs(unit.uuid)) node.add(Row::run, record->run.uuid.text());
    }
    if (document.units().empty()) units.add(Row::hint, "addUnitAction", tr("None yet: add a unit"));
    auto& meters = root->add(Row::section, {}, tr("Meters"));
    for (const auto& meter : document.meters()) meters.add(Row::meter, meter.uuid.text());
    if (document.meters().empty()) meters.add(Row::hint, "addMeterAction", tr("None yet: add a meter"));
    auto& lists = root->add(Row::section, {}, tr("Load lists"));
    for (const auto& list : document.loadLists()) lists.add(Row::load_list, list.uuid.text());
    if (document.loadLists().empty()) lists.add(Row::hint, "addLoadListAction", tr("None yet: add a load list"));
    auto& across = root->add(Row::section, {}, tr("Across units"));
    across.add(Row::comparison, {});
    across.add(Row::sizing, {});
    across.add(Row::pv_input, {});
    return root;
}

void LogbookTreeModel::findYears() {
    std::optional<int> first_year;
    several_years_ = false;
    for (const RunRecord* record : document_.runs()) {
        if (record->readings.empty()) continue;
        const int year = to_local(record->readings.front().values.time_ms, record->run.time_zone).year;
        several_years_ = several_years_ || (first_year && *first_year != year);
        first_year = year;
    }
}

void LogbookTreeModel::rebuild() {
    beginResetModel();
    root_ = makeTree(document_);
    findYears();
    endResetModel();
}

void LogbookTreeModel::runChanged(const RunId& run_uuid) {
    const auto index = indexOf(Row::run, run_uuid.text());
    if (!index.isValid()) return;
    emit dataChanged(index, index);
    emit dataChanged(index.parent(), index.parent()); // the unit's vessel
}

void LogbookTreeModel::setOverdue(const std::set<RunId>& run_uuids) {
    std::vector<RunId> changed;
    std::ranges::set_symmetric_difference(run_uuids, overdue_, std::back_inserter(changed));
    overdue_ = run_uuids;
    for (const RunId& uuid : changed)
        if (const auto index = indexOf(Row::run, uuid.text()); index.isValid()) emit dataChanged(index, index, {OverdueRole});
}

const LogbookTreeModel::Node* LogbookTreeModel::nodeAt(const QModelIndex& index) const {
    return index.isValid() ? static_cast<const Node*>(index.constInternalPointer()) : root_.get();
}

QModelIndex LogbookTreeModel::indexOf(const Node& node) const {
    return &node == root_.get() ? QModelIndex() : createIndex(node.row, 0, const_cast<Node*>(&node));
}

QModelIndex LogbookTreeModel::index(int row, int column, const QModelIndex& parent) const {
    if (column != 0 || row < 0 || row >= rowCount(parent)) return {};
    return indexOf(*nodeAt(parent)->children[static_cast<std::size_t>(row)]);
}

QModelIndex LogbookTreeModel::parent(const QModelIndex& child) const {
    const auto* above = nodeAt(child)->parent;
    return above ? indexOf(*above) : QModelIndex();
}

int LogbookTreeModel::rowCount(const QModelIndex& parent) const {
    if (parent.column() > 0) return 0;
    return static_cast<int>(nodeAt(parent)->children.size());
}

int LogbookTreeModel::columnCount(const QModelIndex&) const { return 1; }

Qt::ItemFlags LogbookTreeModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    switch (rowKind(index)) {
    case Row::section: return Qt::ItemIsEnabled;
    default: return Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    }
}

LogbookTreeModel::Row LogbookTreeModel::rowKind(const QModelIndex& index) const { return nodeAt(index)->kind; }

QModelIndex LogbookTreeModel::indexOf(Row kind, const std::string& uuid) const {
    const auto* found = root_->find(kind, uuid);
    return found ? indexOf(*found) : QModelIndex();
}

bool LogbookTreeModel::waitsForAnalysis(const UnitId& unit_uuid) const {
    return document_.readingsToAnalyse({unit_uuid}, true) > Document::most_analysed_at_once;
}

QString LogbookTreeModel::runTitle(const RunRecord& record, const EnergyAnalysis& energy) const {
    QString title = text_of(run_title(record, energy));
    const QString day = text_of(day_text(energy.start_ms, record.run.time_zone));
    const auto at = title.indexOf(day);
    if (energy.start_ms == 0 || at < 0) return title;
    // The pane is narrow: "29 Nov".
    QString shown = day.left(day.lastIndexOf(QLatin1Char(' ')) + 1 + month_letters);
    if (several_years_) shown += QStringLiteral(" %1").arg(to_local(energy.start_ms, record.run.time_zone).year);
    return title.replace(at, day.size(), shown);
}

QString LogbookTreeModel::title(const Node& node) const {
    switch (node.kind) {
    case Row::section:
    case Row::hint: return node.text;
    case Row::comparison: return tr("Comparison");
    case Row::bench: return tr("Running tests");
    case Row::pv_input: return tr("PV input");
    case Row::sizing: return tr("Sizing");
    case Row::unit: {
        const auto* unit = document_.unit(UnitId(node.uuid));
        return unit ? text_of(unit->name) : QString();
    }
    case Row::run: {
        const auto* record = document_.run(RunId(node.uuid));
        if (!record) return {};
        if (!waitsForAnalysis(record->unit.uuid)) return runTitle(*record, *document_.casebook().energy(record->run.uuid));
        EnergyAnalysis day_alone;
        const auto first = std::ranges::find(record->readings, false, &Reading::withdrawn);
        if (first != record->readings.end()) day_alone.start_ms = first->values.time_ms;
        return runTitle(*record, day_alone);
    }
    case Row::load_list: {
        const auto* list = document_.loadList(LoadListId(node.uuid));
        return list ? text_of(list->name) : QString();
    }
    case Row::meter: {
        const auto* meter = document_.meter(MeterId(node.uuid));
        if (!meter) return {};
        const auto name = text_of(meter->name);
        if (!meter->points.empty()) return tr("%1, as calibrated").arg(name);
        if (!meter->limit_percent) return name;
        return tr("%1, ±%2 %").arg(name, text_of(say_digits(exact_text(*meter->limit_percent))));
    }
    }
    return {};
}

QString LogbookTreeModel::toolTip(const Node& node) const {
    if (node.kind != Row::run) return title(node);
    const auto* record = document_.run(RunId(node.uuid));
    if (!record) return {};
    return tr("%1, %2: %3").arg(text_of(record->unit.name), title(node), text_of(say_run_end(record->run.end)));
}

std::optional<double> LogbookTreeModel::filledWh(const UnitId& unit_uuid) const {
    for (const auto* record : document_.runs(unit_uuid)) {
        if (record->run.end != RunEnd::still_running || !record->unit.rated_energy_wh) continue;
        if (const auto shown = last_shown_percent(*record)) return *record->unit.rated_energy_wh * *shown / 100;
    }
    if (waitsForAnalysis(unit_uuid)) return {};
    // The run that says most: a measured usable fraction before others, then the later one.
    std::optional<double> delivered;
    bool measured = false;
    for (const auto* record : document_.runs(unit_uuid)) {
        if (record->run.kind != RunKind::drain) continue;
        const auto energy = document_.casebook().energy(record->run.uuid);
        const bool this_measured = energy->usable_fraction.kind == Kind::measured;
        if (!energy->delivered_wh.value || (measured && !this_measured)) continue;
        delivered = energy->delivered_wh.value;
        measured = this_measured;
    }
    return delivered;
}

QVariant LogbookTreeModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto& node = *nodeAt(index);
    switch (role) {
    case Qt::DisplayRole: return title(node);
    case Qt::ToolTipRole: return toolTip(node);
    case Qt::AccessibleTextRole: {
        const bool open = data(index, OpenRole).toBool();
        if (open && data(index, OverdueRole).toBool()) return tr("%1, running, reading overdue").arg(title(node));
        return open ? tr("%1, running").arg(title(node)) : title(node);
    }
    case RowRole: return static_cast<int>(node.kind);
    case UuidRole: return raw_text(node.uuid);
    case OpenRole: {
        const auto* record = node.kind == Row::run ? document_.run(RunId(node.uuid)) : nullptr;
        return record && record->run.end == RunEnd::still_running;
    }
    case OverdueRole: return node.kind == Row::run && overdue_.contains(RunId(node.uuid));
    case RatedRole: {
        const auto* unit = node.kind == Row::unit ? document_.unit(UnitId(node.uuid)) : nullptr;
        return unit && unit->rated_energy_wh ? QVariant(*unit->rated_energy_wh) : QVariant();
    }
    case FilledRole: {
        const auto delivered = node.kind == Row::unit ? filledWh(UnitId(node.uuid)) : std::nullopt;
        return delivered ? QVariant(*delivered) : QVariant();
    }
    default: return {};
    }
}

} // namespace ullage
