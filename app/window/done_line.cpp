// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/done_line.h"

#include "style/roles.h"
#include "style/spacing.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ullage {

DoneLine::DoneLine(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), words_label_(new QLabel), undo_button_(new QPushButton(tr("Undo"))) {
    setObjectName(QStringLiteral("doneLine"));
    words_label_->setObjectName(QStringLiteral("doneLabel"));
    words_label_->setTextFormat(Qt::PlainText);
    set_text_style(*words_label_, Tone::ink, TextSize::caption);
    undo_button_->setObjectName(QStringLiteral("undoDoneButton"));
    undo_button_->setToolTip(tr("Takes back what is named beside it; so does Ctrl+Z"));
    undo_button_->setAutoDefault(false);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    line->addWidget(words_label_);
    line->addWidget(undo_button_);
    connect(undo_button_, &QPushButton::clicked, this, [this] { document_.undoStack().undo(); });
    connect(&document_, &Document::stepDone, this, &DoneLine::say);
    // Undone, or something was done of which nothing is said.
    connect(&document_.undoStack(), &QUndoStack::indexChanged, this, [this](int index) {
        if (index != said_at_) clear();
    });
    for (auto signal : {&Document::opened, &Document::closed}) connect(&document_, signal, this, &DoneLine::clear);
    // Its place stays, or the page above would move with each reading.
    QSizePolicy keeping = undo_button_->sizePolicy();
    keeping.setRetainSizeWhenHidden(true);
    undo_button_->setSizePolicy(keeping);
    undo_button_->hide();
}

QString DoneLine::words() const { return words_label_->text(); }

void DoneLine::clear() {
    words_label_->clear();
    undo_button_->hide();
}

void DoneLine::say(const QString& words) {
    said_at_ = document_.undoStack().index();
    words_label_->setText(words);
    words_label_->setAccessibleName(words);
    undo_button_->show();
}

} // namespace ullage
