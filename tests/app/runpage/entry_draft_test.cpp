// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_page_fixture.h"

#include <QComboBox>
#include <QTest>

namespace ullage {

using test::FullDisk;
using test::RunPageTest;

TEST_F(RunPageTest, a_half_typed_row_is_kept_by_itself_and_comes_back_after_reopening) {
    showPage();
    type("gaugeEdit", "70");
    type("remarkEdit", "second \"reel\", für später");
    EXPECT_TRUE(QTest::qWaitFor([this] { return document.draft(run.uuid).contains(QStringLiteral("reel")); }, 5000));
    const QString path = document.path();
    window.reset();
    document.close();
    ASSERT_TRUE(document.open(path));
    showPage();
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("70"));
    EXPECT_EQ(text("remarkEdit"), QStringLiteral("second \"reel\", für später"));
}

TEST_F(RunPageTest, each_run_has_a_half_typed_row_of_its_own) {
    ullage::Run other;
    other.unit_uuid = unit.uuid;
    other = document.addRun(other).value();
    showPage();
    type("gaugeEdit", "70");
    page->showRun(other.uuid);
    EXPECT_TRUE(entry().texts().empty());
    type("gaugeEdit", "33");
    page->showRun(run.uuid);
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("70"));
    page->showRun(other.uuid);
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("33"));
}

TEST_F(RunPageTest, leaving_the_row_keeps_it_at_once) {
    showPage();
    type("gaugeEdit", "70");
    find<QWidget>("readingsView")->setFocus();
    EXPECT_TRUE(document.draft(run.uuid).contains(QStringLiteral("70")));
}

TEST_F(RunPageTest, a_recorded_row_leaves_no_draft) {
    showPage();
    type("gaugeEdit", "70");
    entry().keepDraft();
    ASSERT_FALSE(document.draft(run.uuid).isEmpty());
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(document.draft(run.uuid), QString());
}

TEST_F(RunPageTest, a_draft_with_a_mark_comes_back_unfolded) {
    EntryTexts texts;
    texts.mark = MarkKind::cut_off;
    texts.time = QStringLiteral("-10m");
    ASSERT_TRUE(document.keepDraft(run.uuid, texts.draft()));
    showPage();
    EXPECT_EQ(entry().texts(), texts);
    EXPECT_TRUE(find<QComboBox>("markCombo")->isVisible());
}

TEST_F(RunPageTest, a_draft_that_is_no_draft_gives_an_empty_row) {
    ASSERT_TRUE(document.keepDraft(run.uuid, QStringLiteral("{half a")));
    showPage();
    EXPECT_TRUE(entry().texts().empty());
}

TEST_F(RunPageTest, a_full_disk_keeps_what_was_typed_and_says_so) {
    showPage();
    type("gaugeEdit", "70");
    type("registerEdit", "4312");
    {
        const FullDisk full;
        press(Qt::Key_Return);
    }
    EXPECT_TRUE(readings().empty());
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("70"));
    EXPECT_EQ(text("registerEdit"), QStringLiteral("4312"));
    EXPECT_TRUE(entry().message().startsWith(QStringLiteral("Not recorded."))) << entry().message().toStdString();
    EXPECT_TRUE(find<QLabel>("entryMessageLabel")->isVisible());
    press(Qt::Key_Return); // there is room again
    EXPECT_EQ(readings().size(), 1U);
    EXPECT_TRUE(entry().texts().empty());
    EXPECT_EQ(entry().message(), QString());
}

TEST_F(RunPageTest, a_draft_that_cannot_be_kept_is_said) {
    showPage();
    type("gaugeEdit", "70");
    {
        const FullDisk full;
        entry().keepDraft();
    }
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("70"));
    EXPECT_FALSE(entry().message().isEmpty());
}

TEST_F(RunPageTest, recording_without_an_open_logbook_keeps_the_text) {
    showPage();
    EntryRow lone(document);
    lone.setRun(run.uuid);
    auto* gauge = lone.findChild<QLineEdit*>(QStringLiteral("gaugeEdit"));
    ASSERT_NE(gauge, nullptr);
    gauge->setText(QStringLiteral("70"));
    document.close();
    lone.record();
    EXPECT_EQ(gauge->text(), QStringLiteral("70"));
    EXPECT_FALSE(lone.message().isEmpty());
}

} // namespace ullage
