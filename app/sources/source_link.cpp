// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/source_link.h"

#include "live/sample_gate.h"
#include "sources/inside/http_link.h"
#include "sources/inside/line_link.h"
#include "sources/inside/modbus_link.h"
#include "sources/inside/mqtt_link.h"
#include "sources/inside/readout_link.h"
#include "sources/inside/scpi_link.h"

#include <algorithm>

namespace ullage {

std::unique_ptr<SourceLink> SourceLink::make(const LiveSource& source, const QString& password) {
    switch (source.kind) {
    case SourceKind::modbus_tcp:
    case SourceKind::modbus_rtu: return std::make_unique<ModbusLink>(source);
    case SourceKind::mqtt: return std::make_unique<MqttLink>(source, password);
    case SourceKind::http: return std::make_unique<HttpLink>(source, password);
    case SourceKind::serial_lines: return std::make_unique<LineLink>(source);
    case SourceKind::readout: return std::make_unique<ReadoutLink>(source);
    case SourceKind::scpi_tcp:
    case SourceKind::scpi_device: break;
    }
    return std::make_unique<ScpiLink>(source);
}

SourceLink::SourceLink(const LiveSource& source) : source_(source) {
    again_.setSingleShot(true);
    connect(&again_, &QTimer::timeout, this, [this] { open(); });
}

SourceLink::~SourceLink() = default;

void SourceLink::start() {
    running_ = true;
    pause_ms_ = first_pause_ms;
    open();
}

void SourceLink::stop() {
    running_ = false;
    again_.stop();
    close();
}

void SourceLink::fail(const QString& why) {
    if (!running_ || again_.isActive()) return;
    again_.start(pause_ms_);
    pause_ms_ = std::min(2 * pause_ms_, longest_pause_ms);
    close();
    emit failed(why);
}

void SourceLink::workWell() { pause_ms_ = first_pause_ms; }

void SourceLink::put(TraceSample& sample, const LiveField& field, std::optional<double> value) {
    for (const RoleEntry& entry : column_roles())
        if (entry.role == field.role && entry.place) sample.*entry.place = value;
}

bool SourceLink::saysAnything(const TraceSample& sample) { return says_anything(sample); }

} // namespace ullage
