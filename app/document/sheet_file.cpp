// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/sheet_file.h"

#include "document/document.h"
#include "foreign_tables/table_runs.h"
#include "formats/files/whole_file.h"
#include "formats/sheets/load_list_file.h"
#include "formats/sheets/pv_sheet_text.h"
#include "style/file_names.h"
#include "style/words.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr qint64 first_lines_bytes = 16 << 10;

Result<std::string> text_of(const QString& path, const Phrase& choose) {
    if (!QFileInfo(path).isFile()) return Error{Failure::not_found, say(phrase("document", "this is no file")), utf8_of(path), say(choose)};
    return read_whole_file(native_path(path));
}

} // namespace

bool is_run_sheet_file(const QString& path) {
    QFile file(path);
    if (!file.open(QFile::ReadOnly)) return false;
    static const QRegularExpression unit_line(QStringLiteral("^\\s*#\\s*unit\\s*:"), QRegularExpression::MultilineOption);
    return unit_line.match(QString::fromUtf8(file.read(first_lines_bytes))).hasMatch();
}

bool is_foreign_table_file(const QString& path) {
    static const QStringList endings{QStringLiteral("csv"), QStringLiteral("tsv"),  QStringLiteral("txt"), QStringLiteral("xlsx"),
                                     QStringLiteral("ods"), QStringLiteral("html"), QStringLiteral("htm"), QStringLiteral("xls")};
    QFile file(path);
    if (!endings.contains(QFileInfo(path).suffix().toLower()) || !file.open(QFile::ReadOnly)) return false;
    const std::string beginning = bytes_of(file.read(first_lines_bytes));
    if (!may_be_foreign_table(beginning)) return false;
    // The beginning of a workbook cannot be read; a text has to have columns.
    const auto book = read_table_book(beginning, {});
    return !book || book.value().sheets.front().width() > 1;
}

bool names_gauge(const QString& path) {
    QFile file(path);
    if (!file.open(QFile::ReadOnly)) return false;
    const auto book = read_table_book(bytes_of(file.read(first_lines_bytes)), {});
    if (!book) return false;
    const TableReading found = understand_table(book.value().sheets.front(), {}, "UTC", 0);
    return std::ranges::any_of(found.columns, [](const TableReading::Column& column) { return column.role == TableRole::gauge; });
}

bool is_load_list_file(const QString& path) {
    QFile file(path);
    return file.open(QFile::ReadOnly) && file.read(first_lines_bytes).trimmed().startsWith("# load_list:");
}

bool is_pv_sheet_file(const QString& path) {
    const auto text = text_of(path, phrase("document", "choose a PV sheet"));
    return text && read_pv_sheet(text.value(), {}).ok();
}

Result<ImportedPvSheet> import_pv_sheet_file(Document& document, const QString& path) {
    const auto text = text_of(path, phrase("document", "choose a PV sheet"));
    if (!text) return text.error();
    auto read = read_pv_sheet(text.value(), utf8_of(QFileInfo(path).fileName()));
    if (!read) return read.error();
    ImportedPvSheet imported{std::move(read.value().sheet), {}};
    const PvLimits& stated = read.value().limits;
    PvLimits known;
    for (const Unit& unit : document.units()) {
        if (unit.name != read.value().unit) continue;
        imported.sheet.unit_uuid = unit.uuid;
        known = pv_limits(unit);
    }
    if (!read.value().unit.empty() && imported.sheet.unit_uuid.empty())
        imported.notices.push_back(say(phrase("document", "the logbook has no unit named `%1`; choose one in the sheet"), read.value().unit));
    constexpr std::optional<double> PvLimits::*limits[] = {&PvLimits::max_v, &PvLimits::max_a, &PvLimits::max_w, &PvLimits::start_v,
                                                           &PvLimits::short_circuit_a};
    if (std::ranges::any_of(limits, [&](auto limit) { return (stated.*limit) && stated.*limit != known.*limit; }))
        imported.notices.push_back(
            say(phrase("document", "limits of the PV input belong to the unit; state those of the file in the unit's claims")));
    if (imported.sheet.name.empty()) imported.sheet.name = utf8_of(QFileInfo(path).completeBaseName());
    Result<PvSheet> added = document.addPvSheet(std::move(imported.sheet));
    if (!added) return added.error();
    imported.sheet = std::move(added).value();
    return imported;
}

Result<LoadList> import_load_list_file(Document& document, const QString& path) {
    const auto text = text_of(path, phrase("document", "choose a load list"));
    if (!text) return text.error();
    auto list = read_load_list(text.value(), utf8_of(QFileInfo(path).fileName()));
    if (!list) return list;
    return document.addLoadList(std::move(list).value());
}

Result<SheetImport> read_sheet_file(const QString& path) {
    const auto text = text_of(path, phrase("document", "choose a run sheet"));
    if (!text) return text.error();
    return read_run_sheet(text.value(), utf8_of(QFileInfo(path).fileName()));
}

Result<void> export_sheet_file(const Document& document, const RunId& run_uuid, const QString& path) {
    return write_whole_file(native_path(path), write_run_sheet(*document.run(run_uuid)), {Replacing::Consent::ordinary, {}});
}

QString sheet_file_name(const Document& document, const RunId& run_uuid) {
    const auto* record = document.run(run_uuid);
    const auto kind = run_kind_text(record->run.kind);
    // Kind and number stay, however long the name is.
    return file_stem(raw_text(record->unit.name)) + QLatin1Char('-') + file_stem(raw_text(kind)) + QLatin1Char('-') +
           QString::number(record->number) + QStringLiteral(".csv");
}

} // namespace ullage
