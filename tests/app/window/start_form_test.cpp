// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/start_form.h"
#include "services/reading_rules.h"
#include "support/fake_clock.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QTest>

namespace ullage {

namespace {

class StartForms : public ::testing::Test {
protected:
    StartForms() {
        Unit osk, pelm;
        osk.uuid = UnitId("osk");
        osk.name = "Osk 1200";
        pelm.uuid = UnitId("pelm");
        pelm.name = "Pelm 900";
        pelm.gauge_step_percent = 20;
        units = {osk, pelm};
        Meter a, b;
        a.uuid = MeterId("a");
        a.name = "Socket meter A";
        b.uuid = MeterId("b");
        b.name = "Socket meter B";
        meters = {a, b};
        defaults.unit_uuid = UnitId("osk");
        defaults.time_zone = "Europe/Paris";
    }
    ~StartForms() override { delete form; }

    void open() {
        form = new StartForm(defaults, units, meters, clock);
        QObject::connect(form, &FormDialog::submitted, [this] { ++submitted; });
        form->open();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(form));
    }
    template <class Widget>
    Widget* find(const char* name) const {
        auto* found = form->findChild<Widget*>(QString::fromLatin1(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void type(const char* name, const char* text) {
        auto* edit = find<QLineEdit>(name);
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, QString::fromLatin1(text));
    }
    void preset(const char* name) { QTest::mouseClick(find<QPushButton>(name), Qt::LeftButton); }
    void choose(const char* name, const QString& text) {
        auto* combo = find<QComboBox>(name);
        const int at = combo->findText(text);
        ASSERT_GE(at, 0) << text.toStdString();
        combo->setCurrentIndex(at);
    }
    void submit() {
        QTest::mouseClick(find<QPushButton>("submitButton"), Qt::LeftButton);
        QApplication::processEvents();
    }
    [[nodiscard]] QString text(const char* name) const { return find<QLineEdit>(name)->text(); }
    [[nodiscard]] QString said(const char* name) const {
        const auto* label = find<QLabel>(name);
        return label->isVisible() ? label->text() : QString();
    }

    test::FakeClock clock;
    RunDefaults defaults;
    std::vector<Unit> units;
    std::vector<Meter> meters;
    QPointer<StartForm> form;
    int submitted = 0;
};

} // namespace

TEST_F(StartForms, a_no_load_preset_sets_kind_load_state_reminders_and_its_own_cautions) {
    open();
    EXPECT_TRUE(find<QPushButton>("drainPresetButton")->isChecked());
    preset("noLoadPresetButton");
    EXPECT_EQ(text("loadEdit"), "nothing connected");
    EXPECT_EQ(find<QComboBox>("startedFullCombo")->currentText(), "yes, full");
    EXPECT_EQ(text("everyEdit"), "4 h");
    EXPECT_TRUE(said("cautionsLabel").contains("output stays live"));
    submit();
    ASSERT_EQ(submitted, 1);
    EXPECT_EQ(form->start().run.kind, RunKind::no_load_drain);
    EXPECT_EQ(form->start().run.load, "nothing connected");
    EXPECT_EQ(form->start().run.started_full, true);
    EXPECT_EQ(form->start().rule, usual_rule(RunKind::no_load_drain));
}

TEST_F(StartForms, each_preset_gives_its_kind_and_the_cautions_that_always_apply) {
    open();
    const struct {
        const char* button;
        RunKind kind;
        const char* special;
    } cases[] = {{"chargePresetButton", RunKind::charge, "input limits"},
                 {"sustainedPresetButton", RunKind::sustained_output, "unwind cords"},
                 {"peakPresetButton", RunKind::peak_output, "can trip"},
                 {"drainPresetButton", RunKind::drain, "attendance"}};
    for (const auto& each : cases) {
        preset(each.button);
        for (const char* word : {"attendance", "ratings", "smell", "ventilation", "electrician", each.special})
            EXPECT_TRUE(said("cautionsLabel").contains(word)) << each.button << " " << word;
        EXPECT_EQ(said("cautionsLabel").contains("PV strings"), each.kind == RunKind::charge) << "where PV is";
        submit();
        EXPECT_EQ(form->start().run.kind, each.kind) << each.button;
    }
}

TEST_F(StartForms, what_was_typed_or_chosen_stays_when_the_preset_changes) {
    open();
    type("loadEdit", "heater");
    type("everyEdit", "7 min");
    preset("noLoadPresetButton");
    EXPECT_EQ(text("loadEdit"), "heater");
    EXPECT_EQ(text("everyEdit"), "7 min");
}

TEST_F(StartForms, a_charge_is_not_expected_to_start_full) {
    open();
    preset("chargePresetButton");
    EXPECT_EQ(find<QComboBox>("startedFullCombo")->currentText(), "no");
}

TEST_F(StartForms, a_charge_says_where_its_energy_comes_from_and_no_other_run_does) {
    open();
    EXPECT_FALSE(find<QComboBox>("chargeSourceCombo")->isEnabled());
    preset("chargePresetButton");
    ASSERT_TRUE(find<QComboBox>("chargeSourceCombo")->isEnabled());
    choose("chargeSourceCombo", "the PV input");
    submit();
    EXPECT_EQ(form->start().run.charge_source, ChargeSource::pv);
    preset("drainPresetButton");
    submit();
    EXPECT_FALSE(form->start().run.charge_source);
}

TEST_F(StartForms, kind_and_reminders_of_last_time_stand_in_the_form) {
    defaults.time_zone = "Africa/Nairobi";
    defaults.kind_of_unit[UnitId("osk")] = RunKind::sustained_output;
    defaults.kind_of_unit[UnitId("pelm")] = RunKind::charge;
    defaults.rule_of_kind[RunKind::sustained_output] = {std::nullopt, 5, std::nullopt};
    open();
    EXPECT_TRUE(find<QPushButton>("sustainedPresetButton")->isChecked());
    EXPECT_EQ(text("everyEdit"), "");
    EXPECT_EQ(text("dropEdit"), "5");
    EXPECT_EQ(find<QComboBox>("timeZoneCombo")->currentText(), "Africa/Nairobi");
    choose("unitCombo", "Pelm 900");
    EXPECT_TRUE(find<QPushButton>("chargePresetButton")->isChecked()) << "each unit has its own kind";
    EXPECT_EQ(text("gaugeStepEdit"), "20 %");
}

TEST_F(StartForms, meter_and_load_of_the_units_last_run_are_offered_and_nothing_of_another_unit_is_filled_in) {
    ullage::Run last;
    last.unit_uuid = UnitId("osk");
    last.kind = RunKind::sustained_output;
    last.meter_uuid = MeterId("b");
    last.load = "projector";
    defaults.last_of_unit[UnitId("osk")] = last;
    open();
    EXPECT_EQ(text("loadEdit"), "");
    EXPECT_EQ(find<QComboBox>("meterCombo")->currentText(), "none") << "there are two";
    EXPECT_TRUE(said("missingLabel").contains("Without a meter")) << "said before, not after";
    const QString offered = find<QPushButton>("asLastButton")->toolTip(); // its own text is cut where the form ends
    EXPECT_TRUE(offered.contains("sustained output, projector, Socket meter B")) << offered.toStdString();
    QTest::mouseClick(find<QPushButton>("asLastButton"), Qt::LeftButton);
    EXPECT_TRUE(find<QPushButton>("sustainedPresetButton")->isChecked());
    EXPECT_EQ(find<QComboBox>("meterCombo")->currentText(), "Socket meter B");
    EXPECT_EQ(text("loadEdit"), "projector");
    EXPECT_FALSE(said("missingLabel").contains("Without a meter"));
    choose("unitCombo", "Pelm 900");
    EXPECT_FALSE(find<QPushButton>("asLastButton")->isVisible()) << "it has no run yet";
}

TEST_F(StartForms, the_only_meter_is_the_one) {
    meters.pop_back();
    open();
    EXPECT_EQ(find<QComboBox>("meterCombo")->currentText(), "Socket meter A");
}

TEST_F(StartForms, a_preset_chosen_by_hand_outlives_the_choice_of_another_unit) {
    defaults.kind_of_unit[UnitId("pelm")] = RunKind::charge;
    open();
    preset("peakPresetButton");
    choose("unitCombo", "Pelm 900");
    EXPECT_TRUE(find<QPushButton>("peakPresetButton")->isChecked());
}

TEST_F(StartForms, the_first_reading_is_understood_as_a_tired_person_types_it) {
    open();
    type("gaugeEdit", "98 %");
    type("registerEdit", "1.2 kWh");
    type("wattsEdit", "12,5");
    type("timeEdit", "-10m");
    submit();
    ASSERT_EQ(submitted, 1) << said("firstErrorLabel").toStdString();
    ASSERT_TRUE(form->start().first.has_value());
    const auto& first = *form->start().first;
    EXPECT_EQ(first.gauge_percent, 98.0);
    EXPECT_DOUBLE_EQ(*first.register_wh, 1200.0);
    EXPECT_DOUBLE_EQ(*first.meter_w, 12.5);
    EXPECT_EQ(first.time_ms, clock.now_ms() - 10 * 60'000);
}

TEST_F(StartForms, an_empty_time_is_the_moment_of_starting_not_that_of_opening) {
    open();
    type("gaugeEdit", "100");
    clock.advance_hours(0.5);
    submit();
    ASSERT_TRUE(form->start().first.has_value());
    EXPECT_EQ(form->start().first->time_ms, clock.now_ms());
}

TEST_F(StartForms, empty_fields_are_no_reading_and_nothing_is_refused) {
    open();
    for (const char* field : {"loadEdit", "gaugeStepEdit", "everyEdit", "dropEdit", "beforeEdit"}) type(field, "");
    submit();
    ASSERT_EQ(submitted, 1);
    EXPECT_FALSE(form->start().first.has_value());
    EXPECT_FALSE(form->start().gauge_step_percent.has_value());
    EXPECT_EQ(form->start().rule, ReadingRule());
    EXPECT_EQ(form->start().run.time_zone, "Europe/Paris");
    EXPECT_FALSE(form->start().run.meter_uuid) << "of two nobody chose one";
}

TEST_F(StartForms, a_time_alone_notes_the_start) {
    open();
    type("timeEdit", "17:30");
    submit();
    ASSERT_EQ(submitted, 1);
    ASSERT_TRUE(form->start().first.has_value());
    EXPECT_EQ(form->start().first->remark, "start");
    EXPECT_EQ(form->start().first->time_ms, clock.now_ms() - 30 * 60'000); // 18:00 in Paris
}

TEST_F(StartForms, only_another_gauge_step_is_a_change) {
    open();
    type("gaugeStepEdit", "1");
    submit();
    EXPECT_FALSE(form->start().gauge_step_percent.has_value());
    type("gaugeStepEdit", "12,5 %");
    submit();
    EXPECT_EQ(form->start().gauge_step_percent, 12.5);
}

TEST_F(StartForms, what_cannot_be_meant_is_explained_in_place) {
    open();
    type("gaugeEdit", "170");
    type("registerEdit", "forty");
    type("everyEdit", "often");
    type("dropEdit", "some");
    type("ambientEdit", "400");
    find<QComboBox>("timeZoneCombo")->setEditText("Mars/Olympus");
    submit();
    EXPECT_EQ(submitted, 0);
    EXPECT_TRUE(said("firstErrorLabel").contains("170"));
    EXPECT_TRUE(said("ruleErrorLabel").contains("often"));
    EXPECT_TRUE(said("ruleErrorLabel").contains("some"));
    EXPECT_FALSE(said("ambientErrorLabel").isEmpty());
    EXPECT_FALSE(said("timeZoneErrorLabel").isEmpty());
}

TEST_F(StartForms, degrees_fahrenheit_are_understood) {
    open();
    type("ambientEdit", "68 F");
    submit();
    ASSERT_EQ(submitted, 1);
    EXPECT_DOUBLE_EQ(*form->start().run.ambient_c, 20.0);
}

TEST(ReadingRules, time_spans_are_understood_and_written_back) {
    for (const auto& [text, minutes] : {std::pair{"30", 30.0},
                                        {"30 min", 30},
                                        {"1.5 h", 90},
                                        {"1,5h", 90},
                                        {"1 h 30 min", 90},
                                        {"1h30", 90},
                                        {"1:30", 90},
                                        {"0", 0},
                                        {"2 hours", 120},
                                        {" 45 MINUTES ", 45}}) {
        const auto parsed = parse_minutes(text);
        ASSERT_TRUE(parsed) << text;
        EXPECT_DOUBLE_EQ(parsed.value(), minutes) << text;
    }
    for (const char* wrong : {"", "often", "-5", "1:75", "h", "1 h 30 h", "5 days"}) EXPECT_FALSE(parse_minutes(wrong)) << wrong;
    for (const double minutes : {0.0, 5.0, 60.0, 90.0, 240.0, 12.5})
        EXPECT_DOUBLE_EQ(parse_minutes(minutes_text(minutes).toStdString()).value(), minutes);
}

TEST(ReadingRules, a_kept_rule_comes_back_and_a_damaged_one_counts_as_absent) {
    const ReadingRule rule{30, std::nullopt, 0};
    EXPECT_EQ(rule_from_kept(kept_rule(rule)), rule);
    EXPECT_EQ(rule_from_kept({}), ReadingRule());
    EXPECT_EQ(rule_from_kept("x;-4;"), ReadingRule());
    EXPECT_EQ(rule_from_kept("0;0;5").before_cut_off_min, 5.0);
    EXPECT_FALSE(rule_from_kept("0;0;5").every_min.has_value());
}

TEST_F(StartForms, a_second_meter_in_series_brings_its_register_into_the_first_reading) {
    open();
    EXPECT_FALSE(find<QLineEdit>("secondRegisterEdit")->isEnabled()) << "no second meter is chosen";
    choose("meterCombo", "Socket meter A");
    choose("secondMeterCombo", "Socket meter A");
    submit();
    EXPECT_TRUE(said("secondMeterErrorLabel").contains("is the first one"));
    EXPECT_EQ(submitted, 0);
    choose("secondMeterCombo", "Socket meter B");
    type("secondRegisterEdit", "4321");
    submit();
    ASSERT_EQ(submitted, 1);
    EXPECT_EQ(form->start().run.second_meter_uuid, MeterId("b"));
    ASSERT_TRUE(form->start().first);
    EXPECT_EQ(form->start().first->second_register_wh, 4321);
    EXPECT_EQ(form->start().first->remark, "");
}

} // namespace ullage
