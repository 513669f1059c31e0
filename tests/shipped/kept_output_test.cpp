// SPDX-License-Identifier: GPL-3.0-or-later
// What every command says of the sample data, word for word and digit for digit as it was kept in tests/shipped/kept: no change of the house may
// change a figure. Where a figure is meant to change, ULLAGE_KEEP=1 writes the new output in its place, to be read before it is committed.
#include "shipped/shipped_fixture.h"

#include "support/source_dir.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <sstream>

namespace ullage::test {
namespace {

std::string kept_text(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// Whether two lines say the same: words letter for letter, numbers to nine digits, as the last ones depend on the processor that the mathematical
/// library was made for.
bool same_line(const std::string& a, const std::string& b) {
    const char *at = a.c_str(), *other = b.c_str();
    while (*at != 0 || *other != 0) {
        if (std::isdigit(static_cast<unsigned char>(*at)) && std::isdigit(static_cast<unsigned char>(*other))) {
            char *end = nullptr, *other_end = nullptr;
            const double x = std::strtod(at, &end), y = std::strtod(other, &other_end);
            if (std::abs(x - y) > 1e-9 * std::max(std::abs(x), 1e-3)) return false;
            at = end;
            other = other_end;
        } else if (*at++ != *other++) {
            return false;
        }
    }
    return true;
}

/// The first line that differs, of both.
std::string first_difference(const std::string& now, const std::string& kept) {
    std::istringstream now_lines(now), kept_lines(kept);
    for (;;) {
        std::string line, before;
        const bool more = static_cast<bool>(std::getline(now_lines, line)), more_kept = static_cast<bool>(std::getline(kept_lines, before));
        if (!more && !more_kept) return {};
        if (more != more_kept || !same_line(line, before)) return "now:  " + line + "\nkept: " + before;
    }
}

TEST_F(Shipped, says_of_the_sample_data_what_it_said_before) {
    const std::filesystem::path source = source_dir(), kept = source / "tests/shipped/kept";
    const std::string sheets = (source / "sample-data").string();
    const std::vector<std::pair<const char*, std::vector<std::string>>> outputs{
        {"analyse.txt", {"analyse", sheets}},
        {"compare.txt", {"compare", sheets}},
        {"compare-at-120-w.csv", {"compare", sheets, "--at-load", "120", "--format", "csv"}},
        {"compare-every-drain.json", {"compare", sheets, "--every-drain", "--format", "json"}},
        {"readings.csv", {"export-readings", sheets, "--format", "csv"}},
        {"intervals.csv", {"export-readings", sheets, "--intervals", "--format", "csv"}},
        {"size.txt", {"size", sheets, "--load-list", (source / "sample-data/load-lists/show-night.csv").string()}},
        {"pv-check.txt", {"pv-check", (source / "sample-data/pv-tarrow-2k-roof.txt").string()}},
    };
    for (const auto& [name, args] : outputs) {
        const std::string now = good(args).out;
        EXPECT_FALSE(now.empty()) << name;
        if (std::getenv("ULLAGE_KEEP") != nullptr) std::ofstream(kept / name, std::ios::binary) << now;
        EXPECT_EQ(first_difference(now, kept_text(kept / name)), "") << name;
    }
}

} // namespace
} // namespace ullage::test
