// SPDX-License-Identifier: GPL-3.0-or-later
// A comparison of many rows, which comes on the page in steps, and its tabs, of which one is in sight.
#include "comparison_fixture.h"

namespace ullage::test {

class ManyRowsTest : public ComparisonPageTest {
protected:
    void SetUp() override {
        ComparisonPageTest::SetUp();
        page->hide();
        for (int i = 0; i < 200; ++i) add_drained_unit(document, "unit " + std::to_string(100 + i), 500 + i);
        page->show();
        wait();
        choose("everyDrainButton");
        wait();
        ASSERT_GT(rows(), 203);
    }
    void choose(const char* button) { page->findChild<QPushButton*>(QLatin1String(button))->click(); }
    void wait() {
        const auto* copy = page->findChild<QPushButton*>(QStringLiteral("copyTableButton"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return copy->isEnabled(); }, 60'000));
    }
    [[nodiscard]] int rows() const { return view()->model()->rowCount(); }
};

TEST_F(ManyRowsTest, while_they_come_on_the_page_a_row_leads_to_the_run_it_shows_and_a_copy_has_all_that_is_to_come) {
    RunId asked;
    QObject::connect(page.get(), &ComparisonPage::runAsked, [&](const RunId& uuid) { asked = uuid; });
    const int drains = rows();
    const QString unit = cell(drains - 1, "unit");
    choose("onePerUnitButton");
    ASSERT_EQ(rows(), drains) << "they come in later turns";
    emit view()->activated(view()->model()->index(drains - 1, 0));
    ASSERT_NE(document.run(asked), nullptr);
    EXPECT_EQ(document.run(asked)->unit.name, unit.toStdString());
    page->copyTable();
    EXPECT_EQ(rows(), 203);
    EXPECT_EQ(QApplication::clipboard()->text().trimmed().split(QLatin1Char('\n')).size(), 204);
}

TEST_F(ManyRowsTest, a_tab_brought_to_the_front_while_a_run_goes_shows_those_that_stay) {
    const auto* errors = page->findChild<LineChart*>(QStringLiteral("errorsChart"));
    const int drains = rows();
    ASSERT_TRUE(document.withdrawRun(page->comparison().rows.front().run.uuid));
    (void)in_front<LineChart>(*page, QStringLiteral("errorsChart"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return rows() == drains - 1 && !errors->content().series.empty(); }, 60'000)) << rows();
}

TEST_F(ComparisonPageTest, a_tab_that_nobody_looks_at_is_filled_when_it_comes_to_the_front) {
    const auto* errors = page->findChild<LineChart*>(QStringLiteral("errorsChart"));
    EXPECT_TRUE(errors->content().series.empty());
    (void)in_front<LineChart>(*page, QStringLiteral("errorsChart"));
    EXPECT_EQ(errors->content().series.size(), 3U);
}

} // namespace ullage::test
