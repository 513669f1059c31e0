// SPDX-License-Identifier: GPL-3.0-or-later
// Workbooks by OpenDocument 1.3 Part 3, clause 9 (tables) and 19.385 (values of cells).
#include "base/number.h"
#include "foreign_tables/late/table_readers.h"
#include "foreign_tables/number_format.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>

namespace ullage {

namespace {

std::size_t repeats_of(const std::optional<std::string>& text) {
    std::size_t value = 1;
    if (text) std::from_chars(text->data(), text->data() + text->size(), value);
    return std::max<std::size_t>(value, 1);
}

/// "PT26H30M00.5S" as "26:30:00.500", "P1DT2H" as "26:00:00"; the text itself where it is no such duration, or has months, which have no length.
std::string duration_text_of(const std::string& value) {
    std::string_view rest = value;
    if (!rest.starts_with("P")) return value;
    rest.remove_prefix(1);
    if (rest.empty()) return value;
    std::int64_t ms = 0;
    bool of_day = false; // behind the T
    while (!rest.empty()) {
        if (rest.front() == 'T' && !of_day) {
            of_day = true;
            rest.remove_prefix(1);
            continue;
        }
        const auto digits = std::min(rest.find_first_not_of("0123456789.,"), rest.size());
        if (digits == 0 || digits == rest.size()) return value;
        std::string number(rest.substr(0, digits));
        std::ranges::replace(number, ',', '.');
        const double count = std::strtod(number.c_str(), nullptr);
        const char unit = rest[digits];
        const double unit_ms = !of_day ? (unit == 'D' ? 86'400'000 : 0) : unit == 'H' ? 3'600'000 : unit == 'M' ? 60'000 : unit == 'S' ? 1000 : 0;
        if (count > 1e7 || unit_ms == 0) return value;
        ms += static_cast<std::int64_t>(count * unit_ms + 0.5);
        rest.remove_prefix(digits + 1);
    }
    std::string text = fmt::format("{:02}:{:02}:{:02}", ms / 3'600'000, ms / 60'000 % 60, ms / 1000 % 60);
    return ms % 1000 == 0 ? text : text + fmt::format(".{:03}", ms % 1000);
}

/// "2027-05-14T18:00:00" with a blank for its T and no more digits than milliseconds.
std::string moment_text_of(std::string value) {
    if (const auto t = value.find('T'); t != std::string::npos) value[t] = ' ';
    if (const auto point = value.find('.'); point != std::string::npos) {
        const auto end = std::min(value.find_first_not_of("0123456789", point + 1), value.size());
        if (end > point + 4) value.erase(point + 4, end - point - 4);
    }
    return value;
}

class OdsReader {
public:
    explicit OdsReader(WorkbookParts parts) : parts_(std::move(parts)) {}

    Result<TableBook> read() {
        bool encrypted = false;
        if (parts_.has("META-INF/manifest.xml")) {
            const Result<void> seen = parts_.walk("META-INF/manifest.xml", [&encrypted](xmlTextReader* at) {
                encrypted = opens(at, "encryption-data");
                return !encrypted;
            });
            if (!seen) return seen.error();
        }
        if (encrypted)
            return Error{Failure::bad_input, say(phrase("foreign_tables", "the workbook has a password")), parts_.where(),
                         say(phrase("foreign_tables", "save it without one, or copy its cells and paste them"))};
        book_.form = say(phrase("foreign_tables", "ODS workbook"));
        const Result<void> done = parts_.walk("content.xml", [this](xmlTextReader* at) { return see(at); });
        if (too_large_) return too_large_table(parts_.where());
        if (!done) return done.error();
        return std::move(book_);
    }

private:
    struct Cell {
        std::string text;
        bool typed = false, stated = false, paragraphs = false, formula = false;
        std::size_t repeats = 1;
    };

    bool see(xmlTextReader* at) {
        // Notes, drawings and former contents within a table are no cells of it.
        if (opens(at, "annotation") || opens(at, "shapes") || opens(at, "tracked-changes")) passing_ += xmlTextReaderIsEmptyElement(at) == 0 ? 1 : 0;
        if (closes(at, "annotation") || closes(at, "shapes") || closes(at, "tracked-changes")) --passing_;
        if (passing_ > 0) return true;
        if (opens(at, "table")) {
            if (book_.sheets.size() == most_table_sheets) return !(too_large_ = true);
            book_.sheets.emplace_back().name = xml_attribute(at, "name").value_or("");
            row_ = 0;
        } else if (book_.sheets.empty()) {
            return true;
        } else if (opens(at, "table-row")) {
            column_ = 0;
            filled_in_row_.clear();
            row_repeats_ = repeats_of(xml_attribute(at, "number-rows-repeated"));
            if (xmlTextReaderIsEmptyElement(at) == 1) row_ += row_repeats_;
        } else if (closes(at, "table-row")) {
            endRow();
        } else if (opens(at, "table-cell") || opens(at, "covered-table-cell")) {
            beginCell(at);
        } else if (closes(at, "table-cell") || closes(at, "covered-table-cell")) {
            endCell();
        } else {
            seeText(at);
        }
        return !too_large_;
    }

    void beginCell(xmlTextReader* at) {
        cell_ = {};
        cell_.repeats = repeats_of(xml_attribute(at, "number-columns-repeated"));
        cell_.formula = xml_attribute(at, "formula").has_value();
        const std::string sort = xml_attribute(at, "value-type").value_or("");
        cell_.typed = cell_.stated = true;
        if (sort == "float" || sort == "percentage" || sort == "currency") {
            const std::string value = xml_attribute(at, "value").value_or("");
            char* end = nullptr;
            const double number = std::strtod(value.c_str(), &end);
            const NumberFormat format{sort == "percentage" ? NumberFormat::Shows::percent : NumberFormat::Shows::number, {}};
            cell_.text = end == value.c_str() || *end != '\0' ? value : stored_number_text(number, format, DateSystem::from_1900).value_or(value);
        } else if (sort == "date") {
            cell_.text = moment_text_of(xml_attribute(at, "date-value").value_or(""));
        } else if (sort == "time") {
            cell_.text = duration_text_of(xml_attribute(at, "time-value").value_or(""));
        } else if (const auto text = xml_attribute(at, "string-value"); text && sort == "string") {
            cell_.text = *text;
            cell_.typed = false;
        } else {
            cell_.typed = cell_.stated = false;
        }
        if (xmlTextReaderIsEmptyElement(at) == 1) endCell();
    }

    void seeText(xmlTextReader* at) {
        if (cell_.stated) return;
        if (opens(at, "p")) {
            if (cell_.paragraphs) cell_.text += ' ';
            cell_.paragraphs = true;
        } else if (opens(at, "s") || opens(at, "tab") || opens(at, "line-break")) {
            cell_.text += ' ';
        } else if (is_text(at)) {
            cell_.text += reinterpret_cast<const char*>(xmlTextReaderConstValue(at));
        }
    }

    void endCell() {
        if (cell_.text.empty() && cell_.formula) ++book_.sheets.back().formulas_without_value;
        // Empty cells are repeated to the edge of the sheet; what holds something is counted.
        if (!trimmed(cell_.text).empty()) {
            for (std::size_t i = 0; i < cell_.repeats && !too_large_; ++i) {
                too_large_ = column_ + i >= most_table_columns;
                filled_in_row_.push_back({column_ + i, {cell_.text, cell_.typed}});
            }
        }
        column_ += std::min(cell_.repeats, most_table_columns);
        cell_ = {};
        cell_.stated = true; // what stands between cells belongs to none
    }

    void endRow() {
        SheetFiller filler(book_.sheets.back(), cells_left_);
        if (!filled_in_row_.empty())
            for (std::size_t r = 0; r < row_repeats_ && !too_large_; ++r)
                for (const auto& [column, cell] : filled_in_row_)
                    if (!filler.put(row_ + r, column, cell.text, cell.typed)) {
                        too_large_ = true;
                        break;
                    }
        row_ += std::min<std::size_t>(row_repeats_, 2'000'000);
    }

    WorkbookParts parts_;
    TableBook book_;
    Cell cell_;
    std::vector<std::pair<std::size_t, GridCell>> filled_in_row_;
    std::size_t row_ = 0, column_ = 0, row_repeats_ = 1, cells_left_ = most_table_cells;
    int passing_ = 0;
    bool too_large_ = false;
};

} // namespace

Result<TableBook> read_ods(WorkbookParts parts) { return OdsReader(std::move(parts)).read(); }

} // namespace ullage
