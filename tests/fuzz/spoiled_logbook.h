// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fuzz/mutator.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace ullage::test {

/// A logbook with something of everything: drains, a charge, an amended and a withdrawn reading, photos, a trace, a load list, a PV sheet, a
/// half-typed entry. Overwrites what is at `path`.
void write_full_logbook(const std::filesystem::path& path);

/// Makes files that claim to be logbooks, by SQLite itself or byte by byte, past all that the store sees to.
class LogbookSpoiler {
public:
    LogbookSpoiler(std::uint64_t seed, const std::filesystem::path& folder);

    /// What was done to the last file.
    struct Spoiled {
        std::string what;
        bool other_schema = false; ///< its tables, indexes, views and triggers are not word for word those of a logbook
    };
    /// Makes the next file at `path`, with a write-ahead log beside it or without. Removes what was there.
    Spoiled next(const std::filesystem::path& path);

private:
    Spoiled spoil_bytes(const std::filesystem::path& path);
    Spoiled spoil_by_sql(const std::filesystem::path& path, bool schema, bool log);
    std::string value_change();
    std::string schema_change();
    template <std::size_t count>
    const char* any_of(const char* const (&choices)[count]) {
        return choices[files_.pick(count)];
    }

    struct SpoiledColumn {
        std::string table, name, type;
    };

    std::filesystem::path work_;
    std::string sound_;
    Mutator files_;
    std::vector<SpoiledColumn> columns_;
};

} // namespace ullage::test
