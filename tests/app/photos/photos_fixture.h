// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/runpage/run_page_fixture.h"
#include "dialogs/photo_dialog.h"
#include "pages/run/photo_strip.h"
#include "pages/run/readings_view.h"

#include <QImage>
#include <QMimeData>
#include <QPoint>

#include <string>
#include <vector>

namespace ullage::test {

/// A picture in which no two neighbours are alike.
[[nodiscard]] QImage scene(QSize size = {640, 480});

/// A whole JPEG whose camera wrote this local time; without one where it is empty.
[[nodiscard]] std::string camera_jpeg(const char* date_time, QSize size = {640, 480}, const char* offset = "");

/// The run page over four readings of the sample drain, and a clipboard that is empty.
class PhotosTest : public RunPageTest {
protected:
    void SetUp() override;

    [[nodiscard]] QString write(const char* name, const std::string& bytes) const;
    /// As with a real pointer: the widget below gets the entering, and whoever accepts it gets the drop.
    void drop(QMimeData& data, QWidget* over, QPoint at);
    void dropFiles(const QStringList& files, QWidget* over, QPoint at);
    [[nodiscard]] QPoint rowOf(std::size_t at) const;
    [[nodiscard]] std::vector<Photo> photos() const { return document.photos(run.uuid).value(); }
    [[nodiscard]] ReadingId uuid(std::size_t at) const { return readings()[at].uuid; }
    [[nodiscard]] PhotoStrip& strip(const char* name = "readingPhotoStrip") const { return *find<PhotoStrip>(name); }
    [[nodiscard]] QString error() const; ///< what the page says went wrong; empty when nothing did
    [[nodiscard]] PhotoDialog* dialog() const { return window->findChild<PhotoDialog*>(QStringLiteral("photoDialog")); }
    void click(const char* name);

    ReadingsView* view = nullptr;
    bool accepted = false; ///< whether the last drop was taken
};

} // namespace ullage::test
