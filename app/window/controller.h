// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QObject>
#include <QString>

class QMainWindow;

namespace ullage {

class MessageBar;
class PageStack;
class Prompts;
class Settings;

/// What the controllers of the window work with. All of it must outlive them.
struct Workplace {
    QMainWindow& window; ///< above which forms are opened
    Document& document;
    Settings& settings;
    Prompts& prompts;
    MessageBar& messages;
    PageStack& pages;
};

/// One sort of work of the window: its commands, the forms that they open, and what they tell. The window connects menus and pages to it.
class Controller : public QObject {
    Q_OBJECT
public:
    /// It belongs to the window.
    explicit Controller(const Workplace& at);

protected:
    /// Shows an error, or clears the message bar after a success.
    void tell(const Result<void>& outcome);
    /// Where files are asked for first: the folder of the last one.
    [[nodiscard]] QString startFolder() const;
    /// Where what comes out of the logbook is saved first: beside it.
    [[nodiscard]] QString saveFolder() const;
    [[nodiscard]] static QString logbookFilter(); ///< which files are logbooks, for asking for one

    QMainWindow* window_;
    Document& document_;
    Settings& settings_;
    Prompts& prompts_;
    MessageBar* messages_;
    PageStack& pages_;
};

} // namespace ullage
