// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/field_text.h"
#include "dialogs/meter_form.h"
#include "dialogs/run_form.h"
#include "dialogs/unit_form.h"
#include "style/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

namespace ullage {

namespace {

/// A form on the screen and how often it has submitted; deletes itself on closing, as in the program.
template <class Form>
class OnScreen {
public:
    explicit OnScreen(Form* form) : form_(form) {
        QObject::connect(form, &FormDialog::submitted, [this] { ++submitted; });
        form->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(form));
    }
    ~OnScreen() { delete form_; }

    void type(const char* name, const QString& text) {
        auto* edit = form_->template findChild<QLineEdit*>(QString::fromLatin1(name));
        ASSERT_NE(edit, nullptr) << name;
        edit->selectAll();
        if (text.isEmpty()) QTest::keyClick(edit, Qt::Key_Delete);
        else QTest::keyClicks(edit, text);
    }
    void choose(const char* name, const QString& text) {
        auto* combo = form_->template findChild<QComboBox*>(QString::fromLatin1(name));
        ASSERT_NE(combo, nullptr) << name;
        const int at = combo->findText(text);
        ASSERT_GE(at, 0) << text.toStdString();
        combo->setCurrentIndex(at);
    }
    void submit() {
        QTest::mouseClick(form_->template findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton);
        QApplication::processEvents();
    }
    [[nodiscard]] QString error(const char* name) const {
        const auto* label = form_->template findChild<QLabel*>(QString::fromLatin1(name));
        return label && label->isVisible() ? label->text() : QString();
    }
    Form* operator->() { return form_; }

    int submitted = 0;

private:
    QPointer<Form> form_;
};

} // namespace

TEST(UnitForm, understands_claims_as_people_write_them) {
    OnScreen form(new UnitForm(Unit{}));
    form.type("nameEdit", "Osk 1200");
    form.type("ratedEnergyEdit", "1,2 kWh");
    form.type("ratedOutputEdit", "600 W");
    form.type("peakOutputEdit", "1.2 kW");
    form.type("priceEdit", "799,50");
    form.type("currencyEdit", "eur");
    form.type("massEdit", "1,5");
    form.type("warrantyEdit", "24 months");
    form.type("pvVoltsEdit", "60 V");
    form.type("gaugeStepEdit", "5 %");
    form.type("paidPriceEdit", "640");
    form.type("tagsEdit", "tent, lent;tent");
    form.submit();
    ASSERT_EQ(form.submitted, 1);
    const auto& unit = form->unit();
    EXPECT_EQ(unit.name, "Osk 1200");
    EXPECT_EQ(unit.rated_energy_wh, 1200.0);
    EXPECT_EQ(unit.rated_output_w, 600.0);
    EXPECT_EQ(unit.peak_output_w, 1200.0);
    EXPECT_EQ(unit.price, 799.5);
    EXPECT_EQ(unit.currency, "EUR");
    EXPECT_EQ(unit.mass_kg, 1.5);
    EXPECT_DOUBLE_EQ(*unit.warranty_years, 2.0);
    EXPECT_EQ(unit.pv_max_v, 60.0);
    EXPECT_FALSE(unit.pv_max_a.has_value());
    EXPECT_EQ(unit.gauge_step_percent, 5.0);
    EXPECT_EQ(unit.paid_price, 640.0);
    EXPECT_EQ(unit.tags, (std::vector<std::string>{"lent", "tent"}));
}

TEST(UnitForm, a_tag_that_is_a_sentence_is_explained_and_stays_in_the_field) {
    OnScreen form(new UnitForm(Unit{}));
    form.type("nameEdit", "Osk 1200");
    form.type("tagsEdit", "lent to the people of the second tent until autumn");
    form.submit();
    EXPECT_EQ(form.submitted, 0);
    EXPECT_TRUE(form.error("tagsErrorLabel").contains("too long"));
}

TEST(UnitForm, a_wrong_field_is_explained_in_place_and_keeps_the_form_waiting) {
    OnScreen form(new UnitForm(Unit{}));
    form.type("nameEdit", "Osk 1200");
    form.type("ratedEnergyEdit", "plenty");
    form.type("massEdit", "-3 kg");
    form.submit();
    EXPECT_EQ(form.submitted, 0);
    EXPECT_TRUE(form.error("ratedEnergyErrorLabel").contains("plenty"));
    EXPECT_FALSE(form.error("massErrorLabel").isEmpty());
    EXPECT_TRUE(form.error("priceErrorLabel").isEmpty());
    form.type("ratedEnergyEdit", "850 Wh");
    form.type("massEdit", "");
    form.submit();
    EXPECT_EQ(form.submitted, 1);
    EXPECT_EQ(form->unit().rated_energy_wh, 850.0);
    EXPECT_TRUE(form.error("ratedEnergyErrorLabel").isEmpty());
}

