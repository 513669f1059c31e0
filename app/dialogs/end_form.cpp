// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/end_form.h"

#include "base/number.h"
#include "dialogs/run_fields.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int end_form_letters = 88; ///< wide enough for the fields of a reading side by side
constexpr int preview_delay_ms = 150;

const Reading* last_standing(const RunRecord& record) {
    const auto found = std::find_if(record.readings.rbegin(), record.readings.rend(), [](const Reading& reading) { return !reading.withdrawn; });
    return found == record.readings.rend() ? nullptr : &*found;
}

/// The register at a moment of the log: the last one up to it.
std::optional<double> logged_register_wh(const RunTrace& trace, UtcMs time_ms) {
    std::optional<double> wh;
    for (const TracePoint& point : trace.points)
        if (point.register_wh && (point.time_ms <= time_ms || !wh)) wh = point.register_wh;
    return wh;
}

QString shown_values(const EntryTexts& texts, const QString& time) {
    QStringList parts;
    if (!time.isEmpty()) parts << time;
    if (!texts.gauge.isEmpty()) parts << (texts.gauge.contains(QLatin1Char('%')) ? texts.gauge : texts.gauge + QStringLiteral(" %"));
    if (!texts.register_value.isEmpty()) {
        const bool bare = std::ranges::none_of(texts.register_value, [](QChar letter) { return letter.isLetter(); });
        parts << (bare ? texts.register_value + QStringLiteral(" Wh") : texts.register_value);
    }
    if (!texts.remark.isEmpty()) parts << texts.remark;
    return parts.join(QStringLiteral(", "));
}

} // namespace

EndForm::EndForm(const RunRecord& record, std::optional<RunEnd> end, const EntryTexts& half_typed, const Clock& clock, Preview preview,
                 QWidget* parent)
    : FormDialog(tr("End run"), tr("End run"), parent), record_(record), clock_(clock), opened_ms_(clock.now_ms()), preview_(std::move(preview)) {
    setObjectName(QStringLiteral("endForm"));
    how_ = addChoice(QStringLiteral("how"), tr("&How it ended"));
    how_->addItem(tr("choose …"), static_cast<int>(RunEnd::still_running));
    how_->addItem(tr("cut-off seen: off before my eyes"), static_cast<int>(RunEnd::cut_off_seen));
    how_->addItem(tr("found off: went off unseen"), static_cast<int>(RunEnd::found_off));
    how_->addItem(tr("stopped by me"), static_cast<int>(RunEnd::stopped_by_tester));
    choose_data(*how_, static_cast<int>(end.value_or(RunEnd::still_running)));
    const auto moment = addLineGroup(
        QStringLiteral("moment"), tr("&When"),
        {{QStringLiteral("endTime"), tr("time, at first now"), tr("now")}, {QStringLiteral("endNoticed"), tr("noticed so late at most"), {}}});
    time_ = moment[0], noticed_ = moment[1];
    time_->setToolTip(tr("02:40, -10m, yesterday 23:50, 14 May 23:50"));
    time_->setText(raw_text(clock_text(opened_ms_, record_.run.time_zone)));
    std::vector<GroupedLine> parts{{QStringLiteral("endGauge"), tr("gauge, %"), {}}, {QStringLiteral("endRegister"), tr("register, Wh"), {}}};
    if (record_.run.second_meter_uuid) parts.push_back({QStringLiteral("endSecondRegister"), tr("second register, Wh"), {}});
    parts.push_back({QStringLiteral("endWatts"), tr("watts"), {}});
    const auto shown = addLineGroup(QStringLiteral("shown"), tr("What is &shown"), parts);
    gauge_ = shown.front(), register_ = shown[1], watts_ = shown.back();
    if (record_.run.second_meter_uuid) second_register_ = shown[2];
    addOffers(half_typed);
    remark_ = addLine(QStringLiteral("endRemark"), tr("&Remark"));
    ambient_ = addLine(QStringLiteral("endAmbient"), tr("&Ambient temperature then"), tr("18 °C"));
    preview_label_ = addParagraph(QStringLiteral("preview"), {});
    preview_label_->setTextFormat(Qt::PlainText);
    set_text_style(*preview_label_, Tone::ink);
    setMinimumWidth(fontMetrics().averageCharWidth() * end_form_letters);

    preview_timer_.setSingleShot(true);
    preview_timer_.setInterval(preview_delay_ms);
    connect(&preview_timer_, &QTimer::timeout, this, &EndForm::showPreview);
    connect(how_, &QComboBox::currentIndexChanged, this, &EndForm::changed);
    for (auto* edit : findChildren<QLineEdit*>()) connect(edit, &QLineEdit::textChanged, this, &EndForm::changed);
    changed();
    showPreview();
    if (end) gauge_->setFocus();
    else how_->setFocus();
}

