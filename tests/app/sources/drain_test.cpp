// SPDX-License-Identifier: GPL-3.0-or-later
// Each kind of source through a drain of known truth, sixty times as fast, with faults; what was recorded is held against the truth.
#include "live/live_trace.h"
#include "peers.h"
#include "support/temp_folder.h"

#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <memory>
#include <string>
#include <vector>

namespace ullage {
namespace {

using namespace test;

std::unique_ptr<Peer> peer_of(SourceKind kind, const DrainTruth& truth) {
    switch (kind) {
    case SourceKind::modbus_tcp: return std::make_unique<ModbusPeer>(truth, false);
    case SourceKind::modbus_rtu: return std::make_unique<ModbusPeer>(truth, true);
    case SourceKind::mqtt: return std::make_unique<MqttPeer>(truth);
    case SourceKind::http: return std::make_unique<HttpPeer>(truth);
    case SourceKind::serial_lines: return std::make_unique<TerminalPeer>(truth, TerminalPeer::Kind::lines);
    case SourceKind::readout: return std::make_unique<TerminalPeer>(truth, TerminalPeer::Kind::readout);
    case SourceKind::scpi_device: return std::make_unique<TerminalPeer>(truth, TerminalPeer::Kind::scpi);
    case SourceKind::scpi_tcp: break;
    }
    return std::make_unique<ScpiPeer>(truth);
}

struct WallClock final : Clock {
    [[nodiscard]] UtcMs now_ms() const override { return DrainTruth::begin_ms; }
};

RunId new_run(Logbook& book, MeterId& meter_uuid) {
    Unit unit;
    unit.name = "Specimen";
    Meter meter;
    meter.name = "Meter";
    meter.step_wh = 0.1;
    ullage::Run run;
    run.unit_uuid = book.add(unit).value().uuid;
    meter_uuid = book.add(meter).value().uuid;
    run.meter_uuid = meter_uuid;
    return book.add(run).value().uuid;
}

class Drain : public testing::TestWithParam<SourceKind> {};

TEST_P(Drain, is_recorded_as_it_was_with_its_gap_told_and_its_cut_off_noted_to_the_sample) {
    const TempFolder folder;
    const WallClock clock;
    Logbook book = Logbook::create(folder / "a.ullage", clock).value();
    MeterId meter_uuid;
    const RunId run_uuid = new_run(book, meter_uuid);

    DrainTruth truth;
    const auto peer = peer_of(GetParam(), truth);
    LiveTrace live = LiveTrace::begin(book, run_uuid, meter_uuid, peer->source()).value();
    LiveSession session(SourceLink::make(peer->source()), truth.clocks());
    std::vector<LiveEvent> events;
    QObject::connect(&session, &LiveSession::eventFound, [&events](const LiveEvent& event) { events.push_back(event); });
    session.recordInto([&](std::span<const TraceSample> samples, long left_out) { return live.write(book, samples, left_out); }, std::nullopt, 0.1);
    session.start();
    const auto samples_come = [&session](long more) {
        const long from = session.state().taken;
        return QTest::qWaitFor([&session, from, more] { return session.state().taken >= from + more; }, 20'000);
    };
    ASSERT_TRUE(samples_come(15)) << session.state().trouble.toStdString();

    // Nonsense is left out, and so is what a clock that jumps would make of it.
    peer->setNonsense(true);
    truth.clock_step_ms = 3'600'000;
    const long misunderstood = session.state().misunderstood + session.state().left_out;
    EXPECT_TRUE(QTest::qWaitFor([&] { return session.state().misunderstood + session.state().left_out > misunderstood; }, 10'000));
    peer->setNonsense(false);
    ASSERT_TRUE(samples_come(10));

    // The cable is pulled for two and a half minutes of the drain at least.
    const std::int64_t gone_ms = truth.now_ms();
    peer->setGone(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state().silent && truth.now_ms() - gone_ms > 150'000; }, 20'000));
    const std::int64_t back_ms = truth.now_ms();
    peer->setGone(false);
    ASSERT_TRUE(samples_come(15)) << session.state().trouble.toStdString();
    EXPECT_FALSE(session.state().silent);

    truth.cut_off();
    ASSERT_TRUE(QTest::qWaitFor(
        [&events] { return std::ranges::any_of(events, [](const LiveEvent& event) { return event.kind == LiveEventKind::output_off; }); }, 20'000));
    ASSERT_TRUE(session.stop());

    const auto traces = book.traces(run_uuid).value();
    ASSERT_EQ(traces.size(), 1U);
    std::vector<TraceSample> samples;
    ASSERT_TRUE(book.read_samples(traces[0].uuid, traces[0].first_ms, traces[0].last_ms, [&samples](std::span<const TraceSample> some) {
        samples.insert(samples.end(), some.begin(), some.end());
        return true;
    }));
    EXPECT_EQ(static_cast<long>(samples.size()), session.state().taken) << "what was taken is on the disk";
    // Between being measured and being taken lie at most half a second of the test, 30 s of the drain (more only on a machine that stands still).
    constexpr std::int64_t late_ms = 30'000;
    UtcMs before_ms = samples.front().time_ms, longest_ms = 0, longest_from_ms = 0;
    for (const TraceSample& sample : samples) {
        const std::int64_t at_ms = sample.time_ms - DrainTruth::begin_ms;
        if (sample.power_w && std::abs(at_ms - truth.off_ms()) > late_ms) {
            EXPECT_LE(*sample.power_w, truth.power_w(at_ms) + 0.2);
            EXPECT_GE(*sample.power_w, truth.power_w(at_ms) - 0.2 - static_cast<double>(late_ms) / 10'000);
        }
        if (sample.register_wh) {
            EXPECT_LE(*sample.register_wh, truth.register_wh(at_ms) + 0.01);
            EXPECT_GE(*sample.register_wh, truth.register_wh(at_ms - late_ms) - 0.11);
        }
        if (sample.time_ms - before_ms > longest_ms) {
            longest_ms = sample.time_ms - before_ms;
            longest_from_ms = before_ms;
        }
        before_ms = sample.time_ms;
    }
    // The gap is there, and nothing in it.
    EXPECT_GE(longest_ms, back_ms - gone_ms - late_ms);
    EXPECT_LE(std::abs(longest_from_ms - DrainTruth::begin_ms - gone_ms), late_ms);
    EXPECT_TRUE(std::ranges::any_of(events, [&](const LiveEvent& event) {
        return event.kind == LiveEventKind::no_answer && std::abs(event.moment_ms - longest_from_ms) < 1000;
    }));
    const auto off = std::ranges::find(events, LiveEventKind::output_off, &LiveEvent::kind);
    EXPECT_LE(off->moment_ms - DrainTruth::begin_ms, truth.off_ms() + late_ms);
    EXPECT_GE(off->moment_ms - DrainTruth::begin_ms, truth.off_ms() - late_ms);
    // To the sample: it is the last one with power, and the next had none.
    const auto last_on = std::find_if(samples.rbegin(), samples.rend(), [](const TraceSample& sample) { return sample.power_w.value_or(0) > 100; });
    EXPECT_EQ(off->moment_ms, last_on->time_ms);
    EXPECT_NEAR(off->register_wh.value_or(0), truth.register_wh(truth.off_ms()), 4);
    const auto offs = std::ranges::count(events, LiveEventKind::output_off, &LiveEvent::kind);
    EXPECT_EQ(offs, 1) << "neither nonsense nor gap is a cut-off";
}

TEST_P(Drain, ends_with_a_word_when_its_run_takes_no_more) {
    DrainTruth truth;
    const auto peer = peer_of(GetParam(), truth);
    LiveSession session(SourceLink::make(peer->source()), truth.clocks());
    QString told;
    QObject::connect(&session, &LiveSession::ended, [&told](const QString& why) { told = why; });
    session.recordInto(
        [](std::span<const TraceSample>, long) {
            return Error{Failure::refused, "this log was withdrawn", {}, {}};
        },
        std::nullopt, {});
    session.start();
    ASSERT_TRUE(QTest::qWaitFor([&told] { return !told.isEmpty(); }, 20'000));
    EXPECT_TRUE(told.contains(QStringLiteral("withdrawn")));
    EXPECT_TRUE(session.stop()) << "there is nothing left to write";
}

TEST_P(Drain, waits_for_a_disk_that_is_full_and_writes_what_came_meanwhile) {
    DrainTruth truth;
    const auto peer = peer_of(GetParam(), truth);
    LiveSession session(SourceLink::make(peer->source()), truth.clocks());
    bool full = true;
    std::vector<TraceSample> written;
    session.recordInto(
        [&](std::span<const TraceSample> samples, long) -> Result<void> {
            if (full) return Error{Failure::disk_full, "the disk is full", {}, "make room"};
            written.insert(written.end(), samples.begin(), samples.end());
            return {};
        },
        std::nullopt, {});
    session.start();
    ASSERT_TRUE(QTest::qWaitFor([&session] { return session.state().trouble.contains(QStringLiteral("full")); }, 20'000));
    const long taken = session.state().taken;
    full = false;
    ASSERT_TRUE(QTest::qWaitFor([&] { return static_cast<long>(written.size()) > taken; }, 20'000));
    EXPECT_TRUE(session.state().trouble.isEmpty());
    ASSERT_TRUE(session.stop());
    EXPECT_EQ(static_cast<long>(written.size()), session.state().taken) << "none was lost";
}

INSTANTIATE_TEST_SUITE_P(Kinds, Drain, testing::ValuesIn(all_source_kinds), [](const testing::TestParamInfo<SourceKind>& kind) {
    std::string name(kind_word(kind.param));
    std::ranges::replace(name, '-', '_');
    return name;
});

} // namespace
} // namespace ullage
