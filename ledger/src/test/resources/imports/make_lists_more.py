"""Makes the sheets in listsmore/: lists of stock and prices set down after the reader was mended for those in lists/, before it was tried on these."""
import datetime, os
import make_lists as a
from openpyxl import Workbook

m = a.m
m.OUT = "listsmore"
os.makedirs(m.OUT, exist_ok=True)
f, l, csv, xlsx = a.f, a.l, a.csv, a.xlsx

csv("n01-net-and-gross.csv", """
Rohstoff;Gebinde;Netto;Brutto (19 %);Restbestand;Ch.-B.;haltbar bis
Avocadoöl;1 kg;18,90 €;22,49 €;0,35 kg;AV-1;10/26
Candelillawachs;500 g;16,00 €;19,04 €;410 g;CW-3;
Zinkoxid;1 kg;9,50 €;11,31 €;0,9 kg;ZO-8;01/28
Hydrolat Rose;5 l;42,00 €;49,98 €;2,1 l;HR-2;03/26
""", l(("Avocadoöl", "18.9", 1000, 350, "AV-1"), ("Candelillawachs", "16", 500, 410, "CW-3"), ("Zinkoxid", "9.5", 1000, 900, "ZO-8"), ("Hydrolat Rose", None, None, None, "HR-2")))

csv("n02-gross-weight-heading-amount.csv", """
Ingredient,Amount (g),Price/kg,Lot,Best before,Supplier
Jojoba oil,820,34.50,J-1,2026-04,S1
Almond oil,1500,12.90,A-7,2026-09,S1
Vitamin E,75,61.00,V-2,2027-01,S2
Rosemary extract,40,110.00,R-5,2025-12,S2
""", l(("Jojoba oil", "34.5", 1000, 820, "J-1"), ("Almond oil", "12.9", 1000, 1500, "A-7"), ("Vitamin E", "61", 1000, 75, "V-2"), ("Rosemary extract", "110", 1000, 40, "R-5")))

xlsx("n03-formula-above-stock-below.xlsx", [
    ["Lip balm", None, None, None],
    ["Ingredient", "%", None, None],
    ["Beeswax", 25, None, None],
    ["Castor oil", 45, None, None],
    ["Cocoa butter", 29.5, None, None],
    ["Vitamin E", 0.5, None, None],
    ["Total", 100, None, None],
    [],
    ["Materials needed", None, None, None],
    ["Material", "In stock (g)", "Price per kg (€)", "Lot"],
    ["Beeswax", 480, 15.5, "B-2"],
    ["Castor oil", 1200, 7.2, "C-4"],
    ["Cocoa butter", 650, 18, "CB-1"],
    ["Vitamin E", 60, 88, None],
], l(("Beeswax", "15.5", 1000, 480, "B-2"), ("Castor oil", "7.2", 1000, 1200, "C-4"), ("Cocoa butter", "18", 1000, 650, "CB-1"), ("Vitamin E", "88", 1000, 60, "")),
    [f("Lip balm", ("Beeswax", "25"), ("Castor oil", "45"), ("Cocoa butter", "29.5"), ("Vitamin E", "0.5"))])

csv("n04-lots-below-the-name.csv", """
Stock by lot;;;
Material;Lot;Qty (kg);Expiry
Glycerin;;;
;G-100;12,5;31.05.2026
;G-101;25;30.09.2026
Sodium benzoate;;;
;SB-7;3,2;31.01.2028
Propanediol;;;
;P-1;4,75;31.03.2026
;P-2;0;31.07.2026
""", l(("Glycerin", None, None, 12500, "G-100"), ("Glycerin", None, None, 25000, "G-101"), ("Sodium benzoate", None, None, 3200, "SB-7"), ("Propanediol", None, None, 4750, "P-1"), ("Propanediol", None, None, 0, "P-2")))

csv("n05-packs-counted.csv", """
Artikel;Gebindegröße;Anzahl Gebinde;Preis pro Gebinde;Bestand
Sonnenblumenöl;5 kg;3;14,50 €;15 kg
Glycerin;10 kg;1;21,00 €;10 kg
Menthol;100 g;4;6,80 €;400 g
Sheabutter;1 kg;0;9,90 €;0
""", l(("Sonnenblumenöl", "14.5", 5000, 15000, ""), ("Glycerin", "21", 10000, 10000, ""), ("Menthol", "6.8", 100, 400, ""), ("Sheabutter", "9.9", 1000, 0, "")))

csv("n06-opening-in-out-closing.csv", """
Stock movement May,,,,,
RM,Opening kg,Received kg,Used kg,Closing stock kg,Std cost per kg
Caustic soda,12.0,25.0,9.5,27.5,1.10
Olive oil,140.0,0,62.0,78.0,4.85
Palm kernel oil,55.0,50.0,40.0,65.0,2.60
Fragrance lime,2.4,1.0,0.9,2.5,39.00
""", l(("Caustic soda", "1.1", 1000, 27500, ""), ("Olive oil", "4.85", 1000, 78000, ""), ("Palm kernel oil", "2.6", 1000, 65000, ""), ("Fragrance lime", "39", 1000, 2500, "")))

csv("n07-swedish-unknown-words.csv", """
Råvara;Leverantör;Lager (g);Pris per kg;Batchnr;Bäst före
Rapsolja;R1;2400;32,00;RO-1;2026-06-30
Bivax;R2;350;145,00;BV-2;2028-01-31
Sheasmör;R1;900;98,50;SS-3;2026-11-30
Lanolin;R2;0;120,00;;
""", l(("Rapsolja", "32", 1000, 2400, "RO-1"), ("Bivax", "145", 1000, 350, "BV-2"), ("Sheasmör", "98.5", 1000, 900, "SS-3"), ("Lanolin", "120", 1000, 0, "")))

