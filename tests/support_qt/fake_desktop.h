// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "services/awake.h"
#include "services/notifier.h"

#include <QStringList>

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

} // namespace ullage::test
