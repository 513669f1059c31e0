// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/other_logbooks_line.h"

#include "document/unit_comparer.h"
#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ullage {

OtherLogbooksLine::OtherLogbooksLine(UnitComparer& comparer, QWidget* parent) : QWidget(parent), comparer_(comparer), line_(new QHBoxLayout(this)) {
    setObjectName(QStringLiteral("otherLogbooksLine"));
    line_->setContentsMargins(0, 0, 0, 0);
    connect(&comparer_, &UnitComparer::logbooksChanged, this, &OtherLogbooksLine::showLogbooks);
    showLogbooks();
}

void OtherLogbooksLine::showLogbooks() {
    // A button that has just been clicked must outlive its click.
    if (names_) names_->deleteLater();
    names_ = new QWidget(this);
    auto* names = new QHBoxLayout(names_);
    names->setContentsMargins(0, 0, 0, 0);
    names->setSpacing(spacing::grid_px);
    auto* label = new QLabel(tr("with the units of"), names_);
    set_text_style(*label, Tone::soft);
    names->addWidget(label);
    for (const OtherLogbook& other : comparer_.logbooks()) {
        const QString name = shown_path(comparer_.sourceName(other.path));
        auto* button = new_button("otherLogbookButton", other.error.isEmpty() ? name + QStringLiteral("  ✕") : tr("%1: not read  ✕").arg(name));
        button->setAccessibleName(tr("Leave out the units of %1").arg(name));
        const QString path = shown_path(other.path);
        button->setToolTip(other.error.isEmpty() ? tr("%1, as it was when it was read; click to leave its units out").arg(path)
                                                 : tr("%1\n%2; click to leave it out").arg(path, other.error));
        connect(button, &QPushButton::clicked, this, [this, chosen = other.path] { emit removeAsked(chosen); });
        names->addWidget(button);
    }
    names->addStretch();
    line_->addWidget(names_);
    setVisible(!comparer_.logbooks().empty());
}

} // namespace ullage
