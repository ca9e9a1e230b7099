"""Makes the sheets of a teacher of evening classes. Hands out printed sheets: title block, coloured bars for the
phases, grams at several sizes, method beneath, sometimes several recipes on one page."""
import os, datetime
from sheet_kit import *
P = lambda n: os.path.join(HERE, "by-teacher", n)
calc = []
PAL = ["F4B183", "BDD7EE", "C5E0B4", "FFE699"]
def thin(ws, r1, r2, c1, c2):
    s=Side(style="thin",color="999999")
    for r in range(r1,r2+1):
        for c in range(c1,c2+1): ws.cell(r,c).border=Border(s,s,s,s)
def method(ws, r, c1, c2, steps, head="METHOD"):
    ws.cell(r,c1,head).font=Font(bold=True)
    for i,s in enumerate(steps):
        ws.cell(r+1+i,c1,"%d. %s"%(i+1,s)).alignment=Alignment(wrap_text=True,vertical="top"); ws.merge_cells(start_row=r+1+i,start_column=c1,end_row=r+1+i,end_column=c2)
def flat(blocks, total="100"):
    left=D(total)-sum(D(str(a)) for _,l in blocks for *_,a in l if a is not None)
    return [(p,[tuple(x[:-1])+(plain(left) if x[-1] is None else str(x[-1]),) for x in l]) for p,l in blocks]

# C01 title block, bars, per cent + three sizes, method
b=flat([("A",[("Water",None),("Glycerin","4"),("Xanthan gum","0.3")]),("B",[("Grapeseed oil","10"),("Cetyl alcohol","2"),("Emulsifying wax NF","5")]),("C",[("Phenoxyethanol and ethylhexylglycerin","1"),("Vitamin E","0.5"),("Geranium oil","0.3")])])
wb=Workbook(); ws=wb.active; ws.title="Handout 1"; bar(ws,1,1,5,"YOUR FIRST LOTION","7F6084",size=18,align="center"); ws["A1"].font=Font(bold=True,size=18,color="FFFFFF")
bar(ws,2,1,5,"Evening class, week 1 - makes one bottle","E4DFEC",bold=False,align="center"); put(ws,4,1,["Ingredient","%","50 g","100 g","250 g"],bold=True); r=5; ls=[]
for k,(p,l) in enumerate(b):
    bar(ws,r,1,5,"Phase "+p,PAL[k]); r+=1
    for n,a in l: put(ws,r,1,[n,num(a),num(D(a)/2),num(a),num(D(a)*D("2.5"))]); ls.append((n,a,p)); r+=1
put(ws,r,1,["Total",100,50,100,250],bold=True); thin(ws,4,r,1,5)
method(ws,r+2,1,5,["Sprinkle the xanthan gum into the glycerin, add the water.","Heat phases A and B to 70 C in two beakers.","Pour B into A, blend 2 minutes with a stick blender.","Below 40 C stir in phase C. Check the pH: 5 to 6.","Fill 100 g bottles and label with the date."])
widths(ws,40,8,8,8,8); wb.save(P("c01-first-lotion.xlsx")); expect(P("c01-first-lotion.xlsx"),"openpyxl",[F("YOUR FIRST LOTION",ls)])

# C02 two recipes one beneath the other
recs=[("Oat bath milk",[("Colloidal oatmeal","40","soothes"),("Milk powder","30",""),("Sodium bicarbonate","20","softens the water"),("Corn starch","9",""),("Chamomile powder","1","colour and scent")],["Sieve everything twice.","Fill into jars, keep dry."]),
("Fizzy bath powder",[("Sodium bicarbonate","50",""),("Citric acid","25","the fizz!"),("Corn starch","12",""),("Epsom salt","10",""),("Sunflower oil","2","stops dust"),("Sweet orange oil","1","")],["Mix the powders.","Rub in the oils with your fingers (gloves).","Jar at once; damp air starts the fizz."])]
wb=Workbook(); ws=wb.active; ws.title="Week 2"; r=1; fs=[]
for nm,l,st in recs:
    bar(ws,r,1,4,nm,"BDD7EE",size=15,align="center"); put(ws,r+1,1,["Ingredient","%","200 g","What it does"],bold=True); r+=2
    for n,a,w in l: put(ws,r,1,[n,num(a),num(D(a)*2),w or None]); r+=1
    put(ws,r,1,["Total",100,200],bold=True); method(ws,r+1,1,4,st); r+=len(st)+4; fs.append(F(nm,[(n,a,"") for n,a,_ in l]))
