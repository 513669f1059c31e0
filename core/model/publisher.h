// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage {

/// Who publishes what a logbook says, for the head of its reports. Empty: not stated, and then not printed.
struct Publisher {
    std::string name;         ///< of the person or paper
    std::string title;        ///< of the series or test, in place of the report's own title
    std::string introduction; ///< a paragraph before the answers
    std::string licence;      ///< under which the text may be used

    bool operator==(const Publisher&) const = default;
};

} // namespace ullage
