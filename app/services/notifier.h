// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>
#include <memory>

namespace ullage {

class NotificationService;

/// Calls a person to the bench by the desktop's means. Injected, so that tests see what would have been said.
class Notifier {
public:
    virtual ~Notifier() = default;

    enum class Sound { none, call };
    virtual void notify(const QString& title, const QString& text, Sound sound = Sound::none) = 0;

    /// What happens when the person answers a notification by clicking it.
    void setClicked(std::function<void()> clicked) { clicked_ = std::move(clicked); }

protected:
    std::function<void()> clicked_;
};

/// A message by the desktop's notification service (Desktop Notifications Specification 1.2), which stays until it is answered; where there is no
/// service, at the desktop's tray where it has one. In any case the window asks for attention in the task bar. The sound is the service's where it
/// has sounds, else the bell.
class DesktopNotifier final : public Notifier {
public:
    DesktopNotifier();
    ~DesktopNotifier() override;

    void notify(const QString& title, const QString& text, Sound sound = Sound::none) override;

private:
    void answered() const; ///< a notification was clicked
    void showAtTray(const QString& title, const QString& text);

    struct Tray;
    std::unique_ptr<Tray> tray_; ///< made at the first message, so that no icon stands there without reason
    std::unique_ptr<NotificationService> service_;
};

} // namespace ullage
