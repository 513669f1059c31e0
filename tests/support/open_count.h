// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/logbook.h"
#include "support/fake_clock.h"

#include <gtest/gtest.h>

#include <string>
#include <sys/inotify.h>
#include <unistd.h>

namespace ullage::test {

/// How often a file is opened, by whatever means, while `action` runs; -1 where the system cannot tell.
template <class Action>
long times_opened(const std::string& path, const Action& action) {
    const int watch = ::inotify_init1(IN_NONBLOCK | IN_CLOEXEC);
    if (watch < 0 || ::inotify_add_watch(watch, path.c_str(), IN_OPEN | IN_CLOSE) < 0) return -1;
    action();
    long opened = 0;
    alignas(inotify_event) char bytes[4096];
    // Two equal events in a row count once, so closing is watched too.
    for (ssize_t length = ::read(watch, bytes, sizeof bytes); length > 0; length = ::read(watch, bytes, sizeof bytes))
        for (ssize_t at = 0; at < length;) {
            const auto* event = reinterpret_cast<const inotify_event*>(bytes + at);
            if (event->mask & IN_OPEN) ++opened;
            at += static_cast<ssize_t>(sizeof(inotify_event)) + event->len;
        }
    ::close(watch);
    return opened;
}

/// How often opening `path` for looking opens the file.
inline long times_opened_to_look(const std::string& path) {
    return times_opened(path, [&] {
        const FakeClock clock;
        EXPECT_TRUE(Logbook::open(path, OpenMode::read_only, clock).ok());
    });
}

} // namespace ullage::test
