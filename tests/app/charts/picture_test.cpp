// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/charts/sample_content.h"
#include "charts/picture.h"
#include "support/source_dir.h"
#include "support_qt/kept_picture.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QXmlStreamReader>

namespace ullage {
namespace {

struct Named {
    const char* name;
    PictureContent content;
};

std::vector<Named> everything() {
    return {{"drain", sample::drain()}, {"load", sample::fraction_over_load()}, {"bars", sample::bars()}, {"vessels", sample::vessels()}};
}

QString kept_file(const QString& name) { return QString::fromStdString((test::source_dir() / "tests/app/charts/kept").string()) + u'/' + name; }

QString svg_text(const QString& path, bool& well_formed) {
    QFile file(path);
    QString all;
    well_formed = false;
    if (!file.open(QIODevice::ReadOnly)) return all;
    QXmlStreamReader reader(&file);
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::Characters) all += reader.text();
    well_formed = !reader.hasError();
    return all;
}

} // namespace

TEST(Picture, a_png_has_the_size_asked_for_is_opaque_and_looks_as_kept) {
    const QTemporaryDir folder;
    for (const Named& one : everything()) {
        for (const Palette* palette : {&light_palette(), &dark_palette()}) {
            const PictureSpec spec{.size = {640, 400}, .scale = 2, .palette = *palette, .ground = {}, .font = {}};
            const QString path = folder.filePath(QStringLiteral("%1-%2.png").arg(QLatin1String(one.name)).arg(palette->dark));
            const auto written = write_picture(one.content, path, spec);
            ASSERT_TRUE(written) << written.error().sentence();
            const QImage image(path);
            EXPECT_EQ(image.size(), QSize(1280, 800)) << one.name;
            EXPECT_FALSE(image.hasAlphaChannel()) << one.name;
            EXPECT_EQ(QColor(image.pixel(1279, 0)), palette->ground) << one.name;
            const QString shade = palette->dark ? QStringLiteral("dark") : QStringLiteral("light");
            test::expect_as_kept(image, kept_file(QStringLiteral("picture-%1-%2.png").arg(QLatin1String(one.name), shade)));
            if (const QString gallery = qEnvironmentVariable("ULLAGE_GALLERY"); !gallery.isEmpty()) {
                EXPECT_TRUE(image.save(gallery + QStringLiteral("/picture-%1-%2.png").arg(QLatin1String(one.name)).arg(palette->dark)));
            }
        }
    }
}

TEST(Picture, a_drawing_without_its_curve_is_not_taken_for_the_kept_one) {
    const PictureSpec spec{.size = {640, 400}, .scale = 2, .ground = {}, .font = {}};
    ChartContent bare = sample::drain();
    bare.series.resize(bare.series.size() - 1);
    const auto whole = render_picture(sample::drain(), spec), without = render_picture(bare, spec);
    ASSERT_TRUE(whole && without);
    EXPECT_GT(test::share_astray(test::in_blocks(whole.value()), test::in_blocks(without.value())), test::astray_share);
}

TEST(Picture, an_svg_is_xml_and_carries_its_words_as_text) {
    const QTemporaryDir folder;
    const std::pair<PictureContent, QStringList> cases[] = {
        {sample::drain(),
         {QStringLiteral("energy / Wh"), QStringLiteral("hours since start"), QStringLiteral("gauge-implied"), QStringLiteral("stuck")}},
        {sample::bars(), {QStringLiteral("usable fraction"), QStringLiteral("Osk 1200"), QStringLiteral("not known")}},
        {sample::vessels(), {QStringLiteral("Pelm 900"), QStringLiteral("rated 1200 Wh")}}};
    int number = 0;
    for (const auto& [content, words] : cases) {
        const QString path = folder.filePath(QStringLiteral("%1.svg").arg(number++));
        const auto written = write_picture(content, path, {.size = {640, 400}, .ground = {}, .font = {}});
        ASSERT_TRUE(written) << written.error().sentence();
        bool well_formed = false;
        const QString text = svg_text(path, well_formed);
        EXPECT_TRUE(well_formed);
        for (const QString& word : words) EXPECT_TRUE(text.contains(word)) << word.toStdString();
    }
}

