// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/late_part.h"

#include <dlfcn.h>
#include <fcntl.h>

#include <cerrno>
#include <mutex>
#include <string>
#include <system_error>

namespace ullage {

namespace {

struct Held {
    int descriptor = -1;
    std::string path; ///< where it lay
    bool loaded = false;
    std::mutex mutex;
};

Held& held() {
    static Held only;
    return only;
}

Message remedy() { return say(phrase("base", "install Ullage anew, all its files together")); }

} // namespace

Result<void> hold_late_part(const std::vector<std::filesystem::path>& places) {
    const std::lock_guard lock(held().mutex);
    for (const std::filesystem::path& place : places) {
        held().descriptor = ::open(place.c_str(), O_RDONLY | O_CLOEXEC);
        held().path = place.string();
        if (held().descriptor >= 0) return {};
        if (errno != ENOENT)
            return Error{Failure::io, say(phrase("base", "a part of the program cannot be opened (%1)"), std::generic_category().message(errno)),
                         held().path, remedy()};
    }
    return Error{Failure::not_found, say(phrase("base", "a part of the program is missing")), places.front().string(), remedy()};
}

Error other_late_part() {
    const std::lock_guard lock(held().mutex);
    return {Failure::damaged, say(phrase("base", "a part of the program is of another version")), held().path, remedy()};
}

Result<void> load_late_part() {
    const std::lock_guard lock(held().mutex);
    if (held().loaded || held().descriptor < 0) return {};
    // By its descriptor, as another file may lie at its path by now.
    const std::string file = "/proc/self/fd/" + std::to_string(held().descriptor);
    if (!::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL | RTLD_NODELETE)) {
        const char* const why = ::dlerror();
        return Error{Failure::damaged, say(phrase("base", "a part of the program cannot be loaded (%1)"), why ? why : "?"), held().path, remedy()};
    }
    held().loaded = true;
    return {};
}

} // namespace ullage
