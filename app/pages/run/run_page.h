// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/photo_dialog.h"
#include "document/document.h"
#include "pages/run/run_presenter.h"
#include "style/words.h"

#include <QTimer>
#include <QWidget>

class QAction;
class QFrame;
class QScrollArea;
class QSplitter;

namespace ullage {

class AccountsView;
class EntryRow;
class FindingsView;
class LiveBar;
class LiveReader;
class LogFollower;
class LogView;
class Reminders;
class ReadingsModel;
class ReadingsView;
class ResultStrip;
class RunChartsPanel;
class RunHead;
class RunPhotos;
class UsableView;

/// The widgets of one run, filled with what RunPresenter says: head, figures, readings with the entry row always in sight, charts, and what the
/// readings say. A running or stopped drain is told twice under the figures (AccountsView), in a tab where the page is too low for it. Follows the
/// document. A window narrower than spacing::stacking_width_px, or a page too narrow for both, stacks the table over the
/// charts. Where the page is too low for three levels, what the readings say becomes a tab beside the charts; where it is too low for a table over a
/// chart, so do the readings, and only the entry row keeps a place of its own.
class RunPage final : public QWidget {
    Q_OBJECT
public:
    /// Without reminders the strip counts down to nothing. They must outlive the page.
    explicit RunPage(Document& document, const Reminders* reminders = nullptr, QWidget* parent = nullptr);

    /// Shows a run and brings back its half-typed entry. Precondition: the run is in the document; an unknown one leaves the
    /// page empty.
    void showRun(const RunId& runUuid);
    [[nodiscard]] RunId runUuid() const { return presenter_.runUuid(); }
    /// Actions for a menu: mark, end run, amend, withdraw, edit run.
    [[nodiscard]] QList<QAction*> runActions() const;
    /// Takes photos in from files, for the entry row where that has the keyboard, else for the one chosen reading, else for the
    /// entry row.
    void attachPhotos(const QStringList& files);
    /// "the reading of 14:36" or "the next reading": what attachPhotos() would attach to.
    [[nodiscard]] QString photoTargetWords() const;

    /// Shows which logs are followed, and offers it. It must outlive the page.
    void setLogFollower(LogFollower& follower);
    /// Shows how the run's meter is read live, and offers it. It must outlive the page.
    void setLiveReader(LiveReader& reader);
    /// Keeps what is half typed in the entry row with its run, at once.
    void keepDraft();
    /// Shows what this run keeps as half typed, where it is the one shown: it was changed elsewhere.
    void takeDraft(const RunId& runUuid);
    /// What is half typed in the entry row, as its run keeps it; to be taken along into another logbook, or into the form that ends the run.
    [[nodiscard]] QString draft() const;
    /// The photos that wait for the next reading, by uuid.
    [[nodiscard]] std::vector<PhotoId> waitingPhotos() const;
    /// Withdrawn readings too, struck out; at first not.
    void setWithdrawnShown(bool shown);
    /// Without charts the readings and what they say have the whole page.
    void setChartsShown(bool shown);

public slots:
    void focusEntry();
    /// Empties the entry row: what was half typed there is recorded elsewhere.
    void clearEntry();
    /// Unfolds the mark chooser of the entry row.
    void askMark();
    /// Opens the amendment of the chosen reading; of the last one entered where none is chosen or the keyboard is in the entry row.
    void amendChosenOrLast();
    void withdrawChosen();
    /// Records a mark of this moment, with what is half typed, and goes back to the entry row.
    void recordMark(ullage::MarkKind mark);
    /// As attachPhotos(), from the clipboard.
    void pastePhotos();

signals:
    /// Something went wrong, such as a change that the logbook refused.
    void error(const QString& sentence);
    /// A change has succeeded: what went wrong before is answered.
    void done();
    /// The form that ends the run is wanted.
    void endRunAsked();
    /// The form of the run is wanted.
    void editRunAsked(const RunId& runUuid);
    /// The form of the run's reminders is wanted.
    void ruleAsked(const RunId& runUuid);
    /// A photo is wanted as a file; `dialog` shows what comes of it.
    void photoSaveAsked(const ullage::Photo& photo, ullage::PhotoDialog* dialog);
    /// A log of a meter is wanted as a file.
    void importLogAsked();
    /// A file is wanted that continues this log.
    void followLogAsked(const TraceId& traceUuid);
    /// The run's meter is to be read live.
    void readLiveAsked(const RunId& runUuid);
    /// The load by the run's logs is wanted as a line of a load list.
    void logApplianceAsked(const RunId& runUuid);
    /// Files of photos are wanted.
    void attachPhotoAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build();
    void connectParts();
    QWidget* buildReadings();
    QWidget* buildResults();
    void follow(); ///< the document; out of sight nothing is worked out
    void refresh();
    void showFigures();
    void chooseReadings(const std::vector<ReadingId>& readingUuids, const QWidget* source);
    void amend(const ReadingId& readingUuid);
    /// Tells what went wrong, or that nothing did.
    void tell(const Result<void>& outcome);
    void arrange();
    void arrangeAhead(); ///< for about the size that a window will give the page, which it has not yet shown
    void placeResults(bool as_tab);
    void placeReadings(bool as_tab);
    void placeAccounts(bool as_tab);
    void showAccounts();
    void updateActions();
    [[nodiscard]] ReadingId photoTarget() const; ///< a reading; empty for the entry row
    [[nodiscard]] ReadingId photoTargetAt(const QPoint& point) const;

    Document& document_;
    const Reminders* reminders_;
    RunPresenter presenter_;
    QTimer minute_timer_;
    ReadingsModel* model_;
    RunHead* head_;
    ResultStrip* strip_;
    LiveBar* live_;
    AccountsView* accounts_;
    QScrollArea* accounts_area_ = nullptr; ///< while they are a tab
    ReadingsView* readings_;
    RunPhotos* photos_; ///< before the entry row, also for the Tab key
    EntryRow* entry_;
    RunChartsPanel* charts_;
    LogView* log_;
    UsableView* usable_;
    FindingsView* findings_;
    QSplitter *halves_ = nullptr, *levels_ = nullptr;
    QFrame *readings_panel_ = nullptr, *pictures_panel_ = nullptr;
    QWidget* table_ = nullptr; ///< readings and their photos; in the panel over the entry row, or a tab of the charts
    QFrame* results_panel_ = nullptr;
    QWidget* results_ = nullptr; ///< usable fraction and findings; in the panel, or a tab of the charts
    bool parts_sized_ = false;
    bool accounts_told_ = false;
    bool charts_shown_ = true;
    bool stale_ = false; ///< to be worked out anew when it comes into sight
};

} // namespace ullage
