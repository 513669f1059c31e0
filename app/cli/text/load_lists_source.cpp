// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/load_lists_source.h"

#include "formats/files/whole_file.h"
#include "formats/sheets/load_list_file.h"
#include "formats/text/sheet_keys.h"

#include <filesystem>

namespace ullage {

Result<Logbook> opened_or_made(const std::string& path, const Clock& clock) {
    std::error_code ignored;
    // A link that leads nowhere is not taken for a missing file: open() says what is wrong with it.
    const bool missing = std::filesystem::symlink_status(path, ignored).type() == std::filesystem::file_type::not_found;
    return missing ? Logbook::create(path, clock) : Logbook::open(path, OpenMode::record, clock);
}

Result<LoadList> load_list_of_file(const std::string& path) {
    const Result<std::string> text = read_whole_file(path);
    if (!text) return text.error();
    return read_load_list(text.value(), path);
}

Result<std::vector<LoadList>> load_lists_of_logbook(const std::string& path) {
    std::error_code ignored;
    if (std::filesystem::is_directory(path, ignored) || std::filesystem::path(path).extension() == ".csv") return no_load_lists(path);
    const SystemClock clock;
    const Result<Logbook> logbook = Logbook::open(path, OpenMode::read_only, clock);
    if (!logbook) return logbook.error();
    return logbook.value().load_lists();
}

Error no_load_lists(const std::string& path) {
    return {Failure::bad_input, "only a logbook holds load lists", path, "name a logbook, or the file of a load list with --load-list"};
}

Result<LoadList> load_list_named(const std::vector<LoadList>& lists, const std::string& name, const std::string& where) {
    std::string known;
    for (const LoadList& list : lists) {
        if (lower_case(list.name) == lower_case(name)) return list;
        known += (known.empty() ? "`" : ", `") + list.name + '`';
    }
    return Error{Failure::not_found, "there is no load list `" + name + "`", where,
                 known.empty() ? "bring one in with ullage import-loads" : "use one of " + known};
}

} // namespace ullage
