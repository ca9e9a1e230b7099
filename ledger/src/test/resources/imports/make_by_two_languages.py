"""Makes the sheets of a small bilingual business (German/English, French/English)"""
from sheet_materials import *
d = HERE + "/by-two-languages/"; calc = []
def save(wb, name, made, formulas=(), materials=()):
    p = d + name; wb.save(p)
    if made == "calc": calc.append(p)
    expect(p, made, formulas, materials)
def tx(name, rows, pad, enc, exp, nl="\r\n", head="", mats=()):
    text(d + name, head + csvtext(rows, ";", pad), enc, nl); expect(d + name, "text", exp, mats)
B = Font(bold=True); CEN = Alignment(vertical="center", horizontal="center", wrap_text=True)
CODE = {n: "RM-%03d" % (101 + 3 * i) for i, n in enumerate(INCI)}
def bi(n, l=DE): return l[n] if l[n] == n else l[n] + " / " + n

# 1 stock list csv German, packs in kg
S = [("Glycerin", "G24-118", "5", "24.50", "3.2"), ("Sunflower oil", "S24-007", "10", "46", "7.85"), ("Sweet almond oil", "M24-031", "5", "71.90", "1.4"), ("Jojoba oil", "J23-902", "1", "38.40", "0.62"),
     ("Shea butter", "K24-055", "5", "52.75", "4.1"), ("Beeswax", "B24-012", "2.5", "41.25", "2.05"), ("Cetearyl alcohol", "C24-220", "5", "33", "5"), ("Sugar emulsifier", "Z24-014", "1", "27.80", "0.35"),
     ("Xanthan gum", "X24-003", "0.5", "14.90", "0.41"), ("Preservative BA", "P24-077", "1", "49", "0.88"), ("Vitamin E", "V24-019", "0.25", "18.60", "0.075"), ("Panthenol", "", "1", "36.20", "0"), ("Lactic acid", "L24-040", "1", "9.95", "0.93"), ("Lavender essential oil", "A24-301", "0.1", "16.40", "0.064")]
rows = [["Rohstoffbestand / Raw material stock", "", "", "", "", "", "", ""], ["Stand / as of", "30.09.2024"], [], ["Art.-Nr.", "Rohstoff", "INCI", "Charge / Lot", "Gebinde (kg)", "Preis je Gebinde (EUR)", "Bestand (kg)", "MHD / best before"]]
rows += [[CODE[n], DE[n], INCI[n], lot, de(k), de(p, 2), de(b, 3), "%02d.2026" % (i % 12 + 1)] for i, (n, lot, k, p, b) in enumerate(S)]
tx("Rohstoffbestand_2024-09.csv", rows, 8, "cp1252", [], mats=[M(INCI[n], plain(D(p)) if 0 else "%.2f" % D(p), plain(D(k)*1000), plain(D(b)*1000), lot) for n, lot, k, p, b in S])

# 2 stock list xlsx French/English, price per kg, stock in g, grouped by headings
G2 = [("Huiles et beurres / Oils and butters", [("Olive oil", 11.9, 6400, "HO-2203"), ("Coconut oil", 9.5, 2150, "HC-2209"), ("Argan oil", 64, 480, "HA-2301"), ("Cocoa butter", 21.4, 1725, "BC-2212")]),
      ("Cires et émulsifiants / Waxes and emulsifiers", [("Candelilla wax", 33.8, 900, "CC-2207"), ("Glyceryl stearate SE", 12.6, 3000, "GS-2302"), ("Olive emulsifier", 31.25, 640, "")]),
      ("Divers / Other", [("Glycerin", 5.8, 8800, "GV-2305"), ("Potassium sorbate", 17.3, 350, "SP-2211"), ("Kaolin", 4.2, 2600, "KB-2210"), ("Fragrance", 148, 95, "PF-2304")])]
