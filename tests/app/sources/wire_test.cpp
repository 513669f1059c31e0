// SPDX-License-Identifier: GPL-3.0-or-later
// What goes over the wire, and what a hostile source may send.
#include "peers.h"

#include <QFile>
#include <QTcpSocket>
#include <QTest>

#include <gtest/gtest.h>

#include <termios.h>

#include <memory>
#include <vector>

namespace ullage {
namespace {

using namespace test;

/// A Modbus TCP server of bare bytes: it keeps what it is asked and answers with one PDU.
class BareServer {
public:
    explicit BareServer(const QByteArray& pdu) {
        EXPECT_TRUE(server_.listen(QHostAddress::LocalHost));
        QObject::connect(&server_, &QTcpServer::newConnection, &server_, [this, pdu] {
            QTcpSocket* socket = server_.nextPendingConnection();
            QObject::connect(socket, &QTcpSocket::readyRead, socket, [this, socket, pdu] {
                const QByteArray frame = socket->readAll(); // MBAP header of 7 bytes, then the PDU
                asked.push_back(frame.mid(7));
                QByteArray answer = frame.left(4);
                answer += static_cast<char>(0);
                answer += static_cast<char>(pdu.size() + 1);
                answer += frame[6];
                socket->write(answer + pdu);
            });
        });
    }
    [[nodiscard]] LiveSource source(const char* read) const {
        LiveSource source;
        source.address = "127.0.0.1:" + std::to_string(server_.serverPort());
        EXPECT_TRUE(take_fields(source, read));
        return source;
    }
    std::vector<QByteArray> asked;

private:
    QTcpServer server_;
};

TraceSample first_sample(const LiveSource& source) {
    const auto link = SourceLink::make(source);
    std::optional<TraceSample> first;
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&first](const TraceSample& sample) {
        if (!first) first = sample;
    });
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&first] { return first.has_value(); }, 5000));
    link->stop();
    return first.value_or(TraceSample{});
}

TEST(ModbusWire, holding_registers_are_asked_for_and_read_as_the_example_of_the_specification_has_it) {
    // Modbus Application Protocol V1.1b3, 6.3: registers 108 to 110 (addresses 107 to 109) hold 555, 0 and 100.
    BareServer server(QByteArray::fromHex("0306022b00000064"));
    const TraceSample sample = first_sample(server.source("power holding 107 as u16\nvoltage holding 108 as u16\ncurrent holding 109 as u16"));
    ASSERT_FALSE(server.asked.empty());
    EXPECT_EQ(server.asked[0].toHex(), "03006b0003");
    EXPECT_EQ(sample.power_w, 555);
    EXPECT_EQ(sample.voltage_v, 0);
    EXPECT_EQ(sample.current_a, 100);
}

TEST(ModbusWire, input_registers_are_asked_for_and_read_as_the_example_of_the_specification_has_it) {
    // Modbus Application Protocol V1.1b3, 6.4: input register 9 (address 8) holds 10.
    BareServer server(QByteArray::fromHex("0402000a"));
    EXPECT_EQ(first_sample(server.source("power input 8 as u16")).power_w, 10);
    EXPECT_EQ(server.asked.at(0).toHex(), "0400080001");
}

TEST(ModbusWire, nothing_but_functions_that_read_is_ever_sent) {
    BareServer server(QByteArray::fromHex("8302")); // exception 2: illegal data address
    const auto link = SourceLink::make(server.source("sunspec imported"));
    QString why;
    QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&why] { return !why.isEmpty(); }, 5000));
    link->stop();
    EXPECT_TRUE(why.contains(QStringLiteral("no SunSpec meter"))) << why.toStdString();
    EXPECT_EQ(server.asked.size(), 3U) << "the three places where a map may begin";
    for (const QByteArray& pdu : server.asked) EXPECT_EQ(pdu[0], 3);
}

/// A broker of bare bytes on 127.0.0.1: it answers each piece that comes with the next of its answers, and keeps what came.
class BareBroker {
public:
    explicit BareBroker(std::vector<QByteArray> answers) : answers_(std::move(answers)) {
        EXPECT_TRUE(server_.listen(QHostAddress::LocalHost));
        QObject::connect(&server_, &QTcpServer::newConnection, &server_, [this] {
            QTcpSocket* socket = server_.nextPendingConnection();
            QObject::connect(socket, &QTcpSocket::readyRead, socket, [this, socket] {
                heard.push_back(socket->readAll());
                if (heard.size() <= answers_.size()) socket->write(answers_[heard.size() - 1]);
            });
        });
    }
    /// What is said of it, or of what comes from it, and nothing else.
    QString trouble() {
        LiveSource source;
        source.kind = SourceKind::mqtt;
        source.address = "127.0.0.1:" + std::to_string(server_.serverPort());
        source.user = "bench";
        EXPECT_TRUE(take_fields(source, "power bench/w\nregister bench/e"));
        const auto link = SourceLink::make(source, QStringLiteral("very secret"));
        QString why;
        QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
        link->start();
        EXPECT_TRUE(QTest::qWaitFor([&why] { return !why.isEmpty(); }, 5000));
        link->stop();
        return why;
    }
    std::vector<QByteArray> heard;

private:
    std::vector<QByteArray> answers_;
    QTcpServer server_;
};

