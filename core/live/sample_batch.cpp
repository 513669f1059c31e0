// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/sample_batch.h"

#include <algorithm>

namespace ullage {

void SampleBatch::add(const TraceSample& sample, std::int64_t steady_ms) {
    if (samples_.empty()) since_ms_ = steady_ms;
    samples_.push_back(sample);
    if (samples_.size() <= most_samples) return;
    samples_.pop_front();
    ++lost_;
}

bool SampleBatch::due(std::int64_t steady_ms) const {
    if (samples_.empty()) return false;
    return steady_ms - since_ms_ >= due_after_ms || (!waits_ && samples_.size() >= due_samples);
}

void SampleBatch::written(std::size_t count, std::int64_t steady_ms) {
    samples_.erase(samples_.begin(), samples_.begin() + static_cast<std::ptrdiff_t>(std::min(count, samples_.size())));
    since_ms_ = steady_ms;
    waits_ = false;
}

void SampleBatch::put_off(std::int64_t steady_ms) {
    since_ms_ = steady_ms;
    waits_ = true;
}

} // namespace ullage
