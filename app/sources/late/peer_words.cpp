// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/late/peer_words.h"

#include "style/clauses.h"
#include "style/words.h"

#include <QSslError>

namespace ullage {

namespace {

QString fault_words(const QSslError& fault) {
    switch (fault.error()) {
    case QSslError::HostNameMismatch: return ullage::tr("it is for another host");
    case QSslError::CertificateExpired: return ullage::tr("it has expired");
    case QSslError::CertificateNotYetValid: return ullage::tr("it is not valid yet");
    case QSslError::UnableToGetIssuerCertificate:
    case QSslError::UnableToGetLocalIssuerCertificate:
    case QSslError::UnableToVerifyFirstCertificate:
    case QSslError::SelfSignedCertificate:
    case QSslError::SelfSignedCertificateInChain:
    case QSslError::CertificateUntrusted: return ullage::tr("no authority that this machine trusts has signed it");
    default: return fault.errorString();
    }
}

} // namespace

QString name_not_found(const QString& name, const QString& why) {
    return joined_clauses(
        {ullage::tr("no address is known for the name %1 (%2)").arg(name, why), ullage::tr("check how it is written, and the network")});
}

QString not_reached(const QString& host, int port, const QString& why) {
    return ullage::tr("no connection to %1, port %2: %3").arg(host, QString::number(port), why);
}

QString no_answer_within(int ms) { return ullage::tr("nothing came within %1 s").arg(ms / 1000); }

QString certificate_refused(const QList<QSslError>& faults) {
    QStringList words;
    for (const QSslError& fault : faults) words << fault_words(fault);
    words.removeDuplicates();
    return ullage::tr("its certificate does not hold (%1)").arg(joined_clauses(words));
}

QString check_peer() { return ullage::tr("check that it is switched on, and its host and port"); }

QString mend_certificate() {
    return ullage::tr("give it a certificate that is in date, for the host that you typed and from an authority that this machine trusts");
}

} // namespace ullage
