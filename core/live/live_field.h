// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "trace/column_role.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// What a live source is, by the standard that it speaks. The words of kind_word() stand in files: never change one.
enum class SourceKind {
    modbus_tcp,   ///< Modbus Messaging on TCP/IP Implementation Guide V1.0b
    modbus_rtu,   ///< Modbus over Serial Line V1.02, RTU mode
    mqtt,         ///< MQTT 3.1.1 (OASIS standard)
    http,         ///< GET of JSON, or of a plain number
    serial_lines, ///< lines of text with numbers
    readout,      ///< IEC 62056-21, modes A to C
    scpi_tcp,     ///< SCPI over a TCP stream
    scpi_device,  ///< SCPI over a device file
};

inline constexpr std::array all_source_kinds{SourceKind::modbus_tcp,   SourceKind::modbus_rtu, SourceKind::mqtt,     SourceKind::http,
                                             SourceKind::serial_lines, SourceKind::readout,    SourceKind::scpi_tcp, SourceKind::scpi_device};

/// "modbus-tcp", "modbus-rtu", "mqtt", "http", "lines", "iec62056-21", "scpi-tcp", "scpi-device".
[[nodiscard]] std::string_view kind_word(SourceKind kind);
[[nodiscard]] std::optional<SourceKind> kind_from(std::string_view word);
/// Modbus of either kind, SCPI of either kind; what is on a serial line with a speed of its own.
[[nodiscard]] bool is_modbus(SourceKind kind);
[[nodiscard]] bool is_scpi(SourceKind kind);
[[nodiscard]] bool has_line_settings(SourceKind kind);

/// The two tables of a Modbus device that hold numbers of 16 bits (Modbus Application Protocol V1.1b3, 4.3).
enum class RegisterTable { holding, input };

/// How registers make a number. A register is big-endian (4.2 of the specification); which register of a longer number comes first is the maker's
/// choice: `swapped` has the low word first. `bytes_swapped`: the two bytes of each register stand the wrong way round.
struct RegisterNumber {
    enum class Type { u16, s16, u32, s32, u64, s64, f32, f64 };
    Type type = Type::u16;
    bool words_swapped = false, bytes_swapped = false;

    bool operator==(const RegisterNumber&) const = default;
};

/// How many registers a number takes: 1, 2 or 4.
[[nodiscard]] std::size_t registers_of(RegisterNumber::Type type);

/// One number that a source gives: what it is, where it stands and in which unit.
///
/// As text, one line: ROLE PLACE [as TYPE [low-word-first] [bytes-swapped]] [item N] [in UNIT] [times X], where PLACE is
/// `holding 52` or `input 52` (Modbus, counted from 0), `#/meters/0/power` (JSON, RFC 6901 in the form of its section 6), a topic of MQTT, with `#/…`
/// behind it where the payload is JSON, a column counted from 1 (lines), an OBIS code as `1.8.0`, or a query of SCPI; item N is the Nth number of a
/// SCPI answer. ROLE is register, power, voltage or current, or what the unit says of itself: gauge (percent) or output (its own output power).
struct LiveField {
    ColumnRole role = ColumnRole::power;
    std::string place;                    ///< address, topic, column, code or query; empty for HTTP
    std::optional<std::string> pointer{}; ///< into JSON; absent: the payload is the number
    RegisterTable table = RegisterTable::holding;
    RegisterNumber number{};
    int item = 1;
    std::string unit{}; ///< empty: the role's own (Wh, W, V, A), or what the source says with the value
    double times = 1;

    bool operator==(const LiveField&) const = default;

    /// The value in the role's own unit of what the source gave; absent where it is not finite.
    [[nodiscard]] std::optional<double> value_of(double given) const;
    /// The same of a value that came with its unit, which goes before the field's; absent where that unit measures something else.
    [[nodiscard]] std::optional<double> value_of(double given, std::string_view unit_with_it) const;
};

/// Errors (bad_input) say which word is not understood and what may stand there.
[[nodiscard]] Result<LiveField> field_from(SourceKind kind, std::string_view line);
/// The inverse: field_from(kind, field_line(kind, f)) is f.
[[nodiscard]] std::string field_line(SourceKind kind, const LiveField& field);

} // namespace ullage
