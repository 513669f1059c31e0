// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/file_names.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

std::string stem_of(const char* text) { return file_stem(QString::fromUtf8(text)).toStdString(); }

TEST(FileStem, is_valid_on_every_disk_whatever_the_text) {
    EXPECT_EQ(stem_of("Osk 1200, run 2"), "osk-1200-run-2");
    EXPECT_EQ(stem_of("A/B"), "a-b");
    EXPECT_EQ(stem_of("..\\..\\etc/passwd"), "etc-passwd");
    EXPECT_EQ(stem_of("100%00 %1 %99"), "100-00-1-99");
    EXPECT_EQ(stem_of("Größe Ж 電池"), "größe-ж-電池");
    EXPECT_EQ(stem_of("e\xCC\x81"), "é") << "composed, as one disk writes it and another does not";
    for (const char* nothing : {"", "..", "///", "\x01\xE2\x80\xAE"}) EXPECT_EQ(stem_of(nothing), "unnamed") << nothing;
    // What Windows keeps for devices (Naming Files, Paths, and Namespaces), which such disks come from.
    for (const char* reserved : {"CON", "nul", "Com1", "LPT9"})
        EXPECT_EQ(stem_of(reserved), QString::fromLatin1(reserved).toLower().toStdString() + "-file");
    EXPECT_EQ(stem_of("Conrad"), "conrad");
}

TEST(FileStem, is_bounded_in_bytes_and_cuts_no_character) {
    for (const char* letter : {"a", "é", "電", "🔋a", "𝔘"}) {
        const QString stem = file_stem(QString::fromUtf8(letter).repeated(500));
        EXPECT_LE(stem.toUtf8().size(), most_stem_bytes);
        EXPECT_GT(stem.toUtf8().size(), most_stem_bytes / 2);
        EXPECT_EQ(QString::fromUtf8(stem.toUtf8()), stem);
        EXPECT_FALSE(stem.contains(QChar::ReplacementCharacter));
    }
}

TEST(FileStems, gives_no_name_twice_not_even_for_a_disk_without_case) {
    FileStems stems;
    QSet<QString> folded;
    QStringList names{"A/B", "A B", "a-b", "A-B-2", "a_b", "Straße", "STRASSE", "straße", "..", "", "CON", "con"};
    for (int tail = 0; tail < 30; ++tail) names << QString(300, QLatin1Char('x')) + QString::number(tail);
    for (const QString& name : names) {
        const QString stem = stems.next(name);
        EXPECT_LE(stem.toUtf8().size(), most_stem_bytes);
        EXPECT_FALSE(folded.contains(stem.toCaseFolded())) << stem.toStdString();
        folded.insert(stem.toCaseFolded());
    }
    EXPECT_TRUE(folded.contains(QStringLiteral("a-b")));
    EXPECT_TRUE(folded.contains(QStringLiteral("a-b-2")));
}

TEST(SafeFileName, keeps_a_good_name_and_makes_a_bad_one_good) {
    const auto safe = [](const char* name) {
        return safe_file_name(QString::fromUtf8(name), QStringLiteral("photo"), QStringLiteral("jpg"), QStringLiteral("jpeg")).toStdString();
    };
    EXPECT_EQ(safe("IMG 0012.JPG"), "IMG 0012.JPG");
    EXPECT_EQ(safe("display.jpeg"), "display.jpeg");
    EXPECT_EQ(safe("display"), "display.jpg");
    EXPECT_EQ(safe("trap.exe"), "trap.exe.jpg");
    EXPECT_EQ(safe("/etc/../passwd"), "passwd.jpg");
    EXPECT_EQ(safe("C:\\photos\\a?b.jpg"), "a-b.jpg");
    EXPECT_EQ(safe("gpj.\xE2\x80\xAE"
                   "exe"),
              "gpj.-exe.jpg")
        << "no direction override";
    for (const char* nothing : {"", "..", ".jpg", "a/", " . "}) EXPECT_EQ(safe(nothing), "photo.jpg") << nothing;
    EXPECT_EQ(safe("nul.jpg"), "_nul.jpg");
    EXPECT_LE(safe(std::string(1000, 'x').c_str()).size(), 200u);
}

} // namespace
} // namespace ullage::test
