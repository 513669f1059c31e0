// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QColor>
#include <QImage>
#include <QString>

#include <algorithm>
#include <cstdlib>

namespace ullage::test {

/// Pictures are kept and compared in blocks of so many pixels each way: curves, bars and grounds stand where they stood, while letters may sit a
/// little elsewhere with another version of a font.
inline constexpr int block_px = 8;
/// So far may a channel of a block's mean colour be from the kept one, of 255,
inline constexpr int block_tolerance = 20;
/// and this share of blocks may be farther.
inline constexpr double astray_share = 0.01;

inline QImage in_blocks(const QImage& picture) {
    return picture.convertToFormat(QImage::Format_RGB32)
        .scaled(std::max(1, picture.width() / block_px), std::max(1, picture.height() / block_px), Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
        .convertToFormat(QImage::Format_RGB32);
}

/// The share of blocks in which two pictures differ by more than the tolerance; 1 for those of different sizes.
inline double share_astray(const QImage& one, const QImage& other) {
    if (one.size() != other.size() || one.isNull()) return 1;
    int astray = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) {
            const QColor a = one.pixelColor(x, y), b = other.pixelColor(x, y);
            const int far = std::max({std::abs(a.red() - b.red()), std::abs(a.green() - b.green()), std::abs(a.blue() - b.blue())});
            astray += far > block_tolerance ? 1 : 0;
        }
    return static_cast<double>(astray) / (one.width() * one.height());
}

/// Expects a picture to look like the one kept in `file`. With ULLAGE_KEEP_PICTURES set it is kept in its place, to be looked at.
inline void expect_as_kept(const QImage& picture, const QString& file) {
    const QImage found = in_blocks(picture);
    if (qEnvironmentVariableIsSet("ULLAGE_KEEP_PICTURES")) {
        ASSERT_TRUE(found.save(file)) << file.toStdString();
    }
    const QImage kept(file);
    ASSERT_FALSE(kept.isNull()) << "there is no " << file.toStdString() << "; set ULLAGE_KEEP_PICTURES to keep it";
    EXPECT_LE(share_astray(found, kept.convertToFormat(QImage::Format_RGB32)), astray_share) << file.toStdString();
}

} // namespace ullage::test
