"""Makes the sheets in lists/: lists of stock and prices in varied shapes, set down before the reader was tried on them, and formulas that look like them."""
import datetime, os
from openpyxl import Workbook
import make_corpus as m
import make_unforeseen as u

m.OUT = "lists"
os.makedirs(m.OUT, exist_ok=True)
f = u.f


def l(*rows):
    """Name, paid, grams that this was paid for, grams in stock, lot; None where the list says nothing."""
    return [dict(zip(("name", "paid", "for", "stock", "lot"), ["" if x is None else str(x) for x in r])) for r in rows]


def csv(name, body, materials=None, formulas=None, encoding="utf-8"):
    with open(os.path.join(m.OUT, name), "wb") as out:
        out.write(body.lstrip("\n").replace("\n", "\r\n").encode(encoding))
    m.say(name, formulas or [], materials or [], maker="by hand")


def xlsx(name, rows, materials=None, formulas=None, sheet="Sheet1", change=None):
    book = Workbook(); ws = m.sheet(book, sheet, rows, True)
    if change: change(ws)
    m.save(book, name, formulas or [], materials or [])


csv("l01-stock-in-kg-no-word-stock.csv", """
Raw material inventory 2025;;;;;;
Material;INCI;kg;Lot;£/kg;£;Supplier
Glycerine;Glycerin;12.5;G-201;1.95;24.38;A
Jojoba;Simmondsia Chinensis Seed Oil;3.2;J-17;31.00;99.20;B
Cetyl alcohol;Cetyl Alcohol;8;C-90;4.10;32.80;A
Xanthan;Xanthan Gum;0.75;X-3;15.60;11.70;C
Total;;;;;168.08;
""", l(("Glycerine", "1.95", 1000, 12500, "G-201"), ("Jojoba", "31", 1000, 3200, "J-17"), ("Cetyl alcohol", "4.1", 1000, 8000, "C-90"), ("Xanthan", "15.6", 1000, 750, "X-3")))

csv("l02-price-per-100-g-in-cells.csv", """
Ingredient,Price,In stock,Best before
Squalane,£8.40 per 100 g,320 g,06/2027
Tocopherol,£12.10 per 100 g,45 g,11/2026
Allantoin,£3.95 per 50 g,38 g,
Argan oil,£22.00 per kg,1.2 kg,02/2026
Guar gum,£2.10 / 100 g,0,
Zinc oxide,£9.50/kg,750 g,
""", l(("Squalane", "8.4", 100, 320, ""), ("Tocopherol", "12.1", 100, 45, ""), ("Allantoin", "3.95", 50, 38, ""), ("Argan oil", "22", 1000, 1200, ""), ("Guar gum", "2.1", 100, 0, ""), ("Zinc oxide", "9.5", 1000, 750, "")))

csv("l03-german-restant-and-kinds.csv", """
Rohstoffe im Keller;;;;;;
Stand: 4.11.2025;;;;;;
Art.-Nr.;Rohstoff;INCI;Gebinde;EK (netto);Restant (g);Charge / MHD
Öle;;;;;;
1001;Mandelöl;Prunus Amygdalus Dulcis Oil;1 kg;14,90 €;420;
1002;Jojobaöl;Simmondsia Chinensis Seed Oil;500 g;19,50 €;87,5;
Wachse;;;;;;
2001;Bienenwachs;Cera Alba;1 kg;17,80 €;1.250;
2002;Candelillawachs;Euphorbia Cerifera Wax;250 g;9,20 €;0;
Wirkstoffe;;;;;;
3001;Panthenol;Panthenol;100 g;6,40 €;61;
3002;Urea;Urea;1 kg;5,10 €;;
""", l(("Mandelöl", "14.9", 1000, 420, ""), ("Jojobaöl", "19.5", 500, "87.5", ""), ("Bienenwachs", "17.8", 1000, 1250, ""), ("Candelillawachs", "9.2", 250, 0, ""), ("Panthenol", "6.4", 100, 61, ""), ("Urea", "5.1", 1000, None, "")), encoding="cp1252")

