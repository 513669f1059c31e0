// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

namespace ullage::test {

/// A new logbook with one unit, to which tests add what they need.
class ModelsTest : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(QString::fromStdString((folder / "bench.ullage").string())));
        Unit unit;
        unit.name = "Osk 1200";
        unit.rated_energy_wh = 1200;
        osk = document.addUnit(unit).value();
    }

    ullage::Run start_drain(const Unit& unit) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.started_full = true;
        return document.addRun(run).value();
    }

    void note(const ullage::Run& run, double gauge_percent, double register_wh) {
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.gauge_percent = gauge_percent;
        values.register_wh = register_wh;
        ASSERT_TRUE(document.record(run.uuid, values));
        clock.advance_hours(1);
    }

    TempFolder folder;
    FakeClock clock;
    Document document{clock};
    Unit osk;
};

} // namespace ullage::test
