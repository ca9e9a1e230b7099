"""Makes the sheets in fifth/: shapes set down after the reader was mended for those in fourth/ and before it was tried on these."""
import os
import make_corpus as m
import make_unforeseen as u

m.OUT = "fifth"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx

csv("y01-czech.csv", """
Sprchový gel;;;
Fáze;Složka;INCI;Množství (g)
A;Voda;Aqua;295
A;Glycerin;Glycerin;15
B;Tenzid;Coco-Glucoside;100
B;Betain;Cocamidopropyl Betaine;75
C;Sůl;Sodium Chloride;10
C;Konzervant;Sodium Benzoate;3
C;Kyselina citronová;Citric Acid;2
Celkem;;;500
Postup: fázi A zahřát na 40 °C, přidat B a míchat 15 min.;;;
""", [f("Sprchový gel", ("Voda", "59", "Phase A"), ("Glycerin", "3", "Phase A"), ("Tenzid", "20", "Phase B"), ("Betain", "15", "Phase B"), ("Sůl", "2", "Phase C"), ("Konzervant", "0.6", "Phase C"), ("Kyselina citronová", "0.4", "Phase C"))])

csv("y02-hungarian-no-known-words.csv", """
Kézkrém
Alapanyag;Mennyiség;Megjegyzés
Víz;70,5;forró
Glicerin;5;
Mandulaolaj;12;
Sheavaj;6;
Emulgeálószer;5;
Tartósítószer;1;40 fok alatt
Illóolaj;0,5;10 csepp
Összesen;100;
""", [f("Kézkrém", ("Víz", "70.5"), ("Glicerin", "5"), ("Mandulaolaj", "12"), ("Sheavaj", "6"), ("Emulgeálószer", "5"), ("Tartósítószer", "1"), ("Illóolaj", "0.5"))])


def y03(ws):
    ws.merge_cells("A1:E1"); ws.merge_cells("A2:E2"); ws.merge_cells("A4:E4"); ws.merge_cells("A8:E8"); ws.merge_cells("A12:E12")


xlsx("y03-phase-bands.xlsx", [
    ["Rich conditioner"],
    ["for 1.5 kg, made 4 times in 2024"],
    ["#", "Ingredient", "% w/w", "1.5 kg", "Supplier's code"],
    ["A  Water phase - heat to 75-80 °C"],
    [1, "Deionised water", 81.3, 1219.5, 1001],
    [2, "Glycerol", 4, 60, 1002],
    [3, "Hydroxyethylcellulose", 0.7, 10.5, 1044],
    ["B  Fatty phase - heat to 75-80 °C"],
    [4, "Cetearyl alcohol", 6, 90, 2003],
    [5, "Behentrimonium chloride 80 %", 3, 45, 2010],
    [6, "Isopropyl myristate", 3, 45, 2044],
    ["C  Below 40 °C"],
    [7, "Panthenol 75 %", 0.8, 12, 3001],
    [8, "Phenoxyethanol", 0.9, 13.5, 3005],
    [9, "Fragrance", 0.3, 4.5, 3100],
    [None, None, 100, 1500, None],
], [f("Rich conditioner", ("Deionised water", "81.3", "A  Water phase"), ("Glycerol", "4", "A  Water phase"), ("Hydroxyethylcellulose", "0.7", "A  Water phase"),
      ("Cetearyl alcohol", "6", "B  Fatty phase"), ("Behentrimonium chloride 80 %", "3", "B  Fatty phase"), ("Isopropyl myristate", "3", "B  Fatty phase"),
      ("Panthenol 75 %", "0.8", "C  Below 40 °C"), ("Phenoxyethanol", "0.9", "C  Below 40 °C"), ("Fragrance", "0.3", "C  Below 40 °C"))], office=False, change=y03)

csv("y04-email-paste.txt", """
Hi, here is the soap-free wash we talked about:

Water 62.4%
Glycerin 3%
SLSA powder 8%
Coco betaine (30% active) 20%
Xanthan gum 0.6%
Sodium lactate 60% solution: 5%
Broad spectrum preservative 1%

pH should be 5.5, mine was 5.7 after 24 h.
I made 400 g and used about 3 g per wash.
""", [f("y04-email-paste", ("Water", "62.4"), ("Glycerin", "3"), ("SLSA powder", "8"), ("Coco betaine (30% active)", "20"), ("Xanthan gum", "0.6"), ("Sodium lactate 60% solution", "5"), ("Broad spectrum preservative", "1"))])

