// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room foreign_tables: rows become runs with moments.
#pragma once

#include "foreign_tables/inside/table_plan.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// The cells of a row that say when; null where its table has no such column.
struct MomentCells {
    const GridCell *time, *date, *elapsed;
    double elapsed_unit_s; ///< of a bare number; 0: not known
};

/// What a row is labelled with; each may be empty.
struct RowLabels {
    std::string unit, run, block;
};

/// Takes the rows of one block in their order, and makes runs of them: parted by what their labels say, else where a title, a head or an empty row is
/// followed by a gauge that is up again or a register that begins anew.
class RunGatherer {
public:
    RunGatherer(const TablePlan& plan, const TableAnswers& answers, std::string zone, UtcMs now_ms, TableReading& reading)
        : plan_(plan), answers_(answers), zone_(std::move(zone)), now_ms_(now_ms), reading_(reading) {}

    void gap();
    void title(std::size_t row, std::string text);
    /// Another head; a title that stands above it too.
    void newHead(const TableSheet& sheet, const TableSection& section, const TableBlock& block);
    /// The day of the rows below, where the cell in the column of dates names one.
    bool takeDay(const TableSheet& sheet, std::size_t row, std::optional<std::size_t> date_column, DateOrder order);
    /// A cell alone in its row that is a day; false where it is none.
    bool takeHeading(std::size_t row, const GridCell& cell, bool bare);
    void add(std::size_t row, const MomentCells& cells, ReadingValues values, const EventInCell& event, const RowLabels& labels);
    /// Puts the runs into the reading.
    void finish();

private:
    struct Entry {
        std::size_t row;
        std::optional<std::int64_t> day; ///< since 1970; the last that was named
        bool fresh = false;              ///< the row names its day itself, or a heading just above it does
        std::optional<ClockParts> clock;
        std::optional<std::int64_t> elapsed_ms;
        ReadingValues values;
        bool full = false;
    };
    /// Rows between two breaks.
    struct Segment {
        std::string title;
        bool after_gap = false, after_head = false;
        std::optional<std::int64_t> title_day;
        std::optional<std::int64_t> title_clock_ms;
        std::vector<Entry> entries;
    };
    struct GatheredRun {
        ForeignRun run;
        std::vector<Entry> entries;
        std::optional<std::int64_t> title_day, title_clock_ms;
    };

    Segment& segment();
    std::optional<std::int64_t> day_of(const DateInCell& date);
    bool readMoment(std::size_t row, const MomentCells& cells, Entry& entry);
    void leave(std::size_t row, const Message& reason) { reading_.not_taken.push_back({static_cast<long>(row) + 1, false, reason}); }
    void joinSegments(std::vector<GatheredRun>& runs);
    bool beginsAnew(const GatheredRun& before, const Segment& after) const;
    void timeEntries(GatheredRun& gathered, std::size_t number);
    bool place(const Entry& entry, LogClock& clock, std::int64_t day, UtcMs& moment);

    const TablePlan& plan_;
    const TableAnswers& answers_;
    std::string zone_;
    UtcMs now_ms_;
    TableReading& reading_;
    std::vector<Segment> segments_;
    std::map<std::pair<std::string, std::string>, GatheredRun> labelled_;
    std::vector<std::pair<std::string, std::string>> label_order_;
    std::string block_title_;
    Segment next_; ///< what stands above the next row
    bool begun_ = false;
    std::optional<std::int64_t> current_day_;
    std::optional<int> current_year_;
    bool fresh_heading_ = false;
};

} // namespace ullage
