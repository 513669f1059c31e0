// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/table_form.h"

#include "charts/line_chart.h"
#include "dialogs/table_grid.h"
#include "services/background_work.h"
#include "style/clauses.h"
#include "style/roles.h"
#include "style/words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QTableWidget>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int table_form_letters = 185;
constexpr int widest_table_form_px = 1200;
constexpr std::size_t rows_read_at_once = 3'000; ///< for which the window may wait
constexpr std::size_t sheets_looked_at = 20;
constexpr int table_chart_px = 220;

/// An open question's choices; the first place stands for no answer.
void offer_answers(QComboBox& combo, std::initializer_list<std::pair<QString, int>> choices) {
    combo.addItem(ullage::tr("choose…"));
    for (const auto& [text, value] : choices) combo.addItem(text, value);
}

/// A clause of core as a sentence of its own.
QString as_sentence(std::string_view clause) {
    QString words = text_of(clause);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words + QLatin1Char('.');
}

std::optional<int> answer_in(const QComboBox& combo) {
    const QVariant data = combo.currentData();
    return data.isValid() ? std::optional(data.toInt()) : std::nullopt;
}

} // namespace

TableForm::TableForm(TableBook book, const QString& name, TableFormContext context, QWidget* parent)
    : FormDialog(tr("Import table %1").arg(name), tr("Import"), parent), book_(std::move(book)), context_(std::move(context)),
      found_(addParagraph(QStringLiteral("found"), {})), questions_(new QLabel), left_words_(new QLabel), grid_(new_table_grid(this)),
      left_rows_(new_left_rows_table(this)), chart_(new LineChart) {
    setObjectName(QStringLiteral("tableForm"));
    questions_->setObjectName(QStringLiteral("questionsLabel"));
    questions_->setWordWrap(true);
    set_text_style(*questions_, Tone::fault);
    addWide(questions_);
    sheet_ = addChoice(QStringLiteral("sheet"), tr("&Sheet"));
    for (const TableSheet& each : book_.sheets) sheet_->addItem(text_of(each.name));
    setLineShown(sheet_, book_.sheets.size() > 1);
    addWide(grid_);
    addOpenFields();
    left_words_->setObjectName(QStringLiteral("leftRowsLabel"));
    set_text_style(*left_words_, Tone::soft, TextSize::caption);
    addWide(left_words_);
    addWide(left_rows_);
    run_ = addChoice(QStringLiteral("run"), tr("&Run shown"));
    chart_->setObjectName(QStringLiteral("tableChart"));
    chart_->setFixedHeight(std::max(table_chart_px, fontMetrics().height() * 12));
    addWide(chart_);
    addFactFields();
    setMinimumWidth(std::min(fontMetrics().averageCharWidth() * table_form_letters, widest_table_form_px));
    connect(sheet_, &QComboBox::activated, this, &TableForm::takeSheet);
    connect(run_, &QComboBox::activated, this, &TableForm::showRun);
    chooseFirstSheet();
}

void TableForm::addOpenFields() {
    date_order_ = addChoice(QStringLiteral("dateOrder"), tr("D&ates begin with"));
    offer_answers(*date_order_,
                  {{tr("the day"), static_cast<int>(DateOrder::day_first)}, {tr("the month"), static_cast<int>(DateOrder::month_first)}});
    decimal_ = addChoice(QStringLiteral("decimal"), tr("&Decimal sign"));
    offer_answers(*decimal_, {{tr("point"), '.'}, {tr("comma"), ','}});
    register_unit_ = addChoice(QStringLiteral("registerUnit"), tr("Re&gister in"));
    register_unit_->addItem(tr("choose…"));
    for (const char* unit : {"Wh", "kWh"}) register_unit_->addItem(QLatin1String(unit), QLatin1String(unit));
    elapsed_unit_ = addChoice(QStringLiteral("elapsedUnit"), tr("Times count in"));
    elapsed_unit_->addItem(tr("choose…"));
    for (const auto& [words, unit] : {std::pair{tr("hours"), "h"}, std::pair{tr("minutes"), "min"}, std::pair{tr("seconds"), "s"}})
        elapsed_unit_->addItem(words, QLatin1String(unit));
    gauge_ = addChoice(QStringLiteral("gaugeMeaning"), tr("A gauge of 0.69 is"));
    offer_answers(*gauge_, {{tr("69 %"), 1}, {tr("0.69 %"), 0}});
    times_ = addChoice(QStringLiteral("times"), tr("&Times such as 2:40 are"));
    offer_answers(*times_, {{tr("the time of day"), 0}, {tr("counted from the start"), 1}});
    parting_ = addChoice(QStringLiteral("parting"), tr("Behind the empty row is"));
    offer_answers(*parting_, {{tr("another run"), 1}, {tr("the same run"), 0}});
    rows_as_ = addChoice(QStringLiteral("rowsAs"), tr("Keep rows as"));
    rows_as_->addItem(tr("the log of a meter"));
    rows_as_->addItem(tr("readings noted by hand"));
    year_ = addLine(QStringLiteral("year"), tr("&Year of the dates"));
    starts_ = addLine(QStringLiteral("starts"), tr("&Start"), tr("2026-05-14 18:00; of several runs one after the other, with ; between"));
    for (QComboBox* combo : {date_order_, decimal_, register_unit_, elapsed_unit_, gauge_, times_, parting_})
        connect(combo, &QComboBox::activated, this, &TableForm::look);
    for (QLineEdit* edit : {year_, starts_}) connect(edit, &QLineEdit::editingFinished, this, &TableForm::look);
}

