// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"
#include "exchange/latex_text.h"
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"
#include "exchange/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

/// A column of texts longer than this breaks them into lines.
constexpr std::size_t widest_text = 28, narrowest_head = 6;
/// A row of more characters than this is set smaller, so that it has a chance on a page in landscape.
constexpr std::size_t widest_row = 120;

std::size_t body_width(const PrintedTable& printed, std::size_t column) {
    std::size_t width = narrowest_head;
    for (const auto& row : printed.rows) width = std::max(width, display_width(row[column].text()));
    return width;
}

std::string column_kinds(const PrintedTable& printed) {
    std::string kinds = "@{}";
    for (std::size_t c = 0; c < printed.heads.size(); ++c) {
        // Room for the mark of a note, which stands over the gap after a number.
        if (c > 0 && printed.right[c - 1] && !printed.right[c]) kinds += "@{\\hspace{1.6em}}";
        if (printed.right[c]) kinds += 'r';
        else kinds += body_width(printed, c) > widest_text ? ">{\\raggedright\\arraybackslash}p{12em}" : "l";
    }
    return kinds + "@{}";
}

std::string_view size_of(const PrintedTable& printed) {
    std::size_t width = 0;
    for (std::size_t c = 0; c < printed.heads.size(); ++c) width += std::min(body_width(printed, c), widest_text);
    return width > widest_row ? "\\scriptsize\\setlength{\\tabcolsep}{3pt}" : "\\footnotesize\\setlength{\\tabcolsep}{5pt}";
}

/// A head stands on as many lines as keep its column as narrow as its cells.
std::string head_line(const PrintedTable& printed) {
    std::string line;
    for (std::size_t c = 0; c < printed.heads.size(); ++c) {
        const char side = printed.right[c] ? 'r' : 'l';
        std::string lines;
        for (const std::string& part : broken_head(printed.heads[c], std::min(body_width(printed, c), widest_text)))
            lines += (lines.empty() ? "" : "\\\\") + latex_text(part);
        line += fmt::format("{}\\begin{{tabular}}[b]{{@{{}}{}@{{}}}}{}\\end{{tabular}}", c == 0 ? "" : "\n & ", side, lines);
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
           "% A table wider than the page: \\usepackage{pdflscape} and \\begin{landscape} ... \\end{landscape} around the \\input, or leave out columns.\n";
}

} // namespace

std::string latex_table(const Table& table) {
    const PrintedTable printed = printed_table(table);
    std::string out = preface(table) + std::string(latex_letter_definition);
    out.append("\\begingroup").append(size_of(printed)).append("\n\\begin{longtable}{").append(column_kinds(printed)).append("}\n");
    const std::string heads = "\\toprule\n" + head_line(printed) + "\\midrule\n";
    out += "\\caption{" + latex_text(table.title) + "}\\\\\n" + heads + "\\endfirsthead\n" + heads + "\\endhead\n\\bottomrule\n\\endfoot\n";
    for (const auto& row : printed.rows) {
        for (std::size_t c = 0; c < row.size(); ++c) out += (c == 0 ? "" : " & ") + cell_text(row[c], printed.right[c]);
        out += " \\\\\n";
    }
    out += "\\end{longtable}\n";
    for (std::size_t n = 0; n < printed.notes.size(); ++n)
        out += fmt::format("\\par\\noindent\\textsuperscript{{{}}}~{}\n", n + 1, latex_text(printed.notes[n]));
    for (const std::string& remark : table.remarks) out += "\\par\\noindent " + latex_text(remark) + '\n';
    for (const auto& [heading, text] : table.method)
        out += "\\par\\noindent\\textbf{" + latex_text(heading) + ".} " + latex_text(text) + '\n';
    return out + "\\par\\endgroup\n";
}

} // namespace ullage
