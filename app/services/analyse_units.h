// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/ids.h"

#include <vector>

class QWidget;

namespace ullage {

class Document;

/// Has the document compute what these units say, and with `with_runs` each of their runs, beside `window`, which waits with progress and Cancel.
/// What is known already costs nothing. False where the person cancelled it.
[[nodiscard]] bool analyse_units_beside(Document& document, const std::vector<UnitId>& unit_uuids, bool with_runs, QWidget* window);

} // namespace ullage
