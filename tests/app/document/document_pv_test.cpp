// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

namespace ullage {

using test::DocumentTest;

TEST_F(DocumentTest, a_PV_sheet_is_added_edited_and_withdrawn_as_steps_that_can_be_undone) {
    PvSheet sheet;
    sheet.name = "roof";
    sheet.voc_v = 24.3;
    const auto added = document.addPvSheet(sheet);
    ASSERT_TRUE(added);
    EXPECT_TRUE(document.undoStack().undoText().contains("roof"));
    PvSheet edited = added.value();
    edited.series = 2;
    ASSERT_TRUE(document.updatePvSheet(edited));
    ASSERT_TRUE(document.updatePvSheet(edited)) << "the same again is no step";
    EXPECT_EQ(document.undoStack().count(), 2);
    ASSERT_TRUE(document.withdrawPvSheet(edited.uuid));
    EXPECT_TRUE(document.pvSheets().empty());
    document.undoStack().undo();
    ASSERT_EQ(document.pvSheets().size(), 1U);
    EXPECT_EQ(document.pvSheets()[0], edited);
    document.undoStack().undo();
    EXPECT_EQ(document.pvSheets()[0], added.value());
    document.undoStack().undo();
    EXPECT_TRUE(document.pvSheets().empty());
    document.undoStack().redo();
    EXPECT_EQ(document.pvSheets()[0], added.value());
}

TEST_F(DocumentTest, PV_sheets_come_back_with_the_logbook_and_leave_with_it) {
    PvSheet sheet;
    sheet.name = "roof";
    ASSERT_TRUE(document.addPvSheet(sheet));
    const QString path = document.path();
    document.close();
    EXPECT_TRUE(document.pvSheets().empty());
    EXPECT_FALSE(document.addPvSheet(sheet));
    ASSERT_TRUE(document.open(path));
    ASSERT_EQ(document.pvSheets().size(), 1U);
    EXPECT_EQ(document.pvSheets()[0].name, "roof");
}

} // namespace ullage
