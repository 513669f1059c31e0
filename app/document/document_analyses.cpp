// SPDX-License-Identifier: GPL-3.0-or-later
// What the runs say, from the casebook, and beside the window where it takes long.
#include "document/document.h"
#include "document/document_state.h"

#include <utility>

namespace ullage {

const Casebook& Document::casebook() const { return state_->casebook; }

// What is given by reference stands in the casebook until the runs that it rests on change.
const RunAnalysis& Document::analysis(const RunId& run_uuid) const { return *state_->casebook.analysis(run_uuid); }

const UnitFit& Document::unitFit(const UnitId& unit_uuid) const {
    static const UnitFit without_runs = fit_unit(std::vector<RunRecord>());
    const auto fit = state_->casebook.fit(unit_uuid);
    return fit ? *fit : without_runs;
}

const TwoAccounts& Document::accounts(const RunId& run_uuid) const { return *state_->casebook.accounts(run_uuid); }

const RunForecast& Document::forecast(const RunId& run_uuid, UtcMs now_ms) const { return *state_->casebook.forecast(run_uuid, now_ms); }

std::size_t Document::readingsToAnalyse(const std::vector<UnitId>& unit_uuids, bool with_runs) const {
    return state_->casebook.readings_to_analyse(unit_uuids, with_runs);
}

void Document::prepareAnswers() {
    if (state_->casebook.readings_to_analyse({}, false) <= most_analysed_at_once) return;
    // Whoever records of his own accord waits: those who hear of changes have not heard of this one yet.
    const bool before = std::exchange(state_->importing, true);
    beside_([casebook = &state_->casebook] { (void)casebook->options(); });
    state_->importing = before;
}

void Document::analyseBeside(const std::vector<UnitId>& unit_uuids, bool with_runs, const DoBeside& beside,
                             const std::function<bool(std::size_t)>& goes_on) {
    const Casebook& casebook = state_->casebook;
    beside([&] {
        for (std::size_t done = 0; done < unit_uuids.size() && goes_on(done); ++done) {
            if (casebook.readings_to_analyse({unit_uuids[done]}, with_runs) == 0) continue;
            (void)casebook.fit(unit_uuids[done]);
            if (!with_runs) continue;
            for (const auto& run : casebook.runs_of(unit_uuids[done])) (void)casebook.analysis(run->run.uuid);
        }
    });
}

} // namespace ullage
