"""Makes the sheets of Wren, an English-speaking hobbyist. Makes things at the kitchen table, keeps one
workbook a product (sometimes a csv out of a phone app), changes her layout every few months."""
import os, datetime
from sheet_kit import *
P = lambda n: os.path.join(HERE, "by-hobbyist", n)
calc = []

# A01 tidy: phase, ingredient, INCI, per cent, grams
rows = fill([
 ("A","Deionised water","Aqua",None),("A","Vegetable glycerine","Glycerin","4"),("A","Xanthan gum (clear)","Xanthan Gum","0.3"),
 ("B","Sunflower oil","Helianthus Annuus Seed Oil","8"),("B","Shea butter","Butyrospermum Parkii Butter","4"),
 ("B","Olive emulsifier","Cetearyl Olivate, Sorbitan Olivate","5"),("B","Cetyl alcohol","Cetyl Alcohol","1.5"),
 ("C","Provitamin B5","Panthenol","2"),("C","Vitamin E","Tocopherol","0.5"),
 ("C","Preservative","Benzyl Alcohol, Dehydroacetic Acid","0.9"),("C","Lavender essential oil","Lavandula Angustifolia Oil","0.3")],3)
wb=Workbook(); ws=wb.active; ws.title="Day cream"
ws["A1"]="Everyday day cream"; ws["A1"].font=Font(bold=True,size=14)
put(ws,3,1,["Phase","Ingredient","INCI","%","g for 200"],bold=True,color="E2EFDA")
for i,r in enumerate(rows): put(ws,4+i,1,[r[0],r[1],r[2],num(r[3]),num(D(r[3])*2)])
put(ws,4+len(rows),2,["Total",None,100,200],bold=True); widths(ws,7,24,36,8,10)
wb.save(P("a01-day-cream.xlsx")); expect(P("a01-day-cream.xlsx"),"openpyxl",[F("Everyday day cream",[(r[2],r[3],r[0]) for r in rows])])

# A02 csv, phase headings as rows
text(P("a02_body_lotion.csv"),'''Ingredient,%
Phase A,
Distilled water,to 100
Glycerine,3
Allantoin,0.2
Phase B,
"Emulsifying wax (Cetearyl alcohol, Polysorbate 60)",4.5
Sweet almond oil,9
Cetyl alcohol,1
Isopropyl myristate,3
Phase C,
Phenoxyethanol & ethylhexylglycerin,1
Vitamin E,0.5
Total,100
''')
expect(P("a02_body_lotion.csv"),"text",[F("a02_body_lotion",[("Distilled water","rest","A"),("Glycerine","3","A"),("Allantoin","0.2","A"),
 ("Emulsifying wax (Cetearyl alcohol, Polysorbate 60)","4.5","B"),("Sweet almond oil","9","B"),("Cetyl alcohol","1","B"),("Isopropyl myristate","3","B"),
 ("Phenoxyethanol & ethylhexylglycerin","1","C"),("Vitamin E","0.5","C")])])

# A03 balm in grams with notes
rows=[("Beeswax pellets",18,"yellow ones smell of honey"),("Shea butter",22,None),("Coconut oil",15,"the solid kind, not fractionated"),
 ("Castor oil",20,"for gloss"),("Jojoba oil",12.5,None),("Candelilla wax",2,"try 3 next time if too soft"),("Vitamin E",0.5,None)]
wb=Workbook(); ws=wb.active
ws["A1"]="Lip balm"; ws["A2"]="made 12 tubes + a bit left over, March"
put(ws,4,1,["What","grams ","notes"],bold=True)
for i,r in enumerate(rows): put(ws,5+i,1,r)
put(ws,12,1,["total",90]); ws["A14"]="Melt everything together in the bain marie, pour at about 65 C. Leave alone till set!"
widths(ws,22,8,34); wb.save(P("a03 lip balm.xlsx"))
expect(P("a03 lip balm.xlsx"),"openpyxl",[G("Lip balm",[(r[0],r[1],"") for r in rows])])

