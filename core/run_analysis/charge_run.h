// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/energy_analysis.h"

#include <optional>
#include <string>

namespace ullage {

/// What one charge run says. The register of its meter counts what goes into the unit.
struct ChargeRun {
    Quantity charged_wh;    ///< "charged_wh", to the last reading
    Quantity charge_time_h; ///< "charge_time_h": to the first reading that shows the gauge full, `at least` where none does
    Quantity mean_charge_w; ///< "mean_charge_w", over the run
    Quantity peak_charge_w; ///< "peak_charge_w": the highest noted or between two register readings; `at least`, as nobody looked in between
    Quantity taper_h;       ///< "taper_h": how long before the end the power stayed below 90 % of its highest
    std::optional<double> taper_gauge_percent; ///< gauge when that began, where it was read then
    std::optional<double> first_gauge_percent, last_gauge_percent;
    bool ended_full = false; ///< the last gauge reading shows 100 %
    Message sentence;
};

/// Power below this share of the highest counts as taper (common practice, no source).
inline constexpr double taper_share = 0.9;

/// Steps between register readings count for peak and taper where one register step is at most a tenth of their energy. Precondition: a charge run.
[[nodiscard]] ChargeRun analyse_charge(const RunRecord& record, const EnergyAnalysis& energy);

} // namespace ullage
