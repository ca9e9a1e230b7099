"""Makes the sheets in fourth/: shapes set down after the reader was mended for those in third/ and before it was tried on these."""
import os
from openpyxl.comments import Comment
import make_corpus as m
import make_unforeseen as u

m.OUT = "fourth"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx

csv("x01-polish.csv", """
Krem do rąk;;;;
Faza;Surowiec;INCI;Ilość %;Ilość na 200 g
A;Woda destylowana;Aqua;do 100;146,4
A;Gliceryna;Glycerin;4,0;8,0
B;Masło shea;Butyrospermum Parkii Butter;8,0;16,0
B;Olej ze słodkich migdałów;Prunus Amygdalus Dulcis Oil;8,0;16,0
B;Emulgator;Glyceryl Stearate Citrate;5,0;10,0
C;Konserwant;Phenoxyethanol;0,9;1,8
C;Olejek zapachowy;Parfum;0,5;1,0
C;Witamina E;Tocopherol;0,4;0,8
Razem;;;100,0;200,0
""", [f("Krem do rąk", ("Woda destylowana", "rest", "Phase A"), ("Gliceryna", "4", "Phase A"), ("Masło shea", "8", "Phase B"), ("Olej ze słodkich migdałów", "8", "Phase B"), ("Emulgator", "5", "Phase B"),
        ("Konserwant", "0.9", "Phase C"), ("Olejek zapachowy", "0.5", "Phase C"), ("Witamina E", "0.4", "Phase C"))])

xlsx("x02-grams-only-with-yield.xlsx", [
    [None, "Cold cream, old style"],
    [None, "Needed for 12 jars", None, 12],
    [None, "per jar (g)", None, 50],
    [None, None, None, None],
    [None, "What", None, "How much (g)", "Done"],
    [None, "Almond oil", None, 336, "x"],
    [None, "Beeswax, white", None, 84, "x"],
    [None, "Rose water", None, 170, None],
    [None, "Borax", None, 6, None],
    [None, "Rose oil", None, 4, None],
    [None, "All together", None, 600, None],
    [None, "Loss about 4 %", None, 24, None],
    [None, "Melt the wax in the oil at 70 °C; both must be equally warm.", None, None, None],
], [f("Cold cream, old style", ("Almond oil", "56"), ("Beeswax, white", "14"), ("Rose water", "28.3333"), ("Borax", "1"), ("Rose oil", "0.6667"))])

csv("x03-spaces-and-dots.txt", """
SHAMPOO BAR (makes 300 g)
=========================
Sodium cocoyl isethionate ........ 165 g
Cocamidopropyl betaine ........... 45 g
Cetyl alcohol .................... 30 g
Cocoa butter ..................... 24 g
Stearic acid ..................... 18 g
Panthenol ........................ 9 g
Preservative ..................... 3 g
Essential oil .................... 6 g
-----------------------------------
                                   300 g

1. Melt at 75 C for 20 min.
2. Press into moulds of 60 g.
""", [f("SHAMPOO BAR (makes 300 g)", ("Sodium cocoyl isethionate", "55"), ("Cocamidopropyl betaine", "15"), ("Cetyl alcohol", "10"), ("Cocoa butter", "8"), ("Stearic acid", "6"), ("Panthenol", "3"), ("Preservative", "1"), ("Essential oil", "2"))])

csv("x04-french-three-batches.csv", """
Gel nettoyant;;;;;
Ingrédients;INCI;Fournisseur;qsp 100 g;qsp 500 g;qsp 1 kg
Phase A : eau;;;;;
Eau;Aqua;;58,8;294;588
Gomme guar;Guar Hydroxypropyltrimonium Chloride;F1;0,2;1;2
Phase B : tensioactifs;;;;;
Base moussante;Decyl Glucoside;F2;25;125;250
Bétaïne;Cocamidopropyl Betaine;F2;15;75;150
Phase C : ajouts;;;;;
Sel fin;Sodium Chloride;;0,5;2,5;5
Conservateur;Sodium Benzoate, Potassium Sorbate;F3;0,5;2,5;5
Acide lactique 80%;Lactic Acid;F1;qs pH 5;qs pH 5;qs pH 5
""", [f("Gel nettoyant", ("Eau", "58.8", "Phase A : eau"), ("Gomme guar", "0.2", "Phase A : eau"), ("Base moussante", "25", "Phase B : tensioactifs"), ("Bétaïne", "15", "Phase B : tensioactifs"),
        ("Sel fin", "0.5", "Phase C : ajouts"), ("Conservateur", "0.5", "Phase C : ajouts"), ("Acide lactique 80%", "ph", "Phase C : ajouts"))])


