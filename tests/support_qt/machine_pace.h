// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage::test {

/// How many times as long a fixed piece of work (strings made, sorted and counted) takes now as on the machine of resources/help/figures.md when
/// nothing else runs there; at least 1, at most 4. Limits on the window's turns are held as multiples of it, as another machine, or the same one
/// beside other work, may be half as fast.
[[nodiscard]] double machine_pace();

} // namespace ullage::test
