// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/run_figures.h"

#include "base/number.h"
#include "forecast/near_moment.h"
#include "measure/load_steps.h"
#include "run_analysis/charge_run.h"
#include "style/numbers.h"
#include "style/words.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

QString dash() { return QString(QChar(0x2013)); }

const Reading* last_reading(const RunRecord& record) {
    const auto found = std::find_if(record.readings.rbegin(), record.readings.rend(), [](const Reading& reading) { return !reading.withdrawn; });
    return found == record.readings.rend() ? nullptr : &*found;
}

/// Value and rest of a quantity: "936" and "± 9 Wh"; brackets and limits keep their words in the value.
void put(StripFigure& figure, const Quantity& quantity, int decimals) {
    figure.hint = text_of(quantity.reason);
    if (quantity.kind == Kind::not_known) {
        figure.value = dash();
        figure.rest = tr("not known");
        return;
    }
    const ValueText text = shown_quantity(quantity, decimals);
    figure.value = text.value;
    figure.rest = QStringList{text.interval, text.unit}.join(QLatin1Char(' ')).trimmed();
}

StripFigure elapsed(const RunRecord& record, const RunAnalysis& analysis, const Reading* last, UtcMs now_ms) {
    StripFigure figure{QStringLiteral("elapsed"), tr("elapsed"), dash(), {}, {}};
    if (last == nullptr) return figure;
    if (record.run.end == RunEnd::still_running) {
        figure.value = shown_duration(std::max(0.0, hours_between(analysis.energy.start_ms, now_ms)));
        return figure;
    }
    const Quantity& duration = analysis.energy.duration_h;
    figure.label = tr("lasted");
    figure.hint = text_of(duration.reason);
    if (duration.kind == Kind::bracket && duration.lower && duration.upper) {
        figure.value = shown_duration(*duration.lower);
        figure.rest = tr("to %1").arg(shown_duration(*duration.upper));
    } else if (duration.value) {
        figure.value = shown_duration(*duration.value);
    } else {
        figure.rest = tr("not known");
    }
    return figure;
}

StripFigure gauge(const RunRecord& record) {
    StripFigure figure{QStringLiteral("gauge"), tr("gauge"), dash(), {}, {}};
    const auto last = last_shown_percent(record);
    if (!last) return figure;
    figure.value = text_of(say_digits(exact_text(*last)));
    figure.rest = QStringLiteral("%");
    return figure;
}

StripFigure load(const RunRecord& record, const RunAnalysis& analysis) {
    const bool running = record.run.end == RunEnd::still_running;
    const bool charge = record.run.kind == RunKind::charge;
    StripFigure figure{QStringLiteral("load"), charge ? tr("mean power") : tr("mean load"), dash(), {}, {}};
    if (running) figure.label = charge ? tr("mean power, since last") : tr("mean load, since last");
    const Quantity& mean = analysis.energy.mean_load_w;
    figure.hint = text_of(mean.reason);
    if (!mean.value) return figure;
    const auto watts = [](double value) { return text_of(say_number(value, value < 10 ? 1 : 0)); };
    figure.value = watts(*mean.value);
    figure.rest = QStringLiteral("W");
    if (!running) return figure;
    const auto steps = load_steps(analysis.energy.track, record.run.end);
    if (!steps.empty()) figure.rest = tr("W, %1 W").arg(watts(steps.back().mean_w));
    return figure;
}

StripFigure usable(const RunAnalysis& analysis) {
    StripFigure figure{QStringLiteral("usable"), tr("usable fraction"), {}, {}, {}};
    const Quantity& fraction = analysis.energy.usable_fraction;
    put(figure, fraction, 2);
    if (fraction.kind != Kind::not_known && fraction.kind != Kind::at_least)
        figure.label = tr("usable fraction, %1").arg(text_of(say_kind(fraction.kind)));
    return figure;
}

/// What a charge brings in its place.
StripFigure peak_power(const RunRecord& record, const RunAnalysis& analysis) {
    StripFigure figure{QStringLiteral("peak"), tr("peak power"), {}, {}, {}};
    put(figure, analyse_charge(record, analysis.energy).peak_charge_w, 0);
    return figure;
}

StripFigure age(const RunRecord& record, const Reading* last, UtcMs now_ms) {
    if (record.run.end != RunEnd::still_running)
        return {QStringLiteral("age"),
                tr("ended"),
                last == nullptr ? dash() : text_of(clock_text(last->values.time_ms, record.run.time_zone)),
                text_of(say_run_end(record.run.end)),
                {}};
    StripFigure figure{QStringLiteral("age"), tr("last reading"), dash(), {}, {}};
    if (last == nullptr) return figure;
    const double age_h = std::max(0.0, hours_between(last->values.time_ms, now_ms));
    if (age_h < 1.0 / 60.0) {
        figure.value = tr("now");
        return figure;
    }
    figure.value = shown_duration(age_h);
    // The unit of "12 min" stands lighter, as in the other cells.
    const QString minutes = QStringLiteral(" min");
    const bool in_minutes = figure.value.endsWith(minutes);
    if (in_minutes) figure.value.chop(minutes.size());
    figure.rest = in_minutes ? tr("min ago") : tr("ago");
    return figure;
}

