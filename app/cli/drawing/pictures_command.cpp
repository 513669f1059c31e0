// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/drawing/drawing_commands.h"

#include "base/clock.h"
#include "chart_content/comparison_overlays.h"
#include "chart_content/comparison_pictures.h"
#include "chart_content/run_charts.h"
#include "chart_content/unit_charts.h"
#include "charts/picture.h"
#include "charts/picture_words.h"
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/runs_source.h"
#include "comparison/comparison.h"
#include "style/file_names.h"
#include "style/words.h"
#include "unit/unit_analysis.h"

#include <CLI/CLI.hpp>

#include <QDir>
#include <QFile>

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <optional>
#include <ostream>
#include <set>
#include <string>
#include <utility>

namespace ullage {

namespace {

constexpr double units_per_inch = 96, mm_per_inch = 25.4; // a unit of a drawing is a CSS pixel

constexpr double least_mm = 20;  // smaller ones hold nothing that can be read
constexpr double most_mm = 5000; // a drawing of 18 898 units

int units(double mm) { return static_cast<int>(std::round(mm / mm_per_inch * units_per_inch)); }

/// Stems of the runs' pictures: a unit has one of its own, whatever others are called.
class RunStems {
public:
    QString of(const RunRecord& record) {
        QString& stem = stems_[record.unit.uuid];
        if (stem.isEmpty()) stem = names_.next(raw_text(record.unit.name));
        return stem + QStringLiteral("-run-") + QString::number(record.number);
    }

private:
    FileStems names_;
    std::map<UnitId, QString> stems_;
};

struct Picture {
    QString stem;
    PictureContent content;
};

void add_runs(std::vector<Picture>& pictures, const Casebook& casebook) {
    RunStems stems;
    for (const auto& record : casebook.runs()) {
        const QString stem = stems.of(*record);
        const auto analysis = casebook.analysis(record->run.uuid);
        const auto fit = casebook.fit(record->unit.uuid);
        pictures.push_back({stem + QStringLiteral("-energy"), energy_chart(*record, *analysis).content});
        pictures.push_back({stem + QStringLiteral("-gauge-error"), gauge_error_picture(*record, *analysis, *fit).content});
        pictures.push_back({stem + QStringLiteral("-load"), load_chart(*record, *analysis).content});
    }
}

bool shows_anything(const ChartContent& chart) {
    return std::ranges::any_of(chart.series, [](const ChartSeries& series) { return !series.points.empty(); });
}

/// The curves of each unit with a drain, and the gauge errors of all its drains.
void add_units(std::vector<Picture>& pictures, const Casebook& casebook) {
    FileStems names;
    std::set<UnitId> known;
    for (const auto& record : casebook.runs()) {
        if (!known.insert(record->unit.uuid).second) continue;
        const QString stem = names.next(raw_text(record->unit.name));
        const auto fit = casebook.fit(record->unit.uuid);
        const auto drains = measured_drains(*fit, [&casebook](const RunId& run) -> const EnergyAnalysis& { return casebook.analysis(run)->energy; });
        pictures.push_back({stem + QStringLiteral("-usable-fraction"), usable_chart(*fit, record->unit, drains, std::nullopt)});
        pictures.push_back({stem + QStringLiteral("-run-time"), run_time_chart(*fit, record->unit, drains, std::nullopt)});
        const Comparison every = compare_as_tested(addresses_of(casebook.runs_of(record->unit.uuid)), CompareRows::every_drain, casebook.options());
        ChartContent errors = gauge_error_overlay(every, [&casebook](const RunId& run) -> const RunAnalysis& { return *casebook.analysis(run); });
        errors.subject = text_of(record->unit.name);
        pictures.push_back({stem + QStringLiteral("-gauge-errors"), std::move(errors)});
    }
}

/// As tested, against load, and at `load` where there is one.
void add_comparison(std::vector<Picture>& pictures, const Casebook& casebook, const std::optional<CommonLoad>& load) {
    const SharedRuns runs = casebook.runs();
    const Comparison comparison = compare_as_tested(addresses_of(runs), CompareRows::one_per_unit, casebook.options());
    const FairComparison fair = compare_at(comparison, load);
    pictures.push_back({QStringLiteral("comparison-vessels"), comparison_vessels(comparison)});
    pictures.push_back({QStringLiteral("comparison-usable-fraction"), comparison_bars(comparison)});
    pictures.push_back({QStringLiteral("comparison-against-load"), fraction_overlay(comparison, fair)});
    pictures.push_back({QStringLiteral("comparison-gauge-errors"),
                        gauge_error_overlay(comparison, [&casebook](const RunId& run) -> const RunAnalysis& { return *casebook.analysis(run); })});
    if (!load) return;
    pictures.push_back({QStringLiteral("comparison-at-load-vessels"), comparison_vessels(comparison, fair)});
    pictures.push_back({QStringLiteral("comparison-at-load-usable-fraction"), comparison_bars(comparison, fair)});
}

struct PicturesArguments {
    std::string source, folder;
    bool dark = false, for_paper = false, force = false, comparison_only = false, bare = false;
    std::optional<double> at_load_w;
    double duty_percent = 100;
    double width_mm = 254, height_mm = 143, dots_per_inch = 192;
};

void add_options(CLI::App& command, PicturesArguments& arguments) {
    command.add_option("LOGBOOK", arguments.source, say(phrase("commands", "logbook, run sheet (.csv), or folder of run sheets")))->required();
    command.add_option("--into", arguments.folder, say(phrase("commands", "folder for the pictures, made when missing")))->required();
    command.add_flag("--dark", arguments.dark, say(phrase("commands", "in the colours for dim surroundings")));
    command.add_flag("--print", arguments.for_paper, say(phrase("commands", "on white, for paper")));
    command.add_flag("--bare", arguments.bare, say(phrase("commands", "without title, key and source, which then stand in your text")));
    command.add_flag("--comparison-only", arguments.comparison_only, say(phrase("commands", "leave out the charts of the runs and the units")));
    auto* load = command.add_option("--at-load", arguments.at_load_w, say(phrase("commands", "also the comparison at this common load, W")))
                     ->check(above_zero());
    command.add_option("--duty", arguments.duty_percent, say(phrase("commands", "share of the time that the load is on, %")))
        ->check(between(0.1, 100))
        ->needs(load);
    command.add_option("--width-mm", arguments.width_mm, say(phrase("commands", "width of a picture, 254 unless told")))
        ->check(between(least_mm, most_mm));
    command.add_option("--height-mm", arguments.height_mm, say(phrase("commands", "height of a picture, 143 unless told")))
        ->check(between(least_mm, most_mm));
    command.add_option("--dots-per-inch", arguments.dots_per_inch, say(phrase("commands", "sharpness of PNG, 192 unless told")))
        ->check(between(1, 9600));
    add_force_option(command, arguments.force);
}

int pictures_command(const PicturesArguments& arguments, std::ostream& out, std::ostream& err) {
    PictureSpec spec;
    spec.size = QSize(units(arguments.width_mm), units(arguments.height_mm));
    spec.scale = arguments.dots_per_inch / units_per_inch;
    spec.palette = arguments.dark && !arguments.for_paper ? dark_palette() : light_palette();
    if (arguments.for_paper) spec.ground = QColor(Qt::white);
    spec.with_words = !arguments.bare;
    if (const Result<void> checked = check_image(spec); !checked) return refuse(err, checked.error());
    std::vector<Message> notices;
    const Result<OpenedSource> opened = OpenedSource::open(arguments.source, notices);
    if (!opened) return refuse(err, opened.error());
    const Result<std::unique_ptr<Casebook>> casebook = opened.value().casebook();
    if (!casebook) return refuse(err, casebook.error());
    const Result<Publisher> publisher = opened.value().publisher();
    if (!publisher) return refuse(err, publisher.error());
    tell(err, notices);
    spec.source = picture_source(SystemClock().now_ms(), machine_zone(), publisher.value().name);
    const QDir into(QFile::decodeName(arguments.folder.c_str()));
    if (!into.mkpath(QStringLiteral(".")))
        return refuse(err, {Failure::io, say(phrase("commands", "the folder cannot be made")), arguments.folder,
                            say(phrase("commands", "choose a folder that you may write to"))});
    std::vector<Picture> pictures;
    if (!arguments.comparison_only) add_runs(pictures, *casebook.value());
    if (!arguments.comparison_only) add_units(pictures, *casebook.value());
    add_comparison(pictures, *casebook.value(),
                   arguments.at_load_w ? std::optional(CommonLoad{*arguments.at_load_w, arguments.duty_percent / 100, {}}) : std::nullopt);
    // What has nothing to show would be a picture of a hint.
    std::erase_if(pictures, [](const Picture& picture) {
        const auto* chart = std::get_if<ChartContent>(&picture.content);
        return chart != nullptr && !shows_anything(*chart);
    });
    // All names are asked for before the first picture is written.
    const Replacing replacing = replacing_of(arguments.force, {arguments.source});
    std::vector<std::pair<const Picture*, QString>> files;
    for (const Picture& picture : pictures)
        for (const char* ending : {".png", ".svg"}) {
            files.emplace_back(&picture, into.filePath(picture.stem + QLatin1String(ending)));
            const Result<OutputTarget> free = output_target(utf8_of(QFile::encodeName(files.back().second)), replacing);
            if (!free) return refuse(err, free.error());
        }
    for (const auto& [picture, path] : files)
        if (const Result<void> written = write_picture(picture->content, path, spec, replacing); !written) return refuse(err, written.error());
    return print(line_of(say_count(files.size(), phrases("commands", "%n pictures are in %1", "%n pictures are in %1"), arguments.folder)), out, err,
                 say(phrase("commands", "the pictures in %1 are complete"), arguments.folder));
}

} // namespace

Command::Run read_pictures(CLI::App& command) {
    const auto arguments = std::make_shared<PicturesArguments>();
    add_options(command, *arguments);
    return [arguments](std::ostream& out, std::ostream& err) { return pictures_command(*arguments, out, err); };
}

} // namespace ullage
