// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/forecast.h"
#include "run_analysis/run_analysis.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What a running drain that started full should deliver to its cut-off, Wh: what came so far and the mean load until the cut-off that is forecast as
/// of the last reading, with the ends of its range. Absent without a forecast, and once the run has ended.
struct ExpectedWhole {
    double lower_wh = 0, estimate_wh = 0, upper_wh = 0;
};
[[nodiscard]] std::optional<ExpectedWhole> expected_whole(const RunRecord& record, const EnergyAnalysis& energy, const RunForecast* forecast);

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

    QString day;    ///< of a day's heading, else empty
    ReadingId uuid; ///< empty in a day's heading
    bool amended = false;
    bool doubtful = false; ///< a finding about a stretch of the gauge names the reading
    Cell cells[column_count];
};

/// Rows of the readings, of withdrawn ones where they are asked for, with what the analysis derived at each, under a heading for each local day. What
/// a row says is put together when it is asked for, since nobody looks at all the rows of a long run.
class ReadingsRows {
    Q_DECLARE_TR_FUNCTIONS(ullage::ReadingsRows)

public:
    ReadingsRows() = default;
    /// The error of the gauge is told against the share delivered: of what the run delivered from full to its cut-off, or before its end of
    /// `expected_wh`. Where neither is known it is not told.
    ReadingsRows(std::shared_ptr<const RunRecord> record, const RunAnalysis& analysis, std::optional<double> expected_wh = {},
                 bool with_withdrawn = false);

    [[nodiscard]] std::size_t size() const { return entries_.size(); }
    [[nodiscard]] ReadingsRow row(std::size_t at) const;
    [[nodiscard]] bool isDay(std::size_t at) const { return entries_[at] < 0; }
    [[nodiscard]] bool isWithdrawn(std::size_t at) const { return !isDay(at) && record_->readings[static_cast<std::size_t>(entries_[at])].withdrawn; }
    [[nodiscard]] ReadingId uuidAt(std::size_t at) const; ///< empty in a day's heading
    [[nodiscard]] std::optional<std::size_t> rowOf(const ReadingId& reading_uuid) const;
    /// Whether two rows stand for the same reading or day.
    [[nodiscard]] static bool same(const ReadingsRows& one, std::size_t at, const ReadingsRows& other, std::size_t other_at);
    void erase(std::size_t first, std::size_t last) {
        entries_.erase(entries_.begin() + std::ptrdiff_t(first), entries_.begin() + std::ptrdiff_t(last));
    }

private:
    struct Derived;

    std::shared_ptr<const RunRecord> record_;
    std::shared_ptr<const Derived> derived_;
    std::vector<std::int32_t> entries_; ///< the reading, or -1 less the day
    std::vector<QString> days_;
};

/// "14 May 18:04: 69 %, 431 Wh (misread)": what a reading said from when on, and why it was changed; one line a version.
[[nodiscard]] QStringList history_lines(const std::vector<ReadingVersion>& versions, const std::string& zone);

} // namespace ullage
