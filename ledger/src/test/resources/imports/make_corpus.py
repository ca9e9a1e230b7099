"""Makes the messy spreadsheets in corpus/, each with what it means beside it as JSON.

Needs openpyxl and LibreOffice (soffice). Recipes are invented from generic names by a seeded generator; none was ever made.
Run it in this folder: python3 make_corpus.py. The files are committed, so that tests need neither.
"""
import datetime, json, os, random, shutil, subprocess, tempfile
from decimal import Decimal as D
from openpyxl import Workbook
from openpyxl.styles import Font

OUT = "corpus"
INCI = [("Glycerin", "Glyzerin", "glycérine végétale"), ("Propanediol", "Propandiol", "propanediol"), ("Xanthan Gum", "Xanthan", "gomme xanthane"),
        ("Butyrospermum Parkii Butter", "Sheabutter", "beurre de karité"), ("Helianthus Annuus Seed Oil", "Sonnenblumenöl", "huile de tournesol"),
        ("Prunus Amygdalus Dulcis Oil", "Mandelöl", "huile d'amande douce"), ("Cetearyl Alcohol", "Cetearylalkohol", "alcool cétéarylique"),
        ("Glyceryl Stearate Citrate", "Glycerylstearatcitrat", "glyceryl stearate citrate"), ("Caprylic/Capric Triglyceride", "Neutralöl", "caprylis"),
        ("Tocopherol", "Vitamin E", "vitamine E"), ("Panthenol", "Panthenol", "panthénol"), ("Allantoin", "Allantoin", "allantoïne"),
        ("Niacinamide", "Niacinamid", "niacinamide"), ("Squalane", "Squalan", "squalane"), ("Sodium Benzoate", "Natriumbenzoat", "benzoate de sodium"),
        ("Potassium Sorbate", "Kaliumsorbat", "sorbate de potassium"), ("Phenoxyethanol", "Phenoxyethanol", "phénoxyéthanol"),
        ("Cocamidopropyl Betaine", "Cocamidopropylbetain", "bétaïne de coco"), ("Sodium Laureth Sulfate", "SLES", "laureth sulfate de sodium"),
        ("Decyl Glucoside", "Decylglucosid", "décyl glucoside"), ("Urea", "Harnstoff", "urée"), ("Jojoba oil", "Jojobaöl", "huile de jojoba"),
        ("Polysorbate 20", "Polysorbat 20", "polysorbate 20"), ("1,2-Hexanediol", "Hexandiol", "hexanediol"), ("Sodium PCA", "Natrium PCA", "PCA de sodium")]
TITLES = ["Hand cream no. 3", "Face serum light", "Body lotion summer", "Shampoo mild", "Shower gel", "Conditioner rich", "Foot cream", "Cleansing gel",
          "Night cream", "Lotion after sun", "Scalp tonic", "Body milk"]
PHASES = ["A", "B", "C"]


def recipe(rnd, water=True, qs=None):
    """Lines as (phase, (inci, german, french), percent); water first; sums to exactly 100."""
    n = rnd.randint(5, 10)
    chosen = rnd.sample(INCI, n)
    parts = [D(rnd.choice(["0.1", "0.2", "0.25", "0.3", "0.5", "0.75", "1", "1.5", "2", "2.5", "3", "4", "5", "6.5", "7.25", "8"])) for _ in chosen]
    cut = sorted(rnd.sample(range(1, n), 2))
    lines = [("A", ("Aqua", "Wasser", "eau"), D(100) - sum(parts))]
    for i, (names, part) in enumerate(zip(chosen, parts)):
        lines.append(("A" if i < cut[0] else "B" if i < cut[1] else "C", names, part))
    return lines


def num(d, comma=False, places=None):
    s = format(d.quantize(D(10) ** -places) if places is not None else d.normalize(), "f")
    return s.replace(".", ",") if comma else s


def expected(title, lines, names=0, phases=True, rest=None, **more):
    return {"title": title, "lines": [
        {"name": l[1] if isinstance(l[1], str) else l[1][names], "amount": "rest" if i == rest else l[2] if isinstance(l[2], str) else num(l[2]),
         **({"phase": "Phase " + l[0]} if phases else {})} for i, l in enumerate(lines)]}


