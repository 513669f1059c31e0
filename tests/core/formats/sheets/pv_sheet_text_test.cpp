// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/pv_sheet_text.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

const char* whole = "# a comment\n\nname: wagon roof\nunit: Pelm 900\nmodule: Invented 200\nvoc_v: 24,3\nvmp_v: 20.4\nisc_a: 10.2\nimp_a: 9.8\n"
                    "voc_coefficient: -0.30 %/°C\nvmp_coefficient: −82 mV/K\npower_coefficient: -0.38\nnoct_c: 45\ncells: crystalline silicon\n"
                    "series: 2\nparallel: 1\ncoldest_c: -15\nhottest_c: 35\npv_max_v: 60\nremark: as wired in May\r\n";

std::string refusal(const std::string& text) {
    const auto read = read_pv_sheet(text, "roof.txt");
    return read ? std::string() : read.error().sentence();
}

TEST(PvSheetFile, every_key_is_read_and_written_back) {
    const auto read = read_pv_sheet(whole, "roof.txt");
    ASSERT_TRUE(read) << read.error().sentence();
    const PvSheetText& sheet = read.value();
    EXPECT_EQ(sheet.unit, "Pelm 900");
    EXPECT_EQ(sheet.sheet.voc_v, 24.3);
    EXPECT_EQ(sheet.sheet.voc_coefficient, (PvCoefficient{-0.30, PvPerDegree::percent}));
    EXPECT_EQ(sheet.sheet.vmp_coefficient, (PvCoefficient{-82, PvPerDegree::milli}));
    EXPECT_EQ(sheet.sheet.series, 2);
    EXPECT_EQ(sheet.limits.max_v, 60);
    EXPECT_EQ(sheet.sheet.remark, "as wired in May");
    const auto again = read_pv_sheet(pv_sheet_text(sheet), "again");
    ASSERT_TRUE(again) << again.error().sentence();
    EXPECT_EQ(again.value().sheet, sheet.sheet);
    EXPECT_EQ(again.value().unit, sheet.unit);
    EXPECT_EQ(pv_sheet_text(again.value()), pv_sheet_text(sheet));
}

TEST(PvSheetFile, what_cannot_be_read_is_named_with_file_line_and_way_out) {
    EXPECT_EQ(refusal("voc_v: 40\nvolts: 3\n").find("roof.txt, line 2: the key `volts` is not known"), 0u) << refusal("voc_v: 40\nvolts: 3\n");
    EXPECT_NE(refusal("voc_v: 40\nvoc_v: 41\n").find("stands twice"), std::string::npos);
    EXPECT_NE(refusal("voc_v 40\n").find("no colon"), std::string::npos);
    EXPECT_NE(refusal("voc_v: forty\n").find("line 1"), std::string::npos);
    EXPECT_NE(refusal("series: 2.5\n").find("no number of modules"), std::string::npos);
    EXPECT_NE(refusal("voc_coefficient: -3 V\n").find("unknown unit"), std::string::npos);
    EXPECT_NE(refusal("cells: paper\n").find("no kind of cell"), std::string::npos);
    EXPECT_NE(refusal("pv_max_v: 0\n").find("above 0"), std::string::npos);
    EXPECT_NE(refusal("voc_v: 40\nvoc_coefficient: 0.27\n").find("roof.txt, voc_coefficient"), std::string::npos);
}

TEST(PvSheetFile, any_bytes_are_refused_or_read_but_never_crash) {
    std::string bytes;
    for (int i = 0; i < 2000; ++i) bytes += static_cast<char>((i * 7919 + i / 13) % 256);
    for (std::size_t length = 0; length < bytes.size(); length += 37) (void)read_pv_sheet(std::string_view(bytes).substr(0, length), "x");
    for (std::size_t length = 0; length < std::string(whole).size(); ++length) (void)read_pv_sheet(std::string_view(whole).substr(0, length), "x");
}

} // namespace
} // namespace ullage
