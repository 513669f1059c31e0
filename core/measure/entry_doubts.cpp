// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/entry_doubts.h"

#include "base/number.h"
#include "measure/entry_mend.h"
#include "measure/register.h"
#include "model/meter_gain.h"

namespace ullage {

namespace {

constexpr double least_leap = 5; ///< how much faster than before a register rises that has a digit too many
constexpr double like_load = 2;  ///< factor within which a load goes on as before

/// The nearest readings before and after a time that carry one of the values.
struct Neighbours {
    const ReadingValues* before = nullptr;
    const ReadingValues* after = nullptr;
};

Neighbours neighbours(const RunRecord& record, UtcMs time_ms, std::optional<double> ReadingValues::*part) {
    Neighbours found;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn || !(reading.values.*part)) continue;
        if (reading.values.time_ms <= time_ms) {
            found.before = &reading.values;
        } else {
            found.after = &reading.values;
            break;
        }
    }
    return found;
}

bool explains_register(const ReadingValues& values) { return values.mark == MarkKind::meter_zeroed || values.mark == MarkKind::meter_swapped; }

/// True when a mark after the reading `before`, which is one of the record's, and not after `to_ms` starts the register anew. In order of
/// entry: a meter is read and zeroed within one minute.
bool restarted_since(const RunRecord& record, const ReadingValues* before, UtcMs to_ms) {
    bool passed = false;
    for (const Reading& reading : record.readings) {
        if (passed && !reading.withdrawn && reading.values.time_ms <= to_ms && explains_register(reading.values)) return true;
        passed = passed || &reading.values == before;
    }
    return false;
}

/// True when a mark between the two moments, or at the later one, starts the register anew.
bool restarted_between(const RunRecord& record, UtcMs from_ms, UtcMs to_ms) {
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.time_ms > from_ms && reading.values.time_ms <= to_ms && explains_register(reading.values))
            return true;
    return false;
}

class Doubts {
public:
    Doubts(const RunRecord& record, const ReadingValues& values, UtcMs now_ms, const MeasureOptions& options)
        : record_(record), values_(values), now_ms_(now_ms), options_(options), limit_w_(believable_load_w(record.unit, options)) {}

    std::vector<Doubt> all() {
        moments();
        gauge();
        meter_register();
        power(phrase("measure", "a meter power of %1 W is more than this unit can be believed to deliver (%2 W)"), values_.meter_w,
              DoubtedPart::meter_power);
        power(phrase("measure", "a display power of %1 W is more than this unit can be believed to deliver (%2 W)"), values_.display_w,
              DoubtedPart::display_power);
        return std::move(doubts_);
    }

private:
    void add(DoubtKind kind, const Message& sentence, DoubtedPart part) { doubts_.push_back({kind, sentence, part}); }
    [[nodiscard]] std::string at(UtcMs time_ms) const { return clock_text(time_ms, record_.run.time_zone); }
    [[nodiscard]] static Message exact(double value) { return say_digits(exact_text(value)); }
    [[nodiscard]] double moment_doubt_h() const { return options_.moment_doubt_min / 60.0; }

    void moments() {
        if (record_.run.end != RunEnd::still_running)
            add(DoubtKind::run_ended, say(phrase("measure", "this run has ended (%1)"), say_run_end(record_.run.end)), DoubtedPart::run);
        if (hours_between(now_ms_, values_.time_ms) > moment_doubt_h())
            add(DoubtKind::in_future,
                say(phrase("measure", "%1 is %2 ahead of now"), at(values_.time_ms), duration_text(hours_between(now_ms_, values_.time_ms))),
                DoubtedPart::time);
        const Reading* last = nullptr;
        for (const Reading& reading : record_.readings)
            if (!reading.withdrawn) last = &reading;
        if (last != nullptr && values_.time_ms < last->values.time_ms)
            add(DoubtKind::before_last,
                say(phrase("measure", "%1 on %2 is before the last reading (%3 on %4)"), at(values_.time_ms), day(values_.time_ms),
                    at(last->values.time_ms), day(last->values.time_ms)),
                DoubtedPart::time);
    }

    [[nodiscard]] Message day(UtcMs time_ms) const { return say_day(time_ms, record_.run.time_zone); }

