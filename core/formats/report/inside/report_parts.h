// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/language.h"
#include "formats/report/report_content.h"
#include "formats/report/report_numbers.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

// The parts that the report of a run and that of a comparison share. For this folder only; others use report_content.h.

/// A report under construction. While it lives this thread speaks with the decimal sign of the report.
class ReportBuilder {
public:
    /// `runs` are all that the report shows: their texts are kept out of number forms.
    ReportBuilder(const std::vector<ReportedRun>& runs, const ReportOptions& options);

    void chapter(const Message& text) { heading(1, text); }
    void section(const Message& text) { heading(2, text); }
    /// What the program says of drains and quantities, without the advice in it unless the report is the tester's own.
    [[nodiscard]] Message told(const Message& words) const;
    /// A message in the language in use, numbers in the reader's form.
    [[nodiscard]] std::string text(const Message& message) const { return form.apply(message.text()); }
    /// A sentence of the program; nothing for an empty one.
    void paragraph(const Message& sentence, const Message& lead = {});
    void list(const std::vector<Message>& items); ///< nothing for an empty one
    void picture(std::string key, const Message& caption);
    /// Nothing for a table without rows. Reasons in it are told().
    void table(const Table& table);

    Report report;
    NumberForm form;
    bool own_affairs = false; ///< as ReportOptions

private:
    SpeakingIn speaking_;
    void heading(int level, const Message& text);

    Message heading_; ///< the last one
};

/// "drain 14 May, 64 W" with the unit's name in front.
[[nodiscard]] Message run_name(const ReportedRun& run);

/// "937 ± 19 Wh", in the decimals of its key; "not known".
[[nodiscard]] Message say_value(const Quantity& quantity);

/// A figure to be seen first, with its kind as the note.
[[nodiscard]] ReportFigure figure_of(const Quantity& quantity, const NumberForm& form);

/// Every result of these that is not measured, or has no interval, with its reason; `whose` heads each row where it is not empty.
struct NamedQuantity {
    Message whose;
    Quantity quantity;
};
void add_not_known(ReportBuilder& builder, const std::vector<NamedQuantity>& quantities);

/// Differences of usable fraction between rows of different units.
struct ReportedPairs {
    std::vector<Message> names;     ///< of the rows
    std::vector<PairVerdict> pairs; ///< empty beyond most_report_paired rows
    std::size_t total = 0;          ///< pairs that there are
};
[[nodiscard]] ReportedPairs reported_pairs(const Comparison& comparison, const FairComparison& fair);
/// Which pairs are not resolved, and which could not be held against each other.
void add_pairs_summary(ReportBuilder& builder, const ReportedPairs& pairs);
/// Every pair as a table with its heading.
void add_pairs(ReportBuilder& builder, const FairComparison& fair, const ReportedPairs& pairs);

/// The sentence below every table of results: what stands after ±.
[[nodiscard]] Message say_what_intervals_are();

/// Parts of the report, each with its heading or title.
void add_measured_with(ReportBuilder& builder, const std::vector<ReportedRun>& runs);
void add_assumed_of_register(ReportBuilder& builder, const ReportedRun& run);
void add_charts(ReportBuilder& builder, const ReportedRun& run);
void add_findings(ReportBuilder& builder, const ReportedRun& run);
void add_budget(ReportBuilder& builder, const ReportedRun& run);
void add_readings(ReportBuilder& builder, const ReportedRun& run);
void add_method(ReportBuilder& builder, const MeasureOptions& options);
void add_amendments(ReportBuilder& builder, const std::vector<ReportedRun>& runs);
void add_cautions_and_about(ReportBuilder& builder);

} // namespace ullage
