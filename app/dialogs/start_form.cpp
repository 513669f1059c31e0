// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/start_form.h"

#include "base/instant.h"
#include "dialogs/cautions.h"
#include "dialogs/field_text.h"
#include "dialogs/run_fields.h"
#include "formats/entry/entry_text.h"
#include "services/entry_texts.h"
#include "services/reading_rules.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace ullage {

namespace {

constexpr int presets_in_a_row = 3;
constexpr int form_letters = 80; ///< wide enough for four fields of a reading side by side

/// What choosing a preset brings.
struct Preset {
    RunKind kind;
    const char* name; ///< of its button, without "PresetButton"
    QString title, about;
    bool started_full;
    QString load; ///< empty: whatever is plugged in
};

std::vector<Preset> presets() {
    return {{RunKind::drain,
             "drain",
             StartForm::tr("&Drain"),
             StartForm::tr("From full to cut-off through a load: the usable fraction, and whether the gauge is right."),
             true,
             {}},
            {RunKind::no_load_drain, "noLoad", StartForm::tr("&No-load drain"),
             StartForm::tr("Output on, nothing connected: what the unit consumes by itself. It takes days; few readings do."), true,
             StartForm::tr("nothing connected")},
            {RunKind::charge,
             "charge",
             StartForm::tr("&Charge"),
             StartForm::tr("From empty to full: how long it takes, and with the meter before the charger what goes in."),
             false,
             {}},
            {RunKind::sustained_output,
             "sustained",
             StartForm::tr("&Sustained output"),
             StartForm::tr("A load at the rated output: whether the unit carries it, and for how long."),
             true,
             {}},
            {RunKind::peak_output,
             "peak",
             StartForm::tr("&Peak output"),
             StartForm::tr("A short load above the rated output: whether the unit starts it. Mark each trip."),
             true,
             {}},
            {RunKind::standby, "standby", StartForm::tr("Stand&by"),
             StartForm::tr("Output off, left alone: what the unit loses by itself over days. Read the gauge now and then; charge it afterwards."),
             true, StartForm::tr("output off, nothing connected")}};
}

std::string plain(const QString& text) { return utf8_of(text.trimmed()); }

} // namespace

StartForm::StartForm(const RunDefaults& defaults, const std::vector<Unit>& units, const std::vector<Meter>& meters, const Clock& clock,
                     QWidget* parent)
    : FormDialog(tr("Start run"), tr("Start run"), parent), defaults_(defaults), units_(units), clock_(clock), presets_(new QButtonGroup(this)) {
    setObjectName(QStringLiteral("startForm"));
    if (!zone_exists(defaults_.time_zone)) defaults_.time_zone = machine_zone();
    addPresets();
    addFields(meters);
    const auto known = defaults_.kind_of_unit.find(unit().uuid);
    applyPreset(known == defaults_.kind_of_unit.end() ? RunKind::drain : known->second);
    unitChosen();
    setMinimumWidth(fontMetrics().averageCharWidth() * form_letters);
    gauge_->setFocus();
}

void StartForm::addPresets() {
    auto* box = new QWidget;
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(spacing::grid_px);
    int place = 0;
    for (const auto& preset : presets()) {
        auto* button = new QPushButton(preset.title);
        button->setObjectName(QLatin1String(preset.name) + QStringLiteral("PresetButton"));
        button->setCheckable(true);
        button->setAutoDefault(false);
        button->setToolTip(preset.about);
        presets_->addButton(button, static_cast<int>(preset.kind));
        grid->addWidget(button, place / presets_in_a_row, place % presets_in_a_row);
        ++place;
    }
    connect(presets_, &QButtonGroup::idClicked, this, [this](int kind) {
        kind_by_hand_ = true;
        applyPreset(static_cast<RunKind>(kind));
    });
    addWide(box);
    preset_label_ = addParagraph(QStringLiteral("preset"), {});
    cautions_label_ = addParagraph(QStringLiteral("cautions"), {});
}

