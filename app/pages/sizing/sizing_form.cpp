// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/sizing/sizing_form.h"

#include "style/roles.h"
#include "style/spacing.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int form_columns = 4;
constexpr double unstated = -0.1; ///< below every range that begins at 0: shown as a dash

/// A share of 1 that people read and type in per cent.
auto percent_of(double SizingChoices::*share) {
    return [share](const SizingChoices& choices) { return 100 * choices.*share; };
}
auto take_percent(double SizingChoices::*share) {
    return [share](SizingChoices& choices, double value) { choices.*share = value / 100; };
}
auto value_of(double SizingChoices::*number) {
    return [number](const SizingChoices& choices) { return choices.*number; };
}
auto take(double SizingChoices::*number) {
    return [number](SizingChoices& choices, double value) { choices.*number = value; };
}

} // namespace

SizingForm::SizingForm(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("sizingForm"));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(spacing::grid_px);
    grid->setVerticalSpacing(spacing::half_px);
    for (int column = 0; column < form_columns; ++column) grid->setColumnStretch(column, 1);
    addGroup(*grid, tr("Wanted"));
    addField(*grid, "autonomyDays", tr("Days without sun"), tr(" d"), {0.1, 365, 0.5, 1},
             tr("Days of autonomy: how long the units are to carry the list alone"), value_of(&SizingChoices::autonomy_days),
             take(&SizingChoices::autonomy_days));
    addField(
        *grid, "units", tr("Units in the chart"), {}, {1, most_units, 1, 0}, tr("Units side by side in the chart of the charge"),
        [](const SizingChoices& choices) { return static_cast<double>(choices.units); },
        [](SizingChoices& choices, double value) { choices.units = static_cast<int>(value); });
    addGroup(*grid, tr("Sun"));
    addField(*grid, "peakSunHours", tr("Peak-sun hours"), tr(" h/d"), {0.1, 15, 0.1, 1},
             tr("Hours a day at 1 kW/m² on the module plane, in the worst month that counts"), value_of(&SizingChoices::peak_sun_hours),
             take(&SizingChoices::peak_sun_hours));
    addField(*grid, "derating", tr("Derating"), tr(" %"), {1, 100, 1, 0},
             tr("What is left of the array's label at the battery: heat, dust, wiring, charging"), percent_of(&SizingChoices::derating),
             take_percent(&SizingChoices::derating));
    addField(*grid, "arrayToLoad", tr("Array to load"), {}, {1, 10, 0.05, 2},
             tr("Array energy over daily load: 1.1 to 1.2 for ordinary loads, 1.3 and more for critical ones"),
             value_of(&SizingChoices::array_to_load), take(&SizingChoices::array_to_load));
    addField(
        *grid, "array", tr("Array there is"), tr(" W"), {unstated, 1e6, 50, 0}, tr("Left at –, the array is the one that the rule asks for"),
        [](const SizingChoices& choices) { return choices.array_w.value_or(unstated); },
        [](SizingChoices& choices, double value) { choices.array_w = value > 0 ? std::optional(value) : std::nullopt; });
    addMonths(*grid);
    addGroup(*grid, tr("Untested units, at the socket"));
    addField(*grid, "expectLower", tr("Expected from"), tr(" % of rated"), {1, 110, 1, 0}, tr("Common practice: 75 to 80 %"),
             percent_of(&SizingChoices::expected_lower), take_percent(&SizingChoices::expected_lower));
    addField(*grid, "expectUpper", tr("to"), tr(" % of rated"), {1, 110, 1, 0}, tr("Common practice: 75 to 80 %"),
             percent_of(&SizingChoices::expected_upper), take_percent(&SizingChoices::expected_upper));
    addBattery(*grid);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    column->addLayout(grid);
    column->addStretch();
    setChoices({});
}

void SizingForm::addBattery(QGridLayout& grid) {
    addGroup(grid, tr("Battery by rule, a cross-check"));
    addField(grid, "inverterEfficiency", tr("Inverter efficiency"), tr(" %"), {1, 100, 1, 0}, {}, percent_of(&SizingChoices::inverter_efficiency),
             take_percent(&SizingChoices::inverter_efficiency));
    addField(grid, "depth", tr("Deepest discharge"), tr(" %"), {1, 100, 5, 0}, {}, percent_of(&SizingChoices::most_depth),
             take_percent(&SizingChoices::most_depth));
    addField(grid, "endOfLife", tr("Left at end of life"), tr(" %"), {1, 100, 5, 0}, {}, percent_of(&SizingChoices::end_of_life),
             take_percent(&SizingChoices::end_of_life));
    addField(grid, "margin", tr("Margin"), {}, {1, 2, 0.05, 2}, tr("1.10 to 1.25 (IEEE 1013)"), value_of(&SizingChoices::margin),
             take(&SizingChoices::margin));
    addField(grid, "temperatureFactor", tr("Temperature factor"), {}, {1, 3, 0.05, 2},
             tr("1 for lithium with thermal control; lead-acid in the cold more"), value_of(&SizingChoices::temperature_factor),
             take(&SizingChoices::temperature_factor));
}