const TableSheet& TableForm::sheet() const { return book_.sheets[static_cast<std::size_t>(std::max(0, sheet_->currentIndex()))]; }

/// The first sheet that holds readings; a workbook often begins with another.
void TableForm::chooseFirstSheet() {
    for (std::size_t i = 0; i < std::min(book_.sheets.size(), sheets_looked_at) && book_.sheets.size() > 1; ++i) {
        TableSheet beginning = book_.sheets[i];
        if (beginning.rows.size() > rows_read_at_once) beginning.rows.resize(rows_read_at_once);
        const TableReading found = understand_table(beginning, {}, utf8_of(zone_->text()), context_.now_ms);
        if (std::ranges::find(found.questions, TableQuestion::columns, &OpenTableQuestion::about) != found.questions.end()) continue;
        sheet_->setCurrentIndex(static_cast<int>(i));
        break;
    }
    takeSheet();
}

void TableForm::takeSheet() {
    told_.clear();
    asked_.clear();
    kept_ = {};
    for (QComboBox* combo : {date_order_, decimal_, register_unit_, elapsed_unit_, gauge_, times_, parting_}) combo->setCurrentIndex(0);
    look();
    const QString text = context_.remembered ? context_.remembered(raw_text(reading_.signature)) : QString();
    kept_ = table_answers_from(utf8_of(text));
    if (!(kept_ == TableAnswers())) look();
    showFactFields();
}

TableAnswers TableForm::answers() const {
    TableAnswers answers = kept_;
    for (const auto& [column, role] : told_) {
        std::erase_if(answers.columns, [&](const TableAnswers::Column& each) { return each.index == column; });
        answers.columns.push_back({column, role, {}});
    }
    if (const auto order = answer_in(*date_order_)) answers.date_order = static_cast<DateOrder>(*order);
    if (const auto sign = answer_in(*decimal_)) answers.decimal = static_cast<char>(*sign);
    if (register_unit_->currentIndex() > 0) answers.register_unit = utf8_of(register_unit_->currentData().toString());
    if (elapsed_unit_->currentIndex() > 0) answers.elapsed_unit = utf8_of(elapsed_unit_->currentData().toString());
    if (const auto share = answer_in(*gauge_)) answers.gauge_is_share = *share == 1;
    if (const auto elapsed = answer_in(*times_)) answers.times_are_elapsed = *elapsed == 1;
    if (const auto parts = answer_in(*parting_)) answers.gaps_part_runs = *parts == 1;
    bool is_year = false;
    if (const int year = year_->text().trimmed().toInt(&is_year); is_year && year >= earliest_table_year && year < 2200) answers.year = year;
    for (const QString& start : starts_->text().split(QLatin1Char(';'), Qt::SkipEmptyParts)) answers.starts.push_back(utf8_of(start.trimmed()));
    return answers;
}

void TableForm::look() {
    const std::string zone = utf8_of(zone_->text().trimmed());
    if (!zone_exists(zone)) return explain(zone_, tr("There is no such time zone; name one such as Europe/Berlin."));
    clearErrors();
    const TableAnswers told = answers();
    const TableSheet& table = sheet();
    if (table.rows.size() <= rows_read_at_once) reading_ = understand_table(table, told, zone, context_.now_ms);
    else
        work_beside(
            this, tr("Reading the table"), [&](WorkProgress&) { reading_ = understand_table(table, told, zone, context_.now_ms); },
            Cancelling::not_possible);
    for (const OpenTableQuestion& question : reading_.questions) asked_.insert(question.about);
    showFound();
    showOpenFields();
    show_table_grid(*grid_, table, reading_, [this](std::size_t column, int place) { chooseRole(column, place); });
    showLeftRows();
    showRunChoice();
    showRatedFields();
    fit();
}

