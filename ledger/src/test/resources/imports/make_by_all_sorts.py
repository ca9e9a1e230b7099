"""Makes sheets of all sorts: one or two for each habit that makers are known for, and some that combine three."""
from sheet_kit import *
import os
os.chdir(os.path.join(HERE,"by-all-sorts")); calc=[]
def cs(rows,sep):
    q=lambda x:'"'+x.replace('"','""')+'"' if sep in x or '"' in x or "\n" in x else x
    return "\n".join(sep.join(q(str(x)) for x in r) for r in rows)+"\n"
def side(ws,r1,r2,c,t):
    x=ws.cell(r1,c,t); x.alignment=Alignment(vertical="center",horizontal="center",wrap_text=True)
    if r2>r1: ws.merge_cells(start_row=r1,start_column=c,end_row=r2,end_column=c)

# 1 percent, signs in the cells
l=[("Water (Aqua)","62.5"),("Cocamidopropyl Betaine","15"),("Coco-Glucoside","12"),("Glycerin","5"),("Aloe Barbadensis Leaf Juice","3"),("Panthenol","1"),("Phenoxyethanol (and) Ethylhexylglycerin","0.9"),("Xanthan Gum","0.6")]
text("try01.csv",cs([["Gentle face wash",""],["Ingredient","Percent"]]+[[n,a+"%"] for n,a in l],","))
expect("try01.csv","text",[F("Gentle face wash",[(n,a,"") for n,a in l])])

# 2 grams, German thousands
l=[("Wasser","1244"),("Glycerin","100"),("Urea","160"),("Sonnenblumenöl","180"),("Sheabutter","120"),("Glycerylstearat SE","90"),("Cetylalkohol","60"),("Phenoxyethanol","18"),("Vitamin E","12"),("Teebaumöl","10"),("Menthol","6")]
th=lambda a:format(D(a),",.2f").replace(",","_").replace(".",",").replace("_",".")
text("try02.csv",cs([["Fußbalsam mit Urea",""],["Rohstoff","Einwaage (g)"]]+[[n,th(a)] for n,a in l]+[["Summe","2.000,00"]],";"),"utf-8-sig","\r\n")
expect("try02.csv","text",[G("Fußbalsam mit Urea",[(n,a,"") for n,a in l])])

# 3 phases as headings, French
g=[("Phase A (chauffer à 75 °C)","A",[("Eau déminéralisée",None),("Glycérine","4"),("Gomme xanthane","0.3")]),("Phase B (chauffer à 75 °C)","B",[("Huile de pépins de raisin","8"),("Triglycérides capryliques","6"),("Olivate de cétéaryle","5"),("Alcool cétylique","1.5")]),("Phase C (sous 40 °C)","C",[("Panthénol","1"),("Vitamine E","0.5"),("Conservateur (alcool benzylique)","0.8"),("Parfum fleur d'oranger","0.3")])]
left=plain(100-sum(D(a) for h,p,x in g for n,a in x if a)); wb=Workbook(); ws=wb.active; ws.title="Feuil1"; widths(ws,36,10); o=[]
put(ws,1,1,["Crème de jour légère"],bold=True); put(ws,2,1,["Ingrédients","%"],bold=True); r=3
for h,p,x in g:
    ws.cell(r,1,h).font=Font(bold=True); r+=1
    for n,a in x: a=a or left; put(ws,r,1,[n,num(a)]); o.append((n,a,p)); r+=1
    r+=1
wb.save("try03.xlsx"); expect("try03.xlsx","openpyxl",[F("Crème de jour légère",o)])

# 4 phase column, Spanish, c.s.p. and c.s. pH
l=[("A","Agua desmineralizada","c.s.p. 100"),("A","Glicerina","3,5"),("A","Goma xantana","0,3"),("B","Aceite de girasol","9"),("B","Manteca de karité","3"),("B","Citrato de estearato de glicerilo","3"),("B","Alcohol cetearílico","2"),("C","Vitamina E","0,5"),("C","Fenoxietanol","0,9"),("C","Perfume","0,4"),("C","Ácido láctico","c.s. pH 5,5")]
m=lambda a:"rest" if "100" in a else "ph" if "pH" in a else a.replace(",",".")
text("try04.csv",cs([["Leche corporal","",""],["","",""],["Fase","Ingrediente","%"]]+[list(x) for x in l],";"),"cp1252")
expect("try04.csv","text",[F("Leche corporal",[(n,m(a),p) for p,n,a in l])])