def write(name, data, formulas=None, materials=None, maker="code", refused=False):
    with open(os.path.join(OUT, name), "wb") as f:
        f.write(data)
    say(name, formulas, materials, maker)


def say(name, formulas=None, materials=None, maker="code"):
    out = {"made": maker}
    if formulas: out["formulas"] = formulas
    if materials: out["materials"] = materials
    with open(os.path.join(OUT, name + ".json"), "w", encoding="utf-8") as f:
        json.dump(out, f, ensure_ascii=False, indent=1)
        f.write("\n")


def text(rows, sep):
    def cell(c):
        c = "" if c is None else str(c)
        return '"' + c.replace('"', '""') + '"' if sep in c or '"' in c or "\n" in c else c
    return "\r\n".join(sep.join(cell(c) for c in row) for row in rows) + "\r\n"


def save(book, name, formulas=None, materials=None, office=False):
    path = os.path.join(OUT, name)
    book.save(path)
    if office:
        resave(path)
    say(name, formulas, materials, "LibreOffice" if office else "openpyxl")


def resave(path, to="xlsx"):
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["soffice", "--headless", "--convert-to", to, "--outdir", folder, path], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        made = os.path.join(folder, os.path.splitext(os.path.basename(path))[0] + "." + to.split(":")[0])
        shutil.move(made, path if to == "xlsx" else os.path.splitext(path)[0] + "." + to.split(":")[0])


def sheet(book, title, rows, first=False):
    ws = book.active if first else book.create_sheet()
    ws.title = title
    for r, row in enumerate(rows, 1):
        for c, value in enumerate(row, 1):
            if value is not None and value != "":
                ws.cell(r, c, float(value) if isinstance(value, D) else value)
    return ws


def s01_plain_comma(i, rnd):
    lines = recipe(rnd)
    rows = [["INCI", "%"]] + [[l[1][0], num(l[2])] for l in lines] + ([["Total", "100"]] if i % 2 else [])
    write(f"01-plain-{i}.csv", text(rows, ",").encode(), [expected(f"01-plain-{i}", lines, phases=False)])


def s02_german_semicolon(i, rnd):
    lines = recipe(rnd)
    rest = 0 if i % 2 else None
    rows = [["Phase", "Rohstoff", "INCI", "Anteil in %", "Funktion"]]
    for k, l in enumerate(lines):
        rows.append([l[0], l[1][1], l[1][0], "ad 100" if k == rest else num(l[2], True), "Öl" if "öl" in l[1][1] else ""])
    rows.append(["", "Summe", "", "100,00", ""])
    data = text(rows, ";")
    write(f"02-german-{i}.csv", data.encode("cp1252" if i % 3 else "utf-8-sig"), [expected(f"02-german-{i}", lines, 1, rest=rest)])


def s03_phase_headings(i, rnd):
    lines = recipe(rnd)
    title = rnd.choice(TITLES)
    words = [{"A": "Phase A", "B": "Phase B", "C": "Phase C"}, {"A": "A", "B": "B", "C": "C"}, {"A": "Phase A - heat to 75 °C", "B": "Phase B - heat to 75 °C", "C": "Phase C - below 40 °C"}][i % 3]
    rows = [[title], [], ["Ingredient", "% w/w"]]
    before = ""
    for l in lines:
        if l[0] != before:
            rows.append([words[l[0]]]); before = l[0]
        rows.append([l[1][0], num(l[2], places=2)])
    rows += [["TOTAL", "100.00"], [], ["Procedure"], ["1. Heat phase A and B to 75 °C."], ["2. Combine, stir for 10 minutes at 3000 rpm."], ["3. Below 40 °C add phase C. Adjust pH to 5.5"]]
    e = expected(title, lines)
    for l, x in zip(lines, e["lines"]): x["phase"] = words[l[0]].split(" - ")[0] if len(words[l[0]]) > 1 else "Phase " + l[0]
    write(f"03-headings-{i}.csv", text(rows, "\t" if i % 2 else ",").encode(), [e])


