// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/fuzz_target.h"
#include "fuzz/spoiled_logbook.h"
#include "run_analysis/run_analysis.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "unit/unit_analysis.h"

#include <fmt/format.h>

#include <map>
#include <span>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_readings = 3000;

bool all_finite(const Quantity& quantity) { return finite(quantity.value) && finite(quantity.lower) && finite(quantity.upper); }

class LogbookFuzz final : public FuzzTarget {
public:
    LogbookFuzz(std::uint64_t seed, const fs::path& into)
        : spoiler_(seed, into), folder_(into / "fuzz_logbook"), path_(folder_ / "fuzz.ullage"), what_path_(into / "fuzz_logbook_change"),
          draw_({"x"}, seed) {
        fs::remove_all(folder_);
        fs::create_directories(folder_);
    }

    bool one() override {
        const LogbookSpoiler::Spoiled spoiled = spoiler_.next(path_);
        write_bytes_to(what_path_, spoiled.what);
        ++inputs_;
        const auto before = files();
        for (const OpenMode mode : {OpenMode::read_only, OpenMode::record}) {
            const Result<Logbook> opened = Logbook::open(path_, mode, clock_);
            if (!opened || mode == OpenMode::read_only)
                if (files() != before) return broken("a file that was refused, or only looked at, has been changed");
            if (!opened) {
                if (opened.error().sentence().empty()) return broken("a file is refused without a word");
                continue;
            }
            if (spoiled.other_schema) return broken("a file with other tables, views or triggers is opened:\n" + spoiled.what);
            if (!content_holds(opened.value())) return broken("that was:\n" + spoiled.what);
            ++opened_;
        }
        return true;
    }

    [[nodiscard]] std::string tally() const override {
        return fmt::format("{} files, opened {} times, {} runs analysed, {} calls refused afterwards", inputs_, opened_, analysed_, refused_);
    }

private:
    [[nodiscard]] std::map<std::string, std::string> files() const {
        std::map<std::string, std::string> bytes;
        for (const auto& entry : fs::directory_iterator(folder_)) bytes[entry.path().filename().string()] = bytes_of(entry.path());
        return bytes;
    }

    /// What a call gave; counts where it gave none.
    template <class T>
    std::optional<T> got(Result<T> result) {
        if (result) return std::move(result).value();
        ++refused_;
        if (result.error().sentence().empty()) broken("a call is refused without a word");
        return std::nullopt;
    }

    template <class Thing>
    static bool kept_to(const Thing& thing, const char* name) {
        const Result<void> sound = store::check(thing);
        return sound || broken(fmt::format("{} is not what may be entered: {}", name, sound.error().sentence()));
    }

    bool content_holds(const Logbook& logbook) {
        for (const Unit& unit : got(logbook.units()).value_or(std::vector<Unit>()))
            if (!kept_to(unit, "a unit")) return false;
        for (const Meter& meter : got(logbook.meters()).value_or(std::vector<Meter>()))
            if (!kept_to(meter, "a meter")) return false;
        for (const PvSheet& sheet : got(logbook.pv_sheets()).value_or(std::vector<PvSheet>()))
            if (!kept_to(sheet, "a PV sheet")) return false;
        for (const LoadList& list : got(logbook.load_lists()).value_or(std::vector<LoadList>()))
            if (const Result<void> sound = check(list); !sound) return broken("a load list is not what may be entered: " + sound.error().sentence());
        (void)got(logbook.trace_answers());
        const auto records = got(logbook.run_records());
        if (!records) return true;
        for (const RunRecord& record : *records)
            if (!run_holds(logbook, record)) return false;
        return analyses_hold(*records);
    }

    bool run_holds(const Logbook& logbook, const RunRecord& record) {
        if (!kept_to(record.run, "a run")) return false;
        for (const Reading& reading : record.readings) {
            if (!kept_to(reading.values, "a reading")) return false;
            if (reading.version > 1) (void)got(logbook.history(reading.uuid));
        }
        (void)got(logbook.draft(record.run.uuid));
        for (const Photo& photo : got(logbook.photos(record.run.uuid)).value_or(std::vector<Photo>())) (void)got(logbook.photo_bytes(photo.uuid));
        for (const Trace& trace : got(logbook.traces(record.run.uuid)).value_or(std::vector<Trace>())) {
            bool sound = true;
            std::optional<UtcMs> before;
            const Result<void> read = logbook.read_samples(trace.uuid, trace.first_ms, trace.last_ms, [&](std::span<const TraceSample> some) {
                for (const TraceSample& sample : some) {
                    sound = sound && finite(sample.register_wh) && finite(sample.power_w) && finite(sample.voltage_v) && finite(sample.current_a) &&
                            (!before || *before < sample.time_ms);
                    before = sample.time_ms;
                }
                return sound;
            });
            refused_ += !read;
            if (!sound) return broken("a sample is not finite, or out of order");
        }
        return true;
    }

    bool analyses_hold(const std::vector<RunRecord>& records) {
        for (const RunRecord& record : records) {
            if (record.readings.size() > most_readings) continue;
            const RunAnalysis analysis = analyse_run(record);
            ++analysed_;
            for (const Quantity& quantity : analysis.quantities) {
                if (!all_finite(quantity)) return broken(quantity.key + " of a run is not finite");
                if (quantity.kind == Kind::not_known && quantity.reason.empty()) return broken(quantity.key + " is not known without a reason");
            }
        }
        if (draw_.pick(4) != 0) return true; // units cost most of the time
        for (const UnitAnalysis& unit : analyse_units(records)) {
            for (const LoadPrediction& prediction : unit.predictions)
                for (const Quantity* quantity : {&prediction.deliverable_wh, &prediction.usable_fraction, &prediction.run_time_h})
                    if (!all_finite(*quantity)) return broken("a prediction is not finite");
        }
        return true;
    }

    LogbookSpoiler spoiler_;
    fs::path folder_, path_, what_path_;
    Mutator draw_;
    FakeClock clock_;
    long inputs_ = 0, opened_ = 0, analysed_ = 0, refused_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_logbooks(std::uint64_t seed, const fs::path& into) { return std::make_unique<LogbookFuzz>(seed, into); }

} // namespace ullage::test
