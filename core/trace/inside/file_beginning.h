// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room trace.
#pragma once

#include <algorithm>
#include <cstdint>
#include <istream>
#include <streambuf>
#include <vector>

namespace ullage {

/// The next bytes of a stream, up to a number of them, as a stream of their own.
class FileBeginning final : public std::streambuf {
public:
    FileBeginning(std::istream& in, std::int64_t bytes) : in_(in), left_(bytes), chunk_(std::size_t{1} << 16) {}

private:
    int_type underflow() override {
        in_.read(chunk_.data(), static_cast<std::streamsize>(std::min<std::int64_t>(left_, static_cast<std::int64_t>(chunk_.size()))));
        const std::streamsize got = std::max<std::streamsize>(in_.gcount(), 0);
        left_ -= got;
        setg(chunk_.data(), chunk_.data(), chunk_.data() + got);
        return got == 0 ? traits_type::eof() : traits_type::to_int_type(chunk_.front());
    }

    std::istream& in_;
    std::int64_t left_;
    std::vector<char> chunk_;
};

} // namespace ullage
