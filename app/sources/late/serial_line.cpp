// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/serial_line.h"

#include "style/words.h"

namespace ullage {

namespace {

constexpr qint64 most_waiting_bytes = 65'536;

} // namespace

void set_line(QSerialPort& port, const LiveSource& source) {
    const LineSettings& line = source.line;
    port.setPortName(raw_text(source.address));
    port.setBaudRate(line.baud);
    port.setDataBits(line.data_bits == 7 ? QSerialPort::Data7 : QSerialPort::Data8);
    port.setParity(line.parity == 'E' ? QSerialPort::EvenParity : line.parity == 'O' ? QSerialPort::OddParity : QSerialPort::NoParity);
    port.setStopBits(line.stop_bits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
    port.setFlowControl(QSerialPort::NoFlowControl);
    port.setReadBufferSize(most_waiting_bytes);
}

bool is_lost(QSerialPort::SerialPortError error) { return error != QSerialPort::NoError && error != QSerialPort::TimeoutError; }

} // namespace ullage
