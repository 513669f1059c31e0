// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "comparison/comparison.h"
#include "model/ids.h"
#include "unit/common_load.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Drains this near to a common load count as made there, see compare_at().
inline constexpr double same_load_share = 0.05;

/// How a unit comes to stand at the common load.
enum class Standing {
    moved,        ///< by what all its drains say together
    tested_there, ///< drains of its own had this load, within 5 %
    as_tested,    ///< it cannot be moved: its figures are those of its own load
};

/// "calculated for this load", "tested at this load", "as tested": as files for machines have it.
[[nodiscard]] std::string_view standing_text(Standing standing);
/// The same for people.
[[nodiscard]] Message say_standing(Standing standing);

/// One row of a Comparison at the common load.
struct FairRow {
    Standing standing = Standing::as_tested;
    Quantity deliverable_wh;  ///< "deliverable_wh"
    Quantity usable_fraction; ///< "usable_fraction"
    Quantity run_time_h;      ///< "run_time_h"
    Quantity price_per_delivered_kwh, paid_per_delivered_kwh, wh_per_kg;
    Message reason;                   ///< which drains it rests on, or why the unit is shown as tested
    RunId run_uuid;                   ///< the drain that it rests on, of several the latest; empty where moved
    std::optional<RepeatMean> mean{}; ///< of the drains that it rests on, where they are from full to cut-off
    bool far_beyond = false;          ///< moved to a load far beyond the tested ones (LoadPrediction::is_far_beyond)
    std::optional<Quantity> rank{};   ///< once worked out, perhaps among more rows than there are now: put_ranks(), keep_ranked_units()
};

/// Figures in which two units can be held against each other.
enum class PairFigure { usable_fraction, deliverable_wh, wh_per_kg, price_per_delivered_kwh };
inline constexpr PairFigure all_pair_figures[] = {PairFigure::usable_fraction, PairFigure::deliverable_wh, PairFigure::wh_per_kg,
                                                  PairFigure::price_per_delivered_kwh};
/// The key of the figure, as in FairRow: "price_per_delivered_kwh".
[[nodiscard]] std::string_view pair_figure_key(PairFigure figure);

/// Whether two units differ by more than their meters can tell.
struct PairVerdict {
    std::size_t first = 0, second = 0; ///< rows of the comparison
    Quantity difference;               ///< "difference": first − second, with its interval; `not known` with the reason
    bool resolved = false;             ///< the interval does not hold 0
    bool shared_meter = false;         ///< the gain of one meter cancels, at least in part
    Message sentence;                  ///< "clearly different: Osk 1200 − Pelm 900 = 14.0 ± 2.0 % …"
};

/// "clearly different", "too close to call", "not comparable": as files for machines have it.
[[nodiscard]] std::string_view pair_verdict_text(const PairVerdict& pair);
/// The same for people.
[[nodiscard]] Message say_pair_verdict(const PairVerdict& pair);

/// Units at one load. Rows stand in the order of the Comparison that they were made from.
struct FairComparison {
    std::optional<CommonLoad> load; ///< absent: as tested
    std::vector<FairRow> rows;
    std::vector<Message> remarks; ///< who cannot be moved; where the order differs from that as tested, and why
};

/// Puts every row of `comparison` at `load` (as tested when absent). A unit whose drains give E* and P* is moved by predict_under();
/// else the mean of its full drains within 5 % of the load stands for it (5 % of load moves D by under 1 % while the no-load draw is below a sixth
/// of the load); else its figures stay as tested, marked with the reason. With CompareRows::every_drain each row is moved by its unit.
[[nodiscard]] FairComparison compare_at(const Comparison& comparison, const std::optional<CommonLoad>& load);

/// The difference of two rows of `fair` in one figure. Interval: each meter's gain is rectangular (largest convolved, the rest as normal, as
/// half_width_along), Student's t of the
/// effective degrees of freedom where repeats give them (JCGM 100:2008, G.4; a scatter pooled over units counts once); what both units owe to one
/// meter's gain is taken together with its sign, so for the usable fraction only a·|f1 − f2| of a shared gain is left; the rest is independent;
/// figures from a single drain carry the repeatability of drains besides, those of repeats their mean's. Price per kWh by its slope. `not known`: one
/// of the figures is not measured or projected with an interval, the currencies differ, two rows are of one unit, one of them stands as tested beside
/// a common load, or is moved far beyond its tested loads. Source: JCGM 100:2008, 5.2 (correlated inputs) and F.1.2.3.
[[nodiscard]] PairVerdict compare_pair(const Comparison& comparison, const FairComparison& fair, std::size_t first, std::size_t second,
                                       PairFigure figure = PairFigure::usable_fraction);

/// The place of each row by its usable fraction, "rank": 1 for the best, as a plain number without interval. Units that these meters do not resolve
/// from each other share a place (the best that any of them has), and so do those between them; the reason says how many share it. `not known`:
/// as tested where unlike_loads() has something to say; no interval, a unit that stands as tested beside a common load or is moved far beyond its
/// tested loads, or several rows of one unit. Rows that bring a rank keep it. Grows with the square of the number of rows.
[[nodiscard]] std::vector<Quantity> fair_ranks(const Comparison& comparison, const FairComparison& fair);

/// Puts the ranks into the rows, so that who asks again need not wait for them.
void put_ranks(const Comparison& comparison, FairComparison& fair);

/// Leaves out the rows of other units from both. The ranks stay those among all the units there were.
void keep_ranked_units(Comparison& comparison, FairComparison& fair, const std::function<bool(const Unit&)>& wanted);

/// Lowest and highest mean load of the rows as tested, W, where they are further apart than like_loads_ratio: a slow drain feeds the unit itself for
/// longer, so such rows have no order.
struct LoadRange {
    double lowest_w = 0, highest_w = 0;
};
[[nodiscard]] std::optional<LoadRange> unlike_loads(const Comparison& comparison);

/// The rows with the largest usable fraction first, those without one last. Beside a common load the rows that stand as tested follow all others:
/// theirs is the fraction at another load.
[[nodiscard]] std::vector<std::size_t> fair_order(const FairComparison& fair);

/// Every pair of the rows, first < second, in the order of rows. Grows with the square of their number.
[[nodiscard]] std::vector<PairVerdict> compare_pairs(const Comparison& comparison, const FairComparison& fair,
                                                     PairFigure figure = PairFigure::usable_fraction);
/// The same of these rows alone, in their order.
[[nodiscard]] std::vector<PairVerdict> compare_pairs(const Comparison& comparison, const FairComparison& fair, const std::vector<std::size_t>& rows,
                                                     PairFigure figure);

} // namespace ullage