# 5 total rows of every sort
g=[("Water phase",[("Aloe Barbadensis Leaf Juice","40"),("Water","40.2"),("Glycerin","3"),("Xanthan Gum","0.4")]),("Oil phase",[("Caprylic/Capric Triglyceride","6"),("Squalane","4"),("Glyceryl Stearate Citrate","3")]),("Additions",[("Panthenol","2"),("Benzyl Alcohol","0.9"),("Tocopherol","0.3"),("Bisabolol","0.2")])]
wb=Workbook(); ws=wb.active; ws.title="After-sun"; widths(ws,34,10,12); o=[]; sb=[]
put(ws,1,1,["After-sun gel cream"],bold=True); put(ws,3,1,["Ingredient","%","for 800 g"],bold=True); r=4
for h,x in g:
    ws.cell(r,1,h).font=Font(bold=True,underline="single"); r+=1; s=r
    for n,a in x: put(ws,r,1,[n,num(a),"=B%d*8"%r]); o.append((n,a,h)); r+=1
    put(ws,r,1,["Subtotal "+h.lower(),"=SUM(B%d:B%d)"%(s,r-1),"=SUM(C%d:C%d)"%(s,r-1)],bold=True); sb.append(r); r+=1
put(ws,r,1,["GRAND TOTAL"]+["="+"+".join(c+str(k) for k in sb) for c in "BC"],bold=True); put(ws,r+1,1,["Difference to 100","=ROUND(100-B%d,4)"%r])
wb.save("try05.xlsx"); calc.append("try05.xlsx"); expect("try05.xlsx","calc",[F("After-sun gel cream",o)])

# 6 notes between, German
l=[("Zucker, fein","55"),"!! vorher sieben, Klumpen kratzen",("Sonnenblumenöl","20"),("Mandelöl","10"),("Sheabutter","8"),("Bienenwachs","3"),("Emulgierendes Wachs","3"),"→ hier schmelzen und 10 Minuten rühren, dann erst den Zucker",("Vitamin E","0.5"),("Orangenöl","0.5"),"Bei Zimmertemperatur 12 Stunden stehen lassen, 3 Gläser zu 100 g."]
wb=Workbook(); ws=wb.active; ws.title="Peeling"; widths(ws,40,10); put(ws,1,1,["Zuckerpeeling Orange"],bold=True); put(ws,2,1,["Idee von Ostern, zweiter Versuch, besser als der erste"]); put(ws,4,1,["Zutat","Prozent"],bold=True); r=5
for x in l:
    if isinstance(x,str): ws.cell(r,1,x).font=Font(italic=True)
    else: put(ws,r,1,[x[0],num(x[1])])
    r+=1
wb.save("try06.xlsx"); expect("try06.xlsx","openpyxl",[F("Zuckerpeeling Orange",[(x[0],x[1],"") for x in l if not isinstance(x,str)])])

# 7 comma and point in one column, texts and numbers
l=[("Water","80,4"),("Witch hazel water","12.5"),("Glycerin",3),("Niacinamide","2,0"),("Sodium PCA","1,25"),("Sodium benzoate","0,5"),("Potassium sorbate",0.25),("Citric acid","0.10 ")]
wb=Workbook(); ws=wb.active; ws.title="Sheet1"; widths(ws,28,12); put(ws,1,1,["Mixed-up toner"]); put(ws,2,1,["Name","w/w %"])
for k,(n,a) in enumerate(l): put(ws,3+k,1,[n,a])
wb.save("try07.xlsx"); expect("try07.xlsx","openpyxl",[F("Mixed-up toner",[(n,str(a).strip().replace(",","."),"") for n,a in l])])

