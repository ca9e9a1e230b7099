"""Makes the sheets of a small workshop on the border, two people. Jana keeps hers in German, Maëlle in French;
comma decimals, semicolons in the csv files, everyday names more often than INCI."""
import os, datetime
from sheet_kit import *
P = lambda n: os.path.join(HERE, "by-german-and-french", n)
calc = []

# B01 German csv from the office program, Windows letters
rows = fill([("A","Wasser, demineralisiert","Aqua",None),("A","Glycerin 99,5 %","Glycerin","4"),("A","Xanthan","Xanthan Gum","0.25"),("B","Mandelöl","Prunus Amygdalus Dulcis Oil","9"),("B","Sheabutter","Butyrospermum Parkii Butter","4.5"),("B","Emulgator auf Zuckerbasis","Sucrose Stearate","3"),("B","Cetylalkohol","Cetyl Alcohol","2.25"),("C","D-Panthenol 75 %","Panthenol","2"),("C","Konservierung","Sodium Benzoate, Potassium Sorbate","0.8"),("C","Vitamin E","Tocopherol","0.2")],3)
s="Phase;Rohstoff;INCI;Einsatz %\n"+"".join("%s;%s;%s;%s\n"%(r[0],r[1],r[2],de(r[3],2)) for r in rows)+";Summe;;100,00\n"
text(P("b01_Handcreme.csv"),s,"cp1252","\r\n"); expect(P("b01_Handcreme.csv"),"text",[F("b01_Handcreme",[(r[2],r[3],r[0]) for r in rows])])

# B02 French csv, q.s.p. 100
text(P("b02_lait_corps.csv"),'''Lait pour le corps à l'abricot;;
;;
Phase;Matière première;%
A;Eau distillée;q.s.p. 100
A;Glycérine végétale;3
A;Gomme xanthane;0,3
B;Huile de noyau d'abricot;12
B;Alcool cétylique;1,5
B;Stéarate de glycéryle SE;4
B;Beurre de karité;2,5
C;Extrait de calendula;2
C;Conservateur (alcool benzylique, acide déhydroacétique);0,8
C;Acide lactique;q.s. pH 5,5
C;Huile essentielle de lavande;0,3
;Total;100
''',"utf-8-sig","\r\n")
expect(P("b02_lait_corps.csv"),"text",[F("Lait pour le corps à l'abricot",[("Eau distillée","rest","A"),("Glycérine végétale","3","A"),("Gomme xanthane","0.3","A"),("Huile de noyau d'abricot","12","B"),("Alcool cétylique","1.5","B"),("Stéarate de glycéryle SE","4","B"),("Beurre de karité","2.5","B"),("Extrait de calendula","2","C"),("Conservateur (alcool benzylique, acide déhydroacétique)","0.8","C"),("Acide lactique","ph","C"),("Huile essentielle de lavande","0.3","C")])])

# B03 German xlsx, headings, amounts typed as text
blocks=[("Wasserphase",[("Rosenwasser","20,00 %","20"),("Wasser","ad 100 %","rest"),("Pentylenglykol","3,00 %","3"),("Hyaluronsäure niedermolekular","0,20 %","0.2")]),
("Fettphase",[("Jojobaöl","6,50 %","6.5"),("Wildrosenöl","3,50 %","3.5"),("Lecithin-Emulgator","4,00 %","4"),("Cetearylalkohol","2,50 %","2.5")]),
("Wirkstoffphase",[("Coenzym Q10 in Öl","1,00 %","1"),("Niacinamid","3,00 %","3"),("Konservierungsmittel","1,00 %","1"),("Rosengeranienöl","0,15 %","0.15")])]
wb=Workbook(); ws=wb.active; ws.title="Nachtcreme"; ws["A1"]="Nachtcreme Wildrose"; ws["A1"].font=Font(bold=True,size=14); ws["A2"]="Stand: 12.03.2025   Jana"
r=4; put(ws,r,1,["Rohstoff","Menge"],bold=True); r+=1; ls=[]
for ph,l in blocks:
    put(ws,r,1,[ph],bold=True,color="E2EFDA"); r+=1
    for n,t,a in l: put(ws,r,1,[n,t]); ws.cell(r,2).alignment=Alignment(horizontal="right"); ls.append((n,a,ph)); r+=1
    r+=1
put(ws,r,1,["Gesamt","100,00 %"],bold=True); widths(ws,34,12); wb.save(P("b03 Nachtcreme.xlsx"))
expect(P("b03 Nachtcreme.xlsx"),"openpyxl",[F("Nachtcreme Wildrose",ls)])

