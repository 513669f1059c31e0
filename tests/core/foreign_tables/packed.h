// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>
#include <zip.h>

#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

/// A workbook of these parts, packed in memory.
inline std::string packed(const std::vector<std::pair<std::string, std::string>>& parts) {
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* const target = zip_source_buffer_create(nullptr, 0, 0, &error);
    zip_t* const zip = zip_open_from_source(target, ZIP_CREATE | ZIP_TRUNCATE, &error);
    for (const auto& [name, text] : parts)
        EXPECT_GE(zip_file_add(zip, name.c_str(), zip_source_buffer(zip, text.data(), text.size(), 0), ZIP_FL_OVERWRITE), 0);
    zip_source_keep(target);
    EXPECT_EQ(zip_close(zip), 0);
    EXPECT_EQ(zip_source_open(target), 0);
    std::string bytes;
    char piece[4096];
    for (zip_int64_t got = 0; (got = zip_source_read(target, piece, sizeof piece)) > 0;) bytes.append(piece, static_cast<std::size_t>(got));
    zip_source_close(target);
    zip_source_free(target);
    return bytes;
}

} // namespace ullage::test
