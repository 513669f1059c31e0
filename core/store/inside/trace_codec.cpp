// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/trace_codec.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace ullage::store {

namespace {

using Column = std::optional<double> TraceSample::*;
constexpr std::array<Column, 4> columns = {&TraceSample::register_wh, &TraceSample::power_w, &TraceSample::voltage_v, &TraceSample::current_a};
/// Of what the unit says of itself; they follow where a block has some of it.
constexpr std::array<Column, 2> later_columns = {&TraceSample::gauge_percent, &TraceSample::output_w};
constexpr std::array<double, 7> powers = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
constexpr double largest_integer = 9e15;
constexpr std::uint8_t absent = 0, decimal = 1, raw = 2, partial = 4;

void put_integer(std::string& bytes, std::uint64_t value) {
    while (value >= 0x80) {
        bytes += static_cast<char>(value | 0x80);
        value >>= 7;
    }
    bytes += static_cast<char>(value);
}

/// Differences are taken modulo 2^64: no pair of values overflows.
void put_difference(std::string& bytes, std::uint64_t difference) {
    const auto sign = static_cast<std::uint64_t>(static_cast<std::int64_t>(difference) >> 63);
    put_integer(bytes, (difference << 1) ^ sign);
}

class Bytes {
public:
    explicit Bytes(std::string_view bytes) : at_(bytes.data()), end_(bytes.data() + bytes.size()) {}

    std::uint64_t integer() {
        if (at_ != end_ && static_cast<unsigned char>(*at_) < 0x80) return static_cast<unsigned char>(*at_++);
        std::uint64_t value = 0;
        for (int shift = 0; shift < 64; shift += 7) {
            const std::uint8_t byte = this->byte();
            value |= static_cast<std::uint64_t>(byte & 0x7F) << shift;
            if (byte < 0x80) return value;
        }
        sound_ = false;
        return 0;
    }
    std::uint64_t difference() {
        const std::uint64_t value = integer();
        return (value >> 1) ^ (~(value & 1) + 1);
    }
    std::uint8_t byte() {
        if (at_ == end_) {
            sound_ = false;
            return 0;
        }
        return static_cast<std::uint8_t>(*at_++);
    }
    std::string_view take(std::size_t count) {
        if (static_cast<std::size_t>(end_ - at_) < count) {
            sound_ = false;
            return {};
        }
        at_ += count;
        return {at_ - count, count};
    }
    [[nodiscard]] bool sound() const { return sound_; }
    [[nodiscard]] bool at_end() const { return at_ == end_; }

private:
    const char* at_;
    const char* end_;
    bool sound_ = true;
};

bool fits(double value, std::size_t decimals) {
    const double scaled = std::round(value * powers[decimals]);
    return std::abs(scaled) < largest_integer && scaled / powers[decimals] == value && !(value == 0 && std::signbit(value));
}

/// Decimals that hold every value of the column exactly; absent where there are none.
std::optional<std::size_t> decimals_of(std::span<const TraceSample> samples, Column column) {
    std::size_t decimals = 0;
    for (const TraceSample& sample : samples) {
        if (!(sample.*column)) continue;
        while (!fits(*(sample.*column), decimals))
            if (++decimals == powers.size()) return std::nullopt;
    }
    // What fits few decimals need not fit more where numbers are large.
    for (const TraceSample& sample : samples)
        if (sample.*column && !fits(*(sample.*column), decimals)) return std::nullopt;
    return decimals;
}

void put_column(std::string& bytes, std::span<const TraceSample> samples, Column column) {
    std::size_t present = 0;
    for (const TraceSample& sample : samples) present += (sample.*column) ? 1 : 0;
    if (present == 0) {
        bytes += static_cast<char>(absent);
        return;
    }
    const auto decimals = decimals_of(samples, column);
    const bool some_lack = present < samples.size();
    bytes += static_cast<char>((decimals ? decimal : raw) | (some_lack ? partial : 0));
    if (some_lack) {
        std::string bits((samples.size() + 7) / 8, '\0');
        for (std::size_t i = 0; i < samples.size(); ++i)
            if (samples[i].*column) bits[i / 8] = static_cast<char>(bits[i / 8] | 1 << (i % 8));
        bytes += bits;
    }
    if (decimals) bytes += static_cast<char>(*decimals);
    std::uint64_t before = 0;
    for (const TraceSample& sample : samples) {
        if (!(sample.*column)) continue;
        if (decimals) {
            const auto value = static_cast<std::uint64_t>(static_cast<std::int64_t>(std::round(*(sample.*column) * powers[*decimals])));
            put_difference(bytes, value - before);
            before = value;
        } else {
            const auto word = std::bit_cast<std::uint64_t>(*(sample.*column));
            for (int shift = 0; shift < 64; shift += 8) bytes += static_cast<char>(word >> shift);
        }
    }
}

bool take_column(Bytes& bytes, std::span<TraceSample> samples, Column column) {
    const std::uint8_t form = bytes.byte();
    if (form == absent) return bytes.sound();
    const bool some_lack = (form & partial) != 0;
    const std::uint8_t sort = form & static_cast<std::uint8_t>(~partial);
    if (sort != decimal && sort != raw) return false;
    const std::string_view bits = some_lack ? bytes.take((samples.size() + 7) / 8) : std::string_view();
    const std::uint8_t decimals = sort == decimal ? bytes.byte() : 0;
    if (!bytes.sound() || decimals >= powers.size()) return false;
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (some_lack && (bits[i / 8] >> (i % 8) & 1) == 0) continue;
        if (sort == decimal) {
            value += bytes.difference();
            samples[i].*column = static_cast<double>(static_cast<std::int64_t>(value)) / powers[decimals];
        } else {
            const std::string_view word = bytes.take(8);
            if (!bytes.sound()) return false;
            std::uint64_t bits_of_value = 0;
            for (std::size_t b = 8; b-- > 0;) bits_of_value = bits_of_value << 8 | static_cast<std::uint8_t>(word[b]);
            const auto number = std::bit_cast<double>(bits_of_value);
            if (!std::isfinite(number)) return false;
            samples[i].*column = number;
        }
    }
    return bytes.sound();
}

} // namespace

