// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QList>
#include <QString>

#include <optional>
#include <string>

namespace ullage {

/// One claim of a unit in words.
struct ClaimText {
    QString name;
    QString value; ///< empty: not stated
};

/// The claims of a unit in a fixed order, each with its unit.
[[nodiscard]] QList<ClaimText> unit_claims(const Unit& unit);

/// What says most about a unit: the mean of its repeated drains, with the latest of them; else a drain, chosen as CompareRows::one_per_unit
/// does, and with how well drains repeat where it was from full to cut-off.
struct RepresentativeRun {
    RunId run_uuid;
    Quantity delivered; ///< "delivered_wh"
    QString words;      ///< where the value comes from: "measured, drain 14 May, 64 W"
};

/// Absent without a drain of known delivered energy.
[[nodiscard]] std::optional<RepresentativeRun> representative_run(const Document& document, const UnitId& unit_uuid);

} // namespace ullage
