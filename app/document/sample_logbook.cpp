// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/sample_logbook.h"

#include "document/document.h"
#include "exchange/load_list_file.h"
#include "exchange/pv_sheet_text.h"
#include "exchange/run_sheet.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

// Outside the namespace: the macro declares a function of global scope.
static void load_sample_sheets() { Q_INIT_RESOURCE(samples); }

namespace ullage {

namespace {

/// The limits that a PV sheet states stand in the claims of its unit already.
Result<void> add_sample_pv_sheets(Document& document, const QDir& sheets) {
    for (const auto& name : sheets.entryList({QStringLiteral("pv-*.txt")}, QDir::Files, QDir::Name)) {
        QFile file(sheets.filePath(name));
        if (!file.open(QFile::ReadOnly)) return Error{Failure::io, "the sample sheet cannot be read", name.toStdString(), {}};
        auto read = read_pv_sheet(file.readAll().toStdString(), name.toStdString());
        if (!read) return read.error();
        PvSheet sheet = std::move(read.value().sheet);
        for (const Unit& unit : document.units())
            if (unit.name == read.value().unit) sheet.unit_uuid = unit.uuid;
        if (const auto added = document.addPvSheet(std::move(sheet)); !added) return added.error();
    }
    return {};
}

} // namespace

Result<void> open_sample_logbook(Document& document, const QString& path) {
    if (QFileInfo::exists(path)) return document.open(path);
    load_sample_sheets();
    const QDir sheets(QStringLiteral(":/ullage/samples"));
    const auto names = sheets.entryList({QStringLiteral("*.csv")}, QDir::Files, QDir::Name);
    if (names.isEmpty())
        return Error{Failure::not_found, "this build holds no sample run sheets", {}, "make a new logbook instead"};
    if (!QDir().mkpath(QFileInfo(path).absolutePath()))
        return Error{Failure::io, "the folder cannot be made", QFileInfo(path).absolutePath().toStdString(), {}};
    if (auto made = document.create(path); !made) return made;
    for (const auto& name : names) {
        QFile file(sheets.filePath(name));
        if (!file.open(QFile::ReadOnly)) return Error{Failure::io, "the sample sheet cannot be read", name.toStdString(), {}};
        const auto sheet = read_run_sheet(file.readAll().toStdString(), name.toStdString());
        if (!sheet) return sheet.error();
        if (const auto brought = document.import(sheet.value().record); !brought) return brought.error();
    }
    if (auto brought = add_sample_pv_sheets(document, sheets); !brought) return brought;
    const QDir lists(sheets.filePath(QStringLiteral("load-lists")));
    for (const auto& name : lists.entryList({QStringLiteral("*.csv")}, QDir::Files, QDir::Name)) {
        QFile file(lists.filePath(name));
        if (!file.open(QFile::ReadOnly)) return Error{Failure::io, "the sample load list cannot be read", name.toStdString(), {}};
        const auto list = read_load_list(file.readAll().toStdString(), name.toStdString());
        if (!list) return list.error();
        if (const auto added = document.addLoadList(list.value()); !added) return added.error();
    }
    document.undoStack().clear();
    return {};
}

} // namespace ullage
