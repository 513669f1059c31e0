// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage::test {

inline bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace ullage::test
