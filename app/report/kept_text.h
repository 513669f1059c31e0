// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/report/report_content.h"

#include <QString>
#include <QStringList>

#include <string_view>

namespace ullage {

/// A report's texts as they are set: shown(), with no-break spaces within what would be read wrongly if a line ended in it. These are
/// a number with its unit, its interval and the other end of its range, a day with its month, and the names of units and meters, where
/// they are short.
class KeptText {
public:
    /// Keeps the names of this report together.
    explicit KeptText(const Report& report);

    [[nodiscard]] QString operator()(std::string_view text) const;

private:
    QStringList names_;
};

} // namespace ullage
