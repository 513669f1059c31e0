// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/tags.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

using Tags = std::vector<std::string>;

TEST(Tags, are_parted_at_semicolons_and_commas_and_stand_sorted_each_once) {
    EXPECT_EQ(tags_from(" tent; lent,tent ;; two words").value(), (Tags{"lent", "tent", "two words"}));
    EXPECT_EQ(tags_from(" ; ,").value(), Tags{});
}

TEST(Tags, two_that_differ_in_case_only_are_one_spelt_as_the_first) {
    EXPECT_EQ(sorted_tags({"Tent", "tent", "a"}), (Tags{"Tent", "a"}));
    EXPECT_TRUE(has_tag({"Tent"}, "tENT"));
    EXPECT_FALSE(has_tag({"Tent"}, "ten"));
}

TEST(Tags, text_of_tags_reads_back_as_the_same_tags) {
    const Tags tags{"=1+1", "lent", "zelt ≈"};
    EXPECT_EQ(tags_text(tags), "=1+1;lent;zelt ≈");
    EXPECT_EQ(tags_from(tags_text(tags, "; ")).value(), tags);
}

TEST(Tags, a_sentence_or_a_line_break_is_no_tag) {
    EXPECT_TRUE(tags_from(std::string(longest_tag, 'x')).ok());
    const auto long_one = tags_from(std::string(longest_tag + 1, 'x'));
    ASSERT_FALSE(long_one.ok());
    EXPECT_NE(long_one.error().what.text().find("too long"), std::string::npos);
    EXPECT_FALSE(tags_from("a\nb").ok());
}

} // namespace
} // namespace ullage
