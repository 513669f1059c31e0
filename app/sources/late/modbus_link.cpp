// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/modbus_link.h"

#include "sources/late/peer_words.h"
#include "style/clauses.h"
#include "style/words.h"

#include <QModbusReply>
#include <QModbusRtuSerialClient>
#include <QModbusTcpClient>
#include <QSerialPort>

#include <cmath>
#include <utility>

namespace ullage {

namespace {

constexpr int register_answer_ms = 2000;
constexpr int most_unanswered = 3;

QModbusDataUnit::RegisterType table_of(RegisterTable table) {
    return table == RegisterTable::input ? QModbusDataUnit::InputRegisters : QModbusDataUnit::HoldingRegisters;
}

} // namespace

ModbusLink::ModbusLink(const LiveSource& source) : SourceLink(source), blocks_(blocks_of(source.fields)) {
    poll_timer_.setInterval(static_cast<int>(std::lround(1000 * source.interval_s)));
    connect(&poll_timer_, &QTimer::timeout, this, &ModbusLink::poll);
    connect(&walk_, &AddressWalk::tried, this, &ModbusLink::connectTo);
    connect(&walk_, &AddressWalk::unknown, this, &ModbusLink::fail);
    connect(&walk_, &AddressWalk::exhausted, this, [this](const QString& why) { fail(joined_clauses({why, check_peer()})); });
}

ModbusLink::~ModbusLink() { close(); }

void ModbusLink::open() {
    close();
    if (source().kind == SourceKind::modbus_tcp) walk_.begin(source().peer());
    else openSerial();
}

void ModbusLink::connectTo(const QString& address) {
    drop();
    client_ = std::make_unique<QModbusTcpClient>();
    client_->setConnectionParameter(QModbusDevice::NetworkAddressParameter, address);
    client_->setConnectionParameter(QModbusDevice::NetworkPortParameter, source().peer().port);
    begin();
}

void ModbusLink::openSerial() {
    client_ = std::make_unique<QModbusRtuSerialClient>();
    const LineSettings& line = source().line;
    client_->setConnectionParameter(QModbusDevice::SerialPortNameParameter, raw_text(source().address));
    client_->setConnectionParameter(QModbusDevice::SerialBaudRateParameter, line.baud);
    client_->setConnectionParameter(QModbusDevice::SerialDataBitsParameter, line.data_bits == 7 ? QSerialPort::Data7 : QSerialPort::Data8);
    client_->setConnectionParameter(QModbusDevice::SerialStopBitsParameter, line.stop_bits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
    client_->setConnectionParameter(QModbusDevice::SerialParityParameter, line.parity == 'E'   ? QSerialPort::EvenParity
                                                                          : line.parity == 'O' ? QSerialPort::OddParity
                                                                                               : QSerialPort::NoParity);
    begin();
}

void ModbusLink::begin() {
    client_->setTimeout(register_answer_ms);
    client_->setNumberOfRetries(0);
    sunspec_.reset();
    if (source().sunspec) sunspec_.emplace(*source().sunspec);
    connect(client_.get(), &QModbusDevice::stateChanged, this, [this](QModbusDevice::State state) {
        if (state == QModbusDevice::ConnectedState) {
            walk_.answered();
            emit connected();
            poll_timer_.start();
            poll();
        } else if (state == QModbusDevice::UnconnectedState && !walk_.waits()) { // of an address that falls the error follows
            const QString why = client_ ? client_->errorString() : QString();
            fail(why.isEmpty() ? tr("the meter has closed the connection") : why);
        }
    });
    connect(client_.get(), &QModbusDevice::errorOccurred, this, [this](QModbusDevice::Error error) {
        if (error != QModbusDevice::ConnectionError || !client_) return;
        // Of a socket the words of the socket itself: those of the client only enclose them.
        lose(walk_.waits() && client_->device() ? client_->device()->errorString() : client_->errorString());
    });
    if (!client_->connectDevice() && client_) lose(client_->errorString());
}

void ModbusLink::lose(const QString& why) {
    drop();
    if (walk_.waits()) walk_.fell(why);
    else fail(why);
}

void ModbusLink::close() {
    walk_.stop();
    drop();
}

void ModbusLink::drop() {
    poll_timer_.stop();
    unanswered_ = 0;
    waiting_.clear();
    if (!client_) return;
    client_->disconnect(this);
    client_->disconnectDevice();
    client_.release()->deleteLater(); // it may be the one whose signal has led here
}

void ModbusLink::poll() {
    if (!client_ || waiting_) return;
    sample_ = {};
    next_block_ = 0;
    goOn();
}

void ModbusLink::goOn() {
    if (sunspec_) {
        const auto block = sunspec_->next();
        if (block) ask(*block);
        else fail(tr("the device names no SunSpec meter model (201 to 204, 211 to 214); state its registers"));
        return;
    }
    if (next_block_ < blocks_.size()) {
        ask(blocks_[next_block_++]);
        return;
    }
    if (saysAnything(sample_)) emit values(sample_, false);
    else misunderstand();
}

void ModbusLink::ask(const RegisterBlock& block) {
    const QModbusDataUnit unit(table_of(block.table), block.address, static_cast<quint16>(block.count));
    auto* reply = client_->sendReadRequest(unit, source().station);
    if (!reply) {
        fail(client_->errorString());
        return;
    }
    waiting_ = reply;
    connect(reply, &QModbusReply::finished, this, [this, reply, block] { take(reply, block); });
}

void ModbusLink::take(QModbusReply* reply, const RegisterBlock& block) {
    reply->deleteLater();
    if (reply != waiting_) return;
    waiting_.clear();
    if (reply->error() == QModbusDevice::ProtocolError) { // it answers, but has no such registers
        workWell();
        unanswered_ = 0;
        if (sunspec_ && !sunspec_->found()) {
            takeRegisters(block, {});
            return;
        }
        fail(tr("the meter refuses registers %1 to %2 (exception %3)")
                 .arg(block.address)
                 .arg(block.address + block.count - 1)
                 .arg(static_cast<int>(reply->rawResult().exceptionCode())));
        return;
    }
    if (reply->error() != QModbusDevice::NoError) {
        if (++unanswered_ >= most_unanswered) fail(reply->errorString());
        return; // the next poll asks again
    }
    unanswered_ = 0;
    const auto given = reply->result().values();
    takeRegisters(block, {given.begin(), given.end()});
}

void ModbusLink::takeRegisters(const RegisterBlock& block, const std::vector<std::uint16_t>& registers) {
    if (sunspec_ && !sunspec_->found()) {
        sunspec_->take(registers);
        if (sunspec_->found()) setFound(tr("SunSpec meter model %1").arg(*sunspec_->found()));
        goOn();
        return;
    }
    workWell();
    if (sunspec_) {
        const TraceSample sample = sunspec_->sample(registers);
        if (saysAnything(sample)) emit values(sample, false);
        else misunderstand();
        return;
    }
    for (const LiveField& field : source().fields)
        if (const auto value = field_in(block, registers, field)) put(sample_, field, value);
    goOn();
}

} // namespace ullage
