"""Makes the sheets of twenty small makers, one each."""
import datetime
from sheet_kit import *
O = HERE + "/by-twenty-makers/"; CALC = []
def save(wb, name, formulas=(), materials=(), calc=True):
    p = O + name + ".xlsx"; wb.save(p)
    if calc: CALC.append(p)
    expect(p, "calc" if calc else "openpyxl", formulas, materials)
def csvf(name, s, formulas=(), materials=(), enc="utf-8", nl="\n"):
    p = O + name + ".csv"; text(p, s, enc, nl); expect(p, "text", formulas, materials)
def new(title):
    wb = Workbook(); wb.active.title = title; return wb, wb.active

# 1 retired lab technician, balms on a market stall; weighs from the print-out. Phase cells merged downwards
wb, s = new("Sheet1")
bar(s, 1, 1, 7, "Calendula Barrier Balm", "FFF2CC", size=14, align="center")
put(s, 2, 1, ["Batch (g)", 650, None, "Date made", None, "Batch no."])
put(s, 4, 1, ["Phase", "Material", "INCI", "%", "Weigh (g)", "Done", "Remarks"], True, "D9D9D9")
R = [("Melt", "Beeswax, yellow pellets", "Cera Alba", "14", "under 65 C"), ("Melt", "Shea butter, refined", "Butyrospermum Parkii Butter", "18", ""),
 ("Melt", "Cetyl alcohol", "Cetyl Alcohol", "2.5", ""), ("Warm oils", "Sunflower oil", "Helianthus Annuus Seed Oil", "27.3", "high oleic"),
 ("Warm oils", "Calendula macerate", "Calendula Officinalis Flower Extract", "30", "strain twice!"), ("Warm oils", "Castor oil", "Ricinus Communis Seed Oil", "7", ""),
 ("Cool", "Vitamin E", "Tocopherol", "0.5", "at 45 C"), ("Cool", "Lavender oil", "Lavandula Angustifolia Oil", "0.7", "max 0.8 see assessor")]
for i, (ph, m, n, a, k) in enumerate(R):
    r = 5 + i
    put(s, r, 1, [ph if i == 0 or R[i-1][0] != ph else None, m, n, num(a), f"=D{r}*$B$2/100", "☐", k or None])
    s.cell(r, 5).number_format = "0.0"
s.merge_cells("A5:A7"); s.merge_cells("A8:A10"); s.merge_cells("A11:A12")
put(s, 13, 2, ["TOTAL", None, "=SUM(D5:D12)", "=SUM(E5:E12)"], True)
s.cell(15, 1, "Pour at 50 C. 60 g tins, expect 10 tins and a bit. Leave lids off overnight.")
widths(s, 12, 26, 36, 8, 11, 7, 24)
save(wb, "calendula balm weigh sheet", [F("Calendula Barrier Balm", [(n, a, ph) for ph, m, n, a, k in R])])

# 2 bath bombs, mother of three, one tab a kind, amounts typed with their unit
wb, s = new("Oat and Honey")
def tab(s, t, rows, notes):
    s.cell(1, 1, t).font = Font(bold=True, size=16)
    put(s, 2, 1, ["what", "how much"], True)
    r = 3
    for n, a, g in rows:
        put(s, r, 1, [n, a]); r += 1
    for k in notes: r += 1; s.cell(r, 1, k)
    widths(s, 34, 16)
A = [("Baking soda", "1 kg", "1000"), ("Citric acid", "480 g", "480"), ("Cornflour", "200g", "200"), ("Colloidal oatmeal", "150 g", "150"), ("Sweet almond oil", "60 g", "60"), ("Honey powder", "35 g", "35"), ("Witch hazel", "a few sprays", "unknown")]
B = [("Baking soda", "800 g", "800"), ("Citric acid", "400 g", "400"), ("Epsom salt", "150 g", "150"), ("Kaolin clay", "75 g", "75"), ("Coconut oil", "50 g", "50"), ("Polysorbate 80", "12.5 g", "12.5"), ("Sweet orange essential oil", "15 g", "15"), ("Mica, orange", "2.5 g", "2.5")]
tab(s, "Oat & Honey bombs", A, ["makes 14 big ones", "spray till it clumps like wet sand, no more", "don't make on rainy days"])
tab(wb.create_sheet("Orange Fizz"), "Orange Fizz bombs", B, ["makes 11 big ones", "mica goes in with the dry stuff"])
x = wb.create_sheet("to buy"); x.cell(1, 1, "more citric acid"); x.cell(2, 1, "shrink bags 15 x 20"); x.cell(3, 1, "ask about cheaper moulds")
save(wb, "bath bombs", [G("Oat & Honey bombs", [(n, g, "") for n, a, g in A]), G("Orange Fizz bombs", [(n, g, "") for n, a, g in B])], calc=False)

