// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/forecast_ahead.h"

#include <utility>

namespace ullage {

void ForecastAhead::start(const Casebook& casebook, const RunId& run_uuid) {
    if (std::exchange(working_, true)) return;
    thread_ = std::jthread([this, &casebook, run_uuid] {
        // Not every forecast asks what all runs say; whoever waits for that would begin again and again.
        (void)casebook.options();
        (void)casebook.forecast_at_last_reading(run_uuid);
        QMetaObject::invokeMethod(
            this,
            [this] {
                working_ = false;
                emit done();
            },
            Qt::QueuedConnection);
    });
}

} // namespace ullage