TEST(Picture, one_that_stands_alone_says_what_it_shows_of_what_how_it_is_read_and_whose_it_is) {
    const QTemporaryDir folder;
    ChartContent content = sample::drain();
    content.description = QStringLiteral("Energy of a drain");
    content.subject = QStringLiteral("Osk 1200 at 64 W");
    content.key = QStringLiteral("Squares: the gauge");
    const auto words_of = [&](const QSize& size, bool with_words) {
        PictureSpec spec{.size = size, .ground = {}, .font = {}};
        spec.with_words = with_words;
        spec.source = QStringLiteral("The Lantern, 14 May 2027");
        EXPECT_TRUE(write_picture(content, folder.filePath(QStringLiteral("a.svg")), spec));
        bool well_formed = false;
        const QString text = svg_text(folder.filePath(QStringLiteral("a.svg")), well_formed);
        EXPECT_TRUE(well_formed);
        return text;
    };
    const QString whole = words_of({640, 400}, true);
    for (const char* part : {"Energy of a drain", "Osk 1200 at 64 W", "Squares: the gauge", "The Lantern, 14 May 2027", "gauge-implied"})
        EXPECT_TRUE(whole.contains(QLatin1String(part))) << part;
    EXPECT_FALSE(words_of({640, 400}, false).contains(QStringLiteral("Osk 1200 at 64 W")));
    EXPECT_FALSE(words_of({640, 100}, true).contains(QStringLiteral("Squares: the gauge"))) << "no room for the key";
}

TEST(Picture, an_svg_draws_the_curves_where_the_png_does) {
    const auto image = render_picture(sample::drain(), {.size = {640, 400}, .ground = QColor(Qt::white), .font = {}});
    ASSERT_TRUE(image);
    int delivered = 0;
    for (int y = 0; y < 400; ++y)
        for (int x = 0; x < 640; ++x) delivered += QColor(image.value().pixel(x, y)) == light_palette().delivered ? 1 : 0;
    EXPECT_GT(delivered, 200) << "the curve itself, not only its markers";
}

TEST(Picture, what_cannot_be_written_is_said_with_the_way_out) {
    const QTemporaryDir folder;
    const PictureSpec spec{.size = {300, 200}, .ground = {}, .font = {}};
    const auto wrong_end = write_picture(sample::drain(), folder.filePath(QStringLiteral("a.bmp")), spec);
    ASSERT_FALSE(wrong_end);
    EXPECT_NE(wrong_end.error().sentence().find(".svg"), std::string::npos);
    const auto no_folder = write_picture(sample::drain(), folder.filePath(QStringLiteral("none/a.png")), spec);
    ASSERT_FALSE(no_folder);
    EXPECT_EQ(no_folder.error().failure, Failure::not_found);
    EXPECT_FALSE(write_picture(sample::drain(), folder.path() + QStringLiteral("/"), spec));
    for (const PictureSpec& bad :
         {PictureSpec{.size = {0, 200}, .ground = {}, .font = {}}, PictureSpec{.size = {300, 99999}, .ground = {}, .font = {}},
          PictureSpec{.size = {300, 200}, .scale = -1, .ground = {}, .font = {}},
          PictureSpec{.size = {9000, 9000}, .scale = 50, .ground = {}, .font = {}}}) {
        EXPECT_FALSE(render_picture(sample::drain(), bad));
    }
}

TEST(Picture, a_ground_with_alpha_is_made_opaque) {
    const auto image = render_picture(sample::vessels(), {.size = {300, 200}, .ground = QColor(255, 255, 255, 0), .font = {}});
    ASSERT_TRUE(image);
    EXPECT_EQ(QColor(image.value().pixel(0, 0)), QColor(Qt::white));
}

TEST(Picture, the_smallest_and_emptiest_are_drawn_without_harm) {
    for (const PictureContent& content :
         {PictureContent(ChartContent{}), PictureContent(BarContent{}), PictureContent(VesselRowContent{}), PictureContent(PhotoContent{}),
          PictureContent(sample::drain()), PictureContent(sample::bars()), PictureContent(sample::vessels())})
        for (const QSize size : {QSize(1, 1), QSize(40, 30), QSize(200, 12)}) {
            PictureSpec spec{.size = size, .ground = {}, .font = {}};
            for (const bool with_words : {false, true}) {
                spec.with_words = with_words;
                const auto image = render_picture(content, spec);
                ASSERT_TRUE(image);
                EXPECT_EQ(image.value().size(), size);
            }
        }
}

} // namespace ullage
