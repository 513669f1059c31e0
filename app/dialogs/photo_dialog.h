// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/photo_image.h"

#include <QDialog>

#include <string>

class QLabel;
class QPushButton;
class QScrollArea;

namespace ullage {

enum class Tone;

/// A photo in full size: fitted to the window (F) or one picture point to one of the screen (1; of a photo over photo_shown_pixels, which is halved,
/// as large as it was decoded), with its name, size and the camera's time below. It never touches the store: on withdrawAsked() the caller withdraws
/// the photo and closes the dialog, or calls refuse(); on saveAsked() it writes the photo's bytes to a file and calls tell() or refuse().
class PhotoDialog final : public QDialog {
    Q_OBJECT
public:
    /// A picture that cannot be shown is a null image, and the dialog says so. Times are written in `zone`.
    PhotoDialog(const Photo& photo, ShownPhoto shown, const std::string& zone, QWidget* parent = nullptr);

    void refuse(const QString& sentence);
    void tell(const QString& sentence); ///< what has been done
    [[nodiscard]] bool fitted() const { return fitted_; }

public slots:
    void showFitted();
    void showWhole();

signals:
    void withdrawAsked();
    void saveAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void showPicture();
    void showMessage(const QString& sentence, Tone tone);
    QPushButton* addZoom(const QString& words, const char* name, Qt::Key key, void (PhotoDialog::*does)());

    ShownPhoto shown_;
    bool fitted_ = true;
    QScrollArea* scroll_;
    QLabel *picture_label_, *message_label_;
    QPushButton *fit_button_ = nullptr, *whole_button_ = nullptr;
};

} // namespace ullage
