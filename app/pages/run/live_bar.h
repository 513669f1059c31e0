// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_events.h"

#include <QWidget>

#include <string>
#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage {

class Document;
class LiveReader;

/// How the live source of the run stands: a dot, the value, its age; since when nothing came. Below it the marks that its samples propose, each to be
/// set or put aside. Hidden where the run's meter has no source and nothing is proposed.
class LiveBar final : public QWidget {
    Q_OBJECT
public:
    explicit LiveBar(Document& document, QWidget* parent = nullptr);

    /// It must outlive the bar.
    void setReader(LiveReader& reader);
    void setRun(const RunId& run_uuid);

signals:
    void readAsked(const RunId& runUuid);
    void error(const QString& sentence);

private:
    void refresh();
    void showState();
    void showProposals();
    void press();

    Document& document_;
    LiveReader* reader_ = nullptr;
    RunId run_uuid_;
    QLabel *dot_, *state_;
    QPushButton* button_;
    QWidget* line_;
    QVBoxLayout* proposals_;
    std::vector<LiveEvent> shown_;
};

} // namespace ullage
