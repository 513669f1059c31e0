// SPDX-License-Identifier: GPL-3.0-or-later
#include "support_qt/machine_pace.h"

#include <algorithm>
#include <ctime>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

constexpr double usual_ms = 22; ///< of fixed_work() there
constexpr int tries = 3;

double processor_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

std::size_t fixed_work() {
    std::mt19937 random(1);
    std::vector<std::string> words;
    for (int i = 0; i < 60'000; ++i) words.push_back("unit " + std::to_string(random()) + " of a long name");
    std::ranges::sort(words);
    std::map<std::string, int> counts;
    for (const std::string& word : words) ++counts[word];
    return counts.size();
}

} // namespace

double machine_pace() {
    double least_ms = 1e9;
    for (int i = 0; i < tries; ++i) {
        const double from_ms = processor_ms();
        if (fixed_work() == 0) return 1;
        least_ms = std::min(least_ms, processor_ms() - from_ms);
    }
    return std::clamp(least_ms / usual_ms, 1.0, 4.0);
}

} // namespace ullage::test
