// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/result.h"

namespace ullage {

std::string Error::sentence() const {
    std::string text = where.empty() ? what : where + ": " + what;
    if (!remedy.empty()) text += "; " + remedy;
    return text;
}

} // namespace ullage
