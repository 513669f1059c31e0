// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "base/message.h"
#include "model/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A timestamped event in a run. The numbers stand in files: never change one.
enum class MarkKind {
    load_changed = 1,
    meter_zeroed = 2,   ///< the register was set to 0; a register value in the same row was read after that
    meter_swapped = 3,  ///< another meter took over; a register value in the same row is the new meter's
    output_tripped = 4, ///< the unit switched its output off by itself under load
    output_reset = 5,   ///< the tester switched the output on again
    cut_off = 6,        ///< the unit was seen to switch its output off
};

inline constexpr MarkKind all_mark_kinds[] = {MarkKind::load_changed,   MarkKind::meter_zeroed, MarkKind::meter_swapped,
                                              MarkKind::output_tripped, MarkKind::output_reset, MarkKind::cut_off};

/// "load changed", "meter zeroed", "meter swapped", "output tripped", "output reset", "cut-off": as files for machines have it.
[[nodiscard]] std::string_view mark_text(MarkKind mark);
/// The same for people.
[[nodiscard]] Message say_mark(MarkKind mark);
[[nodiscard]] std::optional<MarkKind> mark_from(std::string_view text);

/// What a tester notes at one moment; each part but the time may be missing. A mark is such a note too.
struct ReadingValues {
    UtcMs time_ms = 0;
    std::optional<double> gauge_percent;
    std::optional<double> register_wh;
    std::optional<double> meter_w;
    std::optional<double> display_w;
    std::optional<MarkKind> mark;
    std::string remark;
    std::optional<double> second_register_wh{}; ///< of the run's second meter, where two are in series

    bool operator==(const ReadingValues&) const = default;
};

/// A reading as it stands now, one of the RunRecord that holds it: there may be a million, so that none names its run. `sequence` is the order of
/// entry within its run and breaks ties of time.
struct Reading {
    ReadingId uuid;
    long sequence = 0;
    ReadingValues values;
    int version = 1; ///< 1 as entered; each amendment, withdrawal or restoration adds one
    bool withdrawn = false;

    bool operator==(const Reading&) const = default;
};

/// One entry of a reading's history: what it said from `written_ms` on, and why it was changed.
struct ReadingVersion {
    int version = 1;
    ReadingValues values;
    bool withdrawn = false;
    UtcMs written_ms = 0;
    std::string reason; ///< empty for version 1
};

/// Every version of a reading that has more than one, oldest first.
struct ReadingHistory {
    ReadingId reading_uuid;
    std::vector<ReadingVersion> versions;
};

/// Sorts by time, ties by sequence.
void sort_by_time(std::vector<Reading>& readings);
/// Puts a reading at its place among others in that order, instead of the one with its uuid where there is one.
void put_reading(std::vector<Reading>& readings, Reading reading);

} // namespace ullage
