// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/unit_comparer.h"

#include "comparison/joined_records.h"
#include "document/same_record.h"
#include "measure/method_settings.h"
#include "style/words.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTimer>

#include <algorithm>
#include <atomic>
#include <exception>
#include <set>
#include <thread>
#include <unordered_map>
#include <utility>

namespace ullage {

namespace {

constexpr int progress_every_ms = 100;

bool same_file(const QString& one, const QString& other) {
    const QString a = QFileInfo(one).canonicalFilePath(), b = QFileInfo(other).canonicalFilePath();
    return a.isEmpty() ? QDir::cleanPath(one) == QDir::cleanPath(other) : a == b;
}

/// The same runs, whether or not they are the same objects.
bool same_runs(const std::vector<std::shared_ptr<const RunRecord>>& a, const std::vector<std::shared_ptr<const RunRecord>>& b) {
    return std::ranges::equal(a, b, [](const auto& one, const auto& other) { return one == other || same_record(*one, *other); });
}

} // namespace

/// The runs of all logbooks, by unit.
struct UnitComparer::Joined {
    std::vector<SharedRuns> units;
    std::map<RunId, std::string> source_of;
    std::vector<Message> notices;
    Casebook casebook; ///< of all of them
};

/// Units on their way through the threads. It holds their runs, so that the document may go on.
struct UnitComparer::Work {
    CompareRows rows = CompareRows::one_per_unit;
    std::vector<SharedRuns> units;
    MeasureOptions options;
    std::vector<std::optional<ComparedUnit>> compared;
    std::string error;
    std::atomic<std::size_t> done{0};
    std::jthread thread; ///< last, so that it has ended before the rest goes
};

UnitComparer::UnitComparer(Document& document, QObject* parent) : QObject(parent), document_(document), progress_timer_(new QTimer(this)) {
    for (auto signal : {&Document::unitsChanged, &Document::metersChanged, &Document::runsChanged})
        connect(&document_, signal, this, &UnitComparer::forgetJoined);
    connect(&document_, &Document::readingsChanged, this, &UnitComparer::forgetJoined);
    for (auto signal : {&Document::opened, &Document::closed})
        connect(&document_, signal, this, [this] {
            cancel();
            forgetJoined();
            for (KeptUnits& units : kept_) units.clear();
            options_ = {};
        });
    progress_timer_->setInterval(progress_every_ms);
    connect(progress_timer_, &QTimer::timeout, this, [this] {
        if (work_) emit progressed(static_cast<int>(work_->done), static_cast<int>(work_->units.size()));
    });
}

UnitComparer::~UnitComparer() = default;

void UnitComparer::forgetJoined() { joined_.reset(); }

Result<OtherLogbook> UnitComparer::readLogbook(const QString& path) const {
    if (!reader_) return read_other_logbook(path, document_.clock());
    auto read = reader_(path);
    if (!read)
        return Error{Failure::refused, say(phrase("document", "reading this logbook was cancelled; its units are not compared")), utf8_of(path), {}};
    return std::move(*read);
}

Result<void> UnitComparer::addLogbook(const QString& path) {
    if (document_.isOpen() && same_file(path, document_.path()))
        return Error{
            Failure::refused, say(phrase("document", "this logbook is the one that is open; its units are compared already")), utf8_of(path), {}};
    if (std::ranges::any_of(logbooks_, [&](const OtherLogbook& known) { return known.error.isEmpty() && same_file(known.path, path); }))
        return Error{Failure::refused, say(phrase("document", "the units of this logbook are compared already")), utf8_of(path), {}};
    auto read = readLogbook(path);
    if (!read) return read.error();
    std::erase_if(logbooks_, [&](const OtherLogbook& known) { return same_file(known.path, path); });
    logbooks_.push_back(std::move(read).value());
    forgetJoined();
    emit logbooksChanged();
    return {};
}

void UnitComparer::removeLogbook(const QString& path) {
    std::erase_if(logbooks_, [&](const OtherLogbook& known) { return known.path == path; });
    forgetJoined();
    emit logbooksChanged();
}

void UnitComparer::setLogbooks(const QStringList& paths) {
    std::vector<OtherLogbook> logbooks;
    for (const QString& path : paths) {
        if (document_.isOpen() && same_file(path, document_.path())) continue;
        auto read = readLogbook(path);
        if (read) logbooks.push_back(std::move(read).value());
        else logbooks.push_back({path, text_of(read.error().sentence()), {}, {}});
    }
    logbooks_ = std::move(logbooks);
    forgetJoined();
    emit logbooksChanged();
}

QString UnitComparer::sourceName(const QString& path) const {
    const QString name = QFileInfo(path).fileName();
    auto alike = std::ranges::count(logbooks_, name, [](const OtherLogbook& known) { return QFileInfo(known.path).fileName(); });
    if (QFileInfo(document_.path()).fileName() == name) ++alike;
    return alike > 1 ? QDir::toNativeSeparators(path) : name;
}

const UnitComparer::Joined& UnitComparer::joined() {
    if (joined_) return *joined_;
    for (const CompareRows rows : {CompareRows::one_per_unit, CompareRows::every_drain}) poolAgain(rows);
    joined_ = std::make_unique<Joined>();
    std::vector<RunSource> sources{{utf8_of(sourceName(document_.path())), {}}};
    std::unordered_map<const RunRecord*, std::shared_ptr<const RunRecord>> shared;
    const auto take = [&](const SharedRuns& runs) {
        for (const auto& run : runs) {
            sources.back().runs.push_back(run.get());
            shared.emplace(run.get(), run);
        }
    };
    take(document_.sharedRuns());
    for (const OtherLogbook& other : logbooks_) {
        if (!other.error.isEmpty()) continue;
        sources.push_back({utf8_of(sourceName(other.path)), {}});
        take(other.runs);
    }
    const auto together = std::make_shared<JoinedRecords>(join_runs(sources));
    joined_->source_of = together->source_of;
    joined_->notices = together->notices;
    SharedRuns all;
    for (const UnitRuns& runs : runs_by_unit(together->runs)) {
        SharedRuns& unit = joined_->units.emplace_back();
        for (const RunRecord* run : runs) {
            const auto found = shared.find(run);
            // A run whose unit is known otherwise elsewhere is a copy, which the joined records own.
            unit.push_back(found != shared.end() ? found->second : std::shared_ptr<const RunRecord>(together, run));
            all.push_back(unit.back());
        }
    }
    joined_->casebook.set_options(options_from(document_.method()));
    joined_->casebook.set_runs(std::move(all));
    return *joined_;
}

std::vector<SharedRuns> UnitComparer::waiting(CompareRows rows) {
    std::vector<SharedRuns> found;
    KeptUnits& known = kept(rows);
    std::set<UnitId> units;
    for (const SharedRuns& runs : joined().units) units.insert(runs.front()->unit.uuid);
    if (std::erase_if(known, [&](const auto& each) { return !units.contains(each.first); }) > 0) poolAgain(rows);
    for (const SharedRuns& runs : joined().units) {
        const auto before = known.find(runs.front()->unit.uuid);
        if (before == known.end() || !same_runs(before->second.runs, runs) ||
            (before->second.compared.fit && before->second.compared.fit->options != options(rows)))
            found.push_back(runs);
    }
    return found;
}

bool UnitComparer::poolAgain(CompareRows rows) {
    std::vector<std::vector<DrainSummary>> drains;
    for (const auto& [uuid, unit] : kept(rows))
        if (unit.compared.fit) drains.push_back(unit.compared.fit->drains);
    const MeasureOptions pooled = with_pooled_repeatability(options_from(document_.method()), drains);
    return std::exchange(options(rows), pooled) != pooled;
}

std::size_t UnitComparer::waitingUnits(CompareRows rows) { return waiting(rows).size(); }

void UnitComparer::keep(CompareRows rows, const std::vector<SharedRuns>& units, std::vector<std::optional<ComparedUnit>> compared) {
    for (std::size_t i = 0; i < units.size(); ++i)
        if (compared[i]) kept(rows).insert_or_assign(units[i].front()->unit.uuid, Kept{units[i], std::move(*compared[i])});
    poolAgain(rows);
}

Comparison UnitComparer::comparison(CompareRows rows) {
    // Where the pooled scatter changes with what was compared, all units are compared once more by it.
    for (std::vector<SharedRuns> units = waiting(rows); !units.empty(); units = waiting(rows)) {
        std::vector<UnitRuns> runs;
        for (const SharedRuns& unit : units) runs.push_back(addresses_of(unit));
        keep(rows, units, compare_units(runs, rows, options(rows)));
    }
    std::vector<const ComparedUnit*> all;
    for (const SharedRuns& unit : joined().units) all.push_back(&kept(rows).at(unit.front()->unit.uuid).compared);
    Comparison comparison = join_units(std::move(all));
    name_sources(comparison, rows, joined().source_of);
    return comparison;
}

void UnitComparer::start(CompareRows rows) {
    if (work_) return;
    work_ = std::make_unique<Work>();
    work_->rows = rows;
    work_->units = waiting(rows);
    work_->options = options(rows);
    work_->thread = std::jthread([this, work = work_.get()](const std::stop_token& stop) {
        try {
            std::vector<UnitRuns> runs;
            for (const SharedRuns& unit : work->units) runs.push_back(addresses_of(unit));
            work->compared = compare_units(runs, work->rows, work->options, stop, &work->done);
        } catch (const std::exception& exception) {
            work->error = exception.what();
        }
        QMetaObject::invokeMethod(
            this, [this, work] { finish(work); }, Qt::QueuedConnection);
    });
    progress_timer_->start();
    emit progressed(0, static_cast<int>(work_->units.size()));
}

void UnitComparer::cancel() {
    if (work_) work_->thread.request_stop();
}

void UnitComparer::finish(const Work* work) {
    if (work_.get() != work) return;
    const std::unique_ptr<Work> done = std::move(work_);
    done->thread.join();
    progress_timer_->stop();
    if (done->error.empty()) {
        const bool all = std::ranges::all_of(done->compared, [](const auto& each) { return each.has_value(); });
        keep(done->rows, done->units, std::move(done->compared));
        if (all && options(done->rows) != done->options) {
            start(done->rows);
            return;
        }
    } else {
        emit error(tr("The units could not be compared: %1.").arg(text_of(done->error)));
    }
    emit ended();
}

const std::vector<Message>& UnitComparer::notices() { return joined().notices; }

const Casebook& UnitComparer::casebook() {
    // What the document's own casebook has worked out need not be worked out again.
    return joined().source_of.empty() ? document_.casebook() : joined().casebook;
}

const RunRecord* UnitComparer::run(const RunId& run_uuid) { return casebook().run(run_uuid).get(); }

const RunAnalysis& UnitComparer::analysis(const RunId& run_uuid) { return *casebook().analysis(run_uuid); }

Result<std::vector<ReadingHistory>> UnitComparer::histories(const RunId& run_uuid) {
    std::vector<ReadingHistory> histories;
    for (const Reading& reading : run(run_uuid)->readings) {
        if (reading.version < 2) continue;
        // A copy of the logbook may have been worked on for longer: that of the version shown counts.
        const std::vector<ReadingVersion>* versions = nullptr;
        for (const OtherLogbook& other : logbooks_)
            if (const auto found = other.histories.find(reading.uuid); found != other.histories.end())
                if (found->second.size() == static_cast<std::size_t>(reading.version)) versions = &found->second;
        if (versions) {
            histories.push_back({reading.uuid, *versions});
            continue;
        }
        auto own = document_.history(reading.uuid);
        if (!own) return own.error();
        histories.push_back({reading.uuid, std::move(own).value()});
    }
    return histories;
}

} // namespace ullage
