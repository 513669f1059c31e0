// SPDX-License-Identifier: GPL-3.0-or-later
#include "turns_fixture.h"

#include "support/large_logbook.h"
#include "support_qt/machine_pace.h"

#include <QFile>

namespace ullage::test {

double most_ms() { return 100 * machine_pace(); }

void TurnTest::SetUpTestSuite() {
    static const TempFolder kept; // for all suites of these tests
    if (!made_.isEmpty()) return;
    made_ = QString::fromStdString((kept / "large.ullage").string());
    const auto made = make_large_logbook(made_.toStdString(), 1000, 3, 12);
    ASSERT_TRUE(made) << made.error().sentence();
}

void TurnTest::SetUp() {
    WindowTest::SetUp();
    ASSERT_TRUE(QFile::copy(made_, file("large.ullage")));
    expect_turning("open a logbook", [&] { window->openLogbook(file("large.ullage")); });
    ASSERT_TRUE(document.isOpen()) << message().toStdString();
    ASSERT_EQ(document.units().size(), 1000U);
}

void TurnTest::expect_turning(const char* what, const std::function<void()>& action) { EXPECT_LT(watch_.longest_ms(action), most_ms()) << what; }

void TurnTest::expect_turning(const char* action_name) {
    expect_turning(action_name, [&] { trigger(action_name); });
}

} // namespace ullage::test
