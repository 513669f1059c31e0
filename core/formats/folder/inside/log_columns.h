// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"
#include "trace/column_role.h"

#include <array>
#include <optional>
#include <string_view>

namespace ullage::folder {

/// A value of the samples that a log's file in a folder has a column for.
struct LogValue {
    std::string_view title;
    std::optional<double> TraceSample::*value;
    ColumnRole role;
};

/// Behind the time, with which each line begins.
inline constexpr std::string_view log_time_title = "time";
inline constexpr std::array log_values{
    LogValue{"register_wh", &TraceSample::register_wh, ColumnRole::energy},    LogValue{"power_w", &TraceSample::power_w, ColumnRole::power},
    LogValue{"voltage_v", &TraceSample::voltage_v, ColumnRole::voltage},       LogValue{"current_a", &TraceSample::current_a, ColumnRole::current},
    LogValue{"gauge_percent", &TraceSample::gauge_percent, ColumnRole::gauge}, LogValue{"output_w", &TraceSample::output_w, ColumnRole::output}};

} // namespace ullage::folder
