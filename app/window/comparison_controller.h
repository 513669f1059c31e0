// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <QStringList>

namespace ullage {

/// The comparison as a whole: which other logbooks are compared, and what leaves it as a table.
class ComparisonController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void addComparedLogbooks(); ///< asks which
    /// Those that were compared beside the open logbook when it was last open.
    void showComparedLogbooks();
    void rememberLogbooks(const QStringList& paths);
    void chooseColumns();
    void exportComparison();
    void copyComparison();
};

} // namespace ullage