csv("y05-decimal-mixture.csv", """
Lip gloss;;;
Ingredient;Grams;%;Cost per batch
Castor oil;27.5;55.00;0.41
Lanolin;7.5;15.00;0.30
Polyglyceryl-3 diisostearate;5.0;10.00;0.22
Jojoba oil;4.5;9.00;0.18
Candelilla wax;3.5;7.00;0.08
Mica;1.25;2.50;0.10
Vitamin E;0.5;1.00;0.04
Flavour;0.25;0.50;0.05
Totals;50;100;1.38
Packaging;5 tubes of 10 ml;;2.50
Labour;20 min;;6.00
""", [f("Lip gloss", ("Castor oil", "55"), ("Lanolin", "15"), ("Polyglyceryl-3 diisostearate", "10"), ("Jojoba oil", "9"), ("Candelilla wax", "7"), ("Mica", "2.5"), ("Vitamin E", "1"), ("Flavour", "0.5"))])

xlsx("y06-three-beside-with-phase.xlsx", [
    ["Base", None, None, None, "Base + oats", None, None, None, "Base + honey", None, None],
    ["Ph.", "Raw material", "%", None, "Ph.", "Raw material", "%", None, "Ph.", "Raw material", "%"],
    ["A", "Water", 80, None, "A", "Water", 77, None, "A", "Water", 75],
    ["A", "Glycerin", 4, None, "A", "Glycerin", 4, None, "A", "Honey", 9],
    ["B", "Olive oil", 10, None, "B", "Olive oil", 10, None, "B", "Olive oil", 10],
    ["B", "Emulsifying wax", 5, None, "B", "Emulsifying wax", 5, None, "B", "Emulsifying wax", 5],
    ["C", "Preservative", 1, None, "C", "Oat extract", 3, None, "C", "Preservative", 1],
    [None, None, None, None, "C", "Preservative", 1, None, None, None, None],
], [f("Base", ("Water", "80", "Phase A"), ("Glycerin", "4", "Phase A"), ("Olive oil", "10", "Phase B"), ("Emulsifying wax", "5", "Phase B"), ("Preservative", "1", "Phase C")),
    f("Base + oats", ("Water", "77", "Phase A"), ("Glycerin", "4", "Phase A"), ("Olive oil", "10", "Phase B"), ("Emulsifying wax", "5", "Phase B"), ("Oat extract", "3", "Phase C"), ("Preservative", "1", "Phase C")),
    f("Base + honey", ("Water", "75", "Phase A"), ("Honey", "9", "Phase A"), ("Olive oil", "10", "Phase B"), ("Emulsifying wax", "5", "Phase B"), ("Preservative", "1", "Phase C"))])

csv("y07-portuguese-phases-below-each.csv", """
LOÇÃO CORPORAL;;
Quantidade total;1,0 kg;
FASE AQUOSA;;
Água deionizada;q.s.p. 100%;
Glicerina;3,0%;
Total fase aquosa;77,5%;
FASE OLEOSA;;
Óleo de amêndoas;10,0%;
Álcool cetoestearílico;4,0%;
Base emulsionante;6,0%;
Total fase oleosa;20,0%;
FASE C;;
Fragrância;0,5%;
Conservante;1,0%;
Ácido cítrico;q.s. pH 5,5;
Vitamina E;1,0%;
Total fase C;2,5%;
""", [f("LOÇÃO CORPORAL", ("Água deionizada", "rest", "FASE AQUOSA"), ("Glicerina", "3", "FASE AQUOSA"), ("Óleo de amêndoas", "10", "FASE OLEOSA"), ("Álcool cetoestearílico", "4", "FASE OLEOSA"),
        ("Base emulsionante", "6", "FASE OLEOSA"), ("Fragrância", "0.5", "FASE C"), ("Conservante", "1", "FASE C"), ("Ácido cítrico", "ph", "FASE C"), ("Vitamina E", "1", "FASE C"))], "cp1252")

