// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "base/message.h"
#include "model/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ullage {

/// What a run tests. The numbers stand in files: never change one.
enum class RunKind { drain = 1, no_load_drain = 2, charge = 3, sustained_output = 4, peak_output = 5, standby = 6 };

/// Where the energy of a charge run comes from. The numbers stand in files: never change one.
enum class ChargeSource { wall = 1, pv = 2 };

/// How a run ended. The numbers stand in files: never change one.
enum class RunEnd { still_running = 1, cut_off_seen = 2, found_off = 3, stopped_by_tester = 4 };

inline constexpr RunKind all_run_kinds[] = {RunKind::drain,       RunKind::no_load_drain, RunKind::charge, RunKind::sustained_output,
                                            RunKind::peak_output, RunKind::standby};
inline constexpr ChargeSource all_charge_sources[] = {ChargeSource::wall, ChargeSource::pv};
inline constexpr RunEnd all_run_ends[] = {RunEnd::still_running, RunEnd::cut_off_seen, RunEnd::found_off, RunEnd::stopped_by_tester};

/// "drain", "no-load drain", "charge", "sustained output", "peak output", "standby" (output off, left alone): as files for machines have it.
[[nodiscard]] std::string_view run_kind_text(RunKind kind);
/// The same for people.
[[nodiscard]] Message say_run_kind(RunKind kind);
/// "still running", "cut-off seen", "found off", "stopped by tester": as files for machines have it.
[[nodiscard]] std::string_view run_end_text(RunEnd end);
/// The same for people.
[[nodiscard]] Message say_run_end(RunEnd end);
[[nodiscard]] std::optional<RunKind> run_kind_from(std::string_view text);
[[nodiscard]] std::optional<RunEnd> run_end_from(std::string_view text);
/// "wall", "PV": as files for machines have it.
[[nodiscard]] std::string_view charge_source_text(ChargeSource source);
/// The same for people.
[[nodiscard]] Message say_charge_source(ChargeSource source);
/// Takes "pv" too.
[[nodiscard]] std::optional<ChargeSource> charge_source_from(std::string_view text);

/// One test of one unit.
struct Run {
    RunId uuid;
    UnitId unit_uuid;
    std::optional<MeterId> meter_uuid;
    RunKind kind = RunKind::drain;
    std::optional<bool> started_full; ///< absent: not stated
    RunEnd end = RunEnd::still_running;
    std::string load; ///< the tester's words for the load
    /// How late the end may have been noticed, minutes; absent: not stated. Only of a run that ended by cut-off.
    std::optional<double> end_noticed_within_min{};
    std::optional<double> ambient_c;
    std::optional<ChargeSource> charge_source; ///< of a charge run; absent: not stated
    std::string time_zone = "UTC";             ///< IANA name
    UtcMs created_ms = 0;
    /// Keys of an imported run sheet that this program does not know, in their order.
    std::vector<std::pair<std::string, std::string>> extra;
    std::optional<double> ambient_end_c{}; ///< ambient temperature at the end; `ambient_c` is that at the start
    /// Another meter in series with the first, whose register is noted beside it; after a mark "meter swapped" the meter that took over.
    std::optional<MeterId> second_meter_uuid{};

    bool operator==(const Run&) const = default;
};

} // namespace ullage
