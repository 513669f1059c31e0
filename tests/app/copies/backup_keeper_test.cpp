// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/backup_keeper.h"

#include "document/document.h"
#include "services/settings.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QSignalSpy>
#include <QTest>

#include <memory>

namespace ullage::test {
namespace {

class BackupKeeping : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(file("bench.ullage")));
        Unit unit;
        unit.name = "Osk 1200";
        ASSERT_TRUE(document.addUnit(unit));
        document.close();
    }

    [[nodiscard]] QString file(const char* name) const { return QString::fromStdString((folder / name).string()); }
    [[nodiscard]] QStringList copies(const char* in = "") const {
        return QDir(QString::fromStdString((folder / in).string())).entryList({QStringLiteral("*.ullage-copy")}, QDir::Files, QDir::Name);
    }
    void add_unit(const char* name) {
        Unit unit;
        unit.name = name;
        ASSERT_TRUE(document.addUnit(unit));
    }
    [[nodiscard]] std::size_t units_in(const QString& copy) const {
        return Logbook::open(native_path_of(copy), OpenMode::read_only, clock).value().units().value().size();
    }
    static std::string native_path_of(const QString& path) { return path.toStdString(); }

    TempFolder folder;
    FakeClock clock;
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    Document document{clock};
};

TEST_F(BackupKeeping, a_logbook_is_copied_soon_after_it_is_opened_and_again_when_it_is_closed_with_changes) {
    BackupKeeper keeper(document, settings);
    QSignalSpy copied(&keeper, &BackupKeeper::copied);
    ASSERT_TRUE(document.open(file("bench.ullage")));
    EXPECT_TRUE(copies().isEmpty()) << "the window is drawn first";
    ASSERT_TRUE(copied.wait(20'000));
    EXPECT_EQ(copies(), QStringList{"bench.2027-05-14.ullage-copy"});
    add_unit("Second");
    keeper.look(BackupMoment::while_open);
    keeper.finish();
    EXPECT_EQ(units_in(file("bench.2027-05-14.ullage-copy")), 1U) << "there is a copy of today";
    QApplication::processEvents();
    document.close();
    keeper.finish();
    EXPECT_EQ(units_in(file("bench.2027-05-14.ullage-copy")), 2U);
}

TEST_F(BackupKeeping, a_logbook_that_stays_open_is_copied_each_day_on_which_it_changed) {
    BackupKeeper keeper(document, settings);
    QSignalSpy copied(&keeper, &BackupKeeper::copied);
    ASSERT_TRUE(document.open(file("bench.ullage")));
    ASSERT_TRUE(copied.wait(20'000));
    clock.advance_hours(24);
    keeper.look(BackupMoment::while_open);
    keeper.finish();
    QApplication::processEvents();
    EXPECT_EQ(copies().size(), 1) << "nothing has changed";
    add_unit("Second");
    keeper.look(BackupMoment::while_open);
    keeper.finish();
    EXPECT_EQ(copies(), (QStringList{"bench.2027-05-14.ullage-copy", "bench.2027-05-15.ullage-copy"}));
}

TEST_F(BackupKeeping, the_end_of_the_program_makes_the_last_copy) {
    auto keeper = std::make_unique<BackupKeeper>(document, settings);
    ASSERT_TRUE(document.open(file("bench.ullage")));
    add_unit("Second");
    keeper.reset();
    ASSERT_EQ(copies().size(), 1);
    EXPECT_EQ(units_in(file("bench.2027-05-14.ullage-copy")), 2U);
}

TEST_F(BackupKeeping, the_settings_say_whether_and_where) {
    settings.setBackupOn(false);
    {
        const BackupKeeper keeper(document, settings);
        ASSERT_TRUE(document.open(file("bench.ullage")));
    }
    EXPECT_TRUE(copies().isEmpty());
    settings.setBackupOn(true);
    QDir(QString::fromStdString(folder.path().string())).mkdir(QStringLiteral("copies"));
    settings.setBackupFolder(file("copies"));
    { const BackupKeeper keeper(document, settings); }
    EXPECT_TRUE(copies().isEmpty());
    EXPECT_EQ(copies("copies").size(), 1);
    EXPECT_EQ(settings.backupDays(), 30);
    settings.setBackupDays(0);
    EXPECT_EQ(BackupKeeper::place(settings).days_kept, 1);
}

TEST_F(BackupKeeping, what_keeps_a_copy_from_being_made_is_said_once) {
    settings.setBackupFolder(file("none"));
    BackupKeeper keeper(document, settings);
    QSignalSpy failed(&keeper, &BackupKeeper::failed);
    ASSERT_TRUE(document.open(file("bench.ullage")));
    ASSERT_TRUE(failed.wait(20'000));
    EXPECT_TRUE(failed[0][0].toString().contains("there is no such folder")) << failed[0][0].toString().toStdString();
    keeper.look(BackupMoment::opened_or_closed);
    keeper.finish();
    QApplication::processEvents();
    EXPECT_EQ(failed.count(), 1);
    EXPECT_TRUE(document.addUnit([] {
        Unit unit;
        unit.name = "still recorded";
        return unit;
    }()));
}

TEST_F(BackupKeeping, a_logbook_that_is_only_looked_at_is_left_to_who_records) {
    const Logbook recording = Logbook::open(native_path_of(file("bench.ullage")), OpenMode::record, clock).value();
    {
        const BackupKeeper keeper(document, settings);
        ASSERT_TRUE(document.open(file("bench.ullage")));
        ASSERT_TRUE(document.isLooking());
    }
    EXPECT_TRUE(copies().isEmpty());
}

} // namespace
} // namespace ullage::test