wb = Workbook(); ws = wb.active; ws.title = "Stock"; bar(ws, 1, 1, 6, "Stock matières premières / Raw materials", "BDD7EE", size=14)
put(ws, 3, 1, ["Code", "Matière première / Raw material", "N° de lot / Lot", "Prix €/kg", "Stock (g)", "Valeur / Value €"], True, "DDEBF7"); r = 4; mats = []; vr = []
for h, it in G2:
    bar(ws, r, 1, 6, h, "F2F2F2"); r += 1
    for n, p, s, l in it:
        put(ws, r, 1, [CODE[n], bi(n, FR), l or None, p, s, "=D%d*E%d/1000" % (r, r)]); ws.cell(r, 4).number_format = ws.cell(r, 6).number_format = "0.00"; vr.append(r)
        mats.append(M(bi(n, FR), p, "1000", s, l)); r += 1
put(ws, r, 5, ["Total", "=SUM(F4:F%d)" % (r-1)], True); widths(ws, 10, 46, 16, 10, 10, 14)
save(wb, "stock_matieres_premieres.xlsx", "calc", [], mats)

# 3 csv German: header block, phase col, subtotals, % and kg
fm = f("""A | Water *; Glycerin 4; Xanthan gum 0.4
B | Marigold oil extract 8; Shea butter 5; Sugar emulsifier 5; Cetearyl alcohol 2.5
C | Preservative BA 0.9; Vitamin E 0.3; Lavender essential oil 0.2""")
rows = [["REZEPTUR"], ["Nummer", "R-014"], ["Bezeichnung", "Handcreme Ringelblume"], ["Revision", "3"], ["Datum", "12.02.2024"], ["Ansatzgröße", "5", "kg"], [], ["Phase", "Code", "Rohstoff", "INCI", "Anteil %", "Einwaage kg"]]
for p in phases(fm):
    t = D(0)
    for q, n, a in fm:
        if q == p: rows.append([p, CODE[n], DE[n], INCI[n], de(a, 2), de(D(a) / 20, 3)]); t += D(a)
    rows.append(["", "", "Zwischensumme Phase " + p, "", de(t, 2), de(t / 20, 3)])
rows += [["", "", "Summe", "", "100,00", "5,000"], [], ["Bemerkung: Phase A und B auf 75 °C erwärmen, homogenisieren. Phase C unter 40 °C."]]
tx("R-014_Handcreme_Rev3.csv", rows, 6, "cp1252", [X("Handcreme Ringelblume", fm)])

# 4 xlsx de/en headings as phase bars, 10 kg
fm = f("""Wasserphase / Water phase | Water *; Lavender water 10; Glycerin 3; Allantoin 0.2
Fettphase / Oil phase | Sunflower oil 9; Jojoba oil 4; Glyceryl stearate citrate 3.5; Cetyl alcohol 2
Abkühlphase / Cool-down phase | Panthenol 1; Preservative PE 1; Fragrance 0.2""")
wb = Workbook(); ws = wb.active; ws.title = "R-021"; ws["A1"] = "Körpermilch Lavendel / Lavender body milk"; ws["A1"].font = Font(bold=True, size=14)
ws["A2"] = "Rezeptur-Nr. / Formula no.: R-021"; ws["D2"] = "Ansatz / Batch (kg):"; ws["E2"] = 10
put(ws, 4, 1, ["Code", "Rohstoff / Raw material", "INCI", "% (m/m)", "Einwaage / Weigh-in (g)"], True, "D9D9D9"); r = 5; subs = []
for p in phases(fm):
    bar(ws, r, 1, 5, p, "C6E0B4"); r += 1; s = r
    for q, n, a in fm:
        if q == p: put(ws, r, 1, [CODE[n], bi(n), INCI[n], num(a), "=D%d*$E$2*10" % r]); ws.cell(r, 4).number_format = "0.00"; r += 1
    put(ws, r, 2, ["Zwischensumme / Subtotal", None, "=SUM(D%d:D%d)" % (s, r-1), "=SUM(E%d:E%d)" % (s, r-1)]); 
    for c in (2, 4, 5): ws.cell(r, c).font = Font(italic=True)
    subs.append(r); r += 1
