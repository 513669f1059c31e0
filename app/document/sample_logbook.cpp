// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/sample_logbook.h"

#include "document/document.h"
#include "formats/sheets/load_list_file.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/sheets/run_sheet.h"
#include "style/words.h"
#include "trace/trace_import.h"

#include <QDir>
#include <QEventLoop>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <map>
#include <optional>
#include <utility>

// Outside the namespace: the macro declares a function of global scope.
static void load_sample_sheets() { Q_INIT_RESOURCE(samples); }

namespace ullage {

namespace {

/// The limits that a PV sheet states stand in the claims of its unit already.
Result<void> add_sample_pv_sheets(Document& document, const QDir& sheets) {
    for (const auto& name : sheets.entryList({QStringLiteral("pv-*.txt")}, QDir::Files, QDir::Name)) {
        QFile file(sheets.filePath(name));
        if (!file.open(QFile::ReadOnly)) return Error{Failure::io, say(phrase("document", "the sample sheet cannot be read")), utf8_of(name), {}};
        auto read = read_pv_sheet(bytes_of(file.readAll()), utf8_of(name));
        if (!read) return read.error();
        PvSheet sheet = std::move(read.value().sheet);
        for (const Unit& unit : document.units())
            if (unit.name == read.value().unit) sheet.unit_uuid = unit.uuid;
        if (const auto added = document.addPvSheet(std::move(sheet)); !added) return added.error();
    }
    return {};
}

Result<void> add_sample_load_lists(Document& document, const QDir& lists) {
    for (const auto& name : lists.entryList({QStringLiteral("*.csv")}, QDir::Files, QDir::Name)) {
        QFile file(lists.filePath(name));
        if (!file.open(QFile::ReadOnly)) return Error{Failure::io, say(phrase("document", "the sample load list cannot be read")), utf8_of(name), {}};
        const auto list = read_load_list(bytes_of(file.readAll()), utf8_of(name));
        if (!list) return list.error();
        if (const auto added = document.addLoadList(list.value()); !added) return added.error();
    }
    return {};
}

/// The log of a meter that has the name of this run's sheet goes into the run, if there is one.
Result<void> add_sample_log(Document& document, const QDir& logs, const QString& name, const RunRecord& record) {
    if (!logs.exists(name)) return {};
    const QTemporaryDir folder; // a log is read from a file, and what is inside the program is none
    const QString path = folder.filePath(name);
    if (!folder.isValid() || !QFile::copy(logs.filePath(name), path))
        return Error{Failure::io, say(phrase("document", "the sample log cannot be copied")), utf8_of(path),
                     say(phrase("document", "make room in the folder for temporary files"))};
    TraceReadOptions options;
    options.zone = record.run.time_zone;
    const auto preview = preview_trace(utf8_of(path), {}, {}, options);
    if (!preview) return preview.error();
    if (const auto open = open_questions(preview.value().detection)) return *open;
    const auto meter = record.meter ? std::optional(record.meter->uuid) : std::nullopt;
    const auto imported = document.importTrace(record.run.uuid, meter, path, preview.value().detection, options);
    if (!imported) return imported.error();
    return {};
}

QDir sample_folder() {
    load_sample_sheets();
    return QDir(QStringLiteral(":/ullage/samples"));
}

/// The sheets that come with the program, in order of name.
Result<std::vector<std::pair<QString, RunRecord>>> sample_sheets() {
    const QDir sheets = sample_folder();
    const auto names = sheets.entryList({QStringLiteral("*.csv")}, QDir::Files, QDir::Name);
    if (names.isEmpty())
        return Error{Failure::not_found,
                     say(phrase("document", "this build holds no sample run sheets")),
                     {},
                     say(phrase("document", "make a new logbook instead"))};
    std::vector<std::pair<QString, RunRecord>> read;
    for (const auto& name : names) {
        QFile file(sheets.filePath(name));
        if (!file.open(QFile::ReadOnly)) return Error{Failure::io, say(phrase("document", "the sample sheet cannot be read")), utf8_of(name), {}};
        auto sheet = read_run_sheet(bytes_of(file.readAll()), utf8_of(name));
        if (!sheet) return sheet.error();
        read.emplace_back(name, std::move(sheet.value().record));
    }
    return read;
}

} // namespace

Result<void> make_sample_logbook(const QString& path, const Clock& clock) {
    if (QFileInfo::exists(path)) return {};
    const auto sheets = sample_sheets();
    if (!sheets) return sheets.error();
    if (!QDir().mkpath(QFileInfo(path).absolutePath()))
        return Error{Failure::io, say(phrase("document", "the folder cannot be made")), utf8_of(QFileInfo(path).absolutePath()), {}};
    const QEventLoop timers;    // the document has some, which a thread without one would complain of
    const QTemporaryDir folder; // half a sample would be taken for the whole of it at the next start
    Document document(clock);
    if (auto made = document.create(folder.filePath(QStringLiteral("sample.ullage"))); !made) return made;
    const QDir logs(sample_folder().filePath(QStringLiteral("logs")));
    for (const auto& [name, record] : sheets.value()) {
        const auto imported = document.import(record);
        if (!imported) return imported.error();
        if (const auto logged = add_sample_log(document, logs, name, imported.value()); !logged) return logged;
    }
    if (auto imported = add_sample_pv_sheets(document, sample_folder()); !imported) return imported;
    if (auto imported = add_sample_load_lists(document, QDir(sample_folder().filePath(QStringLiteral("load-lists")))); !imported) return imported;
    return document.saveCopy(path);
}

Result<std::vector<RunRecord>> sample_runs() {
    auto sheets = sample_sheets();
    if (!sheets) return sheets.error();
    std::map<std::string, int> runs_of_unit;
    std::vector<RunRecord> records;
    for (auto& [name, record] : sheets.value()) {
        record.unit.uuid = record.run.unit_uuid = UnitId(record.unit.name);
        if (record.meter) record.run.meter_uuid = record.meter->uuid = MeterId(record.meter->name);
        if (record.second_meter) record.run.second_meter_uuid = record.second_meter->uuid = MeterId(record.second_meter->name);
        record.run.uuid = id_of<RunId>(name);
        record.number = ++runs_of_unit[record.unit.name];
        for (std::size_t i = 0; i < record.readings.size(); ++i)
            record.readings[i].uuid = ReadingId(record.run.uuid.text() + '/' + std::to_string(i));
        records.push_back(std::move(record));
    }
    return records;
}

} // namespace ullage
