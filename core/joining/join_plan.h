// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/logbook.h"

#include <cstddef>
#include <set>
#include <string>
#include <vector>

namespace ullage {

/// What of two logbooks is compared, record by record, by its identifier.
enum class JoinedKind { unit, meter, run, reading, photo, log, load_list, pv_sheet };
/// "unit", "meter", "run", "reading", "photo", "log", "load list", "PV sheet": for keys.
[[nodiscard]] std::string_view joined_kind_text(JoinedKind kind);

/// In what a record differs.
enum class JoinMatter {
    differs,         ///< both logbooks have it, and it does not say the same
    withdrawn_here,  ///< it stands in the other alone; taken, it comes back as it stands there
    withdrawn_there, ///< it stands here alone; taken, it is withdrawn here too
    same_readings,   ///< a run of the other with the same readings as one here of another identifier; taken, it comes in as a further run
    overlapping      ///< a log of the other tells of times that one here tells of; taken, it replaces the one here
};

/// One field in which a record differs, in words; an empty value is not stated.
struct JoinField {
    Message name, here, there;

    bool operator==(const JoinField&) const = default;
};

/// A record that differs. Unless it is taken from the other it stays as it is here.
struct JoinDifference {
    JoinedKind kind = JoinedKind::unit;
    JoinMatter matter = JoinMatter::differs;
    std::string uuid; ///< in the other logbook
    Message title;    ///< such as "reading of 14 May 2027, 18:05, in drain of Alder 600"
    std::vector<JoinField> fields{};
    /// What stands here is an earlier version of what the other says: it was changed there alone.
    bool changed_there_only = false;
    std::set<std::string> needs{}; ///< keys of differences without which this one is of no account
    RunId run_uuid{};              ///< of a reading, photo or log

    /// Names it among all differences of two logbooks.
    [[nodiscard]] std::string key() const { return std::string(joined_kind_text(kind)) + " " + uuid; }
};

/// What the other logbook has and this one has not.
struct JoinArrival {
    JoinedKind kind = JoinedKind::unit; ///< a run stands for what comes into a run that both have, too
    std::string uuid;
    Message title;
    bool known = false;                             ///< the run is here already
    std::size_t readings = 0, photos = 0, logs = 0; ///< of a run, without those that are withdrawn there
    std::vector<ReadingId> reading_uuids{};         ///< of a known run: those to be taken over
    std::vector<PhotoId> photo_uuids{};             ///< likewise
    std::vector<TraceId> trace_uuids{};             ///< likewise
    std::string name{};                             ///< of a load list whose name is taken: the one that it gets
    std::set<std::string> needs{};                  ///< keys of differences without which it stays out
};

/// What joining two logbooks comes to. Nothing of the other is taken that is withdrawn there, but for what belongs to a run.
struct JoinPlan {
    std::vector<JoinArrival> arrivals;
    std::vector<JoinDifference> differences;
    std::vector<Message> notices; ///< for people

    [[nodiscard]] bool empty() const { return arrivals.empty() && differences.empty(); }
    /// The keys of all differences, or of those that were changed in the other alone.
    [[nodiscard]] std::set<std::string> all_keys() const;
    [[nodiscard]] std::set<std::string> keys_changed_there_only() const;
};

/// Compares two open logbooks; both are only read. A reading, a meter or a photo whose versions there are all here too is no difference: this logbook
/// knows more. Errors: those of reading the logbooks.
[[nodiscard]] Result<JoinPlan> plan_join(const Logbook& here, const Logbook& there);

/// The sentence that refuses to join a logbook with itself; nothing where the two are different files.
[[nodiscard]] std::optional<Error> same_file_error(const std::filesystem::path& here, const std::filesystem::path& there);

/// "comes in with 12 readings, 2 photos and 1 log", of a run that is here "12 readings, 2 photos"; empty for other records.
[[nodiscard]] Message say_arrival(const JoinArrival& arrival);
/// What a difference comes to where it has no fields: "withdrawn here", "withdrawn there", "the same readings as a run here", …
[[nodiscard]] Message say_join_matter(JoinMatter matter);

} // namespace ullage
