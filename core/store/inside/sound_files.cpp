// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/sound_files.h"

#include "base/ids.h"

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <optional>
#include <vector>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kept_files = 200;
constexpr std::int64_t second_ns = 1'000'000'000;
constexpr std::int64_t kept_ns = 30 * 86400 * second_ns;
constexpr std::int64_t coarse_clock_ns = 20'000'000;

struct Entry {
    FileState state;
    std::uint32_t change_counter = 0;
    std::int64_t checked_ns = 0;
};

std::int64_t now_ns() { return std::chrono::duration_cast<std::chrono::nanoseconds>(std::chrono::system_clock::now().time_since_epoch()).count(); }

std::optional<fs::path> list_file() {
    for (const auto& [variable, below] : {std::pair("XDG_STATE_HOME", ""), std::pair("HOME", ".local/state")}) {
        const char* const folder = std::getenv(variable);
        if (folder && fs::path(folder).is_absolute()) return fs::path(folder) / below / "ullage" / "sound-logbooks";
    }
    return std::nullopt;
}

std::vector<Entry> entries_in(const fs::path& file) {
    std::vector<Entry> entries;
    std::ifstream in(file);
    Entry entry;
    while (entries.size() < kept_files && in >> entry.state.device >> entry.state.inode >> entry.state.size >> entry.state.modified_ns >>
                                              entry.state.changed_ns >> entry.state.names >> entry.change_counter >> entry.checked_ns)
        entries.push_back(entry);
    return entries;
}

} // namespace

bool known_sound(const FileState& state, std::uint32_t change_counter) {
    const auto file = list_file();
    if (!file) return false;
    const auto entries = entries_in(*file);
    return std::any_of(entries.begin(), entries.end(), [&](const Entry& entry) {
        return entry.state == state && entry.change_counter == change_counter && now_ns() - entry.checked_ns < kept_ns;
    });
}

void remember_sound(const FileState& state, std::uint32_t change_counter) {
    const std::int64_t now = now_ns();
    const auto file = list_file();
    if (!file || now - std::max(state.modified_ns, state.changed_ns) < coarse_clock_ns) return;
    std::vector<Entry> entries = entries_in(*file);
    std::erase_if(entries, [&](const Entry& entry) { return entry.state.same_file(state); });
    entries.insert(entries.begin(), {state, change_counter, now});
    if (entries.size() > kept_files) entries.resize(kept_files);

    std::error_code code;
    fs::create_directories(file->parent_path(), code);
    const fs::path fresh = file->string() + "." + new_uuid();
    std::ofstream out(fresh);
    for (const Entry& entry : entries)
        out << entry.state.device << ' ' << entry.state.inode << ' ' << entry.state.size << ' ' << entry.state.modified_ns << ' '
            << entry.state.changed_ns << ' ' << entry.state.names << ' ' << entry.change_counter << ' ' << entry.checked_ns << '\n';
    out.close();
    if (out) fs::rename(fresh, *file, code);
    if (!out || code) fs::remove(fresh, code);
}

} // namespace ullage::store
