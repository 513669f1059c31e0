// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/modbus_values.h"
#include "model/trace.h"

#include <cstdint>
#include <optional>
#include <span>

namespace ullage {

/// Which of a meter's two energies is taken: what flowed into its circuit, or out of it.
enum class EnergyDirection { imported, exported };

/// What to ask of a device that is found by the marker "SunS" (SunSpec Device Information Model Specification): next() says which registers are
/// wanted, take() what they held. The map begins at holding register 40000, 50000 or 0 with the marker and goes on with models, each with its
/// number and its length; the model 65535 ends it. Meter models 201 to 204 hold whole numbers with powers of ten of their own, 211 to 214 floating
/// point. Offsets from the first of the two registers of the model's head, as the published models add up (SunSpec Alliance, model definitions,
/// model_203.json and model_213.json; the tests add up their points):
///
/// | quantity | 201 to 204 | power of ten | 211 to 214 |
/// | current A | 2 | 6 | 2 |
/// | voltage line to neutral, mean | 7 | 15 | 10 |
/// | power W | 18 | 22 | 28 |
/// | energy exported Wh | 38 | 54 | 60 |
/// | energy imported Wh | 46 | 54 | 68 |
class SunspecMeter {
public:
    explicit SunspecMeter(EnergyDirection direction) : direction_(direction) {}

    /// What to read now. Absent: the device has no such meter; see found().
    [[nodiscard]] std::optional<RegisterBlock> next() const;
    /// What was read; empty where the device refused these registers.
    void take(std::span<const std::uint16_t> registers);
    /// The number of the meter's model, once it is known.
    [[nodiscard]] std::optional<int> found() const { return model_; }
    /// Where it stands, once found: this block is to be read each time.
    [[nodiscard]] RegisterBlock block() const;
    /// What such a block says; a point that the meter does not have (0x8000, NaN) is absent. A sign that says the direction is taken off the power.
    [[nodiscard]] TraceSample sample(std::span<const std::uint16_t> block) const;

private:
    enum class Step { marker, head, found, none };
    Step step_ = Step::marker;
    EnergyDirection direction_;
    std::size_t base_ = 0;
    int at_ = 0, seen_ = 0;
    std::optional<int> model_;
};

} // namespace ullage
