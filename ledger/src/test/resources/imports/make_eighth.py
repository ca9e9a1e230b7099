"""Makes the sheets in eighth/: shapes set down last, before the reader was tried on them."""
import os
import make_corpus as m
import make_unforeseen as u

m.OUT = "eighth"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx

csv("b01-norwegian.csv", """
Leppepomade;;;
Råstoff;Andel %;Gram (50 g);Kommentar
Bivoks;22;11;
Kokosolje;30;15;
Sheasmør;25;12,5;smeltes sist
Lakserolje;20;10;
Vitamin E;1;0,5;
Peppermynteolje;2;1;maks 2 %
Sum;100;50;
""", [f("Leppepomade", ("Bivoks", "22"), ("Kokosolje", "30"), ("Sheasmør", "25"), ("Lakserolje", "20"), ("Vitamin E", "1"), ("Peppermynteolje", "2"))])


def b02(ws):
    for r in (4, 8, 12): ws.merge_cells(start_row=r, start_column=1, end_row=r, end_column=6)


xlsx("b02-lab-book-page.xlsx", [
    ["Labor: Projekt Handcreme", None, None, None, "Blatt 12", None],
    ["Versuch 12b", None, None, None, "02.05.2024", None],
    ["Pos", "Rohstoff", "INCI", "Soll %", "Soll g", "Ist g"],
    ["Phase A (Wasser)"],
    [1, "Wasser", "Aqua", 67.5, 135, 135.2],
    [2, "Glycerin", "Glycerin", 5, 10, 10.1],
    [3, "Xanthan", "Xanthan Gum", 0.3, 0.6, 0.6],
    ["Phase B (Fett)"],
    [4, "Mandelöl", "Prunus Amygdalus Dulcis Oil", 15, 30, 30],
    [5, "Emulgator", "Glyceryl Stearate Citrate", 6, 12, 12.1],
    [6, "Cetylalkohol", "Cetyl Alcohol", 4, 8, 8],
    ["Phase C (kalt)"],
    [7, "Konservierung", "Phenoxyethanol", 1, 2, 2],
    [8, "Parfüm", "Parfum", 0.2, 0.4, 0.4],
    [9, "Panthenol", "Panthenol", 1, 2, 2],
    [None, "Summe", None, 100, 200, 200.4],
    [None, "pH", None, 5.6, None, None],
    [None, "Viskosität mPas", None, 24000, None, None],
], [f("Versuch 12b", ("Wasser", "67.5", "Phase A (Wasser)"), ("Glycerin", "5", "Phase A (Wasser)"), ("Xanthan", "0.3", "Phase A (Wasser)"), ("Mandelöl", "15", "Phase B (Fett)"), ("Emulgator", "6", "Phase B (Fett)"),
      ("Cetylalkohol", "4", "Phase B (Fett)"), ("Konservierung", "1", "Phase C (kalt)"), ("Parfüm", "0.2", "Phase C (kalt)"), ("Panthenol", "1", "Phase C (kalt)"))], change=b02)

csv("b03-qty-and-unit-in-name.csv", """
"Bath bombs, 12 pieces"
Item,Amount
Baking soda (g),500
Citric acid (g),250
Corn starch (g),125
Epsom salt (g),100
Almond oil (g),20
Fragrance oil (g),5
""", [f("Bath bombs, 12 pieces", ("Baking soda (g)", "50"), ("Citric acid (g)", "25"), ("Corn starch (g)", "12.5"), ("Epsom salt (g)", "10"), ("Almond oil (g)", "2"), ("Fragrance oil (g)", "0.5"))])

csv("b04-spanish-two-amounts.csv", """
Bálsamo labial;;;;
Ingrediente;Porcentaje;Para 30 g;Para 100 g;Precio €
Cera de abejas;25%;7,5;25;0,30
Manteca de karité;30%;9;30;0,45
Aceite de ricino;30%;9;30;0,20
Aceite de jojoba;14%;4,2;14;0,60
Vitamina E;1%;0,3;1;0,10
TOTAL;100%;30;100;1,65
""", [f("Bálsamo labial", ("Cera de abejas", "25"), ("Manteca de karité", "30"), ("Aceite de ricino", "30"), ("Aceite de jojoba", "14"), ("Vitamina E", "1"))])