void StartForm::addFields(const std::vector<Meter>& meters) {
    unit_ = addChoice(QStringLiteral("unit"), tr("&Unit"));
    last_button_ = new QPushButton;
    last_button_->setObjectName(QStringLiteral("asLastButton"));
    last_button_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(last_button_, &QPushButton::clicked, this, &StartForm::takeLast);
    addWide(last_button_);
    meter_ = addChoice(QStringLiteral("meter"), tr("&Meter"));
    missing_label_ = addParagraph(QStringLiteral("missing"), {});
    second_meter_ = addChoice(QStringLiteral("secondMeter"), tr("Second &meter"));
    load_ = addLine(QStringLiteral("load"), tr("&Load"));
    full_ = addChoice(QStringLiteral("startedFull"), tr("Started &full"));
    source_ = addChoice(QStringLiteral("chargeSource"), tr("Char&ged from"));
    gauge_step_ = addLine(QStringLiteral("gaugeStep"), tr("Gauge st&ep"), tr("1 %, the smallest step that the gauge shows"));
    const auto first = addLineGroup(QStringLiteral("first"), tr("First &reading"),
                                    {{QStringLiteral("gauge"), tr("gauge, %"), QStringLiteral("100")},
                                     {QStringLiteral("register"), tr("register, Wh"), QStringLiteral("0")},
                                     {QStringLiteral("watts"), tr("watts"), QStringLiteral("W")},
                                     {QStringLiteral("time"), tr("time"), tr("now")}});
    gauge_ = first[0], register_ = first[1], watts_ = first[2], time_ = first[3];
    time_->setToolTip(tr("Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50"));
    second_register_ = addLine(QStringLiteral("secondRegister"), tr("Its second register"), tr("Wh, what the second meter shows"));
    const auto rule = addLineGroup(QStringLiteral("rule"), tr("Remind me to read"),
                                   {{QStringLiteral("every"), tr("every"), tr("never")},
                                    {QStringLiteral("drop"), tr("when the gauge is down by"), tr("points")},
                                    {QStringLiteral("before"), tr("before the cut-off"), tr("never")}});
    every_ = rule[0], drop_ = rule[1], before_ = rule[2];
    ambient_ = addLine(QStringLiteral("ambient"), tr("&Ambient temperature"), tr("18 °C"));
    zone_ = addChoice(QStringLiteral("timeZone"), tr("&Time zone"));

    for (const auto& each : units_) unit_->addItem(text_of(each.name), raw_text(each.uuid));
    choose_data(*unit_, raw_text(defaults_.unit_uuid));
    // Where there is but one meter, it is the one.
    fill_meter_choice(*meter_, meters, meters.size() == 1 ? std::optional(meters.front().uuid) : defaults_.meter_uuid);
    fill_meter_choice(*second_meter_, meters, std::nullopt);
    second_meter_->setToolTip(tr("One in series, whose register you note too"));
    const auto only_of_two = [this] {
        const bool two = chosen_meter(*second_meter_).has_value();
        second_register_->setEnabled(two);
        setLineShown(second_register_, two);
        fit();
    };
    connect(second_meter_, &QComboBox::currentIndexChanged, this, only_of_two);
    only_of_two();
    fill_full_choice(*full_, std::nullopt);
    fill_charge_source_choice(*source_, std::nullopt);
    fill_zone_choice(*zone_, defaults_.time_zone);
    connect(unit_, &QComboBox::currentIndexChanged, this, &StartForm::unitChosen);
    connect(meter_, &QComboBox::currentIndexChanged, this, &StartForm::sayWhatIsMissing);
    for (auto* choice : {unit_, meter_}) connect(choice, &QComboBox::currentIndexChanged, this, &StartForm::unask);
    connect(full_, &QComboBox::activated, this, [this] { full_by_hand_ = true; });
}

const Unit& StartForm::unit() const {
    const int at = unit_->currentIndex();
    return units_[static_cast<std::size_t>(std::max(0, at))];
}

void StartForm::unitChosen() {
    if (!gauge_step_->isModified()) gauge_step_->setText(field_text(unit().gauge_step_percent, QStringLiteral("%")));
    const auto known = defaults_.kind_of_unit.find(unit().uuid);
    if (!kind_by_hand_ && known != defaults_.kind_of_unit.end()) applyPreset(known->second);
    const auto last = defaults_.last_of_unit.find(unit().uuid);
    last_button_->setVisible(last != defaults_.last_of_unit.end());
    if (last != defaults_.last_of_unit.end()) {
        QStringList parts{text_of(say_run_kind(last->second.kind))};
        if (!last->second.load.empty()) parts << text_of(last->second.load);
        const int at = last->second.meter_uuid ? meter_->findData(raw_text(*last->second.meter_uuid)) : -1;
        if (at >= 0) parts << meter_->itemText(at);
        // A load in many words must not push the form beyond its window.
        const QString words = tr("As the last run of this unit: %1").arg(parts.join(QStringLiteral(", ")));
        last_button_->setText(fontMetrics().elidedText(words, Qt::ElideRight, fontMetrics().averageCharWidth() * (form_letters - 16)));
        last_button_->setToolTip(words);
    }
    sayWhatIsMissing();
}

void StartForm::takeLast() {
    const Run& last = defaults_.last_of_unit.at(unit().uuid);
    kind_by_hand_ = true;
    applyPreset(last.kind);
    choose_data(*meter_, raw_text(last.meter_uuid.value_or(MeterId())));
    load_->setText(raw_text(last.load));
    load_->setModified(true);
    if (last.started_full) choose_data(*full_, *last.started_full ? 1 : 0);
    if (last.charge_source) choose_data(*source_, static_cast<int>(*last.charge_source));
    gauge_->setFocus();
}