widths(ws,28,8,8,24); wb.save(P("c02-bath.xlsx")); expect(P("c02-bath.xlsx"),"openpyxl",fs)

# C03 two recipes side by side
lt=[("Beeswax","20"),("Shea butter","25"),("Olive oil infused with marigold","44.5"),("Lanolin","10"),("Vitamin E","0.5")]; rt=[("Candelilla wax","12"),("Cocoa butter","18"),("Shea butter","25"),("Sunflower oil","34"),("Castor oil","10"),("Vitamin E","0.5"),("Peppermint oil","0.5")]
wb=Workbook(); ws=wb.active; ws.title="Balms"; bar(ws,1,1,7,"TWO BALMS, ONE EVENING","FFD966",size=16,align="center"); fs=[]
for c,nm,l in ((1,"Marigold balm",lt),(5,"Vegan mint balm",rt)):
    bar(ws,3,c,c+2,nm,"FFF2CC",size=12); put(ws,4,c,["Ingredient","%","60 g"],bold=True)
    for i,(n,a) in enumerate(l): put(ws,5+i,c,[n,num(a),num(D(a)*D("0.6"))])
    put(ws,13,c,["Total",100,60],bold=True); fs.append(F(nm,[(n,a,"") for n,a in l]))
method(ws,15,1,7,["Melt the wax first, then butters, then oils.","Off the heat: vitamin E and scent.","Pour. Do not move the tins for one hour."]); widths(ws,32,7,7,3,24,7,7)
wb.save(P("c03-balms.xlsx")); expect(P("c03-balms.xlsx"),"openpyxl",fs)

# C04 workbook: three recipes and an equipment sheet
recs=[("Cleansing oil",[("",[("Sunflower oil","55"),("Caprylic/capric triglyceride","24"),("Castor oil","8"),("Polyglyceryl-4 oleate","12"),("Vitamin E","0.5"),("Mandarin oil","0.5")])]),
("Hydrating toner",flat([("",[("Water",None),("Rose hydrosol","30"),("Glycerin","3"),("Panthenol","1"),("Sodium lactate","1.5"),("Sodium benzoate","0.5"),("Lactic acid 80%","0.3")])])),
("Clay mask",flat([("",[("Water",None),("Glycerin","8"),("Kaolin","30"),("Bentonite","5"),("Squalane","3"),("Phenoxyethanol","0.9"),("Xanthan gum","0.4")])]))]
wb=Workbook(); ws=wb.active; ws.title="Equipment"; ws["A1"]="Bring with you"; put(ws,2,1,["Item","How many"],bold=True)
for i,x in enumerate([("250 ml beaker",2),("Stick blender",1),("Thermometer",1),("pH strips","a few"),("Apron",1)]): put(ws,3+i,1,x)
fs=[]
for nm,b in recs:
    ws=wb.create_sheet(nm); bar(ws,1,1,4,nm.upper(),"C5E0B4",size=14); ws["A2"]="Serves: one 100 g bottle or jar"; put(ws,4,1,["Ingredient","%","100 g","tick"],bold=True)
    for i,(n,a) in enumerate(b[0][1]): put(ws,5+i,1,[n,num(a),num(a)])
    ws.cell(5,4,"☐"); q=5+len(b[0][1]); put(ws,q,1,["Total",100,100],bold=True); method(ws,q+2,1,4,["Weigh.","Mix.","Label."]); widths(ws,34,8,8,6); fs.append(F(nm.upper(),[(n,a,"") for n,a in b[0][1]]))
wb.save(P("c04-weekend-course.xlsx")); expect(P("c04-weekend-course.xlsx"),"openpyxl",fs)

