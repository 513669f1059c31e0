// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_random.h"

namespace ullage::test {

std::string Random::uuid() {
    static constexpr char digits[] = "0123456789abcdef";
    static constexpr char form[] = "xxxxxxxx-xxxx-4xxx-yxxx-xxxxxxxxxxxx";
    std::string text(form);
    std::uint64_t bits = 0;
    int left = 0;
    for (char& c : text) {
        if (c != 'x' && c != 'y') continue;
        if (left == 0) {
            bits = engine_();
            left = 16;
        }
        const unsigned nibble = static_cast<unsigned>(bits & 0xF);
        bits >>= 4;
        --left;
        c = c == 'x' ? digits[nibble] : digits[8 + (nibble & 0x3)];
    }
    return text;
}

} // namespace ullage::test
