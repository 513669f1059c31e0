// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/files/replacing.h"
#include "report/report_look.h"

#include <QByteArray>
#include <QString>

namespace ullage {

/// One self-contained page, well-formed XML: no script, nothing from the network, drawings as SVG within; texts of the tester are
/// escaped. Printed, its tables repeat their heads and its pages are numbered where the browser can. Main thread only. Errors: those
/// of paint_picture.
[[nodiscard]] Result<QByteArray> report_html(const Report& report, const ReportPictures& pictures, const ReportLook& look);

/// The report as PDF: drawings as vectors, heads of tables repeated on every page, "page 3 of 7" at the foot of each. Main thread
/// only. Errors: those of paint_picture; io where no page can be made.
[[nodiscard]] Result<QByteArray> report_pdf(const Report& report, const ReportPictures& pictures, const ReportLook& look);

/// Writes the one or the other, as the end of `path` says (.pdf, .html, .htm), whole or not at all; then the files beside it, where
/// look.files_beside wants them. Errors: another end; those above; those of write_whole_file and of write_report_files(), which say that the
/// report stands; given up by look.turn.
[[nodiscard]] Result<void> write_report(const Report& report, const ReportPictures& pictures, const QString& path, const ReportLook& look,
                                        const Replacing& replacing = {});

/// Where the tables and drawings of the report at this path stand as files: "osk-1200-report-files" beside "osk-1200-report.pdf".
[[nodiscard]] QString report_files_folder(const QString& report_path);

/// Writes each table as an HTML page and each drawing, with its words, as PNG into that folder, numbered as they follow one another in the report;
/// how many. Photos are not among them. A file that stands there is replaced only where this program wrote it. Main thread only. Errors: io
/// where the folder cannot be made; those of write_table and write_picture, after which the files before stand; given up by look.turn.
[[nodiscard]] Result<int> write_report_files(const Report& report, const ReportPictures& pictures, const QString& report_path,
                                             const ReportLook& look);

/// "osk-1200-run-2-report": a file name without its end (style/file_names.h).
[[nodiscard]] QString report_file_stem(const QString& name);

} // namespace ullage
