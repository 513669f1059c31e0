// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "services/reminders.h"

#include <QWidget>

class QLabel;

namespace ullage {

/// The line above the page that calls for an overdue reading, whatever page is shown: which unit, since when and why, with the way to the
/// entry row and the three snoozes. Hidden while nothing is overdue. Follows the reminders.
class ReminderBar final : public QWidget {
    Q_OBJECT
public:
    /// Minutes of the three snoozes.
    static constexpr int snoozes_min[] = {5, 10, 20};

    ReminderBar(const Document& document, Reminders& reminders, QWidget* parent = nullptr);

    /// What it says; empty while it is hidden.
    [[nodiscard]] QString words() const;

signals:
    void readingAsked(const RunId& runUuid);

private:
    void refresh();

    const Document& document_;
    Reminders& reminders_;
    RunId run_uuid_; ///< the run that is called for
    QLabel *chip_, *words_;
};

} // namespace ullage
