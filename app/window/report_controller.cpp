// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/report_controller.h"

#include "chart_content/report_making.h"
#include "dialogs/report_form.h"
#include "pages/comparison/comparison_page.h"
#include "pages/pv/pv_page.h"
#include "pages/sizing/sizing_page.h"
#include "report/report_file.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QDir>
#include <QLocale>
#include <QScopeGuard>

#include <optional>
#include <set>

namespace ullage {

namespace {

constexpr std::size_t most_reported_rows = 100; ///< of a comparison

/// A run of the document with the histories of its changed readings.
Result<ReportedRun> reported(const Document& document, const std::string& run_uuid) {
    auto histories = document.casebook().histories(run_uuid);
    if (!histories) return histories.error();
    return ReportedRun{document.run(run_uuid), &document.analysis(run_uuid), std::move(histories).value()};
}

ReportOptions options_now(const Document& document) { return {decimal_sign_of(QLocale()), document.clock().now_ms(), machine_zone(), {}, false}; }

Result<void> write_run(const Document& document, const std::string& run_uuid, bool own_affairs, const QString& path, const ReportLook& look) {
    if (!document.run(run_uuid)) return Error{Failure::not_found, "the run is no longer in the logbook", {}, "choose another run"};
    const Result<ReportedRun> run = reported(document, run_uuid);
    if (!run) return run.error();
    ReportOptions options = options_now(document);
    options.own_affairs = own_affairs;
    const MadeReport made = make_run_report(run.value(), document.unitFit(run.value().record->unit.uuid), options);
    return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
}

/// What the page shows, of whatever logbooks; as tested where `load` is absent.
Result<void> write_comparison(const Document& document, ComparisonPage& page, const std::optional<CommonLoad>& load, bool own_affairs,
                              const QString& path, const ReportLook& look) {
    const Comparison& comparison = page.comparison();
    UnitComparer& comparer = page.comparer();
    std::vector<ReportedRun> runs;
    std::vector<UnitAnalysis> units;
    std::set<std::string> known;
    for (const ComparisonRow& row : comparison.rows) {
        const RunRecord* record = comparer.run(row.run.uuid);
        if (!record)
            return Error{Failure::not_found, "a run of the comparison is no longer in its logbook", row.unit.name, "open the comparison page again"};
        auto histories = comparer.histories(row.run.uuid);
        if (!histories) return histories.error();
        if (!look.goes_on()) return report_given_up();
        runs.push_back({record, &comparer.analysis(row.run.uuid), std::move(histories).value()});
        if (known.insert(row.unit.uuid).second) units.push_back(analyse_unit(row.unit, comparison.fits[row.fit]));
    }
    ReportOptions options = options_now(document);
    options.columns = page.shownColumns();
    options.own_affairs = own_affairs;
    const FairComparison fair = load ? page.fair() : compare_at(comparison, std::nullopt);
    const MadeReport made = make_comparison_report(comparison, fair, runs, units, options, page.band());
    return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
}

} // namespace

void ReportController::makeRunReport() {
    const auto* record = document_.run(pages_.runUuid());
    if (!record) return;
    const QString what = tr("%1 run %2").arg(raw_text(record->unit.name), QString::number(record->number));
    auto* form = new ReportForm(text_of(utf8_of(what)), paper_of(QLocale()), {}, window_);
    form->offerOwnAffairs();
    askForReport(what, *form, [this, form, run = pages_.runUuid()](const QString& path, const ReportLook& look) {
        return write_run(document_, run, form->ownAffairs(), path, look);
    });
}

void ReportController::makeComparisonReport() {
    pages_.showComparison();
    if (!document_.isOpen() || !pages_.comparison()->isComplete()) return;
    if (const std::size_t rows = pages_.comparison()->comparison().rows.size(); rows > most_reported_rows) {
        messages_->showNote(tr("A report of %1 rows would have thousands of pages, since it holds the readings and charts of each. Filter the "
                               "comparison to %2 rows at most; its export holds them all.")
                                .arg(rows)
                                .arg(most_reported_rows));
        return;
    }
    const std::optional<CommonLoad> load = pages_.comparison()->fair().load;
    QStringList ways{tr("as tested, each at its own load")};
    if (load) {
        // The average is enough to tell the two apart; what is switched stands on the page.
        const QString words = text_of(common_load_text(*load));
        ways.prepend(tr("at %1, as on the page").arg(load->duty < 1 ? words.left(words.lastIndexOf(QLatin1String(" ("))) : words));
    }
    const QString what = tr("comparison");
    auto* form = new ReportForm(what, paper_of(QLocale()), ways, window_);
    form->offerOwnAffairs();
    askForReport(what, *form, [this, form, load](const QString& path, const ReportLook& look) {
        return write_comparison(document_, *pages_.comparison(), form->way() == 0 ? load : std::nullopt, form->ownAffairs(), path, look);
    });
}

void ReportController::makeSizingReport() {
    pages_.showSizing();
    if (!pages_.sizing()->hasSizing()) return;
    const QString what = tr("sizing for %1").arg(raw_text(pages_.sizing()->sizing().list.name));
    const auto write = [this, sizing = pages_.sizing()->sizing()](const QString& path, const ReportLook& look) {
        const MadeReport made = make_sizing_report_of(sizing, options_now(document_));
        return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
    };
    askForReport(what, *new ReportForm(text_of(utf8_of(what)), paper_of(QLocale()), {}, window_), write);
}

void ReportController::makePvReport() {
    const std::optional<PvSheetText> sheet = pages_.pv()->stated();
    if (!sheet) return messages_->showError(tr("Choose a PV sheet whose fields can be read; then make its report."));
    const QString what = tr("PV check %1").arg(raw_text(sheet->sheet.name));
    askForReport(what, *new ReportForm(text_of(utf8_of(what)), paper_of(QLocale()), {}, window_),
                 [this, sheet = *sheet](const QString& path, const ReportLook& look) {
                     const MadeReport made = make_pv_report_of(sheet, options_now(document_));
                     return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
                 });
}

void ReportController::askForReport(const QString& what, ReportForm& asking,
                                    std::function<Result<void>(const QString& path, const ReportLook& look)> write) {
    auto* form = &asking;
    connect(form, &FormDialog::submitted, this, [this, form, what, write = std::move(write)] {
        const QString ending = form->ending();
        const QString suggested = QDir(startFolder()).filePath(report_file_stem(what) + QLatin1Char('.') + ending);
        const QString filter = ending == QLatin1String("pdf") ? tr("PDF (*.pdf)") : tr("HTML page (*.html)");
        const QString path = prompts_.fileToSave(window_, tr("Make report"), suggested, filter, ending, true);
        if (path.isEmpty()) return;
        settings_.setFolderOf(path);
        Result<void> written;
        // What the report is made of must stay as it is while events get through.
        document_.setHeld(true);
        const auto released = qScopeGuard([this] { document_.setHeld(false); });
        work_in_turns(form, tr("Making the report"), [&](WorkProgress&, const std::function<bool()>& turn) {
            written = write(path, {form->paper(), decimal_sign_of(QLocale()), turn});
        });
        if (!written) {
            form->refuse(text_of(written.error().sentence()));
            return;
        }
        form->accept();
        messages_->dismiss();
        messages_->showNote(tr("The report stands in %1.").arg(shown_path(path)));
    });
    form->open();
}

} // namespace ullage
