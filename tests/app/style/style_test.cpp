// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"
#include "style/icons.h"
#include "style/numbers.h"
#include "style/roles.h"
#include "style/style_sheet.h"
#include "style/theme.h"
#include "style/wrapped_label.h"
#include "support/source_dir.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QFontMetrics>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QSet>
#include <QTableView>
#include <QTableWidget>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace ullage {
namespace {

// Relative luminance and contrast ratio, WCAG 2.2 (W3C Recommendation, 2023).
double luminance(const QColor& colour) {
    const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)}); // of values: of temporaries minmax gives references
    return (high + 0.05) / (low + 0.05);
}

QSet<QRgb> colours_of(const QImage& image) {
    QSet<QRgb> colours;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) colours.insert(image.pixel(x, y));
    return colours;
}

/// Whether a pixel has this colour nearly, as the middle of a thin line has.
bool shows(const QImage& image, const QColor& colour) {
    constexpr int nearly = 60;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor c = image.pixelColor(x, y);
            if (c.alpha() > 255 - nearly && std::abs(c.red() - colour.red()) < nearly && std::abs(c.green() - colour.green()) < nearly &&
                std::abs(c.blue() - colour.blue()) < nearly)
                return true;
        }
    return false;
}

QApplication& application() { return *qobject_cast<QApplication*>(QCoreApplication::instance()); }

} // namespace

TEST(Palette, text_is_legible_on_every_ground_in_both_themes) {
    for (const Palette* p : {&light_palette(), &dark_palette()}) {
        for (const QColor& ground : {p->ground, p->panel, p->selection, p->doubt, p->fault}) EXPECT_GE(contrast(p->ink, ground), 7.0); // WCAG 1.4.6
        // 4.5:1 is WCAG 1.4.3, level AA.
        for (const QColor& text : {p->soft, p->accent, p->good, p->fault_ink, p->doubt_ink})
            for (const QColor& ground : {p->ground, p->panel, p->selection}) EXPECT_GE(contrast(text, ground), 4.5) << text.name().toStdString();
        EXPECT_GE(contrast(p->on_accent, p->accent), 4.5);
        for (const QColor& text : {p->doubt_ink, p->soft}) EXPECT_GE(contrast(text, p->doubt), 4.5);
        for (const QColor& text : {p->fault_ink, p->soft}) EXPECT_GE(contrast(text, p->fault), 4.5);
    }
}

TEST(Palette, what_is_no_text_stands_out_from_what_it_lies_on) {
    // 3:1 is WCAG 1.4.11, level AA: curves and marks of charts, the sign of focus, the edges of fields.
    for (const Palette* p : {&light_palette(), &dark_palette()})
        for (const QColor& ground : {p->ground, p->panel}) {
            for (const QColor& mark : {p->delivered, p->gauge_implied, p->error, p->good, p->sky, p->vermilion, p->accent, p->edge})
                EXPECT_GE(contrast(mark, ground), 3.0) << mark.name().toStdString() << " on " << ground.name().toStdString();
            EXPECT_GE(contrast(p->edge, blended(p->ground, p->panel, 0.75)), 3.0);
        }
}

TEST(Theme, switching_changes_the_palette_in_force_and_tells_listeners) {
    int told = 0;
    const auto connection = QObject::connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, [&told] { ++told; });
    apply_theme(application(), Theme::dark);
    EXPECT_TRUE(current_palette().dark);
    EXPECT_EQ(current_theme(), Theme::dark);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), dark_palette().ground);
    apply_theme(application(), Theme::light);
    EXPECT_FALSE(current_palette().dark);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), light_palette().ground);
    EXPECT_EQ(told, 2);
    QObject::disconnect(connection);
}

TEST(Theme, system_is_light_where_the_desktop_says_nothing) {
    apply_theme(application(), Theme::system);
    EXPECT_FALSE(desktop_is_dark());
    EXPECT_FALSE(current_palette().dark);
}

TEST(StyleSheet, leaves_no_placeholder_and_names_only_pictures_that_exist) {
    apply_theme(application(), Theme::light);
    for (const Palette* p : {&light_palette(), &dark_palette()}) {
        const QString sheet = style_sheet(*p, QApplication::font());
        EXPECT_FALSE(sheet.contains(QLatin1Char('@'))) << sheet.mid(sheet.indexOf(QLatin1Char('@')), 30).toStdString();
        const QRegularExpression url(QStringLiteral("url\\(([^)]+)\\)"));
        int pictures = 0;
        for (auto at = url.globalMatch(sheet); at.hasNext(); ++pictures) {
            const QString name = at.next().captured(1);
            EXPECT_TRUE(QFile::exists(name)) << name.toStdString();
        }
        EXPECT_GT(pictures, 0);
    }
}

TEST(Roles, a_primary_button_is_filled_with_the_accent) {
    apply_theme(application(), Theme::light);
    QPushButton button(QStringLiteral("Record"));
    make_primary(button);
    button.resize(120, 32);
    EXPECT_EQ(QColor(button.grab().toImage().pixel(8, 16)), light_palette().accent);
}

