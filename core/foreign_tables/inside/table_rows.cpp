// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a table, one after the other, as readings of runs.
#include "base/plain_text.h"
#include "foreign_tables/inside/run_gatherer.h"
#include "foreign_tables/inside/table_plan.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

/// One block of one section, walked from its first row to its last.
class BlockWalk {
public:
    BlockWalk(const TableSheet& sheet, const TableSection& section, const TableBlock& block, const TablePlan& plan, const TableAnswers& answers,
              RunGatherer& gatherer, TableReading& reading)
        : sheet_(sheet), section_(section), block_(block), plan_(plan), answers_(answers), gatherer_(gatherer), reading_(reading) {
        const auto first_of = [&](TableRole role) -> std::optional<std::size_t> {
            const auto found = block.of(role, section.columns);
            return found.empty() ? std::nullopt : std::optional(found.front());
        };
        time_ = first_of(TableRole::time);
        date_ = first_of(TableRole::date);
        elapsed_ = first_of(TableRole::elapsed);
        if (!time_ && !elapsed_ && block.shared_time)
            (section.columns[*block.shared_time].role == TableRole::elapsed ? elapsed_ : time_) = block.shared_time;
        if (!date_) date_ = block.shared_date;
        mark_ = first_of(TableRole::mark);
        run_ = first_of(TableRole::run);
        unit_ = first_of(TableRole::unit);
        remarks_ = block.of(TableRole::remark, section.columns);
        for (const TableRole role : {TableRole::gauge, TableRole::energy, TableRole::second_energy, TableRole::power, TableRole::display_power})
            if (const auto column = first_of(role)) numbers_.push_back(*column);
        elapsed_unit_s_ = elapsedUnit();
        share_ = gaugeIsShare();
    }

    void walk() {
        for (std::size_t row = section_.data; row < section_.end; ++row) take(row);
    }

private:
    [[nodiscard]] const GridCell& cell(std::size_t row, std::size_t column) const { return sheet_.at(row, column); }

    void leave(std::size_t row, const Message& reason, bool in_part = false) {
        reading_.not_taken.push_back({static_cast<long>(row) + 1, in_part, reason});
    }

    /// Seconds of a bare number of times that count from the start; 0 where nothing says it.
    double elapsedUnit() const {
        if (!elapsed_) return 0;
        const std::string& name = answers_.elapsed_unit.empty() ? section_.columns[*elapsed_].unit : answers_.elapsed_unit;
        const auto unit = unit_named(name);
        if (!unit || unit->quantity != LogQuantity::time) return 0;
        return unit->exponent == -3 ? 0.001 : unit->factor;
    }

    /// Whether 0.69 means 69 %: asked where all of a gauge lies between 0 and 1 and no percent is named.
    bool gaugeIsShare() {
        const auto gauge = block_.of(TableRole::gauge, section_.columns);
        if (gauge.empty()) return false;
        if (answers_.gauge_is_share) return *answers_.gauge_is_share;
        std::size_t fractions = 0;
        std::string example;
        for (std::size_t row = section_.data; row < section_.end; ++row) {
            const auto number = number_in_cell(cell(row, gauge.front()), plan_.writing);
            if (!number) continue;
            if (number->unit == "%" || number->value > 1 || number->value < 0) return false;
            if (number->value > 0 && number->value < 1) {
                ++fractions;
                if (example.empty()) example = cell(row, gauge.front()).text;
            }
        }
        if (fractions < 2 || section_.columns[gauge.front()].unit == "%") return false;
        ask_once(reading_, TableQuestion::gauge_share, say(phrase("foreign_tables", "a gauge of `%1` may be a share of 1 or percent"), example),
                 {"share", "percent"});
        return true;
    }

    void take(std::size_t row) {
        std::size_t filled = 0, only = 0;
        for (std::size_t c = block_.first; c < block_.end; ++c)
            if (const GridCell& each = cell(row, c); !each.text.empty() && !says_nothing(each.text)) ++filled, only = c;
        if (filled == 0) {
            gatherer_.gap();
            return;
        }
        if (filled == 1 && takesAlone(row, only)) return;
        const std::string& first = cell(row, firstFilled(row)).text;
        if (names_total(first)) return leave(row, say(phrase("foreign_tables", "`%1` is a line of totals"), first));
        ReadingValues values;
        bool any = false;
        std::vector<std::string> words;
        readNumbers(row, values, any, words);
        if (any && run_ && !cell(row, *run_).text.empty()) current_run_ = with_plain_blanks(cell(row, *run_).text);
        if (any && unit_ && !cell(row, *unit_).text.empty()) current_unit_ = with_plain_blanks(cell(row, *unit_).text);
        EventInCell event;
        readNotes(row, values, event, words);
        if (!any && !values.mark && values.remark.empty() && !event.full) {
            // A date or time alone: the day holds for the rows below.
            (void)gatherer_.takeDay(sheet_, row, date_, plan_.date_order);
            leave(row, say(phrase("foreign_tables", "it has no value")));
            return;
        }
        MomentCells cells{time_ ? &cell(row, *time_) : nullptr, date_ ? &cell(row, *date_) : nullptr, elapsed_ ? &cell(row, *elapsed_) : nullptr,
                          elapsed_unit_s_};
        gatherer_.add(row, cells, std::move(values), event, {current_unit_, current_run_, block_.title});
    }

