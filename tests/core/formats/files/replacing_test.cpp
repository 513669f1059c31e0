// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/files/replacing.h"

#include "core/formats/tables/table_samples.h"
#include "formats/files/whole_file.h"
#include "formats/tables/table.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;
using Consent = Replacing::Consent;

/// A folder for files, and an account that has written nothing yet.
class ReplacingFiles : public testing::Test {
protected:
    ReplacingFiles() {
        if (const char* before = std::getenv("XDG_STATE_HOME")) state_before_ = before;
        ::setenv("XDG_STATE_HOME", account_.path().c_str(), 1);
    }
    ~ReplacingFiles() override {
        if (state_before_.empty()) ::unsetenv("XDG_STATE_HOME");
        else ::setenv("XDG_STATE_HOME", state_before_.c_str(), 1);
    }
    std::string put(const std::string& name, const std::string& content = "of somebody") const {
        std::ofstream(folder_ / name, std::ios::binary) << content;
        return folder_ / name;
    }
    /// The header of a logbook as SQLite writes it; enough for what looks no further.
    std::string logbook(const std::string& name) const {
        std::string bytes("SQLite format 3\0", 16);
        bytes.resize(4096);
        bytes.replace(68, 4, "ULLG");
        return put(name, bytes);
    }
    static std::string content(const std::string& path) {
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    /// Tries to write and expects that the file stays as it is.
    static void expect_kept(const std::string& path, const Replacing& replacing, const std::string& words) {
        const std::string before = content(path);
        const auto written = write_whole_file(path, "new", replacing);
        ASSERT_FALSE(written.ok()) << path;
        EXPECT_EQ(written.error().failure, Failure::refused);
        EXPECT_NE(written.error().sentence().find(words), std::string::npos) << written.error().sentence();
        EXPECT_EQ(content(path), before);
    }

    TempFolder folder_, account_;
    std::string state_before_;
};

TEST_F(ReplacingFiles, a_file_of_somebody_else_needs_a_word_and_one_of_our_own_does_not) {
    const std::string theirs = put("theirs.txt");
    expect_kept(theirs, {}, "did not write it as it is now; choose another file name, or add --force");
    EXPECT_TRUE(write_whole_file(theirs, "ours", {Consent::ordinary, {}}).ok());
    EXPECT_TRUE(write_whole_file(theirs, "ours again").ok()) << "the same content is known";
    std::ofstream(theirs, std::ios::app) << "a line by hand";
    expect_kept(theirs, {}, "did not write it as it is now");
    EXPECT_TRUE(write_whole_file(theirs, "forced", {Consent::any, {}}).ok());
}

TEST_F(ReplacingFiles, without_a_folder_for_its_notes_the_program_knows_no_file) {
    ::setenv("XDG_STATE_HOME", "/dev/null", 1);
    ASSERT_TRUE(write_whole_file(folder_ / "t", "ours").ok());
    expect_kept(folder_ / "t", {}, "did not write it");
}

TEST_F(ReplacingFiles, every_format_can_be_written_again) {
    for (const TableFormat format : {TableFormat::csv, TableFormat::html, TableFormat::xlsx})
        for (int time = 0; time < 2; ++time) {
            const auto written = write_table(hostile_table(), format, folder_ / ("t" + std::to_string(int(format))));
            EXPECT_TRUE(written.ok()) << written.error().sentence();
        }
}

TEST_F(ReplacingFiles, a_logbook_is_known_by_ending_header_and_what_lies_beside_it) {
    const std::string journal_only = put("new.db", "");
    put("new.db-wal", "records");
    for (const std::string& path : {put("empty.ullage", ""), put("CAPITALS.ULLAGE"), logbook("bench.db"), journal_only}) {
        expect_kept(path, {}, "this is a logbook");
        expect_kept(path, {Consent::ordinary, {}}, "this is a logbook");
    }
    EXPECT_TRUE(write_whole_file(folder_ / "bench.db", "forced", {Consent::any, {}}).ok());
    expect_kept(journal_only, {Consent::any, {}}, "in use");
    EXPECT_FALSE(write_whole_file(folder_ / "none.ullage", "x").ok()) << "nor does anything else get that ending";
    EXPECT_FALSE(fs::exists(folder_ / "none.ullage"));
}

TEST_F(ReplacingFiles, what_lies_beside_a_logbook_is_never_written) {
    logbook("bench.ullage");
    logbook("other.db");
    for (const char* name : {"bench.ullage-wal", "bench.ullage-journal", "bench.ullage-shm", "other.db-wal"}) {
        EXPECT_FALSE(write_whole_file(folder_ / name, "x", {Consent::any, {}}).ok()) << name;
        EXPECT_FALSE(fs::exists(folder_ / name)) << name;
    }
    EXPECT_TRUE(write_whole_file(folder_ / "notes-wal", "x").ok());
}

TEST_F(ReplacingFiles, a_logbook_that_another_process_has_locked_is_not_forced_away) {
    const std::string path = logbook("bench.ullage");
    const int descriptor = ::open(path.c_str(), O_RDWR | O_CLOEXEC);
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    lock.l_start = 0x40000000; // SQLite, os.h: PENDING_BYTE
    lock.l_len = 512;
    ASSERT_EQ(::fcntl(descriptor, F_OFD_SETLK, &lock), 0);
    expect_kept(path, {Consent::any, {}}, "in use");
    ::close(descriptor);
    EXPECT_TRUE(write_whole_file(path, "x", {Consent::any, {}}).ok());
}

TEST_F(ReplacingFiles, an_input_is_known_under_every_name) {
    const std::string sheet = put("sheet.csv");
    fs::create_symlink(sheet, folder_ / "link.csv");
    fs::create_hard_link(sheet, folder_ / "hard.csv");
    for (const char* name : {"sheet.csv", "link.csv", "hard.csv"}) {
        expect_kept(folder_ / name, {Consent::own, {sheet}}, "read by the same call");
        expect_kept(folder_ / name, {Consent::ordinary, {sheet}}, "read by the same call");
        expect_kept(folder_ / name, {Consent::own, {folder_.path()}}, "read by the same call");
    }
}

TEST_F(ReplacingFiles, what_this_process_holds_open_is_kept_whatever_is_said) {
    const std::string path = logbook("bench.ullage");
    fs::create_hard_link(path, folder_ / "other-name.pdf");
    {
        const HeldFile held(path);
        for (const std::string& name : {path, std::string(folder_ / "other-name.pdf")})
            expect_kept(name, {Consent::any, {}}, "the logbook that is open");
    }
    EXPECT_TRUE(write_whole_file(path, "x", {Consent::any, {}}).ok());
}

TEST_F(ReplacingFiles, write_protection_holds_for_administrators_too) {
    const std::string path = put("t.txt");
    fs::permissions(path, fs::perms::owner_read);
    expect_kept(path, {Consent::any, {}}, "write-protected");
    fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write);
    fs::permissions(folder_.path(), fs::perms::owner_read | fs::perms::owner_exec);
    EXPECT_FALSE(write_whole_file(folder_ / "u.txt", "x", {Consent::any, {}}).ok());
}