EndForm::Offer EndForm::offerOf(const QString& name, const QString& title, const ReadingValues& values, bool stands) const {
    Offer offer{name, title, EntryTexts::of(values, record_.run.time_zone), values, stands, false};
    const QString clock = raw_text(clock_text(values.time_ms, record_.run.time_zone));
    const QString day = raw_text(day_text(values.time_ms, record_.run.time_zone));
    offer.texts.time = day == raw_text(day_text(opened_ms_, record_.run.time_zone)) ? clock : day + QLatin1Char(' ') + clock;
    offer.title = title.arg(shown_values(offer.texts, offer.texts.time));
    return offer;
}

std::vector<EndForm::Offer> EndForm::offers(const EntryTexts& half_typed) const {
    std::vector<Offer> all;
    if (!half_typed.empty())
        all.push_back(
            {QStringLiteral("takeRow"), tr("From the entry row: %1").arg(shown_values(half_typed, half_typed.time)), half_typed, {}, false, true});
    if (record_.trace && !record_.trace->points.empty()) {
        const RunTrace& trace = *record_.trace;
        ReadingValues values;
        const bool ceased = trace.has_power && trace.off_ms && trace.last_on_ms;
        values.time_ms = ceased ? *trace.last_on_ms : trace.points.back().time_ms;
        values.register_wh = logged_register_wh(trace, values.time_ms);
        all.push_back(
            offerOf(QStringLiteral("takeLog"), ceased ? tr("From the log, where the power ceased: %1") : tr("From the log: %1"), values, false));
    }
    const auto mark =
        std::ranges::find_if(record_.readings, [](const Reading& reading) { return !reading.withdrawn && reading.values.mark == MarkKind::cut_off; });
    const Reading* last = last_standing(record_);
    if (mark != record_.readings.end() && &*mark != last)
        all.push_back(offerOf(QStringLiteral("takeMark"), tr("The mark \"cut-off\" was the end: %1"), mark->values, true));
    if (last != nullptr) all.push_back(offerOf(QStringLiteral("takeLast"), tr("The last reading was the end: %1"), last->values, true));
    return all;
}

void EndForm::addOffers(const EntryTexts& half_typed) {
    const auto all = offers(half_typed);
    if (all.empty()) return;
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::half_px);
    for (const Offer& offer : all) {
        auto* button = new QPushButton(offer.title);
        button->setObjectName(offer.name + QStringLiteral("Button"));
        button->setToolTip(tr("Puts these into the fields; they can be changed there"));
        connect(button, &QPushButton::clicked, this, [this, offer] { take(offer); });
        column->addWidget(button, 0, Qt::AlignLeft);
    }
    addWide(box);
}

void EndForm::take(const Offer& offer) {
    taken_.reset();
    time_->setText(offer.texts.time.isEmpty() ? raw_text(clock_text(opened_ms_, record_.run.time_zone)) : offer.texts.time);
    gauge_->setText(offer.texts.gauge);
    register_->setText(offer.texts.register_value);
    if (second_register_ != nullptr) second_register_->setText(offer.texts.second_register);
    watts_->setText(offer.texts.watts);
    remark_->setText(offer.texts.remark);
    row_display_watts_ = offer.row ? offer.texts.display_watts : QString();
    row_mark_ = offer.row ? offer.texts.mark : std::nullopt;
    taken_ = offer;
    taken_->texts = typed();
    changed();
    gauge_->setFocus();
}