# A04 several sheets, one of text, one shopping list
wb=Workbook(); ws=wb.active; ws.title="READ ME"
for i,s in enumerate(["My toners and mists","Both sheets are in per cent by weight. Weigh, don't measure by volume.","Shopping list is on the last sheet.","Always check pH with strips before bottling"]): ws.cell(1+i*2,1,s)
t1=fill([("Rose water",  "40"),("Distilled water",None),("Glycerin","3"),("Aloe vera juice","10"),("Niacinamide","2"),("Sodium benzoate","0.4"),("Potassium sorbate","0.2"),("Citric acid","0.15")],1)
t2=fill([("Orange flower water","60"),("Distilled water",None),("Propanediol","3"),("Polysorbate 20","0.5"),("Sweet orange oil","0.1"),("Phenoxyethanol (and) Ethylhexylglycerin","0.9")],1)
for nm,t in (("Rose toner",t1),("Orange mist",t2)):
    ws=wb.create_sheet(nm); put(ws,1,1,["ingredient","% w/w"],bold=True)
    for i,r in enumerate(t): put(ws,2+i,1,[r[0],num(r[1])])
    put(ws,2+len(t),1,["TOTAL",100],bold=True); widths(ws,36,8)
mats=[("Glycerin",500,4.2,310),("Propanediol",250,6.75,200),("Niacinamide",100,5.5,82),("Polysorbate 20",100,3.1,100),("Sodium benzoate",100,2.4,91),("Rose water",1000,9.95,None),("Citric acid",250,1.99,240)]
ws=wb.create_sheet("Shopping"); put(ws,1,1,["Item","Pack size (g)","Price £","Have left (g)"],bold=True)
for i,r in enumerate(mats): put(ws,2+i,1,r); ws.cell(2+i,3).number_format='0.00'
widths(ws,22,14,9,14); wb.save(P("a04-toners.xlsx"))
expect(P("a04-toners.xlsx"),"openpyxl",[F("Rose toner",[(r[0],r[1],"") for r in t1]),F("Orange mist",[(r[0],r[1],"") for r in t2])],
 [M(n,"%.2f"%p,s,"" if h is None else h) for n,s,p,h in mats])

# A05 csv with % signs and the phase only on the first line of each
text(P("a05-foaming-face-wash.csv"),'''Foaming face wash,,,
,,,
Phase,Ingredient,Amount,Why
A,Water,55.6%,
,Glycerin,5.0%,humectant
,Xanthan gum,0.8%,"thickens, sprinkle slowly"
B,Decyl glucoside,18.0%,main surfactant
,Cocamidopropyl betaine,12.0%,softens it
,Coco-glucoside and glyceryl oleate,3.0%,
C,Aloe vera juice,4.0%,
,Sodium PCA,0.5%,
,Sodium benzoate and potassium sorbate,0.8%,
,Chamomile extract,0.3%,
D,Citric acid solution,qs to pH 5.5,
,,100.0%,
''')
ls=[("Water","55.6","A"),("Glycerin","5","A"),("Xanthan gum","0.8","A"),("Decyl glucoside","18","B"),("Cocamidopropyl betaine","12","B"),("Coco-glucoside and glyceryl oleate","3","B"),("Aloe vera juice","4","C"),("Sodium PCA","0.5","C"),("Sodium benzoate and potassium sorbate","0.8","C"),("Chamomile extract","0.3","C"),("Citric acid solution","ph","D")]
expect(P("a05-foaming-face-wash.csv"),"text",[F("Foaming face wash",ls)])

