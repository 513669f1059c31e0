// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/inside/comparing.h"

#include "formats/text/sheet_keys.h"
#include "joining/inside/join_words.h"
#include "model/trace_overlap.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>
#include <utility>

namespace ullage::joining {

namespace {

/// How the versions of one record stand to one another.
enum class Histories { same, here_is_earlier, there_is_earlier, apart };

bool same_version(const ReadingVersion& one, const ReadingVersion& other) {
    return one.values == other.values && one.withdrawn == other.withdrawn && one.written_ms == other.written_ms && one.reason == other.reason;
}
bool same_version(const MeterVersion& one, const MeterVersion& other) {
    return one.meter == other.meter && one.written_ms == other.written_ms && one.reason == other.reason;
}

template <class Version>
Histories histories(const std::vector<Version>& here, const std::vector<Version>& there) {
    const std::size_t common = std::min(here.size(), there.size());
    for (std::size_t i = 0; i < common; ++i)
        if (!same_version(here[i], there[i])) return Histories::apart;
    if (here.size() == there.size()) return Histories::same;
    return here.size() < there.size() ? Histories::here_is_earlier : Histories::there_is_earlier;
}

std::size_t live(const std::vector<Reading>& readings) { return static_cast<std::size_t>(std::ranges::count(readings, false, &Reading::withdrawn)); }

/// Of runs of one kind; two without readings are not the same.
bool same_readings(const KeptRun& one, const KeptRun& other) {
    if (one.run.kind != other.run.kind) return false;
    const auto skip_withdrawn = [](auto at, auto end) { return std::find_if(at, end, [](const Reading& reading) { return !reading.withdrawn; }); };
    auto left = skip_withdrawn(one.readings.begin(), one.readings.end()), right = skip_withdrawn(other.readings.begin(), other.readings.end());
    if (left == one.readings.end()) return false;
    while (left != one.readings.end() && right != other.readings.end()) {
        if (left->values != right->values) return false;
        left = skip_withdrawn(std::next(left), one.readings.end());
        right = skip_withdrawn(std::next(right), other.readings.end());
    }
    return left == one.readings.end() && right == other.readings.end();
}

bool same_log(const Trace& one, const Trace& other) {
    return one.fingerprint == other.fingerprint && one.size_bytes == other.size_bytes && one.samples == other.samples &&
           one.first_ms == other.first_ms && one.last_ms == other.last_ms;
}

/// One comparison of two logbooks.
class Comparing {
public:
    Comparing(const Logbook& here, const Logbook& there, const Contents& at_here, const Contents& at_there)
        : here_(here), there_(there), h_(at_here), t_(at_there) {}

    Result<JoinPlan> all() {
        compare_units();
        if (auto done = compare_meters(); !done) return done.error();
        for (const KeptRun& run : t_.whole.runs)
            if (auto done = compare_run(run); !done) return done.error();
        compare_load_lists();
        compare_pv_sheets();
        for (const auto& [key, value] : t_.whole.method) {
            const auto known = h_.whole.method.find(key);
            if (known != h_.whole.method.end() && known->second == value) continue;
            plan_.notices.push_back(
                say(phrase("joining", "the other logbook has settings of the method that this one has not; those of this one stay")));
            break;
        }
        return std::move(plan_);
    }

private:
    using Fields = std::vector<JoinField>;

    JoinDifference& add(JoinedKind kind, JoinMatter matter, std::string uuid, Message title, Fields fields, std::set<std::string> needs = {}) {
        return plan_.differences.emplace_back(
            JoinDifference{kind, matter, std::move(uuid), std::move(title), std::move(fields), false, std::move(needs)});
    }

    /// The same of a reading, photo or log of a run that both have.
    JoinDifference& add_in(const KeptRun& run, JoinedKind kind, JoinMatter matter, std::string uuid, Message title, Fields fields,
                           const JoinArrival& arrival) {
        JoinDifference& added = add(kind, matter, std::move(uuid), std::move(title), std::move(fields), arrival.needs);
        added.run_uuid = run.run.uuid;
        return added;
    }

