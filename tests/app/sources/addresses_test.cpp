// SPDX-License-Identifier: GPL-3.0-or-later
// A name may have several addresses, and not every one of them is where the meter listens.
#include "named_host.h"
#include "peers.h"

#include <QTcpServer>
#include <QTcpSocket>
#include <QTest>
#include <QUrl>

#include <gtest/gtest.h>

#include <arpa/inet.h>
#include <sys/socket.h>
#include <unistd.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace ullage {
namespace {

using namespace test;

/// What a link says until something comes or it fails.
struct Heard {
    std::optional<TraceSample> first;
    QString why;
};

Heard heard_from(const LiveSource& source) {
    const auto link = SourceLink::make(source);
    Heard heard;
    QObject::connect(link.get(), &SourceLink::failed, link.get(), [&heard](const QString& words) { heard.why = words; });
    QObject::connect(link.get(), &SourceLink::values, link.get(), [&heard](const TraceSample& sample) { heard.first = sample; });
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&heard] { return heard.first || !heard.why.isEmpty(); }, 30'000));
    link->stop();
    return heard;
}

/// The source of a peer on 127.0.0.1, by a name.
LiveSource by_name(LiveSource source, const std::string& name) {
    const std::string address = "127.0.0.1";
    source.address.replace(source.address.find(address), address.size(), name);
    return source;
}

std::unique_ptr<Peer> network_peer(SourceKind kind, const DrainTruth& truth) {
    switch (kind) {
    case SourceKind::modbus_tcp: return std::make_unique<ModbusPeer>(truth, false);
    case SourceKind::mqtt: return std::make_unique<MqttPeer>(truth);
    case SourceKind::http: return std::make_unique<HttpPeer>(truth);
    default: return std::make_unique<ScpiPeer>(truth);
    }
}

class Addresses : public testing::TestWithParam<SourceKind> {};

TEST_P(Addresses, of_a_name_are_tried_in_turn_until_one_answers) {
    const DrainTruth truth;
    const auto peer = network_peer(GetParam(), truth);
    // 127.0.0.2 is this machine as well, and nobody listens there; where the machine does not speak IPv6, ::1 fails otherwise.
    const std::string name = std::string(kind_word(GetParam())) + ".bench.test";
    const NamedHost host(name, {"::1", "127.0.0.2", "127.0.0.1"});
    const Heard heard = heard_from(by_name(peer->source(), name));
    EXPECT_TRUE(heard.first);
    EXPECT_EQ(heard.why.toStdString(), "");
}

TEST_P(Addresses, of_a_name_are_named_with_what_happened_there_where_none_answers) {
    const DrainTruth truth;
    const auto peer = network_peer(GetParam(), truth);
    peer->setGone(true);
    const std::string name = std::string(kind_word(GetParam())) + ".nobody.test";
    const NamedHost host(name, {"127.0.0.3", "127.0.0.2"});
    const LiveSource source = by_name(peer->source(), name);
    const QUrl address(QStringLiteral("any://") + QString::fromStdString(source.address).section(QStringLiteral("://"), -1));
    // The library of HTTP goes through the addresses itself, and tells one reason.
    const char* const reasons =
        GetParam() == SourceKind::http ? "Connection refused" : "Connection refused at 127.0.0.2, Connection refused at 127.0.0.3";
    const char* const remedy = GetParam() == SourceKind::mqtt ? "the broker runs, its host and port, and whether it asks for TLS"
                                                              : "it is switched on, and its host and port";
    EXPECT_EQ(heard_from(source).why.toStdString(),
              "no connection to " + name + ", port " + std::to_string(address.port()) + ": " + reasons + "; check that " + remedy);
}

TEST_P(Addresses, are_missing_of_a_name_that_nobody_knows_which_is_said) {
    const DrainTruth truth;
    const auto peer = network_peer(GetParam(), truth);
    const std::string name = std::string(kind_word(GetParam())) + ".unknown.test";
    const NamedHost host(name, {});
    const QString why = heard_from(by_name(peer->source(), name)).why;
    EXPECT_TRUE(why.startsWith(QStringLiteral("no address is known for the name %1 (").arg(QString::fromStdString(name)))) << why.toStdString();
    EXPECT_TRUE(why.endsWith(QStringLiteral("; check how it is written, and the network"))) << why.toStdString();
}

