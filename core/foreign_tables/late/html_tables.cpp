// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of HTML, laid out by the table model of HTML (W3C HTML 4.01, 11.2.6): a cell takes the next free place of its row and as many rows and
// columns as it spans. Its text stands in the first of them, as in a workbook with merged cells.
#include "base/utf8.h"
#include "foreign_tables/late/table_readers.h"

#include <libxml/HTMLparser.h>

#include <algorithm>
#include <cstdlib>

namespace ullage {

namespace {

constexpr int most_html_depth = 1'000;
constexpr long most_span = 65'534; ///< of rows, by HTML

/// While it lives the library says nothing on the terminal, in this thread: what is wrong is said in our words.
class QuietXml {
public:
    QuietXml() : handler_(xmlStructuredError), context_(xmlStructuredErrorContext) { xmlSetStructuredErrorFunc(nullptr, pass_over); }
    ~QuietXml() { xmlSetStructuredErrorFunc(context_, handler_); }
    QuietXml(const QuietXml&) = delete;
    QuietXml& operator=(const QuietXml&) = delete;

private:
    static void pass_over(void*, xmlErrorPtr) {}

    xmlStructuredErrorFunc handler_;
    void* context_;
};

struct HtmlFreer {
    void operator()(xmlDoc* document) const { xmlFreeDoc(document); }
};

bool is_element(const xmlNode* node, std::string_view name) {
    return node->type == XML_ELEMENT_NODE && std::string_view(reinterpret_cast<const char*>(node->name)) == name;
}

/// The text below a node; line breaks are blanks, and runs of blanks one.
void gather_text(const xmlNode* node, std::string& text, int depth) {
    if (depth > most_html_depth) return;
    for (const xmlNode* child = node->children; child; child = child->next) {
        if (child->type == XML_TEXT_NODE || child->type == XML_CDATA_SECTION_NODE) {
            for (const char* at = reinterpret_cast<const char*>(child->content); at && *at != '\0'; ++at) {
                const bool no_break = at[0] == '\xC2' && at[1] == '\xA0';
                if (no_break) ++at;
                const bool blank = no_break || *at == ' ' || *at == '\t' || *at == '\n' || *at == '\r';
                if (!blank) text += *at;
                else if (!text.empty() && text.back() != ' ') text += ' ';
            }
        } else if (is_element(child, "br") || is_element(child, "p") || is_element(child, "div")) {
            if (!text.empty() && text.back() != ' ') text += ' ';
            gather_text(child, text, depth + 1);
        } else if (child->type == XML_ELEMENT_NODE && !is_element(child, "table") && !is_element(child, "style") && !is_element(child, "script")) {
            gather_text(child, text, depth + 1);
        }
    }
}

std::size_t span_of(const xmlNode* cell, const char* name) {
    xmlChar* const value = xmlGetNoNsProp(cell, BAD_CAST name);
    const long span = value ? std::strtol(reinterpret_cast<const char*>(value), nullptr, 10) : 1;
    xmlFree(value);
    return static_cast<std::size_t>(std::clamp(span, 1L, most_span));
}

class HtmlTableReader {
public:
    HtmlTableReader(TableBook& book, std::string where) : book_(book), where_(std::move(where)) {}

    Result<void> read(const xmlNode* node, int depth) {
        if (depth > most_html_depth) return {};
        for (const xmlNode* child = node->children; child; child = child->next) {
            if (child->type != XML_ELEMENT_NODE) continue;
            if (is_element(child, "table"))
                if (Result<void> done = readTable(child); !done) return done;
            if (Result<void> done = read(child, depth + 1); !done) return done; // tables within tables are tables of their own
        }
        return {};
    }

private:
    Result<void> readTable(const xmlNode* table) {
        if (book_.sheets.size() == most_table_sheets) return too_large_table(where_);
        TableSheet sheet;
        std::size_t row = 0;
        spans_.clear();
        if (!readRows(table, sheet, row)) return too_large_table(where_);
        sheet.name = "table " + std::to_string(book_.sheets.size() + 1);
        book_.sheets.push_back(std::move(sheet));
        return {};
    }

    bool readRows(const xmlNode* part, TableSheet& sheet, std::size_t& row) {
        for (const xmlNode* child = part->children; child; child = child->next) {
            if (is_element(child, "thead") || is_element(child, "tbody") || is_element(child, "tfoot")) {
                if (!readRows(child, sheet, row)) return false;
            } else if (is_element(child, "tr")) {
                if (!readRow(child, sheet, row++)) return false;
            }
        }
        return true;
    }

    bool readRow(const xmlNode* line, TableSheet& sheet, std::size_t row) {
        SheetFiller filler(sheet, cells_left_);
        std::size_t column = 0;
        for (const xmlNode* cell = line->children; cell; cell = cell->next) {
            if (!is_element(cell, "td") && !is_element(cell, "th")) continue;
            while (column < most_table_columns && column < spans_.size() && spans_[column] > row) ++column;
            std::string text;
            gather_text(cell, text, 0);
            if (!filler.put(row, column, text, false)) return false;
            const std::size_t columns = std::min(span_of(cell, "colspan"), most_table_columns);
            const std::size_t rows = span_of(cell, "rowspan");
            if (column + columns > most_table_columns) return false;
            if (spans_.size() < column + columns) spans_.resize(column + columns, 0);
            for (std::size_t c = column; c < column + columns; ++c) spans_[c] = row + rows;
            column += columns;
        }
        return true;
    }

    TableBook& book_;
    std::string where_;
    std::vector<std::size_t> spans_; ///< up to which row, not included, each column is taken by a cell
    std::size_t cells_left_ = most_table_cells;
};

Result<TableBook> read_html_tables(std::string_view bytes, const std::string& where) {
    const Error none{Failure::bad_input, say(phrase("foreign_tables", "it holds no table")), where,
                     say(phrase("foreign_tables", "copy the cells of the table, with their head"))};
    constexpr int options = HTML_PARSE_RECOVER | HTML_PARSE_NOERROR | HTML_PARSE_NOWARNING | HTML_PARSE_NONET;
    // What programs put on the clipboard is UTF-8 unless it says otherwise, or cannot be.
    const bool says = bytes.substr(0, 2048).find("charset=") != std::string_view::npos;
    const char* const encoding = first_bad_utf8(bytes) ? "windows-1252" : "UTF-8";
    const QuietXml quiet;
    const std::unique_ptr<xmlDoc, HtmlFreer> document(
        htmlReadMemory(bytes.data(), static_cast<int>(bytes.size()), nullptr, says ? nullptr : encoding, options));
    if (!document || !xmlDocGetRootElement(document.get())) return none;
    TableBook book;
    book.form = say(phrase("foreign_tables", "web page"));
    HtmlTableReader reader(book, where);
    xmlNode above{};
    above.children = xmlDocGetRootElement(document.get());
    if (Result<void> done = reader.read(&above, 0); !done) return done.error();
    if (book.sheets.empty()) return none;
    return book;
}

const LateEntry html_entry(html_book, &read_html_tables);

} // namespace

} // namespace ullage
