"""Materials and small helpers of the sets by-blogger, by-two-languages and by-collector."""
from sheet_kit import *
MASTER = """
Water|Aqua|solvent|Wasser, gereinigt|Eau purifiée
Glycerin|Glycerin|humectant|Glycerin, pflanzlich|Glycérine végétale
Propanediol|Propanediol|humectant|Propandiol|Propanediol végétal
Aloe vera juice|Aloe Barbadensis Leaf Juice|soothing|Aloe-vera-Saft|Jus d'aloe vera
Rose water|Rosa Damascena Flower Water|aqueous base|Rosenwasser|Eau florale de rose
Lavender water|Lavandula Angustifolia Flower Water|aqueous base|Lavendelwasser|Hydrolat de lavande
Witch hazel water|Hamamelis Virginiana Leaf Water|toning|Hamameliswasser|Hydrolat d'hamamélis
Xanthan gum|Xanthan Gum|thickener|Xanthan|Gomme xanthane
Sclerotium gum|Sclerotium Gum|thickener|Sclerotium-Gummi|Gomme sclérote
Hydroxyethylcellulose|Hydroxyethylcellulose|thickener|Hydroxyethylcellulose|Hydroxyéthylcellulose
Hyaluronic acid|Sodium Hyaluronate|humectant|Natriumhyaluronat|Hyaluronate de sodium
Panthenol|Panthenol|skin conditioning|D-Panthenol 75 %|D-panthénol
Niacinamide|Niacinamide|active|Nicotinamid|Nicotinamide
Allantoin|Allantoin|soothing|Allantoin|Allantoïne
Urea|Urea|humectant|Harnstoff|Urée
Sodium lactate|Sodium Lactate|humectant|Natriumlactat 60 %|Lactate de sodium
Betaine|Betaine|humectant|Betain|Bétaïne
Citric acid|Citric Acid|pH adjuster|Zitronensäure 20 %ig|Acide citrique
Lactic acid|Lactic Acid|pH adjuster|Milchsäure 80 %|Acide lactique
Lye solution 10%|Sodium Hydroxide|pH adjuster|Natronlauge 10 %|Soude 10 %
Sodium phytate|Sodium Phytate|chelator|Natriumphytat|Phytate de sodium
Chelator|Tetrasodium Glutamate Diacetate|chelator|Komplexbildner|Agent chélatant
Preservative PE|Phenoxyethanol, Ethylhexylglycerin|preservative|Konservierer PE|Conservateur PE
Preservative BA|Benzyl Alcohol, Dehydroacetic Acid|preservative|Konservierer BA|Conservateur BA
Potassium sorbate|Potassium Sorbate|preservative|Kaliumsorbat|Sorbate de potassium
Sodium benzoate|Sodium Benzoate|preservative|Natriumbenzoat|Benzoate de sodium
Vitamin E|Tocopherol|antioxidant|Vitamin E|Vitamine E
Emulsifying wax|Cetearyl Alcohol, Polysorbate 60|emulsifier|Emulgierwachs|Cire émulsifiante
Glyceryl stearate citrate|Glyceryl Stearate Citrate|emulsifier|Glycerylstearatcitrat|Stéarate citrate de glycéryle
Glyceryl stearate SE|Glyceryl Stearate SE|emulsifier|Glycerinmonostearat SE|Stéarate de glycéryle SE
Olive emulsifier|Cetearyl Olivate, Sorbitan Olivate|emulsifier|Olivenemulgator|Émulsifiant olive
Sugar emulsifier|Cetearyl Alcohol, Cetearyl Glucoside|emulsifier|Zuckeremulgator|Émulsifiant sucre
W/O emulsifier|Polyglyceryl-3 Diisostearate|emulsifier|W/O-Emulgator|Émulsifiant E/H
Solubiliser|Polyglyceryl-4 Caprate|solubiliser|Lösungsvermittler|Solubilisant
Polysorbate 20|Polysorbate 20|solubiliser|Polysorbat 20|Polysorbate 20
Lecithin|Lecithin|co-emulsifier|Lecithin|Lécithine
Cetyl alcohol|Cetyl Alcohol|consistency|Cetylalkohol|Alcool cétylique
Cetearyl alcohol|Cetearyl Alcohol|consistency|Cetylstearylalkohol|Alcool cétéarylique
Stearic acid|Stearic Acid|consistency|Stearinsäure|Acide stéarique
Sunflower oil|Helianthus Annuus Seed Oil|emollient|Sonnenblumenöl HO|Huile de tournesol
Sweet almond oil|Prunus Amygdalus Dulcis Oil|emollient|Mandelöl|Huile d'amande douce
Jojoba oil|Simmondsia Chinensis Seed Oil|emollient|Jojobaöl|Huile de jojoba
Olive oil|Olea Europaea Fruit Oil|emollient|Olivenöl|Huile d'olive
Coconut oil|Cocos Nucifera Oil|emollient|Kokosöl|Huile de coco
Castor oil|Ricinus Communis Seed Oil|emollient|Rizinusöl|Huile de ricin
Argan oil|Argania Spinosa Kernel Oil|emollient|Arganöl|Huile d'argan
Rosehip oil|Rosa Canina Fruit Oil|emollient|Wildrosenöl|Huile de rose musquée
Grapeseed oil|Vitis Vinifera Seed Oil|emollient|Traubenkernöl|Huile de pépins de raisin
Apricot kernel oil|Prunus Armeniaca Kernel Oil|emollient|Aprikosenkernöl|Huile de noyaux d'abricot
Avocado oil|Persea Gratissima Oil|emollient|Avocadoöl|Huile d'avocat
Evening primrose oil|Oenothera Biennis Oil|emollient|Nachtkerzenöl|Huile d'onagre
Marigold oil extract|Helianthus Annuus Seed Oil, Calendula Officinalis Flower Extract|soothing|Ringelblumenöl|Macérât de calendula
Shea butter|Butyrospermum Parkii Butter|emollient|Sheabutter|Beurre de karité
Cocoa butter|Theobroma Cacao Seed Butter|emollient|Kakaobutter|Beurre de cacao
Mango butter|Mangifera Indica Seed Butter|emollient|Mangobutter|Beurre de mangue
Squalane|Squalane|emollient|Squalan|Squalane végétal
Fractionated coconut oil|Caprylic/Capric Triglyceride|emollient|Neutralöl|Triglycérides caprylique/caprique
Light ester|Coco-Caprylate|emollient|Coco-Caprylat|Coco-caprylate
Beeswax|Cera Alba|consistency|Bienenwachs|Cire d'abeille
Candelilla wax|Candelilla Cera|consistency|Candelillawachs|Cire de candelilla
Lanolin|Lanolin|emollient|Wollwachs|Lanoline
Coco glucoside|Coco-Glucoside|surfactant|Kokosglucosid|Coco-glucoside
Decyl glucoside|Decyl Glucoside|surfactant|Decylglucosid|Décyl glucoside
Cocamidopropyl betaine|Cocamidopropyl Betaine|surfactant|Cocamidopropylbetain|Cocamidopropyl bétaïne
SCI powder|Sodium Cocoyl Isethionate|surfactant|SCI Pulver|SCI poudre
Sodium cocoyl glutamate|Sodium Cocoyl Glutamate|surfactant|Natriumcocoylglutamat|Cocoyl glutamate de sodium
Disodium laureth sulfosuccinate|Disodium Laureth Sulfosuccinate|surfactant|Sulfosuccinat|Sulfosuccinate
Conditioning emulsifier|Behentrimonium Methosulfate, Cetearyl Alcohol|conditioner|Haarspülungs-Emulgator|Émulsifiant conditionneur
Cationic guar|Guar Hydroxypropyltrimonium Chloride|conditioner|Guar, kationisch|Guar cationique
Hydrolysed wheat protein|Hydrolyzed Wheat Protein|film former|Weizenprotein|Protéines de blé
Kaolin|Kaolin|clay|Kaolin, weiß|Kaolin blanc
Bentonite|Bentonite|clay|Bentonit|Bentonite
Zinc oxide|Zinc Oxide|soothing powder|Zinkoxid|Oxyde de zinc
Corn starch|Zea Mays Starch|absorbent|Maisstärke|Amidon de maïs
Tapioca starch|Tapioca Starch|absorbent|Tapiokastärke|Amidon de tapioca
Baking soda|Sodium Bicarbonate|deodorising|Natron|Bicarbonate de soude
Magnesium hydroxide|Magnesium Hydroxide|deodorising|Magnesiumhydroxid|Hydroxyde de magnésium
Magnesium sulfate|Magnesium Sulfate|stabiliser|Magnesiumsulfat|Sulfate de magnésium
Salt|Sodium Chloride|thickener|Kochsalz|Sel fin
Sugar|Sucrose|exfoliant|Zucker|Sucre
Silica|Silica|texture|Kieselsäure|Silice
Colloidal oatmeal|Avena Sativa Kernel Flour|soothing|Hafermehl, kolloidal|Avoine colloïdale
Menthol|Menthol|cooling|Menthol|Menthol cristallisé
Alcohol|Alcohol|solvent|Ethanol 96 %|Alcool 96 %
Lavender essential oil|Lavandula Angustifolia Oil|scent|Lavendelöl, ätherisch|Huile essentielle de lavande
Orange essential oil|Citrus Aurantium Dulcis Peel Oil|scent|Orangenöl, ätherisch|Huile essentielle d'orange
Peppermint essential oil|Mentha Piperita Oil|scent|Pfefferminzöl, ätherisch|Huile essentielle de menthe
Tea tree essential oil|Melaleuca Alternifolia Leaf Oil|scent|Teebaumöl, ätherisch|Huile essentielle d'arbre à thé
Rosemary essential oil|Rosmarinus Officinalis Leaf Oil|scent|Rosmarinöl, ätherisch|Huile essentielle de romarin
Fragrance|Parfum|scent|Parfümöl|Parfum
"""
INCI, FUNC, DE, FR = {}, {}, {}, {}
for l in MASTER.strip().split("\n"):
    e, i, fu, d, fr = l.split("|")
    INCI[e], FUNC[e], DE[e], FR[e] = i, fu, d, fr

