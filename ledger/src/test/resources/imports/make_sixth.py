"""Makes the sheets in sixth/: shapes set down after the reader was mended for those in fifth/ and before it was tried on these."""
import os
import make_corpus as m
import make_unforeseen as u

m.OUT = "sixth"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx

csv("z01-finnish.csv", """
Käsivoide;;;
Vaihe;Raaka-aine;Määrä g;%
A;Vesi;140;70
A;Glyseroli;10;5
B;Rypsiöljy;30;15
B;Emulgointiaine;12;6
C;Säilöntäaine;2;1
C;Tuoksu;1;0,5
C;Pantenoli;5;2,5
Yhteensä;;200;100
""", [f("Käsivoide", ("Vesi", "70", "Phase A"), ("Glyseroli", "5", "Phase A"), ("Rypsiöljy", "15", "Phase B"), ("Emulgointiaine", "6", "Phase B"), ("Säilöntäaine", "1", "Phase C"), ("Tuoksu", "0.5", "Phase C"), ("Pantenoli", "2.5", "Phase C"))])

csv("z02-cost-sheet.csv", """
Calculation: Bath oil;;;;;
Raw material;Price/kg;Share;Cost/kg;Batch 20 kg;Order
Sunflower oil;3,20;64,0 %;2,05;12,80;
Rapeseed oil;2,90;20,0 %;0,58;4,00;x
Polysorbate 85;7,50;14,0 %;1,05;2,80;
Perfume;60,00;1,5 %;0,90;0,30;x
Tocopherol;22,00;0,5 %;0,11;0,10;
Sum;;100,0 %;4,69;20,00;
Bottle 200 ml;;;0,35;;
Label;;;0,08;;
""", [f("Bath oil", ("Sunflower oil", "64"), ("Rapeseed oil", "20"), ("Polysorbate 85", "14"), ("Perfume", "1.5"), ("Tocopherol", "0.5"))])


def z03(ws):
    ws.merge_cells("A3:A6"); ws.merge_cells("A7:A9"); ws.merge_cells("A10:A12")
    ws.row_dimensions[13].hidden = True


xlsx("z03-stage-numbers.xlsx", [
    ["Trial 14 - Sensitive cream", None, None, None, None],
    ["Stage", "Chemical", "CAS", "% by mass", "actual / g"],
    [1, "Water", "7732-18-5", 71.2, 106.8],
    [None, "Propanediol", "504-63-2", 4, 6.1],
    [None, "Xanthan gum", "11138-66-2", 0.3, 0.45],
    [None, "Allantoin", "97-59-6", 0.2, 0.3],
    [2, "Squalane", "111-01-3", 10, 15],
    [None, "Caprylic/capric triglyceride", "73398-61-5", 8, 12],
    [None, "Glyceryl stearate citrate", "91744-38-6", 5, 7.5],
    [3, "Phenoxyethanol", "122-99-6", 0.8, 1.2],
    [None, "Bisabolol", "23089-26-1", 0.4, 0.6],
    [None, "Citric acid", "77-92-9", 0.1, 0.15],
    [None, "old: fragrance", None, 0.2, None],
    [None, None, None, 100, 150.1],
], [f("Trial 14 - Sensitive cream", ("Water", "71.2", "Phase 1"), ("Propanediol", "4", "Phase 1"), ("Xanthan gum", "0.3", "Phase 1"), ("Allantoin", "0.2", "Phase 1"), ("Squalane", "10", "Phase 2"),
      ("Caprylic/capric triglyceride", "8", "Phase 2"), ("Glyceryl stearate citrate", "5", "Phase 2"), ("Phenoxyethanol", "0.8", "Phase 3"), ("Bisabolol", "0.4", "Phase 3"), ("Citric acid", "0.1", "Phase 3"))], office=False, change=z03)

csv("z04-notes-app.txt", """
Reinigungsmilch (200 g)

Wasserphase
- 130 g Wasser
- 10 g Glycerin
- 0,6 g Xanthan

Fettphase
- 40 g Sonnenblumenöl
- 12 g Emulgator
- 5,4 g Cetylalkohol

Wirkstoffphase
- 2 g Konservierer (1 %)
- 10 Tropfen Lavendelöl

Fettphase auf 70 Grad, 3 Minuten rühren.
""", [f("Reinigungsmilch (200 g)", ("Wasser", "65", "Wasserphase"), ("Glycerin", "5", "Wasserphase"), ("Xanthan", "0.3", "Wasserphase"), ("Sonnenblumenöl", "20", "Fettphase"), ("Emulgator", "6", "Fettphase"),
        ("Cetylalkohol", "2.7", "Fettphase"), ("Konservierer (1 %)", "1", "Wirkstoffphase"), ("Lavendelöl", "unknown", "Wirkstoffphase"))])

csv("z05-two-below-no-title.csv", """
Ingredient,%
Water,85
Glycerin,10
Panthenol,4
Preservative,1

Ingredient,%
Water,60
Rose water,29
Glycerin,10
Preservative,1
""", [f("z05-two-below-no-title", ("Water", "85"), ("Glycerin", "10"), ("Panthenol", "4"), ("Preservative", "1")),
      f("z05-two-below-no-title", ("Water", "60"), ("Rose water", "29"), ("Glycerin", "10"), ("Preservative", "1"))])

