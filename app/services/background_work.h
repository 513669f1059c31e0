// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <QString>

#include <atomic>
#include <cstdint>
#include <functional>
#include <optional>
#include <utility>

class QWidget;

namespace ullage {

/// What work beside the window says of itself, and heeds. Any thread.
class WorkProgress {
public:
    /// So much of so much is done; without it the bar only shows that work goes on.
    void at(std::int64_t done, std::int64_t of) {
        of_ = of;
        done_ = done;
    }
    [[nodiscard]] bool cancelled() const { return cancelled_; }
    [[nodiscard]] const std::atomic<bool>& cancelling() const { return cancelled_; } ///< for what must not know of this class

    // For the side that waits.
    void cancel() { cancelled_ = true; }
    [[nodiscard]] std::int64_t done() const { return done_; }
    [[nodiscard]] std::int64_t of() const { return of_; }

private:
    std::atomic<std::int64_t> done_{0}, of_{0};
    std::atomic<bool> cancelled_{false};
};

/// Whether Cancel is offered; work that cannot be stopped halfway, such as the writing of one file, does not offer it.
enum class Cancelling { offered, not_possible };

/// Does `work` in a thread of its own and returns when it has ended. Meanwhile the window paints and its timers run, but it takes no input; what
/// takes longer than a moment shows `words`, how far it is, and Cancel. The work must touch nothing that the window's timers touch too, such as
/// the document; it is handed plain values and gives some back. Cancelled work still returns, soon if it looks at `progress`. What the work
/// throws is thrown here. `window` is the one that waits; null stands for the active one.
void work_beside(QWidget* window, const QString& words, const std::function<void(WorkProgress& progress)>& work,
                 Cancelling cancelling = Cancelling::offered);

/// As work_beside() for what can only be done where the window lives, such as drawing: the work is done here, and calls `turn` after each small
/// piece, which lets events through now and then; it returns false once the work was cancelled.
void work_in_turns(QWidget* window, const QString& words, const std::function<void(WorkProgress& progress, const std::function<bool()>& turn)>& work);

/// As work_beside() for work with a result; nothing where it was cancelled, whatever it gave.
template <class Work>
[[nodiscard]] auto result_beside(QWidget* window, const QString& words, const Work& work) {
    std::optional<decltype(work(std::declval<WorkProgress&>()))> result;
    work_beside(window, words, [&](WorkProgress& progress) {
        result.emplace(work(progress));
        if (progress.cancelled()) result.reset();
    });
    return result;
}

} // namespace ullage
