// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QLabel;
class QTextBrowser;

namespace ullage {

/// A page of help in a window of its own, beside which work goes on.
class HelpDialog final : public QDialog {
    Q_OBJECT
public:
    explicit HelpDialog(QWidget* parent = nullptr);

    /// Shows another page.
    void showPage(const QString& title, const QString& html);
    /// Shows another page that is written in Markdown, with room for its tables.
    void showMarkdown(const QString& title, const QString& markdown);

private:
    void renderMarkdown();
    void comeUp(const QString& title);

    QLabel* title_;
    QTextBrowser* text_;
    QString markdown_; ///< what is shown; empty where that is HTML
};

} // namespace ullage
