// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/modbus_values.h"
#include "sources/late/address_walk.h"
#include "sources/source_link.h"

#include <QPointer>

#include <memory>
#include <optional>
#include <vector>

class QModbusClient;
class QModbusReply;

namespace ullage {

/// Modbus, TCP or RTU. It sends the functions 3 and 4 (read holding registers, read input registers) and no other.
class ModbusLink final : public SourceLink {
    Q_OBJECT
public:
    explicit ModbusLink(const LiveSource& source);
    ~ModbusLink() override;

protected:
    void open() override;
    void close() override;

private:
    void connectTo(const QString& address);
    void openSerial();
    void begin();
    void drop();
    void lose(const QString& why);
    void poll();
    void ask(const RegisterBlock& block);
    void take(QModbusReply* reply, const RegisterBlock& block);
    void takeRegisters(const RegisterBlock& block, const std::vector<std::uint16_t>& registers);
    void goOn();

    AddressWalk walk_;
    std::unique_ptr<QModbusClient> client_;
    QTimer poll_timer_;
    std::vector<RegisterBlock> blocks_;
    std::optional<SunspecMeter> sunspec_;
    std::size_t next_block_ = 0;
    TraceSample sample_;
    QPointer<QModbusReply> waiting_;
    int unanswered_ = 0;
};

} // namespace ullage
