// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casebook/casebook.h"
#include "claims/claims.h"
#include "comparison/comparison.h"
#include "comparison/fair_comparison.h"
#include "formats/tables/table.h"
#include "measure/load_statistics.h"
#include "model/ids.h"
#include "unit/unit_analysis.h"

namespace ullage {

/// The comparison as a table for people and files. Columns: unit, maker, run, rank, rated_wh, delivered_wh, usable_fraction,
/// mean_load_w, duration_h, wh_per_gauge_point, no_load_draw_w, gauge_verdict, price_per_rated_kwh, price_per_delivered_kwh, paid_per_rated_kwh,
/// paid_per_delivered_kwh, wh_per_kg, charge_time_h, round_trip_efficiency, held_output_w, held_peak_output_w, standby_draw_w, warranty_years, meter,
/// tags. Where the rows come from several logbooks, logbook stands after maker.
[[nodiscard]] Table comparison_table(const Comparison& comparison);

/// The same at the common load of `fair`: after rated_wh stand deliverable_wh, usable_fraction_at_load, run_time_h and standing, then what is
/// as tested; price_per_delivered_kwh, paid_per_delivered_kwh and wh_per_kg are those at the common
/// load. As tested where `fair` has no load.
[[nodiscard]] Table comparison_table(const Comparison& comparison, const FairComparison& fair);

/// Whether a column says nothing unless asked for: tags where no unit has any, prices paid where none is known, what charges, output runs and
/// standbys say where there are none.
[[nodiscard]] bool is_unused(const Table& table, std::size_t column);
/// The table without such columns.
[[nodiscard]] Table without_unused(const Table& table);

/// Every model that units name: model, maker, specimens, usable_fraction, spread_percent, next_specimen_fraction (specimens.h).
[[nodiscard]] Table models_table(const Comparison& comparison, const FairComparison& fair);

/// Every pair of units: first, second, difference, verdict (resolved | not resolved | not known), shared_meter (yes | no), reason.
[[nodiscard]] Table pairs_table(const Comparison& comparison, const FairComparison& fair, PairFigure figure = PairFigure::usable_fraction);
/// From so many rows on a window does not offer all of them, which grow with the square of the rows: 300 rows make 44,850 pairs.
inline constexpr std::size_t most_exported_paired = 300;
/// The same of these rows alone; where there are others a remark says so.
[[nodiscard]] Table pairs_table(const Comparison& comparison, const FairComparison& fair, const std::vector<std::size_t>& rows, PairFigure figure);

/// The table with these columns only, in this order. Errors: bad_input for a key that no column has (the message names those there are)
/// and for a column named twice.
[[nodiscard]] Result<Table> with_columns(const Table& table, const std::vector<std::string>& keys);

/// The readings of a run with what was derived at each: time, gauge, register, delivered, load since, gauge error, mark, remark. A
/// part that was not noted is an empty cell; withdrawn readings are left out.
[[nodiscard]] Table readings_table(const RunRecord& record, const RunAnalysis& analysis);

/// The interval table of a run: from, to, hours, gauge drop, gauge-implied, delivered, their ratio, mean load, energy per point.
[[nodiscard]] Table intervals_table(const RunRecord& record, const RunAnalysis& analysis);

/// Which table of each run.
/// `gauge_steps`: of a log of the gauge, each timed to its samples.
enum class RunTable { readings, intervals, gauge_steps };

/// readings_table() or intervals_table(), its rows made as they are asked for: `record` and `analysis` must outlive it.
[[nodiscard]] StreamedTable table_of_run(RunTable which, const RunRecord& record, const RunAnalysis& analysis);

/// The tables of several runs as one, in their order, with unit, maker and number of the run in front of each row. Remarks name their
/// run. `analyses` are those of `records`, as many; both must outlive the table, which makes its rows as they are asked for.
[[nodiscard]] StreamedTable table_of_runs(RunTable which, const std::vector<const RunRecord*>& records,
                                          const std::vector<const RunAnalysis*>& analyses);

/// JSON text of these runs of the casebook, and of their units: {"program", "version", "format_version", "runs": [{unit, run, title, kind,
/// ended, quantities: [{key, unit_label, run, value, lower, upper, unit, kind, reason}], gauge_verdict, findings: [{kind, weight,
/// sentence, evidence, readings: [{uuid, time}], size, size_unit, statistic_name, statistic, threshold}], register_corrections: [{kind,
/// reading, reason, missing_wh}], budget: {lines: [{source, shape, correlation, standard_wh, share}], combined_standard_wh,
/// half_width_wh, half_width_method}, loss_split: {quantities, sentence}, losses_sentence, least_gauge_error_sentence, forecast (of a run still
/// running, else null)}], "units": see unit_analysis_json}. Absent numbers are null; never NaN. A run has `charge` or `output` besides where it tests
/// that, else null, and a unit its `claims`, with costs at `price_per_kwh` in its own currency: see claims_output.h. `loads`: what a trace says of
/// the load of each run, in the order of `run_uuids`; empty for none. Precondition: the casebook has these runs.
[[nodiscard]] std::string analyses_json(const Casebook& casebook, const std::vector<RunId>& run_uuids,
                                        const std::optional<double>& price_per_kwh = {},
                                        const std::vector<std::optional<LoadStatistics>>& loads = {});

} // namespace ullage
