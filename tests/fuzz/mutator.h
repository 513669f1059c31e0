// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace ullage::test {

/// Spoils texts (bytes, lines, fields and numbers) and binary files. The same seed gives the same inputs everywhere.
class Mutator {
public:
    Mutator(std::vector<std::string> corpus, std::uint64_t seed) : corpus_(std::move(corpus)), random_(seed) {}

    /// A text of the corpus (or the one given back last, so that changes pile up) after one to eight changes; never longer than 200 kB.
    std::string next();
    /// The same for what is no text: bits, bytes, numbers of two and four bytes, stretches.
    std::string next_bytes();
    /// 0 to below - 1. Precondition: below > 0.
    std::size_t pick(std::size_t below) { return static_cast<std::size_t>(random_() % below); }

private:
    void change(std::string& text);
    void change_bytes(std::string& bytes);
    template <class Change>
    std::string changed(Change change);
    std::size_t place(const std::string& text) { return text.empty() ? 0 : pick(text.size()); }

    std::vector<std::string> corpus_;
    std::mt19937_64 random_;
    std::string last_;
};

} // namespace ullage::test
