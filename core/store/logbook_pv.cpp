// SPDX-License-Identifier: GPL-3.0-or-later
// PV sheets of a logbook.
#include "base/ids.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/pv_queries.h"
#include "store/queries/unit_queries.h"

namespace ullage {

namespace {

/// The row of the unit that a sheet names; absent where it names none. False: no such unit.
bool find_unit(SQLite::Database& database, const PvSheet& sheet, std::optional<std::int64_t>& row) {
    if (sheet.unit_uuid.empty()) return true;
    row = store::unit_id(database, sheet.unit_uuid);
    return row.has_value();
}

} // namespace

Result<PvSheet> Logbook::add(PvSheet sheet) {
    if (auto sound = store::check(sheet); !sound) return sound.error();
    return impl_->change([&]() -> Result<PvSheet> {
        std::optional<std::int64_t> unit;
        if (!find_unit(impl_->database(), sheet, unit)) return impl_->not_found(phrase("store", "the logbook has no such unit"));
        if (sheet.uuid.empty()) sheet.uuid = PvSheetId(new_uuid());
        if (store::pv_sheet_id(impl_->database(), sheet.uuid)) return impl_->known_already(phrase("store", "the logbook has this PV sheet already"));
        store::insert_pv_sheet(impl_->database(), sheet, unit, impl_->clock->now_ms());
        return sheet;
    });
}

Result<void> Logbook::update(const PvSheet& sheet) {
    if (auto sound = store::check(sheet); !sound) return sound.error();
    return impl_->change([&]() -> Result<void> {
        const auto id = store::pv_sheet_id(impl_->database(), sheet.uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such PV sheet"));
        std::optional<std::int64_t> unit;
        if (!find_unit(impl_->database(), sheet, unit)) return impl_->not_found(phrase("store", "the logbook has no such unit"));
        store::update_pv_sheet(impl_->database(), *id, sheet, unit);
        return {};
    });
}

Result<std::vector<PvSheet>> Logbook::pv_sheets() const {
    return impl_->read([&]() -> Result<std::vector<PvSheet>> { return store::listed_pv_sheets(impl_->database()); });
}

Result<void> Logbook::set_pv_sheet_withdrawn(const PvSheetId& uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto id = store::pv_sheet_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such PV sheet"));
        store::withdraw_pv_sheet(impl_->database(), *id, withdrawn);
        return {};
    });
}

} // namespace ullage
