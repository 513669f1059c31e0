// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/report/inside/report_method.h"

#include "formats/results/table_method.h"

#include <algorithm>

namespace ullage {

std::vector<std::pair<Message, Message>> report_method(const MeasureOptions& options) {
    std::vector<std::pair<Message, Message>> parts = comparison_method(options);
    Message sources;
    const auto own = std::ranges::find(parts, say(phrase("results", "Sources")), &std::pair<Message, Message>::first);
    if (own != parts.end()) {
        sources = own->second + " ";
        parts.erase(own);
    }
    const Message on_figures = say(phrase("results", "What the figures are")); // stands among the cautions
    std::erase_if(parts, [&on_figures](const auto& part) { return part.first == on_figures; });
    parts.insert(
        parts.end(),
        {{say(phrase("report", "Gauge against meter")),
          say(phrase(
              "report",
              "Every gauge reading is paired with the energy delivered by that moment. In a drain from full to cut-off the gauge error is the gauge "
              "less the share of the delivered energy that is still to come; in any other run the label's energy stands for the whole. "
              "Delivered against gauge-implied energy is fitted as a straight line with uncertainties in both (York and others 2004)."))},
         {say(phrase("report", "Findings")),
          say(phrase(
              "report",
              "An accurate gauge falls between two readings by a share between that of the energy and that of the time, whatever the unit's own "
              "draw is; only what lies outside, beyond gauge step and uncertainty, is called a fault. The least gauge error is the smallest "
              "worst error over every physically possible unit: a small linear programme. In a drain from full to cut-off each single "
              "reading is held against the shares of energy and time that had gone. A lone reading that a slip of the pen explains is doubted itself."))},
         {say(phrase("report", "When it went off")),
          say(phrase(
              "report",
              "The moment of cut-off is taken from the log of the meter; else from the last watt-hours of a steady load; else it lies within five "
              "minutes before it was noted, or as many as the run states, and of a run found off anywhere since the last reading."))},
         {say(phrase("report", "Where the energy goes")),
          say(phrase(
              "report",
              "While the output is on the unit itself consumes power: the no-load loss of IEC 61683. Within one run it is told from energy per "
              "point only if the gauge is linear in stored energy and the load varied. Over several full drains delivered energy "
              "falls with the hours of output on, which needs no gauge: D = E* − P*·T − c·Q, which follows from losses that are a constant, a part "
              "that grows with the load, and a part that grows with its square. The program's help derives it."))},
         {say(phrase("report", "Sources")),
          sources +
              say(phrase(
                  "report",
                  "IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. "
                  "Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of "
                  "Physics 72, 2004, 367."))}});
    return parts;
}

} // namespace ullage
