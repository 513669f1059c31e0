// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "comparison/fair_comparison.h"
#include "model/run_record.h"

#include <string>
#include <vector>

namespace ullage {

/// One step of the worked example: what it shows, in sentences with figures from the records.
struct ExampleStep {
    std::string title;
    std::vector<std::string> sentences; ///< a paragraph each
    std::string picture;                ///< what is drawn below: "as-tested", "against-load", "at-load"; empty where nothing is
};

/// The comparison of the sample data, as tested and at one load, in steps.
struct WorkedExample {
    Comparison tested, drains; ///< a row for each unit, a row for each drain
    FairComparison fair;       ///< at the load of the example
    std::vector<ExampleStep> steps;
};

/// The example that help tells. Every figure comes from `records`, those of the sample data. Error (not_found): one of its units, or a
/// drain that the example rests on, is not among them.
[[nodiscard]] Result<WorkedExample> worked_example(const std::vector<RunRecord>& records);

} // namespace ullage