void SizingForm::addGroup(QGridLayout& grid, const QString& title) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::group);
    label->setContentsMargins(0, spacing::half_px, 0, 0);
    grid.addWidget(label, grid.rowCount(), 0, 1, form_columns);
    place_ = 0;
}

void SizingForm::addField(QGridLayout& grid, const char* key, const QString& title, const QString& suffix, const Range& range, const QString& tip,
                          std::function<double(const SizingChoices&)> get, std::function<void(SizingChoices&, double)> set) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::caption);
    auto* spin = new QDoubleSpinBox;
    spin->setObjectName(QLatin1String(key) + QStringLiteral("Spin"));
    spin->setAccessibleName(title);
    spin->setToolTip(tip);
    spin->setDecimals(range.low == unstated ? 1 : range.decimals); // the dash needs its place below 0
    spin->setRange(range.low, range.high);
    spin->setSingleStep(range.step);
    spin->setSuffix(suffix);
    spin->setKeyboardTracking(false);
    if (range.low == unstated) spin->setSpecialValueText(QStringLiteral("–"));
    label->setBuddy(spin);
    const int row = grid.rowCount() - (place_ % 2 == 0 ? 0 : 2), column = place_ % 2 * 2;
    grid.addWidget(label, row, column, 1, 2);
    grid.addWidget(spin, row + 1, column, 1, 2);
    ++place_;
    fields_.push_back({QLatin1String(key), spin, std::move(get), std::move(set)});
    connect(spin, &QDoubleSpinBox::valueChanged, this, [this] {
        if (!filling_) emit changed();
    });
}

void SizingForm::addMonths(QGridLayout& grid) {
    addGroup(grid, tr("Peak-sun hours by month, h/d"));
    for (int month = 0; month < months_of_year; ++month) {
        const QString name = QLocale().standaloneMonthName(month + 1, QLocale::ShortFormat);
        auto* label = new QLabel(name);
        set_text_style(*label, Tone::soft, TextSize::caption);
        auto* spin = new QDoubleSpinBox;
        spin->setObjectName(QStringLiteral("month%1Spin").arg(month + 1));
        spin->setAccessibleName(tr("Peak-sun hours in %1").arg(QLocale().standaloneMonthName(month + 1)));
        spin->setDecimals(1);
        spin->setRange(unstated, 15);
        spin->setSingleStep(0.1);
        spin->setSpecialValueText(QStringLiteral("–"));
        spin->setButtonSymbols(QAbstractSpinBox::NoButtons);
        spin->setKeyboardTracking(false);
        label->setBuddy(spin);
        const int row = grid.rowCount() - (month % form_columns == 0 ? 0 : 2), column = month % form_columns;
        grid.addWidget(label, row, column);
        grid.addWidget(spin, row + 1, column);
        const auto at = static_cast<std::size_t>(month);
        fields_.push_back(
            {QStringLiteral("month%1").arg(month + 1), spin,
             [at](const SizingChoices& choices) { return choices.month_sun_hours[at].value_or(unstated); },
             [at](SizingChoices& choices, double value) { choices.month_sun_hours[at] = value >= 0 ? std::optional(value) : std::nullopt; }});
        connect(spin, &QDoubleSpinBox::valueChanged, this, [this] {
            if (!filling_) emit changed();
        });
    }
}

SizingChoices SizingForm::choices() const {
    SizingChoices choices;
    for (const Field& field : fields_) field.set(choices, field.spin->value());
    if (choices.expected_lower > choices.expected_upper) std::swap(choices.expected_lower, choices.expected_upper);
    return choices;
}

void SizingForm::setChoices(const SizingChoices& choices) {
    filling_ = true;
    for (const Field& field : fields_) field.spin->setValue(field.get(choices));
    filling_ = false;
    emit changed();
}

QString SizingForm::text() const {
    QStringList parts;
    for (const Field& field : fields_) parts << field.key + QLatin1Char('=') + QString::number(field.spin->value(), 'g', 10);
    return parts.join(QLatin1Char(';'));
}

void SizingForm::setText(const QString& text) {
    filling_ = true;
    for (const QString& part : text.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        const auto key = part.section(QLatin1Char('='), 0, 0);
        bool number = false;
        const double value = part.section(QLatin1Char('='), 1).toDouble(&number);
        const auto field = std::ranges::find(fields_, key, &Field::key);
        if (number && field != fields_.end()) field->spin->setValue(value);
    }
    filling_ = false;
    emit changed();
}

} // namespace ullage
