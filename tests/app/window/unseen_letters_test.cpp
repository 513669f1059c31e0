// SPDX-License-Identifier: GPL-3.0-or-later
// A mark of direction in a name makes it look like another (Unicode Standard Annex 9, 2; Unicode Technical Report 36, 2.5), a control character is
// not seen at all. Wherever the window shows what somebody typed, such a character stands there as its escape; only where the text is edited does it
// stand as it is. Nor is a percent sign before a digit taken for a place in a text of the program.
#include "window_fixture.h"

#include "charts/bar_chart.h"
#include "charts/vessel_row.h"
#include "pages/comparison/comparison_page.h"

#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QTabBar>

namespace ullage::test {
namespace {

const std::string override_mark = "\xE2\x80\xAE"; ///< U+202E, right-to-left override

std::string hidden(const std::string& name) { return name + override_mark + "7\x1B%2%1"; }
const QLatin1String escaped_end("\\u202E7\\u001B"), whole_end("\\u202E7\\u001B%2%1"); ///< of what hidden() gives, as it is shown

void add_rows(QStringList& shown, const QAbstractItemModel& model, const QModelIndex& parent = {}) {
    for (int row = 0; row < model.rowCount(parent); ++row)
        for (int column = 0; column < model.columnCount(parent); ++column) {
            const QModelIndex index = model.index(row, column, parent);
            shown << index.data().toString() << index.data(Qt::ToolTipRole).toString() << index.data(Qt::AccessibleTextRole).toString();
            if (column == 0) add_rows(shown, model, index);
        }
}

/// All that the window says, its menus and forms included, apart from fields in which text is edited.
QStringList shown_by(const QWidget& window) {
    QStringList shown{window.windowTitle()};
    for (const auto* action : window.findChildren<QAction*>()) shown << action->text() << action->toolTip();
    for (const auto* widget : window.findChildren<QWidget*>()) {
        shown << widget->windowTitle() << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription();
        if (const auto* label = qobject_cast<const QLabel*>(widget)) shown << label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) shown << button->text();
        if (const auto* group = qobject_cast<const QGroupBox*>(widget)) shown << group->title();
        if (const auto* combo = qobject_cast<const QComboBox*>(widget))
            for (int i = 0; i < combo->count(); ++i) shown << combo->itemText(i);
        if (const auto* tabs = qobject_cast<const QTabBar*>(widget))
            for (int i = 0; i < tabs->count(); ++i) shown << tabs->tabText(i) << tabs->tabToolTip(i);
        const auto* view = qobject_cast<const QAbstractItemView*>(widget);
        if (!view || !view->model() || qobject_cast<const QHeaderView*>(view)) continue;
        add_rows(shown, *view->model());
        for (int c = 0; c < view->model()->columnCount(); ++c) shown << view->model()->headerData(c, Qt::Horizontal).toString();
    }
    shown.removeAll(QString());
    return shown;
}

class UnseenLettersTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        Unit unit;
        unit.name = hidden("Osk");
        unit.maker = hidden("Maker");
        unit.remark = hidden("remark of a unit");
        unit.tags = {"tag" + override_mark}; // a control character is refused there
        unit.rated_energy_wh = 1000;
        unit_ = document.addUnit(unit).value();
        Meter meter;
        meter.name = hidden("Meter");
        meter.remark = hidden("remark of a meter");
        meter.limit_percent = 1;
        meter.step_wh = 1;
        meter_ = document.addMeter(meter).value();
        LoadList list;
        list.name = hidden("Night");
        list.remark = hidden("remark of a list");
        Appliance fridge;
        fridge.name = hidden("Fridge");
        fridge.power_w = 60;
        fridge.hours_per_day = 8;
        list.appliances = {fridge};
        list_ = document.addLoadList(list).value();
        PvSheet sheet;
        sheet.name = hidden("Roof");
        sheet.unit_uuid = unit_.uuid;
        ASSERT_TRUE(document.addPvSheet(sheet));
        for (int n = 0; n < 2; ++n) add_run(n == 0);
    }

    void add_run(bool ended) {
        ullage::Run run;
        run.unit_uuid = unit_.uuid;
        run.meter_uuid = meter_.uuid;
        run.load = hidden("lamp");
        run.started_full = true;
        run = document.addRun(run).value();
        for (int i = 0; i <= 10; ++i) {
            ReadingValues values;
            values.time_ms = clock.now_ms();
            values.gauge_percent = 100 - 10 * i;
            values.register_wh = 80 * i;
            values.remark = hidden("remark of a reading");
            const auto noted = document.record(run.uuid, values);
            ASSERT_TRUE(noted);
            values.remark = hidden("amended");
            if (i == 3) {
                ASSERT_TRUE(document.amend(noted.value().uuid, values, QString::fromStdString(hidden("reason"))));
            }
            clock.advance_hours(1);
        }
        if (!ended) return;
        run.end = RunEnd::cut_off_seen;
        ASSERT_TRUE(document.updateRun(run));
    }

    void expect_escaped(const char* where, const char* word) {
        QApplication::processEvents();
        bool escaped = false;
        for (const QString& text : shown_by(*window)) {
            EXPECT_FALSE(text.contains(QChar(0x202E)) || text.contains(QChar(0x1B))) << where << ": " << text.toStdString();
            escaped = escaped || text.contains(QLatin1String(word) + escaped_end);
        }
        EXPECT_TRUE(escaped) << where << " does not show " << word;
    }

    void expect_whole(const char* where) {
        QApplication::processEvents();
        bool found = false;
        for (const QString& text : shown_by(*window)) {
            EXPECT_EQ(text.count(whole_end), text.count(escaped_end)) << where << ": " << text.toStdString();
            found = found || text.contains(whole_end);
        }
        EXPECT_TRUE(found) << where;
    }

    Unit unit_;
    Meter meter_;
    LoadList list_;
};

} // namespace

