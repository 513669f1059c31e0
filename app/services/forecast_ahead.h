// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casebook/casebook.h"

#include <QObject>

#include <thread>

namespace ullage {

/// Works out the forecast of a run, and what all runs say of how drains repeat, in a thread of its own, so that the casebook has both when they are
/// asked for. Lives in the GUI thread.
class ForecastAhead final : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// Begins; nothing where it is at work already. The casebook must outlive it.
    void start(const Casebook& casebook, const RunId& run_uuid);

signals:
    void done();

private:
    bool working_ = false;
    std::jthread thread_; ///< its end is waited for
};

} // namespace ullage
