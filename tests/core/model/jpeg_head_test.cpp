// SPDX-License-Identifier: GPL-3.0-or-later
// ITU-T Recommendation T.81 (1992): headers in annex B, blocks and sampling in annex A.
#include "model/jpeg_head.h"
#include "support/photo_bytes.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

using namespace std::string_literals;

TEST(JpegHead, a_picture_in_one_scan_needs_no_coefficients_and_others_two_bytes_for_each) {
    const auto one = jpeg_head(grey_jpeg('\xc0', 33, 16));
    ASSERT_TRUE(one);
    EXPECT_EQ(one->width, 33);
    EXPECT_EQ(one->height, 16);
    EXPECT_EQ(one->coefficient_bytes, 0);
    // Units of 16 by 16 pixels: three by one, of four blocks of luminance and two of colour, 64 coefficients each (A.2.4).
    constexpr std::int64_t all = 3 * 1 * (4 + 2) * 64 * 2;
    EXPECT_EQ(jpeg_head(grey_jpeg('\xc2', 33, 16))->coefficient_bytes, all);
    EXPECT_EQ(jpeg_head(grey_jpeg('\xc0', 33, 16, 1))->coefficient_bytes, all) << "each component in a scan of its own";
    EXPECT_EQ(jpeg_head(grey_jpeg('\xc2', 65'535, 65'535))->coefficient_bytes, 4096LL * 4096 * 6 * 128);
}

TEST(JpegHead, headers_that_are_cut_off_or_nonsense_are_no_fault) {
    const std::string whole = grey_jpeg('\xc2', 640, 480);
    for (std::size_t size = 0; size <= whole.size(); ++size) {
        const auto head = jpeg_head(std::string_view(whole).substr(0, size));
        EXPECT_TRUE(!head || head->width == 640) << size;
    }
    EXPECT_FALSE(jpeg_head("\xff\xd8"s + jpeg_segment('\xc2', "\x08\x01"s)));
    EXPECT_FALSE(jpeg_head("\xff\xd8"s + jpeg_segment('\xda', "\x01\x01\x00\x00\x3f\x00"s)));
    // Components that the header announces and does not have.
    const auto short_of_components = jpeg_head("\xff\xd8"s + jpeg_segment('\xc2', "\x08\x01\x00\x01\x00\xff"s) + jpeg_segment('\xda', ""));
    ASSERT_TRUE(short_of_components);
    EXPECT_EQ(short_of_components->coefficient_bytes, 0);
}

} // namespace
} // namespace ullage::test
