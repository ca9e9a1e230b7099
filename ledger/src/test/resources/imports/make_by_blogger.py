"""Makes the sheets of a hobby formulator and blogger who tidies up"""
from sheet_materials import *
d = HERE + "/by-blogger/"; calc = []
def save(wb, name, made, formulas=(), materials=()):
    p = d + name; wb.save(p)
    if made == "calc": calc.append(p)
    expect(p, made, formulas, materials)
B = Font(bold=True); IT = Font(italic=True, color="666666")

# 1 title above, phase letter once per phase, %, 200 g by formula, total, method below
fm = f("""A | Water *; Glycerin 4; Colloidal oatmeal 1; Allantoin 0.2
B | Sweet almond oil 9; Shea butter 4; Olive emulsifier 5; Cetyl alcohol 2
C | Preservative PE 1; Vitamin E 0.5; Fragrance 0.3""")
wb = Workbook(); ws = wb.active; ws.title = "Formula"
bar(ws, 1, 1, 7, "Oat & almond day cream", "E2EFDA", size=16, align="center")
ws["A2"] = "Light, for normal to dry skin. Makes four 50 g jars."; ws["A2"].font = IT
ws["F3"] = 200; ws["E3"] = "Batch (g)"
put(ws, 5, 1, ["Phase", "Ingredient", "INCI", "Function", "%", "Grams", "Notes"], True, "C6E0B4")
r = 6; last = None
notes = {"Colloidal oatmeal": "sprinkle in slowly", "Vitamin E": "optional but nice", "Fragrance": "any skin-safe one"}
for p, n, a in fm:
    put(ws, r, 1, [p if p != last else None, n, INCI[n], FUNC[n], num(a), "=E%d*$F$3/100" % r, notes.get(n)]); last = p
    ws.cell(r, 5).number_format = "0.0"; ws.cell(r, 6).number_format = "0.0"; r += 1
put(ws, r, 2, ["Total", None, None, "=SUM(E6:E%d)" % (r-1), "=SUM(F6:F%d)" % (r-1)], True)
for i, t in enumerate(["Method", "1. Heat A and B to 72 °C in separate beakers.", "2. Pour B into A, blend 2 minutes, stir until it thickens.", "3. Add C below 40 °C. Check pH, aim for 5.5."]): ws.cell(r+2+i, 1, t)
widths(ws, 7, 24, 44, 18, 7, 9, 26)
save(wb, "oat-almond-day-cream.xlsx", "calc", [X("Oat & almond day cream", fm)])

# 2 csv, phase on each row, q.s. to 100
fm = f("""A | Rose water 40; Water rest; Glycerin 2; Betaine 2; Chelator 0.1
B | Solubiliser 1; Rosehip oil 0.2
C | Preservative BA 0.8; Lactic acid ph""")
rows = [["Rose facial mist"], ["Last tidied: 3 May"], [], ["Phase", "Ingredient", "INCI", "Function", "%"]]
w = {"rest": "q.s. to 100", "ph": "q.s. to pH 5.0"}
rows += [[p, n, INCI[n], FUNC[n], w.get(a, a)] for p, n, a in fm] + [["", "Total", "", "", "100"]]
text(d + "rose-facial-mist.csv", csvtext(rows, ",", 5)); expect(d + "rose-facial-mist.csv", "text", [X("Rose facial mist", fm)])

# 3 phases as coloured heading rows with temperature, percent format, 150 g
fm = f("""A | Water *; Propanediol 4; Xanthan gum 0.3; Sodium phytate 0.1
B | Apricot kernel oil 10; Mango butter 6; Sugar emulsifier 5; Cetearyl alcohol 2.5
C | Panthenol 1; Preservative BA 0.9; Orange essential oil 0.4""")
wb = Workbook(); ws = wb.active; ws.title = "Mango hand cream"
bar(ws, 1, 1, 5, "Mango hand cream", "FCE4D6", size=15)
put(ws, 3, 1, ["Ingredient", "INCI name", "What it does", "%", "150 g batch"], True)
r = 4; hd = {"A": "Phase A (heat to 75 °C)", "B": "Phase B (heat to 75 °C)", "C": "Phase C (cool down, below 40 °C)"}; sums = []
for p in phases(fm):
    bar(ws, r, 1, 5, hd[p], "F8CBAD"); r += 1
    for q, n, a in fm:
        if q != p: continue
        put(ws, r, 1, [n, INCI[n], FUNC[n], float(D(a) / 100), "=D%d*150" % r]); ws.cell(r, 4).number_format = "0.0%"; ws.cell(r, 5).number_format = '0.00" g"'; sums.append(r); r += 1
