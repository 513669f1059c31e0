// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/meter_parts.h"

#include "base/instant.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <optional>

namespace ullage {

namespace {

constexpr double least_load_steps = 20; ///< a load over fewer register steps is too rough to look a correction up by

/// The points of one meter, in the register's own energy.
class Stretch {
public:
    Stretch(const Meter* meter, double step_wh, std::vector<RegisterPoint>& points, MeterPart& part)
        : meter_(meter), step_wh_(step_wh), points_(points), part_(part) {}

    /// Corrects the points after `from` up to `to`, both of this meter; `true_wh` is the true energy at `from`, then at `to`. `raw_wh` is the
    /// register's energy before each point was corrected.
    void correct(std::size_t from, std::size_t to, const std::vector<double>& raw_wh, double& true_wh) {
        const bool by_load = meter_ != nullptr && (!meter_->points.empty() || meter_->range_low_w || meter_->range_high_w);
        MeterGain gain = meter_ == nullptr ? MeterGain() : gain_at(*meter_, 0);
        std::size_t begin = from;
        bool load_known = !by_load;
        for (std::size_t i = from + 1; i <= to; ++i) {
            const double gained_wh = raw_wh[i] - raw_wh[begin];
            const bool enough = by_load && gained_wh >= least_load_steps * step_wh_;
            if (!enough && i < to) continue;
            const double hours = hours_between(points_[begin].time_ms, points_[i].time_ms);
            // The last steps alone say too little; they go on at the load before them.
            if (by_load && hours > 0 && (enough || !load_known)) {
                load_w_ = gained_wh / hours;
                gain = gain_at(*meter_, *load_w_);
                load_known = true;
            }
            for (std::size_t k = begin + 1; k <= i; ++k) points_[k].delivered_wh = true_wh + gain.correction * (raw_wh[k] - raw_wh[begin]);
            add(gain, gained_wh);
            true_wh = points_[i].delivered_wh;
            begin = i;
        }
    }

private:
    void add(const MeterGain& gain, double register_wh) {
        const double wh = gain.correction * register_wh;
        part_.register_wh += register_wh;
        part_.delivered_wh += wh;
        if (gain.u_percent) part_.u_wh += wh * *gain.u_percent / 100;
        else if (gain.limit_percent) part_.limit_wh += wh * *gain.limit_percent / 100;
        else part_.is_stated = part_.is_stated && wh == 0;
        if (!load_w_) return;
        if (gain.beyond_points) part_.beyond_points_wh += wh;
        if (*load_w_ < meter_->range_low_w.value_or(0) || (meter_->range_high_w && *load_w_ > *meter_->range_high_w)) part_.out_of_range_wh += wh;
        part_.lowest_w = std::min(part_.lowest_w.value_or(*load_w_), *load_w_);
        part_.highest_w = std::max(part_.highest_w.value_or(*load_w_), *load_w_);
    }

    const Meter* meter_;
    double step_wh_;
    std::optional<double> load_w_;
    std::vector<RegisterPoint>& points_;
    MeterPart& part_;
};

MeterPart& part_of(MeterOfRun which, std::vector<MeterPart>& parts) {
    const auto known = std::ranges::find(parts, which, &MeterPart::meter);
    if (known != parts.end()) return *known;
    return parts.emplace_back(MeterPart{which});
}

} // namespace

MeterOfRun meter_after(const RunRecord& record, std::size_t swaps) {
    if (swaps == 0) return record.meter ? MeterOfRun::first : MeterOfRun::not_stated;
    return swaps == 1 && record.second_meter ? MeterOfRun::second : MeterOfRun::not_stated;
}

const Meter* meter_of(const RunRecord& record, MeterOfRun which) {
    if (which == MeterOfRun::first && record.meter) return &*record.meter;
    if (which == MeterOfRun::second && record.second_meter) return &*record.second_meter;
    return nullptr;
}

const Meter* meter_of(const RunRecord& record, const MeterPart& part) {
    if (part.meter != MeterOfRun::other) return meter_of(record, part.meter);
    if (part.log >= record.other_logs.size() || !record.other_logs[part.log].meter) return nullptr;
    return &*record.other_logs[part.log].meter;
}

void apply_meters(const RunRecord& record, const std::vector<std::size_t>& swaps, double step_wh, RegisterTrack& track) {
    track.meters.clear();
    if (track.points.empty()) return;
    std::vector<double> raw_wh;
    raw_wh.reserve(track.points.size());
    for (const RegisterPoint& point : track.points) raw_wh.push_back(point.delivered_wh);
    double true_wh = 0;
    std::size_t from = 0;
    for (std::size_t swap = 0; swap <= swaps.size(); ++swap) {
        const std::size_t end = swap < swaps.size() ? swaps[swap] : track.points.size();
        const MeterOfRun which = meter_after(record, swap);
        track.points[from].delivered_wh = true_wh; // nothing was read between the last reading of one meter and the first of the next
        Stretch(meter_of(record, which), step_wh, track.points, part_of(which, track.meters)).correct(from, end - 1, raw_wh, true_wh);
        from = end;
    }
}

} // namespace ullage
