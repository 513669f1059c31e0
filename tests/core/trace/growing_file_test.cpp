// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/fingerprint.h"
#include "support/temp_folder.h"
#include "trace/growing_file.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <optional>

namespace ullage::test {
namespace {

using namespace std::string_literals;
namespace fs = std::filesystem;

class GrowingLog : public testing::Test {
protected:
    void write(const std::string& text) { std::ofstream(path_, std::ios::binary | std::ios::trunc) << text; }
    void append(const std::string& text) { std::ofstream(path_, std::ios::binary | std::ios::app) << text; }
    GrowingFile::Piece look(std::size_t limit = 1 << 20) {
        if (!file_) file_.emplace(path_, encoding_);
        auto piece = file_->next(limit);
        EXPECT_TRUE(piece.ok());
        return piece ? piece.value() : GrowingFile::Piece();
    }

    TempFolder folder_;
    std::string path_ = folder_ / "log.csv";
    LogEncoding encoding_ = LogEncoding::plain;
    std::optional<GrowingFile> file_;
};

TEST_F(GrowingLog, gives_each_line_once_when_it_is_complete) {
    write("time,W\n1,10\n");
    EXPECT_EQ(look().lines, "time,W\n1,10\n");
    EXPECT_EQ(look().change, LogChange::none);
    append("2,20\r\n3,3");
    const auto grown = look();
    EXPECT_EQ(grown.change, LogChange::grown);
    EXPECT_EQ(grown.lines, "2,20\r\n");
    append("0\n");
    EXPECT_EQ(look().lines, "3,30\n");
    EXPECT_EQ(file_->taken_bytes(), static_cast<std::int64_t>(fs::file_size(path_)));
}

TEST_F(GrowingLog, begins_after_what_was_read_before) {
    write("time,W\n1,10\n2,20\n");
    file_.emplace(path_, encoding_, 12);
    EXPECT_EQ(look().lines, "2,20\n");
}

TEST_F(GrowingLog, ends_lines_of_two_byte_characters_at_whole_ones) {
    encoding_ = LogEncoding::utf16_le;
    write("\xFF\xFE"
          "1\0\n\0"s +
          "2\0\x0a\x0a"s); // U+0A0A holds two bytes of 10 and ends no line
    EXPECT_EQ(look().lines, "\xFF\xFE"
                            "1\0\n\0"s);
    append("\n\0"s);
    EXPECT_EQ(look().lines, "2\0\x0a\x0a\n\0"s);
    EXPECT_EQ(end_of_lines("\0"
                           "1\0\n\0"s,
                           LogEncoding::utf16_be),
              4u);
}

TEST_F(GrowingLog, is_begun_anew_when_it_was_cut_short) {
    write("time,W\n1,10\n2,20\n");
    (void)look();
    write("time,W\n7,70\n");
    const auto piece = look();
    EXPECT_EQ(piece.change, LogChange::started_anew);
    EXPECT_EQ(piece.lines, "time,W\n7,70\n");
}

TEST_F(GrowingLog, is_the_same_when_it_was_emptied_and_written_again_with_more) {
    write("time,W\n1,10\n");
    (void)look();
    write("");
    EXPECT_EQ(look().change, LogChange::none);
    write("time,W\n1,10\n2,20\n");
    const auto piece = look();
    EXPECT_EQ(piece.change, LogChange::grown);
    EXPECT_EQ(piece.lines, "2,20\n");
}

TEST_F(GrowingLog, is_the_same_when_a_whole_new_file_took_its_name) {
    write("time,W\n1,10\n");
    (void)look();
    std::ofstream(folder_ / "new", std::ios::binary) << "time,W\n1,10\n2,20\n";
    fs::rename(folder_ / "new", path_);
    EXPECT_EQ(look().change, LogChange::none); // the name leads elsewhere from now on
    EXPECT_EQ(look().lines, "2,20\n");
}

TEST_F(GrowingLog, misses_nothing_that_was_written_before_it_was_renamed) {
    write("time,W\n1,10\n");
    (void)look();
    append("2,20\n3,3"); // the writer gave its file up within a line: what it would have said nobody knows
    fs::rename(path_, folder_ / "log.1");
    EXPECT_EQ(look().lines, "2,20\n");
    EXPECT_EQ(look().change, LogChange::vanished);
    write("time,W\n4,40\n");
    GrowingFile::Piece piece;
    std::string lines;
    bool anew = false;
    for (int i = 0; i < 2; ++i) {
        piece = look();
        lines += piece.lines;
        anew = anew || piece.change == LogChange::started_anew;
    }
    EXPECT_TRUE(anew);
    EXPECT_EQ(lines, "time,W\n4,40\n");
}

TEST_F(GrowingLog, gives_no_more_than_the_limit_at_once) {
    write("time,W\n1,10\n2,20\n3,30\n");
    std::string all;
    int looks = 0;
    for (bool more = true; more; ++looks) {
        const auto piece = look(8);
        EXPECT_LE(piece.lines.size(), 8u);
        all += piece.lines;
        more = piece.more;
    }
    EXPECT_EQ(all, "time,W\n1,10\n2,20\n3,30\n");
    EXPECT_GT(looks, 3);
    append("4,444444444\n");
    EXPECT_EQ(file_->next(8).error().failure, Failure::bad_input);
}

TEST_F(GrowingLog, waits_for_a_file_that_is_not_there) {
    EXPECT_EQ(look().change, LogChange::vanished);
    write("time,W\n");
    EXPECT_EQ(look().lines, "time,W\n");
    fs::remove(path_);
    EXPECT_EQ(look().change, LogChange::vanished);
    fs::create_directory(path_);
    GrowingFile folder(path_, encoding_);
    EXPECT_EQ(folder.next().error().failure, Failure::refused);
}

TEST(FingerprintOfALog, does_not_depend_on_how_its_bytes_come_in_and_stays_as_logbooks_have_it) {
    const std::string bytes = "time,power (W)\n2027-05-14T18:00:00Z,62.5\n";
    for (std::size_t step = 1; step <= bytes.size(); ++step) {
        Fingerprint fingerprint;
        for (std::size_t at = 0; at < bytes.size(); at += step) fingerprint.add(std::string_view(bytes).substr(at, step));
        EXPECT_EQ(fingerprint.text(), "6fe621dcad509b4b2bafc737db76b62d");
    }
}

} // namespace
} // namespace ullage::test