def f(txt, total="100"):
    """'A | Water *; Glycerin 3' -> [(phase, key, amount)]; * = what is left, as a figure"""
    out = []
    for l in txt.strip().split("\n"):
        ph, rest = [x.strip() for x in l.split("|", 1)]
        for it in rest.split(";"):
            it = it.strip()
            if not it: continue
            n, a = it.rsplit(" ", 1)
            out.append([ph, n, None if a == "*" else a])
    left = D(total) - sum(D(a) for _, _, a in out if a and a not in WORDS)
    for r in out:
        if r[2] is None: r[2] = plain(left)
    for _, n, _ in out:
        if n not in INCI: raise SystemExit("unknown material " + n)
    return out

def val(fm, a, total="100"):
    """the figure, also for rest"""
    if a == "rest":
        return D(total) - sum(D(x[2]) for x in fm if x[2] not in WORDS)
    return None if a in WORDS else D(a)

def phases(fm):
    seen = []
    for p, _, _ in fm:
        if p not in seen: seen.append(p)
    return seen

def X(title, fm, name=INCI.get, ph=lambda p: p):
    return F(title, [(name(n), a, ph(p)) for p, n, a in fm])

def csvrow(cells, sep=","):
    out = []
    for c in cells:
        c = "" if c is None else str(c)
        out.append('"%s"' % c.replace('"', '""') if sep in c or '"' in c or "\n" in c else c)
    return sep.join(out)

def csvtext(rows, sep=",", pad=0):
    return "\n".join(csvrow(list(r) + [""] * max(0, pad - len(r)), sep) for r in rows) + "\n"
