// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/report_file.h"

#include "exchange/whole_file.h"

#include <QFileInfo>
#include <QRegularExpression>

namespace ullage {

Result<void> write_report(const Report& report, const ReportPictures& pictures, const QString& path, const ReportLook& look) {
    const QString end = QFileInfo(path).suffix().toLower();
    const bool pdf = end == QLatin1String("pdf");
    if (!pdf && end != QLatin1String("html") && end != QLatin1String("htm"))
        return Error{Failure::bad_input, "a report's name must end in .pdf or .html", path.toStdString(), "add the ending that you want"};
    const Result<QByteArray> bytes = pdf ? report_pdf(report, pictures, look) : report_html(report, pictures, look);
    if (!bytes) return bytes.error();
    return write_whole_file(path.toStdString(), {bytes.value().constData(), static_cast<std::size_t>(bytes.value().size())});
}

QString report_file_stem(const QString& name) {
    static const QRegularExpression others(QStringLiteral("[^\\p{L}\\p{N}]+"), QRegularExpression::UseUnicodePropertiesOption);
    QString stem = name.toLower().replace(others, QStringLiteral("-"));
    while (stem.startsWith(QLatin1Char('-'))) stem.remove(0, 1);
    while (stem.endsWith(QLatin1Char('-'))) stem.chop(1);
    return stem.isEmpty() ? QStringLiteral("report") : stem + QStringLiteral("-report");
}

} // namespace ullage
