// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_sheet_samples.h"

#include "model/tags.h"

#include <cmath>
#include <random>

using namespace ullage;
using namespace ullage::test;

namespace {

/// Makes any record that a run sheet can carry, awkward texts and numbers included.
class RecordMaker {
    int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(random_); }
    bool coin() { return below(2) == 1; }
    template <class Values>
    auto one_of(const Values& values) {
        return values[std::size_t(below(int(std::size(values))))];
    }

public:
    explicit RecordMaker(std::uint64_t seed) : random_(seed) {}

    RunRecord record() {
        RunRecord record;
        record.unit = unit();
        if (coin()) record.meter = meter("M");
        if (coin()) record.second_meter = meter("M2");
        Run& run = record.run;
        run.kind = one_of(all_run_kinds);
        run.end = one_of(all_run_ends);
        if (coin()) run.started_full = coin();
        run.load = text();
        if (coin()) run.charge_source = one_of(all_charge_sources);
        if (coin()) run.ambient_c = number() - 273.15;
        if (coin()) run.ambient_end_c = number() - 273.15;
        const char* zones[] = {"UTC", "Europe/Vienna", "Asia/Kathmandu", "America/St_Johns", "Australia/Lord_Howe"};
        run.time_zone = one_of(zones);
        for (int i = below(3); i > 0; --i) run.extra.emplace_back("extra key " + std::to_string(i), text());
        // Around the hours at which Europe/Vienna goes forward or back, so that doubled local times occur.
        UtcMs time = coin() ? 1'805'930'000'000 : 1'824'940'000'000;
        for (int i = below(12); i > 0; --i) {
            Reading reading;
            reading.sequence = long(record.readings.size()) + 1;
            reading.values = values(time);
            record.readings.push_back(reading);
            time += coin() ? 0 : below(100) * 60'000 + (coin() ? below(60'000) : 0);
        }
        return record;
    }

private:
    /// Within every range of model/limits.h: everyday numbers, and doubles with all their bits.
    double number() {
        if (coin()) return 0.5 * (1 + below(2000));
        return std::ldexp(1 + static_cast<double>(random_() >> 12) * 0x1p-52, below(28) - 19);
    }
    std::optional<double> maybe() { return coin() ? std::optional<double>(number()) : std::nullopt; }

    std::string text() {
        const std::string_view pieces[] = {"a",    "Lamp 2", ",", "\"", "\n", "\r\n", "\r", " ", "\t",  "\\", "#",        ":", ";", "%",
                                           "=1+1", "é",      "✓", "🔋",  "'",  "-",    "n",  "s", "\\n", "±",  "\xC2\xA0", "=", "@", "\uFEFF"};
        std::string made;
        for (int n = below(8); n > 0; --n) made += one_of(pieces);
        return made;
    }

    Unit unit() {
        Unit unit;
        unit.name = "U" + text();
        unit.maker = text();
        unit.model = text();
        unit.serial_number = text();
        unit.chemistry = text();
        unit.purchased = coin() ? "2027-02-28" : "";
        for (auto member : {&Unit::rated_energy_wh, &Unit::rated_output_w, &Unit::peak_output_w, &Unit::pv_max_v, &Unit::pv_max_a, &Unit::pv_max_w,
                            &Unit::pv_start_v, &Unit::pv_short_circuit_a, &Unit::charge_time_h, &Unit::cycles_before, &Unit::price, &Unit::paid_price,
                            &Unit::mass_kg, &Unit::warranty_years})
            unit.*member = maybe();
        unit.currency = coin() ? "EUR" : "";
        unit.gauge_step_percent = coin() ? 1 : 0.1 * (1 + below(50));
        const std::string_view tag_words[] = {"lent", "LENT", "tent", "zwei Worte", "é✓", "#1", "\\n", "=1+1"};
        std::vector<std::string> tags;
        for (int n = below(4); n > 0; --n) tags.emplace_back(one_of(tag_words));
        unit.tags = sorted_tags(tags);
        unit.remark = text();
        return unit;
    }

    Meter meter(const std::string& ending) {
        Meter meter;
        meter.name = text() + ending;
        for (auto member : {&Meter::step_wh, &Meter::limit_percent, &Meter::span_wh, &Meter::load_part_percent, &Meter::starting_current_a})
            meter.*member = maybe();
        if (coin()) meter.range_low_w = number();
        if (coin()) meter.range_high_w = meter.range_low_w.value_or(0) + number();
        meter.certificate = {text(), coin() ? "2027-03-02" : "", text(), coin() ? "2028-02-29" : ""};
        meter.accuracy_class = text();
        meter.standard = text();
        double load_w = 0;
        for (int n = below(4); n > 0; --n) {
            MeterPoint point{load_w += number(), number(), maybe(), {}};
            if (point.expanded_u_percent && coin()) point.coverage_k = 0.5 * (1 + below(6));
            meter.points.push_back(point);
        }
        if (coin()) meter.correction = number();
        meter.remark = text();
        return meter;
    }

    ReadingValues values(UtcMs time) {
        ReadingValues values;
        values.time_ms = time;
        if (coin()) values.gauge_percent = std::uniform_real_distribution<double>(0, 100)(random_);
        values.register_wh = maybe();
        values.second_register_wh = maybe();
        values.meter_w = maybe();
        values.display_w = maybe();
        if (below(4) == 0) values.mark = one_of(all_mark_kinds);
        values.remark = text();
        return values;
    }

    std::mt19937_64 random_;
};

