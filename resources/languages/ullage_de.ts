<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>QAction</name>
    <message>
        <source>Copy picture</source>
        <translation>Bild kopieren</translation>
    </message>
    <message>
        <source>Copy rows</source>
        <translation>Zeilen kopieren</translation>
    </message>
</context>
<context>
    <name>advice</name>
    <message>
        <source>; make a drain</source>
        <translation>; machen Sie eine Entladung</translation>
    </message>
    <message>
        <source>: read the gauge more often</source>
        <translation>: lesen Sie die Ladeanzeige öfter ab</translation>
    </message>
    <message>
        <source>: repeat an early drain</source>
        <translation>: wiederholen Sie eine frühe Entladung</translation>
    </message>
    <message>
        <source>: make one</source>
        <translation>: machen Sie eine</translation>
    </message>
    <message>
        <source>: make a drain near %1 W</source>
        <translation>: machen Sie eine Entladung nahe %1 W</translation>
    </message>
    <message>
        <source>: make a drain at less than half or more than twice that load</source>
        <translation>: machen Sie eine Entladung bei weniger als der Hälfte oder mehr als dem Doppelten dieser Last</translation>
    </message>
</context>
<context>
    <name>awake</name>
    <message>
        <source>a test is running and its readings are due</source>
        <translation>ein Test läuft und seine Ablesungen stehen an</translation>
    </message>
    <message>
        <source>kept awake</source>
        <translation>bleibt wach</translation>
    </message>
    <message>
        <source>this desktop does not offer to stay awake: set it yourself</source>
        <translation>dieser Desktop bietet kein Wachbleiben an: stellen Sie es selbst ein</translation>
    </message>
</context>
<context>
    <name>base</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>projected</source>
        <translation>hochgerechnet</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>eingegrenzt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1 is no time of day</source>
        <translation>%1 ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>use 00:00:00 to 23:59:59</source>
        <translation>schreiben Sie 00:00:00 bis 23:59:59</translation>
    </message>
    <message>
        <source>year %1 is outside 1583 to 9999</source>
        <translation>das Jahr %1 liegt außerhalb 1583 bis 9999</translation>
    </message>
    <message>
        <source>correct the year</source>
        <translation>korrigieren Sie das Jahr</translation>
    </message>
    <message>
        <source>%1 is no date of the calendar</source>
        <translation>%1 ist kein Datum des Kalenders</translation>
    </message>
    <message>
        <source>correct the day or the month</source>
        <translation>korrigieren Sie Tag oder Monat</translation>
    </message>
    <message>
        <source>the moment is outside the years 1583 to 9999</source>
        <translation>der Zeitpunkt liegt außerhalb der Jahre 1583 bis 9999</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` ist keine Zeitzone, die dieser Rechner kennt</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna, or UTC</source>
        <translation>nehmen Sie einen IANA-Namen wie Europe/Vienna oder UTC</translation>
    </message>
    <message>
        <source>%1 does not exist in %2: the clocks went forward</source>
        <translation>%1 gibt es in %2 nicht: die Uhren wurden vorgestellt</translation>
    </message>
    <message>
        <source>use the time after the change</source>
        <translation>nehmen Sie die Zeit nach der Umstellung</translation>
    </message>
    <message>
        <source>%1 occurs twice in %2: the clocks were put back</source>
        <translation>%1 kommt in %2 zweimal vor: die Uhren wurden zurückgestellt</translation>
    </message>
    <message>
        <source>add the offset: %1 or %2</source>
        <translation>fügen Sie den Versatz an: %1 oder %2</translation>
    </message>
    <message>
        <source>`%1` is no date and time</source>
        <translation>`%1` ist kein Datum mit Uhrzeit</translation>
    </message>
    <message>
        <source>write it like 2027-05-14T18:00, with Z or an offset such as +02:00 if need be</source>
        <translation>schreiben Sie es wie 2027-05-14T18:00, wenn nötig mit Z oder einem Versatz wie +02:00</translation>
    </message>
    <message>
        <source>`%1` is no number</source>
        <translation>`%1` ist keine Zahl</translation>
    </message>
    <message>
        <source>write a number such as 431 or 0.5</source>
        <translation>schreiben Sie eine Zahl wie 431 oder 0,5</translation>
    </message>
    <message>
        <source>`%1` can be read in more than one way</source>
        <translation>`%1` lässt sich auf mehr als eine Weise lesen</translation>
    </message>
    <message>
        <source>leave out digit grouping and use one decimal sign</source>
        <translation>lassen Sie Zifferngruppen weg und nehmen Sie ein einziges Dezimalzeichen</translation>
    </message>
    <message>
        <source>write a number such as 431 or 0.5, without digit grouping</source>
        <translation>schreiben Sie eine Zahl wie 431 oder 0,5, ohne Zifferngruppen</translation>
    </message>
    <message>
        <source>`%1` is too large or too small</source>
        <translation>`%1` ist zu groß oder zu klein</translation>
    </message>
    <message>
        <source>correct the number</source>
        <translation>korrigieren Sie die Zahl</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>auf dem Datenträger ist kein Platz mehr</translation>
    </message>
    <message>
        <source>nothing can be made in this folder: %1</source>
        <translation>in diesem Ordner lässt sich nichts anlegen: %1</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>schaffen Sie Platz oder wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>wählen Sie einen Ordner, in den Sie schreiben dürfen</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <extracomment>Parts two clauses, such as what is wrong and what to do. A language that sets a space before a semicolon sets one here that does not break.</extracomment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>Parts where something is from what is there. A language that sets a space before a colon sets one here that does not break.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>install Ullage anew, all its files together</source>
        <translation>installieren Sie Ullage neu, alle Dateien zusammen</translation>
    </message>
    <message>
        <source>a part of the program is missing</source>
        <translation>ein Teil des Programms fehlt</translation>
    </message>
    <message>
        <source>a part of the program is of another version</source>
        <translation>ein Teil des Programms gehört zu einer anderen Version</translation>
    </message>
    <message>
        <source>a part of the program cannot be loaded (%1)</source>
        <translation>ein Teil des Programms lässt sich nicht laden (%1)</translation>
    </message>
    <message>
        <source>a part of the program cannot be opened (%1)</source>
        <translation>ein Teil des Programms lässt sich nicht öffnen (%1)</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>a picture of %1 by %2 cannot be drawn</source>
        <translation>ein Bild von %1 mal %2 lässt sich nicht zeichnen</translation>
    </message>
    <message>
        <source>picture size</source>
        <translation>Bildgröße</translation>
    </message>
    <message>
        <source>choose sides from 1 to %1</source>
        <translation>wählen Sie Seiten von 1 bis %1</translation>
    </message>
    <message>
        <source>the scale is not a positive number</source>
        <translation>die Skalierung ist keine positive Zahl</translation>
    </message>
    <message>
        <source>picture scale</source>
        <translation>Skalierung des Bildes</translation>
    </message>
    <message>
        <source>choose a scale such as 1 or 2</source>
        <translation>wählen Sie eine Skalierung wie 1 oder 2</translation>
    </message>
    <message>
        <source>the picture could not be put into PNG form</source>
        <translation>das Bild ließ sich nicht in die Form PNG bringen</translation>
    </message>
    <message>
        <source>try a smaller size</source>
        <translation>versuchen Sie eine kleinere Größe</translation>
    </message>
    <message>
        <source>size and scale make an image that is too small or too large</source>
        <translation>Größe und Skalierung ergeben ein zu kleines oder zu großes Bild</translation>
    </message>
    <message>
        <source>choose a smaller size or scale</source>
        <translation>wählen Sie eine kleinere Größe oder Skalierung</translation>
    </message>
    <message>
        <source>there is not enough memory for the picture</source>
        <translation>für das Bild ist nicht genug Arbeitsspeicher da</translation>
    </message>
    <message>
        <source>the picture could not be put into SVG form</source>
        <translation>das Bild ließ sich nicht in die Form SVG bringen</translation>
    </message>
    <message>
        <source>try PNG instead</source>
        <translation>versuchen Sie stattdessen PNG</translation>
    </message>
    <message>
        <source>a picture&apos;s name must end in .png or .svg</source>
        <translation>der Name eines Bildes muss auf .png oder .svg enden</translation>
    </message>
    <message>
        <source>add the ending that you want</source>
        <translation>fügen Sie die gewünschte Endung an</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>der Ordner existiert nicht</translation>
    </message>
    <message>
        <source>make the folder or choose another</source>
        <translation>legen Sie den Ordner an oder wählen Sie einen anderen</translation>
    </message>
    <message>
        <source>there is nothing drawn here yet</source>
        <translation>hier ist noch nichts gezeichnet</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>choose a run with readings</source>
        <translation>wählen Sie einen Lauf mit Ablesungen</translation>
    </message>
</context>
<context>
    <name>claims</name>
    <message>
        <source>Run %1, %2</source>
        <translation>Lauf %1, %2</translation>
    </message>
    <message>
        <source>%1: delivered at the socket from full to cut-off at this load.</source>
        <translation>%1: an der Steckdose abgegeben, von voll bis Abschaltung, bei dieser Last.</translation>
    </message>
    <message>
        <source>Not tested: %1.</source>
        <translation>Nicht getestet: %1.</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>there is no drain from full to cut-off with its energy known</source>
        <translation>es gibt keine Entladung von voll bis Abschaltung mit bekannter Energie</translation>
    </message>
    <message>
        <source>What the battery holds inside is not measured.</source>
        <translation>Was die Batterie innen speichert, wird nicht gemessen.</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>there is no peak-output run with a known load</source>
        <translation>es gibt keinen Lauf auf Spitzenleistung mit bekannter Last</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>there is no sustained-output run with a known load</source>
        <translation>es gibt keinen Lauf auf Dauerleistung mit bekannter Last</translation>
    </message>
    <message>
        <source>Runs disagree.</source>
        <translation>Die Läufe widersprechen sich.</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>Ladezeit</translation>
    </message>
    <message>
        <source>there is no charge from cut-off to full that is not from PV</source>
        <translation>es gibt keine Ladung von Abschaltung bis voll, die nicht über PV lief</translation>
    </message>
    <message>
        <source>Mean of %1 charges. The latest: %2</source>
        <translation>Mittel aus %1 Ladungen. Die letzte: %2</translation>
    </message>
    <message>
        <source>power of the PV input</source>
        <translation>Leistung des PV-Eingangs</translation>
    </message>
    <message>
        <source>there is no charge from PV with a known power</source>
        <translation>es gibt keine Ladung über PV mit bekannter Leistung</translation>
    </message>
    <message>
        <source>%1. Peak: %2; the sun may have given no more.</source>
        <translation>%1. Spitze: %2; mehr gab die Sonne vielleicht nicht her.</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>does not hold</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
    <message>
        <source>not decided by this meter</source>
        <translation>von diesem Zähler nicht entschieden</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht getestet</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Decision rule: a claim holds where the measured value reaches it, whatever its interval: simple acceptance, JCGM 106:2012, 8.2. Near the claim such a verdict is wrong about every second time.</source>
        <translation>Entscheidungsregel: eine Angabe ist erfüllt, wo der gemessene Wert sie erreicht, gleich wie groß sein Intervall ist: einfache Annahme, JCGM 106:2012, 8.2. Nahe der Angabe ist ein solches Urteil etwa jedes zweite Mal falsch.</translation>
    </message>
    <message>
        <source>Decision rule: a claim holds where the whole 95 % interval lies on its good side, and does not where it lies on the other; in between this meter does not decide it. Guarded acceptance and rejection, JCGM 106:2012, 8.3.</source>
        <translation>Entscheidungsregel: eine Angabe ist erfüllt, wo das ganze 95-%-Intervall auf ihrer guten Seite liegt, und nicht erfüllt, wo es auf der anderen liegt; dazwischen entscheidet dieser Zähler nicht. Abgesicherte Annahme und Ablehnung, JCGM 106:2012, 8.3.</translation>
    </message>
</context>
<context>
    <name>commands</name>
    <message>
        <source>there is no such file or folder</source>
        <translation>es gibt keine solche Datei und keinen solchen Ordner</translation>
    </message>
    <message>
        <source>name a logbook, or the folder that it is to stand in</source>
        <translation>nennen Sie ein Logbuch oder den Ordner, in dem es stehen soll</translation>
    </message>
    <message>
        <source>a logbook, or a folder for one: whether it can be recorded into there</source>
        <translation>ein Logbuch oder ein Ordner für eines: ob sich dort aufzeichnen lässt</translation>
    </message>
    <message>
        <source>Write the charts of every run and of the comparison as PNG and SVG</source>
        <translation>Die Diagramme jedes Laufs und des Vergleichs als PNG und SVG schreiben</translation>
    </message>
    <message>
        <source>Write the report of one run, the comparison, a sizing or a PV check as PDF or HTML</source>
        <translation>Den Bericht eines Laufs, des Vergleichs, einer Auslegung oder einer PV-Prüfung als PDF oder HTML schreiben</translation>
    </message>
    <message>
        <source>Open the window on a logbook, show every page and tab of it in turn, and end; records nothing</source>
        <translation>Das Fenster mit einem Logbuch öffnen, jede Seite und jeden Reiter der Reihe nach zeigen und enden; zeichnet nichts auf</translation>
    </message>
    <message>
        <source>Say what the program finds here: versions, fonts, writable places, desktop services</source>
        <translation>Sagen, was das Programm hier vorfindet: Versionen, Schriften, beschreibbare Orte, Dienste des Desktops</translation>
    </message>
    <message>
        <source>logbook, run sheet (.csv), or folder of run sheets</source>
        <translation>Logbuch, Laufblatt (.csv) oder Ordner mit Laufblättern</translation>
    </message>
    <message>
        <source>folder for the pictures, made when missing</source>
        <translation>Ordner für die Bilder; wird angelegt, wenn er fehlt</translation>
    </message>
    <message>
        <source>in the colours for dim surroundings</source>
        <translation>in den Farben für dunkle Umgebung</translation>
    </message>
    <message>
        <source>on white, for paper</source>
        <translation>auf Weiß, für Papier</translation>
    </message>
    <message>
        <source>without title, key and source, which then stand in your text</source>
        <translation>ohne Titel, Legende und Quelle; diese stehen dann in Ihrem Text</translation>
    </message>
    <message>
        <source>leave out the charts of the runs and the units</source>
        <translation>die Diagramme der Läufe und der Speicher weglassen</translation>
    </message>
    <message>
        <source>also the comparison at this common load, W</source>
        <translation>auch der Vergleich bei dieser gemeinsamen Last, W</translation>
    </message>
    <message>
        <source>share of the time that the load is on, %</source>
        <translation>Anteil der Zeit, in der die Last ein ist, %</translation>
    </message>
    <message>
        <source>width of a picture, 254 unless told</source>
        <translation>Breite eines Bildes, 254 ohne Angabe</translation>
    </message>
    <message>
        <source>height of a picture, 143 unless told</source>
        <translation>Höhe eines Bildes, 143 ohne Angabe</translation>
    </message>
    <message>
        <source>sharpness of PNG, 192 unless told</source>
        <translation>Schärfe von PNG, 192 ohne Angabe</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>wählen Sie einen Ordner, in den Sie schreiben dürfen</translation>
    </message>
    <message numerus="yes">
        <source>%n pictures are in %1</source>
        <comment>%n pictures are in %1</comment>
        <translation>
            <numerusform>%n Bild liegt in %1</numerusform>
            <numerusform>%n Bilder liegen in %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; see %2</source>
        <translation>%1; siehe %2</translation>
    </message>
    <message>
        <source>the run to report, UNIT/N; the number alone where there is one unit</source>
        <translation>der Lauf für den Bericht, UNIT/N; die Nummer allein, wo es nur einen Speicher gibt</translation>
    </message>
    <message>
        <source>report the comparison of the units, as tested or at one load</source>
        <translation>über den Vergleich der Speicher berichten, wie getestet oder bei einer Last</translation>
    </message>
    <message>
        <source>the unit to report, with all its runs</source>
        <translation>der Speicher für den Bericht, mit allen seinen Läufen</translation>
    </message>
    <message>
        <source>sections of a unit&apos;s report, with commas between them; all where none is named</source>
        <translation>Abschnitte des Berichts zu einem Speicher, mit Kommas dazwischen; alle, wo keiner genannt ist</translation>
    </message>
    <message>
        <source>a unit&apos;s report on two pages</source>
        <translation>Bericht zu einem Speicher auf zwei Seiten</translation>
    </message>
    <message>
        <source>in a unit&apos;s report: every photo of its runs; none else</source>
        <translation>im Bericht zu einem Speicher: jedes Foto seiner Läufe; sonst keines</translation>
    </message>
    <message>
        <source>report the sizing for this load list: its name in the logbook, or a file (.csv)</source>
        <translation>über die Auslegung für diese Lastliste berichten: ihr Name im Logbuch oder eine Datei (.csv)</translation>
    </message>
    <message>
        <source>report the PV input check of this sheet: its name in the logbook, or a file</source>
        <translation>über die Prüfung des PV-Eingangs für dieses Blatt berichten: sein Name im Logbuch oder eine Datei</translation>
    </message>
    <message>
        <source>in a comparison: a row for each drain instead of one for each unit</source>
        <translation>in einem Vergleich: eine Zeile für jede Entladung statt einer für jeden Speicher</translation>
    </message>
    <message>
        <source>in a comparison: common load, W; a unit that cannot be converted to it stays as tested</source>
        <translation>in einem Vergleich: gemeinsame Last, W; ein Speicher, der sich nicht darauf umrechnen lässt, bleibt wie getestet</translation>
    </message>
    <message>
        <source>in a comparison: keys of the columns wanted, in order, or readers or spreadsheet</source>
        <translation>in einem Vergleich: Schlüssel der gewünschten Spalten, der Reihe nach, oder readers oder spreadsheet</translation>
    </message>
    <message>
        <source>with what is the tester&apos;s own: tags, prices paid, remarks, advice</source>
        <translation>mit dem, was nur den Prüfer angeht: Schlagwörter, gezahlte Preise, Bemerkungen, Rat</translation>
    </message>
    <message>
        <source>file to write; its ending, .pdf or .html, chooses the form</source>
        <translation>Datei, in die geschrieben wird; ihre Endung, .pdf oder .html, wählt das Format</translation>
    </message>
    <message>
        <source>its tables (HTML) and pictures (PNG) as files too, in a folder beside it</source>
        <translation>auch seine Tabellen (HTML) und Bilder (PNG) als Dateien, in einem Ordner daneben</translation>
    </message>
    <message>
        <source>a4 or letter</source>
        <translation>a4 oder letter</translation>
    </message>
    <message>
        <source>whose decimal sign is written, e.g. de_DE or en_US</source>
        <translation>wessen Dezimalzeichen geschrieben wird, z. B. de_DE oder en_US</translation>
    </message>
    <message>
        <source>report saved to %1</source>
        <translation>Bericht in %1 gespeichert</translation>
    </message>
    <message>
        <source>its tables and pictures: %1</source>
        <translation>seine Tabellen und Bilder: %1</translation>
    </message>
    <message>
        <source>`%1` names no run; write UNIT/N, e.g. &quot;Osk 1200/2&quot;</source>
        <translation>`%1` nennt keinen Lauf; schreiben Sie UNIT/N, z. B. &quot;Osk 1200/2&quot;</translation>
    </message>
    <message>
        <source>several units are named `%1`</source>
        <translation>mehrere Speicher heißen `%1`</translation>
    </message>
    <message>
        <source>give the units names of their own</source>
        <translation>geben Sie den Speichern eigene Namen</translation>
    </message>
    <message>
        <source>%1: the photo cannot be shown; it is left out</source>
        <translation>%1: das Foto lässt sich nicht zeigen; es bleibt weg</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>es gibt keine Spalte `%1`</translation>
    </message>
    <message>
        <source>`ullage compare --help` lists them</source>
        <translation>`ullage compare --help` zählt sie auf</translation>
    </message>
    <message>
        <source>choose --run UNIT/N, --unit UNIT, --compare, --size LIST or --pv SHEET</source>
        <translation>wählen Sie --run UNIT/N, --unit UNIT, --compare, --size LIST oder --pv SHEET</translation>
    </message>
    <message>
        <source>says: %1</source>
        <translation>sagt: %1</translation>
    </message>
    <message>
        <source>the folder is not empty</source>
        <translation>der Ordner ist nicht leer</translation>
    </message>
    <message>
        <source>name a new one</source>
        <translation>nennen Sie einen neuen</translation>
    </message>
    <message>
        <source>logbook file</source>
        <translation>Datei des Logbuchs</translation>
    </message>
    <message>
        <source>a new or empty folder: write a PNG of each page into it</source>
        <translation>ein neuer oder leerer Ordner: ein PNG jeder Seite hineinschreiben</translation>
    </message>
    <message>
        <source>of the window</source>
        <translation>des Fensters</translation>
    </message>
    <message>
        <source>size of texts, of that of the desktop</source>
        <translation>Größe der Texte, von der des Desktops</translation>
    </message>
    <message>
        <source>in the dark theme</source>
        <translation>im dunklen Farbschema</translation>
    </message>
    <message>
        <source>What is read, one --read for each value: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]</source>
        <translation>Was gelesen wird, ein --read für jeden Wert: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]</translation>
    </message>
    <message>
        <source>register, power, voltage, current; gauge or output of the unit itself</source>
        <translation>register, power, voltage, current; gauge oder output des Speichers selbst</translation>
    </message>
    <message>
        <source>power holding 52 as f32 in W; registers count from 0; input or holding; types u16 s16 u32 s32</source>
        <translation>power holding 52 as f32 in W; Register zählen ab 0; input oder holding; Typen u16 s16 u32 s32</translation>
    </message>
    <message>
        <source>u64 s64 f32 f64; behind the type: low-word-first, bytes-swapped</source>
        <translation>u64 s64 f32 f64; hinter dem Typ: low-word-first, bytes-swapped</translation>
    </message>
    <message>
        <source>sunspec imported, sunspec exported: the meter model that the device names</source>
        <translation>sunspec imported, sunspec exported: das Zählermodell, das das Gerät nennt</translation>
    </message>
    <message>
        <source>power bench/plug/power, or power bench/plug#/power for JSON</source>
        <translation>power bench/plug/power, oder power bench/plug#/power bei JSON</translation>
    </message>
    <message>
        <source>power #/meters/0/power, or power body for a plain number</source>
        <translation>power #/meters/0/power, oder power body bei einer bloßen Zahl</translation>
    </message>
    <message>
        <source>power column 3 in W, or detect</source>
        <translation>power column 3 in W, oder detect</translation>
    </message>
    <message>
        <source>A password is asked for at the terminal, or taken from ULLAGE_SOURCE_PASSWORD. It is not kept.</source>
        <translation>Ein Passwort wird am Terminal abgefragt oder aus ULLAGE_SOURCE_PASSWORD genommen. Es wird nicht behalten.</translation>
    </message>
    <message>
        <source>Meters in mains circuits are installed by licensed people; local codes come first.</source>
        <translation>Zähler in Netzstromkreisen setzen zugelassene Fachkräfte ein; örtliche Vorschriften haben Vorrang.</translation>
    </message>
    <message>
        <source>number of the run; without it every running run whose meter has a source</source>
        <translation>Nummer des Laufs; ohne sie jeder laufende Lauf, dessen Zähler eine Quelle hat</translation>
    </message>
    <message>
        <source>name of the unit</source>
        <translation>Name des Speichers</translation>
    </message>
    <message>
        <source>kind of the source; without it the one kept with the meter of the run</source>
        <translation>Art der Quelle; ohne sie die, die beim Zähler des Laufs behalten ist</translation>
    </message>
    <message>
        <source>HOST[:PORT], a URL, or a device file</source>
        <translation>HOST[:PORT], eine URL oder eine Gerätedatei</translation>
    </message>
    <message>
        <source>one value that is read, see below</source>
        <translation>ein Wert, der gelesen wird, siehe unten</translation>
    </message>
    <message>
        <source>Modbus: unit identifier</source>
        <translation>Modbus: Gerätekennung (unit identifier)</translation>
    </message>
    <message>
        <source>serial line: speed, bits, parity, stop bits, as in 9600 8N1</source>
        <translation>serielle Leitung: Geschwindigkeit, Bits, Parität, Stoppbits, wie in 9600 8N1</translation>
    </message>
    <message>
        <source>seconds between two questions</source>
        <translation>Sekunden zwischen zwei Abfragen</translation>
    </message>
    <message>
        <source>MQTT: secured</source>
        <translation>MQTT: gesichert</translation>
    </message>
    <message>
        <source>MQTT and HTTP: user name</source>
        <translation>MQTT und HTTP: Benutzername</translation>
    </message>
    <message>
        <source>keep this source with the meter of the run, for the next time</source>
        <translation>diese Quelle beim Zähler des Laufs behalten, für das nächste Mal</translation>
    </message>
    <message>
        <source>show what comes, record nothing</source>
        <translation>zeigen, was kommt, nichts aufzeichnen</translation>
    </message>
    <message>
        <source>end when every output has gone off</source>
        <translation>enden, wenn jeder Ausgang aus gegangen ist</translation>
    </message>
    <message>
        <source>end after so many seconds</source>
        <translation>nach so vielen Sekunden enden</translation>
    </message>
    <message>
        <source>Read meters live into running runs, without a window, until interrupted</source>
        <translation>Zähler live in laufende Läufe lesen, ohne Fenster, bis zum Abbruch</translation>
    </message>
    <message>
        <source>Password of %1 at %2:</source>
        <translation>Passwort von %1 auf %2:</translation>
    </message>
    <message>
        <source>no source is kept with the meter of this run</source>
        <translation>beim Zähler dieses Laufs ist keine Quelle behalten</translation>
    </message>
    <message>
        <source>state it with --kind, --address and --read; --keep keeps it</source>
        <translation>geben Sie sie mit --kind, --address und --read an; --keep behält sie</translation>
    </message>
    <message>
        <source>units of several makers have this name and run</source>
        <translation>Speicher mehrerer Hersteller haben diesen Namen und Lauf</translation>
    </message>
    <message>
        <source>rename one of them</source>
        <translation>benennen Sie einen davon um</translation>
    </message>
    <message>
        <source>the run names no meter that could keep a source</source>
        <translation>der Lauf nennt keinen Zähler, bei dem eine Quelle bleiben könnte</translation>
    </message>
    <message>
        <source>name its meter first, or leave --keep</source>
        <translation>nennen Sie zuerst seinen Zähler oder lassen Sie --keep weg</translation>
    </message>
    <message>
        <source>no running run has a meter with a source</source>
        <translation>kein laufender Lauf hat einen Zähler mit einer Quelle</translation>
    </message>
    <message>
        <source>name a run with --run, and its source with --kind</source>
        <translation>nennen Sie einen Lauf mit --run und seine Quelle mit --kind</translation>
    </message>
    <message>
        <source>%1: %2 at %3 (by %4): %5</source>
        <translation>%1: %2 um %3 (spätestens %4): %5</translation>
    </message>
    <message>
        <source>%1: %2 at %3: %4</source>
        <translation>%1: %2 um %3: %4</translation>
    </message>
    <message>
        <source>%1: no longer read: %2</source>
        <translation>%1: wird nicht mehr gelesen: %2</translation>
    </message>
    <message>
        <source>%1: reading %2</source>
        <translation>%1: gelesen wird %2</translation>
    </message>
    <message>
        <source>Ended. %1</source>
        <translation>Beendet. %1</translation>
    </message>
    <message>
        <source>Reading; interrupt (Ctrl+C) to end</source>
        <translation>Es wird gelesen; Strg+C beendet es</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1 Lauf %2</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>%1 V</source>
        <translation>%1 V</translation>
    </message>
    <message>
        <source>%1 A</source>
        <translation>%1 A</translation>
    </message>
    <message>
        <source>%1 % on the gauge</source>
        <translation>%1 % auf der Ladeanzeige</translation>
    </message>
    <message>
        <source>%1 W by the unit</source>
        <translation>%1 W laut Speicher</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>verbunden, noch ist nichts gekommen</translation>
    </message>
    <message>
        <source>nothing has come yet</source>
        <translation>noch ist nichts gekommen</translation>
    </message>
    <message>
        <source>%1, %2 s ago</source>
        <translation>%1, vor %2 s</translation>
    </message>
    <message>
        <source>%1, %2 a second</source>
        <translation>%1, %2 je Sekunde</translation>
    </message>
    <message numerus="yes">
        <source>%n samples taken</source>
        <comment>%n sample taken</comment>
        <translation>
            <numerusform>%n Messwert übernommen</numerusform>
            <numerusform>%n Messwerte übernommen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 left out</source>
        <translation>%1, %2 ausgelassen</translation>
    </message>
    <message>
        <source>%1, %2 lost</source>
        <translation>%1, %2 verloren</translation>
    </message>
    <message>
        <source>the machine&apos;s clock has been set, samples go on by the steady one</source>
        <translation>die Uhr des Rechners wurde gestellt, Messwerte gehen nach der stetigen Uhr weiter</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>There are no runs yet. Add one with: ullage import LOGBOOK SHEET</source>
        <translation>Es gibt noch keine Läufe. Fügen Sie einen hinzu mit: ullage import LOGBOOK SHEET</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, run %2: %3</source>
        <translation>%1, Lauf %2: %3</translation>
    </message>
    <message>
        <source>ended: %1</source>
        <translation>beendet: %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>Nennenergie %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Zähler %1</translation>
    </message>
    <message>
        <source>Assumed of the register</source>
        <translation>Annahmen zum Zählwerk</translation>
    </message>
    <message>
        <source>%1 (about %2 may be missing)</source>
        <translation>%1 (etwa %2 können fehlen)</translation>
    </message>
    <message>
        <source>Of the meter</source>
        <translation>Zum Zähler</translation>
    </message>
    <message>
        <source>Uncertainty of the delivered energy</source>
        <translation>Unsicherheit der abgegebenen Energie</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>Korrelation</translation>
    </message>
    <message>
        <source>type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>Freiheitsgrade</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>95 % interval ±%1 Wh</source>
        <translation>95-%-Intervall ±%1 Wh</translation>
    </message>
    <message>
        <source>95 % interval ±%1 Wh: %2</source>
        <translation>95-%-Intervall ±%1 Wh: %2</translation>
    </message>
    <message>
        <source>Where the energy went</source>
        <translation>Wohin die Energie ging</translation>
    </message>
    <message>
        <source>Gauge: %1</source>
        <translation>Ladeanzeige: %1</translation>
    </message>
    <message>
        <source>[%1] %2</source>
        <translation>[%1] %2</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>%1: there is no copy</source>
        <translation>%1: es gibt keine Kopie</translation>
    </message>
    <message>
        <source>%1: it holds nothing yet, so no copy was made</source>
        <translation>%1: es enthält noch nichts, daher wurde keine Kopie gemacht</translation>
    </message>
    <message>
        <source>%1: copied to %2</source>
        <translation>%1: kopiert nach %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n older copies removed</source>
        <comment>%1, %n older copy removed</comment>
        <translation>
            <numerusform>%1, %n ältere Kopie entfernt</numerusform>
            <numerusform>%1, %n ältere Kopien entfernt</numerusform>
        </translation>
    </message>
    <message>
        <source>Charge: %1</source>
        <translation>Ladung: %1</translation>
    </message>
    <message>
        <source>the power began to fall at a gauge of %1 %</source>
        <translation>die Leistung begann bei einer Ladeanzeige von %1 % zu fallen</translation>
    </message>
    <message>
        <source>Output: %1. %2</source>
        <translation>Ausgang: %1. %2</translation>
    </message>
    <message>
        <source>trips %1, resets %2</source>
        <translation>Auslösungen %1, Rücksetzungen %2</translation>
    </message>
    <message>
        <source>%1: not known: %2</source>
        <translation>%1: unbekannt: %2</translation>
    </message>
    <message>
        <source>%1: %2 (%3), %4 a day, %5 a month; %6</source>
        <translation>%1: %2 (%3), %4 pro Tag, %5 pro Monat; %6</translation>
    </message>
    <message>
        <source>%1 %2 a day, %3 %2 a month, %4</source>
        <translation>%1 %2 pro Tag, %3 %2 pro Monat, %4</translation>
    </message>
    <message>
        <source>run %1 put in %2, run %3 gave back %4, %5</source>
        <translation>Lauf %1 lud %2 ein, Lauf %3 gab %4 zurück, %5</translation>
    </message>
    <message>
        <source>What the unit takes for itself</source>
        <translation>Was der Speicher selbst verbraucht</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>Ausgang ein</translation>
    </message>
    <message>
        <source>output off</source>
        <translation>Ausgang aus</translation>
    </message>
    <message>
        <source>`%1` is no number; write one such as 431 or 0.5</source>
        <translation>`%1` ist keine Zahl; schreiben Sie eine wie 431 oder 0.5</translation>
    </message>
    <message>
        <source>`%1` is far beyond anything that is measured; the most is %2</source>
        <translation>`%1` liegt weit jenseits von allem, was gemessen wird; das Höchste ist %2</translation>
    </message>
    <message>
        <source>`%1` is no number above 0</source>
        <translation>`%1` ist keine Zahl über 0</translation>
    </message>
    <message>
        <source>`%1` is no number from 0 up</source>
        <translation>`%1` ist keine Zahl ab 0</translation>
    </message>
    <message>
        <source>`%1` is no number from %2 to %3</source>
        <translation>`%1` ist keine Zahl von %2 bis %3</translation>
    </message>
    <message>
        <source>replace also a file that this program did not write as it is, an input of this call, or a logbook that nobody uses</source>
        <translation>auch eine Datei ersetzen, die dieses Programm nicht so geschrieben hat, wie sie ist, eine Eingabe dieses Aufrufs oder ein Logbuch, das niemand benutzt</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>check where it goes to</source>
        <translation>prüfen Sie, wohin sie geht</translation>
    </message>
    <message>
        <source>the result could not be written</source>
        <translation>das Ergebnis ließ sich nicht schreiben</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>Standardausgabe</translation>
    </message>
    <message>
        <source>sheet of a workbook: its name, or its number from 1</source>
        <translation>Blatt einer Arbeitsmappe: sein Name oder seine Nummer ab 1</translation>
    </message>
    <message>
        <source>columns of a table, by number, letter or title: 1=time,B=gauge,Plug=register:kWh; roles are time, date, elapsed, gauge, register, load-power, display-power, mark, remark, run, unit, unused</source>
        <translation>Spalten einer Tabelle, nach Nummer, Buchstabe oder Titel: 1=time,B=gauge,Plug=register:kWh; Rollen sind time, date, elapsed, gauge, register, load-power, display-power, mark, remark, run, unit, unused</translation>
    </message>
    <message>
        <source>day-first or month-first</source>
        <translation>day-first (Tag zuerst) oder month-first (Monat zuerst)</translation>
    </message>
    <message>
        <source>decimal sign: comma or point</source>
        <translation>Dezimalzeichen: comma (Komma) oder point (Punkt)</translation>
    </message>
    <message>
        <source>tab, semicolon, bar, comma or blanks</source>
        <translation>tab, semicolon, bar, comma oder blanks</translation>
    </message>
    <message>
        <source>unit of a register that names none: Wh, kWh or J</source>
        <translation>Einheit eines Zählwerks, das keine nennt: Wh, kWh oder J</translation>
    </message>
    <message>
        <source>unit of times that count from the start: h, min or s</source>
        <translation>Einheit von Zeiten, die ab dem Start zählen: h, min oder s</translation>
    </message>
    <message>
        <source>a gauge of 0.69 is a share (69 %) or percent</source>
        <translation>eine Ladeanzeige von 0.69 ist ein Anteil (share, 69 %) oder Prozent (percent)</translation>
    </message>
    <message>
        <source>what h:mm means: clock (time of day) or elapsed</source>
        <translation>was h:mm bedeutet: clock (Uhrzeit) oder elapsed (vergangene Zeit)</translation>
    </message>
    <message>
        <source>what begins anew behind an empty row: separate runs, or one</source>
        <translation>was hinter einer Leerzeile neu beginnt: einzelne Läufe (separate) oder einer (one)</translation>
    </message>
    <message>
        <source>keep rows as the log of a meter, with the first, the last and those with a remark as readings, or all as readings; where not given a run of 1000 rows or more, at most two minutes apart, is a log</source>
        <translation>Zeilen als Log eines Zählers behalten (log), mit der ersten, der letzten und denen mit Bemerkung als Ablesungen, oder alle als Ablesungen (readings); ohne Angabe ist ein Lauf von 1000 oder mehr Zeilen, höchstens zwei Minuten auseinander, ein Log</translation>
    </message>
    <message>
        <source>year of dates that name none</source>
        <translation>Jahr von Daten, die keines nennen</translation>
    </message>
    <message>
        <source>when the run began, where its table names no date; again for each further run</source>
        <translation>wann der Lauf begann, wo seine Tabelle kein Datum nennt; noch einmal für jeden weiteren Lauf</translation>
    </message>
    <message>
        <source>time zone of the table; that of this machine where not given</source>
        <translation>Zeitzone der Tabelle; ohne Angabe die dieses Rechners</translation>
    </message>
    <message>
        <source>name of the unit, where the table names none</source>
        <translation>Name des Speichers, wo die Tabelle keinen nennt</translation>
    </message>
    <message>
        <source>rated energy of a unit that the logbook does not know, Wh, or not-known; of several UNIT=WH for each</source>
        <translation>Nennenergie eines Speichers, den das Logbuch nicht kennt, Wh, oder not-known; bei mehreren UNIT=WH für jeden</translation>
    </message>
    <message>
        <source>name of the meter, or not-known</source>
        <translation>Name des Zählers, oder not-known</translation>
    </message>
    <message>
        <source>error limit of a meter that the logbook does not know, % of reading, or not-known</source>
        <translation>Fehlergrenze eines Zählers, den das Logbuch nicht kennt, % vom Messwert, oder not-known</translation>
    </message>
    <message>
        <source>name of the meter of the column second-register, or not-known</source>
        <translation>Name des Zählers der Spalte second-register, oder not-known</translation>
    </message>
    <message>
        <source>its error limit where the logbook does not know it, or not-known</source>
        <translation>seine Fehlergrenze, wo das Logbuch sie nicht kennt, oder not-known</translation>
    </message>
    <message>
        <source>how a run ended whose table does not say: cut-off, found-off, stopped, running or not-known</source>
        <translation>wie ein Lauf endete, dessen Tabelle es nicht sagt: cut-off, found-off, stopped, running oder not-known</translation>
    </message>
    <message>
        <source>yes, no or not-known</source>
        <translation>yes, no oder not-known</translation>
    </message>
    <message>
        <source>drain, no-load-drain, charge or standby; drain where not given</source>
        <translation>drain, no-load-drain, charge oder standby; ohne Angabe drain</translation>
    </message>
    <message>
        <source>the load, in your words</source>
        <translation>die Last, in Ihren Worten</translation>
    </message>
    <message>
        <source>say how a table is understood, import nothing</source>
        <translation>sagen, wie eine Tabelle verstanden wird, nichts importieren</translation>
    </message>
    <message>
        <source>run sheets, foreign tables of readings (CSV, XLSX, ODS, HTML), or folders of export-folder, each whole or not at all</source>
        <translation>Laufblätter, fremde Tabellen mit Ablesungen (CSV, XLSX, ODS, HTML) oder Ordner von export-folder, jedes ganz oder gar nicht</translation>
    </message>
    <message>
        <source>log file: rows of text with a time and a register, a power or the gauge of the unit</source>
        <translation>Log-Datei: Textzeilen mit einer Zeit und einem Zählwerk, einer Leistung oder der Ladeanzeige des Speichers</translation>
    </message>
    <message>
        <source>number of the run</source>
        <translation>Nummer des Laufs</translation>
    </message>
    <message>
        <source>meter that wrote the log; that of the run where not given; another than the run&apos;s is compared with it</source>
        <translation>Zähler, der das Log schrieb; ohne Angabe der des Laufs; ein anderer als der des Laufs wird mit ihm verglichen</translation>
    </message>
    <message>
        <source>columns, counted from 1: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A of a meter; gauge=7,output=8:W of the unit itself</source>
        <translation>Spalten, ab 1 gezählt: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A eines Zählers; gauge=7,output=8:W des Speichers selbst</translation>
    </message>
    <message>
        <source>day-first, month-first or year-first</source>
        <translation>day-first (Tag zuerst), month-first (Monat zuerst) oder year-first (Jahr zuerst)</translation>
    </message>
    <message>
        <source>what h:mm:ss means: clock (time of day) or elapsed</source>
        <translation>was h:mm:ss bedeutet: clock (Uhrzeit) oder elapsed (vergangene Zeit)</translation>
    </message>
    <message>
        <source>time zone of times without an offset; that of the run where not given</source>
        <translation>Zeitzone von Zeiten ohne Versatz; ohne Angabe die des Laufs</translation>
    </message>
    <message>
        <source>when the log was started, for times that count from the start or name no date</source>
        <translation>wann das Log gestartet wurde, bei Zeiten, die ab dem Start zählen oder kein Datum nennen</translation>
    </message>
    <message>
        <source>added to the times of the log, [-]h:mm:ss: how far the meter&apos;s clock was behind</source>
        <translation>wird zu den Zeiten des Logs addiert, [-]h:mm:ss: wie weit die Uhr des Zählers nachging</translation>
    </message>
    <message>
        <source>the same in seconds, or `estimate`: from the hand readings of the run</source>
        <translation>dasselbe in Sekunden, oder `estimate`: aus den von Hand notierten Ablesungen des Laufs</translation>
    </message>
    <message>
        <source>longest time between rows that is no gap, s</source>
        <translation>längste Zeit zwischen Zeilen, die keine Lücke ist, s</translation>
    </message>
    <message>
        <source>say what would be taken, import nothing</source>
        <translation>sagen, was übernommen würde, nichts importieren</translation>
    </message>
    <message>
        <source>another program is still writing it: go on taking what it gains, until interrupted</source>
        <translation>ein anderes Programm schreibt noch daran: weiter übernehmen, was hinzukommt, bis zum Abbruch</translation>
    </message>
    <message>
        <source>end following when the log has gained nothing for so long, s</source>
        <translation>das Verfolgen beenden, wenn das Log so lange nichts gewonnen hat, s</translation>
    </message>
    <message>
        <source>only runs of this unit</source>
        <translation>nur Läufe dieses Speichers</translation>
    </message>
    <message>
        <source>only this run of the unit</source>
        <translation>nur dieser Lauf des Speichers</translation>
    </message>
    <message>
        <source>text or json</source>
        <translation>text oder json</translation>
    </message>
    <message>
        <source>price of a kWh, in the currency of the unit, for the cost of what a unit takes for itself</source>
        <translation>Preis einer kWh, in der Währung des Speichers, für die Kosten dessen, was ein Speicher selbst verbraucht</translation>
    </message>
    <message>
        <source>form of the table</source>
        <translation>Format der Tabelle</translation>
    </message>
    <message>
        <source>file to write; its ending chooses the format where none is given</source>
        <translation>Datei, in die geschrieben wird; ihre Endung wählt das Format, wo keines angegeben ist</translation>
    </message>
    <message>
        <source>Columns of the comparison:</source>
        <translation>Spalten des Vergleichs:</translation>
    </message>
    <message>
        <source>Without --columns a table for people has those for readers; csv, json and xlsx have all.</source>
        <translation>Ohne --columns hat eine Tabelle für Menschen die für Leser; csv, json und xlsx haben alle.</translation>
    </message>
    <message>
        <source>logbooks, run sheets (.csv) and folders of run sheets, one or several</source>
        <translation>Logbücher, Laufblätter (.csv) und Ordner mit Laufblättern, eines oder mehrere</translation>
    </message>
    <message>
        <source>a row for each drain instead of one for each unit</source>
        <translation>eine Zeile für jede Entladung statt einer für jeden Speicher</translation>
    </message>
    <message>
        <source>common load, W: units are moved to it where their drains allow</source>
        <translation>gemeinsame Last, W: Speicher werden darauf umgerechnet, wo ihre Entladungen es erlauben</translation>
    </message>
    <message>
        <source>common load from a load list: its name in the logbook, or a file (.csv)</source>
        <translation>gemeinsame Last aus einer Lastliste: ihr Name im Logbuch oder eine Datei (.csv)</translation>
    </message>
    <message>
        <source>the models that units name, by their specimens</source>
        <translation>die Modelle, die bei Speichern genannt sind, nach ihren Exemplaren</translation>
    </message>
    <message>
        <source>the differences between units: clearly different or too close to call</source>
        <translation>die Unterschiede zwischen Speichern: klar verschieden oder nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>figure that is compared</source>
        <translation>Größe, die verglichen wird</translation>
    </message>
    <message>
        <source>keys of the columns wanted, in order; or readers, spreadsheet, or a set that the logbook keeps</source>
        <translation>Schlüssel der gewünschten Spalten, der Reihe nach; oder readers, spreadsheet oder ein Satz, den das Logbuch enthält</translation>
    </message>
    <message>
        <source>only units of this maker</source>
        <translation>nur Speicher dieses Herstellers</translation>
    </message>
    <message>
        <source>only units with this tag; named several times: with every one of them</source>
        <translation>nur Speicher mit diesem Schlagwort; mehrmals genannt: mit jedem davon</translation>
    </message>
    <message>
        <source>only units rated at this or more, Wh</source>
        <translation>nur Speicher mit dieser Nennenergie oder mehr, Wh</translation>
    </message>
    <message>
        <source>only units rated at this or less, Wh</source>
        <translation>nur Speicher mit dieser Nennenergie oder weniger, Wh</translation>
    </message>
    <message>
        <source>load lists (.csv), each whole or not at all</source>
        <translation>Lastlisten (.csv), jede ganz oder gar nicht</translation>
    </message>
    <message>
        <source>load list (.csv)</source>
        <translation>Lastliste (.csv)</translation>
    </message>
    <message>
        <source>only this list of the logbook, with its appliances</source>
        <translation>nur diese Liste des Logbuchs, mit ihren Verbrauchern</translation>
    </message>
    <message>
        <source>the list as a file that import-loads takes</source>
        <translation>die Liste als Datei, die import-loads nimmt</translation>
    </message>
    <message>
        <source>a load list: its name in the logbook, or a file (.csv)</source>
        <translation>eine Lastliste: ihr Name im Logbuch oder eine Datei (.csv)</translation>
    </message>
    <message>
        <source>only this unit</source>
        <translation>nur dieser Speicher</translation>
    </message>
    <message>
        <source>one table instead of all: units, months, rules or course</source>
        <translation>eine Tabelle statt aller: units, months, rules oder course</translation>
    </message>
    <message>
        <source>the intervals between readings instead of the readings</source>
        <translation>die Abschnitte zwischen Ablesungen statt der Ablesungen</translation>
    </message>
    <message>
        <source>the steps of the gauge by its log, each timed to the sample, instead of the readings</source>
        <translation>die Schritte der Ladeanzeige laut ihrem Log, jeder auf den Messwert genau, statt der Ablesungen</translation>
    </message>
    <message>
        <source>file to write</source>
        <translation>Datei, in die geschrieben wird</translation>
    </message>
    <message>
        <source>folder to make</source>
        <translation>Ordner, der angelegt wird</translation>
    </message>
    <message>
        <source>logbook that is added to</source>
        <translation>Logbuch, zu dem hinzugefügt wird</translation>
    </message>
    <message>
        <source>logbook that is only read</source>
        <translation>Logbuch, das nur gelesen wird</translation>
    </message>
    <message>
        <source>differences that are taken from the other logbook: `all`, `newer` (changed there alone) or ids that --dry-run shows; the rest stays as it is in LOGBOOK</source>
        <translation>Unterschiede, die aus dem anderen Logbuch übernommen werden: `all`, `newer` (nur dort geändert) oder Kennungen, die --dry-run zeigt; der Rest bleibt, wie er in LOGBOOK ist</translation>
    </message>
    <message>
        <source>say what would come of it, change nothing</source>
        <translation>sagen, was dabei herauskäme, nichts ändern</translation>
    </message>
    <message>
        <source>folder of the copies; beside the logbook where not given</source>
        <translation>Ordner der Kopien; ohne Angabe neben dem Logbuch</translation>
    </message>
    <message>
        <source>older copies of this logbook are removed, but for the newest; 30 where not given</source>
        <translation>ältere Kopien dieses Logbuchs werden entfernt, außer der neuesten; ohne Angabe 30</translation>
    </message>
    <message>
        <source>list the copies that there are, make none</source>
        <translation>die vorhandenen Kopien aufzählen, keine machen</translation>
    </message>
    <message>
        <source>PV sheet: a file of lines `key: value`; the keys are the options below with _ for -</source>
        <translation>PV-Blatt: eine Datei mit Zeilen `key: value`; die Schlüssel sind die Optionen unten mit _ statt -</translation>
    </message>
    <message>
        <source>logbook that holds the unit, or the sheet</source>
        <translation>Logbuch, das den Speicher oder das Blatt enthält</translation>
    </message>
    <message>
        <source>a PV sheet of the logbook instead of a file</source>
        <translation>ein PV-Blatt des Logbuchs statt einer Datei</translation>
    </message>
    <message>
        <source>Bring run sheets and foreign tables of readings into a logbook, made when missing</source>
        <translation>Laufblätter und fremde Tabellen mit Ablesungen in ein Logbuch bringen, das angelegt wird, wenn es fehlt</translation>
    </message>
    <message>
        <source>Bring the log of a meter into a run; how it is read is detected and said</source>
        <translation>Das Log eines Zählers in einen Lauf bringen; wie es gelesen wird, wird erkannt und gesagt</translation>
    </message>
    <message>
        <source>Say what each run shows, and when one still running should end (as of its last reading)</source>
        <translation>Sagen, was jeder Lauf zeigt und wann einer, der noch läuft, enden sollte (Stand seiner letzten Ablesung)</translation>
    </message>
    <message>
        <source>Compare the units of one or several logbooks, as tested or at one load</source>
        <translation>Die Speicher eines oder mehrerer Logbücher vergleichen, wie getestet oder bei einer Last</translation>
    </message>
    <message>
        <source>Write the readings of one run or of all runs as a table</source>
        <translation>Die Ablesungen eines Laufs oder aller Läufe als Tabelle schreiben</translation>
    </message>
    <message>
        <source>Write one run as a run sheet</source>
        <translation>Einen Lauf als Laufblatt schreiben</translation>
    </message>
    <message>
        <source>Write a whole logbook as a folder: run sheets, photos, logs, lists</source>
        <translation>Ein ganzes Logbuch als Ordner schreiben: Laufblätter, Fotos, Logs, Listen</translation>
    </message>
    <message>
        <source>Bring what another logbook has into a logbook, and say what differs</source>
        <translation>In ein Logbuch bringen, was ein anderes enthält, und sagen, was sich unterscheidet</translation>
    </message>
    <message>
        <source>Make the copy of the day of a logbook, or list its copies</source>
        <translation>Die Kopie des Tages von einem Logbuch machen oder seine Kopien aufzählen</translation>
    </message>
    <message>
        <source>Check a PV string against the PV input of a unit: cold, hot, current, power</source>
        <translation>Einen PV-Strang gegen den PV-Eingang eines Speichers prüfen: Kälte, Hitze, Strom, Leistung</translation>
    </message>
    <message>
        <source>Bring load lists into a logbook, made when missing</source>
        <translation>Lastlisten in ein Logbuch bringen, das angelegt wird, wenn es fehlt</translation>
    </message>
    <message>
        <source>Say what load lists take: of one file, or all of a logbook</source>
        <translation>Sagen, was Lastlisten aufnehmen: die einer Datei oder alle eines Logbuchs</translation>
    </message>
    <message>
        <source>Say how long each unit carries a load list, how many are needed, and which PV array</source>
        <translation>Sagen, wie lange jeder Speicher eine Lastliste trägt, wie viele nötig sind und welcher PV-Generator</translation>
    </message>
    <message>
        <source>run sheets hold no load lists</source>
        <translation>Laufblätter enthalten keine Lastlisten</translation>
    </message>
    <message>
        <source>name a logbook that has it, or a file of a load list (.csv)</source>
        <translation>nennen Sie ein Logbuch, das sie enthält, oder die Datei einer Lastliste (.csv)</translation>
    </message>
    <message numerus="yes">
        <source>none of %n units passes the filter</source>
        <comment>none of %n unit passes the filter</comment>
        <translation>
            <numerusform>von %n Speicher besteht keiner den Filter</numerusform>
            <numerusform>von %n Speichern besteht keiner den Filter</numerusform>
        </translation>
    </message>
    <message>
        <source>leave one of these options out, or correct it</source>
        <translation>lassen Sie eine dieser Optionen weg oder berichtigen Sie sie</translation>
    </message>
    <message>
        <source>no unit is rated above the least and below the most</source>
        <translation>keine Nennenergie liegt über der kleinsten und unter der größten</translation>
    </message>
    <message>
        <source>exchange the two</source>
        <translation>vertauschen Sie die beiden</translation>
    </message>
    <message>
        <source>the load list takes nothing</source>
        <translation>die Lastliste nimmt nichts auf</translation>
    </message>
    <message>
        <source>give it appliances, or name a load with --at-load</source>
        <translation>geben Sie ihr Verbraucher oder nennen Sie eine Last mit --at-load</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n rows left out</source>
        <comment>%1, %n row left out</comment>
        <translation>
            <numerusform>%1, %n Zeile ausgelassen</numerusform>
            <numerusform>%1, %n Zeilen ausgelassen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n samples to %2</source>
        <comment>%1: %n sample to %2</comment>
        <translation>
            <numerusform>%1: %n Messwert bis %2</numerusform>
            <numerusform>%1: %n Messwerte bis %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Following the log; interrupt (Ctrl+C) to end</source>
        <translation>Das Log wird verfolgt; Strg+C beendet es</translation>
    </message>
    <message>
        <source>The log was begun anew; it is read from its beginning</source>
        <translation>Das Log wurde neu begonnen; es wird von Anfang an gelesen</translation>
    </message>
    <message>
        <source>The log is not there; waiting for it</source>
        <translation>Das Log ist nicht da; auf die Datei wird gewartet</translation>
    </message>
    <message>
        <source>The log is there again</source>
        <translation>Das Log ist wieder da</translation>
    </message>
    <message numerus="yes">
        <source>The run has this log already; %n new samples added</source>
        <comment>The run has this log already; %n new sample added</comment>
        <translation>
            <numerusform>Der Lauf hat dieses Log schon; %n neuer Messwert angefügt</numerusform>
            <numerusform>Der Lauf hat dieses Log schon; %n neue Messwerte angefügt</numerusform>
        </translation>
    </message>
    <message>
        <source>Forecast as of %1</source>
        <translation>Vorhersage, Stand %1</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>cut-off: %1, in the middle %2; %3</source>
        <translation>Abschaltung: %1, in der Mitte %2; %3</translation>
    </message>
    <message>
        <source>cut-off: not known: %1</source>
        <translation>Abschaltung: unbekannt: %1</translation>
    </message>
    <message>
        <source>gauge at %1 %: %2</source>
        <translation>Ladeanzeige bei %1 %: %2</translation>
    </message>
    <message>
        <source>next gauge step: not known: %1</source>
        <translation>nächster Anzeigeschritt: unbekannt: %1</translation>
    </message>
    <message>
        <source>Two accounts</source>
        <translation>Zwei Lesarten</translation>
    </message>
    <message>
        <source>%1: already in the logbook as run %2 of %3, left out</source>
        <translation>%1: schon im Logbuch als Lauf %2 von %3, ausgelassen</translation>
    </message>
    <message numerus="yes">
        <source>%1: run %2 of %3, %4 with %n readings</source>
        <comment>%1: run %2 of %3, %4 with %n reading</comment>
        <translation>
            <numerusform>%1: Lauf %2 von %3, %4 mit %n Ablesung</numerusform>
            <numerusform>%1: Lauf %2 von %3, %4 mit %n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>the folder holds no run sheet</source>
        <translation>der Ordner enthält kein Laufblatt</translation>
    </message>
    <message>
        <source>name a folder with .csv run sheets</source>
        <translation>nennen Sie einen Ordner mit Laufblättern (.csv)</translation>
    </message>
    <message>
        <source>`%1` names no column and role</source>
        <translation>`%1` nennt keine Spalte und Rolle</translation>
    </message>
    <message>
        <source>write it like %1; the roles are in the help of the command</source>
        <translation>schreiben Sie es wie %1; die Rollen stehen in der Hilfe des Befehls</translation>
    </message>
    <message>
        <source>the table has no column `%1`</source>
        <translation>die Tabelle hat keine Spalte `%1`</translation>
    </message>
    <message>
        <source>name one by its number from 1 to %1, its letter or its title</source>
        <translation>nennen Sie eine nach ihrer Nummer von 1 bis %1, ihrem Buchstaben oder ihrem Titel</translation>
    </message>
    <message>
        <source>`%1` is no unit</source>
        <translation>`%1` ist keine Einheit</translation>
    </message>
    <message>
        <source>use Wh, kWh, W, kW, %, h, min or s</source>
        <translation>nehmen Sie Wh, kWh, W, kW, %, h, min oder s</translation>
    </message>
    <message>
        <source>there is no sheet `%1`</source>
        <translation>es gibt kein Blatt `%1`</translation>
    </message>
    <message>
        <source>use --sheet with one of %1</source>
        <translation>nehmen Sie --sheet mit einem von diesen: %1</translation>
    </message>
    <message>
        <source>there are several sheets: %1</source>
        <translation>es gibt mehrere Blätter: %1</translation>
    </message>
    <message>
        <source>name one with --sheet; nothing was imported</source>
        <translation>nennen Sie eines mit --sheet; nichts wurde importiert</translation>
    </message>
    <message>
        <source>give a number, or not-known</source>
        <translation>geben Sie eine Zahl an, oder not-known</translation>
    </message>
    <message>
        <source>what the table does not say is asked once</source>
        <translation>was die Tabelle nicht sagt, wird einmal gefragt</translation>
    </message>
    <message>
        <source>answer with %1; nothing was imported</source>
        <translation>antworten Sie mit %1; nichts wurde importiert</translation>
    </message>
    <message>
        <source>there is no time zone `%1`</source>
        <translation>es gibt keine Zeitzone `%1`</translation>
    </message>
    <message>
        <source>name one such as %1</source>
        <translation>nennen Sie eine wie %1</translation>
    </message>
    <message>
        <source>correct the table, or map its columns with --map; nothing was imported</source>
        <translation>berichtigen Sie die Tabelle oder ordnen Sie ihre Spalten mit --map zu; nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: nothing was imported (--preview)</source>
        <translation>%1: nichts wurde importiert (--preview)</translation>
    </message>
    <message>
        <source>Run %1 of the table is already in the logbook as run %2 of %3, left out</source>
        <translation>Lauf %1 der Tabelle ist schon im Logbuch als Lauf %2 von %3, ausgelassen</translation>
    </message>
    <message>
        <source>%1: every run of it is already in the logbook, nothing was imported</source>
        <translation>%1: jeder Lauf daraus ist schon im Logbuch, nichts wurde importiert</translation>
    </message>
    <message numerus="yes">
        <source>run %1 of %2, %3 with %n readings</source>
        <comment>run %1 of %2, %3 with %n reading</comment>
        <translation>
            <numerusform>Lauf %1 von %2, %3 mit %n Ablesung</numerusform>
            <numerusform>Lauf %1 von %2, %3 mit %n Ablesungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and a log of %n rows</source>
        <comment>%1 and a log of %n row</comment>
        <translation>
            <numerusform>%1 und ein Log mit %n Zeile</numerusform>
            <numerusform>%1 und ein Log mit %n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` names no column</source>
        <translation>`%1` nennt keine Spalte</translation>
    </message>
    <message>
        <source>write it like %1, columns counted from 1</source>
        <translation>schreiben Sie es wie %1, Spalten ab 1 gezählt</translation>
    </message>
    <message>
        <source>`%1` is no time</source>
        <translation>`%1` ist keine Zeit</translation>
    </message>
    <message>
        <source>write it like 00:00:12 or -00:01:30.5: hours, minutes, seconds</source>
        <translation>schreiben Sie sie wie 00:00:12 oder -00:01:30.5: Stunden, Minuten, Sekunden</translation>
    </message>
    <message>
        <source>`%1` is no offset</source>
        <translation>`%1` ist kein Versatz</translation>
    </message>
    <message>
        <source>give seconds such as 12 or -90.5, or `estimate`</source>
        <translation>geben Sie Sekunden an wie 12 oder -90.5, oder `estimate`</translation>
    </message>
    <message>
        <source>there is no meter named `%1`</source>
        <translation>es gibt keinen Zähler mit Namen `%1`</translation>
    </message>
    <message>
        <source>add the meter to the logbook first</source>
        <translation>legen Sie den Zähler zuerst im Logbuch an</translation>
    </message>
    <message>
        <source>use one of %1</source>
        <translation>nehmen Sie einen von diesen: %1</translation>
    </message>
    <message>
        <source>the unit&apos;s gauge</source>
        <translation>die Ladeanzeige des Speichers</translation>
    </message>
    <message>
        <source>the unit&apos;s output power</source>
        <translation>die Ausgangsleistung des Speichers</translation>
    </message>
    <message>
        <source>no meter named</source>
        <translation>kein Zähler genannt</translation>
    </message>
    <message>
        <source>and the unit&apos;s gauge</source>
        <translation>und die Ladeanzeige des Speichers</translation>
    </message>
    <message>
        <source>beside %1 of the run</source>
        <translation>neben %1 des Laufs</translation>
    </message>
    <message>
        <source>Note: the log is taken to begin with the first reading of the run, %1; --start changes that</source>
        <translation>Hinweis: das Log gilt als mit der ersten Ablesung des Laufs begonnen, %1; --start ändert das</translation>
    </message>
    <message>
        <source>Note: the times of the log are taken for local times of %1; --zone changes that</source>
        <translation>Hinweis: die Zeiten des Logs gelten als Ortszeiten von %1; --zone ändert das</translation>
    </message>
    <message>
        <source>Nothing was imported (--preview)</source>
        <translation>Nichts wurde importiert (--preview)</translation>
    </message>
    <message numerus="yes">
        <source>%n samples from %1 to %2</source>
        <comment>%n sample from %1 to %2</comment>
        <translation>
            <numerusform>%n Messwert von %1 bis %2</numerusform>
            <numerusform>%n Messwerte von %1 bis %2</numerusform>
        </translation>
    </message>
    <message>
        <source>into run %1 of %2</source>
        <translation>in Lauf %1 von %2</translation>
    </message>
    <message>
        <source>the samples are in the logbook</source>
        <translation>die Messwerte sind im Logbuch</translation>
    </message>
    <message>
        <source>The logbook has all that the other has already</source>
        <translation>Das Logbuch hat schon alles, was das andere hat</translation>
    </message>
    <message>
        <source>This is what joining would do; nothing was changed</source>
        <translation>Das würde das Zusammenführen bewirken; nichts wurde geändert</translation>
    </message>
    <message>
        <source>Joined: %1</source>
        <translation>Zusammengeführt: %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>only a logbook holds load lists</source>
        <translation>nur ein Logbuch enthält Lastlisten</translation>
    </message>
    <message>
        <source>name a logbook, or the file of a load list with --load-list</source>
        <translation>nennen Sie ein Logbuch, oder die Datei einer Lastliste mit --load-list</translation>
    </message>
    <message>
        <source>there is no load list `%1`</source>
        <translation>es gibt keine Lastliste `%1`</translation>
    </message>
    <message>
        <source>bring one in with ullage import-loads</source>
        <translation>bringen Sie eine herein mit ullage import-loads</translation>
    </message>
    <message>
        <source>%1: load list %2 is in the logbook already, left out</source>
        <translation>%1: die Lastliste %2 ist schon im Logbuch, ausgelassen</translation>
    </message>
    <message numerus="yes">
        <source>%1: load list %2 with %n lines</source>
        <comment>%1: load list %2 with %n line</comment>
        <translation>
            <numerusform>%1: Lastliste %2 mit %n Zeile</numerusform>
            <numerusform>%1: Lastliste %2 mit %n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>name a load list (.csv) or a logbook, one of the two</source>
        <translation>nennen Sie eine Lastliste (.csv) oder ein Logbuch, eines von beiden</translation>
    </message>
    <message>
        <source>see ullage loads --help</source>
        <translation>siehe ullage loads --help</translation>
    </message>
    <message>
        <source>(required)</source>
        <translation>(erforderlich)</translation>
    </message>
    <message>
        <source>User commands</source>
        <translation>Benutzerbefehle</translation>
    </message>
    <message>
        <source>NAME</source>
        <translation>NAME</translation>
    </message>
    <message>
        <source>say what a battery storage unit delivers, against what its label and its gauge say</source>
        <translation>sagt, was ein Batteriespeicher abgibt, gegen das, was sein Typenschild und seine Ladeanzeige sagen</translation>
    </message>
    <message>
        <source>SYNOPSIS</source>
        <translation>ÜBERSICHT</translation>
    </message>
    <message>
        <source>DESCRIPTION</source>
        <translation>BESCHREIBUNG</translation>
    </message>
    <message>
        <source>A tester drains a battery storage unit through real loads for many hours and notes what its own gauge and an energy meter say. Ullage records these readings, computes the delivered energy and the usable fraction with their uncertainty, finds faults of the gauge, and compares units.</source>
        <translation>Ein Prüfer entlädt einen Batteriespeicher viele Stunden lang über echte Lasten und notiert, was dessen eigene Ladeanzeige und ein Energiezähler sagen. Ullage zeichnet diese Ablesungen auf, berechnet die abgegebene Energie und den nutzbaren Anteil mit ihrer Unsicherheit, findet Fehler der Ladeanzeige und vergleicht Speicher.</translation>
    </message>
    <message>
        <source>Without a command it opens its window, on the logbook that was open last or on %1. The commands do the same job in text, without a display. Results go to the standard output, problems to the standard error, one line each.</source>
        <translation>Ohne Befehl öffnet es sein Fenster, mit dem zuletzt offenen Logbuch oder mit %1. Die Befehle tun dieselbe Arbeit als Text, ohne Bildschirm. Ergebnisse gehen auf die Standardausgabe, Fehlermeldungen auf die Standardfehlerausgabe, je eine Zeile.</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <translation>OPTIONEN</translation>
    </message>
    <message>
        <source>Say what there is; behind a command what that takes.</source>
        <translation>Sagen, was es gibt; hinter einem Befehl, was dieser annimmt.</translation>
    </message>
    <message>
        <source>Say the version.</source>
        <translation>Die Version nennen.</translation>
    </message>
    <message>
        <source>Write this page.</source>
        <translation>Diese Seite schreiben.</translation>
    </message>
    <message>
        <source>Write the completion of commands and options for bash.</source>
        <translation>Die Ergänzung von Befehlen und Optionen für die bash schreiben.</translation>
    </message>
    <message>
        <source>COMMANDS</source>
        <translation>BEFEHLE</translation>
    </message>
    <message>
        <source>FILES</source>
        <translation>DATEIEN</translation>
    </message>
    <message>
        <source>A logbook, an SQLite file with all units, meters, runs, readings, photos and logs. Copy this one file to keep it.</source>
        <translation>Ein Logbuch, eine SQLite-Datei mit allen Speichern, Zählern, Läufen, Ablesungen, Fotos und Logs. Kopieren Sie diese eine Datei, um es aufzubewahren.</translation>
    </message>
    <message>
        <source>Settings of the window.</source>
        <translation>Einstellungen des Fensters.</translation>
    </message>
    <message>
        <source>ENVIRONMENT</source>
        <translation>UMGEBUNG</translation>
    </message>
    <message>
        <source>The password of a live meter for %1, in place of asking.</source>
        <translation>Das Passwort eines live gelesenen Zählers für %1, statt danach zu fragen.</translation>
    </message>
    <message>
        <source>EXIT STATUS</source>
        <translation>RÜCKGABEWERT</translation>
    </message>
    <message>
        <source>It was done.</source>
        <translation>Es ist getan.</translation>
    </message>
    <message>
        <source>Bad input, or a result that could not be written.</source>
        <translation>Schlechte Eingabe, oder ein Ergebnis, das sich nicht schreiben ließ.</translation>
    </message>
    <message>
        <source>Wrong usage.</source>
        <translation>Falscher Aufruf.</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>VORSICHT</translation>
    </message>
    <message>
        <source>Mains voltage and charged batteries can kill and burn. Results of this program are no safety certification. Local codes and licensed practice come first.</source>
        <translation>Netzspannung und geladene Batterien können töten und verbrennen. Ergebnisse dieses Programms sind keine Sicherheitszertifizierung. Örtliche Vorschriften und zugelassene Elektrofachkräfte haben Vorrang.</translation>
    </message>
    <message>
        <source>there is no PV sheet named `%1`</source>
        <translation>es gibt kein PV-Blatt mit Namen `%1`</translation>
    </message>
    <message>
        <source>see the PV input page for their names</source>
        <translation>die Seite PV-Eingang nennt ihre Namen</translation>
    </message>
    <message>
        <source>there is no unit named `%1` in the logbook</source>
        <translation>im Logbuch gibt es keinen Speicher mit Namen `%1`</translation>
    </message>
    <message>
        <source>use the name of one of its units</source>
        <translation>nehmen Sie den Namen eines seiner Speicher</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>A subcommand is required</source>
        <translation>Ein Befehl ist erforderlich</translation>
    </message>
    <message>
        <source>%1 is required</source>
        <translation>%1 ist erforderlich</translation>
    </message>
    <message>
        <source>The following argument was not expected: %1</source>
        <translation>Dieses Argument wurde nicht erwartet: %1</translation>
    </message>
    <message>
        <source>The following arguments were not expected: %1</source>
        <translation>Diese Argumente wurden nicht erwartet: %1</translation>
    </message>
    <message>
        <source>Could not convert: %1</source>
        <translation>Nicht umzuwandeln: %1</translation>
    </message>
    <message>
        <source>%1 excludes %2</source>
        <translation>%1 schließt %2 aus</translation>
    </message>
    <message>
        <source>%1 requires %2</source>
        <translation>%1 erfordert %2</translation>
    </message>
    <message>
        <source>%1 not in %2</source>
        <translation>%1 ist nicht in %2</translation>
    </message>
    <message>
        <source>%1: %2 required %3 missing</source>
        <translation>%1: %2 erforderlich, %3 fehlt</translation>
    </message>
    <message>
        <source>Usage</source>
        <translation>Aufruf</translation>
    </message>
    <message>
        <source>Positionals</source>
        <translation>Argumente</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <translation>ERFORDERLICH</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Erfordert</translation>
    </message>
    <message>
        <source>Excludes</source>
        <translation>Schließt aus</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Diese Hilfe ausgeben und enden</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Die Version des Programms ausgeben und enden</translation>
    </message>
    <message>
        <source>Ullage: what a storage unit delivers, against what its label and its gauge say</source>
        <translation>Ullage: was ein Batteriespeicher abgibt, gegen das, was sein Typenschild und seine Ladeanzeige sagen</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>the folder cannot be read: %1</source>
        <translation>der Ordner lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>prüfen Sie seine Zugriffsrechte</translation>
    </message>
    <message>
        <source>name a logbook or a folder with .csv run sheets</source>
        <translation>nennen Sie ein Logbuch oder einen Ordner mit Laufblättern (.csv)</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>%1: checked from end to end, as it comes from elsewhere or was not closed properly; that took %2 s</source>
        <translation>%1: von Anfang bis Ende geprüft, da es von anderswo kommt oder nicht richtig geschlossen wurde; das dauerte %2 s</translation>
    </message>
    <message>
        <source>%1: beside other sources only its run sheets count, not its logs; `ullage import` makes it a logbook again</source>
        <translation>%1: neben anderen Quellen zählen nur seine Laufblätter, nicht seine Logs; `ullage import` macht wieder ein Logbuch daraus</translation>
    </message>
    <message>
        <source>%1 states another method than %2, by which all are compared</source>
        <translation>%1 gibt eine andere Methode an als %2, nach der alle verglichen werden</translation>
    </message>
    <message>
        <source>there is no run of a unit named `%1`</source>
        <translation>es gibt keinen Lauf eines Speichers mit Namen `%1`</translation>
    </message>
    <message>
        <source>the logbook has no runs yet</source>
        <translation>das Logbuch hat noch keine Läufe</translation>
    </message>
    <message>
        <source>several units have runs</source>
        <translation>mehrere Speicher haben Läufe</translation>
    </message>
    <message>
        <source>add --unit with one of %1</source>
        <translation>fügen Sie --unit mit einem von diesen hinzu: %1</translation>
    </message>
    <message>
        <source>there is no run %1</source>
        <translation>es gibt keinen Lauf %1</translation>
    </message>
    <message>
        <source>no month&apos;s sun is stated</source>
        <translation>für keinen Monat ist die Sonne angegeben</translation>
    </message>
    <message>
        <source>name twelve figures, January first</source>
        <translation>nennen Sie zwölf Werte, Januar zuerst</translation>
    </message>
    <message>
        <source>there is no unit named `%1`</source>
        <translation>es gibt keinen Speicher mit Namen `%1`</translation>
    </message>
    <message>
        <source>days to be carried without sun</source>
        <translation>Tage, die ohne Sonne zu tragen sind</translation>
    </message>
    <message>
        <source>peak-sun hours a day, of the worst month that counts</source>
        <translation>Vollsonnenstunden pro Tag, des schlechtesten Monats, der zählt</translation>
    </message>
    <message>
        <source>what is left of the array&apos;s label at the battery, 0 to 1</source>
        <translation>was von der Leistung laut Typenschild des PV-Generators an der Batterie bleibt, 0 bis 1</translation>
    </message>
    <message>
        <source>array energy over daily load that the rule asks for, 1 or more</source>
        <translation>Energie des PV-Generators durch tägliche Last, wie die Regel sie verlangt, 1 oder mehr</translation>
    </message>
    <message>
        <source>PV array that is there, W; that of the rule where not given</source>
        <translation>vorhandener PV-Generator, W; ohne Angabe der nach Regel</translation>
    </message>
    <message>
        <source>peak-sun hours a day of the twelve months, January first, with commas</source>
        <translation>Vollsonnenstunden pro Tag der zwölf Monate, Januar zuerst, mit Kommas</translation>
    </message>
    <message>
        <source>units side by side in the course of the charge</source>
        <translation>Speicher nebeneinander im Verlauf der Ladung</translation>
    </message>
    <message>
        <source>share of the rated energy expected of untested units, lower end</source>
        <translation>Anteil der Nennenergie, der von ungetesteten Speichern erwartet wird, unteres Ende</translation>
    </message>
    <message>
        <source>the same, upper end</source>
        <translation>dasselbe, oberes Ende</translation>
    </message>
    <message>
        <source>of the battery rule, 0 to 1</source>
        <translation>der Batterie nach Regel, 0 bis 1</translation>
    </message>
    <message>
        <source>deepest discharge of the battery rule, 0 to 1</source>
        <translation>tiefste Entladung der Batterie nach Regel, 0 bis 1</translation>
    </message>
    <message>
        <source>share of the capacity left at the end of life, 0 to 1</source>
        <translation>Restanteil der Kapazität am Lebensende, 0 bis 1</translation>
    </message>
    <message>
        <source>of the battery rule, 1 or more</source>
        <translation>der Batterie nach Regel, 1 oder mehr</translation>
    </message>
    <message>
        <source>of the battery rule, 1 to 2</source>
        <translation>der Batterie nach Regel, 1 bis 2</translation>
    </message>
    <message>
        <source>`%1` is the ending of no table</source>
        <translation>`%1` ist keine Endung einer Tabelle</translation>
    </message>
    <message>
        <source>use .txt, .csv, .md, .html, .xlsx, .json or .tex, or name the --format</source>
        <translation>nehmen Sie .txt, .csv, .md, .html, .xlsx, .json oder .tex, oder nennen Sie das --format</translation>
    </message>
    <message>
        <source>xlsx is no text for a terminal</source>
        <translation>xlsx ist kein Text für ein Terminal</translation>
    </message>
    <message>
        <source>name a file with --output</source>
        <translation>nennen Sie eine Datei mit --output</translation>
    </message>
    <message>
        <source>sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
    <message>
        <source>head in row %1</source>
        <translation>Kopfzeile in Zeile %1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Gelesen als: %1</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>Spalte %1: %2</translation>
    </message>
    <message>
        <source>column %1 `%2`: %3</source>
        <translation>Spalte %1 `%2`: %3</translation>
    </message>
    <message>
        <source>rows %1 to %2</source>
        <translation>Zeilen %1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>gauge %1 to %2 %</source>
        <translation>Ladeanzeige %1 bis %2 %</translation>
    </message>
    <message>
        <source>register %1 to %2 Wh</source>
        <translation>Zählwerk %1 bis %2 Wh</translation>
    </message>
    <message>
        <source>cut-off noted</source>
        <translation>Abschaltung notiert</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Lauf %1: %2</translation>
    </message>
    <message>
        <source>Run %1 `%2`: %3</source>
        <translation>Lauf %1 `%2`: %3</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Hinweis: %1</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Offen: %1</translation>
    </message>
    <message>
        <source>Open: %1 (%2?)</source>
        <translation>Offen: %1 (%2?)</translation>
    </message>
    <message>
        <source>row %1 taken in part: %2</source>
        <translation>Zeile %1 teils übernommen: %2</translation>
    </message>
    <message>
        <source>row %1 left out: %2</source>
        <translation>Zeile %1 ausgelassen: %2</translation>
    </message>
    <message numerus="yes">
        <source>and %n more rows</source>
        <comment>and %n more rows</comment>
        <translation>
            <numerusform>und %n weitere Zeile</numerusform>
            <numerusform>und %n weitere Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 % gauge</source>
        <translation>%1 % Ladeanzeige</translation>
    </message>
    <message numerus="yes">
        <source>%n rows: %1 taken, %2 left out</source>
        <comment>%n row: %1 taken, %2 left out</comment>
        <translation>
            <numerusform>%n Zeile: %1 übernommen, %2 ausgelassen</numerusform>
            <numerusform>%n Zeilen: %1 übernommen, %2 ausgelassen</numerusform>
        </translation>
    </message>
    <message>
        <source>usually %1 s apart</source>
        <translation>meist %1 s auseinander</translation>
    </message>
    <message>
        <source>%1 left out: %2</source>
        <translation>%1 ausgelassen: %2</translation>
    </message>
    <message>
        <source>%1 taken with a doubt: %2</source>
        <translation>%1 mit Zweifel übernommen: %2</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps longer than %1 s</source>
        <comment>%n gap longer than %1 s</comment>
        <translation>
            <numerusform>%n Lücke länger als %1 s</numerusform>
            <numerusform>%n Lücken länger als %1 s</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>Load by the log</source>
        <translation>Last laut Log</translation>
    </message>
    <message>
        <source>mean %1 W, peak %2 W over %3; %4 Wh a day</source>
        <translation>Mittel %1 W, Spitze %2 W über %3; %4 Wh pro Tag</translation>
    </message>
    <message>
        <source>on %1 W, off %2 W; on for %3 % of the time, %4 starts an hour</source>
        <translation>ein %1 W, aus %2 W; ein %3 % der Zeit, %4 Starts pro Stunde</translation>
    </message>
    <message>
        <source>power integrated: %1 Wh; its square: %2 W²h</source>
        <translation>Leistung integriert: %1 Wh; ihr Quadrat: %2 W²h</translation>
    </message>
    <message>
        <source>register of the same times: %1 Wh; integrated power is %2 % of it</source>
        <translation>Zählwerk über dieselben Zeiten: %1 Wh; die integrierte Leistung ist %2 % davon</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps (%1) left out, in which at most %2 Wh may have flowed</source>
        <comment>%n gap (%1) left out, in which at most %2 Wh may have flowed</comment>
        <translation>
            <numerusform>%n Lücke (%1) ausgelassen, in der höchstens %2 Wh geflossen sein können</numerusform>
            <numerusform>%n Lücken (%1) ausgelassen, in denen höchstens %2 Wh geflossen sein können</numerusform>
        </translation>
    </message>
    <message>
        <source>All drains of %1 together</source>
        <translation>Alle Entladungen von %1 zusammen</translation>
    </message>
    <message>
        <source>Drains used</source>
        <translation>Benutzte Entladungen</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Entladung</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>mittlere Last</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>abgegeben</translation>
    </message>
    <message>
        <source>beyond the fit</source>
        <translation>über der Geraden</translation>
    </message>
    <message>
        <source>run %1, %2: %3</source>
        <translation>Lauf %1, %2: %3</translation>
    </message>
    <message>
        <source>Drains not used</source>
        <translation>Nicht benutzte Entladungen</translation>
    </message>
    <message>
        <source>Gauge from run to run: %1</source>
        <translation>Ladeanzeige von Lauf zu Lauf: %1</translation>
    </message>
    <message>
        <source>Full drains at like loads, run to run</source>
        <translation>Volle Entladungen bei ähnlichen Lasten, von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Wh per gauge point</source>
        <translation>Wh je Anzeigepunkt</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>gauge curve</source>
        <translation>Anzeigekurve</translation>
    </message>
    <message>
        <source>at depth</source>
        <translation>bei Tiefe</translation>
    </message>
    <message>
        <source>p of the curve</source>
        <translation>p der Kurve</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>verschoben</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Changes of Wh per gauge point and of the energy are corrected for the loads.</source>
        <translation>Änderungen von Wh je Anzeigepunkt und der Energie sind um die Lasten korrigiert.</translation>
    </message>
    <message>
        <source>Next run: %1</source>
        <translation>Nächster Lauf: %1</translation>
    </message>
    <message>
        <source>Drift: %1</source>
        <translation>Drift: %1</translation>
    </message>
    <message>
        <source>`%1` is no locale; use a name such as de_DE or en_US</source>
        <translation>`%1` ist keine Region; geben Sie einen Namen wie de_DE oder en_US an</translation>
    </message>
    <message>
        <source>With --language CODE (en, de, fr or es) every command speaks another language than that of the environment.</source>
        <translation>Mit --language CODE (en, de, fr oder es) spricht jeder Befehl eine andere Sprache als die der Umgebung.</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <source>there is no display; use `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` or `ullage --help`</source>
        <translation>es ist keine grafische Anzeige da; nehmen Sie `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` oder `ullage --help`</translation>
    </message>
    <message>
        <source>the code of a language is missing behind `--language`</source>
        <translation>hinter `--language` fehlt der Code einer Sprache</translation>
    </message>
    <message>
        <source>write %1 there, as in `--language %2`</source>
        <translation>schreiben Sie dort %1, wie in `--language %2`</translation>
    </message>
    <message>
        <source>%1 is no language of this program</source>
        <translation>%1 ist keine Sprache dieses Programms</translation>
    </message>
    <message>
        <source>use `--language` with %1</source>
        <translation>nehmen Sie `--language` mit %1</translation>
    </message>
    <message>
        <source>the copy is complete: %1</source>
        <translation>die Kopie ist vollständig: %1</translation>
    </message>
    <message>
        <source>the folder is complete: %1</source>
        <translation>der Ordner ist vollständig: %1</translation>
    </message>
    <message>
        <source>the samples to %1 are in the logbook</source>
        <translation>die Messwerte bis %1 sind im Logbuch</translation>
    </message>
    <message>
        <source>the log is no longer followed</source>
        <translation>das Log wird nicht mehr verfolgt</translation>
    </message>
    <message>
        <source>what could be imported is in the logbook: %1</source>
        <translation>was sich importieren ließ, ist im Logbuch: %1</translation>
    </message>
    <message>
        <source>what came in is in the logbook: %1</source>
        <translation>was hereinkam, ist im Logbuch: %1</translation>
    </message>
    <message>
        <source>a whole logbook as a folder has no preview; nothing was imported</source>
        <translation>ein ganzes Logbuch als Ordner hat keine Vorschau; nichts wurde importiert</translation>
    </message>
    <message>
        <source>import it without --preview, into a new logbook if you only want to look</source>
        <translation>importieren Sie ihn ohne --preview, in ein neues Logbuch, wenn Sie nur hineinsehen wollen</translation>
    </message>
    <message>
        <source>the pictures in %1 are complete</source>
        <translation>die Bilder in %1 sind vollständig</translation>
    </message>
    <message>
        <source>the report and the files beside it are complete: %1</source>
        <translation>der Bericht und die Dateien daneben sind vollständig: %1</translation>
    </message>
    <message>
        <source>the report is complete: %1</source>
        <translation>der Bericht ist vollständig: %1</translation>
    </message>
    <message>
        <source>the picture cannot be made</source>
        <translation>das Bild lässt sich nicht erzeugen</translation>
    </message>
    <message>
        <source>ask for a smaller window</source>
        <translation>verlangen Sie ein kleineres Fenster</translation>
    </message>
    <message>
        <source>the samples of %1 to %2 are in the logbook</source>
        <translation>die Messwerte von %1 bis %2 sind im Logbuch</translation>
    </message>
    <message>
        <source>the source is kept with the meter</source>
        <translation>die Quelle ist beim Zähler behalten</translation>
    </message>
    <message>
        <source>the program cannot tell where it lies (%1)</source>
        <translation>das Programm kann nicht feststellen, wo es liegt (%1)</translation>
    </message>
    <message>
        <source>mount /proc</source>
        <translation>hängen Sie /proc ein</translation>
    </message>
</context>
<context>
    <name>comparison</name>
    <message>
        <source>the maker&apos;s claim, not measured</source>
        <translation>Angabe des Herstellers, nicht gemessen</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>not drained from full to cut-off with its energy known</source>
        <translation>nicht mit bekannter Energie von voll bis Abschaltung entladen</translation>
    </message>
    <message>
        <source>Different meters were used: the error limit of each counts in full in a difference between units.</source>
        <translation>Verschiedene Zähler wurden benutzt: in einen Unterschied zwischen Speichern geht die Fehlergrenze jedes Zählers ganz ein.</translation>
    </message>
    <message>
        <source>Projected figures assume an accurate gauge over the stretch that was drained, or allow for the fault found in it; half a drain can mislead by more than a tenth.</source>
        <translation>Hochgerechnete Werte setzen über das entladene Stück eine genaue Ladeanzeige voraus oder lassen den Fehler zu, der darin gefunden wurde; eine halbe Entladung kann um mehr als ein Zehntel täuschen.</translation>
    </message>
    <message>
        <source>Figures projected through the gauge curve of an earlier run assume that the gauge has not changed since.</source>
        <translation>Werte, die über die Anzeigekurve eines früheren Laufs hochgerechnet sind, setzen voraus, dass sich die Ladeanzeige seither nicht geändert hat.</translation>
    </message>
    <message>
        <source>no energy to divide by</source>
        <translation>keine Energie, durch die sich teilen ließe</translation>
    </message>
    <message>
        <source>at most %1 %2: %3</source>
        <translation>höchstens %1 %2: %3</translation>
    </message>
    <message>
        <source>no charge run</source>
        <translation>keine Ladung</translation>
    </message>
    <message>
        <source>no sustained output run</source>
        <translation>kein Lauf auf Dauerleistung</translation>
    </message>
    <message>
        <source>no peak output run</source>
        <translation>kein Lauf auf Spitzenleistung</translation>
    </message>
    <message>
        <source>no standby run</source>
        <translation>kein Standby-Lauf</translation>
    </message>
    <message>
        <source>did not hold: %1</source>
        <translation>nicht erfüllt: %1</translation>
    </message>
    <message>
        <source>the price is not stated</source>
        <translation>der Preis ist nicht angegeben</translation>
    </message>
    <message>
        <source>the price paid is not stated</source>
        <translation>der gezahlte Preis ist nicht angegeben</translation>
    </message>
    <message>
        <source>the mass is not stated</source>
        <translation>die Masse ist nicht angegeben</translation>
    </message>
    <message>
        <source>%1: no drain in the logbook</source>
        <translation>%1: keine Entladung im Logbuch</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>mindestens %1 %</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 bis %2 %</translation>
    </message>
    <message>
        <source>its gauge: %1</source>
        <translation>seine Ladeanzeige: %1</translation>
    </message>
    <message numerus="yes">
        <source>its gauge stays within %n points</source>
        <comment>its gauge stays within %n point</comment>
        <translation>
            <numerusform>seine Ladeanzeige bleibt innerhalb von %n Prozentpunkt</numerusform>
            <numerusform>seine Ladeanzeige bleibt innerhalb von %n Prozentpunkten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>its gauge is up to %n points off</source>
        <comment>its gauge is up to %n point off</comment>
        <translation>
            <numerusform>seine Ladeanzeige liegt bis zu %n Prozentpunkt daneben</numerusform>
            <numerusform>seine Ladeanzeige liegt bis zu %n Prozentpunkte daneben</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at %3, projected from part of a drain, the only load that it can be judged at; %4.</source>
        <translation>%1 gäbe %2 seiner Nennenergie ab, bei %3, hochgerechnet aus einem Teil einer Entladung; nur bei dieser Last lässt er sich beurteilen; %4.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at %3, projected from part of a drain; %4.</source>
        <translation>%1 gäbe %2 seiner Nennenergie ab, bei %3, hochgerechnet aus einem Teil einer Entladung; %4.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at %3, the only load that it can be judged at; %4.</source>
        <translation>%1 gibt %2 seiner Nennenergie ab, bei %3; nur bei dieser Last lässt er sich beurteilen; %4.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at %3; %4.</source>
        <translation>%1 gibt %2 seiner Nennenergie ab, bei %3; %4.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at a load that is not known, projected from part of a drain, the only load that it can be judged at; %3.</source>
        <translation>%1 gäbe %2 seiner Nennenergie ab, bei unbekannter Last, hochgerechnet aus einem Teil einer Entladung; nur bei dieser Last lässt er sich beurteilen; %3.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at a load that is not known, projected from part of a drain; %3.</source>
        <translation>%1 gäbe %2 seiner Nennenergie ab, bei unbekannter Last, hochgerechnet aus einem Teil einer Entladung; %3.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at a load that is not known, the only load that it can be judged at; %3.</source>
        <translation>%1 gibt %2 seiner Nennenergie ab, bei unbekannter Last; nur bei dieser Last lässt er sich beurteilen; %3.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at a load that is not known; %3.</source>
        <translation>%1 gibt %2 seiner Nennenergie ab, bei unbekannter Last; %3.</translation>
    </message>
    <message>
        <source>How much of its label %1 gives is not known: %2; %3.</source>
        <translation>Wie viel seiner Nennenergie %1 abgibt, ist unbekannt: %2; %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>%1 and %n more</comment>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>At %1 %2 give the largest share of the label</source>
        <comment>At %1 %2 gives the largest share of the label</comment>
        <translation>
            <numerusform>Bei %1 gibt %2 den größten Anteil der Nennenergie ab</numerusform>
            <numerusform>Bei %1 geben %2 den größten Anteil der Nennenergie ab</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>As tested, at like loads, %1 give the largest share of the label</source>
        <comment>As tested, at like loads, %1 gives the largest share of the label</comment>
        <translation>
            <numerusform>Wie getestet, bei ähnlichen Lasten, gibt %1 den größten Anteil der Nennenergie ab</numerusform>
            <numerusform>Wie getestet, bei ähnlichen Lasten, geben %1 den größten Anteil der Nennenergie ab</numerusform>
        </translation>
    </message>
    <message>
        <source>At %1 these meters do not tell %2 apart: none of them may be called better.</source>
        <translation>Bei %1 unterscheiden diese Zähler %2 nicht: keiner davon darf besser genannt werden.</translation>
    </message>
    <message>
        <source>As tested, at like loads, these meters do not tell %1 apart: none of them may be called better.</source>
        <translation>Wie getestet, bei ähnlichen Lasten, unterscheiden diese Zähler %1 nicht: keiner davon darf besser genannt werden.</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, dann %2</translation>
    </message>
    <message>
        <source>%1, and so on down the table.</source>
        <translation>%1 und so weiter die Tabelle hinab.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>These meters tell one from the next.</source>
        <translation>Diese Zähler unterscheiden jeden vom nächsten.</translation>
    </message>
    <message>
        <source>These meters do not tell %1 apart.</source>
        <translation>Diese Zähler unterscheiden %1 nicht.</translation>
    </message>
    <message>
        <source>They do not tell %1 apart.</source>
        <translation>Sie unterscheiden %1 nicht.</translation>
    </message>
    <message>
        <source>At %1 no unit can be placed.</source>
        <translation>Bei %1 lässt sich kein Speicher einordnen.</translation>
    </message>
    <message>
        <source>As tested, at like loads, no unit can be placed.</source>
        <translation>Wie getestet, bei ähnlichen Lasten, lässt sich kein Speicher einordnen.</translation>
    </message>
    <message>
        <source>At %1 only %2 can be placed.</source>
        <translation>Bei %1 lässt sich nur %2 einordnen.</translation>
    </message>
    <message>
        <source>As tested, at like loads, only %1 can be placed.</source>
        <translation>Wie getestet, bei ähnlichen Lasten, lässt sich nur %1 einordnen.</translation>
    </message>
    <message numerus="yes">
        <source>%n drains together</source>
        <comment>%n drain</comment>
        <translation>
            <numerusform>%n Entladung</numerusform>
            <numerusform>%n Entladungen zusammen</numerusform>
        </translation>
    </message>
    <message>
        <source>mean of %1 drains</source>
        <translation>Mittel aus %1 Entladungen</translation>
    </message>
    <message>
        <source>Each drain stands for itself.</source>
        <translation>Jede Entladung steht für sich.</translation>
    </message>
    <message>
        <source>They were made at loads from %1 W to %2 W, and a slow drain delivers less.</source>
        <translation>Sie liefen bei Lasten von %1 W bis %2 W, und eine langsame Entladung gibt weniger ab.</translation>
    </message>
    <message>
        <source>As tested there is no order: the units were drained at loads from %1 W to %2 W, and a slow drain delivers less.</source>
        <translation>Wie getestet gibt es keine Reihenfolge: die Speicher wurden bei Lasten von %1 W bis %2 W entladen, und eine langsame Entladung gibt weniger ab.</translation>
    </message>
    <message>
        <source>Compare them at one load, such as %1.</source>
        <translation>Vergleichen Sie sie bei einer Last, etwa %1.</translation>
    </message>
    <message>
        <source>Compare them at one load.</source>
        <translation>Vergleichen Sie sie bei einer Last.</translation>
    </message>
    <message numerus="yes">
        <source>%n units have no place in this order.</source>
        <comment>%n unit has no place in this order.</comment>
        <translation>
            <numerusform>%n Speicher hat keinen Platz in dieser Reihenfolge.</numerusform>
            <numerusform>%n Speicher haben keinen Platz in dieser Reihenfolge.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 had this load</source>
        <translation>%1 hatte diese Last</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>wie getestet</translation>
    </message>
    <message>
        <source>The longer a drain takes, the more of the content feeds the unit itself.</source>
        <translation>Je länger eine Entladung dauert, desto mehr vom Inhalt verbraucht der Speicher selbst.</translation>
    </message>
    <message>
        <source>As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round.</source>
        <translation>Wie getestet gab %1 den größeren Anteil seiner Nennenergie ab, vor %2; bei %3 ist es umgekehrt.</translation>
    </message>
    <message>
        <source>As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round: %1 was drained at %4 W, %2 at %5 W.</source>
        <translation>Wie getestet gab %1 den größeren Anteil seiner Nennenergie ab, vor %2; bei %3 ist es umgekehrt: %1 wurde bei %4 W entladen, %2 bei %5 W.</translation>
    </message>
    <message>
        <source>%1 is shown as tested, at a load that is not known: %2.</source>
        <translation>%1 ist wie getestet gezeigt, bei unbekannter Last: %2.</translation>
    </message>
    <message>
        <source>%1 is shown as tested, at %2 W: %3.</source>
        <translation>%1 ist wie getestet gezeigt, bei %2 W: %3.</translation>
    </message>
    <message>
        <source>calculated for this load</source>
        <translation>auf diese Last umgerechnet</translation>
    </message>
    <message>
        <source>tested at this load</source>
        <translation>bei dieser Last getestet</translation>
    </message>
    <message>
        <source>the rated energy of %1 is not stated</source>
        <translation>die Nennenergie von %1 ist nicht angegeben</translation>
    </message>
    <message>
        <source>the mass of %1 is not stated</source>
        <translation>die Masse von %1 ist nicht angegeben</translation>
    </message>
    <message>
        <source>the price of %1 is not stated</source>
        <translation>der Preis von %1 ist nicht angegeben</translation>
    </message>
    <message>
        <source>not comparable: %1</source>
        <translation>nicht vergleichbar: %1</translation>
    </message>
    <message>
        <source>clearly different: %1 − %2 = %3, the error of the shared meter&apos;s gain cancels as far as both are alike</source>
        <translation>klar verschieden: %1 − %2 = %3, der Steigungsfehler des gemeinsamen Zählers hebt sich auf, soweit sich beide gleichen</translation>
    </message>
    <message>
        <source>clearly different: %1 − %2 = %3</source>
        <translation>klar verschieden: %1 − %2 = %3</translation>
    </message>
    <message>
        <source>too close to call with these meters: %1 − %2 = %3, the error of the shared meter&apos;s gain cancels as far as both are alike</source>
        <translation>mit diesen Zählern nicht zu unterscheiden: %1 − %2 = %3, der Steigungsfehler des gemeinsamen Zählers hebt sich auf, soweit sich beide gleichen</translation>
    </message>
    <message>
        <source>too close to call with these meters: %1 − %2 = %3</source>
        <translation>mit diesen Zählern nicht zu unterscheiden: %1 − %2 = %3</translation>
    </message>
    <message>
        <source>both rows are of one unit</source>
        <translation>beide Zeilen sind von einem Speicher</translation>
    </message>
    <message>
        <source>the prices are in different currencies</source>
        <translation>die Preise haben verschiedene Währungen</translation>
    </message>
    <message>
        <source>%1 was tested at another load and cannot be converted</source>
        <translation>%1 wurde bei anderer Last getestet und lässt sich nicht umrechnen</translation>
    </message>
    <message>
        <source>%1 was drained at loads too far from this one</source>
        <translation>%1 wurde bei Lasten entladen, die zu weit von dieser entfernt sind</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>clearly different</source>
        <translation>klar verschieden</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>it was tested at another load and cannot be converted</source>
        <translation>er wurde bei anderer Last getestet und lässt sich nicht umrechnen</translation>
    </message>
    <message>
        <source>its drains were at loads too far from this one</source>
        <translation>seine Entladungen liefen bei Lasten, die zu weit von dieser entfernt sind</translation>
    </message>
    <message>
        <source>its usable fraction has no interval to rank it by</source>
        <translation>sein nutzbarer Anteil hat kein Intervall für einen Rang</translation>
    </message>
    <message>
        <source>ranks are those of units, not of single drains</source>
        <translation>Ränge haben Speicher, nicht einzelne Entladungen</translation>
    </message>
    <message>
        <source>the units were drained at unlike loads: compare them at one load</source>
        <translation>die Speicher wurden bei ungleichen Lasten entladen: vergleichen Sie sie bei einer Last</translation>
    </message>
    <message>
        <source>shared by %1 units that these meters do not tell apart</source>
        <translation>geteilt von %1 Speichern, die diese Zähler nicht unterscheiden</translation>
    </message>
    <message>
        <source>told apart from every other unit that has a rank</source>
        <translation>von jedem anderen Speicher mit Rang unterschieden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: its energy is only &quot;%2&quot;</source>
        <translation>%1: seine Energie ist nur „%2“</translation>
    </message>
    <message>
        <source>%1: its energy has no interval</source>
        <translation>%1: seine Energie hat kein Intervall</translation>
    </message>
    <message>
        <source>it is not known of every drain of the mean</source>
        <translation>es ist nicht von jeder Entladung des Mittels bekannt</translation>
    </message>
    <message>
        <source>one drain stands alone</source>
        <translation>eine Entladung steht allein</translation>
    </message>
    <message numerus="yes">
        <source>experimental standard deviation of one drain, %n degrees of freedom</source>
        <comment>experimental standard deviation of one drain, %n degree of freedom</comment>
        <translation>
            <numerusform>experimentelle Standardabweichung einer Entladung, %n Freiheitsgrad</numerusform>
            <numerusform>experimentelle Standardabweichung einer Entladung, %n Freiheitsgrade</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are both in %1 and in %2; counted once</source>
        <comment>%n run is both in %1 and in %2; counted once</comment>
        <translation>
            <numerusform>%n Lauf ist sowohl in %1 als auch in %2; einmal gezählt</numerusform>
            <numerusform>%n Läufe sind sowohl in %1 als auch in %2; einmal gezählt</numerusform>
        </translation>
    </message>
    <message>
        <source>the claims of %1 differ between the logbooks; those of the first one hold</source>
        <translation>die Angaben zu %1 unterscheiden sich zwischen den Logbüchern; es gelten die des ersten</translation>
    </message>
    <message>
        <source>what is stated of the meter %1 differs between the logbooks; the first one holds</source>
        <translation>die Daten des Zählers %1 unterscheiden sich zwischen den Logbüchern; es gelten die des ersten</translation>
    </message>
    <message>
        <source>mean of %1 specimens</source>
        <translation>Mittel aus %1 Exemplaren</translation>
    </message>
    <message>
        <source>between %1 specimens</source>
        <translation>zwischen %1 Exemplaren</translation>
    </message>
    <message>
        <source>if it is made as these %1 specimens were</source>
        <translation>wenn es gefertigt ist wie diese %1 Exemplare</translation>
    </message>
    <message>
        <source>%1: %2 specimens give %3 of their label, spread %4 %; the next one is expected within %5 to %6 %.</source>
        <translation>%1: %2 Exemplare geben %3 ihrer Nennenergie ab, Streuung %4 %; das nächste wird bei %5 bis %6 % erwartet.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>one specimen, which says nothing of others</source>
        <translation>ein Exemplar, das über andere nichts sagt</translation>
    </message>
    <message>
        <source>fewer than two of its specimens can be compared here</source>
        <translation>weniger als zwei seiner Exemplare lassen sich hier vergleichen</translation>
    </message>
    <message>
        <source>its specimens were drained at unlike loads: compare them at one load</source>
        <translation>seine Exemplare wurden bei ungleichen Lasten entladen: vergleichen Sie sie bei einer Last</translation>
    </message>
</context>
<context>
    <name>copies</name>
    <message numerus="yes">
        <source>%n units</source>
        <comment>%n unit</comment>
        <translation>
            <numerusform>%n Speicher</numerusform>
            <numerusform>%n Speicher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>date</name>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>%1 January</source>
        <translation>%1. Januar</translation>
    </message>
    <message>
        <source>%1 February</source>
        <translation>%1. Februar</translation>
    </message>
    <message>
        <source>%1 March</source>
        <translation>%1. März</translation>
    </message>
    <message>
        <source>%1 April</source>
        <translation>%1. April</translation>
    </message>
    <message>
        <source>%1 May</source>
        <translation>%1. Mai</translation>
    </message>
    <message>
        <source>%1 June</source>
        <translation>%1. Juni</translation>
    </message>
    <message>
        <source>%1 July</source>
        <translation>%1. Juli</translation>
    </message>
    <message>
        <source>%1 August</source>
        <translation>%1. August</translation>
    </message>
    <message>
        <source>%1 September</source>
        <translation>%1. September</translation>
    </message>
    <message>
        <source>%1 October</source>
        <translation>%1. Oktober</translation>
    </message>
    <message>
        <source>%1 November</source>
        <translation>%1. November</translation>
    </message>
    <message>
        <source>%1 December</source>
        <translation>%1. Dezember</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>dialogs</name>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation>die Anzahl</translation>
    </message>
    <message>
        <source>the power</source>
        <translation>die Leistung</translation>
    </message>
    <message>
        <source>the duty</source>
        <translation>die Einschaltdauer</translation>
    </message>
    <message>
        <source>the measured energy</source>
        <translation>die gemessene Energie</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>the time over which it was measured</source>
        <translation>die Dauer der Messung</translation>
    </message>
    <message>
        <source>the power of its start</source>
        <translation>die Leistung beim Anlauf</translation>
    </message>
    <message>
        <source>enter a number, such as 1.5</source>
        <translation>tragen Sie eine Zahl ein, etwa 1,5</translation>
    </message>
    <message>
        <source>enter a number, such as 1.5 %1</source>
        <translation>tragen Sie eine Zahl ein, etwa 1,5 %1</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>`%1` wird nicht verstanden</translation>
    </message>
    <message>
        <source>%1 must be more than 0</source>
        <translation>%1 muss größer als 0 sein</translation>
    </message>
    <message>
        <source>leave the field empty where nothing is stated</source>
        <translation>lassen Sie das Feld leer, wo nichts angegeben ist</translation>
    </message>
    <message>
        <source>start of the log</source>
        <translation>Beginn des Logs</translation>
    </message>
    <message>
        <source>this is no time</source>
        <translation>das ist keine Zeit</translation>
    </message>
    <message>
        <source>clock is behind by</source>
        <translation>Uhr geht nach um</translation>
    </message>
    <message>
        <source>write it like 0:00:12 or -0:01:30: hours, minutes, seconds</source>
        <translation>schreiben Sie es wie 0:00:12 oder -0:01:30: Stunden, Minuten, Sekunden</translation>
    </message>
    <message>
        <source>the register step</source>
        <translation>der Zählwerksschritt</translation>
    </message>
    <message>
        <source>the error limit</source>
        <translation>die Fehlergrenze</translation>
    </message>
    <message>
        <source>the part of each load</source>
        <translation>der je Last eigene Teil</translation>
    </message>
    <message>
        <source>the register span</source>
        <translation>der Zählwerksumfang</translation>
    </message>
    <message>
        <source>the correction</source>
        <translation>die Korrektion</translation>
    </message>
    <message>
        <source>the starting current</source>
        <translation>der Anlaufstrom</translation>
    </message>
    <message>
        <source>the side</source>
        <translation>die Seite</translation>
    </message>
    <message>
        <source>the width</source>
        <translation>die Breite</translation>
    </message>
    <message>
        <source>the height</source>
        <translation>die Höhe</translation>
    </message>
    <message>
        <source>`%1` is outside what a bench can be</source>
        <translation>`%1` liegt außerhalb dessen, was an einem Messplatz sein kann</translation>
    </message>
    <message>
        <source>enter degrees Celsius, such as 18</source>
        <translation>tragen Sie Grad Celsius ein, etwa 18</translation>
    </message>
    <message>
        <source>nobody notices an end before it happens</source>
        <translation>niemand bemerkt ein Ende, bevor es eintritt</translation>
    </message>
    <message>
        <source>type 0 where it was noted as it happened</source>
        <translation>tippen Sie 0, wo es beim Eintreten notiert wurde</translation>
    </message>
    <message>
        <source>copies are kept for whole days from 1 to 3650</source>
        <translation>Kopien werden für ganze Tage von 1 bis 3650 behalten</translation>
    </message>
    <message>
        <source>enter a number such as 30</source>
        <translation>tragen Sie eine Zahl ein, etwa 30</translation>
    </message>
    <message>
        <source>a station is a number from 0 to 255</source>
        <translation>eine Station ist eine Zahl von 0 bis 255</translation>
    </message>
    <message>
        <source>the interval</source>
        <translation>der Takt</translation>
    </message>
    <message>
        <source>the gauge step</source>
        <translation>der Anzeigeschritt</translation>
    </message>
    <message>
        <source>type a number, or `not known`</source>
        <translation>tippen Sie eine Zahl oder `unbekannt`</translation>
    </message>
    <message>
        <source>the rated energy</source>
        <translation>die Nennenergie</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>die Nennleistung</translation>
    </message>
    <message>
        <source>the peak output</source>
        <translation>die Spitzenleistung</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>die Masse</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>the warranty</source>
        <translation>die Garantie</translation>
    </message>
    <message>
        <source>the voltage limit</source>
        <translation>die Spannungsgrenze</translation>
    </message>
    <message>
        <source>the current limit</source>
        <translation>die Stromgrenze</translation>
    </message>
    <message>
        <source>the power limit</source>
        <translation>die Leistungsgrenze</translation>
    </message>
    <message>
        <source>the start voltage</source>
        <translation>die Anlaufspannung</translation>
    </message>
    <message>
        <source>the short-circuit current</source>
        <translation>der Kurzschlussstrom</translation>
    </message>
    <message>
        <source>the charge time</source>
        <translation>die Ladezeit</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>der Preis</translation>
    </message>
    <message>
        <source>the price paid</source>
        <translation>der gezahlte Preis</translation>
    </message>
</context>
<context>
    <name>document</name>
    <message>
        <source>this run is no longer in the logbook</source>
        <translation>dieser Lauf ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>this load list is no longer in the logbook</source>
        <translation>diese Lastliste ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>this PV sheet is no longer in the logbook</source>
        <translation>dieses PV-Blatt ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>this reading is no longer in the logbook</source>
        <translation>diese Ablesung ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>this unit is no longer in the logbook</source>
        <translation>dieser Speicher ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>no logbook is open</source>
        <translation>es ist kein Logbuch offen</translation>
    </message>
    <message>
        <source>open or make one first</source>
        <translation>öffnen Sie zuerst eines oder legen Sie eines an</translation>
    </message>
    <message>
        <source>this meter is no longer in the logbook</source>
        <translation>dieser Zähler ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>the logbook is busy</source>
        <translation>das Logbuch ist beschäftigt</translation>
    </message>
    <message>
        <source>what has come waits and is recorded then</source>
        <translation>was gekommen ist, wartet und wird dann aufgezeichnet</translation>
    </message>
    <message>
        <source>the sample sheet cannot be read</source>
        <translation>das Beispielblatt lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the sample load list cannot be read</source>
        <translation>die Beispiel-Lastliste lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the sample log cannot be copied</source>
        <translation>das Beispiel-Log lässt sich nicht kopieren</translation>
    </message>
    <message>
        <source>make room in the folder for temporary files</source>
        <translation>schaffen Sie Platz im Ordner für temporäre Dateien</translation>
    </message>
    <message>
        <source>this build holds no sample run sheets</source>
        <translation>diese Programmfassung enthält keine Beispiel-Laufblätter</translation>
    </message>
    <message>
        <source>make a new logbook instead</source>
        <translation>legen Sie stattdessen ein neues Logbuch an</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>choose a PV sheet</source>
        <translation>wählen Sie ein PV-Blatt</translation>
    </message>
    <message>
        <source>the logbook has no unit named `%1`; choose one in the sheet</source>
        <translation>das Logbuch hat keinen Speicher namens `%1`; wählen Sie einen im Blatt</translation>
    </message>
    <message>
        <source>limits of the PV input belong to the unit; state those of the file in the unit&apos;s claims</source>
        <translation>Grenzen des PV-Eingangs gehören zum Speicher; geben Sie die der Datei bei den Angaben des Speichers an</translation>
    </message>
    <message>
        <source>choose a load list</source>
        <translation>wählen Sie eine Lastliste</translation>
    </message>
    <message>
        <source>choose a run sheet</source>
        <translation>wählen Sie ein Laufblatt</translation>
    </message>
    <message>
        <source>reading this logbook was cancelled; its units are not compared</source>
        <translation>das Lesen dieses Logbuchs wurde abgebrochen; seine Speicher werden nicht verglichen</translation>
    </message>
    <message>
        <source>this logbook is the one that is open; its units are compared already</source>
        <translation>dieses Logbuch ist das geöffnete; seine Speicher werden schon verglichen</translation>
    </message>
    <message>
        <source>the units of this logbook are compared already</source>
        <translation>die Speicher dieses Logbuchs werden schon verglichen</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>`%1` is no moment</source>
        <translation>`%1` ist kein Zeitpunkt</translation>
    </message>
    <message>
        <source>type a time such as 02:40, -10m, yesterday 23:50, 14 May 23:50 or 2027-05-14T18:00, or nothing for now</source>
        <translation>tippen Sie eine Zeit wie 02:40, -10m, yesterday 23:50, 14 May 23:50 oder 2027-05-14T18:00 oder nichts für jetzt</translation>
    </message>
    <message>
        <source>`%1` is more than a year ago</source>
        <translation>`%1` ist mehr als ein Jahr her</translation>
    </message>
    <message>
        <source>type date and time</source>
        <translation>tippen Sie Datum und Zeit</translation>
    </message>
    <message>
        <source>nothing was typed</source>
        <translation>nichts wurde eingetippt</translation>
    </message>
    <message>
        <source>`%1` is no number</source>
        <translation>`%1` ist keine Zahl</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>`%1` is not understood after the number</source>
        <translation>`%1` wird nach der Zahl nicht verstanden</translation>
    </message>
    <message>
        <source>type an energy of 0 or more, such as 431, 431 Wh or 0.431 kWh</source>
        <translation>tippen Sie eine Energie ab 0, etwa 431, 431 Wh oder 0,431 kWh</translation>
    </message>
    <message>
        <source>type a percentage from 0 to 100, such as 69</source>
        <translation>tippen Sie einen Prozentwert von 0 bis 100, etwa 69</translation>
    </message>
    <message>
        <source>type a power of 0 or more, such as 64, 64 W or 0.064 kW</source>
        <translation>tippen Sie eine Leistung ab 0, etwa 64, 64 W oder 0,064 kW</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>vor %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>choose another file name</source>
        <translation>wählen Sie einen anderen Dateinamen</translation>
    </message>
    <message>
        <source>this is the logbook that is open, which nothing replaces</source>
        <translation>das ist das offene Logbuch, das nichts ersetzt</translation>
    </message>
    <message>
        <source>the file is write-protected</source>
        <translation>die Datei ist schreibgeschützt</translation>
    </message>
    <message>
        <source>make it writable, or choose another file name</source>
        <translation>machen Sie sie beschreibbar oder wählen Sie einen anderen Dateinamen</translation>
    </message>
    <message>
        <source>choose another file name, or add --force</source>
        <translation>wählen Sie einen anderen Dateinamen oder setzen Sie --force dazu</translation>
    </message>
    <message>
        <source>this file is read by the same call</source>
        <translation>derselbe Aufruf liest diese Datei</translation>
    </message>
    <message>
        <source>this is a logbook, with all its readings</source>
        <translation>das ist ein Logbuch mit all seinen Ablesungen</translation>
    </message>
    <message>
        <source>this logbook is in use</source>
        <translation>dieses Logbuch ist in Gebrauch</translation>
    </message>
    <message>
        <source>close it first, or choose another file name</source>
        <translation>schließen Sie es zuerst oder wählen Sie einen anderen Dateinamen</translation>
    </message>
    <message>
        <source>a file of this name exists, and this program did not write it as it is now</source>
        <translation>es gibt schon eine Datei dieses Namens, und dieses Programm hat sie so, wie sie jetzt ist, nicht geschrieben</translation>
    </message>
    <message>
        <source>no file name is given</source>
        <translation>kein Dateiname ist angegeben</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>nennen Sie eine Datei</translation>
    </message>
    <message>
        <source>this link leads to no file</source>
        <translation>dieser Link führt zu keiner Datei</translation>
    </message>
    <message>
        <source>remove the link, or choose another file name</source>
        <translation>entfernen Sie den Link oder wählen Sie einen anderen Dateinamen</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>the file cannot be reached: %1</source>
        <translation>die Datei ist nicht erreichbar: %1</translation>
    </message>
    <message>
        <source>the name is kept for what a logbook has beside it</source>
        <translation>der Name ist für das reserviert, was ein Logbuch neben sich hat</translation>
    </message>
    <message>
        <source>the ending .ullage is that of logbooks</source>
        <translation>die Endung .ullage ist die von Logbüchern</translation>
    </message>
    <message>
        <source>choose another ending</source>
        <translation>wählen Sie eine andere Endung</translation>
    </message>
    <message>
        <source>the file has gone</source>
        <translation>die Datei ist weg</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>versuchen Sie es noch einmal</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>auf dem Datenträger ist kein Platz mehr</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>schaffen Sie Platz oder wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>der Ordner existiert nicht</translation>
    </message>
    <message>
        <source>make the folder or choose another place</source>
        <translation>legen Sie den Ordner an oder wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>writing is not permitted here</source>
        <translation>hier darf nicht geschrieben werden</translation>
    </message>
    <message>
        <source>choose a place that you may write to</source>
        <translation>wählen Sie einen Ort, an den Sie schreiben dürfen</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>a file of this name has just come into being</source>
        <translation>eine Datei dieses Namens ist soeben entstanden</translation>
    </message>
    <message>
        <source>look at it, then try again</source>
        <translation>sehen Sie sie an und versuchen Sie es dann noch einmal</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>prüfen Sie den Namen</translation>
    </message>
    <message>
        <source>the file is larger than 64 MiB, which no run sheet is</source>
        <translation>die Datei ist größer als 64 MiB, das ist kein Laufblatt</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>prüfen Sie ihre Zugriffsrechte</translation>
    </message>
    <message>
        <source>reading the file failed</source>
        <translation>die Datei zu lesen ist misslungen</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>prüfen Sie den Datenträger</translation>
    </message>
</context>
<context>
    <name>folder</name>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>a setting needs `name` and `value`</source>
        <translation>eine Einstellung braucht `name` und `value`</translation>
    </message>
    <message>
        <source>complete the row, or delete it</source>
        <translation>vervollständigen Sie die Zeile oder löschen Sie sie</translation>
    </message>
    <message>
        <source>the row names no file</source>
        <translation>die Zeile nennt keine Datei</translation>
    </message>
    <message>
        <source>the row does not say which run it belongs to</source>
        <translation>die Zeile sagt nicht, zu welchem Lauf sie gehört</translation>
    </message>
    <message>
        <source>fill in `run_sheet`</source>
        <translation>füllen Sie `run_sheet` aus</translation>
    </message>
    <message>
        <source>this is no list of a logbook&apos;s folder</source>
        <translation>das ist keine Liste eines Logbuch-Ordners</translation>
    </message>
    <message>
        <source>choose a folder that this program wrote</source>
        <translation>wählen Sie einen Ordner, den dieses Programm geschrieben hat</translation>
    </message>
    <message>
        <source>the folder is of a newer sort</source>
        <translation>der Ordner ist von neuerer Art</translation>
    </message>
    <message>
        <source>bring it in with a newer version of this program</source>
        <translation>übernehmen Sie ihn mit einer neueren Version dieses Programms</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>es gibt keine Spalte `%1`</translation>
    </message>
    <message>
        <source>delete it, or name it as in the help</source>
        <translation>löschen Sie sie oder benennen Sie sie wie in der Hilfe</translation>
    </message>
    <message>
        <source>the column `%1` is missing</source>
        <translation>die Spalte `%1` fehlt</translation>
    </message>
    <message>
        <source>restore it</source>
        <translation>stellen Sie sie wieder her</translation>
    </message>
    <message numerus="yes">
        <source>the row has %n cells, the header %1</source>
        <comment>the row has %n cell, the header %1</comment>
        <translation>
            <numerusform>die Zeile hat %n Zelle, die Kopfzeile %1</numerusform>
            <numerusform>die Zeile hat %n Zellen, die Kopfzeile %1</numerusform>
        </translation>
    </message>
    <message>
        <source>give it as many</source>
        <translation>geben Sie ihr ebenso viele</translation>
    </message>
    <message>
        <source>the row does not say what it is</source>
        <translation>die Zeile sagt nicht, was sie ist</translation>
    </message>
    <message>
        <source>fill in `what`</source>
        <translation>füllen Sie `what` aus</translation>
    </message>
    <message>
        <source>`%1` is no %2</source>
        <translation>`%1` ist als %2 nicht zu lesen</translation>
    </message>
    <message>
        <source>correct the cell; the help says what it holds</source>
        <translation>korrigieren Sie die Zelle; die Hilfe sagt, was sie enthält</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>nothing was imported</source>
        <translation>nichts wurde importiert</translation>
    </message>
    <message>
        <source>`%1` is named twice</source>
        <translation>`%1` ist zweimal genannt</translation>
    </message>
    <message>
        <source>delete one of the rows</source>
        <translation>löschen Sie eine der Zeilen</translation>
    </message>
    <message>
        <source>`%1` is a link out of the folder</source>
        <translation>`%1` ist ein Link aus dem Ordner hinaus</translation>
    </message>
    <message>
        <source>put the file itself there</source>
        <translation>legen Sie die Datei selbst dorthin</translation>
    </message>
    <message>
        <source>`%1` is no run sheet of this folder</source>
        <translation>`%1` ist kein Laufblatt dieses Ordners</translation>
    </message>
    <message>
        <source>correct `run_sheet`</source>
        <translation>korrigieren Sie `run_sheet`</translation>
    </message>
    <message>
        <source>`%1` states no meter</source>
        <translation>`%1` nennt keinen Zähler</translation>
    </message>
    <message>
        <source>name a sheet that does</source>
        <translation>nennen Sie ein Blatt, das einen nennt</translation>
    </message>
    <message>
        <source>%1: already in the logbook as run %2 of %3, left out</source>
        <translation>%1: schon im Logbuch als Lauf %2 von %3, ausgelassen</translation>
    </message>
    <message>
        <source>`%1` has no reading %2</source>
        <translation>`%1` hat keine Ablesung %2</translation>
    </message>
    <message>
        <source>correct `reading`</source>
        <translation>korrigieren Sie `reading`</translation>
    </message>
    <message>
        <source>reading %1 of `%2` is of %3, not of %4</source>
        <translation>Ablesung %1 von `%2` ist von %3, nicht von %4</translation>
    </message>
    <message>
        <source>give the row of the reading that the photo shows</source>
        <translation>nennen Sie die Zeile der Ablesung, die das Foto zeigt</translation>
    </message>
    <message>
        <source>there is no meter `%1`</source>
        <translation>es gibt keinen Zähler `%1`</translation>
    </message>
    <message>
        <source>correct `meter`, or add a row of the sort `meter`</source>
        <translation>korrigieren Sie `meter` oder legen Sie eine Zeile der Art `meter` an</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n rows left out</source>
        <comment>%1: %n row left out</comment>
        <translation>
            <numerusform>%1: %n Zeile ausgelassen</numerusform>
            <numerusform>%1: %n Zeilen ausgelassen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the logbook has another load list of this name; left out</source>
        <translation>%1: das Logbuch hat eine andere Lastliste dieses Namens; ausgelassen</translation>
    </message>
    <message>
        <source>%1: the logbook has another PV sheet of this name; left out</source>
        <translation>%1: das Logbuch hat ein anderes PV-Blatt dieses Namens; ausgelassen</translation>
    </message>
    <message>
        <source>setting `%1`: the logbook states %2, the folder %3; that of the logbook stays</source>
        <translation>Einstellung `%1`: das Logbuch sagt %2, der Ordner %3; die des Logbuchs bleibt</translation>
    </message>
    <message>
        <source>the folder cannot be named so: %1</source>
        <translation>der Ordner kann nicht so heißen: %1</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>there is something of this name already</source>
        <translation>es gibt schon etwas dieses Namens</translation>
    </message>
    <message>
        <source>name a new folder</source>
        <translation>benennen Sie einen neuen Ordner</translation>
    </message>
    <message>
        <source>the folder cannot be made: %1</source>
        <translation>der Ordner lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>nothing was written</source>
        <translation>nichts wurde geschrieben</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n logs</source>
        <comment>%n log</comment>
        <translation>
            <numerusform>%n Log</numerusform>
            <numerusform>%n Logs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n Lastliste</numerusform>
            <numerusform>%n Lastlisten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n PV sheets</source>
        <comment>%n PV sheet</comment>
        <translation>
            <numerusform>%n PV-Blatt</numerusform>
            <numerusform>%n PV-Blätter</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
</context>
<context>
    <name>forecast</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>gauge shows</source>
        <translation>Anzeige zeigt</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>zu wenig</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>%1 to +%2 pt</source>
        <translation>%1 bis +%2 pt</translation>
    </message>
    <message>
        <source>too little or too much</source>
        <translation>zu wenig oder zu viel</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>after %1 h more</source>
        <translation>nach weiteren %1 h</translation>
    </message>
    <message>
        <source>at this load</source>
        <translation>bei dieser Last</translation>
    </message>
    <message>
        <source>If the gauge is right: ruled out by the readings. %1</source>
        <translation>Wenn die Ladeanzeige stimmt: durch die Ablesungen ausgeschlossen. %1</translation>
    </message>
    <message>
        <source>If the gauge is right: %1. %2</source>
        <translation>Wenn die Ladeanzeige stimmt: %1. %2</translation>
    </message>
    <message>
        <source>If the gauge is wrong: ruled out by the readings. %1</source>
        <translation>Wenn die Ladeanzeige falsch ist: durch die Ablesungen ausgeschlossen. %1</translation>
    </message>
    <message>
        <source>If the gauge is wrong: %1. %2</source>
        <translation>Wenn die Ladeanzeige falsch ist: %1. %2</translation>
    </message>
    <message>
        <source>usable of the label</source>
        <translation>nutzbar von der Nennenergie</translation>
    </message>
    <message>
        <source>the unit itself takes</source>
        <translation>der Speicher selbst verbraucht</translation>
    </message>
    <message>
        <source>What decides: %1</source>
        <translation>Was entscheidet: %1</translation>
    </message>
    <message>
        <source>What decides: %1 %2</source>
        <translation>Was entscheidet: %1 %2</translation>
    </message>
    <message>
        <source>middle 95 % of what remains possible</source>
        <translation>mittlere 95 % dessen, was möglich bleibt</translation>
    </message>
    <message>
        <source>%1 for %2 points would be a battery of over %3 % of its label</source>
        <translation>%1 für %2 Prozentpunkte wären eine Batterie mit über %3 % ihrer Nennenergie</translation>
    </message>
    <message>
        <source>Not possible: %1.</source>
        <translation>Nicht möglich: %1.</translation>
    </message>
    <message>
        <source>if the gauge is right, at this load</source>
        <translation>wenn die Ladeanzeige stimmt, bei dieser Last</translation>
    </message>
    <message>
        <source>%1 for %2 points is about what the label promises.</source>
        <translation>%1 für %2 Prozentpunkte sind etwa, was die Nennenergie verspricht.</translation>
    </message>
    <message>
        <source>Only %1 came out for the %2 points shown.</source>
        <translation>Nur %1 kamen für die angezeigten %2 Prozentpunkte heraus.</translation>
    </message>
    <message>
        <source>Nothing is left that the unit could take for itself.</source>
        <translation>Nichts bleibt übrig, was der Speicher selbst verbrauchen könnte.</translation>
    </message>
    <message>
        <source>The unit would take %1 W for itself while your load takes %2 W.</source>
        <translation>Der Speicher würde selbst %1 W verbrauchen, während Ihre Last %2 W aufnimmt.</translation>
    </message>
    <message>
        <source>a gauge that is wrong tells nothing of it</source>
        <translation>eine falsche Ladeanzeige sagt nichts darüber</translation>
    </message>
    <message>
        <source>label, energy and the readings so far leave less than 2 % for it</source>
        <translation>Nennenergie, Energie und die bisherigen Ablesungen lassen weniger als 2 % dafür übrig</translation>
    </message>
    <message>
        <source>Hardly possible: %1.</source>
        <translation>Kaum möglich: %1.</translation>
    </message>
    <message>
        <source>Most of it would still be inside: %1 Wh to come. The gauge would have run ahead by %2 points and must slow down.</source>
        <translation>Das meiste wäre noch darin: %1 Wh stünden aus. Die Ladeanzeige wäre um %2 Prozentpunkte vorausgeeilt und müsste langsamer werden.</translation>
    </message>
    <message>
        <source>Less would be inside than it shows: %1 Wh to come. The gauge would lag by %2 points and must hurry.</source>
        <translation>Es wäre weniger darin, als sie zeigt: %1 Wh stünden aus. Die Ladeanzeige hinge um %2 Prozentpunkte nach und müsste schneller werden.</translation>
    </message>
    <message>
        <source>%1 Wh would be to come. The gauge may show up to %2 points too much or %3 points too little.</source>
        <translation>%1 Wh stünden aus. Die Ladeanzeige kann bis zu %2 Prozentpunkte zu viel oder %3 Prozentpunkte zu wenig zeigen.</translation>
    </message>
    <message>
        <source>Look at %1. Gauge right: the output is off. Gauge wrong: it is still on.</source>
        <translation>Sehen Sie um %1 nach. Anzeige stimmt: der Ausgang ist aus. Anzeige falsch: er ist noch ein.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Gauge right: the output is off. Gauge wrong: it is still on.</source>
        <translation>Sehen Sie nach weiteren %1 h bei dieser Last nach. Anzeige stimmt: der Ausgang ist aus. Anzeige falsch: er ist noch ein.</translation>
    </message>
    <message>
        <source>Look at %1. Gauge right: the output is still on. Gauge wrong: it is off.</source>
        <translation>Sehen Sie um %1 nach. Anzeige stimmt: der Ausgang ist noch ein. Anzeige falsch: er ist aus.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Gauge right: the output is still on. Gauge wrong: it is off.</source>
        <translation>Sehen Sie nach weiteren %1 h bei dieser Last nach. Anzeige stimmt: der Ausgang ist noch ein. Anzeige falsch: er ist aus.</translation>
    </message>
    <message>
        <source>Off before %1: the gauge shows too much. Still on at %2: it shows too little.</source>
        <translation>Aus vor %1: die Ladeanzeige zeigt zu viel. Um %2 noch ein: sie zeigt zu wenig.</translation>
    </message>
    <message>
        <source>Off before %1 h further on at this load: the gauge shows too much. Still on at %2 h further on at this load: it shows too little.</source>
        <translation>Aus vor weiteren %1 h bei dieser Last: die Ladeanzeige zeigt zu viel. Nach weiteren %2 h bei dieser Last noch ein: sie zeigt zu wenig.</translation>
    </message>
    <message>
        <source>Look at %1. Still on then: the gauge shows too little.</source>
        <translation>Sehen Sie um %1 nach. Dann noch ein: die Ladeanzeige zeigt zu wenig.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Still on then: the gauge shows too little.</source>
        <translation>Sehen Sie nach weiteren %1 h bei dieser Last nach. Dann noch ein: die Ladeanzeige zeigt zu wenig.</translation>
    </message>
    <message>
        <source>Or take the load off for an hour and leave the output on. Gauge right: it falls by %1 points. Gauge wrong: it hardly moves.</source>
        <translation>Oder nehmen Sie die Last für eine Stunde ab und lassen Sie den Ausgang ein. Anzeige stimmt: sie fällt um %1 Prozentpunkte. Anzeige falsch: sie bewegt sich kaum.</translation>
    </message>
    <message>
        <source>a no-load drain run does not test the gauge against energy</source>
        <translation>eine Leerlaufentladung prüft die Ladeanzeige nicht gegen die Energie</translation>
    </message>
    <message>
        <source>a charge run does not test the gauge against energy</source>
        <translation>eine Ladung prüft die Ladeanzeige nicht gegen die Energie</translation>
    </message>
    <message>
        <source>a sustained output run does not test the gauge against energy</source>
        <translation>ein Lauf auf Dauerleistung prüft die Ladeanzeige nicht gegen die Energie</translation>
    </message>
    <message>
        <source>a peak output run does not test the gauge against energy</source>
        <translation>ein Lauf auf Spitzenleistung prüft die Ladeanzeige nicht gegen die Energie</translation>
    </message>
    <message>
        <source>a standby run does not test the gauge against energy</source>
        <translation>ein Standby-Lauf prüft die Ladeanzeige nicht gegen die Energie</translation>
    </message>
    <message>
        <source>the run ended by cut-off: its shares of energy and time tell more</source>
        <translation>der Lauf endete durch Abschaltung: seine Anteile von Energie und Zeit sagen mehr</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>weniger als zwei Ablesungen des Zählwerks</translation>
    </message>
    <message>
        <source>the gauge and the register have not been read together twice yet</source>
        <translation>Ladeanzeige und Zählwerk wurden noch nicht zweimal zusammen abgelesen</translation>
    </message>
    <message>
        <source>the gauge has not fallen by %1 points yet</source>
        <translation>die Ladeanzeige ist noch nicht um %1 Prozentpunkte gefallen</translation>
    </message>
    <message>
        <source>nothing has been delivered yet</source>
        <translation>noch wurde nichts abgegeben</translation>
    </message>
    <message>
        <source>%1 is %2 before the readings let the cut-off be expected (%3)</source>
        <translation>%1 liegt %2 vor der Zeit, zu der die Ablesungen die Abschaltung erwarten lassen (%3)</translation>
    </message>
    <message>
        <source>%1 is %2 after the readings let the cut-off be expected (%3)</source>
        <translation>%1 liegt %2 nach der Zeit, zu der die Ablesungen die Abschaltung erwarten lassen (%3)</translation>
    </message>
    <message>
        <source>%1 it went off about %2, not at %3</source>
        <translation>%1, ging er etwa um %2 aus, nicht um %3</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a charge run</source>
        <translation>nur eine Entladung oder Leerlaufentladung hat eine Abschaltung, die sich vorhersagen lässt; das ist eine Ladung</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a sustained output run</source>
        <translation>nur eine Entladung oder Leerlaufentladung hat eine Abschaltung, die sich vorhersagen lässt; das ist ein Lauf auf Dauerleistung</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a peak output run</source>
        <translation>nur eine Entladung oder Leerlaufentladung hat eine Abschaltung, die sich vorhersagen lässt; das ist ein Lauf auf Spitzenleistung</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a standby run</source>
        <translation>nur eine Entladung oder Leerlaufentladung hat eine Abschaltung, die sich vorhersagen lässt; das ist ein Standby-Lauf</translation>
    </message>
    <message>
        <source>the run has ended: cut-off seen</source>
        <translation>der Lauf ist beendet: Abschaltung gesehen</translation>
    </message>
    <message>
        <source>the run has ended: found off</source>
        <translation>der Lauf ist beendet: aus vorgefunden</translation>
    </message>
    <message>
        <source>the run has ended: stopped by tester</source>
        <translation>der Lauf ist beendet: vom Prüfer beendet</translation>
    </message>
    <message>
        <source>there are no readings yet</source>
        <translation>es gibt noch keine Ablesungen</translation>
    </message>
    <message>
        <source>the cut-off was seen; end the run</source>
        <translation>die Abschaltung wurde gesehen; beenden Sie den Lauf</translation>
    </message>
    <message>
        <source>the output tripped and has not been switched on again; mark when it is</source>
        <translation>der Ausgang hat ausgelöst und wurde nicht wieder eingeschaltet; setzen Sie eine Marke, wenn er es ist</translation>
    </message>
    <message>
        <source>the gauge has no lower value to show</source>
        <translation>die Ladeanzeige hat keinen niedrigeren Wert mehr zu zeigen</translation>
    </message>
    <message>
        <source>the gauge falls so slowly that its next step may be more than a year away</source>
        <translation>die Ladeanzeige fällt so langsam, dass ihr nächster Schritt mehr als ein Jahr entfernt sein kann</translation>
    </message>
    <message>
        <source>The reading at %1 threw the forecast over: before it the cut-off was expected %2.</source>
        <translation>Die Ablesung um %1 warf die Vorhersage um: davor wurde die Abschaltung %2 erwartet.</translation>
    </message>
    <message>
        <source>if the gauge is right</source>
        <translation>wenn die Ladeanzeige stimmt</translation>
    </message>
    <message>
        <source>if the gauge is wrong</source>
        <translation>wenn die Ladeanzeige falsch ist</translation>
    </message>
    <message>
        <source>whichever is right</source>
        <translation>in beiden Fällen</translation>
    </message>
    <message>
        <source>overdue by %1 min</source>
        <translation>überfällig um %1 min</translation>
    </message>
    <message>
        <source>overdue by %1 h</source>
        <translation>überfällig um %1 h</translation>
    </message>
    <message>
        <source>within %1 min</source>
        <translation>innerhalb von %1 min</translation>
    </message>
    <message>
        <source>within %1 h</source>
        <translation>innerhalb von %1 h</translation>
    </message>
    <message>
        <source>in %1 to %2 min</source>
        <translation>in %1 bis %2 min</translation>
    </message>
    <message>
        <source>in %1 to %2 h</source>
        <translation>in %1 bis %2 h</translation>
    </message>
    <message>
        <source>The register has not been read yet: read it together with the gauge.</source>
        <translation>Das Zählwerk wurde noch nicht abgelesen: lesen Sie es zusammen mit der Ladeanzeige ab.</translation>
    </message>
    <message>
        <source>The register has not been read since %1, the gauge has: read both together.</source>
        <translation>Das Zählwerk wurde seit %1 nicht abgelesen, die Ladeanzeige schon: lesen Sie beide zusammen ab.</translation>
    </message>
    <message>
        <source>The gauge has not been read yet: read it together with the register.</source>
        <translation>Die Ladeanzeige wurde noch nicht abgelesen: lesen Sie sie zusammen mit dem Zählwerk ab.</translation>
    </message>
    <message>
        <source>The gauge has not been read since %1, the register has: read both together.</source>
        <translation>Die Ladeanzeige wurde seit %1 nicht abgelesen, das Zählwerk schon: lesen Sie beide zusammen ab.</translation>
    </message>
    <message>
        <source>The cut-off was expected by %1: look whether the output is still on, and read gauge and register.</source>
        <translation>Die Abschaltung wurde bis %1 erwartet: sehen Sie nach, ob der Ausgang noch ein ist, und lesen Sie Ladeanzeige und Zählwerk ab.</translation>
    </message>
    <message>
        <source>Read often now, each %1 min: the cut-off is expected %2, and a cut-off that is seen gives the run time to the minute.</source>
        <translation>Lesen Sie jetzt oft ab, alle %1 min: die Abschaltung wird %2 erwartet, und eine gesehene Abschaltung gibt die Laufzeit auf die Minute.</translation>
    </message>
    <message>
        <source>Read often from %1, each %2 min: the cut-off is expected %3.</source>
        <translation>Lesen Sie ab %1 oft ab, alle %2 min: die Abschaltung wird %3 erwartet.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): it tells a bent gauge from a straight one.</source>
        <translation>Lesen Sie Zählwerk und Ladeanzeige nahe %1 % zusammen ab (erwartet %2): das unterscheidet eine gekrümmte Ladeanzeige von einer linearen.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: it tells a bent gauge from a straight one.</source>
        <translation>Lesen Sie Zählwerk und Ladeanzeige nahe %1 % zusammen ab: das unterscheidet eine gekrümmte Ladeanzeige von einer linearen.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): it shows how the gauge runs into its end, and narrows the cut-off most.</source>
        <translation>Lesen Sie Zählwerk und Ladeanzeige nahe %1 % zusammen ab (erwartet %2): das zeigt, wie die Ladeanzeige in ihr Ende läuft, und engt die Abschaltung am meisten ein.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: it shows how the gauge runs into its end, and narrows the cut-off most.</source>
        <translation>Lesen Sie Zählwerk und Ladeanzeige nahe %1 % zusammen ab: das zeigt, wie die Ladeanzeige in ihr Ende läuft, und engt die Abschaltung am meisten ein.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): what is delivered after that is the gauge&apos;s hidden reserve.</source>
        <translation>Lesen Sie Zählwerk und Ladeanzeige nahe %1 % zusammen ab (erwartet %2): was danach abgegeben wird, ist die verborgene Reserve der Ladeanzeige.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: what is delivered after that is the gauge&apos;s hidden reserve.</source>
        <translation>Lesen Sie Zählwerk und Ladeanzeige nahe %1 % zusammen ab: was danach abgegeben wird, ist die verborgene Reserve der Ladeanzeige.</translation>
    </message>
    <message>
        <source>The gauge has not fallen enough to tell anything yet: read gauge and register together once it has fallen by a few points.</source>
        <translation>Die Ladeanzeige ist noch nicht genug gefallen, um etwas zu sagen: lesen Sie Ladeanzeige und Zählwerk zusammen ab, sobald sie um einige Prozentpunkte gefallen ist.</translation>
    </message>
    <message>
        <source>The gauge has come to its lowest values: each reading of the register from now on measures what is left when it shows nothing.</source>
        <translation>Die Ladeanzeige ist bei ihren niedrigsten Werten: ab jetzt misst jede Ablesung des Zählwerks, was übrig ist, wenn sie nichts mehr zeigt.</translation>
    </message>
    <message>
        <source>assumes that the load stays near %1 W</source>
        <translation>setzt voraus, dass die Last nahe %1 W bleibt</translation>
    </message>
    <message>
        <source>assumes that the load goes on as it has, %1 W in the mean</source>
        <translation>setzt voraus, dass die Last weiterläuft wie bisher, im Mittel %1 W</translation>
    </message>
    <message>
        <source>allows for a load that stays near %1 W and for one that returns to %2 W in the mean; a step yet to come cannot be foreseen</source>
        <translation>lässt eine Last zu, die nahe %1 W bleibt, und eine, die im Mittel zu %2 W zurückkehrt; eine künftige Laststufe lässt sich nicht vorhersehen</translation>
    </message>
    <message>
        <source>holds if the gauge is right, as the earlier drains leave less than 2 % for a wrong one</source>
        <translation>gilt, wenn die Ladeanzeige stimmt, da die früheren Entladungen weniger als 2 % für eine falsche übrig lassen</translation>
    </message>
    <message>
        <source>holds if the gauge is right, as readings and label leave less than 2 % for a wrong one</source>
        <translation>gilt, wenn die Ladeanzeige stimmt, da Ablesungen und Nennenergie weniger als 2 % für eine falsche übrig lassen</translation>
    </message>
    <message>
        <source>holds if the gauge is wrong, as readings and label leave less than 2 % for a right one</source>
        <translation>gilt, wenn die Ladeanzeige falsch ist, da Ablesungen und Nennenergie weniger als 2 % für eine richtige übrig lassen</translation>
    </message>
    <message>
        <source>holds whether the gauge is right or wrong</source>
        <translation>gilt, ob die Ladeanzeige stimmt oder falsch ist</translation>
    </message>
    <message>
        <source>asks no gauge, so it holds whether it is right or wrong</source>
        <translation>braucht keine Ladeanzeige, gilt also, ob sie stimmt oder falsch ist</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>aus der Ladeanzeige dieses Laufs, innerhalb der %1, die eine frühere Ladung von Abschaltung bis voll aufnahm</translation>
    </message>
    <message>
        <source>from the unit&apos;s label alone, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>allein aus der Nennenergie des Speichers, innerhalb der %1, die eine frühere Ladung von Abschaltung bis voll aufnahm</translation>
    </message>
    <message>
        <source>from what the unit was charged with, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>aus dem, womit der Speicher geladen wurde, innerhalb der %1, die eine frühere Ladung von Abschaltung bis voll aufnahm</translation>
    </message>
    <message>
        <source>from the unit&apos;s label alone</source>
        <translation>allein aus der Nennenergie des Speichers</translation>
    </message>
    <message>
        <source>from what the unit was charged with</source>
        <translation>aus dem, womit der Speicher geladen wurde</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge</source>
        <translation>aus der Ladeanzeige dieses Laufs</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge and time alone, without a register: assumes a steady load</source>
        <translation>allein aus Ladeanzeige und Zeit dieses Laufs, ohne Zählwerk: setzt eine stetige Last voraus</translation>
    </message>
    <message>
        <source>from earlier drains of the unit</source>
        <translation>aus früheren Entladungen des Speichers</translation>
    </message>
    <message>
        <source>from earlier drains of the unit, with which this run&apos;s gauge agrees</source>
        <translation>aus früheren Entladungen des Speichers, mit denen die Ladeanzeige dieses Laufs übereinstimmt</translation>
    </message>
    <message>
        <source>from earlier drains of the unit and this run&apos;s gauge, which disagree</source>
        <translation>aus früheren Entladungen des Speichers und der Ladeanzeige dieses Laufs, die sich widersprechen</translation>
    </message>
    <message>
        <source>allows for a gauge that is bent, offset, ends early, falls too fast, lingers, sticks, jumps, or is blind to the unit&apos;s own consumption</source>
        <translation>lässt eine Ladeanzeige zu, die gekrümmt oder versetzt ist, zu früh endet, zu schnell fällt, verzögert, hängen bleibt, springt oder den Eigenverbrauch des Speichers nicht sieht</translation>
    </message>
    <message>
        <source>the range holds both</source>
        <translation>die Spanne enthält beides</translation>
    </message>
    <message>
        <source>±%1 % taken for a meter whose error limit is not stated</source>
        <translation>±%1 % angenommen für einen Zähler, dessen Fehlergrenze nicht angegeben ist</translation>
    </message>
    <message>
        <source>%1, and no earlier drain of the unit tells</source>
        <translation>%1, und keine frühere Entladung des Speichers sagt es</translation>
    </message>
    <message>
        <source>it has already delivered more than the readings and the unit&apos;s label allow for; read often now</source>
        <translation>er hat schon mehr abgegeben, als Ablesungen und Nennenergie des Speichers zulassen; lesen Sie jetzt oft ab</translation>
    </message>
    <message>
        <source>the load is so small that the end may be more than a year away</source>
        <translation>die Last ist so klein, dass das Ende mehr als ein Jahr entfernt sein kann</translation>
    </message>
    <message>
        <source>the gauge has not been read yet</source>
        <translation>die Ladeanzeige wurde noch nicht abgelesen</translation>
    </message>
    <message>
        <source>the gauge has not been read twice with the register yet</source>
        <translation>die Ladeanzeige wurde noch nicht zweimal mit dem Zählwerk abgelesen</translation>
    </message>
    <message>
        <source>the gauge has not fallen yet</source>
        <translation>die Ladeanzeige ist noch nicht gefallen</translation>
    </message>
    <message>
        <source>no time passed while the gauge fell</source>
        <translation>keine Zeit verging, während die Ladeanzeige fiel</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <source>the gauge should have fallen by %1 points</source>
        <translation>die Ladeanzeige sollte um %1 Prozentpunkte gefallen sein</translation>
    </message>
    <message>
        <source>the gauge falls so slowly that %1 points less may be more than a year away</source>
        <translation>die Ladeanzeige fällt so langsam, dass %1 Prozentpunkte weniger mehr als ein Jahr entfernt sein können</translation>
    </message>
    <message>
        <source>the gauge cannot fall by another %1 points</source>
        <translation>die Ladeanzeige kann nicht um weitere %1 Prozentpunkte fallen</translation>
    </message>
    <message>
        <source>the reading before the forecast cut-off has been taken</source>
        <translation>die Ablesung vor der vorhergesagten Abschaltung ist gemacht</translation>
    </message>
    <message>
        <source>%1 min before the earliest cut-off forecast</source>
        <translation>%1 min vor der frühesten vorhergesagten Abschaltung</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>der Lauf ist beendet</translation>
    </message>
    <message>
        <source>%1 min after the last reading</source>
        <translation>%1 min nach der letzten Ablesung</translation>
    </message>
    <message>
        <source>no reminder is set</source>
        <translation>keine Erinnerung ist gesetzt</translation>
    </message>
</context>
<context>
    <name>foreign_tables</name>
    <message>
        <source>text, %1, columns end at a tab</source>
        <translation>Text, %1, Spalten enden bei einem Tabulator</translation>
    </message>
    <message>
        <source>text, %1, columns end at a semicolon</source>
        <translation>Text, %1, Spalten enden bei einem Semikolon</translation>
    </message>
    <message>
        <source>text, %1, columns end at an upright bar</source>
        <translation>Text, %1, Spalten enden bei einem senkrechten Strich</translation>
    </message>
    <message>
        <source>text, %1, columns end at a comma</source>
        <translation>Text, %1, Spalten enden bei einem Komma</translation>
    </message>
    <message>
        <source>text, %1, columns end at several blanks</source>
        <translation>Text, %1, Spalten enden bei mehreren Leerzeichen</translation>
    </message>
    <message>
        <source>this is no table: neither a workbook nor a text</source>
        <translation>das ist keine Tabelle: weder Arbeitsmappe noch Text</translation>
    </message>
    <message>
        <source>choose an XLSX or ODS workbook, or a text with columns</source>
        <translation>wählen Sie eine Arbeitsmappe als XLSX oder ODS oder einen Text mit Spalten</translation>
    </message>
    <message>
        <source>it holds no table</source>
        <translation>darin ist keine Tabelle</translation>
    </message>
    <message>
        <source>copy the cells of the table, with their head</source>
        <translation>kopieren Sie die Zellen der Tabelle mit ihrer Kopfzeile</translation>
    </message>
    <message>
        <source>web page</source>
        <translation>Webseite</translation>
    </message>
    <message>
        <source>the workbook has a password</source>
        <translation>die Arbeitsmappe hat ein Passwort</translation>
    </message>
    <message>
        <source>save it without one, or copy its cells and paste them</source>
        <translation>speichern Sie sie ohne Passwort oder kopieren Sie ihre Zellen und fügen Sie sie ein</translation>
    </message>
    <message>
        <source>ODS workbook</source>
        <translation>ODS-Arbeitsmappe</translation>
    </message>
    <message>
        <source>the dates name no year (day %1, month %2)</source>
        <translation>die Daten nennen kein Jahr (Tag %1, Monat %2)</translation>
    </message>
    <message>
        <source>the date `%1` cannot be read</source>
        <translation>das Datum `%1` lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>it has no time</source>
        <translation>sie hat keine Zeit</translation>
    </message>
    <message>
        <source>the time `%1` counts from the start, but in no unit</source>
        <translation>die Zeit `%1` zählt ab dem Start, aber in keiner Einheit</translation>
    </message>
    <message>
        <source>the time `%1` cannot be read</source>
        <translation>die Zeit `%1` lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>`%1` is a date without a time</source>
        <translation>`%1` ist ein Datum ohne Zeit</translation>
    </message>
    <message>
        <source>from row %1 on, behind an empty row, the figures begin anew: this may be another run</source>
        <translation>ab Zeile %1, nach einer Leerzeile, beginnen die Zahlen neu: das kann ein anderer Lauf sein</translation>
    </message>
    <message>
        <source>`%1` above row %2 is taken for a heading within the run</source>
        <translation>`%1` über Zeile %2 gilt als Überschrift innerhalb des Laufs</translation>
    </message>
    <message>
        <source>the time %1 does not exist, as the clocks went forward</source>
        <translation>die Zeit %1 gibt es nicht, da die Uhren vorgestellt wurden</translation>
    </message>
    <message>
        <source>the time %1 cannot be read</source>
        <translation>die Zeit %1 lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>times that begin with 0:00 may be times of day, or count from the start</source>
        <translation>Zeiten, die bei 0:00 beginnen, können Uhrzeiten sein oder ab dem Start zählen</translation>
    </message>
    <message>
        <source>the times count from the start of the run, and nothing says when that was</source>
        <translation>die Zeiten zählen ab dem Start des Laufs, und nichts sagt, wann der war</translation>
    </message>
    <message>
        <source>the times count from the start of run %1, and nothing says when that was</source>
        <translation>die Zeiten zählen ab dem Start von Lauf %1, und nichts sagt, wann der war</translation>
    </message>
    <message>
        <source>the times of the run name no date</source>
        <translation>die Zeiten des Laufs nennen kein Datum</translation>
    </message>
    <message>
        <source>the times of run %1 name no date</source>
        <translation>die Zeiten von Lauf %1 nennen kein Datum</translation>
    </message>
    <message>
        <source>no date is known for it</source>
        <translation>für sie ist kein Datum bekannt</translation>
    </message>
    <message>
        <source>row %1: %2 lies before %3, so the clock or the date was never set</source>
        <translation>Zeile %1: %2 liegt vor %3, Uhr oder Datum wurde also nie gestellt</translation>
    </message>
    <message>
        <source>row %1: %2 lies in the future</source>
        <translation>Zeile %1: %2 liegt in der Zukunft</translation>
    </message>
    <message>
        <source>where the time of day falls below that of the row before, midnight was passed</source>
        <translation>wo die Uhrzeit unter die der vorigen Zeile fällt, wurde Mitternacht überschritten</translation>
    </message>
    <message>
        <source>the rows are not in order of time; they are put in order</source>
        <translation>die Zeilen sind nicht zeitlich geordnet; sie werden geordnet</translation>
    </message>
    <message>
        <source>its cells are dates with a time</source>
        <translation>ihre Zellen sind Daten mit Zeit</translation>
    </message>
    <message>
        <source>its cells are times of day</source>
        <translation>ihre Zellen sind Uhrzeiten</translation>
    </message>
    <message>
        <source>its cells are dates</source>
        <translation>ihre Zellen sind Daten</translation>
    </message>
    <message>
        <source>its cells name %1</source>
        <translation>ihre Zellen nennen %1</translation>
    </message>
    <message>
        <source>its cells are words</source>
        <translation>ihre Zellen sind Worte</translation>
    </message>
    <message>
        <source>`%1` has words in its cells</source>
        <translation>`%1` hat Worte in den Zellen</translation>
    </message>
    <message>
        <source>another column was named for it</source>
        <translation>eine andere Spalte wurde dafür genannt</translation>
    </message>
    <message>
        <source>%1 and %2 could both be the %3</source>
        <translation>%1 und %2 könnten beide diese Rolle haben: %3</translation>
    </message>
    <message>
        <source>no column is known to hold the time</source>
        <translation>von keiner Spalte ist bekannt, dass sie die Zeit enthält</translation>
    </message>
    <message>
        <source>no column is known to hold the gauge or the register</source>
        <translation>von keiner Spalte ist bekannt, dass sie Ladeanzeige oder Zählwerk enthält</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>column %1 (`%2`)</source>
        <translation>Spalte %1 (`%2`)</translation>
    </message>
    <message>
        <source>as you said</source>
        <translation>wie Sie sagten</translation>
    </message>
    <message>
        <source>its cells are plain numbers, so they count from the start</source>
        <translation>ihre Zellen sind bloße Zahlen, sie zählen also ab dem Start</translation>
    </message>
    <message>
        <source>a gauge of `%1` may be a share of 1 or percent</source>
        <translation>eine Ladeanzeige von `%1` kann ein Anteil von 1 oder Prozent sein</translation>
    </message>
    <message>
        <source>`%1` is a line of totals</source>
        <translation>`%1` ist eine Summenzeile</translation>
    </message>
    <message>
        <source>it has no value</source>
        <translation>sie hat keinen Wert</translation>
    </message>
    <message>
        <source>`%1` has no time</source>
        <translation>`%1` hat keine Zeit</translation>
    </message>
    <message>
        <source>the %1 `%2` is no number; kept as a remark</source>
        <translation>%1: `%2` ist keine Zahl; als Bemerkung behalten</translation>
    </message>
    <message>
        <source>a gauge in %1 is not understood; kept as a remark</source>
        <translation>eine Ladeanzeige in %1 wird nicht verstanden; als Bemerkung behalten</translation>
    </message>
    <message>
        <source>a gauge of %1 lies outside 0 to 100 %; kept as a remark</source>
        <translation>eine Ladeanzeige von %1 liegt außerhalb 0 bis 100 %; als Bemerkung behalten</translation>
    </message>
    <message>
        <source>the register in %1 has no unit</source>
        <translation>das Zählwerk in %1 hat keine Einheit</translation>
    </message>
    <message>
        <source>%1 is no unit of the %2; kept as a remark</source>
        <translation>%1 ist keine Einheit für: %2; als Bemerkung behalten</translation>
    </message>
    <message>
        <source>a register below 0 is not taken; kept as a remark</source>
        <translation>ein Zählwerksstand unter 0 wird nicht übernommen; als Bemerkung behalten</translation>
    </message>
    <message>
        <source>a power below 0 is not taken; kept as a remark</source>
        <translation>eine Leistung unter 0 wird nicht übernommen; als Bemerkung behalten</translation>
    </message>
    <message>
        <source>row %1: `%2` is taken for the mark %3</source>
        <translation>Zeile %1: `%2` gilt als Marke %3</translation>
    </message>
    <message>
        <source>no row of the table has a time and a value</source>
        <translation>keine Zeile der Tabelle hat eine Zeit und einen Wert</translation>
    </message>
    <message>
        <source>the workbook is damaged (its part %1)</source>
        <translation>die Arbeitsmappe ist beschädigt (ihr Teil %1)</translation>
    </message>
    <message>
        <source>open it in the program that made it and save it anew</source>
        <translation>öffnen Sie sie in dem Programm, das sie erstellte, und speichern Sie sie neu</translation>
    </message>
    <message>
        <source>list of contents</source>
        <translation>Inhaltsverzeichnis</translation>
    </message>
    <message>
        <source>the workbook unpacks to more than %1 MB</source>
        <translation>die Arbeitsmappe entpackt sich zu mehr als %1 MB</translation>
    </message>
    <message>
        <source>keep the sheet with the readings alone, or copy its cells and paste them</source>
        <translation>behalten Sie nur das Blatt mit den Ablesungen oder kopieren Sie seine Zellen und fügen Sie sie ein</translation>
    </message>
    <message>
        <source>XLSX workbook</source>
        <translation>XLSX-Arbeitsmappe</translation>
    </message>
    <message>
        <source>there is nothing in it</source>
        <translation>darin ist nichts</translation>
    </message>
    <message>
        <source>choose a table of readings</source>
        <translation>wählen Sie eine Tabelle mit Ablesungen</translation>
    </message>
    <message>
        <source>the workbook has a password, or is of the old form .xls</source>
        <translation>die Arbeitsmappe hat ein Passwort oder das alte Format .xls</translation>
    </message>
    <message>
        <source>save it as XLSX or ODS without a password, or copy its cells and paste them</source>
        <translation>speichern Sie sie ohne Passwort als XLSX oder ODS oder kopieren Sie ihre Zellen und fügen Sie sie ein</translation>
    </message>
    <message>
        <source>this zip file is no workbook</source>
        <translation>diese Zip-Datei ist keine Arbeitsmappe</translation>
    </message>
    <message>
        <source>the table is larger than %1 rows, %2 columns or %3 cells</source>
        <translation>die Tabelle ist größer als %1 Zeilen, %2 Spalten oder %3 Zellen</translation>
    </message>
    <message>
        <source>import the log of a meter with Run, Import log; of another table keep the part with the readings</source>
        <translation>importieren Sie das Log eines Zählers mit Lauf, Log importieren; von einer anderen Tabelle behalten Sie den Teil mit den Ablesungen</translation>
    </message>
    <message>
        <source>no cell of it holds anything</source>
        <translation>keine Zelle darin enthält etwas</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: its point is the decimal sign, or parts the thousands</source>
        <translation>`%1` lässt sich auf zwei Weisen lesen: der Punkt ist Dezimalzeichen oder trennt Tausender</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: its comma is the decimal sign, or parts the thousands</source>
        <translation>`%1` lässt sich auf zwei Weisen lesen: das Komma ist Dezimalzeichen oder trennt Tausender</translation>
    </message>
    <message>
        <source>some numbers have a point as decimal sign and some a comma</source>
        <translation>einige Zahlen haben einen Punkt als Dezimalzeichen, andere ein Komma</translation>
    </message>
    <message>
        <source>the decimal sign is a comma</source>
        <translation>das Dezimalzeichen ist ein Komma</translation>
    </message>
    <message>
        <source>the dates may begin with the day or the month</source>
        <translation>die Daten können mit dem Tag oder dem Monat beginnen</translation>
    </message>
    <message>
        <source>`%1` may begin with the day or the month</source>
        <translation>`%1` kann mit dem Tag oder dem Monat beginnen</translation>
    </message>
    <message>
        <source>dates begin with the day, as one of them can be read in no other way</source>
        <translation>die Daten beginnen mit dem Tag, da sich eines davon nicht anders lesen lässt</translation>
    </message>
    <message>
        <source>dates begin with the month, as one of them can be read in no other way</source>
        <translation>die Daten beginnen mit dem Monat, da sich eines davon nicht anders lesen lässt</translation>
    </message>
    <message>
        <source>the table has no row of heads; its columns are told by what they hold</source>
        <translation>die Tabelle hat keine Kopfzeile; ihre Spalten werden an ihrem Inhalt erkannt</translation>
    </message>
    <message numerus="yes">
        <source>%n runs stand side by side</source>
        <comment>%n run stands by itself</comment>
        <translation>
            <numerusform>%n Lauf steht für sich</numerusform>
            <numerusform>%n Läufe stehen nebeneinander</numerusform>
        </translation>
    </message>
    <message>
        <source>another head stands in row %1</source>
        <translation>eine weitere Kopfzeile steht in Zeile %1</translation>
    </message>
    <message numerus="yes">
        <source>%n formulas have no value kept with them, so that their cells are empty; save the workbook once in its program</source>
        <comment>%n formula has no value kept with it, so that its cell is empty; save the workbook once in its program</comment>
        <translation>
            <numerusform>%n Formel hat keinen mitgespeicherten Wert, ihre Zelle ist also leer; speichern Sie die Arbeitsmappe einmal in ihrem Programm</numerusform>
            <numerusform>%n Formeln haben keinen mitgespeicherten Wert, ihre Zellen sind also leer; speichern Sie die Arbeitsmappe einmal in ihrem Programm</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` is not needed</source>
        <translation>`%1` wird nicht gebraucht</translation>
    </message>
    <message>
        <source>`%1` names it</source>
        <translation>`%1` nennt sie</translation>
    </message>
    <message>
        <source>`%1` names it, in %2</source>
        <translation>`%1` nennt sie, in %2</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>ungenutzt</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>vergangen</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>zweites Zählwerk</translation>
    </message>
    <message>
        <source>power of the load</source>
        <translation>Leistung der Last</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>Leistung laut Speicher</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Speicher</translation>
    </message>
</context>
<context>
    <name>formats</name>
    <message numerus="yes">
        <source>there are %n keys that are not known</source>
        <comment>there is %n key that is not known</comment>
        <translation>
            <numerusform>es gibt %n unbekannten Schlüssel</numerusform>
            <numerusform>es gibt %n unbekannte Schlüssel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n appliances</source>
        <comment>there is %n appliance</comment>
        <translation>
            <numerusform>es gibt %n Verbraucher</numerusform>
            <numerusform>es gibt %n Verbraucher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n readings</source>
        <comment>there is %n reading</comment>
        <translation>
            <numerusform>es gibt %n Ablesung</numerusform>
            <numerusform>es gibt %n Ablesungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n points of correction</source>
        <comment>there is %n point of correction</comment>
        <translation>
            <numerusform>es gibt %n Korrektionspunkt</numerusform>
            <numerusform>es gibt %n Korrektionspunkte</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gauge</name>
    <message>
        <source>no time passed with the output on</source>
        <translation>keine Zeit verging mit eingeschaltetem Ausgang</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 pt</translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <comment>%n point</comment>
        <translation>
            <numerusform>%n pt</numerusform>
            <numerusform>%n pt</numerusform>
        </translation>
    </message>
    <message>
        <source>The least error of the gauge is not known: %1.</source>
        <translation>Der kleinste Fehler der Ladeanzeige ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>a %1 run does not test the gauge against delivered energy</source>
        <translation>ein Lauf „%1“ prüft die Ladeanzeige nicht gegen die abgegebene Energie</translation>
    </message>
    <message>
        <source>the gauge and the register have not been read together twice</source>
        <translation>Ladeanzeige und Zählwerk wurden nicht zweimal zusammen abgelesen</translation>
    </message>
    <message>
        <source>the bounds could not be resolved</source>
        <translation>die Schranken ließen sich nicht bestimmen</translation>
    </message>
    <message>
        <source>whatever the losses are</source>
        <translation>gleich wie groß die Verluste sind</translation>
    </message>
    <message>
        <source>An accurate gauge could have shown all of this.</source>
        <translation>Eine genaue Ladeanzeige hätte all das zeigen können.</translation>
    </message>
    <message>
        <source>whatever the losses are; rated energy or the meter&apos;s limit is not stated, so any battery was allowed</source>
        <translation>gleich wie groß die Verluste sind; Nennenergie oder Fehlergrenze des Zählers ist nicht angegeben, daher war jede Batterie zugelassen</translation>
    </message>
    <message>
        <source>The gauge is wrong by at least %1 somewhere, whatever the losses are.</source>
        <translation>Die Ladeanzeige ist irgendwo um mindestens %1 falsch, gleich wie groß die Verluste sind.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>Zweifel</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>above 100</source>
        <translation>über 100</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls faster before than after.</source>
        <translation>Die Ladeanzeige ist gekrümmt: sie zeigt bis zu %1 mehr als eine lineare, am meisten bei etwa %2 (%3), und fällt davor schneller als danach.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls more slowly before than after.</source>
        <translation>Die Ladeanzeige ist gekrümmt: sie zeigt bis zu %1 mehr als eine lineare, am meisten bei etwa %2 (%3), und fällt davor langsamer als danach.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls faster before than after.</source>
        <translation>Die Ladeanzeige ist gekrümmt: sie zeigt bis zu %1 weniger als eine lineare, am meisten bei etwa %2 (%3), und fällt davor schneller als danach.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls more slowly before than after.</source>
        <translation>Die Ladeanzeige ist gekrümmt: sie zeigt bis zu %1 weniger als eine lineare, am meisten bei etwa %2 (%3), und fällt davor langsamer als danach.</translation>
    </message>
    <message>
        <source>two lines with slopes in the ratio %1 instead of one, p %2; no no-load draw makes the readings as straight: at best one line leaves %3 times as much</source>
        <translation>zwei Geraden, deren Steigungen im Verhältnis %1 stehen, statt einer, p %2; keine Leerlaufaufnahme macht die Ablesungen ebenso gerade: eine Gerade lässt bestenfalls das %3-Fache übrig</translation>
    </message>
    <message>
        <source>Gauge moves in steps of %1, not of %2 as stated.</source>
        <translation>Die Ladeanzeige geht in Schritten von %1, nicht von %2 wie angegeben.</translation>
    </message>
    <message numerus="yes">
        <source>all %n drops are multiples of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; threshold %3 pt</source>
        <comment>the %n drop is a multiple of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; threshold %3 pt</comment>
        <translation>
            <numerusform>der %n Fall ist ein Vielfaches von %1, und die Werte streuen um %2 pt um eine lineare Ladeanzeige, wie es solche Schritte tun; Schwelle %3 pt</numerusform>
            <numerusform>alle %n Fälle sind Vielfache von %1, und die Werte streuen um %2 pt um eine lineare Ladeanzeige, wie es solche Schritte tun; Schwelle %3 pt</numerusform>
        </translation>
    </message>
    <message>
        <source>At %1 shown, %2 had been delivered though the gauge implies %3: the gauge lags, or the battery holds more than its label.</source>
        <translation>Bei einer Anzeige von %1 waren %2 abgegeben, laut Ladeanzeige aber %3: die Ladeanzeige hängt nach, oder die Batterie enthält mehr als ihre Nennenergie.</translation>
    </message>
    <message>
        <source>beyond the meter&apos;s limit, the register step, one gauge step and %1 % for a gauge that counts charge by %2 at %3</source>
        <translation>%2 jenseits von Fehlergrenze des Zählers, Zählwerksschritt, einem Anzeigeschritt und %1 % für eine Ladeanzeige, die Ladung zählt (um %3)</translation>
    </message>
    <message>
        <source>Output was found off at %1; nobody saw when it went off, so the run time is a bracket.</source>
        <translation>Der Ausgang wurde um %1 aus vorgefunden; niemand sah, wann er ausging, daher ist die Laufzeit nur eingegrenzt.</translation>
    </message>
    <message>
        <source>run time %1</source>
        <translation>Laufzeit %1</translation>
    </message>
    <message>
        <source>run time %1: %2</source>
        <translation>Laufzeit %1: %2</translation>
    </message>
    <message>
        <source>After the gauge had come down to %1, at least %2 and at most %3 more were delivered.</source>
        <translation>Nachdem die Ladeanzeige auf %1 gefallen war, wurden noch mindestens %2 und höchstens %3 abgegeben.</translation>
    </message>
    <message>
        <source>the rounding of the gauge explains up to %1; threshold %2</source>
        <translation>die Rundung der Ladeanzeige erklärt bis zu %1; Schwelle %2</translation>
    </message>
    <message>
        <source>Between %1 and %2 the register rose by only %3 while the gauge fell by %4, as after some %5: the register may have been zeroed unseen and have passed its old value again, so that %6 or more are missing, or the gauge jumped; this run cannot tell which.</source>
        <translation>Zwischen %1 und %2 stieg das Zählwerk nur um %3, während die Ladeanzeige um %4 fiel, wie nach etwa %5: das Zählwerk kann unbemerkt genullt worden sein und seinen alten Stand wieder überschritten haben, sodass %6 oder mehr fehlen, oder die Ladeanzeige sprang; dieser Lauf kann nicht sagen, was davon.</translation>
    </message>
    <message>
        <source>fell by %1 pt more than the steepest accurate gauge, going by the rest of the run; doubted beyond %2 pt where the whole later register could have flowed in the gap</source>
        <translation>fiel um %1 pt mehr als die steilste genaue Ladeanzeige, gemessen am Rest des Laufs; Zweifel ab %2 pt, wo das ganze spätere Zählwerk in der Lücke geflossen sein könnte</translation>
    </message>
    <message>
        <source>no unit with a no-load draw of 0 or more and a battery of at most 110 % of its label keeps the gauge within %1 pt at all of these readings; threshold %2 pt</source>
        <translation>kein Speicher mit einer Leerlaufaufnahme ab 0 und einer Batterie von höchstens 110 % ihrer Nennenergie hält die Ladeanzeige bei all diesen Ablesungen innerhalb von %1 pt; Schwelle %2 pt</translation>
    </message>
    <message>
        <source>Gauge fell from %1 to %2 between %3 and %4, where energy and time explain at most %5.</source>
        <translation>Die Ladeanzeige fiel von %1 auf %2 zwischen %3 und %4, wo Energie und Zeit höchstens %5 erklären.</translation>
    </message>
    <message>
        <source>fell by %1 pt more than the steepest accurate gauge, whatever the no-load draw; threshold %2 pt</source>
        <translation>fiel um %1 pt mehr als die steilste genaue Ladeanzeige, gleich wie groß die Leerlaufaufnahme ist; Schwelle %2 pt</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, it probably does not count the unit&apos;s own consumption: it leaves room for at most %1 W beside a mean load of %2 W.</source>
        <translation>Ist die Ladeanzeige linear in der gespeicherten Energie, zählt sie den Eigenverbrauch des Speichers wahrscheinlich nicht mit: sie lässt höchstens %1 W dafür übrig, neben einer mittleren Last von %2 W.</translation>
    </message>
    <message>
        <source>fitted no-load draw %1, an interval that reaches 0 or nearly so; told when its upper end is at most %2 W</source>
        <translation>angepasste Leerlaufaufnahme %1, ein Intervall, das bis 0 oder fast bis 0 reicht; genannt, wenn sein oberes Ende höchstens %2 W ist</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and of the time of this drain had gone.</source>
        <translation>Um %1 zeigte die Ladeanzeige %2, mindestens %3 zu viel: %4 % der Energie und der Zeit dieser Entladung waren vergangen.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and of the time of this drain had gone.</source>
        <translation>Um %1 zeigte die Ladeanzeige %2, mindestens %3 zu wenig: %4 % der Energie und der Zeit dieser Entladung waren vergangen.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and %5 % of the time of this drain had gone.</source>
        <translation>Um %1 zeigte die Ladeanzeige %2, mindestens %3 zu viel: %4 % der Energie und %5 % der Zeit dieser Entladung waren vergangen.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and %5 % of the time of this drain had gone.</source>
        <translation>Um %1 zeigte die Ladeanzeige %2, mindestens %3 zu wenig: %4 % der Energie und %5 % der Zeit dieser Entladung waren vergangen.</translation>
    </message>
    <message>
        <source>whatever the unit takes for itself, an accurate gauge shows %1 to %2 % then; threshold %3 pt outside</source>
        <translation>was immer der Speicher selbst verbraucht, eine genaue Ladeanzeige zeigt dann %1 bis %2 %; Schwelle %3 pt außerhalb</translation>
    </message>
    <message>
        <source>Gauge rose from %1 to %2 between %3 and %4 though nothing charged the unit.</source>
        <translation>Die Ladeanzeige stieg von %1 auf %2 zwischen %3 und %4, obwohl nichts den Speicher lud.</translation>
    </message>
    <message>
        <source>rose by %1 pt; threshold two gauge steps, %2 pt</source>
        <translation>stieg um %1 pt; Schwelle zwei Anzeigeschritte, %2 pt</translation>
    </message>
    <message>
        <source>Off at about %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.</source>
        <translation>Aus bei einer Anzeige von etwa %1: die Ladeanzeige endete zu früh, oder der Speicher schaltete mit Restenergie ab; dieser Lauf kann nicht sagen, was davon.</translation>
    </message>
    <message>
        <source>Off at %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.</source>
        <translation>Aus bei einer Anzeige von %1: die Ladeanzeige endete zu früh, oder der Speicher schaltete mit Restenergie ab; dieser Lauf kann nicht sagen, was davon.</translation>
    </message>
    <message>
        <source>last gauge reading %1 at %2, %3 before the cut-off; at least %4 % then; threshold %5 %</source>
        <translation>letzte Ablesung der Ladeanzeige %1 um %2, %3 vor der Abschaltung; dann mindestens %4 %; Schwelle %5 %</translation>
    </message>
    <message>
        <source>Gauge held at %1 from %2 to %3 while %4 were delivered (about %5).</source>
        <translation>Die Ladeanzeige blieb von %2 bis %3 bei %1, während %4 abgegeben wurden (etwa %5).</translation>
    </message>
    <message>
        <source>Gauge stuck at %1 from %2 to %3 while %4 were delivered (about %5).</source>
        <translation>Die Ladeanzeige hing von %2 bis %3 bei %1 fest, während %4 abgegeben wurden (etwa %5).</translation>
    </message>
    <message>
        <source>an accurate gauge would have fallen by at least %1 pt, whatever the no-load draw; threshold %2 pt</source>
        <translation>eine genaue Ladeanzeige wäre um mindestens %1 pt gefallen, gleich wie groß die Leerlaufaufnahme ist; Schwelle %2 pt</translation>
    </message>
    <message>
        <source>sticks (%1)</source>
        <translation>bleibt hängen (%1)</translation>
    </message>
    <message>
        <source>held at full (%1)</source>
        <translation>bleibt bei voll (%1)</translation>
    </message>
    <message>
        <source>jumps (%1)</source>
        <translation>springt (%1)</translation>
    </message>
    <message>
        <source>rises (%1)</source>
        <translation>steigt (%1)</translation>
    </message>
    <message>
        <source>shuts off showing %1 %</source>
        <translation>schaltet bei angezeigten %1 % ab</translation>
    </message>
    <message>
        <source>reserve below 1 % (%1)</source>
        <translation>Reserve unter 1 % (%1)</translation>
    </message>
    <message>
        <source>lags (%1)</source>
        <translation>hängt nach (%1)</translation>
    </message>
    <message>
        <source>bent (%1)</source>
        <translation>gekrümmt (%1)</translation>
    </message>
    <message>
        <source>coarse (%1)</source>
        <translation>grob (%1)</translation>
    </message>
    <message>
        <source>omits own consumption</source>
        <translation>lässt den Eigenverbrauch aus</translation>
    </message>
    <message>
        <source>found off</source>
        <translation>aus vorgefunden</translation>
    </message>
    <message>
        <source>wrong by at least %1</source>
        <translation>um mindestens %1 falsch</translation>
    </message>
    <message>
        <source>off by at least %1</source>
        <translation>um mindestens %1 daneben</translation>
    </message>
    <message>
        <source>one reading doubted (%1 %)</source>
        <translation>eine Ablesung zweifelhaft (%1 %)</translation>
    </message>
    <message>
        <source>register perhaps reset (%1)</source>
        <translation>Zählwerk vielleicht zurückgesetzt (%1)</translation>
    </message>
    <message>
        <source>not judged: no gauge reading with the register</source>
        <translation>nicht beurteilt: keine Ladeanzeige zum Zählwerk abgelesen</translation>
    </message>
    <message>
        <source>not judged: the gauge was read once</source>
        <translation>nicht beurteilt: die Ladeanzeige wurde einmal abgelesen</translation>
    </message>
    <message>
        <source>no fault found</source>
        <translation>kein Fehler gefunden</translation>
    </message>
    <message numerus="yes">
        <source>no fault in %n readings</source>
        <comment>no fault in %n reading</comment>
        <translation>
            <numerusform>kein Fehler in %n Ablesung</numerusform>
            <numerusform>kein Fehler in %n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>not judged: no reading between start and cut-off</source>
        <translation>nicht beurteilt: keine Ablesung zwischen Start und Abschaltung</translation>
    </message>
    <message>
        <source>no fault found, within %1 pt</source>
        <translation>kein Fehler gefunden, innerhalb von %1 pt</translation>
    </message>
    <message numerus="yes">
        <source>no fault found, within %1 pt at %n readings</source>
        <comment>no fault found, within %1 pt at %n reading</comment>
        <translation>
            <numerusform>kein Fehler gefunden, innerhalb von %1 pt bei %n Ablesung</numerusform>
            <numerusform>kein Fehler gefunden, innerhalb von %1 pt bei %n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>not judged: no drain</source>
        <translation>nicht beurteilt: keine Entladung</translation>
    </message>
    <message>
        <source>Read gauge and register together at the start, once in the middle and at the end.</source>
        <translation>Lesen Sie Ladeanzeige und Zählwerk zusammen am Start, einmal in der Mitte und am Ende ab.</translation>
    </message>
    <message>
        <source>One reading of gauge and register between start and cut-off would hold the gauge against its shares.</source>
        <translation>Eine Ablesung von Ladeanzeige und Zählwerk zwischen Start und Abschaltung würde die Ladeanzeige an ihren Anteilen messen.</translation>
    </message>
    <message>
        <source>Each further reading of gauge and register between start and cut-off holds the gauge to one more point.</source>
        <translation>Jede weitere Ablesung von Ladeanzeige und Zählwerk zwischen Start und Abschaltung prüft die Ladeanzeige an einem Punkt mehr.</translation>
    </message>
    <message>
        <source>A drain to cut-off would hold each of these readings against the energy that came out.</source>
        <translation>Eine Entladung bis zur Abschaltung würde jede dieser Ablesungen an der Energie messen, die herauskam.</translation>
    </message>
    <message>
        <source>%1 at %2 stands alone: mistyped for %3? Without it nothing speaks against the gauge.</source>
        <translation>%1 um %2 steht allein: vertippt für %3? Ohne sie spricht nichts gegen die Ladeanzeige.</translation>
    </message>
    <message>
        <source>a slip of the pen makes %1 of %2, which fits; amend the reading if it was mistyped</source>
        <translation>ein Schreibfehler macht aus %2, das passt, %1; berichtigen Sie die Ablesung, wenn Sie sich vertippt haben</translation>
    </message>
    <message>
        <source>at %1, by the shares of energy and time gone, whatever the losses are</source>
        <translation>um %1, nach den vergangenen Anteilen von Energie und Zeit, gleich wie groß die Verluste sind</translation>
    </message>
    <message>
        <source>by the shares of energy and time gone, whatever the losses are</source>
        <translation>nach den vergangenen Anteilen von Energie und Zeit, gleich wie groß die Verluste sind</translation>
    </message>
    <message>
        <source>share delivered</source>
        <translation>abgegebener Anteil</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are none</source>
        <translation>eine Gerade wird ab vier Ablesungen von Ladeanzeige und Zählwerk geprüft, hier gibt es keine</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there is one</source>
        <translation>eine Gerade wird ab vier Ablesungen von Ladeanzeige und Zählwerk geprüft, hier gibt es eine</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are two</source>
        <translation>eine Gerade wird ab vier Ablesungen von Ladeanzeige und Zählwerk geprüft, hier gibt es zwei</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are three</source>
        <translation>eine Gerade wird ab vier Ablesungen von Ladeanzeige und Zählwerk geprüft, hier gibt es drei</translation>
    </message>
    <message>
        <source>χ² %1 for %2 degrees of freedom, p %3</source>
        <translation>χ² %1 bei %2 Freiheitsgraden, p %3</translation>
    </message>
    <message>
        <source>A linear gauge explains these readings (%1).</source>
        <translation>Eine lineare Ladeanzeige erklärt diese Ablesungen (%1).</translation>
    </message>
    <message>
        <source>No linear gauge explains these readings (%1); a varying load with a no-load draw bends the line too.</source>
        <translation>Keine lineare Ladeanzeige erklärt diese Ablesungen (%1); auch eine wechselnde Last mit Leerlaufaufnahme krümmt die Gerade.</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>the gauge fell by less than five of its steps</source>
        <translation>die Ladeanzeige fiel um weniger als fünf ihrer Schritte</translation>
    </message>
    <message>
        <source>its readings lead to %1 at the cut-off, not to 0 %</source>
        <translation>ihre Ablesungen führen zu %1 bei der Abschaltung, nicht zu 0 %</translation>
    </message>
    <message>
        <source>its readings lead back to %1 at the start, not to 100 %</source>
        <translation>ihre Ablesungen führen zurück zu %1 am Start, nicht zu 100 %</translation>
    </message>
    <message>
        <source>the gauge follows the load by about %1</source>
        <translation>die Ladeanzeige folgt der Last um etwa %1</translation>
    </message>
    <message>
        <source>a gauge that is not quite linear would change it beyond measure</source>
        <translation>eine nicht ganz lineare Ladeanzeige würde es über jedes Maß ändern</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, one run could tell the unit&apos;s own draw; here it is not known: %1.</source>
        <translation>Ist die Ladeanzeige linear in der gespeicherten Energie, könnte ein Lauf den Eigenverbrauch des Speichers zeigen; hier ist er unbekannt: %1.</translation>
    </message>
    <message>
        <source>a %1 run does not tell losses from delivered energy</source>
        <translation>ein Lauf „%1“ trennt Verluste nicht von abgegebener Energie</translation>
    </message>
    <message>
        <source>no meter is stated</source>
        <translation>kein Zähler ist angegeben</translation>
    </message>
    <message numerus="yes">
        <source>only %n gauge readings within the register&apos;s readings; 6 are needed</source>
        <comment>only %n gauge reading within the register&apos;s readings; 6 are needed</comment>
        <translation>
            <numerusform>nur %n Ablesung der Ladeanzeige innerhalb der Ablesungen des Zählwerks; 6 sind nötig</numerusform>
            <numerusform>nur %n Ablesungen der Ladeanzeige innerhalb der Ablesungen des Zählwerks; 6 sind nötig</numerusform>
        </translation>
    </message>
    <message>
        <source>the gauge rose from %1 to %2 at %3, so it is not linear in stored energy</source>
        <translation>die Ladeanzeige stieg um %3 von %1 auf %2, ist also nicht linear in der gespeicherten Energie</translation>
    </message>
    <message>
        <source>the gauge fell by only %1 points; %2 are needed</source>
        <translation>die Ladeanzeige fiel nur um %1 Prozentpunkte; %2 sind nötig</translation>
    </message>
    <message>
        <source>no energy was delivered between the gauge readings</source>
        <translation>zwischen den Ablesungen der Ladeanzeige wurde keine Energie abgegeben</translation>
    </message>
    <message>
        <source>the load was so steady that time and energy cannot be told apart (%1 % of the energy&apos;s spread is not linear in time, %2 % are needed); vary the load, or make a second run at another load</source>
        <translation>die Last war so stetig, dass sich Zeit und Energie nicht trennen lassen (%1 % der Streuung der Energie sind nicht linear in der Zeit, %2 % sind nötig); wechseln Sie die Last oder machen Sie einen zweiten Lauf bei anderer Last</translation>
    </message>
    <message>
        <source>register steps and noted minutes make a steady load look as uneven as this one (%1 Wh off a straight line in time, %2 Wh by steps and minutes alone); vary the load more</source>
        <translation>Zählwerksschritte und notierte Minuten lassen eine stetige Last so ungleichmäßig aussehen wie diese (%1 Wh neben einer Geraden in der Zeit, %2 Wh allein durch Schritte und Minuten); wechseln Sie die Last stärker</translation>
    </message>
    <message>
        <source>the gauge does not fall with delivered energy</source>
        <translation>die Ladeanzeige fällt nicht mit der abgegebenen Energie</translation>
    </message>
    <message>
        <source>the gauge is not linear: its readings scatter %1 times as far as their steps explain, %2 times are allowed</source>
        <translation>die Ladeanzeige ist nicht linear: ihre Ablesungen streuen das %1-Fache dessen, was ihre Schritte erklären, das %2-Fache ist erlaubt</translation>
    </message>
    <message>
        <source>the gauge is not linear: it bulges by about %1 at half, as a gauge does that counts charge</source>
        <translation>die Ladeanzeige ist nicht linear: sie wölbt sich in der Mitte um etwa %1, wie eine Ladeanzeige, die Ladung zählt</translation>
    </message>
    <message>
        <source>if the gauge is linear in stored energy</source>
        <translation>wenn die Ladeanzeige linear in der gespeicherten Energie ist</translation>
    </message>
    <message>
        <source>if the gauge is linear in stored energy; no interval: the error limit of the meter is not stated</source>
        <translation>wenn die Ladeanzeige linear in der gespeicherten Energie ist; kein Intervall: die Fehlergrenze des Zählers ist nicht angegeben</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 before its own consumption.</source>
        <translation>Ist die Ladeanzeige linear in der gespeicherten Energie, verbraucht der Speicher selbst %1 (von der Steckdose aus gesehen) und würde vor Eigenverbrauch %2 abgeben.</translation>
    </message>
    <message>
        <source>the error limit of the meter is not stated</source>
        <translation>die Fehlergrenze des Zählers ist nicht angegeben</translation>
    </message>
    <message>
        <source>nothing was delivered between two register readings</source>
        <translation>zwischen zwei Ablesungen des Zählwerks wurde nichts abgegeben</translation>
    </message>
    <message>
        <source>the gauge has not fallen</source>
        <translation>die Ladeanzeige ist nicht gefallen</translation>
    </message>
    <message>
        <source>from energy alone: a battery of this label holds at most %1, if the gauge is right over this run</source>
        <translation>allein aus der Energie: eine Batterie dieser Nennenergie enthält höchstens %1, wenn die Ladeanzeige über diesen Lauf stimmt</translation>
    </message>
    <message>
        <source>from energy alone: a battery of this label holds at most %1</source>
        <translation>allein aus der Energie: eine Batterie dieser Nennenergie enthält höchstens %1</translation>
    </message>
    <message>
        <source>not by this run&apos;s own fit, as %1</source>
        <translation>nicht aus der Anpassung dieses Laufs, denn: %1</translation>
    </message>
    <message>
        <source>this run&apos;s own fit is wider than half its value or outside of that</source>
        <translation>die Anpassung dieses Laufs ist breiter als ihr halber Wert oder liegt außerhalb davon</translation>
    </message>
    <message>
        <source>not sharper, as %1</source>
        <translation>nicht schärfer, denn: %1</translation>
    </message>
    <message>
        <source>this run&apos;s own fit is wider than half its value, and %1</source>
        <translation>die Anpassung dieses Laufs ist breiter als ihr halber Wert, und %1</translation>
    </message>
    <message>
        <source>The unit itself takes at most %1 (seen from the socket): %2.</source>
        <translation>Der Speicher selbst verbraucht höchstens %1 (von der Steckdose aus gesehen): %2.</translation>
    </message>
    <message>
        <source>What the unit itself takes is not known: %1.</source>
        <translation>Was der Speicher selbst verbraucht, ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 if it took nothing for itself.</source>
        <translation>Ist die Ladeanzeige linear in der gespeicherten Energie, verbraucht der Speicher selbst %1 (von der Steckdose aus gesehen) und würde %2 abgeben, wenn er selbst nichts verbrauchte.</translation>
    </message>
    <message>
        <source>the gauge is at fault by about %1 points, so that anything from what was delivered to what the label holds may be</source>
        <translation>die Ladeanzeige ist um etwa %1 Prozentpunkte fehlerhaft, daher ist alles möglich von dem, was abgegeben wurde, bis zu dem, was die Nennenergie enthält</translation>
    </message>
    <message>
        <source>the gauge is at fault by about %1 points, which this allows for</source>
        <translation>die Ladeanzeige ist um etwa %1 Prozentpunkte fehlerhaft, was hier zugelassen ist</translation>
    </message>
    <message>
        <source>the run is no complete drain from full to cut-off, so nothing says how deep it was</source>
        <translation>der Lauf ist keine vollständige Entladung von voll bis Abschaltung, daher sagt nichts, wie tief er ging</translation>
    </message>
    <message>
        <source>make a run that starts full and ends by cut-off</source>
        <translation>machen Sie einen Lauf, der voll startet und durch Abschaltung endet</translation>
    </message>
    <message>
        <source>the no-load draw does not lie within its limits</source>
        <translation>die Leerlaufaufnahme liegt nicht innerhalb ihrer Grenzen</translation>
    </message>
    <message>
        <source>give value, lower and upper limit in W</source>
        <translation>geben Sie Wert, untere und obere Grenze in W an</translation>
    </message>
</context>
<context>
    <name>gauge_curves</name>
    <message>
        <source>read the gauge more often</source>
        <translation>lesen Sie die Ladeanzeige öfter ab</translation>
    </message>
    <message>
        <source>it is no drain from full to cut-off</source>
        <translation>er ist keine Entladung von voll bis Abschaltung</translation>
    </message>
    <message>
        <source>not all of its energy was read</source>
        <translation>seine Energie wurde nicht ganz abgelesen</translation>
    </message>
    <message>
        <source>when its output went off is not known well enough</source>
        <translation>wann sein Ausgang ausging, ist nicht genau genug bekannt</translation>
    </message>
    <message>
        <source>its gauge was read at fewer than six depths</source>
        <translation>seine Ladeanzeige wurde an weniger als sechs Stellen abgelesen</translation>
    </message>
    <message>
        <source>its gauge fell by less than five steps</source>
        <translation>seine Ladeanzeige fiel um weniger als fünf Schritte</translation>
    </message>
</context>
<context>
    <name>history</name>
    <message>
        <source>undone</source>
        <translation>rückgängig gemacht</translation>
    </message>
    <message>
        <source>redone</source>
        <translation>wiederholt</translation>
    </message>
    <message>
        <source>not all of it could be recorded</source>
        <translation>nicht alles ließ sich eintragen</translation>
    </message>
    <message>
        <source>the run was not ended</source>
        <translation>der Lauf wurde nicht beendet</translation>
    </message>
    <message>
        <source>joined with %1</source>
        <translation>zusammengeführt mit %1</translation>
    </message>
</context>
<context>
    <name>joining</name>
    <message>
        <source>the other logbook has settings of the method that this one has not; those of this one stay</source>
        <translation>das andere Logbuch hat Einstellungen der Methode, die dieses nicht hat; die von diesem bleiben</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>Speicher %1</translation>
    </message>
    <message>
        <source>there is a unit %1 already, which is not the same one: it comes in as a further unit of this name</source>
        <translation>einen Speicher %1 gibt es schon, und er ist nicht derselbe: der andere kommt als weiterer Speicher dieses Namens herein</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Zähler %1</translation>
    </message>
    <message>
        <source>there is a meter %1 already, which is not the same one: it comes in as a further meter of this name</source>
        <translation>einen Zähler %1 gibt es schon, und er ist nicht derselbe: der andere kommt als weiterer Zähler dieses Namens herein</translation>
    </message>
    <message>
        <source>meter %1 was withdrawn here; it comes back, as a run that comes in names it</source>
        <translation>Zähler %1 wurde hier zurückgezogen; er kommt zurück, da ein hereinkommender Lauf ihn nennt</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>the reading that it shows</source>
        <translation>die Ablesung, die es zeigt</translation>
    </message>
    <message>
        <source>photo %1 in %2</source>
        <translation>Foto %1 in %2</translation>
    </message>
    <message>
        <source>log %1 in %2</source>
        <translation>Log %1 in %2</translation>
    </message>
    <message>
        <source>load list %1</source>
        <translation>Lastliste %1</translation>
    </message>
    <message>
        <source>there is another load list %1 already: it comes in as %2</source>
        <translation>es gibt schon eine andere Lastliste %1: sie kommt als %2 herein</translation>
    </message>
    <message>
        <source>PV sheet %1</source>
        <translation>PV-Blatt %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>rated energy (Wh)</source>
        <translation>Nennenergie (Wh)</translation>
    </message>
    <message>
        <source>rated output (W)</source>
        <translation>Nennleistung (W)</translation>
    </message>
    <message>
        <source>peak output (W)</source>
        <translation>Spitzenleistung (W)</translation>
    </message>
    <message>
        <source>highest PV voltage (V)</source>
        <translation>höchste PV-Spannung (V)</translation>
    </message>
    <message>
        <source>highest PV current (A)</source>
        <translation>höchster PV-Strom (A)</translation>
    </message>
    <message>
        <source>highest PV power (W)</source>
        <translation>höchste PV-Leistung (W)</translation>
    </message>
    <message>
        <source>PV starts at (V)</source>
        <translation>PV-Anlaufspannung (V)</translation>
    </message>
    <message>
        <source>PV short-circuit current (A)</source>
        <translation>PV-Kurzschlussstrom (A)</translation>
    </message>
    <message>
        <source>charge time (h)</source>
        <translation>Ladezeit (h)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>paid price</source>
        <translation>gezahlter Preis</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>mass (kg)</source>
        <translation>Masse (kg)</translation>
    </message>
    <message>
        <source>warranty (years)</source>
        <translation>Garantie (Jahre)</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>chemistry</source>
        <translation>Chemie</translation>
    </message>
    <message>
        <source>purchased</source>
        <translation>gekauft</translation>
    </message>
    <message>
        <source>cycles before</source>
        <translation>Zyklen davor</translation>
    </message>
    <message>
        <source>gauge step (%)</source>
        <translation>Anzeigeschritt (%)</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>step (Wh)</source>
        <translation>Schritt (Wh)</translation>
    </message>
    <message>
        <source>limit (%)</source>
        <translation>Fehlergrenze (%)</translation>
    </message>
    <message>
        <source>part of the load (%)</source>
        <translation>je Last eigener Teil (%)</translation>
    </message>
    <message>
        <source>span (Wh)</source>
        <translation>Umfang (Wh)</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>points of the certificate</source>
        <translation>Punkte des Kalibrierscheins</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>Norm</translation>
    </message>
    <message>
        <source>starting current (A)</source>
        <translation>Anlaufstrom (A)</translation>
    </message>
    <message>
        <source>lowest load of its range (W)</source>
        <translation>niedrigste Last des Bereichs (W)</translation>
    </message>
    <message>
        <source>highest load of its range (W)</source>
        <translation>höchste Last des Bereichs (W)</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>certificate date</source>
        <translation>Datum des Kalibrierscheins</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>Labor</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>gültig bis</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>started full</source>
        <translation>voll gestartet</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>end noticed within (min)</source>
        <translation>Ende bemerkt innerhalb von (min)</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>ambient (°C)</source>
        <translation>Umgebung (°C)</translation>
    </message>
    <message>
        <source>ambient at the end (°C)</source>
        <translation>Umgebung am Ende (°C)</translation>
    </message>
    <message>
        <source>charge source</source>
        <translation>Quelle der Ladung</translation>
    </message>
    <message>
        <source>module</source>
        <translation>Modul</translation>
    </message>
    <message>
        <source>Voc (V)</source>
        <translation>Voc (V)</translation>
    </message>
    <message>
        <source>Vmp (V)</source>
        <translation>Vmp (V)</translation>
    </message>
    <message>
        <source>Isc (A)</source>
        <translation>Isc (A)</translation>
    </message>
    <message>
        <source>Imp (A)</source>
        <translation>Imp (A)</translation>
    </message>
    <message>
        <source>coefficient of Voc</source>
        <translation>Koeffizient von Voc</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>Koeffizient von Vmp</translation>
    </message>
    <message>
        <source>coefficient of the power</source>
        <translation>Koeffizient der Leistung</translation>
    </message>
    <message>
        <source>tolerance of the voltages (%)</source>
        <translation>Toleranz der Spannungen (%)</translation>
    </message>
    <message>
        <source>NOCT (°C)</source>
        <translation>NOCT (°C)</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>modules in a string</source>
        <translation>Module in einem Strang</translation>
    </message>
    <message>
        <source>strings side by side</source>
        <translation>Stränge nebeneinander</translation>
    </message>
    <message>
        <source>coldest (°C)</source>
        <translation>am kältesten (°C)</translation>
    </message>
    <message>
        <source>hottest (°C)</source>
        <translation>am heißesten (°C)</translation>
    </message>
    <message>
        <source>hottest cell (°C)</source>
        <translation>heißeste Zelle (°C)</translation>
    </message>
    <message>
        <source>irradiance (W/m²)</source>
        <translation>Bestrahlungsstärke (W/m²)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>crystalline silicon</source>
        <translation>kristallines Silizium</translation>
    </message>
    <message>
        <source>other than crystalline silicon</source>
        <translation>anderes als kristallines Silizium</translation>
    </message>
    <message>
        <source>%1 Wh in %2 h</source>
        <translation>%1 Wh in %2 h</translation>
    </message>
    <message>
        <source>duty %1</source>
        <translation>Einschaltdauer %1</translation>
    </message>
    <message>
        <source>%1 h a day</source>
        <translation>%1 h täglich</translation>
    </message>
    <message>
        <source>%1 h at night</source>
        <translation>%1 h nachts</translation>
    </message>
    <message>
        <source>%1 W at the start</source>
        <translation>%1 W beim Anlauf</translation>
    </message>
    <message>
        <source>always connected</source>
        <translation>immer angeschlossen</translation>
    </message>
    <message>
        <source>%1 of %2, %3</source>
        <translation>%1 von %2, %3</translation>
    </message>
    <message>
        <source>reading of %1, %2, in %3</source>
        <translation>Ablesung vom %1, %2, in %3</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>zweiter Zähler</translation>
    </message>
    <message>
        <source>further keys</source>
        <translation>weitere Schlüssel</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>gauge (%)</source>
        <translation>Ladeanzeige (%)</translation>
    </message>
    <message>
        <source>register (Wh)</source>
        <translation>Zählwerk (Wh)</translation>
    </message>
    <message>
        <source>second register (Wh)</source>
        <translation>zweites Zählwerk (Wh)</translation>
    </message>
    <message>
        <source>meter (W)</source>
        <translation>Zähler (W)</translation>
    </message>
    <message>
        <source>display (W)</source>
        <translation>Display (W)</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>first sample</source>
        <translation>erster Messwert</translation>
    </message>
    <message>
        <source>last sample</source>
        <translation>letzter Messwert</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>withdrawn here</source>
        <translation>hier zurückgezogen</translation>
    </message>
    <message>
        <source>withdrawn there</source>
        <translation>dort zurückgezogen</translation>
    </message>
    <message>
        <source>the same readings as a run here</source>
        <translation>dieselben Ablesungen wie ein Lauf hier</translation>
    </message>
    <message>
        <source>tells of the same time as a log here</source>
        <translation>sagt etwas über dieselbe Zeit wie ein Log hier</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n logs</source>
        <comment>%n log</comment>
        <translation>
            <numerusform>%n Log</numerusform>
            <numerusform>%n Logs</numerusform>
        </translation>
    </message>
    <message>
        <source>this is the same logbook</source>
        <translation>das ist dasselbe Logbuch</translation>
    </message>
    <message>
        <source>name another logbook to be joined with it</source>
        <translation>nennen Sie ein anderes Logbuch, das mit ihm zusammengeführt werden soll</translation>
    </message>
    <message>
        <source>no difference has the id `%1`</source>
        <translation>kein Unterschied hat die Kennung `%1`</translation>
    </message>
    <message>
        <source>use `all`, `newer` or an id that --dry-run shows</source>
        <translation>nehmen Sie `all`, `newer` oder eine Kennung, die --dry-run zeigt</translation>
    </message>
    <message>
        <source>several differences have an id that begins with `%1`</source>
        <translation>mehrere Unterschiede haben eine Kennung, die mit `%1` beginnt</translation>
    </message>
    <message>
        <source>give more of it</source>
        <translation>geben Sie mehr davon an</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Wird zusammengeführt</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>record</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>there</source>
        <translation>dort</translation>
    </message>
    <message>
        <source>comes in</source>
        <translation>kommt herein</translation>
    </message>
    <message>
        <source>stays out</source>
        <translation>bleibt draußen</translation>
    </message>
    <message>
        <source>more of it</source>
        <translation>mehr davon</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles davon</translation>
    </message>
    <message>
        <source>taken from the other</source>
        <translation>vom anderen übernommen</translation>
    </message>
    <message>
        <source>stays as here</source>
        <translation>bleibt wie hier</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message numerus="yes">
        <source>%n units</source>
        <comment>%n unit</comment>
        <translation>
            <numerusform>%n Speicher</numerusform>
            <numerusform>%n Speicher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n Zähler</numerusform>
            <numerusform>%n Zähler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n Lastliste</numerusform>
            <numerusform>%n Lastlisten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n PV sheets</source>
        <comment>%n PV sheet</comment>
        <translation>
            <numerusform>%n PV-Blatt</numerusform>
            <numerusform>%n PV-Blätter</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing came in</source>
        <translation>nichts hereingekommen</translation>
    </message>
    <message>
        <source>%1 came in</source>
        <translation>%1 hereingekommen</translation>
    </message>
    <message numerus="yes">
        <source>%n differences taken from the other logbook</source>
        <comment>%n difference taken from the other logbook</comment>
        <translation>
            <numerusform>%n Unterschied vom anderen Logbuch übernommen</numerusform>
            <numerusform>%n Unterschiede vom anderen Logbuch übernommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n differences stay as here</source>
        <comment>%n difference stays as here</comment>
        <translation>
            <numerusform>%n Unterschied bleibt wie hier</numerusform>
            <numerusform>%n Unterschiede bleiben wie hier</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>live</name>
    <message>
        <source>output off</source>
        <translation>Ausgang aus</translation>
    </message>
    <message>
        <source>output back</source>
        <translation>Ausgang wieder ein</translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>Last geändert</translation>
    </message>
    <message>
        <source>meter restarted</source>
        <translation>Zähler neu gestartet</translation>
    </message>
    <message>
        <source>register back at 0</source>
        <translation>Zählwerk wieder auf 0</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>nothing has come for %1; before, a sample came every %2</source>
        <translation>seit %1 ist nichts gekommen; davor kam ein Messwert alle %2</translation>
    </message>
    <message>
        <source>nothing came for %1</source>
        <translation>%1 lang kam nichts</translation>
    </message>
    <message>
        <source>the register went from %1 Wh to %2 Wh</source>
        <translation>das Zählwerk ging von %1 Wh auf %2 Wh</translation>
    </message>
    <message>
        <source>%1 W after %2 without power; a load that pauses by itself does this too</source>
        <translation>%1 W nach %2 ohne Leistung; das tut auch eine Last, die von selbst pausiert</translation>
    </message>
    <message>
        <source>power at %1 W for %2, before %3 W on average</source>
        <translation>Leistung %2 lang bei %1 W, davor im Mittel %3 W</translation>
    </message>
    <message>
        <source>the longest pause of the load was %1</source>
        <translation>die längste Pause der Last war %1</translation>
    </message>
    <message>
        <source>register still at %1 Wh</source>
        <translation>Zählwerk weiter bei %1 Wh</translation>
    </message>
    <message>
        <source>nothing came for %1 between the last sample with power and the first without</source>
        <translation>zwischen dem letzten Messwert mit Leistung und dem ersten ohne kam %1 lang nichts</translation>
    </message>
    <message>
        <source>the register rises again</source>
        <translation>das Zählwerk steigt wieder</translation>
    </message>
    <message>
        <source>the register has stood at %1 Wh for %2; before, it rose at least every %3</source>
        <translation>das Zählwerk steht seit %2 bei %1 Wh; davor stieg es mindestens alle %3</translation>
    </message>
    <message>
        <source>from %1 W to %2 W, steady for two minutes</source>
        <translation>von %1 W auf %2 W, zwei Minuten lang stetig</translation>
    </message>
    <message>
        <source>what is read</source>
        <translation>was gelesen wird</translation>
    </message>
    <message>
        <source>it does not say where the value stands</source>
        <translation>es sagt nicht, wo der Wert steht</translation>
    </message>
    <message>
        <source>write it like `power holding 52 as f32 in W`</source>
        <translation>schreiben Sie es wie `power holding 52 as f32 in W`</translation>
    </message>
    <message>
        <source>the place is too long</source>
        <translation>die Stelle ist zu lang</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>kürzen Sie sie</translation>
    </message>
    <message>
        <source>`%1` is no Modbus register</source>
        <translation>`%1` ist kein Modbus-Register</translation>
    </message>
    <message>
        <source>write `holding 52` or `input 52`, counted from 0 to 65535</source>
        <translation>schreiben Sie `holding 52` oder `input 52`, gezählt von 0 bis 65535</translation>
    </message>
    <message>
        <source>`%1` is no JSON pointer</source>
        <translation>`%1` ist kein JSON-Zeiger</translation>
    </message>
    <message>
        <source>write it like #/meters/0/power (RFC 6901)</source>
        <translation>schreiben Sie ihn wie #/meters/0/power (RFC 6901)</translation>
    </message>
    <message>
        <source>`%1` is no place in an answer</source>
        <translation>`%1` ist keine Stelle in einer Antwort</translation>
    </message>
    <message>
        <source>write a JSON pointer like #/meters/0/power, or `body`</source>
        <translation>schreiben Sie einen JSON-Zeiger wie #/meters/0/power oder `body`</translation>
    </message>
    <message>
        <source>a topic without wildcards is needed</source>
        <translation>ein Topic ohne Platzhalter ist nötig</translation>
    </message>
    <message>
        <source>write it like `power bench/plug/power` or `power bench/plug#/power`</source>
        <translation>schreiben Sie es wie `power bench/plug/power` oder `power bench/plug#/power`</translation>
    </message>
    <message>
        <source>`%1` is no column</source>
        <translation>`%1` ist keine Spalte</translation>
    </message>
    <message>
        <source>write `column 3`, counted from 1</source>
        <translation>schreiben Sie `column 3`, gezählt ab 1</translation>
    </message>
    <message>
        <source>`%1` is no OBIS code</source>
        <translation>`%1` ist kein OBIS-Code</translation>
    </message>
    <message>
        <source>write it like 1.8.0 or 1-0:16.7.0</source>
        <translation>schreiben Sie ihn wie 1.8.0 oder 1-0:16.7.0</translation>
    </message>
    <message>
        <source>a query holds no control characters</source>
        <translation>eine Abfrage enthält keine Steuerzeichen</translation>
    </message>
    <message>
        <source>write it like MEAS:POW?</source>
        <translation>schreiben Sie sie wie MEAS:POW?</translation>
    </message>
    <message>
        <source>`%1` is no query that only reads: its first word ends with `?`</source>
        <translation>`%1` ist keine Abfrage, die nur liest: ihr erstes Wort endet mit `?`</translation>
    </message>
    <message>
        <source>`%1` is no type of a number in registers</source>
        <translation>`%1` ist kein Zahlentyp in Registern</translation>
    </message>
    <message>
        <source>use u16, s16, u32, s32, u64, s64, f32 or f64</source>
        <translation>nehmen Sie u16, s16, u32, s32, u64, s64, f32 oder f64</translation>
    </message>
    <message>
        <source>an item is counted from 1</source>
        <translation>Werte zählen ab 1</translation>
    </message>
    <message>
        <source>write `item 2`</source>
        <translation>schreiben Sie `item 2`</translation>
    </message>
    <message>
        <source>`%1` is no unit of %2</source>
        <translation>`%1` ist keine Einheit für: %2</translation>
    </message>
    <message>
        <source>use one such as %1</source>
        <translation>nehmen Sie eine wie %1</translation>
    </message>
    <message>
        <source>`%1` is no factor</source>
        <translation>`%1` ist kein Faktor</translation>
    </message>
    <message>
        <source>write `times 0.1`</source>
        <translation>schreiben Sie `times 0.1`</translation>
    </message>
    <message>
        <source>`%1` does not begin with what the value is</source>
        <translation>`%1` beginnt nicht mit dem, was der Wert ist</translation>
    </message>
    <message>
        <source>begin with register, power, voltage, current, gauge or output</source>
        <translation>beginnen Sie mit register, power, voltage, current, gauge oder output</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>`%1` wird nicht verstanden</translation>
    </message>
    <message>
        <source>what may follow: as TYPE, item N, in UNIT, times X</source>
        <translation>was folgen darf: as TYPE, item N, in UNIT, times X</translation>
    </message>
    <message>
        <source>%1 column %2 in %3</source>
        <translation>%1 Spalte %2 in %3</translation>
    </message>
    <message>
        <source>address</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>there is no address</source>
        <translation>es gibt keine Adresse</translation>
    </message>
    <message>
        <source>enter host, URL or device file</source>
        <translation>tragen Sie Rechner, URL oder Gerätedatei ein</translation>
    </message>
    <message>
        <source>an address holds no blanks</source>
        <translation>eine Adresse enthält keine Leerzeichen</translation>
    </message>
    <message>
        <source>check it</source>
        <translation>prüfen Sie sie</translation>
    </message>
    <message>
        <source>`%1` is no device file</source>
        <translation>`%1` ist keine Gerätedatei</translation>
    </message>
    <message>
        <source>write it like /dev/ttyUSB0</source>
        <translation>schreiben Sie sie wie /dev/ttyUSB0</translation>
    </message>
    <message>
        <source>`%1` is no address of a web service</source>
        <translation>`%1` ist keine Adresse eines Webdienstes</translation>
    </message>
    <message>
        <source>write it like http://192.0.2.20/status</source>
        <translation>schreiben Sie sie wie http://192.0.2.20/status</translation>
    </message>
    <message>
        <source>a user or password does not belong into the address</source>
        <translation>Benutzer oder Passwort gehören nicht in die Adresse</translation>
    </message>
    <message>
        <source>the program asks for the password when it reads</source>
        <translation>das Programm fragt nach dem Passwort, wenn es liest</translation>
    </message>
    <message>
        <source>`%1` is no host</source>
        <translation>`%1` ist kein Rechnername</translation>
    </message>
    <message>
        <source>write it like 192.0.2.10 or meter.example.org:1502</source>
        <translation>schreiben Sie ihn wie 192.0.2.10 oder meter.example.org:1502</translation>
    </message>
    <message>
        <source>`%1` is no host with a port from 1 to 65535</source>
        <translation>`%1` ist kein Rechnername mit einem Port von 1 bis 65535</translation>
    </message>
    <message>
        <source>write it like 192.0.2.10:1502</source>
        <translation>schreiben Sie ihn wie 192.0.2.10:1502</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>`%1` is no setting of a serial line</source>
        <translation>`%1` ist keine Einstellung einer seriellen Schnittstelle</translation>
    </message>
    <message>
        <source>write it like 9600 8N1 or 300 7E1</source>
        <translation>schreiben Sie sie wie 9600 8N1 oder 300 7E1</translation>
    </message>
    <message>
        <source>user</source>
        <translation>Benutzer</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>a station is a number from 0 to 255</source>
        <translation>eine Station ist eine Zahl von 0 bis 255</translation>
    </message>
    <message>
        <source>see the setting of the meter</source>
        <translation>sehen Sie in der Einstellung des Zählers nach</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>Takt</translation>
    </message>
    <message>
        <source>questions come between 0.1 and 3600 s apart</source>
        <translation>Abfragen kommen im Abstand von 0,1 bis 3600 s</translation>
    </message>
    <message>
        <source>enter seconds</source>
        <translation>tragen Sie Sekunden ein</translation>
    </message>
    <message>
        <source>only Modbus has SunSpec models</source>
        <translation>nur Modbus hat SunSpec-Modelle</translation>
    </message>
    <message>
        <source>name fields</source>
        <translation>nennen Sie Felder</translation>
    </message>
    <message>
        <source>nothing is read</source>
        <translation>nichts wird gelesen</translation>
    </message>
    <message>
        <source>name a field, such as `power …`</source>
        <translation>nennen Sie ein Feld, etwa `power …`</translation>
    </message>
    <message>
        <source>these are too many fields</source>
        <translation>das sind zu viele Felder</translation>
    </message>
    <message>
        <source>name at most 64</source>
        <translation>nennen Sie höchstens 64</translation>
    </message>
    <message>
        <source>%1 is named twice</source>
        <translation>%1 ist zweimal genannt</translation>
    </message>
    <message>
        <source>leave one of them</source>
        <translation>lassen Sie eines davon stehen</translation>
    </message>
    <message>
        <source>what is read, line %1</source>
        <translation>was gelesen wird, Zeile %1</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>the description of a source is not understood</source>
        <translation>die Beschreibung einer Quelle wird nicht verstanden</translation>
    </message>
    <message>
        <source>write it as `ullage watch --help` says, or set it up anew</source>
        <translation>schreiben Sie sie, wie `ullage watch --help` sagt, oder richten Sie sie neu ein</translation>
    </message>
    <message>
        <source>this kind of source is not known</source>
        <translation>diese Art von Quelle ist nicht bekannt</translation>
    </message>
    <message>
        <source>use one that `ullage watch --help` lists</source>
        <translation>nehmen Sie eine, die `ullage watch --help` nennt</translation>
    </message>
    <message>
        <source>`%1` is no part of a source</source>
        <translation>`%1` ist kein Teil einer Quelle</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>lassen Sie es weg</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>der Lauf ist beendet</translation>
    </message>
    <message>
        <source>start a new run, or set it to still running</source>
        <translation>starten Sie einen neuen Lauf oder stellen Sie ihn auf läuft noch</translation>
    </message>
    <message>
        <source>%1, from the samples of the live source: %2</source>
        <translation>%1, aus den Messwerten der Live-Quelle: %2</translation>
    </message>
</context>
<context>
    <name>measure</name>
    <message>
        <source>there is no register before that to start from</source>
        <translation>es gibt davor kein Zählwerk, von dem auszugehen wäre</translation>
    </message>
    <message>
        <source>%1 is less than the %2 Wh read at %3</source>
        <translation>%1 ist weniger als die %2 Wh, um %3 abgelesen</translation>
    </message>
    <message>
        <source>type what it showed just before the reset</source>
        <translation>tippen Sie, was es kurz vor dem Reset zeigte</translation>
    </message>
    <message>
        <source>%1 is more than this unit can be believed to deliver since %2</source>
        <translation>%1 ist mehr, als diesem Speicher seit %2 zuzutrauen ist</translation>
    </message>
    <message>
        <source>just before the reset; its time by the load</source>
        <translation>kurz vor dem Reset; die Zeit nach der Last</translation>
    </message>
    <message>
        <source>no interval: the error limit of the meter is not stated</source>
        <translation>kein Intervall: die Fehlergrenze des Zählers ist nicht angegeben</translation>
    </message>
    <message>
        <source>no interval: the error limit of meter %1 is not stated</source>
        <translation>kein Intervall: die Fehlergrenze des Zählers %1 ist nicht angegeben</translation>
    </message>
    <message>
        <source>no interval: the log of a meter that is not stated stands in, so its error limit is not known</source>
        <translation>kein Intervall: das Log eines nicht angegebenen Zählers springt ein, daher ist dessen Fehlergrenze unbekannt</translation>
    </message>
    <message>
        <source>no interval: no meter is stated, so its error limit is not known</source>
        <translation>kein Intervall: kein Zähler ist angegeben, daher ist seine Fehlergrenze unbekannt</translation>
    </message>
    <message>
        <source>no interval: another meter took over and is not stated, so its error limit is not known; name it as the second meter of the run</source>
        <translation>kein Intervall: ein anderer Zähler übernahm und ist nicht angegeben, daher ist seine Fehlergrenze unbekannt; nennen Sie ihn als zweiten Zähler des Laufs</translation>
    </message>
    <message>
        <source>meter gain, limit ±%1 %</source>
        <translation>Steigungsfehler des Zählers, Grenze ±%1 %</translation>
    </message>
    <message>
        <source>meter gain of %2, limit ±%1 %</source>
        <translation>Steigungsfehler von %2, Grenze ±%1 %</translation>
    </message>
    <message>
        <source>meter gain by its certificate, u = %1 %</source>
        <translation>Steigungsfehler des Zählers nach seinem Kalibrierschein, u = %1 %</translation>
    </message>
    <message>
        <source>meter gain of %2 by its certificate, u = %1 %</source>
        <translation>Steigungsfehler von %2 nach seinem Kalibrierschein, u = %1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n short gaps without register (%1), up to %2 Wh</source>
        <comment>%n short gap without register (%1), up to %2 Wh</comment>
        <translation>
            <numerusform>%n kurze Lücke ohne Zählwerk (%1), bis zu %2 Wh</numerusform>
            <numerusform>%n kurze Lücken ohne Zählwerk (%1), bis zu %2 Wh</numerusform>
        </translation>
    </message>
    <message>
        <source>register step %1 Wh</source>
        <translation>Zählwerksschritt %1 Wh</translation>
    </message>
    <message>
        <source>register step %1 Wh (found from the readings)</source>
        <translation>Zählwerksschritt %1 Wh (aus den Ablesungen gefunden)</translation>
    </message>
    <message>
        <source>register step %1 Wh (as the readings show)</source>
        <translation>Zählwerksschritt %1 Wh (wie die Ablesungen zeigen)</translation>
    </message>
    <message numerus="yes">
        <source>two readings in each of %n stretches</source>
        <comment>two readings in each of %n stretch</comment>
        <translation>
            <numerusform>zwei Ablesungen in %n Abschnitt</numerusform>
            <numerusform>je zwei Ablesungen in %n Abschnitten</numerusform>
        </translation>
    </message>
    <message>
        <source>two readings</source>
        <translation>zwei Ablesungen</translation>
    </message>
    <message>
        <source>read once after a start at 0, rounding or truncation unknown</source>
        <translation>einmal abgelesen nach Start bei 0, Runden oder Abschneiden unbekannt</translation>
    </message>
    <message>
        <source>power step %1 W of the log, all the time alike, rounding or truncation unknown</source>
        <translation>Leistungsschritt %1 W des Logs, die ganze Zeit gleich, Runden oder Abschneiden unbekannt</translation>
    </message>
    <message>
        <source>power between the samples of the log</source>
        <translation>Leistung zwischen den Messwerten des Logs</translation>
    </message>
    <message>
        <source>noted moments of start and end against the log&apos;s clock, interpolated between its samples</source>
        <translation>notierte Zeitpunkte von Start und Ende gegen die Uhr des Logs, interpoliert zwischen dessen Messwerten</translation>
    </message>
    <message>
        <source>log of another meter standing in for %1, its ends against both clocks</source>
        <translation>Log eines anderen Zählers anstelle von %1, seine Enden gegen beide Uhren</translation>
    </message>
    <message>
        <source>log of %2 standing in for %1, its ends against both clocks</source>
        <translation>Log von %2 anstelle von %1, seine Enden gegen beide Uhren</translation>
    </message>
    <message>
        <source>95 % of a rectangular gain of ±%1 Wh convolved with an independent part of %2 Wh standard uncertainty</source>
        <translation>95 % eines rechteckverteilten Steigungsfehlers von ±%1 Wh, gefaltet mit einem unabhängigen Anteil von %2 Wh Standardunsicherheit</translation>
    </message>
    <message>
        <source>95 % of a rectangular gain of ±%1 Wh convolved with a normal part of %2 Wh standard uncertainty</source>
        <translation>95 % eines rechteckverteilten Steigungsfehlers von ±%1 Wh, gefaltet mit einem normalverteilten Anteil von %2 Wh Standardunsicherheit</translation>
    </message>
    <message>
        <source>95 % of a normal part of %1 Wh standard uncertainty</source>
        <translation>95 % eines normalverteilten Anteils von %1 Wh Standardunsicherheit</translation>
    </message>
    <message>
        <source>and %1 Wh for what may have flowed while the register was not read</source>
        <translation>und %1 Wh für das, was geflossen sein kann, während das Zählwerk nicht abgelesen wurde</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rechteckverteilt</translation>
    </message>
    <message>
        <source>rectangular, one-sided</source>
        <translation>rechteckverteilt, einseitig</translation>
    </message>
    <message>
        <source>triangular</source>
        <translation>dreieckverteilt</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normalverteilt</translation>
    </message>
    <message>
        <source>common to all readings of this meter</source>
        <translation>allen Ablesungen dieses Zählers gemeinsam</translation>
    </message>
    <message>
        <source>independent</source>
        <translation>unabhängig</translation>
    </message>
    <message>
        <source>combined standard uncertainty %1 Wh</source>
        <translation>kombinierte Standardunsicherheit %1 Wh</translation>
    </message>
    <message>
        <source>combined standard uncertainty %1 Wh, k = %2, effective degrees of freedom %3</source>
        <translation>kombinierte Standardunsicherheit %1 Wh, k = %2, effektive Freiheitsgrade %3</translation>
    </message>
    <message>
        <source>the power in the log ceased at %1</source>
        <translation>die Leistung im Log hörte um %1 auf</translation>
    </message>
    <message>
        <source>the register of the log last rose at %1</source>
        <translation>das Zählwerk des Logs stieg zuletzt um %1</translation>
    </message>
    <message>
        <source>by the %1 that a steady load of %2 W took after the reading at %3</source>
        <translation>nach den %1, die eine stetige Last von %2 W nach der Ablesung um %3 brauchte</translation>
    </message>
    <message>
        <source>noted later than that</source>
        <translation>später notiert als das</translation>
    </message>
    <message>
        <source>noted as it happened</source>
        <translation>notiert, als es geschah</translation>
    </message>
    <message>
        <source>between the last row of the log with the output on and the moment it was found off</source>
        <translation>zwischen der letzten Zeile des Logs mit Ausgang ein und dem Moment, in dem er aus vorgefunden wurde</translation>
    </message>
    <message>
        <source>between the last reading with the output on and the moment it was found off</source>
        <translation>zwischen der letzten Ablesung mit Ausgang ein und dem Moment, in dem er aus vorgefunden wurde</translation>
    </message>
    <message>
        <source>noticed within %1 min</source>
        <translation>innerhalb von %1 min bemerkt</translation>
    </message>
    <message>
        <source>noticed within %1 min, as is taken where the run does not say</source>
        <translation>innerhalb von %1 min bemerkt, wie angenommen, wo der Lauf nichts sagt</translation>
    </message>
    <message>
        <source>the output was found off; %1</source>
        <translation>der Ausgang wurde aus vorgefunden; %1</translation>
    </message>
    <message>
        <source>fewer than two moments are noted</source>
        <translation>weniger als zwei Zeitpunkte sind notiert</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>bisher</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>weniger als zwei Ablesungen des Zählwerks</translation>
    </message>
    <message>
        <source>integrated power of the log</source>
        <translation>integrierte Leistung des Logs</translation>
    </message>
    <message>
        <source>by the log&apos;s register</source>
        <translation>nach dem Zählwerk des Logs</translation>
    </message>
    <message>
        <source>no time passed between the register readings</source>
        <translation>zwischen den Ablesungen des Zählwerks verging keine Zeit</translation>
    </message>
    <message>
        <source>the moment of the cut-off is a bracket</source>
        <translation>der Zeitpunkt der Abschaltung ist nur eingegrenzt</translation>
    </message>
    <message>
        <source>a meter power of %1 W is more than this unit can be believed to deliver (%2 W)</source>
        <translation>eine Leistung am Zähler von %1 W ist mehr, als diesem Speicher zuzutrauen ist (%2 W)</translation>
    </message>
    <message>
        <source>a display power of %1 W is more than this unit can be believed to deliver (%2 W)</source>
        <translation>eine Leistung auf dem Display von %1 W ist mehr, als diesem Speicher zuzutrauen ist (%2 W)</translation>
    </message>
    <message>
        <source>this run has ended (%1)</source>
        <translation>dieser Lauf ist beendet (%1)</translation>
    </message>
    <message>
        <source>%1 is %2 ahead of now</source>
        <translation>%1 liegt %2 in der Zukunft</translation>
    </message>
    <message>
        <source>%1 on %2 is before the last reading (%3 on %4)</source>
        <translation>%1 am %2 liegt vor der letzten Ablesung (%3 am %4)</translation>
    </message>
    <message>
        <source>the gauge fell from %1 % at %2 to %3 %</source>
        <translation>die Ladeanzeige fiel von %1 % um %2 auf %3 %</translation>
    </message>
    <message>
        <source>the gauge rose from %1 % at %2 to %3 %</source>
        <translation>die Ladeanzeige stieg von %1 % um %2 auf %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows %2 %, less than %3 %</source>
        <translation>die spätere Ablesung um %1 zeigt %2 %, weniger als %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows %2 %, more than %3 %</source>
        <translation>die spätere Ablesung um %1 zeigt %2 %, mehr als %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows a lower register (%2 Wh)</source>
        <translation>die spätere Ablesung um %1 zeigt einen niedrigeren Zählwerksstand (%2 Wh)</translation>
    </message>
    <message>
        <source>the register fell from %1 Wh at %2 to %3 Wh</source>
        <translation>das Zählwerk fiel von %1 Wh um %2 auf %3 Wh</translation>
    </message>
    <message>
        <source>%1 Wh since %2 would be about %3 W, more than this unit can be believed to deliver (%4 W)</source>
        <translation>%1 Wh seit %2 wären etwa %3 W, mehr, als diesem Speicher zuzutrauen ist (%4 W)</translation>
    </message>
    <message>
        <source>%1 Wh since %2 would be about %3 W, where it was about %4 W before</source>
        <translation>%1 Wh seit %2 wären etwa %3 W, wo es davor etwa %4 W waren</translation>
    </message>
    <message>
        <source>in the log: %1</source>
        <translation>im Log: %1</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n gaps of %1 together, in which up to %2 may have flowed at the highest power of %3 W</source>
        <comment>the log has %n gap of %1 together, in which up to %2 may have flowed at the highest power of %3 W</comment>
        <translation>
            <numerusform>das Log hat %n Lücke von zusammen %1, in der bei der höchsten Leistung von %3 W bis zu %2 geflossen sein können</numerusform>
            <numerusform>das Log hat %n Lücken von zusammen %1, in denen bei der höchsten Leistung von %3 W bis zu %2 geflossen sein können</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The log of the gauge has %n samples.</source>
        <comment>The log of the gauge has %n sample.</comment>
        <translation>
            <numerusform>Das Log der Ladeanzeige hat %n Messwert.</numerusform>
            <numerusform>Das Log der Ladeanzeige hat %n Messwerte.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop-outs were left out.</source>
        <comment>%n drop-out was left out.</comment>
        <translation>
            <numerusform>%n Aussetzer wurde ausgelassen.</numerusform>
            <numerusform>%n Aussetzer wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>It flickers by more than a step: medians of five minutes and more were taken.</source>
        <translation>Sie flackert um mehr als einen Schritt: Mediane über fünf Minuten und mehr wurden genommen.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n gauge readings noted by hand agrees with it.</source>
        <comment>%1 of %n gauge reading noted by hand agrees with it.</comment>
        <translation>
            <numerusform>%1 von %n von Hand notierten Ablesung der Ladeanzeige stimmt damit überein.</numerusform>
            <numerusform>%1 von %n von Hand notierten Ablesungen der Ladeanzeige stimmt damit überein.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n gauge readings noted by hand agree with it.</source>
        <comment>%1 of %n gauge reading noted by hand agree with it.</comment>
        <translation>
            <numerusform>%1 von %n von Hand notierten Ablesung der Ladeanzeige stimmen damit überein.</numerusform>
            <numerusform>%1 von %n von Hand notierten Ablesungen der Ladeanzeige stimmen damit überein.</numerusform>
        </translation>
    </message>
    <message>
        <source>Most do not: its clock is off, or it is the log of something else. It was not used.</source>
        <translation>Die meisten stimmen nicht: seine Uhr geht falsch, oder es ist das Log von etwas anderem. Es wurde nicht benutzt.</translation>
    </message>
    <message>
        <source>None of it could be paired with metered energy.</source>
        <translation>Nichts davon ließ sich mit gemessener Energie paaren.</translation>
    </message>
    <message numerus="yes">
        <source>%n steps of the gauge are timed by it, its clock known within %1 s.</source>
        <comment>%n step of the gauge is timed by it, its clock known within %1 s.</comment>
        <translation>
            <numerusform>%n Anzeigeschritt ist damit zeitlich bestimmt, seine Uhr auf %1 s bekannt.</numerusform>
            <numerusform>%n Anzeigeschritte sind damit zeitlich bestimmt, seine Uhr auf %1 s bekannt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps of the gauge are timed by it.</source>
        <comment>%n step of the gauge is timed by it.</comment>
        <translation>
            <numerusform>%n Anzeigeschritt ist damit zeitlich bestimmt.</numerusform>
            <numerusform>%n Anzeigeschritte sind damit zeitlich bestimmt.</numerusform>
        </translation>
    </message>
    <message>
        <source>the log begins after the start (%1, about %2 at the mean load)</source>
        <translation>das Log beginnt nach dem Start (%1, etwa %2 bei der mittleren Last)</translation>
    </message>
    <message>
        <source>the log ends before the end of the run (%1, about %2 at the mean load)</source>
        <translation>das Log endet vor dem Ende des Laufs (%1, etwa %2 bei der mittleren Last)</translation>
    </message>
    <message>
        <source>%1 Wh are counted for it, which may be 0 to %2</source>
        <translation>%1 Wh werden dafür gezählt, es können 0 bis %2 sein</translation>
    </message>
    <message>
        <source>at most %1 are missing</source>
        <translation>höchstens %1 fehlen</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % less</source>
        <translation>Seine integrierte Leistung ergibt %1 ± %2 Wh, wo sein Zählwerk %3 Wh sagt: %4 % weniger</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % more</source>
        <translation>Seine integrierte Leistung ergibt %1 ± %2 Wh, wo sein Zählwerk %3 Wh sagt: %4 % mehr</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % less</source>
        <translation>Seine integrierte Leistung ergibt %1 ± %2 Wh, wo das von Hand notierte Zählwerk %3 Wh sagt: %4 % weniger</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % more</source>
        <translation>Seine integrierte Leistung ergibt %1 ± %2 Wh, wo das von Hand notierte Zählwerk %3 Wh sagt: %4 % mehr</translation>
    </message>
    <message>
        <source>%1, which steps and sampling explain.</source>
        <translation>%1, was Schritte und Abtastung erklären.</translation>
    </message>
    <message>
        <source>%1, more than steps and sampling explain; the meter&apos;s power and its counting differ.</source>
        <translation>%1, mehr, als Schritte und Abtastung erklären; Leistung und Zählung des Zählers weichen voneinander ab.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was logged for %n stretches, the longest from %1; the register counts what flowed meanwhile.</source>
        <comment>Nothing was logged for %n stretch, the longest from %1; the register counts what flowed meanwhile.</comment>
        <translation>
            <numerusform>In %n Abschnitt wurde nichts aufgezeichnet, der längste ab %1; das Zählwerk zählt, was währenddessen floss.</numerusform>
            <numerusform>In %n Abschnitten wurde nichts aufgezeichnet, der längste ab %1; das Zählwerk zählt, was währenddessen floss.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was logged from %1; the register counts what flowed meanwhile.</source>
        <translation>Ab %1 wurde nichts aufgezeichnet; das Zählwerk zählt, was währenddessen floss.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n registers noted by hand agrees with the log.</source>
        <comment>%1 of %n register noted by hand agrees with the log.</comment>
        <translation>
            <numerusform>%1 von %n von Hand notiertem Zählwerksstand stimmt mit dem Log überein.</numerusform>
            <numerusform>%1 von %n von Hand notierten Zählwerksständen stimmt mit dem Log überein.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n registers noted by hand agree with the log.</source>
        <comment>%1 of %n register noted by hand agree with the log.</comment>
        <translation>
            <numerusform>%1 von %n von Hand notiertem Zählwerksstand stimmen mit dem Log überein.</numerusform>
            <numerusform>%1 von %n von Hand notierten Zählwerksständen stimmen mit dem Log überein.</numerusform>
        </translation>
    </message>
    <message>
        <source>Most do not: the clock of the log is off, or it is the log of something else. It was not used.</source>
        <translation>Die meisten stimmen nicht: die Uhr des Logs geht falsch, oder es ist das Log von etwas anderem. Es wurde nicht benutzt.</translation>
    </message>
    <message>
        <source>%1 Wh was noted, the log says %2; the log was used</source>
        <translation>%1 Wh wurden notiert, das Log sagt %2; das Log wurde benutzt</translation>
    </message>
    <message>
        <source>The log is of another meter than the run names, so that delivered energy is based on registers noted by hand; name the log&apos;s meter as that of the run to use it.</source>
        <translation>Das Log ist von einem anderen Zähler, als der Lauf nennt, daher beruht die abgegebene Energie auf von Hand notierten Zählwerksständen; nennen Sie den Zähler des Logs als den des Laufs, um es zu benutzen.</translation>
    </message>
    <message>
        <source>Delivered energy is the integrated power of the log.</source>
        <translation>Die abgegebene Energie ist die integrierte Leistung des Logs.</translation>
    </message>
    <message>
        <source>Delivered energy is that of the log&apos;s register at the noted moments.</source>
        <translation>Die abgegebene Energie ist die des Zählwerks im Log zu den notierten Zeitpunkten.</translation>
    </message>
    <message>
        <source>Delivered energy is based on registers noted by hand.</source>
        <translation>Die abgegebene Energie beruht auf von Hand notierten Zählwerksständen.</translation>
    </message>
    <message>
        <source>From %1 to %2 it says nothing, and the log of another meter stands in with %3.</source>
        <translation>Von %1 bis %2 sagt es nichts, und das Log eines anderen Zählers springt mit %3 ein.</translation>
    </message>
    <message>
        <source>From %1 to %2 it says nothing, and the log of %4 stands in with %3.</source>
        <translation>Von %1 bis %2 sagt es nichts, und das Log von %4 springt mit %3 ein.</translation>
    </message>
    <message numerus="yes">
        <source>%n values of its register fitted nothing and were left out.</source>
        <comment>%n value of its register fitted nothing and was left out.</comment>
        <translation>
            <numerusform>%n Wert seines Zählwerks passte zu nichts und wurde ausgelassen.</numerusform>
            <numerusform>%n Werte seines Zählwerks passten zu nichts und wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>No run uses this meter yet.</source>
        <translation>Noch kein Lauf benutzt diesen Zähler.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy did not move, but their intervals changed.</source>
        <comment>%n run uses this meter; its delivered energy did not move, but its interval changed.</comment>
        <translation>
            <numerusform>%n Lauf benutzt diesen Zähler; seine abgegebene Energie hat sich nicht verschoben, aber sein Intervall hat sich geändert.</numerusform>
            <numerusform>%n Läufe benutzen diesen Zähler; ihre abgegebene Energie hat sich nicht verschoben, aber ihre Intervalle haben sich geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy did not move.</source>
        <comment>%n run uses this meter; its delivered energy did not move.</comment>
        <translation>
            <numerusform>%n Lauf benutzt diesen Zähler; seine abgegebene Energie hat sich nicht verschoben.</numerusform>
            <numerusform>%n Läufe benutzen diesen Zähler; ihre abgegebene Energie hat sich nicht verschoben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy moved by %1, and their intervals changed.</source>
        <comment>%n run uses this meter; its delivered energy moved by %1, and its interval changed.</comment>
        <translation>
            <numerusform>%n Lauf benutzt diesen Zähler; seine abgegebene Energie hat sich um %1 verschoben, und sein Intervall hat sich geändert.</numerusform>
            <numerusform>%n Läufe benutzen diesen Zähler; ihre abgegebene Energie hat sich um %1 verschoben, und ihre Intervalle haben sich geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy moved by %1.</source>
        <comment>%n run uses this meter; its delivered energy moved by %1.</comment>
        <translation>
            <numerusform>%n Lauf benutzt diesen Zähler; seine abgegebene Energie hat sich um %1 verschoben.</numerusform>
            <numerusform>%n Läufe benutzen diesen Zähler; ihre abgegebene Energie hat sich um %1 verschoben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and more</source>
        <translation>%1 und mehr</translation>
    </message>
    <message numerus="yes">
        <source>Meter %1 showed a power outside its range of %2 in %n readings.</source>
        <comment>Meter %1 showed a power outside its range of %2 in %n reading.</comment>
        <translation>
            <numerusform>Zähler %1 zeigte in %n Ablesung eine Leistung außerhalb seines Bereichs von %2.</numerusform>
            <numerusform>Zähler %1 zeigte in %n Ablesungen eine Leistung außerhalb seines Bereichs von %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Meter %1: all energy flowed outside its range of %2 (loads were %3), where its error is not limited.</source>
        <translation>Zähler %1: alle Energie floss außerhalb seines Bereichs von %2 (die Lasten waren %3), wo sein Fehler nicht begrenzt ist.</translation>
    </message>
    <message>
        <source>Meter %1: %4 of %5 flowed outside its range of %2 (loads were %3), where its error is not limited.</source>
        <translation>Zähler %1: %4 von %5 flossen außerhalb seines Bereichs von %2 (die Lasten waren %3), wo sein Fehler nicht begrenzt ist.</translation>
    </message>
    <message>
        <source>Meter %1: all energy flowed outside its certificate&apos;s loads of %2 to %3 (loads were %4); the nearest point was taken.</source>
        <translation>Zähler %1: alle Energie floss außerhalb der Lasten seines Kalibrierscheins von %2 bis %3 (die Lasten waren %4); der nächste Punkt wurde genommen.</translation>
    </message>
    <message>
        <source>Meter %1: %5 of %6 flowed outside its certificate&apos;s loads of %2 to %3 (loads were %4); the nearest point was taken.</source>
        <translation>Zähler %1: %5 von %6 flossen außerhalb der Lasten seines Kalibrierscheins von %2 bis %3 (die Lasten waren %4); der nächste Punkt wurde genommen.</translation>
    </message>
    <message>
        <source>The certificate of meter %1 was valid until %2, before this run.</source>
        <translation>Der Kalibrierschein von Zähler %1 war bis %2 gültig, vor diesem Lauf.</translation>
    </message>
    <message>
        <source>drains of a unit repeat within</source>
        <translation>Entladungen eines Speichers wiederholen sich innerhalb</translation>
    </message>
    <message>
        <source>a battery holds of its label at most</source>
        <translation>eine Batterie enthält von ihrer Nennenergie höchstens</translation>
    </message>
    <message>
        <source>quadratic loss at the rated output at most</source>
        <translation>quadratischer Verlust bei Nennleistung höchstens</translation>
    </message>
    <message>
        <source>a moment is noted within</source>
        <translation>ein Zeitpunkt ist notiert innerhalb</translation>
    </message>
    <message>
        <source>a claim is decided by the value alone</source>
        <translation>über eine Angabe entscheidet der Wert allein</translation>
    </message>
    <message>
        <source>the method has no such figure</source>
        <translation>die Methode hat keinen solchen Wert</translation>
    </message>
    <message>
        <source>this is not between %1 and %2</source>
        <translation>das liegt nicht zwischen %1 und %2</translation>
    </message>
    <message>
        <source>correct it, or leave it empty for the usual %1</source>
        <translation>korrigieren Sie es oder lassen Sie es leer für das übliche %1</translation>
    </message>
    <message>
        <source>entered after readings of later moments; put in its place by its time</source>
        <translation>nach Ablesungen späterer Zeitpunkte eingetragen; nach seiner Zeit eingeordnet</translation>
    </message>
    <message>
        <source>%1 fits neither its neighbours nor a reset; left out as a typing error</source>
        <translation>%1 passt weder zu seinen Nachbarn noch zu einem Reset; als Tippfehler ausgelassen</translation>
    </message>
    <message>
        <source>energy between %1 and %2 (about %3 Wh at the usual load) is not in the register</source>
        <translation>Energie zwischen %1 und %2 (etwa %3 Wh bei der üblichen Last) ist nicht im Zählwerk</translation>
    </message>
    <message>
        <source>the register fell from %1 to %2, which its span of %3 explains</source>
        <translation>das Zählwerk fiel von %1 auf %2, was sein Umfang von %3 erklärt</translation>
    </message>
    <message>
        <source>the register fell from %1 to %2 without a mark; read as a reset, since the load after it is believable</source>
        <translation>das Zählwerk fiel ohne Marke von %1 auf %2; als Reset gelesen, da die Last danach glaubhaft ist</translation>
    </message>
    <message>
        <source>the meter was zeroed by %1 and had counted %2 since</source>
        <translation>der Zähler wurde bis %1 genullt und hatte seither %2 gezählt</translation>
    </message>
    <message>
        <source>the meter was zeroed at %1</source>
        <translation>der Zähler wurde um %1 genullt</translation>
    </message>
    <message>
        <source>another meter took over at %1; its register starts at %2</source>
        <translation>ein anderer Zähler übernahm um %1; sein Zählwerk beginnt bei %2</translation>
    </message>
    <message>
        <source>energy before the reset between %1 and %2 (about %3 Wh at the usual load) is not in the register</source>
        <translation>Energie vor dem Reset zwischen %1 und %2 (etwa %3 Wh bei der üblichen Last) ist nicht im Zählwerk</translation>
    </message>
    <message>
        <source>%1 was read at %2, after the cut-off; taken as what the register showed then, as no reading of it stands there</source>
        <translation>%1 wurde um %2 abgelesen, nach der Abschaltung; gilt als Stand des Zählwerks bei ihr, da dort keine Ablesung von ihm steht</translation>
    </message>
    <message>
        <source>the register went on to %1 by %2, after the cut-off; nothing after the end counts</source>
        <translation>das Zählwerk lief bis %2 weiter auf %1, nach der Abschaltung; nichts nach dem Ende zählt</translation>
    </message>
    <message>
        <source>the register was first read after the start (%1, about %2 at the usual load)</source>
        <translation>das Zählwerk wurde erst nach dem Start abgelesen (%1, etwa %2 bei der üblichen Last)</translation>
    </message>
    <message>
        <source>the register was last read before the end (%1, about %2 at the usual load)</source>
        <translation>das Zählwerk wurde zuletzt vor dem Ende abgelesen (%1, etwa %2 bei der üblichen Last)</translation>
    </message>
    <message>
        <source>meter zeroed</source>
        <translation>Zähler genullt</translation>
    </message>
    <message>
        <source>meter swapped</source>
        <translation>Zähler getauscht</translation>
    </message>
    <message>
        <source>rollover</source>
        <translation>Überlauf</translation>
    </message>
    <message>
        <source>reset without a mark</source>
        <translation>Reset ohne Marke</translation>
    </message>
    <message>
        <source>typing error</source>
        <translation>Tippfehler</translation>
    </message>
    <message>
        <source>entered twice</source>
        <translation>doppelt eingetragen</translation>
    </message>
    <message>
        <source>entered late</source>
        <translation>spät eingetragen</translation>
    </message>
    <message>
        <source>differs from the log</source>
        <translation>weicht vom Log ab</translation>
    </message>
    <message>
        <source>after the end</source>
        <translation>nach dem Ende</translation>
    </message>
    <message>
        <source>the same moment and register were entered twice; counted once</source>
        <translation>derselbe Zeitpunkt und Zählwerksstand wurden zweimal eingetragen; einmal gezählt</translation>
    </message>
    <message>
        <source>accepted: %1</source>
        <translation>angenommen: %1</translation>
    </message>
    <message>
        <source>the gauge fell by only %1 points; about %2 more would resolve ±5 %</source>
        <translation>die Ladeanzeige fiel nur um %1 Prozentpunkte; etwa %2 mehr würden ±5 % auflösen</translation>
    </message>
    <message>
        <source>from full to cut-off, at this load</source>
        <translation>von voll bis Abschaltung, bei dieser Last</translation>
    </message>
    <message>
        <source>found off, the register held its value</source>
        <translation>aus vorgefunden, das Zählwerk behielt seinen Stand</translation>
    </message>
    <message>
        <source>projected it would be %1</source>
        <translation>hochgerechnet wären es %1</translation>
    </message>
    <message>
        <source>whether it started full is not stated</source>
        <translation>ob er voll startete, ist nicht angegeben</translation>
    </message>
    <message>
        <source>it did not start full</source>
        <translation>er startete nicht voll</translation>
    </message>
    <message>
        <source>the run is still open</source>
        <translation>der Lauf ist noch offen</translation>
    </message>
    <message>
        <source>stopped before the cut-off</source>
        <translation>vor der Abschaltung beendet</translation>
    </message>
    <message>
        <source>the gauge rose by %1 points on the way, so that from what was delivered on all may be</source>
        <translation>die Ladeanzeige stieg unterwegs um %1 Prozentpunkte, daher ist alles ab dem möglich, was abgegeben wurde</translation>
    </message>
    <message>
        <source>a %1 run does not measure it</source>
        <translation>ein Lauf „%1“ misst es nicht</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>fewer than two gauge readings within the register&apos;s readings</source>
        <translation>weniger als zwei Ablesungen der Ladeanzeige innerhalb der Ablesungen des Zählwerks</translation>
    </message>
    <message>
        <source>assumes an accurate gauge from %1 to %2</source>
        <translation>setzt eine genaue Ladeanzeige von %1 bis %2 voraus</translation>
    </message>
    <message>
        <source>a charge run delivers nothing</source>
        <translation>eine Ladung gibt nichts ab</translation>
    </message>
    <message>
        <source>end to end, from %1 to %2</source>
        <translation>von Ende zu Ende, von %1 bis %2</translation>
    </message>
</context>
<context>
    <name>meters_in_series</name>
    <message>
        <source>At %1 W %2 says %3 of what %4 says (± %5)</source>
        <translation>Bei %1 W sagt %2 %3 von dem, was %4 sagt (± %5)</translation>
    </message>
    <message>
        <source>%1; not every error limit is stated, so this cannot be held against them.</source>
        <translation>%1; nicht jede Fehlergrenze ist angegeben, daher lässt sich dies nicht an ihnen messen.</translation>
    </message>
    <message>
        <source>%1; their limits of ± %2 and ± %3 allow no more than %4 between them: at least one meter is outside its limit.</source>
        <translation>%1; ihre Grenzen von ± %2 und ± %3 lassen zwischen ihnen höchstens %4 zu: mindestens ein Zähler liegt außerhalb seiner Grenze.</translation>
    </message>
    <message>
        <source>%1, as their limits allow.</source>
        <translation>%1, wie ihre Grenzen es zulassen.</translation>
    </message>
    <message>
        <source>%1, as their limits allow; if both keep to them, the true energy lies %2 to %3 off what %4 says and %5 to %6 off what %7 says.</source>
        <translation>%1, wie ihre Grenzen es zulassen; halten beide sie ein, liegt die wahre Energie %2 bis %3 neben dem, was %4 sagt, und %5 bis %6 neben dem, was %7 sagt.</translation>
    </message>
    <message numerus="yes">
        <source>%n stretches with both meters read</source>
        <comment>%n stretch with both meters read</comment>
        <translation>
            <numerusform>%n Abschnitt mit Ablesung beider Zähler</numerusform>
            <numerusform>%n Abschnitte mit Ablesung beider Zähler</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>model</name>
    <message>
        <source>%1 cycles</source>
        <translation>%1 Zyklen</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 a</translation>
    </message>
    <message>
        <source>give %1, or leave it empty</source>
        <translation>geben Sie %1 an oder lassen Sie es leer</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>byte %1 of the text is no UTF-8 character</source>
        <translation>Byte %1 des Textes ist kein UTF-8-Zeichen</translation>
    </message>
    <message>
        <source>type it anew, or save the file as UTF-8</source>
        <translation>tippen Sie es neu oder speichern Sie die Datei als UTF-8</translation>
    </message>
    <message numerus="yes">
        <source>the text has %n characters</source>
        <comment>the text has %n character</comment>
        <translation>
            <numerusform>der Text hat %n Zeichen</numerusform>
            <numerusform>der Text hat %n Zeichen</numerusform>
        </translation>
    </message>
    <message>
        <source>give at most %1</source>
        <translation>geben Sie höchstens %1 an</translation>
    </message>
    <message>
        <source>the value is no finite number</source>
        <translation>der Wert ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>`%1` is no date</source>
        <translation>`%1` ist kein Datum</translation>
    </message>
    <message>
        <source>give a date like 2027-05-14, or leave it empty</source>
        <translation>geben Sie ein Datum wie 2027-05-14 an oder lassen Sie es leer</translation>
    </message>
    <message>
        <source>give a date in the years 1900 to 2199</source>
        <translation>geben Sie ein Datum in den Jahren 1900 bis 2199 an</translation>
    </message>
    <message>
        <source>keep at most %1</source>
        <translation>behalten Sie höchstens %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>the appliance has no name</source>
        <translation>der Verbraucher hat keinen Namen</translation>
    </message>
    <message>
        <source>give it a name</source>
        <translation>geben Sie einen Namen an</translation>
    </message>
    <message>
        <source>name of an appliance</source>
        <translation>Name eines Verbrauchers</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>the power while on is not above 0 W and at most %1 W</source>
        <translation>die Leistung im Betrieb liegt nicht über 0 W und bei höchstens %1 W</translation>
    </message>
    <message>
        <source>give what it takes while it is on, or leave it empty</source>
        <translation>geben Sie an, was er im Betrieb aufnimmt, oder lassen Sie es leer</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>Einschaltdauer</translation>
    </message>
    <message>
        <source>the duty is not above 0 and at most 1</source>
        <translation>die Einschaltdauer liegt nicht über 0 und bei höchstens 1</translation>
    </message>
    <message>
        <source>give the share of the time that it is on while in use</source>
        <translation>geben Sie den Anteil der Zeit an, in der er ein ist, während er benutzt wird</translation>
    </message>
    <message>
        <source>measured use</source>
        <translation>gemessener Gebrauch</translation>
    </message>
    <message>
        <source>the measured energy or its hours are not above 0, or beyond %1 Wh or %2 h</source>
        <translation>die gemessene Energie oder ihre Stunden liegen nicht über 0 oder über %1 Wh oder %2 h</translation>
    </message>
    <message>
        <source>give both, such as 500 Wh over 24 h</source>
        <translation>geben Sie beides an, etwa 500 Wh in 24 h</translation>
    </message>
    <message>
        <source>neither its power nor a measurement is given</source>
        <translation>weder seine Leistung noch eine Messung ist angegeben</translation>
    </message>
    <message>
        <source>give its power while on, or what it took over some hours</source>
        <translation>geben Sie seine Leistung im Betrieb an oder, was er in einigen Stunden aufnahm</translation>
    </message>
    <message>
        <source>the mean measured, %1 W, is above the power while on, %2 W</source>
        <translation>das gemessene Mittel, %1 W, liegt über der Leistung im Betrieb, %2 W</translation>
    </message>
    <message>
        <source>correct one of the two</source>
        <translation>korrigieren Sie eines von beiden</translation>
    </message>
    <message>
        <source>hours per day</source>
        <translation>Stunden pro Tag</translation>
    </message>
    <message>
        <source>the hours per day are not above 0 and at most 24</source>
        <translation>die Stunden pro Tag liegen nicht über 0 und bei höchstens 24</translation>
    </message>
    <message>
        <source>give for how long it is in use</source>
        <translation>geben Sie an, wie lange er benutzt wird</translation>
    </message>
    <message>
        <source>hours at night</source>
        <translation>Stunden nachts</translation>
    </message>
    <message>
        <source>the hours at night are not 0 to the hours per day</source>
        <translation>die Stunden nachts liegen nicht zwischen 0 und den Stunden pro Tag</translation>
    </message>
    <message>
        <source>give how many of its hours lie at night</source>
        <translation>geben Sie an, wie viele seiner Stunden nachts liegen</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>the peak while it starts is below its power while on, or above %1 W</source>
        <translation>die Spitze beim Anlauf liegt unter der Leistung im Betrieb oder über %1 W</translation>
    </message>
    <message>
        <source>give the highest power of its start, or leave it empty</source>
        <translation>geben Sie die höchste Leistung beim Anlauf an oder lassen Sie es leer</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>the number of them is not 1 to %1</source>
        <translation>die Anzahl liegt nicht zwischen 1 und %1</translation>
    </message>
    <message>
        <source>give how many are alike</source>
        <translation>geben Sie an, wie viele gleiche es sind</translation>
    </message>
    <message>
        <source>the load list has no name</source>
        <translation>die Lastliste hat keinen Namen</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>Lastliste</translation>
    </message>
    <message numerus="yes">
        <source>there are %n appliances</source>
        <comment>there is %n appliance</comment>
        <translation>
            <numerusform>es gibt %n Verbraucher</numerusform>
            <numerusform>es gibt %n Verbraucher</numerusform>
        </translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>Last geändert</translation>
    </message>
    <message>
        <source>meter zeroed</source>
        <translation>Zähler genullt</translation>
    </message>
    <message>
        <source>meter swapped</source>
        <translation>Zähler getauscht</translation>
    </message>
    <message>
        <source>output tripped</source>
        <translation>Ausgang ausgelöst</translation>
    </message>
    <message>
        <source>output reset</source>
        <translation>Ausgang zurückgesetzt</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>Abschaltung</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Entladung</translation>
    </message>
    <message>
        <source>no-load drain</source>
        <translation>Leerlaufentladung</translation>
    </message>
    <message>
        <source>charge</source>
        <translation>Ladung</translation>
    </message>
    <message>
        <source>sustained output</source>
        <translation>Dauerleistung</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>standby</source>
        <translation>Standby</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>läuft noch</translation>
    </message>
    <message>
        <source>cut-off seen</source>
        <translation>Abschaltung gesehen</translation>
    </message>
    <message>
        <source>found off</source>
        <translation>aus vorgefunden</translation>
    </message>
    <message>
        <source>stopped by tester</source>
        <translation>vom Prüfer beendet</translation>
    </message>
    <message>
        <source>PV</source>
        <translation>PV</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Netz</translation>
    </message>
    <message numerus="yes">
        <source>a tag of %n letters is too long</source>
        <comment>a tag of %n letter is too long</comment>
        <translation>
            <numerusform>ein Schlagwort mit %n Buchstaben ist zu lang</numerusform>
            <numerusform>ein Schlagwort mit %n Buchstaben ist zu lang</numerusform>
        </translation>
    </message>
    <message>
        <source>tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message numerus="yes">
        <source>give short words of at most %n letters with semicolons between them</source>
        <comment>give short words of at most %n letter with semicolons between them</comment>
        <translation>
            <numerusform>geben Sie kurze Worte mit höchstens %n Buchstaben an, mit Semikolon dazwischen</numerusform>
            <numerusform>geben Sie kurze Worte mit höchstens %n Buchstaben an, mit Semikolon dazwischen</numerusform>
        </translation>
    </message>
    <message>
        <source>a tag holds a tab, a line break or another control character</source>
        <translation>ein Schlagwort enthält einen Tabulator, einen Zeilenumbruch oder ein anderes Steuerzeichen</translation>
    </message>
    <message>
        <source>give it as one word</source>
        <translation>geben Sie es als ein Wort an</translation>
    </message>
    <message numerus="yes">
        <source>there are %n or more tags</source>
        <comment>there is %n or more tags</comment>
        <translation>
            <numerusform>es gibt %n oder mehr Schlagwörter</numerusform>
            <numerusform>es gibt %n oder mehr Schlagwörter</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>numerics</name>
    <message>
        <source>correct or leave out that point</source>
        <translation>korrigieren Sie diesen Punkt oder lassen Sie ihn weg</translation>
    </message>
    <message numerus="yes">
        <source>%1 x, %2 y and %n uncertainties do not belong together</source>
        <comment>%1 x, %2 y and %n uncertainty do not belong together</comment>
        <translation>
            <numerusform>%1 x, %2 y und %n Unsicherheit passen nicht zusammen</numerusform>
            <numerusform>%1 x, %2 y und %n Unsicherheiten passen nicht zusammen</numerusform>
        </translation>
    </message>
    <message>
        <source>give as many of each</source>
        <translation>geben Sie von allen gleich viele an</translation>
    </message>
    <message numerus="yes">
        <source>needs at least %n points and has %1</source>
        <comment>needs at least %n point and has %1</comment>
        <translation>
            <numerusform>braucht mindestens %n Punkt und hat %1</numerusform>
            <numerusform>braucht mindestens %n Punkte und hat %1</numerusform>
        </translation>
    </message>
    <message>
        <source>take more readings</source>
        <translation>machen Sie mehr Ablesungen</translation>
    </message>
    <message>
        <source>x of point %1 is not a finite number</source>
        <translation>x von Punkt %1 ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>y of point %1 is not a finite number</source>
        <translation>y von Punkt %1 ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>the uncertainty of point %1 is not a finite number</source>
        <translation>die Unsicherheit von Punkt %1 ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>the uncertainty of point %1 is not above zero</source>
        <translation>die Unsicherheit von Punkt %1 liegt nicht über null</translation>
    </message>
    <message>
        <source>give a positive uncertainty or leave out that point</source>
        <translation>geben Sie eine positive Unsicherheit an oder lassen Sie diesen Punkt weg</translation>
    </message>
    <message>
        <source>all x are the same, so that no slope can be found</source>
        <translation>alle x sind gleich, daher lässt sich keine Steigung finden</translation>
    </message>
    <message>
        <source>take readings at two different x at least</source>
        <translation>machen Sie Ablesungen bei mindestens zwei verschiedenen x</translation>
    </message>
    <message>
        <source>the numbers are too large or too small to compute with</source>
        <translation>die Zahlen sind zu groß oder zu klein, um damit zu rechnen</translation>
    </message>
    <message>
        <source>use a unit that suits their size</source>
        <translation>nehmen Sie eine Einheit, die zu ihrer Größe passt</translation>
    </message>
    <message>
        <source>least-squares fit</source>
        <translation>Anpassung kleinster Quadrate</translation>
    </message>
    <message>
        <source>there are no parameters to find</source>
        <translation>es gibt keine Parameter zu finden</translation>
    </message>
    <message>
        <source>give at least one column</source>
        <translation>geben Sie mindestens eine Spalte an</translation>
    </message>
    <message numerus="yes">
        <source>a design of %n numbers does not have %1 rows of %2</source>
        <comment>a design of %n number does not have %1 rows of %2</comment>
        <translation>
            <numerusform>ein Plan mit %n Zahl hat nicht %1 Zeilen zu %2</numerusform>
            <numerusform>ein Plan mit %n Zahlen hat nicht %1 Zeilen zu %2</numerusform>
        </translation>
    </message>
    <message>
        <source>give one row for each point</source>
        <translation>geben Sie für jeden Punkt eine Zeile an</translation>
    </message>
    <message>
        <source>row %1, column %2 of the design is not a finite number</source>
        <translation>Zeile %1, Spalte %2 des Plans ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>column %1 of the design is zero everywhere</source>
        <translation>Spalte %1 des Plans ist überall null</translation>
    </message>
    <message>
        <source>leave out that parameter</source>
        <translation>lassen Sie diesen Parameter weg</translation>
    </message>
    <message>
        <source>the points cannot tell the parameters apart</source>
        <translation>die Punkte können die Parameter nicht trennen</translation>
    </message>
    <message>
        <source>vary the conditions more, or fit fewer parameters</source>
        <translation>wechseln Sie die Bedingungen stärker oder passen Sie weniger Parameter an</translation>
    </message>
    <message>
        <source>line fit with uncertainties in x and y</source>
        <translation>Gerade mit Unsicherheiten in x und y</translation>
    </message>
    <message numerus="yes">
        <source>the slope did not settle within %n steps</source>
        <comment>the slope did not settle within %n step</comment>
        <translation>
            <numerusform>die Steigung kam in %n Schritt nicht zur Ruhe</numerusform>
            <numerusform>die Steigung kam in %n Schritten nicht zur Ruhe</numerusform>
        </translation>
    </message>
    <message>
        <source>the points scatter too widely for their uncertainties to give one line; check both</source>
        <translation>die Punkte streuen für ihre Unsicherheiten zu weit, um eine Gerade zu ergeben; prüfen Sie beide</translation>
    </message>
    <message>
        <source>each point needs one uncertainty in x and one in y</source>
        <translation>jeder Punkt braucht eine Unsicherheit in x und eine in y</translation>
    </message>
    <message>
        <source>the uncertainties of point %1 must be finite, not negative, and not zero in both x and y</source>
        <translation>die Unsicherheiten von Punkt %1 müssen endlich sein, nicht negativ und nicht null in x und y zugleich</translation>
    </message>
    <message>
        <source>a point without uncertainty in y lies on a level line and would outweigh all others</source>
        <translation>ein Punkt ohne Unsicherheit in y liegt auf einer waagrechten Geraden und würde alle anderen überwiegen</translation>
    </message>
    <message>
        <source>give that point an uncertainty in y</source>
        <translation>geben Sie diesem Punkt eine Unsicherheit in y</translation>
    </message>
    <message>
        <source>line fit</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>line fit through the origin</source>
        <translation>Gerade durch den Ursprung</translation>
    </message>
    <message>
        <source>all x are zero, so that no slope can be found</source>
        <translation>alle x sind null, daher lässt sich keine Steigung finden</translation>
    </message>
    <message>
        <source>take readings at another x</source>
        <translation>machen Sie Ablesungen bei einem anderen x</translation>
    </message>
    <message>
        <source>robust line fit</source>
        <translation>robuste Gerade</translation>
    </message>
    <message>
        <source>the confidence must lie between 0 and 1</source>
        <translation>die Wahrscheinlichkeit muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>give 0.95 for 95 %</source>
        <translation>geben Sie 0,95 für 95 % an</translation>
    </message>
    <message numerus="yes">
        <source>%n points are more than the %1 that it takes</source>
        <comment>%n point is more than the %1 that it takes</comment>
        <translation>
            <numerusform>%n Punkt ist mehr als die möglichen %1</numerusform>
            <numerusform>%n Punkte sind mehr als die möglichen %1</numerusform>
        </translation>
    </message>
    <message>
        <source>thin out the points</source>
        <translation>dünnen Sie die Punkte aus</translation>
    </message>
    <message>
        <source>linear programme</source>
        <translation>lineares Programm</translation>
    </message>
    <message numerus="yes">
        <source>%n variables are not 1 to %1</source>
        <comment>%n variable is not 1 to %1</comment>
        <translation>
            <numerusform>%n Variable liegt nicht zwischen 1 und %1</numerusform>
            <numerusform>%n Variablen liegen nicht zwischen 1 und %1</numerusform>
        </translation>
    </message>
    <message>
        <source>state a smaller problem</source>
        <translation>stellen Sie eine kleinere Aufgabe</translation>
    </message>
    <message numerus="yes">
        <source>the rows, limits and signs do not fit %n variables</source>
        <comment>the rows, limits and signs do not fit %n variable</comment>
        <translation>
            <numerusform>Zeilen, Grenzen und Vorzeichen passen nicht zu %n Variablen</numerusform>
            <numerusform>Zeilen, Grenzen und Vorzeichen passen nicht zu %n Variablen</numerusform>
        </translation>
    </message>
    <message>
        <source>give one coefficient for each</source>
        <translation>geben Sie für jede einen Koeffizienten an</translation>
    </message>
    <message>
        <source>a coefficient is not a finite number</source>
        <translation>ein Koeffizient ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>correct or leave out that row</source>
        <translation>korrigieren Sie diese Zeile oder lassen Sie sie weg</translation>
    </message>
    <message>
        <source>the search did not end within its steps</source>
        <translation>die Suche endete nicht innerhalb ihrer Schritte</translation>
    </message>
    <message>
        <source>check the rows for coefficients of very different sizes</source>
        <translation>prüfen Sie die Zeilen auf Koeffizienten sehr verschiedener Größe</translation>
    </message>
    <message>
        <source>fit of two lines</source>
        <translation>Anpassung zweier Geraden</translation>
    </message>
    <message numerus="yes">
        <source>no break leaves %n points and two different x on both sides of it</source>
        <comment>no break leaves %n point and two different x on both sides of it</comment>
        <translation>
            <numerusform>kein Knick lässt auf beiden Seiten %n Punkt und zwei verschiedene x</numerusform>
            <numerusform>kein Knick lässt auf beiden Seiten %n Punkte und zwei verschiedene x</numerusform>
        </translation>
    </message>
    <message>
        <source>take more readings, spread over x</source>
        <translation>machen Sie mehr Ablesungen, über x verteilt</translation>
    </message>
</context>
<context>
    <name>pv</name>
    <message>
        <source>the value is not above 0</source>
        <translation>der Wert liegt nicht über 0</translation>
    </message>
    <message>
        <source>enter what the module&apos;s label says</source>
        <translation>tragen Sie ein, was auf dem Typenschild des Moduls steht</translation>
    </message>
    <message>
        <source>the value is out of range</source>
        <translation>der Wert liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>the coefficient is not below 0, though these values fall as the cell warms</source>
        <translation>der Koeffizient liegt nicht unter 0, obwohl diese Werte fallen, wenn die Zelle warm wird</translation>
    </message>
    <message>
        <source>enter it with its minus sign, such as -0.27 %/°C</source>
        <translation>tragen Sie ihn mit Minuszeichen ein, etwa -0,27 %/°C</translation>
    </message>
    <message>
        <source>the coefficient is steeper than 1 % per °C</source>
        <translation>der Koeffizient ist steiler als 1 % je °C</translation>
    </message>
    <message>
        <source>check whether it is in %/°C or in mV/°C</source>
        <translation>prüfen Sie, ob er in %/°C oder in mV/°C steht</translation>
    </message>
    <message>
        <source>Vmp lies above Voc</source>
        <translation>Vmp liegt über Voc</translation>
    </message>
    <message>
        <source>check whether the two are exchanged</source>
        <translation>prüfen Sie, ob die beiden vertauscht sind</translation>
    </message>
    <message>
        <source>Imp lies above Isc</source>
        <translation>Imp liegt über Isc</translation>
    </message>
    <message>
        <source>the coefficient of power is not in percent</source>
        <translation>der Koeffizient der Leistung ist nicht in Prozent</translation>
    </message>
    <message>
        <source>give it in %/°C</source>
        <translation>geben Sie ihn in %/°C an</translation>
    </message>
    <message>
        <source>the number of modules in a string is out of range</source>
        <translation>die Anzahl der Module in einem Strang liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>give 1 to 1000</source>
        <translation>geben Sie 1 bis 1000 an</translation>
    </message>
    <message>
        <source>the number of strings is out of range</source>
        <translation>die Anzahl der Stränge liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>give 0 to 20 %</source>
        <translation>geben Sie 0 bis 20 % an</translation>
    </message>
    <message>
        <source>give 20 to 100 °C</source>
        <translation>geben Sie 20 bis 100 °C an</translation>
    </message>
    <message>
        <source>give 0 to 2000 W/m²</source>
        <translation>geben Sie 0 bis 2000 W/m² an</translation>
    </message>
    <message>
        <source>give -90 to 120 °C</source>
        <translation>geben Sie -90 bis 120 °C an</translation>
    </message>
    <message>
        <source>the coldest temperature lies above the hottest</source>
        <translation>die kälteste Temperatur liegt über der heißesten</translation>
    </message>
    <message>
        <source>the open-circuit voltage of the module is not stated</source>
        <translation>die Leerlaufspannung des Moduls ist nicht angegeben</translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not stated</source>
        <translation>die kälteste Umgebungstemperatur ist nicht angegeben</translation>
    </message>
    <message>
        <source>by the maker&apos;s coefficient of %1</source>
        <translation>mit dem Koeffizienten des Herstellers von %1</translation>
    </message>
    <message>
        <source>the maker&apos;s coefficient of Voc is not stated, and the table of factors is for crystalline silicon only</source>
        <translation>der Koeffizient des Herstellers für Voc ist nicht angegeben, und die Tabelle der Faktoren gilt nur für kristallines Silizium</translation>
    </message>
    <message>
        <source>the table of factors ends at −40 °C; the maker&apos;s coefficient of Voc is needed</source>
        <translation>die Tabelle der Faktoren endet bei −40 °C; der Koeffizient des Herstellers für Voc ist nötig</translation>
    </message>
    <message>
        <source>by the factor %1 of NEC Table 690.7(A), as no coefficient is stated</source>
        <translation>mit dem Faktor %1 aus NEC Table 690.7(A), da kein Koeffizient angegeben ist</translation>
    </message>
    <message>
        <source>a cell at %1 °C, as stated</source>
        <translation>eine Zelle bei %1 °C, wie angegeben</translation>
    </message>
    <message>
        <source>neither the hottest ambient nor the hottest cell temperature is stated</source>
        <translation>weder die heißeste Umgebung noch die heißeste Zelltemperatur ist angegeben</translation>
    </message>
    <message>
        <source>a cell at %1 °C: %2 °C ambient, NOCT %3 °C, %4 W/m²</source>
        <translation>eine Zelle bei %1 °C: %2 °C Umgebung, NOCT %3 °C, %4 W/m²</translation>
    </message>
    <message>
        <source>a cell at %1 °C: %2 °C ambient, NOCT %3 °C (assumed), %4 W/m²</source>
        <translation>eine Zelle bei %1 °C: %2 °C Umgebung, NOCT %3 °C (angenommen), %4 W/m²</translation>
    </message>
    <message>
        <source>the module</source>
        <translation>das Modul</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>der Ort</translation>
    </message>
    <message>
        <source>the PV input</source>
        <translation>PV-Eingang</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>unbekannt: %1</translation>
    </message>
    <message>
        <source>not checked: the voltage limit of the PV input is not stated</source>
        <translation>nicht geprüft: die Spannungsgrenze des PV-Eingangs ist nicht angegeben</translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series, open circuit at %1, %2</source>
        <comment>%n module in series, open circuit at %1, %2</comment>
        <translation>
            <numerusform>%n Modul in Reihe, Leerlauf bei %1, %2</numerusform>
            <numerusform>%n Module in Reihe, Leerlauf bei %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 with the tolerance of %2 %</source>
        <translation>bis zu %1 mit der Toleranz von %2 %</translation>
    </message>
    <message>
        <source>voltage when cold</source>
        <translation>Spannung bei Kälte</translation>
    </message>
    <message>
        <source>Voc</source>
        <translation>Voc</translation>
    </message>
    <message>
        <source>coefficient of Voc</source>
        <translation>Koeffizient von Voc</translation>
    </message>
    <message>
        <source>coldest temperature</source>
        <translation>kälteste Temperatur</translation>
    </message>
    <message>
        <source>voltage limit</source>
        <translation>Spannungsgrenze</translation>
    </message>
    <message>
        <source>The table of factors holds for crystalline silicon; the maker&apos;s coefficient would take precedence.</source>
        <translation>Die Tabelle der Faktoren gilt für kristallines Silizium; der Koeffizient des Herstellers hätte Vorrang.</translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series at maximum power, %1, by an assumed coefficient of %2</source>
        <comment>%n module in series at maximum power, %1, by an assumed coefficient of %2</comment>
        <translation>
            <numerusform>%n Modul in Reihe im MPP, %1, mit einem angenommenen Koeffizienten von %2</numerusform>
            <numerusform>%n Module in Reihe im MPP, %1, mit einem angenommenen Koeffizienten von %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series at maximum power, %1, by the maker&apos;s coefficient of %2</source>
        <comment>%n module in series at maximum power, %1, by the maker&apos;s coefficient of %2</comment>
        <translation>
            <numerusform>%n Modul in Reihe im MPP, %1, mit dem Koeffizienten des Herstellers von %2</numerusform>
            <numerusform>%n Module in Reihe im MPP, %1, mit dem Koeffizienten des Herstellers von %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the voltage at maximum power is not stated</source>
        <translation>die Spannung im MPP ist nicht angegeben</translation>
    </message>
    <message>
        <source>the coefficient of Vmp is not stated</source>
        <translation>der Koeffizient von Vmp ist nicht angegeben</translation>
    </message>
    <message>
        <source>voltage when hot</source>
        <translation>Spannung bei Hitze</translation>
    </message>
    <message>
        <source>not checked: the start voltage of the PV input is not stated</source>
        <translation>nicht geprüft: die Anlaufspannung des PV-Eingangs ist nicht angegeben</translation>
    </message>
    <message>
        <source>down to %1 with the tolerance of %2 %</source>
        <translation>hinunter bis %1 mit der Toleranz von %2 %</translation>
    </message>
    <message>
        <source>Vmp</source>
        <translation>Vmp</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>Koeffizient von Vmp</translation>
    </message>
    <message>
        <source>hottest temperature</source>
        <translation>heißeste Temperatur</translation>
    </message>
    <message>
        <source>start voltage</source>
        <translation>Anlaufspannung</translation>
    </message>
    <message>
        <source>The coefficient of Vmp is not stated: −0.40 %/°C is taken, the steep end of what sheets of crystalline silicon print.</source>
        <translation>Der Koeffizient von Vmp ist nicht angegeben: genommen wird −0,40 %/°C, das steile Ende dessen, was Datenblätter für kristallines Silizium nennen.</translation>
    </message>
    <message>
        <source>NOCT is not stated: 45 °C is taken, which is common for framed modules (common practice, no source).</source>
        <translation>NOCT ist nicht angegeben: genommen werden 45 °C, üblich für gerahmte Module (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>operating current</source>
        <translation>Betriebsstrom</translation>
    </message>
    <message>
        <source>not known: the current at maximum power is not stated</source>
        <translation>unbekannt: der Strom im MPP ist nicht angegeben</translation>
    </message>
    <message>
        <source>not checked: the current limit of the PV input is not stated</source>
        <translation>nicht geprüft: die Stromgrenze des PV-Eingangs ist nicht angegeben</translation>
    </message>
    <message numerus="yes">
        <source>%n strings at %1 each</source>
        <comment>%n string at %1 each</comment>
        <translation>
            <numerusform>%n Strang zu %1</numerusform>
            <numerusform>%n Stränge zu je %1</numerusform>
        </translation>
    </message>
    <message>
        <source>only the maker can say whether the input holds its current down: ask before connecting</source>
        <translation>nur der Hersteller kann sagen, ob der Eingang seinen Strom selbst begrenzt: fragen Sie vor dem Anschließen</translation>
    </message>
    <message>
        <source>Imp</source>
        <translation>Imp</translation>
    </message>
    <message>
        <source>current limit</source>
        <translation>Stromgrenze</translation>
    </message>
    <message>
        <source>short-circuit current</source>
        <translation>Kurzschlussstrom</translation>
    </message>
    <message>
        <source>not known: the short-circuit current is not stated</source>
        <translation>unbekannt: der Kurzschlussstrom ist nicht angegeben</translation>
    </message>
    <message>
        <source>not checked: neither the short-circuit limit nor the current limit of the PV input is stated</source>
        <translation>nicht geprüft: weder die Kurzschlussgrenze noch die Stromgrenze des PV-Eingangs ist angegeben</translation>
    </message>
    <message numerus="yes">
        <source>1.25 × Isc (NEC 690.8(A)(1)) of %n strings</source>
        <comment>1.25 × Isc (NEC 690.8(A)(1)) of %n string</comment>
        <translation>
            <numerusform>1,25 × Isc (NEC 690.8(A)(1)) von %n Strang</numerusform>
            <numerusform>1,25 × Isc (NEC 690.8(A)(1)) von %n Strängen</numerusform>
        </translation>
    </message>
    <message>
        <source>the short-circuit limit of the PV input is not stated and not lower than its current limit</source>
        <translation>die Kurzschlussgrenze des PV-Eingangs ist nicht angegeben und nicht niedriger als seine Stromgrenze</translation>
    </message>
    <message>
        <source>the short-circuit limit of the PV input is not stated: ask before connecting</source>
        <translation>die Kurzschlussgrenze des PV-Eingangs ist nicht angegeben: fragen Sie vor dem Anschließen</translation>
    </message>
    <message>
        <source>Isc</source>
        <translation>Isc</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>not known: Vmp or Imp is not stated</source>
        <translation>unbekannt: Vmp oder Imp ist nicht angegeben</translation>
    </message>
    <message>
        <source>not checked: the power limit of the PV input is not stated</source>
        <translation>nicht geprüft: die Leistungsgrenze des PV-Eingangs ist nicht angegeben</translation>
    </message>
    <message numerus="yes">
        <source>%n modules at standard test conditions</source>
        <comment>%n module at standard test conditions</comment>
        <translation>
            <numerusform>%n Modul bei Standard-Testbedingungen</numerusform>
            <numerusform>%n Module bei Standard-Testbedingungen</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 cannot be used</source>
        <translation>bis zu %1 lassen sich nicht nutzen</translation>
    </message>
    <message>
        <source>about %1 when hot</source>
        <translation>etwa %1 bei Hitze</translation>
    </message>
    <message>
        <source>power limit</source>
        <translation>Leistungsgrenze</translation>
    </message>
    <message>
        <source>%1 strings in parallel: each needs its own fuse (IEC 62548:2016; NEC 690.9). Its size follows from Isc of the module, which is not stated.</source>
        <translation>%1 Stränge parallel: jeder braucht eine eigene Sicherung (IEC 62548:2016; NEC 690.9). Ihre Größe folgt aus Isc des Moduls; der Wert ist nicht angegeben.</translation>
    </message>
    <message>
        <source>%1 strings in parallel: each needs its own fuse, as the others feed %2 into a faulty one (IEC 62548:2016; NEC 690.9): between %3 and %4 (1.5 and 2.4 × Isc), and not above the largest fuse that the module&apos;s label allows.</source>
        <translation>%1 Stränge parallel: jeder braucht eine eigene Sicherung, da die anderen %2 in einen fehlerhaften speisen (IEC 62548:2016; NEC 690.9): zwischen %3 und %4 (1,5 und 2,4 × Isc) und nicht über der größten Sicherung, die das Typenschild des Moduls erlaubt.</translation>
    </message>
    <message>
        <source>All modules are of one kind, face one way and lie in the same light; for others nothing is claimed.</source>
        <translation>Alle Module sind von einer Art, blicken in eine Richtung und liegen im selben Licht; für andere wird nichts behauptet.</translation>
    </message>
    <message>
        <source>Voltages of the module carry the stated tolerance of %1 %.</source>
        <translation>Die Spannungen des Moduls haben die angegebene Toleranz von %1 %.</translation>
    </message>
    <message>
        <source>The tolerance of the module&apos;s voltages is not stated: 3 % is taken (common practice, no source).</source>
        <translation>Die Toleranz der Spannungen des Moduls ist nicht angegeben: genommen werden 3 % (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>the operating current of %1 is %2 above the %3 that the input is made for</source>
        <translation>der Betriebsstrom von %1 liegt %2 über den %3, für die der Eingang gebaut ist</translation>
    </message>
    <message>
        <source>the short-circuit current, %1 with the factor 1.25, is above the %2 that are stated, and how much the input withstands is not</source>
        <translation>der Kurzschlussstrom, %1 mit dem Faktor 1,25, liegt über den angegebenen %2, und wie viel der Eingang aushält, ist nicht angegeben</translation>
    </message>
    <message>
        <source>Do not connect before the maker has been asked: %1. More current is not clipping.</source>
        <translation>Nicht anschließen, bevor der Hersteller gefragt ist: %1. Mehr Strom ist kein Abregeln.</translation>
    </message>
    <message>
        <source>Do not connect: in the cold the string stays only %1 below the limit of %2 as calculated, and reaches %3 with the module&apos;s tolerance of %4 %.</source>
        <translation>Nicht anschließen: bei Kälte bleibt der Strang rechnerisch nur %1 unter der Grenze von %2 und erreicht %3 mit der Modultoleranz von %4 %.</translation>
    </message>
    <message>
        <source>Too close to call: in the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with the module&apos;s tolerance of %3 %.</source>
        <translation>Nicht zu unterscheiden: bei Hitze bleibt der Strang rechnerisch nur %1 über der Anlaufspannung und fällt auf %2 mit der Modultoleranz von %3 %.</translation>
    </message>
    <message>
        <source>In the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with the module&apos;s tolerance of %3 %.</source>
        <translation>Bei Hitze bleibt der Strang rechnerisch nur %1 über der Anlaufspannung und fällt auf %2 mit der Modultoleranz von %3 %.</translation>
    </message>
    <message>
        <source>%1 of PV against the %2 that the input takes: up to %3 cannot be used.</source>
        <translation>%1 PV gegen die %2, die der Eingang nimmt: bis zu %3 lassen sich nicht nutzen.</translation>
    </message>
    <message>
        <source>in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, no tolerance counted</source>
        <translation>bei Kälte bleibt der Strang %1 unter der Spannungsgrenze, bei Hitze %2 über der Anlaufspannung, ohne Toleranz gerechnet</translation>
    </message>
    <message>
        <source>in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, the module&apos;s tolerance of %3 % counted</source>
        <translation>bei Kälte bleibt der Strang %1 unter der Spannungsgrenze, bei Hitze %2 über der Anlaufspannung, mit der Modultoleranz von %3 % gerechnet</translation>
    </message>
    <message>
        <source>Danger, do not connect: at %1 the string reaches %2, which is %3 above the limit of %4. The input can be destroyed and catch fire.</source>
        <translation>Gefahr, nicht anschließen: bei %1 erreicht der Strang %2, das sind %3 über der Grenze von %4. Der Eingang kann zerstört werden und Feuer fangen.</translation>
    </message>
    <message>
        <source>Danger, do not connect: the short-circuit current, %1 with the factor 1.25, is %2 above the short-circuit limit of %3.</source>
        <translation>Gefahr, nicht anschließen: der Kurzschlussstrom, %1 mit dem Faktor 1,25, liegt %2 über der Kurzschlussgrenze von %3.</translation>
    </message>
    <message>
        <source>Too low to start when hot: the string falls to %1, which is %2 below the start voltage of %3.</source>
        <translation>Bei Hitze zu niedrig zum Anlaufen: der Strang fällt auf %1, das sind %2 unter der Anlaufspannung von %3.</translation>
    </message>
    <message>
        <source>Do not connect yet: whether the string suits the input is not known.</source>
        <translation>Noch nicht anschließen: ob der Strang zum Eingang passt, ist unbekannt.</translation>
    </message>
    <message>
        <source>Fits with clipping: %1 For the rest %2.</source>
        <translation>Passt mit Abregeln: %1 Im Übrigen: %2.</translation>
    </message>
    <message>
        <source>Fits: %1.</source>
        <translation>Passt: %1.</translation>
    </message>
    <message>
        <source>%1 of the module</source>
        <translation>%1 des Moduls</translation>
    </message>
    <message>
        <source>%1 of the place</source>
        <translation>%1 des Ortes</translation>
    </message>
    <message>
        <source>%1 of the PV input</source>
        <translation>%1 des PV-Eingangs</translation>
    </message>
    <message>
        <source>%1; how many strings side by side is not known.</source>
        <translation>%1; wie viele Stränge nebeneinander, ist unbekannt.</translation>
    </message>
    <message>
        <source>%1; even one string brings more current than is stated: ask the maker.</source>
        <translation>%1; schon ein Strang bringt mehr Strom, als angegeben ist: fragen Sie den Hersteller.</translation>
    </message>
    <message>
        <source>%1; most strings within the current limit: %2.</source>
        <translation>%1; die meisten Stränge innerhalb der Stromgrenze: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n modules</source>
        <comment>%n module</comment>
        <translation>
            <numerusform>%n Modul</numerusform>
            <numerusform>%n Module</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 are missing</source>
        <comment>%1 is missing</comment>
        <translation>
            <numerusform>%1 fehlt</numerusform>
            <numerusform>%1 fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>exceeds the voltage limit when cold</source>
        <translation>über der Spannungsgrenze bei Kälte</translation>
    </message>
    <message>
        <source>exceeds the short-circuit limit</source>
        <translation>über der Kurzschlussgrenze</translation>
    </message>
    <message>
        <source>ask before connecting</source>
        <translation>vor dem Anschließen fragen</translation>
    </message>
    <message>
        <source>too close to call: %1</source>
        <translation>nicht zu unterscheiden: %1</translation>
    </message>
    <message>
        <source>too low to start when hot</source>
        <translation>bei Hitze zu niedrig zum Anlaufen</translation>
    </message>
    <message>
        <source>fits with clipping</source>
        <translation>passt mit Abregeln</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>The current is above its limit too.</source>
        <translation>Auch der Strom liegt über seiner Grenze.</translation>
    </message>
    <message>
        <source>The short-circuit current is above its limit too.</source>
        <translation>Auch der Kurzschlussstrom liegt über seiner Grenze.</translation>
    </message>
    <message>
        <source>The voltage when cold is too close to its limit to call.</source>
        <translation>Die Spannung bei Kälte liegt zu nahe an ihrer Grenze, um zu entscheiden.</translation>
    </message>
    <message>
        <source>When hot the string is too low to start.</source>
        <translation>Bei Hitze ist der Strang zu niedrig zum Anlaufen.</translation>
    </message>
    <message>
        <source>Not checked: %1, as %2.</source>
        <translation>Nicht geprüft: %1, denn: %2.</translation>
    </message>
    <message>
        <source>Each string needs its own fuse.</source>
        <translation>Jeder Strang braucht eine eigene Sicherung.</translation>
    </message>
    <message>
        <source>How many modules may be in series is not known until the voltage when cold and the limit are.</source>
        <translation>Wie viele Module in Reihe sein dürfen, ist unbekannt, bis die Spannung bei Kälte und die Grenze bekannt sind.</translation>
    </message>
    <message>
        <source>Not even one of these modules stays within the voltage limit when cold.</source>
        <translation>Nicht einmal eines dieser Module bleibt bei Kälte innerhalb der Spannungsgrenze.</translation>
    </message>
    <message>
        <source>No string fits: %1 would be needed to start when hot, but only %2 may be in series when cold.</source>
        <translation>Kein Strang passt: %1 wären nötig, um bei Hitze anzulaufen, aber bei Kälte dürfen nur %2 in Reihe sein.</translation>
    </message>
    <message numerus="yes">
        <source>Longest string within the voltage limit: %n modules in series</source>
        <comment>Longest string within the voltage limit: %n module in series</comment>
        <translation>
            <numerusform>Längster Strang innerhalb der Spannungsgrenze: %n Modul in Reihe</numerusform>
            <numerusform>Längster Strang innerhalb der Spannungsgrenze: %n Module in Reihe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Longest string within the voltage limit: %n modules in series (%1 at least, to start when hot)</source>
        <comment>Longest string within the voltage limit: %n module in series (%1 at least, to start when hot)</comment>
        <translation>
            <numerusform>Längster Strang innerhalb der Spannungsgrenze: %n Modul in Reihe (mindestens %1, um bei Hitze anzulaufen)</numerusform>
            <numerusform>Längster Strang innerhalb der Spannungsgrenze: %n Module in Reihe (mindestens %1, um bei Hitze anzulaufen)</numerusform>
        </translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>clipped</source>
        <translation>abgeregelt</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>above: ask</source>
        <translation>darüber: fragen</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Decision rule: a voltage is inside its limit where it stays so with the whole tolerance of the module, beyond it as soon as the calculated value is, and too close to call in between (guarded acceptance, JCGM 106:2012, 8.3; NEC 690.7(A) holds the calculated value against the limit).</source>
        <translation>Entscheidungsregel: eine Spannung liegt innerhalb ihrer Grenze, wo sie es mit der ganzen Toleranz des Moduls bleibt, außerhalb, sobald es der berechnete Wert tut, und dazwischen ist es nicht zu unterscheiden (abgesicherte Annahme, JCGM 106:2012, 8.3; NEC 690.7(A) hält den berechneten Wert gegen die Grenze).</translation>
    </message>
    <message>
        <source>PV strings are live whenever there is light and can carry dangerous DC voltage; they cannot be switched off at the module.</source>
        <translation>PV-Stränge stehen bei Licht immer unter Spannung und können gefährliche Gleichspannung führen; am Modul lassen sie sich nicht abschalten.</translation>
    </message>
    <message>
        <source>Connect and disconnect only without load and with the modules covered; DC arcs do not go out by themselves.</source>
        <translation>Nur ohne Last und mit abgedeckten Modulen anschließen und trennen; Gleichstrom-Lichtbögen erlöschen nicht von selbst.</translation>
    </message>
    <message>
        <source>Check polarity and measure the open-circuit voltage before connecting.</source>
        <translation>Vor dem Anschließen die Polarität prüfen und die Leerlaufspannung messen.</translation>
    </message>
    <message>
        <source>Local electrical codes and a licensed electrician come first; this check is arithmetic on stated values, not a design.</source>
        <translation>Örtliche Vorschriften und zugelassene Elektrofachkräfte haben Vorrang; diese Prüfung ist Rechnen mit angegebenen Werten, keine Planung.</translation>
    </message>
</context>
<context>
    <name>quantities</name>
    <message>
        <source>rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>drains in the mean</source>
        <translation>Entladungen im Mittel</translation>
    </message>
    <message>
        <source>scatter of its drains</source>
        <translation>Streuung seiner Entladungen</translation>
    </message>
    <message>
        <source>spread between specimens</source>
        <translation>Streuung zwischen Exemplaren</translation>
    </message>
    <message>
        <source>next specimen</source>
        <translation>nächstes Exemplar</translation>
    </message>
    <message>
        <source>delivered energy</source>
        <translation>abgegebene Energie</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>mittlere Last</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>nutzbarer Anteil</translation>
    </message>
    <message>
        <source>energy per gauge point</source>
        <translation>Energie je Anzeigepunkt</translation>
    </message>
    <message>
        <source>gauge-implied energy</source>
        <translation>Energie laut Anzeige</translation>
    </message>
    <message>
        <source>slope, delivered against gauge-implied</source>
        <translation>Steigung, abgegeben zu laut Anzeige</translation>
    </message>
    <message>
        <source>chi-square of that line</source>
        <translation>Chi-Quadrat dieser Geraden</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>Leerlaufaufnahme</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>Energie vor Eigenverbrauch</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>Leerlaufdauer</translation>
    </message>
    <message>
        <source>quadratic loss</source>
        <translation>quadratischer Verlust</translation>
    </message>
    <message>
        <source>deliverable energy</source>
        <translation>abgebbare Energie</translation>
    </message>
    <message>
        <source>run time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>change of energy</source>
        <translation>Änderung der Energie</translation>
    </message>
    <message>
        <source>not delivered</source>
        <translation>nicht abgegeben</translation>
    </message>
    <message>
        <source>taken by the no-load draw</source>
        <translation>von der Leerlaufaufnahme genommen</translation>
    </message>
    <message>
        <source>conversion or missing capacity</source>
        <translation>Wandlung oder fehlende Kapazität</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>noch ausstehend</translation>
    </message>
    <message>
        <source>until empty</source>
        <translation>bis leer</translation>
    </message>
    <message>
        <source>least gauge error</source>
        <translation>kleinster Anzeigefehler</translation>
    </message>
    <message>
        <source>price per rated kWh</source>
        <translation>Preis je Nenn-kWh</translation>
    </message>
    <message>
        <source>price per usable kWh</source>
        <translation>Preis je nutzbarer kWh</translation>
    </message>
    <message>
        <source>paid per rated kWh</source>
        <translation>gezahlt je Nenn-kWh</translation>
    </message>
    <message>
        <source>paid per usable kWh</source>
        <translation>gezahlt je nutzbarer kWh</translation>
    </message>
    <message>
        <source>usable fraction at this load</source>
        <translation>nutzbarer Anteil bei dieser Last</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>Garantie</translation>
    </message>
    <message>
        <source>energy in</source>
        <translation>geladene Energie</translation>
    </message>
    <message>
        <source>time to full</source>
        <translation>Zeit bis voll</translation>
    </message>
    <message>
        <source>mean power in</source>
        <translation>mittlere Ladeleistung</translation>
    </message>
    <message>
        <source>peak power in</source>
        <translation>höchste Ladeleistung</translation>
    </message>
    <message>
        <source>taper before the end</source>
        <translation>Auslaufphase vor dem Ende</translation>
    </message>
    <message>
        <source>round trip</source>
        <translation>Zykluswirkungsgrad</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>standby draw</source>
        <translation>Standby-Aufnahme</translation>
    </message>
    <message>
        <source>own draw a day</source>
        <translation>Eigenverbrauch pro Tag</translation>
    </message>
    <message>
        <source>own draw a month</source>
        <translation>Eigenverbrauch pro Monat</translation>
    </message>
    <message>
        <source>output held</source>
        <translation>gehaltene Leistung</translation>
    </message>
    <message>
        <source>peak output held</source>
        <translation>gehaltene Spitzenleistung</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>power of the PV input</source>
        <translation>Leistung des PV-Eingangs</translation>
    </message>
    <message>
        <source>delivered energy per mass</source>
        <translation>abgegebene Energie je Masse</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>Autonomietage</translation>
    </message>
    <message>
        <source>days with the output left on</source>
        <translation>Tage bei dauernd eingeschaltetem Ausgang</translation>
    </message>
    <message>
        <source>hours until empty</source>
        <translation>Stunden bis leer</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>Zweifel</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1; measurements of one specimen, not a safety certification</source>
        <translation>%1; Messungen an einem Exemplar, keine Sicherheitszertifizierung</translation>
    </message>
    <message>
        <source>Gauge against meter</source>
        <translation>Ladeanzeige gegen Zähler</translation>
    </message>
    <message>
        <source>Every gauge reading is paired with the energy delivered by that moment. In a drain from full to cut-off the gauge error is the gauge less the share of the delivered energy that is still to come; in any other run the label&apos;s energy stands for the whole. Delivered against gauge-implied energy is fitted as a straight line with uncertainties in both (York and others 2004).</source>
        <translation>Jede Ablesung der Ladeanzeige wird mit der Energie gepaart, die bis dahin abgegeben war. Bei einer Entladung von voll bis Abschaltung ist der Anzeigefehler die Ladeanzeige minus den Anteil der abgegebenen Energie, der noch aussteht; bei jedem anderen Lauf steht die Nennenergie für das Ganze. An abgegebene Energie gegen Energie laut Anzeige wird eine Gerade mit Unsicherheiten in beiden angepasst (York und andere 2004).</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>An accurate gauge falls between two readings by a share between that of the energy and that of the time, whatever the unit&apos;s own draw is; only what lies outside, beyond gauge step and uncertainty, is called a fault. The least gauge error is the smallest worst error over every physically possible unit: a small linear programme. In a drain from full to cut-off each single reading is held against the shares of energy and time that had gone. A lone reading that a slip of the pen explains is doubted itself.</source>
        <translation>Eine genaue Ladeanzeige fällt zwischen zwei Ablesungen um einen Anteil zwischen dem der Energie und dem der Zeit, gleich wie groß der Eigenverbrauch des Speichers ist; nur was außerhalb liegt, jenseits von Anzeigeschritt und Unsicherheit, heißt Fehler. Der kleinste Anzeigefehler ist der kleinste schlimmste Fehler über alle physikalisch möglichen Speicher: ein kleines lineares Programm. Bei einer Entladung von voll bis Abschaltung wird jede einzelne Ablesung an den vergangenen Anteilen von Energie und Zeit gemessen. Eine alleinstehende Ablesung, die ein Schreibfehler erklärt, wird selbst angezweifelt.</translation>
    </message>
    <message>
        <source>When it went off</source>
        <translation>Wann er ausging</translation>
    </message>
    <message>
        <source>The moment of cut-off is taken from the log of the meter; else from the last watt-hours of a steady load; else it lies within five minutes before it was noted, or as many as the run states, and of a run found off anywhere since the last reading.</source>
        <translation>Der Zeitpunkt der Abschaltung kommt aus dem Log des Zählers; sonst aus den letzten Wattstunden einer stetigen Last; sonst liegt er in den fünf Minuten, oder so vielen, wie der Lauf angibt, bevor er notiert wurde, und bei einem aus vorgefundenen Lauf irgendwo seit der letzten Ablesung.</translation>
    </message>
    <message>
        <source>Where the energy goes</source>
        <translation>Wohin die Energie geht</translation>
    </message>
    <message>
        <source>While the output is on the unit itself consumes power: the no-load loss of IEC 61683. Within one run it is told from energy per point only if the gauge is linear in stored energy and the load varied. Over several full drains delivered energy falls with the hours of output on, which needs no gauge: D = E* − P*·T − c·Q, which follows from losses that are a constant, a part that grows with the load, and a part that grows with its square. The program&apos;s help derives it.</source>
        <translation>Solange der Ausgang ein ist, verbraucht der Speicher selbst Leistung: den Leerlaufverlust nach IEC 61683. Innerhalb eines Laufs lässt sie sich von der Energie je Prozentpunkt nur trennen, wenn die Ladeanzeige linear in der gespeicherten Energie ist und die Last wechselte. Über mehrere volle Entladungen sinkt die abgegebene Energie mit den Stunden, in denen der Ausgang ein war, wozu es keine Ladeanzeige braucht: D = E* − P*·T − c·Q. Das folgt aus Verlusten, die konstant sind, einem Teil, der mit der Last wächst, und einem Teil, der mit ihrem Quadrat wächst. Die Hilfe des Programms leitet es her.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of Physics 72, 2004, 367.</source>
        <translation>IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of Physics 72, 2004, 367.</translation>
    </message>
    <message>
        <source>made %1, %2 (%3) by Ullage %4</source>
        <translation>erstellt am %1, %2 (%3) mit Ullage %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>After ± stands half the width of an interval meant to cover 95 %.</source>
        <translation>Nach ± steht die halbe Breite eines Intervalls, das 95 % überdecken soll.</translation>
    </message>
    <message>
        <source>The same, continued</source>
        <translation>Dasselbe, fortgesetzt</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Zusammenfassung</translation>
    </message>
    <message>
        <source>There is no drain to compare.</source>
        <translation>Es gibt keine Entladung zu vergleichen.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Units as vessels at one height scale, at %1: the height is the rated energy, filled what is deliverable, hatched what the unit&apos;s own draw takes where that is known.</source>
        <translation>Speicher als Füllbilder mit gleichem Höhenmaßstab, bei %1: die Höhe ist die Nennenergie, gefüllt die abgebbare Energie, schraffiert der Eigenverbrauch des Speichers, wo er bekannt ist.</translation>
    </message>
    <message>
        <source>Units as vessels at one height scale, as tested: the height is the rated energy, filled what was delivered, hatched what the unit&apos;s own draw takes where that is known.</source>
        <translation>Speicher als Füllbilder mit gleichem Höhenmaßstab, wie getestet: die Höhe ist die Nennenergie, gefüllt die abgegebene Energie, schraffiert der Eigenverbrauch des Speichers, wo er bekannt ist.</translation>
    </message>
    <message>
        <source>Usable fraction at %1 with its 95 % interval; grey where the unit is as tested, at another load.</source>
        <translation>Nutzbarer Anteil bei %1 mit seinem 95-%-Intervall; grau, wo der Speicher wie getestet steht, bei anderer Last.</translation>
    </message>
    <message>
        <source>Usable fraction with its 95 % interval, each at the load of its run.</source>
        <translation>Nutzbarer Anteil mit seinem 95-%-Intervall, jeder bei der Last seines Laufs.</translation>
    </message>
    <message>
        <source>Next run</source>
        <translation>Nächster Lauf</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <source>Gauge from run to run</source>
        <translation>Ladeanzeige von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>%1, all drains</source>
        <translation>%1, alle Entladungen</translation>
    </message>
    <message>
        <source>Comparison of storage units at %1</source>
        <translation>Vergleich der Speicher bei %1</translation>
    </message>
    <message>
        <source>Comparison of storage units as tested</source>
        <translation>Vergleich der Speicher wie getestet</translation>
    </message>
    <message>
        <source>What all drains of each unit say together</source>
        <translation>Was alle Entladungen jedes Speichers zusammen sagen</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Usable fraction of the units against load: points are drains, lines what all drains of a unit say.</source>
        <translation>Nutzbarer Anteil der Speicher über der Last: Punkte sind Entladungen, Linien, was alle Entladungen eines Speichers sagen.</translation>
    </message>
    <message>
        <source>Gauge errors of the units against what they had delivered: above 0 a gauge shows too much.</source>
        <translation>Anzeigefehler der Speicher über dem, was sie abgegeben hatten: über 0 zeigt eine Ladeanzeige zu viel.</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Unsicherheitsbudgets</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Assumed of the register</source>
        <translation>Annahmen zum Zählwerk</translation>
    </message>
    <message>
        <source>reading of</source>
        <translation>Ablesung von</translation>
    </message>
    <message>
        <source>read as</source>
        <translation>gelesen als</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>may be missing</source>
        <translation>kann fehlen</translation>
    </message>
    <message>
        <source>Delivered and gauge-implied energy, %1</source>
        <translation>Abgegebene Energie und Energie laut Anzeige, %1</translation>
    </message>
    <message>
        <source>Gauge error, %1</source>
        <translation>Anzeigefehler, %1</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>There is no delivered energy to state an uncertainty of.</source>
        <translation>Es gibt keine abgegebene Energie, zu der eine Unsicherheit anzugeben wäre.</translation>
    </message>
    <message>
        <source>Delivered energy of %1</source>
        <translation>Abgegebene Energie von %1</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>Korrelation</translation>
    </message>
    <message>
        <source>type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>Freiheitsgrade</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>95 % interval ± %1 Wh.</source>
        <translation>95-%-Intervall ± %1 Wh.</translation>
    </message>
    <message>
        <source>95 % interval ± %1 Wh: %2.</source>
        <translation>95-%-Intervall ± %1 Wh: %2.</translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation>Noch keine Ablesungen.</translation>
    </message>
    <message>
        <source>Times are local to %1, with their offset.</source>
        <translation>Zeiten sind Ortszeit in %1, mit ihrem Versatz.</translation>
    </message>
    <message>
        <source>Times are local to %1 (%2).</source>
        <translation>Zeiten sind Ortszeit in %1 (%2).</translation>
    </message>
    <message>
        <source>%1 of %2 readings. %3 in between, of which there is nothing to tell, are left out, spread evenly; the run sheet holds all of them.</source>
        <translation>%1 von %2 Ablesungen. %3 dazwischen, zu denen nichts zu sagen ist, sind gleichmäßig verteilt ausgelassen; das Laufblatt enthält alle.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>gauge %1 → %2</source>
        <translation>Ladeanzeige %1 → %2</translation>
    </message>
    <message>
        <source>gauge %1</source>
        <translation>Ladeanzeige %1</translation>
    </message>
    <message>
        <source>register %1 → %2</source>
        <translation>Zählwerk %1 → %2</translation>
    </message>
    <message>
        <source>register %1</source>
        <translation>Zählwerk %1</translation>
    </message>
    <message>
        <source>second register %1 → %2</source>
        <translation>zweites Zählwerk %1 → %2</translation>
    </message>
    <message>
        <source>second register %1</source>
        <translation>zweites Zählwerk %1</translation>
    </message>
    <message>
        <source>meter %1 → %2</source>
        <translation>Zähler %1 → %2</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Zähler %1</translation>
    </message>
    <message>
        <source>display %1 → %2</source>
        <translation>Display %1 → %2</translation>
    </message>
    <message>
        <source>display %1</source>
        <translation>Display %1</translation>
    </message>
    <message>
        <source>time %1 → %2</source>
        <translation>Zeit %1 → %2</translation>
    </message>
    <message>
        <source>mark %1 → %2</source>
        <translation>Marke %1 → %2</translation>
    </message>
    <message>
        <source>remark %1 → %2</source>
        <translation>Bemerkung %1 → %2</translation>
    </message>
    <message>
        <source>remark changed</source>
        <translation>Bemerkung geändert</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>wiederhergestellt</translation>
    </message>
    <message>
        <source>nothing that is stored here</source>
        <translation>nichts, was hier gespeichert wird</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Marke %1</translation>
    </message>
    <message>
        <source>remark %1</source>
        <translation>Bemerkung %1</translation>
    </message>
    <message>
        <source>time only</source>
        <translation>nur Zeit</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1, Lauf %2</translation>
    </message>
    <message>
        <source>none given</source>
        <translation>keiner angegeben</translation>
    </message>
    <message>
        <source>Amendments of readings</source>
        <translation>Berichtigungen von Ablesungen</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>wie eingetragen</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>The readings come from run sheets, which carry no history: what was amended or withdrawn before they were written is not known.</source>
        <translation>Die Ablesungen kommen aus Laufblättern, die keinen Verlauf enthalten: was vor ihrem Schreiben berichtigt oder zurückgezogen wurde, ist unbekannt.</translation>
    </message>
    <message>
        <source>No reading was amended or withdrawn.</source>
        <translation>Keine Ablesung wurde berichtigt oder zurückgezogen.</translation>
    </message>
    <message>
        <source>A logbook keeps what an amendment replaced. Withdrawn readings take no part in any result.</source>
        <translation>Ein Logbuch behält, was eine Berichtigung ersetzte. Zurückgezogene Ablesungen gehen in kein Ergebnis ein.</translation>
    </message>
    <message>
        <source>Method and sources</source>
        <translation>Methode und Quellen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>About this report</source>
        <translation>Über diesen Bericht</translation>
    </message>
    <message>
        <source>This report was %1. Its figures follow from the readings alone and can be worked out again from them.</source>
        <translation>Dieser Bericht wurde %1. Seine Zahlen folgen allein aus den Ablesungen und lassen sich aus ihnen neu berechnen.</translation>
    </message>
    <message>
        <source>no reason was given</source>
        <translation>kein Grund wurde angegeben</translation>
    </message>
    <message>
        <source>no interval</source>
        <translation>kein Intervall</translation>
    </message>
    <message>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>What cannot be known from these readings</source>
        <translation>Was aus diesen Ablesungen nicht bekannt sein kann</translation>
    </message>
    <message>
        <source>Every result above is measured and has its interval.</source>
        <translation>Jedes Ergebnis oben ist gemessen und hat sein Intervall.</translation>
    </message>
    <message>
        <source>%1 and %2 (%3)</source>
        <translation>%1 und %2 (%3)</translation>
    </message>
    <message>
        <source>and %1 more, which the table of differences names</source>
        <translation>und %1 weitere, die die Tabelle der Unterschiede nennt</translation>
    </message>
    <message>
        <source>%1. Neither of such a pair may be called better.</source>
        <translation>%1. Keiner eines solchen Paars darf besser genannt werden.</translation>
    </message>
    <message>
        <source>Too close to call with these meters</source>
        <translation>Mit diesen Zählern nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>Not comparable</source>
        <translation>Nicht vergleichbar</translation>
    </message>
    <message>
        <source>The difference between the two units is larger than these meters leave open.</source>
        <translation>Der Unterschied zwischen den beiden Speichern ist größer, als diese Zähler offen lassen.</translation>
    </message>
    <message>
        <source>Every difference between these units is larger than these meters leave open.</source>
        <translation>Jeder Unterschied zwischen diesen Speichern ist größer, als diese Zähler offen lassen.</translation>
    </message>
    <message>
        <source>Differences between units</source>
        <translation>Unterschiede zwischen Speichern</translation>
    </message>
    <message>
        <source>The %1 pairs of these %2 rows are left out here, as more than %3 rows make a table that nobody reads; the export of the differences holds them all (Compare, Export for up to %4 rows, or ullage compare --pairs).</source>
        <translation>Die %1 Paare dieser %2 Zeilen sind hier ausgelassen, da mehr als %3 Zeilen eine Tabelle ergeben, die niemand liest; der Export der Unterschiede enthält sie alle (Vergleich, Exportieren bei bis zu %4 Zeilen, oder ullage compare --pairs).</translation>
    </message>
    <message>
        <source>Usable fraction at %1, the first unit less the second, with its U95: half the width of its 95 % interval.</source>
        <translation>Nutzbarer Anteil bei %1, der erste Speicher minus der zweite, mit U95: der halben Breite des 95-%-Intervalls.</translation>
    </message>
    <message>
        <source>Usable fraction as tested, each at its own load, the first unit less the second, with its U95: half the width of its 95 % interval.</source>
        <translation>Nutzbarer Anteil wie getestet, jeder bei seiner eigenen Last, der erste Speicher minus der zweite, mit U95: der halben Breite des 95-%-Intervalls.</translation>
    </message>
    <message>
        <source>Two units are clearly different when that interval does not hold 0. Where one meter measured both units the error of its gain is counted once and cancels as far as the two are alike; the gains of two meters do not cancel.</source>
        <translation>Zwei Speicher sind klar verschieden, wenn dieses Intervall die 0 nicht enthält. Wo ein Zähler beide Speicher maß, wird sein Steigungsfehler einmal gezählt und hebt sich auf, soweit sich die beiden gleichen; die Steigungsfehler zweier Zähler heben sich nicht auf.</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erster</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweiter</translation>
    </message>
    <message>
        <source>difference ± U95</source>
        <translation>Unterschied ± U95</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>one meter</source>
        <translation>ein Zähler</translation>
    </message>
    <message>
        <source>yes: its gain cancels</source>
        <translation>ja: Steigungsfehler hebt sich auf</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1 from full to its cut-off</source>
        <translation>%1 von voll bis zur Abschaltung</translation>
    </message>
    <message>
        <source>%1 down to its cut-off</source>
        <translation>%1 bis zur Abschaltung</translation>
    </message>
    <message>
        <source>%1 from full until it was found off</source>
        <translation>%1 von voll, bis er aus vorgefunden wurde</translation>
    </message>
    <message>
        <source>%1 until it was found off</source>
        <translation>%1, bis er aus vorgefunden wurde</translation>
    </message>
    <message>
        <source>%1 until the tester stopped it</source>
        <translation>%1, bis der Prüfer beendete</translation>
    </message>
    <message>
        <source>%1 so far; the run is still open</source>
        <translation>%1 bisher; der Lauf ist noch offen</translation>
    </message>
    <message>
        <source>In this charge run of %1 the meter counted %2</source>
        <translation>In dieser Ladung von %1 zählte der Zähler %2</translation>
    </message>
    <message>
        <source>In this sustained output run of %1 the meter counted %2</source>
        <translation>In diesem Lauf auf Dauerleistung von %1 zählte der Zähler %2</translation>
    </message>
    <message>
        <source>In this peak output run of %1 the meter counted %2</source>
        <translation>In diesem Lauf auf Spitzenleistung von %1 zählte der Zähler %2</translation>
    </message>
    <message>
        <source>In this standby run of %1 the meter counted %2</source>
        <translation>In diesem Standby-Lauf von %1 zählte der Zähler %2</translation>
    </message>
    <message>
        <source>%1 delivered %2</source>
        <translation>%1 gab %2 ab</translation>
    </message>
    <message>
        <source>What %1 delivered is not known: %2</source>
        <translation>Was %1 abgab, ist unbekannt: %2</translation>
    </message>
    <message>
        <source>What %1 took is not known: %2</source>
        <translation>Was %1 aufnahm, ist unbekannt: %2</translation>
    </message>
    <message>
        <source>%1 (rated %2)</source>
        <translation>%1 (Nennenergie %2)</translation>
    </message>
    <message>
        <source>%1, at a mean load of %2</source>
        <translation>%1, bei einer mittleren Last von %2</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>The usable fraction is not known: %1.</source>
        <translation>Der nutzbare Anteil ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>That is %1 of its label (%2), at this load.</source>
        <translation>Das sind %1 der Nennenergie (%2), bei dieser Last.</translation>
    </message>
    <message>
        <source>To know more</source>
        <translation>Um mehr zu wissen</translation>
    </message>
    <message>
        <source>Where the energy went</source>
        <translation>Wohin die Energie ging</translation>
    </message>
    <message>
        <source>The unit as a vessel: its height is the rated energy, filled what was delivered, hatched what its own draw took where that is known.</source>
        <translation>Der Speicher als Füllbild: seine Höhe ist die Nennenergie, gefüllt die abgegebene Energie, schraffiert der Eigenverbrauch, wo er bekannt ist.</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Gauge right, gauge wrong</source>
        <translation>Ladeanzeige stimmt, Ladeanzeige falsch</translation>
    </message>
    <message>
        <source>Test report of run %1</source>
        <translation>Testbericht zu Lauf %1</translation>
    </message>
    <message>
        <source>Test report of run %1; maker %2</source>
        <translation>Testbericht zu Lauf %1; Hersteller %2</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Logs</translation>
    </message>
    <message>
        <source>Log of the meter</source>
        <translation>Log des Zählers</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>All drains of this unit together</source>
        <translation>Alle Entladungen dieses Speichers zusammen</translation>
    </message>
    <message>
        <source>Uncertainty budget</source>
        <translation>Unsicherheitsbudget</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>from %1 V</source>
        <translation>ab %1 V</translation>
    </message>
    <message>
        <source>%1 A short circuit</source>
        <translation>%1 A Kurzschluss</translation>
    </message>
    <message>
        <source>1 percentage point</source>
        <translation>1 Prozentpunkt</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 Prozentpunkte</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>purchased</source>
        <translation>gekauft</translation>
    </message>
    <message>
        <source>charge cycles before the first run</source>
        <translation>Ladezyklen vor dem ersten Lauf</translation>
    </message>
    <message>
        <source>rated energy (claim)</source>
        <translation>Nennenergie (Angabe)</translation>
    </message>
    <message>
        <source>rated output (claim)</source>
        <translation>Nennleistung (Angabe)</translation>
    </message>
    <message>
        <source>peak output (claim)</source>
        <translation>Spitzenleistung (Angabe)</translation>
    </message>
    <message>
        <source>PV input limits (claim)</source>
        <translation>Grenzen des PV-Eingangs (Angabe)</translation>
    </message>
    <message>
        <source>charge time (claim)</source>
        <translation>Ladezeit (Angabe)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>gezahlter Preis</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>Garantie</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 a</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>Anzeigeschritt</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>register step</source>
        <translation>Zählwerksschritt</translation>
    </message>
    <message>
        <source>error limit</source>
        <translation>Fehlergrenze</translation>
    </message>
    <message>
        <source>± %1 % of the energy</source>
        <translation>± %1 % der Energie</translation>
    </message>
    <message>
        <source>register span</source>
        <translation>Zählwerksumfang</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>points (W, correction, U in %, k)</source>
        <translation>Punkte (W, Korrektion, U in %, k)</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>range from</source>
        <translation>Bereich von</translation>
    </message>
    <message>
        <source>range to</source>
        <translation>Bereich bis</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>Datum des Kalibrierscheins</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>Labor</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>gültig bis</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message numerus="yes">
        <source>%n readings, %1 withdrawn</source>
        <comment>%n reading, %1 withdrawn</comment>
        <translation>
            <numerusform>%n Ablesung, %1 zurückgezogen</numerusform>
            <numerusform>%n Ablesungen, %1 zurückgezogen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>began</source>
        <translation>begann</translation>
    </message>
    <message>
        <source>started full</source>
        <translation>voll gestartet</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>ambient</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>zweiter Zähler</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>notiert</translation>
    </message>
    <message>
        <source>What was measured, and with what</source>
        <translation>Was gemessen wurde und womit</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>No meter is stated, so delivered energy can have no interval.</source>
        <translation>Kein Zähler ist angegeben, daher kann die abgegebene Energie kein Intervall haben.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>%1: not known, %2.</source>
        <translation>%1: unbekannt, %2.</translation>
    </message>
    <message>
        <source>%1: %2 (%3); by the clock %4; units needed %5; rated output %6, peak output %7.</source>
        <translation>%1: %2 (%3); nach der Uhr %4; nötige Speicher %5; Nennleistung %6, Spitzenleistung %7.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>State of charge from day to day</source>
        <translation>Ladezustand von Tag zu Tag</translation>
    </message>
    <message>
        <source>%1: charge remaining by the hour, with the PV array and without, with 95 % bands.</source>
        <translation>%1: Restladung Stunde für Stunde, mit dem PV-Generator und ohne, mit 95-%-Bändern.</translation>
    </message>
    <message>
        <source>Sizing for %1</source>
        <translation>Auslegung für %1</translation>
    </message>
    <message>
        <source>The load list %1 takes %2 a day, %3 W when all of it runs and %4 W at most. One full unit serves so many days of it:</source>
        <translation>Die Lastliste %1 nimmt %2 pro Tag auf, %3 W, wenn alles darauf läuft, und höchstens %4 W. Ein voller Speicher trägt sie so viele Tage:</translation>
    </message>
    <message>
        <source>There is no unit to size.</source>
        <translation>Es gibt keinen Speicher zum Auslegen.</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>PV-Generator und Batterie nach Regel</translation>
    </message>
    <message>
        <source>The load list</source>
        <translation>Die Lastliste</translation>
    </message>
    <message>
        <source>What is assumed</source>
        <translation>Was angenommen ist</translation>
    </message>
    <message>
        <source>This report was %1. Its figures follow from the drains of each unit, the load list and the stated choices, and can be worked out again from them.</source>
        <translation>Dieser Bericht wurde %1. Seine Zahlen folgen aus den Entladungen jedes Speichers, der Lastliste und den angegebenen Wahlen und lassen sich aus ihnen neu berechnen.</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Prüfung des PV-Eingangs</translation>
    </message>
    <message>
        <source>PV input check: %1</source>
        <translation>Prüfung des PV-Eingangs: %1</translation>
    </message>
    <message>
        <source>%1 in series, %2 parallel</source>
        <translation>%1 in Reihe, %2 parallel</translation>
    </message>
    <message>
        <source>PV input of %1</source>
        <translation>PV-Eingang von %1</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>DANGER: %1</source>
        <translation>GEFAHR: %1</translation>
    </message>
    <message>
        <source>Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8).</source>
        <translation>Leiter und, wo nötig, Sicherungen jedes Strangs: für mindestens %1 A (1,25 × 1,25 × Kurzschlussstrom, NEC 690.8).</translation>
    </message>
    <message>
        <source>Comparisons</source>
        <translation>Vergleiche</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>string or array</source>
        <translation>Strang oder Generator</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>beruht auf</translation>
    </message>
    <message>
        <source>from stated figures</source>
        <translation>aus angegebenen Werten</translation>
    </message>
    <message>
        <source>Voltage of the string against cell temperature, with the limits of the PV input.</source>
        <translation>Spannung des Strangs über der Zelltemperatur, mit den Grenzen des PV-Eingangs.</translation>
    </message>
    <message>
        <source>What was stated</source>
        <translation>Was angegeben wurde</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>This report was %1. It is arithmetic on stated values, not a design.</source>
        <translation>Dieser Bericht wurde %1. Er ist Rechnen mit angegebenen Werten, keine Planung.</translation>
    </message>
    <message numerus="yes">
        <source>%n hold</source>
        <comment>%n hold</comment>
        <translation>
            <numerusform>%n erfüllt</numerusform>
            <numerusform>%n erfüllt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not reached</source>
        <comment>%n not reached</comment>
        <translation>
            <numerusform>%n nicht erreicht</numerusform>
            <numerusform>%n nicht erreicht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not held</source>
        <comment>%n not held</comment>
        <translation>
            <numerusform>%n nicht erfüllt</numerusform>
            <numerusform>%n nicht erfüllt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not decided by this meter</source>
        <comment>%n not decided by this meter</comment>
        <translation>
            <numerusform>%n von diesem Zähler nicht entschieden</numerusform>
            <numerusform>%n von diesem Zähler nicht entschieden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not tested</source>
        <comment>%n not tested</comment>
        <translation>
            <numerusform>%n nicht getestet</numerusform>
            <numerusform>%n nicht getestet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n claims: %1.</source>
        <comment>Of %n claim: %1.</comment>
        <translation>
            <numerusform>Von %n Angabe: %1.</numerusform>
            <numerusform>Von %n Angaben: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>What it delivers is not known: %1.</source>
        <translation>Was er abgibt, ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>It delivers %1</source>
        <translation>Er gibt %1 ab</translation>
    </message>
    <message>
        <source>It delivers %1 of %2 rated</source>
        <translation>Er gibt %1 von %2 Nennenergie ab</translation>
    </message>
    <message>
        <source>%1, a usable fraction of %2</source>
        <translation>%1, ein nutzbarer Anteil von %2</translation>
    </message>
    <message>
        <source>%1 (%2; %3).</source>
        <translation>%1 (%2; %3).</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>Kurz gesagt</translation>
    </message>
    <message>
        <source>No drain of this unit has been noted, so what it delivers is not known.</source>
        <translation>Von diesem Speicher ist keine Entladung notiert, daher ist unbekannt, was er abgibt.</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>Claims against results</source>
        <translation>Angaben gegen Ergebnisse</translation>
    </message>
    <message>
        <source>Every drain, and what they say together</source>
        <translation>Jede Entladung, und was sie zusammen sagen</translation>
    </message>
    <message>
        <source>All drains together</source>
        <translation>Alle Entladungen zusammen</translation>
    </message>
    <message>
        <source>Expected at other loads</source>
        <translation>Erwartet bei anderen Lasten</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.</source>
        <translation>Nutzbarer Anteil über der Last: die Punkte sind Entladungen mit ihren 95-%-Intervallen, die Linie ist, was alle zusammen sagen.</translation>
    </message>
    <message>
        <source>Run time against load, likewise.</source>
        <translation>Laufzeit über der Last, ebenso.</translation>
    </message>
    <message>
        <source>Can the gauge be trusted?</source>
        <translation>Ist der Ladeanzeige zu trauen?</translation>
    </message>
    <message>
        <source>Gauge error against what was delivered, one curve for each drain from full to cut-off: above 0 the gauge shows too much.</source>
        <translation>Anzeigefehler über dem, was abgegeben wurde, eine Kurve für jede Entladung von voll bis Abschaltung: über 0 zeigt die Ladeanzeige zu viel.</translation>
    </message>
    <message>
        <source>From run to run</source>
        <translation>Von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>The gauge errors of the two drains that this is told by.</source>
        <translation>Die Anzeigefehler der beiden Entladungen, an denen sich dies zeigt.</translation>
    </message>
    <message>
        <source>Charges and outputs</source>
        <translation>Ladungen und Ausgänge</translation>
    </message>
    <message>
        <source>Round trip</source>
        <translation>Zykluswirkungsgrad</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Published by</source>
        <translation>Herausgegeben von</translation>
    </message>
    <message>
        <source>Licence of this text</source>
        <translation>Lizenz dieses Textes</translation>
    </message>
    <message>
        <source>Every drain</source>
        <translation>Jede Entladung</translation>
    </message>
    <message>
        <source>Gauge error against what was delivered, drain by drain: above 0 the gauge shows too much.</source>
        <translation>Anzeigefehler über dem, was abgegeben wurde, Entladung für Entladung: über 0 zeigt die Ladeanzeige zu viel.</translation>
    </message>
    <message>
        <source>%1. The whole report holds method, budgets and readings.</source>
        <translation>%1. Der ganze Bericht enthält Methode, Budgets und Ablesungen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>gauge %1 %</source>
        <translation>Ladeanzeige %1 %</translation>
    </message>
    <message>
        <source>register %1 Wh</source>
        <translation>Zählwerk %1 Wh</translation>
    </message>
    <message>
        <source>meter %1 W</source>
        <translation>Zähler %1 W</translation>
    </message>
    <message>
        <source>%1, %2 %3: %4</source>
        <translation>%1, %2 %3: %4</translation>
    </message>
    <message>
        <source>%1: test report</source>
        <translation>%1: Testbericht</translation>
    </message>
    <message>
        <source>maker %1</source>
        <translation>Hersteller %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>%1 less %2 is %3: its interval does not hold 0, so the two are clearly different.</source>
        <translation>%1 minus %2 ist %3: das Intervall enthält die 0 nicht, also sind die beiden klar verschieden.</translation>
    </message>
    <message>
        <source>%1 less %2 is %3: its interval holds 0, so the two are too close to call with these meters and neither may be called better.</source>
        <translation>%1 minus %2 ist %3: das Intervall enthält die 0, also sind die beiden mit diesen Zählern nicht zu unterscheiden, und keiner darf besser genannt werden.</translation>
    </message>
    <message>
        <source>Its ± is less than those of the two fractions suggest: one meter measured both, and the error of its gain cancels.</source>
        <translation>Das ± ist kleiner, als die der beiden Anteile vermuten lassen: ein Zähler maß beide, und sein Steigungsfehler hebt sich auf.</translation>
    </message>
    <message>
        <source>As tested</source>
        <translation>Wie getestet</translation>
    </message>
    <message>
        <source>%1 was drained at %2 W for %3 h and delivered %4 of %5 rated: usable %6.</source>
        <translation>%1 wurde bei %2 W %3 h lang entladen und gab %4 von %5 Nennenergie ab: nutzbar %6.</translation>
    </message>
    <message>
        <source>One drain stands for each of them, so each ± also counts that drains repeat only within %1 %.</source>
        <translation>Eine Entladung steht für jeden von ihnen, daher zählt jedes ± auch mit, dass sich Entladungen nur auf %1 % wiederholen.</translation>
    </message>
    <message>
        <source>Why a slow drain delivers less</source>
        <translation>Warum eine langsame Entladung weniger abgibt</translation>
    </message>
    <message>
        <source>%1 delivered %2 in %3 h at %4 W, but %5 in %6 h at %7 W.</source>
        <translation>%1 gab %2 in %3 h bei %4 W ab, aber %5 in %6 h bei %7 W.</translation>
    </message>
    <message>
        <source>While its output is on, a unit also feeds itself. The run times of all drains of %1 give a no-load draw of %2. The slow drain lasted %3 h longer, in which that draw takes about %4 Wh; it delivered %5 Wh less.</source>
        <translation>Solange sein Ausgang ein ist, versorgt ein Speicher auch sich selbst. Die Laufzeiten aller Entladungen von %1 ergeben eine Leerlaufaufnahme von %2. Die langsame Entladung dauerte %3 h länger, in denen diese Aufnahme etwa %4 Wh verbraucht; sie gab %5 Wh weniger ab.</translation>
    </message>
    <message>
        <source>So a usable fraction belongs to the load of its run, and units have an order at one load only.</source>
        <translation>Ein nutzbarer Anteil gehört also zur Last seines Laufs, und Speicher haben nur bei einer Last eine Reihenfolge.</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>Bei einer Last</translation>
    </message>
    <message>
        <source>At %1 %2 would deliver %3 in %4 h: usable %5 (%6).</source>
        <translation>Bei %1 würde %2 in %4 h %3 abgeben: nutzbar %5 (%6).</translation>
    </message>
    <message>
        <source>%1 cannot be converted and stays as tested: %2.</source>
        <translation>%1 lässt sich nicht umrechnen und bleibt wie getestet: %2.</translation>
    </message>
    <message>
        <source>What these meters leave open</source>
        <translation>Was diese Zähler offen lassen</translation>
    </message>
    <message>
        <source>At %1 %2 can stand beside %3 (%4 and %5).</source>
        <translation>Bei %1 kann %2 neben %3 stehen (%4 und %5).</translation>
    </message>
    <message>
        <source>Meters with a smaller error limit would narrow it.</source>
        <translation>Zähler mit kleinerer Fehlergrenze würden es einengen.</translation>
    </message>
    <message>
        <source>the units and drains of the worked example are not all there</source>
        <translation>die Speicher und Entladungen des Rechenbeispiels sind nicht alle da</translation>
    </message>
    <message>
        <source>sample data</source>
        <translation>Beispieldaten</translation>
    </message>
    <message>
        <source>use the sample data that come with the program</source>
        <translation>nehmen Sie die Beispieldaten, die mit dem Programm kommen</translation>
    </message>
    <message>
        <source>a report&apos;s name must end in .pdf or .html</source>
        <translation>der Name eines Berichts muss auf .pdf oder .html enden</translation>
    </message>
    <message>
        <source>add the ending that you want</source>
        <translation>fügen Sie die gewünschte Endung an</translation>
    </message>
    <message>
        <source>the report is written, but not all files beside it: %1</source>
        <translation>der Bericht ist geschrieben, aber nicht alle Dateien daneben: %1</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>wählen Sie einen Ordner, in den Sie schreiben dürfen</translation>
    </message>
    <message>
        <source>a drawing could not be put into SVG form</source>
        <translation>eine Zeichnung ließ sich nicht in die Form SVG bringen</translation>
    </message>
    <message>
        <source>report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>try PDF instead</source>
        <translation>versuchen Sie stattdessen PDF</translation>
    </message>
    <message>
        <source>The numbers of this table in full (CSV)</source>
        <translation>Die Zahlen dieser Tabelle vollständig (CSV)</translation>
    </message>
    <message>
        <source>the report was cancelled; nothing was written</source>
        <translation>der Bericht wurde abgebrochen; nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>the report could not be put into PDF form</source>
        <translation>der Bericht ließ sich nicht in die Form PDF bringen</translation>
    </message>
    <message>
        <source>try HTML instead</source>
        <translation>versuchen Sie stattdessen HTML</translation>
    </message>
</context>
<context>
    <name>results</name>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>What the figures are</source>
        <translation>Was die Werte sind</translation>
    </message>
    <message>
        <source>Claims against results</source>
        <translation>Angaben gegen Ergebnisse</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>claimed</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Steps of load</source>
        <translation>Laststufen</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>gauge used</source>
        <translation>Anzeige verbraucht</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>the maker&apos;s claim, not measured</source>
        <translation>Angabe des Herstellers, nicht gemessen</translation>
    </message>
    <message>
        <source>the warranty is not stated</source>
        <translation>die Garantie ist nicht angegeben</translation>
    </message>
    <message>
        <source>as tested at %1 W: %2</source>
        <translation>wie getestet bei %1 W: %2</translation>
    </message>
    <message>
        <source>as tested: %1</source>
        <translation>wie getestet: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>beruht auf</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>Differences between units at %1</source>
        <translation>Unterschiede zwischen Speichern bei %1</translation>
    </message>
    <message>
        <source>Differences between units as tested</source>
        <translation>Unterschiede zwischen Speichern wie getestet</translation>
    </message>
    <message>
        <source>Differences between units in %1 at %2</source>
        <translation>Unterschiede zwischen Speichern (%1) bei %2</translation>
    </message>
    <message>
        <source>Differences between units in %1 as tested</source>
        <translation>Unterschiede zwischen Speichern (%1) wie getestet</translation>
    </message>
    <message>
        <source>Comparison of units at %1</source>
        <translation>Vergleich der Speicher bei %1</translation>
    </message>
    <message>
        <source>Comparison of units as tested</source>
        <translation>Vergleich der Speicher wie getestet</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Ausgelassen: %1</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erster</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweiter</translation>
    </message>
    <message>
        <source>one meter</source>
        <translation>ein Zähler</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Resolved: the 95 % interval of the difference does not hold 0.</source>
        <translation>Klar verschieden: das 95-%-Intervall des Unterschieds enthält die 0 nicht.</translation>
    </message>
    <message>
        <source>Between %1 of %2 rows: those with the largest usable fraction.</source>
        <translation>Zwischen %1 von %2 Zeilen: denen mit dem größten nutzbaren Anteil.</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot;</source>
        <translation>es gibt keine Spalte „%1“</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>choose from %1</source>
        <translation>wählen Sie aus %1</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is named twice</source>
        <translation>die Spalte „%1“ ist zweimal genannt</translation>
    </message>
    <message>
        <source>name it once</source>
        <translation>nennen Sie sie einmal</translation>
    </message>
    <message>
        <source>stated in the load list</source>
        <translation>in der Lastliste angegeben</translation>
    </message>
    <message>
        <source>It takes nothing yet.</source>
        <translation>Sie nimmt noch nichts auf.</translation>
    </message>
    <message>
        <source>At most %1 W: all %2 W running and the largest start-up extra.</source>
        <translation>Höchstens %1 W: alle %2 W in Betrieb und der größte Anlaufzuschlag.</translation>
    </message>
    <message>
        <source>%1 W on average while the output is on, %2 h a day, since something is always connected.</source>
        <translation>%1 W im Mittel, während der Ausgang ein ist, %2 h am Tag, da immer etwas angeschlossen ist.</translation>
    </message>
    <message>
        <source>%1 W on average while the output is on, %2 h a day: the longest use by day and the longest by night.</source>
        <translation>%1 W im Mittel, während der Ausgang ein ist, %2 h am Tag: die längste Benutzung am Tag und die längste bei Nacht.</translation>
    </message>
    <message>
        <source>Load list %1</source>
        <translation>Lastliste %1</translation>
    </message>
    <message>
        <source>appliance</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>power while on</source>
        <translation>Leistung im Betrieb</translation>
    </message>
    <message>
        <source>mean in use</source>
        <translation>Mittel im Gebrauch</translation>
    </message>
    <message>
        <source>hours per day</source>
        <translation>Stunden pro Tag</translation>
    </message>
    <message>
        <source>of these at night</source>
        <translation>davon nachts</translation>
    </message>
    <message>
        <source>highest at start</source>
        <translation>höchste beim Anlauf</translation>
    </message>
    <message>
        <source>energy per day</source>
        <translation>Energie pro Tag</translation>
    </message>
    <message>
        <source>of this at night</source>
        <translation>davon nachts</translation>
    </message>
    <message>
        <source>always connected</source>
        <translation>immer angeschlossen</translation>
    </message>
    <message>
        <source>together, over 24 h</source>
        <translation>zusammen, in 24 h</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Lastlisten</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>Lastliste</translation>
    </message>
    <message>
        <source>appliances</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>mean over the day</source>
        <translation>Mittel über den Tag</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>Ausgang ein</translation>
    </message>
    <message>
        <source>mean while on</source>
        <translation>Mittel, während ein</translation>
    </message>
    <message>
        <source>duty while on</source>
        <translation>Einschaltdauer, während ein</translation>
    </message>
    <message>
        <source>all running</source>
        <translation>alle in Betrieb</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>share by day</source>
        <translation>Anteil bei Tag</translation>
    </message>
    <message>
        <source>share at night</source>
        <translation>Anteil nachts</translation>
    </message>
    <message>
        <source>At most: all that runs and the largest start-up extra, one appliance starting while all others run.</source>
        <translation>Höchstens: alles, was läuft, und der größte Anlaufzuschlag; ein Verbraucher läuft an, während alle anderen laufen.</translation>
    </message>
    <message>
        <source>Output on: the longest use by day and the longest by night, or 24 h where something is always connected.</source>
        <translation>Ausgang ein: die längste Benutzung am Tag und die längste bei Nacht oder 24 h, wo immer etwas angeschlossen ist.</translation>
    </message>
    <message numerus="yes">
        <source>Meters in series: %1 and %2 (%n runs)</source>
        <comment>Meters in series: %1 and %2 (%n run)</comment>
        <translation>
            <numerusform>Zähler in Reihe: %1 und %2 (%n Lauf)</numerusform>
            <numerusform>Zähler in Reihe: %1 und %2 (%n Läufe)</numerusform>
        </translation>
    </message>
    <message>
        <source>Models by their specimens at %1</source>
        <translation>Modelle nach ihren Exemplaren bei %1</translation>
    </message>
    <message>
        <source>Models by their specimens, as tested</source>
        <translation>Modelle nach ihren Exemplaren, wie getestet</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>specimens</source>
        <translation>Exemplare</translation>
    </message>
    <message>
        <source>A unit belongs to a model where its form names one.</source>
        <translation>Ein Speicher gehört zu einem Modell, wo sein Formular eines nennt.</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>string</source>
        <translation>Strang</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Prüfung des PV-Eingangs</translation>
    </message>
    <message>
        <source>%1, PV input of %2</source>
        <translation>%1, PV-Eingang von %2</translation>
    </message>
    <message>
        <source>%1 in series, %2 parallel</source>
        <translation>%1 in Reihe, %2 parallel</translation>
    </message>
    <message>
        <source>Verdict: %1</source>
        <translation>Urteil: %1</translation>
    </message>
    <message>
        <source>Conductors and fuses of a string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8).</source>
        <translation>Leiter und Sicherungen eines Strangs: für mindestens %1 A (1,25 × 1,25 × Kurzschlussstrom, NEC 690.8).</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>zweites Zählwerk</translation>
    </message>
    <message>
        <source>power on the meter</source>
        <translation>Leistung am Zähler</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>Leistung laut Speicher</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>abgegeben</translation>
    </message>
    <message>
        <source>load since</source>
        <translation>Last seither</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>gauge drop</source>
        <translation>Fall der Ladeanzeige</translation>
    </message>
    <message>
        <source>gauge-implied</source>
        <translation>laut Anzeige</translation>
    </message>
    <message>
        <source>delivered / gauge-implied</source>
        <translation>abgegeben / laut Anzeige</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>mittlere Last</translation>
    </message>
    <message>
        <source>energy per point</source>
        <translation>Energie je Prozentpunkt</translation>
    </message>
    <message>
        <source>Gauge error against %1.</source>
        <translation>Anzeigefehler gegen %1.</translation>
    </message>
    <message>
        <source>Gauge steps by the log of %1</source>
        <translation>Anzeigeschritte nach dem Log von %1</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Ablesungen von %1</translation>
    </message>
    <message>
        <source>Intervals of %1</source>
        <translation>Abschnitte von %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, run %2: %3</source>
        <translation>%1, Lauf %2: %3</translation>
    </message>
    <message>
        <source>%1, likely %2</source>
        <translation>%1, wahrscheinlich %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>units for %1: %2</source>
        <translation>Speicher für %1: %2</translation>
    </message>
    <message>
        <source>units for %1: %2; by the battery rule: %3</source>
        <translation>Speicher für %1: %2; nach der Batterieregel: %3</translation>
    </message>
    <message>
        <source>rated output: %1; peak output: %2</source>
        <translation>Nennleistung: %1; Spitzenleistung: %2</translation>
    </message>
    <message>
        <source>Sizing for the load list %1</source>
        <translation>Auslegung für die Lastliste %1</translation>
    </message>
    <message>
        <source>%1 a day, %2 W when all of it runs, %3 W at most</source>
        <translation>%1 am Tag, %2 W, wenn alles läuft, höchstens %3 W</translation>
    </message>
    <message>
        <source>No unit to size.</source>
        <translation>Kein Speicher auszulegen.</translation>
    </message>
    <message>
        <source>never empty without PV</source>
        <translation>ohne PV nie leer</translation>
    </message>
    <message>
        <source>empty after %1 h without PV</source>
        <translation>ohne PV nach %1 h leer</translation>
    </message>
    <message>
        <source>empty on day %1, after %2 h, without PV</source>
        <translation>ohne PV an Tag %1 leer, nach %2 h</translation>
    </message>
    <message>
        <source>never empty with PV of %1 W</source>
        <translation>mit PV von %1 W nie leer</translation>
    </message>
    <message>
        <source>empty after %1 h with PV of %2 W</source>
        <translation>mit PV von %2 W nach %1 h leer</translation>
    </message>
    <message>
        <source>empty on day %1, after %2 h, with PV of %3 W</source>
        <translation>mit PV von %3 W an Tag %1 leer, nach %2 h</translation>
    </message>
    <message>
        <source>at the lower end of its energy empty after %1 h all the same</source>
        <translation>am unteren Ende seiner Energie dennoch nach %1 h leer</translation>
    </message>
    <message>
        <source>at the lower end of its energy empty on day %1, after %2 h, all the same</source>
        <translation>am unteren Ende seiner Energie dennoch an Tag %1 leer, nach %2 h</translation>
    </message>
    <message>
        <source>the list alone</source>
        <translation>die Liste allein</translation>
    </message>
    <message numerus="yes">
        <source>as measured, %n units</source>
        <comment>as measured, %n unit</comment>
        <translation>
            <numerusform>wie gemessen, %n Speicher</numerusform>
            <numerusform>wie gemessen, %n Speicher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not all of it measured, %n units</source>
        <comment>not all of it measured, %n unit</comment>
        <translation>
            <numerusform>nicht alles davon gemessen, %n Speicher</numerusform>
            <numerusform>nicht alles davon gemessen, %n Speicher</numerusform>
        </translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <comment>%n day</comment>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>Units for the load list %1</source>
        <translation>Speicher für die Lastliste %1</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>Autonomietage</translation>
    </message>
    <message>
        <source>hours until empty</source>
        <translation>Stunden bis leer</translation>
    </message>
    <message>
        <source>output on in all</source>
        <translation>Ausgang ein, gesamt</translation>
    </message>
    <message>
        <source>days if left on</source>
        <translation>Tage, wenn dauernd ein</translation>
    </message>
    <message>
        <source>units, at least</source>
        <translation>Speicher, mindestens</translation>
    </message>
    <message>
        <source>units, enough</source>
        <translation>Speicher, ausreichend</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>units by rule</source>
        <translation>Speicher nach Regel</translation>
    </message>
    <message>
        <source>for the days of autonomy asked for</source>
        <translation>für die gewünschten Autonomietage</translation>
    </message>
    <message>
        <source>stated by the maker</source>
        <translation>vom Hersteller angegeben</translation>
    </message>
    <message>
        <source>nameplate by the rule / rated energy</source>
        <translation>Nennwert nach der Regel / Nennenergie</translation>
    </message>
    <message>
        <source>Units needed: for %1 without sun, side by side with the list shared evenly.</source>
        <translation>Nötige Speicher: für %1 ohne Sonne, nebeneinander, mit gleichmäßig geteilter Liste.</translation>
    </message>
    <message>
        <source>Days of autonomy</source>
        <translation>Autonomietage</translation>
    </message>
    <message>
        <source>E* / (daily energy + no-load draw × hours of output on + standby draw × the rest + quadratic loss), from all full drains of the unit together; the interval also holds what the list leaves open: appliances used together or apart, the hour of beginning, the order of use.</source>
        <translation>E* / (Tagesenergie + Leerlaufaufnahme × Stunden mit Ausgang ein + Standby-Aufnahme × den Rest + quadratischer Verlust), aus allen vollen Entladungen des Speichers zusammen; das Intervall enthält auch, was die Liste offen lässt: Verbraucher zusammen oder getrennt benutzt, die Stunde des Beginns, die Reihenfolge der Benutzung.</translation>
    </message>
    <message>
        <source>Expectation</source>
        <translation>Erwartung</translation>
    </message>
    <message>
        <source>Where no drain tells it, a stated share of the rated energy at the socket; no measurement.</source>
        <translation>Wo keine Entladung es sagt, ein angegebener Anteil der Nennenergie an der Steckdose; keine Messung.</translation>
    </message>
    <message>
        <source>Balance: losses of a constant, a linear and a quadratic part seen from the socket, terms of IEC 61683. Rules of the cross-check: rules after IEEE 1013 and IEEE 1562; the program&apos;s help states their formulas.</source>
        <translation>Bilanz: Verluste mit konstantem, linearem und quadratischem Teil, von der Steckdose aus gesehen, in den Begriffen von IEC 61683. Regeln der Gegenprobe: Regeln nach IEEE 1013 und IEEE 1562; die Hilfe des Programms nennt ihre Formeln.</translation>
    </message>
    <message>
        <source>The PV array by month</source>
        <translation>Der PV-Generator nach Monat</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>PV array</source>
        <translation>PV-Generator</translation>
    </message>
    <message>
        <source>peak-sun hours</source>
        <translation>Vollsonnenstunden</translation>
    </message>
    <message>
        <source>to the battery</source>
        <translation>zur Batterie</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>array to load</source>
        <translation>Generator zu Last</translation>
    </message>
    <message>
        <source>stated, or as by rule</source>
        <translation>angegeben oder nach Regel</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>array × peak-sun hours × derating</source>
        <translation>Generator × Vollsonnenstunden × Minderungsfaktor</translation>
    </message>
    <message>
        <source>list and own draw / inverter efficiency</source>
        <translation>Liste und Eigenverbrauch / Wirkungsgrad des Wechselrichters</translation>
    </message>
    <message>
        <source>below 0 the load is not met</source>
        <translation>unter 0 wird die Last nicht gedeckt</translation>
    </message>
    <message>
        <source>to the battery / needed</source>
        <translation>zur Batterie / nötig</translation>
    </message>
    <message>
        <source>PV array and battery by the published rules</source>
        <translation>PV-Generator und Batterie nach den veröffentlichten Regeln</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Rechenschritt</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>from stated figures</source>
        <translation>aus angegebenen Werten</translation>
    </message>
    <message>
        <source>daily load</source>
        <translation>Tageslast</translation>
    </message>
    <message>
        <source>the load list</source>
        <translation>die Lastliste</translation>
    </message>
    <message>
        <source>own draw and losses a day</source>
        <translation>Eigenverbrauch und Verluste pro Tag</translation>
    </message>
    <message>
        <source>needed at the battery</source>
        <translation>an der Batterie nötig</translation>
    </message>
    <message>
        <source>(daily load + own) / inverter efficiency %1</source>
        <translation>(Tageslast + Eigenverbrauch) / Wirkungsgrad des Wechselrichters %1</translation>
    </message>
    <message>
        <source>PV array by rule</source>
        <translation>PV-Generator nach Regel</translation>
    </message>
    <message>
        <source>%1 × needed / (%2 peak-sun hours × derating %3)</source>
        <translation>%1 × nötig / (%2 Vollsonnenstunden × Minderungsfaktor %3)</translation>
    </message>
    <message>
        <source>%1 × needed / (%2 peak-sun hours × derating %3); own draw not all measured</source>
        <translation>%1 × nötig / (%2 Vollsonnenstunden × Minderungsfaktor %3); Eigenverbrauch nicht ganz gemessen</translation>
    </message>
    <message>
        <source>as by rule</source>
        <translation>wie nach Regel</translation>
    </message>
    <message>
        <source>PV brings a day</source>
        <translation>PV bringt pro Tag</translation>
    </message>
    <message>
        <source>battery, unadjusted</source>
        <translation>Batterie, unkorrigiert</translation>
    </message>
    <message>
        <source>%1 × needed at the battery</source>
        <translation>%1 × an der Batterie nötig</translation>
    </message>
    <message>
        <source>by depth</source>
        <translation>nach Entladetiefe</translation>
    </message>
    <message>
        <source>/ deepest discharge %1, which governs</source>
        <translation>/ größte Entladetiefe %1, die maßgebend ist</translation>
    </message>
    <message>
        <source>/ deepest discharge %1</source>
        <translation>/ größte Entladetiefe %1</translation>
    </message>
    <message>
        <source>by end of life</source>
        <translation>nach Lebensende</translation>
    </message>
    <message>
        <source>/ share left at the end of life %1</source>
        <translation>/ Restanteil am Lebensende %1</translation>
    </message>
    <message>
        <source>/ share left at the end of life %1, which governs</source>
        <translation>/ Restanteil am Lebensende %1, der maßgebend ist</translation>
    </message>
    <message>
        <source>battery, nameplate</source>
        <translation>Batterie, Nennwert</translation>
    </message>
    <message>
        <source>× temperature factor %1 × margin %2</source>
        <translation>× Temperaturfaktor %1 × Zuschlag %2</translation>
    </message>
    <message>
        <source>Rules after IEEE 1013 (battery) and IEEE 1562 (array), with each unit&apos;s own draw as a load of its own: a cross-check. IEEE 1562 limits its battery part to lead-acid; for lithium the deepest discharge is the user&apos;s own figure.</source>
        <translation>Regeln nach IEEE 1013 (Batterie) und IEEE 1562 (Generator), mit dem Eigenverbrauch jedes Speichers als eigener Last: eine Gegenprobe. IEEE 1562 beschränkt den Batterieteil auf Blei; bei Lithium ist die größte Entladetiefe Ihr eigener Wert.</translation>
    </message>
    <message>
        <source>State of charge by the hour for the load list %1</source>
        <translation>Ladezustand nach Stunden für die Lastliste %1</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>with PV</source>
        <translation>mit PV</translation>
    </message>
    <message>
        <source>without PV</source>
        <translation>ohne PV</translation>
    </message>
    <message>
        <source>since midnight</source>
        <translation>seit Mitternacht</translation>
    </message>
    <message numerus="yes">
        <source>%n units side by side, full at midnight; PV as a half sine over %1 h of daylight.</source>
        <comment>%n unit side by side, full at midnight; PV as a half sine over %1 h of daylight.</comment>
        <translation>
            <numerusform>%n Speicher, voll um Mitternacht; PV als halber Sinus über %1 h Tageslicht.</numerusform>
            <numerusform>%n Speicher nebeneinander, voll um Mitternacht; PV als halber Sinus über %1 h Tageslicht.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 side by side, full at midnight: %3, %4</source>
        <translation>%1, %2 nebeneinander, voll um Mitternacht: %3, %4</translation>
    </message>
    <message>
        <source>%1, full at midnight: %2, %3</source>
        <translation>%1, voll um Mitternacht: %2, %3</translation>
    </message>
    <message>
        <source>%1 of the list not served</source>
        <translation>%1 der Liste nicht gedeckt</translation>
    </message>
    <message>
        <source>%1 of PV unused, as the unit is full</source>
        <translation>%1 PV ungenutzt, da der Speicher voll ist</translation>
    </message>
    <message>
        <source>%1 of PV above what its PV input takes</source>
        <translation>%1 PV über dem, was sein PV-Eingang nimmt</translation>
    </message>
    <message>
        <source>from day %1 on each day is like the one before</source>
        <translation>ab Tag %1 gleicht jeder Tag dem davor</translation>
    </message>
    <message>
        <source>from day %1 on each day is like the one before, with %2</source>
        <translation>ab Tag %1 gleicht jeder Tag dem davor, mit %2</translation>
    </message>
    <message>
        <source>its own draw is not measured, so this may be too good</source>
        <translation>sein Eigenverbrauch ist nicht gemessen, daher kann dies zu gut sein</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Delivered energy</source>
        <translation>Abgegebene Energie</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register from the first to the last reading of the run, times the meter&apos;s correction factor. Marked zeroings and exchanges of the meter and rollovers of its register are joined; whatever else was assumed about the register is listed with the run.</source>
        <translation>Die Differenz des Zählwerks am externen Zähler von der ersten bis zur letzten Ablesung des Laufs, mal Korrektion des Zählers. Mit Marke vermerkte Nullungen und Tausche des Zählers und Überläufe seines Zählwerks sind verbunden; was sonst über das Zählwerk angenommen wurde, steht beim Lauf.</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Nutzbarer Anteil</translation>
    </message>
    <message>
        <source>Delivered energy from full to cut-off, divided by the rated energy, which is the maker&apos;s claim and carries no uncertainty. It holds at the load and duration of the run: a slower drain feeds the unit&apos;s own consumption for longer.</source>
        <translation>Abgegebene Energie von voll bis Abschaltung, geteilt durch die Nennenergie, die eine Angabe des Herstellers ist und keine Unsicherheit hat. Der Wert gilt bei Last und Dauer des Laufs: eine langsamere Entladung speist den Eigenverbrauch des Speichers länger.</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>Bei einer Last</translation>
    </message>
    <message>
        <source>Where a common load is named, a unit is moved to it by D = E* - P* T - c Q, fitted to all its full drains (E*: deliverable at no time cost, P*: no-load draw seen from the socket, T: hours of output on, Q: the squared load over time). A unit whose drains do not tell E* from P* stays as tested and says so.</source>
        <translation>Wo eine gemeinsame Last genannt ist, wird ein Speicher darauf umgerechnet, mit D = E* - P* T - c Q, angepasst an alle seine vollen Entladungen (E*: Energie vor Eigenverbrauch, P*: Leerlaufaufnahme, von der Steckdose aus gesehen, T: Stunden mit Ausgang ein, Q: das Quadrat der Last über der Zeit). Ein Speicher, dessen Entladungen E* nicht von P* trennen, bleibt wie getestet und sagt es.</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Drains of one unit from full to cut-off at loads within a factor of 1.25 and temperatures within 8 °C repeat one another. Their mean stands for the unit, with the scatter of its drains and Student&apos;s t of n - 1 degrees of freedom (JCGM 100:2008, 4.2), or with the repeatability below where that says more. A unit that is moved far beyond its tested loads, by more than a factor of 1.5, has no rank.</source>
        <translation>Entladungen eines Speichers von voll bis Abschaltung bei Lasten innerhalb eines Faktors von 1,25 und Temperaturen innerhalb von 8 °C wiederholen sich. Ihr Mittel steht für den Speicher, mit der Streuung seiner Entladungen und Students t mit n - 1 Freiheitsgraden (JCGM 100:2008, 4.2) oder mit der Wiederholbarkeit unten, wo diese mehr sagt. Ein Speicher, der weit über seine getesteten Lasten hinaus umgerechnet ist, um mehr als den Faktor 1,5, hat keinen Rang.</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Vorausgesetzt</translation>
    </message>
    <message>
        <source>Drains repeat within %1, standard uncertainty. A battery holds at most %2 % of its label. The quadratic loss is at most %3 of the load at the rated output. A moment is noted within %4 min.</source>
        <translation>Entladungen wiederholen sich innerhalb von %1, Standardunsicherheit. Eine Batterie enthält höchstens %2 % ihrer Nennenergie. Der quadratische Verlust ist höchstens %3 der Last bei Nennleistung. Ein Zeitpunkt ist auf %4 min notiert.</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Two units are clearly different when the 95 % interval of their difference does not hold 0; else they are too close to call. The gain of a meter that measured both is counted once and cancels as far as the figures are alike; gains of different meters do not (JCGM 100:2008, 5.2). Between loads that differ by more than a factor of two a part of a meter&apos;s error limit does not cancel: a quarter of it, unless the meter states another.</source>
        <translation>Zwei Speicher sind klar verschieden, wenn das 95-%-Intervall ihres Unterschieds die 0 nicht enthält; sonst sind sie nicht zu unterscheiden. Der Steigungsfehler eines Zählers, der beide maß, wird einmal gezählt und hebt sich auf, soweit sich die Werte gleichen; Steigungsfehler verschiedener Zähler tun das nicht (JCGM 100:2008, 5.2). Zwischen Lasten, die sich um mehr als den Faktor zwei unterscheiden, hebt sich ein Teil der Fehlergrenze eines Zählers nicht auf: ein Viertel davon, wenn der Zähler nichts anderes angibt.</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>After ± stands half the width of an interval meant to cover 95 %. The meter&apos;s error limit counts as a rectangular distribution common to all its readings; register steps, interpolation and noted times count as independent (JCGM 100:2008, 4.3 and 5.1). The half-width comes from the distribution of their sum (JCGM 101:2008). Figures are rounded so that the half-width keeps two significant digits (JCGM 100:2008, 7.2.6).</source>
        <translation>Nach ± steht die halbe Breite eines Intervalls, das 95 % überdecken soll. Die Fehlergrenze des Zählers zählt als Rechteckverteilung, die allen seinen Ablesungen gemeinsam ist; Zählwerksschritte, Interpolation und notierte Zeiten zählen als unabhängig (JCGM 100:2008, 4.3 und 5.1). Die Halbbreite kommt aus der Verteilung ihrer Summe (JCGM 101:2008). Werte sind so gerundet, dass die Halbbreite zwei signifikante Stellen behält (JCGM 100:2008, 7.2.6).</translation>
    </message>
    <message>
        <source>Kinds</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>measured: from full to the unit&apos;s own cut-off. projected: extended from part of a drain on the assumption named. at least: energy may be missing. bracket: between two limits, nothing said within. not known: the reason says what is lacking.</source>
        <translation>gemessen: von voll bis zur Abschaltung durch den Speicher selbst. hochgerechnet: aus einem Teil einer Entladung fortgeführt, mit der genannten Annahme. mindestens: Energie kann fehlen. eingegrenzt: zwischen zwei Grenzen, darüber nichts gesagt. unbekannt: der Grund sagt, was fehlt.</translation>
    </message>
    <message>
        <source>JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of distributions using a Monte Carlo method.</source>
        <translation>JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of distributions using a Monte Carlo method.</translation>
    </message>
    <message>
        <source>Results are measurements of one specimen, not a safety certification.</source>
        <translation>Ergebnisse sind Messungen an einem Exemplar, keine Sicherheitszertifizierung.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>As the tester noted them, amended ones as they stand now, withdrawn ones left out. An empty cell was not noted. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Wie der Prüfer sie notierte, berichtigte, wie sie jetzt stehen, zurückgezogene ausgelassen. Eine leere Zelle wurde nicht notiert. Zeiten sind Ortszeit mit ihrem Versatz zu UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Abgegeben</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register since the first reading, times the meter&apos;s correction factor, with marked zeroings, exchanges and rollovers joined. Load since: that difference from one register reading to the next, over time.</source>
        <translation>Die Differenz des Zählwerks am externen Zähler seit der ersten Ablesung, mal Korrektion des Zählers, mit Marke vermerkte Nullungen, Tausche und Überläufe verbunden. Last seither: diese Differenz von einer Ablesung des Zählwerks zur nächsten, durch die Zeit.</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>Gauge minus what is truly left, in percentage points; its limits come from the gauge&apos;s and the register&apos;s steps, the noted times and the meter&apos;s error limit, and are meant to cover 95 % (JCGM 100:2008, 5.1).</source>
        <translation>Ladeanzeige minus das, was wirklich übrig ist, in Prozentpunkten; seine Grenzen kommen aus den Schritten von Ladeanzeige und Zählwerk, den notierten Zeiten und der Fehlergrenze des Zählers und sollen 95 % überdecken (JCGM 100:2008, 5.1).</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Each change of the gauge in its log, half-way between the last sample before it and the first after it; of a gauge that flickers, before and after that. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Jede Änderung der Ladeanzeige in ihrem Log, in der Mitte zwischen dem letzten Messwert davor und dem ersten danach; bei einer flackernden Ladeanzeige davor und danach. Zeiten sind Ortszeit mit ihrem Versatz zu UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>The mean of what it showed before and after: what it showed on average at that moment, however it rounds.</source>
        <translation>Das Mittel aus dem, was sie davor und danach zeigte: was sie in diesem Moment im Mittel zeigte, wie immer sie rundet.</translation>
    </message>
    <message>
        <source>By the external meter at that moment. What the unit says of its own output enters nothing.</source>
        <translation>Nach dem externen Zähler in diesem Moment. Was der Speicher über seine eigene Abgabe sagt, geht nirgends ein.</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>From one reading of gauge and register to the next. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Von einer Ablesung von Ladeanzeige und Zählwerk zur nächsten. Zeiten sind Ortszeit mit ihrem Versatz zu UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Gauge-implied</source>
        <translation>Laut Anzeige</translation>
    </message>
    <message>
        <source>Rated energy times the fall of the gauge; empty where the rated energy is not stated.</source>
        <translation>Nennenergie mal Fall der Ladeanzeige; leer, wo die Nennenergie nicht angegeben ist.</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register, times the meter&apos;s correction factor, with marked zeroings, exchanges and rollovers joined. Mean load: that over the time. Energy per point: that over the fall of the gauge.</source>
        <translation>Die Differenz des Zählwerks am externen Zähler, mal Korrektion des Zählers, mit Marke vermerkte Nullungen, Tausche und Überläufe verbunden. Mittlere Last: diese durch die Zeit. Energie je Prozentpunkt: diese durch den Fall der Ladeanzeige.</translation>
    </message>
    <message>
        <source>Expected from full to cut-off, a mean over drains</source>
        <translation>Erwartet von voll bis Abschaltung, ein Mittel über Entladungen</translation>
    </message>
    <message>
        <source>deliverable</source>
        <translation>abgebbar</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>nutzbarer Anteil</translation>
    </message>
    <message>
        <source>run time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>tested loads</source>
        <translation>getestete Lasten</translation>
    </message>
    <message>
        <source>between</source>
        <translation>dazwischen</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>außerhalb</translation>
    </message>
</context>
<context>
    <name>run_analysis</name>
    <message>
        <source>no reading shows the gauge full</source>
        <translation>keine Ablesung zeigt die Ladeanzeige auf voll</translation>
    </message>
    <message>
        <source>the gauge shows full from the first reading on</source>
        <translation>die Ladeanzeige zeigt von der ersten Ablesung an voll</translation>
    </message>
    <message>
        <source>full was reached between the last reading below it and the first that shows it</source>
        <translation>voll wurde zwischen der letzten Ablesung darunter und der ersten, die es zeigt, erreicht</translation>
    </message>
    <message>
        <source>no power is noted, and no two register readings lie far enough apart</source>
        <translation>keine Leistung ist notiert, und keine zwei Ablesungen des Zählwerks liegen weit genug auseinander</translation>
    </message>
    <message>
        <source>the highest that the meter showed at a reading</source>
        <translation>die höchste, die der Zähler bei einer Ablesung zeigte</translation>
    </message>
    <message>
        <source>the highest mean between two register readings</source>
        <translation>das höchste Mittel zwischen zwei Ablesungen des Zählwerks</translation>
    </message>
    <message>
        <source>without interval, as the meter&apos;s error limit is not stated</source>
        <translation>ohne Intervall, da die Fehlergrenze des Zählers nicht angegeben ist</translation>
    </message>
    <message>
        <source>fewer than three stretches between register readings resolve the power</source>
        <translation>weniger als drei Abschnitte zwischen Ablesungen des Zählwerks lösen die Leistung auf</translation>
    </message>
    <message>
        <source>no taper: the last stretch is within 10 % of the highest power; it has no interval</source>
        <translation>keine Auslaufphase: der letzte Abschnitt liegt innerhalb von 10 % der höchsten Leistung; er hat kein Intervall</translation>
    </message>
    <message>
        <source>power below 90 % of its highest, %1 W, until the end</source>
        <translation>Leistung unter 90 % der höchsten, %1 W, bis zum Ende</translation>
    </message>
    <message>
        <source>From a source that is not stated: %1 in</source>
        <translation>Aus nicht angegebener Quelle: %1 geladen</translation>
    </message>
    <message>
        <source>From the PV input: %1 in</source>
        <translation>Über den PV-Eingang: %1 geladen</translation>
    </message>
    <message>
        <source>From the wall: %1 in</source>
        <translation>Vom Netz: %1 geladen</translation>
    </message>
    <message>
        <source>gauge %1 to %2 %</source>
        <translation>Ladeanzeige %1 bis %2 %</translation>
    </message>
    <message>
        <source>%1 to full</source>
        <translation>%1 bis voll</translation>
    </message>
    <message>
        <source>less than a minute</source>
        <translation>weniger als eine Minute</translation>
    </message>
    <message>
        <source>energy over time</source>
        <translation>Energie durch Zeit</translation>
    </message>
    <message numerus="yes">
        <source>%n notes of watts; the meter&apos;s limit of energy is taken for that of power</source>
        <comment>%n note of watts; the meter&apos;s limit of energy is taken for that of power</comment>
        <translation>
            <numerusform>%n notierter Wert in Watt; die Energiegrenze des Zählers gilt als die der Leistung</numerusform>
            <numerusform>%n notierte Werte in Watt; die Energiegrenze des Zählers gilt als die der Leistung</numerusform>
        </translation>
    </message>
    <message>
        <source>the step has neither watts noted nor energy that its register resolves</source>
        <translation>die Stufe hat weder notierte Watt noch Energie, die ihr Zählwerk auflöst</translation>
    </message>
    <message>
        <source>no interval, as the meter&apos;s error limit is not stated</source>
        <translation>kein Intervall, da die Fehlergrenze des Zählers nicht angegeben ist</translation>
    </message>
    <message>
        <source>No step of this run has a known load: note the watts, or the register at both ends of a step.</source>
        <translation>Keine Stufe dieses Laufs hat eine bekannte Last: notieren Sie die Watt oder das Zählwerk an beiden Enden einer Stufe.</translation>
    </message>
    <message>
        <source>The claim is not stated; the highest load was %1 for %2.</source>
        <translation>Die Angabe fehlt; die höchste Last war %1, %2 lang.</translation>
    </message>
    <message>
        <source>Tripped at %1 after %2; %3 are claimed.</source>
        <translation>Ausgelöst bei %1 nach %2; angegeben sind %3.</translation>
    </message>
    <message>
        <source>Held %1 for %2; %3 are claimed.</source>
        <translation>Hielt %1, %2 lang; angegeben sind %3.</translation>
    </message>
    <message>
        <source>The claim lies within the uncertainty.</source>
        <translation>Die Angabe liegt innerhalb der Unsicherheit.</translation>
    </message>
    <message>
        <source>It tripped at %1, above the claim.</source>
        <translation>Er löste bei %1 aus, über der Angabe.</translation>
    </message>
    <message>
        <source>Tripped at %1, above the %2 claimed; a load at the claim was not held long enough to tell.</source>
        <translation>Ausgelöst bei %1, über den angegebenen %2; eine Last in Höhe der Angabe wurde nicht lange genug gehalten, um es zu sagen.</translation>
    </message>
    <message>
        <source>Not reached: the highest load was %1 for %2; %3 are claimed, to be held for %4 min at least.</source>
        <translation>Nicht erreicht: die höchste Last war %1, %2 lang; angegeben sind %3, mindestens %4 min zu halten.</translation>
    </message>
    <message>
        <source>Not reached: the highest load was %1 for %2; %3 are claimed.</source>
        <translation>Nicht erreicht: die höchste Last war %1, %2 lang; angegeben sind %3.</translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>Last geändert</translation>
    </message>
    <message>
        <source>tripped</source>
        <translation>ausgelöst</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>Abschaltung</translation>
    </message>
    <message>
        <source>run ended</source>
        <translation>Lauf beendet</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>läuft noch</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>energy may be missing in run %1: %2</source>
        <translation>in Lauf %1 kann Energie fehlen: %2</translation>
    </message>
    <message>
        <source>without interval, as a meter&apos;s error limit is not stated</source>
        <translation>ohne Intervall, da die Fehlergrenze eines Zählers nicht angegeben ist</translation>
    </message>
    <message>
        <source>the sum of the panels</source>
        <translation>die Summe der Module</translation>
    </message>
    <message>
        <source>the panels were not read together often enough to add their powers</source>
        <translation>die Module wurden nicht oft genug zusammen abgelesen, um ihre Leistungen zu addieren</translation>
    </message>
    <message>
        <source>the highest sum of the panels&apos; mean powers while all of them ran</source>
        <translation>die höchste Summe der mittleren Leistungen der Module, während alle liefen</translation>
    </message>
    <message>
        <source>run %1: %2</source>
        <translation>Lauf %1: %2</translation>
    </message>
    <message>
        <source>run %1 (%3): %2</source>
        <translation>Lauf %1 (%3): %2</translation>
    </message>
    <message>
        <source>Charge from PV, %1, peak %2</source>
        <translation>Ladung über PV, %1, Spitze %2</translation>
    </message>
    <message numerus="yes">
        <source>Charge from PV by %n panels together: %1, peak %2; %3</source>
        <comment>Charge from PV by %n panel: %1, peak %2; %3</comment>
        <translation>
            <numerusform>Ladung über PV mit %n Modul: %1, Spitze %2; %3</numerusform>
            <numerusform>Ladung über PV mit %n Modulen zusammen: %1, Spitze %2; %3</numerusform>
        </translation>
    </message>
    <message>
        <source>from cut-off to full and back</source>
        <translation>von Abschaltung bis voll und zurück</translation>
    </message>
    <message>
        <source>from empty by its gauge to full and back</source>
        <translation>von leer laut Anzeige bis voll und zurück</translation>
    </message>
    <message>
        <source>from full to cut-off and back</source>
        <translation>von voll bis Abschaltung und zurück</translation>
    </message>
    <message>
        <source>from %1 to %2 % and back by the gauge</source>
        <translation>von %1 bis %2 % und zurück laut Anzeige</translation>
    </message>
    <message>
        <source>From AC at the wall to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>Von Wechselstrom am Netz zu Wechselstrom an der Steckdose; Ladegerät, Eigenverbrauch des Speichers und %1 h Stehen zwischen den Läufen sind enthalten.</translation>
    </message>
    <message>
        <source>From DC at the PV input to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>Von Gleichstrom am PV-Eingang zu Wechselstrom an der Steckdose; Ladegerät, Eigenverbrauch des Speichers und %1 h Stehen zwischen den Läufen sind enthalten.</translation>
    </message>
    <message>
        <source>From the charging meter (its place is not stated for every charge) to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>Vom Ladezähler (sein Ort ist nicht zu jeder Ladung angegeben) zu Wechselstrom an der Steckdose; Ladegerät, Eigenverbrauch des Speichers und %1 h Stehen zwischen den Läufen sind enthalten.</translation>
    </message>
    <message>
        <source>one meter measured both, so the part of its error that is common to both powers cancels</source>
        <translation>ein Zähler maß beide, daher hebt sich der Teil seines Fehlers auf, der beiden Leistungen gemeinsam ist</translation>
    </message>
    <message>
        <source>one meter measured both, so its gain cancels</source>
        <translation>ein Zähler maß beide, daher hebt sich sein Steigungsfehler auf</translation>
    </message>
    <message>
        <source>no meter is stated for a charge or a drain, so no gain cancels</source>
        <translation>zu einer Ladung oder Entladung ist kein Zähler angegeben, daher hebt sich kein Steigungsfehler auf</translation>
    </message>
    <message>
        <source>different meters, so their gains do not cancel</source>
        <translation>verschiedene Zähler, daher heben sich ihre Steigungsfehler nicht auf</translation>
    </message>
    <message numerus="yes">
        <source>%n closed cycles, %1 and others</source>
        <comment>%n closed cycle, %1 and others</comment>
        <translation>
            <numerusform>%n geschlossener Zyklus, %1 und andere</numerusform>
            <numerusform>%n geschlossene Zyklen, %1 und andere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closed cycles, %1</source>
        <comment>%n closed cycle, %1</comment>
        <translation>
            <numerusform>%n geschlossener Zyklus, %1</numerusform>
            <numerusform>%n geschlossene Zyklen, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>assumes that equal gauge readings mean equal energy stored</source>
        <translation>setzt voraus, dass gleiche Ladeanzeige gleiche gespeicherte Energie bedeutet</translation>
    </message>
    <message>
        <source>no interval, as the error limit of a meter is not stated</source>
        <translation>kein Intervall, da die Fehlergrenze eines Zählers nicht angegeben ist</translation>
    </message>
    <message>
        <source>full and cut-off are taken to repeat within %1 %</source>
        <translation>voll und Abschaltung gelten als innerhalb von %1 % wiederholbar</translation>
    </message>
    <message>
        <source>up to %1 went in after the gauge first showed full, to top up or to feed the unit itself, which is not known: it lies between both</source>
        <translation>bis zu %1 gingen hinein, nachdem die Ladeanzeige zuerst voll zeigte, zum Nachladen oder für den Speicher selbst, was unbekannt ist: der Wert liegt zwischen beidem</translation>
    </message>
    <message>
        <source>no closed cycle: charge to full after a cut-off with the energy metered, and drain to cut-off again</source>
        <translation>kein geschlossener Zyklus: laden Sie nach einer Abschaltung bis voll, mit gemessener Energie, und entladen Sie wieder bis zur Abschaltung</translation>
    </message>
    <message>
        <source>Round trip not known: %1.</source>
        <translation>Zykluswirkungsgrad unbekannt: %1.</translation>
    </message>
    <message>
        <source>Round trip %1: %2 out of %3 in.</source>
        <translation>Zykluswirkungsgrad %1: %2 abgegeben aus %3 geladen.</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>fewer than two gauge readings within the register&apos;s readings</source>
        <translation>weniger als zwei Ablesungen der Ladeanzeige innerhalb der Ablesungen des Zählwerks</translation>
    </message>
    <message>
        <source>rated energy × gauge drop of %1 points</source>
        <translation>Nennenergie × Fall der Ladeanzeige um %1 Prozentpunkte</translation>
    </message>
    <message>
        <source>delivered per gauge-implied energy, without the meter&apos;s gain; %1</source>
        <translation>abgegebene Energie je Energie laut Anzeige, ohne den Steigungsfehler des Zählers; %1</translation>
    </message>
    <message numerus="yes">
        <source>a test statistic, for %n degrees of freedom; it has no interval</source>
        <comment>a test statistic, for %n degree of freedom; it has no interval</comment>
        <translation>
            <numerusform>eine Prüfgröße, mit %n Freiheitsgrad; sie hat kein Intervall</numerusform>
            <numerusform>eine Prüfgröße, mit %n Freiheitsgraden; sie hat kein Intervall</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, no readings yet</source>
        <translation>%1, noch keine Ablesungen</translation>
    </message>
</context>
<context>
    <name>safety</name>
    <message>
        <source>Local electrical codes and a licensed electrician come first.</source>
        <translation>Örtliche Vorschriften und zugelassene Elektrofachkräfte haben Vorrang.</translation>
    </message>
    <message>
        <source>PV strings are live in daylight and can carry dangerous DC voltage.</source>
        <translation>PV-Stränge stehen bei Tageslicht unter Spannung und können gefährliche Gleichspannung führen.</translation>
    </message>
    <message>
        <source>Stay in attendance for high-power runs, or use a fire-safe place.</source>
        <translation>Bleiben Sie bei Läufen mit hoher Leistung dabei oder nehmen Sie einen brandsicheren Ort.</translation>
    </message>
    <message>
        <source>Never exceed the ratings of sockets, cords and the unit.</source>
        <translation>Überschreiten Sie nie die Nennwerte von Steckdosen, Kabeln und Speicher.</translation>
    </message>
    <message>
        <source>Stop on heat, smell, swelling or noise.</source>
        <translation>Brechen Sie ab bei Hitze, Geruch, Aufblähen oder Geräuschen.</translation>
    </message>
    <message>
        <source>Mind ventilation, and keep children away.</source>
        <translation>Achten Sie auf Belüftung und halten Sie Kinder fern.</translation>
    </message>
    <message>
        <source>The output stays live for as long as the run lasts: cover the sockets.</source>
        <translation>Der Ausgang steht unter Spannung, solange der Lauf dauert: decken Sie die Steckdosen ab.</translation>
    </message>
    <message>
        <source>Charge only from a source within the input limits of the unit; never charge a unit that is hot, wet or damaged.</source>
        <translation>Laden Sie nur aus einer Quelle innerhalb der Eingangsgrenzen des Speichers; laden Sie nie einen heißen, nassen oder beschädigten Speicher.</translation>
    </message>
    <message>
        <source>At the rated output cords and sockets grow hot: unwind cords, use no adapters in a chain, stay beside it.</source>
        <translation>Bei Nennleistung werden Kabel und Steckdosen heiß: wickeln Sie Kabel ab, stecken Sie keine Adapter hintereinander, bleiben Sie dabei.</translation>
    </message>
    <message>
        <source>Peak loads can trip, arc or start by surprise: switch at the load, keep hands and tools clear, stay beside it.</source>
        <translation>Spitzenlasten können auslösen, Lichtbögen ziehen oder überraschend anlaufen: schalten Sie an der Last, halten Sie Hände und Werkzeug fern, bleiben Sie dabei.</translation>
    </message>
    <message>
        <source>A unit left alone for days needs a fire-safe place; do not let it rest empty or in the heat.</source>
        <translation>Ein Speicher, der tagelang allein steht, braucht einen brandsicheren Ort; lassen Sie ihn nicht leer oder in der Hitze stehen.</translation>
    </message>
    <message>
        <source>Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.</source>
        <translation>Bleiben Sie dabei oder nehmen Sie einen brandsicheren Ort; brechen Sie ab bei Hitze, Geruch, Aufblähen oder Geräuschen.</translation>
    </message>
    <message>
        <source>Results are measurements of one specimen, not a safety certification.</source>
        <translation>Ergebnisse sind Messungen an einem Exemplar, keine Sicherheitszertifizierung.</translation>
    </message>
    <message>
        <source>One specimen each. Not a safety certification.</source>
        <translation>Je ein Exemplar. Keine Sicherheitszertifizierung.</translation>
    </message>
</context>
<context>
    <name>services</name>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>zweites Zählwerk</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>Watt</translation>
    </message>
    <message>
        <source>display watts</source>
        <translation>Watt laut Display</translation>
    </message>
    <message>
        <source>time: %1</source>
        <translation>Zeit: %1</translation>
    </message>
    <message>
        <source>There is nothing to record yet: type what the gauge or the meter shows, choose a mark, or write a remark.</source>
        <translation>Es gibt noch nichts einzutragen: tippen Sie, was die Ladeanzeige oder der Zähler zeigt, wählen Sie eine Marke oder schreiben Sie eine Bemerkung.</translation>
    </message>
    <message>
        <source>no source is kept with the meter of this run</source>
        <translation>beim Zähler dieses Laufs ist keine Quelle behalten</translation>
    </message>
    <message>
        <source>set one up on the page Meters</source>
        <translation>richten Sie auf der Seite Zähler eine ein</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>`%1` wird nicht verstanden</translation>
    </message>
    <message>
        <source>enter a time span such as 30 min or 1.5 h</source>
        <translation>tragen Sie eine Zeitspanne ein, etwa 30 min oder 1,5 h</translation>
    </message>
    <message>
        <source>enter points of the gauge, such as 10</source>
        <translation>tragen Sie Anzeigepunkte ein, etwa 10</translation>
    </message>
    <message>
        <source>the desktop has no secret store that can be used</source>
        <translation>der Desktop hat keinen Schlüsselbund, der sich nutzen lässt</translation>
    </message>
</context>
<context>
    <name>sheets</name>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>line %1, key `%2`</source>
        <translation>Zeile %1, Schlüssel `%2`</translation>
    </message>
    <message>
        <source>line %1: the comment `%2` is not kept</source>
        <translation>Zeile %1: der Kommentar `%2` wird nicht behalten</translation>
    </message>
    <message>
        <source>there is no key before the colon</source>
        <translation>vor dem Doppelpunkt steht kein Schlüssel</translation>
    </message>
    <message>
        <source>write `# key: value`</source>
        <translation>schreiben Sie `# key: value`</translation>
    </message>
    <message>
        <source>the key stands in line %1 already</source>
        <translation>der Schlüssel steht schon in Zeile %1</translation>
    </message>
    <message>
        <source>keep one of the two lines</source>
        <translation>behalten Sie eine der beiden Zeilen</translation>
    </message>
    <message>
        <source>line %1: key `%2` is not known; kept with the run</source>
        <translation>Zeile %1: Schlüssel `%2` ist nicht bekannt; beim Lauf behalten</translation>
    </message>
    <message>
        <source>the sheet does not name the unit that was tested</source>
        <translation>das Blatt nennt den getesteten Speicher nicht</translation>
    </message>
    <message>
        <source>add a line `# unit: NAME` at the top</source>
        <translation>fügen Sie oben eine Zeile `# unit: NAME` ein</translation>
    </message>
    <message>
        <source>the sheet describes a meter but does not name it</source>
        <translation>das Blatt beschreibt einen Zähler, nennt ihn aber nicht</translation>
    </message>
    <message>
        <source>add a line `# meter: NAME`</source>
        <translation>fügen Sie eine Zeile `# meter: NAME` ein</translation>
    </message>
    <message>
        <source>the sheet describes a second meter but does not name it</source>
        <translation>das Blatt beschreibt einen zweiten Zähler, nennt ihn aber nicht</translation>
    </message>
    <message>
        <source>add a line `# second_meter: NAME`</source>
        <translation>fügen Sie eine Zeile `# second_meter: NAME` ein</translation>
    </message>
    <message>
        <source>both meters have one name</source>
        <translation>beide Zähler haben denselben Namen</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>geben Sie einem davon einen anderen Namen</translation>
    </message>
    <message>
        <source>the range of meter %1 begins above its end</source>
        <translation>der Bereich von Zähler %1 beginnt über seinem Ende</translation>
    </message>
    <message>
        <source>exchange the two loads</source>
        <translation>vertauschen Sie die beiden Lasten</translation>
    </message>
    <message>
        <source>key `run` is missing; read as a drain</source>
        <translation>Schlüssel `run` fehlt; als Entladung gelesen</translation>
    </message>
    <message>
        <source>key `ended` is missing; the run counts as still running</source>
        <translation>Schlüssel `ended` fehlt; der Lauf gilt als noch offen</translation>
    </message>
    <message>
        <source>use the columns %1</source>
        <translation>nehmen Sie die Spalten %1</translation>
    </message>
    <message>
        <source>line %1, column `%2`</source>
        <translation>Zeile %1, Spalte `%2`</translation>
    </message>
    <message>
        <source>the file does not name the load list</source>
        <translation>die Datei nennt die Lastliste nicht</translation>
    </message>
    <message>
        <source>add a line `# load_list: NAME` at the top</source>
        <translation>fügen Sie oben eine Zeile `# load_list: NAME` ein</translation>
    </message>
    <message>
        <source>the header row is missing</source>
        <translation>die Kopfzeile fehlt</translation>
    </message>
    <message>
        <source>`%1` is no key of a load list</source>
        <translation>`%1` ist kein Schlüssel einer Lastliste</translation>
    </message>
    <message>
        <source>use `# load_list: NAME` and `# remark: TEXT`</source>
        <translation>nehmen Sie `# load_list: NAME` und `# remark: TEXT`</translation>
    </message>
    <message>
        <source>the key `%1` stands here for the second time</source>
        <translation>der Schlüssel `%1` steht hier zum zweiten Mal</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>es gibt keine Spalte `%1`</translation>
    </message>
    <message>
        <source>the column `%1` stands here twice</source>
        <translation>die Spalte `%1` steht hier zweimal</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>behalten Sie eine der beiden</translation>
    </message>
    <message>
        <source>the column `%1` is missing</source>
        <translation>die Spalte `%1` fehlt</translation>
    </message>
    <message>
        <source>add it</source>
        <translation>fügen Sie sie ein</translation>
    </message>
    <message>
        <source>the row has %1, the header row has %2</source>
        <translation>die Zeile hat %1, die Kopfzeile hat %2</translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <comment>%n field</comment>
        <translation>
            <numerusform>%n Feld</numerusform>
            <numerusform>%n Felder</numerusform>
        </translation>
    </message>
    <message>
        <source>add or remove commas; a name with commas needs quotes around it</source>
        <translation>fügen Sie Kommas ein oder entfernen Sie welche; ein Name mit Kommas braucht Anführungszeichen</translation>
    </message>
    <message>
        <source>`%1` is neither yes nor no</source>
        <translation>`%1` ist weder yes noch no</translation>
    </message>
    <message>
        <source>use `yes` or `no`</source>
        <translation>nehmen Sie `yes` oder `no`</translation>
    </message>
    <message>
        <source>the file is no UTF-8 text</source>
        <translation>die Datei ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>save it as CSV in UTF-8</source>
        <translation>speichern Sie sie als CSV in UTF-8</translation>
    </message>
    <message>
        <source>a limit is above 0</source>
        <translation>eine Grenze liegt über 0</translation>
    </message>
    <message>
        <source>enter what the unit&apos;s label says</source>
        <translation>tragen Sie ein, was auf dem Typenschild des Speichers steht</translation>
    </message>
    <message>
        <source>`%1` is no number of modules</source>
        <translation>`%1` ist keine Anzahl von Modulen</translation>
    </message>
    <message>
        <source>give a whole number from 1 to 1000</source>
        <translation>geben Sie eine ganze Zahl von 1 bis 1000 an</translation>
    </message>
    <message>
        <source>crystalline silicon, or other (then no table of factors applies)</source>
        <translation>crystalline silicon (kristallines Silizium) oder other (dann gilt keine Tabelle von Faktoren)</translation>
    </message>
    <message>
        <source>`%1` is no kind of cell</source>
        <translation>`%1` ist keine Zellenart</translation>
    </message>
    <message>
        <source>use `crystalline silicon` or `other`</source>
        <translation>nehmen Sie `crystalline silicon` oder `other`</translation>
    </message>
    <message>
        <source>what the sheet is called</source>
        <translation>wie das Blatt heißt</translation>
    </message>
    <message>
        <source>name of the unit whose PV input it is meant for</source>
        <translation>Name des Speichers, für dessen PV-Eingang es gedacht ist</translation>
    </message>
    <message>
        <source>the module, as its label says</source>
        <translation>das Modul, wie sein Typenschild es nennt</translation>
    </message>
    <message>
        <source>open-circuit voltage of one module, V</source>
        <translation>Leerlaufspannung eines Moduls, V</translation>
    </message>
    <message>
        <source>voltage at maximum power, V</source>
        <translation>Spannung im MPP, V</translation>
    </message>
    <message>
        <source>short-circuit current, A</source>
        <translation>Kurzschlussstrom, A</translation>
    </message>
    <message>
        <source>current at maximum power, A</source>
        <translation>Strom im MPP, A</translation>
    </message>
    <message>
        <source>temperature coefficient of Voc, %/°C or mV/°C</source>
        <translation>Temperaturkoeffizient von Voc, %/°C oder mV/°C</translation>
    </message>
    <message>
        <source>temperature coefficient of Vmp, %/°C or mV/°C</source>
        <translation>Temperaturkoeffizient von Vmp, %/°C oder mV/°C</translation>
    </message>
    <message>
        <source>temperature coefficient of the power, %/°C</source>
        <translation>Temperaturkoeffizient der Leistung, %/°C</translation>
    </message>
    <message>
        <source>tolerance of the module&apos;s voltages, %; 3 where not stated</source>
        <translation>Toleranz der Spannungen des Moduls, %; 3, wo nicht angegeben</translation>
    </message>
    <message>
        <source>nominal operating cell temperature, °C</source>
        <translation>Nennbetriebstemperatur der Zellen (NOCT), °C</translation>
    </message>
    <message>
        <source>modules in a string</source>
        <translation>Module in einem Strang</translation>
    </message>
    <message>
        <source>strings side by side</source>
        <translation>Stränge nebeneinander</translation>
    </message>
    <message>
        <source>coldest ambient temperature in daylight, °C</source>
        <translation>kälteste Umgebungstemperatur bei Tageslicht, °C</translation>
    </message>
    <message>
        <source>hottest ambient temperature, °C</source>
        <translation>heißeste Umgebungstemperatur, °C</translation>
    </message>
    <message>
        <source>hottest cell temperature instead, °C</source>
        <translation>stattdessen heißeste Zelltemperatur, °C</translation>
    </message>
    <message>
        <source>irradiance at the hottest, W/m²; 1000 where not stated</source>
        <translation>Bestrahlungsstärke bei größter Hitze, W/m²; 1000, wo nicht angegeben</translation>
    </message>
    <message>
        <source>voltage limit of the PV input, V</source>
        <translation>Spannungsgrenze des PV-Eingangs, V</translation>
    </message>
    <message>
        <source>operating current that the PV input is made for, A</source>
        <translation>Betriebsstrom, für den der PV-Eingang gemacht ist, A</translation>
    </message>
    <message>
        <source>short-circuit current that the PV input withstands, A</source>
        <translation>Kurzschlussstrom, dem der PV-Eingang standhält, A</translation>
    </message>
    <message>
        <source>power limit of the PV input, W</source>
        <translation>Leistungsgrenze des PV-Eingangs, W</translation>
    </message>
    <message>
        <source>lowest voltage at which the PV input starts, V</source>
        <translation>niedrigste Spannung, bei der der PV-Eingang anläuft, V</translation>
    </message>
    <message>
        <source>anything else</source>
        <translation>alles Übrige</translation>
    </message>
    <message>
        <source>`%1` has an unknown unit</source>
        <translation>`%1` hat eine unbekannte Einheit</translation>
    </message>
    <message>
        <source>use %/°C or mV/°C</source>
        <translation>nehmen Sie %/°C oder mV/°C</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>the line has no colon</source>
        <translation>die Zeile hat keinen Doppelpunkt</translation>
    </message>
    <message>
        <source>write `key: value`, or begin a comment with #</source>
        <translation>schreiben Sie `key: value` oder beginnen Sie einen Kommentar mit #</translation>
    </message>
    <message>
        <source>the key `%1` is not known</source>
        <translation>der Schlüssel `%1` ist nicht bekannt</translation>
    </message>
    <message>
        <source>see ullage pv-check --help for the keys</source>
        <translation>ullage pv-check --help nennt die Schlüssel</translation>
    </message>
    <message>
        <source>the key `%1` stands twice</source>
        <translation>der Schlüssel `%1` steht zweimal</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>line %1, column %2 (%3)</source>
        <translation>Zeile %1, Spalte %2 (%3)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>choose a run sheet</source>
        <translation>wählen Sie ein Laufblatt</translation>
    </message>
    <message>
        <source>the file is encoded in UTF-16</source>
        <translation>die Datei ist in UTF-16 kodiert</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>speichern Sie sie als UTF-8</translation>
    </message>
    <message>
        <source>the file is no text</source>
        <translation>die Datei ist kein Text</translation>
    </message>
    <message>
        <source>choose a run sheet, a text file of lines and commas</source>
        <translation>wählen Sie ein Laufblatt, eine Textdatei aus Zeilen und Kommas</translation>
    </message>
    <message>
        <source>a byte is no UTF-8 character</source>
        <translation>ein Byte ist kein UTF-8-Zeichen</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>Zeile %1, Zeichen %2</translation>
    </message>
    <message>
        <source>save the file as UTF-8</source>
        <translation>speichern Sie die Datei als UTF-8</translation>
    </message>
    <message>
        <source>the fields are separated by semicolons</source>
        <translation>die Felder sind durch Semikolons getrennt</translation>
    </message>
    <message>
        <source>the fields are separated by tabs</source>
        <translation>die Felder sind durch Tabulatoren getrennt</translation>
    </message>
    <message>
        <source>save the sheet with commas between the fields</source>
        <translation>speichern Sie das Blatt mit Kommas zwischen den Feldern</translation>
    </message>
    <message>
        <source>the sheet has no readings</source>
        <translation>das Blatt hat keine Ablesungen</translation>
    </message>
    <message>
        <source>the rows are not in order of time; they are put in order</source>
        <translation>die Zeilen sind nicht zeitlich geordnet; sie werden geordnet</translation>
    </message>
    <message>
        <source>add the row `%1`</source>
        <translation>fügen Sie die Zeile `%1` ein</translation>
    </message>
    <message>
        <source>there is no header row</source>
        <translation>es gibt keine Kopfzeile</translation>
    </message>
    <message>
        <source>there is no column `time`</source>
        <translation>es gibt keine Spalte `time`</translation>
    </message>
    <message>
        <source>column `%1` is not known</source>
        <translation>Spalte `%1` ist nicht bekannt</translation>
    </message>
    <message>
        <source>remove it; the columns are %1</source>
        <translation>entfernen Sie sie; die Spalten sind %1</translation>
    </message>
    <message>
        <source>column `%1` stands twice, first as column %2</source>
        <translation>Spalte `%1` steht zweimal, zuerst als Spalte %2</translation>
    </message>
    <message>
        <source>remove one of the two</source>
        <translation>entfernen Sie eine der beiden</translation>
    </message>
    <message>
        <source>line %1: the row is empty; left out</source>
        <translation>Zeile %1: die Zeile ist leer; ausgelassen</translation>
    </message>
    <message>
        <source>`%1` stands in a column without a name</source>
        <translation>`%1` steht in einer Spalte ohne Namen</translation>
    </message>
    <message>
        <source>name the column or remove the text</source>
        <translation>benennen Sie die Spalte oder entfernen Sie den Text</translation>
    </message>
    <message>
        <source>a line with `#` stands below the header row</source>
        <translation>eine Zeile mit `#` steht unter der Kopfzeile</translation>
    </message>
    <message>
        <source>move it above the header row or remove it</source>
        <translation>setzen Sie sie über die Kopfzeile oder entfernen Sie sie</translation>
    </message>
    <message>
        <source>add or remove commas; a remark with commas needs quotes around it</source>
        <translation>fügen Sie Kommas ein oder entfernen Sie welche; eine Bemerkung mit Kommas braucht Anführungszeichen</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>give 0 to %1</source>
        <translation>geben Sie 0 bis %1 an</translation>
    </message>
    <message>
        <source>`%1` is no mark</source>
        <translation>`%1` ist keine Marke</translation>
    </message>
    <message>
        <source>use one of: %1</source>
        <translation>nehmen Sie eine von: %1</translation>
    </message>
    <message>
        <source>the row has no time</source>
        <translation>die Zeile hat keine Zeit</translation>
    </message>
    <message>
        <source>give date and time, like 2027-05-14T18:00</source>
        <translation>geben Sie Datum und Zeit an, wie 2027-05-14T18:00</translation>
    </message>
    <message>
        <source>`%1` has no offset, and the sheet names no time zone</source>
        <translation>`%1` hat keinen Versatz, und das Blatt nennt keine Zeitzone</translation>
    </message>
    <message>
        <source>add Z or an offset such as +02:00, or a line `# time_zone: NAME`</source>
        <translation>fügen Sie Z oder einen Versatz wie +02:00 an oder eine Zeile `# time_zone: NAME` ein</translation>
    </message>
    <message>
        <source>line %1: %2 occurs twice in %3; by the order of the rows it is read as the later, %4</source>
        <translation>Zeile %1: %2 kommt in %3 zweimal vor; nach der Reihenfolge der Zeilen als die spätere gelesen, %4</translation>
    </message>
    <message>
        <source>line %1: %2 occurs twice in %3; by the order of the rows it is read as the earlier, %4</source>
        <translation>Zeile %1: %2 kommt in %3 zweimal vor; nach der Reihenfolge der Zeilen als die frühere gelesen, %4</translation>
    </message>
</context>
<context>
    <name>sizing</name>
    <message>
        <source>no standby run</source>
        <translation>kein Standby-Lauf</translation>
    </message>
    <message>
        <source>an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice)</source>
        <translation>eine Erwartung, keine Messung: %1 bis %2 % der Nennenergie an der Steckdose (übliche Praxis)</translation>
    </message>
    <message>
        <source>an expectation: its drains do not tell its no-load draw, which is taken as usual (0 to 3 % of the rated output, common practice)</source>
        <translation>eine Erwartung: seine Entladungen zeigen seine Leerlaufaufnahme nicht, sie ist wie üblich angenommen (0 bis 3 % der Nennleistung, übliche Praxis)</translation>
    </message>
    <message>
        <source>from full to cut-off, by the hour at which it begins and the order of use</source>
        <translation>von voll bis Abschaltung, je nach Stunde des Beginns und Reihenfolge der Benutzung</translation>
    </message>
    <message>
        <source>%1 alone takes %2 W, above the rated output of %3 W</source>
        <translation>%1 allein nimmt %2 W auf, über der Nennleistung von %3 W</translation>
    </message>
    <message>
        <source>%1 alone starts with %2 W, above the highest output of %3 W</source>
        <translation>%1 allein läuft mit %2 W an, über der höchsten Leistung von %3 W</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries the power</source>
        <translation>keine Anzahl von Speichern bis %1 trägt die Leistung</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries it for %2 day: their own draw empties them before</source>
        <translation>keine Anzahl von Speichern bis %1 trägt es %2 Tag lang: ihr Eigenverbrauch leert sie vorher</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries it for %2 days: their own draw empties them before</source>
        <translation>keine Anzahl von Speichern bis %1 trägt es %2 Tage lang: ihr Eigenverbrauch leert sie vorher</translation>
    </message>
    <message>
        <source>the power decides</source>
        <translation>die Leistung entscheidet</translation>
    </message>
    <message>
        <source>no interval: the error limit of a meter is not stated</source>
        <translation>kein Intervall: die Fehlergrenze eines Zählers ist nicht angegeben</translation>
    </message>
    <message>
        <source>no number of units is sure to carry it for so long: their own draw may empty them before</source>
        <translation>keine Anzahl von Speichern trägt es mit Sicherheit so lange: ihr Eigenverbrauch kann sie vorher leeren</translation>
    </message>
    <message>
        <source>its own draw is not measured: %1 W are taken, as is usual</source>
        <translation>sein Eigenverbrauch ist nicht gemessen: angenommen sind %1 W, wie üblich</translation>
    </message>
    <message>
        <source>its own draw is not measured and not counted: PV array and battery are the least needed</source>
        <translation>sein Eigenverbrauch ist weder gemessen noch gezählt: PV-Generator und Batterie sind das Mindeste, was nötig ist</translation>
    </message>
    <message>
        <source>while its output is off it takes %1 W, which are counted</source>
        <translation>mit ausgeschaltetem Ausgang nimmt er %1 W auf, die gezählt sind</translation>
    </message>
    <message>
        <source>what it takes while its output is off is not measured and not counted: make a standby run</source>
        <translation>was er mit ausgeschaltetem Ausgang aufnimmt, ist weder gemessen noch gezählt: machen Sie einen Standby-Lauf</translation>
    </message>
    <message>
        <source>more units do not help</source>
        <translation>mehr Speicher helfen nicht</translation>
    </message>
    <message>
        <source>no peak output is claimed; starts are held against the rated output</source>
        <translation>keine Spitzenleistung ist angegeben; Anläufe werden an der Nennleistung gemessen</translation>
    </message>
    <message>
        <source>the claim does not hold: %1</source>
        <translation>die Angabe ist nicht erfüllt: %1</translation>
    </message>
    <message>
        <source>the load list takes nothing</source>
        <translation>die Lastliste nimmt nichts auf</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated, and no drain tells its energy</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben, und keine Entladung sagt seine Energie</translation>
    </message>
    <message>
        <source>own drains</source>
        <translation>eigene Entladungen</translation>
    </message>
    <message>
        <source>expectation from one load</source>
        <translation>Erwartung aus einer Last</translation>
    </message>
    <message>
        <source>expectation, not measured</source>
        <translation>Erwartung, nicht gemessen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>fits if not all run at once</source>
        <translation>passt, wenn nicht alle zugleich laufen</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The load list takes nothing yet.</source>
        <translation>Die Lastliste nimmt noch nichts auf.</translation>
    </message>
    <message>
        <source>The output stays on day and night, since something is always connected.</source>
        <translation>Der Ausgang bleibt Tag und Nacht ein, da immer etwas angeschlossen ist.</translation>
    </message>
    <message>
        <source>The output is on for %1 h a day (%2 h if no two appliances were in use together) and switched off for the rest.</source>
        <translation>Der Ausgang ist %1 h am Tag ein (%2 h, wenn nie zwei Verbraucher zusammen benutzt wurden) und sonst ausgeschaltet.</translation>
    </message>
    <message>
        <source>Days, PV array, months and battery count the unit&apos;s own draw for every hour that its output is on, besides the list.</source>
        <translation>Tage, PV-Generator, Monate und Batterie zählen neben der Liste den Eigenverbrauch des Speichers für jede Stunde, in der sein Ausgang ein ist.</translation>
    </message>
    <message>
        <source>Use by day is spread evenly over a day of %1 h, use at night over a night of %2 h; a day of autonomy is one day&apos;s list served.</source>
        <translation>Benutzung am Tag ist gleichmäßig über einen Tag von %1 h verteilt, Benutzung bei Nacht über eine Nacht von %2 h; ein Autonomietag ist eine gedeckte Tagesliste.</translation>
    </message>
    <message>
        <source>Units without a drain that says anything stand with an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice, no source).</source>
        <translation>Speicher ohne aussagekräftige Entladung stehen mit einer Erwartung, nicht mit einer Messung: %1 bis %2 % der Nennenergie an der Steckdose (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>The PV input of %1 takes at most %2 W of the array&apos;s %3 W for each unit.</source>
        <translation>Der PV-Eingang von %1 nimmt von den %3 W des Generators höchstens %2 W je Speicher.</translation>
    </message>
    <message>
        <source>The PV input of %1 takes at most %2 W of the array&apos;s %3 W.</source>
        <translation>Der PV-Eingang von %1 nimmt von den %3 W des Generators höchstens %2 W.</translation>
    </message>
    <message>
        <source>Never connect the outputs of several units with each other; give each its own appliances, unless the makers say otherwise.</source>
        <translation>Verbinden Sie nie die Ausgänge mehrerer Speicher miteinander; geben Sie jedem eigene Verbraucher, wenn die Hersteller nichts anderes sagen.</translation>
    </message>
    <message>
        <source>Never exceed the ratings of sockets, cords and the unit; motors and compressors start with several times their power.</source>
        <translation>Überschreiten Sie nie die Nennwerte von Steckdosen, Kabeln und Speicher; Motoren und Kompressoren laufen mit einem Mehrfachen ihrer Leistung an.</translation>
    </message>
    <message>
        <source>PV strings are live in daylight and can carry dangerous DC voltage; check the string against the unit&apos;s PV input first.</source>
        <translation>PV-Stränge stehen bei Tageslicht unter Spannung und können gefährliche Gleichspannung führen; prüfen Sie den Strang zuerst gegen den PV-Eingang des Speichers.</translation>
    </message>
    <message>
        <source>Feed no building from a unit without the transfer switch that the local code asks for.</source>
        <translation>Speisen Sie kein Gebäude aus einem Speicher ohne die Umschalteinrichtung, die die örtlichen Vorschriften verlangen.</translation>
    </message>
    <message>
        <source>Local electrical codes and a licensed electrician come first.</source>
        <translation>Örtliche Vorschriften und zugelassene Elektrofachkräfte haben Vorrang.</translation>
    </message>
    <message>
        <source>Do not rest medical equipment or anything that a life depends on upon this forecast.</source>
        <translation>Verlassen Sie sich bei medizinischen Geräten oder allem, wovon ein Leben abhängt, nicht auf diese Vorhersage.</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>this is out of range</source>
        <translation>das liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>state a number above %1 to %2</source>
        <translation>geben Sie eine Zahl über %1 bis %2 an</translation>
    </message>
    <message>
        <source>state a number from %1 to %2</source>
        <translation>geben Sie eine Zahl von %1 bis %2 an</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>Autonomietage</translation>
    </message>
    <message>
        <source>peak-sun hours</source>
        <translation>Vollsonnenstunden</translation>
    </message>
    <message>
        <source>derating</source>
        <translation>Minderungsfaktor</translation>
    </message>
    <message>
        <source>array-to-load ratio</source>
        <translation>Verhältnis Generator zu Last</translation>
    </message>
    <message>
        <source>array</source>
        <translation>Generator</translation>
    </message>
    <message>
        <source>units side by side</source>
        <translation>Speicher nebeneinander</translation>
    </message>
    <message>
        <source>daylight hours</source>
        <translation>Stunden mit Tageslicht</translation>
    </message>
    <message>
        <source>expected share, lower end</source>
        <translation>erwarteter Anteil, unteres Ende</translation>
    </message>
    <message>
        <source>expected share, upper end</source>
        <translation>erwarteter Anteil, oberes Ende</translation>
    </message>
    <message>
        <source>inverter efficiency</source>
        <translation>Wirkungsgrad des Wechselrichters</translation>
    </message>
    <message>
        <source>deepest discharge</source>
        <translation>größte Entladetiefe</translation>
    </message>
    <message>
        <source>share left at the end of life</source>
        <translation>Restanteil am Lebensende</translation>
    </message>
    <message>
        <source>temperature factor</source>
        <translation>Temperaturfaktor</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Zuschlag</translation>
    </message>
    <message>
        <source>peak-sun hours of month %1</source>
        <translation>Vollsonnenstunden von Monat %1</translation>
    </message>
    <message>
        <source>the lower end of the expected share is above the upper</source>
        <translation>das untere Ende des erwarteten Anteils liegt über dem oberen</translation>
    </message>
    <message>
        <source>expected share</source>
        <translation>erwarteter Anteil</translation>
    </message>
    <message>
        <source>swap them</source>
        <translation>vertauschen Sie sie</translation>
    </message>
    <message>
        <source>Days of autonomy: %1</source>
        <translation>Autonomietage: %1</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>a file of the copy&apos;s name is no copy of this logbook</source>
        <translation>eine Datei mit dem Namen der Kopie ist keine Kopie dieses Logbuchs</translation>
    </message>
    <message>
        <source>move it away, or choose another folder for the copies</source>
        <translation>verschieben Sie sie oder wählen Sie einen anderen Ordner für die Kopien</translation>
    </message>
    <message>
        <source>the disk is full; no copy was made</source>
        <translation>der Datenträger ist voll; keine Kopie wurde gemacht</translation>
    </message>
    <message>
        <source>free some space, or choose another folder for the copies</source>
        <translation>schaffen Sie Platz oder wählen Sie einen anderen Ordner für die Kopien</translation>
    </message>
    <message>
        <source>the copy that was just made cannot be read back</source>
        <translation>die eben gemachte Kopie lässt sich nicht wieder lesen</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder for the copies; no copy was kept</source>
        <translation>prüfen Sie den Datenträger oder wählen Sie einen anderen Ordner für die Kopien; keine Kopie wurde behalten</translation>
    </message>
    <message>
        <source>a text of %1 is too long</source>
        <translation>ein Text ist zu lang: %1</translation>
    </message>
    <message>
        <source>a text of %1 is no UTF-8</source>
        <translation>ein Text ist kein UTF-8: %1</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>eine Ablesung</translation>
    </message>
    <message>
        <source>a meter has no data</source>
        <translation>ein Zähler hat keine Daten</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Zähler %1</translation>
    </message>
    <message>
        <source>an option of the method</source>
        <translation>eine Option der Methode</translation>
    </message>
    <message>
        <source>the publisher&apos;s details</source>
        <translation>die Angaben zum Herausgeber</translation>
    </message>
    <message>
        <source>the source of a meter</source>
        <translation>die Quelle eines Zählers</translation>
    </message>
    <message>
        <source>a set of columns</source>
        <translation>ein Satz Spalten</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>Speicher %1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>Lauf %1</translation>
    </message>
    <message>
        <source>log %1</source>
        <translation>Log %1</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>%1 is %2 here, but %3 in the logbook</source>
        <translation>%1: hier %2, im Logbuch aber %3</translation>
    </message>
    <message>
        <source>correct one of the two, or give this one another name; nothing was imported</source>
        <translation>korrigieren Sie eines von beiden oder geben Sie diesem hier einen anderen Namen; nichts wurde importiert</translation>
    </message>
    <message>
        <source>the currency</source>
        <translation>die Währung</translation>
    </message>
    <message>
        <source>the model</source>
        <translation>das Modell</translation>
    </message>
    <message>
        <source>the serial number</source>
        <translation>die Seriennummer</translation>
    </message>
    <message>
        <source>the chemistry</source>
        <translation>die Chemie</translation>
    </message>
    <message>
        <source>the day of purchase</source>
        <translation>der Kauftag</translation>
    </message>
    <message>
        <source>the rated energy</source>
        <translation>die Nennenergie</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>die Nennleistung</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>the peak output</source>
        <translation>die Spitzenleistung</translation>
    </message>
    <message>
        <source>the PV voltage limit</source>
        <translation>die PV-Spannungsgrenze</translation>
    </message>
    <message>
        <source>%1 V</source>
        <translation>%1 V</translation>
    </message>
    <message>
        <source>the PV current limit</source>
        <translation>die PV-Stromgrenze</translation>
    </message>
    <message>
        <source>%1 A</source>
        <translation>%1 A</translation>
    </message>
    <message>
        <source>the PV power limit</source>
        <translation>die PV-Leistungsgrenze</translation>
    </message>
    <message>
        <source>the PV start voltage</source>
        <translation>die PV-Anlaufspannung</translation>
    </message>
    <message>
        <source>the PV short-circuit current</source>
        <translation>der PV-Kurzschlussstrom</translation>
    </message>
    <message>
        <source>the charge time</source>
        <translation>die Ladezeit</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>der Preis</translation>
    </message>
    <message>
        <source>the price paid</source>
        <translation>der gezahlte Preis</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>die Masse</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>the warranty</source>
        <translation>die Garantie</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 a</translation>
    </message>
    <message>
        <source>the cycles before</source>
        <translation>die Zyklen davor</translation>
    </message>
    <message>
        <source>the gauge step</source>
        <translation>der Anzeigeschritt</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 Prozentpunkte</translation>
    </message>
    <message>
        <source>the class</source>
        <translation>die Klasse</translation>
    </message>
    <message>
        <source>the standard</source>
        <translation>die Norm</translation>
    </message>
    <message>
        <source>the number of the certificate</source>
        <translation>die Nummer des Kalibrierscheins</translation>
    </message>
    <message>
        <source>the date of the certificate</source>
        <translation>das Datum des Kalibrierscheins</translation>
    </message>
    <message>
        <source>the laboratory</source>
        <translation>das Labor</translation>
    </message>
    <message>
        <source>the end of its validity</source>
        <translation>das Ende seiner Gültigkeit</translation>
    </message>
    <message>
        <source>a point of correction</source>
        <translation>ein Korrektionspunkt</translation>
    </message>
    <message>
        <source>another</source>
        <translation>ein anderer</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>the step</source>
        <translation>der Schritt</translation>
    </message>
    <message>
        <source>the part of the error limit of each load</source>
        <translation>der je Last eigene Teil der Fehlergrenze</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>the error limit</source>
        <translation>die Fehlergrenze</translation>
    </message>
    <message>
        <source>the span</source>
        <translation>der Umfang</translation>
    </message>
    <message>
        <source>the starting current</source>
        <translation>der Anlaufstrom</translation>
    </message>
    <message>
        <source>the lowest load of the range</source>
        <translation>die niedrigste Last des Bereichs</translation>
    </message>
    <message>
        <source>the highest load of the range</source>
        <translation>die höchste Last des Bereichs</translation>
    </message>
    <message>
        <source>the correction</source>
        <translation>die Korrektion</translation>
    </message>
    <message>
        <source>the samples are not in order of time</source>
        <translation>die Messwerte sind nicht zeitlich geordnet</translation>
    </message>
    <message>
        <source>sort the log by time</source>
        <translation>ordnen Sie das Log nach der Zeit</translation>
    </message>
    <message>
        <source>a PV sheet or the source of a charge is of an unknown kind</source>
        <translation>ein PV-Blatt oder die Quelle einer Ladung ist von unbekannter Art</translation>
    </message>
    <message>
        <source>a run or a mark is of an unknown kind</source>
        <translation>ein Lauf oder eine Marke ist von unbekannter Art</translation>
    </message>
    <message>
        <source>a photo is of an unknown kind</source>
        <translation>ein Foto ist von unbekannter Art</translation>
    </message>
    <message>
        <source>the logbook is damaged (%1)</source>
        <translation>das Logbuch ist beschädigt (%1)</translation>
    </message>
    <message>
        <source>restore it from a copy; nothing was changed</source>
        <translation>stellen Sie es aus einer Kopie wieder her; nichts wurde geändert</translation>
    </message>
    <message>
        <source>it has no version</source>
        <translation>es hat keine Version</translation>
    </message>
    <message>
        <source>its tables are not those of version %1</source>
        <translation>seine Tabellen sind nicht die von Version %1</translation>
    </message>
    <message>
        <source>a row of %1 has lost its owner</source>
        <translation>eine Zeile hat ihren Besitzer verloren: %1</translation>
    </message>
    <message>
        <source>the file changed while it was being opened</source>
        <translation>die Datei änderte sich, während sie geöffnet wurde</translation>
    </message>
    <message>
        <source>wait until the other program has done with it, then open it again</source>
        <translation>warten Sie, bis das andere Programm damit fertig ist, und öffnen Sie sie dann noch einmal</translation>
    </message>
    <message>
        <source>the disk does not allow safe recording</source>
        <translation>der Datenträger erlaubt kein sicheres Aufzeichnen</translation>
    </message>
    <message>
        <source>copy the logbook to a disk of this machine</source>
        <translation>kopieren Sie das Logbuch auf einen Datenträger dieses Rechners</translation>
    </message>
    <message>
        <source>the remains of another logbook of this name lie in the folder</source>
        <translation>Reste eines anderen Logbuchs dieses Namens liegen im Ordner</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>not all of the open logbook can be read any more</source>
        <translation>das offene Logbuch lässt sich nicht mehr ganz lesen</translation>
    </message>
    <message>
        <source>restore the logbook from a copy of it; no copy was made</source>
        <translation>stellen Sie das Logbuch aus einer Kopie wieder her; keine Kopie wurde gemacht</translation>
    </message>
    <message>
        <source>the disk is full; nothing was recorded</source>
        <translation>der Datenträger ist voll; nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>free some space, then try again</source>
        <translation>schaffen Sie Platz und versuchen Sie es dann noch einmal</translation>
    </message>
    <message>
        <source>the logbook cannot be written</source>
        <translation>das Logbuch lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>check the permissions of the file and its folder</source>
        <translation>prüfen Sie die Zugriffsrechte von Datei und Ordner</translation>
    </message>
    <message>
        <source>close it and restore it from a copy</source>
        <translation>schließen Sie es und stellen Sie es aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>the logbook refused this (%1); nothing was recorded</source>
        <translation>das Logbuch lehnte dies ab (%1); nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>the memory is used up; nothing was recorded</source>
        <translation>der Arbeitsspeicher ist aufgebraucht; nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>schließen Sie andere Programme</translation>
    </message>
    <message>
        <source>the disk reported a fault; nothing was recorded (%1)</source>
        <translation>der Datenträger meldete einen Fehler; nichts wurde eingetragen (%1)</translation>
    </message>
    <message>
        <source>check the disk and its cable, then try again</source>
        <translation>prüfen Sie den Datenträger und sein Kabel und versuchen Sie es dann noch einmal</translation>
    </message>
    <message>
        <source>the file cannot be reached (%1)</source>
        <translation>die Datei ist nicht erreichbar (%1)</translation>
    </message>
    <message>
        <source>check the folder</source>
        <translation>prüfen Sie den Ordner</translation>
    </message>
    <message>
        <source>the file could not be written to the disk (%1)</source>
        <translation>die Datei ließ sich nicht auf den Datenträger schreiben (%1)</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder</source>
        <translation>prüfen Sie den Datenträger oder wählen Sie einen anderen Ordner</translation>
    </message>
    <message>
        <source>the file could not be given its name (%1)</source>
        <translation>die Datei ließ sich nicht benennen (%1)</translation>
    </message>
    <message>
        <source>choose another name or folder</source>
        <translation>wählen Sie einen anderen Namen oder Ordner</translation>
    </message>
    <message>
        <source>the logbook is open elsewhere</source>
        <translation>das Logbuch ist anderswo offen</translation>
    </message>
    <message>
        <source>close it there first; only one window or command can record into a logbook at a time</source>
        <translation>schließen Sie es zuerst dort; nur ein Fenster oder Befehl kann zugleich in ein Logbuch aufzeichnen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>prüfen Sie Name und Ordner</translation>
    </message>
    <message>
        <source>check the permissions of its folder</source>
        <translation>prüfen Sie die Zugriffsrechte seines Ordners</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>choose a .ullage file</source>
        <translation>wählen Sie eine .ullage-Datei</translation>
    </message>
    <message>
        <source>the file cannot be read (%1)</source>
        <translation>die Datei lässt sich nicht lesen (%1)</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>prüfen Sie ihre Zugriffsrechte</translation>
    </message>
    <message>
        <source>the file is read-only</source>
        <translation>die Datei ist schreibgeschützt</translation>
    </message>
    <message>
        <source>make it writable, or save a copy elsewhere and record there; it can be looked at as it is</source>
        <translation>machen Sie sie beschreibbar oder speichern Sie anderswo eine Kopie und zeichnen Sie dort auf; ansehen lässt sie sich, wie sie ist</translation>
    </message>
    <message>
        <source>the folder is read-only</source>
        <translation>der Ordner ist schreibgeschützt</translation>
    </message>
    <message>
        <source>make it writable, or save a copy elsewhere and record there; the logbook can be looked at as it is</source>
        <translation>machen Sie ihn beschreibbar oder speichern Sie anderswo eine Kopie und zeichnen Sie dort auf; ansehen lässt sich das Logbuch, wie es ist</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>es gibt keinen solchen Ordner</translation>
    </message>
    <message>
        <source>make the folder first, or choose another</source>
        <translation>legen Sie zuerst den Ordner an oder wählen Sie einen anderen</translation>
    </message>
    <message>
        <source>no file can be made in this folder</source>
        <translation>in diesem Ordner lässt sich keine Datei anlegen</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>wählen Sie einen Ordner, in den Sie schreiben dürfen</translation>
    </message>
    <message>
        <source>a file of this name exists already</source>
        <translation>es gibt schon eine Datei dieses Namens</translation>
    </message>
    <message>
        <source>this logbook was written by a newer version of Ullage (file version %1, this program knows up to %2)</source>
        <translation>dieses Logbuch wurde mit einer neueren Version von Ullage geschrieben (Dateiversion %1, dieses Programm kennt bis zu %2)</translation>
    </message>
    <message>
        <source>open it with the newer program; nothing was changed</source>
        <translation>öffnen Sie es mit dem neueren Programm; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>choose another file, or make a new logbook under another name</source>
        <translation>wählen Sie eine andere Datei oder legen Sie ein neues Logbuch unter anderem Namen an</translation>
    </message>
    <message>
        <source>the file is no logbook</source>
        <translation>die Datei ist kein Logbuch</translation>
    </message>
    <message>
        <source>choose a .ullage file; run sheets are imported into a logbook</source>
        <translation>wählen Sie eine .ullage-Datei; Laufblätter werden in ein Logbuch importiert</translation>
    </message>
    <message>
        <source>the file is cut off after %1 bytes</source>
        <translation>die Datei ist nach %1 Byte abgeschnitten</translation>
    </message>
    <message>
        <source>restore it from a copy</source>
        <translation>stellen Sie es aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>the file is a database of another program</source>
        <translation>die Datei ist eine Datenbank eines anderen Programms</translation>
    </message>
    <message>
        <source>nothing more is recorded</source>
        <translation>nichts wird mehr aufgezeichnet</translation>
    </message>
    <message>
        <source>save the open logbook under another name and go on there; what you entered stays in its fields</source>
        <translation>speichern Sie das offene Logbuch unter anderem Namen und machen Sie dort weiter; was Sie eingetragen haben, bleibt in den Feldern</translation>
    </message>
    <message>
        <source>the logbook&apos;s file cannot be reached</source>
        <translation>die Datei des Logbuchs ist nicht erreichbar</translation>
    </message>
    <message>
        <source>the logbook&apos;s file was removed while it was open</source>
        <translation>die Datei des Logbuchs wurde entfernt, während es offen war</translation>
    </message>
    <message>
        <source>the logbook&apos;s file was renamed or moved while it was open</source>
        <translation>die Datei des Logbuchs wurde umbenannt oder verschoben, während es offen war</translation>
    </message>
    <message>
        <source>another file has taken the place of the open logbook</source>
        <translation>eine andere Datei hat den Platz des offenen Logbuchs eingenommen</translation>
    </message>
    <message>
        <source>another program has cut the open logbook short</source>
        <translation>ein anderes Programm hat das offene Logbuch gekürzt</translation>
    </message>
    <message>
        <source>another program has written to the open logbook</source>
        <translation>ein anderes Programm hat in das offene Logbuch geschrieben</translation>
    </message>
    <message>
        <source>opening it was cancelled</source>
        <translation>das Öffnen wurde abgebrochen</translation>
    </message>
    <message>
        <source>the logbook is open for looking only</source>
        <translation>das Logbuch ist nur zum Ansehen offen</translation>
    </message>
    <message>
        <source>open it for recording first</source>
        <translation>öffnen Sie es zuerst zum Aufzeichnen</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the disk reported a fault</source>
        <translation>der Datenträger meldete einen Fehler</translation>
    </message>
    <message>
        <source>what was recorded last is safe, but in `%1` beside the logbook; free some space</source>
        <translation>was zuletzt eingetragen wurde, ist sicher, aber in `%1` neben dem Logbuch; schaffen Sie Platz</translation>
    </message>
    <message>
        <source>what was recorded last is safe, but in `%1` beside the logbook; check the disk</source>
        <translation>was zuletzt eingetragen wurde, ist sicher, aber in `%1` neben dem Logbuch; prüfen Sie den Datenträger</translation>
    </message>
    <message>
        <source>it may have been chosen from another logbook</source>
        <translation>es kann aus einem anderen Logbuch gewählt sein</translation>
    </message>
    <message>
        <source>a block of samples cannot be read</source>
        <translation>ein Block von Messwerten lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>restore the logbook from a copy</source>
        <translation>stellen Sie das Logbuch aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>nothing was added</source>
        <translation>nichts wurde angefügt</translation>
    </message>
    <message>
        <source>the photo is empty</source>
        <translation>das Foto ist leer</translation>
    </message>
    <message>
        <source>choose another file</source>
        <translation>wählen Sie eine andere Datei</translation>
    </message>
    <message>
        <source>the photo has %1; a logbook takes photos of at most %2</source>
        <translation>das Foto hat %1; ein Logbuch nimmt Fotos bis höchstens %2</translation>
    </message>
    <message>
        <source>save it smaller, as JPEG for example</source>
        <translation>speichern Sie es kleiner, zum Beispiel als JPEG</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG picture, whatever its name says</source>
        <translation>das ist weder ein JPEG- noch ein PNG-Bild, was immer der Name sagt</translation>
    </message>
    <message>
        <source>save it as JPEG or PNG first</source>
        <translation>speichern Sie es zuerst als JPEG oder PNG</translation>
    </message>
    <message>
        <source>the head of the picture is damaged or cut off</source>
        <translation>der Anfang des Bildes ist beschädigt oder abgeschnitten</translation>
    </message>
    <message>
        <source>copy it from the camera again</source>
        <translation>kopieren Sie es noch einmal von der Kamera</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels; a logbook takes photos of at most %3 megapixels</source>
        <translation>das Foto hat %1 x %2 Pixel; ein Logbuch nimmt Fotos bis höchstens %3 Megapixel</translation>
    </message>
    <message>
        <source>save it smaller</source>
        <translation>speichern Sie es kleiner</translation>
    </message>
    <message>
        <source>there is no room for a temporary copy of the logbook</source>
        <translation>für eine temporäre Kopie des Logbuchs ist kein Platz</translation>
    </message>
    <message>
        <source>free space there, then open the logbook again</source>
        <translation>schaffen Sie dort Platz und öffnen Sie das Logbuch dann noch einmal</translation>
    </message>
    <message>
        <source>a temporary copy of the logbook failed: %1</source>
        <translation>eine temporäre Kopie des Logbuchs ist misslungen: %1</translation>
    </message>
    <message>
        <source>check the space and permissions of the temporary folder</source>
        <translation>prüfen Sie Platz und Zugriffsrechte des Ordners für temporäre Dateien</translation>
    </message>
    <message>
        <source>nothing is left of it</source>
        <translation>nichts ist davon übrig</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>die Datei lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>check the disk, or take a copy of the file</source>
        <translation>prüfen Sie den Datenträger oder machen Sie eine Kopie der Datei</translation>
    </message>
    <message>
        <source>the file is too large for the memory</source>
        <translation>die Datei ist zu groß für den Arbeitsspeicher</translation>
    </message>
    <message>
        <source>the logbook is open elsewhere and changes all the time</source>
        <translation>das Logbuch ist anderswo offen und ändert sich ständig</translation>
    </message>
    <message>
        <source>try again in a moment</source>
        <translation>versuchen Sie es gleich noch einmal</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>give it a name</source>
        <translation>geben Sie einen Namen an</translation>
    </message>
    <message>
        <source>the tags are not in order, or one holds a semicolon, a comma or blanks around it</source>
        <translation>die Schlagwörter sind nicht geordnet, oder eines enthält ein Semikolon, ein Komma oder Leerzeichen am Rand</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>give short words, each once</source>
        <translation>geben Sie kurze Worte an, jedes einmal</translation>
    </message>
    <message>
        <source>points of correction</source>
        <translation>Korrektionspunkte</translation>
    </message>
    <message numerus="yes">
        <source>there are %n of them</source>
        <comment>there is %n of them</comment>
        <translation>
            <numerusform>es gibt %n davon</numerusform>
            <numerusform>es gibt %n davon</numerusform>
        </translation>
    </message>
    <message>
        <source>load of a point</source>
        <translation>Last eines Punkts</translation>
    </message>
    <message>
        <source>correction of a point</source>
        <translation>Korrektion eines Punkts</translation>
    </message>
    <message>
        <source>uncertainty of a point</source>
        <translation>Unsicherheit eines Punkts</translation>
    </message>
    <message>
        <source>coverage factor of a point</source>
        <translation>Erweiterungsfaktor eines Punkts</translation>
    </message>
    <message>
        <source>a point states a coverage factor but no uncertainty</source>
        <translation>ein Punkt nennt einen Erweiterungsfaktor, aber keine Unsicherheit</translation>
    </message>
    <message>
        <source>state U with k</source>
        <translation>geben Sie U mit k an</translation>
    </message>
    <message>
        <source>the points are not in order of rising load, or two are at one load</source>
        <translation>die Punkte sind nicht nach steigender Last geordnet, oder zwei liegen bei einer Last</translation>
    </message>
    <message>
        <source>state each load once, the lowest first</source>
        <translation>geben Sie jede Last einmal an, die niedrigste zuerst</translation>
    </message>
    <message>
        <source>the unit has no name</source>
        <translation>der Speicher hat keinen Namen</translation>
    </message>
    <message>
        <source>day of purchase</source>
        <translation>Kauftag</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>chemistry</source>
        <translation>Chemie</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>PV voltage limit</source>
        <translation>PV-Spannungsgrenze</translation>
    </message>
    <message>
        <source>PV current limit</source>
        <translation>PV-Stromgrenze</translation>
    </message>
    <message>
        <source>PV power limit</source>
        <translation>PV-Leistungsgrenze</translation>
    </message>
    <message>
        <source>PV start voltage</source>
        <translation>PV-Anlaufspannung</translation>
    </message>
    <message>
        <source>PV short-circuit current</source>
        <translation>PV-Kurzschlussstrom</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>Ladezeit</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>gezahlter Preis</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>Garantie</translation>
    </message>
    <message>
        <source>cycles before</source>
        <translation>Zyklen davor</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>Anzeigeschritt</translation>
    </message>
    <message>
        <source>the meter has no name</source>
        <translation>der Zähler hat keinen Namen</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>Datum des Kalibrierscheins</translation>
    </message>
    <message>
        <source>end of the certificate&apos;s validity</source>
        <translation>Ende der Gültigkeit des Kalibrierscheins</translation>
    </message>
    <message>
        <source>the range begins above its end</source>
        <translation>der Bereich beginnt über seinem Ende</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>exchange the two loads</source>
        <translation>vertauschen Sie die beiden Lasten</translation>
    </message>
    <message>
        <source>number of the certificate</source>
        <translation>Nummer des Kalibrierscheins</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>Labor</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>Norm</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>error limit</source>
        <translation>Fehlergrenze</translation>
    </message>
    <message>
        <source>part of the error limit of each load</source>
        <translation>je Last eigener Teil der Fehlergrenze</translation>
    </message>
    <message>
        <source>span</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>starting current</source>
        <translation>Anlaufstrom</translation>
    </message>
    <message>
        <source>lowest load of the range</source>
        <translation>niedrigste Last des Bereichs</translation>
    </message>
    <message>
        <source>highest load of the range</source>
        <translation>höchste Last des Bereichs</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>keys that are not known</source>
        <translation>unbekannte Schlüssel</translation>
    </message>
    <message>
        <source>a key that is not known</source>
        <translation>ein unbekannter Schlüssel</translation>
    </message>
    <message>
        <source>the second meter is the first one</source>
        <translation>der zweite Zähler ist der erste</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>zweiter Zähler</translation>
    </message>
    <message>
        <source>choose another meter, or none</source>
        <translation>wählen Sie einen anderen Zähler oder keinen</translation>
    </message>
    <message>
        <source>created</source>
        <translation>angelegt</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>ambient temperature</source>
        <translation>Umgebungstemperatur</translation>
    </message>
    <message>
        <source>ambient temperature at the end</source>
        <translation>Umgebungstemperatur am Ende</translation>
    </message>
    <message>
        <source>how late the end was noticed</source>
        <translation>wie spät das Ende bemerkt wurde</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>zweites Zählwerk</translation>
    </message>
    <message>
        <source>meter power</source>
        <translation>Leistung am Zähler</translation>
    </message>
    <message>
        <source>display power</source>
        <translation>Leistung auf dem Display</translation>
    </message>
    <message>
        <source>the PV sheet has no name</source>
        <translation>das PV-Blatt hat keinen Namen</translation>
    </message>
    <message>
        <source>a string has at least one module, and at most 1000</source>
        <translation>ein Strang hat mindestens ein Modul und höchstens 1000</translation>
    </message>
    <message>
        <source>series, parallel</source>
        <translation>in Reihe, parallel</translation>
    </message>
    <message>
        <source>give 1 to 1000</source>
        <translation>geben Sie 1 bis 1000 an</translation>
    </message>
    <message>
        <source>module</source>
        <translation>Modul</translation>
    </message>
    <message>
        <source>Voc</source>
        <translation>Voc</translation>
    </message>
    <message>
        <source>Vmp</source>
        <translation>Vmp</translation>
    </message>
    <message>
        <source>Isc</source>
        <translation>Isc</translation>
    </message>
    <message>
        <source>Imp</source>
        <translation>Imp</translation>
    </message>
    <message>
        <source>coefficient of Voc</source>
        <translation>Koeffizient von Voc</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>Koeffizient von Vmp</translation>
    </message>
    <message>
        <source>coefficient of power</source>
        <translation>Koeffizient der Leistung</translation>
    </message>
    <message>
        <source>NOCT</source>
        <translation>NOCT</translation>
    </message>
    <message>
        <source>coldest ambient</source>
        <translation>kälteste Umgebung</translation>
    </message>
    <message>
        <source>hottest ambient</source>
        <translation>heißeste Umgebung</translation>
    </message>
    <message>
        <source>hottest cell</source>
        <translation>heißeste Zelle</translation>
    </message>
    <message>
        <source>irradiance</source>
        <translation>Bestrahlungsstärke</translation>
    </message>
    <message>
        <source>tolerance of the voltages</source>
        <translation>Toleranz der Spannungen</translation>
    </message>
    <message>
        <source>time of the photo</source>
        <translation>Zeit des Fotos</translation>
    </message>
    <message>
        <source>file name</source>
        <translation>Dateiname</translation>
    </message>
    <message>
        <source>time of the log</source>
        <translation>Zeit des Logs</translation>
    </message>
    <message>
        <source>fingerprint</source>
        <translation>Prüfsumme</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>header</source>
        <translation>Kopfzeile</translation>
    </message>
    <message>
        <source>uncertainty of the clock offset</source>
        <translation>Unsicherheit des Uhrversatzes</translation>
    </message>
    <message>
        <source>time of a sample</source>
        <translation>Zeit eines Messwerts</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>output power</source>
        <translation>Ausgangsleistung</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>the option has no key</source>
        <translation>die Option hat keinen Schlüssel</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>name it</source>
        <translation>geben Sie ihn an</translation>
    </message>
    <message>
        <source>publisher</source>
        <translation>Herausgeber</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>Einleitung</translation>
    </message>
    <message>
        <source>licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>no column is chosen</source>
        <translation>keine Spalte ist gewählt</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>choose one or more</source>
        <translation>wählen Sie eine oder mehrere</translation>
    </message>
    <message>
        <source>name of a set of columns</source>
        <translation>Name eines Satzes Spalten</translation>
    </message>
    <message>
        <source>half-typed entry</source>
        <translation>halb eingetippte Eingabe</translation>
    </message>
    <message>
        <source>answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>the logbook has this unit already</source>
        <translation>das Logbuch hat diesen Speicher schon</translation>
    </message>
    <message>
        <source>the logbook has no such unit</source>
        <translation>das Logbuch hat keinen solchen Speicher</translation>
    </message>
    <message>
        <source>the logbook has this meter already</source>
        <translation>das Logbuch hat diesen Zähler schon</translation>
    </message>
    <message>
        <source>the logbook has no such meter</source>
        <translation>das Logbuch hat keinen solchen Zähler</translation>
    </message>
    <message numerus="yes">
        <source>the meter is named by %n runs</source>
        <comment>the meter is named by %n run</comment>
        <translation>
            <numerusform>%n Lauf nennt den Zähler</numerusform>
            <numerusform>%n Läufe nennen den Zähler</numerusform>
        </translation>
    </message>
    <message>
        <source>choose another meter in the runs first; withdrawn runs count too</source>
        <translation>wählen Sie in den Läufen zuerst einen anderen Zähler; auch zurückgezogene Läufe zählen</translation>
    </message>
    <message>
        <source>free some space or choose another disk</source>
        <translation>schaffen Sie Platz oder wählen Sie einen anderen Datenträger</translation>
    </message>
    <message>
        <source>both meters of the run have one name</source>
        <translation>beide Zähler des Laufs haben denselben Namen</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>geben Sie einem davon einen anderen Namen</translation>
    </message>
    <message>
        <source>the logbook has this run already</source>
        <translation>das Logbuch hat diesen Lauf schon</translation>
    </message>
    <message>
        <source>the logbook has this reading already</source>
        <translation>das Logbuch hat diese Ablesung schon</translation>
    </message>
    <message>
        <source>the logbook has a load list `%1` already</source>
        <translation>das Logbuch hat schon eine Lastliste `%1`</translation>
    </message>
    <message>
        <source>give this one another name</source>
        <translation>geben Sie dieser einen anderen Namen</translation>
    </message>
    <message>
        <source>the logbook has this load list already</source>
        <translation>das Logbuch hat diese Lastliste schon</translation>
    </message>
    <message>
        <source>the logbook has no such load list</source>
        <translation>das Logbuch hat keine solche Lastliste</translation>
    </message>
    <message>
        <source>the logbook has no such run</source>
        <translation>das Logbuch hat keinen solchen Lauf</translation>
    </message>
    <message>
        <source>the logbook has no such reading</source>
        <translation>das Logbuch hat keine solche Ablesung</translation>
    </message>
    <message>
        <source>the reading is of another run</source>
        <translation>die Ablesung ist von einem anderen Lauf</translation>
    </message>
    <message>
        <source>choose a reading of this run</source>
        <translation>wählen Sie eine Ablesung dieses Laufs</translation>
    </message>
    <message>
        <source>the photos of a logbook take at most %1 MB together, and this one would exceed that</source>
        <translation>die Fotos eines Logbuchs nehmen zusammen höchstens %1 MB ein, und dieses ginge darüber hinaus</translation>
    </message>
    <message>
        <source>save photos smaller, or start a new logbook</source>
        <translation>speichern Sie Fotos kleiner oder legen Sie ein neues Logbuch an</translation>
    </message>
    <message>
        <source>the logbook has no such photo</source>
        <translation>das Logbuch hat kein solches Foto</translation>
    </message>
    <message>
        <source>the photo is withdrawn already</source>
        <translation>das Foto ist schon zurückgezogen</translation>
    </message>
    <message>
        <source>the photo is not withdrawn</source>
        <translation>das Foto ist nicht zurückgezogen</translation>
    </message>
    <message>
        <source>the logbook has this PV sheet already</source>
        <translation>das Logbuch hat dieses PV-Blatt schon</translation>
    </message>
    <message>
        <source>the logbook has no such PV sheet</source>
        <translation>das Logbuch hat kein solches PV-Blatt</translation>
    </message>
    <message>
        <source>a photo no longer waits for this entry; nothing was recorded</source>
        <translation>ein Foto wartet nicht mehr auf diese Eingabe; nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>look at the photos, then record again</source>
        <translation>sehen Sie die Fotos an und tragen Sie dann noch einmal ein</translation>
    </message>
    <message>
        <source>the reading says this already</source>
        <translation>die Ablesung sagt das schon</translation>
    </message>
    <message>
        <source>change a value or leave it as it is</source>
        <translation>ändern Sie einen Wert oder lassen Sie sie, wie sie ist</translation>
    </message>
    <message>
        <source>the reading is withdrawn already</source>
        <translation>die Ablesung ist schon zurückgezogen</translation>
    </message>
    <message>
        <source>the reading is not withdrawn</source>
        <translation>die Ablesung ist nicht zurückgezogen</translation>
    </message>
    <message>
        <source>a unit to be taken over, or what it belongs to, is not there</source>
        <translation>ein Speicher, der übernommen werden soll, oder das, wozu er gehört, ist nicht da</translation>
    </message>
    <message>
        <source>a meter to be taken over, or what it belongs to, is not there</source>
        <translation>ein Zähler, der übernommen werden soll, oder das, wozu er gehört, ist nicht da</translation>
    </message>
    <message>
        <source>a run to be taken over, or what it belongs to, is not there</source>
        <translation>ein Lauf, der übernommen werden soll, oder das, wozu er gehört, ist nicht da</translation>
    </message>
    <message>
        <source>a reading to be taken over, or what it belongs to, is not there</source>
        <translation>eine Ablesung, die übernommen werden soll, oder das, wozu sie gehört, ist nicht da</translation>
    </message>
    <message>
        <source>a photo to be taken over, or what it belongs to, is not there</source>
        <translation>ein Foto, das übernommen werden soll, oder das, wozu es gehört, ist nicht da</translation>
    </message>
    <message>
        <source>the logbook has this photo already</source>
        <translation>das Logbuch hat dieses Foto schon</translation>
    </message>
    <message>
        <source>a log to be taken over, or what it belongs to, is not there</source>
        <translation>ein Log, das übernommen werden soll, oder das, wozu es gehört, ist nicht da</translation>
    </message>
    <message>
        <source>the logbook has this log already</source>
        <translation>das Logbuch hat dieses Log schon</translation>
    </message>
    <message>
        <source>a load list to be taken over, or what it belongs to, is not there</source>
        <translation>eine Lastliste, die übernommen werden soll, oder das, wozu sie gehört, ist nicht da</translation>
    </message>
    <message>
        <source>a PV sheet to be taken over, or what it belongs to, is not there</source>
        <translation>ein PV-Blatt, das übernommen werden soll, oder das, wozu es gehört, ist nicht da</translation>
    </message>
    <message>
        <source>the photos of both logbooks take more than %1 MB together</source>
        <translation>die Fotos beider Logbücher nehmen zusammen mehr als %1 MB ein</translation>
    </message>
    <message>
        <source>a logbook holds no more; nothing was taken over</source>
        <translation>ein Logbuch fasst nicht mehr; nichts wurde übernommen</translation>
    </message>
    <message>
        <source>compare the logbooks again</source>
        <translation>vergleichen Sie die Logbücher noch einmal</translation>
    </message>
    <message>
        <source>compare the logbooks again; nothing was taken over</source>
        <translation>vergleichen Sie die Logbücher noch einmal; nichts wurde übernommen</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>nothing was taken over</source>
        <translation>nichts wurde übernommen</translation>
    </message>
    <message>
        <source>one of several changes failed</source>
        <translation>eine von mehreren Änderungen ist misslungen</translation>
    </message>
    <message>
        <source>none of them was made</source>
        <translation>keine davon wurde gemacht</translation>
    </message>
    <message>
        <source>its times overlap those of `%1`, which the run has already</source>
        <translation>seine Zeiten überschneiden sich mit denen von `%1`, das der Lauf schon hat</translation>
    </message>
    <message>
        <source>withdraw that trace, cut the log, or name the meter if another wrote it</source>
        <translation>ziehen Sie jenes Log zurück, kürzen Sie dieses oder nennen Sie den Zähler, wenn ein anderer es schrieb</translation>
    </message>
    <message>
        <source>it tells the unit&apos;s gauge for times at which `%1` does so already</source>
        <translation>es nennt die Ladeanzeige des Speichers für Zeiten, für die `%1` es schon tut</translation>
    </message>
    <message>
        <source>it tells the unit&apos;s output power for times at which `%1` does so already</source>
        <translation>es nennt die Ausgangsleistung des Speichers für Zeiten, für die `%1` es schon tut</translation>
    </message>
    <message>
        <source>withdraw that trace, or leave that column unused</source>
        <translation>ziehen Sie jenes Log zurück oder lassen Sie jene Spalte ungenutzt</translation>
    </message>
    <message>
        <source>this log is in the run already (as `%1`)</source>
        <translation>dieses Log ist schon im Lauf (als `%1`)</translation>
    </message>
    <message>
        <source>nothing was imported</source>
        <translation>nichts wurde importiert</translation>
    </message>
    <message>
        <source>the logbook has this trace already</source>
        <translation>das Logbuch hat dieses Log schon</translation>
    </message>
    <message>
        <source>no row of the log could be taken</source>
        <translation>keine Zeile des Logs ließ sich übernehmen</translation>
    </message>
    <message>
        <source>see which rows were left out, and why</source>
        <translation>sehen Sie nach, welche Zeilen ausgelassen wurden und warum</translation>
    </message>
    <message>
        <source>the logbook has no such trace</source>
        <translation>das Logbuch hat kein solches Log</translation>
    </message>
    <message>
        <source>this log was withdrawn from its run</source>
        <translation>dieses Log wurde aus seinem Lauf zurückgezogen</translation>
    </message>
    <message>
        <source>import it again</source>
        <translation>importieren Sie es noch einmal</translation>
    </message>
    <message>
        <source>this log has been added to meanwhile</source>
        <translation>an dieses Log wurde inzwischen angefügt</translation>
    </message>
    <message>
        <source>follow it again</source>
        <translation>verfolgen Sie es noch einmal</translation>
    </message>
</context>
<context>
    <name>tables</name>
    <message>
        <source>%1, unit</source>
        <translation>%1, Einheit</translation>
    </message>
    <message>
        <source>%1, lower</source>
        <translation>%1, unten</translation>
    </message>
    <message>
        <source>%1, upper</source>
        <translation>%1, oben</translation>
    </message>
    <message>
        <source>%1, kind</source>
        <translation>%1, Art</translation>
    </message>
    <message>
        <source>%1, reason</source>
        <translation>%1, Grund</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>%1, value and interval</source>
        <translation>%1, Wert und Intervall</translation>
    </message>
    <message>
        <source>the workbook could not be written whole</source>
        <translation>die Arbeitsmappe ließ sich nicht ganz schreiben</translation>
    </message>
    <message>
        <source>make room on the disk or choose another place</source>
        <translation>schaffen Sie Platz auf dem Datenträger oder wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>`%1` is no format of a table</source>
        <translation>`%1` ist kein Format einer Tabelle</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>nehmen Sie %1</translation>
    </message>
    <message>
        <source>the description of the table cannot stand beside it: %1</source>
        <translation>die Beschreibung der Tabelle kann nicht neben ihr stehen: %1</translation>
    </message>
    <message>
        <source>the table is written, but its description is not: %1</source>
        <translation>die Tabelle ist geschrieben, ihre Beschreibung aber nicht: %1</translation>
    </message>
    <message>
        <source>value; the columns that follow say how far it is known</source>
        <translation>Wert; die folgenden Spalten sagen, wie genau er bekannt ist</translation>
    </message>
    <message>
        <source>unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
    <message>
        <source>lower end of the 95 % interval of %1</source>
        <translation>unteres Ende des 95-%-Intervalls von %1</translation>
    </message>
    <message>
        <source>upper end of the 95 % interval of %1</source>
        <translation>oberes Ende des 95-%-Intervalls von %1</translation>
    </message>
    <message>
        <source>how far %1 is known</source>
        <translation>wie genau %1 bekannt ist</translation>
    </message>
    <message>
        <source>why %1 is not simply measured, or what it assumes</source>
        <translation>warum %1 nicht einfach gemessen ist oder was dabei angenommen wird</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>A text that a spreadsheet would run as a formula has an apostrophe in front.</source>
        <translation>Ein Text, den eine Tabellenkalkulation als Formel ausführen würde, hat einen Apostroph davor.</translation>
    </message>
    <message>
        <source>The numbers of this table in full (CSV)</source>
        <translation>Die Zahlen dieser Tabelle vollständig (CSV)</translation>
    </message>
    <message>
        <source>sort by this column</source>
        <translation>nach dieser Spalte sortieren</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Written by Ullage %1. Bring it into a document with \input; the preamble needs:</source>
        <translation>Geschrieben von Ullage %1. Mit \input in ein Dokument einbinden; die Präambel braucht:</translation>
    </message>
    <message>
        <source>before LaTeX %1</source>
        <translation>vor LaTeX %1</translation>
    </message>
    <message>
        <source>A table wider than the page stands in parts that fit A4 with the margins of the article class. One that is wider than the page upright but not in landscape: \usepackage{pdflscape} and \begin{landscape} ... \end{landscape} around the \input.</source>
        <translation>Eine Tabelle, die breiter als die Seite ist, steht in Teilen, die mit den Rändern der Klasse article auf A4 passen. Eine, die breiter als die Seite im Hochformat ist, aber nicht im Querformat: \usepackage{pdflscape} und \begin{landscape} ... \end{landscape} um das \input.</translation>
    </message>
    <message>
        <source>%1, part %2 of %3</source>
        <translation>%1, Teil %2 von %3</translation>
    </message>
    <message>
        <source>%1, local</source>
        <translation>%1, Ortszeit</translation>
    </message>
    <message>
        <source>a sheet of a workbook holds %1 rows and %2 columns, the table has %3 and %4</source>
        <translation>ein Blatt einer Arbeitsmappe fasst %1 Zeilen und %2 Spalten, die Tabelle hat %3 und %4</translation>
    </message>
    <message>
        <source>export it as csv</source>
        <translation>exportieren Sie sie als csv</translation>
    </message>
    <message>
        <source>there is not enough memory for the workbook</source>
        <translation>für die Arbeitsmappe reicht der Arbeitsspeicher nicht</translation>
    </message>
    <message>
        <source>the workbook cannot be made</source>
        <translation>die Arbeitsmappe lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>auf dem Datenträger ist kein Platz mehr</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>schaffen Sie Platz oder wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>check that the folder exists and may be written to</source>
        <translation>prüfen Sie, ob der Ordner existiert und beschreibbar ist</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>line %1, character %2</source>
        <translation>Zeile %1, Zeichen %2</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>dieses Anführungszeichen wird nie geschlossen</translation>
    </message>
    <message>
        <source>close it, or write a quote within a field twice</source>
        <translation>schließen Sie es oder schreiben Sie ein Anführungszeichen in einem Feld doppelt</translation>
    </message>
    <message>
        <source>text follows a closing quote</source>
        <translation>Text folgt auf ein schließendes Anführungszeichen</translation>
    </message>
    <message>
        <source>put a comma after the field, or write a quote within it twice</source>
        <translation>setzen Sie ein Komma nach dem Feld oder schreiben Sie ein Anführungszeichen darin doppelt</translation>
    </message>
    <message>
        <source>a quote stands inside a field without quotes</source>
        <translation>ein Anführungszeichen steht in einem Feld ohne Anführungszeichen</translation>
    </message>
    <message>
        <source>put the field in quotes and write the quote twice</source>
        <translation>setzen Sie das Feld in Anführungszeichen und schreiben Sie das Anführungszeichen doppelt</translation>
    </message>
    <message>
        <source>a carriage return without line feed</source>
        <translation>ein Wagenrücklauf ohne Zeilenvorschub</translation>
    </message>
    <message>
        <source>save the file with LF or CRLF line ends</source>
        <translation>speichern Sie die Datei mit Zeilenenden LF oder CRLF</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>geben Sie %1 an</translation>
    </message>
    <message>
        <source>`%1` is no point of correction</source>
        <translation>`%1` ist kein Korrektionspunkt</translation>
    </message>
    <message>
        <source>give load, correction, U and k, like `100 0.998 0.3 2; 500 1.001 0.25 2`</source>
        <translation>geben Sie Last, Korrektion, U und k an, wie `100 0.998 0.3 2; 500 1.001 0.25 2`</translation>
    </message>
    <message>
        <source>the load %1 W stands twice</source>
        <translation>die Last %1 W steht zweimal</translation>
    </message>
    <message>
        <source>state each load once</source>
        <translation>geben Sie jede Last einmal an</translation>
    </message>
    <message>
        <source>a backslash ends the value</source>
        <translation>ein Rückstrich beendet den Wert</translation>
    </message>
    <message>
        <source>a backslash stands before a character that it has no meaning for</source>
        <translation>ein Rückstrich steht vor einem Zeichen, für das er keine Bedeutung hat</translation>
    </message>
    <message>
        <source>write `\\` for a backslash</source>
        <translation>schreiben Sie `\\` für einen Rückstrich</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>nehmen Sie %1</translation>
    </message>
    <message>
        <source>`%1` is no kind of run</source>
        <translation>`%1` ist keine Art von Lauf</translation>
    </message>
    <message>
        <source>`%1` is no way a run ends</source>
        <translation>`%1` ist keine Art, wie ein Lauf endet</translation>
    </message>
    <message>
        <source>`%1` is neither yes nor no</source>
        <translation>`%1` ist weder yes noch no</translation>
    </message>
    <message>
        <source>use `yes` or `no`, or leave the key out when it is not known</source>
        <translation>nehmen Sie `yes` oder `no` oder lassen Sie den Schlüssel weg, wenn es unbekannt ist</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` ist keine Zeitzone, die dieser Rechner kennt</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna, or UTC</source>
        <translation>nehmen Sie einen IANA-Namen wie Europe/Vienna oder UTC</translation>
    </message>
    <message>
        <source>`%1` is no source of a charge</source>
        <translation>`%1` ist keine Quelle einer Ladung</translation>
    </message>
</context>
<context>
    <name>trace</name>
    <message>
        <source>the offset of the log&apos;s clock cannot be estimated: no register, gauge or mark was noted by hand</source>
        <translation>der Versatz der Uhr des Logs lässt sich nicht schätzen: weder Zählwerk noch Ladeanzeige noch Marke wurde von Hand notiert</translation>
    </message>
    <message>
        <source>the offset of the log&apos;s clock cannot be estimated: neither its register or gauge nor steps of its power fit the hand readings at one offset</source>
        <translation>der Versatz der Uhr des Logs lässt sich nicht schätzen: weder sein Zählwerk oder seine Ladeanzeige noch Stufen seiner Leistung passen mit einem einzigen Versatz zu den Handablesungen</translation>
    </message>
    <message>
        <source>give the offset, or note register readings or load changes by hand</source>
        <translation>geben Sie den Versatz an oder notieren Sie Zählwerksstände oder Laständerungen von Hand</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 ahead of that of the meter&apos;s log, ±%2: %3</source>
        <translation>Die Uhr des Logs geht %1 vor gegen die des Zählerlogs, ±%2: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 behind that of the meter&apos;s log, ±%2: %3</source>
        <translation>Die Uhr des Logs geht %1 nach gegen die des Zählerlogs, ±%2: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 ahead of the hand readings, ±%2: %3</source>
        <translation>Die Uhr des Logs geht %1 vor gegen die Handablesungen, ±%2: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 behind the hand readings, ±%2: %3</source>
        <translation>Die Uhr des Logs geht %1 nach gegen die Handablesungen, ±%2: %3</translation>
    </message>
    <message>
        <source>its register passed %1 of the %2 values noted by hand at the noted moments</source>
        <translation>sein Zählwerk ging zu den notierten Zeitpunkten durch %1 der %2 von Hand notierten Werte</translation>
    </message>
    <message>
        <source>its power changed at %1 of %2 steps of the power in that log</source>
        <translation>seine Leistung änderte sich bei %1 von %2 Stufen der Leistung in jenem Log</translation>
    </message>
    <message>
        <source>its gauge showed %1 of the %2 values noted by hand at the noted moments</source>
        <translation>seine Ladeanzeige zeigte %1 der %2 von Hand notierten Werte zu den notierten Zeitpunkten</translation>
    </message>
    <message>
        <source>its power changed at %1 of %2 marks</source>
        <translation>seine Leistung änderte sich bei %1 von %2 Marken</translation>
    </message>
    <message>
        <source>its power fell for the last time at the cut-off</source>
        <translation>seine Leistung fiel bei der Abschaltung zum letzten Mal</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>ungenutzt</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>output</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>the log cannot be read</source>
        <translation>das Log lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>check its permissions and the medium</source>
        <translation>prüfen Sie seine Zugriffsrechte und den Datenträger</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>name a log file</source>
        <translation>nennen Sie eine Logdatei</translation>
    </message>
    <message>
        <source>a line is longer than %1 bytes</source>
        <translation>eine Zeile ist länger als %1 Byte</translation>
    </message>
    <message>
        <source>choose a log of lines</source>
        <translation>wählen Sie ein Log aus Zeilen</translation>
    </message>
    <message>
        <source>no row of data was found: no line has a time and a value</source>
        <translation>keine Zeile mit Daten wurde gefunden: keine Zeile hat Zeit und Wert</translation>
    </message>
    <message>
        <source>check that this is a log as text (CSV or the like), or name its delimiter</source>
        <translation>prüfen Sie, ob das ein Log als Text ist (CSV oder Ähnliches), oder nennen Sie sein Trennzeichen</translation>
    </message>
    <message>
        <source>cancelled; nothing was imported</source>
        <translation>abgebrochen; nichts wurde importiert</translation>
    </message>
    <message>
        <source>no column is named for the time</source>
        <translation>für die Zeit ist keine Spalte genannt</translation>
    </message>
    <message>
        <source>name it</source>
        <translation>benennen Sie sie</translation>
    </message>
    <message>
        <source>the times of this log do not say on which day it was started</source>
        <translation>die Zeiten dieses Logs sagen nicht, an welchem Tag es begann</translation>
    </message>
    <message>
        <source>give the start of the log</source>
        <translation>geben Sie den Beginn des Logs an</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` ist keine Zeitzone, die dieser Rechner kennt</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna</source>
        <translation>nehmen Sie einen IANA-Namen wie Europe/Vienna</translation>
    </message>
    <message>
        <source>no column is named for a value</source>
        <translation>für einen Wert ist keine Spalte genannt</translation>
    </message>
    <message>
        <source>name one for the register or the power</source>
        <translation>nennen Sie eine für Zählwerk oder Leistung</translation>
    </message>
    <message>
        <source>read as the last log with this header</source>
        <translation>gelesen wie das letzte Log mit dieser Kopfzeile</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: the comma is the decimal sign, or it parts the thousands</source>
        <translation>`%1` lässt sich auf zwei Weisen lesen: das Komma ist Dezimalzeichen oder trennt Tausender</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>there is no column %1 for the %2</source>
        <translation>es gibt keine Spalte %1 für: %2</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n columns; they count from 1</source>
        <comment>the log has %n column; they count from 1</comment>
        <translation>
            <numerusform>das Log hat %n Spalte; gezählt wird ab 1</numerusform>
            <numerusform>das Log hat %n Spalten; gezählt wird ab 1</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` is no unit of %2</source>
        <translation>`%1` ist keine Einheit für: %2</translation>
    </message>
    <message>
        <source>use W, kW, Wh, kWh, J, V, mV, A, mA or %, and s, ms, min or h for times</source>
        <translation>nehmen Sie W, kW, Wh, kWh, J, V, mV, A, mA oder % und s, ms, min oder h für Zeiten</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge: taken for the unit&apos;s own, not used</source>
        <translation>%1 steht neben der Ladeanzeige: gilt als vom Speicher selbst, nicht benutzt</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge in %2: did a meter measure it, or does the unit say so of itself? Name column %3</source>
        <translation>%1 steht neben der Ladeanzeige in %2: maß es ein Zähler, oder sagt es der Speicher von sich selbst? Nennen Sie Spalte %3</translation>
    </message>
    <message>
        <source>the register in %1 has no unit (it begins with `%2`)</source>
        <translation>das Zählwerk in %1 hat keine Einheit (es beginnt mit `%2`)</translation>
    </message>
    <message>
        <source>%1 counts charge (Ah), which is no energy: not used</source>
        <translation>%1 zählt Ladung (Ah), was keine Energie ist: nicht benutzt</translation>
    </message>
    <message>
        <source>%1 and %2 may both be the %3: the first is taken</source>
        <translation>%1 und %2 können beide diese Rolle haben: %3; die erste wird genommen</translation>
    </message>
    <message>
        <source>%1 names a share of the battery: taken for the unit&apos;s gauge</source>
        <translation>%1 nennt einen Anteil der Batterie: gilt als Ladeanzeige des Speichers</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge: taken for what the unit says of its output, not for a meter&apos;s</source>
        <translation>%1 steht neben der Ladeanzeige: gilt als Angabe des Speichers zu seiner Abgabe, nicht als die eines Zählers</translation>
    </message>
    <message>
        <source>the gauge in %1 has no unit (it begins with `%2`): name it with gauge=%3:% or gauge=%3:share</source>
        <translation>die Ladeanzeige in %1 hat keine Einheit (sie beginnt mit `%2`): nennen Sie sie mit gauge=%3:% oder gauge=%3:share</translation>
    </message>
    <message>
        <source>%1 has no unit: read as %2</source>
        <translation>%1 hat keine Einheit: als %2 gelesen</translation>
    </message>
    <message>
        <source>no column of register, power (or voltage and current) or gauge is recognised: name it</source>
        <translation>keine Spalte für Zählwerk, Leistung (oder Spannung und Strom) oder Ladeanzeige ist erkannt: nennen Sie sie</translation>
    </message>
    <message>
        <source>no column of time is recognised: name it</source>
        <translation>keine Spalte für die Zeit ist erkannt: nennen Sie sie</translation>
    </message>
    <message>
        <source>no column of dates is recognised: name it</source>
        <translation>keine Spalte für das Datum ist erkannt: nennen Sie sie</translation>
    </message>
    <message>
        <source>the times begin with `%1`: times of day, or counted from the start of the log</source>
        <translation>die Zeiten beginnen mit `%1`: Uhrzeiten oder ab dem Beginn des Logs gezählt</translation>
    </message>
    <message>
        <source>the elapsed time has no unit: read as seconds</source>
        <translation>die vergangene Zeit hat keine Einheit: als Sekunden gelesen</translation>
    </message>
    <message>
        <source>`%1` can be read with the day or the month first</source>
        <translation>`%1` lässt sich mit dem Tag oder dem Monat zuerst lesen</translation>
    </message>
    <message>
        <source>the log cannot be opened</source>
        <translation>das Log lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>check its name and its permissions</source>
        <translation>prüfen Sie seinen Namen und seine Zugriffsrechte</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>nichts wurde geändert</translation>
    </message>
    <message>
        <source>this file does not begin as `%1` did when it was read</source>
        <translation>diese Datei beginnt nicht so wie `%1`, als es gelesen wurde</translation>
    </message>
    <message>
        <source>choose the file that the meter goes on writing, or import this one</source>
        <translation>wählen Sie die Datei, in die der Zähler weiterschreibt, oder importieren Sie diese</translation>
    </message>
    <message>
        <source>the lines of this log end with CR alone</source>
        <translation>die Zeilen dieses Logs enden nur mit CR</translation>
    </message>
    <message>
        <source>it can be imported when it is whole, but not followed</source>
        <translation>es lässt sich importieren, wenn es fertig ist, aber nicht verfolgen</translation>
    </message>
    <message>
        <source>the times of `%1` read otherwise now than when it was imported</source>
        <translation>die Zeiten von `%1` lesen sich jetzt anders als beim Import</translation>
    </message>
    <message>
        <source>withdraw the log from the run and import it again</source>
        <translation>ziehen Sie das Log aus dem Lauf zurück und importieren Sie es noch einmal</translation>
    </message>
    <message>
        <source>the log was begun anew, and its times do not say on which day</source>
        <translation>das Log wurde neu begonnen, und seine Zeiten sagen nicht, an welchem Tag</translation>
    </message>
    <message>
        <source>import the new log with its start</source>
        <translation>importieren Sie das neue Log mit seinem Beginn</translation>
    </message>
    <message>
        <source>the log was begun anew with other columns</source>
        <translation>das Log wurde mit anderen Spalten neu begonnen</translation>
    </message>
    <message>
        <source>import the new log</source>
        <translation>importieren Sie das neue Log</translation>
    </message>
    <message>
        <source>the last row of `%1` was cut off when it was imported</source>
        <translation>die letzte Zeile von `%1` war beim Import abgeschnitten</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>Datum und Zeit</translation>
    </message>
    <message>
        <source>date and clock</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>epoch s</source>
        <translation>Epoche in s</translation>
    </message>
    <message>
        <source>epoch ms</source>
        <translation>Epoche in ms</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>vergangen</translation>
    </message>
    <message>
        <source>elapsed h:m:s</source>
        <translation>vergangen h:m:s</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>prüfen Sie den Namen</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>prüfen Sie ihre Zugriffsrechte</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>times as %1, day first</source>
        <translation>Zeiten als %1, Tag zuerst</translation>
    </message>
    <message>
        <source>times as %1, month first</source>
        <translation>Zeiten als %1, Monat zuerst</translation>
    </message>
    <message>
        <source>times as %1, year first</source>
        <translation>Zeiten als %1, Jahr zuerst</translation>
    </message>
    <message>
        <source>times as %1</source>
        <translation>Zeiten als %1</translation>
    </message>
    <message>
        <source>%1 = column %2 in %3</source>
        <translation>%1 = Spalte %2 in %3</translation>
    </message>
    <message>
        <source>%1 = column %2</source>
        <translation>%1 = Spalte %2</translation>
    </message>
    <message>
        <source>%1 = column %2 `%3` in %4</source>
        <translation>%1 = Spalte %2 `%3` in %4</translation>
    </message>
    <message>
        <source>%1 = column %2 `%3`</source>
        <translation>%1 = Spalte %2 `%3`</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>prüfen Sie den Datenträger</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>die Datei lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>no column recognised</source>
        <translation>keine Spalte erkannt</translation>
    </message>
    <message>
        <source>delimiter %1, decimal comma, %2, data from line %3</source>
        <translation>Trennzeichen %1, Dezimalkomma, %2, Daten ab Zeile %3</translation>
    </message>
    <message>
        <source>delimiter %1, decimal point, %2, data from line %3</source>
        <translation>Trennzeichen %1, Dezimalpunkt, %2, Daten ab Zeile %3</translation>
    </message>
    <message>
        <source>%1 (%2?)</source>
        <translation>%1 (%2?)</translation>
    </message>
    <message>
        <source>answer it; nothing was imported</source>
        <translation>beantworten Sie es; nichts wurde importiert</translation>
    </message>
    <message>
        <source>too few fields</source>
        <translation>zu wenige Felder</translation>
    </message>
    <message>
        <source>a quote is not closed</source>
        <translation>ein Anführungszeichen ist nicht geschlossen</translation>
    </message>
    <message>
        <source>longer than 64 KiB</source>
        <translation>länger als 64 KiB</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>die Zeit lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>a local time that does not exist (clocks went forward)</source>
        <translation>eine Ortszeit, die es nicht gibt (Uhren vorgestellt)</translation>
    </message>
    <message>
        <source>a value cannot be read</source>
        <translation>ein Wert lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>the header again</source>
        <translation>noch einmal die Kopfzeile</translation>
    </message>
    <message>
        <source>the same row again</source>
        <translation>noch einmal dieselbe Zeile</translation>
    </message>
    <message>
        <source>the moment of another row, with other values</source>
        <translation>der Zeitpunkt einer anderen Zeile, mit anderen Werten</translation>
    </message>
    <message>
        <source>too far out of order</source>
        <translation>zu weit außer der Reihe</translation>
    </message>
    <message>
        <source>out of order, put in its place</source>
        <translation>außer der Reihe, eingeordnet</translation>
    </message>
    <message>
        <source>in an hour that occurs twice, settled by the order of rows</source>
        <translation>in einer Stunde, die zweimal vorkommt, nach der Reihenfolge der Zeilen entschieden</translation>
    </message>
    <message>
        <source>after a gap</source>
        <translation>nach einer Lücke</translation>
    </message>
</context>
<context>
    <name>ullage</name>
    <message>
        <source>Gauge error of the units against what they had delivered</source>
        <translation>Anzeigefehler der Speicher über dem, was sie abgegeben hatten</translation>
    </message>
    <message>
        <source>share delivered / %</source>
        <translation>abgegebener Anteil / %</translation>
    </message>
    <message>
        <source>gauge error / pt</source>
        <translation>Anzeigefehler / pt</translation>
    </message>
    <message>
        <source>shows too much</source>
        <translation>zeigt zu viel</translation>
    </message>
    <message>
        <source>shows too little</source>
        <translation>zeigt zu wenig</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less. Areas: 95 % intervals.</source>
        <translation>Über 0 zeigt die Ladeanzeige mehr, als übrig ist, unter 0 weniger. Flächen: 95-%-Intervalle.</translation>
    </message>
    <message>
        <source>No drain from full to cut-off with gauge and register read together.</source>
        <translation>Keine Entladung von voll bis Abschaltung mit gleichzeitig abgelesener Ladeanzeige und Zählwerk.</translation>
    </message>
    <message>
        <source>no error</source>
        <translation>kein Fehler</translation>
    </message>
    <message>
        <source>Usable fraction of the units against load</source>
        <translation>Nutzbarer Anteil der Speicher über der Last</translation>
    </message>
    <message>
        <source>Points: drains. Lines: what all drains of a unit say together, with the 95 % interval as an area.</source>
        <translation>Punkte: Entladungen. Linien: was alle Entladungen eines Speichers zusammen sagen, mit dem 95-%-Intervall als Fläche.</translation>
    </message>
    <message>
        <source>load / W</source>
        <translation>Last / W</translation>
    </message>
    <message>
        <source>usable fraction / %</source>
        <translation>nutzbarer Anteil / %</translation>
    </message>
    <message>
        <source>No full drain of a unit with a stated rated energy.</source>
        <translation>Keine volle Entladung eines Speichers mit angegebener Nennenergie.</translation>
    </message>
    <message>
        <source>compared here</source>
        <translation>hier verglichen</translation>
    </message>
    <message>
        <source>No drain to compare yet. Record a drain of each unit, from full to the cut-off, or import run sheets.</source>
        <translation>Noch keine Entladung zu vergleichen. Nehmen Sie von jedem Speicher eine Entladung auf, von voll bis zur Abschaltung, oder importieren Sie Laufblätter.</translation>
    </message>
    <message>
        <source>Delivered energy of each unit against its rated energy</source>
        <translation>Abgegebene Energie jedes Speichers gegen seine Nennenergie</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>as tested, each at the load of its run</source>
        <translation>wie getestet, jeder bei der Last seines Laufs</translation>
    </message>
    <message>
        <source>Height: rated energy. Filled: delivered at the socket; the bracket is its 95 % interval. Hatched: taken by the unit&apos;s own draw, where that is known. Dashed: what is typical.</source>
        <translation>Höhe: Nennenergie. Gefüllt: an der Steckdose abgegeben; die Klammer ist das 95-%-Intervall. Schraffiert: Eigenverbrauch des Speichers, wo bekannt. Gestrichelt: was typisch ist.</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>wie getestet</translation>
    </message>
    <message>
        <source>Usable fraction of each unit, %1, with its 95 % interval</source>
        <translation>Nutzbarer Anteil jedes Speichers, %1, mit seinem 95-%-Intervall</translation>
    </message>
    <message>
        <source>usable fraction %1, delivered / rated energy / %</source>
        <translation>nutzbarer Anteil (%1), abgegeben / Nennenergie / %</translation>
    </message>
    <message>
        <source>grey bars are as tested, at another load</source>
        <translation>graue Balken sind wie getestet, bei anderer Last</translation>
    </message>
    <message>
        <source>each at the load of its run</source>
        <translation>jeder bei der Last seines Laufs</translation>
    </message>
    <message>
        <source>Brackets: 95 % intervals. Grey band: what is typical.</source>
        <translation>Klammern: 95-%-Intervalle. Graues Band: was typisch ist.</translation>
    </message>
    <message>
        <source>typical, %1 to %2 %</source>
        <translation>typisch, %1 bis %2 %</translation>
    </message>
    <message>
        <source>; the first %1 of %2 rows</source>
        <translation>; die ersten %1 von %2 Zeilen</translation>
    </message>
    <message>
        <source>Voltage of the string against cell temperature, with the limits of the PV input</source>
        <translation>Spannung des Strangs über der Zelltemperatur, mit den Grenzen des PV-Eingangs</translation>
    </message>
    <message>
        <source>cell temperature / °C</source>
        <translation>Zelltemperatur / °C</translation>
    </message>
    <message>
        <source>string voltage / V</source>
        <translation>Strangspannung / V</translation>
    </message>
    <message>
        <source>State Voc of the module to see the voltage of the string.</source>
        <translation>Geben Sie Voc des Moduls an, um die Spannung des Strangs zu sehen.</translation>
    </message>
    <message>
        <source>open circuit</source>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>maximum power</source>
        <translation>MPP</translation>
    </message>
    <message>
        <source>danger: %1 V</source>
        <translation>Gefahr: %1 V</translation>
    </message>
    <message>
        <source>above the limit when cold</source>
        <translation>bei Kälte über der Grenze</translation>
    </message>
    <message>
        <source>limit %1 V</source>
        <translation>Grenze %1 V</translation>
    </message>
    <message>
        <source>start %1 V</source>
        <translation>Anlauf %1 V</translation>
    </message>
    <message>
        <source>PV input works</source>
        <translation>PV-Eingang arbeitet</translation>
    </message>
    <message>
        <source>coldest</source>
        <translation>am kältesten</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>am heißesten</translation>
    </message>
    <message>
        <source>energy in</source>
        <translation>geladene Energie</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>abgegeben</translation>
    </message>
    <message>
        <source>gauge-implied</source>
        <translation>laut Anzeige</translation>
    </message>
    <message>
        <source>gauge-implied, by the log</source>
        <translation>laut Anzeige, aus dem Log</translation>
    </message>
    <message>
        <source>cut-off expected</source>
        <translation>Abschaltung erwartet</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>Abschaltung</translation>
    </message>
    <message>
        <source>off somewhere here</source>
        <translation>hier irgendwo abgeschaltet</translation>
    </message>
    <message>
        <source>gauge right: empty here</source>
        <translation>Anzeige stimmt: hier leer</translation>
    </message>
    <message>
        <source>gauge wrong: still to come</source>
        <translation>Anzeige falsch: kommt noch</translation>
    </message>
    <message>
        <source>by stored depth</source>
        <translation>nach Entladetiefe</translation>
    </message>
    <message>
        <source>energy / Wh</source>
        <translation>Energie / Wh</translation>
    </message>
    <message>
        <source>Gauge-implied and delivered energy against hours since the start</source>
        <translation>Energie laut Anzeige und abgegebene Energie über den Stunden seit dem Start</translation>
    </message>
    <message>
        <source>Circles: delivered, by the meter, with its error limit as an area. Squares: what the gauge implies. Shaded: where the gauge is doubted. Dotted: rated energy and cut-off.</source>
        <translation>Kreise: abgegeben, laut Zähler, mit dessen Fehlergrenze als Fläche. Quadrate: laut Anzeige. Schattiert: wo die Ladeanzeige zweifelhaft ist. Gepunktet: Nennenergie und Abschaltung.</translation>
    </message>
    <message>
        <source>No energy yet: record the meter&apos;s register at the start, then again and again.</source>
        <translation>Noch keine Energie: tragen Sie den Stand des Zählwerks am Start ein, dann immer wieder.</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>Nennenergie %1</translation>
    </message>
    <message>
        <source>gauge error / pt, if %1 Wh come out</source>
        <translation>Anzeigefehler / pt, wenn %1 Wh herauskommen</translation>
    </message>
    <message>
        <source>gauge error / pt, against %1</source>
        <translation>Anzeigefehler / pt, gegen %1</translation>
    </message>
    <message>
        <source>Gauge error in percentage points against hours since the start</source>
        <translation>Anzeigefehler in Prozentpunkten über den Stunden seit dem Start</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less. Area: 95 % interval. Shaded: where the gauge is doubted.</source>
        <translation>Über 0 zeigt die Ladeanzeige mehr, als übrig ist, unter 0 weniger. Fläche: 95-%-Intervall. Schattiert: wo die Ladeanzeige zweifelhaft ist.</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less, of the %1 Wh that the drain is expected to deliver to its cut-off. Area: if it comes at the ends of its range, %2 to %3 Wh. Shaded: where the gauge is doubted.</source>
        <translation>Über 0 zeigt die Ladeanzeige mehr, als übrig ist, unter 0 weniger, von den %1 Wh, die die Entladung bis zur Abschaltung voraussichtlich abgibt. Fläche: wenn sie an den Enden ihrer Spanne kommt, %2 bis %3 Wh. Schattiert: wo die Ladeanzeige zweifelhaft ist.</translation>
    </message>
    <message>
        <source>No gauge error yet: it needs readings of gauge and register, and the unit&apos;s rated energy or a drain from full to cut-off.</source>
        <translation>Noch kein Anzeigefehler: er braucht Ablesungen von Ladeanzeige und Zählwerk und die Nennenergie des Speichers oder eine Entladung von voll bis Abschaltung.</translation>
    </message>
    <message>
        <source>by share delivered</source>
        <translation>nach abgegebenem Anteil</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>Mean load between register readings against hours since the start</source>
        <translation>Mittlere Last zwischen den Ablesungen des Zählwerks über den Stunden seit dem Start</translation>
    </message>
    <message>
        <source>Steps: mean load from one register reading to the next. Diamonds: power on the meter. Triangles: power on the unit&apos;s display.</source>
        <translation>Stufen: mittlere Last von einer Ablesung des Zählwerks zur nächsten. Rauten: Leistung am Zähler. Dreiecke: Leistung auf dem Display des Speichers.</translation>
    </message>
    <message>
        <source>No load yet: it follows from two readings of the meter&apos;s register.</source>
        <translation>Noch keine Last: sie folgt aus zwei Ablesungen des Zählwerks.</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>mittlere Last</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>unit&apos;s display</source>
        <translation>Display des Speichers</translation>
    </message>
    <message>
        <source>State of charge by the hour, with PV and without</source>
        <translation>Ladezustand nach Stunden, mit PV und ohne</translation>
    </message>
    <message>
        <source>time since midnight / h</source>
        <translation>Zeit seit Mitternacht / h</translation>
    </message>
    <message>
        <source>charge remaining / %</source>
        <translation>Restladung / %</translation>
    </message>
    <message>
        <source>Choose a unit whose energy is known or stated.</source>
        <translation>Wählen Sie einen Speicher, dessen Energie bekannt oder angegeben ist.</translation>
    </message>
    <message>
        <source>without PV</source>
        <translation>ohne PV</translation>
    </message>
    <message>
        <source>with PV</source>
        <translation>mit PV</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>Points: drains with their 95 % intervals. Line: what all drains say together, solid between the tested loads, dashed beyond. Area: 95 % interval.</source>
        <translation>Punkte: Entladungen mit ihren 95-%-Intervallen. Linie: was alle Entladungen zusammen sagen, durchgezogen zwischen den getesteten Lasten, darüber hinaus gestrichelt. Fläche: 95-%-Intervall.</translation>
    </message>
    <message>
        <source>next: %1 W</source>
        <translation>als nächstes: %1 W</translation>
    </message>
    <message>
        <source>No drain from full to cut-off yet: make one at any load.</source>
        <translation>Noch keine Entladung von voll bis Abschaltung: machen Sie eine bei beliebiger Last.</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>Lauf %1</translation>
    </message>
    <message>
        <source>mean of %1 drains</source>
        <translation>Mittel aus %1 Entladungen</translation>
    </message>
    <message>
        <source>Usable fraction against load: expected from all drains, and measured</source>
        <translation>Nutzbarer Anteil über der Last: erwartet aus allen Entladungen, und gemessen</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>typisch</translation>
    </message>
    <message>
        <source>Deliverable energy against load: expected from all drains, and measured</source>
        <translation>Abgebbare Energie über der Last: erwartet aus allen Entladungen, und gemessen</translation>
    </message>
    <message>
        <source>deliverable energy / Wh</source>
        <translation>abgebbare Energie / Wh</translation>
    </message>
    <message>
        <source>Run time against load: expected from all drains, and measured</source>
        <translation>Laufzeit über der Last: erwartet aus allen Entladungen, und gemessen</translation>
    </message>
    <message>
        <source>run time / h</source>
        <translation>Laufzeit / h</translation>
    </message>
    <message>
        <source>Gauge error against share delivered, run to run</source>
        <translation>Anzeigefehler über dem abgegebenen Anteil, von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>No gauge curve yet: it takes a drain from full to cut-off with the gauge read at six depths or more.</source>
        <translation>Noch keine Anzeigekurve: sie braucht eine Entladung von voll bis Abschaltung, bei der die Ladeanzeige an sechs oder mehr Stellen abgelesen wurde.</translation>
    </message>
    <message>
        <source>%1 pt</source>
        <translation>%1 pt</translation>
    </message>
    <message>
        <source>run %1, %2</source>
        <translation>Lauf %1, %2</translation>
    </message>
    <message>
        <source>Not on the charts, as a load below %1 W has no place on their axis, but in the curves: %2.</source>
        <translation>Nicht in den Diagrammen, da eine Last unter %1 W auf ihrer Achse keinen Platz hat, aber in den Kurven: %2.</translation>
    </message>
    <message>
        <source>%1; made with Ullage %2</source>
        <translation>%1; erstellt mit Ullage %2</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Energy in</source>
        <translation>Geladen</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Abgegeben</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>Nutzbar</translation>
    </message>
    <message>
        <source>&amp;Bring what you have</source>
        <translation>&amp;Vorhandene Daten übernehmen</translation>
    </message>
    <message>
        <source>&amp;Meters read live</source>
        <translation>&amp;Zähler live lesen</translation>
    </message>
    <message>
        <source>&amp;How the figures come about</source>
        <translation>So &amp;entstehen die Werte</translation>
    </message>
    <message>
        <source>&amp;File formats</source>
        <translation>&amp;Dateiformate</translation>
    </message>
    <message>
        <source>C&amp;ommands</source>
        <translation>&amp;Befehle</translation>
    </message>
    <message>
        <source>&amp;JSON</source>
        <translation>&amp;JSON</translation>
    </message>
    <message>
        <source>&amp;Tested figures</source>
        <translation>&amp;Geprüfte Zahlen</translation>
    </message>
    <message>
        <source>logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>one file with everything below; it ends in .ullage and may be copied at any time</source>
        <translation>eine Datei mit allem Folgenden; sie endet auf .ullage und darf jederzeit kopiert werden</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>a battery storage unit under test, with what its maker claims</source>
        <translation>ein Batteriespeicher im Test, mit den Angaben seines Herstellers</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Schlagwort</translation>
    </message>
    <message>
        <source>a short word of yours at a unit, to find it by: the comparison can show the units of one tag</source>
        <translation>ein kurzes Wort von Ihnen zu einem Speicher, um ihn zu finden: der Vergleich kann die Speicher eines Schlagworts zeigen</translation>
    </message>
    <message>
        <source>the external energy meter between the unit&apos;s socket and the load</source>
        <translation>der externe Energiezähler zwischen der Steckdose des Speichers und der Last</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>the energy number in Wh that the meter counts up</source>
        <translation>die Energie in Wh, die der Zähler hochzählt</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>the unit&apos;s own display of how full it is, in percent</source>
        <translation>die Anzeige des Speichers selbst, wie voll er ist, in Prozent</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>one test of one unit, from the first reading to the end</source>
        <translation>ein Test eines Speichers, von der ersten Ablesung bis zum Ende</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>one note with its time: gauge, register, watts, a remark</source>
        <translation>eine Notiz mit ihrer Zeit: Ladeanzeige, Zählwerk, Watt, eine Bemerkung</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>a note of an event: load changed, meter zeroed, output tripped, cut-off</source>
        <translation>ein Vermerk zu einem Ereignis: Last geändert, Zähler genullt, Ausgang ausgelöst, Abschaltung</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>evidence kept in the logbook with a reading: drop, paste or choose it. %1, %2 MB together. An undone reading keeps its photos; a button below the readings shows them. A run sheet does not carry photos; a copy of the logbook does</source>
        <translation>Beleg, der mit einer Ablesung im Logbuch liegt: ziehen Sie es herein, fügen Sie es ein oder wählen Sie es. %1, zusammen %2 MB. Eine rückgängig gemachte Ablesung behält ihre Fotos; ein Knopf unter den Ablesungen zeigt sie. Ein Laufblatt enthält keine Fotos, eine Kopie des Logbuchs schon</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>Lastliste</translation>
    </message>
    <message>
        <source>appliances that a unit is to feed, under a name: what each takes while on, how long a day, and when</source>
        <translation>Verbraucher, die ein Speicher versorgen soll, unter einem Namen: was jeder im Betrieb aufnimmt, wie lange am Tag und wann</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>Einschaltdauer</translation>
    </message>
    <message>
        <source>share of the time that an appliance is on while it is in use, in percent</source>
        <translation>Anteil der Zeit, in der ein Verbraucher ein ist, während er benutzt wird, in Prozent</translation>
    </message>
    <message>
        <source>delivered energy</source>
        <translation>abgegebene Energie</translation>
    </message>
    <message>
        <source>what the register counted during the run, corrected: Wh at the socket</source>
        <translation>was das Zählwerk während des Laufs zählte, korrigiert: Wh an der Steckdose</translation>
    </message>
    <message>
        <source>gauge-implied energy</source>
        <translation>Energie laut Anzeige</translation>
    </message>
    <message>
        <source>rated energy times the fall of the gauge: what the gauge says has gone</source>
        <translation>Nennenergie mal Fall der Ladeanzeige: was laut Ladeanzeige weg ist</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>nutzbarer Anteil</translation>
    </message>
    <message>
        <source>delivered energy from full to cut-off, divided by rated energy</source>
        <translation>abgegebene Energie von voll bis Abschaltung, geteilt durch Nennenergie</translation>
    </message>
    <message>
        <source>the unit switches its output off by itself</source>
        <translation>der Speicher schaltet seinen Ausgang selbst ab</translation>
    </message>
    <message>
        <source>end of a run</source>
        <translation>Ende eines Laufs</translation>
    </message>
    <message>
        <source>cut-off seen, found off, or stopped by you. The form asks when, how late that may have been noticed, and what was shown then; what the entry row, the log and the last reading hold is offered. One undo lets the run go on</source>
        <translation>Abschaltung gesehen, aus vorgefunden oder von Ihnen beendet. Das Formular fragt, wann das war, wie spät es höchstens bemerkt wurde und was dann angezeigt war; was Eingabezeile, Log und letzte Ablesung enthalten, wird angeboten. Einmal Rückgängig lässt den Lauf weitergehen</translation>
    </message>
    <message>
        <source>round trip</source>
        <translation>Zykluswirkungsgrad</translation>
    </message>
    <message>
        <source>energy delivered over energy charged, from one state of the unit back to the same</source>
        <translation>abgegebene durch geladene Energie, von einem Zustand des Speichers zurück zu demselben</translation>
    </message>
    <message>
        <source>standby draw</source>
        <translation>Standby-Aufnahme</translation>
    </message>
    <message>
        <source>power that the unit consumes with its output off</source>
        <translation>Leistung, die der Speicher mit ausgeschaltetem Ausgang verbraucht</translation>
    </message>
    <message>
        <source>log</source>
        <translation>Log</translation>
    </message>
    <message>
        <source>the file of a meter or unit that logs. Import log (or drop the file on a run) shows how it was read and asks what it leaves open; its register and power then go with the gauge readings noted by hand. The tab Log draws its power and states the load. A log that is still being written is followed, if you tick so: its new rows come in by themselves, also after the program was closed</source>
        <translation>die Datei eines Zählers oder Speichers, der aufzeichnet. Log importieren (oder die Datei auf einen Lauf ziehen) zeigt, wie es gelesen wurde, und fragt, was es offen lässt; sein Zählwerk und seine Leistung gehören dann zu den von Hand notierten Ablesungen der Ladeanzeige. Der Reiter Log zeichnet seine Leistung und nennt die Last. Ein Log, das noch geschrieben wird, wird auf Wunsch verfolgt: neue Zeilen kommen von selbst herein, auch nachdem das Programm geschlossen war</translation>
    </message>
    <message>
        <source>charge from PV</source>
        <translation>Ladung über PV</translation>
    </message>
    <message>
        <source>of several panels: a run for each, with its own meter and its name as the load. Runs at the same time are added up under Claims tested</source>
        <translation>aus mehreren Modulen: ein Lauf für jedes, mit eigenem Zähler und dem Namen als Last. Gleichzeitige Läufe werden unter Getestete Angaben addiert</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>Auslaufphase</translation>
    </message>
    <message>
        <source>the end of a charge, while its power is below 90 % of its highest</source>
        <translation>das Ende einer Ladung, während ihre Leistung unter 90 % der höchsten liegt</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>Leerlaufaufnahme</translation>
    </message>
    <message>
        <source>power that the unit itself consumes with its output on and nothing connected</source>
        <translation>Leistung, die der Speicher selbst verbraucht, Ausgang ein und nichts angeschlossen</translation>
    </message>
    <message>
        <source>gauge minus what is truly left, in percentage points</source>
        <translation>Ladeanzeige minus das, was wirklich übrig ist, in Prozentpunkten</translation>
    </message>
    <message>
        <source>reminder</source>
        <translation>Erinnerung</translation>
    </message>
    <message>
        <source>when a run calls for its next reading: an interval, a fall of the gauge, or a time before the cut-off</source>
        <translation>wann ein Lauf zur nächsten Ablesung ruft: nach einer Zeitspanne, einem Fall der Ladeanzeige oder eine Zeit vor der Abschaltung</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>a named fault of gauge, run or claim, with the readings that show it</source>
        <translation>ein benannter Fehler von Ladeanzeige, Lauf oder Angabe, mit den Ablesungen, die ihn zeigen</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>seen from full to cut-off, with a 95 % interval</source>
        <translation>von voll bis Abschaltung gesehen, mit einem 95-%-Intervall</translation>
    </message>
    <message>
        <source>share delivered</source>
        <translation>abgegebener Anteil</translation>
    </message>
    <message>
        <source>share of what a drain delivers that has been delivered, in percent</source>
        <translation>Anteil dessen, was eine Entladung abgibt, der schon abgegeben ist, in Prozent</translation>
    </message>
    <message>
        <source>stored depth</source>
        <translation>Entladetiefe</translation>
    </message>
    <message>
        <source>share of the stored energy that has gone, the unit&apos;s own draw counted in, in percent</source>
        <translation>Anteil der gespeicherten Energie, der weg ist, den Eigenverbrauch des Speichers eingerechnet, in Prozent</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>Energie vor Eigenverbrauch</translation>
    </message>
    <message>
        <source>what the socket would get if the no-load draw took nothing: where a line through all drains meets a run time of 0 h</source>
        <translation>was die Steckdose bekäme, wenn die Leerlaufaufnahme nichts nähme: wo eine Gerade durch alle Entladungen eine Laufzeit von 0 h trifft</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>Leerlaufdauer</translation>
    </message>
    <message>
        <source>how long a full unit lasts with its output on and nothing connected</source>
        <translation>wie lange ein voller Speicher hält, Ausgang ein und nichts angeschlossen</translation>
    </message>
    <message>
        <source>projected</source>
        <translation>hochgerechnet</translation>
    </message>
    <message>
        <source>carried on from a part of a drain, through the gauge curve of an earlier full drain or else on an accurate gauge; of a unit, from its drains together. The reason says which</source>
        <translation>aus einem Teil einer Entladung fortgeführt, über die Anzeigekurve einer früheren vollen Entladung oder sonst mit genauer Ladeanzeige; bei einem Speicher aus seinen Entladungen zusammen. Der Grund sagt, wie</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>eingegrenzt</translation>
    </message>
    <message>
        <source>known only to lie between two limits</source>
        <translation>nur zwischen zwei Grenzen bekannt</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>energy may be missing from the readings; the true value is not lower</source>
        <translation>in den Ablesungen kann Energie fehlen; der wahre Wert ist nicht kleiner</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>these readings cannot tell; the reason says what would</source>
        <translation>diese Ablesungen sagen es nicht; der Grund nennt, was es sagen würde</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Alle Tasten</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Begriffe</translation>
    </message>
    <message>
        <source>&lt;b&gt;Delivered energy.&lt;/b&gt; Differences of the meter&apos;s register times its correction. Zeroed and swapped meters and a register that passed its span are joined; a fall without a mark is read as a reset or a typing error by the load that it would mean, and the run says which.</source>
        <translation>&lt;b&gt;Abgegebene Energie.&lt;/b&gt; Differenzen des Zählwerks mal Korrektion. Genullte und getauschte Zähler und ein Zählwerk, das seinen Umfang überschritt, werden verbunden; ein Fall ohne Marke wird nach der Last, die er bedeuten würde, als Reset oder Tippfehler gelesen, und der Lauf sagt, als welches von beiden.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Uncertainty.&lt;/b&gt; The meter&apos;s error limit counts as a rectangular part common to all its readings, the register&apos;s and the gauge&apos;s step as rectangular parts of each reading, and the noted moment as one minute at the load. They are combined to a 95 % interval (JCGM 100:2008, clauses 4.3 and 5.1; results are rounded as its clause 7.2.6 asks). Rated energy is a claim and has no uncertainty.</source>
        <translation>&lt;b&gt;Unsicherheit.&lt;/b&gt; Die Fehlergrenze des Zählers zählt als rechteckverteilter Anteil, der allen seinen Ablesungen gemeinsam ist, der Schritt von Zählwerk und Ladeanzeige als rechteckverteilter Anteil jeder Ablesung und der notierte Zeitpunkt als eine Minute bei der Last. Sie werden zu einem 95-%-Intervall zusammengefasst (JCGM 100:2008, Abschnitte 4.3 und 5.1; gerundet wird nach Abschnitt 7.2.6). Die Nennenergie ist eine Angabe und hat keine Unsicherheit.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Usable fraction.&lt;/b&gt; Measured only from full to cut-off, and always at the load of that run: a slow drain feeds the unit&apos;s own draw for longer. Any other drain is projected: through the gauge curve of the latest full drain of the unit before it, where there is one, else from end to end over the gauge&apos;s fall, as if the gauge were honest. The roundings of the gauge are in the interval.</source>
        <translation>&lt;b&gt;Nutzbarer Anteil.&lt;/b&gt; Gemessen nur von voll bis Abschaltung und immer bei der Last dieses Laufs: eine langsame Entladung speist den Eigenverbrauch des Speichers länger. Jede andere Entladung wird hochgerechnet: über die Anzeigekurve der letzten vollen Entladung des Speichers davor, wo es eine gibt, sonst von Ende zu Ende über den Fall der Ladeanzeige, als wäre die Ladeanzeige genau. Die Rundungen der Ladeanzeige sind im Intervall.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Is the gauge right?&lt;/b&gt; Gauge-implied against delivered energy as a straight line with uncertainties in both (D. York, N. Evensen, M. Martinez, J. Delgado: American Journal of Physics 72, 2004, 367), and named faults, each with its readings, its size in percentage points or Wh, and the limit that it passed. The gauge error is drawn against share delivered and, where the no-load draw is known and the load varied, against stored depth.</source>
        <translation>&lt;b&gt;Stimmt die Ladeanzeige?&lt;/b&gt; Energie laut Anzeige gegen abgegebene Energie als Gerade mit Unsicherheiten in beiden (D. York, N. Evensen, M. Martinez, J. Delgado: American Journal of Physics 72, 2004, 367) und benannte Fehler, jeder mit seinen Ablesungen, seiner Größe in Prozentpunkten oder Wh und der Grenze, die er überschritt. Der Anzeigefehler wird über dem abgegebenen Anteil gezeichnet und, wo die Leerlaufaufnahme bekannt ist und die Last wechselte, über der Entladetiefe.</translation>
    </message>
    <message>
        <source>&lt;b&gt;No-load draw.&lt;/b&gt; Power with the output on and nothing connected is called no-load loss in IEC 61683. One run at a steady load cannot tell it from conversion loss; the program then says that it is not known.</source>
        <translation>&lt;b&gt;Leerlaufaufnahme.&lt;/b&gt; Die Leistung bei eingeschaltetem Ausgang und ohne Anschluss heißt in IEC 61683 Leerlaufverlust. Ein Lauf bei stetiger Last kann sie nicht vom Wandlungsverlust trennen; das Programm nennt sie dann unbekannt.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Forecast.&lt;/b&gt; While a drain runs, the strip and the energy chart show when it should be cut off, as a range that is meant to hold the moment in 95 of 100 drains. It comes from the earlier drains of the unit where there are any, else from this run&apos;s gauge; it then allows for a gauge that is bent, offset, ends early, falls too fast, lingers or is blind to the unit&apos;s own draw, and is wide early in a drain. The strip says whether it holds if the gauge is right, if it is wrong, or whichever is right. It takes the load to go on as it was: a change of load yet to come cannot be foreseen. It is no promise; do not leave a load that must not fail to it.</source>
        <translation>&lt;b&gt;Vorhersage.&lt;/b&gt; Während eine Entladung läuft, zeigen Leiste und Energiediagramm, wann sie abgeschaltet werden dürfte, als Spanne, die den Zeitpunkt in 95 von 100 Entladungen enthalten soll. Sie kommt aus den früheren Entladungen des Speichers, wo es welche gibt, sonst aus der Ladeanzeige dieses Laufs; dann lässt sie zu, dass die Ladeanzeige gekrümmt oder versetzt ist, zu früh endet, zu schnell fällt, hängen bleibt oder den Eigenverbrauch nicht sieht, und ist früh in einer Entladung weit. Die Leiste sagt, ob sie gilt, wenn die Ladeanzeige stimmt, wenn sie falsch ist oder in beiden Fällen. Sie nimmt an, dass die Last weitergeht wie bisher: ein künftiger Lastwechsel ist nicht vorhersehbar. Sie ist kein Versprechen; verlassen Sie sich bei kritischen Lasten nicht darauf.</translation>
    </message>
    <message>
        <source>&lt;b&gt;All drains of a unit.&lt;/b&gt; Delivered energy is energy before own consumption, less no-load draw times hours, less a small quadratic loss; a line through all drains from full to cut-off gives the first two once their run times differ by more than 1.5 times. Curves are dashed beyond the tested loads. The next run is the one that would narrow them most, of those that last a day at most if any of them would.</source>
        <translation>&lt;b&gt;Alle Entladungen eines Speichers.&lt;/b&gt; Abgegebene Energie ist Energie vor Eigenverbrauch, minus Leerlaufaufnahme mal Stunden, minus ein kleiner quadratischer Verlust; eine Gerade durch alle Entladungen von voll bis Abschaltung liefert die ersten beiden, sobald sich ihre Laufzeiten um mehr als das 1,5-Fache unterscheiden. Kurven sind jenseits der getesteten Lasten gestrichelt. Der nächste Lauf ist der, der sie am meisten einengen würde, unter denen, die höchstens einen Tag dauern, sofern einer davon es täte.</translation>
    </message>
    <message>
        <source>&lt;b&gt;From run to run.&lt;/b&gt; Energy that falls with the days is ageing. Drains at like loads also show whether the gauge&apos;s own error curve moves: curves are compared at equal share delivered, where the meters&apos; errors cancel. A curve that moves under an unmoved energy is the gauge; an energy that falls under an unmoved curve is the unit.</source>
        <translation>&lt;b&gt;Von Lauf zu Lauf.&lt;/b&gt; Energie, die mit den Tagen sinkt, ist Alterung. Entladungen bei ähnlichen Lasten zeigen auch, ob sich die Fehlerkurve der Ladeanzeige selbst verschiebt: Kurven werden bei gleichem abgegebenem Anteil verglichen, wo sich die Fehler der Zähler aufheben. Verschiebt sich die Kurve bei gleicher Energie, ist es die Ladeanzeige; sinkt die Energie bei gleicher Kurve, ist es der Speicher.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Comparison.&lt;/b&gt; Units as they were tested, or at one load, to which each is moved by what all its drains say together. A unit that cannot be converted stays as tested and says why. Differences tells which units these meters can tell apart: the gain of a meter that measured both cancels, those of two meters do not. Prices per kWh are those of the list price; where what was paid is known, that stands beside it. A right click on the heads of the table chooses its columns, which can also be dragged; both are remembered, and exports follow. Units that are not told apart share a rank. Compare, Add units of another logbook looks into other logbooks: what is one unit, one meter or one run there is told by their hidden marks, not by names, and what two logbooks hold counts once. Many units are compared while you go on; of more than 40 rows Differences shows the 40 with the largest usable fraction.</source>
        <translation>&lt;b&gt;Vergleich.&lt;/b&gt; Speicher, wie sie getestet wurden, oder bei einer Last, auf die jeder mit dem umgerechnet wird, was alle seine Entladungen zusammen sagen. Ein Speicher, der sich nicht umrechnen lässt, bleibt wie getestet und sagt, warum. Unterschiede sagt, welche Speicher diese Zähler unterscheiden können: der Steigungsfehler eines Zählers, der beide maß, hebt sich auf, der von zwei Zählern nicht. Preise je kWh gelten für den Listenpreis; wo der gezahlte bekannt ist, steht er daneben. Ein Rechtsklick auf die Spaltenköpfe der Tabelle wählt die Spalten, die sich auch ziehen lassen; beides wird gemerkt, und Exporte folgen dem. Speicher, die nicht zu unterscheiden sind, teilen sich einen Rang. Vergleich, Speicher aus anderem Logbuch sieht in andere Logbücher: was dort ein Speicher, ein Zähler oder ein Lauf ist, sagen ihre verborgenen Kennzeichen, nicht die Namen, und was in zwei Logbüchern steht, zählt einmal. Viele Speicher werden verglichen, während Sie weiterarbeiten; bei mehr als 40 Zeilen zeigt Unterschiede die 40 mit dem größten nutzbaren Anteil.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Load lists.&lt;/b&gt; Daily energy is the sum of number, power, duty and hours; what was measured over some hours goes before power and duty. The output is taken to be on for the longest use by day and the longest by night, or all day where something is always connected; the mean over that time is the load at which the comparison puts units. The most that is asked at once is all that runs and the largest start-up extra. These are sums of what you stated, without interval.</source>
        <translation>&lt;b&gt;Lastlisten.&lt;/b&gt; Die Tagesenergie ist die Summe aus Anzahl, Leistung, Einschaltdauer und Stunden; was über einige Stunden gemessen wurde, geht vor Leistung und Einschaltdauer. Der Ausgang gilt als ein für die längste Benutzung am Tag und die längste bei Nacht oder ganztags, wo etwas immer angeschlossen ist; das Mittel über diese Zeit ist die Last, bei der der Vergleich die Speicher zeigt. Das Höchste, was auf einmal verlangt wird, ist alles, was läuft, und der größte Anlaufzuschlag. Das sind Summen Ihrer Angaben, ohne Intervall.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Other claims.&lt;/b&gt; A charge gives energy in, time to full, power and taper; a charge to full after a cut-off and the drain after it give the round trip, between points that are named. Where one meter measured both its gain cancels. A sustained-output or peak-output run holds each step of load between two marks against the claim: held, tripped, or not reached. A standby run with the charge after it gives what the unit takes with its output off. The unit&apos;s page, Claims tested, has them all with the runs that show it.</source>
        <translation>&lt;b&gt;Andere Angaben.&lt;/b&gt; Eine Ladung liefert geladene Energie, Zeit bis voll, Leistung und Auslaufphase; eine Ladung bis voll nach einer Abschaltung und die Entladung danach liefern den Zykluswirkungsgrad, zwischen benannten Punkten. Wo ein Zähler beide maß, hebt sich sein Steigungsfehler auf. Ein Lauf auf Dauerleistung oder Spitzenleistung stellt jede Laststufe zwischen zwei Marken gegen die Angabe: gehalten, ausgelöst oder nicht erreicht. Ein Standby-Lauf und die Ladung danach zeigen, was der Speicher mit ausgeschaltetem Ausgang verbraucht. Auf der Seite des Speichers stehen unter Getestete Angaben alle mit den Läufen, die es zeigen.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Sizing.&lt;/b&gt; Sizing, Sizing for a load list says how many days one full unit serves the list, from the fit of its own drains with the no-load draw counted in; the interval also holds what the list leaves open: used together or apart, begun at any hour. A unit that nobody tested stands with an expectation, 75 to 80 % of rated at the socket, which is no measurement. The array and the battery by rule (after IEEE 1562 and IEEE 1013) are a cross-check. Never connect the outputs of several units with each other.</source>
        <translation>&lt;b&gt;Auslegung.&lt;/b&gt; Auslegung, Auslegung für eine Lastliste sagt, wie viele Tage ein voller Speicher die Liste trägt, aus der Gerade durch seine eigenen Entladungen und mit eingerechneter Leerlaufaufnahme; das Intervall enthält auch, was die Liste offen lässt: zusammen oder getrennt benutzt, zu beliebiger Stunde begonnen. Ein Speicher, den niemand getestet hat, steht mit einer Erwartung da, 75 bis 80 % der Nennenergie an der Steckdose; das ist keine Messung. PV-Generator und Batterie nach Regel (nach IEEE 1562 und IEEE 1013) sind eine Gegenprobe. Verbinden Sie nie die Ausgänge mehrerer Speicher miteinander.</translation>
    </message>
    <message>
        <source>&lt;b&gt;PV input.&lt;/b&gt; Sizing, PV input check compares a string of modules with the limits of a unit&apos;s PV input: open circuit at the coldest, maximum power at the hottest, current and power. The maker&apos;s temperature coefficient goes before the table of factors (NEC Table 690.7(A), crystalline silicon only). PV strings are live in light: local codes and a licensed electrician come first.</source>
        <translation>&lt;b&gt;PV-Eingang.&lt;/b&gt; Auslegung, PV-Eingang prüfen vergleicht einen Strang von Modulen mit den Grenzen des PV-Eingangs eines Speichers: Leerlauf bei größter Kälte, MPP bei größter Hitze, Strom und Leistung. Der Temperaturkoeffizient des Herstellers geht vor der Faktorentabelle (NEC Table 690.7(A), nur kristallines Silizium). PV-Stränge stehen bei Licht unter Spannung: örtliche Vorschriften und eine zugelassene Elektrofachkraft haben Vorrang.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Export.&lt;/b&gt; Compare, Export and Logbook, Export readings write tables as CSV, Markdown, HTML, XLSX, JSON and LaTeX with the same numbers in each; CSV, XLSX and JSON hold every digit, the limits of the interval and the kind. Beside a CSV file stands its description (W3C, Metadata Vocabulary for Tabular Data). Copy table and Ctrl+C give cells for a spreadsheet. Your words never become formulas there: one that begins like a formula gets an apostrophe in front.</source>
        <translation>&lt;b&gt;Export.&lt;/b&gt; Vergleich, Exportieren und Logbuch, Ablesungen exportieren schreiben Tabellen als CSV, Markdown, HTML, XLSX, JSON und LaTeX mit denselben Zahlen in jedem Format; CSV, XLSX und JSON enthalten jede Stelle, die Grenzen des Intervalls und die Art. Neben einer CSV-Datei steht ihre Beschreibung (W3C, Metadata Vocabulary for Tabular Data). Tabelle kopieren und Strg+C liefern Zellen für eine Tabellenkalkulation. Ihre Worte werden dort nie zu Formeln: was wie eine Formel beginnt, bekommt einen Apostroph davor.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Report.&lt;/b&gt; Run, Make report and Compare, Make report write all of this with readings, budget, charts, findings, sources and the history of amended readings, as PDF or HTML on A4 or Letter. That of the comparison stands at the load that the page shows or as tested, and names the pairs of units that these meters cannot tell apart.</source>
        <translation>&lt;b&gt;Bericht.&lt;/b&gt; Lauf, Bericht erstellen und Vergleich, Bericht erstellen schreiben all das mit Ablesungen, Budget, Diagrammen, Befunden, Quellen und dem Verlauf berichtigter Ablesungen, als PDF oder HTML auf A4 oder Letter. Der Bericht zum Vergleich gilt bei der Last, die die Seite zeigt, oder wie getestet, und nennt die Speicherpaare, die diese Zähler nicht unterscheiden können.</translation>
    </message>
    <message>
        <source>Ullage is the amount by which a container falls short of full. This program measures it for battery storage units: the energy printed on the case against the energy that reaches the socket.</source>
        <translation>Ullage ist der Betrag, um den ein Behälter nicht ganz gefüllt ist. Dieses Programm misst ihn bei Batteriespeichern: die aufgedruckte Energie gegen die Energie, die an der Steckdose ankommt.</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or any later version (GPL-3.0-or-later). It comes without any warranty.</source>
        <translation>Freie Software unter der GNU General Public License, Version 3 oder jeder späteren Version (GPL-3.0-or-later). Sie kommt ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>Built with Qt and Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, libxlsxwriter and Exiv2.</source>
        <translation>Gebaut mit Qt und Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, libxlsxwriter und Exiv2.</translation>
    </message>
    <message>
        <source>%1 (the camera gave no time zone; read in %2)</source>
        <translation>%1 (die Kamera gab keine Zeitzone an; gelesen in %2)</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>aufgenommen %1</translation>
    </message>
    <message>
        <source>no time in it</source>
        <translation>ohne Zeitangabe</translation>
    </message>
    <message>
        <source>JPEG or PNG, at most %1 MB and %2 megapixels each</source>
        <translation>JPEG oder PNG, je höchstens %1 MB und %2 Megapixel</translation>
    </message>
    <message>
        <source>none yet: gauge only</source>
        <translation>noch keiner: nur Ladeanzeige</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>yes, full</source>
        <translation>ja, voll</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>the wall</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>the PV input</source>
        <translation>PV-Eingang</translation>
    </message>
    <message>
        <source>power of the load</source>
        <translation>Leistung der Last</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>zweites Zählwerk</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>Leistung laut Speicher</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <source>First rows of the table, the role of each column above them</source>
        <translation>Erste Zeilen der Tabelle, über jeder Spalte ihre Rolle</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 enthält</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Rows that are not taken</source>
        <translation>Nicht übernommene Zeilen</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was geschah</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>taken in part</source>
        <translation>teils übernommen</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>Every drain</source>
        <translation>Jede Entladung</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Charges and outputs</source>
        <translation>Ladungen und Ausgänge</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Unsicherheitsbudgets</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>since %1, %2</source>
        <translation>seit %1, %2</translation>
    </message>
    <message>
        <source>read just now</source>
        <translation>eben abgelesen</translation>
    </message>
    <message>
        <source>read %1 ago</source>
        <translation>vor %1 abgelesen</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>cut-off, %1</source>
        <translation>Abschaltung, %1</translation>
    </message>
    <message>
        <source>%1 at the latest</source>
        <translation>spätestens %1</translation>
    </message>
    <message>
        <source>dimmed %1:00 to 0%2:00</source>
        <translation>gedimmt %1:00 bis 0%2:00</translation>
    </message>
    <message>
        <source>dimmed</source>
        <translation>gedimmt</translation>
    </message>
    <message>
        <source>not dimmed</source>
        <translation>nicht gedimmt</translation>
    </message>
    <message>
        <source>No run uses this meter yet.</source>
        <translation>Noch kein Lauf benutzt diesen Zähler.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1 Lauf %2</translation>
    </message>
    <message>
        <source>Measured %1: %2</source>
        <translation>Hat %1 gemessen: %2</translation>
    </message>
    <message>
        <source> and others</source>
        <translation> und andere</translation>
    </message>
    <message>
        <source>Class %1</source>
        <translation>Klasse %1</translation>
    </message>
    <message>
        <source>range %1 to %2 W</source>
        <translation>Bereich %1 bis %2 W</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>starts at %1 A</source>
        <translation>Anlauf ab %1 A</translation>
    </message>
    <message>
        <source>certificate %1</source>
        <translation>Kalibrierschein %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>vom %1</translation>
    </message>
    <message>
        <source>valid until %1</source>
        <translation>gültig bis %1</translation>
    </message>
    <message>
        <source>points %1 (W, correction, U in %, k)</source>
        <translation>Punkte %1 (W, Korrektion, U in %, k)</translation>
    </message>
    <message>
        <source>correction %1</source>
        <translation>Korrektion %1</translation>
    </message>
    <message>
        <source>points %1</source>
        <translation>Punkte %1</translation>
    </message>
    <message>
        <source>limit ±%1 %</source>
        <translation>Fehlergrenze ±%1 %</translation>
    </message>
    <message>
        <source>no limit stated</source>
        <translation>keine Fehlergrenze angegeben</translation>
    </message>
    <message>
        <source>step %1 Wh</source>
        <translation>Schritt %1 Wh</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>What the last edit moved is not worked out here: its runs have too many readings.</source>
        <translation>Was die letzte Änderung verschob, wird hier nicht berechnet: ihre Läufe haben zu viele Ablesungen.</translation>
    </message>
    <message>
        <source>Last edit: %1</source>
        <translation>Letzte Änderung: %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>jetzt fällig</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>nächste Ablesung</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>keine Erinnerung</translation>
    </message>
    <message>
        <source>next reading, snoozed</source>
        <translation>nächste Ablesung, verschoben</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>vergangen</translation>
    </message>
    <message>
        <source>lasted</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>mean power</source>
        <translation>mittlere Leistung</translation>
    </message>
    <message>
        <source>mean power, since last</source>
        <translation>mittlere Leistung, seit letzter</translation>
    </message>
    <message>
        <source>mean load, since last</source>
        <translation>mittlere Last, seit letzter</translation>
    </message>
    <message>
        <source>W, %1 W</source>
        <translation>W, %1 W</translation>
    </message>
    <message>
        <source>usable fraction, %1</source>
        <translation>nutzbarer Anteil, %1</translation>
    </message>
    <message>
        <source>peak power</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>last reading</source>
        <translation>letzte Ablesung</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>min ago</source>
        <translation>min her</translation>
    </message>
    <message>
        <source>ago</source>
        <translation>her</translation>
    </message>
    <message>
        <source>elapsed; read %1</source>
        <translation>vergangen; Ablesung %1</translation>
    </message>
    <message>
        <source>Time since the first reading, and since the last.</source>
        <translation>Zeit seit der ersten Ablesung und seit der letzten.</translation>
    </message>
    <message>
        <source>delivered; gauge %1 Wh</source>
        <translation>abgegeben; Anzeige %1 Wh</translation>
    </message>
    <message>
        <source>The gauge implies %1 Wh %2 than was delivered (rated energy times its fall): what the unit took for itself, capacity that is missing, or an error of the gauge.</source>
        <translation>Laut Ladeanzeige sind es %1 Wh %2, als abgegeben wurden (Nennenergie mal ihr Fall): was der Speicher selbst verbrauchte, fehlende Kapazität oder ein Fehler der Ladeanzeige.</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>cut-off, overdue since</source>
        <translation>Abschaltung, überfällig seit</translation>
    </message>
    <message>
        <source>95 % range %1, %2, %3</source>
        <translation>95-%-Spanne %1, %2, %3</translation>
    </message>
    <message>
        <source>as calibrated</source>
        <translation>kalibriert</translation>
    </message>
    <message>
        <source>string</source>
        <translation>Strang</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Choose the unit whose PV input is meant: its limits come from its claims.</source>
        <translation>Wählen Sie den Speicher, um dessen PV-Eingang es geht: die Grenzen kommen aus seinen Angaben.</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1 short circuit</source>
        <translation>%1 Kurzschluss</translation>
    </message>
    <message>
        <source>No limit of the PV input of %1 is stated; enter what its label says.</source>
        <translation>Zum PV-Eingang von %1 ist keine Grenze angegeben; tragen Sie ein, was auf dem Typenschild steht.</translation>
    </message>
    <message>
        <source>PV input of %1: %2</source>
        <translation>PV-Eingang von %1: %2</translation>
    </message>
    <message>
        <source>slope %1, delivered per gauge-implied energy</source>
        <translation>Steigung %1, abgegebene Energie je Energie laut Anzeige</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>Zweifel</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>Gauge: %1</source>
        <translation>Ladeanzeige: %1</translation>
    </message>
    <message>
        <source>about %1 Wh may be missing</source>
        <translation>etwa %1 Wh können fehlen</translation>
    </message>
    <message>
        <source>Delivered energy</source>
        <translation>Abgegebene Energie</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Nutzbarer Anteil</translation>
    </message>
    <message>
        <source>Wh per gauge point</source>
        <translation>Wh je Anzeigepunkt</translation>
    </message>
    <message>
        <source>Whether a linear gauge fits: %1</source>
        <translation>Ob eine lineare Ladeanzeige passt: %1</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>prüfen Sie Name und Ordner</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>choose a picture</source>
        <translation>wählen Sie ein Bild</translation>
    </message>
    <message>
        <source>the file has %1; a logbook takes %2</source>
        <translation>die Datei hat %1; ein Logbuch nimmt %2</translation>
    </message>
    <message>
        <source>save it smaller, as JPEG for example</source>
        <translation>speichern Sie es kleiner, zum Beispiel als JPEG</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>check that you may read it</source>
        <translation>prüfen Sie, ob Sie sie lesen dürfen</translation>
    </message>
    <message>
        <source>too many files are open</source>
        <translation>zu viele Dateien sind offen</translation>
    </message>
    <message>
        <source>close other programs and try again</source>
        <translation>schließen Sie andere Programme und versuchen Sie es erneut</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>die Datei lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>check the disk or card that it is on, or copy it elsewhere</source>
        <translation>prüfen Sie den Datenträger, auf dem sie liegt, oder kopieren Sie sie anderswohin</translation>
    </message>
    <message>
        <source>the picture could not be taken over</source>
        <translation>das Bild ließ sich nicht übernehmen</translation>
    </message>
    <message>
        <source>save it as a file and attach that</source>
        <translation>speichern Sie es als Datei und hängen Sie diese an</translation>
    </message>
    <message>
        <source>Reading photos</source>
        <translation>Fotos werden gelesen</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Readings of this run</source>
        <translation>Ablesungen dieses Laufs</translation>
    </message>
    <message>
        <source>Intervals of this run</source>
        <translation>Abschnitte dieses Laufs</translation>
    </message>
    <message>
        <source>Gauge steps of this run</source>
        <translation>Anzeigeschritte dieses Laufs</translation>
    </message>
    <message>
        <source>Readings of all runs</source>
        <translation>Ablesungen aller Läufe</translation>
    </message>
    <message>
        <source>Intervals of all runs</source>
        <translation>Abschnitte aller Läufe</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source> The power began to fall at a gauge of %1 %.</source>
        <translation> Die Leistung begann bei einer Ladeanzeige von %1 % zu fallen.</translation>
    </message>
    <message>
        <source>%1 for %2 min, %3</source>
        <translation>%1 für %2 min, %3</translation>
    </message>
    <message>
        <source> Trips: %1, resets: %2.</source>
        <translation> Auslösungen: %1, Rücksetzungen: %2.</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>sustained output</source>
        <translation>Dauerleistung</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>claimed</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>%1: not known: %2.</source>
        <translation>%1: unbekannt: %2.</translation>
    </message>
    <message>
        <source>%1: %2 (%3), %4 a day, %5 a month</source>
        <translation>%1: %2 (%3), %4 am Tag, %5 im Monat</translation>
    </message>
    <message>
        <source>; %1 %3 a day, %2 %3 a month, %4</source>
        <translation>; %1 %3 am Tag, %2 %3 im Monat, %4</translation>
    </message>
    <message>
        <source>; %1.</source>
        <translation>; %1.</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>Ladezeit</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>gezahlter Preis</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>Garantie</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>PV input, at most</source>
        <translation>PV-Eingang, höchstens</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>Anzeigeschritt</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>mean of %1 drains from full to cut-off, near %2%3W</source>
        <translation>Mittel aus %1 Entladungen von voll bis Abschaltung, nahe %2%3W</translation>
    </message>
    <message>
        <source>so far, %1</source>
        <translation>bisher, %1</translation>
    </message>
    <message>
        <source>from full to cut-off, %1</source>
        <translation>von voll bis Abschaltung, %1</translation>
    </message>
    <message>
        <source>not the whole unit, %1</source>
        <translation>nicht der ganze Speicher, %1</translation>
    </message>
    <message>
        <source>Desktop</source>
        <translation>Desktop</translation>
    </message>
    <message>
        <source>no service offers it</source>
        <translation>kein Dienst bietet es an</translation>
    </message>
    <message>
        <source>display</source>
        <translation>Anzeige</translation>
    </message>
    <message>
        <source>The window cannot be shown here; all commands work.</source>
        <translation>Das Fenster lässt sich hier nicht zeigen; alle Befehle gehen.</translation>
    </message>
    <message>
        <source>%1 × %2 at scale %3</source>
        <translation>%1 × %2 bei Skalierung %3</translation>
    </message>
    <message>
        <source>dark, as chosen</source>
        <translation>dunkel, wie gewählt</translation>
    </message>
    <message>
        <source>light, as chosen</source>
        <translation>hell, wie gewählt</translation>
    </message>
    <message>
        <source>dark, as the desktop</source>
        <translation>dunkel, wie der Desktop</translation>
    </message>
    <message>
        <source>light, as the desktop</source>
        <translation>hell, wie der Desktop</translation>
    </message>
    <message>
        <source>theme and text size</source>
        <translation>Farben und Textgröße</translation>
    </message>
    <message>
        <source>%1; %2 %</source>
        <translation>%1; %2 %</translation>
    </message>
    <message>
        <source>notices of readings that are due</source>
        <translation>Meldungen zu fälligen Ablesungen</translation>
    </message>
    <message>
        <source>Reminders stand in the window alone.</source>
        <translation>Erinnerungen stehen nur im Fenster.</translation>
    </message>
    <message>
        <source>at the tray</source>
        <translation>in der Taskleiste</translation>
    </message>
    <message>
        <source>keeping the machine awake</source>
        <translation>den Rechner wach halten</translation>
    </message>
    <message>
        <source>Set the machine not to sleep while a test runs.</source>
        <translation>Stellen Sie den Rechner so ein, dass er während eines Tests nicht schläft.</translation>
    </message>
    <message>
        <source>passwords of meters</source>
        <translation>Passwörter von Zählern</translation>
    </message>
    <message>
        <source>A meter&apos;s password is asked for at each start.</source>
        <translation>Das Passwort eines Zählers wird bei jedem Start abgefragt.</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>%1: nothing can be written there (%2)</source>
        <translation>%1: dort lässt sich nichts schreiben (%2)</translation>
    </message>
    <message>
        <source>%1, written, %2 free</source>
        <translation>%1, beschreibbar, %2 frei</translation>
    </message>
    <message>
        <source>There is little room left. Make some.</source>
        <translation>Es ist wenig Platz übrig. Schaffen Sie welchen.</translation>
    </message>
    <message>
        <source>Files there cannot be locked, so a logbook cannot be opened there. Keep it on a disk of this machine.</source>
        <translation>Dateien dort lassen sich nicht sperren, daher lässt sich dort kein Logbuch öffnen. Legen Sie es auf einen Datenträger dieses Rechners.</translation>
    </message>
    <message>
        <source>Files there cannot be leased: copy a logbook only when it is not recorded into. A disk of this machine offers it.</source>
        <translation>Dateien dort lassen sich nicht vorübergehend schützen: kopieren Sie ein Logbuch nur, wenn nicht darin aufgezeichnet wird. Ein Datenträger dieses Rechners bietet es.</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Settings are forgotten at the end of the program.</source>
        <translation>Einstellungen sind am Ende des Programms vergessen.</translation>
    </message>
    <message>
        <source>notes on files</source>
        <translation>Notizen zu Dateien</translation>
    </message>
    <message>
        <source>The program does not know the files that it wrote, so commands ask for --force to replace them.</source>
        <translation>Das Programm kennt die Dateien nicht, die es schrieb, daher verlangen Befehle --force, um sie zu ersetzen.</translation>
    </message>
    <message>
        <source>sample logbook</source>
        <translation>Beispiellogbuch</translation>
    </message>
    <message>
        <source>The sample logbook cannot be made there.</source>
        <translation>Das Beispiellogbuch lässt sich dort nicht anlegen.</translation>
    </message>
    <message>
        <source>temporary files</source>
        <translation>temporäre Dateien</translation>
    </message>
    <message>
        <source>Workbooks, imports and checks need room there.</source>
        <translation>Arbeitsmappen, Importe und Prüfungen brauchen dort Platz.</translation>
    </message>
    <message>
        <source>Nothing can be recorded there.</source>
        <translation>Dort lässt sich nichts aufzeichnen.</translation>
    </message>
    <message>
        <source>copies of logbooks</source>
        <translation>Kopien von Logbüchern</translation>
    </message>
    <message>
        <source>No copies are made. Choose another folder in Settings.</source>
        <translation>Keine Kopien werden gemacht. Wählen Sie in den Einstellungen einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>all %1 that the program shows</source>
        <translation>alle %1, die das Programm zeigt</translation>
    </message>
    <message>
        <source>not in any font: %1</source>
        <translation>in keiner Schrift: %1</translation>
    </message>
    <message>
        <source>Boxes stand in their place. Install a font that has them, such as DejaVu Sans.</source>
        <translation>Kästchen stehen an ihrer Stelle. Installieren Sie eine Schrift, die sie hat, etwa DejaVu Sans.</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>Ziffern</translation>
    </message>
    <message>
        <source>of equal width</source>
        <translation>von gleicher Breite</translation>
    </message>
    <message>
        <source>of unequal width</source>
        <translation>von ungleicher Breite</translation>
    </message>
    <message>
        <source>Numbers in columns do not stand below each other digit by digit. Another font of the desktop mends that.</source>
        <translation>Zahlen in Spalten stehen nicht Ziffer unter Ziffer. Eine andere Schrift des Desktops behebt das.</translation>
    </message>
    <message>
        <source>Region</source>
        <translation>Region</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>%1; the data of time zones are not there</source>
        <translation>%1; die Daten der Zeitzonen fehlen</translation>
    </message>
    <message>
        <source>Local times are those of UTC. Install tzdata.</source>
        <translation>Ortszeiten sind die von UTC. Installieren Sie tzdata.</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>wie der Desktop</translation>
    </message>
    <message>
        <source>font</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>%1, %2 points</source>
        <translation>%1, %2 Punkt</translation>
    </message>
    <message>
        <source>PNG</source>
        <translation>PNG</translation>
    </message>
    <message>
        <source>Photos and pictures of this form cannot be shown.</source>
        <translation>Fotos und Bilder dieses Formats lassen sich nicht zeigen.</translation>
    </message>
    <message>
        <source>JPEG</source>
        <translation>JPEG</translation>
    </message>
    <message>
        <source>Photos of this form are kept but cannot be shown.</source>
        <translation>Fotos dieses Formats werden behalten, lassen sich aber nicht zeigen.</translation>
    </message>
    <message>
        <source>SVG</source>
        <translation>SVG</translation>
    </message>
    <message>
        <source>The window has no icon in the task bar. Install the SVG plugin of Qt (libqt6svg6).</source>
        <translation>Das Fenster hat kein Symbol in der Taskleiste. Installieren Sie das SVG-Plugin von Qt (libqt6svg6).</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>can be read</source>
        <translation>lesbar</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>icons</source>
        <translation>Symbole</translation>
    </message>
    <message>
        <source>are drawn</source>
        <translation>werden gezeichnet</translation>
    </message>
    <message>
        <source>are not drawn</source>
        <translation>werden nicht gezeichnet</translation>
    </message>
    <message>
        <source>Buttons have words alone. Install the program anew.</source>
        <translation>Knöpfe haben nur Worte. Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <source>region of the desktop</source>
        <translation>Region des Desktops</translation>
    </message>
    <message>
        <source>%1, decimal sign %2</source>
        <translation>%1, Dezimalzeichen %2</translation>
    </message>
    <message>
        <source>language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>paper of reports</source>
        <translation>Papier der Berichte</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versionen</translation>
    </message>
    <message>
        <source>%1, built with %2</source>
        <translation>%1, gebaut mit %2</translation>
    </message>
    <message>
        <source>It is older than the one that the program was built with. Bring the system up to date.</source>
        <translation>Sie ist älter als die, mit der das Programm gebaut wurde. Aktualisieren Sie das System.</translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>system</source>
        <translation>System</translation>
    </message>
    <message>
        <source>Qt</source>
        <translation>Qt</translation>
    </message>
    <message>
        <source>SQLite</source>
        <translation>SQLite</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>Missing: %1.</source>
        <translation>Fehlend: %1.</translation>
    </message>
    <message>
        <source>All is there.</source>
        <translation>Alles ist da.</translation>
    </message>
    <message>
        <source>Check of the installation: %1</source>
        <translation>Prüfung der Installation: %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>what the meter&apos;s register counted at the socket, in Wh, with ± at 95 %</source>
        <translation>was das Zählwerk an der Steckdose zählte, in Wh, mit ± bei 95 %</translation>
    </message>
    <message>
        <source>delivered energy from full to cut-off over rated energy, at the load of that run</source>
        <translation>abgegebene Energie von voll bis Abschaltung durch Nennenergie, bei der Last dieses Laufs</translation>
    </message>
    <message>
        <source>power that the unit takes for itself while its output is on, in W, seen from the socket</source>
        <translation>Leistung, die der Speicher bei eingeschaltetem Ausgang selbst verbraucht, in W, von der Steckdose aus gesehen</translation>
    </message>
    <message>
        <source>deliverable energy</source>
        <translation>abgebbare Energie</translation>
    </message>
    <message>
        <source>what the unit would deliver at a load at which it was not drained, from all its drains</source>
        <translation>was der Speicher bei einer Last abgeben würde, bei der er nicht entladen wurde, aus allen seinen Entladungen</translation>
    </message>
    <message>
        <source>difference ±</source>
        <translation>Unterschied ±</translation>
    </message>
    <message>
        <source>the two are clearly different where its 95 % interval does not hold 0; else nobody can say from these meters which unit is better</source>
        <translation>die beiden sind klar verschieden, wo sein 95-%-Intervall die 0 nicht enthält; sonst kann mit diesen Zählern niemand sagen, welcher Speicher besser ist</translation>
    </message>
    <message>
        <source>What the quantities mean</source>
        <translation>Was die Größen bedeuten</translation>
    </message>
    <message>
        <source>Three units of the sample logbook (Logbook, Open the sample logbook) as the comparison page shows them. Units and readings are invented; the figures are worked out as you read.</source>
        <translation>Drei Speicher des Beispiellogbuchs (Logbuch, Beispiellogbuch öffnen), wie die Vergleichsseite sie zeigt. Speicher und Ablesungen sind erfunden; die Zahlen werden beim Lesen berechnet.</translation>
    </message>
    <message>
        <source>store the reading in the entry row</source>
        <translation>Ablesung der Eingabezeile speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>next or previous field</source>
        <translation>nächstes oder voriges Feld</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>clear the entry row</source>
        <translation>Eingabezeile leeren</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>answer a doubt: as meant, keep, correct, reset, swapped</source>
        <translation>auf einen Zweifel antworten: wie gemeint, behalten, korrigieren, Reset, getauscht</translation>
    </message>
    <message>
        <source>M, K, C, Z, W</source>
        <translation>M, K, C, Z, W</translation>
    </message>
    <message>
        <source>take the reading of that card</source>
        <translation>Ablesung dieser Karte eintragen</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 bis 9</translation>
    </message>
    <message>
        <source>dim the display: by the hours, always, never</source>
        <translation>Großanzeige dimmen: nach Uhrzeit, immer, nie</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>letzten Schritt zurücknehmen</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Strg+Z</translation>
    </message>
    <message>
        <source>leave the entry, then the display</source>
        <translation>die Eingabe verlassen, dann die Großanzeige</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Entering a reading</source>
        <translation>Eine Ablesung eintragen</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Etwas ist geschehen</translation>
    </message>
    <message>
        <source>Tests and reminders</source>
        <translation>Tests und Erinnerungen</translation>
    </message>
    <message>
        <source>Bench display</source>
        <translation>Großanzeige</translation>
    </message>
    <message>
        <source>Keys at the bench</source>
        <translation>Tasten am Messplatz</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>what it does</source>
        <translation>was sie tut</translation>
    </message>
    <message>
        <source>Always.</source>
        <translation>Immer.</translation>
    </message>
    <message>
        <source>Rows left out or taken with a doubt</source>
        <translation>Zeilen, ausgelassen oder mit Zweifel übernommen</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>the row as it stands</source>
        <translation>die Zeile, wie sie steht</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>übernommen: %1</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Lücke</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>%1 row: %2 taken, %3 left out</source>
        <translation>%1 Zeile: %2 übernommen, %3 ausgelassen</translation>
    </message>
    <message>
        <source>%1 rows: %2 taken, %3 left out</source>
        <translation>%1 Zeilen: %2 übernommen, %3 ausgelassen</translation>
    </message>
    <message>
        <source>; usually %1 s apart</source>
        <translation>; meist %1 s auseinander</translation>
    </message>
    <message>
        <source>; %1 gap longer than %2 s</source>
        <translation>; %1 Lücke länger als %2 s</translation>
    </message>
    <message>
        <source>; %1 gaps longer than %2 s</source>
        <translation>; %1 Lücken länger als %2 s</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2</source>
        <translation>%1 h %2</translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <translation>%1 d %2 h</translation>
    </message>
    <message>
        <source>from the clipboard</source>
        <translation>aus der Zwischenablage</translation>
    </message>
    <message>
        <source>hours since the first reading</source>
        <translation>Stunden seit der ersten Ablesung</translation>
    </message>
    <message>
        <source>gauge / %</source>
        <translation>Ladeanzeige / %</translation>
    </message>
    <message>
        <source>No reading has a gauge or a register.</source>
        <translation>Keine Ablesung hat Ladeanzeige oder Zählwerk.</translation>
    </message>
    <message>
        <source>, calibrated</source>
        <translation>, kalibriert</translation>
    </message>
    <message>
        <source>… and more, which Save and Copy take whole</source>
        <translation>… und mehr; Speichern und Kopieren nehmen alles</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>wählen…</translation>
    </message>
    <message>
        <source>Not known of %1: %2 (%3).</source>
        <translation>Unbekannt bei %1: %2 (%3).</translation>
    </message>
    <message>
        <source>Each other cell tells its reason when pointed at.</source>
        <translation>Jede andere Zelle nennt ihren Grund, wenn Sie darauf zeigen.</translation>
    </message>
    <message>
        <source>nothing since %1</source>
        <translation>nichts seit %1</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;All files (*)</source>
        <translation>Tabellen (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>times of photos</source>
        <translation>Zeiten von Fotos</translation>
    </message>
    <message>
        <source>workbooks that are written</source>
        <translation>Arbeitsmappen, geschrieben</translation>
    </message>
    <message>
        <source>workbooks that are read</source>
        <translation>Arbeitsmappen, gelesen</translation>
    </message>
    <message>
        <source>tables of pages</source>
        <translation>Tabellen aus Webseiten</translation>
    </message>
    <message>
        <source>meters by Modbus</source>
        <translation>Zähler über Modbus</translation>
    </message>
    <message>
        <source>meters on serial lines</source>
        <translation>Zähler an seriellen Schnittstellen</translation>
    </message>
    <message>
        <source>The page of a run</source>
        <translation>Die Seite eines Laufs</translation>
    </message>
    <message>
        <source>Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and log stand in the tabs; what the readings say stands below.</source>
        <translation>Tippen Sie in die Zeile unter den Ablesungen, was Ladeanzeige und Zählwerk zeigen, und drücken Sie Enter. Bei einem zweifelhaften Wert wird nachgefragt; nichts wird eingetragen, bevor Sie antworten. F3 bis F7 vermerken sofort ein Ereignis, F8 beendet den Lauf. Diagramme, Budget und Log stehen in den Reitern; was die Ablesungen sagen, steht darunter.</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Laufende Tests</translation>
    </message>
    <message>
        <source>All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 shows them over the whole screen, to be read from two metres.</source>
        <translation>Alle laufenden Tests nebeneinander: wo jeder steht, wann seine Abschaltung kommen sollte und wann seine nächste Ablesung fällig ist. F11 zeigt sie auf dem ganzen Bildschirm, aus zwei Metern lesbar.</translation>
    </message>
    <message>
        <source>The page of a unit</source>
        <translation>Die Seite eines Speichers</translation>
    </message>
    <message>
        <source>What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run (Ctrl+R) begins one.</source>
        <translation>Was alle Läufe des Speichers zusammen sagen, seine Angaben gegen das Getestete und der nächste lohnende Lauf. Lauf starten (Strg+R) beginnt einen.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they cannot tell apart share a rank.</source>
        <translation>Speicher nebeneinander, wie getestet oder bei einer Last. Der Satz darüber sagt, welche Reihenfolge die Zähler auflösen; Speicher, die sie nicht unterscheiden, teilen sich einen Rang.</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Auslegung</translation>
    </message>
    <message>
        <source>How many days each unit carries a load list, how many units that takes, and which PV array.</source>
        <translation>Wie viele Tage jeder Speicher eine Lastliste trägt, wie viele Speicher es dafür braucht und welchen PV-Generator.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Lastlisten</translation>
    </message>
    <message>
        <source>Appliances that a unit is to feed: what each takes while on, how long a day, and when.</source>
        <translation>Verbraucher, die ein Speicher versorgen soll: was jeder im Betrieb aufnimmt, wie lange am Tag und wann.</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation>PV-Eingang</translation>
    </message>
    <message>
        <source>Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.</source>
        <translation>Ob ein Strang von Modulen zum PV-Eingang eines Speichers passt, bei Kälte und Hitze. PV-Stränge stehen bei Licht unter Spannung.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>What is stated of each meter. Without its error limit no interval can be stated.</source>
        <translation>Was zu jedem Zähler angegeben ist. Ohne seine Fehlergrenze lässt sich kein Intervall angeben.</translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>second register %1 Wh</source>
        <translation>zweites Zählwerk %1 Wh</translation>
    </message>
    <message>
        <source>meter showed %1 W</source>
        <translation>Zähler zeigte %1 W</translation>
    </message>
    <message>
        <source>unit showed %1 W</source>
        <translation>Speicher zeigte %1 W</translation>
    </message>
    <message numerus="yes">
        <source>%n tests</source>
        <comment>%n test</comment>
        <translation>
            <numerusform>%n Test</numerusform>
            <numerusform>%n Tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n Zähler</numerusform>
            <numerusform>%n Zähler</numerusform>
        </translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>a time of day</comment>
        <translation>um %1</translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n Lastliste</numerusform>
            <numerusform>%n Lastlisten</numerusform>
        </translation>
    </message>
    <message>
        <source>folder of the logbook</source>
        <translation>Ordner des Logbuchs</translation>
    </message>
    <message>
        <source>access to kept passwords</source>
        <translation>Zugriff auf behaltene Passwörter</translation>
    </message>
    <message>
        <source>Missing: %1. Notes on: %2.</source>
        <translation>Fehlend: %1. Hinweise zu: %2.</translation>
    </message>
    <message>
        <source>Nothing that the program needs is missing. Notes on: %1.</source>
        <translation>Nichts fehlt, was das Programm braucht. Hinweise zu: %1.</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>hängt</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>rebound</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>at %1: %2</source>
        <translation>um %1: %2</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>Usable fraction, the gauge&apos;s errors and losses: this kind of run (%1) does not tell them; make a drain.</source>
        <translation>Nutzbarer Anteil, Fehler der Ladeanzeige und Verluste: diese Art von Lauf (%1) sagt darüber nichts; machen Sie eine Entladung.</translation>
    </message>
    <message>
        <source>from vessel to vessel, each with its figures</source>
        <translation>von Füllbild zu Füllbild, mit den Werten eines jeden</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>it is for another host</source>
        <translation>es gilt für einen anderen Rechner</translation>
    </message>
    <message>
        <source>it has expired</source>
        <translation>es ist abgelaufen</translation>
    </message>
    <message>
        <source>it is not valid yet</source>
        <translation>es gilt noch nicht</translation>
    </message>
    <message>
        <source>no authority that this machine trusts has signed it</source>
        <translation>keine Stelle, der dieser Rechner vertraut, hat es unterschrieben</translation>
    </message>
    <message>
        <source>no address is known for the name %1 (%2)</source>
        <translation>zum Namen %1 ist keine Adresse bekannt (%2)</translation>
    </message>
    <message>
        <source>check how it is written, and the network</source>
        <translation>prüfen Sie, wie er geschrieben ist, und das Netz</translation>
    </message>
    <message>
        <source>no connection to %1, port %2: %3</source>
        <translation>keine Verbindung zu %1, Port %2: %3</translation>
    </message>
    <message>
        <source>nothing came within %1 s</source>
        <translation>binnen %1 s kam nichts</translation>
    </message>
    <message>
        <source>its certificate does not hold (%1)</source>
        <translation>sein Zertifikat gilt nicht (%1)</translation>
    </message>
    <message>
        <source>check that it is switched on, and its host and port</source>
        <translation>prüfen Sie, ob er eingeschaltet ist, und Rechnername und Port</translation>
    </message>
    <message>
        <source>give it a certificate that is in date, for the host that you typed and from an authority that this machine trusts</source>
        <translation>geben Sie ihm ein Zertifikat, das nicht abgelaufen ist, für den eingetippten Rechnernamen gilt und von einer Stelle kommt, der dieser Rechner vertraut</translation>
    </message>
    <message>
        <source>part of the program</source>
        <translation>Teil des Programms</translation>
    </message>
    <message>
        <source>cannot be loaded</source>
        <translation>lässt sich nicht laden</translation>
    </message>
</context>
<context>
    <name>ullage::AccountsView</name>
    <message>
        <source>If the gauge is right</source>
        <translation>Wenn die Ladeanzeige stimmt</translation>
    </message>
    <message>
        <source>If the gauge is wrong</source>
        <translation>Wenn die Ladeanzeige falsch ist</translation>
    </message>
    <message>
        <source>Gauge right, gauge wrong</source>
        <translation>Ladeanzeige stimmt, Ladeanzeige falsch</translation>
    </message>
    <message>
        <source>Ruled out: %1</source>
        <translation>Ausgeschlossen: %1</translation>
    </message>
    <message>
        <source>What decides: %1</source>
        <translation>Was entscheidet: %1</translation>
    </message>
</context>
<context>
    <name>ullage::AddressWalk</name>
    <message>
        <source>%1 at %2</source>
        <comment>what happened, address</comment>
        <translation>%1 bei %2</translation>
    </message>
</context>
<context>
    <name>ullage::AmendDialog</name>
    <message>
        <source>Amend reading</source>
        <translation>Ablesung berichtigen</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Gauge, %</source>
        <translation>Ladeanzeige, %</translation>
    </message>
    <message>
        <source>Register, Wh</source>
        <translation>Zählwerk, Wh</translation>
    </message>
    <message>
        <source>Second register, Wh</source>
        <translation>Zweites Zählwerk, Wh</translation>
    </message>
    <message>
        <source>Meter power, W</source>
        <translation>Leistung am Zähler, W</translation>
    </message>
    <message>
        <source>Unit&apos;s display, W</source>
        <translation>Display des Speichers, W</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>keine Marke</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Why it changes</source>
        <translation>Warum geändert</translation>
    </message>
    <message>
        <source>for example: misread in the dark</source>
        <translation>zum Beispiel: im Dunkeln verlesen</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Amend</source>
        <translation>Berichtigen</translation>
    </message>
</context>
<context>
    <name>ullage::AnalyseUnits</name>
    <message>
        <source>Analysing %1 readings</source>
        <translation>%1 Ablesungen werden ausgewertet</translation>
    </message>
</context>
<context>
    <name>ullage::AnswerView</name>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
</context>
<context>
    <name>ullage::ApplianceForm</name>
    <message>
        <source>Add appliance to %1</source>
        <translation>Verbraucher anlegen in %1</translation>
    </message>
    <message>
        <source>Appliance %1</source>
        <translation>Verbraucher %1</translation>
    </message>
    <message>
        <source>Add appliance</source>
        <translation>Verbraucher anlegen</translation>
    </message>
    <message>
        <source>Save appliance</source>
        <translation>Verbraucher speichern</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>such as: lamp</source>
        <translation>etwa: Lampe</translation>
    </message>
    <message>
        <source>How &amp;many alike</source>
        <translation>Wie &amp;viele gleiche</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>What one of them takes</source>
        <translation>Was einer davon aufnimmt</translation>
    </message>
    <message>
        <source>&amp;Power while on</source>
        <translation>&amp;Leistung im Betrieb</translation>
    </message>
    <message>
        <source>9 W</source>
        <translation>9 W</translation>
    </message>
    <message>
        <source>&amp;Duty, share of the time on</source>
        <translation>&amp;Einschaltdauer, Anteil der Zeit</translation>
    </message>
    <message>
        <source>100 %; a refrigerator some 35 %</source>
        <translation>100 %; ein Kühlschrank etwa 35 %</translation>
    </message>
    <message>
        <source>&amp;Or as measured in use</source>
        <translation>&amp;Oder gemessen im Gebrauch</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>500 Wh</source>
        <translation>500 Wh</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>24 h</source>
        <translation>24 h</translation>
    </message>
    <message>
        <source>Highest power of its &amp;start</source>
        <translation>Höchste Leistung beim &amp;Anlauf</translation>
    </message>
    <message>
        <source>no more than while on</source>
        <translation>nicht mehr als im Betrieb</translation>
    </message>
    <message>
        <source>When it is in use</source>
        <translation>Wann er benutzt wird</translation>
    </message>
    <message>
        <source>&amp;Hours per day</source>
        <translation>&amp;Stunden pro Tag</translation>
    </message>
    <message>
        <source>5 h</source>
        <translation>5 h</translation>
    </message>
    <message>
        <source>Of these at ni&amp;ght</source>
        <translation>Davon nac&amp;hts</translation>
    </message>
    <message>
        <source>0 h</source>
        <translation>0 h</translation>
    </message>
    <message>
        <source>&amp;Output of the unit</source>
        <translation>A&amp;usgang des Speichers</translation>
    </message>
    <message>
        <source>on while it is in use</source>
        <translation>ein, während er benutzt wird</translation>
    </message>
    <message>
        <source>always on for it</source>
        <translation>immer ein für ihn</translation>
    </message>
    <message>
        <source>The appliance needs a name.</source>
        <translation>Der Verbraucher braucht einen Namen.</translation>
    </message>
    <message>
        <source>Enter a whole number, 1 to %1.</source>
        <translation>Tragen Sie eine ganze Zahl ein, 1 bis %1.</translation>
    </message>
    <message>
        <source>The duty is a share of the time: more than 0 %, at most 100 %.</source>
        <translation>Die Einschaltdauer ist ein Anteil der Zeit: mehr als 0 %, höchstens 100 %.</translation>
    </message>
    <message>
        <source>Say over how many hours that energy was measured.</source>
        <translation>Sagen Sie, über wie viele Stunden diese Energie gemessen wurde.</translation>
    </message>
    <message>
        <source>Say how much energy was measured over those hours.</source>
        <translation>Sagen Sie, wie viel Energie in diesen Stunden gemessen wurde.</translation>
    </message>
    <message>
        <source>Enter its power while on, or below what it took over some hours.</source>
        <translation>Tragen Sie seine Leistung im Betrieb ein oder darunter, was er in einigen Stunden aufnahm.</translation>
    </message>
    <message>
        <source>That is %1 W on average, more than its power while on. Correct one of the two.</source>
        <translation>Das sind im Mittel %1 W, mehr als seine Leistung im Betrieb. Korrigieren Sie eines von beiden.</translation>
    </message>
    <message>
        <source>The start is below its power while on; leave it empty where nothing more is taken.</source>
        <translation>Der Anlauf liegt unter der Leistung im Betrieb; lassen Sie das Feld leer, wo nichts zusätzlich aufgenommen wird.</translation>
    </message>
    <message>
        <source>Say for how many hours of a day it is in use.</source>
        <translation>Sagen Sie, wie viele Stunden am Tag er benutzt wird.</translation>
    </message>
    <message>
        <source>A day has 24 h: enter more than 0 h, at most 24 h.</source>
        <translation>Ein Tag hat 24 h: tragen Sie mehr als 0 h ein, höchstens 24 h.</translation>
    </message>
    <message>
        <source>At most its hours per day lie at night.</source>
        <translation>Nachts liegen höchstens seine Stunden pro Tag.</translation>
    </message>
</context>
<context>
    <name>ullage::BenchController</name>
    <message>
        <source>Nothing to snooze: the next reading of %1 is due only in %2 minutes.</source>
        <translation>Nichts zu verschieben: die nächste Ablesung von %1 ist erst in %2 Minuten fällig.</translation>
    </message>
    <message>
        <source>Nothing to snooze: no reading of %1 is due.</source>
        <translation>Nichts zu verschieben: von %1 ist keine Ablesung fällig.</translation>
    </message>
    <message>
        <source>next reading %1</source>
        <translation>nächste Ablesung %1</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>keine Erinnerung</translation>
    </message>
</context>
<context>
    <name>ullage::BenchDisplay</name>
    <message>
        <source>Running tests</source>
        <translation>Laufende Tests</translation>
    </message>
    <message>
        <source>%1, Ctrl+Z takes it back</source>
        <translation>%1, Strg+Z nimmt es zurück</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message>
        <source>1 to %1 reading</source>
        <translation>1 bis %1 Ablesung</translation>
    </message>
    <message>
        <source>N %1</source>
        <translation>N %1</translation>
    </message>
    <message>
        <source>Esc back</source>
        <translation>Esc zurück</translation>
    </message>
    <message>
        <source>No test is running. Esc goes back; Ctrl+R starts one there.</source>
        <translation>Kein Test läuft. Esc geht zurück; Strg+R startet dort einen.</translation>
    </message>
</context>
<context>
    <name>ullage::BenchPage</name>
    <message>
        <source>No test is running. Start one: it then stands here with its gauge, its expected cut-off and its next reading until you end it, beside the others that run.</source>
        <translation>Kein Test läuft. Starten Sie einen: er steht dann hier mit Ladeanzeige, erwarteter Abschaltung und nächster Ablesung, bis Sie ihn beenden, neben den anderen, die laufen.</translation>
    </message>
    <message>
        <source>Full screen  F11</source>
        <translation>Vollbild  F11</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Lauf starten</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Laufende Tests</translation>
    </message>
    <message>
        <source>A card for each running test over the whole screen, to be read from two metres</source>
        <translation>Eine Karte für jeden laufenden Test auf dem ganzen Bildschirm, aus zwei Metern lesbar</translation>
    </message>
    <message>
        <source>%1, %2 with a reading due</source>
        <translation>%1, davon %2 mit fälliger Ablesung</translation>
    </message>
</context>
<context>
    <name>ullage::BenchPanel</name>
    <message>
        <source>Enter reading</source>
        <translation>Ablesung eintragen</translation>
    </message>
    <message>
        <source>Next reading…</source>
        <translation>Nächste Ablesung…</translation>
    </message>
    <message>
        <source>Snooze %1 min</source>
        <translation>%1 min später</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>noch nicht fällig</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>keine Erinnerung</translation>
    </message>
    <message>
        <source>Enter reading of %1</source>
        <translation>Ablesung von %1 eintragen</translation>
    </message>
</context>
<context>
    <name>ullage::BudgetModel</name>
    <message>
        <source>%1
%2</source>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1
type %2, %3</source>
        <translation>%1
Typ %2, %3</translation>
    </message>
    <message>
        <source>source
sensitivity</source>
        <translation>Quelle
Empfindlichkeit</translation>
    </message>
    <message>
        <source>shape
type, freedom</source>
        <translation>Form
Typ, Freiheit</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>Korrelation</translation>
    </message>
    <message>
        <source>standard
Wh</source>
        <translation>Standard
Wh</translation>
    </message>
    <message>
        <source>share
%</source>
        <translation>Anteil
%</translation>
    </message>
</context>
<context>
    <name>ullage::BudgetView</name>
    <message>
        <source>Uncertainty budget of the delivered energy</source>
        <translation>Unsicherheitsbudget der abgegebenen Energie</translation>
    </message>
    <message>
        <source>No budget yet: it needs two readings of the meter&apos;s register.</source>
        <translation>Noch kein Budget: es braucht zwei Ablesungen des Zählwerks.</translation>
    </message>
    <message>
        <source> 95 % interval: ± %1 Wh</source>
        <translation> 95-%-Intervall: ± %1 Wh</translation>
    </message>
</context>
<context>
    <name>ullage::Builder</name>
    <message>
        <source>hours since start</source>
        <translation>Stunden seit Start</translation>
    </message>
    <message>
        <source>by the log</source>
        <translation>laut Log</translation>
    </message>
</context>
<context>
    <name>ullage::ClaimsView</name>
    <message>
        <source>0.30</source>
        <translation>0,30</translation>
    </message>
    <message>
        <source>price of a kWh</source>
        <translation>Preis einer kWh</translation>
    </message>
    <message>
        <source>What the unit takes for itself</source>
        <translation>Was der Speicher selbst verbraucht</translation>
    </message>
    <message>
        <source>Price of a &amp;kWh</source>
        <translation>Preis einer &amp;kWh</translation>
    </message>
    <message>
        <source>The price of a kWh is no number of 0 or more; enter it like 0.30.</source>
        <translation>Der Preis einer kWh ist keine Zahl ab 0; schreiben Sie ihn wie 0,30.</translation>
    </message>
    <message>
        <source>Output on</source>
        <translation>Ausgang ein</translation>
    </message>
    <message>
        <source>Output off</source>
        <translation>Ausgang aus</translation>
    </message>
</context>
<context>
    <name>ullage::ColumnsDialog</name>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Satz</translation>
    </message>
    <message>
        <source>&amp;Remove this set</source>
        <translation>Satz &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <source>&amp;Down</source>
        <translation>Nach &amp;unten</translation>
    </message>
    <message>
        <source>&amp;Keep as</source>
        <translation>&amp;Behalten als</translation>
    </message>
    <message>
        <source>a name, to keep these columns as a set of yours</source>
        <translation>ein Name, als eigener Satz von Spalten</translation>
    </message>
    <message>
        <source>The table on the page, its copies, exports and reports have these columns, from left to right. At one load the figures there stand in place of those as tested.</source>
        <translation>Die Tabelle auf der Seite, ihre Kopien, Exporte und Berichte haben diese Spalten, von links nach rechts. Bei einer Last stehen die Werte dort anstelle derer wie getestet.</translation>
    </message>
    <message>
        <source>as ticked below</source>
        <translation>wie unten angehakt</translation>
    </message>
    <message>
        <source>for readers</source>
        <translation>für Leser</translation>
    </message>
    <message>
        <source>for a spreadsheet: all columns</source>
        <translation>für eine Tabellenkalkulation: alle Spalten</translation>
    </message>
    <message>
        <source>%1 (yours: not for readers)</source>
        <translation>%1 (nur für Sie: nicht für Leser)</translation>
    </message>
    <message>
        <source>No column is ticked: tick at least one.</source>
        <translation>Keine Spalte ist angehakt: haken Sie mindestens eine an.</translation>
    </message>
    <message>
        <source>This name belongs to a ready set; choose another.</source>
        <translation>Dieser Name gehört zu einem fertigen Satz; wählen Sie einen anderen.</translation>
    </message>
</context>
<context>
    <name>ullage::ComparingBar</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Units compared</source>
        <translation>Verglichene Speicher</translation>
    </message>
    <message>
        <source>Comparing units: %1 of %2</source>
        <translation>Speicher werden verglichen: %1 von %2</translation>
    </message>
    <message>
        <source>Stopped: %1 units are still to be compared. What stands below is as it was before.</source>
        <translation>Angehalten: %1 Speicher sind noch zu vergleichen. Was unten steht, ist wie zuvor.</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonChoice</name>
    <message>
        <source>As tested</source>
        <translation>Wie getestet</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>Bei einer Last</translation>
    </message>
    <message>
        <source>At a load list</source>
        <translation>Bei einer Lastliste</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Lastliste</translation>
    </message>
    <message>
        <source>Its mean power while the unit&apos;s output is on; Edit, Load lists has them in full</source>
        <translation>Ihre mittlere Leistung, während der Ausgang des Speichers ein ist; Bearbeiten, Lastlisten zeigt sie ganz</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>on for</source>
        <translation>ein für</translation>
    </message>
    <message>
        <source> % of time</source>
        <translation> % der Zeit</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source> % of rated</source>
        <translation> % der Nennenergie</translation>
    </message>
    <message>
        <source>only units whose name, maker or remark has these words</source>
        <translation>nur Speicher mit diesen Worten in Name, Hersteller oder Bemerkung</translation>
    </message>
    <message>
        <source>Filter of units</source>
        <translation>Filter der Speicher</translation>
    </message>
    <message>
        <source>Tag of units</source>
        <translation>Schlagwort der Speicher</translation>
    </message>
    <message>
        <source>Only units with this tag; tags are given in a unit&apos;s claims</source>
        <translation>Nur Speicher mit diesem Schlagwort; Schlagwörter stehen in den Angaben eines Speichers</translation>
    </message>
    <message>
        <source>rated from</source>
        <translation>Nennenergie von</translation>
    </message>
    <message>
        <source> Wh</source>
        <translation> Wh</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>%1, %2 W</source>
        <translation>%1, %2 W</translation>
    </message>
    <message>
        <source>any tag</source>
        <translation>alle Schlagwörter</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonController</name>
    <message>
        <source>Add units of another logbook</source>
        <translation>Speicher aus anderem Logbuch</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonPage</name>
    <message>
        <source>Columns…</source>
        <translation>Spalten…</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
    <message>
        <source>The units are not compared yet.</source>
        <translation>Die Speicher sind noch nicht verglichen.</translation>
    </message>
    <message>
        <source>The units are not compared yet; the line above them says how far that is.</source>
        <translation>Die Speicher sind noch nicht verglichen; die Zeile darüber sagt, wie weit es ist.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>one for each unit</source>
        <translation>eine je Speicher</translation>
    </message>
    <message>
        <source>every drain</source>
        <translation>jede Entladung</translation>
    </message>
    <message>
        <source>Which columns the table has, here and in all that leaves the page</source>
        <translation>Welche Spalten die Tabelle hat, hier und in allem, was die Seite verlässt</translation>
    </message>
    <message>
        <source>The table as it is shown, for a spreadsheet</source>
        <translation>Die Tabelle, wie sie gezeigt wird, für eine Tabellenkalkulation</translation>
    </message>
    <message>
        <source>Pictures of the comparison</source>
        <translation>Bilder des Vergleichs</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Nutzbarer Anteil</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Models</source>
        <translation>Modelle</translation>
    </message>
    <message>
        <source>Against load</source>
        <translation>Über der Last</translation>
    </message>
    <message>
        <source>Gauge errors</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>how much more or less the unit of a row has in</source>
        <translation>Unterschied des Speichers einer Zeile in</translation>
    </message>
    <message>
        <source>Figure in which units are held against each other</source>
        <translation>Größe, in der die Speicher verglichen werden</translation>
    </message>
    <message>
        <source>Differences between units</source>
        <translation>Unterschiede zwischen Speichern</translation>
    </message>
    <message>
        <source>Comparison of the units</source>
        <translation>Vergleich der Speicher</translation>
    </message>
    <message>
        <source>The table is on the clipboard, ready to be pasted into a spreadsheet.</source>
        <translation>Die Tabelle ist in der Zwischenablage, bereit zum Einfügen in eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>Columns for readers</source>
        <translation>Spalten für Leser</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>Füllbilder</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>nutzbarer Anteil</translation>
    </message>
    <message>
        <source>Models by their specimens</source>
        <translation>Modelle nach ihren Exemplaren</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonPresenter</name>
    <message>
        <source>This run is in %1; open that logbook to see it.</source>
        <translation>Dieser Lauf ist in %1; öffnen Sie jenes Logbuch, um ihn zu sehen.</translation>
    </message>
    <message>
        <source>no drains to show</source>
        <translation>keine Entladungen zu zeigen</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>wie getestet</translation>
    </message>
    <message>
        <source>%1 units, %2 drains, %3</source>
        <translation>%1 Speicher, %2 Entladungen, %3</translation>
    </message>
    <message>
        <source>Left out: %1
</source>
        <translation>Ausgelassen: %1
</translation>
    </message>
    <message>
        <source>Of %1 rows the %2 with the largest usable fraction; filter to see others.</source>
        <translation>Von %1 Zeilen die %2 mit dem größten nutzbaren Anteil; filtern Sie, um andere zu sehen.</translation>
    </message>
</context>
<context>
    <name>ullage::Controller</name>
    <message>
        <source>Logbooks (*.ullage);;All files (*)</source>
        <translation>Logbücher (*.ullage);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>ullage::CopiesController</name>
    <message>
        <source>Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)</source>
        <translation>Logbücher und ihre Kopien (*.ullage *.ullage-copy);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>No automatic copy of the logbook was made. %1</source>
        <translation>Keine automatische Kopie des Logbuchs wurde gemacht. %1</translation>
    </message>
    <message>
        <source>Copies of which logbook</source>
        <translation>Kopien welches Logbuchs</translation>
    </message>
    <message>
        <source>%1 of a copy.ullage</source>
        <translation>%1 aus einer Kopie.ullage</translation>
    </message>
    <message>
        <source>There is no copy of %1 beside it.</source>
        <translation>Neben %1 liegt keine Kopie davon.</translation>
    </message>
    <message>
        <source>There is no copy of %1 in %2.</source>
        <translation>Von %1 gibt es keine Kopie in %2.</translation>
    </message>
    <message>
        <source>%1 as of %2.ullage</source>
        <translation>%1 Stand %2.ullage</translation>
    </message>
    <message>
        <source>Looking at the copy</source>
        <translation>Kopie wird angesehen</translation>
    </message>
    <message>
        <source>Not looked at.</source>
        <translation>Nicht angesehen.</translation>
    </message>
    <message>
        <source>It holds %1 and %2, without readings.</source>
        <comment>units and runs</comment>
        <translation>Sie enthält %1 und %2, ohne Ablesungen.</translation>
    </message>
    <message>
        <source>It holds %1 and %2; the last reading is of %3, %4.</source>
        <comment>units, runs, day and time</comment>
        <translation>Sie enthält %1 und %2; die letzte Ablesung ist vom %3, %4.</translation>
    </message>
    <message>
        <source>Save the copy as a logbook</source>
        <translation>Kopie als Logbuch speichern</translation>
    </message>
    <message>
        <source>Saving %1</source>
        <translation>%1 wird gespeichert</translation>
    </message>
</context>
<context>
    <name>ullage::CopiesForm</name>
    <message>
        <source>Copies of %1</source>
        <translation>Kopien von %1</translation>
    </message>
    <message>
        <source>Save as a logbook…</source>
        <translation>Als Logbuch speichern…</translation>
    </message>
    <message>
        <source>&amp;What it holds</source>
        <translation>&amp;Was sie enthält</translation>
    </message>
    <message>
        <source>A copy is saved as a logbook of its own, which is then opened. The copy and the logbook stay as they are.</source>
        <translation>Eine Kopie wird als eigenes Logbuch gespeichert, das dann geöffnet wird. Die Kopie und das Logbuch bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day and size of a copy</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ullage::DisplayCard</name>
    <message>
        <source>next reading</source>
        <translation>nächste Ablesung</translation>
    </message>
    <message>
        <source>%1, no reading yet</source>
        <translation>%1, noch keine Ablesung</translation>
    </message>
    <message>
        <source>look now</source>
        <translation>jetzt ablesen</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>noch nicht fällig</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>keine Erinnerung</translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>a time of day</comment>
        <translation>%1</translation>
    </message>
</context>
<context>
    <name>ullage::DisplayEntry</name>
    <message>
        <source>gauge, %</source>
        <translation>Ladeanzeige, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>Zählwerk, Wh</translation>
    </message>
    <message>
        <source>second register, Wh</source>
        <translation>zweites Zählwerk, Wh</translation>
    </message>
    <message>
        <source>Enter records, Esc goes back.</source>
        <translation>Enter trägt ein, Esc geht zurück.</translation>
    </message>
    <message>
        <source>With what is half typed on its page: %1. Enter records, Esc goes back.</source>
        <translation>Mit dem, was auf seiner Seite halb eingetippt ist: %1. Enter trägt ein, Esc geht zurück.</translation>
    </message>
    <message>
        <source>What is typed here is not on the disk. %1</source>
        <translation>Was hier eingetippt ist, ist nicht auf dem Datenträger. %1</translation>
    </message>
</context>
<context>
    <name>ullage::Document</name>
    <message>
        <source>edit method</source>
        <translation>Methode ändern</translation>
    </message>
    <message>
        <source>edit publisher&apos;s details</source>
        <translation>Angaben zum Herausgeber ändern</translation>
    </message>
    <message>
        <source>end run</source>
        <translation>Lauf beenden</translation>
    </message>
    <message>
        <source>Ended: run</source>
        <translation>Beendet: Lauf</translation>
    </message>
    <message>
        <source>import folder</source>
        <translation>Ordner importieren</translation>
    </message>
    <message>
        <source>Imported %1</source>
        <translation>Importiert: %1</translation>
    </message>
    <message>
        <source>add load list %1</source>
        <translation>Lastliste %1 anlegen</translation>
    </message>
    <message>
        <source>Added load list %1</source>
        <translation>Angelegt: Lastliste %1</translation>
    </message>
    <message>
        <source>edit load list %1</source>
        <translation>Lastliste %1 ändern</translation>
    </message>
    <message>
        <source>Changed load list %1</source>
        <translation>Geändert: Lastliste %1</translation>
    </message>
    <message>
        <source>withdraw load list %1</source>
        <translation>Lastliste %1 zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: load list %1</source>
        <translation>Zurückgezogen: Lastliste %1</translation>
    </message>
    <message>
        <source>Changed method</source>
        <translation>Geändert: Methode</translation>
    </message>
    <message>
        <source>attach photo</source>
        <translation>Foto anhängen</translation>
    </message>
    <message>
        <source>Attached photo</source>
        <translation>Angehängt: Foto</translation>
    </message>
    <message>
        <source>withdraw photo</source>
        <translation>Foto zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: photo</source>
        <translation>Zurückgezogen: Foto</translation>
    </message>
    <message>
        <source>Changed publisher&apos;s details</source>
        <translation>Geändert: Angaben zum Herausgeber</translation>
    </message>
    <message>
        <source>add PV sheet %1</source>
        <translation>PV-Blatt %1 anlegen</translation>
    </message>
    <message>
        <source>Added PV sheet %1</source>
        <translation>Angelegt: PV-Blatt %1</translation>
    </message>
    <message>
        <source>edit PV sheet %1</source>
        <translation>PV-Blatt %1 ändern</translation>
    </message>
    <message>
        <source>Changed PV sheet %1</source>
        <translation>Geändert: PV-Blatt %1</translation>
    </message>
    <message>
        <source>withdraw PV sheet %1</source>
        <translation>PV-Blatt %1 zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: PV sheet %1</source>
        <translation>Zurückgezogen: PV-Blatt %1</translation>
    </message>
    <message>
        <source>mark of %1</source>
        <translation>Marke von %1</translation>
    </message>
    <message>
        <source>reading of %1</source>
        <translation>Ablesung von %1</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>%1 eintragen</translation>
    </message>
    <message>
        <source>Recorded %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
    <message>
        <source>amend %1</source>
        <translation>%1 berichtigen</translation>
    </message>
    <message>
        <source>Amended to %1</source>
        <translation>Berichtigt auf %1</translation>
    </message>
    <message>
        <source>withdraw %1</source>
        <translation>%1 zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: %1</source>
        <translation>Zurückgezogen: %1</translation>
    </message>
    <message>
        <source>edit run</source>
        <translation>Lauf ändern</translation>
    </message>
    <message>
        <source>Changed run</source>
        <translation>Geändert: Lauf</translation>
    </message>
    <message>
        <source>reopen run</source>
        <translation>Lauf wieder öffnen</translation>
    </message>
    <message>
        <source>Reopened run</source>
        <translation>Wieder geöffnet: Lauf</translation>
    </message>
    <message>
        <source>start %1</source>
        <translation>%1 starten</translation>
    </message>
    <message>
        <source>Started %1</source>
        <translation>Gestartet: %1</translation>
    </message>
    <message>
        <source>import %1 of %2</source>
        <translation>%1 von %2 importieren</translation>
    </message>
    <message>
        <source>Imported a run</source>
        <translation>Ein Lauf importiert</translation>
    </message>
    <message>
        <source>Imported %1 runs, the last of which Undo takes back</source>
        <translation>%1 Läufe importiert, deren letzten Rückgängig zurücknimmt</translation>
    </message>
    <message>
        <source>import table</source>
        <translation>Tabelle importieren</translation>
    </message>
    <message>
        <source>Imported %1 runs of one table</source>
        <translation>%1 Läufe aus einer Tabelle importiert</translation>
    </message>
    <message>
        <source>import log</source>
        <translation>Log importieren</translation>
    </message>
    <message>
        <source>Imported log</source>
        <translation>Importiert: Log</translation>
    </message>
    <message>
        <source>withdraw log</source>
        <translation>Log zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: log</source>
        <translation>Zurückgezogen: Log</translation>
    </message>
    <message>
        <source>add unit %1</source>
        <translation>Speicher %1 anlegen</translation>
    </message>
    <message>
        <source>Added unit %1</source>
        <translation>Angelegt: Speicher %1</translation>
    </message>
    <message>
        <source>edit unit %1</source>
        <translation>Speicher %1 ändern</translation>
    </message>
    <message>
        <source>Changed unit %1</source>
        <translation>Geändert: Speicher %1</translation>
    </message>
    <message>
        <source>withdraw unit %1</source>
        <translation>Speicher %1 zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: unit %1</source>
        <translation>Zurückgezogen: Speicher %1</translation>
    </message>
    <message>
        <source>add meter %1</source>
        <translation>Zähler %1 anlegen</translation>
    </message>
    <message>
        <source>Added meter %1</source>
        <translation>Angelegt: Zähler %1</translation>
    </message>
    <message>
        <source>edit meter %1</source>
        <translation>Zähler %1 ändern</translation>
    </message>
    <message>
        <source>Changed meter %1</source>
        <translation>Geändert: Zähler %1</translation>
    </message>
    <message>
        <source>withdraw meter %1</source>
        <translation>Zähler %1 zurückziehen</translation>
    </message>
    <message>
        <source>Withdrawn: meter %1</source>
        <translation>Zurückgezogen: Zähler %1</translation>
    </message>
    <message>
        <source>join %1</source>
        <translation>mit %1 zusammenführen</translation>
    </message>
    <message>
        <source>Joined %1</source>
        <translation>Zusammengeführt mit %1</translation>
    </message>
</context>
<context>
    <name>ullage::DoneLine</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Takes back what is named beside it; so does Ctrl+Z</source>
        <translation>Nimmt zurück, was daneben genannt ist; ebenso Strg+Z</translation>
    </message>
</context>
<context>
    <name>ullage::EndForm</name>
    <message>
        <source>End run</source>
        <translation>Lauf beenden</translation>
    </message>
    <message>
        <source>&amp;How it ended</source>
        <translation>&amp;Wie beendet</translation>
    </message>
    <message>
        <source>choose …</source>
        <translation>wählen …</translation>
    </message>
    <message>
        <source>cut-off seen: off before my eyes</source>
        <translation>Abschaltung selbst gesehen</translation>
    </message>
    <message>
        <source>found off: went off unseen</source>
        <translation>aus vorgefunden: ging ungesehen aus</translation>
    </message>
    <message>
        <source>stopped by me</source>
        <translation>von mir beendet</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>Wa&amp;nn</translation>
    </message>
    <message>
        <source>time, at first now</source>
        <translation>Zeit, zuerst jetzt</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>noticed so late at most</source>
        <translation>höchstens so spät bemerkt</translation>
    </message>
    <message>
        <source>02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>gauge, %</source>
        <translation>Ladeanzeige, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>Zählwerk, Wh</translation>
    </message>
    <message>
        <source>second register, Wh</source>
        <translation>zweites Zählwerk, Wh</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>Watt</translation>
    </message>
    <message>
        <source>What is &amp;shown</source>
        <translation>Was an&amp;gezeigt wird</translation>
    </message>
    <message>
        <source>&amp;Remark</source>
        <translation>&amp;Bemerkung</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature then</source>
        <translation>&amp;Umgebungstemperatur dann</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>From the entry row: %1</source>
        <translation>Aus der Eingabezeile: %1</translation>
    </message>
    <message>
        <source>From the log, where the power ceased: %1</source>
        <translation>Aus dem Log, wo die Leistung aufhörte: %1</translation>
    </message>
    <message>
        <source>From the log: %1</source>
        <translation>Aus dem Log: %1</translation>
    </message>
    <message>
        <source>The mark &quot;cut-off&quot; was the end: %1</source>
        <translation>Die Marke „Abschaltung“ war das Ende: %1</translation>
    </message>
    <message>
        <source>The last reading was the end: %1</source>
        <translation>Die letzte Ablesung war das Ende: %1</translation>
    </message>
    <message>
        <source>Puts these into the fields; they can be changed there</source>
        <translation>Setzt dies in die Felder; dort lässt es sich ändern</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>not said: 5 min</source>
        <translation>ohne Angabe: 5 min</translation>
    </message>
    <message>
        <source>not said: since last seen on</source>
        <translation>ohne Angabe: seit zuletzt ein</translation>
    </message>
    <message>
        <source>Say how it ended; then what the run says stands here.</source>
        <translation>Sagen Sie, wie er endete; dann steht hier, was der Lauf sagt.</translation>
    </message>
    <message>
        <source>Choose how it ended.</source>
        <translation>Wählen Sie, wie er endete.</translation>
    </message>
</context>
<context>
    <name>ullage::EntryFlow</name>
    <message>
        <source>This run is no longer in the open logbook; what you typed stands here until you choose another run.</source>
        <translation>Dieser Lauf ist nicht mehr im offenen Logbuch; was Sie eingetippt haben, bleibt hier, bis Sie einen anderen Lauf wählen.</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>. Is that right?</source>
        <translation>. Stimmt das?</translation>
    </message>
    <message>
        <source>What did the register show just before? With it nothing is missing. Where it is not known, press Enter.</source>
        <translation>Was zeigte das Zählwerk kurz davor? Damit fehlt nichts. Ist es unbekannt, drücken Sie Enter.</translation>
    </message>
    <message>
        <source>Not recorded. %1</source>
        <translation>Nicht eingetragen. %1</translation>
    </message>
</context>
<context>
    <name>ullage::EntryRow</name>
    <message>
        <source>Record</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>What is typed here is not on the disk. %1</source>
        <translation>Was hier eingetippt ist, ist nicht auf dem Datenträger. %1</translation>
    </message>
    <message>
        <source>Time of the reading</source>
        <translation>Zeit der Ablesung</translation>
    </message>
    <message>
        <source>Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>Leer für jetzt; sonst 02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>Gauge in percent</source>
        <translation>Ladeanzeige in Prozent</translation>
    </message>
    <message>
        <source>What the unit&apos;s own gauge shows: 69 or 69 %</source>
        <translation>Was die Ladeanzeige des Speichers zeigt: 69 oder 69 %</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Zählwerk</translation>
    </message>
    <message>
        <source>Register in watt hours</source>
        <translation>Zählwerk in Wattstunden</translation>
    </message>
    <message>
        <source>What the meter&apos;s register shows: 431, 431 Wh or 0.431 kWh</source>
        <translation>Was das Zählwerk des Zählers zeigt: 431, 431 Wh oder 0,431 kWh</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweites</translation>
    </message>
    <message>
        <source>Second register in watt hours</source>
        <translation>Zweites Zählwerk in Wattstunden</translation>
    </message>
    <message>
        <source>What the register of the second meter shows</source>
        <translation>Was das Zählwerk des zweiten Zählers zeigt</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>Watt</translation>
    </message>
    <message>
        <source>Meter power in watts</source>
        <translation>Leistung am Zähler in Watt</translation>
    </message>
    <message>
        <source>What the meter shows: 64 or 0.064 kW</source>
        <translation>Was der Zähler zeigt: 64 oder 0,064 kW</translation>
    </message>
    <message>
        <source>display W</source>
        <translation>Display W</translation>
    </message>
    <message>
        <source>Power on the unit&apos;s display in watts</source>
        <translation>Leistung auf dem Display des Speichers in Watt</translation>
    </message>
    <message>
        <source>What the unit&apos;s own display shows: 64 or 0.064 kW</source>
        <translation>Was das Display des Speichers zeigt: 64 oder 0,064 kW</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Anything worth keeping with this reading</source>
        <translation>Was bei dieser Ablesung festzuhalten ist</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>An event at this moment; a register typed beside it was read after it</source>
        <translation>Ein Ereignis in diesem Moment; ein daneben eingetippter Zählwerksstand wurde danach abgelesen</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>keine Marke</translation>
    </message>
    <message>
        <source>Mark and display watts</source>
        <translation>Marke und Watt laut Display</translation>
    </message>
</context>
<context>
    <name>ullage::ExportDialog</name>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Size and colours…</source>
        <translation>Größe und Farben…</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <source>What to export</source>
        <translation>Was exportiert wird</translation>
    </message>
    <message>
        <source>Form of the export</source>
        <translation>Format des Exports</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Table, %1</source>
        <translation>Tabelle, %1</translation>
    </message>
    <message>
        <source>CSV table</source>
        <translation>CSV-Tabelle</translation>
    </message>
    <message>
        <source>Markdown</source>
        <translation>Markdown</translation>
    </message>
    <message>
        <source>HTML page</source>
        <translation>HTML-Seite</translation>
    </message>
    <message>
        <source>Workbook</source>
        <translation>Arbeitsmappe</translation>
    </message>
    <message>
        <source>LaTeX table</source>
        <translation>LaTeX-Tabelle</translation>
    </message>
    <message>
        <source>Picture of %1, PNG</source>
        <translation>Bild: %1, PNG</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>PNG-Bild (*.png)</translation>
    </message>
    <message>
        <source>Picture of %1, SVG</source>
        <translation>Bild: %1, SVG</translation>
    </message>
    <message>
        <source>SVG picture (*.svg)</source>
        <translation>SVG-Bild (*.svg)</translation>
    </message>
    <message>
        <source>Putting the table together</source>
        <translation>Tabelle wird zusammengestellt</translation>
    </message>
    <message>
        <source>A workbook with this table, a sheet on the method and a chart; Copy takes the cells:

</source>
        <translation>Eine Arbeitsmappe mit dieser Tabelle, einem Blatt zur Methode und einem Diagramm; Kopieren nimmt die Zellen:

</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
    <message>
        <source>Written to %1; what its columns mean stands in %2</source>
        <translation>In %1 geschrieben; was die Spalten bedeuten, steht in %2</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>In %1 geschrieben</translation>
    </message>
    <message>
        <source>The table has no rows to copy.</source>
        <translation>Die Tabelle hat keine Zeilen zum Kopieren.</translation>
    </message>
    <message>
        <source>Nothing was copied.</source>
        <translation>Nichts wurde kopiert.</translation>
    </message>
    <message>
        <source>Copying the table</source>
        <translation>Tabelle wird kopiert</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Kopiert</translation>
    </message>
</context>
<context>
    <name>ullage::FileBar</name>
    <message>
        <source>Save elsewhere and go on there…</source>
        <translation>Woanders speichern und dort weiter…</translation>
    </message>
    <message>
        <source>Record here</source>
        <translation>Hier aufzeichnen</translation>
    </message>
    <message>
        <source>▲ not recording</source>
        <translation>▲ zeichnet nicht auf</translation>
    </message>
    <message>
        <source>looking only</source>
        <translation>nur ansehen</translation>
    </message>
</context>
<context>
    <name>ullage::FileController</name>
    <message>
        <source>New logbook</source>
        <translation>Neues Logbuch</translation>
    </message>
    <message>
        <source>Bench.ullage</source>
        <translation>Messplatz.ullage</translation>
    </message>
    <message>
        <source>Open logbook</source>
        <translation>Logbuch öffnen</translation>
    </message>
    <message>
        <source>Opening %1</source>
        <translation>%1 wird geöffnet</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>%1 wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>Making the sample logbook</source>
        <translation>Beispiellogbuch wird erstellt</translation>
    </message>
    <message>
        <source>Saving %1</source>
        <translation>%1 wird gespeichert</translation>
    </message>
    <message>
        <source>%1 copy.ullage</source>
        <translation>%1 Kopie.ullage</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <source>Copy saved to %1.</source>
        <translation>Kopie in %1 gespeichert.</translation>
    </message>
    <message>
        <source>%1 rescued.ullage</source>
        <translation>%1 gerettet.ullage</translation>
    </message>
    <message>
        <source>Save the open logbook elsewhere</source>
        <translation>Das offene Logbuch woanders speichern</translation>
    </message>
    <message>
        <source>You now record in %1.</source>
        <translation>Sie zeichnen nun in %1 auf.</translation>
    </message>
    <message>
        <source>The logbook was checked from end to end, which took %1 s. It is done when a file was not closed properly or comes from elsewhere.</source>
        <translation>Das Logbuch wurde von Anfang bis Ende geprüft, das dauerte %1 s. Das geschieht, wenn eine Datei nicht richtig geschlossen wurde oder von anderswo kommt.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>Export as folder: name the new folder</source>
        <translation>Als Ordner exportieren: den neuen Ordner benennen</translation>
    </message>
    <message>
        <source>Folders</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
    <message>
        <source>Folder saved to %1: %2.</source>
        <translation>Ordner in %1 gespeichert: %2.</translation>
    </message>
    <message>
        <source>Import folder</source>
        <translation>Ordner importieren</translation>
    </message>
    <message>
        <source>A folder needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Ein Ordner braucht ein Logbuch, in das er kommt: wählen Sie zuerst Logbuch, Neu oder Öffnen.</translation>
    </message>
    <message>
        <source>%1 holds no run sheet. Choose a folder with run sheets (.csv), or one that Logbook, Export as folder wrote.</source>
        <translation>%1 enthält kein Laufblatt. Wählen Sie einen Ordner mit Laufblättern (.csv) oder einen, den Logbuch, Als Ordner exportieren geschrieben hat.</translation>
    </message>
    <message>
        <source>Importing %1</source>
        <translation>%1 wird importiert</translation>
    </message>
    <message>
        <source>%1 more notices like these.</source>
        <translation>%1 weitere Hinweise dieser Art.</translation>
    </message>
    <message>
        <source>Run sheets (*.csv);;All files (*)</source>
        <translation>Laufblätter (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Import run sheet</source>
        <translation>Laufblatt importieren</translation>
    </message>
    <message>
        <source>A run sheet needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Ein Laufblatt braucht ein Logbuch, in das es kommt: wählen Sie zuerst Logbuch, Neu oder Öffnen.</translation>
    </message>
    <message>
        <source>Importing %1 run sheets</source>
        <translation>%1 Laufblätter werden importiert</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Nichts wurde importiert.</translation>
    </message>
    <message>
        <source>Stopped: %1 of %2 run sheets are in the logbook, each whole; Edit, Undo takes them out one by one.</source>
        <translation>Angehalten: %1 von %2 Laufblättern sind im Logbuch, jedes ganz; Bearbeiten, Rückgängig nimmt sie einzeln heraus.</translation>
    </message>
    <message>
        <source>Export run sheet</source>
        <translation>Laufblatt exportieren</translation>
    </message>
    <message>
        <source>Run sheet saved to %1.</source>
        <translation>Laufblatt in %1 gespeichert.</translation>
    </message>
    <message>
        <source>Attach photos to %1 (%2)</source>
        <translation>Fotos anhängen: %1 (%2)</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>PNG (*.png);;All files (*)</source>
        <translation>PNG (*.png);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>JPEG (*.jpg *.jpeg);;All files (*)</source>
        <translation>JPEG (*.jpg *.jpeg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Save photo</source>
        <translation>Foto speichern</translation>
    </message>
    <message>
        <source>Photo saved to %1.</source>
        <translation>Foto in %1 gespeichert.</translation>
    </message>
    <message>
        <source>Import load list</source>
        <translation>Lastliste importieren</translation>
    </message>
    <message>
        <source>Load lists (*.csv);;All files (*)</source>
        <translation>Lastlisten (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A load list needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Eine Lastliste braucht ein Logbuch, in das sie kommt: wählen Sie zuerst Logbuch, Neu oder Öffnen.</translation>
    </message>
    <message>
        <source>Import PV sheet</source>
        <translation>PV-Blatt importieren</translation>
    </message>
    <message>
        <source>PV sheets (*.txt);;All files (*)</source>
        <translation>PV-Blätter (*.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A PV sheet needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Ein PV-Blatt braucht ein Logbuch, in das es kommt: wählen Sie zuerst Logbuch, Neu oder Öffnen.</translation>
    </message>
    <message>
        <source>%1 is neither a logbook (.ullage), nor a run sheet or load list (.csv), nor a PV sheet (.txt). The log of a meter goes into a run: show the run first.</source>
        <translation>%1 ist weder ein Logbuch (.ullage) noch ein Laufblatt oder eine Lastliste (.csv), noch ein PV-Blatt (.txt). Das Log eines Zählers gehört in einen Lauf: zeigen Sie zuerst den Lauf.</translation>
    </message>
</context>
<context>
    <name>ullage::FindingRow</name>
    <message>
        <source>Select its readings in table and chart</source>
        <translation>Wählt seine Ablesungen in Tabelle und Diagramm</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Accept: %1</source>
        <translation>Annehmen: %1</translation>
    </message>
    <message>
        <source>Write this into the reading, with its reason in the history; undo brings the old value back</source>
        <translation>Schreibt dies in die Ablesung, mit dem Grund im Verlauf; Rückgängig holt den alten Wert zurück</translation>
    </message>
</context>
<context>
    <name>ullage::FindingsView</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Not known: %1</source>
        <translation>Unbekannt: %1</translation>
    </message>
</context>
<context>
    <name>ullage::FormDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>. Is that right? Change a field, or go on all the same.</source>
        <translation>. Stimmt das? Ändern Sie ein Feld oder machen Sie trotzdem weiter.</translation>
    </message>
    <message>
        <source>%1 all the same</source>
        <translation>Trotzdem: %1</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Mehr…</translation>
    </message>
</context>
<context>
    <name>ullage::GuideBar</name>
    <message>
        <source>unit</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Leave the guide</source>
        <translation>Anleitung verlassen</translation>
    </message>
    <message>
        <source>guided first run, step %1 of %2: %3</source>
        <translation>geführter erster Lauf, Schritt %1 von %2: %3</translation>
    </message>
</context>
<context>
    <name>ullage::GuideController</name>
    <message>
        <source>Logbook for the guided run</source>
        <translation>Logbuch für den geführten Lauf</translation>
    </message>
    <message>
        <source>First run.ullage</source>
        <translation>Erster Lauf.ullage</translation>
    </message>
    <message>
        <source>The guided run is done. Everything stays in this logbook.</source>
        <translation>Der geführte Lauf ist fertig. Alles bleibt in diesem Logbuch.</translation>
    </message>
    <message>
        <source>You have left the guide. Help, Guided first run takes it up again.</source>
        <translation>Sie haben die Anleitung verlassen. Hilfe, Geführter erster Lauf nimmt sie wieder auf.</translation>
    </message>
    <message>
        <source>Add the unit that you test, with its name and the rated energy on its label. Its other claims can follow later.</source>
        <translation>Legen Sie den Speicher an, den Sie testen, mit seinem Namen und der aufgedruckten Nennenergie. Seine anderen Angaben können später folgen.</translation>
    </message>
    <message>
        <source>Without a unit at hand: name it Trial unit, with a rated energy of 1000 Wh.</source>
        <translation>Ohne Speicher zur Hand: nennen Sie ihn Probespeicher, mit einer Nennenergie von 1000 Wh.</translation>
    </message>
    <message>
        <source>Add unit…</source>
        <translation>Speicher anlegen…</translation>
    </message>
    <message>
        <source>Add the meter between unit and load. Its data sheet states the step of its register and its error limit, which the ± of every result comes from.</source>
        <translation>Legen Sie den Zähler zwischen Speicher und Last an. Sein Datenblatt nennt den Schritt seines Zählwerks und seine Fehlergrenze, aus der das ± jedes Ergebnisses kommt.</translation>
    </message>
    <message>
        <source>Without a meter at hand: name it Trial meter, with a step of 1 Wh and a limit of 1 %.</source>
        <translation>Ohne Zähler zur Hand: nennen Sie ihn Probezähler, mit einem Schritt von 1 Wh und einer Grenze von 1 %.</translation>
    </message>
    <message>
        <source>Add meter…</source>
        <translation>Zähler anlegen…</translation>
    </message>
    <message>
        <source>Charge the unit to full and plug the meter and a load in. Start a drain: what gauge and register show now is its first reading.</source>
        <translation>Laden Sie den Speicher voll und stecken Sie Zähler und Last an. Starten Sie eine Entladung: was Ladeanzeige und Zählwerk jetzt zeigen, ist ihre erste Ablesung.</translation>
    </message>
    <message>
        <source>Without a bench at hand: gauge 100, register 0, time -6h.</source>
        <translation>Ohne Messplatz zur Hand: Ladeanzeige 100, Zählwerk 0, Zeit -6h.</translation>
    </message>
    <message>
        <source>Start run…</source>
        <translation>Lauf starten…</translation>
    </message>
    <message>
        <source>Walk to the bench now and then. Type what gauge and register show into the row below the readings, and press Enter. Noted: %1 of %2.</source>
        <translation>Gehen Sie ab und zu an den Messplatz. Tippen Sie in die Zeile unter den Ablesungen, was Ladeanzeige und Zählwerk zeigen, und drücken Sie Enter. Notiert: %1 von %2.</translation>
    </message>
    <message>
        <source>Without a bench at hand: time -4h, gauge 66, register 260; then time -2h, gauge 32, register 525.</source>
        <translation>Ohne Messplatz zur Hand: Zeit -4h, Ladeanzeige 66, Zählwerk 260; dann Zeit -2h, Ladeanzeige 32, Zählwerk 525.</translation>
    </message>
    <message>
        <source>To the entry row</source>
        <translation>Zur Eingabezeile</translation>
    </message>
    <message>
        <source>Wait until the unit switches off by itself, and note what you like until then. End the run: it asks how it ended and what was shown last.</source>
        <translation>Warten Sie, bis der Speicher von selbst abschaltet, und notieren Sie bis dahin, was Sie möchten. Beenden Sie den Lauf: er fragt, wie er endete und was zuletzt angezeigt war.</translation>
    </message>
    <message>
        <source>Without a bench at hand: cut-off seen, gauge 0, register 790.</source>
        <translation>Ohne Messplatz zur Hand: Abschaltung gesehen, Ladeanzeige 0, Zählwerk 790.</translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Lauf beenden…</translation>
    </message>
    <message>
        <source>This is your result. %1.</source>
        <translation>Das ist Ihr Ergebnis. %1.</translation>
    </message>
    <message>
        <source>The figures stand above the readings. The tab Budget says where the ± comes from, and what the readings say of the gauge stands below. With a second unit, Compare puts both side by side.</source>
        <translation>Die Werte stehen über den Ablesungen. Der Reiter Budget sagt, woher das ± kommt, und was die Ablesungen über die Ladeanzeige sagen, steht darunter. Mit einem zweiten Speicher stellt Vergleich beide nebeneinander.</translation>
    </message>
    <message>
        <source>Show the result</source>
        <translation>Ergebnis zeigen</translation>
    </message>
</context>
<context>
    <name>ullage::HelpDialog</name>
    <message>
        <source>help text</source>
        <translation>Hilfetext</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::HttpLink</name>
    <message>
        <source>the answer is longer than 1 MB; that of a meter is short</source>
        <translation>die Antwort ist länger als 1 MB; die eines Zählers ist kurz</translation>
    </message>
</context>
<context>
    <name>ullage::InstallationDialog</name>
    <message>
        <source>Check of the installation</source>
        <translation>Prüfung der Installation</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>was gefunden wurde</translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation>Als Text &amp;kopieren</translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation>&amp;Noch einmal prüfen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>%1 Each row says what was looked at, what was found, and what follows. The copy holds nothing of your logbooks.</source>
        <translation>%1 Jede Zeile sagt, was angesehen wurde, was gefunden wurde und was daraus folgt. Die Kopie enthält nichts aus Ihren Logbüchern.</translation>
    </message>
</context>
<context>
    <name>ullage::IntervalsModel</name>
    <message>
        <source>not known: the unit&apos;s rated energy is not stated</source>
        <translation>unbekannt: die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>not known: no time lies between the two readings</source>
        <translation>unbekannt: zwischen den beiden Ablesungen liegt keine Zeit</translation>
    </message>
    <message>
        <source>not known: the gauge did not move, or the rated energy is not stated</source>
        <translation>unbekannt: die Ladeanzeige hat sich nicht bewegt, oder die Nennenergie ist nicht angegeben</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>time
h</source>
        <translation>Zeit
h</translation>
    </message>
    <message>
        <source>gauge
pt</source>
        <translation>Anzeige
pt</translation>
    </message>
    <message>
        <source>implied
Wh</source>
        <translation>laut Anzeige
Wh</translation>
    </message>
    <message>
        <source>delivered
Wh</source>
        <translation>abgegeben
Wh</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>mean
W</source>
        <translation>Mittel
W</translation>
    </message>
    <message>
        <source>Wh per
pt</source>
        <translation>Wh je
pt</translation>
    </message>
    <message>
        <source>from one paired reading to the next</source>
        <translation>von einer gepaarten Ablesung zur nächsten</translation>
    </message>
    <message>
        <source>hours between the two</source>
        <translation>Stunden zwischen beiden</translation>
    </message>
    <message>
        <source>percentage points that the gauge fell</source>
        <translation>Prozentpunkte, um die die Ladeanzeige fiel</translation>
    </message>
    <message>
        <source>rated energy x gauge drop</source>
        <translation>Nennenergie x Fall der Ladeanzeige</translation>
    </message>
    <message>
        <source>corrected energy at the socket</source>
        <translation>korrigierte Energie an der Steckdose</translation>
    </message>
    <message>
        <source>delivered / gauge-implied energy</source>
        <translation>abgegebene Energie / Energie laut Anzeige</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>mittlere Last</translation>
    </message>
    <message>
        <source>delivered energy for each point that the gauge fell</source>
        <translation>abgegebene Energie je Prozentpunkt, um den die Ladeanzeige fiel</translation>
    </message>
</context>
<context>
    <name>ullage::JoinController</name>
    <message>
        <source>Join another logbook</source>
        <translation>Mit anderem Logbuch zusammenführen</translation>
    </message>
    <message>
        <source>Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)</source>
        <translation>Logbücher und ihre Kopien (*.ullage *.ullage-copy);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Comparing with %1</source>
        <translation>Vergleich mit %1 läuft</translation>
    </message>
    <message>
        <source>Nothing was joined.</source>
        <translation>Nichts wurde zusammengeführt.</translation>
    </message>
    <message>
        <source>This logbook has all that %1 has already; nothing was changed.</source>
        <translation>Dieses Logbuch hat schon alles, was %1 hat; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Joined: %1.</source>
        <translation>Zusammengeführt: %1.</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Wird zusammengeführt</translation>
    </message>
</context>
<context>
    <name>ullage::JoinForm</name>
    <message>
        <source>withdrawn here, not there</source>
        <translation>hier zurückgezogen, dort nicht</translation>
    </message>
    <message>
        <source>withdrawn there, not here</source>
        <translation>dort zurückgezogen, hier nicht</translation>
    </message>
    <message>
        <source>the same readings as a run here: stays out unless ticked</source>
        <translation>dieselben Ablesungen wie ein Lauf hier: bleibt draußen, wenn nicht angehakt</translation>
    </message>
    <message>
        <source>tells of the same time as a log here, which it would replace</source>
        <translation>sagt etwas über dieselbe Zeit wie ein Log hier, das es ersetzen würde</translation>
    </message>
    <message>
        <source>changed there alone</source>
        <translation>nur dort geändert</translation>
    </message>
    <message>
        <source>not the same</source>
        <translation>nicht dasselbe</translation>
    </message>
    <message>
        <source>Join another logbook</source>
        <translation>Mit anderem Logbuch zusammenführen</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Zusammenführen</translation>
    </message>
    <message>
        <source>%1 has nothing that this logbook lacks.</source>
        <translation>%1 hat nichts, was diesem Logbuch fehlt.</translation>
    </message>
    <message>
        <source>This comes in from %1:</source>
        <translation>Das kommt aus %1 herein:</translation>
    </message>
    <message>
        <source>What comes in</source>
        <translation>Was hereinkommt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run, and what comes in of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 – only where its line below is ticked</source>
        <translation>%1 – nur, wenn seine Zeile unten angehakt ist</translation>
    </message>
    <message>
        <source>This differs. It stays as it is here; tick what is to be taken from the other logbook:</source>
        <translation>Das ist verschieden. Es bleibt, wie es hier ist; haken Sie an, was aus dem anderen Logbuch übernommen werden soll:</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Was sich unterscheidet</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>in the other</source>
        <translation>im anderen</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>%1 more notices like these.</source>
        <translation>%1 weitere Hinweise dieser Art.</translation>
    </message>
    <message>
        <source>take from the other</source>
        <translation>vom anderen übernehmen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a record, and in what it differs</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Keep all</source>
        <translation>Alles &amp;behalten</translation>
    </message>
    <message>
        <source>Nothing is taken from the other logbook</source>
        <translation>Nichts wird vom anderen Logbuch übernommen</translation>
    </message>
    <message>
        <source>Take &amp;newer</source>
        <translation>&amp;Neueres übernehmen</translation>
    </message>
    <message>
        <source>Takes what was changed in the other logbook alone</source>
        <translation>Übernimmt, was nur im anderen Logbuch geändert wurde</translation>
    </message>
    <message>
        <source>Take &amp;all</source>
        <translation>&amp;Alles übernehmen</translation>
    </message>
    <message>
        <source>Takes every difference from the other logbook</source>
        <translation>Übernimmt jeden Unterschied vom anderen Logbuch</translation>
    </message>
</context>
<context>
    <name>ullage::LeaveForm</name>
    <message>
        <source>Quit while a test is running?</source>
        <translation>Beenden, während ein Test läuft?</translation>
    </message>
    <message>
        <source>Quit while %1 tests are running?</source>
        <translation>Beenden, während %1 Tests laufen?</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Reminders: nobody calls you to the next reading.</source>
        <translation>Erinnerungen: niemand ruft Sie zur nächsten Ablesung.</translation>
    </message>
    <message>
        <source>The machine is no longer kept awake.</source>
        <translation>Der Rechner wird nicht mehr wach gehalten.</translation>
    </message>
    <message>
        <source>A followed log is no longer read.</source>
        <translation>Ein verfolgtes Log wird nicht mehr gelesen.</translation>
    </message>
    <message>
        <source>%1 followed logs are no longer read.</source>
        <translation>%1 verfolgte Logs werden nicht mehr gelesen.</translation>
    </message>
    <message>
        <source>What stops</source>
        <translation>Was aufhört</translation>
    </message>
    <message>
        <source>The tests themselves: the units run on at the bench, and the runs stay open in the logbook.</source>
        <translation>Die Tests selbst: die Speicher laufen am Messplatz weiter, und die Läufe bleiben im Logbuch offen.</translation>
    </message>
    <message>
        <source>Every reading, and what is half typed. Rules of reminders count on from the last reading at the next start.</source>
        <translation>Jede Ablesung und was halb eingetippt ist. Erinnerungen zählen beim nächsten Start ab der letzten Ablesung weiter.</translation>
    </message>
    <message>
        <source>What is written to a followed log meanwhile: it is taken up at the next start.</source>
        <translation>Was inzwischen in ein verfolgtes Log geschrieben wird: es wird beim nächsten Start übernommen.</translation>
    </message>
    <message>
        <source>What remains</source>
        <translation>Was bleibt</translation>
    </message>
</context>
<context>
    <name>ullage::LiveBar</name>
    <message>
        <source>Stop reading</source>
        <translation>Lesen beenden</translation>
    </message>
    <message>
        <source>Read live</source>
        <translation>Live lesen</translation>
    </message>
    <message>
        <source>%1 was read when the program ended; it needs its password again.</source>
        <translation>%1 wurde gelesen, als das Programm endete; das Passwort wird wieder gebraucht.</translation>
    </message>
    <message>
        <source>%1 can be read live.</source>
        <translation>%1 lässt sich live lesen.</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>verbunden, noch ist nichts gekommen</translation>
    </message>
    <message>
        <source>connecting</source>
        <translation>verbindet</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 ausgelassen</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 verloren</translation>
    </message>
    <message>
        <source>the machine&apos;s clock was set; samples go on by the steady one</source>
        <translation>die Uhr des Rechners wurde gestellt; die Messwerte folgen der stetigen weiter</translation>
    </message>
    <message>
        <source>Set mark “%1”</source>
        <translation>Marke „%1“ setzen</translation>
    </message>
    <message>
        <source>Not this</source>
        <translation>Diese nicht</translation>
    </message>
</context>
<context>
    <name>ullage::LiveController</name>
    <message>
        <source>An output went off</source>
        <translation>Ein Ausgang ging aus</translation>
    </message>
    <message>
        <source>A meter that is read live</source>
        <translation>Ein live gelesener Zähler</translation>
    </message>
    <message>
        <source>there is no desktop that could keep it</source>
        <translation>es gibt keinen Desktop, der es behalten könnte</translation>
    </message>
    <message>
        <source>The meter is read, but its password was not kept: %1</source>
        <translation>Der Zähler wird gelesen, aber sein Passwort wurde nicht behalten: %1</translation>
    </message>
</context>
<context>
    <name>ullage::LiveFace</name>
    <message>
        <source>%1 s ago</source>
        <translation>vor %1 s</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>vor %1 h</translation>
    </message>
    <message>
        <source>Not tried yet. Try shows what comes; nothing is recorded.</source>
        <translation>Noch nicht probiert. Probieren zeigt, was kommt; nichts wird eingetragen.</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>verbunden, noch ist nichts gekommen</translation>
    </message>
    <message>
        <source>connecting</source>
        <translation>verbindet</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>%1 je Sekunde</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 ausgelassen</translation>
    </message>
</context>
<context>
    <name>ullage::LiveReader</name>
    <message>
        <source>%1: %2 at %3. %4.</source>
        <translation>%1: %2 um %3. %4.</translation>
    </message>
    <message>
        <source>The meter is no longer read: %1</source>
        <translation>Der Zähler wird nicht mehr gelesen: %1</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListController</name>
    <message>
        <source>Units</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>PV-Generator und Batterie nach Regel</translation>
    </message>
    <message>
        <source>Charge by the hour</source>
        <translation>Ladezustand nach Stunden</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Monate</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListForm</name>
    <message>
        <source>Add load list</source>
        <translation>Lastliste anlegen</translation>
    </message>
    <message>
        <source>Load list %1</source>
        <translation>Lastliste %1</translation>
    </message>
    <message>
        <source>Save load list</source>
        <translation>Lastliste speichern</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>what it is for, such as: show night</source>
        <translation>wofür sie ist, etwa: Vorstellungsabend</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>&amp;Bemerkung</translation>
    </message>
    <message>
        <source>The load list needs a name, by which the comparison calls it.</source>
        <translation>Die Lastliste braucht einen Namen, unter dem der Vergleich sie nennt.</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListsPage</name>
    <message>
        <source>load lists</source>
        <translation>Lastlisten</translation>
    </message>
    <message>
        <source>appliances of the load list</source>
        <translation>Verbraucher der Lastliste</translation>
    </message>
    <message>
        <source>No load lists yet. Add load list, then its appliances: what they take, how long a day, and when; or Import one from a file. The comparison then shows units at that load.</source>
        <translation>Noch keine Lastlisten. Lastliste anlegen, dann ihre Verbraucher: was sie aufnehmen, wie lange am Tag und wann; oder Importieren aus einer Datei. Der Vergleich zeigt die Speicher dann bei dieser Last.</translation>
    </message>
    <message>
        <source>Nothing in this list yet. Add appliance takes its power, or what a meter counted over some hours.</source>
        <translation>Noch nichts in dieser Liste. Verbraucher anlegen nimmt seine Leistung auf oder was ein Zähler über einige Stunden zählte.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Lastlisten</translation>
    </message>
    <message>
        <source>Add load list</source>
        <translation>Lastliste anlegen</translation>
    </message>
    <message>
        <source>Edit load list</source>
        <translation>Lastliste ändern</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importieren…</translation>
    </message>
    <message>
        <source>A load list from a file (.csv)</source>
        <translation>Eine Lastliste aus einer Datei (.csv)</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Add appliance</source>
        <translation>Verbraucher anlegen</translation>
    </message>
    <message>
        <source>Edit appliance</source>
        <translation>Verbraucher ändern</translation>
    </message>
    <message>
        <source>Remove appliance</source>
        <translation>Verbraucher entfernen</translation>
    </message>
</context>
<context>
    <name>ullage::LogController</name>
    <message>
        <source>Logs (*.csv *.txt *.log *.tsv *.dat);;All files (*)</source>
        <translation>Logs (*.csv *.txt *.log *.tsv *.dat);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A log is quiet</source>
        <translation>Ein Log schweigt</translation>
    </message>
    <message>
        <source>Import log</source>
        <translation>Log importieren</translation>
    </message>
    <message>
        <source>%1 is followed from now on, from where the run&apos;s log of it ended.</source>
        <translation>%1 wird ab jetzt verfolgt, von dort, wo das Log des Laufs davon endete.</translation>
    </message>
    <message>
        <source>The run has this log already; what %1 has more was added to it, read as before.</source>
        <translation>Der Lauf hat dieses Log schon; was %1 mehr enthält, wurde angefügt, gelesen wie zuvor.</translation>
    </message>
    <message>
        <source> Its last line is incomplete and was skipped.</source>
        <translation> Die letzte Zeile ist unvollständig und wurde übersprungen.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>It is followed from now on.</source>
        <translation>Es wird ab jetzt verfolgt.</translation>
    </message>
    <message>
        <source>The file of the log %1</source>
        <translation>Die Datei des Logs %1</translation>
    </message>
    <message>
        <source>%1 is followed from now on.</source>
        <translation>%1 wird ab jetzt verfolgt.</translation>
    </message>
    <message>
        <source>There is no load list for it yet: add one first (Edit, Load lists).</source>
        <translation>Es gibt noch keine Lastliste dafür: legen Sie zuerst eine an (Bearbeiten, Lastlisten).</translation>
    </message>
</context>
<context>
    <name>ullage::LogFollower</name>
    <message>
        <source>%1 is not there; waiting for the file</source>
        <translation>%1 ist nicht da; warte auf die Datei</translation>
    </message>
    <message>
        <source>%1 is no longer followed: %2</source>
        <translation>%1 wird nicht mehr verfolgt: %2</translation>
    </message>
    <message>
        <source>%1: its log %2 has had no new row for %3 min. Is the meter still logging?</source>
        <translation>%1: das Log %2 hat seit %3 min keine neue Zeile. Zeichnet der Zähler noch auf?</translation>
    </message>
</context>
<context>
    <name>ullage::LogForm</name>
    <message>
        <source>as the log has it</source>
        <translation>wie im Log</translation>
    </message>
    <message>
        <source>First rows of the log</source>
        <translation>Erste Zeilen des Logs</translation>
    </message>
    <message>
        <source>Import log %1</source>
        <translation>Log %1 importieren</translation>
    </message>
    <message>
        <source>Import log</source>
        <translation>Log importieren</translation>
    </message>
    <message>
        <source>&amp;Follow it: another program is still writing this file</source>
        <translation>Ver&amp;folgen: ein anderes Programm schreibt diese Datei noch</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>keiner genannt</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Fortschritt des Imports</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Wie es gelesen wird</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Zähler</translation>
    </message>
    <message>
        <source>&amp;Columns end at</source>
        <translation>&amp;Spalten enden bei</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>upright bar</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>&amp;Decimal sign</source>
        <translation>&amp;Dezimalzeichen</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>D&amp;ates begin with</source>
        <translation>Datum beg&amp;innt mit</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>dem Tag</translation>
    </message>
    <message>
        <source>the month</source>
        <translation>dem Monat</translation>
    </message>
    <message>
        <source>the year</source>
        <translation>dem Jahr</translation>
    </message>
    <message>
        <source>&amp;Times such as 02:40 are</source>
        <translation>Zei&amp;ten wie 02:40 sind</translation>
    </message>
    <message>
        <source>the time of day</source>
        <translation>die Uhrzeit</translation>
    </message>
    <message>
        <source>counted from the start</source>
        <translation>ab dem Start gezählt</translation>
    </message>
    <message>
        <source>The &amp;register counts</source>
        <translation>Zählwe&amp;rk zählt</translation>
    </message>
    <message>
        <source>The &amp;gauge counts</source>
        <translation>&amp;Ladeanzeige zählt</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>from 0 to 1</source>
        <translation>von 0 bis 1</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>Zeitzo&amp;ne</translation>
    </message>
    <message>
        <source>&amp;Start of the log</source>
        <translation>&amp;Beginn des Logs</translation>
    </message>
    <message>
        <source>first reading of the run</source>
        <translation>erste Ablesung des Laufs</translation>
    </message>
    <message>
        <source>Cl&amp;ock is behind by</source>
        <translation>&amp;Uhr geht nach um</translation>
    </message>
    <message>
        <source>hours:minutes:seconds, 0:00:00 if it is right</source>
        <translation>Stunden:Minuten:Sekunden, 0:00:00, wenn sie stimmt</translation>
    </message>
    <message>
        <source>&amp;Estimate from the hand readings</source>
        <translation>Aus den Handablesungen s&amp;chätzen</translation>
    </message>
    <message>
        <source>Chec&amp;k the whole log</source>
        <translation>&amp;Ganzes Log prüfen</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Gelesen als: %1</translation>
    </message>
    <message>
        <source>It is taken to begin with the first reading of the run, %1.</source>
        <translation>Als Beginn gilt die erste Ablesung des Laufs, %1.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Offen: %1</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>At its beginning: %1</source>
        <translation>Am Anfang: %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 enthält</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>The whole log: %1</source>
        <translation>Das ganze Log: %1</translation>
    </message>
    <message>
        <source>Name the column in the first row of the table above: %1.</source>
        <translation>Nennen Sie die Spalte in der ersten Zeile der Tabelle oben: %1.</translation>
    </message>
    <message>
        <source>Imported. %1. What was left out or taken with a doubt, the first hundred of each kind:</source>
        <translation>Importiert. %1. Was ausgelassen oder mit Zweifel übernommen wurde, von jeder Art die ersten hundert:</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::LogList</name>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
    <message>
        <source>output power by the unit</source>
        <translation>Ausgangsleistung laut Speicher</translation>
    </message>
    <message>
        <source>%1: %2 samples from %3 to %4</source>
        <translation>%1: %2 Messwerte von %3 bis %4</translation>
    </message>
    <message>
        <source>, %1 row left out</source>
        <translation>, %1 Zeile ausgelassen</translation>
    </message>
    <message>
        <source>, %1 rows left out</source>
        <translation>, %1 Zeilen ausgelassen</translation>
    </message>
    <message>
        <source>, clock moved by %1 s</source>
        <translation>, Uhr um %1 s verschoben</translation>
    </message>
    <message>
        <source>, its file begun anew %1 time</source>
        <translation>, Datei %1 Mal neu begonnen</translation>
    </message>
    <message>
        <source>, its file begun anew %1 times</source>
        <translation>, Datei %1 Mal neu begonnen</translation>
    </message>
    <message>
        <source>Followed, but: %1.</source>
        <translation>Verfolgt, aber: %1.</translation>
    </message>
    <message>
        <source>Followed, but nothing new since %1. Is the meter still logging?</source>
        <translation>Verfolgt, aber seit %1 nichts Neues. Zeichnet der Zähler noch auf?</translation>
    </message>
    <message>
        <source>Followed: new rows come in by themselves.</source>
        <translation>Verfolgt: neue Zeilen kommen von selbst herein.</translation>
    </message>
    <message>
        <source>Stop following</source>
        <translation>Nicht mehr verfolgen</translation>
    </message>
    <message>
        <source>Stop following the log %1</source>
        <translation>Log %1 nicht mehr verfolgen</translation>
    </message>
    <message>
        <source>Follow…</source>
        <translation>Verfolgen…</translation>
    </message>
    <message>
        <source>Follow the log %1</source>
        <translation>Log %1 verfolgen</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw the log %1</source>
        <translation>Log %1 zurückziehen</translation>
    </message>
</context>
<context>
    <name>ullage::LogView</name>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>a day of it</source>
        <translation>ein Tag davon</translation>
    </message>
    <message>
        <source>energy, power integrated</source>
        <translation>Energie, Leistung integriert</translation>
    </message>
    <message>
        <source>its register over the same times</source>
        <translation>sein Zählwerk über dieselben Zeiten</translation>
    </message>
    <message>
        <source>while on</source>
        <translation>während ein</translation>
    </message>
    <message>
        <source>while off</source>
        <translation>während aus</translation>
    </message>
    <message>
        <source>share of the time on</source>
        <translation>Einschaltdauer</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>Starts</translation>
    </message>
    <message>
        <source>switching</source>
        <translation>Schalten</translation>
    </message>
    <message>
        <source>of one level</source>
        <translation>nur eine Stufe</translation>
    </message>
    <message>
        <source>∫P² dt, for losses</source>
        <translation>∫P² dt, für Verluste</translation>
    </message>
    <message>
        <source>time covered</source>
        <translation>erfasste Zeit</translation>
    </message>
    <message>
        <source>gaps left out</source>
        <translation>ausgelassene Lücken</translation>
    </message>
    <message>
        <source>%1 (%2, at most %3)</source>
        <translation>%1 (%2, höchstens %3)</translation>
    </message>
    <message>
        <source>Import log…</source>
        <translation>Log importieren…</translation>
    </message>
    <message>
        <source>Add to a load list…</source>
        <translation>In eine Lastliste…</translation>
    </message>
    <message>
        <source>No log in this run. A meter that logs can be read here: its register and power then go with the gauge readings that are noted by hand. So can a log of the unit&apos;s gauge.</source>
        <translation>Kein Log in diesem Lauf. Ein Zähler, der aufzeichnet, lässt sich hier einlesen: sein Zählwerk und seine Leistung gehören dann zu den von Hand notierten Ablesungen der Ladeanzeige. Ebenso ein Log der Ladeanzeige des Speichers.</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>the unit says</source>
        <translation>laut Speicher</translation>
    </message>
    <message>
        <source>Power of the log against hours since the start</source>
        <translation>Leistung des Logs über den Stunden seit dem Start</translation>
    </message>
    <message>
        <source>hours since start</source>
        <translation>Stunden seit Start</translation>
    </message>
    <message>
        <source>power / W</source>
        <translation>Leistung / W</translation>
    </message>
    <message>
        <source>The log holds no power: its register counts, and stands in the readings&apos; energy.</source>
        <translation>Das Log enthält keine Leistung: sein Zählwerk zählt und steckt in der Energie der Ablesungen.</translation>
    </message>
    <message>
        <source>Gauge of the unit by its log against hours since the start</source>
        <translation>Ladeanzeige des Speichers laut Log über den Stunden seit dem Start</translation>
    </message>
    <message>
        <source>gauge / %</source>
        <translation>Ladeanzeige / %</translation>
    </message>
    <message>
        <source>The log holds no number in its column of the gauge.</source>
        <translation>Das Log enthält in der Spalte der Ladeanzeige keine Zahl.</translation>
    </message>
</context>
<context>
    <name>ullage::LogbookTreeModel</name>
    <message>
        <source>Units</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>None yet: add a unit</source>
        <translation>Noch keiner: Speicher anlegen</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>None yet: add a meter</source>
        <translation>Noch keiner: Zähler anlegen</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Lastlisten</translation>
    </message>
    <message>
        <source>None yet: add a load list</source>
        <translation>Noch keine: Lastliste anlegen</translation>
    </message>
    <message>
        <source>Across units</source>
        <translation>Speicherübergreifend</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Laufende Tests</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation>PV-Eingang</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Auslegung</translation>
    </message>
    <message>
        <source>%1, as calibrated</source>
        <translation>%1, kalibriert</translation>
    </message>
    <message>
        <source>%1, ±%2 %</source>
        <translation>%1, ±%2 %</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1, running, reading overdue</source>
        <translation>%1, läuft, Ablesung überfällig</translation>
    </message>
    <message>
        <source>%1, running</source>
        <translation>%1, läuft</translation>
    </message>
</context>
<context>
    <name>ullage::MainWindow</name>
    <message>
        <source>logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>saved %1 ✓</source>
        <translation>gespeichert %1 ✓</translation>
    </message>
    <message>
        <source>%1, looking only – Ullage</source>
        <translation>%1, nur ansehen – Ullage</translation>
    </message>
    <message>
        <source>%1 – Ullage</source>
        <translation>%1 – Ullage</translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>Another program records into this logbook</source>
        <translation>Ein anderes Programm zeichnet in dieses Logbuch auf</translation>
    </message>
    <message>
        <source>Nobody records into this logbook any more</source>
        <translation>Niemand zeichnet mehr in dieses Logbuch auf</translation>
    </message>
    <message>
        <source>`ullage %1` (process %2) records into this logbook</source>
        <translation>`ullage %1` (Prozess %2) zeichnet in dieses Logbuch auf</translation>
    </message>
    <message>
        <source>Another window or command (process %1) records into this logbook</source>
        <translation>Ein anderes Fenster oder ein Befehl (Prozess %1) zeichnet in dieses Logbuch auf</translation>
    </message>
    <message>
        <source>%1. You see it as of %2; nothing can be entered here.</source>
        <translation>%1. Sie sehen es auf dem Stand von %2; hier lässt sich nichts eintragen.</translation>
    </message>
    <message>
        <source>It cannot be read anew: %1</source>
        <translation>Es lässt sich nicht neu lesen: %1</translation>
    </message>
    <message>
        <source>&amp;Logbook</source>
        <translation>&amp;Logbuch</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open the sa&amp;mple logbook</source>
        <translation>&amp;Beispiellogbuch öffnen</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>&amp;Import run sheet…</source>
        <translation>Laufblatt &amp;importieren…</translation>
    </message>
    <message>
        <source>Import &amp;table…</source>
        <translation>&amp;Tabelle importieren…</translation>
    </message>
    <message>
        <source>&amp;Paste table…</source>
        <translation>Tabelle &amp;einfügen…</translation>
    </message>
    <message>
        <source>&amp;Export run sheet…</source>
        <translation>Laufblatt e&amp;xportieren…</translation>
    </message>
    <message>
        <source>Export rea&amp;dings…</source>
        <translation>&amp;Ablesungen exportieren…</translation>
    </message>
    <message>
        <source>Import fo&amp;lder…</source>
        <translation>&amp;Ordner importieren…</translation>
    </message>
    <message>
        <source>Export as &amp;folder…</source>
        <translation>Als O&amp;rdner exportieren…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Been&amp;den</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Add &amp;unit…</source>
        <translation>Speicher an&amp;legen…</translation>
    </message>
    <message>
        <source>&amp;Edit unit…</source>
        <translation>Sp&amp;eicher ändern…</translation>
    </message>
    <message>
        <source>Make re&amp;port of the unit…</source>
        <translation>Bericht zum Spei&amp;cher erstellen…</translation>
    </message>
    <message>
        <source>Withdraw unit</source>
        <translation>Speicher zurückziehen</translation>
    </message>
    <message>
        <source>Add &amp;meter…</source>
        <translation>&amp;Zähler anlegen…</translation>
    </message>
    <message>
        <source>E&amp;dit meter…</source>
        <translation>Zähle&amp;r ändern…</translation>
    </message>
    <message>
        <source>Withdraw meter</source>
        <translation>Zähler zurückziehen</translation>
    </message>
    <message>
        <source>Meth&amp;od…</source>
        <translation>&amp;Methode…</translation>
    </message>
    <message>
        <source>Withdraw run</source>
        <translation>Lauf zurückziehen</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>Ei&amp;nstellungen…</translation>
    </message>
    <message>
        <source>&amp;Load lists</source>
        <translation>Lastlis&amp;ten</translation>
    </message>
    <message>
        <source>&amp;Page of load lists</source>
        <translation>&amp;Seite der Lastlisten</translation>
    </message>
    <message>
        <source>Add &amp;load list…</source>
        <translation>Lastliste an&amp;legen…</translation>
    </message>
    <message>
        <source>&amp;Import load list…</source>
        <translation>Lastliste &amp;importieren…</translation>
    </message>
    <message>
        <source>&amp;Edit load list…</source>
        <translation>Lastliste ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Withdraw load list</source>
        <translation>Lastliste zurückziehen</translation>
    </message>
    <message>
        <source>&amp;Add appliance…</source>
        <translation>&amp;Verbraucher anlegen…</translation>
    </message>
    <message>
        <source>Edit applia&amp;nce…</source>
        <translation>Verb&amp;raucher ändern…</translation>
    </message>
    <message>
        <source>Remove appliance</source>
        <translation>Verbraucher entfernen</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>La&amp;uf</translation>
    </message>
    <message>
        <source>&amp;Start run…</source>
        <translation>Lauf &amp;starten…</translation>
    </message>
    <message>
        <source>&amp;End run</source>
        <translation>Lauf be&amp;enden</translation>
    </message>
    <message>
        <source>Re&amp;open</source>
        <translation>Wiede&amp;r öffnen</translation>
    </message>
    <message>
        <source>&amp;Mark</source>
        <translation>&amp;Marke</translation>
    </message>
    <message>
        <source>&amp;Choose in the entry row</source>
        <translation>In der Eingabezeile &amp;wählen</translation>
    </message>
    <message>
        <source>Import &amp;log…</source>
        <translation>&amp;Log importieren…</translation>
    </message>
    <message>
        <source>E&amp;dit run…</source>
        <translation>Lauf ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Make re&amp;port…</source>
        <translation>&amp;Bericht erstellen…</translation>
    </message>
    <message>
        <source>Enter &amp;reading</source>
        <translation>Ablesung eintra&amp;gen</translation>
    </message>
    <message>
        <source>&amp;Amend the last or the chosen reading…</source>
        <translation>&amp;Ablesung berichtigen (letzte oder gewählte)…</translation>
    </message>
    <message>
        <source>Withdraw the chosen readings</source>
        <translation>Gewählte Ablesungen zurückziehen</translation>
    </message>
    <message>
        <source>Show withdrawn readings</source>
        <translation>Zurückgezogene Ablesungen zeigen</translation>
    </message>
    <message>
        <source>Attach &amp;photo…</source>
        <translation>&amp;Foto anhängen…</translation>
    </message>
    <message>
        <source>Paste p&amp;hoto</source>
        <translation>F&amp;oto einfügen</translation>
    </message>
    <message>
        <source>Running &amp;tests</source>
        <translation>Laufende &amp;Tests</translation>
    </message>
    <message>
        <source>&amp;All side by side</source>
        <translation>&amp;Alle nebeneinander</translation>
    </message>
    <message>
        <source>Bench &amp;display, full screen</source>
        <translation>&amp;Großanzeige, Vollbild</translation>
    </message>
    <message>
        <source>Running test %1</source>
        <translation>Laufender Test %1</translation>
    </message>
    <message>
        <source>Re&amp;minders</source>
        <translation>Er&amp;innerungen</translation>
    </message>
    <message>
        <source>&amp;Next reading…</source>
        <translation>&amp;Nächste Ablesung…</translation>
    </message>
    <message>
        <source>&amp;Enter the reading that is due</source>
        <translation>&amp;Fällige Ablesung eintragen</translation>
    </message>
    <message>
        <source>Remind me again in %1 minutes</source>
        <translation>In %1 Minuten erneut erinnern</translation>
    </message>
    <message>
        <source>&amp;Sound when a reading is due</source>
        <translation>&amp;Ton, wenn eine Ablesung fällig ist</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleich</translation>
    </message>
    <message>
        <source>&amp;Comparison page</source>
        <translation>&amp;Vergleichsseite</translation>
    </message>
    <message>
        <source>&amp;Add units of another logbook…</source>
        <translation>&amp;Speicher aus anderem Logbuch…</translation>
    </message>
    <message>
        <source>Co&amp;lumns…</source>
        <translation>S&amp;palten…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Exportieren…</translation>
    </message>
    <message>
        <source>Copy &amp;table</source>
        <translation>&amp;Tabelle kopieren</translation>
    </message>
    <message>
        <source>&amp;Sizing</source>
        <translation>&amp;Auslegung</translation>
    </message>
    <message>
        <source>&amp;Sizing for a load list</source>
        <translation>&amp;Auslegung für eine Lastliste</translation>
    </message>
    <message>
        <source>&amp;Export sizing…</source>
        <translation>Auslegung &amp;exportieren…</translation>
    </message>
    <message>
        <source>Make &amp;report of the sizing…</source>
        <translation>&amp;Bericht zur Auslegung erstellen…</translation>
    </message>
    <message>
        <source>&amp;PV input check</source>
        <translation>&amp;PV-Eingang prüfen</translation>
    </message>
    <message>
        <source>&amp;Add PV sheet</source>
        <translation>PV-Blatt an&amp;legen</translation>
    </message>
    <message>
        <source>&amp;Import PV sheet…</source>
        <translation>PV-Blatt &amp;importieren…</translation>
    </message>
    <message>
        <source>Withdraw PV sheet</source>
        <translation>PV-Blatt zurückziehen</translation>
    </message>
    <message>
        <source>Make re&amp;port of the PV check…</source>
        <translation>Be&amp;richt zur PV-Prüfung erstellen…</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>A&amp;nsicht</translation>
    </message>
    <message>
        <source>&amp;System colours</source>
        <translation>&amp;Systemfarben</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>D&amp;unkel</translation>
    </message>
    <message>
        <source>&amp;Charts beside the readings</source>
        <translation>&amp;Diagramme neben den Ablesungen</translation>
    </message>
    <message>
        <source>Cop&amp;y picture</source>
        <translation>Bild ko&amp;pieren</translation>
    </message>
    <message>
        <source>Sa&amp;ve picture…</source>
        <translation>Bild sp&amp;eichern…</translation>
    </message>
    <message>
        <source>Text l&amp;arger</source>
        <translation>Text &amp;größer</translation>
    </message>
    <message>
        <source>Text s&amp;maller</source>
        <translation>Text &amp;kleiner</translation>
    </message>
    <message>
        <source>Text as &amp;usual</source>
        <translation>Text in &amp;Normalgröße</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys and words</source>
        <translation>&amp;Tasten und Begriffe</translation>
    </message>
    <message>
        <source>Key ca&amp;rd to print…</source>
        <translation>Tasten&amp;karte drucken…</translation>
    </message>
    <message>
        <source>&amp;Guided first run…</source>
        <translation>Ge&amp;führter erster Lauf…</translation>
    </message>
    <message>
        <source>&amp;Worked example</source>
        <translation>&amp;Rechenbeispiel</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Methode</translation>
    </message>
    <message>
        <source>Check this &amp;installation</source>
        <translation>Diese &amp;Installation prüfen</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Sicherheitshinweise</translation>
    </message>
    <message>
        <source>&amp;About Ullage</source>
        <translation>&amp;Über Ullage</translation>
    </message>
    <message>
        <source>gauge %1 %</source>
        <translation>Ladeanzeige %1 %</translation>
    </message>
    <message>
        <source>next reading %1</source>
        <translation>nächste Ablesung %1</translation>
    </message>
    <message>
        <source>Open a cop&amp;y…</source>
        <translation>Ko&amp;pie öffnen…</translation>
    </message>
    <message>
        <source>&amp;Join another logbook…</source>
        <translation>&amp;Mit anderem Logbuch zusammenführen…</translation>
    </message>
    <message>
        <source>Analysing the runs anew</source>
        <translation>Die Läufe werden neu ausgewertet</translation>
    </message>
</context>
<context>
    <name>ullage::MessageBar</name>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Show folder</source>
        <translation>Ordner zeigen</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>dismiss the message</source>
        <translation>die Meldung ausblenden</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht ausgeführt</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>ullage::MeterForm</name>
    <message>
        <source>Add meter</source>
        <translation>Zähler anlegen</translation>
    </message>
    <message>
        <source>Meter %1</source>
        <translation>Zähler %1</translation>
    </message>
    <message>
        <source>Save meter</source>
        <translation>Zähler speichern</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>as you call it at the bench</source>
        <translation>wie er am Messplatz heißt</translation>
    </message>
    <message>
        <source>Register &amp;step</source>
        <translation>Zählwerks&amp;schritt</translation>
    </message>
    <message>
        <source>1 Wh or 0.01 kWh</source>
        <translation>1 Wh oder 0,01 kWh</translation>
    </message>
    <message>
        <source>&amp;Error limit</source>
        <translation>&amp;Fehlergrenze</translation>
    </message>
    <message>
        <source>1 % of the reading</source>
        <translation>1 % vom Messwert</translation>
    </message>
    <message>
        <source>of it, each load&apos;s o&amp;wn</source>
        <translation>davon &amp;je Last eigen</translation>
    </message>
    <message>
        <source>a quarter of the limit; 0 after a calibration at your loads</source>
        <translation>ein Viertel der Grenze; 0, wenn kalibriert</translation>
    </message>
    <message>
        <source>Register s&amp;pan</source>
        <translation>Zählwerks&amp;umfang</translation>
    </message>
    <message>
        <source>10000 kWh, where it returns to 0</source>
        <translation>10000 kWh, wo es auf 0 zurückgeht</translation>
    </message>
    <message>
        <source>&amp;Correction</source>
        <translation>&amp;Korrektion</translation>
    </message>
    <message>
        <source>1, or from a calibration</source>
        <translation>1 oder aus einer Kalibrierung</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>&amp;Bemerkung</translation>
    </message>
    <message>
        <source>Wh&amp;y it changes</source>
        <translation>&amp;Warum geändert</translation>
    </message>
    <message>
        <source>kept in the meter&apos;s history</source>
        <translation>im Verlauf des Zählers behalten</translation>
    </message>
    <message>
        <source>The error limit stands on the data sheet as ± a percentage of energy. Without it no interval can be given for delivered energy. A part of it differs from load to load and does not cancel between loads that differ by more than a factor of two. True energy is the correction times what the register counted. Points of a certificate replace correction and limit: load in W, correction, then U in % and k.</source>
        <translation>Die Fehlergrenze steht im Datenblatt als ± Prozent der Energie. Ohne sie lässt sich für die abgegebene Energie kein Intervall angeben. Ein Teil davon ist von Last zu Last verschieden und hebt sich zwischen Lasten, die sich um mehr als den Faktor zwei unterscheiden, nicht auf. Die wahre Energie ist die Korrektion mal dem, was das Zählwerk zählte. Punkte eines Kalibrierscheins ersetzen Korrektion und Grenze: Last in W, Korrektion, dann U in % und k.</translation>
    </message>
    <message>
        <source>Class and range</source>
        <translation>Klasse und Bereich</translation>
    </message>
    <message>
        <source>C&amp;lass</source>
        <translation>K&amp;lasse</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>of</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>EN 50470-3</source>
        <translation>EN 50470-3</translation>
    </message>
    <message>
        <source>Ran&amp;ge</source>
        <translation>B&amp;ereich</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>5 W</source>
        <translation>5 W</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>3600 W</source>
        <translation>3600 W</translation>
    </message>
    <message>
        <source>starts at</source>
        <translation>Anlauf ab</translation>
    </message>
    <message>
        <source>0.02 A</source>
        <translation>0,02 A</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>Numme&amp;r</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>Labor</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>gültig bis</translation>
    </message>
    <message>
        <source>P&amp;oints</source>
        <translation>&amp;Punkte</translation>
    </message>
    <message>
        <source>The meter needs a name, by which lists and sheets call it.</source>
        <translation>Der Zähler braucht einen Namen, unter dem Listen und Blätter ihn nennen.</translation>
    </message>
    <message>
        <source>An error limit over 100 % says nothing; enter a percentage of the reading.</source>
        <translation>Eine Fehlergrenze über 100 % sagt nichts; tragen Sie Prozent vom Messwert ein.</translation>
    </message>
    <message>
        <source>It is a part of the error limit, so it cannot be larger; leave it empty for a quarter.</source>
        <translation>Es ist ein Teil der Fehlergrenze und kann nicht größer sein; leer bedeutet ein Viertel.</translation>
    </message>
    <message>
        <source>The span must be larger than one step of the register.</source>
        <translation>Der Umfang muss größer sein als ein Schritt des Zählwerks.</translation>
    </message>
    <message>
        <source>The range must end above where it begins.</source>
        <translation>Der Bereich muss über seinem Anfang enden.</translation>
    </message>
    <message>
        <source>Enter a date like 2027-05-14.</source>
        <translation>Tragen Sie ein Datum ein wie 2027-05-14.</translation>
    </message>
</context>
<context>
    <name>ullage::MetersModel</name>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Without an error limit no interval can be given for delivered energy.</source>
        <translation>Ohne Fehlergrenze lässt sich für die abgegebene Energie kein Intervall angeben.</translation>
    </message>
    <message>
        <source>by load</source>
        <translation>je Last</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>register step Wh</source>
        <translation>Zählwerksschritt Wh</translation>
    </message>
    <message>
        <source>error limit ±%</source>
        <translation>Fehlergrenze ±%</translation>
    </message>
    <message>
        <source>register span Wh</source>
        <translation>Zählwerksumfang Wh</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektion</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>ullage::MetersPage</name>
    <message>
        <source>No meters yet. Add meter takes what its data sheet says; without a meter a run has the gauge only.</source>
        <translation>Noch keine Zähler. Zähler anlegen nimmt auf, was sein Datenblatt sagt; ohne Zähler hat ein Lauf nur die Ladeanzeige.</translation>
    </message>
    <message>
        <source>Edit meter</source>
        <translation>Zähler ändern</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Read live…</source>
        <translation>Live lesen…</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Zähler anlegen</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>In series with other meters</source>
        <translation>In Reihe mit anderen Zählern</translation>
    </message>
    <message>
        <source>History of its data</source>
        <translation>Verlauf seiner Daten</translation>
    </message>
</context>
<context>
    <name>ullage::MethodForm</name>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>What every analysis of this logbook takes for granted. Leave a field empty for the usual figure. Reports print the figures that they went by.</source>
        <translation>Was jede Auswertung dieses Logbuchs voraussetzt. Lassen Sie ein Feld leer für den üblichen Wert. Berichte drucken die Werte, nach denen sie gingen.</translation>
    </message>
    <message>
        <source>usual: %1%2</source>
        <translation>üblich: %1%2</translation>
    </message>
    <message>
        <source>A claim is decided by the</source>
        <translation>Über eine Angabe entscheidet</translation>
    </message>
    <message>
        <source>whole interval</source>
        <translation>ganzes Intervall</translation>
    </message>
    <message>
        <source>value alone</source>
        <translation>Wert allein</translation>
    </message>
    <message>
        <source>Now in use: drains repeat within %1.</source>
        <translation>Derzeit gilt: Entladungen wiederholen sich innerhalb %1.</translation>
    </message>
</context>
<context>
    <name>ullage::ModbusLink</name>
    <message>
        <source>the meter has closed the connection</source>
        <translation>der Zähler hat die Verbindung geschlossen</translation>
    </message>
    <message>
        <source>the device names no SunSpec meter model (201 to 204, 211 to 214); state its registers</source>
        <translation>das Gerät nennt kein SunSpec-Zählermodell (201 bis 204, 211 bis 214); geben Sie seine Register an</translation>
    </message>
    <message>
        <source>the meter refuses registers %1 to %2 (exception %3)</source>
        <translation>der Zähler verweigert die Register %1 bis %2 (Ausnahme %3)</translation>
    </message>
    <message>
        <source>SunSpec meter model %1</source>
        <translation>SunSpec-Zählermodell %1</translation>
    </message>
</context>
<context>
    <name>ullage::ModelsView</name>
    <message>
        <source>Models by their specimens</source>
        <translation>Modelle nach ihren Exemplaren</translation>
    </message>
</context>
<context>
    <name>ullage::MqttLink</name>
    <message>
        <source>the broker refuses: %1</source>
        <translation>der Broker lehnt ab: %1</translation>
    </message>
    <message>
        <source>a message of %1 MB came; those of a meter are short</source>
        <translation>eine Nachricht von %1 MB kam; die eines Zählers sind kurz</translation>
    </message>
    <message>
        <source>check that the broker runs, its host and port, and that it speaks TLS there</source>
        <translation>prüfen Sie, ob der Broker läuft, Rechnername und Port, und ob er dort TLS spricht</translation>
    </message>
    <message>
        <source>check that the broker runs, its host and port, and whether it asks for TLS</source>
        <translation>prüfen Sie, ob der Broker läuft, Rechnername und Port, und ob er TLS verlangt</translation>
    </message>
    <message>
        <source>the password is longer than MQTT can say; enter a shorter one</source>
        <translation>das Passwort ist länger, als MQTT es sagen kann; geben Sie ein kürzeres ein</translation>
    </message>
    <message>
        <source>what came is not MQTT 3.1.1</source>
        <translation>was kam, ist kein MQTT 3.1.1</translation>
    </message>
    <message>
        <source>the broker gives none of these topics to this user; check the topics, the user and its rights</source>
        <translation>der Broker gibt diesem Benutzer keines dieser Topics; prüfen Sie die Topics, den Benutzer und seine Rechte</translation>
    </message>
    <message>
        <source>it does not speak MQTT 3.1.1</source>
        <translation>er spricht kein MQTT 3.1.1</translation>
    </message>
    <message>
        <source>it takes nobody without a client name of their own</source>
        <translation>er nimmt niemanden ohne eigenen Client-Namen</translation>
    </message>
    <message>
        <source>its service is not available now</source>
        <translation>sein Dienst ist jetzt nicht verfügbar</translation>
    </message>
    <message>
        <source>user or password is wrong, or this user may not read there</source>
        <translation>Benutzer oder Passwort ist falsch, oder dieser Benutzer darf dort nicht lesen</translation>
    </message>
    <message>
        <source>code %1</source>
        <translation>Code %1</translation>
    </message>
    <message>
        <source>the broker does not answer any more</source>
        <translation>der Broker antwortet nicht mehr</translation>
    </message>
    <message>
        <source>no secured connection (%1)</source>
        <translation>keine gesicherte Verbindung (%1)</translation>
    </message>
</context>
<context>
    <name>ullage::NotificationService</name>
    <message>
        <source>Enter the reading</source>
        <translation>Ablesung eintragen</translation>
    </message>
</context>
<context>
    <name>ullage::OtherLogbooksLine</name>
    <message>
        <source>with the units of</source>
        <translation>mit den Speichern aus</translation>
    </message>
    <message>
        <source>%1: not read  ✕</source>
        <translation>%1: nicht gelesen  ✕</translation>
    </message>
    <message>
        <source>Leave out the units of %1</source>
        <translation>Speicher aus %1 weglassen</translation>
    </message>
    <message>
        <source>%1, as it was when it was read; click to leave its units out</source>
        <translation>%1, wie es beim Lesen war; klicken, um seine Speicher wegzulassen</translation>
    </message>
    <message>
        <source>%1
%2; click to leave it out</source>
        <translation>%1
%2; klicken, um es wegzulassen</translation>
    </message>
</context>
<context>
    <name>ullage::PairsModel</name>
    <message>
        <source>not comparable:
%1</source>
        <translation>nicht vergleichbar:
%1</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>than %1</source>
        <translation>als %1</translation>
    </message>
</context>
<context>
    <name>ullage::PasswordForm</name>
    <message>
        <source>Password</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>Read live</source>
        <translation>Live lesen</translation>
    </message>
    <message>
        <source>&amp;Keep in the desktop&apos;s secret store</source>
        <translation>Im &amp;Schlüsselbund des Desktops behalten</translation>
    </message>
    <message>
        <source>The password of %1 at %2. The logbook never holds it.</source>
        <translation>Das Passwort von %1 auf %2. Das Logbuch enthält es nie.</translation>
    </message>
    <message>
        <source>It is asked for each time: %1.</source>
        <translation>Es wird jedes Mal abgefragt: %1.</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>&amp;Passwort</translation>
    </message>
</context>
<context>
    <name>ullage::PhotoDialog</name>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>, %1 x %2 pixels</source>
        <translation>, %1 x %2 Pixel</translation>
    </message>
    <message>
        <source>, shown at %1 % of its size; Save photo writes it whole</source>
        <translation>, gezeigt mit %1 % seiner Größe; Foto speichern schreibt es ganz</translation>
    </message>
    <message>
        <source>, taken %1</source>
        <translation>, aufgenommen %1</translation>
    </message>
    <message>
        <source>, no time in it</source>
        <translation>, ohne Zeitangabe</translation>
    </message>
    <message>
        <source>&amp;Fit  F</source>
        <translation>Einpassen  &amp;F</translation>
    </message>
    <message>
        <source>&amp;100 %  1</source>
        <translation>&amp;100 %  1</translation>
    </message>
    <message>
        <source>&amp;Save photo…</source>
        <translation>Foto s&amp;peichern…</translation>
    </message>
    <message>
        <source>Write the photo to a file, byte for byte as it came</source>
        <translation>Das Foto in eine Datei schreiben, Byte für Byte, wie es kam</translation>
    </message>
    <message>
        <source>&amp;Withdraw photo</source>
        <translation>Foto &amp;zurückziehen</translation>
    </message>
    <message>
        <source>Take this photo out; undo brings it back</source>
        <translation>Dieses Foto herausnehmen; Rückgängig holt es zurück</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>This picture is too large to be shown here: it would take more than %1 MB of memory. Save photo writes it to a file, whole.</source>
        <translation>Dieses Bild ist zu groß, um hier gezeigt zu werden: es bräuchte mehr als %1 MB Arbeitsspeicher. Foto speichern schreibt es ganz in eine Datei.</translation>
    </message>
    <message>
        <source>This picture is damaged and cannot be shown. Its file is kept in the logbook as it came.</source>
        <translation>Dieses Bild ist beschädigt und lässt sich nicht zeigen. Seine Datei bleibt im Logbuch, wie sie kam.</translation>
    </message>
</context>
<context>
    <name>ullage::PhotoStrip</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Withdraw photo</source>
        <translation>Foto zurückziehen</translation>
    </message>
    <message>
        <source>photo %1 of %2: %3</source>
        <translation>Foto %1 von %2: %3</translation>
    </message>
    <message>
        <source>Reading photo %1</source>
        <translation>Foto %1 wird gelesen</translation>
    </message>
    <message>
        <source>This photo is %1.</source>
        <translation>Dieses Foto ist %1.</translation>
    </message>
</context>
<context>
    <name>ullage::PictureDialog</name>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Size and colours of the picture</source>
        <translation>Größe und Farben des Bildes</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Format</translation>
    </message>
    <message>
        <source>PNG, pixels for a page or a message</source>
        <translation>PNG, Pixel für eine Seite oder Nachricht</translation>
    </message>
    <message>
        <source>SVG, lines that stay sharp at any size</source>
        <translation>SVG, Linien, in jeder Größe scharf</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <source>160 mm or 605 px</source>
        <translation>160 mm oder 605 px</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>90 mm or 340 px</source>
        <translation>90 mm oder 340 px</translation>
    </message>
    <message>
        <source>&amp;Sharpness of PNG</source>
        <translation>Schä&amp;rfe von PNG</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>F&amp;arben</translation>
    </message>
    <message>
        <source>&amp;Title, key and source in the picture</source>
        <translation>&amp;Titel, Legende und Quelle im Bild</translation>
    </message>
    <message>
        <source>%1 dots an inch</source>
        <translation>%1 dpi</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>on white, for print</source>
        <translation>auf Weiß, für Druck</translation>
    </message>
    <message>
        <source>Text keeps its size in mm: a larger picture has more room around it.</source>
        <translation>Text behält seine Größe in mm: ein größeres Bild hat mehr Raum darum.</translation>
    </message>
    <message>
        <source>PNG: %1 × %2 pixels. SVG is sharp at any size. Text keeps its size in mm: a larger picture has more room around it.</source>
        <translation>PNG: %1 × %2 Pixel. SVG ist in jeder Größe scharf. Text behält seine Größe in mm: ein größeres Bild hat mehr Raum darum.</translation>
    </message>
    <message>
        <source>A picture needs this side, such as 160 mm.</source>
        <translation>Ein Bild braucht diese Seite, etwa 160 mm.</translation>
    </message>
</context>
<context>
    <name>ullage::PvForm</name>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>what you call it</source>
        <translation>wie Sie es nennen</translation>
    </message>
    <message>
        <source>Unit whose PV input is meant</source>
        <translation>Speicher, um dessen PV-Eingang es geht</translation>
    </message>
    <message>
        <source>One module, from its label</source>
        <translation>Ein Modul, nach seinem Typenschild</translation>
    </message>
    <message>
        <source>Module</source>
        <translation>Modul</translation>
    </message>
    <message>
        <source>as printed</source>
        <translation>wie aufgedruckt</translation>
    </message>
    <message>
        <source>Cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>Voc, open circuit / V</source>
        <translation>Voc, Leerlauf / V</translation>
    </message>
    <message>
        <source>24.3</source>
        <translation>24,3</translation>
    </message>
    <message>
        <source>Vmp, maximum power / V</source>
        <translation>Vmp, MPP / V</translation>
    </message>
    <message>
        <source>20.4</source>
        <translation>20,4</translation>
    </message>
    <message>
        <source>Isc, short circuit / A</source>
        <translation>Isc, Kurzschluss / A</translation>
    </message>
    <message>
        <source>10.2</source>
        <translation>10,2</translation>
    </message>
    <message>
        <source>Imp, maximum power / A</source>
        <translation>Imp, MPP / A</translation>
    </message>
    <message>
        <source>9.8</source>
        <translation>9,8</translation>
    </message>
    <message>
        <source>Coefficient of Voc</source>
        <translation>Koeffizient von Voc</translation>
    </message>
    <message>
        <source>−0.30 %/°C or −73 mV/°C</source>
        <translation>−0,30 %/°C oder −73 mV/°C</translation>
    </message>
    <message>
        <source>Tolerance of its voltages / %</source>
        <translation>Toleranz seiner Spannungen / %</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>Coefficient of Vmp</source>
        <translation>Koeffizient von Vmp</translation>
    </message>
    <message>
        <source>−0.40 %/°C</source>
        <translation>−0,40 %/°C</translation>
    </message>
    <message>
        <source>Coefficient of power</source>
        <translation>Koeffizient der Leistung</translation>
    </message>
    <message>
        <source>−0.38 %/°C</source>
        <translation>−0,38 %/°C</translation>
    </message>
    <message>
        <source>NOCT / °C</source>
        <translation>NOCT / °C</translation>
    </message>
    <message>
        <source>45</source>
        <translation>45</translation>
    </message>
    <message>
        <source>How they are wired</source>
        <translation>Wie sie verschaltet sind</translation>
    </message>
    <message>
        <source>Modules in series</source>
        <translation>Module in Reihe</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>Strings in parallel</source>
        <translation>Stränge parallel</translation>
    </message>
    <message>
        <source>The place</source>
        <translation>Der Ort</translation>
    </message>
    <message>
        <source>Coldest ambient by day / °C</source>
        <translation>Kälteste Umgebung bei Tag / °C</translation>
    </message>
    <message>
        <source>−15</source>
        <translation>−15</translation>
    </message>
    <message>
        <source>Hottest ambient / °C</source>
        <translation>Heißeste Umgebung / °C</translation>
    </message>
    <message>
        <source>35</source>
        <translation>35</translation>
    </message>
    <message>
        <source>Hottest cell, if known / °C</source>
        <translation>Heißeste Zelle, wenn bekannt / °C</translation>
    </message>
    <message>
        <source>from ambient and NOCT</source>
        <translation>aus Umgebung und NOCT</translation>
    </message>
    <message>
        <source>Irradiance / W/m²</source>
        <translation>Bestrahlungsstärke / W/m²</translation>
    </message>
    <message>
        <source>1000</source>
        <translation>1000</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>crystalline silicon</source>
        <translation>kristallines Silizium</translation>
    </message>
    <message>
        <source>other</source>
        <translation>andere</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keiner gewählt</translation>
    </message>
    <message>
        <source>The sheet needs a name, by which it is found again.</source>
        <translation>Das Blatt braucht einen Namen, unter dem es wiedergefunden wird.</translation>
    </message>
</context>
<context>
    <name>ullage::PvPage</name>
    <message>
        <source>Withdraw sheet</source>
        <translation>Blatt zurückziehen</translation>
    </message>
    <message>
        <source>Edit claims</source>
        <translation>Angaben ändern</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>PV-Eingang prüfen</translation>
    </message>
    <message>
        <source>PV sheet</source>
        <translation>PV-Blatt</translation>
    </message>
    <message>
        <source>Add sheet</source>
        <translation>Blatt anlegen</translation>
    </message>
    <message>
        <source>No PV sheets yet. Add sheet takes what a module&apos;s label says, how many are wired together, and how cold and hot the place gets; the page then tells whether a unit&apos;s PV input takes the string.</source>
        <translation>Noch keine PV-Blätter. Blatt anlegen nimmt auf, was das Typenschild eines Moduls sagt, wie viele zusammengeschaltet sind und wie kalt und heiß der Ort wird; die Seite sagt dann, ob der PV-Eingang eines Speichers den Strang verträgt.</translation>
    </message>
    <message>
        <source>PV sheet %1</source>
        <translation>PV-Blatt %1</translation>
    </message>
    <message>
        <source>Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × Isc, NEC 690.8). </source>
        <translation>Leiter und, wo nötig, Sicherungen jedes Strangs: für mindestens %1 A (1,25 × 1,25 × Isc, NEC 690.8). </translation>
    </message>
</context>
<context>
    <name>ullage::PvVerdictView</name>
    <message>
        <source>DANGER: %1</source>
        <translation>GEFAHR: %1</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Do not connect yet: a field cannot be read.</source>
        <translation>Noch nicht anschließen: ein Feld lässt sich nicht lesen.</translation>
    </message>
</context>
<context>
    <name>ullage::QuestionBar</name>
    <message>
        <source>Keep  K</source>
        <translation>Behalten  K</translation>
    </message>
    <message>
        <source>Correct  C</source>
        <translation>Korrigieren  C</translation>
    </message>
    <message>
        <source>It was a reset  Z</source>
        <translation>Es war ein Reset  Z</translation>
    </message>
    <message>
        <source>Meter swapped  W</source>
        <translation>Zähler getauscht  W</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Not known  N</source>
        <translation>Unbekannt  N</translation>
    </message>
    <message>
        <source>%1?  M</source>
        <translation>%1?  M</translation>
    </message>
    <message>
        <source>Records %1 instead</source>
        <translation>Trägt stattdessen %1 ein</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsModel</name>
    <message>
        <source>energy in
Wh</source>
        <translation>geladen
Wh</translation>
    </message>
    <message>
        <source>power
W</source>
        <translation>Leistung
W</translation>
    </message>
    <message>
        <source>error, pt
if %1 Wh</source>
        <translation>Fehler, pt
bei %1 Wh</translation>
    </message>
    <message>
        <source>gauge less what is then left, in percentage points: of the %1 Wh that this drain is expected to deliver to its cut-off</source>
        <translation>Ladeanzeige minus das, was dann übrig ist, in Prozentpunkten: von den %1 Wh, die diese Entladung bis zur Abschaltung voraussichtlich abgibt</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>gauge
%</source>
        <translation>Anzeige
%</translation>
    </message>
    <message>
        <source>register
Wh</source>
        <translation>Zählwerk
Wh</translation>
    </message>
    <message>
        <source>delivered
Wh</source>
        <translation>abgegeben
Wh</translation>
    </message>
    <message>
        <source>load
W</source>
        <translation>Last
W</translation>
    </message>
    <message>
        <source>error
pt</source>
        <translation>Fehler
pt</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>local time of the run</source>
        <translation>Ortszeit des Laufs</translation>
    </message>
    <message>
        <source>what the unit&apos;s own gauge showed</source>
        <translation>was die Ladeanzeige des Speichers zeigte</translation>
    </message>
    <message>
        <source>what the meter&apos;s register showed</source>
        <translation>was das Zählwerk des Zählers zeigte</translation>
    </message>
    <message>
        <source>corrected energy since the first register reading</source>
        <translation>korrigierte Energie seit der ersten Ablesung des Zählwerks</translation>
    </message>
    <message>
        <source>mean load since the register reading before</source>
        <translation>mittlere Last seit der Ablesung des Zählwerks davor</translation>
    </message>
    <message>
        <source>gauge less the share that is left of what the drain delivers from full to cut-off, in percentage points</source>
        <translation>Ladeanzeige minus der Anteil, der von dem übrig ist, was die Entladung von voll bis Abschaltung abgibt, in Prozentpunkten</translation>
    </message>
    <message>
        <source>marks and remarks</source>
        <translation>Marken und Bemerkungen</translation>
    </message>
    <message>
        <source>%1, amended</source>
        <translation>%1, berichtigt</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsRows</name>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>withdrawn, %1</source>
        <translation>zurückgezogen, %1</translation>
    </message>
    <message>
        <source>assumed: %1. %2</source>
        <translation>angenommen: %1. %2</translation>
    </message>
    <message>
        <source>interpolated between the register readings around it</source>
        <translation>interpoliert zwischen den Ablesungen des Zählwerks davor und danach</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsView</name>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
</context>
<context>
    <name>ullage::ReadoutLink</name>
    <message>
        <source>the meter does not answer the request for its read-out</source>
        <translation>der Zähler antwortet nicht auf die Anforderung zur Auslesung</translation>
    </message>
    <message>
        <source>what comes is no identification of a meter</source>
        <translation>was kommt, ist keine Kennung eines Zählers</translation>
    </message>
</context>
<context>
    <name>ullage::RecordController</name>
    <message>
        <source>%1 and its runs are withdrawn; Edit, Undo brings them back.</source>
        <translation>%1 und seine Läufe sind zurückgezogen; Bearbeiten, Rückgängig holt sie zurück.</translation>
    </message>
    <message>
        <source>A run needs a unit: choose Edit, Add unit first.</source>
        <translation>Ein Lauf braucht einen Speicher: wählen Sie zuerst Bearbeiten, Speicher anlegen.</translation>
    </message>
    <message>
        <source>a %1 of %2 is still running</source>
        <translation>%1 von %2 läuft noch</translation>
    </message>
    <message>
        <source>%1 is in the running test of %2</source>
        <translation>%1 ist im laufenden Test von %2</translation>
    </message>
    <message>
        <source>This run is no longer in the open logbook.</source>
        <translation>Dieser Lauf ist nicht mehr im offenen Logbuch.</translation>
    </message>
    <message>
        <source>The run is ended: %1; Edit, Undo lets it go on.</source>
        <translation>Der Lauf ist beendet: %1; Bearbeiten, Rückgängig lässt ihn weitergehen.</translation>
    </message>
    <message>
        <source>The run is withdrawn; Edit, Undo brings it back.</source>
        <translation>Der Lauf ist zurückgezogen; Bearbeiten, Rückgängig holt ihn zurück.</translation>
    </message>
</context>
<context>
    <name>ullage::ReminderBar</name>
    <message>
        <source>▲ due</source>
        <translation>▲ fällig</translation>
    </message>
    <message>
        <source>Enter reading</source>
        <translation>Ablesung eintragen</translation>
    </message>
    <message>
        <source>remind me again in</source>
        <translation>erneut erinnern in</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Remind me again in %1 minutes</source>
        <translation>In %1 Minuten erneut erinnern</translation>
    </message>
    <message>
        <source>%1: reading %2, %3</source>
        <translation>%1: Ablesung %2, %3</translation>
    </message>
    <message>
        <source>; and one more test</source>
        <translation>; und ein weiterer Test</translation>
    </message>
    <message>
        <source>; and %1 more tests</source>
        <translation>; und %1 weitere Tests</translation>
    </message>
</context>
<context>
    <name>ullage::ReminderForm</name>
    <message>
        <source>Next reading</source>
        <translation>Nächste Ablesung</translation>
    </message>
    <message>
        <source>Remind me</source>
        <translation>Erinnern</translation>
    </message>
    <message>
        <source>%1: call me for the next reading at the earliest of these moments. Leave empty what should not count.</source>
        <translation>%1: zur nächsten Ablesung rufen, im frühesten dieser Momente. Lassen Sie leer, was nicht zählen soll.</translation>
    </message>
    <message>
        <source>&amp;After the last reading</source>
        <translation>&amp;Nach der letzten Ablesung</translation>
    </message>
    <message>
        <source>never; or 30 min, 1.5 h</source>
        <translation>nie; oder 30 min, 1,5 h</translation>
    </message>
    <message>
        <source>When the &amp;gauge should be down by</source>
        <translation>Wenn die &amp;Ladeanzeige gefallen sein sollte um</translation>
    </message>
    <message>
        <source>never; or 10 points</source>
        <translation>nie; oder 10 pt</translation>
    </message>
    <message>
        <source>&amp;Before the expected cut-off</source>
        <translation>&amp;Vor der erwarteten Abschaltung</translation>
    </message>
    <message>
        <source>never; or 15 min</source>
        <translation>nie; oder 15 min</translation>
    </message>
</context>
<context>
    <name>ullage::Reminders</name>
    <message>
        <source>%1: a reading is due</source>
        <translation>%1: eine Ablesung ist fällig</translation>
    </message>
    <message>
        <source>You asked to be called again</source>
        <translation>Sie wollten erneut erinnert werden</translation>
    </message>
</context>
<context>
    <name>ullage::ReportController</name>
    <message>
        <source>%1 has no runs yet, so there is nothing to report.</source>
        <translation>%1 hat noch keine Läufe, es gibt also nichts zu berichten.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1 Lauf %2</translation>
    </message>
    <message>
        <source>A report of %1 rows would have thousands of pages, since it holds the readings and charts of each. Filter the comparison to %2 rows at most; its export holds them all.</source>
        <translation>Ein Bericht über %1 Zeilen hätte Tausende Seiten, da er Ablesungen und Diagramme jeder Zeile enthält. Filtern Sie den Vergleich auf höchstens %2 Zeilen; sein Export enthält alle.</translation>
    </message>
    <message>
        <source>as tested, each at its own load</source>
        <translation>wie getestet, jeder bei seiner eigenen Last</translation>
    </message>
    <message>
        <source>at %1, as on the page</source>
        <translation>bei %1, wie auf der Seite</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>sizing for %1</source>
        <translation>Auslegung für %1</translation>
    </message>
    <message>
        <source>Choose a PV sheet whose fields can be read; then make its report.</source>
        <translation>Wählen Sie ein PV-Blatt, dessen Felder sich lesen lassen; erstellen Sie dann seinen Bericht.</translation>
    </message>
    <message>
        <source>PV check %1</source>
        <translation>PV-Prüfung %1</translation>
    </message>
    <message>
        <source>keys at the bench</source>
        <translation>Tasten am Messplatz</translation>
    </message>
    <message>
        <source>Keys at the bench</source>
        <translation>Tasten am Messplatz</translation>
    </message>
    <message>
        <source>A sheet with the keys of the bench, to be printed and hung up there.</source>
        <translation>Ein Blatt mit den Tasten am Messplatz, zum Drucken und Aufhängen dort.</translation>
    </message>
    <message>
        <source>Ullage %1</source>
        <translation>Ullage %1</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>HTML page (*.html)</source>
        <translation>HTML-Seite (*.html)</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Bericht erstellen</translation>
    </message>
    <message>
        <source>Making the report</source>
        <translation>Bericht wird erstellt</translation>
    </message>
    <message>
        <source>Report saved to %1, its tables and pictures to the folder %2.</source>
        <translation>Bericht in %1 gespeichert, seine Tabellen und Bilder im Ordner %2.</translation>
    </message>
    <message>
        <source>Report saved to %1.</source>
        <translation>Bericht in %1 gespeichert.</translation>
    </message>
</context>
<context>
    <name>ullage::ReportForm</name>
    <message>
        <source>It shows the units of the comparison page, which units are clearly different, and says of each unit that cannot be converted to one load why it stays as tested. The load is chosen on that page.</source>
        <translation>Er zeigt die Speicher der Vergleichsseite, welche Speicher klar verschieden sind, und sagt zu jedem Speicher, der sich nicht auf eine Last umrechnen lässt, warum er wie getestet bleibt. Die Last wird auf jener Seite gewählt.</translation>
    </message>
    <message>
        <source>Report on %1</source>
        <translation>Bericht: %1</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Bericht erstellen</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Speicher</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Format</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>Its &amp;tables (HTML) and pictures (PNG) as files too, in a folder beside it</source>
        <translation>Seine &amp;Tabellen (HTML) und Bilder (PNG) auch als Dateien, in einem Ordner daneben</translation>
    </message>
    <message>
        <source>With what is &amp;mine alone: tags, prices paid, remarks, advice</source>
        <translation>Mit dem, was nur &amp;mich angeht: Schlagwörter, gezahlte Preise, Bemerkungen, Ratschläge</translation>
    </message>
    <message>
        <source>PDF, pages to print or to send</source>
        <translation>PDF, Seiten zum Drucken oder Senden</translation>
    </message>
    <message>
        <source>HTML, one page for the web</source>
        <translation>HTML, eine Seite fürs Web</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be known, amendments and cautions. Numbers have the decimal sign of its language.</source>
        <translation>Der Bericht enthält Zusammenfassung, Zähler, Methode mit Quellen, Ablesungen, Unsicherheitsbudget, Diagramme, Befunde, was nicht bekannt sein kann, Berichtigungen und Sicherheitshinweise. Zahlen haben das Dezimalzeichen seiner Sprache.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>Sp&amp;rache</translation>
    </message>
</context>
<context>
    <name>ullage::ResultStrip</name>
    <message>
        <source>The run in figures</source>
        <translation>Der Lauf in Zahlen</translation>
    </message>
</context>
<context>
    <name>ullage::RunChartsPanel</name>
    <message>
        <source>Charts of the run</source>
        <translation>Diagramme des Laufs</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Intervals between readings</source>
        <translation>Abschnitte zwischen Ablesungen</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Abschnitte</translation>
    </message>
</context>
<context>
    <name>ullage::RunForm</name>
    <message>
        <source>Edit run</source>
        <translation>Lauf ändern</translation>
    </message>
    <message>
        <source>Save run</source>
        <translation>Lauf speichern</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>Spei&amp;cher</translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>A&amp;rt des Laufs</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Zähler</translation>
    </message>
    <message>
        <source>S&amp;econd meter</source>
        <translation>Z&amp;weiter Zähler</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>L&amp;ast</translation>
    </message>
    <message>
        <source>what is plugged in, in your words</source>
        <translation>was angeschlossen ist, in Ihren Worten</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>&amp;Voll gestartet</translation>
    </message>
    <message>
        <source>E&amp;nded</source>
        <translation>Be&amp;endet</translation>
    </message>
    <message>
        <source>End noti&amp;ced within</source>
        <translation>Ende &amp;bemerkt binnen</translation>
    </message>
    <message>
        <source>2 min, where you know; else 5 min is taken</source>
        <translation>2 min, wo bekannt; sonst gelten 5 min</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature</source>
        <translation>Um&amp;gebungstemperatur</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>… at the en&amp;d</source>
        <translation>… am En&amp;de</translation>
    </message>
    <message>
        <source>&amp;Charged from</source>
        <translation>Gelade&amp;n über</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>Zei&amp;tzone</translation>
    </message>
    <message>
        <source>One in series, whose register you note too; or the one that took over at a mark &quot;meter swapped&quot;</source>
        <translation>Einer in Reihe, dessen Zählwerk Sie auch notieren; oder der, der bei einer Marke „Zähler getauscht“ übernahm</translation>
    </message>
    <message>
        <source>The second meter is the first one; choose another, or none.</source>
        <translation>Der zweite Zähler ist der erste; wählen Sie einen anderen oder keinen.</translation>
    </message>
    <message>
        <source>No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC.</source>
        <translation>Eine solche Zeitzone ist hier nicht bekannt; wählen Sie Region und Ort, etwa Africa/Nairobi, oder UTC.</translation>
    </message>
</context>
<context>
    <name>ullage::RunHead</name>
    <message>
        <source>Mark…</source>
        <translation>Marke…</translation>
    </message>
    <message>
        <source>Note an event: load changed, meter zeroed, cut-off</source>
        <translation>Ein Ereignis vermerken: Last geändert, Zähler genullt, Abschaltung</translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Lauf beenden…</translation>
    </message>
    <message>
        <source>Say how and when this run ended, and what was shown then</source>
        <translation>Sagen, wie und wann dieser Lauf endete und was dann angezeigt war</translation>
    </message>
    <message>
        <source>Photo…</source>
        <translation>Foto…</translation>
    </message>
    <message>
        <source>Attach photos to the chosen reading, or to the next one</source>
        <translation>Fotos an die gewählte oder die nächste Ablesung anhängen</translation>
    </message>
    <message>
        <source>Amend</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Change the chosen reading, or else the last; the old values are kept</source>
        <translation>Die gewählte, sonst die letzte Ablesung ändern; die alten Werte bleiben</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Take the chosen readings out; undo brings them back</source>
        <translation>Die gewählten Ablesungen herausnehmen; Rückgängig holt sie zurück</translation>
    </message>
    <message>
        <source>Edit run</source>
        <translation>Lauf ändern</translation>
    </message>
    <message>
        <source>Change what is stated about this run</source>
        <translation>Ändern, was zu diesem Lauf angegeben ist</translation>
    </message>
    <message>
        <source>Next reading…</source>
        <translation>Nächste Ablesung…</translation>
    </message>
    <message>
        <source>Say when to be reminded of the next reading</source>
        <translation>Sagen, wann an die nächste Ablesung erinnert wird</translation>
    </message>
    <message>
        <source>running</source>
        <translation>läuft</translation>
    </message>
</context>
<context>
    <name>ullage::RunPage</name>
    <message>
        <source>Nothing to say yet. With readings of gauge and register the findings stand here.</source>
        <translation>Noch nichts zu sagen. Mit Ablesungen von Ladeanzeige und Zählwerk stehen hier die Befunde.</translation>
    </message>
    <message>
        <source>No readings yet. Type what the gauge and the meter&apos;s register show into the row below and press Enter; the time is filled in.</source>
        <translation>Noch keine Ablesungen. Tippen Sie in die Zeile darunter, was Ladeanzeige und Zählwerk des Zählers zeigen, und drücken Sie Enter; die Zeit wird eingesetzt.</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Log</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Right or wrong</source>
        <translation>Stimmt oder nicht</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>the reading of %1</source>
        <translation>die Ablesung von %1</translation>
    </message>
    <message>
        <source>the next reading</source>
        <translation>die nächste Ablesung</translation>
    </message>
    <message>
        <source>The clipboard holds no picture; copy a photo or its file first.</source>
        <translation>Die Zwischenablage enthält kein Bild; kopieren Sie zuerst ein Foto oder seine Datei.</translation>
    </message>
</context>
<context>
    <name>ullage::RunPhotos</name>
    <message>
        <source>&amp;Amend to the photo&apos;s time</source>
        <translation>Auf die F&amp;otozeit berichtigen</translation>
    </message>
    <message>
        <source>Photos of the chosen reading</source>
        <translation>Fotos der gewählten Ablesung</translation>
    </message>
    <message>
        <source>Photos of undone readings</source>
        <translation>Fotos rückgängig gemachter Ablesungen</translation>
    </message>
    <message>
        <source>Lea&amp;ve the time</source>
        <translation>Zeit b&amp;elassen</translation>
    </message>
    <message>
        <source>A reading that was undone keeps its photos as evidence</source>
        <translation>Eine rückgängig gemachte Ablesung behält ihre Fotos als Beleg</translation>
    </message>
    <message>
        <source>of an undone reading</source>
        <translation>von einer rückgängig gemachten Ablesung</translation>
    </message>
    <message>
        <source>of the undone reading of %1</source>
        <translation>von der rückgängig gemachten Ablesung von %1</translation>
    </message>
    <message>
        <source>Photos of undone readings: %1</source>
        <translation>Fotos rückgängig gemachter Ablesungen: %1</translation>
    </message>
    <message>
        <source>The photo was taken %1; the reading says %2.</source>
        <translation>Das Foto wurde aufgenommen %1; die Ablesung sagt %2.</translation>
    </message>
    <message>
        <source>time of the photo</source>
        <translation>Zeit des Fotos</translation>
    </message>
</context>
<context>
    <name>ullage::ScpiLink</name>
    <message>
        <source>the instrument does not answer %1</source>
        <translation>das Gerät antwortet nicht auf %1</translation>
    </message>
    <message>
        <source>an answer without end came</source>
        <translation>eine Antwort ohne Ende kam</translation>
    </message>
</context>
<context>
    <name>ullage::SettingsController</name>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Folder for copies of logbooks</source>
        <translation>Ordner für Kopien von Logbüchern</translation>
    </message>
</context>
<context>
    <name>ullage::SettingsDialog</name>
    <message>
        <source>Drain</source>
        <translation>Entladung</translation>
    </message>
    <message>
        <source>No-load drain</source>
        <translation>Leerlaufentladung</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Ladung</translation>
    </message>
    <message>
        <source>Sustained output</source>
        <translation>Dauerleistung</translation>
    </message>
    <message>
        <source>Peak output</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>Standby</source>
        <translation>Standby</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>wie der Desktop</translation>
    </message>
    <message>
        <source>Another language counts from the next start of the program.</source>
        <translation>Eine andere Sprache gilt ab dem nächsten Start des Programms.</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation>Te&amp;xtgröße</translation>
    </message>
    <message>
        <source>100 %, as the desktop</source>
        <translation>100 %, wie der Desktop</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Theme and text size are shown at once. Cancel takes them back.</source>
        <translation>Farben und Textgröße sind sofort zu sehen. Abbrechen nimmt sie zurück.</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>Default &amp;meter</source>
        <translation>Vor&amp;gabe für den Zähler</translation>
    </message>
    <message>
        <source>The meter that Start run proposes. Open a logbook to choose among its meters.</source>
        <translation>Der Zähler, den Lauf starten vorschlägt. Öffnen Sie ein Logbuch, um unter seinen Zählern zu wählen.</translation>
    </message>
    <message>
        <source>The meter that Start run proposes. This logbook has no meter yet.</source>
        <translation>Der Zähler, den Lauf starten vorschlägt. Dieses Logbuch hat noch keinen Zähler.</translation>
    </message>
    <message>
        <source>The meter of this logbook that Start run proposes.</source>
        <translation>Der Zähler dieses Logbuchs, den Lauf starten vorschlägt.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>A&amp;rt des Laufs</translation>
    </message>
    <message>
        <source>&amp;Remind me to read</source>
        <translation>Ans Ablesen er&amp;innern</translation>
    </message>
    <message>
        <source>every</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>when the gauge is down by</source>
        <translation>wenn die Ladeanzeige gefallen ist um</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>before the cut-off</source>
        <translation>vor der Abschaltung</translation>
    </message>
    <message>
        <source>Start run proposes these for a new run of that kind, and remembers what you enter there.</source>
        <translation>Lauf starten schlägt dies für einen neuen Lauf dieser Art vor und merkt sich, was Sie dort eintragen.</translation>
    </message>
    <message>
        <source>Call me by a &amp;notice of the desktop too</source>
        <translation>Auch mit einer &amp;Meldung des Desktops rufen</translation>
    </message>
    <message>
        <source>With a &amp;sound</source>
        <translation>Mit &amp;Ton</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>as the desktop&apos;s region: %1</source>
        <translation>wie die Region des Desktops: %1</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Published by</source>
        <translation>Herausgegeben von</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>yours, or that of the paper</source>
        <translation>Ihr Name oder der einer Zeitschrift</translation>
    </message>
    <message>
        <source>Lice&amp;nce of the text</source>
        <translation>Li&amp;zenz des Textes</translation>
    </message>
    <message>
        <source>such as CC BY 4.0</source>
        <translation>etwa CC BY 4.0</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>&amp;Titel</translation>
    </message>
    <message>
        <source>in place of the report&apos;s own</source>
        <translation>anstelle des eigenen des Berichts</translation>
    </message>
    <message>
        <source>a paragraph before the answers</source>
        <translation>ein Absatz vor den Antworten</translation>
    </message>
    <message>
        <source>&amp;Introduction</source>
        <translation>&amp;Einleitung</translation>
    </message>
    <message>
        <source>These are kept in the logbook, into which another program records. They can be changed when that has ended.</source>
        <translation>Diese liegen im Logbuch, in das ein anderes Programm aufzeichnet. Sie lassen sich ändern, wenn das beendet ist.</translation>
    </message>
    <message>
        <source>These are kept in the logbook. Name and licence are proposed for other logbooks too.</source>
        <translation>Diese liegen im Logbuch. Name und Lizenz werden auch für andere Logbücher vorgeschlagen.</translation>
    </message>
    <message>
        <source>Name and licence are proposed for every logbook. Title and introduction are kept in a logbook: open one.</source>
        <translation>Name und Lizenz werden für jedes Logbuch vorgeschlagen. Titel und Einleitung liegen in einem Logbuch: öffnen Sie eines.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Ordner</translation>
    </message>
    <message>
        <source>beside each logbook</source>
        <translation>neben jedem Logbuch</translation>
    </message>
    <message>
        <source>Choo&amp;se folder…</source>
        <translation>Ordner wä&amp;hlen…</translation>
    </message>
    <message>
        <source>&amp;Keep for days</source>
        <translation>&amp;Tage behalten</translation>
    </message>
    <message>
        <source>1 to 3650</source>
        <translation>1 bis 3650</translation>
    </message>
    <message>
        <source>Older copies are removed. A folder on another disk also helps when this disk fails.</source>
        <translation>Ältere Kopien werden entfernt. Ein Ordner auf einem anderen Datenträger hilft auch, wenn dieser ausfällt.</translation>
    </message>
    <message>
        <source>Name the folder from the root on, such as /media/disk/copies, or leave the field empty.</source>
        <translation>Nennen Sie den Ordner ab der Wurzel, etwa /media/disk/copies, oder lassen Sie das Feld leer.</translation>
    </message>
    <message>
        <source>There is no such folder. Make it, or choose another.</source>
        <translation>Es gibt keinen solchen Ordner. Legen Sie ihn an oder wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Nothing can be written into this folder. Choose another.</source>
        <translation>In diesen Ordner lässt sich nichts schreiben. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Enter for how many days a copy is kept, such as 30.</source>
        <translation>Tragen Sie ein, wie viele Tage eine Kopie behalten wird, etwa 30.</translation>
    </message>
    <message>
        <source>Make a &amp;copy of each logbook automatically</source>
        <translation>Automatisch eine &amp;Kopie jedes Logbuchs machen</translation>
    </message>
</context>
<context>
    <name>ullage::SizingForm</name>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Days without sun</source>
        <translation>Tage ohne Sonne</translation>
    </message>
    <message>
        <source> d</source>
        <translation> d</translation>
    </message>
    <message>
        <source>Days of autonomy: how long the units are to carry the list alone</source>
        <translation>Autonomietage: wie lange die Speicher die Liste allein tragen sollen</translation>
    </message>
    <message>
        <source>Units in the chart</source>
        <translation>Speicher im Diagramm</translation>
    </message>
    <message>
        <source>Units side by side in the chart of the charge</source>
        <translation>Speicher nebeneinander im Diagramm des Ladezustands</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>Peak-sun hours</source>
        <translation>Vollsonnenstunden</translation>
    </message>
    <message>
        <source> h/d</source>
        <translation> h/d</translation>
    </message>
    <message>
        <source>Hours a day at 1 kW/m² on the module plane, in the worst month that counts</source>
        <translation>Stunden am Tag mit 1 kW/m² auf der Modulebene, im schlechtesten Monat, der zählt</translation>
    </message>
    <message>
        <source>Derating</source>
        <translation>Minderungsfaktor</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>What is left of the array&apos;s label at the battery: heat, dust, wiring, charging</source>
        <translation>Was vom Nennwert des Generators an der Batterie bleibt: Wärme, Staub, Leitungen, Laden</translation>
    </message>
    <message>
        <source>Array to load</source>
        <translation>Generator zu Last</translation>
    </message>
    <message>
        <source>Array energy over daily load: 1.1 to 1.2 for ordinary loads, 1.3 and more for critical ones</source>
        <translation>Generatorenergie durch Tageslast: 1,1 bis 1,2 für gewöhnliche Lasten, 1,3 und mehr für kritische</translation>
    </message>
    <message>
        <source>Array there is</source>
        <translation>Vorhandener Generator</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>Left at –, the array is the one that the rule asks for</source>
        <translation>Bleibt es bei –, gilt der Generator, den die Regel verlangt</translation>
    </message>
    <message>
        <source>Untested units, at the socket</source>
        <translation>Ungetestete Speicher, an der Steckdose</translation>
    </message>
    <message>
        <source>Expected from</source>
        <translation>Erwartet von</translation>
    </message>
    <message>
        <source> % of rated</source>
        <translation> % der Nennenergie</translation>
    </message>
    <message>
        <source>Common practice: 75 to 80 %</source>
        <translation>Übliche Praxis: 75 bis 80 %</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Battery by rule, a cross-check</source>
        <translation>Batterie nach Regel, eine Gegenprobe</translation>
    </message>
    <message>
        <source>Inverter efficiency</source>
        <translation>Wirkungsgrad des Wechselrichters</translation>
    </message>
    <message>
        <source>Deepest discharge</source>
        <translation>Größte Entladetiefe</translation>
    </message>
    <message>
        <source>Left at end of life</source>
        <translation>Rest am Lebensende</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Zuschlag</translation>
    </message>
    <message>
        <source>1.10 to 1.25 (IEEE 1013)</source>
        <translation>1,10 bis 1,25 (IEEE 1013)</translation>
    </message>
    <message>
        <source>Temperature factor</source>
        <translation>Temperaturfaktor</translation>
    </message>
    <message>
        <source>1 for lithium with thermal control; lead-acid in the cold more</source>
        <translation>1 für Lithium mit Temperaturregelung; Bleibatterien in der Kälte mehr</translation>
    </message>
    <message>
        <source>Peak-sun hours by month, h/d</source>
        <translation>Vollsonnenstunden nach Monat, h/d</translation>
    </message>
    <message>
        <source>Peak-sun hours in %1</source>
        <translation>Vollsonnenstunden im %1</translation>
    </message>
</context>
<context>
    <name>ullage::SizingPage</name>
    <message>
        <source>Make report</source>
        <translation>Bericht erstellen</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>units for the load list</source>
        <translation>Speicher für die Lastliste</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>PV-Generator und Batterie nach Regel</translation>
    </message>
    <message>
        <source>PV array by month</source>
        <translation>PV-Generator nach Monat</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Auslegung</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Lastliste</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Lastlisten</translation>
    </message>
    <message>
        <source>Type the peak-sun hours of the months at the left to see what the array brings in each.</source>
        <translation>Tippen Sie links die Vollsonnenstunden der Monate ein, um zu sehen, was der Generator in jedem bringt.</translation>
    </message>
    <message>
        <source>No load list yet. Add one under Edit, Load lists, with what is to run and for how long; this page then says how long each unit carries it, how many are needed, and which PV array.</source>
        <translation>Noch keine Lastliste. Legen Sie unter Bearbeiten, Lastlisten eine an, mit dem, was laufen soll und wie lange; diese Seite sagt dann, wie lange jeder Speicher sie trägt, wie viele es braucht und welchen PV-Generator.</translation>
    </message>
    <message>
        <source>%1 takes %2 Wh a day, %3 W when all of it runs, %4 W at most.</source>
        <translation>%1 nimmt %2 Wh am Tag auf, %3 W, wenn alles läuft, höchstens %4 W.</translation>
    </message>
    <message>
        <source>Sizing %1 units</source>
        <translation>%1 Speicher werden ausgelegt</translation>
    </message>
    <message>
        <source>Sizing %1 units…</source>
        <translation>%1 Speicher werden ausgelegt…</translation>
    </message>
</context>
<context>
    <name>ullage::SourceForm</name>
    <message>
        <source>Modbus TCP</source>
        <translation>Modbus TCP</translation>
    </message>
    <message>
        <source>Modbus RTU, serial line</source>
        <translation>Modbus RTU, serielle Schnittstelle</translation>
    </message>
    <message>
        <source>MQTT 3.1.1, by a broker</source>
        <translation>MQTT 3.1.1, über einen Broker</translation>
    </message>
    <message>
        <source>HTTP, JSON</source>
        <translation>HTTP, JSON</translation>
    </message>
    <message>
        <source>Lines of text, serial line</source>
        <translation>Textzeilen, serielle Schnittstelle</translation>
    </message>
    <message>
        <source>IEC 62056-21 read-out, serial line</source>
        <translation>Auslesung nach IEC 62056-21, seriell</translation>
    </message>
    <message>
        <source>SCPI over TCP</source>
        <translation>SCPI über TCP</translation>
    </message>
    <message>
        <source>SCPI, serial line</source>
        <translation>SCPI, serielle Schnittstelle</translation>
    </message>
    <message>
        <source>Read %1 live</source>
        <translation>%1 live lesen</translation>
    </message>
    <message>
        <source>Use this source</source>
        <translation>Quelle übernehmen</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>not read live</source>
        <translation>nicht live gelesen</translation>
    </message>
    <message>
        <source>The program only reads, and contacts no other address. Meters in mains circuits are installed by licensed people; local codes come first. The logbook never holds a password. Help, Meters read live tells what may stand here.</source>
        <translation>Das Programm liest nur und spricht keine andere Adresse an. Zähler in Netzstromkreisen setzen zugelassene Fachkräfte ein; örtliche Vorschriften haben Vorrang. Das Logbuch enthält nie ein Passwort. Hilfe, Zähler live lesen sagt, was hier stehen kann.</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>A&amp;dresse</translation>
    </message>
    <message>
        <source>&amp;Station</source>
        <translation>&amp;Station</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Leitung</translation>
    </message>
    <message>
        <source>9600 8N1</source>
        <translation>9600 8N1</translation>
    </message>
    <message>
        <source>What is &amp;read</source>
        <translation>Was &amp;gelesen wird</translation>
    </message>
    <message>
        <source>&amp;Every</source>
        <translation>&amp;Takt</translation>
    </message>
    <message>
        <source>1 s</source>
        <translation>1 s</translation>
    </message>
    <message>
        <source>U&amp;ser</source>
        <translation>&amp;Benutzer</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>&amp;Passwort</translation>
    </message>
    <message>
        <source>for Try; not kept</source>
        <translation>für Probieren; nicht behalten</translation>
    </message>
    <message>
        <source>For&amp;get the kept password</source>
        <translation>Behaltenes Passwort &amp;vergessen</translation>
    </message>
    <message>
        <source>se&amp;cured (TLS)</source>
        <translation>gesi&amp;chert (TLS)</translation>
    </message>
    <message>
        <source>&amp;Try</source>
        <translation>P&amp;robieren</translation>
    </message>
    <message>
        <source>What comes</source>
        <translation>Was kommt</translation>
    </message>
    <message>
        <source>Enter where the meter is.</source>
        <translation>Tragen Sie ein, wo der Zähler ist.</translation>
    </message>
    <message>
        <source>nothing has come from this source yet: Try shows whether it can be read</source>
        <translation>von dieser Quelle ist noch nichts gekommen: Probieren zeigt, ob sie sich lesen lässt</translation>
    </message>
    <message>
        <source>kept by the desktop</source>
        <translation>vom Desktop behalten</translation>
    </message>
</context>
<context>
    <name>ullage::SpokenChart</name>
    <message>
        <source>Curve without a name</source>
        <translation>Kurve ohne Namen</translation>
    </message>
    <message>
        <source>%1: nothing known.</source>
        <translation>%1: nichts bekannt.</translation>
    </message>
    <message>
        <source>%1: one point, %2 at %3.</source>
        <translation>%1: ein Punkt, %2 bei %3.</translation>
    </message>
    <message>
        <source>%1: %2 points, from %3 at %4 to %5 at %6; lowest %7, highest %8.</source>
        <translation>%1: %2 Punkte, von %3 bei %4 bis %5 bei %6; niedrigster Wert %7, höchster %8.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Und %1 weitere.</translation>
    </message>
    <message>
        <source>Of %1.</source>
        <translation>Zu %1.</translation>
    </message>
    <message>
        <source>Line at %1: %2.</source>
        <translation>Linie bei %1: %2.</translation>
    </message>
    <message>
        <source>Band from %1 to %2: %3.</source>
        <translation>Band von %1 bis %2: %3.</translation>
    </message>
    <message>
        <source>From %1 to %2: %3.</source>
        <translation>Von %1 bis %2: %3.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3.</source>
        <translation>%1: %2, %3.</translation>
    </message>
    <message>
        <source>%1: %2 delivered, %3.</source>
        <translation>%1: %2 abgegeben, %3.</translation>
    </message>
</context>
<context>
    <name>ullage::StartForm</name>
    <message>
        <source>&amp;Drain</source>
        <translation>&amp;Entladung</translation>
    </message>
    <message>
        <source>From full to cut-off through a load: the usable fraction, and whether the gauge is right.</source>
        <translation>Von voll bis Abschaltung über eine Last: der nutzbare Anteil und ob die Ladeanzeige stimmt.</translation>
    </message>
    <message>
        <source>&amp;No-load drain</source>
        <translation>&amp;Leerlaufentladung</translation>
    </message>
    <message>
        <source>Output on, nothing connected: what the unit consumes by itself. It takes days; few readings do.</source>
        <translation>Ausgang ein, nichts angeschlossen: was der Speicher selbst verbraucht. Das dauert Tage; wenige Ablesungen genügen.</translation>
    </message>
    <message>
        <source>nothing connected</source>
        <translation>nichts angeschlossen</translation>
    </message>
    <message>
        <source>&amp;Charge</source>
        <translation>La&amp;dung</translation>
    </message>
    <message>
        <source>From empty to full: how long it takes, and with the meter before the charger what goes in.</source>
        <translation>Von leer bis voll: wie lange es dauert und, mit dem Zähler vor dem Ladegerät, was hineingeht.</translation>
    </message>
    <message>
        <source>&amp;Sustained output</source>
        <translation>Da&amp;uerleistung</translation>
    </message>
    <message>
        <source>A load at the rated output: whether the unit carries it, and for how long.</source>
        <translation>Eine Last in Höhe der Nennleistung: ob der Speicher sie trägt und wie lange.</translation>
    </message>
    <message>
        <source>&amp;Peak output</source>
        <translation>S&amp;pitzenleistung</translation>
    </message>
    <message>
        <source>A short load above the rated output: whether the unit starts it. Mark each trip.</source>
        <translation>Eine kurze Last über der Nennleistung: ob der Speicher sie anlaufen lässt. Setzen Sie zu jeder Auslösung eine Marke.</translation>
    </message>
    <message>
        <source>Stand&amp;by</source>
        <translation>Stand&amp;by</translation>
    </message>
    <message>
        <source>Output off, left alone: what the unit loses by itself over days. Read the gauge now and then; charge it afterwards.</source>
        <translation>Ausgang aus, in Ruhe gelassen: was der Speicher über Tage von selbst verliert. Lesen Sie die Ladeanzeige ab und zu ab; laden Sie ihn danach.</translation>
    </message>
    <message>
        <source>output off, nothing connected</source>
        <translation>Ausgang aus, nichts angeschlossen</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Lauf starten</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>Spei&amp;cher</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Zähler</translation>
    </message>
    <message>
        <source>Second &amp;meter</source>
        <translation>Z&amp;weiter Zähler</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>L&amp;ast</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>&amp;Voll gestartet</translation>
    </message>
    <message>
        <source>Char&amp;ged from</source>
        <translation>Gelade&amp;n über</translation>
    </message>
    <message>
        <source>Gauge st&amp;ep</source>
        <translation>Anzeigesch&amp;ritt</translation>
    </message>
    <message>
        <source>1 %, the smallest step that the gauge shows</source>
        <translation>1 %, der kleinste Schritt, den die Ladeanzeige zeigt</translation>
    </message>
    <message>
        <source>First &amp;reading</source>
        <translation>Er&amp;ste Ablesung</translation>
    </message>
    <message>
        <source>gauge, %</source>
        <translation>Ladeanzeige, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>Zählwerk, Wh</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>Watt</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>Leer für jetzt; sonst 02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>Its second register</source>
        <translation>Zweites Zählwerk</translation>
    </message>
    <message>
        <source>Wh, what the second meter shows</source>
        <translation>Wh, was der zweite Zähler zeigt</translation>
    </message>
    <message>
        <source>Remind me to read</source>
        <translation>Ans Ablesen erinnern</translation>
    </message>
    <message>
        <source>every</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>when the gauge is down by</source>
        <translation>wenn die Ladeanzeige gefallen ist um</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>before the cut-off</source>
        <translation>vor der Abschaltung</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature</source>
        <translation>Um&amp;gebungstemperatur</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>Zei&amp;tzone</translation>
    </message>
    <message>
        <source>One in series, whose register you note too</source>
        <translation>Einer in Reihe, dessen Zählwerk Sie auch notieren</translation>
    </message>
    <message>
        <source>As the last run of this unit: %1</source>
        <translation>Wie der letzte Lauf dieses Speichers: %1</translation>
    </message>
    <message>
        <source>Without a meter the register has no error limit, and no result an interval.</source>
        <translation>Ohne Zähler hat das Zählwerk keine Fehlergrenze und kein Ergebnis ein Intervall.</translation>
    </message>
    <message>
        <source>The rated energy of the unit is not stated: no share of it can be told.</source>
        <translation>Die Nennenergie des Speichers ist nicht angegeben: ein Anteil davon lässt sich nicht nennen.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Before you start&lt;/b&gt;</source>
        <translation>&lt;b&gt;Bevor Sie starten&lt;/b&gt;</translation>
    </message>
    <message>
        <source>the charger or the panels, in your words</source>
        <translation>das Ladegerät oder die Module, in Ihren Worten</translation>
    </message>
    <message>
        <source>what is plugged in, in your words</source>
        <translation>was angeschlossen ist, in Ihren Worten</translation>
    </message>
    <message>
        <source>The second meter is the first one; choose another, or none.</source>
        <translation>Der zweite Zähler ist der erste; wählen Sie einen anderen oder keinen.</translation>
    </message>
    <message>
        <source>No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC.</source>
        <translation>Eine solche Zeitzone ist hier nicht bekannt; wählen Sie Region und Ort, etwa Africa/Nairobi, oder UTC.</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
</context>
<context>
    <name>ullage::TableController</name>
    <message>
        <source>Import table of readings</source>
        <translation>Tabelle mit Ablesungen importieren</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
    <message>
        <source>The clipboard holds no table; copy the cells with their head, in a spreadsheet or on a page, first.</source>
        <translation>Die Zwischenablage enthält keine Tabelle; kopieren Sie zuerst die Zellen mit ihrer Kopfzeile, in einer Tabellenkalkulation oder auf einer Seite.</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Messplatz</translation>
    </message>
    <message>
        <source>New logbook for this table</source>
        <translation>Neues Logbuch für diese Tabelle</translation>
    </message>
    <message>
        <source>run %1 of %2 has the same readings already</source>
        <translation>Lauf %1 von %2 hat schon dieselben Ablesungen</translation>
    </message>
    <message>
        <source>Importing %1</source>
        <translation>%1 wird importiert</translation>
    </message>
    <message>
        <source>The pasted table</source>
        <translation>Die eingefügte Tabelle</translation>
    </message>
    <message>
        <source>%1: 1 row was left out.</source>
        <translation>%1: 1 Zeile wurde ausgelassen.</translation>
    </message>
    <message>
        <source>%1: %2 rows were left out.</source>
        <translation>%1: %2 Zeilen wurden ausgelassen.</translation>
    </message>
</context>
<context>
    <name>ullage::TableCopy</name>
    <message>
        <source>Copying the table</source>
        <translation>Tabelle wird kopiert</translation>
    </message>
</context>
<context>
    <name>ullage::TableForm</name>
    <message>
        <source>Import table %1</source>
        <translation>Tabelle importieren: %1</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Blatt</translation>
    </message>
    <message>
        <source>&amp;Run shown</source>
        <translation>Gezeigter &amp;Lauf</translation>
    </message>
    <message>
        <source>D&amp;ates begin with</source>
        <translation>Datum beg&amp;innt mit</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>dem Tag</translation>
    </message>
    <message>
        <source>the month</source>
        <translation>dem Monat</translation>
    </message>
    <message>
        <source>&amp;Decimal sign</source>
        <translation>&amp;Dezimalzeichen</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>Re&amp;gister in</source>
        <translation>Zählwe&amp;rk in</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>wählen…</translation>
    </message>
    <message>
        <source>Times count in</source>
        <translation>Zeiten zählen in</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>A gauge of 0.69 is</source>
        <translation>Ladeanzeige 0,69 bedeutet</translation>
    </message>
    <message>
        <source>69 %</source>
        <translation>69 %</translation>
    </message>
    <message>
        <source>0.69 %</source>
        <translation>0,69 %</translation>
    </message>
    <message>
        <source>&amp;Times such as 2:40 are</source>
        <translation>Zei&amp;ten wie 2:40 sind</translation>
    </message>
    <message>
        <source>the time of day</source>
        <translation>die Uhrzeit</translation>
    </message>
    <message>
        <source>counted from the start</source>
        <translation>ab dem Start gezählt</translation>
    </message>
    <message>
        <source>Behind the empty row is</source>
        <translation>Nach der Leerzeile kommt</translation>
    </message>
    <message>
        <source>another run</source>
        <translation>ein anderer Lauf</translation>
    </message>
    <message>
        <source>the same run</source>
        <translation>derselbe Lauf</translation>
    </message>
    <message>
        <source>Keep rows as</source>
        <translation>Zeilen behalten als</translation>
    </message>
    <message>
        <source>the log of a meter</source>
        <translation>das Log eines Zählers</translation>
    </message>
    <message>
        <source>readings noted by hand</source>
        <translation>von Hand notierte Ablesungen</translation>
    </message>
    <message>
        <source>&amp;Year of the dates</source>
        <translation>&amp;Jahr der Daten</translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation>&amp;Start</translation>
    </message>
    <message>
        <source>2026-05-14 18:00; of several runs one after the other, with ; between</source>
        <translation>2026-05-14 18:00; bei mehreren Läufen nacheinander, mit ; dazwischen</translation>
    </message>
    <message>
        <source>There is no such time zone; name one such as Europe/Berlin.</source>
        <translation>Eine solche Zeitzone gibt es nicht; nennen Sie eine wie Europe/Berlin.</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>Tabelle wird gelesen</translation>
    </message>
    <message>
        <source>Read as %1.</source>
        <translation>Gelesen als %1.</translation>
    </message>
    <message>
        <source>Its head stands in row %1.</source>
        <translation>Die Kopfzeile ist Zeile %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Columns: %1.</source>
        <translation>Spalten: %1.</translation>
    </message>
    <message>
        <source>Answered as before for a table with this head.</source>
        <translation>Beantwortet wie zuvor für eine Tabelle mit dieser Kopfzeile.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Offen: %1</translation>
    </message>
    <message>
        <source>This table cannot come in: %1</source>
        <translation>Diese Tabelle lässt sich nicht übernehmen: %1</translation>
    </message>
    <message>
        <source>1 row is left out</source>
        <translation>1 Zeile wird ausgelassen</translation>
    </message>
    <message>
        <source>%1 rows are left out</source>
        <translation>%1 Zeilen werden ausgelassen</translation>
    </message>
    <message>
        <source>1 row is taken in part</source>
        <translation>1 Zeile wird teils übernommen</translation>
    </message>
    <message>
        <source>%1 rows are taken in part</source>
        <translation>%1 Zeilen werden teils übernommen</translation>
    </message>
    <message>
        <source>Every row that holds a value is taken.</source>
        <translation>Jede Zeile, die einen Wert enthält, wird übernommen.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Ablesung</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 Ablesungen</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Lauf %1: %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>What the table does not say</source>
        <translation>Was die Tabelle nicht sagt</translation>
    </message>
    <message>
        <source>Time &amp;zone of the table</source>
        <translation>Zeitzo&amp;ne der Tabelle</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>Spei&amp;cher</translation>
    </message>
    <message>
        <source>choose one, or type the name of a new one</source>
        <translation>wählen Sie oder tippen Sie einen neuen Namen ein</translation>
    </message>
    <message>
        <source>Rated energy</source>
        <translation>Nennenergie</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Zähler</translation>
    </message>
    <message>
        <source>&amp;Second meter</source>
        <translation>Zweiter Zä&amp;hler</translation>
    </message>
    <message>
        <source>How it &amp;ended</source>
        <translation>Wie er &amp;endete</translation>
    </message>
    <message>
        <source>not known: taken as a part of the drain</source>
        <translation>unbekannt: gilt als Teil der Entladung</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>&amp;Voll gestartet</translation>
    </message>
    <message>
        <source>&amp;What it tests</source>
        <translation>&amp;Was er testet</translation>
    </message>
    <message>
        <source>L&amp;oad</source>
        <translation>L&amp;ast</translation>
    </message>
    <message>
        <source>in your words</source>
        <translation>in Ihren Worten</translation>
    </message>
    <message>
        <source>a new meter</source>
        <translation>ein neuer Zähler</translation>
    </message>
    <message>
        <source>Its &amp;name</source>
        <translation>Sein Na&amp;me</translation>
    </message>
    <message>
        <source>Its error &amp;limit, %</source>
        <translation>Seine &amp;Fehlergrenze, %</translation>
    </message>
    <message>
        <source>% of reading, or: not known</source>
        <translation>% vom Messwert, oder: unbekannt</translation>
    </message>
    <message>
        <source>Choose the meter, or say that it is not known.</source>
        <translation>Wählen Sie den Zähler oder sagen Sie, dass er unbekannt ist.</translation>
    </message>
    <message>
        <source>Give the meter a name.</source>
        <translation>Geben Sie dem Zähler einen Namen.</translation>
    </message>
    <message>
        <source>the error limit is not stated</source>
        <translation>die Fehlergrenze ist nicht angegeben</translation>
    </message>
    <message>
        <source>choose, for the runs whose notes do not say it…</source>
        <translation>wählen, für die Läufe, deren Notizen es nicht sagen…</translation>
    </message>
    <message>
        <source>Wh, or: not known</source>
        <translation>Wh, oder: unbekannt</translation>
    </message>
    <message>
        <source>rated energy of %1, Wh</source>
        <translation>Nennenergie von %1, Wh</translation>
    </message>
    <message>
        <source>Choose the role of the column above its cells: %1.</source>
        <translation>Wählen Sie die Rolle der Spalte über ihren Zellen: %1.</translation>
    </message>
    <message>
        <source>Choose the unit, or type the name of a new one.</source>
        <translation>Wählen Sie den Speicher oder tippen Sie den Namen eines neuen ein.</translation>
    </message>
    <message>
        <source>the rated energy of %1 is not stated</source>
        <translation>die Nennenergie von %1 ist nicht angegeben</translation>
    </message>
    <message>
        <source>Say how it ended, or that it is not known.</source>
        <translation>Sagen Sie, wie er endete, oder dass es unbekannt ist.</translation>
    </message>
    <message>
        <source>%1:</source>
        <translation>%1:</translation>
    </message>
</context>
<context>
    <name>ullage::TreeRowDelegate</name>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
</context>
<context>
    <name>ullage::UnitComparer</name>
    <message>
        <source>The units could not be compared: %1.</source>
        <translation>Die Speicher ließen sich nicht vergleichen: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitFitView</name>
    <message>
        <source>What all drains say together</source>
        <translation>Was alle Entladungen zusammen sagen</translation>
    </message>
    <message>
        <source>Charts of the unit</source>
        <translation>Diagramme des Speichers</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Nutzbarer Anteil</translation>
    </message>
    <message>
        <source>Run time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Anzeigefehler</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>Leerlaufaufnahme</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>Energie vor Eigenverbrauch</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>Leerlaufdauer</translation>
    </message>
    <message>
        <source>Deliverable energy</source>
        <translation>Abgebbare Energie</translation>
    </message>
    <message>
        <source>run %1, %2 (%3)</source>
        <translation>Lauf %1, %2 (%3)</translation>
    </message>
    <message>
        <source>Not used here: %1.</source>
        <translation>Hier nicht benutzt: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitForm</name>
    <message>
        <source>Add unit</source>
        <translation>Speicher anlegen</translation>
    </message>
    <message>
        <source>Claims of %1</source>
        <translation>Angaben zu %1</translation>
    </message>
    <message>
        <source>Save claims</source>
        <translation>Angaben speichern</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>as printed on the case</source>
        <translation>wie auf dem Gehäuse gedruckt</translation>
    </message>
    <message>
        <source>Rated &amp;energy</source>
        <translation>Nennener&amp;gie</translation>
    </message>
    <message>
        <source>1200 Wh or 1.2 kWh</source>
        <translation>1200 Wh oder 1,2 kWh</translation>
    </message>
    <message>
        <source>Rated &amp;output</source>
        <translation>Nenn&amp;leistung</translation>
    </message>
    <message>
        <source>600 W</source>
        <translation>600 W</translation>
    </message>
    <message>
        <source>&amp;Gauge step</source>
        <translation>Anzeigesch&amp;ritt</translation>
    </message>
    <message>
        <source>1 %, the smallest step that the gauge shows</source>
        <translation>1 %, der kleinste Schritt, den die Ladeanzeige zeigt</translation>
    </message>
    <message>
        <source>Maker and model, further claims, limits of the PV input, the unit at hand</source>
        <translation>Hersteller und Modell, weitere Angaben, Grenzen des PV-Eingangs, dieses Exemplar</translation>
    </message>
    <message>
        <source>&amp;Maker</source>
        <translation>&amp;Hersteller</translation>
    </message>
    <message>
        <source>Mode&amp;l</source>
        <translation>&amp;Modell</translation>
    </message>
    <message>
        <source>the same for every specimen of it</source>
        <translation>dasselbe für jedes Exemplar davon</translation>
    </message>
    <message>
        <source>What the maker claims further</source>
        <translation>Was der Hersteller noch angibt</translation>
    </message>
    <message>
        <source>&amp;Peak output</source>
        <translation>S&amp;pitzenleistung</translation>
    </message>
    <message>
        <source>1200 W</source>
        <translation>1200 W</translation>
    </message>
    <message>
        <source>List p&amp;rice</source>
        <translation>L&amp;istenpreis</translation>
    </message>
    <message>
        <source>799</source>
        <translation>799</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>&amp;Währung</translation>
    </message>
    <message>
        <source>three letters, such as EUR</source>
        <translation>drei Buchstaben, etwa EUR</translation>
    </message>
    <message>
        <source>M&amp;ass</source>
        <translation>M&amp;asse</translation>
    </message>
    <message>
        <source>12.4 kg</source>
        <translation>12,4 kg</translation>
    </message>
    <message>
        <source>&amp;Warranty</source>
        <translation>Garan&amp;tie</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 a</translation>
    </message>
    <message>
        <source>C&amp;harge time</source>
        <translation>La&amp;dezeit</translation>
    </message>
    <message>
        <source>1.5 h, from cut-off to full, from the wall</source>
        <translation>1,5 h, von Abschaltung bis voll, vom Netz</translation>
    </message>
    <message>
        <source>Limits of the PV input</source>
        <translation>Grenzen des PV-Eingangs</translation>
    </message>
    <message>
        <source>&amp;Voltage</source>
        <translation>&amp;Spannung</translation>
    </message>
    <message>
        <source>60 V</source>
        <translation>60 V</translation>
    </message>
    <message>
        <source>C&amp;urrent</source>
        <translation>Str&amp;om</translation>
    </message>
    <message>
        <source>12 A</source>
        <translation>12 A</translation>
    </message>
    <message>
        <source>Po&amp;wer</source>
        <translation>Leist&amp;ung</translation>
    </message>
    <message>
        <source>500 W</source>
        <translation>500 W</translation>
    </message>
    <message>
        <source>&amp;Start voltage</source>
        <translation>Anlau&amp;fspannung</translation>
    </message>
    <message>
        <source>12 V, the lowest at which the input works</source>
        <translation>12 V, ab der der Eingang arbeitet</translation>
    </message>
    <message>
        <source>Short c&amp;ircuit</source>
        <translation>&amp;Kurzschluss</translation>
    </message>
    <message>
        <source>15 A, the current that the input withstands</source>
        <translation>15 A, der Strom, den der Eingang aushält</translation>
    </message>
    <message>
        <source>The unit at hand</source>
        <translation>Dieses Exemplar</translation>
    </message>
    <message>
        <source>Serial &amp;number</source>
        <translation>S&amp;eriennummer</translation>
    </message>
    <message>
        <source>Cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>their chemistry, such as LFP</source>
        <translation>ihre Chemie, etwa LFP</translation>
    </message>
    <message>
        <source>Purchased</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>2027-02-28</source>
        <translation>2027-02-28</translation>
    </message>
    <message>
        <source>Cycles before</source>
        <translation>Zyklen davor</translation>
    </message>
    <message>
        <source>full charges before its first run here</source>
        <translation>volle Ladungen vor seinem ersten Lauf hier</translation>
    </message>
    <message>
        <source>Price pai&amp;d</source>
        <translation>Ge&amp;zahlter Preis</translation>
    </message>
    <message>
        <source>for this one, in the same currency</source>
        <translation>für diesen, in derselben Währung</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>S&amp;chlagwörter</translation>
    </message>
    <message>
        <source>short words to find units by, such as: lent; tent</source>
        <translation>kurze Worte, etwa: verliehen; Zelt</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>&amp;Bemerkung</translation>
    </message>
    <message>
        <source>The unit needs a name, by which lists and sheets call it.</source>
        <translation>Der Speicher braucht einen Namen, unter dem Listen und Blätter ihn nennen.</translation>
    </message>
    <message>
        <source>Write the day like 2027-02-28: year, month, day.</source>
        <translation>Schreiben Sie den Tag wie 2027-02-28: Jahr, Monat, Tag.</translation>
    </message>
    <message>
        <source>The short-circuit current must not lie below the current limit.</source>
        <translation>Der Kurzschlussstrom darf nicht unter der Stromgrenze liegen.</translation>
    </message>
    <message>
        <source>The start voltage must lie below the voltage limit.</source>
        <translation>Die Anlaufspannung muss unter der Spannungsgrenze liegen.</translation>
    </message>
    <message>
        <source>A gauge step of more than 50 % shows nothing; enter what the gauge counts by.</source>
        <translation>Ein Anzeigeschritt über 50 % zeigt nichts; tragen Sie ein, in welchen Schritten die Ladeanzeige zählt.</translation>
    </message>
    <message>
        <source>Enter the currency&apos;s three letters (ISO 4217), such as EUR or KES.</source>
        <translation>Tragen Sie die drei Buchstaben der Währung ein (ISO 4217), etwa EUR oder KES.</translation>
    </message>
    <message>
        <source>The price needs a currency: three letters (ISO 4217), such as EUR.</source>
        <translation>Der Preis braucht eine Währung: drei Buchstaben (ISO 4217), etwa EUR.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitPage</name>
    <message>
        <source>Import run sheet</source>
        <translation>Laufblatt importieren</translation>
    </message>
    <message>
        <source>Edit claims</source>
        <translation>Angaben ändern</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Bericht erstellen</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Lauf starten</translation>
    </message>
    <message>
        <source>What the maker claims</source>
        <translation>Was der Hersteller angibt</translation>
    </message>
    <message>
        <source>runs of this unit</source>
        <translation>Läufe dieses Speichers</translation>
    </message>
    <message>
        <source>No runs yet. With the unit full and the meter between its socket and the load, choose Start run; a run noted elsewhere comes in with Import run sheet.</source>
        <translation>Noch keine Läufe. Ist der Speicher voll und der Zähler zwischen seiner Steckdose und der Last, wählen Sie Lauf starten; ein anderswo notierter Lauf kommt mit Laufblatt importieren herein.</translation>
    </message>
    <message>
        <source>Runs, and claims tested</source>
        <translation>Läufe und getestete Angaben</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Claims tested</source>
        <translation>Getestete Angaben</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Vessel of %1</source>
        <translation>Füllbild von %1</translation>
    </message>
    <message>
        <source>No rated energy is stated, so there is nothing to fill.</source>
        <translation>Es ist keine Nennenergie angegeben, es gibt also nichts zu füllen.</translation>
    </message>
    <message>
        <source>Empty until a drain has been noted.</source>
        <translation>Leer, bis eine Entladung notiert ist.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitReportForm</name>
    <message>
        <source>For readers: the answer first, then claims, every drain, the gauge, and what it is based on. Tags, prices paid and remarks stay out of it. Numbers have the decimal sign of your system.</source>
        <translation>Für Leser: zuerst die Antwort, dann Angaben, jede Entladung, die Ladeanzeige und worauf es beruht. Schlagwörter, gezahlte Preise und Bemerkungen bleiben draußen. Zahlen haben das Dezimalzeichen Ihres Systems.</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>whole, with what it is based on</source>
        <translation>ganz, mit dem, worauf es beruht</translation>
    </message>
    <message>
        <source>short, two pages</source>
        <translation>kurz, zwei Seiten</translation>
    </message>
    <message>
        <source>Sections of the whole report</source>
        <translation>Abschnitte des ganzen Berichts</translation>
    </message>
    <message>
        <source>Photos as evidence</source>
        <translation>Fotos als Beleg</translation>
    </message>
    <message>
        <source>Published by, kept in the logbook</source>
        <translation>Herausgegeben von, im Logbuch behalten</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>yours, or that of the paper</source>
        <translation>Ihr Name oder der einer Zeitschrift</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>&amp;Titel</translation>
    </message>
    <message>
        <source>in place of “%1: test report”</source>
        <translation>statt „%1: Testbericht“</translation>
    </message>
    <message>
        <source>name of the unit</source>
        <translation>Name des Speichers</translation>
    </message>
    <message>
        <source>&amp;Introduction</source>
        <translation>&amp;Einleitung</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>Einleitung</translation>
    </message>
    <message>
        <source>a paragraph before the answers</source>
        <translation>ein Absatz vor den Antworten</translation>
    </message>
    <message>
        <source>Lice&amp;nce of the text</source>
        <translation>Li&amp;zenz des Textes</translation>
    </message>
    <message>
        <source>such as CC BY 4.0</source>
        <translation>etwa CC BY 4.0</translation>
    </message>
</context>
<context>
    <name>ullage::UnitRunsModel</name>
    <message>
        <source>One of the drains that are taken together</source>
        <translation>Eine der Entladungen, die zusammengefasst werden</translation>
    </message>
    <message>
        <source>Not taken together with the other drains: %1</source>
        <translation>Nicht mit den anderen Entladungen zusammengefasst: %1</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>delivered Wh</source>
        <translation>abgegeben Wh</translation>
    </message>
    <message>
        <source>usable %</source>
        <translation>nutzbar %</translation>
    </message>
    <message>
        <source>mean load W</source>
        <translation>mittlere Last W</translation>
    </message>
    <message>
        <source>duration h</source>
        <translation>Dauer h</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Ladeanzeige</translation>
    </message>
</context>
<context>
    <name>ullage::UnitSizer</name>
    <message>
        <source>The units could not be sized: %1.</source>
        <translation>Die Speicher ließen sich nicht auslegen: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::VesselKey</name>
    <message>
        <source>How to read this</source>
        <translation>So lesen Sie dies</translation>
    </message>
    <message>
        <source>delivered at the socket; the bracket is the 95&#xa0;% interval</source>
        <translation>an der Steckdose abgegeben; die Klammer ist das 95-%-Intervall</translation>
    </message>
    <message>
        <source>taken by the no-load draw, where that is known</source>
        <translation>von der Leerlaufaufnahme genommen, wo sie bekannt ist</translation>
    </message>
    <message>
        <source>missing: own draw, conversion, or less than the label; one run cannot separate them</source>
        <translation>fehlt: Eigenverbrauch, Wandlung oder weniger als aufgedruckt; ein Lauf kann sie nicht trennen</translation>
    </message>
    <message>
        <source>typical at the socket (common practice, no source), 75 to 80&#xa0;% of rated</source>
        <translation>typisch an der Steckdose (übliche Praxis, ohne Quelle), 75 bis 80&#xa0;% der Nennenergie</translation>
    </message>
</context>
<context>
    <name>ullage::VesselRow</name>
    <message>
        <source>rating not known</source>
        <translation>Nennenergie unbekannt</translation>
    </message>
    <message>
        <source>rated %1 Wh</source>
        <translation>Nennenergie %1 Wh</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>delivered: %1</source>
        <translation>abgegeben: %1</translation>
    </message>
    <message>
        <source>taken by the no-load draw: %1 Wh</source>
        <translation>von der Leerlaufaufnahme genommen: %1 Wh</translation>
    </message>
</context>
<context>
    <name>ullage::ViewController</name>
    <message>
        <source>No picture is in sight here; choose a run, a unit or the comparison.</source>
        <translation>Hier ist kein Bild zu sehen; wählen Sie einen Lauf, einen Speicher oder den Vergleich.</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation>SVG (*.svg)</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Picture saved to %1.</source>
        <translation>Bild in %1 gespeichert.</translation>
    </message>
    <message>
        <source>store the reading in the entry row</source>
        <translation>Ablesung der Eingabezeile speichern</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>next or previous field</source>
        <translation>nächstes oder voriges Feld</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>clear the entry row</source>
        <translation>Eingabezeile leeren</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>answer a doubt: as meant, keep, correct, reset, swapped</source>
        <translation>auf einen Zweifel antworten: wie gemeint, behalten, korrigieren, Reset, getauscht</translation>
    </message>
    <message>
        <source>M, K, C, Z, W</source>
        <translation>M, K, C, Z, W</translation>
    </message>
    <message>
        <source>bench display: take the reading of that card; dim; leave</source>
        <translation>Großanzeige: Ablesung dieser Karte eintragen; dimmen; verlassen</translation>
    </message>
    <message>
        <source>1 to 9; N; Esc</source>
        <translation>1 bis 9; N; Esc</translation>
    </message>
    <message>
        <source>copy the chosen rows of the readings or the comparison for a spreadsheet</source>
        <translation>gewählte Zeilen der Ablesungen oder des Vergleichs für eine Tabellenkalkulation kopieren</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <translation>Strg+C</translation>
    </message>
    <message>
        <source>open, withdraw the chosen photo</source>
        <translation>gewähltes Foto öffnen, zurückziehen</translation>
    </message>
    <message>
        <source>Enter, Delete</source>
        <translation>Enter, Entf</translation>
    </message>
    <message>
        <source>take the time of a photo that waits for the reading</source>
        <translation>Zeit eines Fotos übernehmen, das auf die Ablesung wartet</translation>
    </message>
    <message>
        <source>Alt+T</source>
        <translation>Alt+T</translation>
    </message>
    <message>
        <source>Keys and words</source>
        <translation>Tasten und Begriffe</translation>
    </message>
    <message>
        <source>Worked example</source>
        <translation>Rechenbeispiel</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>About Ullage</source>
        <translation>Über Ullage</translation>
    </message>
</context>
<context>
    <name>ullage::WaitingPhotos</name>
    <message>
        <source>Photos for the next reading</source>
        <translation>Fotos zur nächsten Ablesung</translation>
    </message>
    <message>
        <source>This photo goes with the next reading.</source>
        <translation>Dieses Foto gehört zur nächsten Ablesung.</translation>
    </message>
    <message>
        <source>These photos go with the next reading.</source>
        <translation>Diese Fotos gehören zur nächsten Ablesung.</translation>
    </message>
    <message>
        <source>Taken %1.</source>
        <translation>Aufgenommen %1.</translation>
    </message>
    <message>
        <source>Use the photo&apos;s &amp;time, %1</source>
        <translation>Fotozei&amp;t übernehmen, %1</translation>
    </message>
</context>
<context>
    <name>ullage::WelcomePage</name>
    <message>
        <source>Open the sample</source>
        <translation>Beispiel öffnen</translation>
    </message>
    <message>
        <source>A finished logbook of invented units. Look round and change what you like: it is a copy of your own.</source>
        <translation>Ein fertiges Logbuch mit erfundenen Speichern. Sehen Sie sich um und ändern Sie, was Sie möchten: es ist Ihre eigene Kopie.</translation>
    </message>
    <message>
        <source>Open the sample logbook</source>
        <translation>Beispiellogbuch öffnen</translation>
    </message>
    <message>
        <source>Guided first run</source>
        <translation>Geführter erster Lauf</translation>
    </message>
    <message>
        <source>One test from the unit to its result, in the forms that you will use. The guide says the next step, and you may leave it at any time.</source>
        <translation>Ein Test vom Speicher bis zum Ergebnis, in den Formularen, die Sie benutzen werden. Die Anleitung sagt den nächsten Schritt, und Sie können sie jederzeit verlassen.</translation>
    </message>
    <message>
        <source>Begin the guided run</source>
        <translation>Geführten Lauf beginnen</translation>
    </message>
    <message>
        <source>Begin yourself</source>
        <translation>Selbst beginnen</translation>
    </message>
    <message>
        <source>Write down what the maker claims of the unit, and what the meter&apos;s data sheet says of its error.</source>
        <translation>Schreiben Sie auf, was der Hersteller zum Speicher angibt und was das Datenblatt des Zählers über seinen Fehler sagt.</translation>
    </message>
    <message>
        <source>Add unit</source>
        <translation>Speicher anlegen</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Zähler anlegen</translation>
    </message>
    <message>
        <source>Bring your own table</source>
        <translation>Eigene Tabelle übernehmen</translation>
    </message>
    <message>
        <source>Notes in a spreadsheet, a CSV file or copied cells. You see how each column is understood before anything is kept.</source>
        <translation>Notizen in einer Tabellenkalkulation, eine CSV-Datei oder kopierte Zellen. Sie sehen, wie jede Spalte verstanden wird, bevor etwas behalten wird.</translation>
    </message>
    <message>
        <source>Choose a table</source>
        <translation>Tabelle wählen</translation>
    </message>
    <message>
        <source>Import run sheet</source>
        <translation>Laufblatt importieren</translation>
    </message>
    <message>
        <source>Lately open</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>The job in three steps: 1. Add the unit and the meter. 2. Start a run and note readings. 3. Read the usable fraction and compare.</source>
        <translation>Die Arbeit in drei Schritten: 1. Speicher und Zähler anlegen. 2. Einen Lauf starten und Ablesungen notieren. 3. Den nutzbaren Anteil lesen und vergleichen.</translation>
    </message>
    <message>
        <source>New logbook</source>
        <translation>Neues Logbuch</translation>
    </message>
    <message>
        <source>Open logbook</source>
        <translation>Logbuch öffnen</translation>
    </message>
    <message>
        <source>This logbook is empty. Begin with the unit under test, be guided through a first run, or bring in a table that you have.</source>
        <translation>Dieses Logbuch ist leer. Beginnen Sie mit dem Speicher im Test, lassen Sie sich durch einen ersten Lauf führen oder übernehmen Sie eine vorhandene Tabelle.</translation>
    </message>
    <message>
        <source>How much of the energy printed on a battery storage unit reaches the socket, how sure is that, and can its gauge be trusted?</source>
        <translation>Wie viel der auf einen Batteriespeicher gedruckten Energie kommt an der Steckdose an, wie sicher ist das, und ist seiner Ladeanzeige zu trauen?</translation>
    </message>
    <message>
        <source>open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>This logbook is empty. The guide above says the next step.</source>
        <translation>Dieses Logbuch ist leer. Die Anleitung oben sagt den nächsten Schritt.</translation>
    </message>
</context>
<context>
    <name>ullage::WorkDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
    </message>
</context>
<context>
    <name>ullage::WrappedLabel</name>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
</context>
<context>
    <name>unit</name>
    <message>
        <source>it is a run of another unit</source>
        <translation>er ist ein Lauf eines anderen Speichers</translation>
    </message>
    <message>
        <source>state a load above 0 W</source>
        <translation>geben Sie eine Last über 0 W an</translation>
    </message>
    <message>
        <source>state a share of the time above 0 and at most 1</source>
        <translation>geben Sie einen Anteil der Zeit über 0 und bis höchstens 1 an</translation>
    </message>
    <message>
        <source>%1 W is above the rated output of %2 W</source>
        <translation>%1 W liegt über der Nennleistung von %2 W</translation>
    </message>
    <message>
        <source>%1 to %2 W</source>
        <translation>%1 bis %2 W</translation>
    </message>
    <message>
        <source>beyond the tested loads (%1)</source>
        <translation>außerhalb der getesteten Lasten (%1)</translation>
    </message>
    <message>
        <source>between the tested loads (%1)</source>
        <translation>zwischen den getesteten Lasten (%1)</translation>
    </message>
    <message>
        <source>beyond the tested loads (%1 on average, as this one, but %2 while on, this one %3 W)</source>
        <translation>außerhalb der getesteten Lasten (%1 im Mittel, wie diese, aber %2 während ein, diese %3 W)</translation>
    </message>
    <message>
        <source>a mean over drains: a single one scatters by another %1 %</source>
        <translation>ein Mittel über Entladungen: eine einzelne streut um weitere %1 %</translation>
    </message>
    <message>
        <source>no interval: the error limit of a meter is not stated</source>
        <translation>kein Intervall: die Fehlergrenze eines Zählers ist nicht angegeben</translation>
    </message>
    <message>
        <source>the draw is too uncertain for an upper end</source>
        <translation>die Aufnahme ist zu unsicher für ein oberes Ende</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>die Nennenergie des Speichers ist nicht angegeben</translation>
    </message>
    <message>
        <source>%1 W on average (%2 W for %3 % of the time)</source>
        <translation>%1 W im Mittel (%2 W während %3 % der Zeit)</translation>
    </message>
    <message>
        <source>the gauge curve of run %1 (%2) ends above %3, where this run ends</source>
        <translation>die Anzeigekurve von Lauf %1 (%2) endet über %3, wo dieser Lauf endet</translation>
    </message>
    <message>
        <source>the gauge curve of run %1 (%2) is too flat from %3 to %4 to tell how deep this run went</source>
        <translation>die Anzeigekurve von Lauf %1 (%2) ist von %3 bis %4 zu flach, um zu sagen, wie tief dieser Lauf ging</translation>
    </message>
    <message>
        <source>through the gauge curve of run %1 (%2), from %3 to %4</source>
        <translation>über die Anzeigekurve von Lauf %1 (%2), von %3 bis %4</translation>
    </message>
    <message>
        <source>a charge run is no drain</source>
        <translation>eine Ladung ist keine Entladung</translation>
    </message>
    <message>
        <source>a sustained output run is no drain</source>
        <translation>ein Lauf auf Dauerleistung ist keine Entladung</translation>
    </message>
    <message>
        <source>a peak output run is no drain</source>
        <translation>ein Lauf auf Spitzenleistung ist keine Entladung</translation>
    </message>
    <message>
        <source>a standby run is no drain</source>
        <translation>ein Standby-Lauf ist keine Entladung</translation>
    </message>
    <message>
        <source>whether it started full is not stated</source>
        <translation>ob er voll startete, ist nicht angegeben</translation>
    </message>
    <message>
        <source>it did not start full</source>
        <translation>er startete nicht voll</translation>
    </message>
    <message>
        <source>it is still running</source>
        <translation>er läuft noch</translation>
    </message>
    <message>
        <source>it was stopped before the cut-off</source>
        <translation>er wurde vor der Abschaltung beendet</translation>
    </message>
    <message>
        <source>a meter that is not stated</source>
        <translation>ein nicht angegebener Zähler</translation>
    </message>
    <message>
        <source>the meter that took over</source>
        <translation>der Zähler, der übernahm</translation>
    </message>
    <message>
        <source>the output tripped and nothing says that it was switched on again; mark when it was</source>
        <translation>der Ausgang hat ausgelöst, und nichts sagt, dass er wieder eingeschaltet wurde; setzen Sie eine Marke, wann es geschah</translation>
    </message>
    <message>
        <source>no time passed with the output on</source>
        <translation>keine Zeit verging mit eingeschaltetem Ausgang</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>weniger als zwei Ablesungen des Zählwerks</translation>
    </message>
    <message>
        <source>nothing was delivered</source>
        <translation>nichts wurde abgegeben</translation>
    </message>
    <message>
        <source>there is no drain to fit</source>
        <translation>es gibt keine Entladung für eine Gerade</translation>
    </message>
    <message>
        <source>fit between runs</source>
        <translation>Gerade durch die Läufe</translation>
    </message>
    <message>
        <source>make a drain from full to cut-off</source>
        <translation>machen Sie eine Entladung von voll bis Abschaltung</translation>
    </message>
    <message>
        <source>the drains used different meters, and the error limit of one is not stated</source>
        <translation>die Entladungen nutzten verschiedene Zähler, und die Fehlergrenze von einem ist nicht angegeben</translation>
    </message>
    <message>
        <source>corrected for the loads</source>
        <translation>um die Lasten bereinigt</translation>
    </message>
    <message>
        <source>of %1 full drains those at like loads were read at too few common depths</source>
        <translation>von %1 vollen Entladungen wurden die bei ähnlichen Lasten an zu wenigen gemeinsamen Stellen abgelesen</translation>
    </message>
    <message>
        <source>no two of the %1 full drains had like loads (mean loads within a factor of %2, in like order) at temperatures within 8 °C</source>
        <translation>keine zwei der %1 vollen Entladungen hatten ähnliche Lasten (mittlere Lasten innerhalb des Faktors %2, in ähnlicher Reihenfolge) bei Temperaturen innerhalb von 8 °C</translation>
    </message>
    <message>
        <source>it takes two drains from full to cut-off with the gauge read at six depths or more; so far: %1</source>
        <translation>es braucht zwei Entladungen von voll bis Abschaltung, bei denen die Ladeanzeige an sechs oder mehr Stellen abgelesen wurde; bisher: %1</translation>
    </message>
    <message>
        <source>of run %1, %2</source>
        <translation>Lauf %1: %2</translation>
    </message>
    <message>
        <source>whether E* moves is not known (%1)</source>
        <translation>ob sich E* ändert, ist unbekannt (%1)</translation>
    </message>
    <message>
        <source>E* is unmoved (%1 Wh a day)</source>
        <translation>E* ist unverändert (%1 Wh pro Tag)</translation>
    </message>
    <message>
        <source>E* falls (%1 Wh a day)</source>
        <translation>E* sinkt (%1 Wh pro Tag)</translation>
    </message>
    <message>
        <source>E* rises (%1 Wh a day)</source>
        <translation>E* steigt (%1 Wh pro Tag)</translation>
    </message>
    <message>
        <source>E* is unmoved (%1 % from run %2 to run %3)</source>
        <translation>E* ist unverändert (%1 % von Lauf %2 zu Lauf %3)</translation>
    </message>
    <message>
        <source>E* falls (%1 % from run %2 to run %3)</source>
        <translation>E* sinkt (%1 % von Lauf %2 zu Lauf %3)</translation>
    </message>
    <message>
        <source>E* rises (%1 % from run %2 to run %3)</source>
        <translation>E* steigt (%1 % von Lauf %2 zu Lauf %3)</translation>
    </message>
    <message>
        <source>χ² %1 for %2 degrees of freedom, %3</source>
        <translation>χ² %1 bei %2 Freiheitsgraden, %3</translation>
    </message>
    <message>
        <source>the gauge&apos;s curve moves by %1 pt at %2 % depth from run %3 to run %4 (%5)</source>
        <translation>die Anzeigekurve verschiebt sich um %1 pt bei %2 % abgegebenem Anteil, von Lauf %3 zu Lauf %4 (%5)</translation>
    </message>
    <message>
        <source>the gauge&apos;s curve is unmoved from run %1 to run %2 (%3; a move of %4 pt would be seen)</source>
        <translation>die Anzeigekurve ist unverändert von Lauf %1 zu Lauf %2 (%3; eine Verschiebung um %4 pt wäre zu sehen)</translation>
    </message>
    <message>
        <source>Whether the gauge drifts from run to run is not known: %1.</source>
        <translation>Ob die Ladeanzeige von Lauf zu Lauf driftet, ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>%1, %2: ageing, not the gauge.</source>
        <translation>%1, %2: Alterung, nicht die Ladeanzeige.</translation>
    </message>
    <message>
        <source>%1, %2: warmer or fuller, not the gauge.</source>
        <translation>%1, %2: wärmer oder voller, nicht die Ladeanzeige.</translation>
    </message>
    <message>
        <source>%1, %2: the gauge drifts.</source>
        <translation>%1, %2: die Ladeanzeige driftet.</translation>
    </message>
    <message>
        <source>%1 and %2: the unit ages, and its gauge drifts.</source>
        <translation>%1, und %2: der Speicher altert, und seine Ladeanzeige driftet.</translation>
    </message>
    <message>
        <source>%1 and %2: the energy moves, and the gauge drifts.</source>
        <translation>%1, und %2: die Energie ändert sich, und die Ladeanzeige driftet.</translation>
    </message>
    <message>
        <source>%1, and %2.</source>
        <translation>%1, und %2.</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4; whether that is more than chance is not known (%5).</source>
        <translation>Wh je Anzeigepunkt von Lauf %1 zu Lauf %2: %3 zu %4; ob das mehr als Zufall ist, ist unbekannt (%5).</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): more than chance.</source>
        <translation>Wh je Anzeigepunkt von Lauf %1 zu Lauf %2: %3 zu %4, %5 %, um die Lasten bereinigt (%6): mehr als Zufall.</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): no more than chance.</source>
        <translation>Wh je Anzeigepunkt von Lauf %1 zu Lauf %2: %3 zu %4, %5 %, um die Lasten bereinigt (%6): nicht mehr als Zufall.</translation>
    </message>
    <message>
        <source>where the curves from run %1 to run %2 differ most, at %3 % of the share delivered</source>
        <translation>wo sich die Kurven von Lauf %1 zu Lauf %2 am meisten unterscheiden, bei %3 % abgegebenem Anteil</translation>
    </message>
    <message>
        <source>no interval: the error limit of %1 is not stated</source>
        <translation>kein Intervall: die Fehlergrenze ist nicht angegeben (%1)</translation>
    </message>
    <message>
        <source>no drain from full to cut-off has all its energy read</source>
        <translation>von keiner Entladung von voll bis Abschaltung ist die ganze Energie abgelesen</translation>
    </message>
    <message>
        <source>there is one drain only, at %1 W</source>
        <translation>es gibt nur eine Entladung, bei %1 W</translation>
    </message>
    <message>
        <source>the drains are too alike (%1 to %2 h)</source>
        <translation>die Entladungen sind zu ähnlich (%1 bis %2 h)</translation>
    </message>
    <message>
        <source>the drains show no draw above 0 W</source>
        <translation>die Entladungen zeigen keine Aufnahme über 0 W</translation>
    </message>
    <message>
        <source>from E*/P*; a gain that all drains share cancels</source>
        <translation>aus E*/P*; ein allen Entladungen gemeinsamer Steigungsfehler hebt sich auf</translation>
    </message>
    <message>
        <source>the draw may be 0 W within its uncertainty</source>
        <translation>die Aufnahme kann innerhalb ihrer Unsicherheit 0 W sein</translation>
    </message>
    <message>
        <source>the drains would need a draw below 0 W (%1 W): one of them is wrong, or the unit changed between them</source>
        <translation>die Entladungen bräuchten eine Aufnahme unter 0 W (%1 W): eine davon ist falsch, oder der Speicher hat sich dazwischen verändert</translation>
    </message>
    <message numerus="yes">
        <source>seen from the socket, from the run times of %n drains</source>
        <comment>seen from the socket, from the run times of %n drain</comment>
        <translation>
            <numerusform>von der Steckdose aus gesehen, aus der Laufzeit von %n Entladung</numerusform>
            <numerusform>von der Steckdose aus gesehen, aus den Laufzeiten von %n Entladungen</numerusform>
        </translation>
    </message>
    <message>
        <source>bounded by common practice, not fitted: that takes three loads that differ enough</source>
        <translation>durch übliche Praxis begrenzt, nicht angepasst: dazu braucht es drei Lasten, die sich genug unterscheiden</translation>
    </message>
    <message>
        <source>fitted: the drains narrow it further than common practice</source>
        <translation>angepasst: die Entladungen engen es weiter ein als übliche Praxis</translation>
    </message>
    <message>
        <source>fitted: the drains contradict the bounds of common practice, which were dropped</source>
        <translation>angepasst: die Entladungen widersprechen den Grenzen der üblichen Praxis, die fallen gelassen wurden</translation>
    </message>
    <message numerus="yes">
        <source>From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on (%3).</source>
        <comment>From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on (%3).</comment>
        <translation>
            <numerusform>Aus %n Entladung: %1 abgebbar vor Eigenverbrauch, minus %2 für jede Stunde, die der Ausgang ein ist (%3).</numerusform>
            <numerusform>Aus %n Entladungen: %1 abgebbar vor Eigenverbrauch, minus %2 für jede Stunde, die der Ausgang ein ist (%3).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on.</source>
        <comment>From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on.</comment>
        <translation>
            <numerusform>Aus %n Entladung: %1 abgebbar vor Eigenverbrauch, minus %2 für jede Stunde, die der Ausgang ein ist.</numerusform>
            <numerusform>Aus %n Entladungen: %1 abgebbar vor Eigenverbrauch, minus %2 für jede Stunde, die der Ausgang ein ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>The drains differ from this by %1 times what their uncertainties allow; the intervals are widened for that.</source>
        <translation>Die Entladungen weichen davon um das %1-Fache dessen ab, was ihre Unsicherheiten zulassen; die Intervalle sind dafür verbreitert.</translation>
    </message>
    <message>
        <source>The no-load draw and the energy before own consumption are not known: %1.</source>
        <translation>Leerlaufaufnahme und Energie vor Eigenverbrauch sind unbekannt: %1.</translation>
    </message>
    <message numerus="yes">
        <source>the line through %n drains, at a run time of 0 h</source>
        <comment>the line through %n drain, at a run time of 0 h</comment>
        <translation>
            <numerusform>die Gerade durch %n Entladung, bei einer Laufzeit von 0 h</numerusform>
            <numerusform>die Gerade durch %n Entladungen, bei einer Laufzeit von 0 h</numerusform>
        </translation>
    </message>
    <message>
        <source>a charge run does not tell it</source>
        <translation>eine Ladung sagt es nicht</translation>
    </message>
    <message>
        <source>a sustained output run does not tell it</source>
        <translation>ein Lauf auf Dauerleistung sagt es nicht</translation>
    </message>
    <message>
        <source>a peak output run does not tell it</source>
        <translation>ein Lauf auf Spitzenleistung sagt es nicht</translation>
    </message>
    <message>
        <source>a standby run does not tell it</source>
        <translation>ein Standby-Lauf sagt es nicht</translation>
    </message>
    <message>
        <source>the run is not noted as started full</source>
        <translation>der Lauf ist nicht als voll gestartet notiert</translation>
    </message>
    <message>
        <source>the run did not go to cut-off, so what stayed inside is not known</source>
        <translation>der Lauf ging nicht bis zur Abschaltung, daher ist unbekannt, was darin blieb</translation>
    </message>
    <message>
        <source>not all delivered energy was read: %1</source>
        <translation>nicht alle abgegebene Energie wurde abgelesen: %1</translation>
    </message>
    <message>
        <source>conversion or missing capacity, not separable from the socket</source>
        <translation>Wandlung oder fehlende Kapazität, von der Steckdose aus nicht trennbar</translation>
    </message>
    <message>
        <source>%1 to %2 h</source>
        <translation>%1 bis %2 h</translation>
    </message>
    <message>
        <source>its run time</source>
        <translation>seine Laufzeit</translation>
    </message>
    <message>
        <source>rest %1: none is shown beyond the uncertainty</source>
        <translation>Rest %1: keiner zeigt sich jenseits der Unsicherheit</translation>
    </message>
    <message>
        <source>together %1 more than rated: the unit holds more than its label says, or the draw is overestimated</source>
        <translation>zusammen %1 mehr als die Nennenergie: der Speicher enthält mehr, als auf ihm steht, oder die Aufnahme ist überschätzt</translation>
    </message>
    <message>
        <source>rest %1: conversion or missing capacity, not separable from the socket</source>
        <translation>Rest %1: Wandlung oder fehlende Kapazität, von der Steckdose aus nicht trennbar</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, %3 not: no-load draw over %4, conversion and missing capacity, which cannot be told apart as the no-load draw is not known (%5).</source>
        <translation>Von %1 Nennenergie: %2 abgegeben, %3 nicht: Leerlaufaufnahme über %4, Wandlung und fehlende Kapazität, die sich nicht trennen lassen, da die Leerlaufaufnahme unbekannt ist (%5).</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, about %3 no-load draw over %4 (if the gauge is linear in stored energy), %5.</source>
        <translation>Von %1 Nennenergie: %2 abgegeben, etwa %3 Leerlaufaufnahme über %4 (wenn die Ladeanzeige linear in der gespeicherten Energie ist), %5.</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, about %3 no-load draw over %4, %5.</source>
        <translation>Von %1 Nennenergie: %2 abgegeben, etwa %3 Leerlaufaufnahme über %4, %5.</translation>
    </message>
    <message>
        <source>Where the rated energy went is not known: %1.</source>
        <translation>Wohin die Nennenergie ging, ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>rated energy (a claim) less delivered energy</source>
        <translation>Nennenergie (eine Angabe) minus abgegebene Energie</translation>
    </message>
    <message>
        <source>mean of %1 drains at %2 W, which scatter by %3 %</source>
        <translation>Mittel aus %1 Entladungen bei %2 W, die um %3 % streuen</translation>
    </message>
    <message>
        <source>mean of %1 drains from %2 to %3 W, which scatter by %4 %</source>
        <translation>Mittel aus %1 Entladungen von %2 bis %3 W, die um %4 % streuen</translation>
    </message>
    <message>
        <source>%1 stands alone; drains are taken to repeat within %2</source>
        <translation>%1 steht allein; Entladungen gelten als innerhalb von %2 wiederholbar</translation>
    </message>
    <message>
        <source>two drains say little of how well this unit repeats, a third narrows the interval most</source>
        <translation>zwei Entladungen sagen wenig darüber, wie gut sich dieser Speicher wiederholt, eine dritte engt das Intervall am meisten ein</translation>
    </message>
    <message>
        <source>Mean of %1 drains near %2 W: %3; a single one scatters by %4 Wh (%5 %).</source>
        <translation>Mittel aus %1 Entladungen nahe %2 W: %3; eine einzelne streut um %4 Wh (%5 %).</translation>
    </message>
    <message>
        <source>Two drains say little of how well this unit repeats; a third narrows this most.</source>
        <translation>Zwei Entladungen sagen wenig darüber, wie gut sich dieser Speicher wiederholt; eine dritte engt dies am meisten ein.</translation>
    </message>
    <message>
        <source>The drain stands alone: how well this unit repeats is taken as %1.</source>
        <translation>Die Entladung steht allein: wie gut sich dieser Speicher wiederholt, ist angenommen zu %1.</translation>
    </message>
    <message>
        <source>Each drain stands alone at its load: how well this unit repeats is taken as %1.</source>
        <translation>Jede Entladung steht bei ihrer Last allein: wie gut sich dieser Speicher wiederholt, ist angenommen zu %1.</translation>
    </message>
    <message>
        <source>%1 % (the usual figure, which nobody has tried on these units)</source>
        <translation>%1 % (der übliche Wert, den niemand an diesen Speichern erprobt hat)</translation>
    </message>
    <message>
        <source>%1 % (as the tester states)</source>
        <translation>%1 % (wie der Prüfer angibt)</translation>
    </message>
    <message numerus="yes">
        <source>%1 % (from the repeated drains of this logbook, %n degrees of freedom)</source>
        <comment>%1 % (from the repeated drains of this logbook, %n degree of freedom)</comment>
        <translation>
            <numerusform>%1 % (aus den wiederholten Entladungen dieses Logbuchs, %n Freiheitsgrad)</numerusform>
            <numerusform>%1 % (aus den wiederholten Entladungen dieses Logbuchs, %n Freiheitsgrade)</numerusform>
        </translation>
    </message>
    <message>
        <source>run %1 has no two gauge readings</source>
        <translation>Lauf %1 hat keine zwei Ablesungen der Ladeanzeige</translation>
    </message>
    <message>
        <source>run %1: the gauge fell from %2 to %3 % in %4 h; assumes an accurate gauge and the rated energy</source>
        <translation>Lauf %1: die Ladeanzeige fiel von %2 auf %3 % in %4 h; setzt eine genaue Ladeanzeige und die Nennenergie voraus</translation>
    </message>
    <message>
        <source>run %1 put back what %2 h of standing (run %3) had taken; at the meter, the charging loss inside</source>
        <translation>Lauf %1 lud wieder hinein, was %2 h Stehen (Lauf %3) genommen hatten; am Zähler, mit dem Ladeverlust darin</translation>
    </message>
    <message>
        <source>as metered before the charger</source>
        <translation>wie vor dem Ladegerät gemessen</translation>
    </message>
    <message>
        <source>with the loss of the round trip</source>
        <translation>mit dem Verlust des Zyklus</translation>
    </message>
    <message>
        <source>without the charging loss, which is not known</source>
        <translation>ohne den Ladeverlust, der unbekannt ist</translation>
    </message>
    <message>
        <source>no standby run: leave the unit full with its output off for days, reading the gauge, then charge it</source>
        <translation>kein Standby-Lauf: lassen Sie den Speicher voll mit ausgeschaltetem Ausgang tagelang stehen, lesen Sie die Ladeanzeige ab und laden Sie ihn dann</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>etwa %1 min</translation>
    </message>
    <message>
        <source>about %1 days</source>
        <translation>etwa %1 Tage</translation>
    </message>
    <message>
        <source>about %1 h</source>
        <translation>etwa %1 h</translation>
    </message>
    <message>
        <source>A drain from full to cut-off at any load would be the first to tell.</source>
        <translation>Eine Entladung von voll bis Abschaltung bei beliebiger Last wäre die erste, die es sagt.</translation>
    </message>
    <message>
        <source>No single further drain would narrow this by much.</source>
        <translation>Keine einzelne weitere Entladung würde dies viel einengen.</translation>
    </message>
    <message>
        <source>A drain near %1 W (%2) would narrow this most, by a factor of %3.</source>
        <translation>Eine Entladung nahe %1 W (%2) würde dies am meisten einengen, um den Faktor %3.</translation>
    </message>
    <message>
        <source>Whether the energy moves with time is not known: %1.</source>
        <translation>Ob sich die Energie mit der Zeit ändert, ist unbekannt: %1.</translation>
    </message>
    <message>
        <source>the drains were made at temperatures more than %1 °C apart, where cold looks like age</source>
        <translation>die Entladungen liefen bei Temperaturen, die mehr als %1 °C auseinander liegen, wo Kälte wie Alterung aussieht</translation>
    </message>
    <message>
        <source>it takes three drains from full to cut-off; so far: %1</source>
        <translation>es braucht drei Entladungen von voll bis Abschaltung; bisher: %1</translation>
    </message>
    <message>
        <source>all drains were made within a day</source>
        <translation>alle Entladungen liefen innerhalb eines Tages</translation>
    </message>
    <message>
        <source>the loads changed in step with time; repeat an early load</source>
        <translation>die Lasten änderten sich im Takt mit der Zeit; wiederholen Sie eine frühe Last</translation>
    </message>
    <message>
        <source>over %1 days, corrected for the loads</source>
        <translation>über %1 Tage, um die Lasten bereinigt</translation>
    </message>
    <message numerus="yes">
        <source>%n drains at other temperatures left out</source>
        <comment>%n drain at other temperatures left out</comment>
        <translation>
            <numerusform>%n Entladung bei anderer Temperatur ausgelassen</numerusform>
            <numerusform>%n Entladungen bei anderen Temperaturen ausgelassen</numerusform>
        </translation>
    </message>
    <message>
        <source>No change of energy with time is shown (%1 Wh a day).</source>
        <translation>Keine Änderung der Energie mit der Zeit zeigt sich (%1 Wh pro Tag).</translation>
    </message>
    <message>
        <source>The unit delivers less with time: %1 Wh a day.</source>
        <translation>Der Speicher gibt mit der Zeit weniger ab: %1 Wh pro Tag.</translation>
    </message>
    <message>
        <source>The unit delivers more with time (%1 Wh a day): warmer, or not always charged full.</source>
        <translation>Der Speicher gibt mit der Zeit mehr ab (%1 Wh pro Tag): wärmer oder nicht immer vollgeladen.</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>the run is no longer in the logbook</source>
        <translation>der Lauf ist nicht mehr im Logbuch</translation>
    </message>
    <message>
        <source>choose another run</source>
        <translation>wählen Sie einen anderen Lauf</translation>
    </message>
    <message>
        <source>a run of the comparison is no longer in its logbook</source>
        <translation>ein Lauf des Vergleichs ist nicht mehr in seinem Logbuch</translation>
    </message>
    <message>
        <source>open the comparison page again</source>
        <translation>öffnen Sie die Vergleichsseite noch einmal</translation>
    </message>
    <message>
        <source>the photo cannot be shown</source>
        <translation>das Foto lässt sich nicht zeigen</translation>
    </message>
    <message>
        <source>leave it out of the report</source>
        <translation>lassen Sie es im Bericht weg</translation>
    </message>
    <message>
        <source>the unit has no runs any more</source>
        <translation>der Speicher hat keine Läufe mehr</translation>
    </message>
    <message>
        <source>choose another unit</source>
        <translation>wählen Sie einen anderen Speicher</translation>
    </message>
</context>
</TS>
