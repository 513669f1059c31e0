// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on load lists.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

StoreCommand::Step list_withdrawn(const LoadListId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_load_list_withdrawn(uuid, withdrawn); };
}

Change of_load_lists() {
    Change change;
    change.load_lists = true;
    return change;
}

} // namespace

const std::vector<LoadList>& Document::loadLists() const { return state_->load_lists; }

const LoadList* Document::loadList(const LoadListId& uuid) const {
    const auto found = std::ranges::find(state_->load_lists, uuid, &LoadList::uuid);
    return found == state_->load_lists.end() ? nullptr : &*found;
}

Result<LoadList> Document::addLoadList(LoadList list) {
    if (!state_->book) return State::nothingOpen();
    auto added = state_->book->add(std::move(list));
    if (!added) return added;
    const auto& stored = added.value();
    state_->push({tr("add load list %1").arg(text_of(stored.name)), tr("Added load list %1").arg(text_of(stored.name))}, of_load_lists(),
                 list_withdrawn(stored.uuid, false), list_withdrawn(stored.uuid, true));
    return added;
}

Result<void> Document::updateLoadList(const LoadList& list) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = loadList(list.uuid);
    if (!current) return State::noSuch(phrase("document", "this load list is no longer in the logbook"));
    if (*current == list) return {};
    const LoadList before = *current;
    if (auto updated = state_->book->update(list); !updated) return updated;
    state_->push(
        {tr("edit load list %1").arg(text_of(list.name)), tr("Changed load list %1").arg(text_of(list.name))}, of_load_lists(),
        [list](Logbook& book) { return book.update(list); }, [before](Logbook& book) { return book.update(before); });
    return {};
}

Result<void> Document::withdrawLoadList(const LoadListId& uuid) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = loadList(uuid);
    if (!current) return State::noSuch(phrase("document", "this load list is no longer in the logbook"));
    const auto name = current->name;
    if (auto done = state_->book->set_load_list_withdrawn(uuid, true); !done) return done;
    state_->push({tr("withdraw load list %1").arg(text_of(name)), tr("Withdrawn: load list %1").arg(text_of(name))}, of_load_lists(),
                 list_withdrawn(uuid, true), list_withdrawn(uuid, false));
    return {};
}

Result<void> Document::State::readLoadLists() {
    auto read = book->load_lists();
    if (!read) return read.error();
    load_lists = std::move(read).value();
    return {};
}

} // namespace ullage
