// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/gauge_law.h"

#include <algorithm>

namespace ullage {
namespace {

const FamilyPrior& prior_of(GaugeFamily family) { return *std::ranges::find(family_priors, family, &FamilyPrior::family); }

void add_family(std::vector<GaugeLawTried>& laws, GaugeFamily family, std::vector<GaugeLawTried> some) {
    for (GaugeLawTried& law : some) {
        law.family = family;
        law.weight = prior_of(family).share / static_cast<double>(some.size());
        laws.push_back(law);
    }
}

/// Even from -most to most, `count` of them.
std::vector<double> sizes(GaugeFamily family, int count) {
    const double most = prior_of(family).most;
    std::vector<double> result;
    for (int i = 0; i < count; ++i) result.push_back(most * (2.0 * i / (count - 1) - 1));
    return result;
}

std::vector<GaugeLawTried> make_tried_laws() {
    std::vector<GaugeLawTried> laws, honest, bent, end, fast, offset, blind, sticks;
    for (const double b : sizes(GaugeFamily::honest, 5)) honest.push_back({.bend_pt = b});
    for (const double b : sizes(GaugeFamily::bent, 19)) bent.push_back({.bend_pt = b});
    for (const double z : sizes(GaugeFamily::end, 19)) end.push_back({.bend_pt = 1, .end_percent = z});
    for (double m = 30; m <= prior_of(GaugeFamily::fast).most; m += 10) fast.push_back({.bend_pt = 1, .end_percent = -m});
    // A point apart, no coarser than a gauge is read: at 2 points the range of a gauge that was read often fell between two of them.
    for (const double o : sizes(GaugeFamily::offset, 25)) offset.push_back({.bend_pt = 1, .start_percent = 100 + o, .end_percent = o});
    for (const double b : {-2.0, 0.0, 2.0}) blind.push_back({.bend_pt = b});
    for (double at = 100; at >= 4; at -= 6)
        for (const double hold : {5.0, 12.0, 19.0, 26.0})
            for (const double catch_up : {0.0, 8.0})
                if (hold <= prior_of(GaugeFamily::sticks).most) sticks.push_back({.stick_percent = at, .hold_pt = hold, .catch_up_pt = catch_up});
    add_family(laws, GaugeFamily::honest, std::move(honest));
    add_family(laws, GaugeFamily::bent, std::move(bent));
    add_family(laws, GaugeFamily::end, std::move(end));
    add_family(laws, GaugeFamily::fast, std::move(fast));
    add_family(laws, GaugeFamily::offset, std::move(offset));
    add_family(laws, GaugeFamily::blind, std::move(blind));
    add_family(laws, GaugeFamily::sticks, std::move(sticks));
    return laws;
}

} // namespace

double GaugeLawTried::shown(double q) const {
    double percent = std::clamp(start_percent + (end_percent - start_percent) * q + 4 * bend_pt * q * (1 - q), 0.0, 100.0);
    if (hold_pt > 0 && percent < stick_percent) {
        const double fallen_pt = stick_percent - percent;
        if (fallen_pt < hold_pt) percent = stick_percent;
        else if (fallen_pt < hold_pt + catch_up_pt) percent = stick_percent - (fallen_pt - hold_pt) * (hold_pt + catch_up_pt) / catch_up_pt;
    }
    return percent;
}

double GaugeLawTried::depth_at(double percent) const {
    if (shown(0) <= percent) return 0;
    double low = 0, high = 1;
    for (int i = 0; i < 24; ++i) {
        const double middle = (low + high) / 2;
        (shown(middle) > percent ? low : high) = middle;
    }
    return high;
}

const std::vector<GaugeLawTried>& tried_laws() {
    static const std::vector<GaugeLawTried> all = make_tried_laws();
    return all;
}

} // namespace ullage