# C05 grams only, at three sizes
b=[("Phase A",[("Water",31.25),("Aloe vera juice",10),("Sodium lauroyl sarcosinate",4)]),("Phase B",[("Glycerin",1.5),("Xanthan gum",0.5)]),("Phase C",[("Oat protein",1),("Sodium benzoate",0.25),("Citric acid",0.15),("Apple fragrance",0.35),("Salt",1)])]
assert sum(x for _,l in b for _,x in l)==50
wb=Workbook(); ws=wb.active; ws.title="Hand wash"; bar(ws,1,1,5,"Apple hand wash","C5E0B4",size=16,align="center"); ws["A2"]="Pick the column for your bottle"; put(ws,3,1,["","Small (50 g)","Medium (100 g)","Large (500 g)","Notes"],bold=True); r=4; ls=[]
for k,(p,l) in enumerate(b):
    bar(ws,r,1,5,p,PAL[k]); r+=1
    for n,x in l: put(ws,r,1,[n,x,num(D(str(x))*2),num(D(str(x))*10)]); ls.append((n,x,p[6:])); r+=1
ws.cell(9,5,"stir B to a slurry first"); put(ws,r,1,["TOTAL",50,100,500],bold=True); widths(ws,30,13,14,13,24); wb.save(P("c05-hand-wash.xlsx"))
expect(P("c05-hand-wash.xlsx"),"openpyxl",[G("Apple hand wash",ls)])

# C06 csv saved from a handout
text(P("c06-gentle-shampoo.csv"),'''GENTLE SHAMPOO,,,
Week 5,,,
,,,
Ingredient,%,150 g,Notes
PHASE A,,,
Water,56.5,84.75,boiled and cooled
Glycerin,3,4.5,
Polyquaternium-10,0.3,0.45,sprinkle in slowly
PHASE B,,,
Sodium cocoyl glutamate,15,22.5,
Coco-glucoside,10,15,
Cocamidopropyl betaine,12,18,
PHASE C,,,
Panthenol,1,1.5,
Sodium benzoate,0.5,0.75,
Rosemary extract,1.5,2.25,
Rosemary oil,0.2,0.3,
Citric acid,qs,qs,to pH 5.2
TOTAL,100,150,
,,,
METHOD,,,
"1. Hydrate the polyquaternium in the water, 15 minutes.",,,
"2. Stir in B slowly, no froth please.",,,
"3. Add C one after another, adjust the pH last.",,,
''')
expect(P("c06-gentle-shampoo.csv"),"text",[F("GENTLE SHAMPOO",[("Water","56.5","A"),("Glycerin","3","A"),("Polyquaternium-10","0.3","A"),("Sodium cocoyl glutamate","15","B"),("Coco-glucoside","10","B"),("Cocamidopropyl betaine","12","B"),("Panthenol","1","C"),("Sodium benzoate","0.5","C"),("Rosemary extract","1.5","C"),("Rosemary oil","0.2","C"),("Citric acid","ph","C")])])

# C07 one base, three skins in columns
rows=[("A","Water",71.7,68.2,75.2),("A","Glycerin",3,5,2),("A","Niacinamide",2,2,4),("B","Jojoba oil",8,None,4),("B","Avocado oil",None,10,None),("B","Squalane",4,3,2),("B","Glyceryl stearate citrate",4,4,4),("B","Cetearyl alcohol",3,3.5,2),("C","Silica",None,None,2.5),("C","Panthenol",2,2,2),("C","Phenoxyethanol",0.9,0.9,0.9),("C","Xanthan gum",0.4,0.4,0.4),("C","Allantoin",0.2,0.2,0.2),("C","Tocopherol",0.8,0.8,0.8)]
for k in (2,3,4): assert round(sum(r[k] or 0 for r in rows),6)==100,(k,sum(r[k] or 0 for r in rows))
wb=Workbook(); ws=wb.active; ws.title="Choose your skin"; bar(ws,1,1,5,"FACE CREAM - CHOOSE YOUR SKIN","F4B183",size=14,align="center"); put(ws,3,1,["Phase","Ingredient","Normal %","Dry %","Oily %"],bold=True)
for i,r in enumerate(rows): put(ws,4+i,1,r)
put(ws,4+len(rows),2,["Total",100,100,100],bold=True); ws.cell(20,1,"An empty box means: leave it out."); widths(ws,7,30,10,10,10); wb.save(P("c07-choose-your-skin.xlsx"))
expect(P("c07-choose-your-skin.xlsx"),"openpyxl",[F(t,[(r[1],str(r[k]),r[0]) for r in rows if r[k] is not None]) for k,t in ((2,"Normal"),(3,"Dry"),(4,"Oily"))])