put(ws, r, 1, ["TOTAL", None, None, "=" + "+".join("D%d" % x for x in sums), "=" + "+".join("E%d" % x for x in sums)], True)
ws.cell(r, 4).number_format = "0.0%"
ws.cell(r+2, 1, "Notes: absorbs quickly. Do not skip the orange at the end, it smells lovely. Orange oil is from steam distillation.")
widths(ws, 24, 42, 18, 9, 13)
save(wb, "Mango hand cream.xlsx", "calc", [X("Mango hand cream", fm)])

# 4 several tabs: read me, three formulas, label
fs = [("Cleansing oil", "Easy cleansing oil", """ | Sunflower oil *; Castor oil 15; Fractionated coconut oil 20; W/O emulsifier 10; Vitamin E 0.5; Lavender essential oil 0.5"""),
("Cleansing balm", "Melting cleansing balm", """ | Sunflower oil *; Fractionated coconut oil 20; Shea butter 15; W/O emulsifier 9; Candelilla wax 8; Beeswax 3; Vitamin E 0.5"""),
("Cleansing milk", "Soft cleansing milk", """ | Water *; Glycerin 3; Light ester 10; Sweet almond oil 5; Glyceryl stearate citrate 3; Cetyl alcohol 1; Xanthan gum 0.3; Preservative PE 1""")]
wb = Workbook(); ws = wb.active; ws.title = "Read me"
for i, t in enumerate(["Cleansers, three ways", "One tab for each post in the series.", "Figures are per cent by weight. The gram column is for the batch written at the top of each tab.", "Feel free to print."]): ws.cell(i+1, 1, t)
ex = []
for k, (tab, title, t) in enumerate(fs):
    fm = f(t); ws = wb.create_sheet(tab); ws["A1"] = title; ws["A1"].font = Font(bold=True, size=14)
    bs = (100, 80, 250)[k]; ws["A2"] = "Batch: %d g" % bs
    put(ws, 4, 1, ["Ingredient", "INCI", "Function", "%", "g"], True, "DDEBF7")
    for i, (p, n, a) in enumerate(fm): put(ws, 5+i, 1, [n, INCI[n], FUNC[n], num(a), num(D(a) * bs / 100)])
    put(ws, 5+len(fm), 1, ["Total", None, None, 100, bs], True); widths(ws, 26, 44, 16, 8, 9)
    ex.append(X(title, fm))
ws = wb.create_sheet("Label"); ws["A1"] = "Ingredients for the label (melting balm):"; ws["A2"] = "Helianthus Annuus Seed Oil, Caprylic/Capric Triglyceride, Butyrospermum Parkii Butter, Polyglyceryl-3 Diisostearate, Candelilla Cera, Cera Alba, Tocopherol"
save(wb, "cleansers-series.xlsx", "openpyxl", ex)

# 5 csv, no phases, %, grams, notes with commas
fm = f(""" | Jojoba oil 30; Argan oil *; Squalane 20; Rosehip oil 10; Evening primrose oil 5; Vitamin E 0.5; Lavender essential oil 0.3""")
nt = {"Jojoba oil": "golden, unrefined", "Squalane": "from olives or sugar cane, either works", "Rosehip oil": "keep in the fridge", "Lavender essential oil": "leave out for sensitive skin, or while pregnant"}
rows = [["Ingredient", "INCI name", "Percent", "Grams (30 g bottle)", "Notes"]] + [[n, INCI[n], a, plain(D(a) * 30 / 100), nt.get(n, "")] for p, n, a in fm] + [["Total", "", "100", "30", ""]]
text(d + "night-oil-serum.csv", csvtext(rows), nl="\r\n"); expect(d + "night-oil-serum.csv", "text", [X("night-oil-serum", fm)])

