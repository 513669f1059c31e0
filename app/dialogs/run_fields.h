// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/meter.h"
#include "model/run.h"

#include <QVariant>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

class QComboBox;

namespace ullage {

// What the form that starts a run and the form that edits one have in common.

/// Chooses the entry with this data; the first one where there is none.
void choose_data(QComboBox& combo, const QVariant& value);

/// "none" and every meter, by uuid; chooses `chosen`, else "none".
void fill_meter_choice(QComboBox& combo, const std::vector<Meter>& meters, const std::optional<MeterId>& chosen);
[[nodiscard]] std::optional<MeterId> chosen_meter(const QComboBox& combo);

/// Every time zone that is named by region and place, and UTC; another can be typed. Shows `zone`.
void fill_zone_choice(QComboBox& combo, const std::string& zone);

/// Started full: not stated, yes, no.
void fill_full_choice(QComboBox& combo, const std::optional<bool>& chosen);
[[nodiscard]] std::optional<bool> chosen_full(const QComboBox& combo);

/// Source of a charge: not stated, the wall, the PV input.
void fill_charge_source_choice(QComboBox& combo, const std::optional<ChargeSource>& chosen);
[[nodiscard]] std::optional<ChargeSource> chosen_charge_source(const QComboBox& combo);

/// A temperature of a bench in degrees Celsius: "18", "18 °C", "64 °F". Errors: no number, below −60 °C or above 80 °C.
[[nodiscard]] Result<double> parse_ambient_c(std::string_view text);

/// How late the end of a run may have been noticed, in minutes: "2", "2 min", "1.5 h"; 0 where it was noted as it happened. Errors: what is not
/// understood, or negative.
[[nodiscard]] Result<double> parse_noticed_min(std::string_view text);

} // namespace ullage