    /// What a record comes to that may be withdrawn in either; nothing where it is in both, or stands in neither.
    static std::optional<JoinMatter> deletion(bool withdrawn_here, bool withdrawn_there) {
        if (withdrawn_here == withdrawn_there) return std::nullopt;
        return withdrawn_here ? JoinMatter::withdrawn_here : JoinMatter::withdrawn_there;
    }

    void compare_units() {
        for (const auto& [unit, withdrawn] : t_.whole.units) {
            const Message title = say(phrase("joining", "unit %1"), unit.name);
            const auto known = h_.units.find(unit.uuid);
            if (known == h_.units.end()) {
                if (withdrawn) continue;
                plan_.arrivals.push_back({JoinedKind::unit, unit.uuid.text(), title});
                const auto alike = [&unit](const KeptRecord<Unit>& other) {
                    return !other.withdrawn && other.record.name == unit.name && other.record.maker == unit.maker;
                };
                if (std::ranges::any_of(h_.whole.units, alike))
                    plan_.notices.push_back(
                        say(phrase("joining", "there is a unit %1 already, which is not the same one: it comes in as a further unit of this name"),
                            unit.name));
                continue;
            }
            const auto& [own, own_withdrawn] = *known->second;
            if (own_withdrawn && withdrawn) continue;
            Fields fields = differing_fields(own, unit);
            if (const auto matter = deletion(own_withdrawn, withdrawn)) add(JoinedKind::unit, *matter, unit.uuid.text(), title, std::move(fields));
            else if (!fields.empty()) add(JoinedKind::unit, JoinMatter::differs, unit.uuid.text(), title, std::move(fields));
        }
    }

    [[nodiscard]] static bool names(const KeptRun& run, const MeterId& meter) {
        return run.run.meter_uuid == meter || run.run.second_meter_uuid == meter ||
               std::ranges::find(run.traces, meter, &Trace::meter_uuid) != run.traces.end();
    }

    Result<void> compare_meters() {
        for (const KeptMeter& meter : t_.whole.meters) {
            const Meter& stated = meter.versions.back().meter;
            const Message title = say(phrase("joining", "meter %1"), stated.name);
            const auto named_by = [&meter](const Contents& contents) {
                return std::ranges::any_of(contents.whole.runs, [&](const KeptRun& run) { return names(run, meter.uuid); });
            };
            const auto known = h_.meters.find(meter.uuid);
            if (known == h_.meters.end()) {
                if (meter.withdrawn && !named_by(t_)) continue;
                plan_.arrivals.push_back({JoinedKind::meter, meter.uuid.text(), title});
                const auto alike = [&stated](const KeptMeter& other) { return !other.withdrawn && other.versions.back().meter.name == stated.name; };
                if (std::ranges::any_of(h_.whole.meters, alike))
                    plan_.notices.push_back(
                        say(phrase("joining", "there is a meter %1 already, which is not the same one: it comes in as a further meter of this name"),
                            stated.name));
                continue;
            }
            const KeptMeter& own = *known->second;
            if (own.withdrawn && meter.withdrawn) continue;
            const auto matter = deletion(own.withdrawn, meter.withdrawn);
            if (matter == JoinMatter::withdrawn_there && named_by(h_)) continue; // runs here keep it
            if (matter == JoinMatter::withdrawn_here && named_by_new_run(meter.uuid)) {
                plan_.notices.push_back(
                    say(phrase("joining", "meter %1 was withdrawn here; it comes back, as a run that comes in names it"), stated.name));
                continue;
            }
            Fields fields = differing_fields(own.versions.back().meter, stated);
            const Histories how = histories(own.versions, meter.versions);
            if (!matter && (fields.empty() || how == Histories::there_is_earlier)) continue;
            add(JoinedKind::meter, matter.value_or(JoinMatter::differs), meter.uuid.text(), title, std::move(fields)).changed_there_only =
                !matter && how == Histories::here_is_earlier;
        }
        return {};
    }

    [[nodiscard]] bool named_by_new_run(const MeterId& meter) const {
        return std::ranges::any_of(t_.whole.runs,
                                   [&](const KeptRun& run) { return t_.is_shown(run) && !h_.runs.contains(run.run.uuid) && names(run, meter); });
    }

