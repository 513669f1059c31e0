// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/help_texts.h"

#include "base/version.h"
#include "dialogs/cautions.h"
#include "dialogs/photo_words.h"
#include "style/words.h"

namespace ullage {

namespace {

QString row(const QString& left, const QString& right) {
    // The names of keys are long in some languages, and none has a place to break.
    return QStringLiteral("<tr><td style='padding:2px 20px 2px 0; white-space:nowrap'><b>%1</b></td><td style='padding:2px 0'>%2</td></tr>")
        .arg(left.toHtmlEscaped(), right.toHtmlEscaped());
}

KeyList words_of_the_job() {
    return {
        {tr("logbook"), tr("one file with everything below; it ends in .ullage and may be copied at any time")},
        {tr("unit"), tr("a battery storage unit under test, with what its maker claims")},
        {tr("tag"), tr("a short word of yours at a unit, to find it by: the comparison can show the units of one tag")},
        {tr("meter"), tr("the external energy meter between the unit's socket and the load")},
        {tr("register"), tr("the energy number in Wh that the meter counts up")},
        {tr("gauge"), tr("the unit's own display of how full it is, in percent")},
        {tr("run"), tr("one test of one unit, from the first reading to the end")},
        {tr("reading"), tr("one note with its time: gauge, register, watts, a remark")},
        {tr("mark"), tr("a note of an event: load changed, meter zeroed, output tripped, cut-off")},
        {tr("photo"), tr("evidence kept in the logbook with a reading: drop, paste or choose it. %1, %2 MB together. An "
                         "undone reading keeps its photos; a button below the readings shows them. A run sheet does not carry photos; a copy of "
                         "the logbook does")
                          .arg(photo_limits_words())
                          .arg(photos_limit_bytes / 1'000'000)},
        {tr("load list"), tr("appliances that a unit is to feed, under a name: what each takes while on, how long a day, and when")},
        {tr("duty"), tr("share of the time that an appliance is on while it is in use, in percent")},
        {tr("delivered energy"), tr("what the register counted during the run, corrected: Wh at the socket")},
        {tr("gauge-implied energy"), tr("rated energy times the fall of the gauge: what the gauge says has gone")},
        {tr("usable fraction"), tr("delivered energy from full to cut-off, divided by rated energy")},
        {tr("cut-off"), tr("the unit switches its output off by itself")},
        {tr("end of a run"),
         tr("cut-off seen, found off, or stopped by you. The form asks when, how late that may have been noticed, and what was shown "
            "then; what the entry row, the log and the last reading hold is offered. One undo lets the run go on")},
        {tr("round trip"), tr("energy delivered over energy charged, from one state of the unit back to the same")},
        {tr("standby draw"), tr("power that the unit consumes with its output off")},
        {tr("log"),
         tr("the file of a meter or unit that logs. Import log (or drop the file on a run) shows how it was read and asks what it leaves "
            "open; its register and power then go with the gauge readings noted by hand. The tab Log draws its power and states the load. A log "
            "that is still being written is followed, if you tick so: its new rows come in by themselves, also after the program was closed")},
        {tr("charge from PV"),
         tr("of several panels: a run for each, with its own meter and its name as the load. Runs at the same time are added up under "
            "Claims tested")},
        {tr("taper"), tr("the end of a charge, while its power is below 90 % of its highest")},
        {tr("no-load draw"), tr("power that the unit itself consumes with its output on and nothing connected")},
        {tr("gauge error"), tr("gauge minus what is truly left, in percentage points")},
        {tr("reminder"), tr("when a run calls for its next reading: an interval, a fall of the gauge, or a time before the cut-off")},
        {tr("finding"), tr("a named fault of gauge, run or claim, with the readings that show it")},
        {tr("measured"), tr("seen from full to cut-off, with a 95 % interval")},
        {tr("share delivered"), tr("share of what a drain delivers that has been delivered, in percent")},
        {tr("stored depth"), tr("share of the stored energy that has gone, the unit's own draw counted in, in percent")},
        {tr("energy before own consumption"),
         tr("what the socket would get if the no-load draw took nothing: where a line through all drains meets a run time of 0 h")},
        {tr("idle run time"), tr("how long a full unit lasts with its output on and nothing connected")},
        {tr("projected"), tr("carried on from a part of a drain, through the gauge curve of an earlier full drain or else on an accurate gauge; "
                             "of a unit, from its drains together. The reason says which")},
        {tr("bracket"), tr("known only to lie between two limits")},
        {tr("at least"), tr("energy may be missing from the readings; the true value is not lower")},
        {tr("not known"), tr("these readings cannot tell; the reason says what would")},
    };
}

} // namespace

QString keys_and_words_html(const KeyList& keys, const PageHelp& here) {
    QString html;
    if (!here.title.isEmpty()) {
        html = QStringLiteral("<h3>%1</h3><p>%2</p><table>").arg(here.title.toHtmlEscaped(), here.about.toHtmlEscaped());
        for (const auto& [what, key] : here.keys) html += row(key, what);
        html += QStringLiteral("</table>");
    }
    html += QStringLiteral("<h3>%1</h3><table>").arg(here.title.isEmpty() ? tr("Keys") : tr("All keys"));
    for (const auto& [what, key] : keys) html += row(key, what);
    html += QStringLiteral("</table><h3>%1</h3><table>").arg(tr("Words"));
    for (const auto& [word, meaning] : words_of_the_job()) html += row(word, meaning);
    return html + QStringLiteral("</table>");
}

QString method_html() {
    const QStringList paragraphs = {
        tr("<b>Delivered energy.</b> Differences of the meter's register times its correction. Zeroed and swapped meters "
           "and a register that passed its span are joined; a fall without a mark is read as a reset or a typing error by "
           "the load that it would mean, and the run says which."),
        tr("<b>Uncertainty.</b> The meter's error limit counts as a rectangular part common to all its readings, the "
           "register's and the gauge's step as rectangular parts of each reading, and the noted moment as one minute at the "
           "load. They are combined to a 95 % interval (JCGM 100:2008, clauses 4.3 and 5.1; results are rounded as its clause "
           "7.2.6 asks). Rated energy is a claim and has no uncertainty."),
        tr("<b>Usable fraction.</b> Measured only from full to cut-off, and always at the load of that run: a slow drain "
           "feeds the unit's own draw for longer. Any other drain is projected: through the gauge curve of the latest full "
           "drain of the unit before it, where there is one, else from end to end over the gauge's fall, as if the gauge "
           "were honest. The roundings of the gauge are in the interval."),
        tr("<b>Is the gauge right?</b> Gauge-implied against delivered energy as a straight line with uncertainties in "
           "both (D. York, N. Evensen, M. Martinez, J. Delgado: American Journal of Physics 72, 2004, 367), and named "
           "faults, each with its readings, its size in percentage points or Wh, and the limit that it passed. The gauge error is "
           "drawn against share delivered and, where the no-load draw is known and the load varied, against stored depth."),
        tr("<b>No-load draw.</b> Power with the output on and nothing connected is called no-load loss in IEC 61683. One run at a "
           "steady load cannot tell it from conversion loss; the program then says that it is not known."),
        tr("<b>Forecast.</b> While a drain runs, the strip and the energy chart show when it should be cut off, as a range that is meant to hold "
           "the moment in 95 of 100 drains. It comes from the earlier drains of the unit where there are any, else from this run's gauge; it then "
           "allows for a gauge that is bent, offset, ends early, falls too fast, lingers or is blind to the unit's own draw, and is wide early in a "
           "drain. The strip says whether it holds if the gauge is right, if it is wrong, or whichever is right. It "
           "takes the load to go on as it was: a change of load yet to come cannot be foreseen. It is no promise; do not leave a load that must "
           "not fail to it."),
        tr("<b>All drains of a unit.</b> Delivered energy is energy before own consumption, less no-load draw times hours, less a "
           "small quadratic loss; a line through all drains from full to cut-off gives the first two once their run times differ by more "
           "than 1.5 times. Curves are dashed beyond the tested loads. The next run is the one that would narrow them most, "
           "of those that last a day at most if any of them would."),
        tr("<b>From run to run.</b> Energy that falls with the days is ageing. Drains at like loads also show whether the gauge's own error "
           "curve moves: curves are compared at equal share delivered, where the meters' errors cancel. A curve that moves "
           "under an unmoved energy is the gauge; an energy that falls under an unmoved curve is the unit."),
        tr("<b>Comparison.</b> Units as they were tested, or at one load, to which each is moved by what all its drains say together. A unit "
           "that cannot be converted stays as tested and says why. Differences tells which units these meters can tell apart: the gain of a meter that "
           "measured both cancels, those of two meters do not. Prices per kWh are those of the list price; where what was paid is known, that stands "
           "beside it. A right click on the heads of the table chooses its columns, which can "
           "also be dragged; both are remembered, and exports follow. Units that are not told apart share a rank. Compare, Add units of "
           "another logbook looks into other logbooks: what is one unit, one meter or one run there is told by their hidden marks, not by names, "
           "and what two logbooks hold counts once. Many units are compared while you go on; of more than 40 rows Differences shows the 40 with the "
           "largest usable fraction."),
        tr("<b>Load lists.</b> Daily energy is the sum of number, power, duty and hours; what was measured over some hours goes before power and "
           "duty. The output is taken to be on for the longest use by day and the longest by night, or all day where something is always "
           "connected; the mean over that time is the load at which the comparison puts units. The most that is asked at once is all that runs and "
           "the largest start-up extra. These are sums of what you stated, without interval."),
        tr("<b>Other claims.</b> A charge gives energy in, time to full, power and taper; a charge to full after a cut-off and the drain after it "
           "give the round trip, between points that are named. Where one meter measured both its gain cancels. A sustained-output or peak-output "
           "run holds each step of load between two marks against the claim: held, tripped, or not reached. A standby run with the charge after it "
           "gives what the unit takes with its output off. The unit's page, Claims tested, has them all with the runs that show it."),
        tr("<b>Sizing.</b> Sizing, Sizing for a load list says how many days one full unit serves the list, from the fit of its own drains with "
           "the no-load draw counted in; the interval also holds what the list leaves open: used together or apart, begun at any hour. A unit that "
           "nobody tested stands with an expectation, 75 to 80 % of rated at the socket, which is no measurement. The array and the battery by "
           "rule (after IEEE 1562 and IEEE 1013) are a cross-check. Never connect the outputs of several units with each other."),
        tr("<b>PV input.</b> Sizing, PV input check compares a string of modules with the limits of a unit's PV input: open circuit at the "
           "coldest, maximum power at the hottest, current and power. The maker's temperature coefficient goes before the table of factors (NEC "
           "Table 690.7(A), crystalline silicon only). PV strings are live in light: local codes and a licensed electrician come first."),
        tr("<b>Export.</b> Compare, Export and Logbook, Export readings write tables as CSV, Markdown, HTML, XLSX, JSON and LaTeX with "
           "the same numbers in each; CSV, XLSX and JSON hold every digit, the limits of the interval and the kind. Beside a CSV "
           "file stands its description (W3C, Metadata Vocabulary for Tabular Data). Copy table and Ctrl+C give cells for a "
           "spreadsheet. Your words never become formulas there: one that begins like a formula gets an apostrophe in front."),
        tr("<b>Report.</b> Run, Make report and Compare, Make report write all of this with readings, budget, charts, findings, sources and the "
           "history of amended readings, as PDF or HTML on A4 or Letter. That of the comparison stands at the load that the page shows or as tested, "
           "and names the pairs of units that these meters cannot tell apart."),
    };
    QString html;
    for (const auto& paragraph : paragraphs) html += QStringLiteral("<p>%1</p>").arg(paragraph);
    return html;
}

QString cautions_html() {
    QString list;
    for (const auto& caution : cautions()) list += QStringLiteral("<li>%1</li>").arg(caution.toHtmlEscaped());
    return QStringLiteral("<ul>%1</ul><p>%2</p>").arg(list, specimen_sentence().toHtmlEscaped());
}

QString about_html() {
    const auto version = program_version();
    return QStringLiteral("<p><b>Ullage %1</b></p><p>%2</p><p>%3</p><p>%4</p>")
        .arg(raw_text(version).toHtmlEscaped(),
             tr("Ullage is the amount by which a container falls short of full. This program measures it for battery storage "
                "units: the energy printed on the case against the energy that reaches the socket."),
             tr("Free software under the GNU General Public License, version 3 or any later version (GPL-3.0-or-later). It "
                "comes without any warranty."),
             tr("Built with Qt and Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, "
                "libxlsxwriter and Exiv2."));
}

} // namespace ullage
