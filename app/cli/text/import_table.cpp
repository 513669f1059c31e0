// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/import_table.h"

#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/table_reading_text.h"
#include "foreign_tables/table_log.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <filesystem>
#include <ostream>

namespace ullage {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view not_known = "not-known";

std::string plain_word(std::string_view text) {
    std::string low(trimmed(text));
    std::ranges::transform(low, low.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return low;
}

/// A column by its number from 1, its letter, or its title.
std::optional<std::size_t> column_named(std::string_view name, const TableReading& reading) {
    const auto titled =
        std::ranges::find(reading.columns, plain_word(name), [](const TableReading::Column& column) { return plain_word(column.title); });
    if (titled != reading.columns.end()) return static_cast<std::size_t>(titled - reading.columns.begin());
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), number);
    if (error != std::errc() || end != name.data() + name.size()) {
        number = 0;
        for (const char c : name) {
            if (std::isalpha(static_cast<unsigned char>(c)) == 0 || name.size() > 3) return std::nullopt;
            number = number * 26 + static_cast<std::size_t>(std::toupper(static_cast<unsigned char>(c)) - 'A') + 1;
        }
    }
    return number >= 1 && number <= reading.columns.size() ? std::optional(number - 1) : std::nullopt;
}

Result<TableAnswers::Column> table_column_of(const std::string& text, const TableReading& reading) {
    const auto equals = text.rfind('=');
    const Error form{Failure::bad_input, say(phrase("commands", "`%1` names no column and role"), text), "--map",
                     say(phrase("commands", "write it like %1; the roles are in the help of the command"), "1=time,B=gauge,Plug=register:kWh")};
    if (equals == std::string::npos) return form;
    const std::string_view behind = std::string_view(text).substr(equals + 1);
    const auto role = table_role_from(behind.substr(0, behind.find(':')));
    if (!role) return form;
    const auto column = column_named(std::string_view(text).substr(0, equals), reading);
    if (!column)
        return Error{Failure::bad_input, say(phrase("commands", "the table has no column `%1`"), text.substr(0, equals)), "--map",
                     say(phrase("commands", "name one by its number from 1 to %1, its letter or its title"), say_number(reading.columns.size()))};
    TableAnswers::Column answer{*column, *role, {}};
    if (const auto colon = behind.find(':'); colon != std::string_view::npos) {
        answer.unit = behind.substr(colon + 1);
        if (!known_table_unit(answer.unit))
            return Error{Failure::bad_input, say(phrase("commands", "`%1` is no unit"), answer.unit), "--map",
                         say(phrase("commands", "use Wh, kWh, W, kW, %, h, min or s"))};
    }
    return answer;
}

/// Titles of columns are known once the table was looked at, so `reading` is of the table without answers.
Result<TableAnswers> table_answers_of(const TableImportArguments& arguments, const TableReading& reading) {
    TableAnswers answers;
    for (const std::string& text : arguments.map) {
        const Result<TableAnswers::Column> column = table_column_of(text, reading);
        if (!column) return column.error();
        answers.columns.push_back(column.value());
    }
    if (arguments.date_order == "day-first") answers.date_order = DateOrder::day_first;
    if (arguments.date_order == "month-first") answers.date_order = DateOrder::month_first;
    if (!arguments.decimal.empty()) answers.decimal = arguments.decimal == "comma" ? ',' : '.';
    answers.register_unit = arguments.register_unit;
    answers.elapsed_unit = arguments.elapsed_unit;
    if (!arguments.gauge.empty()) answers.gauge_is_share = arguments.gauge == "share";
    if (!arguments.times.empty()) answers.times_are_elapsed = arguments.times == "elapsed";
    if (!arguments.runs.empty()) answers.gaps_part_runs = arguments.runs == "separate";
    answers.year = arguments.year;
    answers.starts = arguments.starts;
    return answers;
}

