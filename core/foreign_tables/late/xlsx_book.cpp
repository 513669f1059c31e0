// SPDX-License-Identifier: GPL-3.0-or-later
// Workbooks by ECMA-376 Part 1, clause 18 (SpreadsheetML).
#include "base/number.h"
#include "foreign_tables/late/table_readers.h"
#include "foreign_tables/number_format.h"

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <map>

namespace ullage {

namespace {

constexpr std::size_t most_shared_strings = 4'000'000;

int whole_of(const std::optional<std::string>& text, int otherwise) {
    int value = otherwise;
    if (text) std::from_chars(text->data(), text->data() + text->size(), value);
    return value;
}

/// "BC17" to row 16 and column 54; false where it is no address.
bool place_of(std::string_view address, std::size_t& row, std::size_t& column) {
    std::size_t at = 0, letters = 0;
    for (; at < address.size() && address[at] >= 'A' && address[at] <= 'Z' && at < 4; ++at)
        letters = letters * 26 + static_cast<std::size_t>(address[at] - 'A') + 1;
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(address.data() + at, address.data() + address.size(), number);
    if (letters == 0 || error != std::errc() || end != address.data() + address.size() || number == 0) return false;
    row = number - 1;
    column = letters - 1;
    return true;
}

struct XlsxSheet {
    std::string name, relation, state;
};

class XlsxReader {
public:
    explicit XlsxReader(WorkbookParts parts) : parts_(std::move(parts)) {}

    Result<TableBook> read() {
        for (const auto step : {&XlsxReader::readWorkbook, &XlsxReader::readRelations, &XlsxReader::readStyles, &XlsxReader::readStrings})
            if (Result<void> done = (this->*step)(); !done) return done.error();
        TableBook book;
        book.form = say(phrase("foreign_tables", "XLSX workbook"));
        std::size_t cells_left = most_table_cells;
        for (const XlsxSheet& sheet : sheets_) {
            const auto part = targets_.find(sheet.relation);
            if (part == targets_.end() || !part->second.starts_with("xl/worksheets/")) continue; // a sheet of nothing but a chart
            if (book.sheets.size() == most_table_sheets) return too_large_table(parts_.where());
            TableSheet& filled = book.sheets.emplace_back();
            filled.name = sheet.name;
            SheetFiller filler(filled, cells_left);
            if (Result<void> done = readSheet(part->second, filler); !done) return done.error();
        }
        return book;
    }

private:
    Result<void> readWorkbook() {
        return parts_.walk("xl/workbook.xml", [this](xmlTextReader* at) {
            if (opens(at, "workbookPr")) {
                const auto from_1904 = xml_attribute(at, "date1904");
                if (from_1904 == "1" || from_1904 == "true") system_ = DateSystem::from_1904;
            }
            if (opens(at, "sheet"))
                sheets_.push_back(
                    {xml_attribute(at, "name").value_or(""), xml_attribute(at, "id").value_or(""), xml_attribute(at, "state").value_or("")});
            return true;
        });
    }

    Result<void> readRelations() {
        if (!parts_.has("xl/_rels/workbook.xml.rels")) return {};
        return parts_.walk("xl/_rels/workbook.xml.rels", [this](xmlTextReader* at) {
            if (!opens(at, "Relationship")) return true;
            std::string target = xml_attribute(at, "Target").value_or("");
            target = target.starts_with('/') ? target.substr(1) : "xl/" + target;
            targets_[xml_attribute(at, "Id").value_or("")] = target;
            return true;
        });
    }

    Result<void> readStyles() {
        if (!parts_.has("xl/styles.xml")) return {};
        std::map<int, NumberFormat> own;
        bool in_cells = false;
        return parts_.walk("xl/styles.xml", [&](xmlTextReader* at) {
            if (opens(at, "numFmt"))
                own[whole_of(xml_attribute(at, "numFmtId"), -1)] = number_format_of(xml_attribute(at, "formatCode").value_or(""));
            if (opens(at, "cellXfs")) in_cells = true;
            if (closes(at, "cellXfs")) in_cells = false;
            if (in_cells && opens(at, "xf")) {
                const int id = whole_of(xml_attribute(at, "numFmtId"), 0);
                const auto found = own.find(id);
                formats_.push_back(found == own.end() ? built_in_format(id) : found->second);
            }
            return true;
        });
    }

