// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/comparison_presenter.h"

#include "chart_content/comparison_overlays.h"
#include "comparison/specimens.h"
#include "formats/results/comparison_columns.h"
#include "formats/results/comparison_table.h"
#include "model/tags.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr std::size_t most_paired = 40;  ///< units; a larger matrix can no longer be read
constexpr std::size_t most_at_once = 40; ///< units compared while the window waits; that takes less than a blink

/// What a load that is switched consists of would push the buttons out of the line.
QString without_parts(const CommonLoad& load, const QString& in_full) {
    return load.duty < 1 ? in_full.left(in_full.lastIndexOf(QLatin1String(" ("))) : in_full;
}

} // namespace

QStringList ComparisonPresenter::logbookPaths() const {
    QStringList paths;
    for (const OtherLogbook& other : comparer_.logbooks()) paths << other.path;
    return paths;
}

QStringList ComparisonPresenter::logbookErrors() const {
    QStringList errors;
    for (const OtherLogbook& other : comparer_.logbooks())
        if (!other.error.isEmpty()) errors << other.error;
    return errors;
}

ComparisonPresenter::Progress ComparisonPresenter::look(CompareRows rows) {
    const std::size_t waiting = comparer_.waitingUnits(rows);
    waiting_ = static_cast<int>(waiting);
    complete_ = waiting <= most_at_once;
    if (complete_) stopped_ = false;
    if (complete_) return Progress::complete;
    return stopped_ && !comparer_.isWorking() ? Progress::stopped : Progress::working;
}

void ComparisonPresenter::compare(CompareRows rows) {
    rows_ = rows;
    comparison_ = comparer_.comparison(rows);
}

void ComparisonPresenter::clear() { comparison_ = {}; }

std::vector<std::string> ComparisonPresenter::tags() const {
    std::vector<std::string> tags;
    for (const ComparisonRow& row : comparison_.rows) tags.insert(tags.end(), row.unit.tags.begin(), row.unit.tags.end());
    return sorted_tags(std::move(tags));
}

void ComparisonPresenter::choose(const std::function<bool(const Unit&)>& wants, const std::optional<CommonLoad>& load, const ExpectationBand& band) {
    fair_ = compare_at(comparison_, load);
    put_ranks(comparison_, fair_);
    if (!std::ranges::all_of(comparison_.rows, wants, &ComparisonRow::unit)) keep_ranked_units(comparison_, fair_, wants);
    answer_ = comparison_answer(comparison_, fair_);
    band_ = band;
    paired_ = fair_order(fair_);
    paired_.resize(std::min(paired_.size(), most_paired));
    std::ranges::sort(paired_); // as in the table
}

std::vector<RowTarget> ComparisonPresenter::targets() const {
    std::vector<RowTarget> targets;
    targets.reserve(comparison_.rows.size());
    for (const ComparisonRow& row : comparison_.rows) {
        if (document_.run(row.run.uuid)) targets.push_back({row.run.uuid, {}});
        else targets.push_back({{}, tr("This run is in %1; open that logbook to see it.").arg(text_of(row.source))});
    }
    return targets;
}

QString ComparisonPresenter::about() const {
    int drains = 0;
    UnitId last_unit;
    int units = 0;
    for (const ComparisonRow& row : comparison_.rows) {
        if (row.unit.uuid == last_unit) continue;
        last_unit = row.unit.uuid;
        ++units;
        drains += row.drains;
    }
    if (units == 0) return tr("no drains to show");
    const QString where = fair_.load ? tr("at %1").arg(without_parts(*fair_.load, loadInFull())) : tr("as tested");
    return tr("%1 units, %2 drains, %3").arg(units).arg(drains).arg(where);
}

QString ComparisonPresenter::loadInFull() const { return fair_.load ? text_of(common_load_text(*fair_.load)) : QString(); }

QString ComparisonPresenter::remarks() {
    QString remarks;
    for (const auto* list : {&fair_.remarks, &comparison_.remarks})
        for (const Message& remark : *list) remarks += text_of(remark) + QStringLiteral("\n");
    for (const Message& notice : comparer_.notices()) remarks += text_of(notice) + QStringLiteral("\n");
    for (const Message& left_out : comparison_.left_out) remarks += tr("Left out: %1\n").arg(text_of(left_out));
    return remarks.trimmed();
}

QString ComparisonPresenter::pairsNote() const {
    const std::size_t rows = comparison_.rows.size();
    if (rows <= most_paired) return {};
    return tr("Of %1 rows the %2 with the largest usable fraction; filter to see others.").arg(rows).arg(most_paired);
}

VesselRowContent ComparisonPresenter::vessels() const { return comparison_vessels(comparison_, fair_, band_); }

BarContent ComparisonPresenter::bars() const { return comparison_bars(comparison_, fair_, band_); }

ChartContent ComparisonPresenter::fractions() const { return fraction_overlay(comparison_, fair_); }

ChartContent ComparisonPresenter::gaugeErrors() {
    return gauge_error_overlay(comparison_, [this](const RunId& run_uuid) -> const RunAnalysis& { return comparer_.analysis(run_uuid); });
}

Table ComparisonPresenter::table() const { return comparison_table(comparison_, fair_); }

ShownPairs ComparisonPresenter::pairs(PairFigure figure) const {
    const std::vector<Message> names = row_names(comparison_);
    ShownPairs shown;
    for (const std::size_t row : paired_) shown.names.push_back(names[row]);
    shown.verdicts = compare_pairs(comparison_, fair_, paired_, figure);
    return shown;
}

Table ComparisonPresenter::pairsTable(PairFigure figure) const {
    return comparison_.rows.size() <= most_exported_paired ? pairs_table(comparison_, fair_, figure)
                                                           : pairs_table(comparison_, fair_, paired_, figure);
}

bool ComparisonPresenter::hasModels() const {
    return std::ranges::any_of(comparison_.rows, [](const ComparisonRow& row) { return !row.unit.model.empty(); });
}

Table ComparisonPresenter::modelsTable() const { return models_table(comparison_, fair_); }

QStringList ComparisonPresenter::modelSentences() const {
    QStringList sentences;
    for (const ModelSample& sample : model_samples(comparison_, fair_)) sentences << text_of(sample.sentence);
    return sentences;
}

void ComparisonPresenter::setColumns(std::vector<std::string> keys) {
    columns_ = keys.empty() ? ready_columns(readers_set).value() : std::move(keys);
}

std::vector<std::string> ComparisonPresenter::shownColumns(const Table& table) const {
    std::vector<std::string> keys = columns_for(table, columns_);
    if (keys.empty()) keys.push_back(table.columns.front().key);
    return keys;
}

void ComparisonPresenter::orderColumns(const Table& table, const std::vector<std::string>& shown) {
    std::vector<std::string> keys = shown;
    for (const std::string& key : columns_) {
        // In sight here, itself or by its like.
        if (!columns_for(table, {key}).empty() || std::ranges::count(keys, key)) continue;
        keys.push_back(key);
    }
    columns_ = std::move(keys);
}

void ComparisonPresenter::showColumn(const Table& table, const std::string& key, bool shown) {
    std::vector<std::string> keys = shownColumns(table);
    if (shown && !std::ranges::count(keys, key)) keys.push_back(key);
    if (!shown && keys.size() > 1) std::erase(keys, key);
    orderColumns(table, keys);
}

} // namespace ullage
