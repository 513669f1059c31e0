// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/photo_dialog.h"

#include "dialogs/photo_words.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

#include <utility>

namespace ullage {

namespace {

constexpr QSize usual_size_px(900, 680);

QLabel* words_label(const char* name, const QString& words) {
    auto* label = new QLabel(words);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

PhotoDialog::PhotoDialog(const Photo& photo, ShownPhoto shown, const std::string& zone, QWidget* parent)
    : QDialog(parent), shown_(std::move(shown)), scroll_(new QScrollArea), picture_label_(new QLabel),
      message_label_(words_label("photoMessageLabel", {})) {
    setObjectName(QStringLiteral("photoDialog"));
    const QString name = text_of(photo.file_name);
    setWindowTitle(tr("Photo %1").arg(name));
    picture_label_->setObjectName(QStringLiteral("photoPictureLabel"));
    picture_label_->setAlignment(Qt::AlignCenter);
    picture_label_->setAccessibleName(tr("photo %1").arg(photo_words(photo, zone)));
    scroll_->setObjectName(QStringLiteral("photoScroll"));
    scroll_->setAccessibleName(picture_label_->accessibleName());
    scroll_->setWidget(picture_label_);
    scroll_->setAlignment(Qt::AlignCenter);
    scroll_->setFocusPolicy(Qt::StrongFocus);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::panel_gap_px, spacing::panel_gap_px, spacing::panel_gap_px, spacing::panel_gap_px);
    column->setSpacing(spacing::grid_px);
    column->addWidget(scroll_, 1);
    auto* name_label = words_label("photoNameLabel", name);
    column->addWidget(name_label);
    QString about = photo_size_words(photo.size_bytes);
    if (shown_.whole.isValid()) about += tr(", %1 x %2 pixels").arg(shown_.whole.width()).arg(shown_.whole.height());
    if (!shown_.image.isNull() && shown_.image.width() < shown_.whole.width())
        about += tr(", shown at %1 % of its size; Save photo writes it whole").arg(qRound(100.0 * shown_.image.width() / shown_.whole.width()));
    about += photo.taken ? tr(", taken %1").arg(photo_moment_words(*photo.taken, zone)) : tr(", no time in it");
    auto* about_label = words_label("photoAboutLabel", about);
    set_text_style(*about_label, Tone::soft, TextSize::caption);
    column->addWidget(about_label);
    message_label_->hide();
    column->addWidget(message_label_);

    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spacing::grid_px);
    fit_button_ = addZoom(tr("&Fit  F"), "photoFitButton", Qt::Key_F, &PhotoDialog::showFitted);
    whole_button_ = addZoom(tr("&100 %  1"), "photoWholeButton", Qt::Key_1, &PhotoDialog::showWhole);
    buttons->addWidget(fit_button_);
    buttons->addWidget(whole_button_);
    buttons->addStretch();
    auto* save = new QPushButton(tr("&Save photo…"));
    save->setObjectName(QStringLiteral("savePhotoButton"));
    save->setToolTip(tr("Write the photo to a file, byte for byte as it came"));
    save->setAutoDefault(false);
    connect(save, &QPushButton::clicked, this, &PhotoDialog::saveAsked);
    auto* withdraw = new QPushButton(glyph_icon(Glyph::withdraw), tr("&Withdraw photo"));
    withdraw->setObjectName(QStringLiteral("withdrawPhotoButton"));
    withdraw->setToolTip(tr("Take this photo out; undo brings it back"));
    withdraw->setAutoDefault(false);
    connect(withdraw, &QPushButton::clicked, this, &PhotoDialog::withdrawAsked);
    auto* close = new QPushButton(tr("&Close"));
    close->setObjectName(QStringLiteral("closePhotoButton"));
    close->setDefault(true);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    for (QPushButton* button : {close, withdraw, save}) buttons->addWidget(button);
    column->addLayout(buttons);

    if (shown_.image.isNull()) {
        picture_label_->setText(
            shown_.too_large
                ? tr("This picture is too large to be shown here: it would take more than %1 MB of memory. Save photo writes it to a file, whole.")
                      .arg(photo_memory_mb)
                : tr("This picture is damaged and cannot be shown. Its file is kept in the logbook as it came."));
        picture_label_->adjustSize();
        fit_button_->setEnabled(false);
        whole_button_->setEnabled(false);
    }
    const QSize room = screen() ? screen()->availableSize() * 9 / 10 : usual_size_px;
    resize(usual_size_px.boundedTo(room));
    scroll_->setFocus();
}

QPushButton* PhotoDialog::addZoom(const QString& words, const char* name, Qt::Key key, void (PhotoDialog::*does)()) {
    auto* button = new QPushButton(words);
    button->setObjectName(QLatin1String(name));
    button->setCheckable(true);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, does);
    connect(new QShortcut(QKeySequence(key), this), &QShortcut::activated, this, does);
    return button;
}

void PhotoDialog::refuse(const QString& sentence) { showMessage(sentence, Tone::fault); }

void PhotoDialog::tell(const QString& sentence) { showMessage(sentence, Tone::soft); }

void PhotoDialog::showMessage(const QString& sentence, Tone tone) {
    set_text_style(*message_label_, tone, TextSize::caption);
    message_label_->setText(sentence);
    message_label_->setAccessibleName(sentence);
    message_label_->show();
}

void PhotoDialog::showFitted() {
    fitted_ = true;
    showPicture();
}

void PhotoDialog::showWhole() {
    fitted_ = false;
    showPicture();
}

void PhotoDialog::showPicture() {
    fit_button_->setChecked(fitted_);
    whole_button_->setChecked(!fitted_);
    if (shown_.image.isNull()) return;
    const qreal ratio = devicePixelRatioF();
    const QSize room = scroll_->maximumViewportSize() * ratio;
    const bool smaller = fitted_ && (shown_.image.width() > room.width() || shown_.image.height() > room.height());
    QPixmap shown = QPixmap::fromImage(
        smaller ? shown_.fitted.scaled(shown_.image.size().scaled(room, Qt::KeepAspectRatio), Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                : shown_.image);
    shown.setDevicePixelRatio(ratio);
    picture_label_->setPixmap(shown);
    picture_label_->adjustSize();
}

void PhotoDialog::resizeEvent(QResizeEvent* event) {
    QDialog::resizeEvent(event);
    if (isVisible() && fitted_) showPicture();
}

void PhotoDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    showPicture();
}

} // namespace ullage