# B04 French xlsx, grams for 500 g, merged phase headings, some drops
blocks=[("A",[("Eau florale de fleur d'oranger",150),("Eau déminéralisée",201.5),("Glycérine",15)]),("B",[("Huile de tournesol",60),("Cire émulsifiante n° 3",30),("Alcool cétéarylique",10),("Beurre de cacao",25)]),("C",[("Poudre d'avoine colloïdale",5),("Conservateur",3.5),("Essence de mandarine","quelques gouttes")])]
wb=Workbook(); ws=wb.active; ws.title="Crème mains"; bar(ws,1,1,3,"CRÈME POUR LES MAINS","C6E0B4",size=14,align="center"); bar(ws,2,1,3,"pour 500 g","FFFFFF",bold=False,align="center")
put(ws,3,1,["Ingrédient","Grammes","Remarques"],bold=True); r=4; ls=[]
for ph,l in blocks:
    bar(ws,r,1,3,"Phase "+ph,"E2EFDA"); r+=1
    for n,x in l: put(ws,r,1,[n,x]); ls.append((n,x if not isinstance(x,str) else "unknown",ph)); r+=1
ws.cell(5,3,"ou hamamélis"); put(ws,r,1,["TOTAL",500],bold=True); ws.cell(r+2,1,"Chauffer A et B séparément à 70 °C, verser B dans A, émulsionner 3 minutes. C sous 40 °C."); widths(ws,34,18,20)
assert sum(x for _,l in blocks for _,x in l if not isinstance(x,str))==500
wb.save(P("b04_creme_mains.xlsx")); expect(P("b04_creme_mains.xlsx"),"openpyxl",[G("CRÈME POUR LES MAINS",ls)])

# B05 two formulas in one German csv
a=fill([("Wasser",None),("Zuckertensid (Decylglucosid)","16"),("Kokosglucosid und Glyceryloleat","2"),("Betain","10"),("Glycerin","2"),("Pfefferminzhydrolat","15"),("Xanthan","1"),("Kaliumsorbat","0.3"),("Natriumbenzoat","0.4"),("Zitronensäure","0.35")],1)
b=fill([("Wasser",None),("Brokkolisamenöl","2"),("Cetylalkohol","4.5"),("Behentrimoniumchlorid","2.5"),("Weizenprotein","1.5"),("D-Panthenol","1"),("Konservierer","0.9"),("Parfümöl Feige","0.4")],1)
s="Rezeptur: Minz-Shampoo;\n;\nZutat;%\n"+"".join("%s;%s\n"%(n,de(x)) for n,x in a)+"Summe;100\n;\nHinweis: Zitronensäure erst am Schluss, pH 5 bis 5,5 prüfen;\n;\nRezeptur: Haarspülung Feige;\n;\nZutat;%\n"+"".join("%s;%s\n"%(n,de(x)) for n,x in b)+"Summe;100\n"
text(P("b05_Haare.csv"),s); expect(P("b05_Haare.csv"),"text",[F("Minz-Shampoo",[(n,x,"") for n,x in a]),F("Haarspülung Feige",[(n,x,"") for n,x in b])])

# B06 both languages and INCI side by side
rows=fill([("A","Wasser","Eau","Aqua",None),("A","Aloe-vera-Saft","Jus d'aloe vera","Aloe Barbadensis Leaf Juice","15"),("A","Glycerin","Glycérine","Glycerin","4"),("A","Natriumhyaluronat","Hyaluronate de sodium","Sodium Hyaluronate","0.5"),("B","Squalan","Squalane","Squalane","3"),("B","Emulgator kalt","Émulsifiant à froid","Polyglyceryl-4 Caprate","2.5"),("B","Acrylat-Gelbildner","Gélifiant acrylique","Sodium Polyacrylate","1.2"),("C","Grüntee-Extrakt","Extrait de thé vert","Camellia Sinensis Leaf Extract","1"),("C","Konservierer","Conservateur","Phenoxyethanol, Ethylhexylglycerin","1")],4)
wb=Workbook(); ws=wb.active; ws.title="Gel-Creme"; bar(ws,1,1,6,"Gel-Creme leicht / Gel-crème légère","DDEBF7",size=13)
put(ws,2,1,["Phase","Deutsch","Français","INCI","%","1 kg"],bold=True)
for i,r in enumerate(rows): put(ws,3+i,1,r[:4]+[num(r[4]),num(D(r[4])*10)]); ws.cell(3+i,5).number_format="0.00"
put(ws,3+len(rows),4,["Summe / Total",100,1000],bold=True); widths(ws,7,22,24,38,8,8); wb.save(P("b06_gel-creme.xlsx"))
expect(P("b06_gel-creme.xlsx"),"openpyxl",[F("Gel-Creme leicht / Gel-crème légère",[(r[3],r[4],r[0]) for r in rows])])

