"""Makes the sheets of a maker who has kept recipes for fifteen years: habits of each year, two lists of materials, one price list."""
from sheet_kit import *
import os
os.chdir(os.path.join(HERE,"by-long-keeper")); calc=[]
def csvrows(rows,sep):
    out=[]
    for r in rows:
        c=[]
        for x in r:
            x=str(x)
            if sep in x or '"' in x or "\n" in x: x='"'+x.replace('"','""')+'"'
            c.append(x)
        out.append(sep.join(c))
    return "\n".join(out)+"\n"

# 1 oldest: German, grams, comma, cp1252, phases as headings with instruction, a note between, total
fat=[("Mandelöl","30"),("Sheabutter","8"),("Cetylalkohol","4"),("Glycerylstearatcitrat","7")]
wat=[("Wasser, destilliert","100"),("Lavendelhydrolat","36"),("Glycerin","10"),("Xanthan","0.6")]
coo=[("Vitamin E","1"),("Benzylalkohol/Dehydracetsäure","2"),("Lavendelöl fein","1.4")]
rows=[["Lavendelcreme","",""],["Rezept vom 14.3.2010","",""],["","",""],["Zutat","Menge in g","Bemerkung"]]
rem={"Mandelöl":"oder Aprikosenkernöl","Xanthan":"zuerst in Glycerin anrühren","Lavendelöl fein":"nicht mehr!"}
for h,ls in (("Fettphase (auf 70 °C erwärmen)",fat),("Wasserphase (auf 70 °C erwärmen)",wat),("Abkühlphase (unter 40 °C)",coo)):
    rows.append([h,"",""])
    for n,g in ls: rows.append([n,de(g,1),rem.get(n,"")])
    if ls is wat: rows.append(["Jetzt die Wasserphase in die Fettphase rühren, nicht umgekehrt","",""])
rows+=[["Summe","200,0",""],["","",""],["ergibt 4 Tiegel zu 50 g","",""]]
text("lavendelcreme_2010.csv",csvrows(rows,";"),"cp1252","\r\n")
expect("lavendelcreme_2010.csv","text",[G("Lavendelcreme",[(n,a,"Fettphase") for n,a in fat]+[(n,a,"Wasserphase") for n,a in wat]+[(n,a,"Abkühlphase") for n,a in coo])])

# 2 English percent, phase column, INCI + common name, q.s. to 100 and to pH
ls=[("A","Aqua","Water, demineralised","q.s. to 100",""),("A","Glycerin","Vegetable glycerine","3.00",""),("A","Sodium Gluconate","Chelator","0.20",""),("A","Sodium Benzoate","Preservative powder","0.50","dissolve fully, then B"),
("B","Coco-Glucoside","Coconut sugar surfactant","9.00",""),("B","Cocamidopropyl Betaine","Betaine","7.50","stir slowly, foam!"),
("C","Panthenol","Provitamin B5","0.50",""),("C","Potassium Sorbate","Preservative powder","0.30",""),("C","Parfum","Fragrance, verbena type","0.30",""),("C","Citric Acid","Citric acid, 50% in water","q.s. to pH 5.0","")]
rows=[["Formula:","Foaming hand wash","","",""],["Version:","3","","",""],["","","","",""],["Phase","INCI","Common name","% w/w","Notes"]]+[list(x) for x in ls]+[["","Total","","100.00",""]]
text("foaming hand wash v3.csv",csvrows(rows,","))
w=lambda a:"rest" if "100" in a and "q.s" in a else "ph" if "pH" in a else a
expect("foaming hand wash v3.csv","text",[F("Foaming hand wash",[(i,w(a),p) for p,i,c,a,n in ls])])

