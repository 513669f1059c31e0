// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/log_form.h"

#include "base/number.h"
#include "dialogs/skipped_rows_table.h"
#include "style/roles.h"
#include "style/words.h"
#include "trace/clock_offset.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableWidget>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {

namespace {

constexpr int shown_rows = 6;
constexpr int log_form_letters = 120;

/// The first place stands for what the log itself says.
void offer_choices(QComboBox& combo, std::initializer_list<std::pair<QString, int>> choices) {
    combo.addItem(LogForm::tr("as the log has it"));
    for (const auto& [text, value] : choices) combo.addItem(text, value);
}

template <class T>
std::optional<T> chosen_in(const QComboBox& combo) {
    const QVariant data = combo.currentData();
    return data.isValid() ? std::optional<T>(static_cast<T>(data.toInt())) : std::nullopt;
}

QTableWidget* rows_table(QWidget* parent) {
    auto* table = new QTableWidget(parent);
    table->setObjectName(QStringLiteral("logRowsTable"));
    table->setAccessibleName(LogForm::tr("First rows of the log"));
    table->setTabKeyNavigation(false);
    make_table(*table);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionMode(QAbstractItemView::NoSelection);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    return table;
}

/// Hours, minutes and seconds of an offset with its sign.
QString offset_words(UtcMs offset_ms) {
    const UtcMs away_ms = std::abs(offset_ms);
    const auto two = [](UtcMs value) { return QStringLiteral("%1").arg(value, 2, 10, QLatin1Char('0')); };
    QString text = QStringLiteral("%1%2:%3:%4")
                       .arg(offset_ms < 0 ? QStringLiteral("-") : QString())
                       .arg(away_ms / 3'600'000)
                       .arg(two(away_ms / 60'000 % 60), two(away_ms / 1000 % 60));
    if (away_ms % 1000 != 0) text += QStringLiteral(".%1").arg(away_ms % 1000, 3, 10, QLatin1Char('0'));
    return text;
}

} // namespace

LogForm::LogForm(const RunRecord& record, const std::vector<Meter>& meters, QString path, std::map<std::string, std::string> kept, QWidget* parent)
    : FormDialog(tr("Import log %1").arg(shown_path(QFileInfo(path).fileName())), tr("Import log"), parent), record_(record), path_(std::move(path)),
      kept_(std::move(kept)), found_(addParagraph(QStringLiteral("found"), {})), questions_(new QLabel), doubts_(new QLabel), estimate_(new QLabel),
      rows_(rows_table(this)), skipped_rows_(new_skipped_rows_table(this)), progress_(new QProgressBar) {
    setObjectName(QStringLiteral("logForm"));
    questions_->setObjectName(QStringLiteral("questionsLabel"));
    questions_->setWordWrap(true);
    set_text_style(*questions_, Tone::fault);
    addWide(questions_);
    addWide(rows_);
    doubts_->setObjectName(QStringLiteral("doubtsLabel"));
    doubts_->setWordWrap(true);
    set_text_style(*doubts_, Tone::soft, TextSize::caption);
    addWide(doubts_);
    addWide(skipped_rows_);
    follow_ = new QCheckBox(tr("&Follow it: another program is still writing this file"));
    follow_->setObjectName(QStringLiteral("followCheck"));
    addWide(follow_);
    connect(follow_, &QCheckBox::toggled, this, &LogForm::look);
    addChoices();
    meter_->addItem(tr("none named"));
    for (const Meter& meter : meters) {
        meter_->addItem(text_of(meter.name), raw_text(meter.uuid));
        if (record.meter && record.meter->uuid == meter.uuid) meter_->setCurrentIndex(meter_->count() - 1);
    }
    progress_->setObjectName(QStringLiteral("logProgress"));
    progress_->setAccessibleName(tr("Progress of the import"));
    progress_->hide();
    addWide(progress_);
    setMinimumWidth(std::min(fontMetrics().averageCharWidth() * log_form_letters, 1100));
    look();
}

void LogForm::addChoices() {
    addGroup(tr("How it is read"));
    meter_ = addChoice(QStringLiteral("logMeter"), tr("&Meter"));
    delimiter_ = addChoice(QStringLiteral("delimiter"), tr("&Columns end at"));
    offer_choices(*delimiter_, {{tr("comma"), ','}, {tr("semicolon"), ';'}, {tr("tab"), '\t'}, {tr("upright bar"), '|'}, {tr("blanks"), ' '}});
    decimal_ = addChoice(QStringLiteral("decimal"), tr("&Decimal sign"));
    offer_choices(*decimal_, {{tr("point"), '.'}, {tr("comma"), ','}});
    date_order_ = addChoice(QStringLiteral("dateOrder"), tr("D&ates begin with"));
    offer_choices(*date_order_, {{tr("the day"), static_cast<int>(DateOrder::day_first)},
                                 {tr("the month"), static_cast<int>(DateOrder::month_first)},
                                 {tr("the year"), static_cast<int>(DateOrder::year_first)}});
    times_ = addChoice(QStringLiteral("times"), tr("&Times such as 02:40 are"));
    offer_choices(*times_, {{tr("the time of day"), static_cast<int>(TimeForm::clock)},
                            {tr("counted from the start"), static_cast<int>(TimeForm::elapsed_clock)}});
    register_unit_ = addChoice(QStringLiteral("registerUnit"), tr("The &register counts"));
    register_unit_->addItem(tr("as the log has it"));
    for (const char* unit : {"Wh", "kWh"}) register_unit_->addItem(QLatin1String(unit), QLatin1String(unit));
    gauge_unit_ = addChoice(QStringLiteral("gaugeUnit"), tr("The &gauge counts"));
    offer_choices(*gauge_unit_, {{tr("percent"), '%'}, {tr("from 0 to 1"), '1'}});
    zone_ = addLine(QStringLiteral("logZone"), tr("Time &zone"));
    zone_->setText(raw_text(record_.run.time_zone));
    start_ = addLine(QStringLiteral("logStart"), tr("&Start of the log"), tr("first reading of the run"));
    offset_ = addLine(QStringLiteral("offset"), tr("Cl&ock is behind by"), tr("hours:minutes:seconds, 0:00:00 if it is right"));
    estimate_->setObjectName(QStringLiteral("estimateLabel"));
    estimate_->setWordWrap(true);
    set_text_style(*estimate_, Tone::soft, TextSize::caption);
    estimate_->hide();
    addWide(estimate_);
    estimate_button_ = new QPushButton(tr("&Estimate from the hand readings"));
    estimate_button_->setObjectName(QStringLiteral("estimateButton"));
    check_button_ = new QPushButton(tr("Chec&k the whole log"));
    check_button_->setObjectName(QStringLiteral("checkButton"));
    auto* box = new QWidget;
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* button : {estimate_button_, check_button_}) {
        button->setAutoDefault(false);
        line->addWidget(button);
    }
    line->addStretch();
    addWide(box);
    for (QComboBox* combo : {delimiter_, decimal_, date_order_, times_, register_unit_, gauge_unit_})
        connect(combo, &QComboBox::activated, this, &LogForm::look);
    for (QLineEdit* edit : {zone_, start_, offset_}) connect(edit, &QLineEdit::editingFinished, this, &LogForm::look);
    connect(estimate_button_, &QPushButton::clicked, this, &LogForm::estimateOffset);
    connect(check_button_, &QPushButton::clicked, this, &LogForm::checkWhole);
}

LayoutAnswers LogForm::answers() const {
    LayoutAnswers answers;
    for (const auto& [column, role] : told_) answers.columns.push_back({role, column, {}});
    answers.delimiter = chosen_in<char>(*delimiter_);
    answers.decimal = chosen_in<char>(*decimal_);
    answers.date_order = chosen_in<DateOrder>(*date_order_);
    answers.time_form = chosen_in<TimeForm>(*times_);
    answers.energy_unit = utf8_of(register_unit_->currentData().toString());
    if (const auto counts = chosen_in<char>(*gauge_unit_)) answers.gauge_unit = *counts == '%' ? "%" : "share";
    return answers;
}

Result<TraceReadOptions> LogForm::readOptions() const {
    TraceReadOptions options;
    options.whole_lines = follow();
    options.zone = utf8_of(zone_->text().trimmed());
    if (options.zone.empty()) options.zone = "UTC";
    const auto first = std::ranges::find(record_.readings, false, &Reading::withdrawn);
    if (first != record_.readings.end()) options.start_ms = first->values.time_ms;
    if (const auto typed = utf8_of(start_->text().trimmed()); !typed.empty()) {
        const auto start = parse_iso8601(typed, options.zone);
        if (!start) return Error{Failure::bad_input, start.error().what, say(phrase("dialogs", "start of the log")), start.error().remedy};
        options.start_ms = start.value();
    }
    std::string typed = utf8_of(offset_->text().trimmed());
    if (typed.empty()) return options;
    const bool negative = typed.front() == '-';
    if (negative || typed.front() == '+') typed.erase(0, 1);
    ClockParts parts;
    if (!read_clock(typed, false, parts) || parts.offset_minutes)
        return Error{Failure::bad_input, say(phrase("dialogs", "this is no time")), say(phrase("dialogs", "clock is behind by")),
                     say(phrase("dialogs", "write it like 0:00:12 or -0:01:30: hours, minutes, seconds"))};
    options.offset_ms = negative ? -parts.ms : parts.ms;
    if (options.offset_ms == estimated_ms_) options.offset_u_s = estimated_u_s_;
    return options;
}

void LogForm::look() {
    if (busy_) return;
    const auto options = readOptions();
    if (!options) {
        refuse(text_of(options.error().sentence()));
        return;
    }
    auto preview = preview_trace(utf8_of(path_), answers(), kept_, options.value());
    findChild<QPushButton*>(QStringLiteral("submitButton"))->setEnabled(preview.ok());
    if (!preview) {
        refuse(text_of(preview.error().sentence()));
        return;
    }
    options_ = options.value();
    preview_ = std::move(preview).value();
    clearErrors();
    showFound();
    showRows();
    show_skipped_rows(*skipped_rows_, preview_.tally, options_.zone);
    skipped_rows_->setVisible(skipped_rows_->rowCount() > 0);
    fit();
}

void LogForm::showFound() {
    const TraceDetection& found = preview_.detection;
    QString text = tr("Read as: %1").arg(text_of(say_layout(found))).toHtmlEscaped();
    for (const Message& note : found.notes) text += QStringLiteral("<br/>") + text_of(note).toHtmlEscaped();
    if (needs_start(found.layout.time_form) && start_->text().trimmed().isEmpty() && options_.start_ms)
        text += QStringLiteral("<br/>") + tr("It is taken to begin with the first reading of the run, %1.")
                                              .arg(text_of(format_iso8601(*options_.start_ms, options_.zone)))
                                              .toHtmlEscaped();
    found_->setText(text);
    QStringList open;
    for (const LayoutQuestion& question : found.questions) {
        QStringList choices;
        for (const std::string& choice : question.choices) {
            const auto role = role_from(choice); // other choices are the same in all languages
            choices << text_of(role ? say_role(*role) : Message(choice));
        }
        open << tr("Open: %1").arg(text_of(question.words)) +
                    (choices.isEmpty() ? QString() : QStringLiteral(" (%1?)").arg(choices.join(tr(" or "))));
    }
    questions_->setText(open.join(QLatin1Char('\n')));
    questions_->setVisible(!open.isEmpty());
    const bool settled = open.isEmpty();
    check_button_->setEnabled(settled);
    estimate_button_->setEnabled(settled);
    doubts_->setText(preview_.samples.empty() ? QString() : tr("At its beginning: %1").arg(tally_words(preview_.tally)));
    doubts_->setVisible(!doubts_->text().isEmpty());
    // A field that this log does not need is out of the way.
    start_->setEnabled(needs_start(found.layout.time_form));
    const int holds = held_by(found.layout);
    meter_->setEnabled((holds & holds_meter) != 0 || holds == 0); // no meter writes what the unit says of itself
    gauge_unit_->setEnabled((holds & holds_gauge) != 0);
}

void LogForm::showRows() {
    const auto& columns = preview_.detection.layout.columns;
    const int count = static_cast<int>(columns.size());
    rows_->clear();
    rows_->setColumnCount(count);
    rows_->setRowCount(1 + std::min(shown_rows, static_cast<int>(preview_.rows.size())));
    for (int c = 0; c < count; ++c) {
        const LogColumn& column = columns[static_cast<std::size_t>(c)];
        const QString title = column.title.empty() ? tr("column %1").arg(c + 1) : text_of(column.title);
        rows_->setHorizontalHeaderItem(c, new QTableWidgetItem(title));
        auto* combo = new QComboBox;
        combo->setObjectName(QStringLiteral("role%1Combo").arg(c + 1));
        combo->setAccessibleName(tr("%1 holds").arg(title));
        combo->setAccessibleDescription(combo->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
        for (const RoleEntry& role : column_roles()) {
            const bool shows_unit =
                role.role == column.role && !column.unit.name.empty() && role.role != ColumnRole::date && role.role != ColumnRole::unused;
            combo->addItem(shows_unit ? tr("%1 in %2").arg(text_of(say_role(role.role)), text_of(column.unit.name)) : text_of(say_role(role.role)));
            if (role.role == column.role) combo->setCurrentIndex(combo->count() - 1);
        }
        connect(combo, &QComboBox::activated, this, [this, c](int place) { chooseRole(static_cast<std::size_t>(c), place); });
        rows_->setCellWidget(0, c, combo);
        for (int r = 1; r < rows_->rowCount(); ++r) {
            const auto& row = preview_.rows[static_cast<std::size_t>(r - 1)];
            if (static_cast<std::size_t>(c) < row.size()) rows_->setItem(r, c, new QTableWidgetItem(text_of(row[static_cast<std::size_t>(c)])));
        }
    }
    rows_->resizeRowsToContents();
    int height_px = rows_->horizontalHeader()->sizeHint().height() + 2 * rows_->frameWidth() + rows_->fontMetrics().height();
    for (int r = 0; r < rows_->rowCount(); ++r) height_px += rows_->rowHeight(r);
    rows_->setFixedHeight(height_px);
}

void LogForm::chooseRole(std::size_t column, int place) {
    const ColumnRole role = column_roles()[static_cast<std::size_t>(place)].role;
    if (role != ColumnRole::unused) std::erase_if(told_, [role](const auto& entry) { return entry.second == role; });
    told_[column] = role;
    // The combo that called cannot be replaced while it is at it.
    QMetaObject::invokeMethod(this, &LogForm::look, Qt::QueuedConnection);
}

void LogForm::estimateOffset() {
    const auto offset = estimate_clock_offset(utf8_of(path_), preview_.detection.layout, options(), record_);
    setBusy(false);
    estimate_->setText(text_of(offset ? offset.value().sentence : offset.error().sentence()));
    estimate_->show();
    if (!offset) return;
    estimated_ms_ = offset.value().offset_ms;
    estimated_u_s_ = offset.value().u_s;
    offset_->setText(offset_words(offset.value().offset_ms));
    look();
}

void LogForm::checkWhole() {
    TraceReadOptions checking = options();
    const auto tally = check_trace(utf8_of(path_), preview_.detection.layout, checking);
    setBusy(false);
    if (!tally) {
        refuse(text_of(tally.error().sentence()));
        return;
    }
    clearErrors();
    show_skipped_rows(*skipped_rows_, tally.value(), options_.zone);
    skipped_rows_->setVisible(skipped_rows_->rowCount() > 0);
    doubts_->setText(tr("The whole log: %1").arg(tally_words(tally.value())));
    doubts_->show();
    fit();
}

void LogForm::read() {
    const auto options = readOptions();
    if (!options) {
        explain(options.error().where == say(phrase("dialogs", "start of the log")) ? start_ : offset_, text_of(options.error().sentence()));
        return;
    }
    look();
    for (const LayoutQuestion& question : preview_.detection.questions) {
        QWidget* field = rows_;
        switch (question.about) {
        case OpenQuestion::date_order: field = date_order_; break;
        case OpenQuestion::decimal_sign: field = decimal_; break;
        case OpenQuestion::clock_meaning: field = times_; break;
        case OpenQuestion::energy_unit: field = register_unit_; break;
        case OpenQuestion::gauge_unit: field = gauge_unit_; break;
        case OpenQuestion::no_time:
        case OpenQuestion::no_values:
        case OpenQuestion::whose_values: break;
        }
        if (field == rows_) explain(meter_, tr("Name the column in the first row of the table above: %1.").arg(text_of(question.words)));
        else explain(field, text_of(question.words));
    }
}

std::optional<MeterId> LogForm::meterUuid() const {
    const QString uuid = meter_->currentData().toString();
    return uuid.isEmpty() ? std::nullopt : std::optional(id_of<MeterId>(uuid));
}

bool LogForm::follow() const { return follow_->isChecked(); }

TraceReadOptions LogForm::options() {
    setBusy(true);
    TraceReadOptions options = options_;
    options.progress = [this](std::int64_t bytes) { return goOn(bytes); };
    return options;
}

bool LogForm::goOn(std::int64_t bytes) {
    progress_->setValue(static_cast<int>(bytes / 1024));
    QApplication::processEvents(); // the window is blocked by this form, so that only its Cancel can be pressed
    return !cancelled_;
}

void LogForm::setBusy(bool busy) {
    busy_ = busy;
    cancelled_ = false;
    progress_->setRange(0, std::max(1, static_cast<int>(QFileInfo(path_).size() / 1024)));
    progress_->setValue(0);
    progress_->setVisible(busy);
    for (QWidget* part : findChildren<QWidget*>())
        if (qobject_cast<QComboBox*>(part) || qobject_cast<QLineEdit*>(part) || part == follow_ || part == estimate_button_ ||
            part == check_button_ || part->objectName() == QLatin1String("submitButton"))
            part->setDisabled(busy);
    if (!busy) showFound();
}

void LogForm::showImported(const TraceTally& tally) {
    setBusy(false);
    show_skipped_rows(*skipped_rows_, tally, options_.zone);
    if (skipped_rows_->rowCount() == 0) {
        accept();
        return;
    }
    found_->setText(
        tr("Imported. %1. What was left out or taken with a doubt, the first hundred of each kind:").arg(tally_words(tally)).toHtmlEscaped());
    skipped_rows_->show();
    findChild<QScrollArea*>(QStringLiteral("fieldsScroll"))->verticalScrollBar()->setValue(0);
    for (QWidget* part : {static_cast<QWidget*>(rows_), static_cast<QWidget*>(doubts_),
                          static_cast<QWidget*>(findChild<QPushButton*>(QStringLiteral("submitButton")))})
        part->hide();
    for (QWidget* part : findChildren<QWidget*>())
        if (qobject_cast<QComboBox*>(part) || qobject_cast<QLineEdit*>(part) || part == follow_ || part == estimate_button_ || part == check_button_)
            part->setEnabled(false);
    auto* close_button = findChild<QPushButton*>(QStringLiteral("cancelButton"));
    close_button->setText(tr("Close"));
    close_button->setFocus();
}

void LogForm::showTaken() {
    setBusy(false);
    accept();
}

void LogForm::refuseImport(const QString& sentence) {
    setBusy(false);
    refuse(sentence);
}

void LogForm::reject() {
    if (busy_) cancelled_ = true;
    else FormDialog::reject();
}

} // namespace ullage
