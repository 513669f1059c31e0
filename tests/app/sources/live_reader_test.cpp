// SPDX-License-Identifier: GPL-3.0-or-later
// The window's part of it: a run is read live, its page shows how that stands, and the marks that are proposed are set by the tester.
#include "document/document.h"
#include "pages/run/run_page.h"
#include "peers.h"
#include "services/live_reader.h"
#include "services/look_refresher.h"
#include "services/settings.h"
#include "style/words.h"
#include "support/temp_folder.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <string>

namespace ullage {
namespace {

using namespace test;

class DrainClock final : public Clock {
public:
    explicit DrainClock(const DrainTruth& truth) : truth_(truth) {}
    [[nodiscard]] UtcMs now_ms() const override { return DrainTruth::begin_ms + truth_.now_ms(); }

private:
    const DrainTruth& truth_;
};

class LiveReaderTest : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(path()));
        Unit unit;
        unit.name = "Lantern 900";
        Meter meter;
        meter.name = "Bench plug";
        meter.step_wh = 0.1;
        ullage::Run run;
        run.unit_uuid = document.addUnit(unit).value().uuid;
        meter_uuid = document.addMeter(meter).value().uuid;
        run.meter_uuid = meter_uuid;
        run_uuid = document.addRun(run).value().uuid;
    }
    QString path() const { return QString::fromStdString((folder / "bench.ullage").string()); }
    void keepSource() { ASSERT_TRUE(document.setMeterSource(meter_uuid, source_text(peer.source()))); }
    long samples() const {
        long sum = 0;
        for (const Trace& trace : document.traces(run_uuid).value()) sum += static_cast<long>(trace.samples);
        return sum;
    }

    TempFolder folder;
    DrainTruth truth;
    DrainClock clock{truth};
    TerminalPeer peer{truth, TerminalPeer::Kind::lines};
    Document document{clock};
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    MeterId meter_uuid;
    RunId run_uuid;
};