# C08 phases merged downwards, "to 100", what it does
b=[("Water phase",[("Distilled water","to 100","the main part"),("Glycerin",4,"humectant"),("Urea",5,"softens hard skin"),("Sodium lactate",2,"keeps urea steady")]),("Oil phase",[("Lanolin",5,"seals"),("Olive oil",10,"emollient"),("Emulsifying wax",6,"holds it together"),("Stearic acid",2,"body")]),("Cool-down phase",[("Preservative (phenoxyethanol)",0.9,"keeps germs out"),("Menthol crystals",0.5,"cools"),("Tea tree oil",0.5,"scent")])]
wb=Workbook(); ws=wb.active; ws.title="Foot cream"; ws.merge_cells("A1:D2"); ws["A1"]="Foot cream with urea"; ws["A1"].font=Font(bold=True,size=18); ws["A1"].alignment=Alignment(horizontal="center",vertical="center"); put(ws,3,1,["","Ingredient","%","What it does"],bold=True,color="D9D9D9"); r=4; ls=[]
for k,(p,l) in enumerate(b):
    r0=r
    for n,x,w in l:
        put(ws,r,2,[n,x,w])
        for c in (1,2,3,4): ws.cell(r,c).fill=PatternFill("solid",fgColor=PAL[k])
        ls.append((n,"rest" if isinstance(x,str) else str(x),p)); r+=1
    ws.cell(r0,1,p).alignment=Alignment(text_rotation=90,vertical="center",horizontal="center"); ws.merge_cells(start_row=r0,start_column=1,end_row=r-1,end_column=1)
method(ws,r+1,1,4,["Dissolve the urea in the warm water phase, not above 50 C.","Melt the oil phase at 70 C and pour together.","Cool-down phase under 40 C."],"How to make it"); widths(ws,6,32,9,26); wb.save(P("c08-foot-cream.xlsx")); expect(P("c08-foot-cream.xlsx"),"openpyxl",[F("Foot cream with urea",ls)])

# C09 method between the phases
blocks=[("A",[("Water","82"),("Panthenol","2"),("Glycerin","3")],"Heat A to 75 C. Keep covered."),("B",[("Behentrimonium methosulfate, cetearyl alcohol","4"),("Cetyl alcohol","3"),("Shea butter","2"),("Broccoli seed oil","1.5")],"Melt B, pour A into B slowly, blend 3 minutes."),("C",[("Silk protein","1"),("Phenoxyethanol","0.9"),("Coconut fragrance","0.6")],"Add C below 40 C. Let it stand overnight before you judge it.")]
assert sum(D(a) for _,l,_ in blocks for _,a in l)==100
wb=Workbook(); ws=wb.active; ws.title="Week 6"; bar(ws,1,1,4,"Hair conditioner - rich","BDD7EE",size=15); ws["A2"]="Batch: 400 g"; r=4; ls=[]
for k,(p,l,m) in enumerate(blocks):
    put(ws,r,1,["PHASE "+p,"%","g","Weighed ✓"],bold=True,color=PAL[k]); r+=1
    for n,a in l: put(ws,r,1,[n,num(a),num(D(a)*4)]); ls.append((n,a,p)); r+=1
    ws.cell(r,1,m).font=Font(italic=True); ws.merge_cells(start_row=r,start_column=1,end_row=r,end_column=4); r+=2
put(ws,r,1,["Sum",100,400],bold=True); widths(ws,46,8,8,12); wb.save(P("c09-conditioner.xlsx")); expect(P("c09-conditioner.xlsx"),"openpyxl",[F("Hair conditioner - rich",ls)])

