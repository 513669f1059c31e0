// SPDX-License-Identifier: GPL-3.0-or-later
// Who publishes what the logbook says.
#include "document/document_state.h"

namespace ullage {

const Publisher& Document::publisher() const { return state_->publisher; }

Result<void> Document::setPublisher(const Publisher& publisher) {
    if (!state_->book) return State::nothingOpen();
    if (state_->publisher == publisher) return {};
    const Publisher before = state_->publisher;
    if (auto put = state_->book->set_publisher(publisher); !put) return put;
    Change change;
    change.publisher = true;
    state_->push(
        {tr("edit publisher's details"), tr("Changed publisher's details")}, change,
        [publisher](Logbook& book) { return book.set_publisher(publisher); }, [before](Logbook& book) { return book.set_publisher(before); });
    return {};
}

Result<void> Document::State::readPublisher() {
    auto read = book->publisher();
    if (!read) return read.error();
    publisher = std::move(read).value();
    return {};
}

} // namespace ullage
