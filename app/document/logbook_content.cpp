// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/logbook_content.h"

#include "style/words.h"

#include <QFile>

#include <utility>

namespace ullage {

namespace {

SharedRuns shared_runs(std::vector<RunRecord> records) {
    SharedRuns runs;
    runs.reserve(records.size());
    for (RunRecord& record : records) runs.push_back(std::make_shared<const RunRecord>(std::move(record)));
    return runs;
}

Result<OpenedLogbook> with_content(Result<Logbook> book) {
    if (!book) return book.error();
    auto content = read_content(book.value());
    if (!content) return content.error();
    return OpenedLogbook{std::move(book).value(), std::move(content).value()};
}

} // namespace

Result<OpenedLogbook> open_logbook(const QString& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    auto book = Logbook::open(native_path(path), OpenMode::record, clock, cancelled);
    if (!book && book.error().failure == Failure::in_use) return look_at_logbook(path, clock, cancelled);
    return with_content(std::move(book));
}

Result<OpenedLogbook> look_at_logbook(const QString& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    return with_content(Logbook::open(native_path(path), OpenMode::read_only, clock, cancelled));
}

Result<LogbookContent> read_content(const Logbook& book) {
    auto units = book.units();
    if (!units) return units.error();
    auto meters = book.meters();
    if (!meters) return meters.error();
    auto pv_sheets = book.pv_sheets();
    if (!pv_sheets) return pv_sheets.error();
    auto load_lists = book.load_lists();
    if (!load_lists) return load_lists.error();
    auto method = book.method_settings();
    if (!method) return method.error();
    auto publisher = book.publisher();
    if (!publisher) return publisher.error();
    auto records = book.run_records();
    if (!records) return records.error();
    return LogbookContent{
        std::move(units).value(),  std::move(meters).value(),    std::move(pv_sheets).value(),           std::move(load_lists).value(),
        std::move(method).value(), std::move(publisher).value(), shared_runs(std::move(records).value())};
}

Result<std::map<UnitId, SharedRuns>> read_runs_of(const Logbook& book, const std::vector<UnitId>& unit_uuids) {
    std::map<UnitId, SharedRuns> runs;
    for (const UnitId& uuid : unit_uuids) {
        if (runs.contains(uuid)) continue;
        auto records = book.run_records(uuid);
        if (!records) return records.error();
        runs.emplace(uuid, shared_runs(std::move(records).value()));
    }
    return runs;
}

} // namespace ullage
