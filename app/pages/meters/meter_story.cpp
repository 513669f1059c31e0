// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/meters/meter_story.h"

#include "base/number.h"
#include "formats/text/meter_points_text.h"
#include "measure/meter_change.h"
#include "meters_in_series/meters_in_series.h"
#include "model/history_reason.h"
#include "style/clauses.h"
#include "style/words.h"

namespace ullage {

namespace {

constexpr std::size_t most_readings_at_once = 20'000; ///< whose analysis nobody has to wait for

/// The runs that name the meter, by unit.
std::vector<const RunRecord*> runs_of(const Document& document, const MeterId& meter_uuid) {
    std::vector<const RunRecord*> runs;
    for (const RunRecord* record : document.runs())
        if (record->run.meter_uuid == meter_uuid || record->run.second_meter_uuid == meter_uuid) runs.push_back(record);
    return runs;
}

QString run_words(const std::vector<const RunRecord*>& runs) {
    if (runs.empty()) return tr("No run uses this meter yet.");
    constexpr std::size_t most_named = 12;
    QStringList names;
    for (std::size_t i = 0; i < std::min(runs.size(), most_named); ++i)
        names << tr("%1 run %2").arg(text_of(runs[i]->unit.name), QString::number(runs[i]->number));
    QString text =
        tr("Measured %1: %2")
            .arg(text_of(say_count(static_cast<long>(runs.size()), phrases("ullage", "%n runs", "%n run"))), names.join(QStringLiteral(", ")));
    if (runs.size() > most_named) text += tr(" and others");
    return text + QLatin1Char('.');
}

QString certificate_words(const Meter& meter) {
    QStringList parts;
    if (!meter.accuracy_class.empty()) parts << tr("Class %1").arg(text_of(meter.accuracy_class));
    if (!meter.standard.empty()) parts << text_of(meter.standard);
    if (meter.range_low_w || meter.range_high_w)
        parts << tr("range %1 to %2 W")
                     .arg(meter.range_low_w ? text_of(say_digits(exact_text(*meter.range_low_w))) : QStringLiteral("0"),
                          meter.range_high_w ? text_of(say_digits(exact_text(*meter.range_high_w))) : tr("any"));
    if (meter.starting_current_a) parts << tr("starts at %1 A").arg(text_of(say_digits(exact_text(*meter.starting_current_a))));
    const MeterCertificate& paper = meter.certificate;
    if (!paper.number.empty()) parts << tr("certificate %1").arg(text_of(paper.number));
    if (!paper.laboratory.empty()) parts << text_of(paper.laboratory);
    if (!paper.date.empty()) parts << tr("of %1").arg(text_of(paper.date));
    if (!paper.valid_until.empty()) parts << tr("valid until %1").arg(text_of(paper.valid_until));
    if (!meter.points.empty()) parts << tr("points %1 (W, correction, U in %, k)").arg(text_of(meter_points_text(meter.points)));
    return joined_clauses(parts);
}

/// What a version states, in short.
QString version_words(const MeterVersion& version) {
    const Meter& meter = version.meter;
    QStringList parts{meter.points.empty() ? tr("correction %1").arg(text_of(say_digits(exact_text(meter.correction))))
                                           : tr("points %1").arg(text_of(meter_points_text(meter.points)))};
    parts << (meter.limit_percent ? tr("limit ±%1 %").arg(text_of(say_digits(exact_text(*meter.limit_percent)))) : tr("no limit stated"));
    if (meter.step_wh) parts << tr("step %1 Wh").arg(text_of(say_digits(exact_text(*meter.step_wh))));
    if (!meter.certificate.number.empty()) parts << tr("certificate %1").arg(text_of(meter.certificate.number));
    QString line = tr("%1: %2").arg(raw_text(format_iso8601(version.written_ms, "UTC").substr(0, 10)), parts.join(QStringLiteral(", ")));
    if (!version.reason.empty()) line += tr(" (%1)").arg(text_of(say_reason(version.reason)));
    return line;
}

QString moved_words(const std::vector<const RunRecord*>& runs, const std::vector<MeterVersion>& versions) {
    if (versions.size() < 2) return {};
    std::size_t readings = 0;
    for (const RunRecord* record : runs) readings += record->readings.size();
    if (readings > most_readings_at_once) return tr("What the last edit moved is not worked out here: its runs have too many readings.");
    return tr("Last edit: %1").arg(text_of(meter_change(runs, versions[versions.size() - 2].meter, versions.back().meter).sentence));
}

} // namespace

MeterStory meter_story(const Document& document, const MeterId& meter_uuid) {
    MeterStory story;
    const Meter* meter = document.meter(meter_uuid);
    if (meter == nullptr) return story;
    const auto runs = runs_of(document, meter_uuid);
    story.certificate = certificate_words(*meter);
    story.runs = run_words(runs);
    if (const auto history = document.meterHistory(meter_uuid)) {
        for (auto version = history.value().rbegin(); version != history.value().rend(); ++version) story.history << version_words(*version);
        story.moved = moved_words(runs, history.value());
    } else {
        story.history << text_of(history.error().sentence());
    }
    for (const MetersInSeries& pair : meters_in_series(runs))
        for (const SeriesLoad& load : pair.loads) story.in_series << text_of(load.sentence);
    return story;
}

} // namespace ullage
