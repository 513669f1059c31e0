// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/readings_export.h"

#include "document/document.h"
#include "document/sheet_file.h"
#include "exchange/comparison_table.h"
#include "fleet/known_depths.h"
#include "pages/run_charts.h"
#include "style/words.h"

#include <QFileInfo>

#include <memory>
#include <utility>

namespace ullage {

namespace {

/// Runs as they were when they were asked for, whatever becomes of the document while a table of them is shown.
struct KeptRuns {
    std::vector<std::shared_ptr<const RunRecord>> records;
    std::vector<RunAnalysis> analyses;

    KeptRuns(const Document& document, const std::vector<std::string>& uuids) {
        for (const std::string& uuid : uuids) {
            records.push_back(document.sharedRun(uuid));
            analyses.push_back(document.analysis(uuid));
        }
    }
};

StreamedTable keeping(StreamedTable table, std::shared_ptr<const KeptRuns> kept) {
    table.each_row = [kept = std::move(kept), rows = std::move(table.each_row)](const RowTaker& take) { return rows(take); };
    return table;
}

StreamedTable all_runs(const Document& document, RunTable which) {
    std::vector<std::string> uuids;
    for (const RunRecord* record : document.runs()) uuids.push_back(record->run.uuid);
    auto kept = std::make_shared<const KeptRuns>(document, uuids);
    std::vector<const RunRecord*> records;
    std::vector<const RunAnalysis*> analyses;
    for (std::size_t r = 0; r < uuids.size(); ++r) {
        records.push_back(kept->records[r].get());
        analyses.push_back(&kept->analyses[r]);
    }
    return keeping(table_of_runs(which, records, analyses), std::move(kept));
}

StreamedTable one_run(const Document& document, const std::string& run_uuid, RunTable which) {
    if (!document.run(run_uuid)) return {};
    auto kept = std::make_shared<const KeptRuns>(document, std::vector{run_uuid});
    const RunRecord& record = *kept->records.front();
    const RunAnalysis& analysis = kept->analyses.front();
    return keeping(table_of_run(which, record, analysis), std::move(kept));
}

std::vector<std::pair<QString, PictureContent>> charts_of(const Document& document, const RunRecord& record) {
    const RunAnalysis& analysis = document.analysis(record.run.uuid);
    return {{tr("energy"), energy_chart(record, analysis).content},
            {tr("gauge error"), gauge_error_chart(record, analysis, known_depths(record, analysis, document.unitFit(record.unit.uuid))).content},
            {tr("load"), load_chart(record, analysis).content}};
}

} // namespace

Table chosen_readings(const Document& document, const std::string& run_uuid, const QStringList& reading_uuids) {
    Table table = collected(one_run(document, run_uuid, RunTable::readings));
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

std::vector<ExportSubject> readings_subjects(const Document& document, const std::string& run_uuid) {
    std::vector<ExportSubject> subjects;
    if (const RunRecord* record = document.run(run_uuid)) {
        const QString stem = QFileInfo(sheet_file_name(document, run_uuid)).completeBaseName();
        subjects.push_back({tr("Readings of this run"), stem + QStringLiteral("-readings"),
                            [&document, run_uuid] { return one_run(document, run_uuid, RunTable::readings); },
                            charts_of(document, *record)});
        subjects.push_back({tr("Intervals of this run"), stem + QStringLiteral("-intervals"),
                            [&document, run_uuid] { return one_run(document, run_uuid, RunTable::intervals); }, {}});
    }
    subjects.push_back({tr("Readings of all runs"), QStringLiteral("readings"), [&document] { return all_runs(document, RunTable::readings); }, {}});
    subjects.push_back(
        {tr("Intervals of all runs"), QStringLiteral("intervals"), [&document] { return all_runs(document, RunTable::intervals); }, {}});
    return subjects;
}

} // namespace ullage
