"""Makes the sheets in seventh/: shapes set down after the reader was mended for those in sixth/ and before it was tried on these."""
import os
import make_corpus as m
import make_unforeseen as u

m.OUT = "seventh"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx

csv("a01-danish-phases-in-column.csv", """
Opskrift: Hårbalsam;;;;
Del;Ingrediens;Funktion;Mængde %;300 g
Vandfase;Vand;opløsning;82;246
Vandfase;Glycerin;fugt;4;12
Oliefase;Cetearylalkohol;fortykker;6;18
Oliefase;BTMS;emulgator;5;15
Oliefase;Jojobaolie;pleje;2;6
Nedkøling;Konservering;;0,8;2,4
Nedkøling;Duft;;0,2;0,6
I alt;;;100;300
""", [f("Hårbalsam", ("Vand", "82", "Vandfase"), ("Glycerin", "4", "Vandfase"), ("Cetearylalkohol", "6", "Oliefase"), ("BTMS", "5", "Oliefase"), ("Jojobaolie", "2", "Oliefase"), ("Konservering", "0.8", "Nedkøling"), ("Duft", "0.2", "Nedkøling"))])


def a02(ws):
    ws.merge_cells("B2:E2"); ws.merge_cells("B5:B7"); ws.merge_cells("B8:B10"); ws.merge_cells("B11:B13")
    for r in range(5, 14): ws.cell(r, 5).number_format = "0.0%"


xlsx("a02-offset-merged.xlsx", [
    [None],
    [None, "After sun milk (light)"],
    [None],
    [None, "Part", "Ingredient", "INCI", "Amount", "Comment"],
    [None, "I", "Aloe juice", "Aloe Barbadensis Leaf Juice", 0.5, "cold"],
    [None, None, "Water", "Aqua", 0.292, None],
    [None, None, "Glycerine", "Glycerin", 0.03, None],
    [None, "II", "Sunflower oil", "Helianthus Annuus Seed Oil", 0.1, "70 °C"],
    [None, None, "Emulsifier", "Polyglyceryl-3 Methylglucose Distearate", 0.04, None],
    [None, None, "Cetyl alcohol", "Cetyl Alcohol", 0.02, None],
    [None, "III", "Panthenol", "Panthenol", 0.01, "under 40 °C"],
    [None, None, "Preservative", "Phenoxyethanol", 0.006, None],
    [None, None, "Menthol", "Menthol", 0.002, "0.1-0.3 %"],
], [f("After sun milk (light)", ("Aloe juice", "50", "Phase I"), ("Water", "29.2", "Phase I"), ("Glycerine", "3", "Phase I"), ("Sunflower oil", "10", "Phase II"), ("Emulsifier", "4", "Phase II"), ("Cetyl alcohol", "2", "Phase II"),
      ("Panthenol", "1", "Phase III"), ("Preservative", "0.6", "Phase III"), ("Menthol", "0.2", "Phase III"))], change=a02)

csv("a03-two-languages-two-rows.csv", """
Rezeptur / Formula,,,,
Handseife fest,,,,
Rohstoff,Anteil,Menge,Charge,
Raw material,%,g,lot,
Seifenspäne,"88,0","880,0",S-1,
Wasser,"6,0","60,0",,
Glycerin,"3,0","30,0",G-4,
Parfum,"2,0","20,0",P-9,
Titandioxid,"1,0","10,0",T-2,
,"100,0","1.000,0",,
""", [f("Handseife fest", ("Seifenspäne", "88"), ("Wasser", "6"), ("Glycerin", "3"), ("Parfum", "2"), ("Titandioxid", "1"))])

csv("a04-steps-in-the-same-table.csv", """
Face mask clay;;
1;Kaolin;35 g
2;Bentonite;15 g
;mix dry, 2 min;
3;Rose water;38 g
4;Glycerin;10 g
;add slowly, stir 5 min;
5;Preservative;1 g
6;Geranium oil;1 g
;fill 2 x 50 ml;
""", [f("Face mask clay", ("Kaolin", "35"), ("Bentonite", "15"), ("Rose water", "38"), ("Glycerin", "10"), ("Preservative", "1"), ("Geranium oil", "1"))])

csv("a05-italian-qb.csv", """
CREMA MANI - versione 3 del 2/5/24;;;
FASE A;;;
acqua;q.b.;;
glicerina;4;;
gomma xantana;0,3;;
FASE B;;;
burro di karité;6;;
olio di riso;9;;
alcol cetilico;3;;
emulsionante;5;;
FASE C;;;
conservante;0,6;;
profumo;0,3;;
acido lattico;q.b. a pH 5,5;;
""", [f("CREMA MANI - versione 3 del 2/5/24", ("acqua", "rest", "FASE A"), ("glicerina", "4", "FASE A"), ("gomma xantana", "0.3", "FASE A"), ("burro di karité", "6", "FASE B"), ("olio di riso", "9", "FASE B"),
        ("alcol cetilico", "3", "FASE B"), ("emulsionante", "5", "FASE B"), ("conservante", "0.6", "FASE C"), ("profumo", "0.3", "FASE C"), ("acido lattico", "ph", "FASE C"))])

