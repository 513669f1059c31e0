// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "comparison/comparison.h"
#include "document/document.h"
#include "document/other_logbook.h"
#include "formats/report/report_content.h"

#include <QObject>
#include <QStringList>

#include <array>
#include <cstddef>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

class QTimer;

namespace ullage {

/// The units of the document, and of other logbooks read beside it, side by side (core/comparison/joined_records.h says what then counts as
/// one unit). Each unit is compared once after a change of its own runs; many of them at once in threads of their own, while the window goes on.
/// Lives in the GUI thread; the document must outlive it.
class UnitComparer final : public QObject {
    Q_OBJECT
public:
    explicit UnitComparer(Document& document, QObject* parent = nullptr);
    ~UnitComparer() override; ///< stops what is being compared

    /// The logbooks beside the document's own, in order of adding; one that could not be read says why and brings nothing.
    [[nodiscard]] const std::vector<OtherLogbook>& logbooks() const { return logbooks_; }
    /// How a logbook is read: by read_other_logbook, unless set, such as in a thread of its own. Nothing where that was cancelled.
    using Reader = std::function<std::optional<Result<OtherLogbook>>(const QString& path)>;
    void setReader(Reader reader) { reader_ = std::move(reader); }
    /// Reads one more. Errors: refused where it is the open one, is there already or its reading was cancelled; as read_other_logbook.
    Result<void> addLogbook(const QString& path);
    void removeLogbook(const QString& path);
    /// Reads these in place of those before, such as after a start of the program.
    void setLogbooks(const QStringList& paths);
    /// What a logbook is called where sources are named: its file name, or its path where two have one name.
    [[nodiscard]] QString sourceName(const QString& path) const;

    /// Units that comparison() has yet to compare.
    [[nodiscard]] std::size_t waitingUnits(CompareRows rows);
    /// Compares what waits before it returns. Sources are named where there are several.
    [[nodiscard]] Comparison comparison(CompareRows rows);
    /// Begins to compare what waits in threads of its own: progressed() tells how far it is, ended() that no more comes. A change meanwhile leaves
    /// the units that it concerns waiting. Nothing where it is at work already.
    void start(CompareRows rows);
    void cancel(); ///< what is compared already stays so; ended() follows
    [[nodiscard]] bool isWorking() const { return work_ != nullptr; }
    /// Sentences on runs that several logbooks hold, and on claims that differ between them.
    [[nodiscard]] const std::vector<Message>& notices();

    /// What the runs of all logbooks say. Valid until the next change of anything.
    [[nodiscard]] const Casebook& casebook();
    /// A run of any of the logbooks; null when there is none.
    [[nodiscard]] const RunRecord* run(const RunId& run_uuid);
    /// Its analysis, a projection through the gauge curve of an earlier run of its unit where there is one. Precondition: run() is not null. Valid
    /// until the next change of anything.
    [[nodiscard]] const RunAnalysis& analysis(const RunId& run_uuid);
    /// The versions of its changed readings. Errors: those of Document::history. Precondition: as above.
    [[nodiscard]] Result<std::vector<ReadingHistory>> histories(const RunId& run_uuid);

signals:
    void logbooksChanged();
    void progressed(int done, int of);
    void ended();
    void error(const QString& sentence); ///< comparing gave up; ended() follows

private:
    struct Joined;
    struct Work;
    /// What a unit's runs gave, for as long as they stay as they are.
    struct Kept {
        SharedRuns runs;
        ComparedUnit compared;
    };
    using KeptUnits = std::map<UnitId, Kept>;

    const Joined& joined();
    void forgetJoined();
    [[nodiscard]] KeptUnits& kept(CompareRows rows) { return kept_[rows == CompareRows::one_per_unit ? 0 : 1]; }
    [[nodiscard]] MeasureOptions& options(CompareRows rows) { return options_[rows == CompareRows::one_per_unit ? 0 : 1]; }
    /// Pools the scatter of repeated drains anew. True where it changed, so that units wait which were compared by another.
    bool poolAgain(CompareRows rows);
    /// Those units of joined() that must be compared anew.
    [[nodiscard]] std::vector<SharedRuns> waiting(CompareRows rows);
    void keep(CompareRows rows, const std::vector<SharedRuns>& units, std::vector<std::optional<ComparedUnit>> compared);
    void finish(const Work* work);

    [[nodiscard]] Result<OtherLogbook> readLogbook(const QString& path) const;

    Document& document_;
    Reader reader_;
    std::vector<OtherLogbook> logbooks_;
    std::unique_ptr<Joined> joined_;
    std::array<KeptUnits, 2> kept_;
    std::array<MeasureOptions, 2> options_; ///< with the scatter pooled over what is kept
    std::unique_ptr<Work> work_;
    QTimer* progress_timer_;
};

} // namespace ullage
