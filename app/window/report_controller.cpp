// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/report_controller.h"

#include "base/language.h"
#include "base/version.h"
#include "chart_content/report_making.h"
#include "dialogs/photo_image.h"
#include "dialogs/report_form.h"
#include "dialogs/unit_report_form.h"
#include "pages/comparison/comparison_page.h"
#include "pages/pv/pv_page.h"
#include "pages/sizing/sizing_page.h"
#include "report/report_file.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/languages.h"
#include "style/words.h"
#include "window/help_topics.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/run_defaults.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QMainWindow>
#include <QScopeGuard>

#include <algorithm>
#include <chrono>
#include <future>
#include <map>
#include <memory>
#include <optional>
#include <set>

namespace ullage {

namespace {

constexpr std::size_t most_reported_rows = 100; ///< of a comparison
const QString report_language = QStringLiteral("report/language");

/// A run of the document with the histories of its changed readings.
Result<ReportedRun> reported(const Document& document, const RunId& run_uuid) {
    auto histories = document.casebook().histories(run_uuid);
    if (!histories) return histories.error();
    return ReportedRun{document.run(run_uuid), &document.analysis(run_uuid), std::move(histories).value()};
}

ReportOptions options_now(const Document& document) {
    return {decimal_sign_of(shown_locale()), document.clock().now_ms(), machine_zone(), {}, false};
}

Result<void> write_run(const Document& document, const RunId& run_uuid, bool own_affairs, const QString& path, const ReportLook& look) {
    if (!document.run(run_uuid))
        return Error{
            Failure::not_found, say(phrase("window", "the run is no longer in the logbook")), {}, say(phrase("window", "choose another run"))};
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
    std::set<UnitId> known;
    for (const ComparisonRow& row : comparison.rows) {
        const RunRecord* record = comparer.run(row.run.uuid);
        if (!record)
            return Error{Failure::not_found, say(phrase("window", "a run of the comparison is no longer in its logbook")), row.unit.name,
                         say(phrase("window", "open the comparison page again"))};
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

/// The photos of a unit's runs, by what they are evidence of.
std::vector<OfferedPhoto> photos_of_unit(const Document& document, const UnitId& unit_uuid) {
    std::vector<OfferedPhoto> offered;
    for (const RunRecord* record : document.runs(unit_uuid)) {
        const Result<std::vector<Photo>> photos = document.photos(record->run.uuid);
        if (!photos) continue;
        for (const Photo& photo : photos.value()) offered.push_back({photo.uuid, photo_caption(*record, document.analysis(record->run.uuid), photo)});
    }
    return offered;
}

/// Finds in `offered` the photos that are chosen, and decodes them into `images`.
Result<void> add_chosen_photos(const Document& document, const std::vector<PhotoId>& chosen, ReportedUnit& reported,
                               std::map<PhotoId, QImage>& images) {
    for (const ReportedRun& run : reported.runs) {
        const Result<std::vector<Photo>> photos = document.photos(run.record->run.uuid);
        if (!photos) return photos.error();
        for (const Photo& photo : photos.value()) {
            if (std::ranges::find(chosen, photo.uuid) == chosen.end()) continue;
            const Result<std::string> bytes = document.photoBytes(photo.uuid);
            if (!bytes) return bytes.error();
            const QImage image = photo_image(bytes.value(), photo.format, report_photo_size).image;
            if (image.isNull())
                return Error{Failure::bad_input, say(phrase("window", "the photo cannot be shown")), photo.file_name,
                             say(phrase("window", "leave it out of the report"))};
            images.insert_or_assign(photo.uuid, image);
            reported.photos.push_back({photo.uuid, photo_caption(*run.record, *run.analysis, photo)});
        }
    }
    return {};
}

Result<void> write_unit(const Document& document, const UnitId& unit_uuid, const UnitReportForm& form, const QString& path, const ReportLook& look) {
    const std::shared_ptr<const UnitAnalysis> analysis = document.casebook().unit_analysis(unit_uuid);
    const std::optional<UnitClaims> claims = document.casebook().claims(unit_uuid);
    if (!analysis || !claims)
        return Error{Failure::not_found, say(phrase("window", "the unit has no runs any more")), {}, say(phrase("window", "choose another unit"))};
    ReportedUnit shown{analysis.get(), &*claims, {}, {}, form.publisher()};
    for (const RunRecord* record : document.runs(unit_uuid)) {
        const Result<ReportedRun> run = reported(document, record->run.uuid);
        if (!run) return run.error();
        if (!look.goes_on()) return report_given_up();
        shown.runs.push_back(run.value());
    }
    std::map<PhotoId, QImage> images;
    if (const Result<void> added = add_chosen_photos(document, form.photos(), shown, images); !added) return added.error();
    const MadeReport made = make_unit_report(shown, form.choice(), images, options_now(document));
    return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
}

/// With many units their words and figures take long: they are put together in a thread of their own.
Result<void> write_sizing(const Sizing& sizing, const ReportOptions& options, const QString& path, const ReportLook& look) {
    constexpr std::chrono::milliseconds look_every(5);
    auto making = std::async(std::launch::async, [&sizing, &options, &language = language_in_use()] {
        const SpeakingIn speaking(language);
        return make_sizing_report_of(sizing, options);
    });
    bool goes_on = true;
    while (making.wait_for(look_every) != std::future_status::ready) goes_on = look.goes_on();
    const MadeReport made = making.get();
    if (!goes_on) return report_given_up();
    return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
}

} // namespace

void ReportController::makeUnitReport() {
    const UnitId uuid = pages_.currentUnit();
    const Unit* unit = document_.unit(uuid);
    if (!unit) return;
    if (document_.runs(uuid).empty()) return messages_->showError(tr("%1 has no runs yet, so there is nothing to report.").arg(text_of(unit->name)));
    const QString name = raw_text(unit->name);
    auto* form = new UnitReportForm(text_of(utf8_of(name)), chosen_paper(settings_), publisher_of(settings_, document_),
                                    photos_of_unit(document_, uuid), window_);
    connect(form, &FormDialog::submitted, this, [this, form] { tell(keep_publisher(settings_, document_, form->publisher())); });
    askForReport(name, *form,
                 [this, form, uuid](const QString& path, const ReportLook& look) { return write_unit(document_, uuid, *form, path, look); });
}

void ReportController::makeRunReport() {
    const auto* record = document_.run(pages_.runUuid());
    if (!record) return;
    const QString what = tr("%1 run %2").arg(raw_text(record->unit.name), QString::number(record->number));
    auto* form = new ReportForm(text_of(utf8_of(what)), chosen_paper(settings_), {}, window_);
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
    auto* form = new ReportForm(what, chosen_paper(settings_), ways, window_);
    form->offerOwnAffairs();
    askForReport(what, *form, [this, form, load](const QString& path, const ReportLook& look) {
        return write_comparison(document_, *pages_.comparison(), form->way() == 0 ? load : std::nullopt, form->ownAffairs(), path, look);
    });
}

void ReportController::makeSizingReport() {
    pages_.showSizing();
    if (!pages_.sizing()->awaitSizing()) return;
    const QString what = tr("sizing for %1").arg(raw_text(pages_.sizing()->sizing().list.name));
    const auto write = [this, sizing = pages_.sizing()->sizing()](const QString& path, const ReportLook& look) {
        return write_sizing(sizing, options_now(document_), path, look);
    };
    askForReport(what, *new ReportForm(text_of(utf8_of(what)), chosen_paper(settings_), {}, window_), write);
}

void ReportController::makePvReport() {
    const std::optional<PvSheetText> sheet = pages_.pv()->stated();
    if (!sheet) return messages_->showError(tr("Choose a PV sheet whose fields can be read; then make its report."));
    const QString what = tr("PV check %1").arg(raw_text(sheet->sheet.name));
    askForReport(what, *new ReportForm(text_of(utf8_of(what)), chosen_paper(settings_), {}, window_),
                 [this, sheet = *sheet](const QString& path, const ReportLook& look) {
                     const MadeReport made = make_pv_report_of(sheet, options_now(document_));
                     return write_report(made.report, made.pictures, path, look, {Replacing::Consent::ordinary, {}});
                 });
}

void ReportController::makeKeyCard() {
    const QString what = tr("keys at the bench");
    auto* form = new ReportForm(tr("Keys at the bench"), chosen_paper(settings_), {},
                                tr("A sheet with the keys of the bench, to be printed and hung up there."), window_);
    form->keepLanguage();
    askForReport(what, *form, [this](const QString& path, const ReportLook& look) {
        return write_report(key_card(*window_, tr("Ullage %1").arg(raw_text(program_version()))), {}, path, look, {Replacing::Consent::ordinary, {}});
    });
}

void ReportController::askForReport(const QString& what, ReportForm& asking,
                                    std::function<Result<void>(const QString& path, const ReportLook& look)> write) {
    auto* form = &asking;
    form->setLanguage(settings_.remembered(report_language));
    connect(form, &FormDialog::submitted, this, [this, form, what, write = std::move(write)] {
        const QString ending = form->ending();
        const QString suggested = QDir(saveFolder()).filePath(report_file_stem(what) + QLatin1Char('.') + ending);
        const QString filter = ending == QLatin1String("pdf") ? tr("PDF (*.pdf)") : tr("HTML page (*.html)");
        const QString path = prompts_.fileToSave(window_, tr("Make report"), suggested, filter, ending, true);
        if (path.isEmpty()) return;
        settings_.setFolderOf(path);
        settings_.remember(report_language, form->language());
        Result<void> written;
        // What the report is made of must stay as it is while events get through.
        document_.setHeld(true);
        const auto released = qScopeGuard([this] { document_.setHeld(false); });
        work_in_turns(form, tr("Making the report"), [&](WorkProgress&, const std::function<bool()>& turn) {
            // What the events between two pieces of the work paint is the window's, in its language.
            const std::function<bool()> turn_of_window = [&turn, &of_window = language_in_use()] {
                const SpeakingIn speaking(of_window);
                return turn();
            };
            const SpeakingIn speaking(spoken_language(form->language()));
            written = write(path, {form->paper(), decimal_sign_of(shown_locale()), turn_of_window, form->filesBeside()});
        });
        if (!written) {
            form->refuse(text_of(written.error().sentence()));
            return;
        }
        form->accept();
        messages_->dismiss();
        messages_->showSaved(form->filesBeside() ? tr("Report saved to %1, its tables and pictures to the folder %2.")
                                                       .arg(shown_path(path), shown_path(QFileInfo(report_files_folder(path)).fileName()))
                                                 : tr("Report saved to %1.").arg(shown_path(path)),
                             path);
    });
    form->open();
}

} // namespace ullage
