// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"
#include "dialogs/form_dialog.h"

namespace ullage {

/// Asks how a picture is to be saved: width and height in mm, cm, in or px (96 px are an inch), pixels of a PNG for each of those px, and
/// colours: light, dark, or light on white for print. Says how many pixels come of it. Sizes that cannot be drawn are
/// explained at their field.
class PictureDialog final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `start`, whose font is kept.
    explicit PictureDialog(const PictureSpec& start, QWidget* parent = nullptr);

    /// As last understood.
    [[nodiscard]] const PictureSpec& spec() const { return spec_; }

protected:
    void read() override;

private:
    enum class Colours { light, dark, print };

    [[nodiscard]] std::optional<double> side(const QLineEdit& field) const;
    void show_pixels();

    PictureSpec spec_;
    QLineEdit *width_, *height_;
    QComboBox *scale_, *colours_;
    QLabel* pixels_label_;
};

} // namespace ullage
