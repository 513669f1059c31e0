// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/unit_sizer.h"

#include "claims/claims.h"
#include "style/words.h"

#include <algorithm>
#include <deque>
#include <exception>
#include <future>
#include <stop_token>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace ullage {

namespace {

constexpr std::size_t most_at_once = 40; ///< units sized while the window waits; that takes less than a blink

/// Claims and own draws are only looked at where a run has tested them.
bool tests_claims_or_draws(const UnitRuns& records) {
    return std::ranges::any_of(records, [](const RunRecord* record) {
        const RunKind kind = record->run.kind;
        return kind == RunKind::sustained_output || kind == RunKind::peak_output || kind == RunKind::standby || kind == RunKind::no_load_drain;
    });
}

/// Any thread. Once it is to stop, what it gives is of no use.
Sizing size_units(const Casebook& casebook, const std::vector<Unit>& units, const LoadList& list, const SizingChoices& choices,
                  const std::stop_token& stop = {}) {
    const UnitFit without_runs = fit_unit(std::vector<RunRecord>());
    std::deque<UnitClaims> claims;
    std::vector<std::shared_ptr<const UnitFit>> fits;
    std::vector<UnitToSize> to_size;
    for (const Unit& unit : units) {
        if (stop.stop_requested()) return {};
        const SharedRuns runs = casebook.runs_of(unit.uuid);
        const UnitRuns records = addresses_of(runs);
        fits.push_back(casebook.fit(unit.uuid));
        const UnitFit& fit = fits.back() ? *fits.back() : without_runs;
        const bool tested = tests_claims_or_draws(records);
        if (tested) claims.push_back(check_claims(unit, records, fit));
        to_size.push_back({&unit, &fit, tested ? &claims.back() : nullptr});
    }
    return size_for(list, to_size, choices);
}

} // namespace

struct UnitSizer::Work {
    std::vector<Unit> units;
    Asked asked;
    Sizing sizing;
    std::string error;
    std::promise<void> promised;
    std::shared_future<void> ended = promised.get_future().share();
    std::jthread thread; ///< last, so that it has ended before the rest goes
};

UnitSizer::~UnitSizer() = default;

void UnitSizer::start(const LoadList& list, const SizingChoices& choices) {
    cancel();
    if (document_.units().size() <= most_at_once) {
        emit sized(size_units(document_.casebook(), document_.units(), list, choices));
    } else if (work_) {
        asked_ = {list, choices}; // the two would only slow each other down
    } else {
        begin({list, choices});
    }
}

void UnitSizer::cancel() {
    wanted_ = false;
    asked_.reset();
    if (work_) work_->thread.request_stop();
}

void UnitSizer::begin(Asked asked) {
    work_ = std::make_shared<Work>();
    work_->units = document_.units();
    work_->asked = std::move(asked);
    wanted_ = true;
    // The thread does not own its work, or the last to let go of it might be the thread itself.
    work_->thread = std::jthread([this, work = work_.get(), weak = std::weak_ptr(work_)](const std::stop_token& stop) {
        try {
            work->sizing = size_units(document_.casebook(), work->units, work->asked.list, work->asked.choices, stop);
        } catch (const std::exception& exception) {
            work->error = exception.what();
        }
        work->promised.set_value();
        QMetaObject::invokeMethod(
            this,
            [this, weak] {
                if (const auto ended = weak.lock()) take(ended);
            },
            Qt::QueuedConnection);
    });
}

void UnitSizer::finish(const Document::DoBeside& beside) {
    while (isWorking()) {
        const std::shared_ptr<Work> work = work_;
        beside([&work] { work->ended.wait(); });
        take(work);
    }
}

void UnitSizer::take(const std::shared_ptr<Work>& work) {
    if (work_ != work) return; // taken already
    work_->thread.join();
    work_.reset();
    if (asked_) return begin(*std::exchange(asked_, std::nullopt));
    if (!std::exchange(wanted_, false)) return;
    if (work->error.empty()) emit sized(work->sizing);
    else emit error(tr("The units could not be sized: %1.").arg(text_of(work->error)));
}

} // namespace ullage