# 3 price list, semicolons, pack sizes as text, price per kg beside
pl=[("Mandelöl raffiniert","Prunus Amygdalus Dulcis Oil","1 kg","14,90"),("Sonnenblumenöl","Helianthus Annuus Seed Oil","5 kg","22,50"),("Jojobaöl","Simmondsia Chinensis Seed Oil","500 g","16,40"),("Sheabutter","Butyrospermum Parkii Butter","2,5 kg","31,75"),("Kakaobutter","Theobroma Cacao Seed Butter","1 kg","19,20"),("Bienenwachs Pastillen","Cera Alba","1 kg","21,00"),("Cetylalkohol","Cetyl Alcohol","500 g","6,80"),("Glycerin 99,5 %","Glycerin","5 kg","24,00"),("Xanthan klar","Xanthan Gum","250 g","9,95"),("D-Panthenol 75 %","Panthenol","250 g","11,30"),("Vitamin E","Tocopherol","100 g","12,60"),("Lavendelöl fein","Lavandula Angustifolia Oil","50 g","13,80"),("Zitronensäure","Citric Acid","1 kg","5,40")]
def gr(t):
    n,u=t.rsplit(" ",1); n=D(n.replace(",",".")); return plain(n*1000 if u=="kg" else n)
rows=[["Preisliste Rohstoffe, Stand Januar 2024 (netto)","","","",""],["Rohstoff","INCI","Gebinde","Preis","Preis je kg"]]
for n,i,g,p in pl: rows.append([n,i,g,"€ "+p,"€ "+de(D(p.replace(",","."))*1000/D(gr(g))if False else (D(p.replace(",","."))*1000/D(gr(g))).quantize(D("0.01")),2)])
rows.append(["alle Preise ohne Porto","","","",""])
text("Preisliste_2024-01.csv",csvrows(rows,";"),"utf-8-sig","\r\n")
expect("Preisliste_2024-01.csv","text",[],[M(i,p.replace(",","."),gr(g)) for n,i,g,p in pl])

# 4 three balms beneath each other
T="Tocopherol"
b=[("Lip balm, plain",[("Ricinus Communis Seed Oil","38"),("Cera Alba","22"),("Theobroma Cacao Seed Butter","18"),("Butyrospermum Parkii Butter","12"),("Cocos Nucifera Oil","9.5"),(T,"0.5")]),
("Lip balm, peppermint",[("Ricinus Communis Seed Oil","36"),("Cera Alba","22"),("Theobroma Cacao Seed Butter","18"),("Butyrospermum Parkii Butter","12"),("Cocos Nucifera Oil","10.7"),(T,"0.5"),("Mentha Piperita Oil","0.8")]),
("Lip balm, vegan",[("Ricinus Communis Seed Oil","40"),("Euphorbia Cerifera Cera","14"),("Theobroma Cacao Seed Butter","16"),("Butyrospermum Parkii Butter","15"),("Helianthus Annuus Seed Oil","14.5"),(T,"0.5")])]
rows=[]
for t,l in b:
    rows+=[[t,""],["INCI","%"]]+[[n,a] for n,a in l]+[["TOTAL","100.0"],["",""],["",""]]
rows[-2:]=[["melt together on the water bath, pour at 65 C",""]]
text("lip balms.csv",csvrows(rows,","),"utf-8","\r\n")
expect("lip balms.csv","text",[F(t,[(n,a,"") for n,a in l]) for t,l in b])

# 5 merged side cells
ph=[("Phase A (75 °C)","A",[("Water","Aqua","q.s. 100"),("Glycerine","Glycerin","4"),("Xanthan","Xanthan Gum","0.25"),("Allantoin","Allantoin","0.2")]),
("Phase B (75 °C)","B",[("Olive emulsifier","Cetearyl Olivate (and) Sorbitan Olivate","5"),("Almond oil","Prunus Amygdalus Dulcis Oil","8"),("Shea","Butyrospermum Parkii Butter","5"),("Avocado oil","Persea Gratissima Oil","4"),("Cetyl alcohol","Cetyl Alcohol","2")]),
("Phase C (below 40 °C)","C",[("Panthenol","Panthenol","1"),("Vitamin E","Tocopherol","0.5"),("Preservative","Benzyl Alcohol (and) Dehydroacetic Acid","0.9"),("Lavender oil","Lavandula Angustifolia Oil","0.3")])]
wb=Workbook(); ws=wb.active; ws.title="Winter"; widths(ws,12,22,42,10,30)
bar(ws,1,1,5,"Face cream for dry skin (winter)","FCE4D6",size=14); put(ws,2,1,["last changed: 3 Nov 2019, more avocado"])
put(ws,4,1,["","Ingredient","INCI","%","Remark"],bold=True,color="EEEEEE"); r=5; out=[]
for h,p,l in ph:
    s=r
    for n,i,a in l:
        put(ws,r,2,[n,i,a if a[0]=="q" else num(a)],fmt="0.00"); out.append((i,"rest" if a[0]=="q" else a,p)); r+=1
    x=ws.cell(s,1,h); x.alignment=Alignment(text_rotation=90,vertical="center",horizontal="center",wrap_text=True); ws.merge_cells(start_row=s,start_column=1,end_row=r-1,end_column=1)
