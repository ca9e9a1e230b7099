"""Makes the sheets in second/: further shapes, set down after the reader was mended for those in unforeseen/ and before it was tried on these."""
import os
import make_corpus as m
import make_unforeseen as u

m.OUT = "second"
os.makedirs(m.OUT, exist_ok=True)
f, csv, xlsx = u.f, u.csv, u.xlsx

csv("v01-dutch.csv", """
Recept;Handzeep
Fase;Grondstof;Hoeveelheid (gram);Procent
A;Gedemineraliseerd water;301,5;60,3
A;Glycerine;15;3
B;Decyl Glucoside;100;20
B;Cocamidopropyl Betaine;75;15
C;Citroenzuur;4;0,8
C;Natriumbenzoaat;2,5;0,5
C;Kaliumsorbaat;2;0,4
Totaal;;500;100
""", [f("Handzeep", ("Gedemineraliseerd water", "60.3", "Phase A"), ("Glycerine", "3", "Phase A"), ("Decyl Glucoside", "20", "Phase B"), ("Cocamidopropyl Betaine", "15", "Phase B"), ("Citroenzuur", "0.8", "Phase C"), ("Natriumbenzoaat", "0.5", "Phase C"), ("Kaliumsorbaat", "0.4", "Phase C"))])

csv("v02-blank-rows-between.csv", """
My lotion bar,,,

Ingredient,,grams,

Beeswax,,30,

Shea butter,,40,

Sunflower oil,,28,

Vitamin E,,2,
""", [f("My lotion bar", ("Beeswax", "30"), ("Shea butter", "40"), ("Sunflower oil", "28"), ("Vitamin E", "2"))])

csv("v03-inci-in-brackets.csv", """
Ingredients;% by weight
Purified Water (Aqua);66.4
Aloe juice (Aloe Barbadensis Leaf Juice);10
Vegetable glycerine (Glycerin);5
Olive oil (Olea Europaea Fruit Oil);12
Emulsifying wax (Cetearyl Alcohol, Polysorbate 60);5.6
Preservative (Phenoxyethanol, Ethylhexylglycerin);1.0
""", [f("v03-inci-in-brackets", ("Purified Water (Aqua)", "66.4"), ("Aloe juice (Aloe Barbadensis Leaf Juice)", "10"), ("Vegetable glycerine (Glycerin)", "5"), ("Olive oil (Olea Europaea Fruit Oil)", "12"), ("Emulsifying wax (Cetearyl Alcohol, Polysorbate 60)", "5.6"), ("Preservative (Phenoxyethanol, Ethylhexylglycerin)", "1"))])

csv("v04-scaled-columns.csv", """
Shower oil,,,
Ingredient,100 g,250 g,1 kg
Sunflower oil,55,137.5,550
Polysorbate 20,30,75,300
Castor oil,14,35,140
Perfume,1,2.5,10
""", [f("Shower oil", ("Sunflower oil", "55"), ("Polysorbate 20", "30"), ("Castor oil", "14"), ("Perfume", "1"))])

csv("v05-thousandths.csv", """
Rohstoff;Menge in g
Wasser;1.250,000
Glycerin;125,500
Xanthan;12,500
Sodium Benzoate;7,000
Parfum;5,000
Summe;1.400,000
""", [f("v05-thousandths", ("Wasser", "89.2857"), ("Glycerin", "8.9643"), ("Xanthan", "0.8929"), ("Sodium Benzoate", "0.5"), ("Parfum", "0.3571"))])

csv("v06-two-qs.csv", """
INCI,Amount %
Aqua,q.s.
Carbomer,0.4
Propanediol,5
Sodium Hydroxide,q.s.
Phenoxyethanol,0.9
Parfum,q.s.
""", [f("v06-two-qs", ("Aqua", "rest"), ("Carbomer", "0.4"), ("Propanediol", "5"), ("Sodium Hydroxide", "ph"), ("Phenoxyethanol", "0.9"), ("Parfum", "needed"))])

xlsx("v07-percent-of-phase.xlsx", [["Cream", None, None, None], ["Phase", "Ingredient", "% of phase", "% of formula"], ["A", "Water", 95, 66.5], [None, "Glycerin", 5, 3.5], ["B", "Almond oil", 80, 24], [None, "Beeswax", 20, 6], ["Total", None, None, 100]],
     [f("Cream", ("Water", "66.5", "Phase A"), ("Glycerin", "3.5", "Phase A"), ("Almond oil", "24", "Phase B"), ("Beeswax", "6", "Phase B"))])

csv("v08-history-below.csv", """
Face gel v4;;
;;
Ingredient;%;
Aqua;91;
Glycerin;5;
Hydroxyethylcellulose;1.5;
Panthenol;2;
Phenoxyethanol;0.5;
;;
Changes;;
12 Jan;more gum;1.2 -> 1.5
3 Feb;less glycerin;7 -> 5
Price per jar;2.35;
""", [f("Face gel v4", ("Aqua", "91"), ("Glycerin", "5"), ("Hydroxyethylcellulose", "1.5"), ("Panthenol", "2"), ("Phenoxyethanol", "0.5"))])

csv("v09-drops-and-grams.csv", """
Ingredient,Amount
Jojoba oil,20 g
Squalane,9 g
Vitamin E,1 g
Lavender oil,5 drops
""", [f("v09-drops-and-grams", ("Jojoba oil", "66.6667"), ("Squalane", "30"), ("Vitamin E", "3.3333"), ("Lavender oil", "unknown"))])

csv("v10-portuguese-table-text.txt", """
| Ingrediente | Quantidade |
| --- | --- |
| Água | 80% |
| Glicerina | 5% |
| Óleo de girassol | 14% |
| Fenoxietanol | 1% |
""", [f("v10-portuguese-table-text", ("Água", "80"), ("Glicerina", "5"), ("Óleo de girassol", "14"), ("Fenoxietanol", "1"))])

xlsx("v11-hidden-old-amounts.xlsx", [["Ingredient", "old %", "new %"], ["Water", 70, 75], ["Glycerin", 10, 5], ["Shea butter", 19, 19], ["Phenoxyethanol", 1, 1]],
     [f("old %", ("Water", "70"), ("Glycerin", "10"), ("Shea butter", "19"), ("Phenoxyethanol", "1")), f("new %", ("Water", "75"), ("Glycerin", "5"), ("Shea butter", "19"), ("Phenoxyethanol", "1"))])

csv("v12-phase-prefix.csv", """
A1,Water,70.0
A2,Glycerin,4.0
A3,Allantoin,0.2
B1,Cetyl alcohol,4.8
B2,Sunflower oil,20.0
C1,Phenoxyethanol,1.0
""", [f("v12-phase-prefix", ("Water", "70", "Phase A"), ("Glycerin", "4", "Phase A"), ("Allantoin", "0.2", "Phase A"), ("Cetyl alcohol", "4.8", "Phase B"), ("Sunflower oil", "20", "Phase B"), ("Phenoxyethanol", "1", "Phase C"))])
