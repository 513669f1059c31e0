// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "window/main_window.h"

#include <QLabel>
#include <QTabWidget>
#include <QTableView>

#include <algorithm>

namespace ullage::test {

class ClaimsTested : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        click("sampleLogbookButton");
        const auto& units = document.units();
        const auto osk = std::ranges::find(units, "Osk 1200", &Unit::name);
        ASSERT_NE(osk, units.end());
        unit = osk->uuid;
        window->showUnit(unit);
        find<QTabWidget>("unitBelowTabs")->setCurrentIndex(1);
        QApplication::processEvents();
    }

    [[nodiscard]] QString said(const char* label) const { return find<QLabel>(label)->text(); }
    [[nodiscard]] RunId run_of(RunKind kind) const {
        for (const auto* record : document.runs(unit))
            if (record->run.kind == kind) return record->run.uuid;
        return {};
    }

    UnitId unit;
};

TEST_F(ClaimsTested, the_unit_page_holds_each_claim_against_its_result_with_the_run_as_evidence) {
    const QString table = said("claimsTableLabel");
    for (const char* words : {"rated output", "1000 W", "✓ holds", "not reached", "not tested", "Held", "above the claim"})
        EXPECT_TRUE(table.contains(words)) << words << " in " << table.toStdString();
    EXPECT_TRUE(said("roundTripLabel").contains("AC at the wall to AC at the socket")) << said("roundTripLabel").toStdString();
    EXPECT_TRUE(said("roundTripLabel").contains("common to both powers cancels"));
}

TEST_F(ClaimsTested, a_price_gives_the_cost_of_what_the_unit_takes_and_is_remembered) {
    EXPECT_FALSE(said("ownDrawLabel").contains("EUR"));
    type("kwhPriceEdit", "0.30");
    EXPECT_TRUE(said("ownDrawLabel").contains("EUR a month")) << said("ownDrawLabel").toStdString();
    type("kwhPriceEdit", "cheap");
    EXPECT_FALSE(said("ownDrawLabel").contains("EUR"));
    EXPECT_TRUE(find<QLabel>("priceErrorLabel")->isVisible());
    type("kwhPriceEdit", "0.30");
    window.reset();
    show();
    EXPECT_EQ(find<QLineEdit>("kwhPriceEdit")->text(), "0.30");
}

TEST_F(ClaimsTested, the_run_page_says_what_a_charge_and_a_sustained_output_run_found) {
    window->showRun(run_of(RunKind::charge));
    QApplication::processEvents();
    EXPECT_EQ(said("usableKindLabel"), "energy in");
    EXPECT_TRUE(said("usableReasonLabel").contains("From the wall")) << said("usableReasonLabel").toStdString();
    EXPECT_TRUE(said("usableReasonLabel").contains("taper"));
    const auto* readings = find<QTableView>("readingsView")->model();
    QStringList heads;
    for (int column = 0; column < readings->columnCount(); ++column) heads << readings->headerData(column, Qt::Horizontal).toString();
    EXPECT_TRUE(heads.contains("energy in\nWh") && heads.contains("power\nW")) << heads.join('|').toStdString();
    EXPECT_NE(find<QLabel>("peakFigureLabel"), nullptr);
    window->showRun(run_of(RunKind::sustained_output));
    QApplication::processEvents();
    EXPECT_EQ(said("usableFractionLabel"), "Held");
    EXPECT_TRUE(said("usableReasonLabel").contains("1000 W are claimed"));
}

TEST_F(ClaimsTested, the_sample_logbook_brings_the_PV_sheets_of_the_company) {
    ASSERT_EQ(document.pvSheets().size(), 2U);
    for (const PvSheet& sheet : document.pvSheets()) EXPECT_NE(document.unit(sheet.unit_uuid), nullptr) << sheet.name;
}

} // namespace ullage::test