csv("b05-dashes-between.txt", """
Aftershave gel - batch of 500g

PHASE 1
Water - 425g
Glycerin - 20g
Carbomer - 2g

PHASE 2
Witch hazel extract - 40g
Polysorbate 20 - 5g
Perfume - 3g
Preservative - 5g

Neutralise to pH 6 with NaOH 10%, roughly 12 drops
""", [f("Aftershave gel - batch of 500g", ("Water", "85", "PHASE 1"), ("Glycerin", "4", "PHASE 1"), ("Carbomer", "0.4", "PHASE 1"), ("Witch hazel extract", "8", "PHASE 2"), ("Polysorbate 20", "1", "PHASE 2"), ("Perfume", "0.6", "PHASE 2"), ("Preservative", "1", "PHASE 2"))])

xlsx("b06-phase-after-amount.xlsx", [
    ["Hair oil serum", None, None, None],
    [None, None, None, None],
    ["%", "Ingredient", "Ph", "Use"],
    [45, "Isododecane", 1, "carrier"],
    [30, "Dimethicone", 1, "slip"],
    [15, "Argan oil", 2, "care"],
    [8, "Squalane", 2, "care"],
    [1, "Tocopherol", 2, "antioxidant"],
    [1, "Parfum", 3, None],
], [f("Hair oil serum", ("Isododecane", "45", "Phase 1"), ("Dimethicone", "30", "Phase 1"), ("Argan oil", "15", "Phase 2"), ("Squalane", "8", "Phase 2"), ("Tocopherol", "1", "Phase 2"), ("Parfum", "1", "Phase 3"))])

csv("b07-french-carte.csv", """
FICHE DE FABRICATION;;;;;
Produit;Lait corps;;N° lot;LC-07;
Taille de lot;2;kg;;;
;;;;;
Phase;N°;Matière première;% théorique;Pesée théorique (g);Pesée réelle (g)
A;1;Eau;76,3;1526;
A;2;Glycérine;3;60;
B;3;Huile de tournesol;12;240;
B;4;Emulsifiant;5;100;
B;5;Alcool cétylique;2;40;
C;6;Conservateur;1;20;
C;7;Parfum;0,4;8;
C;8;Allantoïne;0,3;6;
;;Total;100;2000;
Visa :;;;;;
""", [f("Lait corps", ("Eau", "76.3", "Phase A"), ("Glycérine", "3", "Phase A"), ("Huile de tournesol", "12", "Phase B"), ("Emulsifiant", "5", "Phase B"), ("Alcool cétylique", "2", "Phase B"), ("Conservateur", "1", "Phase C"), ("Parfum", "0.4", "Phase C"), ("Allantoïne", "0.3", "Phase C"))], "cp1252")

csv("b08-blank-amounts-and-question-marks.csv", """
Experimental toner,,
ingredient,%,idea
Hydrosol,60,
Water,?,fill up
Glycerin,3-4,
Lactic acid,5?,check pH
Sodium lactate,,buffer
Preservative,1,
""", [f("Experimental toner", ("Hydrosol", "60"), ("Water", "unknown"), ("Glycerin", "3.5"), ("Lactic acid", "5"), ("Sodium lactate", "unknown"), ("Preservative", "1"))])

csv("b09-dotted-sections.csv", """
Conditioner bar v2;;
;;
1 - Melt;;
Cetearyl alcohol;30;
BTMS;35;
Cocoa butter;15;
2 - Add;;
Jojoba oil;5;
Inulin;7;
3 - Finish;;
Protein;4;
Scent;3;
Preservative;1;
;;
= ;100;
""", [f("Conditioner bar v2", ("Cetearyl alcohol", "30", "1 - Melt"), ("BTMS", "35", "1 - Melt"), ("Cocoa butter", "15", "1 - Melt"), ("Jojoba oil", "5", "2 - Add"), ("Inulin", "7", "2 - Add"), ("Protein", "4", "3 - Finish"), ("Scent", "3", "3 - Finish"), ("Preservative", "1", "3 - Finish"))])

csv("b10-italian-etti.csv", """
Sapone liquido;;
Componenti;Dose g/L;INCI
Acqua;585;Aqua
SLES 27%;250;Sodium Laureth Sulfate
Betaina;130;Cocamidopropyl Betaine
Sale;20;Sodium Chloride
Conservante;8;Sodium Benzoate
Acido citrico;3;Citric Acid
Profumo;4;Parfum
""", [f("Sapone liquido", ("Acqua", "58.5"), ("SLES 27%", "25"), ("Betaina", "13"), ("Sale", "2"), ("Conservante", "0.8"), ("Acido citrico", "0.3"), ("Profumo", "0.4"))])