TEST(Roles, text_sizes_last_through_showing_and_a_change_of_theme) {
    apply_theme(application(), Theme::light);
    QWidget page;
    QLabel title(QStringLiteral("Osk 1200"), &page);
    set_text_style(title, Tone::ink, TextSize::title);
    page.show();
    const double wanted_pt = QApplication::font().pointSizeF() * text_factor(TextSize::title);
    for (const Theme theme : {Theme::light, Theme::dark, Theme::light}) {
        apply_theme(application(), theme);
        QApplication::processEvents();
        EXPECT_NEAR(title.font().pointSizeF(), wanted_pt, 0.02);
        EXPECT_TRUE(title.font().bold());
        EXPECT_EQ(title.palette().color(QPalette::WindowText), current_palette().ink);
    }
    set_text_style(title, Tone::soft, TextSize::caption);
    EXPECT_FALSE(title.font().bold());
    EXPECT_EQ(title.palette().color(QPalette::WindowText), current_palette().soft);
}

TEST(Theme, what_is_put_away_while_the_theme_changes_has_its_look_when_it_comes_into_sight) {
    apply_theme(application(), Theme::light);
    QWidget page;
    QWidget tab(&page);
    QLabel title(QStringLiteral("Osk 1200"), &tab);
    set_text_style(title, Tone::ink, TextSize::title);
    QPushButton record(QStringLiteral("Record"), &tab);
    make_primary(record);
    record.setGeometry(0, 40, 120, 32);
    page.show();
    QApplication::processEvents();
    const int light_px = title.sizeHint().width();
    for (const Theme theme : {Theme::dark, Theme::light}) {
        tab.hide();
        apply_theme(application(), theme);
        QApplication::processEvents();
        tab.show();
        EXPECT_EQ(title.palette().color(QPalette::WindowText), current_palette().ink);
        EXPECT_TRUE(title.font().bold());
        EXPECT_EQ(title.sizeHint().width(), light_px);
        EXPECT_EQ(QColor(record.grab().toImage().pixel(8, 16)), current_palette().accent);
    }
}

TEST(WrappedLabel, follows_its_text_its_font_and_its_margins) {
    WrappedLabel label(QStringLiteral("Three drains of like load"));
    const QSize hint = label.sizeHint(), least = label.minimumSizeHint();
    const int height_px = label.heightForWidth(90);
    label.setText(QStringLiteral("Three drains of like load that repeat one another, with their scatter"));
    EXPECT_GT(label.heightForWidth(90), height_px);
    EXPECT_GT(label.sizeHint().width() * label.sizeHint().height(), hint.width() * hint.height());
    label.setText(QStringLiteral("Three drains of like load"));
    QFont larger = label.font();
    larger.setPointSizeF(2 * larger.pointSizeF());
    label.setFont(larger);
    EXPECT_GT(label.heightForWidth(90), height_px);
    EXPECT_GT(label.minimumSizeHint().width(), least.width());
    label.setFont({});
    EXPECT_EQ(label.heightForWidth(90), height_px);
    label.setContentsMargins(20, 7, 20, 7);
    EXPECT_EQ(label.heightForWidth(130), height_px + 14);
    EXPECT_EQ(label.minimumSizeHint().width(), least.width() + 40);
}

TEST(Roles, a_cell_keeps_the_background_that_its_model_gives) {
    apply_theme(application(), Theme::light);
    QTableWidget table(2, 1);
    make_table(table);
    auto* item = new QTableWidgetItem;
    item->setBackground(light_palette().doubt);
    table.setItem(1, 0, item);
    table.resize(200, 160);
    table.show();
    QApplication::processEvents();
    const QRect cell = table.visualItemRect(item);
    EXPECT_EQ(QColor(table.viewport()->grab().toImage().pixel(cell.center())), light_palette().doubt);
}

TEST(Roles, a_checked_box_differs_from_an_empty_one_in_both_themes) {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        apply_theme(application(), theme);
        QCheckBox box(QStringLiteral("own check"));
        box.resize(box.sizeHint());
        const QImage empty = box.grab().toImage();
        box.setChecked(true);
        const QImage checked = box.grab().toImage();
        EXPECT_NE(empty, checked);
        EXPECT_TRUE(colours_of(checked).contains(current_palette().accent.rgb()));
        EXPECT_TRUE(shows(empty.copy(0, 0, 18, empty.height()), current_palette().soft)) << "an outline is there";
    }
}

TEST(Icons, every_glyph_has_a_picture_that_takes_the_theme) {
    for (int n = 0; n <= static_cast<int>(Glyph::clock); ++n) {
        const QIcon icon = glyph_icon(static_cast<Glyph>(n));
        ASSERT_FALSE(icon.isNull()) << n;
        apply_theme(application(), Theme::light);
        const QImage light = icon.pixmap(24, 24).toImage();
        apply_theme(application(), Theme::dark);
        const QImage dark = icon.pixmap(24, 24).toImage();
        EXPECT_TRUE(shows(light, light_palette().ink)) << n;
        EXPECT_NE(light, dark) << n;
    }
}