put(ws, r, 2, ["Summe / Total", None, "=" + "+".join("D%d" % x for x in subs), "=" + "+".join("E%d" % x for x in subs)], True); widths(ws, 10, 42, 40, 10, 22)
save(wb, "R-021_Koerpermilch.xlsx", "calc", [X("Körpermilch Lavendel / Lavender body milk", fm)])

# 5 xlsx French, phase col, sous-total, 20 kg, revision block below
fm = f("""A | Water *; Cocamidopropyl betaine 12; Coco glucoside 10; Glycerin 2; Salt 1
B | Olive oil 0.5; Solubiliser 1.5; Fragrance 0.4
C | Sodium benzoate 0.5; Potassium sorbate 0.3; Citric acid 0.5""")
wb = Workbook(); ws = wb.active; ws.title = "Formule"
for i, (a, b) in enumerate([("Produit", "Gel douche olive"), ("Référence", "F-008"), ("Version", "2.1"), ("Taille de lot", "20 kg")]): ws.cell(1+i, 1, a).font = B; ws.cell(1+i, 2, b)
put(ws, 6, 1, ["Phase", "Code", "Matière première", "INCI", "% m/m", "Quantité (kg)"], True, "FCE4D6"); r = 7
for p in phases(fm):
    t = D(0)
    for q, n, a in fm:
        if q == p: put(ws, r, 1, [p, CODE[n], FR[n], INCI[n], num(a), num(D(a) / 5)]); ws.cell(r, 5).number_format = "0.00"; ws.cell(r, 6).number_format = "0.000"; r += 1; t += D(a)
    put(ws, r, 3, ["Sous-total phase " + p, None, num(t), num(t / 5)], False, "F2F2F2"); r += 1
put(ws, r, 3, ["TOTAL", None, 100, 20], True); r += 3
put(ws, r, 1, ["Version", "Date", "Modification", "Visa"], True, "EDEDED")
for i, x in enumerate([("1.0", "14/03/2022", "Création", "CL"), ("2.0", "02/11/2023", "Sel réduit de 1,5 à 1,0 %", "CL"), ("2.1", "19/01/2024", "Correction du code parfum", "MB")]): put(ws, r+1+i, 1, x)
widths(ws, 14, 18, 30, 36, 9, 14)
save(wb, "F-008 gel douche.xlsx", "openpyxl", [X("Gel douche olive", fm)])

# 6 csv French utf-8 BOM, q.s.p. 100, q.s. pH
fm = f("""A | Water rest; Hydroxyethylcellulose 1; Sodium phytate 0.1; Glycerin 3
B | Aloe vera juice 10; Panthenol 0.5; Hyaluronic acid 0.1
C | Preservative PE 0.9; Lactic acid ph""")
w = {"rest": "q.s.p. 100", "ph": "q.s. pH 5,0"}
rows = [["Gel visage aloe / Aloe face gel"], ["Réf.", "F-011", "", "Version", "1"], [], ["Matière première", "INCI", "Fonction", "Phase", "%"]] + [[FR[n], INCI[n], "", p, w.get(a) or de(a)] for p, n, a in fm] + [["Total", "", "", "", "100"]]
tx("F-011_gel_aloe.csv", rows, 5, "utf-8-sig", [X("Gel visage aloe / Aloe face gel", fm)])

# 7 xlsx two revisions side by side; valid one counts
fm = f("""A | Water *; Propanediol 3; Xanthan gum 0.3
B | Grapeseed oil 10; Squalane 3; Olive emulsifier 4.5; Cetearyl alcohol 2; Mango butter 3
C | Preservative BA 0.9; Vitamin E 0.5; Orange essential oil 0.2""")
old = [str(x) for x in ("71.8", 3, "0.4", 12, 0, 5, 2, 4, 1, "0.5", "0.3")]
assert sum(map(D, old)) == 100
wb = Workbook(); ws = wb.active; ws.title = "Rezeptur"; bar(ws, 1, 1, 7, "Tagesfluid Traube / Grape day fluid", "E2EFDA", size=14)
ws["A2"] = "R-030"; ws["B2"] = "gültig ab / valid from 01.06.2024"
put(ws, 4, 1, ["Phase", "Code", "Rohstoff", "INCI", "Rev. 1 (alt, nicht mehr verwenden / obsolete) %", "Rev. 2 (gültig / valid) %", "Ansatz 8 kg (g)"], True, "A9D08E")
for i, (p, n, a) in enumerate(fm):
    r = 5 + i; put(ws, r, 1, [p, CODE[n], DE[n], INCI[n], num(old[i]), num(a), "=F%d*80" % r]); ws.cell(r, 5).font = Font(color="999999", strike=True)
