// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/sheet_file.h"

#include "document/document.h"
#include "exchange/load_list_file.h"
#include "exchange/run_sheet.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSaveFile>

#include <utility>

namespace ullage {

namespace {

constexpr qint64 longest_bytes = 64LL << 20;

Error file_error(const QString& path, const std::string& what, const QString& why) {
    return Error{Failure::io, what + ": " + why.toStdString(), path.toStdString(), {}};
}

Result<std::string> text_of(const QString& path, const std::string& what) {
    QFile file(path);
    if (!QFileInfo(path).isFile()) return Error{Failure::not_found, "this is no file", path.toStdString(), "choose a " + what};
    if (!file.open(QFile::ReadOnly)) return file_error(path, "the file cannot be read", file.errorString());
    if (file.size() > longest_bytes)
        return Error{Failure::bad_input, "the file is too long for a " + what, path.toStdString(), "choose another file"};
    return file.readAll().toStdString();
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
    auto list = read_load_list(text.value(), QFileInfo(path).fileName().toStdString());
    if (!list) return list;
    return document.addLoadList(std::move(list).value());
}

Result<ImportedSheet> import_sheet_file(Document& document, const QString& path) {
    const auto text = text_of(path, "run sheet");
    if (!text) return text.error();
    const auto sheet = read_run_sheet(text.value(), QFileInfo(path).fileName().toStdString());
    if (!sheet) return sheet.error();
    const auto brought = document.import(sheet.value().record);
    if (!brought) return brought.error();
    return ImportedSheet{brought.value().run.uuid, sheet.value().notices};
}

Result<void> export_sheet_file(const Document& document, const std::string& run_uuid, const QString& path) {
    const auto text = write_run_sheet(*document.run(run_uuid));
    QSaveFile file(path);
    if (!file.open(QFile::WriteOnly)) return file_error(path, "the file cannot be written", file.errorString());
    const auto size = static_cast<qint64>(text.size());
    if (file.write(text.data(), size) != size || !file.commit())
        return file_error(path, "the file could not be written", file.errorString());
    return {};
}

QString sheet_file_name(const Document& document, const std::string& run_uuid) {
    static const QRegularExpression others(QStringLiteral("[^\\p{L}\\p{N}]+"), QRegularExpression::UseUnicodePropertiesOption);
    const auto* record = document.run(run_uuid);
    const auto kind = run_kind_text(record->run.kind);
    auto name = QStringLiteral("%1 %2 %3")
                    .arg(QString::fromStdString(record->unit.name),
                         QString::fromUtf8(kind.data(), static_cast<qsizetype>(kind.size())))
                    .arg(record->number)
                    .toLower();
    name.replace(others, QStringLiteral("-"));
    return name + QStringLiteral(".csv");
}

} // namespace ullage
