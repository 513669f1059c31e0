// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"

namespace ullage {

std::string_view program_version() { return ULLAGE_VERSION; }

} // namespace ullage
