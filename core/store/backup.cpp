// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include "base/instant.h"
#include "base/work_folder.h"
#include "store/inside/database.h"
#include "store/inside/file_access.h"
#include "store/inside/file_state.h"
#include "store/inside/identity.h"
#include "store/inside/interruption.h"
#include "store/inside/snapshot.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <ctime>
#include <fcntl.h>
#include <string_view>
#include <sys/stat.h>
#include <system_error>

namespace ullage {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view copy_ending = ".ullage-copy";
constexpr std::size_t day_length = 10; // 2026-11-28

/// The file that a link leads to, so that its copies lie beside it.
fs::path copied_file(const fs::path& logbook) {
    std::error_code code;
    const fs::path real = fs::weakly_canonical(logbook, code);
    return code ? fs::absolute(logbook, code) : real;
}

/// Six letters for the folder of a logbook (FNV-1a, 64 bits, as published by its authors).
std::string tag_of(const fs::path& folder) {
    std::uint64_t sum = 14695981039346656037ULL;
    for (const unsigned char letter : folder.string()) sum = (sum ^ letter) * 1099511628211ULL;
    constexpr std::uint64_t six_letters = 0xFFFFFF;
    return fmt::format("{:06x}", sum & six_letters);
}

/// Where the copies of a logbook lie, and what their names begin with.
struct CopyNames {
    fs::path folder;
    std::string stem; ///< with the dot before the day

    CopyNames(const fs::path& logbook, const BackupPlace& place) {
        const fs::path file = copied_file(logbook);
        stem = (file.extension() == ".ullage" ? file.stem() : file.filename()).string() + ".";
        std::error_code code;
        folder = place.folder.empty() ? file.parent_path() : place.folder;
        if (!fs::equivalent(folder, file.parent_path(), code)) stem += tag_of(file.parent_path()) + ".";
    }

    [[nodiscard]] fs::path of_day(const std::string& day) const { return folder / (stem + day + std::string(copy_ending)); }

    /// The day in the name of a copy of this logbook.
    [[nodiscard]] std::optional<std::string> day_in(const std::string& name) const {
        if (name.size() != stem.size() + day_length + copy_ending.size() || !name.starts_with(stem) || !name.ends_with(copy_ending))
            return std::nullopt;
        std::string day = name.substr(stem.size(), day_length);
        for (std::size_t i = 0; i < day.size(); ++i)
            if (i == 4 || i == 7 ? day[i] != '-' : day[i] < '0' || day[i] > '9') return std::nullopt;
        return day;
    }
};

std::string day_of(UtcMs now_ms) {
    const LocalTime local = to_local(now_ms, machine_zone());
    return fmt::format("{:04}-{:02}-{:02}", local.year, local.month, local.day);
}

/// Days from `day` to `until`; absent where one is no day of the calendar.
std::optional<long> days_between(std::string_view day, std::string_view until) {
    const auto days = [](std::string_view text) -> std::optional<std::chrono::sys_days> {
        const auto number = [&](std::size_t at, std::size_t length) {
            int value = 0;
            std::from_chars(text.data() + at, text.data() + at + length, value);
            return value;
        };
        const std::chrono::year_month_day date{std::chrono::year(number(0, 4)), std::chrono::month(static_cast<unsigned>(number(5, 2))),
                                               std::chrono::day(static_cast<unsigned>(number(8, 2)))};
        if (!date.ok()) return std::nullopt;
        return std::chrono::sys_days(date);
    };
    const auto from = days(day), to = days(until);
    if (!from || !to) return std::nullopt;
    return static_cast<long>((*to - *from).count());
}

/// Gives the copy the time at which its logbook was written to last, by which backup_due() sees that nothing is new.
void set_state_time(const fs::path& copy, std::int64_t state_ns) {
    constexpr std::int64_t second_ns = 1'000'000'000;
    const timespec times[2] = {{0, UTIME_OMIT}, {static_cast<std::time_t>(state_ns / second_ns), static_cast<long>(state_ns % second_ns)}};
    // Where a file system keeps no such time a copy is made once more than needed.
    [[maybe_unused]] const int set = ::utimensat(AT_FDCWD, copy.c_str(), times, 0);
}

Result<void> put_under_name(const fs::path& part, const fs::path& target, const store::Identity& identity) {
    std::error_code code;
    if (!fs::exists(fs::symlink_status(target, code))) {
        const auto put = store::put_in_place(part, target);
        // Another program may have made today's copy meanwhile.
        if (put || put.error().failure != Failure::refused) return put;
    }
    const auto present = store::identity_of(target);
    if (!present || !present.value().may_become(identity))
        return Error{Failure::refused, say(phrase("store", "a file of the copy's name is no copy of this logbook")), target.string(),
                     say(phrase("store", "move it away, or choose another folder for the copies"))};
    return store::replace_in_place(part, target);
}

std::size_t remove_old(const std::vector<BackupCopy>& copies, const std::string& today, int days_kept, const store::Identity& identity) {
    std::size_t removed = 0;
    for (std::size_t i = 1; i < copies.size(); ++i) { // the first is the newest
        const auto age = days_between(copies[i].day, today);
        if (!age || *age <= days_kept) continue;
        const auto held = store::identity_of(copies[i].path);
        if (!held || !held.value().may_become(identity)) continue;
        std::error_code code;
        if (fs::remove(copies[i].path, code)) ++removed;
    }
    return removed;
}

} // namespace

