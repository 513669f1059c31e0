// SPDX-License-Identifier: GPL-3.0-or-later
// Reads every log of tests/corpus/traces and holds the outcome against the .expect file beside it, which was written by hand. Lines of those:
// what the user says (date-order, times, decimal, map, zone, start, gap-limit), then `question`, `error`, or the counts and the first and last
// sample. Every reason for which a row was left out or doubted has to be named.
#include "core/trace/expected_log.h"
#include "trace/trace_import.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

std::string sample_text(const TraceSample& sample) {
    std::string text = format_iso8601(sample.time_ms, "UTC");
    const auto add = [&text](const char* name, const std::optional<double>& value) {
        if (value) text += std::string(" ") + name + " " + exact_text(*value);
    };
    add("register", sample.register_wh);
    add("power", sample.power_w);
    add("voltage", sample.voltage_v);
    add("current", sample.current_a);
    add("gauge", sample.gauge_percent);
    add("output", sample.output_w);
    return text;
}

void expect_rows(const ExpectedLog& expected, const TracePreview& preview) {
    const Result<TraceTally> tally = check_trace(expected.path, preview.detection.layout, expected.options);
    ASSERT_TRUE(tally.ok()) << tally.error().sentence();
    EXPECT_EQ(std::to_string(tally.value().rows), expected.value("rows"));
    EXPECT_EQ(std::to_string(tally.value().taken), expected.value("taken"));
    std::vector<std::string> odd;
    for (std::size_t t = 0; t < row_troubles; ++t) {
        const auto trouble = static_cast<RowTrouble>(t);
        if (tally.value().count(trouble) == 0 || trouble == RowTrouble::gap) continue;
        odd.push_back(std::string(leaves_out(trouble) ? "left out: " : "doubt: ") + trouble_key(trouble) + " " +
                      std::to_string(tally.value().count(trouble)));
        EXPECT_TRUE(std::ranges::any_of(tally.value().skipped_rows, [&](const SkippedRow& row) { return row.trouble == trouble && row.line > 0; }));
    }
    std::vector<std::string> named = expected.odd();
    std::ranges::sort(odd);
    std::ranges::sort(named);
    EXPECT_EQ(odd, named);
    EXPECT_EQ(std::to_string(tally.value().count(RowTrouble::gap)), expected.value("gaps", "0"));
    ASSERT_FALSE(preview.samples.empty());
    EXPECT_EQ(sample_text(preview.samples.front()), expected.value("first"));
    EXPECT_EQ(sample_text(preview.samples.back()), expected.value("last"));
}

class Corpus : public testing::TestWithParam<std::string> {};

TEST_P(Corpus, is_read_as_its_expectation_says) {
    const ExpectedLog expected = ExpectedLog::of(GetParam());
    const Result<TracePreview> preview = preview_trace(expected.path, expected.answers, {}, expected.options);
    if (expected.has("error")) {
        ASSERT_FALSE(preview.ok());
        EXPECT_NE(preview.error().sentence().find(expected.value("error")), std::string::npos) << preview.error().sentence();
        return;
    }
    ASSERT_TRUE(preview.ok()) << preview.error().sentence();
    const TraceDetection& detection = preview.value().detection;
    if (expected.has("encoding")) {
        EXPECT_EQ(encoding_text(detection.layout.encoding), expected.value("encoding"));
    }
    if (expected.has("question")) {
        ASSERT_EQ(detection.questions.size(), 1u) << say_layout(detection);
        EXPECT_EQ(question_key(detection.questions[0].about), expected.value("question"));
        EXPECT_TRUE(open_questions(detection));
        return;
    }
    for (const LayoutQuestion& question : detection.questions) ADD_FAILURE() << question.words;
    expect_rows(expected, preview.value());
}

INSTANTIATE_TEST_SUITE_P(Logs, Corpus, testing::ValuesIn(expected_logs()), [](const auto& about) { return about.param; });

TEST(CorpusOfLogs, has_at_least_25_logs) { EXPECT_GE(expected_logs().size(), 25u); }

} // namespace
} // namespace ullage::test
