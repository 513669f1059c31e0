// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "model/load_list.h"
#include "model/meter.h"
#include "model/photo.h"
#include "model/publisher.h"
#include "model/pv_sheet.h"
#include "model/reading.h"
#include "model/run.h"
#include "model/trace.h"
#include "model/unit.h"

#include <string_view>

namespace ullage::store {

/// What no logbook may hold, as bad_input with the field in `where`: texts, lists and numbers beyond model/limits.h, a number that is not finite, a
/// text that is no UTF-8; a unit, meter or PV sheet without a name; tags that sorted_tags() would not give or that tags_from() refuses. For what
/// comes in and for what was read from a file alike. Whether a value is likely is not judged here.
[[nodiscard]] Result<void> check(const Unit& unit);
[[nodiscard]] Result<void> check(const Meter& meter);
[[nodiscard]] Result<void> check(const Run& run);
[[nodiscard]] Result<void> check(const ReadingValues& values);
/// Refuses counts of modules below 1 or above 1000 besides.
[[nodiscard]] Result<void> check(const PvSheet& sheet);
/// Beside what model/load_list.h refuses.
[[nodiscard]] Result<void> check(const LoadList& list);
[[nodiscard]] Result<void> check(const Photo& photo);
[[nodiscard]] Result<void> check(const Trace& trace);
[[nodiscard]] Result<void> check(const TraceSample& sample);
/// An option of the method: its key and its number.
/// Texts that stand alone: why a reading was changed, a half-typed entry, the header of a log and how it was read.
[[nodiscard]] Result<void> check_reason(std::string_view reason);
[[nodiscard]] Result<void> check_method_setting(std::string_view key, double value);
[[nodiscard]] Result<void> check(const Publisher& publisher);
/// The name of a set of columns, which may be empty, and its keys, which may not.
[[nodiscard]] Result<void> check_column_set(std::string_view name, std::string_view keys);
[[nodiscard]] Result<void> check_meter_source(std::string_view source);
[[nodiscard]] Result<void> check_draft(std::string_view draft);
[[nodiscard]] Result<void> check_trace_answers(std::string_view signature, std::string_view answers);

} // namespace ullage::store