# B07 German stock list
st=[("Mandelöl","M-24117",5000,48.9,3120,"Lieferant 1"),("Sheabutter, raffiniert","SB 0093",5000,42.5,4600,"Lieferant 2"),("Glycerin 99,5 %","G-7781",10000,31,7250,"Lieferant 1"),("Cetylalkohol","C-1020",1000,11.4,640,"Lieferant 1"),("Xanthan","X-55",500,13.8,410,"Lieferant 3"),("Kaliumsorbat","KS-2",500,7.9,355.5,"Lieferant 3"),("Lavendelöl","LV-25-03",250,38.5,112.5,"Lieferant 4"),("Vitamin E","VE-881",250,29.9,0,"Lieferant 1"),("Kaolin","K-12",2500,12.25,1900,"Lieferant 2")]
wb=Workbook(); ws=wb.active; ws.title="Lager"; ws["A1"]="Lagerliste Rohstoffe"; ws["A1"].font=Font(bold=True); ws["A2"]="Inventur 31.12.2024"
put(ws,4,1,["Rohstoff","Lieferant","Charge","Gebinde (g)","EK netto (€)","Bestand (g)","MHD"],bold=True,color="FFE699")
for i,r in enumerate(st): put(ws,5+i,1,[r[0],r[5],r[1],r[2],r[3],r[4],datetime.date(2026,1+i,1)]); ws.cell(5+i,5).number_format='#,##0.00'; ws.cell(5+i,4).number_format='#,##0'; ws.cell(5+i,7).number_format="mm/yyyy"
widths(ws,24,14,12,12,12,12,10); wb.save(P("b07_Lagerliste.xlsx"))
expect(P("b07_Lagerliste.xlsx"),"openpyxl",[],[M(r[0],"%.2f"%r[3],r[2],r[4],r[1]) for r in st])

# B08 French stock list, units in the cell
text(P("b08_inventaire.csv"),'''Inventaire matières premières;;;;;
au 15/01/2025;;;;;
;;;;;
Matière;Fournisseur;Conditionnement;Prix HT;En stock;N° de lot
Huile de tournesol;fournisseur 1;5 kg;27,50 €;3,2 kg;HT-0412
Huile de noyau d'abricot;fournisseur 1;1 kg;21,90 €;640 g;NA-118
Beurre de karité;fournisseur 2;2,5 kg;31,25 €;1,75 kg;K24-7
Cire d'abeille;fournisseur 2;500 g;9,80 €;85 g;
Argile verte;fournisseur 3;1 kg;4,60 €;980 g;AV 2024
Alcool cétylique;fournisseur 1;1 kg;12,40 €;310 g;AC-77
Glycérine végétale;fournisseur 1;5 kg;19,00 €;4 100 g;G-5512
Gomme xanthane;fournisseur 3;100 g;4,95 €;62,5 g;GX-9
Acide lactique;fournisseur 3;250 g;6,20 €;190 g;
''',"cp1252","\r\n")
expect(P("b08_inventaire.csv"),"text",[],[M("Huile de tournesol","27.50",5000,3200,"HT-0412"),M("Huile de noyau d'abricot","21.90",1000,640,"NA-118"),M("Beurre de karité","31.25",2500,1750,"K24-7"),M("Cire d'abeille","9.80",500,85,""),M("Argile verte","4.60",1000,980,"AV 2024"),M("Alcool cétylique","12.40",1000,310,"AC-77"),M("Glycérine végétale","19.00",5000,4100,"G-5512"),M("Gomme xanthane","4.95",100,"62.5","GX-9"),M("Acide lactique","6.20",250,190,"")])