# C10 soap class, two recipes
recs=[("SOAP 1: Plain white",[("Coconut oil",150),("Olive oil",250),("Palm-free shortening",100),("Sodium hydroxide",72),("Water",165)]),("SOAP 2: Oat and honey",[("Coconut oil",125),("Olive oil",275),("Shea butter",75),("Castor oil",25),("Sodium hydroxide",69.5),("Water",160),("Oatmeal, ground",15),("Honey",10)])]
wb=Workbook(); ws=wb.active; ws.title="Soap day"; bar(ws,1,1,3,"SOAP DAY","A9D08E",size=20,align="center"); bar(ws,2,1,3,"LYE BURNS! Goggles, gloves, long sleeves. Vinegar is NOT first aid - water is.","FF7C80",align="center"); r=4; fs=[]
for nm,l in recs:
    bar(ws,r,1,3,nm,"E2EFDA",size=13); put(ws,r+1,1,["Ingredient","Grams","Done"],bold=True); r+=2
    for n,x in l: put(ws,r,1,[n,x]); r+=1
    put(ws,r,1,["Total in the mould",sum(x for _,x in l)],bold=True); r+=2; fs.append(G(nm,[(n,x,"") for n,x in l]))
method(ws,r,1,3,["Weigh the oils, melt to 40 C.","Lye into the water, outside. Cool to 40 C.","Together, blend to light trace, add extras, pour.","Cure 5 weeks."]); widths(ws,34,12,10); wb.save(P("c10-soap-day.xlsx")); expect(P("c10-soap-day.xlsx"),"openpyxl",fs)

# C11 handout and class stock
rows=[("Sodium bicarbonate","14"),("Arrowroot powder","24"),("Coconut oil","30"),("Shea butter","20"),("Beeswax","10"),("Vitamin E","0.5"),("Sage oil","0.7"),("Lemon oil","0.8")]
assert sum(D(a) for _,a in rows)==100
stock=[("Sodium bicarbonate",3.2,2600,"SB-1"),("Arrowroot powder",9.8,750,"AR-20"),("Coconut oil",7.5,4100,"CO-77"),("Shea butter",12,2300,"SH-3"),("Beeswax",15.5,640,""),("Vitamin E",98,85,"VE-12"),("Sage oil",180,40,"SA-5"),("Lemon oil",92,65,"LE-9")]
wb=Workbook(); ws=wb.active; ws.title="Handout"; bar(ws,1,1,4,"CREAM DEODORANT","FFE699",size=16,align="center"); ws["A2"]="Group size: 8, one 30 g jar each"; put(ws,4,1,["Ingredient","%","per jar (30 g)","for the class (240 g)"],bold=True)
for i,(n,a) in enumerate(rows): put(ws,5+i,1,[n,num(a),num(D(a)*D("0.3")),num(D(a)*D("2.4"))])
put(ws,13,1,["Total",100,30,240],bold=True); method(ws,15,1,4,["Melt the beeswax, then the butter and oil.","Sieve in the powders, stir until thick.","Scent last."]); widths(ws,26,8,15,20)
ws=wb.create_sheet("Class stock"); bar(ws,1,1,4,"Class stock (teacher only)","D9D9D9"); put(ws,3,1,["Material","Price per kg","In stock (g)","Lot"],bold=True)
for i,x in enumerate(stock): put(ws,4+i,1,[x[0],x[1],x[2],x[3] or None]); ws.cell(4+i,2).number_format='"£"0.00'
widths(ws,26,12,12,10); wb.save(P("c11-deodorant.xlsx")); expect(P("c11-deodorant.xlsx"),"openpyxl",[F("CREAM DEODORANT",[(n,a,"") for n,a in rows])],[M(n,"%.2f"%p,1000,s,l) for n,p,s,l in stock])

