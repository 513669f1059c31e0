<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>QAction</name>
    <message>
        <source>Copy picture</source>
        <translation>Copiar imagen</translation>
    </message>
    <message>
        <source>Copy rows</source>
        <translation>Copiar filas</translation>
    </message>
</context>
<context>
    <name>advice</name>
    <message>
        <source>; make a drain</source>
        <translation>; haga una descarga</translation>
    </message>
    <message>
        <source>: read the gauge more often</source>
        <translation>: lea el indicador más a menudo</translation>
    </message>
    <message>
        <source>: repeat an early drain</source>
        <translation>: repita una descarga temprana</translation>
    </message>
    <message>
        <source>: make one</source>
        <translation>: haga una</translation>
    </message>
    <message>
        <source>: make a drain near %1 W</source>
        <translation>: haga una descarga cerca de %1 W</translation>
    </message>
    <message>
        <source>: make a drain at less than half or more than twice that load</source>
        <translation>: haga una descarga a menos de la mitad o a más del doble de esa carga</translation>
    </message>
</context>
<context>
    <name>awake</name>
    <message>
        <source>a test is running and its readings are due</source>
        <translation>hay un ensayo en curso y sus lecturas están pendientes</translation>
    </message>
    <message>
        <source>kept awake</source>
        <translation>suspensión impedida</translation>
    </message>
    <message>
        <source>this desktop does not offer to stay awake: set it yourself</source>
        <translation>este escritorio no permite impedir la suspensión: desactívela usted</translation>
    </message>
</context>
<context>
    <name>base</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 o %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 como máximo</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medición</translation>
    </message>
    <message>
        <source>projected</source>
        <translation>proyección</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>al menos</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>horquilla</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>%1 is no time of day</source>
        <translation>%1 no es una hora del día</translation>
    </message>
    <message>
        <source>use 00:00:00 to 23:59:59</source>
        <translation>use 00:00:00 a 23:59:59</translation>
    </message>
    <message>
        <source>year %1 is outside 1583 to 9999</source>
        <translation>el año %1 está fuera de 1583 a 9999</translation>
    </message>
    <message>
        <source>correct the year</source>
        <translation>corrija el año</translation>
    </message>
    <message>
        <source>%1 is no date of the calendar</source>
        <translation>%1 no es una fecha del calendario</translation>
    </message>
    <message>
        <source>correct the day or the month</source>
        <translation>corrija el día o el mes</translation>
    </message>
    <message>
        <source>the moment is outside the years 1583 to 9999</source>
        <translation>el momento está fuera de los años 1583 a 9999</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` no es una zona horaria que conozca esta máquina</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna, or UTC</source>
        <translation>use un nombre IANA como Europe/Vienna, o UTC</translation>
    </message>
    <message>
        <source>%1 does not exist in %2: the clocks went forward</source>
        <translation>%1 no existe en %2: se adelantaron los relojes</translation>
    </message>
    <message>
        <source>use the time after the change</source>
        <translation>use la hora posterior al cambio</translation>
    </message>
    <message>
        <source>%1 occurs twice in %2: the clocks were put back</source>
        <translation>%1 ocurre dos veces en %2: se atrasaron los relojes</translation>
    </message>
    <message>
        <source>add the offset: %1 or %2</source>
        <translation>añada el desfase: %1 o %2</translation>
    </message>
    <message>
        <source>`%1` is no date and time</source>
        <translation>`%1` no es una fecha con hora</translation>
    </message>
    <message>
        <source>write it like 2027-05-14T18:00, with Z or an offset such as +02:00 if need be</source>
        <translation>escríbalo como 2027-05-14T18:00, con Z o un desfase como +02:00 si hace falta</translation>
    </message>
    <message>
        <source>`%1` is no number</source>
        <translation>`%1` no es un número</translation>
    </message>
    <message>
        <source>write a number such as 431 or 0.5</source>
        <translation>escriba un número como 431 o 0,5</translation>
    </message>
    <message>
        <source>`%1` can be read in more than one way</source>
        <translation>`%1` se puede leer de más de una manera</translation>
    </message>
    <message>
        <source>leave out digit grouping and use one decimal sign</source>
        <translation>omita los separadores de miles y use un solo signo decimal</translation>
    </message>
    <message>
        <source>write a number such as 431 or 0.5, without digit grouping</source>
        <translation>escriba un número como 431 o 0,5, sin separadores de miles</translation>
    </message>
    <message>
        <source>`%1` is too large or too small</source>
        <translation>`%1` es demasiado grande o demasiado pequeño</translation>
    </message>
    <message>
        <source>correct the number</source>
        <translation>corrija el número</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>no queda espacio en el disco</translation>
    </message>
    <message>
        <source>nothing can be made in this folder: %1</source>
        <translation>no se puede crear nada en esta carpeta: %1</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>libere espacio o elija otro lugar</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>elija una carpeta en la que pueda escribir</translation>
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
        <translation>vuelva a instalar Ullage, todos sus archivos juntos</translation>
    </message>
    <message>
        <source>a part of the program is missing</source>
        <translation>falta una parte del programa</translation>
    </message>
    <message>
        <source>a part of the program is of another version</source>
        <translation>una parte del programa es de otra versión</translation>
    </message>
    <message>
        <source>a part of the program cannot be loaded (%1)</source>
        <translation>no se puede cargar una parte del programa (%1)</translation>
    </message>
    <message>
        <source>a part of the program cannot be opened (%1)</source>
        <translation>no se puede abrir una parte del programa (%1)</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>a picture of %1 by %2 cannot be drawn</source>
        <translation>no se puede dibujar una imagen de %1 por %2</translation>
    </message>
    <message>
        <source>picture size</source>
        <translation>tamaño de la imagen</translation>
    </message>
    <message>
        <source>choose sides from 1 to %1</source>
        <translation>elija lados de 1 a %1</translation>
    </message>
    <message>
        <source>the scale is not a positive number</source>
        <translation>la escala no es un número positivo</translation>
    </message>
    <message>
        <source>picture scale</source>
        <translation>escala de la imagen</translation>
    </message>
    <message>
        <source>choose a scale such as 1 or 2</source>
        <translation>elija una escala como 1 o 2</translation>
    </message>
    <message>
        <source>the picture could not be put into PNG form</source>
        <translation>no se pudo pasar la imagen a PNG</translation>
    </message>
    <message>
        <source>try a smaller size</source>
        <translation>pruebe con un tamaño menor</translation>
    </message>
    <message>
        <source>size and scale make an image that is too small or too large</source>
        <translation>el tamaño y la escala dan una imagen demasiado pequeña o demasiado grande</translation>
    </message>
    <message>
        <source>choose a smaller size or scale</source>
        <translation>elija un tamaño o una escala menores</translation>
    </message>
    <message>
        <source>there is not enough memory for the picture</source>
        <translation>no hay memoria suficiente para la imagen</translation>
    </message>
    <message>
        <source>the picture could not be put into SVG form</source>
        <translation>no se pudo pasar la imagen a SVG</translation>
    </message>
    <message>
        <source>try PNG instead</source>
        <translation>pruebe con PNG</translation>
    </message>
    <message>
        <source>a picture&apos;s name must end in .png or .svg</source>
        <translation>el nombre de una imagen debe terminar en .png o .svg</translation>
    </message>
    <message>
        <source>add the ending that you want</source>
        <translation>añada la terminación que quiera</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>la carpeta no existe</translation>
    </message>
    <message>
        <source>make the folder or choose another</source>
        <translation>cree la carpeta o elija otra</translation>
    </message>
    <message>
        <source>there is nothing drawn here yet</source>
        <translation>aquí aún no hay nada dibujado</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>imagen</translation>
    </message>
    <message>
        <source>choose a run with readings</source>
        <translation>elija un ensayo con lecturas</translation>
    </message>
</context>
<context>
    <name>claims</name>
    <message>
        <source>Run %1, %2</source>
        <translation>Ensayo %1, %2</translation>
    </message>
    <message>
        <source>%1: delivered at the socket from full to cut-off at this load.</source>
        <translation>%1: entregada en la toma de lleno a corte, a esta carga.</translation>
    </message>
    <message>
        <source>Not tested: %1.</source>
        <translation>Sin ensayar: %1.</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>energía asignada</translation>
    </message>
    <message>
        <source>there is no drain from full to cut-off with its energy known</source>
        <translation>no hay ninguna descarga de lleno a corte con la energía conocida</translation>
    </message>
    <message>
        <source>What the battery holds inside is not measured.</source>
        <translation>Lo que contiene la batería por dentro no se mide.</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>there is no peak-output run with a known load</source>
        <translation>no hay ningún ensayo de potencia de pico con carga conocida</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>potencia asignada</translation>
    </message>
    <message>
        <source>there is no sustained-output run with a known load</source>
        <translation>no hay ningún ensayo de potencia sostenida con carga conocida</translation>
    </message>
    <message>
        <source>Runs disagree.</source>
        <translation>Los ensayos discrepan.</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>tiempo de recarga</translation>
    </message>
    <message>
        <source>there is no charge from cut-off to full that is not from PV</source>
        <translation>no hay ninguna recarga de corte a lleno que no sea desde FV</translation>
    </message>
    <message>
        <source>Mean of %1 charges. The latest: %2</source>
        <translation>Media de %1 recargas. La última: %2</translation>
    </message>
    <message>
        <source>power of the PV input</source>
        <translation>potencia de la entrada FV</translation>
    </message>
    <message>
        <source>there is no charge from PV with a known power</source>
        <translation>no hay ninguna recarga desde FV con potencia conocida</translation>
    </message>
    <message>
        <source>%1. Peak: %2; the sun may have given no more.</source>
        <translation>%1. Pico: %2; quizá el sol no dio más.</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>se cumple</translation>
    </message>
    <message>
        <source>does not hold</source>
        <translation>no se cumple</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no alcanzado</translation>
    </message>
    <message>
        <source>not decided by this meter</source>
        <translation>este contador no lo decide</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>sin ensayar</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Decision rule: a claim holds where the measured value reaches it, whatever its interval: simple acceptance, JCGM 106:2012, 8.2. Near the claim such a verdict is wrong about every second time.</source>
        <translation>Regla de decisión: un dato declarado se cumple si el valor medido lo alcanza, sea cual sea su intervalo: aceptación simple, JCGM 106:2012, 8.2. Cerca del dato declarado, ese veredicto yerra más o menos una de cada dos veces.</translation>
    </message>
    <message>
        <source>Decision rule: a claim holds where the whole 95 % interval lies on its good side, and does not where it lies on the other; in between this meter does not decide it. Guarded acceptance and rejection, JCGM 106:2012, 8.3.</source>
        <translation>Regla de decisión: un dato declarado se cumple si todo el intervalo del 95 % queda en su lado favorable, y no se cumple si queda en el otro; entre ambos, este contador no lo decide. Aceptación y rechazo con banda de guarda, JCGM 106:2012, 8.3.</translation>
    </message>
</context>
<context>
    <name>commands</name>
    <message>
        <source>there is no such file or folder</source>
        <translation>no existe ese archivo ni esa carpeta</translation>
    </message>
    <message>
        <source>name a logbook, or the folder that it is to stand in</source>
        <translation>nombre un cuaderno, o la carpeta en la que ha de estar</translation>
    </message>
    <message>
        <source>a logbook, or a folder for one: whether it can be recorded into there</source>
        <translation>un cuaderno, o una carpeta para uno: si allí se puede anotar en él</translation>
    </message>
    <message>
        <source>Write the charts of every run and of the comparison as PNG and SVG</source>
        <translation>Escribe los gráficos de cada ensayo y de la comparación como PNG y SVG</translation>
    </message>
    <message>
        <source>Write the report of one run, the comparison, a sizing or a PV check as PDF or HTML</source>
        <translation>Escribe como PDF o HTML el informe de un ensayo, de la comparación, de un dimensionado o de una comprobación FV</translation>
    </message>
    <message>
        <source>Open the window on a logbook, show every page and tab of it in turn, and end; records nothing</source>
        <translation>Abre la ventana con un cuaderno, muestra por turno cada página y pestaña, y termina; no anota nada</translation>
    </message>
    <message>
        <source>Say what the program finds here: versions, fonts, writable places, desktop services</source>
        <translation>Dice qué encuentra aquí el programa: versiones, tipos de letra, lugares en los que se puede escribir, servicios del escritorio</translation>
    </message>
    <message>
        <source>logbook, run sheet (.csv), or folder of run sheets</source>
        <translation>cuaderno, hoja de ensayo (.csv) o carpeta de hojas de ensayo</translation>
    </message>
    <message>
        <source>folder for the pictures, made when missing</source>
        <translation>carpeta para las imágenes; se crea si no existe</translation>
    </message>
    <message>
        <source>in the colours for dim surroundings</source>
        <translation>con los colores para entornos oscuros</translation>
    </message>
    <message>
        <source>on white, for paper</source>
        <translation>sobre blanco, para papel</translation>
    </message>
    <message>
        <source>without title, key and source, which then stand in your text</source>
        <translation>sin título, leyenda ni fuente, que van entonces en el texto de usted</translation>
    </message>
    <message>
        <source>leave out the charts of the runs and the units</source>
        <translation>omite los gráficos de los ensayos y de los equipos</translation>
    </message>
    <message>
        <source>also the comparison at this common load, W</source>
        <translation>también la comparación a esta misma carga, W</translation>
    </message>
    <message>
        <source>share of the time that the load is on, %</source>
        <translation>parte del tiempo en que la carga está en marcha, %</translation>
    </message>
    <message>
        <source>width of a picture, 254 unless told</source>
        <translation>ancho de una imagen, 254 si no se indica</translation>
    </message>
    <message>
        <source>height of a picture, 143 unless told</source>
        <translation>alto de una imagen, 143 si no se indica</translation>
    </message>
    <message>
        <source>sharpness of PNG, 192 unless told</source>
        <translation>nitidez de los PNG, 192 si no se indica</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>no se puede crear la carpeta</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>elija una carpeta en la que pueda escribir</translation>
    </message>
    <message numerus="yes">
        <source>%n pictures are in %1</source>
        <comment>%n pictures are in %1</comment>
        <translation>
            <numerusform>hay %n imagen en %1</numerusform>
            <numerusform>hay %n imágenes en %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; see %2</source>
        <translation>%1; véase %2</translation>
    </message>
    <message>
        <source>the run to report, UNIT/N; the number alone where there is one unit</source>
        <translation>el ensayo del informe, UNIT/N; solo el número si hay un único equipo</translation>
    </message>
    <message>
        <source>report the comparison of the units, as tested or at one load</source>
        <translation>informe de la comparación de los equipos, según ensayo o a una misma carga</translation>
    </message>
    <message>
        <source>the unit to report, with all its runs</source>
        <translation>el equipo del informe, con todos sus ensayos</translation>
    </message>
    <message>
        <source>sections of a unit&apos;s report, with commas between them; all where none is named</source>
        <translation>secciones del informe de un equipo, separadas por comas; todas si no se nombra ninguna</translation>
    </message>
    <message>
        <source>a unit&apos;s report on two pages</source>
        <translation>el informe de un equipo en dos páginas</translation>
    </message>
    <message>
        <source>in a unit&apos;s report: every photo of its runs; none else</source>
        <translation>en el informe de un equipo: todas las fotos de sus ensayos; si no, ninguna</translation>
    </message>
    <message>
        <source>report the sizing for this load list: its name in the logbook, or a file (.csv)</source>
        <translation>informe del dimensionado para esta lista de cargas: su nombre en el cuaderno, o un archivo (.csv)</translation>
    </message>
    <message>
        <source>report the PV input check of this sheet: its name in the logbook, or a file</source>
        <translation>informe de la comprobación de la entrada FV de esta hoja: su nombre en el cuaderno, o un archivo</translation>
    </message>
    <message>
        <source>in a comparison: a row for each drain instead of one for each unit</source>
        <translation>en una comparación: una fila por cada descarga en vez de una por cada equipo</translation>
    </message>
    <message>
        <source>in a comparison: common load, W; a unit that cannot be converted to it stays as tested</source>
        <translation>en una comparación: carga común, W; un equipo que no se puede convertir a ella queda según ensayo</translation>
    </message>
    <message>
        <source>in a comparison: keys of the columns wanted, in order, or readers or spreadsheet</source>
        <translation>en una comparación: claves de las columnas que se quieren, en orden, o readers o spreadsheet</translation>
    </message>
    <message>
        <source>with what is the tester&apos;s own: tags, prices paid, remarks, advice</source>
        <translation>con lo que es solo del ensayador: etiquetas, precios pagados, observaciones, consejos</translation>
    </message>
    <message>
        <source>file to write; its ending, .pdf or .html, chooses the form</source>
        <translation>archivo que se escribe; su terminación, .pdf o .html, decide la forma</translation>
    </message>
    <message>
        <source>its tables (HTML) and pictures (PNG) as files too, in a folder beside it</source>
        <translation>además, sus tablas (HTML) e imágenes (PNG) como archivos, en una carpeta al lado</translation>
    </message>
    <message>
        <source>a4 or letter</source>
        <translation>a4 o letter</translation>
    </message>
    <message>
        <source>whose decimal sign is written, e.g. de_DE or en_US</source>
        <translation>de quién es el signo decimal que se escribe, por ejemplo de_DE o en_US</translation>
    </message>
    <message>
        <source>report saved to %1</source>
        <translation>informe guardado en %1</translation>
    </message>
    <message>
        <source>its tables and pictures: %1</source>
        <translation>sus tablas e imágenes: %1</translation>
    </message>
    <message>
        <source>`%1` names no run; write UNIT/N, e.g. &quot;Osk 1200/2&quot;</source>
        <translation>`%1` no nombra ningún ensayo; escriba UNIT/N, por ejemplo &quot;Osk 1200/2&quot;</translation>
    </message>
    <message>
        <source>several units are named `%1`</source>
        <translation>varios equipos se llaman `%1`</translation>
    </message>
    <message>
        <source>give the units names of their own</source>
        <translation>dé a cada equipo un nombre propio</translation>
    </message>
    <message>
        <source>%1: the photo cannot be shown; it is left out</source>
        <translation>%1: la foto no se puede mostrar; se omite</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>no hay columna `%1`</translation>
    </message>
    <message>
        <source>`ullage compare --help` lists them</source>
        <translation>`ullage compare --help` las enumera</translation>
    </message>
    <message>
        <source>choose --run UNIT/N, --unit UNIT, --compare, --size LIST or --pv SHEET</source>
        <translation>elija --run UNIT/N, --unit UNIT, --compare, --size LIST o --pv SHEET</translation>
    </message>
    <message>
        <source>says: %1</source>
        <translation>dice: %1</translation>
    </message>
    <message>
        <source>the folder is not empty</source>
        <translation>la carpeta no está vacía</translation>
    </message>
    <message>
        <source>name a new one</source>
        <translation>nombre una nueva</translation>
    </message>
    <message>
        <source>logbook file</source>
        <translation>archivo del cuaderno</translation>
    </message>
    <message>
        <source>a new or empty folder: write a PNG of each page into it</source>
        <translation>una carpeta nueva o vacía: escribe en ella un PNG de cada página</translation>
    </message>
    <message>
        <source>of the window</source>
        <translation>de la ventana</translation>
    </message>
    <message>
        <source>size of texts, of that of the desktop</source>
        <translation>tamaño de los textos, respecto al del escritorio</translation>
    </message>
    <message>
        <source>in the dark theme</source>
        <translation>con el tema oscuro</translation>
    </message>
    <message>
        <source>What is read, one --read for each value: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]</source>
        <translation>Qué se lee, un --read por cada valor: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]</translation>
    </message>
    <message>
        <source>register, power, voltage, current; gauge or output of the unit itself</source>
        <translation>register, power, voltage, current; gauge u output del propio equipo</translation>
    </message>
    <message>
        <source>power holding 52 as f32 in W; registers count from 0; input or holding; types u16 s16 u32 s32</source>
        <translation>power holding 52 as f32 in W; los registros cuentan desde 0; input u holding; tipos u16 s16 u32 s32</translation>
    </message>
    <message>
        <source>u64 s64 f32 f64; behind the type: low-word-first, bytes-swapped</source>
        <translation>u64 s64 f32 f64; detrás del tipo: low-word-first, bytes-swapped</translation>
    </message>
    <message>
        <source>sunspec imported, sunspec exported: the meter model that the device names</source>
        <translation>sunspec imported, sunspec exported: el modelo de contador que nombra el aparato</translation>
    </message>
    <message>
        <source>power bench/plug/power, or power bench/plug#/power for JSON</source>
        <translation>power bench/plug/power, o power bench/plug#/power para JSON</translation>
    </message>
    <message>
        <source>power #/meters/0/power, or power body for a plain number</source>
        <translation>power #/meters/0/power, o power body para un simple número</translation>
    </message>
    <message>
        <source>power column 3 in W, or detect</source>
        <translation>power column 3 in W, o detect</translation>
    </message>
    <message>
        <source>A password is asked for at the terminal, or taken from ULLAGE_SOURCE_PASSWORD. It is not kept.</source>
        <translation>Una contraseña se pide en el terminal, o se toma de ULLAGE_SOURCE_PASSWORD. No se guarda.</translation>
    </message>
    <message>
        <source>Meters in mains circuits are installed by licensed people; local codes come first.</source>
        <translation>Los contadores en circuitos de red los instala personal autorizado; los reglamentos locales van primero.</translation>
    </message>
    <message>
        <source>number of the run; without it every running run whose meter has a source</source>
        <translation>número del ensayo; sin él, todos los ensayos en curso cuyo contador tiene una fuente</translation>
    </message>
    <message>
        <source>name of the unit</source>
        <translation>nombre del equipo</translation>
    </message>
    <message>
        <source>kind of the source; without it the one kept with the meter of the run</source>
        <translation>tipo de la fuente; sin él, la guardada con el contador del ensayo</translation>
    </message>
    <message>
        <source>HOST[:PORT], a URL, or a device file</source>
        <translation>HOST[:PORT], un URL o un archivo de dispositivo</translation>
    </message>
    <message>
        <source>one value that is read, see below</source>
        <translation>un valor que se lee, véase abajo</translation>
    </message>
    <message>
        <source>Modbus: unit identifier</source>
        <translation>Modbus: identificador de la unidad</translation>
    </message>
    <message>
        <source>serial line: speed, bits, parity, stop bits, as in 9600 8N1</source>
        <translation>línea serie: velocidad, bits, paridad, bits de parada, como en 9600 8N1</translation>
    </message>
    <message>
        <source>seconds between two questions</source>
        <translation>segundos entre dos consultas</translation>
    </message>
    <message>
        <source>MQTT: secured</source>
        <translation>MQTT: con cifrado</translation>
    </message>
    <message>
        <source>MQTT and HTTP: user name</source>
        <translation>MQTT y HTTP: nombre de usuario</translation>
    </message>
    <message>
        <source>keep this source with the meter of the run, for the next time</source>
        <translation>guarda esta fuente con el contador del ensayo, para la próxima vez</translation>
    </message>
    <message>
        <source>show what comes, record nothing</source>
        <translation>muestra lo que llega, no anota nada</translation>
    </message>
    <message>
        <source>end when every output has gone off</source>
        <translation>termina cuando se han apagado todas las salidas</translation>
    </message>
    <message>
        <source>end after so many seconds</source>
        <translation>termina al cabo de tantos segundos</translation>
    </message>
    <message>
        <source>Read meters live into running runs, without a window, until interrupted</source>
        <translation>Lee contadores en directo en los ensayos en curso, sin ventana, hasta que se interrumpe</translation>
    </message>
    <message>
        <source>Password of %1 at %2:</source>
        <translation>Contraseña de %1 en %2:</translation>
    </message>
    <message>
        <source>no source is kept with the meter of this run</source>
        <translation>con el contador de este ensayo no hay guardada ninguna fuente</translation>
    </message>
    <message>
        <source>state it with --kind, --address and --read; --keep keeps it</source>
        <translation>indíquela con --kind, --address y --read; --keep la guarda</translation>
    </message>
    <message>
        <source>units of several makers have this name and run</source>
        <translation>equipos de varios fabricantes tienen este nombre y este ensayo</translation>
    </message>
    <message>
        <source>rename one of them</source>
        <translation>cambie el nombre de uno de ellos</translation>
    </message>
    <message>
        <source>the run names no meter that could keep a source</source>
        <translation>el ensayo no nombra ningún contador que pudiera guardar una fuente</translation>
    </message>
    <message>
        <source>name its meter first, or leave --keep</source>
        <translation>nombre antes su contador, o prescinda de --keep</translation>
    </message>
    <message>
        <source>no running run has a meter with a source</source>
        <translation>ningún ensayo en curso tiene un contador con una fuente</translation>
    </message>
    <message>
        <source>name a run with --run, and its source with --kind</source>
        <translation>nombre un ensayo con --run, y su fuente con --kind</translation>
    </message>
    <message>
        <source>%1: %2 at %3 (by %4): %5</source>
        <translation>%1: %2, %3 (a más tardar %4): %5</translation>
    </message>
    <message>
        <source>%1: %2 at %3: %4</source>
        <translation>%1: %2, %3: %4</translation>
    </message>
    <message>
        <source>%1: no longer read: %2</source>
        <translation>%1: ya no se lee: %2</translation>
    </message>
    <message>
        <source>%1: reading %2</source>
        <translation>%1: se lee %2</translation>
    </message>
    <message>
        <source>Ended. %1</source>
        <translation>Terminado. %1</translation>
    </message>
    <message>
        <source>Reading; interrupt (Ctrl+C) to end</source>
        <translation>Leyendo; interrumpa (Ctrl+C) para terminar</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1, ensayo %2</translation>
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
        <translation>%1 % en el indicador</translation>
    </message>
    <message>
        <source>%1 W by the unit</source>
        <translation>%1 W según el equipo</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>conectado, aún no ha llegado nada</translation>
    </message>
    <message>
        <source>nothing has come yet</source>
        <translation>aún no ha llegado nada</translation>
    </message>
    <message>
        <source>%1, %2 s ago</source>
        <translation>%1, hace %2 s</translation>
    </message>
    <message>
        <source>%1, %2 a second</source>
        <translation>%1, %2 por segundo</translation>
    </message>
    <message numerus="yes">
        <source>%n samples taken</source>
        <comment>%n sample taken</comment>
        <translation>
            <numerusform>%n muestra tomada</numerusform>
            <numerusform>%n muestras tomadas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 left out</source>
        <translation>%1, %2 omitidas</translation>
    </message>
    <message>
        <source>%1, %2 lost</source>
        <translation>%1, %2 perdidas</translation>
    </message>
    <message>
        <source>the machine&apos;s clock has been set, samples go on by the steady one</source>
        <translation>se cambió la hora de la máquina, las muestras siguen el reloj continuo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>There are no runs yet. Add one with: ullage import LOGBOOK SHEET</source>
        <translation>Aún no hay ensayos. Añada uno con: ullage import LOGBOOK SHEET</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, run %2: %3</source>
        <translation>%1, ensayo %2: %3</translation>
    </message>
    <message>
        <source>ended: %1</source>
        <translation>final: %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>asignada %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>contador %1</translation>
    </message>
    <message>
        <source>Assumed of the register</source>
        <translation>Supuestos sobre el registro</translation>
    </message>
    <message>
        <source>%1 (about %2 may be missing)</source>
        <translation>%1 (pueden faltar unos %2)</translation>
    </message>
    <message>
        <source>Of the meter</source>
        <translation>Del contador</translation>
    </message>
    <message>
        <source>Uncertainty of the delivered energy</source>
        <translation>Incertidumbre de la energía entregada</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>correlación</translation>
    </message>
    <message>
        <source>type</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>grados de libertad</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>sensibilidad</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>incertidumbre típica</translation>
    </message>
    <message>
        <source>share</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>95 % interval ±%1 Wh</source>
        <translation>intervalo del 95 % ±%1 Wh</translation>
    </message>
    <message>
        <source>95 % interval ±%1 Wh: %2</source>
        <translation>intervalo del 95 % ±%1 Wh: %2</translation>
    </message>
    <message>
        <source>Where the energy went</source>
        <translation>Adónde fue la energía</translation>
    </message>
    <message>
        <source>Gauge: %1</source>
        <translation>Indicador: %1</translation>
    </message>
    <message>
        <source>[%1] %2</source>
        <translation>[%1] %2</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalos</translation>
    </message>
    <message>
        <source>%1: there is no copy</source>
        <translation>%1: no hay ninguna copia</translation>
    </message>
    <message>
        <source>%1: it holds nothing yet, so no copy was made</source>
        <translation>%1: aún no contiene nada, así que no se ha hecho ninguna copia</translation>
    </message>
    <message>
        <source>%1: copied to %2</source>
        <translation>%1: copiado en %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n older copies removed</source>
        <comment>%1, %n older copy removed</comment>
        <translation>
            <numerusform>%1, %n copia más antigua eliminada</numerusform>
            <numerusform>%1, %n copias más antiguas eliminadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Charge: %1</source>
        <translation>Recarga: %1</translation>
    </message>
    <message>
        <source>the power began to fall at a gauge of %1 %</source>
        <translation>la potencia empezó a bajar con el indicador al %1 %</translation>
    </message>
    <message>
        <source>Output: %1. %2</source>
        <translation>Potencia: %1. %2</translation>
    </message>
    <message>
        <source>trips %1, resets %2</source>
        <translation>disparos %1, rearmes %2</translation>
    </message>
    <message>
        <source>%1: not known: %2</source>
        <translation>%1: no se conoce: %2</translation>
    </message>
    <message>
        <source>%1: %2 (%3), %4 a day, %5 a month; %6</source>
        <translation>%1: %2 (%3), %4 al día, %5 al mes; %6</translation>
    </message>
    <message>
        <source>%1 %2 a day, %3 %2 a month, %4</source>
        <translation>%1 %2 al día, %3 %2 al mes, %4</translation>
    </message>
    <message>
        <source>run %1 put in %2, run %3 gave back %4, %5</source>
        <translation>el ensayo %1 cargó %2, el ensayo %3 devolvió %4, %5</translation>
    </message>
    <message>
        <source>What the unit takes for itself</source>
        <translation>Lo que el equipo toma para sí</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>salida encendida</translation>
    </message>
    <message>
        <source>output off</source>
        <translation>salida apagada</translation>
    </message>
    <message>
        <source>`%1` is no number; write one such as 431 or 0.5</source>
        <translation>`%1` no es un número; escriba uno como 431 o 0.5</translation>
    </message>
    <message>
        <source>`%1` is far beyond anything that is measured; the most is %2</source>
        <translation>`%1` está muy por encima de todo lo que se mide; el máximo es %2</translation>
    </message>
    <message>
        <source>`%1` is no number above 0</source>
        <translation>`%1` no es un número mayor que 0</translation>
    </message>
    <message>
        <source>`%1` is no number from 0 up</source>
        <translation>`%1` no es un número de 0 o más</translation>
    </message>
    <message>
        <source>`%1` is no number from %2 to %3</source>
        <translation>`%1` no es un número de %2 a %3</translation>
    </message>
    <message>
        <source>replace also a file that this program did not write as it is, an input of this call, or a logbook that nobody uses</source>
        <translation>reemplaza también un archivo que este programa no escribió tal como está, un archivo que esta llamada lee o un cuaderno que nadie usa</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 o %2</translation>
    </message>
    <message>
        <source>check where it goes to</source>
        <translation>compruebe adónde va</translation>
    </message>
    <message>
        <source>the result could not be written</source>
        <translation>no se pudo escribir el resultado</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>salida estándar</translation>
    </message>
    <message>
        <source>sheet of a workbook: its name, or its number from 1</source>
        <translation>hoja de un libro de cálculo: su nombre, o su número desde 1</translation>
    </message>
    <message>
        <source>columns of a table, by number, letter or title: 1=time,B=gauge,Plug=register:kWh; roles are time, date, elapsed, gauge, register, load-power, display-power, mark, remark, run, unit, unused</source>
        <translation>columnas de una tabla, por número, letra o título: 1=time,B=gauge,Plug=register:kWh; los papeles son time, date, elapsed, gauge, register, load-power, display-power, mark, remark, run, unit, unused</translation>
    </message>
    <message>
        <source>day-first or month-first</source>
        <translation>day-first (primero el día) o month-first (primero el mes)</translation>
    </message>
    <message>
        <source>decimal sign: comma or point</source>
        <translation>signo decimal: comma (coma) o point (punto)</translation>
    </message>
    <message>
        <source>tab, semicolon, bar, comma or blanks</source>
        <translation>tab (tabulador), semicolon (punto y coma), bar (barra), comma (coma) o blanks (espacios)</translation>
    </message>
    <message>
        <source>unit of a register that names none: Wh, kWh or J</source>
        <translation>unidad de medida de un registro que no nombra ninguna: Wh, kWh o J</translation>
    </message>
    <message>
        <source>unit of times that count from the start: h, min or s</source>
        <translation>unidad de medida de los tiempos contados desde el inicio: h, min o s</translation>
    </message>
    <message>
        <source>a gauge of 0.69 is a share (69 %) or percent</source>
        <translation>un indicador de 0.69 es una parte (69 %) o un porcentaje</translation>
    </message>
    <message>
        <source>what h:mm means: clock (time of day) or elapsed</source>
        <translation>qué significa h:mm: clock (hora del día) o elapsed (transcurrido)</translation>
    </message>
    <message>
        <source>what begins anew behind an empty row: separate runs, or one</source>
        <translation>qué empieza de nuevo tras una fila vacía: ensayos separados, o uno solo</translation>
    </message>
    <message>
        <source>keep rows as the log of a meter, with the first, the last and those with a remark as readings, or all as readings; where not given a run of 1000 rows or more, at most two minutes apart, is a log</source>
        <translation>guarda las filas como grabación de un contador, con la primera, la última y las que tienen una observación como lecturas, o todas como lecturas; si no se indica, un ensayo de 1000 filas o más, separadas por dos minutos como máximo, es una grabación</translation>
    </message>
    <message>
        <source>year of dates that name none</source>
        <translation>año de las fechas que no nombran ninguno</translation>
    </message>
    <message>
        <source>when the run began, where its table names no date; again for each further run</source>
        <translation>cuándo empezó el ensayo, si su tabla no nombra una fecha; otra vez por cada ensayo más</translation>
    </message>
    <message>
        <source>time zone of the table; that of this machine where not given</source>
        <translation>zona horaria de la tabla; la de esta máquina si no se indica</translation>
    </message>
    <message>
        <source>name of the unit, where the table names none</source>
        <translation>nombre del equipo, si la tabla no nombra ninguno</translation>
    </message>
    <message>
        <source>rated energy of a unit that the logbook does not know, Wh, or not-known; of several UNIT=WH for each</source>
        <translation>energía asignada de un equipo que el cuaderno no conoce, Wh, o not-known; si son varios, UNIT=WH por cada uno</translation>
    </message>
    <message>
        <source>name of the meter, or not-known</source>
        <translation>nombre del contador, o not-known</translation>
    </message>
    <message>
        <source>error limit of a meter that the logbook does not know, % of reading, or not-known</source>
        <translation>límite de error de un contador que el cuaderno no conoce, % de la lectura, o not-known</translation>
    </message>
    <message>
        <source>name of the meter of the column second-register, or not-known</source>
        <translation>nombre del contador de la columna second-register, o not-known</translation>
    </message>
    <message>
        <source>its error limit where the logbook does not know it, or not-known</source>
        <translation>su límite de error si el cuaderno no lo conoce, o not-known</translation>
    </message>
    <message>
        <source>how a run ended whose table does not say: cut-off, found-off, stopped, running or not-known</source>
        <translation>cómo terminó un ensayo cuya tabla no lo dice: cut-off (corte), found-off (hallado apagado), stopped (detenido), running (en curso) o not-known</translation>
    </message>
    <message>
        <source>yes, no or not-known</source>
        <translation>yes, no o not-known</translation>
    </message>
    <message>
        <source>drain, no-load-drain, charge or standby; drain where not given</source>
        <translation>drain (descarga), no-load-drain (descarga en vacío), charge (recarga) o standby (reposo); drain si no se indica</translation>
    </message>
    <message>
        <source>the load, in your words</source>
        <translation>la carga, con sus palabras</translation>
    </message>
    <message>
        <source>say how a table is understood, import nothing</source>
        <translation>dice cómo se entiende una tabla, no importa nada</translation>
    </message>
    <message>
        <source>run sheets, foreign tables of readings (CSV, XLSX, ODS, HTML), or folders of export-folder, each whole or not at all</source>
        <translation>hojas de ensayo, tablas ajenas de lecturas (CSV, XLSX, ODS, HTML) o carpetas de export-folder; cada una entra entera o no entra</translation>
    </message>
    <message>
        <source>log file: rows of text with a time and a register, a power or the gauge of the unit</source>
        <translation>archivo de la grabación: filas de texto con hora y un registro, una potencia o el indicador del equipo</translation>
    </message>
    <message>
        <source>number of the run</source>
        <translation>número del ensayo</translation>
    </message>
    <message>
        <source>meter that wrote the log; that of the run where not given; another than the run&apos;s is compared with it</source>
        <translation>contador que escribió la grabación; el del ensayo si no se indica; otro que no sea el del ensayo se compara con él</translation>
    </message>
    <message>
        <source>columns, counted from 1: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A of a meter; gauge=7,output=8:W of the unit itself</source>
        <translation>columnas, contadas desde 1: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A de un contador; gauge=7,output=8:W del propio equipo</translation>
    </message>
    <message>
        <source>day-first, month-first or year-first</source>
        <translation>day-first (primero el día), month-first (primero el mes) o year-first (primero el año)</translation>
    </message>
    <message>
        <source>what h:mm:ss means: clock (time of day) or elapsed</source>
        <translation>qué significa h:mm:ss: clock (hora del día) o elapsed (transcurrido)</translation>
    </message>
    <message>
        <source>time zone of times without an offset; that of the run where not given</source>
        <translation>zona horaria de las horas sin desfase; la del ensayo si no se indica</translation>
    </message>
    <message>
        <source>when the log was started, for times that count from the start or name no date</source>
        <translation>cuándo empezó la grabación, para tiempos contados desde el inicio o que no nombran una fecha</translation>
    </message>
    <message>
        <source>added to the times of the log, [-]h:mm:ss: how far the meter&apos;s clock was behind</source>
        <translation>se suma a las horas de la grabación, [-]h:mm:ss: cuánto iba atrasado el reloj del contador</translation>
    </message>
    <message>
        <source>the same in seconds, or `estimate`: from the hand readings of the run</source>
        <translation>lo mismo en segundos, o `estimate`: según las lecturas a mano del ensayo</translation>
    </message>
    <message>
        <source>longest time between rows that is no gap, s</source>
        <translation>tiempo máximo entre filas que no es un hueco, s</translation>
    </message>
    <message>
        <source>say what would be taken, import nothing</source>
        <translation>dice qué se tomaría, no importa nada</translation>
    </message>
    <message>
        <source>another program is still writing it: go on taking what it gains, until interrupted</source>
        <translation>otro programa aún la está escribiendo: sigue tomando lo que gana, hasta que se interrumpe</translation>
    </message>
    <message>
        <source>end following when the log has gained nothing for so long, s</source>
        <translation>deja de seguirla cuando la grabación no ha ganado nada durante este tiempo, s</translation>
    </message>
    <message>
        <source>only runs of this unit</source>
        <translation>solo los ensayos de este equipo</translation>
    </message>
    <message>
        <source>only this run of the unit</source>
        <translation>solo este ensayo del equipo</translation>
    </message>
    <message>
        <source>text or json</source>
        <translation>text o json</translation>
    </message>
    <message>
        <source>price of a kWh, in the currency of the unit, for the cost of what a unit takes for itself</source>
        <translation>precio de un kWh, en la moneda del equipo, para el coste de lo que un equipo toma para sí</translation>
    </message>
    <message>
        <source>form of the table</source>
        <translation>forma de la tabla</translation>
    </message>
    <message>
        <source>file to write; its ending chooses the format where none is given</source>
        <translation>archivo que se escribe; su terminación decide la forma si no se indica ninguna</translation>
    </message>
    <message>
        <source>Columns of the comparison:</source>
        <translation>Columnas de la comparación:</translation>
    </message>
    <message>
        <source>Without --columns a table for people has those for readers; csv, json and xlsx have all.</source>
        <translation>Sin --columns, una tabla para personas tiene las columnas para lectores; csv, json y xlsx las tienen todas.</translation>
    </message>
    <message>
        <source>logbooks, run sheets (.csv) and folders of run sheets, one or several</source>
        <translation>cuadernos, hojas de ensayo (.csv) y carpetas de hojas de ensayo, uno o varios</translation>
    </message>
    <message>
        <source>a row for each drain instead of one for each unit</source>
        <translation>una fila por cada descarga en vez de una por cada equipo</translation>
    </message>
    <message>
        <source>common load, W: units are moved to it where their drains allow</source>
        <translation>carga común, W: los equipos se llevan a ella donde sus descargas lo permiten</translation>
    </message>
    <message>
        <source>common load from a load list: its name in the logbook, or a file (.csv)</source>
        <translation>carga común de una lista de cargas: su nombre en el cuaderno, o un archivo (.csv)</translation>
    </message>
    <message>
        <source>the models that units name, by their specimens</source>
        <translation>los modelos que nombran los equipos, por sus ejemplares</translation>
    </message>
    <message>
        <source>the differences between units: clearly different or too close to call</source>
        <translation>las diferencias entre equipos: claramente distintos o demasiado parecidos para decidir</translation>
    </message>
    <message>
        <source>figure that is compared</source>
        <translation>cifra que se compara</translation>
    </message>
    <message>
        <source>keys of the columns wanted, in order; or readers, spreadsheet, or a set that the logbook keeps</source>
        <translation>claves de las columnas que se quieren, en orden; o readers, spreadsheet o un conjunto que guarda el cuaderno</translation>
    </message>
    <message>
        <source>only units of this maker</source>
        <translation>solo los equipos de este fabricante</translation>
    </message>
    <message>
        <source>only units with this tag; named several times: with every one of them</source>
        <translation>solo los equipos con esta etiqueta; si se nombran varias: con todas ellas</translation>
    </message>
    <message>
        <source>only units rated at this or more, Wh</source>
        <translation>solo los equipos con esta energía asignada o más, Wh</translation>
    </message>
    <message>
        <source>only units rated at this or less, Wh</source>
        <translation>solo los equipos con esta energía asignada o menos, Wh</translation>
    </message>
    <message>
        <source>load lists (.csv), each whole or not at all</source>
        <translation>listas de cargas (.csv); cada una entra entera o no entra</translation>
    </message>
    <message>
        <source>load list (.csv)</source>
        <translation>lista de cargas (.csv)</translation>
    </message>
    <message>
        <source>only this list of the logbook, with its appliances</source>
        <translation>solo esta lista del cuaderno, con sus aparatos</translation>
    </message>
    <message>
        <source>the list as a file that import-loads takes</source>
        <translation>la lista como archivo que admite import-loads</translation>
    </message>
    <message>
        <source>a load list: its name in the logbook, or a file (.csv)</source>
        <translation>una lista de cargas: su nombre en el cuaderno, o un archivo (.csv)</translation>
    </message>
    <message>
        <source>only this unit</source>
        <translation>solo este equipo</translation>
    </message>
    <message>
        <source>one table instead of all: units, months, rules or course</source>
        <translation>una tabla en vez de todas: units (equipos), months (meses), rules (normas) o course (evolución)</translation>
    </message>
    <message>
        <source>the intervals between readings instead of the readings</source>
        <translation>los intervalos entre lecturas en vez de las lecturas</translation>
    </message>
    <message>
        <source>the steps of the gauge by its log, each timed to the sample, instead of the readings</source>
        <translation>los escalones del indicador según su grabación, cada uno situado en su muestra, en vez de las lecturas</translation>
    </message>
    <message>
        <source>file to write</source>
        <translation>archivo que se escribe</translation>
    </message>
    <message>
        <source>folder to make</source>
        <translation>carpeta que se crea</translation>
    </message>
    <message>
        <source>logbook that is added to</source>
        <translation>cuaderno al que se añade</translation>
    </message>
    <message>
        <source>logbook that is only read</source>
        <translation>cuaderno que solo se lee</translation>
    </message>
    <message>
        <source>differences that are taken from the other logbook: `all`, `newer` (changed there alone) or ids that --dry-run shows; the rest stays as it is in LOGBOOK</source>
        <translation>diferencias que se toman del otro cuaderno: `all` (todas), `newer` (las cambiadas solo allí) o identificadores que muestra --dry-run; lo demás queda como está en LOGBOOK</translation>
    </message>
    <message>
        <source>say what would come of it, change nothing</source>
        <translation>dice qué resultaría, no cambia nada</translation>
    </message>
    <message>
        <source>folder of the copies; beside the logbook where not given</source>
        <translation>carpeta de las copias; junto al cuaderno si no se indica</translation>
    </message>
    <message>
        <source>older copies of this logbook are removed, but for the newest; 30 where not given</source>
        <translation>las copias más antiguas de este cuaderno se eliminan, salvo la más reciente; 30 si no se indica</translation>
    </message>
    <message>
        <source>list the copies that there are, make none</source>
        <translation>enumera las copias que hay, no hace ninguna</translation>
    </message>
    <message>
        <source>PV sheet: a file of lines `key: value`; the keys are the options below with _ for -</source>
        <translation>hoja FV: un archivo de líneas `key: value`; las claves son las opciones de abajo con _ en vez de -</translation>
    </message>
    <message>
        <source>logbook that holds the unit, or the sheet</source>
        <translation>cuaderno que contiene el equipo o la hoja</translation>
    </message>
    <message>
        <source>a PV sheet of the logbook instead of a file</source>
        <translation>una hoja FV del cuaderno en vez de un archivo</translation>
    </message>
    <message>
        <source>Bring run sheets and foreign tables of readings into a logbook, made when missing</source>
        <translation>Lleva hojas de ensayo y tablas ajenas de lecturas a un cuaderno, que se crea si no existe</translation>
    </message>
    <message>
        <source>Bring the log of a meter into a run; how it is read is detected and said</source>
        <translation>Lleva la grabación de un contador a un ensayo; reconoce cómo se lee y lo dice</translation>
    </message>
    <message>
        <source>Say what each run shows, and when one still running should end (as of its last reading)</source>
        <translation>Dice qué muestra cada ensayo, y cuándo debería terminar el que aún está en curso (a la hora de su última lectura)</translation>
    </message>
    <message>
        <source>Compare the units of one or several logbooks, as tested or at one load</source>
        <translation>Compara los equipos de uno o varios cuadernos, según ensayo o a una misma carga</translation>
    </message>
    <message>
        <source>Write the readings of one run or of all runs as a table</source>
        <translation>Escribe las lecturas de un ensayo o de todos como tabla</translation>
    </message>
    <message>
        <source>Write one run as a run sheet</source>
        <translation>Escribe un ensayo como hoja de ensayo</translation>
    </message>
    <message>
        <source>Write a whole logbook as a folder: run sheets, photos, logs, lists</source>
        <translation>Escribe un cuaderno entero como carpeta: hojas de ensayo, fotos, grabaciones, listas</translation>
    </message>
    <message>
        <source>Bring what another logbook has into a logbook, and say what differs</source>
        <translation>Trae a un cuaderno lo que otro tiene de más, y dice en qué difieren</translation>
    </message>
    <message>
        <source>Make the copy of the day of a logbook, or list its copies</source>
        <translation>Hace la copia del día de un cuaderno, o enumera sus copias</translation>
    </message>
    <message>
        <source>Check a PV string against the PV input of a unit: cold, hot, current, power</source>
        <translation>Compara una cadena FV con la entrada FV de un equipo: frío, calor, corriente, potencia</translation>
    </message>
    <message>
        <source>Bring load lists into a logbook, made when missing</source>
        <translation>Lleva listas de cargas a un cuaderno, que se crea si no existe</translation>
    </message>
    <message>
        <source>Say what load lists take: of one file, or all of a logbook</source>
        <translation>Dice qué consumen las listas de cargas: la de un archivo, o todas las de un cuaderno</translation>
    </message>
    <message>
        <source>Say how long each unit carries a load list, how many are needed, and which PV array</source>
        <translation>Dice cuánto tiempo alimenta cada equipo una lista de cargas, cuántos hacen falta y qué generador FV</translation>
    </message>
    <message>
        <source>run sheets hold no load lists</source>
        <translation>las hojas de ensayo no contienen listas de cargas</translation>
    </message>
    <message>
        <source>name a logbook that has it, or a file of a load list (.csv)</source>
        <translation>nombre un cuaderno que la tenga, o un archivo de lista de cargas (.csv)</translation>
    </message>
    <message numerus="yes">
        <source>none of %n units passes the filter</source>
        <comment>none of %n unit passes the filter</comment>
        <translation>
            <numerusform>ninguno de %n equipo pasa el filtro</numerusform>
            <numerusform>ninguno de %n equipos pasa el filtro</numerusform>
        </translation>
    </message>
    <message>
        <source>leave one of these options out, or correct it</source>
        <translation>prescinda de una de estas opciones, o corríjala</translation>
    </message>
    <message>
        <source>no unit is rated above the least and below the most</source>
        <translation>ningún equipo tiene una energía asignada mayor que el mínimo y menor que el máximo</translation>
    </message>
    <message>
        <source>exchange the two</source>
        <translation>intercambie las dos</translation>
    </message>
    <message>
        <source>the load list takes nothing</source>
        <translation>la lista de cargas no consume nada</translation>
    </message>
    <message>
        <source>give it appliances, or name a load with --at-load</source>
        <translation>póngale aparatos, o indique una carga con --at-load</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n rows left out</source>
        <comment>%1, %n row left out</comment>
        <translation>
            <numerusform>%1, %n fila omitida</numerusform>
            <numerusform>%1, %n filas omitidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n samples to %2</source>
        <comment>%1: %n sample to %2</comment>
        <translation>
            <numerusform>%1: %n muestra hasta %2</numerusform>
            <numerusform>%1: %n muestras hasta %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Following the log; interrupt (Ctrl+C) to end</source>
        <translation>Se sigue la grabación; interrumpa (Ctrl+C) para terminar</translation>
    </message>
    <message>
        <source>The log was begun anew; it is read from its beginning</source>
        <translation>La grabación ha empezado de nuevo; se lee desde su principio</translation>
    </message>
    <message>
        <source>The log is not there; waiting for it</source>
        <translation>La grabación no está; se la espera</translation>
    </message>
    <message>
        <source>The log is there again</source>
        <translation>La grabación vuelve a estar</translation>
    </message>
    <message numerus="yes">
        <source>The run has this log already; %n new samples added</source>
        <comment>The run has this log already; %n new sample added</comment>
        <translation>
            <numerusform>El ensayo ya tiene esta grabación; %n muestra nueva añadida</numerusform>
            <numerusform>El ensayo ya tiene esta grabación; %n muestras nuevas añadidas</numerusform>
        </translation>
    </message>
    <message>
        <source>Forecast as of %1</source>
        <translation>Previsión a %1</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Previsión</translation>
    </message>
    <message>
        <source>cut-off: %1, in the middle %2; %3</source>
        <translation>corte: %1, en el centro %2; %3</translation>
    </message>
    <message>
        <source>cut-off: not known: %1</source>
        <translation>corte: no se conoce: %1</translation>
    </message>
    <message>
        <source>gauge at %1 %: %2</source>
        <translation>indicador al %1 %: %2</translation>
    </message>
    <message>
        <source>next gauge step: not known: %1</source>
        <translation>próximo escalón del indicador: no se conoce: %1</translation>
    </message>
    <message>
        <source>Two accounts</source>
        <translation>Dos versiones</translation>
    </message>
    <message>
        <source>%1: already in the logbook as run %2 of %3, left out</source>
        <translation>%1: ya está en el cuaderno como ensayo %2 de %3; se omite</translation>
    </message>
    <message numerus="yes">
        <source>%1: run %2 of %3, %4 with %n readings</source>
        <comment>%1: run %2 of %3, %4 with %n reading</comment>
        <translation>
            <numerusform>%1: ensayo %2 de %3, %4 con %n lectura</numerusform>
            <numerusform>%1: ensayo %2 de %3, %4 con %n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>the folder holds no run sheet</source>
        <translation>la carpeta no contiene ninguna hoja de ensayo</translation>
    </message>
    <message>
        <source>name a folder with .csv run sheets</source>
        <translation>nombre una carpeta con hojas de ensayo .csv</translation>
    </message>
    <message>
        <source>`%1` names no column and role</source>
        <translation>`%1` no nombra una columna y un papel</translation>
    </message>
    <message>
        <source>write it like %1; the roles are in the help of the command</source>
        <translation>escríbalo como %1; los papeles están en la ayuda del comando</translation>
    </message>
    <message>
        <source>the table has no column `%1`</source>
        <translation>la tabla no tiene columna `%1`</translation>
    </message>
    <message>
        <source>name one by its number from 1 to %1, its letter or its title</source>
        <translation>nombre una por su número de 1 a %1, su letra o su título</translation>
    </message>
    <message>
        <source>`%1` is no unit</source>
        <translation>`%1` no es una unidad de medida</translation>
    </message>
    <message>
        <source>use Wh, kWh, W, kW, %, h, min or s</source>
        <translation>use Wh, kWh, W, kW, %, h, min o s</translation>
    </message>
    <message>
        <source>there is no sheet `%1`</source>
        <translation>no hay hoja `%1`</translation>
    </message>
    <message>
        <source>use --sheet with one of %1</source>
        <translation>use --sheet con una de %1</translation>
    </message>
    <message>
        <source>there are several sheets: %1</source>
        <translation>hay varias hojas: %1</translation>
    </message>
    <message>
        <source>name one with --sheet; nothing was imported</source>
        <translation>nombre una con --sheet; no se ha importado nada</translation>
    </message>
    <message>
        <source>give a number, or not-known</source>
        <translation>indique un número, o not-known</translation>
    </message>
    <message>
        <source>what the table does not say is asked once</source>
        <translation>lo que la tabla no dice se pregunta una vez</translation>
    </message>
    <message>
        <source>answer with %1; nothing was imported</source>
        <translation>responda con %1; no se ha importado nada</translation>
    </message>
    <message>
        <source>there is no time zone `%1`</source>
        <translation>no existe la zona horaria `%1`</translation>
    </message>
    <message>
        <source>name one such as %1</source>
        <translation>indique una como %1</translation>
    </message>
    <message>
        <source>correct the table, or map its columns with --map; nothing was imported</source>
        <translation>corrija la tabla, o asigne sus columnas con --map; no se ha importado nada</translation>
    </message>
    <message>
        <source>%1: nothing was imported (--preview)</source>
        <translation>%1: no se ha importado nada (--preview)</translation>
    </message>
    <message>
        <source>Run %1 of the table is already in the logbook as run %2 of %3, left out</source>
        <translation>El ensayo %1 de la tabla ya está en el cuaderno como ensayo %2 de %3; se omite</translation>
    </message>
    <message>
        <source>%1: every run of it is already in the logbook, nothing was imported</source>
        <translation>%1: todos sus ensayos están ya en el cuaderno, no se ha importado nada</translation>
    </message>
    <message numerus="yes">
        <source>run %1 of %2, %3 with %n readings</source>
        <comment>run %1 of %2, %3 with %n reading</comment>
        <translation>
            <numerusform>ensayo %1 de %2, %3 con %n lectura</numerusform>
            <numerusform>ensayo %1 de %2, %3 con %n lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and a log of %n rows</source>
        <comment>%1 and a log of %n row</comment>
        <translation>
            <numerusform>%1 y una grabación de %n fila</numerusform>
            <numerusform>%1 y una grabación de %n filas</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` names no column</source>
        <translation>`%1` no nombra ninguna columna</translation>
    </message>
    <message>
        <source>write it like %1, columns counted from 1</source>
        <translation>escríbalo como %1, con columnas contadas desde 1</translation>
    </message>
    <message>
        <source>`%1` is no time</source>
        <translation>`%1` no es un tiempo</translation>
    </message>
    <message>
        <source>write it like 00:00:12 or -00:01:30.5: hours, minutes, seconds</source>
        <translation>escríbalo como 00:00:12 o -00:01:30.5: horas, minutos, segundos</translation>
    </message>
    <message>
        <source>`%1` is no offset</source>
        <translation>`%1` no es un desfase</translation>
    </message>
    <message>
        <source>give seconds such as 12 or -90.5, or `estimate`</source>
        <translation>indique segundos como 12 o -90.5, o `estimate`</translation>
    </message>
    <message>
        <source>there is no meter named `%1`</source>
        <translation>no hay ningún contador llamado `%1`</translation>
    </message>
    <message>
        <source>add the meter to the logbook first</source>
        <translation>añada antes el contador al cuaderno</translation>
    </message>
    <message>
        <source>use one of %1</source>
        <translation>use uno de %1</translation>
    </message>
    <message>
        <source>the unit&apos;s gauge</source>
        <translation>el indicador del equipo</translation>
    </message>
    <message>
        <source>the unit&apos;s output power</source>
        <translation>la potencia de salida del equipo</translation>
    </message>
    <message>
        <source>no meter named</source>
        <translation>ningún contador nombrado</translation>
    </message>
    <message>
        <source>and the unit&apos;s gauge</source>
        <translation>y el indicador del equipo</translation>
    </message>
    <message>
        <source>beside %1 of the run</source>
        <translation>junto a %1 del ensayo</translation>
    </message>
    <message>
        <source>Note: the log is taken to begin with the first reading of the run, %1; --start changes that</source>
        <translation>Nota: se supone que la grabación empieza con la primera lectura del ensayo, %1; --start lo cambia</translation>
    </message>
    <message>
        <source>Note: the times of the log are taken for local times of %1; --zone changes that</source>
        <translation>Nota: las horas de la grabación se toman por horas locales de %1; --zone lo cambia</translation>
    </message>
    <message>
        <source>Nothing was imported (--preview)</source>
        <translation>No se ha importado nada (--preview)</translation>
    </message>
    <message numerus="yes">
        <source>%n samples from %1 to %2</source>
        <comment>%n sample from %1 to %2</comment>
        <translation>
            <numerusform>%n muestra de %1 a %2</numerusform>
            <numerusform>%n muestras de %1 a %2</numerusform>
        </translation>
    </message>
    <message>
        <source>into run %1 of %2</source>
        <translation>en el ensayo %1 de %2</translation>
    </message>
    <message>
        <source>the samples are in the logbook</source>
        <translation>las muestras están en el cuaderno</translation>
    </message>
    <message>
        <source>The logbook has all that the other has already</source>
        <translation>El cuaderno ya tiene todo lo que tiene el otro</translation>
    </message>
    <message>
        <source>This is what joining would do; nothing was changed</source>
        <translation>Esto es lo que haría la unión; no se ha cambiado nada</translation>
    </message>
    <message>
        <source>Joined: %1</source>
        <translation>Unido: %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>only a logbook holds load lists</source>
        <translation>solo un cuaderno contiene listas de cargas</translation>
    </message>
    <message>
        <source>name a logbook, or the file of a load list with --load-list</source>
        <translation>nombre un cuaderno, o el archivo de una lista de cargas con --load-list</translation>
    </message>
    <message>
        <source>there is no load list `%1`</source>
        <translation>no hay lista de cargas `%1`</translation>
    </message>
    <message>
        <source>bring one in with ullage import-loads</source>
        <translation>tráigala con ullage import-loads</translation>
    </message>
    <message>
        <source>%1: load list %2 is in the logbook already, left out</source>
        <translation>%1: la lista de cargas %2 ya está en el cuaderno; se omite</translation>
    </message>
    <message numerus="yes">
        <source>%1: load list %2 with %n lines</source>
        <comment>%1: load list %2 with %n line</comment>
        <translation>
            <numerusform>%1: lista de cargas %2 con %n línea</numerusform>
            <numerusform>%1: lista de cargas %2 con %n líneas</numerusform>
        </translation>
    </message>
    <message>
        <source>name a load list (.csv) or a logbook, one of the two</source>
        <translation>nombre una lista de cargas (.csv) o un cuaderno, uno de los dos</translation>
    </message>
    <message>
        <source>see ullage loads --help</source>
        <translation>véase ullage loads --help</translation>
    </message>
    <message>
        <source>(required)</source>
        <translation>(obligatoria)</translation>
    </message>
    <message>
        <source>User commands</source>
        <translation>Comandos de usuario</translation>
    </message>
    <message>
        <source>NAME</source>
        <translation>NOMBRE</translation>
    </message>
    <message>
        <source>say what a battery storage unit delivers, against what its label and its gauge say</source>
        <translation>dice lo que entrega un equipo de almacenamiento con batería, frente a lo que dicen su placa y su indicador</translation>
    </message>
    <message>
        <source>SYNOPSIS</source>
        <translation>SINOPSIS</translation>
    </message>
    <message>
        <source>DESCRIPTION</source>
        <translation>DESCRIPCIÓN</translation>
    </message>
    <message>
        <source>A tester drains a battery storage unit through real loads for many hours and notes what its own gauge and an energy meter say. Ullage records these readings, computes the delivered energy and the usable fraction with their uncertainty, finds faults of the gauge, and compares units.</source>
        <translation>Un ensayador descarga un equipo de almacenamiento con batería con cargas reales durante muchas horas y anota lo que dicen el indicador del propio equipo y un contador de energía. Ullage anota estas lecturas, calcula la energía entregada y la fracción útil con su incertidumbre, encuentra fallos del indicador y compara equipos.</translation>
    </message>
    <message>
        <source>Without a command it opens its window, on the logbook that was open last or on %1. The commands do the same job in text, without a display. Results go to the standard output, problems to the standard error, one line each.</source>
        <translation>Sin comando abre su ventana, con el último cuaderno abierto o con %1. Los comandos hacen el mismo trabajo como texto, sin pantalla. Los resultados van a la salida estándar; los problemas, a la salida de error, una línea por cada uno.</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <translation>OPCIONES</translation>
    </message>
    <message>
        <source>Say what there is; behind a command what that takes.</source>
        <translation>Dice qué hay; tras un comando, qué admite este.</translation>
    </message>
    <message>
        <source>Say the version.</source>
        <translation>Dice la versión.</translation>
    </message>
    <message>
        <source>Write this page.</source>
        <translation>Escribe esta página.</translation>
    </message>
    <message>
        <source>Write the completion of commands and options for bash.</source>
        <translation>Escribe lo que completa comandos y opciones en bash.</translation>
    </message>
    <message>
        <source>COMMANDS</source>
        <translation>COMANDOS</translation>
    </message>
    <message>
        <source>FILES</source>
        <translation>ARCHIVOS</translation>
    </message>
    <message>
        <source>A logbook, an SQLite file with all units, meters, runs, readings, photos and logs. Copy this one file to keep it.</source>
        <translation>Un cuaderno, un archivo SQLite con todos los equipos, contadores, ensayos, lecturas, fotos y grabaciones. Copie este único archivo para conservarlo.</translation>
    </message>
    <message>
        <source>Settings of the window.</source>
        <translation>Ajustes de la ventana.</translation>
    </message>
    <message>
        <source>ENVIRONMENT</source>
        <translation>ENTORNO</translation>
    </message>
    <message>
        <source>The password of a live meter for %1, in place of asking.</source>
        <translation>La contraseña de un contador en directo para %1, en vez de preguntarla.</translation>
    </message>
    <message>
        <source>EXIT STATUS</source>
        <translation>ESTADO DE SALIDA</translation>
    </message>
    <message>
        <source>It was done.</source>
        <translation>Se ha hecho.</translation>
    </message>
    <message>
        <source>Bad input, or a result that could not be written.</source>
        <translation>Entrada mala, o un resultado que no se pudo escribir.</translation>
    </message>
    <message>
        <source>Wrong usage.</source>
        <translation>Uso incorrecto.</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>PRECAUCIÓN</translation>
    </message>
    <message>
        <source>Mains voltage and charged batteries can kill and burn. Results of this program are no safety certification. Local codes and licensed practice come first.</source>
        <translation>La tensión de red y las baterías cargadas pueden matar y quemar. Los resultados de este programa no son una certificación de seguridad. Los reglamentos locales y el personal autorizado van primero.</translation>
    </message>
    <message>
        <source>there is no PV sheet named `%1`</source>
        <translation>no hay ninguna hoja FV llamada `%1`</translation>
    </message>
    <message>
        <source>see the PV input page for their names</source>
        <translation>vea sus nombres en la página de la entrada FV</translation>
    </message>
    <message>
        <source>there is no unit named `%1` in the logbook</source>
        <translation>en el cuaderno no hay ningún equipo llamado `%1`</translation>
    </message>
    <message>
        <source>use the name of one of its units</source>
        <translation>use el nombre de uno de sus equipos</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>magnitud</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>A subcommand is required</source>
        <translation>Falta un comando</translation>
    </message>
    <message>
        <source>%1 is required</source>
        <translation>Falta %1</translation>
    </message>
    <message>
        <source>The following argument was not expected: %1</source>
        <translation>No se esperaba este argumento: %1</translation>
    </message>
    <message>
        <source>The following arguments were not expected: %1</source>
        <translation>No se esperaban estos argumentos: %1</translation>
    </message>
    <message>
        <source>Could not convert: %1</source>
        <translation>No se pudo convertir: %1</translation>
    </message>
    <message>
        <source>%1 excludes %2</source>
        <translation>%1 excluye %2</translation>
    </message>
    <message>
        <source>%1 requires %2</source>
        <translation>%1 requiere %2</translation>
    </message>
    <message>
        <source>%1 not in %2</source>
        <translation>%1 no está en %2</translation>
    </message>
    <message>
        <source>%1: %2 required %3 missing</source>
        <translation>%1: de %2 obligatorios falta %3</translation>
    </message>
    <message>
        <source>Usage</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Positionals</source>
        <translation>Argumentos</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <translation>OBLIGATORIO</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Requiere</translation>
    </message>
    <message>
        <source>Excludes</source>
        <translation>Excluye</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Opciones</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Muestra esta ayuda y termina</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Muestra la versión del programa y termina</translation>
    </message>
    <message>
        <source>Ullage: what a storage unit delivers, against what its label and its gauge say</source>
        <translation>Ullage: lo que entrega un equipo de almacenamiento, frente a lo que dicen su placa y su indicador</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <translation>Comandos</translation>
    </message>
    <message>
        <source>the folder cannot be read: %1</source>
        <translation>no se puede leer la carpeta: %1</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>compruebe sus permisos</translation>
    </message>
    <message>
        <source>name a logbook or a folder with .csv run sheets</source>
        <translation>nombre un cuaderno o una carpeta con hojas de ensayo .csv</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>%1: checked from end to end, as it comes from elsewhere or was not closed properly; that took %2 s</source>
        <translation>%1: comprobado de principio a fin, pues viene de otro sitio o no se cerró bien; tardó %2 s</translation>
    </message>
    <message>
        <source>%1: beside other sources only its run sheets count, not its logs; `ullage import` makes it a logbook again</source>
        <translation>%1: junto a otros orígenes solo cuentan sus hojas de ensayo, no sus grabaciones; `ullage import` lo convierte de nuevo en cuaderno</translation>
    </message>
    <message>
        <source>%1 states another method than %2, by which all are compared</source>
        <translation>%1 indica un método distinto de %2, por el que se compara todo</translation>
    </message>
    <message>
        <source>there is no run of a unit named `%1`</source>
        <translation>no hay ningún ensayo de un equipo llamado `%1`</translation>
    </message>
    <message>
        <source>the logbook has no runs yet</source>
        <translation>el cuaderno aún no tiene ensayos</translation>
    </message>
    <message>
        <source>several units have runs</source>
        <translation>varios equipos tienen ensayos</translation>
    </message>
    <message>
        <source>add --unit with one of %1</source>
        <translation>añada --unit con uno de %1</translation>
    </message>
    <message>
        <source>there is no run %1</source>
        <translation>no hay ensayo %1</translation>
    </message>
    <message>
        <source>no month&apos;s sun is stated</source>
        <translation>no está indicado el sol de ningún mes</translation>
    </message>
    <message>
        <source>name twelve figures, January first</source>
        <translation>indique doce cifras, enero primero</translation>
    </message>
    <message>
        <source>there is no unit named `%1`</source>
        <translation>no hay ningún equipo llamado `%1`</translation>
    </message>
    <message>
        <source>days to be carried without sun</source>
        <translation>días que se han de cubrir sin sol</translation>
    </message>
    <message>
        <source>peak-sun hours a day, of the worst month that counts</source>
        <translation>horas de sol pico al día, del peor mes que cuenta</translation>
    </message>
    <message>
        <source>what is left of the array&apos;s label at the battery, 0 to 1</source>
        <translation>lo que queda en la batería de lo que dice la placa del generador, 0 a 1</translation>
    </message>
    <message>
        <source>array energy over daily load that the rule asks for, 1 or more</source>
        <translation>energía del generador entre la carga diaria que pide la norma, 1 o más</translation>
    </message>
    <message>
        <source>PV array that is there, W; that of the rule where not given</source>
        <translation>generador FV que hay, W; el de la norma si no se indica</translation>
    </message>
    <message>
        <source>peak-sun hours a day of the twelve months, January first, with commas</source>
        <translation>horas de sol pico al día de los doce meses, enero primero, separadas por comas</translation>
    </message>
    <message>
        <source>units side by side in the course of the charge</source>
        <translation>equipos uno junto a otro en la evolución del estado de carga</translation>
    </message>
    <message>
        <source>share of the rated energy expected of untested units, lower end</source>
        <translation>parte de la energía asignada prevista de los equipos sin ensayar, extremo inferior</translation>
    </message>
    <message>
        <source>the same, upper end</source>
        <translation>lo mismo, extremo superior</translation>
    </message>
    <message>
        <source>of the battery rule, 0 to 1</source>
        <translation>de la norma de la batería, 0 a 1</translation>
    </message>
    <message>
        <source>deepest discharge of the battery rule, 0 to 1</source>
        <translation>descarga más profunda de la norma de la batería, 0 a 1</translation>
    </message>
    <message>
        <source>share of the capacity left at the end of life, 0 to 1</source>
        <translation>parte de la capacidad que queda al final de la vida, 0 a 1</translation>
    </message>
    <message>
        <source>of the battery rule, 1 or more</source>
        <translation>de la norma de la batería, 1 o más</translation>
    </message>
    <message>
        <source>of the battery rule, 1 to 2</source>
        <translation>de la norma de la batería, 1 a 2</translation>
    </message>
    <message>
        <source>`%1` is the ending of no table</source>
        <translation>`%1` no es la terminación de ninguna tabla</translation>
    </message>
    <message>
        <source>use .txt, .csv, .md, .html, .xlsx, .json or .tex, or name the --format</source>
        <translation>use .txt, .csv, .md, .html, .xlsx, .json o .tex, o indique --format</translation>
    </message>
    <message>
        <source>xlsx is no text for a terminal</source>
        <translation>xlsx no es texto para un terminal</translation>
    </message>
    <message>
        <source>name a file with --output</source>
        <translation>nombre un archivo con --output</translation>
    </message>
    <message>
        <source>sheet %1</source>
        <translation>hoja %1</translation>
    </message>
    <message>
        <source>head in row %1</source>
        <translation>cabecera en la fila %1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Leído como: %1</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>columna %1: %2</translation>
    </message>
    <message>
        <source>column %1 `%2`: %3</source>
        <translation>columna %1 `%2`: %3</translation>
    </message>
    <message>
        <source>rows %1 to %2</source>
        <translation>filas %1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n lectura</numerusform>
            <numerusform>%n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>gauge %1 to %2 %</source>
        <translation>indicador %1 a %2 %</translation>
    </message>
    <message>
        <source>register %1 to %2 Wh</source>
        <translation>registro %1 a %2 Wh</translation>
    </message>
    <message>
        <source>cut-off noted</source>
        <translation>corte anotado</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Ensayo %1: %2</translation>
    </message>
    <message>
        <source>Run %1 `%2`: %3</source>
        <translation>Ensayo %1 `%2`: %3</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Abierto: %1</translation>
    </message>
    <message>
        <source>Open: %1 (%2?)</source>
        <translation>Abierto: %1 (¿%2?)</translation>
    </message>
    <message>
        <source>row %1 taken in part: %2</source>
        <translation>fila %1 tomada en parte: %2</translation>
    </message>
    <message>
        <source>row %1 left out: %2</source>
        <translation>fila %1 omitida: %2</translation>
    </message>
    <message numerus="yes">
        <source>and %n more rows</source>
        <comment>and %n more rows</comment>
        <translation>
            <numerusform>y %n fila más</numerusform>
            <numerusform>y %n filas más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 % gauge</source>
        <translation>indicador %1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n rows: %1 taken, %2 left out</source>
        <comment>%n row: %1 taken, %2 left out</comment>
        <translation>
            <numerusform>%n fila: %1 tomadas, %2 omitidas</numerusform>
            <numerusform>%n filas: %1 tomadas, %2 omitidas</numerusform>
        </translation>
    </message>
    <message>
        <source>usually %1 s apart</source>
        <translation>separadas normalmente por %1 s</translation>
    </message>
    <message>
        <source>%1 left out: %2</source>
        <translation>omitidas %1: %2</translation>
    </message>
    <message>
        <source>%1 taken with a doubt: %2</source>
        <translation>tomadas con dudas %1: %2</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>línea %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps longer than %1 s</source>
        <comment>%n gap longer than %1 s</comment>
        <translation>
            <numerusform>%n hueco de más de %1 s</numerusform>
            <numerusform>%n huecos de más de %1 s</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>Load by the log</source>
        <translation>Carga según la grabación</translation>
    </message>
    <message>
        <source>mean %1 W, peak %2 W over %3; %4 Wh a day</source>
        <translation>media %1 W, pico %2 W en %3; %4 Wh al día</translation>
    </message>
    <message>
        <source>on %1 W, off %2 W; on for %3 % of the time, %4 starts an hour</source>
        <translation>en marcha %1 W, en paro %2 W; en marcha el %3 % del tiempo, %4 arranques por hora</translation>
    </message>
    <message>
        <source>power integrated: %1 Wh; its square: %2 W²h</source>
        <translation>potencia integrada: %1 Wh; su cuadrado: %2 W²h</translation>
    </message>
    <message>
        <source>register of the same times: %1 Wh; integrated power is %2 % of it</source>
        <translation>registro en el mismo tiempo: %1 Wh; la potencia integrada es el %2 % de él</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps (%1) left out, in which at most %2 Wh may have flowed</source>
        <comment>%n gap (%1) left out, in which at most %2 Wh may have flowed</comment>
        <translation>
            <numerusform>%n hueco (%1) omitido, en el que pueden haber pasado %2 Wh como máximo</numerusform>
            <numerusform>%n huecos (%1) omitidos, en los que pueden haber pasado %2 Wh como máximo</numerusform>
        </translation>
    </message>
    <message>
        <source>All drains of %1 together</source>
        <translation>Todas las descargas de %1 juntas</translation>
    </message>
    <message>
        <source>Drains used</source>
        <translation>Descargas usadas</translation>
    </message>
    <message>
        <source>run</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>carga media</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>entregada</translation>
    </message>
    <message>
        <source>beyond the fit</source>
        <translation>fuera del ajuste</translation>
    </message>
    <message>
        <source>run %1, %2: %3</source>
        <translation>ensayo %1, %2: %3</translation>
    </message>
    <message>
        <source>Drains not used</source>
        <translation>Descargas no usadas</translation>
    </message>
    <message>
        <source>Gauge from run to run: %1</source>
        <translation>Indicador de ensayo a ensayo: %1</translation>
    </message>
    <message>
        <source>Full drains at like loads, run to run</source>
        <translation>Descargas completas a cargas parecidas, de ensayo a ensayo</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>ensayos</translation>
    </message>
    <message>
        <source>Wh per gauge point</source>
        <translation>Wh por punto del indicador</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>energía</translation>
    </message>
    <message>
        <source>gauge curve</source>
        <translation>curva del indicador</translation>
    </message>
    <message>
        <source>at depth</source>
        <translation>a la profundidad</translation>
    </message>
    <message>
        <source>p of the curve</source>
        <translation>p de la curva</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>movida</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Changes of Wh per gauge point and of the energy are corrected for the loads.</source>
        <translation>Los cambios de los Wh por punto del indicador y de la energía están corregidos por las cargas.</translation>
    </message>
    <message>
        <source>Next run: %1</source>
        <translation>Próximo ensayo: %1</translation>
    </message>
    <message>
        <source>Drift: %1</source>
        <translation>Deriva: %1</translation>
    </message>
    <message>
        <source>`%1` is no locale; use a name such as de_DE or en_US</source>
        <translation>`%1` no es una región; indique un nombre como de_DE o en_US</translation>
    </message>
    <message>
        <source>With --language CODE (en, de, fr or es) every command speaks another language than that of the environment.</source>
        <translation>Con --language CODE (en, de, fr o es), cada comando habla otro idioma que el del entorno.</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <translation>COMANDO</translation>
    </message>
    <message>
        <source>there is no display; use `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` or `ullage --help`</source>
        <translation>no hay pantalla; use `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` o `ullage --help`</translation>
    </message>
    <message>
        <source>the code of a language is missing behind `--language`</source>
        <translation>falta el código de un idioma detrás de `--language`</translation>
    </message>
    <message>
        <source>write %1 there, as in `--language %2`</source>
        <translation>escriba ahí %1, como en `--language %2`</translation>
    </message>
    <message>
        <source>%1 is no language of this program</source>
        <translation>%1 no es un idioma de este programa</translation>
    </message>
    <message>
        <source>use `--language` with %1</source>
        <translation>use `--language` con %1</translation>
    </message>
    <message>
        <source>the copy is complete: %1</source>
        <translation>la copia está completa: %1</translation>
    </message>
    <message>
        <source>the folder is complete: %1</source>
        <translation>la carpeta está completa: %1</translation>
    </message>
    <message>
        <source>the samples to %1 are in the logbook</source>
        <translation>las muestras hasta %1 están en el cuaderno</translation>
    </message>
    <message>
        <source>the log is no longer followed</source>
        <translation>ya no se sigue la grabación</translation>
    </message>
    <message>
        <source>what could be imported is in the logbook: %1</source>
        <translation>lo que se pudo importar está en el cuaderno: %1</translation>
    </message>
    <message>
        <source>what came in is in the logbook: %1</source>
        <translation>lo que ha entrado está en el cuaderno: %1</translation>
    </message>
    <message>
        <source>a whole logbook as a folder has no preview; nothing was imported</source>
        <translation>un cuaderno entero en forma de carpeta no tiene vista previa; no se ha importado nada</translation>
    </message>
    <message>
        <source>import it without --preview, into a new logbook if you only want to look</source>
        <translation>impórtela sin --preview, en un cuaderno nuevo si solo quiere mirar</translation>
    </message>
    <message>
        <source>the pictures in %1 are complete</source>
        <translation>las imágenes en %1 están completas</translation>
    </message>
    <message>
        <source>the report and the files beside it are complete: %1</source>
        <translation>el informe y los archivos junto a él están completos: %1</translation>
    </message>
    <message>
        <source>the report is complete: %1</source>
        <translation>el informe está completo: %1</translation>
    </message>
    <message>
        <source>the picture cannot be made</source>
        <translation>no se puede hacer la imagen</translation>
    </message>
    <message>
        <source>ask for a smaller window</source>
        <translation>pida una ventana más pequeña</translation>
    </message>
    <message>
        <source>the samples of %1 to %2 are in the logbook</source>
        <translation>las muestras de %1 hasta %2 están en el cuaderno</translation>
    </message>
    <message>
        <source>the source is kept with the meter</source>
        <translation>la fuente está guardada con el contador</translation>
    </message>
    <message>
        <source>the program cannot tell where it lies (%1)</source>
        <translation>el programa no puede saber dónde está (%1)</translation>
    </message>
    <message>
        <source>mount /proc</source>
        <translation>monte /proc</translation>
    </message>
</context>
<context>
    <name>comparison</name>
    <message>
        <source>the maker&apos;s claim, not measured</source>
        <translation>dato declarado por el fabricante, no medido</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>not drained from full to cut-off with its energy known</source>
        <translation>sin descargar de lleno a corte con la energía conocida</translation>
    </message>
    <message>
        <source>Different meters were used: the error limit of each counts in full in a difference between units.</source>
        <translation>Se usaron contadores distintos: el límite de error de cada uno cuenta por entero en una diferencia entre equipos.</translation>
    </message>
    <message>
        <source>Projected figures assume an accurate gauge over the stretch that was drained, or allow for the fault found in it; half a drain can mislead by more than a tenth.</source>
        <translation>Las cifras de proyección suponen un indicador exacto en el tramo descargado, o admiten el fallo hallado en él; media descarga puede engañar en más de una décima parte.</translation>
    </message>
    <message>
        <source>Figures projected through the gauge curve of an earlier run assume that the gauge has not changed since.</source>
        <translation>Las cifras proyectadas con la curva del indicador de un ensayo anterior suponen que el indicador no ha cambiado desde entonces.</translation>
    </message>
    <message>
        <source>no energy to divide by</source>
        <translation>no hay energía entre la que dividir</translation>
    </message>
    <message>
        <source>at most %1 %2: %3</source>
        <translation>%1 %2 como máximo: %3</translation>
    </message>
    <message>
        <source>no charge run</source>
        <translation>ningún ensayo de recarga</translation>
    </message>
    <message>
        <source>no sustained output run</source>
        <translation>ningún ensayo de potencia sostenida</translation>
    </message>
    <message>
        <source>no peak output run</source>
        <translation>ningún ensayo de potencia de pico</translation>
    </message>
    <message>
        <source>no standby run</source>
        <translation>ningún ensayo de reposo</translation>
    </message>
    <message>
        <source>did not hold: %1</source>
        <translation>no se cumplió: %1</translation>
    </message>
    <message>
        <source>the price is not stated</source>
        <translation>el precio no está indicado</translation>
    </message>
    <message>
        <source>the price paid is not stated</source>
        <translation>el precio pagado no está indicado</translation>
    </message>
    <message>
        <source>the mass is not stated</source>
        <translation>la masa no está indicada</translation>
    </message>
    <message>
        <source>%1: no drain in the logbook</source>
        <translation>%1: ninguna descarga en el cuaderno</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>al menos %1 %</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 a %2 %</translation>
    </message>
    <message>
        <source>its gauge: %1</source>
        <translation>su indicador: %1</translation>
    </message>
    <message numerus="yes">
        <source>its gauge stays within %n points</source>
        <comment>its gauge stays within %n point</comment>
        <translation>
            <numerusform>su indicador se mantiene dentro de %n punto</numerusform>
            <numerusform>su indicador se mantiene dentro de %n puntos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>its gauge is up to %n points off</source>
        <comment>its gauge is up to %n point off</comment>
        <translation>
            <numerusform>su indicador se desvía hasta %n punto</numerusform>
            <numerusform>su indicador se desvía hasta %n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at %3, projected from part of a drain, the only load that it can be judged at; %4.</source>
        <translation>%1 entregaría %2 de lo que dice su placa a %3, en proyección desde una parte de una descarga; es la única carga a la que se lo puede juzgar; %4.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at %3, projected from part of a drain; %4.</source>
        <translation>%1 entregaría %2 de lo que dice su placa a %3, en proyección desde una parte de una descarga; %4.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at %3, the only load that it can be judged at; %4.</source>
        <translation>%1 entrega %2 de lo que dice su placa a %3; es la única carga a la que se lo puede juzgar; %4.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at %3; %4.</source>
        <translation>%1 entrega %2 de lo que dice su placa a %3; %4.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at a load that is not known, projected from part of a drain, the only load that it can be judged at; %3.</source>
        <translation>%1 entregaría %2 de lo que dice su placa a una carga que no se conoce, en proyección desde una parte de una descarga; es la única carga a la que se lo puede juzgar; %3.</translation>
    </message>
    <message>
        <source>%1 would give %2 of its label at a load that is not known, projected from part of a drain; %3.</source>
        <translation>%1 entregaría %2 de lo que dice su placa a una carga que no se conoce, en proyección desde una parte de una descarga; %3.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at a load that is not known, the only load that it can be judged at; %3.</source>
        <translation>%1 entrega %2 de lo que dice su placa a una carga que no se conoce; es la única carga a la que se lo puede juzgar; %3.</translation>
    </message>
    <message>
        <source>%1 gives %2 of its label at a load that is not known; %3.</source>
        <translation>%1 entrega %2 de lo que dice su placa a una carga que no se conoce; %3.</translation>
    </message>
    <message>
        <source>How much of its label %1 gives is not known: %2; %3.</source>
        <translation>No se conoce cuánto de lo que dice su placa entrega %1: %2; %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>%1 and %n more</comment>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>At %1 %2 give the largest share of the label</source>
        <comment>At %1 %2 gives the largest share of the label</comment>
        <translation>
            <numerusform>A %1, %2 entrega la mayor proporción de lo que dice su placa</numerusform>
            <numerusform>A %1, %2 entregan la mayor proporción de lo que dice su placa</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>As tested, at like loads, %1 give the largest share of the label</source>
        <comment>As tested, at like loads, %1 gives the largest share of the label</comment>
        <translation>
            <numerusform>Según ensayo, a cargas parecidas, %1 entrega la mayor proporción de lo que dice su placa</numerusform>
            <numerusform>Según ensayo, a cargas parecidas, %1 entregan la mayor proporción de lo que dice su placa</numerusform>
        </translation>
    </message>
    <message>
        <source>At %1 these meters do not tell %2 apart: none of them may be called better.</source>
        <translation>A %1, estos contadores no distinguen entre %2: ninguno de ellos puede llamarse mejor.</translation>
    </message>
    <message>
        <source>As tested, at like loads, these meters do not tell %1 apart: none of them may be called better.</source>
        <translation>Según ensayo, a cargas parecidas, estos contadores no distinguen entre %1: ninguno de ellos puede llamarse mejor.</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, después %2</translation>
    </message>
    <message>
        <source>%1, and so on down the table.</source>
        <translation>%1, y así hasta el final de la tabla.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>These meters tell one from the next.</source>
        <translation>Estos contadores distinguen cada uno del siguiente.</translation>
    </message>
    <message>
        <source>These meters do not tell %1 apart.</source>
        <translation>Estos contadores no distinguen entre %1.</translation>
    </message>
    <message>
        <source>They do not tell %1 apart.</source>
        <translation>No distinguen entre %1.</translation>
    </message>
    <message>
        <source>At %1 no unit can be placed.</source>
        <translation>A %1 no se puede dar puesto a ningún equipo.</translation>
    </message>
    <message>
        <source>As tested, at like loads, no unit can be placed.</source>
        <translation>Según ensayo, a cargas parecidas, no se puede dar puesto a ningún equipo.</translation>
    </message>
    <message>
        <source>At %1 only %2 can be placed.</source>
        <translation>A %1 solo se puede dar puesto a %2.</translation>
    </message>
    <message>
        <source>As tested, at like loads, only %1 can be placed.</source>
        <translation>Según ensayo, a cargas parecidas, solo se puede dar puesto a %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n drains together</source>
        <comment>%n drain</comment>
        <translation>
            <numerusform>%n descarga</numerusform>
            <numerusform>%n descargas juntas</numerusform>
        </translation>
    </message>
    <message>
        <source>mean of %1 drains</source>
        <translation>media de %1 descargas</translation>
    </message>
    <message>
        <source>Each drain stands for itself.</source>
        <translation>Cada descarga va por sí sola.</translation>
    </message>
    <message>
        <source>They were made at loads from %1 W to %2 W, and a slow drain delivers less.</source>
        <translation>Se hicieron a cargas de %1 W a %2 W, y una descarga lenta entrega menos.</translation>
    </message>
    <message>
        <source>As tested there is no order: the units were drained at loads from %1 W to %2 W, and a slow drain delivers less.</source>
        <translation>Según ensayo no hay orden: los equipos se descargaron a cargas de %1 W a %2 W, y una descarga lenta entrega menos.</translation>
    </message>
    <message>
        <source>Compare them at one load, such as %1.</source>
        <translation>Compárelos a una misma carga, por ejemplo %1.</translation>
    </message>
    <message>
        <source>Compare them at one load.</source>
        <translation>Compárelos a una misma carga.</translation>
    </message>
    <message numerus="yes">
        <source>%n units have no place in this order.</source>
        <comment>%n unit has no place in this order.</comment>
        <translation>
            <numerusform>%n equipo no tiene puesto en este orden.</numerusform>
            <numerusform>%n equipos no tienen puesto en este orden.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 had this load</source>
        <translation>%1 tuvo esta carga</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>según ensayo</translation>
    </message>
    <message>
        <source>The longer a drain takes, the more of the content feeds the unit itself.</source>
        <translation>Cuanto más dura una descarga, más del contenido alimenta al propio equipo.</translation>
    </message>
    <message>
        <source>As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round.</source>
        <translation>Según ensayo, %1 entregó la mayor proporción de lo que dice su placa, por delante de %2; a %3 es al revés.</translation>
    </message>
    <message>
        <source>As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round: %1 was drained at %4 W, %2 at %5 W.</source>
        <translation>Según ensayo, %1 entregó la mayor proporción de lo que dice su placa, por delante de %2; a %3 es al revés: %1 se descargó a %4 W, %2 a %5 W.</translation>
    </message>
    <message>
        <source>%1 is shown as tested, at a load that is not known: %2.</source>
        <translation>%1 se muestra según ensayo, a una carga que no se conoce: %2.</translation>
    </message>
    <message>
        <source>%1 is shown as tested, at %2 W: %3.</source>
        <translation>%1 se muestra según ensayo, a %2 W: %3.</translation>
    </message>
    <message>
        <source>calculated for this load</source>
        <translation>calculado para esta carga</translation>
    </message>
    <message>
        <source>tested at this load</source>
        <translation>ensayado a esta carga</translation>
    </message>
    <message>
        <source>the rated energy of %1 is not stated</source>
        <translation>la energía asignada de %1 no está indicada</translation>
    </message>
    <message>
        <source>the mass of %1 is not stated</source>
        <translation>la masa de %1 no está indicada</translation>
    </message>
    <message>
        <source>the price of %1 is not stated</source>
        <translation>el precio de %1 no está indicado</translation>
    </message>
    <message>
        <source>not comparable: %1</source>
        <translation>no comparable: %1</translation>
    </message>
    <message>
        <source>clearly different: %1 − %2 = %3, the error of the shared meter&apos;s gain cancels as far as both are alike</source>
        <translation>claramente distintos: %1 − %2 = %3; el error de ganancia del contador común se cancela en la medida en que ambos se parecen</translation>
    </message>
    <message>
        <source>clearly different: %1 − %2 = %3</source>
        <translation>claramente distintos: %1 − %2 = %3</translation>
    </message>
    <message>
        <source>too close to call with these meters: %1 − %2 = %3, the error of the shared meter&apos;s gain cancels as far as both are alike</source>
        <translation>demasiado parecidos para decidir con estos contadores: %1 − %2 = %3; el error de ganancia del contador común se cancela en la medida en que ambos se parecen</translation>
    </message>
    <message>
        <source>too close to call with these meters: %1 − %2 = %3</source>
        <translation>demasiado parecidos para decidir con estos contadores: %1 − %2 = %3</translation>
    </message>
    <message>
        <source>both rows are of one unit</source>
        <translation>ambas filas son de un mismo equipo</translation>
    </message>
    <message>
        <source>the prices are in different currencies</source>
        <translation>los precios están en monedas distintas</translation>
    </message>
    <message>
        <source>%1 was tested at another load and cannot be converted</source>
        <translation>%1 se ensayó a otra carga y no se puede convertir</translation>
    </message>
    <message>
        <source>%1 was drained at loads too far from this one</source>
        <translation>%1 se descargó a cargas demasiado lejanas de esta</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>no comparable</translation>
    </message>
    <message>
        <source>clearly different</source>
        <translation>claramente distintos</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>demasiado parecidos para decidir</translation>
    </message>
    <message>
        <source>it was tested at another load and cannot be converted</source>
        <translation>se ensayó a otra carga y no se puede convertir</translation>
    </message>
    <message>
        <source>its drains were at loads too far from this one</source>
        <translation>sus descargas fueron a cargas demasiado lejanas de esta</translation>
    </message>
    <message>
        <source>its usable fraction has no interval to rank it by</source>
        <translation>su fracción útil no tiene un intervalo con el que darle puesto</translation>
    </message>
    <message>
        <source>ranks are those of units, not of single drains</source>
        <translation>los puestos son de equipos, no de descargas sueltas</translation>
    </message>
    <message>
        <source>the units were drained at unlike loads: compare them at one load</source>
        <translation>los equipos se descargaron a cargas desiguales: compárelos a una misma carga</translation>
    </message>
    <message>
        <source>shared by %1 units that these meters do not tell apart</source>
        <translation>compartido por %1 equipos que estos contadores no distinguen</translation>
    </message>
    <message>
        <source>told apart from every other unit that has a rank</source>
        <translation>distinguido de todos los demás equipos que tienen puesto</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: its energy is only &quot;%2&quot;</source>
        <translation>%1: su energía es solo «%2»</translation>
    </message>
    <message>
        <source>%1: its energy has no interval</source>
        <translation>%1: su energía no tiene intervalo</translation>
    </message>
    <message>
        <source>it is not known of every drain of the mean</source>
        <translation>no se conoce en todas las descargas de la media</translation>
    </message>
    <message>
        <source>one drain stands alone</source>
        <translation>una descarga sola no tiene con qué compararse</translation>
    </message>
    <message numerus="yes">
        <source>experimental standard deviation of one drain, %n degrees of freedom</source>
        <comment>experimental standard deviation of one drain, %n degree of freedom</comment>
        <translation>
            <numerusform>desviación típica experimental de una descarga, %n grado de libertad</numerusform>
            <numerusform>desviación típica experimental de una descarga, %n grados de libertad</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are both in %1 and in %2; counted once</source>
        <comment>%n run is both in %1 and in %2; counted once</comment>
        <translation>
            <numerusform>%n ensayo está tanto en %1 como en %2; se cuenta una vez</numerusform>
            <numerusform>%n ensayos están tanto en %1 como en %2; se cuentan una vez</numerusform>
        </translation>
    </message>
    <message>
        <source>the claims of %1 differ between the logbooks; those of the first one hold</source>
        <translation>los datos declarados de %1 difieren entre los cuadernos; valen los del primero</translation>
    </message>
    <message>
        <source>what is stated of the meter %1 differs between the logbooks; the first one holds</source>
        <translation>lo indicado del contador %1 difiere entre los cuadernos; vale lo del primero</translation>
    </message>
    <message>
        <source>mean of %1 specimens</source>
        <translation>media de %1 ejemplares</translation>
    </message>
    <message>
        <source>between %1 specimens</source>
        <translation>entre %1 ejemplares</translation>
    </message>
    <message>
        <source>if it is made as these %1 specimens were</source>
        <translation>si está hecho como lo estaban estos %1 ejemplares</translation>
    </message>
    <message>
        <source>%1: %2 specimens give %3 of their label, spread %4 %; the next one is expected within %5 to %6 %.</source>
        <translation>%1: %2 ejemplares entregan %3 de lo que dice su placa, dispersión %4 %; el siguiente se prevé dentro de %5 a %6 %.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>one specimen, which says nothing of others</source>
        <translation>un ejemplar, que no dice nada de otros</translation>
    </message>
    <message>
        <source>fewer than two of its specimens can be compared here</source>
        <translation>aquí se pueden comparar menos de dos de sus ejemplares</translation>
    </message>
    <message>
        <source>its specimens were drained at unlike loads: compare them at one load</source>
        <translation>sus ejemplares se descargaron a cargas desiguales: compárelos a una misma carga</translation>
    </message>
</context>
<context>
    <name>copies</name>
    <message numerus="yes">
        <source>%n units</source>
        <comment>%n unit</comment>
        <translation>
            <numerusform>%n equipo</numerusform>
            <numerusform>%n equipos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>date</name>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>%1 January</source>
        <translation>%1 de enero</translation>
    </message>
    <message>
        <source>%1 February</source>
        <translation>%1 de febrero</translation>
    </message>
    <message>
        <source>%1 March</source>
        <translation>%1 de marzo</translation>
    </message>
    <message>
        <source>%1 April</source>
        <translation>%1 de abril</translation>
    </message>
    <message>
        <source>%1 May</source>
        <translation>%1 de mayo</translation>
    </message>
    <message>
        <source>%1 June</source>
        <translation>%1 de junio</translation>
    </message>
    <message>
        <source>%1 July</source>
        <translation>%1 de julio</translation>
    </message>
    <message>
        <source>%1 August</source>
        <translation>%1 de agosto</translation>
    </message>
    <message>
        <source>%1 September</source>
        <translation>%1 de septiembre</translation>
    </message>
    <message>
        <source>%1 October</source>
        <translation>%1 de octubre</translation>
    </message>
    <message>
        <source>%1 November</source>
        <translation>%1 de noviembre</translation>
    </message>
    <message>
        <source>%1 December</source>
        <translation>%1 de diciembre</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>dialogs</name>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation>la cantidad</translation>
    </message>
    <message>
        <source>the power</source>
        <translation>la potencia</translation>
    </message>
    <message>
        <source>the duty</source>
        <translation>el factor de marcha</translation>
    </message>
    <message>
        <source>the measured energy</source>
        <translation>la energía medida</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>the time over which it was measured</source>
        <translation>el tiempo en que se midió</translation>
    </message>
    <message>
        <source>the power of its start</source>
        <translation>la potencia de arranque</translation>
    </message>
    <message>
        <source>enter a number, such as 1.5</source>
        <translation>introduzca un número, como 1,5</translation>
    </message>
    <message>
        <source>enter a number, such as 1.5 %1</source>
        <translation>introduzca un número, como 1,5 %1</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>no se entiende `%1`</translation>
    </message>
    <message>
        <source>%1 must be more than 0</source>
        <translation>%1 debe ser mayor que 0</translation>
    </message>
    <message>
        <source>leave the field empty where nothing is stated</source>
        <translation>deje el campo vacío si no hay nada indicado</translation>
    </message>
    <message>
        <source>start of the log</source>
        <translation>inicio de la grabación</translation>
    </message>
    <message>
        <source>this is no time</source>
        <translation>esto no es un tiempo</translation>
    </message>
    <message>
        <source>clock is behind by</source>
        <translation>el reloj atrasa</translation>
    </message>
    <message>
        <source>write it like 0:00:12 or -0:01:30: hours, minutes, seconds</source>
        <translation>escríbalo como 0:00:12 o -0:01:30: horas, minutos, segundos</translation>
    </message>
    <message>
        <source>the register step</source>
        <translation>la resolución del registro</translation>
    </message>
    <message>
        <source>the error limit</source>
        <translation>el límite de error</translation>
    </message>
    <message>
        <source>the part of each load</source>
        <translation>la parte propia de cada carga</translation>
    </message>
    <message>
        <source>the register span</source>
        <translation>el tope del registro</translation>
    </message>
    <message>
        <source>the correction</source>
        <translation>la corrección</translation>
    </message>
    <message>
        <source>the starting current</source>
        <translation>la corriente de arranque</translation>
    </message>
    <message>
        <source>the side</source>
        <translation>el lado</translation>
    </message>
    <message>
        <source>the width</source>
        <translation>la anchura</translation>
    </message>
    <message>
        <source>the height</source>
        <translation>la altura</translation>
    </message>
    <message>
        <source>`%1` is outside what a bench can be</source>
        <translation>`%1` está fuera de lo posible en un banco</translation>
    </message>
    <message>
        <source>enter degrees Celsius, such as 18</source>
        <translation>introduzca grados Celsius, como 18</translation>
    </message>
    <message>
        <source>nobody notices an end before it happens</source>
        <translation>nadie advierte un fin antes de que ocurra</translation>
    </message>
    <message>
        <source>type 0 where it was noted as it happened</source>
        <translation>escriba 0 si se anotó en el momento</translation>
    </message>
    <message>
        <source>copies are kept for whole days from 1 to 3650</source>
        <translation>las copias se conservan días enteros, de 1 a 3650</translation>
    </message>
    <message>
        <source>enter a number such as 30</source>
        <translation>introduzca un número como 30</translation>
    </message>
    <message>
        <source>a station is a number from 0 to 255</source>
        <translation>una estación es un número de 0 a 255</translation>
    </message>
    <message>
        <source>the interval</source>
        <translation>el intervalo</translation>
    </message>
    <message>
        <source>the gauge step</source>
        <translation>la resolución del indicador</translation>
    </message>
    <message>
        <source>type a number, or `not known`</source>
        <translation>escriba un número o `no se conoce`</translation>
    </message>
    <message>
        <source>the rated energy</source>
        <translation>la energía asignada</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>la potencia asignada</translation>
    </message>
    <message>
        <source>the peak output</source>
        <translation>la potencia de pico</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>la masa</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>months</source>
        <translation>meses</translation>
    </message>
    <message>
        <source>the warranty</source>
        <translation>la garantía</translation>
    </message>
    <message>
        <source>the voltage limit</source>
        <translation>el límite de tensión</translation>
    </message>
    <message>
        <source>the current limit</source>
        <translation>el límite de corriente</translation>
    </message>
    <message>
        <source>the power limit</source>
        <translation>el límite de potencia</translation>
    </message>
    <message>
        <source>the start voltage</source>
        <translation>la tensión de arranque</translation>
    </message>
    <message>
        <source>the short-circuit current</source>
        <translation>la corriente de cortocircuito</translation>
    </message>
    <message>
        <source>the charge time</source>
        <translation>el tiempo de recarga</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>el precio</translation>
    </message>
    <message>
        <source>the price paid</source>
        <translation>el precio pagado</translation>
    </message>
</context>
<context>
    <name>document</name>
    <message>
        <source>this run is no longer in the logbook</source>
        <translation>este ensayo ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>this load list is no longer in the logbook</source>
        <translation>esta lista de cargas ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>this PV sheet is no longer in the logbook</source>
        <translation>esta hoja FV ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>this reading is no longer in the logbook</source>
        <translation>esta lectura ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>this unit is no longer in the logbook</source>
        <translation>este equipo ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>no logbook is open</source>
        <translation>no hay ningún cuaderno abierto</translation>
    </message>
    <message>
        <source>open or make one first</source>
        <translation>abra o cree uno antes</translation>
    </message>
    <message>
        <source>this meter is no longer in the logbook</source>
        <translation>este contador ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>the logbook is busy</source>
        <translation>el cuaderno está ocupado</translation>
    </message>
    <message>
        <source>what has come waits and is recorded then</source>
        <translation>lo que ha llegado espera y se anotará entonces</translation>
    </message>
    <message>
        <source>the sample sheet cannot be read</source>
        <translation>no se puede leer la hoja de ejemplo</translation>
    </message>
    <message>
        <source>the sample load list cannot be read</source>
        <translation>no se puede leer la lista de cargas de ejemplo</translation>
    </message>
    <message>
        <source>the sample log cannot be copied</source>
        <translation>no se puede copiar la grabación de ejemplo</translation>
    </message>
    <message>
        <source>make room in the folder for temporary files</source>
        <translation>libere espacio en la carpeta de archivos temporales</translation>
    </message>
    <message>
        <source>this build holds no sample run sheets</source>
        <translation>esta compilación no contiene hojas de ensayo de ejemplo</translation>
    </message>
    <message>
        <source>make a new logbook instead</source>
        <translation>cree en su lugar un cuaderno nuevo</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>no se puede crear la carpeta</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>esto no es un archivo</translation>
    </message>
    <message>
        <source>choose a PV sheet</source>
        <translation>elija una hoja FV</translation>
    </message>
    <message>
        <source>the logbook has no unit named `%1`; choose one in the sheet</source>
        <translation>el cuaderno no tiene ningún equipo llamado `%1`; elija uno en la hoja</translation>
    </message>
    <message>
        <source>limits of the PV input belong to the unit; state those of the file in the unit&apos;s claims</source>
        <translation>los límites de la entrada FV pertenecen al equipo; indique los del archivo en los datos declarados del equipo</translation>
    </message>
    <message>
        <source>choose a load list</source>
        <translation>elija una lista de cargas</translation>
    </message>
    <message>
        <source>choose a run sheet</source>
        <translation>elija una hoja de ensayo</translation>
    </message>
    <message>
        <source>reading this logbook was cancelled; its units are not compared</source>
        <translation>se canceló la lectura de este cuaderno; sus equipos no se comparan</translation>
    </message>
    <message>
        <source>this logbook is the one that is open; its units are compared already</source>
        <translation>este cuaderno es el que está abierto; sus equipos ya se comparan</translation>
    </message>
    <message>
        <source>the units of this logbook are compared already</source>
        <translation>los equipos de este cuaderno ya se comparan</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>`%1` is no moment</source>
        <translation>`%1` no es un momento</translation>
    </message>
    <message>
        <source>type a time such as 02:40, -10m, yesterday 23:50, 14 May 23:50 or 2027-05-14T18:00, or nothing for now</source>
        <translation>escriba una hora como 02:40, -10m, yesterday 23:50, 14 May 23:50 o 2027-05-14T18:00, o nada para ahora</translation>
    </message>
    <message>
        <source>`%1` is more than a year ago</source>
        <translation>`%1` es de hace más de un año</translation>
    </message>
    <message>
        <source>type date and time</source>
        <translation>escriba fecha y hora</translation>
    </message>
    <message>
        <source>nothing was typed</source>
        <translation>no se ha escrito nada</translation>
    </message>
    <message>
        <source>`%1` is no number</source>
        <translation>`%1` no es un número</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` está fuera de los límites</translation>
    </message>
    <message>
        <source>`%1` is not understood after the number</source>
        <translation>no se entiende `%1` tras el número</translation>
    </message>
    <message>
        <source>type an energy of 0 or more, such as 431, 431 Wh or 0.431 kWh</source>
        <translation>escriba una energía de 0 o más, como 431, 431 Wh o 0,431 kWh</translation>
    </message>
    <message>
        <source>type a percentage from 0 to 100, such as 69</source>
        <translation>escriba un porcentaje de 0 a 100, como 69</translation>
    </message>
    <message>
        <source>type a power of 0 or more, such as 64, 64 W or 0.064 kW</source>
        <translation>escriba una potencia de 0 o más, como 64, 64 W o 0,064 kW</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>hace %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>choose another file name</source>
        <translation>elija otro nombre de archivo</translation>
    </message>
    <message>
        <source>this is the logbook that is open, which nothing replaces</source>
        <translation>este es el cuaderno abierto, que nada reemplaza</translation>
    </message>
    <message>
        <source>the file is write-protected</source>
        <translation>el archivo está protegido contra escritura</translation>
    </message>
    <message>
        <source>make it writable, or choose another file name</source>
        <translation>permita escribir en él o elija otro nombre de archivo</translation>
    </message>
    <message>
        <source>choose another file name, or add --force</source>
        <translation>elija otro nombre de archivo o añada --force</translation>
    </message>
    <message>
        <source>this file is read by the same call</source>
        <translation>la misma llamada lee este archivo</translation>
    </message>
    <message>
        <source>this is a logbook, with all its readings</source>
        <translation>esto es un cuaderno, con todas sus lecturas</translation>
    </message>
    <message>
        <source>this logbook is in use</source>
        <translation>este cuaderno está en uso</translation>
    </message>
    <message>
        <source>close it first, or choose another file name</source>
        <translation>ciérrelo antes o elija otro nombre de archivo</translation>
    </message>
    <message>
        <source>a file of this name exists, and this program did not write it as it is now</source>
        <translation>existe un archivo con este nombre, y este programa no lo escribió tal como está ahora</translation>
    </message>
    <message>
        <source>no file name is given</source>
        <translation>no se indica ningún nombre de archivo</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>nombre un archivo</translation>
    </message>
    <message>
        <source>this link leads to no file</source>
        <translation>este enlace no lleva a ningún archivo</translation>
    </message>
    <message>
        <source>remove the link, or choose another file name</source>
        <translation>quite el enlace o elija otro nombre de archivo</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>esto es una carpeta</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>esto no es un archivo normal</translation>
    </message>
    <message>
        <source>the file cannot be reached: %1</source>
        <translation>no se puede acceder al archivo: %1</translation>
    </message>
    <message>
        <source>the name is kept for what a logbook has beside it</source>
        <translation>el nombre está reservado para lo que un cuaderno tiene a su lado</translation>
    </message>
    <message>
        <source>the ending .ullage is that of logbooks</source>
        <translation>la terminación .ullage es la de los cuadernos</translation>
    </message>
    <message>
        <source>choose another ending</source>
        <translation>elija otra terminación</translation>
    </message>
    <message>
        <source>the file has gone</source>
        <translation>el archivo ha desaparecido</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>inténtelo de nuevo</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>no queda espacio en el disco</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>libere espacio o elija otro lugar</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>la carpeta no existe</translation>
    </message>
    <message>
        <source>make the folder or choose another place</source>
        <translation>cree la carpeta o elija otro lugar</translation>
    </message>
    <message>
        <source>writing is not permitted here</source>
        <translation>aquí no está permitido escribir</translation>
    </message>
    <message>
        <source>choose a place that you may write to</source>
        <translation>elija un lugar en el que pueda escribir</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>no se puede escribir: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>elija otro lugar</translation>
    </message>
    <message>
        <source>a file of this name has just come into being</source>
        <translation>acaba de aparecer un archivo con este nombre</translation>
    </message>
    <message>
        <source>look at it, then try again</source>
        <translation>mírelo y después inténtelo de nuevo</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>compruebe el nombre</translation>
    </message>
    <message>
        <source>the file is larger than 64 MiB, which no run sheet is</source>
        <translation>el archivo supera 64 MiB, lo que ninguna hoja de ensayo alcanza</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>no se puede leer el archivo</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>compruebe sus permisos</translation>
    </message>
    <message>
        <source>reading the file failed</source>
        <translation>falló la lectura del archivo</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>compruebe el disco</translation>
    </message>
</context>
<context>
    <name>folder</name>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>a setting needs `name` and `value`</source>
        <translation>un ajuste necesita `name` y `value`</translation>
    </message>
    <message>
        <source>complete the row, or delete it</source>
        <translation>complete la fila o bórrela</translation>
    </message>
    <message>
        <source>the row names no file</source>
        <translation>la fila no nombra ningún archivo</translation>
    </message>
    <message>
        <source>the row does not say which run it belongs to</source>
        <translation>la fila no dice a qué ensayo pertenece</translation>
    </message>
    <message>
        <source>fill in `run_sheet`</source>
        <translation>rellene `run_sheet`</translation>
    </message>
    <message>
        <source>this is no list of a logbook&apos;s folder</source>
        <translation>esta no es la lista de una carpeta de cuaderno</translation>
    </message>
    <message>
        <source>choose a folder that this program wrote</source>
        <translation>elija una carpeta escrita por este programa</translation>
    </message>
    <message>
        <source>the folder is of a newer sort</source>
        <translation>la carpeta es de una clase más nueva</translation>
    </message>
    <message>
        <source>bring it in with a newer version of this program</source>
        <translation>impórtela con una versión más nueva de este programa</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>no hay columna `%1`</translation>
    </message>
    <message>
        <source>delete it, or name it as in the help</source>
        <translation>bórrela o nómbrela como en la ayuda</translation>
    </message>
    <message>
        <source>the column `%1` is missing</source>
        <translation>falta la columna `%1`</translation>
    </message>
    <message>
        <source>restore it</source>
        <translation>restablézcala</translation>
    </message>
    <message numerus="yes">
        <source>the row has %n cells, the header %1</source>
        <comment>the row has %n cell, the header %1</comment>
        <translation>
            <numerusform>la fila tiene %n celda; la cabecera, %1</numerusform>
            <numerusform>la fila tiene %n celdas; la cabecera, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>give it as many</source>
        <translation>dele otras tantas</translation>
    </message>
    <message>
        <source>the row does not say what it is</source>
        <translation>la fila no dice qué es</translation>
    </message>
    <message>
        <source>fill in `what`</source>
        <translation>rellene `what`</translation>
    </message>
    <message>
        <source>`%1` is no %2</source>
        <translation>`%1` no vale como %2</translation>
    </message>
    <message>
        <source>correct the cell; the help says what it holds</source>
        <translation>corrija la celda; la ayuda dice qué contiene</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>detenido</translation>
    </message>
    <message>
        <source>nothing was imported</source>
        <translation>no se ha importado nada</translation>
    </message>
    <message>
        <source>`%1` is named twice</source>
        <translation>`%1` está nombrado dos veces</translation>
    </message>
    <message>
        <source>delete one of the rows</source>
        <translation>borre una de las filas</translation>
    </message>
    <message>
        <source>`%1` is a link out of the folder</source>
        <translation>`%1` es un enlace fuera de la carpeta</translation>
    </message>
    <message>
        <source>put the file itself there</source>
        <translation>ponga allí el propio archivo</translation>
    </message>
    <message>
        <source>`%1` is no run sheet of this folder</source>
        <translation>`%1` no es una hoja de ensayo de esta carpeta</translation>
    </message>
    <message>
        <source>correct `run_sheet`</source>
        <translation>corrija `run_sheet`</translation>
    </message>
    <message>
        <source>`%1` states no meter</source>
        <translation>`%1` no indica ningún contador</translation>
    </message>
    <message>
        <source>name a sheet that does</source>
        <translation>nombre una hoja que lo indique</translation>
    </message>
    <message>
        <source>%1: already in the logbook as run %2 of %3, left out</source>
        <translation>%1: ya está en el cuaderno como ensayo %2 de %3; se omite</translation>
    </message>
    <message>
        <source>`%1` has no reading %2</source>
        <translation>`%1` no tiene lectura %2</translation>
    </message>
    <message>
        <source>correct `reading`</source>
        <translation>corrija `reading`</translation>
    </message>
    <message>
        <source>reading %1 of `%2` is of %3, not of %4</source>
        <translation>la lectura %1 de `%2` es de %3, no de %4</translation>
    </message>
    <message>
        <source>give the row of the reading that the photo shows</source>
        <translation>indique la fila de la lectura que muestra la foto</translation>
    </message>
    <message>
        <source>there is no meter `%1`</source>
        <translation>no hay contador `%1`</translation>
    </message>
    <message>
        <source>correct `meter`, or add a row of the sort `meter`</source>
        <translation>corrija `meter` o añada una fila de la clase `meter`</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n rows left out</source>
        <comment>%1: %n row left out</comment>
        <translation>
            <numerusform>%1: %n fila omitida</numerusform>
            <numerusform>%1: %n filas omitidas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the logbook has another load list of this name; left out</source>
        <translation>%1: el cuaderno tiene otra lista de cargas con este nombre; se omite</translation>
    </message>
    <message>
        <source>%1: the logbook has another PV sheet of this name; left out</source>
        <translation>%1: el cuaderno tiene otra hoja FV con este nombre; se omite</translation>
    </message>
    <message>
        <source>setting `%1`: the logbook states %2, the folder %3; that of the logbook stays</source>
        <translation>ajuste `%1`: el cuaderno indica %2, la carpeta %3; queda el del cuaderno</translation>
    </message>
    <message>
        <source>the folder cannot be named so: %1</source>
        <translation>la carpeta no puede llamarse así: %1</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>elija otro nombre</translation>
    </message>
    <message>
        <source>there is something of this name already</source>
        <translation>ya hay algo con este nombre</translation>
    </message>
    <message>
        <source>name a new folder</source>
        <translation>nombre una carpeta nueva</translation>
    </message>
    <message>
        <source>the folder cannot be made: %1</source>
        <translation>no se puede crear la carpeta: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>elija otro lugar</translation>
    </message>
    <message>
        <source>nothing was written</source>
        <translation>no se ha escrito nada</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n logs</source>
        <comment>%n log</comment>
        <translation>
            <numerusform>%n grabación</numerusform>
            <numerusform>%n grabaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n lista de cargas</numerusform>
            <numerusform>%n listas de cargas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n PV sheets</source>
        <comment>%n PV sheet</comment>
        <translation>
            <numerusform>%n hoja FV</numerusform>
            <numerusform>%n hojas FV</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
</context>
<context>
    <name>forecast</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>gauge shows</source>
        <translation>el indicador muestra</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>de menos</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>de más</translation>
    </message>
    <message>
        <source>%1 to +%2 pt</source>
        <translation>%1 a +%2 pt</translation>
    </message>
    <message>
        <source>too little or too much</source>
        <translation>de menos o de más</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>after %1 h more</source>
        <translation>tras %1 h más</translation>
    </message>
    <message>
        <source>at this load</source>
        <translation>a esta carga</translation>
    </message>
    <message>
        <source>If the gauge is right: ruled out by the readings. %1</source>
        <translation>Si el indicador acierta: descartado por las lecturas. %1</translation>
    </message>
    <message>
        <source>If the gauge is right: %1. %2</source>
        <translation>Si el indicador acierta: %1. %2</translation>
    </message>
    <message>
        <source>If the gauge is wrong: ruled out by the readings. %1</source>
        <translation>Si el indicador se equivoca: descartado por las lecturas. %1</translation>
    </message>
    <message>
        <source>If the gauge is wrong: %1. %2</source>
        <translation>Si el indicador se equivoca: %1. %2</translation>
    </message>
    <message>
        <source>usable of the label</source>
        <translation>útil de la placa</translation>
    </message>
    <message>
        <source>the unit itself takes</source>
        <translation>el propio equipo toma</translation>
    </message>
    <message>
        <source>What decides: %1</source>
        <translation>Lo que decide: %1</translation>
    </message>
    <message>
        <source>What decides: %1 %2</source>
        <translation>Lo que decide: %1 %2</translation>
    </message>
    <message>
        <source>middle 95 % of what remains possible</source>
        <translation>95 % central de lo que sigue siendo posible</translation>
    </message>
    <message>
        <source>%1 for %2 points would be a battery of over %3 % of its label</source>
        <translation>%1 por %2 puntos sería una batería de más del %3 % de su placa</translation>
    </message>
    <message>
        <source>Not possible: %1.</source>
        <translation>No es posible: %1.</translation>
    </message>
    <message>
        <source>if the gauge is right, at this load</source>
        <translation>si el indicador acierta, a esta carga</translation>
    </message>
    <message>
        <source>%1 for %2 points is about what the label promises.</source>
        <translation>%1 por %2 puntos es más o menos lo que promete la placa.</translation>
    </message>
    <message>
        <source>Only %1 came out for the %2 points shown.</source>
        <translation>Solo salieron %1 por los %2 puntos mostrados.</translation>
    </message>
    <message>
        <source>Nothing is left that the unit could take for itself.</source>
        <translation>No queda nada que el equipo pudiera tomar para sí.</translation>
    </message>
    <message>
        <source>The unit would take %1 W for itself while your load takes %2 W.</source>
        <translation>El equipo tomaría %1 W para sí mientras su carga toma %2 W.</translation>
    </message>
    <message>
        <source>a gauge that is wrong tells nothing of it</source>
        <translation>un indicador erróneo no dice nada de ello</translation>
    </message>
    <message>
        <source>label, energy and the readings so far leave less than 2 % for it</source>
        <translation>la placa, la energía y las lecturas hasta ahora dejan menos del 2 % para ello</translation>
    </message>
    <message>
        <source>Hardly possible: %1.</source>
        <translation>Apenas posible: %1.</translation>
    </message>
    <message>
        <source>Most of it would still be inside: %1 Wh to come. The gauge would have run ahead by %2 points and must slow down.</source>
        <translation>La mayor parte seguiría dentro: quedarían %1 Wh por salir. El indicador se habría adelantado %2 puntos y tendría que frenar.</translation>
    </message>
    <message>
        <source>Less would be inside than it shows: %1 Wh to come. The gauge would lag by %2 points and must hurry.</source>
        <translation>Habría dentro menos de lo que muestra: quedarían %1 Wh por salir. El indicador iría retrasado %2 puntos y tendría que acelerar.</translation>
    </message>
    <message>
        <source>%1 Wh would be to come. The gauge may show up to %2 points too much or %3 points too little.</source>
        <translation>Quedarían %1 Wh por salir. El indicador puede mostrar hasta %2 puntos de más o %3 puntos de menos.</translation>
    </message>
    <message>
        <source>Look at %1. Gauge right: the output is off. Gauge wrong: it is still on.</source>
        <translation>Mire a esta hora: %1. Si el indicador acierta, la salida está apagada. Si se equivoca, sigue encendida.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Gauge right: the output is off. Gauge wrong: it is still on.</source>
        <translation>Mire tras %1 h más a esta carga. Si el indicador acierta, la salida está apagada. Si se equivoca, sigue encendida.</translation>
    </message>
    <message>
        <source>Look at %1. Gauge right: the output is still on. Gauge wrong: it is off.</source>
        <translation>Mire a esta hora: %1. Si el indicador acierta, la salida sigue encendida. Si se equivoca, está apagada.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Gauge right: the output is still on. Gauge wrong: it is off.</source>
        <translation>Mire tras %1 h más a esta carga. Si el indicador acierta, la salida sigue encendida. Si se equivoca, está apagada.</translation>
    </message>
    <message>
        <source>Off before %1: the gauge shows too much. Still on at %2: it shows too little.</source>
        <translation>Apagada antes de esta hora, %1: el indicador muestra de más. Aún encendida a esta, %2: muestra de menos.</translation>
    </message>
    <message>
        <source>Off before %1 h further on at this load: the gauge shows too much. Still on at %2 h further on at this load: it shows too little.</source>
        <translation>Apagada antes de %1 h más a esta carga: el indicador muestra de más. Aún encendida tras %2 h más a esta carga: muestra de menos.</translation>
    </message>
    <message>
        <source>Look at %1. Still on then: the gauge shows too little.</source>
        <translation>Mire a esta hora: %1. Si sigue encendida, el indicador muestra de menos.</translation>
    </message>
    <message>
        <source>Look at %1 h further on at this load. Still on then: the gauge shows too little.</source>
        <translation>Mire tras %1 h más a esta carga. Si sigue encendida, el indicador muestra de menos.</translation>
    </message>
    <message>
        <source>Or take the load off for an hour and leave the output on. Gauge right: it falls by %1 points. Gauge wrong: it hardly moves.</source>
        <translation>O quite la carga durante una hora y deje la salida encendida. Si el indicador acierta, baja %1 puntos. Si se equivoca, apenas se mueve.</translation>
    </message>
    <message>
        <source>a no-load drain run does not test the gauge against energy</source>
        <translation>un ensayo de descarga en vacío no contrasta el indicador con la energía</translation>
    </message>
    <message>
        <source>a charge run does not test the gauge against energy</source>
        <translation>un ensayo de recarga no contrasta el indicador con la energía</translation>
    </message>
    <message>
        <source>a sustained output run does not test the gauge against energy</source>
        <translation>un ensayo de potencia sostenida no contrasta el indicador con la energía</translation>
    </message>
    <message>
        <source>a peak output run does not test the gauge against energy</source>
        <translation>un ensayo de potencia de pico no contrasta el indicador con la energía</translation>
    </message>
    <message>
        <source>a standby run does not test the gauge against energy</source>
        <translation>un ensayo de reposo no contrasta el indicador con la energía</translation>
    </message>
    <message>
        <source>the run ended by cut-off: its shares of energy and time tell more</source>
        <translation>el ensayo terminó por corte: sus partes de energía y tiempo dicen más</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>menos de dos lecturas del registro</translation>
    </message>
    <message>
        <source>the gauge and the register have not been read together twice yet</source>
        <translation>el indicador y el registro aún no se han leído juntos dos veces</translation>
    </message>
    <message>
        <source>the gauge has not fallen by %1 points yet</source>
        <translation>el indicador aún no ha bajado %1 puntos</translation>
    </message>
    <message>
        <source>nothing has been delivered yet</source>
        <translation>aún no se ha entregado nada</translation>
    </message>
    <message>
        <source>%1 is %2 before the readings let the cut-off be expected (%3)</source>
        <translation>las %1 quedan %2 antes de lo que las lecturas dejan prever para el corte (%3)</translation>
    </message>
    <message>
        <source>%1 is %2 after the readings let the cut-off be expected (%3)</source>
        <translation>las %1 quedan %2 después de lo que las lecturas dejan prever para el corte (%3)</translation>
    </message>
    <message>
        <source>%1 it went off about %2, not at %3</source>
        <translation>%1, se apagó hacia las %2, no a las %3</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a charge run</source>
        <translation>solo una descarga o una descarga en vacío tiene un corte que prever; este es un ensayo de recarga</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a sustained output run</source>
        <translation>solo una descarga o una descarga en vacío tiene un corte que prever; este es un ensayo de potencia sostenida</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a peak output run</source>
        <translation>solo una descarga o una descarga en vacío tiene un corte que prever; este es un ensayo de potencia de pico</translation>
    </message>
    <message>
        <source>only a drain or a no-load drain has a cut-off to forecast; this is a standby run</source>
        <translation>solo una descarga o una descarga en vacío tiene un corte que prever; este es un ensayo de reposo</translation>
    </message>
    <message>
        <source>the run has ended: cut-off seen</source>
        <translation>el ensayo ha terminado: corte visto</translation>
    </message>
    <message>
        <source>the run has ended: found off</source>
        <translation>el ensayo ha terminado: hallado apagado</translation>
    </message>
    <message>
        <source>the run has ended: stopped by tester</source>
        <translation>el ensayo ha terminado: detenido por el ensayador</translation>
    </message>
    <message>
        <source>there are no readings yet</source>
        <translation>aún no hay lecturas</translation>
    </message>
    <message>
        <source>the cut-off was seen; end the run</source>
        <translation>se vio el corte; termine el ensayo</translation>
    </message>
    <message>
        <source>the output tripped and has not been switched on again; mark when it is</source>
        <translation>hubo un disparo de la salida y no se ha vuelto a encender; márquelo cuando lo esté</translation>
    </message>
    <message>
        <source>the gauge has no lower value to show</source>
        <translation>al indicador no le queda un valor más bajo que mostrar</translation>
    </message>
    <message>
        <source>the gauge falls so slowly that its next step may be more than a year away</source>
        <translation>el indicador baja tan despacio que su próximo escalón puede tardar más de un año</translation>
    </message>
    <message>
        <source>The reading at %1 threw the forecast over: before it the cut-off was expected %2.</source>
        <translation>La lectura de las %1 echó por tierra la previsión: antes, el corte se preveía de %2.</translation>
    </message>
    <message>
        <source>if the gauge is right</source>
        <translation>si el indicador acierta</translation>
    </message>
    <message>
        <source>if the gauge is wrong</source>
        <translation>si el indicador se equivoca</translation>
    </message>
    <message>
        <source>whichever is right</source>
        <translation>en cualquier caso</translation>
    </message>
    <message>
        <source>overdue by %1 min</source>
        <translation>con %1 min de retraso</translation>
    </message>
    <message>
        <source>overdue by %1 h</source>
        <translation>con %1 h de retraso</translation>
    </message>
    <message>
        <source>within %1 min</source>
        <translation>en menos de %1 min</translation>
    </message>
    <message>
        <source>within %1 h</source>
        <translation>en menos de %1 h</translation>
    </message>
    <message>
        <source>in %1 to %2 min</source>
        <translation>en %1 a %2 min</translation>
    </message>
    <message>
        <source>in %1 to %2 h</source>
        <translation>en %1 a %2 h</translation>
    </message>
    <message>
        <source>The register has not been read yet: read it together with the gauge.</source>
        <translation>El registro aún no se ha leído: léalo junto con el indicador.</translation>
    </message>
    <message>
        <source>The register has not been read since %1, the gauge has: read both together.</source>
        <translation>El registro no se ha leído desde las %1; el indicador, sí: lea ambos juntos.</translation>
    </message>
    <message>
        <source>The gauge has not been read yet: read it together with the register.</source>
        <translation>El indicador aún no se ha leído: léalo junto con el registro.</translation>
    </message>
    <message>
        <source>The gauge has not been read since %1, the register has: read both together.</source>
        <translation>El indicador no se ha leído desde las %1; el registro, sí: lea ambos juntos.</translation>
    </message>
    <message>
        <source>The cut-off was expected by %1: look whether the output is still on, and read gauge and register.</source>
        <translation>El corte se preveía como tarde para las %1: mire si la salida sigue encendida y lea indicador y registro.</translation>
    </message>
    <message>
        <source>Read often now, each %1 min: the cut-off is expected %2, and a cut-off that is seen gives the run time to the minute.</source>
        <translation>Lea ahora a menudo, cada %1 min: el corte se prevé de %2, y un corte visto da la autonomía al minuto.</translation>
    </message>
    <message>
        <source>Read often from %1, each %2 min: the cut-off is expected %3.</source>
        <translation>Lea a menudo desde las %1, cada %2 min: el corte se prevé de %3.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): it tells a bent gauge from a straight one.</source>
        <translation>Lea registro e indicador juntos cerca del %1 % (se prevé de %2): eso distingue un indicador curvado de uno lineal.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: it tells a bent gauge from a straight one.</source>
        <translation>Lea registro e indicador juntos cerca del %1 %: eso distingue un indicador curvado de uno lineal.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): it shows how the gauge runs into its end, and narrows the cut-off most.</source>
        <translation>Lea registro e indicador juntos cerca del %1 % (se prevé de %2): eso muestra cómo llega el indicador a su final y es lo que más estrecha el corte.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: it shows how the gauge runs into its end, and narrows the cut-off most.</source>
        <translation>Lea registro e indicador juntos cerca del %1 %: eso muestra cómo llega el indicador a su final y es lo que más estrecha el corte.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 % (expected %2): what is delivered after that is the gauge&apos;s hidden reserve.</source>
        <translation>Lea registro e indicador juntos cerca del %1 % (se prevé de %2): lo que se entregue después es la reserva oculta del indicador.</translation>
    </message>
    <message>
        <source>Read register and gauge together near %1 %: what is delivered after that is the gauge&apos;s hidden reserve.</source>
        <translation>Lea registro e indicador juntos cerca del %1 %: lo que se entregue después es la reserva oculta del indicador.</translation>
    </message>
    <message>
        <source>The gauge has not fallen enough to tell anything yet: read gauge and register together once it has fallen by a few points.</source>
        <translation>El indicador aún no ha bajado lo bastante para decir algo: lea indicador y registro juntos cuando haya bajado unos puntos.</translation>
    </message>
    <message>
        <source>The gauge has come to its lowest values: each reading of the register from now on measures what is left when it shows nothing.</source>
        <translation>El indicador ha llegado a sus valores más bajos: desde ahora, cada lectura del registro mide lo que queda cuando no muestra nada.</translation>
    </message>
    <message>
        <source>assumes that the load stays near %1 W</source>
        <translation>supone que la carga se mantiene cerca de %1 W</translation>
    </message>
    <message>
        <source>assumes that the load goes on as it has, %1 W in the mean</source>
        <translation>supone que la carga sigue como hasta ahora, %1 W de media</translation>
    </message>
    <message>
        <source>allows for a load that stays near %1 W and for one that returns to %2 W in the mean; a step yet to come cannot be foreseen</source>
        <translation>admite una carga que se mantiene cerca de %1 W y una que vuelve a %2 W de media; un escalón que aún ha de venir no se puede prever</translation>
    </message>
    <message>
        <source>holds if the gauge is right, as the earlier drains leave less than 2 % for a wrong one</source>
        <translation>vale si el indicador acierta, pues las descargas anteriores dejan menos del 2 % para uno erróneo</translation>
    </message>
    <message>
        <source>holds if the gauge is right, as readings and label leave less than 2 % for a wrong one</source>
        <translation>vale si el indicador acierta, pues las lecturas y la placa dejan menos del 2 % para uno erróneo</translation>
    </message>
    <message>
        <source>holds if the gauge is wrong, as readings and label leave less than 2 % for a right one</source>
        <translation>vale si el indicador se equivoca, pues las lecturas y la placa dejan menos del 2 % para uno acertado</translation>
    </message>
    <message>
        <source>holds whether the gauge is right or wrong</source>
        <translation>vale tanto si el indicador acierta como si se equivoca</translation>
    </message>
    <message>
        <source>asks no gauge, so it holds whether it is right or wrong</source>
        <translation>no pregunta a ningún indicador, así que vale tanto si acierta como si se equivoca</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>según el indicador de este ensayo, dentro de los %1 que absorbió una recarga anterior de corte a lleno</translation>
    </message>
    <message>
        <source>from the unit&apos;s label alone, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>solo según la placa del equipo, dentro de los %1 que absorbió una recarga anterior de corte a lleno</translation>
    </message>
    <message>
        <source>from what the unit was charged with, within the %1 that an earlier charge from cut-off to full took in</source>
        <translation>según lo que se recargó en el equipo, dentro de los %1 que absorbió una recarga anterior de corte a lleno</translation>
    </message>
    <message>
        <source>from the unit&apos;s label alone</source>
        <translation>solo según la placa del equipo</translation>
    </message>
    <message>
        <source>from what the unit was charged with</source>
        <translation>según lo que se recargó en el equipo</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge</source>
        <translation>según el indicador de este ensayo</translation>
    </message>
    <message>
        <source>from this run&apos;s gauge and time alone, without a register: assumes a steady load</source>
        <translation>solo según el indicador y el tiempo de este ensayo, sin registro: supone una carga constante</translation>
    </message>
    <message>
        <source>from earlier drains of the unit</source>
        <translation>según descargas anteriores del equipo</translation>
    </message>
    <message>
        <source>from earlier drains of the unit, with which this run&apos;s gauge agrees</source>
        <translation>según descargas anteriores del equipo, con las que concuerda el indicador de este ensayo</translation>
    </message>
    <message>
        <source>from earlier drains of the unit and this run&apos;s gauge, which disagree</source>
        <translation>según descargas anteriores del equipo y el indicador de este ensayo, que discrepan</translation>
    </message>
    <message>
        <source>allows for a gauge that is bent, offset, ends early, falls too fast, lingers, sticks, jumps, or is blind to the unit&apos;s own consumption</source>
        <translation>admite un indicador que está curvado o desplazado, termina antes de tiempo, baja demasiado rápido, se demora, se atasca, salta o no ve el consumo propio del equipo</translation>
    </message>
    <message>
        <source>the range holds both</source>
        <translation>el margen contiene ambos</translation>
    </message>
    <message>
        <source>±%1 % taken for a meter whose error limit is not stated</source>
        <translation>se toma ±%1 % para un contador cuyo límite de error no está indicado</translation>
    </message>
    <message>
        <source>%1, and no earlier drain of the unit tells</source>
        <translation>%1, y ninguna descarga anterior del equipo lo dice</translation>
    </message>
    <message>
        <source>it has already delivered more than the readings and the unit&apos;s label allow for; read often now</source>
        <translation>ya ha entregado más de lo que permiten las lecturas y la placa del equipo; lea ahora a menudo</translation>
    </message>
    <message>
        <source>the load is so small that the end may be more than a year away</source>
        <translation>la carga es tan pequeña que el final puede tardar más de un año</translation>
    </message>
    <message>
        <source>the gauge has not been read yet</source>
        <translation>el indicador aún no se ha leído</translation>
    </message>
    <message>
        <source>the gauge has not been read twice with the register yet</source>
        <translation>el indicador aún no se ha leído dos veces con el registro</translation>
    </message>
    <message>
        <source>the gauge has not fallen yet</source>
        <translation>el indicador aún no ha bajado</translation>
    </message>
    <message>
        <source>no time passed while the gauge fell</source>
        <translation>no pasó tiempo mientras bajaba el indicador</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>the gauge should have fallen by %1 points</source>
        <translation>el indicador debería haber bajado %1 puntos</translation>
    </message>
    <message>
        <source>the gauge falls so slowly that %1 points less may be more than a year away</source>
        <translation>el indicador baja tan despacio que %1 puntos menos pueden tardar más de un año</translation>
    </message>
    <message>
        <source>the gauge cannot fall by another %1 points</source>
        <translation>el indicador no puede bajar otros %1 puntos</translation>
    </message>
    <message>
        <source>the reading before the forecast cut-off has been taken</source>
        <translation>la lectura anterior al corte previsto ya se ha tomado</translation>
    </message>
    <message>
        <source>%1 min before the earliest cut-off forecast</source>
        <translation>%1 min antes del primer corte previsto</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>el ensayo ha terminado</translation>
    </message>
    <message>
        <source>%1 min after the last reading</source>
        <translation>%1 min después de la última lectura</translation>
    </message>
    <message>
        <source>no reminder is set</source>
        <translation>no hay ningún recordatorio puesto</translation>
    </message>
</context>
<context>
    <name>foreign_tables</name>
    <message>
        <source>text, %1, columns end at a tab</source>
        <translation>texto, %1, columnas separadas por tabulador</translation>
    </message>
    <message>
        <source>text, %1, columns end at a semicolon</source>
        <translation>texto, %1, columnas separadas por punto y coma</translation>
    </message>
    <message>
        <source>text, %1, columns end at an upright bar</source>
        <translation>texto, %1, columnas separadas por barra vertical</translation>
    </message>
    <message>
        <source>text, %1, columns end at a comma</source>
        <translation>texto, %1, columnas separadas por coma</translation>
    </message>
    <message>
        <source>text, %1, columns end at several blanks</source>
        <translation>texto, %1, columnas separadas por varios blancos</translation>
    </message>
    <message>
        <source>this is no table: neither a workbook nor a text</source>
        <translation>esto no es una tabla: ni un libro de cálculo ni un texto</translation>
    </message>
    <message>
        <source>choose an XLSX or ODS workbook, or a text with columns</source>
        <translation>elija un libro de cálculo XLSX u ODS, o un texto con columnas</translation>
    </message>
    <message>
        <source>it holds no table</source>
        <translation>no contiene ninguna tabla</translation>
    </message>
    <message>
        <source>copy the cells of the table, with their head</source>
        <translation>copie las celdas de la tabla, con su cabecera</translation>
    </message>
    <message>
        <source>web page</source>
        <translation>página web</translation>
    </message>
    <message>
        <source>the workbook has a password</source>
        <translation>el libro de cálculo tiene contraseña</translation>
    </message>
    <message>
        <source>save it without one, or copy its cells and paste them</source>
        <translation>guárdelo sin ella, o copie sus celdas y péguelas</translation>
    </message>
    <message>
        <source>ODS workbook</source>
        <translation>libro de cálculo ODS</translation>
    </message>
    <message>
        <source>the dates name no year (day %1, month %2)</source>
        <translation>las fechas no nombran año (día %1, mes %2)</translation>
    </message>
    <message>
        <source>the date `%1` cannot be read</source>
        <translation>no se puede leer la fecha `%1`</translation>
    </message>
    <message>
        <source>it has no time</source>
        <translation>no tiene hora</translation>
    </message>
    <message>
        <source>the time `%1` counts from the start, but in no unit</source>
        <translation>la hora `%1` cuenta desde el inicio, pero sin unidad de medida</translation>
    </message>
    <message>
        <source>the time `%1` cannot be read</source>
        <translation>no se puede leer la hora `%1`</translation>
    </message>
    <message>
        <source>`%1` is a date without a time</source>
        <translation>`%1` es una fecha sin hora</translation>
    </message>
    <message>
        <source>from row %1 on, behind an empty row, the figures begin anew: this may be another run</source>
        <translation>desde la fila %1, tras una fila vacía, las cifras empiezan de nuevo: puede ser otro ensayo</translation>
    </message>
    <message>
        <source>`%1` above row %2 is taken for a heading within the run</source>
        <translation>`%1`, encima de la fila %2, se toma por un título dentro del ensayo</translation>
    </message>
    <message>
        <source>the time %1 does not exist, as the clocks went forward</source>
        <translation>la hora %1 no existe, pues se adelantaron los relojes</translation>
    </message>
    <message>
        <source>the time %1 cannot be read</source>
        <translation>no se puede leer la hora %1</translation>
    </message>
    <message>
        <source>times that begin with 0:00 may be times of day, or count from the start</source>
        <translation>las horas que empiezan por 0:00 pueden ser horas del día o contar desde el inicio</translation>
    </message>
    <message>
        <source>the times count from the start of the run, and nothing says when that was</source>
        <translation>las horas cuentan desde el inicio del ensayo, y nada dice cuándo fue</translation>
    </message>
    <message>
        <source>the times count from the start of run %1, and nothing says when that was</source>
        <translation>las horas cuentan desde el inicio del ensayo %1, y nada dice cuándo fue</translation>
    </message>
    <message>
        <source>the times of the run name no date</source>
        <translation>las horas del ensayo no nombran fecha</translation>
    </message>
    <message>
        <source>the times of run %1 name no date</source>
        <translation>las horas del ensayo %1 no nombran fecha</translation>
    </message>
    <message>
        <source>no date is known for it</source>
        <translation>no se conoce ninguna fecha para ella</translation>
    </message>
    <message>
        <source>row %1: %2 lies before %3, so the clock or the date was never set</source>
        <translation>fila %1: %2 es anterior a %3, así que el reloj o la fecha no se puso nunca</translation>
    </message>
    <message>
        <source>row %1: %2 lies in the future</source>
        <translation>fila %1: %2 está en el futuro</translation>
    </message>
    <message>
        <source>where the time of day falls below that of the row before, midnight was passed</source>
        <translation>donde la hora del día es menor que la de la fila anterior, se pasó la medianoche</translation>
    </message>
    <message>
        <source>the rows are not in order of time; they are put in order</source>
        <translation>las filas no están en orden de tiempo; se ponen en orden</translation>
    </message>
    <message>
        <source>its cells are dates with a time</source>
        <translation>sus celdas son fechas con hora</translation>
    </message>
    <message>
        <source>its cells are times of day</source>
        <translation>sus celdas son horas del día</translation>
    </message>
    <message>
        <source>its cells are dates</source>
        <translation>sus celdas son fechas</translation>
    </message>
    <message>
        <source>its cells name %1</source>
        <translation>sus celdas nombran %1</translation>
    </message>
    <message>
        <source>its cells are words</source>
        <translation>sus celdas son palabras</translation>
    </message>
    <message>
        <source>`%1` has words in its cells</source>
        <translation>`%1` tiene palabras en sus celdas</translation>
    </message>
    <message>
        <source>another column was named for it</source>
        <translation>se nombró otra columna para ello</translation>
    </message>
    <message>
        <source>%1 and %2 could both be the %3</source>
        <translation>%1 y %2 podrían ser ambas «%3»</translation>
    </message>
    <message>
        <source>no column is known to hold the time</source>
        <translation>no se conoce ninguna columna que contenga la hora</translation>
    </message>
    <message>
        <source>no column is known to hold the gauge or the register</source>
        <translation>no se conoce ninguna columna que contenga el indicador o el registro</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>column %1 (`%2`)</source>
        <translation>columna %1 (`%2`)</translation>
    </message>
    <message>
        <source>as you said</source>
        <translation>como usted indicó</translation>
    </message>
    <message>
        <source>its cells are plain numbers, so they count from the start</source>
        <translation>sus celdas son números sin más, así que cuentan desde el inicio</translation>
    </message>
    <message>
        <source>a gauge of `%1` may be a share of 1 or percent</source>
        <translation>un indicador de `%1` puede ser una parte de 1 o un porcentaje</translation>
    </message>
    <message>
        <source>`%1` is a line of totals</source>
        <translation>`%1` es una línea de totales</translation>
    </message>
    <message>
        <source>it has no value</source>
        <translation>no tiene valor</translation>
    </message>
    <message>
        <source>`%1` has no time</source>
        <translation>`%1` no tiene hora</translation>
    </message>
    <message>
        <source>the %1 `%2` is no number; kept as a remark</source>
        <translation>%1: `%2` no es un número; se conserva como observación</translation>
    </message>
    <message>
        <source>a gauge in %1 is not understood; kept as a remark</source>
        <translation>no se entiende un indicador en %1; se conserva como observación</translation>
    </message>
    <message>
        <source>a gauge of %1 lies outside 0 to 100 %; kept as a remark</source>
        <translation>un indicador de %1 está fuera de 0 a 100 %; se conserva como observación</translation>
    </message>
    <message>
        <source>the register in %1 has no unit</source>
        <translation>el registro de %1 no tiene unidad de medida</translation>
    </message>
    <message>
        <source>%1 is no unit of the %2; kept as a remark</source>
        <translation>%1 no es una unidad de medida para «%2»; se conserva como observación</translation>
    </message>
    <message>
        <source>a register below 0 is not taken; kept as a remark</source>
        <translation>no se toma un registro menor que 0; se conserva como observación</translation>
    </message>
    <message>
        <source>a power below 0 is not taken; kept as a remark</source>
        <translation>no se toma una potencia menor que 0; se conserva como observación</translation>
    </message>
    <message>
        <source>row %1: `%2` is taken for the mark %3</source>
        <translation>fila %1: `%2` se toma por la marca %3</translation>
    </message>
    <message>
        <source>no row of the table has a time and a value</source>
        <translation>ninguna fila de la tabla tiene hora y valor</translation>
    </message>
    <message>
        <source>the workbook is damaged (its part %1)</source>
        <translation>el libro de cálculo está dañado (su parte %1)</translation>
    </message>
    <message>
        <source>open it in the program that made it and save it anew</source>
        <translation>ábralo en el programa que lo hizo y guárdelo de nuevo</translation>
    </message>
    <message>
        <source>list of contents</source>
        <translation>lista de contenidos</translation>
    </message>
    <message>
        <source>the workbook unpacks to more than %1 MB</source>
        <translation>el libro de cálculo ocupa más de %1 MB al descomprimirse</translation>
    </message>
    <message>
        <source>keep the sheet with the readings alone, or copy its cells and paste them</source>
        <translation>deje solo la hoja con las lecturas, o copie sus celdas y péguelas</translation>
    </message>
    <message>
        <source>XLSX workbook</source>
        <translation>libro de cálculo XLSX</translation>
    </message>
    <message>
        <source>there is nothing in it</source>
        <translation>no hay nada en él</translation>
    </message>
    <message>
        <source>choose a table of readings</source>
        <translation>elija una tabla de lecturas</translation>
    </message>
    <message>
        <source>the workbook has a password, or is of the old form .xls</source>
        <translation>el libro de cálculo tiene contraseña o es del formato antiguo .xls</translation>
    </message>
    <message>
        <source>save it as XLSX or ODS without a password, or copy its cells and paste them</source>
        <translation>guárdelo como XLSX u ODS sin contraseña, o copie sus celdas y péguelas</translation>
    </message>
    <message>
        <source>this zip file is no workbook</source>
        <translation>este archivo zip no es un libro de cálculo</translation>
    </message>
    <message>
        <source>the table is larger than %1 rows, %2 columns or %3 cells</source>
        <translation>la tabla supera %1 filas, %2 columnas o %3 celdas</translation>
    </message>
    <message>
        <source>import the log of a meter with Run, Import log; of another table keep the part with the readings</source>
        <translation>importe la grabación de un contador con Ensayo, Importar grabación; de otra tabla, deje la parte con las lecturas</translation>
    </message>
    <message>
        <source>no cell of it holds anything</source>
        <translation>ninguna de sus celdas contiene nada</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: its point is the decimal sign, or parts the thousands</source>
        <translation>`%1` se puede leer de dos maneras: su punto es el signo decimal o separa los miles</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: its comma is the decimal sign, or parts the thousands</source>
        <translation>`%1` se puede leer de dos maneras: su coma es el signo decimal o separa los miles</translation>
    </message>
    <message>
        <source>some numbers have a point as decimal sign and some a comma</source>
        <translation>unos números tienen punto como signo decimal y otros, coma</translation>
    </message>
    <message>
        <source>the decimal sign is a comma</source>
        <translation>el signo decimal es la coma</translation>
    </message>
    <message>
        <source>the dates may begin with the day or the month</source>
        <translation>las fechas pueden empezar por el día o por el mes</translation>
    </message>
    <message>
        <source>`%1` may begin with the day or the month</source>
        <translation>`%1` puede empezar por el día o por el mes</translation>
    </message>
    <message>
        <source>dates begin with the day, as one of them can be read in no other way</source>
        <translation>las fechas empiezan por el día, pues una de ellas no se puede leer de otra manera</translation>
    </message>
    <message>
        <source>dates begin with the month, as one of them can be read in no other way</source>
        <translation>las fechas empiezan por el mes, pues una de ellas no se puede leer de otra manera</translation>
    </message>
    <message>
        <source>the table has no row of heads; its columns are told by what they hold</source>
        <translation>la tabla no tiene fila de cabeceras; sus columnas se reconocen por lo que contienen</translation>
    </message>
    <message numerus="yes">
        <source>%n runs stand side by side</source>
        <comment>%n run stands by itself</comment>
        <translation>
            <numerusform>%n ensayo está solo</numerusform>
            <numerusform>%n ensayos están uno junto a otro</numerusform>
        </translation>
    </message>
    <message>
        <source>another head stands in row %1</source>
        <translation>hay otra cabecera en la fila %1</translation>
    </message>
    <message numerus="yes">
        <source>%n formulas have no value kept with them, so that their cells are empty; save the workbook once in its program</source>
        <comment>%n formula has no value kept with it, so that its cell is empty; save the workbook once in its program</comment>
        <translation>
            <numerusform>%n fórmula no tiene guardado su valor, de modo que su celda está vacía; guarde el libro de cálculo una vez en su programa</numerusform>
            <numerusform>%n fórmulas no tienen guardado su valor, de modo que sus celdas están vacías; guarde el libro de cálculo una vez en su programa</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` is not needed</source>
        <translation>`%1` no hace falta</translation>
    </message>
    <message>
        <source>`%1` names it</source>
        <translation>`%1` lo nombra</translation>
    </message>
    <message>
        <source>`%1` names it, in %2</source>
        <translation>`%1` lo nombra, en %2</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>sin usar</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>transcurrido</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>segundo registro</translation>
    </message>
    <message>
        <source>power of the load</source>
        <translation>potencia de la carga</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>potencia que muestra el equipo</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>run</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>equipo</translation>
    </message>
</context>
<context>
    <name>formats</name>
    <message numerus="yes">
        <source>there are %n keys that are not known</source>
        <comment>there is %n key that is not known</comment>
        <translation>
            <numerusform>hay %n clave que no se conoce</numerusform>
            <numerusform>hay %n claves que no se conocen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n appliances</source>
        <comment>there is %n appliance</comment>
        <translation>
            <numerusform>hay %n aparato</numerusform>
            <numerusform>hay %n aparatos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n readings</source>
        <comment>there is %n reading</comment>
        <translation>
            <numerusform>hay %n lectura</numerusform>
            <numerusform>hay %n lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>there are %n points of correction</source>
        <comment>there is %n point of correction</comment>
        <translation>
            <numerusform>hay %n punto de corrección</numerusform>
            <numerusform>hay %n puntos de corrección</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gauge</name>
    <message>
        <source>no time passed with the output on</source>
        <translation>no pasó tiempo con la salida encendida</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <comment>%n point</comment>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>The least error of the gauge is not known: %1.</source>
        <translation>No se conoce el error mínimo del indicador: %1.</translation>
    </message>
    <message>
        <source>a %1 run does not test the gauge against delivered energy</source>
        <translation>un ensayo de %1 no contrasta el indicador con la energía entregada</translation>
    </message>
    <message>
        <source>the gauge and the register have not been read together twice</source>
        <translation>el indicador y el registro no se han leído juntos dos veces</translation>
    </message>
    <message>
        <source>the bounds could not be resolved</source>
        <translation>no se pudieron determinar las cotas</translation>
    </message>
    <message>
        <source>whatever the losses are</source>
        <translation>sean cuales sean las pérdidas</translation>
    </message>
    <message>
        <source>An accurate gauge could have shown all of this.</source>
        <translation>Un indicador exacto habría podido mostrar todo esto.</translation>
    </message>
    <message>
        <source>whatever the losses are; rated energy or the meter&apos;s limit is not stated, so any battery was allowed</source>
        <translation>sean cuales sean las pérdidas; la energía asignada o el límite del contador no están indicados, así que se admitió cualquier batería</translation>
    </message>
    <message>
        <source>The gauge is wrong by at least %1 somewhere, whatever the losses are.</source>
        <translation>El indicador se equivoca al menos %1 en algún punto, sean cuales sean las pérdidas.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>duda</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>fallo</translation>
    </message>
    <message>
        <source>above 100</source>
        <translation>por encima de 100</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls faster before than after.</source>
        <translation>El indicador está curvado: muestra hasta %1 más que uno lineal, sobre todo hacia %2 (%3), y baja más rápido antes que después.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls more slowly before than after.</source>
        <translation>El indicador está curvado: muestra hasta %1 más que uno lineal, sobre todo hacia %2 (%3), y baja más despacio antes que después.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls faster before than after.</source>
        <translation>El indicador está curvado: muestra hasta %1 menos que uno lineal, sobre todo hacia %2 (%3), y baja más rápido antes que después.</translation>
    </message>
    <message>
        <source>Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls more slowly before than after.</source>
        <translation>El indicador está curvado: muestra hasta %1 menos que uno lineal, sobre todo hacia %2 (%3), y baja más despacio antes que después.</translation>
    </message>
    <message>
        <source>two lines with slopes in the ratio %1 instead of one, p %2; no no-load draw makes the readings as straight: at best one line leaves %3 times as much</source>
        <translation>dos rectas con pendientes en razón %1 en lugar de una, p %2; ningún consumo en vacío endereza tanto las lecturas: en el mejor caso, una recta deja %3 veces más</translation>
    </message>
    <message>
        <source>Gauge moves in steps of %1, not of %2 as stated.</source>
        <translation>El indicador se mueve en escalones de %1, no de %2 como está indicado.</translation>
    </message>
    <message numerus="yes">
        <source>all %n drops are multiples of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; threshold %3 pt</source>
        <comment>the %n drop is a multiple of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; threshold %3 pt</comment>
        <translation>
            <numerusform>la %n bajada es múltiplo de %1, y los valores se dispersan %2 pt en torno a un indicador lineal, como hacen esos escalones; umbral %3 pt</numerusform>
            <numerusform>las %n bajadas son múltiplos de %1, y los valores se dispersan %2 pt en torno a un indicador lineal, como hacen esos escalones; umbral %3 pt</numerusform>
        </translation>
    </message>
    <message>
        <source>At %1 shown, %2 had been delivered though the gauge implies %3: the gauge lags, or the battery holds more than its label.</source>
        <translation>Con %1 a la vista se habían entregado %2, aunque el indicador da a entender %3: el indicador va retrasado o la batería contiene más de lo que dice su placa.</translation>
    </message>
    <message>
        <source>beyond the meter&apos;s limit, the register step, one gauge step and %1 % for a gauge that counts charge by %2 at %3</source>
        <translation>más allá del límite del contador, el escalón del registro, un escalón del indicador y %1 % para un indicador que cuenta carga eléctrica: %2 a las %3</translation>
    </message>
    <message>
        <source>Output was found off at %1; nobody saw when it went off, so the run time is a bracket.</source>
        <translation>La salida se halló apagada a las %1; nadie vio cuándo se apagó, así que la autonomía es una horquilla.</translation>
    </message>
    <message>
        <source>run time %1</source>
        <translation>autonomía %1</translation>
    </message>
    <message>
        <source>run time %1: %2</source>
        <translation>autonomía %1: %2</translation>
    </message>
    <message>
        <source>After the gauge had come down to %1, at least %2 and at most %3 more were delivered.</source>
        <translation>Después de que el indicador bajara a %1, se entregaron al menos %2 y como máximo %3 más.</translation>
    </message>
    <message>
        <source>the rounding of the gauge explains up to %1; threshold %2</source>
        <translation>el redondeo del indicador explica hasta %1; umbral %2</translation>
    </message>
    <message>
        <source>Between %1 and %2 the register rose by only %3 while the gauge fell by %4, as after some %5: the register may have been zeroed unseen and have passed its old value again, so that %6 or more are missing, or the gauge jumped; this run cannot tell which.</source>
        <translation>Entre las %1 y las %2 el registro subió solo %3 mientras el indicador bajaba %4, como tras unos %5: el registro puede haberse puesto a cero sin que se viera y haber rebasado su valor antiguo, de modo que faltan %6 o más, o el indicador saltó; este ensayo no puede decir cuál de las dos cosas.</translation>
    </message>
    <message>
        <source>fell by %1 pt more than the steepest accurate gauge, going by the rest of the run; doubted beyond %2 pt where the whole later register could have flowed in the gap</source>
        <translation>bajó %1 pt más que el indicador exacto más empinado, según el resto del ensayo; se duda por encima de %2 pt donde todo el registro posterior habría podido fluir en el hueco</translation>
    </message>
    <message>
        <source>no unit with a no-load draw of 0 or more and a battery of at most 110 % of its label keeps the gauge within %1 pt at all of these readings; threshold %2 pt</source>
        <translation>ningún equipo con un consumo en vacío de 0 o más y una batería de como máximo el 110 % de su placa mantiene el indicador dentro de %1 pt en todas estas lecturas; umbral %2 pt</translation>
    </message>
    <message>
        <source>Gauge fell from %1 to %2 between %3 and %4, where energy and time explain at most %5.</source>
        <translation>El indicador bajó de %1 a %2 entre las %3 y las %4, donde energía y tiempo explican como máximo %5.</translation>
    </message>
    <message>
        <source>fell by %1 pt more than the steepest accurate gauge, whatever the no-load draw; threshold %2 pt</source>
        <translation>bajó %1 pt más que el indicador exacto más empinado, sea cual sea el consumo en vacío; umbral %2 pt</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, it probably does not count the unit&apos;s own consumption: it leaves room for at most %1 W beside a mean load of %2 W.</source>
        <translation>Si el indicador es lineal en la energía almacenada, probablemente no cuenta el consumo propio del equipo: deja lugar para %1 W como máximo junto a una carga media de %2 W.</translation>
    </message>
    <message>
        <source>fitted no-load draw %1, an interval that reaches 0 or nearly so; told when its upper end is at most %2 W</source>
        <translation>consumo en vacío ajustado %1, un intervalo que llega a 0 o casi; se informa si su extremo superior es de %2 W como máximo</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and of the time of this drain had gone.</source>
        <translation>A las %1 el indicador mostraba %2, al menos %3 de más: había salido el %4 % de la energía y del tiempo de esta descarga.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and of the time of this drain had gone.</source>
        <translation>A las %1 el indicador mostraba %2, al menos %3 de menos: había salido el %4 % de la energía y del tiempo de esta descarga.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and %5 % of the time of this drain had gone.</source>
        <translation>A las %1 el indicador mostraba %2, al menos %3 de más: había salido el %4 % de la energía y había pasado el %5 % del tiempo de esta descarga.</translation>
    </message>
    <message>
        <source>At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and %5 % of the time of this drain had gone.</source>
        <translation>A las %1 el indicador mostraba %2, al menos %3 de menos: había salido el %4 % de la energía y había pasado el %5 % del tiempo de esta descarga.</translation>
    </message>
    <message>
        <source>whatever the unit takes for itself, an accurate gauge shows %1 to %2 % then; threshold %3 pt outside</source>
        <translation>tome lo que tome el equipo para sí, un indicador exacto muestra entonces %1 a %2 %; umbral %3 pt fuera</translation>
    </message>
    <message>
        <source>Gauge rose from %1 to %2 between %3 and %4 though nothing charged the unit.</source>
        <translation>El indicador subió de %1 a %2 entre las %3 y las %4, aunque nada recargaba el equipo.</translation>
    </message>
    <message>
        <source>rose by %1 pt; threshold two gauge steps, %2 pt</source>
        <translation>subió %1 pt; umbral dos escalones del indicador, %2 pt</translation>
    </message>
    <message>
        <source>Off at about %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.</source>
        <translation>Se apagó con %1 a la vista, aproximadamente: el indicador terminó antes de tiempo o el equipo paró con energía dentro; este ensayo no puede decir cuál de las dos cosas.</translation>
    </message>
    <message>
        <source>Off at %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.</source>
        <translation>Se apagó con %1 a la vista: el indicador terminó antes de tiempo o el equipo paró con energía dentro; este ensayo no puede decir cuál de las dos cosas.</translation>
    </message>
    <message>
        <source>last gauge reading %1 at %2, %3 before the cut-off; at least %4 % then; threshold %5 %</source>
        <translation>última lectura del indicador %1 a las %2, %3 antes del corte; entonces, al menos %4 %; umbral %5 %</translation>
    </message>
    <message>
        <source>Gauge held at %1 from %2 to %3 while %4 were delivered (about %5).</source>
        <translation>El indicador se mantuvo en %1 de las %2 a las %3 mientras se entregaban %4 (unos %5).</translation>
    </message>
    <message>
        <source>Gauge stuck at %1 from %2 to %3 while %4 were delivered (about %5).</source>
        <translation>El indicador se atascó en %1 de las %2 a las %3 mientras se entregaban %4 (unos %5).</translation>
    </message>
    <message>
        <source>an accurate gauge would have fallen by at least %1 pt, whatever the no-load draw; threshold %2 pt</source>
        <translation>un indicador exacto habría bajado al menos %1 pt, sea cual sea el consumo en vacío; umbral %2 pt</translation>
    </message>
    <message>
        <source>sticks (%1)</source>
        <translation>se atasca (%1)</translation>
    </message>
    <message>
        <source>held at full (%1)</source>
        <translation>se mantiene en lleno (%1)</translation>
    </message>
    <message>
        <source>jumps (%1)</source>
        <translation>salta (%1)</translation>
    </message>
    <message>
        <source>rises (%1)</source>
        <translation>sube (%1)</translation>
    </message>
    <message>
        <source>shuts off showing %1 %</source>
        <translation>se apaga mostrando %1 %</translation>
    </message>
    <message>
        <source>reserve below 1 % (%1)</source>
        <translation>reserva por debajo del 1 % (%1)</translation>
    </message>
    <message>
        <source>lags (%1)</source>
        <translation>va retrasado (%1)</translation>
    </message>
    <message>
        <source>bent (%1)</source>
        <translation>curvado (%1)</translation>
    </message>
    <message>
        <source>coarse (%1)</source>
        <translation>basto (%1)</translation>
    </message>
    <message>
        <source>omits own consumption</source>
        <translation>omite el consumo propio</translation>
    </message>
    <message>
        <source>found off</source>
        <translation>hallado apagado</translation>
    </message>
    <message>
        <source>wrong by at least %1</source>
        <translation>se equivoca al menos %1</translation>
    </message>
    <message>
        <source>off by at least %1</source>
        <translation>se desvía al menos %1</translation>
    </message>
    <message>
        <source>one reading doubted (%1 %)</source>
        <translation>se duda de una lectura (%1 %)</translation>
    </message>
    <message>
        <source>register perhaps reset (%1)</source>
        <translation>registro quizá puesto a cero (%1)</translation>
    </message>
    <message>
        <source>not judged: no gauge reading with the register</source>
        <translation>sin juzgar: ninguna lectura del indicador con el registro</translation>
    </message>
    <message>
        <source>not judged: the gauge was read once</source>
        <translation>sin juzgar: el indicador se leyó una vez</translation>
    </message>
    <message>
        <source>no fault found</source>
        <translation>ningún fallo hallado</translation>
    </message>
    <message numerus="yes">
        <source>no fault in %n readings</source>
        <comment>no fault in %n reading</comment>
        <translation>
            <numerusform>ningún fallo en %n lectura</numerusform>
            <numerusform>ningún fallo en %n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>not judged: no reading between start and cut-off</source>
        <translation>sin juzgar: ninguna lectura entre inicio y corte</translation>
    </message>
    <message>
        <source>no fault found, within %1 pt</source>
        <translation>ningún fallo hallado, dentro de %1 pt</translation>
    </message>
    <message numerus="yes">
        <source>no fault found, within %1 pt at %n readings</source>
        <comment>no fault found, within %1 pt at %n reading</comment>
        <translation>
            <numerusform>ningún fallo hallado, dentro de %1 pt en %n lectura</numerusform>
            <numerusform>ningún fallo hallado, dentro de %1 pt en %n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>not judged: no drain</source>
        <translation>sin juzgar: ninguna descarga</translation>
    </message>
    <message>
        <source>Read gauge and register together at the start, once in the middle and at the end.</source>
        <translation>Lea indicador y registro juntos al inicio, una vez a la mitad y al final.</translation>
    </message>
    <message>
        <source>One reading of gauge and register between start and cut-off would hold the gauge against its shares.</source>
        <translation>Una lectura de indicador y registro entre inicio y corte contrastaría el indicador con sus partes de energía y tiempo.</translation>
    </message>
    <message>
        <source>Each further reading of gauge and register between start and cut-off holds the gauge to one more point.</source>
        <translation>Cada lectura más de indicador y registro entre inicio y corte contrasta el indicador en un punto más.</translation>
    </message>
    <message>
        <source>A drain to cut-off would hold each of these readings against the energy that came out.</source>
        <translation>Una descarga hasta el corte contrastaría cada una de estas lecturas con la energía que salió.</translation>
    </message>
    <message>
        <source>%1 at %2 stands alone: mistyped for %3? Without it nothing speaks against the gauge.</source>
        <translation>%1 a las %2 no concuerda con las demás: ¿mal escrito por %3? Sin esa lectura nada habla contra el indicador.</translation>
    </message>
    <message>
        <source>a slip of the pen makes %1 of %2, which fits; amend the reading if it was mistyped</source>
        <translation>un lapsus al escribir convierte %2, que encaja, en %1; enmiende la lectura si se escribió mal</translation>
    </message>
    <message>
        <source>at %1, by the shares of energy and time gone, whatever the losses are</source>
        <translation>a las %1, según las partes de energía y tiempo transcurridas, sean cuales sean las pérdidas</translation>
    </message>
    <message>
        <source>by the shares of energy and time gone, whatever the losses are</source>
        <translation>según las partes de energía y tiempo transcurridas, sean cuales sean las pérdidas</translation>
    </message>
    <message>
        <source>share delivered</source>
        <translation>parte entregada</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>energía asignada</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are none</source>
        <translation>una recta se comprueba a partir de cuatro lecturas de indicador y registro; aquí no hay ninguna</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there is one</source>
        <translation>una recta se comprueba a partir de cuatro lecturas de indicador y registro; aquí hay una</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are two</source>
        <translation>una recta se comprueba a partir de cuatro lecturas de indicador y registro; aquí hay dos</translation>
    </message>
    <message>
        <source>a line is tested from four readings of gauge and register on, here there are three</source>
        <translation>una recta se comprueba a partir de cuatro lecturas de indicador y registro; aquí hay tres</translation>
    </message>
    <message>
        <source>χ² %1 for %2 degrees of freedom, p %3</source>
        <translation>χ² %1 con %2 grados de libertad, p %3</translation>
    </message>
    <message>
        <source>A linear gauge explains these readings (%1).</source>
        <translation>Un indicador lineal explica estas lecturas (%1).</translation>
    </message>
    <message>
        <source>No linear gauge explains these readings (%1); a varying load with a no-load draw bends the line too.</source>
        <translation>Ningún indicador lineal explica estas lecturas (%1); una carga variable con un consumo en vacío también curva la recta.</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>the gauge fell by less than five of its steps</source>
        <translation>el indicador bajó menos de cinco de sus escalones</translation>
    </message>
    <message>
        <source>its readings lead to %1 at the cut-off, not to 0 %</source>
        <translation>sus lecturas llevan a %1 en el corte, no a 0 %</translation>
    </message>
    <message>
        <source>its readings lead back to %1 at the start, not to 100 %</source>
        <translation>sus lecturas llevan hacia atrás a %1 en el inicio, no a 100 %</translation>
    </message>
    <message>
        <source>the gauge follows the load by about %1</source>
        <translation>el indicador sigue a la carga en unos %1</translation>
    </message>
    <message>
        <source>a gauge that is not quite linear would change it beyond measure</source>
        <translation>un indicador no del todo lineal lo cambiaría sin medida</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, one run could tell the unit&apos;s own draw; here it is not known: %1.</source>
        <translation>Si el indicador es lineal en la energía almacenada, un solo ensayo podría decir el consumo propio del equipo; aquí no se conoce: %1.</translation>
    </message>
    <message>
        <source>a %1 run does not tell losses from delivered energy</source>
        <translation>un ensayo de %1 no distingue las pérdidas de la energía entregada</translation>
    </message>
    <message>
        <source>no meter is stated</source>
        <translation>no está indicado ningún contador</translation>
    </message>
    <message numerus="yes">
        <source>only %n gauge readings within the register&apos;s readings; 6 are needed</source>
        <comment>only %n gauge reading within the register&apos;s readings; 6 are needed</comment>
        <translation>
            <numerusform>solo %n lectura del indicador dentro de las lecturas del registro; hacen falta 6</numerusform>
            <numerusform>solo %n lecturas del indicador dentro de las lecturas del registro; hacen falta 6</numerusform>
        </translation>
    </message>
    <message>
        <source>the gauge rose from %1 to %2 at %3, so it is not linear in stored energy</source>
        <translation>el indicador subió de %1 a %2 a las %3, así que no es lineal en la energía almacenada</translation>
    </message>
    <message>
        <source>the gauge fell by only %1 points; %2 are needed</source>
        <translation>el indicador bajó solo %1 puntos; hacen falta %2</translation>
    </message>
    <message>
        <source>no energy was delivered between the gauge readings</source>
        <translation>no se entregó energía entre las lecturas del indicador</translation>
    </message>
    <message>
        <source>the load was so steady that time and energy cannot be told apart (%1 % of the energy&apos;s spread is not linear in time, %2 % are needed); vary the load, or make a second run at another load</source>
        <translation>la carga fue tan constante que tiempo y energía no se pueden separar (el %1 % de la dispersión de la energía no es lineal en el tiempo; hace falta el %2 %); varíe la carga o haga un segundo ensayo a otra carga</translation>
    </message>
    <message>
        <source>register steps and noted minutes make a steady load look as uneven as this one (%1 Wh off a straight line in time, %2 Wh by steps and minutes alone); vary the load more</source>
        <translation>los escalones del registro y los minutos anotados hacen que una carga constante parezca tan desigual como esta (%1 Wh fuera de una recta en el tiempo, %2 Wh solo por escalones y minutos); varíe más la carga</translation>
    </message>
    <message>
        <source>the gauge does not fall with delivered energy</source>
        <translation>el indicador no baja con la energía entregada</translation>
    </message>
    <message>
        <source>the gauge is not linear: its readings scatter %1 times as far as their steps explain, %2 times are allowed</source>
        <translation>el indicador no es lineal: sus lecturas se dispersan %1 veces lo que explican sus escalones; se admiten %2 veces</translation>
    </message>
    <message>
        <source>the gauge is not linear: it bulges by about %1 at half, as a gauge does that counts charge</source>
        <translation>el indicador no es lineal: se abomba unos %1 a la mitad, como hace un indicador que cuenta carga eléctrica</translation>
    </message>
    <message>
        <source>if the gauge is linear in stored energy</source>
        <translation>si el indicador es lineal en la energía almacenada</translation>
    </message>
    <message>
        <source>if the gauge is linear in stored energy; no interval: the error limit of the meter is not stated</source>
        <translation>si el indicador es lineal en la energía almacenada; sin intervalo: el límite de error del contador no está indicado</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 before its own consumption.</source>
        <translation>Si el indicador es lineal en la energía almacenada, el propio equipo consume %1 (vistos desde la toma) y entregaría %2 antes de su consumo propio.</translation>
    </message>
    <message>
        <source>the error limit of the meter is not stated</source>
        <translation>el límite de error del contador no está indicado</translation>
    </message>
    <message>
        <source>nothing was delivered between two register readings</source>
        <translation>no se entregó nada entre dos lecturas del registro</translation>
    </message>
    <message>
        <source>the gauge has not fallen</source>
        <translation>el indicador no ha bajado</translation>
    </message>
    <message>
        <source>from energy alone: a battery of this label holds at most %1, if the gauge is right over this run</source>
        <translation>solo por la energía: una batería de esta placa contiene %1 como máximo, si el indicador acierta en este ensayo</translation>
    </message>
    <message>
        <source>from energy alone: a battery of this label holds at most %1</source>
        <translation>solo por la energía: una batería de esta placa contiene %1 como máximo</translation>
    </message>
    <message>
        <source>not by this run&apos;s own fit, as %1</source>
        <translation>no por el ajuste propio de este ensayo, pues %1</translation>
    </message>
    <message>
        <source>this run&apos;s own fit is wider than half its value or outside of that</source>
        <translation>el ajuste propio de este ensayo es más ancho que la mitad de su valor o queda fuera de ello</translation>
    </message>
    <message>
        <source>not sharper, as %1</source>
        <translation>sin más precisión, pues %1</translation>
    </message>
    <message>
        <source>this run&apos;s own fit is wider than half its value, and %1</source>
        <translation>el ajuste propio de este ensayo es más ancho que la mitad de su valor, y %1</translation>
    </message>
    <message>
        <source>The unit itself takes at most %1 (seen from the socket): %2.</source>
        <translation>El propio equipo toma %1 como máximo (vistos desde la toma): %2.</translation>
    </message>
    <message>
        <source>What the unit itself takes is not known: %1.</source>
        <translation>No se conoce lo que toma el propio equipo: %1.</translation>
    </message>
    <message>
        <source>If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 if it took nothing for itself.</source>
        <translation>Si el indicador es lineal en la energía almacenada, el propio equipo consume %1 (vistos desde la toma) y entregaría %2 si no tomara nada para sí.</translation>
    </message>
    <message>
        <source>the gauge is at fault by about %1 points, so that anything from what was delivered to what the label holds may be</source>
        <translation>el indicador falla en unos %1 puntos, así que cabe todo, desde lo entregado hasta lo que contiene la placa</translation>
    </message>
    <message>
        <source>the gauge is at fault by about %1 points, which this allows for</source>
        <translation>el indicador falla en unos %1 puntos, lo que aquí se admite</translation>
    </message>
    <message>
        <source>the run is no complete drain from full to cut-off, so nothing says how deep it was</source>
        <translation>el ensayo no es una descarga completa de lleno a corte, así que nada dice qué profundidad tuvo</translation>
    </message>
    <message>
        <source>make a run that starts full and ends by cut-off</source>
        <translation>haga un ensayo que empiece lleno y termine por corte</translation>
    </message>
    <message>
        <source>the no-load draw does not lie within its limits</source>
        <translation>el consumo en vacío no está dentro de sus límites</translation>
    </message>
    <message>
        <source>give value, lower and upper limit in W</source>
        <translation>indique valor, límite inferior y límite superior en W</translation>
    </message>
</context>
<context>
    <name>gauge_curves</name>
    <message>
        <source>read the gauge more often</source>
        <translation>lea el indicador más a menudo</translation>
    </message>
    <message>
        <source>it is no drain from full to cut-off</source>
        <translation>no es una descarga de lleno a corte</translation>
    </message>
    <message>
        <source>not all of its energy was read</source>
        <translation>no se leyó toda su energía</translation>
    </message>
    <message>
        <source>when its output went off is not known well enough</source>
        <translation>no se conoce lo bastante bien cuándo se apagó su salida</translation>
    </message>
    <message>
        <source>its gauge was read at fewer than six depths</source>
        <translation>su indicador se leyó a menos de seis profundidades</translation>
    </message>
    <message>
        <source>its gauge fell by less than five steps</source>
        <translation>su indicador bajó menos de cinco escalones</translation>
    </message>
</context>
<context>
    <name>history</name>
    <message>
        <source>undone</source>
        <translation>al deshacer</translation>
    </message>
    <message>
        <source>redone</source>
        <translation>al rehacer</translation>
    </message>
    <message>
        <source>not all of it could be recorded</source>
        <translation>no se pudo anotar todo</translation>
    </message>
    <message>
        <source>the run was not ended</source>
        <translation>el ensayo no se ha terminado</translation>
    </message>
    <message>
        <source>joined with %1</source>
        <translation>unión con %1</translation>
    </message>
</context>
<context>
    <name>joining</name>
    <message>
        <source>the other logbook has settings of the method that this one has not; those of this one stay</source>
        <translation>el otro cuaderno tiene ajustes del método que este no tiene; quedan los de este</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>equipo %1</translation>
    </message>
    <message>
        <source>there is a unit %1 already, which is not the same one: it comes in as a further unit of this name</source>
        <translation>ya hay un equipo %1, que no es el mismo: entra como otro equipo con este nombre</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>contador %1</translation>
    </message>
    <message>
        <source>there is a meter %1 already, which is not the same one: it comes in as a further meter of this name</source>
        <translation>ya hay un contador %1, que no es el mismo: entra como otro contador con este nombre</translation>
    </message>
    <message>
        <source>meter %1 was withdrawn here; it comes back, as a run that comes in names it</source>
        <translation>el contador %1 se retiró aquí; vuelve, porque lo nombra un ensayo que entra</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>the reading that it shows</source>
        <translation>la lectura que muestra</translation>
    </message>
    <message>
        <source>photo %1 in %2</source>
        <translation>foto %1 en %2</translation>
    </message>
    <message>
        <source>log %1 in %2</source>
        <translation>grabación %1 en %2</translation>
    </message>
    <message>
        <source>load list %1</source>
        <translation>lista de cargas %1</translation>
    </message>
    <message>
        <source>there is another load list %1 already: it comes in as %2</source>
        <translation>ya hay otra lista de cargas %1: entra como %2</translation>
    </message>
    <message>
        <source>PV sheet %1</source>
        <translation>Hoja FV %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricante</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>rated energy (Wh)</source>
        <translation>energía asignada (Wh)</translation>
    </message>
    <message>
        <source>rated output (W)</source>
        <translation>potencia asignada (W)</translation>
    </message>
    <message>
        <source>peak output (W)</source>
        <translation>potencia de pico (W)</translation>
    </message>
    <message>
        <source>highest PV voltage (V)</source>
        <translation>tensión FV máxima (V)</translation>
    </message>
    <message>
        <source>highest PV current (A)</source>
        <translation>corriente FV máxima (A)</translation>
    </message>
    <message>
        <source>highest PV power (W)</source>
        <translation>potencia FV máxima (W)</translation>
    </message>
    <message>
        <source>PV starts at (V)</source>
        <translation>tensión de arranque FV (V)</translation>
    </message>
    <message>
        <source>PV short-circuit current (A)</source>
        <translation>corriente de cortocircuito FV (A)</translation>
    </message>
    <message>
        <source>charge time (h)</source>
        <translation>tiempo de recarga (h)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>paid price</source>
        <translation>precio pagado</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>mass (kg)</source>
        <translation>masa (kg)</translation>
    </message>
    <message>
        <source>warranty (years)</source>
        <translation>garantía (años)</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>chemistry</source>
        <translation>química</translation>
    </message>
    <message>
        <source>purchased</source>
        <translation>comprado</translation>
    </message>
    <message>
        <source>cycles before</source>
        <translation>ciclos previos</translation>
    </message>
    <message>
        <source>gauge step (%)</source>
        <translation>resolución del indicador (%)</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>step (Wh)</source>
        <translation>resolución (Wh)</translation>
    </message>
    <message>
        <source>limit (%)</source>
        <translation>límite (%)</translation>
    </message>
    <message>
        <source>part of the load (%)</source>
        <translation>parte propia de la carga (%)</translation>
    </message>
    <message>
        <source>span (Wh)</source>
        <translation>tope (Wh)</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>points of the certificate</source>
        <translation>puntos del certificado</translation>
    </message>
    <message>
        <source>class</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>starting current (A)</source>
        <translation>corriente de arranque (A)</translation>
    </message>
    <message>
        <source>lowest load of its range (W)</source>
        <translation>carga mínima de su rango (W)</translation>
    </message>
    <message>
        <source>highest load of its range (W)</source>
        <translation>carga máxima de su rango (W)</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificado</translation>
    </message>
    <message>
        <source>certificate date</source>
        <translation>fecha del certificado</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratorio</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>válido hasta</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>started full</source>
        <translation>empezó lleno</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>terminó</translation>
    </message>
    <message>
        <source>end noticed within (min)</source>
        <translation>fin advertido como mucho tras (min)</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>zona horaria</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>ambient (°C)</source>
        <translation>ambiente (°C)</translation>
    </message>
    <message>
        <source>ambient at the end (°C)</source>
        <translation>ambiente al final (°C)</translation>
    </message>
    <message>
        <source>charge source</source>
        <translation>fuente de la recarga</translation>
    </message>
    <message>
        <source>module</source>
        <translation>módulo</translation>
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
        <translation>coeficiente de Voc</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>coeficiente de Vmp</translation>
    </message>
    <message>
        <source>coefficient of the power</source>
        <translation>coeficiente de la potencia</translation>
    </message>
    <message>
        <source>tolerance of the voltages (%)</source>
        <translation>tolerancia de las tensiones (%)</translation>
    </message>
    <message>
        <source>NOCT (°C)</source>
        <translation>NOCT (°C)</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>células</translation>
    </message>
    <message>
        <source>modules in a string</source>
        <translation>módulos en una cadena</translation>
    </message>
    <message>
        <source>strings side by side</source>
        <translation>cadenas en paralelo</translation>
    </message>
    <message>
        <source>coldest (°C)</source>
        <translation>ambiente más frío (°C)</translation>
    </message>
    <message>
        <source>hottest (°C)</source>
        <translation>ambiente más cálido (°C)</translation>
    </message>
    <message>
        <source>hottest cell (°C)</source>
        <translation>célula máxima (°C)</translation>
    </message>
    <message>
        <source>irradiance (W/m²)</source>
        <translation>irradiancia (W/m²)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>crystalline silicon</source>
        <translation>silicio cristalino</translation>
    </message>
    <message>
        <source>other than crystalline silicon</source>
        <translation>distintas del silicio cristalino</translation>
    </message>
    <message>
        <source>%1 Wh in %2 h</source>
        <translation>%1 Wh en %2 h</translation>
    </message>
    <message>
        <source>duty %1</source>
        <translation>factor de marcha %1</translation>
    </message>
    <message>
        <source>%1 h a day</source>
        <translation>%1 h al día</translation>
    </message>
    <message>
        <source>%1 h at night</source>
        <translation>%1 h de noche</translation>
    </message>
    <message>
        <source>%1 W at the start</source>
        <translation>%1 W en el arranque</translation>
    </message>
    <message>
        <source>always connected</source>
        <translation>siempre conectado</translation>
    </message>
    <message>
        <source>%1 of %2, %3</source>
        <translation>%1 de %2, %3</translation>
    </message>
    <message>
        <source>reading of %1, %2, in %3</source>
        <translation>lectura del %1, %2, en %3</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>segundo contador</translation>
    </message>
    <message>
        <source>further keys</source>
        <translation>otras claves</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>gauge (%)</source>
        <translation>indicador (%)</translation>
    </message>
    <message>
        <source>register (Wh)</source>
        <translation>registro (Wh)</translation>
    </message>
    <message>
        <source>second register (Wh)</source>
        <translation>segundo registro (Wh)</translation>
    </message>
    <message>
        <source>meter (W)</source>
        <translation>contador (W)</translation>
    </message>
    <message>
        <source>display (W)</source>
        <translation>pantalla (W)</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>file</source>
        <translation>archivo</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>muestras</translation>
    </message>
    <message>
        <source>first sample</source>
        <translation>primera muestra</translation>
    </message>
    <message>
        <source>last sample</source>
        <translation>última muestra</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>difiere</translation>
    </message>
    <message>
        <source>withdrawn here</source>
        <translation>retirado aquí</translation>
    </message>
    <message>
        <source>withdrawn there</source>
        <translation>retirado allí</translation>
    </message>
    <message>
        <source>the same readings as a run here</source>
        <translation>las mismas lecturas que un ensayo de aquí</translation>
    </message>
    <message>
        <source>tells of the same time as a log here</source>
        <translation>habla del mismo tiempo que una grabación de aquí</translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n lectura</numerusform>
            <numerusform>%n lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n logs</source>
        <comment>%n log</comment>
        <translation>
            <numerusform>%n grabación</numerusform>
            <numerusform>%n grabaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>this is the same logbook</source>
        <translation>este es el mismo cuaderno</translation>
    </message>
    <message>
        <source>name another logbook to be joined with it</source>
        <translation>indique otro cuaderno para unirlo con este</translation>
    </message>
    <message>
        <source>no difference has the id `%1`</source>
        <translation>ninguna diferencia tiene el identificador `%1`</translation>
    </message>
    <message>
        <source>use `all`, `newer` or an id that --dry-run shows</source>
        <translation>use `all`, `newer` o un identificador que muestre --dry-run</translation>
    </message>
    <message>
        <source>several differences have an id that begins with `%1`</source>
        <translation>varias diferencias tienen un identificador que empieza por `%1`</translation>
    </message>
    <message>
        <source>give more of it</source>
        <translation>indique más caracteres</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Uniendo</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>record</source>
        <translation>elemento</translation>
    </message>
    <message>
        <source>id</source>
        <translation>identificador</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>there</source>
        <translation>allí</translation>
    </message>
    <message>
        <source>comes in</source>
        <translation>entra</translation>
    </message>
    <message>
        <source>stays out</source>
        <translation>se queda fuera</translation>
    </message>
    <message>
        <source>more of it</source>
        <translation>más contenido</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>taken from the other</source>
        <translation>se toma del otro</translation>
    </message>
    <message>
        <source>stays as here</source>
        <translation>queda como aquí</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message numerus="yes">
        <source>%n units</source>
        <comment>%n unit</comment>
        <translation>
            <numerusform>%n equipo</numerusform>
            <numerusform>%n equipos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n contador</numerusform>
            <numerusform>%n contadores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n lista de cargas</numerusform>
            <numerusform>%n listas de cargas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n PV sheets</source>
        <comment>%n PV sheet</comment>
        <translation>
            <numerusform>%n hoja FV</numerusform>
            <numerusform>%n hojas FV</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing came in</source>
        <translation>no ha entrado nada</translation>
    </message>
    <message>
        <source>%1 came in</source>
        <translation>entrada de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n differences taken from the other logbook</source>
        <comment>%n difference taken from the other logbook</comment>
        <translation>
            <numerusform>%n diferencia tomada del otro cuaderno</numerusform>
            <numerusform>%n diferencias tomadas del otro cuaderno</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n differences stay as here</source>
        <comment>%n difference stays as here</comment>
        <translation>
            <numerusform>%n diferencia queda como aquí</numerusform>
            <numerusform>%n diferencias quedan como aquí</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>live</name>
    <message>
        <source>output off</source>
        <translation>salida apagada</translation>
    </message>
    <message>
        <source>output back</source>
        <translation>salida de vuelta</translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>carga cambiada</translation>
    </message>
    <message>
        <source>meter restarted</source>
        <translation>contador reiniciado</translation>
    </message>
    <message>
        <source>register back at 0</source>
        <translation>registro de nuevo en 0</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>sin respuesta</translation>
    </message>
    <message>
        <source>nothing has come for %1; before, a sample came every %2</source>
        <translation>no ha llegado nada durante %1; antes llegaba una muestra cada %2</translation>
    </message>
    <message>
        <source>nothing came for %1</source>
        <translation>no llegó nada durante %1</translation>
    </message>
    <message>
        <source>the register went from %1 Wh to %2 Wh</source>
        <translation>el registro pasó de %1 Wh a %2 Wh</translation>
    </message>
    <message>
        <source>%1 W after %2 without power; a load that pauses by itself does this too</source>
        <translation>%1 W tras %2 sin potencia; una carga que hace pausas por sí misma también hace esto</translation>
    </message>
    <message>
        <source>power at %1 W for %2, before %3 W on average</source>
        <translation>potencia en %1 W durante %2; antes, %3 W de media</translation>
    </message>
    <message>
        <source>the longest pause of the load was %1</source>
        <translation>la pausa más larga de la carga fue de %1</translation>
    </message>
    <message>
        <source>register still at %1 Wh</source>
        <translation>registro aún en %1 Wh</translation>
    </message>
    <message>
        <source>nothing came for %1 between the last sample with power and the first without</source>
        <translation>no llegó nada durante %1 entre la última muestra con potencia y la primera sin ella</translation>
    </message>
    <message>
        <source>the register rises again</source>
        <translation>el registro vuelve a subir</translation>
    </message>
    <message>
        <source>the register has stood at %1 Wh for %2; before, it rose at least every %3</source>
        <translation>el registro lleva %2 en %1 Wh; antes subía al menos cada %3</translation>
    </message>
    <message>
        <source>from %1 W to %2 W, steady for two minutes</source>
        <translation>de %1 W a %2 W, constante durante dos minutos</translation>
    </message>
    <message>
        <source>what is read</source>
        <translation>qué se lee</translation>
    </message>
    <message>
        <source>it does not say where the value stands</source>
        <translation>no dice dónde está el valor</translation>
    </message>
    <message>
        <source>write it like `power holding 52 as f32 in W`</source>
        <translation>escríbalo como `power holding 52 as f32 in W`</translation>
    </message>
    <message>
        <source>the place is too long</source>
        <translation>el lugar es demasiado largo</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>acórtelo</translation>
    </message>
    <message>
        <source>`%1` is no Modbus register</source>
        <translation>`%1` no es un registro Modbus</translation>
    </message>
    <message>
        <source>write `holding 52` or `input 52`, counted from 0 to 65535</source>
        <translation>escriba `holding 52` o `input 52`, contado de 0 a 65535</translation>
    </message>
    <message>
        <source>`%1` is no JSON pointer</source>
        <translation>`%1` no es un puntero JSON</translation>
    </message>
    <message>
        <source>write it like #/meters/0/power (RFC 6901)</source>
        <translation>escríbalo como #/meters/0/power (RFC 6901)</translation>
    </message>
    <message>
        <source>`%1` is no place in an answer</source>
        <translation>`%1` no es un lugar en una respuesta</translation>
    </message>
    <message>
        <source>write a JSON pointer like #/meters/0/power, or `body`</source>
        <translation>escriba un puntero JSON como #/meters/0/power, o `body`</translation>
    </message>
    <message>
        <source>a topic without wildcards is needed</source>
        <translation>hace falta un tema sin comodines</translation>
    </message>
    <message>
        <source>write it like `power bench/plug/power` or `power bench/plug#/power`</source>
        <translation>escríbalo como `power bench/plug/power` o `power bench/plug#/power`</translation>
    </message>
    <message>
        <source>`%1` is no column</source>
        <translation>`%1` no es una columna</translation>
    </message>
    <message>
        <source>write `column 3`, counted from 1</source>
        <translation>escriba `column 3`, contado desde 1</translation>
    </message>
    <message>
        <source>`%1` is no OBIS code</source>
        <translation>`%1` no es un código OBIS</translation>
    </message>
    <message>
        <source>write it like 1.8.0 or 1-0:16.7.0</source>
        <translation>escríbalo como 1.8.0 o 1-0:16.7.0</translation>
    </message>
    <message>
        <source>a query holds no control characters</source>
        <translation>una consulta no contiene caracteres de control</translation>
    </message>
    <message>
        <source>write it like MEAS:POW?</source>
        <translation>escríbalo como MEAS:POW?</translation>
    </message>
    <message>
        <source>`%1` is no query that only reads: its first word ends with `?`</source>
        <translation>`%1` no es una consulta que solo lea: su primera palabra termina en `?`</translation>
    </message>
    <message>
        <source>`%1` is no type of a number in registers</source>
        <translation>`%1` no es un tipo de número en registros</translation>
    </message>
    <message>
        <source>use u16, s16, u32, s32, u64, s64, f32 or f64</source>
        <translation>use u16, s16, u32, s32, u64, s64, f32 o f64</translation>
    </message>
    <message>
        <source>an item is counted from 1</source>
        <translation>un elemento se cuenta desde 1</translation>
    </message>
    <message>
        <source>write `item 2`</source>
        <translation>escriba `item 2`</translation>
    </message>
    <message>
        <source>`%1` is no unit of %2</source>
        <translation>`%1` no es una unidad de medida para «%2»</translation>
    </message>
    <message>
        <source>use one such as %1</source>
        <translation>use una como %1</translation>
    </message>
    <message>
        <source>`%1` is no factor</source>
        <translation>`%1` no es un factor</translation>
    </message>
    <message>
        <source>write `times 0.1`</source>
        <translation>escriba `times 0.1`</translation>
    </message>
    <message>
        <source>`%1` does not begin with what the value is</source>
        <translation>`%1` no empieza por lo que es el valor</translation>
    </message>
    <message>
        <source>begin with register, power, voltage, current, gauge or output</source>
        <translation>empiece por register, power, voltage, current, gauge u output</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>no se entiende `%1`</translation>
    </message>
    <message>
        <source>what may follow: as TYPE, item N, in UNIT, times X</source>
        <translation>lo que puede seguir: as TYPE, item N, in UNIT, times X</translation>
    </message>
    <message>
        <source>%1 column %2 in %3</source>
        <translation>%1 columna %2 en %3</translation>
    </message>
    <message>
        <source>address</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>there is no address</source>
        <translation>no hay dirección</translation>
    </message>
    <message>
        <source>enter host, URL or device file</source>
        <translation>introduzca host, URL o archivo de dispositivo</translation>
    </message>
    <message>
        <source>an address holds no blanks</source>
        <translation>una dirección no contiene blancos</translation>
    </message>
    <message>
        <source>check it</source>
        <translation>compruébela</translation>
    </message>
    <message>
        <source>`%1` is no device file</source>
        <translation>`%1` no es un archivo de dispositivo</translation>
    </message>
    <message>
        <source>write it like /dev/ttyUSB0</source>
        <translation>escríbalo como /dev/ttyUSB0</translation>
    </message>
    <message>
        <source>`%1` is no address of a web service</source>
        <translation>`%1` no es la dirección de un servicio web</translation>
    </message>
    <message>
        <source>write it like http://192.0.2.20/status</source>
        <translation>escríbala como http://192.0.2.20/status</translation>
    </message>
    <message>
        <source>a user or password does not belong into the address</source>
        <translation>un usuario o una contraseña no van en la dirección</translation>
    </message>
    <message>
        <source>the program asks for the password when it reads</source>
        <translation>el programa pide la contraseña al leer</translation>
    </message>
    <message>
        <source>`%1` is no host</source>
        <translation>`%1` no es un host</translation>
    </message>
    <message>
        <source>write it like 192.0.2.10 or meter.example.org:1502</source>
        <translation>escríbalo como 192.0.2.10 o meter.example.org:1502</translation>
    </message>
    <message>
        <source>`%1` is no host with a port from 1 to 65535</source>
        <translation>`%1` no es un host con un puerto de 1 a 65535</translation>
    </message>
    <message>
        <source>write it like 192.0.2.10:1502</source>
        <translation>escríbalo como 192.0.2.10:1502</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>`%1` is no setting of a serial line</source>
        <translation>`%1` no es un ajuste de una línea serie</translation>
    </message>
    <message>
        <source>write it like 9600 8N1 or 300 7E1</source>
        <translation>escríbalo como 9600 8N1 o 300 7E1</translation>
    </message>
    <message>
        <source>user</source>
        <translation>usuario</translation>
    </message>
    <message>
        <source>station</source>
        <translation>estación</translation>
    </message>
    <message>
        <source>a station is a number from 0 to 255</source>
        <translation>una estación es un número de 0 a 255</translation>
    </message>
    <message>
        <source>see the setting of the meter</source>
        <translation>vea el ajuste del contador</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>intervalo</translation>
    </message>
    <message>
        <source>questions come between 0.1 and 3600 s apart</source>
        <translation>entre dos consultas hay de 0,1 a 3600 s</translation>
    </message>
    <message>
        <source>enter seconds</source>
        <translation>introduzca segundos</translation>
    </message>
    <message>
        <source>only Modbus has SunSpec models</source>
        <translation>solo Modbus tiene modelos SunSpec</translation>
    </message>
    <message>
        <source>name fields</source>
        <translation>nombre campos</translation>
    </message>
    <message>
        <source>nothing is read</source>
        <translation>no se lee nada</translation>
    </message>
    <message>
        <source>name a field, such as `power …`</source>
        <translation>nombre un campo, como `power …`</translation>
    </message>
    <message>
        <source>these are too many fields</source>
        <translation>son demasiados campos</translation>
    </message>
    <message>
        <source>name at most 64</source>
        <translation>nombre 64 como máximo</translation>
    </message>
    <message>
        <source>%1 is named twice</source>
        <translation>%1 está nombrado dos veces</translation>
    </message>
    <message>
        <source>leave one of them</source>
        <translation>deje uno de ellos</translation>
    </message>
    <message>
        <source>what is read, line %1</source>
        <translation>qué se lee, línea %1</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>the description of a source is not understood</source>
        <translation>no se entiende la descripción de una fuente</translation>
    </message>
    <message>
        <source>write it as `ullage watch --help` says, or set it up anew</source>
        <translation>escríbala como dice `ullage watch --help`, o configúrela de nuevo</translation>
    </message>
    <message>
        <source>this kind of source is not known</source>
        <translation>no se conoce esta clase de fuente</translation>
    </message>
    <message>
        <source>use one that `ullage watch --help` lists</source>
        <translation>use una de las que muestra `ullage watch --help`</translation>
    </message>
    <message>
        <source>`%1` is no part of a source</source>
        <translation>`%1` no es parte de una fuente</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>omítalo</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>el ensayo ha terminado</translation>
    </message>
    <message>
        <source>start a new run, or set it to still running</source>
        <translation>inicie un ensayo nuevo o póngalo en curso</translation>
    </message>
    <message>
        <source>%1, from the samples of the live source: %2</source>
        <translation>%1, según las muestras de la fuente en directo: %2</translation>
    </message>
</context>
<context>
    <name>measure</name>
    <message>
        <source>there is no register before that to start from</source>
        <translation>antes de eso no hay registro del que partir</translation>
    </message>
    <message>
        <source>%1 is less than the %2 Wh read at %3</source>
        <translation>%1 es menos que los %2 Wh leídos a las %3</translation>
    </message>
    <message>
        <source>type what it showed just before the reset</source>
        <translation>escriba lo que mostraba justo antes de la puesta a cero</translation>
    </message>
    <message>
        <source>%1 is more than this unit can be believed to deliver since %2</source>
        <translation>%1 es más de lo que cabe creer que este equipo entregue desde las %2</translation>
    </message>
    <message>
        <source>just before the reset; its time by the load</source>
        <translation>justo antes de la puesta a cero; su hora, según la carga</translation>
    </message>
    <message>
        <source>no interval: the error limit of the meter is not stated</source>
        <translation>sin intervalo: el límite de error del contador no está indicado</translation>
    </message>
    <message>
        <source>no interval: the error limit of meter %1 is not stated</source>
        <translation>sin intervalo: el límite de error del contador %1 no está indicado</translation>
    </message>
    <message>
        <source>no interval: the log of a meter that is not stated stands in, so its error limit is not known</source>
        <translation>sin intervalo: interviene la grabación de un contador que no está indicado, así que no se conoce su límite de error</translation>
    </message>
    <message>
        <source>no interval: no meter is stated, so its error limit is not known</source>
        <translation>sin intervalo: no está indicado ningún contador, así que no se conoce su límite de error</translation>
    </message>
    <message>
        <source>no interval: another meter took over and is not stated, so its error limit is not known; name it as the second meter of the run</source>
        <translation>sin intervalo: continuó otro contador que no está indicado, así que no se conoce su límite de error; nómbrelo como segundo contador del ensayo</translation>
    </message>
    <message>
        <source>meter gain, limit ±%1 %</source>
        <translation>ganancia del contador, límite ±%1 %</translation>
    </message>
    <message>
        <source>meter gain of %2, limit ±%1 %</source>
        <translation>ganancia del contador %2, límite ±%1 %</translation>
    </message>
    <message>
        <source>meter gain by its certificate, u = %1 %</source>
        <translation>ganancia del contador según su certificado, u = %1 %</translation>
    </message>
    <message>
        <source>meter gain of %2 by its certificate, u = %1 %</source>
        <translation>ganancia del contador %2 según su certificado, u = %1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n short gaps without register (%1), up to %2 Wh</source>
        <comment>%n short gap without register (%1), up to %2 Wh</comment>
        <translation>
            <numerusform>%n hueco corto sin registro (%1), hasta %2 Wh</numerusform>
            <numerusform>%n huecos cortos sin registro (%1), hasta %2 Wh</numerusform>
        </translation>
    </message>
    <message>
        <source>register step %1 Wh</source>
        <translation>resolución del registro %1 Wh</translation>
    </message>
    <message>
        <source>register step %1 Wh (found from the readings)</source>
        <translation>resolución del registro %1 Wh (hallada en las lecturas)</translation>
    </message>
    <message>
        <source>register step %1 Wh (as the readings show)</source>
        <translation>resolución del registro %1 Wh (como muestran las lecturas)</translation>
    </message>
    <message numerus="yes">
        <source>two readings in each of %n stretches</source>
        <comment>two readings in each of %n stretch</comment>
        <translation>
            <numerusform>dos lecturas en %n tramo</numerusform>
            <numerusform>dos lecturas en cada uno de %n tramos</numerusform>
        </translation>
    </message>
    <message>
        <source>two readings</source>
        <translation>dos lecturas</translation>
    </message>
    <message>
        <source>read once after a start at 0, rounding or truncation unknown</source>
        <translation>leído una vez tras un inicio en 0, sin saber si redondea o trunca</translation>
    </message>
    <message>
        <source>power step %1 W of the log, all the time alike, rounding or truncation unknown</source>
        <translation>escalón de potencia de %1 W de la grabación, siempre igual, sin saber si redondea o trunca</translation>
    </message>
    <message>
        <source>power between the samples of the log</source>
        <translation>potencia entre las muestras de la grabación</translation>
    </message>
    <message>
        <source>noted moments of start and end against the log&apos;s clock, interpolated between its samples</source>
        <translation>momentos anotados de inicio y fin según el reloj de la grabación, interpolados entre sus muestras</translation>
    </message>
    <message>
        <source>log of another meter standing in for %1, its ends against both clocks</source>
        <translation>grabación de otro contador en lugar de %1, con sus extremos según ambos relojes</translation>
    </message>
    <message>
        <source>log of %2 standing in for %1, its ends against both clocks</source>
        <translation>grabación de %2 en lugar de %1, con sus extremos según ambos relojes</translation>
    </message>
    <message>
        <source>95 % of a rectangular gain of ±%1 Wh convolved with an independent part of %2 Wh standard uncertainty</source>
        <translation>95 % de una ganancia rectangular de ±%1 Wh convolucionada con una parte independiente de %2 Wh de incertidumbre típica</translation>
    </message>
    <message>
        <source>95 % of a rectangular gain of ±%1 Wh convolved with a normal part of %2 Wh standard uncertainty</source>
        <translation>95 % de una ganancia rectangular de ±%1 Wh convolucionada con una parte normal de %2 Wh de incertidumbre típica</translation>
    </message>
    <message>
        <source>95 % of a normal part of %1 Wh standard uncertainty</source>
        <translation>95 % de una parte normal de %1 Wh de incertidumbre típica</translation>
    </message>
    <message>
        <source>and %1 Wh for what may have flowed while the register was not read</source>
        <translation>y %1 Wh por lo que pudo fluir mientras no se leía el registro</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rectangular</translation>
    </message>
    <message>
        <source>rectangular, one-sided</source>
        <translation>rectangular, de un solo lado</translation>
    </message>
    <message>
        <source>triangular</source>
        <translation>triangular</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>common to all readings of this meter</source>
        <translation>común a todas las lecturas de este contador</translation>
    </message>
    <message>
        <source>independent</source>
        <translation>independiente</translation>
    </message>
    <message>
        <source>combined standard uncertainty %1 Wh</source>
        <translation>incertidumbre típica combinada %1 Wh</translation>
    </message>
    <message>
        <source>combined standard uncertainty %1 Wh, k = %2, effective degrees of freedom %3</source>
        <translation>incertidumbre típica combinada %1 Wh, k = %2, grados efectivos de libertad %3</translation>
    </message>
    <message>
        <source>the power in the log ceased at %1</source>
        <translation>la potencia de la grabación cesó a las %1</translation>
    </message>
    <message>
        <source>the register of the log last rose at %1</source>
        <translation>el registro de la grabación subió por última vez a las %1</translation>
    </message>
    <message>
        <source>by the %1 that a steady load of %2 W took after the reading at %3</source>
        <translation>según los %1 que una carga constante de %2 W tomó tras la lectura de las %3</translation>
    </message>
    <message>
        <source>noted later than that</source>
        <translation>anotado más tarde</translation>
    </message>
    <message>
        <source>noted as it happened</source>
        <translation>anotado según ocurrió</translation>
    </message>
    <message>
        <source>between the last row of the log with the output on and the moment it was found off</source>
        <translation>entre la última fila de la grabación con la salida encendida y el momento en que se halló apagada</translation>
    </message>
    <message>
        <source>between the last reading with the output on and the moment it was found off</source>
        <translation>entre la última lectura con la salida encendida y el momento en que se halló apagada</translation>
    </message>
    <message>
        <source>noticed within %1 min</source>
        <translation>advertido como mucho tras %1 min</translation>
    </message>
    <message>
        <source>noticed within %1 min, as is taken where the run does not say</source>
        <translation>advertido como mucho tras %1 min, lo que se toma si el ensayo no lo dice</translation>
    </message>
    <message>
        <source>the output was found off; %1</source>
        <translation>la salida se halló apagada; %1</translation>
    </message>
    <message>
        <source>fewer than two moments are noted</source>
        <translation>hay anotados menos de dos momentos</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>hasta ahora</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>menos de dos lecturas del registro</translation>
    </message>
    <message>
        <source>integrated power of the log</source>
        <translation>potencia integrada de la grabación</translation>
    </message>
    <message>
        <source>by the log&apos;s register</source>
        <translation>según el registro de la grabación</translation>
    </message>
    <message>
        <source>no time passed between the register readings</source>
        <translation>no pasó tiempo entre las lecturas del registro</translation>
    </message>
    <message>
        <source>the moment of the cut-off is a bracket</source>
        <translation>el momento del corte es una horquilla</translation>
    </message>
    <message>
        <source>a meter power of %1 W is more than this unit can be believed to deliver (%2 W)</source>
        <translation>una potencia del contador de %1 W es más de lo que cabe creer que entregue este equipo (%2 W)</translation>
    </message>
    <message>
        <source>a display power of %1 W is more than this unit can be believed to deliver (%2 W)</source>
        <translation>una potencia en la pantalla de %1 W es más de lo que cabe creer que entregue este equipo (%2 W)</translation>
    </message>
    <message>
        <source>this run has ended (%1)</source>
        <translation>este ensayo ha terminado (%1)</translation>
    </message>
    <message>
        <source>%1 is %2 ahead of now</source>
        <translation>las %1 quedan %2 por delante de ahora</translation>
    </message>
    <message>
        <source>%1 on %2 is before the last reading (%3 on %4)</source>
        <translation>las %1 del %2 son anteriores a la última lectura (las %3 del %4)</translation>
    </message>
    <message>
        <source>the gauge fell from %1 % at %2 to %3 %</source>
        <translation>el indicador bajó del %1 % de las %2 al %3 %</translation>
    </message>
    <message>
        <source>the gauge rose from %1 % at %2 to %3 %</source>
        <translation>el indicador subió del %1 % de las %2 al %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows %2 %, less than %3 %</source>
        <translation>la lectura posterior de las %1 muestra %2 %, menos que %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows %2 %, more than %3 %</source>
        <translation>la lectura posterior de las %1 muestra %2 %, más que %3 %</translation>
    </message>
    <message>
        <source>the later reading at %1 shows a lower register (%2 Wh)</source>
        <translation>la lectura posterior de las %1 muestra un registro menor (%2 Wh)</translation>
    </message>
    <message>
        <source>the register fell from %1 Wh at %2 to %3 Wh</source>
        <translation>el registro bajó de los %1 Wh de las %2 a %3 Wh</translation>
    </message>
    <message>
        <source>%1 Wh since %2 would be about %3 W, more than this unit can be believed to deliver (%4 W)</source>
        <translation>%1 Wh desde las %2 serían unos %3 W, más de lo que cabe creer que entregue este equipo (%4 W)</translation>
    </message>
    <message>
        <source>%1 Wh since %2 would be about %3 W, where it was about %4 W before</source>
        <translation>%1 Wh desde las %2 serían unos %3 W, cuando antes eran unos %4 W</translation>
    </message>
    <message>
        <source>in the log: %1</source>
        <translation>en la grabación: %1</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n gaps of %1 together, in which up to %2 may have flowed at the highest power of %3 W</source>
        <comment>the log has %n gap of %1 together, in which up to %2 may have flowed at the highest power of %3 W</comment>
        <translation>
            <numerusform>la grabación tiene %n hueco de %1 en total, en el que pudieron fluir hasta %2 a la potencia máxima de %3 W</numerusform>
            <numerusform>la grabación tiene %n huecos de %1 en total, en los que pudieron fluir hasta %2 a la potencia máxima de %3 W</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The log of the gauge has %n samples.</source>
        <comment>The log of the gauge has %n sample.</comment>
        <translation>
            <numerusform>La grabación del indicador tiene %n muestra.</numerusform>
            <numerusform>La grabación del indicador tiene %n muestras.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop-outs were left out.</source>
        <comment>%n drop-out was left out.</comment>
        <translation>
            <numerusform>Se omitió %n caída de señal.</numerusform>
            <numerusform>Se omitieron %n caídas de señal.</numerusform>
        </translation>
    </message>
    <message>
        <source>It flickers by more than a step: medians of five minutes and more were taken.</source>
        <translation>Oscila en más de un escalón: se tomaron medianas de cinco minutos y más.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n gauge readings noted by hand agrees with it.</source>
        <comment>%1 of %n gauge reading noted by hand agrees with it.</comment>
        <translation>
            <numerusform>%1 de %n lectura del indicador anotada a mano concuerda con ella.</numerusform>
            <numerusform>%1 de %n lecturas del indicador anotadas a mano concuerda con ella.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n gauge readings noted by hand agree with it.</source>
        <comment>%1 of %n gauge reading noted by hand agree with it.</comment>
        <translation>
            <numerusform>%1 de %n lectura del indicador anotada a mano concuerdan con ella.</numerusform>
            <numerusform>%1 de %n lecturas del indicador anotadas a mano concuerdan con ella.</numerusform>
        </translation>
    </message>
    <message>
        <source>Most do not: its clock is off, or it is the log of something else. It was not used.</source>
        <translation>La mayoría no: su reloj va mal o es la grabación de otra cosa. No se usó.</translation>
    </message>
    <message>
        <source>None of it could be paired with metered energy.</source>
        <translation>Nada de ella se pudo emparejar con energía del contador.</translation>
    </message>
    <message numerus="yes">
        <source>%n steps of the gauge are timed by it, its clock known within %1 s.</source>
        <comment>%n step of the gauge is timed by it, its clock known within %1 s.</comment>
        <translation>
            <numerusform>%n escalón del indicador recibe su hora de ella, con su reloj conocido dentro de %1 s.</numerusform>
            <numerusform>%n escalones del indicador reciben su hora de ella, con su reloj conocido dentro de %1 s.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps of the gauge are timed by it.</source>
        <comment>%n step of the gauge is timed by it.</comment>
        <translation>
            <numerusform>%n escalón del indicador recibe su hora de ella.</numerusform>
            <numerusform>%n escalones del indicador reciben su hora de ella.</numerusform>
        </translation>
    </message>
    <message>
        <source>the log begins after the start (%1, about %2 at the mean load)</source>
        <translation>la grabación empieza después del inicio (%1, unos %2 a la carga media)</translation>
    </message>
    <message>
        <source>the log ends before the end of the run (%1, about %2 at the mean load)</source>
        <translation>la grabación termina antes del fin del ensayo (%1, unos %2 a la carga media)</translation>
    </message>
    <message>
        <source>%1 Wh are counted for it, which may be 0 to %2</source>
        <translation>se cuentan %1 Wh por ello, que pueden ser 0 a %2</translation>
    </message>
    <message>
        <source>at most %1 are missing</source>
        <translation>faltan %1 como máximo</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % less</source>
        <translation>Su potencia integrada da %1 ± %2 Wh donde su registro dice %3 Wh: %4 % menos</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % more</source>
        <translation>Su potencia integrada da %1 ± %2 Wh donde su registro dice %3 Wh: %4 % más</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % less</source>
        <translation>Su potencia integrada da %1 ± %2 Wh donde el registro anotado a mano dice %3 Wh: %4 % menos</translation>
    </message>
    <message>
        <source>Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % more</source>
        <translation>Su potencia integrada da %1 ± %2 Wh donde el registro anotado a mano dice %3 Wh: %4 % más</translation>
    </message>
    <message>
        <source>%1, which steps and sampling explain.</source>
        <translation>%1, lo que explican los escalones y el muestreo.</translation>
    </message>
    <message>
        <source>%1, more than steps and sampling explain; the meter&apos;s power and its counting differ.</source>
        <translation>%1, más de lo que explican los escalones y el muestreo; la potencia del contador y su cuenta difieren.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was logged for %n stretches, the longest from %1; the register counts what flowed meanwhile.</source>
        <comment>Nothing was logged for %n stretch, the longest from %1; the register counts what flowed meanwhile.</comment>
        <translation>
            <numerusform>No se grabó nada durante %n tramo, el más largo de %1; el registro cuenta lo que fluyó entretanto.</numerusform>
            <numerusform>No se grabó nada durante %n tramos, el más largo de %1; el registro cuenta lo que fluyó entretanto.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was logged from %1; the register counts what flowed meanwhile.</source>
        <translation>No se grabó nada de %1; el registro cuenta lo que fluyó entretanto.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n registers noted by hand agrees with the log.</source>
        <comment>%1 of %n register noted by hand agrees with the log.</comment>
        <translation>
            <numerusform>%1 de %n registro anotado a mano concuerda con la grabación.</numerusform>
            <numerusform>%1 de %n registros anotados a mano concuerda con la grabación.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n registers noted by hand agree with the log.</source>
        <comment>%1 of %n register noted by hand agree with the log.</comment>
        <translation>
            <numerusform>%1 de %n registro anotado a mano concuerdan con la grabación.</numerusform>
            <numerusform>%1 de %n registros anotados a mano concuerdan con la grabación.</numerusform>
        </translation>
    </message>
    <message>
        <source>Most do not: the clock of the log is off, or it is the log of something else. It was not used.</source>
        <translation>La mayoría no: el reloj de la grabación va mal o es la grabación de otra cosa. No se usó.</translation>
    </message>
    <message>
        <source>%1 Wh was noted, the log says %2; the log was used</source>
        <translation>se anotaron %1 Wh, la grabación dice %2; se usó la grabación</translation>
    </message>
    <message>
        <source>The log is of another meter than the run names, so that delivered energy is based on registers noted by hand; name the log&apos;s meter as that of the run to use it.</source>
        <translation>La grabación es de un contador distinto del que nombra el ensayo, así que la energía entregada se basa en registros anotados a mano; para usarla, nombre el contador de la grabación como el del ensayo.</translation>
    </message>
    <message>
        <source>Delivered energy is the integrated power of the log.</source>
        <translation>La energía entregada es la potencia integrada de la grabación.</translation>
    </message>
    <message>
        <source>Delivered energy is that of the log&apos;s register at the noted moments.</source>
        <translation>La energía entregada es la del registro de la grabación en los momentos anotados.</translation>
    </message>
    <message>
        <source>Delivered energy is based on registers noted by hand.</source>
        <translation>La energía entregada se basa en registros anotados a mano.</translation>
    </message>
    <message>
        <source>From %1 to %2 it says nothing, and the log of another meter stands in with %3.</source>
        <translation>De las %1 a las %2 no dice nada, y la grabación de otro contador lo suple con %3.</translation>
    </message>
    <message>
        <source>From %1 to %2 it says nothing, and the log of %4 stands in with %3.</source>
        <translation>De las %1 a las %2 no dice nada, y la grabación de %4 lo suple con %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n values of its register fitted nothing and were left out.</source>
        <comment>%n value of its register fitted nothing and was left out.</comment>
        <translation>
            <numerusform>%n valor de su registro no encajaba con nada y se omitió.</numerusform>
            <numerusform>%n valores de su registro no encajaban con nada y se omitieron.</numerusform>
        </translation>
    </message>
    <message>
        <source>No run uses this meter yet.</source>
        <translation>Ningún ensayo usa aún este contador.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy did not move, but their intervals changed.</source>
        <comment>%n run uses this meter; its delivered energy did not move, but its interval changed.</comment>
        <translation>
            <numerusform>%n ensayo usa este contador; su energía entregada no cambió, pero sí su intervalo.</numerusform>
            <numerusform>%n ensayos usan este contador; su energía entregada no cambió, pero sí sus intervalos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy did not move.</source>
        <comment>%n run uses this meter; its delivered energy did not move.</comment>
        <translation>
            <numerusform>%n ensayo usa este contador; su energía entregada no cambió.</numerusform>
            <numerusform>%n ensayos usan este contador; su energía entregada no cambió.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy moved by %1, and their intervals changed.</source>
        <comment>%n run uses this meter; its delivered energy moved by %1, and its interval changed.</comment>
        <translation>
            <numerusform>%n ensayo usa este contador; su energía entregada cambió en %1, y también su intervalo.</numerusform>
            <numerusform>%n ensayos usan este contador; su energía entregada cambió en %1, y también sus intervalos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs use this meter; their delivered energy moved by %1.</source>
        <comment>%n run uses this meter; its delivered energy moved by %1.</comment>
        <translation>
            <numerusform>%n ensayo usa este contador; su energía entregada cambió en %1.</numerusform>
            <numerusform>%n ensayos usan este contador; su energía entregada cambió en %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and more</source>
        <translation>%1 y más</translation>
    </message>
    <message numerus="yes">
        <source>Meter %1 showed a power outside its range of %2 in %n readings.</source>
        <comment>Meter %1 showed a power outside its range of %2 in %n reading.</comment>
        <translation>
            <numerusform>El contador %1 mostró una potencia fuera de su rango de %2 en %n lectura.</numerusform>
            <numerusform>El contador %1 mostró una potencia fuera de su rango de %2 en %n lecturas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Meter %1: all energy flowed outside its range of %2 (loads were %3), where its error is not limited.</source>
        <translation>Contador %1: toda la energía fluyó fuera de su rango de %2 (las cargas fueron de %3), donde su error no está limitado.</translation>
    </message>
    <message>
        <source>Meter %1: %4 of %5 flowed outside its range of %2 (loads were %3), where its error is not limited.</source>
        <translation>Contador %1: %4 de %5 fluyeron fuera de su rango de %2 (las cargas fueron de %3), donde su error no está limitado.</translation>
    </message>
    <message>
        <source>Meter %1: all energy flowed outside its certificate&apos;s loads of %2 to %3 (loads were %4); the nearest point was taken.</source>
        <translation>Contador %1: toda la energía fluyó fuera de las cargas de su certificado, %2 a %3 (las cargas fueron de %4); se tomó el punto más cercano.</translation>
    </message>
    <message>
        <source>Meter %1: %5 of %6 flowed outside its certificate&apos;s loads of %2 to %3 (loads were %4); the nearest point was taken.</source>
        <translation>Contador %1: %5 de %6 fluyeron fuera de las cargas de su certificado, %2 a %3 (las cargas fueron de %4); se tomó el punto más cercano.</translation>
    </message>
    <message>
        <source>The certificate of meter %1 was valid until %2, before this run.</source>
        <translation>El certificado del contador %1 era válido hasta %2, antes de este ensayo.</translation>
    </message>
    <message>
        <source>drains of a unit repeat within</source>
        <translation>las descargas de un equipo se repiten con un margen de</translation>
    </message>
    <message>
        <source>a battery holds of its label at most</source>
        <translation>una batería contiene de lo que dice su placa, como máximo</translation>
    </message>
    <message>
        <source>quadratic loss at the rated output at most</source>
        <translation>pérdida cuadrática a la potencia asignada, como máximo</translation>
    </message>
    <message>
        <source>a moment is noted within</source>
        <translation>un momento se anota con un margen de</translation>
    </message>
    <message>
        <source>a claim is decided by the value alone</source>
        <translation>un dato declarado lo decide solo el valor</translation>
    </message>
    <message>
        <source>the method has no such figure</source>
        <translation>el método no tiene esa cifra</translation>
    </message>
    <message>
        <source>this is not between %1 and %2</source>
        <translation>esto no está entre %1 y %2</translation>
    </message>
    <message>
        <source>correct it, or leave it empty for the usual %1</source>
        <translation>corríjalo o déjelo vacío para lo habitual, %1</translation>
    </message>
    <message>
        <source>entered after readings of later moments; put in its place by its time</source>
        <translation>introducido después de lecturas de momentos posteriores; puesto en su lugar por su hora</translation>
    </message>
    <message>
        <source>%1 fits neither its neighbours nor a reset; left out as a typing error</source>
        <translation>%1 no encaja con sus vecinos ni con una puesta a cero; se omite como error de escritura</translation>
    </message>
    <message>
        <source>energy between %1 and %2 (about %3 Wh at the usual load) is not in the register</source>
        <translation>la energía entre el %1 y el %2 (unos %3 Wh a la carga habitual) no está en el registro</translation>
    </message>
    <message>
        <source>the register fell from %1 to %2, which its span of %3 explains</source>
        <translation>el registro bajó de %1 a %2, lo que explica su tope de %3</translation>
    </message>
    <message>
        <source>the register fell from %1 to %2 without a mark; read as a reset, since the load after it is believable</source>
        <translation>el registro bajó de %1 a %2 sin marca; se lee como puesta a cero, pues la carga posterior es creíble</translation>
    </message>
    <message>
        <source>the meter was zeroed by %1 and had counted %2 since</source>
        <translation>el contador se puso a cero antes del %1 y desde entonces había contado %2</translation>
    </message>
    <message>
        <source>the meter was zeroed at %1</source>
        <translation>el contador se puso a cero el %1</translation>
    </message>
    <message>
        <source>another meter took over at %1; its register starts at %2</source>
        <translation>otro contador continuó el %1; su registro empieza en %2</translation>
    </message>
    <message>
        <source>energy before the reset between %1 and %2 (about %3 Wh at the usual load) is not in the register</source>
        <translation>la energía antes de la puesta a cero entre el %1 y el %2 (unos %3 Wh a la carga habitual) no está en el registro</translation>
    </message>
    <message>
        <source>%1 was read at %2, after the cut-off; taken as what the register showed then, as no reading of it stands there</source>
        <translation>%1 se leyó el %2, después del corte; se toma como lo que mostraba el registro entonces, pues no hay allí ninguna lectura suya</translation>
    </message>
    <message>
        <source>the register went on to %1 by %2, after the cut-off; nothing after the end counts</source>
        <translation>el registro siguió hasta %1 antes del %2, después del corte; nada cuenta tras el fin</translation>
    </message>
    <message>
        <source>the register was first read after the start (%1, about %2 at the usual load)</source>
        <translation>el registro se leyó por primera vez después del inicio (%1, unos %2 a la carga habitual)</translation>
    </message>
    <message>
        <source>the register was last read before the end (%1, about %2 at the usual load)</source>
        <translation>el registro se leyó por última vez antes del fin (%1, unos %2 a la carga habitual)</translation>
    </message>
    <message>
        <source>meter zeroed</source>
        <translation>contador puesto a cero</translation>
    </message>
    <message>
        <source>meter swapped</source>
        <translation>contador cambiado</translation>
    </message>
    <message>
        <source>rollover</source>
        <translation>vuelta del registro a 0</translation>
    </message>
    <message>
        <source>reset without a mark</source>
        <translation>puesta a cero sin marca</translation>
    </message>
    <message>
        <source>typing error</source>
        <translation>error de escritura</translation>
    </message>
    <message>
        <source>entered twice</source>
        <translation>introducido dos veces</translation>
    </message>
    <message>
        <source>entered late</source>
        <translation>introducido tarde</translation>
    </message>
    <message>
        <source>differs from the log</source>
        <translation>difiere de la grabación</translation>
    </message>
    <message>
        <source>after the end</source>
        <translation>después del fin</translation>
    </message>
    <message>
        <source>the same moment and register were entered twice; counted once</source>
        <translation>el mismo momento y registro se introdujeron dos veces; se cuentan una vez</translation>
    </message>
    <message>
        <source>accepted: %1</source>
        <translation>aceptado: %1</translation>
    </message>
    <message>
        <source>the gauge fell by only %1 points; about %2 more would resolve ±5 %</source>
        <translation>el indicador bajó solo %1 puntos; unos %2 más distinguirían ±5 %</translation>
    </message>
    <message>
        <source>from full to cut-off, at this load</source>
        <translation>de lleno a corte, a esta carga</translation>
    </message>
    <message>
        <source>found off, the register held its value</source>
        <translation>hallado apagado, el registro conservó su valor</translation>
    </message>
    <message>
        <source>projected it would be %1</source>
        <translation>en proyección sería %1</translation>
    </message>
    <message>
        <source>whether it started full is not stated</source>
        <translation>no está indicado si empezó lleno</translation>
    </message>
    <message>
        <source>it did not start full</source>
        <translation>no empezó lleno</translation>
    </message>
    <message>
        <source>the run is still open</source>
        <translation>el ensayo sigue abierto</translation>
    </message>
    <message>
        <source>stopped before the cut-off</source>
        <translation>detenido antes del corte</translation>
    </message>
    <message>
        <source>the gauge rose by %1 points on the way, so that from what was delivered on all may be</source>
        <translation>el indicador subió %1 puntos por el camino, así que cabe todo desde lo entregado en adelante</translation>
    </message>
    <message>
        <source>a %1 run does not measure it</source>
        <translation>un ensayo de %1 no lo mide</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>fewer than two gauge readings within the register&apos;s readings</source>
        <translation>menos de dos lecturas del indicador dentro de las lecturas del registro</translation>
    </message>
    <message>
        <source>assumes an accurate gauge from %1 to %2</source>
        <translation>supone un indicador exacto de %1 a %2</translation>
    </message>
    <message>
        <source>a charge run delivers nothing</source>
        <translation>un ensayo de recarga no entrega nada</translation>
    </message>
    <message>
        <source>end to end, from %1 to %2</source>
        <translation>de extremo a extremo, de %1 a %2</translation>
    </message>
</context>
<context>
    <name>meters_in_series</name>
    <message>
        <source>At %1 W %2 says %3 of what %4 says (± %5)</source>
        <translation>A %1 W, %2 dice %3 de lo que dice %4 (± %5)</translation>
    </message>
    <message>
        <source>%1; not every error limit is stated, so this cannot be held against them.</source>
        <translation>%1; no todos los límites de error están indicados, así que no se puede contrastar con ellos.</translation>
    </message>
    <message>
        <source>%1; their limits of ± %2 and ± %3 allow no more than %4 between them: at least one meter is outside its limit.</source>
        <translation>%1; sus límites de ± %2 y ± %3 no permiten más de %4 entre ambos: al menos un contador está fuera de su límite.</translation>
    </message>
    <message>
        <source>%1, as their limits allow.</source>
        <translation>%1, como permiten sus límites.</translation>
    </message>
    <message>
        <source>%1, as their limits allow; if both keep to them, the true energy lies %2 to %3 off what %4 says and %5 to %6 off what %7 says.</source>
        <translation>%1, como permiten sus límites; si ambos los cumplen, la energía verdadera se aparta %2 a %3 de lo que dice %4 y %5 a %6 de lo que dice %7.</translation>
    </message>
    <message numerus="yes">
        <source>%n stretches with both meters read</source>
        <comment>%n stretch with both meters read</comment>
        <translation>
            <numerusform>%n tramo con ambos contadores leídos</numerusform>
            <numerusform>%n tramos con ambos contadores leídos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>model</name>
    <message>
        <source>%1 cycles</source>
        <translation>%1 ciclos</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>give %1, or leave it empty</source>
        <translation>indique %1 o déjelo vacío</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>byte %1 of the text is no UTF-8 character</source>
        <translation>el byte %1 del texto no es un carácter UTF-8</translation>
    </message>
    <message>
        <source>type it anew, or save the file as UTF-8</source>
        <translation>escríbalo de nuevo o guarde el archivo como UTF-8</translation>
    </message>
    <message numerus="yes">
        <source>the text has %n characters</source>
        <comment>the text has %n character</comment>
        <translation>
            <numerusform>el texto tiene %n carácter</numerusform>
            <numerusform>el texto tiene %n caracteres</numerusform>
        </translation>
    </message>
    <message>
        <source>give at most %1</source>
        <translation>indique %1 como máximo</translation>
    </message>
    <message>
        <source>the value is no finite number</source>
        <translation>el valor no es un número finito</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 está fuera de los límites</translation>
    </message>
    <message>
        <source>`%1` is no date</source>
        <translation>`%1` no es una fecha</translation>
    </message>
    <message>
        <source>give a date like 2027-05-14, or leave it empty</source>
        <translation>indique una fecha como 2027-05-14 o déjelo vacío</translation>
    </message>
    <message>
        <source>give a date in the years 1900 to 2199</source>
        <translation>indique una fecha de los años 1900 a 2199</translation>
    </message>
    <message>
        <source>keep at most %1</source>
        <translation>deje %1 como máximo</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>the appliance has no name</source>
        <translation>el aparato no tiene nombre</translation>
    </message>
    <message>
        <source>give it a name</source>
        <translation>dele un nombre</translation>
    </message>
    <message>
        <source>name of an appliance</source>
        <translation>nombre de un aparato</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>the power while on is not above 0 W and at most %1 W</source>
        <translation>la potencia en marcha no es mayor que 0 W ni de %1 W como máximo</translation>
    </message>
    <message>
        <source>give what it takes while it is on, or leave it empty</source>
        <translation>indique lo que consume en marcha o déjelo vacío</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>factor de marcha</translation>
    </message>
    <message>
        <source>the duty is not above 0 and at most 1</source>
        <translation>el factor de marcha no es mayor que 0 ni de 1 como máximo</translation>
    </message>
    <message>
        <source>give the share of the time that it is on while in use</source>
        <translation>indique la parte del tiempo que está en marcha mientras se usa</translation>
    </message>
    <message>
        <source>measured use</source>
        <translation>uso medido</translation>
    </message>
    <message>
        <source>the measured energy or its hours are not above 0, or beyond %1 Wh or %2 h</source>
        <translation>la energía medida o sus horas no son mayores que 0, o superan %1 Wh o %2 h</translation>
    </message>
    <message>
        <source>give both, such as 500 Wh over 24 h</source>
        <translation>indique ambas, por ejemplo 500 Wh durante 24 h</translation>
    </message>
    <message>
        <source>neither its power nor a measurement is given</source>
        <translation>no se indica ni su potencia ni una medida</translation>
    </message>
    <message>
        <source>give its power while on, or what it took over some hours</source>
        <translation>indique su potencia en marcha o lo que consumió en unas horas</translation>
    </message>
    <message>
        <source>the mean measured, %1 W, is above the power while on, %2 W</source>
        <translation>la media medida, %1 W, está por encima de la potencia en marcha, %2 W</translation>
    </message>
    <message>
        <source>correct one of the two</source>
        <translation>corrija uno de los dos</translation>
    </message>
    <message>
        <source>hours per day</source>
        <translation>horas al día</translation>
    </message>
    <message>
        <source>the hours per day are not above 0 and at most 24</source>
        <translation>las horas al día no son más de 0 ni 24 como máximo</translation>
    </message>
    <message>
        <source>give for how long it is in use</source>
        <translation>indique cuánto tiempo se usa</translation>
    </message>
    <message>
        <source>hours at night</source>
        <translation>horas de noche</translation>
    </message>
    <message>
        <source>the hours at night are not 0 to the hours per day</source>
        <translation>las horas de noche no están entre 0 y las horas al día</translation>
    </message>
    <message>
        <source>give how many of its hours lie at night</source>
        <translation>indique cuántas de sus horas caen de noche</translation>
    </message>
    <message>
        <source>start</source>
        <translation>arranque</translation>
    </message>
    <message>
        <source>the peak while it starts is below its power while on, or above %1 W</source>
        <translation>el pico de arranque está por debajo de su potencia en marcha o por encima de %1 W</translation>
    </message>
    <message>
        <source>give the highest power of its start, or leave it empty</source>
        <translation>indique la potencia máxima de su arranque o déjelo vacío</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>the number of them is not 1 to %1</source>
        <translation>su número no está entre 1 y %1</translation>
    </message>
    <message>
        <source>give how many are alike</source>
        <translation>indique cuántos iguales hay</translation>
    </message>
    <message>
        <source>the load list has no name</source>
        <translation>la lista de cargas no tiene nombre</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>lista de cargas</translation>
    </message>
    <message numerus="yes">
        <source>there are %n appliances</source>
        <comment>there is %n appliance</comment>
        <translation>
            <numerusform>hay %n aparato</numerusform>
            <numerusform>hay %n aparatos</numerusform>
        </translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>carga cambiada</translation>
    </message>
    <message>
        <source>meter zeroed</source>
        <translation>contador puesto a cero</translation>
    </message>
    <message>
        <source>meter swapped</source>
        <translation>contador cambiado</translation>
    </message>
    <message>
        <source>output tripped</source>
        <translation>disparo de la salida</translation>
    </message>
    <message>
        <source>output reset</source>
        <translation>rearme de la salida</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>no-load drain</source>
        <translation>descarga en vacío</translation>
    </message>
    <message>
        <source>charge</source>
        <translation>recarga</translation>
    </message>
    <message>
        <source>sustained output</source>
        <translation>potencia sostenida</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>standby</source>
        <translation>reposo</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>cut-off seen</source>
        <translation>corte visto</translation>
    </message>
    <message>
        <source>found off</source>
        <translation>hallado apagado</translation>
    </message>
    <message>
        <source>stopped by tester</source>
        <translation>detenido por el ensayador</translation>
    </message>
    <message>
        <source>PV</source>
        <translation>FV</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>red</translation>
    </message>
    <message numerus="yes">
        <source>a tag of %n letters is too long</source>
        <comment>a tag of %n letter is too long</comment>
        <translation>
            <numerusform>una etiqueta de %n letra es demasiado larga</numerusform>
            <numerusform>una etiqueta de %n letras es demasiado larga</numerusform>
        </translation>
    </message>
    <message>
        <source>tags</source>
        <translation>etiquetas</translation>
    </message>
    <message numerus="yes">
        <source>give short words of at most %n letters with semicolons between them</source>
        <comment>give short words of at most %n letter with semicolons between them</comment>
        <translation>
            <numerusform>indique palabras breves de %n letra como máximo, separadas por punto y coma</numerusform>
            <numerusform>indique palabras breves de %n letras como máximo, separadas por punto y coma</numerusform>
        </translation>
    </message>
    <message>
        <source>a tag holds a tab, a line break or another control character</source>
        <translation>una etiqueta contiene un tabulador, un salto de línea u otro carácter de control</translation>
    </message>
    <message>
        <source>give it as one word</source>
        <translation>indíquela como una sola palabra</translation>
    </message>
    <message numerus="yes">
        <source>there are %n or more tags</source>
        <comment>there is %n or more tags</comment>
        <translation>
            <numerusform>hay %n o más etiquetas</numerusform>
            <numerusform>hay %n o más etiquetas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>numerics</name>
    <message>
        <source>correct or leave out that point</source>
        <translation>corrija u omita ese punto</translation>
    </message>
    <message numerus="yes">
        <source>%1 x, %2 y and %n uncertainties do not belong together</source>
        <comment>%1 x, %2 y and %n uncertainty do not belong together</comment>
        <translation>
            <numerusform>%1 x, %2 y y %n incertidumbre no van juntos</numerusform>
            <numerusform>%1 x, %2 y y %n incertidumbres no van juntos</numerusform>
        </translation>
    </message>
    <message>
        <source>give as many of each</source>
        <translation>indique el mismo número de cada uno</translation>
    </message>
    <message numerus="yes">
        <source>needs at least %n points and has %1</source>
        <comment>needs at least %n point and has %1</comment>
        <translation>
            <numerusform>necesita al menos %n punto y tiene %1</numerusform>
            <numerusform>necesita al menos %n puntos y tiene %1</numerusform>
        </translation>
    </message>
    <message>
        <source>take more readings</source>
        <translation>tome más lecturas</translation>
    </message>
    <message>
        <source>x of point %1 is not a finite number</source>
        <translation>la x del punto %1 no es un número finito</translation>
    </message>
    <message>
        <source>y of point %1 is not a finite number</source>
        <translation>la y del punto %1 no es un número finito</translation>
    </message>
    <message>
        <source>the uncertainty of point %1 is not a finite number</source>
        <translation>la incertidumbre del punto %1 no es un número finito</translation>
    </message>
    <message>
        <source>the uncertainty of point %1 is not above zero</source>
        <translation>la incertidumbre del punto %1 no es mayor que cero</translation>
    </message>
    <message>
        <source>give a positive uncertainty or leave out that point</source>
        <translation>indique una incertidumbre positiva u omita ese punto</translation>
    </message>
    <message>
        <source>all x are the same, so that no slope can be found</source>
        <translation>todas las x son iguales, así que no se puede hallar ninguna pendiente</translation>
    </message>
    <message>
        <source>take readings at two different x at least</source>
        <translation>tome lecturas al menos en dos x distintas</translation>
    </message>
    <message>
        <source>the numbers are too large or too small to compute with</source>
        <translation>los números son demasiado grandes o demasiado pequeños para calcular con ellos</translation>
    </message>
    <message>
        <source>use a unit that suits their size</source>
        <translation>use una unidad de medida acorde con su tamaño</translation>
    </message>
    <message>
        <source>least-squares fit</source>
        <translation>ajuste por mínimos cuadrados</translation>
    </message>
    <message>
        <source>there are no parameters to find</source>
        <translation>no hay parámetros que hallar</translation>
    </message>
    <message>
        <source>give at least one column</source>
        <translation>indique al menos una columna</translation>
    </message>
    <message numerus="yes">
        <source>a design of %n numbers does not have %1 rows of %2</source>
        <comment>a design of %n number does not have %1 rows of %2</comment>
        <translation>
            <numerusform>una matriz de diseño de %n número no tiene %1 filas de %2</numerusform>
            <numerusform>una matriz de diseño de %n números no tiene %1 filas de %2</numerusform>
        </translation>
    </message>
    <message>
        <source>give one row for each point</source>
        <translation>indique una fila por cada punto</translation>
    </message>
    <message>
        <source>row %1, column %2 of the design is not a finite number</source>
        <translation>la fila %1, columna %2 de la matriz de diseño no es un número finito</translation>
    </message>
    <message>
        <source>column %1 of the design is zero everywhere</source>
        <translation>la columna %1 de la matriz de diseño es cero en todas partes</translation>
    </message>
    <message>
        <source>leave out that parameter</source>
        <translation>omita ese parámetro</translation>
    </message>
    <message>
        <source>the points cannot tell the parameters apart</source>
        <translation>los puntos no pueden separar los parámetros</translation>
    </message>
    <message>
        <source>vary the conditions more, or fit fewer parameters</source>
        <translation>varíe más las condiciones o ajuste menos parámetros</translation>
    </message>
    <message>
        <source>line fit with uncertainties in x and y</source>
        <translation>ajuste de una recta con incertidumbres en x e y</translation>
    </message>
    <message numerus="yes">
        <source>the slope did not settle within %n steps</source>
        <comment>the slope did not settle within %n step</comment>
        <translation>
            <numerusform>la pendiente no se estabilizó en %n paso</numerusform>
            <numerusform>la pendiente no se estabilizó en %n pasos</numerusform>
        </translation>
    </message>
    <message>
        <source>the points scatter too widely for their uncertainties to give one line; check both</source>
        <translation>los puntos se dispersan demasiado para que sus incertidumbres den una sola recta; compruebe ambas cosas</translation>
    </message>
    <message>
        <source>each point needs one uncertainty in x and one in y</source>
        <translation>cada punto necesita una incertidumbre en x y otra en y</translation>
    </message>
    <message>
        <source>the uncertainties of point %1 must be finite, not negative, and not zero in both x and y</source>
        <translation>las incertidumbres del punto %1 deben ser finitas, no negativas y no cero a la vez en x e y</translation>
    </message>
    <message>
        <source>a point without uncertainty in y lies on a level line and would outweigh all others</source>
        <translation>un punto sin incertidumbre en y está en una recta horizontal y pesaría más que todos los demás</translation>
    </message>
    <message>
        <source>give that point an uncertainty in y</source>
        <translation>indique para ese punto una incertidumbre en y</translation>
    </message>
    <message>
        <source>line fit</source>
        <translation>ajuste de una recta</translation>
    </message>
    <message>
        <source>line fit through the origin</source>
        <translation>ajuste de una recta por el origen</translation>
    </message>
    <message>
        <source>all x are zero, so that no slope can be found</source>
        <translation>todas las x son cero, así que no se puede hallar ninguna pendiente</translation>
    </message>
    <message>
        <source>take readings at another x</source>
        <translation>tome lecturas en otra x</translation>
    </message>
    <message>
        <source>robust line fit</source>
        <translation>ajuste robusto de una recta</translation>
    </message>
    <message>
        <source>the confidence must lie between 0 and 1</source>
        <translation>la confianza debe estar entre 0 y 1</translation>
    </message>
    <message>
        <source>give 0.95 for 95 %</source>
        <translation>indique 0,95 para el 95 %</translation>
    </message>
    <message numerus="yes">
        <source>%n points are more than the %1 that it takes</source>
        <comment>%n point is more than the %1 that it takes</comment>
        <translation>
            <numerusform>%n punto es más que los %1 que admite</numerusform>
            <numerusform>%n puntos son más que los %1 que admite</numerusform>
        </translation>
    </message>
    <message>
        <source>thin out the points</source>
        <translation>reduzca los puntos</translation>
    </message>
    <message>
        <source>linear programme</source>
        <translation>programa lineal</translation>
    </message>
    <message numerus="yes">
        <source>%n variables are not 1 to %1</source>
        <comment>%n variable is not 1 to %1</comment>
        <translation>
            <numerusform>%n variable no está entre 1 y %1</numerusform>
            <numerusform>%n variables no están entre 1 y %1</numerusform>
        </translation>
    </message>
    <message>
        <source>state a smaller problem</source>
        <translation>plantee un problema más pequeño</translation>
    </message>
    <message numerus="yes">
        <source>the rows, limits and signs do not fit %n variables</source>
        <comment>the rows, limits and signs do not fit %n variable</comment>
        <translation>
            <numerusform>las filas, los límites y los signos no corresponden a %n variable</numerusform>
            <numerusform>las filas, los límites y los signos no corresponden a %n variables</numerusform>
        </translation>
    </message>
    <message>
        <source>give one coefficient for each</source>
        <translation>indique un coeficiente para cada una</translation>
    </message>
    <message>
        <source>a coefficient is not a finite number</source>
        <translation>un coeficiente no es un número finito</translation>
    </message>
    <message>
        <source>correct or leave out that row</source>
        <translation>corrija u omita esa fila</translation>
    </message>
    <message>
        <source>the search did not end within its steps</source>
        <translation>la búsqueda no terminó en sus pasos</translation>
    </message>
    <message>
        <source>check the rows for coefficients of very different sizes</source>
        <translation>compruebe si hay en las filas coeficientes de tamaños muy distintos</translation>
    </message>
    <message>
        <source>fit of two lines</source>
        <translation>ajuste de dos rectas</translation>
    </message>
    <message numerus="yes">
        <source>no break leaves %n points and two different x on both sides of it</source>
        <comment>no break leaves %n point and two different x on both sides of it</comment>
        <translation>
            <numerusform>ninguna división deja %n punto y dos x distintas a ambos lados</numerusform>
            <numerusform>ninguna división deja %n puntos y dos x distintas a ambos lados</numerusform>
        </translation>
    </message>
    <message>
        <source>take more readings, spread over x</source>
        <translation>tome más lecturas, repartidas en x</translation>
    </message>
</context>
<context>
    <name>pv</name>
    <message>
        <source>the value is not above 0</source>
        <translation>el valor no es mayor que 0</translation>
    </message>
    <message>
        <source>enter what the module&apos;s label says</source>
        <translation>introduzca lo que dice la placa del módulo</translation>
    </message>
    <message>
        <source>the value is out of range</source>
        <translation>el valor está fuera de los límites</translation>
    </message>
    <message>
        <source>the coefficient is not below 0, though these values fall as the cell warms</source>
        <translation>el coeficiente no es menor que 0, aunque estos valores bajan cuando la célula se calienta</translation>
    </message>
    <message>
        <source>enter it with its minus sign, such as -0.27 %/°C</source>
        <translation>introdúzcalo con su signo menos, por ejemplo -0,27 %/°C</translation>
    </message>
    <message>
        <source>the coefficient is steeper than 1 % per °C</source>
        <translation>el coeficiente supera el 1 % por °C</translation>
    </message>
    <message>
        <source>check whether it is in %/°C or in mV/°C</source>
        <translation>compruebe si está en %/°C o en mV/°C</translation>
    </message>
    <message>
        <source>Vmp lies above Voc</source>
        <translation>Vmp está por encima de Voc</translation>
    </message>
    <message>
        <source>check whether the two are exchanged</source>
        <translation>compruebe si los dos están intercambiados</translation>
    </message>
    <message>
        <source>Imp lies above Isc</source>
        <translation>Imp está por encima de Isc</translation>
    </message>
    <message>
        <source>the coefficient of power is not in percent</source>
        <translation>el coeficiente de potencia no está en porcentaje</translation>
    </message>
    <message>
        <source>give it in %/°C</source>
        <translation>indíquelo en %/°C</translation>
    </message>
    <message>
        <source>the number of modules in a string is out of range</source>
        <translation>el número de módulos de una cadena está fuera de los límites</translation>
    </message>
    <message>
        <source>give 1 to 1000</source>
        <translation>indique 1 a 1000</translation>
    </message>
    <message>
        <source>the number of strings is out of range</source>
        <translation>el número de cadenas está fuera de los límites</translation>
    </message>
    <message>
        <source>give 0 to 20 %</source>
        <translation>indique 0 a 20 %</translation>
    </message>
    <message>
        <source>give 20 to 100 °C</source>
        <translation>indique 20 a 100 °C</translation>
    </message>
    <message>
        <source>give 0 to 2000 W/m²</source>
        <translation>indique 0 a 2000 W/m²</translation>
    </message>
    <message>
        <source>give -90 to 120 °C</source>
        <translation>indique -90 a 120 °C</translation>
    </message>
    <message>
        <source>the coldest temperature lies above the hottest</source>
        <translation>la temperatura mínima está por encima de la máxima</translation>
    </message>
    <message>
        <source>the open-circuit voltage of the module is not stated</source>
        <translation>la tensión de circuito abierto del módulo no está indicada</translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not stated</source>
        <translation>la temperatura ambiente mínima no está indicada</translation>
    </message>
    <message>
        <source>by the maker&apos;s coefficient of %1</source>
        <translation>según el coeficiente del fabricante de %1</translation>
    </message>
    <message>
        <source>the maker&apos;s coefficient of Voc is not stated, and the table of factors is for crystalline silicon only</source>
        <translation>el coeficiente de Voc del fabricante no está indicado, y la tabla de factores es solo para silicio cristalino</translation>
    </message>
    <message>
        <source>the table of factors ends at −40 °C; the maker&apos;s coefficient of Voc is needed</source>
        <translation>la tabla de factores termina en −40 °C; hace falta el coeficiente de Voc del fabricante</translation>
    </message>
    <message>
        <source>by the factor %1 of NEC Table 690.7(A), as no coefficient is stated</source>
        <translation>según el factor %1 de NEC Table 690.7(A), pues no está indicado ningún coeficiente</translation>
    </message>
    <message>
        <source>a cell at %1 °C, as stated</source>
        <translation>una célula a %1 °C, según lo indicado</translation>
    </message>
    <message>
        <source>neither the hottest ambient nor the hottest cell temperature is stated</source>
        <translation>no está indicada ni la temperatura ambiente máxima ni la de célula máxima</translation>
    </message>
    <message>
        <source>a cell at %1 °C: %2 °C ambient, NOCT %3 °C, %4 W/m²</source>
        <translation>una célula a %1 °C: ambiente %2 °C, NOCT %3 °C, %4 W/m²</translation>
    </message>
    <message>
        <source>a cell at %1 °C: %2 °C ambient, NOCT %3 °C (assumed), %4 W/m²</source>
        <translation>una célula a %1 °C: ambiente %2 °C, NOCT %3 °C (supuesto), %4 W/m²</translation>
    </message>
    <message>
        <source>the module</source>
        <translation>el módulo</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>el lugar</translation>
    </message>
    <message>
        <source>the PV input</source>
        <translation>la entrada FV</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>no se conoce: %1</translation>
    </message>
    <message>
        <source>not checked: the voltage limit of the PV input is not stated</source>
        <translation>sin comprobar: el límite de tensión de la entrada FV no está indicado</translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series, open circuit at %1, %2</source>
        <comment>%n module in series, open circuit at %1, %2</comment>
        <translation>
            <numerusform>%n módulo en serie, circuito abierto a %1, %2</numerusform>
            <numerusform>%n módulos en serie, circuito abierto a %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 with the tolerance of %2 %</source>
        <translation>hasta %1 con la tolerancia del %2 %</translation>
    </message>
    <message>
        <source>voltage when cold</source>
        <translation>tensión en frío</translation>
    </message>
    <message>
        <source>Voc</source>
        <translation>Voc</translation>
    </message>
    <message>
        <source>coefficient of Voc</source>
        <translation>coeficiente de Voc</translation>
    </message>
    <message>
        <source>coldest temperature</source>
        <translation>temperatura mínima</translation>
    </message>
    <message>
        <source>voltage limit</source>
        <translation>límite de tensión</translation>
    </message>
    <message>
        <source>The table of factors holds for crystalline silicon; the maker&apos;s coefficient would take precedence.</source>
        <translation>La tabla de factores vale para silicio cristalino; el coeficiente del fabricante tendría prioridad.</translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series at maximum power, %1, by an assumed coefficient of %2</source>
        <comment>%n module in series at maximum power, %1, by an assumed coefficient of %2</comment>
        <translation>
            <numerusform>%n módulo en serie a potencia máxima, %1, según un coeficiente supuesto de %2</numerusform>
            <numerusform>%n módulos en serie a potencia máxima, %1, según un coeficiente supuesto de %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n modules in series at maximum power, %1, by the maker&apos;s coefficient of %2</source>
        <comment>%n module in series at maximum power, %1, by the maker&apos;s coefficient of %2</comment>
        <translation>
            <numerusform>%n módulo en serie a potencia máxima, %1, según el coeficiente del fabricante de %2</numerusform>
            <numerusform>%n módulos en serie a potencia máxima, %1, según el coeficiente del fabricante de %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the voltage at maximum power is not stated</source>
        <translation>la tensión a potencia máxima no está indicada</translation>
    </message>
    <message>
        <source>the coefficient of Vmp is not stated</source>
        <translation>el coeficiente de Vmp no está indicado</translation>
    </message>
    <message>
        <source>voltage when hot</source>
        <translation>tensión en caliente</translation>
    </message>
    <message>
        <source>not checked: the start voltage of the PV input is not stated</source>
        <translation>sin comprobar: la tensión de arranque de la entrada FV no está indicada</translation>
    </message>
    <message>
        <source>down to %1 with the tolerance of %2 %</source>
        <translation>hasta %1 hacia abajo con la tolerancia del %2 %</translation>
    </message>
    <message>
        <source>Vmp</source>
        <translation>Vmp</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>coeficiente de Vmp</translation>
    </message>
    <message>
        <source>hottest temperature</source>
        <translation>temperatura máxima</translation>
    </message>
    <message>
        <source>start voltage</source>
        <translation>tensión de arranque</translation>
    </message>
    <message>
        <source>The coefficient of Vmp is not stated: −0.40 %/°C is taken, the steep end of what sheets of crystalline silicon print.</source>
        <translation>El coeficiente de Vmp no está indicado: se toma −0,40 %/°C, el extremo más pronunciado de lo que imprimen las hojas de silicio cristalino.</translation>
    </message>
    <message>
        <source>NOCT is not stated: 45 °C is taken, which is common for framed modules (common practice, no source).</source>
        <translation>NOCT no está indicada: se toman 45 °C, lo común en módulos con marco (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>operating current</source>
        <translation>corriente de funcionamiento</translation>
    </message>
    <message>
        <source>not known: the current at maximum power is not stated</source>
        <translation>no se conoce: la corriente a potencia máxima no está indicada</translation>
    </message>
    <message>
        <source>not checked: the current limit of the PV input is not stated</source>
        <translation>sin comprobar: el límite de corriente de la entrada FV no está indicado</translation>
    </message>
    <message numerus="yes">
        <source>%n strings at %1 each</source>
        <comment>%n string at %1 each</comment>
        <translation>
            <numerusform>%n cadena a %1</numerusform>
            <numerusform>%n cadenas a %1 cada una</numerusform>
        </translation>
    </message>
    <message>
        <source>only the maker can say whether the input holds its current down: ask before connecting</source>
        <translation>solo el fabricante puede decir si la entrada limita su corriente: consúltelo antes de conectar</translation>
    </message>
    <message>
        <source>Imp</source>
        <translation>Imp</translation>
    </message>
    <message>
        <source>current limit</source>
        <translation>límite de corriente</translation>
    </message>
    <message>
        <source>short-circuit current</source>
        <translation>corriente de cortocircuito</translation>
    </message>
    <message>
        <source>not known: the short-circuit current is not stated</source>
        <translation>no se conoce: la corriente de cortocircuito no está indicada</translation>
    </message>
    <message>
        <source>not checked: neither the short-circuit limit nor the current limit of the PV input is stated</source>
        <translation>sin comprobar: no está indicado ni el límite de cortocircuito ni el límite de corriente de la entrada FV</translation>
    </message>
    <message numerus="yes">
        <source>1.25 × Isc (NEC 690.8(A)(1)) of %n strings</source>
        <comment>1.25 × Isc (NEC 690.8(A)(1)) of %n string</comment>
        <translation>
            <numerusform>1,25 × Isc (NEC 690.8(A)(1)) de %n cadena</numerusform>
            <numerusform>1,25 × Isc (NEC 690.8(A)(1)) de %n cadenas</numerusform>
        </translation>
    </message>
    <message>
        <source>the short-circuit limit of the PV input is not stated and not lower than its current limit</source>
        <translation>el límite de cortocircuito de la entrada FV no está indicado y no es menor que su límite de corriente</translation>
    </message>
    <message>
        <source>the short-circuit limit of the PV input is not stated: ask before connecting</source>
        <translation>el límite de cortocircuito de la entrada FV no está indicado: consulte antes de conectar</translation>
    </message>
    <message>
        <source>Isc</source>
        <translation>Isc</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>not known: Vmp or Imp is not stated</source>
        <translation>no se conoce: Vmp o Imp no está indicada</translation>
    </message>
    <message>
        <source>not checked: the power limit of the PV input is not stated</source>
        <translation>sin comprobar: el límite de potencia de la entrada FV no está indicado</translation>
    </message>
    <message numerus="yes">
        <source>%n modules at standard test conditions</source>
        <comment>%n module at standard test conditions</comment>
        <translation>
            <numerusform>%n módulo en condiciones estándar de ensayo</numerusform>
            <numerusform>%n módulos en condiciones estándar de ensayo</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 cannot be used</source>
        <translation>hasta %1 no se pueden usar</translation>
    </message>
    <message>
        <source>about %1 when hot</source>
        <translation>unos %1 en caliente</translation>
    </message>
    <message>
        <source>power limit</source>
        <translation>límite de potencia</translation>
    </message>
    <message>
        <source>%1 strings in parallel: each needs its own fuse (IEC 62548:2016; NEC 690.9). Its size follows from Isc of the module, which is not stated.</source>
        <translation>%1 cadenas en paralelo: cada una necesita su propio fusible (IEC 62548:2016; NEC 690.9). Su tamaño se obtiene de Isc del módulo, que no está indicada.</translation>
    </message>
    <message>
        <source>%1 strings in parallel: each needs its own fuse, as the others feed %2 into a faulty one (IEC 62548:2016; NEC 690.9): between %3 and %4 (1.5 and 2.4 × Isc), and not above the largest fuse that the module&apos;s label allows.</source>
        <translation>%1 cadenas en paralelo: cada una necesita su propio fusible, pues las demás alimentan %2 a una averiada (IEC 62548:2016; NEC 690.9): entre %3 y %4 (1,5 y 2,4 × Isc), y no por encima del mayor fusible que permite la placa del módulo.</translation>
    </message>
    <message>
        <source>All modules are of one kind, face one way and lie in the same light; for others nothing is claimed.</source>
        <translation>Todos los módulos son de una misma clase, miran al mismo lado y reciben la misma luz; para otros no se afirma nada.</translation>
    </message>
    <message>
        <source>Voltages of the module carry the stated tolerance of %1 %.</source>
        <translation>Las tensiones del módulo llevan la tolerancia indicada del %1 %.</translation>
    </message>
    <message>
        <source>The tolerance of the module&apos;s voltages is not stated: 3 % is taken (common practice, no source).</source>
        <translation>La tolerancia de las tensiones del módulo no está indicada: se toma el 3 % (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>the operating current of %1 is %2 above the %3 that the input is made for</source>
        <translation>la corriente de funcionamiento de %1 está %2 por encima de los %3 para los que está hecha la entrada</translation>
    </message>
    <message>
        <source>the short-circuit current, %1 with the factor 1.25, is above the %2 that are stated, and how much the input withstands is not</source>
        <translation>la corriente de cortocircuito, %1 con el factor 1,25, está por encima de los %2 indicados, y no está indicado cuánto soporta la entrada</translation>
    </message>
    <message>
        <source>Do not connect before the maker has been asked: %1. More current is not clipping.</source>
        <translation>No conecte antes de consultar al fabricante: %1. Más corriente no es recorte.</translation>
    </message>
    <message>
        <source>Do not connect: in the cold the string stays only %1 below the limit of %2 as calculated, and reaches %3 with the module&apos;s tolerance of %4 %.</source>
        <translation>No conecte: en frío, según el cálculo, la cadena queda solo %1 por debajo del límite de %2, y alcanza %3 con la tolerancia del módulo del %4 %.</translation>
    </message>
    <message>
        <source>Too close to call: in the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with the module&apos;s tolerance of %3 %.</source>
        <translation>Demasiado parecidos para decidir: en caliente, según el cálculo, la cadena queda solo %1 por encima de la tensión de arranque, y baja a %2 con la tolerancia del módulo del %3 %.</translation>
    </message>
    <message>
        <source>In the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with the module&apos;s tolerance of %3 %.</source>
        <translation>En caliente, según el cálculo, la cadena queda solo %1 por encima de la tensión de arranque, y baja a %2 con la tolerancia del módulo del %3 %.</translation>
    </message>
    <message>
        <source>%1 of PV against the %2 that the input takes: up to %3 cannot be used.</source>
        <translation>%1 de FV frente a los %2 que admite la entrada: hasta %3 no se pueden usar.</translation>
    </message>
    <message>
        <source>in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, no tolerance counted</source>
        <translation>en frío la cadena queda %1 por debajo del límite de tensión; en caliente, %2 por encima de la tensión de arranque, sin contar tolerancia</translation>
    </message>
    <message>
        <source>in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, the module&apos;s tolerance of %3 % counted</source>
        <translation>en frío la cadena queda %1 por debajo del límite de tensión; en caliente, %2 por encima de la tensión de arranque, contada la tolerancia del módulo del %3 %</translation>
    </message>
    <message>
        <source>Danger, do not connect: at %1 the string reaches %2, which is %3 above the limit of %4. The input can be destroyed and catch fire.</source>
        <translation>Peligro, no conecte: a %1 la cadena alcanza %2, %3 por encima del límite de %4. La entrada puede quedar destruida e incendiarse.</translation>
    </message>
    <message>
        <source>Danger, do not connect: the short-circuit current, %1 with the factor 1.25, is %2 above the short-circuit limit of %3.</source>
        <translation>Peligro, no conecte: la corriente de cortocircuito, %1 con el factor 1,25, está %2 por encima del límite de cortocircuito de %3.</translation>
    </message>
    <message>
        <source>Too low to start when hot: the string falls to %1, which is %2 below the start voltage of %3.</source>
        <translation>Demasiado baja para arrancar en caliente: la cadena baja a %1, %2 por debajo de la tensión de arranque de %3.</translation>
    </message>
    <message>
        <source>Do not connect yet: whether the string suits the input is not known.</source>
        <translation>No conecte aún: no se conoce si la cadena es apta para la entrada.</translation>
    </message>
    <message>
        <source>Fits with clipping: %1 For the rest %2.</source>
        <translation>Apto con recorte: %1 Por lo demás, %2.</translation>
    </message>
    <message>
        <source>Fits: %1.</source>
        <translation>Apto: %1.</translation>
    </message>
    <message>
        <source>%1 of the module</source>
        <translation>%1 del módulo</translation>
    </message>
    <message>
        <source>%1 of the place</source>
        <translation>%1 del lugar</translation>
    </message>
    <message>
        <source>%1 of the PV input</source>
        <translation>%1 de la entrada FV</translation>
    </message>
    <message>
        <source>%1; how many strings side by side is not known.</source>
        <translation>%1; no se conoce cuántas cadenas en paralelo.</translation>
    </message>
    <message>
        <source>%1; even one string brings more current than is stated: ask the maker.</source>
        <translation>%1; incluso una sola cadena da más corriente de la indicada: consulte al fabricante.</translation>
    </message>
    <message>
        <source>%1; most strings within the current limit: %2.</source>
        <translation>%1; máximo de cadenas dentro del límite de corriente: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n modules</source>
        <comment>%n module</comment>
        <translation>
            <numerusform>%n módulo</numerusform>
            <numerusform>%n módulos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 are missing</source>
        <comment>%1 is missing</comment>
        <translation>
            <numerusform>falta %1</numerusform>
            <numerusform>faltan %1</numerusform>
        </translation>
    </message>
    <message>
        <source>exceeds the voltage limit when cold</source>
        <translation>supera el límite de tensión en frío</translation>
    </message>
    <message>
        <source>exceeds the short-circuit limit</source>
        <translation>supera el límite de cortocircuito</translation>
    </message>
    <message>
        <source>ask before connecting</source>
        <translation>consulte antes de conectar</translation>
    </message>
    <message>
        <source>too close to call: %1</source>
        <translation>demasiado parecidos para decidir: %1</translation>
    </message>
    <message>
        <source>too low to start when hot</source>
        <translation>demasiado baja para arrancar en caliente</translation>
    </message>
    <message>
        <source>fits with clipping</source>
        <translation>apto con recorte</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>apto</translation>
    </message>
    <message>
        <source>The current is above its limit too.</source>
        <translation>La corriente también supera su límite.</translation>
    </message>
    <message>
        <source>The short-circuit current is above its limit too.</source>
        <translation>La corriente de cortocircuito también supera su límite.</translation>
    </message>
    <message>
        <source>The voltage when cold is too close to its limit to call.</source>
        <translation>La tensión en frío y su límite son demasiado parecidos para decidir.</translation>
    </message>
    <message>
        <source>When hot the string is too low to start.</source>
        <translation>En caliente la cadena es demasiado baja para arrancar.</translation>
    </message>
    <message>
        <source>Not checked: %1, as %2.</source>
        <translation>Sin comprobar: %1, pues %2.</translation>
    </message>
    <message>
        <source>Each string needs its own fuse.</source>
        <translation>Cada cadena necesita su propio fusible.</translation>
    </message>
    <message>
        <source>How many modules may be in series is not known until the voltage when cold and the limit are.</source>
        <translation>No se conoce cuántos módulos pueden ir en serie hasta que se conozcan la tensión en frío y el límite.</translation>
    </message>
    <message>
        <source>Not even one of these modules stays within the voltage limit when cold.</source>
        <translation>Ni uno solo de estos módulos queda dentro del límite de tensión en frío.</translation>
    </message>
    <message>
        <source>No string fits: %1 would be needed to start when hot, but only %2 may be in series when cold.</source>
        <translation>Ninguna cadena es apta: harían falta %1 para arrancar en caliente, pero solo pueden ir %2 en serie en frío.</translation>
    </message>
    <message numerus="yes">
        <source>Longest string within the voltage limit: %n modules in series</source>
        <comment>Longest string within the voltage limit: %n module in series</comment>
        <translation>
            <numerusform>Cadena más larga dentro del límite de tensión: %n módulo en serie</numerusform>
            <numerusform>Cadena más larga dentro del límite de tensión: %n módulos en serie</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Longest string within the voltage limit: %n modules in series (%1 at least, to start when hot)</source>
        <comment>Longest string within the voltage limit: %n module in series (%1 at least, to start when hot)</comment>
        <translation>
            <numerusform>Cadena más larga dentro del límite de tensión: %n módulo en serie (al menos %1, para arrancar en caliente)</numerusform>
            <numerusform>Cadena más larga dentro del límite de tensión: %n módulos en serie (al menos %1, para arrancar en caliente)</numerusform>
        </translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>clipped</source>
        <translation>recortado</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>above: ask</source>
        <translation>por encima: consulte</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>demasiado justo para decidir</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>Decision rule: a voltage is inside its limit where it stays so with the whole tolerance of the module, beyond it as soon as the calculated value is, and too close to call in between (guarded acceptance, JCGM 106:2012, 8.3; NEC 690.7(A) holds the calculated value against the limit).</source>
        <translation>Regla de decisión: una tensión está dentro de su límite si lo está con toda la tolerancia del módulo, fuera en cuanto lo está el valor calculado, y entre ambos son demasiado parecidos para decidir (aceptación con banda de guarda, JCGM 106:2012, 8.3; NEC 690.7(A) contrasta el valor calculado con el límite).</translation>
    </message>
    <message>
        <source>PV strings are live whenever there is light and can carry dangerous DC voltage; they cannot be switched off at the module.</source>
        <translation>Las cadenas FV están en tensión siempre que hay luz y pueden llevar tensión continua peligrosa; no se pueden desconectar en el módulo.</translation>
    </message>
    <message>
        <source>Connect and disconnect only without load and with the modules covered; DC arcs do not go out by themselves.</source>
        <translation>Conecte y desconecte solo sin carga y con los módulos cubiertos; los arcos de corriente continua no se apagan solos.</translation>
    </message>
    <message>
        <source>Check polarity and measure the open-circuit voltage before connecting.</source>
        <translation>Compruebe la polaridad y mida la tensión de circuito abierto antes de conectar.</translation>
    </message>
    <message>
        <source>Local electrical codes and a licensed electrician come first; this check is arithmetic on stated values, not a design.</source>
        <translation>Los reglamentos eléctricos locales y un electricista autorizado van primero; esta comprobación es aritmética sobre valores indicados, no un proyecto.</translation>
    </message>
</context>
<context>
    <name>quantities</name>
    <message>
        <source>rated energy</source>
        <translation>energía asignada</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>drains in the mean</source>
        <translation>descargas en la media</translation>
    </message>
    <message>
        <source>scatter of its drains</source>
        <translation>dispersión de sus descargas</translation>
    </message>
    <message>
        <source>spread between specimens</source>
        <translation>dispersión entre ejemplares</translation>
    </message>
    <message>
        <source>next specimen</source>
        <translation>siguiente ejemplar</translation>
    </message>
    <message>
        <source>delivered energy</source>
        <translation>energía entregada</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>duración</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>carga media</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fracción útil</translation>
    </message>
    <message>
        <source>energy per gauge point</source>
        <translation>energía por punto del indicador</translation>
    </message>
    <message>
        <source>gauge-implied energy</source>
        <translation>energía según el indicador</translation>
    </message>
    <message>
        <source>slope, delivered against gauge-implied</source>
        <translation>pendiente, entregada frente a la del indicador</translation>
    </message>
    <message>
        <source>chi-square of that line</source>
        <translation>chi cuadrado de esa recta</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>consumo en vacío</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>energía antes del consumo propio</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>autonomía en vacío</translation>
    </message>
    <message>
        <source>quadratic loss</source>
        <translation>pérdida cuadrática</translation>
    </message>
    <message>
        <source>deliverable energy</source>
        <translation>energía entregable</translation>
    </message>
    <message>
        <source>run time</source>
        <translation>autonomía</translation>
    </message>
    <message>
        <source>change of energy</source>
        <translation>cambio de la energía</translation>
    </message>
    <message>
        <source>not delivered</source>
        <translation>no entregada</translation>
    </message>
    <message>
        <source>taken by the no-load draw</source>
        <translation>tomada por el consumo en vacío</translation>
    </message>
    <message>
        <source>conversion or missing capacity</source>
        <translation>conversión o capacidad que falta</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>error del indicador</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>aún por salir</translation>
    </message>
    <message>
        <source>until empty</source>
        <translation>hasta vacío</translation>
    </message>
    <message>
        <source>least gauge error</source>
        <translation>error mínimo del indicador</translation>
    </message>
    <message>
        <source>price per rated kWh</source>
        <translation>precio por kWh asignado</translation>
    </message>
    <message>
        <source>price per usable kWh</source>
        <translation>precio por kWh útil</translation>
    </message>
    <message>
        <source>paid per rated kWh</source>
        <translation>pagado por kWh asignado</translation>
    </message>
    <message>
        <source>paid per usable kWh</source>
        <translation>pagado por kWh útil</translation>
    </message>
    <message>
        <source>usable fraction at this load</source>
        <translation>fracción útil a esta carga</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantía</translation>
    </message>
    <message>
        <source>energy in</source>
        <translation>energía absorbida</translation>
    </message>
    <message>
        <source>time to full</source>
        <translation>tiempo hasta lleno</translation>
    </message>
    <message>
        <source>mean power in</source>
        <translation>potencia media absorbida</translation>
    </message>
    <message>
        <source>peak power in</source>
        <translation>potencia de pico absorbida</translation>
    </message>
    <message>
        <source>taper before the end</source>
        <translation>fase decreciente antes del fin</translation>
    </message>
    <message>
        <source>round trip</source>
        <translation>rendimiento de ciclo</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>standby draw</source>
        <translation>consumo en reposo</translation>
    </message>
    <message>
        <source>own draw a day</source>
        <translation>consumo propio al día</translation>
    </message>
    <message>
        <source>own draw a month</source>
        <translation>consumo propio al mes</translation>
    </message>
    <message>
        <source>output held</source>
        <translation>potencia mantenida</translation>
    </message>
    <message>
        <source>peak output held</source>
        <translation>potencia de pico mantenida</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>potencia asignada</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>power of the PV input</source>
        <translation>potencia de la entrada FV</translation>
    </message>
    <message>
        <source>delivered energy per mass</source>
        <translation>energía entregada por masa</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>días de autonomía</translation>
    </message>
    <message>
        <source>days with the output left on</source>
        <translation>días con la salida siempre encendida</translation>
    </message>
    <message>
        <source>hours until empty</source>
        <translation>horas hasta vacío</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>fallo</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>duda</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>%1; measurements of one specimen, not a safety certification</source>
        <translation>%1; medidas de un solo ejemplar, no una certificación de seguridad</translation>
    </message>
    <message>
        <source>Gauge against meter</source>
        <translation>Indicador frente a contador</translation>
    </message>
    <message>
        <source>Every gauge reading is paired with the energy delivered by that moment. In a drain from full to cut-off the gauge error is the gauge less the share of the delivered energy that is still to come; in any other run the label&apos;s energy stands for the whole. Delivered against gauge-implied energy is fitted as a straight line with uncertainties in both (York and others 2004).</source>
        <translation>Cada lectura del indicador se empareja con la energía entregada hasta ese momento. En una descarga de lleno a corte, el error del indicador es el indicador menos la parte de la energía entregada que aún está por salir; en cualquier otro ensayo, la energía de la placa hace de total. La energía entregada frente a la del indicador se ajusta como una recta con incertidumbres en ambas (York y otros 2004).</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>An accurate gauge falls between two readings by a share between that of the energy and that of the time, whatever the unit&apos;s own draw is; only what lies outside, beyond gauge step and uncertainty, is called a fault. The least gauge error is the smallest worst error over every physically possible unit: a small linear programme. In a drain from full to cut-off each single reading is held against the shares of energy and time that had gone. A lone reading that a slip of the pen explains is doubted itself.</source>
        <translation>Un indicador exacto baja entre dos lecturas una parte comprendida entre la de la energía y la del tiempo, sea cual sea el consumo propio del equipo; solo lo que queda fuera, más allá del escalón del indicador y de la incertidumbre, se llama fallo. El error mínimo del indicador es el menor error máximo entre todos los equipos físicamente posibles: un pequeño programa lineal. En una descarga de lleno a corte, cada lectura se contrasta con las partes de energía y tiempo transcurridas. De una lectura aislada que explica un lapsus al escribir se duda de ella misma.</translation>
    </message>
    <message>
        <source>When it went off</source>
        <translation>Cuándo se apagó</translation>
    </message>
    <message>
        <source>The moment of cut-off is taken from the log of the meter; else from the last watt-hours of a steady load; else it lies within five minutes before it was noted, or as many as the run states, and of a run found off anywhere since the last reading.</source>
        <translation>El momento del corte se toma de la grabación del contador; si no, de los últimos vatios hora de una carga constante; si no, está dentro de los cinco minutos anteriores a su anotación, o de los que indique el ensayo, y en un ensayo hallado apagado, en cualquier punto desde la última lectura.</translation>
    </message>
    <message>
        <source>Where the energy goes</source>
        <translation>Adónde va la energía</translation>
    </message>
    <message>
        <source>While the output is on the unit itself consumes power: the no-load loss of IEC 61683. Within one run it is told from energy per point only if the gauge is linear in stored energy and the load varied. Over several full drains delivered energy falls with the hours of output on, which needs no gauge: D = E* − P*·T − c·Q, which follows from losses that are a constant, a part that grows with the load, and a part that grows with its square. The program&apos;s help derives it.</source>
        <translation>Mientras la salida está encendida, el propio equipo consume potencia: las pérdidas en vacío de IEC 61683. Dentro de un ensayo se distinguen de la energía por punto solo si el indicador es lineal en la energía almacenada y la carga varió. En varias descargas completas, la energía entregada baja con las horas de salida encendida, lo que no necesita indicador: D = E* − P*·T − c·Q, que se deduce de pérdidas con una parte constante, una que crece con la carga y una que crece con su cuadrado. La ayuda del programa la deduce.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of Physics 72, 2004, 367.</source>
        <translation>IEC 61683: Photovoltaic systems, power conditioners, procedure for measuring efficiency. D. York, N. Evensen, M. Martinez, J. Delgado: Unified equations for the slope, intercept and standard errors of the best straight line, American Journal of Physics 72, 2004, 367.</translation>
    </message>
    <message>
        <source>made %1, %2 (%3) by Ullage %4</source>
        <translation>hecho el %1, %2 (%3), con Ullage %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>After ± stands half the width of an interval meant to cover 95 %.</source>
        <translation>Tras ± está la semiamplitud de un intervalo destinado a cubrir el 95 %.</translation>
    </message>
    <message>
        <source>The same, continued</source>
        <translation>Lo mismo, continuación</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Resumen</translation>
    </message>
    <message>
        <source>There is no drain to compare.</source>
        <translation>No hay ninguna descarga que comparar.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Units as vessels at one height scale, at %1: the height is the rated energy, filled what is deliverable, hatched what the unit&apos;s own draw takes where that is known.</source>
        <translation>Equipos como depósitos a una misma escala de altura, a %1: la altura es la energía asignada; el relleno, lo entregable; el rayado, lo que se lleva el consumo propio del equipo, donde se conoce.</translation>
    </message>
    <message>
        <source>Units as vessels at one height scale, as tested: the height is the rated energy, filled what was delivered, hatched what the unit&apos;s own draw takes where that is known.</source>
        <translation>Equipos como depósitos a una misma escala de altura, según ensayo: la altura es la energía asignada; el relleno, lo entregado; el rayado, lo que se lleva el consumo propio del equipo, donde se conoce.</translation>
    </message>
    <message>
        <source>Usable fraction at %1 with its 95 % interval; grey where the unit is as tested, at another load.</source>
        <translation>Fracción útil a %1 con su intervalo del 95 %; en gris, donde el equipo va según ensayo, a otra carga.</translation>
    </message>
    <message>
        <source>Usable fraction with its 95 % interval, each at the load of its run.</source>
        <translation>Fracción útil con su intervalo del 95 %, cada una a la carga de su ensayo.</translation>
    </message>
    <message>
        <source>Next run</source>
        <translation>Próximo ensayo</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Deriva</translation>
    </message>
    <message>
        <source>Gauge from run to run</source>
        <translation>Indicador de ensayo a ensayo</translation>
    </message>
    <message>
        <source>%1, all drains</source>
        <translation>%1, todas las descargas</translation>
    </message>
    <message>
        <source>Comparison of storage units at %1</source>
        <translation>Comparación de equipos de almacenamiento a %1</translation>
    </message>
    <message>
        <source>Comparison of storage units as tested</source>
        <translation>Comparación de equipos de almacenamiento según ensayo</translation>
    </message>
    <message>
        <source>What all drains of each unit say together</source>
        <translation>Lo que dicen juntas todas las descargas de cada equipo</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Gráficos</translation>
    </message>
    <message>
        <source>Usable fraction of the units against load: points are drains, lines what all drains of a unit say.</source>
        <translation>Fracción útil de los equipos según la carga: los puntos son descargas; las líneas, lo que dicen todas las descargas de un equipo.</translation>
    </message>
    <message>
        <source>Gauge errors of the units against what they had delivered: above 0 a gauge shows too much.</source>
        <translation>Errores del indicador de los equipos frente a lo que habían entregado: por encima de 0 un indicador muestra de más.</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Presupuestos de incertidumbre</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Assumed of the register</source>
        <translation>Supuestos sobre el registro</translation>
    </message>
    <message>
        <source>reading of</source>
        <translation>lectura de</translation>
    </message>
    <message>
        <source>read as</source>
        <translation>leído como</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>may be missing</source>
        <translation>puede faltar</translation>
    </message>
    <message>
        <source>Delivered and gauge-implied energy, %1</source>
        <translation>Energía entregada y energía según el indicador, %1</translation>
    </message>
    <message>
        <source>Gauge error, %1</source>
        <translation>Error del indicador, %1</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Carga, %1</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Indicador</translation>
    </message>
    <message>
        <source>There is no delivered energy to state an uncertainty of.</source>
        <translation>No hay energía entregada de la que dar una incertidumbre.</translation>
    </message>
    <message>
        <source>Delivered energy of %1</source>
        <translation>Energía entregada de %1</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>correlación</translation>
    </message>
    <message>
        <source>type</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>grados de libertad</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>sensibilidad</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>incertidumbre típica</translation>
    </message>
    <message>
        <source>share</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>95 % interval ± %1 Wh.</source>
        <translation>Intervalo del 95 % ± %1 Wh.</translation>
    </message>
    <message>
        <source>95 % interval ± %1 Wh: %2.</source>
        <translation>Intervalo del 95 % ± %1 Wh: %2.</translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation>Aún no hay lecturas.</translation>
    </message>
    <message>
        <source>Times are local to %1, with their offset.</source>
        <translation>Las horas son locales de %1, con su desfase.</translation>
    </message>
    <message>
        <source>Times are local to %1 (%2).</source>
        <translation>Las horas son locales de %1 (%2).</translation>
    </message>
    <message>
        <source>%1 of %2 readings. %3 in between, of which there is nothing to tell, are left out, spread evenly; the run sheet holds all of them.</source>
        <translation>%1 de %2 lecturas. Se omiten, repartidas por igual, %3 intermedias de las que no hay nada que decir; la hoja de ensayo las contiene todas.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>gauge %1 → %2</source>
        <translation>indicador %1 → %2</translation>
    </message>
    <message>
        <source>gauge %1</source>
        <translation>indicador %1</translation>
    </message>
    <message>
        <source>register %1 → %2</source>
        <translation>registro %1 → %2</translation>
    </message>
    <message>
        <source>register %1</source>
        <translation>registro %1</translation>
    </message>
    <message>
        <source>second register %1 → %2</source>
        <translation>segundo registro %1 → %2</translation>
    </message>
    <message>
        <source>second register %1</source>
        <translation>segundo registro %1</translation>
    </message>
    <message>
        <source>meter %1 → %2</source>
        <translation>contador %1 → %2</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>contador %1</translation>
    </message>
    <message>
        <source>display %1 → %2</source>
        <translation>pantalla %1 → %2</translation>
    </message>
    <message>
        <source>display %1</source>
        <translation>pantalla %1</translation>
    </message>
    <message>
        <source>time %1 → %2</source>
        <translation>hora %1 → %2</translation>
    </message>
    <message>
        <source>mark %1 → %2</source>
        <translation>marca %1 → %2</translation>
    </message>
    <message>
        <source>remark %1 → %2</source>
        <translation>observación %1 → %2</translation>
    </message>
    <message>
        <source>remark changed</source>
        <translation>observación cambiada</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>recuperada</translation>
    </message>
    <message>
        <source>nothing that is stored here</source>
        <translation>nada de lo que aquí se guarda</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>remark %1</source>
        <translation>observación %1</translation>
    </message>
    <message>
        <source>time only</source>
        <translation>solo la hora</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1, ensayo %2</translation>
    </message>
    <message>
        <source>none given</source>
        <translation>ninguno indicado</translation>
    </message>
    <message>
        <source>Amendments of readings</source>
        <translation>Enmiendas de lecturas</translation>
    </message>
    <message>
        <source>run</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>según se introdujo</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambio</translation>
    </message>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>The readings come from run sheets, which carry no history: what was amended or withdrawn before they were written is not known.</source>
        <translation>Las lecturas vienen de hojas de ensayo, que no llevan historial: no se conoce lo que se enmendó o retiró antes de escribirlas.</translation>
    </message>
    <message>
        <source>No reading was amended or withdrawn.</source>
        <translation>No se enmendó ni retiró ninguna lectura.</translation>
    </message>
    <message>
        <source>A logbook keeps what an amendment replaced. Withdrawn readings take no part in any result.</source>
        <translation>Un cuaderno conserva lo que reemplazó una enmienda. Las lecturas retiradas no entran en ningún resultado.</translation>
    </message>
    <message>
        <source>Method and sources</source>
        <translation>Método y fuentes</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>About this report</source>
        <translation>Sobre este informe</translation>
    </message>
    <message>
        <source>This report was %1. Its figures follow from the readings alone and can be worked out again from them.</source>
        <translation>Este informe fue %1. Sus cifras se obtienen solo de las lecturas y se pueden volver a calcular a partir de ellas.</translation>
    </message>
    <message>
        <source>no reason was given</source>
        <translation>no se dio ningún motivo</translation>
    </message>
    <message>
        <source>no interval</source>
        <translation>sin intervalo</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>result</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>status</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>What cannot be known from these readings</source>
        <translation>Lo que no se puede conocer con estas lecturas</translation>
    </message>
    <message>
        <source>Every result above is measured and has its interval.</source>
        <translation>Todos los resultados de arriba son mediciones y tienen su intervalo.</translation>
    </message>
    <message>
        <source>%1 and %2 (%3)</source>
        <translation>%1 y %2 (%3)</translation>
    </message>
    <message>
        <source>and %1 more, which the table of differences names</source>
        <translation>y %1 más, que nombra la tabla de diferencias</translation>
    </message>
    <message>
        <source>%1. Neither of such a pair may be called better.</source>
        <translation>%1. Ninguno de los dos de un par así puede llamarse mejor.</translation>
    </message>
    <message>
        <source>Too close to call with these meters</source>
        <translation>Demasiado parecidos para decidir con estos contadores</translation>
    </message>
    <message>
        <source>Not comparable</source>
        <translation>No comparable</translation>
    </message>
    <message>
        <source>The difference between the two units is larger than these meters leave open.</source>
        <translation>La diferencia entre los dos equipos es mayor que lo que dejan abierto estos contadores.</translation>
    </message>
    <message>
        <source>Every difference between these units is larger than these meters leave open.</source>
        <translation>Toda diferencia entre estos equipos es mayor que lo que dejan abierto estos contadores.</translation>
    </message>
    <message>
        <source>Differences between units</source>
        <translation>Diferencias entre equipos</translation>
    </message>
    <message>
        <source>The %1 pairs of these %2 rows are left out here, as more than %3 rows make a table that nobody reads; the export of the differences holds them all (Compare, Export for up to %4 rows, or ullage compare --pairs).</source>
        <translation>Los %1 pares de estas %2 filas se omiten aquí, pues más de %3 filas forman una tabla que nadie lee; la exportación de las diferencias los contiene todos (Comparar, Exportar para hasta %4 filas, o ullage compare --pairs).</translation>
    </message>
    <message>
        <source>Usable fraction at %1, the first unit less the second, with its U95: half the width of its 95 % interval.</source>
        <translation>Fracción útil a %1, el primer equipo menos el segundo, con su U95: la semiamplitud de su intervalo del 95 %.</translation>
    </message>
    <message>
        <source>Usable fraction as tested, each at its own load, the first unit less the second, with its U95: half the width of its 95 % interval.</source>
        <translation>Fracción útil según ensayo, cada una a su propia carga, el primer equipo menos el segundo, con su U95: la semiamplitud de su intervalo del 95 %.</translation>
    </message>
    <message>
        <source>Two units are clearly different when that interval does not hold 0. Where one meter measured both units the error of its gain is counted once and cancels as far as the two are alike; the gains of two meters do not cancel.</source>
        <translation>Dos equipos son claramente distintos si ese intervalo no contiene el 0. Donde un mismo contador midió ambos equipos, su error de ganancia se cuenta una vez y se cancela en la medida en que los dos se parecen; las ganancias de dos contadores no se cancelan.</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primero</translation>
    </message>
    <message>
        <source>second</source>
        <translation>segundo</translation>
    </message>
    <message>
        <source>difference ± U95</source>
        <translation>diferencia ± U95</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>one meter</source>
        <translation>mismo contador</translation>
    </message>
    <message>
        <source>yes: its gain cancels</source>
        <translation>sí: su ganancia se cancela</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>%1 from full to its cut-off</source>
        <translation>%1 de lleno a su corte</translation>
    </message>
    <message>
        <source>%1 down to its cut-off</source>
        <translation>%1 hasta su corte</translation>
    </message>
    <message>
        <source>%1 from full until it was found off</source>
        <translation>%1 de lleno hasta que se halló apagado</translation>
    </message>
    <message>
        <source>%1 until it was found off</source>
        <translation>%1 hasta que se halló apagado</translation>
    </message>
    <message>
        <source>%1 until the tester stopped it</source>
        <translation>%1 hasta que lo detuvo el ensayador</translation>
    </message>
    <message>
        <source>%1 so far; the run is still open</source>
        <translation>%1 hasta ahora; el ensayo sigue abierto</translation>
    </message>
    <message>
        <source>In this charge run of %1 the meter counted %2</source>
        <translation>En este ensayo de recarga de %1 el contador contó %2</translation>
    </message>
    <message>
        <source>In this sustained output run of %1 the meter counted %2</source>
        <translation>En este ensayo de potencia sostenida de %1 el contador contó %2</translation>
    </message>
    <message>
        <source>In this peak output run of %1 the meter counted %2</source>
        <translation>En este ensayo de potencia de pico de %1 el contador contó %2</translation>
    </message>
    <message>
        <source>In this standby run of %1 the meter counted %2</source>
        <translation>En este ensayo de reposo de %1 el contador contó %2</translation>
    </message>
    <message>
        <source>%1 delivered %2</source>
        <translation>%1 entregó %2</translation>
    </message>
    <message>
        <source>What %1 delivered is not known: %2</source>
        <translation>No se conoce lo que entregó %1: %2</translation>
    </message>
    <message>
        <source>What %1 took is not known: %2</source>
        <translation>No se conoce lo que tomó %1: %2</translation>
    </message>
    <message>
        <source>%1 (rated %2)</source>
        <translation>%1 (asignada %2)</translation>
    </message>
    <message>
        <source>%1, at a mean load of %2</source>
        <translation>%1, a una carga media de %2</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>The usable fraction is not known: %1.</source>
        <translation>La fracción útil no se conoce: %1.</translation>
    </message>
    <message>
        <source>That is %1 of its label (%2), at this load.</source>
        <translation>Eso es %1 de lo que dice su placa (%2), a esta carga.</translation>
    </message>
    <message>
        <source>To know more</source>
        <translation>Para saber más</translation>
    </message>
    <message>
        <source>Where the energy went</source>
        <translation>Adónde fue la energía</translation>
    </message>
    <message>
        <source>The unit as a vessel: its height is the rated energy, filled what was delivered, hatched what its own draw took where that is known.</source>
        <translation>El equipo como depósito: su altura es la energía asignada; el relleno, lo entregado; el rayado, lo que se llevó su consumo propio, donde se conoce.</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Gauge right, gauge wrong</source>
        <translation>El indicador acierta o se equivoca</translation>
    </message>
    <message>
        <source>Test report of run %1</source>
        <translation>Informe de ensayo del ensayo %1</translation>
    </message>
    <message>
        <source>Test report of run %1; maker %2</source>
        <translation>Informe de ensayo del ensayo %1; fabricante %2</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Grabaciones</translation>
    </message>
    <message>
        <source>Log of the meter</source>
        <translation>Grabación del contador</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Contador</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>All drains of this unit together</source>
        <translation>Todas las descargas de este equipo juntas</translation>
    </message>
    <message>
        <source>Uncertainty budget</source>
        <translation>Presupuesto de incertidumbre</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>from %1 V</source>
        <translation>desde %1 V</translation>
    </message>
    <message>
        <source>%1 A short circuit</source>
        <translation>%1 A en cortocircuito</translation>
    </message>
    <message>
        <source>1 percentage point</source>
        <translation>1 punto porcentual</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 puntos porcentuales</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricante</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>células</translation>
    </message>
    <message>
        <source>purchased</source>
        <translation>comprado</translation>
    </message>
    <message>
        <source>charge cycles before the first run</source>
        <translation>ciclos antes del primer ensayo</translation>
    </message>
    <message>
        <source>rated energy (claim)</source>
        <translation>energía asignada (declarada)</translation>
    </message>
    <message>
        <source>rated output (claim)</source>
        <translation>potencia asignada (declarada)</translation>
    </message>
    <message>
        <source>peak output (claim)</source>
        <translation>potencia de pico (declarada)</translation>
    </message>
    <message>
        <source>PV input limits (claim)</source>
        <translation>límites de la entrada FV (declarados)</translation>
    </message>
    <message>
        <source>charge time (claim)</source>
        <translation>tiempo de recarga (declarado)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>precio pagado</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantía</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>resolución del indicador</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>register step</source>
        <translation>resolución del registro</translation>
    </message>
    <message>
        <source>error limit</source>
        <translation>límite de error</translation>
    </message>
    <message>
        <source>± %1 % of the energy</source>
        <translation>± %1 % de la energía</translation>
    </message>
    <message>
        <source>register span</source>
        <translation>tope del registro</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>points (W, correction, U in %, k)</source>
        <translation>puntos (W, corrección, U en %, k)</translation>
    </message>
    <message>
        <source>class</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>range from</source>
        <translation>rango desde</translation>
    </message>
    <message>
        <source>range to</source>
        <translation>rango hasta</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificado</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>fecha del certificado</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratorio</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>válido hasta</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message numerus="yes">
        <source>%n readings, %1 withdrawn</source>
        <comment>%n reading, %1 withdrawn</comment>
        <translation>
            <numerusform>%n lectura, %1 retirada</numerusform>
            <numerusform>%n lecturas, %1 retiradas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <comment>%n reading</comment>
        <translation>
            <numerusform>%n lectura</numerusform>
            <numerusform>%n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>began</source>
        <translation>comenzó</translation>
    </message>
    <message>
        <source>started full</source>
        <translation>empezó lleno</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>terminó</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>ambient</source>
        <translation>ambiente</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>zona horaria</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>segundo contador</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>anotado</translation>
    </message>
    <message>
        <source>What was measured, and with what</source>
        <translation>Qué se midió y con qué</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Equipos</translation>
    </message>
    <message>
        <source>No meter is stated, so delivered energy can have no interval.</source>
        <translation>No está indicado ningún contador, así que la energía entregada no puede tener intervalo.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Contadores</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Ensayo</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>%1: not known, %2.</source>
        <translation>%1: no se conoce, %2.</translation>
    </message>
    <message>
        <source>%1: %2 (%3); by the clock %4; units needed %5; rated output %6, peak output %7.</source>
        <translation>%1: %2 (%3); por reloj %4; equipos necesarios %5; potencia asignada %6, potencia de pico %7.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>State of charge from day to day</source>
        <translation>Estado de carga de un día a otro</translation>
    </message>
    <message>
        <source>%1: charge remaining by the hour, with the PV array and without, with 95 % bands.</source>
        <translation>%1: estado de carga por horas, con el generador FV y sin él, con bandas del 95 %.</translation>
    </message>
    <message>
        <source>Sizing for %1</source>
        <translation>Dimensionado para %1</translation>
    </message>
    <message>
        <source>The load list %1 takes %2 a day, %3 W when all of it runs and %4 W at most. One full unit serves so many days of it:</source>
        <translation>La lista de cargas %1 consume %2 al día, %3 W cuando todo está en marcha y %4 W como máximo. Un equipo lleno la sirve estos días:</translation>
    </message>
    <message>
        <source>There is no unit to size.</source>
        <translation>No hay ningún equipo que dimensionar.</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>Generador FV y batería según norma</translation>
    </message>
    <message>
        <source>The load list</source>
        <translation>La lista de cargas</translation>
    </message>
    <message>
        <source>What is assumed</source>
        <translation>Qué se supone</translation>
    </message>
    <message>
        <source>This report was %1. Its figures follow from the drains of each unit, the load list and the stated choices, and can be worked out again from them.</source>
        <translation>Este informe fue %1. Sus cifras se obtienen de las descargas de cada equipo, de la lista de cargas y de las opciones indicadas, y se pueden volver a calcular a partir de ellas.</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Comprobación de la entrada FV</translation>
    </message>
    <message>
        <source>PV input check: %1</source>
        <translation>Comprobación de la entrada FV: %1</translation>
    </message>
    <message>
        <source>%1 in series, %2 parallel</source>
        <translation>%1 en serie, %2 en paralelo</translation>
    </message>
    <message>
        <source>PV input of %1</source>
        <translation>Entrada FV de %1</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>DANGER: %1</source>
        <translation>PELIGRO: %1</translation>
    </message>
    <message>
        <source>Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8).</source>
        <translation>Conductores, y fusibles donde hagan falta, de cada cadena: para %1 A al menos (1,25 × 1,25 × corriente de cortocircuito, NEC 690.8).</translation>
    </message>
    <message>
        <source>Comparisons</source>
        <translation>Comparaciones</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparación</translation>
    </message>
    <message>
        <source>string or array</source>
        <translation>cadena o generador</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>basado en</translation>
    </message>
    <message>
        <source>from stated figures</source>
        <translation>según cifras indicadas</translation>
    </message>
    <message>
        <source>Voltage of the string against cell temperature, with the limits of the PV input.</source>
        <translation>Tensión de la cadena según la temperatura de célula, con los límites de la entrada FV.</translation>
    </message>
    <message>
        <source>What was stated</source>
        <translation>Qué se indicó</translation>
    </message>
    <message>
        <source>what</source>
        <translation>dato</translation>
    </message>
    <message>
        <source>This report was %1. It is arithmetic on stated values, not a design.</source>
        <translation>Este informe fue %1. Es aritmética sobre valores indicados, no un proyecto.</translation>
    </message>
    <message numerus="yes">
        <source>%n hold</source>
        <comment>%n hold</comment>
        <translation>
            <numerusform>%n se cumple</numerusform>
            <numerusform>%n se cumplen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not reached</source>
        <comment>%n not reached</comment>
        <translation>
            <numerusform>%n no alcanzado</numerusform>
            <numerusform>%n no alcanzados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not held</source>
        <comment>%n not held</comment>
        <translation>
            <numerusform>%n no se cumple</numerusform>
            <numerusform>%n no se cumplen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not decided by this meter</source>
        <comment>%n not decided by this meter</comment>
        <translation>
            <numerusform>%n sin decidir por este contador</numerusform>
            <numerusform>%n sin decidir por este contador</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not tested</source>
        <comment>%n not tested</comment>
        <translation>
            <numerusform>%n sin ensayar</numerusform>
            <numerusform>%n sin ensayar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n claims: %1.</source>
        <comment>Of %n claim: %1.</comment>
        <translation>
            <numerusform>De %n dato declarado: %1.</numerusform>
            <numerusform>De %n datos declarados: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>What it delivers is not known: %1.</source>
        <translation>No se conoce lo que entrega: %1.</translation>
    </message>
    <message>
        <source>It delivers %1</source>
        <translation>Entrega %1</translation>
    </message>
    <message>
        <source>It delivers %1 of %2 rated</source>
        <translation>Entrega %1 de %2 asignados</translation>
    </message>
    <message>
        <source>%1, a usable fraction of %2</source>
        <translation>%1, una fracción útil de %2</translation>
    </message>
    <message>
        <source>%1 (%2; %3).</source>
        <translation>%1 (%2; %3).</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>En resumen</translation>
    </message>
    <message>
        <source>No drain of this unit has been noted, so what it delivers is not known.</source>
        <translation>No se ha anotado ninguna descarga de este equipo, así que no se conoce lo que entrega.</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Datos declarados</translation>
    </message>
    <message>
        <source>Claims against results</source>
        <translation>Datos declarados frente a resultados</translation>
    </message>
    <message>
        <source>Every drain, and what they say together</source>
        <translation>Cada descarga, y lo que dicen juntas</translation>
    </message>
    <message>
        <source>All drains together</source>
        <translation>Todas las descargas juntas</translation>
    </message>
    <message>
        <source>Expected at other loads</source>
        <translation>Previsto a otras cargas</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.</source>
        <translation>Fracción útil según la carga: los puntos son descargas con sus intervalos del 95 %; la línea es lo que dicen juntas todas ellas.</translation>
    </message>
    <message>
        <source>Run time against load, likewise.</source>
        <translation>Autonomía según la carga, de igual modo.</translation>
    </message>
    <message>
        <source>Can the gauge be trusted?</source>
        <translation>¿Se puede confiar en el indicador?</translation>
    </message>
    <message>
        <source>Gauge error against what was delivered, one curve for each drain from full to cut-off: above 0 the gauge shows too much.</source>
        <translation>Error del indicador según lo entregado, una curva por cada descarga de lleno a corte: por encima de 0 el indicador muestra de más.</translation>
    </message>
    <message>
        <source>From run to run</source>
        <translation>De ensayo a ensayo</translation>
    </message>
    <message>
        <source>The gauge errors of the two drains that this is told by.</source>
        <translation>Los errores del indicador en las dos descargas que lo dicen.</translation>
    </message>
    <message>
        <source>Charges and outputs</source>
        <translation>Recargas y potencias</translation>
    </message>
    <message>
        <source>Round trip</source>
        <translation>Rendimiento de ciclo</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Qué se cuenta</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Published by</source>
        <translation>Publicado por</translation>
    </message>
    <message>
        <source>Licence of this text</source>
        <translation>Licencia de este texto</translation>
    </message>
    <message>
        <source>Every drain</source>
        <translation>Cada descarga</translation>
    </message>
    <message>
        <source>Gauge error against what was delivered, drain by drain: above 0 the gauge shows too much.</source>
        <translation>Error del indicador según lo entregado, descarga por descarga: por encima de 0 el indicador muestra de más.</translation>
    </message>
    <message>
        <source>%1. The whole report holds method, budgets and readings.</source>
        <translation>%1. El informe completo contiene método, presupuestos de incertidumbre y lecturas.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>gauge %1 %</source>
        <translation>indicador %1 %</translation>
    </message>
    <message>
        <source>register %1 Wh</source>
        <translation>registro %1 Wh</translation>
    </message>
    <message>
        <source>meter %1 W</source>
        <translation>contador %1 W</translation>
    </message>
    <message>
        <source>%1, %2 %3: %4</source>
        <translation>%1, %2 %3: %4</translation>
    </message>
    <message>
        <source>%1: test report</source>
        <translation>%1: informe de ensayo</translation>
    </message>
    <message>
        <source>maker %1</source>
        <translation>fabricante %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>número de serie %1</translation>
    </message>
    <message>
        <source>%1 less %2 is %3: its interval does not hold 0, so the two are clearly different.</source>
        <translation>%1 menos %2 es %3: su intervalo no contiene el 0, así que los dos son claramente distintos.</translation>
    </message>
    <message>
        <source>%1 less %2 is %3: its interval holds 0, so the two are too close to call with these meters and neither may be called better.</source>
        <translation>%1 menos %2 es %3: su intervalo contiene el 0, así que los dos son demasiado parecidos para decidir con estos contadores y de ninguno se puede decir que es mejor.</translation>
    </message>
    <message>
        <source>Its ± is less than those of the two fractions suggest: one meter measured both, and the error of its gain cancels.</source>
        <translation>Su ± es menor de lo que sugieren los de las dos fracciones: un solo contador midió ambas, y el error de su ganancia se cancela.</translation>
    </message>
    <message>
        <source>As tested</source>
        <translation>Según ensayo</translation>
    </message>
    <message>
        <source>%1 was drained at %2 W for %3 h and delivered %4 of %5 rated: usable %6.</source>
        <translation>%1 se descargó a %2 W durante %3 h y entregó %4 de %5 asignados: útil %6.</translation>
    </message>
    <message>
        <source>One drain stands for each of them, so each ± also counts that drains repeat only within %1 %.</source>
        <translation>Cada uno está representado por una sola descarga, así que cada ± cuenta también que las descargas solo se repiten dentro del %1 %.</translation>
    </message>
    <message>
        <source>Why a slow drain delivers less</source>
        <translation>Por qué una descarga lenta entrega menos</translation>
    </message>
    <message>
        <source>%1 delivered %2 in %3 h at %4 W, but %5 in %6 h at %7 W.</source>
        <translation>%1 entregó %2 en %3 h a %4 W, pero %5 en %6 h a %7 W.</translation>
    </message>
    <message>
        <source>While its output is on, a unit also feeds itself. The run times of all drains of %1 give a no-load draw of %2. The slow drain lasted %3 h longer, in which that draw takes about %4 Wh; it delivered %5 Wh less.</source>
        <translation>Con la salida encendida, un equipo se alimenta también a sí mismo. Las autonomías de todas las descargas de %1 dan un consumo en vacío de %2. La descarga lenta duró %3 h más, en las que ese consumo se lleva unos %4 Wh; entregó %5 Wh menos.</translation>
    </message>
    <message>
        <source>So a usable fraction belongs to the load of its run, and units have an order at one load only.</source>
        <translation>Por eso una fracción útil va unida a la carga de su ensayo, y los equipos solo tienen un orden a una misma carga.</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>A una carga</translation>
    </message>
    <message>
        <source>At %1 %2 would deliver %3 in %4 h: usable %5 (%6).</source>
        <translation>A %1, %2 entregaría %3 en %4 h: útil %5 (%6).</translation>
    </message>
    <message>
        <source>%1 cannot be converted and stays as tested: %2.</source>
        <translation>%1 no se puede convertir y queda según ensayo: %2.</translation>
    </message>
    <message>
        <source>What these meters leave open</source>
        <translation>Lo que estos contadores dejan abierto</translation>
    </message>
    <message>
        <source>At %1 %2 can stand beside %3 (%4 and %5).</source>
        <translation>A %1, %2 puede ponerse junto a %3 (%4 y %5).</translation>
    </message>
    <message>
        <source>Meters with a smaller error limit would narrow it.</source>
        <translation>Contadores con un límite de error menor lo estrecharían.</translation>
    </message>
    <message>
        <source>the units and drains of the worked example are not all there</source>
        <translation>no están todos los equipos y descargas del ejemplo resuelto</translation>
    </message>
    <message>
        <source>sample data</source>
        <translation>datos de ejemplo</translation>
    </message>
    <message>
        <source>use the sample data that come with the program</source>
        <translation>use los datos de ejemplo que vienen con el programa</translation>
    </message>
    <message>
        <source>a report&apos;s name must end in .pdf or .html</source>
        <translation>el nombre de un informe debe terminar en .pdf o .html</translation>
    </message>
    <message>
        <source>add the ending that you want</source>
        <translation>añada la terminación que quiera</translation>
    </message>
    <message>
        <source>the report is written, but not all files beside it: %1</source>
        <translation>el informe está escrito, pero no todos los archivos que van a su lado: %1</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>no se puede crear la carpeta</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>elija una carpeta en la que pueda escribir</translation>
    </message>
    <message>
        <source>a drawing could not be put into SVG form</source>
        <translation>no se pudo pasar un dibujo a SVG</translation>
    </message>
    <message>
        <source>report</source>
        <translation>informe</translation>
    </message>
    <message>
        <source>try PDF instead</source>
        <translation>pruebe con PDF</translation>
    </message>
    <message>
        <source>The numbers of this table in full (CSV)</source>
        <translation>Los números de esta tabla, completos (CSV)</translation>
    </message>
    <message>
        <source>the report was cancelled; nothing was written</source>
        <translation>se canceló el informe; no se ha escrito nada</translation>
    </message>
    <message>
        <source>the report could not be put into PDF form</source>
        <translation>no se pudo pasar el informe a PDF</translation>
    </message>
    <message>
        <source>try HTML instead</source>
        <translation>pruebe con HTML</translation>
    </message>
</context>
<context>
    <name>results</name>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>What the figures are</source>
        <translation>Qué son las cifras</translation>
    </message>
    <message>
        <source>Claims against results</source>
        <translation>Datos declarados frente a resultados</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>dato declarado</translation>
    </message>
    <message>
        <source>claimed</source>
        <translation>declarado</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medición</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>evidencia</translation>
    </message>
    <message>
        <source>Steps of load</source>
        <translation>Escalones de carga</translation>
    </message>
    <message>
        <source>from</source>
        <translation>a partir de</translation>
    </message>
    <message>
        <source>held</source>
        <translation>duración</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>gauge used</source>
        <translation>indicador gastado</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>terminó</translation>
    </message>
    <message>
        <source>the maker&apos;s claim, not measured</source>
        <translation>dato declarado por el fabricante, no medido</translation>
    </message>
    <message>
        <source>the warranty is not stated</source>
        <translation>la garantía no está indicada</translation>
    </message>
    <message>
        <source>as tested at %1 W: %2</source>
        <translation>según ensayo a %1 W: %2</translation>
    </message>
    <message>
        <source>as tested: %1</source>
        <translation>según ensayo: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricante</translation>
    </message>
    <message>
        <source>logbook</source>
        <translation>cuaderno</translation>
    </message>
    <message>
        <source>run</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>basado en</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>Differences between units at %1</source>
        <translation>Diferencias entre equipos a %1</translation>
    </message>
    <message>
        <source>Differences between units as tested</source>
        <translation>Diferencias entre equipos según ensayo</translation>
    </message>
    <message>
        <source>Differences between units in %1 at %2</source>
        <translation>Diferencias entre equipos en %1 a %2</translation>
    </message>
    <message>
        <source>Differences between units in %1 as tested</source>
        <translation>Diferencias entre equipos en %1 según ensayo</translation>
    </message>
    <message>
        <source>Comparison of units at %1</source>
        <translation>Comparación de equipos a %1</translation>
    </message>
    <message>
        <source>Comparison of units as tested</source>
        <translation>Comparación de equipos según ensayo</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Omitido: %1</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primero</translation>
    </message>
    <message>
        <source>second</source>
        <translation>segundo</translation>
    </message>
    <message>
        <source>one meter</source>
        <translation>mismo contador</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Resolved: the 95 % interval of the difference does not hold 0.</source>
        <translation>Claramente distintos: el intervalo del 95 % de la diferencia no contiene el 0.</translation>
    </message>
    <message>
        <source>Between %1 of %2 rows: those with the largest usable fraction.</source>
        <translation>Entre %1 de %2 filas: las de mayor fracción útil.</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot;</source>
        <translation>no hay columna «%1»</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>choose from %1</source>
        <translation>elija entre %1</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is named twice</source>
        <translation>la columna «%1» está nombrada dos veces</translation>
    </message>
    <message>
        <source>name it once</source>
        <translation>nómbrela una vez</translation>
    </message>
    <message>
        <source>stated in the load list</source>
        <translation>indicado en la lista de cargas</translation>
    </message>
    <message>
        <source>It takes nothing yet.</source>
        <translation>Aún no consume nada.</translation>
    </message>
    <message>
        <source>At most %1 W: all %2 W running and the largest start-up extra.</source>
        <translation>Como máximo %1 W: los %2 W en marcha y el mayor exceso de arranque.</translation>
    </message>
    <message>
        <source>%1 W on average while the output is on, %2 h a day, since something is always connected.</source>
        <translation>%1 W de media con la salida encendida, %2 h al día, pues siempre hay algo conectado.</translation>
    </message>
    <message>
        <source>%1 W on average while the output is on, %2 h a day: the longest use by day and the longest by night.</source>
        <translation>%1 W de media con la salida encendida, %2 h al día: el uso más largo de día y el más largo de noche.</translation>
    </message>
    <message>
        <source>Load list %1</source>
        <translation>Lista de cargas %1</translation>
    </message>
    <message>
        <source>appliance</source>
        <translation>aparato</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>power while on</source>
        <translation>potencia en marcha</translation>
    </message>
    <message>
        <source>mean in use</source>
        <translation>media en uso</translation>
    </message>
    <message>
        <source>hours per day</source>
        <translation>horas al día</translation>
    </message>
    <message>
        <source>of these at night</source>
        <translation>de ellas, de noche</translation>
    </message>
    <message>
        <source>highest at start</source>
        <translation>máxima al arrancar</translation>
    </message>
    <message>
        <source>energy per day</source>
        <translation>energía al día</translation>
    </message>
    <message>
        <source>of this at night</source>
        <translation>de ella, de noche</translation>
    </message>
    <message>
        <source>always connected</source>
        <translation>siempre conectado</translation>
    </message>
    <message>
        <source>together, over 24 h</source>
        <translation>en total, en 24 h</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listas de cargas</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>lista de cargas</translation>
    </message>
    <message>
        <source>appliances</source>
        <translation>aparatos</translation>
    </message>
    <message>
        <source>mean over the day</source>
        <translation>media del día</translation>
    </message>
    <message>
        <source>output on</source>
        <translation>salida encendida</translation>
    </message>
    <message>
        <source>mean while on</source>
        <translation>media con salida encendida</translation>
    </message>
    <message>
        <source>duty while on</source>
        <translation>factor con salida encendida</translation>
    </message>
    <message>
        <source>all running</source>
        <translation>todo en marcha</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>como máximo</translation>
    </message>
    <message>
        <source>share by day</source>
        <translation>parte de día</translation>
    </message>
    <message>
        <source>share at night</source>
        <translation>parte de noche</translation>
    </message>
    <message>
        <source>At most: all that runs and the largest start-up extra, one appliance starting while all others run.</source>
        <translation>Como máximo: todo lo que está en marcha y el mayor exceso de arranque, un aparato que arranca mientras funcionan todos los demás.</translation>
    </message>
    <message>
        <source>Output on: the longest use by day and the longest by night, or 24 h where something is always connected.</source>
        <translation>Salida encendida: el uso más largo de día y el más largo de noche, o 24 h si siempre hay algo conectado.</translation>
    </message>
    <message numerus="yes">
        <source>Meters in series: %1 and %2 (%n runs)</source>
        <comment>Meters in series: %1 and %2 (%n run)</comment>
        <translation>
            <numerusform>Contadores en serie: %1 y %2 (%n ensayo)</numerusform>
            <numerusform>Contadores en serie: %1 y %2 (%n ensayos)</numerusform>
        </translation>
    </message>
    <message>
        <source>Models by their specimens at %1</source>
        <translation>Modelos por sus ejemplares a %1</translation>
    </message>
    <message>
        <source>Models by their specimens, as tested</source>
        <translation>Modelos por sus ejemplares, según ensayo</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>specimens</source>
        <translation>ejemplares</translation>
    </message>
    <message>
        <source>A unit belongs to a model where its form names one.</source>
        <translation>Un equipo pertenece a un modelo si su formulario lo nombra.</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparación</translation>
    </message>
    <message>
        <source>string</source>
        <translation>cadena</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Comprobación de la entrada FV</translation>
    </message>
    <message>
        <source>%1, PV input of %2</source>
        <translation>%1, entrada FV de %2</translation>
    </message>
    <message>
        <source>%1 in series, %2 parallel</source>
        <translation>%1 en serie, %2 en paralelo</translation>
    </message>
    <message>
        <source>Verdict: %1</source>
        <translation>Veredicto: %1</translation>
    </message>
    <message>
        <source>Conductors and fuses of a string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC 690.8).</source>
        <translation>Conductores y fusibles de una cadena: para al menos %1 A (1,25 × 1,25 × corriente de cortocircuito, NEC 690.8).</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>segundo registro</translation>
    </message>
    <message>
        <source>power on the meter</source>
        <translation>potencia en el contador</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>potencia que muestra el equipo</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>entregada</translation>
    </message>
    <message>
        <source>load since</source>
        <translation>carga desde la anterior</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>error del indicador</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>gauge drop</source>
        <translation>bajada del indicador</translation>
    </message>
    <message>
        <source>gauge-implied</source>
        <translation>según el indicador</translation>
    </message>
    <message>
        <source>delivered / gauge-implied</source>
        <translation>entregada / según el indicador</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>carga media</translation>
    </message>
    <message>
        <source>energy per point</source>
        <translation>energía por punto</translation>
    </message>
    <message>
        <source>Gauge error against %1.</source>
        <translation>Error del indicador frente a %1.</translation>
    </message>
    <message>
        <source>Gauge steps by the log of %1</source>
        <translation>Escalones del indicador según la grabación de %1</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Lecturas de %1</translation>
    </message>
    <message>
        <source>Intervals of %1</source>
        <translation>Intervalos de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, run %2: %3</source>
        <translation>%1, ensayo %2: %3</translation>
    </message>
    <message>
        <source>%1, likely %2</source>
        <translation>%1, probable %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>units for %1: %2</source>
        <translation>equipos para %1: %2</translation>
    </message>
    <message>
        <source>units for %1: %2; by the battery rule: %3</source>
        <translation>equipos para %1: %2; según la norma de batería: %3</translation>
    </message>
    <message>
        <source>rated output: %1; peak output: %2</source>
        <translation>potencia asignada: %1; potencia de pico: %2</translation>
    </message>
    <message>
        <source>Sizing for the load list %1</source>
        <translation>Dimensionado para la lista de cargas %1</translation>
    </message>
    <message>
        <source>%1 a day, %2 W when all of it runs, %3 W at most</source>
        <translation>%1 al día, %2 W con todo en marcha, %3 W como máximo</translation>
    </message>
    <message>
        <source>No unit to size.</source>
        <translation>Ningún equipo que dimensionar.</translation>
    </message>
    <message>
        <source>never empty without PV</source>
        <translation>nunca vacío sin FV</translation>
    </message>
    <message>
        <source>empty after %1 h without PV</source>
        <translation>vacío tras %1 h sin FV</translation>
    </message>
    <message>
        <source>empty on day %1, after %2 h, without PV</source>
        <translation>vacío el día %1, tras %2 h, sin FV</translation>
    </message>
    <message>
        <source>never empty with PV of %1 W</source>
        <translation>nunca vacío con FV de %1 W</translation>
    </message>
    <message>
        <source>empty after %1 h with PV of %2 W</source>
        <translation>vacío tras %1 h con FV de %2 W</translation>
    </message>
    <message>
        <source>empty on day %1, after %2 h, with PV of %3 W</source>
        <translation>vacío el día %1, tras %2 h, con FV de %3 W</translation>
    </message>
    <message>
        <source>at the lower end of its energy empty after %1 h all the same</source>
        <translation>en el extremo inferior de su energía, vacío de todos modos tras %1 h</translation>
    </message>
    <message>
        <source>at the lower end of its energy empty on day %1, after %2 h, all the same</source>
        <translation>en el extremo inferior de su energía, vacío de todos modos el día %1, tras %2 h</translation>
    </message>
    <message>
        <source>the list alone</source>
        <translation>la lista sola</translation>
    </message>
    <message numerus="yes">
        <source>as measured, %n units</source>
        <comment>as measured, %n unit</comment>
        <translation>
            <numerusform>según lo medido, %n equipo</numerusform>
            <numerusform>según lo medido, %n equipos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not all of it measured, %n units</source>
        <comment>not all of it measured, %n unit</comment>
        <translation>
            <numerusform>no todo medido, %n equipo</numerusform>
            <numerusform>no todo medido, %n equipos</numerusform>
        </translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <comment>%n day</comment>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>Units for the load list %1</source>
        <translation>Equipos para la lista de cargas %1</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>energía asignada</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>días de autonomía</translation>
    </message>
    <message>
        <source>hours until empty</source>
        <translation>horas hasta vacío</translation>
    </message>
    <message>
        <source>output on in all</source>
        <translation>salida encendida en total</translation>
    </message>
    <message>
        <source>days if left on</source>
        <translation>días si queda encendida</translation>
    </message>
    <message>
        <source>units, at least</source>
        <translation>equipos, al menos</translation>
    </message>
    <message>
        <source>units, enough</source>
        <translation>equipos, suficientes</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>potencia asignada</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>units by rule</source>
        <translation>equipos según norma</translation>
    </message>
    <message>
        <source>for the days of autonomy asked for</source>
        <translation>para los días de autonomía pedidos</translation>
    </message>
    <message>
        <source>stated by the maker</source>
        <translation>indicado por el fabricante</translation>
    </message>
    <message>
        <source>nameplate by the rule / rated energy</source>
        <translation>valor nominal según norma / energía asignada</translation>
    </message>
    <message>
        <source>Units needed: for %1 without sun, side by side with the list shared evenly.</source>
        <translation>Equipos necesarios: para %1 sin sol, en paralelo y con la lista repartida por igual.</translation>
    </message>
    <message>
        <source>Days of autonomy</source>
        <translation>Días de autonomía</translation>
    </message>
    <message>
        <source>E* / (daily energy + no-load draw × hours of output on + standby draw × the rest + quadratic loss), from all full drains of the unit together; the interval also holds what the list leaves open: appliances used together or apart, the hour of beginning, the order of use.</source>
        <translation>E* / (energía diaria + consumo en vacío × horas de salida encendida + consumo en reposo × el resto + pérdida cuadrática), según todas las descargas completas del equipo juntas; el intervalo también contiene lo que la lista deja abierto: aparatos usados a la vez o por separado, la hora de comienzo, el orden de uso.</translation>
    </message>
    <message>
        <source>Expectation</source>
        <translation>Previsión</translation>
    </message>
    <message>
        <source>Where no drain tells it, a stated share of the rated energy at the socket; no measurement.</source>
        <translation>Donde ninguna descarga lo dice, una parte indicada de la energía asignada en la toma; no es una medida.</translation>
    </message>
    <message>
        <source>Balance: losses of a constant, a linear and a quadratic part seen from the socket, terms of IEC 61683. Rules of the cross-check: rules after IEEE 1013 and IEEE 1562; the program&apos;s help states their formulas.</source>
        <translation>Balance: pérdidas con una parte constante, una lineal y una cuadrática, vistas desde la toma, en términos de IEC 61683. Reglas de la comprobación cruzada: reglas según IEEE 1013 e IEEE 1562; la ayuda del programa indica sus fórmulas.</translation>
    </message>
    <message>
        <source>The PV array by month</source>
        <translation>El generador FV por meses</translation>
    </message>
    <message>
        <source>month</source>
        <translation>mes</translation>
    </message>
    <message>
        <source>PV array</source>
        <translation>generador FV</translation>
    </message>
    <message>
        <source>peak-sun hours</source>
        <translation>horas de sol pico</translation>
    </message>
    <message>
        <source>to the battery</source>
        <translation>a la batería</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>necesaria</translation>
    </message>
    <message>
        <source>array to load</source>
        <translation>generador/carga</translation>
    </message>
    <message>
        <source>stated, or as by rule</source>
        <translation>indicado, o según norma</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>indicado</translation>
    </message>
    <message>
        <source>array × peak-sun hours × derating</source>
        <translation>generador × horas de sol pico × rendimiento FV</translation>
    </message>
    <message>
        <source>list and own draw / inverter efficiency</source>
        <translation>lista y consumo propio / rendimiento del inversor</translation>
    </message>
    <message>
        <source>below 0 the load is not met</source>
        <translation>por debajo de 0 no se cubre la carga</translation>
    </message>
    <message>
        <source>to the battery / needed</source>
        <translation>a la batería / necesaria</translation>
    </message>
    <message>
        <source>PV array and battery by the published rules</source>
        <translation>Generador FV y batería según las normas publicadas</translation>
    </message>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>from stated figures</source>
        <translation>según cifras indicadas</translation>
    </message>
    <message>
        <source>daily load</source>
        <translation>consumo diario</translation>
    </message>
    <message>
        <source>the load list</source>
        <translation>la lista de cargas</translation>
    </message>
    <message>
        <source>own draw and losses a day</source>
        <translation>consumo propio y pérdidas al día</translation>
    </message>
    <message>
        <source>needed at the battery</source>
        <translation>necesaria en la batería</translation>
    </message>
    <message>
        <source>(daily load + own) / inverter efficiency %1</source>
        <translation>(consumo diario + propio) / rendimiento del inversor %1</translation>
    </message>
    <message>
        <source>PV array by rule</source>
        <translation>generador FV según norma</translation>
    </message>
    <message>
        <source>%1 × needed / (%2 peak-sun hours × derating %3)</source>
        <translation>%1 × necesaria / (%2 horas de sol pico × rendimiento FV %3)</translation>
    </message>
    <message>
        <source>%1 × needed / (%2 peak-sun hours × derating %3); own draw not all measured</source>
        <translation>%1 × necesaria / (%2 horas de sol pico × rendimiento FV %3); consumo propio no del todo medido</translation>
    </message>
    <message>
        <source>as by rule</source>
        <translation>según norma</translation>
    </message>
    <message>
        <source>PV brings a day</source>
        <translation>la FV da al día</translation>
    </message>
    <message>
        <source>battery, unadjusted</source>
        <translation>batería, sin ajustar</translation>
    </message>
    <message>
        <source>%1 × needed at the battery</source>
        <translation>%1 × necesaria en la batería</translation>
    </message>
    <message>
        <source>by depth</source>
        <translation>por profundidad</translation>
    </message>
    <message>
        <source>/ deepest discharge %1, which governs</source>
        <translation>/ descarga más profunda %1, que es la que manda</translation>
    </message>
    <message>
        <source>/ deepest discharge %1</source>
        <translation>/ descarga más profunda %1</translation>
    </message>
    <message>
        <source>by end of life</source>
        <translation>por fin de vida</translation>
    </message>
    <message>
        <source>/ share left at the end of life %1</source>
        <translation>/ parte restante al final de vida %1</translation>
    </message>
    <message>
        <source>/ share left at the end of life %1, which governs</source>
        <translation>/ parte restante al final de vida %1, que es la que manda</translation>
    </message>
    <message>
        <source>battery, nameplate</source>
        <translation>batería, valor nominal</translation>
    </message>
    <message>
        <source>× temperature factor %1 × margin %2</source>
        <translation>× factor de temperatura %1 × margen %2</translation>
    </message>
    <message>
        <source>Rules after IEEE 1013 (battery) and IEEE 1562 (array), with each unit&apos;s own draw as a load of its own: a cross-check. IEEE 1562 limits its battery part to lead-acid; for lithium the deepest discharge is the user&apos;s own figure.</source>
        <translation>Reglas según IEEE 1013 (batería) e IEEE 1562 (generador), con el consumo propio de cada equipo como una carga más: una comprobación cruzada. IEEE 1562 limita su parte de batería a plomo-ácido; para litio, la descarga más profunda es una cifra del propio usuario.</translation>
    </message>
    <message>
        <source>State of charge by the hour for the load list %1</source>
        <translation>Estado de carga por horas para la lista de cargas %1</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>with PV</source>
        <translation>con FV</translation>
    </message>
    <message>
        <source>without PV</source>
        <translation>sin FV</translation>
    </message>
    <message>
        <source>since midnight</source>
        <translation>desde medianoche</translation>
    </message>
    <message numerus="yes">
        <source>%n units side by side, full at midnight; PV as a half sine over %1 h of daylight.</source>
        <comment>%n unit side by side, full at midnight; PV as a half sine over %1 h of daylight.</comment>
        <translation>
            <numerusform>%n equipo en paralelo, lleno a medianoche; FV como media senoide en %1 h de luz diurna.</numerusform>
            <numerusform>%n equipos en paralelo, llenos a medianoche; FV como media senoide en %1 h de luz diurna.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 side by side, full at midnight: %3, %4</source>
        <translation>%1, %2 en paralelo, llenos a medianoche: %3, %4</translation>
    </message>
    <message>
        <source>%1, full at midnight: %2, %3</source>
        <translation>%1, lleno a medianoche: %2, %3</translation>
    </message>
    <message>
        <source>%1 of the list not served</source>
        <translation>%1 de la lista sin alimentar</translation>
    </message>
    <message>
        <source>%1 of PV unused, as the unit is full</source>
        <translation>%1 de FV sin aprovechar, pues el equipo está lleno</translation>
    </message>
    <message>
        <source>%1 of PV above what its PV input takes</source>
        <translation>%1 de FV por encima de lo que admite su entrada FV</translation>
    </message>
    <message>
        <source>from day %1 on each day is like the one before</source>
        <translation>desde el día %1 cada día es como el anterior</translation>
    </message>
    <message>
        <source>from day %1 on each day is like the one before, with %2</source>
        <translation>desde el día %1 cada día es como el anterior, con %2</translation>
    </message>
    <message>
        <source>its own draw is not measured, so this may be too good</source>
        <translation>su consumo propio no está medido, así que esto puede ser demasiado favorable</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Delivered energy</source>
        <translation>Energía entregada</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register from the first to the last reading of the run, times the meter&apos;s correction factor. Marked zeroings and exchanges of the meter and rollovers of its register are joined; whatever else was assumed about the register is listed with the run.</source>
        <translation>La diferencia del registro del contador externo entre la primera y la última lectura del ensayo, por el factor de corrección del contador. Las puestas a cero y los cambios de contador marcados y las vueltas de su registro a 0 se empalman; cualquier otro supuesto sobre el registro figura con el ensayo.</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fracción útil</translation>
    </message>
    <message>
        <source>Delivered energy from full to cut-off, divided by the rated energy, which is the maker&apos;s claim and carries no uncertainty. It holds at the load and duration of the run: a slower drain feeds the unit&apos;s own consumption for longer.</source>
        <translation>Energía entregada de lleno a corte, dividida por la energía asignada, que es un dato declarado por el fabricante y no lleva incertidumbre. Vale a la carga y la duración del ensayo: una descarga más lenta alimenta durante más tiempo el consumo propio del equipo.</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>A una carga</translation>
    </message>
    <message>
        <source>Where a common load is named, a unit is moved to it by D = E* - P* T - c Q, fitted to all its full drains (E*: deliverable at no time cost, P*: no-load draw seen from the socket, T: hours of output on, Q: the squared load over time). A unit whose drains do not tell E* from P* stays as tested and says so.</source>
        <translation>Donde se nombra una carga común, un equipo se convierte a ella con D = E* - P* T - c Q, ajustada a todas sus descargas completas (E*: entregable si el tiempo no costara, P*: consumo en vacío visto desde la toma, T: horas de salida encendida, Q: el cuadrado de la carga a lo largo del tiempo). Un equipo cuyas descargas no distinguen E* de P* queda según ensayo y así lo dice.</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Drains of one unit from full to cut-off at loads within a factor of 1.25 and temperatures within 8 °C repeat one another. Their mean stands for the unit, with the scatter of its drains and Student&apos;s t of n - 1 degrees of freedom (JCGM 100:2008, 4.2), or with the repeatability below where that says more. A unit that is moved far beyond its tested loads, by more than a factor of 1.5, has no rank.</source>
        <translation>Las descargas de un equipo de lleno a corte a cargas dentro de un factor de 1,25 y a temperaturas dentro de 8 °C se repiten entre sí. Su media representa al equipo, con la dispersión de sus descargas y la t de Student de n - 1 grados de libertad (JCGM 100:2008, 4.2), o con la repetibilidad de más abajo si esta dice más. Un equipo convertido muy fuera de sus cargas ensayadas, en más de un factor de 1,5, no tiene puesto.</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Lo que se da por supuesto</translation>
    </message>
    <message>
        <source>Drains repeat within %1, standard uncertainty. A battery holds at most %2 % of its label. The quadratic loss is at most %3 of the load at the rated output. A moment is noted within %4 min.</source>
        <translation>Las descargas se repiten con un margen de %1, incertidumbre típica. Una batería contiene como máximo el %2 % de su placa. La pérdida cuadrática es como máximo %3 de la carga a la potencia asignada. Un momento se anota con un margen de %4 min.</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>Two units are clearly different when the 95 % interval of their difference does not hold 0; else they are too close to call. The gain of a meter that measured both is counted once and cancels as far as the figures are alike; gains of different meters do not (JCGM 100:2008, 5.2). Between loads that differ by more than a factor of two a part of a meter&apos;s error limit does not cancel: a quarter of it, unless the meter states another.</source>
        <translation>Dos equipos son claramente distintos si el intervalo del 95 % de su diferencia no contiene el 0; si no, son demasiado parecidos para decidir. La ganancia de un contador que midió ambos se cuenta una vez y se cancela en la medida en que las cifras se parecen; las de contadores distintos, no (JCGM 100:2008, 5.2). Entre cargas que difieren en más de un factor de dos, una parte del límite de error de un contador no se cancela: un cuarto de él, salvo que el contador indique otra.</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervalo</translation>
    </message>
    <message>
        <source>After ± stands half the width of an interval meant to cover 95 %. The meter&apos;s error limit counts as a rectangular distribution common to all its readings; register steps, interpolation and noted times count as independent (JCGM 100:2008, 4.3 and 5.1). The half-width comes from the distribution of their sum (JCGM 101:2008). Figures are rounded so that the half-width keeps two significant digits (JCGM 100:2008, 7.2.6).</source>
        <translation>Tras ± está la semiamplitud de un intervalo destinado a cubrir el 95 %. El límite de error del contador cuenta como una distribución rectangular común a todas sus lecturas; los escalones del registro, la interpolación y las horas anotadas cuentan como independientes (JCGM 100:2008, 4.3 y 5.1). La semiamplitud sale de la distribución de su suma (JCGM 101:2008). Las cifras se redondean de modo que la semiamplitud conserve dos cifras significativas (JCGM 100:2008, 7.2.6).</translation>
    </message>
    <message>
        <source>Kinds</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>measured: from full to the unit&apos;s own cut-off. projected: extended from part of a drain on the assumption named. at least: energy may be missing. bracket: between two limits, nothing said within. not known: the reason says what is lacking.</source>
        <translation>medición: de lleno al corte del propio equipo. proyección: prolongada desde una parte de una descarga con el supuesto nombrado. al menos: puede faltar energía. horquilla: entre dos límites, sin decir nada de dentro. no se conoce: el motivo dice qué falta.</translation>
    </message>
    <message>
        <source>JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of distributions using a Monte Carlo method.</source>
        <translation>JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of distributions using a Monte Carlo method.</translation>
    </message>
    <message>
        <source>Results are measurements of one specimen, not a safety certification.</source>
        <translation>Los resultados son medidas de un solo ejemplar, no una certificación de seguridad.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>As the tester noted them, amended ones as they stand now, withdrawn ones left out. An empty cell was not noted. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Tal como las anotó el ensayador: las enmendadas, como están ahora; las retiradas, omitidas. Una celda vacía no se anotó. Las horas son locales, con su desfase de UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Entregada</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register since the first reading, times the meter&apos;s correction factor, with marked zeroings, exchanges and rollovers joined. Load since: that difference from one register reading to the next, over time.</source>
        <translation>La diferencia del registro del contador externo desde la primera lectura, por el factor de corrección del contador, con las puestas a cero, los cambios y las vueltas a 0 marcados empalmados. Carga desde la anterior: esa diferencia de una lectura del registro a la siguiente, entre el tiempo.</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Error del indicador</translation>
    </message>
    <message>
        <source>Gauge minus what is truly left, in percentage points; its limits come from the gauge&apos;s and the register&apos;s steps, the noted times and the meter&apos;s error limit, and are meant to cover 95 % (JCGM 100:2008, 5.1).</source>
        <translation>Indicador menos lo que de verdad queda, en puntos porcentuales; sus límites salen de los escalones del indicador y del registro, de las horas anotadas y del límite de error del contador, y están destinados a cubrir el 95 % (JCGM 100:2008, 5.1).</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Escalones</translation>
    </message>
    <message>
        <source>Each change of the gauge in its log, half-way between the last sample before it and the first after it; of a gauge that flickers, before and after that. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>Cada cambio del indicador en su grabación, a medio camino entre la última muestra anterior y la primera posterior; en un indicador que oscila, antes y después de ello. Las horas son locales, con su desfase de UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Indicador</translation>
    </message>
    <message>
        <source>The mean of what it showed before and after: what it showed on average at that moment, however it rounds.</source>
        <translation>La media de lo que mostraba antes y después: lo que mostraba de media en ese momento, redondee como redondee.</translation>
    </message>
    <message>
        <source>By the external meter at that moment. What the unit says of its own output enters nothing.</source>
        <translation>Según el contador externo en ese momento. Lo que el equipo dice de su propia salida no entra en nada.</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalos</translation>
    </message>
    <message>
        <source>From one reading of gauge and register to the next. Times are local with their offset from UTC (ISO 8601).</source>
        <translation>De una lectura de indicador y registro a la siguiente. Las horas son locales, con su desfase de UTC (ISO 8601).</translation>
    </message>
    <message>
        <source>Gauge-implied</source>
        <translation>Según el indicador</translation>
    </message>
    <message>
        <source>Rated energy times the fall of the gauge; empty where the rated energy is not stated.</source>
        <translation>Energía asignada por la bajada del indicador; vacío donde la energía asignada no está indicada.</translation>
    </message>
    <message>
        <source>The difference of the external meter&apos;s register, times the meter&apos;s correction factor, with marked zeroings, exchanges and rollovers joined. Mean load: that over the time. Energy per point: that over the fall of the gauge.</source>
        <translation>La diferencia del registro del contador externo, por el factor de corrección del contador, con las puestas a cero, los cambios y las vueltas a 0 marcados empalmados. Carga media: eso entre el tiempo. Energía por punto: eso entre la bajada del indicador.</translation>
    </message>
    <message>
        <source>Expected from full to cut-off, a mean over drains</source>
        <translation>Previsto de lleno a corte, media de descargas</translation>
    </message>
    <message>
        <source>deliverable</source>
        <translation>entregable</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fracción útil</translation>
    </message>
    <message>
        <source>run time</source>
        <translation>autonomía</translation>
    </message>
    <message>
        <source>tested loads</source>
        <translation>cargas ensayadas</translation>
    </message>
    <message>
        <source>between</source>
        <translation>entre ellas</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>fuera</translation>
    </message>
</context>
<context>
    <name>run_analysis</name>
    <message>
        <source>no reading shows the gauge full</source>
        <translation>ninguna lectura muestra el indicador lleno</translation>
    </message>
    <message>
        <source>the gauge shows full from the first reading on</source>
        <translation>el indicador muestra lleno desde la primera lectura</translation>
    </message>
    <message>
        <source>full was reached between the last reading below it and the first that shows it</source>
        <translation>se llegó a lleno entre la última lectura por debajo y la primera que lo muestra</translation>
    </message>
    <message>
        <source>no power is noted, and no two register readings lie far enough apart</source>
        <translation>no hay potencia anotada, ni dos lecturas del registro lo bastante separadas</translation>
    </message>
    <message>
        <source>the highest that the meter showed at a reading</source>
        <translation>la máxima que mostró el contador en una lectura</translation>
    </message>
    <message>
        <source>the highest mean between two register readings</source>
        <translation>la media máxima entre dos lecturas del registro</translation>
    </message>
    <message>
        <source>without interval, as the meter&apos;s error limit is not stated</source>
        <translation>sin intervalo, pues el límite de error del contador no está indicado</translation>
    </message>
    <message>
        <source>fewer than three stretches between register readings resolve the power</source>
        <translation>menos de tres tramos entre lecturas del registro distinguen la potencia</translation>
    </message>
    <message>
        <source>no taper: the last stretch is within 10 % of the highest power; it has no interval</source>
        <translation>sin fase decreciente: el último tramo está a menos del 10 % de la potencia máxima; no tiene intervalo</translation>
    </message>
    <message>
        <source>power below 90 % of its highest, %1 W, until the end</source>
        <translation>potencia por debajo del 90 % de su máxima, %1 W, hasta el final</translation>
    </message>
    <message>
        <source>From a source that is not stated: %1 in</source>
        <translation>Desde una fuente sin indicar: %1 absorbidos</translation>
    </message>
    <message>
        <source>From the PV input: %1 in</source>
        <translation>Desde la entrada FV: %1 absorbidos</translation>
    </message>
    <message>
        <source>From the wall: %1 in</source>
        <translation>Desde la red: %1 absorbidos</translation>
    </message>
    <message>
        <source>gauge %1 to %2 %</source>
        <translation>indicador %1 a %2 %</translation>
    </message>
    <message>
        <source>%1 to full</source>
        <translation>%1 hasta lleno</translation>
    </message>
    <message>
        <source>less than a minute</source>
        <translation>menos de un minuto</translation>
    </message>
    <message>
        <source>energy over time</source>
        <translation>energía entre tiempo</translation>
    </message>
    <message numerus="yes">
        <source>%n notes of watts; the meter&apos;s limit of energy is taken for that of power</source>
        <comment>%n note of watts; the meter&apos;s limit of energy is taken for that of power</comment>
        <translation>
            <numerusform>%n anotación de vatios; el límite del contador para energía se toma como el de potencia</numerusform>
            <numerusform>%n anotaciones de vatios; el límite del contador para energía se toma como el de potencia</numerusform>
        </translation>
    </message>
    <message>
        <source>the step has neither watts noted nor energy that its register resolves</source>
        <translation>el escalón no tiene vatios anotados ni energía que distinga su registro</translation>
    </message>
    <message>
        <source>no interval, as the meter&apos;s error limit is not stated</source>
        <translation>sin intervalo, pues el límite de error del contador no está indicado</translation>
    </message>
    <message>
        <source>No step of this run has a known load: note the watts, or the register at both ends of a step.</source>
        <translation>Ningún escalón de este ensayo tiene una carga conocida: anote los vatios, o el registro en ambos extremos de un escalón.</translation>
    </message>
    <message>
        <source>The claim is not stated; the highest load was %1 for %2.</source>
        <translation>El dato declarado no está indicado; la carga máxima fue de %1 durante %2.</translation>
    </message>
    <message>
        <source>Tripped at %1 after %2; %3 are claimed.</source>
        <translation>Disparo con %1 tras %2; se declaran %3.</translation>
    </message>
    <message>
        <source>Held %1 for %2; %3 are claimed.</source>
        <translation>Mantenida: %1 durante %2; se declaran %3.</translation>
    </message>
    <message>
        <source>The claim lies within the uncertainty.</source>
        <translation>El dato declarado está dentro de la incertidumbre.</translation>
    </message>
    <message>
        <source>It tripped at %1, above the claim.</source>
        <translation>Hubo un disparo con %1, por encima del dato declarado.</translation>
    </message>
    <message>
        <source>Tripped at %1, above the %2 claimed; a load at the claim was not held long enough to tell.</source>
        <translation>Disparo con %1, por encima de los %2 declarados; no se mantuvo bastante tiempo una carga igual al dato declarado para decidirlo.</translation>
    </message>
    <message>
        <source>Not reached: the highest load was %1 for %2; %3 are claimed, to be held for %4 min at least.</source>
        <translation>No alcanzado: la carga máxima fue de %1 durante %2; se declaran %3, que han de mantenerse al menos %4 min.</translation>
    </message>
    <message>
        <source>Not reached: the highest load was %1 for %2; %3 are claimed.</source>
        <translation>No alcanzado: la carga máxima fue de %1 durante %2; se declaran %3.</translation>
    </message>
    <message>
        <source>load changed</source>
        <translation>carga cambiada</translation>
    </message>
    <message>
        <source>tripped</source>
        <translation>disparo</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>run ended</source>
        <translation>ensayo terminado</translation>
    </message>
    <message>
        <source>still running</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>held</source>
        <translation>mantenida</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no alcanzada</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>energy may be missing in run %1: %2</source>
        <translation>puede faltar energía en el ensayo %1: %2</translation>
    </message>
    <message>
        <source>without interval, as a meter&apos;s error limit is not stated</source>
        <translation>sin intervalo, pues el límite de error de un contador no está indicado</translation>
    </message>
    <message>
        <source>the sum of the panels</source>
        <translation>la suma de los paneles</translation>
    </message>
    <message>
        <source>the panels were not read together often enough to add their powers</source>
        <translation>los paneles no se leyeron juntos lo bastante a menudo para sumar sus potencias</translation>
    </message>
    <message>
        <source>the highest sum of the panels&apos; mean powers while all of them ran</source>
        <translation>la suma máxima de las potencias medias de los paneles mientras funcionaban todos</translation>
    </message>
    <message>
        <source>run %1: %2</source>
        <translation>ensayo %1: %2</translation>
    </message>
    <message>
        <source>run %1 (%3): %2</source>
        <translation>ensayo %1 (%3): %2</translation>
    </message>
    <message>
        <source>Charge from PV, %1, peak %2</source>
        <translation>Recarga desde FV, %1, pico %2</translation>
    </message>
    <message numerus="yes">
        <source>Charge from PV by %n panels together: %1, peak %2; %3</source>
        <comment>Charge from PV by %n panel: %1, peak %2; %3</comment>
        <translation>
            <numerusform>Recarga desde FV con %n panel: %1, pico %2; %3</numerusform>
            <numerusform>Recarga desde FV con %n paneles juntos: %1, pico %2; %3</numerusform>
        </translation>
    </message>
    <message>
        <source>from cut-off to full and back</source>
        <translation>de corte a lleno y de vuelta</translation>
    </message>
    <message>
        <source>from empty by its gauge to full and back</source>
        <translation>de vacío según su indicador a lleno y de vuelta</translation>
    </message>
    <message>
        <source>from full to cut-off and back</source>
        <translation>de lleno a corte y de vuelta</translation>
    </message>
    <message>
        <source>from %1 to %2 % and back by the gauge</source>
        <translation>de %1 a %2 % y de vuelta según el indicador</translation>
    </message>
    <message>
        <source>From AC at the wall to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>De CA en la red a CA en la toma; incluye el cargador, el consumo propio del equipo y %1 h de espera entre los ensayos.</translation>
    </message>
    <message>
        <source>From DC at the PV input to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>De CC en la entrada FV a CA en la toma; incluye el cargador, el consumo propio del equipo y %1 h de espera entre los ensayos.</translation>
    </message>
    <message>
        <source>From the charging meter (its place is not stated for every charge) to AC at the socket; the charger, the unit&apos;s own draw and %1 h of standing between the runs are inside.</source>
        <translation>Del contador de recarga (su lugar no está indicado en todas las recargas) a CA en la toma; incluye el cargador, el consumo propio del equipo y %1 h de espera entre los ensayos.</translation>
    </message>
    <message>
        <source>one meter measured both, so the part of its error that is common to both powers cancels</source>
        <translation>un mismo contador midió ambas, así que se cancela la parte de su error común a ambas potencias</translation>
    </message>
    <message>
        <source>one meter measured both, so its gain cancels</source>
        <translation>un mismo contador midió ambas, así que su ganancia se cancela</translation>
    </message>
    <message>
        <source>no meter is stated for a charge or a drain, so no gain cancels</source>
        <translation>en una recarga o una descarga no está indicado ningún contador, así que no se cancela ninguna ganancia</translation>
    </message>
    <message>
        <source>different meters, so their gains do not cancel</source>
        <translation>contadores distintos, así que sus ganancias no se cancelan</translation>
    </message>
    <message numerus="yes">
        <source>%n closed cycles, %1 and others</source>
        <comment>%n closed cycle, %1 and others</comment>
        <translation>
            <numerusform>%n ciclo cerrado, %1 y otros</numerusform>
            <numerusform>%n ciclos cerrados, %1 y otros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closed cycles, %1</source>
        <comment>%n closed cycle, %1</comment>
        <translation>
            <numerusform>%n ciclo cerrado, %1</numerusform>
            <numerusform>%n ciclos cerrados, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>assumes that equal gauge readings mean equal energy stored</source>
        <translation>supone que lecturas iguales del indicador significan igual energía almacenada</translation>
    </message>
    <message>
        <source>no interval, as the error limit of a meter is not stated</source>
        <translation>sin intervalo, pues el límite de error de un contador no está indicado</translation>
    </message>
    <message>
        <source>full and cut-off are taken to repeat within %1 %</source>
        <translation>se supone que lleno y corte se repiten con un margen de %1 %</translation>
    </message>
    <message>
        <source>up to %1 went in after the gauge first showed full, to top up or to feed the unit itself, which is not known: it lies between both</source>
        <translation>entraron hasta %1 después de que el indicador mostrara lleno por primera vez, para completar la recarga o alimentar al propio equipo, lo que no se conoce: está entre ambas cosas</translation>
    </message>
    <message>
        <source>no closed cycle: charge to full after a cut-off with the energy metered, and drain to cut-off again</source>
        <translation>ningún ciclo cerrado: recargue hasta lleno tras un corte con la energía medida por el contador y descargue de nuevo hasta el corte</translation>
    </message>
    <message>
        <source>Round trip not known: %1.</source>
        <translation>Rendimiento de ciclo, no se conoce: %1.</translation>
    </message>
    <message>
        <source>Round trip %1: %2 out of %3 in.</source>
        <translation>Rendimiento de ciclo %1: salieron %2 de %3 absorbidos.</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>fewer than two gauge readings within the register&apos;s readings</source>
        <translation>menos de dos lecturas del indicador dentro de las lecturas del registro</translation>
    </message>
    <message>
        <source>rated energy × gauge drop of %1 points</source>
        <translation>energía asignada × bajada del indicador de %1 puntos</translation>
    </message>
    <message>
        <source>delivered per gauge-implied energy, without the meter&apos;s gain; %1</source>
        <translation>energía entregada entre la del indicador, sin la ganancia del contador; %1</translation>
    </message>
    <message numerus="yes">
        <source>a test statistic, for %n degrees of freedom; it has no interval</source>
        <comment>a test statistic, for %n degree of freedom; it has no interval</comment>
        <translation>
            <numerusform>un estadístico de contraste, con %n grado de libertad; no tiene intervalo</numerusform>
            <numerusform>un estadístico de contraste, con %n grados de libertad; no tiene intervalo</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, no readings yet</source>
        <translation>%1, aún sin lecturas</translation>
    </message>
</context>
<context>
    <name>safety</name>
    <message>
        <source>Local electrical codes and a licensed electrician come first.</source>
        <translation>Los reglamentos eléctricos locales y un electricista autorizado van primero.</translation>
    </message>
    <message>
        <source>PV strings are live in daylight and can carry dangerous DC voltage.</source>
        <translation>Las cadenas FV están en tensión con luz diurna y pueden llevar tensión continua peligrosa.</translation>
    </message>
    <message>
        <source>Stay in attendance for high-power runs, or use a fire-safe place.</source>
        <translation>Quédese presente en los ensayos de gran potencia o use un lugar seguro contra incendios.</translation>
    </message>
    <message>
        <source>Never exceed the ratings of sockets, cords and the unit.</source>
        <translation>No supere nunca los valores asignados de tomas, cables y equipo.</translation>
    </message>
    <message>
        <source>Stop on heat, smell, swelling or noise.</source>
        <translation>Pare si hay calor, olor, hinchazón o ruido.</translation>
    </message>
    <message>
        <source>Mind ventilation, and keep children away.</source>
        <translation>Cuide la ventilación y mantenga alejados a los niños.</translation>
    </message>
    <message>
        <source>The output stays live for as long as the run lasts: cover the sockets.</source>
        <translation>La salida sigue en tensión mientras dura el ensayo: cubra las tomas.</translation>
    </message>
    <message>
        <source>Charge only from a source within the input limits of the unit; never charge a unit that is hot, wet or damaged.</source>
        <translation>Recargue solo desde una fuente dentro de los límites de entrada del equipo; no recargue nunca un equipo caliente, mojado o dañado.</translation>
    </message>
    <message>
        <source>At the rated output cords and sockets grow hot: unwind cords, use no adapters in a chain, stay beside it.</source>
        <translation>A la potencia asignada, los cables y las tomas se calientan: desenrolle los cables, no encadene adaptadores, quédese al lado.</translation>
    </message>
    <message>
        <source>Peak loads can trip, arc or start by surprise: switch at the load, keep hands and tools clear, stay beside it.</source>
        <translation>Las cargas de pico pueden causar disparos, arcos o arranques inesperados: conmute en la carga, aparte manos y herramientas, quédese al lado.</translation>
    </message>
    <message>
        <source>A unit left alone for days needs a fire-safe place; do not let it rest empty or in the heat.</source>
        <translation>Un equipo que se deja solo durante días necesita un lugar seguro contra incendios; no lo deje vacío ni al calor.</translation>
    </message>
    <message>
        <source>Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.</source>
        <translation>Quédese presente o use un lugar seguro contra incendios; pare si hay calor, olor, hinchazón o ruido.</translation>
    </message>
    <message>
        <source>Results are measurements of one specimen, not a safety certification.</source>
        <translation>Los resultados son medidas de un solo ejemplar, no una certificación de seguridad.</translation>
    </message>
    <message>
        <source>One specimen each. Not a safety certification.</source>
        <translation>Un solo ejemplar de cada uno. No es una certificación de seguridad.</translation>
    </message>
</context>
<context>
    <name>services</name>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>segundo registro</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>vatios</translation>
    </message>
    <message>
        <source>display watts</source>
        <translation>vatios de la pantalla</translation>
    </message>
    <message>
        <source>time: %1</source>
        <translation>hora: %1</translation>
    </message>
    <message>
        <source>There is nothing to record yet: type what the gauge or the meter shows, choose a mark, or write a remark.</source>
        <translation>Aún no hay nada que anotar: escriba lo que muestra el indicador o el contador, elija una marca o escriba una observación.</translation>
    </message>
    <message>
        <source>no source is kept with the meter of this run</source>
        <translation>con el contador de este ensayo no hay guardada ninguna fuente</translation>
    </message>
    <message>
        <source>set one up on the page Meters</source>
        <translation>configure uno en la página Contadores</translation>
    </message>
    <message>
        <source>`%1` is not understood</source>
        <translation>no se entiende `%1`</translation>
    </message>
    <message>
        <source>enter a time span such as 30 min or 1.5 h</source>
        <translation>introduzca un tiempo como 30 min o 1,5 h</translation>
    </message>
    <message>
        <source>enter points of the gauge, such as 10</source>
        <translation>introduzca puntos del indicador, como 10</translation>
    </message>
    <message>
        <source>the desktop has no secret store that can be used</source>
        <translation>el escritorio no tiene ningún almacén de claves que se pueda usar</translation>
    </message>
</context>
<context>
    <name>sheets</name>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>line %1, key `%2`</source>
        <translation>línea %1, clave `%2`</translation>
    </message>
    <message>
        <source>line %1: the comment `%2` is not kept</source>
        <translation>línea %1: el comentario `%2` no se conserva</translation>
    </message>
    <message>
        <source>there is no key before the colon</source>
        <translation>no hay clave delante de los dos puntos</translation>
    </message>
    <message>
        <source>write `# key: value`</source>
        <translation>escriba `# key: value`</translation>
    </message>
    <message>
        <source>the key stands in line %1 already</source>
        <translation>la clave ya está en la línea %1</translation>
    </message>
    <message>
        <source>keep one of the two lines</source>
        <translation>deje una de las dos líneas</translation>
    </message>
    <message>
        <source>line %1: key `%2` is not known; kept with the run</source>
        <translation>línea %1: no se conoce la clave `%2`; se guarda con el ensayo</translation>
    </message>
    <message>
        <source>the sheet does not name the unit that was tested</source>
        <translation>la hoja no nombra el equipo ensayado</translation>
    </message>
    <message>
        <source>add a line `# unit: NAME` at the top</source>
        <translation>añada arriba una línea `# unit: NAME`</translation>
    </message>
    <message>
        <source>the sheet describes a meter but does not name it</source>
        <translation>la hoja describe un contador pero no lo nombra</translation>
    </message>
    <message>
        <source>add a line `# meter: NAME`</source>
        <translation>añada una línea `# meter: NAME`</translation>
    </message>
    <message>
        <source>the sheet describes a second meter but does not name it</source>
        <translation>la hoja describe un segundo contador pero no lo nombra</translation>
    </message>
    <message>
        <source>add a line `# second_meter: NAME`</source>
        <translation>añada una línea `# second_meter: NAME`</translation>
    </message>
    <message>
        <source>both meters have one name</source>
        <translation>ambos contadores tienen el mismo nombre</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>dé otro nombre a uno de ellos</translation>
    </message>
    <message>
        <source>the range of meter %1 begins above its end</source>
        <translation>el rango del contador %1 empieza por encima de su final</translation>
    </message>
    <message>
        <source>exchange the two loads</source>
        <translation>intercambie las dos cargas</translation>
    </message>
    <message>
        <source>key `run` is missing; read as a drain</source>
        <translation>falta la clave `run`; se lee como descarga</translation>
    </message>
    <message>
        <source>key `ended` is missing; the run counts as still running</source>
        <translation>falta la clave `ended`; el ensayo cuenta como en curso</translation>
    </message>
    <message>
        <source>use the columns %1</source>
        <translation>use las columnas %1</translation>
    </message>
    <message>
        <source>line %1, column `%2`</source>
        <translation>línea %1, columna `%2`</translation>
    </message>
    <message>
        <source>the file does not name the load list</source>
        <translation>el archivo no nombra la lista de cargas</translation>
    </message>
    <message>
        <source>add a line `# load_list: NAME` at the top</source>
        <translation>añada arriba una línea `# load_list: NAME`</translation>
    </message>
    <message>
        <source>the header row is missing</source>
        <translation>falta la fila de cabecera</translation>
    </message>
    <message>
        <source>`%1` is no key of a load list</source>
        <translation>`%1` no es una clave de una lista de cargas</translation>
    </message>
    <message>
        <source>use `# load_list: NAME` and `# remark: TEXT`</source>
        <translation>use `# load_list: NAME` y `# remark: TEXT`</translation>
    </message>
    <message>
        <source>the key `%1` stands here for the second time</source>
        <translation>la clave `%1` está aquí por segunda vez</translation>
    </message>
    <message>
        <source>there is no column `%1`</source>
        <translation>no hay columna `%1`</translation>
    </message>
    <message>
        <source>the column `%1` stands here twice</source>
        <translation>la columna `%1` está aquí dos veces</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>deje una de las dos</translation>
    </message>
    <message>
        <source>the column `%1` is missing</source>
        <translation>falta la columna `%1`</translation>
    </message>
    <message>
        <source>add it</source>
        <translation>añádala</translation>
    </message>
    <message>
        <source>the row has %1, the header row has %2</source>
        <translation>la fila tiene %1; la fila de cabecera, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <comment>%n field</comment>
        <translation>
            <numerusform>%n campo</numerusform>
            <numerusform>%n campos</numerusform>
        </translation>
    </message>
    <message>
        <source>add or remove commas; a name with commas needs quotes around it</source>
        <translation>añada o quite comas; un nombre con comas necesita comillas alrededor</translation>
    </message>
    <message>
        <source>`%1` is neither yes nor no</source>
        <translation>`%1` no es ni sí ni no</translation>
    </message>
    <message>
        <source>use `yes` or `no`</source>
        <translation>use `yes` o `no`</translation>
    </message>
    <message>
        <source>the file is no UTF-8 text</source>
        <translation>el archivo no es un texto UTF-8</translation>
    </message>
    <message>
        <source>save it as CSV in UTF-8</source>
        <translation>guárdelo como CSV en UTF-8</translation>
    </message>
    <message>
        <source>a limit is above 0</source>
        <translation>un límite es mayor que 0</translation>
    </message>
    <message>
        <source>enter what the unit&apos;s label says</source>
        <translation>introduzca lo que dice la placa del equipo</translation>
    </message>
    <message>
        <source>`%1` is no number of modules</source>
        <translation>`%1` no es un número de módulos</translation>
    </message>
    <message>
        <source>give a whole number from 1 to 1000</source>
        <translation>indique un número entero de 1 a 1000</translation>
    </message>
    <message>
        <source>crystalline silicon, or other (then no table of factors applies)</source>
        <translation>crystalline silicon (silicio cristalino), u other (otro; entonces no vale ninguna tabla de factores)</translation>
    </message>
    <message>
        <source>`%1` is no kind of cell</source>
        <translation>`%1` no es una clase de célula</translation>
    </message>
    <message>
        <source>use `crystalline silicon` or `other`</source>
        <translation>use `crystalline silicon` u `other`</translation>
    </message>
    <message>
        <source>what the sheet is called</source>
        <translation>cómo se llama la hoja</translation>
    </message>
    <message>
        <source>name of the unit whose PV input it is meant for</source>
        <translation>nombre del equipo de cuya entrada FV se trata</translation>
    </message>
    <message>
        <source>the module, as its label says</source>
        <translation>el módulo, como dice su placa</translation>
    </message>
    <message>
        <source>open-circuit voltage of one module, V</source>
        <translation>tensión de circuito abierto de un módulo, V</translation>
    </message>
    <message>
        <source>voltage at maximum power, V</source>
        <translation>tensión a potencia máxima, V</translation>
    </message>
    <message>
        <source>short-circuit current, A</source>
        <translation>corriente de cortocircuito, A</translation>
    </message>
    <message>
        <source>current at maximum power, A</source>
        <translation>corriente a potencia máxima, A</translation>
    </message>
    <message>
        <source>temperature coefficient of Voc, %/°C or mV/°C</source>
        <translation>coeficiente de temperatura de Voc, %/°C o mV/°C</translation>
    </message>
    <message>
        <source>temperature coefficient of Vmp, %/°C or mV/°C</source>
        <translation>coeficiente de temperatura de Vmp, %/°C o mV/°C</translation>
    </message>
    <message>
        <source>temperature coefficient of the power, %/°C</source>
        <translation>coeficiente de temperatura de la potencia, %/°C</translation>
    </message>
    <message>
        <source>tolerance of the module&apos;s voltages, %; 3 where not stated</source>
        <translation>tolerancia de las tensiones del módulo, %; 3 si no está indicada</translation>
    </message>
    <message>
        <source>nominal operating cell temperature, °C</source>
        <translation>temperatura nominal de operación de la célula, °C</translation>
    </message>
    <message>
        <source>modules in a string</source>
        <translation>módulos en una cadena</translation>
    </message>
    <message>
        <source>strings side by side</source>
        <translation>cadenas en paralelo</translation>
    </message>
    <message>
        <source>coldest ambient temperature in daylight, °C</source>
        <translation>temperatura ambiente mínima con luz de día, °C</translation>
    </message>
    <message>
        <source>hottest ambient temperature, °C</source>
        <translation>temperatura ambiente máxima, °C</translation>
    </message>
    <message>
        <source>hottest cell temperature instead, °C</source>
        <translation>en su lugar, temperatura máxima de la célula, °C</translation>
    </message>
    <message>
        <source>irradiance at the hottest, W/m²; 1000 where not stated</source>
        <translation>irradiancia con el mayor calor, W/m²; 1000 si no está indicada</translation>
    </message>
    <message>
        <source>voltage limit of the PV input, V</source>
        <translation>límite de tensión de la entrada FV, V</translation>
    </message>
    <message>
        <source>operating current that the PV input is made for, A</source>
        <translation>corriente de servicio para la que está hecha la entrada FV, A</translation>
    </message>
    <message>
        <source>short-circuit current that the PV input withstands, A</source>
        <translation>corriente de cortocircuito que soporta la entrada FV, A</translation>
    </message>
    <message>
        <source>power limit of the PV input, W</source>
        <translation>límite de potencia de la entrada FV, W</translation>
    </message>
    <message>
        <source>lowest voltage at which the PV input starts, V</source>
        <translation>tensión mínima a la que arranca la entrada FV, V</translation>
    </message>
    <message>
        <source>anything else</source>
        <translation>cualquier otra cosa</translation>
    </message>
    <message>
        <source>`%1` has an unknown unit</source>
        <translation>`%1` tiene una unidad de medida desconocida</translation>
    </message>
    <message>
        <source>use %/°C or mV/°C</source>
        <translation>use %/°C o mV/°C</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, línea %2</translation>
    </message>
    <message>
        <source>the line has no colon</source>
        <translation>la línea no tiene dos puntos</translation>
    </message>
    <message>
        <source>write `key: value`, or begin a comment with #</source>
        <translation>escriba `key: value` o empiece un comentario con #</translation>
    </message>
    <message>
        <source>the key `%1` is not known</source>
        <translation>no se conoce la clave `%1`</translation>
    </message>
    <message>
        <source>see ullage pv-check --help for the keys</source>
        <translation>vea las claves en ullage pv-check --help</translation>
    </message>
    <message>
        <source>the key `%1` stands twice</source>
        <translation>la clave `%1` está dos veces</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>línea %1, columna %2</translation>
    </message>
    <message>
        <source>line %1, column %2 (%3)</source>
        <translation>línea %1, columna %2 (%3)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>choose a run sheet</source>
        <translation>elija una hoja de ensayo</translation>
    </message>
    <message>
        <source>the file is encoded in UTF-16</source>
        <translation>el archivo está codificado en UTF-16</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>guárdelo como UTF-8</translation>
    </message>
    <message>
        <source>the file is no text</source>
        <translation>el archivo no es un texto</translation>
    </message>
    <message>
        <source>choose a run sheet, a text file of lines and commas</source>
        <translation>elija una hoja de ensayo, un archivo de texto con líneas y comas</translation>
    </message>
    <message>
        <source>a byte is no UTF-8 character</source>
        <translation>un byte no es un carácter UTF-8</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>línea %1, carácter %2</translation>
    </message>
    <message>
        <source>save the file as UTF-8</source>
        <translation>guarde el archivo como UTF-8</translation>
    </message>
    <message>
        <source>the fields are separated by semicolons</source>
        <translation>los campos están separados por punto y coma</translation>
    </message>
    <message>
        <source>the fields are separated by tabs</source>
        <translation>los campos están separados por tabuladores</translation>
    </message>
    <message>
        <source>save the sheet with commas between the fields</source>
        <translation>guarde la hoja con comas entre los campos</translation>
    </message>
    <message>
        <source>the sheet has no readings</source>
        <translation>la hoja no tiene lecturas</translation>
    </message>
    <message>
        <source>the rows are not in order of time; they are put in order</source>
        <translation>las filas no están en orden de tiempo; se ponen en orden</translation>
    </message>
    <message>
        <source>add the row `%1`</source>
        <translation>añada la fila `%1`</translation>
    </message>
    <message>
        <source>there is no header row</source>
        <translation>no hay fila de cabecera</translation>
    </message>
    <message>
        <source>there is no column `time`</source>
        <translation>no hay columna `time`</translation>
    </message>
    <message>
        <source>column `%1` is not known</source>
        <translation>no se conoce la columna `%1`</translation>
    </message>
    <message>
        <source>remove it; the columns are %1</source>
        <translation>quítela; las columnas son %1</translation>
    </message>
    <message>
        <source>column `%1` stands twice, first as column %2</source>
        <translation>la columna `%1` está dos veces, la primera como columna %2</translation>
    </message>
    <message>
        <source>remove one of the two</source>
        <translation>quite una de las dos</translation>
    </message>
    <message>
        <source>line %1: the row is empty; left out</source>
        <translation>línea %1: la fila está vacía; se omite</translation>
    </message>
    <message>
        <source>`%1` stands in a column without a name</source>
        <translation>`%1` está en una columna sin nombre</translation>
    </message>
    <message>
        <source>name the column or remove the text</source>
        <translation>nombre la columna o quite el texto</translation>
    </message>
    <message>
        <source>a line with `#` stands below the header row</source>
        <translation>hay una línea con `#` debajo de la fila de cabecera</translation>
    </message>
    <message>
        <source>move it above the header row or remove it</source>
        <translation>pásela encima de la fila de cabecera o quítela</translation>
    </message>
    <message>
        <source>add or remove commas; a remark with commas needs quotes around it</source>
        <translation>añada o quite comas; una observación con comas necesita comillas alrededor</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` está fuera de los límites</translation>
    </message>
    <message>
        <source>give 0 to %1</source>
        <translation>indique 0 a %1</translation>
    </message>
    <message>
        <source>`%1` is no mark</source>
        <translation>`%1` no es una marca</translation>
    </message>
    <message>
        <source>use one of: %1</source>
        <translation>use una de estas: %1</translation>
    </message>
    <message>
        <source>the row has no time</source>
        <translation>la fila no tiene hora</translation>
    </message>
    <message>
        <source>give date and time, like 2027-05-14T18:00</source>
        <translation>indique fecha y hora, como 2027-05-14T18:00</translation>
    </message>
    <message>
        <source>`%1` has no offset, and the sheet names no time zone</source>
        <translation>`%1` no tiene desfase, y la hoja no nombra ninguna zona horaria</translation>
    </message>
    <message>
        <source>add Z or an offset such as +02:00, or a line `# time_zone: NAME`</source>
        <translation>añada Z o un desfase como +02:00, o una línea `# time_zone: NAME`</translation>
    </message>
    <message>
        <source>line %1: %2 occurs twice in %3; by the order of the rows it is read as the later, %4</source>
        <translation>línea %1: %2 ocurre dos veces en %3; por el orden de las filas se lee como la posterior, %4</translation>
    </message>
    <message>
        <source>line %1: %2 occurs twice in %3; by the order of the rows it is read as the earlier, %4</source>
        <translation>línea %1: %2 ocurre dos veces en %3; por el orden de las filas se lee como la anterior, %4</translation>
    </message>
</context>
<context>
    <name>sizing</name>
    <message>
        <source>no standby run</source>
        <translation>ningún ensayo de reposo</translation>
    </message>
    <message>
        <source>an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice)</source>
        <translation>una previsión, no una medida: %1 a %2 % de la energía asignada en la toma (práctica común)</translation>
    </message>
    <message>
        <source>an expectation: its drains do not tell its no-load draw, which is taken as usual (0 to 3 % of the rated output, common practice)</source>
        <translation>una previsión: sus descargas no dicen su consumo en vacío, que se toma como el habitual (0 a 3 % de la potencia asignada, práctica común)</translation>
    </message>
    <message>
        <source>from full to cut-off, by the hour at which it begins and the order of use</source>
        <translation>de lleno a corte, según la hora en que empieza y el orden de uso</translation>
    </message>
    <message>
        <source>%1 alone takes %2 W, above the rated output of %3 W</source>
        <translation>%1 por sí solo consume %2 W, por encima de la potencia asignada de %3 W</translation>
    </message>
    <message>
        <source>%1 alone starts with %2 W, above the highest output of %3 W</source>
        <translation>%1 por sí solo arranca con %2 W, por encima de la potencia máxima de %3 W</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries the power</source>
        <translation>ningún número de equipos hasta %1 soporta la potencia</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries it for %2 day: their own draw empties them before</source>
        <translation>ningún número de equipos hasta %1 la alimenta durante %2 día: su consumo propio los vacía antes</translation>
    </message>
    <message>
        <source>no number of units up to %1 carries it for %2 days: their own draw empties them before</source>
        <translation>ningún número de equipos hasta %1 la alimenta durante %2 días: su consumo propio los vacía antes</translation>
    </message>
    <message>
        <source>the power decides</source>
        <translation>decide la potencia</translation>
    </message>
    <message>
        <source>no interval: the error limit of a meter is not stated</source>
        <translation>sin intervalo: el límite de error de un contador no está indicado</translation>
    </message>
    <message>
        <source>no number of units is sure to carry it for so long: their own draw may empty them before</source>
        <translation>ningún número de equipos la alimenta con seguridad tanto tiempo: su consumo propio puede vaciarlos antes</translation>
    </message>
    <message>
        <source>its own draw is not measured: %1 W are taken, as is usual</source>
        <translation>su consumo propio no está medido: se toman %1 W, como es habitual</translation>
    </message>
    <message>
        <source>its own draw is not measured and not counted: PV array and battery are the least needed</source>
        <translation>su consumo propio no está medido ni se cuenta: generador FV y batería son lo mínimo necesario</translation>
    </message>
    <message>
        <source>while its output is off it takes %1 W, which are counted</source>
        <translation>con su salida apagada toma %1 W, que se cuentan</translation>
    </message>
    <message>
        <source>what it takes while its output is off is not measured and not counted: make a standby run</source>
        <translation>lo que toma con su salida apagada no está medido ni se cuenta: haga un ensayo de reposo</translation>
    </message>
    <message>
        <source>more units do not help</source>
        <translation>más equipos no ayudan</translation>
    </message>
    <message>
        <source>no peak output is claimed; starts are held against the rated output</source>
        <translation>no se declara potencia de pico; los arranques se contrastan con la potencia asignada</translation>
    </message>
    <message>
        <source>the claim does not hold: %1</source>
        <translation>el dato declarado no se cumple: %1</translation>
    </message>
    <message>
        <source>the load list takes nothing</source>
        <translation>la lista de cargas no consume nada</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated, and no drain tells its energy</source>
        <translation>la energía asignada del equipo no está indicada, y ninguna descarga dice su energía</translation>
    </message>
    <message>
        <source>own drains</source>
        <translation>descargas propias</translation>
    </message>
    <message>
        <source>expectation from one load</source>
        <translation>previsión desde una sola carga</translation>
    </message>
    <message>
        <source>expectation, not measured</source>
        <translation>previsión, sin medir</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>apto</translation>
    </message>
    <message>
        <source>fits if not all run at once</source>
        <translation>apto si no funciona todo a la vez</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>demasiado pequeño</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>The load list takes nothing yet.</source>
        <translation>La lista de cargas aún no consume nada.</translation>
    </message>
    <message>
        <source>The output stays on day and night, since something is always connected.</source>
        <translation>La salida sigue encendida día y noche, pues siempre hay algo conectado.</translation>
    </message>
    <message>
        <source>The output is on for %1 h a day (%2 h if no two appliances were in use together) and switched off for the rest.</source>
        <translation>La salida está encendida %1 h al día (%2 h si nunca se usaran dos aparatos a la vez) y apagada el resto.</translation>
    </message>
    <message>
        <source>Days, PV array, months and battery count the unit&apos;s own draw for every hour that its output is on, besides the list.</source>
        <translation>Días, generador FV, meses y batería cuentan, además de la lista, el consumo propio del equipo por cada hora que su salida está encendida.</translation>
    </message>
    <message>
        <source>Use by day is spread evenly over a day of %1 h, use at night over a night of %2 h; a day of autonomy is one day&apos;s list served.</source>
        <translation>El uso de día se reparte por igual en un día de %1 h; el de noche, en una noche de %2 h; un día de autonomía es alimentar la lista de un día.</translation>
    </message>
    <message>
        <source>Units without a drain that says anything stand with an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice, no source).</source>
        <translation>Los equipos sin una descarga que diga algo llevan una previsión, no una medida: %1 a %2 % de la energía asignada en la toma (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>The PV input of %1 takes at most %2 W of the array&apos;s %3 W for each unit.</source>
        <translation>La entrada FV de %1 admite como máximo %2 W de los %3 W del generador para cada equipo.</translation>
    </message>
    <message>
        <source>The PV input of %1 takes at most %2 W of the array&apos;s %3 W.</source>
        <translation>La entrada FV de %1 admite como máximo %2 W de los %3 W del generador.</translation>
    </message>
    <message>
        <source>Never connect the outputs of several units with each other; give each its own appliances, unless the makers say otherwise.</source>
        <translation>No conecte nunca entre sí las salidas de varios equipos; dé a cada uno sus propios aparatos, salvo que los fabricantes digan otra cosa.</translation>
    </message>
    <message>
        <source>Never exceed the ratings of sockets, cords and the unit; motors and compressors start with several times their power.</source>
        <translation>No supere nunca los valores asignados de tomas, cables y equipo; los motores y compresores arrancan con varias veces su potencia.</translation>
    </message>
    <message>
        <source>PV strings are live in daylight and can carry dangerous DC voltage; check the string against the unit&apos;s PV input first.</source>
        <translation>Las cadenas FV están en tensión con luz diurna y pueden llevar tensión continua peligrosa; compruebe antes la cadena con la entrada FV del equipo.</translation>
    </message>
    <message>
        <source>Feed no building from a unit without the transfer switch that the local code asks for.</source>
        <translation>No alimente ningún edificio desde un equipo sin el conmutador de transferencia que pide el reglamento local.</translation>
    </message>
    <message>
        <source>Local electrical codes and a licensed electrician come first.</source>
        <translation>Los reglamentos eléctricos locales y un electricista autorizado van primero.</translation>
    </message>
    <message>
        <source>Do not rest medical equipment or anything that a life depends on upon this forecast.</source>
        <translation>No confíe a esta previsión equipos médicos ni nada de lo que dependa una vida.</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 está fuera de los límites</translation>
    </message>
    <message>
        <source>this is out of range</source>
        <translation>esto está fuera de los límites</translation>
    </message>
    <message>
        <source>state a number above %1 to %2</source>
        <translation>indique un número mayor que %1 y hasta %2</translation>
    </message>
    <message>
        <source>state a number from %1 to %2</source>
        <translation>indique un número de %1 a %2</translation>
    </message>
    <message>
        <source>days of autonomy</source>
        <translation>días de autonomía</translation>
    </message>
    <message>
        <source>peak-sun hours</source>
        <translation>horas de sol pico</translation>
    </message>
    <message>
        <source>derating</source>
        <translation>rendimiento FV</translation>
    </message>
    <message>
        <source>array-to-load ratio</source>
        <translation>relación generador/carga</translation>
    </message>
    <message>
        <source>array</source>
        <translation>generador</translation>
    </message>
    <message>
        <source>units side by side</source>
        <translation>equipos en paralelo</translation>
    </message>
    <message>
        <source>daylight hours</source>
        <translation>horas de luz diurna</translation>
    </message>
    <message>
        <source>expected share, lower end</source>
        <translation>parte prevista, extremo inferior</translation>
    </message>
    <message>
        <source>expected share, upper end</source>
        <translation>parte prevista, extremo superior</translation>
    </message>
    <message>
        <source>inverter efficiency</source>
        <translation>rendimiento del inversor</translation>
    </message>
    <message>
        <source>deepest discharge</source>
        <translation>descarga más profunda</translation>
    </message>
    <message>
        <source>share left at the end of life</source>
        <translation>parte restante al final de vida</translation>
    </message>
    <message>
        <source>temperature factor</source>
        <translation>factor de temperatura</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>peak-sun hours of month %1</source>
        <translation>horas de sol pico del mes %1</translation>
    </message>
    <message>
        <source>the lower end of the expected share is above the upper</source>
        <translation>el extremo inferior de la parte prevista está por encima del superior</translation>
    </message>
    <message>
        <source>expected share</source>
        <translation>parte prevista</translation>
    </message>
    <message>
        <source>swap them</source>
        <translation>intercámbielos</translation>
    </message>
    <message>
        <source>Days of autonomy: %1</source>
        <translation>Días de autonomía: %1</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>a file of the copy&apos;s name is no copy of this logbook</source>
        <translation>un archivo con el nombre de la copia no es una copia de este cuaderno</translation>
    </message>
    <message>
        <source>move it away, or choose another folder for the copies</source>
        <translation>llévelo a otro sitio, o elija otra carpeta para las copias</translation>
    </message>
    <message>
        <source>the disk is full; no copy was made</source>
        <translation>el disco está lleno; no se ha hecho ninguna copia</translation>
    </message>
    <message>
        <source>free some space, or choose another folder for the copies</source>
        <translation>libere espacio, o elija otra carpeta para las copias</translation>
    </message>
    <message>
        <source>the copy that was just made cannot be read back</source>
        <translation>la copia que se acaba de hacer no se puede volver a leer</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder for the copies; no copy was kept</source>
        <translation>compruebe el disco, o elija otra carpeta para las copias; no se ha conservado ninguna copia</translation>
    </message>
    <message>
        <source>a text of %1 is too long</source>
        <translation>un texto de %1 es demasiado largo</translation>
    </message>
    <message>
        <source>a text of %1 is no UTF-8</source>
        <translation>un texto de %1 no es UTF-8</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>una lectura</translation>
    </message>
    <message>
        <source>a meter has no data</source>
        <translation>un contador no tiene datos</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>contador %1</translation>
    </message>
    <message>
        <source>an option of the method</source>
        <translation>una opción del método</translation>
    </message>
    <message>
        <source>the publisher&apos;s details</source>
        <translation>los datos de quien publica</translation>
    </message>
    <message>
        <source>the source of a meter</source>
        <translation>la fuente de un contador</translation>
    </message>
    <message>
        <source>a set of columns</source>
        <translation>un conjunto de columnas</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>equipo %1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>ensayo %1</translation>
    </message>
    <message>
        <source>log %1</source>
        <translation>grabación %1</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>%1 is %2 here, but %3 in the logbook</source>
        <translation>%1 es aquí %2, pero %3 en el cuaderno</translation>
    </message>
    <message>
        <source>correct one of the two, or give this one another name; nothing was imported</source>
        <translation>corrija uno de los dos o dé otro nombre a este; no se ha importado nada</translation>
    </message>
    <message>
        <source>the currency</source>
        <translation>la moneda</translation>
    </message>
    <message>
        <source>the model</source>
        <translation>el modelo</translation>
    </message>
    <message>
        <source>the serial number</source>
        <translation>el número de serie</translation>
    </message>
    <message>
        <source>the chemistry</source>
        <translation>la química</translation>
    </message>
    <message>
        <source>the day of purchase</source>
        <translation>el día de compra</translation>
    </message>
    <message>
        <source>the rated energy</source>
        <translation>la energía asignada</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>la potencia asignada</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>the peak output</source>
        <translation>la potencia de pico</translation>
    </message>
    <message>
        <source>the PV voltage limit</source>
        <translation>el límite de tensión FV</translation>
    </message>
    <message>
        <source>%1 V</source>
        <translation>%1 V</translation>
    </message>
    <message>
        <source>the PV current limit</source>
        <translation>el límite de corriente FV</translation>
    </message>
    <message>
        <source>%1 A</source>
        <translation>%1 A</translation>
    </message>
    <message>
        <source>the PV power limit</source>
        <translation>el límite de potencia FV</translation>
    </message>
    <message>
        <source>the PV start voltage</source>
        <translation>la tensión de arranque FV</translation>
    </message>
    <message>
        <source>the PV short-circuit current</source>
        <translation>la corriente de cortocircuito FV</translation>
    </message>
    <message>
        <source>the charge time</source>
        <translation>el tiempo de recarga</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>el precio</translation>
    </message>
    <message>
        <source>the price paid</source>
        <translation>el precio pagado</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>la masa</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>the warranty</source>
        <translation>la garantía</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>the cycles before</source>
        <translation>el número de ciclos previos</translation>
    </message>
    <message>
        <source>the gauge step</source>
        <translation>la resolución del indicador</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 puntos porcentuales</translation>
    </message>
    <message>
        <source>the class</source>
        <translation>la clase</translation>
    </message>
    <message>
        <source>the standard</source>
        <translation>la norma</translation>
    </message>
    <message>
        <source>the number of the certificate</source>
        <translation>el número del certificado</translation>
    </message>
    <message>
        <source>the date of the certificate</source>
        <translation>la fecha del certificado</translation>
    </message>
    <message>
        <source>the laboratory</source>
        <translation>el laboratorio</translation>
    </message>
    <message>
        <source>the end of its validity</source>
        <translation>el fin de su validez</translation>
    </message>
    <message>
        <source>a point of correction</source>
        <translation>un punto de corrección</translation>
    </message>
    <message>
        <source>another</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>indicado</translation>
    </message>
    <message>
        <source>the step</source>
        <translation>la resolución</translation>
    </message>
    <message>
        <source>the part of the error limit of each load</source>
        <translation>la parte del límite de error propia de cada carga</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>the error limit</source>
        <translation>el límite de error</translation>
    </message>
    <message>
        <source>the span</source>
        <translation>el tope</translation>
    </message>
    <message>
        <source>the starting current</source>
        <translation>la corriente de arranque</translation>
    </message>
    <message>
        <source>the lowest load of the range</source>
        <translation>la carga mínima del rango</translation>
    </message>
    <message>
        <source>the highest load of the range</source>
        <translation>la carga máxima del rango</translation>
    </message>
    <message>
        <source>the correction</source>
        <translation>la corrección</translation>
    </message>
    <message>
        <source>the samples are not in order of time</source>
        <translation>las muestras no están en orden de tiempo</translation>
    </message>
    <message>
        <source>sort the log by time</source>
        <translation>ordene la grabación por tiempo</translation>
    </message>
    <message>
        <source>a PV sheet or the source of a charge is of an unknown kind</source>
        <translation>una hoja FV o la fuente de una recarga es de una clase desconocida</translation>
    </message>
    <message>
        <source>a run or a mark is of an unknown kind</source>
        <translation>un ensayo o una marca es de una clase desconocida</translation>
    </message>
    <message>
        <source>a photo is of an unknown kind</source>
        <translation>una foto es de una clase desconocida</translation>
    </message>
    <message>
        <source>the logbook is damaged (%1)</source>
        <translation>el cuaderno está dañado (%1)</translation>
    </message>
    <message>
        <source>restore it from a copy; nothing was changed</source>
        <translation>restáurelo desde una copia; no se ha cambiado nada</translation>
    </message>
    <message>
        <source>it has no version</source>
        <translation>no tiene versión</translation>
    </message>
    <message>
        <source>its tables are not those of version %1</source>
        <translation>sus tablas no son las de la versión %1</translation>
    </message>
    <message>
        <source>a row of %1 has lost its owner</source>
        <translation>una fila de %1 ha perdido a su propietario</translation>
    </message>
    <message>
        <source>the file changed while it was being opened</source>
        <translation>el archivo cambió mientras se abría</translation>
    </message>
    <message>
        <source>wait until the other program has done with it, then open it again</source>
        <translation>espere a que el otro programa termine con él y ábralo de nuevo</translation>
    </message>
    <message>
        <source>the disk does not allow safe recording</source>
        <translation>el disco no permite anotar con seguridad</translation>
    </message>
    <message>
        <source>copy the logbook to a disk of this machine</source>
        <translation>copie el cuaderno a un disco de esta máquina</translation>
    </message>
    <message>
        <source>the remains of another logbook of this name lie in the folder</source>
        <translation>en la carpeta están los restos de otro cuaderno con este nombre</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>elija otro nombre</translation>
    </message>
    <message>
        <source>not all of the open logbook can be read any more</source>
        <translation>ya no se puede leer todo el cuaderno abierto</translation>
    </message>
    <message>
        <source>restore the logbook from a copy of it; no copy was made</source>
        <translation>restaure el cuaderno desde una copia suya; no se ha hecho ninguna copia</translation>
    </message>
    <message>
        <source>the disk is full; nothing was recorded</source>
        <translation>el disco está lleno; no se ha anotado nada</translation>
    </message>
    <message>
        <source>free some space, then try again</source>
        <translation>libere algo de espacio y después inténtelo de nuevo</translation>
    </message>
    <message>
        <source>the logbook cannot be written</source>
        <translation>no se puede escribir en el cuaderno</translation>
    </message>
    <message>
        <source>check the permissions of the file and its folder</source>
        <translation>compruebe los permisos del archivo y de su carpeta</translation>
    </message>
    <message>
        <source>close it and restore it from a copy</source>
        <translation>ciérrelo y restáurelo desde una copia</translation>
    </message>
    <message>
        <source>the logbook refused this (%1); nothing was recorded</source>
        <translation>el cuaderno rechazó esto (%1); no se ha anotado nada</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>no se puede abrir el archivo</translation>
    </message>
    <message>
        <source>the memory is used up; nothing was recorded</source>
        <translation>la memoria está agotada; no se ha anotado nada</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>cierre otros programas</translation>
    </message>
    <message>
        <source>the disk reported a fault; nothing was recorded (%1)</source>
        <translation>el disco comunicó un fallo; no se ha anotado nada (%1)</translation>
    </message>
    <message>
        <source>check the disk and its cable, then try again</source>
        <translation>compruebe el disco y su cable y después inténtelo de nuevo</translation>
    </message>
    <message>
        <source>the file cannot be reached (%1)</source>
        <translation>no se puede acceder al archivo (%1)</translation>
    </message>
    <message>
        <source>check the folder</source>
        <translation>compruebe la carpeta</translation>
    </message>
    <message>
        <source>the file could not be written to the disk (%1)</source>
        <translation>no se pudo escribir el archivo en el disco (%1)</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder</source>
        <translation>compruebe el disco o elija otra carpeta</translation>
    </message>
    <message>
        <source>the file could not be given its name (%1)</source>
        <translation>no se pudo dar su nombre al archivo (%1)</translation>
    </message>
    <message>
        <source>choose another name or folder</source>
        <translation>elija otro nombre u otra carpeta</translation>
    </message>
    <message>
        <source>the logbook is open elsewhere</source>
        <translation>el cuaderno está abierto en otra parte</translation>
    </message>
    <message>
        <source>close it there first; only one window or command can record into a logbook at a time</source>
        <translation>ciérrelo antes allí; solo una ventana o un comando puede anotar a la vez en un cuaderno</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>compruebe el nombre y la carpeta</translation>
    </message>
    <message>
        <source>check the permissions of its folder</source>
        <translation>compruebe los permisos de su carpeta</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>esto es una carpeta</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>esto no es un archivo</translation>
    </message>
    <message>
        <source>choose a .ullage file</source>
        <translation>elija un archivo .ullage</translation>
    </message>
    <message>
        <source>the file cannot be read (%1)</source>
        <translation>no se puede leer el archivo (%1)</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>compruebe sus permisos</translation>
    </message>
    <message>
        <source>the file is read-only</source>
        <translation>el archivo es de solo lectura</translation>
    </message>
    <message>
        <source>make it writable, or save a copy elsewhere and record there; it can be looked at as it is</source>
        <translation>permita escribir en él, o guarde una copia en otro sitio y anote allí; se puede consultar tal como está</translation>
    </message>
    <message>
        <source>the folder is read-only</source>
        <translation>la carpeta es de solo lectura</translation>
    </message>
    <message>
        <source>make it writable, or save a copy elsewhere and record there; the logbook can be looked at as it is</source>
        <translation>permita escribir en ella, o guarde una copia en otro sitio y anote allí; el cuaderno se puede consultar tal como está</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>no existe esa carpeta</translation>
    </message>
    <message>
        <source>make the folder first, or choose another</source>
        <translation>cree antes la carpeta o elija otra</translation>
    </message>
    <message>
        <source>no file can be made in this folder</source>
        <translation>no se puede crear ningún archivo en esta carpeta</translation>
    </message>
    <message>
        <source>choose a folder that you may write to</source>
        <translation>elija una carpeta en la que pueda escribir</translation>
    </message>
    <message>
        <source>a file of this name exists already</source>
        <translation>ya existe un archivo con este nombre</translation>
    </message>
    <message>
        <source>this logbook was written by a newer version of Ullage (file version %1, this program knows up to %2)</source>
        <translation>este cuaderno lo escribió una versión más nueva de Ullage (versión de archivo %1; este programa conoce hasta %2)</translation>
    </message>
    <message>
        <source>open it with the newer program; nothing was changed</source>
        <translation>ábralo con el programa más nuevo; no se ha cambiado nada</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>choose another file, or make a new logbook under another name</source>
        <translation>elija otro archivo o cree un cuaderno nuevo con otro nombre</translation>
    </message>
    <message>
        <source>the file is no logbook</source>
        <translation>el archivo no es un cuaderno</translation>
    </message>
    <message>
        <source>choose a .ullage file; run sheets are imported into a logbook</source>
        <translation>elija un archivo .ullage; las hojas de ensayo se importan en un cuaderno</translation>
    </message>
    <message>
        <source>the file is cut off after %1 bytes</source>
        <translation>el archivo está cortado tras %1 bytes</translation>
    </message>
    <message>
        <source>restore it from a copy</source>
        <translation>restáurelo desde una copia</translation>
    </message>
    <message>
        <source>the file is a database of another program</source>
        <translation>el archivo es una base de datos de otro programa</translation>
    </message>
    <message>
        <source>nothing more is recorded</source>
        <translation>ya no se anota nada</translation>
    </message>
    <message>
        <source>save the open logbook under another name and go on there; what you entered stays in its fields</source>
        <translation>guarde el cuaderno abierto con otro nombre y siga allí; lo que introdujo permanece en sus campos</translation>
    </message>
    <message>
        <source>the logbook&apos;s file cannot be reached</source>
        <translation>no se puede acceder al archivo del cuaderno</translation>
    </message>
    <message>
        <source>the logbook&apos;s file was removed while it was open</source>
        <translation>el archivo del cuaderno se quitó mientras estaba abierto</translation>
    </message>
    <message>
        <source>the logbook&apos;s file was renamed or moved while it was open</source>
        <translation>el archivo del cuaderno cambió de nombre o de lugar mientras estaba abierto</translation>
    </message>
    <message>
        <source>another file has taken the place of the open logbook</source>
        <translation>otro archivo ha ocupado el lugar del cuaderno abierto</translation>
    </message>
    <message>
        <source>another program has cut the open logbook short</source>
        <translation>otro programa ha recortado el cuaderno abierto</translation>
    </message>
    <message>
        <source>another program has written to the open logbook</source>
        <translation>otro programa ha escrito en el cuaderno abierto</translation>
    </message>
    <message>
        <source>opening it was cancelled</source>
        <translation>se canceló su apertura</translation>
    </message>
    <message>
        <source>the logbook is open for looking only</source>
        <translation>el cuaderno está abierto solo para consulta</translation>
    </message>
    <message>
        <source>open it for recording first</source>
        <translation>ábralo antes para anotar</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>el disco está lleno</translation>
    </message>
    <message>
        <source>the disk reported a fault</source>
        <translation>el disco comunicó un fallo</translation>
    </message>
    <message>
        <source>what was recorded last is safe, but in `%1` beside the logbook; free some space</source>
        <translation>lo último anotado está a salvo, pero en `%1` junto al cuaderno; libere algo de espacio</translation>
    </message>
    <message>
        <source>what was recorded last is safe, but in `%1` beside the logbook; check the disk</source>
        <translation>lo último anotado está a salvo, pero en `%1` junto al cuaderno; compruebe el disco</translation>
    </message>
    <message>
        <source>it may have been chosen from another logbook</source>
        <translation>puede haberse elegido de otro cuaderno</translation>
    </message>
    <message>
        <source>a block of samples cannot be read</source>
        <translation>no se puede leer un bloque de muestras</translation>
    </message>
    <message>
        <source>restore the logbook from a copy</source>
        <translation>restaure el cuaderno desde una copia</translation>
    </message>
    <message>
        <source>nothing was added</source>
        <translation>no se ha añadido nada</translation>
    </message>
    <message>
        <source>the photo is empty</source>
        <translation>la foto está vacía</translation>
    </message>
    <message>
        <source>choose another file</source>
        <translation>elija otro archivo</translation>
    </message>
    <message>
        <source>the photo has %1; a logbook takes photos of at most %2</source>
        <translation>la foto tiene %1; un cuaderno admite fotos de %2 como máximo</translation>
    </message>
    <message>
        <source>save it smaller, as JPEG for example</source>
        <translation>guárdelo más pequeño, por ejemplo como JPEG</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG picture, whatever its name says</source>
        <translation>esto no es una imagen JPEG ni PNG, diga lo que diga su nombre</translation>
    </message>
    <message>
        <source>save it as JPEG or PNG first</source>
        <translation>guárdela antes como JPEG o PNG</translation>
    </message>
    <message>
        <source>the head of the picture is damaged or cut off</source>
        <translation>la cabecera de la imagen está dañada o cortada</translation>
    </message>
    <message>
        <source>copy it from the camera again</source>
        <translation>cópiela de nuevo desde la cámara</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels; a logbook takes photos of at most %3 megapixels</source>
        <translation>la foto tiene %1 x %2 píxeles; un cuaderno admite fotos de %3 megapíxeles como máximo</translation>
    </message>
    <message>
        <source>save it smaller</source>
        <translation>guárdela más pequeña</translation>
    </message>
    <message>
        <source>there is no room for a temporary copy of the logbook</source>
        <translation>no hay espacio para una copia temporal del cuaderno</translation>
    </message>
    <message>
        <source>free space there, then open the logbook again</source>
        <translation>libere espacio allí y después abra de nuevo el cuaderno</translation>
    </message>
    <message>
        <source>a temporary copy of the logbook failed: %1</source>
        <translation>falló una copia temporal del cuaderno: %1</translation>
    </message>
    <message>
        <source>check the space and permissions of the temporary folder</source>
        <translation>compruebe el espacio y los permisos de la carpeta temporal</translation>
    </message>
    <message>
        <source>nothing is left of it</source>
        <translation>no queda nada de él</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>no se puede leer el archivo hasta el final</translation>
    </message>
    <message>
        <source>check the disk, or take a copy of the file</source>
        <translation>compruebe el disco o tome una copia del archivo</translation>
    </message>
    <message>
        <source>the file is too large for the memory</source>
        <translation>el archivo es demasiado grande para la memoria</translation>
    </message>
    <message>
        <source>the logbook is open elsewhere and changes all the time</source>
        <translation>el cuaderno está abierto en otra parte y cambia todo el tiempo</translation>
    </message>
    <message>
        <source>try again in a moment</source>
        <translation>inténtelo de nuevo dentro de un momento</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>give it a name</source>
        <translation>dele un nombre</translation>
    </message>
    <message>
        <source>the tags are not in order, or one holds a semicolon, a comma or blanks around it</source>
        <translation>las etiquetas no están en orden, o una contiene un punto y coma, una coma o blancos alrededor</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>give short words, each once</source>
        <translation>indique palabras breves, cada una una vez</translation>
    </message>
    <message>
        <source>points of correction</source>
        <translation>puntos de corrección</translation>
    </message>
    <message numerus="yes">
        <source>there are %n of them</source>
        <comment>there is %n of them</comment>
        <translation>
            <numerusform>hay %n</numerusform>
            <numerusform>hay %n</numerusform>
        </translation>
    </message>
    <message>
        <source>load of a point</source>
        <translation>carga de un punto</translation>
    </message>
    <message>
        <source>correction of a point</source>
        <translation>corrección de un punto</translation>
    </message>
    <message>
        <source>uncertainty of a point</source>
        <translation>incertidumbre de un punto</translation>
    </message>
    <message>
        <source>coverage factor of a point</source>
        <translation>factor de cobertura de un punto</translation>
    </message>
    <message>
        <source>a point states a coverage factor but no uncertainty</source>
        <translation>un punto indica factor de cobertura pero no incertidumbre</translation>
    </message>
    <message>
        <source>state U with k</source>
        <translation>indique U con k</translation>
    </message>
    <message>
        <source>the points are not in order of rising load, or two are at one load</source>
        <translation>los puntos no están en orden de carga creciente, o dos están a la misma carga</translation>
    </message>
    <message>
        <source>state each load once, the lowest first</source>
        <translation>indique cada carga una vez, la menor primero</translation>
    </message>
    <message>
        <source>the unit has no name</source>
        <translation>el equipo no tiene nombre</translation>
    </message>
    <message>
        <source>day of purchase</source>
        <translation>día de compra</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricante</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>chemistry</source>
        <translation>química</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>energía asignada</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>potencia asignada</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>PV voltage limit</source>
        <translation>límite de tensión FV</translation>
    </message>
    <message>
        <source>PV current limit</source>
        <translation>límite de corriente FV</translation>
    </message>
    <message>
        <source>PV power limit</source>
        <translation>límite de potencia FV</translation>
    </message>
    <message>
        <source>PV start voltage</source>
        <translation>tensión de arranque FV</translation>
    </message>
    <message>
        <source>PV short-circuit current</source>
        <translation>corriente de cortocircuito FV</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>tiempo de recarga</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>precio pagado</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantía</translation>
    </message>
    <message>
        <source>cycles before</source>
        <translation>ciclos previos</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>resolución del indicador</translation>
    </message>
    <message>
        <source>the meter has no name</source>
        <translation>el contador no tiene nombre</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation>fecha del certificado</translation>
    </message>
    <message>
        <source>end of the certificate&apos;s validity</source>
        <translation>fin de la validez del certificado</translation>
    </message>
    <message>
        <source>the range begins above its end</source>
        <translation>el rango empieza por encima de su final</translation>
    </message>
    <message>
        <source>range</source>
        <translation>rango</translation>
    </message>
    <message>
        <source>exchange the two loads</source>
        <translation>intercambie las dos cargas</translation>
    </message>
    <message>
        <source>number of the certificate</source>
        <translation>número del certificado</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratorio</translation>
    </message>
    <message>
        <source>class</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>step</source>
        <translation>resolución</translation>
    </message>
    <message>
        <source>error limit</source>
        <translation>límite de error</translation>
    </message>
    <message>
        <source>part of the error limit of each load</source>
        <translation>parte del límite de error propia de cada carga</translation>
    </message>
    <message>
        <source>span</source>
        <translation>tope</translation>
    </message>
    <message>
        <source>starting current</source>
        <translation>corriente de arranque</translation>
    </message>
    <message>
        <source>lowest load of the range</source>
        <translation>carga mínima del rango</translation>
    </message>
    <message>
        <source>highest load of the range</source>
        <translation>carga máxima del rango</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>keys that are not known</source>
        <translation>claves que no se conocen</translation>
    </message>
    <message>
        <source>a key that is not known</source>
        <translation>una clave que no se conoce</translation>
    </message>
    <message>
        <source>the second meter is the first one</source>
        <translation>el segundo contador es el primero</translation>
    </message>
    <message>
        <source>second meter</source>
        <translation>segundo contador</translation>
    </message>
    <message>
        <source>choose another meter, or none</source>
        <translation>elija otro contador, o ninguno</translation>
    </message>
    <message>
        <source>created</source>
        <translation>creado</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>zona horaria</translation>
    </message>
    <message>
        <source>ambient temperature</source>
        <translation>temperatura ambiente</translation>
    </message>
    <message>
        <source>ambient temperature at the end</source>
        <translation>temperatura ambiente al final</translation>
    </message>
    <message>
        <source>how late the end was noticed</source>
        <translation>con cuánto retraso se advirtió el fin</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>segundo registro</translation>
    </message>
    <message>
        <source>meter power</source>
        <translation>potencia del contador</translation>
    </message>
    <message>
        <source>display power</source>
        <translation>potencia en la pantalla</translation>
    </message>
    <message>
        <source>the PV sheet has no name</source>
        <translation>la hoja FV no tiene nombre</translation>
    </message>
    <message>
        <source>a string has at least one module, and at most 1000</source>
        <translation>una cadena tiene al menos un módulo y 1000 como máximo</translation>
    </message>
    <message>
        <source>series, parallel</source>
        <translation>serie, paralelo</translation>
    </message>
    <message>
        <source>give 1 to 1000</source>
        <translation>indique 1 a 1000</translation>
    </message>
    <message>
        <source>module</source>
        <translation>módulo</translation>
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
        <translation>coeficiente de Voc</translation>
    </message>
    <message>
        <source>coefficient of Vmp</source>
        <translation>coeficiente de Vmp</translation>
    </message>
    <message>
        <source>coefficient of power</source>
        <translation>coeficiente de potencia</translation>
    </message>
    <message>
        <source>NOCT</source>
        <translation>NOCT</translation>
    </message>
    <message>
        <source>coldest ambient</source>
        <translation>ambiente más frío</translation>
    </message>
    <message>
        <source>hottest ambient</source>
        <translation>ambiente más cálido</translation>
    </message>
    <message>
        <source>hottest cell</source>
        <translation>célula máxima</translation>
    </message>
    <message>
        <source>irradiance</source>
        <translation>irradiancia</translation>
    </message>
    <message>
        <source>tolerance of the voltages</source>
        <translation>tolerancia de las tensiones</translation>
    </message>
    <message>
        <source>time of the photo</source>
        <translation>hora de la foto</translation>
    </message>
    <message>
        <source>file name</source>
        <translation>nombre de archivo</translation>
    </message>
    <message>
        <source>time of the log</source>
        <translation>hora de la grabación</translation>
    </message>
    <message>
        <source>fingerprint</source>
        <translation>huella digital</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>disposición</translation>
    </message>
    <message>
        <source>header</source>
        <translation>cabecera</translation>
    </message>
    <message>
        <source>uncertainty of the clock offset</source>
        <translation>incertidumbre del desfase del reloj</translation>
    </message>
    <message>
        <source>time of a sample</source>
        <translation>hora de una muestra</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>output power</source>
        <translation>potencia de salida</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>the option has no key</source>
        <translation>la opción no tiene clave</translation>
    </message>
    <message>
        <source>key</source>
        <translation>clave</translation>
    </message>
    <message>
        <source>name it</source>
        <translation>nómbrela</translation>
    </message>
    <message>
        <source>publisher</source>
        <translation>quien publica</translation>
    </message>
    <message>
        <source>title</source>
        <translation>título</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>introducción</translation>
    </message>
    <message>
        <source>licence</source>
        <translation>licencia</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>no column is chosen</source>
        <translation>no hay ninguna columna elegida</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>choose one or more</source>
        <translation>elija una o más</translation>
    </message>
    <message>
        <source>name of a set of columns</source>
        <translation>nombre de un conjunto de columnas</translation>
    </message>
    <message>
        <source>half-typed entry</source>
        <translation>entrada a medio escribir</translation>
    </message>
    <message>
        <source>answers</source>
        <translation>respuestas</translation>
    </message>
    <message>
        <source>the logbook has this unit already</source>
        <translation>el cuaderno ya tiene este equipo</translation>
    </message>
    <message>
        <source>the logbook has no such unit</source>
        <translation>el cuaderno no tiene ese equipo</translation>
    </message>
    <message>
        <source>the logbook has this meter already</source>
        <translation>el cuaderno ya tiene este contador</translation>
    </message>
    <message>
        <source>the logbook has no such meter</source>
        <translation>el cuaderno no tiene ese contador</translation>
    </message>
    <message numerus="yes">
        <source>the meter is named by %n runs</source>
        <comment>the meter is named by %n run</comment>
        <translation>
            <numerusform>%n ensayo nombra el contador</numerusform>
            <numerusform>%n ensayos nombran el contador</numerusform>
        </translation>
    </message>
    <message>
        <source>choose another meter in the runs first; withdrawn runs count too</source>
        <translation>elija antes otro contador en los ensayos; los ensayos retirados también cuentan</translation>
    </message>
    <message>
        <source>free some space or choose another disk</source>
        <translation>libere algo de espacio o elija otro disco</translation>
    </message>
    <message>
        <source>both meters of the run have one name</source>
        <translation>ambos contadores del ensayo tienen el mismo nombre</translation>
    </message>
    <message>
        <source>give one of them another name</source>
        <translation>dé otro nombre a uno de ellos</translation>
    </message>
    <message>
        <source>the logbook has this run already</source>
        <translation>el cuaderno ya tiene este ensayo</translation>
    </message>
    <message>
        <source>the logbook has this reading already</source>
        <translation>el cuaderno ya tiene esta lectura</translation>
    </message>
    <message>
        <source>the logbook has a load list `%1` already</source>
        <translation>el cuaderno ya tiene una lista de cargas `%1`</translation>
    </message>
    <message>
        <source>give this one another name</source>
        <translation>dé otro nombre a esta</translation>
    </message>
    <message>
        <source>the logbook has this load list already</source>
        <translation>el cuaderno ya tiene esta lista de cargas</translation>
    </message>
    <message>
        <source>the logbook has no such load list</source>
        <translation>el cuaderno no tiene esa lista de cargas</translation>
    </message>
    <message>
        <source>the logbook has no such run</source>
        <translation>el cuaderno no tiene ese ensayo</translation>
    </message>
    <message>
        <source>the logbook has no such reading</source>
        <translation>el cuaderno no tiene esa lectura</translation>
    </message>
    <message>
        <source>the reading is of another run</source>
        <translation>la lectura es de otro ensayo</translation>
    </message>
    <message>
        <source>choose a reading of this run</source>
        <translation>elija una lectura de este ensayo</translation>
    </message>
    <message>
        <source>the photos of a logbook take at most %1 MB together, and this one would exceed that</source>
        <translation>las fotos de un cuaderno ocupan en total %1 MB como máximo, y esta lo superaría</translation>
    </message>
    <message>
        <source>save photos smaller, or start a new logbook</source>
        <translation>guarde fotos más pequeñas o empiece un cuaderno nuevo</translation>
    </message>
    <message>
        <source>the logbook has no such photo</source>
        <translation>el cuaderno no tiene esa foto</translation>
    </message>
    <message>
        <source>the photo is withdrawn already</source>
        <translation>la foto ya está retirada</translation>
    </message>
    <message>
        <source>the photo is not withdrawn</source>
        <translation>la foto no está retirada</translation>
    </message>
    <message>
        <source>the logbook has this PV sheet already</source>
        <translation>el cuaderno ya tiene esta hoja FV</translation>
    </message>
    <message>
        <source>the logbook has no such PV sheet</source>
        <translation>el cuaderno no tiene esa hoja FV</translation>
    </message>
    <message>
        <source>a photo no longer waits for this entry; nothing was recorded</source>
        <translation>una foto ya no espera a esta entrada; no se ha anotado nada</translation>
    </message>
    <message>
        <source>look at the photos, then record again</source>
        <translation>mire las fotos y después anote de nuevo</translation>
    </message>
    <message>
        <source>the reading says this already</source>
        <translation>la lectura ya dice esto</translation>
    </message>
    <message>
        <source>change a value or leave it as it is</source>
        <translation>cambie un valor o déjela como está</translation>
    </message>
    <message>
        <source>the reading is withdrawn already</source>
        <translation>la lectura ya está retirada</translation>
    </message>
    <message>
        <source>the reading is not withdrawn</source>
        <translation>la lectura no está retirada</translation>
    </message>
    <message>
        <source>a unit to be taken over, or what it belongs to, is not there</source>
        <translation>no está un equipo que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>a meter to be taken over, or what it belongs to, is not there</source>
        <translation>no está un contador que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>a run to be taken over, or what it belongs to, is not there</source>
        <translation>no está un ensayo que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>a reading to be taken over, or what it belongs to, is not there</source>
        <translation>no está una lectura que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>a photo to be taken over, or what it belongs to, is not there</source>
        <translation>no está una foto que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>the logbook has this photo already</source>
        <translation>el cuaderno ya tiene esta foto</translation>
    </message>
    <message>
        <source>a log to be taken over, or what it belongs to, is not there</source>
        <translation>no está una grabación que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>the logbook has this log already</source>
        <translation>el cuaderno ya tiene esta grabación</translation>
    </message>
    <message>
        <source>a load list to be taken over, or what it belongs to, is not there</source>
        <translation>no está una lista de cargas que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>a PV sheet to be taken over, or what it belongs to, is not there</source>
        <translation>no está una hoja FV que se iba a incorporar, o aquello a lo que pertenece</translation>
    </message>
    <message>
        <source>the photos of both logbooks take more than %1 MB together</source>
        <translation>las fotos de ambos cuadernos ocupan juntas más de %1 MB</translation>
    </message>
    <message>
        <source>a logbook holds no more; nothing was taken over</source>
        <translation>un cuaderno no admite más; no se ha incorporado nada</translation>
    </message>
    <message>
        <source>compare the logbooks again</source>
        <translation>compare de nuevo los cuadernos</translation>
    </message>
    <message>
        <source>compare the logbooks again; nothing was taken over</source>
        <translation>compare de nuevo los cuadernos; no se ha incorporado nada</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>detenido</translation>
    </message>
    <message>
        <source>nothing was taken over</source>
        <translation>no se ha incorporado nada</translation>
    </message>
    <message>
        <source>one of several changes failed</source>
        <translation>falló uno de varios cambios</translation>
    </message>
    <message>
        <source>none of them was made</source>
        <translation>no se hizo ninguno de ellos</translation>
    </message>
    <message>
        <source>its times overlap those of `%1`, which the run has already</source>
        <translation>sus horas se solapan con las de `%1`, que el ensayo ya tiene</translation>
    </message>
    <message>
        <source>withdraw that trace, cut the log, or name the meter if another wrote it</source>
        <translation>retire esa grabación, recorte la nueva o nombre el contador si la escribió otro</translation>
    </message>
    <message>
        <source>it tells the unit&apos;s gauge for times at which `%1` does so already</source>
        <translation>dice el indicador del equipo en horas en las que ya lo dice `%1`</translation>
    </message>
    <message>
        <source>it tells the unit&apos;s output power for times at which `%1` does so already</source>
        <translation>dice la potencia de salida del equipo en horas en las que ya la dice `%1`</translation>
    </message>
    <message>
        <source>withdraw that trace, or leave that column unused</source>
        <translation>retire esa grabación o deje esa columna sin usar</translation>
    </message>
    <message>
        <source>this log is in the run already (as `%1`)</source>
        <translation>esta grabación ya está en el ensayo (como `%1`)</translation>
    </message>
    <message>
        <source>nothing was imported</source>
        <translation>no se ha importado nada</translation>
    </message>
    <message>
        <source>the logbook has this trace already</source>
        <translation>el cuaderno ya tiene esta grabación</translation>
    </message>
    <message>
        <source>no row of the log could be taken</source>
        <translation>no se pudo tomar ninguna fila de la grabación</translation>
    </message>
    <message>
        <source>see which rows were left out, and why</source>
        <translation>vea qué filas se omitieron y por qué</translation>
    </message>
    <message>
        <source>the logbook has no such trace</source>
        <translation>el cuaderno no tiene esa grabación</translation>
    </message>
    <message>
        <source>this log was withdrawn from its run</source>
        <translation>esta grabación se retiró de su ensayo</translation>
    </message>
    <message>
        <source>import it again</source>
        <translation>impórtela de nuevo</translation>
    </message>
    <message>
        <source>this log has been added to meanwhile</source>
        <translation>entretanto se ha añadido algo a esta grabación</translation>
    </message>
    <message>
        <source>follow it again</source>
        <translation>sígala de nuevo</translation>
    </message>
</context>
<context>
    <name>tables</name>
    <message>
        <source>%1, unit</source>
        <translation>%1, unidad de medida</translation>
    </message>
    <message>
        <source>%1, lower</source>
        <translation>%1, inferior</translation>
    </message>
    <message>
        <source>%1, upper</source>
        <translation>%1, superior</translation>
    </message>
    <message>
        <source>%1, kind</source>
        <translation>%1, clase</translation>
    </message>
    <message>
        <source>%1, reason</source>
        <translation>%1, motivo</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>%1, value and interval</source>
        <translation>%1, valor e intervalo</translation>
    </message>
    <message>
        <source>the workbook could not be written whole</source>
        <translation>el libro de cálculo no se pudo escribir entero</translation>
    </message>
    <message>
        <source>make room on the disk or choose another place</source>
        <translation>libere espacio en el disco o elija otro lugar</translation>
    </message>
    <message>
        <source>`%1` is no format of a table</source>
        <translation>`%1` no es un formato de tabla</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>use %1</translation>
    </message>
    <message>
        <source>the description of the table cannot stand beside it: %1</source>
        <translation>la descripción de la tabla no puede estar a su lado: %1</translation>
    </message>
    <message>
        <source>the table is written, but its description is not: %1</source>
        <translation>la tabla está escrita, pero su descripción no: %1</translation>
    </message>
    <message>
        <source>value; the columns that follow say how far it is known</source>
        <translation>valor; las columnas que siguen dicen hasta qué punto se conoce</translation>
    </message>
    <message>
        <source>unit of %1</source>
        <translation>unidad de medida de %1</translation>
    </message>
    <message>
        <source>lower end of the 95 % interval of %1</source>
        <translation>extremo inferior del intervalo del 95 % de %1</translation>
    </message>
    <message>
        <source>upper end of the 95 % interval of %1</source>
        <translation>extremo superior del intervalo del 95 % de %1</translation>
    </message>
    <message>
        <source>how far %1 is known</source>
        <translation>hasta qué punto se conoce: %1</translation>
    </message>
    <message>
        <source>why %1 is not simply measured, or what it assumes</source>
        <translation>por qué no es sin más una medición, o qué supone: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>A text that a spreadsheet would run as a formula has an apostrophe in front.</source>
        <translation>Un texto que una hoja de cálculo ejecutaría como fórmula lleva delante un apóstrofo.</translation>
    </message>
    <message>
        <source>The numbers of this table in full (CSV)</source>
        <translation>Los números de esta tabla, completos (CSV)</translation>
    </message>
    <message>
        <source>sort by this column</source>
        <translation>ordenar por esta columna</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Written by Ullage %1. Bring it into a document with \input; the preamble needs:</source>
        <translation>Escrito por Ullage %1. Inclúyalo en un documento con \input; el preámbulo necesita:</translation>
    </message>
    <message>
        <source>before LaTeX %1</source>
        <translation>antes de LaTeX %1</translation>
    </message>
    <message>
        <source>A table wider than the page stands in parts that fit A4 with the margins of the article class. One that is wider than the page upright but not in landscape: \usepackage{pdflscape} and \begin{landscape} ... \end{landscape} around the \input.</source>
        <translation>Una tabla más ancha que la página va en partes que caben en A4 con los márgenes de la clase article. Una que es más ancha que la página en vertical pero no en apaisado: \usepackage{pdflscape} y \begin{landscape} ... \end{landscape} alrededor de \input.</translation>
    </message>
    <message>
        <source>%1, part %2 of %3</source>
        <translation>%1, parte %2 de %3</translation>
    </message>
    <message>
        <source>%1, local</source>
        <translation>%1, local</translation>
    </message>
    <message>
        <source>a sheet of a workbook holds %1 rows and %2 columns, the table has %3 and %4</source>
        <translation>una hoja de un libro de cálculo admite %1 filas y %2 columnas; la tabla tiene %3 y %4</translation>
    </message>
    <message>
        <source>export it as csv</source>
        <translation>expórtela como csv</translation>
    </message>
    <message>
        <source>there is not enough memory for the workbook</source>
        <translation>no hay memoria suficiente para el libro de cálculo</translation>
    </message>
    <message>
        <source>the workbook cannot be made</source>
        <translation>no se puede crear el libro de cálculo</translation>
    </message>
    <message>
        <source>there is no room left on the disk</source>
        <translation>no queda espacio en el disco</translation>
    </message>
    <message>
        <source>make room or choose another place</source>
        <translation>libere espacio o elija otro lugar</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>no se puede escribir: %1</translation>
    </message>
    <message>
        <source>check that the folder exists and may be written to</source>
        <translation>compruebe que la carpeta existe y se puede escribir en ella</translation>
    </message>
</context>
<context>
    <name>text</name>
    <message>
        <source>line %1, character %2</source>
        <translation>línea %1, carácter %2</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>estas comillas no se cierran</translation>
    </message>
    <message>
        <source>close it, or write a quote within a field twice</source>
        <translation>ciérrelas, o escriba dos veces unas comillas dentro de un campo</translation>
    </message>
    <message>
        <source>text follows a closing quote</source>
        <translation>hay texto tras unas comillas de cierre</translation>
    </message>
    <message>
        <source>put a comma after the field, or write a quote within it twice</source>
        <translation>ponga una coma tras el campo, o escriba dos veces unas comillas dentro de él</translation>
    </message>
    <message>
        <source>a quote stands inside a field without quotes</source>
        <translation>hay comillas dentro de un campo sin comillas</translation>
    </message>
    <message>
        <source>put the field in quotes and write the quote twice</source>
        <translation>ponga el campo entre comillas y escriba esas comillas dos veces</translation>
    </message>
    <message>
        <source>a carriage return without line feed</source>
        <translation>un retorno de carro sin salto de línea</translation>
    </message>
    <message>
        <source>save the file with LF or CRLF line ends</source>
        <translation>guarde el archivo con finales de línea LF o CRLF</translation>
    </message>
    <message>
        <source>`%1` is out of range</source>
        <translation>`%1` está fuera de los límites</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>indique %1</translation>
    </message>
    <message>
        <source>`%1` is no point of correction</source>
        <translation>`%1` no es un punto de corrección</translation>
    </message>
    <message>
        <source>give load, correction, U and k, like `100 0.998 0.3 2; 500 1.001 0.25 2`</source>
        <translation>indique carga, corrección, U y k, como `100 0.998 0.3 2; 500 1.001 0.25 2`</translation>
    </message>
    <message>
        <source>the load %1 W stands twice</source>
        <translation>la carga %1 W está dos veces</translation>
    </message>
    <message>
        <source>state each load once</source>
        <translation>indique cada carga una vez</translation>
    </message>
    <message>
        <source>a backslash ends the value</source>
        <translation>una barra invertida termina el valor</translation>
    </message>
    <message>
        <source>a backslash stands before a character that it has no meaning for</source>
        <translation>hay una barra invertida ante un carácter para el que no tiene significado</translation>
    </message>
    <message>
        <source>write `\\` for a backslash</source>
        <translation>escriba `\\` para una barra invertida</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>use %1</translation>
    </message>
    <message>
        <source>`%1` is no kind of run</source>
        <translation>`%1` no es un tipo de ensayo</translation>
    </message>
    <message>
        <source>`%1` is no way a run ends</source>
        <translation>`%1` no es una manera en que termine un ensayo</translation>
    </message>
    <message>
        <source>`%1` is neither yes nor no</source>
        <translation>`%1` no es ni sí ni no</translation>
    </message>
    <message>
        <source>use `yes` or `no`, or leave the key out when it is not known</source>
        <translation>use `yes` o `no`, u omita la clave si no se conoce</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` no es una zona horaria que conozca esta máquina</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna, or UTC</source>
        <translation>use un nombre IANA como Europe/Vienna, o UTC</translation>
    </message>
    <message>
        <source>`%1` is no source of a charge</source>
        <translation>`%1` no es una fuente de recarga</translation>
    </message>
</context>
<context>
    <name>trace</name>
    <message>
        <source>the offset of the log&apos;s clock cannot be estimated: no register, gauge or mark was noted by hand</source>
        <translation>no se puede estimar el desfase del reloj de la grabación: no se anotó a mano ningún registro, indicador ni marca</translation>
    </message>
    <message>
        <source>the offset of the log&apos;s clock cannot be estimated: neither its register or gauge nor steps of its power fit the hand readings at one offset</source>
        <translation>no se puede estimar el desfase del reloj de la grabación: ni su registro o indicador ni los escalones de su potencia encajan con las lecturas a mano con un mismo desfase</translation>
    </message>
    <message>
        <source>give the offset, or note register readings or load changes by hand</source>
        <translation>indique el desfase, o anote a mano lecturas del registro o cambios de carga</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 ahead of that of the meter&apos;s log, ±%2: %3</source>
        <translation>El reloj de la grabación adelanta %1 respecto al de la grabación del contador, ±%2: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 behind that of the meter&apos;s log, ±%2: %3</source>
        <translation>El reloj de la grabación atrasa %1 respecto al de la grabación del contador, ±%2: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 ahead of the hand readings, ±%2: %3</source>
        <translation>El reloj de la grabación adelanta %1 respecto a las lecturas a mano, ±%2: %3</translation>
    </message>
    <message>
        <source>The log&apos;s clock is %1 behind the hand readings, ±%2: %3</source>
        <translation>El reloj de la grabación atrasa %1 respecto a las lecturas a mano, ±%2: %3</translation>
    </message>
    <message>
        <source>its register passed %1 of the %2 values noted by hand at the noted moments</source>
        <translation>su registro pasó por %1 de los %2 valores anotados a mano en los momentos anotados</translation>
    </message>
    <message>
        <source>its power changed at %1 of %2 steps of the power in that log</source>
        <translation>su potencia cambió en %1 de %2 escalones de la potencia de esa grabación</translation>
    </message>
    <message>
        <source>its gauge showed %1 of the %2 values noted by hand at the noted moments</source>
        <translation>su indicador mostraba %1 de los %2 valores anotados a mano en los momentos anotados</translation>
    </message>
    <message>
        <source>its power changed at %1 of %2 marks</source>
        <translation>su potencia cambió en %1 de %2 marcas</translation>
    </message>
    <message>
        <source>its power fell for the last time at the cut-off</source>
        <translation>su potencia cayó por última vez en el corte</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>sin usar</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>output</source>
        <translation>salida</translation>
    </message>
    <message>
        <source>the log cannot be read</source>
        <translation>no se puede leer la grabación</translation>
    </message>
    <message>
        <source>check its permissions and the medium</source>
        <translation>compruebe sus permisos y el soporte</translation>
    </message>
    <message>
        <source>this is no regular file</source>
        <translation>esto no es un archivo normal</translation>
    </message>
    <message>
        <source>name a log file</source>
        <translation>nombre un archivo de grabación</translation>
    </message>
    <message>
        <source>a line is longer than %1 bytes</source>
        <translation>una línea supera %1 bytes</translation>
    </message>
    <message>
        <source>choose a log of lines</source>
        <translation>elija una grabación formada por líneas</translation>
    </message>
    <message>
        <source>no row of data was found: no line has a time and a value</source>
        <translation>no se encontró ninguna fila de datos: ninguna línea tiene hora y valor</translation>
    </message>
    <message>
        <source>check that this is a log as text (CSV or the like), or name its delimiter</source>
        <translation>compruebe que esta es una grabación en forma de texto (CSV o similar), o nombre su separador</translation>
    </message>
    <message>
        <source>cancelled; nothing was imported</source>
        <translation>cancelado; no se ha importado nada</translation>
    </message>
    <message>
        <source>no column is named for the time</source>
        <translation>no se nombra ninguna columna para la hora</translation>
    </message>
    <message>
        <source>name it</source>
        <translation>nómbrela</translation>
    </message>
    <message>
        <source>the times of this log do not say on which day it was started</source>
        <translation>las horas de esta grabación no dicen en qué día se inició</translation>
    </message>
    <message>
        <source>give the start of the log</source>
        <translation>indique el inicio de la grabación</translation>
    </message>
    <message>
        <source>`%1` is no time zone known to this machine</source>
        <translation>`%1` no es una zona horaria que conozca esta máquina</translation>
    </message>
    <message>
        <source>use an IANA name such as Europe/Vienna</source>
        <translation>use un nombre IANA como Europe/Vienna</translation>
    </message>
    <message>
        <source>no column is named for a value</source>
        <translation>no se nombra ninguna columna para un valor</translation>
    </message>
    <message>
        <source>name one for the register or the power</source>
        <translation>nombre una para el registro o la potencia</translation>
    </message>
    <message>
        <source>read as the last log with this header</source>
        <translation>leída como la última grabación con esta cabecera</translation>
    </message>
    <message>
        <source>`%1` can be read in two ways: the comma is the decimal sign, or it parts the thousands</source>
        <translation>`%1` se puede leer de dos maneras: la coma es el signo decimal o separa los miles</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>there is no column %1 for the %2</source>
        <translation>no hay columna %1 para «%2»</translation>
    </message>
    <message numerus="yes">
        <source>the log has %n columns; they count from 1</source>
        <comment>the log has %n column; they count from 1</comment>
        <translation>
            <numerusform>la grabación tiene %n columna; se cuentan desde 1</numerusform>
            <numerusform>la grabación tiene %n columnas; se cuentan desde 1</numerusform>
        </translation>
    </message>
    <message>
        <source>`%1` is no unit of %2</source>
        <translation>`%1` no es una unidad de medida para «%2»</translation>
    </message>
    <message>
        <source>use W, kW, Wh, kWh, J, V, mV, A, mA or %, and s, ms, min or h for times</source>
        <translation>use W, kW, Wh, kWh, J, V, mV, A, mA o %, y s, ms, min o h para los tiempos</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge: taken for the unit&apos;s own, not used</source>
        <translation>%1 está junto al indicador: se toma por propia del equipo, no se usa</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge in %2: did a meter measure it, or does the unit say so of itself? Name column %3</source>
        <translation>%1 está junto al indicador en %2: ¿la midió un contador o la dice de sí mismo el equipo? Nombre la columna %3</translation>
    </message>
    <message>
        <source>the register in %1 has no unit (it begins with `%2`)</source>
        <translation>el registro de %1 no tiene unidad de medida (empieza por `%2`)</translation>
    </message>
    <message>
        <source>%1 counts charge (Ah), which is no energy: not used</source>
        <translation>%1 cuenta carga eléctrica (Ah), que no es energía: no se usa</translation>
    </message>
    <message>
        <source>%1 and %2 may both be the %3: the first is taken</source>
        <translation>%1 y %2 podrían ser ambas «%3»: se toma la primera</translation>
    </message>
    <message>
        <source>%1 names a share of the battery: taken for the unit&apos;s gauge</source>
        <translation>%1 nombra una parte de la batería: se toma por el indicador del equipo</translation>
    </message>
    <message>
        <source>%1 stands beside the gauge: taken for what the unit says of its output, not for a meter&apos;s</source>
        <translation>%1 está junto al indicador: se toma por lo que el equipo dice de su salida, no por lo de un contador</translation>
    </message>
    <message>
        <source>the gauge in %1 has no unit (it begins with `%2`): name it with gauge=%3:% or gauge=%3:share</source>
        <translation>el indicador de %1 no tiene unidad de medida (empieza por `%2`): nómbrelo con gauge=%3:% o gauge=%3:share</translation>
    </message>
    <message>
        <source>%1 has no unit: read as %2</source>
        <translation>%1 no tiene unidad de medida: se lee como %2</translation>
    </message>
    <message>
        <source>no column of register, power (or voltage and current) or gauge is recognised: name it</source>
        <translation>no se reconoce ninguna columna de registro, potencia (o tensión y corriente) o indicador: nómbrela</translation>
    </message>
    <message>
        <source>no column of time is recognised: name it</source>
        <translation>no se reconoce ninguna columna de hora: nómbrela</translation>
    </message>
    <message>
        <source>no column of dates is recognised: name it</source>
        <translation>no se reconoce ninguna columna de fechas: nómbrela</translation>
    </message>
    <message>
        <source>the times begin with `%1`: times of day, or counted from the start of the log</source>
        <translation>las horas empiezan por `%1`: horas del día, o contadas desde el inicio de la grabación</translation>
    </message>
    <message>
        <source>the elapsed time has no unit: read as seconds</source>
        <translation>el tiempo transcurrido no tiene unidad de medida: se lee en segundos</translation>
    </message>
    <message>
        <source>`%1` can be read with the day or the month first</source>
        <translation>`%1` se puede leer con el día o con el mes primero</translation>
    </message>
    <message>
        <source>the log cannot be opened</source>
        <translation>no se puede abrir la grabación</translation>
    </message>
    <message>
        <source>check its name and its permissions</source>
        <translation>compruebe su nombre y sus permisos</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>cancelado</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>no se ha cambiado nada</translation>
    </message>
    <message>
        <source>this file does not begin as `%1` did when it was read</source>
        <translation>este archivo no empieza como `%1` cuando se leyó</translation>
    </message>
    <message>
        <source>choose the file that the meter goes on writing, or import this one</source>
        <translation>elija el archivo que el contador sigue escribiendo, o importe este</translation>
    </message>
    <message>
        <source>the lines of this log end with CR alone</source>
        <translation>las líneas de esta grabación terminan solo con CR</translation>
    </message>
    <message>
        <source>it can be imported when it is whole, but not followed</source>
        <translation>se puede importar cuando esté completa, pero no seguir</translation>
    </message>
    <message>
        <source>the times of `%1` read otherwise now than when it was imported</source>
        <translation>las horas de `%1` se leen ahora de otro modo que cuando se importó</translation>
    </message>
    <message>
        <source>withdraw the log from the run and import it again</source>
        <translation>retire la grabación del ensayo e impórtela de nuevo</translation>
    </message>
    <message>
        <source>the log was begun anew, and its times do not say on which day</source>
        <translation>la grabación se empezó de nuevo, y sus horas no dicen en qué día</translation>
    </message>
    <message>
        <source>import the new log with its start</source>
        <translation>importe la grabación nueva con su inicio</translation>
    </message>
    <message>
        <source>the log was begun anew with other columns</source>
        <translation>la grabación se empezó de nuevo con otras columnas</translation>
    </message>
    <message>
        <source>import the new log</source>
        <translation>importe la grabación nueva</translation>
    </message>
    <message>
        <source>the last row of `%1` was cut off when it was imported</source>
        <translation>la última fila de `%1` estaba cortada cuando se importó</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>fecha y hora</translation>
    </message>
    <message>
        <source>date and clock</source>
        <translation>fecha y reloj</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>reloj</translation>
    </message>
    <message>
        <source>epoch s</source>
        <translation>época en s</translation>
    </message>
    <message>
        <source>epoch ms</source>
        <translation>época en ms</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>transcurrido</translation>
    </message>
    <message>
        <source>elapsed h:m:s</source>
        <translation>transcurrido h:m:s</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>compruebe el nombre</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>no se puede leer el archivo</translation>
    </message>
    <message>
        <source>check its permissions</source>
        <translation>compruebe sus permisos</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra vertical</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>espacios</translation>
    </message>
    <message>
        <source>times as %1, day first</source>
        <translation>horas como %1, día primero</translation>
    </message>
    <message>
        <source>times as %1, month first</source>
        <translation>horas como %1, mes primero</translation>
    </message>
    <message>
        <source>times as %1, year first</source>
        <translation>horas como %1, año primero</translation>
    </message>
    <message>
        <source>times as %1</source>
        <translation>horas como %1</translation>
    </message>
    <message>
        <source>%1 = column %2 in %3</source>
        <translation>%1 = columna %2 en %3</translation>
    </message>
    <message>
        <source>%1 = column %2</source>
        <translation>%1 = columna %2</translation>
    </message>
    <message>
        <source>%1 = column %2 `%3` in %4</source>
        <translation>%1 = columna %2 `%3` en %4</translation>
    </message>
    <message>
        <source>%1 = column %2 `%3`</source>
        <translation>%1 = columna %2 `%3`</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>compruebe el disco</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>no se puede leer el archivo hasta el final</translation>
    </message>
    <message>
        <source>no column recognised</source>
        <translation>ninguna columna reconocida</translation>
    </message>
    <message>
        <source>delimiter %1, decimal comma, %2, data from line %3</source>
        <translation>separador %1, coma decimal, %2, datos desde la línea %3</translation>
    </message>
    <message>
        <source>delimiter %1, decimal point, %2, data from line %3</source>
        <translation>separador %1, punto decimal, %2, datos desde la línea %3</translation>
    </message>
    <message>
        <source>%1 (%2?)</source>
        <translation>%1 (¿%2?)</translation>
    </message>
    <message>
        <source>answer it; nothing was imported</source>
        <translation>responda a ello; no se ha importado nada</translation>
    </message>
    <message>
        <source>too few fields</source>
        <translation>demasiado pocos campos</translation>
    </message>
    <message>
        <source>a quote is not closed</source>
        <translation>unas comillas sin cerrar</translation>
    </message>
    <message>
        <source>longer than 64 KiB</source>
        <translation>más de 64 KiB</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>no se puede leer la hora</translation>
    </message>
    <message>
        <source>a local time that does not exist (clocks went forward)</source>
        <translation>una hora local que no existe (se adelantaron los relojes)</translation>
    </message>
    <message>
        <source>a value cannot be read</source>
        <translation>no se puede leer un valor</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>ningún valor</translation>
    </message>
    <message>
        <source>the header again</source>
        <translation>la cabecera otra vez</translation>
    </message>
    <message>
        <source>the same row again</source>
        <translation>la misma fila otra vez</translation>
    </message>
    <message>
        <source>the moment of another row, with other values</source>
        <translation>el momento de otra fila, con otros valores</translation>
    </message>
    <message>
        <source>too far out of order</source>
        <translation>demasiado fuera de orden</translation>
    </message>
    <message>
        <source>out of order, put in its place</source>
        <translation>fuera de orden, puesta en su lugar</translation>
    </message>
    <message>
        <source>in an hour that occurs twice, settled by the order of rows</source>
        <translation>en una hora que ocurre dos veces, decidida por el orden de las filas</translation>
    </message>
    <message>
        <source>after a gap</source>
        <translation>tras un hueco</translation>
    </message>
</context>
<context>
    <name>ullage</name>
    <message>
        <source>Gauge error of the units against what they had delivered</source>
        <translation>Error del indicador de los equipos frente a la parte que habían entregado</translation>
    </message>
    <message>
        <source>share delivered / %</source>
        <translation>parte entregada / %</translation>
    </message>
    <message>
        <source>gauge error / pt</source>
        <translation>error del indicador / pt</translation>
    </message>
    <message>
        <source>shows too much</source>
        <translation>muestra de más</translation>
    </message>
    <message>
        <source>shows too little</source>
        <translation>muestra de menos</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less. Areas: 95 % intervals.</source>
        <translation>Por encima de 0 el indicador muestra más de lo que queda; por debajo, menos. Áreas: intervalos del 95 %.</translation>
    </message>
    <message>
        <source>No drain from full to cut-off with gauge and register read together.</source>
        <translation>Ninguna descarga de lleno a corte con indicador y registro leídos a la vez.</translation>
    </message>
    <message>
        <source>no error</source>
        <translation>sin error</translation>
    </message>
    <message>
        <source>Usable fraction of the units against load</source>
        <translation>Fracción útil de los equipos según la carga</translation>
    </message>
    <message>
        <source>Points: drains. Lines: what all drains of a unit say together, with the 95 % interval as an area.</source>
        <translation>Puntos: descargas. Líneas: lo que dicen juntas todas las descargas de un equipo, con el intervalo del 95 % como área.</translation>
    </message>
    <message>
        <source>load / W</source>
        <translation>carga / W</translation>
    </message>
    <message>
        <source>usable fraction / %</source>
        <translation>fracción útil / %</translation>
    </message>
    <message>
        <source>No full drain of a unit with a stated rated energy.</source>
        <translation>Ninguna descarga completa de un equipo con la energía asignada indicada.</translation>
    </message>
    <message>
        <source>compared here</source>
        <translation>comparados aquí</translation>
    </message>
    <message>
        <source>No drain to compare yet. Record a drain of each unit, from full to the cut-off, or import run sheets.</source>
        <translation>Aún no hay descargas que comparar. Anote una descarga de cada equipo, de lleno a corte, o importe hojas de ensayo.</translation>
    </message>
    <message>
        <source>Delivered energy of each unit against its rated energy</source>
        <translation>Energía entregada de cada equipo frente a su energía asignada</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>as tested, each at the load of its run</source>
        <translation>según ensayo, cada uno a la carga de su ensayo</translation>
    </message>
    <message>
        <source>Height: rated energy. Filled: delivered at the socket; the bracket is its 95 % interval. Hatched: taken by the unit&apos;s own draw, where that is known. Dashed: what is typical.</source>
        <translation>Altura: energía asignada. Relleno: entregada en la toma; el corchete es su intervalo del 95 %. Rayado: lo que se lleva el consumo propio del equipo, donde se conoce. Discontinuo: lo típico.</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>según ensayo</translation>
    </message>
    <message>
        <source>Usable fraction of each unit, %1, with its 95 % interval</source>
        <translation>Fracción útil de cada equipo, %1, con su intervalo del 95 %</translation>
    </message>
    <message>
        <source>usable fraction %1, delivered / rated energy / %</source>
        <translation>fracción útil %1, energía entregada / asignada / %</translation>
    </message>
    <message>
        <source>grey bars are as tested, at another load</source>
        <translation>las barras grises van según ensayo, a otra carga</translation>
    </message>
    <message>
        <source>each at the load of its run</source>
        <translation>cada uno a la carga de su ensayo</translation>
    </message>
    <message>
        <source>Brackets: 95 % intervals. Grey band: what is typical.</source>
        <translation>Corchetes: intervalos del 95 %. Banda gris: lo típico.</translation>
    </message>
    <message>
        <source>typical, %1 to %2 %</source>
        <translation>típico, %1 a %2 %</translation>
    </message>
    <message>
        <source>; the first %1 of %2 rows</source>
        <translation>; las primeras %1 de %2 filas</translation>
    </message>
    <message>
        <source>Voltage of the string against cell temperature, with the limits of the PV input</source>
        <translation>Tensión de la cadena según la temperatura de célula, con los límites de la entrada FV</translation>
    </message>
    <message>
        <source>cell temperature / °C</source>
        <translation>temperatura de célula / °C</translation>
    </message>
    <message>
        <source>string voltage / V</source>
        <translation>tensión de la cadena / V</translation>
    </message>
    <message>
        <source>State Voc of the module to see the voltage of the string.</source>
        <translation>Indique la Voc del módulo para ver la tensión de la cadena.</translation>
    </message>
    <message>
        <source>open circuit</source>
        <translation>circuito abierto</translation>
    </message>
    <message>
        <source>maximum power</source>
        <translation>potencia máxima</translation>
    </message>
    <message>
        <source>danger: %1 V</source>
        <translation>peligro: %1 V</translation>
    </message>
    <message>
        <source>above the limit when cold</source>
        <translation>sobre el límite en frío</translation>
    </message>
    <message>
        <source>limit %1 V</source>
        <translation>límite %1 V</translation>
    </message>
    <message>
        <source>start %1 V</source>
        <translation>arranque %1 V</translation>
    </message>
    <message>
        <source>PV input works</source>
        <translation>la entrada FV funciona</translation>
    </message>
    <message>
        <source>coldest</source>
        <translation>mínima</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>máxima</translation>
    </message>
    <message>
        <source>energy in</source>
        <translation>energía absorbida</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>entregada</translation>
    </message>
    <message>
        <source>gauge-implied</source>
        <translation>según el indicador</translation>
    </message>
    <message>
        <source>gauge-implied, by the log</source>
        <translation>según el indicador, por la grabación</translation>
    </message>
    <message>
        <source>cut-off expected</source>
        <translation>corte previsto</translation>
    </message>
    <message>
        <source>cut-off</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>off somewhere here</source>
        <translation>apagado en algún punto aquí</translation>
    </message>
    <message>
        <source>gauge right: empty here</source>
        <translation>indicador acertado: vacío aquí</translation>
    </message>
    <message>
        <source>gauge wrong: still to come</source>
        <translation>indicador erróneo: aún por salir</translation>
    </message>
    <message>
        <source>by stored depth</source>
        <translation>por profundidad de descarga</translation>
    </message>
    <message>
        <source>energy / Wh</source>
        <translation>energía / Wh</translation>
    </message>
    <message>
        <source>Gauge-implied and delivered energy against hours since the start</source>
        <translation>Energía según el indicador y energía entregada, por horas desde el inicio</translation>
    </message>
    <message>
        <source>Circles: delivered, by the meter, with its error limit as an area. Squares: what the gauge implies. Shaded: where the gauge is doubted. Dotted: rated energy and cut-off.</source>
        <translation>Círculos: entregada, por el contador, con su límite de error como área. Cuadrados: lo que da a entender el indicador. Sombreado: donde se duda del indicador. Punteado: energía asignada y corte.</translation>
    </message>
    <message>
        <source>No energy yet: record the meter&apos;s register at the start, then again and again.</source>
        <translation>Aún no hay energía: anote el registro del contador al inicio y, después, una y otra vez.</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>asignada %1</translation>
    </message>
    <message>
        <source>gauge error / pt, if %1 Wh come out</source>
        <translation>error del indicador / pt, si salen %1 Wh</translation>
    </message>
    <message>
        <source>gauge error / pt, against %1</source>
        <translation>error del indicador / pt, frente a %1</translation>
    </message>
    <message>
        <source>Gauge error in percentage points against hours since the start</source>
        <translation>Error del indicador en puntos porcentuales, por horas desde el inicio</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less. Area: 95 % interval. Shaded: where the gauge is doubted.</source>
        <translation>Por encima de 0 el indicador muestra más de lo que queda; por debajo, menos. Área: intervalo del 95 %. Sombreado: donde se duda del indicador.</translation>
    </message>
    <message>
        <source>Above 0 the gauge shows more than is left, below 0 less, of the %1 Wh that the drain is expected to deliver to its cut-off. Area: if it comes at the ends of its range, %2 to %3 Wh. Shaded: where the gauge is doubted.</source>
        <translation>Por encima de 0 el indicador muestra más de lo que queda; por debajo, menos, de los %1 Wh que se prevé que la descarga entregue hasta su corte. Área: si llega a los extremos de su margen, %2 a %3 Wh. Sombreado: donde se duda del indicador.</translation>
    </message>
    <message>
        <source>No gauge error yet: it needs readings of gauge and register, and the unit&apos;s rated energy or a drain from full to cut-off.</source>
        <translation>Aún no hay error del indicador: hacen falta lecturas de indicador y registro, y la energía asignada del equipo o una descarga de lleno a corte.</translation>
    </message>
    <message>
        <source>by share delivered</source>
        <translation>por parte entregada</translation>
    </message>
    <message>
        <source>gauge error</source>
        <translation>error del indicador</translation>
    </message>
    <message>
        <source>Mean load between register readings against hours since the start</source>
        <translation>Carga media entre lecturas del registro, por horas desde el inicio</translation>
    </message>
    <message>
        <source>Steps: mean load from one register reading to the next. Diamonds: power on the meter. Triangles: power on the unit&apos;s display.</source>
        <translation>Escalones: carga media de una lectura del registro a la siguiente. Rombos: potencia en el contador. Triángulos: potencia en la pantalla del equipo.</translation>
    </message>
    <message>
        <source>No load yet: it follows from two readings of the meter&apos;s register.</source>
        <translation>Aún no hay carga: se obtiene de dos lecturas del registro del contador.</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>carga media</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>unit&apos;s display</source>
        <translation>pantalla del equipo</translation>
    </message>
    <message>
        <source>State of charge by the hour, with PV and without</source>
        <translation>Estado de carga por horas, con FV y sin ella</translation>
    </message>
    <message>
        <source>time since midnight / h</source>
        <translation>tiempo desde medianoche / h</translation>
    </message>
    <message>
        <source>charge remaining / %</source>
        <translation>estado de carga / %</translation>
    </message>
    <message>
        <source>Choose a unit whose energy is known or stated.</source>
        <translation>Elija un equipo cuya energía se conozca o esté indicada.</translation>
    </message>
    <message>
        <source>without PV</source>
        <translation>sin FV</translation>
    </message>
    <message>
        <source>with PV</source>
        <translation>con FV</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>Points: drains with their 95 % intervals. Line: what all drains say together, solid between the tested loads, dashed beyond. Area: 95 % interval.</source>
        <translation>Puntos: descargas con sus intervalos del 95 %. Línea: lo que dicen juntas todas las descargas, continua entre las cargas ensayadas, discontinua más allá. Área: intervalo del 95 %.</translation>
    </message>
    <message>
        <source>next: %1 W</source>
        <translation>próxima: %1 W</translation>
    </message>
    <message>
        <source>No drain from full to cut-off yet: make one at any load.</source>
        <translation>Aún no hay descarga de lleno a corte: haga una a cualquier carga.</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>ensayo %1</translation>
    </message>
    <message>
        <source>mean of %1 drains</source>
        <translation>media de %1 descargas</translation>
    </message>
    <message>
        <source>Usable fraction against load: expected from all drains, and measured</source>
        <translation>Fracción útil según la carga: prevista por todas las descargas, y medida</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>típico</translation>
    </message>
    <message>
        <source>Deliverable energy against load: expected from all drains, and measured</source>
        <translation>Energía entregable según la carga: prevista por todas las descargas, y medida</translation>
    </message>
    <message>
        <source>deliverable energy / Wh</source>
        <translation>energía entregable / Wh</translation>
    </message>
    <message>
        <source>Run time against load: expected from all drains, and measured</source>
        <translation>Autonomía según la carga: prevista por todas las descargas, y medida</translation>
    </message>
    <message>
        <source>run time / h</source>
        <translation>autonomía / h</translation>
    </message>
    <message>
        <source>Gauge error against share delivered, run to run</source>
        <translation>Error del indicador según la parte entregada, de ensayo a ensayo</translation>
    </message>
    <message>
        <source>No gauge curve yet: it takes a drain from full to cut-off with the gauge read at six depths or more.</source>
        <translation>Aún no hay curva del indicador: requiere una descarga de lleno a corte con el indicador leído a seis profundidades o más.</translation>
    </message>
    <message>
        <source>%1 pt</source>
        <translation>%1 pt</translation>
    </message>
    <message>
        <source>run %1, %2</source>
        <translation>ensayo %1, %2</translation>
    </message>
    <message>
        <source>Not on the charts, as a load below %1 W has no place on their axis, but in the curves: %2.</source>
        <translation>No están en los gráficos, pues una carga inferior a %1 W no cabe en su eje, pero sí en las curvas: %2.</translation>
    </message>
    <message>
        <source>%1; made with Ullage %2</source>
        <translation>%1; hecho con Ullage %2</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>Duró</translation>
    </message>
    <message>
        <source>Energy in</source>
        <translation>Energía absorbida</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Entregada</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>Útil</translation>
    </message>
    <message>
        <source>&amp;Bring what you have</source>
        <translation>&amp;Importar lo que ya tiene</translation>
    </message>
    <message>
        <source>&amp;Meters read live</source>
        <translation>Contadores en &amp;directo</translation>
    </message>
    <message>
        <source>&amp;How the figures come about</source>
        <translation>&amp;Cómo se obtienen las cifras</translation>
    </message>
    <message>
        <source>&amp;File formats</source>
        <translation>&amp;Formatos de archivo</translation>
    </message>
    <message>
        <source>C&amp;ommands</source>
        <translation>C&amp;omandos</translation>
    </message>
    <message>
        <source>&amp;JSON</source>
        <translation>&amp;JSON</translation>
    </message>
    <message>
        <source>&amp;Tested figures</source>
        <translation>Cifras com&amp;probadas</translation>
    </message>
    <message>
        <source>logbook</source>
        <translation>cuaderno</translation>
    </message>
    <message>
        <source>one file with everything below; it ends in .ullage and may be copied at any time</source>
        <translation>un solo archivo con todo lo que sigue; termina en .ullage y puede copiarse en cualquier momento</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>a battery storage unit under test, with what its maker claims</source>
        <translation>equipo de almacenamiento con batería sometido a ensayo, con lo que declara su fabricante</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>a short word of yours at a unit, to find it by: the comparison can show the units of one tag</source>
        <translation>palabra breve suya en un equipo, para encontrarlo: la comparación puede mostrar los equipos de una etiqueta</translation>
    </message>
    <message>
        <source>the external energy meter between the unit&apos;s socket and the load</source>
        <translation>contador externo de energía entre la toma del equipo y la carga</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>the energy number in Wh that the meter counts up</source>
        <translation>el número de energía en Wh que el contador va sumando</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>the unit&apos;s own display of how full it is, in percent</source>
        <translation>lo que el propio equipo muestra de cuán lleno está, en porcentaje</translation>
    </message>
    <message>
        <source>run</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>one test of one unit, from the first reading to the end</source>
        <translation>una prueba de un equipo, desde la primera lectura hasta el final</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>one note with its time: gauge, register, watts, a remark</source>
        <translation>una anotación con su hora: indicador, registro, vatios, observación</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>a note of an event: load changed, meter zeroed, output tripped, cut-off</source>
        <translation>anotación de un suceso: carga cambiada, contador puesto a cero, disparo de la salida, corte</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>evidence kept in the logbook with a reading: drop, paste or choose it. %1, %2 MB together. An undone reading keeps its photos; a button below the readings shows them. A run sheet does not carry photos; a copy of the logbook does</source>
        <translation>evidencia guardada en el cuaderno con una lectura: suéltela, péguela o elíjala. %1, %2 MB en total. Una lectura deshecha conserva sus fotos; un botón bajo las lecturas las muestra. Una hoja de ensayo no lleva fotos; una copia del cuaderno, sí</translation>
    </message>
    <message>
        <source>load list</source>
        <translation>lista de cargas</translation>
    </message>
    <message>
        <source>appliances that a unit is to feed, under a name: what each takes while on, how long a day, and when</source>
        <translation>aparatos que un equipo ha de alimentar, bajo un nombre: qué consume cada uno en marcha, cuánto tiempo al día y cuándo</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>factor de marcha</translation>
    </message>
    <message>
        <source>share of the time that an appliance is on while it is in use, in percent</source>
        <translation>parte del tiempo que un aparato está en marcha mientras se usa, en porcentaje</translation>
    </message>
    <message>
        <source>delivered energy</source>
        <translation>energía entregada</translation>
    </message>
    <message>
        <source>what the register counted during the run, corrected: Wh at the socket</source>
        <translation>lo que contó el registro durante el ensayo, corregido: Wh en la toma</translation>
    </message>
    <message>
        <source>gauge-implied energy</source>
        <translation>energía según el indicador</translation>
    </message>
    <message>
        <source>rated energy times the fall of the gauge: what the gauge says has gone</source>
        <translation>energía asignada por la bajada del indicador: lo que el indicador dice que ha salido</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fracción útil</translation>
    </message>
    <message>
        <source>delivered energy from full to cut-off, divided by rated energy</source>
        <translation>energía entregada de lleno a corte, dividida por la energía asignada</translation>
    </message>
    <message>
        <source>the unit switches its output off by itself</source>
        <translation>el equipo apaga su salida por sí mismo</translation>
    </message>
    <message>
        <source>end of a run</source>
        <translation>fin de un ensayo</translation>
    </message>
    <message>
        <source>cut-off seen, found off, or stopped by you. The form asks when, how late that may have been noticed, and what was shown then; what the entry row, the log and the last reading hold is offered. One undo lets the run go on</source>
        <translation>corte visto, hallado apagado o detenido por usted. El formulario pregunta cuándo, con cuánto retraso se pudo advertir y qué se mostraba entonces; se ofrece lo que tienen la fila de entrada, la grabación y la última lectura. Deshacer una vez deja que el ensayo siga</translation>
    </message>
    <message>
        <source>round trip</source>
        <translation>rendimiento de ciclo</translation>
    </message>
    <message>
        <source>energy delivered over energy charged, from one state of the unit back to the same</source>
        <translation>energía entregada entre energía cargada, de un estado del equipo de vuelta al mismo</translation>
    </message>
    <message>
        <source>standby draw</source>
        <translation>consumo en reposo</translation>
    </message>
    <message>
        <source>power that the unit consumes with its output off</source>
        <translation>potencia que el equipo consume con la salida apagada</translation>
    </message>
    <message>
        <source>log</source>
        <translation>grabación</translation>
    </message>
    <message>
        <source>the file of a meter or unit that logs. Import log (or drop the file on a run) shows how it was read and asks what it leaves open; its register and power then go with the gauge readings noted by hand. The tab Log draws its power and states the load. A log that is still being written is followed, if you tick so: its new rows come in by themselves, also after the program was closed</source>
        <translation>el archivo de un contador o equipo que graba. Importar grabación (o soltar el archivo sobre un ensayo) muestra cómo se ha leído y pregunta lo que deja abierto; su registro y su potencia van entonces con las lecturas del indicador anotadas a mano. La pestaña Grabación dibuja su potencia y da la carga. Una grabación que aún se está escribiendo se sigue, si usted lo marca: sus filas nuevas entran solas, también tras haber cerrado el programa</translation>
    </message>
    <message>
        <source>charge from PV</source>
        <translation>recarga desde FV</translation>
    </message>
    <message>
        <source>of several panels: a run for each, with its own meter and its name as the load. Runs at the same time are added up under Claims tested</source>
        <translation>de varios paneles: un ensayo para cada uno, con su propio contador y con su nombre como carga. Los ensayos simultáneos se suman en Datos comprobados</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>fase decreciente</translation>
    </message>
    <message>
        <source>the end of a charge, while its power is below 90 % of its highest</source>
        <translation>el final de una recarga, mientras su potencia está por debajo del 90 % de la máxima</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>consumo en vacío</translation>
    </message>
    <message>
        <source>power that the unit itself consumes with its output on and nothing connected</source>
        <translation>potencia que el propio equipo consume con la salida encendida y nada conectado</translation>
    </message>
    <message>
        <source>gauge minus what is truly left, in percentage points</source>
        <translation>indicador menos lo que de verdad queda, en puntos porcentuales</translation>
    </message>
    <message>
        <source>reminder</source>
        <translation>recordatorio</translation>
    </message>
    <message>
        <source>when a run calls for its next reading: an interval, a fall of the gauge, or a time before the cut-off</source>
        <translation>cuándo pide un ensayo su próxima lectura: un intervalo, una bajada del indicador o un tiempo antes del corte</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>a named fault of gauge, run or claim, with the readings that show it</source>
        <translation>fallo con nombre del indicador, del ensayo o de un dato declarado, con las lecturas que lo muestran</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medición</translation>
    </message>
    <message>
        <source>seen from full to cut-off, with a 95 % interval</source>
        <translation>visto de lleno a corte, con un intervalo del 95 %</translation>
    </message>
    <message>
        <source>share delivered</source>
        <translation>parte entregada</translation>
    </message>
    <message>
        <source>share of what a drain delivers that has been delivered, in percent</source>
        <translation>parte ya entregada de lo que entrega una descarga, en porcentaje</translation>
    </message>
    <message>
        <source>stored depth</source>
        <translation>profundidad de descarga</translation>
    </message>
    <message>
        <source>share of the stored energy that has gone, the unit&apos;s own draw counted in, in percent</source>
        <translation>parte de la energía almacenada que ya ha salido, incluido el consumo propio del equipo, en porcentaje</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>energía antes del consumo propio</translation>
    </message>
    <message>
        <source>what the socket would get if the no-load draw took nothing: where a line through all drains meets a run time of 0 h</source>
        <translation>lo que recibiría la toma si el consumo en vacío no se llevara nada: donde una recta por todas las descargas llega a una autonomía de 0 h</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>autonomía en vacío</translation>
    </message>
    <message>
        <source>how long a full unit lasts with its output on and nothing connected</source>
        <translation>cuánto dura un equipo lleno con la salida encendida y nada conectado</translation>
    </message>
    <message>
        <source>projected</source>
        <translation>proyección</translation>
    </message>
    <message>
        <source>carried on from a part of a drain, through the gauge curve of an earlier full drain or else on an accurate gauge; of a unit, from its drains together. The reason says which</source>
        <translation>prolongado desde una parte de una descarga, con la curva del indicador de una descarga completa anterior o, si no, con un indicador exacto; de un equipo, desde todas sus descargas. El motivo dice cuál</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>horquilla</translation>
    </message>
    <message>
        <source>known only to lie between two limits</source>
        <translation>solo se sabe que está entre dos límites</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>al menos</translation>
    </message>
    <message>
        <source>energy may be missing from the readings; the true value is not lower</source>
        <translation>puede faltar energía en las lecturas; el valor verdadero no es menor</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>these readings cannot tell; the reason says what would</source>
        <translation>estas lecturas no lo pueden decir; el motivo indica qué lo diría</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Todas las teclas</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>&lt;b&gt;Delivered energy.&lt;/b&gt; Differences of the meter&apos;s register times its correction. Zeroed and swapped meters and a register that passed its span are joined; a fall without a mark is read as a reset or a typing error by the load that it would mean, and the run says which.</source>
        <translation>&lt;b&gt;Energía entregada.&lt;/b&gt; Diferencias del registro del contador por su corrección. Los contadores puestos a cero o cambiados y un registro que pasó por su tope se enlazan; una bajada sin marca se toma por una puesta a cero o por un error de escritura, según la carga que supondría, y el ensayo dice cuál.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Uncertainty.&lt;/b&gt; The meter&apos;s error limit counts as a rectangular part common to all its readings, the register&apos;s and the gauge&apos;s step as rectangular parts of each reading, and the noted moment as one minute at the load. They are combined to a 95 % interval (JCGM 100:2008, clauses 4.3 and 5.1; results are rounded as its clause 7.2.6 asks). Rated energy is a claim and has no uncertainty.</source>
        <translation>&lt;b&gt;Incertidumbre.&lt;/b&gt; El límite de error del contador cuenta como componente rectangular común a todas sus lecturas; las resoluciones del registro y del indicador, como componentes rectangulares de cada lectura; el momento anotado, como un minuto a la carga. Se combinan en un intervalo del 95 % (JCGM 100:2008, apartados 4.3 y 5.1; los resultados se redondean como pide su apartado 7.2.6). La energía asignada es un dato declarado y no tiene incertidumbre.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Usable fraction.&lt;/b&gt; Measured only from full to cut-off, and always at the load of that run: a slow drain feeds the unit&apos;s own draw for longer. Any other drain is projected: through the gauge curve of the latest full drain of the unit before it, where there is one, else from end to end over the gauge&apos;s fall, as if the gauge were honest. The roundings of the gauge are in the interval.</source>
        <translation>&lt;b&gt;Fracción útil.&lt;/b&gt; Solo se mide de lleno a corte, y siempre a la carga de ese ensayo: una descarga lenta alimenta más tiempo el consumo propio del equipo. Cualquier otra descarga se proyecta: con la curva del indicador de la última descarga completa anterior del equipo, si la hay; si no, de extremo a extremo de la bajada del indicador, como si este fuera exacto. Los redondeos del indicador están en el intervalo.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Is the gauge right?&lt;/b&gt; Gauge-implied against delivered energy as a straight line with uncertainties in both (D. York, N. Evensen, M. Martinez, J. Delgado: American Journal of Physics 72, 2004, 367), and named faults, each with its readings, its size in percentage points or Wh, and the limit that it passed. The gauge error is drawn against share delivered and, where the no-load draw is known and the load varied, against stored depth.</source>
        <translation>&lt;b&gt;¿Acierta el indicador?&lt;/b&gt; Energía según el indicador frente a energía entregada, como recta con incertidumbres en ambas (D. York, N. Evensen, M. Martinez, J. Delgado: American Journal of Physics 72, 2004, 367), y fallos con nombre, cada uno con sus lecturas, su tamaño en puntos porcentuales o Wh y el límite que superó. El error del indicador se dibuja según la parte entregada y, donde se conoce el consumo en vacío y la carga varió, según la profundidad de descarga.</translation>
    </message>
    <message>
        <source>&lt;b&gt;No-load draw.&lt;/b&gt; Power with the output on and nothing connected is called no-load loss in IEC 61683. One run at a steady load cannot tell it from conversion loss; the program then says that it is not known.</source>
        <translation>&lt;b&gt;Consumo en vacío.&lt;/b&gt; La norma IEC 61683 llama pérdidas en vacío a la potencia con la salida encendida y nada conectado. Un solo ensayo a carga constante no puede separarlas de las pérdidas de conversión; el programa dice entonces que no se conoce.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Forecast.&lt;/b&gt; While a drain runs, the strip and the energy chart show when it should be cut off, as a range that is meant to hold the moment in 95 of 100 drains. It comes from the earlier drains of the unit where there are any, else from this run&apos;s gauge; it then allows for a gauge that is bent, offset, ends early, falls too fast, lingers or is blind to the unit&apos;s own draw, and is wide early in a drain. The strip says whether it holds if the gauge is right, if it is wrong, or whichever is right. It takes the load to go on as it was: a change of load yet to come cannot be foreseen. It is no promise; do not leave a load that must not fail to it.</source>
        <translation>&lt;b&gt;Previsión.&lt;/b&gt; Durante una descarga, la franja de resultados y el gráfico de energía muestran cuándo debería llegar el corte, como margen pensado para contener el momento en 95 de cada 100 descargas. Sale de las descargas anteriores del equipo, si las hay; si no, del indicador de este ensayo; admite entonces un indicador curvo, desplazado, que acaba antes, baja demasiado deprisa, se demora o no ve el consumo propio del equipo, y es ancho al principio de una descarga. La franja dice si vale cuando el indicador acierta, cuando se equivoca o en cualquier caso. Supone que la carga sigue como hasta ahora: un cambio de carga aún por venir no se puede prever. No es una promesa: no confíe en ella para cargas críticas.</translation>
    </message>
    <message>
        <source>&lt;b&gt;All drains of a unit.&lt;/b&gt; Delivered energy is energy before own consumption, less no-load draw times hours, less a small quadratic loss; a line through all drains from full to cut-off gives the first two once their run times differ by more than 1.5 times. Curves are dashed beyond the tested loads. The next run is the one that would narrow them most, of those that last a day at most if any of them would.</source>
        <translation>&lt;b&gt;Todas las descargas de un equipo.&lt;/b&gt; La energía entregada es la energía antes del consumo propio, menos el consumo en vacío por las horas, menos una pequeña pérdida cuadrática; una recta por todas las descargas de lleno a corte da las dos primeras en cuanto sus autonomías difieren en más de 1,5 veces. Más allá de las cargas ensayadas las curvas son discontinuas. El próximo ensayo es el que más las estrecharía, de entre los que duran un día como máximo, si alguno de ellos lo hiciera.</translation>
    </message>
    <message>
        <source>&lt;b&gt;From run to run.&lt;/b&gt; Energy that falls with the days is ageing. Drains at like loads also show whether the gauge&apos;s own error curve moves: curves are compared at equal share delivered, where the meters&apos; errors cancel. A curve that moves under an unmoved energy is the gauge; an energy that falls under an unmoved curve is the unit.</source>
        <translation>&lt;b&gt;De ensayo a ensayo.&lt;/b&gt; Una energía que baja con los días es envejecimiento. Las descargas a cargas parecidas muestran además si se mueve la propia curva de error del indicador: las curvas se comparan a igual parte entregada, donde los errores de los contadores se cancelan. Una curva que se mueve con la energía quieta es cosa del indicador; una energía que baja con la curva quieta, del equipo.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Comparison.&lt;/b&gt; Units as they were tested, or at one load, to which each is moved by what all its drains say together. A unit that cannot be converted stays as tested and says why. Differences tells which units these meters can tell apart: the gain of a meter that measured both cancels, those of two meters do not. Prices per kWh are those of the list price; where what was paid is known, that stands beside it. A right click on the heads of the table chooses its columns, which can also be dragged; both are remembered, and exports follow. Units that are not told apart share a rank. Compare, Add units of another logbook looks into other logbooks: what is one unit, one meter or one run there is told by their hidden marks, not by names, and what two logbooks hold counts once. Many units are compared while you go on; of more than 40 rows Differences shows the 40 with the largest usable fraction.</source>
        <translation>&lt;b&gt;Comparación.&lt;/b&gt; Equipos según ensayo o a una misma carga, a la que cada uno se lleva con lo que dicen juntas todas sus descargas. Un equipo que no se puede convertir queda según ensayo y dice por qué. Diferencias dice qué equipos pueden distinguir estos contadores: la ganancia de un contador que midió ambos se cancela; las de dos contadores, no. Los precios por kWh son los del precio de catálogo; donde se conoce lo pagado, va al lado. Un clic derecho en la cabecera de la tabla elige sus columnas, que también se pueden arrastrar; ambas cosas se recuerdan y las exportaciones las siguen. Los equipos que no se distinguen comparten puesto. Comparar, Añadir equipos de otro cuaderno consulta otros cuadernos: qué es un mismo equipo, contador o ensayo se reconoce allí por sus señas ocultas, no por los nombres, y lo que está en dos cuadernos cuenta una sola vez. Muchos equipos se comparan mientras usted sigue trabajando; de más de 40 filas, Diferencias muestra las 40 con mayor fracción útil.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Load lists.&lt;/b&gt; Daily energy is the sum of number, power, duty and hours; what was measured over some hours goes before power and duty. The output is taken to be on for the longest use by day and the longest by night, or all day where something is always connected; the mean over that time is the load at which the comparison puts units. The most that is asked at once is all that runs and the largest start-up extra. These are sums of what you stated, without interval.</source>
        <translation>&lt;b&gt;Listas de cargas.&lt;/b&gt; La energía diaria es la suma de número por potencia, factor de marcha y horas; lo medido durante unas horas prevalece sobre la potencia y el factor de marcha. Se supone la salida encendida durante el uso más largo de día y el más largo de noche, o todo el día si algo está siempre conectado; la media en ese tiempo es la carga a la que la comparación pone los equipos. Lo máximo que se pide a la vez es todo lo que está en marcha más el mayor exceso de arranque. Son sumas de lo que usted indicó, sin intervalo.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Other claims.&lt;/b&gt; A charge gives energy in, time to full, power and taper; a charge to full after a cut-off and the drain after it give the round trip, between points that are named. Where one meter measured both its gain cancels. A sustained-output or peak-output run holds each step of load between two marks against the claim: held, tripped, or not reached. A standby run with the charge after it gives what the unit takes with its output off. The unit&apos;s page, Claims tested, has them all with the runs that show it.</source>
        <translation>&lt;b&gt;Otros datos declarados.&lt;/b&gt; Una recarga da la energía absorbida, el tiempo hasta lleno, la potencia y la fase decreciente; una recarga hasta lleno tras un corte y la descarga siguiente dan el rendimiento de ciclo, entre puntos que se nombran. Donde un solo contador midió ambas, su ganancia se cancela. Un ensayo de potencia sostenida o de pico compara con lo declarado cada escalón de carga entre dos marcas: mantenida, disparo o no alcanzada. Un ensayo de reposo con la recarga siguiente da lo que consume el equipo con la salida apagada. La página del equipo, Datos comprobados, los tiene todos con los ensayos que los muestran.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Sizing.&lt;/b&gt; Sizing, Sizing for a load list says how many days one full unit serves the list, from the fit of its own drains with the no-load draw counted in; the interval also holds what the list leaves open: used together or apart, begun at any hour. A unit that nobody tested stands with an expectation, 75 to 80 % of rated at the socket, which is no measurement. The array and the battery by rule (after IEEE 1562 and IEEE 1013) are a cross-check. Never connect the outputs of several units with each other.</source>
        <translation>&lt;b&gt;Dimensionado.&lt;/b&gt; Dimensionado, Dimensionado para una lista de cargas dice cuántos días sirve la lista un equipo lleno, según el ajuste de sus propias descargas y con el consumo en vacío incluido; el intervalo abarca también lo que la lista deja abierto: uso a la vez o por separado, empezado a cualquier hora. Un equipo que nadie ensayó figura con una expectativa, del 75 al 80 % de la asignada en la toma, que no es una medición. El generador y la batería según norma (según IEEE 1562 e IEEE 1013) son una comprobación cruzada. No conecte nunca entre sí las salidas de varios equipos.</translation>
    </message>
    <message>
        <source>&lt;b&gt;PV input.&lt;/b&gt; Sizing, PV input check compares a string of modules with the limits of a unit&apos;s PV input: open circuit at the coldest, maximum power at the hottest, current and power. The maker&apos;s temperature coefficient goes before the table of factors (NEC Table 690.7(A), crystalline silicon only). PV strings are live in light: local codes and a licensed electrician come first.</source>
        <translation>&lt;b&gt;Entrada FV.&lt;/b&gt; Dimensionado, Comprobación de la entrada FV compara una cadena de módulos con los límites de la entrada FV de un equipo: circuito abierto con el mayor frío, potencia máxima con el mayor calor, corriente y potencia. El coeficiente de temperatura del fabricante prevalece sobre la tabla de factores (NEC, tabla 690.7(A), solo silicio cristalino). Las cadenas FV están en tensión siempre que hay luz: los reglamentos locales y un electricista autorizado van primero.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Export.&lt;/b&gt; Compare, Export and Logbook, Export readings write tables as CSV, Markdown, HTML, XLSX, JSON and LaTeX with the same numbers in each; CSV, XLSX and JSON hold every digit, the limits of the interval and the kind. Beside a CSV file stands its description (W3C, Metadata Vocabulary for Tabular Data). Copy table and Ctrl+C give cells for a spreadsheet. Your words never become formulas there: one that begins like a formula gets an apostrophe in front.</source>
        <translation>&lt;b&gt;Exportar.&lt;/b&gt; Comparar, Exportar y Cuaderno, Exportar lecturas escriben tablas como CSV, Markdown, HTML, XLSX, JSON y LaTeX con los mismos números en cada una; CSV, XLSX y JSON contienen todas las cifras, los límites del intervalo y la clase. Junto a un archivo CSV está su descripción (W3C, Metadata Vocabulary for Tabular Data). Copiar tabla y Ctrl+C dan celdas para una hoja de cálculo. Sus palabras nunca se convierten allí en fórmulas: a la que empieza como una fórmula se le antepone un apóstrofo.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Report.&lt;/b&gt; Run, Make report and Compare, Make report write all of this with readings, budget, charts, findings, sources and the history of amended readings, as PDF or HTML on A4 or Letter. That of the comparison stands at the load that the page shows or as tested, and names the pairs of units that these meters cannot tell apart.</source>
        <translation>&lt;b&gt;Informe.&lt;/b&gt; Ensayo, Crear informe y Comparar, Crear informe escriben todo esto con lecturas, presupuesto de incertidumbre, gráficos, hallazgos, fuentes y el historial de las lecturas enmendadas, como PDF o HTML en A4 o Carta. El de la comparación va a la carga que muestra la página o según ensayo, y nombra las parejas de equipos que estos contadores no pueden distinguir.</translation>
    </message>
    <message>
        <source>Ullage is the amount by which a container falls short of full. This program measures it for battery storage units: the energy printed on the case against the energy that reaches the socket.</source>
        <translation>Ullage es lo que le falta a un recipiente para estar lleno. Este programa lo mide en equipos de almacenamiento con batería: la energía impresa en la carcasa frente a la que llega a la toma.</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or any later version (GPL-3.0-or-later). It comes without any warranty.</source>
        <translation>Software libre bajo la GNU General Public License, versión 3 o cualquier posterior (GPL-3.0-or-later). Se ofrece sin garantía alguna.</translation>
    </message>
    <message>
        <source>Built with Qt and Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, libxlsxwriter and Exiv2.</source>
        <translation>Hecho con Qt y Qt Charts, SQLite, SQLiteCpp, Eigen, Boost, fmt, date, nlohmann-json, CLI11, libxlsxwriter y Exiv2.</translation>
    </message>
    <message>
        <source>%1 (the camera gave no time zone; read in %2)</source>
        <translation>%1 (la cámara no dio huso horario; leída en %2)</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>tomada %1</translation>
    </message>
    <message>
        <source>no time in it</source>
        <translation>sin hora en ella</translation>
    </message>
    <message>
        <source>JPEG or PNG, at most %1 MB and %2 megapixels each</source>
        <translation>JPEG o PNG, de %1 MB y %2 megapíxeles como máximo cada una</translation>
    </message>
    <message>
        <source>none yet: gauge only</source>
        <translation>aún ninguno: solo el indicador</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>yes, full</source>
        <translation>sí, lleno</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>the wall</source>
        <translation>la red</translation>
    </message>
    <message>
        <source>the PV input</source>
        <translation>la entrada FV</translation>
    </message>
    <message>
        <source>power of the load</source>
        <translation>potencia de la carga</translation>
    </message>
    <message>
        <source>second register</source>
        <translation>segundo registro</translation>
    </message>
    <message>
        <source>power shown by the unit</source>
        <translation>potencia que muestra el equipo</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>sin usar</translation>
    </message>
    <message>
        <source>First rows of the table, the role of each column above them</source>
        <translation>Primeras filas de la tabla, con el papel de cada columna encima</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 contiene</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Rows that are not taken</source>
        <translation>Filas que no se toman</translation>
    </message>
    <message>
        <source>row</source>
        <translation>fila</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>qué se hizo</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>taken in part</source>
        <translation>tomada en parte</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Datos declarados</translation>
    </message>
    <message>
        <source>Every drain</source>
        <translation>Cada descarga</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Indicador</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Charges and outputs</source>
        <translation>Recargas y potencias</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Presupuestos de incertidumbre</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>since %1, %2</source>
        <translation>desde %1, %2</translation>
    </message>
    <message>
        <source>read just now</source>
        <translation>leído ahora mismo</translation>
    </message>
    <message>
        <source>read %1 ago</source>
        <translation>leído hace %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>cut-off, %1</source>
        <translation>corte, %1</translation>
    </message>
    <message>
        <source>%1 at the latest</source>
        <translation>%1 a más tardar</translation>
    </message>
    <message>
        <source>dimmed %1:00 to 0%2:00</source>
        <translation>atenuada de %1:00 a 0%2:00</translation>
    </message>
    <message>
        <source>dimmed</source>
        <translation>atenuada</translation>
    </message>
    <message>
        <source>not dimmed</source>
        <translation>sin atenuar</translation>
    </message>
    <message>
        <source>No run uses this meter yet.</source>
        <translation>Ningún ensayo usa aún este contador.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1, ensayo %2</translation>
    </message>
    <message>
        <source>Measured %1: %2</source>
        <translation>Midió %1: %2</translation>
    </message>
    <message>
        <source> and others</source>
        <translation> y otros</translation>
    </message>
    <message>
        <source>Class %1</source>
        <translation>Clase %1</translation>
    </message>
    <message>
        <source>range %1 to %2 W</source>
        <translation>rango %1 a %2 W</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>starts at %1 A</source>
        <translation>arranca con %1 A</translation>
    </message>
    <message>
        <source>certificate %1</source>
        <translation>certificado %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>valid until %1</source>
        <translation>válido hasta %1</translation>
    </message>
    <message>
        <source>points %1 (W, correction, U in %, k)</source>
        <translation>puntos %1 (W, corrección, U en %, k)</translation>
    </message>
    <message>
        <source>correction %1</source>
        <translation>corrección %1</translation>
    </message>
    <message>
        <source>points %1</source>
        <translation>puntos %1</translation>
    </message>
    <message>
        <source>limit ±%1 %</source>
        <translation>límite ±%1 %</translation>
    </message>
    <message>
        <source>no limit stated</source>
        <translation>sin límite indicado</translation>
    </message>
    <message>
        <source>step %1 Wh</source>
        <translation>resolución %1 Wh</translation>
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
        <translation>Lo que cambió la última edición no se calcula aquí: sus ensayos tienen demasiadas lecturas.</translation>
    </message>
    <message>
        <source>Last edit: %1</source>
        <translation>Última edición: %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>retrasada</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>próxima lectura</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sin recordatorio</translation>
    </message>
    <message>
        <source>next reading, snoozed</source>
        <translation>próxima lectura, aplazada</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>transcurrido</translation>
    </message>
    <message>
        <source>lasted</source>
        <translation>duró</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>mean power</source>
        <translation>potencia media</translation>
    </message>
    <message>
        <source>mean power, since last</source>
        <translation>potencia media, desde la última</translation>
    </message>
    <message>
        <source>mean load, since last</source>
        <translation>carga media, desde la última</translation>
    </message>
    <message>
        <source>W, %1 W</source>
        <translation>W, %1 W</translation>
    </message>
    <message>
        <source>usable fraction, %1</source>
        <translation>fracción útil, %1</translation>
    </message>
    <message>
        <source>peak power</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>terminó</translation>
    </message>
    <message>
        <source>last reading</source>
        <translation>última lectura</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>min ago</source>
        <translation>min atrás</translation>
    </message>
    <message>
        <source>ago</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>elapsed; read %1</source>
        <translation>transcurrido; leído %1</translation>
    </message>
    <message>
        <source>Time since the first reading, and since the last.</source>
        <translation>Tiempo desde la primera lectura y desde la última.</translation>
    </message>
    <message>
        <source>delivered; gauge %1 Wh</source>
        <translation>entregada; indicador %1 Wh</translation>
    </message>
    <message>
        <source>The gauge implies %1 Wh %2 than was delivered (rated energy times its fall): what the unit took for itself, capacity that is missing, or an error of the gauge.</source>
        <translation>El indicador da a entender %1 Wh %2 de lo que se entregó (energía asignada por su bajada): lo que el equipo tomó para sí, capacidad que falta o un error del indicador.</translation>
    </message>
    <message>
        <source>less</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>cut-off, overdue since</source>
        <translation>corte, con retraso desde</translation>
    </message>
    <message>
        <source>95 % range %1, %2, %3</source>
        <translation>margen del 95 % %1, %2, %3</translation>
    </message>
    <message>
        <source>as calibrated</source>
        <translation>según calibración</translation>
    </message>
    <message>
        <source>string</source>
        <translation>cadena</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>Choose the unit whose PV input is meant: its limits come from its claims.</source>
        <translation>Elija el equipo de cuya entrada FV se trata: sus límites salen de sus datos declarados.</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 como máximo</translation>
    </message>
    <message>
        <source>%1 short circuit</source>
        <translation>%1 en cortocircuito</translation>
    </message>
    <message>
        <source>No limit of the PV input of %1 is stated; enter what its label says.</source>
        <translation>No está indicado ningún límite de la entrada FV de %1; introduzca lo que dice su placa.</translation>
    </message>
    <message>
        <source>PV input of %1: %2</source>
        <translation>Entrada FV de %1: %2</translation>
    </message>
    <message>
        <source>slope %1, delivered per gauge-implied energy</source>
        <translation>pendiente %1, energía entregada entre la del indicador</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>fallo</translation>
    </message>
    <message>
        <source>doubt</source>
        <translation>duda</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>Gauge: %1</source>
        <translation>Indicador: %1</translation>
    </message>
    <message>
        <source>about %1 Wh may be missing</source>
        <translation>pueden faltar unos %1 Wh</translation>
    </message>
    <message>
        <source>Delivered energy</source>
        <translation>Energía entregada</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fracción útil</translation>
    </message>
    <message>
        <source>Wh per gauge point</source>
        <translation>Wh por punto del indicador</translation>
    </message>
    <message>
        <source>Whether a linear gauge fits: %1</source>
        <translation>Si vale un indicador lineal: %1</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>compruebe el nombre y la carpeta</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>esto no es un archivo</translation>
    </message>
    <message>
        <source>choose a picture</source>
        <translation>elija una imagen</translation>
    </message>
    <message>
        <source>the file has %1; a logbook takes %2</source>
        <translation>el archivo tiene %1; un cuaderno admite %2</translation>
    </message>
    <message>
        <source>save it smaller, as JPEG for example</source>
        <translation>guárdelo más pequeño, por ejemplo como JPEG</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>no se puede abrir el archivo</translation>
    </message>
    <message>
        <source>check that you may read it</source>
        <translation>compruebe que tiene permiso para leerlo</translation>
    </message>
    <message>
        <source>too many files are open</source>
        <translation>hay demasiados archivos abiertos</translation>
    </message>
    <message>
        <source>close other programs and try again</source>
        <translation>cierre otros programas e inténtelo de nuevo</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>no se puede leer el archivo hasta el final</translation>
    </message>
    <message>
        <source>check the disk or card that it is on, or copy it elsewhere</source>
        <translation>compruebe el disco o la tarjeta donde está, o cópielo a otro sitio</translation>
    </message>
    <message>
        <source>the picture could not be taken over</source>
        <translation>no se pudo tomar la imagen</translation>
    </message>
    <message>
        <source>save it as a file and attach that</source>
        <translation>guárdela como archivo y adjúntelo</translation>
    </message>
    <message>
        <source>Reading photos</source>
        <translation>Leyendo fotos</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>energía</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>Readings of this run</source>
        <translation>Lecturas de este ensayo</translation>
    </message>
    <message>
        <source>Intervals of this run</source>
        <translation>Intervalos de este ensayo</translation>
    </message>
    <message>
        <source>Gauge steps of this run</source>
        <translation>Escalones del indicador de este ensayo</translation>
    </message>
    <message>
        <source>Readings of all runs</source>
        <translation>Lecturas de todos los ensayos</translation>
    </message>
    <message>
        <source>Intervals of all runs</source>
        <translation>Intervalos de todos los ensayos</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>pico</translation>
    </message>
    <message>
        <source> The power began to fall at a gauge of %1 %.</source>
        <translation> La potencia empezó a bajar con el indicador al %1 %.</translation>
    </message>
    <message>
        <source>%1 for %2 min, %3</source>
        <translation>%1 durante %2 min, %3</translation>
    </message>
    <message>
        <source> Trips: %1, resets: %2.</source>
        <translation> Disparos: %1, rearmes: %2.</translation>
    </message>
    <message>
        <source>peak output</source>
        <translation>potencia de pico</translation>
    </message>
    <message>
        <source>sustained output</source>
        <translation>potencia sostenida</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>dato declarado</translation>
    </message>
    <message>
        <source>claimed</source>
        <translation>declarado</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>evidencia</translation>
    </message>
    <message>
        <source>%1: not known: %2.</source>
        <translation>%1: no se conoce: %2.</translation>
    </message>
    <message>
        <source>%1: %2 (%3), %4 a day, %5 a month</source>
        <translation>%1: %2 (%3), %4 al día, %5 al mes</translation>
    </message>
    <message>
        <source>; %1 %3 a day, %2 %3 a month, %4</source>
        <translation>; %1 %3 al día, %2 %3 al mes, %4</translation>
    </message>
    <message>
        <source>; %1.</source>
        <translation>; %1.</translation>
    </message>
    <message>
        <source>rated energy</source>
        <translation>energía asignada</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>potencia asignada</translation>
    </message>
    <message>
        <source>charge time</source>
        <translation>tiempo de recarga</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>price paid</source>
        <translation>precio pagado</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantía</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>PV input, at most</source>
        <translation>entrada FV, como máximo</translation>
    </message>
    <message>
        <source>gauge step</source>
        <translation>resolución del indicador</translation>
    </message>
    <message>
        <source>tags</source>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>mean of %1 drains from full to cut-off, near %2%3W</source>
        <translation>media de %1 descargas de lleno a corte, a unos %2%3W</translation>
    </message>
    <message>
        <source>so far, %1</source>
        <translation>hasta ahora, %1</translation>
    </message>
    <message>
        <source>from full to cut-off, %1</source>
        <translation>de lleno a corte, %1</translation>
    </message>
    <message>
        <source>not the whole unit, %1</source>
        <translation>no el equipo entero, %1</translation>
    </message>
    <message>
        <source>Desktop</source>
        <translation>Escritorio</translation>
    </message>
    <message>
        <source>no service offers it</source>
        <translation>ningún servicio lo ofrece</translation>
    </message>
    <message>
        <source>display</source>
        <translation>pantalla</translation>
    </message>
    <message>
        <source>The window cannot be shown here; all commands work.</source>
        <translation>La ventana no se puede mostrar aquí; todos los comandos funcionan.</translation>
    </message>
    <message>
        <source>%1 × %2 at scale %3</source>
        <translation>%1 × %2 a escala %3</translation>
    </message>
    <message>
        <source>dark, as chosen</source>
        <translation>oscuro, según lo elegido</translation>
    </message>
    <message>
        <source>light, as chosen</source>
        <translation>claro, según lo elegido</translation>
    </message>
    <message>
        <source>dark, as the desktop</source>
        <translation>oscuro, como el escritorio</translation>
    </message>
    <message>
        <source>light, as the desktop</source>
        <translation>claro, como el escritorio</translation>
    </message>
    <message>
        <source>theme and text size</source>
        <translation>tema y tamaño del texto</translation>
    </message>
    <message>
        <source>%1; %2 %</source>
        <translation>%1; %2 %</translation>
    </message>
    <message>
        <source>notices of readings that are due</source>
        <translation>avisos de lecturas pendientes</translation>
    </message>
    <message>
        <source>Reminders stand in the window alone.</source>
        <translation>Los recordatorios aparecen solo en la ventana.</translation>
    </message>
    <message>
        <source>at the tray</source>
        <translation>en la bandeja</translation>
    </message>
    <message>
        <source>keeping the machine awake</source>
        <translation>impedir la suspensión de la máquina</translation>
    </message>
    <message>
        <source>Set the machine not to sleep while a test runs.</source>
        <translation>Configure la máquina para que no se suspenda durante un ensayo.</translation>
    </message>
    <message>
        <source>passwords of meters</source>
        <translation>contraseñas de los contadores</translation>
    </message>
    <message>
        <source>A meter&apos;s password is asked for at each start.</source>
        <translation>La contraseña de un contador se pide en cada inicio.</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>%1: nothing can be written there (%2)</source>
        <translation>%1: allí no se puede escribir nada (%2)</translation>
    </message>
    <message>
        <source>%1, written, %2 free</source>
        <translation>%1, escrito, %2 libres</translation>
    </message>
    <message>
        <source>There is little room left. Make some.</source>
        <translation>Queda poco espacio. Libere algo.</translation>
    </message>
    <message>
        <source>Files there cannot be locked, so a logbook cannot be opened there. Keep it on a disk of this machine.</source>
        <translation>Los archivos no se pueden bloquear allí, así que no se puede abrir un cuaderno en ese lugar. Téngalo en un disco de esta máquina.</translation>
    </message>
    <message>
        <source>Files there cannot be leased: copy a logbook only when it is not recorded into. A disk of this machine offers it.</source>
        <translation>Los archivos no se pueden reservar allí: copie un cuaderno solo cuando no se anote en él. Un disco de esta máquina lo permite.</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>ajustes</translation>
    </message>
    <message>
        <source>Settings are forgotten at the end of the program.</source>
        <translation>Los ajustes se olvidan al terminar el programa.</translation>
    </message>
    <message>
        <source>notes on files</source>
        <translation>notas sobre archivos</translation>
    </message>
    <message>
        <source>The program does not know the files that it wrote, so commands ask for --force to replace them.</source>
        <translation>El programa no conoce los archivos que escribió, así que los comandos piden --force para reemplazarlos.</translation>
    </message>
    <message>
        <source>sample logbook</source>
        <translation>cuaderno de ejemplo</translation>
    </message>
    <message>
        <source>The sample logbook cannot be made there.</source>
        <translation>El cuaderno de ejemplo no se puede crear allí.</translation>
    </message>
    <message>
        <source>temporary files</source>
        <translation>archivos temporales</translation>
    </message>
    <message>
        <source>Workbooks, imports and checks need room there.</source>
        <translation>Los libros de cálculo, las importaciones y las comprobaciones necesitan espacio allí.</translation>
    </message>
    <message>
        <source>Nothing can be recorded there.</source>
        <translation>Allí no se puede anotar nada.</translation>
    </message>
    <message>
        <source>copies of logbooks</source>
        <translation>copias de cuadernos</translation>
    </message>
    <message>
        <source>No copies are made. Choose another folder in Settings.</source>
        <translation>No se hacen copias. Elija otra carpeta en Ajustes.</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>signos</translation>
    </message>
    <message>
        <source>all %1 that the program shows</source>
        <translation>los %1 que muestra el programa</translation>
    </message>
    <message>
        <source>not in any font: %1</source>
        <translation>en ninguna fuente: %1</translation>
    </message>
    <message>
        <source>Boxes stand in their place. Install a font that has them, such as DejaVu Sans.</source>
        <translation>En su lugar aparecen recuadros. Instale una fuente que los tenga, como DejaVu Sans.</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>cifras</translation>
    </message>
    <message>
        <source>of equal width</source>
        <translation>de igual anchura</translation>
    </message>
    <message>
        <source>of unequal width</source>
        <translation>de anchura desigual</translation>
    </message>
    <message>
        <source>Numbers in columns do not stand below each other digit by digit. Another font of the desktop mends that.</source>
        <translation>Los números en columnas no quedan cifra bajo cifra. Otra fuente del escritorio lo remedia.</translation>
    </message>
    <message>
        <source>Region</source>
        <translation>Región</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>zona horaria</translation>
    </message>
    <message>
        <source>%1; the data of time zones are not there</source>
        <translation>%1; faltan los datos de las zonas horarias</translation>
    </message>
    <message>
        <source>Local times are those of UTC. Install tzdata.</source>
        <translation>Las horas locales son las de UTC. Instale tzdata.</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>como el escritorio</translation>
    </message>
    <message>
        <source>font</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>%1, %2 points</source>
        <translation>%1, %2 puntos</translation>
    </message>
    <message>
        <source>PNG</source>
        <translation>PNG</translation>
    </message>
    <message>
        <source>Photos and pictures of this form cannot be shown.</source>
        <translation>Las fotos e imágenes de este formato no se pueden mostrar.</translation>
    </message>
    <message>
        <source>JPEG</source>
        <translation>JPEG</translation>
    </message>
    <message>
        <source>Photos of this form are kept but cannot be shown.</source>
        <translation>Las fotos de este formato se guardan pero no se pueden mostrar.</translation>
    </message>
    <message>
        <source>SVG</source>
        <translation>SVG</translation>
    </message>
    <message>
        <source>The window has no icon in the task bar. Install the SVG plugin of Qt (libqt6svg6).</source>
        <translation>La ventana no tiene icono en la barra de tareas. Instale el complemento SVG de Qt (libqt6svg6).</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>can be read</source>
        <translation>se puede leer</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>icons</source>
        <translation>iconos</translation>
    </message>
    <message>
        <source>are drawn</source>
        <translation>se dibujan</translation>
    </message>
    <message>
        <source>are not drawn</source>
        <translation>no se dibujan</translation>
    </message>
    <message>
        <source>Buttons have words alone. Install the program anew.</source>
        <translation>Los botones solo tienen palabras. Instale de nuevo el programa.</translation>
    </message>
    <message>
        <source>region of the desktop</source>
        <translation>región del escritorio</translation>
    </message>
    <message>
        <source>%1, decimal sign %2</source>
        <translation>%1, signo decimal %2</translation>
    </message>
    <message>
        <source>language</source>
        <translation>idioma</translation>
    </message>
    <message>
        <source>paper of reports</source>
        <translation>papel de los informes</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versiones</translation>
    </message>
    <message>
        <source>%1, built with %2</source>
        <translation>%1, compilado con %2</translation>
    </message>
    <message>
        <source>It is older than the one that the program was built with. Bring the system up to date.</source>
        <translation>Es más antigua que aquella con la que se compiló el programa. Actualice el sistema.</translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>system</source>
        <translation>sistema</translation>
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
        <translation>hallado</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>Missing: %1.</source>
        <translation>Falta: %1.</translation>
    </message>
    <message>
        <source>All is there.</source>
        <translation>Está todo.</translation>
    </message>
    <message>
        <source>Check of the installation: %1</source>
        <translation>Comprobación de la instalación: %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>what the meter&apos;s register counted at the socket, in Wh, with ± at 95 %</source>
        <translation>lo que contó el registro del contador en la toma, en Wh, con ± al 95 %</translation>
    </message>
    <message>
        <source>delivered energy from full to cut-off over rated energy, at the load of that run</source>
        <translation>energía entregada de lleno a corte entre energía asignada, a la carga de ese ensayo</translation>
    </message>
    <message>
        <source>power that the unit takes for itself while its output is on, in W, seen from the socket</source>
        <translation>potencia que el equipo toma para sí con la salida encendida, en W, vista desde la toma</translation>
    </message>
    <message>
        <source>deliverable energy</source>
        <translation>energía entregable</translation>
    </message>
    <message>
        <source>what the unit would deliver at a load at which it was not drained, from all its drains</source>
        <translation>lo que entregaría el equipo a una carga a la que no se descargó, según todas sus descargas</translation>
    </message>
    <message>
        <source>difference ±</source>
        <translation>diferencia ±</translation>
    </message>
    <message>
        <source>the two are clearly different where its 95 % interval does not hold 0; else nobody can say from these meters which unit is better</source>
        <translation>los dos son claramente distintos si su intervalo del 95 % no contiene el 0; si no, con estos contadores nadie puede decir qué equipo es mejor</translation>
    </message>
    <message>
        <source>What the quantities mean</source>
        <translation>Qué significan las magnitudes</translation>
    </message>
    <message>
        <source>Three units of the sample logbook (Logbook, Open the sample logbook) as the comparison page shows them. Units and readings are invented; the figures are worked out as you read.</source>
        <translation>Tres equipos del cuaderno de ejemplo (Cuaderno, Abrir el cuaderno de ejemplo) tal como los muestra la página de comparación. Equipos y lecturas son inventados; las cifras se calculan mientras usted lee.</translation>
    </message>
    <message>
        <source>store the reading in the entry row</source>
        <translation>guardar la lectura de la fila de entrada</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>next or previous field</source>
        <translation>campo siguiente o anterior</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Mayús+Tab</translation>
    </message>
    <message>
        <source>clear the entry row</source>
        <translation>vaciar la fila de entrada</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>answer a doubt: as meant, keep, correct, reset, swapped</source>
        <translation>responder a una duda: lo que se quiso decir, mantener, corregir, puesta a cero, cambiado</translation>
    </message>
    <message>
        <source>M, K, C, Z, W</source>
        <translation>M, K, C, Z, W</translation>
    </message>
    <message>
        <source>take the reading of that card</source>
        <translation>tomar la lectura de esa tarjeta</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 a 9</translation>
    </message>
    <message>
        <source>dim the display: by the hours, always, never</source>
        <translation>atenuar la pantalla: por horas, siempre, nunca</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>deshacer el último paso</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>leave the entry, then the display</source>
        <translation>salir de la entrada y después de la pantalla</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Entering a reading</source>
        <translation>Introducir una lectura</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Ha pasado algo</translation>
    </message>
    <message>
        <source>Tests and reminders</source>
        <translation>Ensayos y recordatorios</translation>
    </message>
    <message>
        <source>Bench display</source>
        <translation>Pantalla de banco</translation>
    </message>
    <message>
        <source>Keys at the bench</source>
        <translation>Teclas en el banco</translation>
    </message>
    <message>
        <source>key</source>
        <translation>tecla</translation>
    </message>
    <message>
        <source>what it does</source>
        <translation>qué hace</translation>
    </message>
    <message>
        <source>Always.</source>
        <translation>Siempre.</translation>
    </message>
    <message>
        <source>Rows left out or taken with a doubt</source>
        <translation>Filas omitidas o tomadas con dudas</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>the row as it stands</source>
        <translation>la fila tal como está</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>omitida: %1</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>tomada: %1</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>hueco</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 row: %2 taken, %3 left out</source>
        <translation>%1 fila: %2 tomadas, %3 omitidas</translation>
    </message>
    <message>
        <source>%1 rows: %2 taken, %3 left out</source>
        <translation>%1 filas: %2 tomadas, %3 omitidas</translation>
    </message>
    <message>
        <source>; usually %1 s apart</source>
        <translation>; por lo general cada %1 s</translation>
    </message>
    <message>
        <source>; %1 gap longer than %2 s</source>
        <translation>; %1 hueco de más de %2 s</translation>
    </message>
    <message>
        <source>; %1 gaps longer than %2 s</source>
        <translation>; %1 huecos de más de %2 s</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre las %1 y las %2</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1 %2: %3.</translation>
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
        <translation>del portapapeles</translation>
    </message>
    <message>
        <source>hours since the first reading</source>
        <translation>horas desde la primera lectura</translation>
    </message>
    <message>
        <source>gauge / %</source>
        <translation>indicador / %</translation>
    </message>
    <message>
        <source>No reading has a gauge or a register.</source>
        <translation>Ninguna lectura tiene indicador ni registro.</translation>
    </message>
    <message>
        <source>, calibrated</source>
        <translation>, calibrado</translation>
    </message>
    <message>
        <source>… and more, which Save and Copy take whole</source>
        <translation>… y más, que Guardar y Copiar toman entero</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>elija…</translation>
    </message>
    <message>
        <source>Not known of %1: %2 (%3).</source>
        <translation>No se conoce de %1: %2 (%3).</translation>
    </message>
    <message>
        <source>Each other cell tells its reason when pointed at.</source>
        <translation>Las demás celdas dicen su motivo al señalarlas.</translation>
    </message>
    <message>
        <source>nothing since %1</source>
        <translation>nada desde las %1</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;All files (*)</source>
        <translation>Tablas (*.csv *.tsv *.txt *.xlsx *.ods *.html *.htm);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>charts</source>
        <translation>gráficos</translation>
    </message>
    <message>
        <source>times of photos</source>
        <translation>horas de las fotos</translation>
    </message>
    <message>
        <source>workbooks that are written</source>
        <translation>libros de cálculo que se escriben</translation>
    </message>
    <message>
        <source>workbooks that are read</source>
        <translation>libros de cálculo que se leen</translation>
    </message>
    <message>
        <source>tables of pages</source>
        <translation>tablas de páginas web</translation>
    </message>
    <message>
        <source>meters by Modbus</source>
        <translation>contadores por Modbus</translation>
    </message>
    <message>
        <source>meters on serial lines</source>
        <translation>contadores en líneas serie</translation>
    </message>
    <message>
        <source>The page of a run</source>
        <translation>La página de un ensayo</translation>
    </message>
    <message>
        <source>Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and log stand in the tabs; what the readings say stands below.</source>
        <translation>Escriba lo que muestran el indicador y el registro en la fila bajo las lecturas y pulse Intro. Si un valor es dudoso, se le pregunta; no se anota nada antes de que usted responda. F3 a F7 anotan un suceso al instante; F8 termina el ensayo. Los gráficos, la incertidumbre y la grabación están en las pestañas; lo que dicen las lecturas está debajo.</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Ensayos en curso</translation>
    </message>
    <message>
        <source>All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 shows them over the whole screen, to be read from two metres.</source>
        <translation>Todos los ensayos en curso, uno junto a otro: por dónde va cada uno, cuándo se prevé su corte y cuándo toca su próxima lectura. F11 los muestra en toda la pantalla, legibles a dos metros.</translation>
    </message>
    <message>
        <source>The page of a unit</source>
        <translation>La página de un equipo</translation>
    </message>
    <message>
        <source>What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run (Ctrl+R) begins one.</source>
        <translation>Lo que dicen juntos todos los ensayos del equipo, sus datos declarados frente a lo ensayado y el próximo ensayo que conviene hacer. Iniciar ensayo (Ctrl+R) comienza uno.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they cannot tell apart share a rank.</source>
        <translation>Equipos uno junto a otro, según ensayo o a una misma carga. La frase de arriba dice qué orden distinguen los contadores; los equipos que no pueden distinguir comparten puesto.</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Dimensionado</translation>
    </message>
    <message>
        <source>How many days each unit carries a load list, how many units that takes, and which PV array.</source>
        <translation>Cuántos días alimenta cada equipo una lista de cargas, cuántos equipos hacen falta y qué generador FV.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listas de cargas</translation>
    </message>
    <message>
        <source>Appliances that a unit is to feed: what each takes while on, how long a day, and when.</source>
        <translation>Aparatos que un equipo ha de alimentar: qué consume cada uno en marcha, cuánto tiempo al día y cuándo.</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation>Entrada FV</translation>
    </message>
    <message>
        <source>Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.</source>
        <translation>Si una cadena de módulos es apta para la entrada FV de un equipo, en frío y en caliente. Las cadenas FV están en tensión siempre que hay luz.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Contadores</translation>
    </message>
    <message>
        <source>What is stated of each meter. Without its error limit no interval can be stated.</source>
        <translation>Lo que está indicado de cada contador. Sin su límite de error no se puede dar ningún intervalo.</translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <comment>%n photo</comment>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>second register %1 Wh</source>
        <translation>segundo registro %1 Wh</translation>
    </message>
    <message>
        <source>meter showed %1 W</source>
        <translation>el contador mostraba %1 W</translation>
    </message>
    <message>
        <source>unit showed %1 W</source>
        <translation>el equipo mostraba %1 W</translation>
    </message>
    <message numerus="yes">
        <source>%n tests</source>
        <comment>%n test</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <comment>%n run</comment>
        <translation>
            <numerusform>%n ensayo</numerusform>
            <numerusform>%n ensayos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n meters</source>
        <comment>%n meter</comment>
        <translation>
            <numerusform>%n contador</numerusform>
            <numerusform>%n contadores</numerusform>
        </translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>a time of day</comment>
        <translation>a las %1</translation>
    </message>
    <message numerus="yes">
        <source>%n load lists</source>
        <comment>%n load list</comment>
        <translation>
            <numerusform>%n lista de cargas</numerusform>
            <numerusform>%n listas de cargas</numerusform>
        </translation>
    </message>
    <message>
        <source>folder of the logbook</source>
        <translation>carpeta del cuaderno</translation>
    </message>
    <message>
        <source>access to kept passwords</source>
        <translation>acceso a contraseñas guardadas</translation>
    </message>
    <message>
        <source>Missing: %1. Notes on: %2.</source>
        <translation>Falta: %1. Notas sobre: %2.</translation>
    </message>
    <message>
        <source>Nothing that the program needs is missing. Notes on: %1.</source>
        <translation>No falta nada de lo que necesita el programa. Notas sobre: %1.</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>atascado</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>salto</translation>
    </message>
    <message>
        <source>rebound</source>
        <translation>rebote</translation>
    </message>
    <message>
        <source>at %1: %2</source>
        <translation>a las %1: %2</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>Usable fraction, the gauge&apos;s errors and losses: this kind of run (%1) does not tell them; make a drain.</source>
        <translation>Fracción útil, errores del indicador y pérdidas: esta clase de ensayo (%1) no los dice; haga una descarga.</translation>
    </message>
    <message>
        <source>from vessel to vessel, each with its figures</source>
        <translation>de depósito en depósito, con las cifras de cada uno</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Izquierda, Derecha</translation>
    </message>
    <message>
        <source>it is for another host</source>
        <translation>es para otro host</translation>
    </message>
    <message>
        <source>it has expired</source>
        <translation>ha caducado</translation>
    </message>
    <message>
        <source>it is not valid yet</source>
        <translation>todavía no es válido</translation>
    </message>
    <message>
        <source>no authority that this machine trusts has signed it</source>
        <translation>no lo ha firmado ninguna autoridad en la que confíe esta máquina</translation>
    </message>
    <message>
        <source>no address is known for the name %1 (%2)</source>
        <translation>no se conoce ninguna dirección para el nombre %1 (%2)</translation>
    </message>
    <message>
        <source>check how it is written, and the network</source>
        <translation>compruebe cómo está escrito, y la red</translation>
    </message>
    <message>
        <source>no connection to %1, port %2: %3</source>
        <translation>sin conexión con %1, puerto %2: %3</translation>
    </message>
    <message>
        <source>nothing came within %1 s</source>
        <translation>no llegó nada en %1 s</translation>
    </message>
    <message>
        <source>its certificate does not hold (%1)</source>
        <translation>su certificado no es válido (%1)</translation>
    </message>
    <message>
        <source>check that it is switched on, and its host and port</source>
        <translation>compruebe que está encendido, y el host y el puerto</translation>
    </message>
    <message>
        <source>give it a certificate that is in date, for the host that you typed and from an authority that this machine trusts</source>
        <translation>dele un certificado sin caducar, para el host que usted escribió y de una autoridad en la que confíe esta máquina</translation>
    </message>
    <message>
        <source>part of the program</source>
        <translation>parte del programa</translation>
    </message>
    <message>
        <source>cannot be loaded</source>
        <translation>no se puede cargar</translation>
    </message>
</context>
<context>
    <name>ullage::AccountsView</name>
    <message>
        <source>If the gauge is right</source>
        <translation>Si el indicador acierta</translation>
    </message>
    <message>
        <source>If the gauge is wrong</source>
        <translation>Si el indicador se equivoca</translation>
    </message>
    <message>
        <source>Gauge right, gauge wrong</source>
        <translation>El indicador acierta o se equivoca</translation>
    </message>
    <message>
        <source>Ruled out: %1</source>
        <translation>Descartado: %1</translation>
    </message>
    <message>
        <source>What decides: %1</source>
        <translation>Lo que decide: %1</translation>
    </message>
</context>
<context>
    <name>ullage::AddressWalk</name>
    <message>
        <source>%1 at %2</source>
        <comment>what happened, address</comment>
        <translation>%1 en %2</translation>
    </message>
</context>
<context>
    <name>ullage::AmendDialog</name>
    <message>
        <source>Amend reading</source>
        <translation>Enmendar lectura</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Gauge, %</source>
        <translation>Indicador, %</translation>
    </message>
    <message>
        <source>Register, Wh</source>
        <translation>Registro, Wh</translation>
    </message>
    <message>
        <source>Second register, Wh</source>
        <translation>Segundo registro, Wh</translation>
    </message>
    <message>
        <source>Meter power, W</source>
        <translation>Potencia del contador, W</translation>
    </message>
    <message>
        <source>Unit&apos;s display, W</source>
        <translation>Pantalla del equipo, W</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>sin marca</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Why it changes</source>
        <translation>Por qué cambia</translation>
    </message>
    <message>
        <source>for example: misread in the dark</source>
        <translation>por ejemplo: mal leído a oscuras</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Dejar como está</translation>
    </message>
    <message>
        <source>Amend</source>
        <translation>Enmendar</translation>
    </message>
</context>
<context>
    <name>ullage::AnalyseUnits</name>
    <message>
        <source>Analysing %1 readings</source>
        <translation>Analizando %1 lecturas</translation>
    </message>
</context>
<context>
    <name>ullage::AnswerView</name>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
</context>
<context>
    <name>ullage::ApplianceForm</name>
    <message>
        <source>Add appliance to %1</source>
        <translation>Añadir aparato a %1</translation>
    </message>
    <message>
        <source>Appliance %1</source>
        <translation>Aparato %1</translation>
    </message>
    <message>
        <source>Add appliance</source>
        <translation>Añadir aparato</translation>
    </message>
    <message>
        <source>Save appliance</source>
        <translation>Guardar aparato</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>such as: lamp</source>
        <translation>por ejemplo: lámpara</translation>
    </message>
    <message>
        <source>How &amp;many alike</source>
        <translation>Cuántos &amp;iguales</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>What one of them takes</source>
        <translation>Qué consume uno de ellos</translation>
    </message>
    <message>
        <source>&amp;Power while on</source>
        <translation>&amp;Potencia en marcha</translation>
    </message>
    <message>
        <source>9 W</source>
        <translation>9 W</translation>
    </message>
    <message>
        <source>&amp;Duty, share of the time on</source>
        <translation>&amp;Factor de marcha, parte del tiempo</translation>
    </message>
    <message>
        <source>100 %; a refrigerator some 35 %</source>
        <translation>100 %; un frigorífico, un 35 %</translation>
    </message>
    <message>
        <source>&amp;Or as measured in use</source>
        <translation>&amp;O lo medido en uso</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>energía</translation>
    </message>
    <message>
        <source>500 Wh</source>
        <translation>500 Wh</translation>
    </message>
    <message>
        <source>over</source>
        <translation>durante</translation>
    </message>
    <message>
        <source>24 h</source>
        <translation>24 h</translation>
    </message>
    <message>
        <source>Highest power of its &amp;start</source>
        <translation>Potencia máxima de &amp;arranque</translation>
    </message>
    <message>
        <source>no more than while on</source>
        <translation>no más que en marcha</translation>
    </message>
    <message>
        <source>When it is in use</source>
        <translation>Cuándo se usa</translation>
    </message>
    <message>
        <source>&amp;Hours per day</source>
        <translation>&amp;Horas al día</translation>
    </message>
    <message>
        <source>5 h</source>
        <translation>5 h</translation>
    </message>
    <message>
        <source>Of these at ni&amp;ght</source>
        <translation>De ellas, de no&amp;che</translation>
    </message>
    <message>
        <source>0 h</source>
        <translation>0 h</translation>
    </message>
    <message>
        <source>&amp;Output of the unit</source>
        <translation>&amp;Salida del equipo</translation>
    </message>
    <message>
        <source>on while it is in use</source>
        <translation>encendida mientras se usa</translation>
    </message>
    <message>
        <source>always on for it</source>
        <translation>siempre encendida para él</translation>
    </message>
    <message>
        <source>The appliance needs a name.</source>
        <translation>El aparato necesita un nombre.</translation>
    </message>
    <message>
        <source>Enter a whole number, 1 to %1.</source>
        <translation>Introduzca un número entero, de 1 a %1.</translation>
    </message>
    <message>
        <source>The duty is a share of the time: more than 0 %, at most 100 %.</source>
        <translation>El factor de marcha es una parte del tiempo: más de 0 % y 100 % como máximo.</translation>
    </message>
    <message>
        <source>Say over how many hours that energy was measured.</source>
        <translation>Indique durante cuántas horas se midió esa energía.</translation>
    </message>
    <message>
        <source>Say how much energy was measured over those hours.</source>
        <translation>Indique cuánta energía se midió en esas horas.</translation>
    </message>
    <message>
        <source>Enter its power while on, or below what it took over some hours.</source>
        <translation>Introduzca su potencia en marcha o, debajo, lo que consumió en unas horas.</translation>
    </message>
    <message>
        <source>That is %1 W on average, more than its power while on. Correct one of the two.</source>
        <translation>Eso son %1 W de media, más que su potencia en marcha. Corrija uno de los dos.</translation>
    </message>
    <message>
        <source>The start is below its power while on; leave it empty where nothing more is taken.</source>
        <translation>El arranque está por debajo de su potencia en marcha; déjelo vacío si no toma más.</translation>
    </message>
    <message>
        <source>Say for how many hours of a day it is in use.</source>
        <translation>Indique cuántas horas al día se usa.</translation>
    </message>
    <message>
        <source>A day has 24 h: enter more than 0 h, at most 24 h.</source>
        <translation>Un día tiene 24 h: introduzca más de 0 h y 24 h como máximo.</translation>
    </message>
    <message>
        <source>At most its hours per day lie at night.</source>
        <translation>De noche caen, como máximo, sus horas al día.</translation>
    </message>
</context>
<context>
    <name>ullage::BenchController</name>
    <message>
        <source>Nothing to snooze: the next reading of %1 is due only in %2 minutes.</source>
        <translation>Nada que aplazar: la próxima lectura de %1 no toca hasta dentro de %2 minutos.</translation>
    </message>
    <message>
        <source>Nothing to snooze: no reading of %1 is due.</source>
        <translation>Nada que aplazar: no hay lectura pendiente de %1.</translation>
    </message>
    <message>
        <source>next reading %1</source>
        <translation>próxima lectura %1</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sin recordatorio</translation>
    </message>
</context>
<context>
    <name>ullage::BenchDisplay</name>
    <message>
        <source>Running tests</source>
        <translation>Ensayos en curso</translation>
    </message>
    <message>
        <source>%1, Ctrl+Z takes it back</source>
        <translation>%1, Ctrl+Z lo deshace</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 lectura</translation>
    </message>
    <message>
        <source>1 to %1 reading</source>
        <translation>1 a %1 lectura</translation>
    </message>
    <message>
        <source>N %1</source>
        <translation>N %1</translation>
    </message>
    <message>
        <source>Esc back</source>
        <translation>Esc volver</translation>
    </message>
    <message>
        <source>No test is running. Esc goes back; Ctrl+R starts one there.</source>
        <translation>No hay ningún ensayo en curso. Esc vuelve; Ctrl+R inicia uno allí.</translation>
    </message>
</context>
<context>
    <name>ullage::BenchPage</name>
    <message>
        <source>No test is running. Start one: it then stands here with its gauge, its expected cut-off and its next reading until you end it, beside the others that run.</source>
        <translation>No hay ningún ensayo en curso. Inicie uno: estará aquí, con su indicador, su corte previsto y su próxima lectura, hasta que lo termine, junto a los demás en curso.</translation>
    </message>
    <message>
        <source>Full screen  F11</source>
        <translation>Pantalla completa  F11</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Iniciar ensayo</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Ensayos en curso</translation>
    </message>
    <message>
        <source>A card for each running test over the whole screen, to be read from two metres</source>
        <translation>Una tarjeta por ensayo en curso en toda la pantalla, legible a dos metros</translation>
    </message>
    <message>
        <source>%1, %2 with a reading due</source>
        <translation>%1, %2 con lectura pendiente</translation>
    </message>
</context>
<context>
    <name>ullage::BenchPanel</name>
    <message>
        <source>Enter reading</source>
        <translation>Introducir lectura</translation>
    </message>
    <message>
        <source>Next reading…</source>
        <translation>Próxima lectura…</translation>
    </message>
    <message>
        <source>Snooze %1 min</source>
        <translation>Aplazar %1 min</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>aún no toca</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sin recordatorio</translation>
    </message>
    <message>
        <source>Enter reading of %1</source>
        <translation>Introducir lectura de %1</translation>
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
tipo %2, %3</translation>
    </message>
    <message>
        <source>source
sensitivity</source>
        <translation>fuente
sensibilidad</translation>
    </message>
    <message>
        <source>shape
type, freedom</source>
        <translation>forma
tipo, libertad</translation>
    </message>
    <message>
        <source>correlation</source>
        <translation>correlación</translation>
    </message>
    <message>
        <source>standard
Wh</source>
        <translation>típica
Wh</translation>
    </message>
    <message>
        <source>share
%</source>
        <translation>parte
%</translation>
    </message>
</context>
<context>
    <name>ullage::BudgetView</name>
    <message>
        <source>Uncertainty budget of the delivered energy</source>
        <translation>Presupuesto de incertidumbre de la energía entregada</translation>
    </message>
    <message>
        <source>No budget yet: it needs two readings of the meter&apos;s register.</source>
        <translation>Aún no hay presupuesto: requiere dos lecturas del registro del contador.</translation>
    </message>
    <message>
        <source> 95 % interval: ± %1 Wh</source>
        <translation> Intervalo del 95 %: ± %1 Wh</translation>
    </message>
</context>
<context>
    <name>ullage::Builder</name>
    <message>
        <source>hours since start</source>
        <translation>horas desde el inicio</translation>
    </message>
    <message>
        <source>by the log</source>
        <translation>por la grabación</translation>
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
        <translation>precio de un kWh</translation>
    </message>
    <message>
        <source>What the unit takes for itself</source>
        <translation>Lo que el equipo toma para sí</translation>
    </message>
    <message>
        <source>Price of a &amp;kWh</source>
        <translation>Precio del &amp;kWh</translation>
    </message>
    <message>
        <source>The price of a kWh is no number of 0 or more; enter it like 0.30.</source>
        <translation>El precio del kWh no es un número de 0 o más; escríbalo como 0,30.</translation>
    </message>
    <message>
        <source>Output on</source>
        <translation>Salida encendida</translation>
    </message>
    <message>
        <source>Output off</source>
        <translation>Salida apagada</translation>
    </message>
</context>
<context>
    <name>ullage::ColumnsDialog</name>
    <message>
        <source>Columns</source>
        <translation>Columnas</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Usar estas</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Conjunto</translation>
    </message>
    <message>
        <source>&amp;Remove this set</source>
        <translation>&amp;Quitar este conjunto</translation>
    </message>
    <message>
        <source>&amp;Up</source>
        <translation>&amp;Subir</translation>
    </message>
    <message>
        <source>&amp;Down</source>
        <translation>&amp;Bajar</translation>
    </message>
    <message>
        <source>&amp;Keep as</source>
        <translation>&amp;Guardar como</translation>
    </message>
    <message>
        <source>a name, to keep these columns as a set of yours</source>
        <translation>un nombre, para guardar este conjunto</translation>
    </message>
    <message>
        <source>The table on the page, its copies, exports and reports have these columns, from left to right. At one load the figures there stand in place of those as tested.</source>
        <translation>La tabla de la página, sus copias, exportaciones e informes tienen estas columnas, de izquierda a derecha. A una misma carga, las cifras a esa carga sustituyen a las de según ensayo.</translation>
    </message>
    <message>
        <source>as ticked below</source>
        <translation>como están marcadas abajo</translation>
    </message>
    <message>
        <source>for readers</source>
        <translation>para lectores</translation>
    </message>
    <message>
        <source>for a spreadsheet: all columns</source>
        <translation>para hoja de cálculo: todas</translation>
    </message>
    <message>
        <source>%1 (yours: not for readers)</source>
        <translation>%1 (suya: no para lectores)</translation>
    </message>
    <message>
        <source>No column is ticked: tick at least one.</source>
        <translation>No hay ninguna columna marcada: marque al menos una.</translation>
    </message>
    <message>
        <source>This name belongs to a ready set; choose another.</source>
        <translation>Ese nombre es de un conjunto ya hecho; elija otro.</translation>
    </message>
</context>
<context>
    <name>ullage::ComparingBar</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Units compared</source>
        <translation>Equipos comparados</translation>
    </message>
    <message>
        <source>Comparing units: %1 of %2</source>
        <translation>Comparando equipos: %1 de %2</translation>
    </message>
    <message>
        <source>Stopped: %1 units are still to be compared. What stands below is as it was before.</source>
        <translation>Detenido: quedan %1 equipos por comparar. Lo de abajo está como antes.</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonChoice</name>
    <message>
        <source>As tested</source>
        <translation>Según ensayo</translation>
    </message>
    <message>
        <source>At one load</source>
        <translation>A una carga</translation>
    </message>
    <message>
        <source>At a load list</source>
        <translation>A una lista</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Lista de cargas</translation>
    </message>
    <message>
        <source>Its mean power while the unit&apos;s output is on; Edit, Load lists has them in full</source>
        <translation>Su potencia media con la salida del equipo encendida; Editar, Listas de cargas las tiene completas</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>on for</source>
        <translation>activa el</translation>
    </message>
    <message>
        <source> % of time</source>
        <translation> % del tiempo</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source> % of rated</source>
        <translation> % de la asignada</translation>
    </message>
    <message>
        <source>only units whose name, maker or remark has these words</source>
        <translation>solo equipos cuyo nombre, fabricante u observación tenga estas palabras</translation>
    </message>
    <message>
        <source>Filter of units</source>
        <translation>Filtro de equipos</translation>
    </message>
    <message>
        <source>Tag of units</source>
        <translation>Etiqueta de equipos</translation>
    </message>
    <message>
        <source>Only units with this tag; tags are given in a unit&apos;s claims</source>
        <translation>Solo equipos con esta etiqueta; las etiquetas se ponen en los datos declarados del equipo</translation>
    </message>
    <message>
        <source>rated from</source>
        <translation>asignada desde</translation>
    </message>
    <message>
        <source> Wh</source>
        <translation> Wh</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>%1, %2 W</source>
        <translation>%1, %2 W</translation>
    </message>
    <message>
        <source>any tag</source>
        <translation>cualquier etiqueta</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonController</name>
    <message>
        <source>Add units of another logbook</source>
        <translation>Añadir equipos de otro cuaderno</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonPage</name>
    <message>
        <source>Columns…</source>
        <translation>Columnas…</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Copiar tabla</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportar…</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>The units are not compared yet.</source>
        <translation>Los equipos aún no están comparados.</translation>
    </message>
    <message>
        <source>The units are not compared yet; the line above them says how far that is.</source>
        <translation>Los equipos aún no están comparados; la línea de encima dice cuánto falta.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>filas</translation>
    </message>
    <message>
        <source>one for each unit</source>
        <translation>una por equipo</translation>
    </message>
    <message>
        <source>every drain</source>
        <translation>cada descarga</translation>
    </message>
    <message>
        <source>Which columns the table has, here and in all that leaves the page</source>
        <translation>Qué columnas tiene la tabla, aquí y en todo lo que sale de la página</translation>
    </message>
    <message>
        <source>The table as it is shown, for a spreadsheet</source>
        <translation>La tabla tal como se muestra, para una hoja de cálculo</translation>
    </message>
    <message>
        <source>Pictures of the comparison</source>
        <translation>Imágenes de la comparación</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fracción útil</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>Models</source>
        <translation>Modelos</translation>
    </message>
    <message>
        <source>Against load</source>
        <translation>Según la carga</translation>
    </message>
    <message>
        <source>Gauge errors</source>
        <translation>Errores del indicador</translation>
    </message>
    <message>
        <source>how much more or less the unit of a row has in</source>
        <translation>cuánto más o menos tiene el equipo de una fila en</translation>
    </message>
    <message>
        <source>Figure in which units are held against each other</source>
        <translation>Cifra en la que se comparan los equipos</translation>
    </message>
    <message>
        <source>Differences between units</source>
        <translation>Diferencias entre equipos</translation>
    </message>
    <message>
        <source>Comparison of the units</source>
        <translation>Comparación de los equipos</translation>
    </message>
    <message>
        <source>The table is on the clipboard, ready to be pasted into a spreadsheet.</source>
        <translation>La tabla está en el portapapeles, lista para pegarla en una hoja de cálculo.</translation>
    </message>
    <message>
        <source>Columns for readers</source>
        <translation>Columnas para lectores</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>depósitos</translation>
    </message>
    <message>
        <source>usable fraction</source>
        <translation>fracción útil</translation>
    </message>
    <message>
        <source>Models by their specimens</source>
        <translation>Modelos por sus ejemplares</translation>
    </message>
</context>
<context>
    <name>ullage::ComparisonPresenter</name>
    <message>
        <source>This run is in %1; open that logbook to see it.</source>
        <translation>Este ensayo está en %1; abra ese cuaderno para verlo.</translation>
    </message>
    <message>
        <source>no drains to show</source>
        <translation>no hay descargas que mostrar</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>as tested</source>
        <translation>según ensayo</translation>
    </message>
    <message>
        <source>%1 units, %2 drains, %3</source>
        <translation>%1 equipos, %2 descargas, %3</translation>
    </message>
    <message>
        <source>Left out: %1
</source>
        <translation>Omitido: %1
</translation>
    </message>
    <message>
        <source>Of %1 rows the %2 with the largest usable fraction; filter to see others.</source>
        <translation>De %1 filas, las %2 con mayor fracción útil; filtre para ver otras.</translation>
    </message>
</context>
<context>
    <name>ullage::Controller</name>
    <message>
        <source>Logbooks (*.ullage);;All files (*)</source>
        <translation>Cuadernos (*.ullage);;Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>ullage::CopiesController</name>
    <message>
        <source>Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)</source>
        <translation>Cuadernos y sus copias (*.ullage *.ullage-copy);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>No automatic copy of the logbook was made. %1</source>
        <translation>No se ha hecho ninguna copia automática del cuaderno. %1</translation>
    </message>
    <message>
        <source>Copies of which logbook</source>
        <translation>Copias de qué cuaderno</translation>
    </message>
    <message>
        <source>%1 of a copy.ullage</source>
        <translation>%1 de una copia.ullage</translation>
    </message>
    <message>
        <source>There is no copy of %1 beside it.</source>
        <translation>Junto a %1 no hay ninguna copia suya.</translation>
    </message>
    <message>
        <source>There is no copy of %1 in %2.</source>
        <translation>No hay ninguna copia de %1 en %2.</translation>
    </message>
    <message>
        <source>%1 as of %2.ullage</source>
        <translation>%1 a %2.ullage</translation>
    </message>
    <message>
        <source>Looking at the copy</source>
        <translation>Consultando la copia</translation>
    </message>
    <message>
        <source>Not looked at.</source>
        <translation>No se ha consultado.</translation>
    </message>
    <message>
        <source>It holds %1 and %2, without readings.</source>
        <comment>units and runs</comment>
        <translation>Contiene %1 y %2, sin lecturas.</translation>
    </message>
    <message>
        <source>It holds %1 and %2; the last reading is of %3, %4.</source>
        <comment>units, runs, day and time</comment>
        <translation>Contiene %1 y %2; la última lectura es del %3, %4.</translation>
    </message>
    <message>
        <source>Save the copy as a logbook</source>
        <translation>Guardar la copia como cuaderno</translation>
    </message>
    <message>
        <source>Saving %1</source>
        <translation>Guardando %1</translation>
    </message>
</context>
<context>
    <name>ullage::CopiesForm</name>
    <message>
        <source>Copies of %1</source>
        <translation>Copias de %1</translation>
    </message>
    <message>
        <source>Save as a logbook…</source>
        <translation>Guardar como cuaderno…</translation>
    </message>
    <message>
        <source>&amp;What it holds</source>
        <translation>&amp;Qué contiene</translation>
    </message>
    <message>
        <source>A copy is saved as a logbook of its own, which is then opened. The copy and the logbook stay as they are.</source>
        <translation>Una copia se guarda como cuaderno aparte, que se abre a continuación. La copia y el cuaderno quedan como están.</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Copias</translation>
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
        <translation>próxima lectura</translation>
    </message>
    <message>
        <source>%1, no reading yet</source>
        <translation>%1, aún sin lectura</translation>
    </message>
    <message>
        <source>look now</source>
        <translation>mire ya</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>aún no toca</translation>
    </message>
    <message>
        <source>no reminder</source>
        <translation>sin recordatorio</translation>
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
        <translation>indicador, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>registro, Wh</translation>
    </message>
    <message>
        <source>second register, Wh</source>
        <translation>segundo registro, Wh</translation>
    </message>
    <message>
        <source>Enter records, Esc goes back.</source>
        <translation>Intro anota, Esc vuelve.</translation>
    </message>
    <message>
        <source>With what is half typed on its page: %1. Enter records, Esc goes back.</source>
        <translation>Con lo que está a medio escribir en su página: %1. Intro anota, Esc vuelve.</translation>
    </message>
    <message>
        <source>What is typed here is not on the disk. %1</source>
        <translation>Lo escrito aquí no está en el disco. %1</translation>
    </message>
</context>
<context>
    <name>ullage::Document</name>
    <message>
        <source>edit method</source>
        <translation>editar el método</translation>
    </message>
    <message>
        <source>edit publisher&apos;s details</source>
        <translation>editar los datos de quien publica</translation>
    </message>
    <message>
        <source>end run</source>
        <translation>terminar ensayo</translation>
    </message>
    <message>
        <source>Ended: run</source>
        <translation>Terminado: ensayo</translation>
    </message>
    <message>
        <source>import folder</source>
        <translation>importar carpeta</translation>
    </message>
    <message>
        <source>Imported %1</source>
        <translation>Importado: %1</translation>
    </message>
    <message>
        <source>add load list %1</source>
        <translation>añadir lista de cargas %1</translation>
    </message>
    <message>
        <source>Added load list %1</source>
        <translation>Añadida: lista de cargas %1</translation>
    </message>
    <message>
        <source>edit load list %1</source>
        <translation>editar lista de cargas %1</translation>
    </message>
    <message>
        <source>Changed load list %1</source>
        <translation>Cambiada: lista de cargas %1</translation>
    </message>
    <message>
        <source>withdraw load list %1</source>
        <translation>retirar lista de cargas %1</translation>
    </message>
    <message>
        <source>Withdrawn: load list %1</source>
        <translation>Retirada: lista de cargas %1</translation>
    </message>
    <message>
        <source>Changed method</source>
        <translation>Cambiado: método</translation>
    </message>
    <message>
        <source>attach photo</source>
        <translation>adjuntar foto</translation>
    </message>
    <message>
        <source>Attached photo</source>
        <translation>Adjuntada: foto</translation>
    </message>
    <message>
        <source>withdraw photo</source>
        <translation>retirar foto</translation>
    </message>
    <message>
        <source>Withdrawn: photo</source>
        <translation>Retirada: foto</translation>
    </message>
    <message>
        <source>Changed publisher&apos;s details</source>
        <translation>Cambiado: datos de quien publica</translation>
    </message>
    <message>
        <source>add PV sheet %1</source>
        <translation>añadir hoja FV %1</translation>
    </message>
    <message>
        <source>Added PV sheet %1</source>
        <translation>Añadida: hoja FV %1</translation>
    </message>
    <message>
        <source>edit PV sheet %1</source>
        <translation>editar hoja FV %1</translation>
    </message>
    <message>
        <source>Changed PV sheet %1</source>
        <translation>Cambiada: hoja FV %1</translation>
    </message>
    <message>
        <source>withdraw PV sheet %1</source>
        <translation>retirar hoja FV %1</translation>
    </message>
    <message>
        <source>Withdrawn: PV sheet %1</source>
        <translation>Retirada: hoja FV %1</translation>
    </message>
    <message>
        <source>mark of %1</source>
        <translation>marca de %1</translation>
    </message>
    <message>
        <source>reading of %1</source>
        <translation>lectura de %1</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>anotar %1</translation>
    </message>
    <message>
        <source>Recorded %1</source>
        <translation>Anotado: %1</translation>
    </message>
    <message>
        <source>amend %1</source>
        <translation>enmendar %1</translation>
    </message>
    <message>
        <source>Amended to %1</source>
        <translation>Enmendado a %1</translation>
    </message>
    <message>
        <source>withdraw %1</source>
        <translation>retirar %1</translation>
    </message>
    <message>
        <source>Withdrawn: %1</source>
        <translation>Retirado: %1</translation>
    </message>
    <message>
        <source>edit run</source>
        <translation>editar ensayo</translation>
    </message>
    <message>
        <source>Changed run</source>
        <translation>Cambiado: ensayo</translation>
    </message>
    <message>
        <source>reopen run</source>
        <translation>reabrir ensayo</translation>
    </message>
    <message>
        <source>Reopened run</source>
        <translation>Reabierto: ensayo</translation>
    </message>
    <message>
        <source>start %1</source>
        <translation>iniciar %1</translation>
    </message>
    <message>
        <source>Started %1</source>
        <translation>Iniciado: %1</translation>
    </message>
    <message>
        <source>import %1 of %2</source>
        <translation>importar %1 de %2</translation>
    </message>
    <message>
        <source>Imported a run</source>
        <translation>Importado: un ensayo</translation>
    </message>
    <message>
        <source>Imported %1 runs, the last of which Undo takes back</source>
        <translation>Importados: %1 ensayos, el último de los cuales quita Deshacer</translation>
    </message>
    <message>
        <source>import table</source>
        <translation>importar tabla</translation>
    </message>
    <message>
        <source>Imported %1 runs of one table</source>
        <translation>Importados: %1 ensayos de una tabla</translation>
    </message>
    <message>
        <source>import log</source>
        <translation>importar grabación</translation>
    </message>
    <message>
        <source>Imported log</source>
        <translation>Importada: grabación</translation>
    </message>
    <message>
        <source>withdraw log</source>
        <translation>retirar grabación</translation>
    </message>
    <message>
        <source>Withdrawn: log</source>
        <translation>Retirada: grabación</translation>
    </message>
    <message>
        <source>add unit %1</source>
        <translation>añadir equipo %1</translation>
    </message>
    <message>
        <source>Added unit %1</source>
        <translation>Añadido: equipo %1</translation>
    </message>
    <message>
        <source>edit unit %1</source>
        <translation>editar equipo %1</translation>
    </message>
    <message>
        <source>Changed unit %1</source>
        <translation>Cambiado: equipo %1</translation>
    </message>
    <message>
        <source>withdraw unit %1</source>
        <translation>retirar equipo %1</translation>
    </message>
    <message>
        <source>Withdrawn: unit %1</source>
        <translation>Retirado: equipo %1</translation>
    </message>
    <message>
        <source>add meter %1</source>
        <translation>añadir contador %1</translation>
    </message>
    <message>
        <source>Added meter %1</source>
        <translation>Añadido: contador %1</translation>
    </message>
    <message>
        <source>edit meter %1</source>
        <translation>editar contador %1</translation>
    </message>
    <message>
        <source>Changed meter %1</source>
        <translation>Cambiado: contador %1</translation>
    </message>
    <message>
        <source>withdraw meter %1</source>
        <translation>retirar contador %1</translation>
    </message>
    <message>
        <source>Withdrawn: meter %1</source>
        <translation>Retirado: contador %1</translation>
    </message>
    <message>
        <source>join %1</source>
        <translation>unir %1</translation>
    </message>
    <message>
        <source>Joined %1</source>
        <translation>Unido: %1</translation>
    </message>
</context>
<context>
    <name>ullage::DoneLine</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Takes back what is named beside it; so does Ctrl+Z</source>
        <translation>Deshace lo que se nombra al lado; también Ctrl+Z</translation>
    </message>
</context>
<context>
    <name>ullage::EndForm</name>
    <message>
        <source>End run</source>
        <translation>Terminar ensayo</translation>
    </message>
    <message>
        <source>&amp;How it ended</source>
        <translation>&amp;Cómo terminó</translation>
    </message>
    <message>
        <source>choose …</source>
        <translation>elija …</translation>
    </message>
    <message>
        <source>cut-off seen: off before my eyes</source>
        <translation>corte visto: se apagó ante mis ojos</translation>
    </message>
    <message>
        <source>found off: went off unseen</source>
        <translation>hallado apagado, sin verlo</translation>
    </message>
    <message>
        <source>stopped by me</source>
        <translation>detenido por mí</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>C&amp;uándo</translation>
    </message>
    <message>
        <source>time, at first now</source>
        <translation>hora, por defecto ahora</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>noticed so late at most</source>
        <translation>advertido como mucho tras</translation>
    </message>
    <message>
        <source>02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>gauge, %</source>
        <translation>indicador, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>registro, Wh</translation>
    </message>
    <message>
        <source>second register, Wh</source>
        <translation>segundo registro, Wh</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>vatios</translation>
    </message>
    <message>
        <source>What is &amp;shown</source>
        <translation>Qué &amp;muestra</translation>
    </message>
    <message>
        <source>&amp;Remark</source>
        <translation>&amp;Observación</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature then</source>
        <translation>Temperatura &amp;ambiente entonces</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>From the entry row: %1</source>
        <translation>De la fila de entrada: %1</translation>
    </message>
    <message>
        <source>From the log, where the power ceased: %1</source>
        <translation>De la grabación, donde cesó la potencia: %1</translation>
    </message>
    <message>
        <source>From the log: %1</source>
        <translation>De la grabación: %1</translation>
    </message>
    <message>
        <source>The mark &quot;cut-off&quot; was the end: %1</source>
        <translation>La marca «corte» fue el final: %1</translation>
    </message>
    <message>
        <source>The last reading was the end: %1</source>
        <translation>La última lectura fue el final: %1</translation>
    </message>
    <message>
        <source>Puts these into the fields; they can be changed there</source>
        <translation>Pone estos valores en los campos; allí se pueden cambiar</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>not said: 5 min</source>
        <translation>sin indicar: 5 min</translation>
    </message>
    <message>
        <source>not said: since last seen on</source>
        <translation>si no: desde visto encendido</translation>
    </message>
    <message>
        <source>Say how it ended; then what the run says stands here.</source>
        <translation>Indique cómo terminó; entonces aquí estará lo que dice el ensayo.</translation>
    </message>
    <message>
        <source>Choose how it ended.</source>
        <translation>Elija cómo terminó.</translation>
    </message>
</context>
<context>
    <name>ullage::EntryFlow</name>
    <message>
        <source>This run is no longer in the open logbook; what you typed stands here until you choose another run.</source>
        <translation>Este ensayo ya no está en el cuaderno abierto; lo que usted escribió queda aquí hasta que elija otro ensayo.</translation>
    </message>
    <message>
        <source>%1 Wh</source>
        <translation>%1 Wh</translation>
    </message>
    <message>
        <source>. Is that right?</source>
        <translation>. ¿Es correcto?</translation>
    </message>
    <message>
        <source>What did the register show just before? With it nothing is missing. Where it is not known, press Enter.</source>
        <translation>¿Qué mostraba el registro justo antes? Con eso no falta nada. Si no se conoce, pulse Intro.</translation>
    </message>
    <message>
        <source>Not recorded. %1</source>
        <translation>No anotado. %1</translation>
    </message>
</context>
<context>
    <name>ullage::EntryRow</name>
    <message>
        <source>Record</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>What is typed here is not on the disk. %1</source>
        <translation>Lo escrito aquí no está en el disco. %1</translation>
    </message>
    <message>
        <source>Time of the reading</source>
        <translation>Hora de la lectura</translation>
    </message>
    <message>
        <source>Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>Vacío para ahora; si no, 02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>Gauge in percent</source>
        <translation>Indicador en porcentaje</translation>
    </message>
    <message>
        <source>What the unit&apos;s own gauge shows: 69 or 69 %</source>
        <translation>Lo que muestra el indicador del propio equipo: 69 o 69 %</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>Register in watt hours</source>
        <translation>Registro en vatios hora</translation>
    </message>
    <message>
        <source>What the meter&apos;s register shows: 431, 431 Wh or 0.431 kWh</source>
        <translation>Lo que muestra el registro del contador: 431, 431 Wh o 0,431 kWh</translation>
    </message>
    <message>
        <source>second</source>
        <translation>segundo</translation>
    </message>
    <message>
        <source>Second register in watt hours</source>
        <translation>Segundo registro en vatios hora</translation>
    </message>
    <message>
        <source>What the register of the second meter shows</source>
        <translation>Lo que muestra el registro del segundo contador</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>vatios</translation>
    </message>
    <message>
        <source>Meter power in watts</source>
        <translation>Potencia del contador en vatios</translation>
    </message>
    <message>
        <source>What the meter shows: 64 or 0.064 kW</source>
        <translation>Lo que muestra el contador: 64 o 0,064 kW</translation>
    </message>
    <message>
        <source>display W</source>
        <translation>pantalla W</translation>
    </message>
    <message>
        <source>Power on the unit&apos;s display in watts</source>
        <translation>Potencia en la pantalla del equipo en vatios</translation>
    </message>
    <message>
        <source>What the unit&apos;s own display shows: 64 or 0.064 kW</source>
        <translation>Lo que muestra la pantalla del propio equipo: 64 o 0,064 kW</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Anything worth keeping with this reading</source>
        <translation>Cualquier cosa que valga la pena guardar con esta lectura</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>An event at this moment; a register typed beside it was read after it</source>
        <translation>Un suceso en este momento; un registro escrito al lado se leyó después de él</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>sin marca</translation>
    </message>
    <message>
        <source>Mark and display watts</source>
        <translation>Marca y vatios de la pantalla</translation>
    </message>
</context>
<context>
    <name>ullage::ExportDialog</name>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Size and colours…</source>
        <translation>Tamaño y colores…</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vista previa</translation>
    </message>
    <message>
        <source>What to export</source>
        <translation>Qué exportar</translation>
    </message>
    <message>
        <source>Form of the export</source>
        <translation>Forma de la exportación</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Table, %1</source>
        <translation>Tabla, %1</translation>
    </message>
    <message>
        <source>CSV table</source>
        <translation>Tabla CSV</translation>
    </message>
    <message>
        <source>Markdown</source>
        <translation>Markdown</translation>
    </message>
    <message>
        <source>HTML page</source>
        <translation>Página HTML</translation>
    </message>
    <message>
        <source>Workbook</source>
        <translation>Libro de cálculo</translation>
    </message>
    <message>
        <source>LaTeX table</source>
        <translation>Tabla LaTeX</translation>
    </message>
    <message>
        <source>Picture of %1, PNG</source>
        <translation>Imagen de %1, PNG</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>Imagen PNG (*.png)</translation>
    </message>
    <message>
        <source>Picture of %1, SVG</source>
        <translation>Imagen de %1, SVG</translation>
    </message>
    <message>
        <source>SVG picture (*.svg)</source>
        <translation>Imagen SVG (*.svg)</translation>
    </message>
    <message>
        <source>Putting the table together</source>
        <translation>Preparando la tabla</translation>
    </message>
    <message>
        <source>A workbook with this table, a sheet on the method and a chart; Copy takes the cells:

</source>
        <translation>Un libro de cálculo con esta tabla, una hoja sobre el método y un gráfico; Copiar toma las celdas:

</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Escribiendo %1</translation>
    </message>
    <message>
        <source>Written to %1; what its columns mean stands in %2</source>
        <translation>Escrito en %1; lo que significan sus columnas está en %2</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Escrito en %1</translation>
    </message>
    <message>
        <source>The table has no rows to copy.</source>
        <translation>La tabla no tiene filas que copiar.</translation>
    </message>
    <message>
        <source>Nothing was copied.</source>
        <translation>No se ha copiado nada.</translation>
    </message>
    <message>
        <source>Copying the table</source>
        <translation>Copiando la tabla</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copiado</translation>
    </message>
</context>
<context>
    <name>ullage::FileBar</name>
    <message>
        <source>Save elsewhere and go on there…</source>
        <translation>Guardar en otro sitio y seguir allí…</translation>
    </message>
    <message>
        <source>Record here</source>
        <translation>Anotar aquí</translation>
    </message>
    <message>
        <source>▲ not recording</source>
        <translation>▲ no se anota</translation>
    </message>
    <message>
        <source>looking only</source>
        <translation>solo consulta</translation>
    </message>
</context>
<context>
    <name>ullage::FileController</name>
    <message>
        <source>New logbook</source>
        <translation>Nuevo cuaderno</translation>
    </message>
    <message>
        <source>Bench.ullage</source>
        <translation>Banco.ullage</translation>
    </message>
    <message>
        <source>Open logbook</source>
        <translation>Abrir cuaderno</translation>
    </message>
    <message>
        <source>Opening %1</source>
        <translation>Abriendo %1</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>%1 no se ha abierto.</translation>
    </message>
    <message>
        <source>Making the sample logbook</source>
        <translation>Creando el cuaderno de ejemplo</translation>
    </message>
    <message>
        <source>Saving %1</source>
        <translation>Guardando %1</translation>
    </message>
    <message>
        <source>%1 copy.ullage</source>
        <translation>%1 copia.ullage</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Copy saved to %1.</source>
        <translation>Copia guardada en %1.</translation>
    </message>
    <message>
        <source>%1 rescued.ullage</source>
        <translation>%1 rescatado.ullage</translation>
    </message>
    <message>
        <source>Save the open logbook elsewhere</source>
        <translation>Guardar el cuaderno abierto en otro sitio</translation>
    </message>
    <message>
        <source>You now record in %1.</source>
        <translation>Ahora anota usted en %1.</translation>
    </message>
    <message>
        <source>The logbook was checked from end to end, which took %1 s. It is done when a file was not closed properly or comes from elsewhere.</source>
        <translation>El cuaderno se ha comprobado de principio a fin, en %1 s. Se hace cuando un archivo no se cerró bien o viene de otro sitio.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguno</translation>
    </message>
    <message>
        <source>Export as folder: name the new folder</source>
        <translation>Exportar como carpeta: dé nombre a la carpeta nueva</translation>
    </message>
    <message>
        <source>Folders</source>
        <translation>Carpetas</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Escribiendo %1</translation>
    </message>
    <message>
        <source>Folder saved to %1: %2.</source>
        <translation>Carpeta guardada en %1: %2.</translation>
    </message>
    <message>
        <source>Import folder</source>
        <translation>Importar carpeta</translation>
    </message>
    <message>
        <source>A folder needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Una carpeta necesita un cuaderno en el que entrar: elija antes Cuaderno, Nuevo o Abrir.</translation>
    </message>
    <message>
        <source>%1 holds no run sheet. Choose a folder with run sheets (.csv), or one that Logbook, Export as folder wrote.</source>
        <translation>%1 no contiene ninguna hoja de ensayo. Elija una carpeta con hojas de ensayo (.csv) o una escrita por Cuaderno, Exportar como carpeta.</translation>
    </message>
    <message>
        <source>Importing %1</source>
        <translation>Importando %1</translation>
    </message>
    <message>
        <source>%1 more notices like these.</source>
        <translation>%1 avisos más como estos.</translation>
    </message>
    <message>
        <source>Run sheets (*.csv);;All files (*)</source>
        <translation>Hojas de ensayo (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Import run sheet</source>
        <translation>Importar hoja de ensayo</translation>
    </message>
    <message>
        <source>A run sheet needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Una hoja de ensayo necesita un cuaderno en el que entrar: elija antes Cuaderno, Nuevo o Abrir.</translation>
    </message>
    <message>
        <source>Importing %1 run sheets</source>
        <translation>Importando %1 hojas de ensayo</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>No se ha importado nada.</translation>
    </message>
    <message>
        <source>Stopped: %1 of %2 run sheets are in the logbook, each whole; Edit, Undo takes them out one by one.</source>
        <translation>Detenido: %1 de %2 hojas de ensayo están en el cuaderno, cada una entera; Editar, Deshacer las quita una a una.</translation>
    </message>
    <message>
        <source>Export run sheet</source>
        <translation>Exportar hoja de ensayo</translation>
    </message>
    <message>
        <source>Run sheet saved to %1.</source>
        <translation>Hoja de ensayo guardada en %1.</translation>
    </message>
    <message>
        <source>Attach photos to %1 (%2)</source>
        <translation>Adjuntar fotos a %1 (%2)</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>PNG (*.png);;All files (*)</source>
        <translation>PNG (*.png);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>JPEG (*.jpg *.jpeg);;All files (*)</source>
        <translation>JPEG (*.jpg *.jpeg);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>Save photo</source>
        <translation>Guardar foto</translation>
    </message>
    <message>
        <source>Photo saved to %1.</source>
        <translation>Foto guardada en %1.</translation>
    </message>
    <message>
        <source>Import load list</source>
        <translation>Importar lista de cargas</translation>
    </message>
    <message>
        <source>Load lists (*.csv);;All files (*)</source>
        <translation>Listas de cargas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>A load list needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Una lista de cargas necesita un cuaderno en el que entrar: elija antes Cuaderno, Nuevo o Abrir.</translation>
    </message>
    <message>
        <source>Import PV sheet</source>
        <translation>Importar hoja FV</translation>
    </message>
    <message>
        <source>PV sheets (*.txt);;All files (*)</source>
        <translation>Hojas FV (*.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>A PV sheet needs a logbook to go into: choose Logbook, New or Open first.</source>
        <translation>Una hoja FV necesita un cuaderno en el que entrar: elija antes Cuaderno, Nuevo o Abrir.</translation>
    </message>
    <message>
        <source>%1 is neither a logbook (.ullage), nor a run sheet or load list (.csv), nor a PV sheet (.txt). The log of a meter goes into a run: show the run first.</source>
        <translation>%1 no es un cuaderno (.ullage), ni una hoja de ensayo o lista de cargas (.csv), ni una hoja FV (.txt). La grabación de un contador entra en un ensayo: muestre antes el ensayo.</translation>
    </message>
</context>
<context>
    <name>ullage::FindingRow</name>
    <message>
        <source>Select its readings in table and chart</source>
        <translation>Seleccionar sus lecturas en la tabla y el gráfico</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Accept: %1</source>
        <translation>Aceptar: %1</translation>
    </message>
    <message>
        <source>Write this into the reading, with its reason in the history; undo brings the old value back</source>
        <translation>Escribir esto en la lectura, con su motivo en el historial; deshacer recupera el valor antiguo</translation>
    </message>
</context>
<context>
    <name>ullage::FindingsView</name>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Not known: %1</source>
        <translation>No se conoce: %1</translation>
    </message>
</context>
<context>
    <name>ullage::FormDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>. Is that right? Change a field, or go on all the same.</source>
        <translation>. ¿Es correcto? Cambie un campo o siga de todos modos.</translation>
    </message>
    <message>
        <source>%1 all the same</source>
        <translation>%1 de todos modos</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Más…</translation>
    </message>
</context>
<context>
    <name>ullage::GuideBar</name>
    <message>
        <source>unit</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lecturas</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>result</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>paso %1 de %2</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Finalizar</translation>
    </message>
    <message>
        <source>Leave the guide</source>
        <translation>Salir de la guía</translation>
    </message>
    <message>
        <source>guided first run, step %1 of %2: %3</source>
        <translation>primer ensayo guiado, paso %1 de %2: %3</translation>
    </message>
</context>
<context>
    <name>ullage::GuideController</name>
    <message>
        <source>Logbook for the guided run</source>
        <translation>Cuaderno para el ensayo guiado</translation>
    </message>
    <message>
        <source>First run.ullage</source>
        <translation>Primer ensayo.ullage</translation>
    </message>
    <message>
        <source>The guided run is done. Everything stays in this logbook.</source>
        <translation>El ensayo guiado ha acabado. Todo queda en este cuaderno.</translation>
    </message>
    <message>
        <source>You have left the guide. Help, Guided first run takes it up again.</source>
        <translation>Ha salido de la guía. Ayuda, Primer ensayo guiado la retoma.</translation>
    </message>
    <message>
        <source>Add the unit that you test, with its name and the rated energy on its label. Its other claims can follow later.</source>
        <translation>Añada el equipo que ensaya, con su nombre y la energía asignada de su placa. Sus otros datos declarados pueden venir después.</translation>
    </message>
    <message>
        <source>Without a unit at hand: name it Trial unit, with a rated energy of 1000 Wh.</source>
        <translation>Si no tiene un equipo a mano: llámelo Equipo de prueba, con una energía asignada de 1000 Wh.</translation>
    </message>
    <message>
        <source>Add unit…</source>
        <translation>Añadir equipo…</translation>
    </message>
    <message>
        <source>Add the meter between unit and load. Its data sheet states the step of its register and its error limit, which the ± of every result comes from.</source>
        <translation>Añada el contador entre equipo y carga. Su hoja de datos indica la resolución de su registro y su límite de error, del que sale el ± de cada resultado.</translation>
    </message>
    <message>
        <source>Without a meter at hand: name it Trial meter, with a step of 1 Wh and a limit of 1 %.</source>
        <translation>Si no tiene un contador a mano: llámelo Contador de prueba, con una resolución de 1 Wh y un límite de 1 %.</translation>
    </message>
    <message>
        <source>Add meter…</source>
        <translation>Añadir contador…</translation>
    </message>
    <message>
        <source>Charge the unit to full and plug the meter and a load in. Start a drain: what gauge and register show now is its first reading.</source>
        <translation>Recargue el equipo hasta lleno y enchufe el contador y una carga. Inicie una descarga: lo que muestran ahora indicador y registro es su primera lectura.</translation>
    </message>
    <message>
        <source>Without a bench at hand: gauge 100, register 0, time -6h.</source>
        <translation>Si no tiene un banco a mano: indicador 100, registro 0, hora -6h.</translation>
    </message>
    <message>
        <source>Start run…</source>
        <translation>Iniciar ensayo…</translation>
    </message>
    <message>
        <source>Walk to the bench now and then. Type what gauge and register show into the row below the readings, and press Enter. Noted: %1 of %2.</source>
        <translation>Vaya al banco de vez en cuando. Escriba lo que muestran indicador y registro en la fila bajo las lecturas y pulse Intro. Anotadas: %1 de %2.</translation>
    </message>
    <message>
        <source>Without a bench at hand: time -4h, gauge 66, register 260; then time -2h, gauge 32, register 525.</source>
        <translation>Si no tiene un banco a mano: hora -4h, indicador 66, registro 260; después hora -2h, indicador 32, registro 525.</translation>
    </message>
    <message>
        <source>To the entry row</source>
        <translation>A la fila de entrada</translation>
    </message>
    <message>
        <source>Wait until the unit switches off by itself, and note what you like until then. End the run: it asks how it ended and what was shown last.</source>
        <translation>Espere a que el equipo se apague por sí mismo y anote hasta entonces lo que quiera. Termine el ensayo: se le pregunta cómo terminó y qué se mostraba al final.</translation>
    </message>
    <message>
        <source>Without a bench at hand: cut-off seen, gauge 0, register 790.</source>
        <translation>Si no tiene un banco a mano: corte visto, indicador 0, registro 790.</translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Terminar ensayo…</translation>
    </message>
    <message>
        <source>This is your result. %1.</source>
        <translation>Este es su resultado. %1.</translation>
    </message>
    <message>
        <source>The figures stand above the readings. The tab Budget says where the ± comes from, and what the readings say of the gauge stands below. With a second unit, Compare puts both side by side.</source>
        <translation>Las cifras están encima de las lecturas. La pestaña Incertidumbre dice de dónde sale el ±, y lo que dicen las lecturas del indicador está debajo. Con un segundo equipo, Comparar pone ambos uno junto a otro.</translation>
    </message>
    <message>
        <source>Show the result</source>
        <translation>Mostrar el resultado</translation>
    </message>
</context>
<context>
    <name>ullage::HelpDialog</name>
    <message>
        <source>help text</source>
        <translation>texto de ayuda</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>ullage::HttpLink</name>
    <message>
        <source>the answer is longer than 1 MB; that of a meter is short</source>
        <translation>la respuesta supera 1 MB; la de un contador es corta</translation>
    </message>
</context>
<context>
    <name>ullage::InstallationDialog</name>
    <message>
        <source>Check of the installation</source>
        <translation>Comprobación de la instalación</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>qué se halló</translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation>&amp;Copiar como texto</translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation>Comprobar &amp;de nuevo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>%1 Each row says what was looked at, what was found, and what follows. The copy holds nothing of your logbooks.</source>
        <translation>%1 Cada fila dice qué se miró, qué se halló y qué se deduce de ello. La copia no contiene nada de sus cuadernos.</translation>
    </message>
</context>
<context>
    <name>ullage::IntervalsModel</name>
    <message>
        <source>not known: the unit&apos;s rated energy is not stated</source>
        <translation>no se conoce: la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>not known: no time lies between the two readings</source>
        <translation>no se conoce: no hay tiempo entre las dos lecturas</translation>
    </message>
    <message>
        <source>not known: the gauge did not move, or the rated energy is not stated</source>
        <translation>no se conoce: el indicador no se movió, o la energía asignada no está indicada</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>intervalo</translation>
    </message>
    <message>
        <source>time
h</source>
        <translation>tiempo
h</translation>
    </message>
    <message>
        <source>gauge
pt</source>
        <translation>indicador
pt</translation>
    </message>
    <message>
        <source>implied
Wh</source>
        <translation>indicador
Wh</translation>
    </message>
    <message>
        <source>delivered
Wh</source>
        <translation>entregada
Wh</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>razón</translation>
    </message>
    <message>
        <source>mean
W</source>
        <translation>media
W</translation>
    </message>
    <message>
        <source>Wh per
pt</source>
        <translation>Wh por
pt</translation>
    </message>
    <message>
        <source>from one paired reading to the next</source>
        <translation>de una lectura emparejada a la siguiente</translation>
    </message>
    <message>
        <source>hours between the two</source>
        <translation>horas entre las dos</translation>
    </message>
    <message>
        <source>percentage points that the gauge fell</source>
        <translation>puntos porcentuales que bajó el indicador</translation>
    </message>
    <message>
        <source>rated energy x gauge drop</source>
        <translation>energía asignada x bajada del indicador</translation>
    </message>
    <message>
        <source>corrected energy at the socket</source>
        <translation>energía corregida en la toma</translation>
    </message>
    <message>
        <source>delivered / gauge-implied energy</source>
        <translation>energía entregada / energía según el indicador</translation>
    </message>
    <message>
        <source>mean load</source>
        <translation>carga media</translation>
    </message>
    <message>
        <source>delivered energy for each point that the gauge fell</source>
        <translation>energía entregada por cada punto que bajó el indicador</translation>
    </message>
</context>
<context>
    <name>ullage::JoinController</name>
    <message>
        <source>Join another logbook</source>
        <translation>Unir otro cuaderno</translation>
    </message>
    <message>
        <source>Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)</source>
        <translation>Cuadernos y sus copias (*.ullage *.ullage-copy);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Comparing with %1</source>
        <translation>Comparando con %1</translation>
    </message>
    <message>
        <source>Nothing was joined.</source>
        <translation>No se ha unido nada.</translation>
    </message>
    <message>
        <source>This logbook has all that %1 has already; nothing was changed.</source>
        <translation>Este cuaderno ya tiene todo lo que tiene %1; no se ha cambiado nada.</translation>
    </message>
    <message>
        <source>Joined: %1.</source>
        <translation>Unido: %1.</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Uniendo</translation>
    </message>
</context>
<context>
    <name>ullage::JoinForm</name>
    <message>
        <source>withdrawn here, not there</source>
        <translation>retirado aquí, no allí</translation>
    </message>
    <message>
        <source>withdrawn there, not here</source>
        <translation>retirado allí, no aquí</translation>
    </message>
    <message>
        <source>the same readings as a run here: stays out unless ticked</source>
        <translation>las mismas lecturas que un ensayo de aquí: se queda fuera si no se marca</translation>
    </message>
    <message>
        <source>tells of the same time as a log here, which it would replace</source>
        <translation>habla del mismo tiempo que una grabación de aquí, a la que reemplazaría</translation>
    </message>
    <message>
        <source>changed there alone</source>
        <translation>cambiado solo allí</translation>
    </message>
    <message>
        <source>not the same</source>
        <translation>no coincide</translation>
    </message>
    <message>
        <source>Join another logbook</source>
        <translation>Unir otro cuaderno</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>%1 has nothing that this logbook lacks.</source>
        <translation>%1 no tiene nada que le falte a este cuaderno.</translation>
    </message>
    <message>
        <source>This comes in from %1:</source>
        <translation>Esto entra de %1:</translation>
    </message>
    <message>
        <source>What comes in</source>
        <translation>Qué entra</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run, and what comes in of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 – only where its line below is ticked</source>
        <translation>%1 – solo si su línea de abajo está marcada</translation>
    </message>
    <message>
        <source>This differs. It stays as it is here; tick what is to be taken from the other logbook:</source>
        <translation>Esto difiere. Queda como está aquí; marque lo que se ha de tomar del otro cuaderno:</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>in the other</source>
        <translation>en el otro</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>%1 more notices like these.</source>
        <translation>%1 avisos más como estos.</translation>
    </message>
    <message>
        <source>take from the other</source>
        <translation>tomar del otro</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a record, and in what it differs</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Keep all</source>
        <translation>&amp;Dejar todo</translation>
    </message>
    <message>
        <source>Nothing is taken from the other logbook</source>
        <translation>No se toma nada del otro cuaderno</translation>
    </message>
    <message>
        <source>Take &amp;newer</source>
        <translation>Tomar lo &amp;nuevo</translation>
    </message>
    <message>
        <source>Takes what was changed in the other logbook alone</source>
        <translation>Toma lo que se cambió solo en el otro cuaderno</translation>
    </message>
    <message>
        <source>Take &amp;all</source>
        <translation>&amp;Tomar todo</translation>
    </message>
    <message>
        <source>Takes every difference from the other logbook</source>
        <translation>Toma todas las diferencias del otro cuaderno</translation>
    </message>
</context>
<context>
    <name>ullage::LeaveForm</name>
    <message>
        <source>Quit while a test is running?</source>
        <translation>¿Salir con un ensayo en curso?</translation>
    </message>
    <message>
        <source>Quit while %1 tests are running?</source>
        <translation>¿Salir con %1 ensayos en curso?</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Reminders: nobody calls you to the next reading.</source>
        <translation>Recordatorios: nadie le avisa de la próxima lectura.</translation>
    </message>
    <message>
        <source>The machine is no longer kept awake.</source>
        <translation>Ya no se impide la suspensión de la máquina.</translation>
    </message>
    <message>
        <source>A followed log is no longer read.</source>
        <translation>Ya no se lee una grabación seguida.</translation>
    </message>
    <message>
        <source>%1 followed logs are no longer read.</source>
        <translation>Ya no se leen %1 grabaciones seguidas.</translation>
    </message>
    <message>
        <source>What stops</source>
        <translation>Qué se detiene</translation>
    </message>
    <message>
        <source>The tests themselves: the units run on at the bench, and the runs stay open in the logbook.</source>
        <translation>Los propios ensayos: los equipos siguen funcionando en el banco, y los ensayos siguen abiertos en el cuaderno.</translation>
    </message>
    <message>
        <source>Every reading, and what is half typed. Rules of reminders count on from the last reading at the next start.</source>
        <translation>Todas las lecturas y lo que está a medio escribir. En el próximo arranque, las reglas de los recordatorios siguen contando desde la última lectura.</translation>
    </message>
    <message>
        <source>What is written to a followed log meanwhile: it is taken up at the next start.</source>
        <translation>Lo que se escriba entretanto en una grabación seguida: se recoge en el próximo arranque.</translation>
    </message>
    <message>
        <source>What remains</source>
        <translation>Qué queda</translation>
    </message>
</context>
<context>
    <name>ullage::LiveBar</name>
    <message>
        <source>Stop reading</source>
        <translation>Dejar de leer</translation>
    </message>
    <message>
        <source>Read live</source>
        <translation>Leer en directo</translation>
    </message>
    <message>
        <source>%1 was read when the program ended; it needs its password again.</source>
        <translation>%1 se estaba leyendo cuando terminó el programa; vuelve a necesitar su contraseña.</translation>
    </message>
    <message>
        <source>%1 can be read live.</source>
        <translation>%1 se puede leer en directo.</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>conectado, aún no ha llegado nada</translation>
    </message>
    <message>
        <source>connecting</source>
        <translation>conectando</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 omitidas</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 perdidas</translation>
    </message>
    <message>
        <source>the machine&apos;s clock was set; samples go on by the steady one</source>
        <translation>se cambió la hora de la máquina; las muestras siguen el reloj continuo</translation>
    </message>
    <message>
        <source>Set mark “%1”</source>
        <translation>Poner marca «%1»</translation>
    </message>
    <message>
        <source>Not this</source>
        <translation>Esto no</translation>
    </message>
</context>
<context>
    <name>ullage::LiveController</name>
    <message>
        <source>An output went off</source>
        <translation>Se apagó una salida</translation>
    </message>
    <message>
        <source>A meter that is read live</source>
        <translation>Un contador leído en directo</translation>
    </message>
    <message>
        <source>there is no desktop that could keep it</source>
        <translation>no hay ningún escritorio que pueda guardarla</translation>
    </message>
    <message>
        <source>The meter is read, but its password was not kept: %1</source>
        <translation>El contador se lee, pero su contraseña no se guardó: %1</translation>
    </message>
</context>
<context>
    <name>ullage::LiveFace</name>
    <message>
        <source>%1 s ago</source>
        <translation>hace %1 s</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>hace %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>hace %1 h</translation>
    </message>
    <message>
        <source>Not tried yet. Try shows what comes; nothing is recorded.</source>
        <translation>Aún sin probar. Probar muestra lo que llega; no se anota nada.</translation>
    </message>
    <message>
        <source>connected, nothing has come yet</source>
        <translation>conectado, aún no ha llegado nada</translation>
    </message>
    <message>
        <source>connecting</source>
        <translation>conectando</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>%1 por segundo</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 omitidas</translation>
    </message>
</context>
<context>
    <name>ullage::LiveReader</name>
    <message>
        <source>%1: %2 at %3. %4.</source>
        <translation>%1: %2 a las %3. %4.</translation>
    </message>
    <message>
        <source>The meter is no longer read: %1</source>
        <translation>El contador ya no se lee: %1</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListController</name>
    <message>
        <source>Units</source>
        <translation>Equipos</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>Generador FV y batería según norma</translation>
    </message>
    <message>
        <source>Charge by the hour</source>
        <translation>Estado de carga por horas</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Meses</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListForm</name>
    <message>
        <source>Add load list</source>
        <translation>Añadir lista de cargas</translation>
    </message>
    <message>
        <source>Load list %1</source>
        <translation>Lista de cargas %1</translation>
    </message>
    <message>
        <source>Save load list</source>
        <translation>Guardar lista de cargas</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>what it is for, such as: show night</source>
        <translation>para qué es, por ejemplo: noche de feria</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>O&amp;bservación</translation>
    </message>
    <message>
        <source>The load list needs a name, by which the comparison calls it.</source>
        <translation>La lista de cargas necesita un nombre, por el que la llama la comparación.</translation>
    </message>
</context>
<context>
    <name>ullage::LoadListsPage</name>
    <message>
        <source>load lists</source>
        <translation>listas de cargas</translation>
    </message>
    <message>
        <source>appliances of the load list</source>
        <translation>aparatos de la lista de cargas</translation>
    </message>
    <message>
        <source>No load lists yet. Add load list, then its appliances: what they take, how long a day, and when; or Import one from a file. The comparison then shows units at that load.</source>
        <translation>Aún no hay listas de cargas. Use Añadir lista de cargas y después añada sus aparatos: qué consumen, cuánto tiempo al día y cuándo; o Importar una desde un archivo. La comparación muestra entonces los equipos a esa carga.</translation>
    </message>
    <message>
        <source>Nothing in this list yet. Add appliance takes its power, or what a meter counted over some hours.</source>
        <translation>Aún no hay nada en esta lista. Añadir aparato admite su potencia o lo que contó un contador en unas horas.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listas de cargas</translation>
    </message>
    <message>
        <source>Add load list</source>
        <translation>Añadir lista de cargas</translation>
    </message>
    <message>
        <source>Edit load list</source>
        <translation>Editar lista de cargas</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importar…</translation>
    </message>
    <message>
        <source>A load list from a file (.csv)</source>
        <translation>Una lista de cargas desde un archivo (.csv)</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Add appliance</source>
        <translation>Añadir aparato</translation>
    </message>
    <message>
        <source>Edit appliance</source>
        <translation>Editar aparato</translation>
    </message>
    <message>
        <source>Remove appliance</source>
        <translation>Quitar aparato</translation>
    </message>
</context>
<context>
    <name>ullage::LogController</name>
    <message>
        <source>Logs (*.csv *.txt *.log *.tsv *.dat);;All files (*)</source>
        <translation>Grabaciones (*.csv *.txt *.log *.tsv *.dat);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>A log is quiet</source>
        <translation>Una grabación no avanza</translation>
    </message>
    <message>
        <source>Import log</source>
        <translation>Importar grabación</translation>
    </message>
    <message>
        <source>%1 is followed from now on, from where the run&apos;s log of it ended.</source>
        <translation>%1 se sigue desde ahora, desde donde terminaba su grabación en el ensayo.</translation>
    </message>
    <message>
        <source>The run has this log already; what %1 has more was added to it, read as before.</source>
        <translation>El ensayo ya tiene esta grabación; lo que %1 tiene de más se le ha añadido, leído como antes.</translation>
    </message>
    <message>
        <source> Its last line is incomplete and was skipped.</source>
        <translation> Su última línea está incompleta y se ha omitido.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>It is followed from now on.</source>
        <translation>Se sigue desde ahora.</translation>
    </message>
    <message>
        <source>The file of the log %1</source>
        <translation>El archivo de la grabación %1</translation>
    </message>
    <message>
        <source>%1 is followed from now on.</source>
        <translation>%1 se sigue desde ahora.</translation>
    </message>
    <message>
        <source>There is no load list for it yet: add one first (Edit, Load lists).</source>
        <translation>Aún no hay lista de cargas para ello: añada una primero (Editar, Listas de cargas).</translation>
    </message>
</context>
<context>
    <name>ullage::LogFollower</name>
    <message>
        <source>%1 is not there; waiting for the file</source>
        <translation>%1 no está; se espera el archivo</translation>
    </message>
    <message>
        <source>%1 is no longer followed: %2</source>
        <translation>%1 ya no se sigue: %2</translation>
    </message>
    <message>
        <source>%1: its log %2 has had no new row for %3 min. Is the meter still logging?</source>
        <translation>%1: su grabación %2 lleva %3 min sin fila nueva. ¿Sigue grabando el contador?</translation>
    </message>
</context>
<context>
    <name>ullage::LogForm</name>
    <message>
        <source>as the log has it</source>
        <translation>como en la grabación</translation>
    </message>
    <message>
        <source>First rows of the log</source>
        <translation>Primeras filas de la grabación</translation>
    </message>
    <message>
        <source>Import log %1</source>
        <translation>Importar grabación %1</translation>
    </message>
    <message>
        <source>Import log</source>
        <translation>Importar grabación</translation>
    </message>
    <message>
        <source>&amp;Follow it: another program is still writing this file</source>
        <translation>&amp;Seguirla: otro programa aún escribe este archivo</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>ninguno nombrado</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Avance de la importación</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>Cómo se lee</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Contador</translation>
    </message>
    <message>
        <source>&amp;Columns end at</source>
        <translation>Co&amp;lumnas separadas por</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>upright bar</source>
        <translation>barra vertical</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>espacios</translation>
    </message>
    <message>
        <source>&amp;Decimal sign</source>
        <translation>Signo &amp;decimal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>D&amp;ates begin with</source>
        <translation>Las &amp;fechas empiezan por</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>el día</translation>
    </message>
    <message>
        <source>the month</source>
        <translation>el mes</translation>
    </message>
    <message>
        <source>the year</source>
        <translation>el año</translation>
    </message>
    <message>
        <source>&amp;Times such as 02:40 are</source>
        <translation>&amp;Horas como 02:40 son</translation>
    </message>
    <message>
        <source>the time of day</source>
        <translation>la hora del día</translation>
    </message>
    <message>
        <source>counted from the start</source>
        <translation>contadas desde el inicio</translation>
    </message>
    <message>
        <source>The &amp;register counts</source>
        <translation>El &amp;registro cuenta</translation>
    </message>
    <message>
        <source>The &amp;gauge counts</source>
        <translation>El &amp;indicador cuenta</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>en porcentaje</translation>
    </message>
    <message>
        <source>from 0 to 1</source>
        <translation>de 0 a 1</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>&amp;Zona horaria</translation>
    </message>
    <message>
        <source>&amp;Start of the log</source>
        <translation>Inicio de la &amp;grabación</translation>
    </message>
    <message>
        <source>first reading of the run</source>
        <translation>primera lectura del ensayo</translation>
    </message>
    <message>
        <source>Cl&amp;ock is behind by</source>
        <translation>El relo&amp;j atrasa</translation>
    </message>
    <message>
        <source>hours:minutes:seconds, 0:00:00 if it is right</source>
        <translation>horas:minutos:segundos, 0:00:00 si va bien</translation>
    </message>
    <message>
        <source>&amp;Estimate from the hand readings</source>
        <translation>&amp;Estimar con las lecturas a mano</translation>
    </message>
    <message>
        <source>Chec&amp;k the whole log</source>
        <translation>Comprobar &amp;toda la grabación</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Leído como: %1</translation>
    </message>
    <message>
        <source>It is taken to begin with the first reading of the run, %1.</source>
        <translation>Se supone que empieza con la primera lectura del ensayo, %1.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Abierto: %1</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>At its beginning: %1</source>
        <translation>En su comienzo: %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>%1 holds</source>
        <translation>%1 contiene</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>The whole log: %1</source>
        <translation>Toda la grabación: %1</translation>
    </message>
    <message>
        <source>Name the column in the first row of the table above: %1.</source>
        <translation>Nombre la columna en la primera fila de la tabla de arriba: %1.</translation>
    </message>
    <message>
        <source>Imported. %1. What was left out or taken with a doubt, the first hundred of each kind:</source>
        <translation>Importado. %1. Lo omitido o tomado con dudas, los primeros cien de cada tipo:</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>ullage::LogList</name>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>output power by the unit</source>
        <translation>potencia de salida según el equipo</translation>
    </message>
    <message>
        <source>%1: %2 samples from %3 to %4</source>
        <translation>%1: %2 muestras de %3 a %4</translation>
    </message>
    <message>
        <source>, %1 row left out</source>
        <translation>, %1 fila omitida</translation>
    </message>
    <message>
        <source>, %1 rows left out</source>
        <translation>, %1 filas omitidas</translation>
    </message>
    <message>
        <source>, clock moved by %1 s</source>
        <translation>, reloj movido %1 s</translation>
    </message>
    <message>
        <source>, its file begun anew %1 time</source>
        <translation>, su archivo empezado de nuevo %1 vez</translation>
    </message>
    <message>
        <source>, its file begun anew %1 times</source>
        <translation>, su archivo empezado de nuevo %1 veces</translation>
    </message>
    <message>
        <source>Followed, but: %1.</source>
        <translation>Se sigue, pero: %1.</translation>
    </message>
    <message>
        <source>Followed, but nothing new since %1. Is the meter still logging?</source>
        <translation>Se sigue, pero sin nada nuevo desde las %1. ¿Sigue grabando el contador?</translation>
    </message>
    <message>
        <source>Followed: new rows come in by themselves.</source>
        <translation>Se sigue: las filas nuevas entran solas.</translation>
    </message>
    <message>
        <source>Stop following</source>
        <translation>Dejar de seguir</translation>
    </message>
    <message>
        <source>Stop following the log %1</source>
        <translation>Dejar de seguir la grabación %1</translation>
    </message>
    <message>
        <source>Follow…</source>
        <translation>Seguir…</translation>
    </message>
    <message>
        <source>Follow the log %1</source>
        <translation>Seguir la grabación %1</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Withdraw the log %1</source>
        <translation>Retirar la grabación %1</translation>
    </message>
</context>
<context>
    <name>ullage::LogView</name>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>pico</translation>
    </message>
    <message>
        <source>a day of it</source>
        <translation>en un día</translation>
    </message>
    <message>
        <source>energy, power integrated</source>
        <translation>energía, potencia integrada</translation>
    </message>
    <message>
        <source>its register over the same times</source>
        <translation>su registro en el mismo tiempo</translation>
    </message>
    <message>
        <source>while on</source>
        <translation>en marcha</translation>
    </message>
    <message>
        <source>while off</source>
        <translation>en paro</translation>
    </message>
    <message>
        <source>share of the time on</source>
        <translation>parte del tiempo en marcha</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>arranques</translation>
    </message>
    <message>
        <source>switching</source>
        <translation>conmutación</translation>
    </message>
    <message>
        <source>of one level</source>
        <translation>de un solo nivel</translation>
    </message>
    <message>
        <source>∫P² dt, for losses</source>
        <translation>∫P² dt, para pérdidas</translation>
    </message>
    <message>
        <source>time covered</source>
        <translation>tiempo cubierto</translation>
    </message>
    <message>
        <source>gaps left out</source>
        <translation>huecos omitidos</translation>
    </message>
    <message>
        <source>%1 (%2, at most %3)</source>
        <translation>%1 (%2, %3 como máximo)</translation>
    </message>
    <message>
        <source>Import log…</source>
        <translation>Importar grabación…</translation>
    </message>
    <message>
        <source>Add to a load list…</source>
        <translation>Añadir a una lista de cargas…</translation>
    </message>
    <message>
        <source>No log in this run. A meter that logs can be read here: its register and power then go with the gauge readings that are noted by hand. So can a log of the unit&apos;s gauge.</source>
        <translation>No hay grabación en este ensayo. Aquí se puede leer un contador que graba: su registro y su potencia van entonces con las lecturas del indicador anotadas a mano. También una grabación del indicador del equipo.</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>the unit says</source>
        <translation>según el equipo</translation>
    </message>
    <message>
        <source>Power of the log against hours since the start</source>
        <translation>Potencia de la grabación, por horas desde el inicio</translation>
    </message>
    <message>
        <source>hours since start</source>
        <translation>horas desde el inicio</translation>
    </message>
    <message>
        <source>power / W</source>
        <translation>potencia / W</translation>
    </message>
    <message>
        <source>The log holds no power: its register counts, and stands in the readings&apos; energy.</source>
        <translation>La grabación no contiene potencia: cuenta su registro, y está en la energía de las lecturas.</translation>
    </message>
    <message>
        <source>Gauge of the unit by its log against hours since the start</source>
        <translation>Indicador del equipo según su grabación, por horas desde el inicio</translation>
    </message>
    <message>
        <source>gauge / %</source>
        <translation>indicador / %</translation>
    </message>
    <message>
        <source>The log holds no number in its column of the gauge.</source>
        <translation>La grabación no contiene ningún número en su columna del indicador.</translation>
    </message>
</context>
<context>
    <name>ullage::LogbookTreeModel</name>
    <message>
        <source>Units</source>
        <translation>Equipos</translation>
    </message>
    <message>
        <source>None yet: add a unit</source>
        <translation>Aún ninguno: añada un equipo</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Contadores</translation>
    </message>
    <message>
        <source>None yet: add a meter</source>
        <translation>Aún ninguno: añada un contador</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listas de cargas</translation>
    </message>
    <message>
        <source>None yet: add a load list</source>
        <translation>Aún ninguna: añada una lista de cargas</translation>
    </message>
    <message>
        <source>Across units</source>
        <translation>Entre equipos</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation>Ensayos en curso</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation>Entrada FV</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Dimensionado</translation>
    </message>
    <message>
        <source>%1, as calibrated</source>
        <translation>%1, según calibración</translation>
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
        <translation>%1, en curso, lectura retrasada</translation>
    </message>
    <message>
        <source>%1, running</source>
        <translation>%1, en curso</translation>
    </message>
</context>
<context>
    <name>ullage::MainWindow</name>
    <message>
        <source>logbook</source>
        <translation>cuaderno</translation>
    </message>
    <message>
        <source>saved %1 ✓</source>
        <translation>guardado %1 ✓</translation>
    </message>
    <message>
        <source>%1, looking only – Ullage</source>
        <translation>%1, solo consulta – Ullage</translation>
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
        <translation>Otro programa anota en este cuaderno</translation>
    </message>
    <message>
        <source>Nobody records into this logbook any more</source>
        <translation>Ya nadie anota en este cuaderno</translation>
    </message>
    <message>
        <source>`ullage %1` (process %2) records into this logbook</source>
        <translation>`ullage %1` (proceso %2) anota en este cuaderno</translation>
    </message>
    <message>
        <source>Another window or command (process %1) records into this logbook</source>
        <translation>Otra ventana o comando (proceso %1) anota en este cuaderno</translation>
    </message>
    <message>
        <source>%1. You see it as of %2; nothing can be entered here.</source>
        <translation>%1. Lo ve tal como estaba a las %2; aquí no se puede introducir nada.</translation>
    </message>
    <message>
        <source>It cannot be read anew: %1</source>
        <translation>No se puede volver a leer: %1</translation>
    </message>
    <message>
        <source>&amp;Logbook</source>
        <translation>&amp;Cuaderno</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Nuevo…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Open the sa&amp;mple logbook</source>
        <translation>Abrir el cuaderno de e&amp;jemplo</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>&amp;Guardar una copia…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Import run sheet…</source>
        <translation>&amp;Importar hoja de ensayo…</translation>
    </message>
    <message>
        <source>Import &amp;table…</source>
        <translation>Importar &amp;tabla…</translation>
    </message>
    <message>
        <source>&amp;Paste table…</source>
        <translation>&amp;Pegar tabla…</translation>
    </message>
    <message>
        <source>&amp;Export run sheet…</source>
        <translation>&amp;Exportar hoja de ensayo…</translation>
    </message>
    <message>
        <source>Export rea&amp;dings…</source>
        <translation>Exportar &amp;lecturas…</translation>
    </message>
    <message>
        <source>Import fo&amp;lder…</source>
        <translation>I&amp;mportar carpeta…</translation>
    </message>
    <message>
        <source>Export as &amp;folder…</source>
        <translation>E&amp;xportar como carpeta…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Add &amp;unit…</source>
        <translation>Añadir e&amp;quipo…</translation>
    </message>
    <message>
        <source>&amp;Edit unit…</source>
        <translation>&amp;Editar equipo…</translation>
    </message>
    <message>
        <source>Make re&amp;port of the unit…</source>
        <translation>Crear &amp;informe del equipo…</translation>
    </message>
    <message>
        <source>Withdraw unit</source>
        <translation>Retirar equipo</translation>
    </message>
    <message>
        <source>Add &amp;meter…</source>
        <translation>Añadir &amp;contador…</translation>
    </message>
    <message>
        <source>E&amp;dit meter…</source>
        <translation>E&amp;ditar contador…</translation>
    </message>
    <message>
        <source>Withdraw meter</source>
        <translation>Retirar contador</translation>
    </message>
    <message>
        <source>Meth&amp;od…</source>
        <translation>&amp;Método…</translation>
    </message>
    <message>
        <source>Withdraw run</source>
        <translation>Retirar ensayo</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>A&amp;justes…</translation>
    </message>
    <message>
        <source>&amp;Load lists</source>
        <translation>&amp;Listas de cargas</translation>
    </message>
    <message>
        <source>&amp;Page of load lists</source>
        <translation>&amp;Página de listas de cargas</translation>
    </message>
    <message>
        <source>Add &amp;load list…</source>
        <translation>Añadir &amp;lista de cargas…</translation>
    </message>
    <message>
        <source>&amp;Import load list…</source>
        <translation>&amp;Importar lista de cargas…</translation>
    </message>
    <message>
        <source>&amp;Edit load list…</source>
        <translation>&amp;Editar lista de cargas…</translation>
    </message>
    <message>
        <source>Withdraw load list</source>
        <translation>Retirar lista de cargas</translation>
    </message>
    <message>
        <source>&amp;Add appliance…</source>
        <translation>&amp;Añadir aparato…</translation>
    </message>
    <message>
        <source>Edit applia&amp;nce…</source>
        <translation>Editar apara&amp;to…</translation>
    </message>
    <message>
        <source>Remove appliance</source>
        <translation>Quitar aparato</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>E&amp;nsayo</translation>
    </message>
    <message>
        <source>&amp;Start run…</source>
        <translation>&amp;Iniciar ensayo…</translation>
    </message>
    <message>
        <source>&amp;End run</source>
        <translation>&amp;Terminar ensayo</translation>
    </message>
    <message>
        <source>Re&amp;open</source>
        <translation>Rea&amp;brir</translation>
    </message>
    <message>
        <source>&amp;Mark</source>
        <translation>&amp;Marca</translation>
    </message>
    <message>
        <source>&amp;Choose in the entry row</source>
        <translation>&amp;Elegir en la fila de entrada</translation>
    </message>
    <message>
        <source>Import &amp;log…</source>
        <translation>Importar &amp;grabación…</translation>
    </message>
    <message>
        <source>E&amp;dit run…</source>
        <translation>E&amp;ditar ensayo…</translation>
    </message>
    <message>
        <source>Make re&amp;port…</source>
        <translation>Crear in&amp;forme…</translation>
    </message>
    <message>
        <source>Enter &amp;reading</source>
        <translation>Introducir &amp;lectura</translation>
    </message>
    <message>
        <source>&amp;Amend the last or the chosen reading…</source>
        <translation>&amp;Enmendar la última lectura o la elegida…</translation>
    </message>
    <message>
        <source>Withdraw the chosen readings</source>
        <translation>Retirar las lecturas elegidas</translation>
    </message>
    <message>
        <source>Show withdrawn readings</source>
        <translation>Mostrar lecturas retiradas</translation>
    </message>
    <message>
        <source>Attach &amp;photo…</source>
        <translation>&amp;Adjuntar foto…</translation>
    </message>
    <message>
        <source>Paste p&amp;hoto</source>
        <translation>&amp;Pegar foto</translation>
    </message>
    <message>
        <source>Running &amp;tests</source>
        <translation>Ensayos en &amp;curso</translation>
    </message>
    <message>
        <source>&amp;All side by side</source>
        <translation>&amp;Todos, uno junto a otro</translation>
    </message>
    <message>
        <source>Bench &amp;display, full screen</source>
        <translation>&amp;Pantalla de banco, completa</translation>
    </message>
    <message>
        <source>Running test %1</source>
        <translation>Ensayo en curso %1</translation>
    </message>
    <message>
        <source>Re&amp;minders</source>
        <translation>&amp;Recordatorios</translation>
    </message>
    <message>
        <source>&amp;Next reading…</source>
        <translation>&amp;Próxima lectura…</translation>
    </message>
    <message>
        <source>&amp;Enter the reading that is due</source>
        <translation>&amp;Introducir la lectura pendiente</translation>
    </message>
    <message>
        <source>Remind me again in %1 minutes</source>
        <translation>Recordármelo de nuevo en %1 minutos</translation>
    </message>
    <message>
        <source>&amp;Sound when a reading is due</source>
        <translation>&amp;Sonido cuando haya una lectura pendiente</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>C&amp;omparar</translation>
    </message>
    <message>
        <source>&amp;Comparison page</source>
        <translation>&amp;Página de comparación</translation>
    </message>
    <message>
        <source>&amp;Add units of another logbook…</source>
        <translation>&amp;Añadir equipos de otro cuaderno…</translation>
    </message>
    <message>
        <source>Co&amp;lumns…</source>
        <translation>&amp;Columnas…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Exportar…</translation>
    </message>
    <message>
        <source>Copy &amp;table</source>
        <translation>Copiar &amp;tabla</translation>
    </message>
    <message>
        <source>&amp;Sizing</source>
        <translation>&amp;Dimensionado</translation>
    </message>
    <message>
        <source>&amp;Sizing for a load list</source>
        <translation>&amp;Dimensionado para una lista de cargas</translation>
    </message>
    <message>
        <source>&amp;Export sizing…</source>
        <translation>&amp;Exportar dimensionado…</translation>
    </message>
    <message>
        <source>Make &amp;report of the sizing…</source>
        <translation>Crear &amp;informe del dimensionado…</translation>
    </message>
    <message>
        <source>&amp;PV input check</source>
        <translation>&amp;Comprobación de la entrada FV</translation>
    </message>
    <message>
        <source>&amp;Add PV sheet</source>
        <translation>&amp;Añadir hoja FV</translation>
    </message>
    <message>
        <source>&amp;Import PV sheet…</source>
        <translation>I&amp;mportar hoja FV…</translation>
    </message>
    <message>
        <source>Withdraw PV sheet</source>
        <translation>Retirar hoja FV</translation>
    </message>
    <message>
        <source>Make re&amp;port of the PV check…</source>
        <translation>Crear in&amp;forme de la comprobación FV…</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;System colours</source>
        <translation>Colores del &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;Charts beside the readings</source>
        <translation>&amp;Gráficos junto a las lecturas</translation>
    </message>
    <message>
        <source>Cop&amp;y picture</source>
        <translation>Copiar &amp;imagen</translation>
    </message>
    <message>
        <source>Sa&amp;ve picture…</source>
        <translation>Guardar i&amp;magen…</translation>
    </message>
    <message>
        <source>Text l&amp;arger</source>
        <translation>Texto más g&amp;rande</translation>
    </message>
    <message>
        <source>Text s&amp;maller</source>
        <translation>Texto más &amp;pequeño</translation>
    </message>
    <message>
        <source>Text as &amp;usual</source>
        <translation>Texto de tamaño &amp;normal</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Keys and words</source>
        <translation>&amp;Teclas y palabras</translation>
    </message>
    <message>
        <source>Key ca&amp;rd to print…</source>
        <translation>Ta&amp;rjeta de teclas para imprimir…</translation>
    </message>
    <message>
        <source>&amp;Guided first run…</source>
        <translation>Primer ensayo &amp;guiado…</translation>
    </message>
    <message>
        <source>&amp;Worked example</source>
        <translation>&amp;Ejemplo resuelto</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Método</translation>
    </message>
    <message>
        <source>Check this &amp;installation</source>
        <translation>Comprobar esta i&amp;nstalación</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>Preca&amp;uciones</translation>
    </message>
    <message>
        <source>&amp;About Ullage</source>
        <translation>&amp;Acerca de Ullage</translation>
    </message>
    <message>
        <source>gauge %1 %</source>
        <translation>indicador %1 %</translation>
    </message>
    <message>
        <source>next reading %1</source>
        <translation>próxima lectura %1</translation>
    </message>
    <message>
        <source>Open a cop&amp;y…</source>
        <translation>A&amp;brir una copia…</translation>
    </message>
    <message>
        <source>&amp;Join another logbook…</source>
        <translation>&amp;Unir otro cuaderno…</translation>
    </message>
    <message>
        <source>Analysing the runs anew</source>
        <translation>Analizando de nuevo los ensayos</translation>
    </message>
</context>
<context>
    <name>ullage::MessageBar</name>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Show folder</source>
        <translation>Ver carpeta</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>dismiss the message</source>
        <translation>descartar el mensaje</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>ullage::MeterForm</name>
    <message>
        <source>Add meter</source>
        <translation>Añadir contador</translation>
    </message>
    <message>
        <source>Meter %1</source>
        <translation>Contador %1</translation>
    </message>
    <message>
        <source>Save meter</source>
        <translation>Guardar contador</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>as you call it at the bench</source>
        <translation>como lo llama usted en el banco</translation>
    </message>
    <message>
        <source>Register &amp;step</source>
        <translation>Re&amp;solución del registro</translation>
    </message>
    <message>
        <source>1 Wh or 0.01 kWh</source>
        <translation>1 Wh o 0,01 kWh</translation>
    </message>
    <message>
        <source>&amp;Error limit</source>
        <translation>Límite de &amp;error</translation>
    </message>
    <message>
        <source>1 % of the reading</source>
        <translation>1 % de la lectura</translation>
    </message>
    <message>
        <source>of it, each load&apos;s o&amp;wn</source>
        <translation>de él, pro&amp;pio de cada carga</translation>
    </message>
    <message>
        <source>a quarter of the limit; 0 after a calibration at your loads</source>
        <translation>un cuarto del límite; 0 si calibrado</translation>
    </message>
    <message>
        <source>Register s&amp;pan</source>
        <translation>Tope del re&amp;gistro</translation>
    </message>
    <message>
        <source>10000 kWh, where it returns to 0</source>
        <translation>10000 kWh, donde vuelve a 0</translation>
    </message>
    <message>
        <source>&amp;Correction</source>
        <translation>&amp;Corrección</translation>
    </message>
    <message>
        <source>1, or from a calibration</source>
        <translation>1, o la de una calibración</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>O&amp;bservación</translation>
    </message>
    <message>
        <source>Wh&amp;y it changes</source>
        <translation>Por &amp;qué cambia</translation>
    </message>
    <message>
        <source>kept in the meter&apos;s history</source>
        <translation>se guarda en el historial del contador</translation>
    </message>
    <message>
        <source>The error limit stands on the data sheet as ± a percentage of energy. Without it no interval can be given for delivered energy. A part of it differs from load to load and does not cancel between loads that differ by more than a factor of two. True energy is the correction times what the register counted. Points of a certificate replace correction and limit: load in W, correction, then U in % and k.</source>
        <translation>El límite de error está en la hoja de datos, como ± un porcentaje de la energía. Sin él no se puede dar ningún intervalo para la energía entregada. Una parte de él cambia de una carga a otra y no se cancela entre cargas que difieren en más de un factor dos. La energía verdadera es la corrección por lo que contó el registro. Los puntos de un certificado sustituyen a la corrección y al límite: carga en W, corrección y, después, U en % y k.</translation>
    </message>
    <message>
        <source>Class and range</source>
        <translation>Clase y rango</translation>
    </message>
    <message>
        <source>C&amp;lass</source>
        <translation>C&amp;lase</translation>
    </message>
    <message>
        <source>class</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>of</source>
        <translation>según</translation>
    </message>
    <message>
        <source>EN 50470-3</source>
        <translation>EN 50470-3</translation>
    </message>
    <message>
        <source>Ran&amp;ge</source>
        <translation>&amp;Rango</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>5 W</source>
        <translation>5 W</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>3600 W</source>
        <translation>3600 W</translation>
    </message>
    <message>
        <source>starts at</source>
        <translation>arranca con</translation>
    </message>
    <message>
        <source>0.02 A</source>
        <translation>0,02 A</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>Nú&amp;mero</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>laboratory</source>
        <translation>laboratorio</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Fecha</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>válido hasta</translation>
    </message>
    <message>
        <source>P&amp;oints</source>
        <translation>P&amp;untos</translation>
    </message>
    <message>
        <source>The meter needs a name, by which lists and sheets call it.</source>
        <translation>El contador necesita un nombre, por el que lo llaman listas y hojas.</translation>
    </message>
    <message>
        <source>An error limit over 100 % says nothing; enter a percentage of the reading.</source>
        <translation>Un límite de error de más del 100 % no dice nada; introduzca un porcentaje de la lectura.</translation>
    </message>
    <message>
        <source>It is a part of the error limit, so it cannot be larger; leave it empty for a quarter.</source>
        <translation>Es una parte del límite de error, así que no puede ser mayor; déjelo vacío para un cuarto.</translation>
    </message>
    <message>
        <source>The span must be larger than one step of the register.</source>
        <translation>El tope debe ser mayor que un escalón del registro.</translation>
    </message>
    <message>
        <source>The range must end above where it begins.</source>
        <translation>El rango debe terminar por encima de donde empieza.</translation>
    </message>
    <message>
        <source>Enter a date like 2027-05-14.</source>
        <translation>Introduzca una fecha como 2027-05-14.</translation>
    </message>
</context>
<context>
    <name>ullage::MetersModel</name>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Without an error limit no interval can be given for delivered energy.</source>
        <translation>Sin un límite de error no se puede dar ningún intervalo para la energía entregada.</translation>
    </message>
    <message>
        <source>by load</source>
        <translation>según la carga</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>contador</translation>
    </message>
    <message>
        <source>register step Wh</source>
        <translation>resol. del registro Wh</translation>
    </message>
    <message>
        <source>error limit ±%</source>
        <translation>límite de error ±%</translation>
    </message>
    <message>
        <source>register span Wh</source>
        <translation>tope del registro Wh</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>ensayos</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
</context>
<context>
    <name>ullage::MetersPage</name>
    <message>
        <source>No meters yet. Add meter takes what its data sheet says; without a meter a run has the gauge only.</source>
        <translation>Aún no hay contadores. Añadir contador recoge lo que dice su hoja de datos; sin contador, un ensayo solo tiene el indicador.</translation>
    </message>
    <message>
        <source>Edit meter</source>
        <translation>Editar contador</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Read live…</source>
        <translation>Leer en directo…</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Contadores</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Añadir contador</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>contadores</translation>
    </message>
    <message>
        <source>In series with other meters</source>
        <translation>En serie con otros contadores</translation>
    </message>
    <message>
        <source>History of its data</source>
        <translation>Historial de sus datos</translation>
    </message>
</context>
<context>
    <name>ullage::MethodForm</name>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Usar estas</translation>
    </message>
    <message>
        <source>What every analysis of this logbook takes for granted. Leave a field empty for the usual figure. Reports print the figures that they went by.</source>
        <translation>Lo que todo análisis de este cuaderno da por supuesto. Deje un campo vacío para la cifra habitual. Los informes imprimen las cifras con las que se hicieron.</translation>
    </message>
    <message>
        <source>usual: %1%2</source>
        <translation>habitual: %1%2</translation>
    </message>
    <message>
        <source>A claim is decided by the</source>
        <translation>Un dato declarado lo decide</translation>
    </message>
    <message>
        <source>whole interval</source>
        <translation>todo el intervalo</translation>
    </message>
    <message>
        <source>value alone</source>
        <translation>solo el valor</translation>
    </message>
    <message>
        <source>Now in use: drains repeat within %1.</source>
        <translation>En uso ahora: las descargas se repiten con un margen de %1.</translation>
    </message>
</context>
<context>
    <name>ullage::ModbusLink</name>
    <message>
        <source>the meter has closed the connection</source>
        <translation>el contador ha cerrado la conexión</translation>
    </message>
    <message>
        <source>the device names no SunSpec meter model (201 to 204, 211 to 214); state its registers</source>
        <translation>el dispositivo no nombra ningún modelo de contador SunSpec (201 a 204, 211 a 214); indique sus registros</translation>
    </message>
    <message>
        <source>the meter refuses registers %1 to %2 (exception %3)</source>
        <translation>el contador rechaza los registros %1 a %2 (excepción %3)</translation>
    </message>
    <message>
        <source>SunSpec meter model %1</source>
        <translation>modelo de contador SunSpec %1</translation>
    </message>
</context>
<context>
    <name>ullage::ModelsView</name>
    <message>
        <source>Models by their specimens</source>
        <translation>Modelos por sus ejemplares</translation>
    </message>
</context>
<context>
    <name>ullage::MqttLink</name>
    <message>
        <source>the broker refuses: %1</source>
        <translation>el broker rechaza: %1</translation>
    </message>
    <message>
        <source>a message of %1 MB came; those of a meter are short</source>
        <translation>llegó un mensaje de %1 MB; los de un contador son cortos</translation>
    </message>
    <message>
        <source>check that the broker runs, its host and port, and that it speaks TLS there</source>
        <translation>compruebe que el broker funciona, el host y el puerto, y que ahí habla TLS</translation>
    </message>
    <message>
        <source>check that the broker runs, its host and port, and whether it asks for TLS</source>
        <translation>compruebe que el broker funciona, el host y el puerto, y si exige TLS</translation>
    </message>
    <message>
        <source>the password is longer than MQTT can say; enter a shorter one</source>
        <translation>la contraseña es más larga de lo que MQTT puede decir; introduzca una más corta</translation>
    </message>
    <message>
        <source>what came is not MQTT 3.1.1</source>
        <translation>lo que llegó no es MQTT 3.1.1</translation>
    </message>
    <message>
        <source>the broker gives none of these topics to this user; check the topics, the user and its rights</source>
        <translation>el broker no da a este usuario ninguno de estos temas; compruebe los temas, el usuario y sus permisos</translation>
    </message>
    <message>
        <source>it does not speak MQTT 3.1.1</source>
        <translation>no habla MQTT 3.1.1</translation>
    </message>
    <message>
        <source>it takes nobody without a client name of their own</source>
        <translation>no admite a nadie sin un nombre de cliente propio</translation>
    </message>
    <message>
        <source>its service is not available now</source>
        <translation>su servicio no está disponible ahora</translation>
    </message>
    <message>
        <source>user or password is wrong, or this user may not read there</source>
        <translation>el usuario o la contraseña es incorrecta, o este usuario no puede leer ahí</translation>
    </message>
    <message>
        <source>code %1</source>
        <translation>código %1</translation>
    </message>
    <message>
        <source>the broker does not answer any more</source>
        <translation>el broker ya no responde</translation>
    </message>
    <message>
        <source>no secured connection (%1)</source>
        <translation>sin conexión segura (%1)</translation>
    </message>
</context>
<context>
    <name>ullage::NotificationService</name>
    <message>
        <source>Enter the reading</source>
        <translation>Introducir la lectura</translation>
    </message>
</context>
<context>
    <name>ullage::OtherLogbooksLine</name>
    <message>
        <source>with the units of</source>
        <translation>con los equipos de</translation>
    </message>
    <message>
        <source>%1: not read  ✕</source>
        <translation>%1: sin leer  ✕</translation>
    </message>
    <message>
        <source>Leave out the units of %1</source>
        <translation>Omitir los equipos de %1</translation>
    </message>
    <message>
        <source>%1, as it was when it was read; click to leave its units out</source>
        <translation>%1, tal como estaba cuando se leyó; haga clic para omitir sus equipos</translation>
    </message>
    <message>
        <source>%1
%2; click to leave it out</source>
        <translation>%1
%2; haga clic para omitirlo</translation>
    </message>
</context>
<context>
    <name>ullage::PairsModel</name>
    <message>
        <source>not comparable:
%1</source>
        <translation>no comparable:
%1</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
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
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Read live</source>
        <translation>Leer en directo</translation>
    </message>
    <message>
        <source>&amp;Keep in the desktop&apos;s secret store</source>
        <translation>&amp;Guardar en el almacén de claves del escritorio</translation>
    </message>
    <message>
        <source>The password of %1 at %2. The logbook never holds it.</source>
        <translation>La contraseña de %1 en %2. El cuaderno nunca la contiene.</translation>
    </message>
    <message>
        <source>It is asked for each time: %1.</source>
        <translation>Se pide cada vez: %1.</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>C&amp;ontraseña</translation>
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
        <translation>foto %1</translation>
    </message>
    <message>
        <source>, %1 x %2 pixels</source>
        <translation>, %1 x %2 píxeles</translation>
    </message>
    <message>
        <source>, shown at %1 % of its size; Save photo writes it whole</source>
        <translation>, mostrada al %1 % de su tamaño; Guardar foto la escribe entera</translation>
    </message>
    <message>
        <source>, taken %1</source>
        <translation>, tomada %1</translation>
    </message>
    <message>
        <source>, no time in it</source>
        <translation>, sin hora en ella</translation>
    </message>
    <message>
        <source>&amp;Fit  F</source>
        <translation>&amp;Ajustar  F</translation>
    </message>
    <message>
        <source>&amp;100 %  1</source>
        <translation>&amp;100 %  1</translation>
    </message>
    <message>
        <source>&amp;Save photo…</source>
        <translation>&amp;Guardar foto…</translation>
    </message>
    <message>
        <source>Write the photo to a file, byte for byte as it came</source>
        <translation>Escribir la foto en un archivo, byte a byte tal como llegó</translation>
    </message>
    <message>
        <source>&amp;Withdraw photo</source>
        <translation>&amp;Retirar foto</translation>
    </message>
    <message>
        <source>Take this photo out; undo brings it back</source>
        <translation>Quitar esta foto; deshacer la recupera</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>This picture is too large to be shown here: it would take more than %1 MB of memory. Save photo writes it to a file, whole.</source>
        <translation>Esta imagen es demasiado grande para mostrarla aquí: ocuparía más de %1 MB de memoria. Guardar foto la escribe entera en un archivo.</translation>
    </message>
    <message>
        <source>This picture is damaged and cannot be shown. Its file is kept in the logbook as it came.</source>
        <translation>Esta imagen está dañada y no se puede mostrar. Su archivo se conserva en el cuaderno tal como llegó.</translation>
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
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Withdraw photo</source>
        <translation>Retirar foto</translation>
    </message>
    <message>
        <source>photo %1 of %2: %3</source>
        <translation>foto %1 de %2: %3</translation>
    </message>
    <message>
        <source>Reading photo %1</source>
        <translation>Leyendo la foto %1</translation>
    </message>
    <message>
        <source>This photo is %1.</source>
        <translation>Esta foto es %1.</translation>
    </message>
</context>
<context>
    <name>ullage::PictureDialog</name>
    <message>
        <source>Save picture</source>
        <translation>Guardar imagen</translation>
    </message>
    <message>
        <source>Size and colours of the picture</source>
        <translation>Tamaño y colores de la imagen</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Formato</translation>
    </message>
    <message>
        <source>PNG, pixels for a page or a message</source>
        <translation>PNG, píxeles para página o mensaje</translation>
    </message>
    <message>
        <source>SVG, lines that stay sharp at any size</source>
        <translation>SVG, líneas nítidas a cualquier tamaño</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Anchura</translation>
    </message>
    <message>
        <source>160 mm or 605 px</source>
        <translation>160 mm o 605 px</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>A&amp;ltura</translation>
    </message>
    <message>
        <source>90 mm or 340 px</source>
        <translation>90 mm o 340 px</translation>
    </message>
    <message>
        <source>&amp;Sharpness of PNG</source>
        <translation>&amp;Nitidez del PNG</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Colores</translation>
    </message>
    <message>
        <source>&amp;Title, key and source in the picture</source>
        <translation>&amp;Título, leyenda y fuente en la imagen</translation>
    </message>
    <message>
        <source>%1 dots an inch</source>
        <translation>%1 puntos por pulgada</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>on white, for print</source>
        <translation>sobre blanco, para imprimir</translation>
    </message>
    <message>
        <source>Text keeps its size in mm: a larger picture has more room around it.</source>
        <translation>El texto conserva su tamaño en mm: una imagen mayor tiene más espacio a su alrededor.</translation>
    </message>
    <message>
        <source>PNG: %1 × %2 pixels. SVG is sharp at any size. Text keeps its size in mm: a larger picture has more room around it.</source>
        <translation>PNG: %1 × %2 píxeles. SVG es nítido a cualquier tamaño. El texto conserva su tamaño en mm: una imagen mayor tiene más espacio a su alrededor.</translation>
    </message>
    <message>
        <source>A picture needs this side, such as 160 mm.</source>
        <translation>Una imagen necesita este lado, por ejemplo 160 mm.</translation>
    </message>
</context>
<context>
    <name>ullage::PvForm</name>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>what you call it</source>
        <translation>como la llama usted</translation>
    </message>
    <message>
        <source>Unit whose PV input is meant</source>
        <translation>Equipo de cuya entrada FV se trata</translation>
    </message>
    <message>
        <source>One module, from its label</source>
        <translation>Un módulo, según su placa</translation>
    </message>
    <message>
        <source>Module</source>
        <translation>Módulo</translation>
    </message>
    <message>
        <source>as printed</source>
        <translation>como está impreso</translation>
    </message>
    <message>
        <source>Cells</source>
        <translation>Células</translation>
    </message>
    <message>
        <source>Voc, open circuit / V</source>
        <translation>Voc, circuito abierto / V</translation>
    </message>
    <message>
        <source>24.3</source>
        <translation>24,3</translation>
    </message>
    <message>
        <source>Vmp, maximum power / V</source>
        <translation>Vmp, potencia máxima / V</translation>
    </message>
    <message>
        <source>20.4</source>
        <translation>20,4</translation>
    </message>
    <message>
        <source>Isc, short circuit / A</source>
        <translation>Isc, cortocircuito / A</translation>
    </message>
    <message>
        <source>10.2</source>
        <translation>10,2</translation>
    </message>
    <message>
        <source>Imp, maximum power / A</source>
        <translation>Imp, potencia máxima / A</translation>
    </message>
    <message>
        <source>9.8</source>
        <translation>9,8</translation>
    </message>
    <message>
        <source>Coefficient of Voc</source>
        <translation>Coeficiente de Voc</translation>
    </message>
    <message>
        <source>−0.30 %/°C or −73 mV/°C</source>
        <translation>−0,30 %/°C o −73 mV/°C</translation>
    </message>
    <message>
        <source>Tolerance of its voltages / %</source>
        <translation>Tolerancia de tensiones / %</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>Coefficient of Vmp</source>
        <translation>Coeficiente de Vmp</translation>
    </message>
    <message>
        <source>−0.40 %/°C</source>
        <translation>−0,40 %/°C</translation>
    </message>
    <message>
        <source>Coefficient of power</source>
        <translation>Coeficiente de potencia</translation>
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
        <translation>Cómo se conectan</translation>
    </message>
    <message>
        <source>Modules in series</source>
        <translation>Módulos en serie</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>Strings in parallel</source>
        <translation>Cadenas en paralelo</translation>
    </message>
    <message>
        <source>The place</source>
        <translation>El lugar</translation>
    </message>
    <message>
        <source>Coldest ambient by day / °C</source>
        <translation>Ambiente más frío de día / °C</translation>
    </message>
    <message>
        <source>−15</source>
        <translation>−15</translation>
    </message>
    <message>
        <source>Hottest ambient / °C</source>
        <translation>Ambiente más cálido / °C</translation>
    </message>
    <message>
        <source>35</source>
        <translation>35</translation>
    </message>
    <message>
        <source>Hottest cell, if known / °C</source>
        <translation>Célula máx., si se conoce / °C</translation>
    </message>
    <message>
        <source>from ambient and NOCT</source>
        <translation>de ambiente y NOCT</translation>
    </message>
    <message>
        <source>Irradiance / W/m²</source>
        <translation>Irradiancia / W/m²</translation>
    </message>
    <message>
        <source>1000</source>
        <translation>1000</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>crystalline silicon</source>
        <translation>silicio cristalino</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>ninguno elegido</translation>
    </message>
    <message>
        <source>The sheet needs a name, by which it is found again.</source>
        <translation>La hoja necesita un nombre, por el que se la encuentra.</translation>
    </message>
</context>
<context>
    <name>ullage::PvPage</name>
    <message>
        <source>Withdraw sheet</source>
        <translation>Retirar hoja</translation>
    </message>
    <message>
        <source>Edit claims</source>
        <translation>Editar datos</translation>
    </message>
    <message>
        <source>PV input check</source>
        <translation>Comprobación de la entrada FV</translation>
    </message>
    <message>
        <source>PV sheet</source>
        <translation>Hoja FV</translation>
    </message>
    <message>
        <source>Add sheet</source>
        <translation>Añadir hoja</translation>
    </message>
    <message>
        <source>No PV sheets yet. Add sheet takes what a module&apos;s label says, how many are wired together, and how cold and hot the place gets; the page then tells whether a unit&apos;s PV input takes the string.</source>
        <translation>Aún no hay hojas FV. Añadir hoja recoge lo que dice la placa de un módulo, cuántos se conectan juntos y qué frío y calor alcanza el lugar; la página dice entonces si la entrada FV de un equipo admite la cadena.</translation>
    </message>
    <message>
        <source>PV sheet %1</source>
        <translation>Hoja FV %1</translation>
    </message>
    <message>
        <source>Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × Isc, NEC 690.8). </source>
        <translation>Conductores, y fusibles donde hagan falta, de cada cadena: para %1 A como mínimo (1,25 × 1,25 × Isc, NEC 690.8). </translation>
    </message>
</context>
<context>
    <name>ullage::PvVerdictView</name>
    <message>
        <source>DANGER: %1</source>
        <translation>PELIGRO: %1</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se conoce</translation>
    </message>
    <message>
        <source>Do not connect yet: a field cannot be read.</source>
        <translation>No conecte aún: un campo no se puede leer.</translation>
    </message>
</context>
<context>
    <name>ullage::QuestionBar</name>
    <message>
        <source>Keep  K</source>
        <translation>Mantener  K</translation>
    </message>
    <message>
        <source>Correct  C</source>
        <translation>Corregir  C</translation>
    </message>
    <message>
        <source>It was a reset  Z</source>
        <translation>Fue puesta a cero  Z</translation>
    </message>
    <message>
        <source>Meter swapped  W</source>
        <translation>Contador cambiado  W</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Not known  N</source>
        <translation>No se conoce  N</translation>
    </message>
    <message>
        <source>%1?  M</source>
        <translation>¿%1?  M</translation>
    </message>
    <message>
        <source>Records %1 instead</source>
        <translation>Anota %1 en su lugar</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsModel</name>
    <message>
        <source>energy in
Wh</source>
        <translation>absorbida
Wh</translation>
    </message>
    <message>
        <source>power
W</source>
        <translation>potencia
W</translation>
    </message>
    <message>
        <source>error, pt
if %1 Wh</source>
        <translation>error, pt
si %1 Wh</translation>
    </message>
    <message>
        <source>gauge less what is then left, in percentage points: of the %1 Wh that this drain is expected to deliver to its cut-off</source>
        <translation>indicador menos lo que entonces queda, en puntos porcentuales: de los %1 Wh que se prevé que esta descarga entregue hasta su corte</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>gauge
%</source>
        <translation>indicador
%</translation>
    </message>
    <message>
        <source>register
Wh</source>
        <translation>registro
Wh</translation>
    </message>
    <message>
        <source>delivered
Wh</source>
        <translation>entregada
Wh</translation>
    </message>
    <message>
        <source>load
W</source>
        <translation>carga
W</translation>
    </message>
    <message>
        <source>error
pt</source>
        <translation>error
pt</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>local time of the run</source>
        <translation>hora local del ensayo</translation>
    </message>
    <message>
        <source>what the unit&apos;s own gauge showed</source>
        <translation>lo que mostraba el indicador del propio equipo</translation>
    </message>
    <message>
        <source>what the meter&apos;s register showed</source>
        <translation>lo que mostraba el registro del contador</translation>
    </message>
    <message>
        <source>corrected energy since the first register reading</source>
        <translation>energía corregida desde la primera lectura del registro</translation>
    </message>
    <message>
        <source>mean load since the register reading before</source>
        <translation>carga media desde la lectura anterior del registro</translation>
    </message>
    <message>
        <source>gauge less the share that is left of what the drain delivers from full to cut-off, in percentage points</source>
        <translation>indicador menos la parte que queda de lo que entrega la descarga de lleno a corte, en puntos porcentuales</translation>
    </message>
    <message>
        <source>marks and remarks</source>
        <translation>marcas y observaciones</translation>
    </message>
    <message>
        <source>%1, amended</source>
        <translation>%1, enmendada</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsRows</name>
    <message>
        <source>withdrawn</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>withdrawn, %1</source>
        <translation>retirada, %1</translation>
    </message>
    <message>
        <source>assumed: %1. %2</source>
        <translation>supuesto: %1. %2</translation>
    </message>
    <message>
        <source>interpolated between the register readings around it</source>
        <translation>interpolado entre las lecturas del registro de alrededor</translation>
    </message>
</context>
<context>
    <name>ullage::ReadingsView</name>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
</context>
<context>
    <name>ullage::ReadoutLink</name>
    <message>
        <source>the meter does not answer the request for its read-out</source>
        <translation>el contador no responde a la petición de lectura</translation>
    </message>
    <message>
        <source>what comes is no identification of a meter</source>
        <translation>lo que llega no es la identificación de un contador</translation>
    </message>
</context>
<context>
    <name>ullage::RecordController</name>
    <message>
        <source>%1 and its runs are withdrawn; Edit, Undo brings them back.</source>
        <translation>%1 y sus ensayos están retirados; Editar, Deshacer los recupera.</translation>
    </message>
    <message>
        <source>A run needs a unit: choose Edit, Add unit first.</source>
        <translation>Un ensayo necesita un equipo: elija antes Editar, Añadir equipo.</translation>
    </message>
    <message>
        <source>a %1 of %2 is still running</source>
        <translation>hay aún en curso un ensayo de %1 de %2</translation>
    </message>
    <message>
        <source>%1 is in the running test of %2</source>
        <translation>%1 está en el ensayo en curso de %2</translation>
    </message>
    <message>
        <source>This run is no longer in the open logbook.</source>
        <translation>Este ensayo ya no está en el cuaderno abierto.</translation>
    </message>
    <message>
        <source>The run is ended: %1; Edit, Undo lets it go on.</source>
        <translation>El ensayo está terminado: %1; Editar, Deshacer lo deja seguir.</translation>
    </message>
    <message>
        <source>The run is withdrawn; Edit, Undo brings it back.</source>
        <translation>El ensayo está retirado; Editar, Deshacer lo recupera.</translation>
    </message>
</context>
<context>
    <name>ullage::ReminderBar</name>
    <message>
        <source>▲ due</source>
        <translation>▲ pendiente</translation>
    </message>
    <message>
        <source>Enter reading</source>
        <translation>Introducir lectura</translation>
    </message>
    <message>
        <source>remind me again in</source>
        <translation>recordármelo de nuevo en</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Remind me again in %1 minutes</source>
        <translation>Recordármelo de nuevo en %1 minutos</translation>
    </message>
    <message>
        <source>%1: reading %2, %3</source>
        <translation>%1: lectura %2, %3</translation>
    </message>
    <message>
        <source>; and one more test</source>
        <translation>; y un ensayo más</translation>
    </message>
    <message>
        <source>; and %1 more tests</source>
        <translation>; y %1 ensayos más</translation>
    </message>
</context>
<context>
    <name>ullage::ReminderForm</name>
    <message>
        <source>Next reading</source>
        <translation>Próxima lectura</translation>
    </message>
    <message>
        <source>Remind me</source>
        <translation>Recordarme</translation>
    </message>
    <message>
        <source>%1: call me for the next reading at the earliest of these moments. Leave empty what should not count.</source>
        <translation>%1: avisar de la próxima lectura en el primero de estos momentos. Deje vacío lo que no deba contar.</translation>
    </message>
    <message>
        <source>&amp;After the last reading</source>
        <translation>&amp;Tras la última lectura</translation>
    </message>
    <message>
        <source>never; or 30 min, 1.5 h</source>
        <translation>nunca; o 30 min, 1,5 h</translation>
    </message>
    <message>
        <source>When the &amp;gauge should be down by</source>
        <translation>Cuando el &amp;indicador haya bajado</translation>
    </message>
    <message>
        <source>never; or 10 points</source>
        <translation>nunca; o 10 puntos</translation>
    </message>
    <message>
        <source>&amp;Before the expected cut-off</source>
        <translation>&amp;Antes del corte previsto</translation>
    </message>
    <message>
        <source>never; or 15 min</source>
        <translation>nunca; o 15 min</translation>
    </message>
</context>
<context>
    <name>ullage::Reminders</name>
    <message>
        <source>%1: a reading is due</source>
        <translation>%1: hay una lectura pendiente</translation>
    </message>
    <message>
        <source>You asked to be called again</source>
        <translation>Usted pidió otro aviso</translation>
    </message>
</context>
<context>
    <name>ullage::ReportController</name>
    <message>
        <source>%1 has no runs yet, so there is nothing to report.</source>
        <translation>%1 aún no tiene ensayos, así que no hay nada de lo que informar.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <translation>%1, ensayo %2</translation>
    </message>
    <message>
        <source>A report of %1 rows would have thousands of pages, since it holds the readings and charts of each. Filter the comparison to %2 rows at most; its export holds them all.</source>
        <translation>Un informe de %1 filas tendría miles de páginas, pues contiene las lecturas y los gráficos de cada una. Filtre la comparación a %2 filas como máximo; su exportación las contiene todas.</translation>
    </message>
    <message>
        <source>as tested, each at its own load</source>
        <translation>según ensayo, cada uno a su propia carga</translation>
    </message>
    <message>
        <source>at %1, as on the page</source>
        <translation>a %1, como en la página</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparación</translation>
    </message>
    <message>
        <source>sizing for %1</source>
        <translation>dimensionado para %1</translation>
    </message>
    <message>
        <source>Choose a PV sheet whose fields can be read; then make its report.</source>
        <translation>Elija una hoja FV cuyos campos se puedan leer; después cree su informe.</translation>
    </message>
    <message>
        <source>PV check %1</source>
        <translation>comprobación FV %1</translation>
    </message>
    <message>
        <source>keys at the bench</source>
        <translation>teclas en el banco</translation>
    </message>
    <message>
        <source>Keys at the bench</source>
        <translation>Teclas en el banco</translation>
    </message>
    <message>
        <source>A sheet with the keys of the bench, to be printed and hung up there.</source>
        <translation>Una hoja con las teclas del banco, para imprimirla y colgarla allí.</translation>
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
        <translation>Página HTML (*.html)</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Crear informe</translation>
    </message>
    <message>
        <source>Making the report</source>
        <translation>Creando el informe</translation>
    </message>
    <message>
        <source>Report saved to %1, its tables and pictures to the folder %2.</source>
        <translation>Informe guardado en %1; sus tablas e imágenes, en la carpeta %2.</translation>
    </message>
    <message>
        <source>Report saved to %1.</source>
        <translation>Informe guardado en %1.</translation>
    </message>
</context>
<context>
    <name>ullage::ReportForm</name>
    <message>
        <source>It shows the units of the comparison page, which units are clearly different, and says of each unit that cannot be converted to one load why it stays as tested. The load is chosen on that page.</source>
        <translation>Muestra los equipos de la página de comparación y cuáles son claramente distintos, y de cada equipo que no se puede convertir a una misma carga dice por qué queda según ensayo. La carga se elige en esa página.</translation>
    </message>
    <message>
        <source>Report on %1</source>
        <translation>Informe sobre %1</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Crear informe</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>E&amp;quipos</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Formato</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papel</translation>
    </message>
    <message>
        <source>Its &amp;tables (HTML) and pictures (PNG) as files too, in a folder beside it</source>
        <translation>También sus &amp;tablas (HTML) e imágenes (PNG) como archivos, en una carpeta al lado</translation>
    </message>
    <message>
        <source>With what is &amp;mine alone: tags, prices paid, remarks, advice</source>
        <translation>Con lo que es solo &amp;mío: etiquetas, precios pagados, observaciones, consejos</translation>
    </message>
    <message>
        <source>PDF, pages to print or to send</source>
        <translation>PDF, páginas para imprimir o enviar</translation>
    </message>
    <message>
        <source>HTML, one page for the web</source>
        <translation>HTML, una página para la web</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be known, amendments and cautions. Numbers have the decimal sign of its language.</source>
        <translation>El informe contiene resumen, contadores, método con fuentes, lecturas, presupuesto de incertidumbre, gráficos, hallazgos, lo que no se puede conocer, enmiendas y precauciones. Los números llevan el signo decimal de su idioma.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
</context>
<context>
    <name>ullage::ResultStrip</name>
    <message>
        <source>The run in figures</source>
        <translation>El ensayo en cifras</translation>
    </message>
</context>
<context>
    <name>ullage::RunChartsPanel</name>
    <message>
        <source>Charts of the run</source>
        <translation>Gráficos del ensayo</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energía</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Error del indicador</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <source>Intervals between readings</source>
        <translation>Intervalos entre lecturas</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalos</translation>
    </message>
</context>
<context>
    <name>ullage::RunForm</name>
    <message>
        <source>Edit run</source>
        <translation>Editar ensayo</translation>
    </message>
    <message>
        <source>Save run</source>
        <translation>Guardar ensayo</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>E&amp;quipo</translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>&amp;Tipo de ensayo</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Contador</translation>
    </message>
    <message>
        <source>S&amp;econd meter</source>
        <translation>S&amp;egundo contador</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>Car&amp;ga</translation>
    </message>
    <message>
        <source>what is plugged in, in your words</source>
        <translation>lo enchufado, con sus palabras</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>Inicio &amp;lleno</translation>
    </message>
    <message>
        <source>E&amp;nded</source>
        <translation>Termi&amp;nó</translation>
    </message>
    <message>
        <source>End noti&amp;ced within</source>
        <translation>Fin a&amp;dvertido en</translation>
    </message>
    <message>
        <source>2 min, where you know; else 5 min is taken</source>
        <translation>2 min, si lo sabe; si no, se toman 5 min</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature</source>
        <translation>Temperatura &amp;ambiente</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>… at the en&amp;d</source>
        <translation>… al &amp;final</translation>
    </message>
    <message>
        <source>&amp;Charged from</source>
        <translation>&amp;Recarga desde</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>&amp;Zona horaria</translation>
    </message>
    <message>
        <source>One in series, whose register you note too; or the one that took over at a mark &quot;meter swapped&quot;</source>
        <translation>Uno en serie, cuyo registro también anota; o el que continuó en una marca «contador cambiado»</translation>
    </message>
    <message>
        <source>The second meter is the first one; choose another, or none.</source>
        <translation>El segundo contador es el primero; elija otro, o ninguno.</translation>
    </message>
    <message>
        <source>No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC.</source>
        <translation>Aquí no se conoce esa zona horaria; elija región y lugar, como Africa/Nairobi, o UTC.</translation>
    </message>
</context>
<context>
    <name>ullage::RunHead</name>
    <message>
        <source>Mark…</source>
        <translation>Marca…</translation>
    </message>
    <message>
        <source>Note an event: load changed, meter zeroed, cut-off</source>
        <translation>Anotar un suceso: carga cambiada, contador puesto a cero, corte</translation>
    </message>
    <message>
        <source>End run…</source>
        <translation>Terminar ensayo…</translation>
    </message>
    <message>
        <source>Say how and when this run ended, and what was shown then</source>
        <translation>Indicar cómo y cuándo terminó este ensayo y qué se mostraba entonces</translation>
    </message>
    <message>
        <source>Photo…</source>
        <translation>Foto…</translation>
    </message>
    <message>
        <source>Attach photos to the chosen reading, or to the next one</source>
        <translation>Adjuntar fotos a la lectura elegida o a la próxima</translation>
    </message>
    <message>
        <source>Amend</source>
        <translation>Enmendar</translation>
    </message>
    <message>
        <source>Change the chosen reading, or else the last; the old values are kept</source>
        <translation>Cambiar la lectura elegida o, si no, la última; los valores antiguos se conservan</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Take the chosen readings out; undo brings them back</source>
        <translation>Quitar las lecturas elegidas; deshacer las recupera</translation>
    </message>
    <message>
        <source>Edit run</source>
        <translation>Editar ensayo</translation>
    </message>
    <message>
        <source>Change what is stated about this run</source>
        <translation>Cambiar lo que está indicado de este ensayo</translation>
    </message>
    <message>
        <source>Next reading…</source>
        <translation>Próxima lectura…</translation>
    </message>
    <message>
        <source>Say when to be reminded of the next reading</source>
        <translation>Indicar cuándo recordar la próxima lectura</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en curso</translation>
    </message>
</context>
<context>
    <name>ullage::RunPage</name>
    <message>
        <source>Nothing to say yet. With readings of gauge and register the findings stand here.</source>
        <translation>Aún no hay nada que decir. Con lecturas de indicador y registro, aquí están los hallazgos.</translation>
    </message>
    <message>
        <source>No readings yet. Type what the gauge and the meter&apos;s register show into the row below and press Enter; the time is filled in.</source>
        <translation>Aún no hay lecturas. Escriba lo que muestran el indicador y el registro del contador en la fila de abajo y pulse Intro; la hora se rellena sola.</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Grabación</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Right or wrong</source>
        <translation>Acierta o no</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>the reading of %1</source>
        <translation>la lectura de %1</translation>
    </message>
    <message>
        <source>the next reading</source>
        <translation>la próxima lectura</translation>
    </message>
    <message>
        <source>The clipboard holds no picture; copy a photo or its file first.</source>
        <translation>El portapapeles no contiene ninguna imagen; copie antes una foto o su archivo.</translation>
    </message>
</context>
<context>
    <name>ullage::RunPhotos</name>
    <message>
        <source>&amp;Amend to the photo&apos;s time</source>
        <translation>Enmendar a la &amp;hora de la foto</translation>
    </message>
    <message>
        <source>Photos of the chosen reading</source>
        <translation>Fotos de la lectura elegida</translation>
    </message>
    <message>
        <source>Photos of undone readings</source>
        <translation>Fotos de lecturas deshechas</translation>
    </message>
    <message>
        <source>Lea&amp;ve the time</source>
        <translation>De&amp;jar la hora</translation>
    </message>
    <message>
        <source>A reading that was undone keeps its photos as evidence</source>
        <translation>Una lectura deshecha conserva sus fotos como evidencia</translation>
    </message>
    <message>
        <source>of an undone reading</source>
        <translation>de una lectura deshecha</translation>
    </message>
    <message>
        <source>of the undone reading of %1</source>
        <translation>de la lectura deshecha de %1</translation>
    </message>
    <message>
        <source>Photos of undone readings: %1</source>
        <translation>Fotos de lecturas deshechas: %1</translation>
    </message>
    <message>
        <source>The photo was taken %1; the reading says %2.</source>
        <translation>La foto se tomó %1; la lectura dice %2.</translation>
    </message>
    <message>
        <source>time of the photo</source>
        <translation>hora de la foto</translation>
    </message>
</context>
<context>
    <name>ullage::ScpiLink</name>
    <message>
        <source>the instrument does not answer %1</source>
        <translation>el instrumento no responde a %1</translation>
    </message>
    <message>
        <source>an answer without end came</source>
        <translation>llegó una respuesta sin final</translation>
    </message>
</context>
<context>
    <name>ullage::SettingsController</name>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Folder for copies of logbooks</source>
        <translation>Carpeta para copias de cuadernos</translation>
    </message>
</context>
<context>
    <name>ullage::SettingsDialog</name>
    <message>
        <source>Drain</source>
        <translation>Descarga</translation>
    </message>
    <message>
        <source>No-load drain</source>
        <translation>Descarga en vacío</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Recarga</translation>
    </message>
    <message>
        <source>Sustained output</source>
        <translation>Potencia sostenida</translation>
    </message>
    <message>
        <source>Peak output</source>
        <translation>Potencia de pico</translation>
    </message>
    <message>
        <source>Standby</source>
        <translation>Reposo</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>como el escritorio</translation>
    </message>
    <message>
        <source>Another language counts from the next start of the program.</source>
        <translation>Otro idioma vale desde el próximo inicio del programa.</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Tema</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation>Ta&amp;maño del texto</translation>
    </message>
    <message>
        <source>100 %, as the desktop</source>
        <translation>100 %, como el escritorio</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Theme and text size are shown at once. Cancel takes them back.</source>
        <translation>El tema y el tamaño del texto se muestran al momento. Cancelar los deshace.</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>Default &amp;meter</source>
        <translation>Contador por d&amp;efecto</translation>
    </message>
    <message>
        <source>The meter that Start run proposes. Open a logbook to choose among its meters.</source>
        <translation>El contador que propone Iniciar ensayo. Abra un cuaderno para elegir entre sus contadores.</translation>
    </message>
    <message>
        <source>The meter that Start run proposes. This logbook has no meter yet.</source>
        <translation>El contador que propone Iniciar ensayo. Este cuaderno aún no tiene contadores.</translation>
    </message>
    <message>
        <source>The meter of this logbook that Start run proposes.</source>
        <translation>El contador de este cuaderno que propone Iniciar ensayo.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Recordatorios</translation>
    </message>
    <message>
        <source>&amp;Kind of run</source>
        <translation>&amp;Tipo de ensayo</translation>
    </message>
    <message>
        <source>&amp;Remind me to read</source>
        <translation>&amp;Recordarme leer</translation>
    </message>
    <message>
        <source>every</source>
        <translation>cada</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>when the gauge is down by</source>
        <translation>cuando el indicador baje</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>before the cut-off</source>
        <translation>antes del corte</translation>
    </message>
    <message>
        <source>Start run proposes these for a new run of that kind, and remembers what you enter there.</source>
        <translation>Iniciar ensayo propone esto para un ensayo nuevo de ese tipo y recuerda lo que usted introduce allí.</translation>
    </message>
    <message>
        <source>Call me by a &amp;notice of the desktop too</source>
        <translation>Avisarme también con una &amp;notificación del escritorio</translation>
    </message>
    <message>
        <source>With a &amp;sound</source>
        <translation>Con &amp;sonido</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Informes</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papel</translation>
    </message>
    <message>
        <source>as the desktop&apos;s region: %1</source>
        <translation>como la región del escritorio: %1</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Published by</source>
        <translation>Publicado por</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>yours, or that of the paper</source>
        <translation>el de usted o el del periódico</translation>
    </message>
    <message>
        <source>Lice&amp;nce of the text</source>
        <translation>&amp;Licencia del texto</translation>
    </message>
    <message>
        <source>such as CC BY 4.0</source>
        <translation>por ejemplo CC BY 4.0</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>Tít&amp;ulo</translation>
    </message>
    <message>
        <source>in place of the report&apos;s own</source>
        <translation>en lugar del propio del informe</translation>
    </message>
    <message>
        <source>a paragraph before the answers</source>
        <translation>un párrafo antes de las respuestas</translation>
    </message>
    <message>
        <source>&amp;Introduction</source>
        <translation>&amp;Introducción</translation>
    </message>
    <message>
        <source>These are kept in the logbook, into which another program records. They can be changed when that has ended.</source>
        <translation>Esto se guarda en el cuaderno, en el que anota otro programa. Se puede cambiar cuando este haya terminado.</translation>
    </message>
    <message>
        <source>These are kept in the logbook. Name and licence are proposed for other logbooks too.</source>
        <translation>Esto se guarda en el cuaderno. Nombre y licencia se proponen también para otros cuadernos.</translation>
    </message>
    <message>
        <source>Name and licence are proposed for every logbook. Title and introduction are kept in a logbook: open one.</source>
        <translation>Nombre y licencia se proponen para todos los cuadernos. Título e introducción se guardan en un cuaderno: abra uno.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>Car&amp;peta</translation>
    </message>
    <message>
        <source>beside each logbook</source>
        <translation>junto a cada cuaderno</translation>
    </message>
    <message>
        <source>Choo&amp;se folder…</source>
        <translation>E&amp;legir carpeta…</translation>
    </message>
    <message>
        <source>&amp;Keep for days</source>
        <translation>&amp;Días que se conservan</translation>
    </message>
    <message>
        <source>1 to 3650</source>
        <translation>1 a 3650</translation>
    </message>
    <message>
        <source>Older copies are removed. A folder on another disk also helps when this disk fails.</source>
        <translation>Las copias más antiguas se quitan. Una carpeta en otro disco ayuda también si falla este disco.</translation>
    </message>
    <message>
        <source>Name the folder from the root on, such as /media/disk/copies, or leave the field empty.</source>
        <translation>Nombre la carpeta desde la raíz, como /media/disk/copies, o deje el campo vacío.</translation>
    </message>
    <message>
        <source>There is no such folder. Make it, or choose another.</source>
        <translation>No existe esa carpeta. Créela o elija otra.</translation>
    </message>
    <message>
        <source>Nothing can be written into this folder. Choose another.</source>
        <translation>No se puede escribir nada en esta carpeta. Elija otra.</translation>
    </message>
    <message>
        <source>Enter for how many days a copy is kept, such as 30.</source>
        <translation>Introduzca cuántos días se conserva una copia, por ejemplo 30.</translation>
    </message>
    <message>
        <source>Make a &amp;copy of each logbook automatically</source>
        <translation>Hacer automáticamente una &amp;copia de cada cuaderno</translation>
    </message>
</context>
<context>
    <name>ullage::SizingForm</name>
    <message>
        <source>Wanted</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Days without sun</source>
        <translation>Días sin sol</translation>
    </message>
    <message>
        <source> d</source>
        <translation> d</translation>
    </message>
    <message>
        <source>Days of autonomy: how long the units are to carry the list alone</source>
        <translation>Días de autonomía: cuánto tiempo han de alimentar los equipos la lista por sí solos</translation>
    </message>
    <message>
        <source>Units in the chart</source>
        <translation>Equipos en el gráfico</translation>
    </message>
    <message>
        <source>Units side by side in the chart of the charge</source>
        <translation>Equipos en paralelo en el gráfico del estado de carga</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Peak-sun hours</source>
        <translation>Horas de sol pico</translation>
    </message>
    <message>
        <source> h/d</source>
        <translation> h/d</translation>
    </message>
    <message>
        <source>Hours a day at 1 kW/m² on the module plane, in the worst month that counts</source>
        <translation>Horas al día a 1 kW/m² en el plano del módulo, en el peor mes que cuenta</translation>
    </message>
    <message>
        <source>Derating</source>
        <translation>Rendimiento FV</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>What is left of the array&apos;s label at the battery: heat, dust, wiring, charging</source>
        <translation>Lo que queda en la batería de lo que dice la placa del generador: calor, polvo, cableado, recarga</translation>
    </message>
    <message>
        <source>Array to load</source>
        <translation>Generador/carga</translation>
    </message>
    <message>
        <source>Array energy over daily load: 1.1 to 1.2 for ordinary loads, 1.3 and more for critical ones</source>
        <translation>Energía del generador entre consumo diario: 1,1 a 1,2 para cargas corrientes; 1,3 y más para las críticas</translation>
    </message>
    <message>
        <source>Array there is</source>
        <translation>Generador existente</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>Left at –, the array is the one that the rule asks for</source>
        <translation>Si queda en –, el generador es el que pide la norma</translation>
    </message>
    <message>
        <source>Untested units, at the socket</source>
        <translation>Equipos sin ensayar, en la toma</translation>
    </message>
    <message>
        <source>Expected from</source>
        <translation>Previsto desde</translation>
    </message>
    <message>
        <source> % of rated</source>
        <translation> % de la asignada</translation>
    </message>
    <message>
        <source>Common practice: 75 to 80 %</source>
        <translation>Práctica común: del 75 al 80 %</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>Battery by rule, a cross-check</source>
        <translation>Batería según norma, comprobación cruzada</translation>
    </message>
    <message>
        <source>Inverter efficiency</source>
        <translation>Rendimiento del inversor</translation>
    </message>
    <message>
        <source>Deepest discharge</source>
        <translation>Descarga más profunda</translation>
    </message>
    <message>
        <source>Left at end of life</source>
        <translation>Restante al final de vida</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>1.10 to 1.25 (IEEE 1013)</source>
        <translation>1,10 a 1,25 (IEEE 1013)</translation>
    </message>
    <message>
        <source>Temperature factor</source>
        <translation>Factor de temperatura</translation>
    </message>
    <message>
        <source>1 for lithium with thermal control; lead-acid in the cold more</source>
        <translation>1 para litio con control térmico; plomo-ácido en frío, más</translation>
    </message>
    <message>
        <source>Peak-sun hours by month, h/d</source>
        <translation>Horas de sol pico por mes, h/d</translation>
    </message>
    <message>
        <source>Peak-sun hours in %1</source>
        <translation>Horas de sol pico en %1</translation>
    </message>
</context>
<context>
    <name>ullage::SizingPage</name>
    <message>
        <source>Make report</source>
        <translation>Crear informe</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>units for the load list</source>
        <translation>equipos para la lista de cargas</translation>
    </message>
    <message>
        <source>PV array and battery by rule</source>
        <translation>Generador FV y batería según norma</translation>
    </message>
    <message>
        <source>PV array by month</source>
        <translation>Generador FV por meses</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation>Dimensionado</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Lista de cargas</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation>Listas de cargas</translation>
    </message>
    <message>
        <source>Type the peak-sun hours of the months at the left to see what the array brings in each.</source>
        <translation>Escriba a la izquierda las horas de sol pico de los meses para ver qué da el generador en cada uno.</translation>
    </message>
    <message>
        <source>No load list yet. Add one under Edit, Load lists, with what is to run and for how long; this page then says how long each unit carries it, how many are needed, and which PV array.</source>
        <translation>Aún no hay lista de cargas. Añada una en Editar, Listas de cargas, con lo que ha de funcionar y cuánto tiempo; esta página dice entonces cuánto la alimenta cada equipo, cuántos hacen falta y qué generador FV.</translation>
    </message>
    <message>
        <source>%1 takes %2 Wh a day, %3 W when all of it runs, %4 W at most.</source>
        <translation>%1 consume %2 Wh al día, %3 W con todo en marcha, %4 W como máximo.</translation>
    </message>
    <message>
        <source>Sizing %1 units</source>
        <translation>Dimensionando %1 equipos</translation>
    </message>
    <message>
        <source>Sizing %1 units…</source>
        <translation>Dimensionando %1 equipos…</translation>
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
        <translation>Modbus RTU, línea serie</translation>
    </message>
    <message>
        <source>MQTT 3.1.1, by a broker</source>
        <translation>MQTT 3.1.1, por un broker</translation>
    </message>
    <message>
        <source>HTTP, JSON</source>
        <translation>HTTP, JSON</translation>
    </message>
    <message>
        <source>Lines of text, serial line</source>
        <translation>Líneas de texto, línea serie</translation>
    </message>
    <message>
        <source>IEC 62056-21 read-out, serial line</source>
        <translation>Lectura IEC 62056-21, línea serie</translation>
    </message>
    <message>
        <source>SCPI over TCP</source>
        <translation>SCPI por TCP</translation>
    </message>
    <message>
        <source>SCPI, serial line</source>
        <translation>SCPI, línea serie</translation>
    </message>
    <message>
        <source>Read %1 live</source>
        <translation>Leer %1 en directo</translation>
    </message>
    <message>
        <source>Use this source</source>
        <translation>Usar esta fuente</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>not read live</source>
        <translation>no se lee en directo</translation>
    </message>
    <message>
        <source>The program only reads, and contacts no other address. Meters in mains circuits are installed by licensed people; local codes come first. The logbook never holds a password. Help, Meters read live tells what may stand here.</source>
        <translation>El programa solo lee y no contacta con ninguna otra dirección. Los contadores en circuitos de red los instala personal autorizado; los reglamentos locales van primero. El cuaderno nunca contiene una contraseña. Ayuda, Contadores en directo dice qué puede ir aquí.</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>&amp;Dirección</translation>
    </message>
    <message>
        <source>&amp;Station</source>
        <translation>E&amp;stación</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Línea</translation>
    </message>
    <message>
        <source>9600 8N1</source>
        <translation>9600 8N1</translation>
    </message>
    <message>
        <source>What is &amp;read</source>
        <translation>&amp;Qué se lee</translation>
    </message>
    <message>
        <source>&amp;Every</source>
        <translation>&amp;Cada</translation>
    </message>
    <message>
        <source>1 s</source>
        <translation>1 s</translation>
    </message>
    <message>
        <source>U&amp;ser</source>
        <translation>&amp;Usuario</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>C&amp;ontraseña</translation>
    </message>
    <message>
        <source>for Try; not kept</source>
        <translation>para Probar; no se guarda</translation>
    </message>
    <message>
        <source>For&amp;get the kept password</source>
        <translation>Ol&amp;vidar la contraseña guardada</translation>
    </message>
    <message>
        <source>se&amp;cured (TLS)</source>
        <translation>se&amp;gura (TLS)</translation>
    </message>
    <message>
        <source>&amp;Try</source>
        <translation>&amp;Probar</translation>
    </message>
    <message>
        <source>What comes</source>
        <translation>Lo que llega</translation>
    </message>
    <message>
        <source>Enter where the meter is.</source>
        <translation>Introduzca dónde está el contador.</translation>
    </message>
    <message>
        <source>nothing has come from this source yet: Try shows whether it can be read</source>
        <translation>aún no ha llegado nada de esta fuente: Probar muestra si se puede leer</translation>
    </message>
    <message>
        <source>kept by the desktop</source>
        <translation>guardada por el escritorio</translation>
    </message>
</context>
<context>
    <name>ullage::SpokenChart</name>
    <message>
        <source>Curve without a name</source>
        <translation>Curva sin nombre</translation>
    </message>
    <message>
        <source>%1: nothing known.</source>
        <translation>%1: nada conocido.</translation>
    </message>
    <message>
        <source>%1: one point, %2 at %3.</source>
        <translation>%1: un punto, %2 en %3.</translation>
    </message>
    <message>
        <source>%1: %2 points, from %3 at %4 to %5 at %6; lowest %7, highest %8.</source>
        <translation>%1: %2 puntos, de %3 en %4 a %5 en %6; mínimo %7, máximo %8.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>Of %1.</source>
        <translation>De %1.</translation>
    </message>
    <message>
        <source>Line at %1: %2.</source>
        <translation>Línea en %1: %2.</translation>
    </message>
    <message>
        <source>Band from %1 to %2: %3.</source>
        <translation>Banda de %1 a %2: %3.</translation>
    </message>
    <message>
        <source>From %1 to %2: %3.</source>
        <translation>De %1 a %2: %3.</translation>
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
        <translation>%1: %2 entregados, %3.</translation>
    </message>
</context>
<context>
    <name>ullage::StartForm</name>
    <message>
        <source>&amp;Drain</source>
        <translation>&amp;Descarga</translation>
    </message>
    <message>
        <source>From full to cut-off through a load: the usable fraction, and whether the gauge is right.</source>
        <translation>De lleno a corte con una carga: la fracción útil y si el indicador acierta.</translation>
    </message>
    <message>
        <source>&amp;No-load drain</source>
        <translation>Descarga en &amp;vacío</translation>
    </message>
    <message>
        <source>Output on, nothing connected: what the unit consumes by itself. It takes days; few readings do.</source>
        <translation>Salida encendida, nada conectado: lo que consume el equipo por sí mismo. Lleva días; bastan pocas lecturas.</translation>
    </message>
    <message>
        <source>nothing connected</source>
        <translation>nada conectado</translation>
    </message>
    <message>
        <source>&amp;Charge</source>
        <translation>&amp;Recarga</translation>
    </message>
    <message>
        <source>From empty to full: how long it takes, and with the meter before the charger what goes in.</source>
        <translation>De vacío a lleno: cuánto tarda y, con el contador antes del cargador, cuánto entra.</translation>
    </message>
    <message>
        <source>&amp;Sustained output</source>
        <translation>Potencia &amp;sostenida</translation>
    </message>
    <message>
        <source>A load at the rated output: whether the unit carries it, and for how long.</source>
        <translation>Una carga a la potencia asignada: si el equipo la mantiene y durante cuánto tiempo.</translation>
    </message>
    <message>
        <source>&amp;Peak output</source>
        <translation>Potencia de pic&amp;o</translation>
    </message>
    <message>
        <source>A short load above the rated output: whether the unit starts it. Mark each trip.</source>
        <translation>Una carga breve por encima de la potencia asignada: si el equipo la arranca. Marque cada disparo.</translation>
    </message>
    <message>
        <source>Stand&amp;by</source>
        <translation>Re&amp;poso</translation>
    </message>
    <message>
        <source>Output off, left alone: what the unit loses by itself over days. Read the gauge now and then; charge it afterwards.</source>
        <translation>Salida apagada, sin tocarlo: lo que pierde el equipo por sí mismo durante días. Lea el indicador de vez en cuando; recárguelo después.</translation>
    </message>
    <message>
        <source>output off, nothing connected</source>
        <translation>salida apagada, nada conectado</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Iniciar ensayo</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>E&amp;quipo</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Contador</translation>
    </message>
    <message>
        <source>Second &amp;meter</source>
        <translation>Segundo co&amp;ntador</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>Car&amp;ga</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>Inicio &amp;lleno</translation>
    </message>
    <message>
        <source>Char&amp;ged from</source>
        <translation>Recarga desd&amp;e</translation>
    </message>
    <message>
        <source>Gauge st&amp;ep</source>
        <translation>Resolución del &amp;indicador</translation>
    </message>
    <message>
        <source>1 %, the smallest step that the gauge shows</source>
        <translation>1 %, el menor escalón que muestra el indicador</translation>
    </message>
    <message>
        <source>First &amp;reading</source>
        <translation>Primera lec&amp;tura</translation>
    </message>
    <message>
        <source>gauge, %</source>
        <translation>indicador, %</translation>
    </message>
    <message>
        <source>register, Wh</source>
        <translation>registro, Wh</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>vatios</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50</source>
        <translation>Vacío para ahora; si no, 02:40, -10m, yesterday 23:50, 14 May 23:50</translation>
    </message>
    <message>
        <source>Its second register</source>
        <translation>Su segundo registro</translation>
    </message>
    <message>
        <source>Wh, what the second meter shows</source>
        <translation>Wh, lo que muestra el segundo contador</translation>
    </message>
    <message>
        <source>Remind me to read</source>
        <translation>Recordarme leer</translation>
    </message>
    <message>
        <source>every</source>
        <translation>cada</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>when the gauge is down by</source>
        <translation>cuando el indicador baje</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>before the cut-off</source>
        <translation>antes del corte</translation>
    </message>
    <message>
        <source>&amp;Ambient temperature</source>
        <translation>Temperatura &amp;ambiente</translation>
    </message>
    <message>
        <source>18 °C</source>
        <translation>18 °C</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>&amp;Zona horaria</translation>
    </message>
    <message>
        <source>One in series, whose register you note too</source>
        <translation>Uno en serie, cuyo registro también anota</translation>
    </message>
    <message>
        <source>As the last run of this unit: %1</source>
        <translation>Como el último ensayo de este equipo: %1</translation>
    </message>
    <message>
        <source>Without a meter the register has no error limit, and no result an interval.</source>
        <translation>Sin contador, el registro no tiene límite de error ni los resultados intervalo.</translation>
    </message>
    <message>
        <source>The rated energy of the unit is not stated: no share of it can be told.</source>
        <translation>La energía asignada del equipo no está indicada: no se puede dar ninguna parte de ella.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Before you start&lt;/b&gt;</source>
        <translation>&lt;b&gt;Antes de empezar&lt;/b&gt;</translation>
    </message>
    <message>
        <source>the charger or the panels, in your words</source>
        <translation>el cargador o los paneles, con sus palabras</translation>
    </message>
    <message>
        <source>what is plugged in, in your words</source>
        <translation>lo enchufado, con sus palabras</translation>
    </message>
    <message>
        <source>The second meter is the first one; choose another, or none.</source>
        <translation>El segundo contador es el primero; elija otro, o ninguno.</translation>
    </message>
    <message>
        <source>No such time zone is known here; choose a region and place, such as Africa/Nairobi, or UTC.</source>
        <translation>Aquí no se conoce esa zona horaria; elija región y lugar, como Africa/Nairobi, o UTC.</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
</context>
<context>
    <name>ullage::TableController</name>
    <message>
        <source>Import table of readings</source>
        <translation>Importar tabla de lecturas</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>The clipboard holds no table; copy the cells with their head, in a spreadsheet or on a page, first.</source>
        <translation>El portapapeles no contiene ninguna tabla; copie antes las celdas con su cabecera, en una hoja de cálculo o en una página.</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>New logbook for this table</source>
        <translation>Cuaderno nuevo para esta tabla</translation>
    </message>
    <message>
        <source>run %1 of %2 has the same readings already</source>
        <translation>el ensayo %1 de %2 ya tiene las mismas lecturas</translation>
    </message>
    <message>
        <source>Importing %1</source>
        <translation>Importando %1</translation>
    </message>
    <message>
        <source>The pasted table</source>
        <translation>La tabla pegada</translation>
    </message>
    <message>
        <source>%1: 1 row was left out.</source>
        <translation>%1: se omitió 1 fila.</translation>
    </message>
    <message>
        <source>%1: %2 rows were left out.</source>
        <translation>%1: se omitieron %2 filas.</translation>
    </message>
</context>
<context>
    <name>ullage::TableCopy</name>
    <message>
        <source>Copying the table</source>
        <translation>Copiando la tabla</translation>
    </message>
</context>
<context>
    <name>ullage::TableForm</name>
    <message>
        <source>Import table %1</source>
        <translation>Importar tabla %1</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Hoja</translation>
    </message>
    <message>
        <source>&amp;Run shown</source>
        <translation>&amp;Ensayo mostrado</translation>
    </message>
    <message>
        <source>D&amp;ates begin with</source>
        <translation>Las &amp;fechas empiezan por</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>el día</translation>
    </message>
    <message>
        <source>the month</source>
        <translation>el mes</translation>
    </message>
    <message>
        <source>&amp;Decimal sign</source>
        <translation>Signo &amp;decimal</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>Re&amp;gister in</source>
        <translation>Re&amp;gistro en</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>elija…</translation>
    </message>
    <message>
        <source>Times count in</source>
        <translation>El tiempo cuenta en</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>A gauge of 0.69 is</source>
        <translation>Un indicador de 0,69 es</translation>
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
        <translation>Horas como 2:40 &amp;son</translation>
    </message>
    <message>
        <source>the time of day</source>
        <translation>la hora del día</translation>
    </message>
    <message>
        <source>counted from the start</source>
        <translation>contadas desde el inicio</translation>
    </message>
    <message>
        <source>Behind the empty row is</source>
        <translation>Tras la fila vacía va</translation>
    </message>
    <message>
        <source>another run</source>
        <translation>otro ensayo</translation>
    </message>
    <message>
        <source>the same run</source>
        <translation>el mismo ensayo</translation>
    </message>
    <message>
        <source>Keep rows as</source>
        <translation>Guardar filas como</translation>
    </message>
    <message>
        <source>the log of a meter</source>
        <translation>la grabación de un contador</translation>
    </message>
    <message>
        <source>readings noted by hand</source>
        <translation>lecturas anotadas a mano</translation>
    </message>
    <message>
        <source>&amp;Year of the dates</source>
        <translation>&amp;Año de las fechas</translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation>&amp;Inicio</translation>
    </message>
    <message>
        <source>2026-05-14 18:00; of several runs one after the other, with ; between</source>
        <translation>2026-05-14 18:00; de varios ensayos, uno tras otro, con ; entre ellos</translation>
    </message>
    <message>
        <source>There is no such time zone; name one such as Europe/Berlin.</source>
        <translation>No existe esa zona horaria; indique una como Europe/Berlin.</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>Leyendo la tabla</translation>
    </message>
    <message>
        <source>Read as %1.</source>
        <translation>Leído como %1.</translation>
    </message>
    <message>
        <source>Its head stands in row %1.</source>
        <translation>Su cabecera está en la fila %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Columns: %1.</source>
        <translation>Columnas: %1.</translation>
    </message>
    <message>
        <source>Answered as before for a table with this head.</source>
        <translation>Respondido como antes para una tabla con esta cabecera.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Abierto: %1</translation>
    </message>
    <message>
        <source>This table cannot come in: %1</source>
        <translation>Esta tabla no puede entrar: %1</translation>
    </message>
    <message>
        <source>1 row is left out</source>
        <translation>se omite 1 fila</translation>
    </message>
    <message>
        <source>%1 rows are left out</source>
        <translation>se omiten %1 filas</translation>
    </message>
    <message>
        <source>1 row is taken in part</source>
        <translation>1 fila se toma en parte</translation>
    </message>
    <message>
        <source>%1 rows are taken in part</source>
        <translation>%1 filas se toman en parte</translation>
    </message>
    <message>
        <source>Every row that holds a value is taken.</source>
        <translation>Se toma toda fila que contiene un valor.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 lectura</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 lecturas</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Ensayo %1: %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>What the table does not say</source>
        <translation>Lo que la tabla no dice</translation>
    </message>
    <message>
        <source>Time &amp;zone of the table</source>
        <translation>&amp;Zona horaria de la tabla</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>E&amp;quipo</translation>
    </message>
    <message>
        <source>choose one, or type the name of a new one</source>
        <translation>elija uno, o escriba el nombre de uno nuevo</translation>
    </message>
    <message>
        <source>Rated energy</source>
        <translation>Energía asignada</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Contador</translation>
    </message>
    <message>
        <source>&amp;Second meter</source>
        <translation>Seg&amp;undo contador</translation>
    </message>
    <message>
        <source>How it &amp;ended</source>
        <translation>Cómo &amp;terminó</translation>
    </message>
    <message>
        <source>not known: taken as a part of the drain</source>
        <translation>no se conoce: se toma como parte de la descarga</translation>
    </message>
    <message>
        <source>Started &amp;full</source>
        <translation>Inicio &amp;lleno</translation>
    </message>
    <message>
        <source>&amp;What it tests</source>
        <translation>Qué ensa&amp;ya</translation>
    </message>
    <message>
        <source>L&amp;oad</source>
        <translation>Ca&amp;rga</translation>
    </message>
    <message>
        <source>in your words</source>
        <translation>con sus palabras</translation>
    </message>
    <message>
        <source>a new meter</source>
        <translation>un contador nuevo</translation>
    </message>
    <message>
        <source>Its &amp;name</source>
        <translation>Su n&amp;ombre</translation>
    </message>
    <message>
        <source>Its error &amp;limit, %</source>
        <translation>Su lí&amp;mite de error, %</translation>
    </message>
    <message>
        <source>% of reading, or: not known</source>
        <translation>% de la lectura, o: no se conoce</translation>
    </message>
    <message>
        <source>Choose the meter, or say that it is not known.</source>
        <translation>Elija el contador, o diga que no se conoce.</translation>
    </message>
    <message>
        <source>Give the meter a name.</source>
        <translation>Dé un nombre al contador.</translation>
    </message>
    <message>
        <source>the error limit is not stated</source>
        <translation>el límite de error no está indicado</translation>
    </message>
    <message>
        <source>choose, for the runs whose notes do not say it…</source>
        <translation>elija, para los ensayos cuyas notas no lo dicen…</translation>
    </message>
    <message>
        <source>Wh, or: not known</source>
        <translation>Wh, o: no se conoce</translation>
    </message>
    <message>
        <source>rated energy of %1, Wh</source>
        <translation>energía asignada de %1, Wh</translation>
    </message>
    <message>
        <source>Choose the role of the column above its cells: %1.</source>
        <translation>Elija el papel de la columna encima de sus celdas: %1.</translation>
    </message>
    <message>
        <source>Choose the unit, or type the name of a new one.</source>
        <translation>Elija el equipo, o escriba el nombre de uno nuevo.</translation>
    </message>
    <message>
        <source>the rated energy of %1 is not stated</source>
        <translation>la energía asignada de %1 no está indicada</translation>
    </message>
    <message>
        <source>Say how it ended, or that it is not known.</source>
        <translation>Diga cómo terminó, o que no se conoce.</translation>
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
        <translation>toca</translation>
    </message>
</context>
<context>
    <name>ullage::UnitComparer</name>
    <message>
        <source>The units could not be compared: %1.</source>
        <translation>No se pudieron comparar los equipos: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitFitView</name>
    <message>
        <source>What all drains say together</source>
        <translation>Lo que dicen juntas todas las descargas</translation>
    </message>
    <message>
        <source>Charts of the unit</source>
        <translation>Gráficos del equipo</translation>
    </message>
    <message>
        <source>Usable fraction</source>
        <translation>Fracción útil</translation>
    </message>
    <message>
        <source>Run time</source>
        <translation>Autonomía</translation>
    </message>
    <message>
        <source>Gauge error</source>
        <translation>Error del indicador</translation>
    </message>
    <message>
        <source>no-load draw</source>
        <translation>consumo en vacío</translation>
    </message>
    <message>
        <source>energy before own consumption</source>
        <translation>energía antes del consumo propio</translation>
    </message>
    <message>
        <source>idle run time</source>
        <translation>autonomía en vacío</translation>
    </message>
    <message>
        <source>Deliverable energy</source>
        <translation>Energía entregable</translation>
    </message>
    <message>
        <source>run %1, %2 (%3)</source>
        <translation>ensayo %1, %2 (%3)</translation>
    </message>
    <message>
        <source>Not used here: %1.</source>
        <translation>No se usan aquí: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitForm</name>
    <message>
        <source>Add unit</source>
        <translation>Añadir equipo</translation>
    </message>
    <message>
        <source>Claims of %1</source>
        <translation>Datos declarados de %1</translation>
    </message>
    <message>
        <source>Save claims</source>
        <translation>Guardar datos</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>as printed on the case</source>
        <translation>como está impreso en la carcasa</translation>
    </message>
    <message>
        <source>Rated &amp;energy</source>
        <translation>&amp;Energía asignada</translation>
    </message>
    <message>
        <source>1200 Wh or 1.2 kWh</source>
        <translation>1200 Wh o 1,2 kWh</translation>
    </message>
    <message>
        <source>Rated &amp;output</source>
        <translation>Po&amp;tencia asignada</translation>
    </message>
    <message>
        <source>600 W</source>
        <translation>600 W</translation>
    </message>
    <message>
        <source>&amp;Gauge step</source>
        <translation>&amp;Resolución del indicador</translation>
    </message>
    <message>
        <source>1 %, the smallest step that the gauge shows</source>
        <translation>1 %, el menor escalón que muestra el indicador</translation>
    </message>
    <message>
        <source>Maker and model, further claims, limits of the PV input, the unit at hand</source>
        <translation>Fabricante y modelo, otros datos declarados, límites de la entrada FV, este ejemplar</translation>
    </message>
    <message>
        <source>&amp;Maker</source>
        <translation>&amp;Fabricante</translation>
    </message>
    <message>
        <source>Mode&amp;l</source>
        <translation>&amp;Modelo</translation>
    </message>
    <message>
        <source>the same for every specimen of it</source>
        <translation>el mismo para todos sus ejemplares</translation>
    </message>
    <message>
        <source>What the maker claims further</source>
        <translation>Qué más declara el fabricante</translation>
    </message>
    <message>
        <source>&amp;Peak output</source>
        <translation>Potencia de pic&amp;o</translation>
    </message>
    <message>
        <source>1200 W</source>
        <translation>1200 W</translation>
    </message>
    <message>
        <source>List p&amp;rice</source>
        <translation>Precio de catá&amp;logo</translation>
    </message>
    <message>
        <source>799</source>
        <translation>799</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>Mone&amp;da</translation>
    </message>
    <message>
        <source>three letters, such as EUR</source>
        <translation>tres letras, por ejemplo EUR</translation>
    </message>
    <message>
        <source>M&amp;ass</source>
        <translation>M&amp;asa</translation>
    </message>
    <message>
        <source>12.4 kg</source>
        <translation>12,4 kg</translation>
    </message>
    <message>
        <source>&amp;Warranty</source>
        <translation>&amp;Garantía</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 años</translation>
    </message>
    <message>
        <source>C&amp;harge time</source>
        <translation>Tiempo de recar&amp;ga</translation>
    </message>
    <message>
        <source>1.5 h, from cut-off to full, from the wall</source>
        <translation>1,5 h, de corte a lleno, desde la red</translation>
    </message>
    <message>
        <source>Limits of the PV input</source>
        <translation>Límites de la entrada FV</translation>
    </message>
    <message>
        <source>&amp;Voltage</source>
        <translation>Tens&amp;ión</translation>
    </message>
    <message>
        <source>60 V</source>
        <translation>60 V</translation>
    </message>
    <message>
        <source>C&amp;urrent</source>
        <translation>&amp;Corriente</translation>
    </message>
    <message>
        <source>12 A</source>
        <translation>12 A</translation>
    </message>
    <message>
        <source>Po&amp;wer</source>
        <translation>&amp;Potencia</translation>
    </message>
    <message>
        <source>500 W</source>
        <translation>500 W</translation>
    </message>
    <message>
        <source>&amp;Start voltage</source>
        <translation>Ten&amp;sión de arranque</translation>
    </message>
    <message>
        <source>12 V, the lowest at which the input works</source>
        <translation>12 V, la menor que admite</translation>
    </message>
    <message>
        <source>Short c&amp;ircuit</source>
        <translation>Cortocirc&amp;uito</translation>
    </message>
    <message>
        <source>15 A, the current that the input withstands</source>
        <translation>15 A, la corriente que soporta la entrada</translation>
    </message>
    <message>
        <source>The unit at hand</source>
        <translation>Este ejemplar</translation>
    </message>
    <message>
        <source>Serial &amp;number</source>
        <translation>&amp;Número de serie</translation>
    </message>
    <message>
        <source>Cells</source>
        <translation>Células</translation>
    </message>
    <message>
        <source>their chemistry, such as LFP</source>
        <translation>su química, por ejemplo LFP</translation>
    </message>
    <message>
        <source>Purchased</source>
        <translation>Comprado</translation>
    </message>
    <message>
        <source>2027-02-28</source>
        <translation>2027-02-28</translation>
    </message>
    <message>
        <source>Cycles before</source>
        <translation>Ciclos previos</translation>
    </message>
    <message>
        <source>full charges before its first run here</source>
        <translation>recargas completas anteriores</translation>
    </message>
    <message>
        <source>Price pai&amp;d</source>
        <translation>&amp;Precio pagado</translation>
    </message>
    <message>
        <source>for this one, in the same currency</source>
        <translation>por este, en la misma moneda</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>Eti&amp;quetas</translation>
    </message>
    <message>
        <source>short words to find units by, such as: lent; tent</source>
        <translation>palabras breves: prestado; tienda</translation>
    </message>
    <message>
        <source>Remar&amp;k</source>
        <translation>O&amp;bservación</translation>
    </message>
    <message>
        <source>The unit needs a name, by which lists and sheets call it.</source>
        <translation>El equipo necesita un nombre, por el que lo llaman listas y hojas.</translation>
    </message>
    <message>
        <source>Write the day like 2027-02-28: year, month, day.</source>
        <translation>Escriba el día como 2027-02-28: año, mes, día.</translation>
    </message>
    <message>
        <source>The short-circuit current must not lie below the current limit.</source>
        <translation>La corriente de cortocircuito no debe ser menor que el límite de corriente.</translation>
    </message>
    <message>
        <source>The start voltage must lie below the voltage limit.</source>
        <translation>La tensión de arranque debe ser menor que el límite de tensión.</translation>
    </message>
    <message>
        <source>A gauge step of more than 50 % shows nothing; enter what the gauge counts by.</source>
        <translation>Una resolución del indicador de más del 50 % no muestra nada; introduzca de cuánto en cuánto cuenta.</translation>
    </message>
    <message>
        <source>Enter the currency&apos;s three letters (ISO 4217), such as EUR or KES.</source>
        <translation>Introduzca las tres letras de la moneda (ISO 4217), por ejemplo EUR o KES.</translation>
    </message>
    <message>
        <source>The price needs a currency: three letters (ISO 4217), such as EUR.</source>
        <translation>El precio necesita una moneda: tres letras (ISO 4217), por ejemplo EUR.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitPage</name>
    <message>
        <source>Import run sheet</source>
        <translation>Importar hoja de ensayo</translation>
    </message>
    <message>
        <source>Edit claims</source>
        <translation>Editar datos</translation>
    </message>
    <message>
        <source>Make report</source>
        <translation>Crear informe</translation>
    </message>
    <message>
        <source>Start run</source>
        <translation>Iniciar ensayo</translation>
    </message>
    <message>
        <source>What the maker claims</source>
        <translation>Lo que declara el fabricante</translation>
    </message>
    <message>
        <source>runs of this unit</source>
        <translation>ensayos de este equipo</translation>
    </message>
    <message>
        <source>No runs yet. With the unit full and the meter between its socket and the load, choose Start run; a run noted elsewhere comes in with Import run sheet.</source>
        <translation>Aún no hay ensayos. Con el equipo lleno y el contador entre su toma y la carga, elija Iniciar ensayo; un ensayo anotado en otra parte entra con Importar hoja de ensayo.</translation>
    </message>
    <message>
        <source>Runs, and claims tested</source>
        <translation>Ensayos y datos comprobados</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>Claims tested</source>
        <translation>Datos comprobados</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Vessel of %1</source>
        <translation>Depósito de %1</translation>
    </message>
    <message>
        <source>No rated energy is stated, so there is nothing to fill.</source>
        <translation>No está indicada la energía asignada, así que no hay nada que llenar.</translation>
    </message>
    <message>
        <source>Empty until a drain has been noted.</source>
        <translation>Vacío hasta que se anote una descarga.</translation>
    </message>
</context>
<context>
    <name>ullage::UnitReportForm</name>
    <message>
        <source>For readers: the answer first, then claims, every drain, the gauge, and what it is based on. Tags, prices paid and remarks stay out of it. Numbers have the decimal sign of your system.</source>
        <translation>Para lectores: primero la respuesta; después, los datos declarados, cada descarga, el indicador y en qué se basa. Etiquetas, precios pagados y observaciones quedan fuera. Los números llevan el signo decimal de su sistema.</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>E&amp;xtensión</translation>
    </message>
    <message>
        <source>whole, with what it is based on</source>
        <translation>completo, con aquello en que se basa</translation>
    </message>
    <message>
        <source>short, two pages</source>
        <translation>corto, dos páginas</translation>
    </message>
    <message>
        <source>Sections of the whole report</source>
        <translation>Secciones del informe completo</translation>
    </message>
    <message>
        <source>Photos as evidence</source>
        <translation>Fotos como evidencia</translation>
    </message>
    <message>
        <source>Published by, kept in the logbook</source>
        <translation>Publicado por, guardado en el cuaderno</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>yours, or that of the paper</source>
        <translation>el de usted o el del periódico</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>Tít&amp;ulo</translation>
    </message>
    <message>
        <source>in place of “%1: test report”</source>
        <translation>en lugar de «%1: informe de ensayo»</translation>
    </message>
    <message>
        <source>name of the unit</source>
        <translation>nombre del equipo</translation>
    </message>
    <message>
        <source>&amp;Introduction</source>
        <translation>&amp;Introducción</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>introducción</translation>
    </message>
    <message>
        <source>a paragraph before the answers</source>
        <translation>un párrafo antes de las respuestas</translation>
    </message>
    <message>
        <source>Lice&amp;nce of the text</source>
        <translation>&amp;Licencia del texto</translation>
    </message>
    <message>
        <source>such as CC BY 4.0</source>
        <translation>por ejemplo CC BY 4.0</translation>
    </message>
</context>
<context>
    <name>ullage::UnitRunsModel</name>
    <message>
        <source>One of the drains that are taken together</source>
        <translation>Una de las descargas que se toman juntas</translation>
    </message>
    <message>
        <source>Not taken together with the other drains: %1</source>
        <translation>No se toma junto con las demás descargas: %1</translation>
    </message>
    <message>
        <source>run</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>terminó</translation>
    </message>
    <message>
        <source>delivered Wh</source>
        <translation>entregada Wh</translation>
    </message>
    <message>
        <source>usable %</source>
        <translation>útil %</translation>
    </message>
    <message>
        <source>mean load W</source>
        <translation>carga media W</translation>
    </message>
    <message>
        <source>duration h</source>
        <translation>duración h</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
</context>
<context>
    <name>ullage::UnitSizer</name>
    <message>
        <source>The units could not be sized: %1.</source>
        <translation>No se pudieron dimensionar los equipos: %1.</translation>
    </message>
</context>
<context>
    <name>ullage::VesselKey</name>
    <message>
        <source>How to read this</source>
        <translation>Cómo leer esto</translation>
    </message>
    <message>
        <source>delivered at the socket; the bracket is the 95&#xa0;% interval</source>
        <translation>entregada en la toma; el corchete es el intervalo del 95&#xa0;%</translation>
    </message>
    <message>
        <source>taken by the no-load draw, where that is known</source>
        <translation>lo que se llevó el consumo en vacío, donde se conoce</translation>
    </message>
    <message>
        <source>missing: own draw, conversion, or less than the label; one run cannot separate them</source>
        <translation>falta: consumo propio, conversión o menos que la placa; un solo ensayo no puede separarlos</translation>
    </message>
    <message>
        <source>typical at the socket (common practice, no source), 75 to 80&#xa0;% of rated</source>
        <translation>típico en la toma (práctica común, sin fuente), del 75 al 80&#xa0;% de la asignada</translation>
    </message>
</context>
<context>
    <name>ullage::VesselRow</name>
    <message>
        <source>rating not known</source>
        <translation>energía asignada desconocida</translation>
    </message>
    <message>
        <source>rated %1 Wh</source>
        <translation>asignada %1 Wh</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>delivered: %1</source>
        <translation>entregada: %1</translation>
    </message>
    <message>
        <source>taken by the no-load draw: %1 Wh</source>
        <translation>lo que se llevó el consumo en vacío: %1 Wh</translation>
    </message>
</context>
<context>
    <name>ullage::ViewController</name>
    <message>
        <source>No picture is in sight here; choose a run, a unit or the comparison.</source>
        <translation>Aquí no hay ninguna imagen a la vista; elija un ensayo, un equipo o la comparación.</translation>
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
        <translation>Guardar imagen</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>imagen</translation>
    </message>
    <message>
        <source>Picture saved to %1.</source>
        <translation>Imagen guardada en %1.</translation>
    </message>
    <message>
        <source>store the reading in the entry row</source>
        <translation>guardar la lectura de la fila de entrada</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>next or previous field</source>
        <translation>campo siguiente o anterior</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Mayús+Tab</translation>
    </message>
    <message>
        <source>clear the entry row</source>
        <translation>vaciar la fila de entrada</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>answer a doubt: as meant, keep, correct, reset, swapped</source>
        <translation>responder a una duda: lo que se quiso decir, mantener, corregir, puesta a cero, cambiado</translation>
    </message>
    <message>
        <source>M, K, C, Z, W</source>
        <translation>M, K, C, Z, W</translation>
    </message>
    <message>
        <source>bench display: take the reading of that card; dim; leave</source>
        <translation>pantalla de banco: tomar la lectura de esa tarjeta; atenuar; salir</translation>
    </message>
    <message>
        <source>1 to 9; N; Esc</source>
        <translation>1 a 9; N; Esc</translation>
    </message>
    <message>
        <source>copy the chosen rows of the readings or the comparison for a spreadsheet</source>
        <translation>copiar las filas elegidas de las lecturas o de la comparación para una hoja de cálculo</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <translation>Ctrl+C</translation>
    </message>
    <message>
        <source>open, withdraw the chosen photo</source>
        <translation>abrir, retirar la foto elegida</translation>
    </message>
    <message>
        <source>Enter, Delete</source>
        <translation>Intro, Supr</translation>
    </message>
    <message>
        <source>take the time of a photo that waits for the reading</source>
        <translation>tomar la hora de una foto que espera a la lectura</translation>
    </message>
    <message>
        <source>Alt+T</source>
        <translation>Alt+T</translation>
    </message>
    <message>
        <source>Keys and words</source>
        <translation>Teclas y palabras</translation>
    </message>
    <message>
        <source>Worked example</source>
        <translation>Ejemplo resuelto</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>About Ullage</source>
        <translation>Acerca de Ullage</translation>
    </message>
</context>
<context>
    <name>ullage::WaitingPhotos</name>
    <message>
        <source>Photos for the next reading</source>
        <translation>Fotos para la próxima lectura</translation>
    </message>
    <message>
        <source>This photo goes with the next reading.</source>
        <translation>Esta foto va con la próxima lectura.</translation>
    </message>
    <message>
        <source>These photos go with the next reading.</source>
        <translation>Estas fotos van con la próxima lectura.</translation>
    </message>
    <message>
        <source>Taken %1.</source>
        <translation>Tomada %1.</translation>
    </message>
    <message>
        <source>Use the photo&apos;s &amp;time, %1</source>
        <translation>Usar la hora de la fo&amp;to, %1</translation>
    </message>
</context>
<context>
    <name>ullage::WelcomePage</name>
    <message>
        <source>Open the sample</source>
        <translation>Abrir el ejemplo</translation>
    </message>
    <message>
        <source>A finished logbook of invented units. Look round and change what you like: it is a copy of your own.</source>
        <translation>Un cuaderno terminado de equipos inventados. Mírelo y cambie lo que quiera: es una copia suya.</translation>
    </message>
    <message>
        <source>Open the sample logbook</source>
        <translation>Abrir el cuaderno de ejemplo</translation>
    </message>
    <message>
        <source>Guided first run</source>
        <translation>Primer ensayo guiado</translation>
    </message>
    <message>
        <source>One test from the unit to its result, in the forms that you will use. The guide says the next step, and you may leave it at any time.</source>
        <translation>Un ensayo, del equipo a su resultado, en los formularios que usará. La guía dice el siguiente paso, y puede dejarla en cualquier momento.</translation>
    </message>
    <message>
        <source>Begin the guided run</source>
        <translation>Empezar el ensayo guiado</translation>
    </message>
    <message>
        <source>Begin yourself</source>
        <translation>Empezar por su cuenta</translation>
    </message>
    <message>
        <source>Write down what the maker claims of the unit, and what the meter&apos;s data sheet says of its error.</source>
        <translation>Escriba lo que declara el fabricante del equipo y lo que dice de su error la hoja de datos del contador.</translation>
    </message>
    <message>
        <source>Add unit</source>
        <translation>Añadir equipo</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Añadir contador</translation>
    </message>
    <message>
        <source>Bring your own table</source>
        <translation>Importar su propia tabla</translation>
    </message>
    <message>
        <source>Notes in a spreadsheet, a CSV file or copied cells. You see how each column is understood before anything is kept.</source>
        <translation>Notas en una hoja de cálculo, un archivo CSV o celdas copiadas. Usted ve cómo se entiende cada columna antes de que se guarde nada.</translation>
    </message>
    <message>
        <source>Choose a table</source>
        <translation>Elegir una tabla</translation>
    </message>
    <message>
        <source>Import run sheet</source>
        <translation>Importar hoja de ensayo</translation>
    </message>
    <message>
        <source>Lately open</source>
        <translation>Abiertos hace poco</translation>
    </message>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>The job in three steps: 1. Add the unit and the meter. 2. Start a run and note readings. 3. Read the usable fraction and compare.</source>
        <translation>El trabajo en tres pasos: 1. Añada el equipo y el contador. 2. Inicie un ensayo y anote lecturas. 3. Lea la fracción útil y compare.</translation>
    </message>
    <message>
        <source>New logbook</source>
        <translation>Nuevo cuaderno</translation>
    </message>
    <message>
        <source>Open logbook</source>
        <translation>Abrir cuaderno</translation>
    </message>
    <message>
        <source>This logbook is empty. Begin with the unit under test, be guided through a first run, or bring in a table that you have.</source>
        <translation>Este cuaderno está vacío. Empiece por el equipo que va a ensayar, déjese guiar en un primer ensayo o importe una tabla que ya tenga.</translation>
    </message>
    <message>
        <source>How much of the energy printed on a battery storage unit reaches the socket, how sure is that, and can its gauge be trusted?</source>
        <translation>¿Cuánta de la energía impresa en un equipo de almacenamiento con batería llega a la toma, con qué seguridad, y se puede confiar en su indicador?</translation>
    </message>
    <message>
        <source>open %1</source>
        <translation>abrir %1</translation>
    </message>
    <message>
        <source>This logbook is empty. The guide above says the next step.</source>
        <translation>Este cuaderno está vacío. La guía de arriba dice el siguiente paso.</translation>
    </message>
</context>
<context>
    <name>ullage::WorkDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Deteniendo…</translation>
    </message>
</context>
<context>
    <name>ullage::WrappedLabel</name>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
    </message>
</context>
<context>
    <name>unit</name>
    <message>
        <source>it is a run of another unit</source>
        <translation>es un ensayo de otro equipo</translation>
    </message>
    <message>
        <source>state a load above 0 W</source>
        <translation>indique una carga mayor que 0 W</translation>
    </message>
    <message>
        <source>state a share of the time above 0 and at most 1</source>
        <translation>indique una parte del tiempo mayor que 0 y de 1 como máximo</translation>
    </message>
    <message>
        <source>%1 W is above the rated output of %2 W</source>
        <translation>%1 W está por encima de la potencia asignada de %2 W</translation>
    </message>
    <message>
        <source>%1 to %2 W</source>
        <translation>%1 a %2 W</translation>
    </message>
    <message>
        <source>beyond the tested loads (%1)</source>
        <translation>más allá de las cargas ensayadas (%1)</translation>
    </message>
    <message>
        <source>between the tested loads (%1)</source>
        <translation>entre las cargas ensayadas (%1)</translation>
    </message>
    <message>
        <source>beyond the tested loads (%1 on average, as this one, but %2 while on, this one %3 W)</source>
        <translation>más allá de las cargas ensayadas (%1 de media, como esta, pero %2 en marcha; esta, %3 W)</translation>
    </message>
    <message>
        <source>a mean over drains: a single one scatters by another %1 %</source>
        <translation>media de descargas: una sola se dispersa otro %1 %</translation>
    </message>
    <message>
        <source>no interval: the error limit of a meter is not stated</source>
        <translation>sin intervalo: el límite de error de un contador no está indicado</translation>
    </message>
    <message>
        <source>the draw is too uncertain for an upper end</source>
        <translation>el consumo es demasiado incierto para un extremo superior</translation>
    </message>
    <message>
        <source>the rated energy of the unit is not stated</source>
        <translation>la energía asignada del equipo no está indicada</translation>
    </message>
    <message>
        <source>%1 W on average (%2 W for %3 % of the time)</source>
        <translation>%1 W de media (%2 W durante el %3 % del tiempo)</translation>
    </message>
    <message>
        <source>the gauge curve of run %1 (%2) ends above %3, where this run ends</source>
        <translation>la curva del indicador del ensayo %1 (%2) termina por encima de %3, donde termina este ensayo</translation>
    </message>
    <message>
        <source>the gauge curve of run %1 (%2) is too flat from %3 to %4 to tell how deep this run went</source>
        <translation>la curva del indicador del ensayo %1 (%2) es demasiado plana de %3 a %4 para decir qué profundidad tuvo este ensayo</translation>
    </message>
    <message>
        <source>through the gauge curve of run %1 (%2), from %3 to %4</source>
        <translation>con la curva del indicador del ensayo %1 (%2), de %3 a %4</translation>
    </message>
    <message>
        <source>a charge run is no drain</source>
        <translation>un ensayo de recarga no es una descarga</translation>
    </message>
    <message>
        <source>a sustained output run is no drain</source>
        <translation>un ensayo de potencia sostenida no es una descarga</translation>
    </message>
    <message>
        <source>a peak output run is no drain</source>
        <translation>un ensayo de potencia de pico no es una descarga</translation>
    </message>
    <message>
        <source>a standby run is no drain</source>
        <translation>un ensayo de reposo no es una descarga</translation>
    </message>
    <message>
        <source>whether it started full is not stated</source>
        <translation>no está indicado si empezó lleno</translation>
    </message>
    <message>
        <source>it did not start full</source>
        <translation>no empezó lleno</translation>
    </message>
    <message>
        <source>it is still running</source>
        <translation>sigue en curso</translation>
    </message>
    <message>
        <source>it was stopped before the cut-off</source>
        <translation>se detuvo antes del corte</translation>
    </message>
    <message>
        <source>a meter that is not stated</source>
        <translation>un contador que no está indicado</translation>
    </message>
    <message>
        <source>the meter that took over</source>
        <translation>el contador que continuó</translation>
    </message>
    <message>
        <source>the output tripped and nothing says that it was switched on again; mark when it was</source>
        <translation>hubo un disparo de la salida y nada dice que se volviera a encender; marque cuándo fue</translation>
    </message>
    <message>
        <source>no time passed with the output on</source>
        <translation>no pasó tiempo con la salida encendida</translation>
    </message>
    <message>
        <source>fewer than two register readings</source>
        <translation>menos de dos lecturas del registro</translation>
    </message>
    <message>
        <source>nothing was delivered</source>
        <translation>no se entregó nada</translation>
    </message>
    <message>
        <source>there is no drain to fit</source>
        <translation>no hay ninguna descarga que ajustar</translation>
    </message>
    <message>
        <source>fit between runs</source>
        <translation>ajuste entre ensayos</translation>
    </message>
    <message>
        <source>make a drain from full to cut-off</source>
        <translation>haga una descarga de lleno a corte</translation>
    </message>
    <message>
        <source>the drains used different meters, and the error limit of one is not stated</source>
        <translation>las descargas usaron contadores distintos, y el límite de error de uno no está indicado</translation>
    </message>
    <message>
        <source>corrected for the loads</source>
        <translation>corregido según las cargas</translation>
    </message>
    <message>
        <source>of %1 full drains those at like loads were read at too few common depths</source>
        <translation>de %1 descargas completas, las hechas a cargas parecidas se leyeron a demasiado pocas profundidades comunes</translation>
    </message>
    <message>
        <source>no two of the %1 full drains had like loads (mean loads within a factor of %2, in like order) at temperatures within 8 °C</source>
        <translation>entre las %1 descargas completas no hay dos con cargas parecidas (cargas medias dentro de un factor de %2, en orden parecido) a temperaturas dentro de 8 °C</translation>
    </message>
    <message>
        <source>it takes two drains from full to cut-off with the gauge read at six depths or more; so far: %1</source>
        <translation>requiere dos descargas de lleno a corte con el indicador leído a seis profundidades o más; hasta ahora: %1</translation>
    </message>
    <message>
        <source>of run %1, %2</source>
        <translation>del ensayo %1, %2</translation>
    </message>
    <message>
        <source>whether E* moves is not known (%1)</source>
        <translation>no se conoce si E* se mueve (%1)</translation>
    </message>
    <message>
        <source>E* is unmoved (%1 Wh a day)</source>
        <translation>E* no se mueve (%1 Wh al día)</translation>
    </message>
    <message>
        <source>E* falls (%1 Wh a day)</source>
        <translation>E* baja (%1 Wh al día)</translation>
    </message>
    <message>
        <source>E* rises (%1 Wh a day)</source>
        <translation>E* sube (%1 Wh al día)</translation>
    </message>
    <message>
        <source>E* is unmoved (%1 % from run %2 to run %3)</source>
        <translation>E* no se mueve (%1 % del ensayo %2 al ensayo %3)</translation>
    </message>
    <message>
        <source>E* falls (%1 % from run %2 to run %3)</source>
        <translation>E* baja (%1 % del ensayo %2 al ensayo %3)</translation>
    </message>
    <message>
        <source>E* rises (%1 % from run %2 to run %3)</source>
        <translation>E* sube (%1 % del ensayo %2 al ensayo %3)</translation>
    </message>
    <message>
        <source>χ² %1 for %2 degrees of freedom, %3</source>
        <translation>χ² %1 con %2 grados de libertad, %3</translation>
    </message>
    <message>
        <source>the gauge&apos;s curve moves by %1 pt at %2 % depth from run %3 to run %4 (%5)</source>
        <translation>la curva del indicador se mueve %1 pt a una profundidad del %2 % del ensayo %3 al ensayo %4 (%5)</translation>
    </message>
    <message>
        <source>the gauge&apos;s curve is unmoved from run %1 to run %2 (%3; a move of %4 pt would be seen)</source>
        <translation>la curva del indicador no se mueve del ensayo %1 al ensayo %2 (%3; se vería un movimiento de %4 pt)</translation>
    </message>
    <message>
        <source>Whether the gauge drifts from run to run is not known: %1.</source>
        <translation>No se conoce si el indicador deriva de ensayo a ensayo: %1.</translation>
    </message>
    <message>
        <source>%1, %2: ageing, not the gauge.</source>
        <translation>%1, %2: envejecimiento, no el indicador.</translation>
    </message>
    <message>
        <source>%1, %2: warmer or fuller, not the gauge.</source>
        <translation>%1, %2: más calor o más lleno, no el indicador.</translation>
    </message>
    <message>
        <source>%1, %2: the gauge drifts.</source>
        <translation>%1, %2: el indicador deriva.</translation>
    </message>
    <message>
        <source>%1 and %2: the unit ages, and its gauge drifts.</source>
        <translation>%1 y %2: el equipo envejece, y su indicador deriva.</translation>
    </message>
    <message>
        <source>%1 and %2: the energy moves, and the gauge drifts.</source>
        <translation>%1 y %2: la energía se mueve, y el indicador deriva.</translation>
    </message>
    <message>
        <source>%1, and %2.</source>
        <translation>%1, y %2.</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4; whether that is more than chance is not known (%5).</source>
        <translation>Wh por punto del indicador del ensayo %1 al ensayo %2: %3 a %4; no se conoce si eso es más que azar (%5).</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): more than chance.</source>
        <translation>Wh por punto del indicador del ensayo %1 al ensayo %2: %3 a %4, %5 % corregido según las cargas (%6): más que azar.</translation>
    </message>
    <message>
        <source>Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): no more than chance.</source>
        <translation>Wh por punto del indicador del ensayo %1 al ensayo %2: %3 a %4, %5 % corregido según las cargas (%6): no más que azar.</translation>
    </message>
    <message>
        <source>where the curves from run %1 to run %2 differ most, at %3 % of the share delivered</source>
        <translation>donde más difieren las curvas del ensayo %1 al ensayo %2, al %3 % de la parte entregada</translation>
    </message>
    <message>
        <source>no interval: the error limit of %1 is not stated</source>
        <translation>sin intervalo: el límite de error de %1 no está indicado</translation>
    </message>
    <message>
        <source>no drain from full to cut-off has all its energy read</source>
        <translation>en ninguna descarga de lleno a corte se leyó toda la energía</translation>
    </message>
    <message>
        <source>there is one drain only, at %1 W</source>
        <translation>solo hay una descarga, a %1 W</translation>
    </message>
    <message>
        <source>the drains are too alike (%1 to %2 h)</source>
        <translation>las descargas se parecen demasiado (%1 a %2 h)</translation>
    </message>
    <message>
        <source>the drains show no draw above 0 W</source>
        <translation>las descargas no muestran ningún consumo por encima de 0 W</translation>
    </message>
    <message>
        <source>from E*/P*; a gain that all drains share cancels</source>
        <translation>de E*/P*; una ganancia común a todas las descargas se cancela</translation>
    </message>
    <message>
        <source>the draw may be 0 W within its uncertainty</source>
        <translation>el consumo puede ser de 0 W dentro de su incertidumbre</translation>
    </message>
    <message>
        <source>the drains would need a draw below 0 W (%1 W): one of them is wrong, or the unit changed between them</source>
        <translation>las descargas requerirían un consumo por debajo de 0 W (%1 W): una de ellas es errónea o el equipo cambió entre ellas</translation>
    </message>
    <message numerus="yes">
        <source>seen from the socket, from the run times of %n drains</source>
        <comment>seen from the socket, from the run times of %n drain</comment>
        <translation>
            <numerusform>visto desde la toma, según la autonomía de %n descarga</numerusform>
            <numerusform>visto desde la toma, según las autonomías de %n descargas</numerusform>
        </translation>
    </message>
    <message>
        <source>bounded by common practice, not fitted: that takes three loads that differ enough</source>
        <translation>acotado por la práctica común, no ajustado: eso requiere tres cargas que difieran lo bastante</translation>
    </message>
    <message>
        <source>fitted: the drains narrow it further than common practice</source>
        <translation>ajustado: las descargas lo estrechan más que la práctica común</translation>
    </message>
    <message>
        <source>fitted: the drains contradict the bounds of common practice, which were dropped</source>
        <translation>ajustado: las descargas contradicen las cotas de la práctica común, que se abandonaron</translation>
    </message>
    <message numerus="yes">
        <source>From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on (%3).</source>
        <comment>From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on (%3).</comment>
        <translation>
            <numerusform>De %n descarga: %1 entregables antes del consumo propio, menos %2 por cada hora que la salida está encendida (%3).</numerusform>
            <numerusform>De %n descargas: %1 entregables antes del consumo propio, menos %2 por cada hora que la salida está encendida (%3).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on.</source>
        <comment>From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on.</comment>
        <translation>
            <numerusform>De %n descarga: %1 entregables antes del consumo propio, menos %2 por cada hora que la salida está encendida.</numerusform>
            <numerusform>De %n descargas: %1 entregables antes del consumo propio, menos %2 por cada hora que la salida está encendida.</numerusform>
        </translation>
    </message>
    <message>
        <source>The drains differ from this by %1 times what their uncertainties allow; the intervals are widened for that.</source>
        <translation>Las descargas se apartan de esto %1 veces lo que permiten sus incertidumbres; los intervalos se ensanchan por ello.</translation>
    </message>
    <message>
        <source>The no-load draw and the energy before own consumption are not known: %1.</source>
        <translation>El consumo en vacío y la energía antes del consumo propio no se conocen: %1.</translation>
    </message>
    <message numerus="yes">
        <source>the line through %n drains, at a run time of 0 h</source>
        <comment>the line through %n drain, at a run time of 0 h</comment>
        <translation>
            <numerusform>la recta por %n descarga, a una autonomía de 0 h</numerusform>
            <numerusform>la recta por %n descargas, a una autonomía de 0 h</numerusform>
        </translation>
    </message>
    <message>
        <source>a charge run does not tell it</source>
        <translation>un ensayo de recarga no lo dice</translation>
    </message>
    <message>
        <source>a sustained output run does not tell it</source>
        <translation>un ensayo de potencia sostenida no lo dice</translation>
    </message>
    <message>
        <source>a peak output run does not tell it</source>
        <translation>un ensayo de potencia de pico no lo dice</translation>
    </message>
    <message>
        <source>a standby run does not tell it</source>
        <translation>un ensayo de reposo no lo dice</translation>
    </message>
    <message>
        <source>the run is not noted as started full</source>
        <translation>no está anotado que el ensayo empezara lleno</translation>
    </message>
    <message>
        <source>the run did not go to cut-off, so what stayed inside is not known</source>
        <translation>el ensayo no llegó al corte, así que no se conoce lo que quedó dentro</translation>
    </message>
    <message>
        <source>not all delivered energy was read: %1</source>
        <translation>no se leyó toda la energía entregada: %1</translation>
    </message>
    <message>
        <source>conversion or missing capacity, not separable from the socket</source>
        <translation>conversión o capacidad que falta, no separables desde la toma</translation>
    </message>
    <message>
        <source>%1 to %2 h</source>
        <translation>%1 a %2 h</translation>
    </message>
    <message>
        <source>its run time</source>
        <translation>su autonomía</translation>
    </message>
    <message>
        <source>rest %1: none is shown beyond the uncertainty</source>
        <translation>resto %1: no se muestra ninguno más allá de la incertidumbre</translation>
    </message>
    <message>
        <source>together %1 more than rated: the unit holds more than its label says, or the draw is overestimated</source>
        <translation>en total %1 más que la asignada: el equipo contiene más de lo que dice su placa, o el consumo está sobrestimado</translation>
    </message>
    <message>
        <source>rest %1: conversion or missing capacity, not separable from the socket</source>
        <translation>resto %1: conversión o capacidad que falta, no separables desde la toma</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, %3 not: no-load draw over %4, conversion and missing capacity, which cannot be told apart as the no-load draw is not known (%5).</source>
        <translation>De %1 asignados: %2 entregados, %3 no: consumo en vacío durante %4, conversión y capacidad que falta, que no se pueden separar, pues no se conoce el consumo en vacío (%5).</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, about %3 no-load draw over %4 (if the gauge is linear in stored energy), %5.</source>
        <translation>De %1 asignados: %2 entregados, unos %3 de consumo en vacío durante %4 (si el indicador es lineal en la energía almacenada), %5.</translation>
    </message>
    <message>
        <source>Of %1 rated: %2 delivered, about %3 no-load draw over %4, %5.</source>
        <translation>De %1 asignados: %2 entregados, unos %3 de consumo en vacío durante %4, %5.</translation>
    </message>
    <message>
        <source>Where the rated energy went is not known: %1.</source>
        <translation>No se conoce adónde fue la energía asignada: %1.</translation>
    </message>
    <message>
        <source>rated energy (a claim) less delivered energy</source>
        <translation>energía asignada (un dato declarado) menos energía entregada</translation>
    </message>
    <message>
        <source>mean of %1 drains at %2 W, which scatter by %3 %</source>
        <translation>media de %1 descargas a %2 W, con una dispersión del %3 %</translation>
    </message>
    <message>
        <source>mean of %1 drains from %2 to %3 W, which scatter by %4 %</source>
        <translation>media de %1 descargas de %2 a %3 W, con una dispersión del %4 %</translation>
    </message>
    <message>
        <source>%1 stands alone; drains are taken to repeat within %2</source>
        <translation>%1 va sola; se supone que las descargas se repiten con un margen de %2</translation>
    </message>
    <message>
        <source>two drains say little of how well this unit repeats, a third narrows the interval most</source>
        <translation>dos descargas dicen poco de lo bien que se repite este equipo; una tercera es lo que más estrecha el intervalo</translation>
    </message>
    <message>
        <source>Mean of %1 drains near %2 W: %3; a single one scatters by %4 Wh (%5 %).</source>
        <translation>Media de %1 descargas a unos %2 W: %3; una sola se dispersa %4 Wh (%5 %).</translation>
    </message>
    <message>
        <source>Two drains say little of how well this unit repeats; a third narrows this most.</source>
        <translation>Dos descargas dicen poco de lo bien que se repite este equipo; una tercera es lo que más estrecha esto.</translation>
    </message>
    <message>
        <source>The drain stands alone: how well this unit repeats is taken as %1.</source>
        <translation>La descarga va sola: se supone que este equipo se repite con un margen de %1.</translation>
    </message>
    <message>
        <source>Each drain stands alone at its load: how well this unit repeats is taken as %1.</source>
        <translation>Cada descarga va sola a su carga: se supone que este equipo se repite con un margen de %1.</translation>
    </message>
    <message>
        <source>%1 % (the usual figure, which nobody has tried on these units)</source>
        <translation>%1 % (la cifra habitual, que nadie ha probado en estos equipos)</translation>
    </message>
    <message>
        <source>%1 % (as the tester states)</source>
        <translation>%1 % (según indica el ensayador)</translation>
    </message>
    <message numerus="yes">
        <source>%1 % (from the repeated drains of this logbook, %n degrees of freedom)</source>
        <comment>%1 % (from the repeated drains of this logbook, %n degree of freedom)</comment>
        <translation>
            <numerusform>%1 % (de las descargas repetidas de este cuaderno, %n grado de libertad)</numerusform>
            <numerusform>%1 % (de las descargas repetidas de este cuaderno, %n grados de libertad)</numerusform>
        </translation>
    </message>
    <message>
        <source>run %1 has no two gauge readings</source>
        <translation>el ensayo %1 no tiene dos lecturas del indicador</translation>
    </message>
    <message>
        <source>run %1: the gauge fell from %2 to %3 % in %4 h; assumes an accurate gauge and the rated energy</source>
        <translation>ensayo %1: el indicador bajó de %2 a %3 % en %4 h; supone un indicador exacto y la energía asignada</translation>
    </message>
    <message>
        <source>run %1 put back what %2 h of standing (run %3) had taken; at the meter, the charging loss inside</source>
        <translation>el ensayo %1 repuso lo que habían tomado %2 h de espera (ensayo %3); en el contador, pérdida de recarga incluida</translation>
    </message>
    <message>
        <source>as metered before the charger</source>
        <translation>según el contador antes del cargador</translation>
    </message>
    <message>
        <source>with the loss of the round trip</source>
        <translation>con la pérdida del ciclo</translation>
    </message>
    <message>
        <source>without the charging loss, which is not known</source>
        <translation>sin la pérdida de recarga, que no se conoce</translation>
    </message>
    <message>
        <source>no standby run: leave the unit full with its output off for days, reading the gauge, then charge it</source>
        <translation>ningún ensayo de reposo: deje el equipo lleno con la salida apagada durante días, lea el indicador y después recárguelo</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>unos %1 min</translation>
    </message>
    <message>
        <source>about %1 days</source>
        <translation>unos %1 días</translation>
    </message>
    <message>
        <source>about %1 h</source>
        <translation>unas %1 h</translation>
    </message>
    <message>
        <source>A drain from full to cut-off at any load would be the first to tell.</source>
        <translation>Una descarga de lleno a corte a cualquier carga sería la primera en decirlo.</translation>
    </message>
    <message>
        <source>No single further drain would narrow this by much.</source>
        <translation>Ninguna otra descarga por sí sola estrecharía esto mucho.</translation>
    </message>
    <message>
        <source>A drain near %1 W (%2) would narrow this most, by a factor of %3.</source>
        <translation>Una descarga cerca de %1 W (%2) es la que más estrecharía esto, por un factor de %3.</translation>
    </message>
    <message>
        <source>Whether the energy moves with time is not known: %1.</source>
        <translation>No se conoce si la energía se mueve con el tiempo: %1.</translation>
    </message>
    <message>
        <source>the drains were made at temperatures more than %1 °C apart, where cold looks like age</source>
        <translation>las descargas se hicieron a temperaturas separadas más de %1 °C, donde el frío parece envejecimiento</translation>
    </message>
    <message>
        <source>it takes three drains from full to cut-off; so far: %1</source>
        <translation>requiere tres descargas de lleno a corte; hasta ahora: %1</translation>
    </message>
    <message>
        <source>all drains were made within a day</source>
        <translation>todas las descargas se hicieron en un mismo día</translation>
    </message>
    <message>
        <source>the loads changed in step with time; repeat an early load</source>
        <translation>las cargas cambiaron al paso del tiempo; repita una carga temprana</translation>
    </message>
    <message>
        <source>over %1 days, corrected for the loads</source>
        <translation>a lo largo de %1 días, corregido según las cargas</translation>
    </message>
    <message numerus="yes">
        <source>%n drains at other temperatures left out</source>
        <comment>%n drain at other temperatures left out</comment>
        <translation>
            <numerusform>%n descarga a otras temperaturas omitida</numerusform>
            <numerusform>%n descargas a otras temperaturas omitidas</numerusform>
        </translation>
    </message>
    <message>
        <source>No change of energy with time is shown (%1 Wh a day).</source>
        <translation>No se muestra ningún cambio de la energía con el tiempo (%1 Wh al día).</translation>
    </message>
    <message>
        <source>The unit delivers less with time: %1 Wh a day.</source>
        <translation>El equipo entrega menos con el tiempo: %1 Wh al día.</translation>
    </message>
    <message>
        <source>The unit delivers more with time (%1 Wh a day): warmer, or not always charged full.</source>
        <translation>El equipo entrega más con el tiempo (%1 Wh al día): más calor, o no siempre recargado hasta lleno.</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>the run is no longer in the logbook</source>
        <translation>el ensayo ya no está en el cuaderno</translation>
    </message>
    <message>
        <source>choose another run</source>
        <translation>elija otro ensayo</translation>
    </message>
    <message>
        <source>a run of the comparison is no longer in its logbook</source>
        <translation>un ensayo de la comparación ya no está en su cuaderno</translation>
    </message>
    <message>
        <source>open the comparison page again</source>
        <translation>abra de nuevo la página de comparación</translation>
    </message>
    <message>
        <source>the photo cannot be shown</source>
        <translation>no se puede mostrar la foto</translation>
    </message>
    <message>
        <source>leave it out of the report</source>
        <translation>déjela fuera del informe</translation>
    </message>
    <message>
        <source>the unit has no runs any more</source>
        <translation>el equipo ya no tiene ensayos</translation>
    </message>
    <message>
        <source>choose another unit</source>
        <translation>elija otro equipo</translation>
    </message>
</context>
</TS>
