// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage {

/// For a program with a window, to be called once before anything large is made. A window that is made and painted touches some thousand pages of
/// memory for the first time, each of which the system otherwise has to give singly: from here on memory is asked for in large pieces, and where the
/// system can it gives the first of them in pages of 2 MiB (madvise(2), MADV_HUGEPAGE). Buffers of pictures come from such pieces too. What is freed
/// at the top of the heap goes back to the system once it is more than two pieces.
void take_memory_in_large_pieces();

} // namespace ullage
