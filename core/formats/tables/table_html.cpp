// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/instant.h"
#include "base/number.h"
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"
#include "formats/text/html_text.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

namespace ullage {

namespace {

constexpr std::string_view style = R"(
:root { color-scheme: light dark; --ground: #F4F3EF; --panel: #FFFFFF; --line: #DAD7CE; --ink: #1D2730; --soft: #5E6973;
        --accent: #0B5E8A; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ground: #14191E; --panel: #1C232A; --line: #343E47; --ink: #E8EAEB; --soft: #97A3AD; --accent: #5DB3DE; }
}
body { margin: 32px 24px; background: var(--ground); color: var(--ink);
       font: 15px/1.5 system-ui, sans-serif; }
h1 { font-size: 22px; margin: 0 0 16px; }
h2 { font-size: 17px; margin: 24px 0 8px; }
h3 { font-size: 15px; margin: 16px 0 0; }
p { margin: 0 0 8px; max-width: 80ch; }
.answer + .scroll { margin-top: 16px; }
a { color: var(--accent); }
.scroll { overflow-x: auto; margin-bottom: 16px; background: var(--panel); border: 1px solid var(--line); border-radius: 6px; }
table { border-collapse: collapse; width: 100%; }
th, td { padding: 8px 12px; text-align: left; vertical-align: baseline; border-bottom: 1px solid var(--line); }
tbody tr:last-child > * { border-bottom: 0; }
thead th { font-weight: normal; color: var(--soft); vertical-align: bottom; }
.number { text-align: right; font-variant-numeric: tabular-nums lining-nums; }
td.number { white-space: nowrap; }
td:not(.number) { min-width: 6em; }
.wordy { min-width: 15em; }
tbody th:not(.wordy) { white-space: nowrap; }
tbody th { position: sticky; left: 0; background: var(--panel); }
.interval, sup, .notes, .data { color: var(--soft); font-size: 0.85em; }
button { all: unset; cursor: pointer; }
button:focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
[aria-sort] button { color: var(--accent); }
[aria-sort="ascending"] button::after { content: " \25B2"; }
[aria-sort="descending"] button::after { content: " \25BC"; }
@page { size: landscape; margin: 12mm; }
@media print {
  body { margin: 0; font-size: 9pt; background: none; }
  table { font-size: 9pt; }
  table.many { font-size: 7pt; }
  .scroll { border: 0; overflow: visible; }
  th, td { padding: 2px 3px; }
  tbody th { position: static; }
  td:not(.number), .wordy { min-width: 0; }
  .many td.number { white-space: normal; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  button::after, .data { display: none; }
}
)";

// Without the characters < and & the script is the same to an HTML and an XML reader. It makes the heads buttons, so that without it
// they are plain heads. Cells without a number come last.
constexpr std::string_view script = R"(
"use strict";
Array.prototype.forEach.call(document.querySelectorAll("thead th"), function (head) {
  var button = document.createElement("button");
  button.type = "button";
  button.title = "sort by this column";
  while (head.firstChild) button.appendChild(head.firstChild);
  head.appendChild(button);
  button.addEventListener("click", function () {
    var column = head.cellIndex, down = head.getAttribute("aria-sort") === "ascending", sign = down ? -1 : 1;
    Array.prototype.forEach.call(head.parentNode.cells, function (other) { other.removeAttribute("aria-sort"); });
    head.setAttribute("aria-sort", down ? "descending" : "ascending");
    var body = document.querySelector("tbody");
    var rows = Array.prototype.slice.call(body.rows);
    rows.sort(function (a, b) {
      a = a.cells[column];
      b = b.cells[column];
      if (head.getAttribute("data-sort") !== "number")
        return sign * a.textContent.localeCompare(b.textContent, "en", { numeric: true });
      var x = a.getAttribute("data-number"), y = b.getAttribute("data-number");
      if (x === null || y === null) return (x === null ? 1 : 0) - (y === null ? 1 : 0);
      return sign * (Number(x) - Number(y));
    });
    rows.forEach(function (row) { body.appendChild(row); });
  });
});
)";

/// What the rounded text of a cell leaves out, for readers that are programs: value, limits and kind in full.
std::string data_of(const TableColumn& column, const TableCell& cell, const PrintedCell& printed) {
    std::string data;
    const auto add = [&](std::string_view name, const std::optional<double>& number) {
        if (const auto known = finite(number)) data += fmt::format(" data-{}=\"{}\"", name, exact_text(*known));
    };
    const auto* quantity = std::get_if<Quantity>(&cell);
    if (!quantity) {
        if (!column.instant) return data;
        if (const auto time_ms = parse_iso8601(std::get<std::string>(cell), "UTC"); time_ms)
            data = fmt::format(" data-number=\"{}\"", time_ms.value());
        return data;
    }
    add("number", printed.sort_number);
    if (column.content != TableColumn::Content::quantity) return data;
    add("value", quantity->value);
    add("lower", quantity->lower);
    add("upper", quantity->upper);
    return data + fmt::format(" data-kind=\"{}\"", kind_text(quantity->kind));
}

/// Bytes from which a text gets a wide column, lest it stand one word under the other.
constexpr std::size_t wordy_from = 28;

void append_cell(std::string& out, const PrintedCell& cell, const std::string& data, bool right, bool first) {
    const std::string_view tag = first && !right ? "th" : "td";
    const std::string_view kind = right ? " class=\"number\"" : cell.value.size() >= wordy_from ? " class=\"wordy\"" : "";
    out += fmt::format("<{}{}{}{}>{}", tag, tag == "th" ? " scope=\"row\"" : "", kind, data, html_text(cell.value));
    if (!cell.interval.empty()) out += " <span class=\"interval\">" + html_text(cell.interval) + "</span>";
    if (cell.note != 0) out += fmt::format(" <sup><a href=\"#note-{0}\">{0}</a></sup>", cell.note);
    out += fmt::format("</{}>\n", tag);
}

/// Percent-encoded but for what RFC 3986, 2.3, leaves as it is.
void append_percent_encoded(std::string& out, std::string_view bytes) {
    constexpr std::string_view unreserved = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~", digits = "0123456789ABCDEF";
    for (const char byte : bytes) {
        if (unreserved.find(byte) != std::string_view::npos) {
            out += byte;
            continue;
        }
        const auto value = static_cast<unsigned char>(byte);
        out += '%';
        out += digits[value / 16];
        out += digits[value % 16];
    }
}

/// Above so many rows browsers may refuse a file within the page.
constexpr std::size_t most_linked_rows = 10'000;

/// The table's numbers in full as a file within the page (RFC 2397); false where the page takes no more.
bool append_data_link(TextPieces& out, const StreamedTable& table) {
    if (table.row_count > most_linked_rows) return true;
    out.text() += "<p class=\"data\"><a download=\"table.csv\" href=\"data:text/csv;charset=utf-8,";
    const TextTaker encode = [&out](std::string_view piece) {
        append_percent_encoded(out.text(), piece);
        return out.pass_on();
    };
    TextPieces csv(encode);
    csv_table(table, csv);
    const bool whole = csv.finish();
    out.text() += "\">The numbers of this table in full (CSV)</a></p>\n";
    return whole;
}

/// Columns from which on a table is printed in small letters, so that it is as wide as an A4 or letter page, landscape.
constexpr std::size_t many_columns = 16;

bool append_table(TextPieces& out, const StreamedTable& table, RowPrinter& printer) {
    const std::vector<bool>& right = printer.right();
    std::string& head = out.text();
    head += fmt::format("<div class=\"scroll\">\n<table{} aria-labelledby=\"title\">\n<thead>\n<tr>\n",
                        right.size() >= many_columns ? " class=\"many\"" : "");
    for (std::size_t c = 0; c < right.size(); ++c)
        head += fmt::format("<th scope=\"col\"{}{}>{}</th>\n", right[c] ? " class=\"number\"" : "",
                            right[c] || table.columns[c].instant ? " data-sort=\"number\"" : "", html_text(printer.heads()[c]));
    head += "</tr>\n</thead>\n<tbody>\n";
    const bool whole = table.each_row([&](const TableRow& row) {
        const std::vector<PrintedCell>& cells = printer.print(row);
        std::string& text = out.text();
        text += "<tr>\n";
        for (std::size_t c = 0; c < right.size(); ++c)
            append_cell(text, cells[c], data_of(table.columns[c], cell_at(row, c), cells[c]), right[c], c == 0);
        text += "</tr>\n";
        return out.pass_on();
    });
    out.text() += "</tbody>\n</table>\n</div>\n";
    return whole;
}

} // namespace

