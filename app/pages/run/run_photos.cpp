// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/run_photos.h"

#include "dialogs/photo_words.h"
#include "measure/options.h"
#include "pages/run/photo_strip.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QAccessible>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <cstdlib>

namespace ullage {

namespace {

/// A note goes to the minute; a photo that differs by less says nothing against it.
const auto differs_from_ms = static_cast<UtcMs>(MeasureOptions().moment_doubt_min * 60'000);

} // namespace

RunPhotos::RunPhotos(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), strip_(new PhotoStrip(document, this)), undone_strip_(new PhotoStrip(document, this)),
      offer_label_(new QLabel(this)), amend_button_(new QPushButton(tr("&Amend to the photo's time"), this)), undone_button_(makeUndoneButton()),
      offer_(makeOffer()) {
    setObjectName(QStringLiteral("runPhotos"));
    strip_->setObjectName(QStringLiteral("readingPhotoStrip"));
    strip_->setAccessibleName(tr("Photos of the chosen reading"));
    undone_strip_->setObjectName(QStringLiteral("undonePhotoStrip"));
    undone_strip_->setAccessibleName(tr("Photos of undone readings"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::grid_px, spacing::half_px, spacing::grid_px, spacing::half_px);
    column->setSpacing(spacing::half_px);
    column->addWidget(offer_);
    column->addWidget(strip_);
    column->addWidget(undone_button_, 0, Qt::AlignLeft);
    column->addWidget(undone_strip_);
    for (const PhotoStrip* strip : {strip_, undone_strip_}) connect(strip, &PhotoStrip::error, this, &RunPhotos::error);
    connect(&document, &Document::photosChanged, this, [this](const RunId& run) {
        if (run == run_uuid_) refresh();
    });
    connect(&document, &Document::readingsChanged, this, [this](const RunId& run) {
        if (run != run_uuid_) return;
        if (!offered_to_.empty() && reading(offered_to_) == nullptr) dropOffer();
        refresh();
    });
    refresh();
}

QFrame* RunPhotos::makeOffer() {
    auto* frame = new QFrame(this);
    frame->setObjectName(QStringLiteral("photoTimeOffer"));
    offer_label_->setObjectName(QStringLiteral("photoTimeLabel"));
    offer_label_->setWordWrap(true);
    offer_label_->setTextFormat(Qt::PlainText);
    amend_button_->setObjectName(QStringLiteral("amendToPhotoTimeButton"));
    amend_button_->setIcon(glyph_icon(Glyph::clock));
    amend_button_->setAutoDefault(false);
    auto* leave = new QPushButton(tr("Lea&ve the time"), frame);
    leave->setObjectName(QStringLiteral("leavePhotoTimeButton"));
    leave->setAutoDefault(false);
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::half_px);
    column->addWidget(offer_label_);
    auto* answers = new QHBoxLayout;
    answers->setSpacing(spacing::grid_px);
    answers->addWidget(amend_button_);
    answers->addWidget(leave);
    answers->addStretch();
    column->addLayout(answers);
    connect(amend_button_, &QPushButton::clicked, this, &RunPhotos::takeTime);
    connect(leave, &QPushButton::clicked, this, [this] {
        dropOffer();
        refresh();
    });
    return frame;
}

QPushButton* RunPhotos::makeUndoneButton() {
    auto* button = new QPushButton(this);
    button->setObjectName(QStringLiteral("undonePhotosButton"));
    button->setIcon(glyph_icon(Glyph::photo, GlyphTone::soft));
    button->setToolTip(tr("A reading that was undone keeps its photos as evidence"));
    button->setFlat(true);
    button->setCheckable(true);
    button->setAutoDefault(false);
    connect(button, &QPushButton::toggled, this, &RunPhotos::refresh);
    return button;
}

const Reading* RunPhotos::reading(const ReadingId& uuid) const {
    const RunRecord* run = document_.run(run_uuid_);
    if (run == nullptr) return nullptr;
    for (const Reading& each : run->readings)
        if (!each.withdrawn && each.uuid == uuid) return &each;
    return nullptr;
}

void RunPhotos::setRun(const RunId& runUuid) {
    run_uuid_ = runUuid;
    reading_uuid_ = {};
    dropOffer();
    const QSignalBlocker blocked(undone_button_);
    undone_button_->setChecked(false);
    refresh();
}

void RunPhotos::setReading(const ReadingId& readingUuid) {
    if (readingUuid == reading_uuid_) return;
    reading_uuid_ = readingUuid;
    if (readingUuid != offered_to_) dropOffer();
    refresh();
}

void RunPhotos::refresh() {
    std::vector<Photo> shown, undone;
    const RunRecord* run = document_.run(run_uuid_);
    if (run != nullptr) {
        auto found = document_.photos(run->run.uuid);
        if (!found) emit error(text_of(found.error().sentence()));
        if (found)
            for (Photo& photo : found.value()) {
                if (!photo.reading_uuid) continue;
                const ReadingId owner = *photo.reading_uuid;
                if (reading(owner) == nullptr) undone.push_back(std::move(photo));
                else if (owner == reading_uuid_) shown.push_back(std::move(photo));
            }
        showUndone(*run, undone);
    }
    strip_->setPhotos(shown, run != nullptr ? run->run.time_zone : std::string("UTC"));
    strip_->setVisible(!shown.empty());
    undone_button_->setVisible(!undone.empty());
    undone_strip_->setVisible(!undone.empty() && undone_button_->isChecked());
    offer_->setVisible(!offered_to_.empty());
    setVisible(!shown.empty() || !undone.empty() || !offered_to_.empty());
}

void RunPhotos::showUndone(const RunRecord& run, const std::vector<Photo>& photos) {
    QStringList notes;
    for (const Photo& photo : photos) {
        const auto owner = std::ranges::find(run.readings, *photo.reading_uuid, &Reading::uuid);
        notes << (owner == run.readings.end() ? tr("of an undone reading")
                                              : tr("of the undone reading of %1").arg(moment_with_seconds(owner->values.time_ms, run.run.time_zone)));
    }
    undone_button_->setText(tr("Photos of undone readings: %1").arg(photos.size()));
    undone_strip_->setPhotos(photos, run.run.time_zone, notes);
}

void RunPhotos::attach(const PhotoIntake& intake, const ReadingId& readingUuid) {
    QStringList refusals;
    bool any = false;
    std::optional<Photo> timed;
    for (const auto& photo : intake) {
        auto added = photo ? document_.addPhoto(run_uuid_, readingUuid, photo.value()) : Result<Photo>(photo.error());
        if (!added) {
            refusals << text_of(added.error().sentence());
            continue;
        }
        any = true;
        if (added.value().taken) timed = added.value();
    }
    if (any && !readingUuid.empty()) {
        emit readingAsked(readingUuid);
        if (timed) offerTime(*timed);
    }
    if (!refusals.isEmpty()) emit error(refusals.join(QLatin1Char('\n')));
}

void RunPhotos::offerTime(const Photo& photo) {
    const Reading* owner = reading(*photo.reading_uuid);
    const RunRecord* run = document_.run(run_uuid_);
    if (owner == nullptr || run == nullptr) return;
    const UtcMs whole_second_ms = photo.taken->time_ms / 1000 * 1000; // as the entry row notes them
    if (std::abs(whole_second_ms - owner->values.time_ms) < differs_from_ms) return;
    offered_to_ = owner->uuid;
    offered_ms_ = whole_second_ms;
    const QString words =
        tr("The photo was taken %1; the reading says %2.")
            .arg(photo_moment_words(*photo.taken, run->run.time_zone), moment_with_seconds(owner->values.time_ms, run->run.time_zone));
    offer_label_->setText(words);
    offer_->setAccessibleName(words);
    refresh();
    QAccessibleEvent alert(offer_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void RunPhotos::takeTime() {
    const Reading* owner = reading(offered_to_);
    if (owner == nullptr) return;
    ReadingValues values = owner->values;
    values.time_ms = offered_ms_;
    const auto amended = document_.amend(owner->uuid, values, tr("time of the photo"));
    if (!amended) {
        emit error(text_of(amended.error().sentence()));
        return;
    }
    const ReadingId moved = offered_to_;
    dropOffer();
    refresh();
    emit readingAsked(moved);
}

void RunPhotos::paintEvent(QPaintEvent*) { QPainter(this).fillRect(0, 0, width(), 1, current_palette().line); }

void RunPhotos::dropOffer() { offered_to_ = {}; }

} // namespace ullage
