// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/mqtt_packets.h"

#include <algorithm>
#include <cstdint>

namespace ullage {

namespace {

// Kinds of packets, the upper half of the first byte (2.2.1); the lower half of SUBSCRIBE is fixed (3.8.1).
constexpr unsigned connack = 2, publish = 3, suback = 9, pingresp = 13;
constexpr char connect_byte = '\x10', subscribe_byte = '\x82';
constexpr unsigned user_flag = 0x80, password_flag = 0x40, clean_session_flag = 0x02;
constexpr char protocol_level = 4;
constexpr unsigned topic_refused = 0x80;
constexpr std::size_t most_length_bytes = 4;

unsigned byte_at(std::string_view bytes, std::size_t at) { return static_cast<std::uint8_t>(bytes[at]); }

std::string two_bytes(std::size_t number) { return {static_cast<char>(number >> 8U & 0xffU), static_cast<char>(number & 0xffU)}; }

std::string with_length(std::string_view text) { return two_bytes(text.size()).append(text); }

/// The length of what follows, seven bits a byte, the lowest first (2.2.3).
std::string packet(char first, std::string_view rest) {
    std::string bytes(1, first);
    for (std::size_t left = rest.size(); bytes.size() == 1 || left > 0; left >>= 7U)
        bytes += static_cast<char>((left & 0x7fU) | (left > 0x7fU ? 0x80U : 0U));
    return bytes.append(rest);
}

/// Known by its first byte, so that what is no broker is known before as much has come as its bytes seem to announce.
bool may_come(unsigned first) {
    constexpr unsigned quality_bits = 0x06;
    if (first >> 4U == publish) return (first & quality_bits) == 0; // at no higher quality than was asked for (3.8.4)
    return first == connack << 4U || first == suback << 4U || first == pingresp << 4U;
}

std::optional<MqttPacket> message_in(unsigned first, std::string_view body) {
    constexpr unsigned retained_bit = 0x01;
    if (body.size() < 2) return std::nullopt;
    const std::size_t topic_bytes = byte_at(body, 0) << 8U | byte_at(body, 1);
    if (body.size() < 2 + topic_bytes) return std::nullopt;
    MqttPacket message;
    message.kind = MqttPacket::Kind::message;
    message.topic = body.substr(2, topic_bytes);
    message.payload = body.substr(2 + topic_bytes);
    message.retained = (first & retained_bit) != 0;
    return message;
}

/// Absent where the bytes are not as such a packet has them. Precondition: may_come.
std::optional<MqttPacket> packet_in(unsigned first, std::string_view body) {
    MqttPacket packet;
    switch (first >> 4U) {
    case connack:
        if (body.size() != 2) return std::nullopt;
        packet.kind = MqttPacket::Kind::connected;
        packet.refusal = static_cast<int>(byte_at(body, 1));
        return packet;
    case suback:
        if (body.size() < 3) return std::nullopt;
        packet.kind = MqttPacket::Kind::subscribed;
        packet.given = std::ranges::any_of(body.substr(2), [](char code) { return static_cast<std::uint8_t>(code) < topic_refused; });
        return packet;
    case publish: return message_in(first, body);
    default:
        if (!body.empty()) return std::nullopt;
        return packet;
    }
}

} // namespace

std::string mqtt_connect(std::string_view user, std::string_view password, int keep_alive_s) {
    unsigned flags = clean_session_flag;
    std::string payload = with_length({}); // the name: the broker gives one (3.1.3.1)
    if (!user.empty()) {
        flags |= user_flag;
        payload += with_length(user);
        if (!password.empty()) {
            flags |= password_flag;
            payload += with_length(password);
        }
    }
    return packet(connect_byte,
                  with_length("MQTT") + protocol_level + static_cast<char>(flags) + two_bytes(static_cast<std::size_t>(keep_alive_s)) + payload);
}

std::string mqtt_subscribe(const std::vector<std::string>& topics) {
    std::string body = two_bytes(1); // the identifier of the packet; no other waits for an answer
    for (const std::string& topic : topics) body += with_length(topic) + '\0';
    return packet(subscribe_byte, body);
}

std::optional<MqttPacket> MqttCutter::next() {
    if (state_ != State::open) return std::nullopt;
    const std::string_view left = std::string_view(bytes_).substr(read_);
    if (!left.empty() && !may_come(byte_at(left, 0))) {
        state_ = State::broken;
        return std::nullopt;
    }
    std::size_t head = 1, length = 0;
    for (bool more = true; more; ++head) {
        if (head > most_length_bytes) {
            state_ = State::broken;
            return std::nullopt;
        }
        if (left.size() <= head) {
            bytes_.erase(0, read_);
            read_ = 0;
            return std::nullopt;
        }
        length |= static_cast<std::size_t>(byte_at(left, head) & 0x7fU) << 7U * (head - 1);
        more = byte_at(left, head) >= 0x80U;
    }
    if (length > most_bytes_) {
        state_ = State::too_long;
        announced_bytes_ = length;
        return std::nullopt;
    }
    if (left.size() < head + length) {
        bytes_.erase(0, read_);
        read_ = 0;
        return std::nullopt;
    }
    auto found = packet_in(byte_at(left, 0), left.substr(head, length));
    if (!found) state_ = State::broken;
    read_ += head + length;
    return found;
}

} // namespace ullage