TEST_F(ReplacingFiles, a_link_leads_the_rules_to_its_target_and_one_to_nowhere_stays) {
    TempFolder elsewhere;
    std::ofstream(elsewhere / "theirs.txt") << "of somebody";
    fs::create_symlink(elsewhere / "theirs.txt", folder_ / "link.txt");
    fs::create_symlink(elsewhere / "none.txt", folder_ / "loose.txt");
    fs::create_symlink(logbook("bench.ullage"), folder_ / "book.pdf");
    expect_kept(folder_ / "link.txt", {}, "did not write it");
    expect_kept(folder_ / "book.pdf", {}, "this is a logbook");
    const auto loose = write_whole_file(folder_ / "loose.txt", "x", {Consent::any, {}});
    ASSERT_FALSE(loose.ok());
    EXPECT_NE(loose.error().sentence().find("this link leads to no file"), std::string::npos) << loose.error().sentence();
    EXPECT_TRUE(fs::is_symlink(folder_ / "loose.txt"));
    EXPECT_FALSE(fs::exists(elsewhere / "none.txt"));
}

TEST_F(ReplacingFiles, what_is_no_regular_file_is_not_replaced_whatever_is_said) {
    ASSERT_EQ(::mkfifo((folder_ / "pipe").c_str(), 0600), 0);
    const int held = ::open((folder_ / "pipe").c_str(), O_RDWR | O_CLOEXEC); // so that nobody who opens it waits
    fs::create_symlink(folder_ / "pipe", folder_ / "link");
    for (const char* name : {"pipe", "link"}) {
        const auto written = write_whole_file(folder_ / name, "x", {Consent::any, {}});
        ASSERT_FALSE(written.ok()) << name;
        EXPECT_EQ(written.error().failure, Failure::refused);
        EXPECT_TRUE(fs::is_fifo(folder_ / name));
    }
    ::close(held);
}

TEST_F(ReplacingFiles, a_table_is_not_written_where_its_description_would_replace_somebodys_file) {
    put("t.csv-metadata.json");
    for (const Consent consent : {Consent::own, Consent::ordinary}) {
        const auto written = write_table(hostile_table(), TableFormat::csv, folder_ / "t.csv", {consent, {}});
        ASSERT_FALSE(written.ok());
        EXPECT_NE(written.error().sentence().find("t.csv-metadata.json"), std::string::npos);
        EXPECT_FALSE(fs::exists(folder_ / "t.csv"));
    }
    EXPECT_EQ(content(folder_ / "t.csv-metadata.json"), "of somebody");
}

TEST_F(ReplacingFiles, a_file_that_came_into_being_meanwhile_stays) {
    const std::string path = folder_ / "t.txt";
    const auto written = write_whole_file(path, [&](const TextTaker& take) {
        put("t.txt");
        return take("ours");
    });
    ASSERT_FALSE(written.ok());
    EXPECT_NE(written.error().sentence().find("has just come into being"), std::string::npos) << written.error().sentence();
    EXPECT_EQ(content(path), "of somebody");
}

TEST_F(ReplacingFiles, a_writer_that_was_killed_leaves_nothing_for_long) {
    fs::create_directory(folder_ / ".ullage-12345678-1234-4234-8234-123456789012.part");
    ASSERT_TRUE(write_whole_file(folder_ / "t", "x").ok());
    EXPECT_EQ(std::distance(fs::directory_iterator(folder_.path()), {}), 1);
}

} // namespace
} // namespace ullage::test
