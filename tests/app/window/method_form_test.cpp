// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/method_form.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include <map>
#include <string>

namespace ullage {

namespace {

TEST(MethodFormTest, the_form_shows_what_is_stated_and_explains_what_cannot_be) {
    MethodForm form({{"repeatability_percent", 0.8}}, MeasureOptions());
    auto* repeatability = form.findChild<QLineEdit*>(QStringLiteral("repeatability_percentEdit"));
    auto* label = form.findChild<QLineEdit*>(QStringLiteral("most_of_label_percentEdit"));
    ASSERT_TRUE(repeatability && label);
    EXPECT_EQ(repeatability->text(), QStringLiteral("0.8 %"));
    EXPECT_EQ(label->placeholderText(), QStringLiteral("usual: 110 %"));
    QSignalSpy submitted(&form, &FormDialog::submitted);
    auto* use = form.findChild<QPushButton*>(QStringLiteral("submitButton"));
    ASSERT_TRUE(use);
    label->setText(QStringLiteral("900"));
    use->click();
    EXPECT_EQ(submitted.count(), 0) << "a battery does not hold nine times its label";
    label->setText(QStringLiteral("115 %"));
    form.findChild<QComboBox*>()->setCurrentIndex(1);
    use->click();
    ASSERT_EQ(submitted.count(), 1);
    EXPECT_EQ(form.stated(),
              (std::map<std::string, double>{{"repeatability_percent", 0.8}, {"most_of_label_percent", 115}, {"simple_acceptance", 1}}));
}

} // namespace

} // namespace ullage
