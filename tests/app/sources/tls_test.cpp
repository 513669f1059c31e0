// SPDX-License-Identifier: GPL-3.0-or-later
// Secured connections, with authorities and certificates that the test makes itself (program `openssl`): what may be trusted is read, and what may
// not is refused with a word.
#include "named_host.h"
#include "peers.h"
#include "support/temp_folder.h"

#include <QFile>
#include <QProcess>
#include <QSslCertificate>
#include <QSslConfiguration>
#include <QSslKey>
#include <QSslServer>
#include <QSslSocket>
#include <QTcpSocket>
#include <QTest>

#include <gtest/gtest.h>

#include <mosquitto.h>

#include <fstream>
#include <string>

namespace ullage {
namespace {

using namespace test;

/// An authority and what it has signed, in a folder.
class Authority {
public:
    Authority() {
        std::ofstream(folder_ / "index.txt");
        std::ofstream(folder_ / "serial") << "01\n";
        std::ofstream(folder_ / "ca.conf") << "[ca]\ndefault_ca=here\n[here]\ndir=" << folder_.path().string()
                                           << "\ndatabase=$dir/index.txt\nserial=$dir/serial\nnew_certs_dir=$dir\ncertificate=$dir/ca.crt\n"
                                              "private_key=$dir/ca.key\ndefault_md=sha256\npolicy=any\nunique_subject=no\n"
                                              "[any]\ncommonName=supplied\n";
        openssl({"req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-days", "2", "-subj", "/CN=Bench authority",
                 "-keyout", path("ca.key"), "-out", path("ca.crt")});
    }
    /// A certificate for hosts ("DNS:meter.example.org,IP:192.0.2.1"): NAME.crt and NAME.key.
    void sign(const QString& name, const char* hosts, const QString& from, const QString& until) {
        openssl({"req", "-new", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-subj", "/CN=Bench meter", "-keyout",
                 path(name + ".key"), "-out", path(name + ".csr")});
        std::ofstream((folder_ / (name + ".ext").toStdString())) << "subjectAltName=" << hosts << "\n";
        openssl({"ca", "-batch", "-config", path("ca.conf"), "-extfile", path(name + ".ext"), "-startdate", from, "-enddate", until, "-in",
                 path(name + ".csr"), "-out", path(name + ".crt"), "-notext"});
    }
    [[nodiscard]] QString path(const QString& name) const { return QString::fromStdString((folder_ / name.toStdString()).string()); }

private:
    static void openssl(const QStringList& words) {
        QProcess program;
        program.setProcessChannelMode(QProcess::MergedChannels);
        program.start(QStringLiteral("openssl"), words);
        EXPECT_TRUE(program.waitForFinished() && program.exitCode() == 0) << program.readAll().toStdString();
    }
    TempFolder folder_;
};

/// The name that the certificates are for, beside `localhost`. It is found at an address where nobody listens and at that of the peer.
constexpr const char* bench_name = "secured.bench.test";

enum class Certificate { good, other_host, address_alone, expired, unknown_authority };

struct Secured : testing::TestWithParam<Certificate> {
    static void SetUpTestSuite() {
        trusted = new Authority;
        stranger = new Authority;
        const QString begun = QStringLiteral("20200101000000Z"), ended = QStringLiteral("20210101000000Z"), far = QStringLiteral("20991231000000Z");
        const char* const own_hosts = "DNS:localhost,DNS:secured.bench.test";
        trusted->sign(QStringLiteral("good"), own_hosts, begun, far);
        trusted->sign(QStringLiteral("other_host"), "DNS:broker.example.org", begun, far);
        trusted->sign(QStringLiteral("address_alone"), "IP:127.0.0.1,IP:::1", begun, far);
        trusted->sign(QStringLiteral("expired"), own_hosts, begun, ended);
        stranger->sign(QStringLiteral("unknown_authority"), own_hosts, begun, far);
        // What this machine trusts, for OpenSSL and for Qt.
        qputenv("SSL_CERT_FILE", trusted->path(QStringLiteral("ca.crt")).toLocal8Bit());
        QSslConfiguration trusting = QSslConfiguration::defaultConfiguration();
        trusting.setCaCertificates(QSslCertificate::fromPath(trusted->path(QStringLiteral("ca.crt"))));
        QSslConfiguration::setDefaultConfiguration(trusting);
    }
    static void TearDownTestSuite() {
        delete trusted;
        delete stranger;
    }
    static QString fileOf(const char* ending) { return fileOf(GetParam(), ending); }
    static QString fileOf(Certificate certificate, const char* ending) {
        switch (certificate) {
        case Certificate::good: return trusted->path(QStringLiteral("good") + QLatin1String(ending));
        case Certificate::other_host: return trusted->path(QStringLiteral("other_host") + QLatin1String(ending));
        case Certificate::address_alone: return trusted->path(QStringLiteral("address_alone") + QLatin1String(ending));
        case Certificate::expired: return trusted->path(QStringLiteral("expired") + QLatin1String(ending));
        case Certificate::unknown_authority: break;
        }
        return stranger->path(QStringLiteral("unknown_authority") + QLatin1String(ending));
    }
    /// Reads the source until something comes, or it fails.
    static void expectByCertificate(const LiveSource& source, bool holds, const QString& password = {}) {
        const auto link = SourceLink::make(source, password);
        QString why;
        std::optional<TraceSample> first;
        QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
        QObject::connect(link.get(), &SourceLink::values, link.get(), [&first](const TraceSample& sample) { first = sample; });
        link->start();
        EXPECT_TRUE(QTest::qWaitFor([&] { return first || (!holds && !why.isEmpty()); }, 20'000)) << why.toStdString();
        link->stop();
        if (holds) {
            EXPECT_EQ(first.value_or(TraceSample{}).power_w, 431.5) << why.toStdString();
        } else {
            EXPECT_FALSE(first) << "a peer that may be anybody was believed";
            EXPECT_TRUE(why.contains(QStringLiteral("certificate"), Qt::CaseInsensitive)) << why.toStdString();
        }
    }
    static inline Authority *trusted = nullptr, *stranger = nullptr;
};

/// A broker with TLS on 127.0.0.1, and a plug that does not look at its certificate.
class SecuredBroker {
public:
    explicit SecuredBroker(Certificate certificate) {
        // It would give up the rights of an administrator, and with them the keys.
        std::ofstream(folder_ / "broker.conf") << "listener " << port_ << " 127.0.0.1\nallow_anonymous true\ncertfile "
                                               << Secured::fileOf(certificate, ".crt").toStdString() << "\nkeyfile "
                                               << Secured::fileOf(certificate, ".key").toStdString() << "\nuser root\n";
        broker_.setProcessChannelMode(QProcess::MergedChannels);
        broker_.start(QFile::exists(QStringLiteral("/usr/sbin/mosquitto")) ? QStringLiteral("/usr/sbin/mosquitto") : QStringLiteral("mosquitto"),
                      {QStringLiteral("-c"), QString::fromStdString((folder_ / "broker.conf").string())});
        EXPECT_TRUE(broker_.waitForStarted());
        EXPECT_TRUE(QTest::qWaitFor(
            [this] {
                QTcpSocket probe;
                probe.connectToHost(QHostAddress::LocalHost, port_);
                return probe.waitForConnected(100);
            },
            10'000))
            << broker_.readAll().toStdString();
        mosquitto_lib_init();
        plug_ = mosquitto_new(nullptr, true, nullptr);
        const Authority& signer = certificate == Certificate::unknown_authority ? *Secured::stranger : *Secured::trusted;
        EXPECT_EQ(mosquitto_tls_set(plug_, signer.path(QStringLiteral("ca.crt")).toLocal8Bit().constData(), nullptr, nullptr, nullptr, nullptr),
                  MOSQ_ERR_SUCCESS);
        EXPECT_EQ(mosquitto_tls_opts_set(plug_, 0, nullptr, nullptr), MOSQ_ERR_SUCCESS);
        EXPECT_EQ(mosquitto_connect(plug_, "127.0.0.1", port_, 10), MOSQ_ERR_SUCCESS);
        EXPECT_EQ(mosquitto_loop_start(plug_), MOSQ_ERR_SUCCESS);
        QObject::connect(&tells_, &QTimer::timeout, &tells_, [this] { mosquitto_publish(plug_, nullptr, "bench/plug/power", 5, "431.5", 0, false); });
        tells_.start(100);
    }
    ~SecuredBroker() {
        mosquitto_loop_stop(plug_, true);
        mosquitto_destroy(plug_);
        mosquitto_lib_cleanup();
        broker_.kill();
        broker_.waitForFinished();
    }
    SecuredBroker(const SecuredBroker&) = delete;
    SecuredBroker& operator=(const SecuredBroker&) = delete;

    [[nodiscard]] LiveSource source(const std::string& host) const { return secured_source(host, port_); }
    static LiveSource secured_source(const std::string& host, quint16 port) {
        LiveSource source;
        source.kind = SourceKind::mqtt;
        source.address = host + ':' + std::to_string(port);
        source.tls = true;
        EXPECT_TRUE(take_fields(source, "power bench/plug/power"));
        return source;
    }

private:
    const quint16 port_ = free_port();
    const TempFolder folder_;
    QProcess broker_;
    mosquitto* plug_ = nullptr;
    QTimer tells_;
};

TEST_P(Secured, mqtt_is_read_from_a_broker_whose_certificate_holds_and_from_no_other) {
    const SecuredBroker broker(GetParam());
    expectByCertificate(broker.source("localhost"), GetParam() == Certificate::good);
}

TEST_P(Secured, mqtt_is_read_by_the_name_that_was_typed_whichever_of_its_addresses_answers) {
    const SecuredBroker broker(GetParam());
    const NamedHost host(bench_name, {"::1", "127.0.0.2", "127.0.0.1"});
    expectByCertificate(broker.source(bench_name), GetParam() == Certificate::good);
}

TEST_P(Secured, mqtt_is_read_by_an_address_that_was_typed_where_the_certificate_is_for_that) {
    const SecuredBroker broker(GetParam());
    expectByCertificate(broker.source("127.0.0.1"), GetParam() == Certificate::address_alone);
}

TEST_P(Secured, https_is_read_from_a_host_whose_certificate_holds_and_from_no_other) {
    QSslServer server;
    QFile key(fileOf(".key"));
    ASSERT_TRUE(key.open(QFile::ReadOnly));
    QSslConfiguration identity = QSslConfiguration::defaultConfiguration();
    identity.setLocalCertificate(QSslCertificate::fromPath(fileOf(".crt")).value(0));
    identity.setPrivateKey(QSslKey(&key, QSsl::Ec));
    server.setSslConfiguration(identity);
    ASSERT_TRUE(server.listen(QHostAddress::LocalHost));
    QByteArray asked;
    QObject::connect(&server, &QTcpServer::pendingConnectionAvailable, &server, [&] {
        while (QTcpSocket* socket = server.nextPendingConnection())
            QObject::connect(socket, &QTcpSocket::readyRead, socket, [socket, &asked] {
                asked += socket->readAll();
                socket->write("HTTP/1.1 200 OK\r\nContent-Length: 5\r\n\r\n431.5");
            });
    });
    LiveSource source;
    source.kind = SourceKind::http;
    source.interval_s = 0.2;
    source.address = "https://localhost:" + std::to_string(server.serverPort()) + "/status";
    source.user = "bench";
    ASSERT_TRUE(take_fields(source, "power body"));
    expectByCertificate(source, GetParam() == Certificate::good, QStringLiteral("very secret"));
    if (GetParam() != Certificate::good) {
        EXPECT_EQ(asked, "") << "something was asked of a peer that may be anybody";
    }
}

/// The first bytes that a secured source sends to a peer on 127.0.0.1, the hello of TLS.
QByteArray hello_to(const std::string& host) {
    QTcpServer server;
    EXPECT_TRUE(server.listen(QHostAddress::LocalHost));
    QByteArray hello;
    QObject::connect(&server, &QTcpServer::newConnection, &server, [&] {
        QTcpSocket* socket = server.nextPendingConnection();
        QObject::connect(socket, &QTcpSocket::readyRead, socket, [socket, &hello] { hello += socket->readAll(); });
    });
    const auto link = SourceLink::make(SecuredBroker::secured_source(host, server.serverPort()));
    link->start();
    EXPECT_TRUE(QTest::qWaitFor([&hello] { return !hello.isEmpty(); }, 10'000));
    link->stop();
    return hello;
}

TEST(SecuredHello, names_the_host_that_was_typed_so_that_a_machine_with_several_shows_the_right_certificate) {
    const NamedHost host("hello.bench.test", {"127.0.0.1"});
    const QByteArray hello = hello_to("hello.bench.test");
    EXPECT_TRUE(hello.contains("hello.bench.test"));
    EXPECT_FALSE(hello.contains("127.0.0.1"));
    EXPECT_FALSE(hello_to("127.0.0.1").contains("127.0.0.1")) << "RFC 6066, 3: an address is no name of a host";
}

std::string certificate_name(const testing::TestParamInfo<Certificate>& certificate) {
    constexpr const char* names[] = {"that_holds", "of_another_host", "of_the_address_alone", "that_has_expired", "of_an_unknown_authority"};
    return names[static_cast<int>(certificate.param)];
}

INSTANTIATE_TEST_SUITE_P(Certificates, Secured,
                         testing::Values(Certificate::good, Certificate::other_host, Certificate::address_alone, Certificate::expired,
                                         Certificate::unknown_authority),
                         certificate_name);

} // namespace
} // namespace ullage
