// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/text_lines.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

TEST(FittedLines, a_long_line_is_broken_at_blanks_and_set_in_below_its_beginning) {
    EXPECT_EQ(fitted_lines("  one two three four\nshort\n", 13), "  one two\n    three\n    four\nshort\n");
    EXPECT_EQ(fitted_lines("a-word-that-is-longer than the line", 10), "a-word-that-is-longer\n  than the\n  line");
    EXPECT_EQ(fitted_lines("as it is\n\n", 10), "as it is\n\n");
    EXPECT_EQ(fitted_lines("", 10), "");
}

TEST(FittedLines, blanks_within_a_line_that_fits_stay) { EXPECT_EQ(fitted_lines("a    b", 10), "a    b"); }

} // namespace
} // namespace ullage