char delimiter_of(const std::string& word) {
    if (word == "tab") return '\t';
    if (word == "semicolon") return ';';
    if (word == "bar") return '|';
    if (word == "comma") return ',';
    return word == "blanks" ? ' ' : '\0';
}

Result<const TableSheet*> sheet_of(const TableBook& book, const std::string& name, const std::string& path) {
    std::vector<std::string> names;
    for (const TableSheet& sheet : book.sheets) {
        if (sheet.name == name && !name.empty()) return &sheet;
        names.push_back(sheet.name);
    }
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), number);
    if (!name.empty() && error == std::errc() && end == name.data() + name.size() && number >= 1 && number <= book.sheets.size())
        return &book.sheets[number - 1];
    if (!name.empty())
        return Error{Failure::bad_input, say(phrase("commands", "there is no sheet `%1`"), name), path,
                     say(phrase("commands", "use --sheet with one of %1"), say_names(names))};
    if (book.sheets.size() == 1) return &book.sheets.front();
    return Error{Failure::bad_input, say(phrase("commands", "there are several sheets: %1"), say_names(names)), path,
                 say(phrase("commands", "name one with --sheet; nothing was imported"))};
}

/// A number or "not-known"; absent for the latter.
Result<std::optional<double>> stated_number(const std::string& text, const char* option, const NumberRange& range) {
    if (text.empty() || text == not_known) return std::optional<double>();
    const Result<double> number = parse_number(text);
    if (!number) return Error{Failure::bad_input, number.error().what, option, say(phrase("commands", "give a number, or not-known"))};
    if (auto good = check_number(option, number.value(), range); !good) return good.error();
    return std::optional(number.value());
}

/// What is said of the runs, and which options are still wanted.
struct StatedFacts {
    std::vector<TableFacts> of_runs;
    std::vector<std::string> missing; ///< options
};

class FactsFinder {
public:
    FactsFinder(const Logbook& logbook, const TableReading& reading, const TableImportArguments& arguments, std::string zone)
        : logbook_(logbook), reading_(reading), arguments_(arguments), zone_(std::move(zone)) {}

    Result<StatedFacts> find() {
        for (const ForeignRun& run : reading_.runs) {
            TableFacts facts;
            facts.zone = zone_;
            facts.load = arguments_.load;
            if (facts.load.empty())
                if (const auto load = reading_.preface.find("load"); load != reading_.preface.end()) facts.load = load->second;
            if (!arguments_.kind.empty()) facts.kind = arguments_.kind == "no-load-drain" ? RunKind::no_load_drain : *run_kind_from(arguments_.kind);
            if (arguments_.started_full == "yes" || (arguments_.started_full.empty() && run.full)) facts.started_full = true;
            if (arguments_.started_full == "no") facts.started_full = false;
            if (Result<void> done = findUnit(run, facts); !done) return done.error();
            if (Result<void> done = findMeters(run, facts); !done) return done.error();
            findEnd(run, facts);
            stated_.of_runs.push_back(std::move(facts));
        }
        return std::move(stated_);
    }

private:
    void want(const char* option) {
        if (std::ranges::find(stated_.missing, option) == stated_.missing.end()) stated_.missing.emplace_back(option);
    }

    Result<void> findUnit(const ForeignRun& run, TableFacts& facts) {
        // A column of units goes before the option, which may name one of them; a line above the table does not.
        const std::string name = !arguments_.unit.empty() && !hasUnitColumn() ? arguments_.unit : run.unit_name;
        if (name.empty()) {
            want("--unit");
            return {};
        }
        const Result<std::vector<Unit>> units = logbook_.units();
        if (!units) return units.error();
        if (const auto known = std::ranges::find(units.value(), name, &Unit::name); known != units.value().end()) {
            facts.unit = *known;
            return {};
        }
        facts.unit.name = name;
        std::string rated = ratedOf(name);
        if (const auto above = reading_.preface.find("rated_wh"); rated.empty() && above != reading_.preface.end()) rated = above->second;
        if (rated.empty()) want("--rated-wh");
        const auto number = stated_number(rated, "--rated-wh", rated_energy_range);
        if (!number) return number.error();
        facts.unit.rated_energy_wh = number.value();
        return {};
    }

