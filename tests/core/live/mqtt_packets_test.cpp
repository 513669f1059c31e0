// SPDX-License-Identifier: GPL-3.0-or-later
// Packets of MQTT 3.1.1, byte by byte as the OASIS Standard of 29 October 2014 has them (from memory).
#include "live/mqtt_packets.h"

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

namespace ullage {
namespace {

using Kind = MqttPacket::Kind;
using State = MqttCutter::State;
using namespace std::string_literals;

constexpr std::size_t most_bytes = 1000;

/// A packet that is all that came.
std::optional<MqttPacket> only_packet(const std::string& bytes, State state = State::open) {
    MqttCutter cutter(most_bytes);
    cutter.take(bytes);
    auto found = cutter.next();
    EXPECT_EQ(cutter.state(), state);
    EXPECT_EQ(cutter.next(), std::nullopt) << "a second one was found in it";
    return found;
}

TEST(MqttPackets, a_connection_is_asked_for_with_a_clean_session_and_with_the_user_and_password_that_there_are) {
    EXPECT_EQ(mqtt_connect({}, {}, 30), "\x10\x0c\0\4MQTT\4\x02\0\x1e\0\0"s);
    EXPECT_EQ(mqtt_connect("ab", {}, 30), "\x10\x10\0\4MQTT\4\x82\0\x1e\0\0\0\2ab"s);
    EXPECT_EQ(mqtt_connect("ab", "cde", 300), "\x10\x15\0\4MQTT\4\xc2\1\x2c\0\0\0\2ab\0\3cde"s);
    EXPECT_EQ(mqtt_connect({}, "cde", 30), mqtt_connect({}, {}, 30)) << "3.1.2.9: no password without a user";
}

TEST(MqttPackets, topics_are_asked_for_at_quality_of_service_0) {
    EXPECT_EQ(mqtt_subscribe({"a/b", "c"}), "\x82\x0c\0\1\0\3a/b\0\0\1c\0"s);
    const std::string topic(125, 't'); // 2.2.3: from 128 on the length takes two bytes
    EXPECT_EQ(mqtt_subscribe({topic}), "\x82\x82\1\0\1\0\x7d"s + topic + '\0');
}

TEST(MqttPackets, the_answers_of_a_broker_say_what_it_gives_and_refuses) {
    EXPECT_EQ(only_packet("\x20\2\0\0"s).value().refusal, 0);
    EXPECT_EQ(only_packet("\x20\2\0\5"s).value().refusal, 5);
    EXPECT_TRUE(only_packet("\x90\4\0\1\x80\0"s).value().given) << "the second topic";
    EXPECT_FALSE(only_packet("\x90\4\0\1\x80\x80"s).value().given);
    EXPECT_EQ(only_packet("\xd0\0"s).value().kind, Kind::alive);
}

TEST(MqttPackets, a_message_has_its_topic_its_payload_and_whether_it_was_kept) {
    const MqttPacket message = only_packet("\x30\7\0\3a/b42"s).value();
    EXPECT_EQ(message.kind, Kind::message);
    EXPECT_EQ(message.topic, "a/b");
    EXPECT_EQ(message.payload, "42");
    EXPECT_FALSE(message.retained);
    EXPECT_TRUE(only_packet("\x31\7\0\3a/b42"s).value().retained);
    EXPECT_EQ(only_packet("\x38\5\0\3a/b"s).value().payload, "") << "sent again, and empty";
}

TEST(MqttPackets, packets_that_come_in_pieces_or_together_are_the_same) {
    const std::string payload(300, '4');
    const std::string bytes = "\x20\2\0\0\x90\3\0\1\0\x30\xaf\2\0\1t"s + payload + "\xd0\0"s;
    for (const std::size_t piece : {std::size_t{1}, std::size_t{2}, std::size_t{7}, bytes.size()}) {
        MqttCutter cutter(most_bytes);
        std::vector<Kind> kinds;
        for (std::size_t at = 0; at < bytes.size(); at += piece) {
            cutter.take(std::string_view(bytes).substr(at, piece));
            while (const auto packet = cutter.next()) {
                kinds.push_back(packet->kind);
                if (packet->kind == Kind::message) {
                    EXPECT_EQ(packet->payload, payload);
                }
            }
        }
        EXPECT_EQ(kinds, (std::vector{Kind::connected, Kind::subscribed, Kind::message, Kind::alive})) << "in pieces of " << piece;
        EXPECT_EQ(cutter.state(), State::open);
    }
}

TEST(MqttPackets, a_packet_that_is_too_long_is_known_by_its_length_before_it_has_come) {
    MqttCutter cutter(most_bytes);
    cutter.take("\x30\x80\xc2\xd7\x2f\0\1t"s); // 100,000,000
    EXPECT_EQ(cutter.next(), std::nullopt);
    EXPECT_EQ(cutter.state(), State::too_long);
    EXPECT_EQ(cutter.announced_bytes(), 100'000'000U);
}

TEST(MqttPackets, what_no_broker_sends_to_such_a_subscriber_is_no_packet) {
    for (const std::string& bytes : {
             "HTTP/1.1 400"s, "220 ready"s,          // other services, known by their first byte
             "\x32\7\0\1t\0\1ab"s,                   // a message that wants to be acknowledged
             "\x30\x80\x80\x80\x80\1"s,              // a length of five bytes
             "\x30\1\0"s, "\x30\3\0\5t"s,            // topics that are longer than the packet
             "\x20\1\0"s, "\x90\2\0\1"s, "\xd0\1x"s, // answers that are cut short, or longer
             "\x10\2\0\0"s,                          // what only clients send
         })
        EXPECT_EQ(only_packet(bytes, State::broken), std::nullopt) << bytes;
}

} // namespace
} // namespace ullage
