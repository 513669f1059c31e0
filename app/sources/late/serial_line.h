// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/live_source.h"

#include <QSerialPort>

namespace ullage {

/// Sets a port that is not open yet as its settings say.
void set_line(QSerialPort& port, const LiveSource& source);
/// An error after which the line is gone.
[[nodiscard]] bool is_lost(QSerialPort::SerialPortError error);

} // namespace ullage
