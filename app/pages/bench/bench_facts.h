// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/parts/strip_figure.h"

#include <QString>

#include <optional>
#include <vector>

namespace ullage {

class Reminders;

/// What the bench shows of one running test.
struct BenchEntry {
    RunId run_uuid;
    int number = 0;                   ///< its place, from 1
    QString unit, about;              ///< "Osk 1200", "drain, 14 May, socket meter A"
    QString kind;                     ///< "drain"
    QString since, age;               ///< "since Wed 18:10, 8 h 20", "read 12 min ago"; empty before the first reading
    QString keys;                     ///< "Ctrl+1"; empty beyond the ninth
    std::vector<StripFigure> figures; ///< elapsed, age of the last reading, gauge, delivered, cut-off (of a charge: its peak), next reading
    QString cut_off_label, cut_off_in, cut_off_at; ///< "cut-off, whichever is right", "in 3.1 to 4.6 h" from now, "05:10 to 06:40"; empty of a charge
    QString due;                                   ///< "in 12 min", "overdue 3 min", or why nothing is due
    QString due_at;                                ///< "02:40"; empty where nothing is due
    std::optional<double> due_share;               ///< of the time from the last reading to the next that is left, 0 to 1
    bool asked = false;                            ///< there is a reminder
    bool counting = false;                         ///< there is a moment to count down to
    bool overdue = false;

    /// One of `figures`, by key. Precondition: it is among them.
    [[nodiscard]] const StripFigure& figure(const char* key) const;
};

constexpr int most_bench_keys = 9; ///< tests that have a key of their own

/// All running tests in the order of Ctrl+1, Ctrl+2, …, seen from now.
[[nodiscard]] std::vector<BenchEntry> bench_entries(const Document& document, const Reminders& reminders);

} // namespace ullage
