// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "measure/entry_doubts.h"
#include "pages/parts/question_bar.h"
#include "services/entry_texts.h"

#include <QObject>

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// The way of what is typed into the logbook, the same wherever a reading of a running test is typed: the texts are read, what is doubtful (see
/// measure/entry_doubts.h) is asked in a question bar, and the answer is recorded. Nothing is recorded while a question stands.
class EntryFlow final : public QObject {
    Q_OBJECT
public:
    /// Both must outlive it.
    EntryFlow(Document& document, QuestionBar& questions, QObject* parent);

    /// Drops what is asked of the run before. An unknown run records nothing.
    void setRun(const RunId& run_uuid);
    /// Reads, asks, records; signals tell what came of it. The photos that wait for the run's next reading go with it.
    void record(const EntryTexts& texts);
    /// What is typed has changed: what was asked of it no longer holds.
    void drop();

signals:
    void refused(const QString& message, ullage::EntryField field); ///< a text that cannot be read, and which
    void failed(const QString& message);                            ///< the run is gone, or the logbook refused
    void asked();                                                   ///< a question stands in the bar
    void correctionAsked(ullage::EntryField field);                 ///< back to what is doubted
    void recorded(const ReadingId& reading_uuid);

private:
    void answer(QuestionBar::Answer answer);
    /// What the register showed just before a reset, as typed; empty where it is not known.
    void takeBefore(const QString& text);
    void write(const std::vector<ReadingValues>& values);
    [[nodiscard]] std::vector<PhotoId> waitingPhotos() const;

    Document& document_;
    QuestionBar& questions_;
    RunId run_uuid_;
    std::optional<ReadingValues> questioned_, mended_; ///< what is questioned, and what was probably meant
    DoubtedPart doubted_ = DoubtedPart::gauge;         ///< of what is questioned, the first
};

} // namespace ullage
