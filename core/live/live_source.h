// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_field.h"
#include "live/sunspec_meter.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// How a serial line is set: "9600 8N1".
struct LineSettings {
    int baud = 9600;
    int data_bits = 8; ///< 7 or 8
    char parity = 'N'; ///< N, E or O
    int stop_bits = 1; ///< 1 or 2

    bool operator==(const LineSettings&) const = default;
};
[[nodiscard]] Result<LineSettings> line_settings_from(std::string_view text);
[[nodiscard]] std::string line_settings_text(const LineSettings& settings);

/// A meter that is read by the program: what it is, where it is, what is read of it. It holds no password and no other secret. The program asks only
/// what stands here: it contacts this address and no other.
struct LiveSource {
    SourceKind kind = SourceKind::modbus_tcp;
    std::string address;   ///< HOST[:PORT], a URL (http), or a device file
    int station = 1;       ///< Modbus: unit identifier, 1 to 247 (TCP also 0 and 255)
    LineSettings line{};   ///< where has_line_settings(kind)
    double interval_s = 1; ///< between two questions; of no meaning where the source speaks by itself (mqtt, lines)
    bool tls = false;      ///< MQTT
    std::string user{};    ///< MQTT and HTTP; empty: none
    std::vector<LiveField> fields{};
    std::optional<EnergyDirection> sunspec{}; ///< Modbus: the meter model that the device names, in place of fields

    bool operator==(const LiveSource&) const = default;

    /// Host and port of an address over the network, with the standard's own port where none is given: 502, 1883 or 8883, 5025.
    struct Peer {
        std::string host;
        int port = 0;
    };
    [[nodiscard]] Peer peer() const;
    /// "modbus-tcp 192.0.2.10", of HTTP the URL: how lists call it.
    [[nodiscard]] std::string title() const;
};

/// Errors (bad_input): an address that is none for the kind, or one that holds a password; no field, or one role twice; limits.
[[nodiscard]] Result<void> check(const LiveSource& source);

/// The fields as lines of text, one each; "sunspec imported" or "sunspec exported" for a SunSpec meter; "detect" for lines of text whose columns the
/// detector of logs finds.
[[nodiscard]] std::string fields_text(const LiveSource& source);
/// Takes such lines into a source whose kind is set. Errors name the line.
[[nodiscard]] Result<void> take_fields(LiveSource& source, std::string_view lines);

/// As the logbook keeps it: one JSON object (RFC 8259) on one line, keys kind, address, read and, where they differ from their defaults, station,
/// line, interval_s, tls, user.
[[nodiscard]] std::string source_text(const LiveSource& source);
/// The inverse; a key that is not known is refused, so that nothing is dropped unsaid. Errors: bad_input, and those of check().
[[nodiscard]] Result<LiveSource> source_from(std::string_view text);

} // namespace ullage
