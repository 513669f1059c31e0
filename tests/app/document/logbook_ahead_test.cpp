// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook that is opened while the window is made.
#include "document/logbook_ahead.h"

#include "document/sample_logbook.h"
#include "document_fixture.h"

#include <algorithm>
#include <atomic>
#include <functional>
#include <optional>
#include <vector>

namespace ullage {
namespace {

class LogbookAheadTest : public test::DocumentTest {
protected:
    void SetUp() override { ASSERT_TRUE(make_sample_logbook(file("sample.ullage"), clock)); }

    [[nodiscard]] QString sample() const { return file("sample.ullage"); }
};

const std::function<bool()> to_the_end = [] { return true; };

TEST_F(LogbookAheadTest, what_the_first_page_asks_for_is_known_when_the_document_takes_the_logbook_over) {
    Document by_hand(clock);
    ASSERT_TRUE(by_hand.open(sample()));
    std::vector<UnitId> units;
    for (const Unit& unit : by_hand.units()) units.push_back(unit.uuid);
    ASSERT_GT(units.size(), 1U);
    const RunId run = by_hand.runs(units.back()).front()->run.uuid;
    const std::optional<double> draw_w = by_hand.unitFit(units.back()).no_load_draw_w.value,
                                delivered_wh = by_hand.analysis(run).energy.delivered_wh.value;
    by_hand.close();
    for (const std::string& shown : {std::string(), std::string("a page that is gone"), units.back().text(), run.text()}) {
        SCOPED_TRACE(shown);
        auto opened = open_judged(sample(), clock, shown, to_the_end);
        ASSERT_TRUE(opened) << opened.error().sentence();
        Document taking(clock);
        taking.adopt(std::move(opened).value());
        const bool of_one = shown == units.back().text() || shown == run.text();
        EXPECT_EQ(taking.readingsToAnalyse(of_one ? std::vector{units.back()} : units, of_one), 0U);
        EXPECT_EQ(taking.unitFit(units.back()).no_load_draw_w.value, draw_w);
        EXPECT_EQ(taking.analysis(run).energy.delivered_wh.value, delivered_wh);
    }
}

TEST_F(LogbookAheadTest, whoever_waits_gets_the_logbook_with_what_is_known_by_then) {
    const auto opened = open_judged(sample(), clock, {}, [] { return false; });
    ASSERT_TRUE(opened) << opened.error().sentence();
    const auto& content = opened.value().content;
    EXPECT_GT(opened.value().judged->readings_to_analyse({content.units.front().uuid}, false), 0U);
}

TEST_F(LogbookAheadTest, it_gives_the_logbook_or_says_why_not) {
    const std::atomic<bool> goes_on{false};
    {
        LogbookAhead ahead(sample(), clock);
        const auto opened = ahead.take(goes_on);
        ASSERT_TRUE(opened) << opened.error().sentence();
        EXPECT_FALSE(opened.value().content.runs.empty());
        EXPECT_TRUE(opened.value().book.mode() == OpenMode::record);
    }
    LogbookAhead none(file("none.ullage"), clock);
    const auto missing = none.take(goes_on);
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().failure, Failure::not_found);
}

TEST_F(LogbookAheadTest, one_that_nobody_takes_leaves_the_file_free) {
    { const LogbookAhead given_up(sample(), clock); }
    const std::atomic<bool> goes_on{false};
    LogbookAhead again(sample(), clock);
    const auto opened = again.take(goes_on);
    ASSERT_TRUE(opened) << opened.error().sentence();
    EXPECT_TRUE(opened.value().book.mode() == OpenMode::record);
}

} // namespace
} // namespace ullage