def s04_grams(i, rnd):
    lines = recipe(rnd)
    size = rnd.choice([200, 250, 500, 1000, 2000])
    title = rnd.choice(TITLES)
    rows = [["Product:", title], ["Batch size", f"{size} g"], ["Date", "12.03.2025"], [], ["Phase", "Material", "Weight (g)"]]
    for l in lines:
        rows.append([l[0], l[1][0], (l[2] * size / 100)])
    rows.append([None, "Total", D(size)])
    book = Workbook(); sheet(book, "Sheet1", rows, True)
    save(book, f"04-grams-{i}.xlsx", [expected(title, lines)], office=i % 2 == 0)


def s05_percent_and_grams(i, rnd):
    lines = recipe(rnd)
    size = rnd.choice([100, 300, 750])
    title = rnd.choice(TITLES)
    book = Workbook()
    rows = [[title], [None, None, "Batch", D(size)], [], ["Phase", "Ingredient", "%", "g", "Cost/kg"]]
    ws = sheet(book, title, rows, True)
    r = 5
    for l in lines:
        ws.cell(r, 1, l[0]); ws.cell(r, 2, l[1][0]); ws.cell(r, 3, float(l[2])); ws.cell(r, 4, f"=C{r}*$D$2/100"); ws.cell(r, 5, rnd.randint(3, 90)); r += 1
    ws.cell(r, 2, "Total"); ws.cell(r, 3, f"=SUM(C5:C{r-1})"); ws.cell(r, 4, f"=SUM(D5:D{r-1})")
    save(book, f"05-both-{i}.xlsx", [expected(title, lines)], office=True)


def s06_percent_format(i, rnd):
    lines = recipe(rnd)
    title = rnd.choice(TITLES)
    book = Workbook()
    ws = sheet(book, "Formula", [["Formula name", title], ["Version", "1.2"], ["Phase", "INCI name", "Common name", "Amount"]], True)
    for r, l in enumerate(lines, 4):
        ws.cell(r, 1, l[0]); ws.cell(r, 2, l[1][0]); ws.cell(r, 3, l[1][2])
        c = ws.cell(r, 4, float(l[2] / 100)); c.number_format = "0.00%"
    c = ws.cell(4 + len(lines), 4, f"=SUM(D4:D{3+len(lines)})"); c.number_format = "0.00%"
    save(book, f"06-fractions-{i}.xlsx", [expected(title, lines)], office=True)


def s07_merged(i, rnd):
    lines = recipe(rnd)
    title = rnd.choice(TITLES)
    book = Workbook()
    ws = book.active
    ws.title = "Rezept"
    ws.cell(2, 2, title).font = Font(bold=True, size=16); ws.merge_cells("B2:F2")
    ws.cell(3, 2, "Datum"); ws.cell(3, 3, datetime.date(2025, 3, 4))
    for c, h in enumerate(["Phase", "Rohstoff", "INCI", "Menge", None, "Bemerkung"], 2):
        if h: ws.cell(6, c, h)
    ws.cell(7, 5, "[%]")
    r, start, before = 8, 8, lines[0][0]
    for l in lines:
        if l[0] != before:
            if r - start > 1: ws.merge_cells(start_row=start, end_row=r - 1, start_column=2, end_column=2)
            start, before = r, l[0]
        if r == start: ws.cell(r, 2, l[0])
        ws.cell(r, 3, l[1][1]); ws.cell(r, 4, l[1][0]); ws.cell(r, 5, float(l[2])); r += 1
    if r - start > 1: ws.merge_cells(start_row=start, end_row=r - 1, start_column=2, end_column=2)
    ws.cell(r + 1, 3, "Summe"); ws.cell(r + 1, 5, f"=SUM(E8:E{r-1})")
    save(book, f"07-merged-{i}.xlsx", [expected(title, lines, 1)], office=True)


def s08_stacked(i, rnd):
    formulas, rows = [], []
    for k in range(rnd.randint(2, 4)):
        lines = recipe(rnd); title = TITLES[(i * 3 + k) % len(TITLES)]
        rows += [[title], ["Ingredient", "Percent"]] if i % 2 else [[title]] + ([["Ingredient", "Percent"]] if k == 0 else [])
        rows += [[l[1][0], num(l[2])] for l in lines] + [["Total", "100"], [], []]
        formulas.append(expected(title, lines, phases=False))
    write(f"08-stacked-{i}.csv", text(rows, ";").encode(), formulas)