# 3 former bookkeeper, costing a cream per jar; per cents as percent cells; packaging below
wb, s = new("Costing")
put(s, 1, 1, ["Product", "Rosehip Night Cream"], True); put(s, 2, 1, ["Batch kg", 2]); put(s, 3, 1, ["Jar fill g", 50])
put(s, 4, 1, ["Overfill / loss", 0.04]); s["B4"].number_format = "0%"
put(s, 6, 1, ["Ingredient", "% in formula", "£ per kg", "Grams", "Cost £", "% of cost"], True, "C6E0B4")
R = [("Purified water", None, "0.4"), ("Rosehip seed oil", "8", "31.5"), ("Jojoba oil", "5", "38"), ("Caprylic/capric triglyceride", "6", "9.2"), ("Glyceryl stearate SE", "4.5", "11"), ("Cetearyl alcohol", "2.5", "8.6"),
 ("Vegetable glycerine", "4", "4.9"), ("Sodium PCA 50%", "2", "14"), ("Xanthan gum", "0.25", "22"), ("Benzyl alcohol & dehydroacetic acid", "0.9", "42"), ("Tocopherol", "0.3", "68"), ("Rose geranium essential oil", "0.15", "290")]
Rf = fill(R, 1)
for i, (n, a, c) in enumerate(R):
    r = 7 + i
    put(s, r, 1, [n, f"=1-SUM(B8:B{6+len(R)})" if a is None else float(a) / 100, num(c), f"=B{r}*$B$2*1000", f"=D{r}/1000*C{r}", f"=E{r}/$E$19"])
    s.cell(r, 2).number_format = "0.00%"; s.cell(r, 3).number_format = '"£"0.00'; s.cell(r, 5).number_format = '"£"0.00'; s.cell(r, 6).number_format = "0.0%"
put(s, 19, 1, ["Total ingredients", "=SUM(B7:B18)", None, "=SUM(D7:D18)", "=SUM(E7:E18)"], True); s["B19"].number_format = "0.00%"
put(s, 21, 1, ["Packaging", "Pieces", "£ each", None, "Cost £"], True, "C6E0B4")
for i, (n, q, c) in enumerate([("Amber glass jar 50 ml", 38, .62), ("Lid with liner", 38, .19), ("Label front + back", 38, .14), ("Carton", 38, .33)]):
    put(s, 22 + i, 1, [n, q, c, None, f"=B{22+i}*C{22+i}"])
put(s, 27, 1, ["Jars per batch", "=INT(B2*1000*(1-B4)/B3)"]); put(s, 28, 1, ["Labour (3 h)", None, 14, None, "=3*C28"]); put(s, 29, 1, ["COST PER JAR", None, None, None, "=(E19+SUM(E22:E25)+E28)/B27"], True)
widths(s, 34, 14, 10, 10, 10, 10)
save(wb, "night cream costing 2024", [F("Rosehip Night Cream", [(r[0], r[1], "") for r in Rf])])

# 4 pharmacist, dossier for the safety assessor, with allergens in a second table
wb, s = new("Annex 1")
bar(s, 1, 1, 6, "QUALITATIVE AND QUANTITATIVE COMPOSITION", "FFFFFF", size=12, align="center")
for i, (k, v) in enumerate([("Product name", "Soothing Cucumber Gel-Cream"), ("Category", "Face care, leave-on"), ("Formula ref.", "SCG-07"), ("Version / date", "3 / 12.02.2025"), ("pH (20 °C)", "5.3 – 5.7")]):
    put(s, 3 + i, 1, [k]); s.cell(3 + i, 3, v); s.merge_cells(start_row=3+i, start_column=1, end_row=3+i, end_column=2)
put(s, 9, 1, ["No.", "Ingredient (INCI)", "CAS No.", "Function", "Conc. % (w/w)", "Note"], True, "DDEBF7")
R = [("Aqua", "7732-18-5", "Solvent", "ad 100", "rest", ""), ("Glycerin", "56-81-5", "Humectant", 5, "5", ""), ("Squalane", "111-01-3", "Emollient", 4, "4", "plant origin"), ("Dicaprylyl Ether", "629-82-3", "Emollient", 3, "3", ""),
 ("Cucumis Sativus Fruit Extract", "89998-01-6", "Skin conditioning", 2, "2", "1"), ("Niacinamide", "98-92-0", "Smoothing", 2, "2", ""), ("Polyglyceryl-6 Distearate", "34424-97-0", "Emulsifier", 1.8, "1.8", ""), ("Xanthan Gum", "11138-66-2", "Viscosity control", 0.4, "0.4", ""),
 ("Sclerotium Gum", "39464-87-4", "Viscosity control", 0.3, "0.3", ""), ("Phenoxyethanol", "122-99-6", "Preservative", 0.85, "0.85", "Annex V/29"), ("Ethylhexylglycerin", "70445-33-9", "Skin conditioning", 0.15, "0.15", ""), ("Lavandula Angustifolia Oil", "8000-28-0", "Perfuming", 0.1, "0.1", "2"), ("Citric Acid", "77-92-9", "pH adjuster", "q.s. to pH 5.5", "ph", "")]
for i, (n, c, f, a, e, k) in enumerate(R): put(s, 10 + i, 1, [i + 1, n, c, f, a, k or None])
r = 10 + len(R); put(s, r, 2, ["Total", None, None, 100], True)
s.cell(r+2, 1, "1  Extract in glycerin/water, extract content 1.5 %"); s.cell(r+3, 1, "2  Contains the following allergens subject to declaration:")
put(s, r+4, 2, ["Allergen", "CAS No.", "% in oil", "% in product"], True)
put(s, r+5, 2, ["Linalool", "78-70-6", 34, 0.034]); put(s, r+6, 2, ["Limonene", "5989-27-5", 0.6, 0.0006]); put(s, r+7, 2, ["Geraniol", "106-24-1", 0.4, 0.0004])
s.cell(r+9, 1, "Signed: ______________________")
widths(s, 6, 34, 14, 20, 16, 14)
save(wb, "SCG-07 composition for assessor", [F("Soothing Cucumber Gel-Cream", [(n, e, "") for n, c, f, a, e, k in R])], calc=False)