xlsx("a06-kilo-and-gram-mixed.xlsx", [
    ["Product code", "HS-01"],
    ["Product", "Hand soap liquid"],
    ["Lot", "2405"],
    [None],
    ["Code", "Description", "Qty", "Unit", "Vessel"],
    ["R001", "Water", 6.1, "kg", 1],
    ["R014", "Sodium laureth sulfate", 2, "kg", 1],
    ["R015", "Cocamidopropyl betaine", 1.5, "kg", 1],
    ["R020", "Glycerin", 200, "g", 2],
    ["R031", "Sodium chloride", 120, "g", 2],
    ["R040", "Sodium benzoate", 50, "g", 2],
    ["R041", "Citric acid", 20, "g", 2],
    ["R050", "Perfume", 10, "g", 3],
    [None, "Batch", 10, "kg", None],
], [f("Hand soap liquid", ("Water", "61"), ("Sodium laureth sulfate", "20"), ("Cocamidopropyl betaine", "15"), ("Glycerin", "2"), ("Sodium chloride", "1.2"), ("Sodium benzoate", "0.5"), ("Citric acid", "0.2"), ("Perfume", "0.1"))])

csv("a07-markdown-bold.txt", """
# Solid shampoo

| **Phase** | **Ingredient** | **%** |
|---|---|---|
| **A** | SCI | 55 |
| | Coco betaine | 15 |
| **B** | Cocoa butter | 8 |
| | Stearic acid | 10 |
| | BTMS-50 | 6 |
| **C** | Panthenol | 3 |
| | Essential oil | 2 |
| | Preservative | 1 |
| | **Total** | **100** |
""", [f("Solid shampoo", ("SCI", "55", "Phase A"), ("Coco betaine", "15", "Phase A"), ("Cocoa butter", "8", "Phase B"), ("Stearic acid", "10", "Phase B"), ("BTMS-50", "6", "Phase B"), ("Panthenol", "3", "Phase C"), ("Essential oil", "2", "Phase C"), ("Preservative", "1", "Phase C"))])

csv("a08-premix-inside.csv", """
Serum, niacinamide
Phase,Ingredient,%
A,Water,to 100
A,Niacinamide,5
A,Zinc PCA,1
B,Hyaluronic premix,20
,of which sodium hyaluronate,0.2
,of which water,19.8
C,Phenoxyethanol,0.9
C,Propanediol,4
""".replace("Serum, niacinamide", "Serum niacinamide"), [f("Serum niacinamide", ("Water", "rest", "Phase A"), ("Niacinamide", "5", "Phase A"), ("Zinc PCA", "1", "Phase A"), ("Hyaluronic premix", "20", "Phase B"), ("Phenoxyethanol", "0.9", "Phase C"), ("Propanediol", "4", "Phase C"))])

csv("a09-amounts-in-front-french.txt", """
Huile démaquillante pour 100 g
60 g d'huile de tournesol
25 g d'huile de ricin
14,5 g d'émulsifiant
0,5 g de vitamine E

Mélanger 2 minutes. Se conserve 6 mois.
""", [f("Huile démaquillante pour 100 g", ("huile de tournesol", "60"), ("huile de ricin", "25"), ("émulsifiant", "14.5"), ("vitamine E", "0.5"))])

xlsx("a10-versions-with-dates.xlsx", [
    ["Body lotion trials", None, None, None, None],
    [None, "2024-01-10", "2024-02-02", "2024-03-15", "judgement"],
    ["Water", 76, 74, 75.5, None],
    ["Glycerin", 5, 5, 4, "sticky above 5"],
    ["Almond oil", 12, 14, 13, None],
    ["Emulsifier", 6, 6, 6.5, "6 is thin"],
    ["Preservative", 1, 1, 1, None],
], [f("Body lotion trials, 2024-01-10", ("Water", "76"), ("Glycerin", "5"), ("Almond oil", "12"), ("Emulsifier", "6"), ("Preservative", "1")),
    f("Body lotion trials, 2024-02-02", ("Water", "74"), ("Glycerin", "5"), ("Almond oil", "14"), ("Emulsifier", "6"), ("Preservative", "1")),
    f("Body lotion trials, 2024-03-15", ("Water", "75.5"), ("Glycerin", "4"), ("Almond oil", "13"), ("Emulsifier", "6.5"), ("Preservative", "1"))])

csv("a11-units-in-every-cell-lb-oz.csv", """
Whipped butter;;
Shea butter;1 lb;
Mango butter;8 oz;
Coconut oil;8 oz;refined
Total;2 lb;
Whip 10 minutes, chill 20 minutes, whip again;;
Sells at 12.50 per 4 oz jar;;
""", [f("Whipped butter", ("Shea butter", "50"), ("Mango butter", "25"), ("Coconut oil", "25"))])

csv("a12-cas-and-ranges-sds-like.csv", """
3. Composition / information on ingredients;;;;
Chemical name;CAS-No.;EC-No.;Content (%);Classification
Aqua;7732-18-5;231-791-2;>= 60 - < 80;-
Sodium Laureth Sulfate;68891-38-3;500-234-8;>= 10 - < 20;Eye Dam. 1, H318
Cocamidopropyl Betaine;61789-40-0;263-058-8;>= 5 - < 10;Eye Dam. 1, H318
Sodium Chloride;7647-14-5;231-598-3;>= 1 - < 3;-
Sodium Benzoate;532-32-1;208-534-8;< 1;Eye Irrit. 2, H319
""", [f("a12-cas-and-ranges-sds-like", ("Aqua", "70"), ("Sodium Laureth Sulfate", "15"), ("Cocamidopropyl Betaine", "7.5"), ("Sodium Chloride", "2"), ("Sodium Benzoate", "0.5"))])
