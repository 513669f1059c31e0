// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/run/photo_intake.h"

#include <QWidget>

class QFrame;
class QLabel;
class QPushButton;

namespace ullage {

class PhotoStrip;

/// Takes photos in for one run, and shows those of its chosen reading below the readings. Where a photo that has just come
/// to a reading tells another time than the reading, amending the reading is offered, never done by itself. Photos of readings
/// that were undone stay in reach behind a button, each marked as such. Hidden while there is nothing to show. Follows the document.
class RunPhotos final : public QWidget {
    Q_OBJECT
public:
    explicit RunPhotos(Document& document, QWidget* parent = nullptr);

    void setRun(const RunId& runUuid);
    /// The one chosen reading; empty for none or several.
    void setReading(const ReadingId& readingUuid);
    [[nodiscard]] ReadingId readingUuid() const { return reading_uuid_; }
    /// Keeps the photos with a reading of the run, or with the entry that is being typed when `readingUuid` is empty. Each
    /// that is not taken is refused in words; the others are kept.
    void attach(const PhotoIntake& intake, const ReadingId& readingUuid);

signals:
    void error(const QString& sentences);
    /// Photos have come to this reading, or it has taken a photo's time: it should be the chosen one.
    void readingAsked(const ReadingId& readingUuid);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QFrame* makeOffer();
    QPushButton* makeUndoneButton();
    void refresh();
    void showUndone(const RunRecord& run, const std::vector<Photo>& photos);
    void offerTime(const Photo& photo);
    void takeTime();
    void dropOffer();
    [[nodiscard]] const Reading* reading(const ReadingId& uuid) const;

    Document& document_;
    RunId run_uuid_;
    ReadingId reading_uuid_;
    ReadingId offered_to_; ///< the reading whose time may be amended
    UtcMs offered_ms_ = 0;
    PhotoStrip *strip_, *undone_strip_;
    QLabel* offer_label_;
    QPushButton *amend_button_, *undone_button_;
    QFrame* offer_;
};

} // namespace ullage
