// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/ids.h"
#include "run_analysis/run_analysis.h"
#include "unit/between_runs.h"

#include <atomic>
#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace ullage {

/// Which runs stand in a comparison.
enum class CompareRows {
    /// The mean of the drains from full to cut-off at like loads (repeat_means); where none was repeated the run that says most: measured with the
    /// cut-off seen, measured and found off, `at least`, projected; then the latest.
    one_per_unit,
    every_drain, ///< each drain of each unit
};

/// One line of a comparison, "as tested".
struct ComparisonRow {
    Unit unit;
    Run run;
    int run_number = 1;
    int drains = 1;         ///< drains of the unit that are in the logbook
    Message run_title;      ///< of the drain, or "mean of 3 drains"
    std::string source;     ///< where it was read from, see name_sources
    std::string meter_name; ///< empty without a meter
    Quantity rated_wh;      ///< "rated_wh", a claim: no interval
    Quantity delivered_wh, usable_fraction, mean_load_w, duration_h, wh_per_gauge_point;
    bool through_curve = false; ///< the fraction is projected through the gauge curve of an earlier run, not by an accurate gauge
    Quantity price_per_rated_kwh, price_per_delivered_kwh; ///< list price, in the unit's currency per kWh
    Quantity paid_per_rated_kwh, paid_per_delivered_kwh;   ///< the same of what was paid
    Quantity wh_per_kg;                                    ///< delivered
    Message gauge_verdict;
    Quantity no_load_draw_w; ///< "no_load_draw_w" from all drains of the unit together (fit_unit)
    std::size_t fit = 0;     ///< index into Comparison::fits
    /// What the unit's other runs say, see check_claims(): not known, with the reason, where none tests it. Intervals as there.
    Quantity charge_time_h, round_trip_efficiency, held_output_w, held_peak_output_w, standby_draw_w;
    std::optional<double> no_load_taken_wh; ///< for the vessel: that draw over this run; absent while not knowable
    /// What the row's energy is the mean of, where it is of drains from full to cut-off: of one that stands alone, or of repeats. `run` is then the
    /// latest of them.
    std::optional<RepeatMean> mean{};
    Quantity repeats{};                           ///< "repeats": how many drains that are
    std::optional<double> worst_gauge_error_pt{}; ///< GaugeAnalysis::worst_error_pt of the run that the verdict is of
    Quantity scatter_percent{}; ///< "scatter_percent": experimental standard deviation of one of them; not known of a drain that stands alone
};

/// Rows for the records of one or several logbooks, in order of unit name and run. Units without a drain are named in `left_out`
/// with the reason.
struct Comparison {
    std::vector<ComparisonRow> rows;
    std::vector<UnitFit> fits; ///< what all drains of a unit say together, one for each unit with a drain
    std::vector<Message> left_out;
    std::vector<Message> remarks; ///< what must be said with the table: loads differ, meters differ
    bool several_sources = false; ///< runs of more than one logbook, or of logbooks and run sheets, see name_sources
};

/// The records by unit (uuid), in order of first appearance.
[[nodiscard]] std::vector<UnitRuns> runs_by_unit(const std::vector<RunRecord>& records);
[[nodiscard]] std::vector<UnitRuns> runs_by_unit(const std::vector<const RunRecord*>& records);

/// What one unit brings into a comparison. Rests on its own runs alone, so that it can be kept while other units change.
struct ComparedUnit {
    Unit unit;
    std::optional<UnitFit> fit;      ///< of all its runs; absent without a drain
    std::vector<ComparisonRow> rows; ///< none without a drain; `fit` of each is for join_units to fill
};

/// Compares the runs of one unit: the energy of each once, their fit, and the gauge of those that get a row. Precondition: at least one run.
[[nodiscard]] ComparedUnit compare_unit(const UnitRuns& runs, CompareRows rows, const MeasureOptions& options = {});

/// compare_unit for each, in the same order, on all processors at once. The result does not depend on their number. `done`, where given,
/// counts units for whoever waits. Absent: units that were not yet begun when `stop` was asked for.
[[nodiscard]] std::vector<std::optional<ComparedUnit>> compare_units(const std::vector<UnitRuns>& units, CompareRows rows,
                                                                     const MeasureOptions& options = {}, const std::stop_token& stop = {},
                                                                     std::atomic<std::size_t>* done = nullptr);

/// One comparison from what its units bring, in order of their names.
[[nodiscard]] Comparison join_units(std::vector<const ComparedUnit*> units);

/// Leaves out the rows of other units; the remarks are then those of the rows that stay. Ranks are then those of the units that are left; to keep
/// those among all units see keep_ranked_units().
void keep_units(Comparison& comparison, const std::function<bool(const Unit&)>& wanted);

/// Says from which source each row comes: of its run or, for a row that stands for its unit, of all runs of the unit. `source_of`: names by
/// run uuid (JoinedRecords::source_of); where it is empty nothing is said.
void name_sources(Comparison& comparison, CompareRows rows, const std::map<RunId, std::string>& source_of);

/// What tells the rows apart: "Osk 1200", or "Osk 1200, drain 14 May, 64 W" where several rows are of that unit.
[[nodiscard]] std::vector<Message> row_names(const Comparison& comparison);

/// List price / energy with the interval that the energy's interval gives, in the unit's currency per kWh; a price is a fact without uncertainty.
/// `not known`: no price, no energy, or energy that is only `at least` (the reason then says "at most …").
[[nodiscard]] Quantity price_per_kwh(std::string key, const Unit& unit, const Quantity& energy_wh);
/// The same with what was paid for the unit.
[[nodiscard]] Quantity paid_per_kwh(std::string key, const Unit& unit, const Quantity& energy_wh);

/// energy / mass, "wh_per_kg"; `not known` without a stated mass or without energy.
[[nodiscard]] Quantity energy_per_kg(const Unit& unit, const Quantity& energy_wh);

/// The comparison of all units that the records are of. Errors: none; what cannot be known says so.
[[nodiscard]] Comparison compare_as_tested(const std::vector<const RunRecord*>& records, CompareRows rows, const MeasureOptions& options = {});
[[nodiscard]] Comparison compare_as_tested(const std::vector<RunRecord>& records, CompareRows rows = CompareRows::one_per_unit,
                                           const MeasureOptions& options = {});

} // namespace ullage