ws.cell(6,5,"disperse xanthan in it first"); put(ws,r,2,["Total","",100],bold=True)
wb.save("Face cream winter.xlsx"); expect("Face cream winter.xlsx","openpyxl",[F("Face cream for dry skin (winter)",out)])

# 6 batch scaling with cell formulas, water as 100 minus the others
ls=fill([("A","Aqua",None),("A","Glycerin","3"),("A","Sodium Lactate","1.5"),("A","Xanthan Gum","0.2"),("B","Glyceryl Stearate Citrate","3"),("B","Caprylic/Capric Triglyceride","7"),("B","Helianthus Annuus Seed Oil","4"),("B","Cetearyl Alcohol","1.5"),("C","Phenoxyethanol (and) Ethylhexylglycerin","0.9"),("C","Tocopheryl Acetate","0.5"),("C","Parfum","0.4")],2)
wb=Workbook(); ws=wb.active; ws.title="Lotion"; widths(ws,8,42,10,14,14,4,18)
put(ws,1,1,["Body lotion, light"],bold=True); put(ws,3,2,["Batch size (g)","",500,3000]); ws.cell(3,4).fill=PatternFill("solid",fgColor="FFFF99"); ws.cell(3,5).fill=PatternFill("solid",fgColor="FFFF99")
put(ws,5,1,["Phase","Material","%","small (g)","large (g)","","weighed?"],bold=True)
r=6;e=r+len(ls)-1
for p,n,a in ls:
    put(ws,r,1,[p,n,"=100-SUM(C7:C%d)"%e if n=="Aqua" else num(a),"=C%d*D$3/100"%r,"=C%d*E$3/100"%r]); ws.cell(r,3).number_format="0.00"; ws.cell(r,4).number_format="0.0"; ws.cell(r,5).number_format="0.0"; r+=1
put(ws,r,2,["Sum"]+["=SUM(%s6:%s%d)"%(c,c,e) for c in "CDE"],bold=True)
put(ws,r+2,1,["pH should be 5.5, viscosity like thin custard. Water column is what is left to 100."])
wb.save("body lotion light - scaling.xlsx"); calc.append("body lotion light - scaling.xlsx"); expect(calc[-1],"calc",[F("Body lotion, light",[(n,a,p) for p,n,a in ls])])

# 7 four tabs
wb=Workbook(); ws=wb.active; ws.title="Shampoo"; widths(ws,8,44,12,30)
sh=fill([("A","Aqua",None),("A","Glycerin","2"),("A","Guar Hydroxypropyltrimonium Chloride","0.2"),("B","Coco-Glucoside","12"),("B","Sodium Cocoamphoacetate","10"),("B","Cocamidopropyl Betaine","8"),("B","Sodium Chloride","0.8"),("C","Panthenol","0.5"),("C","Sodium Benzoate","0.5"),("C","Potassium Sorbate","0.3"),("C","Parfum","0.5"),("C","Citric Acid","ph")],2)
put(ws,1,1,["Shampoo for every day"],bold=True); put(ws,2,1,["Ph.","INCI","%","notes"],bold=True)
for k,(p,n,a) in enumerate(sh): put(ws,3+k,1,[p,n,"to pH 5.0" if a=="ph" else num(a),"wet the guar with glycerin" if "Guar" in n else None])
put(ws,3+len(sh),2,["Total","=SUM(C3:C%d)"%(2+len(sh))],bold=True)
ws=wb.create_sheet("Conditioner"); widths(ws,44,12)
co=[("Water phase",[("Aqua","862"),("Glycerin","20")]),("Fat phase",[("Behentrimonium Methosulfate (and) Cetearyl Alcohol","40"),("Cetearyl Alcohol","35"),("Simmondsia Chinensis Seed Oil","20")]),("Cool down",[("Panthenol","10"),("Phenoxyethanol (and) Ethylhexylglycerin","9"),("Parfum","4")])]
put(ws,1,1,["Conditioner, 1 kg"],bold=True); put(ws,3,1,["Material","grams"],bold=True); r=4; cl=[]
for h,l in co:
    bar(ws,r,1,2,h,"E2EFDA",merge=False); r+=1
    for n,a in l: put(ws,r,1,[n,num(a)]); cl.append((n,a,h)); r+=1
