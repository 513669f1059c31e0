// SPDX-License-Identifier: GPL-3.0-or-later
#include "peers.h"

#include "live/readout.h"

#include <QFileInfo>
#include <QHostAddress>
#include <QModbusDataUnitMap>
#include <QModbusRtuSerialServer>
#include <QModbusTcpServer>
#include <QSerialPort>
#include <QTcpSocket>
#include <QTest>

#include <gtest/gtest.h>

#include <fcntl.h>
#include <mosquitto.h>
#include <termios.h>
#include <unistd.h>

#include <cstdlib>

namespace ullage::test {

namespace {

LiveSource source_of(SourceKind kind, const QString& address, const char* read) {
    LiveSource source;
    source.kind = kind;
    source.address = address.toStdString();
    source.interval_s = 0.1;
    const auto taken = take_fields(source, read);
    EXPECT_TRUE(taken);
    return source;
}

QString local(quint16 port) { return QStringLiteral("127.0.0.1:%1").arg(port); }

QByteArray fixed(double value, int decimals = 3) { return QByteArray::number(value, 'f', decimals); }

} // namespace

quint16 free_port() {
    QTcpServer server;
    EXPECT_TRUE(server.listen(QHostAddress::LocalHost));
    return server.serverPort();
}

ModbusPeer::ModbusPeer(const DrainTruth& truth, bool serial) : Peer(truth), serial_(serial), port_(free_port()) {
    if (serial_) {
        socat_.start(QStringLiteral("socat"), {QStringLiteral("pty,raw,echo=0,link=%1").arg(folder_.filePath(QStringLiteral("meter"))),
                                               QStringLiteral("pty,raw,echo=0,link=%1").arg(folder_.filePath(QStringLiteral("program")))});
        EXPECT_TRUE(QTest::qWaitFor([this] { return QFileInfo::exists(folder_.filePath(QStringLiteral("program"))); }, 5000)) << "socat";
        server_ = std::make_unique<QModbusRtuSerialServer>();
        server_->setConnectionParameter(QModbusDevice::SerialPortNameParameter, folder_.filePath(QStringLiteral("meter")));
        server_->setConnectionParameter(QModbusDevice::SerialBaudRateParameter, QSerialPort::Baud115200);
        server_->setConnectionParameter(QModbusDevice::SerialParityParameter, QSerialPort::NoParity);
    } else {
        server_ = std::make_unique<QModbusTcpServer>();
        server_->setConnectionParameter(QModbusDevice::NetworkAddressParameter, QStringLiteral("127.0.0.1"));
        server_->setConnectionParameter(QModbusDevice::NetworkPortParameter, port_);
    }
    QModbusDataUnitMap map;
    map.insert(QModbusDataUnit::HoldingRegisters, {QModbusDataUnit::HoldingRegisters, 40'000, 200});
    server_->setMap(map);
    server_->setServerAddress(1);
    fill();
    EXPECT_TRUE(server_->connectDevice()) << server_->errorString().toStdString();
    connect(&fill_timer_, &QTimer::timeout, this, &ModbusPeer::fill);
    fill_timer_.start(10);
}

ModbusPeer::~ModbusPeer() {
    server_->disconnectDevice();
    socat_.kill();
    socat_.waitForFinished();
}

void ModbusPeer::fill() {
    const auto set = [this](int address, int value) {
        (void)server_->setData(QModbusDataUnit::HoldingRegisters, static_cast<quint16>(address), static_cast<quint16>(value));
    };
    // Marker, common model of 66 registers, meter model 203 of 105, end.
    set(40'000, 0x5375);
    set(40'001, 0x6e53);
    set(40'002, 1);
    set(40'003, 66);
    set(40'070, 203);
    set(40'071, 105);
    set(40'070 + 18, nonsense() ? 0x8000 : static_cast<int>(std::lround(10 * truth().power_w())));
    set(40'070 + 22, 0xffff);
    const auto tenths = static_cast<quint32>(std::lround(10 * truth().register_wh())) + (nonsense() ? 1'000'000'000U : 0U);
    set(40'070 + 46, static_cast<int>(tenths >> 16U));
    set(40'070 + 47, static_cast<int>(tenths & 0xffffU));
    set(40'070 + 54, 0xffff);
    set(40'070 + 107, 0xffff);
}

LiveSource ModbusPeer::source() const {
    if (!serial_) return source_of(SourceKind::modbus_tcp, local(port_), "sunspec imported");
    LiveSource source = source_of(SourceKind::modbus_rtu, folder_.filePath(QStringLiteral("program")), "sunspec imported");
    source.line = {115'200, 8, 'N', 1};
    return source;
}

void ModbusPeer::setGone(bool gone) {
    if (gone) server_->disconnectDevice();
    else EXPECT_TRUE(server_->connectDevice());
}

MqttPeer::MqttPeer(const DrainTruth& truth) : Peer(truth), port_(free_port()) {
    mosquitto_lib_init();
    startBroker();
    client_ = mosquitto_new(nullptr, true, nullptr);
    mosquitto_reconnect_delay_set(client_, 1, 1, false);
    EXPECT_EQ(mosquitto_connect(client_, "127.0.0.1", port_, 10), MOSQ_ERR_SUCCESS);
    EXPECT_EQ(mosquitto_loop_start(client_), MOSQ_ERR_SUCCESS);
    publish("bench/plug", R"({"watts": 7777})", true); // what was kept from another day
    connect(&tell_timer_, &QTimer::timeout, this, [this] {
        publish("bench/plug", nonsense() ? QByteArray(R"({"watts": NaN})") : R"({"watts": )" + fixed(this->truth().power_w()) + "}");
        publish("bench/plug/energy", nonsense() ? QByteArray("99999999") : fixed(this->truth().register_wh() / 1000, 4));
    });
    tell_timer_.start(100);
}

MqttPeer::~MqttPeer() {
    mosquitto_loop_stop(client_, true);
    mosquitto_destroy(client_);
    broker_.kill();
    broker_.waitForFinished();
    mosquitto_lib_cleanup();
}

void MqttPeer::startBroker() {
    const QString found =
        QFileInfo::exists(QStringLiteral("/usr/sbin/mosquitto")) ? QStringLiteral("/usr/sbin/mosquitto") : QStringLiteral("mosquitto");
    broker_.setProcessChannelMode(QProcess::MergedChannels);
    broker_.start(found, {QStringLiteral("-p"), QString::number(port_)});
    EXPECT_TRUE(broker_.waitForStarted());
    EXPECT_TRUE(QTest::qWaitFor(
        [this] {
            QTcpSocket probe;
            probe.connectToHost(QHostAddress::LocalHost, port_);
            return probe.waitForConnected(100);
        },
        10'000))
        << broker_.readAll().toStdString();
}

void MqttPeer::publish(const char* topic, const QByteArray& payload, bool retain) {
    (void)mosquitto_publish(client_, nullptr, topic, static_cast<int>(payload.size()), payload.constData(), 0, retain);
}

LiveSource MqttPeer::source() const {
    return source_of(SourceKind::mqtt, local(port_), "power bench/plug#/watts\nregister bench/plug/energy in kWh");
}

void MqttPeer::setGone(bool gone) {
    if (gone) {
        broker_.kill();
        broker_.waitForFinished();
    } else {
        startBroker();
    }
}

HttpPeer::HttpPeer(const DrainTruth& truth) : Peer(truth), port_(free_port()) {
    connect(&server_, &QTcpServer::newConnection, this, [this] {
        while (QTcpSocket* socket = server_.nextPendingConnection()) {
            connect(socket, &QTcpSocket::readyRead, this, [this, socket] { serve(socket); });
            connect(socket, &QTcpSocket::disconnected, socket, &QObject::deleteLater);
        }
    });
    setGone(false);
}

void HttpPeer::serve(QTcpSocket* socket) {
    request_ = socket->readAll();
    if (!request_.endsWith("\r\n\r\n")) return;
    if (!head_.isEmpty()) {
        socket->write(head_ + "\r\n\r\n");
        // A body that is made as it goes out.
        const auto left = std::make_shared<qint64>(body_bytes_);
        const auto more = [socket, left] {
            while (*left > 0 && socket->bytesToWrite() < 1'000'000) {
                const qint64 piece = std::min<qint64>(*left, 65'536);
                socket->write(QByteArray(piece, '1'));
                *left -= piece;
            }
            if (*left <= 0) socket->disconnectFromHost();
        };
        connect(socket, &QTcpSocket::bytesWritten, socket, more);
        more();
        return;
    }
    const QByteArray body = nonsense()
                                ? QByteArray(R"({"meters":[{"power":null,"energy":"?"}]})")
                                : R"({"meters":[{"power":)" + fixed(truth().power_w()) + R"(,"energy":)" + fixed(truth().register_wh()) + "}]}";
    socket->write("HTTP/1.1 200 OK\r\nContent-Type: application/json\r\nContent-Length: " + QByteArray::number(body.size()) + "\r\n\r\n" + body);
}

LiveSource HttpPeer::source() const {
    return source_of(SourceKind::http, QStringLiteral("http://127.0.0.1:%1/status").arg(port_),
                     "power #/meters/0/power\nregister #/meters/0/energy in Wh");
}

void HttpPeer::setGone(bool gone) {
    if (!gone) {
        EXPECT_TRUE(server_.listen(QHostAddress::LocalHost, port_));
        return;
    }
    server_.close();
    for (QTcpSocket* socket : server_.findChildren<QTcpSocket*>()) socket->abort();
}

TerminalPeer::TerminalPeer(const DrainTruth& truth, Kind kind) : Peer(truth), kind_(kind), master_(::posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK)) {
    EXPECT_GE(master_, 0);
    EXPECT_EQ(::grantpt(master_), 0);
    EXPECT_EQ(::unlockpt(master_), 0);
    path_ = ::ptsname(master_);
    kept_ = ::open(path_.constData(), O_RDWR | O_NOCTTY); // else the terminal hangs up whenever the program closes it
    EXPECT_GE(kept_, 0);
    notifier_ = std::make_unique<QSocketNotifier>(master_, QSocketNotifier::Read);
    connect(notifier_.get(), &QSocketNotifier::activated, this, &TerminalPeer::hear);
    if (kind != Kind::lines) return;
    connect(&tell_timer_, &QTimer::timeout, this, [this] {
        if (gone_) return;
        if (nonsense()) say("\xff\x80 boot v1.2 ###\r\n");
        else
            say("230.1 V;" + fixed(this->truth().power_w() / 230.1) + " A;" + fixed(this->truth().power_w()) + " W;" +
                fixed(this->truth().register_wh(), 1) + " Wh\r\n");
    });
    tell_timer_.start(100);
}

TerminalPeer::~TerminalPeer() {
    ::close(kept_);
    ::close(master_);
}

void TerminalPeer::say(const QByteArray& bytes) const { (void)!::write(master_, bytes.constData(), static_cast<size_t>(bytes.size())); }

void TerminalPeer::hear() {
    char buffer[4096];
    const auto got = ::read(master_, buffer, sizeof buffer);
    if (got <= 0) return;
    heard_ += QByteArray(buffer, got);
    if (gone_) return;
    begun_ += QByteArray(buffer, got);
    for (auto end = begun_.indexOf('\n'); end >= 0; end = begun_.indexOf('\n')) {
        answer(begun_.left(end + 1));
        begun_.remove(0, end + 1);
    }
}

QByteArray TerminalPeer::dataBlock() const {
    const QByteArray covered = "0.0.0(00001234)\r\n1.8.0(" + fixed(truth().register_wh() / 1000, 4).rightJustified(11, '0') + "*kWh)\r\n16.7.0(" +
                               fixed(truth().power_w() / 1000, 4) + "*kW)\r\n!\r\n\x03";
    if (!framed_) return covered.chopped(1);
    std::uint8_t check = 0;
    for (const char c : covered) check ^= static_cast<std::uint8_t>(c);
    return "\x02" + covered + static_cast<char>(nonsense() ? check ^ 0x55U : check);
}

void TerminalPeer::answer(const QByteArray& line) {
    if (kind_ == Kind::readout && line == "/?!\r\n") {
        say(line + identification_); // the head echoes
        if (!acknowledged_) sendData();
    } else if (kind_ == Kind::readout && line == "\x06"
                                                 "050\r\n")
        sendData();
    else if (kind_ == Kind::scpi && line == "FETC:POW?\n")
        say(nonsense() ? QByteArray("9.91E37\n") : QByteArray::number(truth().power_w(), 'E', 6) + "\n");
    else if (kind_ == Kind::scpi && line == "FETC:ENER?\n") say(nonsense() ? QByteArray("ERR\n") : "0," + fixed(truth().register_wh()) + "\n");
}

void TerminalPeer::sendData() {
    QTimer::singleShot(20, this, [this] { say(dataBlock()); });
}

unsigned TerminalPeer::speed() const {
    termios line{};
    EXPECT_EQ(::tcgetattr(kept_, &line), 0);
    return ::cfgetispeed(&line);
}

LiveSource TerminalPeer::source() const {
    if (kind_ == Kind::readout) {
        LiveSource source = source_of(SourceKind::readout, QString::fromLatin1(path_), "register 1.8.0\npower 16.7.0");
        source.line = {9600, 7, 'E', 1};
        return source;
    }
    if (kind_ == Kind::scpi) return source_of(SourceKind::scpi_device, QString::fromLatin1(path_), "power FETC:POW?\nregister FETC:ENER? item 2");
    return source_of(SourceKind::serial_lines, QString::fromLatin1(path_), "detect");
}

ScpiPeer::ScpiPeer(const DrainTruth& truth) : Peer(truth), port_(free_port()) {
    connect(&server_, &QTcpServer::newConnection, this, [this] {
        while (QTcpSocket* socket = server_.nextPendingConnection()) {
            connect(socket, &QTcpSocket::readyRead, this, [this, socket] {
                while (socket->canReadLine())
                    if (socket->readLine() == "FETC?\n")
                        socket->write(nonsense() ? QByteArray("NAN,NAN\n")
                                                 : fixed(this->truth().power_w()) + "," + fixed(this->truth().register_wh()) + "\n");
            });
            connect(socket, &QTcpSocket::disconnected, socket, &QObject::deleteLater);
        }
    });
    setGone(false);
}

LiveSource ScpiPeer::source() const { return source_of(SourceKind::scpi_tcp, local(port_), "power FETC?\nregister FETC? item 2"); }

void ScpiPeer::setGone(bool gone) {
    if (!gone) {
        EXPECT_TRUE(server_.listen(QHostAddress::LocalHost, port_));
        return;
    }
    server_.close();
    for (QTcpSocket* socket : server_.findChildren<QTcpSocket*>()) socket->abort();
}

} // namespace ullage::test
