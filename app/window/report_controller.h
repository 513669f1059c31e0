// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <functional>

namespace ullage {

class ReportForm;
struct ReportLook;

/// Reports of the run shown, of a unit, of the comparison, of a sizing and of a PV check, and the card of keys.
class ReportController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void makeRunReport();
    void makeUnitReport();
    void makeComparisonReport();
    void makeSizingReport();
    void makePvReport();
    void makeKeyCard(); ///< the keys of the bench, to be printed

private:
    /// Asks for the look and the file of a report on `what`, which names the file too, and has `write` write it.
    void askForReport(const QString& what, ReportForm& asking, std::function<Result<void>(const QString& path, const ReportLook& look)> write);
};

} // namespace ullage