put(ws,r,1,["Total","=SUM(B4:B%d)"%(r-1)],bold=True)
ws=wb.create_sheet("Scalp tonic"); widths(ws,44,14)
to=[("Aqua","rest"),("Alcohol denat.","20"),("Glycerin","2"),("Panthenol","1"),("Niacinamide","1"),("Rosmarinus Officinalis Leaf Extract","1"),("Caffeine","0.5"),("Menthol","0.2")]
put(ws,1,1,["Scalp tonic"],bold=True); put(ws,2,1,["What","per cent"],bold=True)
for k,(n,a) in enumerate(to): put(ws,3+k,1,[n,"ad 100" if a=="rest" else num(a)])
put(ws,12,1,["Dissolve menthol in the alcohol, the rest in water, mix, filter."])
ws=wb.create_sheet("Stock"); widths(ws,50,14,14)
st=[("Coco-Glucoside","2350","CG-118"),("Sodium Cocoamphoacetate","1900","SC-204"),("Cocamidopropyl Betaine","4100","CB-071"),("Guar Hydroxypropyltrimonium Chloride","85","GH-9"),("Behentrimonium Methosulfate (and) Cetearyl Alcohol","640","BM-33"),("Cetearyl Alcohol","1200","CA-52"),("Panthenol","210","PN-17"),("Sodium Benzoate","430",""),("Potassium Sorbate","380",""),("Menthol","45","ME-2"),("Caffeine","120","CF-6")]
put(ws,1,1,["INCI","on shelf (g)","lot"],bold=True)
for k,(n,s,l) in enumerate(st): put(ws,2+k,1,[n,num(s),l or None])
wb.save("Hair care.xlsx"); calc.append("Hair care.xlsx")
expect(calc[-1],"calc",[F("Shampoo for every day",[(n,a,p) for p,n,a in sh]),G("Conditioner, 1 kg",cl),F("Scalp tonic",[(n,a,"") for n,a in to])],[M(n,stock=s,lot=l) for n,s,l in st])

# 8 German bars with subtotals, grams
hc=[("Phase 1 (auf 75 °C)","1",[("Wasser, abgekocht","640"),("Glycerin","80"),("Urea","50"),("Natriumlactat","20"),("Xanthan","3")]),("Phase 2 (auf 75 °C)","2",[("Glycerylstearat SE","50"),("Cetearylalkohol","30"),("Sonnenblumenöl","60"),("Sheabutter","40"),("Bienenwachs","10")]),("Phase 3 (unter 35 °C)","3",[("Phenoxyethanol/Ethylhexylglycerin","9"),("Vitamin E","5"),("Duft Gartenkräuter","3")])]
wb=Workbook(); ws=wb.active; ws.title="Handcreme"; widths(ws,5,38,12,12)
bar(ws,1,2,4,"Handcreme für Gärtner","C6E0B4",size=13); put(ws,2,2,["Ansatz 1 kg","","ab 2014"]); put(ws,3,2,["Rohstoff","g","erledigt"],bold=True)
r=4; o=[]; subs=[]
for h,p,l in hc:
    bar(ws,r,2,4,h,"FFF2CC"); r+=1; s=r
    for n,a in l: put(ws,r,2,[n,num(a)]); o.append((n,a,p)); r+=1
    put(ws,r,2,["Zwischensumme","=SUM(C%d:C%d)"%(s,r-1)]); ws.cell(r,2).font=Font(italic=True); subs.append("C%d"%r); r+=1
put(ws,r,2,["Gesamt","="+"+".join(subs)],bold=True); put(ws,r+2,2,["Phase 2 in Phase 1, 3 Minuten homogenisieren, kalt rühren."])
wb.save("Handcreme_Gärtner.xlsx"); calc.append("Handcreme_Gärtner.xlsx"); expect(calc[-1],"calc",[G("Handcreme für Gärtner",o)])

