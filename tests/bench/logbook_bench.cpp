// SPDX-License-Identifier: GPL-3.0-or-later
// Run sheets and long runs: import against plain SQLite inserting the same rows into equal tables (prepared statements, one transaction a sheet,
// WAL, synchronous=FULL), export to a file in each format and analysis against plain SQLite reading the same rows, and the peak memory of each. A
// benchmark, no test: it reports ratios of one run and never fails. Usage: bench_logbook [READINGS [SHEETS]] (default 1 000 000 and 1000); it works
// in a folder of its own under the temporary folder, in some 3 GB.
#include "formats/results/comparison_table.h"
#include "formats/sheets/run_sheet.h"
#include "run_analysis/run_analysis.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <malloc.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>

namespace {

using namespace ullage;
namespace fs = std::filesystem;

constexpr UtcMs sheets_begin_ms = 1'810'317'600'000;
constexpr int sheet_readings = 20, bench_units = 100;

/// A drain with a reading a second.
std::string long_sheet(long readings, int number) {
    std::string text = fmt::format("# unit: Unit {}\n# rated_energy_wh: 1200\n# meter: plug\n# meter_step_wh: 0.1\n# meter_limit_percent: 1\n"
                                   "# run: drain\n# started_full: yes\n# ended: cut-off seen\n# time_zone: UTC\n"
                                   "time,gauge_percent,register_wh\n",
                                   number % bench_units);
    const double last = static_cast<double>(readings - 1);
    for (long i = 0; i < readings; ++i)
        text += fmt::format("{},{:.0f},{:.1f}\n", format_iso8601(sheets_begin_ms + 3'600'000L * number + 1000 * i, "UTC"),
                            100 - 99 * static_cast<double>(i) / last, 900 * static_cast<double>(i) / last);
    return text;
}

/// kB of memory in use ("VmRSS") or at most since the last reset ("VmHWM").
long process_kb(const std::string& key) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(key)) return std::strtol(line.c_str() + key.size() + 1, nullptr, 10);
    return 0;
}

struct Cost {
    double seconds = 0;
    double peak_mb = 0; ///< above what was in use before
};

Cost cost_of(const std::function<void()>& work) {
    malloc_trim(0);
    std::ofstream("/proc/self/clear_refs") << "5";
    const long before_kb = process_kb("VmRSS");
    const auto begin = std::chrono::steady_clock::now();
    work();
    return {std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count(),
            static_cast<double>(process_kb("VmHWM") - before_kb) / 1024};
}

void must(const Result<void>& result) {
    if (result) return;
    std::fprintf(stderr, "%s\n", result.error().sentence().c_str());
    std::exit(1);
}

template <class T>
T must(Result<T> result) {
    if (result) return std::move(result).value();
    std::fprintf(stderr, "%s\n", result.error().sentence().c_str());
    std::exit(1);
}

void bring_in(Logbook& logbook, const std::string& text) {
    const SheetImport sheet = must(read_run_sheet(text, {}));
    (void)must(logbook.number_of(sheet.record));
    (void)must(logbook.import_run(sheet.record));
}

