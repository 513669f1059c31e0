// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/load_list.h"
#include "model/meter.h"
#include "model/photo.h"
#include "model/pv_sheet.h"
#include "model/reading.h"
#include "model/run.h"
#include "model/trace.h"
#include "model/unit.h"

#include <map>
#include <string>
#include <vector>

namespace ullage {

/// A record, and whether it is withdrawn.
template <class Thing>
struct KeptRecord {
    Thing record;
    bool withdrawn = false;
};

/// A meter with all that was ever stated of it; the last version is what stands.
struct KeptMeter {
    MeterId uuid;
    bool withdrawn = false;
    std::vector<MeterVersion> versions;
};

/// A run with all that belongs to it, withdrawn or not.
struct KeptRun {
    Run run;
    bool withdrawn = false;
    int number = 1;                ///< within its unit
    std::vector<Reading> readings; ///< in order of time
    std::vector<Photo> photos;
    std::vector<Trace> traces;
};

/// All that a logbook holds, withdrawn records too, without bytes of photos and samples of traces: what two logbooks are compared by.
struct WholeContent {
    std::vector<KeptRecord<Unit>> units;
    std::vector<KeptMeter> meters;
    std::vector<KeptRun> runs; ///< by unit and time
    std::vector<KeptRecord<LoadList>> load_lists;
    std::vector<KeptRecord<PvSheet>> pv_sheets;
    std::map<std::string, double> method; ///< what is stated of the method, by key
};

/// Records of one logbook that another is to take over as they are, by their identifiers.
struct RecordSelection {
    std::vector<UnitId> units;
    std::vector<MeterId> meters; ///< with their versions, and how they are read live
    std::vector<RunId> runs;     ///< with readings, photos and traces, and the versions of these
    std::vector<LoadListId> load_lists;
    std::vector<PvSheetId> pv_sheets; ///< without their unit where that is not there
    // Of runs that both logbooks have.
    std::vector<ReadingId> readings; ///< with their versions; they come after those that the run has
    std::vector<PhotoId> photos;     ///< with their versions
    /// With their samples, under a new identifier where it is given.
    std::vector<std::pair<TraceId, TraceId>> traces;
    // Of records that both have: the versions after those that are here, of which they are a continuation.
    std::vector<ReadingId> continued_readings;
    std::vector<MeterId> continued_meters;
    std::vector<PhotoId> continued_photos;
};

} // namespace ullage
