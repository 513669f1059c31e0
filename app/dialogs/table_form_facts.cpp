// SPDX-License-Identifier: GPL-3.0-or-later
// What no table says: unit, meter, how it ended. Each is asked once, and "not known" is an answer.
#include "base/number.h"
#include "dialogs/run_fields.h"
#include "dialogs/table_form.h"
#include "model/limits.h"
#include "style/words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>

#include <algorithm>

namespace ullage {

namespace {

constexpr QLatin1String new_meter_key("new"), no_meter_key("none");
constexpr int end_not_known = -1;

QString unknown_words() { return TableForm::tr("not known"); }

/// A number, or nothing for "not known"; an error for an empty field and for what is neither.
Result<std::optional<double>> stated_in(const QLineEdit& edit, const NumberRange& range, const QString& what) {
    const std::string typed = utf8_of(edit.text().trimmed());
    const Error missing{Failure::bad_input, utf8_of(what), {}, say(phrase("dialogs", "type a number, or `not known`"))};
    if (typed.empty()) return missing;
    if (edit.text().trimmed().compare(unknown_words(), Qt::CaseInsensitive) == 0) return std::optional<double>();
    const Result<double> number = parse_number(typed);
    if (!number) return Error{Failure::bad_input, number.error().what, {}, say(phrase("dialogs", "type a number, or `not known`"))};
    if (auto good = check_number({}, number.value(), range); !good) return good.error();
    return std::optional(number.value());
}

} // namespace

void TableForm::addFactFields() {
    addGroup(tr("What the table does not say"));
    zone_ = addLine(QStringLiteral("tableZone"), tr("Time &zone of the table"));
    zone_->setText(raw_text(machine_zone()));
    unit_ = addChoice(QStringLiteral("tableUnit"), tr("&Unit"));
    unit_->setEditable(true);
    unit_->setInsertPolicy(QComboBox::NoInsert);
    for (const Unit& unit : context_.units) unit_->addItem(raw_text(unit.name));
    unit_->setCurrentText({});
    unit_->lineEdit()->setPlaceholderText(tr("choose one, or type the name of a new one"));
    rated_box_ = new QWidget;
    rated_grid_ = new QGridLayout(rated_box_);
    rated_grid_->setContentsMargins(0, 0, 0, 0);
    addField(QStringLiteral("tableRated"), tr("Rated energy"), rated_box_);
    meter_ = addMeterFields(QStringLiteral("tableMeter"), tr("&Meter"));
    second_meter_ = addMeterFields(QStringLiteral("tableSecondMeter"), tr("&Second meter"));
    ended_ = addChoice(QStringLiteral("tableEnded"), tr("How it &ended"));
    ended_->addItem(tr("choose…"));
    for (const RunEnd end : {RunEnd::cut_off_seen, RunEnd::found_off, RunEnd::stopped_by_tester, RunEnd::still_running})
        ended_->addItem(text_of(say_run_end(end)), static_cast<int>(end));
    ended_->addItem(tr("not known: taken as a part of the drain"), end_not_known);
    full_ = addChoice(QStringLiteral("tableFull"), tr("Started &full"));
    fill_full_choice(*full_, std::nullopt);
    kind_ = addChoice(QStringLiteral("tableKind"), tr("&What it tests"));
    for (const RunKind kind : all_run_kinds) kind_->addItem(text_of(say_run_kind(kind)), static_cast<int>(kind));
    load_ = addLine(QStringLiteral("tableLoad"), tr("L&oad"), tr("in your words"));
    connect(zone_, &QLineEdit::editingFinished, this, &TableForm::look);
    // At each letter, so that the field for a new unit is there before Tab is pressed.
    connect(unit_, &QComboBox::editTextChanged, this, &TableForm::showRatedFields);
    for (QComboBox* combo : {unit_, meter_.choice, second_meter_.choice, ended_, kind_})
        connect(combo, &QComboBox::activated, this, &TableForm::showRun);
}

TableForm::MeterFields TableForm::addMeterFields(const QString& name, const QString& title) {
    MeterFields fields;
    fields.choice = addChoice(name, title);
    fields.choice->addItem(tr("choose…"));
    fields.choice->addItem(unknown_words(), QString(no_meter_key));
    for (const Meter& meter : context_.meters) fields.choice->addItem(text_of(meter.name), raw_text(meter.uuid));
    fields.choice->addItem(tr("a new meter"), QString(new_meter_key));
    fields.name = addLine(name + QStringLiteral("Name"), tr("Its &name"));
    fields.limit = addLine(name + QStringLiteral("Limit"), tr("Its error &limit, %"), tr("% of reading, or: not known"));
    connect(fields.choice, &QComboBox::activated, this, &TableForm::showFactFields);
    return fields;
}

void TableForm::showMeterFields(const MeterFields& fields, bool wanted, const QString& stated) {
    setLineShown(fields.choice, wanted);
    if (wanted && fields.choice->currentIndex() == 0 && !stated.isEmpty()) {
        const auto known = std::ranges::find(context_.meters, utf8_of(stated), &Meter::name);
        choose_data(*fields.choice, known == context_.meters.end() ? QString(new_meter_key) : raw_text(known->uuid));
        if (known == context_.meters.end()) fields.name->setText(stated);
    }
    const bool fresh = wanted && fields.choice->currentData().toString() == new_meter_key;
    setLineShown(fields.name, fresh);
    setLineShown(fields.limit, fresh);
}

std::optional<Meter> TableForm::meterOf(const MeterFields& fields) const {
    const QString chosen = fields.choice->currentData().toString();
    if (chosen == new_meter_key) {
        Meter fresh;
        fresh.name = utf8_of(fields.name->text().trimmed());
        if (const auto limit = stated_in(*fields.limit, meter_limit_range, {}); limit) fresh.limit_percent = limit.value();
        return fresh.name.empty() ? std::nullopt : std::optional(std::move(fresh));
    }
    const auto known = std::ranges::find(context_.meters, id_of<MeterId>(chosen), &Meter::uuid);
    return known == context_.meters.end() ? std::nullopt : std::optional(*known);
}

void TableForm::explainMeter(const MeterFields& fields) {
    if (fields.choice->currentIndex() <= 0) explain(fields.choice, tr("Choose the meter, or say that it is not known."));
    if (fields.choice->currentData().toString() != new_meter_key) return;
    if (fields.name->text().trimmed().isEmpty()) explain(fields.name, tr("Give the meter a name."));
    if (const auto limit = stated_in(*fields.limit, meter_limit_range, tr("the error limit is not stated")); !limit)
        explain(fields.limit, text_of(limit.error().sentence()));
}

bool TableForm::columnNamesUnits() const {
    return std::ranges::any_of(reading_.columns, [](const TableReading::Column& column) { return column.role == TableRole::unit; });
}

bool TableForm::notes(std::optional<double> ReadingValues::*value) const {
    return std::ranges::any_of(reading_.runs, [value](const ForeignRun& run) {
        return std::ranges::any_of(run.readings, [value](const ReadingValues& values) { return (values.*value).has_value(); });
    });
}

bool TableForm::metered() const { return notes(&ReadingValues::register_wh) || notes(&ReadingValues::meter_w); }

bool TableForm::twiceMetered() const { return notes(&ReadingValues::second_register_wh); }

void TableForm::showFactFields() {
    const auto stated = [this](const char* key) {
        const auto found = reading_.preface.find(key);
        return found == reading_.preface.end() ? QString() : raw_text(found->second);
    };
    const bool by_column = columnNamesUnits();
    setLineShown(unit_, !by_column);
    if (!by_column && unit_->currentText().trimmed().isEmpty()) {
        unit_->setCurrentText(stated("unit"));
        // A known unit that the title of the run begins with.
        for (const Unit& unit : context_.units)
            if (unit_->currentText().isEmpty() && !reading_.runs.empty() && reading_.runs.front().title.starts_with(unit.name))
                unit_->setCurrentText(raw_text(unit.name));
    }
    if (load_->text().isEmpty()) load_->setText(stated("load"));
    showMeterFields(meter_, metered(), stated("meter"));
    showMeterFields(second_meter_, twiceMetered(), stated("second_meter"));
    const auto noted = std::ranges::count(reading_.runs, true, &ForeignRun::cut_off);
    setLineShown(ended_, static_cast<std::size_t>(noted) < reading_.runs.size());
    ended_->setItemText(0, noted > 0 ? tr("choose, for the runs whose notes do not say it…") : tr("choose…"));
    showRatedFields();
    showRun();
    fit();
}

Unit TableForm::unitOf(const ForeignRun& run) const {
    Unit unit;
    unit.name = columnNamesUnits() ? run.unit_name : utf8_of(unit_->currentText().trimmed());
    const auto known = std::ranges::find(context_.units, unit.name, &Unit::name);
    if (known != context_.units.end()) return *known;
    if (const auto rated = rated_edits_.find(unit.name); rated != rated_edits_.end())
        if (const auto number = stated_in(*rated->second, rated_energy_range, {}); number) unit.rated_energy_wh = number.value();
    return unit;
}

std::vector<std::string> TableForm::newUnits() const {
    std::vector<std::string> names;
    for (const ForeignRun& run : reading_.runs) {
        const std::string name = columnNamesUnits() ? run.unit_name : utf8_of(unit_->currentText().trimmed());
        const bool known = std::ranges::find(context_.units, name, &Unit::name) != context_.units.end();
        if (!name.empty() && !known && std::ranges::find(names, name) == names.end()) names.push_back(name);
    }
    return names;
}

/// A line for the rated energy of each unit that the logbook does not know yet.
void TableForm::showRatedFields() {
    if (!rated_grid_) return;
    const std::vector<std::string> names = newUnits();
    std::vector<std::string> shown;
    for (const auto& [name, edit] : rated_edits_) shown.push_back(name);
    std::vector<std::string> wanted = names;
    std::ranges::sort(wanted);
    setLineShown(rated_box_, !names.empty());
    if (wanted == shown) return;
    std::map<std::string, QString> typed;
    for (const auto& [name, edit] : rated_edits_) typed[name] = edit->text();
    // A name that is being typed stays the same unit.
    if (names.size() == 1 && typed.size() == 1) typed[names.front()] = typed.begin()->second;
    rated_edits_.clear();
    while (QLayoutItem* item = rated_grid_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto above = reading_.preface.find("rated_wh");
    for (const std::string& name : names) {
        const int row = static_cast<int>(rated_edits_.size());
        auto* edit = new QLineEdit(typed.contains(name) ? typed[name] : above == reading_.preface.end() ? QString() : raw_text(above->second));
        edit->setObjectName(QStringLiteral("tableRated%1Edit").arg(row + 1));
        edit->setPlaceholderText(tr("Wh, or: not known"));
        auto* label = new QLabel(text_of(name));
        label->setBuddy(edit);
        edit->setAccessibleName(tr("rated energy of %1, Wh").arg(text_of(name)));
        rated_grid_->addWidget(label, row, 0);
        rated_grid_->addWidget(edit, row, 1);
        setTabOrder(row == 0 ? static_cast<QWidget*>(unit_) : rated_edits_[names[static_cast<std::size_t>(row) - 1]], edit);
        rated_edits_[name] = edit;
        connect(edit, &QLineEdit::editingFinished, this, &TableForm::showRun);
    }
    setLineShown(rated_box_, !names.empty());
    rated_box_->setFocusProxy(names.empty() ? nullptr : rated_edits_[names.front()]);
    fit();
}

TableFacts TableForm::facts(const ForeignRun& run) const {
    TableFacts facts;
    facts.unit = unitOf(run);
    facts.kind = static_cast<RunKind>(kind_->currentData().toInt());
    facts.load = utf8_of(load_->text().trimmed());
    facts.zone = utf8_of(zone_->text().trimmed());
    facts.started_full = chosen_full(*full_);
    if (!facts.started_full && run.full) facts.started_full = true;
    const QVariant end = ended_->currentData();
    if (run.cut_off) facts.end = RunEnd::cut_off_seen;
    else if (end.isValid() && end.toInt() != end_not_known) facts.end = static_cast<RunEnd>(end.toInt());
    if (metered()) facts.meter = meterOf(meter_);
    if (twiceMetered()) facts.second_meter = meterOf(second_meter_);
    return facts;
}

void TableForm::explainOpen() {
    for (const OpenTableQuestion& question : reading_.questions) {
        QWidget* field = nullptr;
        switch (question.about) {
        case TableQuestion::columns: break;
        case TableQuestion::date_order: field = date_order_; break;
        case TableQuestion::decimal_sign: field = decimal_; break;
        case TableQuestion::register_unit: field = register_unit_; break;
        case TableQuestion::elapsed_unit: field = elapsed_unit_; break;
        case TableQuestion::gauge_share: field = gauge_; break;
        case TableQuestion::clock_meaning: field = times_; break;
        case TableQuestion::year: field = year_; break;
        case TableQuestion::start: field = starts_; break;
        case TableQuestion::runs: field = parting_; break;
        }
        if (field) explain(field, text_of(question.words));
        else explain(zone_, tr("Choose the role of the column above its cells: %1.").arg(text_of(question.words)));
    }
}

void TableForm::explainMissing() {
    if (!columnNamesUnits() && unit_->currentText().trimmed().isEmpty()) explain(unit_, tr("Choose the unit, or type the name of a new one."));
    for (const auto& [name, edit] : rated_edits_)
        if (const auto rated = stated_in(*edit, rated_energy_range, tr("the rated energy of %1 is not stated").arg(text_of(name))); !rated)
            explain(rated_box_, text_of(rated.error().sentence()));
    if (metered()) explainMeter(meter_);
    if (twiceMetered()) explainMeter(second_meter_);
    const bool asks_end = std::ranges::any_of(reading_.runs, [](const ForeignRun& run) { return !run.cut_off; });
    if (asks_end && ended_->currentIndex() <= 0) explain(ended_, tr("Say how it ended, or that it is not known."));
}

void TableForm::read() {
    look();
    if (reading_.refusal) return explain(zone_, text_of(*reading_.refusal));
    explainOpen();
    explainMissing();
    runs_.clear();
    for (const ForeignRun& run : reading_.runs) runs_.push_back(run_of_table(run, facts(run), isLog(run)));
}

} // namespace ullage
