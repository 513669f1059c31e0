// SPDX-License-Identifier: GPL-3.0-or-later
// The door itself, units and meters. Runs, readings and import have files of their own.
#include "store/logbook.h"

#include "base/ids.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/queries/column_queries.h"
#include "store/queries/meter_queries.h"
#include "store/queries/method_queries.h"
#include "store/queries/publisher_queries.h"
#include "store/queries/unit_queries.h"

namespace ullage {

namespace fs = std::filesystem;

Logbook::Logbook(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Logbook::Logbook(Logbook&&) noexcept = default;
Logbook& Logbook::operator=(Logbook&&) noexcept = default;
Logbook::~Logbook() = default;

const fs::path& Logbook::path() const { return impl_->path; }
OpenMode Logbook::mode() const { return impl_->mode; }

bool Logbook::recorded_elsewhere() const { return impl_->connection.copied_while_recorded(); }
CopyAge Logbook::copy_age() const { return impl_->connection.copy_age(); }

Result<Logbook> Logbook::create(const fs::path& path, const Clock& clock) {
    const auto written = store::guarded(path, [&] {
        const store::Connection empty = store::Connection::in_memory();
        return store::write_copy(empty.database(), path);
    });
    if (!written) return written.error();
    return open(path, OpenMode::record, clock);
}

Result<Logbook> Logbook::open(const fs::path& path, OpenMode mode, const Clock& clock, const std::atomic<bool>* cancelled) {
    return store::guarded(path, [&]() -> Result<Logbook> {
        auto connection =
            mode == OpenMode::record ? store::Connection::record(path, clock, cancelled) : store::Connection::look(path, clock, cancelled);
        if (!connection) return connection.error();
        return Logbook(std::make_unique<Impl>(path, mode, &clock, std::move(connection).value()));
    });
}

Result<Logbook> Logbook::in_memory(const Clock& clock) {
    return store::guarded({}, [&]() -> Result<Logbook> {
        return Logbook(std::make_unique<Impl>(fs::path(), OpenMode::record, &clock, store::Connection::in_memory()));
    });
}

Result<Unit> Logbook::add(Unit unit) {
    if (auto sound = store::check(unit); !sound) return sound.error();
    return impl_->change([&]() -> Result<Unit> {
        if (unit.uuid.empty()) unit.uuid = UnitId(new_uuid());
        if (store::unit_id(impl_->database(), unit.uuid)) return impl_->known_already(phrase("store", "the logbook has this unit already"));
        store::insert_unit(impl_->database(), unit, impl_->clock->now_ms());
        return unit;
    });
}

Result<void> Logbook::update(const Unit& unit) {
    if (auto sound = store::check(unit); !sound) return sound.error();
    return impl_->change([&]() -> Result<void> {
        const auto id = store::unit_id(impl_->database(), unit.uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such unit"));
        store::update_unit(impl_->database(), *id, unit);
        return {};
    });
}

Result<std::vector<Unit>> Logbook::units() const {
    return impl_->read([&]() -> Result<std::vector<Unit>> { return store::listed_units(impl_->database()); });
}

Result<void> Logbook::set_unit_withdrawn(const UnitId& uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto id = store::unit_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such unit"));
        store::withdraw_unit(impl_->database(), *id, withdrawn);
        return {};
    });
}

Result<Meter> Logbook::add(Meter meter) {
    if (auto sound = store::check(meter); !sound) return sound.error();
    return impl_->change([&]() -> Result<Meter> {
        if (meter.uuid.empty()) meter.uuid = MeterId(new_uuid());
        if (store::meter_id(impl_->database(), meter.uuid)) return impl_->known_already(phrase("store", "the logbook has this meter already"));
        store::insert_meter(impl_->database(), meter, impl_->clock->now_ms());
        return meter;
    });
}

Result<void> Logbook::update(const Meter& meter, const std::string& reason) {
    if (auto sound = store::check(meter); !sound) return sound.error();
    if (auto sound = store::check_reason(reason); !sound) return sound.error();
    return impl_->change([&]() -> Result<void> {
        const auto id = store::meter_id(impl_->database(), meter.uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such meter"));
        if (store::meter_versions(impl_->database(), *id).back().meter == meter) return {};
        store::update_meter(impl_->database(), *id, meter, impl_->clock->now_ms(), reason);
        return {};
    });
}

Result<std::vector<Meter>> Logbook::meters() const {
    return impl_->read([&]() -> Result<std::vector<Meter>> { return store::listed_meters(impl_->database()); });
}

Result<std::vector<MeterVersion>> Logbook::meter_history(const MeterId& uuid) const {
    return impl_->read([&]() -> Result<std::vector<MeterVersion>> {
        const auto id = store::meter_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such meter"));
        return store::meter_versions(impl_->database(), *id);
    });
}

Result<std::map<std::string, double>> Logbook::method_settings() const {
    return impl_->read([&]() -> Result<std::map<std::string, double>> { return store::method_settings(impl_->database()); });
}

Result<void> Logbook::set_method_setting(const std::string& key, double value) {
    if (auto sound = store::check_method_setting(key, value); !sound) return sound;
    return impl_->change([&]() -> Result<void> {
        store::write_method_setting(impl_->database(), key, value);
        return {};
    });
}

Result<void> Logbook::clear_method_setting(const std::string& key) {
    return impl_->change([&]() -> Result<void> {
        store::forget_method_setting(impl_->database(), key);
        return {};
    });
}

Result<Publisher> Logbook::publisher() const {
    return impl_->read([&]() -> Result<Publisher> { return store::publisher(impl_->database()); });
}

Result<void> Logbook::set_publisher(const Publisher& publisher) {
    if (auto sound = store::check(publisher); !sound) return sound;
    return impl_->change([&]() -> Result<void> {
        store::write_publisher(impl_->database(), publisher);
        return {};
    });
}

Result<std::map<std::string, std::string>> Logbook::column_sets() const {
    return impl_->read([&]() -> Result<std::map<std::string, std::string>> { return store::column_sets(impl_->database()); });
}

Result<void> Logbook::set_column_set(const std::string& name, const std::string& keys) {
    if (auto sound = store::check_column_set(name, keys); !sound) return sound;
    return impl_->change([&]() -> Result<void> {
        store::write_column_set(impl_->database(), name, keys);
        return {};
    });
}

Result<void> Logbook::clear_column_set(const std::string& name) {
    return impl_->change([&]() -> Result<void> {
        store::forget_column_set(impl_->database(), name);
        return {};
    });
}

Result<void> Logbook::set_meter_withdrawn(const MeterId& uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto id = store::meter_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such meter"));
        if (const auto runs = store::runs_naming_meter(impl_->database(), *id); withdrawn && runs > 0)
            return Error{Failure::refused, say_count(runs, phrases("store", "the meter is named by %n runs", "the meter is named by %n run")),
                         impl_->path.string(), say(phrase("store", "choose another meter in the runs first; withdrawn runs count too"))};
        store::withdraw_meter(impl_->database(), *id, withdrawn);
        return {};
    });
}

