<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>QAction</name>
    <message>
        <source>Copy picture</source>
        <translation>Copier l’image</translation>
    </message>
    <message>
        <source>Copy rows</source>
        <translation>Copier les lignes</translation>
    </message>
</context>
<context>
    <name>awake</name>
    <message>
        <source>a test is running and its readings are due</source>
        <translation>un essai est en cours et ses relevés sont à faire</translation>
    </message>
    <message>
        <source>kept awake</source>
        <translation>maintenu éveillé</translation>
    </message>
    <message>
        <source>this desktop does not offer to stay awake: set it yourself</source>
        <translation>ce bureau ne propose pas de rester éveillé&#xa0;: réglez-le vous-même</translation>
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
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>projected</source>
        <translation>projeté</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>au moins</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>encadrement</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
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
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>défaut</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>doute</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>%1; measurements of one specimen, not a safety certification</source>
        <translation>%1&#x202f;; mesures d’un seul exemplaire, pas une certification de sécurité</translation>
    </message>
</context>
<context>
    <name>ullage</name>
    <message>
        <source>Gauge error of the units against what they had delivered</source>
        <translation>Erreur de jauge des stations selon ce qu’elles avaient délivré</translation>
    </message>
    <message>
        <source>share delivered / %</source>
        <translation>part délivrée / %</translation>
    </message>
    <message>
        <source>gauge error / pt</source>
        <translation>erreur de jauge / pt</translation>
    </message>
    <message>
        <source>shows too much</source>
        <translation>montre trop</translation>
    </message>
    <message>
        <source>shows too little</source>
        <translation>montre trop peu</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less. Areas: 95 % intervals.</source>
        <translation>Au-dessus de 0, la jauge montre plus qu’il ne reste, en dessous moins. Aires&#xa0;: intervalles à 95 %.</translation>
    </message>
    <message>
        <source>No drain from full to cut-off with gauge and register read together.</source>
        <translation>Aucune décharge de la pleine charge à la coupure avec jauge et index relevés ensemble.</translation>
    </message>
    <message>
        <source>no error</source>
        <translation>sans erreur</translation>
    </message>
    <message>
        <source>Usable fraction of the units against load</source>
        <translation>Fraction utile des stations selon la charge</translation>
    </message>
    <message>
        <source>Points: drains. Lines: what all drains of a unit say together, with the 95 % interval as an area.</source>
        <translation>Points&#xa0;: décharges. Lignes&#xa0;: ce que disent ensemble toutes les décharges d’une station, avec l’intervalle à 95 % comme aire.</translation>
    </message>
    <message>
        <source>load / W</source>
        <translation>charge / W</translation>
    </message>
    <message>
        <source>usable fraction / %</source>
        <translation>fraction utile / %</translation>
    </message>
    <message>
        <source>No full drain of a unit with a stated rated energy.</source>
        <translation>Aucune décharge complète d’une station dont l’énergie assignée est précisée.</translation>
    </message>
    <message>
        <source>compared here</source>
        <translation>comparé ici</translation>
    </message>
    <message>
        <source>No drain to compare yet. Record a drain of each unit, from full to the cut-off, or import run sheets.</source>
        <translation>Encore aucune décharge à comparer. Enregistrez une décharge de chaque station, de la pleine charge à la coupure, ou importez des fiches d’essai.</translation>
    </message>
    <message>
        <source>Delivered energy of each unit against its rated energy</source>
        <translation>Énergie délivrée de chaque station face à son énergie assignée</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>as tested, each at the load of its run</source>
        <translation>comme testé, chacune à la charge de son essai</translation>
    </message>
    <message>
        <source>Height: rated energy. Filled: delivered at the socket; the bracket is its 95 % interval. Hatched: taken by the unit&apos;s own draw, where that is known. Dashed: what is typical.</source>
        <translation>Hauteur&#xa0;: énergie assignée. Rempli&#xa0;: délivré à la prise&#x202f;; le crochet est son intervalle à 95 %. Hachuré&#xa0;: pris par la consommation propre de la station, là où elle est connue. Tirets&#xa0;: ce qui est courant.</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>comme testé</translation>
    </message>
    <message>
        <source>Usable fraction of each unit, %1, with its 95 % interval</source>
        <translation>Fraction utile de chaque station, %1, avec son intervalle à 95 %</translation>
    </message>
    <message>
        <source>usable fraction %1, delivered / rated energy / %</source>
        <translation>fraction utile %1, énergie délivrée / assignée / %</translation>
    </message>
    <message>
        <source>grey bars are as tested, at another load</source>
        <translation>barres grises&#xa0;: comme testé, à une autre charge</translation>
    </message>
    <message>
        <source>each at the load of its run</source>
        <translation>chacune à la charge de son essai</translation>
    </message>
    <message>
        <source>Brackets: 95 % intervals. Grey band: what is typical.</source>
        <translation>Crochets&#xa0;: intervalles à 95 %. Bande grise&#xa0;: ce qui est courant.</translation>
    </message>
    <message>
        <source>typical, %1 to %2 %</source>
        <translation>courant, %1 à %2 %</translation>
    </message>
    <message>
        <source>; the first %1 of %2 rows</source>
        <translation>&#x202f;; les %1 premières de %2 lignes</translation>
    </message>
    <message>
        <source>Voltage of the string against cell temperature, with the limits of the PV input</source>
        <translation>Tension de la chaîne selon la température de cellule, avec les limites de l’entrée PV</translation>
    </message>
    <message>
        <source>cell temperature / °C</source>
        <translation>température de cellule / °C</translation>
    </message>
    <message>
        <source>string voltage / V</source>
        <translation>tension de la chaîne / V</translation>
    </message>
    <message>
        <source>State Voc of the module to see the voltage of the string.</source>
        <translation>Indiquez Voc du module pour voir la tension de la chaîne.</translation>
    </message>
    <message>
        <source>open circuit</source>
        <translation>circuit ouvert</translation>
    </message>
    <message>
        <source>maximum power</source>
        <translation>puissance maximale</translation>
    </message>
    <message>
        <source>danger: %1 V</source>
        <translation>danger&#xa0;: %1 V</translation>
    </message>
    <message>
        <source>above the limit when cold</source>
        <translation>au-dessus de la limite à froid</translation>
    </message>
    <message>
        <source>limit %1 V</source>
        <translation>limite %1 V</translation>
    </message>
    <message>
        <source>start %1 V</source>
        <translation>démarrage %1 V</translation>
    </message>
    <message>
        <source>PV input works</source>
        <translation>l’entrée PV fonctionne</translation>
    </message>
    <message>
        <source>coldest</source>
        <translation>le plus froid</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>le plus chaud</translation>
    </message>
    <message>
        <source>energy in</source>
        <translation>énergie reçue</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>délivré</translation>
    </message>
    <message>
        <source>gauge-implied</source>
        <translation>selon la jauge</translation>
    </message>
    <message>
        <source>gauge-implied, by the log</source>
        <translation>selon la jauge, d’après le journal</translation>
    </message>
    <message>
        <source>cut-off expected</source>
        <translation>coupure attendue</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>coupure</translation>
    </message>
    <message>
        <source>off somewhere here</source>
        <translation>éteinte quelque part ici</translation>
    </message>
    <message>
        <source>gauge right: empty here</source>
        <translation>jauge juste&#xa0;: vide ici</translation>
    </message>
    <message>
        <source>gauge wrong: still to come</source>
        <translation>jauge fausse&#xa0;: reste à venir</translation>
    </message>
    <message>
        <source>by stored depth</source>
        <translation>selon la part puisée</translation>
    </message>
    <message>
        <source>energy / Wh</source>
        <translation>énergie / Wh</translation>
    </message>
    <message>
        <source>Gauge-implied and delivered energy against hours since the start</source>
        <translation>Énergie selon la jauge et énergie délivrée, en heures depuis le début</translation>
    </message>
    <message>
        <source>Circles: delivered, by the meter, with its error limit as an area. Squares: what the gauge implies. Shaded: where the gauge is doubted. Dotted: rated energy and cut-off.</source>
        <translation>Cercles&#xa0;: délivré, par le compteur, avec sa limite d’erreur comme aire. Carrés&#xa0;: énergie selon la jauge. Ombré&#xa0;: là où la jauge est mise en doute. Pointillé&#xa0;: énergie assignée et coupure.</translation>
    </message>
    <message>
        <source>No energy yet: record the meter&apos;s register at the start, then again and again.</source>
        <translation>Encore aucune énergie&#xa0;: relevez l’index du compteur au début, puis encore et encore.</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>assignée %1</translation>
    </message>
    <message>
        <source>gauge error / pt, if %1 Wh come out</source>
        <translation>erreur de jauge / pt, si %1 Wh sortent</translation>
    </message>
    <message>
        <source>gauge error / pt, against %1</source>
        <translation>erreur de jauge / pt, face à %1</translation>
    </message>
    <message>
        <source>Gauge error in percentage points against hours since the start</source>
        <translation>Erreur de jauge en points de pourcentage, en heures depuis le début</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less. Area: 95 % interval. Shaded: where the gauge is doubted.</source>
        <translation>Au-dessus de 0, la jauge montre plus qu’il ne reste, en dessous moins. Aire&#xa0;: intervalle à 95 %. Ombré&#xa0;: là où la jauge est mise en doute.</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less, of the %1 Wh that the drain is expected to deliver to its cut-off. Area: if it comes at the ends of its range, %2 to %3 Wh. Shaded: where the gauge is doubted.</source>
        <translation>Au-dessus de 0, la jauge montre plus qu’il ne reste, en dessous moins, des %1 Wh que la décharge devrait délivrer jusqu’à sa coupure. Aire&#xa0;: si elle vient aux bouts de sa fourchette, %2 à %3 Wh. Ombré&#xa0;: là où la jauge est mise en doute.</translation>
    </message>
    <message>
        <source>No gauge error yet: it needs readings of gauge and register, and the unit&apos;s rated energy or a drain from full to cut-off.</source>
        <translation>Encore aucune erreur de jauge&#xa0;: il y faut des relevés de la jauge et de l’index, et l’énergie assignée de la station ou une décharge de la pleine charge à la coupure.</translation>
    </message>
    <message>
        <source>by share delivered</source>
        <translation>selon la part délivrée</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>erreur de jauge</translation>
    </message>
    <message>
        <source>Mean load between register readings against hours since the start</source>
        <translation>Charge moyenne entre relevés de l’index, en heures depuis le début</translation>
    </message>
    <message>
        <source>Steps: mean load from one register reading to the next. Diamonds: power on the meter. Triangles: power on the unit&apos;s display.</source>
        <translation>Paliers&#xa0;: charge moyenne d’un relevé de l’index au suivant. Losanges&#xa0;: puissance au compteur. Triangles&#xa0;: puissance à l’afficheur de la station.</translation>
    </message>
    <message>
        <source>No load yet: it follows from two readings of the meter&apos;s register.</source>
        <translation>Encore aucune charge&#xa0;: elle résulte de deux relevés de l’index du compteur.</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>charge moyenne</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>unit&apos;s display</source>
        <translation>afficheur de la station</translation>
    </message>
    <message>
        <source>State of charge by the hour, with PV and without</source>
        <translation>État de charge heure par heure, avec et sans PV</translation>
    </message>
    <message>
        <source>time since midnight / h</source>
        <translation>heures depuis minuit / h</translation>
    </message>
    <message>
        <source>charge remaining / %</source>
        <translation>charge restante / %</translation>
    </message>
    <message>
        <source>Choose a unit whose energy is known or stated.</source>
        <translation>Choisissez une station dont l’énergie est connue ou précisée.</translation>
    </message>
    <message>
        <source>without PV</source>
        <translation>sans PV</translation>
    </message>
    <message>
        <source>with PV</source>
        <translation>avec PV</translation>
    </message>
    <message>
        <source>night</source>
        <translation>nuit</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source>Points: drains with their 95 % intervals. Line: what all drains say together, solid between the tested loads, dashed beyond. Area: 95 % interval.</source>
        <translation>Points&#xa0;: décharges avec leur intervalle à 95 %. Ligne&#xa0;: ce que disent ensemble toutes les décharges, pleine entre les charges testées, en tirets au-delà. Aire&#xa0;: intervalle à 95 %.</translation>
    </message>
    <message>
        <source>next: %1 W</source>
        <translation>prochain&#xa0;: %1 W</translation>
    </message>
    <message>
        <source>No drain from full to cut-off yet: make one at any load.</source>
        <translation>Encore aucune décharge de la pleine charge à la coupure&#xa0;: faites-en une à une charge quelconque.</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>essai %1</translation>
    </message>
    <message>
        <source>mean of %1 drains</source>
        <translation>moyenne de %1 décharges</translation>
    </message>
    <message>
        <source>Usable fraction against load: expected from all drains, and measured</source>
        <translation>Fraction utile selon la charge&#xa0;: attendue d’après toutes les décharges, et mesurée</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>Deliverable energy against load: expected from all drains, and measured</source>
        <translation>Énergie délivrable selon la charge&#xa0;: attendue d’après toutes les décharges, et mesurée</translation>
    </message>
    <message>
        <source>deliverable energy / Wh</source>
        <translation>énergie délivrable / Wh</translation>
    </message>
    <message>
        <source>Run time against load: expected from all drains, and measured</source>
        <translation>Autonomie selon la charge&#xa0;: attendue d’après toutes les décharges, et mesurée</translation>
    </message>
    <message>
        <source>run time / h</source>
        <translation>autonomie / h</translation>
    </message>
    <message>
        <source>Gauge error against share delivered, run to run</source>
        <translation>Erreur de jauge selon la part délivrée, d’un essai à l’autre</translation>
    </message>
    <message>
        <source>No gauge curve yet: it takes a drain from full to cut-off with the gauge read at six depths or more.</source>
        <translation>Encore aucune courbe de jauge&#xa0;: il y faut une décharge de la pleine charge à la coupure, avec la jauge relevée à six niveaux ou plus.</translation>
    </message>
    <message>
        <source>%1 pt</source>
        <translation>%1 pt</translation>
    </message>
    <message>
        <source>run %1, %2</source>
        <translation>essai %1, %2</translation>
    </message>
    <message>
        <source>Not on the charts, as a load below %1 W has no place on their axis, but in the curves: %2.</source>
        <translation>Absents des graphiques, car une charge sous %1 W n’a pas de place sur leur axe, mais présents dans les courbes&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1; made with Ullage %2</source>
        <translation>%1&#x202f;; fait avec Ullage %2</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>Energy in</source>
        <translation>Reçu</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Délivré</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>Utile</translation>
    </message>
    <message>
        <source>&amp;Bring what you have</source>
        <translation>&amp;Reprendre vos notes</translation>
    </message>
    <message>
        <source>&amp;Meters read live</source>
        <translation>&amp;Compteurs lus en direct</translation>
    </message>
    <message>
        <source>&amp;How the figures come about</source>
        <translation>&amp;D’où viennent les chiffres</translation>
    </message>
    <message>
        <source>&amp;File formats</source>
        <translation>&amp;Formats de fichiers</translation>
    </message>
    <message>
        <source>C&amp;ommands</source>
        <translation>Comma&amp;ndes</translation>
    </message>
    <message>
        <source>&amp;JSON</source>
        <translation>&amp;JSON</translation>
    </message>
    <message>
        <source>&amp;Tested figures</source>
        <translation>Chiffres &amp;vérifiés</translation>
    </message>
    <message>
        <source>logbook</source>
        <translation>carnet</translation>
    </message>
    <message>
        <source>one file with everything below; it ends in .ullage and may be copied at any time</source>
        <translation>un seul fichier avec tout ce qui suit&#x202f;; il se termine par .ullage et se copie à tout moment</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>station</translation>
    </message>
    <message>
        <source>a battery storage unit under test, with what its maker claims</source>
        <translation>une station d’énergie à batterie à l’essai, avec ce que son fabricant annonce</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>étiquette</translation>
    </message>
    <message>
        <source>a short word of yours at a unit, to find it by: the comparison can show the units of one tag</source>
        <translation>un mot court de vous sur une station, pour la retrouver&#xa0;: la comparaison peut montrer les stations d’une étiquette</translation>
    </message>
    <message>
        <source>the external energy meter between the unit&apos;s socket and the load</source>
        <translation>le compteur d’énergie externe entre la prise de la station et la charge</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>the energy number in Wh that the meter counts up</source>
        <translation>l’énergie en Wh que le compteur totalise</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>the unit&apos;s own display of how full it is, in percent</source>
        <translation>l’affichage par la station de son niveau de charge, en pour cent</translation>
    </message>
    <message>
        <source>run</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>one test of one unit, from the first reading to the end</source>
        <translation>un test d’une station, du premier relevé à la fin</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>relevé</translation>
    </message>
    <message>
        <source>one note with its time: gauge, register, watts, a remark</source>
        <translation>une note avec son heure&#xa0;: jauge, index, watts, une remarque</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>a note of an event: load changed, meter zeroed, output tripped, cut-off</source>
        <translation>la note d’un événement&#xa0;: charge modifiée, compteur remis à zéro, sortie déclenchée, coupure</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>evidence kept in the logbook with a reading: drop, paste or choose it. %1, %2 MB together. An undone reading keeps its photos; a button below the readings shows them. A run sheet does not carry photos; a copy of the logbook does</source>
        <translation>preuve gardée dans le carnet avec un relevé&#xa0;: déposez-la, collez-la ou choisissez-la. %1, %2 MB en tout. Un relevé annulé garde ses photos&#x202f;; un bouton sous les relevés les montre. Une fiche d’essai n’emporte pas les photos&#x202f;; une copie du carnet, si</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>liste de charges</translation>
    </message>
    <message>
        <source>appliances that a unit is to feed, under a name: what each takes while on, how long a day, and when</source>
        <translation>les appareils qu’une station doit alimenter, sous un nom&#xa0;: ce que chacun prend en marche, combien de temps par jour, et quand</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>facteur de marche</translation>
    </message>
    <message>
        <source>share of the time that an appliance is on while it is in use, in percent</source>
        <translation>part du temps pendant laquelle un appareil est en marche tant qu’il sert, en pour cent</translation>
    </message>
    <message>
        <source>delivered energy</source>
        <translation>énergie délivrée</translation>
    </message>
    <message>
        <source>what the register counted during the run, corrected: Wh at the socket</source>
        <translation>ce que l’index a compté pendant l’essai, corrigé&#xa0;: Wh à la prise</translation>
    </message>
    <message>
        <source>gauge-implied energy</source>
        <translation>énergie selon la jauge</translation>
    </message>
    <message>
        <source>rated energy times the fall of the gauge: what the gauge says has gone</source>
        <translation>énergie assignée fois la baisse de la jauge&#xa0;: ce que la jauge dit parti</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fraction utile</translation>
    </message>
    <message>
        <source>delivered energy from full to cut-off, divided by rated energy</source>
        <translation>énergie délivrée de la pleine charge à la coupure, divisée par l’énergie assignée</translation>
    </message>
    <message>
        <source>the unit switches its output off by itself</source>
        <translation>la station coupe sa sortie d’elle-même</translation>
    </message>
    <message>
        <source>end of a run</source>
        <translation>fin d’un essai</translation>
    </message>
    <message>
        <source>cut-off seen, found off, or stopped by you. The form asks when, how late that may have been noticed, and what was shown then; what the entry row, the log and the last reading hold is offered. One undo lets the run go on</source>
        <translation>coupure vue, trouvée éteinte, ou arrêté par vous. Le formulaire demande quand, avec quel retard au plus cela a été remarqué, et ce qui était alors affiché&#x202f;; il propose ce que contiennent la ligne de saisie, le journal et le dernier relevé. Annuler une fois laisse l’essai continuer</translation>
    </message>
    <message>
        <source>round trip</source>
        <translation>aller-retour</translation>
    </message>
    <message>
        <source>energy delivered over energy charged, from one state of the unit back to the same</source>
        <translation>énergie délivrée sur énergie reçue, d’un état de la station jusqu’au même état</translation>
    </message>
    <message>
        <source>standby draw</source>
        <translation>consommation en veille</translation>
    </message>
    <message>
        <source>power that the unit consumes with its output off</source>
        <translation>puissance que la station consomme avec sa sortie coupée</translation>
    </message>
    <message>
        <source>log</source>
        <translation>journal</translation>
    </message>
    <message>
        <source>the file of a meter or unit that logs. Import log (or drop the file on a run) shows how it was read and asks what it leaves open; its register and power then go with the gauge readings noted by hand. The tab Log draws its power and states the load. A log that is still being written is followed, if you tick so: its new rows come in by themselves, also after the program was closed</source>
        <translation>le fichier d’un compteur ou d’une station qui enregistre. Importer un journal (ou déposer le fichier sur un essai) montre comment il a été lu et demande ce qu’il laisse ouvert&#x202f;; son index et sa puissance accompagnent alors les relevés de jauge notés à la main. L’onglet Journal trace sa puissance et décrit la charge. Un journal encore en cours d’écriture est suivi si vous cochez la case&#xa0;: ses nouvelles lignes entrent d’elles-mêmes, même après la fermeture du programme</translation>
    </message>
    <message>
        <source>charge from PV</source>
        <translation>recharge par PV</translation>
    </message>
    <message>
        <source>of several panels: a run for each, with its own meter and its name as the load. Runs at the same time are added up under Claims tested</source>
        <translation>par plusieurs panneaux&#xa0;: un essai pour chacun, avec son propre compteur et son nom comme charge. Les essais simultanés sont additionnés sous Valeurs vérifiées</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>décroissance</translation>
    </message>
    <message>
        <source>the end of a charge, while its power is below 90 % of its highest</source>
        <translation>la fin d’une recharge, quand sa puissance est sous 90 % de son maximum</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>consommation à vide</translation>
    </message>
    <message>
        <source>power that the unit itself consumes with its output on and nothing connected</source>
        <translation>puissance que la station elle-même consomme, sortie active et rien de branché</translation>
    </message>
    <message>
        <source>gauge minus what is truly left, in percentage points</source>
        <translation>jauge moins ce qui reste vraiment, en points de pourcentage</translation>
    </message>
    <message>
        <source>reminder</source>
        <translation>rappel</translation>
    </message>
    <message>
        <source>when a run calls for its next reading: an interval, a fall of the gauge, or a time before the cut-off</source>
        <translation>quand un essai appelle son prochain relevé&#xa0;: un délai, une baisse de la jauge, ou un temps avant la coupure</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>a named fault of gauge, run or claim, with the readings that show it</source>
        <translation>un défaut nommé de la jauge, de l’essai ou d’une valeur annoncée, avec les relevés qui le montrent</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>seen from full to cut-off, with a 95 % interval</source>
        <translation>vu de la pleine charge à la coupure, avec un intervalle à 95 %</translation>
    </message>
    <message>
        <source>share delivered</source>
        <translation>part délivrée</translation>
    </message>
    <message>
        <source>share of what a drain delivers that has been delivered, in percent</source>
        <translation>part déjà délivrée de ce qu’une décharge délivre, en pour cent</translation>
    </message>
    <message>
        <source>stored depth</source>
        <translation>part puisée</translation>
    </message>
    <message>
        <source>share of the stored energy that has gone, the unit&apos;s own draw counted in, in percent</source>
        <translation>part de l’énergie stockée qui est partie, consommation propre comprise, en pour cent</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>énergie avant consommation propre</translation>
    </message>
    <message>
        <source>what the socket would get if the no-load draw took nothing: where a line through all drains meets a run time of 0 h</source>
        <translation>ce que la prise recevrait si la consommation à vide ne prenait rien&#xa0;: là où une droite par toutes les décharges rencontre une durée de 0 h</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>autonomie à vide</translation>
    </message>
    <message>
        <source>how long a full unit lasts with its output on and nothing connected</source>
        <translation>combien de temps tient une station pleine, sortie active et rien de branché</translation>
    </message>
    <message>
        <source>projected</source>
        <translation>projeté</translation>
    </message>
    <message>
        <source>carried on from a part of a drain, through the gauge curve of an earlier full drain or else on an accurate gauge; of a unit, from its drains together. The reason says which</source>
        <translation>prolongé à partir d’un bout de décharge, par la courbe de jauge d’une décharge complète antérieure ou sinon avec une jauge juste&#x202f;; pour une station, à partir de l’ensemble de ses décharges. La raison dit lequel</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>encadrement</translation>
    </message>
    <message>
        <source>known only to lie between two limits</source>
        <translation>connu seulement entre deux limites</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>au moins</translation>
    </message>
    <message>
        <source>energy may be missing from the readings; the true value is not lower</source>
        <translation>il peut manquer de l’énergie dans les relevés&#x202f;; la valeur vraie n’est pas plus basse</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>these readings cannot tell; the reason says what would</source>
        <translation>ces relevés ne peuvent le dire&#x202f;; la raison dit ce qui le pourrait</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Toutes les touches</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Mots</translation>
    </message>
    <message>
        <source>&lt;b&gt;Delivered energy.&lt;/b&gt; Differences of the meter&apos;s register times its correction. Zeroed and swapped meters and a register that passed its span are joined; a fall without a mark is read as a reset or a typing error by the load that it would mean, and the run says which.</source>
        <translation>&lt;b&gt;Énergie délivrée.&lt;/b&gt; Différences de l’index du compteur fois sa correction. Les compteurs remis à zéro ou remplacés et un index qui a dépassé son étendue sont raccordés&#x202f;; une baisse sans repère est lue comme une remise à zéro ou une faute de frappe d’après la charge qu’elle impliquerait, et l’essai dit laquelle.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Uncertainty.&lt;/b&gt; The meter&apos;s error limit counts as a rectangular part common to all its readings, the register&apos;s and the gauge&apos;s step as rectangular parts of each reading, and the noted moment as one minute at the load. They are combined to a 95 % interval (JCGM 100:2008, clauses 4.3 and 5.1; results are rounded as its clause 7.2.6 asks). Rated energy is a claim and has no uncertainty.</source>
        <translation>&lt;b&gt;Incertitude.&lt;/b&gt; La limite d’erreur du compteur compte comme une part rectangulaire commune à tous ses relevés, les pas de l’index et de la jauge comme des parts rectangulaires de chaque relevé, et l’instant noté comme une minute à la charge. Elles sont composées en un intervalle à 95 % (JCGM 100:2008, articles 4.3 et 5.1&#x202f;; les résultats sont arrondis comme le veut son article 7.2.6). L’énergie assignée est une valeur annoncée et n’a pas d’incertitude.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Usable fraction.&lt;/b&gt; Measured only from full to cut-off, and always at the load of that run: a slow drain feeds the unit&apos;s own draw for longer. Any other drain is projected: through the gauge curve of the latest full drain of the unit before it, where there is one, else from end to end over the gauge&apos;s fall, as if the gauge were honest. The roundings of the gauge are in the interval.</source>
        <translation>&lt;b&gt;Fraction utile.&lt;/b&gt; Mesurée seulement de la pleine charge à la coupure, et toujours à la charge de cet essai&#xa0;: une décharge lente nourrit plus longtemps la consommation propre de la station. Toute autre décharge est projetée&#xa0;: par la courbe de jauge de la dernière décharge complète antérieure de la station, s’il y en a une, sinon d’un bout à l’autre sur la baisse de la jauge, comme si la jauge était juste. Les arrondis de la jauge sont dans l’intervalle.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Is the gauge right?&lt;/b&gt; Gauge-implied against delivered energy as a straight line with uncertainties in both (D. York, N. Evensen, M. Martinez, J. Delgado: American Journal of Physics 72, 2004, 367), and named faults, each with its readings, its size in percentage points or Wh, and the limit that it passed. The gauge error is drawn against share delivered and, where the no-load draw is known and the load varied, against stored depth.</source>
        <translation>&lt;b&gt;La jauge est-elle juste&#x202f;?&lt;/b&gt; Énergie selon la jauge face à énergie délivrée, comme une droite avec des incertitudes sur les deux (D. York, N. Evensen, M. Martinez, J. Delgado&#xa0;: American Journal of Physics 72, 2004, 367), et des défauts nommés, chacun avec ses relevés, son ampleur en points de pourcentage ou en Wh, et la limite qu’il a franchie. L’erreur de jauge est tracée selon la part délivrée et, si la consommation à vide est connue et que la charge a varié, selon la part puisée.</translation>
    </message>
    <message>
        <source>&lt;b&gt;No-load draw.&lt;/b&gt; Power with the output on and nothing connected is called no-load loss in IEC 61683. One run at a steady load cannot tell it from conversion loss; the program then says that it is not known.</source>
        <translation>&lt;b&gt;Consommation à vide.&lt;/b&gt; La puissance prise sortie active et rien de branché s’appelle pertes à vide dans IEC 61683. Un seul essai à charge constante ne peut la distinguer des pertes de conversion&#x202f;; le programme dit alors qu’elle est inconnue.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Forecast.&lt;/b&gt; While a drain runs, the strip and the energy chart show when it should be cut off, as a range that is meant to hold the moment in 95 of 100 drains. It comes from the earlier drains of the unit where there are any, else from this run&apos;s gauge; it then allows for a gauge that is bent, offset, ends early, falls too fast, lingers or is blind to the unit&apos;s own draw, and is wide early in a drain. The strip says whether it holds if the gauge is right, if it is wrong, or whichever is right. It takes the load to go on as it was: a change of load yet to come cannot be foreseen. It is no promise; do not leave a load that must not fail to it.</source>
        <translation>&lt;b&gt;Prévision.&lt;/b&gt; Pendant une décharge, le bandeau et le graphique d’énergie montrent quand la coupure devrait venir, comme une fourchette censée contenir l’instant dans 95 décharges sur 100. Elle vient des décharges antérieures de la station s’il y en a, sinon de la jauge de cet essai&#x202f;; elle tient alors compte d’une jauge courbe, décalée, qui finit tôt, tombe trop vite, s’attarde ou ignore la consommation propre de la station, et elle est large au début d’une décharge. Le bandeau dit si elle vaut quand la jauge est juste, quand elle est fausse, ou dans les deux cas. Elle suppose que la charge continue comme avant&#xa0;: un changement de charge à venir ne peut être prévu. Ce n’est pas une promesse&#x202f;; ne lui confiez pas une charge qui ne doit pas tomber.</translation>
    </message>
    <message>
        <source>&lt;b&gt;All drains of a unit.&lt;/b&gt; Delivered energy is energy before own consumption, less no-load draw times hours, less a small quadratic loss; a line through all drains from full to cut-off gives the first two once their run times differ by more than 1.5 times. Curves are dashed beyond the tested loads. The next run is the one that would narrow them most, of those that last a day at most if any of them would.</source>
        <translation>&lt;b&gt;Toutes les décharges d’une station.&lt;/b&gt; L’énergie délivrée est l’énergie avant consommation propre, moins la consommation à vide fois les heures, moins une petite perte quadratique&#x202f;; une droite par toutes les décharges de la pleine charge à la coupure donne les deux premières dès que leurs durées diffèrent d’un facteur de plus de 1,5. Les courbes sont en tirets au-delà des charges testées. Le prochain essai est celui qui les resserrerait le plus, parmi ceux qui durent un jour au plus si l’un d’eux y suffit.</translation>
    </message>
    <message>
        <source>&lt;b&gt;From run to run.&lt;/b&gt; Energy that falls with the days is ageing. Drains at like loads also show whether the gauge&apos;s own error curve moves: curves are compared at equal share delivered, where the meters&apos; errors cancel. A curve that moves under an unmoved energy is the gauge; an energy that falls under an unmoved curve is the unit.</source>
        <translation>&lt;b&gt;D’un essai à l’autre.&lt;/b&gt; Une énergie qui baisse avec les jours est du vieillissement. Des décharges à charges semblables montrent aussi si la courbe d’erreur propre à la jauge bouge&#xa0;: les courbes sont comparées à part délivrée égale, où les erreurs des compteurs s’annulent. Une courbe qui bouge sous une énergie qui ne bouge pas, c’est la jauge&#x202f;; une énergie qui baisse sous une courbe qui ne bouge pas, c’est la station.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Comparison.&lt;/b&gt; Units as they were tested, or at one load, to which each is moved by what all its drains say together. A unit that cannot be converted stays as tested and says why. Differences tells which units these meters can tell apart: the gain of a meter that measured both cancels, those of two meters do not. Prices per kWh are those of the list price; where what was paid is known, that stands beside it. A right click on the heads of the table chooses its columns, which can also be dragged; both are remembered, and exports follow. Units that are not told apart share a rank. Compare, Add units of another logbook looks into other logbooks: what is one unit, one meter or one run there is told by their hidden marks, not by names, and what two logbooks hold counts once. Many units are compared while you go on; of more than 40 rows Differences shows the 40 with the largest usable fraction.</source>
        <translation>&lt;b&gt;Comparaison.&lt;/b&gt; Les stations comme elles ont été testées, ou à une même charge, à laquelle chacune est ramenée par ce que disent ensemble toutes ses décharges. Une station qu’on ne peut ramener reste comme testée et dit pourquoi. Écarts dit quelles stations ces compteurs départagent&#xa0;: le gain d’un compteur qui a mesuré les deux s’annule, ceux de deux compteurs non. Les prix par kWh sont ceux du prix catalogue&#x202f;; si le prix payé est connu, il figure à côté. Un clic droit sur les en-têtes du tableau choisit ses colonnes, qu’on peut aussi déplacer&#x202f;; le programme s’en souvient, et les exports suivent. Les stations non départagées partagent un rang. Comparer, Ajouter les stations d’un autre carnet regarde dans d’autres carnets&#xa0;: quelle station, quel compteur ou quel essai y est le même se reconnaît à des marques cachées, non aux noms, et ce que deux carnets contiennent compte une fois. De nombreuses stations sont comparées pendant que vous continuez&#x202f;; au-delà de 40 lignes, Écarts montre les 40 de plus grande fraction utile.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Load lists.&lt;/b&gt; Daily energy is the sum of number, power, duty and hours; what was measured over some hours goes before power and duty. The output is taken to be on for the longest use by day and the longest by night, or all day where something is always connected; the mean over that time is the load at which the comparison puts units. The most that is asked at once is all that runs and the largest start-up extra. These are sums of what you stated, without interval.</source>
        <translation>&lt;b&gt;Listes de charges.&lt;/b&gt; L’énergie par jour est la somme de nombre, puissance, facteur de marche et heures&#x202f;; ce qui a été mesuré sur quelques heures passe avant la puissance et le facteur de marche. La sortie est supposée active pendant l’usage le plus long de jour et le plus long de nuit, ou tout le jour si quelque chose reste toujours branché&#x202f;; la moyenne sur ce temps est la charge à laquelle la comparaison ramène les stations. La plus forte demande simultanée est tout ce qui marche et le plus grand surplus de démarrage. Ce sont des sommes de ce que vous avez indiqué, sans intervalle.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Other claims.&lt;/b&gt; A charge gives energy in, time to full, power and taper; a charge to full after a cut-off and the drain after it give the round trip, between points that are named. Where one meter measured both its gain cancels. A sustained-output or peak-output run holds each step of load between two marks against the claim: held, tripped, or not reached. A standby run with the charge after it gives what the unit takes with its output off. The unit&apos;s page, Claims tested, has them all with the runs that show it.</source>
        <translation>&lt;b&gt;Autres valeurs annoncées.&lt;/b&gt; Une recharge donne l’énergie reçue, le temps jusqu’au plein, la puissance et la décroissance&#x202f;; une recharge complète après une coupure et la décharge qui la suit donnent l’aller-retour, entre des points nommés. Si un même compteur a mesuré les deux, son gain s’annule. Un essai de puissance soutenue ou de crête confronte chaque palier de charge entre deux repères à la valeur annoncée&#xa0;: tenu, déclenché ou non atteint. Un essai de veille avec la recharge qui le suit donne ce que la station prend avec sa sortie coupée. La page de la station, Valeurs vérifiées, les montre toutes avec les essais qui les établissent.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Sizing.&lt;/b&gt; Sizing, Sizing for a load list says how many days one full unit serves the list, from the fit of its own drains with the no-load draw counted in; the interval also holds what the list leaves open: used together or apart, begun at any hour. A unit that nobody tested stands with an expectation, 75 to 80 % of rated at the socket, which is no measurement. The array and the battery by rule (after IEEE 1562 and IEEE 1013) are a cross-check. Never connect the outputs of several units with each other.</source>
        <translation>&lt;b&gt;Dimensionnement.&lt;/b&gt; Dimensionnement, Dimensionnement pour une liste de charges dit combien de jours une station pleine sert la liste, d’après l’ajustement de ses propres décharges, consommation à vide comprise&#x202f;; l’intervalle contient aussi ce que la liste laisse ouvert&#xa0;: usages ensemble ou séparés, commencés à n’importe quelle heure. Une station que personne n’a testée figure avec une attente, 75 à 80 % de l’énergie assignée à la prise, qui n’est pas une mesure. Le champ PV et la batterie selon la règle (d’après IEEE 1562 et IEEE 1013) servent de recoupement. Ne reliez jamais entre elles les sorties de plusieurs stations.</translation>
    </message>
    <message>
        <source>&lt;b&gt;PV input.&lt;/b&gt; Sizing, PV input check compares a string of modules with the limits of a unit&apos;s PV input: open circuit at the coldest, maximum power at the hottest, current and power. The maker&apos;s temperature coefficient goes before the table of factors (NEC Table 690.7(A), crystalline silicon only). PV strings are live in light: local codes and a licensed electrician come first.</source>
        <translation>&lt;b&gt;Entrée PV.&lt;/b&gt; Dimensionnement, Contrôle de l’entrée PV compare une chaîne de modules aux limites de l’entrée PV d’une station&#xa0;: circuit ouvert au plus froid, puissance maximale au plus chaud, courant et puissance. Le coefficient de température du fabricant passe avant le tableau de facteurs (NEC, tableau 690.7(A), silicium cristallin seulement). Une chaîne PV est sous tension dès qu’il y a de la lumière&#xa0;: les règles locales et un électricien habilité passent d’abord.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Export.&lt;/b&gt; Compare, Export and Logbook, Export readings write tables as CSV, Markdown, HTML, XLSX, JSON and LaTeX with the same numbers in each; CSV, XLSX and JSON hold every digit, the limits of the interval and the kind. Beside a CSV file stands its description (W3C, Metadata Vocabulary for Tabular Data). Copy table and Ctrl+C give cells for a spreadsheet. Your words never become formulas there: one that begins like a formula gets an apostrophe in front.</source>
        <translation>&lt;b&gt;Export.&lt;/b&gt; Comparer, Exporter et Carnet, Exporter les relevés écrivent des tableaux en CSV, Markdown, HTML, XLSX, JSON et LaTeX avec les mêmes nombres dans chacun&#x202f;; CSV, XLSX et JSON gardent tous les chiffres, les limites de l’intervalle et la nature de la valeur. À côté d’un fichier CSV se trouve sa description (W3C, Metadata Vocabulary for Tabular Data). Copier le tableau et Ctrl+C donnent des cellules pour un tableur. Vos mots n’y deviennent jamais des formules&#xa0;: un mot qui commence comme une formule reçoit une apostrophe devant.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Report.&lt;/b&gt; Run, Make report and Compare, Make report write all of this with readings, budget, charts, findings, sources and the history of amended readings, as PDF or HTML on A4 or Letter. That of the comparison stands at the load that the page shows or as tested, and names the pairs of units that these meters cannot tell apart.</source>
        <translation>&lt;b&gt;Rapport.&lt;/b&gt; Essai, Faire le rapport et Comparer, Faire le rapport écrivent tout cela avec relevés, bilan, graphiques, constats, sources et historique des relevés rectifiés, en PDF ou HTML, au format A4 ou Letter. Celui de la comparaison est à la charge que montre la page ou comme testé, et nomme les paires de stations que ces compteurs ne départagent pas.</translation>
    </message>
    <message>
        <source>Ullage is the amount by which a container falls short of full. This program measures it for battery storage units: the energy printed on the case against the energy that reaches the socket.</source>
        <translation>Ullage désigne ce qui manque à un récipient pour être plein. Ce programme le mesure pour les stations d’énergie à batterie&#xa0;: l’énergie imprimée sur le boîtier face à l’énergie qui arrive à la prise.</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or any later version (GPL-3.0-or-later). It comes without any warranty.</source>
        <translation>Logiciel libre sous licence publique générale GNU, version 3 ou toute version ultérieure (GPL-3.0-or-later). Il est fourni sans aucune garantie.</translation>
    </message>
    <message>
        <source>Built with Qt and Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, libxlsxwriter and Exiv2.</source>
        <translation>Construit avec Qt et Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, libxlsxwriter et Exiv2.</translation>
    </message>
    <message>
        <source>%1 (the camera gave no time zone; read in %2)</source>
        <translation>%1 (l’appareil photo n’a donné aucun fuseau horaire&#x202f;; lu en %2)</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>prise %1</translation>
    </message>
    <message>
        <source>no time in it</source>
        <translation>sans heure</translation>
    </message>
    <message>
        <source>JPEG or PNG, at most %1 MB and %2 megapixels each</source>
        <translation>JPEG ou PNG, au plus %1 MB et %2 mégapixels chacune</translation>
    </message>
    <message>
        <source>none yet: gauge only</source>
        <translation>encore aucun&#xa0;: jauge seule</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>yes, full</source>
        <translation>oui, pleine</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>the wall</source>
        <translation>le secteur</translation>
    </message>
    <message>
        <source>the PV input</source>
        <translation>l’entrée PV</translation>
    </message>
    <message>
        <source>power of the load</source>
        <translation>puissance de la charge</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>second index</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>puissance affichée par la station</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>inutilisé</translation>
    </message>
    <message>
        <source>First rows of the table, the role of each column above them</source>
        <translation>Premières lignes du tableau, le rôle de chaque colonne au-dessus</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 contient</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Rows that are not taken</source>
        <translation>Lignes non reprises</translation>
    </message>
    <message>
        <source>row</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>taken in part</source>
        <translation>reprise en partie</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>laissée de côté</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Valeurs annoncées</translation>
    </message>
    <message>
        <source>Every drain</source>
        <translation>Chaque décharge</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Courbes</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Charges and outputs</source>
        <translation>Recharges et sorties</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Bilans d’incertitude</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>since %1, %2</source>
        <translation>depuis %1, %2</translation>
    </message>
    <message>
        <source>read just now</source>
        <translation>relevé à l’instant</translation>
    </message>
    <message>
        <source>read %1 ago</source>
        <translation>relevé il y a %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>cut-off, %1</source>
        <translation>coupure, %1</translation>
    </message>
    <message>
        <source>%1 at the latest</source>
        <translation>%1 au plus tard</translation>
    </message>
    <message>
        <source>dimmed %1:00 to 0%2:00</source>
        <translation>atténué de %1:00 à 0%2:00</translation>
    </message>
    <message>
        <source>dimmed</source>
        <translation>atténué</translation>
    </message>
    <message>
        <source>not dimmed</source>
        <translation>non atténué</translation>
    </message>
    <message>
        <source>No run uses this meter yet.</source>
        <translation>Aucun essai n’utilise encore ce compteur.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1 essai %2</translation>
    </message>
    <message>
        <source>Measured %1: %2</source>
        <translation>A mesuré %1&#xa0;: %2</translation>
    </message>
    <message>
        <source> and others</source>
        <translation> et d’autres</translation>
    </message>
    <message>
        <source>Class %1</source>
        <translation>Classe %1</translation>
    </message>
    <message>
        <source>range %1 to %2 W</source>
        <translation>plage de %1 à %2 W</translation>
    </message>
    <message>
        <source>any</source>
        <translation>sans limite</translation>
    </message>
    <message>
        <source>starts at %1 A</source>
        <translation>démarre à %1 A</translation>
    </message>
    <message>
        <source>certificate %1</source>
        <translation>certificat %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>du %1</translation>
    </message>
    <message>
        <source>valid until %1</source>
        <translation>valable jusqu’au %1</translation>
    </message>
    <message>
        <source>points %1 (W, correction, U in %, k)</source>
        <translation>points %1 (W, correction, U en %, k)</translation>
    </message>
    <message>
        <source>correction %1</source>
        <translation>correction %1</translation>
    </message>
    <message>
        <source>points %1</source>
        <translation>points %1</translation>
    </message>
    <message>
        <source>limit ±%1 %</source>
        <translation>limite ±%1 %</translation>
    </message>
    <message>
        <source>no limit stated</source>
        <translation>limite non précisée</translation>
    </message>
    <message>
        <source>step %1 Wh</source>
        <translation>pas %1 Wh</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>What the last edit moved is not worked out here: its runs have too many readings.</source>
        <translation>Ce que la dernière modification a déplacé n’est pas calculé ici&#xa0;: ses essais ont trop de relevés.</translation>
    </message>
    <message>
        <source>Last edit: %1</source>
        <translation>Dernière modification&#xa0;: %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>en retard de</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>prochain relevé</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sans rappel</translation>
    </message>
    <message>
        <source>next reading, snoozed</source>
        <translation>prochain relevé, reporté</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>écoulé</translation>
    </message>
    <message>
        <source>lasted</source>
        <translation>durée</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>mean power</source>
        <translation>puissance moyenne</translation>
    </message>
    <message>
        <source>mean power, since last</source>
        <translation>puiss. moy., depuis le dernier</translation>
    </message>
    <message>
        <source>mean load, since last</source>
        <translation>charge moy., depuis le dernier</translation>
    </message>
    <message>
        <source>W, %1 W</source>
        <translation>W, %1 W</translation>
    </message>
    <message>
        <source>usable fraction, %1</source>
        <translation>fraction utile (%1)</translation>
    </message>
    <message>
        <source>peak power</source>
        <translation>puissance max.</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>last reading</source>
        <translation>dernier relevé</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>min ago</source>
        <translation>min plus tôt</translation>
    </message>
    <message>
        <source>ago</source>
        <translation>plus tôt</translation>
    </message>
    <message>
        <source>elapsed; read %1</source>
        <translation>écoulé&#x202f;; relevé %1</translation>
    </message>
    <message>
        <source>Time since the first reading, and since the last.</source>
        <translation>Temps depuis le premier relevé, et depuis le dernier.</translation>
    </message>
    <message>
        <source>delivered; gauge %1 Wh</source>
        <translation>délivré&#x202f;; jauge %1 Wh</translation>
    </message>
    <message>
        <source>The gauge implies %1 Wh %2 than was delivered (rated energy times its fall): what the unit took for itself, capacity that is missing, or an error of the gauge.</source>
        <translation>La jauge implique %1 Wh %2 que délivré (énergie assignée fois sa baisse)&#xa0;: ce que la station a pris pour elle, de la capacité qui manque, ou une erreur de la jauge.</translation>
    </message>
    <message>
        <source>less</source>
        <translation>de moins</translation>
    </message>
    <message>
        <source>more</source>
        <translation>de plus</translation>
    </message>
    <message>
        <source>cut-off, overdue since</source>
        <translation>coupure, en retard depuis</translation>
    </message>
    <message>
        <source>95 % range %1, %2, %3</source>
        <translation>fourchette à 95 % %1, %2, %3</translation>
    </message>
    <message>
        <source>as calibrated</source>
        <translation>selon l’étalonnage</translation>
    </message>
    <message>
        <source>string</source>
        <translation>chaîne</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>marge</translation>
    </message>
    <message>
        <source>Choose the unit whose PV input is meant: its limits come from its claims.</source>
        <translation>Choisissez la station dont il s’agit de l’entrée PV&#xa0;: ses limites viennent de ses valeurs annoncées.</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>à partir de %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>%1 short circuit</source>
        <translation>%1 en court-circuit</translation>
    </message>
    <message>
        <source>No limit of the PV input of %1 is stated; enter what its label says.</source>
        <translation>Aucune limite de l’entrée PV de %1 n’est précisée&#x202f;; saisissez ce que dit sa plaque.</translation>
    </message>
    <message>
        <source>PV input of %1: %2</source>
        <translation>Entrée PV de %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>slope %1, delivered per gauge-implied energy</source>
        <translation>pente %1, énergie délivrée par énergie selon la jauge</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>défaut</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>doute</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supposé</translation>
    </message>
    <message>
        <source>Gauge: %1</source>
        <translation>Jauge&#xa0;: %1</translation>
    </message>
    <message>
        <source>about %1 Wh may be missing</source>
        <translation>il peut manquer environ %1 Wh</translation>
    </message>
    <message>
        <source>Delivered energy</source>
        <translation>Énergie délivrée</translation>
    </message>
    <message>
        <source>Usable fraction, the gauge&apos;s errors and losses: a %1 run does not tell them; make a drain.</source>
        <translation>Fraction utile, erreurs et pertes de la jauge&#xa0;: un essai de type %1 ne les dit pas&#x202f;; faites une décharge.</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fraction utile</translation>
    </message>
    <message>
        <source>Wh per gauge point</source>
        <translation>Wh par point de jauge</translation>
    </message>
    <message>
        <source>Whether a linear gauge fits: %1</source>
        <translation>Si une jauge linéaire convient&#xa0;: %1</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ce fichier n’existe pas</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>vérifiez le nom et le dossier</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>ce n’est pas un fichier</translation>
    </message>
    <message>
        <source>choose a picture</source>
        <translation>choisissez une image</translation>
    </message>
    <message>
        <source>the file has %1; a logbook takes %2</source>
        <translation>le fichier fait %1&#x202f;; un carnet en accepte %2</translation>
    </message>
    <message>
        <source>save it smaller, as JPEG for example</source>
        <translation>enregistrez-la plus petite, en JPEG par exemple</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>le fichier ne s’ouvre pas</translation>
    </message>
    <message>
        <source>check that you may read it</source>
        <translation>vérifiez que vous avez le droit de le lire</translation>
    </message>
    <message>
        <source>too many files are open</source>
        <translation>trop de fichiers sont ouverts</translation>
    </message>
    <message>
        <source>close other programs and try again</source>
        <translation>fermez d’autres programmes et réessayez</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>le fichier ne se lit pas jusqu’à sa fin</translation>
    </message>
    <message>
        <source>check the disk or card that it is on, or copy it elsewhere</source>
        <translation>vérifiez le disque ou la carte où il se trouve, ou copiez-le ailleurs</translation>
    </message>
    <message>
        <source>the picture could not be taken over</source>
        <translation>l’image n’a pas pu être reprise</translation>
    </message>
    <message>
        <source>save it as a file and attach that</source>
        <translation>enregistrez-la dans un fichier et joignez celui-ci</translation>
    </message>
    <message>
        <source>Reading photos</source>
        <translation>Lecture des photos</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>énergie</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>Readings of this run</source>
        <translation>Relevés de cet essai</translation>
    </message>
    <message>
        <source>Intervals of this run</source>
        <translation>Intervalles de cet essai</translation>
    </message>
    <message>
        <source>Gauge steps of this run</source>
        <translation>Pas de jauge de cet essai</translation>
    </message>
    <message>
        <source>Readings of all runs</source>
        <translation>Relevés de tous les essais</translation>
    </message>
    <message>
        <source>Intervals of all runs</source>
        <translation>Intervalles de tous les essais</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>crête</translation>
    </message>
    <message>
        <source> The power began to fall at a gauge of %1 %.</source>
        <translation> La puissance a commencé à baisser à une jauge de %1 %.</translation>
    </message>
    <message>
        <source>%1 for %2 min, %3</source>
        <translation>%1 pendant %2 min, %3</translation>
    </message>
    <message>
        <source> Trips: %1, resets: %2.</source>
        <translation> Déclenchements&#xa0;: %1, réarmements&#xa0;: %2.</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>puissance de crête</translation>
    </message>
    <message>
        <source>sustained output</source>
        <translation>puissance soutenue</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>claimed</source>
        <translation>annoncé</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>verdict</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>preuve</translation>
    </message>
    <message>
        <source>%1: not known: %2.</source>
        <translation>%1&#xa0;: inconnu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1: %2 (%3), %4 a day, %5 a month</source>
        <translation>%1&#xa0;: %2 (%3), %4 par jour, %5 par mois</translation>
    </message>
    <message>
        <source>; %1 %3 a day, %2 %3 a month, %4</source>
        <translation>&#x202f;; %1 %3 par jour, %2 %3 par mois, %4</translation>
    </message>
    <message>
        <source>; %1.</source>
        <translation>&#x202f;; %1.</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>énergie assignée</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>puissance assignée</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>temps de recharge</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>prix payé</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantie</translation>
    </message>
    <message>
        <source>years</source>
        <translation>ans</translation>
    </message>
    <message>
        <source>PV input, at most</source>
        <translation>entrée PV, au plus</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>pas de la jauge</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>étiquettes</translation>
    </message>
    <message>
        <source>mean of %1 drains from full to cut-off, near %2%3W</source>
        <translation>moyenne de %1 décharges de la pleine charge à la coupure, vers %2%3W</translation>
    </message>
    <message>
        <source>so far, %1</source>
        <translation>jusqu’ici, %1</translation>
    </message>
    <message>
        <source>from full to cut-off, %1</source>
        <translation>de la pleine charge à la coupure, %1</translation>
    </message>
    <message>
        <source>not the whole unit, %1</source>
        <translation>pas toute la station, %1</translation>
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
        <translation type="unfinished">%1&#xa0;: %2 {1.?}</translation>
    </message>
    <message>
        <source>what the meter&apos;s register counted at the socket, in Wh, with ± at 95 %</source>
        <translation>ce que l’index du compteur a compté à la prise, en Wh, avec ± à 95 %</translation>
    </message>
    <message>
        <source>delivered energy from full to cut-off over rated energy, at the load of that run</source>
        <translation>énergie délivrée de la pleine charge à la coupure sur énergie assignée, à la charge de cet essai</translation>
    </message>
    <message>
        <source>power that the unit takes for itself while its output is on, in W, seen from the socket</source>
        <translation>puissance que la station prend pour elle-même quand sa sortie est active, en W, vue de la prise</translation>
    </message>
    <message>
        <source>deliverable energy</source>
        <translation>énergie délivrable</translation>
    </message>
    <message>
        <source>what the unit would deliver at a load at which it was not drained, from all its drains</source>
        <translation>ce que la station délivrerait à une charge à laquelle elle n’a pas été déchargée, d’après toutes ses décharges</translation>
    </message>
    <message>
        <source>difference ±</source>
        <translation>écart ±</translation>
    </message>
    <message>
        <source>the two are clearly different where its 95 % interval does not hold 0; else nobody can say from these meters which unit is better</source>
        <translation>les deux diffèrent nettement si son intervalle à 95 % ne contient pas 0&#x202f;; sinon nul ne peut dire, avec ces compteurs, quelle station est la meilleure</translation>
    </message>
    <message>
        <source>What the quantities mean</source>
        <translation>Ce que signifient les grandeurs</translation>
    </message>
    <message>
        <source>Three units of the sample logbook (Logbook, Open the sample logbook) as the comparison page shows them. Units and readings are invented; the figures are worked out as you read.</source>
        <translation>Trois stations du carnet d’exemple (Carnet, Ouvrir le carnet d’exemple) comme la page de comparaison les montre. Stations et relevés sont inventés&#x202f;; les chiffres sont calculés pendant que vous lisez.</translation>
    </message>
    <message>
        <source>store the reading in the entry row</source>
        <translation>enregistrer le relevé de la ligne de saisie</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>next or previous field</source>
        <translation>champ suivant ou précédent</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Maj+Tab</translation>
    </message>
    <message>
        <source>clear the entry row</source>
        <translation>vider la ligne de saisie</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>answer a doubt: as meant, keep, correct, reset, swapped</source>
        <translation>répondre à un doute&#xa0;: comme voulu, garder, corriger, remise à zéro, remplacé</translation>
    </message>
    <message>
        <source>M, K, C, Z, W</source>
        <translation>M, K, C, Z, W</translation>
    </message>
    <message>
        <source>take the reading of that card</source>
        <translation>saisir le relevé de cette carte</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 à 9</translation>
    </message>
    <message>
        <source>dim the display: by the hours, always, never</source>
        <translation>atténuer l’affichage&#xa0;: selon l’heure, toujours, jamais</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>reprendre la dernière action</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>leave the entry, then the display</source>
        <translation>quitter la saisie, puis l’affichage</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Entering a reading</source>
        <translation>Saisir un relevé</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Un événement s’est produit</translation>
    </message>
    <message>
        <source>Tests and reminders</source>
        <translation>Essais et rappels</translation>
    </message>
    <message>
        <source>Bench display</source>
        <translation>Affichage de banc</translation>
    </message>
    <message>
        <source>Keys at the bench</source>
        <translation>Touches du banc</translation>
    </message>
    <message>
        <source>key</source>
        <translation>touche</translation>
    </message>
    <message>
        <source>what it does</source>
        <translation>ce qu’elle fait</translation>
    </message>
    <message>
        <source>Always.</source>
        <translation>Toujours.</translation>
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
        <translation>entre %1 et %2</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1 %2&#xa0;: %3.</translation>
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
        <translation>du presse-papiers</translation>
    </message>
    <message>
        <source>hours since the first reading</source>
        <translation>heures depuis le premier relevé</translation>
    </message>
    <message>
        <source>gauge / %</source>
        <translation>jauge / %</translation>
    </message>
    <message>
        <source>No reading has a gauge or a register.</source>
        <translation>Aucun relevé n’a de jauge ni d’index.</translation>
    </message>
    <message>
        <source>, calibrated</source>
        <translation>, étalonné</translation>
    </message>
    <message>
        <source>… and more, which Save and Copy take whole</source>
        <translation>… et la suite, que Enregistrer et Copier prennent en entier</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>choisir…</translation>
    </message>
    <message>
        <source>Not known of %1: %2 (%3).</source>
        <translation>Inconnu pour %1&#xa0;: %2 (%3).</translation>
    </message>
    <message>
        <source>Each other cell tells its reason when pointed at.</source>
        <translation>Pointez une autre cellule&#xa0;: elle dit sa raison.</translation>
    </message>
    <message>
        <source>nothing since %1</source>
        <translation>rien depuis %1</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;All files (*)</source>
        <translation>Tableaux (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;Tous les fichiers (*)</translation>
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
        <translation type="unfinished">La page d’un essai</translation>
    </message>
    <message>
        <source>Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and log stand in the tabs; what the readings say stands below.</source>
        <translation type="unfinished">Tapez ce que montrent la jauge et l’index dans la ligne sous les relevés, puis Entrée. Une valeur douteuse donne lieu à une question&#x202f;; rien n’est enregistré avant votre réponse. F3 à F7 notent aussitôt un événement, F8 termine l’essai. Graphiques, bilan et journal sont dans les onglets&#x202f;; ce que disent les relevés est en dessous.</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation type="unfinished">Essais en cours</translation>
    </message>
    <message>
        <source>All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 shows them over the whole screen, to be read from two metres.</source>
        <translation type="unfinished">Tous les essais en cours, côte à côte&#xa0;: où en est chacun, quand sa coupure devrait venir et quand son prochain relevé est à faire. F11 les montre en plein écran, lisibles à deux mètres.</translation>
    </message>
    <message>
        <source>The page of a unit</source>
        <translation type="unfinished">La page d’une station</translation>
    </message>
    <message>
        <source>What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run (Ctrl+R) begins one.</source>
        <translation type="unfinished">Ce que disent ensemble tous les essais de la station, ses valeurs annoncées face aux essais, et le prochain essai utile. Démarrer un essai (Ctrl+R) en commence un.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished">Comparaison</translation>
    </message>
    <message>
        <source>Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they cannot tell apart share a rank.</source>
        <translation type="unfinished">Les stations côte à côte, comme testé ou à une même charge. La phrase du haut dit quel ordre les compteurs établissent&#x202f;; les stations qu’ils ne départagent pas partagent un rang.</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation type="unfinished">Dimensionnement</translation>
    </message>
    <message>
        <source>How many days each unit carries a load list, how many units that takes, and which PV array.</source>
        <translation type="unfinished">Combien de jours chaque station alimente une liste de charges, combien de stations il y faut, et quel champ PV.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation type="unfinished">Listes de charges</translation>
    </message>
    <message>
        <source>Appliances that a unit is to feed: what each takes while on, how long a day, and when.</source>
        <translation type="unfinished">Les appareils qu’une station doit alimenter&#xa0;: ce que chacun prend en marche, combien de temps par jour, et quand.</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation type="unfinished">Entrée PV</translation>
    </message>
    <message>
        <source>Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.</source>
        <translation type="unfinished">Si une chaîne de modules convient à l’entrée PV d’une station, à froid et à chaud. Une chaîne PV est sous tension dès qu’il y a de la lumière.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation type="unfinished">Compteurs</translation>
    </message>
    <message>
        <source>What is stated of each meter. Without its error limit no interval can be stated.</source>
        <translation type="unfinished">Ce qui est précisé de chaque compteur. Sans sa limite d’erreur, aucun intervalle ne peut être donné.</translation>
    </message>
</context>
<context>
    <name>ullage::AccountsView</name>
    <message>
        <source>If the gauge is right</source>
        <translation>Si la jauge est juste</translation>
    </message>
    <message>
        <source>If the gauge is wrong</source>
        <translation>Si la jauge est fausse</translation>
    </message>
    <message>
        <source>Gauge right, gauge wrong</source>
        <translation>Jauge juste, jauge fausse</translation>
    </message>
    <message>
        <source>Ruled out: %1</source>
        <translation>Exclu&#xa0;: %1</translation>
    </message>
    <message>
        <source>What decides: %1</source>
        <translation>Ce qui tranche&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ullage::AmendDialog</name>
    <message>
        <source>Amend reading</source>
        <translation>Rectifier le relevé</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Gauge, %</source>
        <translation>Jauge, %</translation>
    </message>
    <message>
        <source>Register, Wh</source>
        <translation>Index, Wh</translation>
    </message>
    <message>
        <source>Second register, Wh</source>
        <translation>Second index, Wh</translation>
    </message>
    <message>
        <source>Meter power, W</source>
        <translation>Puissance compteur, W</translation>
    </message>
    <message>
        <source>Unit&apos;s display, W</source>
        <translation>Afficheur, W</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>sans repère</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Why it changes</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>for example: misread in the dark</source>
        <translation>par exemple&#xa0;: mal lu dans le noir</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historique</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>Amend</source>
        <translation>Rectifier</translation>
    </message>
</context>
<context>
    <name>ullage::AnalyseUnits</name>
    <message>
        <source>Analysing %1 readings</source>
        <translation>Analyse de %1 relevés</translation>
    </message>
</context>
<context>
    <name>ullage::AnswerView</name>
    <message>
        <source>caution</source>
        <translation>prudence</translation>
    </message>
</context>
<context>
    <name>ullage::ApplianceForm</name>
    <message>
        <source>Add appliance to %1</source>
        <translation>Ajouter un appareil à %1</translation>
    </message>
    <message>
        <source>Appliance %1</source>
        <translation>Appareil %1</translation>
    </message>
    <message>
        <source>Add appliance</source>
        <translation>Ajouter un appareil</translation>
    </message>
    <message>
        <source>Save appliance</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>such as: lamp</source>
        <translation>par exemple&#xa0;: lampe</translation>
    </message>
    <message>
        <source>How &amp;many alike</source>
        <translation>&amp;Quantité</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>What one of them takes</source>
        <translation>Ce qu’un seul prend</translation>
    </message>
    <message>
        <source>&amp;Power while on</source>
        <translation>&amp;Puissance en marche</translation>
    </message>
    <message>
        <source>9 W</source>
        <translation>9 W</translation>
    </message>
    <message>
        <source>&amp;Duty, share of the time on</source>
        <translation>&amp;Facteur de marche, part du temps</translation>
    </message>
    <message>
        <source>100 %; a refrigerator some 35 %</source>
        <translation>100 %&#x202f;; un réfrigérateur environ 35 %</translation>
    </message>
    <message>
        <source>&amp;Or as measured in use</source>
        <translation>&amp;Ou comme mesuré à l’usage</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>énergie</translation>
    </message>
    <message>
        <source>500 Wh</source>
        <translation>500 Wh</translation>
    </message>
    <message>
        <source>over</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>24 h</source>
        <translation>24 h</translation>
    </message>
    <message>
        <source>Highest power of its &amp;start</source>
        <translation>Puissance max. au &amp;démarrage</translation>
    </message>
    <message>
        <source>no more than while on</source>
        <translation>pas plus qu’en marche</translation>
    </message>
    <message>
        <source>When it is in use</source>
        <translation>Quand il sert</translation>
    </message>
    <message>
        <source>&amp;Hours per day</source>
        <translation>&amp;Heures par jour</translation>
    </message>
    <message>
        <source>5 h</source>
        <translation>5 h</translation>
    </message>
    <message>
        <source>Of these at ni&amp;ght</source>
        <translation>Dont la n&amp;uit</translation>
    </message>
    <message>
        <source>0 h</source>
        <translation>0 h</translation>
    </message>
    <message>
        <source>&amp;Output of the unit</source>
        <translation>&amp;Sortie de la station</translation>
    </message>
    <message>
        <source>on while it is in use</source>
        <translation>active pendant qu’il sert</translation>
    </message>
    <message>
        <source>always on for it</source>
        <translation>toujours active pour lui</translation>
    </message>
    <message>
        <source>The appliance needs a name.</source>
        <translation>L’appareil a besoin d’un nom.</translation>
    </message>
    <message>
        <source>Enter a whole number, 1 to %1.</source>
        <translation>Saisissez un nombre entier, de 1 à %1.</translation>
    </message>
    <message>
        <source>The duty is a share of the time: more than 0 %, at most 100 %.</source>
        <translation>Le facteur de marche est une part du temps&#xa0;: plus de 0 %, au plus 100 %.</translation>
    </message>
    <message>
        <source>Say over how many hours that energy was measured.</source>
        <translation>Dites sur combien d’heures cette énergie a été mesurée.</translation>
    </message>
    <message>
        <source>Say how much energy was measured over those hours.</source>
        <translation>Dites quelle énergie a été mesurée sur ces heures.</translation>
    </message>
    <message>
        <source>Enter its power while on, or below what it took over some hours.</source>
        <translation>Saisissez sa puissance en marche, ou plus bas ce qu’il a pris sur quelques heures.</translation>
    </message>
    <message>
        <source>That is %1 W on average, more than its power while on. Correct one of the two.</source>
        <translation>Cela fait %1 W en moyenne, plus que sa puissance en marche. Corrigez l’un des deux.</translation>
    </message>
    <message>
        <source>The start is below its power while on; leave it empty where nothing more is taken.</source>
        <translation>Le démarrage est sous sa puissance en marche&#x202f;; laissez-le vide si rien de plus n’est pris.</translation>
    </message>
    <message>
        <source>Say for how many hours of a day it is in use.</source>
        <translation>Dites combien d’heures par jour il sert.</translation>
    </message>
    <message>
        <source>A day has 24 h: enter more than 0 h, at most 24 h.</source>
        <translation>Un jour a 24 h&#xa0;: saisissez plus de 0 h, au plus 24 h.</translation>
    </message>
    <message>
        <source>At most its hours per day lie at night.</source>
        <translation>De nuit, il ne peut servir plus que ses heures par jour.</translation>
    </message>
</context>
<context>
    <name>ullage::BenchController</name>
    <message>
        <source>Nothing to snooze: the next reading of %1 is due only in %2 minutes.</source>
        <translation>Rien à reporter&#xa0;: le prochain relevé de %1 n’est à faire que dans %2 minutes.</translation>
    </message>
    <message>
        <source>Nothing to snooze: no reading of %1 is due.</source>
        <translation>Rien à reporter&#xa0;: aucun relevé de %1 n’est à faire.</translation>
    </message>
    <message>
        <source>next reading %1</source>
        <translation>prochain relevé&#xa0;: %1</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sans rappel</translation>
    </message>
</context>
<context>
    <name>ullage::BenchDisplay</name>
    <message>
        <source>Running tests</source>
        <translation>Essais en cours</translation>
    </message>
    <message>
        <source>%1, Ctrl+Z takes it back</source>
        <translation>%1, Ctrl+Z l’annule</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 relevé</translation>
    </message>
    <message>
        <source>1 to %1 reading</source>
        <translation>1 à %1 relevé</translation>
    </message>
    <message>
        <source>N %1</source>
        <translation>N %1</translation>
    </message>
    <message>
        <source>Esc back</source>
        <translation>Échap retour</translation>
    </message>
    <message>
        <source>No test is running. Esc goes back; Ctrl+R starts one there.</source>
        <translation>Aucun essai en cours. Échap ramène en arrière&#x202f;; Ctrl+R y démarre un essai.</translation>
    </message>
</context>
<context>
    <name>ullage::BenchPage</name>
    <message>
        <source>No test is running. Start one: it then stands here with its gauge, its expected cut-off and its next reading until you end it, beside the others that run.</source>
        <translation>Aucun essai en cours. Démarrez-en un&#xa0;: il figure alors ici avec sa jauge, sa coupure attendue et son prochain relevé jusqu’à ce que vous le terminiez, à côté des autres essais en cours.</translation>
    </message>
    <message>
        <source>Full screen  F11</source>
        <translation>Plein écran  F11</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Démarrer un essai</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Essais en cours</translation>
    </message>
    <message>
        <source>A card for each running test over the whole screen, to be read from two metres</source>
        <translation>Une carte par essai en cours sur tout l’écran, lisible à deux mètres</translation>
    </message>
    <message>
        <source>%1, %2 with a reading due</source>
        <translation>%1, dont %2 avec un relevé à faire</translation>
    </message>
</context>
<context>
    <name>ullage::BenchPanel</name>
    <message>
        <source>Enter reading</source>
        <translation>Saisir un relevé</translation>
    </message>
    <message>
        <source>Next reading…</source>
        <translation>Prochain relevé…</translation>
    </message>
    <message>
        <source>Snooze %1 min</source>
        <translation>Reporter de %1 min</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sans rappel</translation>
    </message>
    <message>
        <source>Enter reading of %1</source>
        <translation>Saisir un relevé de %1</translation>
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
type %2, %3</translation>
    </message>
</context>
<context>
    <name>ullage::BudgetView</name>
    <message>
        <source>Uncertainty budget of the delivered energy</source>
        <translation>Bilan d’incertitude de l’énergie délivrée</translation>
    </message>
    <message>
        <source>No budget yet: it needs two readings of the meter&apos;s register.</source>
        <translation>Encore aucun bilan&#xa0;: il y faut deux relevés de l’index du compteur.</translation>
    </message>
    <message>
        <source>Combined standard uncertainty %1 Wh%2.</source>
        <translation>Incertitude-type composée %1 Wh%2.</translation>
    </message>
    <message>
        <source> 95 % interval: ± %1 Wh</source>
        <translation> Intervalle à 95 %&#xa0;: ± %1 Wh</translation>
    </message>
</context>
<context>
    <name>ullage::Builder</name>
    <message>
        <source>hours since start</source>
        <translation>heures depuis le début</translation>
    </message>
    <message>
        <source>by the log</source>
        <translation>d’après le journal</translation>
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
        <translation>prix d’un kWh</translation>
    </message>
    <message>
        <source>What the unit takes for itself</source>
        <translation>Ce que la station prend pour elle-même</translation>
    </message>
    <message>
        <source>Price of a &amp;kWh</source>
        <translation>Prix du &amp;kWh</translation>
    </message>
    <message>
        <source>The price of a kWh is no number of 0 or more; enter it like 0.30.</source>
        <translation>Le prix d’un kWh n’est pas un nombre supérieur ou égal à 0&#x202f;; saisissez-le comme 0,30.</translation>
    </message>
    <message>
        <source>Output on</source>
        <translation>Sortie active</translation>
    </message>
    <message>
        <source>Output off</source>
        <translation>Sortie coupée</translation>
    </message>
</context>
<context>
    <name>ullage::ColumnsDialog</name>
    <message>
        <source>Columns</source>
        <translation>Colonnes</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Appliquer</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Jeu</translation>
    </message>
    <message>
        <source>&amp;Remove this set</source>
        <translation>&amp;Supprimer ce jeu</translation>
    </message>
    <message>
        <source>&amp;Up</source>
        <translation>&amp;Monter</translation>
    </message>
    <message>
        <source>&amp;Down</source>
        <translation>&amp;Descendre</translation>
    </message>
    <message>
        <source>&amp;Keep as</source>
        <translation>&amp;Garder sous</translation>
    </message>
    <message>
        <source>a name, to keep these columns as a set of yours</source>
        <translation>un nom, pour garder ces colonnes comme votre jeu</translation>
    </message>
    <message>
        <source>The table on the page, its copies, exports and reports have these columns, from left to right. At one load the figures there stand in place of those as tested.</source>
        <translation>Le tableau de la page, ses copies, exports et rapports ont ces colonnes, de gauche à droite. À une même charge, les chiffres à cette charge remplacent ceux comme testé.</translation>
    </message>
    <message>
        <source>as ticked below</source>
        <translation>comme coché ci-dessous</translation>
    </message>
    <message>
        <source>for readers</source>
        <translation>pour les lecteurs</translation>
    </message>
    <message>
        <source>for a spreadsheet: all columns</source>
        <translation>pour un tableur&#xa0;: toutes les colonnes</translation>
    </message>
    <message>
        <source>%1 (yours: not for readers)</source>
        <translation>%1 (à vous&#xa0;: pas pour les lecteurs)</translation>
    </message>
    <message>
        <source>No column is ticked: tick at least one.</source>
        <translation>Aucune colonne n’est cochée&#xa0;: cochez-en au moins une.</translation>
    </message>
    <message>
        <source>This name belongs to a ready set; choose another.</source>
        <translation>Ce nom est celui d’un jeu tout prêt&#x202f;; choisissez-en un autre.</translation>
    </message>
</context>
<context>
    <name>ullage::ComparingBar</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Units compared</source>
        <translation>Stations comparées</translation>
    </message>
    <message>
        <source>Comparing units: %1 of %2</source>
        <translation>Comparaison des stations&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>Stopped: %1 units are still to be compared. What stands below is as it was before.</source>
        <translation>Arrêté&#xa0;: %1 stations restent à comparer. Ce qui figure en dessous est comme avant.</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonChoice</name>
    <message>
        <source>As tested</source>
        <translation>Comme testé</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>À une charge</translation>
    </message>
    <message>
        <source>At a load list</source>
        <translation>À une liste</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Liste de charges</translation>
    </message>
    <message>
        <source>Its mean power while the unit&apos;s output is on; Edit, Load lists has them in full</source>
        <translation>Sa puissance moyenne quand la sortie de la station est active&#x202f;; Édition, Listes de charges les montre en entier</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>on for</source>
        <translation>en marche</translation>
    </message>
    <message>
        <source> % of time</source>
        <translation> % du temps</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source> % of rated</source>
        <translation> % de l’assignée</translation>
    </message>
    <message>
        <source>only units whose name, maker or remark has these words</source>
        <translation>seulement les stations dont le nom, le fabricant ou la remarque contient ces mots</translation>
    </message>
    <message>
        <source>Filter of units</source>
        <translation>Filtre des stations</translation>
    </message>
    <message>
        <source>Tag of units</source>
        <translation>Étiquette des stations</translation>
    </message>
    <message>
        <source>Only units with this tag; tags are given in a unit&apos;s claims</source>
        <translation>Seulement les stations de cette étiquette&#x202f;; les étiquettes se donnent dans les valeurs annoncées d’une station</translation>
    </message>
    <message>
        <source>rated from</source>
        <translation>assignée de</translation>
    </message>
    <message>
        <source> Wh</source>
        <translation> Wh</translation>
    </message>
    <message>
        <source>any</source>
        <translation>sans limite</translation>
    </message>
    <message>
        <source>%1, %2 W</source>
        <translation>%1, %2 W</translation>
    </message>
    <message>
        <source>any tag</source>
        <translation>toute étiquette</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonController</name>
    <message>
        <source>Add units of another logbook</source>
        <translation>Ajouter les stations d’un autre carnet</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonPage</name>
    <message>
        <source>Columns…</source>
        <translation>Colonnes…</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Copier le tableau</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exporter…</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lecture de %1</translation>
    </message>
    <message>
        <source>The units are not compared yet.</source>
        <translation>Les stations ne sont pas encore comparées.</translation>
    </message>
    <message>
        <source>The units are not compared yet; the line above them says how far that is.</source>
        <translation>Les stations ne sont pas encore comparées&#x202f;; la ligne au-dessus d’elles dit où cela en est.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparaison</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>lignes</translation>
    </message>
    <message>
        <source>one for each unit</source>
        <translation>une par station</translation>
    </message>
    <message>
        <source>every drain</source>
        <translation>chaque décharge</translation>
    </message>
    <message>
        <source>Which columns the table has, here and in all that leaves the page</source>
        <translation>Quelles colonnes a le tableau, ici et partout où il quitte la page</translation>
    </message>
    <message>
        <source>The table as it is shown, for a spreadsheet</source>
        <translation>Le tableau comme il est affiché, pour un tableur</translation>
    </message>
    <message>
        <source>Pictures of the comparison</source>
        <translation>Images de la comparaison</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fraction utile</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Models</source>
        <translation>Modèles</translation>
    </message>
    <message>
        <source>Against load</source>
        <translation>Selon la charge</translation>
    </message>
    <message>
        <source>Gauge errors</source>
        <translation>Erreurs de jauge</translation>
    </message>
    <message>
        <source>how much more or less the unit of a row has in</source>
        <translation>ce que la station d’une ligne a de plus ou de moins en</translation>
    </message>
    <message>
        <source>Figure in which units are held against each other</source>
        <translation>Grandeur dans laquelle les stations sont confrontées</translation>
    </message>
    <message>
        <source>Differences between units</source>
        <translation>Écarts entre stations</translation>
    </message>
    <message>
        <source>Comparison of the units</source>
        <translation>Comparaison des stations</translation>
    </message>
    <message>
        <source>The table is on the clipboard, ready to be pasted into a spreadsheet.</source>
        <translation>Le tableau est dans le presse-papiers, prêt à être collé dans un tableur.</translation>
    </message>
    <message>
        <source>Columns for readers</source>
        <translation>Colonnes pour les lecteurs</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>récipients</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fraction utile</translation>
    </message>
    <message>
        <source>Models by their specimens</source>
        <translation>Modèles d’après leurs exemplaires</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonPresenter</name>
    <message>
        <source>This run is in %1; open that logbook to see it.</source>
        <translation>Cet essai est dans %1&#x202f;; ouvrez ce carnet pour le voir.</translation>
    </message>
    <message>
        <source>no drains to show</source>
        <translation>aucune décharge</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>comme testé</translation>
    </message>
    <message>
        <source>%1 units, %2 drains, %3</source>
        <translation>%1 stations, %2 décharges, %3</translation>
    </message>
    <message>
        <source>Left out: %1
</source>
        <translation>Laissé de côté&#xa0;: %1
</translation>
    </message>
    <message>
        <source>Of %1 rows the %2 with the largest usable fraction; filter to see others.</source>
        <translation>Sur %1 lignes, les %2 de plus grande fraction utile&#x202f;; filtrez pour voir les autres.</translation>
    </message>
</context>
<context>
    <name>ullage::Controller</name>
    <message>
        <source>Logbooks (*.ullage);;All files (*)</source>
        <translation>Carnets (*.ullage);;Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>ullage::DisplayCard</name>
    <message>
        <source>next reading</source>
        <translation>prochain relevé</translation>
    </message>
    <message>
        <source>%1, no reading yet</source>
        <translation>%1, encore aucun relevé</translation>
    </message>
    <message>
        <source>look now</source>
        <translation>à relever</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sans rappel</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
</context>
<context>
    <name>ullage::DisplayEntry</name>
    <message>
        <source>gauge, %</source>
        <translation>jauge, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>index, Wh</translation>
    </message>
    <message>
        <source>second register, Wh</source>
        <translation>second index, Wh</translation>
    </message>
    <message>
        <source>Enter records, Esc goes back.</source>
        <translation>Entrée enregistre, Échap revient.</translation>
    </message>
    <message>
        <source>With what is half typed on its page: %1. Enter records, Esc goes back.</source>
        <translation>Avec ce qui est à moitié tapé sur sa page&#xa0;: %1. Entrée enregistre, Échap revient.</translation>
    </message>
    <message>
        <source>What is typed here is not on the disk. %1</source>
        <translation>Ce qui est tapé ici n’est pas sur le disque. %1</translation>
    </message>
</context>
<context>
    <name>ullage::Document</name>
    <message>
        <source>edit method</source>
        <translation>modification de la méthode</translation>
    </message>
    <message>
        <source>edit publisher&apos;s details</source>
        <translation>modification des mentions de l’éditeur</translation>
    </message>
</context>
<context>
    <name>ullage::DoneLine</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Takes back what is named beside it; so does Ctrl+Z</source>
        <translation>Annule ce qui est nommé à côté&#x202f;; Ctrl+Z aussi</translation>
    </message>
</context>
<context>
    <name>ullage::EndForm</name>
    <message>
        <source>End run</source>
        <translation>Terminer l’essai</translation>
    </message>
    <message>
        <source>&amp;How it ended</source>
        <translation>&amp;Comment il a fini</translation>
    </message>
    <message>
        <source>choose …</source>
        <translation>choisir …</translation>
    </message>
    <message>
        <source>cut-off seen: off before my eyes</source>
        <translation>coupure vue&#xa0;: éteinte sous mes yeux</translation>
    </message>
    <message>
        <source>found off: went off unseen</source>
        <translation>trouvée éteinte&#xa0;: éteinte sans témoin</translation>
    </message>
    <message>
        <source>stopped by me</source>
        <translation>arrêté par moi</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>&amp;Quand</translation>
    </message>
    <message>
        <source>time, at first now</source>
        <translation>heure, d’abord maintenant</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>noticed so late at most</source>
        <translation>remarqué au plus avec ce retard</translation>
    </message>
    <message>
        <source>02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>gauge, %</source>
        <translation>jauge, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>index, Wh</translation>
    </message>
    <message>
        <source>second register, Wh</source>
        <translation>second index, Wh</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>watts</translation>
    </message>
    <message>
        <source>What is &amp;shown</source>
        <translation>&amp;Valeurs affichées</translation>
    </message>
    <message>
        <source>&amp;Remark</source>
        <translation>&amp;Remarque</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature then</source>
        <translation>Température &amp;ambiante alors</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>From the entry row: %1</source>
        <translation>De la ligne de saisie&#xa0;: %1</translation>
    </message>
    <message>
        <source>From the log, where the power ceased: %1</source>
        <translation>Du journal, où la puissance a cessé&#xa0;: %1</translation>
    </message>
    <message>
        <source>From the log: %1</source>
        <translation>Du journal&#xa0;: %1</translation>
    </message>
    <message>
        <source>The mark &quot;cut-off&quot; was the end: %1</source>
        <translation>Le repère «&#xa0;coupure&#xa0;» était la fin&#xa0;: %1</translation>
    </message>
    <message>
        <source>The last reading was the end: %1</source>
        <translation>Le dernier relevé était la fin&#xa0;: %1</translation>
    </message>
    <message>
        <source>Puts these into the fields; they can be changed there</source>
        <translation>Met ces valeurs dans les champs&#x202f;; elles peuvent y être changées</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>not said: 5 min</source>
        <translation>non précisé&#xa0;: 5 min</translation>
    </message>
    <message>
        <source>not said: since last seen on</source>
        <translation>non précisé&#xa0;: depuis la dernière fois vue allumée</translation>
    </message>
    <message>
        <source>Say how it ended; then what the run says stands here.</source>
        <translation>Dites comment il a fini&#x202f;; ce que dit l’essai figure alors ici.</translation>
    </message>
    <message>
        <source>Choose how it ended.</source>
        <translation>Choisissez comment il a fini.</translation>
    </message>
</context>
<context>
    <name>ullage::EntryFlow</name>
    <message>
        <source>This run is no longer in the open logbook; what you typed stands here until you choose another run.</source>
        <translation>Cet essai n’est plus dans le carnet ouvert&#x202f;; ce que vous avez tapé reste ici jusqu’à ce que vous choisissiez un autre essai.</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>. Is that right?</source>
        <translation>. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>What did the register show just before? With it nothing is missing. Where it is not known, press Enter.</source>
        <translation>Que montrait l’index juste avant&#x202f;? Avec cela, rien ne manque. Si ce n’est pas connu, appuyez sur Entrée.</translation>
    </message>
    <message>
        <source>Not recorded. %1</source>
        <translation>Non enregistré. %1</translation>
    </message>
</context>
<context>
    <name>ullage::EntryRow</name>
    <message>
        <source>Record</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>What is typed here is not on the disk. %1</source>
        <translation>Ce qui est tapé ici n’est pas sur le disque. %1</translation>
    </message>
    <message>
        <source>Time of the reading</source>
        <translation>Heure du relevé</translation>
    </message>
    <message>
        <source>Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>Vide pour maintenant&#x202f;; sinon 02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>Gauge in percent</source>
        <translation>Jauge en pour cent</translation>
    </message>
    <message>
        <source>What the unit&apos;s own gauge shows: 69 or 69 %</source>
        <translation>Ce que montre la jauge de la station&#xa0;: 69 ou 69 %</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>Register in watt hours</source>
        <translation>Index en wattheures</translation>
    </message>
    <message>
        <source>What the meter&apos;s register shows: 431, 431 Wh or 0.431 kWh</source>
        <translation>Ce que montre l’index du compteur&#xa0;: 431, 431 Wh ou 0,431 kWh</translation>
    </message>
    <message>
        <source>second</source>
        <translation>second</translation>
    </message>
    <message>
        <source>Second register in watt hours</source>
        <translation>Second index en wattheures</translation>
    </message>
    <message>
        <source>What the register of the second meter shows</source>
        <translation>Ce que montre l’index du second compteur</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>watts</translation>
    </message>
    <message>
        <source>Meter power in watts</source>
        <translation>Puissance au compteur en watts</translation>
    </message>
    <message>
        <source>What the meter shows: 64 or 0.064 kW</source>
        <translation>Ce que montre le compteur&#xa0;: 64 ou 0,064 kW</translation>
    </message>
    <message>
        <source>display W</source>
        <translation>afficheur W</translation>
    </message>
    <message>
        <source>Power on the unit&apos;s display in watts</source>
        <translation>Puissance à l’afficheur de la station en watts</translation>
    </message>
    <message>
        <source>What the unit&apos;s own display shows: 64 or 0.064 kW</source>
        <translation>Ce que montre l’afficheur de la station&#xa0;: 64 ou 0,064 kW</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Anything worth keeping with this reading</source>
        <translation>Tout ce qui vaut d’être gardé avec ce relevé</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>An event at this moment; a register typed beside it was read after it</source>
        <translation>Un événement à cet instant&#x202f;; un index tapé à côté a été lu après lui</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>sans repère</translation>
    </message>
    <message>
        <source>Mark and display watts</source>
        <translation>Repère et watts de l’afficheur</translation>
    </message>
</context>
<context>
    <name>ullage::ExportDialog</name>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message>
        <source>Size and colours…</source>
        <translation>Taille et couleurs…</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Aperçu</translation>
    </message>
    <message>
        <source>What to export</source>
        <translation>Quoi exporter</translation>
    </message>
    <message>
        <source>Form of the export</source>
        <translation>Format de l’export</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Enregistrer…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Table, %1</source>
        <translation>Tableau, %1</translation>
    </message>
    <message>
        <source>CSV table</source>
        <translation>Tableau CSV</translation>
    </message>
    <message>
        <source>Markdown</source>
        <translation>Markdown</translation>
    </message>
    <message>
        <source>HTML page</source>
        <translation>Page HTML</translation>
    </message>
    <message>
        <source>Workbook</source>
        <translation>Classeur</translation>
    </message>
    <message>
        <source>LaTeX table</source>
        <translation>Tableau LaTeX</translation>
    </message>
    <message>
        <source>Picture of %1, PNG</source>
        <translation>Image&#xa0;: %1, PNG</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>Image PNG (*.png)</translation>
    </message>
    <message>
        <source>Picture of %1, SVG</source>
        <translation>Image&#xa0;: %1, SVG</translation>
    </message>
    <message>
        <source>SVG picture (*.svg)</source>
        <translation>Image SVG (*.svg)</translation>
    </message>
    <message>
        <source>Putting the table together</source>
        <translation>Assemblage du tableau</translation>
    </message>
    <message>
        <source>A workbook with this table, a sheet on the method and a chart; Copy takes the cells:

</source>
        <translation>Un classeur avec ce tableau, une feuille sur la méthode et un graphique&#x202f;; Copier prend les cellules&#xa0;:

</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Écriture de %1</translation>
    </message>
    <message>
        <source>Written to %1; what its columns mean stands in %2</source>
        <translation>Écrit dans %1&#x202f;; le sens de ses colonnes figure dans %2</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
    </message>
    <message>
        <source>The table has no rows to copy.</source>
        <translation>Le tableau n’a pas de lignes à copier.</translation>
    </message>
    <message>
        <source>Nothing was copied.</source>
        <translation>Rien n’a été copié.</translation>
    </message>
    <message>
        <source>Copying the table</source>
        <translation>Copie du tableau</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copié</translation>
    </message>
</context>
<context>
    <name>ullage::FileBar</name>
    <message>
        <source>Save elsewhere and go on there…</source>
        <translation>Enregistrer ailleurs et y continuer…</translation>
    </message>
    <message>
        <source>Record here</source>
        <translation>Enregistrer ici</translation>
    </message>
    <message>
        <source>▲ not recording</source>
        <translation>▲ sans enregistrement</translation>
    </message>
    <message>
        <source>looking only</source>
        <translation>lecture seule</translation>
    </message>
</context>
<context>
    <name>ullage::FileController</name>
    <message>
        <source>New logbook</source>
        <translation>Nouveau carnet</translation>
    </message>
    <message>
        <source>Bench.ullage</source>
        <translation>Banc.ullage</translation>
    </message>
    <message>
        <source>Open logbook</source>
        <translation>Ouvrir un carnet</translation>
    </message>
    <message>
        <source>Opening %1</source>
        <translation>Ouverture de %1</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>%1 n’a pas été ouvert.</translation>
    </message>
    <message>
        <source>Making the sample logbook</source>
        <translation>Création du carnet d’exemple</translation>
    </message>
    <message>
        <source>Saving %1</source>
        <translation>Enregistrement de %1</translation>
    </message>
    <message>
        <source>%1 copy.ullage</source>
        <translation>%1 copie.ullage</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Enregistrer une copie</translation>
    </message>
    <message>
        <source>Copy saved to %1.</source>
        <translation>Copie enregistrée dans %1.</translation>
    </message>
    <message>
        <source>%1 rescued.ullage</source>
        <translation>%1 secours.ullage</translation>
    </message>
    <message>
        <source>Save the open logbook elsewhere</source>
        <translation>Enregistrer ailleurs le carnet ouvert</translation>
    </message>
    <message>
        <source>You now record in %1.</source>
        <translation>Vous enregistrez maintenant dans %1.</translation>
    </message>
    <message>
        <source>The logbook was checked from end to end, which took %1 s. It is done when a file was not closed properly or comes from elsewhere.</source>
        <translation>Le carnet a été vérifié d’un bout à l’autre, ce qui a pris %1 s. C’est fait quand un fichier n’a pas été fermé correctement ou vient d’ailleurs.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucun encore</translation>
    </message>
    <message>
        <source>Export as folder: name the new folder</source>
        <translation>Exporter en dossier&#xa0;: nommez le nouveau dossier</translation>
    </message>
    <message>
        <source>Folders</source>
        <translation>Dossiers</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Écriture de %1</translation>
    </message>
    <message>
        <source>Folder saved to %1: %2.</source>
        <translation>Dossier enregistré dans %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Import folder</source>
        <translation>Importer un dossier</translation>
    </message>
    <message>
        <source>A folder needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Un dossier a besoin d’un carnet où entrer&#xa0;: choisissez d’abord Carnet, Nouveau ou Ouvrir.</translation>
    </message>
    <message>
        <source>%1 holds no run sheet. Choose a folder with run sheets (.csv), or one that Logbook, Export as folder wrote.</source>
        <translation>%1 ne contient aucune fiche d’essai. Choisissez un dossier de fiches d’essai (.csv), ou un dossier écrit par Carnet, Exporter en dossier.</translation>
    </message>
    <message>
        <source>Importing %1</source>
        <translation>Importation de %1</translation>
    </message>
    <message>
        <source>%1 more notices like these.</source>
        <translation>Encore %1 avis comme ceux-ci.</translation>
    </message>
    <message>
        <source>Run sheets (*.csv);;All files (*)</source>
        <translation>Fiches d’essai (*.csv);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Import run sheet</source>
        <translation>Importer une fiche d’essai</translation>
    </message>
    <message>
        <source>A run sheet needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Une fiche d’essai a besoin d’un carnet où entrer&#xa0;: choisissez d’abord Carnet, Nouveau ou Ouvrir.</translation>
    </message>
    <message>
        <source>Importing %1 run sheets</source>
        <translation>Importation de %1 fiches d’essai</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Rien n’a été importé.</translation>
    </message>
    <message>
        <source>Stopped: %1 of %2 run sheets are in the logbook, each whole; Edit, Undo takes them out one by one.</source>
        <translation>Arrêté&#xa0;: %1 fiches d’essai sur %2 sont dans le carnet, chacune entière&#x202f;; Édition, Annuler les retire une à une.</translation>
    </message>
    <message>
        <source>Export run sheet</source>
        <translation>Exporter la fiche d’essai</translation>
    </message>
    <message>
        <source>Run sheet saved to %1.</source>
        <translation>Fiche d’essai enregistrée dans %1.</translation>
    </message>
    <message>
        <source>Attach photos to %1 (%2)</source>
        <translation>Joindre des photos à %1 (%2)</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;All files (*)</source>
        <translation>Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>PNG (*.png);;All files (*)</source>
        <translation>PNG (*.png);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>JPEG (*.jpg *.jpeg);;All files (*)</source>
        <translation>JPEG (*.jpg *.jpeg);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>Save photo</source>
        <translation>Enregistrer la photo</translation>
    </message>
    <message>
        <source>Photo saved to %1.</source>
        <translation>Photo enregistrée dans %1.</translation>
    </message>
    <message>
        <source>Import load list</source>
        <translation>Importer une liste de charges</translation>
    </message>
    <message>
        <source>Load lists (*.csv);;All files (*)</source>
        <translation>Listes de charges (*.csv);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>A load list needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Une liste de charges a besoin d’un carnet où entrer&#xa0;: choisissez d’abord Carnet, Nouveau ou Ouvrir.</translation>
    </message>
    <message>
        <source>Import PV sheet</source>
        <translation>Importer une fiche PV</translation>
    </message>
    <message>
        <source>PV sheets (*.txt);;All files (*)</source>
        <translation>Fiches PV (*.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>A PV sheet needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Une fiche PV a besoin d’un carnet où entrer&#xa0;: choisissez d’abord Carnet, Nouveau ou Ouvrir.</translation>
    </message>
    <message>
        <source>%1 is neither a logbook (.ullage), nor a run sheet or load list (.csv), nor a PV sheet (.txt). The log of a meter goes into a run: show the run first.</source>
        <translation>%1 n’est ni un carnet (.ullage), ni une fiche d’essai ou une liste de charges (.csv), ni une fiche PV (.txt). Le journal d’un compteur entre dans un essai&#xa0;: affichez d’abord l’essai.</translation>
    </message>
</context>
<context>
    <name>ullage::FindingRow</name>
    <message>
        <source>Select its readings in table and chart</source>
        <translation>Sélectionne ses relevés dans le tableau et le graphique</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Accepter</translation>
    </message>
    <message>
        <source>Accept: %1</source>
        <translation>Accepter&#xa0;: %1</translation>
    </message>
    <message>
        <source>Write this into the reading, with its reason in the history; undo brings the old value back</source>
        <translation>Écrit cela dans le relevé, avec sa raison dans l’historique&#x202f;; annuler ramène l’ancienne valeur</translation>
    </message>
</context>
<context>
    <name>ullage::FindingsView</name>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Not known: %1</source>
        <translation>Inconnu&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ullage::FormDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>. Is that right? Change a field, or go on all the same.</source>
        <translation>. Est-ce juste&#x202f;? Changez un champ, ou continuez quand même.</translation>
    </message>
    <message>
        <source>%1 all the same</source>
        <translation>%1 quand même</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Plus…</translation>
    </message>
</context>
<context>
    <name>ullage::GuideBar</name>
    <message>
        <source>unit</source>
        <translation>station</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>start</source>
        <translation>début</translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
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
        <translation>Terminer…</translation>
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
        <translation>texte d’aide</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>ullage::HttpLink</name>
    <message>
        <source>the answer is longer than 1 MB; that of a meter is short</source>
        <translation>la réponse dépasse 1 MB&#x202f;; celle d’un compteur est courte</translation>
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
        <translation>Fermer</translation>
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
        <translation>inconnu&#xa0;: l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>not known: no time lies between the two readings</source>
        <translation>inconnu&#xa0;: aucun temps ne sépare les deux relevés</translation>
    </message>
    <message>
        <source>not known: the gauge did not move, or the rated energy is not stated</source>
        <translation>inconnu&#xa0;: la jauge n’a pas bougé, ou l’énergie assignée n’est pas précisée</translation>
    </message>
</context>
<context>
    <name>ullage::LeaveForm</name>
    <message>
        <source>Quit while a test is running?</source>
        <translation>Quitter alors qu’un essai est en cours&#x202f;?</translation>
    </message>
    <message>
        <source>Quit while %1 tests are running?</source>
        <translation>Quitter alors que %1 essais sont en cours&#x202f;?</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Reminders: nobody calls you to the next reading.</source>
        <translation>Rappels&#xa0;: personne ne vous appelle au prochain relevé.</translation>
    </message>
    <message>
        <source>The machine is no longer kept awake.</source>
        <translation>La machine n’est plus maintenue éveillée.</translation>
    </message>
    <message>
        <source>A followed log is no longer read.</source>
        <translation>Un journal suivi n’est plus lu.</translation>
    </message>
    <message>
        <source>%1 followed logs are no longer read.</source>
        <translation>%1 journaux suivis ne sont plus lus.</translation>
    </message>
    <message>
        <source>What stops</source>
        <translation>Ce qui s’arrête</translation>
    </message>
    <message>
        <source>The tests themselves: the units run on at the bench, and the runs stay open in the logbook.</source>
        <translation>Les essais eux-mêmes&#xa0;: les stations continuent au banc, et les essais restent ouverts dans le carnet.</translation>
    </message>
    <message>
        <source>Every reading, and what is half typed. Rules of reminders count on from the last reading at the next start.</source>
        <translation>Chaque relevé, et ce qui est à moitié tapé. Les règles de rappel reprennent depuis le dernier relevé au prochain démarrage.</translation>
    </message>
    <message>
        <source>What is written to a followed log meanwhile: it is taken up at the next start.</source>
        <translation>Ce qui s’écrit entre-temps dans un journal suivi&#xa0;: c’est repris au prochain démarrage.</translation>
    </message>
    <message>
        <source>What remains</source>
        <translation>Ce qui reste</translation>
    </message>
</context>
<context>
    <name>ullage::LiveBar</name>
    <message>
        <source>Stop reading</source>
        <translation>Arrêter la lecture</translation>
    </message>
    <message>
        <source>Read live</source>
        <translation>Lire en direct</translation>
    </message>
    <message>
        <source>%1 was read when the program ended; it needs its password again.</source>
        <translation>%1 était lu quand le programme s’est terminé&#x202f;; il lui faut de nouveau son mot de passe.</translation>
    </message>
    <message>
        <source>%1 can be read live.</source>
        <translation>%1 peut être lu en direct.</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>connecté, rien n’est encore venu</translation>
    </message>
    <message>
        <source>connecting</source>
        <translation>connexion</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 laissés de côté</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 perdus</translation>
    </message>
    <message>
        <source>the machine&apos;s clock was set; samples go on by the steady one</source>
        <translation>l’horloge de la machine a été réglée&#x202f;; les échantillons suivent l’horloge régulière</translation>
    </message>
    <message>
        <source>Set mark “%1”</source>
        <translation>Poser le repère «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Not this</source>
        <translation>Pas cela</translation>
    </message>
</context>
<context>
    <name>ullage::LiveController</name>
    <message>
        <source>An output went off</source>
        <translation>Une sortie s’est coupée</translation>
    </message>
    <message>
        <source>A meter that is read live</source>
        <translation>Un compteur lu en direct</translation>
    </message>
    <message>
        <source>there is no desktop that could keep it</source>
        <translation>aucun bureau ne pourrait le garder</translation>
    </message>
    <message>
        <source>The meter is read, but its password was not kept: %1</source>
        <translation>Le compteur est lu, mais son mot de passe n’a pas été gardé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ullage::LiveFace</name>
    <message>
        <source>%1 s ago</source>
        <translation>il y a %1 s</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>il y a %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>il y a %1 h</translation>
    </message>
    <message>
        <source>Not tried yet. Try shows what comes; nothing is recorded.</source>
        <translation>Pas encore essayé. Essayer montre ce qui vient&#x202f;; rien n’est enregistré.</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>connecté, rien n’est encore venu</translation>
    </message>
    <message>
        <source>connecting</source>
        <translation>connexion</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>%1 par seconde</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 laissés de côté</translation>
    </message>
</context>
<context>
    <name>ullage::LiveReader</name>
    <message>
        <source>%1: %2 at %3. %4.</source>
        <translation>%1&#xa0;: %2 à %3. %4.</translation>
    </message>
    <message>
        <source>The meter is no longer read: %1</source>
        <translation>Le compteur n’est plus lu&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListController</name>
    <message>
        <source>Units</source>
        <translation>Stations</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>Champ PV et batterie selon la règle</translation>
    </message>
    <message>
        <source>Charge by the hour</source>
        <translation>Charge restante heure par heure</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Mois</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListForm</name>
    <message>
        <source>Add load list</source>
        <translation>Ajouter une liste</translation>
    </message>
    <message>
        <source>Load list %1</source>
        <translation>Liste de charges %1</translation>
    </message>
    <message>
        <source>Save load list</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>what it is for, such as: show night</source>
        <translation>à quoi elle sert, par exemple&#xa0;: soirée de spectacle</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>&amp;Remarque</translation>
    </message>
    <message>
        <source>The load list needs a name, by which the comparison calls it.</source>
        <translation>La liste de charges a besoin d’un nom, par lequel la comparaison la désigne.</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListsPage</name>
    <message>
        <source>load lists</source>
        <translation>listes de charges</translation>
    </message>
    <message>
        <source>appliances of the load list</source>
        <translation>appareils de la liste de charges</translation>
    </message>
    <message>
        <source>No load lists yet. Add load list, then its appliances: what they take, how long a day, and when; or Import one from a file. The comparison then shows units at that load.</source>
        <translation>Encore aucune liste de charges. Ajouter une liste, puis ses appareils&#xa0;: ce qu’ils prennent, combien de temps par jour, et quand&#x202f;; ou Importer une liste d’un fichier. La comparaison montre alors les stations à cette charge.</translation>
    </message>
    <message>
        <source>Nothing in this list yet. Add appliance takes its power, or what a meter counted over some hours.</source>
        <translation>Encore rien dans cette liste. Ajouter un appareil prend sa puissance, ou ce qu’un compteur a compté sur quelques heures.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listes de charges</translation>
    </message>
    <message>
        <source>Add load list</source>
        <translation>Ajouter une liste</translation>
    </message>
    <message>
        <source>Edit load list</source>
        <translation>Modifier la liste</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importer…</translation>
    </message>
    <message>
        <source>A load list from a file (.csv)</source>
        <translation>Une liste de charges depuis un fichier (.csv)</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Add appliance</source>
        <translation>Ajouter un appareil</translation>
    </message>
    <message>
        <source>Edit appliance</source>
        <translation>Modifier l’appareil</translation>
    </message>
    <message>
        <source>Remove appliance</source>
        <translation>Enlever l’appareil</translation>
    </message>
</context>
<context>
    <name>ullage::LogController</name>
    <message>
        <source>Logs (*.csv *.txt *.log *.tsv *.dat);;All files (*)</source>
        <translation>Journaux (*.csv *.txt *.log *.tsv *.dat);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>A log is quiet</source>
        <translation>Un journal se tait</translation>
    </message>
    <message>
        <source>Import log</source>
        <translation>Importer un journal</translation>
    </message>
    <message>
        <source>%1 is followed from now on, from where the run&apos;s log of it ended.</source>
        <translation>%1 est suivi dès maintenant, à partir de la fin de son journal dans l’essai.</translation>
    </message>
    <message>
        <source>The run has this log already; what %1 has more was added to it, read as before.</source>
        <translation>L’essai a déjà ce journal&#x202f;; ce que %1 a de plus y a été ajouté, lu comme avant.</translation>
    </message>
    <message>
        <source> Its last line is incomplete and was skipped.</source>
        <translation> Sa dernière ligne est incomplète et a été sautée.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>It is followed from now on.</source>
        <translation>Il est suivi dès maintenant.</translation>
    </message>
    <message>
        <source>The file of the log %1</source>
        <translation>Le fichier du journal %1</translation>
    </message>
    <message>
        <source>%1 is followed from now on.</source>
        <translation>%1 est suivi dès maintenant.</translation>
    </message>
    <message>
        <source>There is no load list for it yet: add one first (Edit, Load lists).</source>
        <translation>Il n’y a pas encore de liste de charges pour cela&#xa0;: ajoutez-en d’abord une (Édition, Listes de charges).</translation>
    </message>
</context>
<context>
    <name>ullage::LogFollower</name>
    <message>
        <source>%1 is not there; waiting for the file</source>
        <translation>%1 n’est pas là&#x202f;; en attente du fichier</translation>
    </message>
    <message>
        <source>%1 is no longer followed: %2</source>
        <translation>%1 n’est plus suivi&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: its log %2 has had no new row for %3 min. Is the meter still logging?</source>
        <translation>%1&#xa0;: son journal %2 n’a eu aucune nouvelle ligne depuis %3 min. Le compteur enregistre-t-il encore&#x202f;?</translation>
    </message>
</context>
<context>
    <name>ullage::LogForm</name>
    <message>
        <source>as the log has it</source>
        <translation>comme dans le journal</translation>
    </message>
    <message>
        <source>First rows of the log</source>
        <translation>Premières lignes du journal</translation>
    </message>
    <message>
        <source>Import log %1</source>
        <translation>Importer le journal %1</translation>
    </message>
    <message>
        <source>Import log</source>
        <translation>Importer un journal</translation>
    </message>
    <message>
        <source>&amp;Follow it: another program is still writing this file</source>
        <translation>Le &amp;suivre&#xa0;: un autre programme écrit encore ce fichier</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>aucun nommé</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Avancement de l’importation</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Comment il est lu</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Compteur</translation>
    </message>
    <message>
        <source>&amp;Columns end at</source>
        <translation>Sé&amp;parateur</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>upright bar</source>
        <translation>barre verticale</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>espaces</translation>
    </message>
    <message>
        <source>&amp;Decimal sign</source>
        <translation>Signe déci&amp;mal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>D&amp;ates begin with</source>
        <translation>&amp;Dates, d’abord</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>le jour</translation>
    </message>
    <message>
        <source>the month</source>
        <translation>le mois</translation>
    </message>
    <message>
        <source>the year</source>
        <translation>l’année</translation>
    </message>
    <message>
        <source>&amp;Times such as 02:40 are</source>
        <translation>&amp;Heures comme 02:40</translation>
    </message>
    <message>
        <source>the time of day</source>
        <translation>l’heure du jour</translation>
    </message>
    <message>
        <source>counted from the start</source>
        <translation>comptées depuis le début</translation>
    </message>
    <message>
        <source>The &amp;register counts</source>
        <translation>L’&amp;index compte en</translation>
    </message>
    <message>
        <source>The &amp;gauge counts</source>
        <translation>La &amp;jauge compte</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>en pour cent</translation>
    </message>
    <message>
        <source>from 0 to 1</source>
        <translation>de 0 à 1</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>&amp;Fuseau horaire</translation>
    </message>
    <message>
        <source>&amp;Start of the log</source>
        <translation>Dé&amp;but du journal</translation>
    </message>
    <message>
        <source>first reading of the run</source>
        <translation>premier relevé de l’essai</translation>
    </message>
    <message>
        <source>Cl&amp;ock is behind by</source>
        <translation>Retard de l’horlo&amp;ge</translation>
    </message>
    <message>
        <source>hours:minutes:seconds, 0:00:00 if it is right</source>
        <translation>heures:minutes:secondes, 0:00:00 si elle est juste</translation>
    </message>
    <message>
        <source>&amp;Estimate from the hand readings</source>
        <translation>&amp;Estimer d’après les relevés manuels</translation>
    </message>
    <message>
        <source>Chec&amp;k the whole log</source>
        <translation>&amp;Vérifier tout le journal</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Lu comme&#xa0;: %1</translation>
    </message>
    <message>
        <source>It is taken to begin with the first reading of the run, %1.</source>
        <translation>Son début est supposé être le premier relevé de l’essai, %1.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Ouvert&#xa0;: %1</translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
    <message>
        <source>At its beginning: %1</source>
        <translation>À son début&#xa0;: %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 contient</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>The whole log: %1</source>
        <translation>Le journal entier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Name the column in the first row of the table above: %1.</source>
        <translation>Nommez la colonne dans la première ligne du tableau ci-dessus&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Imported. %1. What was left out or taken with a doubt, the first hundred of each kind:</source>
        <translation>Importé. %1. Ce qui a été laissé de côté ou repris avec un doute, les cent premiers de chaque sorte&#xa0;:</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>ullage::LogList</name>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>output power by the unit</source>
        <translation>puissance de sortie d’après la station</translation>
    </message>
    <message>
        <source>%1: %2 samples from %3 to %4</source>
        <translation>%1&#xa0;: %2 échantillons de %3 à %4</translation>
    </message>
    <message>
        <source>, %1 row left out</source>
        <translation>, %1 ligne laissée de côté</translation>
    </message>
    <message>
        <source>, %1 rows left out</source>
        <translation>, %1 lignes laissées de côté</translation>
    </message>
    <message>
        <source>, clock moved by %1 s</source>
        <translation>, horloge décalée de %1 s</translation>
    </message>
    <message>
        <source>, its file begun anew %1 time</source>
        <translation>, son fichier recommencé %1 fois</translation>
    </message>
    <message>
        <source>, its file begun anew %1 times</source>
        <translation>, son fichier recommencé %1 fois</translation>
    </message>
    <message>
        <source>Followed, but: %1.</source>
        <translation>Suivi, mais&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Followed, but nothing new since %1. Is the meter still logging?</source>
        <translation>Suivi, mais rien de nouveau depuis %1. Le compteur enregistre-t-il encore&#x202f;?</translation>
    </message>
    <message>
        <source>Followed: new rows come in by themselves.</source>
        <translation>Suivi&#xa0;: les nouvelles lignes entrent d’elles-mêmes.</translation>
    </message>
    <message>
        <source>Stop following</source>
        <translation>Ne plus suivre</translation>
    </message>
    <message>
        <source>Stop following the log %1</source>
        <translation>Ne plus suivre le journal %1</translation>
    </message>
    <message>
        <source>Follow…</source>
        <translation>Suivre…</translation>
    </message>
    <message>
        <source>Follow the log %1</source>
        <translation>Suivre le journal %1</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Withdraw the log %1</source>
        <translation>Retirer le journal %1</translation>
    </message>
</context>
<context>
    <name>ullage::LogView</name>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>crête</translation>
    </message>
    <message>
        <source>a day of it</source>
        <translation>par jour</translation>
    </message>
    <message>
        <source>energy, power integrated</source>
        <translation>énergie, puissance intégrée</translation>
    </message>
    <message>
        <source>its register over the same times</source>
        <translation>son index sur les mêmes temps</translation>
    </message>
    <message>
        <source>while on</source>
        <translation>en marche</translation>
    </message>
    <message>
        <source>while off</source>
        <translation>à l’arrêt</translation>
    </message>
    <message>
        <source>share of the time on</source>
        <translation>part du temps en marche</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>démarrages</translation>
    </message>
    <message>
        <source>switching</source>
        <translation>commutation</translation>
    </message>
    <message>
        <source>of one level</source>
        <translation>d’un seul niveau</translation>
    </message>
    <message>
        <source>∫P² dt, for losses</source>
        <translation>∫P² dt, pour les pertes</translation>
    </message>
    <message>
        <source>time covered</source>
        <translation>temps couvert</translation>
    </message>
    <message>
        <source>gaps left out</source>
        <translation>trous laissés de côté</translation>
    </message>
    <message>
        <source>%1 (%2, at most %3)</source>
        <translation>%1 (%2, au plus %3)</translation>
    </message>
    <message>
        <source>Import log…</source>
        <translation>Importer un journal…</translation>
    </message>
    <message>
        <source>Add to a load list…</source>
        <translation>Ajouter à une liste de charges…</translation>
    </message>
    <message>
        <source>No log in this run. A meter that logs can be read here: its register and power then go with the gauge readings that are noted by hand. So can a log of the unit&apos;s gauge.</source>
        <translation>Aucun journal dans cet essai. Un compteur qui enregistre peut être lu ici&#xa0;: son index et sa puissance accompagnent alors les relevés de jauge notés à la main. De même un journal de la jauge de la station.</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>the unit says</source>
        <translation>la station dit</translation>
    </message>
    <message>
        <source>Power of the log against hours since the start</source>
        <translation>Puissance du journal, en heures depuis le début</translation>
    </message>
    <message>
        <source>hours since start</source>
        <translation>heures depuis le début</translation>
    </message>
    <message>
        <source>power / W</source>
        <translation>puissance / W</translation>
    </message>
    <message>
        <source>The log holds no power: its register counts, and stands in the readings&apos; energy.</source>
        <translation>Le journal ne contient pas de puissance&#xa0;: son index compte, et figure dans l’énergie des relevés.</translation>
    </message>
    <message>
        <source>Gauge of the unit by its log against hours since the start</source>
        <translation>Jauge de la station d’après son journal, en heures depuis le début</translation>
    </message>
    <message>
        <source>gauge / %</source>
        <translation>jauge / %</translation>
    </message>
    <message>
        <source>The log holds no number in its column of the gauge.</source>
        <translation>Le journal ne contient aucun nombre dans sa colonne de jauge.</translation>
    </message>
</context>
<context>
    <name>ullage::LogbookTreeModel</name>
    <message>
        <source>Units</source>
        <translation>Stations</translation>
    </message>
    <message>
        <source>None yet: add a unit</source>
        <translation>Aucune encore&#xa0;: ajoutez une station</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Compteurs</translation>
    </message>
    <message>
        <source>None yet: add a meter</source>
        <translation>Aucun encore&#xa0;: ajoutez un compteur</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listes de charges</translation>
    </message>
    <message>
        <source>None yet: add a load list</source>
        <translation>Aucune encore&#xa0;: ajoutez une liste de charges</translation>
    </message>
    <message>
        <source>Across units</source>
        <translation>Toutes stations</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparaison</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Essais en cours</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation>Entrée PV</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Dimensionnement</translation>
    </message>
    <message>
        <source>%1, as calibrated</source>
        <translation>%1, selon l’étalonnage</translation>
    </message>
    <message>
        <source>%1, ±%2 %</source>
        <translation>%1, ±%2 %</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1, running, reading overdue</source>
        <translation>%1, en cours, relevé en retard</translation>
    </message>
    <message>
        <source>%1, running</source>
        <translation>%1, en cours</translation>
    </message>
</context>
<context>
    <name>ullage::MainWindow</name>
    <message>
        <source>logbook</source>
        <translation>carnet</translation>
    </message>
    <message>
        <source>saved %1 ✓</source>
        <translation>enregistré %1 ✓</translation>
    </message>
    <message>
        <source>%1, looking only – Ullage</source>
        <translation>%1, lecture seule – Ullage</translation>
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
        <translation>Un autre programme enregistre dans ce carnet</translation>
    </message>
    <message>
        <source>Nobody records into this logbook any more</source>
        <translation>Plus personne n’enregistre dans ce carnet</translation>
    </message>
    <message>
        <source>`ullage %1` (process %2) records into this logbook</source>
        <translation>`ullage %1` (processus %2) enregistre dans ce carnet</translation>
    </message>
    <message>
        <source>Another window or command (process %1) records into this logbook</source>
        <translation>Une autre fenêtre ou commande (processus %1) enregistre dans ce carnet</translation>
    </message>
    <message>
        <source>%1. You see it as of %2; nothing can be entered here.</source>
        <translation>%1. Vous le voyez tel qu’à %2&#x202f;; rien ne peut être saisi ici.</translation>
    </message>
    <message>
        <source>It cannot be read anew: %1</source>
        <translation>Il ne peut être relu&#xa0;: %1</translation>
    </message>
    <message>
        <source>&amp;Logbook</source>
        <translation>&amp;Carnet</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Nouveau…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Ouvrir un &amp;récent</translation>
    </message>
    <message>
        <source>Open the sa&amp;mple logbook</source>
        <translation>Ouvrir le carnet d’e&amp;xemple</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>Enregi&amp;strer une copie…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Import run sheet…</source>
        <translation>&amp;Importer une fiche d’essai…</translation>
    </message>
    <message>
        <source>Import &amp;table…</source>
        <translation>Importer un &amp;tableau…</translation>
    </message>
    <message>
        <source>&amp;Paste table…</source>
        <translation>Co&amp;ller un tableau…</translation>
    </message>
    <message>
        <source>&amp;Export run sheet…</source>
        <translation>&amp;Exporter la fiche d’essai…</translation>
    </message>
    <message>
        <source>Export rea&amp;dings…</source>
        <translation>Exporter les rele&amp;vés…</translation>
    </message>
    <message>
        <source>Import fo&amp;lder…</source>
        <translation>Importer un &amp;dossier…</translation>
    </message>
    <message>
        <source>Export as &amp;folder…</source>
        <translation>Ex&amp;porter en dossier…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Add &amp;unit…</source>
        <translation>Ajouter une s&amp;tation…</translation>
    </message>
    <message>
        <source>&amp;Edit unit…</source>
        <translation>&amp;Modifier la station…</translation>
    </message>
    <message>
        <source>Make re&amp;port of the unit…</source>
        <translation>Faire le ra&amp;pport de la station…</translation>
    </message>
    <message>
        <source>Withdraw unit</source>
        <translation>Retirer la station</translation>
    </message>
    <message>
        <source>Add &amp;meter…</source>
        <translation>Ajouter un &amp;compteur…</translation>
    </message>
    <message>
        <source>E&amp;dit meter…</source>
        <translation>Modifier le compte&amp;ur…</translation>
    </message>
    <message>
        <source>Withdraw meter</source>
        <translation>Retirer le compteur</translation>
    </message>
    <message>
        <source>Meth&amp;od…</source>
        <translation>Méth&amp;ode…</translation>
    </message>
    <message>
        <source>Withdraw run</source>
        <translation>Retirer l’essai</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Load lists</source>
        <translation>&amp;Listes de charges</translation>
    </message>
    <message>
        <source>&amp;Page of load lists</source>
        <translation>&amp;Page des listes de charges</translation>
    </message>
    <message>
        <source>Add &amp;load list…</source>
        <translation>Ajouter une &amp;liste de charges…</translation>
    </message>
    <message>
        <source>&amp;Import load list…</source>
        <translation>&amp;Importer une liste de charges…</translation>
    </message>
    <message>
        <source>&amp;Edit load list…</source>
        <translation>&amp;Modifier la liste de charges…</translation>
    </message>
    <message>
        <source>Withdraw load list</source>
        <translation>Retirer la liste de charges</translation>
    </message>
    <message>
        <source>&amp;Add appliance…</source>
        <translation>&amp;Ajouter un appareil…</translation>
    </message>
    <message>
        <source>Edit applia&amp;nce…</source>
        <translation>Modifier l’appa&amp;reil…</translation>
    </message>
    <message>
        <source>Remove appliance</source>
        <translation>Enlever l’appareil</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Essai</translation>
    </message>
    <message>
        <source>&amp;Start run…</source>
        <translation>&amp;Démarrer un essai…</translation>
    </message>
    <message>
        <source>&amp;End run</source>
        <translation>&amp;Terminer l’essai</translation>
    </message>
    <message>
        <source>Re&amp;open</source>
        <translation>R&amp;ouvrir</translation>
    </message>
    <message>
        <source>&amp;Mark</source>
        <translation>&amp;Repère</translation>
    </message>
    <message>
        <source>&amp;Choose in the entry row</source>
        <translation>&amp;Choisir dans la ligne de saisie</translation>
    </message>
    <message>
        <source>Import &amp;log…</source>
        <translation>Importer un &amp;journal…</translation>
    </message>
    <message>
        <source>E&amp;dit run…</source>
        <translation>&amp;Modifier l’essai…</translation>
    </message>
    <message>
        <source>Make re&amp;port…</source>
        <translation>Faire le ra&amp;pport…</translation>
    </message>
    <message>
        <source>Enter &amp;reading</source>
        <translation>Saisir un re&amp;levé</translation>
    </message>
    <message>
        <source>&amp;Amend the last or the chosen reading…</source>
        <translation>Recti&amp;fier le dernier relevé ou le relevé choisi…</translation>
    </message>
    <message>
        <source>Withdraw the chosen readings</source>
        <translation>Retirer les relevés choisis</translation>
    </message>
    <message>
        <source>Show withdrawn readings</source>
        <translation>Afficher les relevés retirés</translation>
    </message>
    <message>
        <source>Attach &amp;photo…</source>
        <translation>Jo&amp;indre une photo…</translation>
    </message>
    <message>
        <source>Paste p&amp;hoto</source>
        <translation>Coller une p&amp;hoto</translation>
    </message>
    <message>
        <source>Running &amp;tests</source>
        <translation>Essais en co&amp;urs</translation>
    </message>
    <message>
        <source>&amp;All side by side</source>
        <translation>&amp;Tous côte à côte</translation>
    </message>
    <message>
        <source>Bench &amp;display, full screen</source>
        <translation>&amp;Affichage de banc, plein écran</translation>
    </message>
    <message>
        <source>Running test %1</source>
        <translation>Essai en cours %1</translation>
    </message>
    <message>
        <source>Re&amp;minders</source>
        <translation>R&amp;appels</translation>
    </message>
    <message>
        <source>&amp;Next reading…</source>
        <translation>&amp;Prochain relevé…</translation>
    </message>
    <message>
        <source>&amp;Enter the reading that is due</source>
        <translation>&amp;Saisir le relevé à faire</translation>
    </message>
    <message>
        <source>Remind me again in %1 minutes</source>
        <translation>Me rappeler dans %1 minutes</translation>
    </message>
    <message>
        <source>&amp;Sound when a reading is due</source>
        <translation>S&amp;on quand un relevé est à faire</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>Co&amp;mparer</translation>
    </message>
    <message>
        <source>&amp;Comparison page</source>
        <translation>Pa&amp;ge de comparaison</translation>
    </message>
    <message>
        <source>&amp;Add units of another logbook…</source>
        <translation>&amp;Ajouter les stations d’un autre carnet…</translation>
    </message>
    <message>
        <source>Co&amp;lumns…</source>
        <translation>&amp;Colonnes…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Exporter…</translation>
    </message>
    <message>
        <source>Copy &amp;table</source>
        <translation>Copier le &amp;tableau</translation>
    </message>
    <message>
        <source>&amp;Sizing</source>
        <translation>Dimen&amp;sionnement</translation>
    </message>
    <message>
        <source>&amp;Sizing for a load list</source>
        <translation>&amp;Dimensionnement pour une liste de charges</translation>
    </message>
    <message>
        <source>&amp;Export sizing…</source>
        <translation>&amp;Exporter le dimensionnement…</translation>
    </message>
    <message>
        <source>Make &amp;report of the sizing…</source>
        <translation>Faire le &amp;rapport du dimensionnement…</translation>
    </message>
    <message>
        <source>&amp;PV input check</source>
        <translation>&amp;Contrôle de l’entrée PV</translation>
    </message>
    <message>
        <source>&amp;Add PV sheet</source>
        <translation>&amp;Ajouter une fiche PV</translation>
    </message>
    <message>
        <source>&amp;Import PV sheet…</source>
        <translation>&amp;Importer une fiche PV…</translation>
    </message>
    <message>
        <source>Withdraw PV sheet</source>
        <translation>Retirer la fiche PV</translation>
    </message>
    <message>
        <source>Make re&amp;port of the PV check…</source>
        <translation>Faire le ra&amp;pport du contrôle PV…</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>A&amp;ffichage</translation>
    </message>
    <message>
        <source>&amp;System colours</source>
        <translation>Couleurs du &amp;système</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>So&amp;mbre</translation>
    </message>
    <message>
        <source>&amp;Charts beside the readings</source>
        <translation>&amp;Graphiques à côté des relevés</translation>
    </message>
    <message>
        <source>Cop&amp;y picture</source>
        <translation>Copi&amp;er l’image</translation>
    </message>
    <message>
        <source>Sa&amp;ve picture…</source>
        <translation>Enregist&amp;rer l’image…</translation>
    </message>
    <message>
        <source>Text l&amp;arger</source>
        <translation>Texte &amp;plus grand</translation>
    </message>
    <message>
        <source>Text s&amp;maller</source>
        <translation>Texte plus pe&amp;tit</translation>
    </message>
    <message>
        <source>Text as &amp;usual</source>
        <translation>Texte par &amp;défaut</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>&amp;Keys and words</source>
        <translation>&amp;Touches et mots</translation>
    </message>
    <message>
        <source>Key ca&amp;rd to print…</source>
        <translation>Carte des touches à &amp;imprimer…</translation>
    </message>
    <message>
        <source>&amp;Guided first run…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Worked example</source>
        <translation>&amp;Exemple traité</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Méthode</translation>
    </message>
    <message>
        <source>Check this &amp;installation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Précautions</translation>
    </message>
    <message>
        <source>&amp;About Ullage</source>
        <translation>À propos d’&amp;Ullage</translation>
    </message>
    <message>
        <source>gauge %1 %</source>
        <translation>jauge %1 %</translation>
    </message>
    <message>
        <source>next reading %1</source>
        <translation>prochain relevé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ullage::MessageBar</name>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Show folder</source>
        <translation>Montrer le dossier</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>dismiss the message</source>
        <translation>fermer le message</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>pas fait</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
</context>
<context>
    <name>ullage::MeterForm</name>
    <message>
        <source>Add meter</source>
        <translation>Ajouter un compteur</translation>
    </message>
    <message>
        <source>Meter %1</source>
        <translation>Compteur %1</translation>
    </message>
    <message>
        <source>Save meter</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>as you call it at the bench</source>
        <translation>comme vous l’appelez au banc</translation>
    </message>
    <message>
        <source>Register &amp;step</source>
        <translation>&amp;Pas de l’index</translation>
    </message>
    <message>
        <source>1 Wh or 0.01 kWh</source>
        <translation>1 Wh ou 0,01 kWh</translation>
    </message>
    <message>
        <source>&amp;Error limit</source>
        <translation>&amp;Limite d’erreur</translation>
    </message>
    <message>
        <source>1 % of the reading</source>
        <translation>1 % de la valeur lue</translation>
    </message>
    <message>
        <source>of it, each load&apos;s o&amp;wn</source>
        <translation>dont propre à chaque char&amp;ge</translation>
    </message>
    <message>
        <source>a quarter of the limit; 0 after a calibration at your loads</source>
        <translation>un quart de la limite&#x202f;; 0 après un étalonnage à vos charges</translation>
    </message>
    <message>
        <source>Register s&amp;pan</source>
        <translation>É&amp;tendue de l’index</translation>
    </message>
    <message>
        <source>10000 kWh, where it returns to 0</source>
        <translation>10000 kWh, où il revient à 0</translation>
    </message>
    <message>
        <source>&amp;Correction</source>
        <translation>&amp;Correction</translation>
    </message>
    <message>
        <source>1, or from a calibration</source>
        <translation>1, ou d’après un étalonnage</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>&amp;Remarque</translation>
    </message>
    <message>
        <source>Wh&amp;y it changes</source>
        <translation>Pour&amp;quoi</translation>
    </message>
    <message>
        <source>kept in the meter&apos;s history</source>
        <translation>gardé dans l’historique du compteur</translation>
    </message>
    <message>
        <source>The error limit stands on the data sheet as ± a percentage of energy. Without it no interval can be given for delivered energy. A part of it differs from load to load and does not cancel between loads that differ by more than a factor of two. True energy is the correction times what the register counted. Points of a certificate replace correction and limit: load in W, correction, then U in % and k.</source>
        <translation>La limite d’erreur figure sur la fiche technique comme ± un pourcentage de l’énergie. Sans elle, aucun intervalle ne peut être donné pour l’énergie délivrée. Une part d’elle diffère d’une charge à l’autre et ne s’annule pas entre des charges qui diffèrent de plus d’un facteur deux. L’énergie vraie est la correction fois ce que l’index a compté. Les points d’un certificat remplacent correction et limite&#xa0;: charge en W, correction, puis U en % et k.</translation>
    </message>
    <message>
        <source>Class and range</source>
        <translation>Classe et plage</translation>
    </message>
    <message>
        <source>C&amp;lass</source>
        <translation>Cl&amp;asse</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>of</source>
        <translation>selon</translation>
    </message>
    <message>
        <source>EN 50470-3</source>
        <translation>EN 50470-3</translation>
    </message>
    <message>
        <source>Ran&amp;ge</source>
        <translation>Plag&amp;e</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>5 W</source>
        <translation>5 W</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>3600 W</source>
        <translation>3600 W</translation>
    </message>
    <message>
        <source>starts at</source>
        <translation>démarre à</translation>
    </message>
    <message>
        <source>0.02 A</source>
        <translation>0,02 A</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>N&amp;uméro</translation>
    </message>
    <message>
        <source>number</source>
        <translation>numéro</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratoire</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Date</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>valable jusqu’au</translation>
    </message>
    <message>
        <source>P&amp;oints</source>
        <translation>P&amp;oints</translation>
    </message>
    <message>
        <source>The meter needs a name, by which lists and sheets call it.</source>
        <translation>Le compteur a besoin d’un nom, par lequel listes et fiches le désignent.</translation>
    </message>
    <message>
        <source>An error limit over 100 % says nothing; enter a percentage of the reading.</source>
        <translation>Une limite d’erreur de plus de 100 % ne dit rien&#x202f;; saisissez un pourcentage de la valeur lue.</translation>
    </message>
    <message>
        <source>It is a part of the error limit, so it cannot be larger; leave it empty for a quarter.</source>
        <translation>C’est une part de la limite d’erreur, elle ne peut donc la dépasser&#x202f;; laissez vide pour un quart.</translation>
    </message>
    <message>
        <source>The span must be larger than one step of the register.</source>
        <translation>L’étendue doit dépasser un pas de l’index.</translation>
    </message>
    <message>
        <source>The range must end above where it begins.</source>
        <translation>La plage doit finir au-dessus de son début.</translation>
    </message>
    <message>
        <source>Enter a date like 2027-05-14.</source>
        <translation>Saisissez une date comme 2027-05-14.</translation>
    </message>
</context>
<context>
    <name>ullage::MetersModel</name>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>Without an error limit no interval can be given for delivered energy.</source>
        <translation>Sans limite d’erreur, aucun intervalle ne peut être donné pour l’énergie délivrée.</translation>
    </message>
    <message>
        <source>by load</source>
        <translation>par charge</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>register step Wh</source>
        <translation>pas de l’index Wh</translation>
    </message>
    <message>
        <source>error limit ±%</source>
        <translation>limite d’erreur ±%</translation>
    </message>
    <message>
        <source>register span Wh</source>
        <translation>étendue de l’index Wh</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>essais</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
</context>
<context>
    <name>ullage::MetersPage</name>
    <message>
        <source>No meters yet. Add meter takes what its data sheet says; without a meter a run has the gauge only.</source>
        <translation>Encore aucun compteur. Ajouter un compteur prend ce que dit sa fiche technique&#x202f;; sans compteur, un essai n’a que la jauge.</translation>
    </message>
    <message>
        <source>Edit meter</source>
        <translation>Modifier le compteur</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Read live…</source>
        <translation>Lire en direct…</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Compteurs</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Ajouter un compteur</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>compteurs</translation>
    </message>
    <message>
        <source>In series with other meters</source>
        <translation>En série avec d’autres compteurs</translation>
    </message>
    <message>
        <source>History of its data</source>
        <translation>Historique de ses données</translation>
    </message>
</context>
<context>
    <name>ullage::MethodForm</name>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Appliquer</translation>
    </message>
    <message>
        <source>What every analysis of this logbook takes for granted. Leave a field empty for the usual figure. Reports print the figures that they went by.</source>
        <translation>Ce que chaque analyse de ce carnet tient pour acquis. Laissez un champ vide pour le chiffre habituel. Les rapports impriment les chiffres qu’ils ont suivis.</translation>
    </message>
    <message>
        <source>usual: %1%2</source>
        <translation>habituel&#xa0;: %1%2</translation>
    </message>
    <message>
        <source>A claim is decided by the</source>
        <translation>Une valeur annoncée se juge sur</translation>
    </message>
    <message>
        <source>whole interval</source>
        <translation>l’intervalle entier</translation>
    </message>
    <message>
        <source>value alone</source>
        <translation>la valeur seule</translation>
    </message>
    <message>
        <source>Now in use: drains repeat within %1.</source>
        <translation>En vigueur&#xa0;: les décharges se répètent à %1 près.</translation>
    </message>
</context>
<context>
    <name>ullage::ModbusLink</name>
    <message>
        <source>the meter has closed the connection</source>
        <translation>le compteur a fermé la connexion</translation>
    </message>
    <message>
        <source>no connection</source>
        <translation>pas de connexion</translation>
    </message>
    <message>
        <source>the device names no SunSpec meter model (201 to 204, 211 to 214); state its registers</source>
        <translation>l’appareil ne nomme aucun modèle de compteur SunSpec (201 à 204, 211 à 214)&#x202f;; indiquez ses registres</translation>
    </message>
    <message>
        <source>the meter refuses registers %1 to %2 (exception %3)</source>
        <translation>le compteur refuse les registres %1 à %2 (exception %3)</translation>
    </message>
    <message>
        <source>SunSpec meter model %1</source>
        <translation>modèle de compteur SunSpec %1</translation>
    </message>
</context>
<context>
    <name>ullage::ModelsView</name>
    <message>
        <source>Models by their specimens</source>
        <translation>Modèles d’après leurs exemplaires</translation>
    </message>
</context>
<context>
    <name>ullage::MqttLink</name>
    <message>
        <source>the connection to the broker cannot be prepared</source>
        <translation>la connexion au courtier ne peut être préparée</translation>
    </message>
    <message>
        <source>no secured connection (%1): the certificate has expired, is for another host name or comes from an authority that this machine does not trust, or the broker does not speak TLS at this port</source>
        <translation>pas de connexion sécurisée (%1)&#xa0;: le certificat a expiré, vaut pour un autre nom d’hôte ou vient d’une autorité à laquelle cette machine ne se fie pas, ou le courtier ne parle pas TLS sur ce port</translation>
    </message>
    <message>
        <source>the broker refuses: %1</source>
        <translation>le courtier refuse&#xa0;: %1</translation>
    </message>
    <message>
        <source>a message of %1 MB came; those of a meter are short</source>
        <translation>un message de %1 MB est venu&#x202f;; ceux d’un compteur sont courts</translation>
    </message>
</context>
<context>
    <name>ullage::NotificationService</name>
    <message>
        <source>Enter the reading</source>
        <translation>Saisir le relevé</translation>
    </message>
</context>
<context>
    <name>ullage::OtherLogbooksLine</name>
    <message>
        <source>with the units of</source>
        <translation>avec les stations de</translation>
    </message>
    <message>
        <source>%1: not read  ✕</source>
        <translation>%1&#xa0;: non lu  ✕</translation>
    </message>
    <message>
        <source>Leave out the units of %1</source>
        <translation>Laisser de côté les stations de %1</translation>
    </message>
    <message>
        <source>%1, as it was when it was read; click to leave its units out</source>
        <translation>%1, tel qu’à sa lecture&#x202f;; cliquez pour laisser ses stations de côté</translation>
    </message>
    <message>
        <source>%1
%2; click to leave it out</source>
        <translation>%1
%2&#x202f;; cliquez pour le laisser de côté</translation>
    </message>
</context>
<context>
    <name>ullage::PairsModel</name>
    <message>
        <source>not comparable:
%1</source>
        <translation>non comparable&#xa0;:
%1</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 de moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 de plus</translation>
    </message>
    <message>
        <source>than %1</source>
        <translation>que %1</translation>
    </message>
</context>
<context>
    <name>ullage::PasswordForm</name>
    <message>
        <source>Password</source>
        <translation>Mot de passe</translation>
    </message>
    <message>
        <source>Read live</source>
        <translation>Lire en direct</translation>
    </message>
    <message>
        <source>&amp;Keep in the desktop&apos;s secret store</source>
        <translation>&amp;Garder dans le trousseau du bureau</translation>
    </message>
    <message>
        <source>The password of %1 at %2. The logbook never holds it.</source>
        <translation>Le mot de passe de %1 à %2. Le carnet ne le contient jamais.</translation>
    </message>
    <message>
        <source>It is asked for each time: %1.</source>
        <translation>Il est demandé chaque fois&#xa0;: %1.</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>&amp;Mot de passe</translation>
    </message>
</context>
<context>
    <name>ullage::PhotoDialog</name>
    <message>
        <source>Photo %1</source>
        <translation>Photo %1</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>photo %1</translation>
    </message>
    <message>
        <source>, %1 x %2 pixels</source>
        <translation>, %1 x %2 pixels</translation>
    </message>
    <message>
        <source>, shown at %1 % of its size; Save photo writes it whole</source>
        <translation>, affichée à %1 % de sa taille&#x202f;; Enregistrer la photo l’écrit entière</translation>
    </message>
    <message>
        <source>, taken %1</source>
        <translation>, prise %1</translation>
    </message>
    <message>
        <source>, no time in it</source>
        <translation>, sans heure</translation>
    </message>
    <message>
        <source>&amp;Fit  F</source>
        <translation>&amp;Ajuster  F</translation>
    </message>
    <message>
        <source>&amp;100 %  1</source>
        <translation>&amp;100 %  1</translation>
    </message>
    <message>
        <source>&amp;Save photo…</source>
        <translation>&amp;Enregistrer la photo…</translation>
    </message>
    <message>
        <source>Write the photo to a file, byte for byte as it came</source>
        <translation>Écrit la photo dans un fichier, octet pour octet comme elle est venue</translation>
    </message>
    <message>
        <source>&amp;Withdraw photo</source>
        <translation>&amp;Retirer la photo</translation>
    </message>
    <message>
        <source>Take this photo out; undo brings it back</source>
        <translation>Retire cette photo&#x202f;; annuler la ramène</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>This picture is too large to be shown here: it would take more than %1 MB of memory. Save photo writes it to a file, whole.</source>
        <translation>Cette image est trop grande pour être affichée ici&#xa0;: il y faudrait plus de %1 MB de mémoire. Enregistrer la photo l’écrit entière dans un fichier.</translation>
    </message>
    <message>
        <source>This picture is damaged and cannot be shown. Its file is kept in the logbook as it came.</source>
        <translation>Cette image est abîmée et ne peut être affichée. Son fichier est gardé dans le carnet comme il est venu.</translation>
    </message>
</context>
<context>
    <name>ullage::PhotoStrip</name>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Withdraw photo</source>
        <translation>Retirer la photo</translation>
    </message>
    <message>
        <source>photo %1 of %2: %3</source>
        <translation>photo %1 sur %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Reading photo %1</source>
        <translation>Lecture de la photo %1</translation>
    </message>
    <message>
        <source>This photo is %1.</source>
        <translation>Cette photo est %1.</translation>
    </message>
</context>
<context>
    <name>ullage::PictureDialog</name>
    <message>
        <source>Save picture</source>
        <translation>Enregistrer l’image</translation>
    </message>
    <message>
        <source>Size and colours of the picture</source>
        <translation>Taille et couleurs de l’image</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Enregistrer…</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Utiliser</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Format</translation>
    </message>
    <message>
        <source>PNG, pixels for a page or a message</source>
        <translation>PNG, pixels pour une page ou un message</translation>
    </message>
    <message>
        <source>SVG, lines that stay sharp at any size</source>
        <translation>SVG, traits nets à toute taille</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Largeur</translation>
    </message>
    <message>
        <source>160 mm or 605 px</source>
        <translation>160 mm ou 605 px</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Hauteur</translation>
    </message>
    <message>
        <source>90 mm or 340 px</source>
        <translation>90 mm ou 340 px</translation>
    </message>
    <message>
        <source>&amp;Sharpness of PNG</source>
        <translation>&amp;Netteté du PNG</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Couleurs</translation>
    </message>
    <message>
        <source>&amp;Title, key and source in the picture</source>
        <translation>&amp;Titre, légende et source dans l’image</translation>
    </message>
    <message>
        <source>%1 dots an inch</source>
        <translation>%1 points par pouce</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
    </message>
    <message>
        <source>on white, for print</source>
        <translation>sur blanc, à imprimer</translation>
    </message>
    <message>
        <source>Text keeps its size in mm: a larger picture has more room around it.</source>
        <translation>Le texte garde sa taille en mm&#xa0;: une image plus grande a plus de place autour de lui.</translation>
    </message>
    <message>
        <source>PNG: %1 × %2 pixels. SVG is sharp at any size. Text keeps its size in mm: a larger picture has more room around it.</source>
        <translation>PNG&#xa0;: %1 × %2 pixels. SVG est net à toute taille. Le texte garde sa taille en mm&#xa0;: une image plus grande a plus de place autour de lui.</translation>
    </message>
    <message>
        <source>A picture needs this side, such as 160 mm.</source>
        <translation>Une image a besoin de cette dimension, par exemple 160 mm.</translation>
    </message>
</context>
<context>
    <name>ullage::PvForm</name>
    <message>
        <source>Sheet</source>
        <translation>Fiche</translation>
    </message>
    <message>
        <source>what you call it</source>
        <translation>comme vous l’appelez</translation>
    </message>
    <message>
        <source>Unit whose PV input is meant</source>
        <translation>Station de cette entrée PV</translation>
    </message>
    <message>
        <source>One module, from its label</source>
        <translation>Un module, d’après sa plaque</translation>
    </message>
    <message>
        <source>Module</source>
        <translation>Module</translation>
    </message>
    <message>
        <source>as printed</source>
        <translation>comme imprimé</translation>
    </message>
    <message>
        <source>Cells</source>
        <translation>Cellules</translation>
    </message>
    <message>
        <source>Voc, open circuit / V</source>
        <translation>Voc, circuit ouvert / V</translation>
    </message>
    <message>
        <source>24.3</source>
        <translation>24,3</translation>
    </message>
    <message>
        <source>Vmp, maximum power / V</source>
        <translation>Vmp, puissance maximale / V</translation>
    </message>
    <message>
        <source>20.4</source>
        <translation>20,4</translation>
    </message>
    <message>
        <source>Isc, short circuit / A</source>
        <translation>Isc, court-circuit / A</translation>
    </message>
    <message>
        <source>10.2</source>
        <translation>10,2</translation>
    </message>
    <message>
        <source>Imp, maximum power / A</source>
        <translation>Imp, puissance maximale / A</translation>
    </message>
    <message>
        <source>9.8</source>
        <translation>9,8</translation>
    </message>
    <message>
        <source>Coefficient of Voc</source>
        <translation>Coefficient de Voc</translation>
    </message>
    <message>
        <source>−0.30 %/°C or −73 mV/°C</source>
        <translation>−0,30 %/°C ou −73 mV/°C</translation>
    </message>
    <message>
        <source>Tolerance of its voltages / %</source>
        <translation>Tolérance de ses tensions / %</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>Coefficient of Vmp</source>
        <translation>Coefficient de Vmp</translation>
    </message>
    <message>
        <source>−0.40 %/°C</source>
        <translation>−0,40 %/°C</translation>
    </message>
    <message>
        <source>Coefficient of power</source>
        <translation>Coefficient de puissance</translation>
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
        <translation>Comment ils sont câblés</translation>
    </message>
    <message>
        <source>Modules in series</source>
        <translation>Modules en série</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>Strings in parallel</source>
        <translation>Chaînes en parallèle</translation>
    </message>
    <message>
        <source>The place</source>
        <translation>Le lieu</translation>
    </message>
    <message>
        <source>Coldest ambient by day / °C</source>
        <translation>Ambiante la plus froide de jour / °C</translation>
    </message>
    <message>
        <source>−15</source>
        <translation>−15</translation>
    </message>
    <message>
        <source>Hottest ambient / °C</source>
        <translation>Ambiante la plus chaude / °C</translation>
    </message>
    <message>
        <source>35</source>
        <translation>35</translation>
    </message>
    <message>
        <source>Hottest cell, if known / °C</source>
        <translation>Cellule la plus chaude, si connue / °C</translation>
    </message>
    <message>
        <source>from ambient and NOCT</source>
        <translation>d’après ambiante et NOCT</translation>
    </message>
    <message>
        <source>Irradiance / W/m²</source>
        <translation>Éclairement / W/m²</translation>
    </message>
    <message>
        <source>1000</source>
        <translation>1000</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>crystalline silicon</source>
        <translation>silicium cristallin</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>aucune choisie</translation>
    </message>
    <message>
        <source>The sheet needs a name, by which it is found again.</source>
        <translation>La fiche a besoin d’un nom, par lequel la retrouver.</translation>
    </message>
</context>
<context>
    <name>ullage::PvPage</name>
    <message>
        <source>Withdraw sheet</source>
        <translation>Retirer la fiche</translation>
    </message>
    <message>
        <source>Edit claims</source>
        <translation>Modifier les valeurs</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Contrôle de l’entrée PV</translation>
    </message>
    <message>
        <source>PV sheet</source>
        <translation>Fiche PV</translation>
    </message>
    <message>
        <source>Add sheet</source>
        <translation>Ajouter une fiche</translation>
    </message>
    <message>
        <source>No PV sheets yet. Add sheet takes what a module&apos;s label says, how many are wired together, and how cold and hot the place gets; the page then tells whether a unit&apos;s PV input takes the string.</source>
        <translation>Encore aucune fiche PV. Ajouter une fiche prend ce que dit la plaque d’un module, combien sont câblés ensemble, et le froid et le chaud du lieu&#x202f;; la page dit alors si l’entrée PV d’une station accepte la chaîne.</translation>
    </message>
    <message>
        <source>PV sheet %1</source>
        <translation>Fiche PV %1</translation>
    </message>
    <message>
        <source>Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × Isc, NEC 690.8). </source>
        <translation>Conducteurs, et fusibles si nécessaire, de chaque chaîne&#xa0;: pour au moins %1 A (1,25 × 1,25 × Isc, NEC 690.8). </translation>
    </message>
</context>
<context>
    <name>ullage::PvVerdictView</name>
    <message>
        <source>DANGER: %1</source>
        <translation>DANGER&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <source>Do not connect yet: a field cannot be read.</source>
        <translation>Ne branchez pas encore&#xa0;: un champ est illisible.</translation>
    </message>
</context>
<context>
    <name>ullage::QuestionBar</name>
    <message>
        <source>Keep  K</source>
        <translation>Garder  K</translation>
    </message>
    <message>
        <source>Correct  C</source>
        <translation>Corriger  C</translation>
    </message>
    <message>
        <source>It was a reset  Z</source>
        <translation>Remise à zéro  Z</translation>
    </message>
    <message>
        <source>Meter swapped  W</source>
        <translation>Compteur remplacé  W</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Not known  N</source>
        <translation>Inconnu  N</translation>
    </message>
    <message>
        <source>%1?  M</source>
        <translation>%1&#x202f;?  M</translation>
    </message>
    <message>
        <source>Records %1 instead</source>
        <translation>Enregistre plutôt %1</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsModel</name>
    <message>
        <source>energy in
Wh</source>
        <translation>énergie reçue
Wh</translation>
    </message>
    <message>
        <source>power
W</source>
        <translation>puissance
W</translation>
    </message>
    <message>
        <source>error, pt
if %1 Wh</source>
        <translation>erreur, pt
si %1 Wh</translation>
    </message>
    <message>
        <source>gauge less what is then left, in percentage points: of the %1 Wh that this drain is expected to deliver to its cut-off</source>
        <translation>jauge moins ce qui reste alors, en points de pourcentage&#xa0;: des %1 Wh que cette décharge devrait délivrer jusqu’à sa coupure</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsRows</name>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>withdrawn, %1</source>
        <translation>retiré, %1</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsView</name>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
</context>
<context>
    <name>ullage::ReadoutLink</name>
    <message>
        <source>the meter does not answer the request for its read-out</source>
        <translation>le compteur ne répond pas à la demande de lecture</translation>
    </message>
    <message>
        <source>what comes is no identification of a meter</source>
        <translation>ce qui vient n’est pas l’identification d’un compteur</translation>
    </message>
</context>
<context>
    <name>ullage::RecordController</name>
    <message>
        <source>%1 and its runs are withdrawn; Edit, Undo brings them back.</source>
        <translation>%1 et ses essais sont retirés&#x202f;; Édition, Annuler les ramène.</translation>
    </message>
    <message>
        <source>A run needs a unit: choose Edit, Add unit first.</source>
        <translation>Un essai a besoin d’une station&#xa0;: choisissez d’abord Édition, Ajouter une station.</translation>
    </message>
    <message>
        <source>a %1 of %2 is still running</source>
        <translation>un essai de %2 (%1) est encore en cours</translation>
    </message>
    <message>
        <source>%1 is in the running test of %2</source>
        <translation>%1 est dans l’essai en cours de %2</translation>
    </message>
    <message>
        <source>This run is no longer in the open logbook.</source>
        <translation>Cet essai n’est plus dans le carnet ouvert.</translation>
    </message>
    <message>
        <source>The run is ended: %1; Edit, Undo lets it go on.</source>
        <translation>L’essai est terminé&#xa0;: %1&#x202f;; Édition, Annuler le laisse continuer.</translation>
    </message>
    <message>
        <source>The run is withdrawn; Edit, Undo brings it back.</source>
        <translation>L’essai est retiré&#x202f;; Édition, Annuler le ramène.</translation>
    </message>
</context>
<context>
    <name>ullage::ReminderBar</name>
    <message>
        <source>▲ due</source>
        <translation>▲ à relever</translation>
    </message>
    <message>
        <source>Enter reading</source>
        <translation>Saisir un relevé</translation>
    </message>
    <message>
        <source>remind me again in</source>
        <translation>me rappeler dans</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Remind me again in %1 minutes</source>
        <translation>Me rappeler dans %1 minutes</translation>
    </message>
    <message>
        <source>%1: reading %2, %3</source>
        <translation>%1&#xa0;: relevé %2, %3</translation>
    </message>
    <message>
        <source>; and one more test</source>
        <translation>&#x202f;; et un autre essai</translation>
    </message>
    <message>
        <source>; and %1 more tests</source>
        <translation>&#x202f;; et %1 autres essais</translation>
    </message>
</context>
<context>
    <name>ullage::ReminderForm</name>
    <message>
        <source>Next reading</source>
        <translation>Prochain relevé</translation>
    </message>
    <message>
        <source>Remind me</source>
        <translation>Me rappeler</translation>
    </message>
    <message>
        <source>%1: call me for the next reading at the earliest of these moments. Leave empty what should not count.</source>
        <translation>%1&#xa0;: appelez-moi pour le prochain relevé au premier de ces moments. Laissez vide ce qui ne doit pas compter.</translation>
    </message>
    <message>
        <source>&amp;After the last reading</source>
        <translation>&amp;Après le dernier relevé</translation>
    </message>
    <message>
        <source>never; or 30 min, 1.5 h</source>
        <translation>jamais&#x202f;; ou 30 min, 1,5 h</translation>
    </message>
    <message>
        <source>When the &amp;gauge should be down by</source>
        <translation>Quand la &amp;jauge devrait avoir baissé de</translation>
    </message>
    <message>
        <source>never; or 10 points</source>
        <translation>jamais&#x202f;; ou 10 points</translation>
    </message>
    <message>
        <source>&amp;Before the expected cut-off</source>
        <translation>A&amp;vant la coupure attendue</translation>
    </message>
    <message>
        <source>never; or 15 min</source>
        <translation>jamais&#x202f;; ou 15 min</translation>
    </message>
</context>
<context>
    <name>ullage::Reminders</name>
    <message>
        <source>%1: a reading is due</source>
        <translation>%1&#xa0;: un relevé est à faire</translation>
    </message>
    <message>
        <source>You asked to be called again</source>
        <translation>Vous avez demandé un nouvel appel</translation>
    </message>
</context>
<context>
    <name>ullage::ReportController</name>
    <message>
        <source>%1 has no runs yet, so there is nothing to report.</source>
        <translation>%1 n’a encore aucun essai, il n’y a donc rien à rapporter.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1 essai %2</translation>
    </message>
    <message>
        <source>A report of %1 rows would have thousands of pages, since it holds the readings and charts of each. Filter the comparison to %2 rows at most; its export holds them all.</source>
        <translation>Un rapport de %1 lignes aurait des milliers de pages, puisqu’il contient les relevés et les graphiques de chacune. Filtrez la comparaison à %2 lignes au plus&#x202f;; son export les contient toutes.</translation>
    </message>
    <message>
        <source>as tested, each at its own load</source>
        <translation>comme testé, chacune à sa propre charge</translation>
    </message>
    <message>
        <source>at %1, as on the page</source>
        <translation>à %1, comme sur la page</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparaison</translation>
    </message>
    <message>
        <source>sizing for %1</source>
        <translation>dimensionnement pour %1</translation>
    </message>
    <message>
        <source>Choose a PV sheet whose fields can be read; then make its report.</source>
        <translation>Choisissez une fiche PV dont les champs sont lisibles&#x202f;; faites ensuite son rapport.</translation>
    </message>
    <message>
        <source>PV check %1</source>
        <translation>contrôle PV %1</translation>
    </message>
    <message>
        <source>keys at the bench</source>
        <translation>touches du banc</translation>
    </message>
    <message>
        <source>Keys at the bench</source>
        <translation>Touches du banc</translation>
    </message>
    <message>
        <source>A sheet with the keys of the bench, to be printed and hung up there.</source>
        <translation>Une feuille avec les touches du banc, à imprimer et à y accrocher.</translation>
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
        <translation>Page HTML (*.html)</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Faire le rapport</translation>
    </message>
    <message>
        <source>Making the report</source>
        <translation>Création du rapport</translation>
    </message>
    <message>
        <source>Report saved to %1, its tables and pictures to the folder %2.</source>
        <translation>Rapport enregistré dans %1, ses tableaux et images dans le dossier %2.</translation>
    </message>
    <message>
        <source>Report saved to %1.</source>
        <translation>Rapport enregistré dans %1.</translation>
    </message>
</context>
<context>
    <name>ullage::ReportForm</name>
    <message>
        <source>The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be known, amendments and cautions. Numbers have the decimal sign of your system.</source>
        <translation>Le rapport contient résumé, compteurs, méthode avec sources, relevés, bilan d’incertitude, graphiques, constats, ce qui ne peut être connu, rectifications et précautions. Les nombres ont le signe décimal de votre système.</translation>
    </message>
    <message>
        <source>It shows the units of the comparison page, which units are clearly different, and says of each unit that cannot be converted to one load why it stays as tested. The load is chosen on that page.</source>
        <translation>Il montre les stations de la page de comparaison, lesquelles diffèrent nettement, et dit de chaque station qu’on ne peut ramener à une charge pourquoi elle reste comme testée. La charge se choisit sur cette page.</translation>
    </message>
    <message>
        <source>Report on %1</source>
        <translation>Rapport&#xa0;: %1</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Faire le rapport</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Stations</translation>
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
        <translation>Aussi ses &amp;tableaux (HTML) et images (PNG) en fichiers, dans un dossier à côté</translation>
    </message>
    <message>
        <source>With what is &amp;mine alone: tags, prices paid, remarks, advice</source>
        <translation>Avec ce qui n’est qu’à &amp;moi&#xa0;: étiquettes, prix payés, remarques, conseils</translation>
    </message>
    <message>
        <source>PDF, pages to print or to send</source>
        <translation>PDF, des pages à imprimer ou à envoyer</translation>
    </message>
    <message>
        <source>HTML, one page for the web</source>
        <translation>HTML, une page pour le web</translation>
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
        <translation>L’essai en chiffres</translation>
    </message>
</context>
<context>
    <name>ullage::RunChartsPanel</name>
    <message>
        <source>Charts of the run</source>
        <translation>Graphiques de l’essai</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Énergie</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Erreur de jauge</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>Intervals between readings</source>
        <translation>Intervalles entre relevés</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalles</translation>
    </message>
</context>
<context>
    <name>ullage::RunForm</name>
    <message>
        <source>Edit run</source>
        <translation>Modifier l’essai</translation>
    </message>
    <message>
        <source>Save run</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Station</translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>&amp;Type d’essai</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Compteur</translation>
    </message>
    <message>
        <source>S&amp;econd meter</source>
        <translation>S&amp;econd compteur</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>C&amp;harge</translation>
    </message>
    <message>
        <source>what is plugged in, in your words</source>
        <translation>ce qui est branché, avec vos mots</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>P&amp;leine au départ</translation>
    </message>
    <message>
        <source>E&amp;nded</source>
        <translation>F&amp;in</translation>
    </message>
    <message>
        <source>End noti&amp;ced within</source>
        <translation>Fin &amp;vue en moins de</translation>
    </message>
    <message>
        <source>2 min, where you know; else 5 min is taken</source>
        <translation>2 min, si vous le savez&#x202f;; sinon 5 min est supposé</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature</source>
        <translation>Température &amp;ambiante</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>… at the en&amp;d</source>
        <translation>… à la fi&amp;n</translation>
    </message>
    <message>
        <source>&amp;Charged from</source>
        <translation>Rechar&amp;gée par</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>&amp;Fuseau horaire</translation>
    </message>
    <message>
        <source>One in series, whose register you note too; or the one that took over at a mark &quot;meter swapped&quot;</source>
        <translation>Un compteur en série, dont vous notez aussi l’index&#x202f;; ou celui qui a pris le relais à un repère «&#xa0;compteur remplacé&#xa0;»</translation>
    </message>
    <message>
        <source>The second meter is the first one; choose another, or none.</source>
        <translation>Le second compteur est le premier&#x202f;; choisissez-en un autre, ou aucun.</translation>
    </message>
    <message>
        <source>No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC.</source>
        <translation>Ce fuseau horaire est inconnu ici&#x202f;; choisissez une région et un lieu, par exemple Africa/Nairobi, ou UTC.</translation>
    </message>
</context>
<context>
    <name>ullage::RunHead</name>
    <message>
        <source>Mark…</source>
        <translation>Repère…</translation>
    </message>
    <message>
        <source>Note an event: load changed, meter zeroed, cut-off</source>
        <translation>Note un événement&#xa0;: charge modifiée, compteur remis à zéro, coupure</translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Terminer…</translation>
    </message>
    <message>
        <source>Say how and when this run ended, and what was shown then</source>
        <translation>Dit comment et quand cet essai a fini, et ce qui était alors affiché</translation>
    </message>
    <message>
        <source>Photo…</source>
        <translation>Photo…</translation>
    </message>
    <message>
        <source>Attach photos to the chosen reading, or to the next one</source>
        <translation>Joint des photos au relevé choisi, ou au prochain</translation>
    </message>
    <message>
        <source>Amend</source>
        <translation>Rectifier</translation>
    </message>
    <message>
        <source>Change the chosen reading, or else the last; the old values are kept</source>
        <translation>Change le relevé choisi, sinon le dernier&#x202f;; les anciennes valeurs sont gardées</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Take the chosen readings out; undo brings them back</source>
        <translation>Retire les relevés choisis&#x202f;; annuler les ramène</translation>
    </message>
    <message>
        <source>Edit run</source>
        <translation>Modifier l’essai</translation>
    </message>
    <message>
        <source>Change what is stated about this run</source>
        <translation>Change ce qui est indiqué de cet essai</translation>
    </message>
    <message>
        <source>Next reading…</source>
        <translation>Prochain relevé…</translation>
    </message>
    <message>
        <source>Say when to be reminded of the next reading</source>
        <translation>Dit quand vous rappeler le prochain relevé</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en cours</translation>
    </message>
</context>
<context>
    <name>ullage::RunPage</name>
    <message>
        <source>Nothing to say yet. With readings of gauge and register the findings stand here.</source>
        <translation>Encore rien à dire. Avec des relevés de la jauge et de l’index, les constats figurent ici.</translation>
    </message>
    <message>
        <source>No readings yet. Type what the gauge and the meter&apos;s register show into the row below and press Enter; the time is filled in.</source>
        <translation>Encore aucun relevé. Tapez ce que montrent la jauge et l’index du compteur dans la ligne ci-dessous, puis Entrée&#x202f;; l’heure est remplie.</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Right or wrong</source>
        <translation>Juste ou fausse</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>the reading of %1</source>
        <translation>le relevé de %1</translation>
    </message>
    <message>
        <source>the next reading</source>
        <translation>le prochain relevé</translation>
    </message>
    <message>
        <source>The clipboard holds no picture; copy a photo or its file first.</source>
        <translation>Le presse-papiers ne contient pas d’image&#x202f;; copiez d’abord une photo ou son fichier.</translation>
    </message>
</context>
<context>
    <name>ullage::RunPhotos</name>
    <message>
        <source>&amp;Amend to the photo&apos;s time</source>
        <translation>&amp;Rectifier à l’heure de la photo</translation>
    </message>
    <message>
        <source>Photos of the chosen reading</source>
        <translation>Photos du relevé choisi</translation>
    </message>
    <message>
        <source>Photos of undone readings</source>
        <translation>Photos de relevés annulés</translation>
    </message>
    <message>
        <source>Lea&amp;ve the time</source>
        <translation>&amp;Laisser l’heure</translation>
    </message>
    <message>
        <source>A reading that was undone keeps its photos as evidence</source>
        <translation>Un relevé annulé garde ses photos comme preuves</translation>
    </message>
    <message>
        <source>of an undone reading</source>
        <translation>d’un relevé annulé</translation>
    </message>
    <message>
        <source>of the undone reading of %1</source>
        <translation>du relevé annulé de %1</translation>
    </message>
    <message>
        <source>Photos of undone readings: %1</source>
        <translation>Photos de relevés annulés&#xa0;: %1</translation>
    </message>
    <message>
        <source>The photo was taken %1; the reading says %2.</source>
        <translation>La photo a été prise %1&#x202f;; le relevé dit %2.</translation>
    </message>
</context>
<context>
    <name>ullage::ScpiLink</name>
    <message>
        <source>no connection within %1 s</source>
        <translation>pas de connexion en %1 s</translation>
    </message>
    <message>
        <source>the instrument does not answer %1</source>
        <translation>l’instrument ne répond pas à %1</translation>
    </message>
    <message>
        <source>an answer without end came</source>
        <translation>une réponse sans fin est venue</translation>
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
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
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
        <translation>&amp;Type d’essai</translation>
    </message>
    <message>
        <source>&amp;Remind me to read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every</source>
        <translation>tous les</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>when the gauge is down by</source>
        <translation>quand la jauge a baissé de</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>before the cut-off</source>
        <translation>avant la coupure</translation>
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
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>yours, or that of the paper</source>
        <translation>le vôtre, ou celui de la revue</translation>
    </message>
    <message>
        <source>Lice&amp;nce of the text</source>
        <translation>Licen&amp;ce du texte</translation>
    </message>
    <message>
        <source>such as CC BY 4.0</source>
        <translation>par exemple CC BY 4.0</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>T&amp;itre</translation>
    </message>
    <message>
        <source>in place of the report&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a paragraph before the answers</source>
        <translation>un paragraphe avant les réponses</translation>
    </message>
    <message>
        <source>&amp;Introduction</source>
        <translation>Intro&amp;duction</translation>
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
        <translation type="unfinished">1 à 3650 {1 ?}</translation>
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
        <translation>Voulu</translation>
    </message>
    <message>
        <source>Days without sun</source>
        <translation>Jours sans soleil</translation>
    </message>
    <message>
        <source> d</source>
        <translation> d</translation>
    </message>
    <message>
        <source>Days of autonomy: how long the units are to carry the list alone</source>
        <translation>Jours d’autonomie&#xa0;: combien de temps les stations doivent alimenter seules la liste</translation>
    </message>
    <message>
        <source>Units in the chart</source>
        <translation>Stations du graphique</translation>
    </message>
    <message>
        <source>Units side by side in the chart of the charge</source>
        <translation>Stations côte à côte dans le graphique de la charge restante</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Soleil</translation>
    </message>
    <message>
        <source>Peak-sun hours</source>
        <translation>Heures de plein soleil</translation>
    </message>
    <message>
        <source> h/d</source>
        <translation> h/d</translation>
    </message>
    <message>
        <source>Hours a day at 1 kW/m² on the module plane, in the worst month that counts</source>
        <translation>Heures par jour à 1 kW/m² dans le plan des modules, au pire mois qui compte</translation>
    </message>
    <message>
        <source>Derating</source>
        <translation>Déclassement</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>What is left of the array&apos;s label at the battery: heat, dust, wiring, charging</source>
        <translation>Ce qui reste, à la batterie, de la puissance de plaque du champ&#xa0;: chaleur, poussière, câblage, recharge</translation>
    </message>
    <message>
        <source>Array to load</source>
        <translation>Champ sur charge</translation>
    </message>
    <message>
        <source>Array energy over daily load: 1.1 to 1.2 for ordinary loads, 1.3 and more for critical ones</source>
        <translation>Énergie du champ sur besoin par jour&#xa0;: 1,1 à 1,2 pour des charges ordinaires, 1,3 et plus pour des charges critiques</translation>
    </message>
    <message>
        <source>Array there is</source>
        <translation>Champ existant</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>Left at –, the array is the one that the rule asks for</source>
        <translation>Laissé à –, le champ est celui que demande la règle</translation>
    </message>
    <message>
        <source>Untested units, at the socket</source>
        <translation>Stations non testées, à la prise</translation>
    </message>
    <message>
        <source>Expected from</source>
        <translation>Attendu de</translation>
    </message>
    <message>
        <source> % of rated</source>
        <translation> % de l’assignée</translation>
    </message>
    <message>
        <source>Common practice: 75 to 80 %</source>
        <translation>Pratique courante&#xa0;: 75 à 80 %</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>Battery by rule, a cross-check</source>
        <translation>Batterie selon la règle, en recoupement</translation>
    </message>
    <message>
        <source>Inverter efficiency</source>
        <translation>Rendement de l’onduleur</translation>
    </message>
    <message>
        <source>Deepest discharge</source>
        <translation>Décharge maximale</translation>
    </message>
    <message>
        <source>Left at end of life</source>
        <translation>Reste en fin de vie</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Marge</translation>
    </message>
    <message>
        <source>1.10 to 1.25 (IEEE 1013)</source>
        <translation>1,10 à 1,25 (IEEE 1013)</translation>
    </message>
    <message>
        <source>Temperature factor</source>
        <translation>Facteur de température</translation>
    </message>
    <message>
        <source>1 for lithium with thermal control; lead-acid in the cold more</source>
        <translation>1 pour le lithium avec régulation thermique&#x202f;; davantage pour le plomb au froid</translation>
    </message>
    <message>
        <source>Peak-sun hours by month, h/d</source>
        <translation>Heures de plein soleil par mois, h/d</translation>
    </message>
    <message>
        <source>Peak-sun hours in %1</source>
        <translation>Heures de plein soleil en %1</translation>
    </message>
</context>
<context>
    <name>ullage::SizingPage</name>
    <message>
        <source>Make report</source>
        <translation>Faire le rapport</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>units for the load list</source>
        <translation>stations pour la liste de charges</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>Champ PV et batterie selon la règle</translation>
    </message>
    <message>
        <source>PV array by month</source>
        <translation>Champ PV par mois</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Dimensionnement</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Liste de charges</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listes de charges</translation>
    </message>
    <message>
        <source>Type the peak-sun hours of the months at the left to see what the array brings in each.</source>
        <translation>Tapez à gauche les heures de plein soleil des mois pour voir ce que le champ apporte dans chacun.</translation>
    </message>
    <message>
        <source>No load list yet. Add one under Edit, Load lists, with what is to run and for how long; this page then says how long each unit carries it, how many are needed, and which PV array.</source>
        <translation>Encore aucune liste de charges. Ajoutez-en une sous Édition, Listes de charges, avec ce qui doit marcher et combien de temps&#x202f;; cette page dit alors combien de temps chaque station l’alimente, combien il en faut, et quel champ PV.</translation>
    </message>
    <message>
        <source>%1 takes %2 Wh a day, %3 W when all of it runs, %4 W at most.</source>
        <translation>%1 prend %2 Wh par jour, %3 W quand tout marche, %4 W au plus.</translation>
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
        <translation>Modbus RTU, ligne série</translation>
    </message>
    <message>
        <source>MQTT 3.1.1, by a broker</source>
        <translation>MQTT 3.1.1, par un courtier</translation>
    </message>
    <message>
        <source>HTTP, JSON</source>
        <translation>HTTP, JSON</translation>
    </message>
    <message>
        <source>Lines of text, serial line</source>
        <translation>Lignes de texte, ligne série</translation>
    </message>
    <message>
        <source>IEC 62056-21 read-out, serial line</source>
        <translation>Lecture IEC 62056-21, ligne série</translation>
    </message>
    <message>
        <source>SCPI over TCP</source>
        <translation>SCPI sur TCP</translation>
    </message>
    <message>
        <source>SCPI, serial line</source>
        <translation>SCPI, ligne série</translation>
    </message>
    <message>
        <source>Read %1 live</source>
        <translation>Lire %1 en direct</translation>
    </message>
    <message>
        <source>Use this source</source>
        <translation>Utiliser cette source</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Type</translation>
    </message>
    <message>
        <source>not read live</source>
        <translation>non lu en direct</translation>
    </message>
    <message>
        <source>The program only reads, and contacts no other address. Meters in mains circuits are installed by licensed people; local codes come first. The logbook never holds a password. Help, Meters read live tells what may stand here.</source>
        <translation>Le programme ne fait que lire et ne contacte aucune autre adresse. Les compteurs sur circuits du secteur sont installés par des personnes habilitées&#x202f;; les règles locales passent d’abord. Le carnet ne contient jamais de mot de passe. Aide, Compteurs lus en direct dit ce qui peut figurer ici.</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>&amp;Adresse</translation>
    </message>
    <message>
        <source>&amp;Station</source>
        <translation>&amp;Esclave</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Ligne</translation>
    </message>
    <message>
        <source>9600 8N1</source>
        <translation>9600 8N1</translation>
    </message>
    <message>
        <source>What is &amp;read</source>
        <translation>Ce qui est l&amp;u</translation>
    </message>
    <message>
        <source>&amp;Every</source>
        <translation>Pério&amp;de</translation>
    </message>
    <message>
        <source>1 s</source>
        <translation>1 s</translation>
    </message>
    <message>
        <source>U&amp;ser</source>
        <translation>Utili&amp;sateur</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>&amp;Mot de passe</translation>
    </message>
    <message>
        <source>for Try; not kept</source>
        <translation>pour Essayer&#x202f;; non gardé</translation>
    </message>
    <message>
        <source>For&amp;get the kept password</source>
        <translation>&amp;Oublier le mot de passe gardé</translation>
    </message>
    <message>
        <source>se&amp;cured (TLS)</source>
        <translation>sé&amp;curisé (TLS)</translation>
    </message>
    <message>
        <source>&amp;Try</source>
        <translation>Essa&amp;yer</translation>
    </message>
    <message>
        <source>What comes</source>
        <translation>Ce qui vient</translation>
    </message>
    <message>
        <source>Enter where the meter is.</source>
        <translation>Saisissez où est le compteur.</translation>
    </message>
    <message>
        <source>nothing has come from this source yet: Try shows whether it can be read</source>
        <translation>rien n’est encore venu de cette source&#xa0;: Essayer montre si elle peut être lue</translation>
    </message>
    <message>
        <source>kept by the desktop</source>
        <translation>gardé par le bureau</translation>
    </message>
</context>
<context>
    <name>ullage::StartForm</name>
    <message>
        <source>&amp;Drain</source>
        <translation>&amp;Décharge</translation>
    </message>
    <message>
        <source>From full to cut-off through a load: the usable fraction, and whether the gauge is right.</source>
        <translation>De la pleine charge à la coupure à travers une charge&#xa0;: la fraction utile, et si la jauge est juste.</translation>
    </message>
    <message>
        <source>&amp;No-load drain</source>
        <translation>Décharge à &amp;vide</translation>
    </message>
    <message>
        <source>Output on, nothing connected: what the unit consumes by itself. It takes days; few readings do.</source>
        <translation>Sortie active, rien de branché&#xa0;: ce que la station consomme d’elle-même. Cela prend des jours&#x202f;; peu de relevés suffisent.</translation>
    </message>
    <message>
        <source>nothing connected</source>
        <translation>rien de branché</translation>
    </message>
    <message>
        <source>&amp;Charge</source>
        <translation>R&amp;echarge</translation>
    </message>
    <message>
        <source>From empty to full: how long it takes, and with the meter before the charger what goes in.</source>
        <translation>De vide à plein&#xa0;: combien de temps il faut, et avec le compteur devant le chargeur, ce qui entre.</translation>
    </message>
    <message>
        <source>&amp;Sustained output</source>
        <translation>Puissance s&amp;outenue</translation>
    </message>
    <message>
        <source>A load at the rated output: whether the unit carries it, and for how long.</source>
        <translation>Une charge à la puissance assignée&#xa0;: si la station la tient, et combien de temps.</translation>
    </message>
    <message>
        <source>&amp;Peak output</source>
        <translation>&amp;Puissance de crête</translation>
    </message>
    <message>
        <source>A short load above the rated output: whether the unit starts it. Mark each trip.</source>
        <translation>Une charge brève au-dessus de la puissance assignée&#xa0;: si la station la démarre. Posez un repère à chaque déclenchement.</translation>
    </message>
    <message>
        <source>Stand&amp;by</source>
        <translation>Ve&amp;ille</translation>
    </message>
    <message>
        <source>Output off, left alone: what the unit loses by itself over days. Read the gauge now and then; charge it afterwards.</source>
        <translation>Sortie coupée, sans y toucher&#xa0;: ce que la station perd d’elle-même en quelques jours. Relevez la jauge de temps en temps&#x202f;; rechargez-la ensuite.</translation>
    </message>
    <message>
        <source>output off, nothing connected</source>
        <translation>sortie coupée, rien de branché</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Démarrer un essai</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Station</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Compteur</translation>
    </message>
    <message>
        <source>Second &amp;meter</source>
        <translation>Second co&amp;mpteur</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>C&amp;harge</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>P&amp;leine au départ</translation>
    </message>
    <message>
        <source>Char&amp;ged from</source>
        <translation>Rechar&amp;gée par</translation>
    </message>
    <message>
        <source>Gauge st&amp;ep</source>
        <translation>Pas de la &amp;jauge</translation>
    </message>
    <message>
        <source>1 %, the smallest step that the gauge shows</source>
        <translation>1 %, le plus petit pas que montre la jauge</translation>
    </message>
    <message>
        <source>First &amp;reading</source>
        <translation>Premier &amp;relevé</translation>
    </message>
    <message>
        <source>gauge, %</source>
        <translation>jauge, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>index, Wh</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>watts</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>Vide pour maintenant&#x202f;; sinon 02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>Its second register</source>
        <translation>Son second index</translation>
    </message>
    <message>
        <source>Wh, what the second meter shows</source>
        <translation>Wh, ce que montre le second compteur</translation>
    </message>
    <message>
        <source>Remind me to read</source>
        <translation>Me rappeler de relever</translation>
    </message>
    <message>
        <source>every</source>
        <translation>tous les</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>when the gauge is down by</source>
        <translation>quand la jauge a baissé de</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>before the cut-off</source>
        <translation>avant la coupure</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature</source>
        <translation>Température &amp;ambiante</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>&amp;Fuseau horaire</translation>
    </message>
    <message>
        <source>One in series, whose register you note too</source>
        <translation>Un compteur en série, dont vous notez aussi l’index</translation>
    </message>
    <message>
        <source>As the last run of this unit: %1</source>
        <translation>Comme le dernier essai de cette station&#xa0;: %1</translation>
    </message>
    <message>
        <source>Without a meter the register has no error limit, and no result an interval.</source>
        <translation>Sans compteur, l’index n’a pas de limite d’erreur, et aucun résultat d’intervalle.</translation>
    </message>
    <message>
        <source>The rated energy of the unit is not stated: no share of it can be told.</source>
        <translation>L’énergie assignée de la station n’est pas précisée&#xa0;: aucune part ne peut en être dite.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Before you start&lt;/b&gt;</source>
        <translation>&lt;b&gt;Avant de démarrer&lt;/b&gt;</translation>
    </message>
    <message>
        <source>the charger or the panels, in your words</source>
        <translation>le chargeur ou les panneaux, avec vos mots</translation>
    </message>
    <message>
        <source>what is plugged in, in your words</source>
        <translation>ce qui est branché, avec vos mots</translation>
    </message>
    <message>
        <source>The second meter is the first one; choose another, or none.</source>
        <translation>Le second compteur est le premier&#x202f;; choisissez-en un autre, ou aucun.</translation>
    </message>
    <message>
        <source>No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC.</source>
        <translation>Ce fuseau horaire est inconnu ici&#x202f;; choisissez une région et un lieu, par exemple Africa/Nairobi, ou UTC.</translation>
    </message>
    <message>
        <source>start</source>
        <translation>début</translation>
    </message>
</context>
<context>
    <name>ullage::TableController</name>
    <message>
        <source>Import table of readings</source>
        <translation>Importer un tableau de relevés</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lecture de %1</translation>
    </message>
    <message>
        <source>The clipboard holds no table; copy the cells with their head, in a spreadsheet or on a page, first.</source>
        <translation>Le presse-papiers ne contient pas de tableau&#x202f;; copiez d’abord les cellules avec leur en-tête, dans un tableur ou sur une page.</translation>
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
        <translation>l’essai %1 de %2 a déjà les mêmes relevés</translation>
    </message>
    <message>
        <source>Importing %1</source>
        <translation>Importation de %1</translation>
    </message>
    <message>
        <source>The pasted table</source>
        <translation>Le tableau collé</translation>
    </message>
    <message>
        <source>%1: 1 row was left out.</source>
        <translation>%1&#xa0;: 1 ligne a été laissée de côté.</translation>
    </message>
    <message>
        <source>%1: %2 rows were left out.</source>
        <translation>%1&#xa0;: %2 lignes ont été laissées de côté.</translation>
    </message>
</context>
<context>
    <name>ullage::TableCopy</name>
    <message>
        <source>Copying the table</source>
        <translation>Copie du tableau</translation>
    </message>
</context>
<context>
    <name>ullage::TableForm</name>
    <message>
        <source>Import table %1</source>
        <translation>Importer le tableau %1</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>Fe&amp;uille</translation>
    </message>
    <message>
        <source>&amp;Run shown</source>
        <translation>&amp;Essai affiché</translation>
    </message>
    <message>
        <source>D&amp;ates begin with</source>
        <translation>&amp;Dates, d’abord</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>le jour</translation>
    </message>
    <message>
        <source>the month</source>
        <translation>le mois</translation>
    </message>
    <message>
        <source>&amp;Decimal sign</source>
        <translation>Signe déci&amp;mal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>Re&amp;gister in</source>
        <translation>&amp;Index en</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>choisir…</translation>
    </message>
    <message>
        <source>Times count in</source>
        <translation>Les temps comptent en</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>heures</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutes</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>secondes</translation>
    </message>
    <message>
        <source>A gauge of 0.69 is</source>
        <translation>Une jauge de 0,69 est</translation>
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
        <translation>&amp;Heures comme 2:40</translation>
    </message>
    <message>
        <source>the time of day</source>
        <translation>l’heure du jour</translation>
    </message>
    <message>
        <source>counted from the start</source>
        <translation>comptées depuis le début</translation>
    </message>
    <message>
        <source>Behind the empty row is</source>
        <translation>Après la ligne vide vient</translation>
    </message>
    <message>
        <source>another run</source>
        <translation>un autre essai</translation>
    </message>
    <message>
        <source>the same run</source>
        <translation>le même essai</translation>
    </message>
    <message>
        <source>Keep rows as</source>
        <translation>Garder les lignes comme</translation>
    </message>
    <message>
        <source>the log of a meter</source>
        <translation>le journal d’un compteur</translation>
    </message>
    <message>
        <source>readings noted by hand</source>
        <translation>des relevés notés à la main</translation>
    </message>
    <message>
        <source>&amp;Year of the dates</source>
        <translation>&amp;Année des dates</translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation>Dé&amp;but</translation>
    </message>
    <message>
        <source>2026-05-14 18:00; of several runs one after the other, with ; between</source>
        <translation>2026-05-14 18:00&#x202f;; pour plusieurs essais l’un après l’autre, avec&#x202f;; entre eux</translation>
    </message>
    <message>
        <source>There is no such time zone; name one such as Europe/Berlin.</source>
        <translation>Ce fuseau horaire n’existe pas&#x202f;; nommez-en un comme Europe/Berlin.</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>Lecture du tableau</translation>
    </message>
    <message>
        <source>Read as %1.</source>
        <translation>Lu comme %1.</translation>
    </message>
    <message>
        <source>Its head stands in row %1.</source>
        <translation>Son en-tête est à la ligne %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Columns: %1.</source>
        <translation>Colonnes&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Answered as before for a table with this head.</source>
        <translation>Répondu comme avant pour un tableau avec cet en-tête.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Ouvert&#xa0;: %1</translation>
    </message>
    <message>
        <source>This table cannot come in: %1</source>
        <translation>Ce tableau ne peut entrer&#xa0;: %1</translation>
    </message>
    <message>
        <source>1 row is left out</source>
        <translation>1 ligne est laissée de côté</translation>
    </message>
    <message>
        <source>%1 rows are left out</source>
        <translation>%1 lignes sont laissées de côté</translation>
    </message>
    <message>
        <source>1 row is taken in part</source>
        <translation>1 ligne est reprise en partie</translation>
    </message>
    <message>
        <source>%1 rows are taken in part</source>
        <translation>%1 lignes sont reprises en partie</translation>
    </message>
    <message>
        <source>Every row that holds a value is taken.</source>
        <translation>Chaque ligne qui contient une valeur est reprise.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 relevé</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 relevés</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Essai %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>What the table does not say</source>
        <translation>Ce que le tableau ne dit pas</translation>
    </message>
    <message>
        <source>Time &amp;zone of the table</source>
        <translation>&amp;Fuseau horaire du tableau</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Station</translation>
    </message>
    <message>
        <source>choose one, or type the name of a new one</source>
        <translation>choisissez-en une, ou tapez le nom d’une nouvelle</translation>
    </message>
    <message>
        <source>Rated energy</source>
        <translation>Énergie assignée</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Compteur</translation>
    </message>
    <message>
        <source>&amp;Second meter</source>
        <translation>Second comp&amp;teur</translation>
    </message>
    <message>
        <source>How it &amp;ended</source>
        <translation>Comment il a fi&amp;ni</translation>
    </message>
    <message>
        <source>not known: taken as a part of the drain</source>
        <translation>inconnu&#xa0;: pris comme une partie de la décharge</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>P&amp;leine au départ</translation>
    </message>
    <message>
        <source>&amp;What it tests</source>
        <translation>Ce &amp;qu’il teste</translation>
    </message>
    <message>
        <source>L&amp;oad</source>
        <translation>Char&amp;ge</translation>
    </message>
    <message>
        <source>in your words</source>
        <translation>avec vos mots</translation>
    </message>
    <message>
        <source>a new meter</source>
        <translation>un nouveau compteur</translation>
    </message>
    <message>
        <source>Its &amp;name</source>
        <translation>Son n&amp;om</translation>
    </message>
    <message>
        <source>Its error &amp;limit, %</source>
        <translation>Sa limite d’e&amp;rreur, %</translation>
    </message>
    <message>
        <source>% of reading, or: not known</source>
        <translation>% de la valeur lue, ou&#xa0;: inconnu</translation>
    </message>
    <message>
        <source>Choose the meter, or say that it is not known.</source>
        <translation>Choisissez le compteur, ou dites qu’il est inconnu.</translation>
    </message>
    <message>
        <source>Give the meter a name.</source>
        <translation>Donnez un nom au compteur.</translation>
    </message>
    <message>
        <source>the error limit is not stated</source>
        <translation>la limite d’erreur n’est pas précisée</translation>
    </message>
    <message>
        <source>choose, for the runs whose notes do not say it…</source>
        <translation>choisir, pour les essais dont les notes ne le disent pas…</translation>
    </message>
    <message>
        <source>Wh, or: not known</source>
        <translation>Wh, ou&#xa0;: inconnu</translation>
    </message>
    <message>
        <source>rated energy of %1, Wh</source>
        <translation>énergie assignée de %1, Wh</translation>
    </message>
    <message>
        <source>Choose the role of the column above its cells: %1.</source>
        <translation>Choisissez le rôle de la colonne au-dessus de ses cellules&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Choose the unit, or type the name of a new one.</source>
        <translation>Choisissez la station, ou tapez le nom d’une nouvelle.</translation>
    </message>
    <message>
        <source>the rated energy of %1 is not stated</source>
        <translation>l’énergie assignée de %1 n’est pas précisée</translation>
    </message>
    <message>
        <source>Say how it ended, or that it is not known.</source>
        <translation>Dites comment il a fini, ou que c’est inconnu.</translation>
    </message>
</context>
<context>
    <name>ullage::TreeRowDelegate</name>
    <message>
        <source>due</source>
        <translation>à relever</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>décharge</translation>
    </message>
</context>
<context>
    <name>ullage::UnitComparer</name>
    <message>
        <source>The units could not be compared: %1.</source>
        <translation>Les stations n’ont pas pu être comparées&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitFitView</name>
    <message>
        <source>What all drains say together</source>
        <translation>Ce que disent ensemble toutes les décharges</translation>
    </message>
    <message>
        <source>Charts of the unit</source>
        <translation>Graphiques de la station</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fraction utile</translation>
    </message>
    <message>
        <source>Run time</source>
        <translation>Autonomie</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Erreur de jauge</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>consommation à vide</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>énergie avant consommation propre</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>autonomie à vide</translation>
    </message>
    <message>
        <source>Deliverable energy</source>
        <translation>Énergie délivrable</translation>
    </message>
    <message>
        <source>run %1, %2 (%3)</source>
        <translation>run %1, %2 (%3)</translation>
    </message>
    <message>
        <source>Not used here: %1.</source>
        <translation>Non utilisé ici&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitForm</name>
    <message>
        <source>Add unit</source>
        <translation>Ajouter une station</translation>
    </message>
    <message>
        <source>Claims of %1</source>
        <translation>Valeurs annoncées de %1</translation>
    </message>
    <message>
        <source>Save claims</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>as printed on the case</source>
        <translation>comme imprimé sur le boîtier</translation>
    </message>
    <message>
        <source>Rated &amp;energy</source>
        <translation>Én&amp;ergie assignée</translation>
    </message>
    <message>
        <source>1200 Wh or 1.2 kWh</source>
        <translation>1200 Wh ou 1,2 kWh</translation>
    </message>
    <message>
        <source>Rated &amp;output</source>
        <translation>Puissance &amp;assignée</translation>
    </message>
    <message>
        <source>600 W</source>
        <translation>600 W</translation>
    </message>
    <message>
        <source>&amp;Gauge step</source>
        <translation>Pas de la &amp;jauge</translation>
    </message>
    <message>
        <source>1 %, the smallest step that the gauge shows</source>
        <translation>1 %, le plus petit pas que montre la jauge</translation>
    </message>
    <message>
        <source>Maker and model, further claims, limits of the PV input, the unit at hand</source>
        <translation>Fabricant et modèle, autres valeurs annoncées, limites de l’entrée PV, l’exemplaire présent</translation>
    </message>
    <message>
        <source>&amp;Maker</source>
        <translation>&amp;Fabricant</translation>
    </message>
    <message>
        <source>Mode&amp;l</source>
        <translation>Modè&amp;le</translation>
    </message>
    <message>
        <source>the same for every specimen of it</source>
        <translation>le même pour chacun de ses exemplaires</translation>
    </message>
    <message>
        <source>What the maker claims further</source>
        <translation>Ce que le fabricant annonce de plus</translation>
    </message>
    <message>
        <source>&amp;Peak output</source>
        <translation>&amp;Puissance de crête</translation>
    </message>
    <message>
        <source>1200 W</source>
        <translation>1200 W</translation>
    </message>
    <message>
        <source>List p&amp;rice</source>
        <translation>Pri&amp;x catalogue</translation>
    </message>
    <message>
        <source>799</source>
        <translation>799</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>De&amp;vise</translation>
    </message>
    <message>
        <source>three letters, such as EUR</source>
        <translation>trois lettres, par exemple EUR</translation>
    </message>
    <message>
        <source>M&amp;ass</source>
        <translation>&amp;Masse</translation>
    </message>
    <message>
        <source>12.4 kg</source>
        <translation>12,4 kg</translation>
    </message>
    <message>
        <source>&amp;Warranty</source>
        <translation>&amp;Garantie</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 ans</translation>
    </message>
    <message>
        <source>C&amp;harge time</source>
        <translation>Temps de rec&amp;harge</translation>
    </message>
    <message>
        <source>1.5 h, from cut-off to full, from the wall</source>
        <translation>1,5 h, de la coupure au plein, sur le secteur</translation>
    </message>
    <message>
        <source>Limits of the PV input</source>
        <translation>Limites de l’entrée PV</translation>
    </message>
    <message>
        <source>&amp;Voltage</source>
        <translation>&amp;Tension</translation>
    </message>
    <message>
        <source>60 V</source>
        <translation>60 V</translation>
    </message>
    <message>
        <source>C&amp;urrent</source>
        <translation>Co&amp;urant</translation>
    </message>
    <message>
        <source>12 A</source>
        <translation>12 A</translation>
    </message>
    <message>
        <source>Po&amp;wer</source>
        <translation>Pu&amp;issance</translation>
    </message>
    <message>
        <source>500 W</source>
        <translation>500 W</translation>
    </message>
    <message>
        <source>&amp;Start voltage</source>
        <translation>Tension de &amp;démarrage</translation>
    </message>
    <message>
        <source>12 V, the lowest at which the input works</source>
        <translation>12 V, la plus basse à laquelle l’entrée fonctionne</translation>
    </message>
    <message>
        <source>Short c&amp;ircuit</source>
        <translation>C&amp;ourt-circuit</translation>
    </message>
    <message>
        <source>15 A, the current that the input withstands</source>
        <translation>15 A, le courant que l’entrée supporte</translation>
    </message>
    <message>
        <source>The unit at hand</source>
        <translation>L’exemplaire présent</translation>
    </message>
    <message>
        <source>Serial &amp;number</source>
        <translation>N° de &amp;série</translation>
    </message>
    <message>
        <source>Cells</source>
        <translation>Cellules</translation>
    </message>
    <message>
        <source>their chemistry, such as LFP</source>
        <translation>leur chimie, par exemple LFP</translation>
    </message>
    <message>
        <source>Purchased</source>
        <translation>Acheté le</translation>
    </message>
    <message>
        <source>2027-02-28</source>
        <translation>2027-02-28</translation>
    </message>
    <message>
        <source>Cycles before</source>
        <translation>Cycles avant</translation>
    </message>
    <message>
        <source>full charges before its first run here</source>
        <translation>recharges complètes avant son premier essai ici</translation>
    </message>
    <message>
        <source>Price pai&amp;d</source>
        <translation>Prix pa&amp;yé</translation>
    </message>
    <message>
        <source>for this one, in the same currency</source>
        <translation>pour celle-ci, dans la même devise</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>Éti&amp;quettes</translation>
    </message>
    <message>
        <source>short words to find units by, such as: lent; tent</source>
        <translation>mots courts pour retrouver des stations, par exemple&#xa0;: prêtée&#x202f;; tente</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>&amp;Remarque</translation>
    </message>
    <message>
        <source>The unit needs a name, by which lists and sheets call it.</source>
        <translation>La station a besoin d’un nom, par lequel listes et fiches la désignent.</translation>
    </message>
    <message>
        <source>Write the day like 2027-02-28: year, month, day.</source>
        <translation>Écrivez le jour comme 2027-02-28&#xa0;: année, mois, jour.</translation>
    </message>
    <message>
        <source>The short-circuit current must not lie below the current limit.</source>
        <translation>Le courant de court-circuit ne doit pas être sous la limite de courant.</translation>
    </message>
    <message>
        <source>The start voltage must lie below the voltage limit.</source>
        <translation>La tension de démarrage doit être sous la limite de tension.</translation>
    </message>
    <message>
        <source>A gauge step of more than 50 % shows nothing; enter what the gauge counts by.</source>
        <translation>Un pas de jauge de plus de 50 % ne montre rien&#x202f;; saisissez par quel pas la jauge compte.</translation>
    </message>
    <message>
        <source>Enter the currency&apos;s three letters (ISO 4217), such as EUR or KES.</source>
        <translation>Saisissez les trois lettres de la devise (ISO 4217), par exemple EUR ou KES.</translation>
    </message>
    <message>
        <source>The price needs a currency: three letters (ISO 4217), such as EUR.</source>
        <translation>Le prix a besoin d’une devise&#xa0;: trois lettres (ISO 4217), par exemple EUR.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitPage</name>
    <message>
        <source>Import run sheet</source>
        <translation>Importer une fiche d’essai</translation>
    </message>
    <message>
        <source>Edit claims</source>
        <translation>Modifier les valeurs</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Faire le rapport</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Démarrer un essai</translation>
    </message>
    <message>
        <source>What the maker claims</source>
        <translation>Ce que le fabricant annonce</translation>
    </message>
    <message>
        <source>runs of this unit</source>
        <translation>essais de cette station</translation>
    </message>
    <message>
        <source>No runs yet. With the unit full and the meter between its socket and the load, choose Start run; a run noted elsewhere comes in with Import run sheet.</source>
        <translation>Encore aucun essai. Station pleine, compteur entre sa prise et la charge, choisissez Démarrer un essai&#x202f;; un essai noté ailleurs entre par Importer une fiche d’essai.</translation>
    </message>
    <message>
        <source>Runs, and claims tested</source>
        <translation>Essais, et valeurs vérifiées</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Claims tested</source>
        <translation>Valeurs vérifiées</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>Vessel of %1</source>
        <translation>Récipient de %1</translation>
    </message>
    <message>
        <source>No rated energy is stated, so there is nothing to fill.</source>
        <translation>Aucune énergie assignée n’est précisée, il n’y a donc rien à remplir.</translation>
    </message>
    <message>
        <source>Empty until a drain has been noted.</source>
        <translation>Vide jusqu’à ce qu’une décharge soit notée.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitReportForm</name>
    <message>
        <source>For readers: the answer first, then claims, every drain, the gauge, and what it is based on. Tags, prices paid and remarks stay out of it. Numbers have the decimal sign of your system.</source>
        <translation>Pour les lecteurs&#xa0;: d’abord la réponse, puis les valeurs annoncées, chaque décharge, la jauge, et sur quoi cela repose. Étiquettes, prix payés et remarques n’y figurent pas. Les nombres ont le signe décimal de votre système.</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Longueur</translation>
    </message>
    <message>
        <source>whole, with what it is based on</source>
        <translation>entier, avec ce sur quoi il repose</translation>
    </message>
    <message>
        <source>short, two pages</source>
        <translation>court, deux pages</translation>
    </message>
    <message>
        <source>Sections of the whole report</source>
        <translation>Parties du rapport entier</translation>
    </message>
    <message>
        <source>Photos as evidence</source>
        <translation>Photos comme preuves</translation>
    </message>
    <message>
        <source>Published by, kept in the logbook</source>
        <translation>Publié par, gardé dans le carnet</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>yours, or that of the paper</source>
        <translation>le vôtre, ou celui de la revue</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>T&amp;itre</translation>
    </message>
    <message>
        <source>in place of “%1: test report”</source>
        <translation>au lieu de «&#xa0;%1&#xa0;: rapport d’essai&#xa0;»</translation>
    </message>
    <message>
        <source>name of the unit</source>
        <translation>nom de la station</translation>
    </message>
    <message>
        <source>&amp;Introduction</source>
        <translation>Intro&amp;duction</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>introduction</translation>
    </message>
    <message>
        <source>a paragraph before the answers</source>
        <translation>un paragraphe avant les réponses</translation>
    </message>
    <message>
        <source>Lice&amp;nce of the text</source>
        <translation>Licen&amp;ce du texte</translation>
    </message>
    <message>
        <source>such as CC BY 4.0</source>
        <translation>par exemple CC BY 4.0</translation>
    </message>
</context>
<context>
    <name>ullage::UnitRunsModel</name>
    <message>
        <source>One of the drains that are taken together</source>
        <translation>Une des décharges prises ensemble</translation>
    </message>
    <message>
        <source>Not taken together with the other drains: %1</source>
        <translation>Non prise avec les autres décharges&#xa0;: %1</translation>
    </message>
    <message>
        <source>run</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>delivered Wh</source>
        <translation>délivré Wh</translation>
    </message>
    <message>
        <source>usable %</source>
        <translation>utile %</translation>
    </message>
    <message>
        <source>mean load W</source>
        <translation>charge moyenne W</translation>
    </message>
    <message>
        <source>duration h</source>
        <translation>durée h</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
</context>
<context>
    <name>ullage::VesselKey</name>
    <message>
        <source>How to read this</source>
        <translation>Comment lire ceci</translation>
    </message>
    <message>
        <source>delivered at the socket; the bracket is the 95&#xa0;% interval</source>
        <translation>délivré à la prise&#x202f;; le crochet est l’intervalle à 95&#xa0;%</translation>
    </message>
    <message>
        <source>taken by the no-load draw, where that is known</source>
        <translation>pris par la consommation à vide, là où elle est connue</translation>
    </message>
    <message>
        <source>missing: own draw, conversion, or less than the label; one run cannot separate them</source>
        <translation>manquant&#xa0;: consommation propre, conversion, ou moins qu’annoncé&#x202f;; un seul essai ne peut les séparer</translation>
    </message>
    <message>
        <source>typical at the socket (common practice, no source), 75 to 80&#xa0;% of rated</source>
        <translation>courant à la prise (pratique courante, sans source), 75 à 80&#xa0;% de l’énergie assignée</translation>
    </message>
</context>
<context>
    <name>ullage::VesselRow</name>
    <message>
        <source>rating not known</source>
        <translation>assignée inconnue</translation>
    </message>
    <message>
        <source>rated %1 Wh</source>
        <translation>%1 Wh assignés</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>delivered: %1</source>
        <translation>délivré&#xa0;: %1</translation>
    </message>
    <message>
        <source>taken by the no-load draw: %1 Wh</source>
        <translation>pris par la consommation à vide&#xa0;: %1 Wh</translation>
    </message>
</context>
<context>
    <name>ullage::ViewController</name>
    <message>
        <source>No picture is in sight here; choose a run, a unit or the comparison.</source>
        <translation>Aucune image n’est visible ici&#x202f;; choisissez un essai, une station ou la comparaison.</translation>
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
        <translation>Enregistrer l’image</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>image</translation>
    </message>
    <message>
        <source>Picture saved to %1.</source>
        <translation>Image enregistrée dans %1.</translation>
    </message>
    <message>
        <source>store the reading in the entry row</source>
        <translation>enregistrer le relevé de la ligne de saisie</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>next or previous field</source>
        <translation>champ suivant ou précédent</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Maj+Tab</translation>
    </message>
    <message>
        <source>clear the entry row</source>
        <translation>vider la ligne de saisie</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>answer a doubt: as meant, keep, correct, reset, swapped</source>
        <translation>répondre à un doute&#xa0;: comme voulu, garder, corriger, remise à zéro, remplacé</translation>
    </message>
    <message>
        <source>M, K, C, Z, W</source>
        <translation>M, K, C, Z, W</translation>
    </message>
    <message>
        <source>bench display: take the reading of that card; dim; leave</source>
        <translation>affichage de banc&#xa0;: saisir le relevé de cette carte&#x202f;; atténuer&#x202f;; quitter</translation>
    </message>
    <message>
        <source>1 to 9; N; Esc</source>
        <translation>1 à 9&#x202f;; N&#x202f;; Échap</translation>
    </message>
    <message>
        <source>copy the chosen rows of the readings or the comparison for a spreadsheet</source>
        <translation>copier les lignes choisies des relevés ou de la comparaison pour un tableur</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <translation>Ctrl+C</translation>
    </message>
    <message>
        <source>open, withdraw the chosen photo</source>
        <translation>ouvrir, retirer la photo choisie</translation>
    </message>
    <message>
        <source>Enter, Delete</source>
        <translation>Entrée, Suppr</translation>
    </message>
    <message>
        <source>take the time of a photo that waits for the reading</source>
        <translation>prendre l’heure d’une photo qui attend le relevé</translation>
    </message>
    <message>
        <source>Alt+T</source>
        <translation>Alt+T</translation>
    </message>
    <message>
        <source>Keys and words</source>
        <translation>Touches et mots</translation>
    </message>
    <message>
        <source>Worked example</source>
        <translation>Exemple traité</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
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
        <translation>À propos d’Ullage</translation>
    </message>
</context>
<context>
    <name>ullage::WaitingPhotos</name>
    <message>
        <source>Photos for the next reading</source>
        <translation>Photos pour le prochain relevé</translation>
    </message>
    <message>
        <source>This photo goes with the next reading.</source>
        <translation>Cette photo accompagne le prochain relevé.</translation>
    </message>
    <message>
        <source>These photos go with the next reading.</source>
        <translation>Ces photos accompagnent le prochain relevé.</translation>
    </message>
    <message>
        <source>Taken %1.</source>
        <translation>Prise %1.</translation>
    </message>
    <message>
        <source>Use the photo&apos;s &amp;time, %1</source>
        <translation>Prendre l’heure de la pho&amp;to, %1</translation>
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
        <translation>Ouvrir le carnet d’exemple</translation>
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
        <translation>Ajouter une station</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Ajouter un compteur</translation>
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
        <translation>Importer une fiche d’essai</translation>
    </message>
    <message>
        <source>Lately open</source>
        <translation>Ouverts récemment</translation>
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
        <translation>Nouveau carnet</translation>
    </message>
    <message>
        <source>Open logbook</source>
        <translation>Ouvrir un carnet</translation>
    </message>
    <message>
        <source>This logbook is empty. Begin with the unit under test, be guided through a first run, or bring in a table that you have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the energy printed on a battery storage unit reaches the socket, how sure is that, and can its gauge be trusted?</source>
        <translation>Quelle part de l’énergie imprimée sur une station arrive à la prise, avec quelle certitude, et peut-on se fier à sa jauge&#x202f;?</translation>
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
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Arrêt…</translation>
    </message>
</context>
</TS>
