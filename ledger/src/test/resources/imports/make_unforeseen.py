"""Makes the sheets in unforeseen/: shapes that the reader was not written for, set down before it was tried on them."""
import json, os
from openpyxl import Workbook
import make_corpus as m

m.OUT = "unforeseen"
os.makedirs(m.OUT, exist_ok=True)


def f(title, *lines):
    return {"title": title, "lines": [dict(zip(("name", "amount", "phase"), l)) for l in lines]}


def csv(name, body, formulas, encoding="utf-8"):
    with open(os.path.join(m.OUT, name), "wb") as out:
        out.write(body.lstrip("\n").replace("\n", "\r\n").encode(encoding))
    m.say(name, formulas, maker="by hand")


def xlsx(name, rows, formulas, office=True, change=None):
    book = Workbook(); ws = m.sheet(book, "Sheet1", rows, True)
    if change: change(ws)
    m.save(book, name, formulas, office=office)


csv("u01-french-subtotals.csv", """
Crème mains hiver;;;;
Lot d'essai du 3 mars;;;;
;;;;
Matières premières;Nom INCI;Fonction;% m/m;Pour 250 g
PHASE AQUEUSE (A);;;;
Eau purifiée;Aqua;solvant;qsp 100;
Glycérine végétale;Glycerin;humectant;4,00;10,0
Gomme xanthane;Xanthan Gum;épaississant;0,30;0,75
PHASE HUILEUSE (B);;;;
Beurre de karité;Butyrospermum Parkii Butter;émollient;6,50;16,25
Huile de tournesol;Helianthus Annuus Seed Oil;émollient;9,00;22,5
Sous-total phase B;;;15,50;38,75
PHASE C;;;;
Parfum;Parfum;;0,25;0,625
Conservateur;Phenoxyethanol;;0,90;2,25
TOTAL;;;100,00;250
""", [f("Crème mains hiver", ("Eau purifiée", "rest", "PHASE AQUEUSE (A)"), ("Glycérine végétale", "4", "PHASE AQUEUSE (A)"), ("Gomme xanthane", "0.3", "PHASE AQUEUSE (A)"),
        ("Beurre de karité", "6.5", "PHASE HUILEUSE (B)"), ("Huile de tournesol", "9", "PHASE HUILEUSE (B)"), ("Parfum", "0.25", "PHASE C"), ("Conservateur", "0.9", "PHASE C"))], "cp1252")

csv("u02-unit-column.csv", """
Item,Qty,UoM,Supplier code
Water,1.36,kg,W1
Propanediol,100,g,P2
Decyl glucoside,500,g,D9
Sodium benzoate,10000,mg,S1
Citric acid,30,g,C1
Total,2,kg,
""", [f("u02-unit-column", ("Water", "68"), ("Propanediol", "5"), ("Decyl glucoside", "25"), ("Sodium benzoate", "0.5"), ("Citric acid", "1.5"))])

csv("u03-spanish-late-header.csv", """
Taller ejemplo;;;;;
;;;;;
Producto:;;Gel de ducha;;;
Fecha:;;14/02/2025;;;
Versión:;;3,1;;;
;;;;;
Observaciones: probar con menos sal;;;;;
;;;;;
Fase;;Ingrediente;;Cantidad (%);Notas
A;;Agua desmineralizada (1);;c.s.p. 100;
;;Glicerina (2);;3,5;vegetal
;;Goma xantana;;0,25;
B;;Decyl Glucoside;;12;
;;Cocamidopropyl Betaine;;8,75;
C;;Ácido cítrico;;c.s. pH 5,5;
;;Sodium Benzoate;;0,5;
;;;;;
(1) hervida y fría;;;;;
(2) de colza;;;;;
""", [f("Gel de ducha", ("Agua desmineralizada", "rest", "Phase A"), ("Glicerina", "3.5", "Phase A"), ("Goma xantana", "0.25", "Phase A"), ("Decyl Glucoside", "12", "Phase B"),
        ("Cocamidopropyl Betaine", "8.75", "Phase B"), ("Ácido cítrico", "ph", "Phase C"), ("Sodium Benzoate", "0.5", "Phase C"))])