# A06 trial versions next to each other
rows=[("Shea butter",45,50,40),("Cocoa butter",15,None,10),("Mango butter",None,12,15),("Coconut oil",20,18,15),("Sweet almond oil",15,15,14),("Arrowroot powder",4,4,5),("Vitamin E",0.5,0.5,0.5),("Vanilla fragrance oil",0.5,0.5,0.5)]
wb=Workbook(); ws=wb.active; ws.title="butter trials"
ws["A1"]="Whipped body butter trials (all %)"; put(ws,3,1,["Ingredient","v1","v2","v3","notes"],bold=True)
notes={1:"v1 a bit hard in winter",2:"v2 onwards",5:"stops the greasy feel"}
for i,r in enumerate(rows): put(ws,4+i,1,list(r)+[notes.get(i)])
put(ws,12,1,["Total"]+[sum(r[k] or 0 for r in rows) for k in (1,2,3)],bold=True)
widths(ws,24,7,7,7,26); wb.save(P("a06-butter-trials.xlsx"))
assert all(sum(r[k] or 0 for r in rows)==100 or print(k,sum(r[k] or 0 for r in rows)) for k in (1,2,3))
expect(P("a06-butter-trials.xlsx"),"openpyxl",[F("v%d"%k,[(r[0],str(r[k]),"") for r in rows if r[k] is not None]) for k in (1,2,3)])

# A07 soap: per cent of oils, and grams of everything
oils=[("Olive oil",40,200),("Coconut oil",25,125),("Rapeseed oil",15,75),("Shea butter",12,60),("Castor oil",8,40)]
rest=[("Sodium hydroxide",68.5),("Water",150),("Sea salt",5),("Lemongrass essential oil",12)]
wb=Workbook(); ws=wb.active; ws.title="Soap"
ws["B1"]="Lemongrass bar soap"; ws["B2"]="5% superfat, 500 g oils"
put(ws,4,2,["Oils","% of oils","g"],bold=True,color="FFF2CC")
for i,r in enumerate(oils): put(ws,5+i,2,r)
put(ws,10,2,["Oils total",100,500],bold=True); put(ws,12,2,["Lye",None,"g"],bold=True,color="FFF2CC")
for i,r in enumerate(rest[:2]): put(ws,13+i,2,[r[0],None,r[1]])
put(ws,16,2,["Extras",None,"g"],bold=True,color="FFF2CC")
for i,r in enumerate(rest[2:]): put(ws,17+i,2,[r[0],None,r[1]])
put(ws,20,2,["Whole batch",None,500+sum(r[1] for r in rest)],bold=True)
ws["B22"]="Goggles and gloves. Lye into water, never the other way round."; widths(ws,3,26,10,8)
wb.save(P("a07-soap.xlsx"))
expect(P("a07-soap.xlsx"),"openpyxl",[G("Lemongrass bar soap",[(r[0],r[2],"Oils") for r in oils]+[(r[0],r[1],"Lye") for r in rest[:2]]+[(r[0],r[1],"Extras") for r in rest[2:]])])

# A08 shampoo with live formulas
rows=[("Water","=100-SUM(B6:B15)"),("Sodium coco-sulfate",8),("Cocamidopropyl betaine",12),("Decyl glucoside",6),("Glycerin",2),("Panthenol",1),("Guar hydroxypropyltrimonium chloride",0.3),("Hydrolysed wheat protein",1.5),("Sodium chloride",0.8),("Sodium benzoate",0.5),("Peppermint oil",0.4)]
w=100-sum(D(str(r[1])) for r in rows[1:])
wb=Workbook(); ws=wb.active; ws.title="Shampoo"
put(ws,1,1,["Peppermint shampoo"],bold=True); put(ws,2,1,["batch size (g)",None,300])
put(ws,4,1,["ingredient","%","g"],bold=True)
for i,r in enumerate(rows): put(ws,5+i,1,[r[0],r[1],"=B%d*$C$2/100"%(5+i)])
put(ws,16,1,["total","=SUM(B5:B15)","=SUM(C5:C15)"],bold=True); widths(ws,38,9,9)
wb.save(P("a08-shampoo.xlsx")); calc.append(P("a08-shampoo.xlsx"))
expect(P("a08-shampoo.xlsx"),"calc",[F("Peppermint shampoo",[(r[0],w if i==0 else str(r[1]),"") for i,r in enumerate(rows)])])