def x05(ws):
    for r in range(3, 13): ws.cell(r, 3).number_format = "0.00%"
    ws["B4"].comment = Comment("maybe 5 %", "maker")
    ws.merge_cells("A3:A5"); ws.merge_cells("A6:A8"); ws.merge_cells("A9:A11")


xlsx("x05-fractions-formula-cells.xlsx", [
    ["Batch (g)", 750, None, None, None],
    ["", "Ingredient", "Share", "Weigh", "Cost"],
    ["Aqueous", "Water", 0.7, "=C3*$B$1", 0.0],
    [None, "Glycerin", 0.05, "=C4*$B$1", 0.15],
    [None, "Xanthan gum", 0.003, "=C5*$B$1", 0.06],
    ["Oily", "Sunflower oil", 0.147, "=C6*$B$1", 0.4],
    [None, "Glyceryl stearate", 0.06, "=C7*$B$1", 0.5],
    [None, "Cetyl alcohol", 0.025, "=C8*$B$1", 0.2],
    ["Last", "Preservative", 0.01, "=C9*$B$1", 0.2],
    [None, "Fragrance", 0.003, "=C10*$B$1", 0.3],
    [None, "Vitamin E", 0.002, "=C11*$B$1", 0.1],
    [None, "check", "=SUM(C3:C11)", "=SUM(D3:D11)", "=SUM(E3:E11)"],
], [f("x05-fractions-formula-cells", ("Water", "70", "Aqueous"), ("Glycerin", "5", "Aqueous"), ("Xanthan gum", "0.3", "Aqueous"), ("Sunflower oil", "14.7", "Oily"), ("Glyceryl stearate", "6", "Oily"),
      ("Cetyl alcohol", "2.5", "Oily"), ("Preservative", "1", "Last"), ("Fragrance", "0.3", "Last"), ("Vitamin E", "0.2", "Last"))], change=x05)

csv("x06-italian-per-mille.csv", """
Ricetta n. 22: Tonico alle rose;;;
;;;
Componente;Quantità;u.m.;Note
Acqua di rose;600;g;bio
Acqua depurata;360;ml;
Glicerina;25;g;
Sodio PCA;10;g;
Conservante;5;g;max 1 %
;1000;;
""", [f("Tonico alle rose", ("Acqua di rose", "60"), ("Acqua depurata", "unknown"), ("Glicerina", "2.5"), ("Sodio PCA", "1"), ("Conservante", "0.5"))])

csv("x07-two-names-and-stock.csv", """
Rezept,Duschgel Minze,,,,,
Pos.,Handelsname,INCI-Bezeichnung,Lieferant,% (m/m),Lagerbestand kg,EUR/kg
10,Wasser VE,Aqua,,"56,3",,
20,Tensid 1,Sodium Laureth Sulfate,L1,"25,0","40","2,10"
30,Tensid 2,Cocamidopropyl Betaine,L1,"14,0","25","1,95"
40,Salz,Sodium Chloride,L2,"2,5","100","0,40"
50,Parfümöl Minze,Parfum,L3,"0,8","1,5","48,00"
60,Konservierer,Phenoxyethanol,L4,"0,9","3","9,00"
70,Zitronensäure,Citric Acid,L2,"0,5","12","2,20"
,,,,"100,0",,
""", [f("Duschgel Minze", ("Wasser VE", "56.3"), ("Tensid 1", "25"), ("Tensid 2", "14"), ("Salz", "2.5"), ("Parfümöl Minze", "0.8"), ("Konservierer", "0.9"), ("Zitronensäure", "0.5"))])

