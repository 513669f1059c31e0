// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/picture_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <memory>

namespace ullage::test {
namespace {

class PictureDialogTest : public ::testing::Test {
protected:
    void open(const PictureSpec& start) {
        form = new PictureDialog(start);
        QObject::connect(form, &FormDialog::submitted, [this] { ++submitted; });
        form->show();
    }
    void TearDown() override { delete form; }

    void submit(const char* width, const char* height, int scale = 0, int colours = 0) {
        form->findChild<QLineEdit*>(QStringLiteral("widthEdit"))->setText(QString::fromUtf8(width));
        form->findChild<QLineEdit*>(QStringLiteral("heightEdit"))->setText(QString::fromUtf8(height));
        form->findChild<QComboBox*>(QStringLiteral("scaleCombo"))->setCurrentIndex(scale);
        form->findChild<QComboBox*>(QStringLiteral("coloursCombo"))->setCurrentIndex(colours);
        QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton);
    }
    [[nodiscard]] QString error(const char* name) const {
        return form->findChild<QLabel*>(QLatin1String(name) + QStringLiteral("ErrorLabel"))->text();
    }

    PictureDialog* form = nullptr;
    int submitted = 0;
};

TEST_F(PictureDialogTest, sides_are_understood_in_mm_cm_inches_and_px) {
    open({});
    for (const auto& [width, height, size] : {std::tuple{"25.4 mm", "2,54 cm", QSize(96, 96)}, std::tuple{"10 in", "500 px", QSize(960, 500)},
                                              std::tuple{"640", "480", QSize(640, 480)}}) {
        submit(width, height);
        EXPECT_EQ(form->spec().size, size) << width;
    }
    EXPECT_EQ(submitted, 3);
}

TEST_F(PictureDialogTest, what_is_accepted_unchanged_is_what_it_started_from) {
    PictureSpec start;
    start.size = QSize(1000, 600);
    start.scale = 2;
    start.palette = dark_palette();
    open(start);
    QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton);
    EXPECT_EQ(submitted, 1);
    EXPECT_EQ(form->spec().size, start.size);
    EXPECT_EQ(form->spec().scale, 2);
    EXPECT_TRUE(form->spec().palette.dark);
    EXPECT_FALSE(form->spec().ground.has_value());
}

TEST_F(PictureDialogTest, print_is_light_on_white_and_opens_so_again) {
    open({});
    submit("100 mm", "60 mm", 3, 2);
    EXPECT_EQ(form->spec().ground, QColor(Qt::white));
    EXPECT_FALSE(form->spec().palette.dark);
    EXPECT_EQ(form->spec().scale, 6.25); // 600 dots an inch over 96
    const PictureSpec chosen = form->spec();
    delete form;
    open(chosen);
    EXPECT_EQ(form->findChild<QComboBox*>(QStringLiteral("coloursCombo"))->currentIndex(), 2);
    EXPECT_EQ(form->findChild<QComboBox*>(QStringLiteral("scaleCombo"))->currentIndex(), 3);
}

TEST_F(PictureDialogTest, the_pixels_that_come_of_it_are_said_while_typing) {
    open({});
    form->findChild<QLineEdit*>(QStringLiteral("widthEdit"))->setText(QStringLiteral("6 in"));
    form->findChild<QLineEdit*>(QStringLiteral("heightEdit"))->setText(QStringLiteral("4 in"));
    form->findChild<QComboBox*>(QStringLiteral("scaleCombo"))->setCurrentIndex(2);
    EXPECT_TRUE(form->findChild<QLabel*>(QStringLiteral("pixelsLabel"))->text().contains(QStringLiteral("1800 × 1200")));
}

TEST_F(PictureDialogTest, a_side_that_cannot_be_is_explained_at_its_field_and_nothing_changes) {
    open({});
    const PictureSpec before = form->spec();
    for (const auto& [width, height, at] :
         {std::tuple{"wide", "9 cm", "width"}, std::tuple{"9 cm", "", "height"}, std::tuple{"-4 mm", "9 cm", "width"},
          std::tuple{"0", "9 cm", "width"}, std::tuple{"9 km", "9 cm", "width"}, std::tuple{"1e9 px", "9 cm", "width"},
          std::tuple{"0.01 mm", "9 cm", "width"}, std::tuple{"19000 px", "19000 px", "width"}}) {
        submit(width, height, 3);
        EXPECT_FALSE(error(at).isEmpty()) << width << " by " << height;
        EXPECT_EQ(form->spec().size, before.size);
    }
    EXPECT_EQ(submitted, 0);
}

} // namespace
} // namespace ullage::test
