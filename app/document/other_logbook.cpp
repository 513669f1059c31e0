// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/other_logbook.h"

#include "store/logbook.h"
#include "style/words.h"

#include <QFile>

#include <utility>

namespace ullage {

Result<OtherLogbook> read_other_logbook(const QString& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    const auto logbook = Logbook::open(native_path(path), OpenMode::read_only, clock, cancelled);
    if (!logbook) return logbook.error();
    auto records = logbook.value().run_records();
    if (!records) return records.error();
    OtherLogbook other{path, {}, {}, {}};
    for (RunRecord& record : records.value()) {
        for (const Reading& reading : record.readings) {
            if (reading.version < 2) continue;
            auto versions = logbook.value().history(reading.uuid);
            if (!versions) return versions.error();
            other.histories.emplace(reading.uuid, std::move(versions).value());
        }
        other.runs.push_back(std::make_shared<const RunRecord>(std::move(record)));
    }
    return other;
}

} // namespace ullage
