#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the foreign tables of this folder, as people of an invented test round might keep them.

Wants python3-openpyxl (writes XLSX) and python3-odf (writes ODS), two libraries that know nothing of each other or of this program. What they made
is kept here, so that nobody needs them to run the tests: python3 make_tables.py FOLDER
"""
import datetime
import pathlib
import sys
import zipfile

import openpyxl
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import Table, TableCell, TableRow
from odf.text import P

folder = pathlib.Path(sys.argv[1])


def kitchen():
    """A spreadsheet saved as text in German: Windows-1252, semicolons, decimal commas, the day only where it changes, a line of totals."""
    rows = [
        "Gerät: Osk 1200;;;;",
        "Nennkapazität: 1,2 kWh;;;;",
        ";;;;",
        "Datum;Uhrzeit;Zähler (kWh);Akkustand (%);Bemerkung",
        "14.05.2025;18:00;12,310;100;voll",
        ";20:30;12,625;71;",
        ";23:15;12,970;40;Kühlschrank läuft",
        ";00:45;13,155;22;",
        ";;;;",
        "15.05.2025;02:10;13,330;5;",
        ";02:28;13,365;0;abgeschaltet",
        "Summe;;1,055;;",
    ]
    (folder / "kitchen.csv").write_bytes("\r\n".join(rows).encode("cp1252") + b"\r\n")


def side_by_side():
    """A workbook with two runs side by side, titles above, dates as dates, percent and kWh by number format, and a second sheet of other things."""
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Runs"
    sheet["A1"] = "Tarn 600, 60 W lamp"
    sheet["F1"] = "Tarn 600, 120 W heater"
    for column, title in zip("ABCD", ["When", "Plug meter (kWh)", "Battery", "Notes"]):
        sheet[column + "2"] = title
    for column, title in zip("FGHI", ["When", "Plug meter (kWh)", "Battery", "Notes"]):
        sheet[column + "2"] = title
    start = datetime.datetime(2025, 6, 1, 9, 0)
    left = [(0, 0.0, 1.0, "started, full"), (150, 0.145, 0.74, None), (330, 0.32, 0.41, None), (505, 0.486, 0.07, None), (540, 0.514, 0.0, "off")]
    right = [(0, 0.514, 1.0, None), (60, 0.632, 0.77, None), (150, 0.806, 0.43, None), (245, 0.985, 0.06, None)]
    for offset, values, day in ((1, left, start), (6, right, datetime.datetime(2025, 6, 3, 8, 30))):
        for i, (minutes, kwh, share, note) in enumerate(values):
            cell = sheet.cell(row=3 + i, column=offset, value=day + datetime.timedelta(minutes=minutes))
            cell.number_format = "dd/mm/yy hh:mm"
            sheet.cell(row=3 + i, column=offset + 1, value=kwh).number_format = "0.000"
            sheet.cell(row=3 + i, column=offset + 2, value=share).number_format = "0%"
            sheet.cell(row=3 + i, column=offset + 3, value=note)
    prices = book.create_sheet("Prices")
    prices["A1"] = "Tarn 600"
    prices["B1"] = 499
    book.save(folder / "side-by-side.xlsx")


def weekend():
    """Runs below one another, each with a title that holds its start; times count from there."""
    document = OpenDocumentSpreadsheet()
    table = Table(name="Weekend")

    def row(cells):
        line = TableRow()
        for cell in cells:
            if cell is None:
                line.addElement(TableCell())
            elif isinstance(cell, str):
                made = TableCell(valuetype="string")
                made.addElement(P(text=cell))
                line.addElement(made)
            elif isinstance(cell, tuple):
                sort, value, text = cell
                made = TableCell(valuetype="time", timevalue=value) if sort == "time" else TableCell(valuetype="percentage", value=value)
                made.addElement(P(text=text))
                line.addElement(made)
            else:
                made = TableCell(valuetype="float", value=str(cell))
                made.addElement(P(text=str(cell)))
                line.addElement(made)
        table.addElement(line)

    row(["Elapsed", "SoC", "Meter Wh", "Display W", "What happened"])
    row(["Run 1, 2025-07-03 10:00, kettle and fridge"])
    row([("time", "PT00H00M00S", "0:00"), ("percent", "1", "100%"), 0, 210, None])
    row([("time", "PT02H30M00S", "2:30"), ("percent", "0.69", "69%"), 431.5, 205, "load changed"])
    row([("time", "PT05H15M00S", "5:15"), ("percent", "0.33", "33%"), 905, 190, None])
    row([])
    row(["Run 2, 2025-07-04 08:00, fridge alone"])
    row([("time", "PT00H00M00S", "0:00"), ("percent", "1", "100%"), 905, 62, None])
    row([("time", "PT14H00M00S", "14:00"), ("percent", "0.35", "35%"), 1690, 60, None])
    row([("time", "PT26H10M00S", "26:10"), ("percent", "0", "0%"), 2131, None, "went off, display dark"])
    document.spreadsheet.addElement(table)
    document.save(str(folder / "weekend.ods"))


def shared_page():
    """Cells of a shared page as a browser copies them: month first, a day over several rows, am and pm, units in the cells."""
    (folder / "shared-page.html").write_text("""<meta charset="utf-8"><table border="1">
