"""Makes the sheets in third/: shapes set down before the reader was tried on them and without looking at how it reads."""
import os
from openpyxl.styles import Font, PatternFill
import make_corpus as m
import make_unforeseen as u

m.OUT = "third"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx


def w01(ws):
    ws.merge_cells("A1:F1"); ws.merge_cells("A5:A6"); ws.merge_cells("A7:A9"); ws.merge_cells("A10:A12")
    ws["A1"].font = Font(bold=True, size=16)


xlsx("w01-letterhead.xlsx", [
    ["Manufaktur Beispiel - Am Deich 4 - 00000 Musterort - Tel. 0000 12 34 56"],
    ["Rezeptur Nr. 17", None, "Stand: 03.02.2025", None, "Ansatz: 500 g"],
    ["Körpermilch leicht"],
    ["Phase", "Rohstoff", "INCI", "Einsatz", "g", "€/kg"],
    ["A", "Wasser, demineralisiert", "Aqua", "ad 100", "364,5", None],
    [None, "Glycerin pflanzlich", "Glycerin", "4,0 %", "20", "3,90"],
    ["B", "Rapsöl", "Brassica Campestris Seed Oil", "12,0 %", "60", "6,20"],
    [None, "Emulgator", "Glyceryl Stearate Citrate", "5,0 %", "25", "18,40"],
    [None, "Cetylalkohol", "Cetyl Alcohol", "4,5 %", "22,5", "9,10"],
    ["C", "Konservierung", "Phenoxyethanol", "0,9 %", "4,5", "21,00"],
    [None, "Parfüm", "Parfum", "0,2 %", "1", "95,00"],
    [None, "D-Panthenol", "Panthenol", "0,5 %", "2,5", "33,00"],
    [None, "Summe", None, "100 %", "500", None],
    ["Phase A und B getrennt auf 75 °C erwärmen, 3 Min. homogenisieren, unter 40 °C Phase C zugeben."],
    ["Seite 1 von 1"],
], [f("Körpermilch leicht", ("Wasser, demineralisiert", "rest", "Phase A"), ("Glycerin pflanzlich", "4", "Phase A"), ("Rapsöl", "12", "Phase B"), ("Emulgator", "5", "Phase B"),
      ("Cetylalkohol", "4.5", "Phase B"), ("Konservierung", "0.9", "Phase C"), ("Parfüm", "0.2", "Phase C"), ("D-Panthenol", "0.5", "Phase C"))], change=w01)

csv("w02-batch-columns.csv", """
Gel doccia delicato;;;;;
Materia prima;INCI;%;100 g;500 g;1 kg
Fase A - acquosa;;;;;
Acqua demineralizzata;Aqua;q.b. a 100;61,3;306,5;613
Glicerina;Glycerin;3;3;15;30
Fase B - tensioattivi;;;;;
Sodio lauril etere solfato;Sodium Laureth Sulfate;20;20;100;200
Cocamidopropil betaina;Cocamidopropyl Betaine;12;12;60;120
Fase C - finale;;;;;
Sale;Sodium Chloride;2,2;2,2;11;22
Profumo;Parfum;0,6;0,6;3;6
Sodio benzoato;Sodium Benzoate;0,5;0,5;2,5;5
Acido citrico;Citric Acid;0,4;0,4;2;4
Totale;;100;100;500;1000
""", [f("Gel doccia delicato", ("Acqua demineralizzata", "rest", "Fase A - acquosa"), ("Glicerina", "3", "Fase A - acquosa"), ("Sodio lauril etere solfato", "20", "Fase B - tensioattivi"),
        ("Cocamidopropil betaina", "12", "Fase B - tensioattivi"), ("Sale", "2.2", "Fase C - finale"), ("Profumo", "0.6", "Fase C - finale"), ("Sodio benzoato", "0.5", "Fase C - finale"),
        ("Acido citrico", "0.4", "Fase C - finale"))], "cp1252")

