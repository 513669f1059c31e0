// SPDX-License-Identifier: GPL-3.0-or-later
// Reports and results in a language that is not English.
#include "casebook/casebook.h"
#include "formats/report/report_sizing.h"
#include "formats/report/report_unit.h"
#include "formats/results/comparison_table.h"
#include "formats/results/sizing_output.h"
#include "report_samples.h"
#include "support/marked_language.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

ReportOptions with_sign(char decimal_sign) { return {decimal_sign, RecordBuilder::start_ms, "UTC"}; }

bool has_part(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

/// Every title, lead, caption and head that the program words; a name stands alone.
std::vector<std::string> worded_titles(const Report& report) {
    std::vector<std::string> titles{report.title, report.made};
    for (const ReportBlock& block : report.blocks) {
        if (const auto* heading = std::get_if<ReportHeading>(&block)) titles.push_back(heading->text);
        if (const auto* paragraph = std::get_if<ReportParagraph>(&block); paragraph && !paragraph->lead.empty()) titles.push_back(paragraph->lead);
        if (const auto* picture = std::get_if<ReportPicture>(&block)) titles.push_back(picture->caption);
        if (const auto* table = std::get_if<ReportTable>(&block)) {
            titles.push_back(table->table.heads.front());
            titles.insert(titles.end(), table->remarks.begin(), table->remarks.end());
        }
        if (const auto* figures = std::get_if<ReportFigures>(&block))
            for (const ReportFigure& figure : figures->figures) titles.push_back(figure.title);
    }
    return titles;
}

TEST(ReportLanguage, a_report_of_a_run_is_in_the_language_in_use) {
    const ReportSample sample(full_drain());
    const SpeakingIn speaking(marked_language);
    const Report report = run_report(sample.run(), sample.fit(), with_sign(','));
    for (const std::string& title : worded_titles(report)) EXPECT_TRUE(is_marked(title)) << title;
    const std::string summary = chapter_text(report, "§Summary");
    EXPECT_TRUE(has_part(summary, "Specimen delivered 812,5 ± 7,8 Wh")) << summary;
    EXPECT_FALSE(has_part(summary, "812.5")) << summary;
}

TEST(ReportLanguage, a_report_has_the_decimal_sign_of_its_readers_in_any_language) {
    const ReportSample sample(full_drain());
    const SpeakingIn speaking(marked_language);
    const std::string summary = chapter_text(run_report(sample.run(), sample.fit(), with_sign('.')), "§Summary");
    EXPECT_TRUE(has_part(summary, "812.5 ± 7.8 Wh")) << summary;
    EXPECT_FALSE(has_part(summary, "812,5")) << summary;
    EXPECT_EQ(decimal_sign_in_use(), ',') << "the report leaves the language as it found it";
}

TEST(ReportLanguage, a_comparison_speaks_it_and_tells_no_advice_to_readers) {
    const ReportSample sample(full_drain("Alder")), other(full_drain("Birch"));
    const Comparison comparison = compare_as_tested({sample.record, other.record});
    const SpeakingIn speaking(marked_language);
    const Report report = comparison_report(comparison, {sample.run(), other.run()}, analyse_units({sample.record, other.record}), with_sign(','));
    for (const ReportBlock& block : report.blocks) {
        const auto* heading = std::get_if<ReportHeading>(&block);
        EXPECT_TRUE(!heading || heading->level > 1 || is_marked(heading->text)) << text_of(block);
        EXPECT_FALSE(has_part(text_of(block), "§: make ")) << text_of(block);
    }
    EXPECT_TRUE(is_marked(report.title)) << report.title;
}

TEST(ResultsLanguage, tables_of_results_are_the_same_json_in_any_language) {
    const ReportSample sample(full_drain("Alder")), other(full_drain("Birch"));
    const Comparison comparison = compare_as_tested({sample.record, other.record});
    const Table spoken = comparison_table(comparison);
    const std::string json = table_text(spoken, TableFormat::json), csv = table_text(spoken, TableFormat::csv);
    const SpeakingIn speaking(marked_language);
    const Table marked = comparison_table(comparison);
    EXPECT_EQ(table_text(marked, TableFormat::json), json);
    for (const TableColumn& column : marked.columns) EXPECT_TRUE(is_marked(column.title)) << column.key;
    const std::string marked_csv = table_text(marked, TableFormat::csv);
    EXPECT_EQ(marked_csv.substr(0, marked_csv.find('\n')), csv.substr(0, csv.find('\n')));
}

TEST(ResultsLanguage, analyses_are_the_same_json_in_any_language) {
    Casebook casebook;
    casebook.set_runs(shared({full_drain("Alder"), full_drain("Birch")}));
    std::vector<RunId> runs;
    for (const auto& run : casebook.runs()) runs.push_back(run->run.uuid);
    const std::string english = analyses_json(casebook, runs);
    const SpeakingIn speaking(marked_language);
    EXPECT_EQ(analyses_json(casebook, runs), english);
    EXPECT_FALSE(has_part(english, "§"));
}

} // namespace
} // namespace ullage::test
