// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/photo_strip.h"

#include "dialogs/photo_dialog.h"
#include "dialogs/photo_image.h"
#include "dialogs/photo_words.h"
#include "services/background_work.h"
#include "style/icons.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QAction>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QPixmapCache>
#include <QPointer>
#include <QThreadPool>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr QSize picture_px(72, 54);
constexpr int uuid_role = Qt::UserRole;

QString cache_key(const Photo& photo, qreal ratio) { return QStringLiteral("photo %1 %2").arg(raw_text(photo.uuid), QString::number(ratio)); }

} // namespace

PhotoStrip::PhotoStrip(Document& document, QWidget* parent) : QListWidget(parent), document_(document) {
    setAccessibleName(tr("Photos"));
    setViewMode(QListView::IconMode);
    setFlow(QListView::LeftToRight);
    setWrapping(false);
    setMovement(QListView::Static);
    setDragDropMode(QAbstractItemView::NoDragDrop);
    setIconSize(picture_px);
    setGridSize(picture_px + QSize(spacing::grid_px, spacing::grid_px));
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFixedHeight(gridSize().height() + spacing::half_px);
    setTabKeyNavigation(false);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    const auto add = [this](const QString& words, const char* name, auto does) {
        auto* made = new QAction(words, this);
        made->setObjectName(QLatin1String(name));
        connect(made, &QAction::triggered, this, [this, does] {
            if (const auto* item = currentItem()) (this->*does)(id_of<PhotoId>(item->data(uuid_role).toString()));
        });
        addAction(made);
    };
    add(tr("Open"), "openPhotoAction", &PhotoStrip::openPhoto);
    add(tr("Withdraw photo"), "withdrawPhotoAction", &PhotoStrip::withdraw);
    connect(this, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { openPhoto(id_of<PhotoId>(item->data(uuid_role).toString())); });
    load_timer_.setSingleShot(true);
    load_timer_.setInterval(0);
    connect(&load_timer_, &QTimer::timeout, this, &PhotoStrip::loadNext);
}

void PhotoStrip::setPhotos(const std::vector<Photo>& photos, const std::string& zone, const QStringList& notes) {
    if (photos == photos_ && zone == zone_ && notes == notes_) return;
    photos_ = photos;
    zone_ = zone;
    notes_ = notes;
    fill();
}

void PhotoStrip::fill() {
    clear();
    int number = 0;
    for (const Photo& photo : photos_) {
        auto* item = new QListWidgetItem(glyph_icon(Glyph::photo, GlyphTone::soft), QString(), this);
        QString words = photo_words(photo, zone_);
        if (number < notes_.size()) words += QStringLiteral("; ") + notes_[number];
        item->setData(uuid_role, raw_text(photo.uuid));
        item->setToolTip(words);
        item->setData(Qt::AccessibleTextRole, tr("photo %1 of %2: %3").arg(++number).arg(photos_.size()).arg(words));
    }
    next_ = 0;
    if (count() > 0) {
        setCurrentRow(0, QItemSelectionModel::NoUpdate);
        load_timer_.start();
    }
}

void PhotoStrip::loadNext() {
    if (decoding_ || next_ >= count()) return;
    const Photo& photo = photos_[static_cast<std::size_t>(next_)];
    const QString key = cache_key(photo, devicePixelRatioF());
    if (QPixmap known; QPixmapCache::find(key, &known)) return setIcon(QIcon(known));
    auto bytes = document_.photoBytes(photo.uuid);
    if (!bytes) return setIcon(glyph_icon(Glyph::fault, GlyphTone::fault));
    decoding_ = true;
    const QSize within = picture_px * devicePixelRatioF();
    // The strip may be gone, or show other photos, by the time that the picture stands.
    QThreadPool::globalInstance()->start(
        [strip = QPointer<PhotoStrip>(this), key, within, format = photo.format, content = std::move(bytes).value()] {
            const QImage image = photo_image(content, format, within).image;
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [strip, key, image] {
                    if (strip) strip->setPicture(key, image);
                },
                Qt::QueuedConnection);
        });
}

void PhotoStrip::setPicture(const QString& key, const QImage& image) {
    decoding_ = false;
    QPixmap pixmap = QPixmap::fromImage(image);
    pixmap.setDevicePixelRatio(devicePixelRatioF());
    if (!image.isNull()) QPixmapCache::insert(key, pixmap);
    if (next_ >= count()) return;
    if (cache_key(photos_[static_cast<std::size_t>(next_)], devicePixelRatioF()) != key) return loadNext(); // others stand here now
    setIcon(image.isNull() ? glyph_icon(Glyph::fault, GlyphTone::fault) : QIcon(pixmap));
}

void PhotoStrip::setIcon(const QIcon& icon) {
    item(next_)->setIcon(icon);
    if (++next_ < count()) load_timer_.start();
}

void PhotoStrip::openPhoto(const PhotoId& photoUuid) {
    const auto photo = std::ranges::find(photos_, photoUuid, &Photo::uuid);
    if (photo == photos_.end()) return;
    const auto bytes = document_.photoBytes(photo->uuid);
    if (!bytes) {
        emit error(text_of(bytes.error().sentence()));
        return;
    }
    // Copies: while the picture is decoded the strip may be given other photos.
    const Photo opened = *photo;
    const auto place = photo - photos_.begin();
    const QString note = place < notes_.size() ? notes_[place] : QString();
    auto shown = result_beside(this, tr("Reading photo %1").arg(text_of(opened.file_name)),
                               [&](WorkProgress& progress) { return photo_image(bytes.value(), opened.format, {}, &progress.cancelling()); });
    if (!shown) return;
    auto* dialog = new PhotoDialog(opened, std::move(*shown), zone_, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (!note.isEmpty()) dialog->tell(tr("This photo is %1.").arg(note));
    connect(dialog, &PhotoDialog::withdrawAsked, this, [this, dialog, uuid = opened.uuid] {
        if (const auto done = document_.withdrawPhoto(uuid); !done) dialog->refuse(text_of(done.error().sentence()));
        else dialog->accept();
    });
    connect(dialog, &PhotoDialog::saveAsked, this, [this, dialog, opened] { emit saveAsked(opened, dialog); });
    dialog->open();
}

void PhotoStrip::withdraw(const PhotoId& photo_uuid) {
    if (const auto done = document_.withdrawPhoto(photo_uuid); !done) emit error(text_of(done.error().sentence()));
}

void PhotoStrip::keyPressEvent(QKeyEvent* event) {
    const auto* item = currentItem();
    const PhotoId uuid = item ? id_of<PhotoId>(item->data(uuid_role).toString()) : PhotoId();
    switch (uuid.empty() ? 0 : event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space: return openPhoto(uuid);
    case Qt::Key_Delete: return withdraw(uuid);
    default: QListWidget::keyPressEvent(event);
    }
}

void PhotoStrip::focusInEvent(QFocusEvent* event) {
    QListWidget::focusInEvent(event);
    // Shows where the keyboard is.
    if (auto* item = currentItem()) item->setSelected(true);
}

} // namespace ullage