void TableForm::showFound() {
    QString text = tr("Read as %1.").arg(text_of(book_.form)).toHtmlEscaped();
    if (reading_.head_row > 0) text += QLatin1Char(' ') + tr("Its head stands in row %1.").arg(reading_.head_row).toHtmlEscaped();
    QStringList columns;
    for (std::size_t c = 0; c < reading_.columns.size(); ++c) {
        const TableReading::Column& column = reading_.columns[c];
        if (column.role == TableRole::unused || column.why.empty()) continue;
        columns << tr("%1: %2").arg(table_role_words(column.role), text_of(column.why));
    }
    if (!columns.isEmpty()) text += QStringLiteral("<br/>") + tr("Columns: %1.").arg(joined_clauses(columns)).toHtmlEscaped();
    if (!(kept_ == TableAnswers())) text += QStringLiteral("<br/>") + tr("Answered as before for a table with this head.").toHtmlEscaped();
    for (const Message& note : reading_.notes) text += QStringLiteral("<br/>") + as_sentence(note.text()).toHtmlEscaped();
    found_->setText(text);
    QStringList open;
    for (const OpenTableQuestion& question : reading_.questions) open << tr("Open: %1").arg(text_of(question.words));
    if (reading_.refusal) open << tr("This table cannot come in: %1").arg(text_of(*reading_.refusal));
    questions_->setText(open.join(QLatin1Char('\n')));
    questions_->setVisible(!open.isEmpty());
}

void TableForm::showOpenFields() {
    const std::pair<QWidget*, TableQuestion> fields[] = {{date_order_, TableQuestion::date_order},
                                                         {decimal_, TableQuestion::decimal_sign},
                                                         {register_unit_, TableQuestion::register_unit},
                                                         {elapsed_unit_, TableQuestion::elapsed_unit},
                                                         {gauge_, TableQuestion::gauge_share},
                                                         {times_, TableQuestion::clock_meaning},
                                                         {parting_, TableQuestion::runs},
                                                         {year_, TableQuestion::year},
                                                         {starts_, TableQuestion::start}};
    for (const auto& [field, about] : fields) setLineShown(field, asked_.contains(about));
    setLineShown(rows_as_, std::ranges::any_of(reading_.runs, written_by_device));
}

bool TableForm::isLog(const ForeignRun& run) const { return written_by_device(run) && rows_as_->currentIndex() == 0; }

void TableForm::showLeftRows() {
    const auto left = std::ranges::count(reading_.not_taken, false, &RowNotTaken::in_part);
    const auto in_part = static_cast<std::ptrdiff_t>(reading_.not_taken.size()) - left;
    QStringList parts;
    if (left > 0) parts << (left == 1 ? tr("1 row is left out") : tr("%1 rows are left out").arg(QLocale().toString(static_cast<qlonglong>(left))));
    if (in_part > 0)
        parts << (in_part == 1 ? tr("1 row is taken in part")
                               : tr("%1 rows are taken in part").arg(QLocale().toString(static_cast<qlonglong>(in_part))));
    left_words_->setText(parts.isEmpty() ? tr("Every row that holds a value is taken.") : tr("%1:").arg(joined_clauses(parts)));
    show_left_rows(*left_rows_, reading_.not_taken);
}

void TableForm::showRunChoice() {
    const int before = std::max(0, run_->currentIndex());
    run_->clear();
    for (std::size_t i = 0; i < reading_.runs.size(); ++i) {
        const ForeignRun& run = reading_.runs[i];
        QStringList words;
        if (!run.unit_name.empty()) words << text_of(run.unit_name);
        if (!run.title.empty()) words << text_of(run.title);
        words << (run.readings.size() == 1 ? tr("1 reading")
                                           : tr("%1 readings").arg(QLocale().toString(static_cast<qlonglong>(run.readings.size()))));
        run_->addItem(tr("Run %1: %2").arg(i + 1).arg(words.join(QStringLiteral(", "))));
    }
    run_->setCurrentIndex(std::min(before, run_->count() - 1));
    setLineShown(run_, run_->count() > 1);
    showRun();
}

void TableForm::showRun() {
    const int place = run_->currentIndex();
    const bool any = place >= 0 && static_cast<std::size_t>(place) < reading_.runs.size();
    chart_->setVisible(any && context_.draw);
    if (!any || !context_.draw) return;
    const ForeignRun& run = reading_.runs[static_cast<std::size_t>(place)];
    chart_->setContent(context_.draw(record_of_table(run, facts(run))));
}

void TableForm::chooseRole(std::size_t column, int place) {
    told_[column] = table_roles()[static_cast<std::size_t>(place)].role;
    // The combo that called cannot be replaced while it is at it.
    QMetaObject::invokeMethod(
        this,
        [this] {
            look();
            showFactFields();
        },
        Qt::QueuedConnection);
}

} // namespace ullage
