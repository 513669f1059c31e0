// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/live_bar.h"

#include "dialogs/live_face.h"
#include "pages/parts/page_parts.h"
#include "services/live_reader.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace ullage {

namespace {

constexpr std::size_t most_proposals = 3; ///< in sight at once: the rest come when these are answered
constexpr std::int64_t stale_ms = 10'000;

QString since_words(std::int64_t age_ms, UtcMs now_ms, const std::string& zone) {
    return ullage::tr("nothing since %1").arg(text_of(clock_text(now_ms - age_ms, zone)));
}

QString mark_question(const LiveEvent& event, const std::string& zone) {
    const QString when = event.by_ms - event.moment_ms > 2000
                             ? tr("between %1 and %2").arg(text_of(clock_text(event.moment_ms, zone)), text_of(clock_text(event.by_ms, zone)))
                             : tr("at %1", "a time of day").arg(text_of(format_iso8601(event.moment_ms, zone)).section(QLatin1Char('T'), 1).left(8));
    return tr("%1 %2: %3.").arg(text_of(say_event(event.kind)), when, text_of(event.evidence));
}

} // namespace

LiveBar::LiveBar(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), dot_(new QLabel(QStringLiteral("●"))), state_(new QLabel), button_(new_button("readLiveButton", {})),
      line_(new QWidget(this)), proposals_(new QVBoxLayout) {
    setObjectName(QStringLiteral("liveBarWidget"));
    dot_->setObjectName(QStringLiteral("liveDotLabel"));
    state_->setObjectName(QStringLiteral("liveStateLabel"));
    state_->setTextFormat(Qt::PlainText);
    state_->setWordWrap(true);
    auto* line = new QHBoxLayout(line_);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    line->addWidget(dot_);
    line->addWidget(state_, 1);
    line->addWidget(button_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::half_px);
    column->addWidget(line_);
    proposals_->setContentsMargins(0, 0, 0, 0);
    proposals_->setSpacing(spacing::half_px);
    column->addLayout(proposals_);
    connect(button_, &QPushButton::clicked, this, &LiveBar::press);
    hide();
}

void LiveBar::setReader(LiveReader& reader) {
    reader_ = &reader;
    connect(reader_, &LiveReader::changed, this, [this](const RunId& run) {
        if (run == run_uuid_) refresh();
    });
    connect(&document_, &Document::metersChanged, this, &LiveBar::refresh);
    refresh();
}

void LiveBar::setRun(const RunId& run_uuid) {
    run_uuid_ = run_uuid;
    refresh();
}

void LiveBar::press() {
    if (!reader_) return;
    if (reader_->isReading(run_uuid_)) reader_->stop(run_uuid_);
    else emit readAsked(RunId(run_uuid_)); // a copy: the bar may show another run before it is answered
}

void LiveBar::refresh() {
    const RunRecord* record = document_.run(run_uuid_);
    if (!reader_ || !record) {
        hide();
        return;
    }
    const bool running = record->run.end == RunEnd::still_running;
    const bool offered = running && !document_.isLooking() && (reader_->isReading(run_uuid_) || reader_->sourceOf(run_uuid_));
    line_->setVisible(offered);
    if (offered) showState();
    showProposals();
    setVisible(offered || !shown_.empty());
}

void LiveBar::showState() {
    const auto state = reader_->state(run_uuid_);
    button_->setText(state ? tr("Stop reading") : tr("Read live"));
    if (!state) {
        const auto source = reader_->sourceOf(run_uuid_);
        set_text_style(*dot_, Tone::soft);
        set_text_style(*state_, Tone::soft);
        state_->setText(reader_->waitsForPassword(run_uuid_)
                            ? tr("%1 was read when the program ended; it needs its password again.").arg(text_of(source->title()))
                            : tr("%1 can be read live.").arg(text_of(source->title())));
        return;
    }
    const RunRecord* record = document_.run(run_uuid_);
    const bool fresh = state->age_ms && !state->silent && *state->age_ms < stale_ms;
    set_text_style(*dot_, fresh ? Tone::good : Tone::soft);
    set_text_style(*state_, fresh ? Tone::ink : Tone::soft);
    QStringList words;
    if (state->latest) {
        words << value_words(*state->latest);
        if (const QString further = further_words(*state->latest); !further.isEmpty()) words << further;
        words << (state->silent ? since_words(*state->age_ms, document_.clock().now_ms(), record->run.time_zone) : age_words(*state->age_ms));
    } else {
        words << (state->link == LiveState::Link::connected ? tr("connected, nothing has come yet") : tr("connecting"));
    }
    if (state->left_out + state->misunderstood > 0) words << tr("%1 left out").arg(state->left_out + state->misunderstood);
    if (state->lost > 0) words << tr("%1 lost").arg(state->lost);
    if (state->clock_set) words << tr("the machine's clock was set; samples go on by the steady one");
    if (!state->trouble.isEmpty()) words << state->trouble;
    state_->setText(words.join(QStringLiteral(" · ")));
}

void LiveBar::showProposals() {
    std::vector<LiveEvent> events = reader_->proposals(run_uuid_);
    if (events.size() > most_proposals) events.resize(most_proposals);
    if (events == shown_) return;
    shown_ = std::move(events);
    while (QLayoutItem* item = proposals_->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // it may be the one that was pressed
        delete item;
    }
    const std::string& zone = document_.run(run_uuid_)->run.time_zone;
    for (const LiveEvent& event : shown_) {
        auto* row = new QFrame;
        make_panel(*row);
        row->setObjectName(QStringLiteral("proposalFrame"));
        auto* words = new QLabel(mark_question(event, zone));
        words->setObjectName(QStringLiteral("proposalLabel"));
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
        auto* accept = new_button("acceptProposalButton", tr("Set mark “%1”").arg(text_of(say_mark(*mark_of(event.kind)))));
        auto* dismiss = new_button("dismissProposalButton", tr("Not this"));
        connect(accept, &QPushButton::clicked, this, [this, event] {
            if (const auto done = reader_->accept(run_uuid_, event); !done) emit error(text_of(done.error().sentence()));
        });
        connect(dismiss, &QPushButton::clicked, this, [this, event] { reader_->dismiss(run_uuid_, event); });
        auto* line = new QHBoxLayout(row);
        line->setContentsMargins(spacing::grid_px, spacing::half_px, spacing::grid_px, spacing::half_px);
        line->addWidget(words, 1);
        for (auto* button : {accept, dismiss}) {
            button->setEnabled(!document_.isLooking());
            line->addWidget(button);
        }
        proposals_->addWidget(row);
    }
}

} // namespace ullage
