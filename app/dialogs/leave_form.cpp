// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/leave_form.h"

#include "style/roles.h"
#include "style/words.h"

#include <QLabel>

namespace ullage {

namespace {

QString list_of(const QStringList& lines) {
    QString html = QStringLiteral("<ul style='margin-left: 0; -qt-list-indent: 1'>");
    for (const QString& line : lines) html += QStringLiteral("<li>%1</li>").arg(line.toHtmlEscaped());
    return html + QStringLiteral("</ul>");
}

} // namespace

LeaveForm::LeaveForm(const QStringList& tests, int logs_followed, bool awake, QWidget* parent)
    : FormDialog(tests.size() == 1 ? tr("Quit while a test is running?") : tr("Quit while %1 tests are running?").arg(tests.size()), tr("Quit"),
                 parent) {
    setObjectName(QStringLiteral("leaveForm"));
    const auto add = [this](const char* name, const QString& html) { set_text_style(*addParagraph(QLatin1String(name), html), Tone::ink); };
    add("leaveTests", list_of(tests));
    QStringList stops{tr("Reminders: nobody calls you to the next reading.")};
    if (awake) stops << tr("The machine is no longer kept awake.");
    if (logs_followed == 1) stops << tr("A followed log is no longer read.");
    if (logs_followed > 1) stops << tr("%1 followed logs are no longer read.").arg(logs_followed);
    add("leaveStops", QStringLiteral("<b>%1</b>").arg(tr("What stops")) + list_of(stops));
    QStringList remains{tr("The tests themselves: the units run on at the bench, and the runs stay open in the logbook."),
                        tr("Every reading, and what is half typed. Rules of reminders count on from the last reading at the next start.")};
    if (logs_followed > 0) remains << tr("What is written to a followed log meanwhile: it is taken up at the next start.");
    add("leaveRemains", QStringLiteral("<b>%1</b>").arg(tr("What remains")) + list_of(remains));
}

} // namespace ullage
