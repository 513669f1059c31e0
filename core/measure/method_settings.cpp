// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/method_settings.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr MethodSetting settings[] = {
    {"repeatability_percent", phrase("measure", "drains of a unit repeat within"), "%", 0.01, 20,
     [] { return MeasureOptions().repeatability_percent; }},
    {"most_of_label_percent", phrase("measure", "a battery holds of its label at most"), "%", 100, 200,
     [] { return std::round(1e6 * MeasureOptions().most_of_label) / 1e4; }},
    {"most_quadratic_loss_percent", phrase("measure", "quadratic loss at the rated output at most"), "%", 0, 50,
     [] { return std::round(1e6 * MeasureOptions().most_quadratic_loss) / 1e4; }},
    {"moment_doubt_min", phrase("measure", "a moment is noted within"), "min", 0, 60, [] { return MeasureOptions().moment_doubt_min; }},
    {"simple_acceptance", phrase("measure", "a claim is decided by the value alone"), "", 0, 1, [] { return 0.0; }},
};

const MethodSetting* setting_of(const std::string& key) {
    const auto* const found = std::ranges::find(settings, std::string_view(key), &MethodSetting::key);
    return found == std::end(settings) ? nullptr : found;
}

} // namespace

std::span<const MethodSetting> all_method_settings() { return settings; }

Result<void> check_method_setting(const std::string& key, double value) {
    const MethodSetting* setting = setting_of(key);
    if (!setting) return Error{Failure::bad_input, say(phrase("measure", "the method has no such figure")), key, {}};
    if (std::isfinite(value) && value >= setting->least && value <= setting->most) return {};
    const auto with_unit = [&](double figure) {
        return say_digits(exact_text(figure) + (setting->unit.empty() ? std::string() : " " + std::string(setting->unit)));
    };
    return Error{Failure::bad_input,
                 say(phrase("measure", "this is not between %1 and %2"), say_digits(exact_text(setting->least)), with_unit(setting->most)),
                 say(setting->title), say(phrase("measure", "correct it, or leave it empty for the usual %1"), with_unit(setting->usual()))};
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
