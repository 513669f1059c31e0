// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/run/power_curve.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;

namespace ullage {

class LineChart;
class LogFollower;
class LogList;

/// What the logs of a run show: power over time by each meter and by the unit itself, the gauge, and the load's own figures. Reads them when it is in
/// sight and they have changed.
class LogView final : public QWidget {
    Q_OBJECT
public:
    explicit LogView(Document& document, QWidget* parent = nullptr);

    void setRun(const RunId& run_uuid);
    /// Shows which logs are followed, and offers it. It must outlive the view.
    void setFollower(LogFollower& follower);
    [[nodiscard]] QWidget* chart() const;

signals:
    void importAsked();
    void followAsked(const TraceId& trace_uuid); ///< a file is wanted that continues this log
    void applianceAsked();                       ///< the load is wanted as a line of a load list

protected:
    void showEvent(QShowEvent* event) override;

private:
    void look();
    void showLogs();
    void showLoad(const std::optional<LoadStatistics>& load);
    void showCurve();
    void showSpan(double from_h, double to_h);
    void withdraw(int place);
    [[nodiscard]] Result<void> readCurves(UtcMs origin_ms);
    void showGauge();
    void showGaugeSpan(double from_h, double to_h);
    [[nodiscard]] std::string markOf(const std::vector<Trace>& traces) const; ///< what tells one state from another

    Document& document_;
    LogFollower* follower_ = nullptr;
    RunId run_uuid_;
    std::string seen_; ///< markOf() what is shown
    std::vector<Trace> traces_;
    struct Drawn {
        ChartSeries series; ///< without points
        PowerCurve curve;
    };
    std::vector<Drawn> curves_; ///< of power
    std::optional<PowerCurve> gauge_;
    ChartContent content_, gauge_content_;     ///< of the charts, without points
    TraceId curve_of_;                         ///< first log of the curve
    double whole_from_h_ = 0, whole_to_h_ = 0; ///< what the chart showed unzoomed
    bool showing_ = false;
    LineChart *chart_, *gauge_chart_;
    QLabel *empty_, *error_;
    LogList* logs_;
    QWidget *area_ = nullptr, *charts_box_ = nullptr, *figures_box_;
    QGridLayout* figures_;
    QPushButton *import_, *appliance_;
};

} // namespace ullage
