// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include "support/record_builder.h"

#include <QSignalSpy>

#include <functional>

namespace ullage {

namespace {

using MethodTest = test::DocumentTest;

TEST_F(MethodTest, what_a_logbook_states_reaches_its_analyses_can_be_undone_and_is_there_after_it_was_closed) {
    QSignalSpy changed(&document, &Document::runsChanged);
    ASSERT_TRUE(document.setMethod({{"repeatability_percent", 1.5}, {"most_of_label_percent", 120}}));
    EXPECT_EQ(changed.count(), 1) << "all that is said of runs follows the method";
    EXPECT_EQ(document.casebook().options().repeatability_percent, 1.5);
    EXPECT_EQ(document.casebook().options().repeatability_source, RepeatabilitySource::stated);
    EXPECT_NEAR(document.casebook().options().most_of_label, 1.2, 1e-12);
    document.undoStack().undo();
    EXPECT_EQ(document.casebook().options(), MeasureOptions());
    document.undoStack().redo();
    const QString path = document.path();
    document.close();
    ASSERT_TRUE(document.open(path));
    EXPECT_EQ(document.method().at("repeatability_percent"), 1.5);
    EXPECT_EQ(document.casebook().options().repeatability_percent, 1.5);
}

TEST_F(MethodTest, what_all_runs_rest_on_is_worked_out_beside_before_anybody_hears_that_it_has_changed) {
    int beside = 0;
    document.setBeside([&](const std::function<void()>& work) {
        ++beside;
        EXPECT_TRUE(document.isImporting()) << "and nobody records of his own accord meanwhile";
        EXPECT_TRUE(events.isEmpty()) << events.join(QLatin1Char(' ')).toStdString();
        work();
    });
    const auto small = document.import(test::long_drain(1, 30));
    ASSERT_TRUE(small) << small.error().sentence();
    ASSERT_TRUE(document.import(test::long_drain(2, 30)));
    EXPECT_EQ(beside, 0) << "few readings are worked out when they are asked for";

    events.clear();
    ASSERT_TRUE(document.import(test::long_drain(3, 2500)));
    EXPECT_EQ(beside, 1);
    EXPECT_EQ(document.casebook().readings_to_analyse({}, false), 0U);
    events.clear();
    ASSERT_TRUE(document.setMethod({{"most_of_label_percent", 115}}));
    EXPECT_EQ(beside, 2);
    EXPECT_EQ(document.casebook().readings_to_analyse({}, false), 0U);
    EXPECT_TRUE(events.contains(QStringLiteral("runs")));
    EXPECT_FALSE(document.isImporting());
    events.clear();
    document.undoStack().undo();
    EXPECT_EQ(beside, 3);
}

TEST_F(MethodTest, a_figure_out_of_range_or_unknown_is_refused_and_nothing_changes) {
    EXPECT_FALSE(document.setMethod({{"repeatability_percent", 50}}));
    EXPECT_FALSE(document.setMethod({{"no such figure", 1}}));
    EXPECT_TRUE(document.method().empty());
}

} // namespace

} // namespace ullage
