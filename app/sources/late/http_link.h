// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "sources/source_link.h"

#include <QByteArray>
#include <QNetworkAccessManager>
#include <QPointer>
#include <QSslError>

#include <vector>

class QNetworkReply;

namespace ullage {

/// GET of one URL at an interval. It follows no redirection to another host, scheme or port, asks no proxy, keeps no cookies, and gives an answer up
/// that is longer than the bound of payloads.
class HttpLink final : public SourceLink {
    Q_OBJECT
public:
    HttpLink(const LiveSource& source, const QString& password);
    ~HttpLink() override;

protected:
    void open() override;
    void close() override;

private:
    void ask();
    void take();
    [[nodiscard]] QString trouble(const QNetworkReply& reply) const;

    QString password_;
    QNetworkAccessManager network_;
    QTimer poll_timer_;
    QPointer<QNetworkReply> reply_;
    QByteArray body_;
    QList<QSslError> certificate_faults_;
    bool too_long_ = false, asked_for_password_ = false, connected_ = false;
    std::vector<const LiveField*> fields_;
};

} // namespace ullage
