// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/line_link.h"

#include "sources/late/serial_line.h"
#include "style/words.h"

namespace ullage {

LineLink::LineLink(const LiveSource& source) : SourceLink(source), lines_(source.fields) {}

LineLink::~LineLink() { close(); }

void LineLink::open() {
    close();
    port_ = std::make_unique<QSerialPort>();
    set_line(*port_, source());
    cutter_ = {};
    connect(port_.get(), &QSerialPort::readyRead, this, &LineLink::take);
    connect(port_.get(), &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
        if (is_lost(error) && port_ && port_->isOpen()) fail(port_->errorString());
    });
    if (port_->open(QIODevice::ReadOnly)) emit connected();
    else fail(port_->errorString());
}

void LineLink::take() {
    if (!port_) return;
    const QByteArray bytes = port_->readAll();
    const long too_long = cutter_.too_long();
    cutter_.take({bytes.constData(), static_cast<std::size_t>(bytes.size())}, [this](std::string_view line) {
        const TraceSample sample = lines_.read(line);
        if (!saysAnything(sample)) {
            misunderstand();
            return;
        }
        workWell();
        emit values(sample, false);
    });
    if (cutter_.too_long() > too_long) misunderstand();
    if (source().fields.empty()) setFound(raw_text(lines_.words().text()));
}

void LineLink::close() {
    if (!port_) return;
    port_->disconnect(this);
    port_->close();
    port_.release()->deleteLater(); // it may be the one whose signal has led here
}

} // namespace ullage
