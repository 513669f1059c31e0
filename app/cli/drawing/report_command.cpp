// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/drawing/drawing_commands.h"

#include "base/clock.h"
#include "chart_content/report_making.h"
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/runs_source.h"
#include "cli/text/sizing_source.h"
#include "dialogs/photo_image.h"
#include "formats/results/comparison_columns.h"
#include "report/report_file.h"
#include "style/languages.h"
#include "style/words.h"

#include <CLI/CLI.hpp>

#include <QFile>

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <ostream>
#include <set>

namespace ullage {

namespace {

struct ReportArguments {
    std::string source, run, unit, output, paper, locale;
    std::vector<std::string> parts; ///< of a unit's report, by key; empty: all
    bool compare = false, every_drain = false, in_short = false, with_photos = false, with_files = false, force = false, own_affairs = false;
    std::vector<std::string> columns;
    std::optional<double> at_load_w;
    double duty_percent = 100;
    std::string size, pv;
    SizingChoices choices;
};

int wrong_usage(std::ostream& err, const Message& what) {
    tell(err, {say(phrase("commands", "%1; see %2"), what, "ullage report --help")});
    return exit_usage;
}

void add_options(CLI::App& command, ReportArguments& arguments) {
    command.add_option("LOGBOOK", arguments.source, say(phrase("commands", "logbook, run sheet (.csv), or folder of run sheets")))->required();
    auto* run =
        command.add_option("--run", arguments.run, say(phrase("commands", "the run to report, UNIT/N; the number alone where there is one unit")));
    auto* compare =
        command.add_flag("--compare", arguments.compare, say(phrase("commands", "report the comparison of the units, as tested or at one load")));
    run->excludes(compare);
    auto* unit = command.add_option("--unit", arguments.unit, say(phrase("commands", "the unit to report, with all its runs")))
                     ->excludes(run)
                     ->excludes(compare);
    std::vector<std::string> keys;
    for (const UnitReportPart part : all_unit_report_parts) keys.emplace_back(unit_report_part_key(part));
    auto* parts = command
                      .add_option("--parts", arguments.parts,
                                  say(phrase("commands", "sections of a unit's report, with commas between them; all where none is named")))
                      ->delimiter(',')
                      ->check(CLI::IsMember(keys))
                      ->needs(unit);
    command.add_flag("--short", arguments.in_short, say(phrase("commands", "a unit's report on two pages")))->needs(unit)->excludes(parts);
    command.add_flag("--photos", arguments.with_photos, say(phrase("commands", "in a unit's report: every photo of its runs; none else")))
        ->needs(unit);
    auto* size = command
                     .add_option("--size", arguments.size,
                                 say(phrase("commands", "report the sizing for this load list: its name in the logbook, or a file (.csv)")))
                     ->excludes(run)
                     ->excludes(unit)
                     ->excludes(compare);
    command.add_option("--pv", arguments.pv, say(phrase("commands", "report the PV input check of this sheet: its name in the logbook, or a file")))
        ->excludes(run)
        ->excludes(unit)
        ->excludes(compare)
        ->excludes(size);
    add_sizing_options(command, arguments.choices);
    command
        .add_flag("--every-drain", arguments.every_drain,
                  say(phrase("commands", "in a comparison: a row for each drain instead of one for each unit")))
        ->needs(compare);
    auto* load = command
                     .add_option("--at-load", arguments.at_load_w,
                                 say(phrase("commands", "in a comparison: common load, W; a unit that cannot be converted to it stays as tested")))
                     ->check(above_zero())
                     ->needs(compare);
    command.add_option("--duty", arguments.duty_percent, say(phrase("commands", "share of the time that the load is on, %")))
        ->check(between(0.1, 100))
        ->needs(load);
    command
        .add_option("--columns", arguments.columns,
                    say(phrase("commands", "in a comparison: keys of the columns wanted, in order, or readers or spreadsheet")))
        ->delimiter(',')
        ->allow_extra_args(false)
        ->needs(compare);
    command.add_flag("--with-private", arguments.own_affairs,
                     say(phrase("commands", "with what is the tester's own: tags, prices paid, remarks, advice")));
    command.add_option("--output", arguments.output, say(phrase("commands", "file to write; its ending, .pdf or .html, chooses the form")));
    command.add_flag("--with-files", arguments.with_files,
                     say(phrase("commands", "its tables (HTML) and pictures (PNG) as files too, in a folder beside it")));
    add_force_option(command, arguments.force);
    command.add_option("--paper", arguments.paper, say(phrase("commands", "a4 or letter")))->check(CLI::IsMember({"a4", "letter"}));
    command.add_option("--locale", arguments.locale, say(phrase("commands", "whose decimal sign is written, e.g. de_DE or en_US")));
}

/// "UNIT/N" or "N": the unit's name may hold strokes of its own.
bool read_run(const std::string& text, std::string& unit, int& number) {
    const std::size_t stroke = text.rfind('/');
    const std::string digits = stroke == std::string::npos ? text : text.substr(stroke + 1);
    unit = stroke == std::string::npos ? std::string() : text.substr(0, stroke);
    const auto [end, trouble] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return trouble == std::errc() && end == digits.data() + digits.size() && number > 0;
}

/// A run with what it says, which the casebook keeps. Errors: those of its histories.
Result<ReportedRun> reported(const Casebook& casebook, const RunId& run_uuid) {
    auto histories = casebook.histories(run_uuid);
    if (!histories) return histories.error();
    return ReportedRun{casebook.run(run_uuid).get(), casebook.analysis(run_uuid).get(), std::move(histories).value()};
}

/// Writes the report where it was asked for, else to `own_name` in the working folder.
int write(const MadeReport& made, const ReportArguments& arguments, const std::string& own_name, const ReportLook& look, std::ostream& out,
          std::ostream& err) {
    const std::string path = arguments.output.empty() ? own_name : arguments.output;
    const Replacing replacing = replacing_of(arguments.force, {arguments.source, arguments.size, arguments.pv});
    if (const Result<void> written = write_report(made.report, made.pictures, QFile::decodeName(path.c_str()), look, replacing); !written)
        return refuse(err, written.error());
    std::string saved = line_of(say(phrase("commands", "report saved to %1"), path));
    if (arguments.with_files)
        saved += line_of(say(phrase("commands", "its tables and pictures: %1"), utf8_of(report_files_folder(QFile::decodeName(path.c_str())))));
    return print(saved, out, err,
                 say(arguments.with_files ? phrase("commands", "the report and the files beside it are complete: %1")
                                          : phrase("commands", "the report is complete: %1"),
                     path));
}

int report_run(const ReportArguments& arguments, const Casebook& casebook, const ReportOptions& options, const ReportLook& look, std::ostream& out,
               std::ostream& err) {
    std::string unit;
    int number = 0;
    if (!read_run(arguments.run, unit, number))
        return wrong_usage(err, say(phrase("commands", "`%1` names no run; write UNIT/N, e.g. \"Osk 1200/2\""), arguments.run));
    const Result<UnitRuns> chosen = chosen_runs(addresses_of(casebook.runs()), unit, number);
    if (!chosen) return refuse(err, chosen.error());
    if (chosen.value().size() > 1)
        return refuse(err, {Failure::bad_input, say(phrase("commands", "several units are named `%1`"), unit), "--run",
                            say(phrase("commands", "give the units names of their own"))});
    const RunRecord& record = *chosen.value().front();
    const Result<ReportedRun> run = reported(casebook, record.run.uuid);
    if (!run) return refuse(err, run.error());
    const MadeReport made = make_run_report(run.value(), *casebook.fit(record.unit.uuid), options);
    const QString stem = report_file_stem(QStringLiteral("%1 run %2").arg(raw_text(record.unit.name), QString::number(record.number)));
    return write(made, arguments, utf8_of(stem) + ".pdf", look, out, err);
}

int report_comparison(const ReportArguments& arguments, const Casebook& casebook, const ReportOptions& options, const ReportLook& look,
                      std::ostream& out, std::ostream& err) {
    const SharedRuns all = casebook.runs();
    const Comparison comparison =
        compare_as_tested(addresses_of(all), arguments.every_drain ? CompareRows::every_drain : CompareRows::one_per_unit, casebook.options());
    std::vector<ReportedRun> runs;
    std::vector<UnitAnalysis> units;
    std::set<UnitId> known;
    for (const ComparisonRow& row : comparison.rows) {
        const Result<ReportedRun> run = reported(casebook, row.run.uuid);
        if (!run) return refuse(err, run.error());
        runs.push_back(run.value());
        if (known.insert(row.unit.uuid).second) units.push_back(*casebook.unit_analysis(row.unit.uuid));
    }
    std::optional<CommonLoad> load;
    if (arguments.at_load_w) load = CommonLoad{*arguments.at_load_w, arguments.duty_percent / 100, {}};
    return write(make_comparison_report(comparison, compare_at(comparison, load), runs, units, options), arguments, "comparison-report.pdf", look,
                 out, err);
}

/// The photos of a run, decoded; one that cannot be shown is left out with a notice.
Result<void> add_photos_of(const OpenedSource& source, const ReportedRun& run, ReportedUnit& reported, std::map<PhotoId, QImage>& images,
                           std::ostream& err) {
    const Result<std::vector<Photo>> photos = source.photos(run.record->run.uuid);
    if (!photos) return photos.error();
    for (const Photo& photo : photos.value()) {
        const Result<std::string> bytes = source.photo_bytes(photo.uuid);
        if (!bytes) return bytes.error();
        const QImage image = photo_image(bytes.value(), photo.format, report_photo_size).image;
        if (image.isNull()) {
            tell(err, {say(phrase("commands", "%1: the photo cannot be shown; it is left out"), photo.file_name)});
            continue;
        }
        images.insert_or_assign(photo.uuid, image);
        reported.photos.push_back({photo.uuid, photo_caption(*run.record, *run.analysis, photo)});
    }
    return {};
}

int report_unit(const ReportArguments& arguments, const OpenedSource& source, const Casebook& casebook, const ReportOptions& options,
                const ReportLook& look, std::ostream& out, std::ostream& err) {
    const Result<UnitRuns> chosen = chosen_runs(addresses_of(casebook.runs()), arguments.unit, std::nullopt);
    if (!chosen) return refuse(err, chosen.error());
    const Unit& unit = chosen.value().front()->unit;
    for (const RunRecord* record : chosen.value())
        if (record->unit.uuid != unit.uuid)
            return refuse(err, {Failure::bad_input, say(phrase("commands", "several units are named `%1`"), arguments.unit), "--unit",
                                say(phrase("commands", "give the units names of their own"))});
    const std::shared_ptr<const UnitAnalysis> analysis = casebook.unit_analysis(unit.uuid);
    const std::optional<UnitClaims> claims = casebook.claims(unit.uuid);
    const Result<Publisher> publisher = source.publisher();
    if (!publisher) return refuse(err, publisher.error());
    ReportedUnit shown{analysis.get(), &*claims, {}, {}, publisher.value()};
    std::map<PhotoId, QImage> images;
    for (const RunRecord* record : chosen.value()) {
        const Result<ReportedRun> run = reported(casebook, record->run.uuid);
        if (!run) return refuse(err, run.error());
        shown.runs.push_back(run.value());
        if (!arguments.with_photos) continue;
        if (const Result<void> added = add_photos_of(source, run.value(), shown, images, err); !added) return refuse(err, added.error());
    }
    UnitReportChoice choice;
    choice.in_short = arguments.in_short;
    if (!arguments.parts.empty()) choice.parts.clear();
    for (const std::string& key : arguments.parts) choice.parts.insert(*unit_report_part_from(key));
    const QString stem = report_file_stem(raw_text(unit.name));
    return write(make_unit_report(shown, choice, images, options), arguments, utf8_of(stem) + ".pdf", look, out, err);
}

int report_sizing(const ReportArguments& arguments, const ReportOptions& options, const ReportLook& look, std::ostream& out, std::ostream& err) {
    std::vector<Message> notices;
    const Result<Sizing> sizing = sizing_from(arguments.source, arguments.size, {}, arguments.choices, notices);
    tell(err, notices);
    if (!sizing) return refuse(err, sizing.error());
    return write(make_sizing_report_of(sizing.value(), options), arguments, "sizing-report.pdf", look, out, err);
}

int report_pv(const ReportArguments& arguments, const ReportOptions& options, const ReportLook& look, std::ostream& out, std::ostream& err) {
    std::error_code ignored;
    PvCheckArguments asked;
    const bool sheets = std::filesystem::is_directory(arguments.source, ignored) || std::filesystem::path(arguments.source).extension() == ".csv";
    if (!sheets) asked.logbook = arguments.source;
    if (std::filesystem::is_regular_file(arguments.pv, ignored)) asked.sheet = arguments.pv;
    else asked.sheet_name = arguments.pv;
    std::vector<Message> notices;
    const Result<PvSheetText> sheet = asked_pv_sheet(asked, notices);
    if (!sheet) return refuse(err, sheet.error());
    tell(err, notices);
    return write(make_pv_report_of(sheet.value(), options), arguments, "pv-check-report.pdf", look, out, err);
}

/// Keys, or the set that a single word names. Errors: a word that is neither.
Result<std::vector<std::string>> asked_columns(const std::vector<std::string>& words, const OpenedSource& source) {
    if (words.size() == 1) {
        if (auto ready = ready_columns(words.front())) return std::move(*ready);
        const auto sets = source.column_sets();
        if (!sets) return sets.error();
        if (const auto own = sets.value().find(words.front()); own != sets.value().end()) return column_keys_from(own->second);
    }
    const std::vector<ColumnName> all = comparison_columns();
    for (const std::string& word : words)
        if (std::ranges::find(all, word, &ColumnName::key) == all.end())
            return Error{Failure::bad_input, say(phrase("commands", "there is no column `%1`"), word), "--columns",
                         say(phrase("commands", "`ullage compare --help` lists them"))};
    return words;
}

int report_command(const ReportArguments& arguments, std::ostream& out, std::ostream& err) {
    if (arguments.run.empty() && arguments.unit.empty() && !arguments.compare && arguments.size.empty() && arguments.pv.empty())
        return wrong_usage(err, say(phrase("commands", "choose --run UNIT/N, --unit UNIT, --compare, --size LIST or --pv SHEET")));
    const QLocale locale = arguments.locale.empty() ? QLocale::system() : QLocale(raw_text(arguments.locale));
    if (!arguments.locale.empty() && locale.language() == QLocale::C && arguments.locale != "C")
        return wrong_usage(err, say(phrase("commands", "`%1` is no locale; use a name such as de_DE or en_US"), arguments.locale));
    const Paper paper = arguments.paper.empty() ? paper_of(locale) : arguments.paper == "letter" ? Paper::letter : Paper::a4;

    ReportOptions options{
        decimal_sign_of(arguments.locale.empty() ? shown_locale() : locale), SystemClock().now_ms(), machine_zone(), {}, arguments.own_affairs};
    const ReportLook look{paper, options.decimal_sign, {}, arguments.with_files};
    if (!arguments.size.empty()) return report_sizing(arguments, options, look, out, err);
    if (!arguments.pv.empty()) return report_pv(arguments, options, look, out, err);
    std::vector<Message> notices;
    const Result<OpenedSource> source = OpenedSource::open(arguments.source, notices);
    if (!source) return refuse(err, source.error());
    if (!arguments.columns.empty()) {
        const Result<std::vector<std::string>> columns = asked_columns(arguments.columns, source.value());
        if (!columns) return wrong_usage(err, columns.error().message());
        options.columns = columns.value();
    }
    const Result<std::unique_ptr<Casebook>> casebook = source.value().casebook();
    if (!casebook) return refuse(err, casebook.error());
    tell(err, notices);
    if (!arguments.unit.empty()) return report_unit(arguments, source.value(), *casebook.value(), options, look, out, err);
    return arguments.compare ? report_comparison(arguments, *casebook.value(), options, look, out, err)
                             : report_run(arguments, *casebook.value(), options, look, out, err);
}

} // namespace

Command::Run read_report(CLI::App& command) {
    const auto arguments = std::make_shared<ReportArguments>();
    add_options(command, *arguments);
    return [arguments](std::ostream& out, std::ostream& err) { return report_command(*arguments, out, err); };
}

} // namespace ullage
