// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/label_layout.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

namespace ullage {

std::vector<double> spread_labels(const std::vector<LabelPlace>& labels, double top, double bottom) {
    std::vector<std::size_t> order(labels.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return labels[a].wanted < labels[b].wanted; });

    // Pool: labels stacked without gaps. `start` is where the stack's upper edge would like to be: the mean over its
    // labels of (wanted upper edge - offset within the stack).
    struct Pool {
        double start = 0;
        double height = 0;
        std::size_t count = 0;
    };
    const double total = std::accumulate(labels.begin(), labels.end(), 0.0, [](double sum, const LabelPlace& label) { return sum + label.height; });
    const auto clamped = [&](double start, double height) { return total > bottom - top ? start : std::clamp(start, top, bottom - height); };
    std::vector<Pool> pools;
    for (const std::size_t n : order) {
        Pool pool{labels[n].wanted - labels[n].height / 2, labels[n].height, 1};
        while (!pools.empty() && clamped(pools.back().start, pools.back().height) + pools.back().height > clamped(pool.start, pool.height)) {
            const Pool& above = pools.back();
            const auto both = static_cast<double>(above.count + pool.count);
            pool.start = (above.start * static_cast<double>(above.count) + (pool.start - above.height) * static_cast<double>(pool.count)) / both;
            pool.height += above.height;
            pool.count += above.count;
            pools.pop_back();
        }
        pools.push_back(pool);
    }

    std::vector<double> middles(labels.size());
    std::size_t next = 0;
    double edge = top;
    for (const Pool& pool : pools) {
        double at = total > bottom - top ? edge : clamped(pool.start, pool.height);
        for (std::size_t n = 0; n < pool.count; ++n, ++next) {
            const double height = labels[order[next]].height;
            middles[order[next]] = at + height / 2;
            at += height;
        }
        edge = at;
    }
    return middles;
}

} // namespace ullage
