// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/mqtt_link.h"

#include "live/payload_number.h"
#include "sources/late/peer_words.h"
#include "style/clauses.h"
#include "style/words.h"

#include <QHostAddress>
#include <QNetworkProxy>
#include <QSslError>

#include <utility>

namespace ullage {

namespace {

constexpr int keep_alive_s = 40; ///< the broker ends a connection without a word after one and a half of it
constexpr int tend_every_ms = 20'000;
constexpr int packets_at_once = 200; ///< then the event loop has its turn
constexpr qint64 bytes_at_once = 65'536;
constexpr qint64 look_every_ms = 15;
constexpr std::size_t most_packet_bytes = most_payload_bytes + longest_mqtt_text;

} // namespace

MqttLink::MqttLink(const LiveSource& source, const QString& password)
    : SourceLink(source), password_(utf8_of(password)), fields_(source.fields), cutter_(most_packet_bytes) {
    for (const LiveField& field : fields_) topics_[field.place].fields.push_back(&field);
    connect(&walk_, &AddressWalk::tried, this, &MqttLink::connectTo);
    connect(&walk_, &AddressWalk::unknown, this, &MqttLink::fail);
    connect(&walk_, &AddressWalk::exhausted, this, [this](const QString& why) {
        const QString remedy = certificate_refused_ ? mend_certificate()
                               : this->source().tls ? tr("check that the broker runs, its host and port, and that it speaks TLS there")
                                                    : tr("check that the broker runs, its host and port, and whether it asks for TLS");
        fail(joined_clauses({why, remedy}));
    });
    tend_timer_.setInterval(tend_every_ms);
    connect(&tend_timer_, &QTimer::timeout, this, &MqttLink::tend);
    go_on_.setSingleShot(true);
    go_on_.setInterval(0);
    connect(&go_on_, &QTimer::timeout, this, &MqttLink::take);
}

MqttLink::~MqttLink() { close(); }

void MqttLink::open() {
    close();
    if (password_.size() > longest_mqtt_text) {
        fail(tr("the password is longer than MQTT can say; enter a shorter one"));
        return;
    }
    certificate_refused_ = false;
    walk_.begin(source().peer());
}

void MqttLink::connectTo(const QString& address) {
    drop();
    cutter_ = MqttCutter(most_packet_bytes);
    socket_ = std::make_unique<QSslSocket>();
    QSslSocket* const socket = socket_.get();
    socket->setProxy(QNetworkProxy(QNetworkProxy::NoProxy));
    socket->setReadBufferSize(bytes_at_once);
    connect(socket, &QSslSocket::errorOccurred, this, [this] { lose(socketTrouble()); });
    connect(socket, &QSslSocket::readyRead, this, &MqttLink::take);
    const auto port = static_cast<quint16>(source().peer().port);
    if (!source().tls) {
        connect(socket, &QSslSocket::connected, this, &MqttLink::introduce);
        socket->connectToHost(address, port);
        return;
    }
    connect(socket, &QSslSocket::encrypted, this, &MqttLink::introduce);
    socket->setPeerVerifyMode(QSslSocket::VerifyPeer);
    // The broker is told the name that was typed, and its certificate is held against that name, not against the address.
    socket->connectToHostEncrypted(address, port, raw_text(source().peer().host));
}

void MqttLink::introduce() { send(mqtt_connect(source().user, password_, keep_alive_s)); }

void MqttLink::take() {
    for (int i = 0; i < packets_at_once; ++i) {
        if (!socket_) return; // lost, or whoever heard the one before has had enough
        if (const auto packet = cutter_.next()) {
            takePacket(*packet);
        } else if (cutter_.state() == MqttCutter::State::too_long) {
            misunderstand();
            lose(tr("a message of %1 MB came; those of a meter are short").arg(cutter_.announced_bytes() / 1'000'000));
        } else if (cutter_.state() == MqttCutter::State::broken) {
            lose(tr("what came is not MQTT 3.1.1"));
        } else if (const QByteArray bytes = socket_->read(bytes_at_once); !bytes.isEmpty()) {
            cutter_.take({bytes.constData(), static_cast<std::size_t>(bytes.size())});
        } else {
            return;
        }
    }
    go_on_.start();
}

void MqttLink::takePacket(const MqttPacket& packet) {
    pinged_ = false;
    const bool answer = packet.kind == MqttPacket::Kind::connected;
    if (answer != walk_.waits()) lose(tr("what came is not MQTT 3.1.1"));
    else if (answer) takeAnswer(packet);
    else if (packet.kind == MqttPacket::Kind::message) takeMessage(packet);
    else if (packet.kind == MqttPacket::Kind::subscribed && packet.given) emit connected();
    else if (packet.kind == MqttPacket::Kind::subscribed)
        fail(tr("the broker gives none of these topics to this user; check the topics, the user and its rights"));
}

void MqttLink::takeAnswer(const MqttPacket& packet) {
    // MQTT 3.1.1, 3.2.2.3.
    const auto words = [&packet] {
        switch (packet.refusal) {
        case 1: return tr("it does not speak MQTT 3.1.1");
        case 2: return tr("it takes nobody without a client name of their own");
        case 3: return tr("its service is not available now");
        case 4:
        case 5: return tr("user or password is wrong, or this user may not read there");
        default: return tr("code %1").arg(packet.refusal);
        }
    };
    if (packet.refusal != 0) {
        fail(tr("the broker refuses: %1").arg(words()));
        return;
    }
    walk_.answered();
    std::vector<std::string> topics;
    for (const auto& [topic, looked] : topics_) topics.push_back(topic);
    send(mqtt_subscribe(topics));
    tend_timer_.start();
}

void MqttLink::takeMessage(const MqttPacket& packet) {
    const auto found = topics_.find(packet.topic);
    if (found == topics_.end()) return;
    Topic& topic = found->second;
    if (topic.looked_at.isValid() && topic.looked_at.elapsed() < look_every_ms) return;
    topic.looked_at.start();
    const auto numbers = numbers_in(packet.payload, topic.fields);
    TraceSample sample;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (numbers[i]) put(sample, *topic.fields[i], numbers[i]);
    if (!saysAnything(sample)) {
        misunderstand();
        return;
    }
    workWell();
    emit values(sample, packet.retained);
}

void MqttLink::tend() {
    if (std::exchange(pinged_, true)) lose(tr("the broker does not answer any more"));
    else send(mqtt_ping);
}

QString MqttLink::socketTrouble() const {
    if (socket_->error() != QAbstractSocket::SslHandshakeFailedError) return socket_->errorString();
    const QList<QSslError> faults = socket_->sslHandshakeErrors();
    return faults.isEmpty() ? tr("no secured connection (%1)").arg(socket_->errorString()) : certificate_refused(faults);
}

void MqttLink::lose(const QString& why) {
    certificate_refused_ = certificate_refused_ || !socket_->sslHandshakeErrors().isEmpty();
    drop();
    if (walk_.waits()) walk_.fell(why);
    else fail(why);
}

void MqttLink::send(std::string_view bytes) { socket_->write(bytes.data(), static_cast<qint64>(bytes.size())); }

void MqttLink::drop() {
    tend_timer_.stop();
    go_on_.stop();
    pinged_ = false;
    if (!socket_) return;
    socket_->disconnect(this);
    socket_->abort();
    socket_.release()->deleteLater(); // it may be the one whose signal has led here
}

void MqttLink::close() {
    if (socket_ && tend_timer_.isActive()) {
        send(mqtt_disconnect);
        socket_->flush();
    }
    walk_.stop();
    drop();
}

} // namespace ullage
