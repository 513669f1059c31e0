// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/readout.h"

#include "live/payload_number.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr char stx = '\x02', etx = '\x03';

/// 1-0:1.8.0*255 is 1.8.0 of medium 1, channel 0; what the standard calls the reduced identifier lacks medium, channel and `*`.
std::string_view reduced(std::string_view code) {
    if (const auto colon = code.find(':'); colon != std::string_view::npos) code.remove_prefix(colon + 1);
    return code.substr(0, code.find('*'));
}

bool same_code(std::string_view wanted, std::string_view given) {
    if (wanted == given) return true;
    return wanted.find(':') == std::string_view::npos && reduced(wanted) == reduced(given);
}

} // namespace

std::optional<ReadoutIdentification> identification_in(std::string_view line) {
    while (!line.empty() && (line.back() == '\r' || line.back() == '\n')) line.remove_suffix(1);
    if (line.size() < 5 || line[0] != '/' || line[1] == '?') return std::nullopt;
    ReadoutIdentification found;
    const char sign = line[4];
    constexpr int speeds[] = {300, 600, 1200, 2400, 4800, 9600, 19'200};
    found.speed_sign = sign;
    if (sign >= '0' && sign <= '6') {
        found.mode = 'C';
        found.baud = speeds[sign - '0'];
    } else if (sign >= 'A' && sign <= 'F') {
        found.mode = 'B';
        found.baud = speeds[sign - 'A' + 1];
    }
    return found;
}

std::string acknowledgement(const ReadoutIdentification& identification) { return {'\x06', '0', identification.speed_sign, '0', '\r', '\n'}; }

std::uint8_t block_check(std::string_view behind_stx_to_etx) {
    std::uint8_t sum = 0;
    for (const char c : behind_stx_to_etx) sum ^= static_cast<std::uint8_t>(c) & 0x7fU;
    return sum;
}

void ReadoutBlock::clear() { *this = ReadoutBlock(); }

ReadoutBlock::State ReadoutBlock::take(std::string_view bytes) {
    for (const char byte : bytes) {
        if (state_ != State::open) return state_;
        const char c = static_cast<char>(static_cast<unsigned char>(byte) & 0x7fU);
        if (c == stx) {
            framed_ = true;
            text_.clear();
            continue;
        }
        if (text_.size() >= most_bytes) return state_ = State::too_long;
        if (framed_ && !text_.empty() && text_.back() == etx) {
            state_ = static_cast<std::uint8_t>(c) == block_check(text_) ? State::whole : State::bad_check;
            continue;
        }
        text_ += c;
        if (!framed_ && c == '\n' && (text_.ends_with("!\r\n") || text_.ends_with("!\n"))) state_ = State::whole;
    }
    return state_;
}

std::optional<double> ReadoutBlock::value(const LiveField& field) const {
    // A data set is CODE(VALUE*UNIT); several may stand in a line.
    const std::string_view text = text_;
    for (std::size_t open = text.find('('); open != std::string_view::npos; open = text.find('(', open + 1)) {
        const auto close = text.find(')', open);
        if (close == std::string_view::npos) break;
        const auto begin = text.find_last_of(")\r\n", open);
        const auto code = text.substr(begin == std::string_view::npos ? 0 : begin + 1, open - (begin == std::string_view::npos ? 0 : begin + 1));
        if (!same_code(field.place, code)) continue;
        const auto content = text.substr(open + 1, close - open - 1);
        const auto star = content.find('*');
        std::string number(content.substr(0, star));
        if (star != std::string_view::npos) number += ' ' + std::string(content.substr(star + 1));
        return number_in_text(number, field);
    }
    return std::nullopt;
}

} // namespace ullage
