// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/inside/lone_reading.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace ullage {
namespace {

constexpr std::size_t most_readings_by_hand = 200;

std::vector<std::string> slips_of(const std::string& meant) {
    std::vector<std::string> slips;
    for (std::size_t i = 0; i < meant.size(); ++i) {
        std::string left_out = meant, twice = meant;
        left_out.erase(i, 1);
        twice.insert(i, 1, meant[i]);
        slips.push_back(left_out);
        slips.push_back(twice);
        if (i + 1 < meant.size()) {
            std::string changed = meant;
            std::swap(changed[i], changed[i + 1]);
            slips.push_back(changed);
        }
    }
    return slips;
}

bool turns_into(int meant, int shown) {
    if (meant == shown) return false;
    for (const std::string& slip : slips_of(std::to_string(meant)))
        if (!slip.empty() && std::stoi(slip) == shown) return true;
    return false;
}

} // namespace

std::optional<double> slip_of_pen(double shown, double low, double high) {
    if (shown != std::round(shown) || shown < 0 || shown > 100) return std::nullopt;
    std::optional<double> best;
    const double middle = (low + high) / 2;
    for (int meant = static_cast<int>(std::ceil(std::max(0.0, low))); meant <= std::min(100.0, high); ++meant)
        if (turns_into(meant, static_cast<int>(shown)) && (!best || std::abs(meant - middle) < std::abs(*best - middle))) best = meant;
    return best;
}

std::vector<SlipCandidate> slip_candidates(const EnergyAnalysis& energy, const std::vector<ShareBound>& bounds, double gauge_step_pt) {
    std::vector<SlipCandidate> candidates;
    const std::vector<PairedPoint>& points = energy.points;
    if (points.size() < 2 || points.size() > most_readings_by_hand) return candidates;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].reading == no_reading) continue; // nobody typed it
        const auto bound = std::ranges::find(bounds, i, &ShareBound::point);
        double low = (i + 1 < points.size() ? points[i + 1].gauge_percent : 0) - gauge_step_pt, high = points[i - 1].gauge_percent + gauge_step_pt;
        if (bound != bounds.end()) {
            low = std::max(low, bound->least_percent);
            high = std::min(high, bound->most_percent);
        }
        if (const auto meant = slip_of_pen(points[i].gauge_percent, low, high)) candidates.push_back({i, *meant});
    }
    return candidates;
}

} // namespace ullage
