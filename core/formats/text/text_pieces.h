// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace ullage {

/// Takes the next piece of a text; false when it can take no more.
using TextTaker = std::function<bool(std::string_view piece)>;

/// A long text on its way to who takes it, of which little is in memory.
class TextPieces {
public:
    explicit TextPieces(const TextTaker& take) : take_(take) {}

    /// What comes next is appended here.
    [[nodiscard]] std::string& text() { return text_; }

    /// Gives the text away once there is enough of it. False, here and below, when the taker could take no more: what follows is then not asked for.
    bool pass_on() { return text_.size() < enough ? good_ : finish(); }

    /// Gives away what is left.
    bool finish() {
        good_ = good_ && (text_.empty() || take_(text_));
        text_.clear();
        return good_;
    }

private:
    static constexpr std::size_t enough = 64 * 1024;
    const TextTaker& take_;
    std::string text_;
    bool good_ = true;
};

} // namespace ullage
