// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/load_list_file.h"

#include "base/number.h"
#include "base/utf8.h"
#include "formats/text/csv.h"
#include "formats/text/preface_text.h"
#include "formats/text/sheet_keys.h"
#include "formats/text/spreadsheet_text.h"
#include "model/limits.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace ullage {

namespace {

constexpr std::string_view list_byte_order_mark = "\xEF\xBB\xBF";
enum LoadColumn {
    name,
    power_w,
    duty,
    measured_wh,
    measured_hours,
    hours_per_day,
    night_hours,
    start_peak_w,
    how_many,
    always_connected,
    column_count
};
constexpr std::array<std::string_view, column_count> column_names{"name",          "power_w",     "duty",         "measured_wh", "measured_hours",
                                                                  "hours_per_day", "night_hours", "start_peak_w", "how_many",    "always_connected"};

Error bad_list(const Message& what, const Message& where, const Message& remedy) { return {Failure::bad_input, what, where, remedy}; }

Message use_columns() { return say(phrase("sheets", "use the columns %1"), fmt::format("{}", fmt::join(column_names, ", "))); }

Message line_of_list(long line) { return say(phrase("sheets", "line %1"), say_number(line)); }

Message cell_of_list(long line, std::string_view column) { return say(phrase("sheets", "line %1, column `%2`"), say_number(line), column); }

class ListReader {
public:
    explicit ListReader(std::string_view text) : text_(text) {}

    Result<LoadList> read() {
        if (Result<void> done = read_preface(); !done) return done.error();
        if (list_.name.empty())
            return bad_list(say(phrase("sheets", "the file does not name the load list")), {},
                            say(phrase("sheets", "add a line `# load_list: NAME` at the top")));
        CsvReader csv(text_, line_);
        CsvRecord row;
        const Result<bool> head = csv.next(row);
        if (!head) return head.error();
        if (!head.value()) return bad_list(say(phrase("sheets", "the header row is missing")), line_of_list(line_), use_columns());
        if (Result<void> done = read_head(row); !done) return done.error();
        for (;;) {
            const Result<bool> more = csv.next(row);
            if (!more) return more.error();
            if (!more.value()) break;
            if (row.fields.size() == 1 && trimmed(row.fields[0]).empty()) continue;
            if (list_.appliances.size() == most_appliances) {
                Error error =
                    check_count({}, phrases("formats", "there are %n appliances", "there is %n appliance"), most_appliances + 1, most_appliances)
                        .error();
                error.where = line_of_list(row.line);
                return error;
            }
            if (Result<void> done = read_row(row); !done) return done.error();
        }
        if (Result<void> sound = check(list_); !sound) return sound.error();
        return std::move(list_);
    }

private:
    Result<void> read_preface() {
        for (;;) {
            const std::string_view line = text_.substr(0, text_.find('\n'));
            const std::string_view content = trimmed(line.ends_with('\r') ? line.substr(0, line.size() - 1) : line);
            if (!content.starts_with('#') && (!content.empty() || text_.empty())) return {};
            if (Result<void> done = read_key(content); !done) return done;
            text_.remove_prefix(std::min(line.size() + 1, text_.size()));
            ++line_;
        }
    }

    Result<void> read_key(std::string_view content) {
        if (content.empty()) return {};
        content = trimmed(content.substr(1));
        const Message where = line_of_list(line_);
        const auto colon = content.find(':');
        const std::string key = lower_case(trimmed(content.substr(0, colon)));
        if (colon == std::string_view::npos || (key != "load_list" && key != "remark"))
            return bad_list(say(phrase("sheets", "`%1` is no key of a load list"), key), where,
                            say(phrase("sheets", "use `# load_list: NAME` and `# remark: TEXT`")));
        const Result<std::string> value = unescaped_preface(content.substr(colon + 1));
        if (!value) return bad_list(value.error().what, where, value.error().remedy);
        std::string& place = key == "remark" ? list_.remark : list_.name;
        if (!place.empty())
            return bad_list(say(phrase("sheets", "the key `%1` stands here for the second time"), key), where,
                            say(phrase("sheets", "keep one of the two lines")));
        place = value.value();
        return {};
    }

    Result<void> read_head(const CsvRecord& row) {
        width_ = row.fields.size();
        const Message where = line_of_list(row.line);
        for (std::size_t i = 0; i < width_; ++i) {
            const std::string key = lower_case(trimmed(row.fields[i]));
            const auto known = std::ranges::find(column_names, std::string_view(key));
            if (known == column_names.end()) return bad_list(say(phrase("sheets", "there is no column `%1`"), key), where, use_columns());
            auto& place = place_of_[static_cast<std::size_t>(known - column_names.begin())];
            if (place)
                return bad_list(say(phrase("sheets", "the column `%1` stands here twice"), key), where, say(phrase("sheets", "keep one of the two")));
            place = i;
        }
        for (const LoadColumn needed : {name, hours_per_day})
            if (!place_of_[needed])
                return bad_list(say(phrase("sheets", "the column `%1` is missing"), column_names[needed]), where, say(phrase("sheets", "add it")));
        return {};
    }