def s09_per_sheet(i, rnd):
    book = Workbook(); formulas = []
    for k in range(3):
        lines = recipe(rnd); title = TITLES[(i + k * 4) % len(TITLES)]
        rows = [["Phase", "Ingredient", "INCI", "% (w/w)"]] + [[l[0], l[1][2], l[1][0], l[2]] for l in lines] + [[None, "Total", None, D(100)]]
        sheet(book, title, rows, k == 0); formulas.append(expected(title, lines, 2))
    notes = book.create_sheet("Notes"); notes["A1"] = "Remember to order more jars"; notes["A2"] = "Ask about the new pump"
    save(book, f"09-sheets-{i}.xlsx", formulas, office=i % 2 == 1)


def s10_trials(i, rnd):
    base = recipe(rnd); names = [l[1][0] for l in base]
    trials = 3
    table = [[l[2] for l in base]]
    for t in range(1, trials):
        parts = [D(rnd.choice(["0", "0.5", "1", "2", "4"])) for _ in base[1:]]
        table.append([D(100) - sum(parts)] + parts)
    rows = [["Hand wash trials"], ["Ingredient"] + [f"Trial {t+1} (%)" for t in range(trials)]]
    for k, n in enumerate(names): rows.append([n] + [num(table[t][k]) if table[t][k] else ("" if i % 2 else "-") for t in range(trials)])
    rows.append(["Total"] + ["100"] * trials)
    formulas = [expected(f"Hand wash trials, Trial {t+1} (%)", [("A", (names[k],), table[t][k]) for k in range(len(names)) if table[t][k]], phases=False) for t in range(trials)]
    write(f"10-trials-{i}.csv", text(rows, ",").encode(), formulas)


def s11_transposed(i, rnd):
    lines = recipe(rnd)
    rows = [["Ingredient"] + [l[1][0] for l in lines], ["%"] + [l[2] for l in lines]]
    if i % 2: rows.insert(0, ["Phase"] + [l[0] for l in lines])
    book = Workbook(); sheet(book, "Sheet1", rows, True)
    save(book, f"11-turned-{i}.xlsx", [expected(f"11-turned-{i}", lines, phases=bool(i % 2))], office=i % 2 == 0)


def s12_free_text(i, rnd):
    lines = recipe(rnd); title = rnd.choice(TITLES)
    form = [lambda l: f"{l[1][0]} {num(l[2])} %", lambda l: f"{num(l[2])}% {l[1][0]}", lambda l: f"{l[1][0]}: {num(l[2])}", lambda l: f"- {l[1][0]} - {num(l[2])}%"][i % 4]
    out, before = [title, ""], ""
    for l in lines:
        if l[0] != before: out.append(f"Phase {l[0]}"); before = l[0]
        out.append(form(l))
    write(f"12-text-{i}.txt", "\n".join(out).encode(), [expected(title, lines)])


def s13_units_and_marks(i, rnd):
    lines = recipe(rnd); title = rnd.choice(TITLES)
    extra = ("C", ("Citric Acid", "Zitronensäure", "acide citrique"), "ph")
    rows = [[f"Rezept: {title}"], ["Ansatz: 200 g"], [], ["Zutat", "Menge", "Hinweis"]]
    before = ""
    for k, l in enumerate(lines):
        if l[0] != before: rows.append([f"Phase {l[0]}:"]); before = l[0]
        g = num(l[2] * 2, True) + " g"
        rows.append([l[1][1] + ("*" if k == 2 else ""), "ad 200 g" if k == 0 else g, "kalt einrühren" if k == 3 else ""])
        if k == 3: rows.append(["", "", "nicht über 60 °C erhitzen"])
    rows += [["Zitronensäure", "q.s. (pH 5,5)", ""], [], ["* bio"]]
    e = expected(title, lines + [extra], 1, rest=0)
    write(f"13-marks-{i}.csv", text(rows, ";").encode("cp1252"), [e])


