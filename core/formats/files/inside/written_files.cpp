// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/files/inside/written_files.h"

#include "base/fingerprint.h"

#include <fmt/format.h>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <vector>

namespace ullage {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_kept = 50'000;        // lines
constexpr std::size_t cut_down_at = 60'000 * 40; // bytes, somewhat more than most_kept lines have

/// Empty where the account has no folder for it.
fs::path list_path() {
    // A path that is not absolute is to be ignored (XDG Base Directory Specification).
    if (const char* state = std::getenv("XDG_STATE_HOME"); state && *state == '/') return fs::path(state) / "ullage" / "written-files";
    if (const char* home = std::getenv("HOME"); home && *home == '/') return fs::path(home) / ".local" / "state" / "ullage" / "written-files";
    return {};
}

std::string fingerprint_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    Fingerprint sum;
    std::vector<char> part(1 << 18);
    while (file.read(part.data(), static_cast<std::streamsize>(part.size())) || file.gcount() > 0)
        sum.add({part.data(), static_cast<std::size_t>(file.gcount())});
    return file.eof() && !file.bad() ? sum.text() : std::string();
}

/// Keeps the latest lines; the caller holds the lock on the list.
void cut_down(int descriptor, const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    std::string kept;
    for (std::size_t i = lines.size() > most_kept ? lines.size() - most_kept : 0; i < lines.size(); ++i) kept += lines[i] + '\n';
    // In place, so that the lock stays with the file that everybody opens; what a crash cuts off is forgotten, no more.
    if (::ftruncate(descriptor, 0) == 0) (void)!::write(descriptor, kept.data(), kept.size());
}

} // namespace

void remember_written(const std::string& path) {
    const fs::path list = list_path();
    std::error_code trouble;
    const std::uintmax_t size = fs::file_size(path, trouble);
    if (list.empty() || trouble) return;
    fs::create_directories(list.parent_path(), trouble);
    const int descriptor = ::open(list.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    if (descriptor < 0) return;
    const std::string line = fmt::format("{} {}\n", fingerprint_of(path), size);
    // The lock keeps others from writing while one cuts the list down; without it a line may get lost.
    (void)::flock(descriptor, LOCK_EX);
    (void)!::write(descriptor, line.data(), line.size());
    if (const std::uintmax_t length = fs::file_size(list, trouble); !trouble && length > cut_down_at) cut_down(descriptor, list);
    ::close(descriptor);
}

bool is_as_written(const std::string& path) {
    std::error_code trouble;
    const std::uintmax_t size = fs::file_size(path, trouble);
    const fs::path list = list_path();
    if (list.empty() || trouble) return false;
    const std::string ending = fmt::format(" {}", size);
    std::ifstream in(list, std::ios::binary);
    std::string sum; // taken once a line has the file's size: a large file of somebody else is not read for nothing
    for (std::string line; std::getline(in, line);) {
        if (!line.ends_with(ending)) continue;
        if (sum.empty()) sum = fingerprint_of(path);
        if (!sum.empty() && line == sum + ending) return true;
    }
    return false;
}

} // namespace ullage
