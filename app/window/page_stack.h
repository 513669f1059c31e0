// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "models/logbook_tree_model.h"
#include "window/late_page.h"
#include "window/page_entry.h"

#include <QSet>
#include <QStackedWidget>

#include <string>
#include <utility>
#include <vector>

namespace ullage {

class BenchPage;
class ComparisonPage;
class LoadListsPage;
class MetersPage;
class PvPage;
class RunPage;
class Settings;
class SizingPage;
class UnitPage;
class WelcomePage;

/// The pages of the window: which one is in sight and what it shows. Each is made when it is first needed, see LatePage; the window enters all of
/// them by add().
class PageStack final : public QStackedWidget {
    Q_OBJECT
public:
    /// Both must outlive it. The welcome page is in sight where nothing else is shown before the window is.
    PageStack(Document& document, Settings& settings);

    /// Never higher than a low screen has room for: pages arrange themselves by the height that they get.
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] LatePage<WelcomePage>& welcome() { return welcome_page_; }
    [[nodiscard]] LatePage<UnitPage>& unit() { return unit_page_; }
    [[nodiscard]] LatePage<RunPage>& run() { return run_page_; }
    [[nodiscard]] LatePage<MetersPage>& meters() { return meters_page_; }
    [[nodiscard]] LatePage<LoadListsPage>& loadLists() { return load_lists_page_; }
    [[nodiscard]] LatePage<ComparisonPage>& comparison() { return comparison_page_; }
    [[nodiscard]] LatePage<BenchPage>& bench() { return bench_page_; }
    [[nodiscard]] LatePage<PvPage>& pv() { return pv_page_; }
    [[nodiscard]] LatePage<SizingPage>& sizing() { return sizing_page_; }

    /// Enters a page into the table of pages; what its parts mean: PageEntry. `made_so` is called once it is made.
    template <class Page, class Make, class Made, class Show, class Uuid, class IsThere>
    void add(LatePage<Page>& page, LogbookTreeModel::Row row, Make make, Made made_so, Show show, Uuid uuid, IsThere is_there);

    void showUnit(const UnitId& unit_uuid);
    void showRun(const RunId& run_uuid);
    void showMeter(const MeterId& meter_uuid);
    void showLoadList(const LoadListId& list_uuid);
    void showLoadLists(); ///< with the list selected last
    void showComparison();
    void showBench();
    void showPvInput();
    void showPvSheet(const PvSheetId& sheet_uuid);
    void showSizing(); ///< for the list selected on the page of load lists last
    /// Shows a run with the keyboard in its entry row.
    void enterReading(const RunId& run_uuid);
    void showWelcome();
    /// A run that goes on, else the first unit, else the welcome page.
    void showDefaultPage();
    /// The page of this row, or of this kind of rows, in the tree.
    void showRow(LogbookTreeModel::Row row, const std::string& uuid);
    [[nodiscard]] bool showRememberedPage();         ///< false where it is not of this logbook, or is gone
    void makeRememberedPage(const QString& logbook); ///< where the page remembered is of that logbook, ahead of showing it
    void rememberPage();
    void leaveWhatIsGone(); ///< another page, where what is shown has been withdrawn
    void forget();          ///< what is shown; another logbook is open

    [[nodiscard]] const PageEntry* currentPage() const; ///< null for the welcome page
    [[nodiscard]] UnitId currentUnit() const;           ///< of the unit or run shown; empty elsewhere
    [[nodiscard]] const UnitId& unitUuid() const { return unit_uuid_; }
    [[nodiscard]] const RunId& runUuid() const { return run_uuid_; }
    [[nodiscard]] const MeterId& meterUuid() const { return meter_uuid_; }

    void keepSplitters();    ///< where the user has put them, in the settings
    void makeAllPages();     ///< that nobody has asked for yet
    void makePagesInTurns(); ///< the same, one after the other in quiet moments

signals:
    void moved();                         ///< another page, or something else on it, is in sight
    void analysed();                      ///< much was computed beside the window; lists may show more now
    void made();                          ///< a page was made
    void notice(const QString& sentence); ///< of any page
    void error(const QString& sentence);
    void done(); ///< what went wrong on a page is answered

protected:
    void showEvent(QShowEvent* event) override;

private:
    /// Computes what pages show of these units beside the window, where there is much of it; false where that was cancelled.
    [[nodiscard]] bool analyseFirst(const std::vector<UnitId>& unit_uuids, bool with_runs);
    void restoreSplitters(const QWidget& page); ///< once a page, after it has its size
    bool makeNextPage();                        ///< false where none is left

    Document& document_;
    Settings& settings_;
    QWidget* nothing_; ///< what a stack has in sight costs its layout, also before it is shown
    LatePage<WelcomePage> welcome_page_{"welcomePage"};
    std::vector<PageEntry> page_table_;
    LatePage<UnitPage> unit_page_{"unitPage"};
    LatePage<RunPage> run_page_{"runPage"};
    LatePage<MetersPage> meters_page_{"metersPage"};
    LatePage<LoadListsPage> load_lists_page_{"loadListsPage"};
    LatePage<ComparisonPage> comparison_page_{"comparisonPage"};
    LatePage<BenchPage> bench_page_{"benchPage"};
    LatePage<PvPage> pv_page_{"pvPage"};
    LatePage<SizingPage> sizing_page_{"sizingPage"};
    // What is shown, as far as it is one of these.
    UnitId unit_uuid_;
    RunId run_uuid_;
    MeterId meter_uuid_;
    QSet<const QWidget*> restored_; ///< pages whose splitters stand as the user left them
};

template <class Page, class Make, class Made, class Show, class Uuid, class IsThere>
void PageStack::add(LatePage<Page>& page, LogbookTreeModel::Row row, Make make, Made made_so, Show show, Uuid uuid, IsThere is_there) {
    page.comeFrom(std::move(make), [this, &page, made_so] {
        addWidget(page);
        // What any page notices, and what goes wrong there, stands in the window's one bar.
        if constexpr (requires { &Page::notice; }) connect(page.get(), &Page::notice, this, &PageStack::notice);
        if constexpr (requires { &Page::error; }) connect(page.get(), &Page::error, this, &PageStack::error);
        if constexpr (requires { &Page::done; }) connect(page.get(), &Page::done, this, &PageStack::done);
        emit made();
        made_so();
    });
    page_table_.push_back({page.name(), row, [&page] { return page.widget(); }, [&page] { (void)page.get(); }, show, uuid, is_there});
}

} // namespace ullage
