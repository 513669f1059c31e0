// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/fingerprint.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <cstring>

namespace ullage {
namespace {

/// Multiply and fold.
void mix(std::uint64_t (&sums)[2], std::uint64_t word) {
    sums[0] = std::rotl(sums[0] ^ word, 29) * 0x9E3779B97F4A7C15ULL;
    sums[1] = (sums[1] + word) * 0xC2B2AE3D27D4EB4FULL;
    sums[1] ^= sums[1] >> 31;
}

std::uint64_t word_at(const char* bytes) {
    std::uint64_t word = 0;
    std::memcpy(&word, bytes, 8);
    if constexpr (std::endian::native == std::endian::big) word = __builtin_bswap64(word);
    return word;
}

} // namespace

void Fingerprint::add(std::string_view bytes) {
    if (rest_size_ > 0) {
        const std::size_t taken = std::min(sizeof rest_ - rest_size_, bytes.size());
        std::memcpy(rest_ + rest_size_, bytes.data(), taken);
        rest_size_ += taken;
        bytes.remove_prefix(taken);
        if (rest_size_ < sizeof rest_) return;
        mix(sums_, word_at(rest_));
        rest_size_ = 0;
    }
    for (; bytes.size() >= 8; bytes.remove_prefix(8)) mix(sums_, word_at(bytes.data()));
    std::copy(bytes.begin(), bytes.end(), rest_);
    rest_size_ = bytes.size();
}

Fingerprint::Sums Fingerprint::sums() const {
    std::uint64_t sums[2] = {sums_[0], sums_[1]};
    std::uint64_t rest = rest_size_;
    for (std::size_t i = 0; i < rest_size_; ++i) rest = rest << 8 | static_cast<unsigned char>(rest_[i]);
    if (rest != 0) mix(sums, rest);
    return {sums[0], sums[1]};
}

std::string Fingerprint::text() const {
    const auto [first, second] = sums();
    return fmt::format("{:016x}{:016x}", first, second);
}

} // namespace ullage