    [[nodiscard]] std::size_t firstFilled(std::size_t row) const {
        for (std::size_t c = block_.first; c < block_.end; ++c)
            if (!cell(row, c).text.empty()) return c;
        return block_.first;
    }

    /// A row with one cell alone: a heading with a day, a title, an event, or nothing of use.
    bool takesAlone(std::size_t row, std::size_t only) {
        const GridCell& alone = cell(row, only);
        const TableRole role = section_.columns[only].role;
        if (holds_numbers(role) && number_in_cell(alone, plan_.writing)) {
            leave(row, say(phrase("foreign_tables", "it has no time")));
            return true;
        }
        if (gatherer_.takeHeading(row, alone, role == TableRole::date)) return true;
        if (role == TableRole::time || role == TableRole::date || role == TableRole::elapsed) {
            if (looks_numeric(alone.text)) {
                leave(row, say(phrase("foreign_tables", "it has no value")));
                return true;
            }
        }
        if (role == TableRole::remark || role == TableRole::mark || event_in_cell(alone.text).mark) {
            leave(row, say(phrase("foreign_tables", "`%1` has no time"), alone.text));
            return true;
        }
        if (names_total(alone.text)) {
            leave(row, say(phrase("foreign_tables", "`%1` is a line of totals"), alone.text));
            return true;
        }
        gatherer_.title(row, with_plain_blanks(alone.text));
        return true;
    }

    void readNumbers(std::size_t row, ReadingValues& values, bool& any, std::vector<std::string>& words) {
        for (const std::size_t c : numbers_) {
            const GridCell& each = cell(row, c);
            if (each.text.empty() || says_nothing(each.text)) continue;
            const TableRole role = section_.columns[c].role;
            const auto number = number_in_cell(each, plan_.writing);
            if (!number) {
                words.push_back(with_plain_blanks(each.text));
                if (!event_in_cell(each.text).mark)
                    leave(row, say(phrase("foreign_tables", "the %1 `%2` is no number; kept as a remark"), say_table_role(role), each.text), true);
                continue;
            }
            if (number->about) words.push_back(with_plain_blanks(each.text));
            Message problem;
            if (putNumber(*number, c, role, values, problem)) any = true;
            else if (!problem.empty()) leave(row, problem, true), words.push_back(with_plain_blanks(each.text));
        }
    }

    /// Puts a number to its place, in Wh, W or percent. False where it has none, with the reason.
    bool putNumber(const NumberInCell& number, std::size_t column, TableRole role, ReadingValues& values, Message& problem) {
        const std::string& unit = number.unit.empty() ? section_.columns[column].unit : number.unit;
        if (role == TableRole::gauge) {
            if (!unit.empty() && unit != "%") {
                problem = say(phrase("foreign_tables", "a gauge in %1 is not understood; kept as a remark"), unit);
                return false;
            }
            const double percent = share_ ? std::min(number.value * 100, 1e9) : number.value;
            if (percent < 0 || percent > 100) {
                problem = say(phrase("foreign_tables", "a gauge of %1 lies outside 0 to 100 %; kept as a remark"),
                              say_digits(fmt::format("{:g}", percent)));
                return false;
            }
            // 0.07 × 100 is 7.000000000000001.
            values.gauge_percent = share_ ? static_cast<double>(static_cast<long long>(percent * 1e9 + 0.5)) / 1e9 : percent;
            return true;
        }
        const bool energy = role == TableRole::energy || role == TableRole::second_energy;
        const std::string named = unit.empty() && energy ? answers_.register_unit : unit;
        if (named.empty() && energy) {
            ask_once(reading_, TableQuestion::register_unit,
                     say(phrase("foreign_tables", "the register in %1 has no unit"), table_column_name(section_.columns, column)), {"Wh", "kWh"});
        }
        const auto known = unit_named(named.empty() ? (energy ? "Wh" : "W") : named);
        const LogQuantity wanted = energy ? LogQuantity::energy : LogQuantity::power;
        if (!known || known->quantity != wanted) {
            problem = say(phrase("foreign_tables", "%1 is no unit of the %2; kept as a remark"), named, say_table_role(role));
            return false;
        }
        const double value = number.value * known->factor / known->divisor * scaleOf(known->exponent);
        const double rounded = tidied(value);
        if (rounded < 0) {
            problem = energy ? say(phrase("foreign_tables", "a register below 0 is not taken; kept as a remark"))
                             : say(phrase("foreign_tables", "a power below 0 is not taken; kept as a remark"));
            return false;
        }
        if (energy) (role == TableRole::energy ? values.register_wh : values.second_register_wh) = rounded;
        else (role == TableRole::display_power ? values.display_w : values.meter_w) = rounded;
        return true;
    }

