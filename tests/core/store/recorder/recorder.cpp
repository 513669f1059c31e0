// SPDX-License-Identifier: GPL-3.0-or-later
// A process that the tests of the store kill, or that keeps a logbook open for them.
//   ullage_recorder record FILE RUN N   records readings; after each has returned, prints its uuid
//   ullage_recorder settled FILE RUN N  as record, but prints a uuid only once it is in the file itself
//   ullage_recorder attach FILE RUN N   adds waiting photos; after each has returned, prints its uuid
//   ullage_recorder backup FILE FOLDER N  makes a copy of the file in the folder, prints its name
//   ullage_recorder hold FILE           opens the file for recording, prints "open", waits for the end of its input
// All but hold kill themselves in their N-th action on the disk, opening included, so that a failure can be repeated; N = 0: never.
#include "base/clock.h"
#include "core/store/faulty_disk.h"
#include "store/backup.h"
#include "store/logbook.h"
#include "support/photo_bytes.h"

#include <string>
#include <unistd.h>

namespace {

// One write call a line, so that a kill leaves no half line.
bool say(const std::string& line) {
    const std::string text = line + "\n";
    return ::write(STDOUT_FILENO, text.data(), text.size()) == static_cast<ssize_t>(text.size());
}

} // namespace

int main(int count, char** words) {
    using namespace ullage;
    const SystemClock clock;
    const std::string task = count > 2 ? words[1] : "";
    if (task.empty()) return 2;
    test::FaultyDisk disk;
    if (count > 4 && std::stol(words[4]) > 0) disk.kill_at(std::stol(words[4]));
    if (task == "backup" && count > 4) {
        const auto copied = back_up(words[2], {words[3], 30}, clock);
        return say(copied ? copied.value().copy.value_or("nothing").string() : copied.error().sentence()) && copied ? 0 : 1;
    }
    auto logbook = Logbook::open(words[2], OpenMode::record, clock);
    if (!logbook) {
        say(logbook.error().sentence());
        return 1;
    }
    if (task == "hold") {
        say("open");
        char byte = 0;
        while (::read(STDIN_FILENO, &byte, 1) > 0) {}
        return 0;
    }
    for (; count > 4 && task == "attach";) {
        const auto photo = logbook.value().add_photo(RunId(words[3]), {}, {"display.jpg", test::bare_jpeg(8, 8, 100'000), {}});
        if (!photo || !say(photo.value().uuid.text())) return 1;
    }
    for (long i = 0; count > 4; ++i) {
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.register_wh = static_cast<double>(i);
        values.remark = std::string(200, 'r');
        const auto reading = logbook.value().record(RunId(words[3]), values);
        while (task == "settled" && !logbook.value().settled())
            if (!logbook.value().settle()) return 1;
        if (!reading || !say(reading.value().uuid.text())) return 1;
    }
    return 2;
}
