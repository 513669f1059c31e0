// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include "document/unit_sizer.h"

#include <QTest>

#include <vector>

namespace ullage {

namespace {

class UnitSizerTest : public test::DocumentTest {
protected:
    static constexpr std::size_t few = 3, many = 60;

    void SetUp() override {
        DocumentTest::SetUp();
        QObject::connect(&sizer, &UnitSizer::sized, [this](const Sizing& sizing) { came.push_back(sizing); });
    }

    void add_units(std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) add_unit(("Unit " + std::to_string(i)).c_str());
    }

    static LoadList list(const char* name, double power_w) {
        LoadList made;
        made.name = name;
        made.appliances.push_back({});
        made.appliances.back().name = "lamp";
        made.appliances.back().power_w = power_w;
        made.appliances.back().hours_per_day = 5;
        return made;
    }

    UnitSizer sizer{document};
    std::vector<Sizing> came;
};

TEST_F(UnitSizerTest, few_units_are_sized_at_once) {
    add_units(few);
    sizer.start(list("Camp", 10), {});
    EXPECT_FALSE(sizer.isWorking());
    ASSERT_EQ(came.size(), 1U);
    EXPECT_EQ(came[0].units.size(), few);
}

TEST_F(UnitSizerTest, many_come_later_and_of_several_askings_the_last_alone) {
    add_units(many);
    for (const double power_w : {10.0, 20.0, 30.0}) sizer.start(list("Camp", power_w), {});
    EXPECT_TRUE(sizer.isWorking());
    EXPECT_TRUE(came.empty());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !sizer.isWorking(); }));
    ASSERT_EQ(came.size(), 1U);
    EXPECT_EQ(came[0].units.size(), many);
    EXPECT_DOUBLE_EQ(came[0].totals.daily_wh, 150);
}

TEST_F(UnitSizerTest, they_can_be_waited_for) {
    add_units(many);
    for (const double power_w : {10.0, 20.0}) sizer.start(list("Camp", power_w), {});
    sizer.finish([](const std::function<void()>& wait) { wait(); });
    EXPECT_FALSE(sizer.isWorking());
    ASSERT_EQ(came.size(), 1U);
    EXPECT_DOUBLE_EQ(came[0].totals.daily_wh, 100);
    QCoreApplication::processEvents();
    EXPECT_EQ(came.size(), 1U) << "what the thread left behind";
}

TEST_F(UnitSizerTest, nothing_comes_of_what_was_cancelled) {
    add_units(many);
    for (const double power_w : {10.0, 20.0}) sizer.start(list("Camp", power_w), {});
    sizer.cancel();
    EXPECT_FALSE(sizer.isWorking());
    QTest::qWait(200);
    EXPECT_TRUE(came.empty());
    sizer.start(list("Camp", 30), {});
    sizer.finish([](const std::function<void()>& wait) { wait(); });
    ASSERT_EQ(came.size(), 1U);
    EXPECT_DOUBLE_EQ(came[0].totals.daily_wh, 150);
}

} // namespace

} // namespace ullage
