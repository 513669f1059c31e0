// SPDX-License-Identifier: GPL-3.0-or-later
// Photos of readings.
#include "document/document.h"
#include "document/document_state.h"
#include "formats/entry/photo_time.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

StoreCommand::Step photo_withdrawn(const PhotoId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) -> Result<void> {
        if (const auto done = book.set_photo_withdrawn(uuid, withdrawn); !done) return done.error();
        return {};
    };
}

Change photos_of(const RunId& run_uuid) {
    Change change;
    change.photos.push_back(run_uuid);
    return change;
}

} // namespace

Result<Photo> Document::addPhoto(const RunId& run_uuid, const ReadingId& reading_uuid, NewPhoto photo) {
    if (!state_->book) return State::nothingOpen();
    const auto* record = run(run_uuid);
    if (!record) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    photo.taken = photo_time(photo.bytes, record->run.time_zone);
    auto added = state_->book->add_photo(run_uuid, reading_uuid, photo);
    if (!added) return added;
    const auto& uuid = added.value().uuid;
    state_->push({tr("attach photo"), tr("Attached photo")}, photos_of(run_uuid), photo_withdrawn(uuid, false), photo_withdrawn(uuid, true));
    return added;
}

Result<void> Document::withdrawPhoto(const PhotoId& photo_uuid) {
    if (!state_->book) return State::nothingOpen();
    const auto done = state_->book->set_photo_withdrawn(photo_uuid, true);
    if (!done) return done.error();
    state_->push({tr("withdraw photo"), tr("Withdrawn: photo")}, photos_of(done.value().run_uuid), photo_withdrawn(photo_uuid, true),
                 photo_withdrawn(photo_uuid, false));
    return {};
}

Result<std::vector<Photo>> Document::photos(const RunId& run_uuid) const {
    if (!state_->book) return State::nothingOpen();
    auto found = state_->book->photos(run_uuid);
    if (found) std::erase_if(found.value(), [](const Photo& photo) { return photo.withdrawn; });
    return found;
}

Result<std::string> Document::photoBytes(const PhotoId& photo_uuid) const {
    if (!state_->book) return State::nothingOpen();
    return state_->book->photo_bytes(photo_uuid);
}

} // namespace ullage
