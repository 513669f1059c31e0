// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/inside/source_links.h"

#include "sources/late/http_link.h"
#include "sources/late/line_link.h"
#include "sources/late/modbus_link.h"
#include "sources/late/mqtt_link.h"
#include "sources/late/readout_link.h"
#include "sources/late/scpi_link.h"

namespace ullage {

namespace {

std::unique_ptr<SourceLink> link_to(const LiveSource& source, const QString& password) {
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

const LateEntry links_entry(source_links, &link_to);

} // namespace

} // namespace ullage
