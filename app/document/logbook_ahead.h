// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/logbook_content.h"

#include <QString>

#include <atomic>
#include <functional>
#include <future>
#include <string>

namespace ullage {

/// As open_logbook(), with what the first page asks for worked out as long as `goes_on`: of the unit `shown`, or of the one whose run that is, all
/// that its runs say, else what each unit's runs say together. A unit with very many readings is left to the window, which shows how far that is. Any
/// thread.
[[nodiscard]] Result<OpenedLogbook> open_judged(const QString& path, const Clock& clock, const std::string& shown,
                                                const std::function<bool()>& goes_on, const std::atomic<bool>* cancelled = nullptr);

/// A logbook that is opened in a thread of its own while the program makes its window. What its runs say is worked out there too, until the window
/// asks for the logbook. Where it is given up, the file is closed as if it had been opened and closed.
class LogbookAhead {
public:
    /// Begins at once. `shown` is the unit or run that the first page shows; empty where it is not known. The clock must outlive it.
    LogbookAhead(QString path, const Clock& clock, std::string shown = {});
    ~LogbookAhead();
    LogbookAhead(const LogbookAhead&) = delete;
    LogbookAhead& operator=(const LogbookAhead&) = delete;

    [[nodiscard]] const QString& path() const { return path_; }
    /// Waits for what open_logbook() gives; gives up, with an error, soon after `cancelled` is set. To be called once, from any thread.
    [[nodiscard]] Result<OpenedLogbook> take(const std::atomic<bool>& cancelled);

private:
    QString path_;
    std::atomic<bool> cancelled_{false};
    std::atomic<bool> wanted_{false};
    std::future<Result<OpenedLogbook>> opened_; // last: it goes first, and waits for its thread
};

} // namespace ullage
