// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "claims/claims.h"
#include "forecast/accounts.h"
#include "forecast/forecast.h"
#include "model/run_record.h"
#include "run_analysis/run_analysis.h"
#include "unit/unit_analysis.h"

#include <cstddef>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What a logbook says, of whatever file or files its runs come: the one place that puts analysis, projection, fit and forecast together, so that the
/// window, the commands and the reports say the same.
///
/// Each answer is worked out when it is first asked for and kept as long as the runs that it rests on are the same objects: an answer on one run
/// rests on it and, where it is projected or forecast, on all runs of its unit. Every question may be asked from any thread, also while another sets
/// the runs anew; what was answered stays valid as long as its asker holds it. Two threads that ask the same at once may both work it out.
class Casebook {
public:
    /// The versions of a reading that was changed, oldest first.
    using HistorySource = std::function<Result<std::vector<ReadingVersion>>(const ReadingId& reading_uuid)>;

    /// `histories` is asked by histories(), in the thread that asks; absent where the source keeps none, such as run sheets.
    explicit Casebook(HistorySource histories = {}, MeasureOptions options = {});

    /// Takes these runs in place of those before, in this order; those of a unit need not stand together. Answers that rest on runs which are the
    /// same objects as before stay.
    void set_runs(SharedRuns runs);
    /// Takes the options, the runs and the answers of another, which is empty afterwards; the source of histories stays its own. Nobody may be asking
    /// the other meanwhile.
    void take_over(Casebook& other);
    /// Takes these for granted from now on, in place of those before. No answer stays that went by others.
    void set_options(const MeasureOptions& options);

    [[nodiscard]] SharedRuns runs() const; ///< all, in the order given
    [[nodiscard]] SharedRuns runs_of(const UnitId& unit_uuid) const;
    [[nodiscard]] std::shared_ptr<const RunRecord> run(const RunId& run_uuid) const; ///< null when there is none

    // What there is not is answered by null.
    /// What the analyses take for granted: the options given, with the scatter pooled over all repeated drains where that says enough
    /// (with_pooled_repeatability). Kept until the drains of a unit that repeats change.
    [[nodiscard]] MeasureOptions options() const;
    /// Analysis of a run; where its usable fraction is a projection, through the gauge curve of an earlier run of its unit if there is one
    /// (project_through_curve).
    [[nodiscard]] std::shared_ptr<const RunAnalysis> analysis(const RunId& run_uuid) const;
    /// The energy of a run by itself (analyse_judged_energy): what analysis() holds before an earlier run's curve refines a projection, but for its
    /// sentence on further logs. Its gauge is judged only where the energy rests on it, so this takes a fraction of the time.
    [[nodiscard]] std::shared_ptr<const EnergyAnalysis> energy(const RunId& run_uuid) const;
    /// What all runs of a unit say together (fit_unit).
    [[nodiscard]] std::shared_ptr<const UnitFit> fit(const UnitId& unit_uuid) const;
    /// The same with predictions, next run and drifts (analyse_unit).
    [[nodiscard]] std::shared_ptr<const UnitAnalysis> unit_analysis(const UnitId& unit_uuid) const;
    /// Forecast of a run as of `now_ms` (forecast_run); kept until another minute is asked for.
    [[nodiscard]] std::shared_ptr<const RunForecast> forecast(const RunId& run_uuid, UtcMs now_ms) const;
    /// As of its last reading, so that one logbook always says the same (forecast_at_last_reading).
    [[nodiscard]] std::shared_ptr<const RunForecast> forecast_at_last_reading(const RunId& run_uuid) const;
    /// A running or stopped drain told twice, gauge right and gauge wrong (two_accounts).
    [[nodiscard]] std::shared_ptr<const TwoAccounts> accounts(const RunId& run_uuid) const;
    /// What the unit's maker claims against what was tested, costs at `price` (check_claims). Worked out each time.
    [[nodiscard]] std::optional<UnitClaims> claims(const UnitId& unit_uuid, const std::optional<EnergyPrice>& price = {}) const;

    /// The versions of each changed reading of a run. Absent where the source keeps none. Errors: those of the source.
    [[nodiscard]] Result<std::optional<std::vector<ReadingHistory>>> histories(const RunId& run_uuid) const;

    /// How many readings fit() of these units, and with `with_runs` analysis() of their runs, would have to go through.
    [[nodiscard]] std::size_t readings_to_analyse(const std::vector<UnitId>& unit_uuids, bool with_runs) const;

private:
    struct UnitCase;
    struct RunCase;
    [[nodiscard]] std::shared_ptr<UnitCase> unit_case(const UnitId& unit_uuid) const;
    [[nodiscard]] std::shared_ptr<RunCase> run_case(const RunId& run_uuid) const;
    [[nodiscard]] std::shared_ptr<const RunAnalysis> own_analysis(RunCase& run) const;
    [[nodiscard]] std::shared_ptr<const EnergyAnalysis> own_energy(RunCase& run) const;
    [[nodiscard]] MeasureOptions given_options() const;
    [[nodiscard]] std::vector<EnergyAnalysis> energies_of(const UnitCase& unit) const;
    [[nodiscard]] std::shared_ptr<const std::vector<DrainSummary>> repeated_drains(UnitCase& unit) const;
    [[nodiscard]] std::shared_ptr<const UnitFit> fit_of(UnitCase& unit) const;

    HistorySource histories_;
    mutable std::mutex mutex_; ///< of all below, and of what the cases keep; never held while something is worked out
    MeasureOptions options_;
    SharedRuns runs_;
    std::map<UnitId, std::shared_ptr<UnitCase>> units_;
    std::map<RunId, std::shared_ptr<RunCase>> cases_;
    mutable std::optional<MeasureOptions> pooled_; ///< of the runs as they are
};

} // namespace ullage
