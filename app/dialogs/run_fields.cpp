// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/run_fields.h"

#include "base/number.h"
#include "dialogs/field_text.h"
#include "style/words.h"

#include <QComboBox>
#include <QCompleter>
#include <QTimeZone>

namespace ullage {

namespace {

int full_code(const std::optional<bool>& full) { return !full ? -1 : *full ? 1 : 0; }

constexpr double coldest_c = -60, hottest_c = 80;

} // namespace

void choose_data(QComboBox& combo, const QVariant& value) {
    const int at = combo.findData(value);
    combo.setCurrentIndex(at < 0 ? 0 : at);
}

void fill_meter_choice(QComboBox& combo, const std::vector<Meter>& meters, const std::optional<MeterId>& chosen) {
    combo.addItem(meters.empty() ? tr("none yet: gauge only") : tr("none"), QString());
    for (const auto& meter : meters) combo.addItem(text_of(meter.name), raw_text(meter.uuid));
    choose_data(combo, raw_text(chosen.value_or(MeterId())));
}

std::optional<MeterId> chosen_meter(const QComboBox& combo) {
    const auto meter = id_of<MeterId>(combo.currentData().toString());
    return meter.empty() ? std::nullopt : std::optional(meter);
}

void fill_zone_choice(QComboBox& combo, const std::string& zone) {
    combo.setEditable(true);
    combo.setInsertPolicy(QComboBox::NoInsert);
    for (const auto& id : QTimeZone::availableTimeZoneIds()) {
        // Only the zones named by region; the others are doubles or fixed offsets.
        if (id.contains('/') && !id.startsWith("Etc/") && !id.startsWith("SystemV/")) combo.addItem(QString::fromLatin1(id));
    }
    combo.insertItem(0, QStringLiteral("UTC"));
    combo.completer()->setFilterMode(Qt::MatchContains);
    combo.completer()->setCompletionMode(QCompleter::PopupCompletion);
    combo.setCurrentText(raw_text(zone));
}

void fill_full_choice(QComboBox& combo, const std::optional<bool>& chosen) {
    combo.addItem(tr("not stated"), -1);
    combo.addItem(tr("yes, full"), 1);
    combo.addItem(tr("no"), 0);
    choose_data(combo, full_code(chosen));
}

std::optional<bool> chosen_full(const QComboBox& combo) {
    const int full = combo.currentData().toInt();
    return full < 0 ? std::nullopt : std::optional(full == 1);
}

void fill_charge_source_choice(QComboBox& combo, const std::optional<ChargeSource>& chosen) {
    combo.addItem(tr("not stated"), 0);
    combo.addItem(tr("the wall"), static_cast<int>(ChargeSource::wall));
    combo.addItem(tr("the PV input"), static_cast<int>(ChargeSource::pv));
    choose_data(combo, chosen ? static_cast<int>(*chosen) : 0);
}

std::optional<ChargeSource> chosen_charge_source(const QComboBox& combo) {
    const int source = combo.currentData().toInt();
    return source == 0 ? std::nullopt : std::optional(static_cast<ChargeSource>(source));
}

Result<double> parse_ambient_c(std::string_view text) {
    const auto typed = trimmed(text);
    const bool fahrenheit = !typed.empty() && (typed.back() == 'F' || typed.back() == 'f');
    auto parsed = number_in({{"°C", 1}, {"C", 1}, {"°F", 1}, {"F", 1}, {"°", 1}}, {{}, false})(typed);
    if (!parsed) return parsed;
    const double ambient_c = fahrenheit ? (parsed.value() - 32) / 1.8 : parsed.value();
    if (ambient_c < coldest_c || ambient_c > hottest_c)
        return Error{Failure::bad_input,
                     say(phrase("dialogs", "`%1` is outside what a bench can be"), typed),
                     {},
                     say(phrase("dialogs", "enter degrees Celsius, such as 18"))};
    return ambient_c;
}

Result<double> parse_noticed_min(std::string_view text) {
    static const auto parse = number_in({{"min", 1}, {"h", 60}}, {{}, false});
    const auto minutes = parse(text);
    if (minutes && minutes.value() < 0)
        return Error{Failure::bad_input,
                     say(phrase("dialogs", "nobody notices an end before it happens")),
                     {},
                     say(phrase("dialogs", "type 0 where it was noted as it happened"))};
    return minutes;
}

} // namespace ullage