# 6 grams first, then %, batch size cell, notes
fm = f(""" | Olive oil *; Marigold oil extract 20; Shea butter 14; Beeswax 16; Lanolin 5; Vitamin E 0.5; Lavender essential oil 1""")
wb = Workbook(); ws = wb.active; ws.title = "Balm"
ws["A1"] = "Gardener's hand balm"; ws["A1"].font = Font(bold=True, size=14)
ws["A2"] = "Batch size (g):"; ws["B2"] = 120; ws["A3"] = "Fills: 4 x 30 g tins"
put(ws, 5, 1, ["Grams", "%", "Ingredient", "INCI", "Notes"], True, "FFF2CC")
for i, (p, n, a) in enumerate(fm): put(ws, 6+i, 1, ["=ROUND(B%d*$B$2/100,2)" % (6+i), num(a), n, INCI[n], "melt first" if n == "Beeswax" else None])
e = 6 + len(fm); put(ws, e, 1, ["=SUM(A6:A%d)" % (e-1), "=SUM(B6:B%d)" % (e-1), "Total"], True)
ws.cell(e+2, 3, "Melt everything but the vitamin E and lavender, cool to 60, add them, pour."); widths(ws, 15, 8, 26, 48, 18)
save(wb, "gardeners-balm.xlsx", "calc", [X("Gardener's hand balm", fm)])

# 7 function first, named phases in a column
fm = f("""Dry | SCI powder 45; Kaolin 5; Cationic guar 0.5
Melt | Cocamidopropyl betaine *; Cetyl alcohol 8; Cocoa butter 5; Stearic acid 5
Cool down | Panthenol 2; Hydrolysed wheat protein 2; Preservative PE 1; Rosemary essential oil 1""")
wb = Workbook(); ws = wb.active; ws.title = "bar"
bar(ws, 2, 2, 7, "Rosemary shampoo bar", "D9E1F2", size=14, align="center")
put(ws, 4, 2, ["Phase", "Function", "Ingredient", "INCI", "% w/w", "3 bars (180 g)"], True, "B4C6E7")
for i, (p, n, a) in enumerate(fm):
    put(ws, 5+i, 2, [p, FUNC[n], n, INCI[n], num(a), num(D(a) * 180 / 100)]); ws.cell(5+i, 7).number_format = "0.0"
put(ws, 5+len(fm), 5, ["Total", 100, 180], True)
ws.cell(7+len(fm), 2, "Press while warm. Leave 2 days before use. Wear a mask with the powder!"); widths(ws, 3, 12, 16, 26, 42, 8, 15)
save(wb, "shampoo-bar.xlsx", "openpyxl", [X("Rosemary shampoo bar", fm)])

# 8 csv, headings in rows, total
fm = f("""A | Water 62.7; Glycerin 3; Magnesium sulfate 1
B | Grapeseed oil *; W/O emulsifier 5; Beeswax 2; Zinc oxide 4
C | Preservative BA 1; Vitamin E 0.3""")
rows = [["Zinc barrier cream", "", "", "", ""], ["Ingredient", "INCI", "Function", "%", "100 g"]]
for p in phases(fm):
    rows.append(["Phase " + p, "", "", "", ""]); rows += [[n, INCI[n], FUNC[n], a + "%", a] for q, n, a in fm if q == p]
rows += [["Total", "", "", "100%", "100"], [], ["Add A to B very slowly, this is a water-in-oil cream."]]
text(d + "zinc-barrier-cream.csv", csvtext(rows, ",", 5)); expect(d + "zinc-barrier-cream.csv", "text", [X("Zinc barrier cream", fm)])

