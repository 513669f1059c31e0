// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"
#include "formats/tables/inside/distinct_rows.h"
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"
#include "formats/text/latex_text.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace ullage {

namespace {

/// A column of texts longer than this breaks them into lines.
constexpr std::size_t widest_text = 28, narrowest_head = 6;
// Characters on a line in \footnotesize of the article class on A4 with its own margins (8 pt digits are 4.25 pt wide in Computer Modern;
// text 345 pt wide upright, 598 pt in landscape: measured with pdflatex), less a little for capitals.
constexpr double upright_line = 76, landscape_line = 132;
constexpr std::size_t comment_width = 130;
constexpr double column_gap = 2.4; ///< characters: twice 5 pt

using Columns = std::vector<std::size_t>;

/// The table as far as it is asked for again and again.
struct Setting {
    const StreamedTable& table;
    RowPrinter printer;
    std::vector<std::size_t> body; ///< by column, characters of the widest cell

    explicit Setting(const StreamedTable& of) : table(of), printer(of), body(of.columns.size(), narrowest_head) {
        table.each_row([this](const TableRow& row) {
            const std::vector<PrintedCell>& cells = printer.print(row);
            for (std::size_t c = 0; c < body.size(); ++c) body[c] = std::max(body[c], display_width(cells[c].text()));
            return true;
        });
    }
};

std::vector<std::string> head_parts(const Setting& setting, std::size_t column) {
    return broken_head(setting.printer.heads()[column], std::min(setting.body[column], widest_text));
}

/// In characters, with the gap to the next.
double set_width(const Setting& setting, std::size_t column) {
    std::size_t width = std::min(setting.body[column], widest_text);
    for (const std::string& part : head_parts(setting, column)) width = std::max(width, display_width(part));
    return static_cast<double>(width) + column_gap;
}

double set_width(const Setting& setting, const Columns& columns) {
    double width = 0;
    for (const std::size_t c : columns) width += set_width(setting, c);
    return width;
}

/// Whether rows differ in what is printed of these columns.
bool tell_rows_apart_in_print(Setting& setting, const Columns& columns) {
    DistinctRows rows;
    std::vector<std::string> names(columns.size());
    std::vector<std::string_view> views(columns.size());
    setting.table.each_row([&](const TableRow& row) {
        const std::vector<PrintedCell>& cells = setting.printer.print(row);
        for (std::size_t c = 0; c < columns.size(); ++c) views[c] = names[c] = cells[columns[c]].text();
        rows.add(views);
        return true;
    });
    return rows.all_differ();
}

/// The columns in parts that each fit the page. A table that fits a page in landscape stays whole; of a wider one each part fits it upright and
/// begins with as many identifying columns as tell its rows apart, where they leave room for others.
std::vector<Columns> parts_of(Setting& setting) {
    Columns all(setting.body.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    if (set_width(setting, all) <= landscape_line) return {all};
    Columns lead;
    for (const std::size_t c : all)
        if (setting.table.columns[c].identifies && (lead.empty() || !tell_rows_apart_in_print(setting, lead))) lead.push_back(c);
    // A name that came in on the way may say nothing more: the maker, where the run is needed too.
    for (std::size_t i = lead.size(); i-- > 1;) {
        Columns fewer = lead;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        if (tell_rows_apart_in_print(setting, fewer)) lead = std::move(fewer);
    }
    if (lead.size() > 1 && set_width(setting, lead) > upright_line * 2 / 3) lead.resize(1);
    std::vector<Columns> parts{lead};
    double width = set_width(setting, lead);
    for (const std::size_t c : all) {
        if (std::ranges::find(lead, c) != lead.end()) continue;
        const double more = set_width(setting, c);
        if (width + more > upright_line && parts.back().size() > lead.size()) {
            parts.push_back(lead);
            width = set_width(setting, lead);
        }
        parts.back().push_back(c);
        width += more;
    }
    return parts;
}

std::string column_kinds(const Setting& setting, const Columns& columns) {
    const std::vector<bool>& right = setting.printer.right();
    std::string kinds = "@{}";
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const std::size_t c = columns[i];
        // Room for the mark of a note, which stands over the gap after a number.
        if (i > 0 && right[columns[i - 1]] && !right[c]) kinds += "@{\\hspace{1.6em}}";
        if (right[c]) kinds += 'r';
        else kinds += setting.body[c] > widest_text ? ">{\\raggedright\\arraybackslash}p{12em}" : "l";
    }
    return kinds + "@{}";
}

/// A head stands on as many lines as keep its column as narrow as its cells.
std::string head_line(const Setting& setting, const Columns& columns) {
    std::string line;
    for (const std::size_t c : columns) {
        const char side = setting.printer.right()[c] ? 'r' : 'l';
        std::string lines;
        for (const std::string& part : head_parts(setting, c)) lines += (lines.empty() ? "" : "\\\\") + latex_text(part);
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

std::string preface(const TableHead& table) {
    std::string lines;
    const auto comment = [&lines](const Message& words) { lines += "% " + one_line(words.text()) + '\n'; };
    comment(table.title);
    comment(say(phrase("tables", "Written by Ullage %1. Bring it into a document with \\input; the preamble needs:"), program_version()));
    comment("  \\usepackage[T1]{fontenc}");
    comment(Message("  \\usepackage[utf8]{inputenc}  % ") + say(phrase("tables", "before LaTeX %1"), "2018"));
    comment(Message("  \\usepackage{textcomp}        % ") + say(phrase("tables", "before LaTeX %1"), "2020"));
    comment("  \\usepackage{array,booktabs,longtable}");
    const Message wide =
        say(phrase("tables", "A table wider than the page stands in parts that fit A4 with the margins of the article class. One that is "
                             "wider than the page upright but not in landscape: \\usepackage{pdflscape} and \\begin{landscape} ... "
                             "\\end{landscape} around the \\input."));
    for (const std::string& line : broken_head(wide.text(), comment_width)) comment(line);
    return lines;
}

/// "% columns: unit, delivered_wh": the keys of the other forms.
std::string keys_line(const TableHead& table, const Columns& columns) {
    std::string line;
    for (const std::size_t c : columns) line += (line.empty() ? "% columns: " : ", ") + one_line(table.columns[c].key);
    return line + '\n';
}

bool append_part(TextPieces& out, Setting& setting, const Columns& columns, const std::string& caption) {
    out.text() += keys_line(setting.table, columns) + "\\begin{longtable}{" + column_kinds(setting, columns) + "}\n";
    const std::string heads = "\\toprule\n" + head_line(setting, columns) + "\\midrule\n";
    out.text() += "\\caption{" + latex_text(caption) + "}\\\\\n" + heads + "\\endfirsthead\n" + heads + "\\endhead\n\\bottomrule\n\\endfoot\n";
    const bool whole = setting.table.each_row([&](const TableRow& row) {
        const std::vector<PrintedCell>& cells = setting.printer.print(row);
        for (std::size_t i = 0; i < columns.size(); ++i)
            out.text() += (i == 0 ? "" : " & ") + cell_text(cells[columns[i]], setting.printer.right()[columns[i]]);
        out.text() += " \\\\\n";
        return out.pass_on();
    });
    out.text() += "\\end{longtable}\n";
    return whole;
}

} // namespace

void latex_table(const StreamedTable& table, TextPieces& out) {
    Setting setting(table);
    out.text() += preface(table) + std::string(latex_letter_definition) + "\\begingroup\\footnotesize\\setlength{\\tabcolsep}{5pt}\n";
    for (const Message& sentence : table.answer) out.text() += "\\par\\noindent " + latex_text(sentence.text()) + '\n';
    const std::vector<Columns> parts = parts_of(setting);
    for (std::size_t p = 0; p < parts.size(); ++p)
        if (!append_part(out, setting, parts[p],
                         parts.size() == 1 ? table.title
                                           : say(phrase("tables", "%1, part %2 of %3"), table.title, say_number(p + 1), say_number(parts.size()))))
            return;
    std::string& foot = out.text();
    const std::vector<std::string>& notes = setting.printer.notes();
    for (std::size_t n = 0; n < notes.size(); ++n) foot += fmt::format("\\par\\noindent\\textsuperscript{{{}}}~{}\n", n + 1, latex_text(notes[n]));
    for (const Message& remark : table.remarks) foot += "\\par\\noindent " + latex_text(remark.text()) + '\n';
    for (const auto& [heading, text] : table.method)
        foot += "\\par\\noindent\\textbf{" + latex_text(heading.text()) + ".} " + latex_text(text.text()) + '\n';
    foot += "\\par\\endgroup\n";
}

} // namespace ullage
