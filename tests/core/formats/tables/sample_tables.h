// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/results/comparison_table.h"
#include "support/scenario.h"
#include "table_samples.h"

#include <vector>

namespace ullage::test {

/// The sample scenario, analysed once.
struct AnalysedScenario {
    std::vector<RunRecord> records;
    std::vector<RunAnalysis> analyses;
};

inline const AnalysedScenario& analysed_scenario() {
    static const AnalysedScenario scenario = [] {
        AnalysedScenario made;
        for (const ScenarioRun& run : sample_scenario()) {
            made.records.push_back(run.simulated.record);
            made.records.back().unit.uuid = UnitId(made.records.back().unit.name); // as a logbook would give one identity to one unit
            made.records.back().readings[1].values.remark = "-3 % | \"seen\", <twice>";
            made.analyses.push_back(analyse_run(made.records.back()));
        }
        return made;
    }();
    return scenario;
}

inline Table scenario_table_of_runs(RunTable which) {
    const AnalysedScenario& scenario = analysed_scenario();
    std::vector<const RunRecord*> records;
    std::vector<const RunAnalysis*> analyses;
    for (std::size_t r = 0; r < 3; ++r) {
        records.push_back(&scenario.records[r]);
        analyses.push_back(&scenario.analyses[r]);
    }
    return collected(table_of_runs(which, records, analyses));
}

/// Every kind of table that the program exports, and one whose texts attack each format.
inline const std::vector<Table>& every_table() {
    static const std::vector<Table> tables = [] {
        const AnalysedScenario& scenario = analysed_scenario();
        return std::vector<Table>{hostile_table(),
                                  comparison_table(compare_as_tested(scenario.records, CompareRows::every_drain)),
                                  readings_table(scenario.records[0], scenario.analyses[0]),
                                  intervals_table(scenario.records[0], scenario.analyses[0]),
                                  scenario_table_of_runs(RunTable::readings),
                                  scenario_table_of_runs(RunTable::intervals)};
    }();
    return tables;
}

} // namespace ullage::test
