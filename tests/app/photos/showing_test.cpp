// SPDX-License-Identifier: GPL-3.0-or-later
// Photos in the table, in the strip and in full size.
#include "photos_fixture.h"

#include "dialogs/photo_image.h"
#include "models/readings_model.h"
#include "support/photo_bytes.h"

#include <QAbstractItemModelTester>
#include <QBuffer>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>

namespace ullage::test {

TEST_F(PhotosTest, the_table_marks_readings_with_photos_and_says_how_many) {
    ReadingsModel model(document);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRun(run.uuid);
    const QModelIndex remark = model.index(model.rowOf(uuid(0)), ReadingsRow::remark);
    const QImage before = view->grab().toImage();
    EXPECT_EQ(remark.data(ReadingsModel::PhotosRole).toInt(), 0);
    for (int i = 0; i < 2; ++i) ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    EXPECT_EQ(remark.data(ReadingsModel::PhotosRole).toInt(), 2);
    EXPECT_EQ(remark.data(Qt::AccessibleTextRole).toString(), QStringLiteral("start, full, 2 photos"));
    EXPECT_TRUE(remark.data(Qt::ToolTipRole).toString().endsWith(QStringLiteral("2 photos")));
    EXPECT_EQ(remark.siblingAtColumn(ReadingsRow::gauge).data(ReadingsModel::PhotosRole).toInt(), 0);
    EXPECT_NE(view->grab().toImage(), before);
    document.undoStack().undo();
    EXPECT_EQ(remark.data(Qt::AccessibleTextRole).toString(), QStringLiteral("start, full, 1 photo"));
}

TEST_F(PhotosTest, photos_of_an_undone_reading_stay_in_reach_and_say_whose_they_are) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[1].uuid, {"a.jpg", camera_jpeg(""), {}}));
    const auto* button = find<QPushButton>("undonePhotosButton");
    EXPECT_FALSE(button->isVisible()) << "nothing is undone yet";
    ASSERT_TRUE(document.withdrawReading(readings()[1].uuid, {}));
    ASSERT_TRUE(button->isVisible());
    EXPECT_EQ(button->text(), QStringLiteral("Photos of undone readings: 1"));
    EXPECT_FALSE(strip("undonePhotoStrip").isVisible());
    click("undonePhotosButton");
    ASSERT_TRUE(strip("undonePhotoStrip").isVisible());
    EXPECT_TRUE(strip("undonePhotoStrip").item(0)->toolTip().contains(QStringLiteral("of the undone reading of ")));
    strip("undonePhotoStrip").setFocus();
    press(Qt::Key_Return);
    ASSERT_NE(dialog(), nullptr);
    EXPECT_TRUE(dialog()
                    ->findChild<QLabel*>(QStringLiteral("photoMessageLabel"))
                    ->text()
                    .startsWith(QStringLiteral("This photo is of the undone reading of ")));
    QTest::keyClick(dialog(), Qt::Key_Escape);
    document.undoStack().undo();
    EXPECT_FALSE(button->isVisible());
    EXPECT_FALSE(strip("undonePhotoStrip").isVisible());
}

TEST_F(PhotosTest, a_withdrawn_reading_takes_its_photos_out_of_the_strip_and_undo_brings_both_back) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    EXPECT_TRUE(strip().isVisible());
    ASSERT_TRUE(document.withdrawReading(readings()[0].uuid, {}));
    EXPECT_FALSE(strip().isVisible());
    document.undoStack().undo();
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(PhotosTest, small_pictures_appear_and_a_damaged_one_gets_a_sign) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"b.jpg", bare_jpeg(64, 64, 200), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    ASSERT_TRUE(QTest::qWaitFor([this] { return strip().loaded(); }, 5000));
    const QImage picture = strip().item(0)->icon().pixmap(72, 54).toImage();
    EXPECT_EQ(picture.size(), QSize(72, 54));
    EXPECT_NE(picture.pixel(2, 2), picture.pixel(40, 40));
    strip().setFocus();
    press(Qt::Key_Right);
    press(Qt::Key_Return);
    ASSERT_NE(dialog(), nullptr);
    EXPECT_TRUE(dialog()->findChild<QLabel*>(QStringLiteral("photoPictureLabel"))->text().contains(QStringLiteral("cannot be shown")));
    EXPECT_FALSE(dialog()->findChild<QPushButton*>(QStringLiteral("photoFitButton"))->isEnabled());
}

TEST_F(PhotosTest, a_photo_opens_in_full_size_with_its_facts_and_zooms_by_key) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"display.jpg", camera_jpeg("2027:05:14 18:00:12", {3000, 2000}, "+02:00"), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    QTest::mouseClick(strip().viewport(), Qt::LeftButton, {}, strip().visualItemRect(strip().item(0)).center());
    ASSERT_NE(dialog(), nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog()));
    EXPECT_EQ(dialog()->findChild<QLabel*>(QStringLiteral("photoNameLabel"))->text(), QStringLiteral("display.jpg"));
    const QString about = dialog()->findChild<QLabel*>(QStringLiteral("photoAboutLabel"))->text();
    EXPECT_TRUE(about.contains(QStringLiteral("3000 x 2000 pixels, taken 14 May 2027 18:00:12"))) << about.toStdString();
    const auto* picture = dialog()->findChild<QLabel*>(QStringLiteral("photoPictureLabel"));
    const auto* scroll = dialog()->findChild<QScrollArea*>(QStringLiteral("photoScroll"));
    EXPECT_TRUE(dialog()->fitted());
    EXPECT_LE(picture->width(), scroll->viewport()->width());
    EXPECT_GT(picture->width(), scroll->viewport()->width() / 2);
    QTest::keyClick(dialog(), Qt::Key_1);
    EXPECT_EQ(picture->size(), QSize(3000, 2000));
    QTest::keyClick(dialog(), Qt::Key_F);
    EXPECT_LE(picture->width(), scroll->viewport()->width());
    QTest::keyClick(dialog(), Qt::Key_Escape);
    EXPECT_FALSE(dialog()->isVisible());
}

