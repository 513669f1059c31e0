// SPDX-License-Identifier: GPL-3.0-or-later
// Here and not with the tests of core, since sanitizers bring an allocator of their own.
#include "base/large_pieces.h"

#include <gtest/gtest.h>

#include <malloc.h>

#include <cstdlib>
#include <vector>

namespace ullage::test {
namespace {

constexpr std::size_t mebibyte = 1 << 20;

TEST(LargePieces, serve_many_small_and_large_requests_without_asking_the_system_again) {
    take_memory_in_large_pieces();
    const auto before = ::mallinfo2();
    std::vector<void*> asked;
    for (int i = 0; i < 1'000; ++i) asked.push_back(std::malloc(4'000));
    asked.push_back(std::malloc(4 * mebibyte)); // what a window is painted in
    const auto after = ::mallinfo2();
    for (void* each : asked) std::free(each);
    EXPECT_EQ(after.arena, before.arena);
    EXPECT_EQ(after.hblkhd, before.hblkhd);
}

TEST(LargePieces, go_back_to_the_system_when_much_has_been_freed) {
    take_memory_in_large_pieces();
    const auto before = ::mallinfo2();
    std::vector<void*> asked;
    asked.reserve(10); // or it would grow above the others and hold them
    for (int i = 0; i < 10; ++i) asked.push_back(std::malloc(10 * mebibyte));
    EXPECT_GT(::mallinfo2().arena, before.arena + 60 * mebibyte);
    for (void* each : asked) std::free(each);
    EXPECT_LT(::mallinfo2().arena, before.arena + 40 * mebibyte);
}

} // namespace
} // namespace ullage::test