std::string encoded(std::span<const TraceSample> samples) {
    std::string bytes;
    bytes.reserve(samples.size() * 8);
    put_integer(bytes, samples.size());
    std::uint64_t before = 0, step = 0;
    for (const TraceSample& sample : samples) {
        const auto time = static_cast<std::uint64_t>(sample.time_ms);
        put_difference(bytes, time - before - step);
        step = time - before;
        before = time;
    }
    for (const Column column : columns) put_column(bytes, samples, column);
    const auto has_later = [](const TraceSample& sample) { return sample.gauge_percent || sample.output_w; };
    if (std::ranges::any_of(samples, has_later))
        for (const Column column : later_columns) put_column(bytes, samples, column);
    return bytes;
}

bool decode(std::string_view content, std::vector<TraceSample>& samples) {
    Bytes bytes(content);
    const std::uint64_t count = bytes.integer();
    if (count == 0 || count > block_samples) return false;
    const std::size_t from = samples.size();
    samples.resize(from + count);
    const std::span<TraceSample> block(samples.data() + from, count);
    std::uint64_t time = 0, step = 0;
    for (TraceSample& sample : block) {
        step += bytes.difference();
        time += step;
        sample.time_ms = static_cast<UtcMs>(time);
    }
    for (const Column column : columns)
        if (!take_column(bytes, block, column)) return false;
    if (bytes.sound() && !bytes.at_end())
        for (const Column column : later_columns)
            if (!take_column(bytes, block, column)) return false;
    return bytes.sound() && bytes.at_end();
}

} // namespace ullage::store