# 8 q.s., French, comma file with comma decimals in quotes
l=[("Eau","q.s.p. 100","solvant"),("Coco-glucoside","12,5","tensioactif"),("Bétaïne de coco","8,0","tensioactif"),("Glycérine","4,0","humectant"),("Gomme xanthane","1,2","épaississant"),("Benzoate de sodium","0,5","conservateur"),("Sorbate de potassium","0,3","conservateur"),("Parfum","0,3",""),("Acide citrique (sol. 50 %)","q.s. pH 5,2","ajuster à la fin")]
text("try08.csv",cs([["Gel nettoyant mains","",""],["Ingrédient","Quantité (%)","Rôle"]]+[list(x) for x in l],","))
expect("try08.csv","text",[F("Gel nettoyant mains",[(n,m(a),"") for n,a,_ in l])])

# 9 names in two languages beside INCI
l=[("Sonnenblumenöl","Sunflower oil","Helianthus Annuus Seed Oil","50"),("Emulgator für Öl","Oil emulsifier","Polyglyceryl-4 Oleate","15"),("Traubenkernöl","Grape seed oil","Vitis Vinifera Seed Oil","12.3"),("Rizinusöl","Castor oil","Ricinus Communis Seed Oil","12"),("Jojobaöl","Jojoba oil","Simmondsia Chinensis Seed Oil","10"),("Vitamin E","Vitamin E","Tocopherol","0.5"),("Zitronenöl","Lemon oil","Citrus Limon Peel Oil","0.2")]
wb=Workbook(); ws=wb.active; ws.title="Öl"; widths(ws,22,22,32,10); put(ws,1,1,["Reinigungsöl / Cleansing oil"],bold=True); put(ws,3,1,["Deutsch","English","INCI","%"],bold=True)
for k,x in enumerate(l): put(ws,4+k,1,list(x[:3])+[num(x[3])])
put(ws,11,1,["Gesamt","Total","",100],bold=True); ws.cell(11,3).value=None
wb.save("try09.xlsx"); expect("try09.xlsx","openpyxl",[F("Reinigungsöl / Cleansing oil",[(x[2],x[3],"") for x in l])])

# 10 merged everything: title, two-row heading, side cells, note
g=[("A",[("Rosa Damascena Flower Water","30"),("Water","37.7"),("Glycerin","5")]),("B",[("Cetearyl Olivate (and) Sorbitan Olivate","6"),("Butyrospermum Parkii Butter","8"),("Argania Spinosa Kernel Oil","6"),("Rosa Canina Fruit Oil","4"),("Cera Alba","1.5")]),("C",[("Phenoxyethanol (and) Ethylhexylglycerin","1"),("Tocopherol","0.5"),("Pelargonium Graveolens Oil","0.3")])]
wb=Workbook(); ws=wb.active; ws.title="Night"; widths(ws,10,42,10,10); bar(ws,1,1,4,"Rich night cream",align="center",size=14)
side(ws,3,4,1,"Phase"); side(ws,3,4,2,"Material"); bar(ws,3,3,4,"Amount",align="center"); put(ws,4,3,["%","g"],bold=True); r=5; o=[]
for p,x in g:
    s=r
    for n,a in x: put(ws,r,2,[n,num(a),num(D(a)*2)]); o.append((n,a,p)); r+=1
    side(ws,s,r-1,1,p)
    if p=="B": bar(ws,r,1,4,"pour A into B while both are hot, then cool to 38 °C",color="FFFFFF",bold=False,align="center"); r+=1
ws.cell(r,1,"Total"); ws.merge_cells(start_row=r,start_column=1,end_row=r,end_column=2); put(ws,r,3,[100,200],bold=True)
wb.save("try10.xlsx"); expect("try10.xlsx","openpyxl",[F("Rich night cream",o)])

# 11 Spanish: merged side cells + comma as text + c.s.p.
g=[("Fase acuosa",[("Agua","c.s.p. 100"),("Hidrolato de azahar","15,0"),("Glicerina","3,5"),("Goma xantana","0,25")]),("Fase oleosa",[("Oleato de caléndula (aceite)","12,0"),("Aceite de almendras dulces","5,0"),("Cera emulsionante","6,0"),("Manteca de cacao","2,5")]),("Fase final",[("Vitamina E","0,5"),("Alcohol bencílico y ácido deshidroacético","0,8"),("Aceite esencial de naranja","0,2")])]
wb=Workbook(); ws=wb.active; ws.title="Hoja1"; widths(ws,42,12,16); bar(ws,1,1,3,"Crema facial de caléndula",align="center"); put(ws,2,1,["Materia prima","Cantidad %","Fase"],bold=True); r=3; o=[]
for p,x in g:
    s=r
    for n,a in x: put(ws,r,1,[n,a]); o.append((n,m(a),p)); r+=1
    side(ws,s,r-1,3,p)
