// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window_fixture.h"

#include <QSet>

#include <functional>
#include <optional>
#include <utility>

namespace ullage::test {

/// A page, form or dialog as it stands in front, at one of its tabs.
class Place {
public:
    Place(QWidget& window, QString words) : root(window), name(std::move(words)) {}

    QWidget& root;
    const QString name;
    /// What Tab goes through until it comes back, in order. Tab is pressed when this is asked for first, and rows get chosen by it.
    [[nodiscard]] const QList<QWidget*>& tabbed_through();

private:
    std::optional<QList<QWidget*>> tabbed_through_;
};

/// What was found of something that every place has to keep.
class Complaints {
public:
    void looked_at_one() { ++looked_at_; }
    /// Keeps what is wrong once, with the first place where it is.
    void add(const QString& place, const QString& what);
    /// Expects none, and that at least so many things were looked at.
    void expect_none(int at_least) const;

private:
    int looked_at_ = 0;
    QStringList complaints_;
    QSet<QString> known_;
};

/// The window on the sample logbook, walked through as somebody would who sees nothing of it.
class AccessTest : public WindowTest {
protected:
    using Look = std::function<void(Place& place)>;

    void SetUp() override;

    /// Calls `look` with the window at every page, and at every tab of it; then with every form and dialog that a menu opens, at each of its tabs,
    /// with all its fields unfolded.
    void everywhere(const Look& look);
    void at_every_dialog(const Look& look);
    /// The same at each tab within `part`, which stands in `root`; once where there is none.
    void at_every_tab(QWidget& root, QWidget& part, const QString& place, const Look& look);
    void settle() const;

private:
    void at_every_page(const Look& look);
    void open_every_entry(const QString& where, const std::function<void()>& go_there, const QSet<QString>& menus, const Look& look);
};

/// Everything in sight below `root` that can be operated or looked at by itself: its widget is one of the program, not a part that Qt makes.
[[nodiscard]] QList<QWidget*> controls_of(QWidget& root);
/// "QLineEdit nameEdit", for messages.
[[nodiscard]] QString called(const QWidget& widget);
/// What a screen reader calls it.
[[nodiscard]] QString spoken_name(QWidget& widget);

} // namespace ullage::test
