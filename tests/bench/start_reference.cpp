// SPDX-License-Identifier: GPL-3.0-or-later
// What a start is held against: a window with one chart of Qt Charts in it and nothing else. Ends when that has been painted.
#include "bench/first_paint.h"

#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QLineSeries>
#include <QMainWindow>

int main(int count, char** words) {
    QApplication application(count, words);
    const ullage::bench::FirstPaint first_paint(application);
    auto* series = new QLineSeries;
    for (int i = 0; i < 10; ++i) series->append(i, i * i % 7);
    auto* chart = new QChart;
    chart->addSeries(series);
    chart->createDefaultAxes();
    QMainWindow window;
    window.setCentralWidget(new QChartView(chart));
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
