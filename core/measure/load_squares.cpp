// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/load_squares.h"

namespace ullage {
namespace {

constexpr std::size_t stride = 64;

} // namespace

double LoadSquares::step(const RegisterTrack& track, std::size_t to) {
    if (track.log) return track.log->square_w2h[to] - track.log->square_w2h[to - 1];
    const double hours = hours_between(track.points[to - 1].time_ms, track.points[to].time_ms);
    const double wh = track.points[to].delivered_wh - track.points[to - 1].delivered_wh;
    return hours > 0 && wh != 0 ? wh * wh / hours : 0.0;
}

LoadSquares::LoadSquares(const RegisterTrack& track) {
    if (track.log) return;
    kept_.reserve(track.points.size() / stride + 1);
    double sum = 0;
    for (std::size_t i = 0; i < track.points.size(); ++i) {
        if (i > 0) sum += step(track, i);
        if (i % stride == 0) kept_.push_back(sum);
    }
}

double LoadSquares::up_to(const RegisterTrack& track, std::size_t to) const {
    if (track.log) return track.log->square_w2h[to];
    double sum = kept_[to / stride];
    for (std::size_t i = to / stride * stride + 1; i <= to; ++i) sum += step(track, i);
    return sum;
}

} // namespace ullage
