// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <sys/resource.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <filesystem>

namespace {

bool disk_is_faulty = false;

} // namespace

/// Stands before the system's own in this program, so that a disk can fail at the last moment at which it tells.
int fsync(int descriptor) {
    if (!disk_is_faulty) return static_cast<int>(::syscall(SYS_fsync, descriptor));
    errno = EIO;
    return -1;
}

namespace ullage::test {
namespace {

/// Lets no file of this process grow beyond `bytes`: what a full disk does, without one. (Linux, getrlimit(2): the write fails with EFBIG.)
class SmallFiles {
public:
    explicit SmallFiles(rlim_t bytes) : signal_before_(std::signal(SIGXFSZ, SIG_IGN)) {
        ::getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit limit{bytes, before_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~SmallFiles() {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, signal_before_);
    }
    SmallFiles(const SmallFiles&) = delete;
    SmallFiles& operator=(const SmallFiles&) = delete;

private:
    rlimit before_{};
    void (*signal_before_)(int);
};

Table long_table() {
    Table table;
    table.title = "Readings";
    table.columns = {{"a", "text", "", TableColumn::Content::text, 0}, {"b", "energy", "Wh", TableColumn::Content::number, 0}};
    for (int row = 0; row < 6000; ++row) table.rows.push_back({"reading", known("b", "Wh", row % 10, std::nullopt, Kind::measured)});
    return table;
}

TEST(FullDisk, a_workbook_whose_parts_were_cut_short_is_refused) {
    const TempFolder folder;
    {
        // The sheet's part is far longer than this, the workbook, which packs it, is not: the library reports success.
        const SmallFiles full(60'000);
        const auto written = write_table(long_table(), TableFormat::xlsx, folder / "t.xlsx");
        ASSERT_FALSE(written.ok());
        EXPECT_EQ(written.error().where, (folder / "t.xlsx").string());
    }
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
    EXPECT_TRUE(write_table(long_table(), TableFormat::xlsx, folder / "t.xlsx").ok());
    EXPECT_GT(std::filesystem::file_size(folder / "t.xlsx"), 10'000u);
    EXPECT_LT(std::filesystem::file_size(folder / "t.xlsx"), 60'000u) << "else this test shows nothing";
}

TEST(FullDisk, every_format_fails_loudly_and_leaves_nothing) {
    for (const TableFormat format :
         {TableFormat::text, TableFormat::csv, TableFormat::markdown, TableFormat::html, TableFormat::xlsx, TableFormat::json, TableFormat::latex}) {
        const TempFolder folder;
        for (const rlim_t bytes : {0u, 4096u}) {
            const SmallFiles full(bytes);
            const auto written = write_table(long_table(), format, folder / "t");
            EXPECT_FALSE(written.ok()) << int(format) << " with " << bytes;
        }
        EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << int(format);
    }
}

TEST(FullDisk, a_file_that_does_not_reach_the_disk_is_told_and_absent) {
    for (const TableFormat format : {TableFormat::csv, TableFormat::xlsx}) {
        const TempFolder folder;
        disk_is_faulty = true;
        const auto written = write_table(long_table(), format, folder / "t");
        disk_is_faulty = false;
        EXPECT_FALSE(written.ok()) << int(format);
        EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << int(format);
    }
}

} // namespace
} // namespace ullage::test