    void gauge() {
        if (!values_.gauge_percent) return;
        const auto [before, after] = neighbours(record_, values_.time_ms, &ReadingValues::gauge_percent);
        const bool charging = record_.run.kind == RunKind::charge;
        const double sign = charging ? -1.0 : 1.0;
        const double shown = *values_.gauge_percent;
        if (before != nullptr && sign * (shown - *before->gauge_percent) > 0)
            add(DoubtKind::gauge_rose,
                say(charging ? phrase("measure", "the gauge fell from %1 % at %2 to %3 %")
                             : phrase("measure", "the gauge rose from %1 % at %2 to %3 %"),
                    exact(*before->gauge_percent), at(before->time_ms), exact(shown)),
                DoubtedPart::gauge);
        if (after != nullptr && sign * (*after->gauge_percent - shown) > 0)
            add(DoubtKind::gauge_rose,
                say(charging ? phrase("measure", "the later reading at %1 shows %2 %, less than %3 %")
                             : phrase("measure", "the later reading at %1 shows %2 %, more than %3 %"),
                    at(after->time_ms), exact(*after->gauge_percent), exact(shown)),
                DoubtedPart::gauge);
    }

    void meter_register() {
        if (!values_.register_wh) return;
        const auto [before, after] = neighbours(record_, values_.time_ms, &ReadingValues::register_wh);
        if (before != nullptr && !explains_register(values_) && !restarted_since(record_, before, values_.time_ms)) rise_from(*before);
        if (after != nullptr && !restarted_between(record_, values_.time_ms, after->time_ms)) {
            if (*after->register_wh < *values_.register_wh)
                add(DoubtKind::register_overtakes,
                    say(phrase("measure", "the later reading at %1 shows a lower register (%2 Wh)"), at(after->time_ms), exact(*after->register_wh)),
                    DoubtedPart::register_value);
        }
    }

    void rise_from(const ReadingValues& before) {
        const double hours = hours_between(before.time_ms, values_.time_ms) + 2 * moment_doubt_h();
        const double correction = typical_correction(record_.meter);
        double rise_wh = *values_.register_wh - *before.register_wh;
        if (rise_wh < 0) {
            const std::optional<double> span = record_.meter ? record_.meter->span_wh : std::nullopt;
            const bool rolled_over = span && *before.register_wh < *span && correction * (rise_wh + *span) / hours <= limit_w_;
            if (!rolled_over)
                add(DoubtKind::register_fell,
                    say(phrase("measure", "the register fell from %1 Wh at %2 to %3 Wh"), exact(*before.register_wh), at(before.time_ms),
                        exact(*values_.register_wh)),
                    DoubtedPart::register_value);
            return;
        }
        const double load_w = correction * rise_wh / hours;
        if (load_w > limit_w_)
            add(DoubtKind::too_much_power,
                say(phrase("measure", "%1 Wh since %2 would be about %3 W, more than this unit can be believed to deliver (%4 W)"),
                    say_number(rise_wh, rise_wh < 10 ? 1 : 0), at(before.time_ms), say_number(load_w, 0), say_number(limit_w_, 0)),
                DoubtedPart::register_value);
        const std::optional<double> usual_w = load_before_w(record_, values_.time_ms);
        const double tenth_w = correction * (*values_.register_wh / 10 - *before.register_wh) / hours;
        if (load_w <= limit_w_ && usual_w && load_w > least_leap * *usual_w && tenth_w > *usual_w / like_load && tenth_w < *usual_w * like_load)
            add(DoubtKind::tenfold_load,
                say(phrase("measure", "%1 Wh since %2 would be about %3 W, where it was about %4 W before"),
                    say_number(rise_wh, rise_wh < 10 ? 1 : 0), at(before.time_ms), say_number(load_w, 0), say_number(*usual_w, 0)),
                DoubtedPart::register_value);
    }

    void power(const Phrase& words, std::optional<double> power_w, DoubtedPart part) {
        if (power_w && *power_w > limit_w_) add(DoubtKind::too_much_power, say(words, exact(*power_w), say_number(limit_w_, 0)), part);
    }

    const RunRecord& record_;
    const ReadingValues& values_;
    UtcMs now_ms_;
    const MeasureOptions& options_;
    double limit_w_;
    std::vector<Doubt> doubts_;
};

} // namespace

std::vector<Doubt> entry_doubts(const RunRecord& record, const ReadingValues& values, UtcMs now_ms, const MeasureOptions& options) {
    return Doubts(record, values, now_ms, options).all();
}

} // namespace ullage
