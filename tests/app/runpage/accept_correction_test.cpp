// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/findings_view.h"
#include "run_page_fixture.h"

#include <QPushButton>
#include <QTest>

namespace ullage {

using test::RunPageTest;

namespace {

class AcceptRegisterCorrectionTest : public RunPageTest {
protected:
    /// Five readings at 64 W of which the fourth has a wrong register.
    void SetUp() override {
        RunPageTest::SetUp();
        const double registers[] = {4312, 4376, 4440, 454, 4568};
        for (int i = 0; i < 5; ++i) {
            ReadingValues values;
            values.time_ms = clock.now_ms() + i * 3'600'000LL;
            values.gauge_percent = 100 - 6 * i;
            values.register_wh = registers[i];
            ASSERT_TRUE(document.record(run.uuid, values));
        }
        showPage();
    }
};

TEST_F(AcceptRegisterCorrectionTest, accepting_a_typing_error_takes_the_value_out_with_its_reason_and_undo_brings_it_back) {
    auto* button = find<QPushButton>("acceptButton");
    ASSERT_NE(button, nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !record().readings[3].values.register_wh.has_value(); }));
    EXPECT_EQ(record().readings[3].values.gauge_percent, 82);
    const auto history = document.history(record().readings[3].uuid);
    ASSERT_TRUE(history.ok());
    EXPECT_EQ(history.value().size(), 2u);
    EXPECT_NE(history.value().back().reason.find("typing error"), std::string::npos);
    EXPECT_TRUE(document.analysis(run.uuid).energy.track.register_corrections.empty());
    EXPECT_EQ(page->findChild<QPushButton*>(QStringLiteral("acceptButton")), nullptr);

    document.undoStack().undo();
    EXPECT_EQ(record().readings[3].values.register_wh, 454);
}

TEST_F(AcceptRegisterCorrectionTest, a_full_disk_leaves_the_reading_and_says_so) {
    auto* button = find<QPushButton>("acceptButton");
    ASSERT_NE(button, nullptr);
    {
        const test::FullDisk full;
        QTest::mouseClick(button, Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return errors.size() == 1; }));
        EXPECT_FALSE(errors.front().isEmpty());
    }
    EXPECT_EQ(record().readings[3].values.register_wh, 454);
}

} // namespace
} // namespace ullage
