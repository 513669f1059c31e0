// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/run_analysis.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage {

/// One row of the readings table: a reading, or the heading of a local day.
struct ReadingsRow {
    enum Column { time, gauge, register_value, delivered, load, error, remark, column_count };
    /// How prominently a cell stands.
    enum class Emphasis { plain, soft, left_out };
    struct Cell {
        QString text;
        Emphasis emphasis = Emphasis::plain;
        QString hint; ///< tool tip
    };

    QString day;  ///< of a day's heading, else empty
    QString uuid; ///< of the reading; empty in a day's heading
    bool amended = false;
    bool doubtful = false; ///< a finding about a stretch of the gauge names the reading
    Cell cells[column_count];
};

/// Rows of the readings that are not withdrawn, with what the analysis derived at each.
[[nodiscard]] std::vector<ReadingsRow> readings_rows(const RunRecord& record, const RunAnalysis& analysis);

/// "14 May 18:04: 69 %, 431 Wh (misread)": what a reading said from when on, and why it was changed; one line a version.
[[nodiscard]] QStringList history_lines(const std::vector<ReadingVersion>& versions, const std::string& zone);

} // namespace ullage
