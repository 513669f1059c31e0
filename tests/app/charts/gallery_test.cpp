// SPDX-License-Identifier: GPL-3.0-or-later
// Every drawing in both themes, at three sizes and at twice the text size, against the pictures that are kept. With ULLAGE_GALLERY naming a folder
// they are left there for the eye.
#include "app/charts/sample_content.h"
#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"
#include "style/icons.h"
#include "style/theme.h"
#include "support/source_dir.h"
#include "support_qt/kept_picture.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFrame>
#include <QImage>
#include <QPainter>
#include <QPixmap>

#include <filesystem>

namespace ullage {
namespace {

void look_at(QWidget& widget, const QString& name) {
    auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
    const QFont font = QApplication::font();
    for (const Theme theme : {Theme::light, Theme::dark}) {
        apply_theme(application, theme);
        for (const double text : {1.0, 2.0}) {
            QFont scaled = font;
            scaled.setPointSizeF(font.pointSizeF() * text);
            widget.setFont(scaled);
            for (const QSize size : {QSize(1030, 420), QSize(524, 440), QSize(420, 300)}) {
                widget.resize(size);
                widget.show();
                QApplication::processEvents();
                const QImage image = widget.grab().toImage();
                const QString full = QStringLiteral("%1-%2-%3x%4-text%5")
                                         .arg(name, theme == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"))
                                         .arg(size.width())
                                         .arg(size.height())
                                         .arg(text * 100);
                EXPECT_EQ(image.size(), size) << full.toStdString();
                const std::filesystem::path kept = test::source_dir() / "tests/app/charts/kept";
                test::expect_as_kept(image, QString::fromStdString((kept / (full.toStdString() + ".png")).string()));
                if (const QString folder = qEnvironmentVariable("ULLAGE_GALLERY"); !folder.isEmpty()) {
                    EXPECT_TRUE(image.save(folder + QLatin1Char('/') + full + QStringLiteral(".png")));
                }
            }
        }
    }
}

} // namespace

TEST(Gallery, a_drain_in_all_looks) {
    LineChart chart;
    chart.setContent(sample::drain());
    chart.setHighlighted(QStringLiteral("delivered"), {5, 6});
    look_at(chart, QStringLiteral("drain"));
}

TEST(Gallery, a_logarithmic_axis_in_all_looks) {
    LineChart chart;
    chart.setContent(sample::fraction_over_load());
    look_at(chart, QStringLiteral("load"));
}

TEST(Gallery, a_long_trace_in_all_looks) {
    LineChart chart;
    chart.setContent(sample::long_trace(50000));
    look_at(chart, QStringLiteral("trace"));
}

TEST(Gallery, bars_in_all_looks) {
    BarChart chart;
    chart.setContent(sample::bars());
    look_at(chart, QStringLiteral("bars"));
}

TEST(Gallery, vessels_in_all_looks) {
    VesselRow row;
    row.setAutoFillBackground(true);
    row.setContent(sample::vessels());
    look_at(row, QStringLiteral("vessels"));
}

} // namespace ullage