    Result<void> readStrings() {
        if (!parts_.has("xl/sharedStrings.xml")) return {};
        bool in_text = false, spoken = false, too_many = false;
        const Result<void> done = parts_.walk("xl/sharedStrings.xml", [&](xmlTextReader* at) {
            if (opens(at, "si")) {
                too_many = strings_.size() == most_shared_strings;
                strings_.emplace_back();
            }
            // How a text is spoken (rPh) is no part of it.
            if (opens(at, "rPh")) spoken = true;
            if (closes(at, "rPh")) spoken = false;
            if (opens(at, "t")) in_text = xmlTextReaderIsEmptyElement(at) == 0;
            if (closes(at, "t")) in_text = false;
            if (in_text && !spoken && !strings_.empty() && is_text(at)) strings_.back() += reinterpret_cast<const char*>(xmlTextReaderConstValue(at));
            return !too_many;
        });
        return too_many ? Result<void>(too_large_table(parts_.where())) : done;
    }

    struct Cell {
        std::size_t row = 0, column = 0;
        std::string sort, value;
        int style = 0;
        bool formula = false, open = false;
    };

    bool put(const Cell& cell, SheetFiller& filler) const {
        if (cell.value.empty()) {
            if (cell.formula) ++filler.sheet().formulas_without_value;
            return true;
        }
        if (cell.sort == "s") {
            const int place = whole_of(cell.value, -1);
            return place < 0 || static_cast<std::size_t>(place) >= strings_.size() ||
                   filler.put(cell.row, cell.column, strings_[static_cast<std::size_t>(place)], false);
        }
        if (cell.sort == "b") return filler.put(cell.row, cell.column, cell.value == "1" ? "TRUE" : "FALSE", false);
        if (!cell.sort.empty() && cell.sort != "n") return filler.put(cell.row, cell.column, cell.value, cell.sort == "d");
        char* end = nullptr;
        const double number = std::strtod(cell.value.c_str(), &end);
        if (end == cell.value.c_str() || *end != '\0') return filler.put(cell.row, cell.column, cell.value, false);
        const auto style = static_cast<std::size_t>(cell.style);
        const auto text = stored_number_text(number, cell.style >= 0 && style < formats_.size() ? formats_[style] : NumberFormat(), system_);
        return filler.put(cell.row, cell.column, text.value_or(cell.value), true);
    }

    Result<void> readSheet(const std::string& part, SheetFiller& filler) const {
        Cell cell;
        std::size_t row = 0, column = 0;
        bool in_value = false, too_large = false;
        const Result<void> done = parts_.walk(part, [&](xmlTextReader* at) {
            if (opens(at, "row")) {
                row = static_cast<std::size_t>(std::max(1, whole_of(xml_attribute(at, "r"), static_cast<int>(row) + 1)));
                column = 0;
            } else if (opens(at, "c")) {
                cell = {};
                cell.row = row == 0 ? 0 : row - 1;
                cell.column = column;
                if (const auto address = xml_attribute(at, "r")) (void)place_of(*address, cell.row, cell.column);
                column = cell.column + 1;
                cell.sort = xml_attribute(at, "t").value_or("");
                cell.style = whole_of(xml_attribute(at, "s"), 0);
                cell.open = xmlTextReaderIsEmptyElement(at) == 0;
            } else if (cell.open) {
                if (opens(at, "f")) cell.formula = true;
                if (opens(at, "v") || opens(at, "t")) in_value = xmlTextReaderIsEmptyElement(at) == 0;
                if (closes(at, "v") || closes(at, "t")) in_value = false;
                if (in_value && is_text(at)) cell.value += reinterpret_cast<const char*>(xmlTextReaderConstValue(at));
                if (closes(at, "c")) {
                    cell.open = false;
                    too_large = !put(cell, filler);
                }
            }
            return !too_large;
        });
        return too_large ? Result<void>(too_large_table(parts_.where())) : done;
    }

    mutable WorkbookParts parts_;
    DateSystem system_ = DateSystem::from_1900;
    std::vector<XlsxSheet> sheets_;
    std::map<std::string, std::string> targets_;
    std::vector<NumberFormat> formats_;
    std::vector<std::string> strings_;
};

} // namespace

Result<TableBook> read_xlsx(WorkbookParts parts) { return XlsxReader(std::move(parts)).read(); }

} // namespace ullage
