// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <string>

namespace ullage {

class LiveReader;
class Notifier;

/// Meters that are read live: how each is read, and reading it into the run that is shown. What happens in the night calls somebody.
class LiveController final : public Controller {
    Q_OBJECT
public:
    LiveController(const Workplace& at, LiveReader& reader, Notifier* notifier);

    /// The form of how the meter shown is read.
    void editSource();
    /// Reads the meter of a run live, after its password where its source has a user.
    void readLive(const RunId& run_uuid);

private:
    LiveReader& reader_;
};

} // namespace ullage
