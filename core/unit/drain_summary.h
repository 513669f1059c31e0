// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "gauge_curves/gauge_curve.h"
#include "measure/options.h"
#include "model/run_record.h"

#include <optional>
#include <string>

namespace ullage {

/// What one run says to a fit over the runs of its unit. Numbers are 0 where the run does not give them (`used` is then false).
struct DrainSummary {
    RunId run_uuid;
    int run_number = 1;
    Message title; ///< as in lists, see run_title
    RunKind kind = RunKind::drain;
    UtcMs start_ms = 0;
    double hours = 0;                  ///< T, hours of output on: to cut-off, less stretches marked as tripped
    double u_hours = 0;                ///< standard uncertainty of T; that of its cut-off (cut_off_moment.h) with that of its start
    double delivered_wh = 0;           ///< D
    double independent_wh = 0;         ///< standard uncertainty of D without the meter's gain and without repeatability
    double mean_load_w = 0;            ///< D / T
    double squared_w2h = 0;            ///< Q = ∫P² dt, see summarise_drain
    double u_wh = 0;                   ///< standard uncertainty that the fit gave this drain; 0 before a fit
    std::optional<double> residual_wh; ///< what it delivered beyond the fit
    std::string meter_key;             ///< drains with one key share one gain error; empty: no meter took part
    Message meter_name;
    std::optional<double> gain_limit_percent; ///< of that meter, half-width
    double load_part_wh = 0;                  ///< of its limit, what is this load's own, half-width (load_part_percent() of the meter)
    bool used = false;
    Message reason;                        ///< why it is not used
    std::optional<GaugeCurve> gauge_curve; ///< of a used drain whose gauge was read often enough
    Message no_curve_reason;               ///< why there is none; empty for a no-load drain
    std::optional<double> ambient_c{};     ///< as the run notes it, the mean of start and end
    bool found_off = false;                ///< nobody saw it go off
};

/// Reduces a run to the terms of the balance between runs. Used are drains and no-load drains that started full and ended by
/// cut-off and whose energy was read completely. A no-load drain without register readings counts as 0 Wh. Q is formed from the
/// register's interval means, Q = sum of dE²/dt, so a load that cycles inside an interval is averaged and Q is then a lower
/// bound; the interval in which an output found off went dark counts with the run's mean load. Never fails: a run that cannot
/// take part says why.
[[nodiscard]] DrainSummary summarise_drain(const RunRecord& record, const MeasureOptions& options = {});

/// The same from the run's analysed energy: `energy` is analyse_energy(record, options).
[[nodiscard]] DrainSummary summarise_drain(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options);

} // namespace ullage
