// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Runs whose truth is known: a battery with losses (simulator_unit.h), its gauge (simulator_gauge.h), a meter
// (simulator_meter.h), a tester who notes them (simulator_tester.h), and what comes of it (simulator_run.h).
#include "support/simulator_gauge.h"
#include "support/simulator_meter.h"
#include "support/simulator_run.h"
#include "support/simulator_tester.h"
#include "support/simulator_unit.h"
