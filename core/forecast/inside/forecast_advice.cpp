// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_advice.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr UtcMs minute_ms = 60'000;
constexpr double bottom_shown_percent = 2;
constexpr double least_lead_min = 10;

std::string since_text(UtcMs time_ms, const RunForecast& forecast, const std::string& zone) {
    return clock_text(time_ms, zone) + " (" + duration_text(std::max(0.0, hours_between(time_ms, forecast.as_of_ms))) + ")";
}

/// A channel that the last readings left out.
void add_missing_channel(const RunRecord& record, const RunForecast& forecast, std::vector<ReadingAdvice>& advice) {
    const auto& gauge = forecast.last_gauge_ms;
    const auto& meter = forecast.last_register_ms;
    const std::string& zone = record.run.time_zone;
    if (record.meter && record.run.kind == RunKind::drain && !meter)
        advice.push_back({{}, say(phrase("forecast", "The register has not been read yet: read it together with the gauge."))});
    else if (meter && gauge && *gauge > *meter)
        advice.push_back({{},
                          say(phrase("forecast", "The register has not been read since %1, the gauge has: read both together."),
                              since_text(*meter, forecast, zone))});
    else if (!gauge) advice.push_back({{}, say(phrase("forecast", "The gauge has not been read yet: read it together with the register."))});
    else if (meter && *meter > *gauge)
        advice.push_back({{},
                          say(phrase("forecast", "The gauge has not been read since %1, the register has: read both together."),
                              since_text(*gauge, forecast, zone))});
}

/// Around the cut-off: whoever sees it knows the run time to the minute.
void add_cut_off(const RunRecord& record, const RunForecast& forecast, std::vector<ReadingAdvice>& advice) {
    if (!forecast.cut_off) return;
    const ExpectedTime& time = *forecast.cut_off;
    const std::string& zone = record.run.time_zone;
    if (time.upper_ms < forecast.as_of_ms) {
        advice.push_back({{},
                          say(phrase("forecast", "The cut-off was expected by %1: look whether the output is still on, and read gauge and register."),
                              clock_text(time.upper_ms, zone))});
        return;
    }
    const double width_min = hours_between(time.lower_ms, time.upper_ms) * 60;
    const double every_min = std::clamp(std::round(width_min / 10 / 5) * 5, 5.0, 30.0);
    const UtcMs from_ms = time.lower_ms - static_cast<UtcMs>(std::max(least_lead_min, every_min)) * minute_ms;
    const Message each_min = say_number(every_min, 0), range = say_expected_clock(time, forecast.as_of_ms, zone);
    if (from_ms <= forecast.as_of_ms)
        advice.push_back({{},
                          say(phrase("forecast", "Read often now, each %1 min: the cut-off is expected %2, and a cut-off that is seen gives the run "
                                                 "time to the minute."),
                              each_min, range)});
    else
        advice.push_back({from_ms, say(phrase("forecast", "Read often from %1, each %2 min: the cut-off is expected %3."), clock_text(from_ms, zone),
                                       each_min, range)});
}

/// A gauge value near which a pair of readings settles something, and what is said of it.
struct TellingPair {
    double percent;
    Phrase with_time, without_time;
};
constexpr TellingPair telling_pairs[] = {
    {50, phrase("forecast", "Read register and gauge together near %1 % (expected %2): it tells a bent gauge from a straight one."),
     phrase("forecast", "Read register and gauge together near %1 %: it tells a bent gauge from a straight one.")},
    {20,
     phrase("forecast", "Read register and gauge together near %1 % (expected %2): it shows how the gauge runs into its end, and narrows the cut-off "
                        "most."),
     phrase("forecast", "Read register and gauge together near %1 %: it shows how the gauge runs into its end, and narrows the cut-off most.")},
    {bottom_shown_percent,
     phrase("forecast", "Read register and gauge together near %1 % (expected %2): what is delivered after that is the gauge's hidden reserve."),
     phrase("forecast", "Read register and gauge together near %1 %: what is delivered after that is the gauge's hidden reserve.")}};

/// The pair of readings that would tell most.
void add_open_question(const RunRecord& record, const RunForecast& forecast, std::vector<ReadingAdvice>& advice) {
    if (!forecast.gauge_speed) {
        if (forecast.last_gauge_ms)
            advice.push_back({{},
                              say(phrase("forecast", "The gauge has not fallen enough to tell anything yet: read gauge and register together once it "
                                                     "has fallen by a few points."))});
        return;
    }
    const double shown = forecast.gauge_speed->shown_percent;
    if (shown <= bottom_shown_percent) {
        advice.push_back({{},
                          say(phrase("forecast", "The gauge has come to its lowest values: each reading of the register from now on measures what is "
                                                 "left when it shows nothing."))});
        return;
    }
    for (const TellingPair& pair : telling_pairs) {
        if (pair.percent > shown - std::max(3.0, forecast.gauge_speed->step_pt)) continue;
        const auto time = gauge_drop_time(forecast, shown - pair.percent);
        const Message percent = say_digits(exact_text(pair.percent));
        if (time)
            advice.push_back({time->estimate_ms, say(pair.with_time, percent, say_expected_clock(*time, forecast.as_of_ms, record.run.time_zone))});
        else advice.push_back({{}, say(pair.without_time, percent)});
        return;
    }
}

} // namespace

std::vector<ReadingAdvice> reading_advice(const RunRecord& record, const RunForecast& forecast) {
    std::vector<ReadingAdvice> advice;
    add_missing_channel(record, forecast, advice);
    add_open_question(record, forecast, advice);
    const bool near = forecast.cut_off && forecast.cut_off->lower_ms <= forecast.as_of_ms + 60 * minute_ms;
    std::vector<ReadingAdvice> end;
    add_cut_off(record, forecast, end);
    advice.insert(near ? advice.begin() : advice.end(), end.begin(), end.end());
    return advice;
}

} // namespace ullage
