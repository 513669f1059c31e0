// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/readings_rows.h"

#include "forecast/near_moment.h"

#include "base/number.h"
#include "measure/load_steps.h"
#include "model/history_reason.h"
#include "models/finding_stretch.h"
#include "style/words.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace ullage {

namespace {

QString number(double value) { return text_of(say_digits(exact_text(value))); }

QString day_of(UtcMs time_ms, const std::string& zone) {
    return QStringLiteral("%1 %2").arg(text_of(say_weekday(time_ms, zone)), text_of(say_day(time_ms, zone)));
}

QString with_sign(double value, int decimals) { return text_of(say_signed(value, decimals)); }

/// Digits that a register of this step can support.
int decimals_of_step(double step_wh) { return step_wh >= 1.0 ? 0 : step_wh >= 0.1 ? 1 : 2; }

QString remark_text(const ReadingValues& values) {
    QStringList words;
    if (values.mark) words << text_of(say_mark(*values.mark));
    if (!values.remark.empty()) words << text_of(values.remark);
    return words.join(QStringLiteral(", "));
}

QString powers_text(const ReadingValues& values) {
    QStringList shown;
    if (values.second_register_wh) shown << tr("second register %1 Wh").arg(number(*values.second_register_wh));
    if (values.meter_w) shown << tr("meter showed %1 W").arg(number(*values.meter_w));
    if (values.display_w) shown << tr("unit showed %1 W").arg(number(*values.display_w));
    return shown.join(QStringLiteral(", "));
}

/// A value for each reading, by its place in the record; absent ones are not a number.
using Values = std::vector<double>;

std::optional<double> known(const Values& values, std::size_t at) {
    return at < values.size() && !std::isnan(values[at]) ? std::optional(values[at]) : std::nullopt;
}

/// Of which delivered energy is a share: what came out from full to cut-off.
std::optional<double> whole_delivered_wh(const EnergyAnalysis& energy) {
    const bool bounded = !energy.track.energy_may_be_missing || energy.track.missing_most_wh;
    return energy.from_full_to_cut_off && bounded && energy.track.total_wh() > 0 ? std::optional(energy.track.total_wh()) : std::nullopt;
}

} // namespace

std::optional<ExpectedWhole> expected_whole(const RunRecord& record, const EnergyAnalysis& energy, const RunForecast* forecast) {
    const bool drain = record.run.kind == RunKind::drain && record.run.started_full.value_or(false);
    if (!drain || record.run.end != RunEnd::still_running || !energy.track.usable() || !energy.mean_load_w.value) return std::nullopt;
    if (forecast == nullptr || !forecast->cut_off) return std::nullopt;
    const auto until = [&energy](UtcMs cut_off_ms) {
        const double hours = hours_between(energy.track.points.back().time_ms, cut_off_ms);
        return energy.track.total_wh() + std::max(0.0, hours) * *energy.mean_load_w.value;
    };
    return ExpectedWhole{until(forecast->cut_off->lower_ms), until(forecast->cut_off->estimate_ms), until(forecast->cut_off->upper_ms)};
}

/// What an analysis says of each reading.
struct ReadingsRows::Derived {
    Values delivered_wh, interpolated_wh, load_w, error_pt;
    std::map<ReadingId, RegisterCorrection> register_corrections;
    std::set<ReadingId> doubtful;
    int decimals = 0;

    Derived(const RunRecord& record, const RunAnalysis& analysis, std::optional<double> expected_wh)
        : decimals(decimals_of_step(register_step_wh(record))) {
        for (Values* values : {&delivered_wh, &interpolated_wh, &load_w, &error_pt})
            values->assign(record.readings.size(), std::numeric_limits<double>::quiet_NaN());
        // A point that is no reading, such as the end of a log, is out of range.
        const auto put = [](Values& values, std::size_t at, double value) {
            if (at < values.size()) values[at] = value;
        };
        const EnergyAnalysis& energy = analysis.energy;
        for (const RegisterPoint& point : energy.track.points) put(delivered_wh, point.reading, point.delivered_wh);
        for (const PairedPoint& point : energy.points) put(interpolated_wh, point.reading, point.delivered_wh);
        for (const LoadStep& step : load_steps(energy.track, record.run.end)) put(load_w, step.to_reading, step.mean_w);
        if (const auto whole_wh = expected_wh ? expected_wh : whole_delivered_wh(energy))
            for (const PairedPoint& point : energy.points)
                put(error_pt, point.reading, point.gauge_percent - 100 * (1 - point.delivered_wh / *whole_wh));
        for (const RegisterCorrection& register_correction : energy.track.register_corrections)
            register_corrections.insert_or_assign(register_correction.reading_uuid, register_correction);
        for (const Finding& finding : analysis.gauge.findings)
            for (const ReadingId& uuid : doubtful_readings(finding)) doubtful.insert(uuid);
    }
};

