// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QStringList>

namespace ullage::test {

/// A new logbook in a folder of its own, and a list of the events that the document announces.
class DocumentTest : public ::testing::Test {
protected:
    void SetUp() override {
        const auto note = [this](const char* name) { return [this, name] { events.append(QString::fromLatin1(name)); }; };
        QObject::connect(&document, &Document::opened, note("opened"));
        QObject::connect(&document, &Document::closed, note("closed"));
        QObject::connect(&document, &Document::unitsChanged, note("units"));
        QObject::connect(&document, &Document::metersChanged, note("meters"));
        QObject::connect(&document, &Document::runsChanged, note("runs"));
        QObject::connect(&document, &Document::readingsChanged, [this](const RunId& uuid) {
            events.append(QStringLiteral("readings"));
            last_readings_of = uuid;
        });
        QObject::connect(&document, &Document::saved, [this](qint64 time_ms) { saved_ms = time_ms; });
        QObject::connect(&document, &Document::error, [this](const QString& sentence) { failures.append(sentence); });
        const auto made = document.create(file());
        ASSERT_TRUE(made) << made.error().sentence();
        events.clear();
    }

    [[nodiscard]] QString file(const char* name = "bench.ullage") const { return QString::fromStdString((folder / name).string()); }

    Unit add_unit(const char* name = "Osk 1200") {
        Unit unit;
        unit.name = name;
        unit.rated_energy_wh = 1200;
        return document.addUnit(unit).value();
    }

    ullage::Run start_drain(const Unit& unit) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.started_full = true;
        return document.addRun(run).value();
    }

    Reading note(const ullage::Run& run, double gauge_percent, double register_wh) {
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.gauge_percent = gauge_percent;
        values.register_wh = register_wh;
        return document.record(run.uuid, values).value();
    }

    TempFolder folder;
    FakeClock clock;
    Document document{clock};
    QStringList events;
    RunId last_readings_of;
    qint64 saved_ms = 0;
    QStringList failures;
};

} // namespace ullage::test
