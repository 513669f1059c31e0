// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/logbook_content.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>

#include <atomic>
#include <memory>
#include <optional>

namespace ullage {

class Document;

/// While the document is open for looking, looks at its file again where that says something new, and who records into it. It asks each second, and
/// reads the file in a thread of its own; after a look it rests for twenty times as long as that took, so that a large logbook costs a twentieth of
/// a core.
///
/// The document must outlive it.
class LookRefresher final : public QObject {
    Q_OBJECT
public:
    explicit LookRefresher(Document& document, QObject* parent = nullptr);
    ~LookRefresher() override;

    /// Who records into the logbook that is open for looking; absent where nobody does any more.
    [[nodiscard]] const std::optional<Recorder>& recorder() const { return recorder_; }
    /// Why the file cannot be read anew; empty where all is well.
    [[nodiscard]] const QString& trouble() const { return trouble_; }
    /// When what is shown was read.
    [[nodiscard]] UtcMs looked_ms() const { return looked_ms_; }

signals:
    void changed(); ///< any of these

private:
    struct Found;
    void restart(); ///< another logbook is open, or none
    void tick();
    void take(const std::shared_ptr<Found>& found);

    Document& document_;
    std::optional<Recorder> recorder_;
    QString trouble_;
    UtcMs looked_ms_ = 0;
    QTimer timer_;
    QElapsedTimer since_look_, waiting_;
    qint64 rest_ms_ = 0;
    bool busy_ = false;
    int logbook_ = 0; ///< counts those opened, so that what was read of another is dropped
    std::atomic<bool> ending_ = false;
    QThreadPool thread_;
};

} // namespace ullage