ReadingsRows::ReadingsRows(std::shared_ptr<const RunRecord> record, const RunAnalysis& analysis, std::optional<double> expected_wh,
                           bool with_withdrawn)
    : record_(std::move(record)), derived_(std::make_shared<Derived>(*record_, analysis, expected_wh)) {
    const std::string& zone = record_->run.time_zone;
    std::optional<std::tuple<int, int, int>> day;
    for (std::size_t i = 0; i < record_->readings.size(); ++i) {
        const Reading& reading = record_->readings[i];
        if (reading.withdrawn && !with_withdrawn) continue;
        const auto local = to_local(reading.values.time_ms, zone);
        if (const std::tuple own(local.year, local.month, local.day); day != own) {
            day = own;
            days_.push_back(day_of(reading.values.time_ms, zone));
            entries_.push_back(-static_cast<std::int32_t>(days_.size()));
        }
        entries_.push_back(static_cast<std::int32_t>(i));
    }
}

ReadingsRow ReadingsRows::row(std::size_t at_row) const {
    using Row = ReadingsRow;
    if (isDay(at_row)) {
        const QString& day = days_[static_cast<std::size_t>(-1 - entries_[at_row])];
        Row heading;
        heading.day = day;
        heading.cells[Row::time] = {day, Row::Emphasis::soft, {}};
        return heading;
    }
    const auto at = static_cast<std::size_t>(entries_[at_row]);
    const Reading& reading = record_->readings[at];
    const Derived& derived = *derived_;
    const std::string& zone = record_->run.time_zone;
    const ReadingValues& values = reading.values;
    Row row;
    row.uuid = reading.uuid;
    row.amended = reading.version > 1;
    row.doubtful = derived.doubtful.contains(reading.uuid);
    row.cells[Row::time].text = text_of(clock_text(values.time_ms, zone));
    if (values.gauge_percent) row.cells[Row::gauge].text = number(*values.gauge_percent);
    if (values.register_wh) {
        Row::Cell& cell = row.cells[Row::register_value];
        cell.text = number(*values.register_wh);
        if (!known(derived.delivered_wh, at)) cell.emphasis = Row::Emphasis::left_out;
        if (const auto register_correction = derived.register_corrections.find(reading.uuid);
            register_correction != derived.register_corrections.end())
            cell.hint = tr("assumed: %1. %2")
                            .arg(text_of(say_register_correction(register_correction->second.kind)), text_of(register_correction->second.reason));
    }
    if (const auto delivered = known(derived.delivered_wh, at)) {
        row.cells[Row::delivered].text = text_of(say_number(*delivered, derived.decimals));
    } else if (const auto between = known(derived.interpolated_wh, at)) {
        row.cells[Row::delivered] = {text_of(say_number(*between, derived.decimals)), Row::Emphasis::soft,
                                     tr("interpolated between the register readings around it")};
    }
    Row::Cell& load = row.cells[Row::load];
    load.hint = powers_text(values);
    if (const auto mean_w = known(derived.load_w, at)) {
        load.text = text_of(say_number(*mean_w, *mean_w < 10 ? 1 : 0));
    } else if (values.meter_w) {
        load.text = number(*values.meter_w);
        load.emphasis = Row::Emphasis::soft;
    }
    if (const auto error_pt = known(derived.error_pt, at)) row.cells[Row::error].text = with_sign(*error_pt, 1);
    row.cells[Row::remark] = {remark_text(values), Row::Emphasis::soft, remark_text(values)};
    if (reading.withdrawn) {
        for (const auto column : {Row::time, Row::gauge, Row::register_value}) row.cells[column].emphasis = Row::Emphasis::left_out;
        row.cells[Row::remark].text = remark_text(values).isEmpty() ? tr("withdrawn") : tr("withdrawn, %1").arg(remark_text(values));
    }
    return row;
}

ReadingId ReadingsRows::uuidAt(std::size_t at) const {
    return isDay(at) ? ReadingId() : record_->readings[static_cast<std::size_t>(entries_[at])].uuid;
}

std::optional<std::size_t> ReadingsRows::rowOf(const ReadingId& reading_uuid) const {
    for (std::size_t at = 0; at < entries_.size(); ++at)
        if (!isDay(at) && record_->readings[static_cast<std::size_t>(entries_[at])].uuid == reading_uuid) return at;
    return std::nullopt;
}

bool ReadingsRows::same(const ReadingsRows& one, std::size_t at, const ReadingsRows& other, std::size_t other_at) {
    const std::int32_t a = one.entries_[at], b = other.entries_[other_at];
    if ((a < 0) != (b < 0)) return false;
    if (a < 0) return one.days_[static_cast<std::size_t>(-1 - a)] == other.days_[static_cast<std::size_t>(-1 - b)];
    return one.record_->readings[static_cast<std::size_t>(a)].uuid == other.record_->readings[static_cast<std::size_t>(b)].uuid;
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
        const QString said = tr("at %1: %2").arg(text_of(clock_text(values.time_ms, zone)), parts.join(QStringLiteral(", ")));
        QString line = QStringLiteral("%1 %2: %3")
                           .arg(text_of(day_text(version.written_ms, zone)), text_of(clock_text(version.written_ms, zone)),
                                version.withdrawn ? tr("withdrawn") : said);
        if (!version.reason.empty()) line += QStringLiteral(" (%1)").arg(text_of(say_reason(version.reason)));
        lines << line;
    }
    return lines;
}

} // namespace ullage
