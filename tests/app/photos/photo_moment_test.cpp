// SPDX-License-Identifier: GPL-3.0-or-later
// The time that a camera wrote, offered for an entry or a reading.
#include "photos_fixture.h"

#include "pages/run/waiting_photos.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

namespace ullage::test {

TEST_F(PhotosTest, the_photos_time_is_offered_for_the_entry_and_taken_with_one_click) {
    clock.advance_ms(30 * 60'000);
    type("gaugeEdit", "75");
    page->attachPhotos({write("display.jpg", camera_jpeg("2027:05:14 22:20:12"))}); // 20:20:12 UTC; the run is in Paris
    EXPECT_EQ(text("timeEdit"), QString());                                         // never by itself
    const auto* label = find<QLabel>("waitingPhotosLabel");
    EXPECT_TRUE(label->text().contains(QStringLiteral("14 May 2027 22:20:12"))) << label->text().toStdString();
    EXPECT_TRUE(label->text().contains(QStringLiteral("no time zone; read in Europe/Paris"))) << label->text().toStdString();
    click("takePhotoTimeButton");
    EXPECT_EQ(text("timeEdit"), QStringLiteral("14 May 2027 22:20:12"));
    EXPECT_FALSE(find<QPushButton>("takePhotoTimeButton")->isVisible());
    find<QLineEdit>("gaugeEdit")->setFocus();
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 5U) << questionText().toStdString() << entry().message().toStdString();
    EXPECT_EQ(readings()[4].values.time_ms, clock.now_ms() - (16 * 60 - 12) * 1000);
}

TEST_F(PhotosTest, the_offered_time_can_be_taken_by_key) {
    page->attachPhotos({write("display.jpg", camera_jpeg("2027:05:14 21:50:12"))});
    press(Qt::Key_T, Qt::AltModifier);
    // A button pressed by its key shows itself pressed for a moment first.
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("timeEdit") == QStringLiteral("14 May 2027 21:50:12"); }, 5000));
}

TEST_F(PhotosTest, in_an_hour_that_occurs_twice_the_offered_text_says_which) {
    const UtcMs later_ms = 1'824'946'200'000; // 2027-10-31T01:30:00Z, the second 02:30 of Paris
    for (const UtcMs time_ms : {later_ms, later_ms - 3'600'000}) {
        const QString text = field_text_of(time_ms + 250, later_ms + 3'600'000, "Europe/Paris");
        EntryTexts texts;
        texts.time = text;
        texts.gauge = QStringLiteral("1");
        const auto read = read_entry(texts, later_ms + 3'600'000, "Europe/Paris");
        ASSERT_TRUE(read.values) << text.toStdString();
        EXPECT_EQ(read.values->time_ms, time_ms) << text.toStdString();
    }
}

TEST_F(PhotosTest, a_photo_that_tells_another_time_than_its_reading_offers_to_amend_it) {
    view->selectReadings({uuid(3)});
    view->setFocus();
    page->attachPhotos({write("display.jpg", camera_jpeg("2027:05:14 22:08:30"))}); // the reading says 22:06
    const auto* label = find<QLabel>("photoTimeLabel");
    ASSERT_TRUE(label->isVisible());
    EXPECT_TRUE(label->text().contains(QStringLiteral("22:08:30"))) << label->text().toStdString();
    EXPECT_EQ(readings()[3].version, 1);
    click("amendToPhotoTimeButton");
    EXPECT_EQ(readings()[3].version, 2);
    EXPECT_EQ(readings()[3].values.time_ms, clock.now_ms() + 150'000);
    EXPECT_EQ(document.history(readings()[3].uuid).value().back().reason, "time of the photo");
    EXPECT_FALSE(label->isVisible());
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(3)});
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(PhotosTest, a_photo_within_the_minute_of_its_reading_offers_nothing_and_an_offer_can_be_left) {
    view->selectReadings({uuid(3)});
    view->setFocus();
    page->attachPhotos({write("near.jpg", camera_jpeg("2027:05:14 22:06:59"))});
    EXPECT_FALSE(find<QLabel>("photoTimeLabel")->isVisible());
    page->attachPhotos({write("far.jpg", camera_jpeg("2027:05:14 22:07:00"))});
    ASSERT_TRUE(find<QLabel>("photoTimeLabel")->isVisible());
    click("leavePhotoTimeButton");
    EXPECT_FALSE(find<QLabel>("photoTimeLabel")->isVisible());
    EXPECT_EQ(readings()[3].version, 1);
    EXPECT_EQ(strip().count(), 2);
}

} // namespace ullage::test
