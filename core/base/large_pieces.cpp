// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/large_pieces.h"

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <cstdlib>

namespace ullage {

void take_memory_in_large_pieces() {
    constexpr int mebibyte = 1 << 20;
    constexpr int piece = 16 * mebibyte;
    // Where only one of the three is set, glibc stops adapting the others.
    ::mallopt(M_TOP_PAD, piece);
    ::mallopt(M_TRIM_THRESHOLD, 2 * piece);
    ::mallopt(M_MMAP_THRESHOLD, 32 * mebibyte); // the most that glibc would adapt it to

    const auto top = [] { return reinterpret_cast<std::uintptr_t>(::sbrk(0)); };
    const auto page = static_cast<std::uintptr_t>(::sysconf(_SC_PAGESIZE));
    const std::uintptr_t begin = (top() + page - 1) / page * page;
    void* volatile asked = std::malloc(mebibyte); // more than is left: the first piece is taken
    std::free(asked);
    const std::uintptr_t end = top();
    // An advice: where it cannot be followed nothing is lost.
    if (end > begin) (void)::madvise(reinterpret_cast<void*>(begin), end - begin, MADV_HUGEPAGE);
}

} // namespace ullage
