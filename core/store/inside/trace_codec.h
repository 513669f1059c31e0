// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store: a block of samples as bytes.
#pragma once

#include "model/trace.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::store {

/// Samples in a block; the last one of a trace may have fewer.
inline constexpr std::size_t block_samples = 4096;

/// Number of samples; times as differences of differences; then for register, power, voltage and current each: a byte for the form (0 absent,
/// 1 decimal, 2 raw; + 4 where some samples lack it, followed by a bit for each sample), for `decimal` the number of decimals in a byte and the
/// values in units of the last decimal as differences, for `raw` eight bytes each, little-endian. Differences are zigzag integers of 7 bits a byte. A
/// column is decimal where every value is the double next to an integer / 10^d, d up to 6, so that nothing is lost. Where a sample of the block has a
/// gauge or an output power, columns of these two follow in the same form. The format stands in files: never change it.
[[nodiscard]] std::string encoded(std::span<const TraceSample> samples);

/// The inverse, appended to `samples`; false, with nothing usable in `samples`, where the bytes are none.
[[nodiscard]] bool decode(std::string_view bytes, std::vector<TraceSample>& samples);

} // namespace ullage::store
