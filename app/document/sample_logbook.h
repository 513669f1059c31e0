// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <QString>

namespace ullage {

class Document;

/// Opens the sample logbook at `path`. Where there is none yet it is made from the invented run sheets and load lists that come with the
/// program, and the undo stack starts empty. Errors: as Document::create, open and import.
Result<void> open_sample_logbook(Document& document, const QString& path);

} // namespace ullage
