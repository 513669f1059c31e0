// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "live/live_source.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>

namespace ullage {

/// Keeps passwords where the desktop keeps them, so that no logbook and no file of ours holds one. Injected, so that tests see what is kept. Each
/// answer comes later, by the event loop, as the desktop may ask somebody to unlock its store.
class SecretStore {
public:
    virtual ~SecretStore() = default;

    /// The password, or nothing where none is kept. Error (io): the desktop has no store, or keeps it locked.
    using Found = std::function<void(const Result<std::optional<QString>>& found)>;
    using Done = std::function<void(const Result<void>& done)>;

    virtual void find(const QString& key, Found found) = 0;
    virtual void keep(const QString& key, const QString& password, Done done) = 0;
    virtual void forget(const QString& key, Done done) = 0; ///< one that is not kept is good
};

/// Under what the password of a source is kept: its kind, user and address.
[[nodiscard]] QString secret_key(const LiveSource& source);

/// The desktop's own store: the Secret Service of freedesktop.org or the wallet of the desktop, by QtKeychain.
class DesktopSecretStore final : public SecretStore {
public:
    void find(const QString& key, Found found) override;
    void keep(const QString& key, const QString& password, Done done) override;
    void forget(const QString& key, Done done) override;

private:
    QObject waiting_; ///< answers end with it
};

} // namespace ullage
