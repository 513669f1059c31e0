// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/log_list.h"

#include "base/instant.h"
#include "live/live_trace.h"
#include "pages/parts/page_parts.h"
#include "services/log_follower.h"
#include "style/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

namespace {

/// What it holds, where that is not a meter's values alone.
QString held_words(const Trace& trace) {
    QStringList held;
    if (trace.has(holds_meter)) held << LogList::tr("meter");
    if (trace.has(holds_gauge)) held << LogList::tr("gauge");
    if (trace.has(holds_output)) held << LogList::tr("output power by the unit");
    return trace.holds == holds_meter ? QString() : QStringLiteral(" (%1)").arg(held.join(QStringLiteral(", ")));
}

QString log_words(const Trace& trace, const std::string& zone) {
    const QLocale locale;
    QString text = LogList::tr("%1: %2 samples from %3 to %4")
                       .arg(text_of(trace.file_name) + held_words(trace), locale.toString(static_cast<qlonglong>(trace.samples)),
                            text_of(format_iso8601(trace.first_ms, zone)), text_of(format_iso8601(trace.last_ms, zone)));
    if (trace.rows_left_out > 0)
        text += (trace.rows_left_out == 1 ? LogList::tr(", %1 row left out") : LogList::tr(", %1 rows left out"))
                    .arg(locale.toString(static_cast<qlonglong>(trace.rows_left_out)));
    if (trace.offset_ms != 0) text += LogList::tr(", clock moved by %1 s").arg(locale.toString(static_cast<double>(trace.offset_ms) / 1000));
    if (trace.started_anew > 0)
        text += (trace.started_anew == 1 ? LogList::tr(", its file begun anew %1 time") : LogList::tr(", its file begun anew %1 times"))
                    .arg(locale.toString(static_cast<qlonglong>(trace.started_anew)));
    return text;
}

QString state_words(const LogFollower::State& state, const std::string& zone) {
    const QString since = text_of(format_iso8601(state.grown_ms, zone)).section(QLatin1Char('T'), 1).left(8);
    if (!state.error.isEmpty()) return LogList::tr("Followed, but: %1.").arg(state.error);
    if (state.quiet) return LogList::tr("Followed, but nothing new since %1. Is the meter still logging?").arg(since);
    return LogList::tr("Followed: new rows come in by themselves.");
}

} // namespace

LogList::LogList(QWidget* parent) : QWidget(parent), lines_(new QVBoxLayout(this)) { lines_->setContentsMargins(0, 0, 0, 0); }

void LogList::setLogs(const std::vector<Trace>& traces, const std::string& zone, bool running, const LogFollower* follower) {
    while (QLayoutItem* item = lines_->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // it may be one of its own buttons that has led here
        delete item;
    }
    for (std::size_t t = 0; t < traces.size(); ++t) {
        const Trace& trace = traces[t];
        const auto state = follower ? follower->state(trace.uuid) : std::nullopt;
        auto* box = new QWidget;
        auto* line = new QHBoxLayout(box);
        line->setContentsMargins(0, 0, 0, 0);
        auto* texts = new QVBoxLayout;
        texts->setSpacing(0);
        auto* words = new_paragraph("logLabel", Tone::soft, TextSize::caption);
        words->setText(log_words(trace, zone));
        texts->addWidget(words);
        if (state) {
            auto* followed = new_paragraph("logStateLabel", state->quiet || !state->error.isEmpty() ? Tone::fault : Tone::ink, TextSize::caption);
            followed->setText(state_words(*state, zone));
            texts->addWidget(followed);
        }
        line->addLayout(texts, 1);
        const QString file_name = text_of(trace.file_name);
        const auto add = [&](const char* name, const QString& text, const QString& spoken) {
            auto* button = new_button(name, text);
            button->setAccessibleName(spoken);
            make_quiet(*button);
            line->addWidget(button);
            return button;
        };
        if (state)
            connect(add("stopFollowingButton", tr("Stop following"), tr("Stop following the log %1").arg(file_name)), &QPushButton::clicked, this,
                    [this, uuid = trace.uuid] { emit stopAsked(uuid); });
        else if (follower && running && !is_live(trace))
            connect(add("followLogButton", tr("Follow…"), tr("Follow the log %1").arg(file_name)), &QPushButton::clicked, this,
                    [this, uuid = trace.uuid] { emit followAsked(uuid); });
        connect(add("withdrawLogButton", tr("Withdraw"), tr("Withdraw the log %1").arg(file_name)), &QPushButton::clicked, this,
                [this, place = static_cast<int>(t)] { emit withdrawAsked(place); });
        lines_->addWidget(box);
    }
}

} // namespace ullage
