// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "comparison/comparison.h"
#include "comparison/fair_comparison.h"
#include "formats/tables/table_printed.h"
#include "unit/unit_analysis.h"

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ullage {

/// What stands in a report, free of any file format. All texts are UTF-8, ready to be shown: numbers are rounded and in the
/// reader's form; texts of the tester are as they were typed, so a writer must escape them.

/// A number to be seen first.
struct ReportFigure {
    std::string title;
    std::string value;    ///< "0.781", "not known"
    std::string interval; ///< "± 0.016" or empty
    std::string unit;     ///< "Wh" or empty
    std::string note;     ///< how far it is known: "measured"
};

struct ReportHeading {
    int level = 1; ///< 1 a chapter, 2 a part of one
    std::string text;
};

struct ReportParagraph {
    std::string lead; ///< stands in bold before the text; may be empty
    std::string text;
};

struct ReportFigures {
    std::vector<ReportFigure> figures;
};

/// A table whose head is to be repeated on every page that it reaches.
struct ReportTable {
    std::string title; ///< may be empty
    PrintedTable table;
    std::vector<std::string> remarks;     ///< below the table
    std::shared_ptr<const Table> whole{}; ///< the same with numbers in full and a title, for whoever works on with them
};

/// A drawing that the writer is given under this key (see report_picture_key); one that it is not given is left out.
struct ReportPicture {
    std::string key;
    std::string caption;
};

struct ReportFindings {
    struct Item {
        Weight weight = Weight::note;
        std::string sentence, evidence;
    };
    std::vector<Item> items;
};

struct ReportList {
    std::vector<std::string> items;
};

using ReportBlock = std::variant<ReportHeading, ReportParagraph, ReportFigures, ReportTable, ReportPicture, ReportFindings, ReportList>;

struct Report {
    std::string title;    ///< "Osk 1200: drain 14 May, 64 W"
    std::string subtitle; ///< maker, number of the run
    std::string made;     ///< "made 16 May 2027, 10:12 by Ullage 0.1.0"
    std::vector<ReportBlock> blocks;
    std::vector<std::string> names{}; ///< of the units and meters that it speaks of: no line should end within one
};

/// A run that a report shows; both pointers must outlive the making of the report and are not null.
struct ReportedRun {
    const RunRecord* record = nullptr;
    const RunAnalysis* analysis = nullptr;
    /// Histories of its changed readings; absent where the source keeps none (a run sheet).
    std::optional<std::vector<ReadingHistory>> histories;
};

struct ReportOptions {
    char decimal_sign = '.';  ///< '.' or ','
    UtcMs made_ms = 0;        ///< when the report is made
    std::string zone = "UTC"; ///< of that moment; readings stand in the zone of their run
    /// Columns of a comparison's table, by key (formats/results/comparison_columns.h); empty: those for readers.
    std::vector<std::string> columns{};
    /// With what is the tester's own affair: tags, prices paid, remarks, advice on what to test next.
    bool own_affairs = false;
};

/// Key of a run's drawing: `what` is "vessel", "energy", "gauge_error" or "load".
[[nodiscard]] std::string report_picture_key(const std::string& what, const std::string& uuid);
/// Keys of a comparison's own drawings: all vessels at one height scale, and the usable fractions as bars.
inline constexpr std::string_view report_vessels_key = "vessels", report_bars_key = "bars";
/// Curves of all units against load in one drawing, and their gauge errors likewise.
inline constexpr std::string_view report_against_load_key = "against_load", report_gauge_errors_key = "gauge_errors";

/// Of more readings than this a report shows so many and says how many it leaves out. The first and the last, those with a mark, a remark or an
/// amendment, and those that findings and assumptions of the register name always stay, however many they are; the others are spread evenly.
inline constexpr std::size_t most_report_readings = 500;

/// Up to so many rows of a comparison its report holds the differences of all their pairs; of more it says where they are found.
inline constexpr std::size_t most_report_paired = 25;

/// Report of one run, in this order: summary, what was measured with what, results, what cannot be known, charts, findings,
/// uncertainty budget, method with sources, readings, amendments, cautions, about the report. `unit_fit` is that of all the unit's drains.
[[nodiscard]] Report run_report(const ReportedRun& run, const UnitFit& unit_fit, const ReportOptions& options);

/// Report of a comparison in the same order. `runs` are those of the comparison's rows, in their order; `units` what the drains of
/// each compared unit say together. At the common load of `fair` where it has one: a unit that cannot be moved there stands as tested with the
/// reason. Holds which differences between units these meters resolve.
[[nodiscard]] Report comparison_report(const Comparison& comparison, const FairComparison& fair, const std::vector<ReportedRun>& runs,
                                       const std::vector<UnitAnalysis>& units, const ReportOptions& options);
/// The same as tested.
[[nodiscard]] Report comparison_report(const Comparison& comparison, const std::vector<ReportedRun>& runs, const std::vector<UnitAnalysis>& units,
                                       const ReportOptions& options);

} // namespace ullage
