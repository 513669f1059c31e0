// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "sources/source_link.h"

#include <QElapsedTimer>
#include <QSocketNotifier>

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

struct mosquitto;
struct mosquitto_message;

namespace ullage {

/// MQTT 3.1.1: subscribes the topics of the fields at quality of service 0 and publishes nothing. The library's socket is served by the event loop. A
/// topic is looked at every 15 ms at most; a message beyond the bound of payloads ends the connection.
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
    void connectTo(const std::string& host);
    bool makeClient();
    void serve();
    void judge(int outcome);
    void tell();
    void onConnect(int code);
    void onMessage(const mosquitto_message& message);

    std::string password_;
    std::map<std::string, Topic> topics_;
    std::vector<LiveField> fields_;
    mosquitto* client_ = nullptr;
    std::unique_ptr<QSocketNotifier> readable_, writable_;
    QTimer tend_timer_;
    std::vector<std::pair<TraceSample, bool>> came_; ///< within a call of the library, which may not be ended there
    int look_up_ = -1;
    QString ended_by_; ///< why the connection is to end, where that was found within a call of the library
    QString fault_;    ///< what the library said last of a fault
};

} // namespace ullage
