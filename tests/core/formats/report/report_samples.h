// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/report/report_content.h"
#include "run_analysis/run_analysis.h"
#include "support/record_builder.h"

#include <string>
#include <vector>

namespace ullage::test {

/// A run with its analysis and, where wanted, histories; keeps what a ReportedRun points at.
struct ReportSample {
    RunRecord record;
    RunAnalysis analysis;
    std::optional<std::vector<ReadingHistory>> histories;

    explicit ReportSample(RunRecord made) : record(std::move(made)), analysis(analyse_run(record)) {}
    [[nodiscard]] ReportedRun run() const { return {&record, &analysis, histories}; }
    [[nodiscard]] UnitFit fit() const { return fit_unit({record}); }
};

/// A full drain of `name`: 100 to 0 % and 0 to 812.5 Wh in ten hours, a reading every `step_h`.
inline RunRecord full_drain(const std::string& name = "Specimen", double step_h = 1) {
    RecordBuilder builder;
    for (int n = 0; n * step_h <= 10 + 1e-9; ++n) builder.at(n * step_h, 100 - 10 * n * step_h, 81.25 * n * step_h);
    RunRecord record = builder.record();
    record.unit.name = name;
    record.unit.uuid = UnitId(name);
    record.run.unit_uuid = UnitId(name);
    record.run.uuid = RunId("run of " + name);
    record.run.end = RunEnd::cut_off_seen;
    return record;
}

/// Every text of a block, one a line.
inline std::string text_of(const ReportBlock& block) {
    std::string text;
    const auto add = [&text](const std::string& line) { text += line + '\n'; };
    if (const auto* heading = std::get_if<ReportHeading>(&block)) add(heading->text);
    if (const auto* paragraph = std::get_if<ReportParagraph>(&block)) add(paragraph->lead + ": " + paragraph->text);
    if (const auto* figures = std::get_if<ReportFigures>(&block))
        for (const ReportFigure& figure : figures->figures)
            add(figure.title + ' ' + figure.value + ' ' + figure.interval + ' ' + figure.unit + ' ' + figure.note);
    if (const auto* picture = std::get_if<ReportPicture>(&block)) add(picture->caption);
    if (const auto* findings = std::get_if<ReportFindings>(&block))
        for (const auto& item : findings->items) add(item.sentence + ' ' + item.evidence);
    if (const auto* list = std::get_if<ReportList>(&block))
        for (const std::string& item : list->items) add(item);
    if (const auto* table = std::get_if<ReportTable>(&block)) {
        add(table->title);
        std::string heads;
        for (const std::string& head : table->table.heads) heads += head + " | ";
        add(heads);
        for (const auto& row : table->table.rows) {
            std::string line;
            for (const PrintedCell& cell : row) line += cell.text() + " | ";
            add(line);
        }
        for (const auto* lines : {&table->table.notes, &table->remarks})
            for (const std::string& line : *lines) add(line);
    }
    return text;
}

/// What stands under a chapter of this title; empty where there is none.
inline std::string chapter_text(const Report& report, const std::string& title) {
    std::string text;
    bool inside = false;
    for (const ReportBlock& block : report.blocks) {
        if (const auto* heading = std::get_if<ReportHeading>(&block); heading && heading->level == 1) {
            inside = heading->text == title;
            continue;
        }
        if (inside) text += text_of(block);
    }
    return text;
}

inline std::vector<std::string> chapters(const Report& report) {
    std::vector<std::string> titles;
    for (const ReportBlock& block : report.blocks)
        if (const auto* heading = std::get_if<ReportHeading>(&block); heading && heading->level == 1) titles.push_back(heading->text);
    return titles;
}

} // namespace ullage::test
