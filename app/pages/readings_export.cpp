// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/readings_export.h"

#include "document/document.h"
#include "document/sheet_file.h"
#include "exchange/comparison_table.h"
#include "fleet/known_depths.h"
#include "pages/run_charts.h"
#include "services/analyse_units.h"
#include "services/background_work.h"
#include "style/words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QScopeGuard>

#include <optional>

namespace ullage {

namespace {

std::optional<Table> all_runs(Document& document, RunTable which, QWidget* window) {
    // What the table is made of must stay as it is while events get through.
    document.setHeld(true);
    const auto released = qScopeGuard([&] { document.setHeld(false); });
    std::vector<std::string> units;
    for (const Unit& unit : document.units()) units.push_back(unit.uuid);
    if (!analyse_units_beside(document, units, true, window)) return {};
    const std::vector<const RunRecord*> records = document.runs();
    std::vector<const RunAnalysis*> analyses;
    for (const RunRecord* record : records) analyses.push_back(&document.analysis(record->run.uuid));
    const QString words = QCoreApplication::translate("ullage::ReadingsExport", "Putting the table together");
    return result_beside(window, words, [&](WorkProgress&) { return table_of_runs(which, records, analyses); });
}

Table one_run(const Document& document, const std::string& run_uuid, RunTable which) {
    const RunRecord* record = document.run(run_uuid);
    if (!record) return {};
    const RunAnalysis& analysis = document.analysis(run_uuid);
    return which == RunTable::readings ? readings_table(*record, analysis) : intervals_table(*record, analysis);
}

std::vector<std::pair<QString, PictureContent>> charts_of(const Document& document, const RunRecord& record) {
    const RunAnalysis& analysis = document.analysis(record.run.uuid);
    return {{tr("energy"), energy_chart(record, analysis).content},
            {tr("gauge error"), gauge_error_chart(record, analysis, known_depths(record, analysis, document.unitFit(record.unit.uuid))).content},
            {tr("load"), load_chart(record, analysis).content}};
}

} // namespace

Table chosen_readings(const Document& document, const std::string& run_uuid, const QStringList& reading_uuids) {
    Table table = one_run(document, run_uuid, RunTable::readings);
    const RunRecord* record = document.run(run_uuid);
    if (!record || reading_uuids.isEmpty()) return table;
    std::vector<std::size_t> rows;
    std::size_t row = 0;
    for (const Reading& reading : record->readings) {
        if (reading.withdrawn) continue;
        if (reading_uuids.contains(QString::fromStdString(reading.uuid))) rows.push_back(row);
        ++row;
    }
    return with_rows(std::move(table), rows);
}

std::vector<ExportSubject> readings_subjects(Document& document, const std::string& run_uuid) {
    std::vector<ExportSubject> subjects;
    if (const RunRecord* record = document.run(run_uuid)) {
        const QString stem = QFileInfo(sheet_file_name(document, run_uuid)).completeBaseName();
        subjects.push_back({tr("Readings of this run"), stem + QStringLiteral("-readings"),
                            [&document, run_uuid](QWidget*) { return one_run(document, run_uuid, RunTable::readings); },
                            charts_of(document, *record)});
        subjects.push_back({tr("Intervals of this run"), stem + QStringLiteral("-intervals"),
                            [&document, run_uuid](QWidget*) { return one_run(document, run_uuid, RunTable::intervals); }, {}});
    }
    subjects.push_back({tr("Readings of all runs"), QStringLiteral("readings"), [&document](QWidget* window) { return all_runs(document, RunTable::readings, window); }, {}});
    subjects.push_back(
        {tr("Intervals of all runs"), QStringLiteral("intervals"), [&document](QWidget* window) { return all_runs(document, RunTable::intervals, window); }, {}});
    return subjects;
}

} // namespace ullage
