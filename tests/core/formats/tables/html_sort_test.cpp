// SPDX-License-Identifier: GPL-3.0-or-later
// The page's own script runs in a JavaScript engine (duktape) over a document of the few parts that it uses, filled from the page.
#include "read_back.h"
#include "sample_tables.h"
#include "support/temp_folder.h"

#include <fstream>

namespace ullage::test {
namespace {

constexpr const char* document_parts = R"(
function Element(name) { this.name = name; this.childNodes = []; this.attributes = {}; this.listeners = []; this.parentNode = null; }
Element.prototype.appendChild = function (child) {
  if (child.parentNode) child.parentNode.childNodes.splice(child.parentNode.childNodes.indexOf(child), 1);
  child.parentNode = this; this.childNodes.push(child); return child;
};
Element.prototype.getAttribute = function (name) { return this.attributes.hasOwnProperty(name) ? this.attributes[name] : null; };
Element.prototype.setAttribute = function (name, value) { this.attributes[name] = String(value); };
Element.prototype.removeAttribute = function (name) { delete this.attributes[name]; };
Element.prototype.addEventListener = function (type, listener) { if (type === "click") this.listeners.push(listener); };
Element.prototype.click = function () { this.listeners.forEach(function (listener) { listener(); }); };
Object.defineProperty(Element.prototype, "firstChild", { get: function () { return this.childNodes[0] || null; } });
Object.defineProperty(Element.prototype, "cells", { get: function () { return this.childNodes; } });
Object.defineProperty(Element.prototype, "rows", { get: function () { return this.childNodes; } });
Object.defineProperty(Element.prototype, "cellIndex", { get: function () { return this.parentNode.childNodes.indexOf(this); } });
Object.defineProperty(Element.prototype, "textContent", { get: function () {
  return this.text || this.childNodes.map(function (c) { return c.textContent; }).join("");
} });
function element(name, text, attributes) {
  var made = new Element(name), words = new Element("#text");
  words.text = text; made.appendChild(words);
  for (var key in attributes) made.setAttribute(key, attributes[key]);
  return made;
}
var head = new Element("tr"), body = new Element("tbody");
var document = {
  documentElement: { lang: "en" },
  createElement: function (name) { return new Element(name); },
  querySelector: function () { return body; },
  querySelectorAll: function () { return head.childNodes; }
};
function order(column) { return body.childNodes.map(function (row) { return row.cells[column].textContent; }).join(";"); }
function sorted() { return head.childNodes.map(function (h) { return h.getAttribute("aria-sort") || "-"; }).join(";"); }
)";

class HtmlSort : public testing::Test {
protected:
    /// Runs `steps` after the script of the table's page; what they print.
    std::string after(const Table& table, const std::string& steps) const {
        const std::string html = table_text(table, TableFormat::html);
        std::string program = document_parts;
        bool head = true;
        for (const auto& cells : html_rows(html)) {
            program += head ? "" : "var row = new Element('tr'); body.appendChild(row);\n";
            for (const Element& cell : cells) {
                nlohmann::json attributes = cell.attributes;
                program += std::string(head ? "head" : "row") + ".appendChild(element('td', " + nlohmann::json(text_of(cell.inner)).dump() + ", " +
                           attributes.dump() + "));\n";
            }
            head = false;
        }
        program += elements(html, {"script"}).at(0).inner + steps;
        std::ofstream(folder_ / "page.js", std::ios::binary) << program;
        const CommandOutput output = run_command("duk '" + std::string(folder_ / "page.js") + "'");
        EXPECT_EQ(output.exit_code, 0) << output.text;
        return output.text;
    }
    static std::string click(int column) { return "head.childNodes[" + std::to_string(column) + "].firstChild.click();\n"; }
    TempFolder folder_;
};

Table loads() {
    Table table;
    table.columns = {{"unit", "unit", "", TableColumn::Content::text, 0}, {"load", "load", "W", TableColumn::Content::quantity, 0}};
    const auto load = [](double w) { return known("load", "W", w, 1, Kind::measured); };
    table.rows = {
        {std::string("c"), load(120)}, {std::string("a"), not_known("load", "W", "none")}, {std::string("b"), load(9)}, {std::string("d"), load(64)}};
    return table;
}

TEST_F(HtmlSort, numbers_sort_by_size_both_ways_with_cells_without_a_number_last) {
    EXPECT_EQ(after(loads(), click(1) + "print(order(0)); print(sorted());" + click(1) + "print(order(0)); print(sorted());"),
              "b;d;c;a\n-;ascending\nc;d;b;a\n-;descending\n");
}

TEST_F(HtmlSort, texts_sort_as_texts_and_only_one_head_says_that_it_sorts) {
    EXPECT_EQ(after(loads(), click(1) + click(0) + "print(order(0)); print(sorted());"), "a;b;c;d\nascending;-\n");
}

TEST_F(HtmlSort, heads_become_buttons_so_that_keys_press_them_too) {
    EXPECT_EQ(after(loads(), "print(head.childNodes[1].firstChild.name, head.childNodes[1].firstChild.type, head.childNodes[1].textContent);"),
              "button button load (W)\n");
    EXPECT_EQ(table_text(loads(), TableFormat::html).find("<button"), std::string::npos) << "without the script heads are plain";
}

TEST_F(HtmlSort, times_sort_as_instants_across_a_change_of_the_clocks) {
    Table table;
    table.columns = {{"time", "time", "", TableColumn::Content::text, 0, true, true}};
    for (const char* time : {"2027-10-31T02:10:00+01:00", "2027-10-31T02:30:00+02:00", "2027-10-31T01:50:00+02:00"})
        table.rows.push_back({std::string(time)});
    EXPECT_EQ(after(table, click(0) + "print(order(0));"), "2027-10-31T01:50:00+02:00;2027-10-31T02:30:00+02:00;2027-10-31T02:10:00+01:00\n");
}

} // namespace
} // namespace ullage::test