TEST(UnitForm, grows_so_that_a_field_and_its_explanation_are_whole) {
    OnScreen form(new UnitForm(Unit{}));
    const auto* field = form->findChild<QLineEdit*>("ratedEnergyEdit");
    const int before_px = field->height();
    form.type("ratedEnergyEdit", "plenty");
    form.type("ratedOutputEdit", "much");
    form.submit();
    QApplication::processEvents();
    EXPECT_EQ(field->height(), before_px);
    const auto* words = form->findChild<QLabel*>("ratedEnergyErrorLabel");
    EXPECT_GE(words->height(), words->heightForWidth(words->width()));
}

TEST(UnitForm, needs_a_name_and_a_currency_for_a_price) {
    OnScreen form(new UnitForm(Unit{}));
    form.type("priceEdit", "799");
    form.submit();
    EXPECT_EQ(form.submitted, 0);
    EXPECT_FALSE(form.error("nameErrorLabel").isEmpty());
    EXPECT_FALSE(form.error("currencyErrorLabel").isEmpty());
}

TEST(UnitForm, shows_the_claims_it_starts_from_and_gives_them_back_unchanged) {
    Unit unit;
    unit.uuid = UnitId("a");
    unit.name = "Pelm 900";
    unit.maker = "Invented Makers";
    unit.rated_energy_wh = 901.5;
    unit.price = 512.25;
    unit.currency = "KES";
    unit.mass_kg = 11.34;
    unit.pv_max_w = 200;
    unit.gauge_step_percent = 20;
    unit.remark = "bought used";
    OnScreen form(new UnitForm(unit));
    form.submit();
    ASSERT_EQ(form.submitted, 1);
    EXPECT_EQ(form->unit(), unit);
}

TEST(UnitForm, a_refusal_of_the_store_is_shown_and_the_form_stays) {
    OnScreen form(new UnitForm(Unit{}));
    form->refuse("the disk is full");
    EXPECT_EQ(form.error("refusalLabel"), "the disk is full");
    EXPECT_TRUE(form->isVisible());
}

TEST(MeterForm, understands_a_data_sheet) {
    OnScreen form(new MeterForm(Meter{}));
    form.type("nameEdit", "Socket meter A");
    form.type("stepEdit", "0,01 kWh");
    form.type("limitEdit", "1 %");
    form.type("spanEdit", "10000 kWh");
    form.submit();
    ASSERT_EQ(form.submitted, 1);
    EXPECT_DOUBLE_EQ(*form->meter().step_wh, 10.0);
    EXPECT_EQ(form->meter().limit_percent, 1.0);
    EXPECT_DOUBLE_EQ(*form->meter().span_wh, 1e7);
    EXPECT_EQ(form->meter().correction, 1.0);
}

TEST(MeterForm, refuses_limits_and_spans_that_say_nothing) {
    OnScreen form(new MeterForm(Meter{}));
    form.type("nameEdit", "Socket meter A");
    form.type("stepEdit", "10 Wh");
    form.type("limitEdit", "200");
    form.type("spanEdit", "5 Wh");
    form.type("correctionEdit", "0");
    form.submit();
    EXPECT_EQ(form.submitted, 0);
    EXPECT_FALSE(form.error("limitErrorLabel").isEmpty());
    EXPECT_FALSE(form.error("spanErrorLabel").isEmpty());
    EXPECT_FALSE(form.error("correctionErrorLabel").isEmpty());
}

TEST(MeterForm, understands_a_certificate_and_asks_why_a_known_meter_changes) {
    Meter known;
    known.uuid = MeterId("a");
    known.name = "Socket meter A";
    OnScreen form(new MeterForm(known));
    form.type("accuracyClassEdit", "B");
    form.type("standardEdit", "EN 50470-3");
    form.type("rangeLowEdit", "5 W");
    form.type("rangeHighEdit", "3.6 kW");
    form.type("startingCurrentEdit", "20 mA");
    form.type("certificateEdit", "K-118");
    form.type("laboratoryEdit", "Hillfoot Measures");
    form.type("certificateDateEdit", "2027-03-02");
    form.type("validUntilEdit", "2029-03-02");
    form.type("pointsEdit", "500 1.001 0.25 2; 100 0.998");
    form.type("reasonEdit", "calibrated");
    form.submit();
    ASSERT_EQ(form.submitted, 1);
    const Meter& meter = form->meter();
    EXPECT_EQ(meter.accuracy_class, "B");
    EXPECT_EQ(meter.standard, "EN 50470-3");
    EXPECT_EQ(meter.range_low_w, 5.0);
    EXPECT_EQ(meter.range_high_w, 3600.0);
    EXPECT_NEAR(meter.starting_current_a.value(), 0.02, 1e-12);
    EXPECT_EQ(meter.certificate, (MeterCertificate{"K-118", "2027-03-02", "Hillfoot Measures", "2029-03-02"}));
    EXPECT_EQ(meter.points, (std::vector<MeterPoint>{{100, 0.998, {}, {}}, {500, 1.001, 0.25, 2.0}}));
    EXPECT_EQ(form->reason(), "calibrated");
}

