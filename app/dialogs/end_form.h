// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "dialogs/form_dialog.h"
#include "model/run_record.h"
#include "services/entry_texts.h"

#include <QTimer>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What the form that ends a run hands back.
struct RunEnding {
    Run run;                           ///< with its end
    std::optional<ReadingValues> last; ///< what was read then; absent where a reading that stands already is the end
    bool row_taken = false;            ///< the half-typed entry row is in it
};

/// Ends a run: how, when, how late that may have been noticed, and what gauge and register showed then. The time is that of opening; nothing else is
/// filled in. What the half-typed entry row, the log and the last reading hold is offered, a button each. Below stands what the run then says.
class EndForm final : public FormDialog {
    Q_OBJECT
public:
    /// What a run says once it has ended so, for people.
    using Preview = std::function<QString(const RunEnding&)>;

    /// `end` is chosen where it is given. The clock must outlive the form.
    EndForm(const RunRecord& record, std::optional<RunEnd> end, const EntryTexts& half_typed, const Clock& clock, Preview preview,
            QWidget* parent = nullptr);

    /// As submitted.
    [[nodiscard]] const RunEnding& ending() const { return ending_; }

protected:
    void read() override;

private:
    struct Offer {
        QString name, title;
        EntryTexts texts;
        std::optional<ReadingValues> values; ///< exact, where they are not typed
        bool stands = false;                 ///< it is a reading of the run
        bool row = false;                    ///< it is the half-typed entry row
    };
    void addOffers(const EntryTexts& half_typed);
    void take(const Offer& offer);
    void changed();
    void showPreview();
    [[nodiscard]] std::vector<Offer> offers(const EntryTexts& half_typed) const;
    [[nodiscard]] Offer offerOf(const QString& name, const QString& title, const ReadingValues& values, bool stands) const;
    [[nodiscard]] EntryTexts typed() const;
    [[nodiscard]] RunEnd end() const;
    /// What the fields mean; values absent where they are not understood.
    [[nodiscard]] EntryReading understood() const;
    [[nodiscard]] RunEnding endingOf(const ReadingValues& values) const;

    RunRecord record_;
    const Clock& clock_;
    UtcMs opened_ms_;
    Preview preview_;
    RunEnding ending_;
    std::optional<Offer> taken_;
    QString row_display_watts_; ///< of the entry row that was taken, which has no field here
    std::optional<MarkKind> row_mark_;
    QTimer preview_timer_;
    QComboBox* how_;
    QLineEdit *time_, *noticed_, *gauge_, *register_, *second_register_ = nullptr, *watts_, *remark_, *ambient_;
    QLabel* preview_label_;
};

} // namespace ullage
