// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"

#include <boost/uuid/random_generator.hpp>
#include <boost/uuid/uuid_io.hpp>

#include <algorithm>

namespace ullage {

std::string new_uuid() {
    thread_local boost::uuids::random_generator generator;
    return boost::uuids::to_string(generator());
}

std::vector<Uuid> sorted_uuids(std::size_t count) {
    // Asks the system for randomness once, to begin with, instead of for each of them.
    boost::uuids::random_generator_mt19937 generator;
    std::vector<Uuid> uuids(count);
    for (Uuid& uuid : uuids) {
        const boost::uuids::uuid made = generator();
        std::copy(made.begin(), made.end(), uuid.begin());
    }
    std::sort(uuids.begin(), uuids.end());
    return uuids;
}

std::string uuid_text(const Uuid& uuid) {
    boost::uuids::uuid whole;
    std::copy(uuid.begin(), uuid.end(), whole.begin());
    return boost::uuids::to_string(whole);
}

} // namespace ullage
