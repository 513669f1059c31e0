// SPDX-License-Identifier: GPL-3.0-or-later
// Secured connections, with authorities and certificates that the test makes itself (program `openssl`): what may be trusted is read, and what may
// not is refused with a word.
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
    /// A certificate for a host: NAME.crt and NAME.key.
    void sign(const QString& name, const QString& host, const QString& from, const QString& until) {
        openssl({"req", "-new", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-subj", "/CN=" + host, "-keyout",
                 path(name + ".key"), "-out", path(name + ".csr")});
        std::ofstream((folder_ / (name + ".ext").toStdString())) << "subjectAltName=DNS:" << host.toStdString() << "\n";
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

enum class Certificate { good, other_host, expired, unknown_authority };

struct Secured : testing::TestWithParam<Certificate> {
    static void SetUpTestSuite() {
        trusted = new Authority;
        stranger = new Authority;
        const QString begun = QStringLiteral("20200101000000Z"), ended = QStringLiteral("20210101000000Z"), far = QStringLiteral("20991231000000Z");
        trusted->sign(QStringLiteral("good"), QStringLiteral("localhost"), begun, far);
        trusted->sign(QStringLiteral("other_host"), QStringLiteral("broker.example.org"), begun, far);
        trusted->sign(QStringLiteral("expired"), QStringLiteral("localhost"), begun, ended);
        stranger->sign(QStringLiteral("unknown_authority"), QStringLiteral("localhost"), begun, far);
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
    static QString fileOf(const char* ending) {
        switch (GetParam()) {
        case Certificate::good: return trusted->path(QStringLiteral("good") + QLatin1String(ending));
        case Certificate::other_host: return trusted->path(QStringLiteral("other_host") + QLatin1String(ending));
        case Certificate::expired: return trusted->path(QStringLiteral("expired") + QLatin1String(ending));
        case Certificate::unknown_authority: break;
        }
        return stranger->path(QStringLiteral("unknown_authority") + QLatin1String(ending));
    }
    /// Reads the source until something comes, or it fails.
    void expectByCertificate(const LiveSource& source, const QString& password = {}) {
        const auto link = SourceLink::make(source, password);
        QString why;
        std::optional<TraceSample> first;
        QObject::connect(link.get(), &SourceLink::failed, link.get(), [&why](const QString& words) { why = words; });
        QObject::connect(link.get(), &SourceLink::values, link.get(), [&first](const TraceSample& sample) { first = sample; });
        link->start();
        EXPECT_TRUE(QTest::qWaitFor([&] { return first || (GetParam() != Certificate::good && !why.isEmpty()); }, 20'000)) << why.toStdString();
        link->stop();
        if (GetParam() == Certificate::good) {
            EXPECT_EQ(first.value_or(TraceSample{}).power_w, 431.5) << why.toStdString();
        } else {
            EXPECT_FALSE(first) << "a peer that may be anybody was believed";
            EXPECT_TRUE(why.contains(QStringLiteral("certificate"), Qt::CaseInsensitive) || why.contains(QStringLiteral("host name")))
                << why.toStdString();
        }
    }
    static inline Authority *trusted = nullptr, *stranger = nullptr;
};

TEST_P(Secured, mqtt_is_read_from_a_broker_whose_certificate_holds_and_from_no_other) {
    const quint16 port = free_port();
    const TempFolder folder;
    std::ofstream(folder / "broker.conf") << "listener " << port << " 127.0.0.1\nallow_anonymous true\ncertfile " << fileOf(".crt").toStdString()
                                          << "\nkeyfile " << fileOf(".key").toStdString() << "\n";
    // It gives up the rights of an administrator, and with them the keys.
    std::ofstream(folder / "broker.conf", std::ios::app) << "user root\n";
    QProcess broker;
    broker.setProcessChannelMode(QProcess::MergedChannels);
    broker.start(QFile::exists(QStringLiteral("/usr/sbin/mosquitto")) ? QStringLiteral("/usr/sbin/mosquitto") : QStringLiteral("mosquitto"),
                 {QStringLiteral("-c"), QString::fromStdString((folder / "broker.conf").string())});
    ASSERT_TRUE(broker.waitForStarted());
    ASSERT_TRUE(QTest::qWaitFor(
        [port] {
            QTcpSocket probe;
            probe.connectToHost(QHostAddress::LocalHost, port);
            return probe.waitForConnected(100);
        },
        10'000))
        << broker.readAll().toStdString();
    // A plug that does not look at certificates.
    mosquitto_lib_init();
    mosquitto* plug = mosquitto_new(nullptr, true, nullptr);
    const QByteArray authority = (GetParam() == Certificate::unknown_authority ? stranger : trusted)->path(QStringLiteral("ca.crt")).toLocal8Bit();
    ASSERT_EQ(mosquitto_tls_set(plug, authority.constData(), nullptr, nullptr, nullptr, nullptr), MOSQ_ERR_SUCCESS);
    ASSERT_EQ(mosquitto_tls_opts_set(plug, 0, nullptr, nullptr), MOSQ_ERR_SUCCESS);
    ASSERT_EQ(mosquitto_connect(plug, "localhost", port, 10), MOSQ_ERR_SUCCESS);
    ASSERT_EQ(mosquitto_loop_start(plug), MOSQ_ERR_SUCCESS);
    QTimer tells;
    QObject::connect(&tells, &QTimer::timeout, &tells, [plug] { mosquitto_publish(plug, nullptr, "bench/plug/power", 5, "431.5", 0, false); });
    tells.start(100);

    LiveSource source;
    source.kind = SourceKind::mqtt;
    source.address = "localhost:" + std::to_string(port);
    source.tls = true;
    ASSERT_TRUE(take_fields(source, "power bench/plug/power"));
    expectByCertificate(source);
    mosquitto_loop_stop(plug, true);
    mosquitto_destroy(plug);
    mosquitto_lib_cleanup();
    broker.kill();
    broker.waitForFinished();
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
    expectByCertificate(source, QStringLiteral("very secret"));
    if (GetParam() != Certificate::good) {
        EXPECT_EQ(asked, "") << "something was asked of a peer that may be anybody";
    }
}

std::string certificate_name(const testing::TestParamInfo<Certificate>& certificate) {
    constexpr const char* names[] = {"that_holds", "of_another_host", "that_has_expired", "of_an_unknown_authority"};
    return names[static_cast<int>(certificate.param)];
}

INSTANTIATE_TEST_SUITE_P(Certificates, Secured,
                         testing::Values(Certificate::good, Certificate::other_host, Certificate::expired, Certificate::unknown_authority),
                         certificate_name);

} // namespace
} // namespace ullage
