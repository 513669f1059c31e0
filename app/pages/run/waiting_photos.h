// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QWidget>

#include <optional>
#include <string>
#include <vector>

class QLabel;
class QPushButton;

namespace ullage {

class PhotoStrip;

/// The photos of a run that wait for the reading which is being typed: they are in the logbook already and are tied to the
/// reading when it is recorded. Where the latest of them tells when it was taken, that time is offered. Hidden while none
/// waits. Follows the document.
class WaitingPhotos final : public QWidget {
    Q_OBJECT
public:
    explicit WaitingPhotos(Document& document, QWidget* parent = nullptr);

    void setRun(const RunId& runUuid);
    /// What stands in the time field; the same time is not offered again.
    void setTimeText(const QString& text);
    /// The waiting photos, in order of adding.
    [[nodiscard]] std::vector<PhotoId> uuids() const;

signals:
    /// The offered time is wanted: text for the time field.
    void timeTaken(const QString& text);
    void error(const QString& sentence);

private:
    void refresh();
    void showOffer();

    Document& document_;
    RunId run_uuid_;
    std::vector<Photo> photos_;
    QString offered_text_, time_text_;
    PhotoStrip* strip_;
    QLabel* words_label_;
    QPushButton* take_button_;
};

/// Text for a time field that parse_moment reads as `time_ms` in whole seconds, whenever and in whatever year that is.
[[nodiscard]] QString field_text_of(UtcMs time_ms, UtcMs now_ms, const std::string& zone);

} // namespace ullage