TEST_F(PhotosTest, a_photo_is_withdrawn_from_its_window_and_undo_brings_it_back) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    strip().setFocus();
    press(Qt::Key_Space);
    ASSERT_NE(dialog(), nullptr);
    {
        const FullDisk full;
        QTest::mouseClick(dialog()->findChild<QPushButton*>(QStringLiteral("withdrawPhotoButton")), Qt::LeftButton);
    }
    ASSERT_TRUE(dialog()->isVisible());
    EXPECT_TRUE(dialog()->findChild<QLabel*>(QStringLiteral("photoMessageLabel"))->isVisible());
    QTest::mouseClick(dialog()->findChild<QPushButton*>(QStringLiteral("withdrawPhotoButton")), Qt::LeftButton);
    EXPECT_FALSE(dialog()->isVisible());
    EXPECT_TRUE(photos().empty());
    EXPECT_FALSE(strip().isVisible());
    document.undoStack().undo();
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(PhotosTest, a_photo_taken_upright_is_shown_upright) {
    // Exif Orientation 6: turned by 90 degrees clockwise (Exif 2.32, 4.6.4, tag 0x0112).
    using namespace std::string_literals;
    const std::string block = "MM\x00\x2a\x00\x00\x00\x08"s + big_endian(1, 2) + big_endian(0x0112, 2) + big_endian(3, 2) + big_endian(1, 4) +
                              big_endian(6, 2) + big_endian(0, 2) + big_endian(0, 4);
    const std::string upright = jpeg_with_exif(camera_jpeg(""), block);
    EXPECT_EQ(photo_image(upright, PhotoFormat::jpeg).image.size(), QSize(480, 640));
    EXPECT_EQ(photo_image(upright, PhotoFormat::jpeg, {72, 54}).image.size(), QSize(40, 54));
    EXPECT_EQ(photo_image(camera_jpeg(""), PhotoFormat::jpeg, {72, 54}).image.size(), QSize(72, 54));
    EXPECT_EQ(photo_image(camera_jpeg("", {20, 10}), PhotoFormat::jpeg, {72, 54}).image.size(), QSize(20, 10));
    EXPECT_TRUE(photo_image("no picture", PhotoFormat::png).image.isNull());
}

TEST_F(PhotosTest, the_keyboard_reaches_the_photos_between_table_and_entry) {
    ASSERT_TRUE(document.addPhoto(run.uuid, readings()[0].uuid, {"a.jpg", camera_jpeg(""), {}}));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, rowOf(0));
    view->setFocus();
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), QStringLiteral("readingPhotoStrip"));
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
}

TEST_F(PhotosTest, a_photo_of_many_pixels_is_halved_while_it_is_decoded_and_says_its_own_size) {
    const ShownPhoto shown = photo_image(camera_jpeg("", {6000, 5000}), PhotoFormat::jpeg);
    EXPECT_EQ(shown.whole, QSize(6000, 5000));
    EXPECT_EQ(shown.image.size(), QSize(3000, 2500));
    EXPECT_LE(std::int64_t{shown.fitted.width()} * shown.fitted.height(), photo_fitted_pixels);
}

TEST_F(PhotosTest, a_jpeg_whose_decoder_keeps_all_of_it_is_shown_within_the_memory_of_one_picture_or_not_at_all) {
    // libjpeg keeps 3 bytes a pixel of such a picture, whatever size is asked for: 300 MB.
    const ShownPhoto huge = photo_image(grey_jpeg('\xc2', 10'000, 10'000), PhotoFormat::jpeg);
    EXPECT_TRUE(huge.too_large);
    EXPECT_TRUE(huge.image.isNull());
    EXPECT_EQ(huge.whole, QSize(10'000, 10'000));
    EXPECT_TRUE(photo_image(grey_jpeg('\xc0', 10'000, 10'000, 1), PhotoFormat::jpeg, {72, 54}).too_large) << "a scan for each component";
    // 216 MB leave room for 13 megapixels, so 18 are halved once more.
    EXPECT_EQ(photo_image(grey_jpeg('\xc2', 9000, 8000), PhotoFormat::jpeg).image.size(), QSize(2250, 2000));
    EXPECT_EQ(photo_image(grey_jpeg('\xc2', 3000, 2000), PhotoFormat::jpeg).image.size(), QSize(3000, 2000));
    EXPECT_EQ(photo_image(grey_jpeg('\xc0', 10'000, 10'000), PhotoFormat::jpeg).image.size(), QSize(5000, 5000)) << "one scan is decoded as it comes";
}

TEST_F(PhotosTest, a_photo_is_decoded_as_the_format_it_is_kept_under_and_as_no_other) {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    QImage(40, 30, QImage::Format_RGB32).save(&buffer, "PNG");
    EXPECT_EQ(photo_image(png.toStdString(), PhotoFormat::png).image.size(), QSize(40, 30));
    EXPECT_TRUE(photo_image(png.toStdString(), PhotoFormat::jpeg).image.isNull());
    EXPECT_TRUE(photo_image(camera_jpeg(""), PhotoFormat::png).image.isNull());
}

TEST_F(PhotosTest, decoding_that_nobody_waits_for_any_more_gives_no_picture) {
    const std::atomic<bool> cancelled = true;
    EXPECT_TRUE(photo_image(camera_jpeg(""), PhotoFormat::jpeg, {}, &cancelled).image.isNull());
}

} // namespace ullage::test
