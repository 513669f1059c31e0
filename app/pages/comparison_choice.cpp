// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison_choice.h"

#include "pages/comparison_pictures.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QButtonGroup>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int as_tested = 0, at_load = 1;
constexpr double usual_load_w = 120;

} // namespace

ComparisonChoice::ComparisonChoice(QWidget* parent) : QWidget(parent), way_group_(new QButtonGroup(this)), filter_edit_(new QLineEdit(this)) {
    setObjectName(QStringLiteral("comparisonChoice"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(spacing::grid_px);
    auto* first = new QHBoxLayout;
    first->setSpacing(spacing::grid_px);
    const std::pair<const char*, QString> ways[] = {{"asTestedButton", tr("As tested")}, {"atLoadButton", tr("At one load")}};
    for (int way = as_tested; way <= at_load; ++way) {
        auto* button = new QPushButton(ways[way].second, this);
        button->setObjectName(QLatin1String(ways[way].first));
        button->setCheckable(true);
        way_group_->addButton(button, way);
        first->addWidget(button);
    }
    way_group_->button(as_tested)->setChecked(true);
    load_spin_ = addSpin(*first, "loadSpin", tr("load"), tr(" W"), 1, 20'000, usual_load_w);
    duty_spin_ = addSpin(*first, "dutySpin", tr("on for"), tr(" % of time"), 1, 100, 100);
    first->addStretch();
    lower_spin_ = addSpin(*first, "lowerBandSpin", tr("expected"), tr(" %"), 0, 100, 100 * expected_lower_fraction);
    upper_spin_ = addSpin(*first, "upperBandSpin", tr("to"), tr(" % of rated"), 0, 100, 100 * expected_upper_fraction);
    lines->addLayout(first);

    auto* second = new QHBoxLayout;
    second->setSpacing(spacing::grid_px);
    filter_edit_->setObjectName(QStringLiteral("filterEdit"));
    filter_edit_->setPlaceholderText(tr("only units whose name, maker or remark has these words"));
    filter_edit_->setAccessibleName(tr("Filter of units"));
    filter_edit_->setClearButtonEnabled(true);
    second->addWidget(filter_edit_, 1);
    least_spin_ = addSpin(*second, "leastSpin", tr("rated from"), tr(" Wh"), 0, 100'000, 0);
    most_spin_ = addSpin(*second, "mostSpin", tr("to"), tr(" Wh"), 0, 100'000, 0);
    for (auto* spin : {least_spin_, most_spin_}) spin->setSpecialValueText(tr("any"));
    lines->addLayout(second);

    // Typing a load means that units are wanted there.
    for (auto* spin : {load_spin_, duty_spin_})
        connect(spin, &QDoubleSpinBox::valueChanged, this, [this] {
            way_group_->button(at_load)->setChecked(true);
            emit changed();
        });
    connect(way_group_, &QButtonGroup::idClicked, this, &ComparisonChoice::changed);
    for (auto* spin : {least_spin_, most_spin_, lower_spin_, upper_spin_}) connect(spin, &QDoubleSpinBox::valueChanged, this, &ComparisonChoice::changed);
    connect(filter_edit_, &QLineEdit::textChanged, this, &ComparisonChoice::changed);
}

QDoubleSpinBox* ComparisonChoice::addSpin(QHBoxLayout& line, const char* name, const QString& label, const QString& suffix, double low, double high,
                                          double value) {
    auto* words = new QLabel(label, this);
    set_text_style(*words, Tone::soft);
    auto* spin = new QDoubleSpinBox(this);
    spin->setObjectName(QLatin1String(name));
    spin->setAccessibleName(label);
    spin->setMinimumWidth(spin->fontMetrics().averageCharWidth() * 9); // the page must fit a small window
    spin->setDecimals(0);
    spin->setRange(low, high);
    spin->setValue(value);
    spin->setSuffix(suffix);
    spin->setKeyboardTracking(false);
    spin->setStepType(QAbstractSpinBox::AdaptiveDecimalStepType);
    words->setBuddy(spin);
    line.addWidget(words);
    line.addWidget(spin);
    return spin;
}

std::optional<CommonLoad> ComparisonChoice::load() const {
    if (way_group_->checkedId() == as_tested) return std::nullopt;
    return CommonLoad{load_spin_->value(), duty_spin_->value() / 100, {}};
}

void ComparisonChoice::setLoad(const std::optional<CommonLoad>& load) {
    const QSignalBlocker still_load(load_spin_), still_duty(duty_spin_);
    way_group_->button(load ? at_load : as_tested)->setChecked(true);
    if (load) {
        load_spin_->setValue(load->power_w);
        duty_spin_->setValue(100 * load->duty);
    }
    emit changed();
}

double ComparisonChoice::bandLower() const { return std::min(lower_spin_->value(), upper_spin_->value()) / 100; }
double ComparisonChoice::bandUpper() const { return std::max(lower_spin_->value(), upper_spin_->value()) / 100; }

bool ComparisonChoice::wants(const Unit& unit) const {
    const double rated_wh = unit.rated_energy_wh.value_or(0);
    if (least_spin_->value() > 0 && rated_wh < least_spin_->value()) return false;
    if (most_spin_->value() > 0 && (rated_wh <= 0 || rated_wh > most_spin_->value())) return false;
    const QString about = QString::fromStdString(unit.name + '\n' + unit.maker + '\n' + unit.remark);
    const QStringList words = filter_edit_->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::ranges::all_of(words, [&](const QString& word) { return about.contains(word, Qt::CaseInsensitive); });
}

} // namespace ullage