# 5 German materials, csv in the old Windows encoding
R = [("Mandelöl", "Prunus Amygdalus Dulcis Oil", "1 kg", "18,90 €", "640 g", "M-2291", "03/2026", "kühl lagern"), ("Sheabutter, raffiniert", "Butyrospermum Parkii Butter", "500 g", "9,45 €", "120 g", "SB 1107", "11/2025", "nachbestellen"),
 ("Bienenwachs, gelb", "Cera Alba", "250 g", "7,20 €", "85 g", "", "", "vom Imker im Ort"), ("Glycerin pflanzlich", "Glycerin", "1 kg", "6,80 €", "910 g", "GL-0424", "04/2027", ""), ("Lanolin", "Lanolin", "100 g", "5,60 €", "40 g", "LA-88", "09/2025", "nicht bei Wollallergie"),
 ("Xanthan transparent", "Xanthan Gum", "100 g", "6,95 €", "72,5 g", "X-3310", "12/2026", ""), ("Kaliumsorbat", "Potassium Sorbate", "50 g", "3,40 €", "31 g", "KS-5", "06/2026", ""), ("Milchsäure 80 %", "Lactic Acid", "100 g", "4,10 €", "96 g", "MS-19", "01/2026", "Handschuhe!"), ("Ringelblumenblüten", "Calendula Officinalis Flower", "", "", "210 g", "", "", "aus dem Garten, Ernte 2024")]
t = "Rohstofflager Stand 1.3.2025;;;;;;;\n\nRohstoff;INCI;Gebinde;Preis;Bestand;Charge;MHD;Bemerkung\n" + "".join(";".join(r) + "\n" for r in R)
g = lambda q: plain(D(q.split()[0].replace(",", ".")) * (1000 if q.endswith("kg") else 1)) if q else ""
csvf("Rohstofflager", t, materials=[M(r[1], r[3].replace(" €", "").replace(",", "."), g(r[2]), g(r[4]), r[5]) for r in R], enc="cp1252", nl="\r\n")

# 6 German midwife, two recipes side by side on one sheet, grams
wb, s = new("Rezepte")
bar(s, 1, 1, 3, "Wundschutzcreme", "FCE4D6", size=13); bar(s, 1, 5, 7, "Brustwarzenbalsam", "E2EFDA", size=13)
put(s, 2, 1, ["Zutat", "Gramm", "Anmerkung"], True); put(s, 2, 5, ["Zutat", "Gramm", "Anmerkung"], True)
A = [("Fettphase",), ("Olivenöl", 30, "mazeriert mit Ringelblume"), ("Wollwachs", 20, ""), ("Bienenwachs", 6, ""), ("Glycerinstearat SE", 6.5, "Emulgator"), ("Wasserphase",), ("Lavendelhydrolat", 80, ""), ("Glycerin", 7.5, ""), ("Zinkoxid", 40, "vorher sieben, in Glycerin anreiben"), ("Abkühlphase",), ("Panthenol 75 %", 6, "unter 40 °C"), ("Kaliumsorbat", "0,4", ""), ("Milchsäure 80 %", "bis pH 5,2", "Teststreifen")]
B = [("Lanolin", 25, "reinst"), ("Mandelöl", 15.5, ""), ("Kakaobutter", 6, ""), ("Bienenwachs", 3, ""), ("Vitamin E", "0,5", "")]
ph = ""; la = []
for i, x in enumerate(A):
    if len(x) == 1: ph = x[0]; s.cell(3+i, 1, ph).font = Font(bold=True, italic=True)
    else:
        put(s, 3+i, 1, [x[0], x[1], x[2] or None]); la.append((x[0], "ph" if str(x[1]).startswith("bis") else str(x[1]).replace(",", "."), ph))
for i, x in enumerate(B): put(s, 3+i, 5, [x[0], x[1], x[2] or None])
put(s, 8, 5, ["Summe", 50], True); put(s, 17, 1, ["Summe", 196.4], True)
s.cell(10, 5, "reicht für 5 Döschen à 10 g"); s.cell(11, 5, "Abwischen vor dem Stillen nicht nötig"); s.cell(19, 1, "Haltbar 3 Monate, im Kühlschrank 4. Immer Datum aufs Döschen!")
widths(s, 24, 12, 32, 3, 20, 10, 16)
save(wb, "Hebammen-Rezepte", [G("Wundschutzcreme", la), G("Brustwarzenbalsam", [(x[0], str(x[1]).replace(",", "."), "") for x in B])], calc=False)