    [[nodiscard]] std::string_view field(const CsvRecord& row, LoadColumn column) const {
        const auto place = place_of_[column];
        return place ? trimmed(row.fields[*place]) : std::string_view();
    }

    Result<std::optional<double>> number(const CsvRecord& row, LoadColumn column) const {
        const std::string_view text = field(row, column);
        if (text.empty()) return std::optional<double>();
        const Result<double> read = parse_number(text);
        if (!read) return bad_list(read.error().what, cell_of_list(row.line, column_names[column]), read.error().remedy);
        return std::optional(read.value());
    }

    Result<void> read_row(const CsvRecord& row) {
        const Message where = line_of_list(row.line);
        if (row.fields.size() != width_)
            return bad_list(say(phrase("sheets", "the row has %1, the header row has %2"),
                                say_count(row.fields.size(), phrases("sheets", "%n fields", "%n field")), say_number(width_)),
                            where, say(phrase("sheets", "add or remove commas; a name with commas needs quotes around it")));
        std::array<std::optional<double>, column_count> numbers;
        for (const LoadColumn column : {power_w, duty, measured_wh, measured_hours, hours_per_day, night_hours, start_peak_w, how_many}) {
            Result<std::optional<double>> read = number(row, column);
            if (!read) return read.error();
            numbers[column] = read.value();
        }
        Appliance appliance;
        appliance.name = std::string(unguarded_text(field(row, name)));
        appliance.power_w = numbers[power_w];
        appliance.duty = numbers[duty].value_or(1);
        if (numbers[measured_wh] || numbers[measured_hours])
            appliance.measured = MeasuredUse{numbers[measured_wh].value_or(0), numbers[measured_hours].value_or(0)};
        appliance.hours_per_day = numbers[hours_per_day].value_or(0);
        appliance.night_hours = numbers[night_hours].value_or(0);
        appliance.start_peak_w = numbers[start_peak_w];
        const double count = numbers[how_many].value_or(1);
        appliance.count = count == std::floor(count) && count >= 1 && count <= most_alike ? static_cast<int>(count) : 0;
        const std::string connected = lower_case(field(row, always_connected));
        if (!connected.empty() && connected != "yes" && connected != "no")
            return bad_list(say(phrase("sheets", "`%1` is neither yes nor no"), connected), cell_of_list(row.line, "always_connected"),
                            say(phrase("sheets", "use `yes` or `no`")));
        appliance.always_connected = connected == "yes";
        if (Result<void> sound = check(appliance); !sound) {
            Error error = sound.error();
            error.where = say_joined({where, error.where}, ", ");
            return error;
        }
        list_.appliances.push_back(std::move(appliance));
        return {};
    }

    std::string_view text_;
    long line_ = 1;
    std::size_t width_ = 0;
    std::array<std::optional<std::size_t>, column_count> place_of_;
    LoadList list_;
};

std::string text_of(const std::optional<double>& value) { return value ? exact_text(*value) : std::string(); }

} // namespace

Result<LoadList> read_load_list(std::string_view text, const std::string& source) {
    if (text.starts_with(list_byte_order_mark)) text.remove_prefix(list_byte_order_mark.size());
    const auto in_source = [&source](Error error) { return source.empty() ? error : within(std::move(error), source); };
    if (text.find('\0') != std::string_view::npos || first_bad_utf8(text))
        return in_source(bad_list(say(phrase("sheets", "the file is no UTF-8 text")), {}, say(phrase("sheets", "save it as CSV in UTF-8"))));
    Result<LoadList> list = ListReader(text).read();
    if (!list) return in_source(list.error());
    return list;
}

std::string write_load_list(const LoadList& list) {
    std::string text = "# load_list: " + escaped_preface(list.name) + '\n';
    if (!list.remark.empty()) text += "# remark: " + escaped_preface(list.remark) + '\n';
    append_csv_record(text, {column_names.begin(), column_names.end()});
    for (const Appliance& appliance : list.appliances) {
        const auto& measured = appliance.measured;
        append_csv_record(text, {guarded_text(appliance.name), text_of(appliance.power_w), exact_text(appliance.duty),
                                 measured ? exact_text(measured->energy_wh) : "", measured ? exact_text(measured->hours) : "",
                                 exact_text(appliance.hours_per_day), exact_text(appliance.night_hours), text_of(appliance.start_peak_w),
                                 std::to_string(appliance.count), appliance.always_connected ? "yes" : "no"});
    }
    return text;
}

} // namespace ullage
