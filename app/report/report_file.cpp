// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/report_file.h"

#include "formats/files/whole_file.h"
#include "style/file_names.h"
#include "style/words.h"

#include <QFile>
#include <QFileInfo>

namespace ullage {

Result<void> write_report(const Report& report, const ReportPictures& pictures, const QString& path, const ReportLook& look,
                          const Replacing& replacing) {
    const QString end = QFileInfo(path).suffix().toLower();
    const bool pdf = end == QLatin1String("pdf");
    if (!pdf && end != QLatin1String("html") && end != QLatin1String("htm"))
        return Error{Failure::bad_input, say(phrase("report", "a report's name must end in .pdf or .html")), utf8_of(path),
                     say(phrase("report", "add the ending that you want"))};
    const Result<QByteArray> bytes = pdf ? report_pdf(report, pictures, look) : report_html(report, pictures, look);
    if (!bytes) return bytes.error();
    const Result<void> written =
        write_whole_file(native_path(path), {bytes.value().constData(), static_cast<std::size_t>(bytes.value().size())}, replacing);
    if (!written || !look.files_beside) return written;
    if (const Result<int> files = write_report_files(report, pictures, path, look); !files) {
        Error error = files.error();
        error.what = say(phrase("report", "the report is written, but not all files beside it: %1"), error.what);
        return error;
    }
    return {};
}

QString report_file_stem(const QString& name) { return file_stem(name) + QStringLiteral("-report"); }

} // namespace ullage
