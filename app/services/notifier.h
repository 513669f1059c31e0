// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>
#include <memory>

namespace ullage {

/// Calls a person to the bench by the desktop's means. Injected, so that tests see what would have been said.
class Notifier {
public:
    virtual ~Notifier() = default;

    virtual void notify(const QString& title, const QString& text) = 0;
    virtual void sound() = 0;

    /// What happens when the person answers a notification by clicking it.
    void setClicked(std::function<void()> clicked) { clicked_ = std::move(clicked); }

protected:
    std::function<void()> clicked_;
};

/// A message at the desktop's tray where it has one; in any case the window asks for attention in the task bar.
class DesktopNotifier final : public Notifier {
public:
    DesktopNotifier();
    ~DesktopNotifier() override;

    void notify(const QString& title, const QString& text) override;
    void sound() override;

private:
    struct Tray;
    std::unique_ptr<Tray> tray_; ///< made at the first message, so that no icon stands there without reason
};

} // namespace ullage