# 7 French, solid shampoo; phase named only in the first row of each group
wb, s = new("Feuil1")
put(s, 1, 1, ["Shampoing solide ortie & rhassoul"], True); put(s, 2, 1, ["Fabrication :", None, None, 300, "g"]); put(s, 3, 1, ["Essai n° 6, le bon !"])
put(s, 5, 1, ["Phase", "Matière première", "INCI", "%", "Pesée (g)"], True, "EDEDED")
R = [("A", "SCI en poudre", "Sodium Cocoyl Isethionate", "qsp 100", "rest"), ("A", "SLSA", "Sodium Lauryl Sulfoacetate", 12, "12"), ("A", "Coco-bétaïne", "Coco-Betaine", 8, "8"), ("A", "Eau florale d'ortie", "Urtica Dioica Water", 7.5, "7.5"), ("B", "Alcool cétéarylique", "Cetearyl Alcohol", 4, "4"), ("B", "Beurre de murumuru", "Astrocaryum Murumuru Seed Butter", 3.5, "3.5"), ("B", "Huile de brocoli", "Brassica Oleracea Italica Seed Oil", 2, "2"),
 ("C", "Rhassoul", "Moroccan Lava Clay", 5, "5"), ("C", "Poudre d'ortie", "Urtica Dioica Leaf Powder", 3, "3"), ("C", "Provitamine B5", "Panthenol", 1.5, "1.5"), ("C", "Huile essentielle de cèdre", "Cedrus Atlantica Wood Oil", 0.8, "0.8"), ("C", "Acide lactique", "Lactic Acid", "qs pH 5,5", "ph")]
for i, (p, m, n, a, e) in enumerate(R):
    r = 6+i; put(s, r, 1, [p if i == 0 or R[i-1][0] != p else None, m, n, a, f"=$D$2-SUM(E7:E16)" if e == "rest" else f"=D{r}*$D$2/100" if e != "ph" else None])
put(s, 18, 2, ["TOTAL", None, 100, "=SUM(E6:E17)"], True)
put(s, 20, 1, ["Porter le masque pour le SCI ! Mouler en 5 pains de 60 g, sécher 48 h."])
widths(s, 8, 28, 36, 10, 10)
save(wb, "shampoing solide", [F("Shampoing solide ortie & rhassoul", [(n, e, p) for p, m, n, a, e in R])])

# 8 French csv, per cent signs and commas
R = [("Phase aqueuse (75 °C)",), ("Hydrolat de fleur d'oranger", "40,0 %"), ("Eau déminéralisée", None), ("Glycérine végétale", "3,5 %"), ("Gomme xanthane", "0,30 %"), ("Phase huileuse (75 °C)",), ("Huile d'amande douce", "12,0 %"), ("Huile de noyau d'abricot", "5,0 %"), ("Olivate de cétéaryle et sorbitan", "5,0 %"), ("Alcool cétylique", "1,5 %"), ("Phase de refroidissement (< 40 °C)",), ("Alcool benzylique et acide déhydroacétique", "0,8 %"), ("Vitamine E", "0,4 %"), ("Extrait aromatique d'amande", "0,25 %")]
tot = sum(D(x[1].split()[0].replace(",", ".")) for x in R if len(x) > 1 and x[1]); ph = ""; ln = []; t = "Lait corps amande et fleur d'oranger;;\nRecette de l'atelier du jeudi;;\n;;\nIngrédient;Pourcentage;Remarque\n"
for x in R:
    if len(x) == 1: ph = x[0].split(" (")[0]; t += x[0] + ";;\n"
    else:
        a = x[1] or de(100 - tot) + " %"; ln.append((x[0], a.split()[0].replace(",", "."), ph)); t += f"{x[0]};{a};" + ("disperser dans la glycérine" if "xanthane" in x[0] else "") + "\n"
t += "Total;100 %;\n;;\nÉmulsionner 3 min au mini-fouet, puis remuer jusqu'à 30 °C.;;\nSe conserve 3 mois;;\n"
csvf("lait_corps", "\ufeff" + t, [F("Lait corps amande et fleur d'oranger", ln)])

# 9 Italian, learned on a forum; one column for names, comma decimals as text, notes between
wb, s = new("Foglio1")
put(s, 1, 1, ["CREMA VISO CAMOMILLA E RISO"], True); put(s, 2, 1, ["per pelli secche, seconda prova"])
R = [("Fase A",), ("Acqua demineralizzata", "a 100", "rest"), ("Glicerina", "3", "3"), ("Gomma xantana", "0,3", "0.3"), ("*scaldare a 70 °C",), ("Fase B",), ("Olio di riso", "6", "6"), ("Burro di karité", "2,5", "2.5"), ("Olio di vinaccioli", "4", "4"), ("Metilglucosio sesquistearato", "3", "3"), ("Alcol cetilico", "1,5", "1.5"), ("*versare B in A e frullare, poi raffreddare mescolando",), ("Fase C",), ("Estratto glicolico di camomilla", "4", "4"), ("Pantenolo", "1", "1"), ("Tocoferolo", "0,5", "0.5"), ("Fenossietanolo", "0,8", "0.8"), ("Acido lattico", "q.b. a pH 5,5", "ph")]
ph = ""; ln = []
for i, x in enumerate(R):
    if len(x) == 1:
        k = x[0]; c = s.cell(4+i, 1, k.lstrip("*")); c.font = Font(bold=k[0] != "*", italic=k[0] == "*")
        if k[0] != "*": ph = k[5:]
    else: put(s, 4+i, 1, [x[0], x[1]]); ln.append((x[0], x[2], ph))
put(s, 5+len(R), 1, ["Totale", "100"], True); s.cell(7+len(R), 1, "Bella texture, si assorbe in 2 minuti. La prossima volta meno karité.")
widths(s, 44, 16)
save(wb, "crema viso", [F("CREMA VISO CAMOMILLA E RISO", ln)], calc=False)

