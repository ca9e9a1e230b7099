"""Makes the sheets of an untidy one, other people's recipes in whatever form they came"""
from sheet_materials import *
d = HERE + "/by-collector/"; calc = []
def save(wb, name, made, formulas=(), materials=()):
    p = d + name; wb.save(p)
    if made == "calc": calc.append(p)
    expect(p, made, formulas, materials)
def tx(name, s, exp, enc="utf-8", nl="\n"):
    text(d + name, s, enc, nl); expect(d + name, "text", exp)
B = Font(bold=True); CEN = Alignment(vertical="center", horizontal="center", wrap_text=True, textRotation=90)

# 1 csv no headings, grams with unit in front
L1 = [("olive oil", "60 g"), ("coconut oil", "30 g"), ("shea butter", "25 g"), ("beeswax", "20g"), ("calendula oil (home made)", "60 g"), ("vitamin E", "1 g"), ("lavender eo", "2 g")]
tx("marias salve.csv", "Marigold salve from the allotment group\n" + csvtext([[a, n] for n, a in L1]) + "\nmelt in a jar in a pan of water\n", [G("Marigold salve from the allotment group", [(n, a.strip(" g").strip(), "") for n, a in L1])])

# 2 no headings, merged phase cells down the side, colour bars, bare numbers = %
L2 = [("WATER PHASE", "9DC3E6", [("Water", "69.5"), ("Glycerine", "4"), ("Xanthan", "0.3")]), ("OIL PHASE", "FFE699", [("Almond oil", "10"), ("Shea", "5"), ("Emulsifying wax", "6"), ("Cetyl alcohol", "2.5")]), ("LAST", "C5E0B4", [("Preservative", "1"), ("Vit. E", "0.5"), ("Geranium oil", "0.4"), ("Panthenol", "0.8")])]
wb = Workbook(); ws = wb.active; ws.title = "Sheet1"; bar(ws, 1, 1, 3, "Basic lotion in % (course handout)", "F4B183", size=14, align="center"); r = 2; e = []
for ph, col, it in L2:
    s = r
    for n, a in it:
        put(ws, r, 2, [n, num(a)], color=col); r += 1; e.append((n, a, ph))
    ws.cell(s, 1, ph).alignment = CEN; ws.cell(s, 1).fill = PatternFill("solid", fgColor=col); ws.merge_cells(start_row=s, end_row=r-1, start_column=1, end_column=1)
ws.cell(r+1, 2, "mine went lumpy, stir more!!"); widths(ws, 9, 26, 9)
save(wb, "lotion handout.xlsx", "openpyxl", [F("Basic lotion in % (course handout)", e)])

# 3 two recipes stacked on a sheet, different forms
wb = Workbook(); ws = wb.active; ws.title = "bath things"
a = [("Bicarb", "50"), ("Citric acid", "25"), ("Cornflour", "15"), ("Epsom salt", "5"), ("Almond oil", "3.5"), ("Fragrance", "1.5")]
b = [("fine sea salt", 300), ("sugar", 200), ("sunflower oil", 80), ("castor oil", 15), ("orange oil", 5)]
bar(ws, 1, 1, 3, "BATH BOMBS", "FF99CC"); put(ws, 2, 1, ["what", "%"], True)
for i, (n, x) in enumerate(a): put(ws, 3+i, 1, [n, num(x)])
put(ws, 9, 1, ["total", 100], True); ws["A10"] = "spray with witch hazel only if it will not hold"
bar(ws, 13, 1, 3, "SALT SCRUB", "99CCFF"); put(ws, 14, 1, ["grams", "ingredient", "remarks"], True)
for i, (n, x) in enumerate(b): put(ws, 15+i, 1, [x, n, "makes it slide" if n == "castor oil" else None])
ws["A21"] = "fills 3 jars"; widths(ws, 24, 22, 20)
save(wb, "bath things.xlsx", "openpyxl", [F("BATH BOMBS", [(n, x, "") for n, x in a]), G("SALT SCRUB", [(n, x, "") for n, x in b])])

