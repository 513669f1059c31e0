// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace ullage {

/// A label that would like its middle at `wanted` and needs `height`, along one column.
struct LabelPlace {
    double wanted = 0;
    double height = 0;
};

/// Middles for `labels` (same order) such that none overlaps another and, as long as their heights fit, all lie in
/// [top, bottom]; displacements are as small as a least-squares fit makes them (pool adjacent violators). When the
/// heights do not fit they keep their distances and run over the bottom.
[[nodiscard]] std::vector<double> spread_labels(const std::vector<LabelPlace>& labels, double top, double bottom);

} // namespace ullage
