// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/reading.h"
#include "model/run_record.h"

#include <QString>

#include <optional>

namespace ullage {

/// What stands in the fields of an entry row, as typed.
struct EntryTexts {
    QString time, gauge, register_value, watts, display_watts, remark;
    std::optional<MarkKind> mark;
    QString second_register{}; ///< of a run with two meters

    bool operator==(const EntryTexts&) const = default;
    /// True when there is nothing in any field.
    [[nodiscard]] bool empty() const { return *this == EntryTexts(); }
    /// One line of JSON with the fields that are not empty; empty for an empty row.
    [[nodiscard]] QString draft() const;
    /// What draft() kept; an unreadable text gives an empty row.
    [[nodiscard]] static EntryTexts fromDraft(const QString& draft);
    /// The texts of a reading, for amending it; the time as the clocks of `zone` show it: "14 May 2027 23:50", with seconds where there are any.
    [[nodiscard]] static EntryTexts of(const ReadingValues& values, const std::string& zone);
};

/// Which field of an entry row an error is about.
enum class EntryField { time, gauge, register_value, second_register, watts, display_watts, mark, remark };

/// The values that entry texts mean, or the first field that cannot be used and why.
struct EntryReading {
    std::optional<ReadingValues> values;
    EntryField field = EntryField::gauge;
    QString message; ///< one sentence; empty when there are values
};

/// Register steps of the meters that are read, Wh; absent where they are not stated.
struct RegisterSteps {
    std::optional<double> first_wh{}, second_wh{};
};
[[nodiscard]] RegisterSteps steps_of(const RunRecord& record);

/// Reads the fields as a tester types them (see formats/entry/entry_text.h), seen from `now_ms` in `zone`. A row that says
/// nothing but a time is refused.
[[nodiscard]] EntryReading read_entry(const EntryTexts& texts, UtcMs now_ms, const std::string& zone, const RegisterSteps& steps = {});

} // namespace ullage
