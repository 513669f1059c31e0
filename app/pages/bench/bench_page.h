// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QWidget>

#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;

namespace ullage {

class BenchPanel;
class Reminders;

/// All running tests side by side, in the order of Ctrl+1, Ctrl+2, …: what each is at, its forecast, and when its next reading is due. They
/// share the room that there is. Follows reminders and document while it is in sight.
class BenchPage final : public QWidget {
    Q_OBJECT
public:
    BenchPage(Document& document, Reminders& reminders, QWidget* parent = nullptr);

    /// Reads everything anew.
    void refresh();

signals:
    void readingAsked(const RunId& runUuid);
    void ruleAsked(const RunId& runUuid);
    void startRunAsked();
    void displayAsked(); ///< over the whole screen

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void arrange();

    Document& document_;
    Reminders& reminders_;
    QLabel *about_label_, *empty_label_;
    QPushButton *display_button_, *start_button_;
    QScrollArea* scroll_;
    QWidget* empty_;
    QGridLayout* grid_;
    std::vector<BenchPanel*> panels_;
    int columns_ = 0;
};

} // namespace ullage