    static double scaleOf(int exponent) { return exponent == 3 ? 1e3 : exponent == 6 ? 1e6 : exponent == -3 ? 1e-3 : 1; }
    /// 0.43 kWh is 430 Wh, not 430.00000000000006.
    static double tidied(double value) {
        const double scaled = value * 1e6;
        return scaled < 9e15 && scaled > -9e15 ? static_cast<double>(static_cast<long long>(scaled + (scaled < 0 ? -0.5 : 0.5))) / 1e6 : value;
    }

    void readNotes(std::size_t row, ReadingValues& values, EventInCell& event, std::vector<std::string>& words) {
        // Where a column is there for events, remarks are no more than remarks.
        std::vector<std::string> remarks;
        for (const std::size_t c : remarks_)
            if (std::string note = with_plain_blanks(cell(row, c).text); !note.empty() && note != "-") remarks.push_back(unguarded(std::move(note)));
        if (!mark_) words.insert(words.end(), remarks.begin(), remarks.end());
        else if (const std::string note = with_plain_blanks(cell(row, *mark_).text); !note.empty() && !says_nothing(note)) words.push_back(note);
        for (const std::string& word : words) {
            const EventInCell named = event_in_cell(word);
            const bool own_words = named.mark && word == mark_text(*named.mark);
            if (named.mark && !values.mark) {
                values.mark = named.mark;
                if (!own_words)
                    note_once(reading_, say(phrase("foreign_tables", "row %1: `%2` is taken for the mark %3"), say_number(row + 1), word,
                                            say_mark(*named.mark)));
            }
            event.full = event.full || named.full;
            // A mark's own words need no remark that repeats them.
            if (!own_words) addRemark(values, word);
        }
        if (!mark_) return;
        for (const std::string& remark : remarks) {
            event.full = event.full || event_in_cell(remark).full;
            addRemark(values, remark);
        }
    }

    static void addRemark(ReadingValues& values, const std::string& words) {
        if (values.remark.size() + words.size() < longest_note) values.remark += (values.remark.empty() ? "" : "; ") + words;
    }

    /// Without the apostrophe that keeps a spreadsheet from running a text.
    static std::string unguarded(std::string note) {
        if (note.size() > 1 && note[0] == '\'' && std::string_view("=+-@").find(note[1]) != std::string_view::npos) note.erase(0, 1);
        return note;
    }

    static constexpr std::size_t longest_note = 40'000;

    const TableSheet& sheet_;
    const TableSection& section_;
    const TableBlock& block_;
    const TablePlan& plan_;
    const TableAnswers& answers_;
    RunGatherer& gatherer_;
    TableReading& reading_;
    std::optional<std::size_t> time_, date_, elapsed_, mark_, run_, unit_;
    std::vector<std::size_t> remarks_, numbers_;
    std::string current_run_, current_unit_;
    double elapsed_unit_s_ = 0;
    bool share_ = false;
};

} // namespace

void take_rows(const TableSheet& sheet, const TablePlan& plan, const TableAnswers& answers, const std::string& zone, UtcMs now_ms,
               TableReading& reading) {
    std::size_t most_blocks = 0;
    for (const TableSection& section : plan.sections) most_blocks = std::max(most_blocks, section.blocks.size());
    // A block is walked through all sections, so that a run may go on below a repeated head.
    for (std::size_t b = 0; b < most_blocks; ++b) {
        RunGatherer gatherer(plan, answers, zone, now_ms, reading);
        for (const TableSection& section : plan.sections) {
            if (b >= section.blocks.size()) continue;
            if (section.head) gatherer.newHead(sheet, section, section.blocks[b]);
            BlockWalk(sheet, section, section.blocks[b], plan, answers, gatherer, reading).walk();
        }
        gatherer.finish();
    }
    std::ranges::stable_sort(reading.not_taken, {}, &RowNotTaken::row);
    std::erase_if(reading.runs, [](const ForeignRun& run) { return run.readings.empty(); });
    if (reading.runs.empty() && reading.questions.empty() && !reading.refusal)
        reading.refusal = say(phrase("foreign_tables", "no row of the table has a time and a value"));
}

} // namespace ullage
