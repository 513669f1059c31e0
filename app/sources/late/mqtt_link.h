// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/mqtt_packets.h"
#include "sources/late/address_walk.h"
#include "sources/source_link.h"

#include <QElapsedTimer>
#include <QSslSocket>

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace ullage {

/// MQTT 3.1.1: subscribes the topics of the fields at quality of service 0 and publishes nothing. Of the addresses of the broker's name the first one
/// counts that answers as a broker. A certificate is held against the name that was typed, whatever address answers. A topic is looked at every 15 ms
/// at most; a message beyond the bound of payloads ends the connection before it has come.
class MqttLink final : public SourceLink {
    Q_OBJECT
public:
    MqttLink(const LiveSource& source, const QString& password);
    ~MqttLink() override;

protected:
    void open() override;
    void close() override;

private:
    struct Topic {
        std::vector<const LiveField*> fields;
        QElapsedTimer looked_at;
    };
    void connectTo(const QString& address);
    void introduce();
    void take();
    void takePacket(const MqttPacket& packet);
    void takeAnswer(const MqttPacket& packet);
    void takeMessage(const MqttPacket& packet);
    void tend();
    [[nodiscard]] QString socketTrouble() const;
    void lose(const QString& why);
    void drop();
    void send(std::string_view bytes);

    std::string password_;
    std::map<std::string, Topic> topics_;
    std::vector<LiveField> fields_;
    AddressWalk walk_;
    std::unique_ptr<QSslSocket> socket_;
    MqttCutter cutter_;
    QTimer tend_timer_, go_on_;
    bool pinged_ = false;              ///< and nothing has come since
    bool certificate_refused_ = false; ///< of an address of this walk
};

} // namespace ullage
