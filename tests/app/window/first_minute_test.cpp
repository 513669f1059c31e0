// SPDX-License-Identifier: GPL-3.0-or-later
// What a newcomer meets: the three doors of the welcome page, and the guided first run through the forms that everybody uses.
#include "services/appearance.h"
#include "support/source_dir.h"
#include "window/guide_controller.h"
#include "window_fixture.h"

#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QScrollArea>

#include <algorithm>
#include <tuple>

namespace ullage {

namespace {

class FirstMinuteTest : public test::WindowTest {
protected:
    [[nodiscard]] bool in_sight(const char* name) const {
        for (const auto* part : window->findChildren<QWidget*>(QString::fromLatin1(name)))
            if (part->isVisible()) return true;
        return false;
    }
    [[nodiscard]] QString words(const char* label) const { return find<QLabel>(label)->text(); }
    [[nodiscard]] bool guided() const { return in_sight("guideBar"); }
    /// Types into a field of the form that is open.
    void fill(const char* form, const char* field, const QString& text) const {
        auto* open = window->findChild<QDialog*>(QString::fromLatin1(form));
        ASSERT_NE(open, nullptr) << form;
        auto* edit = open->findChild<QLineEdit*>(QString::fromLatin1(field));
        ASSERT_NE(edit, nullptr) << field;
        edit->setText(text);
        edit->setModified(true);
    }
    void submit() {
        click("submitButton");
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QApplication::processEvents();
    }
    void begin_guide(const char* name) {
        prompts.to_save = file(name);
        click("guideButton");
        prompts.to_save.clear();
        ASSERT_TRUE(document.isOpen()) << message().toStdString();
    }
    void record(const QString& time, const QString& gauge, const QString& energy) {
        const auto* row = find<QWidget>("entryRow");
        row->findChild<QLineEdit*>(QStringLiteral("timeEdit"))->setText(time);
        row->findChild<QLineEdit*>(QStringLiteral("gaugeEdit"))->setText(gauge);
        row->findChild<QLineEdit*>(QStringLiteral("registerEdit"))->setText(energy);
        click("recordButton");
    }
    void choose_in_table(const char* combo_name, const QString& text) {
        auto* combo = find<QComboBox>(combo_name);
        const int place = combo->findText(text);
        ASSERT_GE(place, 0) << text.toStdString();
        combo->setCurrentIndex(place);
        emit combo->activated(place);
        QApplication::processEvents();
    }
    [[nodiscard]] static QString corpus(const char* name) {
        return QString::fromStdString((test::source_dir() / "tests/corpus/tables" / name).string());
    }
};

} // namespace

TEST_F(FirstMinuteTest, three_doors_stand_open_and_lead_into_an_empty_logbook_too) {
    for (const char* door : {"sampleLogbookButton", "guideButton", "ownTableButton", "newLogbookButton", "openLogbookButton"})
        EXPECT_TRUE(in_sight(door)) << door;
    EXPECT_FALSE(in_sight("addUnitButton"));
    new_logbook();
    for (const char* door : {"guideButton", "ownTableButton", "addUnitButton", "addMeterButton", "importSheetButton"})
        EXPECT_TRUE(in_sight(door)) << door;
    for (const char* door : {"sampleLogbookButton", "newLogbookButton"}) EXPECT_FALSE(in_sight(door)) << door;
}

TEST_F(FirstMinuteTest, a_sample_that_was_worked_in_opens_as_it_was_left) {
    click("sampleLogbookButton");
    add_meter("Meter of mine");
    const auto& meters = document.meters();
    const MeterId mine = std::ranges::find(meters, "Meter of mine", &Meter::name)->uuid;
    trigger("closeLogbookAction");
    click("sampleLogbookButton");
    ASSERT_TRUE(document.isOpen());
    EXPECT_NE(document.meter(mine), nullptr);
    ASSERT_TRUE(document.withdrawMeter(mine)); // other tests find the sample as it comes
}

TEST_F(FirstMinuteTest, a_table_is_looked_at_before_there_is_a_logbook_which_is_named_when_it_comes_in) {
    prompts.to_open = {corpus("kitchen.csv")};
    click("ownTableButton");
    ASSERT_NE(window->findChild<QDialog*>(QStringLiteral("tableForm")), nullptr) << message().toStdString();
    EXPECT_FALSE(document.isOpen());
    choose_in_table("tableMeterCombo", "not known");
    click("submitButton");
    EXPECT_FALSE(document.isOpen()) << "no name was given";
    EXPECT_TRUE(window->findChild<QDialog*>(QStringLiteral("tableForm"))->isVisible());
    EXPECT_TRUE(prompts.suggested.endsWith(QStringLiteral("kitchen.ullage"))) << prompts.suggested.toStdString();
    prompts.to_save = write("taken.ullage", "somebody's");
    click("submitButton");
    EXPECT_FALSE(document.isOpen()) << "a file that is there is not replaced";
    EXPECT_FALSE(words("refusalLabel").isEmpty());
    prompts.to_save = file("kitchen.ullage");
    submit();
    EXPECT_EQ(document.path(), file("kitchen.ullage"));
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_EQ(page(), "runPage");
}

TEST_F(FirstMinuteTest, a_table_that_is_thought_better_of_leaves_no_logbook) {
    prompts.to_open = {corpus("kitchen.csv")};
    click("ownTableButton");
    click("cancelButton");
    EXPECT_FALSE(document.isOpen());
    EXPECT_EQ(page(), "welcomePage");
}

TEST_F(FirstMinuteTest, the_guide_leads_from_the_unit_to_the_result_through_the_real_forms_and_notices_each_step) {
    begin_guide("guided.ullage");
    ASSERT_TRUE(guided());
    EXPECT_FALSE(in_sight("guideButton")) << "its door is not needed now";
    EXPECT_EQ(words("guideStepLabel"), "step 1 of 6");
    click("guideGoButton");
    fill("unitForm", "nameEdit", "Trial unit");
    fill("unitForm", "ratedEnergyEdit", "1000 Wh");
    submit();
    EXPECT_EQ(words("guideStepLabel"), "step 2 of 6");
    click("guideGoButton");
    fill("meterForm", "nameEdit", "Trial meter");
    fill("meterForm", "stepEdit", "1 Wh");
    fill("meterForm", "limitEdit", "1 %");
    submit();
    EXPECT_EQ(words("guideStepLabel"), "step 3 of 6");
    click("guideGoButton");
    fill("startForm", "gaugeEdit", "100");
    fill("startForm", "registerEdit", "0");
    fill("startForm", "timeEdit", "-6h");
    submit();
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_EQ(words("guideStepLabel"), "step 4 of 6");
    EXPECT_TRUE(words("guideTaskLabel").contains("1 of 3")) << words("guideTaskLabel").toStdString();
    click("guideGoButton");
    record("-4h", "66", "260");
    EXPECT_TRUE(words("guideTaskLabel").contains("2 of 3")) << words("guideTaskLabel").toStdString();
    record("-2h", "32", "525");
    EXPECT_EQ(words("guideStepLabel"), "step 5 of 6") << words("entryMessageLabel").toStdString();
    click("guideGoButton");
    auto* how = find<QComboBox>("howCombo");
    how->setCurrentIndex(how->findData(static_cast<int>(RunEnd::cut_off_seen)));
    fill("endForm", "endGaugeEdit", "0");
    fill("endForm", "endRegisterEdit", "790");
    submit();
    EXPECT_EQ(words("guideStepLabel"), "step 6 of 6");
    EXPECT_TRUE(words("guideTaskLabel").contains("790")) << words("guideTaskLabel").toStdString();
    EXPECT_TRUE(words("guideTaskLabel").contains("79.0")) << words("guideTaskLabel").toStdString();
    EXPECT_TRUE(words("guideCourseLabel").contains(QString::fromUtf8("✓ end")));
    window->showUnit(document.units()[0].uuid);
    click("guideGoButton");
    EXPECT_EQ(page(), "runPage");
    click("guideLeaveButton");
    EXPECT_FALSE(guided());
    EXPECT_EQ(document.runs()[0]->readings.size(), 4U) << "what was recorded stays";
}

TEST_F(FirstMinuteTest, the_trial_values_that_the_guide_names_are_taken_without_a_question) {
    begin_guide("trial.ullage");
    for (const char* told : {"Trial unit", "1000 Wh"}) EXPECT_TRUE(words("guideTrialLabel").contains(told)) << told;
    add_unit("Trial unit", "1000 Wh");
    for (const char* told : {"Trial meter", "1 Wh", "1 %"}) EXPECT_TRUE(words("guideTrialLabel").contains(told)) << told;
    add_meter("Trial meter");
    EXPECT_TRUE(words("guideTrialLabel").contains("gauge 100, register 0, time -6h"));
    click("guideGoButton");
    fill("startForm", "gaugeEdit", "100");
    fill("startForm", "registerEdit", "0");
    fill("startForm", "timeEdit", "-6h");
    submit();
    EXPECT_TRUE(words("guideTrialLabel").contains("time -4h, gauge 66, register 260; then time -2h, gauge 32, register 525"));
    for (const auto& [time, gauge, energy] : {std::tuple("-4h", "66", "260"), std::tuple("-2h", "32", "525")}) {
        record(QString::fromLatin1(time), QString::fromLatin1(gauge), QString::fromLatin1(energy));
        EXPECT_FALSE(in_sight("questionBar")) << time;
    }
    EXPECT_TRUE(words("guideTrialLabel").contains("gauge 0, register 790")) << words("guideTrialLabel").toStdString();
    click("guideGoButton");
    auto* how = find<QComboBox>("howCombo");
    how->setCurrentIndex(how->findData(static_cast<int>(RunEnd::cut_off_seen)));
    fill("endForm", "endGaugeEdit", "0");
    fill("endForm", "endRegisterEdit", "790");
    submit();
    EXPECT_EQ(document.runs()[0]->run.end, RunEnd::cut_off_seen) << "nothing was asked";
}

TEST_F(FirstMinuteTest, the_guide_goes_back_on_undo_and_with_its_logbook_and_may_be_left) {
    begin_guide("guided.ullage");
    add_unit();
    EXPECT_EQ(words("guideStepLabel"), "step 2 of 6");
    trigger("undoAction");
    EXPECT_EQ(words("guideStepLabel"), "step 1 of 6");
    trigger("redoAction");
    new_logbook("other.ullage");
    EXPECT_FALSE(guided()) << "another logbook is not guided";
    window->close();
    document.close();
    show();
    window->openLogbook(file("guided.ullage"));
    ASSERT_TRUE(guided()) << "it goes on at the next start";
    EXPECT_EQ(words("guideStepLabel"), "step 2 of 6");
    click("guideLeaveButton");
    EXPECT_FALSE(guided());
    EXPECT_TRUE(message().contains("Guided first run")) << message().toStdString();
    trigger("guideAction");
    EXPECT_TRUE(guided()) << "halfway through, the same logbook is taken up again";
    EXPECT_EQ(document.path(), file("guided.ullage"));
}

TEST_F(FirstMinuteTest, the_guide_asks_for_a_fresh_logbook_where_the_open_one_is_in_use) {
    trigger("sampleLogbookAction");
    const QString sample = document.path();
    trigger("guideAction");
    EXPECT_EQ(document.path(), sample) << "no name was given";
    EXPECT_FALSE(guided());
    prompts.to_save = file("fresh.ullage");
    trigger("guideAction");
    EXPECT_EQ(document.path(), file("fresh.ullage"));
    EXPECT_TRUE(guided());
}

TEST_F(FirstMinuteTest, at_twice_the_text_the_welcome_page_and_the_guide_fit_across_1280_pixels) {
    settings.setTextStep(Settings::most_text_step);
    apply_appearance(*qApp, settings);
    for (int i = 0; i < 3; ++i)
        settings.addRecentFile(file("a folder with a name of some length/and one more/of many logbooks.ullage") + QString::number(i));
    new_logbook("short.ullage");
    trigger("closeLogbookAction"); // the list of what was lately open is shown anew
    window->resize(1280, 800);
    QApplication::processEvents();
    const auto fits = [this] {
        const auto* area = find<QWidget>("welcomePage")->findChild<QScrollArea*>();
        EXPECT_LE(area->widget()->minimumSizeHint().width(), area->viewport()->width());
        EXPECT_LE(window->minimumSizeHint().width(), 1280);
        EXPECT_LE(window->minimumSizeHint().height(), 800);
    };
    fits();
    begin_guide("large.ullage");
    QApplication::processEvents();
    fits();
    settings.setTextStep(0);
    apply_appearance(*qApp, settings);
}

} // namespace ullage
