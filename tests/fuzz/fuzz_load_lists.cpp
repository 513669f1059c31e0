// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/load_list_table.h"
#include "formats/sheets/load_list_file.h"
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "sizing/load_totals.h"
#include "support/source_dir.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constexpr const char* measured_list = "# load_list: cabin\n# remark: with a \\n in it\n"
                                      "hours_per_day,name,measured_wh,measured_hours,night_hours,start_peak_w,how_many,always_connected\n"
                                      "24,cooler,500,24,12,900,1,yes\n2,\"lamp, old\",10,1,2,,3,no\n";

std::vector<std::string> lists_to_spoil() {
    std::vector<std::string> lists = texts_of(source_dir() / "sample-data/load-lists", ".csv");
    lists.emplace_back(measured_list);
    return lists;
}

class LoadListFuzz final : public FuzzTarget {
public:
    LoadListFuzz(std::uint64_t seed, const fs::path& into) : lists_(lists_to_spoil(), seed), path_(into / "fuzz_load_list.csv") {}

    bool one() override {
        const std::string text = lists_.next();
        write_bytes_to(path_, text);
        ++inputs_;
        const Result<LoadList> read = read_load_list(text, "list");
        if (!read) return !read.error().sentence().empty() || broken("an error of a load list says nothing");
        ++read_;
        return same_when_written(read.value()) && totals_hold(read.value()) && tables_hold(read.value());
    }

    [[nodiscard]] std::string tally() const override { return fmt::format("{} load lists, {} of them read", inputs_, read_); }

private:
    static bool same_when_written(const LoadList& list) {
        if (const Result<void> sound = check(list); !sound) return broken("a list is read that cannot be kept: " + sound.error().sentence());
        const Result<LoadList> again = read_load_list(write_load_list(list), "list");
        if (!again) return broken("a list that was written cannot be read: " + again.error().sentence());
        return again.value() == list || broken("a list changes when it is written and read");
    }

    static bool totals_hold(const LoadList& list) {
        const LoadTotals totals = load_totals(list);
        for (const auto& value : {std::optional(totals.daily_wh), std::optional(totals.mean_w), std::optional(totals.running_w),
                                  std::optional(totals.peak_w), std::optional(totals.night_wh), totals.mean_on_w, totals.duty, totals.night_share})
            if (!finite(value)) return broken("a total is not finite");
        if (totals.hours_on < 0 || totals.hours_on > 24 || totals.hours_on_most < totals.hours_on) return broken("hours on beyond a day");
        if (totals.duty && !(*totals.duty >= 0 && *totals.duty <= 1 + 1e-9)) return broken("a duty is no share");
        if (totals.night_share && !(*totals.night_share >= 0 && *totals.night_share <= 1 + 1e-9)) return broken("a share of the night is none");
        const std::optional<CommonLoad> common = common_load_of(list);
        return common.has_value() == totals.mean_on_w.has_value() || broken("a list with a load gives none to compare at");
    }

    static bool tables_hold(const LoadList& list) {
        for (const Table& table : {load_list_table(list), load_lists_table({list})}) {
            for (const TableFormat format : {TableFormat::text, TableFormat::csv, TableFormat::markdown, TableFormat::html, TableFormat::latex})
                if (table_text(table, format).empty()) return broken("a table is empty");
            if (!nlohmann::json::accept(table_text(table, TableFormat::json))) return broken("a table is no JSON");
        }
        return true;
    }

    Mutator lists_;
    fs::path path_;
    long inputs_ = 0, read_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_load_lists(std::uint64_t seed, const fs::path& into) { return std::make_unique<LoadListFuzz>(seed, into); }

} // namespace ullage::test
