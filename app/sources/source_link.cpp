// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/source_link.h"

#include "live/sample_gate.h"
#include "sources/inside/source_links.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

/// Stands for a connection that cannot be made at all.
class NoLink final : public SourceLink {
public:
    NoLink(const LiveSource& source, QString why) : SourceLink(source), why_(std::move(why)) {}

protected:
    void open() override { fail(why_); }
    void close() override {}

private:
    QString why_;
};

} // namespace

std::unique_ptr<SourceLink> SourceLink::make(const LiveSource& source, const QString& password) {
    if (const auto made = source_links.get()) return made.value()(source, password);
    else return std::make_unique<NoLink>(source, raw_text(made.error().sentence()));
}

SourceLink::SourceLink(const LiveSource& source) : source_(source) {
    again_.setSingleShot(true);
    connect(&again_, &QTimer::timeout, this, [this] { open(); });
}

SourceLink::~SourceLink() = default;

void SourceLink::start() {
    running_ = true;
    pause_ms_ = first_pause_ms;
    open();
}

void SourceLink::stop() {
    running_ = false;
    again_.stop();
    close();
}

void SourceLink::fail(const QString& why) {
    if (!running_ || again_.isActive()) return;
    again_.start(pause_ms_);
    pause_ms_ = std::min(2 * pause_ms_, longest_pause_ms);
    close();
    emit failed(why);
}

void SourceLink::workWell() { pause_ms_ = first_pause_ms; }

void SourceLink::put(TraceSample& sample, const LiveField& field, std::optional<double> value) {
    for (const RoleEntry& entry : column_roles())
        if (entry.role == field.role && entry.place) sample.*entry.place = value;
}

bool SourceLink::saysAnything(const TraceSample& sample) { return says_anything(sample); }

} // namespace ullage
