// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/gauge_of_log.h"

#include "base/number.h"
#include "measure/inside/log_check.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr double leap_of_usual = 1.5;
constexpr double off_share = 0.005; ///< of the energy: a leap to 0 % within it is the unit going off
constexpr UtcMs near_ms = 60'000;
constexpr double least_calm_rise_pt = 5; ///< of medians of a gauge that flickers: less is what noise leaves of it
constexpr std::size_t most_paired_steps = 2000;

double step_of(const RunRecord& record) { return std::max(record.unit.gauge_step_percent, 1e-3); }

/// Noted gauges against what the log showed about the moment, give or take a step.
void check_by_hand(const RunRecord& record, double doubt_s, GaugeLogUse& use) {
    const GaugeLog& log = *record.gauge_log;
    const auto doubt = static_cast<UtcMs>(std::llround(1000 * doubt_s));
    const double step = std::max(step_of(record), 1.0);
    for (const Reading* reading : readings_kept(record)) {
        if (!reading->values.gauge_percent) continue;
        const auto before = log.shown_at(reading->values.time_ms - doubt), after = log.shown_at(reading->values.time_ms + doubt);
        if (!before || !after) continue;
        ++use.compared;
        const auto [low, high] = std::minmax(*before, *after);
        if (*reading->values.gauge_percent >= low - step && *reading->values.gauge_percent <= high + step) ++use.agreeing;
    }
}

/// What the log showed at one moment, and whether it is an end of a step.
struct Moment {
    UtcMs time_ms = 0;
    double percent = 0;
};

class GaugePairing {
public:
    GaugePairing(const RunRecord& record, const MeasureOptions& options, EnergyAnalysis& analysis, GaugeLogUse& use)
        : record_(record), log_(*record.gauge_log), analysis_(analysis), use_(use), options_(options) {
        options_.moment_doubt_min = use.clock_half_s / 60;
        window();
        choose_steps();
    }

    void run() {
        pair();
        std::vector<PairedPoint> by_log, shown;
        edges(by_log, shown);
        const double usual_pt = usual_fall_pt();
        for (std::size_t s = 0; s < steps_.size(); ++s) {
            const auto &from = paired_[2 * s], &to = paired_[2 * s + 1];
            if (!from || !to) continue;
            shown.push_back(*from);
            shown.push_back(*to);
            ++use_.steps;
            if (std::abs(from->gauge_percent - to->gauge_percent) <= leap_of_usual * usual_pt) {
                by_log.push_back(middle(*from, *to));
            } else {
                by_log.push_back(*from);
                by_log.push_back(*to);
            }
        }
        if (use_.steps == 0 && by_log.empty()) return;
        use_.used = true;
        merge(std::move(by_log), std::move(shown));
        add_rises();
    }

private:
    void window() {
        for (const Reading* reading : readings_kept(record_)) {
            if (from_ms_ == 0) from_ms_ = reading->values.time_ms;
            to_ms_ = std::max(to_ms_, reading->values.time_ms);
        }
        if (!analysis_.track.points.empty()) to_ms_ = std::max(to_ms_, analysis_.track.points.back().time_ms);
        if (analysis_.cut_off) to_ms_ = from_ms_ + static_cast<UtcMs>(std::llround(analysis_.cut_off->estimate_h * ms_per_hour));
        else if (record_.run.end == RunEnd::still_running) to_ms_ = std::max(to_ms_, log_.last_ms);
    }

    void choose_steps() {
        for (const GaugeStep& step : log_.steps)
            if (step.from_ms >= from_ms_ && step.to_ms <= to_ms_) steps_.push_back(step);
        if (steps_.size() <= most_paired_steps) return;
        std::vector<GaugeStep> thinned;
        for (std::size_t k = 0; k < most_paired_steps; ++k) thinned.push_back(steps_[k * (steps_.size() - 1) / (most_paired_steps - 1)]);
        steps_ = std::move(thinned);
    }

    /// The most common size of a step.
    double usual_fall_pt() const {
        std::vector<double> falls;
        for (const GaugeStep& step : steps_) falls.push_back(std::max(1.0, std::abs(step.to_percent - step.from_percent)));
        if (falls.empty()) return 1;
        std::ranges::nth_element(falls, falls.begin() + static_cast<std::ptrdiff_t>(falls.size() / 2));
        return falls[falls.size() / 2];
    }

    /// What the log showed at the start and the end of the run stands in for a note that is not there.
    void edges(std::vector<PairedPoint>& by_log, std::vector<PairedPoint>& shown) const {
        for (std::size_t e = 2 * steps_.size(); e < paired_.size(); ++e) {
            if (!paired_[e]) continue;
            shown.push_back(*paired_[e]);
            const auto is_near = [&](const PairedPoint& point) { return std::abs(point.time_ms - paired_[e]->time_ms) <= near_ms; };
            if (std::ranges::none_of(analysis_.points, is_near)) by_log.push_back(*paired_[e]);
        }
    }

