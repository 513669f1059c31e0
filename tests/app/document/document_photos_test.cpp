// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"
#include "support/photo_bytes.h"

namespace ullage {

using test::bare_jpeg;
using test::DocumentTest;

namespace {

class DocumentPhotos : public DocumentTest {
protected:
    void SetUp() override {
        DocumentTest::SetUp();
        run = start_drain(add_unit());
        run.time_zone = "Europe/Vienna";
        ASSERT_TRUE(document.updateRun(run));
        reading = note(run, 100, 0);
        QObject::connect(&document, &Document::photosChanged, [this](const RunId& uuid) {
            EXPECT_EQ(uuid, run.uuid);
            events.append(QStringLiteral("photos"));
        });
        events.clear();
    }
    [[nodiscard]] std::vector<Photo> photos() const { return document.photos(run.uuid).value(); }

    ullage::Run run;
    Reading reading;
    const NewPhoto display{"display.jpg", test::jpeg_with_exif(bare_jpeg(), test::exif_block("2027:05:14 18:00:12")), {}};
};

} // namespace

TEST_F(DocumentPhotos, an_attached_photo_is_announced_read_for_its_time_and_undone_by_withdrawing) {
    const auto photo = document.addPhoto(run.uuid, reading.uuid, display);
    ASSERT_TRUE(photo) << photo.error().sentence();
    EXPECT_EQ(photo.value().taken, (PhotoMoment{1'810'310'412'000, true}));
    EXPECT_EQ(photos(), std::vector{photo.value()});
    EXPECT_EQ(document.photoBytes(photo.value().uuid).value(), display.bytes);
    EXPECT_EQ(events, QStringList{"photos"});
    EXPECT_EQ(saved_ms, clock.now_ms());
    document.undoStack().undo();
    EXPECT_TRUE(photos().empty());
    document.undoStack().redo();
    EXPECT_EQ(photos().size(), 1U);
    EXPECT_EQ(events, (QStringList{"photos", "photos", "photos"}));
}

TEST_F(DocumentPhotos, a_withdrawn_photo_comes_back_on_undo_with_its_reading) {
    const auto photo = document.addPhoto(run.uuid, reading.uuid, display).value();
    ASSERT_TRUE(document.withdrawPhoto(photo.uuid));
    EXPECT_TRUE(photos().empty());
    document.undoStack().undo();
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].reading_uuid, reading.uuid);
    document.undoStack().redo();
    EXPECT_TRUE(photos().empty());
}

TEST_F(DocumentPhotos, a_reading_recorded_with_waiting_photos_keeps_them_through_undo_and_redo) {
    const auto photo = document.addPhoto(run.uuid, {}, display).value();
    events.clear();
    ReadingValues values;
    values.time_ms = clock.now_ms() + 1000;
    values.gauge_percent = 90;
    const auto noted = document.record(run.uuid, values, {photo.uuid});
    ASSERT_TRUE(noted) << noted.error().sentence();
    EXPECT_EQ(photos().at(0).reading_uuid, noted.value().uuid);
    EXPECT_EQ(events, (QStringList{"readings", "photos"}));
    document.undoStack().undo();
    EXPECT_EQ(photos().at(0).reading_uuid, noted.value().uuid);
    document.undoStack().redo();
    EXPECT_EQ(photos().at(0).reading_uuid, noted.value().uuid);
    EXPECT_FALSE(document.run(run.uuid)->readings.back().withdrawn);
}

TEST_F(DocumentPhotos, a_refused_photo_changes_nothing_and_is_no_step_to_undo) {
    const int steps = document.undoStack().count();
    const auto refused = document.addPhoto(run.uuid, reading.uuid, {"notes.txt", "words", {}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().failure, Failure::bad_input);
    EXPECT_EQ(document.undoStack().count(), steps);
    EXPECT_TRUE(events.isEmpty());
}

TEST_F(DocumentPhotos, a_waiting_photo_is_there_again_after_reopening) {
    const auto photo = document.addPhoto(run.uuid, {}, display).value();
    document.close();
    EXPECT_FALSE(document.photos(run.uuid));
    EXPECT_FALSE(document.photoBytes(photo.uuid));
    EXPECT_FALSE(document.addPhoto(run.uuid, {}, display));
    EXPECT_FALSE(document.withdrawPhoto(photo.uuid));
    ASSERT_TRUE(document.open(file()));
    EXPECT_EQ(photos(), std::vector{photo});
}

TEST_F(DocumentPhotos, a_photo_leaves_the_analysis_as_it_was) {
    const auto* fit = &document.unitFit(run.unit_uuid);
    const auto* analysis = &document.analysis(run.uuid);
    ASSERT_TRUE(document.addPhoto(run.uuid, reading.uuid, display));
    EXPECT_EQ(&document.unitFit(run.unit_uuid), fit);
    EXPECT_EQ(&document.analysis(run.uuid), analysis);
}

} // namespace ullage
