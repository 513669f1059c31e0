// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/inside/sample_check.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

Error bad(const Phrase& task, const Message& what, const Message& remedy) { return {Failure::bad_input, what, say(task), remedy}; }

std::optional<Error> check_finite(const Phrase& task, std::span<const double> values, const Phrase& what) {
    const auto at = std::find_if(values.begin(), values.end(), [](double v) { return !std::isfinite(v); });
    if (at == values.end()) return std::nullopt;
    return bad(task, say(what, say_number(at - values.begin() + 1)), say(phrase("numerics", "correct or leave out that point")));
}

} // namespace

std::optional<Error> check_points(const Phrase& task, std::span<const double> x, std::span<const double> y, std::span<const double> sigma,
                                  std::size_t least_points) {
    if (x.size() != y.size() || (!sigma.empty() && sigma.size() != x.size()))
        return bad(task,
                   say_count(sigma.size(),
                             phrases("numerics", "%1 x, %2 y and %n uncertainties do not belong together",
                                     "%1 x, %2 y and %n uncertainty do not belong together"),
                             say_number(x.size()), say_number(y.size())),
                   say(phrase("numerics", "give as many of each")));
    if (x.size() < least_points)
        return bad(task,
                   say_count(least_points, phrases("numerics", "needs at least %n points and has %1", "needs at least %n point and has %1"),
                             say_number(x.size())),
                   say(phrase("numerics", "take more readings")));
    if (auto error = check_finite(task, x, phrase("numerics", "x of point %1 is not a finite number"))) return error;
    if (auto error = check_finite(task, y, phrase("numerics", "y of point %1 is not a finite number"))) return error;
    if (auto error = check_finite(task, sigma, phrase("numerics", "the uncertainty of point %1 is not a finite number"))) return error;
    const auto at = std::find_if(sigma.begin(), sigma.end(), [](double s) { return s <= 0; });
    if (at != sigma.end())
        return bad(task, say(phrase("numerics", "the uncertainty of point %1 is not above zero"), say_number(at - sigma.begin() + 1)),
                   say(phrase("numerics", "give a positive uncertainty or leave out that point")));
    return std::nullopt;
}

std::optional<Error> check_spread(const Phrase& task, std::span<const double> x) {
    if (!x.empty() && std::any_of(x.begin(), x.end(), [&](double v) { return v != x.front(); })) return std::nullopt;
    return bad(task, say(phrase("numerics", "all x are the same, so that no slope can be found")),
               say(phrase("numerics", "take readings at two different x at least")));
}

Error out_of_range(const Phrase& task) {
    return bad(task, say(phrase("numerics", "the numbers are too large or too small to compute with")),
               say(phrase("numerics", "use a unit that suits their size")));
}

} // namespace ullage
