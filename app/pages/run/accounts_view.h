// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/accounts.h"

#include <QWidget>

#include <array>
#include <vector>

class QBoxLayout;
class QFrame;
class QLabel;

namespace ullage {

/// A running or stopped drain told twice, side by side: "If the gauge is right" in the colour of the gauge, "If the gauge is wrong" in that of the
/// meter, each with three figures and a sentence; below, what decides between them. What the readings rule out is struck grey, with its evidence. One
/// under the other where the width does not hold them.
class AccountsView final : public QWidget {
    Q_OBJECT
public:
    explicit AccountsView(QWidget* parent = nullptr);

    /// Precondition: accounts.told.
    void setAccounts(const TwoAccounts& accounts, const Run& run, UtcMs now_ms);

    /// Whether it stands in something that scrolls: it is then never lower than what it says.
    void setScrolled(bool scrolled);
    /// That shows all of it, pixels.
    [[nodiscard]] int heightIn(int width) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Figure {
        QLabel *label = nullptr, *value = nullptr, *note = nullptr;
    };
    struct Panel {
        QFrame* frame = nullptr;
        QFrame* edge = nullptr; ///< a line in the account's colour
        QLabel *title = nullptr, *sentence = nullptr;
        std::array<Figure, 3> figures;
        bool ruled_out = false;
    };
    Panel addPanel(const char* name, const QString& title);
    void fill(Panel& panel, const TwoAccounts& accounts, const GaugeAccount& account, const Run& run, UtcMs now_ms);
    void applyFonts();
    void arrangeSides();
    [[nodiscard]] bool besideFits(int width) const;

    QBoxLayout* sides_;
    bool scrolled_ = false;
    Panel right_, wrong_;
    QFrame* decision_;
    QLabel *decides_, *idle_hour_;
};

} // namespace ullage
