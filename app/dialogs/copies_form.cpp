// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/copies_form.h"

#include "dialogs/photo_words.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QDate>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int copy_lines = 8;

} // namespace

CopiesForm::CopiesForm(std::vector<BackupCopy> copies, const QString& logbook, Facts facts, QWidget* parent)
    : FormDialog(tr("Copies of %1").arg(logbook), tr("Save as a logbook…"), parent), copies_(std::move(copies)), facts_(std::move(facts)),
      list_(new QListWidget(this)), look_(new QPushButton(tr("&What it holds"), this)) {
    setObjectName(QStringLiteral("copiesForm"));
    addParagraph(QStringLiteral("copiesHead"),
                 tr("A copy is saved as a logbook of its own, which is then opened. The copy and the logbook stay as they are."));
    list_->setObjectName(QStringLiteral("copiesList"));
    list_->setAccessibleName(tr("Copies"));
    list_->setMinimumHeight(std::min(copy_lines, static_cast<int>(copies_.size()) + 1) * (list_->fontMetrics().height() + spacing::half_px));
    for (const BackupCopy& copy : copies_) {
        const QString day = QLocale().toString(QDate::fromString(text_of(copy.day), Qt::ISODate), QLocale::LongFormat);
        auto* item = new QListWidgetItem(tr("%1, %2", "day and size of a copy").arg(day, photo_size_words(copy.size_bytes)), list_);
        item->setToolTip(shown_path(path_text(copy.path.string())));
    }
    addWide(list_);
    look_->setObjectName(QStringLiteral("lookButton"));
    look_->setAutoDefault(false);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(look_);
    line->addStretch();
    addWide(buttons);
    words_ = addParagraph(QStringLiteral("copyWords"), QString());
    connect(look_, &QPushButton::clicked, this, &CopiesForm::lookAt);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        const auto known = known_.find(row);
        words_->setText(known == known_.end() ? shown_path(path_text(copies_[static_cast<std::size_t>(row)].path.string())).toHtmlEscaped()
                                              : known->second.toHtmlEscaped());
    });
    list_->setCurrentRow(0);
}

void CopiesForm::lookAt() {
    const int row = list_->currentRow();
    auto [known, fresh] = known_.try_emplace(row);
    if (fresh) known->second = facts_(copies_[static_cast<std::size_t>(row)]);
    words_->setText(known->second.toHtmlEscaped());
    fit();
}

void CopiesForm::read() { chosen_ = static_cast<std::size_t>(std::max(0, list_->currentRow())); }

} // namespace ullage
