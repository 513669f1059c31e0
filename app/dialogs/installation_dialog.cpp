// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/installation_dialog.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int installation_letters = 110, installation_lines = 34;
constexpr double of_screen = 0.9;

/// By shape and word, so that colour only helps.
QString state_html(InstallationRow::State state) {
    const Palette& palette = current_palette();
    const QString word = installation_word(state).toHtmlEscaped();
    switch (state) {
    case InstallationRow::State::good: return QStringLiteral("<span style='color:%1'>✓&nbsp;%2</span>").arg(palette.good.name(), word);
    case InstallationRow::State::note: return QStringLiteral("○&nbsp;%1").arg(word);
    case InstallationRow::State::fault: return QStringLiteral("<span style='color:%1'>▲&nbsp;%2</span>").arg(palette.fault_ink.name(), word);
    }
    return {};
}

QString rows_html(const QList<InstallationRow>& rows) {
    const QString soft = current_palette().soft.name(), line = current_palette().line.name();
    QString html = QStringLiteral("<table width='100%' cellspacing='0' cellpadding='4'>"), group;
    for (const InstallationRow& row : rows) {
        if (row.group != group) {
            group = row.group;
            html += QStringLiteral("<tr><td colspan='3' style='border-bottom:1px solid %1; padding-top:12px'><b>%2</b></td></tr>")
                        .arg(line, group.toHtmlEscaped());
        }
        html += QStringLiteral("<tr><td width='18%'>%1</td><td width='28%'>%2</td><td>%3")
                    .arg(state_html(row.state), row.subject.toHtmlEscaped(), row.found.toHtmlEscaped());
        if (!row.follows.isEmpty()) html += QStringLiteral("<br><span style='color:%1'>%2</span>").arg(soft, row.follows.toHtmlEscaped());
        html += QStringLiteral("</td></tr>");
    }
    return html + QStringLiteral("</table>");
}

} // namespace

InstallationDialog::InstallationDialog(Check check, QWidget* parent)
    : QDialog(parent), check_(std::move(check)), sentence_(new QLabel), table_(new QTextBrowser) {
    setObjectName(QStringLiteral("installationDialog"));
    setWindowTitle(tr("Check of the installation"));
    setModal(false);
    setAttribute(Qt::WA_DeleteOnClose);
    auto* head = new QLabel(windowTitle());
    set_text_style(*head, Tone::ink, TextSize::title);
    sentence_->setObjectName(QStringLiteral("installationLabel"));
    sentence_->setWordWrap(true);
    set_text_style(*sentence_, Tone::soft);
    table_->setObjectName(QStringLiteral("installationBrowser"));
    table_->setAccessibleName(tr("what was found"));
    table_->setFrameShape(QFrame::NoFrame);
    auto* buttons = new QHBoxLayout;
    const auto add = [&](const char* name, const QString& text) {
        auto* button = new QPushButton(text);
        button->setObjectName(QString::fromLatin1(name));
        button->setAutoDefault(false);
        buttons->addWidget(button);
        return button;
    };
    connect(add("copyInstallationButton", tr("&Copy as text")), &QPushButton::clicked, this,
            [this] { QGuiApplication::clipboard()->setText(installation_text(rows_)); });
    connect(add("checkAgainButton", tr("Check &again")), &QPushButton::clicked, this, &InstallationDialog::look);
    buttons->addStretch();
    auto* close = add("closeButton", tr("Close"));
    close->setDefault(true);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::group_gap_px, spacing::page_margin_px, spacing::group_gap_px, spacing::page_margin_px);
    column->setSpacing(spacing::panel_gap_px);
    column->addWidget(head);
    column->addWidget(sentence_);
    column->addWidget(table_, 1);
    column->addLayout(buttons);
    const QSize wanted(fontMetrics().averageCharWidth() * installation_letters, fontMetrics().height() * installation_lines);
    const QSize room = screen() ? screen()->availableSize() * of_screen : wanted;
    resize(wanted.boundedTo(room));
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, &InstallationDialog::showRows);
    look();
    table_->setFocus();
}

void InstallationDialog::look() {
    rows_ = check_();
    showRows();
}

void InstallationDialog::showRows() {
    const int place = table_->verticalScrollBar()->value();
    sentence_->setText(tr("%1 Each row says what was looked at, what was found, and what follows. The copy holds nothing of your logbooks.")
                           .arg(installation_sentence(rows_)));
    table_->setHtml(rows_html(rows_));
    table_->verticalScrollBar()->setValue(place);
}

} // namespace ullage