    /// Without what is withdrawn here the other's part of it stays out.
    [[nodiscard]] std::set<std::string> needed_unit(const UnitId& unit) const {
        const auto known = h_.units.find(unit);
        if (known == h_.units.end() || !known->second->withdrawn) return {};
        return {JoinDifference{JoinedKind::unit, JoinMatter::withdrawn_here, unit.text(), {}}.key()};
    }

    Result<void> compare_run(const KeptRun& run) {
        const auto known = h_.runs.find(run.run.uuid);
        if (known == h_.runs.end()) {
            if (t_.is_shown(run)) add_run(run);
            return {};
        }
        const KeptRun& own = *known->second;
        const Message title = run_title(own, h_.unit_name(own.run.unit_uuid));
        std::set<std::string> needs = needed_unit(own.run.unit_uuid);
        if (own.withdrawn != run.withdrawn) {
            const JoinMatter matter = own.withdrawn ? JoinMatter::withdrawn_here : JoinMatter::withdrawn_there;
            const JoinDifference& gone =
                add(JoinedKind::run, matter, run.run.uuid.text(), title, differing_fields(record_of(own, h_), record_of(run, t_)), needs);
            if (matter == JoinMatter::withdrawn_here) needs.insert(gone.key());
        }
        if (!t_.is_shown(run)) return {};
        if (own.withdrawn == run.withdrawn)
            if (Fields fields = differing_fields(record_of(own, h_), record_of(run, t_)); !fields.empty())
                add(JoinedKind::run, JoinMatter::differs, run.run.uuid.text(), title, std::move(fields), needs);
        JoinArrival arrival{JoinedKind::run, run.run.uuid.text(), title, true};
        arrival.needs = needs;
        if (auto done = compare_readings(own, run, title, arrival); !done) return done;
        compare_photos(own, run, title, arrival);
        compare_logs(own, run, title, arrival);
        if (!arrival.reading_uuids.empty() || !arrival.photo_uuids.empty() || !arrival.trace_uuids.empty())
            plan_.arrivals.push_back(std::move(arrival));
        return {};
    }

    static RunRecord record_of(const KeptRun& kept, const Contents& contents) {
        RunRecord record;
        record.run = kept.run;
        if (const auto unit = contents.units.find(kept.run.unit_uuid); unit != contents.units.end()) record.unit = unit->second->record;
        const auto meter = [&](const std::optional<MeterId>& uuid) -> std::optional<Meter> {
            const auto found = uuid ? contents.meters.find(*uuid) : contents.meters.end();
            return found == contents.meters.end() ? std::nullopt : std::optional(found->second->versions.back().meter);
        };
        record.meter = meter(kept.run.meter_uuid);
        record.second_meter = meter(kept.run.second_meter_uuid);
        return record;
    }

    void add_run(const KeptRun& run) {
        JoinArrival arrival{JoinedKind::run, run.run.uuid.text(), run_title(run, t_.unit_name(run.run.unit_uuid))};
        arrival.readings = live(run.readings);
        arrival.photos = static_cast<std::size_t>(std::ranges::count(run.photos, false, &Photo::withdrawn));
        arrival.logs = static_cast<std::size_t>(std::ranges::count(run.traces, false, &Trace::withdrawn));
        arrival.needs = needed_unit(run.run.unit_uuid);
        const auto twin = std::ranges::find_if(h_.whole.runs, [&](const KeptRun& other) {
            return other.run.unit_uuid == run.run.unit_uuid && h_.is_shown(other) && same_readings(other, run);
        });
        if (twin != h_.whole.runs.end())
            arrival.needs.insert(add(JoinedKind::run, JoinMatter::same_readings, arrival.uuid, arrival.title, {}, arrival.needs).key());
        plan_.arrivals.push_back(std::move(arrival));
    }

