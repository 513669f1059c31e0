// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/limits.h"
#include "samples.h"
#include "store/inside/value_checks.h"

#include <limits>

namespace ullage {
namespace {

using namespace test;

struct StoreLimits : testing::Test {
    FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
};

/// The field that a change makes the store refuse; empty when it takes it.
template <class Thing, class Change>
std::string refused_field(Thing thing, Change change) {
    change(thing);
    const Result<void> checked = store::check(thing);
    return checked ? std::string() : checked.error().where.text();
}

TEST_F(StoreLimits, every_number_and_text_of_a_unit_is_bounded) {
    const auto field = [](auto change) { return refused_field(sample_unit(), change); };
    EXPECT_EQ(field([](Unit&) {}), "");
    const double endless = std::numeric_limits<double>::infinity();
    EXPECT_EQ(field([&](Unit& unit) { unit.rated_energy_wh = endless; }), "rated energy");
    EXPECT_EQ(field([](Unit& unit) { unit.rated_energy_wh = 1e10; }), "rated energy");
    EXPECT_EQ(field([](Unit& unit) { unit.rated_output_w = 0; }), "rated output");
    EXPECT_EQ(field([](Unit& unit) { unit.peak_output_w = 1e300; }), "peak output");
    EXPECT_EQ(field([](Unit& unit) { unit.pv_max_v = 1e7; }), "PV voltage limit");
    EXPECT_EQ(field([](Unit& unit) { unit.pv_max_a = -1; }), "PV current limit");
    EXPECT_EQ(field([](Unit& unit) { unit.pv_max_w = 1e10; }), "PV power limit");
    EXPECT_EQ(field([](Unit& unit) { unit.pv_start_v = 1e7; }), "PV start voltage");
    EXPECT_EQ(field([](Unit& unit) { unit.charge_time_h = 1e6; }), "charge time");
    EXPECT_EQ(field([](Unit& unit) { unit.price = -1; }), "price");
    EXPECT_EQ(field([](Unit& unit) { unit.paid_price = 1e13; }), "price paid");
    EXPECT_EQ(field([](Unit& unit) { unit.mass_kg = 1e7; }), "mass");
    EXPECT_EQ(field([](Unit& unit) { unit.warranty_years = 1e4; }), "warranty");
    EXPECT_EQ(field([](Unit& unit) { unit.gauge_step_percent = 0; }), "gauge step");
    EXPECT_EQ(field([](Unit& unit) { unit.name.assign(longest_name + 1, 'x'); }), "name");
    EXPECT_EQ(field([](Unit& unit) { unit.maker = "\xff"; }), "maker");
    EXPECT_EQ(field([](Unit& unit) { unit.model.assign(longest_name + 1, 'x'); }), "model");
    EXPECT_EQ(field([](Unit& unit) { unit.currency.assign(longest_short_text + 1, 'x'); }), "currency");
    EXPECT_EQ(field([](Unit& unit) { unit.remark.assign(longest_remark + 1, 'x'); }), "remark");
    EXPECT_EQ(field([](Unit& unit) { unit.tags.assign(1, "\xff"); }), "tags");
}

TEST_F(StoreLimits, every_number_and_text_of_a_meter_is_bounded) {
    const auto field = [](auto change) { return refused_field(sample_meter(), change); };
    EXPECT_EQ(field([](Meter&) {}), "");
    EXPECT_EQ(field([](Meter& meter) { meter.step_wh = 0; }), "step");
    EXPECT_EQ(field([](Meter& meter) { meter.limit_percent = 1e4; }), "error limit");
    EXPECT_EQ(field([](Meter& meter) { meter.span_wh = 1e13; }), "span");
    EXPECT_EQ(field([](Meter& meter) { meter.correction = 0; }), "correction");
    EXPECT_EQ(field([](Meter& meter) { meter.name.assign(longest_name + 1, 'x'); }), "name");
    EXPECT_EQ(field([](Meter& meter) { meter.remark.assign(longest_remark + 1, 'x'); }), "remark");
    EXPECT_EQ(field([](Meter& meter) { meter.certificate.number.assign(longest_name + 1, 'x'); }), "number of the certificate");
    EXPECT_EQ(field([](Meter& meter) { meter.certificate.laboratory = "\xff"; }), "laboratory");
    EXPECT_EQ(field([](Meter& meter) { meter.certificate.date = "2027-02-30"; }), "date of the certificate");
    EXPECT_EQ(field([](Meter& meter) { meter.certificate.valid_until = "soon"; }), "end of the certificate's validity");
    EXPECT_EQ(field([](Meter& meter) { meter.accuracy_class.assign(longest_name + 1, 'x'); }), "class");
    EXPECT_EQ(field([](Meter& meter) { meter.standard.assign(longest_name + 1, 'x'); }), "standard");
    EXPECT_EQ(field([](Meter& meter) { meter.starting_current_a = 0; }), "starting current");
    EXPECT_EQ(field([](Meter& meter) { meter.range_low_w = -1; }), "lowest load of the range");
    EXPECT_EQ(field([](Meter& meter) { meter.range_high_w = 1e10; }), "highest load of the range");
    EXPECT_EQ(field([](Meter& meter) { meter.range_high_w = 1; }), "range") << "it begins at 5 W";
}

TEST_F(StoreLimits, the_points_of_a_meter_are_bounded_and_in_order_of_load) {
    const auto field = [](auto change) { return refused_field(sample_meter(), change); };
    EXPECT_EQ(field([](Meter& meter) { meter.points[0].load_w = -1; }), "load of a point");
    EXPECT_EQ(field([](Meter& meter) { meter.points[0].correction = 0; }), "correction of a point");
    EXPECT_EQ(field([](Meter& meter) { meter.points[0].expanded_u_percent = 1e4; }), "uncertainty of a point");
    EXPECT_EQ(field([](Meter& meter) { meter.points[0].coverage_k = 0; }), "coverage factor of a point");
    for (const auto& change : std::initializer_list<void (*)(Meter&)>{[](Meter& meter) { meter.points[0].expanded_u_percent.reset(); },
                                                                      [](Meter& meter) { meter.points[1].load_w = 100; },
                                                                      [](Meter& meter) { meter.points.assign(most_meter_points + 1, {}); }})
        EXPECT_EQ(field(change), "points of correction");
}

TEST_F(StoreLimits, a_run_and_its_keys_are_bounded) {
    const auto field = [](auto change) { return refused_field(sample_run(UnitId("u")), change); };
    EXPECT_EQ(field([](ullage::Run&) {}), "");
    EXPECT_EQ(field([](ullage::Run& run) { run.load.assign(longest_load_text + 1, 'x'); }), "load");
    EXPECT_EQ(field([](ullage::Run& run) { run.ambient_c = -300; }), "ambient temperature");
    EXPECT_EQ(field([](ullage::Run& run) { run.ambient_end_c = 1e5; }), "ambient temperature at the end");
    EXPECT_EQ(field([](ullage::Run& run) { run.meter_uuid = run.second_meter_uuid = MeterId("m"); }), "second meter");
    EXPECT_EQ(field([](ullage::Run& run) { run.time_zone.assign(longest_short_text + 1, 'x'); }), "time zone");
    EXPECT_EQ(field([](ullage::Run& run) { run.created_ms = latest_moment_ms + 1; }), "created");
    EXPECT_EQ(field([](ullage::Run& run) { run.extra.assign(most_extras + 1, {"a", "b"}); }), "keys that are not known");
    EXPECT_EQ(field([](ullage::Run& run) { run.extra = {{"colour", std::string(longest_extra_value + 1, 'x')}}; }), "colour");
}

TEST_F(StoreLimits, what_was_read_is_refused_only_where_no_display_can_have_shown_it) {
    const auto field = [](auto change) { return refused_field(sample_values(), change); };
    EXPECT_EQ(field([](ReadingValues& values) { values.gauge_percent = 130; }), "");
    EXPECT_EQ(field([](ReadingValues& values) { values.gauge_percent = -5; }), "");
    EXPECT_EQ(field([](ReadingValues& values) { values.register_wh = 1e9; }), "");
    EXPECT_EQ(field([](ReadingValues& values) { values.remark.assign(20'000, 'x'); }), "");
    EXPECT_EQ(field([](ReadingValues& values) { values.gauge_percent = 1e5; }), "gauge");
    EXPECT_EQ(field([](ReadingValues& values) { values.register_wh = 1e13; }), "register");
    EXPECT_EQ(field([](ReadingValues& values) { values.second_register_wh = 1e13; }), "second register");
    EXPECT_EQ(field([](ReadingValues& values) { values.meter_w = 1e10; }), "meter power");
    EXPECT_EQ(field([](ReadingValues& values) { values.display_w = -1e10; }), "display power");
    EXPECT_EQ(field([](ReadingValues& values) { values.time_ms = earliest_moment_ms - 1; }), "time");
    EXPECT_EQ(field([](ReadingValues& values) { values.remark.assign(longest_remark + 1, 'x'); }), "remark");
    EXPECT_EQ(field([](ReadingValues& values) { values.remark = "\xc0\x80"; }), "remark");
}

TEST_F(StoreLimits, pv_sheets_photos_and_traces_are_bounded) {
    PvSheet sheet;
    sheet.name = "roof";
    const auto sheet_field = [&](auto change) { return refused_field(sheet, change); };
    EXPECT_EQ(sheet_field([](PvSheet&) {}), "");
    EXPECT_EQ(sheet_field([](PvSheet& changed) { changed.voc_v = 1e7; }), "Voc");
    EXPECT_EQ(sheet_field([](PvSheet& changed) { changed.series = 1001; }), "series, parallel");
    EXPECT_EQ(sheet_field([](PvSheet& changed) { changed.module.assign(longest_name + 1, 'x'); }), "module");
    EXPECT_EQ(refused_field(Photo{}, [](Photo& photo) { photo.file_name.assign(longest_file_name + 1, 'x'); }), "file name");
    EXPECT_EQ(refused_field(Photo{}, [](Photo& photo) { photo.taken = {latest_moment_ms + 1, false}; }), "time of the photo");
    EXPECT_EQ(refused_field(Trace{}, [](Trace& trace) { trace.layout.assign(longest_layout + 1, 'x'); }), "layout");
    EXPECT_EQ(refused_field(Trace{}, [](Trace& trace) { trace.offset_u_s = std::numeric_limits<double>::infinity(); }),
              "uncertainty of the clock offset");
    EXPECT_EQ(refused_field(TraceSample{}, [](TraceSample& sample) { sample.power_w = 1e16; }), "power");
}

TEST_F(StoreLimits, the_logbook_applies_them_to_what_comes_in_and_keeps_nothing_of_it) {
    const Unit unit = take(logbook.add(sample_unit()));
    Unit absurd = unit;
    absurd.rated_energy_wh = 1e12;
    EXPECT_EQ(failure_of(logbook.update(absurd)), Failure::bad_input);
    const auto run = take(logbook.add(sample_run(unit.uuid)));
    EXPECT_EQ(failure_of(logbook.keep_draft(run.uuid, std::string(longest_draft + 1, 'x'))), Failure::bad_input);
    const Reading reading = take(logbook.record(run.uuid, sample_values()));
    EXPECT_EQ(failure_of(logbook.set_withdrawn(reading.uuid, true, std::string(longest_remark + 1, 'x'))), Failure::bad_input);
    RunRecord sheet;
    sheet.unit = sample_unit();
    sheet.readings.emplace_back().values.register_wh = 1e13;
    EXPECT_EQ(failure_of(logbook.import(sheet)), Failure::bad_input);
    EXPECT_EQ(take(logbook.units()), std::vector{unit});
    EXPECT_EQ(take(logbook.readings(run.uuid)), std::vector{reading});
    EXPECT_EQ(take(logbook.runs()).size(), 1u);
}

} // namespace
} // namespace ullage
