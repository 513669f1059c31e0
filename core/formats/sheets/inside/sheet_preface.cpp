// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/inside/sheet_preface.h"

#include "base/number.h"
#include "formats/text/csv.h"
#include "formats/text/preface_text.h"
#include "formats/text/sheet_keys.h"
#include "model/limits.h"

#include <fmt/format.h>

#include <map>

namespace ullage {

namespace {

class PrefaceReader {
public:
    explicit PrefaceReader(std::string_view text) : text_(text) {}

    Result<SheetPreface> read() {
        for (;;) {
            const std::string_view rest = text_.substr(at_);
            const std::string_view line = rest.substr(0, rest.find('\n'));
            Result<void> done;
            if (trimmed(line).starts_with('#')) done = take_line(line);
            else if (rest.starts_with("\"#")) done = take_quoted_line();
            else if (!rest.empty() && line.find_first_not_of(" \t\r,") == std::string_view::npos) pass_over(line);
            else break;
            if (!done) return done.error();
        }
        if (Result<void> done = check(); !done) return done.error();
        preface_.table_at = at_;
        preface_.table_line = line_;
        return std::move(preface_);
    }

private:
    void pass_over(std::string_view line) {
        at_ = std::min(at_ + line.size() + 1, text_.size());
        ++line_;
    }

    Result<void> take_line(std::string_view line) {
        std::string_view content = line;
        if (content.ends_with('\r')) content.remove_suffix(1);
        Result<void> done = take(content);
        pass_over(line);
        return done;
    }

    /// A spreadsheet writes a preface line with a comma or a quote in it as fields in quotes.
    Result<void> take_quoted_line() {
        CsvReader reader(text_.substr(at_), line_);
        CsvRecord fields;
        if (const Result<bool> read = reader.next(fields); !read) return read.error();
        Result<void> done = take(fmt::format("{}", fmt::join(fields.fields, ",")));
        at_ += reader.position();
        line_ = reader.line();
        return done;
    }

    Error at_line(Error error, std::string_view key) const {
        error.where =
            key.empty() ? say(phrase("sheets", "line %1"), say_number(line_)) : say(phrase("sheets", "line %1, key `%2`"), say_number(line_), key);
        return error;
    }

    /// One line from its `#` on.
    Result<void> take(std::string_view line) {
        const std::string_view content = trimmed(trimmed(line).substr(1));
        const auto colon = content.find(':');
        if (colon == std::string_view::npos) {
            if (content.find_first_not_of(" \t,#") != std::string_view::npos)
                preface_.notices.push_back(say(phrase("sheets", "line %1: the comment `%2` is not kept"), say_number(line_), content));
            return {};
        }
        const SheetKey* known = find_sheet_key(trimmed(content.substr(0, colon)));
        const std::string key(known ? known->name : trimmed(content.substr(0, colon)));
        if (key.empty())
            return at_line(
                {Failure::bad_input, say(phrase("sheets", "there is no key before the colon")), {}, say(phrase("sheets", "write `# key: value`"))},
                {});
        if (const auto [earlier, is_new] = line_of_key_.emplace(key, line_); !is_new)
            return at_line({Failure::bad_input,
                            say(phrase("sheets", "the key stands in line %1 already"), say_number(earlier->second)),
                            {},
                            say(phrase("sheets", "keep one of the two lines"))},
                           key);
        const Result<std::string> value = unescaped_preface(content.substr(colon + 1));
        if (!value) return at_line(value.error(), key);
        if (!known) {
            preface_.notices.push_back(say(phrase("sheets", "line %1: key `%2` is not known; kept with the run"), say_number(line_), key));
            auto& extra = preface_.record.run.extra;
            for (const Result<void>& good :
                 {check_text({}, key, longest_name), check_text({}, value.value(), longest_extra_value),
                  check_count({}, phrases("formats", "there are %n keys that are not known", "there is %n key that is not known"), extra.size() + 1,
                              most_extras)})
                if (!good) return at_line(good.error(), key.size() > longest_name ? std::string_view() : std::string_view(key));
            extra.emplace_back(key, value.value());
            return {};
        }
        if (value.value().empty()) return {};
        if (key == "time_zone") preface_.zone_given = true;
        const Result<void> read = known->read(preface_.record, value.value());
        if (!read) return at_line(read.error(), key);
        return {};
    }

    Result<void> check() {
        const RunRecord& record = preface_.record;
        if (record.unit.name.empty())
            return Error{Failure::bad_input,
                         say(phrase("sheets", "the sheet does not name the unit that was tested")),
                         {},
                         say(phrase("sheets", "add a line `# unit: NAME` at the top"))};
        if (record.meter && record.meter->name.empty())
            return Error{Failure::bad_input,
                         say(phrase("sheets", "the sheet describes a meter but does not name it")),
                         {},
                         say(phrase("sheets", "add a line `# meter: NAME`"))};
        if (record.second_meter && record.second_meter->name.empty())
            return Error{Failure::bad_input,
                         say(phrase("sheets", "the sheet describes a second meter but does not name it")),
                         {},
                         say(phrase("sheets", "add a line `# second_meter: NAME`"))};
        if (record.second_meter && record.meter && record.second_meter->name == record.meter->name)
            return Error{
                Failure::bad_input, say(phrase("sheets", "both meters have one name")), {}, say(phrase("sheets", "give one of them another name"))};
        for (const auto* meter : {&record.meter, &record.second_meter})
            if (*meter && (*meter)->range_low_w && (*meter)->range_high_w && *(*meter)->range_low_w > *(*meter)->range_high_w)
                return Error{Failure::bad_input,
                             say(phrase("sheets", "the range of meter %1 begins above its end"), (*meter)->name),
                             {},
                             say(phrase("sheets", "exchange the two loads"))};
        if (!line_of_key_.contains("run")) preface_.notices.push_back(say(phrase("sheets", "key `run` is missing; read as a drain")));
        if (!line_of_key_.contains("ended"))
            preface_.notices.push_back(say(phrase("sheets", "key `ended` is missing; the run counts as still running")));
        return {};
    }

    std::string_view text_;
    std::size_t at_ = 0;
    long line_ = 1;
    SheetPreface preface_;
    std::map<std::string, long, std::less<>> line_of_key_;
};

} // namespace

Result<SheetPreface> read_sheet_preface(std::string_view text) { return PrefaceReader(text).read(); }

} // namespace ullage
