// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/help_dialog.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>
#include <QVBoxLayout>

namespace ullage {

namespace {

// Within a screen of 1280x800.
constexpr QSize page_size(640, 560);
constexpr QSize markdown_size(920, 700);
constexpr double share_of_screen = 0.9;
constexpr double cell_padding_px = 5;
constexpr double table_gap_px = 4;
constexpr double heading_gap_px = 16;

/// As much more as the text is larger than usual, as far as the screen has room for it.
QSize grown(const QSize& usual, const QWidget& dialog) {
    constexpr double usual_line_px = 15;
    const QSize larger = usual * (dialog.fontMetrics().height() / usual_line_px);
    return usual.expandedTo(larger.boundedTo(dialog.screen()->availableSize() * share_of_screen));
}

/// A heading stands apart from what is above it and is smaller than the title of the page.
void dress(const QTextBlock& heading) {
    QTextBlockFormat apart;
    apart.setTopMargin(heading_gap_px);
    QTextCharFormat smaller;
    smaller.setProperty(QTextFormat::FontSizeAdjustment, heading.blockFormat().headingLevel() == 2 ? 1 : 0);
    QTextCursor words(heading);
    words.mergeBlockFormat(apart);
    words.select(QTextCursor::BlockUnderCursor);
    words.mergeCharFormat(smaller);
}

/// Lines between the cells and a ground below the heads, in the colours of the theme: Markdown says nothing of either.
void dress(QTextTable& table) {
    QTextTableFormat format = table.format();
    format.setBorder(1);
    format.setBorderCollapse(true);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(current_palette().line);
    format.setTopMargin(table_gap_px);
    format.setCellSpacing(0);
    format.setCellPadding(cell_padding_px);
    table.setFormat(format);
    for (int column = 0; column < table.columns(); ++column) {
        QTextTableCell cell = table.cellAt(0, column);
        QTextCharFormat head = cell.format();
        head.setBackground(current_palette().selection);
        cell.setFormat(head);
    }
}

} // namespace

HelpDialog::HelpDialog(QWidget* parent) : QDialog(parent), title_(new QLabel), text_(new QTextBrowser) {
    setObjectName(QStringLiteral("helpDialog"));
    setModal(false);
    set_text_style(*title_, Tone::ink, TextSize::title);
    text_->setObjectName(QStringLiteral("helpBrowser"));
    text_->setFrameShape(QFrame::NoFrame);
    text_->setAccessibleName(tr("help text"));
    auto* close = new QPushButton(tr("Close"));
    close->setObjectName(QStringLiteral("closeButton"));
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::group_gap_px, spacing::page_margin_px, spacing::group_gap_px, spacing::page_margin_px);
    column->setSpacing(spacing::panel_gap_px);
    column->addWidget(title_);
    column->addWidget(text_, 1);
    column->addLayout(buttons);
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, [this] {
        if (markdown_.isEmpty()) return;
        const int place = text_->verticalScrollBar()->value();
        renderMarkdown();
        text_->verticalScrollBar()->setValue(place);
    });
}

void HelpDialog::showPage(const QString& title, const QString& html) {
    markdown_.clear();
    text_->setHtml(html);
    resize(grown(page_size, *this).expandedTo(isVisible() ? size() : QSize()));
    comeUp(title);
}

void HelpDialog::showMarkdown(const QString& title, const QString& markdown) {
    markdown_ = markdown;
    renderMarkdown();
    resize(grown(markdown_size, *this).expandedTo(isVisible() ? size() : QSize()));
    comeUp(title);
}

void HelpDialog::renderMarkdown() {
    // Dressed before it is shown: what stands in the browser is laid out anew after each touch.
    auto* page = new QTextDocument(text_);
    page->setDefaultFont(text_->font());
    page->setMarkdown(markdown_);
    for (QTextFrame* frame : page->rootFrame()->childFrames())
        if (auto* table = qobject_cast<QTextTable*>(frame)) dress(*table);
    for (QTextBlock block = page->begin(); block.isValid(); block = block.next())
        if (block.blockFormat().headingLevel() > 0) dress(block);
    text_->setDocument(page);
}

void HelpDialog::comeUp(const QString& title) {
    setWindowTitle(title);
    title_->setText(title);
    show();
    raise();
    activateWindow();
}

} // namespace ullage
