// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QStringList>

#include <string>

namespace ullage {

/// What is told of one meter beside its row in the table, a sentence a line.
struct MeterStory {
    QString certificate;   ///< class, range, certificate and points; empty where nothing of it is stated
    QString runs;          ///< which runs it measured
    QString moved;         ///< what the last edit of its data did to their results; empty without an edit
    QStringList history;   ///< a line a version, the newest first
    QStringList in_series; ///< what it said beside other meters, load by load
};

/// Empty where the logbook has no such meter. The last edit is worked out where the meter's runs have no more than 20,000 readings together, else the
/// story says that it is not.
[[nodiscard]] MeterStory meter_story(const Document& document, const MeterId& meter_uuid);

} // namespace ullage