csv("w03-ml-beside-g.csv", """
Toner aloe,,,,
,,,,
Ingredient,ml,g,%,why
Rose water,50,50,50.0,smells nice
Aloe vera juice,29,29.5,29.5,soothing
Witch hazel water,15,15,15.0,
Glycerin,2.4,3,3.0,no more than 5 or it gets sticky
Propanediol,1.4,1.5,1.5,
Phenoxyethanol,0.9,1,1.0,check limit (1.0 max)
,,100,100,
Stir 10 min at 20 °C. Keeps 6 months.,,,,
""", [f("Toner aloe", ("Rose water", "50"), ("Aloe vera juice", "29.5"), ("Witch hazel water", "15"), ("Glycerin", "3"), ("Propanediol", "1.5"), ("Phenoxyethanol", "1"))])

csv("w04-phase-in-code.csv", """
Crème visage n° 8;;;
Réf.;Ingrédient (INCI);Masse (g);Mode opératoire
A1;Eau distillée (Aqua);350,0;Chauffer à 70 °C
A2;Glycérine (Glycerin);25,0;
B1;Huile d'amande douce (Prunus Amygdalus Dulcis Oil);75,0;Chauffer à 70 °C
B2;Cire émulsifiante (Cetearyl Alcohol);30,0;
B3;Beurre de karité (Butyrospermum Parkii Butter);15,0;
C1;Conservateur (Benzyl Alcohol);4,0;Sous 40 °C, agiter 5 min
C2;Vitamine E (Tocopherol);1,0;
;Total;500,0;
""", [f("Crème visage n° 8", ("Eau distillée (Aqua)", "70", "Phase A"), ("Glycérine (Glycerin)", "5", "Phase A"), ("Huile d'amande douce (Prunus Amygdalus Dulcis Oil)", "15", "Phase B"),
        ("Cire émulsifiante (Cetearyl Alcohol)", "6", "Phase B"), ("Beurre de karité (Butyrospermum Parkii Butter)", "3", "Phase B"), ("Conservateur (Benzyl Alcohol)", "0.8", "Phase C"), ("Vitamine E (Tocopherol)", "0.2", "Phase C"))])


def w05(ws):
    for r in (2, 6, 10):
        for c in range(1, 4): ws.cell(r, c).fill = PatternFill("solid", fgColor="DDEEFF")
    for r in range(3, 14):
        if ws.cell(r, 2).value is not None: ws.cell(r, 2).number_format = "0.0%"
    ws.column_dimensions["D"].hidden = True


xlsx("w05-coloured-rows-hidden-column.xlsx", [
    ["Conditioner for curls", "share", "cost/kg", "old recipe %"],
    ["water phase"],
    ["Water", 0.865, None, 80],
    ["Cetrimonium chloride", 0.03, 8.2, 4],
    ["Citric acid", 0.002, 4, 0.3],
    ["oils"],
    ["Cetearyl alcohol", 0.05, 9, 6],
    ["Coconut oil", 0.02, 12, 5],
    ["Behentrimonium methosulfate", 0.02, 30, 3],
    ["at the end"],
    ["Panthenol", 0.005, 33, 1],
    ["Fragrance", 0.003, 80, 0.2],
    ["Phenoxyethanol", 0.005, 21, 0.5],
], [f("Conditioner for curls", ("Water", "86.5", "Water phase"), ("Cetrimonium chloride", "3", "Water phase"), ("Citric acid", "0.2", "Water phase"), ("Cetearyl alcohol", "5", "Oils"), ("Coconut oil", "2", "Oils"),
      ("Behentrimonium methosulfate", "2", "Oils"), ("Panthenol", "0.5", "At the end"), ("Fragrance", "0.3", "At the end"), ("Phenoxyethanol", "0.5", "At the end"))], office=False, change=w05)

