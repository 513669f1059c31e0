// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <map>
#include <string>
#include <vector>

namespace ullage::test {

/// Reads the small part of LaTeX that a table needs, as TeX would: text commands and mathematics back to UTF-8. Whatever it does not know,
/// or what TeX would take for a command, is a failure of the test. Names of commands from The LaTeX Companion's symbol tables (from memory).
class LatexReader {
public:
    explicit LatexReader(std::string text) : text_(std::move(text)) {}

    /// The whole text as plain UTF-8; marks such as \textsuperscript{2} go to marks().
    std::string plain() {
        while (at_ < text_.size()) step();
        EXPECT_EQ(depth_, 0) << "unbalanced braces in " << text_;
        return plain_;
    }
    [[nodiscard]] const std::vector<std::string>& marks() const { return marks_; }

private:
    void step() {
        const char c = text_[at_++];
        switch (c) {
        case '\\': command(); return;
        case '$': mathematics(); return;
        case '~': plain_ += ' '; return;
        case '{':
            ++depth_;
            last_ = 0;
            return;
        case '}':
            --depth_;
            last_ = 0;
            return;
        case '&':
        case '#':
        case '%':
        case '_':
        case '^':
        case '<':
        case '>':
        case '|':
        case '"':
        case '`': ADD_FAILURE() << "a bare " << c << " in " << text_; return;
        default: break;
        }
        EXPECT_FALSE((c == '-' || c == '\'' || c == ',') && c == last_) << "a ligature in " << text_;
        last_ = c;
        plain_ += c;
    }

    std::string argument() {
        if (at_ >= text_.size() || text_[at_] != '{') {
            ADD_FAILURE() << "an argument is missing in " << text_;
            return {};
        }
        const std::size_t begin = ++at_;
        for (int open = 1; at_ < text_.size(); ++at_) {
            if (text_[at_] == '\\') ++at_;
            else if (text_[at_] == '{') ++open;
            else if (text_[at_] == '}' && --open == 0) break;
        }
        return text_.substr(begin, at_++ - begin);
    }

    void command() {
        last_ = 0;
        static const std::string specials = "{}$&#%_";
        if (specials.find(text_[at_]) != std::string::npos) {
            plain_ += text_[at_++];
            return;
        }
        if (text_[at_] == '-' || text_[at_] == ',') {
            plain_ += text_[at_++] == '-' ? "\xC2\xAD" : "\xE2\x80\xAF";
            return;
        }
        std::string name;
        while (at_ < text_.size() && std::isalpha(static_cast<unsigned char>(text_[at_]))) name += text_[at_++];
        if (name == "rlap" || name == "mbox" || name == "textbf") {
            LatexReader inner(argument());
            plain_ += inner.plain();
            marks_.insert(marks_.end(), inner.marks_.begin(), inner.marks_.end());
            return;
        }
        if (name == "textsuperscript") {
            marks_.push_back(argument());
            return;
        }
        if (name == "ullageletter") {
            (void)argument();
            plain_ += argument();
            return;
        }
        static const std::map<std::string, std::string> letters{{"textbackslash", "\\"}, {"textasciicircum", "^"},  {"textasciitilde", "~"},
                                                                {"textless", "<"},       {"textgreater", ">"},      {"textbar", "|"},
                                                                {"textquotedbl", "\""},  {"textasciigrave", "`"},   {"textdegree", "°"},
                                                                {"textendash", "–"},     {"textemdash", "—"},       {"textquoteright", "’"},
                                                                {"textquoteleft", "‘"},  {"textquotedblleft", "“"}, {"textquotedblright", "”"},
                                                                {"quotedblbase", "„"},   {"quotesinglbase", "‚"},   {"textbullet", "•"},
                                                                {"ldots", "…"},          {"texteuro", "€"}};
        const auto known = letters.find(name);
        EXPECT_NE(known, letters.end()) << "\\" << name << " in " << text_;
        if (known != letters.end()) plain_ += known->second;
        EXPECT_EQ(argument(), "") << "\\" << name << " would swallow the blank after it";
    }

    void mathematics() {
        last_ = 0;
        const std::size_t end = text_.find('$', at_);
        ASSERT_NE(end, std::string::npos) << "$ without an end in " << text_;
        const std::string inner = text_.substr(at_, end - at_);
        at_ = end + 1;
        static const std::map<std::string, std::string> signs{
            {"\\pm", "±"}, {"-", "-"},      {"\\times", "×"},  {"\\leq", "≤"}, {"\\geq", "≥"},   {"\\mu", "µ"},         {"^{2}", "²"}, {"^{3}", "³"},
            {"^{1}", "¹"}, {"\\cdot", "·"}, {"\\approx", "≈"}, {"\\neq", "≠"}, {"\\Omega", "Ω"}, {"\\rightarrow", "→"}, {"\\div", "÷"}};
        const auto known = signs.find(inner);
        EXPECT_NE(known, signs.end()) << "$" << inner << "$";
        if (known != signs.end()) plain_ += known->second;
    }

    std::string text_, plain_;
    std::vector<std::string> marks_;
    std::size_t at_ = 0;
    int depth_ = 0;
    char last_ = 0;
};

} // namespace ullage::test