    Result<void> compare_readings(const KeptRun& own, const KeptRun& run, const Message& title, JoinArrival& arrival) {
        std::unordered_map<ReadingId, const Reading*> known;
        for (const Reading& reading : own.readings) known.emplace(reading.uuid, &reading);
        std::vector<const Reading*> added;
        for (const Reading& reading : run.readings) {
            const auto found = known.find(reading.uuid);
            if (found == known.end()) {
                added.push_back(&reading);
                if (!reading.withdrawn) ++arrival.readings;
                continue;
            }
            const Reading& mine = *found->second;
            if (mine.values == reading.values && mine.withdrawn == reading.withdrawn) continue;
            const auto here = here_.history(reading.uuid), there = there_.history(reading.uuid);
            if (!here || !there) return here ? there.error() : here.error();
            const Histories how = histories(here.value(), there.value());
            if (how == Histories::there_is_earlier) continue;
            const JoinMatter matter = deletion(mine.withdrawn, reading.withdrawn).value_or(JoinMatter::differs);
            add_in(own, JoinedKind::reading, matter, reading.uuid.text(), reading_title(mine, own, title),
                   differing_fields(mine.values, reading.values, own.run.time_zone), arrival)
                .changed_there_only = how == Histories::here_is_earlier;
        }
        // In the order in which they were entered there.
        std::ranges::sort(added, {}, &Reading::sequence);
        for (const Reading* reading : added) arrival.reading_uuids.push_back(reading->uuid);
        return {};
    }

    void compare_photos(const KeptRun& own, const KeptRun& run, const Message& title, JoinArrival& arrival) {
        for (const Photo& photo : run.photos) {
            const auto mine = std::ranges::find(own.photos, photo.uuid, &Photo::uuid);
            if (mine == own.photos.end()) {
                arrival.photo_uuids.push_back(photo.uuid);
                if (!photo.withdrawn) ++arrival.photos;
                continue;
            }
            // A photo that is tied stays tied, so that of two readings the one here is kept.
            const bool tied_there = !mine->reading_uuid && photo.reading_uuid;
            if ((mine->withdrawn == photo.withdrawn && !tied_there) || mine->version > photo.version) continue;
            const JoinMatter matter = deletion(mine->withdrawn, photo.withdrawn).value_or(JoinMatter::differs);
            Fields fields;
            if (tied_there) fields.push_back({say(phrase("joining", "reading")), {}, say(phrase("joining", "the reading that it shows"))});
            add_in(own, JoinedKind::photo, matter, photo.uuid.text(), say(phrase("joining", "photo %1 in %2"), mine->file_name, title),
                   std::move(fields), arrival)
                .changed_there_only = mine->version < photo.version;
        }
    }

    void compare_logs(const KeptRun& own, const KeptRun& run, const Message& title, JoinArrival& arrival) {
        for (const Trace& trace : run.traces) {
            const auto same = std::ranges::find_if(own.traces, [&](const Trace& mine) { return !mine.withdrawn && same_log(mine, trace); });
            if (same != own.traces.end() && !trace.withdrawn) continue;
            const auto mine = std::ranges::find(own.traces, trace.uuid, &Trace::uuid);
            const Message log_title = say(phrase("joining", "log %1 in %2"), trace.file_name, title);
            if (mine != own.traces.end() && mine->withdrawn != trace.withdrawn) {
                add_in(own, JoinedKind::log, *deletion(mine->withdrawn, trace.withdrawn), trace.uuid.text(), log_title, {}, arrival);
                continue;
            }
            if (trace.withdrawn || (mine != own.traces.end() && mine->samples >= trace.samples)) continue;
            const auto beside = std::ranges::find_if(own.traces, [&](const Trace& other) {
                return !other.withdrawn && trace_overlap(trace, other, own.run.meter_uuid) != TraceOverlap::none;
            });
            if (beside == own.traces.end()) {
                arrival.trace_uuids.push_back(trace.uuid);
                ++arrival.logs;
                continue;
            }
            const bool grown = mine != own.traces.end();
            add_in(own, JoinedKind::log, grown ? JoinMatter::differs : JoinMatter::overlapping, trace.uuid.text(), log_title,
                   differing_fields(*beside, trace, own.run.time_zone), arrival)
                .changed_there_only = grown;
        }
    }

