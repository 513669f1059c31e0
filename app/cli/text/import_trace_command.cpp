// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/follow_command.h"
#include "cli/text/runs_source.h"
#include "cli/text/trace_text.h"
#include "formats/text/table_unicode.h"
#include "trace/clock_offset.h"
#include "trace/log_follow.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <ostream>

namespace ullage {

namespace {

constexpr std::string_view estimate_word = "estimate";
constexpr double most_offset_s = 100.0 * 366 * 86'400; ///< meters that were never set begin at some year

Error wrong(const std::string& option, const std::string& what, const std::string& remedy) { return {Failure::bad_input, what, option, remedy}; }

/// ROLE=NUMBER[:UNIT], columns counted from 1.
Result<LayoutAnswers::Column> mapped_column(const std::string& text) {
    const Error form =
        wrong("--map", fmt::format("`{}` names no column", text),
              "write it like time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:mA,gauge=7,output=8:W, columns counted from 1");
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
        return wrong("--offset", fmt::format("`{}` is no time", text), "write it like 00:00:12 or -00:01:30.5: hours, minutes, seconds");
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
            return wrong("--clock-offset", fmt::format("`{}` is no offset", arguments.clock_offset),
                         "give seconds such as 12 or -90.5, or `estimate`");
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
    std::string names;
    for (const Meter& meter : meters.value()) names += (names.empty() ? "`" : ", `") + meter.name + '`';
    return Error{Failure::not_found, fmt::format("there is no meter named `{}`", name), "--meter",
                 names.empty() ? "add the meter to the logbook first" : "use one of " + names};
}

Result<RunRecord> run_of(const Logbook& logbook, const ImportTraceArguments& arguments) {
    const Result<std::vector<RunRecord>> records = logbook.run_records();
    if (!records) return records.error();
    const Result<UnitRuns> chosen = chosen_runs(addresses_of(records.value()), arguments.unit, arguments.run);
    if (!chosen) return chosen.error();
    if (chosen.value().size() > 1) return Error{Failure::bad_input, "units of several makers have this name and run", "--unit", "rename one of them"};
    return *chosen.value().front();
}

/// Who wrote a log, and what comes of it where that is not the run's meter.
std::string written_by(const Trace& trace, const std::optional<Meter>& meter, const RunRecord& record) {
    const std::string_view own = trace.has(holds_gauge) ? "the unit's gauge" : "the unit's output power";
    if (!trace.has(holds_meter)) return fmt::format(", {}", own);
    std::string text = meter ? ", meter " + meter->name : ", no meter named";
    if (trace.has(holds_gauge)) text += fmt::format(", and {}", own);
    if (meter && record.meter && meter->uuid != record.meter->uuid) text += fmt::format(", beside {} of the run", record.meter->name);
    return text;
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
    Result<Logbook> logbook = Logbook::open(arguments.logbook, arguments.preview ? OpenMode::read_only : OpenMode::record, clock);
    if (!logbook) return refuse(err, logbook.error());
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
        out << "Note: the log is taken to begin with the first reading of the run, " << format_iso8601(*options.value().start_ms, zone)
            << "; --start changes that\n";
    else if (detection.local_times) out << "Note: the times of the log are taken for local times of " << one_line(zone) << "; --zone changes that\n";
    if (auto open = open_questions(detection)) {
        open->where = arguments.file;
        open->remedy = "answer with " + options_for(detection) + "; nothing was imported";
        return refuse(err, *open);
    }
    if (arguments.clock_offset == estimate_word) {
        const Result<ClockOffset> offset = estimate_clock_offset(arguments.file, detection.layout, options.value(), record.value());
        if (!offset) return refuse(err, offset.error());
        options.value().offset_ms = offset.value().offset_ms;
        options.value().offset_u_s = offset.value().u_s;
        out << offset.value().sentence << '\n';
    }
    if (arguments.preview) {
        const Result<TraceTally> tally = check_trace(arguments.file, detection.layout, options.value());
        if (!tally) return refuse(err, tally.error());
        return print(tally_text(tally.value(), zone) + "Nothing was imported (--preview)\n", out, err);
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
    const std::string summary =
        fmt::format("{}: {} from {} to {}, into run {} of {}{}", trace.file_name, count_text(static_cast<long>(trace.samples), "sample", "samples"),
                    format_iso8601(trace.first_ms, zone), format_iso8601(trace.last_ms, zone), record.value().number, record.value().unit.name,
                    written_by(trace, meter.value(), record.value()));
    const int printed = print(tally_text(done.value().tally, zone) + one_line(summary) + '\n', out, err, "the samples are in the logbook");
    return arguments.follow && printed == exit_good ? follow_trace(logbook.value(), trace, follow, out, err) : printed;
}

} // namespace ullage
