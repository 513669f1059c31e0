// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "chart_content/comparison_pictures.h"
#include "formats/report/report_content.h"
#include "formats/report/report_sizing.h"
#include "formats/report/report_unit.h"
#include "report/report_look.h"

#include <QImage>

#include <map>
#include <string>

namespace ullage {

/// A report with its drawings, ready for write_report().
struct MadeReport {
    Report report;
    ReportPictures pictures;
};

/// Report and drawings of one run; see run_report().
[[nodiscard]] MadeReport make_run_report(const ReportedRun& run, const UnitFit& unit_fit, const ReportOptions& options);

/// Report and drawings of a comparison at the common load of `fair`, where it has one; see comparison_report(). `band` is what is expected.
[[nodiscard]] MadeReport make_comparison_report(const Comparison& comparison, const FairComparison& fair, const std::vector<ReportedRun>& runs,
                                                const std::vector<UnitAnalysis>& units, const ReportOptions& options,
                                                const ExpectationBand& band = {});

/// Enough pixels for a photo in a report.
inline constexpr QSize report_photo_size{1200, 1200};

/// Report and drawings of one unit; see unit_report(). `photos`: the pictures of its photos, by their keys.
[[nodiscard]] MadeReport make_unit_report(const ReportedUnit& unit, const UnitReportChoice& choice, const std::map<PhotoId, QImage>& photos,
                                          const ReportOptions& options);

/// Report and drawings of a sizing; see sizing_report().
[[nodiscard]] MadeReport make_sizing_report_of(const Sizing& sizing, const ReportOptions& options);

/// Report and drawing of a PV input check; the limits are those of `sheet`. See pv_report().
[[nodiscard]] MadeReport make_pv_report_of(const PvSheetText& sheet, const ReportOptions& options);

} // namespace ullage
