// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/live_lines.h"
#include "live/readout.h"
#include "sources/source_link.h"

#include <QByteArray>
#include <QSerialPort>

#include <memory>

namespace ullage {

/// The read-out of IEC 62056-21, modes A to C, at an interval. It says the request, and in mode C the acknowledgement for data read-out.
class ReadoutLink final : public SourceLink {
    Q_OBJECT
public:
    explicit ReadoutLink(const LiveSource& source);
    ~ReadoutLink() override;

protected:
    void open() override;
    void close() override;

private:
    enum class Step { idle, identification, block };
    void ask();
    void take();
    void takeIdentification(const std::string& line);
    void takeBlock(std::string_view bytes);
    void giveUp(const QString& why);

    std::unique_ptr<QSerialPort> port_;
    QTimer poll_timer_, patience_;
    Step step_ = Step::idle;
    std::string begun_; ///< of the identification
    ReadoutBlock block_;
    int silent_ = 0;
};

} // namespace ullage