put(ws,r,1,["TOTAL","100,00"],bold=True); wb.save("try11.xlsx"); expect("try11.xlsx","openpyxl",[F("Crema facial de caléndula",o)])

# 12 French: grams with unit in the cell + headings + notes, water to 250 g
g=[("PHASE GRASSE",[("Huile d'olive","30,0 g"),("Beurre de karité","20,0 g"),("Cire émulsifiante","15,0 g"),("Alcool cétylique","5,0 g")],"faire fondre doucement au bain-marie"),("PHASE AQUEUSE",[("Eau de source","q.s.p. 250 g"),("Hydrolat de menthe","50,0 g"),("Glycérine","12,5 g")],"verser en filet, mixer 2 min"),("AJOUTS",[("Conservateur","2,5 g"),("Vitamine E","1,25 g"),("Huile essentielle de menthe poivrée","1,25 g")],"")]
rows=[["Baume pour les pieds fatigués",""],["essai n° 4, mars",""],["",""]]; o=[]
for h,x,n in g:
    rows.append([h,""])
    for a,b in x:
        rows.append([a,b]); o.append((a,"rest" if "q.s.p" in b else plain(D(b[:-2].replace(",","."))*100/250),h))
    if n: rows.append(["("+n+")",""])
rows+=[["Total","250,0 g"],["donne 5 pots de 50 g",""]]
text("try12.csv",cs(rows,";"),"cp1252","\r\n"); expect("try12.csv","text",[F("Baume pour les pieds fatigués",o)])

# 13 two languages in one cell + % and g by cell formula + totals
l=[("A","Agua / Water","79.4"),("A","Glicerina / Glycerin","5"),("A","Jugo de aloe / Aloe juice","6"),("A","Hialuronato de sodio / Sodium hyaluronate","0.5"),("A","Goma xantana / Xanthan gum","0.3"),("B","Escualano / Squalane","3"),("B","Lecitina / Lecithin","1.5"),("C","Niacinamida / Niacinamide","3"),("C","Fenoxietanol / Phenoxyethanol","0.9"),("C","Vitamina E / Vitamin E","0.4")]
wb=Workbook(); ws=wb.active; ws.title="Serum"; widths(ws,12,44,10,12); put(ws,1,1,["Sérum de noche / Night serum"],bold=True); put(ws,2,1,["Lote / Batch (g)",250]); put(ws,4,1,["Fase / Phase","Ingrediente / Ingredient","%","g"],bold=True)
for k,(p,n,a) in enumerate(l): put(ws,5+k,1,[p,n,num(a),"=C%d/100*$B$2"%(5+k)])
put(ws,15,2,["Suma / Sum","=SUM(C5:C14)","=SUM(D5:D14)"],bold=True)
wb.save("try13.xlsx"); calc.append("try13.xlsx"); expect("try13.xlsx","calc",[F("Sérum de noche / Night serum",[(n,a,p) for p,n,a in l])])

# 14 German materials, units in the cells
l=[("Glycerin","Glycerin","GL-07","1 kg","6,90 €","350 g"),("Sonnenblumenöl","Helianthus Annuus Seed Oil","SO-112","5 kg","21,80 €","3,2 kg"),("Sheabutter","Butyrospermum Parkii Butter","SB-40","1 kg","14,20 €","0,75 kg"),("Bienenwachs","Cera Alba","BW-3","500 g","11,50 €","480 g"),("Xanthan","Xanthan Gum","XG-21","100 g","5,60 €","62,5 g"),("Panthenol","Panthenol","PA-9","250 g","12,10 €","leer"),("Vitamin E","Tocopherol","VE-15","100 g","13,00 €","88 g"),("Urea","Urea","","1 kg","7,40 €","1 kg"),("Zinkoxid","Zinc Oxide","ZN-2","500 g","8,30 €","275 g"),("Zitronensäure","Citric Acid","ZS-1","1.000 g","4,95 €","810 g")]
def gr(t):
    if t=="leer": return "0"
    n,u=t.split(" "); n=D(n.replace(".","").replace(",",".")); return plain(n*1000 if u=="kg" else n)
