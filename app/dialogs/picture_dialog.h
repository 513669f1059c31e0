// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"
#include "dialogs/form_dialog.h"

class QCheckBox;

namespace ullage {

/// Asks how a picture is to be saved: width and height in mm, cm, in or px (96 px are an inch), pixels of a PNG for each of those px, and
/// colours: light, dark, or light on white for print; and whether it says itself what it shows. Says how many pixels come of it. Sizes that cannot be
/// drawn are explained at their field. Where the picture is to be saved at once it also asks for the form of the file.
class PictureDialog final : public FormDialog {
    Q_OBJECT
public:
    enum class Purpose { choose, save };

    /// Starts from `start`, whose font is kept.
    explicit PictureDialog(const PictureSpec& start, QWidget* parent = nullptr, Purpose purpose = Purpose::choose);

    /// As last understood.
    [[nodiscard]] const PictureSpec& spec() const { return spec_; }
    /// "png" or "svg", as last understood.
    [[nodiscard]] QString ending() const { return ending_; }

protected:
    void read() override;

private:
    enum class Colours { light, dark, print };

    [[nodiscard]] std::optional<double> side(const QLineEdit& field) const;
    void showPixels();

    PictureSpec spec_;
    QString ending_ = QStringLiteral("png");
    QComboBox* form_; ///< null where only size and colours are asked for
    QLineEdit *width_, *height_;
    QComboBox *scale_, *colours_;
    QCheckBox* words_;
    QLabel* pixels_label_;
};

} // namespace ullage
