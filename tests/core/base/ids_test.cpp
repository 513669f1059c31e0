// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "base/result.h"
#include "base/version.h"

#include <gtest/gtest.h>

#include <regex>
#include <set>

using namespace ullage;

TEST(Ids, are_random_uuids_of_version_4) {
    // RFC 4122, 4.4: version digit 4, variant digit 8 to b.
    const std::regex form("[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");
    std::set<std::string> seen;
    for (int i = 0; i < 1000; ++i) {
        const std::string uuid = new_uuid();
        ASSERT_TRUE(std::regex_match(uuid, form)) << uuid;
        ASSERT_TRUE(seen.insert(uuid).second) << "given twice: " << uuid;
    }
}

TEST(Error, sentence_leaves_empty_parts_out) {
    EXPECT_EQ((Error{Failure::bad_input, "`abc` is no number", "line 3", "write 431"}.sentence()), "line 3: `abc` is no number; write 431");
    EXPECT_EQ((Error{Failure::bad_input, "nothing there", "", ""}.sentence()), "nothing there");
}

TEST(Version, has_three_numbers) { EXPECT_TRUE(std::regex_match(std::string(program_version()), std::regex("\\d+\\.\\d+\\.\\d+"))); }