TEST(MqttWire, a_broker_that_refuses_is_believed_and_asked_for_nothing_more) {
    BareBroker broker({QByteArray::fromHex("20020005")});
    EXPECT_EQ(broker.trouble().toStdString(), "the broker refuses: user or password is wrong, or this user may not read there");
    ASSERT_EQ(broker.heard.size(), 1U);
    EXPECT_TRUE(broker.heard[0].startsWith(QByteArray::fromHex("10"))) << "CONNECT";
}

TEST(MqttWire, a_broker_hears_a_connection_and_a_subscription_and_is_told_when_it_gives_no_topic) {
    BareBroker broker({QByteArray::fromHex("20020000"), QByteArray::fromHex("900400018080")});
    const QString why = broker.trouble();
    EXPECT_TRUE(why.startsWith(QStringLiteral("the broker gives none of these topics to this user; check "))) << why.toStdString();
    // It hears a goodbye as well, where that reaches it before its end.
    ASSERT_GE(broker.heard.size(), 2U);
    EXPECT_EQ(broker.heard[0].toHex().toStdString(), "102000044d51545404c200280000000562656e6368000b7665727920736563726574");
    EXPECT_EQ(broker.heard[1].toHex().toStdString(), "82160001000762656e63682f6500000762656e63682f7700");
    for (std::size_t i = 2; i < broker.heard.size(); ++i) EXPECT_EQ(broker.heard[i].toHex().toStdString(), "e000");
}

TEST(ReadoutWire, a_meter_hears_its_request_and_the_acknowledgement_for_data_and_nothing_else) {
    const DrainTruth truth;
    TerminalPeer peer(truth, TerminalPeer::Kind::readout);
    EXPECT_GT(first_sample(peer.source()).power_w.value_or(0), 0);
    EXPECT_TRUE(peer.heard().startsWith("/?!\r\n\x06"
                                        "050\r\n"))
        << peer.heard().toStdString();
}

/// IEC 62056-21, 6.3.2 and figure 1 (from memory): Z of the identification is the mode. In mode A, no letter or digit that means a speed, the data
/// follow at the speed of the request; in mode B, A to F, at the speed of the letter, without being asked for.
struct UnaskedMode {
    const char *name, *identification;
    bool framed; ///< with STX, ETX and check character, which mode A may leave out
    unsigned speed;
};

class ReadoutWireUnasked : public testing::TestWithParam<UnaskedMode> {};

TEST_P(ReadoutWireUnasked, the_data_follow_the_identification_and_the_meter_hears_nothing_but_requests) {
    const DrainTruth truth;
    TerminalPeer peer(truth, TerminalPeer::Kind::readout);
    peer.setIdentification(GetParam().identification, false, GetParam().framed);
    LiveSource source = peer.source();
    source.line = {300, 7, 'E', 1};
    const auto link = SourceLink::make(source);
    int read = 0;
    unsigned speed = 0;
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&](const TraceSample& sample) {
        EXPECT_NEAR(sample.power_w.value_or(0), truth.power_w(), 10);
        EXPECT_NEAR(sample.register_wh.value_or(0), truth.register_wh(), 10);
        if (++read == 1) speed = peer.speed();
    });
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&read] { return read >= 3; }, 20'000));
    link->stop();
    EXPECT_EQ(speed, GetParam().speed) << "at which the data are read";
    EXPECT_EQ(peer.heard().replace("/?!\r\n", ""), "") << "neither an acknowledgement nor anything else";
}

INSTANTIATE_TEST_SUITE_P(Modes, ReadoutWireUnasked,
                         testing::Values(UnaskedMode{"A", "/XYZ bench meter\r\n", true, B300},
                                         UnaskedMode{"A_bare", "/XYZ bench meter\r\n", false, B300},
                                         UnaskedMode{"B_2400", "/XYZC bench meter\r\n", true, B2400},
                                         UnaskedMode{"B_9600", "/XYZE bench meter\r\n", true, B9600}),
                         [](const testing::TestParamInfo<UnaskedMode>& mode) { return std::string(mode.param.name); });

long resident_kb() {
    QFile status(QStringLiteral("/proc/self/status"));
    EXPECT_TRUE(status.open(QIODevice::ReadOnly));
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmRSS:")) return line.simplified().split(' ').at(1).toLong();
    return 0;
}

constexpr long most_growth_kb = 40'000;