void StartForm::sayWhatIsMissing() {
    QStringList missing;
    if (!chosen_meter(*meter_)) missing << tr("Without a meter the register has no error limit, and no result an interval.");
    if (!unit().rated_energy_wh) missing << tr("The rated energy of the unit is not stated: no share of it can be told.");
    missing_label_->setText(missing.join(QLatin1Char(' ')).toHtmlEscaped());
    missing_label_->setVisible(!missing.isEmpty());
}

void StartForm::applyPreset(RunKind kind) {
    kind_ = kind;
    presets_->button(static_cast<int>(kind))->setChecked(true);
    const auto all = presets();
    const auto& preset = *std::ranges::find(all, kind, &Preset::kind);
    preset_label_->setText(preset.about.toHtmlEscaped());
    QString list;
    for (const auto& caution : cautions(kind)) list += QStringLiteral("<li>%1</li>").arg(caution.toHtmlEscaped());
    cautions_label_->setText(tr("<b>Before you start</b>") + QStringLiteral("<ul style='margin:4px 0 0 -24px'>%1</ul>").arg(list));
    if (!full_by_hand_) choose_data(*full_, preset.started_full ? 1 : 0);
    if (!load_->isModified()) load_->setText(preset.load);
    load_->setPlaceholderText(kind == RunKind::charge ? tr("the charger or the panels, in your words") : tr("what is plugged in, in your words"));
    source_->setEnabled(kind == RunKind::charge);
    const auto kept = defaults_.rule_of_kind.find(kind);
    const auto rule = kept == defaults_.rule_of_kind.end() ? usual_rule(kind) : kept->second;
    if (!every_->isModified()) every_->setText(minutes_text(rule.every_min));
    if (!drop_->isModified()) drop_->setText(field_text(rule.gauge_drop_pt));
    if (!before_->isModified()) before_->setText(minutes_text(rule.before_cut_off_min));
    fit();
}

void StartForm::read() {
    start_ = {};
    auto& run = start_.run;
    run.unit_uuid = unit().uuid;
    run.kind = kind_;
    run.meter_uuid = chosen_meter(*meter_);
    run.second_meter_uuid = chosen_meter(*second_meter_);
    if (run.second_meter_uuid && run.second_meter_uuid == run.meter_uuid)
        explain(second_meter_, tr("The second meter is the first one; choose another, or none."));
    run.load = text(load_);
    run.started_full = chosen_full(*full_);
    run.charge_source = kind_ == RunKind::charge ? chosen_charge_source(*source_) : std::nullopt;
    run.ambient_c = number(ambient_, parse_ambient_c);
    const auto zone = plain(zone_->currentText());
    if (!zone_exists(zone)) explain(zone_, tr("No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC."));
    run.time_zone = zone;
    const auto step = number(gauge_step_, above_zero(parse_gauge_percent, say(phrase("dialogs", "the gauge step"))));
    if (step && *step != unit().gauge_step_percent) start_.gauge_step_percent = step;
    readFirst();
    readRule();
}

void StartForm::readFirst() {
    EntryTexts texts;
    texts.time = time_->text();
    texts.gauge = gauge_->text();
    texts.register_value = register_->text();
    if (second_register_->isEnabled()) texts.second_register = second_register_->text();
    texts.watts = watts_->text();
    const auto is_blank = [](const QString& text) { return text.trimmed().isEmpty(); };
    const bool nothing_read = is_blank(texts.gauge) && is_blank(texts.register_value) && is_blank(texts.second_register) && is_blank(texts.watts);
    if (nothing_read && is_blank(texts.time)) return;
    // A time alone says when the run began.
    if (nothing_read) texts.remark = tr("start");
    const auto entry = read_entry(texts, clock_.now_ms(), start_.run.time_zone);
    if (entry.values) {
        start_.first = entry.values;
        return;
    }
    QLineEdit* wrong = gauge_;
    if (entry.field == EntryField::time) wrong = time_;
    if (entry.field == EntryField::register_value) wrong = register_;
    if (entry.field == EntryField::second_register) wrong = second_register_;
    if (entry.field == EntryField::watts) wrong = watts_;
    explain(wrong, entry.message);
}

void StartForm::readRule() {
    start_.rule.every_min = number(every_, parse_minutes);
    start_.rule.gauge_drop_pt = number(drop_, parse_points);
    start_.rule.before_cut_off_min = number(before_, parse_minutes);
    if (start_.rule.every_min == 0) start_.rule.every_min.reset();
    if (start_.rule.gauge_drop_pt == 0) start_.rule.gauge_drop_pt.reset();
}

} // namespace ullage