csv("l04-french-prices-per-kilo.csv", """
Matière première;Nom INCI;Fournisseur;Prix au kg (€ HT);Stock (kg);N° lot;DLUO;Seuil d'alerte (kg)
Huile de jojoba;Simmondsia Chinensis Seed Oil;F1;28,50;2,4;J-551;31/03/2027;1
Beurre de cacao;Theobroma Cacao Seed Butter;F2;16,20;0,85;BC-20;30/06/2026;2
Acide citrique;Citric Acid;F1;3,10;5;AC-9;31/12/2028;1
Gomme xanthane;Xanthan Gum;F3;17,00;0;;;0,25
""", l(("Huile de jojoba", "28.5", 1000, 2400, "J-551"), ("Beurre de cacao", "16.2", 1000, 850, "BC-20"), ("Acide citrique", "3.1", 1000, 5000, "AC-9"), ("Gomme xanthane", "17", 1000, 0, "")))

csv("l05-spanish-inventory.csv", """
Inventario de materias primas;;;;;;
Código;Materia prima;Proveedor;Envase;Precio;Existencias;Lote
MP-01;Glicerina vegetal;P1;5 kg;18,50 €;3,75 kg;GL-88
MP-02;Manteca de karité;P2;1 kg;11,20 €;640 g;MK-12
MP-03;Aceite de almendras;P1;1 kg;13,90 €;1,1 kg;AA-07
MP-04;Goma xantana;P3;250 g;7,80 €;95 g;GX-41
MP-05;Vitamina E;P3;100 g;9,60 €;0 g;
""", l(("Glicerina vegetal", "18.5", 5000, 3750, "GL-88"), ("Manteca de karité", "11.2", 1000, 640, "MK-12"), ("Aceite de almendras", "13.9", 1000, 1100, "AA-07"), ("Goma xantana", "7.8", 250, 95, "GX-41"), ("Vitamina E", "9.6", 100, 0, "")))

csv("l06-italian-magazzino.csv", """
Materia prima;INCI;Fornitore;Confezione (g);Prezzo confezione;Giacenza (g);Lotto;Scadenza
Olio di mandorle;Prunus Amygdalus Dulcis Oil;F1;1000;€ 15,40;820;OM-3;05/2026
Cera d'api;Cera Alba;F2;500;€ 8,90;500;CA-11;
Burro di karité;Butyrospermum Parkii Butter;F2;1000;€ 12,00;275;BK-7;01/2027
Acido lattico;Lactic Acid;F1;250;€ 5,60;30;AL-2;09/2026
""", l(("Olio di mandorle", "15.4", 1000, 820, "OM-3"), ("Cera d'api", "8.9", 500, 500, "CA-11"), ("Burro di karité", "12", 1000, 275, "BK-7"), ("Acido lattico", "5.6", 250, 30, "AL-2")))

csv("l07-dutch-voorraad.csv", """
Grondstof;Leverancier;Verpakking;Prijs per verpakking;Voorraad;Partijnummer;THT
Zonnebloemolie;L1;5 liter;21,00;3,2 kg;ZO-1;01-06-2026
Sheaboter;L2;1 kg;12,75;880 g;SB-4;15-02-2027
Kaliumsorbaat;L1;250 g;5,95;140 g;KS-8;
Citroenzuur;L1;1 kg;4,20;0,6 kg;CZ-2;
""", l(("Zonnebloemolie", None, None, 3200, "ZO-1"), ("Sheaboter", "12.75", 1000, 880, "SB-4"), ("Kaliumsorbaat", "5.95", 250, 140, "KS-8"), ("Citroenzuur", "4.2", 1000, 600, "CZ-2")))


def l08(ws):
    ws.merge_cells("A3:A5")
    ws.merge_cells("A6:A7")


xlsx("l08-several-lots-merged.xlsx", [
    ["Material", "Lot", "On hand", "Unit", "Price per kg", "Expires"],
    [None, None, None, None, "EUR", None],
    ["Glycerin", "G1", 2.5, "kg", 2.1, datetime.date(2026, 5, 31)],
    [None, "G2", 5, "kg", 2.2, datetime.date(2027, 1, 31)],
    [None, "G3", 800, "g", 2.2, datetime.date(2027, 3, 31)],
    ["Urea", "U1", 1.2, "kg", 3.9, datetime.date(2026, 8, 31)],
    [None, "U2", 0, "kg", 3.9, datetime.date(2027, 8, 31)],
    ["Menthol", "M1", 150, "g", 41, datetime.date(2028, 2, 29)],
], l(("Glycerin", "2.1", 1000, 2500, "G1"), ("Glycerin", "2.2", 1000, 5000, "G2"), ("Glycerin", "2.2", 1000, 800, "G3"), ("Urea", "3.9", 1000, 1200, "U1"), ("Urea", "3.9", 1000, 0, "U2"), ("Menthol", "41", 1000, 150, "M1")), change=l08)

