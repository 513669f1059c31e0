// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/guide_controller.h"

#include "dialogs/ended_words.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/clauses.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/record_controller.h"
#include "window/welcome_page.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace ullage {

namespace {

constexpr int guided_readings = 3; ///< that of the start and two more
const QString guided_name = QStringLiteral("guide");

bool has_value(const Reading& reading) { return !reading.withdrawn && (reading.values.gauge_percent || reading.values.register_wh); }

} // namespace

GuidePlace guide_place(const Document& document) {
    GuidePlace place;
    const RunRecord* latest = nullptr;
    for (const RunRecord* record : document.runs())
        if (!latest || latest->run.created_ms <= record->run.created_ms) latest = record;
    if (!latest) {
        place.step = document.units().empty() ? GuideStep::unit : document.meters().empty() ? GuideStep::meter : GuideStep::run;
        return place;
    }
    place.run = latest->run.uuid;
    place.readings = static_cast<int>(std::ranges::count_if(latest->readings, has_value));
    place.step = latest->run.end != RunEnd::still_running ? GuideStep::result
                 : place.readings < guided_readings       ? GuideStep::readings
                                                          : GuideStep::end;
    return place;
}

GuideController::GuideController(const Workplace& at, GuideBar& bar, RecordController& records) : Controller(at), bar_(bar), records_(records) {
    connect(&bar_, &GuideBar::goAsked, this, &GuideController::go);
    connect(&bar_, &GuideBar::leaveAsked, this, &GuideController::leave);
    for (const auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged})
        connect(&document_, signal, this, &GuideController::refresh);
    connect(&document_, &Document::readingsChanged, this, &GuideController::refresh);
}

bool GuideController::guided() const { return document_.isOpen() && !document_.isLooking() && settings_.remembered(guided_name) == document_.path(); }

void GuideController::begin() {
    const bool halfway = document_.isOpen() && !document_.isLooking() && document_.units().size() <= 1 && document_.runs().size() <= 1 &&
                         guide_place(document_).step != GuideStep::result;
    if (!halfway) {
        const auto path = prompts_.fileToSave(window_, tr("Logbook for the guided run"), QDir(startFolder()).filePath(tr("First run.ullage")),
                                              logbookFilter(), QStringLiteral("ullage"), false);
        if (path.isEmpty()) return;
        const auto made = document_.create(path);
        tell(made);
        if (!made) return;
    }
    settings_.remember(guided_name, document_.path());
    refresh();
}

void GuideController::leave() {
    const bool finished = guide_place(document_).step == GuideStep::result;
    settings_.remember(guided_name, {});
    refresh();
    messages_->showNote(finished ? tr("The guided run is done. Everything stays in this logbook.")
                                 : tr("You have left the guide. Help, Guided first run takes it up again."));
}

void GuideController::refresh() {
    const bool shown = guided();
    if (pages_.welcome().isMade()) pages_.welcome()->setGuideShown(shown);
    if (!shown) return bar_.dismiss();
    const GuidePlace place = guide_place(document_);
    bar_.tell(place.step, words(place));
}

GuideWords GuideController::words(const GuidePlace& place) const {
    switch (place.step) {
    case GuideStep::unit:
        return {tr("Add the unit that you test, with its name and the rated energy on its label. Its other claims can follow later."),
                tr("Without a unit at hand: name it Trial unit, with a rated energy of 1000 Wh."), tr("Add unit…")};
    case GuideStep::meter:
        return {tr("Add the meter between unit and load. Its data sheet states the step of its register and its error limit, which the ± of every "
                   "result comes from."),
                tr("Without a meter at hand: name it Trial meter, with a step of 1 Wh and a limit of 1 %."), tr("Add meter…")};
    case GuideStep::run:
        return {tr("Charge the unit to full and plug the meter and a load in. Start a drain: what gauge and register show now is its first reading."),
                tr("Without a bench at hand: gauge 100, register 0, time -6h."), tr("Start run…")};
    case GuideStep::readings:
        return {
            tr("Walk to the bench now and then. Type what gauge and register show into the row below the readings, and press Enter. Noted: %1 of %2.")
                .arg(place.readings)
                .arg(guided_readings),
            tr("Without a bench at hand: time -4h, gauge 66, register 260; then time -2h, gauge 32, register 525."), tr("To the entry row")};
    case GuideStep::end:
        return {
            tr("Wait until the unit switches off by itself, and note what you like until then. End the run: it asks how it ended and what was shown "
               "last."),
            tr("Without a bench at hand: cut-off seen, gauge 0, register 790."), tr("End run…")};
    case GuideStep::result: break;
    }
    const RunRecord* record = document_.run(place.run);
    const QString result = record ? joined_clauses(ended_words(*record, document_.analysis(place.run)).split(QLatin1Char('\n'))) : QString();
    return {
        tr("This is your result. %1.").arg(result),
        tr("The figures stand above the readings. The tab Budget says where the ± comes from, and what the readings say of the gauge stands below. With a "
           "second unit, Compare puts both side by side."),
        tr("Show the result")};
}

void GuideController::go() {
    const GuidePlace place = guide_place(document_);
    switch (place.step) {
    case GuideStep::unit: return records_.addUnit();
    case GuideStep::meter: return records_.addMeter();
    case GuideStep::run: return records_.startRun();
    case GuideStep::readings: return pages_.enterReading(place.run);
    case GuideStep::end: pages_.showRun(place.run); return records_.endRun();
    case GuideStep::result: return pages_.showRun(place.run);
    }
}

} // namespace ullage
