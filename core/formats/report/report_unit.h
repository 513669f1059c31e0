// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "claims/claims.h"
#include "comparison/comparison.h"
#include "formats/report/report_content.h"
#include "model/photo.h"
#include "model/publisher.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What a report of a unit may leave out, in the order in which it stands there.
enum class UnitReportPart { claims, drains, curves, gauge, other_runs, photos, budget, method, readings };
inline constexpr UnitReportPart all_unit_report_parts[] = {UnitReportPart::claims, UnitReportPart::drains, UnitReportPart::curves,
                                                           UnitReportPart::gauge,  UnitReportPart::photos, UnitReportPart::other_runs,
                                                           UnitReportPart::budget, UnitReportPart::method, UnitReportPart::readings};
/// "claims", "drains", "curves", "gauge", "other-runs", "photos", "budget", "method", "readings": as commands name them.
[[nodiscard]] std::string_view unit_report_part_key(UnitReportPart part);
[[nodiscard]] std::optional<UnitReportPart> unit_report_part_from(std::string_view key);

/// Keys of a unit's own drawings, for report_picture_key() with the unit's uuid.
inline constexpr const char *report_usable_key = "usable", *report_run_time_key = "run_time", *report_gauge_overlay_key = "gauge_overlay",
                            *report_gauge_drift_key = "gauge_drift";

/// A photo chosen as evidence; the writer is given the picture under the text of `uuid`.
struct ReportedPhoto {
    PhotoId uuid;
    std::string caption;
};

/// "drain 14 May, 64 W, 14 May 21:20: gauge 71 %, register 2345 Wh": what a photo of the run's is evidence of.
[[nodiscard]] std::string photo_caption(const RunRecord& record, const RunAnalysis& analysis, const Photo& photo);

/// A unit that a report shows. The pointers must outlive the making of the report and are not null.
struct ReportedUnit {
    const UnitAnalysis* analysis = nullptr;
    const UnitClaims* claims = nullptr;
    std::vector<ReportedRun> runs; ///< all of the unit, in order of time
    std::vector<ReportedPhoto> photos;
    Publisher publisher;
};

/// How much of it stands in the report.
struct UnitReportChoice {
    std::set<UnitReportPart> parts{std::begin(all_unit_report_parts), std::end(all_unit_report_parts)};
    /// Two pages: the answers, claims, drains and one drawing of each sort, whatever `parts` says.
    bool in_short = false;
};

/// What a reviewer publishes of one unit: who publishes it; in short what the unit gives, how sure that is, and whether its gauge can be trusted;
/// claims with verdicts; all drains and what they say together; curves; gauge errors of all drains; charge and output runs with the round trip;
/// photos; then what it rests on: budgets, method, readings. Cautions, and the licence of the text, stand last.
[[nodiscard]] Report unit_report(const ReportedUnit& unit, const UnitReportChoice& choice, const ReportOptions& options);

} // namespace ullage
