// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "unit/drain_summary.h"
#include "unit/drain_system.h"
#include "unit/full_charge.h"
#include "unit/repeats.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Parameters of one unit as its drains give them, and how they err together.
/// Order in vectors and matrices: E* (Wh), P* (W), c (1/W).
struct UnitParameters {
    double e_star_wh = 0; ///< deliverable at no time cost
    double p_star_w = 0;  ///< no-load draw seen from the socket
    double c_per_w = 0;   ///< quadratic loss
    /// Covariance from the scatter of the drains (widened where they disagree) and the bounds on c; without gains. Made so that the
    /// normal distribution's factor gives the wanted coverage also where Student's t applies.
    std::array<std::array<double, 3>, 3> covariance{};
    /// Where each meter's gain at its limit moves the parameters: rectangular, independent between meters.
    struct Gain {
        std::string meter_key; ///< as in DrainSummary: units drained with one meter share its gain
        Message meter_name;
        std::array<double, 3> half_width{};
        bool limit_known = true;
    };
    std::vector<Gain> gains;
};

/// Half-width of the interval of a quantity that depends on the parameters with this gradient: the largest gain part is convolved as a
/// rectangle with all else as a normal (half_width_of_sum; with three gains of like size this is at most 5 % too wide).
/// Absent when the gain of a meter with no stated limit matters (gains cancel in E*/P* when all drains had one meter).
[[nodiscard]] std::optional<double> half_width_along(const UnitParameters& parameters, const std::array<double, 3>& gradient, double coverage = 0.95);

/// How c came about.
enum class CurvatureSource {
    bounded, ///< by common practice; the drains do not narrow it
    fitted,  ///< the drains narrow it further than the bounds
    outside, ///< the drains contradict the bounds; from the drains alone
};

/// What all drains of one unit say together, see fit_unit.
struct UnitFit {
    std::vector<DrainSummary> drains; ///< every run given, in its order, used or with the reason why not
    std::size_t used_drains = 0;
    std::optional<UnitParameters> parameters; ///< absent while E* and P* cannot be told apart
    /// Parameters with the no-load draw held within what is usual where the drains do not settle it: good for planning the next
    /// run, not for results. Absent without a used drain.
    std::optional<UnitParameters> planning;
    Bounds c_bounds; ///< of c, 1/W
    CurvatureSource curvature_source = CurvatureSource::bounded;
    Quantity deliverable_at_no_time_cost_wh;      ///< "deliverable_at_no_time_cost_wh": E*
    Quantity no_load_draw_w;                      ///< "no_load_draw_w": P*
    Quantity no_load_endurance_h;                 ///< "no_load_endurance_h": E*/P*
    Quantity curvature_per_w;                     ///< "curvature_per_w": c
    double lowest_load_w = 0, highest_load_w = 0; ///< mean loads of the used drains; 0 W for a no-load drain
    /// Powers at which the used drains took their energy: Q/D, which is the power while on of a load that is switched. A drain whose Q/D
    /// exceeds its mean load by less than 1.3 times counts as steady, at that mean: register steps between close readings add as much.
    double lowest_power_w = 0, highest_power_w = 0;
    double chi_square = 0; ///< of the drains about the fit
    std::size_t degrees_of_freedom = 0;
    double widening = 1; ///< factor on the drains' uncertainties because they disagree
    MeasureOptions options;
    Message sentence;                        ///< for people
    std::vector<RepeatMean> repeats;         ///< the used drains by like loads, the group that stands for the unit first (repeat_means)
    std::optional<FullCharge> full_charge{}; ///< bounds E* where no drain gives it
};

/// Fits D_k = E* − P*·T_k − c·Q_k to all drains of one unit (see fit_balance): T_k hours of output on, Q_k = ∫P² dt, the loss
/// polynomial p0 + a·P + b·P² (Schmidt and Sauer 1996; terms of IEC 61683) divided by a, so E* = E_b/a, P* = p0/a, c = b/a. Needs no gauge.
///
/// `records`: runs of one unit in any order; which take part, see summarise_drain; runs of another unit than the first are left out.
/// E* and P* are known when the longest T of the used drains exceeds 1.5 times the shortest; else they are `not known` and the reason
/// proposes a load. c lies within 0 and MeasureOptions::most_quadratic_loss/rated output (without that claim the highest mean load stands for it) and
/// is carried as a bounded parameter, so its effect is in every covariance. With three distinct loads (neighbours differ by 1.3 times or more) whose
/// own uncertainty of c is below that of the bounds it counts as fitted; if they contradict the bounds by over two standard uncertainties, the bounds
/// are dropped.
///
/// Intervals never use less than the known uncertainties; drains that disagree widen them, at last with Student's t for n − 2 degrees
/// of freedom (disagreement_of). Gains: see UnitParameters.
///
/// Accuracy, simulated (a meter of ±1 %, repeatability 0.5 %, two to four drains): 95 % intervals of E*, P*, D and T cover 92 to 98.5 %
/// for any c within the bounds, least at c = 0, most in the middle.
[[nodiscard]] UnitFit fit_unit(const std::vector<RunRecord>& records, const MeasureOptions& options = {});

/// The same from runs whose energy is analysed already: `energies`, as many, are analyse_energy(*records[i], options).
[[nodiscard]] UnitFit fit_unit(const std::vector<const RunRecord*>& records, const std::vector<EnergyAnalysis>& energies,
                               const MeasureOptions& options);

} // namespace ullage
