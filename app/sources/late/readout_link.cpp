// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/readout_link.h"

#include "sources/late/serial_line.h"

#include <cmath>

namespace ullage {

namespace {

// IEC 62056-21, 6.4: reaction time 200 to 1500 ms, between two characters at most 1500 ms. Meters are given twice that.
constexpr int patience_ms = 3000;
constexpr int before_change_ms = 250;
constexpr int most_silent = 3;
constexpr std::size_t longest_identification = 256;

} // namespace

ReadoutLink::ReadoutLink(const LiveSource& source) : SourceLink(source) {
    poll_timer_.setInterval(static_cast<int>(std::lround(1000 * source.interval_s)));
    connect(&poll_timer_, &QTimer::timeout, this, &ReadoutLink::ask);
    patience_.setSingleShot(true);
    connect(&patience_, &QTimer::timeout, this, [this] { giveUp(tr("the meter does not answer the request for its read-out")); });
}

ReadoutLink::~ReadoutLink() { close(); }

void ReadoutLink::open() {
    close();
    port_ = std::make_unique<QSerialPort>();
    set_line(*port_, source());
    connect(port_.get(), &QSerialPort::readyRead, this, &ReadoutLink::take);
    connect(port_.get(), &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
        if (is_lost(error) && port_ && port_->isOpen()) fail(port_->errorString());
    });
    if (!port_->open(QIODevice::ReadWrite)) {
        fail(port_->errorString());
        return;
    }
    emit connected();
    poll_timer_.start();
    ask();
}

void ReadoutLink::ask() {
    if (step_ != Step::idle || !port_) return;
    (void)port_->clear(QSerialPort::Input);
    if (port_->baudRate() != source().line.baud) (void)port_->setBaudRate(source().line.baud);
    begun_.clear();
    block_.clear();
    step_ = Step::identification;
    port_->write(readout_request.data(), static_cast<qint64>(readout_request.size()));
    patience_.start(patience_ms);
}

void ReadoutLink::take() {
    if (!port_) return;
    const QByteArray bytes = port_->readAll();
    std::string_view rest(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    while (step_ == Step::identification && !rest.empty()) {
        const char c = static_cast<char>(static_cast<unsigned char>(rest.front()) & 0x7fU);
        rest.remove_prefix(1);
        begun_ += c;
        if (c == '\n') takeIdentification(std::exchange(begun_, {}));
        else if (begun_.size() > longest_identification) giveUp(tr("what comes is no identification of a meter"));
    }
    if (step_ == Step::block && !rest.empty()) takeBlock(rest);
}

void ReadoutLink::takeIdentification(const std::string& line) {
    const auto identification = identification_in(line);
    if (!identification) return; // the request itself, as many heads echo it
    patience_.start(patience_ms);
    step_ = Step::block;
    if (identification->mode == 'A') return;
    if (identification->mode == 'B') {
        (void)port_->setBaudRate(identification->baud);
        return;
    }
    const std::string answer = acknowledgement(*identification);
    port_->write(answer.data(), static_cast<qint64>(answer.size()));
    // The speed changes once the last character is on the line: six of ten bits at the old speed.
    const int sent_ms = 6 * 10 * 1000 / source().line.baud;
    QTimer::singleShot(sent_ms + (identification->baud == source().line.baud ? 0 : before_change_ms), this, [this, baud = identification->baud] {
        if (port_ && port_->isOpen() && step_ == Step::block && port_->baudRate() != baud) (void)port_->setBaudRate(baud);
    });
}

void ReadoutLink::takeBlock(std::string_view bytes) {
    patience_.start(patience_ms);
    const auto state = block_.take(bytes);
    if (state == ReadoutBlock::State::open) return;
    patience_.stop();
    step_ = Step::idle;
    silent_ = 0;
    TraceSample sample;
    if (state == ReadoutBlock::State::whole)
        for (const LiveField& field : source().fields) put(sample, field, block_.value(field));
    if (!saysAnything(sample)) {
        misunderstand();
        return;
    }
    workWell();
    emit values(sample, false);
}

void ReadoutLink::giveUp(const QString& why) {
    step_ = Step::idle;
    patience_.stop();
    misunderstand();
    if (++silent_ >= most_silent) fail(why);
}

void ReadoutLink::close() {
    poll_timer_.stop();
    patience_.stop();
    step_ = Step::idle;
    silent_ = 0;
    if (!port_) return;
    port_->disconnect(this);
    port_->close();
    port_.release()->deleteLater(); // it may be the one whose signal has led here
}

} // namespace ullage