xlsx("u04-phase-as-heading.xlsx", [["Winter balm"], [], ["Phase A", "%", "g"], ["Beeswax", 20, 40], ["Sunflower oil", 55, 110], ["Shea butter", 23.5, 47], ["Phase B", "%", "g"],
                                   ["Vitamin E", 0.5, 1], ["Lavender oil", 1, 2], ["Total", 100, 200]],
     [f("Winter balm", ("Beeswax", "20", "Phase A"), ("Sunflower oil", "55", "Phase A"), ("Shea butter", "23.5", "Phase A"), ("Vitamin E", "0.5", "Phase B"), ("Lavender oil", "1", "Phase B"))])

csv("u05-both-in-one-cell.csv", """
Ingredient;Amount
Aqua;70 % (140 g)
Glycerin;5 % (10 g)
Helianthus Annuus Seed Oil;20 % (40 g)
Cetearyl Alcohol;4 % (8 g)
Phenoxyethanol;1 % (2 g)
""", [f("u05-both-in-one-cell", ("Aqua", "70"), ("Glycerin", "5"), ("Helianthus Annuus Seed Oil", "20"), ("Cetearyl Alcohol", "4"), ("Phenoxyethanol", "1"))])

xlsx("u06-column-per-phase.xlsx", [["Ingredient", "Water phase %", "Oil phase %", "Cool down %"], ["Water", 72], ["Glycerin", 3], ["Xanthan Gum", 0.4], ["Sunflower oil", None, 18], ["Cetearyl Alcohol", None, 5.1], ["Phenoxyethanol", None, None, 1], ["Parfum", None, None, 0.5]],
     [f("u06-column-per-phase", ("Water", "72", "Water phase"), ("Glycerin", "3", "Water phase"), ("Xanthan Gum", "0.4", "Water phase"), ("Sunflower oil", "18", "Oil phase"), ("Cetearyl Alcohol", "5.1", "Oil phase"), ("Phenoxyethanol", "1", "Cool down"), ("Parfum", "0.5", "Cool down"))])

csv("u07-amount-first.csv", """
%;g;Rohstoff;Phase
68,5;685,00;Wasser dest.;1
4;40,00;Glycerin 86 %;1
0,5;5,00;Xanthan;1
20;200,00;Mandelöl;2
5;50,00;Emulsan-Ersatz;2
1,5;15,00;Cetylalkohol;2
0,5;5,00;Milchsäure 80 %;3
100;1.000,00;Gesamt;
""", [f("u07-amount-first", ("Wasser dest.", "68.5", "Phase 1"), ("Glycerin 86 %", "4", "Phase 1"), ("Xanthan", "0.5", "Phase 1"), ("Mandelöl", "20", "Phase 2"), ("Emulsan-Ersatz", "5", "Phase 2"), ("Cetylalkohol", "1.5", "Phase 2"), ("Milchsäure 80 %", "0.5", "Phase 3"))], "cp1252")

csv("u08-no-heading.txt", """
Toner 2024 version 7
Aqua 82.3
Lactic Acid 80 % 2.5
Glycerin 86 % 10
Polysorbate 20 3
Sodium PCA 1.5
PEG-8 0.7
""", [f("Toner 2024 version 7", ("Aqua", "82.3"), ("Lactic Acid 80 %", "2.5"), ("Glycerin 86 %", "10"), ("Polysorbate 20", "3"), ("Sodium PCA", "1.5"), ("PEG-8", "0.7"))])

csv("u09-min-max-target.csv", """
Raw material,Min %,Max %,Target %,Function
Aqua,60,80,71.6,solvent
Glycerin,2,8,5,humectant
Helianthus Annuus Seed Oil,10,25,18,emollient
Cetearyl Alcohol,3,6,4.5,thickener
Phenoxyethanol,0.5,1,0.9,preservative
""", [f("u09-min-max-target", ("Aqua", "71.6"), ("Glycerin", "5"), ("Helianthus Annuus Seed Oil", "18"), ("Cetearyl Alcohol", "4.5"), ("Phenoxyethanol", "0.9"))])