/// The rows of a sheet in tables like those of a logbook, without its triggers.
class PlainTables {
public:
    explicit PlainTables(const fs::path& path) : database_(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE) {
        database_.exec(
            "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;"
            "CREATE TABLE readings (id INTEGER PRIMARY KEY, uuid TEXT NOT NULL UNIQUE, run_id INTEGER NOT NULL, sequence INTEGER NOT NULL,"
            " UNIQUE (run_id, sequence)) STRICT;"
            "CREATE TABLE versions (reading_id INTEGER NOT NULL, version INTEGER NOT NULL, time_ms INTEGER NOT NULL, gauge REAL, register REAL,"
            " remark TEXT NOT NULL, withdrawn INTEGER NOT NULL, written_ms INTEGER NOT NULL, reason TEXT NOT NULL,"
            " PRIMARY KEY (reading_id, version)) STRICT, WITHOUT ROWID;");
    }
    void insert(long run, long readings) {
        SQLite::Transaction transaction(database_);
        SQLite::Statement reading(database_, "INSERT INTO readings (uuid, run_id, sequence) VALUES (?, ?, ?)");
        SQLite::Statement version(database_, "INSERT INTO versions VALUES (?, 1, ?, ?, ?, '', 0, 0, '')");
        for (long i = 0; i < readings; ++i) {
            reading.bind(1, fmt::format("{:08x}-0000-4000-8000-{:012x}", run, i));
            reading.bind(2, run);
            reading.bind(3, i + 1);
            reading.exec();
            reading.reset();
            version.bind(1, database_.getLastInsertRowid());
            version.bind(2, static_cast<std::int64_t>(sheets_begin_ms + 1000 * i));
            version.bind(3, 50.0);
            version.bind(4, static_cast<double>(i));
            version.exec();
            version.reset();
        }
        transaction.commit();
    }
    /// Every row, as text.
    [[nodiscard]] std::size_t read() const {
        SQLite::Statement query(database_,
                                "SELECT uuid, sequence, time_ms, gauge, register, remark FROM readings CROSS JOIN versions ON reading_id = id");
        std::size_t bytes = 0;
        while (query.executeStep())
            for (int c = 0; c < 6; ++c) bytes += query.getColumn(c).getString().size();
        return bytes;
    }

private:
    mutable SQLite::Database database_;
};

void report(const std::string& what, const Cost& ours, const Cost& reference) {
    fmt::print("{:<46} {:8.3f} s  peak {:6.0f} MB   reference {:8.3f} s   ratio {:5.2f}\n", what, ours.seconds, ours.peak_mb, reference.seconds,
               ours.seconds / reference.seconds);
    std::fflush(stdout);
}

} // namespace

int main(int count, char** words) {
    const long most = count > 1 ? std::atol(words[1]) : 1'000'000;
    const int sheets = count > 2 ? std::atoi(words[2]) : 1000;
    const test::TempFolder folder;
    const test::FakeClock clock;
    for (const int times : {1, 2, 4}) {
        std::vector<std::string> texts;
        for (int s = 0; s < sheets * times; ++s) texts.push_back(long_sheet(sheet_readings, s));
        Logbook logbook = must(Logbook::create(folder / fmt::format("s{}.ullage", times), clock));
        PlainTables plain(folder / fmt::format("s{}.plain", times));
        const Cost ours = cost_of([&] {
            for (const std::string& text : texts) bring_in(logbook, text);
        });
        report(fmt::format("import of {} sheets of {} readings", sheets * times, sheet_readings), ours, cost_of([&] {
                   for (int s = 0; s < sheets * times; ++s) plain.insert(s, sheet_readings);
               }));
    }
    for (const long readings : {most / 4, most / 2, most}) {
        const fs::path path = folder / fmt::format("r{}.ullage", readings);
        PlainTables plain(folder / fmt::format("r{}.plain", readings));
        Logbook logbook = must(Logbook::create(path, clock));
        const std::string text = long_sheet(readings, 0);
        report(fmt::format("import of a sheet of {} readings", readings), cost_of([&] { bring_in(logbook, text); }),
               cost_of([&] { plain.insert(0, readings); }));
        const Cost reference = cost_of([&] { (void)plain.read(); });
        std::vector<RunRecord> records;
        report(fmt::format("reading {} readings", readings), cost_of([&] { records = must(logbook.run_records()); }), reference);
        RunAnalysis analysis;
        report(fmt::format("analysis of {} readings", readings), cost_of([&] { analysis = analyse_run(records.front()); }), reference);
        for (const std::string& name : table_format_names()) {
            const TableFormat format = must(table_format_from(name));
            const StreamedTable table = table_of_run(RunTable::readings, records.front(), analysis);
            report(fmt::format("export of {} readings as {}", readings, name),
                   cost_of([&] { must(write_table(table, format, folder / fmt::format("r{}.{}", readings, name))); }), reference);
        }
    }
    return 0;
}
