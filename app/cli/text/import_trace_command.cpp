// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/follow_command.h"
#include "cli/text/opened_logbook.h"
#include "cli/text/runs_source.h"
#include "cli/text/trace_text.h"
#include "trace/clock_offset.h"
#include "trace/log_follow.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <ostream>

namespace ullage {

namespace {

constexpr std::string_view estimate_word = "estimate";
constexpr double most_offset_s = 100.0 * 366 * 86'400; ///< meters that were never set begin at some year

Error wrong(const std::string& option, const Message& what, const Message& remedy) { return {Failure::bad_input, what, option, remedy}; }

/// ROLE=NUMBER[:UNIT], columns counted from 1.
Result<LayoutAnswers::Column> mapped_column(const std::string& text) {
    const Error form = wrong("--map", say(phrase("commands", "`%1` names no column"), text),
                             say(phrase("commands", "write it like %1, columns counted from 1"),
                                 "time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:mA,gauge=7,output=8:W"));
    const auto equals = text.find('=');
    if (equals == std::string::npos) return form;
    const auto role = role_from(std::string_view(text).substr(0, equals));
    const auto colon = std::min(text.find(':', equals), text.size());
    std::size_t number = 0;
    const char* const end = text.data() + colon;
    const auto [at, error] = std::from_chars(text.data() + equals + 1, end, number);
    if (!role || error != std::errc() || at != end || number == 0) return form;
    return LayoutAnswers::Column{*role, number - 1, colon < text.size() ? text.substr(colon + 1) : std::string()};
}

Result<LayoutAnswers> answers_of_arguments(const ImportTraceArguments& arguments) {
    LayoutAnswers answers;
    for (const std::string& text : arguments.map) {
        const Result<LayoutAnswers::Column> column = mapped_column(text);
        if (!column) return column.error();
        answers.columns.push_back(column.value());
    }
    if (arguments.date_order == "day-first") answers.date_order = DateOrder::day_first;
    if (arguments.date_order == "month-first") answers.date_order = DateOrder::month_first;
    if (arguments.date_order == "year-first") answers.date_order = DateOrder::year_first;
    if (arguments.times == "clock") answers.time_form = TimeForm::clock;
    if (arguments.times == "elapsed") answers.time_form = TimeForm::elapsed_clock;
    if (arguments.decimal == "comma") answers.decimal = ',';
    if (arguments.decimal == "point") answers.decimal = '.';
    if (arguments.delimiter == "tab") answers.delimiter = '\t';
    if (arguments.delimiter == "semicolon") answers.delimiter = ';';
    if (arguments.delimiter == "bar") answers.delimiter = '|';
    if (arguments.delimiter == "comma") answers.delimiter = ',';
    if (arguments.delimiter == "blanks") answers.delimiter = ' ';
    answers.energy_unit = arguments.register_unit;
    return answers;
}

/// [-]h:mm:ss[.fff], to be added to the times of the log; ms.
Result<UtcMs> offset_of(std::string text) {
    if (text.empty()) return UtcMs{0};
    const bool negative = text.front() == '-';
    if (negative || text.front() == '+') text.erase(0, 1);
    ClockParts parts;
    if (!read_clock(text, false, parts) || parts.offset_minutes)
        return wrong("--offset", say(phrase("commands", "`%1` is no time"), text),
                     say(phrase("commands", "write it like 00:00:12 or -00:01:30.5: hours, minutes, seconds")));
    return negative ? -parts.ms : parts.ms;
}

Result<TraceReadOptions> read_options(const ImportTraceArguments& arguments, const RunRecord& record) {
    TraceReadOptions options;
    options.whole_lines = arguments.follow;
    options.zone = arguments.zone.empty() ? record.run.time_zone : arguments.zone;
    options.gap_limit_s = arguments.gap_limit_s;
    const Result<UtcMs> offset = offset_of(arguments.offset);
    if (!offset) return offset.error();
    options.offset_ms = offset.value();
    if (!arguments.clock_offset.empty() && arguments.clock_offset != estimate_word) {
        const Result<double> seconds = parse_number(arguments.clock_offset);
        if (!seconds || std::abs(seconds.value()) > most_offset_s)
            return wrong("--clock-offset", say(phrase("commands", "`%1` is no offset"), arguments.clock_offset),
                         say(phrase("commands", "give seconds such as 12 or -90.5, or `estimate`")));
        options.offset_ms = std::llround(1000 * seconds.value());
    }
    if (!arguments.start.empty()) {
        const Result<UtcMs> start = parse_iso8601(arguments.start, options.zone);
        if (!start) return wrong("--start", start.error().what, start.error().remedy);
        options.start_ms = start.value();
        return options;
    }
    const auto first = std::ranges::find(record.readings, false, &Reading::withdrawn);
    if (first != record.readings.end()) options.start_ms = first->values.time_ms;
    return options;
}

/// The meter named, else that of the run.
Result<std::optional<Meter>> meter_of(const Logbook& logbook, const std::string& name, const RunRecord& record) {
    if (name.empty()) return record.meter;
    const Result<std::vector<Meter>> meters = logbook.meters();
    if (!meters) return meters.error();
    const auto found = std::ranges::find(meters.value(), name, &Meter::name);
    if (found != meters.value().end()) return std::optional(*found);
    std::vector<std::string> names;
    for (const Meter& meter : meters.value()) names.push_back(meter.name);
    return Error{Failure::not_found, say(phrase("commands", "there is no meter named `%1`"), name), "--meter",
                 names.empty() ? say(phrase("commands", "add the meter to the logbook first"))
                               : say(phrase("commands", "use one of %1"), say_names(names))};
}

Result<RunRecord> run_of(const Logbook& logbook, const ImportTraceArguments& arguments) {
    const Result<std::vector<RunRecord>> records = logbook.run_records();
    if (!records) return records.error();
    const Result<UnitRuns> chosen = chosen_runs(addresses_of(records.value()), arguments.unit, arguments.run);
    if (!chosen) return chosen.error();
    if (chosen.value().size() > 1)
        return Error{Failure::bad_input, say(phrase("commands", "units of several makers have this name and run")), "--unit",
                     say(phrase("commands", "rename one of them"))};
    return *chosen.value().front();
}

/// Who wrote a log, and what comes of it where that is not the run's meter.
std::vector<Message> written_by(const Trace& trace, const std::optional<Meter>& meter, const RunRecord& record) {
    const bool gauge = trace.has(holds_gauge);
    if (!trace.has(holds_meter)) return {gauge ? say(phrase("commands", "the unit's gauge")) : say(phrase("commands", "the unit's output power"))};
    std::vector<Message> parts{meter ? say(phrase("commands", "meter %1"), meter->name) : say(phrase("commands", "no meter named"))};
    if (gauge) parts.push_back(say(phrase("commands", "and the unit's gauge")));
    if (meter && record.meter && meter->uuid != record.meter->uuid)
        parts.push_back(say(phrase("commands", "beside %1 of the run"), record.meter->name));
    return parts;
}

/// How an open question is answered here.
std::string options_for(const TraceDetection& detection) {
    std::string options;
    for (const LayoutQuestion& question : detection.questions) {
        const char* option = "--map";
        switch (question.about) {
        case OpenQuestion::date_order: option = "--date-order"; break;
        case OpenQuestion::decimal_sign: option = "--decimal"; break;
        case OpenQuestion::clock_meaning: option = "--times"; break;
        case OpenQuestion::energy_unit: option = "--register-unit"; break;
        case OpenQuestion::no_time:
        case OpenQuestion::no_values:
        case OpenQuestion::whose_values:
        case OpenQuestion::gauge_unit: break;
        }
        options += (options.empty() ? "" : ", ") + std::string(option);
    }
    return options;
}

} // namespace

int import_trace_command(const ImportTraceArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    std::vector<Message> notices;
    Result<Logbook> logbook = opened_logbook(arguments.logbook, arguments.preview ? OpenMode::read_only : OpenMode::record, clock, notices);
    if (!logbook) return refuse(err, logbook.error());
    tell(err, notices);
    const Result<RunRecord> record = run_of(logbook.value(), arguments);
    if (!record) return refuse(err, record.error());
    const Result<LayoutAnswers> answers = answers_of_arguments(arguments);
    if (!answers) return refuse(err, answers.error());
    Result<TraceReadOptions> options = read_options(arguments, record.value());
    if (!options) return refuse(err, options.error());
    const Result<std::optional<Meter>> meter = meter_of(logbook.value(), arguments.meter, record.value());
    if (!meter) return refuse(err, meter.error());
    const Result<std::map<std::string, std::string>> kept = logbook.value().trace_answers();
    if (!kept) return refuse(err, kept.error());
    const Result<TracePreview> preview = preview_trace(arguments.file, answers.value(), kept.value(), options.value());
    if (!preview) return refuse(err, preview.error());
    const TraceDetection& detection = preview.value().detection;
    const std::string zone = options.value().zone;
    out << preview_text(preview.value(), zone);
    if (needs_start(detection.layout.time_form) && arguments.start.empty() && options.value().start_ms)
        out << line_of(say(phrase("commands", "Note: the log is taken to begin with the first reading of the run, %1; --start changes that"),
                           format_iso8601(*options.value().start_ms, zone)));
    else if (detection.local_times)
        out << line_of(say(phrase("commands", "Note: the times of the log are taken for local times of %1; --zone changes that"), zone));
    if (auto open = open_questions(detection)) {
        open->where = arguments.file;
        open->remedy = say(phrase("commands", "answer with %1; nothing was imported"), options_for(detection));
        return refuse(err, *open);
    }
    if (arguments.clock_offset == estimate_word) {
        const Result<ClockOffset> offset = estimate_clock_offset(arguments.file, detection.layout, options.value(), record.value());
        if (!offset) return refuse(err, offset.error());
        options.value().offset_ms = offset.value().offset_ms;
        options.value().offset_u_s = offset.value().u_s;
        out << line_of(offset.value().sentence);
    }
    if (arguments.preview) {
        const Result<TraceTally> tally = check_trace(arguments.file, detection.layout, options.value());
        if (!tally) return refuse(err, tally.error());
        return print(tally_text(tally.value(), zone) + line_of(say(phrase("commands", "Nothing was imported (--preview)"))), out, err);
    }
    const Result<std::optional<Trace>> continued = trace_continued_by(logbook.value(), record.value().run.uuid, arguments.file);
    if (!continued) return refuse(err, continued.error());
    const FollowArguments follow{arguments.file, arguments.quiet_s, zone};
    if (continued.value() && arguments.follow) return follow_trace(logbook.value(), *continued.value(), follow, out, err);
    if (continued.value() && continued.value()->size_bytes < static_cast<std::int64_t>(std::filesystem::file_size(arguments.file)))
        return take_rest(logbook.value(), *continued.value(), arguments.file, zone, out, err);
    std::optional<MeterId> meter_uuid;
    if (meter.value()) meter_uuid = meter.value()->uuid;
    const Result<ImportedTrace> done = import_trace(logbook.value(), arguments.file, record.value().run.uuid, meter_uuid, detection, options.value());
    if (!done) return refuse(err, done.error());
    const Trace& trace = done.value().trace;
    std::vector<Message> parts{say_count(trace.samples, phrases("commands", "%n samples from %1 to %2", "%n sample from %1 to %2"),
                                         format_iso8601(trace.first_ms, zone), format_iso8601(trace.last_ms, zone)),
                               say(phrase("commands", "into run %1 of %2"), say_number(record.value().number), record.value().unit.name)};
    for (Message& part : written_by(trace, meter.value(), record.value())) parts.push_back(std::move(part));
    const Message summary = say(phrase("commands", "%1: %2"), trace.file_name, say_joined(parts, ", "));
    const Message but = arguments.follow ? say_no_longer_followed(trace, zone) : say(phrase("commands", "the samples are in the logbook"));
    const int printed = print(tally_text(done.value().tally, zone) + line_of(summary), out, err, but);
    return arguments.follow && printed == exit_good ? follow_trace(logbook.value(), trace, follow, out, err) : printed;
}

} // namespace ullage
