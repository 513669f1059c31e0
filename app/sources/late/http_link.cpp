// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/http_link.h"

#include "live/payload_number.h"
#include "sources/late/peer_words.h"
#include "style/clauses.h"
#include "style/words.h"

#include <QAuthenticator>
#include <QNetworkProxy>
#include <QNetworkReply>
#include <QUrl>

#include <cmath>
#include <utility>

namespace ullage {

namespace {

constexpr int answer_within_ms = 10'000;

} // namespace

HttpLink::HttpLink(const LiveSource& source, const QString& password) : SourceLink(source), password_(password) {
    for (const LiveField& field : this->source().fields) fields_.push_back(&field);
    network_.setProxy(QNetworkProxy(QNetworkProxy::NoProxy));
    network_.setRedirectPolicy(QNetworkRequest::SameOriginRedirectPolicy);
    network_.setTransferTimeout(answer_within_ms);
    connect(&network_, &QNetworkAccessManager::authenticationRequired, this, [this](QNetworkReply*, QAuthenticator* who) {
        if (std::exchange(asked_for_password_, true) || this->source().user.empty()) return; // it was wrong: the answer is the error
        who->setUser(raw_text(this->source().user));
        who->setPassword(password_);
    });
    poll_timer_.setInterval(static_cast<int>(std::lround(1000 * source.interval_s)));
    connect(&poll_timer_, &QTimer::timeout, this, &HttpLink::ask);
}

HttpLink::~HttpLink() { close(); }

void HttpLink::open() {
    connected_ = false;
    poll_timer_.start();
    ask();
}

void HttpLink::ask() {
    if (reply_) return;
    QNetworkRequest request{QUrl(raw_text(source().address))};
    request.setAttribute(QNetworkRequest::CacheLoadControlAttribute, QNetworkRequest::AlwaysNetwork);
    request.setAttribute(QNetworkRequest::CookieLoadControlAttribute, QNetworkRequest::Manual);
    request.setAttribute(QNetworkRequest::CookieSaveControlAttribute, QNetworkRequest::Manual);
    body_.clear();
    certificate_faults_.clear();
    too_long_ = asked_for_password_ = false;
    reply_ = network_.get(request);
    reply_->setReadBufferSize(static_cast<qint64>(most_payload_bytes));
    connect(reply_, &QNetworkReply::readyRead, this, [this] {
        if (!reply_) return;
        body_ += reply_->readAll();
        if (body_.size() <= static_cast<qsizetype>(most_payload_bytes)) return;
        too_long_ = true;
        reply_->abort();
    });
    connect(reply_, &QNetworkReply::sslErrors, this, [this](const QList<QSslError>& faults) { certificate_faults_ = faults; });
    connect(reply_, &QNetworkReply::finished, this, &HttpLink::take);
}

void HttpLink::take() {
    QNetworkReply* const reply = reply_;
    if (!reply) return;
    reply_.clear();
    reply->deleteLater();
    if (too_long_) {
        misunderstand();
        fail(tr("the answer is longer than 1 MB; that of a meter is short"));
        return;
    }
    if (reply->error() != QNetworkReply::NoError) {
        fail(trouble(*reply));
        return;
    }
    body_ += reply->readAll();
    if (!std::exchange(connected_, true)) emit connected();
    const auto numbers = numbers_in({body_.constData(), static_cast<std::size_t>(body_.size())}, fields_);
    TraceSample sample;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (numbers[i]) put(sample, *fields_[i], numbers[i]);
    if (!saysAnything(sample)) {
        misunderstand();
        return;
    }
    workWell();
    emit values(sample, false);
}

/// What a request came to.
QString HttpLink::trouble(const QNetworkReply& reply) const {
    const bool answered = reply.error() > QNetworkReply::TemporaryNetworkFailureError && reply.error() != QNetworkReply::UnknownNetworkError;
    if (answered) return reply.errorString();
    const QUrl url = reply.request().url();
    const QString host = text_of(utf8_of(url.host()));
    if (reply.error() == QNetworkReply::HostNotFoundError) return name_not_found(host, reply.errorString());
    const QString why = !certificate_faults_.isEmpty() ? certificate_refused(certificate_faults_)
                        // Nobody else cancels a request here than the time that it may take.
                        : reply.error() == QNetworkReply::OperationCanceledError ? no_answer_within(answer_within_ms)
                                                                                 : reply.errorString();
    const int port = url.port(url.scheme() == QStringLiteral("https") ? 443 : 80);
    return joined_clauses({not_reached(host, port, why), certificate_faults_.isEmpty() ? check_peer() : mend_certificate()});
}

void HttpLink::close() {
    poll_timer_.stop();
    if (QNetworkReply* const reply = reply_) {
        reply_.clear();
        reply->disconnect(this);
        reply->abort();
        reply->deleteLater();
    }
}

} // namespace ullage