# A09 grams with the unit in the cell, drops
text(P("a09_clay mask.csv"),'''Clay mask (dry),,
Stuff,How much,Note
Kaolin,45 g,white
French green clay,25 g,
Colloidal oatmeal,15g,grind it first
Rice powder,10 g,
Zinc oxide,2.5 g,
Honey powder,2.5g,
Tea tree oil,6 drops,stir in last
Total,100 g,
,,
Mix a spoonful with water when needed. Keeps 6 months dry.,,
''')
expect(P("a09_clay mask.csv"),"text",[G("Clay mask (dry)",[("Kaolin",45,""),("French green clay",25,""),("Colloidal oatmeal",15,""),("Rice powder",10,""),("Zinc oxide","2.5",""),("Honey powder","2.5",""),("Tea tree oil","unknown","")])])

# A10 cupboard stock list
st=[("Shea butter","1 kg","£11.40","650 g","SB-2207","supplier 2",2027),("Sweet almond oil","500 g","£6.80","420 g","L0419","supplier 1",2026),("Beeswax pellets","250 g","£4.95","60 g","","supplier 2",2028),("Emulsifying wax","500 g","£7.25","380 g","EW1187","supplier 1",2026),
("Kaolin","1 kg","£5.00","900 g","","supplier 3",None),("Vitamin E","50 g","£6.10","22 g","VE-31","supplier 1",2026),("Sodium hydroxide","1 kg","£8.50","500 g","","supplier 3",None),("Xanthan gum","100 g","£3.60","75 g","XG-0044","supplier 1",2027),("Citric acid","250 g","£1.99","0 g","","supplier 3",None)]
wb=Workbook(); ws=wb.active; ws.title="Cupboard"
ws["A1"]="What's in the cupboard"; ws["A1"].font=Font(bold=True,size=13); ws["D1"]="checked 3 May"
put(ws,3,1,["Ingredient","Bought from","Pack","Paid","Left","Batch no.","Best before"],bold=True,color="D9E1F2")
for i,r in enumerate(st): put(ws,4+i,1,[r[0],r[5],r[1],r[2],r[3],r[4] or None,r[6]])
ws["A14"]="Citric acid all gone - reorder"; widths(ws,20,12,8,8,8,11,12); wb.save(P("a10-cupboard.xlsx"))
g=lambda s: {"kg":1000,"g":1}[s.split()[1]]*int(s.split()[0])
expect(P("a10-cupboard.xlsx"),"openpyxl",[],[M(r[0],r[2][1:],g(r[1]),g(r[3]),r[4]) for r in st])

# A11 merged headings, percentage-formatted cells
rows=[("WATER PHASE",[("Distilled water",None),("Aloe vera juice","10"),("Glycerin","3"),("Hydroxyethylcellulose","0.5")]),
("OIL PHASE",[("Rosehip oil","4"),("Squalane","5"),("Glyceryl stearate citrate","3"),("Cetearyl alcohol","2")]),
("COOL DOWN",[("Sodium hyaluronate 1% gel","5"),("Benzyl alcohol (and) dehydroacetic acid","0.8"),("Tocopherol","0.4"),("Frankincense oil","0.2")])]
left=100-sum(D(a) for _,l in rows for _,a in l if a)
wb=Workbook(); ws=wb.active; ws.title="Sheet1"; bar(ws,1,1,3,"Night lotion for face","F8CBAD",size=14,align="center")
r=3; ls=[]
for ph,l in rows:
    bar(ws,r,1,3,ph,"FCE4D6"); r+=1
    for n,a in l:
        a=a or plain(left); put(ws,r,1,[n,float(D(a)/100)]); ws.cell(r,2).number_format="0.0%"; ls.append((n,a,ph)); r+=1
put(ws,r+1,1,["TOTAL",1],bold=True); ws.cell(r+1,2).number_format="0.0%"; widths(ws,40,9,16)
wb.save(P("a11-night-lotion.xlsx")); expect(P("a11-night-lotion.xlsx"),"openpyxl",[F("Night lotion for face",ls)])

