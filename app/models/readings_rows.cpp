// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/readings_rows.h"

#include "base/number.h"
#include "measure/load_steps.h"
#include "models/finding_stretch.h"
#include "style/words.h"

#include <algorithm>
#include <map>
#include <set>

namespace ullage {

namespace {

QString number(double value) { return text_of(exact_text(value)); }

QString day_of(UtcMs time_ms, const std::string& zone) {
    static const char* const weekdays[] = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    const int weekday = std::clamp(to_local(time_ms, zone).weekday, 0, 6);
    return QStringLiteral("%1 %2").arg(QLatin1String(weekdays[weekday]), text_of(day_text(time_ms, zone)));
}

QString signed_text(double value, int decimals) {
    QString text = text_of(fixed_text(value, decimals));
    if (text.startsWith(QLatin1Char('-'))) return text.replace(0, 1, QChar(0x2212));
    return text.toDouble() > 0 ? QLatin1Char('+') + text : text;
}

/// Digits that a register of this step can support.
int decimals_of_step(double step_wh) { return step_wh >= 1.0 ? 0 : step_wh >= 0.1 ? 1 : 2; }

QString remark_text(const ReadingValues& values) {
    QStringList words;
    if (values.mark) words << text_of(mark_text(*values.mark));
    if (!values.remark.empty()) words << QString::fromStdString(values.remark);
    return words.join(QStringLiteral(", "));
}

QString powers_text(const ReadingValues& values) {
    QStringList shown;
    if (values.meter_w) shown << QStringLiteral("meter showed %1 W").arg(number(*values.meter_w));
    if (values.display_w) shown << QStringLiteral("unit showed %1 W").arg(number(*values.display_w));
    return shown.join(QStringLiteral(", "));
}

/// What an analysis says of each reading, by its place in the record.
struct Derived {
    std::map<std::size_t, double> delivered_wh, interpolated_wh, load_w, error_pt;
    std::map<std::string, const Mend*> mends;
    std::set<std::string> doubtful;
    int decimals = 0;

    Derived(const RunRecord& record, const RunAnalysis& analysis) : decimals(decimals_of_step(register_step_wh(record))) {
        const EnergyAnalysis& energy = analysis.energy;
        for (const RegisterPoint& point : energy.track.points) delivered_wh[point.reading] = point.delivered_wh;
        for (const PairedPoint& point : energy.points) interpolated_wh[point.reading] = point.delivered_wh;
        for (const LoadStep& step : load_steps(energy.track, record.run.end)) load_w[step.to_reading] = step.mean_w;
        for (const GaugeErrorPoint& point : analysis.gauge.errors)
            error_pt[energy.points[point.point].reading] = point.error_pt;
        for (const Mend& mend : energy.track.mends) mends[mend.reading_uuid] = &mend;
        for (const Finding& finding : analysis.gauge.findings)
            for (const std::string& uuid : doubtful_readings(finding)) doubtful.insert(uuid);
    }
};

ReadingsRow row_of(const Reading& reading, std::size_t at, const Derived& derived, const std::string& zone) {
    using Row = ReadingsRow;
    const ReadingValues& values = reading.values;
    Row row;
    row.uuid = QString::fromStdString(reading.uuid);
    row.amended = reading.version > 1;
    row.doubtful = derived.doubtful.contains(reading.uuid);
    row.cells[Row::time].text = text_of(clock_text(values.time_ms, zone));
    if (values.gauge_percent) row.cells[Row::gauge].text = number(*values.gauge_percent);
    if (values.register_wh) {
        Row::Cell& cell = row.cells[Row::register_value];
        cell.text = number(*values.register_wh);
        if (!derived.delivered_wh.contains(at)) cell.emphasis = Row::Emphasis::left_out;
        if (const auto mend = derived.mends.find(reading.uuid); mend != derived.mends.end())
            cell.hint = QStringLiteral("assumed: %1. %2")
                            .arg(text_of(mend_text(mend->second->kind)), QString::fromStdString(mend->second->reason));
    }
    if (const auto known = derived.delivered_wh.find(at); known != derived.delivered_wh.end()) {
        row.cells[Row::delivered].text = text_of(fixed_text(known->second, derived.decimals));
    } else if (const auto between = derived.interpolated_wh.find(at); between != derived.interpolated_wh.end()) {
        row.cells[Row::delivered] = {text_of(fixed_text(between->second, derived.decimals)), Row::Emphasis::soft,
                                     QStringLiteral("interpolated between the register readings around it")};
    }
    Row::Cell& load = row.cells[Row::load];
    load.hint = powers_text(values);
    if (const auto step = derived.load_w.find(at); step != derived.load_w.end()) {
        load.text = text_of(fixed_text(step->second, step->second < 10 ? 1 : 0));
    } else if (values.meter_w) {
        load.text = number(*values.meter_w);
        load.emphasis = Row::Emphasis::soft;
    }
    if (const auto error = derived.error_pt.find(at); error != derived.error_pt.end())
        row.cells[Row::error].text = signed_text(error->second, 1);
    row.cells[Row::remark] = {remark_text(values), Row::Emphasis::soft, remark_text(values)};
    return row;
}

} // namespace

std::vector<ReadingsRow> readings_rows(const RunRecord& record, const RunAnalysis& analysis) {
    const Derived derived(record, analysis);
    std::vector<ReadingsRow> rows;
    QString day;
    for (std::size_t i = 0; i < record.readings.size(); ++i) {
        const Reading& reading = record.readings[i];
        if (reading.withdrawn) continue;
        if (const QString own = day_of(reading.values.time_ms, record.run.time_zone); own != day) {
            day = own;
            ReadingsRow heading;
            heading.day = day;
            heading.cells[ReadingsRow::time] = {day, ReadingsRow::Emphasis::soft, {}};
            rows.push_back(heading);
        }
        rows.push_back(row_of(reading, i, derived, record.run.time_zone));
    }
    return rows;
}

QStringList history_lines(const std::vector<ReadingVersion>& versions, const std::string& zone) {
    QStringList lines;
    for (const ReadingVersion& version : versions) {
        const ReadingValues& values = version.values;
        QStringList parts;
        if (values.gauge_percent) parts << number(*values.gauge_percent) + QStringLiteral(" %");
        if (values.register_wh) parts << number(*values.register_wh) + QStringLiteral(" Wh");
        if (const QString powers = powers_text(values); !powers.isEmpty()) parts << powers;
        if (const QString remark = remark_text(values); !remark.isEmpty()) parts << remark;
        const QString said = QStringLiteral("at %1: %2").arg(text_of(clock_text(values.time_ms, zone)),
                                                            parts.join(QStringLiteral(", ")));
        QString line = QStringLiteral("%1 %2: %3").arg(text_of(day_text(version.written_ms, zone)),
                                                       text_of(clock_text(version.written_ms, zone)),
                                                       version.withdrawn ? QStringLiteral("withdrawn") : said);
        if (!version.reason.empty()) line += QStringLiteral(" (%1)").arg(QString::fromStdString(version.reason));
        lines << line;
    }
    return lines;
}

} // namespace ullage
