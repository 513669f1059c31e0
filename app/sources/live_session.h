// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_events.h"
#include "live/sample_batch.h"
#include "live/sample_gate.h"
#include "sources/source_link.h"

#include <QObject>
#include <QTimer>

#include <cstdint>
#include <deque>
#include <functional>
#include <memory>
#include <optional>
#include <span>

namespace ullage {

/// The two clocks of a session: the machine's, and one that counts on whatever is done to that, also while the machine sleeps.
struct LiveClocks {
    std::function<UtcMs()> wall_ms;
    std::function<std::int64_t()> steady_ms;

    [[nodiscard]] static LiveClocks of_machine();
};

/// How a source stands.
struct LiveState {
    enum class Link { connecting, connected, failing };
    Link link = Link::connecting;
    QString trouble;                    ///< why it fails, or why nothing can be recorded; empty where all is well
    std::optional<TraceSample> latest;  ///< the last sample that came
    std::optional<std::int64_t> age_ms; ///< of it
    std::optional<double> per_second;   ///< samples a second over the last ten
    bool silent = false;                ///< a minute and ten usual intervals without a sample
    long taken = 0, left_out = 0, misunderstood = 0, lost = 0;
    bool clock_set = false; ///< the machine's clock has been set by more than 2 s since the first sample
};

/// Reads one live source: what comes goes through the gate, is looked through for events, and is handed on in batches that are due every 3 s or 1,000
/// samples. Without a sink it is a trial: nothing is kept.
class LiveSession final : public QObject {
    Q_OBJECT
public:
    /// Writes samples durably, with how many were left out since the last write. An error of the sort `refused` ends the session; any other is tried
    /// again in 3 s.
    using Sink = std::function<Result<void>(std::span<const TraceSample> samples, long left_out)>;

    LiveSession(std::unique_ptr<SourceLink> link, LiveClocks clocks, QObject* parent = nullptr);
    ~LiveSession() override;

    /// Before start(): where samples go, and what the run holds already. Samples in `known` that the detector has seen give no events again.
    void recordInto(Sink sink, const std::optional<TraceSample>& last, std::optional<double> step_wh);
    /// The detector goes on from what the run says already.
    void setDetector(EventDetector detector);
    void start();
    /// Writes what is left and ends. Error: it could not be written.
    Result<void> stop();

    [[nodiscard]] LiveState state() const;
    /// Power, else register, of the last two minutes, for a strip: time by the samples' clock and value.
    [[nodiscard]] const std::deque<TraceSample>& recent() const { return recent_; }
    [[nodiscard]] const QString& found() const { return link_->found(); }

signals:
    void sampled(const ullage::TraceSample& sample);
    void eventFound(const ullage::LiveEvent& event);
    void written(); ///< samples have reached the disk
    /// Connection, silence or trouble have changed.
    void stateChanged();
    /// The session has ended by itself.
    void ended(const QString& why);

private:
    void take(const TraceSample& values, bool retained);
    void tick();
    Result<void> flush();
    void tellEvents();

    std::unique_ptr<SourceLink> link_;
    LiveClocks clocks_;
    Sink sink_;
    SampleGate gate_;
    SampleBatch batch_;
    EventDetector detector_;
    QTimer tick_timer_;
    LiveState state_;
    std::deque<TraceSample> recent_;
    std::deque<std::int64_t> arrivals_;
    std::optional<std::int64_t> last_steady_ms_;
    long left_out_written_ = 0;
    bool write_failed_ = false;
};

} // namespace ullage
