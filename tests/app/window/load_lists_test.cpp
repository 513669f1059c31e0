// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "dialogs/appliance_form.h"
#include "models/logbook_tree_model.h"
#include "models/table_model.h"
#include "pages/comparison/comparison_page.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QTreeView>

namespace ullage {

using test::WindowTest;

namespace {

/// The page of load lists in the window, and forms above it.
class LoadListsTest : public WindowTest {
protected:
    void add_list(const QString& name) {
        trigger("addLoadListAction");
        type("nameEdit", name);
        click("submitButton");
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    void add_appliance(const QString& name, const QString& power, const QString& hours) {
        click("addApplianceButton");
        type("nameEdit", name);
        type("powerEdit", power);
        type("hoursEdit", hours);
        click("submitButton");
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    [[nodiscard]] QTableView* appliances() const { return find<QTableView>("appliancesTable"); }
};

} // namespace

TEST_F(LoadListsTest, an_empty_page_says_what_to_do_and_a_new_list_says_what_comes_next) {
    new_logbook();
    trigger("loadListsAction");
    EXPECT_EQ(page(), QStringLiteral("loadListsPage"));
    EXPECT_TRUE(find<QLabel>("noLoadListsLabel")->isVisible());
    EXPECT_TRUE(find<QLabel>("noLoadListsLabel")->text().contains(QLatin1String("Add load list")));
    EXPECT_FALSE(enabled("addApplianceAction"));
    add_list(QStringLiteral("Show night"));
    EXPECT_FALSE(find<QLabel>("noLoadListsLabel")->isVisible());
    EXPECT_TRUE(find<QLabel>("noAppliancesLabel")->isVisible());
    EXPECT_TRUE(enabled("addApplianceAction"));
    EXPECT_EQ(find<QTreeView>("logbookTree")->currentIndex().data().toString(), QStringLiteral("Show night"));
}

TEST_F(LoadListsTest, appliances_are_added_edited_and_removed_with_undo_and_the_totals_follow) {
    new_logbook();
    add_list(QStringLiteral("Show night"));
    add_appliance(QStringLiteral("projector"), QStringLiteral("165 W"), QStringLiteral("2,5 h"));
    add_appliance(QStringLiteral("lamp"), QStringLiteral("9"), QStringLiteral("4"));
    ASSERT_EQ(document.loadLists()[0].appliances.size(), 2u);
    EXPECT_EQ(appliances()->model()->rowCount(), 3) << "two and their sum";
    EXPECT_TRUE(find<QLabel>("loadTotalsLabel")->text().contains(QLatin1String("174 W"))) << find<QLabel>("loadTotalsLabel")->text().toStdString();

    appliances()->setCurrentIndex(appliances()->model()->index(1, 0));
    click("editApplianceButton");
    EXPECT_EQ(find<QLineEdit>("powerEdit")->text(), QStringLiteral("9 W"));
    type("countEdit", QStringLiteral("4"));
    type("dutyEdit", QStringLiteral("50 %"));
    click("submitButton");
    EXPECT_EQ(document.loadLists()[0].appliances[1].count, 4);
    EXPECT_EQ(document.loadLists()[0].appliances[1].duty, 0.5);

    appliances()->setCurrentIndex(appliances()->model()->index(0, 0));
    click("removeApplianceButton");
    ASSERT_EQ(document.loadLists()[0].appliances.size(), 1u);
    EXPECT_EQ(document.loadLists()[0].appliances[0].name, "lamp");
    trigger("undoAction");
    EXPECT_EQ(document.loadLists()[0].appliances.size(), 2u);
    trigger("withdrawLoadListAction");
    EXPECT_TRUE(document.loadLists().empty());
    trigger("undoAction");
    EXPECT_EQ(document.loadLists().size(), 1u);
}

TEST_F(LoadListsTest, the_sum_is_no_appliance_to_edit) {
    new_logbook();
    add_list(QStringLiteral("Show night"));
    add_appliance(QStringLiteral("lamp"), QStringLiteral("9"), QStringLiteral("4"));
    appliances()->setCurrentIndex(appliances()->model()->index(1, 0));
    EXPECT_FALSE(find<QPushButton>("editApplianceButton")->isEnabled());
    EXPECT_FALSE(enabled("removeApplianceAction"));
}

TEST_F(LoadListsTest, a_second_list_of_one_name_is_refused_in_its_form) {
    new_logbook();
    add_list(QStringLiteral("Show night"));
    trigger("addLoadListAction");
    type("nameEdit", QStringLiteral("show night"));
    click("submitButton");
    EXPECT_TRUE(find<QLabel>("refusalLabel")->text().contains(QLatin1String("another name")));
    EXPECT_EQ(document.loadLists().size(), 1u);
}

TEST_F(LoadListsTest, lists_come_in_from_files_and_one_that_cannot_is_named_with_its_line) {
    new_logbook();
    trigger("loadListsAction");
    prompts.to_open = {write("evening.csv", "# load_list: Evening\nname,power_w,hours_per_day\nlamp,12,5\n"),
                       write("wrong.csv", "# load_list: Wrong\nname,power_w,hours_per_day\nlamp,much,5\n")};
    click("importLoadListButton");
    ASSERT_EQ(document.loadLists().size(), 1U);
    EXPECT_EQ(document.loadLists()[0].appliances[0].name, "lamp");
    EXPECT_EQ(find<QLabel>("loadListTitleLabel")->text(), QStringLiteral("Evening"));
    EXPECT_TRUE(message().contains(QStringLiteral("wrong.csv")) && message().contains(QStringLiteral("much"))) << message().toStdString();
    prompts.to_open = {file("evening.csv")};
    trigger("importLoadListAction");
    EXPECT_EQ(document.loadLists().size(), 1U) << "one of that name is there";
    EXPECT_FALSE(message().isEmpty());
    document.undoStack().undo();
    EXPECT_TRUE(document.loadLists().empty());
}

TEST_F(LoadListsTest, the_page_comes_back_with_its_list_when_the_logbook_is_opened_again) {
    new_logbook();
    add_list(QStringLiteral("A"));
    add_list(QStringLiteral("B"));
    const QString path = document.path();
    document.close();
    window->openLogbook(path);
    EXPECT_EQ(page(), QStringLiteral("loadListsPage"));
    EXPECT_EQ(find<QTreeView>("logbookTree")->currentIndex().data().toString(), QStringLiteral("B"));
}

TEST_F(LoadListsTest, columns_of_the_comparison_outlive_the_window) {
    new_logbook();
    add_unit();
    const auto heads = [this] {
        return window->findChild<ComparisonPage*>()->findChild<QTableView*>(QStringLiteral("comparisonView"))->horizontalHeader();
    };
    const auto first = [&] {
        const auto& columns = window->findChild<ComparisonPage*>()->findChild<TableModel*>()->table().columns;
        return columns[static_cast<std::size_t>(heads()->logicalIndex(0))].key;
    };
    window->showComparison();
    const int column = window->findChild<ComparisonPage*>()->findChild<TableModel*>()->columnOf("delivered_wh");
    heads()->moveSection(heads()->visualIndex(column), 0);
    ASSERT_EQ(first(), "delivered_wh");
    window.reset();
    show();
    EXPECT_EQ(first(), "delivered_wh");
}

namespace {

class ApplianceFormTest : public ::testing::Test {
protected:
    ApplianceFormTest() {
        form.setAttribute(Qt::WA_DeleteOnClose, false);
        QObject::connect(&form, &FormDialog::submitted, &form, [this] { ++submitted; });
        form.show();
    }
    void type(const char* name, const char* text) { form.findChild<QLineEdit*>(QString::fromLatin1(name))->setText(QString::fromUtf8(text)); }
    void submit() { QTest::mouseClick(form.findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton); }
    [[nodiscard]] QString error(const char* name) const {
        const auto* label = form.findChild<QLabel*>(QString::fromLatin1(name) + QStringLiteral("ErrorLabel"));
        return label->isHidden() ? QString() : label->text();
    }

