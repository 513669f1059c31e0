// SPDX-License-Identifier: GPL-3.0-or-later
// One of two files that define a class of one name, for the test of check.sh.
#include <vector>

namespace ullage::test {
struct TwiceDefined {
    std::vector<long> times;
    std::vector<double> values;
};
} // namespace ullage::test

long first(long count) {
    ullage::test::TwiceDefined curve;
    curve.times.resize(static_cast<std::size_t>(count));
    return static_cast<long>(curve.times.size());
}