# C12 kitchen measures beside grams
rows=[("Epsom salt",180,"1 cup"),("Sea salt, coarse",90,"6 tbsp"),("Sodium bicarbonate",24,"2 tbsp"),("Sweet almond oil",5,"1 tsp"),("Dried rose petals",1,"a handful"),("Beetroot powder",None,"a pinch"),("Palmarosa oil",None,"10 drops")]
wb=Workbook(); ws=wb.active; ws.title="Kids"; bar(ws,1,1,3,"Rose bath salts","F8CBAD",size=18,align="center"); bar(ws,2,1,3,"Family afternoon - fills one 300 g jar","FFFFFF",bold=False,align="center"); put(ws,3,1,["You need","grams","or measure"],bold=True,color="FCE4D6")
for i,x in enumerate(rows): put(ws,4+i,1,x)
ws["A12"]="Shake in a bag. Leave open for a day, then close the lid."; widths(ws,26,9,14); wb.save(P("c12-bath-salts.xlsx")); expect(P("c12-bath-salts.xlsx"),"openpyxl",[G("Rose bath salts",[(n,x if x else "unknown","") for n,x,_ in rows])])

# C13 csv, three recipes
recs=[("Aloe gel",[("Water","to 100",""),("Aloe vera juice","30",""),("Glycerin","3",""),("Carrageenan","1.2","gelling"),("Sodium benzoate","0.4",""),("Citric acid","0.2","")]),("Micellar water",[("Water","to 100",""),("Witch hazel water","10",""),("Polyglyceryl-4 caprate","2.5","lifts make-up"),("Propanediol","2",""),("Phenoxyethanol","0.8","")]),("Make-up remover oil",[("Caprylic/capric triglyceride","55",""),("Sunflower oil","34.5",""),("Jojoba oil","5",""),("Polysorbate 80","5","rinses off"),("Vitamin E","0.5","")])]
s=""
for i,(nm,l) in enumerate(recs):
    s+='"RECIPE %d: %s",,\nIngredient,Percent,Notes\n'%(i+1,nm)+"".join("%s,%s,%s\n"%x for x in l)+",,\nMethod: stir together and bottle.,,\n,,\n"
text(P("c13-cleansers.csv"),s,"utf-8","\r\n"); expect(P("c13-cleansers.csv"),"text",[F("RECIPE %d: %s"%(i+1,nm),[(n,"rest" if a=="to 100" else a,"") for n,a,_ in l]) for i,(nm,l) in enumerate(recs)])

# C14 scaling calculator with live formulas
blocks=[("A",[("Water","68.4"),("Glycerin","3"),("Magnesium sulfate","0.6")]),("B",[("Sunflower oil","14"),("Polyglyceryl-3 diisostearate","4"),("Beeswax","2"),("Zinc oxide","6")]),("C",[("Phenoxyethanol","0.9"),("Vitamin E","0.6"),("Neroli fragrance","0.5")])]
assert sum(D(a) for _,l in blocks for _,a in l)==100
wb=Workbook(); ws=wb.active; ws.title="Calculator"; bar(ws,1,1,4,"Protective winter cream","BDD7EE",size=16,align="center"); put(ws,3,1,["Type your batch size here (g):",None,150]); ws["C3"].fill=PatternFill("solid",fgColor="FFFF00"); put(ws,5,1,["Ingredient","%","grams","Notes"],bold=True); r=6; ls=[]; cells=[]
for k,(p,l) in enumerate(blocks):
    bar(ws,r,1,4,"Phase "+p,PAL[k]); r+=1
    for n,a in l: put(ws,r,1,[n,num(a),"=B%d/100*$C$3"%r]); ws.cell(r,3).number_format="0.00"; cells.append(r); ls.append((n,a,p)); r+=1
put(ws,r,1,["Check: must be 100","=SUM(B6:B%d)"%(r-1),"=SUM(C6:C%d)"%(r-1)],bold=True); method(ws,r+2,1,4,["Heat A and B to 75 C.","A into B in a thin stream, stirring all the time.","C below 40 C."]); widths(ws,34,8,10,20)
wb.save(P("c14-calculator.xlsx")); calc.append(P("c14-calculator.xlsx")); expect(P("c14-calculator.xlsx"),"calc",[F("Protective winter cream",ls)])
through_calc(calc)
