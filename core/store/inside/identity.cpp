// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/identity.h"

#include "store/inside/content_check.h"
#include "store/inside/database.h"
#include "store/inside/file_access.h"
#include "store/inside/file_header.h"
#include "store/inside/snapshot.h"
#include "store/inside/steady_copy.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>

namespace ullage::store {

bool Identity::may_become(const Identity& later) const {
    if (empty()) return false;
    for (std::size_t i = 0; i < first.size(); ++i)
        if (first[i] && first[i] != later.first[i]) return false;
    return true;
}

Result<Identity> identity_of(const std::filesystem::path& path) {
    const auto file = SharedFile::open(path);
    if (!file) return file.error();
    std::array<unsigned char, header_bytes> head{};
    const std::size_t length = std::min(head.size(), file.value().size());
    if (!file.value().read(head.data(), length)) return unreadable_error(path);
    if (auto known = check_header({head.data(), length}, path); !known) return known.error();
    return guarded(path, [&]() -> Result<Identity> {
        SQLite::Database resting(resting_address(path), SQLite::OPEN_READONLY | SQLite::OPEN_URI);
        harden(resting);
        if (auto schema = check_schema(resting, path); !schema) return schema.error();
        Identity identity;
        const char* const tables[] = {"units", "meters", "load_lists", "pv_sheets"};
        for (std::size_t i = 0; i < identity.first.size(); ++i) {
            if (!resting.tableExists(tables[i])) continue; // of an older version
            SQLite::Statement query(resting, std::string("SELECT uuid FROM ") + tables[i] + " ORDER BY id LIMIT 1");
            if (query.executeStep()) identity.first[i] = query.getColumn(0).getString();
        }
        return identity;
    });
}

} // namespace ullage::store
