// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_field.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// The read-out of a meter by IEC 62056-21, modes A to C. The reading side says `request`, the meter answers with its identification; in mode C the
/// reading side acknowledges for data read-out, and the meter sends its data block. Nothing here can set anything in a meter: option select 0 asks
/// for the read-out (IEC 62056-21, 6.3.3), and no other is ever sent.
inline constexpr std::string_view readout_request = "/?!\r\n";

/// What an identification message `/XXXZ…` says: its mode and speed.
struct ReadoutIdentification {
    char mode = 'A';     ///< A: no change of speed; B: it changes without being asked; C: after an acknowledgement
    char speed_sign = 0; ///< Z of the message
    int baud = 300;      ///< of the data block
};
/// Absent where the line is none.
[[nodiscard]] std::optional<ReadoutIdentification> identification_in(std::string_view line);
/// The acknowledgement of mode C: normal procedure, the speed offered, data read-out.
[[nodiscard]] std::string acknowledgement(const ReadoutIdentification& identification);

/// The block check character: exclusive or of all behind STX up to and with ETX (ISO 1155, as IEC 62056-21 has it), 7 bits.
[[nodiscard]] std::uint8_t block_check(std::string_view behind_stx_to_etx);

/// A whole data block: STX, data lines, `!`, CR LF, ETX, BCC; in mode A it may lack STX, ETX and BCC. Bytes come as 7 bits with the parity taken off.
class ReadoutBlock {
public:
    static constexpr std::size_t most_bytes = 65'536;
    enum class State { open, whole, bad_check, too_long };

    State take(std::string_view bytes);
    /// The value of a field whose place is an OBIS code: of the first data set with that code; a code without medium and channel (1.8.0) is that of
    /// any. Its unit, where the meter gives one, goes before the field's. Precondition: whole.
    [[nodiscard]] std::optional<double> value(const LiveField& field) const;
    void clear();

private:
    std::string text_; ///< behind STX
    bool framed_ = false;
    State state_ = State::open;
};

} // namespace ullage
