// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QLabel>
#include <QMargins>
#include <QSize>
#include <QString>

#include <array>
#include <cstddef>

namespace ullage {

/// A label that breaks its lines. Layouts ask it again and again how large it would be, and how high at the same few widths, for which Qt breaks and
/// shapes all of its text each time; this one keeps the answers as long as its text, its font and its margins are the same.
class WrappedLabel final : public QLabel {
public:
    explicit WrappedLabel(const QString& text = {}, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

private:
    struct Height {
        int at_width_px = -1, height_px = -1;
    };
    /// What all sizes follow from.
    struct Look {
        QString text;
        QFont font;
        QMargins margins;
        Qt::TextInteractionFlags interaction;
        int indent_px = 0;
        QSize smallest, largest;
        friend bool operator==(const Look&, const Look&) = default;
    };
    void know() const; ///< forgets the answers where the label no longer looks as it did

    mutable Look known_look_;
    mutable QSize hint_, least_; ///< invalid while not asked for
    mutable std::array<Height, 4> known_{};
    mutable std::size_t next_ = 0;
};

} // namespace ullage