# 9 worded phase headings; scaled grams 400 g
fm = f("""Water phase | Water *; Aloe vera juice 10; Sodium lactate 2; Hydroxyethylcellulose 0.5
Oil phase | Sunflower oil 5; Light ester 4; Conditioning emulsifier 5; Cetearyl alcohol 3
Cool down phase | Panthenol 0.5; Preservative PE 1; Citric acid 0.2; Fragrance 0.5""")
wb = Workbook(); ws = wb.active; ws.title = "Sheet1"
ws["A1"] = "Everyday hair conditioner"; ws["A1"].font = Font(bold=True, size=13); ws["A2"] = "from the wash day post"; ws["A2"].font = IT
put(ws, 4, 1, ["INCI", "Common name", "Percent", "For 400 g", "Why"], True); r = 5; first = 5
for p in phases(fm):
    ws.cell(r, 1, p + (" (under 40 °C)" if p.startswith("Cool") else "")).font = Font(bold=True, color="9C5700"); r += 1
    for q, n, a in fm:
        if q == p: put(ws, r, 1, [INCI[n], n, num(a), "=C%d*4" % r, FUNC[n]]); r += 1
    r += 1
put(ws, r, 1, ["Total", None, "=SUM(C5:C%d)" % (r-1), "=SUM(D5:D%d)" % (r-1)], True); widths(ws, 46, 26, 9, 11, 16)
save(wb, "conditioner.xlsx", "calc", [X("Everyday hair conditioner", fm)])

# 10 two tabs, versions with own titles
wb = Workbook(); ex = []
for k, (tab, title, t) in enumerate([("v1", "Foaming face wash v1", """A | Water *; Glycerin 3; Decyl glucoside 15; Cocamidopropyl betaine 8
B | Preservative BA 0.9; Citric acid 0.4"""), ("v2", "Foaming face wash v2", """A | Water *; Glycerin 3; Aloe vera juice 5; Sodium cocoyl glutamate 12; Cocamidopropyl betaine 8
B | Preservative BA 0.9; Panthenol 0.5; Citric acid 0.6""")]):
    ws = wb.active if k == 0 else wb.create_sheet(); ws.title = tab; fm = f(t)
    ws["A1"] = title; ws["A1"].font = B; ws["A2"] = ("First try. A bit drying." , "Gentler, this went on the blog.")[k]
    put(ws, 3, 1, ["Phase", "Ingredient", "INCI", "%", "g (150 g)"], True, "EDEDED"); r = 4
    for p in phases(fm):
        s = r
        for q, n, a in fm:
            if q == p: put(ws, r, 2, [n, INCI[n], num(a), num(D(a) * D("1.5"))]); r += 1
        ws.cell(s, 1, p).alignment = Alignment(vertical="center", horizontal="center"); ws.merge_cells(start_row=s, end_row=r-1, start_column=1, end_column=1)
    put(ws, r, 2, ["Total", None, 100, 150], True); widths(ws, 7, 24, 34, 8, 10); ex.append(X(title, fm))
save(wb, "face-wash-versions.xlsx", "openpyxl", ex)

# 11 csv BOM: %, g, ingredient, INCI, phase last
fm = f("""A | Witch hazel water 30; Water *; Niacinamide 4; Propanediol 3; Hyaluronic acid 0.2
B | Sclerotium gum 0.5; Glycerin 2
C | Preservative PE 1; Allantoin 0.2""")
rows = [["%", "g per 500 g", "Ingredient", "INCI", "Phase"]] + [["%.2f" % D(a), "%.2f" % (D(a) * 5), n, INCI[n], p] for p, n, a in fm] + [["100.00", "500.00", "Sum", "", ""]]
text(d + "niacinamide gel.csv", csvtext(rows), "utf-8-sig", "\r\n"); expect(d + "niacinamide gel.csv", "text", [X("niacinamide gel", fm)])