# A12 table not in the corner, notes between, blank rows
wb=Workbook(); ws=wb.active
ws["B2"]="SUGAR SCRUB - coffee version"; ws["F2"]=datetime.date(2025,2,9); ws["F2"].number_format="d mmm yyyy"
put(ws,5,3,["Ingredient","% w/w","for 250g jar"],bold=True)
a=[("Granulated sugar","55"),("Ground coffee","8")]; b=[("Coconut oil","18"),("Grapeseed oil","10"),("Polysorbate 80","4"),("Emulsifying wax NF","3.5"),("Stearic acid","0.5")]; c=[("Vitamin E","0.4"),("Cocoa absolute","0.1"),("Phenoxyethanol","0.5")]
r=6; ls=[]
for grp,note in ((a,"dry bits - stir together first"),(b,"melt these, cool to about 35, then mix in"),(c,None)):
    for n,x in grp: put(ws,r,3,[n,num(x),num(D(x)*D("2.5"))]); ls.append((n,x,"")); r+=1
    if note: ws.cell(r,3,note).font=Font(italic=True,color="808080"); r+=2
put(ws,r,3,[None,100,250],bold=True); ws.cell(r+2,3,"next time less coffee, it blocks the sink"); widths(ws,3,4,40,8,13)
wb.save(P("a12 sugar scrub.xlsx")); expect(P("a12 sugar scrub.xlsx"),"openpyxl",[F("SUGAR SCRUB - coffee version",ls)])

# A13 csv out of a phone app: details first, BOM, CRLF, everything in quotes
body=[("Coconut oil","24","supplier 1"),("Shea butter","16","supplier 2"),("Candelilla wax","11","supplier 1"),("Tapioca starch","22","supplier 3"),("Sodium bicarbonate","12","supplier 3"),("Zinc ricinoleate","4","supplier 1"),("Caprylic/Capric Triglyceride","9.5","supplier 1"),("Bergamot oil FCF","1","supplier 2"),("Tocopherol","0.5","supplier 1")]
s='"Recipe:","Deodorant stick"\n"Created:","2025-06-14"\n"Batch:","160 g"\n\n"Name","Percent","Weight (g)","Supplier"\n'
for n,p,q in body: s+='"%s","%.2f","%.2f","%s"\n'%(n,float(p),float(p)*1.6,q)
s+='"Total","100.00","160.00",""\n'
text(P("a13-export.csv"),s,"utf-8-sig","\r\n"); expect(P("a13-export.csv"),"text",[F("Deodorant stick",[(n,p,"") for n,p,_ in body])])

# A14 qs words, INCI in brackets
rows=[("A","Water (Aqua)","qs","rest"),("A","Glycerine (Glycerin)",5,"5"),("A","Disodium EDTA",0.1,"0.1"),("A","Carbomer",0.5,"0.5"),("B","Polysorbate 20",1,"1"),("B","Menthol",0.3,"0.3"),("B","Alcohol denat.",10,"10"),("C","Cucumber extract (Cucumis Sativus Fruit Extract)",2,"2"),("C","Phenoxyethanol",0.8,"0.8"),("D","Sodium hydroxide 10% solution","qs pH 6","ph"),("D","Blue colour (CI 42090), 0.1% in water","qs","unknown")]
wb=Workbook(); ws=wb.active; ws.title="gel"; ws.merge_cells("A1:D1"); ws["A1"]="Cooling leg gel v4"; ws["A1"].alignment=Alignment(horizontal="center")
put(ws,2,1,["Ph.","Ingredient (INCI)","%","comments"],bold=True)
cm={0:"qs = make up to 100",10:"till it looks right"}
for i,r in enumerate(rows): put(ws,3+i,1,[r[0],r[1],r[2],cm.get(i)])
widths(ws,5,48,10,24); wb.save(P("a14-leg-gel.xlsx")); expect(P("a14-leg-gel.xlsx"),"openpyxl",[F("Cooling leg gel v4",[(r[1],r[3],r[0]) for r in rows])])
through_calc(calc)
