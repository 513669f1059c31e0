// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

namespace ullage {

using test::DocumentTest;

namespace {

LoadList list_of_a_lamp() {
    LoadList list;
    list.name = "Show night";
    Appliance lamp;
    lamp.name = "lamp";
    lamp.power_w = 9;
    lamp.hours_per_day = 5;
    list.appliances = {lamp};
    return list;
}

} // namespace

TEST_F(DocumentTest, load_lists_are_added_edited_and_withdrawn_with_undo) {
    const auto list = document.addLoadList(list_of_a_lamp()).value();
    EXPECT_TRUE(document.undoStack().undoText().contains("Show night"));
    auto edited = list;
    edited.appliances[0].count = 4;
    edited.appliances.push_back(list.appliances[0]);
    ASSERT_TRUE(document.updateLoadList(edited));
    ASSERT_TRUE(document.withdrawLoadList(list.uuid));
    EXPECT_TRUE(document.loadLists().empty());
    document.undoStack().undo();
    EXPECT_EQ(*document.loadList(list.uuid), edited);
    document.undoStack().undo();
    EXPECT_EQ(*document.loadList(list.uuid), list);
    document.undoStack().undo();
    EXPECT_TRUE(document.loadLists().empty());
    for (int step = 0; step < 2; ++step) document.undoStack().redo();
    EXPECT_EQ(*document.loadList(list.uuid), edited);
}

TEST_F(DocumentTest, a_refused_load_list_changes_nothing_and_leaves_no_step_to_undo) {
    ASSERT_TRUE(document.addLoadList(list_of_a_lamp()));
    const int steps = document.undoStack().count();
    EXPECT_FALSE(document.addLoadList(list_of_a_lamp())) << "two lists of one name";
    auto wrong = document.loadLists()[0];
    wrong.appliances[0].duty = 2;
    EXPECT_FALSE(document.updateLoadList(wrong));
    EXPECT_EQ(document.undoStack().count(), steps);
    EXPECT_EQ(document.loadLists()[0].appliances[0].duty, 1);
}

TEST_F(DocumentTest, each_change_of_a_load_list_is_announced_once) {
    int told = 0;
    QObject::connect(&document, &Document::loadListsChanged, &document, [&told] { ++told; });
    const auto list = document.addLoadList(list_of_a_lamp()).value();
    EXPECT_EQ(told, 1);
    ASSERT_TRUE(document.updateLoadList(list)) << "nothing changed";
    EXPECT_EQ(told, 1);
    document.undoStack().undo();
    EXPECT_EQ(told, 2);
}

} // namespace ullage
