// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>

namespace ullage::test {

/// Counts how often whoever reads some places in memory goes on to another page of them: what goes through them from one end to the other does so
/// once a page, what searches them for each of its answers a page's worth of times more. Whole pages alone are counted, so the places must be
/// longer than a few. One walk at a time, in one thread.
class PageWalk {
public:
    explicit PageWalk(std::span<const std::span<const std::byte>> places);
    ~PageWalk();
    PageWalk(const PageWalk&) = delete;
    PageWalk& operator=(const PageWalk&) = delete;

    [[nodiscard]] long pages() const; ///< in all these places together
    [[nodiscard]] long moves() const; ///< to a page that was not one of the last few
};

} // namespace ullage::test