# 4 two recipes side by side
a = [("Jojoba", "40"), ("Argan", "25"), ("Rosehip", "20"), ("Squalane", "14"), ("Vitamin E", "1")]
b = [("Castor oil", "30"), ("Grapeseed oil", "45"), ("Hemp seed oil", "15"), ("Vitamin E", "1"), ("Cedarwood oil", "1"), ("Coco-caprylate", "8")]
wb = Workbook(); ws = wb.active; ws.title = "oils"
ws["A1"] = "Face oil"; ws["E1"] = "Beard oil"; ws["A1"].font = ws["E1"].font = Font(bold=True, size=13)
put(ws, 2, 1, ["oil", "%", "50 ml bottle, g"], True, "DDDDDD"); put(ws, 2, 5, ["oil", "%", "note"], True, "DDDDDD")
for i, (n, x) in enumerate(a): put(ws, 3+i, 1, [n, num(x), num(D(x)*46/100)])
for i, (n, x) in enumerate(b): put(ws, 3+i, 5, [n, num(x), "thick" if i == 0 else None])
put(ws, 8, 1, ["", 100, 46], True); put(ws, 9, 5, ["", 100], True); widths(ws, 18, 7, 16, 4, 18, 7, 12)
save(wb, "face oil + beard oil.xlsx", "openpyxl", [F("Face oil", [(n, x, "") for n, x in a]), F("Beard oil", [(n, x, "") for n, x in b])])

# 5 csv semicolon, grams only, notes to self in between
L5 = [("A", "destilliertes Wasser", "140"), ("A", "Glycerin", "6,5"), ("A", "Xanthan", "0,5"), ("B", "Mandelöl", "25"), ("B", "Sheabutter", "10"), ("B", "Emulsan (Zuckeremulgator)", "12"), ("C", "Konservierer", "2"), ("C", "Rosenduft", "1")]
L5[5] = ("B", "Zuckeremulgator", "12"); rows = [["Creme von Tante (abgetippt)"], [""], ["", "Zutat", "Gramm"]]; last = None
for p, n, x in L5:
    if p == "B" and last == "A": rows.append(["", "erst hier den Topf wechseln!"])
    if p == "C" and last == "B": rows.append(["", "abkühlen lassen, nächstes Mal länger"])
    rows.append([p if p != last else "", n, x]); last = p
tx("tantes creme.csv", csvtext(rows, ";", 3), [G("Creme von Tante (abgetippt)", [(n, x.replace(",", "."), p) for p, n, x in L5])], "cp1252", "\r\n")

# 6 old and new column in one table
L6 = [("Water", 66, "70.2", "A"), ("Glycerin", 5, "3", "A"), ("Aloe juice", 0, "5", "A"), ("Coconut oil", 12, "4", "B"), ("Sunflower oil", 6, "8", "B"), ("Emulsifying wax", 7, "6", "B"), ("Stearic acid", 3, "2.5", "B"), ("Preservative", 1, "1", "C"), ("Lemongrass oil", 0, "0.3", "C")]
assert sum(x[1] for x in L6) == 100
wb = Workbook(); ws = wb.active; ws.title = "foot lotion"; ws["A1"] = "Foot lotion"; ws["A1"].font = Font(bold=True, size=14)
put(ws, 2, 1, ["", "", "OLD % (too greasy, don't use)", "NEW % use this one"], True); ws["C2"].fill = PatternFill("solid", fgColor="D9D9D9"); ws["D2"].fill = PatternFill("solid", fgColor="92D050")
for i, (n, o, x, p) in enumerate(L6): put(ws, 3+i, 1, [p, n, o or None, num(x)])
put(ws, 12, 3, ["=SUM(C3:C11)", "=SUM(D3:D11)"], True); widths(ws, 5, 20, 28, 20)
save(wb, "foot lotion old new.xlsx", "calc", [F("Foot lotion", [(n, x, p) for n, o, x, p in L6])])

# 7 pasted text, amount and name in one cell
L7 = [("45 g", "sunflower oil"), ("25 g", "cocoa butter"), ("20 g", "candelilla wax"), ("8 g", "castor oil"), ("1.5 g", "peppermint oil"), ("0.5 g", "vitamin E")]
tx("pasted lip balm.csv", "Peppermint lip balm\n\n" + "".join("%s %s\n" % x for x in L7) + "\nMelt everything except the peppermint. Pour into tubes.\n", [G("Peppermint lip balm", [(n, a[:-2], "") for a, n in L7])])

