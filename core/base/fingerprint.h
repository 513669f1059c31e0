// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace ullage {

/// A sum over the bytes of a file, by which one is known again; it tells files apart, withstands no forger. How the bytes are cut into parts does
/// not matter. Stored in logbooks: never change what it gives.
class Fingerprint {
public:
    using Sums = std::array<std::uint64_t, 2>;

    void add(std::string_view bytes);
    /// Of all bytes added so far.
    [[nodiscard]] Sums sums() const;
    /// The same as 32 hexadecimal digits.
    [[nodiscard]] std::string text() const;

private:
    std::uint64_t sums_[2] = {0x9ae16a3b2f90404fULL, 0xc949c7defebae64fULL};
    char rest_[8] = {}; ///< bytes that do not fill a word yet
    std::size_t rest_size_ = 0;
};

} // namespace ullage
