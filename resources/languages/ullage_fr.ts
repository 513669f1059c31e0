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
    <name>advice</name>
    <message>
        <source>; make a drain</source>
        <translation>&#x202f;; faites une décharge</translation>
    </message>
    <message>
        <source>: read the gauge more often</source>
        <translation>&#xa0;: relevez la jauge plus souvent</translation>
    </message>
    <message>
        <source>: repeat an early drain</source>
        <translation>&#xa0;: répétez une décharge ancienne</translation>
    </message>
    <message>
        <source>: make one</source>
        <translation>&#xa0;: faites-en une</translation>
    </message>
    <message>
        <source>: make a drain near %1 W</source>
        <translation>&#xa0;: faites une décharge vers %1 W</translation>
    </message>
    <message>
        <source>: make a drain at less than half or more than twice that load</source>
        <translation>&#xa0;: faites une décharge à moins de la moitié ou à plus du double de cette charge</translation>
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
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
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
    <message>
        <source>%1 is no time of day</source>
        <translation>%1 n’est pas une heure du jour</translation>
    </message>
    <message>
        <source>use 00:00:00 to 23:59:59</source>
        <translation>utilisez 00:00:00 à 23:59:59</translation>
    </message>
    <message>
        <source>year %1 is outside 1583 to 9999</source>
        <translation>l’année %1 est hors de 1583 à 9999</translation>
    </message>
    <message>
        <source>correct the year</source>
        <translation>corrigez l’année</translation>
    </message>
    <message>
        <source>%1 is no date of the calendar</source>
        <translation>%1 n’est pas une date du calendrier</translation>
    </message>
    <message>
        <source>correct the day or the month</source>
        <translation>corrigez le jour ou le mois</translation>
    </message>
    <message>
        <source>the moment is outside the years 1583 to 9999</source>
        <translation>l’instant est hors des années 1583 à 9999</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` n’est pas un fuseau horaire connu de cette machine</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna, or UTC</source>
        <translation>utilisez un nom IANA comme Europe/Vienna, ou UTC</translation>
    </message>
    <message>
        <source>%1 does not exist in %2: the clocks went forward</source>
        <translation>%1 n’existe pas en %2&#xa0;: les horloges ont été avancées</translation>
    </message>
    <message>
        <source>use the time after the change</source>
        <translation>utilisez l’heure après le changement</translation>
    </message>
    <message>
        <source>%1 occurs twice in %2: the clocks were put back</source>
        <translation>%1 existe deux fois en %2&#xa0;: les horloges ont été retardées</translation>
    </message>
    <message>
        <source>add the offset: %1 or %2</source>
        <translation>ajoutez le décalage&#xa0;: %1 ou %2</translation>
    </message>
    <message>
        <source>`%1` is no date and time</source>
        <translation>`%1` n’est pas une date avec heure</translation>
    </message>
    <message>
        <source>write it like 2027-05-14T18:00, with Z or an offset such as +02:00 if need be</source>
        <translation>écrivez-la comme 2027-05-14T18:00, au besoin avec Z ou un décalage comme +02:00</translation>
    </message>
    <message>
        <source>`%1` is no number</source>
        <translation>`%1` n’est pas un nombre</translation>
    </message>
    <message>
        <source>write a number such as 431 or 0.5</source>
        <translation>écrivez un nombre comme 431 ou 0,5</translation>
    </message>
    <message>
        <source>`%1` can be read in more than one way</source>
        <translation>`%1` peut se lire de plusieurs façons</translation>
    </message>
    <message>
        <source>leave out digit grouping and use one decimal sign</source>
        <translation>laissez de côté le groupement des chiffres et utilisez un seul signe décimal</translation>
    </message>
    <message>
        <source>write a number such as 431 or 0.5, without digit grouping</source>
        <translation>écrivez un nombre comme 431 ou 0,5, sans groupement des chiffres</translation>
    </message>
    <message>
        <source>`%1` is too large or too small</source>
        <translation>`%1` est trop grand ou trop petit</translation>
    </message>
    <message>
        <source>correct the number</source>
        <translation>corrigez le nombre</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>il n’y a plus de place sur le disque</translation>
    </message>
    <message>
        <source>nothing can be made in this folder: %1</source>
        <translation>rien ne peut être créé dans ce dossier&#xa0;: %1</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>faites de la place ou choisissez un autre endroit</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>choisissez un dossier où vous avez le droit d’écrire</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <extracomment>Parts two clauses, such as what is wrong and what to do. A language that sets a space before a semicolon sets one here that does not break.</extracomment>
        <translation>%1&#x202f;; %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>Parts where something is from what is there. A language that sets a space before a colon sets one here that does not break.</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>install Ullage anew, all its files together</source>
        <translation>réinstallez Ullage, tous ses fichiers ensemble</translation>
    </message>
    <message>
        <source>a part of the program is missing</source>
        <translation>une partie du programme manque</translation>
    </message>
    <message>
        <source>a part of the program is of another version</source>
        <translation>une partie du programme est d’une autre version</translation>
    </message>
    <message>
        <source>a part of the program cannot be loaded (%1)</source>
        <translation>une partie du programme ne peut pas être chargée (%1)</translation>
    </message>
    <message>
        <source>a part of the program cannot be opened (%1)</source>
        <translation>une partie du programme ne peut pas être ouverte (%1)</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>a picture of %1 by %2 cannot be drawn</source>
        <translation>une image de %1 sur %2 ne peut être dessinée</translation>
    </message>
    <message>
        <source>picture size</source>
        <translation>taille de l’image</translation>
    </message>
    <message>
        <source>choose sides from 1 to %1</source>
        <translation>choisissez des côtés de 1 à %1</translation>
    </message>
    <message>
        <source>the scale is not a positive number</source>
        <translation>l’échelle n’est pas un nombre positif</translation>
    </message>
    <message>
        <source>picture scale</source>
        <translation>échelle de l’image</translation>
    </message>
    <message>
        <source>choose a scale such as 1 or 2</source>
        <translation>choisissez une échelle comme 1 ou 2</translation>
    </message>
    <message>
        <source>the picture could not be put into PNG form</source>
        <translation>l’image n’a pas pu être mise au format PNG</translation>
    </message>
    <message>
        <source>try a smaller size</source>
        <translation>essayez une taille plus petite</translation>
    </message>
    <message>
        <source>size and scale make an image that is too small or too large</source>
        <translation>taille et échelle donnent une image trop petite ou trop grande</translation>
    </message>
    <message>
        <source>choose a smaller size or scale</source>
        <translation>choisissez une taille ou une échelle plus petite</translation>
    </message>
    <message>
        <source>there is not enough memory for the picture</source>
        <translation>il n’y a pas assez de mémoire pour l’image</translation>
    </message>
    <message>
        <source>the picture could not be put into SVG form</source>
        <translation>l’image n’a pas pu être mise au format SVG</translation>
    </message>
    <message>
        <source>try PNG instead</source>
        <translation>essayez plutôt PNG</translation>
    </message>
    <message>
        <source>a picture&apos;s name must end in .png or .svg</source>
        <translation>le nom d’une image doit finir par .png ou .svg</translation>
    </message>
    <message>
        <source>add the ending that you want</source>
        <translation>ajoutez la terminaison que vous voulez</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>le dossier n’existe pas</translation>
    </message>
    <message>
        <source>make the folder or choose another</source>
        <translation>créez le dossier ou choisissez-en un autre</translation>
    </message>
    <message>
        <source>there is nothing drawn here yet</source>
        <translation>rien n’est encore dessiné ici</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>image</translation>
    </message>
    <message>
        <source>choose a run with readings</source>
        <translation>choisissez un essai avec des relevés</translation>
    </message>
</context>
<context>
    <name>claims</name>
    <message>
        <source>Run %1, %2</source>
        <translation>Essai %1, %2</translation>
    </message>
    <message>
        <source>%1: delivered at the socket from full to cut-off at this load.</source>
        <translation>%1&#xa0;: délivré à la prise de la pleine charge à la coupure, à cette charge.</translation>
    </message>
    <message>
        <source>Not tested: %1.</source>
        <translation>Non testé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>énergie assignée</translation>
    </message>
    <message>
        <source>there is no drain from full to cut-off with its energy known</source>
        <translation>il n’y a aucune décharge de la pleine charge à la coupure dont l’énergie soit connue</translation>
    </message>
    <message>
        <source>What the battery holds inside is not measured.</source>
        <translation>Ce que la batterie contient n’est pas mesuré.</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>puissance de crête</translation>
    </message>
    <message>
        <source>there is no peak-output run with a known load</source>
        <translation>il n’y a aucun essai de puissance de crête à charge connue</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>puissance assignée</translation>
    </message>
    <message>
        <source>there is no sustained-output run with a known load</source>
        <translation>il n’y a aucun essai de puissance soutenue à charge connue</translation>
    </message>
    <message>
        <source>Runs disagree.</source>
        <translation>Les essais se contredisent.</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>temps de recharge</translation>
    </message>
    <message>
        <source>there is no charge from cut-off to full that is not from PV</source>
        <translation>il n’y a aucune recharge de la coupure au plein qui ne soit pas par PV</translation>
    </message>
    <message>
        <source>Mean of %1 charges. The latest: %2</source>
        <translation>Moyenne de %1 recharges. La dernière&#xa0;: %2</translation>
    </message>
    <message>
        <source>power of the PV input</source>
        <translation>puissance de l’entrée PV</translation>
    </message>
    <message>
        <source>there is no charge from PV with a known power</source>
        <translation>il n’y a aucune recharge par PV à puissance connue</translation>
    </message>
    <message>
        <source>%1. Peak: %2; the sun may have given no more.</source>
        <translation>%1. Crête&#xa0;: %2&#x202f;; le soleil n’a peut-être pas donné plus.</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>tenu</translation>
    </message>
    <message>
        <source>does not hold</source>
        <translation>non tenu</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>non atteint</translation>
    </message>
    <message>
        <source>not decided by this meter</source>
        <translation>non tranché par ce compteur</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>non testé</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>Decision rule: a claim holds where the measured value reaches it, whatever its interval: simple acceptance, JCGM 106:2012, 8.2. Near the claim such a verdict is wrong about every second time.</source>
        <translation>Règle de décision&#xa0;: une valeur annoncée est tenue si la valeur mesurée l’atteint, quel que soit son intervalle&#xa0;: acceptation simple, JCGM 106:2012, 8.2. Près de la valeur annoncée, un tel verdict est faux environ une fois sur deux.</translation>
    </message>
    <message>
        <source>Decision rule: a claim holds where the whole 95 % interval lies on its good side, and does not where it lies on the other; in between this meter does not decide it. Guarded acceptance and rejection, JCGM 106:2012, 8.3.</source>
        <translation>Règle de décision&#xa0;: une valeur annoncée est tenue si tout l’intervalle à 95 % est du bon côté, et ne l’est pas s’il est tout entier de l’autre&#x202f;; entre les deux, ce compteur ne tranche pas. Acceptation et rejet gardés, JCGM 106:2012, 8.3.</translation>
    </message>
</context>
<context>
    <name>commands</name>
    <message>
        <source>there is no such file or folder</source>
        <translation>ce fichier ou dossier n’existe pas</translation>
    </message>
    <message>
        <source>name a logbook, or the folder that it is to stand in</source>
        <translation>nommez un carnet, ou le dossier où il doit se trouver</translation>
    </message>
    <message>
        <source>a logbook, or a folder for one: whether it can be recorded into there</source>
        <translation>un carnet, ou un dossier pour en recevoir un&#xa0;: s’il est possible d’y enregistrer</translation>
    </message>
    <message>
        <source>Write the charts of every run and of the comparison as PNG and SVG</source>
        <translation>Écrit les graphiques de chaque essai et de la comparaison en PNG et SVG</translation>
    </message>
    <message>
        <source>Write the report of one run, the comparison, a sizing or a PV check as PDF or HTML</source>
        <translation>Écrit en PDF ou HTML le rapport d’un essai, de la comparaison, d’un dimensionnement ou d’un contrôle PV</translation>
    </message>
    <message>
        <source>Open the window on a logbook, show every page and tab of it in turn, and end; records nothing</source>
        <translation>Ouvre la fenêtre sur un carnet, montre tour à tour chacune de ses pages et chacun de ses onglets, et se termine&#x202f;; n’enregistre rien</translation>
    </message>
    <message>
        <source>Say what the program finds here: versions, fonts, writable places, desktop services</source>
        <translation>Dit ce que le programme trouve ici&#xa0;: versions, polices, endroits où écrire, services du bureau</translation>
    </message>
    <message>
        <source>logbook, run sheet (.csv), or folder of run sheets</source>
        <translation>carnet, fiche d’essai (.csv) ou dossier de fiches d’essai</translation>
    </message>
    <message>
        <source>folder for the pictures, made when missing</source>
        <translation>dossier pour les images, créé s’il n’existe pas</translation>
    </message>
    <message>
        <source>in the colours for dim surroundings</source>
        <translation>dans les couleurs pour un lieu sombre</translation>
    </message>
    <message>
        <source>on white, for paper</source>
        <translation>sur fond blanc, pour le papier</translation>
    </message>
    <message>
        <source>without title, key and source, which then stand in your text</source>
        <translation>sans titre, légende ni source, qui figurent alors dans votre texte</translation>
    </message>
    <message>
        <source>leave out the charts of the runs and the units</source>
        <translation>laisse de côté les graphiques des essais et des stations</translation>
    </message>
    <message>
        <source>also the comparison at this common load, W</source>
        <translation>aussi la comparaison à cette charge commune, W</translation>
    </message>
    <message>
        <source>share of the time that the load is on, %</source>
        <translation>part du temps pendant laquelle la charge est en marche, %</translation>
    </message>
    <message>
        <source>width of a picture, 254 unless told</source>
        <translation>largeur d’une image, 254 si non précisée</translation>
    </message>
    <message>
        <source>height of a picture, 143 unless told</source>
        <translation>hauteur d’une image, 143 si non précisée</translation>
    </message>
    <message>
        <source>sharpness of PNG, 192 unless told</source>
        <translation>finesse du PNG, 192 si non précisée</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>le dossier ne peut être créé</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>choisissez un dossier où vous avez le droit d’écrire</translation>
    </message>
    <message numerus="yes">
        <source>%n pictures are in %1</source>
        <comment>%n pictures are in %1</comment>
        <translation>
            <numerusform>%n image est dans %1</numerusform>
            <numerusform>%n images sont dans %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; see %2</source>
        <translation>%1&#x202f;; voyez %2</translation>
    </message>
    <message>
        <source>the run to report, UNIT/N; the number alone where there is one unit</source>
        <translation>l’essai du rapport, UNIT/N&#x202f;; le numéro seul s’il n’y a qu’une station</translation>
    </message>
    <message>
        <source>report the comparison of the units, as tested or at one load</source>
        <translation>fait le rapport de la comparaison des stations, comme testé ou à une même charge</translation>
    </message>
    <message>
        <source>the unit to report, with all its runs</source>
        <translation>la station du rapport, avec tous ses essais</translation>
    </message>
    <message>
        <source>sections of a unit&apos;s report, with commas between them; all where none is named</source>
        <translation>parties du rapport d’une station, séparées par des virgules&#x202f;; toutes si aucune n’est nommée</translation>
    </message>
    <message>
        <source>a unit&apos;s report on two pages</source>
        <translation>le rapport d’une station en deux pages</translation>
    </message>
    <message>
        <source>in a unit&apos;s report: every photo of its runs; none else</source>
        <translation>dans le rapport d’une station&#xa0;: chaque photo de ses essais&#x202f;; sinon aucune</translation>
    </message>
    <message>
        <source>report the sizing for this load list: its name in the logbook, or a file (.csv)</source>
        <translation>fait le rapport du dimensionnement pour cette liste de charges&#xa0;: son nom dans le carnet, ou un fichier (.csv)</translation>
    </message>
    <message>
        <source>report the PV input check of this sheet: its name in the logbook, or a file</source>
        <translation>fait le rapport du contrôle de l’entrée PV de cette fiche&#xa0;: son nom dans le carnet, ou un fichier</translation>
    </message>
    <message>
        <source>in a comparison: a row for each drain instead of one for each unit</source>
        <translation>dans une comparaison&#xa0;: une ligne par décharge au lieu d’une par station</translation>
    </message>
    <message>
        <source>in a comparison: common load, W; a unit that cannot be converted to it stays as tested</source>
        <translation>dans une comparaison&#xa0;: charge commune, W&#x202f;; une station qui ne peut y être ramenée reste comme testé</translation>
    </message>
    <message>
        <source>in a comparison: keys of the columns wanted, in order, or readers or spreadsheet</source>
        <translation>dans une comparaison&#xa0;: clés des colonnes voulues, dans l’ordre, ou readers ou spreadsheet</translation>
    </message>
    <message>
        <source>with what is the tester&apos;s own: tags, prices paid, remarks, advice</source>
        <translation>avec ce qui est propre au testeur&#xa0;: étiquettes, prix payés, remarques, conseils</translation>
    </message>
    <message>
        <source>file to write; its ending, .pdf or .html, chooses the form</source>
        <translation>fichier à écrire&#x202f;; sa terminaison, .pdf ou .html, décide du format</translation>
    </message>
    <message>
        <source>its tables (HTML) and pictures (PNG) as files too, in a folder beside it</source>
        <translation>aussi ses tableaux (HTML) et ses images (PNG) en fichiers, dans un dossier à côté</translation>
    </message>
    <message>
        <source>a4 or letter</source>
        <translation>a4 ou letter</translation>
    </message>
    <message>
        <source>whose decimal sign is written, e.g. de_DE or en_US</source>
        <translation>région dont le signe décimal est écrit, par exemple de_DE ou en_US</translation>
    </message>
    <message>
        <source>report saved to %1</source>
        <translation>rapport enregistré dans %1</translation>
    </message>
    <message>
        <source>its tables and pictures: %1</source>
        <translation>ses tableaux et images&#xa0;: %1</translation>
    </message>
    <message>
        <source>`%1` names no run; write UNIT/N, e.g. &quot;Osk 1200/2&quot;</source>
        <translation>`%1` ne nomme aucun essai&#x202f;; écrivez UNIT/N, par exemple &quot;Osk 1200/2&quot;</translation>
    </message>
    <message>
        <source>several units are named `%1`</source>
        <translation>plusieurs stations portent le nom `%1`</translation>
    </message>
    <message>
        <source>give the units names of their own</source>
        <translation>donnez aux stations des noms distincts</translation>
    </message>
    <message>
        <source>%1: the photo cannot be shown; it is left out</source>
        <translation>%1&#xa0;: la photo ne peut être montrée&#x202f;; elle est laissée de côté</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>il n’y a pas de colonne `%1`</translation>
    </message>
    <message>
        <source>`ullage compare --help` lists them</source>
        <translation>`ullage compare --help` les énumère</translation>
    </message>
    <message>
        <source>choose --run UNIT/N, --unit UNIT, --compare, --size LIST or --pv SHEET</source>
        <translation>choisissez --run UNIT/N, --unit UNIT, --compare, --size LIST ou --pv SHEET</translation>
    </message>
    <message>
        <source>says: %1</source>
        <translation>message&#xa0;: %1</translation>
    </message>
    <message>
        <source>the folder is not empty</source>
        <translation>le dossier n’est pas vide</translation>
    </message>
    <message>
        <source>name a new one</source>
        <translation>nommez-en un nouveau</translation>
    </message>
    <message>
        <source>logbook file</source>
        <translation>fichier de carnet</translation>
    </message>
    <message>
        <source>a new or empty folder: write a PNG of each page into it</source>
        <translation>un dossier nouveau ou vide&#xa0;: y écrit un PNG de chaque page</translation>
    </message>
    <message>
        <source>of the window</source>
        <translation>de la fenêtre</translation>
    </message>
    <message>
        <source>size of texts, of that of the desktop</source>
        <translation>taille des textes, par rapport à celle du bureau</translation>
    </message>
    <message>
        <source>in the dark theme</source>
        <translation>dans le thème sombre</translation>
    </message>
    <message>
        <source>What is read, one --read for each value: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]</source>
        <translation>Ce qui est lu, un --read pour chaque valeur&#xa0;: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]</translation>
    </message>
    <message>
        <source>register, power, voltage, current; gauge or output of the unit itself</source>
        <translation>register, power, voltage, current&#x202f;; gauge ou output de la station elle-même</translation>
    </message>
    <message>
        <source>power holding 52 as f32 in W; registers count from 0; input or holding; types u16 s16 u32 s32</source>
        <translation>power holding 52 as f32 in W&#x202f;; les registres se comptent à partir de 0&#x202f;; input ou holding&#x202f;; types u16 s16 u32 s32</translation>
    </message>
    <message>
        <source>u64 s64 f32 f64; behind the type: low-word-first, bytes-swapped</source>
        <translation>u64 s64 f32 f64&#x202f;; après le type&#xa0;: low-word-first, bytes-swapped</translation>
    </message>
    <message>
        <source>sunspec imported, sunspec exported: the meter model that the device names</source>
        <translation>sunspec imported, sunspec exported&#xa0;: le modèle de compteur que l’appareil nomme</translation>
    </message>
    <message>
        <source>power bench/plug/power, or power bench/plug#/power for JSON</source>
        <translation>power bench/plug/power, ou power bench/plug#/power pour du JSON</translation>
    </message>
    <message>
        <source>power #/meters/0/power, or power body for a plain number</source>
        <translation>power #/meters/0/power, ou power body pour un simple nombre</translation>
    </message>
    <message>
        <source>power column 3 in W, or detect</source>
        <translation>power column 3 in W, ou detect</translation>
    </message>
    <message>
        <source>A password is asked for at the terminal, or taken from ULLAGE_SOURCE_PASSWORD. It is not kept.</source>
        <translation>Un mot de passe est demandé au terminal, ou pris dans ULLAGE_SOURCE_PASSWORD. Il n’est pas gardé.</translation>
    </message>
    <message>
        <source>Meters in mains circuits are installed by licensed people; local codes come first.</source>
        <translation>Les compteurs dans des circuits du secteur sont installés par des personnes habilitées&#x202f;; les règles locales passent d’abord.</translation>
    </message>
    <message>
        <source>number of the run; without it every running run whose meter has a source</source>
        <translation>numéro de l’essai&#x202f;; sans lui, chaque essai en cours dont le compteur a une source</translation>
    </message>
    <message>
        <source>name of the unit</source>
        <translation>nom de la station</translation>
    </message>
    <message>
        <source>kind of the source; without it the one kept with the meter of the run</source>
        <translation>sorte de la source&#x202f;; sans elle, celle gardée avec le compteur de l’essai</translation>
    </message>
    <message>
        <source>HOST[:PORT], a URL, or a device file</source>
        <translation>HOST[:PORT], une URL ou un fichier de périphérique</translation>
    </message>
    <message>
        <source>one value that is read, see below</source>
        <translation>une valeur lue, voir plus bas</translation>
    </message>
    <message>
        <source>Modbus: unit identifier</source>
        <translation>Modbus&#xa0;: identifiant de l’esclave</translation>
    </message>
    <message>
        <source>serial line: speed, bits, parity, stop bits, as in 9600 8N1</source>
        <translation>ligne série&#xa0;: vitesse, bits, parité, bits d’arrêt, comme dans 9600 8N1</translation>
    </message>
    <message>
        <source>seconds between two questions</source>
        <translation>secondes entre deux interrogations</translation>
    </message>
    <message>
        <source>MQTT: secured</source>
        <translation>MQTT&#xa0;: connexion sécurisée</translation>
    </message>
    <message>
        <source>MQTT and HTTP: user name</source>
        <translation>MQTT et HTTP&#xa0;: nom d’utilisateur</translation>
    </message>
    <message>
        <source>keep this source with the meter of the run, for the next time</source>
        <translation>garde cette source avec le compteur de l’essai, pour la prochaine fois</translation>
    </message>
    <message>
        <source>show what comes, record nothing</source>
        <translation>montre ce qui vient, n’enregistre rien</translation>
    </message>
    <message>
        <source>end when every output has gone off</source>
        <translation>se termine quand chaque sortie s’est coupée</translation>
    </message>
    <message>
        <source>end after so many seconds</source>
        <translation>se termine après ce nombre de secondes</translation>
    </message>
    <message>
        <source>Read meters live into running runs, without a window, until interrupted</source>
        <translation>Lit des compteurs en direct pour les essais en cours, sans fenêtre, jusqu’à interruption</translation>
    </message>
    <message>
        <source>Password of %1 at %2:</source>
        <translation>Mot de passe de %1 à %2&#xa0;:</translation>
    </message>
    <message>
        <source>no source is kept with the meter of this run</source>
        <translation>aucune source n’est gardée avec le compteur de cet essai</translation>
    </message>
    <message>
        <source>state it with --kind, --address and --read; --keep keeps it</source>
        <translation>indiquez-la avec --kind, --address et --read&#x202f;; --keep la garde</translation>
    </message>
    <message>
        <source>units of several makers have this name and run</source>
        <translation>des stations de plusieurs fabricants ont ce nom et cet essai</translation>
    </message>
    <message>
        <source>rename one of them</source>
        <translation>renommez l’une d’elles</translation>
    </message>
    <message>
        <source>the run names no meter that could keep a source</source>
        <translation>l’essai ne nomme aucun compteur qui puisse garder une source</translation>
    </message>
    <message>
        <source>name its meter first, or leave --keep</source>
        <translation>nommez d’abord son compteur, ou omettez --keep</translation>
    </message>
    <message>
        <source>no running run has a meter with a source</source>
        <translation>aucun essai en cours n’a de compteur avec une source</translation>
    </message>
    <message>
        <source>name a run with --run, and its source with --kind</source>
        <translation>nommez un essai avec --run, et sa source avec --kind</translation>
    </message>
    <message>
        <source>%1: %2 at %3 (by %4): %5</source>
        <translation>%1&#xa0;: %2 à %3 (au plus tard %4)&#xa0;: %5</translation>
    </message>
    <message>
        <source>%1: %2 at %3: %4</source>
        <translation>%1&#xa0;: %2 à %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1: no longer read: %2</source>
        <translation>%1&#xa0;: n’est plus lu&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: reading %2</source>
        <translation>%1&#xa0;: lecture de %2</translation>
    </message>
    <message>
        <source>Ended. %1</source>
        <translation>Terminé. %1</translation>
    </message>
    <message>
        <source>Reading; interrupt (Ctrl+C) to end</source>
        <translation>Lecture en cours&#x202f;; interrompez (Ctrl+C) pour terminer</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1 essai %2</translation>
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
        <translation>%1 % à la jauge</translation>
    </message>
    <message>
        <source>%1 W by the unit</source>
        <translation>%1 W selon la station</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>connecté, rien n’est encore venu</translation>
    </message>
    <message>
        <source>nothing has come yet</source>
        <translation>rien n’est encore venu</translation>
    </message>
    <message>
        <source>%1, %2 s ago</source>
        <translation>%1, il y a %2 s</translation>
    </message>
    <message>
        <source>%1, %2 a second</source>
        <translation>%1, %2 par seconde</translation>
    </message>
    <message numerus="yes">
        <source>%n samples taken</source>
        <comment>%n sample taken</comment>
        <translation>
            <numerusform>%n échantillon repris</numerusform>
            <numerusform>%n échantillons repris</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 left out</source>
        <translation>%1, laissés de côté&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2 lost</source>
        <translation>%1, perdus&#xa0;: %2</translation>
    </message>
    <message>
        <source>the machine&apos;s clock has been set, samples go on by the steady one</source>
        <translation>l’horloge de la machine a été réglée, les échantillons se suivent d’après l’horloge stable</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>There are no runs yet. Add one with: ullage import LOGBOOK SHEET</source>
        <translation>Il n’y a encore aucun essai. Ajoutez-en un avec&#xa0;: ullage import LOGBOOK SHEET</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, run %2: %3</source>
        <translation>%1, essai %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>ended: %1</source>
        <translation>fin&#xa0;: %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>assignée %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>compteur %1</translation>
    </message>
    <message>
        <source>Assumed of the register</source>
        <translation>Supposé de l’index</translation>
    </message>
    <message>
        <source>%1 (about %2 may be missing)</source>
        <translation>%1 (il peut manquer environ %2)</translation>
    </message>
    <message>
        <source>Of the meter</source>
        <translation>Sur le compteur</translation>
    </message>
    <message>
        <source>Uncertainty of the delivered energy</source>
        <translation>Incertitude de l’énergie délivrée</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>corrélation</translation>
    </message>
    <message>
        <source>type</source>
        <translation>type</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>degrés de liberté</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>sensibilité</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>incertitude-type</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>95 % interval ±%1 Wh</source>
        <translation>intervalle à 95 % ±%1 Wh</translation>
    </message>
    <message>
        <source>95 % interval ±%1 Wh: %2</source>
        <translation>intervalle à 95 % ±%1 Wh&#xa0;: %2</translation>
    </message>
    <message>
        <source>Where the energy went</source>
        <translation>Où est allée l’énergie</translation>
    </message>
    <message>
        <source>Gauge: %1</source>
        <translation>Jauge&#xa0;: %1</translation>
    </message>
    <message>
        <source>[%1] %2</source>
        <translation>[%1] %2</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalles</translation>
    </message>
    <message>
        <source>%1: there is no copy</source>
        <translation>%1&#xa0;: il n’y a aucune copie</translation>
    </message>
    <message>
        <source>%1: it holds nothing yet, so no copy was made</source>
        <translation>%1&#xa0;: il ne contient encore rien, aucune copie n’a donc été faite</translation>
    </message>
    <message>
        <source>%1: copied to %2</source>
        <translation>%1&#xa0;: copié dans %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n older copies removed</source>
        <comment>%1, %n older copy removed</comment>
        <translation>
            <numerusform>%1, %n copie plus ancienne supprimée</numerusform>
            <numerusform>%1, %n copies plus anciennes supprimées</numerusform>
        </translation>
    </message>
    <message>
        <source>Charge: %1</source>
        <translation>Recharge&#xa0;: %1</translation>
    </message>
    <message>
        <source>the power began to fall at a gauge of %1 %</source>
        <translation>la puissance a commencé à baisser à une jauge de %1 %</translation>
    </message>
    <message>
        <source>Output: %1. %2</source>
        <translation>Sortie&#xa0;: %1. %2</translation>
    </message>
    <message>
        <source>trips %1, resets %2</source>
        <translation>déclenchements %1, réarmements %2</translation>
    </message>
    <message>
        <source>%1: not known: %2</source>
        <translation>%1&#xa0;: inconnu&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 (%3), %4 a day, %5 a month; %6</source>
        <translation>%1&#xa0;: %2 (%3), %4 par jour, %5 par mois&#x202f;; %6</translation>
    </message>
    <message>
        <source>%1 %2 a day, %3 %2 a month, %4</source>
        <translation>%1 %2 par jour, %3 %2 par mois, %4</translation>
    </message>
    <message>
        <source>run %1 put in %2, run %3 gave back %4, %5</source>
        <translation>l’essai %1 a mis %2, l’essai %3 a rendu %4, %5</translation>
    </message>
    <message>
        <source>What the unit takes for itself</source>
        <translation>Ce que la station prend pour elle-même</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>sortie active</translation>
    </message>
    <message>
        <source>output off</source>
        <translation>sortie coupée</translation>
    </message>
    <message>
        <source>`%1` is no number; write one such as 431 or 0.5</source>
        <translation>`%1` n’est pas un nombre&#x202f;; écrivez-en un comme 431 ou 0.5</translation>
    </message>
    <message>
        <source>`%1` is far beyond anything that is measured; the most is %2</source>
        <translation>`%1` dépasse de loin tout ce qui se mesure&#x202f;; le plus est %2</translation>
    </message>
    <message>
        <source>`%1` is no number above 0</source>
        <translation>`%1` n’est pas un nombre au-dessus de 0</translation>
    </message>
    <message>
        <source>`%1` is no number from 0 up</source>
        <translation>`%1` n’est pas un nombre à partir de 0</translation>
    </message>
    <message>
        <source>`%1` is no number from %2 to %3</source>
        <translation>`%1` n’est pas un nombre de %2 à %3</translation>
    </message>
    <message>
        <source>replace also a file that this program did not write as it is, an input of this call, or a logbook that nobody uses</source>
        <translation>remplace aussi un fichier que ce programme n’a pas écrit tel qu’il est, une entrée de cet appel, ou un carnet que personne n’utilise</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>check where it goes to</source>
        <translation>vérifiez où il va</translation>
    </message>
    <message>
        <source>the result could not be written</source>
        <translation>le résultat n’a pas pu être écrit</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>sortie standard</translation>
    </message>
    <message>
        <source>sheet of a workbook: its name, or its number from 1</source>
        <translation>feuille d’un classeur&#xa0;: son nom, ou son numéro à partir de 1</translation>
    </message>
    <message>
        <source>columns of a table, by number, letter or title: 1=time,B=gauge,Plug=register:kWh; roles are time, date, elapsed, gauge, register, load-power, display-power, mark, remark, run, unit, unused</source>
        <translation>colonnes d’un tableau, par numéro, lettre ou titre&#xa0;: 1=time,B=gauge,Plug=register:kWh&#x202f;; les rôles sont time, date, elapsed, gauge, register, load-power, display-power, mark, remark, run, unit, unused</translation>
    </message>
    <message>
        <source>day-first or month-first</source>
        <translation>day-first (jour d’abord) ou month-first (mois d’abord)</translation>
    </message>
    <message>
        <source>decimal sign: comma or point</source>
        <translation>signe décimal&#xa0;: comma (virgule) ou point</translation>
    </message>
    <message>
        <source>tab, semicolon, bar, comma or blanks</source>
        <translation>tab, semicolon, bar, comma ou blanks (tabulation, point-virgule, barre, virgule, espaces)</translation>
    </message>
    <message>
        <source>unit of a register that names none: Wh, kWh or J</source>
        <translation>unité d’un index qui n’en nomme pas&#xa0;: Wh, kWh ou J</translation>
    </message>
    <message>
        <source>unit of times that count from the start: h, min or s</source>
        <translation>unité des temps comptés depuis le début&#xa0;: h, min ou s</translation>
    </message>
    <message>
        <source>a gauge of 0.69 is a share (69 %) or percent</source>
        <translation>une jauge de 0.69 est une part (share, 69 %) ou un pourcentage (percent)</translation>
    </message>
    <message>
        <source>what h:mm means: clock (time of day) or elapsed</source>
        <translation>ce que veut dire h:mm&#xa0;: clock (heure du jour) ou elapsed (temps écoulé)</translation>
    </message>
    <message>
        <source>what begins anew behind an empty row: separate runs, or one</source>
        <translation>ce qui recommence après une ligne vide&#xa0;: des essais séparés (separate), ou un seul (one)</translation>
    </message>
    <message>
        <source>keep rows as the log of a meter, with the first, the last and those with a remark as readings, or all as readings; where not given a run of 1000 rows or more, at most two minutes apart, is a log</source>
        <translation>garder les lignes comme journal d’un compteur (log), avec la première, la dernière et celles qui ont une remarque comme relevés, ou toutes comme relevés (readings)&#x202f;; si non donné, un essai de 1000 lignes ou plus, à deux minutes d’écart au plus, est un journal</translation>
    </message>
    <message>
        <source>year of dates that name none</source>
        <translation>année des dates qui n’en nomment pas</translation>
    </message>
    <message>
        <source>when the run began, where its table names no date; again for each further run</source>
        <translation>quand l’essai a commencé, si son tableau ne nomme aucune date&#x202f;; une fois de plus pour chaque autre essai</translation>
    </message>
    <message>
        <source>time zone of the table; that of this machine where not given</source>
        <translation>fuseau horaire du tableau&#x202f;; celui de cette machine si non donné</translation>
    </message>
    <message>
        <source>name of the unit, where the table names none</source>
        <translation>nom de la station, si le tableau n’en nomme aucune</translation>
    </message>
    <message>
        <source>rated energy of a unit that the logbook does not know, Wh, or not-known; of several UNIT=WH for each</source>
        <translation>énergie assignée d’une station que le carnet ne connaît pas, Wh, ou not-known&#x202f;; pour plusieurs, UNIT=WH pour chacune</translation>
    </message>
    <message>
        <source>name of the meter, or not-known</source>
        <translation>nom du compteur, ou not-known</translation>
    </message>
    <message>
        <source>error limit of a meter that the logbook does not know, % of reading, or not-known</source>
        <translation>limite d’erreur d’un compteur que le carnet ne connaît pas, % de la valeur lue, ou not-known</translation>
    </message>
    <message>
        <source>name of the meter of the column second-register, or not-known</source>
        <translation>nom du compteur de la colonne second-register, ou not-known</translation>
    </message>
    <message>
        <source>its error limit where the logbook does not know it, or not-known</source>
        <translation>sa limite d’erreur si le carnet ne la connaît pas, ou not-known</translation>
    </message>
    <message>
        <source>how a run ended whose table does not say: cut-off, found-off, stopped, running or not-known</source>
        <translation>comment a fini un essai dont le tableau ne le dit pas&#xa0;: cut-off, found-off, stopped, running ou not-known</translation>
    </message>
    <message>
        <source>yes, no or not-known</source>
        <translation>yes, no ou not-known</translation>
    </message>
    <message>
        <source>drain, no-load-drain, charge or standby; drain where not given</source>
        <translation>drain, no-load-drain, charge ou standby&#x202f;; drain si non donné</translation>
    </message>
    <message>
        <source>the load, in your words</source>
        <translation>la charge, avec vos mots</translation>
    </message>
    <message>
        <source>say how a table is understood, import nothing</source>
        <translation>dit comment un tableau est compris, n’importe rien</translation>
    </message>
    <message>
        <source>run sheets, foreign tables of readings (CSV, XLSX, ODS, HTML), or folders of export-folder, each whole or not at all</source>
        <translation>fiches d’essai, tableaux de relevés étrangers (CSV, XLSX, ODS, HTML) ou dossiers de export-folder, chacun en entier ou pas du tout</translation>
    </message>
    <message>
        <source>log file: rows of text with a time and a register, a power or the gauge of the unit</source>
        <translation>fichier de journal&#xa0;: lignes de texte avec une heure et un index, une puissance ou la jauge de la station</translation>
    </message>
    <message>
        <source>number of the run</source>
        <translation>numéro de l’essai</translation>
    </message>
    <message>
        <source>meter that wrote the log; that of the run where not given; another than the run&apos;s is compared with it</source>
        <translation>compteur qui a écrit le journal&#x202f;; celui de l’essai si non donné&#x202f;; un autre que celui de l’essai est comparé avec lui</translation>
    </message>
    <message>
        <source>columns, counted from 1: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A of a meter; gauge=7,output=8:W of the unit itself</source>
        <translation>colonnes, comptées à partir de 1&#xa0;: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A d’un compteur&#x202f;; gauge=7,output=8:W de la station elle-même</translation>
    </message>
    <message>
        <source>day-first, month-first or year-first</source>
        <translation>day-first, month-first ou year-first (jour, mois ou année d’abord)</translation>
    </message>
    <message>
        <source>what h:mm:ss means: clock (time of day) or elapsed</source>
        <translation>ce que veut dire h:mm:ss&#xa0;: clock (heure du jour) ou elapsed (temps écoulé)</translation>
    </message>
    <message>
        <source>time zone of times without an offset; that of the run where not given</source>
        <translation>fuseau des heures sans décalage&#x202f;; celui de l’essai si non donné</translation>
    </message>
    <message>
        <source>when the log was started, for times that count from the start or name no date</source>
        <translation>quand le journal a été démarré, pour des temps comptés depuis le début ou qui ne nomment aucune date</translation>
    </message>
    <message>
        <source>added to the times of the log, [-]h:mm:ss: how far the meter&apos;s clock was behind</source>
        <translation>ajouté aux heures du journal, [-]h:mm:ss&#xa0;: de combien l’horloge du compteur retardait</translation>
    </message>
    <message>
        <source>the same in seconds, or `estimate`: from the hand readings of the run</source>
        <translation>la même chose en secondes, ou `estimate`&#xa0;: d’après les relevés manuels de l’essai</translation>
    </message>
    <message>
        <source>longest time between rows that is no gap, s</source>
        <translation>plus long temps entre deux lignes qui n’est pas un trou, s</translation>
    </message>
    <message>
        <source>say what would be taken, import nothing</source>
        <translation>dit ce qui serait repris, n’importe rien</translation>
    </message>
    <message>
        <source>another program is still writing it: go on taking what it gains, until interrupted</source>
        <translation>un autre programme l’écrit encore&#xa0;: continue de reprendre ce qui s’y ajoute, jusqu’à interruption</translation>
    </message>
    <message>
        <source>end following when the log has gained nothing for so long, s</source>
        <translation>cesse de suivre quand rien ne s’est ajouté au journal pendant ce temps, s</translation>
    </message>
    <message>
        <source>only runs of this unit</source>
        <translation>seulement les essais de cette station</translation>
    </message>
    <message>
        <source>only this run of the unit</source>
        <translation>seulement cet essai de la station</translation>
    </message>
    <message>
        <source>text or json</source>
        <translation>text ou json</translation>
    </message>
    <message>
        <source>price of a kWh, in the currency of the unit, for the cost of what a unit takes for itself</source>
        <translation>prix d’un kWh, dans la devise de la station, pour le coût de ce qu’une station prend pour elle-même</translation>
    </message>
    <message>
        <source>form of the table</source>
        <translation>format du tableau</translation>
    </message>
    <message>
        <source>file to write; its ending chooses the format where none is given</source>
        <translation>fichier à écrire&#x202f;; sa terminaison choisit le format si aucun n’est donné</translation>
    </message>
    <message>
        <source>Columns of the comparison:</source>
        <translation>Colonnes de la comparaison&#xa0;:</translation>
    </message>
    <message>
        <source>Without --columns a table for people has those for readers; csv, json and xlsx have all.</source>
        <translation>Sans --columns, un tableau pour des personnes a celles pour les lecteurs&#x202f;; csv, json et xlsx les ont toutes.</translation>
    </message>
    <message>
        <source>logbooks, run sheets (.csv) and folders of run sheets, one or several</source>
        <translation>carnets, fiches d’essai (.csv) et dossiers de fiches d’essai, un ou plusieurs</translation>
    </message>
    <message>
        <source>a row for each drain instead of one for each unit</source>
        <translation>une ligne par décharge au lieu d’une par station</translation>
    </message>
    <message>
        <source>common load, W: units are moved to it where their drains allow</source>
        <translation>charge commune, W&#xa0;: les stations y sont ramenées si leurs décharges le permettent</translation>
    </message>
    <message>
        <source>common load from a load list: its name in the logbook, or a file (.csv)</source>
        <translation>charge commune d’après une liste de charges&#xa0;: son nom dans le carnet, ou un fichier (.csv)</translation>
    </message>
    <message>
        <source>the models that units name, by their specimens</source>
        <translation>les modèles que nomment les stations, d’après leurs exemplaires</translation>
    </message>
    <message>
        <source>the differences between units: clearly different or too close to call</source>
        <translation>les écarts entre stations&#xa0;: nettement différentes ou impossibles à départager</translation>
    </message>
    <message>
        <source>figure that is compared</source>
        <translation>chiffre comparé</translation>
    </message>
    <message>
        <source>keys of the columns wanted, in order; or readers, spreadsheet, or a set that the logbook keeps</source>
        <translation>clés des colonnes voulues, dans l’ordre&#x202f;; ou readers, spreadsheet, ou un jeu que garde le carnet</translation>
    </message>
    <message>
        <source>only units of this maker</source>
        <translation>seulement les stations de ce fabricant</translation>
    </message>
    <message>
        <source>only units with this tag; named several times: with every one of them</source>
        <translation>seulement les stations qui ont cette étiquette&#x202f;; nommée plusieurs fois&#xa0;: qui les ont toutes</translation>
    </message>
    <message>
        <source>only units rated at this or more, Wh</source>
        <translation>seulement les stations d’énergie assignée égale ou supérieure, Wh</translation>
    </message>
    <message>
        <source>only units rated at this or less, Wh</source>
        <translation>seulement les stations d’énergie assignée égale ou inférieure, Wh</translation>
    </message>
    <message>
        <source>load lists (.csv), each whole or not at all</source>
        <translation>listes de charges (.csv), chacune en entier ou pas du tout</translation>
    </message>
    <message>
        <source>load list (.csv)</source>
        <translation>liste de charges (.csv)</translation>
    </message>
    <message>
        <source>only this list of the logbook, with its appliances</source>
        <translation>seulement cette liste du carnet, avec ses appareils</translation>
    </message>
    <message>
        <source>the list as a file that import-loads takes</source>
        <translation>la liste comme fichier que import-loads accepte</translation>
    </message>
    <message>
        <source>a load list: its name in the logbook, or a file (.csv)</source>
        <translation>une liste de charges&#xa0;: son nom dans le carnet, ou un fichier (.csv)</translation>
    </message>
    <message>
        <source>only this unit</source>
        <translation>seulement cette station</translation>
    </message>
    <message>
        <source>one table instead of all: units, months, rules or course</source>
        <translation>un tableau au lieu de tous&#xa0;: units, months, rules ou course (stations, mois, règles ou marche)</translation>
    </message>
    <message>
        <source>the intervals between readings instead of the readings</source>
        <translation>les intervalles entre relevés au lieu des relevés</translation>
    </message>
    <message>
        <source>the steps of the gauge by its log, each timed to the sample, instead of the readings</source>
        <translation>les pas de la jauge d’après son journal, chacun daté à l’échantillon près, au lieu des relevés</translation>
    </message>
    <message>
        <source>file to write</source>
        <translation>fichier à écrire</translation>
    </message>
    <message>
        <source>folder to make</source>
        <translation>dossier à créer</translation>
    </message>
    <message>
        <source>logbook that is added to</source>
        <translation>carnet qui est complété</translation>
    </message>
    <message>
        <source>logbook that is only read</source>
        <translation>carnet qui est seulement lu</translation>
    </message>
    <message>
        <source>differences that are taken from the other logbook: `all`, `newer` (changed there alone) or ids that --dry-run shows; the rest stays as it is in LOGBOOK</source>
        <translation>différences prises de l’autre carnet&#xa0;: `all`, `newer` (modifiées là-bas seulement) ou les ids que montre --dry-run&#x202f;; le reste demeure comme dans LOGBOOK</translation>
    </message>
    <message>
        <source>say what would come of it, change nothing</source>
        <translation>dit ce qui en résulterait, ne change rien</translation>
    </message>
    <message>
        <source>folder of the copies; beside the logbook where not given</source>
        <translation>dossier des copies&#x202f;; à côté du carnet si non donné</translation>
    </message>
    <message>
        <source>older copies of this logbook are removed, but for the newest; 30 where not given</source>
        <translation>les copies plus anciennes de ce carnet sont supprimées, sauf la plus récente&#x202f;; 30 si non donné</translation>
    </message>
    <message>
        <source>list the copies that there are, make none</source>
        <translation>énumère les copies présentes, n’en fait aucune</translation>
    </message>
    <message>
        <source>PV sheet: a file of lines `key: value`; the keys are the options below with _ for -</source>
        <translation>fiche PV&#xa0;: un fichier de lignes `key: value`&#x202f;; les clés sont les options ci-dessous avec _ au lieu de -</translation>
    </message>
    <message>
        <source>logbook that holds the unit, or the sheet</source>
        <translation>carnet qui contient la station, ou la fiche</translation>
    </message>
    <message>
        <source>a PV sheet of the logbook instead of a file</source>
        <translation>une fiche PV du carnet au lieu d’un fichier</translation>
    </message>
    <message>
        <source>Bring run sheets and foreign tables of readings into a logbook, made when missing</source>
        <translation>Reprend des fiches d’essai et des tableaux de relevés étrangers dans un carnet, créé s’il n’existe pas</translation>
    </message>
    <message>
        <source>Bring the log of a meter into a run; how it is read is detected and said</source>
        <translation>Reprend le journal d’un compteur dans un essai&#x202f;; la façon de le lire est détectée et dite</translation>
    </message>
    <message>
        <source>Say what each run shows, and when one still running should end (as of its last reading)</source>
        <translation>Dit ce que montre chaque essai, et quand devrait finir celui qui est encore en cours (d’après son dernier relevé)</translation>
    </message>
    <message>
        <source>Compare the units of one or several logbooks, as tested or at one load</source>
        <translation>Compare les stations d’un ou plusieurs carnets, comme testé ou à une même charge</translation>
    </message>
    <message>
        <source>Write the readings of one run or of all runs as a table</source>
        <translation>Écrit les relevés d’un essai ou de tous les essais sous forme de tableau</translation>
    </message>
    <message>
        <source>Write one run as a run sheet</source>
        <translation>Écrit un essai comme fiche d’essai</translation>
    </message>
    <message>
        <source>Write a whole logbook as a folder: run sheets, photos, logs, lists</source>
        <translation>Écrit un carnet entier comme dossier&#xa0;: fiches d’essai, photos, journaux, listes</translation>
    </message>
    <message>
        <source>Bring what another logbook has into a logbook, and say what differs</source>
        <translation>Reprend dans un carnet ce qu’a un autre carnet, et dit ce qui diffère</translation>
    </message>
    <message>
        <source>Make the copy of the day of a logbook, or list its copies</source>
        <translation>Fait la copie du jour d’un carnet, ou énumère ses copies</translation>
    </message>
    <message>
        <source>Check a PV string against the PV input of a unit: cold, hot, current, power</source>
        <translation>Contrôle une chaîne PV face à l’entrée PV d’une station&#xa0;: froid, chaud, courant, puissance</translation>
    </message>
    <message>
        <source>Bring load lists into a logbook, made when missing</source>
        <translation>Reprend des listes de charges dans un carnet, créé s’il n’existe pas</translation>
    </message>
    <message>
        <source>Say what load lists take: of one file, or all of a logbook</source>
        <translation>Dit ce que prennent des listes de charges&#xa0;: d’un fichier, ou toutes celles d’un carnet</translation>
    </message>
    <message>
        <source>Say how long each unit carries a load list, how many are needed, and which PV array</source>
        <translation>Dit combien de temps chaque station alimente une liste de charges, combien il en faut, et quel champ PV</translation>
    </message>
    <message>
        <source>run sheets hold no load lists</source>
        <translation>les fiches d’essai ne contiennent pas de listes de charges</translation>
    </message>
    <message>
        <source>name a logbook that has it, or a file of a load list (.csv)</source>
        <translation>nommez un carnet qui l’a, ou un fichier de liste de charges (.csv)</translation>
    </message>
    <message numerus="yes">
        <source>none of %n units passes the filter</source>
        <comment>none of %n unit passes the filter</comment>
        <translation>
            <numerusform>aucune station sur %n ne passe le filtre</numerusform>
            <numerusform>aucune des %n stations ne passe le filtre</numerusform>
        </translation>
    </message>
    <message>
        <source>leave one of these options out, or correct it</source>
        <translation>omettez l’une de ces options, ou corrigez-la</translation>
    </message>
    <message>
        <source>no unit is rated above the least and below the most</source>
        <translation>aucune station n’a une énergie assignée à la fois au-dessus du minimum et au-dessous du maximum</translation>
    </message>
    <message>
        <source>exchange the two</source>
        <translation>échangez les deux</translation>
    </message>
    <message>
        <source>the load list takes nothing</source>
        <translation>la liste de charges ne prend rien</translation>
    </message>
    <message>
        <source>give it appliances, or name a load with --at-load</source>
        <translation>donnez-lui des appareils, ou nommez une charge avec --at-load</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n rows left out</source>
        <comment>%1, %n row left out</comment>
        <translation>
            <numerusform>%1, %n ligne laissée de côté</numerusform>
            <numerusform>%1, %n lignes laissées de côté</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n samples to %2</source>
        <comment>%1: %n sample to %2</comment>
        <translation>
            <numerusform>%1&#xa0;: %n échantillon jusqu’à %2</numerusform>
            <numerusform>%1&#xa0;: %n échantillons jusqu’à %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Following the log; interrupt (Ctrl+C) to end</source>
        <translation>Le journal est suivi&#x202f;; interrompez (Ctrl+C) pour terminer</translation>
    </message>
    <message>
        <source>The log was begun anew; it is read from its beginning</source>
        <translation>Le journal a été recommencé&#x202f;; il est lu depuis son début</translation>
    </message>
    <message>
        <source>The log is not there; waiting for it</source>
        <translation>Le journal n’est pas là&#x202f;; il est attendu</translation>
    </message>
    <message>
        <source>The log is there again</source>
        <translation>Le journal est de nouveau là</translation>
    </message>
    <message numerus="yes">
        <source>The run has this log already; %n new samples added</source>
        <comment>The run has this log already; %n new sample added</comment>
        <translation>
            <numerusform>L’essai a déjà ce journal&#x202f;; %n nouvel échantillon ajouté</numerusform>
            <numerusform>L’essai a déjà ce journal&#x202f;; %n nouveaux échantillons ajoutés</numerusform>
        </translation>
    </message>
    <message>
        <source>Forecast as of %1</source>
        <translation>Prévision en date du %1</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prévision</translation>
    </message>
    <message>
        <source>cut-off: %1, in the middle %2; %3</source>
        <translation>coupure&#xa0;: %1, au milieu %2&#x202f;; %3</translation>
    </message>
    <message>
        <source>cut-off: not known: %1</source>
        <translation>coupure&#xa0;: inconnue&#xa0;: %1</translation>
    </message>
    <message>
        <source>gauge at %1 %: %2</source>
        <translation>jauge à %1 %&#xa0;: %2</translation>
    </message>
    <message>
        <source>next gauge step: not known: %1</source>
        <translation>prochain pas de la jauge&#xa0;: inconnu&#xa0;: %1</translation>
    </message>
    <message>
        <source>Two accounts</source>
        <translation>Deux versions des faits</translation>
    </message>
    <message>
        <source>%1: already in the logbook as run %2 of %3, left out</source>
        <translation>%1&#xa0;: déjà dans le carnet comme essai %2 de %3, laissé de côté</translation>
    </message>
    <message numerus="yes">
        <source>%1: run %2 of %3, %4 with %n readings</source>
        <comment>%1: run %2 of %3, %4 with %n reading</comment>
        <translation>
            <numerusform>%1&#xa0;: essai %2 de %3, %4 avec %n relevé</numerusform>
            <numerusform>%1&#xa0;: essai %2 de %3, %4 avec %n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>the folder holds no run sheet</source>
        <translation>le dossier ne contient aucune fiche d’essai</translation>
    </message>
    <message>
        <source>name a folder with .csv run sheets</source>
        <translation>nommez un dossier avec des fiches d’essai .csv</translation>
    </message>
    <message>
        <source>`%1` names no column and role</source>
        <translation>`%1` ne nomme pas une colonne et un rôle</translation>
    </message>
    <message>
        <source>write it like %1; the roles are in the help of the command</source>
        <translation>écrivez-le comme %1&#x202f;; les rôles figurent dans l’aide de la commande</translation>
    </message>
    <message>
        <source>the table has no column `%1`</source>
        <translation>le tableau n’a pas de colonne `%1`</translation>
    </message>
    <message>
        <source>name one by its number from 1 to %1, its letter or its title</source>
        <translation>nommez-en une par son numéro de 1 à %1, sa lettre ou son titre</translation>
    </message>
    <message>
        <source>`%1` is no unit</source>
        <translation>`%1` n’est pas une unité</translation>
    </message>
    <message>
        <source>use Wh, kWh, W, kW, %, h, min or s</source>
        <translation>utilisez Wh, kWh, W, kW, %, h, min ou s</translation>
    </message>
    <message>
        <source>there is no sheet `%1`</source>
        <translation>il n’y a pas de feuille `%1`</translation>
    </message>
    <message>
        <source>use --sheet with one of %1</source>
        <translation>utilisez --sheet avec l’une de&#xa0;: %1</translation>
    </message>
    <message>
        <source>there are several sheets: %1</source>
        <translation>il y a plusieurs feuilles&#xa0;: %1</translation>
    </message>
    <message>
        <source>name one with --sheet; nothing was imported</source>
        <translation>nommez-en une avec --sheet&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>give a number, or not-known</source>
        <translation>donnez un nombre, ou not-known</translation>
    </message>
    <message>
        <source>what the table does not say is asked once</source>
        <translation>ce que le tableau ne dit pas est demandé une fois</translation>
    </message>
    <message>
        <source>answer with %1; nothing was imported</source>
        <translation>répondez avec %1&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>there is no time zone `%1`</source>
        <translation>il n’y a pas de fuseau horaire `%1`</translation>
    </message>
    <message>
        <source>name one such as %1</source>
        <translation>nommez-en un comme %1</translation>
    </message>
    <message>
        <source>correct the table, or map its columns with --map; nothing was imported</source>
        <translation>corrigez le tableau, ou désignez ses colonnes avec --map&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>%1: nothing was imported (--preview)</source>
        <translation>%1&#xa0;: rien n’a été importé (--preview)</translation>
    </message>
    <message>
        <source>Run %1 of the table is already in the logbook as run %2 of %3, left out</source>
        <translation>L’essai %1 du tableau est déjà dans le carnet comme essai %2 de %3, laissé de côté</translation>
    </message>
    <message>
        <source>%1: every run of it is already in the logbook, nothing was imported</source>
        <translation>%1&#xa0;: chacun de ses essais est déjà dans le carnet, rien n’a été importé</translation>
    </message>
    <message numerus="yes">
        <source>run %1 of %2, %3 with %n readings</source>
        <comment>run %1 of %2, %3 with %n reading</comment>
        <translation>
            <numerusform>essai %1 de %2, %3 avec %n relevé</numerusform>
            <numerusform>essai %1 de %2, %3 avec %n relevés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and a log of %n rows</source>
        <comment>%1 and a log of %n row</comment>
        <translation>
            <numerusform>%1 et un journal de %n ligne</numerusform>
            <numerusform>%1 et un journal de %n lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` names no column</source>
        <translation>`%1` ne nomme aucune colonne</translation>
    </message>
    <message>
        <source>write it like %1, columns counted from 1</source>
        <translation>écrivez-le comme %1, colonnes comptées à partir de 1</translation>
    </message>
    <message>
        <source>`%1` is no time</source>
        <translation>`%1` n’est pas une heure</translation>
    </message>
    <message>
        <source>write it like 00:00:12 or -00:01:30.5: hours, minutes, seconds</source>
        <translation>écrivez-la comme 00:00:12 ou -00:01:30.5&#xa0;: heures, minutes, secondes</translation>
    </message>
    <message>
        <source>`%1` is no offset</source>
        <translation>`%1` n’est pas un décalage</translation>
    </message>
    <message>
        <source>give seconds such as 12 or -90.5, or `estimate`</source>
        <translation>donnez des secondes comme 12 ou -90.5, ou `estimate`</translation>
    </message>
    <message>
        <source>there is no meter named `%1`</source>
        <translation>il n’y a pas de compteur du nom de `%1`</translation>
    </message>
    <message>
        <source>add the meter to the logbook first</source>
        <translation>ajoutez d’abord le compteur au carnet</translation>
    </message>
    <message>
        <source>use one of %1</source>
        <translation>utilisez l’un de&#xa0;: %1</translation>
    </message>
    <message>
        <source>the unit&apos;s gauge</source>
        <translation>la jauge de la station</translation>
    </message>
    <message>
        <source>the unit&apos;s output power</source>
        <translation>la puissance de sortie de la station</translation>
    </message>
    <message>
        <source>no meter named</source>
        <translation>aucun compteur nommé</translation>
    </message>
    <message>
        <source>and the unit&apos;s gauge</source>
        <translation>et la jauge de la station</translation>
    </message>
    <message>
        <source>beside %1 of the run</source>
        <translation>à côté de %1 de l’essai</translation>
    </message>
    <message>
        <source>Note: the log is taken to begin with the first reading of the run, %1; --start changes that</source>
        <translation>Note&#xa0;: le journal est supposé commencer au premier relevé de l’essai, %1&#x202f;; --start change cela</translation>
    </message>
    <message>
        <source>Note: the times of the log are taken for local times of %1; --zone changes that</source>
        <translation>Note&#xa0;: les heures du journal sont prises pour des heures locales de %1&#x202f;; --zone change cela</translation>
    </message>
    <message>
        <source>Nothing was imported (--preview)</source>
        <translation>Rien n’a été importé (--preview)</translation>
    </message>
    <message numerus="yes">
        <source>%n samples from %1 to %2</source>
        <comment>%n sample from %1 to %2</comment>
        <translation>
            <numerusform>%n échantillon de %1 à %2</numerusform>
            <numerusform>%n échantillons de %1 à %2</numerusform>
        </translation>
    </message>
    <message>
        <source>into run %1 of %2</source>
        <translation>dans l’essai %1 de %2</translation>
    </message>
    <message>
        <source>the samples are in the logbook</source>
        <translation>les échantillons sont dans le carnet</translation>
    </message>
    <message>
        <source>The logbook has all that the other has already</source>
        <translation>Le carnet a déjà tout ce qu’a l’autre</translation>
    </message>
    <message>
        <source>This is what joining would do; nothing was changed</source>
        <translation>Voilà ce que ferait la fusion&#x202f;; rien n’a été changé</translation>
    </message>
    <message>
        <source>Joined: %1</source>
        <translation>Fusionné&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>only a logbook holds load lists</source>
        <translation>seul un carnet contient des listes de charges</translation>
    </message>
    <message>
        <source>name a logbook, or the file of a load list with --load-list</source>
        <translation>nommez un carnet, ou le fichier d’une liste de charges avec --load-list</translation>
    </message>
    <message>
        <source>there is no load list `%1`</source>
        <translation>il n’y a pas de liste de charges `%1`</translation>
    </message>
    <message>
        <source>bring one in with ullage import-loads</source>
        <translation>reprenez-en une avec ullage import-loads</translation>
    </message>
    <message>
        <source>%1: load list %2 is in the logbook already, left out</source>
        <translation>%1&#xa0;: la liste de charges %2 est déjà dans le carnet, laissée de côté</translation>
    </message>
    <message numerus="yes">
        <source>%1: load list %2 with %n lines</source>
        <comment>%1: load list %2 with %n line</comment>
        <translation>
            <numerusform>%1&#xa0;: liste de charges %2 avec %n ligne</numerusform>
            <numerusform>%1&#xa0;: liste de charges %2 avec %n lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>name a load list (.csv) or a logbook, one of the two</source>
        <translation>nommez une liste de charges (.csv) ou un carnet, l’un des deux</translation>
    </message>
    <message>
        <source>see ullage loads --help</source>
        <translation>voyez ullage loads --help</translation>
    </message>
    <message>
        <source>(required)</source>
        <translation>(obligatoire)</translation>
    </message>
    <message>
        <source>User commands</source>
        <translation>Commandes de l’utilisateur</translation>
    </message>
    <message>
        <source>NAME</source>
        <translation>NOM</translation>
    </message>
    <message>
        <source>say what a battery storage unit delivers, against what its label and its gauge say</source>
        <translation>dire ce que délivre une station d’énergie à batterie, face à ce que disent sa plaque et sa jauge</translation>
    </message>
    <message>
        <source>SYNOPSIS</source>
        <translation>SYNOPSIS</translation>
    </message>
    <message>
        <source>DESCRIPTION</source>
        <translation>DESCRIPTION</translation>
    </message>
    <message>
        <source>A tester drains a battery storage unit through real loads for many hours and notes what its own gauge and an energy meter say. Ullage records these readings, computes the delivered energy and the usable fraction with their uncertainty, finds faults of the gauge, and compares units.</source>
        <translation>Un testeur décharge une station d’énergie à batterie dans de vraies charges pendant de longues heures et note ce que disent sa propre jauge et un compteur d’énergie. Ullage enregistre ces relevés, calcule l’énergie délivrée et la fraction utile avec leur incertitude, trouve les défauts de la jauge et compare les stations.</translation>
    </message>
    <message>
        <source>Without a command it opens its window, on the logbook that was open last or on %1. The commands do the same job in text, without a display. Results go to the standard output, problems to the standard error, one line each.</source>
        <translation>Sans commande, il ouvre sa fenêtre, sur le dernier carnet ouvert ou sur %1. Les commandes font le même travail en texte, sans écran. Les résultats vont à la sortie standard, les problèmes à l’erreur standard, une ligne chacun.</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <translation>OPTIONS</translation>
    </message>
    <message>
        <source>Say what there is; behind a command what that takes.</source>
        <translation>Dit ce qu’il y a&#x202f;; après une commande, ce que celle-ci accepte.</translation>
    </message>
    <message>
        <source>Say the version.</source>
        <translation>Dit la version.</translation>
    </message>
    <message>
        <source>Write this page.</source>
        <translation>Écrit cette page.</translation>
    </message>
    <message>
        <source>Write the completion of commands and options for bash.</source>
        <translation>Écrit ce qui complète les commandes et les options dans bash.</translation>
    </message>
    <message>
        <source>COMMANDS</source>
        <translation>COMMANDES</translation>
    </message>
    <message>
        <source>FILES</source>
        <translation>FICHIERS</translation>
    </message>
    <message>
        <source>A logbook, an SQLite file with all units, meters, runs, readings, photos and logs. Copy this one file to keep it.</source>
        <translation>Un carnet, un fichier SQLite avec stations, compteurs, essais, relevés, photos et journaux. Copiez ce seul fichier pour le conserver.</translation>
    </message>
    <message>
        <source>Settings of the window.</source>
        <translation>Réglages de la fenêtre.</translation>
    </message>
    <message>
        <source>ENVIRONMENT</source>
        <translation>ENVIRONNEMENT</translation>
    </message>
    <message>
        <source>The password of a live meter for %1, in place of asking.</source>
        <translation>Le mot de passe d’un compteur lu en direct pour %1, au lieu de le demander.</translation>
    </message>
    <message>
        <source>EXIT STATUS</source>
        <translation>CODE DE SORTIE</translation>
    </message>
    <message>
        <source>It was done.</source>
        <translation>C’est fait.</translation>
    </message>
    <message>
        <source>Bad input, or a result that could not be written.</source>
        <translation>Mauvaise entrée, ou un résultat qui n’a pas pu être écrit.</translation>
    </message>
    <message>
        <source>Wrong usage.</source>
        <translation>Mauvais appel.</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>PRUDENCE</translation>
    </message>
    <message>
        <source>Mains voltage and charged batteries can kill and burn. Results of this program are no safety certification. Local codes and licensed practice come first.</source>
        <translation>La tension du secteur et les batteries chargées peuvent tuer et brûler. Les résultats de ce programme ne sont pas une certification de sécurité. Les règles locales et les personnes habilitées passent d’abord.</translation>
    </message>
    <message>
        <source>there is no PV sheet named `%1`</source>
        <translation>il n’y a pas de fiche PV du nom de `%1`</translation>
    </message>
    <message>
        <source>see the PV input page for their names</source>
        <translation>voyez leurs noms sur la page Entrée PV</translation>
    </message>
    <message>
        <source>there is no unit named `%1` in the logbook</source>
        <translation>il n’y a pas de station du nom de `%1` dans le carnet</translation>
    </message>
    <message>
        <source>use the name of one of its units</source>
        <translation>utilisez le nom de l’une de ses stations</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>grandeur</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>nature</translation>
    </message>
    <message>
        <source>A subcommand is required</source>
        <translation>Une sous-commande est nécessaire</translation>
    </message>
    <message>
        <source>%1 is required</source>
        <translation>%1 est nécessaire</translation>
    </message>
    <message>
        <source>The following argument was not expected: %1</source>
        <translation>L’argument suivant n’était pas attendu&#xa0;: %1</translation>
    </message>
    <message>
        <source>The following arguments were not expected: %1</source>
        <translation>Les arguments suivants n’étaient pas attendus&#xa0;: %1</translation>
    </message>
    <message>
        <source>Could not convert: %1</source>
        <translation>Conversion impossible&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 excludes %2</source>
        <translation>%1 exclut %2</translation>
    </message>
    <message>
        <source>%1 requires %2</source>
        <translation>%1 nécessite %2</translation>
    </message>
    <message>
        <source>%1 not in %2</source>
        <translation>%1 n’est pas dans %2</translation>
    </message>
    <message>
        <source>%1: %2 required %3 missing</source>
        <translation>%1&#xa0;: %2 nécessaire, %3 manque</translation>
    </message>
    <message>
        <source>Usage</source>
        <translation>Usage</translation>
    </message>
    <message>
        <source>Positionals</source>
        <translation>Arguments</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <translation>OBLIGATOIRE</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Nécessite</translation>
    </message>
    <message>
        <source>Excludes</source>
        <translation>Exclut</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Options</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Affiche cette aide et se termine</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Affiche la version du programme et se termine</translation>
    </message>
    <message>
        <source>Ullage: what a storage unit delivers, against what its label and its gauge say</source>
        <translation>Ullage&#xa0;: ce que délivre une station d’énergie, face à ce que disent sa plaque et sa jauge</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <translation>Sous-commandes</translation>
    </message>
    <message>
        <source>the folder cannot be read: %1</source>
        <translation>le dossier ne peut être lu&#xa0;: %1</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>vérifiez ses droits d’accès</translation>
    </message>
    <message>
        <source>name a logbook or a folder with .csv run sheets</source>
        <translation>nommez un carnet ou un dossier avec des fiches d’essai .csv</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et encore %2</translation>
    </message>
    <message>
        <source>%1: checked from end to end, as it comes from elsewhere or was not closed properly; that took %2 s</source>
        <translation>%1&#xa0;: vérifié de bout en bout, car il vient d’ailleurs ou n’a pas été fermé correctement&#x202f;; cela a pris %2 s</translation>
    </message>
    <message>
        <source>%1: beside other sources only its run sheets count, not its logs; `ullage import` makes it a logbook again</source>
        <translation>%1&#xa0;: à côté d’autres sources, seules ses fiches d’essai comptent, non ses journaux&#x202f;; `ullage import` en refait un carnet</translation>
    </message>
    <message>
        <source>%1 states another method than %2, by which all are compared</source>
        <translation>%1 indique une autre méthode que %2, d’après laquelle tout est comparé</translation>
    </message>
    <message>
        <source>there is no run of a unit named `%1`</source>
        <translation>il n’y a pas d’essai d’une station du nom de `%1`</translation>
    </message>
    <message>
        <source>the logbook has no runs yet</source>
        <translation>le carnet n’a encore aucun essai</translation>
    </message>
    <message>
        <source>several units have runs</source>
        <translation>plusieurs stations ont des essais</translation>
    </message>
    <message>
        <source>add --unit with one of %1</source>
        <translation>ajoutez --unit avec l’une de&#xa0;: %1</translation>
    </message>
    <message>
        <source>there is no run %1</source>
        <translation>il n’y a pas d’essai %1</translation>
    </message>
    <message>
        <source>no month&apos;s sun is stated</source>
        <translation>le soleil d’aucun mois n’est précisé</translation>
    </message>
    <message>
        <source>name twelve figures, January first</source>
        <translation>nommez douze chiffres, janvier d’abord</translation>
    </message>
    <message>
        <source>there is no unit named `%1`</source>
        <translation>il n’y a pas de station du nom de `%1`</translation>
    </message>
    <message>
        <source>days to be carried without sun</source>
        <translation>jours à tenir sans soleil</translation>
    </message>
    <message>
        <source>peak-sun hours a day, of the worst month that counts</source>
        <translation>heures de plein soleil par jour, du pire mois qui compte</translation>
    </message>
    <message>
        <source>what is left of the array&apos;s label at the battery, 0 to 1</source>
        <translation>ce qui reste, à la batterie, de la plaque du champ PV, 0 à 1</translation>
    </message>
    <message>
        <source>array energy over daily load that the rule asks for, 1 or more</source>
        <translation>énergie du champ PV sur besoin par jour que demande la règle, 1 ou plus</translation>
    </message>
    <message>
        <source>PV array that is there, W; that of the rule where not given</source>
        <translation>champ PV présent, W&#x202f;; celui de la règle si non donné</translation>
    </message>
    <message>
        <source>peak-sun hours a day of the twelve months, January first, with commas</source>
        <translation>heures de plein soleil par jour des douze mois, janvier d’abord, avec des virgules</translation>
    </message>
    <message>
        <source>units side by side in the course of the charge</source>
        <translation>stations côte à côte dans la marche de la charge restante</translation>
    </message>
    <message>
        <source>share of the rated energy expected of untested units, lower end</source>
        <translation>part de l’énergie assignée attendue des stations non testées, borne inférieure</translation>
    </message>
    <message>
        <source>the same, upper end</source>
        <translation>la même chose, borne supérieure</translation>
    </message>
    <message>
        <source>of the battery rule, 0 to 1</source>
        <translation>de la règle de la batterie, 0 à 1</translation>
    </message>
    <message>
        <source>deepest discharge of the battery rule, 0 to 1</source>
        <translation>décharge maximale de la règle de la batterie, 0 à 1</translation>
    </message>
    <message>
        <source>share of the capacity left at the end of life, 0 to 1</source>
        <translation>part de la capacité restante en fin de vie, 0 à 1</translation>
    </message>
    <message>
        <source>of the battery rule, 1 or more</source>
        <translation>de la règle de la batterie, 1 ou plus</translation>
    </message>
    <message>
        <source>of the battery rule, 1 to 2</source>
        <translation>de la règle de la batterie, 1 à 2</translation>
    </message>
    <message>
        <source>`%1` is the ending of no table</source>
        <translation>`%1` n’est la terminaison d’aucun tableau</translation>
    </message>
    <message>
        <source>use .txt, .csv, .md, .html, .xlsx, .json or .tex, or name the --format</source>
        <translation>utilisez .txt, .csv, .md, .html, .xlsx, .json ou .tex, ou nommez le --format</translation>
    </message>
    <message>
        <source>xlsx is no text for a terminal</source>
        <translation>xlsx n’est pas un texte pour un terminal</translation>
    </message>
    <message>
        <source>name a file with --output</source>
        <translation>nommez un fichier avec --output</translation>
    </message>
    <message>
        <source>sheet %1</source>
        <translation>feuille %1</translation>
    </message>
    <message>
        <source>head in row %1</source>
        <translation>en-tête à la ligne %1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Lu comme&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>colonne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>column %1 `%2`: %3</source>
        <translation>colonne %1 `%2`&#xa0;: %3</translation>
    </message>
    <message>
        <source>rows %1 to %2</source>
        <translation>lignes %1 à %2</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>gauge %1 to %2 %</source>
        <translation>jauge %1 à %2 %</translation>
    </message>
    <message>
        <source>register %1 to %2 Wh</source>
        <translation>index %1 à %2 Wh</translation>
    </message>
    <message>
        <source>cut-off noted</source>
        <translation>coupure notée</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Essai %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Run %1 `%2`: %3</source>
        <translation>Essai %1 `%2`&#xa0;: %3</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Note&#xa0;: %1</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Ouvert&#xa0;: %1</translation>
    </message>
    <message>
        <source>Open: %1 (%2?)</source>
        <translation>Ouvert&#xa0;: %1 (%2&#x202f;?)</translation>
    </message>
    <message>
        <source>row %1 taken in part: %2</source>
        <translation>ligne %1 reprise en partie&#xa0;: %2</translation>
    </message>
    <message>
        <source>row %1 left out: %2</source>
        <translation>ligne %1 laissée de côté&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>and %n more rows</source>
        <comment>and %n more rows</comment>
        <translation>
            <numerusform>et %n autre ligne</numerusform>
            <numerusform>et %n autres lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 % gauge</source>
        <translation>jauge %1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n rows: %1 taken, %2 left out</source>
        <comment>%n row: %1 taken, %2 left out</comment>
        <translation>
            <numerusform>%n ligne&#xa0;: %1 reprises, %2 laissées de côté</numerusform>
            <numerusform>%n lignes&#xa0;: %1 reprises, %2 laissées de côté</numerusform>
        </translation>
    </message>
    <message>
        <source>usually %1 s apart</source>
        <translation>d’ordinaire à %1 s d’écart</translation>
    </message>
    <message>
        <source>%1 left out: %2</source>
        <translation>laissé de côté, %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 taken with a doubt: %2</source>
        <translation>repris avec un doute, %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>ligne %1&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps longer than %1 s</source>
        <comment>%n gap longer than %1 s</comment>
        <translation>
            <numerusform>%n trou de plus de %1 s</numerusform>
            <numerusform>%n trous de plus de %1 s</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>Load by the log</source>
        <translation>Charge d’après le journal</translation>
    </message>
    <message>
        <source>mean %1 W, peak %2 W over %3; %4 Wh a day</source>
        <translation>moyenne %1 W, crête %2 W sur %3&#x202f;; %4 Wh par jour</translation>
    </message>
    <message>
        <source>on %1 W, off %2 W; on for %3 % of the time, %4 starts an hour</source>
        <translation>en marche %1 W, à l’arrêt %2 W&#x202f;; en marche %3 % du temps, %4 démarrages par heure</translation>
    </message>
    <message>
        <source>power integrated: %1 Wh; its square: %2 W²h</source>
        <translation>puissance intégrée&#xa0;: %1 Wh&#x202f;; son carré&#xa0;: %2 W²h</translation>
    </message>
    <message>
        <source>register of the same times: %1 Wh; integrated power is %2 % of it</source>
        <translation>index aux mêmes heures&#xa0;: %1 Wh&#x202f;; la puissance intégrée en fait %2 %</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps (%1) left out, in which at most %2 Wh may have flowed</source>
        <comment>%n gap (%1) left out, in which at most %2 Wh may have flowed</comment>
        <translation>
            <numerusform>%n trou (%1) laissé de côté, dans lequel au plus %2 Wh ont pu passer</numerusform>
            <numerusform>%n trous (%1) laissés de côté, dans lesquels au plus %2 Wh ont pu passer</numerusform>
        </translation>
    </message>
    <message>
        <source>All drains of %1 together</source>
        <translation>Toutes les décharges de %1 ensemble</translation>
    </message>
    <message>
        <source>Drains used</source>
        <translation>Décharges utilisées</translation>
    </message>
    <message>
        <source>run</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>décharge</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>charge moyenne</translation>
    </message>
    <message>
        <source>time</source>
        <translation>durée</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>délivré</translation>
    </message>
    <message>
        <source>beyond the fit</source>
        <translation>hors ajustement</translation>
    </message>
    <message>
        <source>run %1, %2: %3</source>
        <translation>essai %1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Drains not used</source>
        <translation>Décharges non utilisées</translation>
    </message>
    <message>
        <source>Gauge from run to run: %1</source>
        <translation>Jauge d’un essai à l’autre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Full drains at like loads, run to run</source>
        <translation>Décharges complètes à charges semblables, d’un essai à l’autre</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>essais</translation>
    </message>
    <message>
        <source>Wh per gauge point</source>
        <translation>Wh par point de jauge</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>énergie</translation>
    </message>
    <message>
        <source>gauge curve</source>
        <translation>courbe de jauge</translation>
    </message>
    <message>
        <source>at depth</source>
        <translation>à la profondeur</translation>
    </message>
    <message>
        <source>p of the curve</source>
        <translation>p de la courbe</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Changes of Wh per gauge point and of the energy are corrected for the loads.</source>
        <translation>Les changements des Wh par point de jauge et de l’énergie sont corrigés selon les charges.</translation>
    </message>
    <message>
        <source>Next run: %1</source>
        <translation>Prochain essai&#xa0;: %1</translation>
    </message>
    <message>
        <source>Drift: %1</source>
        <translation>Dérive&#xa0;: %1</translation>
    </message>
    <message>
        <source>`%1` is no locale; use a name such as de_DE or en_US</source>
        <translation>`%1` n’est pas une région ; indiquez un nom tel que de_DE ou en_US</translation>
    </message>
    <message>
        <source>With --language CODE (en, de, fr or es) every command speaks another language than that of the environment.</source>
        <translation>Avec --language CODE (en, de, fr ou es), chaque commande parle une autre langue que celle de l’environnement.</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <translation>COMMANDE</translation>
    </message>
    <message>
        <source>there is no display; use `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` or `ullage --help`</source>
        <translation>il n’y a pas d’écran&#x202f;; utilisez `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` ou `ullage --help`</translation>
    </message>
    <message>
        <source>the code of a language is missing behind `--language`</source>
        <translation>le code d’une langue manque après `--language`</translation>
    </message>
    <message>
        <source>write %1 there, as in `--language %2`</source>
        <translation>écrivez-y %1, comme dans `--language %2`</translation>
    </message>
    <message>
        <source>%1 is no language of this program</source>
        <translation>%1 n’est pas une langue de ce programme</translation>
    </message>
    <message>
        <source>use `--language` with %1</source>
        <translation>utilisez `--language` avec %1</translation>
    </message>
    <message>
        <source>the copy is complete: %1</source>
        <translation>la copie est complète&#xa0;: %1</translation>
    </message>
    <message>
        <source>the folder is complete: %1</source>
        <translation>le dossier est complet&#xa0;: %1</translation>
    </message>
    <message>
        <source>the samples to %1 are in the logbook</source>
        <translation>les échantillons jusqu’à %1 sont dans le carnet</translation>
    </message>
    <message>
        <source>the log is no longer followed</source>
        <translation>le journal n’est plus suivi</translation>
    </message>
    <message>
        <source>what could be imported is in the logbook: %1</source>
        <translation>ce qui a pu être importé est dans le carnet&#xa0;: %1</translation>
    </message>
    <message>
        <source>what came in is in the logbook: %1</source>
        <translation>ce qui est entré est dans le carnet&#xa0;: %1</translation>
    </message>
    <message>
        <source>a whole logbook as a folder has no preview; nothing was imported</source>
        <translation>un carnet entier sous forme de dossier n’a pas d’aperçu&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>import it without --preview, into a new logbook if you only want to look</source>
        <translation>importez-le sans --preview, dans un nouveau carnet si vous voulez seulement regarder</translation>
    </message>
    <message>
        <source>the pictures in %1 are complete</source>
        <translation>les images dans %1 sont complètes</translation>
    </message>
    <message>
        <source>the report and the files beside it are complete: %1</source>
        <translation>le rapport et les fichiers à côté sont complets&#xa0;: %1</translation>
    </message>
    <message>
        <source>the report is complete: %1</source>
        <translation>le rapport est complet&#xa0;: %1</translation>
    </message>
    <message>
        <source>the picture cannot be made</source>
        <translation>l’image ne peut pas être faite</translation>
    </message>
    <message>
        <source>ask for a smaller window</source>
        <translation>demandez une fenêtre plus petite</translation>
    </message>
    <message>
        <source>the samples of %1 to %2 are in the logbook</source>
        <translation>les échantillons de %1 jusqu’à %2 sont dans le carnet</translation>
    </message>
    <message>
        <source>the source is kept with the meter</source>
        <translation>la source est gardée avec le compteur</translation>
    </message>
    <message>
        <source>the program cannot tell where it lies (%1)</source>
        <translation>le programme ne peut pas savoir où il se trouve (%1)</translation>
    </message>
    <message>
        <source>mount /proc</source>
        <translation>montez /proc</translation>
    </message>
</context>
<context>
    <name>comparison</name>
    <message>
        <source>the maker&apos;s claim, not measured</source>
        <translation>la valeur annoncée par le fabricant, non mesurée</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>not drained from full to cut-off with its energy known</source>
        <translation>pas déchargée de la pleine charge à la coupure avec son énergie connue</translation>
    </message>
    <message>
        <source>Different meters were used: the error limit of each counts in full in a difference between units.</source>
        <translation>Des compteurs différents ont servi&#xa0;: la limite d’erreur de chacun compte entièrement dans un écart entre stations.</translation>
    </message>
    <message>
        <source>Projected figures assume an accurate gauge over the stretch that was drained, or allow for the fault found in it; half a drain can mislead by more than a tenth.</source>
        <translation>Les chiffres projetés supposent une jauge juste sur le parcours déchargé, ou tiennent compte du défaut qui y a été trouvé&#x202f;; une demi-décharge peut tromper de plus d’un dixième.</translation>
    </message>
    <message>
        <source>Figures projected through the gauge curve of an earlier run assume that the gauge has not changed since.</source>
        <translation>Les chiffres projetés par la courbe de jauge d’un essai antérieur supposent que la jauge n’a pas changé depuis.</translation>
    </message>
    <message>
        <source>no energy to divide by</source>
        <translation>pas d’énergie par laquelle diviser</translation>
    </message>
    <message>
        <source>at most %1 %2: %3</source>
        <translation>au plus %1 %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>no charge run</source>
        <translation>aucun essai de recharge</translation>
    </message>
    <message>
        <source>no sustained output run</source>
        <translation>aucun essai de puissance soutenue</translation>
    </message>
    <message>
        <source>no peak output run</source>
        <translation>aucun essai de puissance de crête</translation>
    </message>
    <message>
        <source>no standby run</source>
        <translation>aucun essai de veille</translation>
    </message>
    <message>
        <source>did not hold: %1</source>
        <translation>non tenu&#xa0;: %1</translation>
    </message>
    <message>
        <source>the price is not stated</source>
        <translation>le prix n’est pas précisé</translation>
    </message>
    <message>
        <source>the price paid is not stated</source>
        <translation>le prix payé n’est pas précisé</translation>
    </message>
    <message>
        <source>the mass is not stated</source>
        <translation>la masse n’est pas précisée</translation>
    </message>
    <message>
        <source>%1: no drain in the logbook</source>
        <translation>%1&#xa0;: aucune décharge dans le carnet</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>au moins %1 %</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 à %2 %</translation>
    </message>
    <message>
        <source>its gauge: %1</source>
        <translation>sa jauge&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>its gauge stays within %n points</source>
        <comment>its gauge stays within %n point</comment>
        <translation>
            <numerusform>sa jauge reste à %n point près</numerusform>
            <numerusform>sa jauge reste à %n points près</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>its gauge is up to %n points off</source>
        <comment>its gauge is up to %n point off</comment>
        <translation>
            <numerusform>sa jauge s’écarte de %n point au plus</numerusform>
            <numerusform>sa jauge s’écarte de %n points au plus</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at %3, projected from part of a drain, the only load that it can be judged at; %4.</source>
        <translation>%1 donnerait %2 de son énergie assignée à %3, projeté d’un bout de décharge, la seule charge où l’on peut en juger&#x202f;; %4.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at %3, projected from part of a drain; %4.</source>
        <translation>%1 donnerait %2 de son énergie assignée à %3, projeté d’un bout de décharge&#x202f;; %4.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at %3, the only load that it can be judged at; %4.</source>
        <translation>%1 donne %2 de son énergie assignée à %3, la seule charge où l’on peut en juger&#x202f;; %4.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at %3; %4.</source>
        <translation>%1 donne %2 de son énergie assignée à %3&#x202f;; %4.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at a load that is not known, projected from part of a drain, the only load that it can be judged at; %3.</source>
        <translation>%1 donnerait %2 de son énergie assignée à une charge inconnue, projeté d’un bout de décharge, la seule charge où l’on peut en juger&#x202f;; %3.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at a load that is not known, projected from part of a drain; %3.</source>
        <translation>%1 donnerait %2 de son énergie assignée à une charge inconnue, projeté d’un bout de décharge&#x202f;; %3.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at a load that is not known, the only load that it can be judged at; %3.</source>
        <translation>%1 donne %2 de son énergie assignée à une charge inconnue, la seule où l’on peut en juger&#x202f;; %3.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at a load that is not known; %3.</source>
        <translation>%1 donne %2 de son énergie assignée à une charge inconnue&#x202f;; %3.</translation>
    </message>
    <message>
        <source>How much of its label %1 gives is not known: %2; %3.</source>
        <translation>Quelle part de son énergie assignée donne %1, c’est inconnu&#xa0;: %2&#x202f;; %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>%1 and %n more</comment>
        <translation>
            <numerusform>%1 et %n autre</numerusform>
            <numerusform>%1 et %n autres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>At %1 %2 give the largest share of the label</source>
        <comment>At %1 %2 gives the largest share of the label</comment>
        <translation>
            <numerusform>À %1, %2 donne la plus grande part de son énergie assignée</numerusform>
            <numerusform>À %1, %2 donnent la plus grande part de leur énergie assignée</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>As tested, at like loads, %1 give the largest share of the label</source>
        <comment>As tested, at like loads, %1 gives the largest share of the label</comment>
        <translation>
            <numerusform>Comme testé, à des charges semblables, %1 donne la plus grande part de son énergie assignée</numerusform>
            <numerusform>Comme testé, à des charges semblables, %1 donnent la plus grande part de leur énergie assignée</numerusform>
        </translation>
    </message>
    <message>
        <source>At %1 these meters do not tell %2 apart: none of them may be called better.</source>
        <translation>À %1, ces compteurs ne départagent pas %2&#xa0;: aucune ne peut être dite meilleure.</translation>
    </message>
    <message>
        <source>As tested, at like loads, these meters do not tell %1 apart: none of them may be called better.</source>
        <translation>Comme testé, à des charges semblables, ces compteurs ne départagent pas %1&#xa0;: aucune ne peut être dite meilleure.</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, puis %2</translation>
    </message>
    <message>
        <source>%1, and so on down the table.</source>
        <translation>%1, et ainsi de suite en descendant le tableau.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>These meters tell one from the next.</source>
        <translation>Ces compteurs départagent chacune de la suivante.</translation>
    </message>
    <message>
        <source>These meters do not tell %1 apart.</source>
        <translation>Ces compteurs ne départagent pas %1.</translation>
    </message>
    <message>
        <source>They do not tell %1 apart.</source>
        <translation>Ils ne départagent pas %1.</translation>
    </message>
    <message>
        <source>At %1 no unit can be placed.</source>
        <translation>À %1, aucune station ne peut être classée.</translation>
    </message>
    <message>
        <source>As tested, at like loads, no unit can be placed.</source>
        <translation>Comme testé, à des charges semblables, aucune station ne peut être classée.</translation>
    </message>
    <message>
        <source>At %1 only %2 can be placed.</source>
        <translation>À %1, seule %2 peut être classée.</translation>
    </message>
    <message>
        <source>As tested, at like loads, only %1 can be placed.</source>
        <translation>Comme testé, à des charges semblables, seule %1 peut être classée.</translation>
    </message>
    <message numerus="yes">
        <source>%n drains together</source>
        <comment>%n drain</comment>
        <translation>
            <numerusform>%n décharge</numerusform>
            <numerusform>%n décharges ensemble</numerusform>
        </translation>
    </message>
    <message>
        <source>mean of %1 drains</source>
        <translation>moyenne de %1 décharges</translation>
    </message>
    <message>
        <source>Each drain stands for itself.</source>
        <translation>Chaque décharge compte pour elle-même.</translation>
    </message>
    <message>
        <source>They were made at loads from %1 W to %2 W, and a slow drain delivers less.</source>
        <translation>Elles ont été faites à des charges de %1 W à %2 W, et une décharge lente délivre moins.</translation>
    </message>
    <message>
        <source>As tested there is no order: the units were drained at loads from %1 W to %2 W, and a slow drain delivers less.</source>
        <translation>Comme testé, il n’y a pas d’ordre&#xa0;: les stations ont été déchargées à des charges de %1 W à %2 W, et une décharge lente délivre moins.</translation>
    </message>
    <message>
        <source>Compare them at one load, such as %1.</source>
        <translation>Comparez-les à une même charge, par exemple %1.</translation>
    </message>
    <message>
        <source>Compare them at one load.</source>
        <translation>Comparez-les à une même charge.</translation>
    </message>
    <message numerus="yes">
        <source>%n units have no place in this order.</source>
        <comment>%n unit has no place in this order.</comment>
        <translation>
            <numerusform>%n station n’a pas de place dans cet ordre.</numerusform>
            <numerusform>%n stations n’ont pas de place dans cet ordre.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 had this load</source>
        <translation>%1 avait cette charge</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>comme testé</translation>
    </message>
    <message>
        <source>The longer a drain takes, the more of the content feeds the unit itself.</source>
        <translation>Plus une décharge dure, plus il va de son contenu à la station elle-même.</translation>
    </message>
    <message>
        <source>As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round.</source>
        <translation>Comme testé, %1 donnait la plus grande part de son énergie assignée, devant %2&#x202f;; à %3, c’est l’inverse.</translation>
    </message>
    <message>
        <source>As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round: %1 was drained at %4 W, %2 at %5 W.</source>
        <translation>Comme testé, %1 donnait la plus grande part de son énergie assignée, devant %2&#x202f;; à %3, c’est l’inverse&#xa0;: %1 a été déchargée à %4 W, %2 à %5 W.</translation>
    </message>
    <message>
        <source>%1 is shown as tested, at a load that is not known: %2.</source>
        <translation>%1 figure comme testé, à une charge inconnue&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 is shown as tested, at %2 W: %3.</source>
        <translation>%1 figure comme testé, à %2 W&#xa0;: %3.</translation>
    </message>
    <message>
        <source>calculated for this load</source>
        <translation>ramené à cette charge</translation>
    </message>
    <message>
        <source>tested at this load</source>
        <translation>testé à cette charge</translation>
    </message>
    <message>
        <source>the rated energy of %1 is not stated</source>
        <translation>l’énergie assignée de %1 n’est pas précisée</translation>
    </message>
    <message>
        <source>the mass of %1 is not stated</source>
        <translation>la masse de %1 n’est pas précisée</translation>
    </message>
    <message>
        <source>the price of %1 is not stated</source>
        <translation>le prix de %1 n’est pas précisé</translation>
    </message>
    <message>
        <source>not comparable: %1</source>
        <translation>non comparable&#xa0;: %1</translation>
    </message>
    <message>
        <source>clearly different: %1 − %2 = %3, the error of the shared meter&apos;s gain cancels as far as both are alike</source>
        <translation>nettement différentes&#xa0;: %1 − %2 = %3, l’erreur de gain du compteur commun s’annule dans la mesure où les deux se ressemblent</translation>
    </message>
    <message>
        <source>clearly different: %1 − %2 = %3</source>
        <translation>nettement différentes&#xa0;: %1 − %2 = %3</translation>
    </message>
    <message>
        <source>too close to call with these meters: %1 − %2 = %3, the error of the shared meter&apos;s gain cancels as far as both are alike</source>
        <translation>impossibles à départager avec ces compteurs&#xa0;: %1 − %2 = %3, l’erreur de gain du compteur commun s’annule dans la mesure où les deux se ressemblent</translation>
    </message>
    <message>
        <source>too close to call with these meters: %1 − %2 = %3</source>
        <translation>impossibles à départager avec ces compteurs&#xa0;: %1 − %2 = %3</translation>
    </message>
    <message>
        <source>both rows are of one unit</source>
        <translation>les deux lignes sont de la même station</translation>
    </message>
    <message>
        <source>the prices are in different currencies</source>
        <translation>les prix sont dans des devises différentes</translation>
    </message>
    <message>
        <source>%1 was tested at another load and cannot be converted</source>
        <translation>%1 a été testée à une autre charge et ne peut être ramenée</translation>
    </message>
    <message>
        <source>%1 was drained at loads too far from this one</source>
        <translation>%1 a été déchargée à des charges trop loin de celle-ci</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>non comparable</translation>
    </message>
    <message>
        <source>clearly different</source>
        <translation>nettement différentes</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>impossible à trancher</translation>
    </message>
    <message>
        <source>it was tested at another load and cannot be converted</source>
        <translation>elle a été testée à une autre charge et ne peut être ramenée</translation>
    </message>
    <message>
        <source>its drains were at loads too far from this one</source>
        <translation>ses décharges étaient à des charges trop loin de celle-ci</translation>
    </message>
    <message>
        <source>its usable fraction has no interval to rank it by</source>
        <translation>sa fraction utile n’a pas d’intervalle pour la classer</translation>
    </message>
    <message>
        <source>ranks are those of units, not of single drains</source>
        <translation>les rangs sont ceux des stations, non des décharges seules</translation>
    </message>
    <message>
        <source>the units were drained at unlike loads: compare them at one load</source>
        <translation>les stations ont été déchargées à des charges dissemblables&#xa0;: comparez-les à une même charge</translation>
    </message>
    <message>
        <source>shared by %1 units that these meters do not tell apart</source>
        <translation>partagé par %1 stations que ces compteurs ne départagent pas</translation>
    </message>
    <message>
        <source>told apart from every other unit that has a rank</source>
        <translation>départagée de toute autre station qui a un rang</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: its energy is only &quot;%2&quot;</source>
        <translation>%1&#xa0;: son énergie est seulement «&#xa0;%2&#xa0;»</translation>
    </message>
    <message>
        <source>%1: its energy has no interval</source>
        <translation>%1&#xa0;: son énergie n’a pas d’intervalle</translation>
    </message>
    <message>
        <source>it is not known of every drain of the mean</source>
        <translation>elle n’est pas connue de chaque décharge de la moyenne</translation>
    </message>
    <message>
        <source>one drain stands alone</source>
        <translation>une seule décharge compte pour elle-même</translation>
    </message>
    <message numerus="yes">
        <source>experimental standard deviation of one drain, %n degrees of freedom</source>
        <comment>experimental standard deviation of one drain, %n degree of freedom</comment>
        <translation>
            <numerusform>écart-type expérimental d’une décharge, %n degré de liberté</numerusform>
            <numerusform>écart-type expérimental d’une décharge, %n degrés de liberté</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are both in %1 and in %2; counted once</source>
        <comment>%n run is both in %1 and in %2; counted once</comment>
        <translation>
            <numerusform>%n essai figure à la fois dans %1 et dans %2&#x202f;; compté une fois</numerusform>
            <numerusform>%n essais figurent à la fois dans %1 et dans %2&#x202f;; comptés une fois</numerusform>
        </translation>
    </message>
    <message>
        <source>the claims of %1 differ between the logbooks; those of the first one hold</source>
        <translation>les valeurs annoncées de %1 diffèrent entre les carnets&#x202f;; celles du premier valent</translation>
    </message>
    <message>
        <source>what is stated of the meter %1 differs between the logbooks; the first one holds</source>
        <translation>ce qui est précisé du compteur %1 diffère entre les carnets&#x202f;; le premier vaut</translation>
    </message>
    <message>
        <source>mean of %1 specimens</source>
        <translation>moyenne de %1 exemplaires</translation>
    </message>
    <message>
        <source>between %1 specimens</source>
        <translation>entre %1 exemplaires</translation>
    </message>
    <message>
        <source>if it is made as these %1 specimens were</source>
        <translation>s’il est fait comme l’étaient ces %1 exemplaires</translation>
    </message>
    <message>
        <source>%1: %2 specimens give %3 of their label, spread %4 %; the next one is expected within %5 to %6 %.</source>
        <translation>%1&#xa0;: %2 exemplaires donnent %3 de leur énergie assignée, dispersion %4 %&#x202f;; le prochain est attendu entre %5 et %6 %.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>one specimen, which says nothing of others</source>
        <translation>un seul exemplaire, qui ne dit rien des autres</translation>
    </message>
    <message>
        <source>fewer than two of its specimens can be compared here</source>
        <translation>moins de deux de ses exemplaires peuvent être comparés ici</translation>
    </message>
    <message>
        <source>its specimens were drained at unlike loads: compare them at one load</source>
        <translation>ses exemplaires ont été déchargés à des charges dissemblables&#xa0;: comparez-les à une même charge</translation>
    </message>
</context>
<context>
    <name>copies</name>
    <message numerus="yes">
        <source>%n units</source>
        <comment>%n unit</comment>
        <translation>
            <numerusform>%n station</numerusform>
            <numerusform>%n stations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>date</name>
    <message>
        <source>January</source>
        <translation>janvier</translation>
    </message>
    <message>
        <source>February</source>
        <translation>février</translation>
    </message>
    <message>
        <source>March</source>
        <translation>mars</translation>
    </message>
    <message>
        <source>April</source>
        <translation>avril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>juin</translation>
    </message>
    <message>
        <source>July</source>
        <translation>juillet</translation>
    </message>
    <message>
        <source>August</source>
        <translation>août</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octobre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>novembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>décembre</translation>
    </message>
    <message>
        <source>%1 January</source>
        <translation>%1 janvier</translation>
    </message>
    <message>
        <source>%1 February</source>
        <translation>%1 février</translation>
    </message>
    <message>
        <source>%1 March</source>
        <translation>%1 mars</translation>
    </message>
    <message>
        <source>%1 April</source>
        <translation>%1 avril</translation>
    </message>
    <message>
        <source>%1 May</source>
        <translation>%1 mai</translation>
    </message>
    <message>
        <source>%1 June</source>
        <translation>%1 juin</translation>
    </message>
    <message>
        <source>%1 July</source>
        <translation>%1 juillet</translation>
    </message>
    <message>
        <source>%1 August</source>
        <translation>%1 août</translation>
    </message>
    <message>
        <source>%1 September</source>
        <translation>%1 septembre</translation>
    </message>
    <message>
        <source>%1 October</source>
        <translation>%1 octobre</translation>
    </message>
    <message>
        <source>%1 November</source>
        <translation>%1 novembre</translation>
    </message>
    <message>
        <source>%1 December</source>
        <translation>%1 décembre</translation>
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
        <translation>heures</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation>le nombre d’appareils</translation>
    </message>
    <message>
        <source>the power</source>
        <translation>la puissance</translation>
    </message>
    <message>
        <source>the duty</source>
        <translation>le facteur de marche</translation>
    </message>
    <message>
        <source>the measured energy</source>
        <translation>l’énergie mesurée</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>the time over which it was measured</source>
        <translation>la durée de la mesure</translation>
    </message>
    <message>
        <source>the power of its start</source>
        <translation>la puissance de démarrage</translation>
    </message>
    <message>
        <source>enter a number, such as 1.5</source>
        <translation>saisissez un nombre, comme 1,5</translation>
    </message>
    <message>
        <source>enter a number, such as 1.5 %1</source>
        <translation>saisissez un nombre, comme 1,5 %1</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>`%1` n’est pas compris</translation>
    </message>
    <message>
        <source>%1 must be more than 0</source>
        <translation>%1&#xa0;: il faut plus de 0</translation>
    </message>
    <message>
        <source>leave the field empty where nothing is stated</source>
        <translation>laissez le champ vide là où rien n’est précisé</translation>
    </message>
    <message>
        <source>start of the log</source>
        <translation>début du journal</translation>
    </message>
    <message>
        <source>this is no time</source>
        <translation>ce n’est pas une heure</translation>
    </message>
    <message>
        <source>clock is behind by</source>
        <translation>retard de l’horloge</translation>
    </message>
    <message>
        <source>write it like 0:00:12 or -0:01:30: hours, minutes, seconds</source>
        <translation>écrivez-le comme 0:00:12 ou -0:01:30&#xa0;: heures, minutes, secondes</translation>
    </message>
    <message>
        <source>the register step</source>
        <translation>le pas de l’index</translation>
    </message>
    <message>
        <source>the error limit</source>
        <translation>la limite d’erreur</translation>
    </message>
    <message>
        <source>the part of each load</source>
        <translation>la part propre à chaque charge</translation>
    </message>
    <message>
        <source>the register span</source>
        <translation>l’étendue de l’index</translation>
    </message>
    <message>
        <source>the correction</source>
        <translation>la correction</translation>
    </message>
    <message>
        <source>the starting current</source>
        <translation>le courant de démarrage</translation>
    </message>
    <message>
        <source>the side</source>
        <translation>le côté</translation>
    </message>
    <message>
        <source>the width</source>
        <translation>la largeur</translation>
    </message>
    <message>
        <source>the height</source>
        <translation>la hauteur</translation>
    </message>
    <message>
        <source>`%1` is outside what a bench can be</source>
        <translation>`%1` est hors de ce qu’un banc peut avoir</translation>
    </message>
    <message>
        <source>enter degrees Celsius, such as 18</source>
        <translation>saisissez des degrés Celsius, comme 18</translation>
    </message>
    <message>
        <source>nobody notices an end before it happens</source>
        <translation>personne ne remarque une fin avant qu’elle n’arrive</translation>
    </message>
    <message>
        <source>type 0 where it was noted as it happened</source>
        <translation>tapez 0 si elle a été notée au moment même</translation>
    </message>
    <message>
        <source>copies are kept for whole days from 1 to 3650</source>
        <translation>les copies sont gardées un nombre entier de jours, de 1 à 3650</translation>
    </message>
    <message>
        <source>enter a number such as 30</source>
        <translation>saisissez un nombre comme 30</translation>
    </message>
    <message>
        <source>a station is a number from 0 to 255</source>
        <translation>un esclave est un nombre de 0 à 255</translation>
    </message>
    <message>
        <source>the interval</source>
        <translation>l’intervalle</translation>
    </message>
    <message>
        <source>the gauge step</source>
        <translation>le pas de la jauge</translation>
    </message>
    <message>
        <source>type a number, or `not known`</source>
        <translation>tapez un nombre, ou `inconnu`</translation>
    </message>
    <message>
        <source>the rated energy</source>
        <translation>l’énergie assignée</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>la puissance assignée</translation>
    </message>
    <message>
        <source>the peak output</source>
        <translation>la puissance de crête</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>la masse</translation>
    </message>
    <message>
        <source>years</source>
        <translation>ans</translation>
    </message>
    <message>
        <source>months</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>the warranty</source>
        <translation>la garantie</translation>
    </message>
    <message>
        <source>the voltage limit</source>
        <translation>la limite de tension</translation>
    </message>
    <message>
        <source>the current limit</source>
        <translation>la limite de courant</translation>
    </message>
    <message>
        <source>the power limit</source>
        <translation>la limite de puissance</translation>
    </message>
    <message>
        <source>the start voltage</source>
        <translation>la tension de démarrage</translation>
    </message>
    <message>
        <source>the short-circuit current</source>
        <translation>le courant de court-circuit</translation>
    </message>
    <message>
        <source>the charge time</source>
        <translation>le temps de recharge</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>le prix</translation>
    </message>
    <message>
        <source>the price paid</source>
        <translation>le prix payé</translation>
    </message>
</context>
<context>
    <name>document</name>
    <message>
        <source>this run is no longer in the logbook</source>
        <translation>cet essai n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>this load list is no longer in the logbook</source>
        <translation>cette liste de charges n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>this PV sheet is no longer in the logbook</source>
        <translation>cette fiche PV n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>this reading is no longer in the logbook</source>
        <translation>ce relevé n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>this unit is no longer in the logbook</source>
        <translation>cette station n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>no logbook is open</source>
        <translation>aucun carnet n’est ouvert</translation>
    </message>
    <message>
        <source>open or make one first</source>
        <translation>ouvrez-en ou créez-en un d’abord</translation>
    </message>
    <message>
        <source>this meter is no longer in the logbook</source>
        <translation>ce compteur n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>the logbook is busy</source>
        <translation>le carnet est occupé</translation>
    </message>
    <message>
        <source>what has come waits and is recorded then</source>
        <translation>ce qui est arrivé attend et sera enregistré ensuite</translation>
    </message>
    <message>
        <source>the sample sheet cannot be read</source>
        <translation>la fiche d’exemple ne peut être lue</translation>
    </message>
    <message>
        <source>the sample load list cannot be read</source>
        <translation>la liste de charges d’exemple ne peut être lue</translation>
    </message>
    <message>
        <source>the sample log cannot be copied</source>
        <translation>le journal d’exemple ne peut être copié</translation>
    </message>
    <message>
        <source>make room in the folder for temporary files</source>
        <translation>libérez de la place dans le dossier des fichiers temporaires</translation>
    </message>
    <message>
        <source>this build holds no sample run sheets</source>
        <translation>cette version compilée ne contient pas de fiches d’essai d’exemple</translation>
    </message>
    <message>
        <source>make a new logbook instead</source>
        <translation>créez plutôt un nouveau carnet</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>le dossier ne peut être créé</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>ce n’est pas un fichier</translation>
    </message>
    <message>
        <source>choose a PV sheet</source>
        <translation>choisissez une fiche PV</translation>
    </message>
    <message>
        <source>the logbook has no unit named `%1`; choose one in the sheet</source>
        <translation>le carnet n’a pas de station nommée `%1`&#x202f;; choisissez-en une dans la fiche</translation>
    </message>
    <message>
        <source>limits of the PV input belong to the unit; state those of the file in the unit&apos;s claims</source>
        <translation>les limites de l’entrée PV appartiennent à la station&#x202f;; indiquez celles du fichier dans les valeurs annoncées de la station</translation>
    </message>
    <message>
        <source>choose a load list</source>
        <translation>choisissez une liste de charges</translation>
    </message>
    <message>
        <source>choose a run sheet</source>
        <translation>choisissez une fiche d’essai</translation>
    </message>
    <message>
        <source>reading this logbook was cancelled; its units are not compared</source>
        <translation>la lecture de ce carnet a été abandonnée&#x202f;; ses stations ne sont pas comparées</translation>
    </message>
    <message>
        <source>this logbook is the one that is open; its units are compared already</source>
        <translation>ce carnet est celui qui est ouvert&#x202f;; ses stations sont déjà comparées</translation>
    </message>
    <message>
        <source>the units of this logbook are compared already</source>
        <translation>les stations de ce carnet sont déjà comparées</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>`%1` is no moment</source>
        <translation>`%1` n’est pas un instant</translation>
    </message>
    <message>
        <source>type a time such as 02:40, -10m, yesterday 23:50, 14 May 23:50 or 2027-05-14T18:00, or nothing for now</source>
        <translation>tapez une heure comme 02:40, -10m, yesterday 23:50, 14 May 23:50 ou 2027-05-14T18:00, ou rien pour maintenant</translation>
    </message>
    <message>
        <source>`%1` is more than a year ago</source>
        <translation>`%1` date de plus d’un an</translation>
    </message>
    <message>
        <source>type date and time</source>
        <translation>tapez date et heure</translation>
    </message>
    <message>
        <source>nothing was typed</source>
        <translation>rien n’a été tapé</translation>
    </message>
    <message>
        <source>`%1` is no number</source>
        <translation>`%1` n’est pas un nombre</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` est hors plage</translation>
    </message>
    <message>
        <source>`%1` is not understood after the number</source>
        <translation>`%1` n’est pas compris après le nombre</translation>
    </message>
    <message>
        <source>type an energy of 0 or more, such as 431, 431 Wh or 0.431 kWh</source>
        <translation>tapez une énergie de 0 ou plus, comme 431, 431 Wh ou 0,431 kWh</translation>
    </message>
    <message>
        <source>type a percentage from 0 to 100, such as 69</source>
        <translation>tapez un pourcentage de 0 à 100, comme 69</translation>
    </message>
    <message>
        <source>type a power of 0 or more, such as 64, 64 W or 0.064 kW</source>
        <translation>tapez une puissance de 0 ou plus, comme 64, 64 W ou 0,064 kW</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>il y a %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd&apos;hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>choose another file name</source>
        <translation>choisissez un autre nom de fichier</translation>
    </message>
    <message>
        <source>this is the logbook that is open, which nothing replaces</source>
        <translation>c’est le carnet ouvert, que rien ne remplace</translation>
    </message>
    <message>
        <source>the file is write-protected</source>
        <translation>le fichier est protégé en écriture</translation>
    </message>
    <message>
        <source>make it writable, or choose another file name</source>
        <translation>levez sa protection, ou choisissez un autre nom de fichier</translation>
    </message>
    <message>
        <source>choose another file name, or add --force</source>
        <translation>choisissez un autre nom de fichier, ou ajoutez --force</translation>
    </message>
    <message>
        <source>this file is read by the same call</source>
        <translation>ce fichier est lu par le même appel</translation>
    </message>
    <message>
        <source>this is a logbook, with all its readings</source>
        <translation>c’est un carnet, avec tous ses relevés</translation>
    </message>
    <message>
        <source>this logbook is in use</source>
        <translation>ce carnet est utilisé</translation>
    </message>
    <message>
        <source>close it first, or choose another file name</source>
        <translation>fermez-le d’abord, ou choisissez un autre nom de fichier</translation>
    </message>
    <message>
        <source>a file of this name exists, and this program did not write it as it is now</source>
        <translation>un fichier de ce nom existe, et ce programme ne l’a pas écrit tel qu’il est maintenant</translation>
    </message>
    <message>
        <source>no file name is given</source>
        <translation>aucun nom de fichier n’est donné</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>nommez un fichier</translation>
    </message>
    <message>
        <source>this link leads to no file</source>
        <translation>ce lien ne mène à aucun fichier</translation>
    </message>
    <message>
        <source>remove the link, or choose another file name</source>
        <translation>supprimez le lien, ou choisissez un autre nom de fichier</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>c’est un dossier</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>ce n’est pas un fichier ordinaire</translation>
    </message>
    <message>
        <source>the file cannot be reached: %1</source>
        <translation>le fichier ne peut être atteint&#xa0;: %1</translation>
    </message>
    <message>
        <source>the name is kept for what a logbook has beside it</source>
        <translation>ce nom est réservé à ce qu’un carnet a à côté de lui</translation>
    </message>
    <message>
        <source>the ending .ullage is that of logbooks</source>
        <translation>la terminaison .ullage est celle des carnets</translation>
    </message>
    <message>
        <source>choose another ending</source>
        <translation>choisissez une autre terminaison</translation>
    </message>
    <message>
        <source>the file has gone</source>
        <translation>le fichier a disparu</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>réessayez</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>il n’y a plus de place sur le disque</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>faites de la place ou choisissez un autre endroit</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>le dossier n’existe pas</translation>
    </message>
    <message>
        <source>make the folder or choose another place</source>
        <translation>créez le dossier ou choisissez un autre endroit</translation>
    </message>
    <message>
        <source>writing is not permitted here</source>
        <translation>il n’est pas permis d’écrire ici</translation>
    </message>
    <message>
        <source>choose a place that you may write to</source>
        <translation>choisissez un endroit où vous avez le droit d’écrire</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>ne peut être écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>choisissez un autre endroit</translation>
    </message>
    <message>
        <source>a file of this name has just come into being</source>
        <translation>un fichier de ce nom vient d’apparaître</translation>
    </message>
    <message>
        <source>look at it, then try again</source>
        <translation>regardez-le, puis réessayez</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ce fichier n’existe pas</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>vérifiez le nom</translation>
    </message>
    <message>
        <source>the file is larger than 64 MiB, which no run sheet is</source>
        <translation>le fichier dépasse 64 MiB, ce que ne fait aucune fiche d’essai</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>le fichier ne peut être lu</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>vérifiez ses droits d’accès</translation>
    </message>
    <message>
        <source>reading the file failed</source>
        <translation>la lecture du fichier a échoué</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>vérifiez le disque</translation>
    </message>
</context>
<context>
    <name>folder</name>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>a setting needs `name` and `value`</source>
        <translation>un réglage a besoin de `name` et de `value`</translation>
    </message>
    <message>
        <source>complete the row, or delete it</source>
        <translation>complétez la ligne, ou supprimez-la</translation>
    </message>
    <message>
        <source>the row names no file</source>
        <translation>la ligne ne nomme aucun fichier</translation>
    </message>
    <message>
        <source>the row does not say which run it belongs to</source>
        <translation>la ligne ne dit pas à quel essai elle appartient</translation>
    </message>
    <message>
        <source>fill in `run_sheet`</source>
        <translation>remplissez `run_sheet`</translation>
    </message>
    <message>
        <source>this is no list of a logbook&apos;s folder</source>
        <translation>ce n’est pas une liste d’un dossier de carnet</translation>
    </message>
    <message>
        <source>choose a folder that this program wrote</source>
        <translation>choisissez un dossier écrit par ce programme</translation>
    </message>
    <message>
        <source>the folder is of a newer sort</source>
        <translation>le dossier est d’une sorte plus récente</translation>
    </message>
    <message>
        <source>bring it in with a newer version of this program</source>
        <translation>importez-le avec une version plus récente de ce programme</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>il n’y a pas de colonne `%1`</translation>
    </message>
    <message>
        <source>delete it, or name it as in the help</source>
        <translation>supprimez-la, ou nommez-la comme dans l’aide</translation>
    </message>
    <message>
        <source>the column `%1` is missing</source>
        <translation>la colonne `%1` manque</translation>
    </message>
    <message>
        <source>restore it</source>
        <translation>rétablissez-la</translation>
    </message>
    <message numerus="yes">
        <source>the row has %n cells, the header %1</source>
        <comment>the row has %n cell, the header %1</comment>
        <translation>
            <numerusform>la ligne a %n cellule, l’en-tête %1</numerusform>
            <numerusform>la ligne a %n cellules, l’en-tête %1</numerusform>
        </translation>
    </message>
    <message>
        <source>give it as many</source>
        <translation>donnez-lui-en autant</translation>
    </message>
    <message>
        <source>the row does not say what it is</source>
        <translation>la ligne ne dit pas ce qu’elle est</translation>
    </message>
    <message>
        <source>fill in `what`</source>
        <translation>remplissez `what`</translation>
    </message>
    <message>
        <source>`%1` is no %2</source>
        <translation>`%1` n’est pas&#xa0;: %2</translation>
    </message>
    <message>
        <source>correct the cell; the help says what it holds</source>
        <translation>corrigez la cellule&#x202f;; l’aide dit ce qu’elle contient</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>arrêté</translation>
    </message>
    <message>
        <source>nothing was imported</source>
        <translation>rien n’a été importé</translation>
    </message>
    <message>
        <source>`%1` is named twice</source>
        <translation>`%1` est nommé deux fois</translation>
    </message>
    <message>
        <source>delete one of the rows</source>
        <translation>supprimez l’une des lignes</translation>
    </message>
    <message>
        <source>`%1` is a link out of the folder</source>
        <translation>`%1` est un lien hors du dossier</translation>
    </message>
    <message>
        <source>put the file itself there</source>
        <translation>mettez-y le fichier lui-même</translation>
    </message>
    <message>
        <source>`%1` is no run sheet of this folder</source>
        <translation>`%1` n’est pas une fiche d’essai de ce dossier</translation>
    </message>
    <message>
        <source>correct `run_sheet`</source>
        <translation>corrigez `run_sheet`</translation>
    </message>
    <message>
        <source>`%1` states no meter</source>
        <translation>`%1` ne précise aucun compteur</translation>
    </message>
    <message>
        <source>name a sheet that does</source>
        <translation>nommez une fiche qui en précise un</translation>
    </message>
    <message>
        <source>%1: already in the logbook as run %2 of %3, left out</source>
        <translation>%1&#xa0;: déjà dans le carnet comme essai %2 de %3, laissé de côté</translation>
    </message>
    <message>
        <source>`%1` has no reading %2</source>
        <translation>`%1` n’a pas de relevé %2</translation>
    </message>
    <message>
        <source>correct `reading`</source>
        <translation>corrigez `reading`</translation>
    </message>
    <message>
        <source>reading %1 of `%2` is of %3, not of %4</source>
        <translation>le relevé %1 de `%2` est de %3, non de %4</translation>
    </message>
    <message>
        <source>give the row of the reading that the photo shows</source>
        <translation>donnez la ligne du relevé que la photo montre</translation>
    </message>
    <message>
        <source>there is no meter `%1`</source>
        <translation>il n’y a pas de compteur `%1`</translation>
    </message>
    <message>
        <source>correct `meter`, or add a row of the sort `meter`</source>
        <translation>corrigez `meter`, ou ajoutez une ligne de la sorte `meter`</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n rows left out</source>
        <comment>%1: %n row left out</comment>
        <translation>
            <numerusform>%1&#xa0;: %n ligne laissée de côté</numerusform>
            <numerusform>%1&#xa0;: %n lignes laissées de côté</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the logbook has another load list of this name; left out</source>
        <translation>%1&#xa0;: le carnet a une autre liste de charges de ce nom&#x202f;; laissée de côté</translation>
    </message>
    <message>
        <source>%1: the logbook has another PV sheet of this name; left out</source>
        <translation>%1&#xa0;: le carnet a une autre fiche PV de ce nom&#x202f;; laissée de côté</translation>
    </message>
    <message>
        <source>setting `%1`: the logbook states %2, the folder %3; that of the logbook stays</source>
        <translation>réglage `%1`&#xa0;: le carnet indique %2, le dossier %3&#x202f;; celui du carnet reste</translation>
    </message>
    <message>
        <source>the folder cannot be named so: %1</source>
        <translation>le dossier ne peut porter ce nom&#xa0;: %1</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>choisissez un autre nom</translation>
    </message>
    <message>
        <source>there is something of this name already</source>
        <translation>il y a déjà quelque chose de ce nom</translation>
    </message>
    <message>
        <source>name a new folder</source>
        <translation>nommez un nouveau dossier</translation>
    </message>
    <message>
        <source>the folder cannot be made: %1</source>
        <translation>le dossier ne peut être créé&#xa0;: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>choisissez un autre endroit</translation>
    </message>
    <message>
        <source>nothing was written</source>
        <translation>rien n’a été écrit</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n logs</source>
        <comment>%n log</comment>
        <translation>
            <numerusform>%n journal</numerusform>
            <numerusform>%n journaux</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n liste de charges</numerusform>
            <numerusform>%n listes de charges</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n PV sheets</source>
        <comment>%n PV sheet</comment>
        <translation>
            <numerusform>%n fiche PV</numerusform>
            <numerusform>%n fiches PV</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
</context>
<context>
    <name>forecast</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>gauge shows</source>
        <translation>la jauge montre</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>trop peu</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>trop</translation>
    </message>
    <message>
        <source>%1 to +%2 pt</source>
        <translation>%1 à +%2 pt</translation>
    </message>
    <message>
        <source>too little or too much</source>
        <translation>trop peu ou trop</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>after %1 h more</source>
        <translation>après encore %1 h</translation>
    </message>
    <message>
        <source>at this load</source>
        <translation>à cette charge</translation>
    </message>
    <message>
        <source>If the gauge is right: ruled out by the readings. %1</source>
        <translation>Si la jauge est juste&#xa0;: exclu par les relevés. %1</translation>
    </message>
    <message>
        <source>If the gauge is right: %1. %2</source>
        <translation>Si la jauge est juste&#xa0;: %1. %2</translation>
    </message>
    <message>
        <source>If the gauge is wrong: ruled out by the readings. %1</source>
        <translation>Si la jauge est fausse&#xa0;: exclu par les relevés. %1</translation>
    </message>
    <message>
        <source>If the gauge is wrong: %1. %2</source>
        <translation>Si la jauge est fausse&#xa0;: %1. %2</translation>
    </message>
    <message>
        <source>usable of the label</source>
        <translation>utile de l’énergie assignée</translation>
    </message>
    <message>
        <source>the unit itself takes</source>
        <translation>la station elle-même prend</translation>
    </message>
    <message>
        <source>What decides: %1</source>
        <translation>Ce qui tranche&#xa0;: %1</translation>
    </message>
    <message>
        <source>What decides: %1 %2</source>
        <translation>Ce qui tranche&#xa0;: %1 %2</translation>
    </message>
    <message>
        <source>middle 95 % of what remains possible</source>
        <translation>les 95 % du milieu de ce qui reste possible</translation>
    </message>
    <message>
        <source>%1 for %2 points would be a battery of over %3 % of its label</source>
        <translation>%1 pour %2 points, ce serait une batterie de plus de %3 % de son énergie assignée</translation>
    </message>
    <message>
        <source>Not possible: %1.</source>
        <translation>Impossible&#xa0;: %1.</translation>
    </message>
    <message>
        <source>if the gauge is right, at this load</source>
        <translation>si la jauge est juste, à cette charge</translation>
    </message>
    <message>
        <source>%1 for %2 points is about what the label promises.</source>
        <translation>%1 pour %2 points, c’est à peu près ce que promet l’énergie assignée.</translation>
    </message>
    <message>
        <source>Only %1 came out for the %2 points shown.</source>
        <translation>Il n’est sorti que %1 pour les %2 points montrés.</translation>
    </message>
    <message>
        <source>Nothing is left that the unit could take for itself.</source>
        <translation>Il ne reste rien que la station puisse prendre pour elle-même.</translation>
    </message>
    <message>
        <source>The unit would take %1 W for itself while your load takes %2 W.</source>
        <translation>La station prendrait %1 W pour elle-même pendant que votre charge prend %2 W.</translation>
    </message>
    <message>
        <source>a gauge that is wrong tells nothing of it</source>
        <translation>une jauge fausse n’en dit rien</translation>
    </message>
    <message>
        <source>label, energy and the readings so far leave less than 2 % for it</source>
        <translation>énergie assignée, énergie et relevés lui laissent jusqu’ici moins de 2 %</translation>
    </message>
    <message>
        <source>Hardly possible: %1.</source>
        <translation>Guère possible&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Most of it would still be inside: %1 Wh to come. The gauge would have run ahead by %2 points and must slow down.</source>
        <translation>La plus grande part serait encore dedans&#xa0;: %1 Wh à venir. La jauge aurait %2 points d’avance et doit ralentir.</translation>
    </message>
    <message>
        <source>Less would be inside than it shows: %1 Wh to come. The gauge would lag by %2 points and must hurry.</source>
        <translation>Il y aurait dedans moins qu’elle ne montre&#xa0;: %1 Wh à venir. La jauge aurait %2 points de retard et doit se hâter.</translation>
    </message>
    <message>
        <source>%1 Wh would be to come. The gauge may show up to %2 points too much or %3 points too little.</source>
        <translation>%1 Wh seraient à venir. La jauge peut montrer jusqu’à %2 points de trop ou %3 points de moins.</translation>
    </message>
    <message>
        <source>Look at %1. Gauge right: the output is off. Gauge wrong: it is still on.</source>
        <translation>Regardez à %1. Jauge juste&#xa0;: la sortie est coupée. Jauge fausse&#xa0;: elle est encore active.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Gauge right: the output is off. Gauge wrong: it is still on.</source>
        <translation>Regardez après encore %1 h à cette charge. Jauge juste&#xa0;: la sortie est coupée. Jauge fausse&#xa0;: elle est encore active.</translation>
    </message>
    <message>
        <source>Look at %1. Gauge right: the output is still on. Gauge wrong: it is off.</source>
        <translation>Regardez à %1. Jauge juste&#xa0;: la sortie est encore active. Jauge fausse&#xa0;: elle est coupée.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Gauge right: the output is still on. Gauge wrong: it is off.</source>
        <translation>Regardez après encore %1 h à cette charge. Jauge juste&#xa0;: la sortie est encore active. Jauge fausse&#xa0;: elle est coupée.</translation>
    </message>
    <message>
        <source>Off before %1: the gauge shows too much. Still on at %2: it shows too little.</source>
        <translation>Coupée avant %1&#xa0;: la jauge montre trop. Encore active à %2&#xa0;: elle montre trop peu.</translation>
    </message>
    <message>
        <source>Off before %1 h further on at this load: the gauge shows too much. Still on at %2 h further on at this load: it shows too little.</source>
        <translation>Coupée avant encore %1 h à cette charge&#xa0;: la jauge montre trop. Encore active après encore %2 h à cette charge&#xa0;: elle montre trop peu.</translation>
    </message>
    <message>
        <source>Look at %1. Still on then: the gauge shows too little.</source>
        <translation>Regardez à %1. Encore active alors&#xa0;: la jauge montre trop peu.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Still on then: the gauge shows too little.</source>
        <translation>Regardez après encore %1 h à cette charge. Encore active alors&#xa0;: la jauge montre trop peu.</translation>
    </message>
    <message>
        <source>Or take the load off for an hour and leave the output on. Gauge right: it falls by %1 points. Gauge wrong: it hardly moves.</source>
        <translation>Ou débranchez la charge une heure et laissez la sortie active. Jauge juste&#xa0;: elle baisse de %1 points. Jauge fausse&#xa0;: elle bouge à peine.</translation>
    </message>
    <message>
        <source>a no-load drain run does not test the gauge against energy</source>
        <translation>un essai de décharge à vide n’éprouve pas la jauge par l’énergie</translation>
    </message>
    <message>
        <source>a charge run does not test the gauge against energy</source>
        <translation>un essai de recharge n’éprouve pas la jauge par l’énergie</translation>
    </message>
    <message>
        <source>a sustained output run does not test the gauge against energy</source>
        <translation>un essai de puissance soutenue n’éprouve pas la jauge par l’énergie</translation>
    </message>
    <message>
        <source>a peak output run does not test the gauge against energy</source>
        <translation>un essai de puissance de crête n’éprouve pas la jauge par l’énergie</translation>
    </message>
    <message>
        <source>a standby run does not test the gauge against energy</source>
        <translation>un essai de veille n’éprouve pas la jauge par l’énergie</translation>
    </message>
    <message>
        <source>the run ended by cut-off: its shares of energy and time tell more</source>
        <translation>l’essai a fini par la coupure&#xa0;: ses parts d’énergie et de temps en disent plus</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>moins de deux relevés de l’index</translation>
    </message>
    <message>
        <source>the gauge and the register have not been read together twice yet</source>
        <translation>la jauge et l’index n’ont pas encore été relevés deux fois ensemble</translation>
    </message>
    <message>
        <source>the gauge has not fallen by %1 points yet</source>
        <translation>la jauge n’a pas encore baissé de %1 points</translation>
    </message>
    <message>
        <source>nothing has been delivered yet</source>
        <translation>rien n’a encore été délivré</translation>
    </message>
    <message>
        <source>%1 is %2 before the readings let the cut-off be expected (%3)</source>
        <translation>%1 précède de %2 la coupure que les relevés laissent attendre (%3)</translation>
    </message>
    <message>
        <source>%1 is %2 after the readings let the cut-off be expected (%3)</source>
        <translation>%1 suit de %2 la coupure que les relevés laissent attendre (%3)</translation>
    </message>
    <message>
        <source>%1 it went off about %2, not at %3</source>
        <translation>%1, elle s’est coupée vers %2, non à %3</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a charge run</source>
        <translation>seule une décharge ou une décharge à vide a une coupure à prévoir&#x202f;; ceci est un essai de recharge</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a sustained output run</source>
        <translation>seule une décharge ou une décharge à vide a une coupure à prévoir&#x202f;; ceci est un essai de puissance soutenue</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a peak output run</source>
        <translation>seule une décharge ou une décharge à vide a une coupure à prévoir&#x202f;; ceci est un essai de puissance de crête</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a standby run</source>
        <translation>seule une décharge ou une décharge à vide a une coupure à prévoir&#x202f;; ceci est un essai de veille</translation>
    </message>
    <message>
        <source>the run has ended: cut-off seen</source>
        <translation>l’essai est terminé&#xa0;: coupure vue</translation>
    </message>
    <message>
        <source>the run has ended: found off</source>
        <translation>l’essai est terminé&#xa0;: trouvée éteinte</translation>
    </message>
    <message>
        <source>the run has ended: stopped by tester</source>
        <translation>l’essai est terminé&#xa0;: arrêté par le testeur</translation>
    </message>
    <message>
        <source>there are no readings yet</source>
        <translation>il n’y a encore aucun relevé</translation>
    </message>
    <message>
        <source>the cut-off was seen; end the run</source>
        <translation>la coupure a été vue&#x202f;; terminez l’essai</translation>
    </message>
    <message>
        <source>the output tripped and has not been switched on again; mark when it is</source>
        <translation>la sortie a déclenché et n’a pas été réarmée&#x202f;; posez un repère quand elle l’est</translation>
    </message>
    <message>
        <source>the gauge has no lower value to show</source>
        <translation>la jauge n’a plus de valeur plus basse à montrer</translation>
    </message>
    <message>
        <source>the gauge falls so slowly that its next step may be more than a year away</source>
        <translation>la jauge baisse si lentement que son prochain pas peut être à plus d’un an</translation>
    </message>
    <message>
        <source>The reading at %1 threw the forecast over: before it the cut-off was expected %2.</source>
        <translation>Le relevé de %1 a renversé la prévision&#xa0;: avant lui, la coupure était attendue %2.</translation>
    </message>
    <message>
        <source>if the gauge is right</source>
        <translation>si la jauge est juste</translation>
    </message>
    <message>
        <source>if the gauge is wrong</source>
        <translation>si la jauge est fausse</translation>
    </message>
    <message>
        <source>whichever is right</source>
        <translation>que l’une ou l’autre ait raison</translation>
    </message>
    <message>
        <source>overdue by %1 min</source>
        <translation>en retard de %1 min</translation>
    </message>
    <message>
        <source>overdue by %1 h</source>
        <translation>en retard de %1 h</translation>
    </message>
    <message>
        <source>within %1 min</source>
        <translation>d’ici %1 min</translation>
    </message>
    <message>
        <source>within %1 h</source>
        <translation>d’ici %1 h</translation>
    </message>
    <message>
        <source>in %1 to %2 min</source>
        <translation>dans %1 à %2 min</translation>
    </message>
    <message>
        <source>in %1 to %2 h</source>
        <translation>dans %1 à %2 h</translation>
    </message>
    <message>
        <source>The register has not been read yet: read it together with the gauge.</source>
        <translation>L’index n’a pas encore été relevé&#xa0;: relevez-le avec la jauge.</translation>
    </message>
    <message>
        <source>The register has not been read since %1, the gauge has: read both together.</source>
        <translation>L’index n’a pas été relevé depuis %1, la jauge si&#xa0;: relevez les deux ensemble.</translation>
    </message>
    <message>
        <source>The gauge has not been read yet: read it together with the register.</source>
        <translation>La jauge n’a pas encore été relevée&#xa0;: relevez-la avec l’index.</translation>
    </message>
    <message>
        <source>The gauge has not been read since %1, the register has: read both together.</source>
        <translation>La jauge n’a pas été relevée depuis %1, l’index si&#xa0;: relevez les deux ensemble.</translation>
    </message>
    <message>
        <source>The cut-off was expected by %1: look whether the output is still on, and read gauge and register.</source>
        <translation>La coupure était attendue à %1 au plus tard&#xa0;: regardez si la sortie est encore active, et relevez jauge et index.</translation>
    </message>
    <message>
        <source>Read often now, each %1 min: the cut-off is expected %2, and a cut-off that is seen gives the run time to the minute.</source>
        <translation>Relevez souvent maintenant, toutes les %1 min&#xa0;: la coupure est attendue %2, et une coupure vue donne la durée à la minute près.</translation>
    </message>
    <message>
        <source>Read often from %1, each %2 min: the cut-off is expected %3.</source>
        <translation>Relevez souvent à partir de %1, toutes les %2 min&#xa0;: la coupure est attendue %3.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): it tells a bent gauge from a straight one.</source>
        <translation>Relevez index et jauge ensemble vers %1 % (attendu %2)&#xa0;: cela distingue une jauge courbe d’une jauge droite.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: it tells a bent gauge from a straight one.</source>
        <translation>Relevez index et jauge ensemble vers %1 %&#xa0;: cela distingue une jauge courbe d’une jauge droite.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): it shows how the gauge runs into its end, and narrows the cut-off most.</source>
        <translation>Relevez index et jauge ensemble vers %1 % (attendu %2)&#xa0;: cela montre comment la jauge arrive à sa fin, et resserre le plus la coupure.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: it shows how the gauge runs into its end, and narrows the cut-off most.</source>
        <translation>Relevez index et jauge ensemble vers %1 %&#xa0;: cela montre comment la jauge arrive à sa fin, et resserre le plus la coupure.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): what is delivered after that is the gauge&apos;s hidden reserve.</source>
        <translation>Relevez index et jauge ensemble vers %1 % (attendu %2)&#xa0;: ce qui est délivré ensuite est la réserve cachée de la jauge.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: what is delivered after that is the gauge&apos;s hidden reserve.</source>
        <translation>Relevez index et jauge ensemble vers %1 %&#xa0;: ce qui est délivré ensuite est la réserve cachée de la jauge.</translation>
    </message>
    <message>
        <source>The gauge has not fallen enough to tell anything yet: read gauge and register together once it has fallen by a few points.</source>
        <translation>La jauge n’a pas encore assez baissé pour dire quelque chose&#xa0;: relevez jauge et index ensemble quand elle aura baissé de quelques points.</translation>
    </message>
    <message>
        <source>The gauge has come to its lowest values: each reading of the register from now on measures what is left when it shows nothing.</source>
        <translation>La jauge est arrivée à ses valeurs les plus basses&#xa0;: chaque relevé de l’index mesure désormais ce qui reste quand elle ne montre plus rien.</translation>
    </message>
    <message>
        <source>assumes that the load stays near %1 W</source>
        <translation>suppose que la charge reste vers %1 W</translation>
    </message>
    <message>
        <source>assumes that the load goes on as it has, %1 W in the mean</source>
        <translation>suppose que la charge continue comme avant, %1 W en moyenne</translation>
    </message>
    <message>
        <source>allows for a load that stays near %1 W and for one that returns to %2 W in the mean; a step yet to come cannot be foreseen</source>
        <translation>tient compte d’une charge qui reste vers %1 W et d’une charge qui revient à %2 W en moyenne&#x202f;; un palier à venir ne peut être prévu</translation>
    </message>
    <message>
        <source>holds if the gauge is right, as the earlier drains leave less than 2 % for a wrong one</source>
        <translation>vaut si la jauge est juste, car les décharges antérieures laissent moins de 2 % à une jauge fausse</translation>
    </message>
    <message>
        <source>holds if the gauge is right, as readings and label leave less than 2 % for a wrong one</source>
        <translation>vaut si la jauge est juste, car relevés et énergie assignée laissent moins de 2 % à une jauge fausse</translation>
    </message>
    <message>
        <source>holds if the gauge is wrong, as readings and label leave less than 2 % for a right one</source>
        <translation>vaut si la jauge est fausse, car relevés et énergie assignée laissent moins de 2 % à une jauge juste</translation>
    </message>
    <message>
        <source>holds whether the gauge is right or wrong</source>
        <translation>vaut que la jauge soit juste ou fausse</translation>
    </message>
    <message>
        <source>asks no gauge, so it holds whether it is right or wrong</source>
        <translation>n’utilise aucune jauge, et vaut donc qu’elle soit juste ou fausse</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>d’après la jauge de cet essai, sans dépasser les %1 reçus par une recharge antérieure de la coupure au plein</translation>
    </message>
    <message>
        <source>from the unit&apos;s label alone, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>d’après la seule énergie assignée de la station, sans dépasser les %1 reçus par une recharge antérieure de la coupure au plein</translation>
    </message>
    <message>
        <source>from what the unit was charged with, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>d’après ce qui a été rechargé dans la station, sans dépasser les %1 reçus par une recharge antérieure de la coupure au plein</translation>
    </message>
    <message>
        <source>from the unit&apos;s label alone</source>
        <translation>d’après la seule énergie assignée de la station</translation>
    </message>
    <message>
        <source>from what the unit was charged with</source>
        <translation>d’après ce qui a été rechargé dans la station</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge</source>
        <translation>d’après la jauge de cet essai</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge and time alone, without a register: assumes a steady load</source>
        <translation>d’après la jauge et le temps seuls de cet essai, sans index&#xa0;: suppose une charge constante</translation>
    </message>
    <message>
        <source>from earlier drains of the unit</source>
        <translation>d’après les décharges antérieures de la station</translation>
    </message>
    <message>
        <source>from earlier drains of the unit, with which this run&apos;s gauge agrees</source>
        <translation>d’après les décharges antérieures de la station, avec lesquelles la jauge de cet essai s’accorde</translation>
    </message>
    <message>
        <source>from earlier drains of the unit and this run&apos;s gauge, which disagree</source>
        <translation>d’après les décharges antérieures de la station et la jauge de cet essai, qui se contredisent</translation>
    </message>
    <message>
        <source>allows for a gauge that is bent, offset, ends early, falls too fast, lingers, sticks, jumps, or is blind to the unit&apos;s own consumption</source>
        <translation>tient compte d’une jauge courbe, décalée, qui finit tôt, baisse trop vite, traîne, se fige, saute ou ne voit pas la consommation propre de la station</translation>
    </message>
    <message>
        <source>the range holds both</source>
        <translation>la fourchette contient les deux</translation>
    </message>
    <message>
        <source>±%1 % taken for a meter whose error limit is not stated</source>
        <translation>±%1 % supposé pour un compteur dont la limite d’erreur n’est pas précisée</translation>
    </message>
    <message>
        <source>%1, and no earlier drain of the unit tells</source>
        <translation>%1, et aucune décharge antérieure de la station ne le dit</translation>
    </message>
    <message>
        <source>it has already delivered more than the readings and the unit&apos;s label allow for; read often now</source>
        <translation>elle a déjà délivré plus que ne le permettent les relevés et l’énergie assignée de la station&#x202f;; relevez souvent maintenant</translation>
    </message>
    <message>
        <source>the load is so small that the end may be more than a year away</source>
        <translation>la charge est si petite que la fin peut être à plus d’un an</translation>
    </message>
    <message>
        <source>the gauge has not been read yet</source>
        <translation>la jauge n’a pas encore été relevée</translation>
    </message>
    <message>
        <source>the gauge has not been read twice with the register yet</source>
        <translation>la jauge n’a pas encore été relevée deux fois avec l’index</translation>
    </message>
    <message>
        <source>the gauge has not fallen yet</source>
        <translation>la jauge n’a pas encore baissé</translation>
    </message>
    <message>
        <source>no time passed while the gauge fell</source>
        <translation>aucun temps n’a passé pendant que la jauge baissait</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dim.</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun.</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar.</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mer.</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jeu.</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>ven.</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sam.</translation>
    </message>
    <message>
        <source>the gauge should have fallen by %1 points</source>
        <translation>la jauge devrait avoir baissé de %1 points</translation>
    </message>
    <message>
        <source>the gauge falls so slowly that %1 points less may be more than a year away</source>
        <translation>la jauge baisse si lentement que %1 points de moins peuvent être à plus d’un an</translation>
    </message>
    <message>
        <source>the gauge cannot fall by another %1 points</source>
        <translation>la jauge ne peut plus baisser de %1 points</translation>
    </message>
    <message>
        <source>the reading before the forecast cut-off has been taken</source>
        <translation>le relevé d’avant la coupure prévue a été fait</translation>
    </message>
    <message>
        <source>%1 min before the earliest cut-off forecast</source>
        <translation>%1 min avant la coupure prévue au plus tôt</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>l’essai est terminé</translation>
    </message>
    <message>
        <source>%1 min after the last reading</source>
        <translation>%1 min après le dernier relevé</translation>
    </message>
    <message>
        <source>no reminder is set</source>
        <translation>aucun rappel n’est réglé</translation>
    </message>
</context>
<context>
    <name>foreign_tables</name>
    <message>
        <source>text, %1, columns end at a tab</source>
        <translation>texte, %1, colonnes séparées par tabulation</translation>
    </message>
    <message>
        <source>text, %1, columns end at a semicolon</source>
        <translation>texte, %1, colonnes séparées par point-virgule</translation>
    </message>
    <message>
        <source>text, %1, columns end at an upright bar</source>
        <translation>texte, %1, colonnes séparées par barre verticale</translation>
    </message>
    <message>
        <source>text, %1, columns end at a comma</source>
        <translation>texte, %1, colonnes séparées par virgule</translation>
    </message>
    <message>
        <source>text, %1, columns end at several blanks</source>
        <translation>texte, %1, colonnes séparées par plusieurs espaces</translation>
    </message>
    <message>
        <source>this is no table: neither a workbook nor a text</source>
        <translation>ce n’est pas un tableau&#xa0;: ni un classeur ni un texte</translation>
    </message>
    <message>
        <source>choose an XLSX or ODS workbook, or a text with columns</source>
        <translation>choisissez un classeur XLSX ou ODS, ou un texte à colonnes</translation>
    </message>
    <message>
        <source>it holds no table</source>
        <translation>il ne contient aucun tableau</translation>
    </message>
    <message>
        <source>copy the cells of the table, with their head</source>
        <translation>copiez les cellules du tableau, avec leur en-tête</translation>
    </message>
    <message>
        <source>web page</source>
        <translation>page web</translation>
    </message>
    <message>
        <source>the workbook has a password</source>
        <translation>le classeur a un mot de passe</translation>
    </message>
    <message>
        <source>save it without one, or copy its cells and paste them</source>
        <translation>enregistrez-le sans mot de passe, ou copiez ses cellules et collez-les</translation>
    </message>
    <message>
        <source>ODS workbook</source>
        <translation>classeur ODS</translation>
    </message>
    <message>
        <source>the dates name no year (day %1, month %2)</source>
        <translation>les dates ne nomment aucune année (jour %1, mois %2)</translation>
    </message>
    <message>
        <source>the date `%1` cannot be read</source>
        <translation>la date `%1` est illisible</translation>
    </message>
    <message>
        <source>it has no time</source>
        <translation>elle n’a pas d’heure</translation>
    </message>
    <message>
        <source>the time `%1` counts from the start, but in no unit</source>
        <translation>le temps `%1` compte depuis le début, mais sans unité</translation>
    </message>
    <message>
        <source>the time `%1` cannot be read</source>
        <translation>l’heure `%1` est illisible</translation>
    </message>
    <message>
        <source>`%1` is a date without a time</source>
        <translation>`%1` est une date sans heure</translation>
    </message>
    <message>
        <source>from row %1 on, behind an empty row, the figures begin anew: this may be another run</source>
        <translation>à partir de la ligne %1, après une ligne vide, les chiffres recommencent&#xa0;: c’est peut-être un autre essai</translation>
    </message>
    <message>
        <source>`%1` above row %2 is taken for a heading within the run</source>
        <translation>`%1` au-dessus de la ligne %2 est pris pour un titre dans l’essai</translation>
    </message>
    <message>
        <source>the time %1 does not exist, as the clocks went forward</source>
        <translation>l’heure %1 n’existe pas, car les horloges ont été avancées</translation>
    </message>
    <message>
        <source>the time %1 cannot be read</source>
        <translation>l’heure %1 est illisible</translation>
    </message>
    <message>
        <source>times that begin with 0:00 may be times of day, or count from the start</source>
        <translation>des temps qui commencent par 0:00 peuvent être des heures du jour, ou compter depuis le début</translation>
    </message>
    <message>
        <source>the times count from the start of the run, and nothing says when that was</source>
        <translation>les temps comptent depuis le début de l’essai, et rien ne dit quand c’était</translation>
    </message>
    <message>
        <source>the times count from the start of run %1, and nothing says when that was</source>
        <translation>les temps comptent depuis le début de l’essai %1, et rien ne dit quand c’était</translation>
    </message>
    <message>
        <source>the times of the run name no date</source>
        <translation>les heures de l’essai ne nomment aucune date</translation>
    </message>
    <message>
        <source>the times of run %1 name no date</source>
        <translation>les heures de l’essai %1 ne nomment aucune date</translation>
    </message>
    <message>
        <source>no date is known for it</source>
        <translation>aucune date n’est connue pour cela</translation>
    </message>
    <message>
        <source>row %1: %2 lies before %3, so the clock or the date was never set</source>
        <translation>ligne %1&#xa0;: %2 précède %3, l’horloge ou la date n’a donc jamais été réglée</translation>
    </message>
    <message>
        <source>row %1: %2 lies in the future</source>
        <translation>ligne %1&#xa0;: %2 est dans le futur</translation>
    </message>
    <message>
        <source>where the time of day falls below that of the row before, midnight was passed</source>
        <translation>là où l’heure du jour tombe sous celle de la ligne d’avant, minuit a été passé</translation>
    </message>
    <message>
        <source>the rows are not in order of time; they are put in order</source>
        <translation>les lignes ne sont pas dans l’ordre du temps&#x202f;; elles y sont mises</translation>
    </message>
    <message>
        <source>its cells are dates with a time</source>
        <translation>ses cellules sont des dates avec heure</translation>
    </message>
    <message>
        <source>its cells are times of day</source>
        <translation>ses cellules sont des heures du jour</translation>
    </message>
    <message>
        <source>its cells are dates</source>
        <translation>ses cellules sont des dates</translation>
    </message>
    <message>
        <source>its cells name %1</source>
        <translation>ses cellules nomment&#xa0;: %1</translation>
    </message>
    <message>
        <source>its cells are words</source>
        <translation>ses cellules sont des mots</translation>
    </message>
    <message>
        <source>`%1` has words in its cells</source>
        <translation>`%1` a des mots dans ses cellules</translation>
    </message>
    <message>
        <source>another column was named for it</source>
        <translation>une autre colonne a été nommée pour cela</translation>
    </message>
    <message>
        <source>%1 and %2 could both be the %3</source>
        <translation>%1 et %2 pourraient toutes deux être&#xa0;: %3</translation>
    </message>
    <message>
        <source>no column is known to hold the time</source>
        <translation>aucune colonne n’est connue pour contenir l’heure</translation>
    </message>
    <message>
        <source>no column is known to hold the gauge or the register</source>
        <translation>aucune colonne n’est connue pour contenir la jauge ou l’index</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>column %1 (`%2`)</source>
        <translation>colonne %1 (`%2`)</translation>
    </message>
    <message>
        <source>as you said</source>
        <translation>comme vous l’avez dit</translation>
    </message>
    <message>
        <source>its cells are plain numbers, so they count from the start</source>
        <translation>ses cellules sont de simples nombres, ils comptent donc depuis le début</translation>
    </message>
    <message>
        <source>a gauge of `%1` may be a share of 1 or percent</source>
        <translation>une jauge de `%1` peut être une part de 1 ou des pour cent</translation>
    </message>
    <message>
        <source>`%1` is a line of totals</source>
        <translation>`%1` est une ligne de totaux</translation>
    </message>
    <message>
        <source>it has no value</source>
        <translation>elle n’a pas de valeur</translation>
    </message>
    <message>
        <source>`%1` has no time</source>
        <translation>`%1` n’a pas d’heure</translation>
    </message>
    <message>
        <source>the %1 `%2` is no number; kept as a remark</source>
        <translation>%1&#xa0;: `%2` n’est pas un nombre&#x202f;; gardé comme remarque</translation>
    </message>
    <message>
        <source>a gauge in %1 is not understood; kept as a remark</source>
        <translation>une jauge en %1 n’est pas comprise&#x202f;; gardée comme remarque</translation>
    </message>
    <message>
        <source>a gauge of %1 lies outside 0 to 100 %; kept as a remark</source>
        <translation>une jauge de %1 est hors de 0 à 100 %&#x202f;; gardée comme remarque</translation>
    </message>
    <message>
        <source>the register in %1 has no unit</source>
        <translation>l’index dans %1 n’a pas d’unité</translation>
    </message>
    <message>
        <source>%1 is no unit of the %2; kept as a remark</source>
        <translation>%1 n’est pas une unité (%2)&#x202f;; gardé comme remarque</translation>
    </message>
    <message>
        <source>a register below 0 is not taken; kept as a remark</source>
        <translation>un index sous 0 n’est pas repris&#x202f;; gardé comme remarque</translation>
    </message>
    <message>
        <source>a power below 0 is not taken; kept as a remark</source>
        <translation>une puissance sous 0 n’est pas reprise&#x202f;; gardée comme remarque</translation>
    </message>
    <message>
        <source>row %1: `%2` is taken for the mark %3</source>
        <translation>ligne %1&#xa0;: `%2` est pris pour le repère %3</translation>
    </message>
    <message>
        <source>no row of the table has a time and a value</source>
        <translation>aucune ligne du tableau n’a une heure et une valeur</translation>
    </message>
    <message>
        <source>the workbook is damaged (its part %1)</source>
        <translation>le classeur est abîmé (sa partie %1)</translation>
    </message>
    <message>
        <source>open it in the program that made it and save it anew</source>
        <translation>ouvrez-le dans le programme qui l’a fait et enregistrez-le à nouveau</translation>
    </message>
    <message>
        <source>list of contents</source>
        <translation>table des matières</translation>
    </message>
    <message>
        <source>the workbook unpacks to more than %1 MB</source>
        <translation>le classeur se déplie à plus de %1 MB</translation>
    </message>
    <message>
        <source>keep the sheet with the readings alone, or copy its cells and paste them</source>
        <translation>gardez la seule feuille des relevés, ou copiez ses cellules et collez-les</translation>
    </message>
    <message>
        <source>XLSX workbook</source>
        <translation>classeur XLSX</translation>
    </message>
    <message>
        <source>there is nothing in it</source>
        <translation>il n’y a rien dedans</translation>
    </message>
    <message>
        <source>choose a table of readings</source>
        <translation>choisissez un tableau de relevés</translation>
    </message>
    <message>
        <source>the workbook has a password, or is of the old form .xls</source>
        <translation>le classeur a un mot de passe, ou est de l’ancien format .xls</translation>
    </message>
    <message>
        <source>save it as XLSX or ODS without a password, or copy its cells and paste them</source>
        <translation>enregistrez-le en XLSX ou ODS sans mot de passe, ou copiez ses cellules et collez-les</translation>
    </message>
    <message>
        <source>this zip file is no workbook</source>
        <translation>ce fichier zip n’est pas un classeur</translation>
    </message>
    <message>
        <source>the table is larger than %1 rows, %2 columns or %3 cells</source>
        <translation>le tableau dépasse %1 lignes, %2 colonnes ou %3 cellules</translation>
    </message>
    <message>
        <source>import the log of a meter with Run, Import log; of another table keep the part with the readings</source>
        <translation>importez le journal d’un compteur avec Essai, Importer un journal&#x202f;; d’un autre tableau, gardez la partie des relevés</translation>
    </message>
    <message>
        <source>no cell of it holds anything</source>
        <translation>aucune de ses cellules ne contient quelque chose</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: its point is the decimal sign, or parts the thousands</source>
        <translation>`%1` peut se lire de deux façons&#xa0;: son point est le signe décimal, ou sépare les milliers</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: its comma is the decimal sign, or parts the thousands</source>
        <translation>`%1` peut se lire de deux façons&#xa0;: sa virgule est le signe décimal, ou sépare les milliers</translation>
    </message>
    <message>
        <source>some numbers have a point as decimal sign and some a comma</source>
        <translation>certains nombres ont un point comme signe décimal, d’autres une virgule</translation>
    </message>
    <message>
        <source>the decimal sign is a comma</source>
        <translation>le signe décimal est une virgule</translation>
    </message>
    <message>
        <source>the dates may begin with the day or the month</source>
        <translation>les dates peuvent commencer par le jour ou le mois</translation>
    </message>
    <message>
        <source>`%1` may begin with the day or the month</source>
        <translation>`%1` peut commencer par le jour ou le mois</translation>
    </message>
    <message>
        <source>dates begin with the day, as one of them can be read in no other way</source>
        <translation>les dates commencent par le jour, car l’une d’elles ne peut se lire autrement</translation>
    </message>
    <message>
        <source>dates begin with the month, as one of them can be read in no other way</source>
        <translation>les dates commencent par le mois, car l’une d’elles ne peut se lire autrement</translation>
    </message>
    <message>
        <source>the table has no row of heads; its columns are told by what they hold</source>
        <translation>le tableau n’a pas de ligne d’en-têtes&#x202f;; ses colonnes sont reconnues à leur contenu</translation>
    </message>
    <message numerus="yes">
        <source>%n runs stand side by side</source>
        <comment>%n run stands by itself</comment>
        <translation>
            <numerusform>%n essai est seul</numerusform>
            <numerusform>%n essais sont côte à côte</numerusform>
        </translation>
    </message>
    <message>
        <source>another head stands in row %1</source>
        <translation>un autre en-tête est à la ligne %1</translation>
    </message>
    <message numerus="yes">
        <source>%n formulas have no value kept with them, so that their cells are empty; save the workbook once in its program</source>
        <comment>%n formula has no value kept with it, so that its cell is empty; save the workbook once in its program</comment>
        <translation>
            <numerusform>%n formule est sans valeur enregistrée, sa cellule est donc vide&#x202f;; enregistrez le classeur une fois dans son programme</numerusform>
            <numerusform>%n formules sont sans valeur enregistrée, leurs cellules sont donc vides&#x202f;; enregistrez le classeur une fois dans son programme</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` is not needed</source>
        <translation>`%1` n’est pas nécessaire</translation>
    </message>
    <message>
        <source>`%1` names it</source>
        <translation>`%1` le nomme</translation>
    </message>
    <message>
        <source>`%1` names it, in %2</source>
        <translation>`%1` le nomme, en %2</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>inutilisé</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>écoulé</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>second index</translation>
    </message>
    <message>
        <source>power of the load</source>
        <translation>puissance de la charge</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>puissance affichée par la station</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>run</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>station</translation>
    </message>
</context>
<context>
    <name>formats</name>
    <message numerus="yes">
        <source>there are %n keys that are not known</source>
        <comment>there is %n key that is not known</comment>
        <translation>
            <numerusform>il y a %n clé inconnue</numerusform>
            <numerusform>il y a %n clés inconnues</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n appliances</source>
        <comment>there is %n appliance</comment>
        <translation>
            <numerusform>il y a %n appareil</numerusform>
            <numerusform>il y a %n appareils</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n readings</source>
        <comment>there is %n reading</comment>
        <translation>
            <numerusform>il y a %n relevé</numerusform>
            <numerusform>il y a %n relevés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n points of correction</source>
        <comment>there is %n point of correction</comment>
        <translation>
            <numerusform>il y a %n point de correction</numerusform>
            <numerusform>il y a %n points de correction</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gauge</name>
    <message>
        <source>no time passed with the output on</source>
        <translation>aucun temps n’a passé avec la sortie active</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 points</translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <comment>%n point</comment>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
    <message>
        <source>The least error of the gauge is not known: %1.</source>
        <translation>L’erreur minimale de la jauge est inconnue&#xa0;: %1.</translation>
    </message>
    <message>
        <source>a %1 run does not test the gauge against delivered energy</source>
        <translation>un essai de type %1 n’éprouve pas la jauge par l’énergie délivrée</translation>
    </message>
    <message>
        <source>the gauge and the register have not been read together twice</source>
        <translation>la jauge et l’index n’ont pas été relevés deux fois ensemble</translation>
    </message>
    <message>
        <source>the bounds could not be resolved</source>
        <translation>les bornes n’ont pas pu être résolues</translation>
    </message>
    <message>
        <source>whatever the losses are</source>
        <translation>quelles que soient les pertes</translation>
    </message>
    <message>
        <source>An accurate gauge could have shown all of this.</source>
        <translation>Une jauge juste aurait pu montrer tout cela.</translation>
    </message>
    <message>
        <source>whatever the losses are; rated energy or the meter&apos;s limit is not stated, so any battery was allowed</source>
        <translation>quelles que soient les pertes&#x202f;; l’énergie assignée ou la limite du compteur n’est pas précisée, toute batterie était donc admise</translation>
    </message>
    <message>
        <source>The gauge is wrong by at least %1 somewhere, whatever the losses are.</source>
        <translation>La jauge se trompe quelque part d’au moins %1, quelles que soient les pertes.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>doute</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>défaut</translation>
    </message>
    <message>
        <source>above 100</source>
        <translation>au-dessus de 100</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls faster before than after.</source>
        <translation>La jauge est courbe&#xa0;: elle montre jusqu’à %1 de plus qu’une jauge droite, le plus vers %2 (%3), et baisse plus vite avant qu’après.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls more slowly before than after.</source>
        <translation>La jauge est courbe&#xa0;: elle montre jusqu’à %1 de plus qu’une jauge droite, le plus vers %2 (%3), et baisse plus lentement avant qu’après.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls faster before than after.</source>
        <translation>La jauge est courbe&#xa0;: elle montre jusqu’à %1 de moins qu’une jauge droite, le plus vers %2 (%3), et baisse plus vite avant qu’après.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls more slowly before than after.</source>
        <translation>La jauge est courbe&#xa0;: elle montre jusqu’à %1 de moins qu’une jauge droite, le plus vers %2 (%3), et baisse plus lentement avant qu’après.</translation>
    </message>
    <message>
        <source>two lines with slopes in the ratio %1 instead of one, p %2; no no-load draw makes the readings as straight: at best one line leaves %3 times as much</source>
        <translation>deux droites dont les pentes sont dans le rapport %1 au lieu d’une, p %2&#x202f;; aucune consommation à vide ne rend les relevés aussi droits&#xa0;: au mieux, une droite laisse %3 fois autant</translation>
    </message>
    <message>
        <source>Gauge moves in steps of %1, not of %2 as stated.</source>
        <translation>La jauge va par pas de %1, non de %2 comme précisé.</translation>
    </message>
    <message numerus="yes">
        <source>all %n drops are multiples of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; threshold %3 pt</source>
        <comment>the %n drop is a multiple of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; threshold %3 pt</comment>
        <translation>
            <numerusform>la %n baisse est un multiple de %1, et les valeurs se dispersent de %2 pt autour d’une jauge linéaire, comme le font de tels pas&#x202f;; seuil %3 pt</numerusform>
            <numerusform>les %n baisses sont toutes des multiples de %1, et les valeurs se dispersent de %2 pt autour d’une jauge linéaire, comme le font de tels pas&#x202f;; seuil %3 pt</numerusform>
        </translation>
    </message>
    <message>
        <source>At %1 shown, %2 had been delivered though the gauge implies %3: the gauge lags, or the battery holds more than its label.</source>
        <translation>À %1 affichés, %2 avaient été délivrés alors que la jauge implique %3&#xa0;: la jauge est en retard, ou la batterie contient plus qu’annoncé.</translation>
    </message>
    <message>
        <source>beyond the meter&apos;s limit, the register step, one gauge step and %1 % for a gauge that counts charge by %2 at %3</source>
        <translation>%2 de plus, à %3, que n’expliquent la limite du compteur, le pas de l’index, un pas de jauge et %1 % pour une jauge qui compte la charge électrique</translation>
    </message>
    <message>
        <source>Output was found off at %1; nobody saw when it went off, so the run time is a bracket.</source>
        <translation>La sortie a été trouvée éteinte à %1&#x202f;; personne n’a vu quand elle s’est coupée, la durée est donc un encadrement.</translation>
    </message>
    <message>
        <source>run time %1</source>
        <translation>durée %1</translation>
    </message>
    <message>
        <source>run time %1: %2</source>
        <translation>durée %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>After the gauge had come down to %1, at least %2 and at most %3 more were delivered.</source>
        <translation>Après que la jauge était descendue à %1, au moins %2 et au plus %3 de plus ont été délivrés.</translation>
    </message>
    <message>
        <source>the rounding of the gauge explains up to %1; threshold %2</source>
        <translation>l’arrondi de la jauge explique jusqu’à %1&#x202f;; seuil %2</translation>
    </message>
    <message>
        <source>Between %1 and %2 the register rose by only %3 while the gauge fell by %4, as after some %5: the register may have been zeroed unseen and have passed its old value again, so that %6 or more are missing, or the gauge jumped; this run cannot tell which.</source>
        <translation>Entre %1 et %2, l’index n’a monté que de %3 tandis que la jauge baissait de %4, comme après environ %5&#xa0;: l’index a peut-être été remis à zéro sans témoin et a repassé son ancienne valeur, si bien qu’il manque %6 ou plus, ou la jauge a sauté&#x202f;; cet essai ne peut dire lequel.</translation>
    </message>
    <message>
        <source>fell by %1 pt more than the steepest accurate gauge, going by the rest of the run; doubted beyond %2 pt where the whole later register could have flowed in the gap</source>
        <translation>baisse de %1 pt de plus que la jauge juste la plus raide, d’après le reste de l’essai&#x202f;; mise en doute au-delà de %2 pt si tout l’index ultérieur a pu passer dans le trou</translation>
    </message>
    <message>
        <source>no unit with a no-load draw of 0 or more and a battery of at most 110 % of its label keeps the gauge within %1 pt at all of these readings; threshold %2 pt</source>
        <translation>aucune station à consommation à vide de 0 ou plus et à batterie d’au plus 110 % de son énergie assignée ne tient la jauge à %1 pt près à tous ces relevés&#x202f;; seuil %2 pt</translation>
    </message>
    <message>
        <source>Gauge fell from %1 to %2 between %3 and %4, where energy and time explain at most %5.</source>
        <translation>La jauge a baissé de %1 à %2 entre %3 et %4, là où énergie et temps expliquent au plus %5.</translation>
    </message>
    <message>
        <source>fell by %1 pt more than the steepest accurate gauge, whatever the no-load draw; threshold %2 pt</source>
        <translation>baisse de %1 pt de plus que la jauge juste la plus raide, quelle que soit la consommation à vide&#x202f;; seuil %2 pt</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, it probably does not count the unit&apos;s own consumption: it leaves room for at most %1 W beside a mean load of %2 W.</source>
        <translation>Si la jauge est linéaire en énergie stockée, elle ne compte probablement pas la consommation propre de la station&#xa0;: elle laisse place à au plus %1 W à côté d’une charge moyenne de %2 W.</translation>
    </message>
    <message>
        <source>fitted no-load draw %1, an interval that reaches 0 or nearly so; told when its upper end is at most %2 W</source>
        <translation>consommation à vide ajustée %1, un intervalle qui atteint 0 ou presque&#x202f;; signalé quand son bout supérieur est d’au plus %2 W</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and of the time of this drain had gone.</source>
        <translation>À %1 la jauge montrait %2, trop d’au moins %3&#xa0;: %4 % de l’énergie et du temps de cette décharge étaient partis.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and of the time of this drain had gone.</source>
        <translation>À %1 la jauge montrait %2, trop peu d’au moins %3&#xa0;: %4 % de l’énergie et du temps de cette décharge étaient partis.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and %5 % of the time of this drain had gone.</source>
        <translation>À %1 la jauge montrait %2, trop d’au moins %3&#xa0;: %4 % de l’énergie et %5 % du temps de cette décharge étaient partis.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and %5 % of the time of this drain had gone.</source>
        <translation>À %1 la jauge montrait %2, trop peu d’au moins %3&#xa0;: %4 % de l’énergie et %5 % du temps de cette décharge étaient partis.</translation>
    </message>
    <message>
        <source>whatever the unit takes for itself, an accurate gauge shows %1 to %2 % then; threshold %3 pt outside</source>
        <translation>quoi que la station prenne pour elle-même, une jauge juste montre alors %1 à %2 %&#x202f;; seuil %3 pt en dehors</translation>
    </message>
    <message>
        <source>Gauge rose from %1 to %2 between %3 and %4 though nothing charged the unit.</source>
        <translation>La jauge est montée de %1 à %2 entre %3 et %4 alors que rien ne rechargeait la station.</translation>
    </message>
    <message>
        <source>rose by %1 pt; threshold two gauge steps, %2 pt</source>
        <translation>montée de %1 pt&#x202f;; seuil deux pas de jauge, %2 pt</translation>
    </message>
    <message>
        <source>Off at about %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.</source>
        <translation>Éteinte vers %1 affichés&#xa0;: la jauge a fini tôt, ou la station s’est arrêtée avec de l’énergie restante&#x202f;; cet essai ne peut dire lequel.</translation>
    </message>
    <message>
        <source>Off at %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.</source>
        <translation>Éteinte à %1 affichés&#xa0;: la jauge a fini tôt, ou la station s’est arrêtée avec de l’énergie restante&#x202f;; cet essai ne peut dire lequel.</translation>
    </message>
    <message>
        <source>last gauge reading %1 at %2, %3 before the cut-off; at least %4 % then; threshold %5 %</source>
        <translation>dernier relevé de jauge %1 à %2, %3 avant la coupure&#x202f;; au moins %4 % alors&#x202f;; seuil %5 %</translation>
    </message>
    <message>
        <source>Gauge held at %1 from %2 to %3 while %4 were delivered (about %5).</source>
        <translation>La jauge est restée à %1 de %2 à %3 tandis que %4 étaient délivrés (environ %5).</translation>
    </message>
    <message>
        <source>Gauge stuck at %1 from %2 to %3 while %4 were delivered (about %5).</source>
        <translation>La jauge s’est figée à %1 de %2 à %3 tandis que %4 étaient délivrés (environ %5).</translation>
    </message>
    <message>
        <source>an accurate gauge would have fallen by at least %1 pt, whatever the no-load draw; threshold %2 pt</source>
        <translation>une jauge juste aurait baissé d’au moins %1 pt, quelle que soit la consommation à vide&#x202f;; seuil %2 pt</translation>
    </message>
    <message>
        <source>sticks (%1)</source>
        <translation>se fige (%1)</translation>
    </message>
    <message>
        <source>held at full (%1)</source>
        <translation>reste au plein (%1)</translation>
    </message>
    <message>
        <source>jumps (%1)</source>
        <translation>saute (%1)</translation>
    </message>
    <message>
        <source>rises (%1)</source>
        <translation>remonte (%1)</translation>
    </message>
    <message>
        <source>shuts off showing %1 %</source>
        <translation>s’éteint en montrant %1 %</translation>
    </message>
    <message>
        <source>reserve below 1 % (%1)</source>
        <translation>réserve sous 1 % (%1)</translation>
    </message>
    <message>
        <source>lags (%1)</source>
        <translation>en retard (%1)</translation>
    </message>
    <message>
        <source>bent (%1)</source>
        <translation>courbe (%1)</translation>
    </message>
    <message>
        <source>coarse (%1)</source>
        <translation>grossière (%1)</translation>
    </message>
    <message>
        <source>omits own consumption</source>
        <translation>omet la consommation propre</translation>
    </message>
    <message>
        <source>found off</source>
        <translation>trouvée éteinte</translation>
    </message>
    <message>
        <source>wrong by at least %1</source>
        <translation>fausse d’au moins %1</translation>
    </message>
    <message>
        <source>off by at least %1</source>
        <translation>écart d’au moins %1</translation>
    </message>
    <message>
        <source>one reading doubted (%1 %)</source>
        <translation>un relevé mis en doute (%1 %)</translation>
    </message>
    <message>
        <source>register perhaps reset (%1)</source>
        <translation>index peut-être remis à zéro (%1)</translation>
    </message>
    <message>
        <source>not judged: no gauge reading with the register</source>
        <translation>non jugée&#xa0;: aucun relevé de jauge avec l’index</translation>
    </message>
    <message>
        <source>not judged: the gauge was read once</source>
        <translation>non jugée&#xa0;: la jauge n’a été relevée qu’une fois</translation>
    </message>
    <message>
        <source>no fault found</source>
        <translation>aucun défaut trouvé</translation>
    </message>
    <message numerus="yes">
        <source>no fault in %n readings</source>
        <comment>no fault in %n reading</comment>
        <translation>
            <numerusform>aucun défaut en %n relevé</numerusform>
            <numerusform>aucun défaut en %n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>not judged: no reading between start and cut-off</source>
        <translation>non jugée&#xa0;: aucun relevé entre le début et la coupure</translation>
    </message>
    <message>
        <source>no fault found, within %1 pt</source>
        <translation>aucun défaut trouvé, à %1 pt près</translation>
    </message>
    <message numerus="yes">
        <source>no fault found, within %1 pt at %n readings</source>
        <comment>no fault found, within %1 pt at %n reading</comment>
        <translation>
            <numerusform>aucun défaut trouvé, à %1 pt près sur %n relevé</numerusform>
            <numerusform>aucun défaut trouvé, à %1 pt près sur %n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>not judged: no drain</source>
        <translation>non jugée&#xa0;: aucune décharge</translation>
    </message>
    <message>
        <source>Read gauge and register together at the start, once in the middle and at the end.</source>
        <translation>Relevez jauge et index ensemble au début, une fois au milieu et à la fin.</translation>
    </message>
    <message>
        <source>One reading of gauge and register between start and cut-off would hold the gauge against its shares.</source>
        <translation>Un relevé de jauge et d’index entre le début et la coupure confronterait la jauge à ses parts.</translation>
    </message>
    <message>
        <source>Each further reading of gauge and register between start and cut-off holds the gauge to one more point.</source>
        <translation>Chaque relevé de plus de jauge et d’index entre le début et la coupure éprouve la jauge en un point de plus.</translation>
    </message>
    <message>
        <source>A drain to cut-off would hold each of these readings against the energy that came out.</source>
        <translation>Une décharge jusqu’à la coupure confronterait chacun de ces relevés à l’énergie sortie.</translation>
    </message>
    <message>
        <source>%1 at %2 stands alone: mistyped for %3? Without it nothing speaks against the gauge.</source>
        <translation>%1 à %2 est isolé&#xa0;: faute de frappe pour %3&#x202f;? Sans lui, rien ne parle contre la jauge.</translation>
    </message>
    <message>
        <source>a slip of the pen makes %1 of %2, which fits; amend the reading if it was mistyped</source>
        <translation>une étourderie fait %1 de %2, qui convient&#x202f;; rectifiez le relevé s’il a été mal tapé</translation>
    </message>
    <message>
        <source>at %1, by the shares of energy and time gone, whatever the losses are</source>
        <translation>à %1, d’après les parts d’énergie et de temps parties, quelles que soient les pertes</translation>
    </message>
    <message>
        <source>by the shares of energy and time gone, whatever the losses are</source>
        <translation>d’après les parts d’énergie et de temps parties, quelles que soient les pertes</translation>
    </message>
    <message>
        <source>share delivered</source>
        <translation>part délivrée</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>énergie assignée</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are none</source>
        <translation>une droite s’éprouve à partir de quatre relevés de jauge et d’index, ici il n’y en a aucun</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there is one</source>
        <translation>une droite s’éprouve à partir de quatre relevés de jauge et d’index, ici il y en a un</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are two</source>
        <translation>une droite s’éprouve à partir de quatre relevés de jauge et d’index, ici il y en a deux</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are three</source>
        <translation>une droite s’éprouve à partir de quatre relevés de jauge et d’index, ici il y en a trois</translation>
    </message>
    <message>
        <source>χ² %1 for %2 degrees of freedom, p %3</source>
        <translation>χ² %1 pour %2 degrés de liberté, p %3</translation>
    </message>
    <message>
        <source>A linear gauge explains these readings (%1).</source>
        <translation>Une jauge linéaire explique ces relevés (%1).</translation>
    </message>
    <message>
        <source>No linear gauge explains these readings (%1); a varying load with a no-load draw bends the line too.</source>
        <translation>Aucune jauge linéaire n’explique ces relevés (%1)&#x202f;; une charge variable avec une consommation à vide courbe aussi la droite.</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>the gauge fell by less than five of its steps</source>
        <translation>la jauge a baissé de moins de cinq de ses pas</translation>
    </message>
    <message>
        <source>its readings lead to %1 at the cut-off, not to 0 %</source>
        <translation>ses relevés mènent à %1 à la coupure, non à 0 %</translation>
    </message>
    <message>
        <source>its readings lead back to %1 at the start, not to 100 %</source>
        <translation>ses relevés ramènent à %1 au début, non à 100 %</translation>
    </message>
    <message>
        <source>the gauge follows the load by about %1</source>
        <translation>la jauge suit la charge d’environ %1</translation>
    </message>
    <message>
        <source>a gauge that is not quite linear would change it beyond measure</source>
        <translation>une jauge pas tout à fait linéaire le changerait démesurément</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, one run could tell the unit&apos;s own draw; here it is not known: %1.</source>
        <translation>Si la jauge est linéaire en énergie stockée, un seul essai pourrait dire la consommation propre de la station&#x202f;; ici elle est inconnue&#xa0;: %1.</translation>
    </message>
    <message>
        <source>a %1 run does not tell losses from delivered energy</source>
        <translation>un essai de type %1 ne distingue pas les pertes de l’énergie délivrée</translation>
    </message>
    <message>
        <source>no meter is stated</source>
        <translation>aucun compteur n’est précisé</translation>
    </message>
    <message numerus="yes">
        <source>only %n gauge readings within the register&apos;s readings; 6 are needed</source>
        <comment>only %n gauge reading within the register&apos;s readings; 6 are needed</comment>
        <translation>
            <numerusform>seulement %n relevé de jauge parmi les relevés de l’index&#x202f;; il en faut 6</numerusform>
            <numerusform>seulement %n relevés de jauge parmi les relevés de l’index&#x202f;; il en faut 6</numerusform>
        </translation>
    </message>
    <message>
        <source>the gauge rose from %1 to %2 at %3, so it is not linear in stored energy</source>
        <translation>la jauge est montée de %1 à %2 (à %3), elle n’est donc pas linéaire en énergie stockée</translation>
    </message>
    <message>
        <source>the gauge fell by only %1 points; %2 are needed</source>
        <translation>la jauge n’a baissé que de %1 points&#x202f;; il en faut %2</translation>
    </message>
    <message>
        <source>no energy was delivered between the gauge readings</source>
        <translation>aucune énergie n’a été délivrée entre les relevés de jauge</translation>
    </message>
    <message>
        <source>the load was so steady that time and energy cannot be told apart (%1 % of the energy&apos;s spread is not linear in time, %2 % are needed); vary the load, or make a second run at another load</source>
        <translation>la charge était si constante que temps et énergie ne se distinguent pas (%1 % de la dispersion de l’énergie n’est pas linéaire en temps, il faut %2 %)&#x202f;; variez la charge, ou faites un second essai à une autre charge</translation>
    </message>
    <message>
        <source>register steps and noted minutes make a steady load look as uneven as this one (%1 Wh off a straight line in time, %2 Wh by steps and minutes alone); vary the load more</source>
        <translation>pas de l’index et minutes notées font paraître une charge constante aussi inégale que celle-ci (%1 Wh hors d’une droite en temps, %2 Wh par pas et minutes seuls)&#x202f;; variez davantage la charge</translation>
    </message>
    <message>
        <source>the gauge does not fall with delivered energy</source>
        <translation>la jauge ne baisse pas avec l’énergie délivrée</translation>
    </message>
    <message>
        <source>the gauge is not linear: its readings scatter %1 times as far as their steps explain, %2 times are allowed</source>
        <translation>la jauge n’est pas linéaire&#xa0;: ses relevés se dispersent %1 fois autant que ses pas l’expliquent, %2 fois sont admises</translation>
    </message>
    <message>
        <source>the gauge is not linear: it bulges by about %1 at half, as a gauge does that counts charge</source>
        <translation>la jauge n’est pas linéaire&#xa0;: elle bombe d’environ %1 à mi-course, comme une jauge qui compte la charge électrique</translation>
    </message>
    <message>
        <source>if the gauge is linear in stored energy</source>
        <translation>si la jauge est linéaire en énergie stockée</translation>
    </message>
    <message>
        <source>if the gauge is linear in stored energy; no interval: the error limit of the meter is not stated</source>
        <translation>si la jauge est linéaire en énergie stockée&#x202f;; sans intervalle&#xa0;: la limite d’erreur du compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 before its own consumption.</source>
        <translation>Si la jauge est linéaire en énergie stockée, la station elle-même consomme %1 (vu de la prise) et délivrerait %2 avant sa consommation propre.</translation>
    </message>
    <message>
        <source>the error limit of the meter is not stated</source>
        <translation>la limite d’erreur du compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>nothing was delivered between two register readings</source>
        <translation>rien n’a été délivré entre deux relevés de l’index</translation>
    </message>
    <message>
        <source>the gauge has not fallen</source>
        <translation>la jauge n’a pas baissé</translation>
    </message>
    <message>
        <source>from energy alone: a battery of this label holds at most %1, if the gauge is right over this run</source>
        <translation>d’après l’énergie seule&#xa0;: une batterie de cette énergie assignée contient au plus %1, si la jauge est juste sur cet essai</translation>
    </message>
    <message>
        <source>from energy alone: a battery of this label holds at most %1</source>
        <translation>d’après l’énergie seule&#xa0;: une batterie de cette énergie assignée contient au plus %1</translation>
    </message>
    <message>
        <source>not by this run&apos;s own fit, as %1</source>
        <translation>pas d’après l’ajustement propre de cet essai, car %1</translation>
    </message>
    <message>
        <source>this run&apos;s own fit is wider than half its value or outside of that</source>
        <translation>l’ajustement propre de cet essai est plus large que la moitié de sa valeur ou hors de cela</translation>
    </message>
    <message>
        <source>not sharper, as %1</source>
        <translation>pas plus précis, car %1</translation>
    </message>
    <message>
        <source>this run&apos;s own fit is wider than half its value, and %1</source>
        <translation>l’ajustement propre de cet essai est plus large que la moitié de sa valeur, et %1</translation>
    </message>
    <message>
        <source>The unit itself takes at most %1 (seen from the socket): %2.</source>
        <translation>La station elle-même prend au plus %1 (vu de la prise)&#xa0;: %2.</translation>
    </message>
    <message>
        <source>What the unit itself takes is not known: %1.</source>
        <translation>Ce que la station elle-même prend est inconnu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 if it took nothing for itself.</source>
        <translation>Si la jauge est linéaire en énergie stockée, la station elle-même consomme %1 (vu de la prise) et délivrerait %2 si elle ne prenait rien pour elle-même.</translation>
    </message>
    <message>
        <source>the gauge is at fault by about %1 points, so that anything from what was delivered to what the label holds may be</source>
        <translation>la jauge est en défaut d’environ %1 points, si bien que tout est possible entre ce qui a été délivré et ce que contient l’énergie assignée</translation>
    </message>
    <message>
        <source>the gauge is at fault by about %1 points, which this allows for</source>
        <translation>la jauge est en défaut d’environ %1 points, dont il est tenu compte</translation>
    </message>
    <message>
        <source>the run is no complete drain from full to cut-off, so nothing says how deep it was</source>
        <translation>l’essai n’est pas une décharge complète de la pleine charge à la coupure, rien ne dit donc jusqu’où il est allé</translation>
    </message>
    <message>
        <source>make a run that starts full and ends by cut-off</source>
        <translation>faites un essai qui commence plein et finit par la coupure</translation>
    </message>
    <message>
        <source>the no-load draw does not lie within its limits</source>
        <translation>la consommation à vide n’est pas entre ses limites</translation>
    </message>
    <message>
        <source>give value, lower and upper limit in W</source>
        <translation>donnez valeur, limite inférieure et supérieure en W</translation>
    </message>
</context>
<context>
    <name>gauge_curves</name>
    <message>
        <source>read the gauge more often</source>
        <translation>relevez la jauge plus souvent</translation>
    </message>
    <message>
        <source>it is no drain from full to cut-off</source>
        <translation>ce n’est pas une décharge de la pleine charge à la coupure</translation>
    </message>
    <message>
        <source>not all of its energy was read</source>
        <translation>son énergie n’a pas été relevée en entier</translation>
    </message>
    <message>
        <source>when its output went off is not known well enough</source>
        <translation>le moment où sa sortie s’est coupée n’est pas assez connu</translation>
    </message>
    <message>
        <source>its gauge was read at fewer than six depths</source>
        <translation>sa jauge a été relevée à moins de six niveaux</translation>
    </message>
    <message>
        <source>its gauge fell by less than five steps</source>
        <translation>sa jauge a baissé de moins de cinq pas</translation>
    </message>
</context>
<context>
    <name>history</name>
    <message>
        <source>undone</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>redone</source>
        <translation>rétabli</translation>
    </message>
    <message>
        <source>not all of it could be recorded</source>
        <translation>tout n’a pas pu être enregistré</translation>
    </message>
    <message>
        <source>the run was not ended</source>
        <translation>l’essai n’a pas été terminé</translation>
    </message>
    <message>
        <source>joined with %1</source>
        <translation>fusionné avec %1</translation>
    </message>
</context>
<context>
    <name>joining</name>
    <message>
        <source>the other logbook has settings of the method that this one has not; those of this one stay</source>
        <translation>l’autre carnet a des réglages de la méthode que celui-ci n’a pas&#x202f;; ceux de celui-ci restent</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>station %1</translation>
    </message>
    <message>
        <source>there is a unit %1 already, which is not the same one: it comes in as a further unit of this name</source>
        <translation>il y a déjà une station %1, qui n’est pas la même&#xa0;: elle entre comme une station de plus de ce nom</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>compteur %1</translation>
    </message>
    <message>
        <source>there is a meter %1 already, which is not the same one: it comes in as a further meter of this name</source>
        <translation>il y a déjà un compteur %1, qui n’est pas le même&#xa0;: il entre comme un compteur de plus de ce nom</translation>
    </message>
    <message>
        <source>meter %1 was withdrawn here; it comes back, as a run that comes in names it</source>
        <translation>le compteur %1 a été retiré ici&#x202f;; il revient, car un essai qui entre le nomme</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>relevé</translation>
    </message>
    <message>
        <source>the reading that it shows</source>
        <translation>le relevé qu’elle montre</translation>
    </message>
    <message>
        <source>photo %1 in %2</source>
        <translation>photo %1 (%2)</translation>
    </message>
    <message>
        <source>log %1 in %2</source>
        <translation>journal %1 (%2)</translation>
    </message>
    <message>
        <source>load list %1</source>
        <translation>liste de charges %1</translation>
    </message>
    <message>
        <source>there is another load list %1 already: it comes in as %2</source>
        <translation>il y a déjà une autre liste de charges %1&#xa0;: elle entre comme %2</translation>
    </message>
    <message>
        <source>PV sheet %1</source>
        <translation>Fiche PV %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>rated energy (Wh)</source>
        <translation>énergie assignée (Wh)</translation>
    </message>
    <message>
        <source>rated output (W)</source>
        <translation>puissance assignée (W)</translation>
    </message>
    <message>
        <source>peak output (W)</source>
        <translation>puissance de crête (W)</translation>
    </message>
    <message>
        <source>highest PV voltage (V)</source>
        <translation>tension PV max. (V)</translation>
    </message>
    <message>
        <source>highest PV current (A)</source>
        <translation>courant PV max. (A)</translation>
    </message>
    <message>
        <source>highest PV power (W)</source>
        <translation>puissance PV max. (W)</translation>
    </message>
    <message>
        <source>PV starts at (V)</source>
        <translation>démarrage PV à (V)</translation>
    </message>
    <message>
        <source>PV short-circuit current (A)</source>
        <translation>courant de court-circuit PV (A)</translation>
    </message>
    <message>
        <source>charge time (h)</source>
        <translation>temps de recharge (h)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>paid price</source>
        <translation>prix payé</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>devise</translation>
    </message>
    <message>
        <source>mass (kg)</source>
        <translation>masse (kg)</translation>
    </message>
    <message>
        <source>warranty (years)</source>
        <translation>garantie (ans)</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>chemistry</source>
        <translation>chimie</translation>
    </message>
    <message>
        <source>purchased</source>
        <translation>acheté le</translation>
    </message>
    <message>
        <source>cycles before</source>
        <translation>cycles avant</translation>
    </message>
    <message>
        <source>gauge step (%)</source>
        <translation>pas de la jauge (%)</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>étiquettes</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>step (Wh)</source>
        <translation>pas (Wh)</translation>
    </message>
    <message>
        <source>limit (%)</source>
        <translation>limite (%)</translation>
    </message>
    <message>
        <source>part of the load (%)</source>
        <translation>part propre à la charge (%)</translation>
    </message>
    <message>
        <source>span (Wh)</source>
        <translation>étendue (Wh)</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>points of the certificate</source>
        <translation>points du certificat</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norme</translation>
    </message>
    <message>
        <source>starting current (A)</source>
        <translation>courant de démarrage (A)</translation>
    </message>
    <message>
        <source>lowest load of its range (W)</source>
        <translation>plus basse charge de la plage (W)</translation>
    </message>
    <message>
        <source>highest load of its range (W)</source>
        <translation>plus haute charge de la plage (W)</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificat</translation>
    </message>
    <message>
        <source>certificate date</source>
        <translation>date du certificat</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratoire</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>valable jusqu’au</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>type</translation>
    </message>
    <message>
        <source>started full</source>
        <translation>pleine au départ</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>end noticed within (min)</source>
        <translation>fin remarquée sous (min)</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>ambient (°C)</source>
        <translation>ambiante (°C)</translation>
    </message>
    <message>
        <source>ambient at the end (°C)</source>
        <translation>ambiante à la fin (°C)</translation>
    </message>
    <message>
        <source>charge source</source>
        <translation>source de recharge</translation>
    </message>
    <message>
        <source>module</source>
        <translation>module</translation>
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
        <translation>coefficient de Voc</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>coefficient de Vmp</translation>
    </message>
    <message>
        <source>coefficient of the power</source>
        <translation>coefficient de puissance</translation>
    </message>
    <message>
        <source>tolerance of the voltages (%)</source>
        <translation>tolérance des tensions (%)</translation>
    </message>
    <message>
        <source>NOCT (°C)</source>
        <translation>NOCT (°C)</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>modules in a string</source>
        <translation>modules dans une chaîne</translation>
    </message>
    <message>
        <source>strings side by side</source>
        <translation>chaînes côte à côte</translation>
    </message>
    <message>
        <source>coldest (°C)</source>
        <translation>ambiante la plus froide (°C)</translation>
    </message>
    <message>
        <source>hottest (°C)</source>
        <translation>ambiante la plus chaude (°C)</translation>
    </message>
    <message>
        <source>hottest cell (°C)</source>
        <translation>cellule la plus chaude (°C)</translation>
    </message>
    <message>
        <source>irradiance (W/m²)</source>
        <translation>éclairement (W/m²)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>crystalline silicon</source>
        <translation>silicium cristallin</translation>
    </message>
    <message>
        <source>other than crystalline silicon</source>
        <translation>autre que silicium cristallin</translation>
    </message>
    <message>
        <source>%1 Wh in %2 h</source>
        <translation>%1 Wh en %2 h</translation>
    </message>
    <message>
        <source>duty %1</source>
        <translation>facteur de marche %1</translation>
    </message>
    <message>
        <source>%1 h a day</source>
        <translation>%1 h par jour</translation>
    </message>
    <message>
        <source>%1 h at night</source>
        <translation>%1 h de nuit</translation>
    </message>
    <message>
        <source>%1 W at the start</source>
        <translation>%1 W au démarrage</translation>
    </message>
    <message>
        <source>always connected</source>
        <translation>toujours branché</translation>
    </message>
    <message>
        <source>%1 of %2, %3</source>
        <translation>%1 de la station %2, %3</translation>
    </message>
    <message>
        <source>reading of %1, %2, in %3</source>
        <translation>relevé du %1, %2 (%3)</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>station</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>second compteur</translation>
    </message>
    <message>
        <source>further keys</source>
        <translation>autres clés</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>gauge (%)</source>
        <translation>jauge (%)</translation>
    </message>
    <message>
        <source>register (Wh)</source>
        <translation>index (Wh)</translation>
    </message>
    <message>
        <source>second register (Wh)</source>
        <translation>second index (Wh)</translation>
    </message>
    <message>
        <source>meter (W)</source>
        <translation>compteur (W)</translation>
    </message>
    <message>
        <source>display (W)</source>
        <translation>afficheur (W)</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>file</source>
        <translation>fichier</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>échantillons</translation>
    </message>
    <message>
        <source>first sample</source>
        <translation>premier échantillon</translation>
    </message>
    <message>
        <source>last sample</source>
        <translation>dernier échantillon</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>diffère</translation>
    </message>
    <message>
        <source>withdrawn here</source>
        <translation>retiré ici</translation>
    </message>
    <message>
        <source>withdrawn there</source>
        <translation>retiré là-bas</translation>
    </message>
    <message>
        <source>the same readings as a run here</source>
        <translation>les mêmes relevés qu’un essai d’ici</translation>
    </message>
    <message>
        <source>tells of the same time as a log here</source>
        <translation>porte sur le même temps qu’un journal d’ici</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n logs</source>
        <comment>%n log</comment>
        <translation>
            <numerusform>%n journal</numerusform>
            <numerusform>%n journaux</numerusform>
        </translation>
    </message>
    <message>
        <source>this is the same logbook</source>
        <translation>c’est le même carnet</translation>
    </message>
    <message>
        <source>name another logbook to be joined with it</source>
        <translation>nommez un autre carnet à fusionner avec lui</translation>
    </message>
    <message>
        <source>no difference has the id `%1`</source>
        <translation>aucune différence n’a l’id `%1`</translation>
    </message>
    <message>
        <source>use `all`, `newer` or an id that --dry-run shows</source>
        <translation>utilisez `all`, `newer` ou un id que montre --dry-run</translation>
    </message>
    <message>
        <source>several differences have an id that begins with `%1`</source>
        <translation>plusieurs différences ont un id qui commence par `%1`</translation>
    </message>
    <message>
        <source>give more of it</source>
        <translation>donnez-en davantage</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Fusion</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>record</source>
        <translation>enregistrement</translation>
    </message>
    <message>
        <source>id</source>
        <translation>id</translation>
    </message>
    <message>
        <source>what</source>
        <translation>objet</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>there</source>
        <translation>là-bas</translation>
    </message>
    <message>
        <source>comes in</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>stays out</source>
        <translation>reste dehors</translation>
    </message>
    <message>
        <source>more of it</source>
        <translation>un complément</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>en entier</translation>
    </message>
    <message>
        <source>taken from the other</source>
        <translation>pris de l’autre</translation>
    </message>
    <message>
        <source>stays as here</source>
        <translation>reste comme ici</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message numerus="yes">
        <source>%n units</source>
        <comment>%n unit</comment>
        <translation>
            <numerusform>%n station</numerusform>
            <numerusform>%n stations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n compteur</numerusform>
            <numerusform>%n compteurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n liste de charges</numerusform>
            <numerusform>%n listes de charges</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n PV sheets</source>
        <comment>%n PV sheet</comment>
        <translation>
            <numerusform>%n fiche PV</numerusform>
            <numerusform>%n fiches PV</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing came in</source>
        <translation>rien n’est entré</translation>
    </message>
    <message>
        <source>%1 came in</source>
        <translation>il est entré %1</translation>
    </message>
    <message numerus="yes">
        <source>%n differences taken from the other logbook</source>
        <comment>%n difference taken from the other logbook</comment>
        <translation>
            <numerusform>%n différence prise de l’autre carnet</numerusform>
            <numerusform>%n différences prises de l’autre carnet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n differences stay as here</source>
        <comment>%n difference stays as here</comment>
        <translation>
            <numerusform>%n différence reste comme ici</numerusform>
            <numerusform>%n différences restent comme ici</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>live</name>
    <message>
        <source>output off</source>
        <translation>sortie coupée</translation>
    </message>
    <message>
        <source>output back</source>
        <translation>sortie revenue</translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>charge modifiée</translation>
    </message>
    <message>
        <source>meter restarted</source>
        <translation>compteur redémarré</translation>
    </message>
    <message>
        <source>register back at 0</source>
        <translation>index revenu à 0</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>pas de réponse</translation>
    </message>
    <message>
        <source>nothing has come for %1; before, a sample came every %2</source>
        <translation>rien n’est venu depuis %1&#x202f;; avant, un échantillon venait toutes les %2</translation>
    </message>
    <message>
        <source>nothing came for %1</source>
        <translation>rien n’est venu pendant %1</translation>
    </message>
    <message>
        <source>the register went from %1 Wh to %2 Wh</source>
        <translation>l’index est passé de %1 Wh à %2 Wh</translation>
    </message>
    <message>
        <source>%1 W after %2 without power; a load that pauses by itself does this too</source>
        <translation>%1 W après %2 sans puissance&#x202f;; une charge qui s’interrompt d’elle-même fait de même</translation>
    </message>
    <message>
        <source>power at %1 W for %2, before %3 W on average</source>
        <translation>puissance à %1 W depuis %2, avant %3 W en moyenne</translation>
    </message>
    <message>
        <source>the longest pause of the load was %1</source>
        <translation>la plus longue pause de la charge a été de %1</translation>
    </message>
    <message>
        <source>register still at %1 Wh</source>
        <translation>index toujours à %1 Wh</translation>
    </message>
    <message>
        <source>nothing came for %1 between the last sample with power and the first without</source>
        <translation>rien n’est venu pendant %1 entre le dernier échantillon avec puissance et le premier sans</translation>
    </message>
    <message>
        <source>the register rises again</source>
        <translation>l’index monte de nouveau</translation>
    </message>
    <message>
        <source>the register has stood at %1 Wh for %2; before, it rose at least every %3</source>
        <translation>l’index est à %1 Wh depuis %2&#x202f;; avant, il montait au moins toutes les %3</translation>
    </message>
    <message>
        <source>from %1 W to %2 W, steady for two minutes</source>
        <translation>de %1 W à %2 W, constante pendant deux minutes</translation>
    </message>
    <message>
        <source>what is read</source>
        <translation>ce qui est lu</translation>
    </message>
    <message>
        <source>it does not say where the value stands</source>
        <translation>il n’est pas dit où se trouve la valeur</translation>
    </message>
    <message>
        <source>write it like `power holding 52 as f32 in W`</source>
        <translation>écrivez-le comme `power holding 52 as f32 in W`</translation>
    </message>
    <message>
        <source>the place is too long</source>
        <translation>l’emplacement est trop long</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>raccourcissez-le</translation>
    </message>
    <message>
        <source>`%1` is no Modbus register</source>
        <translation>`%1` n’est pas un registre Modbus</translation>
    </message>
    <message>
        <source>write `holding 52` or `input 52`, counted from 0 to 65535</source>
        <translation>écrivez `holding 52` ou `input 52`, comptés de 0 à 65535</translation>
    </message>
    <message>
        <source>`%1` is no JSON pointer</source>
        <translation>`%1` n’est pas un pointeur JSON</translation>
    </message>
    <message>
        <source>write it like #/meters/0/power (RFC 6901)</source>
        <translation>écrivez-le comme #/meters/0/power (RFC 6901)</translation>
    </message>
    <message>
        <source>`%1` is no place in an answer</source>
        <translation>`%1` n’est pas un emplacement dans une réponse</translation>
    </message>
    <message>
        <source>write a JSON pointer like #/meters/0/power, or `body`</source>
        <translation>écrivez un pointeur JSON comme #/meters/0/power, ou `body`</translation>
    </message>
    <message>
        <source>a topic without wildcards is needed</source>
        <translation>il faut un sujet sans jokers</translation>
    </message>
    <message>
        <source>write it like `power bench/plug/power` or `power bench/plug#/power`</source>
        <translation>écrivez-le comme `power bench/plug/power` ou `power bench/plug#/power`</translation>
    </message>
    <message>
        <source>`%1` is no column</source>
        <translation>`%1` n’est pas une colonne</translation>
    </message>
    <message>
        <source>write `column 3`, counted from 1</source>
        <translation>écrivez `column 3`, compté à partir de 1</translation>
    </message>
    <message>
        <source>`%1` is no OBIS code</source>
        <translation>`%1` n’est pas un code OBIS</translation>
    </message>
    <message>
        <source>write it like 1.8.0 or 1-0:16.7.0</source>
        <translation>écrivez-le comme 1.8.0 ou 1-0:16.7.0</translation>
    </message>
    <message>
        <source>a query holds no control characters</source>
        <translation>une requête ne contient pas de caractères de commande</translation>
    </message>
    <message>
        <source>write it like MEAS:POW?</source>
        <translation>écrivez-la comme MEAS:POW?</translation>
    </message>
    <message>
        <source>`%1` is no query that only reads: its first word ends with `?`</source>
        <translation>`%1` n’est pas une requête qui ne fait que lire&#xa0;: son premier mot finit par `?`</translation>
    </message>
    <message>
        <source>`%1` is no type of a number in registers</source>
        <translation>`%1` n’est pas un type de nombre en registres</translation>
    </message>
    <message>
        <source>use u16, s16, u32, s32, u64, s64, f32 or f64</source>
        <translation>utilisez u16, s16, u32, s32, u64, s64, f32 ou f64</translation>
    </message>
    <message>
        <source>an item is counted from 1</source>
        <translation>un élément se compte à partir de 1</translation>
    </message>
    <message>
        <source>write `item 2`</source>
        <translation>écrivez `item 2`</translation>
    </message>
    <message>
        <source>`%1` is no unit of %2</source>
        <translation>`%1` n’est pas une unité (%2)</translation>
    </message>
    <message>
        <source>use one such as %1</source>
        <translation>utilisez-en une comme %1</translation>
    </message>
    <message>
        <source>`%1` is no factor</source>
        <translation>`%1` n’est pas un facteur</translation>
    </message>
    <message>
        <source>write `times 0.1`</source>
        <translation>écrivez `times 0.1`</translation>
    </message>
    <message>
        <source>`%1` does not begin with what the value is</source>
        <translation>`%1` ne commence pas par ce qu’est la valeur</translation>
    </message>
    <message>
        <source>begin with register, power, voltage, current, gauge or output</source>
        <translation>commencez par register, power, voltage, current, gauge ou output</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>`%1` n’est pas compris</translation>
    </message>
    <message>
        <source>what may follow: as TYPE, item N, in UNIT, times X</source>
        <translation>ce qui peut suivre&#xa0;: as TYPE, item N, in UNIT, times X</translation>
    </message>
    <message>
        <source>%1 column %2 in %3</source>
        <translation>%1 colonne %2 en %3</translation>
    </message>
    <message>
        <source>address</source>
        <translation>adresse</translation>
    </message>
    <message>
        <source>there is no address</source>
        <translation>il n’y a pas d’adresse</translation>
    </message>
    <message>
        <source>enter host, URL or device file</source>
        <translation>saisissez hôte, URL ou fichier de périphérique</translation>
    </message>
    <message>
        <source>an address holds no blanks</source>
        <translation>une adresse ne contient pas d’espaces</translation>
    </message>
    <message>
        <source>check it</source>
        <translation>vérifiez-la</translation>
    </message>
    <message>
        <source>`%1` is no device file</source>
        <translation>`%1` n’est pas un fichier de périphérique</translation>
    </message>
    <message>
        <source>write it like /dev/ttyUSB0</source>
        <translation>écrivez-le comme /dev/ttyUSB0</translation>
    </message>
    <message>
        <source>`%1` is no address of a web service</source>
        <translation>`%1` n’est pas l’adresse d’un service web</translation>
    </message>
    <message>
        <source>write it like http://192.0.2.20/status</source>
        <translation>écrivez-la comme http://192.0.2.20/status</translation>
    </message>
    <message>
        <source>a user or password does not belong into the address</source>
        <translation>un utilisateur ou un mot de passe n’a pas sa place dans l’adresse</translation>
    </message>
    <message>
        <source>the program asks for the password when it reads</source>
        <translation>le programme demande le mot de passe quand il lit</translation>
    </message>
    <message>
        <source>`%1` is no host</source>
        <translation>`%1` n’est pas un hôte</translation>
    </message>
    <message>
        <source>write it like 192.0.2.10 or meter.example.org:1502</source>
        <translation>écrivez-le comme 192.0.2.10 ou meter.example.org:1502</translation>
    </message>
    <message>
        <source>`%1` is no host with a port from 1 to 65535</source>
        <translation>`%1` n’est pas un hôte avec un port de 1 à 65535</translation>
    </message>
    <message>
        <source>write it like 192.0.2.10:1502</source>
        <translation>écrivez-le comme 192.0.2.10:1502</translation>
    </message>
    <message>
        <source>line</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>`%1` is no setting of a serial line</source>
        <translation>`%1` n’est pas un réglage de ligne série</translation>
    </message>
    <message>
        <source>write it like 9600 8N1 or 300 7E1</source>
        <translation>écrivez-le comme 9600 8N1 ou 300 7E1</translation>
    </message>
    <message>
        <source>user</source>
        <translation>utilisateur</translation>
    </message>
    <message>
        <source>station</source>
        <translation>esclave</translation>
    </message>
    <message>
        <source>a station is a number from 0 to 255</source>
        <translation>un esclave est un nombre de 0 à 255</translation>
    </message>
    <message>
        <source>see the setting of the meter</source>
        <translation>voyez le réglage du compteur</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>intervalle</translation>
    </message>
    <message>
        <source>questions come between 0.1 and 3600 s apart</source>
        <translation>les demandes se suivent à 0,1 à 3600 s</translation>
    </message>
    <message>
        <source>enter seconds</source>
        <translation>saisissez des secondes</translation>
    </message>
    <message>
        <source>only Modbus has SunSpec models</source>
        <translation>seul Modbus a des modèles SunSpec</translation>
    </message>
    <message>
        <source>name fields</source>
        <translation>nommez des champs</translation>
    </message>
    <message>
        <source>nothing is read</source>
        <translation>rien n’est lu</translation>
    </message>
    <message>
        <source>name a field, such as `power …`</source>
        <translation>nommez un champ, comme `power …`</translation>
    </message>
    <message>
        <source>these are too many fields</source>
        <translation>cela fait trop de champs</translation>
    </message>
    <message>
        <source>name at most 64</source>
        <translation>nommez-en au plus 64</translation>
    </message>
    <message>
        <source>%1 is named twice</source>
        <translation>%1 est nommé deux fois</translation>
    </message>
    <message>
        <source>leave one of them</source>
        <translation>laissez-en un seul</translation>
    </message>
    <message>
        <source>what is read, line %1</source>
        <translation>ce qui est lu, ligne %1</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>the description of a source is not understood</source>
        <translation>la description d’une source n’est pas comprise</translation>
    </message>
    <message>
        <source>write it as `ullage watch --help` says, or set it up anew</source>
        <translation>écrivez-la comme le dit `ullage watch --help`, ou réglez-la à nouveau</translation>
    </message>
    <message>
        <source>this kind of source is not known</source>
        <translation>cette sorte de source est inconnue</translation>
    </message>
    <message>
        <source>use one that `ullage watch --help` lists</source>
        <translation>utilisez-en une que donne `ullage watch --help`</translation>
    </message>
    <message>
        <source>`%1` is no part of a source</source>
        <translation>`%1` n’est pas une partie d’une source</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>laissez-la de côté</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>l’essai est terminé</translation>
    </message>
    <message>
        <source>start a new run, or set it to still running</source>
        <translation>démarrez un nouvel essai, ou remettez celui-ci en cours</translation>
    </message>
    <message>
        <source>%1, from the samples of the live source: %2</source>
        <translation>%1, d’après les échantillons de la source en direct&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>measure</name>
    <message>
        <source>there is no register before that to start from</source>
        <translation>il n’y a pas d’index avant cela d’où partir</translation>
    </message>
    <message>
        <source>%1 is less than the %2 Wh read at %3</source>
        <translation>%1 est moins que les %2 Wh relevés à %3</translation>
    </message>
    <message>
        <source>type what it showed just before the reset</source>
        <translation>tapez ce qu’il montrait juste avant la remise à zéro</translation>
    </message>
    <message>
        <source>%1 is more than this unit can be believed to deliver since %2</source>
        <translation>%1 est plus que ce que cette station peut vraisemblablement délivrer depuis %2</translation>
    </message>
    <message>
        <source>just before the reset; its time by the load</source>
        <translation>juste avant la remise à zéro&#x202f;; son heure d’après la charge</translation>
    </message>
    <message>
        <source>no interval: the error limit of the meter is not stated</source>
        <translation>sans intervalle&#xa0;: la limite d’erreur du compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>no interval: the error limit of meter %1 is not stated</source>
        <translation>sans intervalle&#xa0;: la limite d’erreur du compteur %1 n’est pas précisée</translation>
    </message>
    <message>
        <source>no interval: the log of a meter that is not stated stands in, so its error limit is not known</source>
        <translation>sans intervalle&#xa0;: le journal d’un compteur non précisé le supplée, sa limite d’erreur est donc inconnue</translation>
    </message>
    <message>
        <source>no interval: no meter is stated, so its error limit is not known</source>
        <translation>sans intervalle&#xa0;: aucun compteur n’est précisé, sa limite d’erreur est donc inconnue</translation>
    </message>
    <message>
        <source>no interval: another meter took over and is not stated, so its error limit is not known; name it as the second meter of the run</source>
        <translation>sans intervalle&#xa0;: un autre compteur a pris le relais et n’est pas précisé, sa limite d’erreur est donc inconnue&#x202f;; nommez-le comme second compteur de l’essai</translation>
    </message>
    <message>
        <source>meter gain, limit ±%1 %</source>
        <translation>gain du compteur, limite ±%1 %</translation>
    </message>
    <message>
        <source>meter gain of %2, limit ±%1 %</source>
        <translation>gain du compteur %2, limite ±%1 %</translation>
    </message>
    <message>
        <source>meter gain by its certificate, u = %1 %</source>
        <translation>gain du compteur d’après son certificat, u = %1 %</translation>
    </message>
    <message>
        <source>meter gain of %2 by its certificate, u = %1 %</source>
        <translation>gain du compteur %2 d’après son certificat, u = %1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n short gaps without register (%1), up to %2 Wh</source>
        <comment>%n short gap without register (%1), up to %2 Wh</comment>
        <translation>
            <numerusform>%n trou court sans index (%1), jusqu’à %2 Wh</numerusform>
            <numerusform>%n trous courts sans index (%1), jusqu’à %2 Wh</numerusform>
        </translation>
    </message>
    <message>
        <source>register step %1 Wh</source>
        <translation>pas de l’index %1 Wh</translation>
    </message>
    <message>
        <source>register step %1 Wh (found from the readings)</source>
        <translation>pas de l’index %1 Wh (trouvé d’après les relevés)</translation>
    </message>
    <message>
        <source>register step %1 Wh (as the readings show)</source>
        <translation>pas de l’index %1 Wh (comme le montrent les relevés)</translation>
    </message>
    <message numerus="yes">
        <source>two readings in each of %n stretches</source>
        <comment>two readings in each of %n stretch</comment>
        <translation>
            <numerusform>deux relevés dans %n tronçon</numerusform>
            <numerusform>deux relevés dans chacun de %n tronçons</numerusform>
        </translation>
    </message>
    <message>
        <source>two readings</source>
        <translation>deux relevés</translation>
    </message>
    <message>
        <source>read once after a start at 0, rounding or truncation unknown</source>
        <translation>relevé une fois après un départ à 0, arrondi ou troncature inconnu</translation>
    </message>
    <message>
        <source>power step %1 W of the log, all the time alike, rounding or truncation unknown</source>
        <translation>pas de puissance %1 W du journal, le même tout le temps, arrondi ou troncature inconnu</translation>
    </message>
    <message>
        <source>power between the samples of the log</source>
        <translation>puissance entre les échantillons du journal</translation>
    </message>
    <message>
        <source>noted moments of start and end against the log&apos;s clock, interpolated between its samples</source>
        <translation>moments notés du début et de la fin face à l’horloge du journal, interpolés entre ses échantillons</translation>
    </message>
    <message>
        <source>log of another meter standing in for %1, its ends against both clocks</source>
        <translation>journal d’un autre compteur qui supplée %1, ses bouts face aux deux horloges</translation>
    </message>
    <message>
        <source>log of %2 standing in for %1, its ends against both clocks</source>
        <translation>journal de %2 qui supplée %1, ses bouts face aux deux horloges</translation>
    </message>
    <message>
        <source>95 % of a rectangular gain of ±%1 Wh convolved with an independent part of %2 Wh standard uncertainty</source>
        <translation>95 % d’un gain rectangulaire de ±%1 Wh convolué avec une part indépendante d’incertitude-type %2 Wh</translation>
    </message>
    <message>
        <source>95 % of a rectangular gain of ±%1 Wh convolved with a normal part of %2 Wh standard uncertainty</source>
        <translation>95 % d’un gain rectangulaire de ±%1 Wh convolué avec une part normale d’incertitude-type %2 Wh</translation>
    </message>
    <message>
        <source>95 % of a normal part of %1 Wh standard uncertainty</source>
        <translation>95 % d’une part normale d’incertitude-type %1 Wh</translation>
    </message>
    <message>
        <source>and %1 Wh for what may have flowed while the register was not read</source>
        <translation>et %1 Wh pour ce qui a pu passer pendant que l’index n’était pas relevé</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rectangulaire</translation>
    </message>
    <message>
        <source>rectangular, one-sided</source>
        <translation>rectangulaire, d’un côté</translation>
    </message>
    <message>
        <source>triangular</source>
        <translation>triangulaire</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normale</translation>
    </message>
    <message>
        <source>common to all readings of this meter</source>
        <translation>commune à tous les relevés de ce compteur</translation>
    </message>
    <message>
        <source>independent</source>
        <translation>indépendante</translation>
    </message>
    <message>
        <source>combined standard uncertainty %1 Wh</source>
        <translation>incertitude-type composée %1 Wh</translation>
    </message>
    <message>
        <source>combined standard uncertainty %1 Wh, k = %2, effective degrees of freedom %3</source>
        <translation>incertitude-type composée %1 Wh, k = %2, degrés de liberté effectifs %3</translation>
    </message>
    <message>
        <source>the power in the log ceased at %1</source>
        <translation>la puissance du journal a cessé à %1</translation>
    </message>
    <message>
        <source>the register of the log last rose at %1</source>
        <translation>l’index du journal a monté pour la dernière fois à %1</translation>
    </message>
    <message>
        <source>by the %1 that a steady load of %2 W took after the reading at %3</source>
        <translation>d’après les %1 qu’une charge constante de %2 W a pris après le relevé de %3</translation>
    </message>
    <message>
        <source>noted later than that</source>
        <translation>noté plus tard que cela</translation>
    </message>
    <message>
        <source>noted as it happened</source>
        <translation>noté au moment même</translation>
    </message>
    <message>
        <source>between the last row of the log with the output on and the moment it was found off</source>
        <translation>entre la dernière ligne du journal avec la sortie active et le moment où elle a été trouvée éteinte</translation>
    </message>
    <message>
        <source>between the last reading with the output on and the moment it was found off</source>
        <translation>entre le dernier relevé avec la sortie active et le moment où elle a été trouvée éteinte</translation>
    </message>
    <message>
        <source>noticed within %1 min</source>
        <translation>remarqué en moins de %1 min</translation>
    </message>
    <message>
        <source>noticed within %1 min, as is taken where the run does not say</source>
        <translation>remarqué en moins de %1 min, comme il est supposé quand l’essai ne le dit pas</translation>
    </message>
    <message>
        <source>the output was found off; %1</source>
        <translation>la sortie a été trouvée éteinte&#x202f;; %1</translation>
    </message>
    <message>
        <source>fewer than two moments are noted</source>
        <translation>moins de deux moments sont notés</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>jusqu’ici</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>moins de deux relevés de l’index</translation>
    </message>
    <message>
        <source>integrated power of the log</source>
        <translation>puissance intégrée du journal</translation>
    </message>
    <message>
        <source>by the log&apos;s register</source>
        <translation>d’après l’index du journal</translation>
    </message>
    <message>
        <source>no time passed between the register readings</source>
        <translation>aucun temps n’a passé entre les relevés de l’index</translation>
    </message>
    <message>
        <source>the moment of the cut-off is a bracket</source>
        <translation>le moment de la coupure est un encadrement</translation>
    </message>
    <message>
        <source>a meter power of %1 W is more than this unit can be believed to deliver (%2 W)</source>
        <translation>une puissance au compteur de %1 W est plus que ce que cette station peut vraisemblablement délivrer (%2 W)</translation>
    </message>
    <message>
        <source>a display power of %1 W is more than this unit can be believed to deliver (%2 W)</source>
        <translation>une puissance à l’afficheur de %1 W est plus que ce que cette station peut vraisemblablement délivrer (%2 W)</translation>
    </message>
    <message>
        <source>this run has ended (%1)</source>
        <translation>cet essai est terminé (%1)</translation>
    </message>
    <message>
        <source>%1 is %2 ahead of now</source>
        <translation>%1 est en avance de %2 sur maintenant</translation>
    </message>
    <message>
        <source>%1 on %2 is before the last reading (%3 on %4)</source>
        <translation>%1 le %2 est avant le dernier relevé (%3 le %4)</translation>
    </message>
    <message>
        <source>the gauge fell from %1 % at %2 to %3 %</source>
        <translation>la jauge a baissé de %1 % (à %2) à %3 %</translation>
    </message>
    <message>
        <source>the gauge rose from %1 % at %2 to %3 %</source>
        <translation>la jauge est montée de %1 % (à %2) à %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows %2 %, less than %3 %</source>
        <translation>le relevé ultérieur de %1 montre %2 %, moins que %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows %2 %, more than %3 %</source>
        <translation>le relevé ultérieur de %1 montre %2 %, plus que %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows a lower register (%2 Wh)</source>
        <translation>le relevé ultérieur de %1 montre un index plus bas (%2 Wh)</translation>
    </message>
    <message>
        <source>the register fell from %1 Wh at %2 to %3 Wh</source>
        <translation>l’index a baissé de %1 Wh (à %2) à %3 Wh</translation>
    </message>
    <message>
        <source>%1 Wh since %2 would be about %3 W, more than this unit can be believed to deliver (%4 W)</source>
        <translation>%1 Wh depuis %2 feraient environ %3 W, plus que ce que cette station peut vraisemblablement délivrer (%4 W)</translation>
    </message>
    <message>
        <source>%1 Wh since %2 would be about %3 W, where it was about %4 W before</source>
        <translation>%1 Wh depuis %2 feraient environ %3 W, alors qu’il y avait environ %4 W avant</translation>
    </message>
    <message>
        <source>in the log: %1</source>
        <translation>dans le journal&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n gaps of %1 together, in which up to %2 may have flowed at the highest power of %3 W</source>
        <comment>the log has %n gap of %1 together, in which up to %2 may have flowed at the highest power of %3 W</comment>
        <translation>
            <numerusform>le journal a %n trou de %1 en tout, dans lequel jusqu’à %2 ont pu passer à la plus haute puissance de %3 W</numerusform>
            <numerusform>le journal a %n trous de %1 en tout, dans lesquels jusqu’à %2 ont pu passer à la plus haute puissance de %3 W</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The log of the gauge has %n samples.</source>
        <comment>The log of the gauge has %n sample.</comment>
        <translation>
            <numerusform>Le journal de la jauge a %n échantillon.</numerusform>
            <numerusform>Le journal de la jauge a %n échantillons.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop-outs were left out.</source>
        <comment>%n drop-out was left out.</comment>
        <translation>
            <numerusform>%n décrochage a été laissé de côté.</numerusform>
            <numerusform>%n décrochages ont été laissés de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>It flickers by more than a step: medians of five minutes and more were taken.</source>
        <translation>Elle oscille de plus d’un pas&#xa0;: des médianes de cinq minutes et plus ont été prises.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n gauge readings noted by hand agrees with it.</source>
        <comment>%1 of %n gauge reading noted by hand agrees with it.</comment>
        <translation>
            <numerusform>%1 sur %n relevé de jauge noté à la main s’y accorde.</numerusform>
            <numerusform>%1 sur %n relevés de jauge notés à la main s’y accorde.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n gauge readings noted by hand agree with it.</source>
        <comment>%1 of %n gauge reading noted by hand agree with it.</comment>
        <translation>
            <numerusform>%1 sur %n relevé de jauge noté à la main s’y accordent.</numerusform>
            <numerusform>%1 sur %n relevés de jauge notés à la main s’y accordent.</numerusform>
        </translation>
    </message>
    <message>
        <source>Most do not: its clock is off, or it is the log of something else. It was not used.</source>
        <translation>La plupart non&#xa0;: son horloge est fausse, ou c’est le journal d’autre chose. Il n’a pas été utilisé.</translation>
    </message>
    <message>
        <source>None of it could be paired with metered energy.</source>
        <translation>Rien n’en a pu être associé à de l’énergie comptée.</translation>
    </message>
    <message numerus="yes">
        <source>%n steps of the gauge are timed by it, its clock known within %1 s.</source>
        <comment>%n step of the gauge is timed by it, its clock known within %1 s.</comment>
        <translation>
            <numerusform>%n pas de la jauge est daté par lui, son horloge connue à %1 s près.</numerusform>
            <numerusform>%n pas de la jauge sont datés par lui, son horloge connue à %1 s près.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps of the gauge are timed by it.</source>
        <comment>%n step of the gauge is timed by it.</comment>
        <translation>
            <numerusform>%n pas de la jauge est daté par lui.</numerusform>
            <numerusform>%n pas de la jauge sont datés par lui.</numerusform>
        </translation>
    </message>
    <message>
        <source>the log begins after the start (%1, about %2 at the mean load)</source>
        <translation>le journal commence après le début (%1, environ %2 à la charge moyenne)</translation>
    </message>
    <message>
        <source>the log ends before the end of the run (%1, about %2 at the mean load)</source>
        <translation>le journal finit avant la fin de l’essai (%1, environ %2 à la charge moyenne)</translation>
    </message>
    <message>
        <source>%1 Wh are counted for it, which may be 0 to %2</source>
        <translation>%1 Wh sont comptés pour cela, ce qui peut être 0 à %2</translation>
    </message>
    <message>
        <source>at most %1 are missing</source>
        <translation>il manque au plus %1</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % less</source>
        <translation>Sa puissance intégrée donne %1 ± %2 Wh là où son index dit %3 Wh&#xa0;: %4 % de moins</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % more</source>
        <translation>Sa puissance intégrée donne %1 ± %2 Wh là où son index dit %3 Wh&#xa0;: %4 % de plus</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % less</source>
        <translation>Sa puissance intégrée donne %1 ± %2 Wh là où l’index noté à la main dit %3 Wh&#xa0;: %4 % de moins</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % more</source>
        <translation>Sa puissance intégrée donne %1 ± %2 Wh là où l’index noté à la main dit %3 Wh&#xa0;: %4 % de plus</translation>
    </message>
    <message>
        <source>%1, which steps and sampling explain.</source>
        <translation>%1, ce que pas et échantillonnage expliquent.</translation>
    </message>
    <message>
        <source>%1, more than steps and sampling explain; the meter&apos;s power and its counting differ.</source>
        <translation>%1, plus que pas et échantillonnage n’expliquent&#x202f;; la puissance du compteur et son comptage diffèrent.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was logged for %n stretches, the longest from %1; the register counts what flowed meanwhile.</source>
        <comment>Nothing was logged for %n stretch, the longest from %1; the register counts what flowed meanwhile.</comment>
        <translation>
            <numerusform>Rien n’a été enregistré sur %n tronçon, le plus long à partir de %1&#x202f;; l’index compte ce qui a passé entre-temps.</numerusform>
            <numerusform>Rien n’a été enregistré sur %n tronçons, le plus long à partir de %1&#x202f;; l’index compte ce qui a passé entre-temps.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was logged from %1; the register counts what flowed meanwhile.</source>
        <translation>Rien n’a été enregistré à partir de %1&#x202f;; l’index compte ce qui a passé entre-temps.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n registers noted by hand agrees with the log.</source>
        <comment>%1 of %n register noted by hand agrees with the log.</comment>
        <translation>
            <numerusform>%1 sur %n index noté à la main s’accorde avec le journal.</numerusform>
            <numerusform>%1 sur %n index notés à la main s’accorde avec le journal.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n registers noted by hand agree with the log.</source>
        <comment>%1 of %n register noted by hand agree with the log.</comment>
        <translation>
            <numerusform>%1 sur %n index noté à la main s’accordent avec le journal.</numerusform>
            <numerusform>%1 sur %n index notés à la main s’accordent avec le journal.</numerusform>
        </translation>
    </message>
    <message>
        <source>Most do not: the clock of the log is off, or it is the log of something else. It was not used.</source>
        <translation>La plupart non&#xa0;: l’horloge du journal est fausse, ou c’est le journal d’autre chose. Il n’a pas été utilisé.</translation>
    </message>
    <message>
        <source>%1 Wh was noted, the log says %2; the log was used</source>
        <translation>%1 Wh ont été notés, le journal dit %2&#x202f;; le journal a été utilisé</translation>
    </message>
    <message>
        <source>The log is of another meter than the run names, so that delivered energy is based on registers noted by hand; name the log&apos;s meter as that of the run to use it.</source>
        <translation>Le journal est d’un autre compteur que celui que nomme l’essai, l’énergie délivrée repose donc sur les index notés à la main&#x202f;; nommez le compteur du journal comme celui de l’essai pour l’utiliser.</translation>
    </message>
    <message>
        <source>Delivered energy is the integrated power of the log.</source>
        <translation>L’énergie délivrée est la puissance intégrée du journal.</translation>
    </message>
    <message>
        <source>Delivered energy is that of the log&apos;s register at the noted moments.</source>
        <translation>L’énergie délivrée est celle de l’index du journal aux moments notés.</translation>
    </message>
    <message>
        <source>Delivered energy is based on registers noted by hand.</source>
        <translation>L’énergie délivrée repose sur les index notés à la main.</translation>
    </message>
    <message>
        <source>From %1 to %2 it says nothing, and the log of another meter stands in with %3.</source>
        <translation>De %1 à %2 il ne dit rien, et le journal d’un autre compteur le supplée avec %3.</translation>
    </message>
    <message>
        <source>From %1 to %2 it says nothing, and the log of %4 stands in with %3.</source>
        <translation>De %1 à %2 il ne dit rien, et le journal de %4 le supplée avec %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n values of its register fitted nothing and were left out.</source>
        <comment>%n value of its register fitted nothing and was left out.</comment>
        <translation>
            <numerusform>%n valeur de son index n’allait avec rien et a été laissée de côté.</numerusform>
            <numerusform>%n valeurs de son index n’allaient avec rien et ont été laissées de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>No run uses this meter yet.</source>
        <translation>Aucun essai n’utilise encore ce compteur.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy did not move, but their intervals changed.</source>
        <comment>%n run uses this meter; its delivered energy did not move, but its interval changed.</comment>
        <translation>
            <numerusform>%n essai utilise ce compteur&#x202f;; son énergie délivrée n’a pas bougé, mais son intervalle a changé.</numerusform>
            <numerusform>%n essais utilisent ce compteur&#x202f;; leur énergie délivrée n’a pas bougé, mais leurs intervalles ont changé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy did not move.</source>
        <comment>%n run uses this meter; its delivered energy did not move.</comment>
        <translation>
            <numerusform>%n essai utilise ce compteur&#x202f;; son énergie délivrée n’a pas bougé.</numerusform>
            <numerusform>%n essais utilisent ce compteur&#x202f;; leur énergie délivrée n’a pas bougé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy moved by %1, and their intervals changed.</source>
        <comment>%n run uses this meter; its delivered energy moved by %1, and its interval changed.</comment>
        <translation>
            <numerusform>%n essai utilise ce compteur&#x202f;; son énergie délivrée a bougé de %1, et son intervalle a changé.</numerusform>
            <numerusform>%n essais utilisent ce compteur&#x202f;; leur énergie délivrée a bougé de %1, et leurs intervalles ont changé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy moved by %1.</source>
        <comment>%n run uses this meter; its delivered energy moved by %1.</comment>
        <translation>
            <numerusform>%n essai utilise ce compteur&#x202f;; son énergie délivrée a bougé de %1.</numerusform>
            <numerusform>%n essais utilisent ce compteur&#x202f;; leur énergie délivrée a bougé de %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and more</source>
        <translation>%1 et plus</translation>
    </message>
    <message numerus="yes">
        <source>Meter %1 showed a power outside its range of %2 in %n readings.</source>
        <comment>Meter %1 showed a power outside its range of %2 in %n reading.</comment>
        <translation>
            <numerusform>Le compteur %1 montrait une puissance hors de sa plage de %2 à %n relevé.</numerusform>
            <numerusform>Le compteur %1 montrait une puissance hors de sa plage de %2 à %n relevés.</numerusform>
        </translation>
    </message>
    <message>
        <source>Meter %1: all energy flowed outside its range of %2 (loads were %3), where its error is not limited.</source>
        <translation>Compteur %1&#xa0;: toute l’énergie a passé hors de sa plage de %2 (charges de %3), où son erreur n’est pas limitée.</translation>
    </message>
    <message>
        <source>Meter %1: %4 of %5 flowed outside its range of %2 (loads were %3), where its error is not limited.</source>
        <translation>Compteur %1&#xa0;: %4 sur %5 ont passé hors de sa plage de %2 (charges de %3), où son erreur n’est pas limitée.</translation>
    </message>
    <message>
        <source>Meter %1: all energy flowed outside its certificate&apos;s loads of %2 to %3 (loads were %4); the nearest point was taken.</source>
        <translation>Compteur %1&#xa0;: toute l’énergie a passé hors des charges de son certificat, %2 à %3 (charges de %4)&#x202f;; le point le plus proche a été pris.</translation>
    </message>
    <message>
        <source>Meter %1: %5 of %6 flowed outside its certificate&apos;s loads of %2 to %3 (loads were %4); the nearest point was taken.</source>
        <translation>Compteur %1&#xa0;: %5 sur %6 ont passé hors des charges de son certificat, %2 à %3 (charges de %4)&#x202f;; le point le plus proche a été pris.</translation>
    </message>
    <message>
        <source>The certificate of meter %1 was valid until %2, before this run.</source>
        <translation>Le certificat du compteur %1 était valable jusqu’au %2, avant cet essai.</translation>
    </message>
    <message>
        <source>drains of a unit repeat within</source>
        <translation>répétabilité des décharges d’une station</translation>
    </message>
    <message>
        <source>a battery holds of its label at most</source>
        <translation>contenu d’une batterie, de son énergie assignée, au plus</translation>
    </message>
    <message>
        <source>quadratic loss at the rated output at most</source>
        <translation>perte quadratique à la puissance assignée, au plus</translation>
    </message>
    <message>
        <source>a moment is noted within</source>
        <translation>précision d’un moment noté</translation>
    </message>
    <message>
        <source>a claim is decided by the value alone</source>
        <translation>une valeur annoncée se juge sur la valeur seule</translation>
    </message>
    <message>
        <source>the method has no such figure</source>
        <translation>la méthode n’a pas de tel chiffre</translation>
    </message>
    <message>
        <source>this is not between %1 and %2</source>
        <translation>ce n’est pas entre %1 et %2</translation>
    </message>
    <message>
        <source>correct it, or leave it empty for the usual %1</source>
        <translation>corrigez-le, ou laissez-le vide pour le %1 habituel</translation>
    </message>
    <message>
        <source>entered after readings of later moments; put in its place by its time</source>
        <translation>saisi après des relevés de moments ultérieurs&#x202f;; mis à sa place par son heure</translation>
    </message>
    <message>
        <source>%1 fits neither its neighbours nor a reset; left out as a typing error</source>
        <translation>%1 ne convient ni à ses voisins ni à une remise à zéro&#x202f;; laissé de côté comme faute de frappe</translation>
    </message>
    <message>
        <source>energy between %1 and %2 (about %3 Wh at the usual load) is not in the register</source>
        <translation>l’énergie entre %1 et %2 (environ %3 Wh à la charge habituelle) n’est pas dans l’index</translation>
    </message>
    <message>
        <source>the register fell from %1 to %2, which its span of %3 explains</source>
        <translation>l’index est tombé de %1 à %2, ce qu’explique son étendue de %3</translation>
    </message>
    <message>
        <source>the register fell from %1 to %2 without a mark; read as a reset, since the load after it is believable</source>
        <translation>l’index est tombé de %1 à %2 sans repère&#x202f;; lu comme remise à zéro, car la charge qui suit est vraisemblable</translation>
    </message>
    <message>
        <source>the meter was zeroed by %1 and had counted %2 since</source>
        <translation>le compteur a été remis à zéro avant %1 et avait compté %2 depuis</translation>
    </message>
    <message>
        <source>the meter was zeroed at %1</source>
        <translation>le compteur a été remis à zéro à %1</translation>
    </message>
    <message>
        <source>another meter took over at %1; its register starts at %2</source>
        <translation>un autre compteur a pris le relais à %1&#x202f;; son index part de %2</translation>
    </message>
    <message>
        <source>energy before the reset between %1 and %2 (about %3 Wh at the usual load) is not in the register</source>
        <translation>l’énergie d’avant la remise à zéro entre %1 et %2 (environ %3 Wh à la charge habituelle) n’est pas dans l’index</translation>
    </message>
    <message>
        <source>%1 was read at %2, after the cut-off; taken as what the register showed then, as no reading of it stands there</source>
        <translation>%1 a été relevé à %2, après la coupure&#x202f;; pris pour ce que l’index montrait alors, car il n’en existe là aucun relevé</translation>
    </message>
    <message>
        <source>the register went on to %1 by %2, after the cut-off; nothing after the end counts</source>
        <translation>l’index a continué jusqu’à %1 (à %2), après la coupure&#x202f;; rien ne compte après la fin</translation>
    </message>
    <message>
        <source>the register was first read after the start (%1, about %2 at the usual load)</source>
        <translation>l’index a été relevé pour la première fois après le début (%1, environ %2 à la charge habituelle)</translation>
    </message>
    <message>
        <source>the register was last read before the end (%1, about %2 at the usual load)</source>
        <translation>l’index a été relevé pour la dernière fois avant la fin (%1, environ %2 à la charge habituelle)</translation>
    </message>
    <message>
        <source>meter zeroed</source>
        <translation>compteur remis à zéro</translation>
    </message>
    <message>
        <source>meter swapped</source>
        <translation>compteur remplacé</translation>
    </message>
    <message>
        <source>rollover</source>
        <translation>passage par zéro</translation>
    </message>
    <message>
        <source>reset without a mark</source>
        <translation>remise à zéro sans repère</translation>
    </message>
    <message>
        <source>typing error</source>
        <translation>faute de frappe</translation>
    </message>
    <message>
        <source>entered twice</source>
        <translation>saisi deux fois</translation>
    </message>
    <message>
        <source>entered late</source>
        <translation>saisi tard</translation>
    </message>
    <message>
        <source>differs from the log</source>
        <translation>diffère du journal</translation>
    </message>
    <message>
        <source>after the end</source>
        <translation>après la fin</translation>
    </message>
    <message>
        <source>the same moment and register were entered twice; counted once</source>
        <translation>les mêmes moment et index ont été saisis deux fois&#x202f;; comptés une fois</translation>
    </message>
    <message>
        <source>accepted: %1</source>
        <translation>accepté&#xa0;: %1</translation>
    </message>
    <message>
        <source>the gauge fell by only %1 points; about %2 more would resolve ±5 %</source>
        <translation>la jauge n’a baissé que de %1 points&#x202f;; environ %2 de plus établiraient ±5 %</translation>
    </message>
    <message>
        <source>from full to cut-off, at this load</source>
        <translation>de la pleine charge à la coupure, à cette charge</translation>
    </message>
    <message>
        <source>found off, the register held its value</source>
        <translation>trouvée éteinte, l’index a gardé sa valeur</translation>
    </message>
    <message>
        <source>projected it would be %1</source>
        <translation>projeté, ce serait %1</translation>
    </message>
    <message>
        <source>whether it started full is not stated</source>
        <translation>il n’est pas précisé si elle était pleine au départ</translation>
    </message>
    <message>
        <source>it did not start full</source>
        <translation>elle n’était pas pleine au départ</translation>
    </message>
    <message>
        <source>the run is still open</source>
        <translation>l’essai est encore ouvert</translation>
    </message>
    <message>
        <source>stopped before the cut-off</source>
        <translation>arrêté avant la coupure</translation>
    </message>
    <message>
        <source>the gauge rose by %1 points on the way, so that from what was delivered on all may be</source>
        <translation>la jauge est montée de %1 points en route, tout est donc possible à partir de ce qui a été délivré</translation>
    </message>
    <message>
        <source>a %1 run does not measure it</source>
        <translation>un essai de type %1 ne la mesure pas</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>fewer than two gauge readings within the register&apos;s readings</source>
        <translation>moins de deux relevés de jauge parmi les relevés de l’index</translation>
    </message>
    <message>
        <source>assumes an accurate gauge from %1 to %2</source>
        <translation>suppose une jauge juste de %1 à %2</translation>
    </message>
    <message>
        <source>a charge run delivers nothing</source>
        <translation>une recharge ne délivre rien</translation>
    </message>
    <message>
        <source>end to end, from %1 to %2</source>
        <translation>de bout en bout, de %1 à %2</translation>
    </message>
</context>
<context>
    <name>meters_in_series</name>
    <message>
        <source>At %1 W %2 says %3 of what %4 says (± %5)</source>
        <translation>À %1 W, %2 dit %3 de ce que dit %4 (± %5)</translation>
    </message>
    <message>
        <source>%1; not every error limit is stated, so this cannot be held against them.</source>
        <translation>%1&#x202f;; les limites d’erreur ne sont pas toutes précisées, ils ne peuvent donc y être confrontés.</translation>
    </message>
    <message>
        <source>%1; their limits of ± %2 and ± %3 allow no more than %4 between them: at least one meter is outside its limit.</source>
        <translation>%1&#x202f;; leurs limites de ± %2 et ± %3 ne permettent pas plus de %4 entre eux&#xa0;: au moins un compteur est hors de sa limite.</translation>
    </message>
    <message>
        <source>%1, as their limits allow.</source>
        <translation>%1, comme leurs limites le permettent.</translation>
    </message>
    <message>
        <source>%1, as their limits allow; if both keep to them, the true energy lies %2 to %3 off what %4 says and %5 to %6 off what %7 says.</source>
        <translation>%1, comme leurs limites le permettent&#x202f;; si les deux s’y tiennent, l’énergie vraie s’écarte de %2 à %3 de ce que dit %4 et de %5 à %6 de ce que dit %7.</translation>
    </message>
    <message numerus="yes">
        <source>%n stretches with both meters read</source>
        <comment>%n stretch with both meters read</comment>
        <translation>
            <numerusform>%n tronçon avec les deux compteurs relevés</numerusform>
            <numerusform>%n tronçons avec les deux compteurs relevés</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>model</name>
    <message>
        <source>%1 cycles</source>
        <translation>%1 cycles</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 ans</translation>
    </message>
    <message>
        <source>give %1, or leave it empty</source>
        <translation>donnez %1, ou laissez vide</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>byte %1 of the text is no UTF-8 character</source>
        <translation>l’octet %1 du texte n’est pas un caractère UTF-8</translation>
    </message>
    <message>
        <source>type it anew, or save the file as UTF-8</source>
        <translation>tapez-le à nouveau, ou enregistrez le fichier en UTF-8</translation>
    </message>
    <message numerus="yes">
        <source>the text has %n characters</source>
        <comment>the text has %n character</comment>
        <translation>
            <numerusform>le texte a %n caractère</numerusform>
            <numerusform>le texte a %n caractères</numerusform>
        </translation>
    </message>
    <message>
        <source>give at most %1</source>
        <translation>donnez-en au plus %1</translation>
    </message>
    <message>
        <source>the value is no finite number</source>
        <translation>la valeur n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 est hors plage</translation>
    </message>
    <message>
        <source>`%1` is no date</source>
        <translation>`%1` n’est pas une date</translation>
    </message>
    <message>
        <source>give a date like 2027-05-14, or leave it empty</source>
        <translation>donnez une date comme 2027-05-14, ou laissez vide</translation>
    </message>
    <message>
        <source>give a date in the years 1900 to 2199</source>
        <translation>donnez une date des années 1900 à 2199</translation>
    </message>
    <message>
        <source>keep at most %1</source>
        <translation>gardez-en au plus %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>the appliance has no name</source>
        <translation>l’appareil n’a pas de nom</translation>
    </message>
    <message>
        <source>give it a name</source>
        <translation>donnez-lui un nom</translation>
    </message>
    <message>
        <source>name of an appliance</source>
        <translation>nom d’un appareil</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>the power while on is not above 0 W and at most %1 W</source>
        <translation>la puissance en marche n’est pas au-dessus de 0 W et d’au plus %1 W</translation>
    </message>
    <message>
        <source>give what it takes while it is on, or leave it empty</source>
        <translation>donnez ce qu’il prend en marche, ou laissez vide</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>facteur de marche</translation>
    </message>
    <message>
        <source>the duty is not above 0 and at most 1</source>
        <translation>le facteur de marche n’est pas au-dessus de 0 et d’au plus 1</translation>
    </message>
    <message>
        <source>give the share of the time that it is on while in use</source>
        <translation>donnez la part du temps en marche pendant qu’il sert</translation>
    </message>
    <message>
        <source>measured use</source>
        <translation>usage mesuré</translation>
    </message>
    <message>
        <source>the measured energy or its hours are not above 0, or beyond %1 Wh or %2 h</source>
        <translation>l’énergie mesurée ou ses heures ne sont pas au-dessus de 0, ou dépassent %1 Wh ou %2 h</translation>
    </message>
    <message>
        <source>give both, such as 500 Wh over 24 h</source>
        <translation>donnez les deux, par exemple 500 Wh sur 24 h</translation>
    </message>
    <message>
        <source>neither its power nor a measurement is given</source>
        <translation>ni sa puissance ni une mesure n’est donnée</translation>
    </message>
    <message>
        <source>give its power while on, or what it took over some hours</source>
        <translation>donnez sa puissance en marche, ou ce qu’il a pris sur quelques heures</translation>
    </message>
    <message>
        <source>the mean measured, %1 W, is above the power while on, %2 W</source>
        <translation>la moyenne mesurée, %1 W, dépasse la puissance en marche, %2 W</translation>
    </message>
    <message>
        <source>correct one of the two</source>
        <translation>corrigez l’un des deux</translation>
    </message>
    <message>
        <source>hours per day</source>
        <translation>heures par jour</translation>
    </message>
    <message>
        <source>the hours per day are not above 0 and at most 24</source>
        <translation>les heures par jour ne sont pas au-dessus de 0 et d’au plus 24</translation>
    </message>
    <message>
        <source>give for how long it is in use</source>
        <translation>donnez combien de temps il sert</translation>
    </message>
    <message>
        <source>hours at night</source>
        <translation>heures de nuit</translation>
    </message>
    <message>
        <source>the hours at night are not 0 to the hours per day</source>
        <translation>les heures de nuit ne vont pas de 0 aux heures par jour</translation>
    </message>
    <message>
        <source>give how many of its hours lie at night</source>
        <translation>donnez combien de ses heures sont de nuit</translation>
    </message>
    <message>
        <source>start</source>
        <translation>début</translation>
    </message>
    <message>
        <source>the peak while it starts is below its power while on, or above %1 W</source>
        <translation>la pointe au démarrage est sous sa puissance en marche, ou au-dessus de %1 W</translation>
    </message>
    <message>
        <source>give the highest power of its start, or leave it empty</source>
        <translation>donnez la plus haute puissance de son démarrage, ou laissez vide</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>the number of them is not 1 to %1</source>
        <translation>leur nombre n’est pas de 1 à %1</translation>
    </message>
    <message>
        <source>give how many are alike</source>
        <translation>donnez combien sont pareils</translation>
    </message>
    <message>
        <source>the load list has no name</source>
        <translation>la liste de charges n’a pas de nom</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>liste de charges</translation>
    </message>
    <message numerus="yes">
        <source>there are %n appliances</source>
        <comment>there is %n appliance</comment>
        <translation>
            <numerusform>il y a %n appareil</numerusform>
            <numerusform>il y a %n appareils</numerusform>
        </translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>charge modifiée</translation>
    </message>
    <message>
        <source>meter zeroed</source>
        <translation>compteur remis à zéro</translation>
    </message>
    <message>
        <source>meter swapped</source>
        <translation>compteur remplacé</translation>
    </message>
    <message>
        <source>output tripped</source>
        <translation>sortie déclenchée</translation>
    </message>
    <message>
        <source>output reset</source>
        <translation>sortie réarmée</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>coupure</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>décharge</translation>
    </message>
    <message>
        <source>no-load drain</source>
        <translation>décharge à vide</translation>
    </message>
    <message>
        <source>charge</source>
        <translation>recharge</translation>
    </message>
    <message>
        <source>sustained output</source>
        <translation>puissance soutenue</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>puissance de crête</translation>
    </message>
    <message>
        <source>standby</source>
        <translation>veille</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>cut-off seen</source>
        <translation>coupure vue</translation>
    </message>
    <message>
        <source>found off</source>
        <translation>trouvée éteinte</translation>
    </message>
    <message>
        <source>stopped by tester</source>
        <translation>arrêté par le testeur</translation>
    </message>
    <message>
        <source>PV</source>
        <translation>PV</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>secteur</translation>
    </message>
    <message numerus="yes">
        <source>a tag of %n letters is too long</source>
        <comment>a tag of %n letter is too long</comment>
        <translation>
            <numerusform>une étiquette de %n lettre est trop longue</numerusform>
            <numerusform>une étiquette de %n lettres est trop longue</numerusform>
        </translation>
    </message>
    <message>
        <source>tags</source>
        <translation>étiquettes</translation>
    </message>
    <message numerus="yes">
        <source>give short words of at most %n letters with semicolons between them</source>
        <comment>give short words of at most %n letter with semicolons between them</comment>
        <translation>
            <numerusform>donnez des mots courts d’au plus %n lettre, séparés par des points-virgules</numerusform>
            <numerusform>donnez des mots courts d’au plus %n lettres, séparés par des points-virgules</numerusform>
        </translation>
    </message>
    <message>
        <source>a tag holds a tab, a line break or another control character</source>
        <translation>une étiquette contient une tabulation, un saut de ligne ou un autre caractère de commande</translation>
    </message>
    <message>
        <source>give it as one word</source>
        <translation>donnez-la en un seul mot</translation>
    </message>
    <message numerus="yes">
        <source>there are %n or more tags</source>
        <comment>there is %n or more tags</comment>
        <translation>
            <numerusform>il y a %n étiquette ou plus</numerusform>
            <numerusform>il y a %n étiquettes ou plus</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>numerics</name>
    <message>
        <source>correct or leave out that point</source>
        <translation>corrigez ou laissez de côté ce point</translation>
    </message>
    <message numerus="yes">
        <source>%1 x, %2 y and %n uncertainties do not belong together</source>
        <comment>%1 x, %2 y and %n uncertainty do not belong together</comment>
        <translation>
            <numerusform>%1 x, %2 y et %n incertitude ne vont pas ensemble</numerusform>
            <numerusform>%1 x, %2 y et %n incertitudes ne vont pas ensemble</numerusform>
        </translation>
    </message>
    <message>
        <source>give as many of each</source>
        <translation>donnez-en autant de chaque</translation>
    </message>
    <message numerus="yes">
        <source>needs at least %n points and has %1</source>
        <comment>needs at least %n point and has %1</comment>
        <translation>
            <numerusform>il faut au moins %n point et il y en a %1</numerusform>
            <numerusform>il faut au moins %n points et il y en a %1</numerusform>
        </translation>
    </message>
    <message>
        <source>take more readings</source>
        <translation>prenez plus de relevés</translation>
    </message>
    <message>
        <source>x of point %1 is not a finite number</source>
        <translation>x du point %1 n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>y of point %1 is not a finite number</source>
        <translation>y du point %1 n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>the uncertainty of point %1 is not a finite number</source>
        <translation>l’incertitude du point %1 n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>the uncertainty of point %1 is not above zero</source>
        <translation>l’incertitude du point %1 n’est pas au-dessus de zéro</translation>
    </message>
    <message>
        <source>give a positive uncertainty or leave out that point</source>
        <translation>donnez une incertitude positive ou laissez ce point de côté</translation>
    </message>
    <message>
        <source>all x are the same, so that no slope can be found</source>
        <translation>tous les x sont les mêmes, aucune pente ne peut être trouvée</translation>
    </message>
    <message>
        <source>take readings at two different x at least</source>
        <translation>prenez des relevés à deux x différents au moins</translation>
    </message>
    <message>
        <source>the numbers are too large or too small to compute with</source>
        <translation>les nombres sont trop grands ou trop petits pour calculer</translation>
    </message>
    <message>
        <source>use a unit that suits their size</source>
        <translation>utilisez une unité adaptée à leur taille</translation>
    </message>
    <message>
        <source>least-squares fit</source>
        <translation>ajustement par moindres carrés</translation>
    </message>
    <message>
        <source>there are no parameters to find</source>
        <translation>il n’y a aucun paramètre à trouver</translation>
    </message>
    <message>
        <source>give at least one column</source>
        <translation>donnez au moins une colonne</translation>
    </message>
    <message numerus="yes">
        <source>a design of %n numbers does not have %1 rows of %2</source>
        <comment>a design of %n number does not have %1 rows of %2</comment>
        <translation>
            <numerusform>un plan de %n nombre n’a pas %1 lignes de %2</numerusform>
            <numerusform>un plan de %n nombres n’a pas %1 lignes de %2</numerusform>
        </translation>
    </message>
    <message>
        <source>give one row for each point</source>
        <translation>donnez une ligne par point</translation>
    </message>
    <message>
        <source>row %1, column %2 of the design is not a finite number</source>
        <translation>ligne %1, colonne %2 du plan n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>column %1 of the design is zero everywhere</source>
        <translation>la colonne %1 du plan est nulle partout</translation>
    </message>
    <message>
        <source>leave out that parameter</source>
        <translation>laissez ce paramètre de côté</translation>
    </message>
    <message>
        <source>the points cannot tell the parameters apart</source>
        <translation>les points ne peuvent distinguer les paramètres</translation>
    </message>
    <message>
        <source>vary the conditions more, or fit fewer parameters</source>
        <translation>variez davantage les conditions, ou ajustez moins de paramètres</translation>
    </message>
    <message>
        <source>line fit with uncertainties in x and y</source>
        <translation>ajustement d’une droite avec incertitudes en x et y</translation>
    </message>
    <message numerus="yes">
        <source>the slope did not settle within %n steps</source>
        <comment>the slope did not settle within %n step</comment>
        <translation>
            <numerusform>la pente ne s’est pas stabilisée en %n pas</numerusform>
            <numerusform>la pente ne s’est pas stabilisée en %n pas</numerusform>
        </translation>
    </message>
    <message>
        <source>the points scatter too widely for their uncertainties to give one line; check both</source>
        <translation>les points se dispersent trop pour que leurs incertitudes donnent une seule droite&#x202f;; vérifiez les deux</translation>
    </message>
    <message>
        <source>each point needs one uncertainty in x and one in y</source>
        <translation>chaque point a besoin d’une incertitude en x et d’une en y</translation>
    </message>
    <message>
        <source>the uncertainties of point %1 must be finite, not negative, and not zero in both x and y</source>
        <translation>les incertitudes du point %1 doivent être finies, non négatives, et non nulles à la fois en x et y</translation>
    </message>
    <message>
        <source>a point without uncertainty in y lies on a level line and would outweigh all others</source>
        <translation>un point sans incertitude en y est sur une droite horizontale et l’emporterait sur tous les autres</translation>
    </message>
    <message>
        <source>give that point an uncertainty in y</source>
        <translation>donnez à ce point une incertitude en y</translation>
    </message>
    <message>
        <source>line fit</source>
        <translation>ajustement d’une droite</translation>
    </message>
    <message>
        <source>line fit through the origin</source>
        <translation>ajustement d’une droite par l’origine</translation>
    </message>
    <message>
        <source>all x are zero, so that no slope can be found</source>
        <translation>tous les x sont nuls, aucune pente ne peut être trouvée</translation>
    </message>
    <message>
        <source>take readings at another x</source>
        <translation>prenez des relevés à un autre x</translation>
    </message>
    <message>
        <source>robust line fit</source>
        <translation>ajustement robuste d’une droite</translation>
    </message>
    <message>
        <source>the confidence must lie between 0 and 1</source>
        <translation>la confiance doit être entre 0 et 1</translation>
    </message>
    <message>
        <source>give 0.95 for 95 %</source>
        <translation>donnez 0,95 pour 95 %</translation>
    </message>
    <message numerus="yes">
        <source>%n points are more than the %1 that it takes</source>
        <comment>%n point is more than the %1 that it takes</comment>
        <translation>
            <numerusform>%n point est plus que les %1 admis</numerusform>
            <numerusform>%n points sont plus que les %1 admis</numerusform>
        </translation>
    </message>
    <message>
        <source>thin out the points</source>
        <translation>éclaircissez les points</translation>
    </message>
    <message>
        <source>linear programme</source>
        <translation>programme linéaire</translation>
    </message>
    <message numerus="yes">
        <source>%n variables are not 1 to %1</source>
        <comment>%n variable is not 1 to %1</comment>
        <translation>
            <numerusform>%n variable n’est pas de 1 à %1</numerusform>
            <numerusform>%n variables ne sont pas de 1 à %1</numerusform>
        </translation>
    </message>
    <message>
        <source>state a smaller problem</source>
        <translation>posez un problème plus petit</translation>
    </message>
    <message numerus="yes">
        <source>the rows, limits and signs do not fit %n variables</source>
        <comment>the rows, limits and signs do not fit %n variable</comment>
        <translation>
            <numerusform>les lignes, limites et signes ne conviennent pas à %n variable</numerusform>
            <numerusform>les lignes, limites et signes ne conviennent pas à %n variables</numerusform>
        </translation>
    </message>
    <message>
        <source>give one coefficient for each</source>
        <translation>donnez un coefficient pour chacune</translation>
    </message>
    <message>
        <source>a coefficient is not a finite number</source>
        <translation>un coefficient n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>correct or leave out that row</source>
        <translation>corrigez ou laissez de côté cette ligne</translation>
    </message>
    <message>
        <source>the search did not end within its steps</source>
        <translation>la recherche n’a pas fini en ses pas</translation>
    </message>
    <message>
        <source>check the rows for coefficients of very different sizes</source>
        <translation>vérifiez les lignes&#xa0;: coefficients de tailles très différentes</translation>
    </message>
    <message>
        <source>fit of two lines</source>
        <translation>ajustement de deux droites</translation>
    </message>
    <message numerus="yes">
        <source>no break leaves %n points and two different x on both sides of it</source>
        <comment>no break leaves %n point and two different x on both sides of it</comment>
        <translation>
            <numerusform>aucune rupture ne laisse %n point et deux x différents de chaque côté</numerusform>
            <numerusform>aucune rupture ne laisse %n points et deux x différents de chaque côté</numerusform>
        </translation>
    </message>
    <message>
        <source>take more readings, spread over x</source>
        <translation>prenez plus de relevés, répartis sur x</translation>
    </message>
</context>
<context>
    <name>pv</name>
    <message>
        <source>the value is not above 0</source>
        <translation>la valeur n’est pas au-dessus de 0</translation>
    </message>
    <message>
        <source>enter what the module&apos;s label says</source>
        <translation>saisissez ce que dit la plaque du module</translation>
    </message>
    <message>
        <source>the value is out of range</source>
        <translation>la valeur est hors plage</translation>
    </message>
    <message>
        <source>the coefficient is not below 0, though these values fall as the cell warms</source>
        <translation>le coefficient n’est pas sous 0, alors que ces valeurs baissent quand la cellule s’échauffe</translation>
    </message>
    <message>
        <source>enter it with its minus sign, such as -0.27 %/°C</source>
        <translation>saisissez-le avec son signe moins, comme -0,27 %/°C</translation>
    </message>
    <message>
        <source>the coefficient is steeper than 1 % per °C</source>
        <translation>le coefficient est plus raide que 1 % par °C</translation>
    </message>
    <message>
        <source>check whether it is in %/°C or in mV/°C</source>
        <translation>vérifiez s’il est en %/°C ou en mV/°C</translation>
    </message>
    <message>
        <source>Vmp lies above Voc</source>
        <translation>Vmp est au-dessus de Voc</translation>
    </message>
    <message>
        <source>check whether the two are exchanged</source>
        <translation>vérifiez si les deux sont échangés</translation>
    </message>
    <message>
        <source>Imp lies above Isc</source>
        <translation>Imp est au-dessus de Isc</translation>
    </message>
    <message>
        <source>the coefficient of power is not in percent</source>
        <translation>le coefficient de puissance n’est pas en pour cent</translation>
    </message>
    <message>
        <source>give it in %/°C</source>
        <translation>donnez-le en %/°C</translation>
    </message>
    <message>
        <source>the number of modules in a string is out of range</source>
        <translation>le nombre de modules dans une chaîne est hors plage</translation>
    </message>
    <message>
        <source>give 1 to 1000</source>
        <translation>donnez 1 à 1000</translation>
    </message>
    <message>
        <source>the number of strings is out of range</source>
        <translation>le nombre de chaînes est hors plage</translation>
    </message>
    <message>
        <source>give 0 to 20 %</source>
        <translation>donnez 0 à 20 %</translation>
    </message>
    <message>
        <source>give 20 to 100 °C</source>
        <translation>donnez 20 à 100 °C</translation>
    </message>
    <message>
        <source>give 0 to 2000 W/m²</source>
        <translation>donnez 0 à 2000 W/m²</translation>
    </message>
    <message>
        <source>give -90 to 120 °C</source>
        <translation>donnez -90 à 120 °C</translation>
    </message>
    <message>
        <source>the coldest temperature lies above the hottest</source>
        <translation>la température la plus froide est au-dessus de la plus chaude</translation>
    </message>
    <message>
        <source>the open-circuit voltage of the module is not stated</source>
        <translation>la tension en circuit ouvert du module n’est pas précisée</translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not stated</source>
        <translation>la température ambiante la plus froide n’est pas précisée</translation>
    </message>
    <message>
        <source>by the maker&apos;s coefficient of %1</source>
        <translation>d’après le coefficient du fabricant, %1</translation>
    </message>
    <message>
        <source>the maker&apos;s coefficient of Voc is not stated, and the table of factors is for crystalline silicon only</source>
        <translation>le coefficient de Voc du fabricant n’est pas précisé, et le tableau de facteurs ne vaut que pour le silicium cristallin</translation>
    </message>
    <message>
        <source>the table of factors ends at −40 °C; the maker&apos;s coefficient of Voc is needed</source>
        <translation>le tableau de facteurs s’arrête à −40 °C&#x202f;; il faut le coefficient de Voc du fabricant</translation>
    </message>
    <message>
        <source>by the factor %1 of NEC Table 690.7(A), as no coefficient is stated</source>
        <translation>d’après le facteur %1 de NEC Table 690.7(A), car aucun coefficient n’est précisé</translation>
    </message>
    <message>
        <source>a cell at %1 °C, as stated</source>
        <translation>une cellule à %1 °C, comme précisé</translation>
    </message>
    <message>
        <source>neither the hottest ambient nor the hottest cell temperature is stated</source>
        <translation>ni l’ambiante la plus chaude ni la température de cellule la plus chaude n’est précisée</translation>
    </message>
    <message>
        <source>a cell at %1 °C: %2 °C ambient, NOCT %3 °C, %4 W/m²</source>
        <translation>une cellule à %1 °C&#xa0;: %2 °C ambiante, NOCT %3 °C, %4 W/m²</translation>
    </message>
    <message>
        <source>a cell at %1 °C: %2 °C ambient, NOCT %3 °C (assumed), %4 W/m²</source>
        <translation>une cellule à %1 °C&#xa0;: %2 °C ambiante, NOCT %3 °C (supposé), %4 W/m²</translation>
    </message>
    <message>
        <source>the module</source>
        <translation>le module</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>le lieu</translation>
    </message>
    <message>
        <source>the PV input</source>
        <translation>l’entrée PV</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>inconnu&#xa0;: %1</translation>
    </message>
    <message>
        <source>not checked: the voltage limit of the PV input is not stated</source>
        <translation>non contrôlé&#xa0;: la limite de tension de l’entrée PV n’est pas précisée</translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series, open circuit at %1, %2</source>
        <comment>%n module in series, open circuit at %1, %2</comment>
        <translation>
            <numerusform>%n module en série, circuit ouvert à %1, %2</numerusform>
            <numerusform>%n modules en série, circuit ouvert à %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 with the tolerance of %2 %</source>
        <translation>jusqu’à %1 avec la tolérance de %2 %</translation>
    </message>
    <message>
        <source>voltage when cold</source>
        <translation>tension à froid</translation>
    </message>
    <message>
        <source>Voc</source>
        <translation>Voc</translation>
    </message>
    <message>
        <source>coefficient of Voc</source>
        <translation>coefficient de Voc</translation>
    </message>
    <message>
        <source>coldest temperature</source>
        <translation>température la plus froide</translation>
    </message>
    <message>
        <source>voltage limit</source>
        <translation>limite de tension</translation>
    </message>
    <message>
        <source>The table of factors holds for crystalline silicon; the maker&apos;s coefficient would take precedence.</source>
        <translation>Le tableau de facteurs vaut pour le silicium cristallin&#x202f;; le coefficient du fabricant aurait la priorité.</translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series at maximum power, %1, by an assumed coefficient of %2</source>
        <comment>%n module in series at maximum power, %1, by an assumed coefficient of %2</comment>
        <translation>
            <numerusform>%n module en série à puissance maximale, %1, d’après un coefficient supposé de %2</numerusform>
            <numerusform>%n modules en série à puissance maximale, %1, d’après un coefficient supposé de %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series at maximum power, %1, by the maker&apos;s coefficient of %2</source>
        <comment>%n module in series at maximum power, %1, by the maker&apos;s coefficient of %2</comment>
        <translation>
            <numerusform>%n module en série à puissance maximale, %1, d’après le coefficient du fabricant, %2</numerusform>
            <numerusform>%n modules en série à puissance maximale, %1, d’après le coefficient du fabricant, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the voltage at maximum power is not stated</source>
        <translation>la tension à puissance maximale n’est pas précisée</translation>
    </message>
    <message>
        <source>the coefficient of Vmp is not stated</source>
        <translation>le coefficient de Vmp n’est pas précisé</translation>
    </message>
    <message>
        <source>voltage when hot</source>
        <translation>tension à chaud</translation>
    </message>
    <message>
        <source>not checked: the start voltage of the PV input is not stated</source>
        <translation>non contrôlé&#xa0;: la tension de démarrage de l’entrée PV n’est pas précisée</translation>
    </message>
    <message>
        <source>down to %1 with the tolerance of %2 %</source>
        <translation>jusqu’à %1 au plus bas avec la tolérance de %2 %</translation>
    </message>
    <message>
        <source>Vmp</source>
        <translation>Vmp</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>coefficient de Vmp</translation>
    </message>
    <message>
        <source>hottest temperature</source>
        <translation>température la plus chaude</translation>
    </message>
    <message>
        <source>start voltage</source>
        <translation>tension de démarrage</translation>
    </message>
    <message>
        <source>The coefficient of Vmp is not stated: −0.40 %/°C is taken, the steep end of what sheets of crystalline silicon print.</source>
        <translation>Le coefficient de Vmp n’est pas précisé&#xa0;: −0,40 %/°C est pris, le bout raide de ce qu’impriment les fiches du silicium cristallin.</translation>
    </message>
    <message>
        <source>NOCT is not stated: 45 °C is taken, which is common for framed modules (common practice, no source).</source>
        <translation>NOCT n’est pas précisé&#xa0;: 45 °C est pris, courant pour les modules encadrés (pratique courante, sans source).</translation>
    </message>
    <message>
        <source>operating current</source>
        <translation>courant de service</translation>
    </message>
    <message>
        <source>not known: the current at maximum power is not stated</source>
        <translation>inconnu&#xa0;: le courant à puissance maximale n’est pas précisé</translation>
    </message>
    <message>
        <source>not checked: the current limit of the PV input is not stated</source>
        <translation>non contrôlé&#xa0;: la limite de courant de l’entrée PV n’est pas précisée</translation>
    </message>
    <message numerus="yes">
        <source>%n strings at %1 each</source>
        <comment>%n string at %1 each</comment>
        <translation>
            <numerusform>%n chaîne à %1</numerusform>
            <numerusform>%n chaînes à %1 chacune</numerusform>
        </translation>
    </message>
    <message>
        <source>only the maker can say whether the input holds its current down: ask before connecting</source>
        <translation>seul le fabricant peut dire si l’entrée limite son courant&#xa0;: demandez avant de brancher</translation>
    </message>
    <message>
        <source>Imp</source>
        <translation>Imp</translation>
    </message>
    <message>
        <source>current limit</source>
        <translation>limite de courant</translation>
    </message>
    <message>
        <source>short-circuit current</source>
        <translation>courant de court-circuit</translation>
    </message>
    <message>
        <source>not known: the short-circuit current is not stated</source>
        <translation>inconnu&#xa0;: le courant de court-circuit n’est pas précisé</translation>
    </message>
    <message>
        <source>not checked: neither the short-circuit limit nor the current limit of the PV input is stated</source>
        <translation>non contrôlé&#xa0;: ni la limite de court-circuit ni la limite de courant de l’entrée PV n’est précisée</translation>
    </message>
    <message numerus="yes">
        <source>1.25 × Isc (NEC 690.8(A)(1)) of %n strings</source>
        <comment>1.25 × Isc (NEC 690.8(A)(1)) of %n string</comment>
        <translation>
            <numerusform>1,25 × Isc (NEC 690.8(A)(1)) de %n chaîne</numerusform>
            <numerusform>1,25 × Isc (NEC 690.8(A)(1)) de %n chaînes</numerusform>
        </translation>
    </message>
    <message>
        <source>the short-circuit limit of the PV input is not stated and not lower than its current limit</source>
        <translation>la limite de court-circuit de l’entrée PV n’est pas précisée et n’est pas plus basse que sa limite de courant</translation>
    </message>
    <message>
        <source>the short-circuit limit of the PV input is not stated: ask before connecting</source>
        <translation>la limite de court-circuit de l’entrée PV n’est pas précisée&#xa0;: demandez avant de brancher</translation>
    </message>
    <message>
        <source>Isc</source>
        <translation>Isc</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>not known: Vmp or Imp is not stated</source>
        <translation>inconnu&#xa0;: Vmp ou Imp n’est pas précisé</translation>
    </message>
    <message>
        <source>not checked: the power limit of the PV input is not stated</source>
        <translation>non contrôlé&#xa0;: la limite de puissance de l’entrée PV n’est pas précisée</translation>
    </message>
    <message numerus="yes">
        <source>%n modules at standard test conditions</source>
        <comment>%n module at standard test conditions</comment>
        <translation>
            <numerusform>%n module aux conditions d’essai normalisées</numerusform>
            <numerusform>%n modules aux conditions d’essai normalisées</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 cannot be used</source>
        <translation>jusqu’à %1 ne peuvent être utilisés</translation>
    </message>
    <message>
        <source>about %1 when hot</source>
        <translation>environ %1 à chaud</translation>
    </message>
    <message>
        <source>power limit</source>
        <translation>limite de puissance</translation>
    </message>
    <message>
        <source>%1 strings in parallel: each needs its own fuse (IEC 62548:2016; NEC 690.9). Its size follows from Isc of the module, which is not stated.</source>
        <translation>%1 chaînes en parallèle&#xa0;: il faut à chacune son propre fusible (IEC 62548:2016&#x202f;; NEC 690.9). Son calibre dépend de Isc du module, qui n’est pas précisé.</translation>
    </message>
    <message>
        <source>%1 strings in parallel: each needs its own fuse, as the others feed %2 into a faulty one (IEC 62548:2016; NEC 690.9): between %3 and %4 (1.5 and 2.4 × Isc), and not above the largest fuse that the module&apos;s label allows.</source>
        <translation>%1 chaînes en parallèle&#xa0;: il faut à chacune son propre fusible, car les autres débitent %2 dans une chaîne en défaut (IEC 62548:2016&#x202f;; NEC 690.9)&#xa0;: entre %3 et %4 (1,5 et 2,4 × Isc), et pas au-dessus du plus gros fusible qu’admet la plaque du module.</translation>
    </message>
    <message>
        <source>All modules are of one kind, face one way and lie in the same light; for others nothing is claimed.</source>
        <translation>Tous les modules sont d’une sorte, orientés pareil et sous la même lumière&#x202f;; pour d’autres, rien n’est affirmé.</translation>
    </message>
    <message>
        <source>Voltages of the module carry the stated tolerance of %1 %.</source>
        <translation>Les tensions du module portent la tolérance précisée de %1 %.</translation>
    </message>
    <message>
        <source>The tolerance of the module&apos;s voltages is not stated: 3 % is taken (common practice, no source).</source>
        <translation>La tolérance des tensions du module n’est pas précisée&#xa0;: 3 % est pris (pratique courante, sans source).</translation>
    </message>
    <message>
        <source>the operating current of %1 is %2 above the %3 that the input is made for</source>
        <translation>le courant de service de %1 dépasse de %2 les %3 pour lesquels l’entrée est faite</translation>
    </message>
    <message>
        <source>the short-circuit current, %1 with the factor 1.25, is above the %2 that are stated, and how much the input withstands is not</source>
        <translation>le courant de court-circuit, %1 avec le facteur 1,25, dépasse les %2 précisés, et ce que l’entrée supporte ne l’est pas</translation>
    </message>
    <message>
        <source>Do not connect before the maker has been asked: %1. More current is not clipping.</source>
        <translation>Ne branchez pas avant d’avoir demandé au fabricant&#xa0;: %1. Plus de courant n’est pas de l’écrêtage.</translation>
    </message>
    <message>
        <source>Do not connect: in the cold the string stays only %1 below the limit of %2 as calculated, and reaches %3 with the module&apos;s tolerance of %4 %.</source>
        <translation>Ne branchez pas&#xa0;: à froid, la chaîne ne reste que %1 sous la limite de %2 par le calcul, et atteint %3 avec la tolérance du module de %4 %.</translation>
    </message>
    <message>
        <source>Too close to call: in the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with the module&apos;s tolerance of %3 %.</source>
        <translation>Impossible à trancher&#xa0;: à chaud, la chaîne ne reste que %1 au-dessus de la tension de démarrage par le calcul, et tombe à %2 avec la tolérance du module de %3 %.</translation>
    </message>
    <message>
        <source>In the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with the module&apos;s tolerance of %3 %.</source>
        <translation>À chaud, la chaîne ne reste que %1 au-dessus de la tension de démarrage par le calcul, et tombe à %2 avec la tolérance du module de %3 %.</translation>
    </message>
    <message>
        <source>%1 of PV against the %2 that the input takes: up to %3 cannot be used.</source>
        <translation>%1 de PV face aux %2 que prend l’entrée&#xa0;: jusqu’à %3 ne peuvent être utilisés.</translation>
    </message>
    <message>
        <source>in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, no tolerance counted</source>
        <translation>à froid la chaîne reste %1 sous la limite de tension, à chaud %2 au-dessus de la tension de démarrage, sans compter de tolérance</translation>
    </message>
    <message>
        <source>in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, the module&apos;s tolerance of %3 % counted</source>
        <translation>à froid la chaîne reste %1 sous la limite de tension, à chaud %2 au-dessus de la tension de démarrage, tolérance du module de %3 % comprise</translation>
    </message>
    <message>
        <source>Danger, do not connect: at %1 the string reaches %2, which is %3 above the limit of %4. The input can be destroyed and catch fire.</source>
        <translation>Danger, ne branchez pas&#xa0;: à %1, la chaîne atteint %2, soit %3 au-dessus de la limite de %4. L’entrée peut être détruite et prendre feu.</translation>
    </message>
    <message>
        <source>Danger, do not connect: the short-circuit current, %1 with the factor 1.25, is %2 above the short-circuit limit of %3.</source>
        <translation>Danger, ne branchez pas&#xa0;: le courant de court-circuit, %1 avec le facteur 1,25, dépasse de %2 la limite de court-circuit de %3.</translation>
    </message>
    <message>
        <source>Too low to start when hot: the string falls to %1, which is %2 below the start voltage of %3.</source>
        <translation>Trop bas pour démarrer à chaud&#xa0;: la chaîne tombe à %1, soit %2 sous la tension de démarrage de %3.</translation>
    </message>
    <message>
        <source>Do not connect yet: whether the string suits the input is not known.</source>
        <translation>Ne branchez pas encore&#xa0;: si la chaîne convient à l’entrée est inconnu.</translation>
    </message>
    <message>
        <source>Fits with clipping: %1 For the rest %2.</source>
        <translation>Convient avec écrêtage&#xa0;: %1 Pour le reste, %2.</translation>
    </message>
    <message>
        <source>Fits: %1.</source>
        <translation>Convient&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 of the module</source>
        <translation>%1 du module</translation>
    </message>
    <message>
        <source>%1 of the place</source>
        <translation>%1 du lieu</translation>
    </message>
    <message>
        <source>%1 of the PV input</source>
        <translation>%1 de l’entrée PV</translation>
    </message>
    <message>
        <source>%1; how many strings side by side is not known.</source>
        <translation>%1&#x202f;; combien de chaînes côte à côte est inconnu.</translation>
    </message>
    <message>
        <source>%1; even one string brings more current than is stated: ask the maker.</source>
        <translation>%1&#x202f;; même une seule chaîne apporte plus de courant que précisé&#xa0;: demandez au fabricant.</translation>
    </message>
    <message>
        <source>%1; most strings within the current limit: %2.</source>
        <translation>%1&#x202f;; le plus de chaînes dans la limite de courant&#xa0;: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n modules</source>
        <comment>%n module</comment>
        <translation>
            <numerusform>%n module</numerusform>
            <numerusform>%n modules</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 are missing</source>
        <comment>%1 is missing</comment>
        <translation>
            <numerusform>%1 manque</numerusform>
            <numerusform>%1 manquent</numerusform>
        </translation>
    </message>
    <message>
        <source>exceeds the voltage limit when cold</source>
        <translation>dépasse la limite de tension à froid</translation>
    </message>
    <message>
        <source>exceeds the short-circuit limit</source>
        <translation>dépasse la limite de court-circuit</translation>
    </message>
    <message>
        <source>ask before connecting</source>
        <translation>demander avant de brancher</translation>
    </message>
    <message>
        <source>too close to call: %1</source>
        <translation>impossible à trancher&#xa0;: %1</translation>
    </message>
    <message>
        <source>too low to start when hot</source>
        <translation>trop bas pour démarrer à chaud</translation>
    </message>
    <message>
        <source>fits with clipping</source>
        <translation>convient avec écrêtage</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>convient</translation>
    </message>
    <message>
        <source>The current is above its limit too.</source>
        <translation>Le courant dépasse aussi sa limite.</translation>
    </message>
    <message>
        <source>The short-circuit current is above its limit too.</source>
        <translation>Le courant de court-circuit dépasse aussi sa limite.</translation>
    </message>
    <message>
        <source>The voltage when cold is too close to its limit to call.</source>
        <translation>La tension à froid est trop près de sa limite pour trancher.</translation>
    </message>
    <message>
        <source>When hot the string is too low to start.</source>
        <translation>À chaud, la chaîne est trop basse pour démarrer.</translation>
    </message>
    <message>
        <source>Not checked: %1, as %2.</source>
        <translation>Non contrôlé&#xa0;: %1, car %2.</translation>
    </message>
    <message>
        <source>Each string needs its own fuse.</source>
        <translation>Il faut à chaque chaîne son propre fusible.</translation>
    </message>
    <message>
        <source>How many modules may be in series is not known until the voltage when cold and the limit are.</source>
        <translation>Combien de modules peuvent être en série est inconnu tant que la tension à froid et la limite le sont.</translation>
    </message>
    <message>
        <source>Not even one of these modules stays within the voltage limit when cold.</source>
        <translation>Pas même un seul de ces modules ne reste dans la limite de tension à froid.</translation>
    </message>
    <message>
        <source>No string fits: %1 would be needed to start when hot, but only %2 may be in series when cold.</source>
        <translation>Aucune chaîne ne convient&#xa0;: il faudrait %1 pour démarrer à chaud, mais seulement %2 peuvent être en série à froid.</translation>
    </message>
    <message numerus="yes">
        <source>Longest string within the voltage limit: %n modules in series</source>
        <comment>Longest string within the voltage limit: %n module in series</comment>
        <translation>
            <numerusform>Plus longue chaîne dans la limite de tension&#xa0;: %n module en série</numerusform>
            <numerusform>Plus longue chaîne dans la limite de tension&#xa0;: %n modules en série</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Longest string within the voltage limit: %n modules in series (%1 at least, to start when hot)</source>
        <comment>Longest string within the voltage limit: %n module in series (%1 at least, to start when hot)</comment>
        <translation>
            <numerusform>Plus longue chaîne dans la limite de tension&#xa0;: %n module en série (%1 au moins, pour démarrer à chaud)</numerusform>
            <numerusform>Plus longue chaîne dans la limite de tension&#xa0;: %n modules en série (%1 au moins, pour démarrer à chaud)</numerusform>
        </translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dans la limite</translation>
    </message>
    <message>
        <source>clipped</source>
        <translation>écrêté</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>au-delà</translation>
    </message>
    <message>
        <source>above: ask</source>
        <translation>au-dessus&#xa0;: demander</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>impossible à trancher</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Decision rule: a voltage is inside its limit where it stays so with the whole tolerance of the module, beyond it as soon as the calculated value is, and too close to call in between (guarded acceptance, JCGM 106:2012, 8.3; NEC 690.7(A) holds the calculated value against the limit).</source>
        <translation>Règle de décision&#xa0;: une tension est dans sa limite si elle y reste avec toute la tolérance du module, au-delà dès que la valeur calculée l’est, et impossible à trancher entre les deux (acceptation gardée, JCGM 106:2012, 8.3&#x202f;; NEC 690.7(A) confronte la valeur calculée à la limite).</translation>
    </message>
    <message>
        <source>PV strings are live whenever there is light and can carry dangerous DC voltage; they cannot be switched off at the module.</source>
        <translation>Les chaînes PV sont sous tension dès qu’il y a de la lumière et peuvent porter une tension continue dangereuse&#x202f;; elles ne se coupent pas au module.</translation>
    </message>
    <message>
        <source>Connect and disconnect only without load and with the modules covered; DC arcs do not go out by themselves.</source>
        <translation>Branchez et débranchez seulement sans charge et modules couverts&#x202f;; les arcs en courant continu ne s’éteignent pas d’eux-mêmes.</translation>
    </message>
    <message>
        <source>Check polarity and measure the open-circuit voltage before connecting.</source>
        <translation>Vérifiez la polarité et mesurez la tension en circuit ouvert avant de brancher.</translation>
    </message>
    <message>
        <source>Local electrical codes and a licensed electrician come first; this check is arithmetic on stated values, not a design.</source>
        <translation>Les règles électriques locales et un électricien agréé passent d’abord&#x202f;; ce contrôle est un calcul sur des valeurs précisées, pas un projet.</translation>
    </message>
</context>
<context>
    <name>quantities</name>
    <message>
        <source>rated energy</source>
        <translation>énergie assignée</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>rang</translation>
    </message>
    <message>
        <source>drains in the mean</source>
        <translation>décharges dans la moyenne</translation>
    </message>
    <message>
        <source>scatter of its drains</source>
        <translation>dispersion de ses décharges</translation>
    </message>
    <message>
        <source>spread between specimens</source>
        <translation>dispersion entre exemplaires</translation>
    </message>
    <message>
        <source>next specimen</source>
        <translation>prochain exemplaire</translation>
    </message>
    <message>
        <source>delivered energy</source>
        <translation>énergie délivrée</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>durée</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>charge moyenne</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fraction utile</translation>
    </message>
    <message>
        <source>energy per gauge point</source>
        <translation>énergie par point de jauge</translation>
    </message>
    <message>
        <source>gauge-implied energy</source>
        <translation>énergie selon la jauge</translation>
    </message>
    <message>
        <source>slope, delivered against gauge-implied</source>
        <translation>pente, délivré selon la jauge</translation>
    </message>
    <message>
        <source>chi-square of that line</source>
        <translation>khi-deux de cette droite</translation>
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
        <source>quadratic loss</source>
        <translation>perte quadratique</translation>
    </message>
    <message>
        <source>deliverable energy</source>
        <translation>énergie délivrable</translation>
    </message>
    <message>
        <source>run time</source>
        <translation>autonomie</translation>
    </message>
    <message>
        <source>change of energy</source>
        <translation>variation d’énergie</translation>
    </message>
    <message>
        <source>not delivered</source>
        <translation>non délivré</translation>
    </message>
    <message>
        <source>taken by the no-load draw</source>
        <translation>pris par la consommation à vide</translation>
    </message>
    <message>
        <source>conversion or missing capacity</source>
        <translation>conversion ou capacité manquante</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>erreur de jauge</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>encore à venir</translation>
    </message>
    <message>
        <source>until empty</source>
        <translation>jusqu’à vide</translation>
    </message>
    <message>
        <source>least gauge error</source>
        <translation>erreur de jauge minimale</translation>
    </message>
    <message>
        <source>price per rated kWh</source>
        <translation>prix du kWh assigné</translation>
    </message>
    <message>
        <source>price per usable kWh</source>
        <translation>prix du kWh utile</translation>
    </message>
    <message>
        <source>paid per rated kWh</source>
        <translation>payé par kWh assigné</translation>
    </message>
    <message>
        <source>paid per usable kWh</source>
        <translation>payé par kWh utile</translation>
    </message>
    <message>
        <source>usable fraction at this load</source>
        <translation>fraction utile à cette charge</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantie</translation>
    </message>
    <message>
        <source>energy in</source>
        <translation>énergie reçue</translation>
    </message>
    <message>
        <source>time to full</source>
        <translation>temps jusqu’au plein</translation>
    </message>
    <message>
        <source>mean power in</source>
        <translation>puissance moyenne reçue</translation>
    </message>
    <message>
        <source>peak power in</source>
        <translation>puissance max. reçue</translation>
    </message>
    <message>
        <source>taper before the end</source>
        <translation>décroissance avant la fin</translation>
    </message>
    <message>
        <source>round trip</source>
        <translation>aller-retour</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>standby draw</source>
        <translation>consommation en veille</translation>
    </message>
    <message>
        <source>own draw a day</source>
        <translation>consommation propre par jour</translation>
    </message>
    <message>
        <source>own draw a month</source>
        <translation>consommation propre par mois</translation>
    </message>
    <message>
        <source>output held</source>
        <translation>puissance tenue</translation>
    </message>
    <message>
        <source>peak output held</source>
        <translation>puissance de crête tenue</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>puissance assignée</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>puissance de crête</translation>
    </message>
    <message>
        <source>power of the PV input</source>
        <translation>puissance de l’entrée PV</translation>
    </message>
    <message>
        <source>delivered energy per mass</source>
        <translation>énergie délivrée par masse</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>jours d’autonomie</translation>
    </message>
    <message>
        <source>days with the output left on</source>
        <translation>jours, sortie laissée active</translation>
    </message>
    <message>
        <source>hours until empty</source>
        <translation>heures jusqu’à vide</translation>
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
    <message>
        <source>Gauge against meter</source>
        <translation>Jauge face au compteur</translation>
    </message>
    <message>
        <source>Every gauge reading is paired with the energy delivered by that moment. In a drain from full to cut-off the gauge error is the gauge less the share of the delivered energy that is still to come; in any other run the label&apos;s energy stands for the whole. Delivered against gauge-implied energy is fitted as a straight line with uncertainties in both (York and others 2004).</source>
        <translation>Chaque relevé de jauge est associé à l’énergie délivrée à ce moment. Dans une décharge de la pleine charge à la coupure, l’erreur de jauge est la jauge moins la part de l’énergie délivrée qui reste à venir&#x202f;; dans tout autre essai, l’énergie assignée tient lieu de tout. L’énergie délivrée face à l’énergie selon la jauge est ajustée par une droite avec incertitudes sur les deux (York et al. 2004).</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>An accurate gauge falls between two readings by a share between that of the energy and that of the time, whatever the unit&apos;s own draw is; only what lies outside, beyond gauge step and uncertainty, is called a fault. The least gauge error is the smallest worst error over every physically possible unit: a small linear programme. In a drain from full to cut-off each single reading is held against the shares of energy and time that had gone. A lone reading that a slip of the pen explains is doubted itself.</source>
        <translation>Une jauge juste baisse entre deux relevés d’une part comprise entre celle de l’énergie et celle du temps, quelle que soit la consommation propre de la station&#x202f;; n’est appelé défaut que ce qui en sort, au-delà du pas de la jauge et de l’incertitude. L’erreur de jauge minimale est la plus petite erreur maximale sur toutes les stations physiquement possibles&#xa0;: un petit programme linéaire. Dans une décharge de la pleine charge à la coupure, chaque relevé est confronté aux parts d’énergie et de temps parties. Un relevé isolé qu’une étourderie explique est lui-même mis en doute.</translation>
    </message>
    <message>
        <source>When it went off</source>
        <translation>Quand elle s’est coupée</translation>
    </message>
    <message>
        <source>The moment of cut-off is taken from the log of the meter; else from the last watt-hours of a steady load; else it lies within five minutes before it was noted, or as many as the run states, and of a run found off anywhere since the last reading.</source>
        <translation>Le moment de la coupure est pris du journal du compteur&#x202f;; sinon des derniers wattheures d’une charge constante&#x202f;; sinon il est dans les cinq minutes avant d’être noté, ou autant que l’essai le précise, et pour un essai trouvé éteint, n’importe où depuis le dernier relevé.</translation>
    </message>
    <message>
        <source>Where the energy goes</source>
        <translation>Où va l’énergie</translation>
    </message>
    <message>
        <source>While the output is on the unit itself consumes power: the no-load loss of IEC 61683. Within one run it is told from energy per point only if the gauge is linear in stored energy and the load varied. Over several full drains delivered energy falls with the hours of output on, which needs no gauge: D = E* − P*·T − c·Q, which follows from losses that are a constant, a part that grows with the load, and a part that grows with its square. The program&apos;s help derives it.</source>
        <translation>Quand la sortie est active, la station elle-même consomme de la puissance&#xa0;: les pertes à vide d’IEC 61683. Dans un seul essai, l’énergie par point ne les dit que si la jauge est linéaire en énergie stockée et si la charge a varié. Sur plusieurs décharges complètes, l’énergie délivrée baisse avec les heures de sortie active, ce qui n’a besoin d’aucune jauge&#xa0;: D = E* − P*·T − c·Q, ce qui découle de pertes faites d’une constante, d’une part qui croît avec la charge et d’une part qui croît avec son carré. L’aide du programme le déduit.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of Physics 72, 2004, 367.</source>
        <translation>IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of Physics 72, 2004, 367.</translation>
    </message>
    <message>
        <source>made %1, %2 (%3) by Ullage %4</source>
        <translation>fait le %1, %2 (%3) avec Ullage %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>After ± stands half the width of an interval meant to cover 95 %.</source>
        <translation>Après ± figure la demi-largeur d’un intervalle censé couvrir 95 %.</translation>
    </message>
    <message>
        <source>The same, continued</source>
        <translation>La même chose, suite</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Résumé</translation>
    </message>
    <message>
        <source>There is no drain to compare.</source>
        <translation>Il n’y a aucune décharge à comparer.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Prudence</translation>
    </message>
    <message>
        <source>Units as vessels at one height scale, at %1: the height is the rated energy, filled what is deliverable, hatched what the unit&apos;s own draw takes where that is known.</source>
        <translation>Stations en récipients à une même échelle de hauteur, à %1&#xa0;: la hauteur est l’énergie assignée, rempli ce qui est délivrable, hachuré ce que prend la consommation propre de la station, là où elle est connue.</translation>
    </message>
    <message>
        <source>Units as vessels at one height scale, as tested: the height is the rated energy, filled what was delivered, hatched what the unit&apos;s own draw takes where that is known.</source>
        <translation>Stations en récipients à une même échelle de hauteur, comme testé&#xa0;: la hauteur est l’énergie assignée, rempli ce qui a été délivré, hachuré ce que prend la consommation propre de la station, là où elle est connue.</translation>
    </message>
    <message>
        <source>Usable fraction at %1 with its 95 % interval; grey where the unit is as tested, at another load.</source>
        <translation>Fraction utile à %1 avec son intervalle à 95 %&#x202f;; en gris là où la station est comme testé, à une autre charge.</translation>
    </message>
    <message>
        <source>Usable fraction with its 95 % interval, each at the load of its run.</source>
        <translation>Fraction utile avec son intervalle à 95 %, chacune à la charge de son essai.</translation>
    </message>
    <message>
        <source>Next run</source>
        <translation>Prochain essai</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Dérive</translation>
    </message>
    <message>
        <source>Gauge from run to run</source>
        <translation>Jauge d’un essai à l’autre</translation>
    </message>
    <message>
        <source>%1, all drains</source>
        <translation>%1, toutes les décharges</translation>
    </message>
    <message>
        <source>Comparison of storage units at %1</source>
        <translation>Comparaison de stations à %1</translation>
    </message>
    <message>
        <source>Comparison of storage units as tested</source>
        <translation>Comparaison de stations comme testé</translation>
    </message>
    <message>
        <source>What all drains of each unit say together</source>
        <translation>Ce que disent ensemble toutes les décharges de chaque station</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Graphiques</translation>
    </message>
    <message>
        <source>Usable fraction of the units against load: points are drains, lines what all drains of a unit say.</source>
        <translation>Fraction utile des stations selon la charge&#xa0;: les points sont des décharges, les lignes ce que disent toutes les décharges d’une station.</translation>
    </message>
    <message>
        <source>Gauge errors of the units against what they had delivered: above 0 a gauge shows too much.</source>
        <translation>Erreurs de jauge des stations selon ce qu’elles avaient délivré&#xa0;: au-dessus de 0, une jauge montre trop.</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Bilans d’incertitude</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>Assumed of the register</source>
        <translation>Supposé de l’index</translation>
    </message>
    <message>
        <source>reading of</source>
        <translation>relevé de</translation>
    </message>
    <message>
        <source>read as</source>
        <translation>lu comme</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>may be missing</source>
        <translation>il peut manquer</translation>
    </message>
    <message>
        <source>Delivered and gauge-implied energy, %1</source>
        <translation>Énergie délivrée et énergie selon la jauge, %1</translation>
    </message>
    <message>
        <source>Gauge error, %1</source>
        <translation>Erreur de jauge, %1</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Charge, %1</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>There is no delivered energy to state an uncertainty of.</source>
        <translation>Il n’y a aucune énergie délivrée dont donner l’incertitude.</translation>
    </message>
    <message>
        <source>Delivered energy of %1</source>
        <translation>Énergie délivrée de %1</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>corrélation</translation>
    </message>
    <message>
        <source>type</source>
        <translation>type</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>degrés de liberté</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>sensibilité</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>incertitude-type</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>95 % interval ± %1 Wh.</source>
        <translation>Intervalle à 95 % ± %1 Wh.</translation>
    </message>
    <message>
        <source>95 % interval ± %1 Wh: %2.</source>
        <translation>Intervalle à 95 % ± %1 Wh&#xa0;: %2.</translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation>Encore aucun relevé.</translation>
    </message>
    <message>
        <source>Times are local to %1, with their offset.</source>
        <translation>Les heures sont locales à %1, avec leur décalage.</translation>
    </message>
    <message>
        <source>Times are local to %1 (%2).</source>
        <translation>Les heures sont locales à %1 (%2).</translation>
    </message>
    <message>
        <source>%1 of %2 readings. %3 in between, of which there is nothing to tell, are left out, spread evenly; the run sheet holds all of them.</source>
        <translation>%1 relevés sur %2. %3 entre eux, dont il n’y a rien à dire, sont laissés de côté, répartis également&#x202f;; la fiche d’essai les contient tous.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>gauge %1 → %2</source>
        <translation>jauge %1 → %2</translation>
    </message>
    <message>
        <source>gauge %1</source>
        <translation>jauge %1</translation>
    </message>
    <message>
        <source>register %1 → %2</source>
        <translation>index %1 → %2</translation>
    </message>
    <message>
        <source>register %1</source>
        <translation>index %1</translation>
    </message>
    <message>
        <source>second register %1 → %2</source>
        <translation>second index %1 → %2</translation>
    </message>
    <message>
        <source>second register %1</source>
        <translation>second index %1</translation>
    </message>
    <message>
        <source>meter %1 → %2</source>
        <translation>compteur %1 → %2</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>compteur %1</translation>
    </message>
    <message>
        <source>display %1 → %2</source>
        <translation>afficheur %1 → %2</translation>
    </message>
    <message>
        <source>display %1</source>
        <translation>afficheur %1</translation>
    </message>
    <message>
        <source>time %1 → %2</source>
        <translation>heure %1 → %2</translation>
    </message>
    <message>
        <source>mark %1 → %2</source>
        <translation>repère %1 → %2</translation>
    </message>
    <message>
        <source>remark %1 → %2</source>
        <translation>remarque %1 → %2</translation>
    </message>
    <message>
        <source>remark changed</source>
        <translation>remarque modifiée</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>rétabli</translation>
    </message>
    <message>
        <source>nothing that is stored here</source>
        <translation>rien qui soit enregistré ici</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>repère %1</translation>
    </message>
    <message>
        <source>remark %1</source>
        <translation>remarque %1</translation>
    </message>
    <message>
        <source>time only</source>
        <translation>heure seule</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1, essai %2</translation>
    </message>
    <message>
        <source>none given</source>
        <translation>aucune donnée</translation>
    </message>
    <message>
        <source>Amendments of readings</source>
        <translation>Rectifications de relevés</translation>
    </message>
    <message>
        <source>run</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>comme saisi</translation>
    </message>
    <message>
        <source>change</source>
        <translation>changement</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>The readings come from run sheets, which carry no history: what was amended or withdrawn before they were written is not known.</source>
        <translation>Les relevés viennent de fiches d’essai, qui ne portent pas d’historique&#xa0;: ce qui a été rectifié ou retiré avant leur écriture est inconnu.</translation>
    </message>
    <message>
        <source>No reading was amended or withdrawn.</source>
        <translation>Aucun relevé n’a été rectifié ni retiré.</translation>
    </message>
    <message>
        <source>A logbook keeps what an amendment replaced. Withdrawn readings take no part in any result.</source>
        <translation>Un carnet garde ce qu’une rectification a remplacé. Les relevés retirés ne prennent part à aucun résultat.</translation>
    </message>
    <message>
        <source>Method and sources</source>
        <translation>Méthode et sources</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>About this report</source>
        <translation>À propos de ce rapport</translation>
    </message>
    <message>
        <source>This report was %1. Its figures follow from the readings alone and can be worked out again from them.</source>
        <translation>Ce rapport a été %1. Ses chiffres découlent des seuls relevés et peuvent en être recalculés.</translation>
    </message>
    <message>
        <source>no reason was given</source>
        <translation>aucune raison n’a été donnée</translation>
    </message>
    <message>
        <source>no interval</source>
        <translation>sans intervalle</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>result</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>status</source>
        <translation>statut</translation>
    </message>
    <message>
        <source>What cannot be known from these readings</source>
        <translation>Ce que ces relevés ne permettent pas de savoir</translation>
    </message>
    <message>
        <source>Every result above is measured and has its interval.</source>
        <translation>Chaque résultat ci-dessus est mesuré et a son intervalle.</translation>
    </message>
    <message>
        <source>%1 and %2 (%3)</source>
        <translation>%1 et %2 (%3)</translation>
    </message>
    <message>
        <source>and %1 more, which the table of differences names</source>
        <translation>et %1 autres, que nomme le tableau des écarts</translation>
    </message>
    <message>
        <source>%1. Neither of such a pair may be called better.</source>
        <translation>%1. Aucune des deux d’une telle paire ne peut être dite meilleure.</translation>
    </message>
    <message>
        <source>Too close to call with these meters</source>
        <translation>Impossibles à départager avec ces compteurs</translation>
    </message>
    <message>
        <source>Not comparable</source>
        <translation>Non comparables</translation>
    </message>
    <message>
        <source>The difference between the two units is larger than these meters leave open.</source>
        <translation>L’écart entre les deux stations est plus grand que ce que ces compteurs laissent ouvert.</translation>
    </message>
    <message>
        <source>Every difference between these units is larger than these meters leave open.</source>
        <translation>Chaque écart entre ces stations est plus grand que ce que ces compteurs laissent ouvert.</translation>
    </message>
    <message>
        <source>Differences between units</source>
        <translation>Écarts entre stations</translation>
    </message>
    <message>
        <source>The %1 pairs of these %2 rows are left out here, as more than %3 rows make a table that nobody reads; the export of the differences holds them all (Compare, Export for up to %4 rows, or ullage compare --pairs).</source>
        <translation>Les %1 paires de ces %2 lignes sont laissées de côté ici, car plus de %3 lignes font un tableau que personne ne lit&#x202f;; l’export des écarts les contient toutes (Comparer, Exporter pour %4 lignes au plus, ou ullage compare --pairs).</translation>
    </message>
    <message>
        <source>Usable fraction at %1, the first unit less the second, with its U95: half the width of its 95 % interval.</source>
        <translation>Fraction utile à %1, la première station moins la seconde, avec son U95&#xa0;: la demi-largeur de son intervalle à 95 %.</translation>
    </message>
    <message>
        <source>Usable fraction as tested, each at its own load, the first unit less the second, with its U95: half the width of its 95 % interval.</source>
        <translation>Fraction utile comme testé, chacune à sa propre charge, la première station moins la seconde, avec son U95&#xa0;: la demi-largeur de son intervalle à 95 %.</translation>
    </message>
    <message>
        <source>Two units are clearly different when that interval does not hold 0. Where one meter measured both units the error of its gain is counted once and cancels as far as the two are alike; the gains of two meters do not cancel.</source>
        <translation>Deux stations sont nettement différentes si cet intervalle ne contient pas 0. Là où un même compteur a mesuré les deux stations, son erreur de gain compte une fois et s’annule dans la mesure où les deux se ressemblent&#x202f;; les gains de deux compteurs ne s’annulent pas.</translation>
    </message>
    <message>
        <source>first</source>
        <translation>première</translation>
    </message>
    <message>
        <source>second</source>
        <translation>seconde</translation>
    </message>
    <message>
        <source>difference ± U95</source>
        <translation>écart ± U95</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>verdict</translation>
    </message>
    <message>
        <source>one meter</source>
        <translation>un compteur</translation>
    </message>
    <message>
        <source>yes: its gain cancels</source>
        <translation>oui&#xa0;: son gain s’annule</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1 from full to its cut-off</source>
        <translation>%1 de la pleine charge à sa coupure</translation>
    </message>
    <message>
        <source>%1 down to its cut-off</source>
        <translation>%1 jusqu’à sa coupure</translation>
    </message>
    <message>
        <source>%1 from full until it was found off</source>
        <translation>%1 de la pleine charge jusqu’à être trouvée éteinte</translation>
    </message>
    <message>
        <source>%1 until it was found off</source>
        <translation>%1 jusqu’à être trouvée éteinte</translation>
    </message>
    <message>
        <source>%1 until the tester stopped it</source>
        <translation>%1 jusqu’à l’arrêt par le testeur</translation>
    </message>
    <message>
        <source>%1 so far; the run is still open</source>
        <translation>%1 jusqu’ici&#x202f;; l’essai est encore ouvert</translation>
    </message>
    <message>
        <source>In this charge run of %1 the meter counted %2</source>
        <translation>Dans cet essai de recharge de %1, le compteur a compté %2</translation>
    </message>
    <message>
        <source>In this sustained output run of %1 the meter counted %2</source>
        <translation>Dans cet essai de puissance soutenue de %1, le compteur a compté %2</translation>
    </message>
    <message>
        <source>In this peak output run of %1 the meter counted %2</source>
        <translation>Dans cet essai de puissance de crête de %1, le compteur a compté %2</translation>
    </message>
    <message>
        <source>In this standby run of %1 the meter counted %2</source>
        <translation>Dans cet essai de veille de %1, le compteur a compté %2</translation>
    </message>
    <message>
        <source>%1 delivered %2</source>
        <translation>%1 a délivré %2</translation>
    </message>
    <message>
        <source>What %1 delivered is not known: %2</source>
        <translation>Ce que %1 a délivré est inconnu&#xa0;: %2</translation>
    </message>
    <message>
        <source>What %1 took is not known: %2</source>
        <translation>Ce que %1 a pris est inconnu&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 (rated %2)</source>
        <translation>%1 (%2 assignés)</translation>
    </message>
    <message>
        <source>%1, at a mean load of %2</source>
        <translation>%1, à une charge moyenne de %2</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>The usable fraction is not known: %1.</source>
        <translation>La fraction utile est inconnue&#xa0;: %1.</translation>
    </message>
    <message>
        <source>That is %1 of its label (%2), at this load.</source>
        <translation>C’est %1 de son énergie assignée (%2), à cette charge.</translation>
    </message>
    <message>
        <source>To know more</source>
        <translation>Pour en savoir plus</translation>
    </message>
    <message>
        <source>Where the energy went</source>
        <translation>Où est allée l’énergie</translation>
    </message>
    <message>
        <source>The unit as a vessel: its height is the rated energy, filled what was delivered, hatched what its own draw took where that is known.</source>
        <translation>La station en récipient&#xa0;: sa hauteur est l’énergie assignée, rempli ce qui a été délivré, hachuré ce que sa consommation propre a pris, là où elle est connue.</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Résultats</translation>
    </message>
    <message>
        <source>Gauge right, gauge wrong</source>
        <translation>Jauge juste, jauge fausse</translation>
    </message>
    <message>
        <source>Test report of run %1</source>
        <translation>Rapport d’essai, essai %1</translation>
    </message>
    <message>
        <source>Test report of run %1; maker %2</source>
        <translation>Rapport d’essai, essai %1&#x202f;; fabricant %2</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Journaux</translation>
    </message>
    <message>
        <source>Log of the meter</source>
        <translation>Journal du compteur</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Compteur</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>All drains of this unit together</source>
        <translation>Toutes les décharges de cette station ensemble</translation>
    </message>
    <message>
        <source>Uncertainty budget</source>
        <translation>Bilan d’incertitude</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>from %1 V</source>
        <translation>à partir de %1 V</translation>
    </message>
    <message>
        <source>%1 A short circuit</source>
        <translation>%1 A en court-circuit</translation>
    </message>
    <message>
        <source>1 percentage point</source>
        <translation>1 point de pourcentage</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 points de pourcentage</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>station</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>purchased</source>
        <translation>acheté le</translation>
    </message>
    <message>
        <source>charge cycles before the first run</source>
        <translation>cycles de recharge avant le premier essai</translation>
    </message>
    <message>
        <source>rated energy (claim)</source>
        <translation>énergie assignée (annoncée)</translation>
    </message>
    <message>
        <source>rated output (claim)</source>
        <translation>puissance assignée (annoncée)</translation>
    </message>
    <message>
        <source>peak output (claim)</source>
        <translation>puissance de crête (annoncée)</translation>
    </message>
    <message>
        <source>PV input limits (claim)</source>
        <translation>limites de l’entrée PV (annoncées)</translation>
    </message>
    <message>
        <source>charge time (claim)</source>
        <translation>temps de recharge (annoncé)</translation>
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
        <source>%1 years</source>
        <translation>%1 ans</translation>
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
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>register step</source>
        <translation>pas de l’index</translation>
    </message>
    <message>
        <source>error limit</source>
        <translation>limite d’erreur</translation>
    </message>
    <message>
        <source>± %1 % of the energy</source>
        <translation>± %1 % de l’énergie</translation>
    </message>
    <message>
        <source>register span</source>
        <translation>étendue de l’index</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>points (W, correction, U in %, k)</source>
        <translation>points (W, correction, U en %, k)</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>range from</source>
        <translation>plage de</translation>
    </message>
    <message>
        <source>range to</source>
        <translation>plage à</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificat</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>date du certificat</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratoire</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>valable jusqu’au</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message numerus="yes">
        <source>%n readings, %1 withdrawn</source>
        <comment>%n reading, %1 withdrawn</comment>
        <translation>
            <numerusform>%n relevé, %1 retiré</numerusform>
            <numerusform>%n relevés, %1 retirés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n relevé</numerusform>
            <numerusform>%n relevés</numerusform>
        </translation>
    </message>
    <message>
        <source>kind</source>
        <translation>type</translation>
    </message>
    <message>
        <source>began</source>
        <translation>début</translation>
    </message>
    <message>
        <source>started full</source>
        <translation>pleine au départ</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>ambient</source>
        <translation>ambiante</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>second compteur</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>noté</translation>
    </message>
    <message>
        <source>What was measured, and with what</source>
        <translation>Ce qui a été mesuré, et avec quoi</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Stations</translation>
    </message>
    <message>
        <source>No meter is stated, so delivered energy can have no interval.</source>
        <translation>Aucun compteur n’est précisé, l’énergie délivrée ne peut donc avoir d’intervalle.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Compteurs</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Essai</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>%1: not known, %2.</source>
        <translation>%1&#xa0;: inconnu, %2.</translation>
    </message>
    <message>
        <source>%1: %2 (%3); by the clock %4; units needed %5; rated output %6, peak output %7.</source>
        <translation>%1&#xa0;: %2 (%3)&#x202f;; en temps réel&#xa0;: %4&#x202f;; stations nécessaires&#xa0;: %5&#x202f;; puissance assignée&#xa0;: %6, puissance de crête&#xa0;: %7.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>State of charge from day to day</source>
        <translation>État de charge d’un jour à l’autre</translation>
    </message>
    <message>
        <source>%1: charge remaining by the hour, with the PV array and without, with 95 % bands.</source>
        <translation>%1&#xa0;: charge restante heure par heure, avec et sans le champ PV, avec leurs bandes à 95 %.</translation>
    </message>
    <message>
        <source>Sizing for %1</source>
        <translation>Dimensionnement pour %1</translation>
    </message>
    <message>
        <source>The load list %1 takes %2 a day, %3 W when all of it runs and %4 W at most. One full unit serves so many days of it:</source>
        <translation>La liste de charges %1 prend %2 par jour, %3 W quand tout marche et %4 W au plus. Une station pleine l’alimente ce nombre de jours&#xa0;:</translation>
    </message>
    <message>
        <source>There is no unit to size.</source>
        <translation>Il n’y a aucune station à dimensionner.</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>Champ PV et batterie selon la règle</translation>
    </message>
    <message>
        <source>The load list</source>
        <translation>La liste de charges</translation>
    </message>
    <message>
        <source>What is assumed</source>
        <translation>Ce qui est supposé</translation>
    </message>
    <message>
        <source>This report was %1. Its figures follow from the drains of each unit, the load list and the stated choices, and can be worked out again from them.</source>
        <translation>Ce rapport a été %1. Ses chiffres découlent des décharges de chaque station, de la liste de charges et des choix indiqués, et peuvent en être recalculés.</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Contrôle de l’entrée PV</translation>
    </message>
    <message>
        <source>PV input check: %1</source>
        <translation>Contrôle de l’entrée PV&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 in series, %2 parallel</source>
        <translation>%1 en série, %2 en parallèle</translation>
    </message>
    <message>
        <source>PV input of %1</source>
        <translation>Entrée PV de %1</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>DANGER: %1</source>
        <translation>DANGER&#xa0;: %1</translation>
    </message>
    <message>
        <source>Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8).</source>
        <translation>Conducteurs, et fusibles là où il en faut, de chaque chaîne&#xa0;: pour au moins %1 A (1,25 × 1,25 × courant de court-circuit, NEC 690.8).</translation>
    </message>
    <message>
        <source>Comparisons</source>
        <translation>Comparaisons</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparaison</translation>
    </message>
    <message>
        <source>string or array</source>
        <translation>chaîne ou champ</translation>
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
        <source>outcome</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>repose sur</translation>
    </message>
    <message>
        <source>from stated figures</source>
        <translation>d’après les chiffres précisés</translation>
    </message>
    <message>
        <source>Voltage of the string against cell temperature, with the limits of the PV input.</source>
        <translation>Tension de la chaîne selon la température de cellule, avec les limites de l’entrée PV.</translation>
    </message>
    <message>
        <source>What was stated</source>
        <translation>Ce qui a été précisé</translation>
    </message>
    <message>
        <source>what</source>
        <translation>objet</translation>
    </message>
    <message>
        <source>This report was %1. It is arithmetic on stated values, not a design.</source>
        <translation>Ce rapport a été %1. C’est un calcul sur des valeurs précisées, non une étude.</translation>
    </message>
    <message numerus="yes">
        <source>%n hold</source>
        <comment>%n hold</comment>
        <translation>
            <numerusform>%n tenue</numerusform>
            <numerusform>%n tenues</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not reached</source>
        <comment>%n not reached</comment>
        <translation>
            <numerusform>%n non atteinte</numerusform>
            <numerusform>%n non atteintes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not held</source>
        <comment>%n not held</comment>
        <translation>
            <numerusform>%n non tenue</numerusform>
            <numerusform>%n non tenues</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not decided by this meter</source>
        <comment>%n not decided by this meter</comment>
        <translation>
            <numerusform>%n non tranchée par ce compteur</numerusform>
            <numerusform>%n non tranchées par ce compteur</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not tested</source>
        <comment>%n not tested</comment>
        <translation>
            <numerusform>%n non testée</numerusform>
            <numerusform>%n non testées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n claims: %1.</source>
        <comment>Of %n claim: %1.</comment>
        <translation>
            <numerusform>Sur %n valeur annoncée&#xa0;: %1.</numerusform>
            <numerusform>Sur %n valeurs annoncées&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>What it delivers is not known: %1.</source>
        <translation>Ce qu’elle délivre est inconnu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It delivers %1</source>
        <translation>Elle délivre %1</translation>
    </message>
    <message>
        <source>It delivers %1 of %2 rated</source>
        <translation>Elle délivre %1 sur %2 assignés</translation>
    </message>
    <message>
        <source>%1, a usable fraction of %2</source>
        <translation>%1, soit une fraction utile de %2</translation>
    </message>
    <message>
        <source>%1 (%2; %3).</source>
        <translation>%1 (%2&#x202f;; %3).</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>En bref</translation>
    </message>
    <message>
        <source>No drain of this unit has been noted, so what it delivers is not known.</source>
        <translation>Aucune décharge de cette station n’a été notée, ce qu’elle délivre est donc inconnu.</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Valeurs annoncées</translation>
    </message>
    <message>
        <source>Claims against results</source>
        <translation>Valeurs annoncées face aux résultats</translation>
    </message>
    <message>
        <source>Every drain, and what they say together</source>
        <translation>Chaque décharge, et ce qu’elles disent ensemble</translation>
    </message>
    <message>
        <source>All drains together</source>
        <translation>Toutes les décharges ensemble</translation>
    </message>
    <message>
        <source>Expected at other loads</source>
        <translation>Attendu à d’autres charges</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Courbes</translation>
    </message>
    <message>
        <source>Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.</source>
        <translation>Fraction utile selon la charge&#xa0;: les points sont des décharges avec leur intervalle à 95 %, la ligne est ce que toutes disent ensemble.</translation>
    </message>
    <message>
        <source>Run time against load, likewise.</source>
        <translation>Autonomie selon la charge, de même.</translation>
    </message>
    <message>
        <source>Can the gauge be trusted?</source>
        <translation>Peut-on se fier à la jauge&#x202f;?</translation>
    </message>
    <message>
        <source>Gauge error against what was delivered, one curve for each drain from full to cut-off: above 0 the gauge shows too much.</source>
        <translation>Erreur de jauge selon ce qui était délivré, une courbe par décharge de la pleine charge à la coupure&#xa0;: au-dessus de 0, la jauge montre trop.</translation>
    </message>
    <message>
        <source>From run to run</source>
        <translation>D’un essai à l’autre</translation>
    </message>
    <message>
        <source>The gauge errors of the two drains that this is told by.</source>
        <translation>Les erreurs de jauge des deux décharges d’après lesquelles cela est dit.</translation>
    </message>
    <message>
        <source>Charges and outputs</source>
        <translation>Recharges et sorties</translation>
    </message>
    <message>
        <source>Round trip</source>
        <translation>Aller-retour</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Published by</source>
        <translation>Publié par</translation>
    </message>
    <message>
        <source>Licence of this text</source>
        <translation>Licence de ce texte</translation>
    </message>
    <message>
        <source>Every drain</source>
        <translation>Chaque décharge</translation>
    </message>
    <message>
        <source>Gauge error against what was delivered, drain by drain: above 0 the gauge shows too much.</source>
        <translation>Erreur de jauge selon ce qui était délivré, décharge par décharge&#xa0;: au-dessus de 0, la jauge montre trop.</translation>
    </message>
    <message>
        <source>%1. The whole report holds method, budgets and readings.</source>
        <translation>Ce rapport a été %1. Le rapport entier contient la méthode, les bilans et les relevés.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>gauge %1 %</source>
        <translation>jauge %1 %</translation>
    </message>
    <message>
        <source>register %1 Wh</source>
        <translation>index %1 Wh</translation>
    </message>
    <message>
        <source>meter %1 W</source>
        <translation>compteur %1 W</translation>
    </message>
    <message>
        <source>%1, %2 %3: %4</source>
        <translation>%1, %2 %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1: test report</source>
        <translation>%1&#xa0;: rapport d’essai</translation>
    </message>
    <message>
        <source>maker %1</source>
        <translation>fabricant %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>numéro de série %1</translation>
    </message>
    <message>
        <source>%1 less %2 is %3: its interval does not hold 0, so the two are clearly different.</source>
        <translation>%1 moins %2 donne %3&#xa0;: l’intervalle ne contient pas 0, les deux sont donc nettement différentes.</translation>
    </message>
    <message>
        <source>%1 less %2 is %3: its interval holds 0, so the two are too close to call with these meters and neither may be called better.</source>
        <translation>%1 moins %2 donne %3&#xa0;: l’intervalle contient 0, les deux sont donc impossibles à départager avec ces compteurs et aucune ne peut être dite meilleure.</translation>
    </message>
    <message>
        <source>Its ± is less than those of the two fractions suggest: one meter measured both, and the error of its gain cancels.</source>
        <translation>Son ± est plus petit que ne le suggèrent ceux des deux fractions&#xa0;: un même compteur a mesuré les deux, et son erreur de gain s’annule.</translation>
    </message>
    <message>
        <source>As tested</source>
        <translation>Comme testé</translation>
    </message>
    <message>
        <source>%1 was drained at %2 W for %3 h and delivered %4 of %5 rated: usable %6.</source>
        <translation>%1 a été déchargée à %2 W pendant %3 h et a délivré %4 sur %5 assignés&#xa0;: fraction utile %6.</translation>
    </message>
    <message>
        <source>One drain stands for each of them, so each ± also counts that drains repeat only within %1 %.</source>
        <translation>Une seule décharge compte pour chacune, chaque ± tient donc aussi compte de ce que les décharges ne se répètent qu’à %1 % près.</translation>
    </message>
    <message>
        <source>Why a slow drain delivers less</source>
        <translation>Pourquoi une décharge lente délivre moins</translation>
    </message>
    <message>
        <source>%1 delivered %2 in %3 h at %4 W, but %5 in %6 h at %7 W.</source>
        <translation>%1 a délivré %2 en %3 h à %4 W, mais %5 en %6 h à %7 W.</translation>
    </message>
    <message>
        <source>While its output is on, a unit also feeds itself. The run times of all drains of %1 give a no-load draw of %2. The slow drain lasted %3 h longer, in which that draw takes about %4 Wh; it delivered %5 Wh less.</source>
        <translation>Tant que sa sortie est active, une station s’alimente aussi elle-même. Les durées de toutes les décharges de %1 donnent une consommation à vide de %2. La décharge lente a duré %3 h de plus, pendant lesquelles cette consommation prend environ %4 Wh&#x202f;; elle a délivré %5 Wh de moins.</translation>
    </message>
    <message>
        <source>So a usable fraction belongs to the load of its run, and units have an order at one load only.</source>
        <translation>Une fraction utile vaut donc pour la charge de son essai, et les stations n’ont d’ordre qu’à une même charge.</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>À une charge</translation>
    </message>
    <message>
        <source>At %1 %2 would deliver %3 in %4 h: usable %5 (%6).</source>
        <translation>À %1, %2 délivrerait %3 en %4 h&#xa0;: fraction utile %5 (%6).</translation>
    </message>
    <message>
        <source>%1 cannot be converted and stays as tested: %2.</source>
        <translation>%1 ne peut être ramenée à cette charge et reste comme testé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>What these meters leave open</source>
        <translation>Ce que ces compteurs laissent ouvert</translation>
    </message>
    <message>
        <source>At %1 %2 can stand beside %3 (%4 and %5).</source>
        <translation>À %1, %2 peut être mise à côté de %3 (%4 et %5).</translation>
    </message>
    <message>
        <source>Meters with a smaller error limit would narrow it.</source>
        <translation>Des compteurs à plus petite limite d’erreur le resserreraient.</translation>
    </message>
    <message>
        <source>the units and drains of the worked example are not all there</source>
        <translation>les stations et les décharges de l’exemple traité ne sont pas toutes là</translation>
    </message>
    <message>
        <source>sample data</source>
        <translation>données d’exemple</translation>
    </message>
    <message>
        <source>use the sample data that come with the program</source>
        <translation>utilisez les données d’exemple livrées avec le programme</translation>
    </message>
    <message>
        <source>a report&apos;s name must end in .pdf or .html</source>
        <translation>le nom d’un rapport doit finir par .pdf ou .html</translation>
    </message>
    <message>
        <source>add the ending that you want</source>
        <translation>ajoutez la terminaison que vous voulez</translation>
    </message>
    <message>
        <source>the report is written, but not all files beside it: %1</source>
        <translation>le rapport est écrit, mais pas tous les fichiers à côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>le dossier ne peut être créé</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>choisissez un dossier où vous avez le droit d’écrire</translation>
    </message>
    <message>
        <source>a drawing could not be put into SVG form</source>
        <translation>un dessin n’a pas pu être mis au format SVG</translation>
    </message>
    <message>
        <source>report</source>
        <translation>rapport</translation>
    </message>
    <message>
        <source>try PDF instead</source>
        <translation>essayez plutôt PDF</translation>
    </message>
    <message>
        <source>The numbers of this table in full (CSV)</source>
        <translation>Les nombres de ce tableau en entier (CSV)</translation>
    </message>
    <message>
        <source>the report was cancelled; nothing was written</source>
        <translation>le rapport a été abandonné&#x202f;; rien n’a été écrit</translation>
    </message>
    <message>
        <source>the report could not be put into PDF form</source>
        <translation>le rapport n’a pas pu être mis au format PDF</translation>
    </message>
    <message>
        <source>try HTML instead</source>
        <translation>essayez plutôt HTML</translation>
    </message>
</context>
<context>
    <name>results</name>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>What the figures are</source>
        <translation>Ce que sont les chiffres</translation>
    </message>
    <message>
        <source>Claims against results</source>
        <translation>Valeurs annoncées face aux résultats</translation>
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
        <source>measured</source>
        <translation>mesuré</translation>
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
        <source>Steps of load</source>
        <translation>Paliers de charge</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>held</source>
        <translation>tenu</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>gauge used</source>
        <translation>jauge utilisée</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>the maker&apos;s claim, not measured</source>
        <translation>la valeur annoncée par le fabricant, non mesurée</translation>
    </message>
    <message>
        <source>the warranty is not stated</source>
        <translation>la garantie n’est pas précisée</translation>
    </message>
    <message>
        <source>as tested at %1 W: %2</source>
        <translation>comme testé à %1 W&#xa0;: %2</translation>
    </message>
    <message>
        <source>as tested: %1</source>
        <translation>comme testé&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>station</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>logbook</source>
        <translation>carnet</translation>
    </message>
    <message>
        <source>run</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>repose sur</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>étiquettes</translation>
    </message>
    <message>
        <source>Differences between units at %1</source>
        <translation>Écarts entre stations à %1</translation>
    </message>
    <message>
        <source>Differences between units as tested</source>
        <translation>Écarts entre stations comme testé</translation>
    </message>
    <message>
        <source>Differences between units in %1 at %2</source>
        <translation>Écarts entre stations en %1 à %2</translation>
    </message>
    <message>
        <source>Differences between units in %1 as tested</source>
        <translation>Écarts entre stations en %1 comme testé</translation>
    </message>
    <message>
        <source>Comparison of units at %1</source>
        <translation>Comparaison des stations à %1</translation>
    </message>
    <message>
        <source>Comparison of units as tested</source>
        <translation>Comparaison des stations comme testé</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Laissé de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>first</source>
        <translation>première</translation>
    </message>
    <message>
        <source>second</source>
        <translation>seconde</translation>
    </message>
    <message>
        <source>one meter</source>
        <translation>un compteur</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Resolved: the 95 % interval of the difference does not hold 0.</source>
        <translation>Établi&#xa0;: l’intervalle à 95 % de l’écart ne contient pas 0.</translation>
    </message>
    <message>
        <source>Between %1 of %2 rows: those with the largest usable fraction.</source>
        <translation>Entre %1 des %2 lignes&#xa0;: celles de plus grande fraction utile.</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot;</source>
        <translation>il n’y a pas de colonne «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>colonnes</translation>
    </message>
    <message>
        <source>choose from %1</source>
        <translation>choisissez parmi %1</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is named twice</source>
        <translation>la colonne «&#xa0;%1&#xa0;» est nommée deux fois</translation>
    </message>
    <message>
        <source>name it once</source>
        <translation>nommez-la une fois</translation>
    </message>
    <message>
        <source>stated in the load list</source>
        <translation>précisé dans la liste de charges</translation>
    </message>
    <message>
        <source>It takes nothing yet.</source>
        <translation>Elle ne prend encore rien.</translation>
    </message>
    <message>
        <source>At most %1 W: all %2 W running and the largest start-up extra.</source>
        <translation>Au plus %1 W&#xa0;: tous les %2 W en marche et le plus grand surcroît au démarrage.</translation>
    </message>
    <message>
        <source>%1 W on average while the output is on, %2 h a day, since something is always connected.</source>
        <translation>%1 W en moyenne pendant que la sortie est active, %2 h par jour, car quelque chose est toujours branché.</translation>
    </message>
    <message>
        <source>%1 W on average while the output is on, %2 h a day: the longest use by day and the longest by night.</source>
        <translation>%1 W en moyenne pendant que la sortie est active, %2 h par jour&#xa0;: le plus long usage de jour et le plus long de nuit.</translation>
    </message>
    <message>
        <source>Load list %1</source>
        <translation>Liste de charges %1</translation>
    </message>
    <message>
        <source>appliance</source>
        <translation>appareil</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>power while on</source>
        <translation>puissance en marche</translation>
    </message>
    <message>
        <source>mean in use</source>
        <translation>moyenne à l’usage</translation>
    </message>
    <message>
        <source>hours per day</source>
        <translation>heures par jour</translation>
    </message>
    <message>
        <source>of these at night</source>
        <translation>dont la nuit</translation>
    </message>
    <message>
        <source>highest at start</source>
        <translation>max. au démarrage</translation>
    </message>
    <message>
        <source>energy per day</source>
        <translation>énergie par jour</translation>
    </message>
    <message>
        <source>of this at night</source>
        <translation>dont la nuit</translation>
    </message>
    <message>
        <source>always connected</source>
        <translation>toujours branché</translation>
    </message>
    <message>
        <source>together, over 24 h</source>
        <translation>ensemble, sur 24 h</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listes de charges</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>liste de charges</translation>
    </message>
    <message>
        <source>appliances</source>
        <translation>appareils</translation>
    </message>
    <message>
        <source>mean over the day</source>
        <translation>moyenne du jour</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>sortie active</translation>
    </message>
    <message>
        <source>mean while on</source>
        <translation>moyenne, sortie active</translation>
    </message>
    <message>
        <source>duty while on</source>
        <translation>part du temps, active</translation>
    </message>
    <message>
        <source>all running</source>
        <translation>tout en marche</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>share by day</source>
        <translation>part de jour</translation>
    </message>
    <message>
        <source>share at night</source>
        <translation>part de nuit</translation>
    </message>
    <message>
        <source>At most: all that runs and the largest start-up extra, one appliance starting while all others run.</source>
        <translation>Au plus&#xa0;: tout ce qui marche et le plus grand surcroît au démarrage, un appareil démarrant pendant que tous les autres marchent.</translation>
    </message>
    <message>
        <source>Output on: the longest use by day and the longest by night, or 24 h where something is always connected.</source>
        <translation>Sortie active&#xa0;: le plus long usage de jour et le plus long de nuit, ou 24 h si quelque chose est toujours branché.</translation>
    </message>
    <message numerus="yes">
        <source>Meters in series: %1 and %2 (%n runs)</source>
        <comment>Meters in series: %1 and %2 (%n run)</comment>
        <translation>
            <numerusform>Compteurs en série&#xa0;: %1 et %2 (%n essai)</numerusform>
            <numerusform>Compteurs en série&#xa0;: %1 et %2 (%n essais)</numerusform>
        </translation>
    </message>
    <message>
        <source>Models by their specimens at %1</source>
        <translation>Modèles d’après leurs exemplaires à %1</translation>
    </message>
    <message>
        <source>Models by their specimens, as tested</source>
        <translation>Modèles d’après leurs exemplaires, comme testé</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>specimens</source>
        <translation>exemplaires</translation>
    </message>
    <message>
        <source>A unit belongs to a model where its form names one.</source>
        <translation>Une station appartient à un modèle si son formulaire en nomme un.</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparaison</translation>
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
        <source>PV input check</source>
        <translation>Contrôle de l’entrée PV</translation>
    </message>
    <message>
        <source>%1, PV input of %2</source>
        <translation>%1, entrée PV de %2</translation>
    </message>
    <message>
        <source>%1 in series, %2 parallel</source>
        <translation>%1 en série, %2 en parallèle</translation>
    </message>
    <message>
        <source>Verdict: %1</source>
        <translation>Verdict&#xa0;: %1</translation>
    </message>
    <message>
        <source>Conductors and fuses of a string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8).</source>
        <translation>Conducteurs et fusibles d’une chaîne&#xa0;: pour au moins %1 A (1,25 × 1,25 × courant de court-circuit, NEC 690.8).</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supposé</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>second index</translation>
    </message>
    <message>
        <source>power on the meter</source>
        <translation>puissance au compteur</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>puissance affichée par la station</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>délivré</translation>
    </message>
    <message>
        <source>load since</source>
        <translation>charge depuis</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>erreur de jauge</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>gauge drop</source>
        <translation>baisse de jauge</translation>
    </message>
    <message>
        <source>gauge-implied</source>
        <translation>selon la jauge</translation>
    </message>
    <message>
        <source>delivered / gauge-implied</source>
        <translation>délivré / selon la jauge</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>charge moyenne</translation>
    </message>
    <message>
        <source>energy per point</source>
        <translation>énergie par point</translation>
    </message>
    <message>
        <source>Gauge error against %1.</source>
        <translation>Erreur de jauge face à %1.</translation>
    </message>
    <message>
        <source>Gauge steps by the log of %1</source>
        <translation>Pas de jauge d’après le journal de %1</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Relevés de %1</translation>
    </message>
    <message>
        <source>Intervals of %1</source>
        <translation>Intervalles de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, run %2: %3</source>
        <translation>%1, essai %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1, likely %2</source>
        <translation>%1, vraisemblablement %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>units for %1: %2</source>
        <translation>stations pour %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>units for %1: %2; by the battery rule: %3</source>
        <translation>stations pour %1&#xa0;: %2&#x202f;; d’après la règle de la batterie&#xa0;: %3</translation>
    </message>
    <message>
        <source>rated output: %1; peak output: %2</source>
        <translation>puissance assignée&#xa0;: %1&#x202f;; puissance de crête&#xa0;: %2</translation>
    </message>
    <message>
        <source>Sizing for the load list %1</source>
        <translation>Dimensionnement pour la liste de charges %1</translation>
    </message>
    <message>
        <source>%1 a day, %2 W when all of it runs, %3 W at most</source>
        <translation>%1 par jour, %2 W quand tout marche, %3 W au plus</translation>
    </message>
    <message>
        <source>No unit to size.</source>
        <translation>Aucune station à dimensionner.</translation>
    </message>
    <message>
        <source>never empty without PV</source>
        <translation>jamais vide sans PV</translation>
    </message>
    <message>
        <source>empty after %1 h without PV</source>
        <translation>vide après %1 h sans PV</translation>
    </message>
    <message>
        <source>empty on day %1, after %2 h, without PV</source>
        <translation>vide au jour %1, après %2 h, sans PV</translation>
    </message>
    <message>
        <source>never empty with PV of %1 W</source>
        <translation>jamais vide avec %1 W de PV</translation>
    </message>
    <message>
        <source>empty after %1 h with PV of %2 W</source>
        <translation>vide après %1 h avec %2 W de PV</translation>
    </message>
    <message>
        <source>empty on day %1, after %2 h, with PV of %3 W</source>
        <translation>vide au jour %1, après %2 h, avec %3 W de PV</translation>
    </message>
    <message>
        <source>at the lower end of its energy empty after %1 h all the same</source>
        <translation>au bas de son énergie, vide tout de même après %1 h</translation>
    </message>
    <message>
        <source>at the lower end of its energy empty on day %1, after %2 h, all the same</source>
        <translation>au bas de son énergie, vide tout de même au jour %1, après %2 h</translation>
    </message>
    <message>
        <source>the list alone</source>
        <translation>la liste seule</translation>
    </message>
    <message numerus="yes">
        <source>as measured, %n units</source>
        <comment>as measured, %n unit</comment>
        <translation>
            <numerusform>comme mesuré, %n station</numerusform>
            <numerusform>comme mesuré, %n stations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not all of it measured, %n units</source>
        <comment>not all of it measured, %n unit</comment>
        <translation>
            <numerusform>pas entièrement mesuré, %n station</numerusform>
            <numerusform>pas entièrement mesuré, %n stations</numerusform>
        </translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <comment>%n day</comment>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>Units for the load list %1</source>
        <translation>Stations pour la liste de charges %1</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>énergie assignée</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>jours d’autonomie</translation>
    </message>
    <message>
        <source>hours until empty</source>
        <translation>heures jusqu’à vide</translation>
    </message>
    <message>
        <source>output on in all</source>
        <translation>sortie active en tout</translation>
    </message>
    <message>
        <source>days if left on</source>
        <translation>jours si laissée active</translation>
    </message>
    <message>
        <source>units, at least</source>
        <translation>stations, au moins</translation>
    </message>
    <message>
        <source>units, enough</source>
        <translation>stations, suffisant</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>puissance assignée</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>puissance de crête</translation>
    </message>
    <message>
        <source>units by rule</source>
        <translation>stations selon la règle</translation>
    </message>
    <message>
        <source>for the days of autonomy asked for</source>
        <translation>pour les jours d’autonomie voulus</translation>
    </message>
    <message>
        <source>stated by the maker</source>
        <translation>annoncé par le fabricant</translation>
    </message>
    <message>
        <source>nameplate by the rule / rated energy</source>
        <translation>plaque selon la règle / énergie assignée</translation>
    </message>
    <message>
        <source>Units needed: for %1 without sun, side by side with the list shared evenly.</source>
        <translation>Stations nécessaires&#xa0;: pour %1 sans soleil, côte à côte, la liste également partagée.</translation>
    </message>
    <message>
        <source>Days of autonomy</source>
        <translation>Jours d’autonomie</translation>
    </message>
    <message>
        <source>E* / (daily energy + no-load draw × hours of output on + standby draw × the rest + quadratic loss), from all full drains of the unit together; the interval also holds what the list leaves open: appliances used together or apart, the hour of beginning, the order of use.</source>
        <translation>E* / (énergie par jour + consommation à vide × heures de sortie active + consommation en veille × le reste + perte quadratique), d’après toutes les décharges complètes de la station ensemble&#x202f;; l’intervalle contient aussi ce que la liste laisse ouvert&#xa0;: appareils utilisés ensemble ou séparément, heure du début, ordre d’usage.</translation>
    </message>
    <message>
        <source>Expectation</source>
        <translation>Attente</translation>
    </message>
    <message>
        <source>Where no drain tells it, a stated share of the rated energy at the socket; no measurement.</source>
        <translation>Là où aucune décharge ne le dit, une part précisée de l’énergie assignée à la prise&#x202f;; pas une mesure.</translation>
    </message>
    <message>
        <source>Balance: losses of a constant, a linear and a quadratic part seen from the socket, terms of IEC 61683. Rules of the cross-check: rules after IEEE 1013 and IEEE 1562; the program&apos;s help states their formulas.</source>
        <translation>Bilan&#xa0;: pertes faites d’une part constante, d’une part linéaire et d’une part quadratique vues de la prise, termes d’IEC 61683. Règles du recoupement&#xa0;: règles d’après IEEE 1013 et IEEE 1562&#x202f;; l’aide du programme en donne les formules.</translation>
    </message>
    <message>
        <source>The PV array by month</source>
        <translation>Le champ PV par mois</translation>
    </message>
    <message>
        <source>month</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>PV array</source>
        <translation>champ PV</translation>
    </message>
    <message>
        <source>peak-sun hours</source>
        <translation>heures de plein soleil</translation>
    </message>
    <message>
        <source>to the battery</source>
        <translation>à la batterie</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nécessaire</translation>
    </message>
    <message>
        <source>array to load</source>
        <translation>champ sur charge</translation>
    </message>
    <message>
        <source>stated, or as by rule</source>
        <translation>précisé, ou selon la règle</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>précisé</translation>
    </message>
    <message>
        <source>array × peak-sun hours × derating</source>
        <translation>champ × heures de plein soleil × déclassement</translation>
    </message>
    <message>
        <source>list and own draw / inverter efficiency</source>
        <translation>liste et consommation propre / rendement de l’onduleur</translation>
    </message>
    <message>
        <source>below 0 the load is not met</source>
        <translation>sous 0, la charge n’est pas couverte</translation>
    </message>
    <message>
        <source>to the battery / needed</source>
        <translation>à la batterie / nécessaire</translation>
    </message>
    <message>
        <source>PV array and battery by the published rules</source>
        <translation>Champ PV et batterie selon les règles publiées</translation>
    </message>
    <message>
        <source>step</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>from stated figures</source>
        <translation>d’après les chiffres précisés</translation>
    </message>
    <message>
        <source>daily load</source>
        <translation>besoin par jour</translation>
    </message>
    <message>
        <source>the load list</source>
        <translation>la liste de charges</translation>
    </message>
    <message>
        <source>own draw and losses a day</source>
        <translation>consommation propre et pertes par jour</translation>
    </message>
    <message>
        <source>needed at the battery</source>
        <translation>nécessaire à la batterie</translation>
    </message>
    <message>
        <source>(daily load + own) / inverter efficiency %1</source>
        <translation>(besoin par jour + propre) / rendement de l’onduleur %1</translation>
    </message>
    <message>
        <source>PV array by rule</source>
        <translation>champ PV selon la règle</translation>
    </message>
    <message>
        <source>%1 × needed / (%2 peak-sun hours × derating %3)</source>
        <translation>%1 × nécessaire / (%2 heures de plein soleil × déclassement %3)</translation>
    </message>
    <message>
        <source>%1 × needed / (%2 peak-sun hours × derating %3); own draw not all measured</source>
        <translation>%1 × nécessaire / (%2 heures de plein soleil × déclassement %3)&#x202f;; consommation propre pas entièrement mesurée</translation>
    </message>
    <message>
        <source>as by rule</source>
        <translation>selon la règle</translation>
    </message>
    <message>
        <source>PV brings a day</source>
        <translation>apport PV par jour</translation>
    </message>
    <message>
        <source>battery, unadjusted</source>
        <translation>batterie, non ajustée</translation>
    </message>
    <message>
        <source>%1 × needed at the battery</source>
        <translation>%1 × nécessaire à la batterie</translation>
    </message>
    <message>
        <source>by depth</source>
        <translation>selon la profondeur</translation>
    </message>
    <message>
        <source>/ deepest discharge %1, which governs</source>
        <translation>/ décharge maximale %1, qui l’emporte</translation>
    </message>
    <message>
        <source>/ deepest discharge %1</source>
        <translation>/ décharge maximale %1</translation>
    </message>
    <message>
        <source>by end of life</source>
        <translation>selon la fin de vie</translation>
    </message>
    <message>
        <source>/ share left at the end of life %1</source>
        <translation>/ part restante en fin de vie %1</translation>
    </message>
    <message>
        <source>/ share left at the end of life %1, which governs</source>
        <translation>/ part restante en fin de vie %1, qui l’emporte</translation>
    </message>
    <message>
        <source>battery, nameplate</source>
        <translation>batterie, plaque</translation>
    </message>
    <message>
        <source>× temperature factor %1 × margin %2</source>
        <translation>× facteur de température %1 × marge %2</translation>
    </message>
    <message>
        <source>Rules after IEEE 1013 (battery) and IEEE 1562 (array), with each unit&apos;s own draw as a load of its own: a cross-check. IEEE 1562 limits its battery part to lead-acid; for lithium the deepest discharge is the user&apos;s own figure.</source>
        <translation>Règles d’après IEEE 1013 (batterie) et IEEE 1562 (champ), avec la consommation propre de chaque station comme une charge de plus&#xa0;: un recoupement. IEEE 1562 limite sa partie batterie au plomb&#x202f;; pour le lithium, la décharge maximale est le chiffre de l’utilisateur.</translation>
    </message>
    <message>
        <source>State of charge by the hour for the load list %1</source>
        <translation>État de charge heure par heure pour la liste de charges %1</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>with PV</source>
        <translation>avec PV</translation>
    </message>
    <message>
        <source>without PV</source>
        <translation>sans PV</translation>
    </message>
    <message>
        <source>since midnight</source>
        <translation>depuis minuit</translation>
    </message>
    <message numerus="yes">
        <source>%n units side by side, full at midnight; PV as a half sine over %1 h of daylight.</source>
        <comment>%n unit side by side, full at midnight; PV as a half sine over %1 h of daylight.</comment>
        <translation>
            <numerusform>%n station, pleine à minuit&#x202f;; PV en demi-sinus sur %1 h de jour.</numerusform>
            <numerusform>%n stations côte à côte, pleines à minuit&#x202f;; PV en demi-sinus sur %1 h de jour.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 side by side, full at midnight: %3, %4</source>
        <translation>%1, %2 côte à côte, pleines à minuit&#xa0;: %3, %4</translation>
    </message>
    <message>
        <source>%1, full at midnight: %2, %3</source>
        <translation>%1, pleine à minuit&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>%1 of the list not served</source>
        <translation>%1 de la liste non servis</translation>
    </message>
    <message>
        <source>%1 of PV unused, as the unit is full</source>
        <translation>%1 de PV inutilisés, car la station est pleine</translation>
    </message>
    <message>
        <source>%1 of PV above what its PV input takes</source>
        <translation>%1 de PV au-dessus de ce que prend son entrée PV</translation>
    </message>
    <message>
        <source>from day %1 on each day is like the one before</source>
        <translation>à partir du jour %1, chaque jour est comme le précédent</translation>
    </message>
    <message>
        <source>from day %1 on each day is like the one before, with %2</source>
        <translation>à partir du jour %1, chaque jour est comme le précédent, avec %2</translation>
    </message>
    <message>
        <source>its own draw is not measured, so this may be too good</source>
        <translation>sa consommation propre n’est pas mesurée, c’est donc peut-être trop beau</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Delivered energy</source>
        <translation>Énergie délivrée</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register from the first to the last reading of the run, times the meter&apos;s correction factor. Marked zeroings and exchanges of the meter and rollovers of its register are joined; whatever else was assumed about the register is listed with the run.</source>
        <translation>La différence de l’index du compteur externe du premier au dernier relevé de l’essai, fois le facteur de correction du compteur. Les remises à zéro et remplacements du compteur marqués d’un repère et les passages par zéro de son index sont raccordés&#x202f;; tout ce qui est supposé d’autre sur l’index est énuméré avec l’essai.</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fraction utile</translation>
    </message>
    <message>
        <source>Delivered energy from full to cut-off, divided by the rated energy, which is the maker&apos;s claim and carries no uncertainty. It holds at the load and duration of the run: a slower drain feeds the unit&apos;s own consumption for longer.</source>
        <translation>Énergie délivrée de la pleine charge à la coupure, divisée par l’énergie assignée, qui est la valeur annoncée par le fabricant et n’a pas d’incertitude. Elle vaut à la charge et à la durée de l’essai&#xa0;: une décharge plus lente alimente plus longtemps la consommation propre de la station.</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>À une charge</translation>
    </message>
    <message>
        <source>Where a common load is named, a unit is moved to it by D = E* - P* T - c Q, fitted to all its full drains (E*: deliverable at no time cost, P*: no-load draw seen from the socket, T: hours of output on, Q: the squared load over time). A unit whose drains do not tell E* from P* stays as tested and says so.</source>
        <translation>Là où une charge commune est nommée, une station y est ramenée par D = E* - P* T - c Q, ajusté à toutes ses décharges complètes (E*&#xa0;: énergie avant consommation propre, P*&#xa0;: consommation à vide vue de la prise, T&#xa0;: heures de sortie active, Q&#xa0;: carré de la charge intégré sur le temps). Une station dont les décharges ne distinguent pas E* de P* reste comme testé et le dit.</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Répétitions</translation>
    </message>
    <message>
        <source>Drains of one unit from full to cut-off at loads within a factor of 1.25 and temperatures within 8 °C repeat one another. Their mean stands for the unit, with the scatter of its drains and Student&apos;s t of n - 1 degrees of freedom (JCGM 100:2008, 4.2), or with the repeatability below where that says more. A unit that is moved far beyond its tested loads, by more than a factor of 1.5, has no rank.</source>
        <translation>Les décharges d’une station de la pleine charge à la coupure, à des charges dans un rapport d’au plus 1,25 et des températures à 8 °C près, se répètent. Leur moyenne vaut pour la station, avec la dispersion de ses décharges et le t de Student à n - 1 degrés de liberté (JCGM 100:2008, 4.2), ou avec la répétabilité ci-dessous si elle en dit plus. Une station ramenée loin de ses charges testées, de plus d’un facteur 1,5, n’a pas de rang.</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Tenu pour acquis</translation>
    </message>
    <message>
        <source>Drains repeat within %1, standard uncertainty. A battery holds at most %2 % of its label. The quadratic loss is at most %3 of the load at the rated output. A moment is noted within %4 min.</source>
        <translation>Les décharges se répètent à %1 près, incertitude-type. Une batterie contient au plus %2 % de son énergie assignée. La perte quadratique est d’au plus %3 de la charge à la puissance assignée. Un moment est noté à %4 min près.</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Two units are clearly different when the 95 % interval of their difference does not hold 0; else they are too close to call. The gain of a meter that measured both is counted once and cancels as far as the figures are alike; gains of different meters do not (JCGM 100:2008, 5.2). Between loads that differ by more than a factor of two a part of a meter&apos;s error limit does not cancel: a quarter of it, unless the meter states another.</source>
        <translation>Deux stations sont nettement différentes si l’intervalle à 95 % de leur écart ne contient pas 0&#x202f;; sinon elles sont impossibles à départager. Le gain d’un compteur qui a mesuré les deux compte une fois et s’annule dans la mesure où les chiffres se ressemblent&#x202f;; les gains de compteurs différents non (JCGM 100:2008, 5.2). Entre des charges qui diffèrent de plus d’un facteur deux, une part de la limite d’erreur d’un compteur ne s’annule pas&#xa0;: un quart, sauf si le compteur en précise une autre.</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervalle</translation>
    </message>
    <message>
        <source>After ± stands half the width of an interval meant to cover 95 %. The meter&apos;s error limit counts as a rectangular distribution common to all its readings; register steps, interpolation and noted times count as independent (JCGM 100:2008, 4.3 and 5.1). The half-width comes from the distribution of their sum (JCGM 101:2008). Figures are rounded so that the half-width keeps two significant digits (JCGM 100:2008, 7.2.6).</source>
        <translation>Après ± figure la demi-largeur d’un intervalle censé couvrir 95 %. La limite d’erreur du compteur compte comme une loi rectangulaire commune à tous ses relevés&#x202f;; pas de l’index, interpolation et heures notées comptent comme indépendants (JCGM 100:2008, 4.3 et 5.1). La demi-largeur vient de la loi de leur somme (JCGM 101:2008). Les chiffres sont arrondis pour que la demi-largeur garde deux chiffres significatifs (JCGM 100:2008, 7.2.6).</translation>
    </message>
    <message>
        <source>Kinds</source>
        <translation>Sortes</translation>
    </message>
    <message>
        <source>measured: from full to the unit&apos;s own cut-off. projected: extended from part of a drain on the assumption named. at least: energy may be missing. bracket: between two limits, nothing said within. not known: the reason says what is lacking.</source>
        <translation>mesuré&#xa0;: de la pleine charge à la coupure par la station elle-même. projeté&#xa0;: prolongé d’un bout de décharge sous l’hypothèse nommée. au moins&#xa0;: il peut manquer de l’énergie. encadrement&#xa0;: entre deux limites, rien n’est dit à l’intérieur. inconnu&#xa0;: la raison dit ce qui manque.</translation>
    </message>
    <message>
        <source>JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of distributions using a Monte Carlo method.</source>
        <translation>JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of distributions using a Monte Carlo method.</translation>
    </message>
    <message>
        <source>Results are measurements of one specimen, not a safety certification.</source>
        <translation>Les résultats sont des mesures d’un seul exemplaire, pas une certification de sécurité.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>As the tester noted them, amended ones as they stand now, withdrawn ones left out. An empty cell was not noted. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Comme le testeur les a notés, les rectifiés tels qu’ils sont maintenant, les retirés laissés de côté. Une cellule vide n’a pas été notée. Les heures sont locales avec leur décalage à UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Délivré</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register since the first reading, times the meter&apos;s correction factor, with marked zeroings, exchanges and rollovers joined. Load since: that difference from one register reading to the next, over time.</source>
        <translation>La différence de l’index du compteur externe depuis le premier relevé, fois le facteur de correction du compteur, remises à zéro, remplacements et passages par zéro marqués étant raccordés. Charge depuis&#xa0;: cette différence d’un relevé de l’index au suivant, sur le temps.</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Erreur de jauge</translation>
    </message>
    <message>
        <source>Gauge minus what is truly left, in percentage points; its limits come from the gauge&apos;s and the register&apos;s steps, the noted times and the meter&apos;s error limit, and are meant to cover 95 % (JCGM 100:2008, 5.1).</source>
        <translation>La jauge moins ce qui reste vraiment, en points de pourcentage&#x202f;; ses limites viennent des pas de la jauge et de l’index, des heures notées et de la limite d’erreur du compteur, et sont censées couvrir 95 % (JCGM 100:2008, 5.1).</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pas</translation>
    </message>
    <message>
        <source>Each change of the gauge in its log, half-way between the last sample before it and the first after it; of a gauge that flickers, before and after that. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Chaque changement de la jauge dans son journal, à mi-chemin entre le dernier échantillon avant lui et le premier après&#x202f;; pour une jauge qui oscille, avant et après cela. Les heures sont locales avec leur décalage à UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>The mean of what it showed before and after: what it showed on average at that moment, however it rounds.</source>
        <translation>La moyenne de ce qu’elle montrait avant et après&#xa0;: ce qu’elle montrait en moyenne à ce moment, quelle que soit sa façon d’arrondir.</translation>
    </message>
    <message>
        <source>By the external meter at that moment. What the unit says of its own output enters nothing.</source>
        <translation>D’après le compteur externe à ce moment. Ce que la station dit de sa propre sortie n’entre nulle part.</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalles</translation>
    </message>
    <message>
        <source>From one reading of gauge and register to the next. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>D’un relevé de jauge et d’index au suivant. Les heures sont locales avec leur décalage à UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Gauge-implied</source>
        <translation>Selon la jauge</translation>
    </message>
    <message>
        <source>Rated energy times the fall of the gauge; empty where the rated energy is not stated.</source>
        <translation>Énergie assignée fois la baisse de la jauge&#x202f;; vide là où l’énergie assignée n’est pas précisée.</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register, times the meter&apos;s correction factor, with marked zeroings, exchanges and rollovers joined. Mean load: that over the time. Energy per point: that over the fall of the gauge.</source>
        <translation>La différence de l’index du compteur externe, fois le facteur de correction du compteur, remises à zéro, remplacements et passages par zéro marqués étant raccordés. Charge moyenne&#xa0;: cela sur le temps. Énergie par point&#xa0;: cela sur la baisse de la jauge.</translation>
    </message>
    <message>
        <source>Expected from full to cut-off, a mean over drains</source>
        <translation>Attendu de la pleine charge à la coupure, une moyenne sur des décharges</translation>
    </message>
    <message>
        <source>deliverable</source>
        <translation>délivrable</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fraction utile</translation>
    </message>
    <message>
        <source>run time</source>
        <translation>autonomie</translation>
    </message>
    <message>
        <source>tested loads</source>
        <translation>charges testées</translation>
    </message>
    <message>
        <source>between</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>au-delà</translation>
    </message>
</context>
<context>
    <name>run_analysis</name>
    <message>
        <source>no reading shows the gauge full</source>
        <translation>aucun relevé ne montre la jauge au plein</translation>
    </message>
    <message>
        <source>the gauge shows full from the first reading on</source>
        <translation>la jauge montre le plein dès le premier relevé</translation>
    </message>
    <message>
        <source>full was reached between the last reading below it and the first that shows it</source>
        <translation>le plein a été atteint entre le dernier relevé en dessous et le premier qui le montre</translation>
    </message>
    <message>
        <source>no power is noted, and no two register readings lie far enough apart</source>
        <translation>aucune puissance n’est notée, et il n’y a pas deux relevés de l’index assez éloignés</translation>
    </message>
    <message>
        <source>the highest that the meter showed at a reading</source>
        <translation>la plus haute que le compteur a montrée à un relevé</translation>
    </message>
    <message>
        <source>the highest mean between two register readings</source>
        <translation>la plus haute moyenne entre deux relevés de l’index</translation>
    </message>
    <message>
        <source>without interval, as the meter&apos;s error limit is not stated</source>
        <translation>sans intervalle, car la limite d’erreur du compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>fewer than three stretches between register readings resolve the power</source>
        <translation>moins de trois tronçons entre relevés de l’index établissent la puissance</translation>
    </message>
    <message>
        <source>no taper: the last stretch is within 10 % of the highest power; it has no interval</source>
        <translation>pas de décroissance&#xa0;: le dernier tronçon est à 10 % près de la plus haute puissance&#x202f;; elle n’a pas d’intervalle</translation>
    </message>
    <message>
        <source>power below 90 % of its highest, %1 W, until the end</source>
        <translation>puissance sous 90 % de son maximum, %1 W, jusqu’à la fin</translation>
    </message>
    <message>
        <source>From a source that is not stated: %1 in</source>
        <translation>D’une source non précisée&#xa0;: %1 reçus</translation>
    </message>
    <message>
        <source>From the PV input: %1 in</source>
        <translation>Par l’entrée PV&#xa0;: %1 reçus</translation>
    </message>
    <message>
        <source>From the wall: %1 in</source>
        <translation>Du secteur&#xa0;: %1 reçus</translation>
    </message>
    <message>
        <source>gauge %1 to %2 %</source>
        <translation>jauge %1 à %2 %</translation>
    </message>
    <message>
        <source>%1 to full</source>
        <translation>%1 jusqu’au plein</translation>
    </message>
    <message>
        <source>less than a minute</source>
        <translation>moins d’une minute</translation>
    </message>
    <message>
        <source>energy over time</source>
        <translation>énergie sur temps</translation>
    </message>
    <message numerus="yes">
        <source>%n notes of watts; the meter&apos;s limit of energy is taken for that of power</source>
        <comment>%n note of watts; the meter&apos;s limit of energy is taken for that of power</comment>
        <translation>
            <numerusform>%n note de watts&#x202f;; la limite d’énergie du compteur est prise pour celle de puissance</numerusform>
            <numerusform>%n notes de watts&#x202f;; la limite d’énergie du compteur est prise pour celle de puissance</numerusform>
        </translation>
    </message>
    <message>
        <source>the step has neither watts noted nor energy that its register resolves</source>
        <translation>le palier n’a ni watts notés ni énergie que son index établisse</translation>
    </message>
    <message>
        <source>no interval, as the meter&apos;s error limit is not stated</source>
        <translation>sans intervalle, car la limite d’erreur du compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>No step of this run has a known load: note the watts, or the register at both ends of a step.</source>
        <translation>Aucun palier de cet essai n’a de charge connue&#xa0;: notez les watts, ou l’index aux deux bouts d’un palier.</translation>
    </message>
    <message>
        <source>The claim is not stated; the highest load was %1 for %2.</source>
        <translation>La valeur annoncée n’est pas précisée&#x202f;; la plus haute charge a été %1 pendant %2.</translation>
    </message>
    <message>
        <source>Tripped at %1 after %2; %3 are claimed.</source>
        <translation>Déclenchée à %1 après %2&#x202f;; %3 sont annoncés.</translation>
    </message>
    <message>
        <source>Held %1 for %2; %3 are claimed.</source>
        <translation>A tenu %1 pendant %2&#x202f;; %3 sont annoncés.</translation>
    </message>
    <message>
        <source>The claim lies within the uncertainty.</source>
        <translation>La valeur annoncée est dans l’incertitude.</translation>
    </message>
    <message>
        <source>It tripped at %1, above the claim.</source>
        <translation>Elle a déclenché à %1, au-dessus de la valeur annoncée.</translation>
    </message>
    <message>
        <source>Tripped at %1, above the %2 claimed; a load at the claim was not held long enough to tell.</source>
        <translation>Déclenchée à %1, au-dessus des %2 annoncés&#x202f;; une charge à la valeur annoncée n’a pas été tenue assez longtemps pour le dire.</translation>
    </message>
    <message>
        <source>Not reached: the highest load was %1 for %2; %3 are claimed, to be held for %4 min at least.</source>
        <translation>Non atteint&#xa0;: la plus haute charge a été %1 pendant %2&#x202f;; %3 sont annoncés, à tenir au moins %4 min.</translation>
    </message>
    <message>
        <source>Not reached: the highest load was %1 for %2; %3 are claimed.</source>
        <translation>Non atteint&#xa0;: la plus haute charge a été %1 pendant %2&#x202f;; %3 sont annoncés.</translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>charge modifiée</translation>
    </message>
    <message>
        <source>tripped</source>
        <translation>déclenché</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>coupure</translation>
    </message>
    <message>
        <source>run ended</source>
        <translation>essai terminé</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>held</source>
        <translation>tenu</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>non atteint</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>energy may be missing in run %1: %2</source>
        <translation>il peut manquer de l’énergie dans l’essai %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>without interval, as a meter&apos;s error limit is not stated</source>
        <translation>sans intervalle, car la limite d’erreur d’un compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>the sum of the panels</source>
        <translation>la somme des panneaux</translation>
    </message>
    <message>
        <source>the panels were not read together often enough to add their powers</source>
        <translation>les panneaux n’ont pas été relevés assez souvent ensemble pour additionner leurs puissances</translation>
    </message>
    <message>
        <source>the highest sum of the panels&apos; mean powers while all of them ran</source>
        <translation>la plus haute somme des puissances moyennes des panneaux pendant que tous marchaient</translation>
    </message>
    <message>
        <source>run %1: %2</source>
        <translation>essai %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>run %1 (%3): %2</source>
        <translation>essai %1 (%3)&#xa0;: %2</translation>
    </message>
    <message>
        <source>Charge from PV, %1, peak %2</source>
        <translation>Recharge par PV, %1, crête %2</translation>
    </message>
    <message numerus="yes">
        <source>Charge from PV by %n panels together: %1, peak %2; %3</source>
        <comment>Charge from PV by %n panel: %1, peak %2; %3</comment>
        <translation>
            <numerusform>Recharge par PV par %n panneau&#xa0;: %1, crête %2&#x202f;; %3</numerusform>
            <numerusform>Recharge par PV par %n panneaux ensemble&#xa0;: %1, crête %2&#x202f;; %3</numerusform>
        </translation>
    </message>
    <message>
        <source>from cut-off to full and back</source>
        <translation>de la coupure au plein et retour</translation>
    </message>
    <message>
        <source>from empty by its gauge to full and back</source>
        <translation>de vide selon sa jauge au plein et retour</translation>
    </message>
    <message>
        <source>from full to cut-off and back</source>
        <translation>du plein à la coupure et retour</translation>
    </message>
    <message>
        <source>from %1 to %2 % and back by the gauge</source>
        <translation>de %1 à %2 % et retour selon la jauge</translation>
    </message>
    <message>
        <source>From AC at the wall to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>De l’alternatif au secteur à l’alternatif à la prise&#x202f;; le chargeur, la consommation propre de la station et %1 h d’attente entre les essais sont compris.</translation>
    </message>
    <message>
        <source>From DC at the PV input to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>Du continu à l’entrée PV à l’alternatif à la prise&#x202f;; le chargeur, la consommation propre de la station et %1 h d’attente entre les essais sont compris.</translation>
    </message>
    <message>
        <source>From the charging meter (its place is not stated for every charge) to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>Du compteur de recharge (sa place n’est pas précisée pour chaque recharge) à l’alternatif à la prise&#x202f;; le chargeur, la consommation propre de la station et %1 h d’attente entre les essais sont compris.</translation>
    </message>
    <message>
        <source>one meter measured both, so the part of its error that is common to both powers cancels</source>
        <translation>un même compteur a mesuré les deux, la part de son erreur commune aux deux puissances s’annule donc</translation>
    </message>
    <message>
        <source>one meter measured both, so its gain cancels</source>
        <translation>un même compteur a mesuré les deux, son gain s’annule donc</translation>
    </message>
    <message>
        <source>no meter is stated for a charge or a drain, so no gain cancels</source>
        <translation>aucun compteur n’est précisé pour une recharge ou une décharge, aucun gain ne s’annule donc</translation>
    </message>
    <message>
        <source>different meters, so their gains do not cancel</source>
        <translation>compteurs différents, leurs gains ne s’annulent donc pas</translation>
    </message>
    <message numerus="yes">
        <source>%n closed cycles, %1 and others</source>
        <comment>%n closed cycle, %1 and others</comment>
        <translation>
            <numerusform>%n cycle fermé, %1 et autres</numerusform>
            <numerusform>%n cycles fermés, %1 et autres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closed cycles, %1</source>
        <comment>%n closed cycle, %1</comment>
        <translation>
            <numerusform>%n cycle fermé, %1</numerusform>
            <numerusform>%n cycles fermés, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>assumes that equal gauge readings mean equal energy stored</source>
        <translation>suppose que des relevés de jauge égaux signifient une énergie stockée égale</translation>
    </message>
    <message>
        <source>no interval, as the error limit of a meter is not stated</source>
        <translation>sans intervalle, car la limite d’erreur d’un compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>full and cut-off are taken to repeat within %1 %</source>
        <translation>plein et coupure sont supposés se répéter à %1 % près</translation>
    </message>
    <message>
        <source>up to %1 went in after the gauge first showed full, to top up or to feed the unit itself, which is not known: it lies between both</source>
        <translation>jusqu’à %1 sont entrés après que la jauge a montré le plein pour la première fois, pour compléter ou pour alimenter la station elle-même, ce qui est inconnu&#xa0;: la valeur est entre les deux</translation>
    </message>
    <message>
        <source>no closed cycle: charge to full after a cut-off with the energy metered, and drain to cut-off again</source>
        <translation>aucun cycle fermé&#xa0;: rechargez au plein après une coupure en comptant l’énergie, et déchargez de nouveau à la coupure</translation>
    </message>
    <message>
        <source>Round trip not known: %1.</source>
        <translation>Aller-retour inconnu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Round trip %1: %2 out of %3 in.</source>
        <translation>Aller-retour %1&#xa0;: %2 délivrés sur %3 reçus.</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>fewer than two gauge readings within the register&apos;s readings</source>
        <translation>moins de deux relevés de jauge parmi les relevés de l’index</translation>
    </message>
    <message>
        <source>rated energy × gauge drop of %1 points</source>
        <translation>énergie assignée × baisse de jauge de %1 points</translation>
    </message>
    <message>
        <source>delivered per gauge-implied energy, without the meter&apos;s gain; %1</source>
        <translation>délivré par énergie selon la jauge, sans le gain du compteur&#x202f;; %1</translation>
    </message>
    <message numerus="yes">
        <source>a test statistic, for %n degrees of freedom; it has no interval</source>
        <comment>a test statistic, for %n degree of freedom; it has no interval</comment>
        <translation>
            <numerusform>une statistique de test, pour %n degré de liberté&#x202f;; elle n’a pas d’intervalle</numerusform>
            <numerusform>une statistique de test, pour %n degrés de liberté&#x202f;; elle n’a pas d’intervalle</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, no readings yet</source>
        <translation>%1, encore aucun relevé</translation>
    </message>
</context>
<context>
    <name>safety</name>
    <message>
        <source>Local electrical codes and a licensed electrician come first.</source>
        <translation>Les règles électriques locales et un électricien agréé passent d’abord.</translation>
    </message>
    <message>
        <source>PV strings are live in daylight and can carry dangerous DC voltage.</source>
        <translation>Les chaînes PV sont sous tension de jour et peuvent porter une tension continue dangereuse.</translation>
    </message>
    <message>
        <source>Stay in attendance for high-power runs, or use a fire-safe place.</source>
        <translation>Restez présent pendant les essais à forte puissance, ou utilisez un lieu à l’abri du feu.</translation>
    </message>
    <message>
        <source>Never exceed the ratings of sockets, cords and the unit.</source>
        <translation>Ne dépassez jamais les valeurs assignées des prises, des cordons et de la station.</translation>
    </message>
    <message>
        <source>Stop on heat, smell, swelling or noise.</source>
        <translation>Arrêtez en cas de chaleur, d’odeur, de gonflement ou de bruit.</translation>
    </message>
    <message>
        <source>Mind ventilation, and keep children away.</source>
        <translation>Veillez à l’aération, et tenez les enfants à distance.</translation>
    </message>
    <message>
        <source>The output stays live for as long as the run lasts: cover the sockets.</source>
        <translation>La sortie reste sous tension tant que dure l’essai&#xa0;: couvrez les prises.</translation>
    </message>
    <message>
        <source>Charge only from a source within the input limits of the unit; never charge a unit that is hot, wet or damaged.</source>
        <translation>Rechargez seulement par une source dans les limites d’entrée de la station&#x202f;; ne rechargez jamais une station chaude, mouillée ou endommagée.</translation>
    </message>
    <message>
        <source>At the rated output cords and sockets grow hot: unwind cords, use no adapters in a chain, stay beside it.</source>
        <translation>À la puissance assignée, cordons et prises s’échauffent&#xa0;: déroulez les cordons, n’enchaînez pas d’adaptateurs, restez à côté.</translation>
    </message>
    <message>
        <source>Peak loads can trip, arc or start by surprise: switch at the load, keep hands and tools clear, stay beside it.</source>
        <translation>Des charges de crête peuvent déclencher, faire un arc ou démarrer par surprise&#xa0;: commutez à la charge, écartez mains et outils, restez à côté.</translation>
    </message>
    <message>
        <source>A unit left alone for days needs a fire-safe place; do not let it rest empty or in the heat.</source>
        <translation>Une station laissée seule des jours a besoin d’un lieu à l’abri du feu&#x202f;; ne la laissez pas reposer vide ou à la chaleur.</translation>
    </message>
    <message>
        <source>Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.</source>
        <translation>Restez présent ou utilisez un lieu à l’abri du feu&#x202f;; arrêtez en cas de chaleur, d’odeur, de gonflement ou de bruit.</translation>
    </message>
    <message>
        <source>Results are measurements of one specimen, not a safety certification.</source>
        <translation>Les résultats sont des mesures d’un seul exemplaire, pas une certification de sécurité.</translation>
    </message>
    <message>
        <source>One specimen each. Not a safety certification.</source>
        <translation>Un seul exemplaire de chacune. Pas une certification de sécurité.</translation>
    </message>
</context>
<context>
    <name>services</name>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>second index</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>watts</translation>
    </message>
    <message>
        <source>display watts</source>
        <translation>watts de l’afficheur</translation>
    </message>
    <message>
        <source>time: %1</source>
        <translation>heure&#xa0;: %1</translation>
    </message>
    <message>
        <source>There is nothing to record yet: type what the gauge or the meter shows, choose a mark, or write a remark.</source>
        <translation>Il n’y a encore rien à enregistrer&#xa0;: tapez ce que montre la jauge ou le compteur, choisissez un repère, ou écrivez une remarque.</translation>
    </message>
    <message>
        <source>no source is kept with the meter of this run</source>
        <translation>aucune source n’est gardée avec le compteur de cet essai</translation>
    </message>
    <message>
        <source>set one up on the page Meters</source>
        <translation>configurez-en une à la page Compteurs</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>`%1` n’est pas compris</translation>
    </message>
    <message>
        <source>enter a time span such as 30 min or 1.5 h</source>
        <translation>saisissez une durée comme 30 min ou 1,5 h</translation>
    </message>
    <message>
        <source>enter points of the gauge, such as 10</source>
        <translation>saisissez des points de jauge, comme 10</translation>
    </message>
    <message>
        <source>the desktop has no secret store that can be used</source>
        <translation>le bureau n’a pas de trousseau utilisable</translation>
    </message>
</context>
<context>
    <name>sheets</name>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>line %1, key `%2`</source>
        <translation>ligne %1, clé `%2`</translation>
    </message>
    <message>
        <source>line %1: the comment `%2` is not kept</source>
        <translation>ligne %1&#xa0;: le commentaire `%2` n’est pas gardé</translation>
    </message>
    <message>
        <source>there is no key before the colon</source>
        <translation>il n’y a pas de clé avant le deux-points</translation>
    </message>
    <message>
        <source>write `# key: value`</source>
        <translation>écrivez `# key: value`</translation>
    </message>
    <message>
        <source>the key stands in line %1 already</source>
        <translation>la clé figure déjà à la ligne %1</translation>
    </message>
    <message>
        <source>keep one of the two lines</source>
        <translation>gardez l’une des deux lignes</translation>
    </message>
    <message>
        <source>line %1: key `%2` is not known; kept with the run</source>
        <translation>ligne %1&#xa0;: la clé `%2` est inconnue&#x202f;; gardée avec l’essai</translation>
    </message>
    <message>
        <source>the sheet does not name the unit that was tested</source>
        <translation>la fiche ne nomme pas la station testée</translation>
    </message>
    <message>
        <source>add a line `# unit: NAME` at the top</source>
        <translation>ajoutez une ligne `# unit: NAME` en haut</translation>
    </message>
    <message>
        <source>the sheet describes a meter but does not name it</source>
        <translation>la fiche décrit un compteur mais ne le nomme pas</translation>
    </message>
    <message>
        <source>add a line `# meter: NAME`</source>
        <translation>ajoutez une ligne `# meter: NAME`</translation>
    </message>
    <message>
        <source>the sheet describes a second meter but does not name it</source>
        <translation>la fiche décrit un second compteur mais ne le nomme pas</translation>
    </message>
    <message>
        <source>add a line `# second_meter: NAME`</source>
        <translation>ajoutez une ligne `# second_meter: NAME`</translation>
    </message>
    <message>
        <source>both meters have one name</source>
        <translation>les deux compteurs ont le même nom</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>donnez un autre nom à l’un d’eux</translation>
    </message>
    <message>
        <source>the range of meter %1 begins above its end</source>
        <translation>la plage du compteur %1 commence au-dessus de sa fin</translation>
    </message>
    <message>
        <source>exchange the two loads</source>
        <translation>échangez les deux charges</translation>
    </message>
    <message>
        <source>key `run` is missing; read as a drain</source>
        <translation>la clé `run` manque&#x202f;; lue comme une décharge</translation>
    </message>
    <message>
        <source>key `ended` is missing; the run counts as still running</source>
        <translation>la clé `ended` manque&#x202f;; l’essai compte comme en cours</translation>
    </message>
    <message>
        <source>use the columns %1</source>
        <translation>utilisez les colonnes %1</translation>
    </message>
    <message>
        <source>line %1, column `%2`</source>
        <translation>ligne %1, colonne `%2`</translation>
    </message>
    <message>
        <source>the file does not name the load list</source>
        <translation>le fichier ne nomme pas la liste de charges</translation>
    </message>
    <message>
        <source>add a line `# load_list: NAME` at the top</source>
        <translation>ajoutez une ligne `# load_list: NAME` en haut</translation>
    </message>
    <message>
        <source>the header row is missing</source>
        <translation>la ligne d’en-tête manque</translation>
    </message>
    <message>
        <source>`%1` is no key of a load list</source>
        <translation>`%1` n’est pas une clé de liste de charges</translation>
    </message>
    <message>
        <source>use `# load_list: NAME` and `# remark: TEXT`</source>
        <translation>utilisez `# load_list: NAME` et `# remark: TEXT`</translation>
    </message>
    <message>
        <source>the key `%1` stands here for the second time</source>
        <translation>la clé `%1` figure ici pour la seconde fois</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>il n’y a pas de colonne `%1`</translation>
    </message>
    <message>
        <source>the column `%1` stands here twice</source>
        <translation>la colonne `%1` figure ici deux fois</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>gardez l’une des deux</translation>
    </message>
    <message>
        <source>the column `%1` is missing</source>
        <translation>la colonne `%1` manque</translation>
    </message>
    <message>
        <source>add it</source>
        <translation>ajoutez-la</translation>
    </message>
    <message>
        <source>the row has %1, the header row has %2</source>
        <translation>la ligne a %1, la ligne d’en-tête en a %2</translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <comment>%n field</comment>
        <translation>
            <numerusform>%n champ</numerusform>
            <numerusform>%n champs</numerusform>
        </translation>
    </message>
    <message>
        <source>add or remove commas; a name with commas needs quotes around it</source>
        <translation>ajoutez ou enlevez des virgules&#x202f;; un nom avec virgules se met entre guillemets</translation>
    </message>
    <message>
        <source>`%1` is neither yes nor no</source>
        <translation>`%1` n’est ni yes ni no</translation>
    </message>
    <message>
        <source>use `yes` or `no`</source>
        <translation>utilisez `yes` ou `no`</translation>
    </message>
    <message>
        <source>the file is no UTF-8 text</source>
        <translation>le fichier n’est pas un texte UTF-8</translation>
    </message>
    <message>
        <source>save it as CSV in UTF-8</source>
        <translation>enregistrez-le en CSV en UTF-8</translation>
    </message>
    <message>
        <source>a limit is above 0</source>
        <translation>une limite est au-dessus de 0</translation>
    </message>
    <message>
        <source>enter what the unit&apos;s label says</source>
        <translation>saisissez ce que dit la plaque de la station</translation>
    </message>
    <message>
        <source>`%1` is no number of modules</source>
        <translation>`%1` n’est pas un nombre de modules</translation>
    </message>
    <message>
        <source>give a whole number from 1 to 1000</source>
        <translation>donnez un nombre entier de 1 à 1000</translation>
    </message>
    <message>
        <source>crystalline silicon, or other (then no table of factors applies)</source>
        <translation>crystalline silicon (silicium cristallin), ou other (autre&#x202f;; alors aucun tableau de facteurs ne s’applique)</translation>
    </message>
    <message>
        <source>`%1` is no kind of cell</source>
        <translation>`%1` n’est pas une sorte de cellule</translation>
    </message>
    <message>
        <source>use `crystalline silicon` or `other`</source>
        <translation>utilisez `crystalline silicon` ou `other`</translation>
    </message>
    <message>
        <source>what the sheet is called</source>
        <translation>comment s’appelle la fiche</translation>
    </message>
    <message>
        <source>name of the unit whose PV input it is meant for</source>
        <translation>nom de la station dont l’entrée PV est visée</translation>
    </message>
    <message>
        <source>the module, as its label says</source>
        <translation>le module, comme le dit sa plaque</translation>
    </message>
    <message>
        <source>open-circuit voltage of one module, V</source>
        <translation>tension en circuit ouvert d’un module, V</translation>
    </message>
    <message>
        <source>voltage at maximum power, V</source>
        <translation>tension à la puissance maximale, V</translation>
    </message>
    <message>
        <source>short-circuit current, A</source>
        <translation>courant de court-circuit, A</translation>
    </message>
    <message>
        <source>current at maximum power, A</source>
        <translation>courant à la puissance maximale, A</translation>
    </message>
    <message>
        <source>temperature coefficient of Voc, %/°C or mV/°C</source>
        <translation>coefficient de température de Voc, %/°C ou mV/°C</translation>
    </message>
    <message>
        <source>temperature coefficient of Vmp, %/°C or mV/°C</source>
        <translation>coefficient de température de Vmp, %/°C ou mV/°C</translation>
    </message>
    <message>
        <source>temperature coefficient of the power, %/°C</source>
        <translation>coefficient de température de la puissance, %/°C</translation>
    </message>
    <message>
        <source>tolerance of the module&apos;s voltages, %; 3 where not stated</source>
        <translation>tolérance des tensions du module, %&#x202f;; 3 si non précisée</translation>
    </message>
    <message>
        <source>nominal operating cell temperature, °C</source>
        <translation>température nominale de fonctionnement des cellules, °C</translation>
    </message>
    <message>
        <source>modules in a string</source>
        <translation>modules dans une chaîne</translation>
    </message>
    <message>
        <source>strings side by side</source>
        <translation>chaînes côte à côte</translation>
    </message>
    <message>
        <source>coldest ambient temperature in daylight, °C</source>
        <translation>température ambiante la plus froide de jour, °C</translation>
    </message>
    <message>
        <source>hottest ambient temperature, °C</source>
        <translation>température ambiante la plus chaude, °C</translation>
    </message>
    <message>
        <source>hottest cell temperature instead, °C</source>
        <translation>à la place, température de cellule la plus chaude, °C</translation>
    </message>
    <message>
        <source>irradiance at the hottest, W/m²; 1000 where not stated</source>
        <translation>éclairement au plus chaud, W/m²&#x202f;; 1000 si non précisé</translation>
    </message>
    <message>
        <source>voltage limit of the PV input, V</source>
        <translation>limite de tension de l’entrée PV, V</translation>
    </message>
    <message>
        <source>operating current that the PV input is made for, A</source>
        <translation>courant de service pour lequel l’entrée PV est faite, A</translation>
    </message>
    <message>
        <source>short-circuit current that the PV input withstands, A</source>
        <translation>courant de court-circuit que l’entrée PV supporte, A</translation>
    </message>
    <message>
        <source>power limit of the PV input, W</source>
        <translation>limite de puissance de l’entrée PV, W</translation>
    </message>
    <message>
        <source>lowest voltage at which the PV input starts, V</source>
        <translation>plus basse tension à laquelle l’entrée PV démarre, V</translation>
    </message>
    <message>
        <source>anything else</source>
        <translation>toute autre chose</translation>
    </message>
    <message>
        <source>`%1` has an unknown unit</source>
        <translation>`%1` a une unité inconnue</translation>
    </message>
    <message>
        <source>use %/°C or mV/°C</source>
        <translation>utilisez %/°C ou mV/°C</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, ligne %2</translation>
    </message>
    <message>
        <source>the line has no colon</source>
        <translation>la ligne n’a pas de deux-points</translation>
    </message>
    <message>
        <source>write `key: value`, or begin a comment with #</source>
        <translation>écrivez `key: value`, ou commencez un commentaire par #</translation>
    </message>
    <message>
        <source>the key `%1` is not known</source>
        <translation>la clé `%1` est inconnue</translation>
    </message>
    <message>
        <source>see ullage pv-check --help for the keys</source>
        <translation>voyez les clés dans ullage pv-check --help</translation>
    </message>
    <message>
        <source>the key `%1` stands twice</source>
        <translation>la clé `%1` figure deux fois</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>ligne %1, colonne %2</translation>
    </message>
    <message>
        <source>line %1, column %2 (%3)</source>
        <translation>ligne %1, colonne %2 (%3)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
    <message>
        <source>choose a run sheet</source>
        <translation>choisissez une fiche d’essai</translation>
    </message>
    <message>
        <source>the file is encoded in UTF-16</source>
        <translation>le fichier est codé en UTF-16</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>enregistrez-le en UTF-8</translation>
    </message>
    <message>
        <source>the file is no text</source>
        <translation>le fichier n’est pas du texte</translation>
    </message>
    <message>
        <source>choose a run sheet, a text file of lines and commas</source>
        <translation>choisissez une fiche d’essai, un fichier texte de lignes et de virgules</translation>
    </message>
    <message>
        <source>a byte is no UTF-8 character</source>
        <translation>un octet n’est pas un caractère UTF-8</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>ligne %1, caractère %2</translation>
    </message>
    <message>
        <source>save the file as UTF-8</source>
        <translation>enregistrez le fichier en UTF-8</translation>
    </message>
    <message>
        <source>the fields are separated by semicolons</source>
        <translation>les champs sont séparés par des points-virgules</translation>
    </message>
    <message>
        <source>the fields are separated by tabs</source>
        <translation>les champs sont séparés par des tabulations</translation>
    </message>
    <message>
        <source>save the sheet with commas between the fields</source>
        <translation>enregistrez la fiche avec des virgules entre les champs</translation>
    </message>
    <message>
        <source>the sheet has no readings</source>
        <translation>la fiche n’a pas de relevés</translation>
    </message>
    <message>
        <source>the rows are not in order of time; they are put in order</source>
        <translation>les lignes ne sont pas dans l’ordre du temps&#x202f;; elles y sont mises</translation>
    </message>
    <message>
        <source>add the row `%1`</source>
        <translation>ajoutez la ligne `%1`</translation>
    </message>
    <message>
        <source>there is no header row</source>
        <translation>il n’y a pas de ligne d’en-tête</translation>
    </message>
    <message>
        <source>there is no column `time`</source>
        <translation>il n’y a pas de colonne `time`</translation>
    </message>
    <message>
        <source>column `%1` is not known</source>
        <translation>la colonne `%1` est inconnue</translation>
    </message>
    <message>
        <source>remove it; the columns are %1</source>
        <translation>enlevez-la&#x202f;; les colonnes sont %1</translation>
    </message>
    <message>
        <source>column `%1` stands twice, first as column %2</source>
        <translation>la colonne `%1` figure deux fois, d’abord comme colonne %2</translation>
    </message>
    <message>
        <source>remove one of the two</source>
        <translation>enlevez l’une des deux</translation>
    </message>
    <message>
        <source>line %1: the row is empty; left out</source>
        <translation>ligne %1&#xa0;: la ligne est vide&#x202f;; laissée de côté</translation>
    </message>
    <message>
        <source>`%1` stands in a column without a name</source>
        <translation>`%1` est dans une colonne sans nom</translation>
    </message>
    <message>
        <source>name the column or remove the text</source>
        <translation>nommez la colonne ou enlevez le texte</translation>
    </message>
    <message>
        <source>a line with `#` stands below the header row</source>
        <translation>une ligne avec `#` est sous la ligne d’en-tête</translation>
    </message>
    <message>
        <source>move it above the header row or remove it</source>
        <translation>mettez-la au-dessus de la ligne d’en-tête ou enlevez-la</translation>
    </message>
    <message>
        <source>add or remove commas; a remark with commas needs quotes around it</source>
        <translation>ajoutez ou enlevez des virgules&#x202f;; une remarque avec virgules se met entre guillemets</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` est hors plage</translation>
    </message>
    <message>
        <source>give 0 to %1</source>
        <translation>donnez 0 à %1</translation>
    </message>
    <message>
        <source>`%1` is no mark</source>
        <translation>`%1` n’est pas un repère</translation>
    </message>
    <message>
        <source>use one of: %1</source>
        <translation>utilisez l’un de&#xa0;: %1</translation>
    </message>
    <message>
        <source>the row has no time</source>
        <translation>la ligne n’a pas d’heure</translation>
    </message>
    <message>
        <source>give date and time, like 2027-05-14T18:00</source>
        <translation>donnez date et heure, comme 2027-05-14T18:00</translation>
    </message>
    <message>
        <source>`%1` has no offset, and the sheet names no time zone</source>
        <translation>`%1` n’a pas de décalage, et la fiche ne nomme aucun fuseau horaire</translation>
    </message>
    <message>
        <source>add Z or an offset such as +02:00, or a line `# time_zone: NAME`</source>
        <translation>ajoutez Z ou un décalage comme +02:00, ou une ligne `# time_zone: NAME`</translation>
    </message>
    <message>
        <source>line %1: %2 occurs twice in %3; by the order of the rows it is read as the later, %4</source>
        <translation>ligne %1&#xa0;: %2 existe deux fois en %3&#x202f;; d’après l’ordre des lignes, lu comme le plus tardif, %4</translation>
    </message>
    <message>
        <source>line %1: %2 occurs twice in %3; by the order of the rows it is read as the earlier, %4</source>
        <translation>ligne %1&#xa0;: %2 existe deux fois en %3&#x202f;; d’après l’ordre des lignes, lu comme le plus tôt, %4</translation>
    </message>
</context>
<context>
    <name>sizing</name>
    <message>
        <source>no standby run</source>
        <translation>aucun essai de veille</translation>
    </message>
    <message>
        <source>an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice)</source>
        <translation>une attente, pas une mesure&#xa0;: %1 à %2 % de l’énergie assignée à la prise (pratique courante)</translation>
    </message>
    <message>
        <source>an expectation: its drains do not tell its no-load draw, which is taken as usual (0 to 3 % of the rated output, common practice)</source>
        <translation>une attente&#xa0;: ses décharges ne disent pas sa consommation à vide, supposée courante (0 à 3 % de la puissance assignée, pratique courante)</translation>
    </message>
    <message>
        <source>from full to cut-off, by the hour at which it begins and the order of use</source>
        <translation>de la pleine charge à la coupure, selon l’heure du début et l’ordre d’usage</translation>
    </message>
    <message>
        <source>%1 alone takes %2 W, above the rated output of %3 W</source>
        <translation>%1 prend à lui seul %2 W, au-dessus de la puissance assignée de %3 W</translation>
    </message>
    <message>
        <source>%1 alone starts with %2 W, above the highest output of %3 W</source>
        <translation>%1 démarre à lui seul avec %2 W, au-dessus de la plus haute puissance de %3 W</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries the power</source>
        <translation>aucun nombre de stations jusqu’à %1 ne porte la puissance</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries it for %2 day: their own draw empties them before</source>
        <translation>aucun nombre de stations jusqu’à %1 ne la porte pendant %2 jour&#xa0;: leur consommation propre les vide avant</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries it for %2 days: their own draw empties them before</source>
        <translation>aucun nombre de stations jusqu’à %1 ne la porte pendant %2 jours&#xa0;: leur consommation propre les vide avant</translation>
    </message>
    <message>
        <source>the power decides</source>
        <translation>la puissance décide</translation>
    </message>
    <message>
        <source>no interval: the error limit of a meter is not stated</source>
        <translation>sans intervalle&#xa0;: la limite d’erreur d’un compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>no number of units is sure to carry it for so long: their own draw may empty them before</source>
        <translation>aucun nombre de stations n’est sûr de la porter si longtemps&#xa0;: leur consommation propre peut les vider avant</translation>
    </message>
    <message>
        <source>its own draw is not measured: %1 W are taken, as is usual</source>
        <translation>sa consommation propre n’est pas mesurée&#xa0;: %1 W sont supposés, comme c’est courant</translation>
    </message>
    <message>
        <source>its own draw is not measured and not counted: PV array and battery are the least needed</source>
        <translation>sa consommation propre n’est ni mesurée ni comptée&#xa0;: champ PV et batterie sont le minimum nécessaire</translation>
    </message>
    <message>
        <source>while its output is off it takes %1 W, which are counted</source>
        <translation>sortie coupée, elle prend %1 W, qui sont comptés</translation>
    </message>
    <message>
        <source>what it takes while its output is off is not measured and not counted: make a standby run</source>
        <translation>ce qu’elle prend sortie coupée n’est ni mesuré ni compté&#xa0;: faites un essai de veille</translation>
    </message>
    <message>
        <source>more units do not help</source>
        <translation>plus de stations n’y change rien</translation>
    </message>
    <message>
        <source>no peak output is claimed; starts are held against the rated output</source>
        <translation>aucune puissance de crête n’est annoncée&#x202f;; les démarrages sont confrontés à la puissance assignée</translation>
    </message>
    <message>
        <source>the claim does not hold: %1</source>
        <translation>la valeur annoncée n’est pas tenue&#xa0;: %1</translation>
    </message>
    <message>
        <source>the load list takes nothing</source>
        <translation>la liste de charges ne prend rien</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated, and no drain tells its energy</source>
        <translation>l’énergie assignée de la station n’est pas précisée, et aucune décharge ne dit son énergie</translation>
    </message>
    <message>
        <source>own drains</source>
        <translation>décharges propres</translation>
    </message>
    <message>
        <source>expectation from one load</source>
        <translation>attente d’après une charge</translation>
    </message>
    <message>
        <source>expectation, not measured</source>
        <translation>attente, non mesuré</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>convient</translation>
    </message>
    <message>
        <source>fits if not all run at once</source>
        <translation>convient si tout ne marche pas à la fois</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>trop petite</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>The load list takes nothing yet.</source>
        <translation>La liste de charges ne prend encore rien.</translation>
    </message>
    <message>
        <source>The output stays on day and night, since something is always connected.</source>
        <translation>La sortie reste active jour et nuit, car quelque chose est toujours branché.</translation>
    </message>
    <message>
        <source>The output is on for %1 h a day (%2 h if no two appliances were in use together) and switched off for the rest.</source>
        <translation>La sortie est active %1 h par jour (%2 h si deux appareils ne servaient jamais ensemble) et coupée le reste du temps.</translation>
    </message>
    <message>
        <source>Days, PV array, months and battery count the unit&apos;s own draw for every hour that its output is on, besides the list.</source>
        <translation>Jours, champ PV, mois et batterie comptent, en plus de la liste, la consommation propre de la station pour chaque heure de sortie active.</translation>
    </message>
    <message>
        <source>Use by day is spread evenly over a day of %1 h, use at night over a night of %2 h; a day of autonomy is one day&apos;s list served.</source>
        <translation>L’usage de jour est réparti également sur un jour de %1 h, l’usage de nuit sur une nuit de %2 h&#x202f;; un jour d’autonomie est la liste d’un jour servie.</translation>
    </message>
    <message>
        <source>Units without a drain that says anything stand with an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice, no source).</source>
        <translation>Les stations sans décharge qui dise quelque chose figurent avec une attente, pas une mesure&#xa0;: %1 à %2 % de l’énergie assignée à la prise (pratique courante, sans source).</translation>
    </message>
    <message>
        <source>The PV input of %1 takes at most %2 W of the array&apos;s %3 W for each unit.</source>
        <translation>L’entrée PV de %1 prend au plus %2 W des %3 W du champ, pour chaque station.</translation>
    </message>
    <message>
        <source>The PV input of %1 takes at most %2 W of the array&apos;s %3 W.</source>
        <translation>L’entrée PV de %1 prend au plus %2 W des %3 W du champ.</translation>
    </message>
    <message>
        <source>Never connect the outputs of several units with each other; give each its own appliances, unless the makers say otherwise.</source>
        <translation>Ne reliez jamais entre elles les sorties de plusieurs stations&#x202f;; donnez à chacune ses propres appareils, sauf avis contraire des fabricants.</translation>
    </message>
    <message>
        <source>Never exceed the ratings of sockets, cords and the unit; motors and compressors start with several times their power.</source>
        <translation>Ne dépassez jamais les valeurs assignées des prises, des cordons et de la station&#x202f;; moteurs et compresseurs démarrent avec plusieurs fois leur puissance.</translation>
    </message>
    <message>
        <source>PV strings are live in daylight and can carry dangerous DC voltage; check the string against the unit&apos;s PV input first.</source>
        <translation>Les chaînes PV sont sous tension de jour et peuvent porter une tension continue dangereuse&#x202f;; contrôlez d’abord la chaîne face à l’entrée PV de la station.</translation>
    </message>
    <message>
        <source>Feed no building from a unit without the transfer switch that the local code asks for.</source>
        <translation>N’alimentez aucun bâtiment par une station sans l’inverseur de source que demandent les règles locales.</translation>
    </message>
    <message>
        <source>Local electrical codes and a licensed electrician come first.</source>
        <translation>Les règles électriques locales et un électricien agréé passent d’abord.</translation>
    </message>
    <message>
        <source>Do not rest medical equipment or anything that a life depends on upon this forecast.</source>
        <translation>Ne faites pas dépendre de cette prévision un équipement médical ou quoi que ce soit dont dépend une vie.</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 est hors plage</translation>
    </message>
    <message>
        <source>this is out of range</source>
        <translation>c’est hors plage</translation>
    </message>
    <message>
        <source>state a number above %1 to %2</source>
        <translation>indiquez un nombre au-dessus de %1 et jusqu’à %2</translation>
    </message>
    <message>
        <source>state a number from %1 to %2</source>
        <translation>indiquez un nombre de %1 à %2</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>jours d’autonomie</translation>
    </message>
    <message>
        <source>peak-sun hours</source>
        <translation>heures de plein soleil</translation>
    </message>
    <message>
        <source>derating</source>
        <translation>déclassement</translation>
    </message>
    <message>
        <source>array-to-load ratio</source>
        <translation>rapport du champ à la charge</translation>
    </message>
    <message>
        <source>array</source>
        <translation>champ</translation>
    </message>
    <message>
        <source>units side by side</source>
        <translation>stations côte à côte</translation>
    </message>
    <message>
        <source>daylight hours</source>
        <translation>heures de jour</translation>
    </message>
    <message>
        <source>expected share, lower end</source>
        <translation>part attendue, bout inférieur</translation>
    </message>
    <message>
        <source>expected share, upper end</source>
        <translation>part attendue, bout supérieur</translation>
    </message>
    <message>
        <source>inverter efficiency</source>
        <translation>rendement de l’onduleur</translation>
    </message>
    <message>
        <source>deepest discharge</source>
        <translation>décharge maximale</translation>
    </message>
    <message>
        <source>share left at the end of life</source>
        <translation>part restante en fin de vie</translation>
    </message>
    <message>
        <source>temperature factor</source>
        <translation>facteur de température</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>marge</translation>
    </message>
    <message>
        <source>peak-sun hours of month %1</source>
        <translation>heures de plein soleil du mois %1</translation>
    </message>
    <message>
        <source>the lower end of the expected share is above the upper</source>
        <translation>le bout inférieur de la part attendue est au-dessus du supérieur</translation>
    </message>
    <message>
        <source>expected share</source>
        <translation>part attendue</translation>
    </message>
    <message>
        <source>swap them</source>
        <translation>échangez-les</translation>
    </message>
    <message>
        <source>Days of autonomy: %1</source>
        <translation>Jours d’autonomie&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>a file of the copy&apos;s name is no copy of this logbook</source>
        <translation>un fichier qui porte le nom de la copie n’est pas une copie de ce carnet</translation>
    </message>
    <message>
        <source>move it away, or choose another folder for the copies</source>
        <translation>déplacez-le, ou choisissez un autre dossier pour les copies</translation>
    </message>
    <message>
        <source>the disk is full; no copy was made</source>
        <translation>le disque est plein&#x202f;; aucune copie n’a été faite</translation>
    </message>
    <message>
        <source>free some space, or choose another folder for the copies</source>
        <translation>libérez de la place, ou choisissez un autre dossier pour les copies</translation>
    </message>
    <message>
        <source>the copy that was just made cannot be read back</source>
        <translation>la copie qui vient d’être faite ne peut être relue</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder for the copies; no copy was kept</source>
        <translation>vérifiez le disque, ou choisissez un autre dossier pour les copies&#x202f;; aucune copie n’a été gardée</translation>
    </message>
    <message>
        <source>a text of %1 is too long</source>
        <translation>un texte de %1 est trop long</translation>
    </message>
    <message>
        <source>a text of %1 is no UTF-8</source>
        <translation>un texte de %1 n’est pas en UTF-8</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>un relevé</translation>
    </message>
    <message>
        <source>a meter has no data</source>
        <translation>un compteur n’a pas de données</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>compteur %1</translation>
    </message>
    <message>
        <source>an option of the method</source>
        <translation>une option de la méthode</translation>
    </message>
    <message>
        <source>the publisher&apos;s details</source>
        <translation>les mentions de l’éditeur</translation>
    </message>
    <message>
        <source>the source of a meter</source>
        <translation>la source d’un compteur</translation>
    </message>
    <message>
        <source>a set of columns</source>
        <translation>un jeu de colonnes</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>station %1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>essai %1</translation>
    </message>
    <message>
        <source>log %1</source>
        <translation>journal %1</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>%1 is %2 here, but %3 in the logbook</source>
        <translation>%1&#xa0;: ici %2, mais %3 dans le carnet</translation>
    </message>
    <message>
        <source>correct one of the two, or give this one another name; nothing was imported</source>
        <translation>corrigez l’un des deux, ou donnez un autre nom à celui-ci&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>the currency</source>
        <translation>la devise</translation>
    </message>
    <message>
        <source>the model</source>
        <translation>le modèle</translation>
    </message>
    <message>
        <source>the serial number</source>
        <translation>le numéro de série</translation>
    </message>
    <message>
        <source>the chemistry</source>
        <translation>la chimie</translation>
    </message>
    <message>
        <source>the day of purchase</source>
        <translation>le jour d’achat</translation>
    </message>
    <message>
        <source>the rated energy</source>
        <translation>l’énergie assignée</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>la puissance assignée</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>the peak output</source>
        <translation>la puissance de crête</translation>
    </message>
    <message>
        <source>the PV voltage limit</source>
        <translation>la limite de tension PV</translation>
    </message>
    <message>
        <source>%1 V</source>
        <translation>%1 V</translation>
    </message>
    <message>
        <source>the PV current limit</source>
        <translation>la limite de courant PV</translation>
    </message>
    <message>
        <source>%1 A</source>
        <translation>%1 A</translation>
    </message>
    <message>
        <source>the PV power limit</source>
        <translation>la limite de puissance PV</translation>
    </message>
    <message>
        <source>the PV start voltage</source>
        <translation>la tension de démarrage PV</translation>
    </message>
    <message>
        <source>the PV short-circuit current</source>
        <translation>le courant de court-circuit PV</translation>
    </message>
    <message>
        <source>the charge time</source>
        <translation>le temps de recharge</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>le prix</translation>
    </message>
    <message>
        <source>the price paid</source>
        <translation>le prix payé</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>la masse</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>the warranty</source>
        <translation>la garantie</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 ans</translation>
    </message>
    <message>
        <source>the cycles before</source>
        <translation>les cycles avant</translation>
    </message>
    <message>
        <source>the gauge step</source>
        <translation>le pas de la jauge</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 points de pourcentage</translation>
    </message>
    <message>
        <source>the class</source>
        <translation>la classe</translation>
    </message>
    <message>
        <source>the standard</source>
        <translation>la norme</translation>
    </message>
    <message>
        <source>the number of the certificate</source>
        <translation>le numéro du certificat</translation>
    </message>
    <message>
        <source>the date of the certificate</source>
        <translation>la date du certificat</translation>
    </message>
    <message>
        <source>the laboratory</source>
        <translation>le laboratoire</translation>
    </message>
    <message>
        <source>the end of its validity</source>
        <translation>la fin de sa validité</translation>
    </message>
    <message>
        <source>a point of correction</source>
        <translation>un point de correction</translation>
    </message>
    <message>
        <source>another</source>
        <translation>un autre</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>précisé</translation>
    </message>
    <message>
        <source>the step</source>
        <translation>le pas</translation>
    </message>
    <message>
        <source>the part of the error limit of each load</source>
        <translation>la part de la limite d’erreur propre à chaque charge</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>the error limit</source>
        <translation>la limite d’erreur</translation>
    </message>
    <message>
        <source>the span</source>
        <translation>l’étendue</translation>
    </message>
    <message>
        <source>the starting current</source>
        <translation>le courant de démarrage</translation>
    </message>
    <message>
        <source>the lowest load of the range</source>
        <translation>la plus basse charge de la plage</translation>
    </message>
    <message>
        <source>the highest load of the range</source>
        <translation>la plus haute charge de la plage</translation>
    </message>
    <message>
        <source>the correction</source>
        <translation>la correction</translation>
    </message>
    <message>
        <source>the samples are not in order of time</source>
        <translation>les échantillons ne sont pas dans l’ordre du temps</translation>
    </message>
    <message>
        <source>sort the log by time</source>
        <translation>triez le journal par le temps</translation>
    </message>
    <message>
        <source>a PV sheet or the source of a charge is of an unknown kind</source>
        <translation>une fiche PV ou la source d’une recharge est d’une sorte inconnue</translation>
    </message>
    <message>
        <source>a run or a mark is of an unknown kind</source>
        <translation>un essai ou un repère est d’une sorte inconnue</translation>
    </message>
    <message>
        <source>a photo is of an unknown kind</source>
        <translation>une photo est d’une sorte inconnue</translation>
    </message>
    <message>
        <source>the logbook is damaged (%1)</source>
        <translation>le carnet est abîmé (%1)</translation>
    </message>
    <message>
        <source>restore it from a copy; nothing was changed</source>
        <translation>rétablissez-le d’après une copie&#x202f;; rien n’a été changé</translation>
    </message>
    <message>
        <source>it has no version</source>
        <translation>il n’a pas de version</translation>
    </message>
    <message>
        <source>its tables are not those of version %1</source>
        <translation>ses tables ne sont pas celles de la version %1</translation>
    </message>
    <message>
        <source>a row of %1 has lost its owner</source>
        <translation>une ligne de %1 a perdu ce dont elle dépend</translation>
    </message>
    <message>
        <source>the file changed while it was being opened</source>
        <translation>le fichier a changé pendant son ouverture</translation>
    </message>
    <message>
        <source>wait until the other program has done with it, then open it again</source>
        <translation>attendez que l’autre programme en ait fini, puis rouvrez-le</translation>
    </message>
    <message>
        <source>the disk does not allow safe recording</source>
        <translation>le disque ne permet pas d’enregistrer sûrement</translation>
    </message>
    <message>
        <source>copy the logbook to a disk of this machine</source>
        <translation>copiez le carnet sur un disque de cette machine</translation>
    </message>
    <message>
        <source>the remains of another logbook of this name lie in the folder</source>
        <translation>les restes d’un autre carnet de ce nom sont dans le dossier</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>choisissez un autre nom</translation>
    </message>
    <message>
        <source>not all of the open logbook can be read any more</source>
        <translation>le carnet ouvert ne peut plus être lu en entier</translation>
    </message>
    <message>
        <source>restore the logbook from a copy of it; no copy was made</source>
        <translation>rétablissez le carnet d’après une copie&#x202f;; aucune copie n’a été faite</translation>
    </message>
    <message>
        <source>the disk is full; nothing was recorded</source>
        <translation>le disque est plein&#x202f;; rien n’a été enregistré</translation>
    </message>
    <message>
        <source>free some space, then try again</source>
        <translation>libérez de la place, puis réessayez</translation>
    </message>
    <message>
        <source>the logbook cannot be written</source>
        <translation>il est impossible d’écrire dans le carnet</translation>
    </message>
    <message>
        <source>check the permissions of the file and its folder</source>
        <translation>vérifiez les droits du fichier et de son dossier</translation>
    </message>
    <message>
        <source>close it and restore it from a copy</source>
        <translation>fermez-le et rétablissez-le d’après une copie</translation>
    </message>
    <message>
        <source>the logbook refused this (%1); nothing was recorded</source>
        <translation>le carnet a refusé cela (%1)&#x202f;; rien n’a été enregistré</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>le fichier ne s’ouvre pas</translation>
    </message>
    <message>
        <source>the memory is used up; nothing was recorded</source>
        <translation>la mémoire est épuisée&#x202f;; rien n’a été enregistré</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>fermez d’autres programmes</translation>
    </message>
    <message>
        <source>the disk reported a fault; nothing was recorded (%1)</source>
        <translation>le disque a signalé un défaut&#x202f;; rien n’a été enregistré (%1)</translation>
    </message>
    <message>
        <source>check the disk and its cable, then try again</source>
        <translation>vérifiez le disque et son câble, puis réessayez</translation>
    </message>
    <message>
        <source>the file cannot be reached (%1)</source>
        <translation>le fichier ne peut être atteint (%1)</translation>
    </message>
    <message>
        <source>check the folder</source>
        <translation>vérifiez le dossier</translation>
    </message>
    <message>
        <source>the file could not be written to the disk (%1)</source>
        <translation>le fichier n’a pas pu être écrit sur le disque (%1)</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder</source>
        <translation>vérifiez le disque, ou choisissez un autre dossier</translation>
    </message>
    <message>
        <source>the file could not be given its name (%1)</source>
        <translation>le fichier n’a pas pu recevoir son nom (%1)</translation>
    </message>
    <message>
        <source>choose another name or folder</source>
        <translation>choisissez un autre nom ou dossier</translation>
    </message>
    <message>
        <source>the logbook is open elsewhere</source>
        <translation>le carnet est ouvert ailleurs</translation>
    </message>
    <message>
        <source>close it there first; only one window or command can record into a logbook at a time</source>
        <translation>fermez-le d’abord là-bas&#x202f;; une seule fenêtre ou commande à la fois peut enregistrer dans un carnet</translation>
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
        <source>check the permissions of its folder</source>
        <translation>vérifiez les droits de son dossier</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>c’est un dossier</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>ce n’est pas un fichier</translation>
    </message>
    <message>
        <source>choose a .ullage file</source>
        <translation>choisissez un fichier .ullage</translation>
    </message>
    <message>
        <source>the file cannot be read (%1)</source>
        <translation>le fichier ne peut être lu (%1)</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>vérifiez ses droits d’accès</translation>
    </message>
    <message>
        <source>the file is read-only</source>
        <translation>le fichier est en lecture seule</translation>
    </message>
    <message>
        <source>make it writable, or save a copy elsewhere and record there; it can be looked at as it is</source>
        <translation>levez sa protection, ou enregistrez une copie ailleurs et travaillez dedans&#x202f;; tel quel, il peut être regardé</translation>
    </message>
    <message>
        <source>the folder is read-only</source>
        <translation>le dossier est en lecture seule</translation>
    </message>
    <message>
        <source>make it writable, or save a copy elsewhere and record there; the logbook can be looked at as it is</source>
        <translation>levez sa protection, ou enregistrez une copie ailleurs et travaillez dedans&#x202f;; le carnet peut être regardé tel quel</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>ce dossier n’existe pas</translation>
    </message>
    <message>
        <source>make the folder first, or choose another</source>
        <translation>créez d’abord le dossier, ou choisissez-en un autre</translation>
    </message>
    <message>
        <source>no file can be made in this folder</source>
        <translation>aucun fichier ne peut être créé dans ce dossier</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>choisissez un dossier où vous avez le droit d’écrire</translation>
    </message>
    <message>
        <source>a file of this name exists already</source>
        <translation>un fichier de ce nom existe déjà</translation>
    </message>
    <message>
        <source>this logbook was written by a newer version of Ullage (file version %1, this program knows up to %2)</source>
        <translation>ce carnet a été écrit par une version plus récente d’Ullage (version de fichier %1, ce programme connaît jusqu’à %2)</translation>
    </message>
    <message>
        <source>open it with the newer program; nothing was changed</source>
        <translation>ouvrez-le avec le programme plus récent&#x202f;; rien n’a été changé</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
    <message>
        <source>choose another file, or make a new logbook under another name</source>
        <translation>choisissez un autre fichier, ou créez un nouveau carnet sous un autre nom</translation>
    </message>
    <message>
        <source>the file is no logbook</source>
        <translation>le fichier n’est pas un carnet</translation>
    </message>
    <message>
        <source>choose a .ullage file; run sheets are imported into a logbook</source>
        <translation>choisissez un fichier .ullage&#x202f;; les fiches d’essai s’importent dans un carnet</translation>
    </message>
    <message>
        <source>the file is cut off after %1 bytes</source>
        <translation>le fichier est coupé après %1 octets</translation>
    </message>
    <message>
        <source>restore it from a copy</source>
        <translation>rétablissez-le d’après une copie</translation>
    </message>
    <message>
        <source>the file is a database of another program</source>
        <translation>le fichier est une base de données d’un autre programme</translation>
    </message>
    <message>
        <source>nothing more is recorded</source>
        <translation>rien n’est plus enregistré</translation>
    </message>
    <message>
        <source>save the open logbook under another name and go on there; what you entered stays in its fields</source>
        <translation>enregistrez le carnet ouvert sous un autre nom et continuez-y&#x202f;; ce que vous avez saisi reste dans ses champs</translation>
    </message>
    <message>
        <source>the logbook&apos;s file cannot be reached</source>
        <translation>le fichier du carnet ne peut être atteint</translation>
    </message>
    <message>
        <source>the logbook&apos;s file was removed while it was open</source>
        <translation>le fichier du carnet a été supprimé pendant qu’il était ouvert</translation>
    </message>
    <message>
        <source>the logbook&apos;s file was renamed or moved while it was open</source>
        <translation>le fichier du carnet a été renommé ou déplacé pendant qu’il était ouvert</translation>
    </message>
    <message>
        <source>another file has taken the place of the open logbook</source>
        <translation>un autre fichier a pris la place du carnet ouvert</translation>
    </message>
    <message>
        <source>another program has cut the open logbook short</source>
        <translation>un autre programme a raccourci le carnet ouvert</translation>
    </message>
    <message>
        <source>another program has written to the open logbook</source>
        <translation>un autre programme a écrit dans le carnet ouvert</translation>
    </message>
    <message>
        <source>opening it was cancelled</source>
        <translation>son ouverture a été abandonnée</translation>
    </message>
    <message>
        <source>the logbook is open for looking only</source>
        <translation>le carnet est ouvert en lecture seule</translation>
    </message>
    <message>
        <source>open it for recording first</source>
        <translation>ouvrez-le d’abord pour enregistrer</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>le disque est plein</translation>
    </message>
    <message>
        <source>the disk reported a fault</source>
        <translation>le disque a signalé un défaut</translation>
    </message>
    <message>
        <source>what was recorded last is safe, but in `%1` beside the logbook; free some space</source>
        <translation>ce qui a été enregistré en dernier est en sûreté, mais dans `%1` à côté du carnet&#x202f;; libérez de la place</translation>
    </message>
    <message>
        <source>what was recorded last is safe, but in `%1` beside the logbook; check the disk</source>
        <translation>ce qui a été enregistré en dernier est en sûreté, mais dans `%1` à côté du carnet&#x202f;; vérifiez le disque</translation>
    </message>
    <message>
        <source>it may have been chosen from another logbook</source>
        <translation>il a peut-être été choisi dans un autre carnet</translation>
    </message>
    <message>
        <source>a block of samples cannot be read</source>
        <translation>un bloc d’échantillons ne peut être lu</translation>
    </message>
    <message>
        <source>restore the logbook from a copy</source>
        <translation>rétablissez le carnet d’après une copie</translation>
    </message>
    <message>
        <source>nothing was added</source>
        <translation>rien n’a été ajouté</translation>
    </message>
    <message>
        <source>the photo is empty</source>
        <translation>la photo est vide</translation>
    </message>
    <message>
        <source>choose another file</source>
        <translation>choisissez un autre fichier</translation>
    </message>
    <message>
        <source>the photo has %1; a logbook takes photos of at most %2</source>
        <translation>la photo fait %1&#x202f;; un carnet accepte des photos d’au plus %2</translation>
    </message>
    <message>
        <source>save it smaller, as JPEG for example</source>
        <translation>enregistrez-la plus petite, en JPEG par exemple</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG picture, whatever its name says</source>
        <translation>ce n’est ni une image JPEG ni une image PNG, quoi que dise son nom</translation>
    </message>
    <message>
        <source>save it as JPEG or PNG first</source>
        <translation>enregistrez-la d’abord en JPEG ou PNG</translation>
    </message>
    <message>
        <source>the head of the picture is damaged or cut off</source>
        <translation>le début de l’image est abîmé ou coupé</translation>
    </message>
    <message>
        <source>copy it from the camera again</source>
        <translation>recopiez-la de l’appareil photo</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels; a logbook takes photos of at most %3 megapixels</source>
        <translation>la photo fait %1 x %2 pixels&#x202f;; un carnet accepte des photos d’au plus %3 mégapixels</translation>
    </message>
    <message>
        <source>save it smaller</source>
        <translation>enregistrez-la plus petite</translation>
    </message>
    <message>
        <source>there is no room for a temporary copy of the logbook</source>
        <translation>il n’y a pas de place pour une copie temporaire du carnet</translation>
    </message>
    <message>
        <source>free space there, then open the logbook again</source>
        <translation>libérez-y de la place, puis rouvrez le carnet</translation>
    </message>
    <message>
        <source>a temporary copy of the logbook failed: %1</source>
        <translation>une copie temporaire du carnet a échoué&#xa0;: %1</translation>
    </message>
    <message>
        <source>check the space and permissions of the temporary folder</source>
        <translation>vérifiez la place et les droits du dossier temporaire</translation>
    </message>
    <message>
        <source>nothing is left of it</source>
        <translation>il n’en reste rien</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>le fichier ne se lit pas jusqu’à sa fin</translation>
    </message>
    <message>
        <source>check the disk, or take a copy of the file</source>
        <translation>vérifiez le disque, ou prenez une copie du fichier</translation>
    </message>
    <message>
        <source>the file is too large for the memory</source>
        <translation>le fichier est trop grand pour la mémoire</translation>
    </message>
    <message>
        <source>the logbook is open elsewhere and changes all the time</source>
        <translation>le carnet est ouvert ailleurs et change sans cesse</translation>
    </message>
    <message>
        <source>try again in a moment</source>
        <translation>réessayez dans un instant</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>give it a name</source>
        <translation>donnez-lui un nom</translation>
    </message>
    <message>
        <source>the tags are not in order, or one holds a semicolon, a comma or blanks around it</source>
        <translation>les étiquettes ne sont pas en ordre, ou l’une contient un point-virgule, une virgule ou des espaces autour</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>étiquettes</translation>
    </message>
    <message>
        <source>give short words, each once</source>
        <translation>donnez des mots courts, chacun une fois</translation>
    </message>
    <message>
        <source>points of correction</source>
        <translation>points de correction</translation>
    </message>
    <message numerus="yes">
        <source>there are %n of them</source>
        <comment>there is %n of them</comment>
        <translation>
            <numerusform>il y en a %n</numerusform>
            <numerusform>il y en a %n</numerusform>
        </translation>
    </message>
    <message>
        <source>load of a point</source>
        <translation>charge d’un point</translation>
    </message>
    <message>
        <source>correction of a point</source>
        <translation>correction d’un point</translation>
    </message>
    <message>
        <source>uncertainty of a point</source>
        <translation>incertitude d’un point</translation>
    </message>
    <message>
        <source>coverage factor of a point</source>
        <translation>facteur d’élargissement d’un point</translation>
    </message>
    <message>
        <source>a point states a coverage factor but no uncertainty</source>
        <translation>un point précise un facteur d’élargissement mais pas d’incertitude</translation>
    </message>
    <message>
        <source>state U with k</source>
        <translation>indiquez U avec k</translation>
    </message>
    <message>
        <source>the points are not in order of rising load, or two are at one load</source>
        <translation>les points ne sont pas par charge croissante, ou deux sont à la même charge</translation>
    </message>
    <message>
        <source>state each load once, the lowest first</source>
        <translation>indiquez chaque charge une fois, la plus basse d’abord</translation>
    </message>
    <message>
        <source>the unit has no name</source>
        <translation>la station n’a pas de nom</translation>
    </message>
    <message>
        <source>day of purchase</source>
        <translation>jour d’achat</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>chemistry</source>
        <translation>chimie</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>devise</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
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
        <source>peak output</source>
        <translation>puissance de crête</translation>
    </message>
    <message>
        <source>PV voltage limit</source>
        <translation>limite de tension PV</translation>
    </message>
    <message>
        <source>PV current limit</source>
        <translation>limite de courant PV</translation>
    </message>
    <message>
        <source>PV power limit</source>
        <translation>limite de puissance PV</translation>
    </message>
    <message>
        <source>PV start voltage</source>
        <translation>tension de démarrage PV</translation>
    </message>
    <message>
        <source>PV short-circuit current</source>
        <translation>courant de court-circuit PV</translation>
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
        <source>cycles before</source>
        <translation>cycles avant</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>pas de la jauge</translation>
    </message>
    <message>
        <source>the meter has no name</source>
        <translation>le compteur n’a pas de nom</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>date du certificat</translation>
    </message>
    <message>
        <source>end of the certificate&apos;s validity</source>
        <translation>fin de validité du certificat</translation>
    </message>
    <message>
        <source>the range begins above its end</source>
        <translation>la plage commence au-dessus de sa fin</translation>
    </message>
    <message>
        <source>range</source>
        <translation>plage</translation>
    </message>
    <message>
        <source>exchange the two loads</source>
        <translation>échangez les deux charges</translation>
    </message>
    <message>
        <source>number of the certificate</source>
        <translation>numéro du certificat</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratoire</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norme</translation>
    </message>
    <message>
        <source>step</source>
        <translation>pas</translation>
    </message>
    <message>
        <source>error limit</source>
        <translation>limite d’erreur</translation>
    </message>
    <message>
        <source>part of the error limit of each load</source>
        <translation>part de la limite d’erreur propre à chaque charge</translation>
    </message>
    <message>
        <source>span</source>
        <translation>étendue</translation>
    </message>
    <message>
        <source>starting current</source>
        <translation>courant de démarrage</translation>
    </message>
    <message>
        <source>lowest load of the range</source>
        <translation>plus basse charge de la plage</translation>
    </message>
    <message>
        <source>highest load of the range</source>
        <translation>plus haute charge de la plage</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>keys that are not known</source>
        <translation>clés inconnues</translation>
    </message>
    <message>
        <source>a key that is not known</source>
        <translation>une clé inconnue</translation>
    </message>
    <message>
        <source>the second meter is the first one</source>
        <translation>le second compteur est le premier</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>second compteur</translation>
    </message>
    <message>
        <source>choose another meter, or none</source>
        <translation>choisissez un autre compteur, ou aucun</translation>
    </message>
    <message>
        <source>created</source>
        <translation>création</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>ambient temperature</source>
        <translation>température ambiante</translation>
    </message>
    <message>
        <source>ambient temperature at the end</source>
        <translation>température ambiante à la fin</translation>
    </message>
    <message>
        <source>how late the end was noticed</source>
        <translation>retard avec lequel la fin a été remarquée</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>second index</translation>
    </message>
    <message>
        <source>meter power</source>
        <translation>puissance au compteur</translation>
    </message>
    <message>
        <source>display power</source>
        <translation>puissance à l’afficheur</translation>
    </message>
    <message>
        <source>the PV sheet has no name</source>
        <translation>la fiche PV n’a pas de nom</translation>
    </message>
    <message>
        <source>a string has at least one module, and at most 1000</source>
        <translation>une chaîne a au moins un module, et au plus 1000</translation>
    </message>
    <message>
        <source>series, parallel</source>
        <translation>série, parallèle</translation>
    </message>
    <message>
        <source>give 1 to 1000</source>
        <translation>donnez 1 à 1000</translation>
    </message>
    <message>
        <source>module</source>
        <translation>module</translation>
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
        <translation>coefficient de Voc</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>coefficient de Vmp</translation>
    </message>
    <message>
        <source>coefficient of power</source>
        <translation>coefficient de puissance</translation>
    </message>
    <message>
        <source>NOCT</source>
        <translation>NOCT</translation>
    </message>
    <message>
        <source>coldest ambient</source>
        <translation>ambiante la plus froide</translation>
    </message>
    <message>
        <source>hottest ambient</source>
        <translation>ambiante la plus chaude</translation>
    </message>
    <message>
        <source>hottest cell</source>
        <translation>cellule la plus chaude</translation>
    </message>
    <message>
        <source>irradiance</source>
        <translation>éclairement</translation>
    </message>
    <message>
        <source>tolerance of the voltages</source>
        <translation>tolérance des tensions</translation>
    </message>
    <message>
        <source>time of the photo</source>
        <translation>heure de la photo</translation>
    </message>
    <message>
        <source>file name</source>
        <translation>nom de fichier</translation>
    </message>
    <message>
        <source>time of the log</source>
        <translation>heure du journal</translation>
    </message>
    <message>
        <source>fingerprint</source>
        <translation>empreinte</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>disposition</translation>
    </message>
    <message>
        <source>header</source>
        <translation>en-tête</translation>
    </message>
    <message>
        <source>uncertainty of the clock offset</source>
        <translation>incertitude du décalage d’horloge</translation>
    </message>
    <message>
        <source>time of a sample</source>
        <translation>heure d’un échantillon</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tension</translation>
    </message>
    <message>
        <source>current</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>output power</source>
        <translation>puissance de sortie</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>the option has no key</source>
        <translation>l’option n’a pas de clé</translation>
    </message>
    <message>
        <source>key</source>
        <translation>clé</translation>
    </message>
    <message>
        <source>name it</source>
        <translation>nommez-la</translation>
    </message>
    <message>
        <source>publisher</source>
        <translation>éditeur</translation>
    </message>
    <message>
        <source>title</source>
        <translation>titre</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>introduction</translation>
    </message>
    <message>
        <source>licence</source>
        <translation>licence</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>no column is chosen</source>
        <translation>aucune colonne n’est choisie</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>colonnes</translation>
    </message>
    <message>
        <source>choose one or more</source>
        <translation>choisissez-en une ou plusieurs</translation>
    </message>
    <message>
        <source>name of a set of columns</source>
        <translation>nom d’un jeu de colonnes</translation>
    </message>
    <message>
        <source>half-typed entry</source>
        <translation>saisie à moitié tapée</translation>
    </message>
    <message>
        <source>answers</source>
        <translation>réponses</translation>
    </message>
    <message>
        <source>the logbook has this unit already</source>
        <translation>le carnet a déjà cette station</translation>
    </message>
    <message>
        <source>the logbook has no such unit</source>
        <translation>le carnet n’a pas cette station</translation>
    </message>
    <message>
        <source>the logbook has this meter already</source>
        <translation>le carnet a déjà ce compteur</translation>
    </message>
    <message>
        <source>the logbook has no such meter</source>
        <translation>le carnet n’a pas ce compteur</translation>
    </message>
    <message numerus="yes">
        <source>the meter is named by %n runs</source>
        <comment>the meter is named by %n run</comment>
        <translation>
            <numerusform>le compteur est nommé par %n essai</numerusform>
            <numerusform>le compteur est nommé par %n essais</numerusform>
        </translation>
    </message>
    <message>
        <source>choose another meter in the runs first; withdrawn runs count too</source>
        <translation>choisissez d’abord un autre compteur dans les essais&#x202f;; les essais retirés comptent aussi</translation>
    </message>
    <message>
        <source>free some space or choose another disk</source>
        <translation>libérez de la place ou choisissez un autre disque</translation>
    </message>
    <message>
        <source>both meters of the run have one name</source>
        <translation>les deux compteurs de l’essai ont le même nom</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>donnez un autre nom à l’un d’eux</translation>
    </message>
    <message>
        <source>the logbook has this run already</source>
        <translation>le carnet a déjà cet essai</translation>
    </message>
    <message>
        <source>the logbook has this reading already</source>
        <translation>le carnet a déjà ce relevé</translation>
    </message>
    <message>
        <source>the logbook has a load list `%1` already</source>
        <translation>le carnet a déjà une liste de charges `%1`</translation>
    </message>
    <message>
        <source>give this one another name</source>
        <translation>donnez un autre nom à celle-ci</translation>
    </message>
    <message>
        <source>the logbook has this load list already</source>
        <translation>le carnet a déjà cette liste de charges</translation>
    </message>
    <message>
        <source>the logbook has no such load list</source>
        <translation>le carnet n’a pas cette liste de charges</translation>
    </message>
    <message>
        <source>the logbook has no such run</source>
        <translation>le carnet n’a pas cet essai</translation>
    </message>
    <message>
        <source>the logbook has no such reading</source>
        <translation>le carnet n’a pas ce relevé</translation>
    </message>
    <message>
        <source>the reading is of another run</source>
        <translation>le relevé est d’un autre essai</translation>
    </message>
    <message>
        <source>choose a reading of this run</source>
        <translation>choisissez un relevé de cet essai</translation>
    </message>
    <message>
        <source>the photos of a logbook take at most %1 MB together, and this one would exceed that</source>
        <translation>les photos d’un carnet prennent au plus %1 MB en tout, et celle-ci dépasserait cela</translation>
    </message>
    <message>
        <source>save photos smaller, or start a new logbook</source>
        <translation>enregistrez des photos plus petites, ou commencez un nouveau carnet</translation>
    </message>
    <message>
        <source>the logbook has no such photo</source>
        <translation>le carnet n’a pas cette photo</translation>
    </message>
    <message>
        <source>the photo is withdrawn already</source>
        <translation>la photo est déjà retirée</translation>
    </message>
    <message>
        <source>the photo is not withdrawn</source>
        <translation>la photo n’est pas retirée</translation>
    </message>
    <message>
        <source>the logbook has this PV sheet already</source>
        <translation>le carnet a déjà cette fiche PV</translation>
    </message>
    <message>
        <source>the logbook has no such PV sheet</source>
        <translation>le carnet n’a pas cette fiche PV</translation>
    </message>
    <message>
        <source>a photo no longer waits for this entry; nothing was recorded</source>
        <translation>une photo n’attend plus cette saisie&#x202f;; rien n’a été enregistré</translation>
    </message>
    <message>
        <source>look at the photos, then record again</source>
        <translation>regardez les photos, puis enregistrez à nouveau</translation>
    </message>
    <message>
        <source>the reading says this already</source>
        <translation>le relevé dit déjà cela</translation>
    </message>
    <message>
        <source>change a value or leave it as it is</source>
        <translation>changez une valeur ou laissez-le tel quel</translation>
    </message>
    <message>
        <source>the reading is withdrawn already</source>
        <translation>le relevé est déjà retiré</translation>
    </message>
    <message>
        <source>the reading is not withdrawn</source>
        <translation>le relevé n’est pas retiré</translation>
    </message>
    <message>
        <source>a unit to be taken over, or what it belongs to, is not there</source>
        <translation>une station à reprendre, ou ce à quoi elle appartient, n’est pas là</translation>
    </message>
    <message>
        <source>a meter to be taken over, or what it belongs to, is not there</source>
        <translation>un compteur à reprendre, ou ce à quoi il appartient, n’est pas là</translation>
    </message>
    <message>
        <source>a run to be taken over, or what it belongs to, is not there</source>
        <translation>un essai à reprendre, ou ce à quoi il appartient, n’est pas là</translation>
    </message>
    <message>
        <source>a reading to be taken over, or what it belongs to, is not there</source>
        <translation>un relevé à reprendre, ou ce à quoi il appartient, n’est pas là</translation>
    </message>
    <message>
        <source>a photo to be taken over, or what it belongs to, is not there</source>
        <translation>une photo à reprendre, ou ce à quoi elle appartient, n’est pas là</translation>
    </message>
    <message>
        <source>the logbook has this photo already</source>
        <translation>le carnet a déjà cette photo</translation>
    </message>
    <message>
        <source>a log to be taken over, or what it belongs to, is not there</source>
        <translation>un journal à reprendre, ou ce à quoi il appartient, n’est pas là</translation>
    </message>
    <message>
        <source>the logbook has this log already</source>
        <translation>le carnet a déjà ce journal</translation>
    </message>
    <message>
        <source>a load list to be taken over, or what it belongs to, is not there</source>
        <translation>une liste de charges à reprendre, ou ce à quoi elle appartient, n’est pas là</translation>
    </message>
    <message>
        <source>a PV sheet to be taken over, or what it belongs to, is not there</source>
        <translation>une fiche PV à reprendre, ou ce à quoi elle appartient, n’est pas là</translation>
    </message>
    <message>
        <source>the photos of both logbooks take more than %1 MB together</source>
        <translation>les photos des deux carnets font ensemble plus de %1 MB</translation>
    </message>
    <message>
        <source>a logbook holds no more; nothing was taken over</source>
        <translation>un carnet n’en contient pas plus&#x202f;; rien n’a été repris</translation>
    </message>
    <message>
        <source>compare the logbooks again</source>
        <translation>comparez de nouveau les carnets</translation>
    </message>
    <message>
        <source>compare the logbooks again; nothing was taken over</source>
        <translation>comparez de nouveau les carnets&#x202f;; rien n’a été repris</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>arrêté</translation>
    </message>
    <message>
        <source>nothing was taken over</source>
        <translation>rien n’a été repris</translation>
    </message>
    <message>
        <source>one of several changes failed</source>
        <translation>l’un de plusieurs changements a échoué</translation>
    </message>
    <message>
        <source>none of them was made</source>
        <translation>aucun d’eux n’a été fait</translation>
    </message>
    <message>
        <source>its times overlap those of `%1`, which the run has already</source>
        <translation>ses temps recouvrent ceux de `%1`, que l’essai a déjà</translation>
    </message>
    <message>
        <source>withdraw that trace, cut the log, or name the meter if another wrote it</source>
        <translation>retirez ce journal-là, coupez le journal, ou nommez le compteur si un autre l’a écrit</translation>
    </message>
    <message>
        <source>it tells the unit&apos;s gauge for times at which `%1` does so already</source>
        <translation>il dit la jauge de la station pour des temps où `%1` le fait déjà</translation>
    </message>
    <message>
        <source>it tells the unit&apos;s output power for times at which `%1` does so already</source>
        <translation>il dit la puissance de sortie de la station pour des temps où `%1` le fait déjà</translation>
    </message>
    <message>
        <source>withdraw that trace, or leave that column unused</source>
        <translation>retirez ce journal-là, ou laissez cette colonne inutilisée</translation>
    </message>
    <message>
        <source>this log is in the run already (as `%1`)</source>
        <translation>ce journal est déjà dans l’essai (comme `%1`)</translation>
    </message>
    <message>
        <source>nothing was imported</source>
        <translation>rien n’a été importé</translation>
    </message>
    <message>
        <source>the logbook has this trace already</source>
        <translation>le carnet a déjà ce journal</translation>
    </message>
    <message>
        <source>no row of the log could be taken</source>
        <translation>aucune ligne du journal n’a pu être reprise</translation>
    </message>
    <message>
        <source>see which rows were left out, and why</source>
        <translation>voyez quelles lignes ont été laissées de côté, et pourquoi</translation>
    </message>
    <message>
        <source>the logbook has no such trace</source>
        <translation>le carnet n’a pas ce journal</translation>
    </message>
    <message>
        <source>this log was withdrawn from its run</source>
        <translation>ce journal a été retiré de son essai</translation>
    </message>
    <message>
        <source>import it again</source>
        <translation>importez-le à nouveau</translation>
    </message>
    <message>
        <source>this log has been added to meanwhile</source>
        <translation>ce journal a été complété entre-temps</translation>
    </message>
    <message>
        <source>follow it again</source>
        <translation>suivez-le à nouveau</translation>
    </message>
</context>
<context>
    <name>tables</name>
    <message>
        <source>%1, unit</source>
        <translation>%1, unité</translation>
    </message>
    <message>
        <source>%1, lower</source>
        <translation>%1, bas</translation>
    </message>
    <message>
        <source>%1, upper</source>
        <translation>%1, haut</translation>
    </message>
    <message>
        <source>%1, kind</source>
        <translation>%1, sorte</translation>
    </message>
    <message>
        <source>%1, reason</source>
        <translation>%1, raison</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>%1, value and interval</source>
        <translation>%1, valeur et intervalle</translation>
    </message>
    <message>
        <source>the workbook could not be written whole</source>
        <translation>le classeur n’a pas pu être écrit en entier</translation>
    </message>
    <message>
        <source>make room on the disk or choose another place</source>
        <translation>faites de la place sur le disque ou choisissez un autre endroit</translation>
    </message>
    <message>
        <source>`%1` is no format of a table</source>
        <translation>`%1` n’est pas un format de tableau</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>utilisez %1</translation>
    </message>
    <message>
        <source>the description of the table cannot stand beside it: %1</source>
        <translation>la description du tableau ne peut être mise à côté de lui&#xa0;: %1</translation>
    </message>
    <message>
        <source>the table is written, but its description is not: %1</source>
        <translation>le tableau est écrit, mais sa description ne l’est pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>value; the columns that follow say how far it is known</source>
        <translation>valeur&#x202f;; les colonnes qui suivent disent à quel point elle est connue</translation>
    </message>
    <message>
        <source>unit of %1</source>
        <translation>unité de %1</translation>
    </message>
    <message>
        <source>lower end of the 95 % interval of %1</source>
        <translation>bout inférieur de l’intervalle à 95 % de %1</translation>
    </message>
    <message>
        <source>upper end of the 95 % interval of %1</source>
        <translation>bout supérieur de l’intervalle à 95 % de %1</translation>
    </message>
    <message>
        <source>how far %1 is known</source>
        <translation>à quel point %1 est connu</translation>
    </message>
    <message>
        <source>why %1 is not simply measured, or what it assumes</source>
        <translation>pourquoi %1 n’est pas simplement mesuré, ou ce que cela suppose</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>A text that a spreadsheet would run as a formula has an apostrophe in front.</source>
        <translation>Un texte qu’un tableur exécuterait comme formule a une apostrophe devant.</translation>
    </message>
    <message>
        <source>The numbers of this table in full (CSV)</source>
        <translation>Les nombres de ce tableau en entier (CSV)</translation>
    </message>
    <message>
        <source>sort by this column</source>
        <translation>trier par cette colonne</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Written by Ullage %1. Bring it into a document with \input; the preamble needs:</source>
        <translation>Écrit par Ullage %1. Insérez-le dans un document avec \input&#x202f;; le préambule a besoin de&#xa0;:</translation>
    </message>
    <message>
        <source>before LaTeX %1</source>
        <translation>avant LaTeX %1</translation>
    </message>
    <message>
        <source>A table wider than the page stands in parts that fit A4 with the margins of the article class. One that is wider than the page upright but not in landscape: \usepackage{pdflscape} and \begin{landscape} ... \end{landscape} around the \input.</source>
        <translation>Un tableau plus large que la page est en parties qui tiennent sur A4 avec les marges de la classe article. Pour un tableau plus large que la page en hauteur mais pas à l’italienne&#xa0;: \usepackage{pdflscape} et \begin{landscape} ... \end{landscape} autour de \input.</translation>
    </message>
    <message>
        <source>%1, part %2 of %3</source>
        <translation>%1, partie %2 sur %3</translation>
    </message>
    <message>
        <source>%1, local</source>
        <translation>%1, locale</translation>
    </message>
    <message>
        <source>a sheet of a workbook holds %1 rows and %2 columns, the table has %3 and %4</source>
        <translation>une feuille de classeur contient %1 lignes et %2 colonnes, le tableau en a %3 et %4</translation>
    </message>
    <message>
        <source>export it as csv</source>
        <translation>exportez-le en csv</translation>
    </message>
    <message>
        <source>there is not enough memory for the workbook</source>
        <translation>il n’y a pas assez de mémoire pour le classeur</translation>
    </message>
    <message>
        <source>the workbook cannot be made</source>
        <translation>le classeur ne peut être créé</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>il n’y a plus de place sur le disque</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>faites de la place ou choisissez un autre endroit</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>ne peut être écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>check that the folder exists and may be written to</source>
        <translation>vérifiez que le dossier existe et que vous pouvez y écrire</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>line %1, character %2</source>
        <translation>ligne %1, caractère %2</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>ce guillemet n’est jamais fermé</translation>
    </message>
    <message>
        <source>close it, or write a quote within a field twice</source>
        <translation>fermez-le, ou doublez un guillemet dans un champ</translation>
    </message>
    <message>
        <source>text follows a closing quote</source>
        <translation>du texte suit un guillemet fermant</translation>
    </message>
    <message>
        <source>put a comma after the field, or write a quote within it twice</source>
        <translation>mettez une virgule après le champ, ou doublez un guillemet dedans</translation>
    </message>
    <message>
        <source>a quote stands inside a field without quotes</source>
        <translation>un guillemet est dans un champ sans guillemets</translation>
    </message>
    <message>
        <source>put the field in quotes and write the quote twice</source>
        <translation>mettez le champ entre guillemets et doublez le guillemet</translation>
    </message>
    <message>
        <source>a carriage return without line feed</source>
        <translation>un retour chariot sans saut de ligne</translation>
    </message>
    <message>
        <source>save the file with LF or CRLF line ends</source>
        <translation>enregistrez le fichier avec des fins de ligne LF ou CRLF</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` est hors plage</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>donnez %1</translation>
    </message>
    <message>
        <source>`%1` is no point of correction</source>
        <translation>`%1` n’est pas un point de correction</translation>
    </message>
    <message>
        <source>give load, correction, U and k, like `100 0.998 0.3 2; 500 1.001 0.25 2`</source>
        <translation>donnez charge, correction, U et k, comme `100 0.998 0.3 2; 500 1.001 0.25 2`</translation>
    </message>
    <message>
        <source>the load %1 W stands twice</source>
        <translation>la charge %1 W figure deux fois</translation>
    </message>
    <message>
        <source>state each load once</source>
        <translation>indiquez chaque charge une fois</translation>
    </message>
    <message>
        <source>a backslash ends the value</source>
        <translation>une barre oblique inverse termine la valeur</translation>
    </message>
    <message>
        <source>a backslash stands before a character that it has no meaning for</source>
        <translation>une barre oblique inverse est devant un caractère pour lequel elle n’a pas de sens</translation>
    </message>
    <message>
        <source>write `\\` for a backslash</source>
        <translation>écrivez `\\` pour une barre oblique inverse</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>utilisez %1</translation>
    </message>
    <message>
        <source>`%1` is no kind of run</source>
        <translation>`%1` n’est pas un type d’essai</translation>
    </message>
    <message>
        <source>`%1` is no way a run ends</source>
        <translation>`%1` n’est pas une fin d’essai</translation>
    </message>
    <message>
        <source>`%1` is neither yes nor no</source>
        <translation>`%1` n’est ni yes ni no</translation>
    </message>
    <message>
        <source>use `yes` or `no`, or leave the key out when it is not known</source>
        <translation>utilisez `yes` ou `no`, ou omettez la clé si c’est inconnu</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` n’est pas un fuseau horaire connu de cette machine</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna, or UTC</source>
        <translation>utilisez un nom IANA comme Europe/Vienna, ou UTC</translation>
    </message>
    <message>
        <source>`%1` is no source of a charge</source>
        <translation>`%1` n’est pas une source de recharge</translation>
    </message>
</context>
<context>
    <name>trace</name>
    <message>
        <source>the offset of the log&apos;s clock cannot be estimated: no register, gauge or mark was noted by hand</source>
        <translation>le décalage de l’horloge du journal ne peut être estimé&#xa0;: ni index, ni jauge, ni repère n’a été noté à la main</translation>
    </message>
    <message>
        <source>the offset of the log&apos;s clock cannot be estimated: neither its register or gauge nor steps of its power fit the hand readings at one offset</source>
        <translation>le décalage de l’horloge du journal ne peut être estimé&#xa0;: ni son index ou sa jauge, ni les paliers de sa puissance ne conviennent aux relevés manuels à un même décalage</translation>
    </message>
    <message>
        <source>give the offset, or note register readings or load changes by hand</source>
        <translation>donnez le décalage, ou notez à la main des relevés de l’index ou des changements de charge</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 ahead of that of the meter&apos;s log, ±%2: %3</source>
        <translation>L’horloge du journal avance de %1 sur celle du journal du compteur, ±%2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 behind that of the meter&apos;s log, ±%2: %3</source>
        <translation>L’horloge du journal retarde de %1 sur celle du journal du compteur, ±%2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 ahead of the hand readings, ±%2: %3</source>
        <translation>L’horloge du journal avance de %1 sur les relevés manuels, ±%2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 behind the hand readings, ±%2: %3</source>
        <translation>L’horloge du journal retarde de %1 sur les relevés manuels, ±%2&#xa0;: %3</translation>
    </message>
    <message>
        <source>its register passed %1 of the %2 values noted by hand at the noted moments</source>
        <translation>son index passait par %1 des %2 valeurs notées à la main aux moments notés</translation>
    </message>
    <message>
        <source>its power changed at %1 of %2 steps of the power in that log</source>
        <translation>sa puissance changeait à %1 des %2 paliers de la puissance de ce journal-là</translation>
    </message>
    <message>
        <source>its gauge showed %1 of the %2 values noted by hand at the noted moments</source>
        <translation>sa jauge montrait %1 des %2 valeurs notées à la main aux moments notés</translation>
    </message>
    <message>
        <source>its power changed at %1 of %2 marks</source>
        <translation>sa puissance changeait à %1 des %2 repères</translation>
    </message>
    <message>
        <source>its power fell for the last time at the cut-off</source>
        <translation>sa puissance est tombée pour la dernière fois à la coupure</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>inutilisé</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>register</source>
        <translation>index</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tension</translation>
    </message>
    <message>
        <source>current</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>output</source>
        <translation>sortie</translation>
    </message>
    <message>
        <source>the log cannot be read</source>
        <translation>le journal ne peut être lu</translation>
    </message>
    <message>
        <source>check its permissions and the medium</source>
        <translation>vérifiez ses droits d’accès et le support</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>ce n’est pas un fichier ordinaire</translation>
    </message>
    <message>
        <source>name a log file</source>
        <translation>nommez un fichier de journal</translation>
    </message>
    <message>
        <source>a line is longer than %1 bytes</source>
        <translation>une ligne dépasse %1 octets</translation>
    </message>
    <message>
        <source>choose a log of lines</source>
        <translation>choisissez un journal fait de lignes</translation>
    </message>
    <message>
        <source>no row of data was found: no line has a time and a value</source>
        <translation>aucune ligne de données n’a été trouvée&#xa0;: aucune n’a une heure et une valeur</translation>
    </message>
    <message>
        <source>check that this is a log as text (CSV or the like), or name its delimiter</source>
        <translation>vérifiez que c’est un journal en texte (CSV ou semblable), ou nommez son séparateur</translation>
    </message>
    <message>
        <source>cancelled; nothing was imported</source>
        <translation>abandonné&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>no column is named for the time</source>
        <translation>aucune colonne n’est nommée pour l’heure</translation>
    </message>
    <message>
        <source>name it</source>
        <translation>nommez-la</translation>
    </message>
    <message>
        <source>the times of this log do not say on which day it was started</source>
        <translation>les heures de ce journal ne disent pas quel jour il a été démarré</translation>
    </message>
    <message>
        <source>give the start of the log</source>
        <translation>donnez le début du journal</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` n’est pas un fuseau horaire connu de cette machine</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna</source>
        <translation>utilisez un nom IANA comme Europe/Vienna</translation>
    </message>
    <message>
        <source>no column is named for a value</source>
        <translation>aucune colonne n’est nommée pour une valeur</translation>
    </message>
    <message>
        <source>name one for the register or the power</source>
        <translation>nommez-en une pour l’index ou la puissance</translation>
    </message>
    <message>
        <source>read as the last log with this header</source>
        <translation>lu comme le dernier journal avec cet en-tête</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: the comma is the decimal sign, or it parts the thousands</source>
        <translation>`%1` peut se lire de deux façons&#xa0;: la virgule est le signe décimal, ou sépare les milliers</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>there is no column %1 for the %2</source>
        <translation>il n’y a pas de colonne %1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n columns; they count from 1</source>
        <comment>the log has %n column; they count from 1</comment>
        <translation>
            <numerusform>le journal a %n colonne&#x202f;; elles se comptent à partir de 1</numerusform>
            <numerusform>le journal a %n colonnes&#x202f;; elles se comptent à partir de 1</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` is no unit of %2</source>
        <translation>`%1` n’est pas une unité (%2)</translation>
    </message>
    <message>
        <source>use W, kW, Wh, kWh, J, V, mV, A, mA or %, and s, ms, min or h for times</source>
        <translation>utilisez W, kW, Wh, kWh, J, V, mV, A, mA ou %, et s, ms, min ou h pour les temps</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge: taken for the unit&apos;s own, not used</source>
        <translation>%1 est à côté de la jauge&#xa0;: pris pour celle de la station, non utilisé</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge in %2: did a meter measure it, or does the unit say so of itself? Name column %3</source>
        <translation>%1 est à côté de la jauge dans %2&#xa0;: est-ce mesuré par un compteur, ou dit par la station d’elle-même&#x202f;? Nommez la colonne %3</translation>
    </message>
    <message>
        <source>the register in %1 has no unit (it begins with `%2`)</source>
        <translation>l’index dans %1 n’a pas d’unité (il commence par `%2`)</translation>
    </message>
    <message>
        <source>%1 counts charge (Ah), which is no energy: not used</source>
        <translation>%1 compte la charge électrique (Ah), qui n’est pas de l’énergie&#xa0;: non utilisé</translation>
    </message>
    <message>
        <source>%1 and %2 may both be the %3: the first is taken</source>
        <translation>%1 et %2 peuvent toutes deux convenir (%3)&#xa0;: la première est prise</translation>
    </message>
    <message>
        <source>%1 names a share of the battery: taken for the unit&apos;s gauge</source>
        <translation>%1 nomme une part de la batterie&#xa0;: pris pour la jauge de la station</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge: taken for what the unit says of its output, not for a meter&apos;s</source>
        <translation>%1 est à côté de la jauge&#xa0;: pris pour ce que la station dit de sa sortie, non pour la mesure d’un compteur</translation>
    </message>
    <message>
        <source>the gauge in %1 has no unit (it begins with `%2`): name it with gauge=%3:% or gauge=%3:share</source>
        <translation>la jauge dans %1 n’a pas d’unité (elle commence par `%2`)&#xa0;: nommez-la avec gauge=%3:% ou gauge=%3:share</translation>
    </message>
    <message>
        <source>%1 has no unit: read as %2</source>
        <translation>%1 n’a pas d’unité&#xa0;: lu comme %2</translation>
    </message>
    <message>
        <source>no column of register, power (or voltage and current) or gauge is recognised: name it</source>
        <translation>aucune colonne d’index, de puissance (ou de tension et courant) ou de jauge n’est reconnue&#xa0;: nommez-la</translation>
    </message>
    <message>
        <source>no column of time is recognised: name it</source>
        <translation>aucune colonne d’heure n’est reconnue&#xa0;: nommez-la</translation>
    </message>
    <message>
        <source>no column of dates is recognised: name it</source>
        <translation>aucune colonne de dates n’est reconnue&#xa0;: nommez-la</translation>
    </message>
    <message>
        <source>the times begin with `%1`: times of day, or counted from the start of the log</source>
        <translation>les heures commencent par `%1`&#xa0;: heures du jour, ou comptées depuis le début du journal</translation>
    </message>
    <message>
        <source>the elapsed time has no unit: read as seconds</source>
        <translation>le temps écoulé n’a pas d’unité&#xa0;: lu comme des secondes</translation>
    </message>
    <message>
        <source>`%1` can be read with the day or the month first</source>
        <translation>`%1` peut se lire avec le jour ou le mois d’abord</translation>
    </message>
    <message>
        <source>the log cannot be opened</source>
        <translation>le journal ne s’ouvre pas</translation>
    </message>
    <message>
        <source>check its name and its permissions</source>
        <translation>vérifiez son nom et ses droits d’accès</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>abandonné</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>rien n’a été changé</translation>
    </message>
    <message>
        <source>this file does not begin as `%1` did when it was read</source>
        <translation>ce fichier ne commence pas comme `%1` le faisait quand il a été lu</translation>
    </message>
    <message>
        <source>choose the file that the meter goes on writing, or import this one</source>
        <translation>choisissez le fichier que le compteur continue d’écrire, ou importez celui-ci</translation>
    </message>
    <message>
        <source>the lines of this log end with CR alone</source>
        <translation>les lignes de ce journal finissent par CR seul</translation>
    </message>
    <message>
        <source>it can be imported when it is whole, but not followed</source>
        <translation>il peut être importé quand il est entier, mais non suivi</translation>
    </message>
    <message>
        <source>the times of `%1` read otherwise now than when it was imported</source>
        <translation>les heures de `%1` se lisent maintenant autrement qu’à son importation</translation>
    </message>
    <message>
        <source>withdraw the log from the run and import it again</source>
        <translation>retirez le journal de l’essai et importez-le à nouveau</translation>
    </message>
    <message>
        <source>the log was begun anew, and its times do not say on which day</source>
        <translation>le journal a été recommencé, et ses heures ne disent pas quel jour</translation>
    </message>
    <message>
        <source>import the new log with its start</source>
        <translation>importez le nouveau journal avec son début</translation>
    </message>
    <message>
        <source>the log was begun anew with other columns</source>
        <translation>le journal a été recommencé avec d’autres colonnes</translation>
    </message>
    <message>
        <source>import the new log</source>
        <translation>importez le nouveau journal</translation>
    </message>
    <message>
        <source>the last row of `%1` was cut off when it was imported</source>
        <translation>la dernière ligne de `%1` était coupée à son importation</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>date avec heure</translation>
    </message>
    <message>
        <source>date and clock</source>
        <translation>date et heure à part</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>heure du jour</translation>
    </message>
    <message>
        <source>epoch s</source>
        <translation>epoch s</translation>
    </message>
    <message>
        <source>epoch ms</source>
        <translation>epoch ms</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>écoulé</translation>
    </message>
    <message>
        <source>elapsed h:m:s</source>
        <translation>écoulé h:m:s</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ce fichier n’existe pas</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>vérifiez le nom</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>le fichier ne peut être lu</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>vérifiez ses droits d’accès</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barre</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>espaces</translation>
    </message>
    <message>
        <source>times as %1, day first</source>
        <translation>temps comme %1, jour d’abord</translation>
    </message>
    <message>
        <source>times as %1, month first</source>
        <translation>temps comme %1, mois d’abord</translation>
    </message>
    <message>
        <source>times as %1, year first</source>
        <translation>temps comme %1, année d’abord</translation>
    </message>
    <message>
        <source>times as %1</source>
        <translation>temps comme %1</translation>
    </message>
    <message>
        <source>%1 = column %2 in %3</source>
        <translation>%1 = colonne %2 en %3</translation>
    </message>
    <message>
        <source>%1 = column %2</source>
        <translation>%1 = colonne %2</translation>
    </message>
    <message>
        <source>%1 = column %2 `%3` in %4</source>
        <translation>%1 = colonne %2 `%3` en %4</translation>
    </message>
    <message>
        <source>%1 = column %2 `%3`</source>
        <translation>%1 = colonne %2 `%3`</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>vérifiez le disque</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>le fichier ne se lit pas jusqu’à sa fin</translation>
    </message>
    <message>
        <source>no column recognised</source>
        <translation>aucune colonne reconnue</translation>
    </message>
    <message>
        <source>delimiter %1, decimal comma, %2, data from line %3</source>
        <translation>séparateur %1, virgule décimale, %2, données à partir de la ligne %3</translation>
    </message>
    <message>
        <source>delimiter %1, decimal point, %2, data from line %3</source>
        <translation>séparateur %1, point décimal, %2, données à partir de la ligne %3</translation>
    </message>
    <message>
        <source>%1 (%2?)</source>
        <translation>%1 (%2&#x202f;?)</translation>
    </message>
    <message>
        <source>answer it; nothing was imported</source>
        <translation>répondez-y&#x202f;; rien n’a été importé</translation>
    </message>
    <message>
        <source>too few fields</source>
        <translation>trop peu de champs</translation>
    </message>
    <message>
        <source>a quote is not closed</source>
        <translation>un guillemet n’est pas fermé</translation>
    </message>
    <message>
        <source>longer than 64 KiB</source>
        <translation>plus long que 64 KiB</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>l’heure est illisible</translation>
    </message>
    <message>
        <source>a local time that does not exist (clocks went forward)</source>
        <translation>une heure locale qui n’existe pas (horloges avancées)</translation>
    </message>
    <message>
        <source>a value cannot be read</source>
        <translation>une valeur est illisible</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>aucune valeur</translation>
    </message>
    <message>
        <source>the header again</source>
        <translation>l’en-tête encore une fois</translation>
    </message>
    <message>
        <source>the same row again</source>
        <translation>la même ligne encore une fois</translation>
    </message>
    <message>
        <source>the moment of another row, with other values</source>
        <translation>le moment d’une autre ligne, avec d’autres valeurs</translation>
    </message>
    <message>
        <source>too far out of order</source>
        <translation>trop loin de l’ordre</translation>
    </message>
    <message>
        <source>out of order, put in its place</source>
        <translation>hors de l’ordre, mise à sa place</translation>
    </message>
    <message>
        <source>in an hour that occurs twice, settled by the order of rows</source>
        <translation>dans une heure qui existe deux fois, tranché par l’ordre des lignes</translation>
    </message>
    <message>
        <source>after a gap</source>
        <translation>après un trou</translation>
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
        <translation>Bureau</translation>
    </message>
    <message>
        <source>no service offers it</source>
        <translation>aucun service ne l’offre</translation>
    </message>
    <message>
        <source>display</source>
        <translation>écran</translation>
    </message>
    <message>
        <source>The window cannot be shown here; all commands work.</source>
        <translation>La fenêtre ne peut être affichée ici&#x202f;; toutes les commandes marchent.</translation>
    </message>
    <message>
        <source>%1 × %2 at scale %3</source>
        <translation>%1 × %2 à l’échelle %3</translation>
    </message>
    <message>
        <source>dark, as chosen</source>
        <translation>sombre, comme choisi</translation>
    </message>
    <message>
        <source>light, as chosen</source>
        <translation>clair, comme choisi</translation>
    </message>
    <message>
        <source>dark, as the desktop</source>
        <translation>sombre, comme le bureau</translation>
    </message>
    <message>
        <source>light, as the desktop</source>
        <translation>clair, comme le bureau</translation>
    </message>
    <message>
        <source>theme and text size</source>
        <translation>thème et taille du texte</translation>
    </message>
    <message>
        <source>%1; %2 %</source>
        <translation>%1&#x202f;; %2 %</translation>
    </message>
    <message>
        <source>notices of readings that are due</source>
        <translation>notifications des relevés à faire</translation>
    </message>
    <message>
        <source>Reminders stand in the window alone.</source>
        <translation>Les rappels ne figurent que dans la fenêtre.</translation>
    </message>
    <message>
        <source>at the tray</source>
        <translation>dans la zone de notification</translation>
    </message>
    <message>
        <source>keeping the machine awake</source>
        <translation>garder la machine éveillée</translation>
    </message>
    <message>
        <source>Set the machine not to sleep while a test runs.</source>
        <translation>Réglez la machine pour qu’elle ne se mette pas en veille pendant un essai.</translation>
    </message>
    <message>
        <source>passwords of meters</source>
        <translation>mots de passe des compteurs</translation>
    </message>
    <message>
        <source>A meter&apos;s password is asked for at each start.</source>
        <translation>Le mot de passe d’un compteur est demandé à chaque démarrage.</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Emplacements</translation>
    </message>
    <message>
        <source>%1: nothing can be written there (%2)</source>
        <translation>%1&#xa0;: il est impossible d’y écrire (%2)</translation>
    </message>
    <message>
        <source>%1, written, %2 free</source>
        <translation>%1, écrit, %2 libres</translation>
    </message>
    <message>
        <source>There is little room left. Make some.</source>
        <translation>Il reste peu de place. Faites-en.</translation>
    </message>
    <message>
        <source>Files there cannot be locked, so a logbook cannot be opened there. Keep it on a disk of this machine.</source>
        <translation>Les fichiers ne peuvent y être verrouillés, un carnet ne peut donc y être ouvert. Gardez-le sur un disque de cette machine.</translation>
    </message>
    <message>
        <source>Files there cannot be leased: copy a logbook only when it is not recorded into. A disk of this machine offers it.</source>
        <translation>Les fichiers ne peuvent y être surveillés (lease)&#xa0;: ne copiez un carnet que si rien n’y est enregistré. Un disque de cette machine le permet.</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>réglages</translation>
    </message>
    <message>
        <source>Settings are forgotten at the end of the program.</source>
        <translation>Les réglages sont oubliés à la fin du programme.</translation>
    </message>
    <message>
        <source>notes on files</source>
        <translation>notes sur les fichiers</translation>
    </message>
    <message>
        <source>The program does not know the files that it wrote, so commands ask for --force to replace them.</source>
        <translation>Le programme ne connaît pas les fichiers qu’il a écrits, les commandes demandent donc --force pour les remplacer.</translation>
    </message>
    <message>
        <source>sample logbook</source>
        <translation>carnet d’exemple</translation>
    </message>
    <message>
        <source>The sample logbook cannot be made there.</source>
        <translation>Le carnet d’exemple ne peut y être créé.</translation>
    </message>
    <message>
        <source>temporary files</source>
        <translation>fichiers temporaires</translation>
    </message>
    <message>
        <source>Workbooks, imports and checks need room there.</source>
        <translation>Classeurs, importations et vérifications y ont besoin de place.</translation>
    </message>
    <message>
        <source>Nothing can be recorded there.</source>
        <translation>Rien ne peut y être enregistré.</translation>
    </message>
    <message>
        <source>copies of logbooks</source>
        <translation>copies des carnets</translation>
    </message>
    <message>
        <source>No copies are made. Choose another folder in Settings.</source>
        <translation>Aucune copie n’est faite. Choisissez un autre dossier dans les Réglages.</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>signes</translation>
    </message>
    <message>
        <source>all %1 that the program shows</source>
        <translation>les %1 que montre le programme</translation>
    </message>
    <message>
        <source>not in any font: %1</source>
        <translation>dans aucune police&#xa0;: %1</translation>
    </message>
    <message>
        <source>Boxes stand in their place. Install a font that has them, such as DejaVu Sans.</source>
        <translation>Des carrés figurent à leur place. Installez une police qui les a, comme DejaVu Sans.</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>chiffres</translation>
    </message>
    <message>
        <source>of equal width</source>
        <translation>de même largeur</translation>
    </message>
    <message>
        <source>of unequal width</source>
        <translation>de largeurs inégales</translation>
    </message>
    <message>
        <source>Numbers in columns do not stand below each other digit by digit. Another font of the desktop mends that.</source>
        <translation>Les nombres en colonne ne sont pas alignés chiffre par chiffre. Une autre police du bureau y remédie.</translation>
    </message>
    <message>
        <source>Region</source>
        <translation>Région</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>%1; the data of time zones are not there</source>
        <translation>%1&#x202f;; les données des fuseaux horaires manquent</translation>
    </message>
    <message>
        <source>Local times are those of UTC. Install tzdata.</source>
        <translation>Les heures locales sont celles d’UTC. Installez tzdata.</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>comme le bureau</translation>
    </message>
    <message>
        <source>font</source>
        <translation>police</translation>
    </message>
    <message>
        <source>%1, %2 points</source>
        <translation>%1, %2 points</translation>
    </message>
    <message>
        <source>PNG</source>
        <translation>PNG</translation>
    </message>
    <message>
        <source>Photos and pictures of this form cannot be shown.</source>
        <translation>Les photos et images de ce format ne peuvent être affichées.</translation>
    </message>
    <message>
        <source>JPEG</source>
        <translation>JPEG</translation>
    </message>
    <message>
        <source>Photos of this form are kept but cannot be shown.</source>
        <translation>Les photos de ce format sont gardées mais ne peuvent être affichées.</translation>
    </message>
    <message>
        <source>SVG</source>
        <translation>SVG</translation>
    </message>
    <message>
        <source>The window has no icon in the task bar. Install the SVG plugin of Qt (libqt6svg6).</source>
        <translation>La fenêtre n’a pas d’icône dans la barre des tâches. Installez le greffon SVG de Qt (libqt6svg6).</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Images</translation>
    </message>
    <message>
        <source>can be read</source>
        <translation>lisible</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>icons</source>
        <translation>icônes</translation>
    </message>
    <message>
        <source>are drawn</source>
        <translation>sont dessinées</translation>
    </message>
    <message>
        <source>are not drawn</source>
        <translation>ne sont pas dessinées</translation>
    </message>
    <message>
        <source>Buttons have words alone. Install the program anew.</source>
        <translation>Les boutons n’ont que des mots. Réinstallez le programme.</translation>
    </message>
    <message>
        <source>region of the desktop</source>
        <translation>région du bureau</translation>
    </message>
    <message>
        <source>%1, decimal sign %2</source>
        <translation>%1, signe décimal %2</translation>
    </message>
    <message>
        <source>language</source>
        <translation>langue</translation>
    </message>
    <message>
        <source>paper of reports</source>
        <translation>papier des rapports</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versions</translation>
    </message>
    <message>
        <source>%1, built with %2</source>
        <translation>%1, construit avec %2</translation>
    </message>
    <message>
        <source>It is older than the one that the program was built with. Bring the system up to date.</source>
        <translation>C’est plus ancien que ce avec quoi le programme a été construit. Mettez le système à jour.</translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>system</source>
        <translation>système</translation>
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
        <translation>trouvé</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manquant</translation>
    </message>
    <message>
        <source>Missing: %1.</source>
        <translation>Manquant&#xa0;: %1.</translation>
    </message>
    <message>
        <source>All is there.</source>
        <translation>Tout est là.</translation>
    </message>
    <message>
        <source>Check of the installation: %1</source>
        <translation>Vérification de l’installation&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
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
        <translation>Lignes laissées de côté ou reprises avec un doute</translation>
    </message>
    <message>
        <source>line</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>the row as it stands</source>
        <translation>la ligne telle quelle</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>laissée de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>reprise&#xa0;: %1</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>trou</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>%1 row: %2 taken, %3 left out</source>
        <translation>%1 ligne&#xa0;: %2 reprise, %3 laissée de côté</translation>
    </message>
    <message>
        <source>%1 rows: %2 taken, %3 left out</source>
        <translation>%1 lignes&#xa0;: %2 reprises, %3 laissées de côté</translation>
    </message>
    <message>
        <source>; usually %1 s apart</source>
        <translation>&#x202f;; d’habitude à %1 s d’écart</translation>
    </message>
    <message>
        <source>; %1 gap longer than %2 s</source>
        <translation>&#x202f;; %1 trou de plus de %2 s</translation>
    </message>
    <message>
        <source>; %1 gaps longer than %2 s</source>
        <translation>&#x202f;; %1 trous de plus de %2 s</translation>
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
        <translation>%1 h %2</translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <translation>%1 d %2 h</translation>
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
        <translation>graphiques</translation>
    </message>
    <message>
        <source>times of photos</source>
        <translation>heures des photos</translation>
    </message>
    <message>
        <source>workbooks that are written</source>
        <translation>classeurs écrits</translation>
    </message>
    <message>
        <source>workbooks that are read</source>
        <translation>classeurs lus</translation>
    </message>
    <message>
        <source>tables of pages</source>
        <translation>tableaux de pages</translation>
    </message>
    <message>
        <source>meters by Modbus</source>
        <translation>compteurs par Modbus</translation>
    </message>
    <message>
        <source>meters on serial lines</source>
        <translation>compteurs sur lignes série</translation>
    </message>
    <message>
        <source>The page of a run</source>
        <translation>La page d’un essai</translation>
    </message>
    <message>
        <source>Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and log stand in the tabs; what the readings say stands below.</source>
        <translation>Tapez ce que montrent la jauge et l’index dans la ligne sous les relevés, puis Entrée. Une valeur douteuse donne lieu à une question&#x202f;; rien n’est enregistré avant votre réponse. F3 à F7 notent aussitôt un événement, F8 termine l’essai. Graphiques, bilan et journal sont dans les onglets&#x202f;; ce que disent les relevés est en dessous.</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Essais en cours</translation>
    </message>
    <message>
        <source>All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 shows them over the whole screen, to be read from two metres.</source>
        <translation>Tous les essais en cours, côte à côte&#xa0;: où en est chacun, quand sa coupure devrait venir et quand son prochain relevé est à faire. F11 les montre en plein écran, lisibles à deux mètres.</translation>
    </message>
    <message>
        <source>The page of a unit</source>
        <translation>La page d’une station</translation>
    </message>
    <message>
        <source>What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run (Ctrl+R) begins one.</source>
        <translation>Ce que disent ensemble tous les essais de la station, ses valeurs annoncées face aux essais, et le prochain essai utile. Démarrer un essai (Ctrl+R) en commence un.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparaison</translation>
    </message>
    <message>
        <source>Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they cannot tell apart share a rank.</source>
        <translation>Les stations côte à côte, comme testé ou à une même charge. La phrase du haut dit quel ordre les compteurs établissent&#x202f;; les stations qu’ils ne départagent pas partagent un rang.</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Dimensionnement</translation>
    </message>
    <message>
        <source>How many days each unit carries a load list, how many units that takes, and which PV array.</source>
        <translation>Combien de jours chaque station alimente une liste de charges, combien de stations il y faut, et quel champ PV.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listes de charges</translation>
    </message>
    <message>
        <source>Appliances that a unit is to feed: what each takes while on, how long a day, and when.</source>
        <translation>Les appareils qu’une station doit alimenter&#xa0;: ce que chacun prend en marche, combien de temps par jour, et quand.</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation>Entrée PV</translation>
    </message>
    <message>
        <source>Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.</source>
        <translation>Si une chaîne de modules convient à l’entrée PV d’une station, à froid et à chaud. Une chaîne PV est sous tension dès qu’il y a de la lumière.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Compteurs</translation>
    </message>
    <message>
        <source>What is stated of each meter. Without its error limit no interval can be stated.</source>
        <translation>Ce qui est précisé de chaque compteur. Sans sa limite d’erreur, aucun intervalle ne peut être donné.</translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message>
        <source>second register %1 Wh</source>
        <translation>second index %1 Wh</translation>
    </message>
    <message>
        <source>meter showed %1 W</source>
        <translation>le compteur montrait %1 W</translation>
    </message>
    <message>
        <source>unit showed %1 W</source>
        <translation>la station montrait %1 W</translation>
    </message>
    <message numerus="yes">
        <source>%n tests</source>
        <comment>%n test</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n essai</numerusform>
            <numerusform>%n essais</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n compteur</numerusform>
            <numerusform>%n compteurs</numerusform>
        </translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>a time of day</comment>
        <translation>à %1</translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n liste de charges</numerusform>
            <numerusform>%n listes de charges</numerusform>
        </translation>
    </message>
    <message>
        <source>folder of the logbook</source>
        <translation>dossier du carnet</translation>
    </message>
    <message>
        <source>access to kept passwords</source>
        <translation>accès aux mots de passe gardés</translation>
    </message>
    <message>
        <source>Missing: %1. Notes on: %2.</source>
        <translation>Manquant&#xa0;: %1. Notes sur&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Nothing that the program needs is missing. Notes on: %1.</source>
        <translation>Rien de ce qu’il faut au programme ne manque. Notes sur&#xa0;: %1.</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>figée</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>saut</translation>
    </message>
    <message>
        <source>rebound</source>
        <translation>remontée</translation>
    </message>
    <message>
        <source>at %1: %2</source>
        <translation>à %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>Usable fraction, the gauge&apos;s errors and losses: this kind of run (%1) does not tell them; make a drain.</source>
        <translation>Fraction utile, erreurs de la jauge et pertes&#xa0;: ce type d’essai (%1) ne les dit pas&#x202f;; faites une décharge.</translation>
    </message>
    <message>
        <source>from vessel to vessel, each with its figures</source>
        <translation>de récipient en récipient, avec les chiffres de chacun</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Gauche, Droite</translation>
    </message>
    <message>
        <source>it is for another host</source>
        <translation>il est pour un autre hôte</translation>
    </message>
    <message>
        <source>it has expired</source>
        <translation>il a expiré</translation>
    </message>
    <message>
        <source>it is not valid yet</source>
        <translation>il n’est pas encore valable</translation>
    </message>
    <message>
        <source>no authority that this machine trusts has signed it</source>
        <translation>aucune autorité à laquelle cette machine se fie ne l’a signé</translation>
    </message>
    <message>
        <source>no address is known for the name %1 (%2)</source>
        <translation>aucune adresse n’est connue pour le nom %1 (%2)</translation>
    </message>
    <message>
        <source>check how it is written, and the network</source>
        <translation>vérifiez comment il est écrit, et le réseau</translation>
    </message>
    <message>
        <source>no connection to %1, port %2: %3</source>
        <translation>pas de connexion à %1, port %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>nothing came within %1 s</source>
        <translation>rien n’est venu en %1 s</translation>
    </message>
    <message>
        <source>its certificate does not hold (%1)</source>
        <translation>son certificat n’est pas valable (%1)</translation>
    </message>
    <message>
        <source>check that it is switched on, and its host and port</source>
        <translation>vérifiez qu’il est allumé, ainsi que l’hôte et le port</translation>
    </message>
    <message>
        <source>give it a certificate that is in date, for the host that you typed and from an authority that this machine trusts</source>
        <translation>donnez-lui un certificat non expiré, pour l’hôte que vous avez tapé et d’une autorité à laquelle cette machine se fie</translation>
    </message>
    <message>
        <source>part of the program</source>
        <translation>partie du programme</translation>
    </message>
    <message>
        <source>cannot be loaded</source>
        <translation>ne peut pas être chargée</translation>
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
    <name>ullage::AddressWalk</name>
    <message>
        <source>%1 at %2</source>
        <comment>what happened, address</comment>
        <translation>%1 à %2</translation>
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
    <message>
        <source>source
sensitivity</source>
        <translation>source
sensibilité</translation>
    </message>
    <message>
        <source>shape
type, freedom</source>
        <translation>forme
type, liberté</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>corrélation</translation>
    </message>
    <message>
        <source>standard
Wh</source>
        <translation>type
Wh</translation>
    </message>
    <message>
        <source>share
%</source>
        <translation>part
%</translation>
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
        <translation>un nom, pour garder ce jeu de colonnes</translation>
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
    <name>ullage::CopiesController</name>
    <message>
        <source>Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)</source>
        <translation>Carnets et leurs copies (*.ullage *.ullage-copy);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>No automatic copy of the logbook was made. %1</source>
        <translation>Aucune copie automatique du carnet n’a été faite. %1</translation>
    </message>
    <message>
        <source>Copies of which logbook</source>
        <translation>Copies de quel carnet</translation>
    </message>
    <message>
        <source>%1 of a copy.ullage</source>
        <translation>%1 d’une copie.ullage</translation>
    </message>
    <message>
        <source>There is no copy of %1 beside it.</source>
        <translation>Il n’y a aucune copie de %1 à côté de lui.</translation>
    </message>
    <message>
        <source>There is no copy of %1 in %2.</source>
        <translation>Il n’y a aucune copie de %1 dans %2.</translation>
    </message>
    <message>
        <source>%1 as of %2.ullage</source>
        <translation>%1 du %2.ullage</translation>
    </message>
    <message>
        <source>Looking at the copy</source>
        <translation>Lecture de la copie</translation>
    </message>
    <message>
        <source>Not looked at.</source>
        <translation>Non regardée.</translation>
    </message>
    <message>
        <source>It holds %1 and %2, without readings.</source>
        <comment>units and runs</comment>
        <translation>Elle contient %1 et %2, sans relevés.</translation>
    </message>
    <message>
        <source>It holds %1 and %2; the last reading is of %3, %4.</source>
        <comment>units, runs, day and time</comment>
        <translation>Elle contient %1 et %2&#x202f;; le dernier relevé est du %3, %4.</translation>
    </message>
    <message>
        <source>Save the copy as a logbook</source>
        <translation>Enregistrer la copie comme carnet</translation>
    </message>
    <message>
        <source>Saving %1</source>
        <translation>Enregistrement de %1</translation>
    </message>
</context>
<context>
    <name>ullage::CopiesForm</name>
    <message>
        <source>Copies of %1</source>
        <translation>Copies de %1</translation>
    </message>
    <message>
        <source>Save as a logbook…</source>
        <translation>Enregistrer comme carnet…</translation>
    </message>
    <message>
        <source>&amp;What it holds</source>
        <translation>&amp;Ce qu’elle contient</translation>
    </message>
    <message>
        <source>A copy is saved as a logbook of its own, which is then opened. The copy and the logbook stay as they are.</source>
        <translation>Une copie est enregistrée comme un carnet à part, qui s’ouvre ensuite. La copie et le carnet restent comme ils sont.</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Copies</translation>
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
        <comment>a time of day</comment>
        <translation>%1</translation>
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
    <message>
        <source>end run</source>
        <translation>fin de l’essai</translation>
    </message>
    <message>
        <source>Ended: run</source>
        <translation>Terminé&#xa0;: essai</translation>
    </message>
    <message>
        <source>import folder</source>
        <translation>importation d’un dossier</translation>
    </message>
    <message>
        <source>Imported %1</source>
        <translation>Importé&#xa0;: %1</translation>
    </message>
    <message>
        <source>add load list %1</source>
        <translation>ajout de la liste de charges %1</translation>
    </message>
    <message>
        <source>Added load list %1</source>
        <translation>Liste de charges %1 ajoutée</translation>
    </message>
    <message>
        <source>edit load list %1</source>
        <translation>modification de la liste de charges %1</translation>
    </message>
    <message>
        <source>Changed load list %1</source>
        <translation>Liste de charges %1 modifiée</translation>
    </message>
    <message>
        <source>withdraw load list %1</source>
        <translation>retrait de la liste de charges %1</translation>
    </message>
    <message>
        <source>Withdrawn: load list %1</source>
        <translation>Retiré&#xa0;: liste de charges %1</translation>
    </message>
    <message>
        <source>Changed method</source>
        <translation>Méthode modifiée</translation>
    </message>
    <message>
        <source>attach photo</source>
        <translation>ajout d’une photo</translation>
    </message>
    <message>
        <source>Attached photo</source>
        <translation>Photo jointe</translation>
    </message>
    <message>
        <source>withdraw photo</source>
        <translation>retrait de la photo</translation>
    </message>
    <message>
        <source>Withdrawn: photo</source>
        <translation>Retiré&#xa0;: photo</translation>
    </message>
    <message>
        <source>Changed publisher&apos;s details</source>
        <translation>Mentions de l’éditeur modifiées</translation>
    </message>
    <message>
        <source>add PV sheet %1</source>
        <translation>ajout de la fiche PV %1</translation>
    </message>
    <message>
        <source>Added PV sheet %1</source>
        <translation>Fiche PV %1 ajoutée</translation>
    </message>
    <message>
        <source>edit PV sheet %1</source>
        <translation>modification de la fiche PV %1</translation>
    </message>
    <message>
        <source>Changed PV sheet %1</source>
        <translation>Fiche PV %1 modifiée</translation>
    </message>
    <message>
        <source>withdraw PV sheet %1</source>
        <translation>retrait de la fiche PV %1</translation>
    </message>
    <message>
        <source>Withdrawn: PV sheet %1</source>
        <translation>Retiré&#xa0;: fiche PV %1</translation>
    </message>
    <message>
        <source>mark of %1</source>
        <translation>repère de %1</translation>
    </message>
    <message>
        <source>reading of %1</source>
        <translation>relevé de %1</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>enregistrement&#xa0;: %1</translation>
    </message>
    <message>
        <source>Recorded %1</source>
        <translation>Enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>amend %1</source>
        <translation>rectification&#xa0;: %1</translation>
    </message>
    <message>
        <source>Amended to %1</source>
        <translation>Rectifié&#xa0;: %1</translation>
    </message>
    <message>
        <source>withdraw %1</source>
        <translation>retrait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Withdrawn: %1</source>
        <translation>Retiré&#xa0;: %1</translation>
    </message>
    <message>
        <source>edit run</source>
        <translation>modification de l’essai</translation>
    </message>
    <message>
        <source>Changed run</source>
        <translation>Essai modifié</translation>
    </message>
    <message>
        <source>reopen run</source>
        <translation>réouverture de l’essai</translation>
    </message>
    <message>
        <source>Reopened run</source>
        <translation>Essai rouvert</translation>
    </message>
    <message>
        <source>start %1</source>
        <translation>démarrage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Started %1</source>
        <translation>Démarré&#xa0;: %1</translation>
    </message>
    <message>
        <source>import %1 of %2</source>
        <translation>importation&#xa0;: %1 de %2</translation>
    </message>
    <message>
        <source>Imported a run</source>
        <translation>Un essai importé</translation>
    </message>
    <message>
        <source>Imported %1 runs, the last of which Undo takes back</source>
        <translation>%1 essais importés, Annuler retire le dernier</translation>
    </message>
    <message>
        <source>import table</source>
        <translation>importation d’un tableau</translation>
    </message>
    <message>
        <source>Imported %1 runs of one table</source>
        <translation>%1 essais d’un tableau importés</translation>
    </message>
    <message>
        <source>import log</source>
        <translation>importation d’un journal</translation>
    </message>
    <message>
        <source>Imported log</source>
        <translation>Journal importé</translation>
    </message>
    <message>
        <source>withdraw log</source>
        <translation>retrait du journal</translation>
    </message>
    <message>
        <source>Withdrawn: log</source>
        <translation>Retiré&#xa0;: journal</translation>
    </message>
    <message>
        <source>add unit %1</source>
        <translation>ajout de la station %1</translation>
    </message>
    <message>
        <source>Added unit %1</source>
        <translation>Station %1 ajoutée</translation>
    </message>
    <message>
        <source>edit unit %1</source>
        <translation>modification de la station %1</translation>
    </message>
    <message>
        <source>Changed unit %1</source>
        <translation>Station %1 modifiée</translation>
    </message>
    <message>
        <source>withdraw unit %1</source>
        <translation>retrait de la station %1</translation>
    </message>
    <message>
        <source>Withdrawn: unit %1</source>
        <translation>Retiré&#xa0;: station %1</translation>
    </message>
    <message>
        <source>add meter %1</source>
        <translation>ajout du compteur %1</translation>
    </message>
    <message>
        <source>Added meter %1</source>
        <translation>Compteur %1 ajouté</translation>
    </message>
    <message>
        <source>edit meter %1</source>
        <translation>modification du compteur %1</translation>
    </message>
    <message>
        <source>Changed meter %1</source>
        <translation>Compteur %1 modifié</translation>
    </message>
    <message>
        <source>withdraw meter %1</source>
        <translation>retrait du compteur %1</translation>
    </message>
    <message>
        <source>Withdrawn: meter %1</source>
        <translation>Retiré&#xa0;: compteur %1</translation>
    </message>
    <message>
        <source>join %1</source>
        <translation>fusion&#xa0;: %1</translation>
    </message>
    <message>
        <source>Joined %1</source>
        <translation>Fusionné&#xa0;: %1</translation>
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
        <translation>sinon&#xa0;: dernière fois allumée</translation>
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
        <translation>relevés</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>result</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>étape %1 sur %2</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Terminer</translation>
    </message>
    <message>
        <source>Leave the guide</source>
        <translation>Quitter le guide</translation>
    </message>
    <message>
        <source>guided first run, step %1 of %2: %3</source>
        <translation>premier essai guidé, étape %1 sur %2&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>ullage::GuideController</name>
    <message>
        <source>Logbook for the guided run</source>
        <translation>Carnet pour l’essai guidé</translation>
    </message>
    <message>
        <source>First run.ullage</source>
        <translation>Premier essai.ullage</translation>
    </message>
    <message>
        <source>The guided run is done. Everything stays in this logbook.</source>
        <translation>L’essai guidé est terminé. Tout reste dans ce carnet.</translation>
    </message>
    <message>
        <source>You have left the guide. Help, Guided first run takes it up again.</source>
        <translation>Vous avez quitté le guide. Aide, Premier essai guidé le reprend.</translation>
    </message>
    <message>
        <source>Add the unit that you test, with its name and the rated energy on its label. Its other claims can follow later.</source>
        <translation>Ajoutez la station que vous testez, avec son nom et l’énergie assignée de sa plaque. Ses autres valeurs annoncées peuvent suivre plus tard.</translation>
    </message>
    <message>
        <source>Without a unit at hand: name it Trial unit, with a rated energy of 1000 Wh.</source>
        <translation>Sans station sous la main&#xa0;: nommez-la Station d’essai, avec une énergie assignée de 1000 Wh.</translation>
    </message>
    <message>
        <source>Add unit…</source>
        <translation>Ajouter une station…</translation>
    </message>
    <message>
        <source>Add the meter between unit and load. Its data sheet states the step of its register and its error limit, which the ± of every result comes from.</source>
        <translation>Ajoutez le compteur entre station et charge. Sa fiche technique précise le pas de son index et sa limite d’erreur, d’où vient le ± de chaque résultat.</translation>
    </message>
    <message>
        <source>Without a meter at hand: name it Trial meter, with a step of 1 Wh and a limit of 1 %.</source>
        <translation>Sans compteur sous la main&#xa0;: nommez-le Compteur d’essai, avec un pas de 1 Wh et une limite de 1 %.</translation>
    </message>
    <message>
        <source>Add meter…</source>
        <translation>Ajouter un compteur…</translation>
    </message>
    <message>
        <source>Charge the unit to full and plug the meter and a load in. Start a drain: what gauge and register show now is its first reading.</source>
        <translation>Rechargez la station au plein et branchez le compteur et une charge. Démarrez une décharge&#xa0;: ce que montrent maintenant jauge et index est son premier relevé.</translation>
    </message>
    <message>
        <source>Without a bench at hand: gauge 100, register 0, time -6h.</source>
        <translation>Sans banc sous la main&#xa0;: jauge 100, index 0, heure -6h.</translation>
    </message>
    <message>
        <source>Start run…</source>
        <translation>Démarrer un essai…</translation>
    </message>
    <message>
        <source>Walk to the bench now and then. Type what gauge and register show into the row below the readings, and press Enter. Noted: %1 of %2.</source>
        <translation>Allez au banc de temps en temps. Tapez ce que montrent jauge et index dans la ligne sous les relevés, puis Entrée. Notés&#xa0;: %1 sur %2.</translation>
    </message>
    <message>
        <source>Without a bench at hand: time -4h, gauge 66, register 260; then time -2h, gauge 32, register 525.</source>
        <translation>Sans banc sous la main&#xa0;: heure -4h, jauge 66, index 260&#x202f;; puis heure -2h, jauge 32, index 525.</translation>
    </message>
    <message>
        <source>To the entry row</source>
        <translation>À la ligne de saisie</translation>
    </message>
    <message>
        <source>Wait until the unit switches off by itself, and note what you like until then. End the run: it asks how it ended and what was shown last.</source>
        <translation>Attendez que la station se coupe d’elle-même, et notez ce que vous voulez jusque-là. Terminez l’essai&#xa0;: il demande comment il a fini et ce qui était affiché en dernier.</translation>
    </message>
    <message>
        <source>Without a bench at hand: cut-off seen, gauge 0, register 790.</source>
        <translation>Sans banc sous la main&#xa0;: coupure vue, jauge 0, index 790.</translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Terminer…</translation>
    </message>
    <message>
        <source>This is your result. %1.</source>
        <translation>Voici votre résultat. %1.</translation>
    </message>
    <message>
        <source>The figures stand above the readings. The tab Budget says where the ± comes from, and what the readings say of the gauge stands below. With a second unit, Compare puts both side by side.</source>
        <translation>Les chiffres sont au-dessus des relevés. L’onglet Bilan dit d’où vient le ±, et ce que les relevés disent de la jauge est en dessous. Avec une seconde station, Comparer met les deux côte à côte.</translation>
    </message>
    <message>
        <source>Show the result</source>
        <translation>Montrer le résultat</translation>
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
        <translation>Vérification de l’installation</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>ce qui a été trouvé</translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation>&amp;Copier en texte</translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation>Vérifier à &amp;nouveau</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>%1 Each row says what was looked at, what was found, and what follows. The copy holds nothing of your logbooks.</source>
        <translation>%1 Chaque ligne dit ce qui a été regardé, ce qui a été trouvé et ce qui en découle. La copie ne contient rien de vos carnets.</translation>
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
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>intervalle</translation>
    </message>
    <message>
        <source>time
h</source>
        <translation>temps
h</translation>
    </message>
    <message>
        <source>gauge
pt</source>
        <translation>jauge
pt</translation>
    </message>
    <message>
        <source>implied
Wh</source>
        <translation>selon jauge
Wh</translation>
    </message>
    <message>
        <source>delivered
Wh</source>
        <translation>délivré
Wh</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>rapport</translation>
    </message>
    <message>
        <source>mean
W</source>
        <translation>moyenne
W</translation>
    </message>
    <message>
        <source>Wh per
pt</source>
        <translation>Wh par
pt</translation>
    </message>
    <message>
        <source>from one paired reading to the next</source>
        <translation>d’un relevé associé au suivant</translation>
    </message>
    <message>
        <source>hours between the two</source>
        <translation>heures entre les deux</translation>
    </message>
    <message>
        <source>percentage points that the gauge fell</source>
        <translation>points de pourcentage dont la jauge a baissé</translation>
    </message>
    <message>
        <source>rated energy x gauge drop</source>
        <translation>énergie assignée x baisse de jauge</translation>
    </message>
    <message>
        <source>corrected energy at the socket</source>
        <translation>énergie corrigée à la prise</translation>
    </message>
    <message>
        <source>delivered / gauge-implied energy</source>
        <translation>énergie délivrée / selon la jauge</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>charge moyenne</translation>
    </message>
    <message>
        <source>delivered energy for each point that the gauge fell</source>
        <translation>énergie délivrée pour chaque point dont la jauge a baissé</translation>
    </message>
</context>
<context>
    <name>ullage::JoinController</name>
    <message>
        <source>Join another logbook</source>
        <translation>Fusionner un autre carnet</translation>
    </message>
    <message>
        <source>Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)</source>
        <translation>Carnets et leurs copies (*.ullage *.ullage-copy);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Comparing with %1</source>
        <translation>Comparaison avec %1</translation>
    </message>
    <message>
        <source>Nothing was joined.</source>
        <translation>Rien n’a été fusionné.</translation>
    </message>
    <message>
        <source>This logbook has all that %1 has already; nothing was changed.</source>
        <translation>Ce carnet a déjà tout ce qu’a %1&#x202f;; rien n’a été changé.</translation>
    </message>
    <message>
        <source>Joined: %1.</source>
        <translation>Fusionné&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Fusion</translation>
    </message>
</context>
<context>
    <name>ullage::JoinForm</name>
    <message>
        <source>withdrawn here, not there</source>
        <translation>retiré ici, pas là-bas</translation>
    </message>
    <message>
        <source>withdrawn there, not here</source>
        <translation>retiré là-bas, pas ici</translation>
    </message>
    <message>
        <source>the same readings as a run here: stays out unless ticked</source>
        <translation>les mêmes relevés qu’un essai d’ici&#xa0;: reste dehors s’il n’est pas coché</translation>
    </message>
    <message>
        <source>tells of the same time as a log here, which it would replace</source>
        <translation>porte sur le même temps qu’un journal d’ici, qu’il remplacerait</translation>
    </message>
    <message>
        <source>changed there alone</source>
        <translation>modifié là-bas seulement</translation>
    </message>
    <message>
        <source>not the same</source>
        <translation>pas pareil</translation>
    </message>
    <message>
        <source>Join another logbook</source>
        <translation>Fusionner un autre carnet</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Fusionner</translation>
    </message>
    <message>
        <source>%1 has nothing that this logbook lacks.</source>
        <translation>%1 n’a rien qui manque à ce carnet.</translation>
    </message>
    <message>
        <source>This comes in from %1:</source>
        <translation>Ceci entre de %1&#xa0;:</translation>
    </message>
    <message>
        <source>What comes in</source>
        <translation>Ce qui entre</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run, and what comes in of it</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 – only where its line below is ticked</source>
        <translation>%1 – seulement si sa ligne ci-dessous est cochée</translation>
    </message>
    <message>
        <source>This differs. It stays as it is here; tick what is to be taken from the other logbook:</source>
        <translation>Ceci diffère. Cela reste comme ici&#x202f;; cochez ce qui est à prendre de l’autre carnet&#xa0;:</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Ce qui diffère</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>in the other</source>
        <translation>dans l’autre</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>%1 more notices like these.</source>
        <translation>Encore %1 avis comme ceux-ci.</translation>
    </message>
    <message>
        <source>take from the other</source>
        <translation>prendre de l’autre</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a record, and in what it differs</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>&amp;Keep all</source>
        <translation>&amp;Tout garder</translation>
    </message>
    <message>
        <source>Nothing is taken from the other logbook</source>
        <translation>Rien n’est pris de l’autre carnet</translation>
    </message>
    <message>
        <source>Take &amp;newer</source>
        <translation>Prendre les plus &amp;récentes</translation>
    </message>
    <message>
        <source>Takes what was changed in the other logbook alone</source>
        <translation>Prend ce qui n’a été modifié que dans l’autre carnet</translation>
    </message>
    <message>
        <source>Take &amp;all</source>
        <translation>Tout &amp;prendre</translation>
    </message>
    <message>
        <source>Takes every difference from the other logbook</source>
        <translation>Prend chaque différence de l’autre carnet</translation>
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
        <translation>Ré&amp;glages…</translation>
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
        <translation>Premier essai &amp;guidé…</translation>
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
        <translation>&amp;Vérifier l’installation</translation>
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
    <message>
        <source>Open a cop&amp;y…</source>
        <translation>Ouvrir une &amp;copie…</translation>
    </message>
    <message>
        <source>&amp;Join another logbook…</source>
        <translation>F&amp;usionner un autre carnet…</translation>
    </message>
    <message>
        <source>Analysing the runs anew</source>
        <translation>Nouvelle analyse des essais</translation>
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
        <translation>un quart de la limite&#x202f;; 0 si étalonné</translation>
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
        <source>the broker refuses: %1</source>
        <translation>le courtier refuse&#xa0;: %1</translation>
    </message>
    <message>
        <source>a message of %1 MB came; those of a meter are short</source>
        <translation>un message de %1 MB est venu&#x202f;; ceux d’un compteur sont courts</translation>
    </message>
    <message>
        <source>check that the broker runs, its host and port, and that it speaks TLS there</source>
        <translation>vérifiez que le courtier tourne, l’hôte et le port, et qu’il y parle TLS</translation>
    </message>
    <message>
        <source>check that the broker runs, its host and port, and whether it asks for TLS</source>
        <translation>vérifiez que le courtier tourne, l’hôte et le port, et s’il exige TLS</translation>
    </message>
    <message>
        <source>the password is longer than MQTT can say; enter a shorter one</source>
        <translation>le mot de passe est plus long que MQTT ne peut le dire&#x202f;; saisissez-en un plus court</translation>
    </message>
    <message>
        <source>what came is not MQTT 3.1.1</source>
        <translation>ce qui est venu n’est pas du MQTT 3.1.1</translation>
    </message>
    <message>
        <source>the broker gives none of these topics to this user; check the topics, the user and its rights</source>
        <translation>le courtier ne donne aucun de ces sujets à cet utilisateur&#x202f;; vérifiez les sujets, l’utilisateur et ses droits</translation>
    </message>
    <message>
        <source>it does not speak MQTT 3.1.1</source>
        <translation>il ne parle pas MQTT 3.1.1</translation>
    </message>
    <message>
        <source>it takes nobody without a client name of their own</source>
        <translation>il ne prend personne sans nom de client à soi</translation>
    </message>
    <message>
        <source>its service is not available now</source>
        <translation>son service n’est pas disponible en ce moment</translation>
    </message>
    <message>
        <source>user or password is wrong, or this user may not read there</source>
        <translation>l’utilisateur ou le mot de passe est faux, ou cet utilisateur n’a pas le droit d’y lire</translation>
    </message>
    <message>
        <source>code %1</source>
        <translation>code %1</translation>
    </message>
    <message>
        <source>the broker does not answer any more</source>
        <translation>le courtier ne répond plus</translation>
    </message>
    <message>
        <source>no secured connection (%1)</source>
        <translation>pas de connexion sécurisée (%1)</translation>
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
        <translation>PNG, pixels pour page ou message</translation>
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
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>gauge
%</source>
        <translation>jauge
%</translation>
    </message>
    <message>
        <source>register
Wh</source>
        <translation>index
Wh</translation>
    </message>
    <message>
        <source>delivered
Wh</source>
        <translation>délivré
Wh</translation>
    </message>
    <message>
        <source>load
W</source>
        <translation>charge
W</translation>
    </message>
    <message>
        <source>error
pt</source>
        <translation>erreur
pt</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>local time of the run</source>
        <translation>heure locale de l’essai</translation>
    </message>
    <message>
        <source>what the unit&apos;s own gauge showed</source>
        <translation>ce que montrait la jauge de la station</translation>
    </message>
    <message>
        <source>what the meter&apos;s register showed</source>
        <translation>ce que montrait l’index du compteur</translation>
    </message>
    <message>
        <source>corrected energy since the first register reading</source>
        <translation>énergie corrigée depuis le premier relevé de l’index</translation>
    </message>
    <message>
        <source>mean load since the register reading before</source>
        <translation>charge moyenne depuis le relevé de l’index précédent</translation>
    </message>
    <message>
        <source>gauge less the share that is left of what the drain delivers from full to cut-off, in percentage points</source>
        <translation>jauge moins la part qui reste de ce que la décharge délivre de la pleine charge à la coupure, en points de pourcentage</translation>
    </message>
    <message>
        <source>marks and remarks</source>
        <translation>repères et remarques</translation>
    </message>
    <message>
        <source>%1, amended</source>
        <translation>%1, rectifié</translation>
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
    <message>
        <source>assumed: %1. %2</source>
        <translation>supposé&#xa0;: %1. %2</translation>
    </message>
    <message>
        <source>interpolated between the register readings around it</source>
        <translation>interpolé entre les relevés de l’index qui l’entourent</translation>
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
    <message>
        <source>The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be known, amendments and cautions. Numbers have the decimal sign of its language.</source>
        <translation>Le rapport contient résumé, compteurs, méthode avec sources, relevés, bilan d’incertitude, graphiques, constats, ce qui ne peut être su, rectifications et précautions. Les nombres ont le signe décimal de sa langue.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
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
        <translation>2 min, si connu&#x202f;; sinon 5 min</translation>
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
    <message>
        <source>time of the photo</source>
        <translation>heure de la photo</translation>
    </message>
</context>
<context>
    <name>ullage::ScpiLink</name>
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
        <translation>Dossier pour les copies des carnets</translation>
    </message>
</context>
<context>
    <name>ullage::SettingsDialog</name>
    <message>
        <source>Drain</source>
        <translation>Décharge</translation>
    </message>
    <message>
        <source>No-load drain</source>
        <translation>Décharge à vide</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Recharge</translation>
    </message>
    <message>
        <source>Sustained output</source>
        <translation>Puissance soutenue</translation>
    </message>
    <message>
        <source>Peak output</source>
        <translation>Puissance de crête</translation>
    </message>
    <message>
        <source>Standby</source>
        <translation>Veille</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspect</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>comme le bureau</translation>
    </message>
    <message>
        <source>Another language counts from the next start of the program.</source>
        <translation>Une autre langue vaut dès le prochain démarrage du programme.</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Thème</translation>
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
        <translation>Taille du te&amp;xte</translation>
    </message>
    <message>
        <source>100 %, as the desktop</source>
        <translation>100 %, comme le bureau</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Theme and text size are shown at once. Cancel takes them back.</source>
        <translation>Thème et taille du texte se montrent aussitôt. Annuler les ramène.</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Default &amp;meter</source>
        <translation>&amp;Compteur par défaut</translation>
    </message>
    <message>
        <source>The meter that Start run proposes. Open a logbook to choose among its meters.</source>
        <translation>Le compteur que propose Démarrer un essai. Ouvrez un carnet pour choisir parmi ses compteurs.</translation>
    </message>
    <message>
        <source>The meter that Start run proposes. This logbook has no meter yet.</source>
        <translation>Le compteur que propose Démarrer un essai. Ce carnet n’a encore aucun compteur.</translation>
    </message>
    <message>
        <source>The meter of this logbook that Start run proposes.</source>
        <translation>Le compteur de ce carnet que propose Démarrer un essai.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Rappels</translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>&amp;Type d’essai</translation>
    </message>
    <message>
        <source>&amp;Remind me to read</source>
        <translation>Me &amp;rappeler de relever</translation>
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
        <translation>Démarrer un essai les propose pour un nouvel essai de ce type, et retient ce que vous y saisissez.</translation>
    </message>
    <message>
        <source>Call me by a &amp;notice of the desktop too</source>
        <translation>M’appeler aussi par une &amp;notification du bureau</translation>
    </message>
    <message>
        <source>With a &amp;sound</source>
        <translation>Avec un &amp;son</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Rapports</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>as the desktop&apos;s region: %1</source>
        <translation>comme la région du bureau&#xa0;: %1</translation>
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
        <translation>Publié par</translation>
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
        <translation>au lieu de celui du rapport</translation>
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
        <translation>Ceux-ci sont gardés dans le carnet, où un autre programme enregistre. Ils pourront être changés quand cela aura pris fin.</translation>
    </message>
    <message>
        <source>These are kept in the logbook. Name and licence are proposed for other logbooks too.</source>
        <translation>Ceux-ci sont gardés dans le carnet. Nom et licence sont aussi proposés pour d’autres carnets.</translation>
    </message>
    <message>
        <source>Name and licence are proposed for every logbook. Title and introduction are kept in a logbook: open one.</source>
        <translation>Nom et licence sont proposés pour chaque carnet. Titre et introduction sont gardés dans un carnet&#xa0;: ouvrez-en un.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Dossier</translation>
    </message>
    <message>
        <source>beside each logbook</source>
        <translation>à côté de chaque carnet</translation>
    </message>
    <message>
        <source>Choo&amp;se folder…</source>
        <translation>Choi&amp;sir le dossier…</translation>
    </message>
    <message>
        <source>&amp;Keep for days</source>
        <translation>&amp;Garder, en jours</translation>
    </message>
    <message>
        <source>1 to 3650</source>
        <translation>1 à 3650</translation>
    </message>
    <message>
        <source>Older copies are removed. A folder on another disk also helps when this disk fails.</source>
        <translation>Les copies plus anciennes sont supprimées. Un dossier sur un autre disque aide aussi quand ce disque tombe en panne.</translation>
    </message>
    <message>
        <source>Name the folder from the root on, such as /media/disk/copies, or leave the field empty.</source>
        <translation>Nommez le dossier depuis la racine, comme /media/disk/copies, ou laissez le champ vide.</translation>
    </message>
    <message>
        <source>There is no such folder. Make it, or choose another.</source>
        <translation>Ce dossier n’existe pas. Créez-le, ou choisissez-en un autre.</translation>
    </message>
    <message>
        <source>Nothing can be written into this folder. Choose another.</source>
        <translation>Rien ne peut être écrit dans ce dossier. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>Enter for how many days a copy is kept, such as 30.</source>
        <translation>Saisissez pendant combien de jours une copie est gardée, par exemple 30.</translation>
    </message>
    <message>
        <source>Make a &amp;copy of each logbook automatically</source>
        <translation>Faire automatiquement une &amp;copie de chaque carnet</translation>
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
    <message>
        <source>Sizing %1 units</source>
        <translation>Dimensionnement de %1 stations</translation>
    </message>
    <message>
        <source>Sizing %1 units…</source>
        <translation>Dimensionnement de %1 stations…</translation>
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
    <name>ullage::SpokenChart</name>
    <message>
        <source>Curve without a name</source>
        <translation>Courbe sans nom</translation>
    </message>
    <message>
        <source>%1: nothing known.</source>
        <translation>%1 : rien de connu.</translation>
    </message>
    <message>
        <source>%1: one point, %2 at %3.</source>
        <translation>%1 : un point, %2 à %3.</translation>
    </message>
    <message>
        <source>%1: %2 points, from %3 at %4 to %5 at %6; lowest %7, highest %8.</source>
        <translation>%1 : %2 points, de %3 à %4 jusqu’à %5 à %6 ; minimum %7, maximum %8.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Et %1 de plus.</translation>
    </message>
    <message>
        <source>Of %1.</source>
        <translation>Pour %1.</translation>
    </message>
    <message>
        <source>Line at %1: %2.</source>
        <translation>Ligne à %1 : %2.</translation>
    </message>
    <message>
        <source>Band from %1 to %2: %3.</source>
        <translation>Bande de %1 à %2 : %3.</translation>
    </message>
    <message>
        <source>From %1 to %2: %3.</source>
        <translation>De %1 à %2 : %3.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3.</source>
        <translation>%1 : %2, %3.</translation>
    </message>
    <message>
        <source>%1: %2 delivered, %3.</source>
        <translation>%1 : %2 délivrés, %3.</translation>
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
        <translation>Banc</translation>
    </message>
    <message>
        <source>New logbook for this table</source>
        <translation>Nouveau carnet pour ce tableau</translation>
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
    <message>
        <source>%1:</source>
        <translation>%1&#xa0;:</translation>
    </message>
</context>
<context>
    <name>ullage::TreeRowDelegate</name>
    <message>
        <source>due</source>
        <translation>à relever</translation>
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
        <translation>le même pour tous ses exemplaires</translation>
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
        <translation>1,5 h, de vide à plein, sur secteur</translation>
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
        <translation>12 V, la plus basse qui convient</translation>
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
        <translation>recharges complètes auparavant</translation>
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
        <translation>mots courts&#xa0;: prêtée&#x202f;; tente</translation>
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
    <name>ullage::UnitSizer</name>
    <message>
        <source>The units could not be sized: %1.</source>
        <translation>Les stations n’ont pas pu être dimensionnées&#xa0;: %1.</translation>
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
        <translation>Ouvrir l’exemple</translation>
    </message>
    <message>
        <source>A finished logbook of invented units. Look round and change what you like: it is a copy of your own.</source>
        <translation>Un carnet fini de stations inventées. Regardez et changez ce que vous voulez&#xa0;: c’est votre propre copie.</translation>
    </message>
    <message>
        <source>Open the sample logbook</source>
        <translation>Ouvrir le carnet d’exemple</translation>
    </message>
    <message>
        <source>Guided first run</source>
        <translation>Premier essai guidé</translation>
    </message>
    <message>
        <source>One test from the unit to its result, in the forms that you will use. The guide says the next step, and you may leave it at any time.</source>
        <translation>Un essai, de la station à son résultat, dans les formulaires que vous utiliserez. Le guide dit l’étape suivante, et vous pouvez le quitter à tout moment.</translation>
    </message>
    <message>
        <source>Begin the guided run</source>
        <translation>Commencer l’essai guidé</translation>
    </message>
    <message>
        <source>Begin yourself</source>
        <translation>Commencer seul</translation>
    </message>
    <message>
        <source>Write down what the maker claims of the unit, and what the meter&apos;s data sheet says of its error.</source>
        <translation>Notez ce que le fabricant annonce de la station, et ce que la fiche technique du compteur dit de son erreur.</translation>
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
        <translation>Reprendre votre tableau</translation>
    </message>
    <message>
        <source>Notes in a spreadsheet, a CSV file or copied cells. You see how each column is understood before anything is kept.</source>
        <translation>Des notes dans un tableur, un fichier CSV ou des cellules copiées. Vous voyez comment chaque colonne est comprise avant que rien ne soit gardé.</translation>
    </message>
    <message>
        <source>Choose a table</source>
        <translation>Choisir un tableau</translation>
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
        <translation>Le travail en trois étapes&#xa0;: 1. Ajoutez la station et le compteur. 2. Démarrez un essai et notez des relevés. 3. Lisez la fraction utile et comparez.</translation>
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
        <translation>Ce carnet est vide. Commencez par la station à tester, laissez-vous guider dans un premier essai, ou importez un tableau que vous avez.</translation>
    </message>
    <message>
        <source>How much of the energy printed on a battery storage unit reaches the socket, how sure is that, and can its gauge be trusted?</source>
        <translation>Quelle part de l’énergie imprimée sur une station arrive à la prise, avec quelle certitude, et peut-on se fier à sa jauge&#x202f;?</translation>
    </message>
    <message>
        <source>open %1</source>
        <translation>ouvrir %1</translation>
    </message>
    <message>
        <source>This logbook is empty. The guide above says the next step.</source>
        <translation>Ce carnet est vide. Le guide ci-dessus dit l’étape suivante.</translation>
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
<context>
    <name>ullage::WrappedLabel</name>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
</context>
<context>
    <name>unit</name>
    <message>
        <source>it is a run of another unit</source>
        <translation>c’est un essai d’une autre station</translation>
    </message>
    <message>
        <source>state a load above 0 W</source>
        <translation>indiquez une charge au-dessus de 0 W</translation>
    </message>
    <message>
        <source>state a share of the time above 0 and at most 1</source>
        <translation>indiquez une part du temps au-dessus de 0 et d’au plus 1</translation>
    </message>
    <message>
        <source>%1 W is above the rated output of %2 W</source>
        <translation>%1 W est au-dessus de la puissance assignée de %2 W</translation>
    </message>
    <message>
        <source>%1 to %2 W</source>
        <translation>%1 à %2 W</translation>
    </message>
    <message>
        <source>beyond the tested loads (%1)</source>
        <translation>au-delà des charges testées (%1)</translation>
    </message>
    <message>
        <source>between the tested loads (%1)</source>
        <translation>entre les charges testées (%1)</translation>
    </message>
    <message>
        <source>beyond the tested loads (%1 on average, as this one, but %2 while on, this one %3 W)</source>
        <translation>au-delà des charges testées (%1 en moyenne, comme celle-ci, mais %2 en marche, celle-ci %3 W)</translation>
    </message>
    <message>
        <source>a mean over drains: a single one scatters by another %1 %</source>
        <translation>une moyenne sur des décharges&#xa0;: une seule se disperse de %1 % de plus</translation>
    </message>
    <message>
        <source>no interval: the error limit of a meter is not stated</source>
        <translation>sans intervalle&#xa0;: la limite d’erreur d’un compteur n’est pas précisée</translation>
    </message>
    <message>
        <source>the draw is too uncertain for an upper end</source>
        <translation>la consommation est trop incertaine pour un bout supérieur</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>l’énergie assignée de la station n’est pas précisée</translation>
    </message>
    <message>
        <source>%1 W on average (%2 W for %3 % of the time)</source>
        <translation>%1 W en moyenne (%2 W pendant %3 % du temps)</translation>
    </message>
    <message>
        <source>the gauge curve of run %1 (%2) ends above %3, where this run ends</source>
        <translation>la courbe de jauge de l’essai %1 (%2) finit au-dessus de %3, où finit cet essai</translation>
    </message>
    <message>
        <source>the gauge curve of run %1 (%2) is too flat from %3 to %4 to tell how deep this run went</source>
        <translation>la courbe de jauge de l’essai %1 (%2) est trop plate de %3 à %4 pour dire jusqu’où cet essai est allé</translation>
    </message>
    <message>
        <source>through the gauge curve of run %1 (%2), from %3 to %4</source>
        <translation>par la courbe de jauge de l’essai %1 (%2), de %3 à %4</translation>
    </message>
    <message>
        <source>a charge run is no drain</source>
        <translation>un essai de recharge n’est pas une décharge</translation>
    </message>
    <message>
        <source>a sustained output run is no drain</source>
        <translation>un essai de puissance soutenue n’est pas une décharge</translation>
    </message>
    <message>
        <source>a peak output run is no drain</source>
        <translation>un essai de puissance de crête n’est pas une décharge</translation>
    </message>
    <message>
        <source>a standby run is no drain</source>
        <translation>un essai de veille n’est pas une décharge</translation>
    </message>
    <message>
        <source>whether it started full is not stated</source>
        <translation>il n’est pas précisé si elle était pleine au départ</translation>
    </message>
    <message>
        <source>it did not start full</source>
        <translation>elle n’était pas pleine au départ</translation>
    </message>
    <message>
        <source>it is still running</source>
        <translation>il est encore en cours</translation>
    </message>
    <message>
        <source>it was stopped before the cut-off</source>
        <translation>il a été arrêté avant la coupure</translation>
    </message>
    <message>
        <source>a meter that is not stated</source>
        <translation>un compteur non précisé</translation>
    </message>
    <message>
        <source>the meter that took over</source>
        <translation>le compteur qui a pris le relais</translation>
    </message>
    <message>
        <source>the output tripped and nothing says that it was switched on again; mark when it was</source>
        <translation>la sortie a déclenché et rien ne dit qu’elle a été réarmée&#x202f;; posez un repère au moment où elle l’a été</translation>
    </message>
    <message>
        <source>no time passed with the output on</source>
        <translation>aucun temps n’a passé avec la sortie active</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>moins de deux relevés de l’index</translation>
    </message>
    <message>
        <source>nothing was delivered</source>
        <translation>rien n’a été délivré</translation>
    </message>
    <message>
        <source>there is no drain to fit</source>
        <translation>il n’y a aucune décharge à ajuster</translation>
    </message>
    <message>
        <source>fit between runs</source>
        <translation>ajustement entre essais</translation>
    </message>
    <message>
        <source>make a drain from full to cut-off</source>
        <translation>faites une décharge de la pleine charge à la coupure</translation>
    </message>
    <message>
        <source>the drains used different meters, and the error limit of one is not stated</source>
        <translation>les décharges ont utilisé des compteurs différents, et la limite d’erreur de l’un n’est pas précisée</translation>
    </message>
    <message>
        <source>corrected for the loads</source>
        <translation>corrigé des charges</translation>
    </message>
    <message>
        <source>of %1 full drains those at like loads were read at too few common depths</source>
        <translation>sur %1 décharges complètes, celles à des charges semblables ont été relevées à trop peu de niveaux communs</translation>
    </message>
    <message>
        <source>no two of the %1 full drains had like loads (mean loads within a factor of %2, in like order) at temperatures within 8 °C</source>
        <translation>pas deux des %1 décharges complètes n’avaient des charges semblables (charges moyennes dans un rapport d’au plus %2, dans le même ordre) à des températures à 8 °C près</translation>
    </message>
    <message>
        <source>it takes two drains from full to cut-off with the gauge read at six depths or more; so far: %1</source>
        <translation>il faut deux décharges de la pleine charge à la coupure avec la jauge relevée à six niveaux ou plus&#x202f;; jusqu’ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>of run %1, %2</source>
        <translation>de l’essai %1, %2</translation>
    </message>
    <message>
        <source>whether E* moves is not known (%1)</source>
        <translation>si E* bouge est inconnu (%1)</translation>
    </message>
    <message>
        <source>E* is unmoved (%1 Wh a day)</source>
        <translation>E* ne bouge pas (%1 Wh par jour)</translation>
    </message>
    <message>
        <source>E* falls (%1 Wh a day)</source>
        <translation>E* baisse (%1 Wh par jour)</translation>
    </message>
    <message>
        <source>E* rises (%1 Wh a day)</source>
        <translation>E* monte (%1 Wh par jour)</translation>
    </message>
    <message>
        <source>E* is unmoved (%1 % from run %2 to run %3)</source>
        <translation>E* ne bouge pas (%1 % de l’essai %2 à l’essai %3)</translation>
    </message>
    <message>
        <source>E* falls (%1 % from run %2 to run %3)</source>
        <translation>E* baisse (%1 % de l’essai %2 à l’essai %3)</translation>
    </message>
    <message>
        <source>E* rises (%1 % from run %2 to run %3)</source>
        <translation>E* monte (%1 % de l’essai %2 à l’essai %3)</translation>
    </message>
    <message>
        <source>χ² %1 for %2 degrees of freedom, %3</source>
        <translation>χ² %1 pour %2 degrés de liberté, %3</translation>
    </message>
    <message>
        <source>the gauge&apos;s curve moves by %1 pt at %2 % depth from run %3 to run %4 (%5)</source>
        <translation>la courbe de la jauge bouge de %1 pt à %2 % de profondeur de l’essai %3 à l’essai %4 (%5)</translation>
    </message>
    <message>
        <source>the gauge&apos;s curve is unmoved from run %1 to run %2 (%3; a move of %4 pt would be seen)</source>
        <translation>la courbe de la jauge ne bouge pas de l’essai %1 à l’essai %2 (%3&#x202f;; un mouvement de %4 pt se verrait)</translation>
    </message>
    <message>
        <source>Whether the gauge drifts from run to run is not known: %1.</source>
        <translation>Si la jauge dérive d’un essai à l’autre est inconnu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1, %2: ageing, not the gauge.</source>
        <translation>%1, %2&#xa0;: du vieillissement, pas la jauge.</translation>
    </message>
    <message>
        <source>%1, %2: warmer or fuller, not the gauge.</source>
        <translation>%1, %2&#xa0;: plus chaud ou plus plein, pas la jauge.</translation>
    </message>
    <message>
        <source>%1, %2: the gauge drifts.</source>
        <translation>%1, %2&#xa0;: la jauge dérive.</translation>
    </message>
    <message>
        <source>%1 and %2: the unit ages, and its gauge drifts.</source>
        <translation>%1 et %2&#xa0;: la station vieillit, et sa jauge dérive.</translation>
    </message>
    <message>
        <source>%1 and %2: the energy moves, and the gauge drifts.</source>
        <translation>%1 et %2&#xa0;: l’énergie bouge, et la jauge dérive.</translation>
    </message>
    <message>
        <source>%1, and %2.</source>
        <translation>%1, et %2.</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4; whether that is more than chance is not known (%5).</source>
        <translation>Wh par point de jauge de l’essai %1 à l’essai %2&#xa0;: %3 à %4&#x202f;; si c’est plus que le hasard est inconnu (%5).</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): more than chance.</source>
        <translation>Wh par point de jauge de l’essai %1 à l’essai %2&#xa0;: %3 à %4, %5 % corrigé des charges (%6)&#xa0;: plus que le hasard.</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): no more than chance.</source>
        <translation>Wh par point de jauge de l’essai %1 à l’essai %2&#xa0;: %3 à %4, %5 % corrigé des charges (%6)&#xa0;: pas plus que le hasard.</translation>
    </message>
    <message>
        <source>where the curves from run %1 to run %2 differ most, at %3 % of the share delivered</source>
        <translation>où les courbes de l’essai %1 à l’essai %2 diffèrent le plus, à %3 % de part délivrée</translation>
    </message>
    <message>
        <source>no interval: the error limit of %1 is not stated</source>
        <translation>sans intervalle&#xa0;: la limite d’erreur de %1 n’est pas précisée</translation>
    </message>
    <message>
        <source>no drain from full to cut-off has all its energy read</source>
        <translation>aucune décharge de la pleine charge à la coupure n’a toute son énergie relevée</translation>
    </message>
    <message>
        <source>there is one drain only, at %1 W</source>
        <translation>il n’y a qu’une décharge, à %1 W</translation>
    </message>
    <message>
        <source>the drains are too alike (%1 to %2 h)</source>
        <translation>les décharges se ressemblent trop (%1 à %2 h)</translation>
    </message>
    <message>
        <source>the drains show no draw above 0 W</source>
        <translation>les décharges ne montrent aucune consommation au-dessus de 0 W</translation>
    </message>
    <message>
        <source>from E*/P*; a gain that all drains share cancels</source>
        <translation>de E*/P*&#x202f;; un gain commun à toutes les décharges s’annule</translation>
    </message>
    <message>
        <source>the draw may be 0 W within its uncertainty</source>
        <translation>la consommation peut être de 0 W dans son incertitude</translation>
    </message>
    <message>
        <source>the drains would need a draw below 0 W (%1 W): one of them is wrong, or the unit changed between them</source>
        <translation>les décharges demanderaient une consommation sous 0 W (%1 W)&#xa0;: l’une est fausse, ou la station a changé entre elles</translation>
    </message>
    <message numerus="yes">
        <source>seen from the socket, from the run times of %n drains</source>
        <comment>seen from the socket, from the run times of %n drain</comment>
        <translation>
            <numerusform>vu de la prise, d’après la durée de %n décharge</numerusform>
            <numerusform>vu de la prise, d’après les durées de %n décharges</numerusform>
        </translation>
    </message>
    <message>
        <source>bounded by common practice, not fitted: that takes three loads that differ enough</source>
        <translation>borné par la pratique courante, non ajusté&#xa0;: il y faut trois charges assez différentes</translation>
    </message>
    <message>
        <source>fitted: the drains narrow it further than common practice</source>
        <translation>ajusté&#xa0;: les décharges le resserrent plus que la pratique courante</translation>
    </message>
    <message>
        <source>fitted: the drains contradict the bounds of common practice, which were dropped</source>
        <translation>ajusté&#xa0;: les décharges contredisent les bornes de la pratique courante, qui ont été abandonnées</translation>
    </message>
    <message numerus="yes">
        <source>From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on (%3).</source>
        <comment>From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on (%3).</comment>
        <translation>
            <numerusform>D’après %n décharge&#xa0;: %1 délivrables avant sa consommation propre, moins %2 par heure de sortie active (%3).</numerusform>
            <numerusform>D’après %n décharges&#xa0;: %1 délivrables avant sa consommation propre, moins %2 par heure de sortie active (%3).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on.</source>
        <comment>From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on.</comment>
        <translation>
            <numerusform>D’après %n décharge&#xa0;: %1 délivrables avant sa consommation propre, moins %2 par heure de sortie active.</numerusform>
            <numerusform>D’après %n décharges&#xa0;: %1 délivrables avant sa consommation propre, moins %2 par heure de sortie active.</numerusform>
        </translation>
    </message>
    <message>
        <source>The drains differ from this by %1 times what their uncertainties allow; the intervals are widened for that.</source>
        <translation>Les décharges s’en écartent de %1 fois ce que permettent leurs incertitudes&#x202f;; les intervalles sont élargis pour cela.</translation>
    </message>
    <message>
        <source>The no-load draw and the energy before own consumption are not known: %1.</source>
        <translation>La consommation à vide et l’énergie avant consommation propre sont inconnues&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>the line through %n drains, at a run time of 0 h</source>
        <comment>the line through %n drain, at a run time of 0 h</comment>
        <translation>
            <numerusform>la droite par %n décharge, à une durée de 0 h</numerusform>
            <numerusform>la droite par %n décharges, à une durée de 0 h</numerusform>
        </translation>
    </message>
    <message>
        <source>a charge run does not tell it</source>
        <translation>un essai de recharge ne le dit pas</translation>
    </message>
    <message>
        <source>a sustained output run does not tell it</source>
        <translation>un essai de puissance soutenue ne le dit pas</translation>
    </message>
    <message>
        <source>a peak output run does not tell it</source>
        <translation>un essai de puissance de crête ne le dit pas</translation>
    </message>
    <message>
        <source>a standby run does not tell it</source>
        <translation>un essai de veille ne le dit pas</translation>
    </message>
    <message>
        <source>the run is not noted as started full</source>
        <translation>l’essai n’est pas noté comme plein au départ</translation>
    </message>
    <message>
        <source>the run did not go to cut-off, so what stayed inside is not known</source>
        <translation>l’essai n’est pas allé jusqu’à la coupure, ce qui est resté dedans est donc inconnu</translation>
    </message>
    <message>
        <source>not all delivered energy was read: %1</source>
        <translation>l’énergie délivrée n’a pas toute été relevée&#xa0;: %1</translation>
    </message>
    <message>
        <source>conversion or missing capacity, not separable from the socket</source>
        <translation>conversion ou capacité manquante, non séparables depuis la prise</translation>
    </message>
    <message>
        <source>%1 to %2 h</source>
        <translation>%1 à %2 h</translation>
    </message>
    <message>
        <source>its run time</source>
        <translation>sa durée</translation>
    </message>
    <message>
        <source>rest %1: none is shown beyond the uncertainty</source>
        <translation>reste %1&#xa0;: aucun n’apparaît au-delà de l’incertitude</translation>
    </message>
    <message>
        <source>together %1 more than rated: the unit holds more than its label says, or the draw is overestimated</source>
        <translation>ensemble %1 de plus que l’énergie assignée&#xa0;: la station contient plus qu’annoncé, ou la consommation est surestimée</translation>
    </message>
    <message>
        <source>rest %1: conversion or missing capacity, not separable from the socket</source>
        <translation>reste %1&#xa0;: conversion ou capacité manquante, non séparables depuis la prise</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, %3 not: no-load draw over %4, conversion and missing capacity, which cannot be told apart as the no-load draw is not known (%5).</source>
        <translation>Sur %1 assignés&#xa0;: %2 délivrés, %3 non&#xa0;: consommation à vide sur %4, conversion et capacité manquante, qui ne peuvent être distinguées car la consommation à vide est inconnue (%5).</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, about %3 no-load draw over %4 (if the gauge is linear in stored energy), %5.</source>
        <translation>Sur %1 assignés&#xa0;: %2 délivrés, environ %3 de consommation à vide sur %4 (si la jauge est linéaire en énergie stockée), %5.</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, about %3 no-load draw over %4, %5.</source>
        <translation>Sur %1 assignés&#xa0;: %2 délivrés, environ %3 de consommation à vide sur %4, %5.</translation>
    </message>
    <message>
        <source>Where the rated energy went is not known: %1.</source>
        <translation>Où est allée l’énergie assignée est inconnu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>rated energy (a claim) less delivered energy</source>
        <translation>énergie assignée (annoncée) moins énergie délivrée</translation>
    </message>
    <message>
        <source>mean of %1 drains at %2 W, which scatter by %3 %</source>
        <translation>moyenne de %1 décharges à %2 W, qui se dispersent de %3 %</translation>
    </message>
    <message>
        <source>mean of %1 drains from %2 to %3 W, which scatter by %4 %</source>
        <translation>moyenne de %1 décharges de %2 à %3 W, qui se dispersent de %4 %</translation>
    </message>
    <message>
        <source>%1 stands alone; drains are taken to repeat within %2</source>
        <translation>%1 est isolée&#x202f;; la répétabilité des décharges est supposée de %2</translation>
    </message>
    <message>
        <source>two drains say little of how well this unit repeats, a third narrows the interval most</source>
        <translation>deux décharges disent peu de la répétabilité de cette station, une troisième resserre le plus l’intervalle</translation>
    </message>
    <message>
        <source>Mean of %1 drains near %2 W: %3; a single one scatters by %4 Wh (%5 %).</source>
        <translation>Moyenne de %1 décharges vers %2 W&#xa0;: %3&#x202f;; une seule se disperse de %4 Wh (%5 %).</translation>
    </message>
    <message>
        <source>Two drains say little of how well this unit repeats; a third narrows this most.</source>
        <translation>Deux décharges disent peu de la répétabilité de cette station&#x202f;; une troisième resserre cela le plus.</translation>
    </message>
    <message>
        <source>The drain stands alone: how well this unit repeats is taken as %1.</source>
        <translation>La décharge est isolée&#xa0;: la répétabilité de cette station est supposée de %1.</translation>
    </message>
    <message>
        <source>Each drain stands alone at its load: how well this unit repeats is taken as %1.</source>
        <translation>Chaque décharge est isolée à sa charge&#xa0;: la répétabilité de cette station est supposée de %1.</translation>
    </message>
    <message>
        <source>%1 % (the usual figure, which nobody has tried on these units)</source>
        <translation>%1 % (le chiffre habituel, que personne n’a éprouvé sur ces stations)</translation>
    </message>
    <message>
        <source>%1 % (as the tester states)</source>
        <translation>%1 % (comme le précise le testeur)</translation>
    </message>
    <message numerus="yes">
        <source>%1 % (from the repeated drains of this logbook, %n degrees of freedom)</source>
        <comment>%1 % (from the repeated drains of this logbook, %n degree of freedom)</comment>
        <translation>
            <numerusform>%1 % (d’après les décharges répétées de ce carnet, %n degré de liberté)</numerusform>
            <numerusform>%1 % (d’après les décharges répétées de ce carnet, %n degrés de liberté)</numerusform>
        </translation>
    </message>
    <message>
        <source>run %1 has no two gauge readings</source>
        <translation>l’essai %1 n’a pas deux relevés de jauge</translation>
    </message>
    <message>
        <source>run %1: the gauge fell from %2 to %3 % in %4 h; assumes an accurate gauge and the rated energy</source>
        <translation>essai %1&#xa0;: la jauge a baissé de %2 à %3 % en %4 h&#x202f;; suppose une jauge juste et l’énergie assignée</translation>
    </message>
    <message>
        <source>run %1 put back what %2 h of standing (run %3) had taken; at the meter, the charging loss inside</source>
        <translation>l’essai %1 a remis ce que %2 h d’attente (essai %3) avaient pris&#x202f;; au compteur, perte de recharge comprise</translation>
    </message>
    <message>
        <source>as metered before the charger</source>
        <translation>comme compté avant le chargeur</translation>
    </message>
    <message>
        <source>with the loss of the round trip</source>
        <translation>avec la perte de l’aller-retour</translation>
    </message>
    <message>
        <source>without the charging loss, which is not known</source>
        <translation>sans la perte de recharge, qui est inconnue</translation>
    </message>
    <message>
        <source>no standby run: leave the unit full with its output off for days, reading the gauge, then charge it</source>
        <translation>aucun essai de veille&#xa0;: laissez la station pleine, sortie coupée, plusieurs jours en relevant la jauge, puis rechargez-la</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>environ %1 min</translation>
    </message>
    <message>
        <source>about %1 days</source>
        <translation>environ %1 jours</translation>
    </message>
    <message>
        <source>about %1 h</source>
        <translation>environ %1 h</translation>
    </message>
    <message>
        <source>A drain from full to cut-off at any load would be the first to tell.</source>
        <translation>Une décharge de la pleine charge à la coupure, à une charge quelconque, serait la première à le dire.</translation>
    </message>
    <message>
        <source>No single further drain would narrow this by much.</source>
        <translation>Aucune décharge de plus, à elle seule, ne resserrerait cela beaucoup.</translation>
    </message>
    <message>
        <source>A drain near %1 W (%2) would narrow this most, by a factor of %3.</source>
        <translation>Une décharge vers %1 W (%2) resserrerait cela le plus, d’un facteur %3.</translation>
    </message>
    <message>
        <source>Whether the energy moves with time is not known: %1.</source>
        <translation>Si l’énergie change avec le temps est inconnu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>the drains were made at temperatures more than %1 °C apart, where cold looks like age</source>
        <translation>les décharges ont été faites à des températures distantes de plus de %1 °C, où le froid ressemble à l’âge</translation>
    </message>
    <message>
        <source>it takes three drains from full to cut-off; so far: %1</source>
        <translation>il faut trois décharges de la pleine charge à la coupure&#x202f;; jusqu’ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>all drains were made within a day</source>
        <translation>toutes les décharges ont été faites en un jour</translation>
    </message>
    <message>
        <source>the loads changed in step with time; repeat an early load</source>
        <translation>les charges ont changé au rythme du temps&#x202f;; répétez une charge ancienne</translation>
    </message>
    <message>
        <source>over %1 days, corrected for the loads</source>
        <translation>sur %1 jours, corrigé des charges</translation>
    </message>
    <message numerus="yes">
        <source>%n drains at other temperatures left out</source>
        <comment>%n drain at other temperatures left out</comment>
        <translation>
            <numerusform>%n décharge à d’autres températures laissée de côté</numerusform>
            <numerusform>%n décharges à d’autres températures laissées de côté</numerusform>
        </translation>
    </message>
    <message>
        <source>No change of energy with time is shown (%1 Wh a day).</source>
        <translation>Aucun changement d’énergie avec le temps n’apparaît (%1 Wh par jour).</translation>
    </message>
    <message>
        <source>The unit delivers less with time: %1 Wh a day.</source>
        <translation>La station délivre moins avec le temps&#xa0;: %1 Wh par jour.</translation>
    </message>
    <message>
        <source>The unit delivers more with time (%1 Wh a day): warmer, or not always charged full.</source>
        <translation>La station délivre plus avec le temps (%1 Wh par jour)&#xa0;: plus chaud, ou pas toujours rechargée au plein.</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>the run is no longer in the logbook</source>
        <translation>l’essai n’est plus dans le carnet</translation>
    </message>
    <message>
        <source>choose another run</source>
        <translation>choisissez un autre essai</translation>
    </message>
    <message>
        <source>a run of the comparison is no longer in its logbook</source>
        <translation>un essai de la comparaison n’est plus dans son carnet</translation>
    </message>
    <message>
        <source>open the comparison page again</source>
        <translation>rouvrez la page de comparaison</translation>
    </message>
    <message>
        <source>the photo cannot be shown</source>
        <translation>la photo ne peut être affichée</translation>
    </message>
    <message>
        <source>leave it out of the report</source>
        <translation>laissez-la hors du rapport</translation>
    </message>
    <message>
        <source>the unit has no runs any more</source>
        <translation>la station n’a plus d’essais</translation>
    </message>
    <message>
        <source>choose another unit</source>
        <translation>choisissez une autre station</translation>
    </message>
</context>
</TS>
