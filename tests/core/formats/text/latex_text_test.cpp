// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/latex_text.h"

#include "core/formats/tables/latex_reader.h"

#include <gtest/gtest.h>

#include <string>

namespace ullage::test {
namespace {

// The ten characters that LaTeX reserves: L. Lamport, LaTeX: A Document Preparation System, 2nd edition, 2.2.1 (from memory).
TEST(LatexText, no_character_of_a_text_is_a_command) {
    EXPECT_EQ(latex_text("\\ { } $ & # ^ _ ~ %"), "\\textbackslash{} \\{ \\} \\$ \\& \\# \\textasciicircum{} \\_ \\textasciitilde{} \\%");
    EXPECT_EQ(latex_text("\\input{/etc/passwd}"), "\\textbackslash{}input\\{/etc/passwd\\}");
    EXPECT_EQ(latex_text("<a|b> \"c\" `d`"),
              "\\textless{}a\\textbar{}b\\textgreater{} \\textquotedbl{}c\\textquotedbl{} \\textasciigrave{}d\\textasciigrave{}");
}

TEST(LatexText, every_printable_ascii_text_comes_back) {
    std::string all;
    for (char c = ' '; c < 0x7F; ++c) all += c;
    all += "--- '' ,, !` ?` << >>";
    EXPECT_EQ(LatexReader(latex_text(all)).plain(), all);
}

TEST(LatexText, signs_of_measurement_become_commands_that_pdflatex_knows) {
    EXPECT_EQ(latex_text("±"), "$\\pm$");
    EXPECT_EQ(latex_text("−5 °C"), "$-$5 \\textdegree{}C");
    EXPECT_EQ(latex_text("2 × 3 ≤ 7 µs → 4 Ω…"), "2 $\\times$ 3 $\\leq$ 7 $\\mu$s $\\rightarrow$ 4 $\\Omega$\\ldots{}");
    EXPECT_EQ(latex_text("5–6 “x” €"), "5\\textendash{}6 \\textquotedblleft{}x\\textquotedblright{} \\texteuro{}");
}

TEST(LatexText, letters_of_europe_stay_and_others_carry_their_number) {
    EXPECT_EQ(latex_text("café Łódź Ærø"), "café Łódź Ærø");
    EXPECT_EQ(latex_text("電"), "\\ullageletter{96FB}{電}");
    EXPECT_EQ(latex_text("\xF0\x9F\x94\x8B"), "\\ullageletter{1F50B}{\xF0\x9F\x94\x8B}");
}

TEST(LatexText, a_text_cannot_be_taken_for_an_option_of_the_row_before) {
    // After \\ TeX looks for * and [ (The LaTeX Companion, on tabular; from memory).
    EXPECT_EQ(latex_text("[2em] *"), "{[}2em{]} {*}");
}

TEST(LatexText, lines_become_blanks_and_controls_are_shown) {
    EXPECT_EQ(latex_text("a\n\\\\b\x01%c"), "a \\textbackslash{}\\textbackslash{}b\\textbackslash{}u0001\\%c");
}

TEST(LatexText, a_minus_before_a_digit_is_a_minus_and_numbers_do_not_break) {
    EXPECT_EQ(latex_number_text("-17.5 ± 2.0"), "$-$17.5~$\\pm$~2.0");
    EXPECT_EQ(latex_number_text("-3 to -1"), "$-$3~to~$-$1");
}

} // namespace
} // namespace ullage::test
