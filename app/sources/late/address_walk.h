// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/live_source.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>

#include <map>

namespace ullage {

/// The addresses of a peer over the network, given out in turn until one answers. Its name is looked up beside the window, which goes on meanwhile;
/// an address that was typed is taken as it is.
class AddressWalk final : public QObject {
    Q_OBJECT
public:
    static constexpr int answer_within_ms = 10'000; ///< else the next address has its turn
    static constexpr int most_addresses = 16;       ///< of a name

    AddressWalk();
    ~AddressWalk() override;
    /// Begins anew.
    void begin(const LiveSource::Peer& peer);
    /// The address that was given out last has answered; no other follows.
    void answered() { stop(); }
    /// It has not, and why: the next one follows when the event loop turns. Does nothing unless waits().
    void fell(const QString& why);
    void stop();
    /// An address is given out, and neither has it answered nor fallen.
    [[nodiscard]] bool waits() const { return patience_.isActive(); }

signals:
    void tried(const QString& address);
    /// None is left. `why` names host and port, and says of each address what happened there; what to do is not in it.
    void exhausted(const QString& why);
    /// The name has no address; `why` says what to do.
    void unknown(const QString& why);

private:
    void goOn();
    [[nodiscard]] QString story() const;

    LiveSource::Peer peer_;
    QStringList addresses_;             ///< still to be tried
    QString address_;                   ///< given out
    std::map<QString, QString> fallen_; ///< by address, so that the order in which a server of names tells them makes no news
    QTimer patience_, next_;
    int look_up_ = -1;
};

} // namespace ullage
