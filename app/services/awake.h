// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <memory>

namespace ullage {

/// Keeps the machine from going to sleep. Injected, so that tests need no desktop.
class Inhibitor {
public:
    virtual ~Inhibitor() = default;
    /// Holds the machine awake until release(); `why` is shown by desktops that list the reasons. False where none offers that.
    virtual bool hold(const QString& why) = 0;
    virtual void release() = 0;
};

/// Asks by D-Bus, in this order: the login manager (org.freedesktop.login1.Manager.Inhibit, "sleep:idle"), then in the session
/// org.freedesktop.PowerManagement.Inhibit and org.freedesktop.ScreenSaver. Each is given a second to answer. Released at the latest with the object.
class DesktopInhibitor final : public Inhibitor {
public:
    DesktopInhibitor();
    ~DesktopInhibitor() override;

    bool hold(const QString& why) override;
    void release() override;

private:
    struct Held;
    std::unique_ptr<Held> held_;
};

/// Holds the machine awake while that is wanted, asking once each time it becomes wanted.
class Awake {
public:
    enum class State { not_wanted, held, not_offered };

    /// Null: there is no desktop to ask, and none is asked. The inhibitor must outlive this.
    explicit Awake(Inhibitor* inhibitor) : inhibitor_(inhibitor) {}
    ~Awake() { setWanted(false); }
    Awake(const Awake&) = delete;
    Awake& operator=(const Awake&) = delete;

    void setWanted(bool wanted);
    [[nodiscard]] State state() const { return state_; }
    /// The state for the status line; empty while nothing is wanted.
    [[nodiscard]] QString words() const;

private:
    Inhibitor* inhibitor_;
    State state_ = State::not_wanted;
};

} // namespace ullage
