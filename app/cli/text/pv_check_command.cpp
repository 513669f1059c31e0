// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/opened_logbook.h"
#include "formats/files/whole_file.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/text/table_unicode.h"
#include "formats/text/text_lines.h"
#include "pv/module_voltage.h"
#include "store/logbook.h"

#include <algorithm>
#include <ostream>

namespace ullage {

namespace {

/// What the arguments ask for: the options over the sheet of the file or of the logbook.
Result<PvSheetText> stated(const PvCheckArguments& arguments, const std::vector<PvSheet>& sheets, const std::vector<Unit>& units) {
    PvSheetText sheet;
    if (!arguments.sheet.empty()) {
        const Result<std::string> text = read_whole_file(arguments.sheet);
        if (!text) return text.error();
        Result<PvSheetText> read = read_pv_sheet(text.value(), arguments.sheet);
        if (!read) return read;
        sheet = std::move(read).value();
    } else if (!arguments.sheet_name.empty()) {
        const auto at = std::ranges::find(sheets, arguments.sheet_name, &PvSheet::name);
        if (at == sheets.end())
            return Error{Failure::not_found, say(phrase("commands", "there is no PV sheet named `%1`"), arguments.sheet_name), "--sheet-name",
                         say(phrase("commands", "see the PV input page for their names"))};
        sheet.sheet = *at;
        const auto unit = std::ranges::find(units, at->unit_uuid, &Unit::uuid);
        if (unit != units.end()) sheet.unit = unit->name;
    }
    for (const auto& [name, value] : arguments.values) {
        const auto key = std::ranges::find(pv_keys(), std::string_view(name), &PvKey::name);
        if (Result<void> done = key->read(sheet, value); !done) {
            Error error = done.error();
            error.where = pv_option(name);
            return error;
        }
    }
    if (Result<void> good = check_pv_sheet(sheet.sheet); !good) return good.error();
    return sheet;
}

/// Limits stated outright go before those of the unit.
Result<void> add_limits(PvSheetText& sheet, const PvCheckArguments& arguments, const std::vector<Unit>& units) {
    if (arguments.logbook.empty() || sheet.unit.empty()) return {};
    const auto unit = std::ranges::find(units, sheet.unit, &Unit::name);
    if (unit == units.end())
        return Error{Failure::not_found, say(phrase("commands", "there is no unit named `%1` in the logbook"), sheet.unit), "--unit",
                     say(phrase("commands", "use the name of one of its units"))};
    const PvLimits claimed = pv_limits(*unit);
    const auto fill = [](std::optional<double>& own, const std::optional<double>& other) {
        if (!own) own = other;
    };
    fill(sheet.limits.max_v, claimed.max_v);
    fill(sheet.limits.max_a, claimed.max_a);
    fill(sheet.limits.max_w, claimed.max_w);
    fill(sheet.limits.start_v, claimed.start_v);
    fill(sheet.limits.short_circuit_a, claimed.short_circuit_a);
    return {};
}

} // namespace

std::string pv_option(const std::string& key) {
    std::string option = "--" + key;
    std::ranges::replace(option, '_', '-');
    return option;
}

Result<PvSheetText> asked_pv_sheet(const PvCheckArguments& arguments, std::vector<Message>& notices) {
    std::vector<Unit> units;
    std::vector<PvSheet> sheets;
    if (!arguments.logbook.empty()) {
        const SystemClock clock;
        const Result<Logbook> logbook = opened_logbook(arguments.logbook, OpenMode::read_only, clock, notices);
        if (!logbook) return logbook.error();
        Result<std::vector<Unit>> listed = logbook.value().units();
        if (!listed) return listed.error();
        Result<std::vector<PvSheet>> kept = logbook.value().pv_sheets();
        if (!kept) return kept.error();
        units = std::move(listed).value();
        sheets = std::move(kept).value();
    }
    Result<PvSheetText> sheet = stated(arguments, sheets, units);
    if (!sheet) return sheet;
    if (const Result<void> done = add_limits(sheet.value(), arguments, units); !done) return done.error();
    return sheet;
}

int pv_check_command(const PvCheckArguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<Message> notices;
    const Result<PvSheetText> sheet = asked_pv_sheet(arguments, notices);
    if (!sheet) return refuse(err, sheet.error());
    tell(err, notices);
    const PvCheck check = check_pv(sheet.value());
    return print(arguments.format == "json" ? pv_check_json(sheet.value(), check) : fitted_lines(pv_check_text(sheet.value(), check)), out, err);
}

} // namespace ullage