    /// Pairs the ends of each step, then the edges of the run, with energy: as notes of the gauge at these moments would be.
    void pair() {
        std::vector<Moment> moments;
        for (const GaugeStep& step : steps_) {
            moments.push_back({step.from_ms, step.from_percent});
            moments.push_back({step.to_ms, step.to_percent});
        }
        for (const UtcMs edge_ms : {std::max(from_ms_, log_.first_ms), std::min(to_ms_, log_.last_ms)})
            if (const auto percent = log_.shown_at(edge_ms)) moments.push_back({edge_ms, *percent});
        RunRecord with_log = record_;
        with_log.readings.clear();
        for (const Reading* reading : readings_kept(record_)) {
            with_log.readings.push_back(*reading);
            with_log.readings.back().values.gauge_percent.reset();
        }
        for (std::size_t m = 0; m < moments.size(); ++m) {
            Reading reading;
            reading.sequence = -1 - static_cast<long>(m);
            reading.values.time_ms = moments[m].time_ms;
            reading.values.gauge_percent = moments[m].percent;
            with_log.readings.push_back(std::move(reading));
        }
        std::ranges::stable_sort(with_log.readings, {}, [](const Reading& reading) { return reading.values.time_ms; });
        RunScan scan = scan_run(with_log);
        const RegisterTrack track = energy_track(with_log, scan, options_);
        paired_.resize(moments.size());
        if (track.log.has_value() != analysis_.track.log.has_value() || !track.usable()) return;
        for (PairedPoint& point : pair_gauge(scan, track, options_)) {
            const auto at = static_cast<std::size_t>(-1 - with_log.readings[point.reading].sequence);
            if (track.log) {
                const auto on_track = std::ranges::lower_bound(track.points, point.reading, {}, &RegisterPoint::reading);
                const auto place = static_cast<std::size_t>(on_track - track.points.begin());
                if (place < track.log->square_w2h.size() && on_track->reading == point.reading) point.square_w2h = track.log->square_w2h[place];
            }
            point.hours = hours_between(analysis_.start_ms, point.time_ms);
            if (analysis_.cut_off) point.hours = std::min(point.hours, analysis_.cut_off->estimate_h);
            point.reading = no_reading;
            paired_[at] = point;
        }
        forget_going_off(track.total_wh());
    }

    void forget_going_off(double total_wh) {
        if (steps_.empty() || !analysis_.cut_off || steps_.back().to_percent > 0.5 || steps_.back().from_percent < 2) return;
        const auto& to = paired_[2 * steps_.size() - 1];
        if (!to || total_wh - to->delivered_wh > off_share * total_wh) return;
        paired_[2 * steps_.size() - 1].reset();
        if (paired_.back() && paired_.back()->gauge_percent < 0.5) paired_.back().reset();
    }

    static PairedPoint middle(const PairedPoint& from, const PairedPoint& to) {
        PairedPoint point = from;
        point.time_ms = from.time_ms + (to.time_ms - from.time_ms) / 2;
        point.hours = (from.hours + to.hours) / 2;
        point.delivered_wh = (from.delivered_wh + to.delivered_wh) / 2;
        point.u_pairing_wh = std::hypot(std::max(from.u_pairing_wh, to.u_pairing_wh), (to.delivered_wh - from.delivered_wh) / std::sqrt(12.0));
        point.gauge_percent = (std::floor(from.gauge_percent + 0.5) + std::floor(to.gauge_percent + 0.5)) / 2;
        point.gauge_half_pt = 0;
        if (from.square_w2h && to.square_w2h) point.square_w2h = (*from.square_w2h + *to.square_w2h) / 2;
        return point;
    }

    void merge(std::vector<PairedPoint> by_log, std::vector<PairedPoint> shown) {
        const auto earlier = [](const PairedPoint& a, const PairedPoint& b) { return a.time_ms < b.time_ms; };
        std::vector<PairedPoint>& points = analysis_.points;
        if (log_.calmed) shown.clear(); // how long a median stood still says nothing of the gauge
        shown.insert(shown.end(), points.begin(), points.end());
        std::ranges::stable_sort(shown, earlier);
        analysis_.shown = std::move(shown);
        const std::size_t by_hand = points.size();
        points.insert(points.end(), by_log.begin(), by_log.end());
        std::ranges::stable_sort(points, earlier);
        analysis_.gauge_changes = gauge_changes_of(points);
        rows_between_notes(by_hand);
    }