/// Elapsed time with the age of the last reading beside its name: a running run has more to tell than a line of the strip holds.
StripFigure elapsed_and_age(const RunRecord& record, const RunAnalysis& analysis, const Reading* last, UtcMs now_ms) {
    StripFigure figure = elapsed(record, analysis, last, now_ms);
    const StripFigure since = age(record, last, now_ms);
    if (last != nullptr) figure.label = tr("elapsed; read %1").arg((since.value + QLatin1Char(' ') + since.rest).trimmed());
    figure.hint = tr("Time since the first reading, and since the last.");
    return figure;
}

/// Delivered energy with what the gauge says has gone beyond it: what the unit keeps for itself, or the gauge's error.
StripFigure delivered_and_gap(const RunAnalysis& analysis) {
    StripFigure figure{QStringLiteral("delivered"), tr("delivered"), {}, {}, {}};
    put(figure, analysis.energy.delivered_wh, 0);
    const auto implied = std::ranges::find(analysis.quantities, "gauge_implied_wh", &Quantity::key);
    const EnergyAnalysis& energy = analysis.energy;
    if (implied == analysis.quantities.end() || !implied->value) return figure;
    // Both between the first and the last reading that has both.
    const double gap_wh = std::round(*implied->value - (energy.points.back().delivered_wh - energy.points.front().delivered_wh));
    const QString sign = gap_wh < 0 ? QString(QChar(0x2212)) : QStringLiteral("+");
    figure.label = tr("delivered; gauge %1 Wh").arg(sign + text_of(say_number(std::abs(gap_wh), 0)));
    const QString gap = tr("The gauge implies %1 Wh %2 than was delivered (rated energy times its fall): what the unit took for itself, capacity "
                           "that is missing, or an error of the gauge.")
                            .arg(text_of(say_number(std::abs(gap_wh), 0)), gap_wh < 0 ? tr("less") : tr("more"));
    figure.hint = figure.hint.isEmpty() ? gap : figure.hint + QLatin1Char('\n') + gap;
    return figure;
}

/// The moment stays as it was forecast; how long until then counts from now.
StripFigure cut_off(const RunRecord& record, const RunForecast& forecast, UtcMs now_ms) {
    StripFigure figure{QStringLiteral("cutOff"), tr("cut-off expected"), dash(), tr("not known"), text_of(forecast.cut_off_reason)};
    if (!forecast.cut_off) return figure;
    // What the range rests on stands with it: an account of the gauge is no fact.
    figure.label = tr("cut-off, %1").arg(text_of(say_forecast_account(forecast.account)));
    const UtcMs as_of_ms = std::max(now_ms, forecast.as_of_ms);
    const QString hours = text_of(expected_hours_text(*forecast.cut_off, as_of_ms));
    const QString range = text_of(expected_clock_text(*forecast.cut_off, as_of_ms, record.run.time_zone));
    const std::string& zone = record.run.time_zone;
    if (forecast.cut_off->upper_ms < as_of_ms) {
        figure.label = tr("cut-off, overdue since");
        figure.value = text_of(near_moment_text(forecast.cut_off->upper_ms, as_of_ms, zone));
        figure.hint = tr("95 % range %1, %2, %3").arg(range, hours, text_of(forecast.cut_off_reason));
        return figure;
    }
    // "05:10" and "to Tue 06:40": six such cells stand in one line. A cut-off a day ahead is told in hours, its moment in the hint.
    const QString to = text_of(say(phrase("forecast", "%1 to %2"), Message(), Message())); // as it stands between the two, with its blanks
    const QString shown = hours_between(as_of_ms, forecast.cut_off->upper_ms) >= 24 ? hours : range;
    const bool begun = forecast.cut_off->lower_ms < as_of_ms; // what has passed is no longer ahead
    figure.value = begun && shown != hours ? tr("now") : shown.section(to, 0, 0);
    figure.rest = shown.contains(to) ? to.trimmed() + QLatin1Char(' ') + shown.section(to, 1) : QString();
    QStringList lines{tr("95 % range %1, %2, %3").arg(range, hours, text_of(forecast.cut_off_reason))};
    for (const ReadingAdvice& advice : forecast.advice) lines.append(text_of(advice.sentence));
    figure.hint = lines.join(QLatin1Char('\n'));
    return figure;
}

} // namespace

std::vector<StripFigure> run_figures(const RunRecord& record, const RunAnalysis& analysis, UtcMs now_ms, const OpenRunView& open) {
    const Reading* last = last_reading(record);
    const bool charge = record.run.kind == RunKind::charge;
    StripFigure delivered{QStringLiteral("delivered"), charge ? tr("energy in") : tr("delivered"), {}, {}, {}};
    put(delivered, analysis.energy.delivered_wh, 0);
    const bool running = record.run.end == RunEnd::still_running;
    if (charge || !running || open.forecast == nullptr)
        return {elapsed(record, analysis, last, now_ms),
                gauge(record),
                delivered,
                load(record, analysis),
                charge ? peak_power(record, analysis) : usable(analysis),
                charge && running && open.due ? *open.due : age(record, last, now_ms)};
    return {elapsed_and_age(record, analysis, last, now_ms),
            gauge(record),
            delivered_and_gap(analysis),
            load(record, analysis),
            cut_off(record, *open.forecast, now_ms),
            open.due ? *open.due : usable(analysis)};
}

} // namespace ullage
