// SPDX-License-Identifier: GPL-3.0-or-later
#include "photos_fixture.h"

#include "models/readings_model.h"
#include "support/photo_bytes.h"

#include <QApplication>
#include <QBuffer>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QFile>
#include <QPushButton>
#include <QTest>

namespace ullage::test {

QImage scene(QSize size) {
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) image.setPixel(x, y, qRgb(x % 256, y % 256, (x + y) % 256));
    return image;
}

std::string camera_jpeg(const char* date_time, QSize size, const char* offset) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    scene(size).save(&buffer, "JPG");
    return *date_time ? jpeg_with_exif(bytes.toStdString(), exif_block(date_time, offset)) : bytes.toStdString();
}

void PhotosTest::SetUp() {
    RunPageTest::SetUp();
    QApplication::clipboard()->clear();
    recordSample(4);
    showPage();
    view = find<ReadingsView>("readingsView");
}

QString PhotosTest::write(const char* name, const std::string& bytes) const {
    QFile out(QString::fromStdString((folder / name).string()));
    EXPECT_TRUE(out.open(QFile::WriteOnly));
    out.write(bytes.data(), static_cast<qint64>(bytes.size()));
    return out.fileName();
}

void PhotosTest::drop(QMimeData& data, QWidget* over, QPoint at) {
    QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(over, &enter);
    accepted = enter.isAccepted();
    if (!accepted) return;
    QDropEvent event(QPointF(at), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(over, &event);
    QApplication::processEvents();
}

void PhotosTest::dropFiles(const QStringList& files, QWidget* over, QPoint at) {
    QMimeData data;
    QList<QUrl> urls;
    for (const QString& file : files) urls << QUrl::fromLocalFile(file);
    data.setUrls(urls);
    drop(data, over, at);
}

QPoint PhotosTest::rowOf(std::size_t at) const {
    const int row = find<QAbstractItemView>("readingsView")
                        ->model()
                        ->match(view->model()->index(0, 0), ReadingsModel::UuidRole, raw_text(readings()[at].uuid))
                        .value(0)
                        .row();
    return view->visualRect(view->model()->index(row, ReadingsRow::gauge)).center();
}

QString PhotosTest::error() const { return errors.value(errors.size() - 1); }

void PhotosTest::click(const char* name) {
    auto* button = find<QPushButton>(name);
    ASSERT_TRUE(button->isVisible()) << name;
    QTest::mouseClick(button, Qt::LeftButton);
    QApplication::processEvents();
}

} // namespace ullage::test
