// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/modbus_values.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <string>

namespace ullage {

namespace {

constexpr int most_registers = 125;
constexpr int bridged_registers = 8;

int address_of(const LiveField& field) { return std::stoi(field.place); }
int end_of(const LiveField& field) { return address_of(field) + static_cast<int>(registers_of(field.number.type)); }

} // namespace

std::optional<double> number_of(std::span<const std::uint16_t> registers, const RegisterNumber& number) {
    using Type = RegisterNumber::Type;
    const std::size_t count = registers_of(number.type);
    if (registers.size() < count) return std::nullopt;
    std::uint64_t bits = 0;
    for (std::size_t i = 0; i < count; ++i) {
        std::uint16_t word = registers[number.words_swapped ? count - 1 - i : i];
        if (number.bytes_swapped) word = static_cast<std::uint16_t>((word >> 8U) | (word << 8U));
        bits = (bits << 16U) | word;
    }
    double value = 0;
    switch (number.type) {
    case Type::u16:
    case Type::u32:
    case Type::u64: value = static_cast<double>(bits); break;
    case Type::s16: value = static_cast<std::int16_t>(bits); break;
    case Type::s32: value = static_cast<std::int32_t>(bits); break;
    case Type::s64: value = static_cast<double>(static_cast<std::int64_t>(bits)); break;
    case Type::f32: value = static_cast<double>(std::bit_cast<float>(static_cast<std::uint32_t>(bits))); break;
    case Type::f64: value = std::bit_cast<double>(bits); break;
    }
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

std::vector<RegisterBlock> blocks_of(std::span<const LiveField> fields) {
    std::vector<const LiveField*> sorted;
    for (const LiveField& field : fields) sorted.push_back(&field);
    std::ranges::sort(
        sorted, [](const LiveField* a, const LiveField* b) { return a->table != b->table ? a->table < b->table : address_of(*a) < address_of(*b); });
    std::vector<RegisterBlock> blocks;
    for (const LiveField* field : sorted) {
        const int address = address_of(*field), end = end_of(*field);
        if (!blocks.empty()) {
            RegisterBlock& last = blocks.back();
            const bool near = address <= last.address + last.count + bridged_registers;
            if (last.table == field->table && near && std::max(end - last.address, last.count) <= most_registers) {
                last.count = std::max(last.count, end - last.address);
                continue;
            }
        }
        blocks.push_back({field->table, address, end - address});
    }
    return blocks;
}

std::optional<double> field_in(const RegisterBlock& block, std::span<const std::uint16_t> registers, const LiveField& field) {
    const int from = address_of(field) - block.address;
    if (field.table != block.table || from < 0 || end_of(field) > block.address + block.count || static_cast<std::size_t>(from) > registers.size())
        return std::nullopt;
    const auto raw = number_of(registers.subspan(static_cast<std::size_t>(from)), field.number);
    return raw ? field.value_of(*raw) : std::nullopt;
}

} // namespace ullage
