// SPDX-License-Identifier: GPL-3.0-or-later
// What the report of one unit holds, whole and short.
#include "formats/report/report_unit.h"
#include "report_samples.h"
#include "support/scenario.h"
#include "support/scenario_claims.h"
#include "support/scenario_specimen.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <deque>

namespace ullage::test {
namespace {

/// A unit of the sample scenario, with what its report points at.
struct SampleUnit {
    std::vector<RunRecord> records;
    UnitAnalysis analysis;
    UnitClaims claims;
    std::deque<RunAnalysis> analyses;
    ReportedUnit shown;

    explicit SampleUnit(const std::string& name) {
        const auto take = [this, &name](RunRecord record, const std::string& uuid) {
            if (record.unit.name != name) return;
            record.unit.uuid = record.run.unit_uuid = UnitId(name); // one identity for one unit, as a logbook gives
            record.run.uuid = RunId(uuid);
            records.push_back(std::move(record));
        };
        for (const ScenarioRun& run : sample_scenario()) take(run.simulated.record, run.file_name);
        for (const ScenarioRun& run : sample_specimen_runs()) take(run.simulated.record, run.file_name);
        for (const ClaimRun& run : sample_claim_runs()) take(run.record, run.file_name);
        const UnitRuns runs = addresses_of(records);
        analysis = analyse_unit(records.front().unit, fit_unit(records));
        claims = check_claims(analysis.unit, runs, analysis.fit);
        shown = {&analysis, &claims, {}, {}, {}};
        for (const RunRecord& record : records) {
            analyses.push_back(analyse_run(record));
            shown.runs.push_back({&record, &analyses.back(), std::nullopt});
        }
    }
    [[nodiscard]] Report report(const UnitReportChoice& choice = {}) const {
        return unit_report(shown, choice, {'.', RecordBuilder::start_ms, "UTC"});
    }
};

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(UnitReport, opens_with_the_answer_and_then_stands_what_it_rests_on) {
    const SampleUnit osk("Osk 1200");
    const std::vector<std::string> expected{"In short",
                                            "Claims against results",
                                            "Every drain, and what they say together",
                                            "Curves",
                                            "Can the gauge be trusted?",
                                            "Photos",
                                            "Charges and outputs",
                                            "What was measured, and with what",
                                            "What cannot be known from these readings",
                                            "Uncertainty budgets"};
    const Report report = osk.report();
    const std::vector<std::string> titles = chapters(report);
    ASSERT_GE(titles.size(), expected.size());
    EXPECT_TRUE(std::equal(expected.begin(), expected.end(), titles.begin()));
    const std::string answer = chapter_text(report, "In short");
    EXPECT_TRUE(has(answer, "It delivers ")) << answer;
    EXPECT_TRUE(has(answer, "of 1200 Wh rated")) << answer;
    EXPECT_TRUE(has(answer, "Gauge: sticks")) << answer;
    EXPECT_TRUE(has(answer, "Claims: Of 4 claims: ")) << answer;
}

TEST(UnitReport, holds_every_claim_drain_charge_output_and_round_trip) {
    const SampleUnit osk("Osk 1200");
    const Report report = osk.report();
    const std::string drains = chapter_text(report, "Every drain, and what they say together");
    for (const RunRecord& record : osk.records)
        if (record.run.kind == RunKind::drain) {
            EXPECT_TRUE(has(drains, run_title(record, analyse_run(record).energy))) << drains;
        }
    const std::string claims = chapter_text(report, "Claims against results");
    for (const ClaimCheck& check : osk.claims.checks) EXPECT_EQ(has(claims, check.title), check.claimed.has_value()) << check.title << claims;
    const std::string others = chapter_text(report, "Charges and outputs");
    EXPECT_TRUE(has(others, "Steps of load")) << others;
    EXPECT_TRUE(has(others, osk.claims.round_trip.sentence.text().substr(0, 40))) << others;
}

TEST(UnitReport, leaves_out_the_sections_that_are_not_wanted) {
    const SampleUnit pelm("Pelm 900");
    UnitReportChoice choice;
    choice.parts = {UnitReportPart::gauge};
    const std::vector<std::string> titles = chapters(pelm.report(choice));
    EXPECT_EQ(titles.at(1), "Can the gauge be trusted?");
    for (const char* absent : {"Claims against results", "Curves", "Uncertainty budgets", "Readings", "Method"})
        EXPECT_EQ(std::ranges::count(titles, absent), 0) << absent;
}

TEST(UnitReport, the_short_form_has_no_readings_budgets_or_method) {
    const SampleUnit osk("Osk 1200");
    UnitReportChoice choice;
    choice.in_short = true;
    const std::vector<std::string> titles = chapters(osk.report(choice));
    EXPECT_EQ(titles.at(0), "In short");
    EXPECT_EQ(titles.at(1), "Claims against results");
    EXPECT_EQ(titles.at(2), "Every drain");
    EXPECT_LE(titles.size(), 5U);
}

TEST(UnitReport, the_publishers_words_stand_as_they_were_typed) {
    SampleUnit osk("Osk 1200");
    osk.shown.publisher = {"The Lantern", "Light for 0.5 of the price", "We drained it for 12.9 h.", "CC BY 4.0"};
    osk.analysis.unit.serial_number = "VH-77";
    const Report report = unit_report(osk.shown, {}, {',', RecordBuilder::start_ms, "UTC"});
    EXPECT_EQ(report.title, "Light for 0.5 of the price");
    EXPECT_TRUE(has(report.subtitle, "Osk 1200: test report")) << report.subtitle;
    EXPECT_TRUE(has(report.subtitle, "serial number VH-77")) << report.subtitle;
    EXPECT_TRUE(has(text_of(report.blocks.front()), "We drained it for 12.9 h."));
    EXPECT_TRUE(has(text_of(report.blocks.back()), "CC BY 4.0"));
}

TEST(UnitReport, advice_to_the_tester_is_in_no_sentence_or_table_unless_the_report_is_the_testers_own) {
    const SampleUnit alike("Tarrow 2k B");
    ASSERT_TRUE(has(alike.analysis.fit.sentence, "make a drain")) << "else there is nothing to leave out: " << alike.analysis.fit.sentence;
    const auto words_of = [](const Report& report) {
        std::string words;
        for (const ReportBlock& block : report.blocks) {
            words += text_of(block);
            if (const auto* table = std::get_if<ReportTable>(&block)) words += table_text(*table->whole, TableFormat::csv);
        }
        return words;
    };
    ReportOptions options{'.', RecordBuilder::start_ms, "UTC"};
    EXPECT_FALSE(has(words_of(unit_report(alike.shown, {}, options)), "make a drain"));
    options.own_affairs = true;
    EXPECT_TRUE(has(words_of(unit_report(alike.shown, {}, options)), "make a drain"));
}

TEST(UnitReport, a_unit_without_a_drain_says_so) {
    SampleUnit osk("Osk 1200");
    std::erase_if(osk.shown.runs, [](const ReportedRun& run) { return run.record->run.kind == RunKind::drain; });
    EXPECT_TRUE(has(chapter_text(osk.report(), "In short"), "No drain of this unit has been noted"));
}

TEST(UnitReport, a_photo_is_captioned_by_the_reading_that_it_shows) {
    const SampleUnit osk("Osk 1200");
    const RunRecord& record = osk.records.front();
    Photo photo;
    photo.file_name = "display.jpg";
    EXPECT_TRUE(photo_caption(record, osk.analyses.front(), photo).ends_with(": display.jpg"));
    photo.reading_uuid = record.readings.front().uuid;
    const std::string caption = photo_caption(record, osk.analyses.front(), photo);
    EXPECT_TRUE(has(caption, "gauge 100 %, register ")) << caption;
}

TEST(UnitReport, each_section_is_found_by_its_key) {
    for (const UnitReportPart part : all_unit_report_parts) EXPECT_EQ(unit_report_part_from(unit_report_part_key(part)), part);
    EXPECT_FALSE(unit_report_part_from("weather"));
}

} // namespace
} // namespace ullage::test
