// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/readings_export.h"

#include "document/document.h"
#include "document/sheet_file.h"
#include "exchange/comparison_table.h"
#include "unit/known_depths.h"
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

QString table_words() { return QCoreApplication::translate("ullage::ReadingsExport", "Putting the table together"); }

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
    return result_beside(window, table_words(), [&](WorkProgress&) { return table_of_runs(which, records, analyses); });
}

Table one_run(const Document& document, const std::string& run_uuid, RunTable which) {
    const RunRecord* record = document.run(run_uuid);
    if (!record) return {};
    const RunAnalysis& analysis = document.analysis(run_uuid);
    return which == RunTable::readings ? readings_table(*record, analysis) : intervals_table(*record, analysis);
}

std::optional<Table> one_run_beside(Document& document, const std::string& run_uuid, RunTable which, QWidget* window) {
    document.setHeld(true);
    const auto released = qScopeGuard([&] { document.setHeld(false); });
    if (document.run(run_uuid)) (void)document.analysis(run_uuid); // which only the window's thread may ask for the first time
    return result_beside(window, table_words(), [&](WorkProgress&) { return one_run(document, run_uuid, which); });
}

std::vector<std::pair<QString, std::function<PictureContent()>>> charts_of(const Document& document, const std::string& run_uuid) {
    const auto chart = [&](const QString& name, PictureContent (*made)(const RunRecord&, const RunAnalysis&, const UnitFit&)) {
        return std::pair(name, std::function([&document, run_uuid, made]() -> PictureContent {
                             const RunRecord* record = document.run(run_uuid);
                             if (!record) return ChartContent{};
                             return made(*record, document.analysis(run_uuid), document.unitFit(record->unit.uuid));
                         }));
    };
    return {chart(tr("energy"), [](const RunRecord& run, const RunAnalysis& all, const UnitFit&) { return PictureContent(energy_chart(run, all).content); }),
            chart(tr("gauge error"), [](const RunRecord& run, const RunAnalysis& all, const UnitFit& fit) {
                return PictureContent(gauge_error_chart(run, all, known_depths(run, all, fit)).content);
            }),
            chart(tr("load"), [](const RunRecord& run, const RunAnalysis& all, const UnitFit&) { return PictureContent(load_chart(run, all).content); })};
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
    if (document.run(run_uuid)) {
        const QString stem = QFileInfo(sheet_file_name(document, run_uuid)).completeBaseName();
        subjects.push_back({tr("Readings of this run"), stem + QStringLiteral("-readings"),
                            [&document, run_uuid](QWidget* window) { return one_run_beside(document, run_uuid, RunTable::readings, window); },
                            charts_of(document, run_uuid)});
        subjects.push_back({tr("Intervals of this run"), stem + QStringLiteral("-intervals"),
                            [&document, run_uuid](QWidget* window) { return one_run_beside(document, run_uuid, RunTable::intervals, window); }, {}});
    }
    subjects.push_back({tr("Readings of all runs"), QStringLiteral("readings"), [&document](QWidget* window) { return all_runs(document, RunTable::readings, window); }, {}});
    subjects.push_back(
        {tr("Intervals of all runs"), QStringLiteral("intervals"), [&document](QWidget* window) { return all_runs(document, RunTable::intervals, window); }, {}});
    return subjects;
}

} // namespace ullage
