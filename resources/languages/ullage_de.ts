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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
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
</context>
<context>
    <name>date</name>
    <message>
        <source>January</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>February</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>March</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>April</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>June</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>July</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>August</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>September</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>October</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>November</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>December</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 January</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 February</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 March</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 April</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 May</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 June</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 July</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 August</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 September</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 October</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 November</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 December</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
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
        <translation>%1</translation>
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
        <source>Usable fraction, the gauge&apos;s errors and losses: a %1 run does not tell them; make a drain.</source>
        <translation>Nutzbarer Anteil, Fehler der Ladeanzeige und Verluste: ein Lauf „%1“ sagt darüber nichts; machen Sie eine Entladung.</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no service offers it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>display</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window cannot be shown here; all commands work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 at scale %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark, as chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light, as chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark, as the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light, as the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>theme and text size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notices of readings that are due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders stand in the window alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeping the machine awake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the machine not to sleep while a test runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passwords of meters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A meter&apos;s password is asked for at each start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing can be written there (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, written, %2 free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is little room left. Make some.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files there cannot be locked, so a logbook cannot be opened there. Keep it on a disk of this machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files there cannot be leased: copy a logbook only when it is not recorded into. A disk of this machine offers it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings are forgotten at the end of the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notes on files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program does not know the files that it wrote, so commands ask for --force to replace them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sample logbook cannot be made there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temporary files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Workbooks, imports and checks need room there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folder of the open logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be recorded there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copies of logbooks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copies are made. Choose another folder in Settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all %1 that the program shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in any font: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boxes stand in their place. Install a font that has them, such as DejaVu Sans.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of equal width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of unequal width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers in columns do not stand below each other digit by digit. Another font of the desktop mends that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Region</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; the data of time zones are not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local times are those of UTC. Install tzdata.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>font</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos and pictures of this form cannot be shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>JPEG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos of this form are kept but cannot be shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window has no icon in the task bar. Install the SVG plugin of Qt (libqt6svg6).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>icons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>are drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>are not drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buttons have words alone. Install the program anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>region of the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, decimal sign %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper of reports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Versions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, built with %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is older than the one that the program was built with. Bring the system up to date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SQLite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing: %1. Notes: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that the program needs is missing. Notes: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check of the installation: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished">%1: %2 {1.?}</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row as it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 row: %2 taken, %3 left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rows: %2 taken, %3 left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; usually %1 s apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 gap longer than %2 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 gaps longer than %2 s</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>times of photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workbooks that are written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workbooks that are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tables of pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meters by Modbus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meters on serial lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meters by MQTT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page of a run</source>
        <translation type="unfinished">Die Seite eines Laufs</translation>
    </message>
    <message>
        <source>Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and log stand in the tabs; what the readings say stands below.</source>
        <translation type="unfinished">Tippen Sie in die Zeile unter den Ablesungen, was Ladeanzeige und Zählwerk zeigen, und drücken Sie Enter. Bei einem zweifelhaften Wert wird nachgefragt; nichts wird eingetragen, bevor Sie antworten. F3 bis F7 vermerken sofort ein Ereignis, F8 beendet den Lauf. Diagramme, Budget und Log stehen in den Reitern; was die Ablesungen sagen, steht darunter.</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation type="unfinished">Laufende Tests</translation>
    </message>
    <message>
        <source>All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 shows them over the whole screen, to be read from two metres.</source>
        <translation type="unfinished">Alle laufenden Tests nebeneinander: wo jeder steht, wann seine Abschaltung kommen sollte und wann seine nächste Ablesung fällig ist. F11 zeigt sie auf dem ganzen Bildschirm, aus zwei Metern lesbar.</translation>
    </message>
    <message>
        <source>The page of a unit</source>
        <translation type="unfinished">Die Seite eines Speichers</translation>
    </message>
    <message>
        <source>What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run (Ctrl+R) begins one.</source>
        <translation type="unfinished">Was alle Läufe des Speichers zusammen sagen, seine Angaben gegen das Getestete und der nächste lohnende Lauf. Lauf starten (Strg+R) beginnt einen.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished">Vergleich</translation>
    </message>
    <message>
        <source>Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they cannot tell apart share a rank.</source>
        <translation type="unfinished">Speicher nebeneinander, wie getestet oder bei einer Last. Der Satz darüber sagt, welche Reihenfolge die Zähler auflösen; Speicher, die sie nicht unterscheiden, teilen sich einen Rang.</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation type="unfinished">Auslegung</translation>
    </message>
    <message>
        <source>How many days each unit carries a load list, how many units that takes, and which PV array.</source>
        <translation type="unfinished">Wie viele Tage jeder Speicher eine Lastliste trägt, wie viele Speicher es dafür braucht und welchen PV-Generator.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation type="unfinished">Lastlisten</translation>
    </message>
    <message>
        <source>Appliances that a unit is to feed: what each takes while on, how long a day, and when.</source>
        <translation type="unfinished">Verbraucher, die ein Speicher versorgen soll: was jeder im Betrieb aufnimmt, wie lange am Tag und wann.</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation type="unfinished">PV-Eingang</translation>
    </message>
    <message>
        <source>Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.</source>
        <translation type="unfinished">Ob ein Strang von Modulen zum PV-Eingang eines Speichers passt, bei Kälte und Hitze. PV-Stränge stehen bei Licht unter Spannung.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation type="unfinished">Zähler</translation>
    </message>
    <message>
        <source>What is stated of each meter. Without its error limit no interval can be stated.</source>
        <translation type="unfinished">Was zu jedem Zähler angegeben ist. Ohne seine Fehlergrenze lässt sich kein Intervall angeben.</translation>
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
        <source>Combined standard uncertainty %1 Wh%2.</source>
        <translation>Kombinierte Standardunsicherheit %1 Wh%2.</translation>
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
        <translation>ein Name, um diese Spalten als eigenen Satz zu behalten</translation>
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
        <translation>%1</translation>
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
        <translation>Abschaltung gesehen: ging vor meinen Augen aus</translation>
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
        <translation>ohne Angabe: seit zuletzt ein gesehen</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>guided first run, step %1 of %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ullage::GuideController</name>
    <message>
        <source>Logbook for the guided run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First run.ullage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The guided run is done. Everything stays in this logbook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have left the guide. Help, Guided first run takes it up again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the unit that you test, with its name and the rated energy on its label. Its other claims can follow later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a unit at hand: name it Trial unit, with a rated energy of 1000 Wh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add unit…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the meter between unit and load. Its data sheet states the step of its register and its error limit, which the ± of every result comes from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a meter at hand: name it Trial meter, with a step of 1 Wh and a limit of 1 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add meter…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge the unit to full and plug the meter and a load in. Start a drain: what gauge and register show now is its first reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a bench at hand: gauge 100, register 0, time -6h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start run…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to the bench now and then. Type what gauge and register show into the row below the readings, and press Enter. Noted: %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a bench at hand: time -4h, gauge 66, register 260; then time -2h, gauge 32, register 525.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the entry row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait until the unit switches off by itself, and note what you like until then. End the run: it asks how it ended and what was shown last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a bench at hand: cut-off seen, gauge 0, register 790.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Lauf beenden…</translation>
    </message>
    <message>
        <source>This is your result. %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figures stand above the readings. The tab Budget says where the ± comes from, and what the readings say of the gauge stands below. With a second unit, Compare puts both side by side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the result</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>%1 Each row says what was looked at, what was found, and what follows. The copy holds nothing of your logbooks.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation>ein Viertel der Grenze; 0 nach Kalibrierung bei Ihren Lasten</translation>
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
        <source>no connection</source>
        <translation>keine Verbindung</translation>
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
        <source>the connection to the broker cannot be prepared</source>
        <translation>die Verbindung zum Broker lässt sich nicht vorbereiten</translation>
    </message>
    <message>
        <source>no secured connection (%1): the certificate has expired, is for another host name or comes from an authority that this machine does not trust, or the broker does not speak TLS at this port</source>
        <translation>keine gesicherte Verbindung (%1): das Zertifikat ist abgelaufen, gilt für einen anderen Rechnernamen oder kommt von einer Stelle, der dieser Rechner nicht vertraut, oder der Broker spricht an diesem Port kein TLS</translation>
    </message>
    <message>
        <source>the broker refuses: %1</source>
        <translation>der Broker lehnt ab: %1</translation>
    </message>
    <message>
        <source>a message of %1 MB came; those of a meter are short</source>
        <translation>eine Nachricht von %1 MB kam; die eines Zählers sind kurz</translation>
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
        <translation>SVG, Linien, die in jeder Größe scharf bleiben</translation>
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
        <source>The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be known, amendments and cautions. Numbers have the decimal sign of your system.</source>
        <translation>Der Bericht enthält Zusammenfassung, Zähler, Methode mit Quellen, Ablesungen, Unsicherheitsbudget, Diagramme, Befunde, was nicht bekannt sein kann, Berichtigungen und Sicherheitshinweise. Zahlen haben das Dezimalzeichen Ihres Systems.</translation>
    </message>
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
        <translation>2 min, wo Sie es wissen; sonst gelten 5 min</translation>
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
</context>
<context>
    <name>ullage::ScpiLink</name>
    <message>
        <source>no connection within %1 s</source>
        <translation>keine Verbindung innerhalb von %1 s</translation>
    </message>
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
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ullage::SettingsDialog</name>
    <message>
        <source>Drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No-load drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sustained output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peak output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standby</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>OK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another language counts from the next start of the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %, as the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theme and text size are shown at once. Cancel takes them back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Default &amp;meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter that Start run proposes. Open a logbook to choose among its meters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter that Start run proposes. This logbook has no meter yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter of this logbook that Start run proposes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>A&amp;rt des Laufs</translation>
    </message>
    <message>
        <source>&amp;Remind me to read</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call me by a &amp;notice of the desktop too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a &amp;sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>as the desktop&apos;s region: %1</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are kept in the logbook. Name and licence are proposed for other logbooks too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name and licence are proposed for every logbook. Title and introduction are kept in a logbook: open one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a &amp;copy of each logbook by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beside each logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choo&amp;se folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep for days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to 3650</source>
        <translation type="unfinished">1 bis 3650 {1 ?}</translation>
    </message>
    <message>
        <source>Older copies are removed. A folder on another disk also helps when this disk fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name the folder from the root on, such as /media/disk/copies, or leave the field empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such folder. Make it, or choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be written into this folder. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter for how many days a copy is kept, such as 30.</source>
        <translation type="unfinished"></translation>
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
        <translation>Auslesung nach IEC 62056-21, serielle Schnittstelle</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New logbook for this table</source>
        <translation type="unfinished"></translation>
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
</context>
<context>
    <name>ullage::TreeRowDelegate</name>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Entladung</translation>
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
        <translation>12 V, die niedrigste, bei der der Eingang arbeitet</translation>
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
        <translation>kurze Worte, um Speicher zu finden, etwa: verliehen; Zelt</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A finished logbook of invented units. Look round and change what you like: it is a copy of your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the sample logbook</source>
        <translation>Beispiellogbuch öffnen</translation>
    </message>
    <message>
        <source>Guided first run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One test from the unit to its result, in the forms that you will use. The guide says the next step, and you may leave it at any time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the guided run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin yourself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down what the maker claims of the unit, and what the meter&apos;s data sheet says of its error.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes in a spreadsheet, a CSV file or copied cells. You see how each column is understood before anything is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a table</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the energy printed on a battery storage unit reaches the socket, how sure is that, and can its gauge be trusted?</source>
        <translation>Wie viel der auf einen Batteriespeicher gedruckten Energie kommt an der Steckdose an, wie sicher ist das, und ist seiner Ladeanzeige zu trauen?</translation>
    </message>
    <message>
        <source>open %1</source>
        <translation type="unfinished"></translation>
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
</TS>
