// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_field.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace ullage {

/// The number that registers hold, first register first; absent where they are too few, or hold no finite number. Whole numbers beyond 2^53 lose
/// their last digits. IEEE 754 for f32 and f64.
[[nodiscard]] std::optional<double> number_of(std::span<const std::uint16_t> registers, const RegisterNumber& number);

/// Registers that lie together, to be asked for at once.
struct RegisterBlock {
    RegisterTable table = RegisterTable::holding;
    int address = 0, count = 0;

    bool operator==(const RegisterBlock&) const = default;
};

/// The fewest questions that bring all fields (of Modbus): a block takes in what lies at most 8 registers behind it, up to the 125 registers that
/// one question may ask for (Modbus Application Protocol V1.1b3, 6.3).
[[nodiscard]] std::vector<RegisterBlock> blocks_of(std::span<const LiveField> fields);

/// The value of a field from a block that was read; absent where the block does not hold it.
[[nodiscard]] std::optional<double> field_in(const RegisterBlock& block, std::span<const std::uint16_t> registers, const LiveField& field);

} // namespace ullage