TEST(HostileSource, an_answer_of_100_mb_is_given_up_and_memory_does_not_grow_with_it) {
    const DrainTruth truth;
    HttpPeer peer(truth);
    peer.setAnswer("HTTP/1.1 200 OK\r\nContent-Type: application/json", 100'000'000);
    const auto link = SourceLink::make(peer.source());
    QString why;
    QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
    const long before_kb = resident_kb();
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&why] { return !why.isEmpty(); }, 20'000));
    EXPECT_TRUE(why.contains(QStringLiteral("longer than 1 MB"))) << why.toStdString();
    EXPECT_LT(resident_kb() - before_kb, most_growth_kb);
    link->stop();
}

TEST(HostileSource, a_redirection_to_another_address_is_not_followed) {
    const DrainTruth truth;
    HttpPeer peer(truth), other(truth);
    const std::string elsewhere = other.source().address;
    peer.setAnswer("HTTP/1.1 302 Found\r\nLocation: " + QByteArray::fromStdString(elsewhere), 0);
    const auto link = SourceLink::make(peer.source());
    QString why;
    QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&why] { return !why.isEmpty(); }, 10'000));
    link->stop();
    EXPECT_TRUE(other.lastRequest().isEmpty());
    EXPECT_TRUE(peer.lastRequest().startsWith("GET /status HTTP/1.1\r\n"));
}

TEST(HostileSource, an_endless_line_takes_no_memory_and_the_lines_after_it_are_read) {
    const DrainTruth truth;
    TerminalPeer peer(truth, TerminalPeer::Kind::lines);
    peer.setGone(true);
    const auto link = SourceLink::make(peer.source());
    long came = 0;
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&came] { ++came; });
    link->start();
    const long before_kb = resident_kb();
    for (int i = 0; i < 2000; ++i) {
        peer.say(QByteArray(4000, 'x'));
        QCoreApplication::processEvents();
    }
    EXPECT_LT(resident_kb() - before_kb, most_growth_kb);
    peer.say("\n");
    peer.setGone(false);
    EXPECT_TRUE(QTest::qWaitFor([&came] { return came > 3; }, 10'000));
    EXPECT_GE(link->misunderstood(), 1);
    link->stop();
}

TEST(HostileSource, ten_thousand_messages_a_second_are_thinned_and_leave_the_loop_free) {
    const DrainTruth truth;
    MqttPeer peer(truth);
    const auto link = SourceLink::make(peer.source());
    long came = 0;
    bool there = false;
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&came] { ++came; });
    QObject::connect(link.get(), &SourceLink::connected, link.get(), [&there] { there = true; });
    link->start();
    ASSERT_TRUE(QTest::qWaitFor([&there] { return there; }, 10'000));
    const long before_kb = resident_kb();
    int turns = 0;
    QElapsedTimer since;
    since.start();
    for (int i = 0; i < 20'000; ++i) {
        peer.publish("bench/plug", "{\"watts\": 400.5}");
        if (i % 100 == 99) {
            QCoreApplication::processEvents();
            ++turns;
        }
    }
    EXPECT_TRUE(QTest::qWaitFor([&came] { return came > 5; }, 20'000));
    const double seconds = static_cast<double>(since.elapsed()) / 1000;
    EXPECT_EQ(turns, 200);
    EXPECT_LE(static_cast<double>(came), 2 * 70 * seconds + 10) << "two topics, each every 15 ms at most";
    EXPECT_LT(resident_kb() - before_kb, most_growth_kb);
    link->stop();
}

TEST(HostileSource, a_message_of_100_mb_ends_the_connection_which_is_made_again) {
    const DrainTruth truth;
    MqttPeer peer(truth);
    const auto link = SourceLink::make(peer.source());
    QString why;
    long came = 0;
    bool there = false;
    QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&came] { ++came; });
    QObject::connect(link.get(), &SourceLink::connected, link.get(), [&there] { there = true; });
    link->start();
    ASSERT_TRUE(QTest::qWaitFor([&there] { return there; }, 10'000));
    peer.publish("bench/plug", QByteArray(100'000'000, '1'));
    EXPECT_TRUE(QTest::qWaitFor([&why] { return !why.isEmpty(); }, 30'000));
    EXPECT_TRUE(why.contains(QStringLiteral("100 MB"))) << why.toStdString();
    came = 0;
    EXPECT_TRUE(QTest::qWaitFor([&came] { return came > 3; }, 20'000));
    link->stop();
}

TEST(SourceLinkTest, a_source_that_is_not_there_is_tried_again_until_it_is) {
    const DrainTruth truth;
    HttpPeer peer(truth);
    peer.setGone(true);
    const auto link = SourceLink::make(peer.source());
    int failures = 0;
    long came = 0;
    QObject::connect(link.get(), &SourceLink::failed, link.get(), [&failures](const QString& why) {
        EXPECT_FALSE(why.isEmpty());
        ++failures;
    });
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&came] { ++came; });
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&failures] { return failures >= 2; }, 10'000));
    peer.setGone(false);
    EXPECT_TRUE(QTest::qWaitFor([&came] { return came > 2; }, 10'000));
    link->stop();
}

} // namespace
} // namespace ullage
