// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::test {

/// Feeds spoiled inputs to one part of the program and holds it to its promises.
class FuzzTarget {
public:
    FuzzTarget() = default;
    virtual ~FuzzTarget() = default;
    FuzzTarget(const FuzzTarget&) = delete;
    FuzzTarget& operator=(const FuzzTarget&) = delete;

    /// Makes the next input and tries it; false where a promise was broken, which it has said.
    virtual bool one() = 0;
    /// How many inputs there were and what came of them, for a person.
    [[nodiscard]] virtual std::string tally() const = 0;

protected:
    /// Says which promise was broken; returns false.
    static bool broken(const std::string& promise);
};

// `into` is a folder that exists, for the inputs at work. The same seed makes the same inputs everywhere.

/// Logs of meters and run sheets, and what these take to the analysis.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_logs(std::uint64_t seed, const std::filesystem::path& into);
/// Logbook files: bytes, values in sound pages, tables and triggers, write-ahead logs.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_logbooks(std::uint64_t seed, const std::filesystem::path& into);
/// Photos: the logbook's check of them and the time that their cameras wrote.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_photos(std::uint64_t seed, const std::filesystem::path& into);
/// Load lists, their totals and tables.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_load_lists(std::uint64_t seed, const std::filesystem::path& into);
/// PV sheets and the check of their strings.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_pv_sheets(std::uint64_t seed, const std::filesystem::path& into);
/// Foreign tables: texts, pages, workbooks, and workbooks with one part spoiled.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_tables(std::uint64_t seed, const std::filesystem::path& into);
/// The contents of a folder that a logbook was written to.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_folders(std::uint64_t seed, const std::filesystem::path& into);
/// What live sources may send, and their descriptions.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_live(std::uint64_t seed, const std::filesystem::path& into);
/// Command lines, on files of a folder of its own in `into`.
[[nodiscard]] std::unique_ptr<FuzzTarget> fuzz_commands(std::uint64_t seed, const std::filesystem::path& into);

/// The files of a folder with this ending, in order of their names: the same seed is to spoil the same texts.
[[nodiscard]] std::vector<std::string> texts_of(const std::filesystem::path& folder, std::string_view ending);
[[nodiscard]] std::string bytes_of(const std::filesystem::path& path);
void write_bytes_to(const std::filesystem::path& path, std::string_view bytes);

[[nodiscard]] inline bool finite(const std::optional<double>& value) { return !value || std::isfinite(*value); }

} // namespace ullage::test
