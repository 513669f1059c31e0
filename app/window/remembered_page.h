// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/logbook_ahead.h"

#include <QString>

#include <memory>
#include <optional>
#include <string>

namespace ullage {

class Settings;

/// The page that was in sight when the program last ended.
struct RememberedPage {
    QString name;     ///< object name of the page
    std::string uuid; ///< of what it showed, such as a run; empty for pages that span all of the logbook
};

/// Nothing where the page last shown was of another logbook.
[[nodiscard]] std::optional<RememberedPage> remembered_page(const Settings& settings, const QString& logbook);
void remember_page(Settings& settings, const QString& logbook, const RememberedPage& page);

/// Begins to open the logbook that the program starts on: the one named, else the one that was open when the program last ended where that still
/// exists; null where there is none. For MainWindow::openAhead(). The clock must outlive it.
[[nodiscard]] std::unique_ptr<LogbookAhead> logbook_of_start(const Settings& settings, const Clock& clock, const std::optional<QString>& named = {});

} // namespace ullage