# 9 fractions shown as per cent
l=[("Helianthus Annuus Seed Oil","45"),("Prunus Amygdalus Dulcis Oil","25"),("Olea Europaea Fruit Oil","15.5"),("Polysorbate 20","12"),("Tocopherol","0.5"),("Citrus Sinensis Peel Oil","1.2"),("Lavandula Angustifolia Oil","0.8")]
wb=Workbook(); ws=wb.active; ws.title="Bath oil"; widths(ws,40,12)
put(ws,1,1,["Bath oil orange-lavender"],bold=True); put(ws,2,1,["INCI","share"],bold=True)
for k,(n,a) in enumerate(l): put(ws,3+k,1,[n,float(D(a)/100)],fmt="0.0%")
put(ws,10,1,["sum",1],bold=True,fmt="0.0%"); ws.cell(12,1,"no water, so no preservative; warn of slippery tub on the label")
wb.save("bath oil.xlsx"); expect("bath oil.xlsx","openpyxl",[F("Bath oil orange-lavender",[(n,a,"") for n,a in l])])

# 10 two years side by side
l=[("Cocos Nucifera Oil","30","28"),("Butyrospermum Parkii Butter","25","25"),("Cera Alba","6",""),("Euphorbia Cerifera Cera","","5.5"),("Sodium Bicarbonate","15","6"),("Zinc Oxide","","8"),("Zea Mays Starch","22","25.5"),("Tocopherol","0.5","0.5"),("Salvia Officinalis Oil","1.5","1.5")]
wb=Workbook(); ws=wb.active; ws.title="Deo"; widths(ws,36,18,18,40)
put(ws,1,1,["INCI","Deo cream 2017","Deo cream 2022","what changed"],bold=True,color="D9E1F2"); put(ws,2,2,["%","%"])
for k,(n,a,b2) in enumerate(l): put(ws,3+k,1,[n,num(a) if a else None,num(b2) if b2 else None,{"Cera Alba":"out, customers asked for vegan","Sodium Bicarbonate":"less, some got red skin"}.get(n)])
put(ws,12,1,["Total",100,100],bold=True)
wb.save("deo cream old and new.xlsx"); expect("deo cream old and new.xlsx","openpyxl",[F("Deo cream 2017",[(n,a,"") for n,a,b2 in l if a]),F("Deo cream 2022",[(n,b2,"") for n,a,b2 in l if b2])])

# 11 costing sheet, INCI empty in one row
l=[("Water","Aqua","solvent","70.05","0.05"),("Glycerine","Glycerin","humectant","3","4.80"),("Rose water","Rosa Damascena Flower Water","","5","11.50"),("Citrate emulsifier","Glyceryl Stearate Citrate","emulsifier","3.5","17.20"),("Neutral oil","Caprylic/Capric Triglyceride","emollient","10","9.40"),("Jojoba oil","Simmondsia Chinensis Seed Oil","emollient","5","32.80"),("Decyl glucoside","Decyl Glucoside","cleanser","2","7.10"),("Xanthan","Xanthan Gum","thickener","0.35","39.80"),("Preservative blend no. 2",None,"preservative","0.9","44.00"),("Rose perfume","Parfum","perfume","0.2","120.00")]
wb=Workbook(); ws=wb.active; ws.title="costing"; widths(ws,5,26,34,14,9,10,14)
put(ws,1,1,["Cleansing milk - costing"],bold=True); put(ws,3,1,["No.","Common name","INCI","Function","%","EUR/kg","EUR in 1 kg"],bold=True,color="EEEEEE")
for k,(n,i,f,a,p) in enumerate(l):
    put(ws,4+k,1,[k+1,n,i,f or None,num(a),num(p),"=E%d*F%d/100"%(4+k,4+k)]); ws.cell(4+k,7).number_format="0.000"
put(ws,14,2,["Total","","","=SUM(E4:E13)","","=SUM(G4:G13)"],bold=True); put(ws,16,2,["Bottle and label","","","","",0.85]); put(ws,17,2,["Materials for a 200 g bottle, with bottle","","","","","=G14*0.2+G16"])
for rr in (14,16,17):
    for c in range(1,8):
        if ws.cell(rr,c).value=="": ws.cell(rr,c).value=None
