"""Small helpers shared by the makers of the sets by-...: writing sheets and what they mean."""
import json, os, subprocess, shutil, tempfile
from decimal import Decimal as D, ROUND_HALF_UP
from openpyxl import Workbook
from openpyxl.styles import Font, PatternFill, Alignment, Border, Side
from openpyxl.utils import get_column_letter as L

HERE = os.path.dirname(os.path.abspath(__file__))
WORDS = ("rest", "ph", "unknown")

def plain(x):
    s = format(D(str(x)).quantize(D("0.0001"), ROUND_HALF_UP), "f")
    return s.rstrip("0").rstrip(".") if "." in s else s

def num(x):
    """a number as a spreadsheet would hold it"""
    f = float(x)
    return int(f) if f == int(f) else f

def fill(rows, at, total="100"):
    """the one row whose amount (column `at`) is None gets what is left"""
    rows = [list(r) for r in rows]
    left = D(total) - sum(D(str(r[at])) for r in rows if r[at] is not None and r[at] not in WORDS and _isnum(r[at]))
    for r in rows:
        if r[at] is None:
            r[at] = plain(left)
    return rows

def _isnum(x):
    try: D(str(x)); return True
    except Exception: return False

def de(x, places=None):
    s = plain(x) if places is None else format(D(str(x)), ".%df" % places)
    return s.replace(".", ",")

def F(title, lines):
    return {"title": title, "lines": [{"name": n, "amount": a if a in WORDS else plain(a), "phase": p or ""} for n, a, p in lines]}

def G(title, lines):
    """lines in grams (or kg): per cents they come to"""
    t = sum(D(str(a)) for _, a, _ in lines if a not in WORDS)
    return F(title, [(n, a if a in WORDS else D(str(a)) * 100 / t, p) for n, a, p in lines])

def M(name, paid="", for_="", stock="", lot=""):
    return {"name": name, "paid": str(paid), "for": str(for_), "stock": str(stock), "lot": str(lot)}

def expect(path, made, formulas=(), materials=()):
    with open(path + ".json", "w", encoding="utf-8") as f:
        json.dump({"made": made, "formulas": list(formulas), "materials": list(materials)}, f, ensure_ascii=False, indent=1)
        f.write("\n")

def text(path, s, enc="utf-8", nl="\n"):
    with open(path, "wb") as f:
        f.write(s.replace("\n", nl).encode(enc))

def through_calc(paths):
    """open and save the workbooks in the office program, so that formula cells hold their values"""
    tmp = tempfile.mkdtemp()
    prof = tempfile.mkdtemp()
    subprocess.run(["soffice", "-env:UserInstallation=file://" + prof, "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", tmp] + list(paths),
                   check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=400)
    for p in paths:
        shutil.move(os.path.join(tmp, os.path.basename(p)), p)
    shutil.rmtree(tmp); shutil.rmtree(prof, ignore_errors=True)

def put(ws, r, c, vals, bold=False, color=None, fmt=None):
    for i, v in enumerate(vals):
        if v is None: continue
        x = ws.cell(r, c + i, v)
        if bold: x.font = Font(bold=True)
        if color: x.fill = PatternFill("solid", fgColor=color)
        if fmt and isinstance(v, (int, float)) and not isinstance(v, bool): x.number_format = fmt

def bar(ws, r, c1, c2, txt, color="DDEBF7", bold=True, size=11, merge=True, align="left"):
    x = ws.cell(r, c1, txt)
    for c in range(c1, c2 + 1):
        ws.cell(r, c).fill = PatternFill("solid", fgColor=color)
    x.font = Font(bold=bold, size=size)
    x.alignment = Alignment(horizontal=align, vertical="center", wrap_text=True)
    if merge and c2 > c1: ws.merge_cells(start_row=r, start_column=c1, end_row=r, end_column=c2)

def widths(ws, *w):
    for i, x in enumerate(w): ws.column_dimensions[L(i + 1)].width = x