<tr><th>Day</th><th>Time</th><th>Energy out</th><th>Gauge</th><th>Comments</th></tr>
<tr><td rowspan="3">5/14/2025</td><td>6:00&nbsp;pm</td><td>0&nbsp;kWh</td><td>100&nbsp;%</td><td></td></tr>
<tr><td>8:30 pm</td><td>0.43 kWh</td><td>69 %</td><td>a little warm</td></tr>
<tr><td>11:55 pm</td><td>0.88 kWh</td><td>~ 31 %</td><td></td></tr>
<tr><td rowspan="2">5/15/2025</td><td>12:40 am</td><td>0.97 kWh</td><td>22 %</td><td><b>still</b> going</td></tr>
<tr><td>2:05 am</td><td>1.12 kWh</td><td>?</td><td>shut down<br>by itself</td></tr>
</table>
""", encoding="utf-8")


def garage():
    """Tab text in UTF-16 with a column for the unit and one for the run, written as things came; the meter was reset once."""
    rows = [
        ["Station", "Test", "Date and time", "Register Wh", "Load W", "Gauge %", "Event", "Remark"],
        ["Brill 2000", "A", "Thu 5 June 2025 07:00", "118", "205", "100", "", ""],
        ["Brill 2000", "A", "Thu 5 June 2025 09:30", "632", "206", "76", "", "door left open"],
        ["Quay 500", "A", "Thu 5 June 2025 09:40", "0", "51", "98", "", ""],
        ["Brill 2000", "A", "Thu 5 June 2025 11:00", "4", "204", "60", "meter reset", ""],
        ["", "", "", "", "", "", "", ""],
        ["Brill 2000", "A", "Thu 5 June 2025 16:20", "1093", "203", "8", "", ""],
        ["Quay 500", "A", "Thu 5 June 2025 17:05", "371", "50", "19", "", ""],
        ["Brill 2000", "A", "Thu 5 June 2025 17:01", "1224", "", "0", "cut off", ""],
        ["Quay 500", "A", "later", "390", "", "", "", ""],
        ["Quay 500", "B", "Fri 6 June 2025 08:00", "402", "52", "100", "", ""],
        ["Quay 500", "B", "Fri 6 June 2025 10:00", "505", "51", "79", "", ""],
    ]
    (folder / "garage.txt").write_bytes(b"\xff\xfe" + "\r\n".join("\t".join(row) for row in rows).encode("utf-16-le"))


def from_1904():
    """A workbook whose days count from 1904."""
    book = openpyxl.Workbook()
    book.epoch = openpyxl.utils.datetime.CALENDAR_MAC_1904
    sheet = book.active
    sheet.append(["Date", "Time", "Wh", "Gauge %"])
    for clock, wh, gauge in ((datetime.time(18, 0), 0, 100), (datetime.time(20, 15), 310, 70), (datetime.time(23, 59), 777, 25)):
        sheet.append([datetime.date(2025, 5, 14), clock, wh, gauge])
    book.save(folder / "from-1904.xlsx")


def formulas():
    """Formulas whose values no program has worked out yet."""
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.append(["Time", "Start Wh", "Wh", "Gauge %"])
    sheet.append([datetime.datetime(2025, 5, 14, 18, 0), 100, "=B2-100", 100])
    sheet.append([datetime.datetime(2025, 5, 14, 20, 0), 410, "=B3-100", 70])
    book.save(folder / "formulas.xlsx")


def texts():
    """Small tables with one trouble each."""
    def text(name, *rows):
        (folder / name).write_text("\n".join(rows) + "\n", encoding="utf-8")

    text("open-order.csv", "date,time,Wh,%", "05/06/2025,18:00,0,100", "05/06/2025,20:00,310,70", "06/06/2025,01:00,900,12")
    text("open-unit.csv", "time,gauge,register", "2025-05-14 18:00,100,12.31", "2025-05-14 20:00,70,12.62")
    text("open-runs.csv", "time,gauge %,Wh", "2025-05-14 18:00,100,0", "2025-05-14 23:00,20,800", "", "2025-05-16 18:00,99,800", "2025-05-16 23:00,30,1500")
    text("open-start.csv", "hours,gauge %,Wh", "0,100,0", "1.5,80,200", "3,60,410")
    text("two-heads.csv", "time;Wh;%", "14.05.2025 18:00;0;100", "14.05.2025 19:00;110;90", "time;Wh;%", "14.05.2025 20:00;220;80")
    text("twice.csv", "time,gauge %,energy Wh,energy total Wh", "2025-05-14 18:00,100,0,5000", "2025-05-14 20:00,70,300,5300")
    text("before-1980.csv", "time,gauge %,Wh", "1904-01-02 18:00,100,0", "1904-01-02 20:00,70,300")
    text("future.csv", "time,gauge %,Wh", "2025-05-14 18:00,100,0", "2072-05-14 20:00,70,300")
    text("no-table.txt", "Dear Ana,", "the battery ran all night.", "Yours, Tom")


def damaged():
    """A workbook cut short, one with a password in each form, and a zip file that is none."""
    whole = (folder / "side-by-side.xlsx").read_bytes()
    (folder / "cut-short.xlsx").write_bytes(whole[: len(whole) // 2])
    (folder / "password.xlsx").write_bytes(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(504))
    with zipfile.ZipFile(folder / "password.ods", "w", zipfile.ZIP_DEFLATED) as book:
        book.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        book.writestr("META-INF/manifest.xml", """<?xml version="1.0"?><manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0">
<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml" manifest:size="99"><manifest:encryption-data/></manifest:file-entry></manifest:manifest>""")
        book.writestr("content.xml", bytes(range(99)))
    with zipfile.ZipFile(folder / "no-workbook.xlsx", "w") as book:
        book.writestr("readme.txt", "no workbook")


for make in (kitchen, side_by_side, weekend, shared_page, garage, from_1904, formulas, texts, damaged):
    make()
