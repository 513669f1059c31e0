// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/waiting_photos.h"

#include "dialogs/photo_words.h"
#include "formats/entry/entry_text.h"
#include "pages/run/photo_strip.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace ullage {

QString field_text_of(UtcMs time_ms, UtcMs now_ms, const std::string& zone) {
    const UtcMs second_ms = time_ms - ((time_ms % 1000) + 1000) % 1000;
    const QString plain = moment_with_seconds(second_ms, zone);
    const auto read = parse_moment(utf8_of(plain), now_ms, zone);
    // Of an hour that occurs twice the plain words mean only one.
    return read && read.value() == second_ms ? plain : raw_text(format_iso8601(second_ms, zone));
}

WaitingPhotos::WaitingPhotos(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), strip_(new PhotoStrip(document, this)), words_label_(new QLabel(this)),
      take_button_(new QPushButton(this)) {
    setObjectName(QStringLiteral("waitingPhotos"));
    strip_->setObjectName(QStringLiteral("waitingPhotoStrip"));
    strip_->setAccessibleName(tr("Photos for the next reading"));
    words_label_->setObjectName(QStringLiteral("waitingPhotosLabel"));
    words_label_->setTextFormat(Qt::PlainText);
    words_label_->setWordWrap(true);
    set_text_style(*words_label_, Tone::soft, TextSize::caption);
    take_button_->setObjectName(QStringLiteral("takePhotoTimeButton"));
    take_button_->setIcon(glyph_icon(Glyph::clock));
    take_button_->setAutoDefault(false);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(spacing::grid_px);
    grid->setVerticalSpacing(spacing::half_px);
    grid->addWidget(strip_, 0, 0, 2, 1);
    grid->addWidget(words_label_, 0, 1);
    grid->addWidget(take_button_, 1, 1, Qt::AlignLeft);
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 3);
    connect(strip_, &PhotoStrip::error, this, &WaitingPhotos::error);
    connect(take_button_, &QPushButton::clicked, this, [this] { emit timeTaken(offered_text_); });
    connect(&document, &Document::photosChanged, this, [this](const RunId& run) {
        if (run == run_uuid_) refresh();
    });
    hide();
}

void WaitingPhotos::setRun(const RunId& runUuid) {
    run_uuid_ = runUuid;
    refresh();
}

void WaitingPhotos::refresh() {
    photos_.clear();
    const RunRecord* run = document_.run(run_uuid_);
    if (run != nullptr) {
        auto found = document_.photos(run->run.uuid);
        if (!found) emit error(text_of(found.error().sentence()));
        if (found)
            for (Photo& photo : found.value())
                if (!photo.reading_uuid) photos_.push_back(std::move(photo));
        strip_->setPhotos(photos_, run->run.time_zone);
    }
    setVisible(!photos_.empty());
    showOffer();
}

void WaitingPhotos::setTimeText(const QString& text) {
    time_text_ = text;
    showOffer();
}

void WaitingPhotos::showOffer() {
    const Photo* timed = nullptr;
    for (const Photo& photo : photos_)
        if (photo.taken) timed = &photo;
    const RunRecord* run = document_.run(run_uuid_);
    offered_text_.clear();
    if (timed != nullptr && run != nullptr) offered_text_ = field_text_of(timed->taken->time_ms, document_.clock().now_ms(), run->run.time_zone);
    QString words = photos_.size() == 1 ? tr("This photo goes with the next reading.") : tr("These photos go with the next reading.");
    if (timed != nullptr && run != nullptr) words += QLatin1Char(' ') + tr("Taken %1.").arg(photo_moment_words(*timed->taken, run->run.time_zone));
    words_label_->setText(words);
    take_button_->setText(tr("Use the photo's &time, %1").arg(offered_text_));
    take_button_->setVisible(!offered_text_.isEmpty() && offered_text_ != time_text_.trimmed());
}

std::vector<PhotoId> WaitingPhotos::uuids() const {
    std::vector<PhotoId> found;
    for (const Photo& photo : photos_) found.push_back(photo.uuid);
    return found;
}

} // namespace ullage
