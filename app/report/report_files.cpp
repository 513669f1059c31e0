// SPDX-License-Identifier: GPL-3.0-or-later
// Tables and drawings of a report as files of their own.
#include "report/report_file.h"

#include "style/file_names.h"
#include "style/words.h"

#include <QDir>
#include <QFileInfo>

namespace ullage {

namespace {

constexpr int drawing_letters = 60; ///< of a caption in a file's name

/// "Delivered and gauge-implied energy, Osk 1200, drain 14 May, 64 W" of a caption that may go on after a colon.
QString file_words(const std::string& caption) {
    const QString words = shown(caption);
    return words.left(words.indexOf(QLatin1Char(':'))).left(drawing_letters);
}

} // namespace

QString report_files_folder(const QString& report_path) {
    const QFileInfo report(report_path);
    return report.dir().filePath(report.completeBaseName() + QStringLiteral("-files"));
}

Result<int> write_report_files(const Report& report, const ReportPictures& pictures, const QString& report_path, const ReportLook& look) {
    const QDir into(report_files_folder(report_path));
    if (!into.mkpath(QStringLiteral(".")))
        return Error{Failure::io, say(phrase("report", "the folder cannot be made")), utf8_of(into.path()),
                     say(phrase("report", "choose a folder that you may write to"))};
    const Replacing own{Replacing::Consent::own, {}}; // nobody was asked about these files
    PictureSpec spec;
    spec.scale = 2;
    spec.with_words = true;
    spec.source = shown(report.made);
    int files = 0;
    const auto next_path = [&](const QString& words, const char* ending) {
        ++files;
        return into.filePath(QStringLiteral("%1-%2.%3").arg(files, 2, 10, QLatin1Char('0')).arg(file_stem(words), QLatin1String(ending)));
    };
    for (const ReportBlock* block : shown_blocks(report, pictures)) {
        Result<void> written;
        if (const auto* table = std::get_if<ReportTable>(block); table && table->whole) {
            written = write_table(*table->whole, TableFormat::html, native_path(next_path(shown(table->whole->title.text()), "html")), own);
        } else if (const auto* picture = std::get_if<ReportPicture>(block)) {
            const PictureContent& content = pictures.at(picture->key);
            if (std::holds_alternative<PhotoContent>(content)) continue; // the tester has it as a file
            written = write_picture(content, next_path(file_words(picture->caption), "png"), spec, own);
        }
        if (!written) return written.error();
        if (!look.goes_on()) return report_given_up();
    }
    return files;
}

} // namespace ullage