csv("u10-recipe-card.txt", """
LAVENDER HAND LOTION

Ingredients (makes 500 g):
350 g distilled water
25 g glycerine
90 g sweet almond oil
25 g emulsifying wax
5 g phenoxyethanol
5 g lavender oil

Directions:
Heat the water to 75 degrees. Melt the oil with the wax.
Stir for 10 minutes. Let it cool to 40 degrees, then add the rest.
""", [f("LAVENDER HAND LOTION", ("distilled water", "70"), ("glycerine", "5"), ("sweet almond oil", "18"), ("emulsifying wax", "5"), ("phenoxyethanol", "1"), ("lavender oil", "1"))])

csv("u11-total-on-top.csv", """
Formula;Shampoo clear
Total;100
Sodium Laureth Sulfate;30
Cocamidopropyl Betaine;10
Aqua;57,2
Sodium Chloride;1,8
Sodium Benzoate;0,5
Citric Acid;0,5
""", [f("Shampoo clear", ("Sodium Laureth Sulfate", "30"), ("Cocamidopropyl Betaine", "10"), ("Aqua", "57.2"), ("Sodium Chloride", "1.8"), ("Sodium Benzoate", "0.5"), ("Citric Acid", "0.5"))])

csv("u12-trace-in-ppm.csv", """
INCI|Amount
Aqua|89.9975 %
Propanediol|10 %
CI 42090|25 ppm
""", [f("u12-trace-in-ppm", ("Aqua", "89.9975"), ("Propanediol", "10"), ("CI 42090", "0.0025"))])

xlsx("u13-two-products-touching.xlsx", [["Day cream", None, "Night cream", None], ["Ingredient", "%", "Ingredient", "%"], ["Water", 80, "Water", 70], ["Glycerin", 5, "Shea butter", 15], ["Squalane", 14, "Squalane", 14], ["Phenoxyethanol", 1, "Phenoxyethanol", 1]],
     [f("Day cream", ("Water", "80"), ("Glycerin", "5"), ("Squalane", "14"), ("Phenoxyethanol", "1")), f("Night cream", ("Water", "70"), ("Shea butter", "15"), ("Squalane", "14"), ("Phenoxyethanol", "1"))])

csv("u14-numbered-with-steps.csv", """
No.,Phase,Raw Material,Wt%,Batch 1 (800 g),Procedure
1,A,Deionized Water,76.25,610,"Heat to 70 °C"
2,,Disodium EDTA,0.10,0.8,
3,,Glycerin,4.00,32,
4,B,Cetearyl Alcohol,5.00,40,"Melt, 75 °C"
5,,Isopropyl Myristate,13.35,106.8,
6,C,"Phenoxyethanol, Ethylhexylglycerin",1.00,8,"Below 40 °C"
7,,Fragrance,0.30,2.4,
,,,100.00,800,
Final pH: 5.5 - 6.0,,,,,
Viscosity: 12000 cP,,,,,
""", [f("u14-numbered-with-steps", ("Deionized Water", "76.25", "Phase A"), ("Disodium EDTA", "0.1", "Phase A"), ("Glycerin", "4", "Phase A"), ("Cetearyl Alcohol", "5", "Phase B"), ("Isopropyl Myristate", "13.35", "Phase B"),
        ("Phenoxyethanol, Ethylhexylglycerin", "1", "Phase C"), ("Fragrance", "0.3", "Phase C"))])

csv("u15-total-is-wrong.csv", """
Ingredient,%
Aqua,80
Glycerin,5
Squalane,10
Phenoxyethanol,1
Total,100
""", [f("u15-total-is-wrong", ("Aqua", "80"), ("Glycerin", "5"), ("Squalane", "10"), ("Phenoxyethanol", "1"))])

csv("u16-comma-and-comma.csv", """
Ingredient,%
Aqua,71,5
Glycerin,5
Squalane,22,5
Phenoxyethanol,1
""", [f("u16-comma-and-comma", ("Aqua", "71.5"), ("Glycerin", "5"), ("Squalane", "22.5"), ("Phenoxyethanol", "1"))])
