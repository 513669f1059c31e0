// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/message_bar.h"

#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/wrapped_label.h"

#include <QDesktopServices>
#include <QEvent>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QUrl>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

MessageBar::MessageBar(QWidget& page)
    : QWidget(page.parentWidget()), page_(page), chip_(new QLabel), words_(new WrappedLabel), open_(new QPushButton(tr("Open"))),
      folder_(new QPushButton(tr("Show folder"))) {
    setObjectName(QStringLiteral("messageBar"));
    auto* panel = new QFrame;
    make_panel(*panel);
    words_->setObjectName(QStringLiteral("messageLabel"));
    words_->setTextFormat(Qt::PlainText);
    words_->letBeMarked();
    auto* dismiss_button = new QToolButton;
    dismiss_button->setObjectName(QStringLiteral("dismissButton"));
    dismiss_button->setIcon(glyph_icon(Glyph::close));
    dismiss_button->setToolTip(tr("Dismiss"));
    dismiss_button->setAccessibleName(tr("dismiss the message"));
    make_quiet(*dismiss_button);
    connect(dismiss_button, &QToolButton::clicked, this, &MessageBar::dismiss);
    auto* line = new QHBoxLayout(panel);
    line->setContentsMargins(spacing::panel_gap_px, spacing::half_px, spacing::half_px, spacing::half_px);
    line->setSpacing(spacing::grid_px);
    line->addWidget(chip_);
    line->addWidget(words_, 1);
    open_->setObjectName(QStringLiteral("openSavedButton"));
    folder_->setObjectName(QStringLiteral("showFolderButton"));
    connect(open_, &QPushButton::clicked, this, [this] { QDesktopServices::openUrl(QUrl::fromLocalFile(saved_path_)); });
    connect(folder_, &QPushButton::clicked, this, [this] { QDesktopServices::openUrl(QUrl::fromLocalFile(QFileInfo(saved_path_).absolutePath())); });
    for (auto* button : {open_, folder_}) {
        button->setAutoDefault(false);
        button->hide();
        line->addWidget(button, 0, Qt::AlignTop);
    }
    line->addWidget(dismiss_button, 0, Qt::AlignTop);
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(0, 0, 0, 0);
    around->addWidget(panel);
    page_.installEventFilter(this);
    hide();
}

bool MessageBar::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &page_ && (event->type() == QEvent::Resize || event->type() == QEvent::Move)) place();
    return QWidget::eventFilter(watched, event);
}

bool MessageBar::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) place();
    return QWidget::event(event);
}

void MessageBar::place() {
    if (isHidden()) return;
    const int width = std::max(0, page_.width() - 2 * spacing::page_margin_px);
    const int height = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width) : layout()->totalSizeHint().height();
    setGeometry(page_.x() + spacing::page_margin_px, page_.geometry().bottom() + 1 - height - spacing::grid_px, width, height);
    raise();
}

void MessageBar::showError(const QString& sentence) { add(sentence, true); }

void MessageBar::showNote(const QString& sentence) { add(sentence, false); }

void MessageBar::showSaved(const QString& sentence, const QString& path) {
    add(sentence, false);
    saved_path_ = path;
    for (auto* button : {open_, folder_}) button->show();
}

void MessageBar::dismiss() {
    words_->clear();
    saved_path_.clear();
    for (auto* button : {open_, folder_}) button->hide();
    error_ = false;
    hide();
}

QString MessageBar::message() const { return words_->text(); }

void MessageBar::add(const QString& sentence, bool error) {
    auto lines = words_->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    lines.removeAll(sentence);
    lines.append(sentence);
    constexpr int most_lines = 6;
    while (lines.size() > most_lines) lines.removeFirst();
    error_ = error_ || error;
    chip_->setText(error_ ? tr("not done") : tr("note"));
    make_chip(*chip_, error_ ? Chip::fault : Chip::note);
    words_->setText(lines.join(QLatin1Char('\n')));
    words_->setAccessibleName(words_->text());
    show();
    place();
}

} // namespace ullage