csv("w06-spanish-cbp.csv", """
FÓRMULA: Champú suave\t\t\t
Cantidad total: 1.000,0 g\t\t\t
\t\t\t
Fase\tComponente\tCantidad (g)\tObservaciones
A\tAgua destilada\tc.s.p. 1.000,0 g\tcalentar a 60 °C
A\tGoma xantana\t5,0\tespolvorear 10 min
A\tGlicerina\t30,0\t
B\tCocoglucósido\t150,0\t
B\tBetaína de coco\t120,0\tañadir despacio, 2 veces
C\tÁcido láctico\tc.s. pH 5,0-5,5\t
C\tBenzoato sódico\t5,0\t
C\tSorbato potásico\t3,0\t
C\tPerfume\t4,0\tsegún gusto
""", [f("Champú suave", ("Agua destilada", "rest", "Phase A"), ("Goma xantana", "0.5", "Phase A"), ("Glicerina", "3", "Phase A"), ("Cocoglucósido", "15", "Phase B"), ("Betaína de coco", "12", "Phase B"),
        ("Ácido láctico", "ph", "Phase C"), ("Benzoato sódico", "0.5", "Phase C"), ("Sorbato potásico", "0.3", "Phase C"), ("Perfume", "0.4", "Phase C"))])

csv("w07-versions.csv", """
Face oil gel,,,,
,v1,v2,v3,notes
date,12.1.,3.2.,20.2.,
Aqua,80,78,78.5,
Glycerin,8,8,6,2 % less: sticky
Squalane,10,12,13,
Xanthan Gum,1,1,1.5,too thin at 1
Phenoxyethanol,1,1,1,
sum,100,100,100,
pH,5.4,5.5,5.2,measured
""", [f("Face oil gel, " + v, ("Aqua", a), ("Glycerin", g), ("Squalane", s), ("Xanthan Gum", x), ("Phenoxyethanol", "1"))
      for v, a, g, s, x in (("v1", "80", "8", "10", "1"), ("v2", "78", "8", "12", "1"), ("v3", "78.5", "6", "13", "1.5"))])

csv("w08-ranges-and-typical.csv", """
Lip balm - guide;;;
Ingredient;Usual range %;My batch g;Melts at °C
Beeswax;20-30;12,5;62
Cocoa butter;15-25;10;34
Castor oil;30-40;17,5;
Jojoba oil;15-25;9,5;
Vitamin E;0,5-1;0,5;
Makes 10 tubes of 5 g;;;
""", [f("Lip balm - guide", ("Beeswax", "25"), ("Cocoa butter", "20"), ("Castor oil", "35"), ("Jojoba oil", "19"), ("Vitamin E", "1"))])

xlsx("w09-two-beside.xlsx", [
    ["Day cream", None, None, None, "Night cream", None, None],
    ["Ingredient", "%", None, None, "Ingredient", "%", "for 50 g"],
    ["Water", 72, None, None, "Water", 60.5, 30.25],
    ["Olive oil", 15, None, None, "Avocado oil", 20, 10],
    ["Olivate emulsifier", 6, None, None, "Shea butter", 8, 4],
    ["Glycerin", 5, None, None, "Cetearyl alcohol", 6, 3],
    ["Cetyl alcohol", 1, None, None, "Glycerin", 4, 2],
    ["Phenoxyethanol", 1, None, None, "Retinyl palmitate", 0.5, 0.25],
    [None, None, None, None, "Phenoxyethanol", 1, 0.5],
    ["Sum", 100, None, None, "Sum", 100, 50],
], [f("Day cream", ("Water", "72"), ("Olive oil", "15"), ("Olivate emulsifier", "6"), ("Glycerin", "5"), ("Cetyl alcohol", "1"), ("Phenoxyethanol", "1")),
    f("Night cream", ("Water", "60.5"), ("Avocado oil", "20"), ("Shea butter", "8"), ("Cetearyl alcohol", "6"), ("Glycerin", "4"), ("Retinyl palmitate", "0.5"), ("Phenoxyethanol", "1"))])

csv("w10-totals-on-top.csv", """
Badesalz Lavendel,,
Gesamt,"1,5 kg",100
Zutat,Menge,Anteil
Meersalz,"1,2 kg",80
Natron,"225 g",15
Mandelöl,"60 g",4
Lavendelöl,"12 g","0,8"
Vitamin E,"3 g","0,2"
""", [f("Badesalz Lavendel", ("Meersalz", "80"), ("Natron", "15"), ("Mandelöl", "4"), ("Lavendelöl", "0.8"), ("Vitamin E", "0.2"))])

