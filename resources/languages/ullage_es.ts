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
        <source>Usable fraction, the gauge&apos;s errors and losses: a %1 run does not tell them; make a drain.</source>
        <translation>Fracción útil, errores del indicador y pérdidas: un ensayo de %1 no los dice; haga una descarga.</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished">La página de un ensayo</translation>
    </message>
    <message>
        <source>Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and log stand in the tabs; what the readings say stands below.</source>
        <translation type="unfinished">Escriba lo que muestran el indicador y el registro en la fila bajo las lecturas y pulse Intro. Si un valor es dudoso, se le pregunta; no se anota nada antes de que usted responda. F3 a F7 anotan un suceso al instante; F8 termina el ensayo. Los gráficos, la incertidumbre y la grabación están en las pestañas; lo que dicen las lecturas está debajo.</translation>
    </message>
    <message>
        <source>Running tests</source>
        <translation type="unfinished">Ensayos en curso</translation>
    </message>
    <message>
        <source>All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 shows them over the whole screen, to be read from two metres.</source>
        <translation type="unfinished">Todos los ensayos en curso, uno junto a otro: por dónde va cada uno, cuándo se prevé su corte y cuándo toca su próxima lectura. F11 los muestra en toda la pantalla, legibles a dos metros.</translation>
    </message>
    <message>
        <source>The page of a unit</source>
        <translation type="unfinished">La página de un equipo</translation>
    </message>
    <message>
        <source>What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run (Ctrl+R) begins one.</source>
        <translation type="unfinished">Lo que dicen juntos todos los ensayos del equipo, sus datos declarados frente a lo ensayado y el próximo ensayo que conviene hacer. Iniciar ensayo (Ctrl+R) comienza uno.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished">Comparación</translation>
    </message>
    <message>
        <source>Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they cannot tell apart share a rank.</source>
        <translation type="unfinished">Equipos uno junto a otro, según ensayo o a una misma carga. La frase de arriba dice qué orden distinguen los contadores; los equipos que no pueden distinguir comparten puesto.</translation>
    </message>
    <message>
        <source>Sizing</source>
        <translation type="unfinished">Dimensionado</translation>
    </message>
    <message>
        <source>How many days each unit carries a load list, how many units that takes, and which PV array.</source>
        <translation type="unfinished">Cuántos días alimenta cada equipo una lista de cargas, cuántos equipos hacen falta y qué generador FV.</translation>
    </message>
    <message>
        <source>Load lists</source>
        <translation type="unfinished">Listas de cargas</translation>
    </message>
    <message>
        <source>Appliances that a unit is to feed: what each takes while on, how long a day, and when.</source>
        <translation type="unfinished">Aparatos que un equipo ha de alimentar: qué consume cada uno en marcha, cuánto tiempo al día y cuándo.</translation>
    </message>
    <message>
        <source>PV input</source>
        <translation type="unfinished">Entrada FV</translation>
    </message>
    <message>
        <source>Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.</source>
        <translation type="unfinished">Si una cadena de módulos es apta para la entrada FV de un equipo, en frío y en caliente. Las cadenas FV están en tensión siempre que hay luz.</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation type="unfinished">Contadores</translation>
    </message>
    <message>
        <source>What is stated of each meter. Without its error limit no interval can be stated.</source>
        <translation type="unfinished">Lo que está indicado de cada contador. Sin su límite de error no se puede dar ningún intervalo.</translation>
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
        <source>Combined standard uncertainty %1 Wh%2.</source>
        <translation>Incertidumbre típica combinada %1 Wh%2.</translation>
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
        <translation>un nombre, para guardar estas columnas como conjunto propio</translation>
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
        <translation>para una hoja de cálculo: todas las columnas</translation>
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
        <translation>a %1</translation>
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
        <translation>hallado apagado: se apagó sin verlo</translation>
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
        <translation>sin indicar: desde que se vio encendido</translation>
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
        <translation>Terminar ensayo…</translation>
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
        <translation>Cerrar</translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation>un cuarto del límite; 0 tras calibrar a sus cargas</translation>
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
        <source>no connection</source>
        <translation>sin conexión</translation>
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
        <source>the connection to the broker cannot be prepared</source>
        <translation>no se puede preparar la conexión con el broker</translation>
    </message>
    <message>
        <source>no secured connection (%1): the certificate has expired, is for another host name or comes from an authority that this machine does not trust, or the broker does not speak TLS at this port</source>
        <translation>sin conexión segura (%1): el certificado ha caducado, es para otro nombre de host o viene de una autoridad en la que esta máquina no confía, o el broker no habla TLS en este puerto</translation>
    </message>
    <message>
        <source>the broker refuses: %1</source>
        <translation>el broker rechaza: %1</translation>
    </message>
    <message>
        <source>a message of %1 MB came; those of a meter are short</source>
        <translation>llegó un mensaje de %1 MB; los de un contador son cortos</translation>
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
        <translation>PNG, píxeles para una página o un mensaje</translation>
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
        <source>The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be known, amendments and cautions. Numbers have the decimal sign of your system.</source>
        <translation>El informe contiene resumen, contadores, método con fuentes, lecturas, presupuesto de incertidumbre, gráficos, hallazgos, lo que no se puede conocer, enmiendas y precauciones. Los números llevan el signo decimal de su sistema.</translation>
    </message>
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
        <translation>lo que está enchufado, con sus palabras</translation>
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
</context>
<context>
    <name>ullage::ScpiLink</name>
    <message>
        <source>no connection within %1 s</source>
        <translation>sin conexión en %1 s</translation>
    </message>
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
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
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
        <translation>&amp;Tipo de ensayo</translation>
    </message>
    <message>
        <source>&amp;Remind me to read</source>
        <translation type="unfinished"></translation>
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
        <translation>&amp;Papel</translation>
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
        <translation>Carta</translation>
    </message>
    <message>
        <source>Published by</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished">1 a 3650 {1 ?}</translation>
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
        <translation>lo que está enchufado, con sus palabras</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New logbook for this table</source>
        <translation type="unfinished"></translation>
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
</context>
<context>
    <name>ullage::TreeRowDelegate</name>
    <message>
        <source>due</source>
        <translation>toca</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>descarga</translation>
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
        <translation>12 V, la menor con la que funciona la entrada</translation>
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
        <translation>recargas completas antes de su primer ensayo aquí</translation>
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
        <translation>palabras breves para encontrar equipos, por ejemplo: prestado; tienda</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A finished logbook of invented units. Look round and change what you like: it is a copy of your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the sample logbook</source>
        <translation>Abrir el cuaderno de ejemplo</translation>
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
        <translation>Añadir equipo</translation>
    </message>
    <message>
        <source>Add meter</source>
        <translation>Añadir contador</translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the energy printed on a battery storage unit reaches the socket, how sure is that, and can its gauge be trusted?</source>
        <translation>¿Cuánta de la energía impresa en un equipo de almacenamiento con batería llega a la toma, con qué seguridad, y se puede confiar en su indicador?</translation>
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
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Deteniendo…</translation>
    </message>
</context>
</TS>
