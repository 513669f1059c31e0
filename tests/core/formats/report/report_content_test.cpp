// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"
#include "formats/report/report_numbers.h"
#include "formats/text/safety_words.h"
#include "report_samples.h"

#include <gtest/gtest.h>

#include <cstdio>

namespace ullage::test {
namespace {

const ReportOptions options{'.', RecordBuilder::start_ms, "UTC"};

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(RunReport, the_chapters_stand_in_order_with_the_summary_first) {
    const ReportSample sample(full_drain());
    const Report report = run_report(sample.run(), sample.fit(), options);
    EXPECT_EQ(chapters(report),
              (std::vector<std::string>{"Summary", "What was measured, and with what", "Results", "What cannot be known from these readings",
                                        "Charts", "Findings", "Uncertainty budget", "Method and sources", "Readings", "Amendments of readings",
                                        "Cautions", "About this report"}));
    ASSERT_FALSE(report.blocks.empty());
    ASSERT_TRUE(std::holds_alternative<ReportHeading>(report.blocks.front()));
    EXPECT_EQ(std::get<ReportHeading>(report.blocks.front()).text, "Summary");
}

TEST(RunReport, the_summary_says_what_was_delivered_of_what_was_rated) {
    const ReportSample sample(full_drain());
    const std::string summary = chapter_text(run_report(sample.run(), sample.fit(), options), "Summary");
    // 812.5 Wh of 1000 Wh with a ±1 % meter: half-width 0.95 of 8.1 Wh, so 812.5 ± 7.8 Wh.
    EXPECT_TRUE(holds(summary, "Specimen delivered 812.5 ± 7.8 Wh (rated 1000 Wh) from full to its cut-off")) << summary;
    EXPECT_TRUE(holds(summary, "That is 81.25 ± 0.78 % of its label (measured)")) << summary;
    EXPECT_TRUE(holds(summary, "one specimen, not a safety certification")) << summary;
}

TEST(RunReport, every_result_that_is_not_measured_stands_with_its_reason) {
    RunRecord record = full_drain();
    record.unit.rated_energy_wh.reset();
    record.meter->limit_percent.reset();
    const ReportSample sample(record);
    const std::string unknown = chapter_text(run_report(sample.run(), sample.fit(), options), "What cannot be known from these readings");
    std::size_t lacking = 0;
    for (const Quantity& quantity : sample.analysis.quantities) {
        if (quantity.kind == Kind::measured && quantity.lower) continue;
        if (quantity.kind == Kind::measured && quantity.reason.empty()) continue;
        ++lacking;
        ASSERT_FALSE(quantity.reason.empty()) << quantity.key;
        EXPECT_TRUE(holds(unknown, quantity.reason)) << quantity.key << "\n" << unknown;
    }
    EXPECT_GE(lacking, 5u);
}

TEST(RunReport, meters_and_claims_are_named_as_stated_or_not_stated) {
    RunRecord record = full_drain();
    record.meter->limit_percent = 0.5;
    const ReportSample sample(record);
    const std::string with = chapter_text(run_report(sample.run(), sample.fit(), options), "What was measured, and with what");
    EXPECT_TRUE(holds(with, "error limit | ± 0.5 % of the energy")) << with;
    record.meter.reset();
    record.unit.rated_energy_wh.reset();
    const ReportSample bare(record);
    const std::string without = chapter_text(run_report(bare.run(), bare.fit(), options), "What was measured, and with what");
    EXPECT_TRUE(holds(without, "No meter is stated")) << without;
    EXPECT_TRUE(holds(without, "rated energy (claim) | not stated")) << without;
}

TEST(RunReport, budget_shares_add_up_to_all_of_it) {
    const ReportSample sample(full_drain());
    const Report report = run_report(sample.run(), sample.fit(), options);
    double shares = 0;
    for (const ReportBlock& block : report.blocks) {
        const auto* table = std::get_if<ReportTable>(&block);
        if (!table || table->table.heads.back() != "share (%)") continue;
        for (const auto& row : table->table.rows) shares += std::stod(row.back().value);
    }
    EXPECT_NEAR(shares, 100, 0.1 * 2); // each is rounded to a tenth
}

TEST(RunReport, amendments_and_withdrawals_are_listed_with_what_when_and_why) {
    ReportSample sample(full_drain());
    Reading& reading = sample.record.readings[3];
    ReadingValues typed = reading.values;
    typed.gauge_percent = 17;
    typed.remark = "by lamp light";
    sample.histories = {{reading.uuid,
                         {{1, typed, false, RecordBuilder::start_ms + 3 * 3'600'000, {}},
                          {2, reading.values, false, RecordBuilder::start_ms + 4 * 3'600'000, "digits changed places"},
                          {3, reading.values, true, RecordBuilder::start_ms + 5 * 3'600'000, ""}}}};
    const std::string text = chapter_text(run_report(sample.run(), sample.fit(), options), "Amendments of readings");
    EXPECT_TRUE(holds(text, "gauge 17 % → 70 %")) << text;
    EXPECT_TRUE(holds(text, "remark changed")) << text;
    EXPECT_FALSE(holds(text, "by lamp light")) << "what the tester wrote for himself stays home";
    ReportOptions with_all = options;
    with_all.own_affairs = true;
    EXPECT_TRUE(holds(chapter_text(run_report(sample.run(), sample.fit(), with_all), "Amendments of readings"), "remark “by lamp light” → none"));
    EXPECT_TRUE(holds(text, "2027-05-11T06:00Z")) << text;
    EXPECT_TRUE(holds(text, "digits changed places")) << text;
    EXPECT_TRUE(holds(text, "withdrawn | 2027-05-11T07:00Z | none given")) << text;
}

TEST(RunReport, a_source_without_history_is_not_called_unamended) {
    ReportSample sample(full_drain());
    const auto amendments = [&sample] { return chapter_text(run_report(sample.run(), sample.fit(), options), "Amendments of readings"); };
    EXPECT_TRUE(holds(amendments(), "carry no history")) << amendments();
    sample.histories.emplace();
    EXPECT_TRUE(holds(amendments(), "No reading was amended or withdrawn")) << amendments();
}

TEST(RunReport, cautions_and_the_programs_version_stand_in_it) {
    const ReportSample sample(full_drain());
    const Report report = run_report(sample.run(), sample.fit(), options);
    const std::string cautions = chapter_text(report, "Cautions");
    for (const Message& words : safety_words()) EXPECT_TRUE(holds(cautions, words)) << words;
    EXPECT_TRUE(holds(cautions, say(specimen_words)));
    EXPECT_TRUE(holds(chapter_text(report, "About this report"), std::string(program_version())));
    EXPECT_TRUE(holds(report.made, "11 May 2027")) << report.made;
}

TEST(RunReport, a_long_trace_is_thinned_and_the_report_says_so) {
    const ReportSample sample(full_drain("Specimen", 0.01)); // 1001 readings
    const Report report = run_report(sample.run(), sample.fit(), options);
    EXPECT_TRUE(holds(chapter_text(report, "Readings"), "500 of 1001 readings"));
    for (const ReportBlock& block : report.blocks)
        if (const auto* table = std::get_if<ReportTable>(&block)) {
            EXPECT_LE(table->table.rows.size(), most_report_readings);
        }
}

TEST(RunReport, a_thinned_table_of_readings_keeps_every_row_of_which_there_is_something_to_tell) {
    RunRecord record = full_drain("Specimen", 0.01); // 1001 readings
    record.readings[333].values.mark = MarkKind::load_changed;
    record.readings[501].values.remark = "fan came on";
    record.readings[502].version = 2;
    record.readings[601].values.register_wh = 99'999; // a typing error, which the register leaves out
    record.readings[703].values.gauge_percent = 99;   // a rebound, which is a finding
    for (const std::size_t r : {777, 778}) record.readings[r].values.mark = r == 777 ? MarkKind::output_tripped : MarkKind::output_reset;
    const ReportSample sample(record);
    ASSERT_FALSE(sample.analysis.energy.track.register_corrections.empty());
    ASSERT_FALSE(sample.analysis.gauge.findings.empty());
    const Report report = run_report(sample.run(), sample.fit(), options);
    const std::string readings = chapter_text(report, "Readings");
    for (const std::size_t r : {0, 333, 501, 502, 601, 703, 777, 778, 1000}) {
        const LocalTime at = to_local(record.readings[r].values.time_ms, "UTC");
        char clock[16];
        std::snprintf(clock, sizeof clock, at.second ? "%02d:%02d:%02d" : "%02d:%02d", at.hour, at.minute, at.second);
        EXPECT_TRUE(holds(readings, std::string(clock) + " |")) << r << " at " << clock;
    }
    EXPECT_TRUE(holds(readings, "500 of 1001 readings. 501 in between")) << readings.substr(readings.size() - 300);
}

TEST(RunReport, a_run_without_readings_is_reported_without_figures) {
    RunRecord record = full_drain();
    record.readings.clear();
    const ReportSample sample(record);
    const Report report = run_report(sample.run(), sample.fit(), options);
    EXPECT_TRUE(holds(chapter_text(report, "Summary"), "is not known")) << chapter_text(report, "Summary");
    EXPECT_TRUE(holds(chapter_text(report, "Readings"), "No readings yet"));
}

TEST(RunReport, every_kind_of_run_and_end_can_be_reported) {
    for (const RunKind kind : all_run_kinds)
        for (const RunEnd end : all_run_ends) {
            RunRecord record = full_drain();
            record.run.kind = kind;
            record.run.end = end;
            const ReportSample sample(record);
            const std::string summary = chapter_text(run_report(sample.run(), sample.fit(), options), "Summary");
            EXPECT_TRUE(holds(summary, "Specimen")) << run_kind_text(kind) << summary;
            EXPECT_FALSE(holds(summary, "nan")) << summary;
        }
}

TEST(RunReport, times_show_their_offset_where_clocks_were_changed_during_the_run) {
    RunRecord record = full_drain();
    record.run.time_zone = "Europe/Vienna";
    const ReportSample plain(record);
    const std::string without = chapter_text(run_report(plain.run(), plain.fit(), options), "Readings");
    EXPECT_TRUE(holds(without, "2027-05-11 04:00 | 100")) << without;
    EXPECT_TRUE(holds(without, "Europe/Vienna (UTC+02:00)")) << without;
    // Summer time ends on 31 October 2027 at 01:00 UTC (EU Directive 2000/84/EC, article 3).
    for (Reading& reading : record.readings) reading.values.time_ms += 1'824'933'600'000 - RecordBuilder::start_ms;
    const ReportSample changing(record);
    const std::string with = chapter_text(run_report(changing.run(), changing.fit(), options), "Readings");
    EXPECT_TRUE(holds(with, "UTC+02:00 |")) << with;
    EXPECT_TRUE(holds(with, "UTC+01:00 |")) << with;
}

TEST(ComparisonReport, stands_in_the_same_order_and_shows_each_row) {
    const ReportSample first(full_drain("Alder")), second(full_drain("Birch"));
    const std::vector<RunRecord> records{first.record, second.record};
    const Comparison comparison = compare_as_tested(records);
    const Report report = comparison_report(comparison, {first.run(), second.run()}, analyse_units(records), options);
    const std::vector<std::string> titles = chapters(report);
    ASSERT_FALSE(titles.empty());
    EXPECT_EQ(titles.front(), "Summary");
    for (const char* chapter :
         {"Summary", "Differences between units", "What was measured, and with what", "Findings", "Uncertainty budgets", "Readings"})
        for (const char* unit : {"Alder", "Birch"}) EXPECT_TRUE(holds(chapter_text(report, chapter), unit)) << chapter << ' ' << unit;
    // Both were drained at one load, so nothing tells their no-load draw: the reason stands for each.
    const std::string unknown = chapter_text(report, "What cannot be known from these readings");
    EXPECT_TRUE(holds(unknown, "Alder, all drains | no-load draw")) << unknown;
    EXPECT_TRUE(holds(unknown, "Birch, all drains | no-load draw")) << unknown;
}

TEST(ComparisonReport, the_columns_for_readers_are_in_its_tables) {
    const ReportSample sample(full_drain("Alder"));
    const Comparison comparison = compare_as_tested({sample.record});
    const Report report = comparison_report(comparison, {sample.run()}, analyse_units({sample.record}), options);
    const std::string text = [&report] {
        std::string heads;
        for (const ReportBlock& block : report.blocks)
            if (const auto* table = std::get_if<ReportTable>(&block))
                for (const std::string& head : table->table.heads) heads += head + '\n';
        return heads;
    }();
    for (const char* head : {"usable fraction (%)", "rated energy (Wh)", "delivered energy (Wh)", "mean load (W)", "duration (h)", "no-load draw (W)",
                             "gauge", "price per usable kWh (price/kWh)"})
        EXPECT_TRUE(holds(text, std::string(head) + '\n')) << head << '\n' << text;
}

TEST(ReportNumbers, take_a_decimal_comma_but_clauses_versions_and_names_do_not) {
    const NumberForm form{',', {"Osk 1.2"}};
    EXPECT_EQ(form.apply("812.5 ± 7.8 Wh"), "812,5 ± 7,8 Wh");
    EXPECT_EQ(form.apply("Osk 1.2 delivered 0.5 Wh."), "Osk 1.2 delivered 0,5 Wh.");
    EXPECT_EQ(form.apply("JCGM 100:2008, 7.2.6"), "JCGM 100:2008, 7.2.6");
    EXPECT_EQ(form.apply("Ullage 0.1.0, v1.5, 2.5k"), "Ullage 0.1.0, v1.5, 2.5k");
    EXPECT_EQ(form.apply("It ends with 12.5."), "It ends with 12,5.");
    EXPECT_EQ(form.apply("-3.1 to -0.5"), "\u22123,1 to \u22120,5");
    EXPECT_EQ(NumberForm{}.apply("IEC 61683-1, 0.5"), "IEC 61683-1, 0.5");
}

TEST(ReportNumbers, leave_the_longest_name_that_stands_there_alone) {
    const NumberForm form{',', {"Osk", "Osk 1.2", "Osk 1.25 b", "Osk 1.3 lent", "2.5 W lamp", ""}};
    EXPECT_EQ(form.apply("Osk 1.25 b and Osk 1.25 c took 1.5 Wh."), "Osk 1.25 b and Osk 1.25 c took 1,5 Wh.");
    EXPECT_EQ(form.apply("Osk 1.3 took 1.5 Wh."), "Osk 1,3 took 1,5 Wh.");
    EXPECT_EQ(form.apply("a 2.5 W lamp of 2.5 W"), "a 2.5 W lamp of 2,5 W");
}

TEST(ReportNumbers, a_comma_reader_finds_no_decimal_point_in_tables_and_sentences) {
    ReportSample sample(full_drain());
    ReportOptions comma = options;
    comma.decimal_sign = ',';
    const Report report = run_report(sample.run(), sample.fit(), comma);
    for (const char* chapter : {"Summary", "Results", "Readings", "Uncertainty budget", "What cannot be known from these readings"}) {
        const std::string text = chapter_text(report, chapter);
        for (std::size_t at = 1; at + 1 < text.size(); ++at)
            EXPECT_FALSE(text[at] == '.' && std::isdigit(text[at - 1]) && std::isdigit(text[at + 1])) << chapter << ": " << text.substr(at - 1, 40);
    }
    EXPECT_TRUE(holds(chapter_text(report, "Summary"), "812,5 ± 7,8 Wh"));
}

} // namespace
} // namespace ullage::test