xlsx("l09-pack-price-and-price-per-kg.xlsx", [
    ["Supplier price list", None, None, None, None],
    ["Valid from 1 September", None, None, None, None],
    ["Code", "Product", "Pack (kg)", "Pack price", "per kg"],
    ["P-100", "Coconut oil", 25, 92.5, 3.7],
    ["P-101", "Stearic acid", 20, 58, 2.9],
    ["P-102", "Kaolin", 5, 11, 2.2],
    ["P-103", "Lanolin", 1, 14.8, 14.8],
    ["All prices net, plus carriage", None, None, None, None],
], l(("Coconut oil", "92.5", 25000, None, ""), ("Stearic acid", "58", 20000, None, ""), ("Kaolin", "11", 5000, None, ""), ("Lanolin", "14.8", 1000, None, "")))

xlsx("l10-units-only-in-title.xlsx", [
    ["Stock take 30 June - all weights in grams, prices in EUR per kg"],
    [],
    ["Name", "Shelf", "Stock", "Price", "Lot number"],
    ["Decyl glucoside", "B2", 4200, 3.4, 7741],
    ["Coco betaine", "B2", 3850, 2.8, 7742],
    ["Panthenol", "C1", 260, 19.5, 6090],
    ["Rose oxide", "C4", 12.5, 240, 6101],
    ["Silica", "D1", 640, 8.1, 5512],
], l(("Decyl glucoside", "3.4", 1000, 4200, "7741"), ("Coco betaine", "2.8", 1000, 3850, "7742"), ("Panthenol", "19.5", 1000, 260, "6090"), ("Rose oxide", "240", 1000, "12.5", "6101"), ("Silica", "8.1", 1000, 640, "5512")))

xlsx("l11-two-rows-of-headings-and-reorder.xlsx", [
    ["Lager", None, None, None, None, None, None, None],
    ["Rohstoff", "Bestand", "Meldebestand", "Preis", "Wert", "Lieferant", "Charge", "MHD"],
    [None, "[kg]", "[kg]", "[€/kg]", "[€]", None, None, None],
    ["Rapsöl", 18.5, 10, 2.4, 44.4, "L1", "R-9", "12/2026"],
    ["Sonnenblumenlecithin", 1.25, 2, 11.6, 14.5, "L2", "SL-4", "03/2027"],
    ["Natriumhydroxid", 6, 5, 3.3, 19.8, "L3", "N-22", None],
    ["Lavendelöl", 0.35, 0.5, 96, 33.6, "L4", "LV-1", "08/2026"],
    ["Summe", None, None, None, 112.3, None, None, None],
], l(("Rapsöl", "2.4", 1000, 18500, "R-9"), ("Sonnenblumenlecithin", "11.6", 1000, 1250, "SL-4"), ("Natriumhydroxid", "3.3", 1000, 6000, "N-22"), ("Lavendelöl", "96", 1000, 350, "LV-1")))

csv("l12-shopping-list-what-is-left.csv", """
What I have;how much is left;where from;what I paid;for
Oat flour;300 g;shop;2,20 €;500 g
Almond oil;1/2 bottle;online;8,90 €;250 g
Cocoa butter;ca. 120 g;online;7,50 €;200 g
Beeswax;empty;market;6,00 €;250 g
Rosemary extract;22 g;online;11,00 €;30 g
""", l(("Oat flour", "2.2", 500, 300, ""), ("Almond oil", "8.9", 250, None, ""), ("Cocoa butter", "7.5", 200, 120, ""), ("Beeswax", "6", 250, 0, ""), ("Rosemary extract", "11", 30, 22, "")))

csv("l13-no-currency-no-unit-but-value.csv", """
Item;Qty;Unit price;Total
Sodium bicarbonate;4500;0,9;4,05
Citric acid;2750;2,4;6,6
Corn starch;1200;1,5;1,8
Epsom salt;9000;0,7;6,3
Sum;;;18,75
""", l(("Sodium bicarbonate", "0.9", 1000, 4500, ""), ("Citric acid", "2.4", 1000, 2750, ""), ("Corn starch", "1.5", 1000, 1200, ""), ("Epsom salt", "0.7", 1000, 9000, "")))