# 12 INCI first, text percents, note rows between
fm = f("""1 | Water rest; Glycerin 5; Urea 10; Sodium lactate 3
2 | Emulsifying wax 5; Shea butter 5; Avocado oil 6; Stearic acid 2
3 | Preservative PE 1; Vitamin E 0.5; Lactic acid ph""")
wb = Workbook(); ws = wb.active; ws.title = "Urea foot cream"
ws["A1"] = "Urea foot cream 10%"; ws["A1"].font = Font(bold=True, size=14)
put(ws, 3, 1, ["INCI", "aka", "Phase", "Amount", "250 g"], True, "E4DFEC"); r = 4
nb = {"2": "Warm the two beakers to the same temperature before mixing.", "3": "Wait until it is hand-warm; urea does not like heat."}; last = "1"
for p, n, a in fm:
    if p != last: ws.cell(r, 1, nb[p]).font = IT; r += 1; last = p
    v = val(fm, a); put(ws, r, 1, [INCI[n], n, p, {"rest": "to 100%", "ph": "q.s. to pH 5.5"}.get(a, a + "%"), "a few drops" if v is None else num(v * D("2.5"))]); r += 1
put(ws, r, 1, ["Total", None, None, "100%", 250], True); widths(ws, 40, 22, 8, 16, 12)
save(wb, "urea-foot-cream.xlsx", "openpyxl", [X("Urea foot cream 10%", fm)])

# 13 blog card with key-value block and three scaled columns
fm = f("""A | Coconut oil 26; Cocoa butter 14; Candelilla wax 8; Stearic acid 4
B | Tapioca starch *; Magnesium hydroxide 12; Baking soda 3
C | Vitamin E 0.5; Tea tree essential oil 0.3; Orange essential oil 0.7""")
wb = Workbook(); ws = wb.active; ws.title = "Recipe card"
bar(ws, 2, 2, 9, "Citrus deodorant stick", "FFD966", size=18, align="center")
for i, (a, b) in enumerate([("Makes", "2 sticks (100 g)"), ("Difficulty", "easy"), ("Keeps", "9 months"), ("pH", "not applicable")]): ws.cell(3+i, 2, a).font = B; ws.cell(3+i, 3, b)
put(ws, 8, 2, ["Phase", "Ingredient", "INCI", "Function", "%", "50 g", "100 g", "500 g"], True, "FFE699")
for i, (p, n, a) in enumerate(fm):
    r = 9 + i; put(ws, r, 2, [p, n, INCI[n], FUNC[n], num(a), "=F%d*0.5" % r, "=F%d" % r, "=F%d*5" % r])
    for c in (6, 7, 8, 9): ws.cell(r, c).number_format = "0.0"
r = 9 + len(fm); put(ws, r, 3, ["Total", None, None, "=SUM(F9:F%d)" % (r-1), "=SUM(G9:G%d)" % (r-1), "=SUM(H9:H%d)" % (r-1), "=SUM(I9:I%d)" % (r-1)], True)
widths(ws, 2, 11, 26, 36, 14, 7, 8, 8, 8)
save(wb, "citrus-deodorant-card.xlsx", "calc", [X("Citrus deodorant stick", fm)])

# 14 powder, "a pinch", optional
fm = f(""" | Kaolin 40; Colloidal oatmeal *; Corn starch 20; Silica 2; Baking soda 3; Lavender essential oil 0.5""")
wb = Workbook(); ws = wb.active; ws.title = "Mask"
ws["B1"] = "Soft clay mask powder"; ws["B1"].font = Font(bold=True, size=14); ws["B2"] = "Grams are for one 60 g pot"
put(ws, 4, 1, ["No.", "Ingredient", "INCI", "g", "%", "Function", "Notes"], True, "F2F2F2")
for i, (p, n, a) in enumerate(fm): put(ws, 5+i, 1, [i+1, n, INCI[n], num(D(a) * D("0.6")), num(a), FUNC[n], "sieve" if n == "Kaolin" else None])
r = 5 + len(fm); put(ws, r, 1, [len(fm)+1, "Pink mica", "Mica", "a pinch", None, "colour", "only if you like"])
put(ws, r+1, 2, ["Total", None, 60, 100], True); widths(ws, 5, 24, 34, 9, 8, 16, 20)
e = X("Soft clay mask powder", fm); e["lines"].append({"name": "Mica", "amount": "unknown", "phase": ""})
save(wb, "clay-mask-powder.xlsx", "openpyxl", [e])
through_calc(calc)
