// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/load_list.h"
#include "support/simulator_run.h"

#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

/// A run of the sample scenario with the name of its run sheet, e.g. "01-tarrow-2k-drain-180-w.csv".
struct ScenarioRun {
    std::string file_name;
    SimulatedRun simulated;
};

/// The sample scenario, in order of time: a travelling picture company that shows films in villages without mains tests
/// three storage units with its projector, sound, work lights and ticket-desk laptop in May 2027. Units, makers, prices
/// and readings are invented; the readings come from the simulator. Always the same.
///
/// Osk 1200: battery smaller than its label, moderate no-load draw, gauge sticks at 71 % and catches up late.
/// Pelm 900: large no-load draw, bent gauge that still shows 9 % at cut-off.
/// Tarrow 2k: honest gauge.
[[nodiscard]] std::vector<ScenarioRun> sample_scenario();

/// What the picture company wants to run from one unit on the night of a show, and the name of its file in sample-data/load-lists. Invented.
[[nodiscard]] std::pair<std::string, LoadList> sample_load_list();

/// The truth of the scenario as a Markdown table, one row a run, as it stands in the README of the sample data.
[[nodiscard]] std::string truth_table(const std::vector<ScenarioRun>& runs);

} // namespace ullage::test
