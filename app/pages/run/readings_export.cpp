// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/readings_export.h"

#include "chart_content/run_charts.h"
#include "document/document.h"
#include "document/sheet_file.h"
#include "formats/results/comparison_table.h"
#include "services/analyse_units.h"
#include "style/words.h"

#include <QFileInfo>

#include <memory>
#include <optional>
#include <utility>

namespace ullage {

namespace {

/// Runs as they were when they were asked for, whatever becomes of the document while a table of them is shown.
struct KeptRuns {
    std::vector<std::shared_ptr<const RunRecord>> records;
    std::vector<std::shared_ptr<const RunAnalysis>> analyses;

    KeptRuns(const Document& document, const std::vector<RunId>& uuids) {
        for (const RunId& uuid : uuids) {
            records.push_back(document.sharedRun(uuid));
            analyses.push_back(document.casebook().analysis(uuid));
        }
    }
};

StreamedTable keeping(StreamedTable table, std::shared_ptr<const KeptRuns> kept) {
    table.each_row = [kept = std::move(kept), rows = std::move(table.each_row)](const RowTaker& take) { return rows(take); };
    return table;
}

std::optional<StreamedTable> all_runs(Document& document, RunTable which, QWidget* window) {
    std::vector<UnitId> units;
    std::vector<RunId> uuids;
    for (const Unit& unit : document.units()) units.push_back(unit.uuid);
    if (!analyse_units_beside(document, units, true, window)) return {};
    for (const RunRecord* record : document.runs()) uuids.push_back(record->run.uuid);
    auto kept = std::make_shared<const KeptRuns>(document, uuids);
    std::vector<const RunRecord*> records;
    std::vector<const RunAnalysis*> analyses;
    for (std::size_t r = 0; r < uuids.size(); ++r) {
        records.push_back(kept->records[r].get());
        analyses.push_back(kept->analyses[r].get());
    }
    return keeping(table_of_runs(which, records, analyses), std::move(kept));
}

StreamedTable one_run(const Document& document, const RunId& run_uuid, RunTable which) {
    if (!document.run(run_uuid)) return {};
    auto kept = std::make_shared<const KeptRuns>(document, std::vector{run_uuid});
    const RunRecord& record = *kept->records.front();
    const RunAnalysis& analysis = *kept->analyses.front();
    return keeping(table_of_run(which, record, analysis), std::move(kept));
}

std::vector<std::pair<QString, std::function<PictureContent()>>> charts_of(const Document& document, const RunId& run_uuid) {
    const auto chart = [&](const QString& name, PictureContent (*made)(const RunRecord&, const RunAnalysis&, const UnitFit&)) {
        return std::pair(name, std::function([&document, run_uuid, made]() -> PictureContent {
                             const RunRecord* record = document.run(run_uuid);
                             if (!record) return ChartContent{};
                             return made(*record, document.analysis(run_uuid), document.unitFit(record->unit.uuid));
                         }));
    };
    return {
        chart(tr("energy"),
              [](const RunRecord& run, const RunAnalysis& all, const UnitFit&) { return PictureContent(energy_chart(run, all).content); }),
        chart(tr("gauge error"), [](const RunRecord& run, const RunAnalysis& all,
                                    const UnitFit& fit) { return PictureContent(gauge_error_picture(run, all, fit).content); }),
        chart(tr("load"), [](const RunRecord& run, const RunAnalysis& all, const UnitFit&) { return PictureContent(load_chart(run, all).content); })};
}

} // namespace

Table chosen_readings(const Document& document, const RunId& run_uuid, const std::vector<ReadingId>& reading_uuids) {
    Table table = collected(one_run(document, run_uuid, RunTable::readings));
    const RunRecord* record = document.run(run_uuid);
    if (!record || reading_uuids.empty()) return table;
    std::vector<std::size_t> rows;
    std::size_t row = 0;
    for (const Reading& reading : record->readings) {
        if (reading.withdrawn) continue;
        if (std::ranges::find(reading_uuids, reading.uuid) != reading_uuids.end()) rows.push_back(row);
        ++row;
    }
    return with_rows(std::move(table), rows);
}

std::vector<ExportSubject> readings_subjects(Document& document, const RunId& run_uuid) {
    std::vector<ExportSubject> subjects;
    if (document.run(run_uuid)) {
        const QString stem = QFileInfo(sheet_file_name(document, run_uuid)).completeBaseName();
        subjects.push_back({tr("Readings of this run"), stem + QStringLiteral("-readings"),
                            [&document, run_uuid](QWidget*) { return one_run(document, run_uuid, RunTable::readings); },
                            charts_of(document, run_uuid)});
        subjects.push_back({tr("Intervals of this run"),
                            stem + QStringLiteral("-intervals"),
                            [&document, run_uuid](QWidget*) { return one_run(document, run_uuid, RunTable::intervals); },
                            {}});
        if (document.run(run_uuid)->gauge_log)
            subjects.push_back({tr("Gauge steps of this run"),
                                stem + QStringLiteral("-gauge-steps"),
                                [&document, run_uuid](QWidget*) { return one_run(document, run_uuid, RunTable::gauge_steps); },
                                {}});
    }
    subjects.push_back({tr("Readings of all runs"),
                        QStringLiteral("readings"),
                        [&document](QWidget* window) { return all_runs(document, RunTable::readings, window); },
                        {}});
    subjects.push_back({tr("Intervals of all runs"),
                        QStringLiteral("intervals"),
                        [&document](QWidget* window) { return all_runs(document, RunTable::intervals, window); },
                        {}});
    return subjects;
}

} // namespace ullage