csv("n08-no-headings.csv", """
Squalane;250 g;€ 18,40;L-771;Supplier 2
Urea;1 kg;€ 4,10;L-772;Supplier 1
Bisabolol;50 g;€ 13,75;L-773;Supplier 2
Allantoin;100 g;€ 5,20;L-774;Supplier 1
""", l(("Squalane", "18.4", 250, None, "L-771"), ("Urea", "4.1", 1000, None, "L-772"), ("Bisabolol", "13.75", 50, None, "L-773"), ("Allantoin", "5.2", 100, None, "L-774")))

csv("n09-price-tiers.csv", """
Preisliste Öle;;;
Produkt;Preis je 100 g;Preis je 1 kg;Preis je 5 kg
Mandelöl;2,40 €;17,90 €;79,00 €
Jojobaöl;5,10 €;39,00 €;179,00 €
Arganöl;7,90 €;62,00 €;
""", l(("Mandelöl", "17.9", 1000, None, ""), ("Jojobaöl", "39", 1000, None, ""), ("Arganöl", "62", 1000, None, "")))

xlsx("n10-value-says-the-heading-is-wrong.xlsx", [
    ["Inventory", None, None, None, None],
    ["Material", "Stock (g)", "Price per kg", "Value", "Lot"],
    ["Sorbitol", 24, 1.9, 45.6, "S1"],
    ["Sucrose", 50, 1.1, 55, "S2"],
    ["Inositol", 3.5, 22, 77, "I1"],
    ["Erythritol", 10, 4.2, 42, "E1"],
], l(("Sorbitol", "1.9", 1000, 24000, "S1"), ("Sucrose", "1.1", 1000, 50000, "S2"), ("Inositol", "22", 1000, 3500, "I1"), ("Erythritol", "4.2", 1000, 10000, "E1")))

csv("n11-french-ml-and-words.csv", """
Produit;Prix;Pour;Il reste;Fournisseur
Hydrolat de lavande;6,50 €;200 ml;120 ml;A
Huile de ricin;8,20 €;500 g;0,3 kg;A
Cire de riz;5,40 €;100 g;épuisé;B
Acide hyaluronique;9,90 €;10 g;6,5 g;B
""", l(("Hydrolat de lavande", None, None, None, ""), ("Huile de ricin", "8.2", 500, 300, ""), ("Cire de riz", "5.4", 100, 0, ""), ("Acide hyaluronique", "9.9", 10, "6.5", "")))

csv("n12-tabs-and-quotes.txt", """
Ingredient\tOn hand\tCost per lb\tLot
Cocoa butter\t"3 lb"\t$8.50\tCB1
Shea\t"12 oz"\t$6.25\tSH2
Mango butter\t"1.5 lb"\t$9.75\tMB1
Beeswax\t"0 oz"\t$11.00\t
""", l(("Cocoa butter", "8.5", "453.59237", "1360.77711", "CB1"), ("Shea", "6.25", "453.59237", "340.1942775", "SH2"), ("Mango butter", "9.75", "453.59237", "680.388555", "MB1"), ("Beeswax", "11", "453.59237", 0, "")))

csv("n13-amounts-and-cost-thin.csv", """
Ingredient;Supplier;Quantity (g);Price paid
Olive oil;S1;5000;29,50
Coconut oil;S1;2500;14,75
Castor oil;S2;500;6,20
Lye;S3;1000;5,80
""", l(("Olive oil", "29.5", 5000, 5000, ""), ("Coconut oil", "14.75", 2500, 2500, ""), ("Castor oil", "6.2", 500, 500, ""), ("Lye", "5.8", 1000, 1000, "")))

csv("n14-one-price-in-another-currency.csv", """
Material,Price per kg,Stock kg
Kaolin,€1.80,22
Bentonite,€2.10,14.5
Titanium dioxide,$6.40,3.25
Talc,€1.20,9
""", l(("Kaolin", "1.8", 1000, 22000, ""), ("Bentonite", "2.1", 1000, 14500, ""), ("Titanium dioxide", "6.4", 1000, 3250, ""), ("Talc", "1.2", 1000, 9000, "")))

csv("n15-formula-with-price-and-stock.csv", """
Massage oil;;;;
Ingredient;Grams;Price per kg;In stock (g);Cost
Sunflower oil;700;3,20;4000;2,24
Jojoba oil;250;31,00;600;7,75
Lavender oil;30;95,00;80;2,85
Vitamin E;20;60,00;150;1,20
Total;1000;;;14,04
""", None, [f("Massage oil", ("Sunflower oil", "70"), ("Jojoba oil", "25"), ("Lavender oil", "3"), ("Vitamin E", "2"))])

csv("n16-title-over-columns.csv", """
;;Purchase;;Stock;
Name;Supplier;Pack size;Price;Amount;Lot no.
Cetyl palmitate;S1;1 kg;€ 9,20;740 g;CP-1
Isopropyl myristate;S1;1 kg;€ 6,10;1,3 kg;IM-2
Lecithin;S2;500 g;€ 11,80;95 g;LE-9
""", l(("Cetyl palmitate", "9.2", 1000, 740, "CP-1"), ("Isopropyl myristate", "6.1", 1000, 1300, "IM-2"), ("Lecithin", "11.8", 500, 95, "LE-9")))
