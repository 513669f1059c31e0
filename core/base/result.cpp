// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/result.h"

namespace ullage {

Message Error::message() const {
    Message said = where.empty() ? what : say_joined({where, what}, ": ");
    return remedy.empty() ? said : say_joined({said, remedy}, "; ");
}

std::string Error::sentence() const { return message().text(); }

Error within(Error error, const std::string& place) {
    error.where = error.where.empty() ? Message(place) : say_joined({place, error.where}, ", ");
    return error;
}

} // namespace ullage
