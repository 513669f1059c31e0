// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_source.h"
#include "window/controller.h"
#include "window/desktop.h"

#include <optional>
#include <string>

namespace ullage {

class LiveReader;
class SourceForm;

/// Meters that are read live: how each is read, and reading it into the run that is shown. What happens in the night calls somebody. Passwords are
/// kept by the desktop where that is wished, and asked for else.
class LiveController final : public Controller {
    Q_OBJECT
public:
    LiveController(const Workplace& at, LiveReader& reader, const Desktop& desktop);

    /// The form of how the meter shown is read.
    void editSource();
    /// Reads the meter of a run live, after its password where its source has a user.
    void readLive(const RunId& run_uuid);

private:
    void resume(const RunId& run_uuid); ///< one that was read when the program ended, where its password is kept
    void start(const RunId& run_uuid, const QString& password);
    void askPassword(const RunId& run_uuid, const LiveSource& source, const QString& no_store);
    /// Has the desktop forget the password of a source, unless another meter is read with it.
    void forget(const LiveSource& source, SourceForm* form = nullptr);
    [[nodiscard]] std::optional<LiveSource> sourceOfMeter(const MeterId& meter_uuid) const;

    LiveReader& reader_;
    SecretStore* secrets_;
};

} // namespace ullage
