// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/entry_flow.h"

#include "base/number.h"
#include "formats/entry/entry_text.h"
#include "measure/before_reset.h"
#include "measure/entry_mend.h"
#include "style/clauses.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

EntryField field_of(DoubtedPart part) {
    switch (part) {
    case DoubtedPart::time: return EntryField::time;
    case DoubtedPart::register_value: return EntryField::register_value;
    case DoubtedPart::meter_power: return EntryField::watts;
    case DoubtedPart::display_power: return EntryField::display_watts;
    case DoubtedPart::run:
    case DoubtedPart::gauge: break;
    }
    return EntryField::gauge;
}

} // namespace

EntryFlow::EntryFlow(Document& document, QuestionBar& questions, QObject* parent) : QObject(parent), document_(document), questions_(questions) {
    connect(&questions_, &QuestionBar::answered, this, &EntryFlow::answer);
    connect(&questions_, &QuestionBar::valueGiven, this, &EntryFlow::takeBefore);
}

void EntryFlow::setRun(const RunId& run_uuid) {
    drop();
    run_uuid_ = run_uuid;
}

void EntryFlow::drop() {
    questioned_.reset();
    questions_.drop();
}

void EntryFlow::record(const EntryTexts& texts) {
    const RunRecord* run = document_.run(run_uuid_);
    if (run == nullptr) {
        emit failed(tr("This run is no longer in the open logbook; what you typed stands here until you choose another run."));
        return;
    }
    const UtcMs now_ms = document_.clock().now_ms();
    const EntryReading entry = read_entry(texts, now_ms, run->run.time_zone, steps_of(*run));
    if (!entry.values) {
        emit refused(entry.message, entry.field);
        return;
    }
    const auto doubts = entry_doubts(*run, *entry.values, now_ms);
    if (doubts.empty()) {
        write({*entry.values});
        return;
    }
    QStringList sentences;
    for (const Doubt& doubt : doubts) sentences << text_of(doubt.sentence);
    QString question = joined_clauses(sentences);
    question[0] = question[0].toUpper();
    questioned_ = entry.values;
    doubted_ = doubts.front().part;
    const bool fell = std::ranges::any_of(doubts, [](const Doubt& d) { return d.kind == DoubtKind::register_fell; });
    mended_ = mended_entry(*run, *entry.values, doubts, now_ms);
    const QString meant = mended_ ? tr("%1 Wh").arg(text_of(say_digits(exact_text(*mended_->register_wh)))) : QString();
    questions_.ask(question + tr(". Is that right?"), fell && !texts.mark, meant);
    emit asked();
}

void EntryFlow::answer(QuestionBar::Answer answer) {
    if (!questioned_) return;
    ReadingValues values = *questioned_;
    switch (answer) {
    case QuestionBar::Answer::correct:
        questioned_.reset();
        emit correctionAsked(field_of(doubted_));
        return;
    case QuestionBar::Answer::zeroed:
        questions_.askValue(tr("What did the register show just before? With it nothing is missing. Where it is not known, press Enter."));
        return;
    case QuestionBar::Answer::mended: values = mended_.value_or(values); break;
    case QuestionBar::Answer::swapped: values.mark = MarkKind::meter_swapped; break;
    case QuestionBar::Answer::keep: break;
    }
    questioned_.reset();
    write({values});
}

void EntryFlow::takeBefore(const QString& text) {
    if (!questioned_) return;
    ReadingValues values = *questioned_;
    if (text.trimmed().isEmpty()) {
        values.mark = MarkKind::meter_zeroed;
        drop();
        return write({values});
    }
    const RunRecord* run = document_.run(run_uuid_);
    const auto before_wh = parse_register_wh(utf8_of(text.trimmed()), run == nullptr ? std::nullopt : steps_of(*run).first_wh);
    if (run == nullptr || !before_wh) return questions_.refuseValue(before_wh ? QString() : text_of(before_wh.error().sentence()));
    const auto readings = readings_of_reset(*run, values, before_wh.value());
    if (!readings) return questions_.refuseValue(text_of(readings.error().sentence()));
    drop();
    write(readings.value());
}

void EntryFlow::write(const std::vector<ReadingValues>& values) {
    const auto noted = document_.recordTogether(run_uuid_, values, waitingPhotos());
    if (noted) emit recorded(noted.value().uuid);
    else emit failed(tr("Not recorded. %1").arg(text_of(noted.error().sentence())));
}

std::vector<PhotoId> EntryFlow::waitingPhotos() const {
    // Photos that cannot be listed hold no reading up; they wait for the next one.
    std::vector<PhotoId> waiting;
    if (const auto photos = document_.photos(run_uuid_))
        for (const Photo& photo : photos.value())
            if (!photo.reading_uuid) waiting.push_back(photo.uuid);
    return waiting;
}

} // namespace ullage