# B09 German soap in grams with subtotal
oel=[("Olivenöl",450),("Kokosöl",250),("Rapsöl",150),("Sheabutter",100),("Rizinusöl",50)]; lau=[("Natriumhydroxid",134),("Wasser",300)]; zus=[("Ringelblumenblüten",3),("Orangenöl",22.5),("Annattopulver",2)]
wb=Workbook(); ws=wb.active; ws.title="Seife 14"; put(ws,1,1,["Seife Nr. 14 – Ringelblume"],bold=True); ws["A2"]="Überfettung 8 %"; ws["A3"]="gesiedet am 02.11.2024"
r=5; ls=[]
for ph,l,sm in (("Fette",oel,"Summe Fette"),("Lauge",lau,None),("Zusätze",zus,None)):
    put(ws,r,1,[ph,"Gramm"],bold=True,color="FFF2CC"); r+=1
    for n,x in l: put(ws,r,1,[n,x]); ls.append((n,x,ph)); r+=1
    if sm: put(ws,r,1,[sm,sum(x for _,x in l)]); ws.cell(r,1).font=Font(italic=True); r+=1
    r+=1
put(ws,r,1,["Gesamtgewicht",sum(x for _,x,_ in ls)],bold=True); widths(ws,30,10); wb.save(P("b09_Seife14.xlsx"))
expect(P("b09_Seife14.xlsx"),"openpyxl",[G("Seife Nr. 14 – Ringelblume",ls)])

# B10 German csv, sign in the cell, names holding per cents, pH line, dash rows between
text(P("b10_AHA-Toner.csv"),'''"Fruchtsäure-Toner";;
Zutat;Anteil;Bemerkung
Wasser;ad 100;frisch abgekocht
Hamameliswasser;25 %;
Milchsäure 80 %;6,25 %;entspricht 5 % reiner Säure
Glycerin 86 %;3,5 %;
Betain (pflanzl.);2 %;
Natriumlactat 60 %;2,5 %;
Hydroxyethylcellulose;0,4 %;"vorquellen, ca. 20 min"
Kaliumsorbat;0,3 %;
Natronlauge 10 %;q.s. (pH 3,8);tropfenweise
-----;;
Summe;100 %;
''')
expect(P("b10_AHA-Toner.csv"),"text",[F("Fruchtsäure-Toner",[("Wasser","rest",""),("Hamameliswasser","25",""),("Milchsäure 80 %","6.25",""),("Glycerin 86 %","3.5",""),("Betain (pflanzl.)","2",""),("Natriumlactat 60 %","2.5",""),("Hydroxyethylcellulose","0.4",""),("Kaliumsorbat","0.3",""),("Natronlauge 10 %","ph","")])])

# B11 German calculator with three batch sizes, percent cells
rows=fill([("A","Wasser","Aqua",None),("A","Glycerin","Glycerin","3"),("A","Allantoin","Allantoin","0.2"),("B","Rapsöl","Brassica Campestris Seed Oil","10"),("B","Wollwachs","Lanolin","6"),("B","Bienenwachs","Cera Alba","2"),("B","Emulgator W/O","Polyglyceryl-3 Polyricinoleate","4"),("B","Zinkoxid","Zinc Oxide","12"),("B","Magnesiumstearat","Magnesium Stearate","0.5"),("C","Magnesiumsulfat","Magnesium Sulfate","0.7"),("C","Konservierer","Phenethyl Alcohol, Caprylyl Glycol","1")],3)
wb=Workbook(); ws=wb.active; ws.title="Wundschutz"; put(ws,1,2,["Wundschutzcreme für Babys"],bold=True); put(ws,3,1,["Phase","Rohstoff","INCI","Anteil",100,500,1000],bold=True)
for c in (5,6,7): ws.cell(3,c).number_format='0" g"'
for i,r in enumerate(rows):
    q=4+i; put(ws,q,1,[r[0],r[1],r[2],float(D(r[3])/100)]+["=$D%d*%s$3"%(q,c) for c in "EFG"]); ws.cell(q,4).number_format="0.00%"
    for c in (5,6,7): ws.cell(q,c).number_format="0.0"
q=4+len(rows); put(ws,q,2,["Summe",None]+["=SUM(%s4:%s%d)"%(c,c,q-1) for c in "DEFG"],bold=True); ws.cell(q,4).number_format="0.00%"
widths(ws,7,18,36,9,9,9,9); wb.save(P("b11_Wundschutz.xlsx")); calc.append(P("b11_Wundschutz.xlsx"))
expect(P("b11_Wundschutz.xlsx"),"calc",[F("Wundschutzcreme für Babys",[(r[2],r[3],r[0]) for r in rows])])

