// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/wrapped_label.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QEnterEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QTest>
#include <QVBoxLayout>
#include <QWidget>

namespace ullage {

namespace {

class WrappedLabelTest : public testing::Test {
protected:
    WrappedLabelTest() {
        label->setTextFormat(Qt::PlainText);
        label->letBeMarked();
        auto* column = new QVBoxLayout(&window);
        column->addWidget(label);
        window.resize(300, 200);
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    }

    void point_at(bool there) {
        const QPointF place = label->rect().center();
        if (there) {
            QEnterEvent enter(place, place, label->mapToGlobal(place));
            QApplication::sendEvent(label, &enter);
        } else {
            QEvent leave(QEvent::Leave);
            QApplication::sendEvent(label, &leave);
        }
        QApplication::processEvents();
    }
    void mark() {
        const QPoint from(2, label->height() / 2), to(label->width() / 2, label->height() / 2);
        QTest::mousePress(label, Qt::LeftButton, {}, from);
        QTest::mouseMove(label, to);
        QMouseEvent move(QEvent::MouseMove, to, label->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(label, &move);
        QTest::mouseRelease(label, Qt::LeftButton, {}, to);
    }

    QWidget window;
    WrappedLabel* label =
        new WrappedLabel(QStringLiteral("At 64 W the unit delivered 740 Wh from full to cut-off, which is less than its label says."), &window);
};

TEST_F(WrappedLabelTest, words_can_be_marked_once_the_pointer_has_come_and_stay_marked_when_it_goes) {
    EXPECT_FALSE(label->textInteractionFlags() & Qt::TextSelectableByMouse) << "a document before anybody wants one";
    point_at(true);
    mark();
    EXPECT_FALSE(label->selectedText().isEmpty());
    point_at(false);
    EXPECT_FALSE(label->selectedText().isEmpty());
}

TEST_F(WrappedLabelTest, it_keeps_its_size_and_place_when_the_pointer_comes_and_goes) {
    const QRect before = label->geometry();
    const int height_px = label->heightForWidth(label->width());
    for (const bool there : {true, false}) {
        point_at(there);
        window.layout()->activate();
        EXPECT_EQ(label->geometry(), before);
        EXPECT_EQ(label->heightForWidth(label->width()), height_px);
    }
    EXPECT_FALSE(label->textInteractionFlags() & Qt::TextSelectableByMouse);
}

TEST_F(WrappedLabelTest, its_menu_copies_what_is_marked_and_else_all_of_it) {
    for (const bool marked : {false, true}) {
        point_at(true);
        if (marked) mark();
        QContextMenuEvent wanted(QContextMenuEvent::Mouse, label->rect().center(), label->mapToGlobal(label->rect().center()));
        QApplication::sendEvent(label, &wanted);
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_TRUE(menu);
        point_at(false);
        menu->actions().front()->trigger();
        menu->close();
        EXPECT_EQ(QApplication::clipboard()->text(), marked ? label->selectedText() : label->text());
        EXPECT_EQ(label->hasSelectedText(), marked);
    }
}

} // namespace

} // namespace ullage
