// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window_fixture.h"

#include <QSet>

#include <functional>

namespace ullage::test {

/// The window on the sample logbook, walked through as somebody would who sees nothing of it.
class AccessTest : public WindowTest {
protected:
    void SetUp() override;

    /// Calls `look` with the window at every page, and at every tab of it. `place` names it.
    void at_every_page(const std::function<void(QWidget& root, const QString& place)>& look);
    /// Calls `look` with every form and dialog that a menu opens, at each of its tabs, with all its fields unfolded.
    void at_every_dialog(const std::function<void(QWidget& root, const QString& place)>& look);
    void everywhere(const std::function<void(QWidget& root, const QString& place)>& look);

    /// The same at each tab within `part`, which stands in `root`; once where there is none.
    void at_every_tab(QWidget& root, QWidget& part, const QString& place, const std::function<void(QWidget&, const QString&)>& look);
    void settle() const;

    /// Keeps what is wrong once, with the first place where it is.
    void complain(const QString& place, const QString& what);
    /// Expects no complaint, and that at least so many things were looked at.
    void expect_none(int looked_at, int at_least) const;

private:
    void open_every_entry(const QString& where, const std::function<void()>& go_there, const QSet<QString>& menus,
                          const std::function<void(QWidget&, const QString&)>& look);

    QStringList complaints_;
    QSet<QString> known_;
};

/// Everything in sight below `root` that can be operated or looked at by itself: its widget is one of the program, not a part that Qt makes.
[[nodiscard]] QList<QWidget*> controls_of(QWidget& root);
/// "QLineEdit nameEdit", for messages.
[[nodiscard]] QString called(const QWidget& widget);
/// What a screen reader calls it.
[[nodiscard]] QString spoken_name(QWidget& widget);

} // namespace ullage::test
