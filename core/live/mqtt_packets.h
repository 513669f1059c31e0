// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

// What a subscriber at quality of service 0 says and hears in MQTT 3.1.1 (OASIS Standard, 29 October 2014; sections in brackets). It publishes
// nothing.

/// No text of a packet may be longer (1.5.3).
inline constexpr std::size_t longest_mqtt_text = 65'535;

/// CONNECT (3.1): a clean session under a name that the broker gives. Empty: no user, no password; a password without a user is not sent.
/// Precondition: neither is longer than longest_mqtt_text.
[[nodiscard]] std::string mqtt_connect(std::string_view user, std::string_view password, int keep_alive_s);
/// SUBSCRIBE (3.8) of all topics at once, at quality of service 0. Precondition: none is longer than longest_mqtt_text.
[[nodiscard]] std::string mqtt_subscribe(const std::vector<std::string>& topics);
/// PINGREQ (3.12) and DISCONNECT (3.14).
inline constexpr std::string_view mqtt_ping{"\xc0\0", 2}, mqtt_disconnect{"\xe0\0", 2};

/// A packet that a broker may send to such a subscriber.
struct MqttPacket {
    enum class Kind { connected, subscribed, message, alive }; ///< CONNACK, SUBACK, PUBLISH, PINGRESP
    Kind kind = Kind::alive;
    int refusal = 0;    ///< connected: 0, or the code of the refusal (3.2.2.3)
    bool given = false; ///< subscribed: at least one of the topics
    std::string topic, payload;
    bool retained = false; ///< message: the broker had kept it
};

/// Cuts a stream of bytes into packets. Memory: one packet of at most `most_bytes`, and the bytes that came with it.
class MqttCutter {
public:
    enum class State {
        open,
        too_long, ///< a packet is announced that is longer than most_bytes
        broken    ///< what came is no packet, or none for such a subscriber
    };

    explicit MqttCutter(std::size_t most_bytes) : most_bytes_(most_bytes) {}

    void take(std::string_view bytes) { bytes_ += bytes; }
    /// The next whole packet. Absent where more has to come, or where state() is no longer `open`: then nothing comes any more.
    [[nodiscard]] std::optional<MqttPacket> next();
    [[nodiscard]] State state() const { return state_; }
    /// How long the packet is that is too long. Precondition: too_long.
    [[nodiscard]] std::size_t announced_bytes() const { return announced_bytes_; }

private:
    std::size_t most_bytes_;
    std::string bytes_;
    std::size_t read_ = 0; ///< of them
    std::size_t announced_bytes_ = 0;
    State state_ = State::open;
};

} // namespace ullage
