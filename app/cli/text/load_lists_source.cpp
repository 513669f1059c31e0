// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/load_lists_source.h"

#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "cli/text/opened_logbook.h"
#include "formats/files/whole_file.h"
#include "formats/sheets/load_list_file.h"
#include "formats/text/sheet_keys.h"

#include <filesystem>

namespace ullage {

Result<LoadList> load_list_of_file(const std::string& path) {
    const Result<std::string> text = read_whole_file(path);
    if (!text) return text.error();
    return read_load_list(text.value(), path);
}

Result<std::vector<LoadList>> load_lists_of_logbook(const std::string& path, std::vector<Message>& notices) {
    std::error_code ignored;
    if (std::filesystem::is_directory(path, ignored) || std::filesystem::path(path).extension() == ".csv") return no_load_lists(path);
    const SystemClock clock;
    const Result<Logbook> logbook = opened_logbook(path, OpenMode::read_only, clock, notices);
    if (!logbook) return logbook.error();
    return logbook.value().load_lists();
}

Error no_load_lists(const std::string& path) {
    return {Failure::bad_input, say(phrase("commands", "only a logbook holds load lists")), path,
            say(phrase("commands", "name a logbook, or the file of a load list with --load-list"))};
}

Result<LoadList> load_list_named(const std::vector<LoadList>& lists, const std::string& name, const std::string& where) {
    std::vector<std::string> known;
    for (const LoadList& list : lists) {
        if (lower_case(list.name) == lower_case(name)) return list;
        known.push_back(list.name);
    }
    return Error{Failure::not_found, say(phrase("commands", "there is no load list `%1`"), name), where,
                 known.empty() ? say(phrase("commands", "bring one in with ullage import-loads"))
                               : say(phrase("commands", "use one of %1"), say_names(known))};
}

} // namespace ullage
