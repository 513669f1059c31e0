// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"
#include "exchange/table_unicode.h"
#include "text/analysis_text.h"
#include "text/command_parts.h"
#include "text/commands.h"
#include "text/runs_source.h"

#include <ostream>

namespace ullage {

int analyse_command(const AnalyseArguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<std::string> notices;
    Result<std::vector<RunRecord>> records = runs_from(arguments.logbook, notices);
    if (!records) return refuse(err, records.error());
    const Result<std::vector<RunRecord>> chosen = chosen_runs(std::move(records).value(), arguments.unit, arguments.run);
    if (!chosen) return refuse(err, chosen.error());
    for (const std::string& notice : notices) err << "ullage: " << one_line(notice) << '\n';
    std::vector<RunAnalysis> analyses;
    for (const RunRecord& record : chosen.value()) analyses.push_back(analyse_run(record));
    if (arguments.format == "json") return print(analyses_json(chosen.value(), analyses), out, err);
    if (analyses.empty()) return print("There are no runs yet. Add one with: ullage import LOGBOOK SHEET\n", out, err);
    std::string text;
    for (std::size_t r = 0; r < analyses.size(); ++r) {
        if (r > 0) text += '\n';
        text += analysis_text(chosen.value()[r], analyses[r]);
    }
    return print(text, out, err);
}

} // namespace ullage