# B12 French solid shampoo csv: per cent and grams for 80 g
body=[("Sodium cocoyl isethionate en poudre","52.5"),("Coco-glucoside","10"),("Eau","8"),("Beurre de cacao","6"),("Alcool cétylique","5"),("Acide stéarique","4"),("Amidon de maïs","9.2"),("Protéine de riz hydrolysée","2"),("Poudre d'ortie","1.5"),("Conservateur","0.8"),("Huile essentielle de romarin","1")]
s="Shampoing solide à l'ortie\n\nINGRÉDIENTS;POURCENTAGE;POUR 80 g\n"+"".join("%s;%s %%;%s g\n"%(n,de(x),de(D(x)*D("0.8"))) for n,x in body)+"TOTAL;100 %;80 g\n\nPétrir, presser dans le moule, laisser sécher deux jours\n"
text(P("b12 shampoing solide.csv"),s); expect(P("b12 shampoing solide.csv"),"text",[F("Shampoing solide à l'ortie",[(n,x,"") for n,x in body])])

# B13 French, phases in cells merged downwards
blocks=[("Phase aqueuse",[("Hydrolat de bleuet","Centaurea Cyanus Flower Water","30"),("Eau","Aqua",None),("Propanediol végétal","Propanediol","4"),("Caféine","Caffeine","1")]),("Phase huileuse",[("Huile de noisette","Corylus Avellana Seed Oil","5"),("Émulsifiant olive","Cetearyl Olivate, Sorbitan Olivate","4"),("Beurre de mangue","Mangifera Indica Seed Butter","2")]),("Ajouts",[("Vitamine E","Tocopherol","0.3"),("Conservateur","Sodium Levulinate, Sodium Anisate","1.5"),("Arôme naturel de pêche","","0.2")])]
left=100-sum(D(a) for _,l in blocks for *_,a in l if a)
wb=Workbook(); ws=wb.active; ws.title="Contour des yeux"; ws.merge_cells("A1:D1"); ws["A1"]="Contour des yeux bleuet-caféine"; ws["A1"].font=Font(bold=True,size=14)
ws.merge_cells("A2:D2"); ws["A2"]="Version 3 – janvier 2025 – Maëlle"; put(ws,4,1,["Phase","Nom courant","INCI","% m/m"],bold=True,color="EDEDED"); r=5; ls=[]
for ph,l in blocks:
    r0=r
    for n,i,a in l: a=a or plain(left); put(ws,r,2,[n,i or None,num(a)]); ls.append((i or n,a,ph)); r+=1
    ws.cell(r0,1,ph).alignment=Alignment(vertical="center",wrap_text=True); ws.merge_cells(start_row=r0,start_column=1,end_row=r-1,end_column=1)
put(ws,r,3,["Somme",100],bold=True); widths(ws,14,24,36,9); wb.save(P("b13_contour_yeux.xlsx"))
expect(P("b13_contour_yeux.xlsx"),"openpyxl",[F("Contour des yeux bleuet-caféine",ls)])

# B14 three German sheets, title only on the tab
tabs=[("Lippenpflege",[("Bienenwachs",22),("Kakaobutter",18),("Mandelöl",30),("Rizinusöl",24.5),("Honig",5),("Vitamin E",0.5)]),("Deocreme",[("Kokosöl",35),("Natron",20),("Maisstärke",28),("Sheabutter",15.5),("Salbeiöl",1),("Vitamin E",0.5)]),("Badepralinen",[("Kakaobutter",40),("Natron",24),("Zitronensäure",12),("Milchpulver",15),("Lysolecithin",6.5),("Rosenöl-Duft",2.5)])]
wb=Workbook(); wb.remove(wb.active); fs=[]
for nm,l in tabs:
    assert sum(x for _,x in l)==100,nm
    ws=wb.create_sheet(nm); put(ws,1,1,["Rohstoff","%","Menge für 250 g","Arbeitsschritt"],bold=True)
    for i,(n,x) in enumerate(l): put(ws,2+i,1,[n,de(x) if nm=="Badepralinen" and x!=int(x) else x,x*2.5])
    ws.cell(2,4,"schmelzen"); ws.cell(2+len(l)-1,4,"zuletzt, unter 40 °C"); put(ws,3+len(l),1,["Kontrollsumme",100,250]); widths(ws,20,8,16,22); fs.append(F(nm,[(n,str(x),"") for n,x in l]))
wb.save(P("b14_wasserfrei.xlsx")); expect(P("b14_wasserfrei.xlsx"),"openpyxl",fs)
through_calc(calc)
