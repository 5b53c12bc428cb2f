"""Writes the workbooks of other programs that the tests open and save.

    python3 scripts/make-workbook-fixtures.py

The first is written by openpyxl (Debian: python3-openpyxl, python3-pil), the second is the first one opened and
saved by LibreOffice (Debian: libreoffice-calc). Both go to tests/workbench/files/ and are kept there,
so that the tests need neither program. All names in them are invented.
"""

import io
import struct
import subprocess
import tempfile
import zlib
from datetime import datetime
from pathlib import Path

from openpyxl import Workbook
from openpyxl.chart import LineChart, Reference
from openpyxl.comments import Comment
from openpyxl.drawing.image import Image
from openpyxl.formatting.rule import CellIsRule, ColorScaleRule, FormulaRule
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table, TableStyleInfo

PLACE = Path(__file__).parent.parent / "tests" / "workbench" / "files"
HEADERS = ["Sample", "Time", "First reading", "Second reading", "Calibrated cups",
           "Alcohol (oz)", "Foam (%)", "Air (%)", "Low", "High", "Remark"]
ROWS = [
    ["S-1", "09:05", 5.5, 5.75, 0, 16, 0.5, 5.75, 4.5, 7.5, ""],
    ["S-2", "09:40", 6.0, 6.0, 0, 48, 1.0, 5.75, 4.5, 7.5, "café & <ready>"],
    ["S-3", "10:15", 7.0, 7.25, 1, 32, 3.5, 8.0, 4.5, 7.5, "much foam"],
    ["S-4", "10:50", 8.25, 8.25, 0, 16, 0.5, 8.25, 4.5, 7.5, ""],
]


def picture():
    """A PNG of four grey points, without an imaging library."""
    def chunk(kind, data):
        body = kind + data
        return struct.pack(">I", len(data)) + body + struct.pack(">I", zlib.crc32(body))
    rows = b"".join(b"\x00" + b"\x80\x90" for _ in range(2))
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", 2, 2, 8, 0, 0, 0, 0))
            + chunk(b"IDAT", zlib.compress(rows)) + chunk(b"IEND", b""))


def workbook():
    book = Workbook()
    book.properties.creator = "Yard laboratory"
    book.properties.created = book.properties.modified = datetime(2026, 6, 10)
    sheet = book.active
    sheet.title = "Loads & tests"
    sheet.append(["Truck loads of the day"])
    sheet.append(HEADERS)
    for row in ROWS:
        sheet.append(row)
    sheet["L3"] = "=H3-I3"
    sheet.merge_cells("A1:D1")
    sheet["A1"].font = Font(name="Arial", size=14, bold=True, color="FF224466")
    edge = Side(style="thin", color="FF888888")
    for cell in sheet[2]:
        cell.font = Font(bold=True)
        cell.fill = PatternFill("solid", fgColor="FFDDEBF7")
        cell.border = Border(bottom=edge)
        cell.alignment = Alignment(wrap_text=True, vertical="center")
    for row in sheet["C3:H6"]:
        for cell in row:
            cell.number_format = "0.00"
    sheet.column_dimensions["A"].width = 14
    sheet.freeze_panes = "B3"
    sheet.conditional_formatting.add(
        "H3:H6", CellIsRule(operator="greaterThan", formula=["J3"], fill=PatternFill(bgColor="FFFFC7CE")))
    sheet.conditional_formatting.add(
        "G3:G6", FormulaRule(formula=["$G3>2"], font=Font(color="FF9C0006"), stopIfTrue=True))
    sheet.conditional_formatting.add(
        "C3:C6", ColorScaleRule(start_type="min", start_color="FFFFFFFF", end_type="max", end_color="FF63BE7B"))
    choice = DataValidation(type="list", formula1='"0,1,2,3"', allow_blank=True)
    choice.add("E3:E20")
    within = DataValidation(type="decimal", operator="between", formula1="0", formula2="9")
    within.error = "A reading lies between 0 and 9."
    within.errorTitle = "Reading"
    within.add("C3:D20")
    sheet.add_data_validation(choice)
    sheet.add_data_validation(within)
    sheet["H4"].comment = Comment("Looked at again by R. Ferro", "R. Ferro")
    sheet["A3"].comment = Comment("First truck\nof the day", "R. Ferro")
    chart = LineChart()
    chart.title = "Air"
    chart.add_data(Reference(sheet, min_col=8, min_row=2, max_row=6), titles_from_data=True)
    sheet.add_chart(chart, "N2")
    image = Image(io.BytesIO(picture()))
    sheet.add_image(image, "N20")
    second = book.create_sheet("Mixes")
    second.append(["Mix", "Target", "Tolerance"])
    second.append(["LW-30", 6.0, 1.5])
    second.append(["LW-40", 5.5, 1.5])
    table = Table(displayName="Mixes", ref="A1:C3")
    table.tableStyleInfo = TableStyleInfo(name="TableStyleLight1", showRowStripes=True)
    second.add_table(table)
    hidden = book.create_sheet("Lists")
    hidden["A1"] = "hidden"
    hidden.sheet_state = "hidden"
    name = DefinedName("Highest", attr_text="'Loads & tests'!$J$3")
    book.defined_names.append(name) if hasattr(book.defined_names, "append") else book.defined_names.add(name)
    return book


def by_libreoffice(source, target):
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(
            ["soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless",
             "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", folder, str(source)],
            check=True, stdout=subprocess.DEVNULL)
        (Path(folder) / source.name).replace(target)


if __name__ == "__main__":
    PLACE.mkdir(parents=True, exist_ok=True)
    first = PLACE / "by-openpyxl.xlsx"
    workbook().save(first)
    by_libreoffice(first, PLACE / "by-libreoffice.xlsx")
    for path in sorted(PLACE.glob("by-*.xlsx")):
        print(path, path.stat().st_size, "bytes")