Result<bool> Logbook::settle() { return impl_->settle(); }

bool Logbook::settled() const { return impl_->connection.settled(); }

std::optional<Error> Logbook::displaced() const { return impl_->connection.displaced(); }

const OpeningCheck& Logbook::opening_check() const { return impl_->connection.opening_check(); }

Result<void> Logbook::save_copy(const fs::path& target) const {
    const bool displaced = impl_->connection.displaced().has_value();
    auto saved = store::guarded(target, [&] {
        // What is open for looking allows no writing, not even into another file.
        if (impl_->mode == OpenMode::read_only) impl_->database().exec("PRAGMA query_only = OFF");
        auto written = store::write_copy(impl_->database(), target, displaced ? store::CopyTrust::check_it : store::CopyTrust::as_written);
        if (impl_->mode == OpenMode::read_only) impl_->database().exec("PRAGMA query_only = ON");
        return written;
    });
    if (!saved && displaced && saved.error().failure == Failure::damaged)
        return Error{Failure::damaged, say(phrase("store", "not all of the open logbook can be read any more")), target.string(),
                     say(phrase("store", "restore the logbook from a copy of it; no copy was made"))};
    if (!saved && saved.error().failure == Failure::disk_full)
        return Error{Failure::disk_full, say(phrase("store", "the disk is full; no copy was made")), target.string(),
                     say(phrase("store", "free some space or choose another disk"))};
    return saved;
}

} // namespace ullage