TEST_F(UnseenLettersTest, stand_as_escapes_on_every_page) {
    expect_escaped("menu of undoing", "Osk");
    window->showUnit(unit_.uuid);
    expect_escaped("page of a unit", "Maker");
    for (const RunRecord* record : document.runs()) {
        window->showRun(record->run.uuid);
        expect_escaped("page of a run", "lamp");
        expect_escaped("readings", "remark of a reading");
    }
    window->showMeter(meter_.uuid);
    expect_escaped("meters", "remark of a meter");
    window->showLoadList(list_.uuid);
    expect_escaped("load lists", "Fridge");
    window->showSizing();
    expect_escaped("sizing", "Night");
    window->showPvInput();
    expect_escaped("PV input", "Roof");
    window->showBench();
    expect_escaped("running tests", "Osk");
}

TEST_F(UnseenLettersTest, leave_percent_signs_behind_them_as_they_were_typed_on_every_page) {
    window->showUnit(unit_.uuid);
    expect_whole("page of a unit");
    for (const RunRecord* record : document.runs()) {
        window->showRun(record->run.uuid);
        expect_whole("page of a run");
    }
    window->showMeter(meter_.uuid);
    expect_whole("meters");
    window->showLoadList(list_.uuid);
    expect_whole("load lists");
    window->showSizing();
    expect_whole("sizing");
    window->showPvInput();
    expect_whole("PV input");
    window->showBench();
    expect_whole("running tests");
    window->showComparison();
    expect_whole("comparison");
}

TEST_F(UnseenLettersTest, stand_as_escapes_on_the_comparison_page_and_in_its_pictures) {
    window->showComparison();
    expect_escaped("comparison", "Osk");
    auto* page = find<ComparisonPage>("comparisonPage");
    ASSERT_EQ(page->findChild<VesselRow*>()->content().columns.size(), 1U);
    EXPECT_EQ(page->findChild<VesselRow*>()->content().columns[0].name, QLatin1String("Osk") + whole_end);
    EXPECT_EQ(page->findChild<BarChart*>()->content().bars.at(0).name, QLatin1String("Osk") + whole_end);
    auto* tags = page->findChild<QComboBox*>(QStringLiteral("tagCombo"));
    ASSERT_EQ(tags->itemText(1), QStringLiteral("tag\\u202E"));
    tags->setCurrentIndex(1);
    EXPECT_EQ(page->comparison().rows.size(), 1U) << "the tag is found as it is, not as it is shown";
}

TEST_F(UnseenLettersTest, stand_as_escapes_in_the_forms_of_reports) {
    window->showRun(document.runs().front()->run.uuid);
    trigger("runReportAction");
    expect_escaped("report of a run", "Osk");
    window->showSizing();
    trigger("sizingReportAction");
    expect_escaped("report of a sizing", "Night");
    window->showPvInput();
    trigger("pvReportAction");
    expect_escaped("report of a PV check", "Roof");
}

TEST_F(UnseenLettersTest, stand_as_escapes_where_the_name_of_a_file_is_shown) {
    const QString path = file("shed.ullage").replace(QStringLiteral("shed"), QString::fromStdString("Osk" + override_mark + "7"));
    ASSERT_TRUE(document.saveCopy(path));
    window->openLogbook(path);
    ASSERT_EQ(document.path(), path);
    EXPECT_EQ(window->windowTitle(), QStringLiteral("Osk\\u202E7 – Ullage"));
    for (const QString& text : shown_by(*window)) EXPECT_FALSE(text.contains(QChar(0x202E))) << text.toStdString();
}

TEST_F(UnseenLettersTest, stand_as_they_are_in_the_field_where_the_name_is_edited) {
    window->showUnit(unit_.uuid);
    trigger("editUnitAction");
    EXPECT_EQ(find<QLineEdit>("nameEdit")->text().toStdString(), hidden("Osk"));
    expect_escaped("form of a unit", "Osk");
    click("submitButton");
    EXPECT_EQ(document.unit(unit_.uuid)->name, hidden("Osk")) << "leaving a form as it is changes nothing";
}

} // namespace ullage::test