csv("y08-ounces-and-cups.csv", """
Body butter,,
Ingredient,oz,cups
Shea butter,8,1
Coconut oil,4,1/2
Almond oil,3.5,1/2
Arrowroot,0.3,1 tbsp
Vitamin E,0.2,1 tsp
""", [f("Body butter", ("Shea butter", "50"), ("Coconut oil", "25"), ("Almond oil", "21.875"), ("Arrowroot", "1.875"), ("Vitamin E", "1.25"))])

csv("y09-alternatives.csv", """
Mizellenwasser;;;
Stoff;%;oder;%
Wasser;93,5;Rosenwasser;93,5
Polysorbat 20;2,0;Decylglucosid;2,5
Glycerin;3,0;Propandiol;2,5
Natriumbenzoat;0,5;;
Kaliumsorbat;0,5;;
Milchsäure 80 %;0,5;;
""", [f("Mizellenwasser", ("Wasser", "93.5"), ("Polysorbat 20", "2"), ("Glycerin", "3"), ("Natriumbenzoat", "0.5"), ("Kaliumsorbat", "0.5"), ("Milchsäure 80 %", "0.5"))])

xlsx("y10-amounts-far-right-dates.xlsx", [
    ["Made on", "12/03/2024", None, None, None, None, None],
    ["Maker", "AB", None, None, None, None, None],
    ["Formula", "Cuticle oil", None, None, None, None, None],
    ["Ingredient", "Origin", "Best before", "Lot", "Comment", "Weight (g)", "Weight (%)"],
    ["Apricot kernel oil", "TR", "2025-06", "A-1", "refined", 48, 48],
    ["Jojoba oil", "AR", "2026-01", "J-22", None, 30, 30],
    ["Castor oil", "IN", "2025-12", "C-7", None, 20, 20],
    ["Tocopherol", "ES", "2026-03", "T-5", "50 %", 1.5, 1.5],
    ["Lemon oil", "IT", "2025-02", "L-9", "phototoxic above 2 %", 0.5, 0.5],
    ["Total", None, None, None, None, 100, 100],
], [f("Cuticle oil", ("Apricot kernel oil", "48"), ("Jojoba oil", "30"), ("Castor oil", "20"), ("Tocopherol", "1.5"), ("Lemon oil", "0.5"))])

csv("y11-pct-in-name-and-blank-total.csv", """
#,INCI (trade),Parts
1,Aqua,70
2,"Sodium Hydroxide (sol. 20%)",2
3,"Lactic Acid (80%)",5
4,"Glycerin (99.5%)",10
5,"Hyaluronic acid 1% gel",12
6,"Phenoxyethanol",1
,,
,,100
notes: pH 4.2 measured; 30 ml bottles x 3
""", [f("y11-pct-in-name-and-blank-total", ("Aqua", "70"), ("Sodium Hydroxide (sol. 20%)", "2"), ("Lactic Acid (80%)", "5"), ("Glycerin (99.5%)", "10"), ("Hyaluronic acid 1% gel", "12"), ("Phenoxyethanol", "1"))])

csv("y12-thousand-grams-swiss.csv", """
Rezeptur;Fussbalsam;;
Ansatz;2'500 g;;
Rohstoffbezeichnung;Sollmenge [g];Istmenge [g];Phase
Wasser gereinigt;1'725.0;1'724.6;I
Harnstoff;250.0;250.1;I
Glycerin;100.0;;I
Sheabutter;200.0;200.3;II
Cetearylalkohol;100.0;;II
Glycerinstearat;87.5;87.5;II
Phenoxyethanol;25.0;;III
Rosmarinöl;12.5;12.4;III
;2'500.0;;
""", [f("Fussbalsam", ("Wasser gereinigt", "69", "Phase I"), ("Harnstoff", "10", "Phase I"), ("Glycerin", "4", "Phase I"), ("Sheabutter", "8", "Phase II"), ("Cetearylalkohol", "4", "Phase II"), ("Glycerinstearat", "3.5", "Phase II"),
        ("Phenoxyethanol", "1", "Phase III"), ("Rosmarinöl", "0.5", "Phase III"))])
