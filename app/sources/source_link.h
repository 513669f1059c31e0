// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_source.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <memory>

namespace ullage {

/// The connection to one live source, whatever it speaks. It only reads: it sends what the standard needs to be told a value, and nothing that sets
/// anything. It never listens, and contacts no address but the source's. A connection that fails is made again by itself, after 1 s, then twice as
/// long each time, up to 10 s. Memory is bounded whatever the source sends.
class SourceLink : public QObject {
    Q_OBJECT
public:
    static constexpr int first_pause_ms = 1000, longest_pause_ms = 10'000;

    /// `password`: kept in memory only.
    static std::unique_ptr<SourceLink> make(const LiveSource& source, const QString& password = {});

    ~SourceLink() override;
    void start();
    void stop();
    /// What the source said that could not be understood, counted.
    [[nodiscard]] long misunderstood() const { return misunderstood_; }
    /// How the values are read where the program found that out itself: "SunSpec meter model 203".
    [[nodiscard]] const QString& found() const { return found_; }

signals:
    /// What has come; its time is of no meaning. `retained`: the broker had kept it.
    void values(const ullage::TraceSample& sample, bool retained);
    /// The peer is there.
    void connected();
    /// It is not, or no more; it will be tried again.
    void failed(const QString& why);

protected:
    explicit SourceLink(const LiveSource& source);

    virtual void open() = 0;
    virtual void close() = 0;

    [[nodiscard]] const LiveSource& source() const { return source_; }
    /// Ends the connection and tries again later.
    void fail(const QString& why);
    /// It works: the next pause is the shortest again.
    void workWell();
    void misunderstand() { ++misunderstood_; }
    void setFound(const QString& words) { found_ = words; }
    /// Puts a value where its role belongs.
    static void put(TraceSample& sample, const LiveField& field, std::optional<double> value);
    static bool saysAnything(const TraceSample& sample);

private:
    LiveSource source_;
    QTimer again_;
    int pause_ms_ = first_pause_ms;
    bool running_ = false;
    long misunderstood_ = 0;
    QString found_;
};

} // namespace ullage
