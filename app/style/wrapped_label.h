// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QString>

#include <array>
#include <cstddef>

namespace ullage {

/// A label that breaks its lines. Layouts ask it again and again how high it is at the same few widths, for which Qt breaks and shapes all of its
/// text each time; this one keeps the last answers until its text or look changes.
class WrappedLabel final : public QLabel {
public:
    explicit WrappedLabel(const QString& text = {}, QWidget* parent = nullptr);

    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    bool event(QEvent* event) override;

private:
    struct Height {
        int at_width_px = -1, height_px = -1;
    };
    void forget() const;

    mutable std::array<Height, 4> known_{};
    mutable std::size_t next_ = 0;
    mutable QString known_text_;
};

} // namespace ullage
