// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"
#include "exchange/latex_text.h"
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"
#include "exchange/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <set>

namespace ullage {

namespace {

/// A column of texts longer than this breaks them into lines.
constexpr std::size_t widest_text = 28, narrowest_head = 6;
// Characters on a line in \footnotesize of the article class on A4 with its own margins (8 pt digits are 4.25 pt wide in Computer Modern;
// text 345 pt wide upright, 598 pt in landscape: measured with pdflatex), less a little for capitals.
constexpr double upright_line = 76, landscape_line = 132;
constexpr double column_gap = 2.4; ///< characters: twice 5 pt

using Columns = std::vector<std::size_t>;

std::size_t body_width(const PrintedTable& printed, std::size_t column) {
    std::size_t width = narrowest_head;
    for (const auto& row : printed.rows) width = std::max(width, display_width(row[column].text()));
    return width;
}

std::vector<std::string> head_parts(const PrintedTable& printed, std::size_t column) {
    return broken_head(printed.heads[column], std::min(body_width(printed, column), widest_text));
}

/// In characters, with the gap to the next.
double set_width(const PrintedTable& printed, std::size_t column) {
    std::size_t width = std::min(body_width(printed, column), widest_text);
    for (const std::string& part : head_parts(printed, column)) width = std::max(width, display_width(part));
    return static_cast<double>(width) + column_gap;
}

double set_width(const PrintedTable& printed, const Columns& columns) {
    double width = 0;
    for (const std::size_t c : columns) width += set_width(printed, c);
    return width;
}

bool tell_rows_apart(const PrintedTable& printed, const Columns& columns) {
    std::set<std::vector<std::string>> seen;
    for (const auto& row : printed.rows) {
        std::vector<std::string> names;
        for (const std::size_t c : columns) names.push_back(row[c].text());
        if (!seen.insert(std::move(names)).second) return false;
    }
    return true;
}

/// The columns in parts that each fit the page. A table that fits a page in landscape stays whole; of a wider one each part fits it upright and
/// begins with as many identifying columns as tell its rows apart, where they leave room for others.
std::vector<Columns> parts_of(const Table& table, const PrintedTable& printed) {
    Columns all(printed.heads.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    if (set_width(printed, all) <= landscape_line) return {all};
    Columns lead;
    for (const std::size_t c : all)
        if (table.columns[c].identifies && (lead.empty() || !tell_rows_apart(printed, lead))) lead.push_back(c);
    // A name that came in on the way may say nothing more: the maker, where the run is needed too.
    for (std::size_t i = lead.size(); i-- > 1;) {
        Columns fewer = lead;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        if (tell_rows_apart(printed, fewer)) lead = std::move(fewer);
    }
    if (lead.size() > 1 && set_width(printed, lead) > upright_line * 2 / 3) lead.resize(1);
    std::vector<Columns> parts{lead};
    double width = set_width(printed, lead);
    for (const std::size_t c : all) {
        if (std::ranges::find(lead, c) != lead.end()) continue;
        const double more = set_width(printed, c);
        if (width + more > upright_line && parts.back().size() > lead.size()) {
            parts.push_back(lead);
            width = set_width(printed, lead);
        }
        parts.back().push_back(c);
        width += more;
    }
    return parts;
}

std::string column_kinds(const PrintedTable& printed, const Columns& columns) {
    std::string kinds = "@{}";
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const std::size_t c = columns[i];
        // Room for the mark of a note, which stands over the gap after a number.
        if (i > 0 && printed.right[columns[i - 1]] && !printed.right[c]) kinds += "@{\\hspace{1.6em}}";
        if (printed.right[c]) kinds += 'r';
        else kinds += body_width(printed, c) > widest_text ? ">{\\raggedright\\arraybackslash}p{12em}" : "l";
    }
    return kinds + "@{}";
}

/// A head stands on as many lines as keep its column as narrow as its cells.
std::string head_line(const PrintedTable& printed, const Columns& columns) {
    std::string line;
    for (const std::size_t c : columns) {
        const char side = printed.right[c] ? 'r' : 'l';
        std::string lines;
        for (const std::string& part : head_parts(printed, c)) lines += (lines.empty() ? "" : "\\\\") + latex_text(part);
        line += fmt::format("{}\\begin{{tabular}}[b]{{@{{}}{}@{{}}}}{}\\end{{tabular}}", line.empty() ? "" : "\n & ", side, lines);
    }
    return line + " \\\\\n";
}

std::string cell_text(const PrintedCell& cell, bool right) {
    std::string text = right ? latex_number_text(cell.text()) : latex_text(cell.text());
    // The mark takes no room, so that it does not push the digits out of line.
    if (cell.note != 0) text += fmt::format("\\rlap{{\\textsuperscript{{{}}}}}", cell.note);
    return text;
}

std::string preface(const Table& table) {
    return "% " + one_line(table.title) + "\n% Written by Ullage " + std::string(program_version()) +
           ". Bring it into a document with \\input; the preamble needs:\n"
           "%   \\usepackage[T1]{fontenc}\n"
           "%   \\usepackage[utf8]{inputenc}  % before LaTeX 2018\n"
           "%   \\usepackage{textcomp}        % before LaTeX 2020\n"
           "%   \\usepackage{array,booktabs,longtable}\n"
           "% A table wider than the page stands in parts that fit A4 with the margins of the article class. One that is wider than the page\n"
           "% upright but not in landscape: \\usepackage{pdflscape} and \\begin{landscape} ... \\end{landscape} around the \\input.\n";
}

/// "% columns: unit, delivered_wh": the keys of the other forms.
std::string keys_line(const Table& table, const Columns& columns) {
    std::string line;
    for (const std::size_t c : columns) line += (line.empty() ? "% columns: " : ", ") + one_line(table.columns[c].key);
    return line + '\n';
}

std::string one_part(const Table& table, const PrintedTable& printed, const Columns& columns, const std::string& caption) {
    std::string out = keys_line(table, columns) + "\\begin{longtable}{" + column_kinds(printed, columns) + "}\n";
    const std::string heads = "\\toprule\n" + head_line(printed, columns) + "\\midrule\n";
    out += "\\caption{" + latex_text(caption) + "}\\\\\n" + heads + "\\endfirsthead\n" + heads + "\\endhead\n\\bottomrule\n\\endfoot\n";
    for (const auto& row : printed.rows) {
        for (std::size_t i = 0; i < columns.size(); ++i) out += (i == 0 ? "" : " & ") + cell_text(row[columns[i]], printed.right[columns[i]]);
        out += " \\\\\n";
    }
    return out + "\\end{longtable}\n";
}

} // namespace

std::string latex_table(const Table& table) {
    const PrintedTable printed = printed_table(table);
    std::string out = preface(table) + std::string(latex_letter_definition) + "\\begingroup\\footnotesize\\setlength{\\tabcolsep}{5pt}\n";
    const std::vector<Columns> parts = parts_of(table, printed);
    for (std::size_t p = 0; p < parts.size(); ++p)
        out +=
            one_part(table, printed, parts[p], parts.size() == 1 ? table.title : fmt::format("{}, part {} of {}", table.title, p + 1, parts.size()));
    for (std::size_t n = 0; n < printed.notes.size(); ++n)
        out += fmt::format("\\par\\noindent\\textsuperscript{{{}}}~{}\n", n + 1, latex_text(printed.notes[n]));
    for (const std::string& remark : table.remarks) out += "\\par\\noindent " + latex_text(remark) + '\n';
    for (const auto& [heading, text] : table.method)
        out += "\\par\\noindent\\textbf{" + latex_text(heading) + ".} " + latex_text(text) + '\n';
    return out + "\\par\\endgroup\n";
}

} // namespace ullage