# 10 Swedish, hand cream of an allotment club
wb, s = new("Blad1")
put(s, 1, 1, ["Handkräm med havre"], True); put(s, 2, 1, ["Satsstorlek", None, None, None, 400])
put(s, 4, 1, ["Fas", "Råvara", "INCI", "Procent", "Gram"], True, "FFE699")
R = [("A", "Vatten", "Aqua", None), ("A", "Glycerin", "Glycerin", "6"), ("A", "Kolloidal havre", "Avena Sativa Kernel Flour", "1.5"), ("A", "Allantoin", "Allantoin", "0.2"), ("B", "Rapsolja", "Brassica Campestris Seed Oil", "11"), ("B", "Sheasmör", "Butyrospermum Parkii Butter", "4"), ("B", "Glycerylstearatcitrat", "Glyceryl Stearate Citrate", "3"), ("B", "Cetylalkohol", "Cetyl Alcohol", "3.25"), ("C", "Fenoxietanol", "Phenoxyethanol", "0.9"), ("C", "E-vitamin", "Tocopherol", "0.5"), ("C", "Bensoe", "Styrax Benzoin Resin Extract", "0.15")]
Rf = fill(R, 3)
for i, x in enumerate(Rf):
    put(s, 5+i, 1, [x[0], x[1], x[2], num(x[3]), f"=ROUND(D{5+i}/100*$E$2,1)"])
put(s, 5+len(R), 1, ["Totalt", None, None, f"=SUM(D5:D{4+len(R)})", f"=SUM(E5:E{4+len(R)})"], True)
put(s, 7+len(R), 1, ["Värm A och B var för sig till 75 grader. Kontrollera pH, ska vara 5–6."])
widths(s, 7, 24, 32, 10, 10)
save(wb, "handkräm havre", [F("Handkräm med havre", [(x[2], x[3], x[0]) for x in Rf])])

# 11 engineer, trials in columns with verdicts beneath
wb, s = new("Cleanser trials")
bar(s, 1, 1, 6, "Oil-to-milk cleanser development", "D9E1F2")
put(s, 2, 1, ["all figures % w/w, blank = not used"])
put(s, 4, 1, ["Phase", "INCI", "Trial 1", "Trial 2", "Trial 3", "Comment"], True)
put(s, 5, 2, ["Date", datetime.date(2025, 1, 11), datetime.date(2025, 1, 25), datetime.date(2025, 2, 9)])
R = [("Oil", "Helianthus Annuus Seed Oil", ("60", "52", "48.5"), ""), ("Oil", "Caprylic/Capric Triglyceride", ("20", "20", "20"), ""), ("Oil", "Vitis Vinifera Seed Oil", (None, "8", "10"), "lighter after-feel"), ("Oil", "Polyglyceryl-4 Oleate", ("19", None, None), "left a film"), ("Oil", "PEG-20 Glyceryl Triisostearate", (None, "19", None), "works, but customers ask"), ("Oil", "Polyglyceryl-10 Dioleate", (None, None, "20"), ""), ("Add", "Tocopherol", ("0.5", "0.5", "0.5"), ""), ("Add", "Bisabolol", (None, None, "0.6"), ""), ("Add", "Citrus Sinensis Peel Oil", ("0.5", "0.5", "0.4"), "")]
for i, (p, n, v, k) in enumerate(R): put(s, 6+i, 1, [p, n] + [num(a) if a else None for a in v] + [k or None])
put(s, 15, 2, ["Sum", "=SUM(C6:C14)", "=SUM(D6:D14)", "=SUM(E6:E14)"], True)
put(s, 16, 2, ["Rinse-off (1-5)", 2, 5, 4]); put(s, 17, 2, ["Clear after 2 weeks?", "no", "yes", "yes"]); put(s, 18, 2, ["Verdict", "drop", "back-up", "go ahead"])
widths(s, 8, 34, 12, 12, 12, 26)
fs = []
for j in range(3):
    fs.append(F(f"Trial {j+1}", [(n, v[j], p) for p, n, v, k in R if v[j]]))
save(wb, "cleanser trials", fs)

# 12 materials csv, typed from invoices
R = [("Sodium bicarbonate", "food grade", "25kg", "£31.00", "9.5 kg", "SB24-118", "Nov 2026"), ("Citric acid anhydrous", "fine", "5kg", "£17.95", "1,850 g", "CA-0093", "Jan 2027"), ("Coconut oil", "76 degree", "1kg", "£6.20", "420g", "CO771", "Aug 2025"), ("Cocoa butter", "wafers, deodorised", "1kg", "£16.75", "0.3 kg", "CB-2024-6", "Feb 2026"), ("Polysorbate 80", "", "500g", "£7.10", "355g", "P80/41", "Mar 2026"), ("Kaolin", "white", "1kg", "£3.99", "780g", "", ""), ("Dead Sea salt", "coarse", "10kg", "£22.40", "6 kg", "DSS 5", "Dec 2028"), ("Lavender oil", "bought at fair, gift of a friend", "", "", "48g", "", ""), ("Sodium lauryl sulfoacetate", "powder, MASK", "500g", "£9.60", "0", "SLSA-3", "May 2025"), ("Titanium dioxide", "water dispersible", "100g", "£2.85", "91g", "TD-17", "Jun 2029")]
q = lambda x: '"%s"' % x if "," in x else x
t = "Material,Kind,Pack,Paid,On shelf,Batch,Best before\n" + "".join(",".join(q(c) for c in r) + "\n" for r in R)
def gr(x):
    x = x.replace(",", "").replace(" ", "")
    return "" if not x else plain(D(x[:-2]) * 1000) if x.endswith("kg") else plain(x.rstrip("g"))
