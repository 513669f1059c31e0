// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QAccessibleInterface;

namespace ullage {

class VesselRow;

/// A row of vessels as the accessibility tree shows it: a chart with a part for each vessel, which has its place, tells its facts and can be pressed.
[[nodiscard]] QAccessibleInterface* face_of_vessels(VesselRow& row);

/// Tells the tree which vessel the keys are at, where the row has the keyboard.
void speak_vessel(VesselRow& row);

} // namespace ullage
