// SPDX-License-Identifier: GPL-3.0-or-later
#include "latex_reader.h"
#include "sample_tables.h"

#include <algorithm>

namespace ullage::test {
namespace {

TEST(TableLatex, names_its_packages_and_holds_head_rows_notes_and_method) {
    const std::string text = table_text(hostile_table(), TableFormat::latex);
    for (const char* part :
         {"\\usepackage{array,booktabs,longtable}", "\\usepackage[T1]{fontenc}", "\\caption{Hostile \\& \\textless{}odd\\textgreater{} {[}units{]}}",
          "\\toprule", "\\midrule", "\\bottomrule", "\\endfirsthead", "\\endhead", "937~$\\pm$~19", "78.1~$\\pm$~1.6",
          "not~known\\rlap{\\textsuperscript{", "\\par\\noindent\\textbf{How \\& why.} Divided; see {*}JCGM 100:2008{*}, a \\textless{} b."})
        EXPECT_NE(text.find(part), std::string::npos) << part;
    EXPECT_NE(text.find("{@{}"), std::string::npos);
}

TEST(TableLatex, every_environment_and_brace_is_closed) {
    for (const Table& table : every_table()) {
        const std::string text = table_text(table, TableFormat::latex);
        for (const char* name : {"longtable", "tabular"}) {
            long open = 0;
            for (const auto& [word, step] : {std::pair{"\\begin{", 1L}, std::pair{"\\end{", -1L}})
                for (std::size_t at = text.find(word + std::string(name)); at != std::string::npos; at = text.find(word + std::string(name), at + 1))
                    open += step;
            EXPECT_EQ(open, 0) << name;
        }
        long depth = 0;
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (text[i] == '\\') ++i;
            else if (text[i] == '{') ++depth;
            else if (text[i] == '}') --depth;
            ASSERT_GE(depth, 0) << text.substr(0, i);
        }
        EXPECT_EQ(depth, 0) << table.title;
    }
}

TEST(TableLatex, a_table_too_wide_for_a_page_stands_in_parts_that_each_name_their_rows) {
    Table wide;
    wide.title = "Wide";
    wide.columns = {{"unit", "unit", {}, TableColumn::Content::text, 0, true}, {"run", "run", {}, TableColumn::Content::text, 0, true}};
    for (int c = 0; c < 20; ++c) wide.columns.push_back({"c" + std::to_string(c), "figure " + std::to_string(c), {}, TableColumn::Content::text, 0});
    for (const char* unit : {"Alder", "Birch"}) {
        auto& row = wide.rows.emplace_back();
        row.emplace_back(unit);
        row.emplace_back("drain");
        for (int c = 0; c < 20; ++c) row.emplace_back("text of ten");
    }
    const std::string text = table_text(wide, TableFormat::latex);
    std::size_t parts = 0;
    for (std::size_t at = text.find("% columns: "); at != std::string::npos; at = text.find("% columns: ", at + 1), ++parts) {
        const std::string keys = text.substr(at, text.find('\n', at) - at);
        EXPECT_TRUE(keys.starts_with("% columns: unit, ")) << keys;
        EXPECT_LE(std::ranges::count(keys, ','), 5) << "five columns of 11 characters with their gaps are 67 of 76: " << keys;
    }
    EXPECT_GE(parts, 4u);
    EXPECT_NE(text.find("\\caption{Wide, part 1 of " + std::to_string(parts) + "}"), std::string::npos) << text;
    // The name of the unit tells the rows apart, so that the run is not repeated; where it does not, it is.
    EXPECT_EQ(text.find("% columns: unit, run, c0"), text.rfind("% columns: unit, run"));
    wide.rows[1][0] = std::string("Alder");
    wide.rows[1][1] = std::string("another");
    const std::string both = table_text(wide, TableFormat::latex);
    EXPECT_NE(both.find("% columns: unit, run, "), both.rfind("% columns: unit, run, "));
    wide.columns.insert(wide.columns.begin() + 1, {"maker", "maker", {}, TableColumn::Content::text, 0, true});
    for (auto& row : wide.rows) row.insert(row.begin() + 1, std::string("Works"));
    const std::string made = table_text(wide, TableFormat::latex);
    EXPECT_NE(made.rfind("% columns: unit, run, "), std::string::npos) << "the maker tells nothing apart";
}

} // namespace
} // namespace ullage::test
