// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison_fixture.h"

#include "pages/comparison/comparing_bar.h"

namespace ullage::test {

namespace {

class OtherLogbooksTest : public ComparisonPageTest {
protected:
    void SetUp() override {
        ComparisonPageTest::SetUp();
        Document other(clock);
        ASSERT_TRUE(other.create(file("shed.ullage")));
        add_drained_unit(other, "Wennet 500", 500);
        QObject::connect(page.get(), &ComparisonPage::notice, [this](const QString& words) { notices << words; });
        QObject::connect(page.get(), &ComparisonPage::error, [this](const QString& words) { errors << words; });
        QObject::connect(page.get(), &ComparisonPage::otherLogbooksChosen, [this](const QStringList& paths) { chosen = paths; });
    }

    [[nodiscard]] QPushButton* chip() const {
        for (auto* button : page->findChildren<QPushButton*>(QStringLiteral("otherLogbookButton")))
            if (button->isVisible()) return button;
        return nullptr;
    }
    [[nodiscard]] ComparingBar* bar() const { return page->findChild<ComparingBar*>(); }

    QStringList notices, errors, chosen;
};

TEST_F(OtherLogbooksTest, its_units_take_part_in_table_vessels_bars_pairs_and_overlays_until_they_are_left_out) {
    ASSERT_EQ(view()->model()->rowCount(), 3);
    page->addLogbooks({file("shed.ullage")});
    EXPECT_TRUE(errors.isEmpty()) << errors.join(QLatin1Char(' ')).toStdString();
    ASSERT_EQ(view()->model()->rowCount(), 4);
    EXPECT_EQ(cell(3, "unit"), QStringLiteral("Wennet 500"));
    EXPECT_EQ(cell(3, "logbook"), QStringLiteral("shed.ullage"));
    EXPECT_EQ(cell(0, "logbook"), QStringLiteral("bench.ullage"));
    EXPECT_EQ(page->findChild<VesselRow*>()->content().columns.size(), 4U);
    EXPECT_EQ(page->findChild<BarChart*>()->content().bars.size(), 4U);
    EXPECT_EQ(in_front<QTableView>(*page, QStringLiteral("pairsView"))->model()->rowCount(), 4);
    const auto& errors = in_front<LineChart>(*page, QStringLiteral("errorsChart"))->content();
    EXPECT_TRUE(std::ranges::any_of(errors.series, [](const ChartSeries& series) { return series.name == QLatin1String("Wennet 500"); }));
    EXPECT_EQ(chosen, QStringList{file("shed.ullage")});
    const QByteArray csv = save(0, "both.csv");
    EXPECT_TRUE(csv.contains("Wennet 500") && csv.contains("shed.ullage"));

    ASSERT_NE(chip(), nullptr);
    EXPECT_TRUE(chip()->text().startsWith(QLatin1String("shed.ullage")));
    QTest::mouseClick(chip(), Qt::LeftButton);
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(view()->model()->rowCount(), 3);
    EXPECT_EQ(chip(), nullptr);
    EXPECT_TRUE(chosen.isEmpty());
}

TEST_F(OtherLogbooksTest, a_row_of_another_logbook_says_where_its_run_is) {
    page->addLogbooks({file("shed.ullage")});
    RunId asked;
    QObject::connect(page.get(), &ComparisonPage::runAsked, [&](const RunId& uuid) { asked = uuid; });
    emit view()->activated(view()->model()->index(3, 0));
    EXPECT_TRUE(asked.empty());
    ASSERT_EQ(notices.size(), 1);
    EXPECT_TRUE(notices[0].contains(QLatin1String("shed.ullage")));
}

TEST_F(OtherLogbooksTest, one_remembered_is_read_when_the_page_comes_in_sight_and_one_gone_is_told) {
    page->hide();
    page->setOtherLogbooks({file("shed.ullage"), file("gone.ullage")});
    EXPECT_TRUE(page->comparer().logbooks().empty()) << "nothing is read for a page that nobody looks at";
    page->show();
    EXPECT_TRUE(QTest::qWaitFor([this] { return view()->model()->rowCount() == 4; }));
    ASSERT_EQ(errors.size(), 1);
    EXPECT_TRUE(errors[0].contains(QLatin1String("gone.ullage")));
    EXPECT_TRUE(chosen.isEmpty()) << "nobody has chosen anything";
    document.close();
    EXPECT_TRUE(page->comparer().logbooks().empty());
}

TEST_F(OtherLogbooksTest, a_page_out_of_sight_waits_with_comparing) {
    page->hide();
    add_drained_unit(document, "Alder 300", 300);
    EXPECT_EQ(view()->model()->rowCount(), 3);
    page->show();
    EXPECT_EQ(view()->model()->rowCount(), 4);
}

TEST_F(OtherLogbooksTest, many_units_are_compared_with_progress_while_the_window_goes_on) {
    page->hide();
    for (int i = 0; i < 45; ++i) add_drained_unit(document, "unit " + std::to_string(100 + i), 500 + i);
    page->show();
    EXPECT_TRUE(bar()->isVisible());
    EXPECT_FALSE(page->findChild<QPushButton*>(QStringLiteral("exportButton"))->isEnabled());
    page->exportComparison();
    ASSERT_EQ(notices.size(), 1) << "half a comparison is not exported";
    ASSERT_TRUE(QTest::qWaitFor([this] { return !bar()->isVisible(); }));
    EXPECT_EQ(view()->model()->rowCount(), 48);
    EXPECT_TRUE(page->findChild<QPushButton*>(QStringLiteral("exportButton"))->isEnabled());
    // A matrix of the best forty, which says so.
    EXPECT_EQ(in_front<QTableView>(*page, QStringLiteral("pairsView"))->model()->rowCount(), 40);
    EXPECT_TRUE(in_front<QLabel>(*page, QStringLiteral("pairsLabel"))->text().contains(QLatin1String("48")));
}

TEST_F(OtherLogbooksTest, comparing_can_be_stopped_and_taken_up_again) {
    page->hide();
    for (int i = 0; i < 120; ++i) add_drained_unit(document, "unit " + std::to_string(100 + i), 500 + i);
    page->show();
    // As a click that comes before the first threads have ended.
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("cancelComparingButton")), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !page->comparer().isWorking(); }));
    if (page->comparer().waitingUnits(page->rows()) > 40) {
        EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparingLabel"))->text().startsWith(QLatin1String("Stopped")));
        EXPECT_EQ(view()->model()->rowCount(), 3) << "what stood there stays";
        QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("resumeComparingButton")), Qt::LeftButton);
    }
    ASSERT_TRUE(QTest::qWaitFor([this] { return !bar()->isVisible(); }));
    EXPECT_EQ(view()->model()->rowCount(), 123);
}

} // namespace

} // namespace ullage::test
