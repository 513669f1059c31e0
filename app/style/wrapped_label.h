// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QLabel>
#include <QString>

#include <array>
#include <cstddef>

namespace ullage {

/// A label that breaks its lines. Layouts ask it again and again how high it is at the same few widths, for which Qt breaks and shapes all of its
/// text each time; this one keeps the last answers until its text or look changes.
class WrappedLabel final : public QLabel {
    Q_DECLARE_TR_FUNCTIONS(ullage::WrappedLabel)

public:
    explicit WrappedLabel(const QString& text = {}, QWidget* parent = nullptr);

    [[nodiscard]] int heightForWidth(int width) const override;

    /// Its words can be marked, and what is marked, or all of it, copied by its menu. Qt makes a document of such a label, which it breaks and shapes
    /// several times as often: this one becomes one when the pointer comes, and is a plain label again when it has gone and nothing is marked.
    void letBeMarked() { can_be_marked_ = true; }

protected:
    bool event(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    struct Height {
        int at_width_px = -1, height_px = -1;
    };
    void forget() const;

    bool can_be_marked_ = false;
    mutable std::array<Height, 4> known_{};
    mutable std::size_t next_ = 0;
    mutable QString known_text_;
};

} // namespace ullage
