// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"
#include "joining/join.h"

namespace ullage {

/// The identifier of a difference as people name it: the first eight letters of that of its record, or as many as tell it from the others.
[[nodiscard]] std::string short_id(const JoinDifference& difference, const JoinPlan& plan);

/// The keys of the differences that are asked for: "all", "newer" (changed in the other logbook alone) or the beginning of an identifier, each.
/// Error, naming the word: none has it, or several.
[[nodiscard]] Result<std::set<std::string>> asked_keys(const std::vector<std::string>& asked, const JoinPlan& plan);

/// A row for each record that comes in and for each field that differs, with what becomes of it: outcome, record, id, field, here, there. What
/// joining says of itself stands above, notices below.
[[nodiscard]] Table join_table(const JoinPlan& plan, const std::set<std::string>& taken_keys, const Message& answer);

} // namespace ullage