csv("l14-pounds-and-ounces.csv", """
Ingredient,Supplier,Size,Cost,Amount remaining (oz),Batch #
Olive oil,S1,7 lb,$31.50,64,OO-2
Lye,S2,2 lb,$9.20,18.5,LY-7
Coconut oil 76,S1,7 lb,$22.75,40,CO-1
Castor oil,S1,16 oz,$7.10,0,
""", l(("Olive oil", "31.5", "3175.14659", "1814.36948", "OO-2"), ("Lye", "9.2", "907.18474", "524.4661778125", "LY-7"), ("Coconut oil 76", "22.75", "3175.14659", "1133.980925", "CO-1"), ("Castor oil", "7.1", "453.59237", 0, "")))

csv("l15-semicolons-and-thousands.csv", """
Rohstoffbestand zum 31.12.;;;;;
Bezeichnung;INCI;Menge (g);Preis je kg;Lagerwert;Lagerort
Glycerin;Glycerin;12.500;2,10 €;26,25 €;A1
Talkum;Talc;8.000;1,40 €;11,20 €;A2
Reisstärke;Oryza Sativa Starch;1.500;4,80 €;7,20 €;A2
Farbe rot;CI 77491;250;22,00 €;5,50 €;B1
Gesamtwert;;;;50,15 €;
""", l(("Glycerin", "2.1", 1000, 12500, ""), ("Talkum", "1.4", 1000, 8000, ""), ("Reisstärke", "4.8", 1000, 1500, ""), ("Farbe rot", "22", 1000, 250, "")))

csv("l16-packaging-among-materials.csv", """
Item,Kind,Stock,Cost,Supplier
Shea butter,raw material,4.2 kg,£9.80/kg,S1
Jar 50 ml,packaging,120 pcs,£0.42,S3
Rosehip oil,raw material,650 g,£38.00/kg,S2
Label round,packaging,300 pcs,£0.05,S4
Vitamin E,raw material,90 g,£61.00/kg,S2
""", l(("Shea butter", "9.8", 1000, 4200, ""), ("Rosehip oil", "38", 1000, 650, ""), ("Vitamin E", "61", 1000, 90, "")))

xlsx("l17-wrong-value-in-one-row.xlsx", [
    ["Raw material", "Lot", "Stock g", "€ per kg", "Value €"],
    ["Inulin", "I-1", 2400, 6.5, 15.6],
    ["Betaine", "B-1", 1800, 5.2, 9.36],
    ["Sorbitol", "S-1", 5200, 2.1, 109.2],
    ["Pectin", "P-1", 350, 14, 4.9],
    ["Total", None, None, None, 139.06],
], l(("Inulin", "6.5", 1000, 2400, "I-1"), ("Betaine", "5.2", 1000, 1800, "B-1"), ("Sorbitol", "2.1", 1000, 5200, "S-1"), ("Pectin", "14", 1000, 350, "P-1")))

csv("l18-price-list-only.csv", """
PRICE LIST;;
Name;INCI;EUR / 100 g
Hyaluronic acid;Sodium Hyaluronate;48,00
Niacinamide;Niacinamide;6,90
Ceramide mix;Ceramide NP;115,50
""", l(("Hyaluronic acid", "48", 100, None, ""), ("Niacinamide", "6.9", 100, None, ""), ("Ceramide mix", "115.5", 100, None, "")))

csv("l19-cost-sheet-is-a-formula.csv", """
Bath salts costing;;;
Ingredient;g;Price per kg;Cost
Epsom salt;800;0,90;0,72
Sea salt;150;1,20;0,18
Sodium bicarbonate;45;1,80;0,081
Lavender oil;5;98,00;0,49
Total;1000;;1,471
""", None, [f("Bath salts costing", ("Epsom salt", "80"), ("Sea salt", "15"), ("Sodium bicarbonate", "4.5"), ("Lavender oil", "0.5"))])

csv("l20-batch-with-lots-and-dates-is-a-formula.csv", """
Batch record 77;;;;;
Product: Hand balm;;;;;
Ingredient;Lot;Best before;Supplier;Required g;Weighed g
Sunflower oil;SO-3;03/2027;A;300,0;300,1
Beeswax;BW-1;01/2028;B;120,0;120,0
Shea butter;SB-9;06/2026;A;75,0;75,2
Tocopherol;T-2;09/2026;C;5,0;5,0
Total;;;;500,0;500,3
""", None, [f("Hand balm", ("Sunflower oil", "60"), ("Beeswax", "24"), ("Shea butter", "15"), ("Tocopherol", "1"))])
