// SPDX-License-Identifier: GPL-3.0-or-later
// The other one. With NAME set it defines a class of that name instead, and all is well.
#include <vector>

#ifndef NAME
#define NAME TwiceDefined
#endif

namespace ullage::test {
class NAME {
public:
    int count = 0;
    std::vector<double> values;
};
} // namespace ullage::test

long second(long count) {
    ullage::test::NAME curve;
    curve.values.resize(static_cast<std::size_t>(count));
    return static_cast<long>(curve.values.size());
}
