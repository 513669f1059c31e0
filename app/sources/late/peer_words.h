// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include <QList>
#include <QString>

class QSslError;

namespace ullage {

// What is said of a peer over the network that is not reached: what was tried, what failed, and what to do.

/// No address is known for the name; `why` in the words of the system.
[[nodiscard]] QString name_not_found(const QString& name, const QString& why);
/// There is no connection to it; `why` may tell it address by address.
[[nodiscard]] QString not_reached(const QString& host, int port, const QString& why);
[[nodiscard]] QString no_answer_within(int ms);
/// Why a certificate is refused.
[[nodiscard]] QString certificate_refused(const QList<QSslError>& faults);
/// What to do about a meter that is not reached, and about a certificate that does not hold.
[[nodiscard]] QString check_peer();
[[nodiscard]] QString mend_certificate();

} // namespace ullage