std::vector<ReadingValues> values_of(const RunRecord& record) {
    std::vector<ReadingValues> values;
    for (const Reading& reading : record.readings) values.push_back(reading.values);
    return values;
}

} // namespace

TEST(RunSheetRoundTrip, reading_what_was_written_gives_the_same_record) {
    long readings = 0;
    for (std::uint64_t seed = 1; seed <= 600; ++seed) {
        const RunRecord record = RecordMaker(seed).record();
        const std::string text = write_run_sheet(record);
        const auto import = read_run_sheet(text, "a.csv");
        ASSERT_TRUE(import.ok()) << "seed " << seed << ": " << import.error().sentence() << "\n" << text;
        const RunRecord& back = import.value().record;
        ASSERT_EQ(back.unit, record.unit) << "seed " << seed << "\n" << text;
        ASSERT_EQ(back.meter, record.meter) << "seed " << seed << "\n" << text;
        ASSERT_EQ(back.second_meter, record.second_meter) << "seed " << seed << "\n" << text;
        ASSERT_EQ(back.run, record.run) << "seed " << seed << "\n" << text;
        ASSERT_EQ(values_of(back), values_of(record)) << "seed " << seed << "\n" << text;
        ASSERT_EQ(import.value().notices.size(), record.run.extra.size() + (record.readings.empty() ? 1 : 0)) << text;
        ASSERT_EQ(write_run_sheet(back), text) << "seed " << seed;
        readings += long(record.readings.size());
    }
    EXPECT_GT(readings, 2000) << "the generator has to make readings";
}

TEST(RunSheetRoundTrip, a_spreadsheets_padding_of_the_preface_is_undone) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const std::string text = write_run_sheet(RecordMaker(seed).record());
        const auto table = text.find("\ntime,");
        std::string padded;
        for (std::size_t at = 0; at < text.size(); ++at) {
            if (text[at] == '\n' && at <= table) padded += ",,,,,";
            padded += text[at];
        }
        ASSERT_EQ(write_run_sheet(read_good(padded).record), text) << "seed " << seed;
    }
}

TEST(RunSheetRoundTrip, a_remark_that_looks_like_a_formula_stays_as_it_is) {
    RunRecord record;
    record.unit.name = "=2+3";
    record.readings.resize(1);
    record.readings[0].values.remark = "=SUM(A1)";
    const std::string text = write_run_sheet(record);
    EXPECT_TRUE(mentions(text, ",'=SUM(A1)\n")) << "a spreadsheet would run it";
    EXPECT_EQ(read_good(text).record.readings[0].values.remark, "=SUM(A1)");
}