wb.save("cleansing milk costing.xlsx"); calc.append("cleansing milk costing.xlsx"); expect(calc[-1],"calc",[F("Cleansing milk - costing",[(i or n,a,"") for n,i,f,a,p in l])])

# 12 phase named only in its first row, notes between, method beneath
g=[("A",[("Wasser","ad 100"),("Glycerin","3"),("Natriumhyaluronat","0.2")],"Hyaluron über Nacht quellen lassen!"),("B",[("Squalan","5"),("Jojobaöl","4"),("Cetearylglucosid/Cetearylalkohol","4"),("Cetylalkohol","1")],"A und B getrennt auf 75 °C, dann B in A"),("C",[("Koffein","0.5"),("Panthenol","1")],None),("D",[("Phenoxyethanol/Ethylhexylglycerin","0.9"),("Milchsäure","auf pH 5,5")],None)]
wb=Workbook(); ws=wb.active; ws.title="Augencreme"; widths(ws,8,40,14)
put(ws,1,1,["Augencreme mit Koffein"],bold=True); put(ws,3,1,["Phase","Was","%"],bold=True); r=4;o=[]
for p,li,note in g:
    for k,(n,a) in enumerate(li):
        t=a[0]=="a"; put(ws,r,1,[p if k==0 else None,n,a if t else num(a)]); o.append((n,"rest" if a=="ad 100" else "ph" if t else a,p)); r+=1
    if note: ws.cell(r,2,note).font=Font(italic=True,color="C00000"); r+=1
r+=1
for t in ("Herstellung","1. Phase A auf 75 °C erwärmen","2. Phase B schmelzen und einrühren","3. bei 40 °C Phase C dazu (Koffein vorher in 10 g heißem Wasser lösen)","4. Phase D, pH prüfen, abfüllen"): ws.cell(r,1,t); r+=1
wb.save("Augencreme.xlsx"); expect("Augencreme.xlsx","openpyxl",[F("Augencreme mit Koffein",o)])

# 13 block of facts above, table starts at C9, amounts as text with comma and sign
l=[("Rosenwasser","40"),("Wasser","53.1"),("Glycerin","3"),("Niacinamid","2"),("Panthenol","1"),("Natriumbenzoat","0.4"),("Milchsäure (80 %)","0.3"),("Kaliumsorbat","0.2")]
wb=Workbook(); ws=wb.active; ws.title="Tabelle1"; widths(ws,3,16,30,12,26)
for k,(a,b2) in enumerate((("Produkt:","Gesichtstonikum Rose"),("Datum:","22.5.2016"),("pH:","4,9"),("Haltbarkeit:","6 Monate"),("Füllmenge:","100 g"))): put(ws,2+k,2,[a,b2])
put(ws,9,3,["Bestandteil","Anteil","Hinweis"],bold=True)
for k,(n,a) in enumerate(l): put(ws,10+k,3,[n,plain(a).replace(".",",")+" %","zuletzt, tropfenweise" if "Milch" in n else None])
put(ws,18,3,["Summe","100 %"],bold=True)
wb.save("Tonikum Rose.xlsx"); expect("Tonikum Rose.xlsx","openpyxl",[F("Gesichtstonikum Rose",[(n,a,"") for n,a in l])])

# 14 material list with category rows
cats=[("Oils and butters",[("Almond oil","Prunus Amygdalus Dulcis Oil","A-2231","1000","14.90","620"),("Sunflower oil","Helianthus Annuus Seed Oil","S-880","5000","22.50","3150"),("Jojoba oil","Simmondsia Chinensis Seed Oil","J-14","500","16.40","275.5"),("Shea butter","Butyrospermum Parkii Butter","SB-7","2500","31.75","1840"),("Coconut oil","Cocos Nucifera Oil","","1000","8.20","0")]),
("Waxes and emulsifiers",[("Beeswax","Cera Alba","BW-19","1000","21.00","433"),("Cetyl alcohol","Cetyl Alcohol","CE-3","500","6.80","390"),("Olive emulsifier","Cetearyl Olivate (and) Sorbitan Olivate","OE-66","500","18.90","212"),("Citrate emulsifier","Glyceryl Stearate Citrate","","250","","90")]),
("Actives and preservatives",[("Panthenol","Panthenol","PN-17","250","11.30","210"),("Niacinamide","Niacinamide","N-508","100","7.90","64"),("Urea","Urea","U-1","1000","6.50","880"),("Preservative","Phenoxyethanol (and) Ethylhexylglycerin","PE-27","250","12.75","131.5")])]
wb=Workbook(); ws=wb.active; ws.title="Shelf"; widths(ws,24,42,10,12,12,10,12)
put(ws,1,1,["Materials on the shelf, counted 2 February"],bold=True); put(ws,3,1,["Name","INCI","Lot","Bought (g)","Paid (EUR)","Left (g)","Use by"],bold=True); r=4; ms=[]
for h,li in cats:
    bar(ws,r,1,7,h,"D9D9D9"); r+=1
    for n,i,lo,f,p,s in li:
        put(ws,r,1,[n,i,lo or None,num(f),num(p) if p else None,num(s),"12/2026"]); ws.cell(r,5).number_format="0.00"; ms.append(M(i,p,f,s,lo)); r+=1