INSTANTIATE_TEST_SUITE_P(Kinds, Addresses, testing::Values(SourceKind::modbus_tcp, SourceKind::mqtt, SourceKind::http, SourceKind::scpi_tcp),
                         [](const testing::TestParamInfo<SourceKind>& kind) {
                             std::string name(kind_word(kind.param));
                             std::ranges::replace(name, '-', '_');
                             return name;
                         });

/// A port of an address of this machine that takes no connection and refuses none: its queue is full.
class FullQueue {
public:
    FullQueue(const char* address, quint16 port) {
        sockaddr_in there{};
        there.sin_family = AF_INET;
        there.sin_port = htons(port);
        EXPECT_EQ(::inet_pton(AF_INET, address, &there.sin_addr), 1);
        const auto* name = reinterpret_cast<const sockaddr*>(&there);
        sockets_.push_back(::socket(AF_INET, SOCK_STREAM, 0));
        EXPECT_EQ(::bind(sockets_[0], name, sizeof there), 0);
        EXPECT_EQ(::listen(sockets_[0], 0), 0);
        for (int i = 0; i < 4; ++i) {
            sockets_.push_back(::socket(AF_INET, SOCK_STREAM | SOCK_NONBLOCK, 0));
            (void)::connect(sockets_.back(), name, sizeof there);
        }
    }
    ~FullQueue() {
        for (const int socket : sockets_) ::close(socket);
    }
    FullQueue(const FullQueue&) = delete;
    FullQueue& operator=(const FullQueue&) = delete;

private:
    std::vector<int> sockets_;
};

TEST(SilentAddress, that_neither_takes_nor_refuses_a_connection_is_left_for_the_next_of_the_name) {
    const DrainTruth truth;
    const ScpiPeer peer(truth);
    const FullQueue silent("127.0.0.2", static_cast<quint16>(peer.source().peer().port));
    const NamedHost host("silent.bench.test", {"127.0.0.2", "127.0.0.1"});
    const Heard heard = heard_from(by_name(peer.source(), "silent.bench.test"));
    EXPECT_TRUE(heard.first) << heard.why.toStdString();
}

/// What listens where a broker is looked for first.
struct OtherService {
    const char *name, *says;
    bool closes;
    const char* told; ///< of it, where there is nobody else
};

class NoBroker : public testing::TestWithParam<OtherService> {
protected:
    NoBroker() {
        EXPECT_TRUE(other_.listen(QHostAddress(QStringLiteral("127.0.0.2")), static_cast<quint16>(source_.peer().port)));
        QObject::connect(&other_, &QTcpServer::newConnection, &other_, [this] {
            QTcpSocket* socket = other_.nextPendingConnection();
            socket->write(GetParam().says);
            if (GetParam().closes) socket->disconnectFromHost();
        });
    }
    DrainTruth truth_;
    MqttPeer peer_{truth_};
    LiveSource source_ = peer_.source();
    QTcpServer other_;
};

TEST_P(NoBroker, is_passed_over_for_the_next_address_of_the_name) {
    const std::string name = std::string(GetParam().name) + ".next.test";
    const NamedHost host(name, {"127.0.0.2", "127.0.0.1"});
    const Heard heard = heard_from(by_name(source_, name));
    EXPECT_TRUE(heard.first) << heard.why.toStdString();
}

TEST_P(NoBroker, is_told_by_what_it_does) {
    const std::string name = std::string(GetParam().name) + ".alone.test";
    const NamedHost host(name, {"127.0.0.2"});
    const QString why = heard_from(by_name(source_, name)).why;
    EXPECT_TRUE(why.contains(QString::fromLatin1(GetParam().told) + QStringLiteral(" at 127.0.0.2; check that the broker runs")))
        << why.toStdString();
}

INSTANTIATE_TEST_SUITE_P(Services, NoBroker,
                         testing::Values(OtherService{"closing", "", true, "The remote host closed the connection"},
                                         OtherService{"talkative", "220 ready when you are\r\n", false, "what came is not MQTT 3.1.1"},
                                         OtherService{"silent", "", false, "nothing came within 10 s"}),
                         [](const testing::TestParamInfo<OtherService>& service) { return std::string(service.param.name); });

} // namespace
} // namespace ullage