wb=Workbook(); ws=wb.active; ws.title="Lager"; widths(ws,20,32,10,12,12,12); put(ws,1,1,["Lagerliste Rohstoffe"],bold=True); put(ws,3,1,["Rohstoff","INCI","Charge","Gebinde","Preis","Bestand"],bold=True)
for k,x in enumerate(l): put(ws,4+k,1,[c or None for c in x])
put(ws,15,1,["Bitte Entnahmen immer eintragen!"]); wb.save("try14.xlsx"); expect("try14.xlsx","openpyxl",[],[M(i,p[:-2].replace(",","."),gr(f),gr(s),lo) for n,i,lo,f,p,s in l])

# 15 French materials, csv
l=[("Huile d'amande douce","14,90","1000","620","HA-22"),("Huile de coco","8,20","1000","150","HC-8"),("Cire d'abeille","21,00","1000","433","CA-19"),("Argile verte","5,75","500","500",""),("Oxyde de zinc","","500","120","OZ-2"),("Bicarbonate de sodium","3,40","1000","0",""),("Gomme xanthane","9,95","250","81,5","GX-5"),("Eau florale de rose","18,60","1000","740","ER-31"),("Acide lactique (80 %)","6,20","100","55","AL-1"),("Huile essentielle de lavande","26,40","100","18,5","LV-44")]
text("try15.csv",cs([["Matière première","Prix payé (€)","pour (g)","En stock (g)","N° de lot"]]+[list(x) for x in l],";"))
expect("try15.csv","text",[],[M(n,p.replace(",","."),f,s.replace(",","."),lo) for n,p,f,s,lo in l])

# 16 two recipes on one sheet, two languages, grams and drops, merged headings, notes, totals
f1=[("Geschmolzenes / Melted",[("Kakaobutter / Cocoa butter","60","60"),("Sheabutter / Shea butter","30","30"),("Mandelöl / Almond oil","10","10")]),("Pulver / Powders",[("Natron / Sodium bicarbonate","120","120"),("Zitronensäure / Citric acid","60","60"),("Maisstärke / Corn starch","20","20")]),("Zum Schluss / At the end",[("Lavendelöl / Lavender oil","25 Tropfen / drops","unknown"),("Blüten / Petals","1 EL / tbsp","unknown")])]
f2=[("Olivenöl / Olive oil","42,5"),("Kokosöl / Coconut oil","30"),("Bienenwachs / Beeswax","17,5"),("Lanolin / Lanolin","9"),("Vitamin E / Vitamin E","1")]
wb=Workbook(); ws=wb.active; ws.title="Mix"; widths(ws,40,22); bar(ws,1,1,2,"Badepralinen / Bath melts",align="center"); put(ws,2,1,["Zutat / Ingredient","Gramm / Grams"],bold=True); r=3; o=[]
for h,x in f1:
    bar(ws,r,1,2,h,"F2F2F2",align="center"); r+=1
    for n,a,e in x: put(ws,r,1,[n,a if e=="unknown" else num(a)]); o.append((n,e,h)); r+=1
put(ws,r,1,["Summe ohne Tropfen / Total without drops",300],bold=True); bar(ws,r+1,1,2,"in Förmchen gießen, kühl stellen / pour into moulds, chill",color="FFFFFF",bold=False); r+=4
bar(ws,r,1,2,"Wundsalbe für die Hände / Balm for chapped hands",align="center"); put(ws,r+1,1,["Zutat / Ingredient","%"],bold=True); r+=2
for n,a in f2: put(ws,r,1,[n,a if "," in a else num(a)]); r+=1
put(ws,r,1,["Summe / Total","100,0"],bold=True)
wb.save("try16.xlsx"); expect("try16.xlsx","openpyxl",[G("Badepralinen / Bath melts",o),F("Wundsalbe für die Hände / Balm for chapped hands",[(n,a.replace(",","."),"") for n,a in f2])])
through_calc(calc)