csvf("store cupboard", t, materials=[M(r[0], r[3].lstrip("£"), gr(r[2]), gr(r[4]), r[5]) for r in R], nl="\r\n")

# 13 materials xlsx, price list with groups and stock value
wb, s = new("Inventory")
bar(s, 1, 1, 9, "Raw material inventory, counted end of quarter", "BDD7EE", size=13)
put(s, 3, 1, ["INCI", "Common name", "Price ($)", "Pack", "Unit", "$ per g", "On hand (g)", "Value ($)", "Lot #"], True)
R = ["OILS AND BUTTERS", ("Simmondsia Chinensis Seed Oil", "Jojoba oil", "42.5", 1, "kg", 610, "J-4471"), ("Mangifera Indica Seed Butter", "Mango butter", "14.8", 500, "g", 275, "MB-09"), ("Ricinus Communis Seed Oil", "Castor oil", "11.25", 1, "kg", 890, "RC-233"), "WAXES AND EMULSIFIERS", ("Euphorbia Cerifera Cera", "Candelilla wax", "13.9", 250, "g", 96.5, "EC-15"), ("Cetearyl Alcohol", "Cetearyl alcohol", "8.4", 500, "g", 430, "CT-801"), ("Cetrimonium Chloride", "CTAC 29%", "10.6", 500, "g", 500, "CC-2"), "ACTIVES", ("Niacinamide", "Vitamin B3", "9.75", 100, "g", 64, "NI-77"), ("Panthenol", "Provitamin B5", "12.3", 200, "g", 18, "PA-31"), "PRESERVATIVES", ("Phenoxyethanol (and) Ethylhexylglycerin", "Broad spectrum liquid", "15.2", 250, "g", 133, "PE-106"), ("Sodium Benzoate", "Sodium benzoate", "4.5", 100, "g", 88, "")]
r = 4; ms = []
for x in R:
    if isinstance(x, str): bar(s, r, 1, 9, x, "F2F2F2")
    else:
        n, c, p, k, u, st, lot = x
        put(s, r, 1, [n, c, num(p), k, u, f"=C{r}/D{r}" + ("/1000" if u == "kg" else ""), st, f"=F{r}*G{r}", lot or None]); s.cell(r, 3).number_format = "0.00"; s.cell(r, 6).number_format = "0.000"; s.cell(r, 8).number_format = "0.00"
        ms.append(M(n, p, k * 1000 if u == "kg" else k, st, lot))
    r += 1
put(s, r+1, 1, ["Total stock value", None, None, None, None, None, None, f"=SUM(H4:H{r-1})"], True)
widths(s, 40, 24, 10, 8, 7, 10, 12, 10, 12)
save(wb, "inventory Q1", materials=ms)

# 14 csv out of an online sheet: notes above, headings with instructions, stray empty columns
R = [("Phase A (heat to 75 C)",), ("Emulsifying wax NF", "6.5"), ("Stearic acid", "4"), ("Cocoa butter", "9"), ("Grapeseed oil", "21"), ("Phase B (stir in off the heat)",), ("Fine cane sugar", "q.s. to 100"), ("Arrowroot powder", "2.5"), ("Phase C (below 45 C)",), ("Phenoxyethanol and caprylyl glycol", "1"), ("Peppermint essential oil", "0.6"), ("Vitamin E acetate", "0.5")]
R[9] = ("Phenoxyethanol and caprylyl glycol", "1")
t = ",,,,\n,Peppermint Foot Scrub,,,\n,last changed after the spring market,,,\n,,,,\n,Ingredient,Percent,Notes,\n"; ph = ""; ln = []
K = {"Fine cane sugar": '"add slowly, it seizes"', "Stearic acid": "palm free", "Peppermint essential oil": '"0.8 was too strong, two complaints"'}
for x in R:
    if len(x) == 1: ph = x[0][6]; t += f",{x[0]},,,\n"
    else: t += f",{x[0]},{x[1]},{K.get(x[0], '')},\n"; ln.append((x[0], "rest" if "q.s" in x[1] else x[1], ph))
t += ",Total,100,,\n,,,,\n,Whip every 5 minutes until it looks like icing. Jar at 30 C.,,,\n"
csvf("foot scrub - Sheet1", t, [F("Peppermint Foot Scrub", ln)])

# 15 seller of recipes: pretty card, offset, bars, method under it
wb, s = new("Recipe card")
s.sheet_view.showGridLines = False
bar(s, 2, 2, 5, "Whipped Mango Body Butter", "F4B084", size=18, align="center"); bar(s, 3, 2, 5, "Makes 250 g  |  Beginner  |  45 minutes", "FFFFFF", False, 10, align="center")
put(s, 5, 2, ["Ingredient", "%", "Grams", "Swap it for"], True)
R = [("Melted phase",), ("Mango butter", "42", "Shea butter"), ("Cocoa butter", "12", "Kokum butter"), ("Candelilla wax", "2", ""), ("Oil phase",), ("Fractionated coconut oil", "24.5", "Sunflower oil"), ("Apricot kernel oil", "13", "Sweet almond oil"), ("Cool down phase",), ("Tapioca starch", "6", "Arrowroot"), ("Vitamin E", "0.5", ""), ("Vanilla extract in oil", "20 drops", "leave out")]
r = 6; ph = ""; ln = []
for x in R:
    if len(x) == 1: ph = x[0]; bar(s, r, 2, 5, ph, "FCE4D6")
    else:
        d = "drops" in x[1]; put(s, r, 2, [x[0], x[1] if d else num(x[1]), None if d else num(D(x[1]) * D("2.5")), x[2] or None]); ln.append((x[0], "unknown" if d else x[1], ph))
    r += 1