TEST(MeterForm, explains_a_date_and_points_that_cannot_be_understood) {
    OnScreen form(new MeterForm(Meter{}));
    form.type("nameEdit", "Socket meter A");
    form.type("validUntilEdit", "next spring");
    form.type("pointsEdit", "100");
    form.type("rangeLowEdit", "100 W");
    form.type("rangeHighEdit", "5 W");
    form.submit();
    EXPECT_EQ(form.submitted, 0);
    EXPECT_FALSE(form.error("datesErrorLabel").isEmpty());
    EXPECT_FALSE(form.error("pointsErrorLabel").isEmpty());
    EXPECT_FALSE(form.error("rangeErrorLabel").isEmpty());
}

class RunForms : public ::testing::Test {
protected:
    RunForms() {
        Unit osk, pelm;
        osk.uuid = UnitId("osk");
        osk.name = "Osk 1200";
        pelm.uuid = UnitId("pelm");
        pelm.name = "Pelm 900";
        units = {osk, pelm};
        Meter meter;
        meter.uuid = MeterId("a");
        meter.name = "Socket meter A";
        meters = {meter};
    }

    [[nodiscard]] static ullage::Run run_of_osk() {
        ullage::Run run;
        run.uuid = RunId("run");
        run.unit_uuid = UnitId("osk");
        run.meter_uuid = MeterId("a");
        return run;
    }

    std::vector<Unit> units;
    std::vector<Meter> meters;
};

TEST_F(RunForms, gives_back_what_was_chosen) {
    OnScreen form(new RunForm(run_of_osk(), units, meters));
    form.choose("kindCombo", "no-load drain");
    form.choose("meterCombo", "none");
    form.choose("startedFullCombo", "yes, full");
    form.choose("timeZoneCombo", "Africa/Nairobi");
    form.type("loadEdit", "projector and sound");
    form.type("ambientEdit", "-1,5 °C");
    form.submit();
    ASSERT_EQ(form.submitted, 1);
    EXPECT_EQ(form->run().unit_uuid, UnitId("osk"));
    EXPECT_EQ(form->run().kind, RunKind::no_load_drain);
    EXPECT_FALSE(form->run().meter_uuid.has_value());
    EXPECT_EQ(form->run().started_full, true);
    EXPECT_EQ(form->run().time_zone, "Africa/Nairobi");
    EXPECT_EQ(form->run().load, "projector and sound");
    EXPECT_EQ(form->run().ambient_c, -1.5);
}

TEST_F(RunForms, every_field_is_in_sight_where_the_screen_has_room_and_long_words_show_their_beginning) {
    apply_theme(*qApp, Theme::light); // fields as high as they are in the program
    ullage::Run run = run_of_osk();
    run.load = "work lights, projector, sound and the laptop at the ticket desk, all night long until the sun comes up";
    OnScreen form(new RunForm(run, units, meters));
    EXPECT_EQ(form->findChild<QScrollArea*>(QStringLiteral("fieldsScroll"))->verticalScrollBar()->maximum(), 0);
    EXPECT_EQ(form->findChild<QLineEdit*>(QStringLiteral("loadEdit"))->cursorPosition(), 0);
}

TEST_F(RunForms, explains_a_zone_and_a_temperature_that_cannot_be) {
    OnScreen form(new RunForm(run_of_osk(), units, meters));
    form->findChild<QComboBox*>("timeZoneCombo")->setEditText("Mars/Olympus");
    form.type("ambientEdit", "400");
    form.submit();
    EXPECT_EQ(form.submitted, 0);
    EXPECT_FALSE(form.error("timeZoneErrorLabel").isEmpty());
    EXPECT_FALSE(form.error("ambientErrorLabel").isEmpty());
}

TEST_F(RunForms, editing_keeps_the_unit_and_can_say_how_the_run_ended) {
    ullage::Run run;
    run.uuid = RunId("run");
    run.unit_uuid = UnitId("pelm");
    run.kind = RunKind::charge;
    run.started_full = false;
    run.time_zone = "Europe/Lisbon";
    run.extra = {{"bench", "by the door"}};
    OnScreen form(new RunForm(run, units, meters));
    EXPECT_FALSE(form->findChild<QComboBox*>("unitCombo")->isEnabled());
    form.choose("endCombo", "found off");
    form.submit();
    ASSERT_EQ(form.submitted, 1);
    auto expected = run;
    expected.end = RunEnd::found_off;
    EXPECT_EQ(form->run(), expected);
}

TEST(FieldText, a_number_may_carry_its_unit_and_nothing_else) {
    const auto mass = number_in({{"kg", 1}, {"g", 0.001}}, {"the mass"});
    EXPECT_DOUBLE_EQ(mass("12,4 kg").value(), 12.4);
    EXPECT_DOUBLE_EQ(mass("900g").value(), 0.9);
    EXPECT_DOUBLE_EQ(mass("7 KG").value(), 7.0);
    for (const char* wrong : {"2 kg 300", "kg", "", "1.234,5 kg", "0", "-1 kg", "nan", "heavy"}) EXPECT_FALSE(mass(wrong).ok()) << wrong;
}

} // namespace ullage
