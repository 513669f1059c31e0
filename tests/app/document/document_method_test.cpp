// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include <QSignalSpy>

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

TEST_F(MethodTest, a_figure_out_of_range_or_unknown_is_refused_and_nothing_changes) {
    EXPECT_FALSE(document.setMethod({{"repeatability_percent", 50}}));
    EXPECT_FALSE(document.setMethod({{"no such figure", 1}}));
    EXPECT_TRUE(document.method().empty());
}

} // namespace

} // namespace ullage
