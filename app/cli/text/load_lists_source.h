// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/load_list.h"
#include "store/logbook.h"

#include <string>
#include <vector>

namespace ullage {

/// The load list that a file holds (formats/sheets/load_list_file.h). Errors name the file.
[[nodiscard]] Result<LoadList> load_list_of_file(const std::string& path);

/// All load lists of a logbook, opened for looking only. Notices as of opened_logbook(). Errors: those of Logbook::open; a run sheet or a folder,
/// which hold none.
[[nodiscard]] Result<std::vector<LoadList>> load_lists_of_logbook(const std::string& path, std::vector<Message>& notices);

/// Why a run sheet or a folder of them has none.
[[nodiscard]] Error no_load_lists(const std::string& path);

/// The first list of this name, in any case of ASCII letters. Error: not_found, naming those there are; `where` names their source.
[[nodiscard]] Result<LoadList> load_list_named(const std::vector<LoadList>& lists, const std::string& name, const std::string& where);

} // namespace ullage
