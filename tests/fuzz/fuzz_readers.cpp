// SPDX-License-Identifier: GPL-3.0-or-later
// Feeds spoiled logs and run sheets to their readers, and what these take to the analysis. Usage: fuzz_readers [--seconds N] [--seed S] [--into
// FOLDER]. The inputs at work lie in FOLDER (default: .) as fuzz_log and fuzz_sheet, so that what ended the program can be looked at. Exit code 1
// where a reader breaks a promise; the sanitizers of the build and a limit of 60 s for each input end the program themselves.
#include "exchange/run_sheet.h"
#include "fleet/run_analysis.h"
#include "fuzz/mutator.h"
#include "support/simulated_log.h"
#include "support/source_dir.h"
#include "trace/clock_offset.h"
#include "trace/trace_import.h"

#include <fmt/format.h>

#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

namespace {

using namespace ullage;
namespace fs = std::filesystem;

constexpr unsigned most_seconds_an_input = 60;
constexpr std::size_t most_samples = 20'000;

struct Arguments {
    long seconds = 60;
    std::uint64_t seed = 1;
    fs::path into = ".";
};

std::vector<std::string> texts_of(const fs::path& folder, std::string_view ending) {
    std::vector<fs::path> paths;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ending) paths.push_back(entry.path());
    std::ranges::sort(paths); // the same seed is to spoil the same texts
    std::vector<std::string> texts;
    for (const fs::path& path : paths) {
        std::ifstream file(path, std::ios::binary);
        texts.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    return texts;
}

class Fuzz {
public:
    explicit Fuzz(const Arguments& arguments)
        : logs_(texts_of(test::source_dir() / "tests/corpus/traces", ".log"), arguments.seed),
          sheets_(texts_of(test::source_dir() / "sample-data", ".csv"), ~arguments.seed), log_path_(arguments.into / "fuzz_log"),
          sheet_path_(arguments.into / "fuzz_sheet") {}

    /// False where a reader broke a promise; it has said so.
    bool one() {
        alarm(most_seconds_an_input);
        const std::string sheet = sheets_.next(), log = logs_.next();
        std::ofstream(sheet_path_, std::ios::binary) << sheet;
        std::ofstream(log_path_, std::ios::binary) << log;
        ++inputs;
        return read_sheet(sheet) && read_log() && analyse();
    }

    long inputs = 0, sheets_read = 0, logs_read = 0, analysed = 0;

private:
    static bool broken(const std::string& promise) {
        fmt::print("BROKEN: {}\n", promise);
        return false;
    }

    bool read_sheet(const std::string& text) {
        const Result<SheetImport> read = read_run_sheet(text, "sheet");
        if (!read) return !read.error().sentence().empty() || broken("an error of a sheet says nothing");
        ++sheets_read;
        const std::string written = write_run_sheet(read.value().record);
        const Result<SheetImport> again = read_run_sheet(written, "sheet");
        if (!again) return broken("a sheet that was written cannot be read: " + again.error().sentence());
        if (write_run_sheet(again.value().record) != written) return broken("a sheet changes when it is written and read");
        record_ = read.value().record;
        for (std::size_t i = 0; i < record_.readings.size(); ++i) record_.readings[i].uuid = fmt::format("r{}", i);
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
        if (layout_sentence(detection).empty()) return broken("a layout has no words");
        if (answers_text(answers_from(answers_text(answers_of(detection.layout)))) != answers_text(answers_of(detection.layout)))
            return broken("answers change when they are kept");
        if (open_questions(detection)) return true;
        const Result<TraceTally> checked = check_trace(log_path_, detection.layout, options);
        bool in_order = true, finite = true;
        std::optional<UtcMs> before;
        const Result<TraceTally> read = stream_trace(log_path_, detection.layout, options, [&](std::span<const TraceSample> some) {
            for (const TraceSample& sample : some) {
                in_order = in_order && (!before || sample.time_ms > *before);
                before = sample.time_ms;
                for (const auto& value : {sample.register_wh, sample.power_w, sample.voltage_v, sample.current_a})
                    finite = finite && std::isfinite(value.value_or(0));
                if (samples_.size() < most_samples) samples_.push_back(sample);
            }
            return Result<void>();
        });
        if (checked.ok() != read.ok()) return broken("a log is read in one way and not in the other");
        if (!read) return true;
        ++logs_read;
        const TraceTally& tally = read.value();
        if (!in_order) return broken("samples are out of order");
        if (!finite) return broken("a value is not finite");
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
            test::give_log(record, samples_);
        }
        const RunAnalysis analysis = analyse_run(record);
        ++analysed;
        for (const Quantity& quantity : analysis.quantities)
            if (quantity.kind == Kind::not_known && quantity.reason.empty()) return broken(quantity.key + " is not known without a reason");
        return true;
    }

    test::Mutator logs_, sheets_;
    fs::path log_path_, sheet_path_;
    RunRecord record_;
    std::vector<TraceSample> samples_;
};

template <class Number>
bool read_number(std::string_view text, Number& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size();
}

} // namespace

int main(int argc, char** argv) {
    Arguments arguments;
    for (int i = 1; i + 1 < argc; i += 2) {
        const std::string_view word = argv[i], value = argv[i + 1];
        const bool understood = word == "--seconds" ? read_number(value, arguments.seconds)
                                : word == "--seed"  ? read_number(value, arguments.seed)
                                                    : word == "--into";
        if (word == "--into") arguments.into = value;
        if (!understood) {
            fmt::print(stderr, "Usage: fuzz_readers [--seconds N] [--seed S] [--into FOLDER]\n");
            return 2;
        }
    }
    Fuzz fuzz(arguments);
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(arguments.seconds);
    bool sound = true;
    while (sound && std::chrono::steady_clock::now() < end) sound = fuzz.one();
    fmt::print("seed {}: {} inputs of either kind, {} sheets and {} logs read, {} runs analysed\n", arguments.seed, fuzz.inputs, fuzz.sheets_read,
               fuzz.logs_read, fuzz.analysed);
    if (!sound) fmt::print("the inputs lie in {}\n", fs::absolute(arguments.into).string());
    return sound ? 0 : 1;
}
