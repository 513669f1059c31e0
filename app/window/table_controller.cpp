// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/table_controller.h"

#include "chart_content/run_charts.h"
#include "dialogs/table_form.h"
#include "formats/files/whole_file.h"
#include "run_analysis/run_analysis.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFileInfo>
#include <QMainWindow>
#include <QMimeData>

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t most_drawn_readings = 1'000; ///< of a run that is looked at before it comes in

QString table_files() { return ullage::tr("Tables (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;All files (*)"); }

/// What stands for a file name in the title of the form.
QString pasted_name() { return tr("from the clipboard"); }

QString answers_key(const QString& signature) { return QStringLiteral("tables/") + signature.section(QLatin1Char(' '), -1); }

/// Every n-th reading, so that a long run is drawn at once.
RunRecord thinned(const RunRecord& record) {
    RunRecord few = record;
    const std::size_t every = record.readings.size() / most_drawn_readings + 1;
    if (every == 1) return few;
    few.readings.clear();
    for (std::size_t i = 0; i < record.readings.size(); i += every) few.readings.push_back(record.readings[i]);
    return few;
}

/// The gauge against hours, of a run without a register.
ChartContent gauge_content(const RunRecord& record) {
    ChartContent content;
    content.x = {tr("hours since the first reading"), QStringLiteral("h")};
    content.y = {tr("gauge / %"), QStringLiteral("%")};
    content.y.include_zero = true;
    ChartSeries series;
    series.id = QStringLiteral("gauge");
    series.name = tr("gauge");
    series.colour = CurveColour::gauge_implied;
    for (const Reading& reading : record.readings)
        if (reading.values.gauge_percent)
            series.points.push_back({hours_between(record.readings.front().values.time_ms, reading.values.time_ms), *reading.values.gauge_percent});
    content.series.push_back(std::move(series));
    content.empty_text = tr("No reading has a gauge or a register.");
    return content;
}

ChartContent drawn_table_run(const RunRecord& record) {
    const RunRecord few = thinned(record);
    const bool registered = std::ranges::any_of(few.readings, [](const Reading& reading) { return reading.values.register_wh.has_value(); });
    if (!registered || few.readings.size() < 2) return gauge_content(few);
    return energy_chart(few, analyse_run(few)).content;
}

/// Runs of the document with the same readings: their number, or 0.
int number_of_same(const Document& document, const RunRecord& record) {
    for (const RunRecord* known : document.runs()) {
        if (known->unit.name != record.unit.name || known->run.kind != record.run.kind) continue;
        std::vector<const ReadingValues*> there;
        for (const Reading& reading : known->readings)
            if (!reading.withdrawn) there.push_back(&reading.values);
        if (std::ranges::equal(there, record.readings, [](const ReadingValues* one, const Reading& other) { return *one == other.values; }))
            return known->number;
    }
    return 0;
}

} // namespace

void TableController::chooseTable() {
    const auto files = prompts_.filesToOpen(window_, tr("Import table of readings"), startFolder(), table_files(), false);
    if (!files.isEmpty()) importTable(files.constFirst());
}

void TableController::importTable(const QString& path) {
    const QString name = shown_path(QFileInfo(path).fileName());
    const auto book = result_beside(window_, tr("Reading %1").arg(name), [&](WorkProgress&) -> Result<TableBook> {
        const Result<std::string> bytes = read_whole_file(native_path(path));
        return bytes ? read_table_book(bytes.value(), native_path(path)) : Result<TableBook>(bytes.error());
    });
    if (!book) return;
    settings_.setFolderOf(path);
    openForm(*book, name);
}

bool TableController::clipboardHoldsTable() {
    const QMimeData* held = QApplication::clipboard()->mimeData();
    if (held == nullptr || held->hasImage() || held->hasUrls()) return false;
    if (held->hasHtml() && held->html().contains(QLatin1String("<table"), Qt::CaseInsensitive)) return true;
    return held->hasText() && held->text().contains(QLatin1Char('\n'));
}

void TableController::pasteTable() {
    if (!clipboardHoldsTable())
        return messages_->showError(tr("The clipboard holds no table; copy the cells with their head, in a spreadsheet or on a page, first."));
    const QMimeData* held = QApplication::clipboard()->mimeData();
    // The cells of HTML are parted for sure, and say how far they span.
    const bool page = held->hasHtml() && held->html().contains(QLatin1String("<table"), Qt::CaseInsensitive);
    openForm(read_table_book(utf8_of(page ? QStringLiteral("<html>") + held->html() : held->text()), "clipboard"), pasted_name());
}

void TableController::openForm(Result<TableBook> book, const QString& name) {
    messages_->dismiss();
    if (!book) return messages_->showError(text_of(book.error().sentence()));
    TableFormContext context;
    context.units = document_.units();
    context.meters = document_.meters();
    context.now_ms = document_.clock().now_ms();
    context.remembered = [this](const QString& signature) { return settings_.remembered(answers_key(signature)); };
    context.draw = drawn_table_run;
    auto* form = new TableForm(std::move(book).value(), name, std::move(context), window_);
    connect(form, &FormDialog::submitted, this, [this, form, name] { takeIn(*form, name); });
    form->open();
}

bool TableController::makeLogbook(TableForm& form, const QString& name) {
    const QString stem = name == pasted_name() ? tr("Bench") : QFileInfo(name).completeBaseName();
    const auto path = prompts_.fileToSave(window_, tr("New logbook for this table"), QDir(startFolder()).filePath(stem + QStringLiteral(".ullage")),
                                          logbookFilter(), QStringLiteral("ullage"), false);
    if (path.isEmpty()) return false; // thinking better of the file name is no end
    const auto made = document_.create(path);
    if (!made) form.refuse(text_of(made.error().sentence()));
    return made.ok();
}

void TableController::takeIn(TableForm& form, const QString& name) {
    QStringList doubts;
    for (const TableRun& run : form.runs())
        if (const int number = number_of_same(document_, run.record); number > 0)
            doubts << tr("run %1 of %2 has the same readings already").arg(number).arg(text_of(run.record.unit.name));
    if (!form.confirmed(doubts)) return;
    if (!document_.isOpen() && !makeLogbook(form, name)) return;
    const auto imported = document_.importTogether(form.runs(), name, [&](const std::function<void()>& work) {
        work_beside(
            window_, tr("Importing %1").arg(name), [&](WorkProgress&) { work(); }, Cancelling::not_possible);
    });
    if (!imported) return form.refuse(text_of(imported.error().sentence()));
    settings_.remember(answers_key(raw_text(form.reading().signature)), raw_text(table_answers_text(form.answers())));
    const auto left = std::ranges::count(form.reading().not_taken, false, &RowNotTaken::in_part);
    const RunId run_uuid = imported.value().back().run_uuid;
    const QString from = name == pasted_name() ? tr("The pasted table") : name;
    if (left > 0)
        messages_->showNote(left == 1 ? tr("%1: 1 row was left out.").arg(from) : tr("%1: %2 rows were left out.").arg(from, QString::number(left)));
    form.accept();
    pages_.showRun(run_uuid);
}

} // namespace ullage
