// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"

#include <optional>
#include <vector>

namespace ullage {

/// Gauge and delivered energy at one moment.
struct PairedPoint {
    std::size_t reading = 0; ///< index of the gauge reading, or no_reading where a log showed it
    UtcMs time_ms = 0;
    double hours = 0; ///< since the first reading of the run
    double gauge_percent = 0;
    double delivered_wh = 0; ///< since the first register reading
    double u_pairing_wh = 0; ///< standard uncertainty of the pairing alone: interpolation and noted moment
    /// Half-width of what the gauge may have been about gauge_percent, points; absent: half a step of the gauge. 0 at a step that a log saw: there
    /// the mean of what it showed before and after is what it showed on average.
    std::optional<double> gauge_half_pt{};
    std::optional<double> square_w2h{}; ///< the integral of P squared up to it; absent: by the track
};

/// Pairs every gauge reading with delivered energy: that of the same reading, else interpolated between the register
/// readings around it, u = gap energy x sqrt(f (1 - f) / 3) at fraction f of the gap's time; outside the register's range
/// there is no pair. The doubt of the noted moment adds load x doubt / sqrt(3) where the two were not noted together. By a
/// log: LogUse::u_wh.
[[nodiscard]] std::vector<PairedPoint> pair_gauge(const RunRecord& record, const RegisterTrack& track, const MeasureOptions& options = {});

/// What happened between two neighbouring paired points; parts that cannot be formed are absent.
struct IntervalRow {
    std::size_t from = 0, to = 0; ///< indices into the paired points
    double hours = 0;
    double gauge_drop_pt = 0;               ///< positive when the gauge fell
    std::optional<double> gauge_implied_wh; ///< rated energy x gauge drop / 100; needs rated energy
    double delivered_wh = 0;
    std::optional<double> ratio;        ///< delivered / gauge-implied; needs a gauge drop that is not 0
    std::optional<double> mean_w;       ///< needs time between the two
    std::optional<double> wh_per_point; ///< needs a gauge drop that is not 0
};

/// The interval table, one row for each neighbouring pair; over 10 000 pairs the rows span several points each, so that a logging meter's
/// trace stays a table.
[[nodiscard]] std::vector<IntervalRow> interval_table(const std::vector<PairedPoint>& points, std::optional<double> rated_energy_wh);

} // namespace ullage
