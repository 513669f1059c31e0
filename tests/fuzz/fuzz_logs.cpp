// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/run_sheet.h"
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "run_analysis/run_analysis.h"
#include "support/simulated_log.h"
#include "support/source_dir.h"
#include "trace/clock_offset.h"
#include "trace/trace_import.h"

#include <fmt/format.h>

#include <span>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_samples = 20'000;

class LogFuzz final : public FuzzTarget {
public:
    LogFuzz(std::uint64_t seed, const fs::path& into)
        : logs_(texts_of(source_dir() / "tests/corpus/traces", ".log"), seed), sheets_(texts_of(source_dir() / "sample-data", ".csv"), ~seed),
          log_path_(into / "fuzz_log"), sheet_path_(into / "fuzz_sheet") {}

    bool one() override {
        const std::string sheet = sheets_.next(), log = logs_.next();
        write_bytes_to(sheet_path_, sheet);
        write_bytes_to(log_path_, log);
        ++inputs_;
        return read_sheet(sheet) && read_log() && analyse();
    }

    [[nodiscard]] std::string tally() const override {
        return fmt::format("{} inputs of either kind, {} sheets and {} logs read, {} runs analysed", inputs_, sheets_read_, logs_read_, analysed_);
    }

private:
    bool read_sheet(const std::string& text) {
        const Result<SheetImport> read = read_run_sheet(text, "sheet");
        if (!read) return !read.error().sentence().empty() || broken("an error of a sheet says nothing");
        ++sheets_read_;
        const std::string written = write_run_sheet(read.value().record);
        const Result<SheetImport> again = read_run_sheet(written, "sheet");
        if (!again) return broken("a sheet that was written cannot be read: " + again.error().sentence());
        if (write_run_sheet(again.value().record) != written) return broken("a sheet changes when it is written and read");
        record_ = read.value().record;
        for (std::size_t i = 0; i < record_.readings.size(); ++i) record_.readings[i].uuid = ReadingId(fmt::format("r{}", i));
        return true;
    }

    LayoutAnswers drawn_answers(const TraceDetection& detection) {
        LayoutAnswers answers = answers_of(detection.layout);
        answers.date_order = logs_.pick(2) == 0 ? DateOrder::day_first : DateOrder::month_first;
        answers.decimal = logs_.pick(2) == 0 ? '.' : ',';
        answers.energy_unit = "Wh";
        if (logs_.pick(4) == 0)
            answers.columns = {{ColumnRole::time, logs_.pick(3), {}},
                               {logs_.pick(2) == 0 ? ColumnRole::power : ColumnRole::energy, logs_.pick(4), {}}};
        return answers;
    }

    bool read_log() {
        samples_.clear();
        TraceReadOptions options;
        options.zone = logs_.pick(3) == 0 ? "Europe/Vienna" : "UTC";
        options.start_ms = 1'810'000'800'000;
        Result<TracePreview> preview = preview_trace(log_path_, {}, {}, options);
        if (preview && open_questions(preview.value().detection))
            preview = preview_trace(log_path_, drawn_answers(preview.value().detection), {}, options);
        if (!preview) return !preview.error().sentence().empty() || broken("an error of a log says nothing");
        const TraceDetection& detection = preview.value().detection;
        if (say_layout(detection).empty()) return broken("a layout has no words");
        if (answers_text(answers_from(answers_text(answers_of(detection.layout)))) != answers_text(answers_of(detection.layout)))
            return broken("answers change when they are kept");
        if (open_questions(detection)) return true;
        const Result<TraceTally> checked = check_trace(log_path_, detection.layout, options);
        bool in_order = true, all_finite = true;
        std::optional<UtcMs> before;
        const Result<TraceTally> read = stream_trace(log_path_, detection.layout, options, [&](std::span<const TraceSample> some) {
            for (const TraceSample& sample : some) {
                in_order = in_order && (!before || sample.time_ms > *before);
                before = sample.time_ms;
                for (const auto& value : {sample.register_wh, sample.power_w, sample.voltage_v, sample.current_a})
                    all_finite = all_finite && finite(value);
                if (samples_.size() < most_samples) samples_.push_back(sample);
            }
            return Result<void>();
        });
        if (checked.ok() != read.ok()) return broken("a log is read in one way and not in the other");
        if (!read) return true;
        ++logs_read_;
        const TraceTally& tally = read.value();
        if (!in_order) return broken("samples are out of order");
        if (!all_finite) return broken("a value is not finite");
        if (tally.rows != tally.taken + tally.left_out()) return broken("rows are lost without being counted");
        if (tally.taken != checked.value().taken || tally.fingerprint != checked.value().fingerprint) return broken("a log is read in two ways");
        if (!record_.readings.empty() && logs_.pick(4) == 0) {
            const Result<ClockOffset> offset = estimate_clock_offset(log_path_, detection.layout, options, record_);
            if (offset && !(offset.value().u_s > 0)) return broken("an offset has no uncertainty");
        }
        return true;
    }

    /// The sheet's run with the log's samples moved to its beginning.
    bool analyse() {
        if (record_.readings.empty() || record_.readings.size() > 2000 || logs_.pick(3) != 0) return true;
        RunRecord record = record_;
        if (!samples_.empty()) {
            const UtcMs shift_ms = record.readings.front().values.time_ms - samples_.front().time_ms;
            for (TraceSample& sample : samples_) sample.time_ms += shift_ms;
            if (logs_.pick(2) == 0)
                for (Reading& reading : record.readings) reading.values.register_wh.reset();
            give_log(record, samples_);
        }
        const RunAnalysis analysis = analyse_run(record);
        ++analysed_;
        for (const Quantity& quantity : analysis.quantities)
            if (quantity.kind == Kind::not_known && quantity.reason.empty()) return broken(quantity.key + " is not known without a reason");
        return true;
    }

    Mutator logs_, sheets_;
    fs::path log_path_, sheet_path_;
    RunRecord record_;
    std::vector<TraceSample> samples_;
    long inputs_ = 0, sheets_read_ = 0, logs_read_ = 0, analysed_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_logs(std::uint64_t seed, const fs::path& into) { return std::make_unique<LogFuzz>(seed, into); }

} // namespace ullage::test
