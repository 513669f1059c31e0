// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/opened_logbook.h"

#include <filesystem>

namespace ullage {

Result<Logbook> opened_logbook(const std::string& path, OpenMode mode, const Clock& clock, std::vector<Message>& notices) {
    Result<Logbook> logbook = Logbook::open(path, mode, clock);
    if (!logbook) return logbook;
    constexpr double worth_telling_s = 1;
    if (const OpeningCheck& check = logbook.value().opening_check(); check.full && check.seconds >= worth_telling_s)
        notices.push_back(
            say(phrase("commands", "%1: checked from end to end, as it comes from elsewhere or was not closed properly; that took %2 s"), path,
                say_number(check.seconds, 1)));
    return logbook;
}

Result<Logbook> opened_or_made(const std::string& path, const Clock& clock, std::vector<Message>& notices) {
    std::error_code ignored;
    // A link that leads nowhere is not taken for a missing file: open() says what is wrong with it.
    const bool missing = std::filesystem::symlink_status(path, ignored).type() == std::filesystem::file_type::not_found;
    return missing ? Logbook::create(path, clock) : opened_logbook(path, OpenMode::record, clock, notices);
}

} // namespace ullage
