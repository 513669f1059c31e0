// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ensemble/specimen.h"

#include <array>
#include <string>

namespace ullage::test {

/// What gauges of such units do, each at its full size, drawn by the seed.
enum class FewFamily { honest, bent, ends_early, lingers, offset, blind, stuck, jumping, rebounding };
inline constexpr std::array<FewFamily, 9> few_families{FewFamily::honest,  FewFamily::bent,    FewFamily::ends_early,
                                                       FewFamily::lingers, FewFamily::offset,  FewFamily::blind,
                                                       FewFamily::stuck,   FewFamily::jumping, FewFamily::rebounding};
[[nodiscard]] std::string few_family_name(FewFamily family);
/// Draws a gauge of the family for the unit and load of `setup`: bent by up to 25 pt either way, ends at up to 20 %, lingers at 0 or 1 % for up to a
/// fifth of what it delivers, offset by up to 10 pt, stuck for up to 20 pt with a slow or sudden catching up, rebounding by up to 8 pt.
[[nodiscard]] GaugeLaw few_family_gauge(FewFamily family, const RunSetup& setup, Random& random);

/// Loads that keep to what they have shown by a fifth of the drain: steady, cycling, trickle and heavy, stepped early.
[[nodiscard]] const std::vector<NamedLoad>& few_loads();

/// A full drain with so many readings in all, the first at the start and the last at the end, the others spread unevenly; a fine register or one of
/// 10 Wh steps, the meter's gain within its limit.
[[nodiscard]] RunSetup few_readings_under(const LoadProfile& load, std::uint64_t seed);
/// Spreads `readings` in all over the first `until_h` hours; sets the plan.
void spread_readings(int readings, double until_h, Random& random, RunSetup& setup);

} // namespace ullage::test
