// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/source_form.h"
#include "peers.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>

namespace ullage {
namespace {

using namespace test;

class SourceFormTest : public testing::Test {
protected:
    void open(const std::optional<LiveSource>& source = std::nullopt) {
        Meter meter;
        meter.name = "Bench plug";
        form = std::make_unique<SourceForm>(meter, source);
        QObject::connect(form.get(), &FormDialog::submitted, form.get(), [this] { ++submitted; });
        form->show();
    }
    template <class T>
    T& part(const char* name) const {
        T* found = form->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }
    void choose(SourceKind kind) const {
        auto& kinds = part<QComboBox>("kindCombo");
        kinds.setCurrentIndex(kinds.findData(static_cast<int>(kind)));
    }

    std::unique_ptr<SourceForm> form;
    int submitted = 0;
};

TEST_F(SourceFormTest, each_kind_shows_the_fields_that_it_has) {
    open();
    const auto shown = [this](const char* name) { return part<QWidget>(name).isVisible(); };
    choose(SourceKind::modbus_tcp);
    EXPECT_TRUE(shown("stationEdit") && shown("intervalEdit") && shown("fieldsEdit"));
    EXPECT_FALSE(shown("lineEdit") || shown("userEdit") || shown("tlsCheck"));
    choose(SourceKind::mqtt);
    EXPECT_TRUE(shown("userEdit") && shown("passwordEdit") && shown("tlsCheck"));
    EXPECT_FALSE(shown("stationEdit") || shown("intervalEdit"));
    choose(SourceKind::readout);
    EXPECT_TRUE(shown("lineEdit") && shown("intervalEdit"));
    part<QComboBox>("kindCombo").setCurrentIndex(0);
    EXPECT_FALSE(shown("addressEdit") || shown("tryButton"));
    part<QPushButton>("submitButton").click();
    EXPECT_EQ(submitted, 1);
    EXPECT_EQ(form->source(), std::nullopt) << "not read live";
}

TEST_F(SourceFormTest, what_cannot_be_understood_is_explained_and_nothing_is_submitted) {
    open();
    choose(SourceKind::modbus_tcp);
    part<QPushButton>("submitButton").click();
    part<QLineEdit>("addressEdit").setText(QStringLiteral("192.0.2.10"));
    part<QPlainTextEdit>("fieldsEdit").setPlainText(QStringLiteral("charge holding 3"));
    part<QPushButton>("submitButton").click();
    EXPECT_EQ(submitted, 0);
    bool explained = false;
    for (const QLabel* label : form->findChildren<QLabel*>())
        explained = explained ||
                    (label->isVisible() && label->text().contains(QStringLiteral("begin with register, power, voltage, current, gauge or output")));
    EXPECT_TRUE(explained);
    part<QPlainTextEdit>("fieldsEdit").setPlainText(QStringLiteral("power holding 3 as f32"));
    part<QPushButton>("submitButton").click();
    EXPECT_EQ(submitted, 1);
    EXPECT_EQ(form->doubts().size(), 1) << "it was never tried";
}

TEST_F(SourceFormTest, try_shows_the_value_with_unit_age_and_rate_and_what_was_tried_is_no_doubt) {
    DrainTruth truth;
    ModbusPeer peer(truth, false);
    open();
    choose(SourceKind::modbus_tcp);
    part<QLineEdit>("addressEdit").setText(QString::fromStdString(peer.source().address));
    part<QLineEdit>("intervalEdit").setText(QStringLiteral("0.1 s"));
    part<QPlainTextEdit>("fieldsEdit").setPlainText(QStringLiteral("sunspec imported"));
    part<QPushButton>("tryButton").click();
    auto& value = part<QLabel>("liveValueLabel");
    auto& about = part<QLabel>("liveAboutLabel");
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return value.text().endsWith(QStringLiteral("W")) && about.text().contains(QStringLiteral("a second")); }, 10'000))
        << value.text().toStdString() << " / " << about.text().toStdString();
    EXPECT_TRUE(about.text().contains(QStringLiteral("SunSpec meter model 203"))) << about.text().toStdString();
    EXPECT_TRUE(about.text().contains(QStringLiteral("s ago")));
    part<QPushButton>("submitButton").click();
    ASSERT_EQ(submitted, 1);
    EXPECT_TRUE(form->doubts().isEmpty());
    ASSERT_TRUE(form->source());
    EXPECT_EQ(form->source()->sunspec, EnergyDirection::imported);
}

TEST_F(SourceFormTest, a_source_that_is_not_there_says_so_in_the_face) {
    open();
    choose(SourceKind::scpi_tcp);
    part<QLineEdit>("addressEdit").setText(QStringLiteral("127.0.0.1:%1").arg(free_port()));
    part<QPlainTextEdit>("fieldsEdit").setPlainText(QStringLiteral("power MEAS:POW?"));
    part<QPushButton>("tryButton").click();
    auto& trouble = part<QLabel>("liveTroubleLabel");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !trouble.text().isEmpty(); }, 10'000));
}

TEST_F(SourceFormTest, a_kept_source_is_shown_as_it_was_entered) {
    LiveSource source;
    source.kind = SourceKind::readout;
    source.address = "/dev/ttyUSB7";
    source.line = {300, 7, 'E', 1};
    source.interval_s = 15;
    ASSERT_TRUE(take_fields(source, "register 1.8.0\npower 16.7.0 in kW"));
    open(source);
    EXPECT_EQ(part<QLineEdit>("lineEdit").text(), QStringLiteral("300 7E1"));
    part<QPushButton>("submitButton").click();
    EXPECT_EQ(form->source(), source);
}

} // namespace
} // namespace ullage
