// SPDX-License-Identifier: GPL-3.0-or-later
// Live sources: eight that give ten samples a second each, from the payload (JSON) through gate and events into a logbook on the disk, against plain
// SQLite committing the same numbers as rows in the same batches; what share of one core that is, and whether memory grows. A benchmark, no test: it
// reports ratios of one run and never fails. Usage: bench_live [HOURS] (default 1), in a folder of its own under the temporary folder.
#include "live/live_trace.h"
#include "live/payload_number.h"
#include "live/sample_batch.h"
#include "live/sample_gate.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

namespace {

using namespace ullage;

constexpr int sources = 8, per_second = 10;
constexpr UtcMs bench_start_ms = 1'810'317'600'000;

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

long resident_kb() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmRSS:")) return std::strtol(line.c_str() + 6, nullptr, 10);
    return 0;
}

TraceSample truth_at(int source, long tick) {
    const double seconds = static_cast<double>(tick) / per_second;
    const double watts = 50 * (source + 1) + 5 * std::sin(seconds / 60);
    return {bench_start_ms + 1000 * tick / per_second, std::floor(500 * (source + 1) * seconds / 3600) / 10, watts, {}, {}};
}

std::string payload_of(const TraceSample& sample) { return fmt::format(R"({{"p":{:.1f},"e":{:.1f}}})", *sample.power_w, *sample.register_wh); }

struct Stream {
    LiveTrace live;
    SampleGate gate;
    EventDetector detector{0.1};
    SampleBatch batch;
};

double read_live(Logbook& book, long ticks, long& grown_kb) {
    LiveSource source;
    source.kind = SourceKind::mqtt;
    source.address = "192.0.2.1";
    (void)take_fields(source, "power bench/plug#/p\nregister bench/plug#/e");
    const std::vector<const LiveField*> fields{&source.fields[0], &source.fields[1]};
    std::vector<Stream> streams;
    for (int s = 0; s < sources; ++s) {
        Unit unit;
        unit.name = fmt::format("Specimen {}", s);
        ullage::Run run;
        run.unit_uuid = book.add(unit).value().uuid;
        streams.push_back({LiveTrace::begin(book, book.add(run).value().uuid, std::nullopt, source).value(), SampleGate(), EventDetector(0.1), {}});
    }
    const double begin_s = processor_seconds();
    long settled_kb = 0;
    for (long tick = 0; tick < ticks; ++tick) {
        if (tick == ticks / 4) settled_kb = resident_kb();
        for (int s = 0; s < sources; ++s) {
            Stream& stream = streams[static_cast<std::size_t>(s)];
            const TraceSample truth = truth_at(s, tick);
            const auto numbers = numbers_in(payload_of(truth), fields);
            const std::int64_t steady_ms = 1000 * tick / per_second;
            const auto sample = stream.gate.take({{0, numbers[1], numbers[0], {}, {}}, truth.time_ms, steady_ms, false});
            if (!sample) continue;
            stream.detector.take(*sample);
            (void)stream.detector.take_events();
            stream.batch.add(*sample, steady_ms);
            if (!stream.batch.due(steady_ms)) continue;
            const std::vector<TraceSample> due(stream.batch.samples().begin(), stream.batch.samples().end());
            (void)stream.live.write(book, due, 0);
            stream.batch.written(due.size(), steady_ms);
        }
        if (tick % per_second == 0) (void)book.settle();
    }
    grown_kb = resident_kb() - settled_kb;
    return processor_seconds() - begin_s;
}

double plain_rows(const std::string& path, long ticks) {
    SQLite::Database database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
    database.exec("CREATE TABLE samples (source INTEGER, time_ms INTEGER, register_wh REAL, power_w REAL) STRICT");
    SQLite::Statement insert(database, "INSERT INTO samples VALUES (?1, ?2, ?3, ?4)");
    constexpr long batch_ticks = SampleBatch::due_after_ms / 1000 * per_second;
    const double begin_s = processor_seconds();
    for (long from = 0; from < ticks; from += batch_ticks)
        for (int s = 0; s < sources; ++s) {
            SQLite::Transaction transaction(database);
            for (long tick = from; tick < std::min(from + batch_ticks, ticks); ++tick) {
                const TraceSample sample = truth_at(s, tick);
                insert.reset();
                insert.bind(1, s);
                insert.bind(2, static_cast<std::int64_t>(sample.time_ms));
                insert.bind(3, *sample.register_wh);
                insert.bind(4, *sample.power_w);
                insert.exec();
            }
            transaction.commit();
        }
    return processor_seconds() - begin_s;
}

} // namespace

int main(int argc, char** argv) {
    const double hours = argc > 1 ? std::strtod(argv[1], nullptr) : 1;
    const auto ticks = static_cast<long>(hours * 3600 * per_second);
    const test::TempFolder folder;
    const test::FakeClock clock;
    Logbook book = Logbook::create(folder / "live.ullage", clock).value();
    long grown_kb = 0;
    const double live_s = read_live(book, ticks, grown_kb);
    const double rows_s = plain_rows((folder / "rows.db").string(), ticks);
    fmt::print(
        "{} sources, {} samples a second each, {} h: {:.1f} s of processor time, {:.2f} % of one core; {:.2f} times plain SQLite with the same "
        "numbers as rows ({:.1f} s); memory grew by {} kB over the last three quarters\n",
        sources, per_second, hours, live_s, 100 * live_s / (hours * 3600), live_s / rows_s, rows_s, grown_kb);
    return 0;
}
