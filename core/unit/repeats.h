// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "measure/options.h"
#include "model/run_record.h"
#include "unit/drain_summary.h"

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace ullage {

/// Loads within this factor of each other are alike: drains at them repeat one another.
inline constexpr double like_loads_ratio = 1.25;

/// Drains at temperatures further apart than this are neither repeats nor compared for ageing or drift of the gauge: without the unit's own
/// coefficient cold looks like age (common practice, no source).
inline constexpr double like_temperatures_c = 8;

/// Whether both temperatures are known and further apart than that.
[[nodiscard]] bool are_unlike_temperatures(const DrainSummary& one, const DrainSummary& other);

/// What full drains of one unit at like loads say together. One drain stands alone and has no scatter.
struct RepeatMean {
    std::vector<std::size_t> drains; ///< places among the unit's drains, ascending
    double lowest_load_w = 0, highest_load_w = 0, mean_load_w = 0;
    double mean_hours = 0;
    double mean_wh = 0;
    double scatter_wh = 0; ///< experimental standard deviation of a single drain; 0 for one drain
    /// Standard uncertainty of the mean without the meters' gains, and its degrees of freedom (infinite where a stated or usual figure settles it).
    double independent_wh = 0, degrees_of_freedom = 0;
    bool by_own_scatter = false; ///< that rests on these drains alone, else on the repeatability that the options give
    struct Gain {
        double half_width_wh = 0; ///< where the meter's limit moves the mean
        bool limit_known = true;
    };
    std::map<std::string, Gain> gains; ///< by DrainSummary::meter_key
    double load_part_wh = 0;           ///< of those limits, what is these loads' own, half-width
    Quantity delivered_wh, duration_h; ///< "delivered_wh", "duration_h", in words what they are the mean of

    [[nodiscard]] std::size_t count() const { return drains.size(); }
};

/// Places of those drains of like temperature that are the most, of as many the colder ones; a drain without a temperature goes with any. Ascending.
[[nodiscard]] std::vector<std::size_t> most_of_like_temperature(const std::vector<DrainSummary>& drains);

/// The used drains of one unit that delivered something, in groups of like loads and temperatures: the most that lie within like_temperatures_c first
/// (a drain without a temperature goes with those), of them the most within like_loads_ratio (of as many, those at the lower loads), then the rest
/// likewise. The order of the drains does not matter. Each group is a list of places, ascending.
[[nodiscard]] std::vector<std::vector<std::size_t>> like_load_groups(const std::vector<DrainSummary>& drains);

/// The mean of these drains: a type A evaluation (JCGM 100:2008, 4.2) with n − 1 degrees of freedom, or the repeatability that `options` give where
/// that says more:
///  - a stated or pooled figure counts unless the drains refute it (chi-square, for a pooled one Fisher's F, at 5 %); then their own scatter does;
///  - of the usual figure, which nobody has tried on these units, and the drains' own scatter with Student's t the wider one counts.
/// Gains of the meters are taken apart: a gain at its limit moves the mean by its drains' share. The interval convolves the largest of them with all
/// else (half_width_of_sum); without the limit of a meter there is none.
/// Preconditions: `places` is not empty, all of them used drains.
[[nodiscard]] RepeatMean mean_of_drains(const std::vector<DrainSummary>& drains, std::vector<std::size_t> places, const MeasureOptions& options);

/// The mean of each group of like loads, first that which stands for the unit: of the most drains; of as many, with one that
/// was seen to go off; then with the latest.
[[nodiscard]] std::vector<RepeatMean> repeat_means(const std::vector<DrainSummary>& drains, const MeasureOptions& options);

/// Half-width of an interval of a rectangular part and a rest of this standard uncertainty and degrees of freedom, by Student's t in place of the
/// normal where those are finite (JCGM 100:2008, G.3 and G.4).
[[nodiscard]] double half_width_with_freedom(double rectangular, double rest, double degrees_of_freedom, double coverage);

/// From how many degrees of freedom on the pooled scatter of repeated drains replaces the usual repeatability.
inline constexpr std::size_t least_pooled_degrees = 5;

/// `options` with the scatter pooled over the repeated drains of these units, relative to the mean of each group, where it has at least
/// least_pooled_degrees; else, or where they state or pool a figure already, as they are. `units`: the drains of each unit.
[[nodiscard]] MeasureOptions with_pooled_repeatability(MeasureOptions options, const std::vector<std::vector<DrainSummary>>& units);

/// The same from the runs of each unit.
[[nodiscard]] MeasureOptions pooled_options(const std::vector<UnitRuns>& units, const MeasureOptions& options);

/// For people, a sentence for each mean: "Mean of 5 drains at 100 W: 879 ± 27 Wh; a single one scatters by 23.8 Wh (2.7 %)." Where no drain was
/// repeated, that each stands alone and what is taken of how well the unit repeats. Empty without a mean.
[[nodiscard]] Message repeats_sentence(const std::vector<RepeatMean>& repeats, const MeasureOptions& options);

/// "0.5 % (the usual figure, which nobody has tried on these units)", for methods and reports.
[[nodiscard]] Message repeatability_words(const MeasureOptions& options);

} // namespace ullage
