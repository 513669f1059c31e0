// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/photo_dialog.h"
#include "document/document.h"

#include <QListWidget>
#include <QTimer>

#include <string>
#include <vector>

namespace ullage {

/// A row of small pictures. A click, Enter or Space opens one in full size, Delete withdraws it. Pictures are decoded one
/// at a time in a thread of its own, so that a page with many of them opens at once.
class PhotoStrip final : public QListWidget {
    Q_OBJECT
public:
    explicit PhotoStrip(Document& document, QWidget* parent = nullptr);

    /// Shows these photos, their times in `zone`; `notes`, none or one for each, says more of them. The same as before changes nothing.
    void setPhotos(const std::vector<Photo>& photos, const std::string& zone, const QStringList& notes = {});
    /// Opens a photo of the row in a window of its own.
    void openPhoto(const PhotoId& photoUuid);
    /// Whether every small picture stands.
    [[nodiscard]] bool loaded() const { return next_ >= count(); }

signals:
    /// The open photo is wanted as a file; `dialog` shows what comes of it.
    void saveAsked(const ullage::Photo& photo, ullage::PhotoDialog* dialog);
    void error(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    void fill();
    void loadNext();
    void setPicture(const QString& key, const QImage& image);
    void setIcon(const QIcon& icon);
    void withdraw(const PhotoId& photo_uuid);

    Document& document_;
    std::vector<Photo> photos_;
    std::string zone_;
    QStringList notes_;
    QTimer load_timer_;
    int next_ = 0; ///< whose picture is awaited
    bool decoding_ = false;
};

} // namespace ullage