r += 1
bar(s, r, 2, 5, "Method", "F4B084")
for i, k in enumerate(["1. Melt the butters and wax at 70 C, hold for 20 minutes.", "2. Add the oils and chill until the edges set.", "3. Whip 5 minutes, add the cool down ingredients, whip again.", "4. Fill into clean jars. Use within 6 months."]):
    s.cell(r+1+i, 2, k); s.merge_cells(start_row=r+1+i, start_column=2, end_row=r+1+i, end_column=5)
bar(s, r+6, 2, 5, "For personal use only. Please do not resell this recipe.", "FFFFFF", False, 9)
s.column_dimensions["A"].width = 3; s.column_dimensions["B"].width = 34; s.column_dimensions["E"].width = 22
save(wb, "recipe card mango butter", [F("Whipped Mango Body Butter", ln)], calc=False)

# 16 mineral make-up, shades stacked on one sheet
wb, s = new("Shades"); r = 1; fs = []
base = [("Mica", "18"), ("Titanium Dioxide", "9"), ("Zinc Oxide", "6"), ("Kaolin", "4.5"), ("Magnesium Stearate", "1.8")]
for t, rows, k in [("Ivory", base + [("Iron Oxides (yellow)", "0.62"), ("Iron Oxides (red)", "0.18")], "cool, for the lightest skins"), ("Honey", base + [("Iron Oxides (yellow)", "1.9"), ("Iron Oxides (red)", "0.7"), ("Iron Oxides (black)", "0.12")], "best seller"), ("Chestnut", [("Mica", "18"), ("Sericite", "8"), ("Zinc Oxide", "3"), ("Magnesium Stearate", "1.8"), ("Iron Oxides (yellow)", "4.4"), ("Iron Oxides (red)", "3.1"), ("Iron Oxides (black)", "1.05"), ("Jojoba Oil", "0.65")], "grind 3 x 20 s")]:
    bar(s, r, 1, 3, t, "E7E6E6", size=12); s.cell(r, 4, k).font = Font(italic=True)
    put(s, r+1, 1, ["Pigment / filler", "g", "%"], True); a, b = r+2, r+1+len(rows)
    for i, (n, g_) in enumerate(rows): put(s, a+i, 1, [n, num(g_), f"=B{a+i}/B${b+1}"]); s.cell(a+i, 3).number_format = "0.0%"
    put(s, b+1, 1, ["Total", f"=SUM(B{a}:B{b})", f"=SUM(C{a}:C{b})"], True); s.cell(b+1, 3).number_format = "0.0%"
    fs.append(G(t, [(n, g_, "") for n, g_ in rows])); r = b+4
widths(s, 28, 10, 10, 30)
save(wb, "mineral foundation shades", fs)

# 17 herbalist, parts by weight, csv
t = """Grandmother's notebook, typed out

Comfrey and Plantain Salve
(parts by weight)
Ingredient,Parts
Olive oil infused with comfrey,6
Olive oil infused with plantain,6
Beeswax,2.5
Lanolin,1
Pine resin,0.5
Lavender oil,15 drops

Chest Rub
(parts by weight)
Ingredient,Parts
Sunflower oil infused with thyme,10
Coconut oil,4
Beeswax,3
Eucalyptus oil,0.3
Camphor,0.2
Menthol crystals,0.1
"""
csvf("salves", t, [G("Comfrey and Plantain Salve", [("Olive oil infused with comfrey", "6", ""), ("Olive oil infused with plantain", "6", ""), ("Beeswax", "2.5", ""), ("Lanolin", "1", ""), ("Pine resin", "0.5", ""), ("Lavender oil", "unknown", "")]),
 G("Chest Rub", [("Sunflower oil infused with thyme", "10", ""), ("Coconut oil", "4", ""), ("Beeswax", "3", ""), ("Eucalyptus oil", "0.3", ""), ("Camphor", "0.2", ""), ("Menthol crystals", "0.1", "")])])

# 18 batch record, small rented unit, kg; learned in a food factory
wb, s = new("BMR")
bar(s, 1, 1, 9, "BATCH MANUFACTURING RECORD", "000000", size=12, align="center"); s["A1"].font = Font(bold=True, color="FFFFFF")
put(s, 2, 1, ["Product:", None, "Tea Tree Foaming Face Wash", None, None, "Batch no.:", "FW-031"]); s.merge_cells("A2:B2"); s.merge_cells("C2:E2")
put(s, 3, 1, ["Batch size (kg):", None, 12, None, None, "Date:", datetime.date(2025, 3, 4)]); s.merge_cells("A3:B3")
put(s, 5, 1, ["Step", "Phase", "INCI name", "RM lot", "% w/w", "Target kg", "Actual kg", "By", "Checked"], True, "D9D9D9")
R = [("A", "Aqua", "-", None, "8.14"), ("A", "Glycerin", "G-1182", "3", ".36"), ("A", "Sodium Benzoate", "SB-20", "0.5", ".06"), ("A", "Sodium Chloride", "NC-4", "1.2", ".144"), ("B", "Coco-Glucoside", "CG-615", "14", "1.681"), ("B", "Cocamidopropyl Betaine", "CB-309", "12", "1.44"), ("B", "Glyceryl Oleate", "GO-77", "1", ".12"), ("C", "Panthenol", "PA-12", "0.5", ".06"), ("C", "Melaleuca Alternifolia Leaf Oil", "TT-58", "0.4", ".048"), ("D", "Citric Acid", "CA-91", "q.s. pH 5.0", ".052")]
Rf = fill(R, 3)
for i, x in enumerate(Rf):
    r = 6+i; p = x[3].startswith("q.s"); put(s, r, 1, [i+1, x[0], x[1], x[2], x[3] if p else num(x[3]), None if p else f"=ROUND(E{r}*$C$3/100,3)", float(x[4]), "KL", "✓"]); s.cell(r, 6).number_format = "0.000"; s.cell(r, 7).number_format = "0.000"