r = 5 + len(fm); put(ws, r, 3, ["Summe / Total", None] + ["=SUM(%s5:%s%d)" % (c, c, r-1) for c in "EFG"], True)
for c in (5, 6): ws.cell(4, c).alignment = CEN
ws.cell(r+2, 1, "Änderung Rev. 2: Squalan ergänzt, Emulgator reduziert / squalane added, emulsifier reduced."); widths(ws, 8, 10, 26, 38, 20, 14, 14)
save(wb, "R-030_Tagesfluid.xlsx", "calc", [X("Tagesfluid Traube / Grape day fluid", fm)])

# 8 three products in three tabs + overview
wb = Workbook(); ws = wb.active; ws.title = "Übersicht"; put(ws, 1, 1, ["Nr.", "Produkt / Product", "Status"], True); ex = []
P8 = [("R-041", "Lippenbalsam Kakao / Cocoa lip balm", "2", """ | Castor oil *; Cocoa butter 15; Shea butter 15; Candelilla wax 12; Beeswax 6; Vitamin E 0.5"""),
      ("R-042", "Lippenbalsam Minze / Mint lip balm", "2", """ | Sunflower oil *; Coconut oil 20; Beeswax 20; Lanolin 5; Vitamin E 0.5; Peppermint essential oil 0.5; Menthol 0.2"""),
      ("R-043", "Lippenpeeling Zucker / Sugar lip scrub", "1", """ | Sugar *; Coconut oil 22; Shea butter 10; Castor oil 8; Vitamin E 0.3; Orange essential oil 0.2""")]
for k, (no, title, kg, t) in enumerate(P8):
    put(wb["Übersicht"], 2+k, 1, [no, title.split(" / ")[1] + " (DE/EN)", "freigegeben / released"])
    fm = f(t); ws = wb.create_sheet(no); ws["A1"] = title; ws["A1"].font = B; ws["A2"] = "Ansatz / Batch: %s kg" % kg; ws["C2"] = "Rev. %d" % (k+1)
    put(ws, 4, 1, ["Pos.", "Code", "INCI", "Rohstoff", "Raw material", "%", "g"], True, "DBDBDB")
    for i, (p, n, a) in enumerate(fm): put(ws, 5+i, 1, [i+1, CODE[n], INCI[n], DE[n], n, num(a), num(D(a)*10*D(kg))])
    put(ws, 5+len(fm), 3, ["Gesamt / Total", None, None, 100, num(D(kg)*1000)], True); widths(ws, 6, 10, 36, 26, 26, 8, 9); ex.append(X(title, fm))
wb["Übersicht"].column_dimensions["B"].width = 40
save(wb, "Lippenpflege R-041 bis R-043.xlsx", "openpyxl", ex)

# 9 csv kg only, name in two languages in one cell, no INCI
fm = f(""" | Shea butter 3.75; Coconut oil 2.25; Jojoba oil *; Beeswax 1.2; Corn starch 0.6; Vitamin E 0.045; Lavender essential oil 0.075""", "9")
rows = [["Bodybutter Lavendel / Lavender body butter"], ["R-017", "Rev. 2", "Ansatz / batch 9 kg"], [], ["Pos.", "Rohstoff / Raw material", "Menge / Quantity (kg)", "Charge / Lot", "Kontrolle / Check"]] + [[str(i+1), bi(n), de(a, 3), "", ""] for i, (p, n, a) in enumerate(fm)] + [["", "Summe / Total", "9,000"]]
tx("R-017_Bodybutter.csv", rows, 5, "cp1252", [G("Bodybutter Lavendel / Lavender body butter", [(bi(n), a, p) for p, n, a in fm])])

