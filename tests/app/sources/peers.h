// SPDX-License-Identifier: GPL-3.0-or-later
// Meters that speak as the standards say, for the tests to talk to, and to fail as meters do.
#pragma once

#include "drain_truth.h"

#include <QByteArray>
#include <QModbusServer>
#include <QProcess>
#include <QSocketNotifier>
#include <QTcpServer>
#include <QTemporaryDir>
#include <QTimer>

#include <functional>
#include <memory>

struct mosquitto;

namespace ullage::test {

/// A port of this machine that nobody listens at just now.
[[nodiscard]] quint16 free_port();

/// A meter, reached by `source()`.
class Peer : public QObject {
    Q_OBJECT
public:
    explicit Peer(const DrainTruth& truth) : truth_(truth) {}
    [[nodiscard]] virtual LiveSource source() const = 0;
    /// The cable is pulled, or put in again.
    virtual void setGone(bool gone) = 0;
    /// What it says is nonsense, or sense again.
    void setNonsense(bool nonsense) { nonsense_ = nonsense; }

protected:
    [[nodiscard]] const DrainTruth& truth() const { return truth_; }
    [[nodiscard]] bool nonsense() const { return nonsense_; }

private:
    const DrainTruth& truth_;
    bool nonsense_ = false;
};

/// SunSpec model 203 over Modbus TCP, or over a serial line by a pair of pseudo terminals.
class ModbusPeer final : public Peer {
    Q_OBJECT
public:
    ModbusPeer(const DrainTruth& truth, bool serial);
    ~ModbusPeer() override;
    [[nodiscard]] LiveSource source() const override;
    void setGone(bool gone) override;

private:
    void fill();

    bool serial_;
    quint16 port_;
    QTemporaryDir folder_;
    QProcess socat_;
    std::unique_ptr<QModbusServer> server_;
    QTimer fill_timer_;
};

/// A plug that tells its broker: JSON for the power, a plain number for the register. The broker is the program `mosquitto`.
class MqttPeer final : public Peer {
    Q_OBJECT
public:
    explicit MqttPeer(const DrainTruth& truth);
    ~MqttPeer() override;
    [[nodiscard]] LiveSource source() const override;
    void setGone(bool gone) override;
    void publish(const char* topic, const QByteArray& payload, bool retain = false);

private:
    void startBroker();

    quint16 port_;
    QProcess broker_;
    mosquitto* client_;
    QTimer tell_timer_;
};

/// A web service with a status as JSON.
class HttpPeer final : public Peer {
    Q_OBJECT
public:
    explicit HttpPeer(const DrainTruth& truth);
    [[nodiscard]] LiveSource source() const override;
    void setGone(bool gone) override;
    /// Answers with this instead.
    void setAnswer(const QByteArray& head, qint64 body_bytes) {
        head_ = head;
        body_bytes_ = body_bytes;
    }
    [[nodiscard]] QByteArray lastRequest() const { return request_; }

private:
    void serve(QTcpSocket* socket);

    quint16 port_;
    QTcpServer server_;
    QByteArray head_, request_;
    qint64 body_bytes_ = 0;
};

/// What hangs at a serial line, by a pseudo terminal: says lines by itself, or answers what it is asked.
class TerminalPeer final : public Peer {
    Q_OBJECT
public:
    enum class Kind { lines, readout, scpi };
    TerminalPeer(const DrainTruth& truth, Kind kind);
    ~TerminalPeer() override;
    [[nodiscard]] LiveSource source() const override;
    void setGone(bool gone) override { gone_ = gone; }
    void say(const QByteArray& bytes) const;
    [[nodiscard]] QByteArray heard() const { return heard_; }
    /// What the read-out begins with, `/XXXZ…`: Z says the mode, and the speed of what follows. Without `acknowledged` the data come unasked.
    void setIdentification(const QByteArray& line, bool acknowledged, bool framed) {
        identification_ = line;
        acknowledged_ = acknowledged;
        framed_ = framed;
    }
    /// The speed that the reading side has set, as termios(3) knows it.
    [[nodiscard]] unsigned speed() const;

private:
    void sendData();
    void hear();
    void answer(const QByteArray& line);
    [[nodiscard]] QByteArray dataBlock() const;

    Kind kind_;
    int master_ = -1, kept_ = -1;
    QByteArray path_;
    std::unique_ptr<QSocketNotifier> notifier_;
    QTimer tell_timer_;
    bool gone_ = false;
    QByteArray begun_, heard_;
    QByteArray identification_ = "/XYZ5 bench meter\r\n";
    bool acknowledged_ = true, framed_ = true;
};

/// An instrument over TCP.
class ScpiPeer final : public Peer {
    Q_OBJECT
public:
    explicit ScpiPeer(const DrainTruth& truth);
    [[nodiscard]] LiveSource source() const override;
    void setGone(bool gone) override;

private:
    quint16 port_;
    QTcpServer server_;
};

} // namespace ullage::test