    void compare_load_lists() {
        std::set<std::string> taken;
        for (const auto& [list, withdrawn] : h_.whole.load_lists)
            if (!withdrawn) taken.insert(lower_case(list.name));
        for (const auto& [list, withdrawn] : t_.whole.load_lists) {
            const Message title = say(phrase("joining", "load list %1"), list.name);
            const auto known = h_.load_lists.find(list.uuid);
            if (known != h_.load_lists.end()) {
                const auto& [own, own_withdrawn] = *known->second;
                if (own_withdrawn && withdrawn) continue;
                Fields fields = differing_fields(own, list);
                const auto matter = deletion(own_withdrawn, withdrawn);
                if (matter || !fields.empty())
                    add(JoinedKind::load_list, matter.value_or(JoinMatter::differs), list.uuid.text(), title, std::move(fields));
                continue;
            }
            const auto equal = [&list = list](const KeptRecord<LoadList>& other) {
                return !other.withdrawn && differing_fields(other.record, list).empty();
            };
            if (withdrawn || std::ranges::any_of(h_.whole.load_lists, equal)) continue;
            JoinArrival arrival{JoinedKind::load_list, list.uuid.text(), title};
            std::string name = list.name;
            for (int number = 2; taken.contains(lower_case(name)); ++number) name = fmt::format("{} ({})", list.name, number);
            taken.insert(lower_case(name));
            if (name != list.name) {
                arrival.name = name;
                plan_.notices.push_back(say(phrase("joining", "there is another load list %1 already: it comes in as %2"), list.name, name));
            }
            plan_.arrivals.push_back(std::move(arrival));
        }
    }

    void compare_pv_sheets() {
        for (const auto& [sheet, withdrawn] : t_.whole.pv_sheets) {
            const Message title = say(phrase("joining", "PV sheet %1"), sheet.name);
            const std::string unit_there = t_.unit_name(sheet.unit_uuid);
            const auto known = h_.pv_sheets.find(sheet.uuid);
            if (known != h_.pv_sheets.end()) {
                const auto& [own, own_withdrawn] = *known->second;
                if (own_withdrawn && withdrawn) continue;
                Fields fields = differing_fields(own, h_.unit_name(own.unit_uuid), sheet, unit_there);
                const auto matter = deletion(own_withdrawn, withdrawn);
                if (matter || !fields.empty())
                    add(JoinedKind::pv_sheet, matter.value_or(JoinMatter::differs), sheet.uuid.text(), title, std::move(fields));
                continue;
            }
            const auto equal = [&](const KeptRecord<PvSheet>& other) {
                return !other.withdrawn && other.record.unit_uuid == sheet.unit_uuid &&
                       differing_fields(other.record, h_.unit_name(other.record.unit_uuid), sheet, unit_there).empty();
            };
            if (withdrawn || std::ranges::any_of(h_.whole.pv_sheets, equal)) continue;
            plan_.arrivals.push_back({JoinedKind::pv_sheet, sheet.uuid.text(), title});
        }
    }

    const Logbook& here_;
    const Logbook& there_;
    const Contents& h_;
    const Contents& t_;
    JoinPlan plan_;
};

} // namespace

Contents::Contents(WholeContent content) : whole(std::move(content)) {
    for (const auto& unit : whole.units) units.emplace(unit.record.uuid, &unit);
    for (const auto& meter : whole.meters) meters.emplace(meter.uuid, &meter);
    for (const auto& run : whole.runs) runs.emplace(run.run.uuid, &run);
    for (const auto& list : whole.load_lists) load_lists.emplace(list.record.uuid, &list);
    for (const auto& sheet : whole.pv_sheets) pv_sheets.emplace(sheet.record.uuid, &sheet);
}

bool Contents::is_shown(const KeptRun& run) const {
    const auto unit = units.find(run.run.unit_uuid);
    return !run.withdrawn && unit != units.end() && !unit->second->withdrawn;
}

std::string Contents::unit_name(const UnitId& uuid) const {
    const auto unit = units.find(uuid);
    return unit == units.end() ? std::string() : unit->second->record.name;
}

Result<Comparison> compare(const Logbook& here, const Logbook& there) {
    auto at_here = here.whole_content();
    if (!at_here) return at_here.error();
    auto at_there = there.whole_content();
    if (!at_there) return at_there.error();
    Comparison comparison;
    comparison.here = std::make_unique<Contents>(std::move(at_here).value());
    comparison.there = std::make_unique<Contents>(std::move(at_there).value());
    auto plan = Comparing(here, there, *comparison.here, *comparison.there).all();
    if (!plan) return plan.error();
    comparison.plan = std::move(plan).value();
    return comparison;
}

} // namespace ullage::joining