    /// Tables stay those of what was noted; of a run whose gauge nobody noted some twenty points of the log stand in.
    void rows_between_notes(std::size_t by_hand) {
        constexpr std::size_t stand_ins = 20;
        const std::vector<PairedPoint>& points = analysis_.points;
        std::vector<std::size_t> places;
        std::vector<PairedPoint> chosen;
        for (std::size_t i = 0; i < points.size(); ++i) {
            const bool wanted = by_hand >= 2 ? points[i].reading != no_reading
                                             : i % std::max<std::size_t>(1, points.size() / stand_ins) == 0 || i + 1 == points.size();
            if (!wanted) continue;
            places.push_back(i);
            chosen.push_back(points[i]);
        }
        analysis_.intervals = interval_table(chosen, record_.unit.rated_energy_wh);
        for (IntervalRow& row : analysis_.intervals) {
            row.from = places[row.from];
            row.to = places[row.to];
        }
    }

    void add_rises() {
        const double least_pt = std::max(2 * step_of(record_), log_.calmed ? least_calm_rise_pt : 0.0);
        for (std::size_t s = 0; s < steps_.size(); ++s) {
            if (steps_[s].to_percent <= steps_[s].from_percent) continue;
            std::size_t last = s;
            while (last + 1 < steps_.size() && steps_[last + 1].to_percent > steps_[last + 1].from_percent) ++last;
            const GaugeRise rise{no_reading, no_reading, steps_[s].from_ms, steps_[last].to_ms, steps_[s].from_percent, steps_[last].to_percent};
            s = last;
            const bool noted = std::ranges::any_of(
                analysis_.rises, [&](const GaugeRise& known) { return known.before_ms <= rise.after_ms && known.after_ms >= rise.before_ms; });
            if (!noted && rise.after_percent - rise.before_percent >= least_pt) analysis_.rises.push_back(rise);
        }
    }

    const RunRecord& record_;
    const GaugeLog& log_;
    EnergyAnalysis& analysis_;
    GaugeLogUse& use_;
    MeasureOptions options_;
    UtcMs from_ms_ = 0, to_ms_ = 0;
    std::vector<GaugeStep> steps_;                   ///< within the run
    std::vector<std::optional<PairedPoint>> paired_; ///< both ends of each step, then the edges of the run
};

Message sentence_of(const GaugeLog& log, const GaugeLogUse& use, bool contradicted) {
    std::vector<Message> sentences{
        say_count(log.samples, phrases("measure", "The log of the gauge has %n samples.", "The log of the gauge has %n sample."))};
    if (log.doubted > 0) sentences.push_back(say_count(log.doubted, phrases("measure", "%n drop-outs were left out.", "%n drop-out was left out.")));
    if (log.calmed) sentences.push_back(say(phrase("measure", "It flickers by more than a step: medians of five minutes and more were taken.")));
    if (use.compared > 0)
        sentences.push_back(say_count(
            use.compared,
            use.agreeing == 1
                ? phrases("measure", "%1 of %n gauge readings noted by hand agrees with it.", "%1 of %n gauge reading noted by hand agrees with it.")
                : phrases("measure", "%1 of %n gauge readings noted by hand agree with it.", "%1 of %n gauge reading noted by hand agree with it."),
            say_number(use.agreeing)));
    if (contradicted)
        sentences.push_back(say(phrase("measure", "Most do not: its clock is off, or it is the log of something else. It was not used.")));
    else if (!use.used) sentences.push_back(say(phrase("measure", "None of it could be paired with metered energy.")));
    else if (use.clock_half_s > 0)
        sentences.push_back(say_count(use.steps,
                                      phrases("measure", "%n steps of the gauge are timed by it, its clock known within %1 s.",
                                              "%n step of the gauge is timed by it, its clock known within %1 s."),
                                      say_number(use.clock_half_s, 0)));
    else
        sentences.push_back(
            say_count(use.steps, phrases("measure", "%n steps of the gauge are timed by it.", "%n step of the gauge is timed by it.")));
    return say_joined(sentences, " ");
}

} // namespace

void add_gauge_of_log(const RunRecord& record, const MeasureOptions& options, EnergyAnalysis& analysis) {
    if (!record.gauge_log || record.gauge_log->samples == 0 || record.readings.empty()) return;
    const GaugeLog& log = *record.gauge_log;
    GaugeLogUse use;
    const double minute_s = options.moment_doubt_min * 60;
    if (log.own_clock) use.clock_half_s = log.offset_u_s > 0 ? std::sqrt(3.0) * log.offset_u_s : minute_s;
    check_by_hand(record, minute_s + use.clock_half_s, use);
    const bool contradicted = 2 * (use.compared - use.agreeing) > use.compared;
    if (!contradicted && analysis.track.usable()) GaugePairing(record, options, analysis, use).run();
    use.sentence = sentence_of(log, use, contradicted);
    analysis.log_sentence += Message(analysis.log_sentence.empty() ? "" : " ") + use.sentence;
    analysis.gauge_log = std::move(use);
}

} // namespace ullage
