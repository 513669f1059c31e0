// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/secret_store.h"

#include "style/words.h"

#include <qt6keychain/keychain.h>

#include <utility>

namespace ullage {

namespace {

const QString secret_service = QStringLiteral("Ullage");

Error no_store() { return {Failure::io, say(phrase("services", "the desktop has no secret store that can be used")), {}, {}}; }

/// With the words of the store itself.
Error refused_by_store(const QKeychain::Job& job) {
    Error error = no_store();
    if (const std::string why = utf8_of(job.errorString()); !why.empty()) error.what += " (" + why + ")";
    return error;
}

} // namespace

QString secret_key(const LiveSource& source) {
    return QStringLiteral("%1 %2@%3").arg(raw_text(std::string(kind_word(source.kind))), raw_text(source.user), raw_text(source.address));
}

void DesktopSecretStore::find(const QString& key, Found found) {
    auto* job = new QKeychain::ReadPasswordJob(secret_service);
    job->setKey(key);
    QObject::connect(job, &QKeychain::Job::finished, &waiting_, [job, found = std::move(found)] {
        if (job->error() == QKeychain::NoError) found(std::optional(job->textData()));
        else if (job->error() == QKeychain::EntryNotFound) found(std::optional<QString>());
        else found(no_store());
    });
    job->start();
}

void DesktopSecretStore::keep(const QString& key, const QString& password, Done done) {
    auto* job = new QKeychain::WritePasswordJob(secret_service);
    job->setKey(key);
    job->setTextData(password);
    QObject::connect(job, &QKeychain::Job::finished, &waiting_, [job, done = std::move(done)] {
        done(job->error() == QKeychain::NoError ? Result<void>() : Result<void>(refused_by_store(*job)));
    });
    job->start();
}

void DesktopSecretStore::forget(const QString& key, Done done) {
    auto* job = new QKeychain::DeletePasswordJob(secret_service);
    job->setKey(key);
    QObject::connect(job, &QKeychain::Job::finished, &waiting_, [job, done = std::move(done)] {
        const bool gone = job->error() == QKeychain::NoError || job->error() == QKeychain::EntryNotFound;
        done(gone ? Result<void>() : Result<void>(refused_by_store(*job)));
    });
    job->start();
}

} // namespace ullage
