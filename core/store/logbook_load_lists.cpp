// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "store/inside/logbook_impl.h"
#include "store/logbook.h"
#include "store/queries/load_list_queries.h"

namespace ullage {

namespace {

Error name_taken(const LoadList& list) {
    return {Failure::refused, say(phrase("store", "the logbook has a load list `%1` already"), list.name), say(phrase("store", "name")),
            say(phrase("store", "give this one another name"))};
}

} // namespace

Result<LoadList> Logbook::add(LoadList list) {
    if (auto sound = check(list); !sound) return sound.error();
    return impl_->change([&]() -> Result<LoadList> {
        if (list.uuid.empty()) list.uuid = LoadListId(new_uuid());
        if (store::load_list_id(impl_->database(), list.uuid)) return impl_->known_already(phrase("store", "the logbook has this load list already"));
        if (store::load_list_name_taken(impl_->database(), list.name, list.uuid)) return name_taken(list);
        store::insert_load_list(impl_->database(), list, impl_->clock->now_ms());
        return list;
    });
}

Result<void> Logbook::update(const LoadList& list) {
    if (auto sound = check(list); !sound) return sound.error();
    return impl_->change([&]() -> Result<void> {
        const auto id = store::load_list_id(impl_->database(), list.uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such load list"));
        if (store::load_list_name_taken(impl_->database(), list.name, list.uuid)) return name_taken(list);
        store::update_load_list(impl_->database(), *id, list);
        return {};
    });
}

Result<std::vector<LoadList>> Logbook::load_lists() const {
    return impl_->read([&]() -> Result<std::vector<LoadList>> { return store::listed_load_lists(impl_->database()); });
}

Result<void> Logbook::set_load_list_withdrawn(const LoadListId& uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto id = store::load_list_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such load list"));
        store::withdraw_load_list(impl_->database(), *id, withdrawn);
        return {};
    });
}

} // namespace ullage
