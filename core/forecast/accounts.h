// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "forecast/forecast.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// One account of why gauge and meter disagree, in numbers.
struct GaugeAccount {
    Quantity usable_fraction; ///< "usable_fraction": what would come out from full to cut-off at this load, of the label
    Quantity no_load_draw_w;  ///< "no_load_draw_w": what the unit itself would take, seen from the socket
    Quantity gauge_error_pt;  ///< "gauge_error_pt": what the gauge shows too much (below 0: too little) at its last reading
    Quantity to_come_wh;      ///< "to_come_wh": what would still be delivered at this load
    Quantity hours_left;      ///< "hours_left": from the last register reading to the cut-off at this load
    Message sentence;         ///< for people
    bool ruled_out = false;   ///< by the readings
    Message evidence;         ///< why
};

/// A running or stopped drain told twice: gauge right, gauge wrong.
struct TwoAccounts {
    bool told = false;
    Message reason; ///< why they are not told
    GaugeAccount right, wrong;
    UtcMs from_ms = 0;                   ///< from when hours_left count
    Message decides;                     ///< which reading tells them apart, and what each account predicts for it
    std::optional<UtcMs> decide_from_ms; ///< when to look; absent for a stopped drain, or where no moment tells
    Message idle_hour;                   ///< what an hour without load would show; empty where it tells nothing
};

/// One of the three figures that an account is told by: "usable of the label", "26 %", ""; "the unit itself takes", "14 to 51 W", "";
/// "empty", "in 8.0 to 10 h", "01:17 to 03:16".
struct AccountFigure {
    Message label, value, note;
};
/// The three figures of an account that is not ruled out: usable share, own draw (gauge right) or error of the gauge (gauge wrong), and when it is
/// empty, by the clock for a running drain and in hours from `as_of_ms` on. `-` where one is not known.
[[nodiscard]] std::vector<AccountFigure> account_figures(const TwoAccounts& accounts, const GaugeAccount& account, const Run& run, UtcMs as_of_ms);
/// "If the gauge is right: usable of the label 26 %, …. Only 258 Wh …" in a line each, then what decides; empty where they are not told.
[[nodiscard]] std::vector<Message> account_lines(const TwoAccounts& accounts, const Run& run);

/// Both accounts of a drain that is running or was stopped, as of its last reading.
///
/// Gauge right: it is linear in stored energy from its first reading to its last, within half a step at either end and 2.2 points for charge
/// against energy. With u the share of the content used since the first reading and f the share left, u·E* = D + P*·t; E* from half the label (or
/// D/u, if that is more) to 110 % of it bounds P*, and with it what is to come, f·E*, at this run's load: `bracket`. Ruled out where no unit of this
/// label explains the readings so (gauge_feasibility), or D/u is more than such a unit holds.
/// Gauge wrong: the posterior of the forecast (what the label, earlier drains and every kind of gauge allow), without the units for which the last
/// reading would be right within 3 points. Its ranges are the middle 95 %. Ruled out where less than 2 % of the posterior is left for it.
/// Decides: the first moment at which only one of them still has the output on.
/// Refused with a reason: another kind of run, one that ended by cut-off (its shares tell more, see gauge/share_bounds.h), no rated energy, no
/// register, fewer than two gauge readings with the register, a fall below two gauge steps.
[[nodiscard]] TwoAccounts two_accounts(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit,
                                       const MeasureOptions& options = {});

} // namespace ullage
