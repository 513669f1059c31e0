// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "model/meter.h"
#include "model/unit.h"

namespace ullage::store {

/// Whether a unit that comes in may be taken for the known one of the same name and maker: every claim that
/// it states must equal the known one; what it leaves unstated agrees. A remark and the tags are no claims. Error: refused,
/// naming the first difference with both values.
[[nodiscard]] Result<void> agrees(const Unit& known, const Unit& incoming);

/// The same for meters of one name; a correction of 1 counts as not stated, since run sheets carry none.
[[nodiscard]] Result<void> agrees(const Meter& known, const Meter& incoming);

} // namespace ullage::store