csv("x08-log-of-batch.csv", """
Batch record 0042;;;;;
Product:;Foot balm;;;;
Step;Material;Lot;Target g;Weighed g;Initials
1;Water;W12;310,0;310,2;ab
2;Urea;U7;50,0;50,1;ab
3;Glycerin;G3;25,0;24,9;ab
4;Shea butter;S1;60,0;60,4;ab
5;Cetearyl alcohol;C9;30,0;30,0;ab
6;Glyceryl stearate;E4;20,0;20,0;ab
7;Preservative;P2;5,0;5,0;ab
;Sum;;500,0;500,6;
""", [f("Foot balm", ("Water", "62"), ("Urea", "10"), ("Glycerin", "5"), ("Shea butter", "12"), ("Cetearyl alcohol", "6"), ("Glyceryl stearate", "4"), ("Preservative", "1"))])

xlsx("x09-side-by-side-no-gap.xlsx", [
    ["Summer", None, "Winter", None],
    ["Oil", "g", "Oil", "g"],
    ["Jojoba oil", 40, "Avocado oil", 60],
    ["Squalane", 35, "Jojoba oil", 25],
    ["Grapeseed oil", 24, "Rosehip oil", 14],
    ["Vitamin E", 1, "Vitamin E", 1],
    ["Total", 100, "Total", 100],
], [f("Summer", ("Jojoba oil", "40"), ("Squalane", "35"), ("Grapeseed oil", "24"), ("Vitamin E", "1")),
    f("Winter", ("Avocado oil", "60"), ("Jojoba oil", "25"), ("Rosehip oil", "14"), ("Vitamin E", "1"))])

csv("x10-changed-amounts.csv", """
Deodorant stick;;;
Ingredient;was %;now %;change
Coconut oil;30;28;-2
Candelilla wax;12;13;+1
Shea butter;20;20;0
Arrowroot;25;24;-1
Zinc ricinoleate;8;10;+2
Triethyl citrate;5;5;0
""", [f("Deodorant stick, was %", ("Coconut oil", "30"), ("Candelilla wax", "12"), ("Shea butter", "20"), ("Arrowroot", "25"), ("Zinc ricinoleate", "8"), ("Triethyl citrate", "5")),
      f("Deodorant stick, now %", ("Coconut oil", "28"), ("Candelilla wax", "13"), ("Shea butter", "20"), ("Arrowroot", "24"), ("Zinc ricinoleate", "10"), ("Triethyl citrate", "5"))])

csv("x11-amount-with-remark.csv", """
Aftershave balm
Ingredient,Amount,Phase
Water,"75,0 (deionised)",water
Glycerin,"5,0",water
Carbomer,"0,3 sprinkle in",water
Almond oil,"12,0",oil
Emulsifier,"6,0",oil
Sodium hydroxide 10 %,"0,6 (pH 5,5)",end
Preservative,"0,9",end
Menthol,"0,2",end
""", [f("Aftershave balm", ("Water", "75", "Water"), ("Glycerin", "5", "Water"), ("Carbomer", "0.3", "Water"), ("Almond oil", "12", "Oil"), ("Emulsifier", "6", "Oil"), ("Sodium hydroxide 10 %", "ph", "End"), ("Preservative", "0.9", "End"), ("Menthol", "0.2", "End"))])

csv("x12-swedish-markdown.txt", """
## Ansiktskräm

|Fas|Råvara|Mängd (g)|%|
|:--|:--|--:|--:|
|A|Vatten|143,0|71,5|
|A|Glycerin|10,0|5,0|
|B|Rapsolja|30,0|15,0|
|B|Emulgeringsmedel|12,0|6,0|
|C|Konserveringsmedel|2,0|1,0|
|C|E-vitamin|1,0|0,5|
|C|Parfym|2,0|1,0|
|Summa||200,0|100,0|
""", [f("Ansiktskräm", ("Vatten", "71.5", "Phase A"), ("Glycerin", "5", "Phase A"), ("Rapsolja", "15", "Phase B"), ("Emulgeringsmedel", "6", "Phase B"), ("Konserveringsmedel", "1", "Phase C"), ("E-vitamin", "0.5", "Phase C"), ("Parfym", "1", "Phase C"))])
