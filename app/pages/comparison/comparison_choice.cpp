// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/comparison_choice.h"

#include "chart_content/comparison_pictures.h"
#include "model/tags.h"
#include "sizing/load_totals.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int as_tested = 0, at_load = 1, at_list = 2;
constexpr double usual_load_w = 120;

} // namespace

ComparisonChoice::ComparisonChoice(QWidget* parent)
    : QWidget(parent), way_group_(new QButtonGroup(this)), filter_edit_(new QLineEdit(this)), tag_combo_(new QComboBox(this)) {
    setObjectName(QStringLiteral("comparisonChoice"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(spacing::grid_px);
    auto* first = new QHBoxLayout;
    first->setSpacing(spacing::grid_px);
    const std::pair<const char*, QString> ways[] = {
        {"asTestedButton", tr("As tested")}, {"atLoadButton", tr("At one load")}, {"atListButton", tr("At a load list")}};
    for (int way = as_tested; way <= at_list; ++way) {
        auto* button = new QPushButton(ways[way].second, this);
        button->setObjectName(QLatin1String(ways[way].first));
        button->setCheckable(true);
        way_group_->addButton(button, way);
        first->addWidget(button);
    }
    way_group_->button(as_tested)->setChecked(true);
    list_combo_ = new QComboBox(this);
    list_combo_->setObjectName(QStringLiteral("loadListCombo"));
    list_combo_->setAccessibleName(tr("Load list"));
    list_combo_->setAccessibleDescription(list_combo_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    list_combo_->setToolTip(tr("Its mean power while the unit's output is on; Edit, Load lists has them in full"));
    list_combo_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    first->addWidget(list_combo_);
    load_spin_ = addSpin(*first, "loadSpin", tr("load"), tr(" W"), 1, 20'000, usual_load_w);
    duty_spin_ = addSpin(*first, "dutySpin", tr("on for"), tr(" % of time"), 1, 100, 100);
    for (auto* label : findChildren<QLabel*>()) load_parts_.push_back(label);
    load_parts_.insert(load_parts_.end(), {load_spin_, duty_spin_});
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
    tag_combo_->setObjectName(QStringLiteral("tagCombo"));
    tag_combo_->setAccessibleName(tr("Tag of units"));
    tag_combo_->setAccessibleDescription(tag_combo_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    tag_combo_->setToolTip(tr("Only units with this tag; tags are given in a unit's claims"));
    tag_combo_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    second->addWidget(tag_combo_);
    setTags({});
    least_spin_ = addSpin(*second, "leastSpin", tr("rated from"), tr(" Wh"), 0, 100'000, 0);
    most_spin_ = addSpin(*second, "mostSpin", tr("to"), tr(" Wh"), 0, 100'000, 0);
    for (auto* spin : {least_spin_, most_spin_}) spin->setSpecialValueText(tr("any"));
    lines->addLayout(second);

    for (const auto& [from, to] : {std::pair(lower_spin_, upper_spin_), std::pair(least_spin_, most_spin_)})
        to->setAccessibleName(QStringLiteral("%1, %2").arg(from->accessibleName(), to->accessibleName()));
    // Typing a load means that units are wanted there.
    for (auto* spin : {load_spin_, duty_spin_})
        connect(spin, &QDoubleSpinBox::valueChanged, this, [this] {
            way_group_->button(at_load)->setChecked(true);
            emit changed();
        });
    connect(way_group_, &QButtonGroup::idClicked, this, [this] {
        showWay();
        emit changed();
    });
    connect(list_combo_, &QComboBox::currentIndexChanged, this, &ComparisonChoice::changed);
    setLoadLists({});
    for (auto* spin : {least_spin_, most_spin_, lower_spin_, upper_spin_})
        connect(spin, &QDoubleSpinBox::valueChanged, this, &ComparisonChoice::changed);
    connect(filter_edit_, &QLineEdit::textChanged, this, &ComparisonChoice::changed);
    connect(tag_combo_, &QComboBox::currentIndexChanged, this, &ComparisonChoice::changed);
}

QDoubleSpinBox* ComparisonChoice::addSpin(QHBoxLayout& line, const char* name, const QString& label, const QString& suffix, double low, double high,
                                          double value) {
    auto* words = new QLabel(label, this);
    set_text_style(*words, Tone::soft);
    auto* spin = new QDoubleSpinBox(this);
    spin->setObjectName(QLatin1String(name));
    spin->setAccessibleName(label);
    spin->setDecimals(0);
    spin->setRange(low, high);
    spin->setValue(value);
    spin->setSuffix(suffix);
    spin->setKeyboardTracking(false);
    spin->setStepType(QAbstractSpinBox::AdaptiveDecimalStepType);
    words->setBuddy(spin);
    line.addWidget(words);
    line.addWidget(spin);
    fit(*spin);
    return spin;
}

void ComparisonChoice::fit(QDoubleSpinBox& spin) {
    spin.setMinimumWidth(spin.fontMetrics().averageCharWidth() * 9); // the page must fit a small window
}

void ComparisonChoice::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        for (auto* spin : findChildren<QDoubleSpinBox*>()) fit(*spin);
}

std::optional<CommonLoad> ComparisonChoice::load() const {
    if (way_group_->checkedId() == as_tested) return std::nullopt;
    if (way_group_->checkedId() == at_list) {
        const int place = list_combo_->currentIndex();
        return place < 0 ? std::nullopt : std::optional(list_loads_[static_cast<std::size_t>(place)].second);
    }
    return CommonLoad{load_spin_->value(), duty_spin_->value() / 100, {}};
}

void ComparisonChoice::setLoadLists(const std::vector<LoadList>& lists) {
    const int before = list_combo_->currentIndex();
    const LoadListId chosen = before < 0 ? LoadListId() : list_loads_[static_cast<std::size_t>(before)].first;
    std::vector<std::pair<LoadListId, CommonLoad>> loads;
    for (const LoadList& list : lists)
        if (auto load = common_load_of(list)) loads.emplace_back(list.uuid, *load);
    const QSignalBlocker still(list_combo_);
    list_loads_ = std::move(loads);
    list_combo_->clear();
    bool kept = false;
    for (const auto& [uuid, load] : list_loads_) {
        list_combo_->addItem(tr("%1, %2 W").arg(text_of(load.name), QString::number(load.mean_w(), 'f', 0)));
        if (uuid != chosen) continue;
        list_combo_->setCurrentIndex(list_combo_->count() - 1);
        kept = true;
    }
    if (way_group_->checkedId() == at_list && !kept) way_group_->button(as_tested)->setChecked(true);
    showWay();
}

void ComparisonChoice::showWay() {
    const bool list = way_group_->checkedId() == at_list;
    way_group_->button(at_list)->setVisible(!list_loads_.empty());
    list_combo_->setVisible(list);
    for (auto* part : load_parts_) part->setVisible(!list);
}

void ComparisonChoice::setLoad(const std::optional<CommonLoad>& load) {
    const QSignalBlocker still_load(load_spin_), still_duty(duty_spin_);
    way_group_->button(load ? at_load : as_tested)->setChecked(true);
    if (load) {
        load_spin_->setValue(load->power_w);
        duty_spin_->setValue(100 * load->duty);
    }
    showWay();
    emit changed();
}

void ComparisonChoice::setTags(const std::vector<std::string>& tags) {
    QStringList words;
    for (const std::string& tag : tags) words << raw_text(tag);
    QStringList known;
    for (int i = 1; i < tag_combo_->count(); ++i) known << tag_combo_->itemData(i).toString();
    if (words == known && tag_combo_->count() > 0) return;
    const bool chosen = tag_combo_->currentIndex() > 0;
    const QString before = tag_combo_->currentData().toString();
    const QSignalBlocker still(tag_combo_);
    tag_combo_->clear();
    tag_combo_->addItem(tr("any tag"));
    for (const QString& tag : words) tag_combo_->addItem(text_of(utf8_of(tag)), tag);
    if (chosen) tag_combo_->setCurrentIndex(static_cast<int>(words.indexOf(before)) + 1);
    tag_combo_->setVisible(!words.isEmpty());
}

double ComparisonChoice::bandLower() const { return std::min(lower_spin_->value(), upper_spin_->value()) / 100; }
double ComparisonChoice::bandUpper() const { return std::max(lower_spin_->value(), upper_spin_->value()) / 100; }

bool ComparisonChoice::wants(const Unit& unit) const {
    const double rated_wh = unit.rated_energy_wh.value_or(0);
    if (least_spin_->value() > 0 && rated_wh < least_spin_->value()) return false;
    if (most_spin_->value() > 0 && (rated_wh <= 0 || rated_wh > most_spin_->value())) return false;
    if (tag_combo_->currentIndex() > 0 && !has_tag(unit.tags, utf8_of(tag_combo_->currentData().toString()))) return false;
    const QString about = raw_text(unit.name + '\n' + unit.maker + '\n' + unit.remark);
    const QStringList words = filter_edit_->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::ranges::all_of(words, [&](const QString& word) { return about.contains(word, Qt::CaseInsensitive); });
}

} // namespace ullage
