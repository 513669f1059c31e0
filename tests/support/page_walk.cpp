// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/page_walk.h"

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdint>
#include <cstdlib>
#include <sys/mman.h>
#include <unistd.h>
#include <vector>

namespace ullage::test {

namespace {

struct Pages {
    std::uintptr_t begin, end;
};
std::vector<Pages> watched;
// Several places are read side by side, and one instruction may need two pages of each.
std::array<std::uintptr_t, 8> open_pages{};
std::size_t oldest = 0;
long moved = 0;
struct sigaction before {};

std::uintptr_t page_bytes() { return static_cast<std::uintptr_t>(::sysconf(_SC_PAGESIZE)); }

void protect(std::uintptr_t page, int how) { ::mprotect(reinterpret_cast<void*>(page), page_bytes(), how); }

void page_wanted(int, siginfo_t* what, void*) {
    const auto place = reinterpret_cast<std::uintptr_t>(what->si_addr);
    const bool ours = std::ranges::any_of(watched, [place](const Pages& pages) { return pages.begin <= place && place < pages.end; });
    // A fault of the program itself comes again where it was handled before.
    if (!ours) {
        ::sigaction(SIGSEGV, &before, nullptr);
        return;
    }
    if (open_pages[oldest] != 0) protect(open_pages[oldest], PROT_NONE);
    open_pages[oldest] = place / page_bytes() * page_bytes();
    protect(open_pages[oldest], PROT_READ | PROT_WRITE);
    oldest = (oldest + 1) % open_pages.size();
    ++moved;
}

} // namespace

PageWalk::PageWalk(std::span<const std::span<const std::byte>> places) {
    watched.clear();
    open_pages = {};
    moved = 0;
    for (const auto& place : places) {
        const auto begin = reinterpret_cast<std::uintptr_t>(place.data()), end = begin + place.size();
        const Pages whole{(begin + page_bytes() - 1) / page_bytes() * page_bytes(), end / page_bytes() * page_bytes()};
        if (whole.begin < whole.end) watched.push_back(whole);
    }
    struct sigaction ours {};
    ours.sa_sigaction = page_wanted;
    ours.sa_flags = SA_SIGINFO | SA_NODEFER;
    ::sigaction(SIGSEGV, &ours, &before);
    for (const Pages& pages : watched)
        for (std::uintptr_t page = pages.begin; page < pages.end; page += page_bytes()) protect(page, PROT_NONE);
}

PageWalk::~PageWalk() {
    for (const Pages& pages : watched)
        for (std::uintptr_t page = pages.begin; page < pages.end; page += page_bytes()) protect(page, PROT_READ | PROT_WRITE);
    ::sigaction(SIGSEGV, &before, nullptr);
}

long PageWalk::pages() const {
    long sum = 0;
    for (const Pages& each : watched) sum += static_cast<long>((each.end - each.begin) / page_bytes());
    return sum;
}

long PageWalk::moves() const { return moved; }

} // namespace ullage::test
