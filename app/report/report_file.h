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

/// Writes the one or the other, as the end of `path` says (.pdf, .html, .htm), whole or not at all. Errors: another end; those above;
/// those of write_whole_file; given up by look.turn.
[[nodiscard]] Result<void> write_report(const Report& report, const ReportPictures& pictures, const QString& path, const ReportLook& look,
                                        const Replacing& replacing = {});

/// "osk-1200-run-2-report": a file name without its end (style/file_names.h).
[[nodiscard]] QString report_file_stem(const QString& name);

} // namespace ullage
