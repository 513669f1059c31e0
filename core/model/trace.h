// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "model/ids.h"

#include <cstdint>
#include <optional>
#include <string>

namespace ullage {

/// What a log wrote at one moment; each part but the time may be missing. Register, power, voltage and current are a meter's. Gauge and output power
/// are what the unit says of itself: neither ever enters delivered energy.
struct TraceSample {
    UtcMs time_ms = 0;
    std::optional<double> register_wh, power_w, voltage_v, current_a;
    std::optional<double> gauge_percent{}, output_w{};

    bool operator==(const TraceSample&) const = default;
};

/// What the columns of a trace hold, added up. The numbers stand in files: never change one.
inline constexpr int holds_meter = 1, holds_gauge = 2, holds_output = 4;

/// A log file that was imported: what is kept about it beside its samples, which are read in a stream.
struct Trace {
    TraceId uuid;
    RunId run_uuid;
    std::optional<MeterId> meter_uuid;
    std::string file_name;       ///< as the tester knows it, without folder
    std::string fingerprint;     ///< of the file's bytes, by which a second import is noticed
    std::int64_t size_bytes = 0; ///< of the file
    std::string layout;          ///< how it was read (core/trace/layout_text.h)
    UtcMs offset_ms = 0;         ///< added to the times of the log
    /// Standard uncertainty of an offset that was estimated from the hand readings, s; absent where it was given, or none was needed.
    std::optional<double> offset_u_s{};
    std::string signature;           ///< of its header (TraceDetection::signature); empty where it is not known
    std::string zone;                ///< of times without an offset; empty where it is not known
    std::optional<UtcMs> start_ms{}; ///< of the log, where its times count from there
    std::int64_t started_anew = 0;   ///< how often the file was cut short or replaced while it was followed: size and fingerprint are of the last one
    std::int64_t rows_left_out = 0;
    std::int64_t samples = 0;
    UtcMs first_ms = 0, last_ms = 0;
    UtcMs added_ms = 0;
    bool withdrawn = false;
    int holds = holds_meter; ///< holds_meter, holds_gauge and holds_output, added up

    [[nodiscard]] bool has(int what) const { return (holds & what) != 0; }
    bool operator==(const Trace&) const = default;
};

} // namespace ullage
