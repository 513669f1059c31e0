// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/sheet_file.h"

#include "document/document.h"
#include "formats/files/whole_file.h"
#include "formats/sheets/load_list_file.h"
#include "style/file_names.h"
#include "style/words.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <utility>

namespace ullage {

namespace {

Result<std::string> text_of(const QString& path, const std::string& what) {
    if (!QFileInfo(path).isFile()) return Error{Failure::not_found, "this is no file", utf8_of(path), "choose a " + what};
    return read_whole_file(native_path(path));
}

} // namespace

bool is_run_sheet_file(const QString& path) {
    constexpr qint64 first_lines_bytes = 16 << 10;
    QFile file(path);
    if (!file.open(QFile::ReadOnly)) return false;
    static const QRegularExpression unit_line(QStringLiteral("^\\s*#\\s*unit\\s*:"), QRegularExpression::MultilineOption);
    return unit_line.match(QString::fromUtf8(file.read(first_lines_bytes))).hasMatch();
}

Result<LoadList> import_load_list_file(Document& document, const QString& path) {
    const auto text = text_of(path, "load list");
    if (!text) return text.error();
    auto list = read_load_list(text.value(), utf8_of(QFileInfo(path).fileName()));
    if (!list) return list;
    return document.addLoadList(std::move(list).value());
}

Result<SheetImport> read_sheet_file(const QString& path) {
    const auto text = text_of(path, "run sheet");
    if (!text) return text.error();
    return read_run_sheet(text.value(), utf8_of(QFileInfo(path).fileName()));
}

Result<void> export_sheet_file(const Document& document, const std::string& run_uuid, const QString& path) {
    return write_whole_file(native_path(path), write_run_sheet(*document.run(run_uuid)), {Replacing::Consent::ordinary, {}});
}

QString sheet_file_name(const Document& document, const std::string& run_uuid) {
    const auto* record = document.run(run_uuid);
    const auto kind = run_kind_text(record->run.kind);
    // Kind and number stay, however long the name is.
    return file_stem(raw_text(record->unit.name)) + QLatin1Char('-') + file_stem(raw_text(kind)) + QLatin1Char('-') +
           QString::number(record->number) + QStringLiteral(".csv");
}

} // namespace ullage
