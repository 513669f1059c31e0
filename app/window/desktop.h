// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage {

class Inhibitor;
class Notifier;
class SecretStore;

/// What the window asks of the desktop; null where there is none to ask, as in most tests.
struct Desktop {
    Notifier* notifier = nullptr;
    Inhibitor* inhibitor = nullptr;
    SecretStore* secrets = nullptr;
    bool backups = false; ///< logbooks are copied automatically, where the settings say so
};

} // namespace ullage