TEST_F(LiveReaderTest, a_run_is_read_its_page_shows_it_and_a_cut_off_that_is_accepted_becomes_a_mark_at_its_sample) {
    keepSource();
    LiveReader reader(document, settings, nullptr, truth.clocks());
    RunPage page(document);
    page.setLiveReader(reader);
    page.showRun(run_uuid);
    page.resize(1100, 800);
    page.show();
    auto* button = page.findChild<QPushButton*>(QStringLiteral("readLiveButton"));
    ASSERT_TRUE(button && button->isVisible());
    EXPECT_EQ(button->text(), QStringLiteral("Read live"));
    RunId asked;
    QObject::connect(&page, &RunPage::readLiveAsked, &page, [&asked](const RunId& run) { asked = run; });
    button->click();
    EXPECT_EQ(asked, run_uuid);

    int off_calls = 0;
    QObject::connect(&reader, &LiveReader::happened, &page, [&off_calls](const RunId&, const QString& sentence, bool off) {
        if (!off) return;
        ++off_calls;
        EXPECT_TRUE(sentence.contains(QStringLiteral("Lantern 900: output off at "))) << sentence.toStdString();
    });
    ASSERT_TRUE(reader.start(run_uuid));
    auto* state = page.findChild<QLabel*>(QStringLiteral("liveStateLabel"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return state->text().contains(QStringLiteral("W · ")); }, 20'000)) << state->text().toStdString();
    EXPECT_TRUE(QTest::qWaitFor([&] { return samples() > 20; }, 20'000)) << "the run grows while it is read";
    EXPECT_EQ(button->text(), QStringLiteral("Stop reading"));

    truth.cut_off();
    EXPECT_TRUE(QTest::qWaitFor([&] { return off_calls == 1; }, 20'000));
    const auto accept_button = [&page]() -> QPushButton* {
        for (auto* each : page.findChildren<QPushButton*>(QStringLiteral("acceptProposalButton")))
            if (each->isVisible() && each->text().contains(QStringLiteral("cut-off"))) return each;
        return nullptr;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return accept_button() != nullptr; }, 5000));
    EXPECT_TRUE(document.run(run_uuid)->readings.empty()) << "nothing is set unasked";
    accept_button()->click();
    const auto& readings = document.run(run_uuid)->readings;
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings[0].values.mark, MarkKind::cut_off);
    EXPECT_NEAR(static_cast<double>(readings[0].values.time_ms - DrainTruth::begin_ms), static_cast<double>(truth.off_ms()), 30'000);
    EXPECT_TRUE(reader.proposals(run_uuid).empty());
    EXPECT_EQ(accept_button(), nullptr);
    document.undoStack().undo();
    EXPECT_EQ(reader.proposals(run_uuid).size(), 1U) << "it is proposed again";
    reader.dismiss(run_uuid, reader.proposals(run_uuid).at(0));
    EXPECT_TRUE(reader.proposals(run_uuid).empty());

    // A silent source is told with the time since when nothing came.
    peer.setGone(true);
    EXPECT_TRUE(QTest::qWaitFor([&] { return state->text().contains(QStringLiteral("nothing since")); }, 20'000)) << state->text().toStdString();
    button->click();
    EXPECT_FALSE(reader.isReading(run_uuid));
}

TEST_F(LiveReaderTest, reading_goes_on_by_itself_when_the_logbook_is_opened_again_and_no_sample_is_lost_on_leaving) {
    keepSource();
    LiveReader reader(document, settings, nullptr, truth.clocks());
    ASSERT_TRUE(reader.start(run_uuid));
    ASSERT_TRUE(QTest::qWaitFor([&] { return reader.state(run_uuid)->taken >= 5; }, 20'000));
    const long taken = reader.state(run_uuid)->taken;
    document.close();
    EXPECT_FALSE(reader.isReading(run_uuid));
    ASSERT_TRUE(document.open(path()));
    EXPECT_GE(samples(), taken);
    EXPECT_TRUE(reader.isReading(run_uuid));
    const long before = samples();
    EXPECT_TRUE(QTest::qWaitFor([&] { return samples() > before; }, 20'000));
    EXPECT_EQ(document.traces(run_uuid).value().size(), 1U) << "in the same trace";
}

TEST_F(LiveReaderTest, a_window_that_looks_at_what_another_records_calls_at_a_cut_off_and_cannot_set_its_mark) {
    keepSource();
    LiveReader recorder(document, settings, nullptr, truth.clocks());
    ASSERT_TRUE(recorder.start(run_uuid));
    ASSERT_TRUE(QTest::qWaitFor([&] { return samples() > 10; }, 20'000));

    Document seen(clock);
    LookRefresher refresher(seen);
    LiveReader reader(seen, settings, nullptr, truth.clocks());
    ASSERT_TRUE(seen.open(path()));
    ASSERT_TRUE(seen.isLooking());
    EXPECT_FALSE(reader.isReading(run_uuid)) << "it is another that reads";
    QStringList happened;
    QObject::connect(&reader, &LiveReader::happened, &reader, [&happened](const RunId&, const QString& sentence, bool off) {
        if (off) happened << sentence;
    });
    RunPage page(seen);
    page.setLiveReader(reader);
    page.showRun(run_uuid);
    page.show();
    truth.cut_off();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !happened.isEmpty(); }, 30'000));
    ASSERT_EQ(happened.size(), 1);
    EXPECT_TRUE(happened[0].contains(QStringLiteral("Lantern 900: output off at "))) << happened[0].toStdString();
    const auto proposals = reader.proposals(run_uuid);
    EXPECT_EQ(std::ranges::count(proposals, LiveEventKind::output_off, &LiveEvent::kind), 1);
    EXPECT_EQ(proposals, recorder.proposals(run_uuid));
    for (auto* button : page.findChildren<QPushButton*>(QStringLiteral("acceptProposalButton"))) EXPECT_FALSE(button->isEnabled());
    EXPECT_FALSE(reader.accept(run_uuid, proposals[0]));
}

TEST_F(LiveReaderTest, a_run_that_is_ended_is_read_no_more) {
    keepSource();
    LiveReader reader(document, settings, nullptr, truth.clocks());
    ASSERT_TRUE(reader.start(run_uuid));
    ullage::Run run = document.run(run_uuid)->run;
    run.end = RunEnd::stopped_by_tester;
    ASSERT_TRUE(document.updateRun(run));
    EXPECT_FALSE(reader.isReading(run_uuid));
    EXPECT_FALSE(reader.start(run_uuid));
}

TEST_F(LiveReaderTest, a_log_that_is_withdrawn_ends_the_reading_with_a_word) {
    keepSource();
    LiveReader reader(document, settings, nullptr, truth.clocks());
    QString told;
    QObject::connect(&reader, &LiveReader::error, &reader, [&told](const QString& words) { told = words; });
    ASSERT_TRUE(reader.start(run_uuid));
    ASSERT_TRUE(QTest::qWaitFor([&] { return samples() > 0; }, 20'000));
    ASSERT_TRUE(document.withdrawTrace(document.traces(run_uuid).value().at(0)));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !told.isEmpty(); }, 20'000));
    EXPECT_TRUE(told.contains(QStringLiteral("no longer read"))) << told.toStdString();
    EXPECT_FALSE(reader.isReading(run_uuid));
}

TEST_F(LiveReaderTest, a_source_with_a_user_waits_for_its_password_after_a_restart) {
    LiveSource source = peer.source();
    source.kind = SourceKind::http;
    source.address = "http://127.0.0.1:" + std::to_string(free_port()) + "/status";
    source.user = "bench";
    ASSERT_TRUE(take_fields(source, "power body"));
    ASSERT_TRUE(document.setMeterSource(meter_uuid, source_text(source)));
    LiveReader reader(document, settings, nullptr, truth.clocks());
    ASSERT_TRUE(reader.start(run_uuid, QStringLiteral("very secret")));
    document.close();
    ASSERT_TRUE(document.open(path()));
    EXPECT_FALSE(reader.isReading(run_uuid));
    EXPECT_TRUE(reader.waitsForPassword(run_uuid));
    document.close();
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        std::ifstream file(entry.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        EXPECT_EQ(bytes.find("very secret"), std::string::npos) << entry.path();
    }
}

} // namespace
} // namespace ullage