    /// What --rated-wh says of a unit: by its name, or of the only new one.
    [[nodiscard]] std::string ratedOf(const std::string& name) const {
        for (const std::string& text : arguments_.rated_wh)
            if (text.size() > name.size() && text.starts_with(name) && text[name.size()] == '=') return text.substr(name.size() + 1);
        for (const std::string& text : arguments_.rated_wh)
            if (text.find('=') == std::string::npos && (text == not_known || !hasUnitColumn())) return text;
        return {};
    }

    [[nodiscard]] bool hasUnitColumn() const {
        return std::ranges::any_of(reading_.columns, [](const TableReading::Column& column) { return column.role == TableRole::unit; });
    }

    /// A meter as the options, or a line above the table, name it: a known one, or a new one with its limit.
    struct MeterOptions {
        const char *name_option, *limit_option, *preface_key;
        const std::string &name, &limit;
    };

    Result<std::optional<Meter>> namedMeter(const MeterOptions& about) {
        if (about.name == not_known) return std::optional<Meter>();
        std::string name = about.name;
        if (const auto above = reading_.preface.find(about.preface_key); name.empty() && above != reading_.preface.end()) name = above->second;
        if (name.empty()) {
            want(about.name_option);
            return std::optional<Meter>();
        }
        const Result<std::vector<Meter>> meters = logbook_.meters();
        if (!meters) return meters.error();
        if (const auto known = std::ranges::find(meters.value(), name, &Meter::name); known != meters.value().end()) return std::optional(*known);
        Meter meter;
        meter.name = name;
        if (about.limit.empty()) want(about.limit_option);
        const auto limit = stated_number(about.limit, about.limit_option, meter_limit_range);
        if (!limit) return limit.error();
        meter.limit_percent = limit.value();
        return std::optional(std::move(meter));
    }

    Result<void> findMeters(const ForeignRun& run, TableFacts& facts) {
        const auto any = [&run](auto... values) {
            return std::ranges::any_of(run.readings, [=](const ReadingValues& reading) { return ((reading.*values).has_value() || ...); });
        };
        if (any(&ReadingValues::register_wh, &ReadingValues::meter_w)) {
            Result<std::optional<Meter>> meter = namedMeter({"--meter", "--meter-limit", "meter", arguments_.meter, arguments_.meter_limit});
            if (!meter) return meter.error();
            facts.meter = std::move(meter).value();
        }
        if (any(&ReadingValues::second_register_wh)) {
            Result<std::optional<Meter>> meter =
                namedMeter({"--second-meter", "--second-meter-limit", "second_meter", arguments_.second_meter, arguments_.second_meter_limit});
            if (!meter) return meter.error();
            facts.second_meter = std::move(meter).value();
        }
        return {};
    }

    void findEnd(const ForeignRun& run, TableFacts& facts) {
        if (run.cut_off) facts.end = RunEnd::cut_off_seen;
        else if (arguments_.ended == "cut-off") facts.end = RunEnd::cut_off_seen;
        else if (arguments_.ended == "found-off") facts.end = RunEnd::found_off;
        else if (arguments_.ended == "stopped") facts.end = RunEnd::stopped_by_tester;
        else if (arguments_.ended == "running") facts.end = RunEnd::still_running;
        else if (arguments_.ended.empty()) want("--ended");
    }

    const Logbook& logbook_;
    const TableReading& reading_;
    const TableImportArguments& arguments_;
    std::string zone_;
    StatedFacts stated_;
};

