// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/recorder_of.h"

#include "store/inside/file_access.h"
#include "store/inside/file_state.h"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <string>
#include <system_error>

namespace ullage {

namespace {

namespace fs = std::filesystem;

/// Whether what a process tells of a descriptor names a lock for writing.
bool locks_for_writing(const fs::path& told) {
    std::ifstream in(told);
    for (std::string line; std::getline(in, line);)
        if (line.starts_with("lock:") && line.find(" WRITE ") != std::string::npos) return true;
    return false;
}

bool records_into(const fs::path& process, const store::FileState& file) {
    std::error_code code;
    for (fs::directory_iterator each(process / "fd", code), end; !code && each != end; each.increment(code)) {
        const auto open = store::state_of(each->path());
        if (open && open->same_file(file) && locks_for_writing(process / "fdinfo" / each->path().filename())) return true;
    }
    return false;
}

std::string first_argument(const fs::path& process) {
    std::ifstream in(process / "cmdline", std::ios::binary);
    std::string program, first;
    std::getline(in, program, '\0');
    std::getline(in, first, '\0');
    return first;
}

} // namespace

bool is_recorded_into(const fs::path& path) { return store::is_recorded(path); }

std::optional<Recorder> recorder_of(const fs::path& path) {
    if (!store::is_recorded(path)) return std::nullopt;
    Recorder recorder;
    const auto file = store::state_of(path);
    std::error_code code;
    for (fs::directory_iterator each("/proc", code), end; file && !code && each != end; each.increment(code)) {
        const std::string name = each->path().filename().string();
        const bool process = std::ranges::all_of(name, [](unsigned char letter) { return std::isdigit(letter) != 0; });
        if (!process || !records_into(each->path(), *file)) continue;
        recorder = {std::stol(name), first_argument(each->path())};
        break;
    }
    return recorder;
}

} // namespace ullage
