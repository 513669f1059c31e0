// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"

#include <boost/uuid/random_generator.hpp>
#include <boost/uuid/uuid_io.hpp>

namespace ullage {

std::string new_uuid() {
    thread_local boost::uuids::random_generator generator;
    return boost::uuids::to_string(generator());
}

} // namespace ullage
