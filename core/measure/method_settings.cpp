// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/method_settings.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr MethodSetting settings[] = {
    {"repeatability_percent", "drains of a unit repeat within", "%", 0.01, 20, [] { return MeasureOptions().repeatability_percent; }},
    {"most_of_label_percent", "a battery holds of its label at most", "%", 100, 200,
     [] { return std::round(1e6 * MeasureOptions().most_of_label) / 1e4; }},
    {"most_quadratic_loss_percent", "quadratic loss at the rated output at most", "%", 0, 50,
     [] { return std::round(1e6 * MeasureOptions().most_quadratic_loss) / 1e4; }},
    {"moment_doubt_min", "a moment is noted within", "min", 0, 60, [] { return MeasureOptions().moment_doubt_min; }},
    {"simple_acceptance", "a claim is decided by the value alone", "", 0, 1, [] { return 0.0; }},
};

const MethodSetting* setting_of(const std::string& key) {
    const auto* const found = std::ranges::find(settings, std::string_view(key), &MethodSetting::key);
    return found == std::end(settings) ? nullptr : found;
}

} // namespace

std::span<const MethodSetting> all_method_settings() { return settings; }

Result<void> check_method_setting(const std::string& key, double value) {
    const MethodSetting* setting = setting_of(key);
    if (!setting) return Error{Failure::bad_input, "the method has no such figure", key, {}};
    if (std::isfinite(value) && value >= setting->least && value <= setting->most) return {};
    const std::string unit = setting->unit.empty() ? std::string() : " " + std::string(setting->unit);
    return Error{Failure::bad_input, "this is not between " + exact_text(setting->least) + " and " + exact_text(setting->most) + unit,
                 std::string(setting->title), "correct it, or leave it empty for the usual " + exact_text(setting->usual()) + unit};
}

MeasureOptions options_from(const std::map<std::string, double>& stated) {
    MeasureOptions options;
    for (const auto& [key, value] : stated) {
        if (!check_method_setting(key, value)) continue;
        if (key == "repeatability_percent") {
            options.repeatability_percent = value;
            options.repeatability_source = RepeatabilitySource::stated;
        }
        if (key == "most_of_label_percent") options.most_of_label = value / 100;
        if (key == "most_quadratic_loss_percent") options.most_quadratic_loss = value / 100;
        if (key == "moment_doubt_min") options.moment_doubt_min = value;
        if (key == "simple_acceptance") options.simple_acceptance = value != 0;
    }
    return options;
}

} // namespace ullage
