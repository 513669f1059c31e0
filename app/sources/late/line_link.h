// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room sources.
#pragma once

#include "live/live_lines.h"
#include "sources/source_link.h"

#include <QSerialPort>

#include <memory>

namespace ullage {

/// Lines of text from a serial line, which is opened for reading only.
class LineLink final : public SourceLink {
    Q_OBJECT
public:
    explicit LineLink(const LiveSource& source);
    ~LineLink() override;

protected:
    void open() override;
    void close() override;

private:
    void take();

    std::unique_ptr<QSerialPort> port_;
    LineCutter cutter_;
    LiveLines lines_;
};

} // namespace ullage