std::vector<BackupCopy> backup_copies(const fs::path& logbook, const BackupPlace& place) {
    const CopyNames names(logbook, place);
    std::vector<BackupCopy> copies;
    std::error_code code;
    for (fs::directory_iterator entry(names.folder, code), end; !code && entry != end; entry.increment(code)) {
        const auto day = names.day_in(entry->path().filename().string());
        std::error_code unknown;
        if (!day || !entry->is_regular_file(unknown)) continue;
        if (const auto state = store::state_of(entry->path())) copies.push_back({entry->path(), *day, state->size, state->modified_ns});
    }
    std::ranges::sort(copies, std::ranges::greater(), &BackupCopy::day);
    return copies;
}

bool backup_due(const fs::path& logbook, const BackupPlace& place, UtcMs now_ms, BackupMoment moment) {
    const auto state = store::state_of(copied_file(logbook));
    if (!state) return false;
    const std::vector<BackupCopy> copies = backup_copies(logbook, place);
    if (copies.empty()) return true;
    if (copies.front().state_ns == state->modified_ns) return false;
    return moment == BackupMoment::opened_or_closed || copies.front().day != day_of(now_ms);
}

Result<BackupOutcome> back_up(const fs::path& logbook, const BackupPlace& place, const Clock& clock, const std::atomic<bool>* cancelled) {
    const CopyNames names(logbook, place);
    if (auto obstacle = store::making_obstacle(names.folder)) return *obstacle;
    const auto before = store::state_of(copied_file(logbook));
    const auto look = store::guarded(logbook, [&] { return store::checked_snapshot(copied_file(logbook), clock, cancelled); });
    if (!look) return look.error();
    sweep_work_folders(names.folder);
    const Result<WorkFolder> workshop = WorkFolder::make(names.folder);
    if (!workshop) return workshop.error();
    const fs::path part = workshop.value() / "copy";
    const std::string today = day_of(clock.now_ms());
    const fs::path target = names.of_day(today);
    const auto of_target = [&](Error error) {
        error.where = target.string();
        return error;
    };
    const auto written = store::guarded(target, [&] { return store::write_copy(*look.value().database, part); });
    if (!written && written.error().failure == Failure::disk_full)
        return Error{Failure::disk_full, say(phrase("store", "the disk is full; no copy was made")), target.string(),
                     say(phrase("store", "free some space, or choose another folder for the copies"))};
    if (!written) return of_target(written.error());
    if (auto sound = store::check_logbook(part, clock, cancelled); !sound) {
        if (store::is_set(cancelled)) return sound.error();
        return Error{Failure::damaged, say(phrase("store", "the copy that was just made cannot be read back")), target.string(),
                     say(phrase("store", "check the disk, or choose another folder for the copies; no copy was kept"))};
    }
    const auto identity = store::identity_of(part);
    if (!identity) return of_target(identity.error());
    BackupOutcome outcome;
    if (identity.value().empty()) return outcome; // a copy of nothing is of no use, and could not be told from another
    if (before) set_state_time(part, before->modified_ns);
    if (auto put = put_under_name(part, target, identity.value()); !put) return put.error();
    outcome.copy = target;
    outcome.removed = remove_old(backup_copies(logbook, place), today, place.days_kept, identity.value());
    return outcome;
}

} // namespace ullage