# 8 units in cells, kg and g mixed, big batch from a friend
L8 = [("Stage 1", "Olive oil", "1.2 kg", 1200), ("Stage 1", "Coconut oil", "600 g", 600), ("Stage 1", "Beeswax", "450 g", 450), ("Stage 1", "Lanolin", "0.3 kg", 300), ("Stage 2", "Zinc oxide", "400 g", 400), ("Stage 2", "Corn starch", "35 g", 35), ("Stage 3", "Vitamin E", "10 g", 10), ("Stage 3", "Chamomile oil", "5 g", 5)]
wb = Workbook(); ws = wb.active; ws.title = "Sheet1"; ws["B2"] = "Nappy balm, big pot (3 kg)"; ws["B2"].font = B; r = 4; last = None
put(ws, 3, 2, ["Ingredient", "Amount", "done?"], True)
for p, n, a, g in L8:
    if p != last: bar(ws, r, 2, 4, p, "FFD7D7"); r += 1; last = p
    put(ws, r, 2, [n, a]); r += 1
ws.cell(r+1, 2, "zinc goes through the sieve twice"); widths(ws, 3, 24, 12, 8)
save(wb, "nappy balm.xlsx", "openpyxl", [G("Nappy balm, big pot (3 kg)", [(n, g, p) for p, n, a, g in L8])])

# 9 stock list
L9 = [("Sunflower oil", "1 l bottle, about half", "", "", "", "", ""), ("Shea butter", "600 g", "14.95", "1 kg", "1000", "600", "SB0923"), ("Cocoa butter", "90 g", "8.50", "250 g", "250", "90", ""), ("Beeswax pellets", "340g", "11", "500g", "500", "340", ""), ("Vitamin E", "22 g", "6.75", "50 g", "50", "22", "E-1187"),
      ("Emulsifying wax", "1.1 kg", "19.80", "2 kg", "2000", "1100", "EW44"), ("Preservative", "35 g", "9.40", "100 g", "100", "35", "P2405"), ("Xanthan", "80 g", "5.20", "100 g", "100", "80", ""), ("Kaolin", "none", "4.50", "1 kg", "1000", "0", "K7"), ("Lavender oil", "12 g", "7.90", "30 g", "30", "12", "LV31"), ("Glycerine", "750 g", "6.30", "1 kg", "1000", "750", "GL-20")][1:]
wb = Workbook(); ws = wb.active; ws.title = "cupboard"; ws["A1"] = "What is in the cupboard (counted on Sunday)"; ws["A1"].font = B
put(ws, 2, 1, ["thing", "left", "paid £", "for", "batch no", "remarks"], True, "FFFF99")
for i, (n, left, paid, pk, _, _, lot) in enumerate(L9): put(ws, 3+i, 1, [n, left, num(paid), pk, lot or None, {"Kaolin": "buy!", "Cocoa butter": "old, use up", "Preservative": "keep cool"}.get(n)]); ws.cell(3+i, 3).number_format = "0.00"
widths(ws, 20, 10, 9, 9, 11, 16)
save(wb, "cupboard.xlsx", "openpyxl", [], [M(n, num(p) if 0 else p, fo, st, lot) for n, _, p, _, fo, st, lot in L9])

# 10 spoons and drops
L10 = [("Kaolin", "60 g", "60"), ("Oat flour", "30 g", "30"), ("Honey powder", "10 g", "10"), ("Almond oil", "1 teaspoon", "unknown"), ("Rose geranium oil", "5 drops", "unknown"), ("Dried rose petals, ground", "a handful", "unknown"), ("Cocoa powder", "20 g", "20")]
wb = Workbook(); ws = wb.active; ws.title = "Tabelle1"; ws["A1"] = "Kitchen face mask"; ws["A1"].font = B
for i, (n, a, _) in enumerate(L10): put(ws, 3+i, 1, [a, n])
ws["A11"] = "mix with water when you use it, not before"; widths(ws, 14, 30)
save(wb, "kitchen mask.xlsx", "openpyxl", [G("Kitchen face mask", [(n, x, "") for n, a, x in L10])])

# 11 csv German from a friend: percent in front with sign, "A:" headings
L11 = [("A", [("72,4 %", "Wasser"), ("3 %", "Glycerin"), ("0,4 %", "Xanthan")]), ("B", [("8 %", "Jojobaöl"), ("6 %", "Traubenkernöl"), ("5 %", "Glycerinstearatcitrat"), ("2 %", "Cetylalkohol")]), ("C", [("1 %", "Konservierung"), ("2 %", "D-Panthenol"), ("0,2 %", "Duft")])]
L11[1][1][2] = ("5 %", "Glycerylstearatcitrat"); assert sum(D(a[:-2].replace(",", ".")) for _, it in L11 for a, _ in it) == 100
s = "leichte Creme (von J. aus dem Kurs);\n;\n" + "".join("Phase %s:;\n" % p + "".join("%s;%s\n" % x for x in it) for p, it in L11) + ";\nnoch nicht ausprobiert;\n"
tx("leichte creme.csv", s, [F("leichte Creme (von J. aus dem Kurs)", [(n, a[:-2].replace(",", "."), p) for p, it in L11 for a, n in it])], "utf-8-sig", "\r\n")

