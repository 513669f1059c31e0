// SPDX-License-Identifier: GPL-3.0-or-later
// How photos come to the run page: dropped, pasted or chosen.
#include "pages/run/run_page.h"

#include "models/readings_model.h"
#include "pages/run/entry_row.h"
#include "pages/run/photo_intake.h"
#include "pages/run/readings_view.h"
#include "pages/run/run_photos.h"

#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QMimeData>

namespace ullage {

ReadingId RunPage::photoTarget() const {
    const QWidget* focused = QApplication::focusWidget();
    if (focused != nullptr && entry_->isAncestorOf(focused)) return {};
    const std::vector<ReadingId> chosen = readings_->selectedReadings();
    return chosen.size() == 1 ? chosen.front() : ReadingId();
}

ReadingId RunPage::photoTargetAt(const QPoint& point) const {
    const QWidget* table = readings_->viewport();
    const QPoint in_table = table->mapFrom(this, point);
    if (table->rect().contains(in_table)) {
        const ReadingId under = model_->uuidAt(readings_->indexAt(in_table).row());
        if (!under.empty()) return under;
    }
    if (entry_->rect().contains(entry_->mapFrom(this, point))) return {};
    const std::vector<ReadingId> chosen = readings_->selectedReadings();
    return chosen.size() == 1 ? chosen.front() : ReadingId();
}

QString RunPage::photoTargetWords() const {
    const QModelIndex row = model_->index(model_->rowOf(photoTarget()), ReadingsRow::time);
    return row.isValid() ? tr("the reading of %1").arg(row.data().toString()) : tr("the next reading");
}

void RunPage::attachPhotos(const QStringList& files) {
    const ReadingId target = photoTarget();
    photos_->attach(photos_from_files(files, this), target);
}

void RunPage::pastePhotos() {
    const QMimeData* held = QApplication::clipboard()->mimeData();
    if (held == nullptr || !holds_pictures(*held)) return emit error(tr("The clipboard holds no picture; copy a photo or its file first."));
    const ReadingId target = photoTarget();
    photos_->attach(photos_from(*held, this), target);
}

void RunPage::dragEnterEvent(QDragEnterEvent* event) {
    // Other files are for the window.
    if (presenter_.record() != nullptr && holds_pictures(*event->mimeData())) event->acceptProposedAction();
}

void RunPage::dropEvent(QDropEvent* event) {
    if (!holds_pictures(*event->mimeData())) return;
    // The source keeps its file whatever it proposed: a move would take it away from the tester.
    event->setDropAction(Qt::CopyAction);
    event->accept();
    const ReadingId target = photoTargetAt(event->position().toPoint());
    photos_->attach(photos_from(*event->mimeData(), this), target);
}

} // namespace ullage