EntryTexts EndForm::typed() const {
    EntryTexts texts{time_->text(), gauge_->text(), register_->text(), watts_->text(), row_display_watts_, remark_->text(), row_mark_};
    if (second_register_ != nullptr) texts.second_register = second_register_->text();
    return texts;
}

RunEnd EndForm::end() const { return static_cast<RunEnd>(how_->currentData().toInt()); }

EntryReading EndForm::understood() const {
    EntryTexts texts = typed();
    if (taken_ && taken_->stands && texts == taken_->texts) return {taken_->values, EntryField::gauge, {}};
    // A time alone says when it ended.
    EntryTexts nothing;
    nothing.time = texts.time;
    if (texts == nothing) texts.remark = end() == RunEnd::still_running ? tr("end") : text_of(say_run_end(end()));
    if (end() == RunEnd::cut_off_seen) texts.mark = MarkKind::cut_off;
    EntryReading entry = read_entry(texts, clock_.now_ms(), record_.run.time_zone, steps_of(record_));
    // To the second where the minute was not touched.
    if (entry.values && texts.time == raw_text(clock_text(opened_ms_, record_.run.time_zone))) entry.values->time_ms = opened_ms_;
    else if (entry.values && taken_ && taken_->values && texts.time == taken_->texts.time) entry.values->time_ms = taken_->values->time_ms;
    return entry;
}

RunEnding EndForm::endingOf(const ReadingValues& values) const {
    RunEnding ending{record_.run, values, taken_ && taken_->row};
    ending.run.end = end();
    if (taken_ && taken_->stands && taken_->values == values) ending.last.reset();
    return ending;
}

void EndForm::changed() {
    unask();
    const bool cut_off = end() == RunEnd::cut_off_seen || end() == RunEnd::found_off;
    noticed_->setEnabled(cut_off);
    noticed_->setPlaceholderText(end() == RunEnd::cut_off_seen ? tr("not said: 5 min")
                                 : end() == RunEnd::found_off  ? tr("not said: since last seen on")
                                                               : QString());
    fit();
    preview_timer_.start();
}

void EndForm::showPreview() {
    const EntryReading entry = understood();
    if (end() == RunEnd::still_running || !entry.values) {
        preview_label_->setText(end() == RunEnd::still_running ? tr("Say how it ended; then what the run says stands here.") : entry.message);
        return;
    }
    RunEnding ending = endingOf(*entry.values);
    if (noticed_->isEnabled())
        if (const auto within = parse_noticed_min(utf8_of(noticed_->text().trimmed())); within) ending.run.end_noticed_within_min = within.value();
    preview_label_->setText(preview_(ending));
    fit();
}

void EndForm::read() {
    ending_ = {};
    if (end() == RunEnd::still_running) explain(how_, tr("Choose how it ended."));
    const EntryReading entry = understood();
    if (!entry.values) {
        QLineEdit* wrong = gauge_;
        if (entry.field == EntryField::time) wrong = time_;
        if (entry.field == EntryField::register_value) wrong = register_;
        if (entry.field == EntryField::second_register && second_register_ != nullptr) wrong = second_register_;
        if (entry.field == EntryField::watts) wrong = watts_;
        explain(wrong, entry.message);
    } else {
        ending_ = endingOf(*entry.values);
    }
    ending_.run.end_noticed_within_min = noticed_->isEnabled() ? number(noticed_, parse_noticed_min) : std::nullopt;
    if (const auto ambient_c = number(ambient_, parse_ambient_c)) ending_.run.ambient_end_c = ambient_c;
}

} // namespace ullage
