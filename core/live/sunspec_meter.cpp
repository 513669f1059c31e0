// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/sunspec_meter.h"

#include <cmath>

namespace ullage {

namespace {

constexpr int bases[] = {40'000, 50'000, 0};
constexpr std::uint16_t marker_first = 0x5375, marker_second = 0x6e53; // "Su", "nS"
constexpr std::uint16_t end_model = 0xffff, no_integer = 0x8000;
constexpr int most_models = 200;                               // a chain that never ends is none
constexpr int integer_registers = 55, floating_registers = 70; // as far as the last point that is taken

std::optional<double> scaled_integer(std::span<const std::uint16_t> block, std::size_t at, std::size_t exponent_at) {
    const std::uint16_t raw = block[at], exponent = block[exponent_at];
    if (raw == no_integer || exponent == no_integer) return std::nullopt;
    const int power = static_cast<std::int16_t>(exponent);
    if (std::abs(power) > 10) return std::nullopt; // sunssf: -10 to 10
    const double scale = std::pow(10.0, std::abs(power));
    const double value = static_cast<std::int16_t>(raw);
    return power < 0 ? value / scale : value * scale;
}

std::optional<double> scaled_counter(std::span<const std::uint16_t> block, std::size_t at, std::size_t exponent_at) {
    const std::uint16_t exponent = block[exponent_at];
    if (exponent == no_integer) return std::nullopt;
    const int power = static_cast<std::int16_t>(exponent);
    if (std::abs(power) > 10) return std::nullopt;
    const double scale = std::pow(10.0, std::abs(power));
    const auto value = number_of(block.subspan(at), {RegisterNumber::Type::u32});
    return power < 0 ? *value / scale : *value * scale;
}

std::optional<double> floating(std::span<const std::uint16_t> block, std::size_t at) {
    return number_of(block.subspan(at), {RegisterNumber::Type::f32});
}

} // namespace

std::optional<RegisterBlock> SunspecMeter::next() const {
    switch (step_) {
    case Step::marker: return RegisterBlock{RegisterTable::holding, bases[base_], 2};
    case Step::head: return RegisterBlock{RegisterTable::holding, at_, 2};
    case Step::found: return block();
    case Step::none: break;
    }
    return std::nullopt;
}

void SunspecMeter::take(std::span<const std::uint16_t> registers) {
    if (step_ == Step::found || step_ == Step::none) return;
    const bool whole = registers.size() >= 2;
    if (step_ == Step::marker) {
        if (whole && registers[0] == marker_first && registers[1] == marker_second) {
            step_ = Step::head;
            at_ = bases[base_] + 2;
        } else if (++base_ == std::size(bases)) {
            step_ = Step::none;
        }
        return;
    }
    if (!whole || registers[0] == end_model || ++seen_ > most_models) {
        step_ = Step::none;
        return;
    }
    const int model = registers[0];
    if ((model >= 201 && model <= 204) || (model >= 211 && model <= 214)) {
        model_ = model;
        step_ = Step::found;
        return;
    }
    at_ += 2 + registers[1];
    if (at_ > 65'533) step_ = Step::none;
}

RegisterBlock SunspecMeter::block() const { return {RegisterTable::holding, at_, model_.value_or(0) > 210 ? floating_registers : integer_registers}; }

TraceSample SunspecMeter::sample(std::span<const std::uint16_t> block) const {
    TraceSample sample;
    // A device that has changed meanwhile holds another model here.
    if (block.size() < static_cast<std::size_t>(this->block().count) || block[0] != model_) return sample;
    const bool exported = direction_ == EnergyDirection::exported;
    if (*model_ > 210) {
        sample.current_a = floating(block, 2);
        sample.voltage_v = floating(block, 10);
        sample.power_w = floating(block, 28);
        sample.register_wh = floating(block, exported ? 60 : 68);
    } else {
        sample.current_a = scaled_integer(block, 2, 6);
        sample.voltage_v = scaled_integer(block, 7, 15);
        sample.power_w = scaled_integer(block, 18, 22);
        sample.register_wh = scaled_counter(block, exported ? 38 : 46, 54);
    }
    if (sample.power_w && exported) sample.power_w = -*sample.power_w + 0.0;
    return sample;
}

} // namespace ullage