put(s, 16, 3, ["TOTAL", None, "=SUM(E6:E15)", "=SUM(F6:F15)", "=SUM(G6:G15)"], True)
put(s, 18, 1, ["Yield (kg):", None, 11.74]); put(s, 19, 1, ["pH found:", None, 5.1]); put(s, 20, 1, ["Appearance:", None, "clear, pale yellow"])
widths(s, 7, 8, 34, 10, 12, 10, 10, 6, 9)
save(wb, "BMR face wash FW-031", [F("Tea Tree Foaming Face Wash", [(x[1], "ph" if x[3].startswith("q.s") else x[3], x[0]) for x in Rf])])

# 19 student of an online course: name and INCI in one cell, several batch sizes
wb, s = new("Conditioner")
put(s, 1, 1, ["Module 5 homework: Silky Hair Conditioner"], True); s["A1"].value = "Silky Hair Conditioner"; put(s, 2, 1, ["Module 5 homework, marked 8/10"])
put(s, 4, 1, ["Phase", "Ingredient (INCI)", "Function", "%", "100 g", "250 g", "1000 g"], True, "E4DFEC")
R = [("Water phase", "Distilled water (Aqua)", "solvent", None), ("Water phase", "Vegetable glycerine (Glycerin)", "humectant", "2"), ("Water phase", "Inulin (Inulin)", "conditioning", "1.5"), ("Oil phase", "BTMS 25 (Behentrimonium Methosulfate, Cetearyl Alcohol)", "cationic emulsifier", "5"), ("Oil phase", "Cetyl alcohol (Cetyl Alcohol)", "thickener", "2.75"), ("Oil phase", "Argan oil (Argania Spinosa Kernel Oil)", "emollient", "2"), ("Cool down", "Hydrolysed oat protein (Hydrolyzed Oat Protein)", "film former", "2"), ("Cool down", "D-Panthenol (Panthenol)", "moisturiser", "1"), ("Cool down", "Preservative (Benzyl Alcohol, Dehydroacetic Acid)", "preservative", "0.9"), ("Cool down", "Fragrance (Parfum)", "scent", "0.4")]
Rf = fill(R, 3)
for i, x in enumerate(R):
    r = 5+i; put(s, r, 1, [x[0], x[1], x[2], num(x[3]) if x[3] else "=100-SUM(D6:D14)", f"=D{r}", f"=D{r}*2.5", f"=D{r}*10"])
put(s, 15, 1, ["Total", None, None] + [f"=SUM({c}5:{c}14)" for c in "DEFG"], True)
put(s, 17, 1, ["pH target 4.5 (measure at the end, 10% dilution not needed)"]); put(s, 18, 1, ["Tutor says: next time keep oil under 2%"])
widths(s, 14, 54, 20, 8, 9, 9, 9)
save(wb, "conditioner homework", [F("Silky Hair Conditioner", [(x[1], x[3], x[0]) for x in Rf])])

# 20 programmer's hobby: one long table, all products
R = {"Rose Toner": [("A", "Rosa Damascena Flower Water", "45"), ("A", "Aqua", "qs 100"), ("A", "Glycerin", "3"), ("A", "Sodium PCA", "1.5"), ("B", "Sodium Benzoate", "0.5"), ("B", "Citric Acid", "qs pH 4.8")],
 "Neroli Roll-on": [("A", "Simmondsia Chinensis Seed Oil", "55"), ("A", "Caprylic/Capric Triglyceride", "41.5"), ("B", "Citrus Aurantium Flower Oil", "1.8"), ("B", "Citrus Aurantium Dulcis Peel Oil", "1.2"), ("B", "Tocopherol", "0.5")],
 "Aloe After-sun Gel": [("A", "Aloe Barbadensis Leaf Juice", "qs 100"), ("A", "Glycerin", "5"), ("A", "Allantoin", "0.3"), ("B", "Xanthan Gum", "1.1"), ("C", "Panthenol", "2"), ("C", "Bisabolol", "0.2"), ("C", "Phenoxyethanol", "0.9"), ("C", "Mentha Piperita Oil", "0.05")]}
t = "product,phase,inci,pct,updated\n"; fs = []
for k, rows in R.items():
    for p, n, a in rows: t += f"{k},{p},{n},{a},2025-02-1{len(k)%10}\n"
    fs.append(F(k, [(n, "rest" if a == "qs 100" else "ph" if "pH" in a else a, p) for p, n, a in rows]))
csvf("all_products_long", t, fs)
through_calc(CALC)
