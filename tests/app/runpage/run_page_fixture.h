// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "models/readings_model.h"
#include "pages/run/entry_row.h"
#include "pages/run/run_page.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include <memory>

namespace ullage::test {

/// What stands in the sample drain: minutes after 18:00 on 14 May, gauge, register, remark.
struct SampleReading {
    int minutes;
    double gauge_percent, register_wh;
    const char* remark = "";
};

/// An invented drain at about 64 W whose gauge stays at 71 % for three hours and then drops.
inline constexpr SampleReading sticking_drain[] = {{0, 100, 4312, "start, full"},
                                                   {66, 95, 4383},
                                                   {156, 87, 4478},
                                                   {246, 79, 4574, "film on"},
                                                   {330, 71, 4664},
                                                   {431, 71, 4774},
                                                   {503, 71, 4852},
                                                   {653, 52, 5012, "second reel"},
                                                   {731, 43, 5093},
                                                   {798, 31, 5163},
                                                   {876, 18, 5248}};

/// A logbook with one unit, one meter and one running drain, shown by a run page in a window of 1280 x 800 less the side tree.
/// The clock stands at the start of the run.
class RunPageTest : public ::testing::Test {
protected:
    void SetUp() override;
    void TearDown() override;

    /// Records the first `count` sample readings and moves the clock to the last.
    void recordSample(std::size_t count = std::size(sticking_drain));
    void showPage();

    template <class T = QWidget>
    [[nodiscard]] T* find(const char* name) const {
        T* found = page->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << "no " << name;
        return found;
    }
    /// Types into a field as a tester does: goes there, replaces what stands in it.
    void type(const char* field, const char* text);
    /// Presses a key where the keyboard is.
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    [[nodiscard]] QString text(const char* field) const { return find<QLineEdit>(field)->text(); }
    [[nodiscard]] EntryRow& entry() const { return *find<EntryRow>("entryRow"); }
    [[nodiscard]] const RunRecord& record() const { return *document.run(run.uuid); }
    /// Readings that are not withdrawn, in order of time.
    [[nodiscard]] std::vector<Reading> readings() const;
    [[nodiscard]] QString focusName() const;
    [[nodiscard]] QString questionText() const; ///< empty while nothing is asked

    TempFolder folder;
    FakeClock clock;
    Document document{clock};
    Unit unit;
    Meter meter;
    ullage::Run run;
    std::unique_ptr<QWidget> window;
    RunPage* page = nullptr;
    QStringList errors; ///< what the page has told of
};

/// While it lives, files of this process cannot grow: every write that needs room fails, as on a full disk.
class FullDisk {
public:
    FullDisk();
    ~FullDisk();
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    struct Limits;
    std::unique_ptr<Limits> limits_;
};

} // namespace ullage::test