TEST(Icons, all_have_one_stroke_width_on_a_24_px_grid) {
    const QDir folder(QString::fromStdString((test::source_dir() / "resources/icons").string()));
    const auto files = folder.entryList({QStringLiteral("*.svg")});
    ASSERT_GT(files.size(), 20);
    for (const QString& name : files) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        EXPECT_TRUE(text.contains("viewBox=\"0 0 24 24\"")) << name.toStdString();
        const bool arrow =
            std::ranges::any_of(QStringList{"up-", "down-", "left-", "right-"}, [&](const QString& way) { return name.startsWith(way); });
        EXPECT_TRUE(text.contains(arrow ? "stroke-width=\"3\"" : "stroke-width=\"1.6\"")) << name.toStdString();
    }
}

TEST(Numbers, value_and_interval_are_rounded_to_two_digits_of_the_interval) {
    // JCGM 100:2008, 7.2.6.
    EXPECT_EQ(shown_value(893.27, 16.8, QStringLiteral("Wh"), 0).plain(), QString::fromUtf8("893 ± 17 Wh"));
    EXPECT_EQ(shown_value(0.78104, 0.01562, {}, 2).plain(), QString::fromUtf8("0.781 ± 0.016"));
    EXPECT_EQ(shown_value(936.0, std::nullopt, QStringLiteral("Wh"), 0).plain(), QStringLiteral("936 Wh"));
}

TEST(Numbers, a_quantity_is_set_with_true_minus_signs_and_groups_in_the_unit_that_people_read) {
    EXPECT_EQ(shown_quantity(known("usable_fraction", "1", 0.69, 0.0066, Kind::measured)).plain(), QString::fromUtf8("69.00 ± 0.66 %"));
    EXPECT_EQ(shown_quantity(known("difference", "1", -0.14, 0.02, Kind::measured)).plain(), QString::fromUtf8("\u221214.0 ± 2.0 pt"));
    EXPECT_EQ(shown_quantity(Quantity{"x", "W", {}, -3.5, 12.25, Kind::bracket, {}}).plain(), QString::fromUtf8("\u22124 to 12 W"));
    EXPECT_EQ(shown_as_it_is(known("delivered_wh", "Wh", 12345, std::nullopt, Kind::measured)).value, QString::fromUtf8("12\u202F345"));
    EXPECT_EQ(shown_value(12345.0, 1234.0, QStringLiteral("Wh"), 0).plain(), QString::fromUtf8("12.3 ± 1.2 kWh"));
    const SpeakingIn with_comma(english(), ',');
    EXPECT_EQ(shown_quantity(known("usable_fraction", "1", 0.69, 0.0066, Kind::measured)).plain(), QString::fromUtf8("69,00 ± 0,66 %"));
}

TEST(Numbers, an_absent_value_is_said_rather_than_shown_as_a_number) {
    EXPECT_EQ(shown_value(std::nullopt, 3.0, QStringLiteral("Wh"), 0).plain(), QStringLiteral("not known"));
    EXPECT_EQ(shown_number(std::numeric_limits<double>::quiet_NaN(), 1), QStringLiteral("not known"));
}

TEST(Numbers, groups_start_at_five_digits_and_the_minus_is_a_minus) {
    EXPECT_EQ(shown_number(4312, 0), QStringLiteral("4312"));
    EXPECT_EQ(shown_number(1234567.5, 1), QString::fromUtf8("1\u202F234\u202F567.5"));
    EXPECT_EQ(shown_number(-12345, 0), QString::fromUtf8("\u221212\u202F345"));
    EXPECT_EQ(shown_difference(1.3, 1), QStringLiteral("+1.3"));
    EXPECT_EQ(shown_difference(-0.04, 1), QStringLiteral("0.0"));
}

TEST(Numbers, durations_carry_their_units) {
    EXPECT_EQ(shown_duration(14.6), QStringLiteral("14 h 36"));
    EXPECT_EQ(shown_duration(0.2), QStringLiteral("12 min"));
    EXPECT_EQ(shown_duration(51), QStringLiteral("2 d 3 h"));
    EXPECT_EQ(shown_duration(1.999), QStringLiteral("2 h 00"));
}

TEST(Tables, rows_grow_with_the_text_and_rows_that_a_page_has_set_itself_stay) {
    const QFont usual = QApplication::font();
    QTableView table, own;
    make_table(table);
    make_table(own);
    own.verticalHeader()->setDefaultSectionSize(77);
    QFont large = usual;
    large.setPointSizeF(2 * usual.pointSizeF());
    QApplication::setFont(large);
    QApplication::processEvents();
    EXPECT_GE(table.verticalHeader()->defaultSectionSize(), QFontMetrics(large).height());
    EXPECT_EQ(own.verticalHeader()->defaultSectionSize(), 77);
    QApplication::setFont(usual);
    QApplication::processEvents();
    EXPECT_LT(table.verticalHeader()->defaultSectionSize(), QFontMetrics(large).height());
}

} // namespace ullage
