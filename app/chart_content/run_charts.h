// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "forecast/accounts.h"
#include "forecast/forecast.h"
#include "models/readings_rows.h"
#include "run_analysis/run_analysis.h"
#include "unit/between_runs.h"

#include <QString>

#include <map>
#include <utility>
#include <vector>

namespace ullage {

/// A chart of one run, and the reading that each of its points stands for.
struct RunChart {
    ChartContent content;
    std::map<QString, std::vector<ReadingId>> readings; ///< by series id, one a point

    /// The reading behind a point; empty when there is none.
    [[nodiscard]] ReadingId readingAt(const QString& series_id, int index) const;
    /// Points of a series that stand for one of the readings.
    [[nodiscard]] std::vector<int> pointsOf(const QString& series_id, const std::vector<ReadingId>& readings) const;
};

/// Gauge-implied and delivered energy against hours since the first reading. The band of the delivered energy is its share of the
/// meter's gain limit, rated energy is a dotted line, stretches named by findings are shaded. Series "delivered",
/// "gauge_implied" (only with a stated rated energy). With the forecast of a running run the range of its cut-off is shaded too, as far as that is to
/// come at `now_ms`; the axis then reaches to its end, but not beyond three times the run so far. The curves end at the cut-off, which is marked.
/// With both accounts of a running or stopped drain their courses ahead are bands, series "right_ahead" and "wrong_ahead".
[[nodiscard]] RunChart energy_chart(const RunRecord& record, const RunAnalysis& analysis, const RunForecast* forecast = nullptr,
                                    const TwoAccounts* accounts = nullptr, std::optional<UtcMs> now_ms = {});

/// The gauge error with its band: series "error" against what the axis names. Where `depths` (known_depths) hold the stored
/// depth and it differs from the delivered one by 0.1 points somewhere, series "stored_error" against that, and each curve
/// names its depth instead of the axis. Before the end of a drain the error is against `expected`, as in the readings table, the band from one end of
/// that range to the other, and the axis says so.
[[nodiscard]] RunChart gauge_error_chart(const RunRecord& record, const RunAnalysis& analysis, const std::vector<ReferenceDepth>& depths,
                                         const std::optional<ExpectedWhole>& expected = {});

/// The same for a picture or a report: depths by all that the unit's runs say, and before the end of a drain against what the forecast as of its last
/// reading expects, so that no figure of it rests on the moment at which it is drawn.
[[nodiscard]] RunChart gauge_error_picture(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit);

/// Mean load between register readings as steps, and the powers that were noted. Series "load", "meter_w", "display_w".
[[nodiscard]] RunChart load_chart(const RunRecord& record, const RunAnalysis& analysis);

} // namespace ullage
