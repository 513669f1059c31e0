// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "services/awake.h"
#include "services/notifier.h"
#include "services/secret_store.h"

#include <QMap>
#include <QStringList>
#include <QTimer>

namespace ullage::test {

/// Keeps what would have been shown.
class FakeNotifier final : public Notifier {
public:
    void notify(const QString& title, const QString& text, Sound sound) override {
        titles << title;
        texts << text;
        sounds += sound == Sound::call ? 1 : 0;
    }
    void click() const { clicked_(); }

    QStringList titles, texts;
    int sounds = 0;
};

/// A desktop that offers to stay awake, or does not.
class FakeInhibitor final : public Inhibitor {
public:
    bool hold(const QString&) override {
        ++asked;
        held = offers;
        return offers;
    }
    void release() override { held = false; }

    bool offers = true, held = false;
    int asked = 0;
};

/// A store that answers by the event loop, or is not there.
class FakeSecretStore final : public SecretStore {
public:
    void find(const QString& key, Found found) override {
        answer([this, key, found = std::move(found)] {
            if (!there) found(missing());
            else found(kept.contains(key) ? std::optional(kept.value(key)) : std::nullopt);
        });
    }
    void keep(const QString& key, const QString& password, Done done) override {
        answer([this, key, password, done = std::move(done)] {
            if (there) kept[key] = password;
            done(there ? Result<void>() : Result<void>(missing()));
        });
    }
    void forget(const QString& key, Done done) override {
        answer([this, key, done = std::move(done)] {
            if (there) kept.remove(key);
            done(there ? Result<void>() : Result<void>(missing()));
        });
    }

    bool there = true;
    QMap<QString, QString> kept;

private:
    static Error missing() { return {Failure::io, "the desktop has no secret store", {}, {}}; }
    template <class Answer>
    void answer(Answer later) {
        QTimer::singleShot(0, &context_, std::move(later));
    }
    QObject context_;
};

} // namespace ullage::test
