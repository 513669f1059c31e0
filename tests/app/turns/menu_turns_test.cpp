// SPDX-License-Identifier: GPL-3.0-or-later
// Every entry of the menus, chosen where it can be chosen, with the form or dialog that it opens filled in and submitted, and what it did undone.
#include "turns_fixture.h"

#include "services/reminders.h"
#include "store/logbook.h"
#include "support/photo_bytes.h"
#include "support/source_dir.h"

#include <QAction>
#include <QClipboard>
#include <QDialog>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTableView>
#include <QUndoStack>

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace ullage::test {
namespace {

QString of_sample(const char* name) { return QString::fromStdString((source_dir() / "sample-data" / name).string()); }

/// What is typed into the form that an entry opens, by the names of its fields.
using Fields = std::vector<std::pair<const char*, const char*>>;
const std::map<QString, Fields> typed{
    {"addUnitAction", {{"nameEdit", "Osk 1200"}, {"ratedEnergyEdit", "1,2 kWh"}}},
    {"editUnitAction", {{"ratedEnergyEdit", "1234 Wh"}}},
    {"addMeterAction", {{"nameEdit", "Plug"}, {"stepEdit", "1 Wh"}, {"limitEdit", "1 %"}}},
    {"editMeterAction", {{"limitEdit", "1.7 %"}, {"reasonEdit", "its certificate"}}},
    {"addLoadListAction", {{"nameEdit", "Show night"}}},
    {"editLoadListAction", {{"nameEdit", "Camp by the lake"}}},
    {"addApplianceAction", {{"nameEdit", "Lamp"}, {"powerEdit", "9 W"}, {"hoursEdit", "4 h"}}},
    {"editMethodAction", {{"most_of_label_percentEdit", "115 %"}}},
    {"editApplianceAction", {{"powerEdit", "11 W"}}},
};

} // namespace

class MenuTurnTest : public TurnTest {
protected:
    void SetUp() override {
        TurnTest::SetUp();
        addWhatEntriesNeed();
        for (QAction* top : window->menuBar()->actions()) collect(*top->menu());
        // Those that close the logbook come last, and the end of the program after them.
        std::ranges::stable_partition(entries_, [](const QString& name) { return name != QLatin1String("closeLogbookAction"); });
        std::ranges::stable_partition(entries_, [](const QString& name) { return name != QLatin1String("quitAction"); });
    }

    /// A test that runs, a load list, a PV sheet, and files for all that asks for one.
    void addWhatEntriesNeed() {
        unit_ = document.units()[500].uuid;
        ended_ = document.runs(unit_).front()->run.uuid;
        ullage::Run run;
        run.unit_uuid = unit_;
        run.meter_uuid = document.meters()[0].uuid;
        run.time_zone = "UTC";
        ReadingValues first;
        first.time_ms = clock.now_ms() - 3'600'000;
        first.gauge_percent = 100;
        first.register_wh = 2000;
        const auto started = document.startRun(run, first, {});
        ASSERT_TRUE(started) << started.error().sentence();
        running_ = started.value().uuid;
        ReadingRule rule;
        rule.every_min = 30;
        window->reminders().setRule(running_, rule);
        LoadList list;
        list.name = "Camp";
        list.appliances.push_back({});
        list.appliances.back().name = "Lamp";
        list.appliances.back().power_w = 12;
        list.appliances.back().hours_per_day = 4;
        ASSERT_TRUE(document.addLoadList(list));
        PvSheet sheet;
        sheet.name = "Roof";
        sheet.unit_uuid = unit_;
        sheet.voc_v = 24.3;
        sheet.isc_a = 10.2;
        ASSERT_TRUE(document.addPvSheet(sheet));

        other_ = file("other.ullage");
        ASSERT_TRUE(QFile::copy(made_, other_));
        auto other = Logbook::open(other_.toStdString(), OpenMode::record, clock);
        ASSERT_TRUE(other) << other.error().sentence();
        Unit unit;
        unit.name = "Of another logbook";
        unit.rated_energy_wh = 500;
        ASSERT_TRUE(other.value().add(unit));
        prompts.folder = file("folder");
        const auto told = document.exportFolder(
            prompts.folder, [](const auto& work) { work(); }, [](double) { return true; });
        ASSERT_TRUE(told) << told.error().sentence();
        QImage picture(640, 480, QImage::Format_RGB32);
        picture.fill(Qt::gray);
        ASSERT_TRUE(picture.save(file("photo.png")));
        to_open_ = {
            {"openLogbookAction", other_},
            {"joinLogbookAction", other_},
            {"addComparedLogbooksAction", other_},
            {"importSheetAction", of_sample("02-pelm-900-drain-64-w.csv")},
            {"importTableAction", of_sample("02-pelm-900-drain-64-w.csv")},
            {"importLoadListAction", of_sample("load-lists/show-night.csv")},
            {"importPvSheetAction", of_sample("pv-tarrow-2k-roof.txt")},
            {"importLogAction", of_sample("logs/12-pelm-900-drain-logged.csv")},
            {"attachPhotoAction", file("photo.png")},
        };
    }

    /// The entries of a menu and of those in it, each once, and that it opens.
    void collect(QMenu& menu) {
        expect_turning(qPrintable(menu.title()), [&] { emit menu.aboutToShow(); });
        for (QAction* entry : menu.actions()) {
            if (entry->menu()) collect(*entry->menu());
            else if (!entry->isSeparator() && entry->isVisible() && window->action(entry->objectName()) == entry) entries_ << entry->objectName();
        }
    }

    /// Goes where the entry can be chosen; false where it can be chosen nowhere.
    bool goWhereEnabled(const QString& name) {
        const std::function<void()> places[] = {[] {},
                                                [this] { window->showRun(running_); },
                                                [this] { window->showRun(ended_); },
                                                [this] { window->showUnit(unit_); },
                                                [this] { window->showMeter(document.meters()[0].uuid); },
                                                [this] {
                                                    window->showLoadLists();
                                                    find<QTableView>("appliancesTable")->selectRow(0);
                                                },
                                                [this] { window->showPvInput(); },
                                                [this] { window->showComparison(); }};
        for (const auto& go : places) {
            go();
            settle();
            if (enabled(qPrintable(name))) return true;
        }
        return false;
    }

    /// Nothing goes on beside the window.
    [[nodiscard]] bool idle() const {
        if (document.isImporting()) return false;
        const auto* copy = window->findChild<QPushButton*>(QStringLiteral("copyTableButton"));
        if (page() == QLatin1String("comparisonPage")) return copy && copy->isEnabled();
        const auto* totals = window->findChild<QLabel*>(QStringLiteral("sizingTotalsLabel"));
        return page() != QLatin1String("sizingPage") || !totals->text().endsWith(QStringLiteral("…"));
    }
    double settling_ms(const std::function<void()>& action) {
        return watch_.longest_ms(action, [&] { return idle(); });
    }
    void settle() {
        if (!QTest::qWaitFor([&] { return idle(); }, 60'000)) ADD_FAILURE() << "something goes on without end";
    }

    [[nodiscard]] QDialog* dialog() const {
        for (QWidget* each : QApplication::topLevelWidgets())
            if (auto* found = qobject_cast<QDialog*>(each); found && found->isVisible() && found->objectName() != QLatin1String("workDialog"))
                return found;
        return nullptr;
    }

    /// What an entry that works on something done needs.
    void recordFor(const QString& name) {
        if (name != QLatin1String("undoAction") && name != QLatin1String("redoAction")) return;
        ReadingValues values = document.run(running_)->readings.front().values;
        values.time_ms += 600'000LL * ++tries_;
        EXPECT_TRUE(document.record(running_, values));
        if (name == QLatin1String("redoAction")) document.undoStack().undo();
    }

    void giveFiles(const QString& name) {
        ++tries_;
        prompts.to_open = to_open_.contains(name) ? QStringList{to_open_.at(name)} : QStringList();
        const char* ending = ".csv";
        if (name == QLatin1String("newLogbookAction") || name == QLatin1String("saveCopyAction")) ending = ".ullage";
        if (name == QLatin1String("exportFolderAction")) ending = "";
        if (name == QLatin1String("savePictureAction")) ending = ".png";
        if (name.endsWith(QLatin1String("ReportAction")) || name == QLatin1String("keyCardAction")) ending = ".pdf";
        prompts.to_save = file(qPrintable(name + QString::number(tries_) + QLatin1String(ending)));
        prompts.suggested.clear();
        QApplication::clipboard()->setText(QStringLiteral("time\tgauge %\tmeter Wh\n2027-05-06 10:00\t100\t0\n2027-05-06 12:00\t80\t300\n"));
    }

    /// Chooses the entry, fills in and submits what it opens, and undoes what it did; tells the longest stretch of each.
    std::map<std::string, double> choose(const QString& name) {
        std::map<std::string, double> longest_ms;
        const auto keep = [&](const std::string& what, double ms) { longest_ms[what] = std::max(longest_ms[what], ms); };
        const int done_before = document.undoStack().index();
        keep("", settling_ms([&] { window->action(name)->trigger(); }));
        if (auto* form = dialog()) {
            if (typed.contains(name))
                for (const auto& [field, text] : typed.at(name)) {
                    auto* edit = form->findChild<QLineEdit*>(QString::fromLatin1(field));
                    if (!edit) ADD_FAILURE() << "no field " << field << " in what " << name.toStdString() << " opens";
                    else edit->setText(QString::fromLatin1(text));
                }
            for (const char* button : {"submitButton", "saveButton"})
                if (auto* press = form->findChild<QPushButton*>(QString::fromLatin1(button)); press && press->isVisible() && press->isEnabled()) {
                    keep(std::string(", ") + button, settling_ms([&] { press->click(); }));
                    break;
                }
            if (typed.contains(name) && dialog()) ADD_FAILURE() << "what " << name.toStdString() << " opens was not taken";
        }
        if (!prompts.suggested.isEmpty() && !QFileInfo::exists(prompts.to_save))
            ADD_FAILURE() << name.toStdString() << " has made no file: " << message().toStdString();
        while (auto* left = dialog()) keep(", closed", settling_ms([&] { left->reject(); }));
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        if (!document.isOpenAt(file("large.ullage"))) window->openLogbook(file("large.ullage"));
        while (document.undoStack().index() > done_before) keep(", undone", settling_ms([&] { document.undoStack().undo(); }));
        return longest_ms;
    }

    QStringList entries_;
    UnitId unit_;
    RunId ended_, running_;
    QString other_;
    std::map<QString, QString> to_open_;
    int tries_ = 0;
};

TEST_F(MenuTurnTest, the_window_turns_while_each_entry_of_the_menus_is_chosen_submitted_and_undone) {
    const double most = most_ms();
    EXPECT_GT(entries_.size(), 100) << "hardly any entry";
    for (const QString& name : std::as_const(entries_)) {
        std::map<std::string, double> least_ms;
        for (int tries = 0; tries < most_tries; ++tries) {
            giveFiles(name);
            recordFor(name);
            if (!goWhereEnabled(name)) {
                ADD_FAILURE() << name.toStdString() << " can be chosen nowhere";
                break;
            }
            bool slow = false;
            for (const auto& [what, ms] : choose(name)) {
                const auto known = least_ms.find(what);
                const double least = known == least_ms.end() ? ms : std::min(ms, known->second);
                least_ms[what] = least;
                slow = slow || least >= most;
            }
            if (!slow) break;
        }
        for (const auto& [what, ms] : least_ms) EXPECT_LT(ms, most) << name.toStdString() << what;
    }
}

} // namespace ullage::test
