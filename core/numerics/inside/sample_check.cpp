// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/inside/sample_check.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace ullage {
namespace {

Error bad(std::string_view task, std::string what, std::string remedy) {
    return {Failure::bad_input, std::move(what), std::string(task), std::move(remedy)};
}

std::optional<Error> check_finite(std::string_view task, std::span<const double> values, std::string_view name) {
    const auto at = std::find_if(values.begin(), values.end(), [](double v) { return !std::isfinite(v); });
    if (at == values.end()) return std::nullopt;
    return bad(task, std::string(name) + " of point " + std::to_string(at - values.begin() + 1) + " is not a finite number",
               "correct or leave out that point");
}

} // namespace

std::optional<Error> check_points(std::string_view task, std::span<const double> x, std::span<const double> y, std::span<const double> sigma,
                                  std::size_t least_points) {
    if (x.size() != y.size() || (!sigma.empty() && sigma.size() != x.size()))
        return bad(task,
                   std::to_string(x.size()) + " x, " + std::to_string(y.size()) + " y and " + std::to_string(sigma.size()) +
                       " uncertainties do not belong together",
                   "give as many of each");
    if (x.size() < least_points)
        return bad(task, "needs at least " + std::to_string(least_points) + " points and has " + std::to_string(x.size()), "take more readings");
    if (auto error = check_finite(task, x, "x")) return error;
    if (auto error = check_finite(task, y, "y")) return error;
    if (auto error = check_finite(task, sigma, "the uncertainty")) return error;
    const auto at = std::find_if(sigma.begin(), sigma.end(), [](double s) { return s <= 0; });
    if (at != sigma.end())
        return bad(task, "the uncertainty of point " + std::to_string(at - sigma.begin() + 1) + " is not above zero",
                   "give a positive uncertainty or leave out that point");
    return std::nullopt;
}

std::optional<Error> check_spread(std::string_view task, std::span<const double> x) {
    if (!x.empty() && std::any_of(x.begin(), x.end(), [&](double v) { return v != x.front(); })) return std::nullopt;
    return bad(task, "all x are the same, so that no slope can be found", "take readings at two different x at least");
}

Error out_of_range(std::string_view task) {
    return bad(task, "the numbers are too large or too small to compute with", "use a unit that suits their size");
}

} // namespace ullage
