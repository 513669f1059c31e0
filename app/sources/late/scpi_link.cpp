// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/scpi_link.h"

#include "live/scpi_answer.h"
#include "sources/late/peer_words.h"
#include "sources/late/serial_line.h"
#include "style/clauses.h"
#include "style/words.h"

#include <QNetworkProxy>
#include <QTcpSocket>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr int scpi_patience_ms = 3000;
constexpr qint64 most_scpi_bytes = 65'536;

} // namespace

ScpiLink::ScpiLink(const LiveSource& source) : SourceLink(source) {
    for (const LiveField& field : source.fields)
        if (std::ranges::find(queries_, field.place) == queries_.end()) queries_.push_back(field.place);
    poll_timer_.setInterval(static_cast<int>(std::lround(1000 * source.interval_s)));
    connect(&poll_timer_, &QTimer::timeout, this, &ScpiLink::poll);
    connect(&walk_, &AddressWalk::tried, this, &ScpiLink::connectTo);
    connect(&walk_, &AddressWalk::unknown, this, &ScpiLink::fail);
    connect(&walk_, &AddressWalk::exhausted, this, [this](const QString& why) { fail(joined_clauses({why, check_peer()})); });
    patience_.setSingleShot(true);
    connect(&patience_, &QTimer::timeout, this, [this] {
        waiting_ = false;
        misunderstand();
        // An answer that comes late must not be taken for that to the next query.
        fail(tr("the instrument does not answer %1").arg(raw_text(queries_.at(asked_ - 1))));
    });
}

ScpiLink::~ScpiLink() { close(); }

void ScpiLink::open() {
    close();
    cutter_ = {};
    if (source().kind == SourceKind::scpi_tcp) walk_.begin(source().peer());
    else openSerial();
}

void ScpiLink::connectTo(const QString& address) {
    drop();
    auto socket = std::make_unique<QTcpSocket>();
    socket->setProxy(QNetworkProxy(QNetworkProxy::NoProxy));
    socket->setReadBufferSize(most_scpi_bytes);
    connect(socket.get(), &QTcpSocket::connected, this, [this] {
        walk_.answered();
        ready();
    });
    connect(socket.get(), &QTcpSocket::errorOccurred, this, [this] {
        const QString why = device_->errorString();
        drop();
        if (walk_.waits()) walk_.fell(why);
        else fail(why);
    });
    connect(socket.get(), &QTcpSocket::readyRead, this, &ScpiLink::take);
    auto* const raw = socket.get();
    device_ = std::move(socket);
    raw->connectToHost(address, static_cast<quint16>(source().peer().port));
}

void ScpiLink::openSerial() {
    auto port = std::make_unique<QSerialPort>();
    set_line(*port, source());
    connect(port.get(), &QSerialPort::readyRead, this, &ScpiLink::take);
    connect(port.get(), &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
        if (is_lost(error) && device_ && device_->isOpen()) fail(device_->errorString());
    });
    auto* const raw = port.get();
    device_ = std::move(port);
    if (raw->open(QIODevice::ReadWrite)) ready();
    else fail(device_->errorString());
}

void ScpiLink::ready() {
    emit connected();
    poll_timer_.start();
    poll();
}

void ScpiLink::poll() {
    if (waiting_ || !device_) return;
    sample_ = {};
    asked_ = 0;
    askNext();
}

void ScpiLink::askNext() {
    if (asked_ == queries_.size()) {
        if (!saysAnything(sample_)) {
            misunderstand();
            return;
        }
        workWell();
        emit values(sample_, false);
        return;
    }
    const std::string query = queries_[asked_++] + '\n';
    waiting_ = true;
    patience_.start(scpi_patience_ms);
    device_->write(query.data(), static_cast<qint64>(query.size()));
}

void ScpiLink::take() {
    if (!device_) return;
    const QByteArray bytes = device_->readAll();
    const long too_long = cutter_.too_long();
    cutter_.take({bytes.constData(), static_cast<std::size_t>(bytes.size())}, [this](std::string_view line) { takeAnswer(line); });
    if (cutter_.too_long() > too_long) fail(tr("an answer without end came"));
}

void ScpiLink::takeAnswer(std::string_view answer) {
    if (!waiting_) return; // nobody asked
    waiting_ = false;
    patience_.stop();
    const std::string& query = queries_.at(asked_ - 1);
    for (const LiveField& field : source().fields)
        if (field.place == query) put(sample_, field, number_in_answer(answer, field));
    askNext();
}

void ScpiLink::close() {
    walk_.stop();
    drop();
}

void ScpiLink::drop() {
    poll_timer_.stop();
    patience_.stop();
    waiting_ = false;
    if (!device_) return;
    device_->disconnect(this);
    device_->close();
    device_.release()->deleteLater(); // it may be the one whose signal has led here
}

} // namespace ullage
