// SPDX-License-Identifier: GPL-3.0-or-later
// How meters are read by the program.
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/meter_queries.h"
#include "store/queries/source_queries.h"

namespace ullage {

Result<std::map<MeterId, std::string>> Logbook::meter_sources() const {
    return impl_->read([&]() -> Result<std::map<MeterId, std::string>> { return store::meter_sources(impl_->database()); });
}

Result<void> Logbook::set_meter_source(const MeterId& meter_uuid, const std::string& source) {
    if (auto sound = store::check_meter_source(source); !sound) return sound;
    return impl_->change([&]() -> Result<void> {
        const auto meter = store::meter_id(impl_->database(), meter_uuid);
        if (!meter) return impl_->not_found(phrase("store", "the logbook has no such meter"));
        store::write_meter_source(impl_->database(), *meter, source);
        return {};
    });
}

} // namespace ullage