# 10 xlsx percent format, merged phase cells, kg formulas, signature block on top
fm = f("""I | Water *; Betaine 3; Glycerin 2; Chelator 0.1
II | Fractionated coconut oil 8; Light ester 5; Glyceryl stearate SE 4; Cetearyl alcohol 2; Zinc oxide 6
III | Preservative PE 1; Panthenol 1""")
wb = Workbook(); ws = wb.active; ws.title = "Blatt 1"
put(ws, 1, 1, ["Rezepturblatt / Formula sheet"], True); ws["F1"] = "Seite / Page 1 von / of 1"
for i, (a, b, c, e) in enumerate([("Produkt / Product", "Babycreme Zink / Zinc baby cream", "Erstellt / Prepared", "MK"), ("Nummer / Number", "R-052", "Geprüft / Checked", "SH"), ("Revision", "B", "Datum / Date", "2024-04-08"), ("Ansatz / Batch (kg)", 15, "Ersetzt / Replaces", "Rev. A")]):
    put(ws, 2+i, 1, [a, None, b, None, c, e])
put(ws, 7, 1, ["Phase", "Nr.", "INCI", "Handelsform / Grade", "Anteil / Share", "kg"], True, "BDD7EE"); r = 8; i = 1
for p in phases(fm):
    s = r
    for q, n, a in fm:
        if q == p: put(ws, r, 2, [i, INCI[n], "kosmetisch / cosmetic", float(D(a)/100), "=E%d*$C$5" % r]); ws.cell(r, 5).number_format = "0.00%"; ws.cell(r, 6).number_format = "0.000"; r += 1; i += 1
    ws.cell(s, 1, p).alignment = CEN; ws.merge_cells(start_row=s, end_row=r-1, start_column=1, end_column=1)
put(ws, r, 3, ["Summe / Total", None, "=SUM(E8:E%d)" % (r-1), "=SUM(F8:F%d)" % (r-1)], True); ws.cell(r, 5).number_format = "0.00%"; widths(ws, 20, 6, 36, 24, 20, 12)
save(wb, "R-052_B.xlsx", "calc", [X("Babycreme Zink / Zinc baby cream", fm)])

# 11 weighing sheet: Soll/Ist, grams only, lots
fm = f("""A | Water *; SCI powder 480; Disodium laureth sulfosuccinate 1200; Cocamidopropyl betaine 1440
B | Cationic guar 24; Glycerin 240
C | Hydrolysed wheat protein 120; Panthenol 60; Preservative BA 108; Rosemary essential oil 48; Citric acid 36""", "12000")
wb = Workbook(); ws = wb.active; ws.title = "Wiegeprotokoll"; bar(ws, 1, 1, 7, "Shampoo Rosmarin / Rosemary shampoo", "FFF2CC", size=13)
put(ws, 2, 1, ["Wiegeprotokoll / Batch record", None, "Charge / Batch: 240611", None, "Menge / Size: 12 kg"])
put(ws, 4, 1, ["Phase", "Code", "Rohstoff / Raw material", "Lot Rohstoff", "Soll / Target (g)", "Ist / Actual (g)", "Visum"], True, "FFE699")
for i, (p, n, a) in enumerate(fm): put(ws, 5+i, 1, [p, CODE[n], INCI[n], "L%04d" % (2300 + 17*i), num(a)])
put(ws, 5+len(fm), 3, ["Summe / Total", None, 12000], True); ws.cell(7+len(fm), 1, "pH (Soll 5,0 – 5,5): ______     Viskosität / viscosity: ______"); widths(ws, 8, 10, 36, 14, 16, 14, 9)
save(wb, "Wiegeprotokoll_240611.xlsx", "openpyxl", [G("Shampoo Rosmarin / Rosemary shampoo", [(INCI[n], a, p) for p, n, a in fm])])

