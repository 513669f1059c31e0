// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <span>
#include <string>

namespace ullage {

/// Reads a workbook back as it lies on the disk: every part of it must be there to its end and be well-formed, and sheet n (from 1) must hold
/// cells[n - 1] cells. The library that makes workbooks does not tell when its temporary files were cut short. Errors: disk_full, which a part
/// that is cut short comes from; `where` is `path`.
[[nodiscard]] Result<void> check_workbook(const std::string& path, std::span<const std::size_t> cells);

} // namespace ullage