csv("w11-duplicates-and-as-needed.csv", """
Nr;Bezeichnung;Anteil in %;Phase
1;Wasser;50,0;A
2;Xanthan;0,5;A
3;Glycerin;3,0;A
4;Wasser;20,0;B
5;Decylglucosid;18,0;B
6;Natriumcocoylglutamat;8,0;B
7;Zitronensäure 50 %;nach Bedarf;C
8;Natriumbenzoat;0,5;C
9;Farbe;;C
;;100,0;
""", [f("w11-duplicates-and-as-needed", ("Wasser", "50", "Phase A"), ("Xanthan", "0.5", "Phase A"), ("Glycerin", "3", "Phase A"), ("Wasser", "20", "Phase B"), ("Decylglucosid", "18", "Phase B"),
        ("Natriumcocoylglutamat", "8", "Phase B"), ("Zitronensäure 50 %", "ph", "Phase C"), ("Natriumbenzoat", "0.5", "Phase C"), ("Farbe", "unknown", "Phase C"))])

csv("w12-spoons-and-drops.txt", """
Deo cream

3 tbsp coconut oil
2 tbsp shea butter
30 g baking soda
20 g arrowroot
10 drops tea tree oil
1/2 tsp vitamin E

melt, stir 5 min, pour into 2 jars of 60 ml
""", [f("Deo cream", *((n, "unknown") for n in ("coconut oil", "shea butter", "baking soda", "arrowroot", "tea tree oil", "vitamin E")))])


def w13(ws):
    ws.merge_cells("A3:D3"); ws.merge_cells("A7:D7"); ws.merge_cells("A11:D11")
    ws.row_dimensions[9].hidden = True


xlsx("w13-phase-sums.xlsx", [
    ["Lotion base 2.1", None, None, "batch 2500 g"],
    ["Trade grade", "INCI", "%", "kg"],
    ["PHASE 1 (heat 75 °C)"],
    ["Demin. water", "Aqua", 74.6, 1.865],
    ["Veg. glycerine 99.5", "Glycerin", 3, 0.075],
    ["Sum phase 1", None, 77.6, 1.94],
    ["PHASE 2 (heat 75 °C)"],
    ["Neutral oil 70/30", "Caprylic/Capric Triglyceride", 14, 0.35],
    ["Lamellar emulsifier", "Cetearyl Olivate, Sorbitan Olivate", 5, 0.125],
    ["Sum phase 2", None, 19, 0.475],
    ["PHASE 3 (below 40 °C)"],
    ["Tocopherol 50", "Tocopherol, Helianthus Annuus Seed Oil", 0.4, 0.01],
    ["Fragrance", "Parfum", 2, 0.05],
    ["Preservative", "Phenoxyethanol, Ethylhexylglycerin", 1, 0.025],
    ["Sum phase 3", None, 3.4, 0.085],
    ["TOTAL", None, 100, 2.5],
], [f("Lotion base 2.1", ("Demin. water", "74.6", "PHASE 1"), ("Veg. glycerine 99.5", "3", "PHASE 1"), ("Neutral oil 70/30", "14", "PHASE 2"),
      ("Lamellar emulsifier", "5", "PHASE 2"), ("Tocopherol 50", "0.4", "PHASE 3"), ("Fragrance", "2", "PHASE 3"), ("Preservative", "1", "PHASE 3"))],
     office=False, change=w13)

csv("w14-footer-and-tabs.txt", """
Recipe:\tSugar scrub\t\t
Batch:\t800\tg\t
\t\t\t
\tSugar\t520\tg
\tSunflower oil\t200\tg
\tEmulsifying wax\t48\tg
\tGlycerin\t20\tg
\tPreservative\t8\tg
\tOrange oil\t4\tg
\t\t800\tg
\t\t\t
printed 2025-03-14\t\tpage 1/1\t
""", [f("Sugar scrub", ("Sugar", "65"), ("Sunflower oil", "25"), ("Emulsifying wax", "6"), ("Glycerin", "2.5"), ("Preservative", "1"), ("Orange oil", "0.5"))])
