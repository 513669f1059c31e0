// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/result.h"
#include "measure/options.h"

#include <map>
#include <span>
#include <string>
#include <string_view>

namespace ullage {

/// A figure of MeasureOptions that a logbook may state in place of the program's own.
struct MethodSetting {
    std::string_view key;  ///< as the logbook keeps it, with its unit
    Phrase title;          ///< for people
    std::string_view unit; ///< "%", "min", or empty
    double least = 0, most = 0;
    double (*usual)(); ///< the program's own
};

/// Every such figure, in the order of forms and reports. `simple_acceptance` is 0 or 1.
[[nodiscard]] std::span<const MethodSetting> all_method_settings();

/// The program's own options with what is stated, by key, in their place. Keys that this version does not know and values out of range, which a later
/// version may allow, are left alone.
[[nodiscard]] MeasureOptions options_from(const std::map<std::string, double>& stated);

/// Errors (bad_input): a key that is not known, a value outside of what the setting allows; with what it allows.
[[nodiscard]] Result<void> check_method_setting(const std::string& key, double value);

} // namespace ullage
