// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/analyse_units.h"

#include "document/document.h"
#include "services/background_work.h"

#include <QCoreApplication>

namespace ullage {

bool analyse_units_beside(Document& document, const std::vector<UnitId>& unit_uuids, bool with_runs, QWidget* window) {
    const std::size_t readings = document.readingsToAnalyse(unit_uuids, with_runs);
    if (readings == 0) return true;
    bool cancelled = false;
    WorkProgress* analysing = nullptr;
    const QString words = QCoreApplication::translate("ullage::AnalyseUnits", "Analysing %1 readings").arg(readings);
    document.analyseBeside(
        unit_uuids, with_runs,
        [&](const std::function<void()>& work) {
            work_beside(window, words, [&](WorkProgress& progress) {
                analysing = &progress;
                work();
                cancelled = progress.cancelled();
            });
        },
        [&](std::size_t done) {
            analysing->at(static_cast<std::int64_t>(done), static_cast<std::int64_t>(unit_uuids.size()));
            return !analysing->cancelled();
        });
    return !cancelled;
}

} // namespace ullage
