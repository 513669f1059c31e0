// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/source_dir.h"

namespace ullage::test {

std::filesystem::path source_dir() { return ULLAGE_SOURCE_DIR; }

} // namespace ullage::test
