// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/folder/inside/folder_contents.h"

#include "base/number.h"
#include "formats/folder/logbook_folder.h"
#include "formats/text/csv.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <functional>
#include <span>

namespace ullage::folder {
namespace {

constexpr std::string_view first_line = "# logbook_folder: 1";
constexpr std::string_view any_first_line = "# logbook_folder:";

struct NamedWhat {
    What what;
    std::string_view name;
};
constexpr NamedWhat sorts[] = {{What::run_sheet, "run sheet"}, {What::photo, "photo"}, {What::log, "log"},     {What::load_list, "load list"},
                               {What::pv_sheet, "PV sheet"},   {What::unit, "unit"},   {What::meter, "meter"}, {What::setting, "setting"}};

/// A column of the contents: how a cell is written and read.
struct Column {
    std::string_view name;
    std::function<std::string(const Entry&)> text;
    std::function<bool(Entry&, const std::string&)> read; ///< of a cell that is not empty; false: it cannot be read
};

std::string instant_cell(const std::optional<UtcMs>& time_ms) { return time_ms ? format_iso8601(*time_ms, "UTC") : std::string(); }

bool read_instant(std::optional<UtcMs>& time_ms, const std::string& cell) {
    const Result<UtcMs> read = parse_iso8601(cell, "UTC");
    if (read) time_ms = read.value();
    return read.ok();
}

bool read_finite(std::optional<double>& number, const std::string& cell) {
    double read = 0;
    const auto [end, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), read);
    if (fault != std::errc() || end != cell.data() + cell.size() || !std::isfinite(read)) return false;
    number = read;
    return true;
}

/// A path within the folder: what leads out of it, or is none of ours, is refused.
bool leads_inside(const std::string& file) {
    const std::filesystem::path path(file);
    return !file.empty() && !path.is_absolute() && file.find('\\') == std::string::npos &&
           std::ranges::none_of(path, [](const std::filesystem::path& part) { return part == ".." || part == "." || part.empty(); });
}

bool read_path(std::string& path, const std::string& cell) {
    path = cell;
    return leads_inside(cell);
}

std::span<const Column> columns() {
    static const Column all[] = {
        {"what", [](const Entry& e) { return std::string(std::ranges::find(sorts, e.what, &NamedWhat::what)->name); },
         [](Entry& e, const std::string& cell) {
             const auto* known = std::ranges::find(sorts, std::string_view(cell), &NamedWhat::name);
             if (known == std::end(sorts)) return false;
             e.what = known->what;
             return true;
         }},
        {"file", [](const Entry& e) { return e.file; }, [](Entry& e, const std::string& cell) { return read_path(e.file, cell); }},
        {"run_sheet", [](const Entry& e) { return e.run_sheet; }, [](Entry& e, const std::string& cell) { return read_path(e.run_sheet, cell); }},
        {"reading", [](const Entry& e) { return e.reading ? std::to_string(*e.reading) : std::string(); },
         [](Entry& e, const std::string& cell) {
             std::optional<double> number;
             if (!read_finite(number, cell) || *number < 1 || *number > 1e9 || *number != std::floor(*number)) return false;
             e.reading = static_cast<long>(*number);
             return true;
         }},
        {"time", [](const Entry& e) { return instant_cell(e.time_ms); },
         [](Entry& e, const std::string& cell) { return read_instant(e.time_ms, cell); }},
        {"name", [](const Entry& e) { return e.name; },
         [](Entry& e, const std::string& cell) {
             e.name = cell;
             return true;
         }},
        {"taken", [](const Entry& e) { return instant_cell(e.taken_ms); },
         [](Entry& e, const std::string& cell) { return read_instant(e.taken_ms, cell); }},
        {"taken_zone_assumed", [](const Entry& e) { return std::string(e.taken_zone_assumed ? "yes" : ""); },
         [](Entry& e, const std::string& cell) {
             e.taken_zone_assumed = cell == "yes";
             return cell == "yes" || cell == "no";
         }},
        {"meter", [](const Entry& e) { return e.meter; },
         [](Entry& e, const std::string& cell) {
             e.meter = cell;
             return true;
         }},
        {"clock_offset_s", [](const Entry& e) { return e.clock_offset_s == 0 ? std::string() : exact_text(e.clock_offset_s); },
         [](Entry& e, const std::string& cell) {
             std::optional<double> number;
             if (!read_finite(number, cell) || std::abs(*number) > 1e9) return false;
             e.clock_offset_s = *number;
             return true;
         }},
        {"clock_offset_u_s", [](const Entry& e) { return e.clock_offset_u_s ? exact_text(*e.clock_offset_u_s) : std::string(); },
         [](Entry& e, const std::string& cell) { return read_finite(e.clock_offset_u_s, cell) && *e.clock_offset_u_s >= 0; }},
        {"value", [](const Entry& e) { return e.value ? exact_text(*e.value) : std::string(); },
         [](Entry& e, const std::string& cell) { return read_finite(e.value, cell); }},
    };
    return all;
}

Error bad(const Message& what, long line, const Message& remedy) {
    return Error{Failure::bad_input, what, say(phrase("folder", "line %1"), say_number(line)), remedy};
}

/// What a row must have besides.
Result<void> check(const Entry& entry) {
    const bool of_run = entry.what == What::photo || entry.what == What::log;
    if (entry.what == What::setting) {
        if (entry.name.empty() || !entry.value)
            return bad(say(phrase("folder", "a setting needs `name` and `value`")), entry.line,
                       say(phrase("folder", "complete the row, or delete it")));
        return {};
    }
    if (entry.file.empty())
        return bad(say(phrase("folder", "the row names no file")), entry.line, say(phrase("folder", "complete the row, or delete it")));
    if (of_run && entry.run_sheet.empty())
        return bad(say(phrase("folder", "the row does not say which run it belongs to")), entry.line, say(phrase("folder", "fill in `run_sheet`")));
    return {};
}

} // namespace

