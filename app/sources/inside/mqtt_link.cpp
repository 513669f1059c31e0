// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/inside/mqtt_link.h"

#include "live/payload_number.h"
#include "style/words.h"

#include <QHostInfo>

#include <mosquitto.h>

#include <cerrno>
#include <cstring>
#include <utility>

namespace ullage {

namespace {

constexpr int keep_alive_s = 20;
constexpr int tend_every_ms = 500;
constexpr int packets_at_once = 200; ///< then the event loop has its turn
constexpr qint64 look_every_ms = 15;

/// The library is set up once for the process.
void prepare_library() {
    static const struct Library {
        Library() { mosquitto_lib_init(); }
        ~Library() { mosquitto_lib_cleanup(); }
        Library(const Library&) = delete;
        Library& operator=(const Library&) = delete;
    } library;
}

} // namespace

MqttLink::MqttLink(const LiveSource& source, const QString& password) : SourceLink(source), password_(utf8_of(password)), fields_(source.fields) {
    for (const LiveField& field : fields_) topics_[field.place].fields.push_back(&field);
    tend_timer_.setInterval(tend_every_ms);
    connect(&tend_timer_, &QTimer::timeout, this, [this] {
        if (client_) judge(mosquitto_loop_misc(client_));
        serve();
    });
}

MqttLink::~MqttLink() { close(); }

void MqttLink::open() {
    close();
    const auto host = raw_text(source().peer().host);
    // The library looks a name up while everybody waits: it is asked for here first, so that it is known by then.
    look_up_ = QHostInfo::lookupHost(host, this, [this](const QHostInfo& info) {
        look_up_ = -1;
        if (info.addresses().isEmpty()) {
            fail(info.errorString());
            return;
        }
        // A certificate is held against the name.
        connectTo(source().tls ? source().peer().host : utf8_of(info.addresses().constFirst().toString()));
    });
}

bool MqttLink::makeClient() {
    prepare_library();
    client_ = mosquitto_new(nullptr, true, this);
    if (!client_) return false;
    (void)mosquitto_int_option(client_, MOSQ_OPT_PROTOCOL_VERSION, MQTT_PROTOCOL_V311);
    mosquitto_connect_callback_set(client_, [](mosquitto*, void* link, int code) { static_cast<MqttLink*>(link)->onConnect(code); });
    mosquitto_message_callback_set(
        client_, [](mosquitto*, void* link, const mosquitto_message* message) { static_cast<MqttLink*>(link)->onMessage(*message); });
    mosquitto_log_callback_set(client_, [](mosquitto*, void* link, int level, const char* words) {
        if (level == MOSQ_LOG_ERR) static_cast<MqttLink*>(link)->fault_ = QString::fromUtf8(words);
    });
    fault_.clear();
    if (!source().user.empty() &&
        mosquitto_username_pw_set(client_, source().user.c_str(), password_.empty() ? nullptr : password_.c_str()) != MOSQ_ERR_SUCCESS)
        return false;
    // The authorities are those that this system trusts. The library then holds certificate and host name against them.
    return !source().tls || mosquitto_int_option(client_, MOSQ_OPT_TLS_USE_OS_CERTS, 1) == MOSQ_ERR_SUCCESS;
}

void MqttLink::connectTo(const std::string& host) {
    if (!makeClient()) {
        fail(tr("the connection to the broker cannot be prepared"));
        return;
    }
    const int outcome = mosquitto_connect_async(client_, host.c_str(), source().peer().port, keep_alive_s);
    if (outcome != MOSQ_ERR_SUCCESS) {
        judge(outcome);
        return;
    }
    const int descriptor = mosquitto_socket(client_);
    readable_ = std::make_unique<QSocketNotifier>(descriptor, QSocketNotifier::Read);
    writable_ = std::make_unique<QSocketNotifier>(descriptor, QSocketNotifier::Write);
    connect(readable_.get(), &QSocketNotifier::activated, this, [this] {
        if (!client_) return;
        const int read = mosquitto_loop_read(client_, packets_at_once);
        tell();
        if (client_) judge(read);
        serve();
    });
    connect(writable_.get(), &QSocketNotifier::activated, this, [this] { serve(); });
    tend_timer_.start();
}

void MqttLink::serve() {
    if (!client_ || !writable_) return;
    judge(mosquitto_loop_write(client_, packets_at_once));
    if (client_ && writable_) writable_->setEnabled(mosquitto_want_write(client_));
}

void MqttLink::judge(int outcome) {
    if (outcome == MOSQ_ERR_SUCCESS && ended_by_.isEmpty()) return;
    QString why = std::exchange(ended_by_, {});
    if (why.isEmpty() && outcome == MOSQ_ERR_TLS)
        why = tr("no secured connection (%1): the certificate has expired, is for another host name or comes from an authority that this machine "
                 "does not trust, or the broker does not speak TLS at this port")
                  .arg(fault_.simplified());
    if (why.isEmpty()) why = QString::fromUtf8(outcome == MOSQ_ERR_ERRNO ? strerror(errno) : mosquitto_strerror(outcome));
    fail(why);
}

void MqttLink::onConnect(int code) {
    if (code != 0) {
        ended_by_ = tr("the broker refuses: %1").arg(QString::fromUtf8(mosquitto_connack_string(code)));
        return;
    }
    for (const auto& [topic, looked] : topics_) (void)mosquitto_subscribe(client_, nullptr, topic.c_str(), 0);
    emit connected();
}

void MqttLink::onMessage(const mosquitto_message& message) {
    const auto found = topics_.find(message.topic);
    if (found == topics_.end()) return;
    if (message.payloadlen < 0 || static_cast<std::size_t>(message.payloadlen) > most_payload_bytes) {
        misunderstand();
        ended_by_ = tr("a message of %1 MB came; those of a meter are short").arg(message.payloadlen / 1'000'000);
        return;
    }
    Topic& topic = found->second;
    if (topic.looked_at.isValid() && topic.looked_at.elapsed() < look_every_ms) return;
    topic.looked_at.start();
    const auto numbers = numbers_in({static_cast<const char*>(message.payload), static_cast<std::size_t>(message.payloadlen)}, topic.fields);
    TraceSample sample;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (numbers[i]) put(sample, *topic.fields[i], numbers[i]);
    if (!saysAnything(sample)) {
        misunderstand();
        return;
    }
    came_.emplace_back(sample, message.retain);
}

void MqttLink::tell() {
    for (const auto& [sample, retained] : std::exchange(came_, {})) {
        if (!client_) return; // whoever heard the one before has had enough
        workWell();
        emit values(sample, retained);
    }
}

void MqttLink::close() {
    if (look_up_ >= 0) QHostInfo::abortHostLookup(std::exchange(look_up_, -1));
    tend_timer_.stop();
    for (auto* notifier : {&readable_, &writable_})
        if (*notifier) {
            (*notifier)->setEnabled(false);
            notifier->release()->deleteLater(); // it may be the one whose signal has led here
        }
    if (!client_) return;
    (void)mosquitto_disconnect(client_);
    (void)mosquitto_loop_write(client_, 1);
    mosquitto_destroy(std::exchange(client_, nullptr));
}

} // namespace ullage
