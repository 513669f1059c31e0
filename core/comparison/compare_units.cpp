// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/comparison.h"

#include <algorithm>
#include <exception>
#include <mutex>
#include <thread>
#include <utility>

namespace ullage {

std::vector<std::optional<ComparedUnit>> compare_units(const std::vector<UnitRuns>& units, CompareRows rows, const MeasureOptions& options,
                                                       const std::stop_token& stop, std::atomic<std::size_t>* done) {
    std::vector<std::optional<ComparedUnit>> compared(units.size());
    std::atomic<std::size_t> next{0};
    std::mutex trouble_door;
    std::exception_ptr trouble;
    // Each unit is written to a place of its own, so the order in which workers take them cannot show.
    const auto work = [&] {
        try {
            for (std::size_t i = next++; i < units.size() && !stop.stop_requested(); i = next++) {
                compared[i] = compare_unit(units[i], rows, options);
                if (done != nullptr) ++*done;
            }
        } catch (...) {
            const std::lock_guard door(trouble_door);
            trouble = std::current_exception();
        }
    };
    {
        const std::size_t processors = std::max(1u, std::thread::hardware_concurrency());
        std::vector<std::jthread> others;
        for (std::size_t k = 1; k < std::min(processors, units.size()); ++k) others.emplace_back(work);
        work();
    }
    if (trouble) std::rethrow_exception(trouble);
    return compared;
}

} // namespace ullage
