// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/live_lines.h"
#include "sources/late/address_walk.h"
#include "sources/source_link.h"

#include <QByteArray>

#include <memory>
#include <string>
#include <vector>

class QIODevice;

namespace ullage {

/// SCPI: each query of the fields in turn at an interval, each answered before the next. Over TCP, or over a device file: a serial line, or what
/// looks like one.
class ScpiLink final : public SourceLink {
    Q_OBJECT
public:
    explicit ScpiLink(const LiveSource& source);
    ~ScpiLink() override;

protected:
    void open() override;
    void close() override;

private:
    void connectTo(const QString& address);
    void openSerial();
    void drop();
    void ready();
    void poll();
    void askNext();
    void take();
    void takeAnswer(std::string_view answer);

    AddressWalk walk_;
    std::unique_ptr<QIODevice> device_;
    QTimer poll_timer_, patience_;
    std::vector<std::string> queries_; ///< each once
    std::size_t asked_ = 0;            ///< how many of this round
    LineCutter cutter_;
    TraceSample sample_;
    bool waiting_ = false;
};

} // namespace ullage