wb.save("materials shelf.xlsx"); expect("materials shelf.xlsx","openpyxl",[],ms)

# 15 purchase log, kilograms, what is left by cell formula, total spent
lg=[("2023-09-04","Glycerine","G-301","5","24.00","3.6"),("2023-09-04","Neutral oil","NO-12","2.5","23.50","1.9"),("2023-10-11","Coco-glucoside","CG-118","5","33.00","2.65"),("2023-10-11","Betaine","CB-071","5","21.75","0.9"),("2023-11-20","Glycerine","G-355","5","25.20","0"),("2024-01-15","Sea salt, fine","","10","14.00","6.25"),("2024-01-15","White clay","WC-5","1","6.90","0.35"),("2024-02-06","Lavender oil","LV-44","0.1","26.40","0.018"),("2024-02-06","Zinc oxide","ZO-2","0.5","8.80","0.12")]
wb=Workbook(); ws=wb.active; ws.title="bought"; widths(ws,12,22,10,12,14,12,16)
put(ws,1,1,["Date","Material","Lot","kg bought","Price paid EUR","kg used","kg still here"],bold=True); ms=[]
import datetime
for k,(d,n,lo,q,p,u) in enumerate(lg):
    r=2+k; put(ws,r,1,[datetime.date.fromisoformat(d),n,lo or None,num(q),num(p),num(u),"=D%d-F%d"%(r,r)]); ws.cell(r,1).number_format="dd/mm/yyyy"; ws.cell(r,5).number_format="0.00"; ws.cell(r,7).number_format="0.000"
    ms.append(M(n,p,plain(D(q)*1000),plain((D(q)-D(u))*1000),lo))
put(ws,12,2,["Total spent"],bold=True); ws.cell(12,5,"=SUM(E2:E10)")
wb.save("purchases.xlsx"); calc.append("purchases.xlsx"); expect(calc[-1],"calc",[],ms)

# 16 from the first years: spoons and drops
a=[("Sea salt, coarse","300 g","300"),("Epsom salt","150 g","150"),("Bicarbonate of soda","40 g","40"),("Oat flour","10 g","10"),("Lavender oil","30 drops","unknown"),("Dried petals","a handful","unknown")]
c=[("White clay","3 tbsp","unknown"),("Oat flour","1 tbsp","unknown"),("Honey","1 tsp","unknown"),("Almond oil","1/2 tsp","unknown"),("Rose water","as needed","unknown")]
wb=Workbook(); ws=wb.active; ws.title="first years"; widths(ws,28,14); r=1
for t,li,n in (("Bath salts for one jar",a,"Shake in the jar, leave two days, shake again"),("Clay mask, fresh",c,"Use at once, does not keep")):
    ws.cell(r,1,t).font=Font(bold=True,size=13); r+=1; put(ws,r,1,["Ingredient","How much"],bold=True); r+=1
    for x in li: put(ws,r,1,[x[0],x[1]]); r+=1
    ws.cell(r,1,n).font=Font(italic=True); r+=3
wb.save("first years.xlsx"); expect("first years.xlsx","openpyxl",[G("Bath salts for one jar",[(x[0],x[2],"") for x in a]),G("Clay mask, fresh",[(x[0],x[2],"") for x in c])])
through_calc(calc)
