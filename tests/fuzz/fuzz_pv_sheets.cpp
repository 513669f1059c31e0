// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/pv_sheet_text.h"
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "support/source_dir.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constexpr const char* full_sheet = "# of the label\nname: roof\nmodule: slate 40\nunit: Tarrow 2k\nvoc_v: 24,3\nvmp_v: 20\nisc_a: 10.5\nimp_a: 9.9\n"
                                   "voc_coefficient: -65 mV/°C\nvmp_coefficient: -0.35 %/°C\npower_coefficient: -0.4 %/°C\nnoct_c: 45\nseries: 3\n"
                                   "parallel: 2\ncoldest_c: -15\nhottest_c: 38\npv_max_v: 60\npv_max_a: 20\npv_max_w: 800\npv_start_v: 12\n"
                                   "pv_short_circuit_a: 30\nvoc_tolerance_percent: 2.5\n";

std::vector<std::string> sheets_to_spoil() {
    std::vector<std::string> sheets = texts_of(source_dir() / "sample-data", ".txt");
    sheets.emplace_back(full_sheet);
    return sheets;
}

class PvSheetFuzz final : public FuzzTarget {
public:
    PvSheetFuzz(std::uint64_t seed, const fs::path& into) : sheets_(sheets_to_spoil(), seed), path_(into / "fuzz_pv_sheet.txt") {}

    bool one() override {
        const std::string text = sheets_.next();
        write_bytes_to(path_, text);
        ++inputs_;
        const Result<PvSheetText> read = read_pv_sheet(text, "sheet");
        if (!read) return !read.error().sentence().empty() || broken("an error of a PV sheet says nothing");
        ++read_;
        return same_when_written(read.value()) && check_holds(read.value());
    }

    [[nodiscard]] std::string tally() const override { return fmt::format("{} PV sheets, {} of them read", inputs_, read_); }

private:
    static bool same_when_written(const PvSheetText& sheet) {
        const std::string written = pv_sheet_text(sheet);
        const Result<PvSheetText> again = read_pv_sheet(written, "sheet");
        if (!again) return broken("a PV sheet that was written cannot be read: " + again.error().sentence());
        return pv_sheet_text(again.value()) == written || broken("a PV sheet changes when it is written and read");
    }

    static bool check_holds(const PvSheetText& sheet) {
        const PvCheck check = check_pv(sheet);
        if (check.headline.empty()) return broken("a verdict has no words");
        for (const auto& value : {check.cold_voc_v, check.hot_vmp_v, check.hot_cell_c, check.standard_w, check.hot_w, check.conductor_a})
            if (!finite(value)) return broken("a figure of a PV check is not finite");
        for (const PvComparison& comparison : check.comparisons) {
            if (!finite(comparison.value) || !finite(comparison.limit) || !finite(comparison.margin))
                return broken("the comparison " + comparison.key + " is not finite");
            if (comparison.outcome == PvComparison::Outcome::not_known && comparison.sentence.empty())
                return broken("the comparison " + comparison.key + " is not known without a reason");
        }
        // Danger is never hidden by the rest of the verdict.
        if (check.cold_voc_v && sheet.limits.max_v && *check.cold_voc_v > *sheet.limits.max_v && check.verdict != PvVerdict::over_voltage_when_cold)
            return broken("a string beyond the voltage limit gets another verdict");
        const bool known =
            std::ranges::none_of(check.comparisons, [](const PvComparison& each) { return each.outcome == PvComparison::Outcome::not_known; });
        if ((check.verdict == PvVerdict::fits || check.verdict == PvVerdict::clips) && !known)
            return broken("a string fits though not all was compared");
        if (check.verdict_text.empty()) return broken("a verdict is empty");
        const std::vector<PvCurvePoint> curve = pv_curve(sheet.sheet);
        if (std::ranges::any_of(curve, [](const PvCurvePoint& point) { return !finite(point.voc_v) || !finite(point.vmp_v); }))
            return broken("a curve is not finite");
        if (pv_check_text(sheet, check).empty()) return broken("a PV check has no text");
        return nlohmann::json::accept(pv_check_json(sheet, check)) || broken("a PV check is no JSON");
    }

    Mutator sheets_;
    fs::path path_;
    long inputs_ = 0, read_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_pv_sheets(std::uint64_t seed, const fs::path& into) { return std::make_unique<PvSheetFuzz>(seed, into); }

} // namespace ullage::test