csv("z06-french-recipe-table.csv", """
Nom de la recette :;Baume après-rasage;;
Date :;14/02/2023;;
Quantité à fabriquer :;250;g;
;;;
Phase;Matière;%;g
A (75°C);Eau de source;qsp;
;Glycérine;3%;7,5
B (75°C);Huile de noisette;15%;37,5
;Cire n°3;6%;15
;Acide stéarique;2%;5
C (< 40°C);Cosgard;0,6%;1,5
;HE de lavande;0,2%;0,5
;Menthol;0,2%;0,5
""".replace("Cosgard", "Conservateur"), [f("Baume après-rasage", ("Eau de source", "rest", "A"), ("Glycérine", "3", "A"), ("Huile de noisette", "15", "B"), ("Cire n°3", "6", "B"), ("Acide stéarique", "2", "B"),
        ("Conservateur", "0.6", "C"), ("HE de lavande", "0.2", "C"), ("Menthol", "0.2", "C"))], "cp1252")

csv("z07-lye-free-bar-parts.csv", """
,Parts by weight,,
Noodles,80,SCI based,
Stearic acid,8,,
Water,6.5,,evaporates about 2
Kaolin,3,,
Scent,1.5,,
Titanium dioxide,0.6,,
Tetrasodium EDTA,0.4,,
""", [f("z07-lye-free-bar-parts", ("Noodles", "80"), ("Stearic acid", "8"), ("Water", "6.5"), ("Kaolin", "3"), ("Scent", "1.5"), ("Titanium dioxide", "0.6"), ("Tetrasodium EDTA", "0.4"))])

csv("z08-inventory-not-formula.csv", """
Naam;INCI;Leverancier;Prijs per kg;Voorraad (g);Lotnummer;Houdbaar tot
Glycerine;Glycerin;A;4,50;800;G-11;01-05-2026
Betaine;Cocamidopropyl Betaine;B;5,20;1500;B-09;01-09-2025
Sheaboter;Butyrospermum Parkii Butter;A;14,00;450;S-02;15-01-2026
Kaliumsorbaat;Potassium Sorbate;C;11,80;90;K-33;30-06-2027
""", None)
m.say("z08-inventory-not-formula.csv", None, [{"name": n, "paid": p, "for": "1000", "stock": s, "lot": l} for n, p, s, l in
      (("Glycerine", "4.50", "800", "G-11"), ("Betaine", "5.20", "1500", "B-09"), ("Sheaboter", "14.00", "450", "S-02"), ("Kaliumsorbaat", "11.80", "90", "K-33"))], "by hand")

xlsx("z09-repeat-headings-each-phase.xlsx", [
    ["Hair mask 3", None, None],
    ["Phase 1", "%", "g / 300"],
    ["Water", 78, 234],
    ["Glycerin", 3, 9],
    ["Phase 2", "%", "g / 300"],
    ["Cetyl alcohol", 7, 21],
    ["Behentrimonium methosulfate", 5, 15],
    ["Argan oil", 5, 15],
    ["Phase 3", "%", "g / 300"],
    ["Preservative", 1, 3],
    ["Hydrolysed oats", 1, 3],
    ["sum", 100, 300],
], [f("Hair mask 3", ("Water", "78", "Phase 1"), ("Glycerin", "3", "Phase 1"), ("Cetyl alcohol", "7", "Phase 2"), ("Behentrimonium methosulfate", "5", "Phase 2"), ("Argan oil", "5", "Phase 2"), ("Preservative", "1", "Phase 3"), ("Hydrolysed oats", "1", "Phase 3"))])

csv("z10-target-band.csv", """
Specification shampoo S-4;;;;;
Component;Min %;Target %;Max %;Weighed;Lot
Water;55,0;59,4;62,0;118,8;
Sodium laureth sulfate 70 %;14,0;15,0;16,0;30,0;881
Cocamidopropyl betaine;18,0;20,0;22,0;40,1;902
PEG-7 glyceryl cocoate;1,0;1,5;2,0;3,0;114
Sodium chloride;1,0;2,0;3,0;4,0;
Citric acid;0,1;0,2;0,4;0,4;
Sodium benzoate;0,4;0,5;0,5;1,0;220
Perfume;0,3;0,4;0,5;0,8;77
Polyquaternium-10;0,5;1,0;1,0;2,0;15
""", [f("Specification shampoo S-4", ("Water", "59.4"), ("Sodium laureth sulfate 70 %", "15"), ("Cocamidopropyl betaine", "20"), ("PEG-7 glyceryl cocoate", "1.5"), ("Sodium chloride", "2"), ("Citric acid", "0.2"), ("Sodium benzoate", "0.5"), ("Perfume", "0.4"), ("Polyquaternium-10", "1"))])

csv("z11-wrong-fill-down.csv", """
Body scrub;;
What;g;%
Sugar;300;60
Coconut oil;125;25
Shea butter;50;15
Kaolin;20;4
Vitamin E;5;1
;500;100
""", [f("Body scrub", ("Sugar", "60"), ("Coconut oil", "25"), ("Shea butter", "10"), ("Kaolin", "4"), ("Vitamin E", "1"))])

csv("z12-blank-first-columns.csv", """
;;;;
;;Peeling gel;;
;;Naam;g op 100;
;;Water;;
;;Gel (zie recept 4);55;zelf gemaakt
;;Glycerine;8;
;;Melkzuur 80%;5;pH 3,8
;;Alcohol;2;
;;Water extra;30;
;;;100;
""", [f("Peeling gel", ("Water", "unknown"), ("Gel (zie recept 4)", "55"), ("Glycerine", "8"), ("Melkzuur 80%", "5"), ("Alcohol", "2"), ("Water extra", "30"))])
