// SPDX-License-Identifier: GPL-3.0-or-later
// A night with two units and two kinds of source, read without a window: the recorder is killed twice, the router is gone for half an hour, and both
// units cut off. Forty minutes of drain each run of the tests; a whole night with ULLAGE_NIGHT_HOURS=9 (nine minutes). ULLAGE_NIGHT_INTO names a
// folder that keeps the logbook and the reports.
#include "app/sources/peers.h"
#include "live/live_trace.h"
#include "store/logbook.h"
#include "support/temp_folder.h"

#include <QFile>
#include <QProcess>
#include <QTest>

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace ullage {
namespace {

using namespace test;

constexpr std::int64_t minute_of_drain_ms = 60'000;
/// Between being measured and being taken lie at most a second of the test, on a busy machine.
constexpr std::int64_t late_of_drain_ms = 60'000;
/// A source that was away is asked again after ten seconds of the test at the latest; a process that was killed starts within some.
constexpr std::int64_t longest_return_ms = 15 * minute_of_drain_ms;

struct DrainClockOf final : Clock {
    explicit DrainClockOf(const DrainTruth& of) : truth(of) {}
    [[nodiscard]] UtcMs now_ms() const override { return DrainTruth::begin_ms + truth.now_ms(); }
    const DrainTruth& truth;
};

struct Gap {
    std::int64_t from_ms, to_ms; ///< of the drain; what caused it
};

/// One of the two units.
struct Bench {
    DrainTruth* truth;
    std::unique_ptr<Peer> peer;
    std::string unit_name;
    RunId run_uuid;
};

std::vector<TraceSample> samples_of(const Logbook& book, const Trace& trace) {
    std::vector<TraceSample> samples;
    EXPECT_TRUE(book.read_samples(trace.uuid, trace.first_ms, trace.last_ms, [&samples](std::span<const TraceSample> some) {
        samples.insert(samples.end(), some.begin(), some.end());
        return true;
    }));
    return samples;
}

RunId new_bench(Logbook& book, const std::string& unit_name, const std::string& meter_name, const LiveSource& source) {
    Unit unit;
    unit.name = unit_name;
    unit.rated_energy_wh = 12'000;
    Meter meter;
    meter.name = meter_name;
    meter.step_wh = 0.1;
    meter.limit_percent = 1;
    ullage::Run run;
    run.unit_uuid = book.add(unit).value().uuid;
    run.meter_uuid = book.add(meter).value().uuid;
    run.load = "heater, constant";
    run.started_full = true;
    const RunId uuid = book.add(run).value().uuid;
    ReadingValues full;
    full.time_ms = DrainTruth::begin_ms;
    full.gauge_percent = 100;
    full.register_wh = DrainTruth::first_wh;
    EXPECT_TRUE(book.record(uuid, full));
    EXPECT_TRUE(book.set_meter_source(*run.meter_uuid, source_text(source)));
    return uuid;
}

class LiveNight : public testing::Test {
protected:
    void SetUp() override {
        const char* hours = std::getenv("ULLAGE_NIGHT_HOURS");
        night_ms = static_cast<std::int64_t>((hours ? std::atof(hours) : 2.0 / 3) * 3'600'000);
        router_ms = std::min<std::int64_t>(30 * minute_of_drain_ms, night_ms / 5);
        const char* into = std::getenv("ULLAGE_NIGHT_INTO");
        folder = into ? std::filesystem::path(into) : temporary.path();
        std::filesystem::create_directories(folder);
        for (DrainTruth* truth : {&one_truth, &two_truth}) truth->rise_w_per_s = 0.01;
    }
    void TearDown() override {
        recorder.kill();
        recorder.waitForFinished();
    }
    void startRecorder() {
        recorder.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        recorder.start(QStringLiteral(ULLAGE_NIGHT_RECORDER),
                       {QString::fromStdString(logbook().string()), QString::number(DrainTruth::begin_ms), QString::number(one_truth.started_ms())});
        ASSERT_TRUE(recorder.waitForStarted());
    }
    void killRecorder(std::int64_t away_ms) {
        const std::int64_t from_ms = one_truth.now_ms();
        recorder.kill();
        recorder.waitForFinished();
        until(from_ms + away_ms);
        startRecorder();
        gaps.push_back({from_ms, one_truth.now_ms()});
    }
    void until(std::int64_t drain_ms) const {
        EXPECT_TRUE(QTest::qWaitFor([&] { return one_truth.now_ms() >= drain_ms; }, static_cast<int>(night_ms / 60 + 60'000)));
    }
    [[nodiscard]] std::filesystem::path logbook() const { return folder / "night.ullage"; }
    /// What the program prints for these words.
    QByteArray program(const QStringList& words) {
        QProcess command;
        command.start(QStringLiteral(ULLAGE_PROGRAM), words);
        EXPECT_TRUE(command.waitForFinished(120'000));
        EXPECT_EQ(command.exitCode(), 0) << command.readAllStandardError().toStdString();
        return command.readAllStandardOutput();
    }
    void expectTrue(Logbook& book, const Bench& bench);
    void expectReports(const Bench& bench);

    TempFolder temporary;
    std::filesystem::path folder;
    std::int64_t night_ms = 0, router_ms = 0;
    DrainTruth one_truth, two_truth = one_truth.beside();
    DrainClockOf clock{one_truth};
    QProcess recorder;
    std::vector<Gap> gaps;
};

/// What was recorded of one unit is the truth, with the three gaps and no other, and its cut-off to the sample; the mark that is proposed is set.
void LiveNight::expectTrue(Logbook& book, const Bench& bench) {
    const auto traces = book.traces(bench.run_uuid).value();
    ASSERT_EQ(traces.size(), 1U) << "one trace through both kills";
    const auto samples = samples_of(book, traces[0]);
    ASSERT_GT(samples.size(), 50U);
    std::vector<Gap> found;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const std::int64_t at_ms = samples[i].time_ms - DrainTruth::begin_ms;
        if (samples[i].power_w && std::abs(at_ms - bench.truth->off_ms()) > late_of_drain_ms) {
            EXPECT_LE(*samples[i].power_w, bench.truth->power_w(at_ms) + 0.2);
            EXPECT_GE(*samples[i].power_w, bench.truth->power_w(at_ms - late_of_drain_ms) - 0.2);
        }
        if (samples[i].register_wh) {
            EXPECT_LE(*samples[i].register_wh, bench.truth->register_wh(at_ms) + 0.01);
            EXPECT_GE(*samples[i].register_wh, bench.truth->register_wh(at_ms - late_of_drain_ms) - 0.11);
        }
        if (i > 0 && samples[i].time_ms - samples[i - 1].time_ms > 2 * minute_of_drain_ms)
            found.push_back({samples[i - 1].time_ms - DrainTruth::begin_ms, at_ms});
    }
    ASSERT_EQ(found.size(), gaps.size());
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        // What was taken and not yet written when it was killed is five seconds at most, as the recorder counts them.
        EXPECT_NEAR(static_cast<double>(found[i].from_ms), static_cast<double>(gaps[i].from_ms), static_cast<double>(late_of_drain_ms))
            << "gap " << i;
        EXPECT_GE(found[i].to_ms, gaps[i].to_ms) << "gap " << i;
        EXPECT_LE(found[i].to_ms, gaps[i].to_ms + longest_return_ms) << "gap " << i;
    }

    const RunRecord record = book.run_record(bench.run_uuid).value();
    const auto events =
        proposed_events(
            traces,
            [&book](const Trace& trace, const SampleVisitor& visit) { return book.read_samples(trace.uuid, trace.first_ms, trace.last_ms, visit); },
            record)
            .value();
    for (const Gap& gap : found)
        EXPECT_EQ(std::ranges::count_if(events,
                                        [&gap](const LiveEvent& event) {
                                            return event.kind == LiveEventKind::no_answer && event.moment_ms == DrainTruth::begin_ms + gap.from_ms;
                                        }),
                  1)
            << "each gap is told, and where it begins";
    ASSERT_EQ(std::ranges::count(events, LiveEventKind::output_off, &LiveEvent::kind), 1) << "no gap is a cut-off";
    const LiveEvent off = *std::ranges::find(events, LiveEventKind::output_off, &LiveEvent::kind);
    const auto last_on = std::find_if(samples.rbegin(), samples.rend(), [](const TraceSample& sample) { return sample.power_w.value_or(0) > 100; });
    EXPECT_EQ(off.moment_ms, last_on->time_ms) << "to the sample";
    const std::int64_t off_by_ms = off.moment_ms - DrainTruth::begin_ms - bench.truth->off_ms();
    EXPECT_LE(std::abs(off_by_ms), late_of_drain_ms);
    RecordProperty(bench.unit_name + "_cut_off_by_ms_of_drain", static_cast<int>(off_by_ms));
    ASSERT_TRUE(book.record(bench.run_uuid, reading_of(off)));
    ullage::Run ended = record.run;
    ended.end = RunEnd::cut_off_seen;
    ended.end_noticed_within_min = 0;
    ASSERT_TRUE(book.update(ended));
}

/// Energy, duration and the gaps stand in the report as they were.
void LiveNight::expectReports(const Bench& bench) {
    const QString path = QString::fromStdString(logbook().string()), name = QString::fromStdString(bench.unit_name);
    const auto told = nlohmann::json::parse(program({"analyse", path, "--unit", name, "--run", "1", "--format", "json"}).toStdString());
    const double truth_wh = bench.truth->register_wh(bench.truth->off_ms()) - DrainTruth::first_wh;
    double delivered_wh = 0;
    for (const auto& quantity : told.at("runs").at(0).at("quantities"))
        if (quantity.at("key") == "delivered_wh") delivered_wh = quantity.at("value").get<double>();
    EXPECT_NEAR(delivered_wh, truth_wh, 0.2 + bench.truth->power_w(bench.truth->off_ms() - 1) * static_cast<double>(late_of_drain_ms) / 3.6e6);
    for (const char* ending : {".html", ".pdf"}) {
        const QString report = QString::fromStdString((folder / (bench.unit_name + ending)).string());
        program({"report", path, "--run", name + "/1", "--output", report});
        EXPECT_GT(QFile(report).size(), 5000);
    }
    QProcess reading;
    reading.start(QStringLiteral("pdftotext"),
                  {QStringLiteral("-layout"), QString::fromStdString((folder / (bench.unit_name + ".pdf")).string()), QStringLiteral("-")});
    ASSERT_TRUE(reading.waitForFinished());
    // Letters that the font joins are taken apart again.
    const QString pages = QString::fromUtf8(reading.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
    EXPECT_TRUE(pages.contains(QStringLiteral("cut-off"))) << pages.toStdString();
    EXPECT_EQ(pages.count(QStringLiteral("Nothing was logged from")), 1) << pages.toStdString();
}

TEST_F(LiveNight, with_two_kills_and_the_router_gone_is_recorded_as_it_was_and_reported_right) {
    std::vector<Bench> benches;
    benches.push_back({&one_truth, std::make_unique<MqttPeer>(one_truth), "Lantern 900", {}});
    benches.push_back({&two_truth, std::make_unique<ModbusPeer>(two_truth, false), "Pelm 1200", {}});
    {
        Logbook book = Logbook::create(logbook(), clock).value();
        for (Bench& bench : benches) bench.run_uuid = new_bench(book, bench.unit_name, "Meter of " + bench.unit_name, bench.peer->source());
    }
    startRecorder();
    until(night_ms / 10);
    killRecorder(4 * minute_of_drain_ms);
    until(night_ms * 3 / 10);
    const std::int64_t router_from_ms = one_truth.now_ms();
    for (const Bench& bench : benches) bench.peer->setGone(true);
    until(router_from_ms + router_ms);
    gaps.push_back({router_from_ms, one_truth.now_ms()});
    for (const Bench& bench : benches) bench.peer->setGone(false);
    until(night_ms * 7 / 10);
    killRecorder(4 * minute_of_drain_ms);
    until(night_ms * 17 / 20);
    one_truth.cut_off();
    until(night_ms * 9 / 10);
    two_truth.cut_off();
    until(night_ms + 6 * minute_of_drain_ms);
    recorder.terminate();
    ASSERT_TRUE(recorder.waitForFinished());

    Logbook book = Logbook::open(logbook(), OpenMode::record, clock).value();
    for (const Bench& bench : benches) {
        SCOPED_TRACE(bench.unit_name);
        expectTrue(book, bench);
    }
    { const Logbook closed = std::move(book); }
    for (const Bench& bench : benches) {
        SCOPED_TRACE(bench.unit_name);
        expectReports(bench);
    }
}

} // namespace
} // namespace ullage