std::string contents_text(const std::vector<Entry>& entries) {
    std::string text(first_line);
    text += '\n';
    std::vector<std::string> cells;
    for (const Column& column : columns()) cells.emplace_back(column.name);
    append_csv_record(text, cells);
    for (const Entry& entry : entries) {
        cells.clear();
        for (const Column& column : columns()) cells.push_back(column.text(entry));
        append_csv_record(text, cells);
    }
    return text;
}

bool is_contents(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    return text.starts_with(any_first_line);
}

Result<std::vector<Entry>> read_contents(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    const std::string_view head = text.substr(0, text.find('\n'));
    if (!head.starts_with(any_first_line))
        return bad(say(phrase("folder", "this is no list of a logbook's folder")), 1,
                   say(phrase("folder", "choose a folder that this program wrote")));
    // A spreadsheet that saved it may have put separators behind.
    const std::size_t end = head.find_last_not_of(", \r");
    if (head.substr(0, end + 1) != first_line)
        return bad(say(phrase("folder", "the folder is of a newer sort")), 1,
                   say(phrase("folder", "bring it in with a newer version of this program")));
    CsvReader csv(text.substr(std::min(text.size(), head.size() + 1)), 2);
    CsvRecord row;
    Result<bool> more = csv.next(row);
    if (!more) return more.error();
    std::vector<const Column*> order;
    for (const std::string& title : row.fields) {
        const auto known = std::ranges::find(columns(), std::string_view(title), &Column::name);
        if (known == columns().end())
            return bad(say(phrase("folder", "there is no column `%1`"), title), row.line,
                       say(phrase("folder", "delete it, or name it as in the help")));
        order.push_back(&*known);
    }
    for (const std::string_view needed : {"what", "file"})
        if (std::ranges::none_of(order, [&](const Column* column) { return column->name == needed; }))
            return bad(say(phrase("folder", "the column `%1` is missing"), needed), row.line, say(phrase("folder", "restore it")));
    std::vector<Entry> entries;
    while ((more = csv.next(row)) && more.value()) {
        if (std::ranges::all_of(row.fields, [](const std::string& field) { return field.empty(); })) continue;
        if (row.fields.size() != order.size())
            return bad(say_count(row.fields.size(), phrases("folder", "the row has %n cells, the header %1", "the row has %n cell, the header %1"),
                                 say_number(order.size())),
                       row.line, say(phrase("folder", "give it as many")));
        Entry entry;
        entry.line = row.line;
        for (std::size_t c = 0; c < order.size(); ++c) {
            const bool empty = row.fields[c].empty();
            if (empty && order[c]->name == "what")
                return bad(say(phrase("folder", "the row does not say what it is")), row.line, say(phrase("folder", "fill in `what`")));
            if (!empty && !order[c]->read(entry, row.fields[c]))
                return bad(say(phrase("folder", "`%1` is no %2"), row.fields[c], order[c]->name), row.line,
                           say(phrase("folder", "correct the cell; the help says what it holds")));
        }
        if (const Result<void> sound = check(entry); !sound) return sound.error();
        entries.push_back(std::move(entry));
    }
    if (!more) return more.error();
    return entries;
}

} // namespace ullage::folder
