// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

namespace ullage {
namespace {

using namespace test;

PvSheet sample_sheet(const UnitId& unit_uuid = {}) {
    PvSheet sheet;
    sheet.name = "wagon roof";
    sheet.unit_uuid = unit_uuid;
    sheet.module = "invented module";
    sheet.voc_v = 24.3;
    sheet.vmp_v = 20.4;
    sheet.isc_a = 10.2;
    sheet.imp_a = 9.8;
    sheet.voc_coefficient = PvCoefficient{-0.3, PvPerDegree::percent};
    sheet.vmp_coefficient = PvCoefficient{-82, PvPerDegree::milli};
    sheet.power_coefficient = PvCoefficient{-0.38, PvPerDegree::percent};
    sheet.noct_c = 45;
    sheet.crystalline_silicon = false;
    sheet.series = 2;
    sheet.parallel = 3;
    sheet.coldest_c = -15;
    sheet.hottest_c = 35;
    sheet.hottest_cell_c = 68;
    sheet.irradiance_w_m2 = 950;
    sheet.remark = "as wired";
    sheet.voc_tolerance_percent = 2.5;
    return sheet;
}

TEST(PvSheets, every_value_survives_closing_and_opening) {
    const TempFolder folder;
    const FakeClock clock;
    PvSheet sheet;
    {
        Logbook logbook = take(Logbook::create(folder / "a.ullage", clock));
        const Unit unit = take(logbook.add(sample_unit()));
        sheet = take(logbook.add(sample_sheet(unit.uuid)));
        PvSheet bare;
        bare.name = "bare";
        take(logbook.add(bare));
    }
    const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    const auto sheets = take(logbook.pv_sheets());
    ASSERT_EQ(sheets.size(), 2u);
    EXPECT_EQ(sheets[0].name, "bare");
    EXPECT_EQ(sheets[0].voc_v, std::nullopt);
    EXPECT_EQ(sheets[0].unit_uuid, UnitId(""));
    EXPECT_EQ(sheets[1], sheet);
}

TEST(PvSheets, an_edit_changes_and_a_withdrawal_hides_until_it_is_restored) {
    const FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
    PvSheet sheet = take(logbook.add(sample_sheet()));
    sheet.series = 3;
    sheet.voc_coefficient.reset();
    take(logbook.update(sheet));
    EXPECT_EQ(take(logbook.pv_sheets()), std::vector{sheet});
    take(logbook.set_pv_sheet_withdrawn(sheet.uuid, true));
    EXPECT_TRUE(take(logbook.pv_sheets()).empty());
    take(logbook.set_pv_sheet_withdrawn(sheet.uuid, false));
    EXPECT_EQ(take(logbook.pv_sheets()), std::vector{sheet});
}

TEST(PvSheets, what_cannot_be_kept_is_refused_by_name) {
    const FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
    PvSheet nameless = sample_sheet();
    nameless.name.clear();
    EXPECT_EQ(failure_of(logbook.add(nameless)), Failure::bad_input);
    PvSheet endless = sample_sheet();
    endless.voc_coefficient->value = std::numeric_limits<double>::infinity();
    EXPECT_EQ(failure_of(logbook.add(endless)), Failure::bad_input);
    PvSheet loose = sample_sheet();
    loose.voc_tolerance_percent = 21;
    EXPECT_EQ(failure_of(logbook.add(loose)), Failure::bad_input);
    EXPECT_EQ(failure_of(logbook.add(sample_sheet(UnitId("no such unit")))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.update(sample_sheet())), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_pv_sheet_withdrawn(PvSheetId("none"), true)), Failure::not_found);
}

TEST(PvSheets, the_limits_of_the_pv_input_the_data_of_the_specimen_and_the_source_of_a_charge_are_kept) {
    const FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
    Unit unit = sample_unit();
    unit.pv_start_v = 12;
    unit.pv_short_circuit_a = 15;
    unit.serial_number = "T-0042";
    unit.chemistry = "LFP";
    unit.purchased = "2027-02-28";
    unit.cycles_before = 12;
    unit.charge_time_h = 1.5;
    unit = take(logbook.add(unit));
    EXPECT_EQ(take(logbook.units()), std::vector{unit});
    unit.charge_time_h = 2;
    take(logbook.update(unit));
    EXPECT_EQ(take(logbook.units()), std::vector{unit});
    ullage::Run run = sample_run(unit.uuid);
    run.kind = RunKind::charge;
    run.charge_source = ChargeSource::pv;
    run = take(logbook.add(run));
    EXPECT_EQ(take(logbook.runs()).at(0).charge_source, ChargeSource::pv);
    run.charge_source.reset();
    take(logbook.update(run));
    EXPECT_EQ(take(logbook.runs()).at(0).charge_source, std::nullopt);
}

} // namespace
} // namespace ullage