# 12 French, qsp, merged phase cells, INCI in brackets in the cell
L12 = [("Phase A", "A", [("Eau (Aqua)", "qsp 100"), ("Glycérine (Glycerin)", "3"), ("Hydrolat de rose (Rosa Damascena Flower Water)", "20")]), ("Phase B", "B", [("Huile de noyau d'abricot (Prunus Armeniaca Kernel Oil)", "12"), ("Cire émulsifiante (Cetearyl Alcohol, Polysorbate 60)", "6"), ("Alcool cétylique (Cetyl Alcohol)", "1,5")]), ("Phase C", "C", [("Conservateur (Benzyl Alcohol, Dehydroacetic Acid)", "0,8"), ("Vitamine E (Tocopherol)", "0,2"), ("Acide lactique (Lactic Acid)", "qs pH 5")])]
wb = Workbook(); ws = wb.active; ws.title = "Feuil1"; ws["A1"] = "Lait démaquillant (copié du forum)"; r = 3; e = []
put(ws, 2, 1, ["", "Ingrédients", "%"], True, "F8CBAD")
for h, p, it in L12:
    s = r
    for n, a in it:
        put(ws, r, 2, [n, a if "q" in a else a]); r += 1; e.append((n, "rest" if a.startswith("qsp") else "ph" if a.startswith("qs ") else a.replace(",", "."), p))
    ws.cell(s, 1, h).alignment = Alignment(vertical="top"); ws.merge_cells(start_row=s, end_row=r-1, start_column=1, end_column=1)
widths(ws, 10, 58, 10)
save(wb, "lait demaquillant.xlsx", "openpyxl", [F("Lait démaquillant (copié du forum)", e)])

# 13 % with grams for 250 and half batch, scratch calculation on the right, notes between
L13 = [("heat", "Water", "73.2"), ("heat", "Propanediol", "3"), ("heat", "Conditioner flakes", "6"), ("heat", "Cetearyl alcohol", "4"), ("heat", "Broccoli seed oil", "3"), ("heat", "Mango butter", "2"), ("cool", "Silk protein", "2"), ("cool", "Panthenol", "1"), ("cool", "Honeyquat substitute", "5"), ("cool", "Preservative", "0.8")]
L13[8] = ("cool", "Aloe juice", "5"); assert sum(D(x[2]) for x in L13) == 100
wb = Workbook(); ws = wb.active; ws.title = "hair"; ws["A1"] = "hair mask for Mum"; ws["A1"].font = Font(bold=True, size=14)
put(ws, 3, 1, ["when", "what", "%", "for 250 g", "half", "tick"], True, "D0CECE"); r = 4
for i, (p, n, a) in enumerate(L13):
    if i == 6: ws.cell(r, 2, "----- wait till 40 degrees -----").font = Font(italic=True); r += 1
    put(ws, r, 1, [p, n, num(a), "=C%d*2.5" % r, "=D%d/2" % r]); r += 1
put(ws, r, 2, ["all", "=SUM(C4:C%d)" % (r-1), "=SUM(D4:D%d)" % (r-1), "=SUM(E4:E%d)" % (r-1)], True)
ws["H5"] = "jars"; ws["I5"] = 5; ws["H6"] = "g each"; ws["I6"] = 50; ws["H7"] = "need"; ws["I7"] = "=I5*I6"; widths(ws, 8, 30, 7, 10, 8, 6)
save(wb, "hair mask.xlsx", "calc", [F("hair mask for Mum", L := [(n, a, p) for p, n, a in L13])])

# 14 tab separated, upper case, top up to 200 g, bracket grams after spoon
L14 = [("ROSE WATER", "60 g", "30"), ("WITCH HAZEL", "40 g", "20"), ("GLYCERINE", "1 tsp (6 g)", "3"), ("ALOE JUICE", "20 g", "10"), ("PRESERVATIVE", "2 g", "1"), ("WATER", "top up to 200 g", "rest"), ("CITRIC ACID", "until pH 5", "ph")]
tx("TONER.csv", "TONER, 200 G\t\n\t\n" + csvtext([[n, a] for n, a, _ in L14], "\t") + "\t\nworked fine in June, bottle needs a spray top\t\n", [F("TONER, 200 G", [(n, x, "") for n, a, x in L14])])
through_calc(calc)