void html_table(const StreamedTable& table, TextPieces& out) {
    RowPrinter printer(table);
    const std::string title = html_text(table.title.empty() ? "Table" : table.title);
    out.text() += "<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n"
                  "<meta charset=\"utf-8\"/>\n"
                  "<meta http-equiv=\"Content-Security-Policy\" "
                  "content=\"default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'\"/>\n"
                  "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n";
    out.text() +=
        "<title>" + title + "</title>\n<style>" + std::string(style) + "</style>\n</head>\n<body>\n<main>\n<h1 id=\"title\">" + title + "</h1>\n";
    for (const std::string& sentence : table.answer) out.text() += "<p class=\"answer\">" + html_text(sentence) + "</p>\n";
    if (!append_table(out, table, printer) || !append_data_link(out, table)) return;
    std::string& foot = out.text();
    for (std::size_t n = 0; n < printer.notes().size(); ++n)
        foot += fmt::format("<p class=\"notes\" id=\"note-{0}\"><sup>{0}</sup> {1}</p>\n", n + 1, html_text(printer.notes()[n]));
    for (const std::string& remark : table.remarks) foot += "<p>" + html_text(remark) + "</p>\n";
    if (!table.method.empty()) {
        foot += "<section id=\"method\">\n<h2>Method</h2>\n";
        for (const auto& [heading, text] : table.method) foot += "<h3>" + html_text(heading) + "</h3>\n<p>" + html_text(text) + "</p>\n";
        foot += "</section>\n";
    }
    foot += "</main>\n<script>" + std::string(script) + "</script>\n</body>\n</html>\n";
}

} // namespace ullage
