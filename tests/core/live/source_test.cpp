// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_source.h"

#include <gtest/gtest.h>

#include <string>

namespace ullage {
namespace {

LiveSource source(SourceKind kind, const std::string& address, const std::string& read) {
    LiveSource made;
    made.kind = kind;
    made.address = address;
    const auto taken = take_fields(made, read);
    EXPECT_TRUE(taken) << (taken ? "" : taken.error().sentence());
    return made;
}

TEST(LiveSource, each_kind_survives_its_text) {
    LiveSource broker = source(SourceKind::mqtt, "broker.example.org", "power bench/plug#/power\nregister bench/plug/energy in kWh");
    broker.tls = true;
    broker.user = "bench";
    LiveSource head = source(SourceKind::readout, "/dev/ttyUSB0", "register 1.8.0\npower 16.7.0");
    head.line = {300, 7, 'E', 1};
    head.interval_s = 15;
    LiveSource rtu = source(SourceKind::modbus_rtu, "/dev/ttyUSB1",
                            "power input 12 as f32 low-word-first\nregister holding 342 as u64 bytes-swapped in kWh times 0.001");
    rtu.station = 17;
    for (const LiveSource& made :
         {broker, head, rtu, source(SourceKind::modbus_tcp, "192.0.2.10:1502", "sunspec exported"),
          source(SourceKind::http, "http://192.0.2.20/status", "power #/meters/0/power\nvoltage #/meters/0/voltage"),
          source(SourceKind::http, "https://meter.example.org/p", "power body in kW"), source(SourceKind::serial_lines, "/dev/ttyACM0", "detect"),
          source(SourceKind::serial_lines, "/dev/ttyACM0", "power column 3 in mW"),
          source(SourceKind::scpi_tcp, "[2001:db8::7]:5025", "power MEAS:POW? item 2"),
          source(SourceKind::scpi_device, "/dev/ttyUSB3", "power MEAS:POW:AC? (@1)")}) {
        ASSERT_TRUE(check(made)) << check(made).error().sentence();
        const auto again = source_from(source_text(made));
        ASSERT_TRUE(again) << again.error().sentence();
        EXPECT_EQ(again.value(), made) << source_text(made);
        EXPECT_EQ(source_text(made).find("password"), std::string::npos);
    }
}

TEST(LiveSource, peers_take_the_port_of_their_standard_where_none_is_named) {
    EXPECT_EQ(source(SourceKind::modbus_tcp, "192.0.2.10", "sunspec imported").peer().port, 502);
    LiveSource broker = source(SourceKind::mqtt, "broker.example.org", "power p");
    EXPECT_EQ(broker.peer().port, 1883);
    broker.tls = true;
    EXPECT_EQ(broker.peer().port, 8883);
    const auto six = source(SourceKind::scpi_tcp, "[2001:db8::7]:99", "power P?").peer();
    EXPECT_EQ(six.host, "2001:db8::7");
    EXPECT_EQ(six.port, 99);
}

TEST(LiveSource, what_cannot_be_read_is_refused_with_a_remedy_on_one_line) {
    const std::pair<SourceKind, const char*> bad_addresses[] = {
        {SourceKind::modbus_tcp, ""},          {SourceKind::modbus_tcp, "192.0.2.10:0"},   {SourceKind::modbus_tcp, "192.0.2.10:99999"},
        {SourceKind::modbus_tcp, "a b"},       {SourceKind::mqtt, "user:pass@192.0.2.1"},  {SourceKind::http, "192.0.2.20/status"},
        {SourceKind::http, "ftp://192.0.2.1"}, {SourceKind::http, "http://u:p@192.0.2.1"}, {SourceKind::readout, "ttyUSB0"}};
    for (const auto& [kind, address] : bad_addresses) {
        LiveSource made = source(SourceKind::modbus_tcp, "192.0.2.1", "sunspec imported");
        made.kind = kind;
        made.address = address;
        const auto refused = check(made);
        ASSERT_FALSE(refused) << address;
        EXPECT_FALSE(refused.error().remedy.empty());
        EXPECT_EQ(refused.error().sentence().find('\n'), std::string::npos);
    }
    const std::pair<SourceKind, const char*> bad_fields[] = {{SourceKind::modbus_tcp, "charge holding 1"},
                                                             {SourceKind::modbus_tcp, "power coil 1"},
                                                             {SourceKind::modbus_tcp, "power holding 65536"},
                                                             {SourceKind::modbus_tcp, "power holding 1 as u8"},
                                                             {SourceKind::modbus_tcp, "power holding 1 in Wh"},
                                                             {SourceKind::modbus_tcp, "power holding 1 times 0"},
                                                             {SourceKind::modbus_tcp, "power"},
                                                             {SourceKind::modbus_tcp, "power holding 1 often"},
                                                             {SourceKind::mqtt, "power bench/+/power"},
                                                             {SourceKind::mqtt, "power #/a"},
                                                             {SourceKind::mqtt, "power t#a"},
                                                             {SourceKind::mqtt, "power t#/a~2"},
                                                             {SourceKind::http, "power status"},
                                                             {SourceKind::serial_lines, "power column 0"},
                                                             {SourceKind::readout, "power MEAS?"}};
    for (const auto& [kind, line] : bad_fields) {
        LiveSource made;
        made.kind = kind;
        const auto refused = take_fields(made, line);
        ASSERT_FALSE(refused) << line;
        EXPECT_NE(refused.error().where.text().find("line 1"), std::string::npos);
    }
    EXPECT_FALSE(check(source(SourceKind::modbus_tcp, "192.0.2.1", "")));
    EXPECT_FALSE(check(source(SourceKind::modbus_tcp, "192.0.2.1", "power holding 1\npower holding 2"))) << "twice the same";
    for (const char* text : {"", "{", "[]", "{}", R"({"kind":"telepathy"})", R"({"kind":"mqtt","address":7})",
                             R"({"kind":"mqtt","address":"192.0.2.1","read":"power p","password":"x"})"})
        EXPECT_FALSE(source_from(text)) << text;
}

TEST(LiveSource, a_serial_line_is_set_as_people_write_it) {
    const auto read = line_settings_from("300 7E1");
    ASSERT_TRUE(read);
    EXPECT_EQ(read.value(), (LineSettings{300, 7, 'E', 1}));
    EXPECT_EQ(line_settings_text(read.value()), "300 7E1");
    for (const char* text : {"", "9600", "9600 8X1", "9600 9N1", "x 8N1", "9600 8N12", "9600,8N1"}) EXPECT_FALSE(line_settings_from(text)) << text;
}

} // namespace
} // namespace ullage
