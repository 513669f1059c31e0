// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room joining.
#pragma once

#include "joining/join_plan.h"
#include "model/run_record.h"

#include <string>
#include <vector>

namespace ullage::joining {

/// "drain of Alder 600, 14 May 2027": of its first reading that is not withdrawn, else of its making.
[[nodiscard]] Message run_title(const KeptRun& run, const std::string& unit_name);
/// "reading of 14 May 2027, 18:05, in drain of …".
[[nodiscard]] Message reading_title(const Reading& reading, const KeptRun& run, const Message& run_title);

[[nodiscard]] std::vector<JoinField> differing_fields(const Unit& here, const Unit& there);
[[nodiscard]] std::vector<JoinField> differing_fields(const Meter& here, const Meter& there);
/// The records hold the units and meters that the runs name.
[[nodiscard]] std::vector<JoinField> differing_fields(const RunRecord& here, const RunRecord& there);
[[nodiscard]] std::vector<JoinField> differing_fields(const ReadingValues& here, const ReadingValues& there, const std::string& zone);
[[nodiscard]] std::vector<JoinField> differing_fields(const Trace& here, const Trace& there, const std::string& zone);
[[nodiscard]] std::vector<JoinField> differing_fields(const LoadList& here, const LoadList& there);
/// The units that the sheets name may be empty.
[[nodiscard]] std::vector<JoinField> differing_fields(const PvSheet& here, const std::string& unit_here, const PvSheet& there,
                                                      const std::string& unit_there);

} // namespace ullage::joining
