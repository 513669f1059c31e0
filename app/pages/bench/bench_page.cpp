// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/bench_page.h"

#include "base/number.h"
#include "pages/bench/bench_facts.h"
#include "pages/bench/bench_panel.h"
#include "services/reminders.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

BenchPage::BenchPage(Document& document, Reminders& reminders, QWidget* parent)
    : QWidget(parent), document_(document), reminders_(reminders), about_label_(new QLabel),
      empty_label_(new QLabel(tr("No test is running. Start one: it then stands here with its gauge, its expected cut-off and its next "
                                 "reading until you end it, beside the others that run."))),
      display_button_(new QPushButton(tr("Full screen  F11"))), start_button_(new QPushButton(tr("Start run"))), scroll_(new QScrollArea),
      empty_(new QWidget), grid_(nullptr) {
    setObjectName(QStringLiteral("benchPage"));
    build();
    const auto follow = [this] {
        if (isVisible()) refresh();
    };
    connect(&reminders_, &Reminders::looked, this, follow);
}

void BenchPage::build() {
    auto* title = new QLabel(tr("Running tests"));
    set_text_style(*title, Tone::ink, TextSize::title);
    about_label_->setObjectName(QStringLiteral("benchPageAboutLabel"));
    set_text_style(*about_label_, Tone::soft);
    start_button_->setObjectName(QStringLiteral("benchStartButton"));
    make_primary(*start_button_);
    display_button_->setObjectName(QStringLiteral("benchDisplayButton"));
    display_button_->setToolTip(tr("A card for each running test over the whole screen, to be read from two metres"));
    connect(display_button_, &QPushButton::clicked, this, &BenchPage::displayAsked);
    connect(start_button_, &QPushButton::clicked, this, &BenchPage::startRunAsked);
    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::panel_gap_px);
    head->addWidget(title, 0, Qt::AlignBaseline);
    head->addWidget(about_label_, 1, Qt::AlignBaseline);
    head->addWidget(display_button_);
    head->addWidget(start_button_);

    auto* content = new QWidget;
    content->setProperty("page", true);
    grid_ = new QGridLayout(content);
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setSpacing(spacing::panel_gap_px);
    scroll_->setObjectName(QStringLiteral("benchScroll"));
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setWidget(content);

    empty_label_->setObjectName(QStringLiteral("noRunningTestsLabel"));
    empty_label_->setWordWrap(true);
    empty_label_->setAlignment(Qt::AlignCenter);
    set_text_style(*empty_label_, Tone::soft);
    auto* middle = new QVBoxLayout(empty_);
    middle->setContentsMargins(spacing::group_gap_px, spacing::group_gap_px, spacing::group_gap_px, spacing::group_gap_px);
    middle->addWidget(empty_label_, 1);

    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    page->setSpacing(spacing::grid_px + 2);
    page->addLayout(head);
    page->addWidget(scroll_, 1);
    page->addWidget(empty_, 1);
}

void BenchPage::refresh() {
    const auto entries = bench_entries(document_, reminders_);
    while (panels_.size() > entries.size()) {
        delete panels_.back();
        panels_.pop_back();
        columns_ = 0;
    }
    while (panels_.size() < entries.size()) {
        auto* panel = new BenchPanel;
        connect(panel, &BenchPanel::readingAsked, this, &BenchPage::readingAsked);
        connect(panel, &BenchPanel::ruleAsked, this, &BenchPage::ruleAsked);
        // The panel's button hides with the answer; its own press has to end first.
        connect(
            panel, &BenchPanel::snoozeAsked, this, [this](const RunId& run, int minutes) { reminders_.snooze(run, minutes); }, Qt::QueuedConnection);
        panels_.push_back(panel);
        columns_ = 0;
    }
    long overdue = 0;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        panels_[i]->setEntry(entries[i]);
        overdue += panels_[i]->entry().overdue ? 1 : 0;
    }
    scroll_->setVisible(!entries.empty());
    empty_->setVisible(entries.empty());
    display_button_->setVisible(!entries.empty());
    start_button_->setEnabled(!document_.units().empty() && !document_.isLooking());
    const auto count = text_of(say_count(static_cast<long>(entries.size()), phrases("ullage", "%n tests", "%n test")));
    about_label_->setText(entries.empty() ? QString() : overdue > 0 ? tr("%1, %2 with a reading due").arg(count).arg(overdue) : count);
    arrange();
}

void BenchPage::arrange() {
    const int room_px = width() - 2 * spacing::page_margin_px - scroll_->verticalScrollBar()->sizeHint().width();
    const int columns = std::clamp(room_px / BenchPanel::comfortableWidth(), 1, std::max(1, static_cast<int>(panels_.size())));
    if (columns == columns_) return;
    for (int i = 0; i < static_cast<int>(panels_.size()); ++i) grid_->addWidget(panels_[static_cast<std::size_t>(i)], i / columns, i % columns);
    for (int column = 0; column < std::max(columns, columns_); ++column) grid_->setColumnStretch(column, column < columns ? 1 : 0);
    const int rows = (static_cast<int>(panels_.size()) + columns - 1) / columns;
    // Read once: giving a row beyond the last a stretch makes the grid grow. All rows share the height that there is.
    const int last_row = std::max(rows, grid_->rowCount() - 1);
    for (int row = 0; row <= last_row; ++row) grid_->setRowStretch(row, row < rows ? 1 : 0);
    columns_ = columns;
}

void BenchPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void BenchPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void BenchPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange || grid_ == nullptr) return;
    columns_ = 0;
    arrange();
}

} // namespace ullage
