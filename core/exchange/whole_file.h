// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <functional>
#include <string>
#include <string_view>

namespace ullage {

/// Makes or replaces a file whole or not at all: `make` writes a temporary file in the same folder, whose path it is
/// given; that is flushed to the disk and renamed onto `path`. A link is followed, so that its target is replaced. When anything
/// fails, `path` is as it was and the temporary file is gone. Errors: refused (`path` is a folder or no regular file), disk_full,
/// io, and those of `make`.
[[nodiscard]] Result<void> replace_file(const std::string& path,
                                        const std::function<Result<void>(const std::string& temporary)>& make);

/// replace_file with given bytes.
[[nodiscard]] Result<void> write_whole_file(const std::string& path, std::string_view bytes);

/// The whole content of a regular file. Errors: not_found, io, refused (a folder, no regular file, or more than 64 MiB, which no
/// run sheet has).
[[nodiscard]] Result<std::string> read_whole_file(const std::string& path);

} // namespace ullage