# 12 csv French/English, "Phase 1" column, two header rows
fm = f("""1 | Kaolin 22; Bentonite 5; Water *; Glycerin 6
2 | Argan oil 3; Lecithin 1; Solubiliser 1
3 | Preservative BA 1; Lavender essential oil 0.25; Vitamin E 0.25""")
rows = [["Masque argile blanche"], ["White clay mask"], ["F-019", "", "rév. / rev. C", "lot / batch : 4 kg"], ["Étape", "Code", "Désignation", "INCI", "Pourcentage", "Poids (kg)"], ["Step", "Code", "Description", "INCI", "Percentage", "Weight (kg)"]]
rows += [["Phase " + p, CODE[n], FR[n], INCI[n], de(a) + " %", de(D(a)*4/100, 3)] for p, n, a in fm] + [["", "", "Total / Total", "", "100 %", "4,000"]]
tx("F-019_masque.csv", rows, 6, "utf-8", [X("Masque argile blanche", fm)])

# 13 text cells with comma, DE and EN columns and INCI, phase heading "Phase A" rows
fm = f("""A | Beeswax 9.5; Lanolin 6; W/O emulsifier 3
B | Avocado oil *; Marigold oil extract 20; Evening primrose oil 5
C | Water 30.5; Magnesium sulfate 0.7; Preservative PE 1""")
wb = Workbook(); ws = wb.active; ws.title = "R-060"; ws["B1"] = "Kaltcreme / Cold cream"; ws["B1"].font = Font(bold=True, size=14); ws["B2"] = "Rev. 4 vom 17.05.2024, Ansatz 3 kg"
put(ws, 4, 2, ["Deutsch", "English", "INCI", "%", "g / 3 kg"], True, "EAD1DC"); r = 5
for p in phases(fm):
    ws.cell(r, 2, "Phase " + p + {"A": " (schmelzen bei 80 °C)", "B": "", "C": " (auf 75 °C erwärmen)"}[p]).font = B; r += 1; t = D(0)
    for q, n, a in fm:
        if q == p: put(ws, r, 2, [DE[n], n, INCI[n], de(a, 1), de(D(a)*30)]); r += 1; t += D(a)
    put(ws, r, 2, ["Summe Phase " + p, None, None, de(t, 1), de(t*30)]); r += 1
put(ws, r, 2, ["Gesamtsumme", None, None, "100,0", "3000"], True); widths(ws, 2, 30, 26, 48, 8, 10)
save(wb, "R-060 Kaltcreme.xlsx", "openpyxl", [X("Kaltcreme / Cold cream", fm)])

# 14 csv sep=; ad 100, q.s. pH, many trailing empty columns, revision block first
fm = f("""A | Water rest; Alcohol 8; Glycerin 3; Allantoin 0.1
B | Witch hazel water 20; Niacinamide 2; Betaine 1.5
C | Polysorbate 20 0.6; Tea tree essential oil 0.1; Citric acid ph""")
w = {"rest": "ad 100,0", "ph": "q.s. pH 5,5"}
rows = [["Rev.", "Datum", "Änderung / Change"], ["1", "05.05.2023", "Neu / new"], ["2", "21.08.2024", "Alkohol 10 % auf 8 % / alcohol 10 % to 8 %"], [], ["Produkt / Product:", "Gesichtswasser Hamamelis"], ["Rezept-Nr.:", "R-033"], [], ["Code", "INCI", "Rohstoff", "Phase", "% w/w", "Bemerkung / Remark"]]
rows += [[CODE[n], INCI[n], DE[n], p, w.get(a) or de(a, 1), "vorlösen / predissolve" if n == "Tea tree essential oil" else ""] for p, n, a in fm] + [["", "", "Summe", "", "100,0"]]
tx("R-033_Gesichtswasser.csv", rows, 10, "cp1252", [X("Gesichtswasser Hamamelis", fm)], head="sep=;\n")
through_calc(calc)
