// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"

#include <cstddef>
#include <vector>

namespace ullage {

/// The integral of P squared along a register track, W2h, kept at every 64th point. A load that varies between two register readings counts
/// with its mean; by a log with what the log holds (LogUse::square_w2h).
class LoadSquares {
public:
    LoadSquares() = default;
    explicit LoadSquares(const RegisterTrack& track);

    /// From the first point of the track to point `to`. Precondition: the track is the one given above.
    [[nodiscard]] double up_to(const RegisterTrack& track, std::size_t to) const;
    /// Between two neighbouring points, to - 1 and to. Precondition: to > 0.
    [[nodiscard]] static double step(const RegisterTrack& track, std::size_t to);

private:
    std::vector<double> kept_;
};

} // namespace ullage
