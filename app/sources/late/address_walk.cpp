// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/address_walk.h"

#include "sources/late/peer_words.h"
#include "style/words.h"

#include <QHostAddress>
#include <QHostInfo>

#include <utility>

namespace ullage {

AddressWalk::AddressWalk() {
    patience_.setSingleShot(true);
    patience_.setInterval(answer_within_ms);
    connect(&patience_, &QTimer::timeout, this, [this] {
        fallen_[address_] = no_answer_within(answer_within_ms);
        goOn();
    });
    // An address may fall at once: one after the other, not one within the other.
    next_.setSingleShot(true);
    next_.setInterval(0);
    connect(&next_, &QTimer::timeout, this, &AddressWalk::goOn);
}

AddressWalk::~AddressWalk() { stop(); }

void AddressWalk::begin(const LiveSource::Peer& peer) {
    stop();
    peer_ = peer;
    fallen_.clear();
    const QString host = raw_text(peer.host);
    // Qt would look up the name of an address, and somebody would wait for that.
    if (!QHostAddress(host).isNull()) {
        addresses_ = {host};
        next_.start();
        return;
    }
    look_up_ = QHostInfo::lookupHost(host, this, [this](const QHostInfo& info) {
        look_up_ = -1;
        addresses_.clear();
        for (const QHostAddress& address : info.addresses().mid(0, most_addresses)) addresses_ << address.toString();
        if (!addresses_.isEmpty()) goOn();
        else emit unknown(name_not_found(text_of(peer_.host), info.errorString()));
    });
}

void AddressWalk::fell(const QString& why) {
    if (!waits()) return;
    patience_.stop();
    fallen_[address_] = why;
    next_.start();
}

void AddressWalk::goOn() {
    if (addresses_.isEmpty()) {
        emit exhausted(story());
        return;
    }
    address_ = addresses_.takeFirst();
    patience_.start();
    emit tried(address_);
}

void AddressWalk::stop() {
    if (look_up_ >= 0) QHostInfo::abortHostLookup(std::exchange(look_up_, -1));
    patience_.stop();
    next_.stop();
    addresses_.clear();
}

QString AddressWalk::story() const {
    const QString host = text_of(peer_.host);
    if (fallen_.size() == 1 && fallen_.begin()->first == raw_text(peer_.host)) return not_reached(host, peer_.port, fallen_.begin()->second);
    QStringList stories;
    for (const auto& [address, why] : fallen_) stories << tr("%1 at %2", "what happened, address").arg(why, address);
    return not_reached(host, peer_.port, stories.join(QStringLiteral(", ")));
}

} // namespace ullage
