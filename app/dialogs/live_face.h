// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sources/live_session.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace ullage {

/// "430.2 W": the value that a sample is known by: its power, else its register, voltage or current.
[[nodiscard]] QString value_words(const TraceSample& sample);
/// "812.4 Wh · 230.1 V": what it says beside that; empty where that is nothing.
[[nodiscard]] QString further_words(const TraceSample& sample);
/// "2 s ago", "4 min ago", "3 h ago".
[[nodiscard]] QString age_words(std::int64_t age_ms);

/// A live source like the face of a meter: the value with its unit, how old it is and how often it comes, and a strip of the last two minutes.
class LiveFace final : public QWidget {
    Q_OBJECT
public:
    explicit LiveFace(QWidget* parent = nullptr);

    /// Before anything was tried.
    void showNothing();
    void showSession(const LiveSession& session);

private:
    class Strip;
    QLabel *value_, *further_, *about_, *trouble_;
    Strip* strip_;
};

} // namespace ullage