def s14_side_by_side(i, rnd):
    a, b = recipe(rnd), recipe(rnd)
    ta, tb = TITLES[i % 12], TITLES[(i + 5) % 12]
    rows = [[ta, None, None, tb, None], ["Ingredient", "%", None, "Ingredient", "%"]]
    for k in range(max(len(a), len(b))):
        rows.append([a[k][1][0] if k < len(a) else None, a[k][2] if k < len(a) else None, None, b[k][1][0] if k < len(b) else None, b[k][2] if k < len(b) else None])
    book = Workbook(); sheet(book, "Sheet1", rows, True)
    save(book, f"14-beside-{i}.xlsx", [expected(ta, a, phases=False), expected(tb, b, phases=False)], office=i % 2 == 0)


def s15_materials(i, rnd):
    chosen = rnd.sample(INCI, 8); rows = [["Material", "INCI", "Supplier", "Price €/kg" if i % 2 else "Price per 100 g", "Stock (g)", "Lot no.", "Best before"]]; out = []
    for k, n in enumerate(chosen):
        price, stock = D(rnd.randint(300, 9000)) / 100, D(rnd.randint(1, 60)) * 25
        rows.append([n[2], n[0], "Supplier " + "XYZ"[k % 3], num(price, True, 2), num(stock, True), f"L{i}{k}77", f"{rnd.randint(1,28):02d}.{rnd.randint(1,12):02d}.2027"])
        out.append({"name": n[2], "paid": num(price), "for": "1000" if i % 2 else "100", "stock": num(stock), "lot": f"L{i}{k}77"})
    write(f"15-shelf-{i}.csv", text(rows, ";").encode("utf-8-sig"), materials=out)


def s16_ranges_and_parts(i, rnd):
    if i % 2:
        lines = recipe(rnd); k = D(rnd.choice([3, 5, 7]))
        rows = [["What", "Parts"]] + [[f"{l[1][0]} / {l[1][2]}", num(l[2] * k)] for l in lines]
        e = expected(f"16-parts-{i}", [(l[0], (f"{l[1][0]} / {l[1][2]}",), l[2]) for l in lines], phases=False)
        write(f"16-parts-{i}.csv", text(rows, ",").encode(), [e])
    else:
        lines = recipe(rnd); out = []
        rows = [["INCI", "% range"]] if False else [["INCI", "%"]]
        for k, l in enumerate(lines):
            if k == 0: rows.append([l[1][0], "to 100"]); out.append(l); continue
            if k % 3 == 0: rows.append([l[1][0], f"{num(l[2])}-{num(l[2]*2)} %"]); out.append((l[0], l[1], l[2] * D("1.5")))
            else: rows.append([l[1][0], num(l[2])]); out.append(l)
        write(f"16-ranges-{i}.csv", text(rows, ",").encode(), [expected(f"16-ranges-{i}", out, phases=False, rest=0)])


def s17_unicode_text(i, rnd):
    lines = recipe(rnd); title = rnd.choice(TITLES)
    rows = [[title], ["Fase", "Ingredienti", "Quantità %"]]
    before = ""
    for k, l in enumerate(lines):
        rows.append([l[0] if l[0] != before else "", l[1][0], "q.b. a 100" if k == 0 else num(l[2], True)]); before = l[0]
    write(f"17-unicode-{i}.txt", text(rows, "\t").encode("utf-16"), [expected(title, lines, rest=0)])


SHAPES = [(s01_plain_comma, 4), (s02_german_semicolon, 5), (s03_phase_headings, 5), (s04_grams, 4), (s05_percent_and_grams, 4), (s06_percent_format, 4), (s07_merged, 4),
          (s08_stacked, 4), (s09_per_sheet, 3), (s10_trials, 4), (s11_transposed, 4), (s12_free_text, 4), (s13_units_and_marks, 4), (s14_side_by_side, 4), (s15_materials, 4), (s16_ranges_and_parts, 4), (s17_unicode_text, 3)]

if __name__ == "__main__":
    os.makedirs(OUT, exist_ok=True)
    for shape, count in SHAPES:
        for i in range(count):
            shape(i, random.Random(f"{shape.__name__} {i}"))
    print(len([f for f in os.listdir(OUT) if not f.endswith(".json")]), "files")
