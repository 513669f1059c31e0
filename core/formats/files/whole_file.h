// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "formats/files/replacing.h"
#include "formats/text/text_pieces.h"

#include <functional>
#include <string>
#include <string_view>

namespace ullage {

/// Makes or replaces a file whole or not at all: `make` writes a temporary file, whose path it is given, in a folder of its own beside the
/// target (base/work_folder.h); that is flushed to the disk and renamed onto the target. A link is followed, so that its target is replaced.
/// What may be replaced `replacing` says. When anything fails, `path` is as it was and the temporary folder is gone; what earlier
/// crashes left in the folder goes too. Every file that the program writes apart from logbooks comes about here. Errors: those of
/// output_target(), disk_full, io, and those of `make`.
[[nodiscard]] Result<void> replace_file(const std::string& path, const Replacing& replacing,
                                        const std::function<Result<void>(const std::string& temporary)>& make);

/// replace_file with what `write` gives away piece by piece; it returns false when a piece was not taken.
[[nodiscard]] Result<void> write_whole_file(const std::string& path, const std::function<bool(const TextTaker& take)>& write,
                                            const Replacing& replacing = {});

/// replace_file with given bytes.
[[nodiscard]] Result<void> write_whole_file(const std::string& path, std::string_view bytes, const Replacing& replacing = {});

/// The whole content of a regular file. Errors: not_found, io, refused (a folder, no regular file, or more than 64 MiB, which no
/// run sheet has).
[[nodiscard]] Result<std::string> read_whole_file(const std::string& path);

} // namespace ullage
