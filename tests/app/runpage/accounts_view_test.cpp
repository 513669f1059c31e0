// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/accounts_view.h"

#include "app/runpage/run_page_fixture.h"

#include <QFrame>
#include <QTest>

namespace ullage::test {
namespace {

using AccountsTest = RunPageTest;

TEST_F(AccountsTest, a_running_drain_is_told_twice_with_what_decides) {
    recordSample(3);
    showPage();
    auto* view = find<AccountsView>("accountsView");
    ASSERT_TRUE(view->isVisible());
    EXPECT_EQ(find<QLabel>("rightAccountTitle")->text(), QStringLiteral("If the gauge is right"));
    EXPECT_EQ(find<QLabel>("wrongAccountTitle")->text(), QStringLiteral("If the gauge is wrong"));
    EXPECT_TRUE(find<QLabel>("rightAccount1Value")->text().endsWith(QStringLiteral("%")));
    EXPECT_TRUE(find<QLabel>("rightAccount3Value")->text().endsWith(QStringLiteral("h"))) << utf8_of(find<QLabel>("rightAccount3Value")->text());
    EXPECT_TRUE(find<QLabel>("accountsDecideLabel")->text().startsWith(QStringLiteral("What decides: ")));
}

TEST_F(AccountsTest, what_the_readings_rule_out_is_struck_with_its_evidence) {
    recordSample();
    showPage();
    EXPECT_TRUE(find<QLabel>("rightAccount1Value")->font().strikeOut());
    EXPECT_TRUE(find<QLabel>("rightAccountSentence")->text().startsWith(QStringLiteral("Ruled out: ")));
    EXPECT_FALSE(find<QLabel>("wrongAccount1Value")->font().strikeOut());
}

TEST_F(AccountsTest, one_reading_tells_no_account_and_leaves_no_empty_panels) {
    recordSample(1);
    showPage();
    EXPECT_FALSE(find<AccountsView>("accountsView")->isVisible());
}

TEST_F(AccountsTest, all_of_both_accounts_is_in_sight_where_they_stand_under_the_figures) {
    recordSample(3);
    showPage();
    auto* view = find<AccountsView>("accountsView");
    for (const char* name : {"rightAccountSentence", "wrongAccountSentence", "accountsDecideLabel"}) {
        const auto* label = find<QLabel>(name);
        const QRect place(label->mapTo(view, QPoint(0, 0)), label->size());
        EXPECT_TRUE(view->rect().contains(place)) << name;
        EXPECT_GE(label->height(), label->heightForWidth(label->width())) << name;
    }
}

} // namespace
} // namespace ullage::test
