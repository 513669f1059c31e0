// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/layout_columns.h"

#include <algorithm>
#include <cctype>

namespace ullage {
namespace {

std::string lower(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return static_cast<char>(c < 0x80 ? std::tolower(c) : c); });
    return text;
}

bool title_has(const LogColumn& column, std::initializer_list<std::string_view> words) {
    const std::string title = lower(column.title);
    return std::ranges::any_of(words, [&title](std::string_view word) { return title.find(word) != std::string::npos; });
}

bool names_time(const LogColumn& column) {
    return title_has(column, {"time", "zeit", "heure", "hora", "elapsed", "seconds", "epoch", "date", "stamp", "temps"}) ||
           lower(column.title) == "t" || lower(column.title) == "s" || column.unit.quantity == LogQuantity::time;
}

bool says_elapsed(const LogColumn& column) { return title_has(column, {"elapsed", "duration", "runtime", "run time", "laufzeit", "since"}); }

class Times {
public:
    Times(const LayoutRows& rows, const std::vector<ColumnContent>& contents, const LayoutAnswers& answers, TraceDetection& detection)
        : rows_(rows), contents_(contents), answers_(answers), detection_(detection), layout_(detection.layout) {}

    void settle() {
        std::optional<std::size_t> time = layout_.column_of(ColumnRole::time);
        if (!time) time = find();
        if (!time) {
            detection_.questions.push_back({OpenQuestion::no_time, say(phrase("trace", "no column of time is recognised: name it")), {}});
            return;
        }
        layout_.columns[*time].role = ColumnRole::time;
        if (answers_.time_form) layout_.time_form = *answers_.time_form;
        else form_of(*time);
        if (layout_.time_form == TimeForm::date_and_clock && !layout_.column_of(ColumnRole::date)) {
            if (const auto date = column_with(&ColumnContent::dates)) layout_.columns[*date].role = ColumnRole::date;
            else detection_.questions.push_back({OpenQuestion::no_time, say(phrase("trace", "no column of dates is recognised: name it")), {}});
        }
        const bool civil = layout_.time_form == TimeForm::date_time || layout_.time_form == TimeForm::date_and_clock;
        detection_.local_times = (civil || layout_.time_form == TimeForm::clock) && !contents_[*time].with_offset;
        if (civil) order(layout_.column_of(layout_.time_form == TimeForm::date_time ? ColumnRole::time : ColumnRole::date));
    }

private:
    [[nodiscard]] std::optional<std::size_t> column_with(std::size_t ColumnContent::*count) const {
        for (std::size_t c = 0; c < contents_.size(); ++c)
            if (free_column(c) && contents_[c].mostly(contents_[c].*count)) return c;
        return std::nullopt;
    }
    [[nodiscard]] bool free_column(std::size_t c) const { return layout_.columns[c].role == ColumnRole::unused; }

    [[nodiscard]] std::optional<std::size_t> find() const {
        if (const auto c = column_with(&ColumnContent::date_times)) return c;
        if (const auto c = column_with(&ColumnContent::clocks)) return c;
        std::optional<std::size_t> named;
        for (std::size_t c = 0; c < contents_.size(); ++c) {
            if (!free_column(c) || !contents_[c].mostly(contents_[c].numbers)) continue;
            if (names_time(layout_.columns[c])) return c;
            if (!contents_[c].grows) continue;
            // Without a name only the size of an epoch tells a time from a count.
            if (contents_[c].first > 9e8 && contents_[c].first < 5e12 && !named) named = c;
        }
        return named;
    }

    void form_of(std::size_t c) {
        const ColumnContent& content = contents_[c];
        if (content.mostly(content.date_times)) {
            layout_.time_form = TimeForm::date_time;
        } else if (content.mostly(content.clocks)) {
            if (layout_.column_of(ColumnRole::date) || column_with(&ColumnContent::dates)) {
                layout_.time_form = TimeForm::date_and_clock;
                return;
            }
            layout_.time_form = TimeForm::elapsed_clock;
            const std::string& first = rows_.data.front()[c];
            if (says_elapsed(layout_.columns[c])) return;
            ClockParts clock;
            bool beyond_a_day = false;
            for (const auto& row : rows_.data) beyond_a_day = beyond_a_day || (read_clock(row[c], false, clock) && clock.ms >= 86'400'000);
            if (beyond_a_day) return;
            detection_.questions.push_back(
                {OpenQuestion::clock_meaning,
                 say(phrase("trace", "the times begin with `%1`: times of day, or counted from the start of the log"), first),
                 {"clock", "elapsed"}});
        } else if (content.first >= 9e11 && content.first < 5e12) {
            layout_.time_form = TimeForm::epoch_ms;
        } else if (content.first >= 9e8 && content.first < 5e9) {
            layout_.time_form = TimeForm::epoch_s;
        } else {
            layout_.time_form = TimeForm::elapsed;
            if (layout_.columns[c].unit.quantity != LogQuantity::time && !content.suffix) {
                layout_.columns[c].unit = *unit_named("s");
                detection_.notes.push_back(say(phrase("trace", "the elapsed time has no unit: read as seconds")));
            }
        }
    }

    void order(std::optional<std::size_t> c) {
        if (answers_.date_order && *answers_.date_order != DateOrder::unknown) {
            layout_.date_order = *answers_.date_order;
            return;
        }
        if (!c) return;
        std::string example;
        for (const auto& row : rows_.data) {
            std::string_view cell = row[*c];
            DateParts date;
            if (!read_date(cell, date)) continue;
            if (example.empty()) example = row[*c];
            layout_.date_order = order_of(date);
            if (layout_.date_order != DateOrder::unknown) return;
        }
        if (example.empty()) return;
        std::string_view cell = example;
        DateParts date;
        (void)read_date(cell, date);
        std::vector<std::string> choices;
        const auto offer = [&](DateOrder order, const char* words) {
            if (days_of(date, order)) choices.emplace_back(words);
        };
        offer(DateOrder::day_first, "day-first");
        offer(DateOrder::month_first, "month-first");
        if (date.digits[0] == 2 && date.digits[2] == 2) offer(DateOrder::year_first, "year-first");
        detection_.questions.push_back(
            {OpenQuestion::date_order, say(phrase("trace", "`%1` can be read with the day or the month first"), example), choices});
    }

    const LayoutRows& rows_;
    const std::vector<ColumnContent>& contents_;
    const LayoutAnswers& answers_;
    TraceDetection& detection_;
    TraceLayout& layout_;
};

} // namespace

void settle_times(const LayoutRows& rows, const std::vector<ColumnContent>& contents, const LayoutAnswers& answers, TraceDetection& detection) {
    Times(rows, contents, answers, detection).settle();
}

} // namespace ullage
