// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"

#include <QWidget>

#include <string>
#include <vector>

class QVBoxLayout;

namespace ullage {

class LogFollower;

/// The logs of a run, a line each: what was read, whether it is followed, and what can be done with it.
class LogList final : public QWidget {
    Q_OBJECT
public:
    explicit LogList(QWidget* parent = nullptr);

    /// `follower` may be null: then none can be followed. Logs of a run that has ended can no longer be begun to be followed.
    void setLogs(const std::vector<Trace>& traces, const std::string& zone, bool running, const LogFollower* follower);

signals:
    void withdrawAsked(int place);
    void followAsked(const TraceId& trace_uuid);
    void stopAsked(const TraceId& trace_uuid);

private:
    QVBoxLayout* lines_;
};

} // namespace ullage
