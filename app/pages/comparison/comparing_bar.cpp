// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/comparing_bar.h"

#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

namespace ullage {

ComparingBar::ComparingBar(QWidget* parent)
    : QFrame(parent), words_(new QLabel(this)), progress_(new QProgressBar(this)), cancel_(new_button("cancelComparingButton", tr("Cancel"))),
      resume_(new_button("resumeComparingButton", tr("Compare"))) {
    setObjectName(QStringLiteral("comparingBar"));
    make_panel(*this);
    words_->setObjectName(QStringLiteral("comparingLabel"));
    progress_->setTextVisible(false);
    progress_->setAccessibleName(tr("Units compared"));
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(spacing::page_margin_px, spacing::half_px, spacing::half_px, spacing::half_px);
    line->setSpacing(spacing::page_margin_px);
    line->addWidget(words_, 1);
    line->addWidget(progress_, 3);
    line->addWidget(cancel_);
    line->addWidget(resume_);
    connect(cancel_, &QPushButton::clicked, this, &ComparingBar::cancelAsked);
    connect(resume_, &QPushButton::clicked, this, &ComparingBar::resumeAsked);
    hide();
}

void ComparingBar::showProgress(int done, int of) {
    words_->setText(tr("Comparing units: %1 of %2").arg(done).arg(of));
    progress_->setRange(0, of);
    progress_->setValue(done);
    progress_->show();
    cancel_->show();
    resume_->hide();
    show();
}

void ComparingBar::showStopped(int waiting) {
    words_->setText(tr("Stopped: %1 units are still to be compared. What stands below is as it was before.").arg(waiting));
    words_->setWordWrap(true);
    progress_->hide();
    cancel_->hide();
    resume_->show();
    show();
}

} // namespace ullage
