// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace ullage::test {

/// The root of the source tree that the tests were built from. In a source of its own so that the path enters no other object file.
[[nodiscard]] std::filesystem::path source_dir();

} // namespace ullage::test
