// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"

#include <array>
#include <cstdint>
#include <optional>

namespace ullage {

/// What came from a source, and when. `steady_ms` counts on whatever is done to the machine's clock, also while the machine sleeps.
struct Arrival {
    TraceSample values; ///< its time is of no meaning
    UtcMs wall_ms = 0;  ///< by the machine's clock
    std::int64_t steady_ms = 0;
    bool retained = false; ///< a value that the broker had kept: nobody knows how old it is
};

/// What was left out of what came, and what happened to the clock.
struct GateTally {
    long taken = 0;
    long nonsense = 0; ///< no value within what a meter can say, or a register that jumped away and back
    long retained = 0;
    long too_fast = 0;       ///< the same quantities again within 20 ms: a duplicate, or more than any run needs
    long behind = 0;         ///< not later than what the run holds already: the machine's clock was set back before the program started
    UtcMs clock_step_ms = 0; ///< how far the machine's clock has been set since the first sample

    [[nodiscard]] long left_out() const { return nonsense + retained + too_fast + behind; }
    bool operator==(const GateTally&) const = default;
};

/// Whether a sample holds any value, of a meter or of the unit.
[[nodiscard]] bool says_anything(const TraceSample& sample);

/// Lets through what a meter can have said, each sample later than the one before; it makes none up. Times are those of the machine's clock at the
/// first sample, counted on by the steady clock, so that a clock that is set in the night moves nothing. A register that falls is left out
/// until the next one goes on from there (a restart, a meter set to 0), one that rises faster than 20 kW would until it has gone on for a minute
/// (another meter); one that is back on the old path shows that it was none. A power beyond 1 MW is none, nor is a gauge beyond 0 to 100 %.
class SampleGate {
public:
    static constexpr int least_interval_ms = 20;

    /// `last`: the last sample that the run holds already.
    explicit SampleGate(std::optional<TraceSample> last = std::nullopt);

    /// What may be recorded of it; absent where that is nothing.
    [[nodiscard]] std::optional<TraceSample> take(const Arrival& arrival);
    [[nodiscard]] const GateTally& tally() const { return tally_; }
    /// The time that a sample would have now; absent before the first.
    [[nodiscard]] std::optional<UtcMs> time_at(std::int64_t steady_ms) const;

private:
    struct Anchor {
        UtcMs wall_ms;
        std::int64_t steady_ms;
    };
    struct Register {
        double wh;
        UtcMs time_ms;
    };
    struct Doubted {
        Register last;
        UtcMs since_ms;
    };
    [[nodiscard]] bool is_duplicate(const TraceSample& sample) const;
    void judge_register(TraceSample& sample);

    std::optional<Anchor> anchor_;
    std::optional<UtcMs> last_ms_;
    std::array<std::optional<UtcMs>, 6> last_of_role_ms_{};
    std::optional<Register> register_; ///< the last that was let through
    std::optional<Doubted> doubted_;   ///< those since that were left out
    GateTally tally_;
};

} // namespace ullage
