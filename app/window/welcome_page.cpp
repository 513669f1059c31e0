// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/welcome_page.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QDir>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

namespace {

constexpr int widest_px = 880;

QPushButton* button(const QString& name, const QString& text, bool primary) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    if (primary) make_primary(*made);
    return made;
}

QWidget* step(int number, const QString& title, const QString& text) {
    auto* panel = new QFrame;
    make_panel(*panel);
    auto* figure = new QLabel(QString::number(number));
    set_text_style(*figure, Tone::accent, TextSize::figure);
    auto* head = new QLabel(QStringLiteral("<b>%1</b>").arg(title.toHtmlEscaped()));
    set_text_style(*head, Tone::ink);
    head->setWordWrap(true);
    auto* words = new QLabel(text);
    words->setWordWrap(true);
    set_text_style(*words, Tone::soft);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::page_margin_px);
    column->setSpacing(spacing::half_px);
    column->addWidget(figure);
    column->addWidget(head);
    column->addWidget(words);
    column->addStretch();
    return panel;
}

} // namespace

WelcomePage::WelcomePage(QWidget* parent) : QWidget(parent), lead_(new QLabel), recent_(new QWidget), recent_list_(new QVBoxLayout(recent_)) {
    setObjectName(QStringLiteral("welcomePage"));
    auto* title = new QLabel(tr("Ullage"));
    set_text_style(*title, Tone::ink, TextSize::figure);
    lead_->setObjectName(QStringLiteral("leadLabel"));
    lead_->setWordWrap(true);
    set_text_style(*lead_, Tone::soft);

    auto* recent_head = new QLabel(tr("Lately open"));
    set_text_style(*recent_head, Tone::soft, TextSize::group);
    recent_list_->setContentsMargins(0, 0, 0, 0);
    recent_list_->setSpacing(2);
    recent_list_->addWidget(recent_head);

    auto* middle = new QWidget;
    middle->setMaximumWidth(widest_px);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::page_margin_px);
    column->addWidget(title);
    column->addWidget(lead_);
    column->addWidget(makeSteps());
    column->addWidget(makeButtons());
    column->addWidget(recent_);
    auto* across = new QHBoxLayout;
    across->addStretch(1);
    across->addWidget(middle, 100);
    across->addStretch(1);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::group_gap_px, spacing::page_margin_px, spacing::group_gap_px, spacing::page_margin_px);
    page->addStretch(1);
    page->addLayout(across);
    page->addStretch(2);
    setLogbookOpen(false);
    setRecentFiles({});
}

QWidget* WelcomePage::makeSteps() {
    auto* steps = new QWidget;
    auto* line = new QHBoxLayout(steps);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::panel_gap_px);
    line->addWidget(
        step(1, tr("Add the unit and the meter"), tr("Write down what the maker claims, and what the meter's data sheet says of its error.")), 1);
    line->addWidget(step(2, tr("Start a run and note readings"),
                         tr("Every so often enter what the unit's gauge and the meter's register show. Each is on the disk at once.")),
                    1);
    line->addWidget(step(3, tr("Read the usable fraction and compare"),
                         tr("See how much of the label reaches the socket, how sure that is, and which unit delivers more.")),
                    1);
    return steps;
}

QWidget* WelcomePage::makeButtons() {
    auto* box = new QWidget;
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    const auto add = [this, line](QList<QPushButton*>& group, const char* name, const QString& text, void (WelcomePage::*asked)()) {
        auto* made = button(QString::fromLatin1(name), text, group.isEmpty());
        connect(made, &QPushButton::clicked, this, asked);
        group.append(made);
        line->addWidget(made);
    };
    add(without_logbook_, "newLogbookButton", tr("New logbook"), &WelcomePage::newLogbookAsked);
    add(without_logbook_, "openLogbookButton", tr("Open logbook"), &WelcomePage::openLogbookAsked);
    add(without_logbook_, "sampleLogbookButton", tr("Open the sample logbook"), &WelcomePage::sampleLogbookAsked);
    add(with_logbook_, "addUnitButton", tr("Add unit"), &WelcomePage::addUnitAsked);
    add(with_logbook_, "addMeterButton", tr("Add meter"), &WelcomePage::addMeterAsked);
    add(with_logbook_, "importSheetButton", tr("Import run sheet"), &WelcomePage::importAsked);
    line->addStretch();
    return box;
}

void WelcomePage::setLogbookOpen(bool open) {
    open_ = open;
    lead_->setText(open ? tr("This logbook is empty. Begin with the unit under test, or bring in a run sheet that you have.")
                        : tr("How much of the energy printed on a battery storage unit reaches the socket, how sure is that, "
                             "and can its gauge be trusted?"));
    for (auto* shown : without_logbook_) shown->setVisible(!open);
    for (auto* shown : with_logbook_) shown->setVisible(open);
    recent_->setVisible(!open_ && any_recent_);
}

void WelcomePage::setRecentFiles(const QStringList& files) {
    while (recent_list_->count() > 1) {
        auto* item = recent_list_->takeAt(1);
        delete item->widget();
        delete item;
    }
    for (const auto& file : files) {
        auto* link =
            new QPushButton(QStringLiteral("%1   %2").arg(shown_path(QFileInfo(file).fileName()), shown_path(QFileInfo(file).absolutePath())));
        link->setObjectName(QStringLiteral("recentFileButton"));
        link->setToolTip(shown_path(file));
        make_quiet(*link);
        connect(link, &QPushButton::clicked, this, [this, file] { emit recentFileAsked(file); });
        recent_list_->addWidget(link, 0, Qt::AlignLeft);
    }
    any_recent_ = !files.isEmpty();
    recent_->setVisible(!open_ && any_recent_);
}

} // namespace ullage
