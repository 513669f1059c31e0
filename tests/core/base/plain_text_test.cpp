// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/plain_text.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

TEST(PlainText, blanks_and_minus_signs_of_spreadsheets_become_those_of_a_keyboard) {
    EXPECT_EQ(with_plain_blanks("\u22121\u202F234\u2009567\u00A0Wh"), "-1 234 567 Wh");
    EXPECT_EQ(with_plain_blanks("\u00A0 431 \u202F"), "431") << "none is left at the ends";
}

TEST(PlainText, all_else_stays_byte_for_byte) {
    EXPECT_EQ(with_plain_blanks("Z\u00E4hler \u2248 5 \u20AC"), "Z\u00E4hler \u2248 5 \u20AC");
    EXPECT_EQ(with_plain_blanks("cut \xE2\x80"), "cut \xE2\x80") << "also half a character";
}

} // namespace
} // namespace ullage