    ApplianceForm form{Appliance{}, "Show night"};
    int submitted = 0;
};

} // namespace

TEST_F(ApplianceFormTest, measured_energy_stands_for_power_and_duty) {
    type("nameEdit", "cold box");
    type("measuredEdit", "0,5 kWh");
    type("overEdit", "1 d");
    type("hoursEdit", "24");
    type("nightEdit", "10 h");
    form.findChild<QComboBox*>(QStringLiteral("connectedCombo"))->setCurrentIndex(1);
    submit();
    ASSERT_EQ(submitted, 1);
    EXPECT_EQ(form.appliance().measured, (MeasuredUse{500, 24}));
    EXPECT_FALSE(form.appliance().power_w);
    EXPECT_TRUE(form.appliance().always_connected);
    EXPECT_TRUE(check(form.appliance()).ok());
}

TEST_F(ApplianceFormTest, what_cannot_be_is_explained_at_its_field) {
    type("nameEdit", "lamp");
    submit();
    EXPECT_FALSE(error("power").isEmpty());
    EXPECT_FALSE(error("hours").isEmpty());
    type("powerEdit", "9 W");
    type("hoursEdit", "30");
    type("countEdit", "1.5");
    type("dutyEdit", "140");
    type("startEdit", "5 W");
    type("measuredEdit", "100 Wh");
    submit();
    for (const char* field : {"hours", "count", "duty", "start", "measured"}) EXPECT_FALSE(error(field).isEmpty()) << field;
    type("overEdit", "2 h");
    submit();
    EXPECT_TRUE(error("measured").contains(QLatin1String("50.0 W on average")));
    EXPECT_EQ(submitted, 0);
    for (const auto& [field, text] :
         {std::pair("hoursEdit", "5"), std::pair("countEdit", "2"), std::pair("dutyEdit", "70"), std::pair("startEdit", ""),
          std::pair("measuredEdit", ""), std::pair("overEdit", ""), std::pair("nightEdit", "6")})
        type(field, text);
    submit();
    EXPECT_FALSE(error("night").isEmpty());
    type("nightEdit", "5");
    submit();
    EXPECT_EQ(submitted, 1);
}

} // namespace ullage