/// The one line that says what is open, and the options that answer it; nothing where all is said.
std::optional<Error> what_is_missing(const TableReading& reading, const StatedFacts& stated, const std::string& path) {
    std::vector<std::string> options;
    std::vector<Message> open;
    for (const OpenTableQuestion& question : reading.questions) {
        open.push_back(question.words);
        const std::string option(table_question_option(question.about));
        if (std::ranges::find(options, option) == options.end()) options.push_back(option);
    }
    if (!stated.missing.empty()) {
        if (open.empty()) open.push_back(say(phrase("commands", "what the table does not say is asked once")));
        options.insert(options.end(), stated.missing.begin(), stated.missing.end());
    }
    if (options.empty()) return std::nullopt;
    return Error{Failure::bad_input, say_joined(open, "; "), path,
                 say(phrase("commands", "answer with %1; nothing was imported"), say_joined({options.begin(), options.end()}, ", "))};
}

} // namespace

Result<Message> import_table(Logbook& logbook, const std::string& path, std::string_view bytes, const TableImportArguments& arguments,
                             const Clock& clock, std::ostream& out) {
    const std::string zone = arguments.zone.empty() ? machine_zone() : arguments.zone;
    if (!zone_exists(zone))
        return Error{Failure::bad_input, say(phrase("commands", "there is no time zone `%1`"), zone), "--zone",
                     say(phrase("commands", "name one such as %1"), "Europe/Berlin")};
    const Result<TableBook> book = read_table_book(bytes, path, delimiter_of(arguments.delimiter));
    if (!book) return book.error();
    const Result<const TableSheet*> sheet = sheet_of(book.value(), arguments.sheet, path);
    if (!sheet) return sheet.error();
    TableReading reading = understand_table(*sheet.value(), {}, zone, clock.now_ms());
    const Result<TableAnswers> answers = table_answers_of(arguments, reading);
    if (!answers) return answers.error();
    if (!(answers.value() == TableAnswers())) reading = understand_table(*sheet.value(), answers.value(), zone, clock.now_ms());
    out << table_reading_text(reading, book.value().form, sheet.value()->name, zone);
    if (reading.refusal)
        return Error{Failure::bad_input, *reading.refusal, path,
                     say(phrase("commands", "correct the table, or map its columns with --map; nothing was imported"))};
    Result<StatedFacts> stated = FactsFinder(logbook, reading, arguments, zone).find();
    if (!stated) return stated.error();
    if (arguments.preview) return say(phrase("commands", "%1: nothing was imported (--preview)"), path);
    if (auto missing = what_is_missing(reading, stated.value(), path)) return *missing;
    std::vector<TableRun> runs;
    for (std::size_t i = 0; i < reading.runs.size(); ++i) {
        const bool as_log = arguments.rows_as.empty() ? written_by_device(reading.runs[i]) : arguments.rows_as == "log";
        TableRun run = run_of_table(reading.runs[i], stated.value().of_runs[i], as_log);
        const Result<std::optional<int>> known = logbook.number_of(run.record);
        if (!known) return known.error();
        if (known.value())
            out << line_of(say(phrase("commands", "Run %1 of the table is already in the logbook as run %2 of %3, left out"), say_number(i + 1),
                               say_number(*known.value()), run.record.unit.name));
        else runs.push_back(std::move(run));
    }
    if (runs.empty()) return say(phrase("commands", "%1: every run of it is already in the logbook, nothing was imported"), path);
    const Result<std::vector<ImportedRun>> added = import_table_runs(logbook, runs, fs::path(path).filename().string());
    if (!added) {
        return within(added.error(), path);
    }
    std::vector<Message> taken;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        const RunRecord& record = runs[i].record;
        const Message run =
            say_count(record.readings.size(), phrases("commands", "run %1 of %2, %3 with %n readings", "run %1 of %2, %3 with %n reading"),
                      say_number(added.value()[i].number), record.unit.name, say_run_kind(record.run.kind));
        taken.push_back(
            runs[i].log.empty() ? run : say_count(runs[i].log.size(), phrases("commands", "%1 and a log of %n rows", "%1 and a log of %n row"), run));
    }
    return say(phrase("commands", "%1: %2"), path, say_joined(taken, "; "));
}

} // namespace ullage
