from sheet_kit import *
O=HERE + "/by-weigher/"; calc=[]
def ex0(R): return [(n,a,"") for n,a in R]
# 1 makes 12 tins of 30 g
p=O+"rosemary balm.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Balm"
R=[("Olive oil infused with rosemary","190"),("Shea butter","62"),("Beeswax","58"),("Castor oil","36"),("Menthol crystals","5"),("Rosemary essential oil","5"),("Vitamin E","4")]
put(ws,1,1,["Rosemary balm"],bold=True); put(ws,2,1,["Makes 12 tins of 30 g"]); put(ws,4,1,["What","Grams"],bold=True)
for r,(n,a) in enumerate(R,5): put(ws,r,1,[n,num(a)])
put(ws,12,1,["Total","=SUM(B5:B11)"],bold=True); widths(ws,34,10); wb.save(p); calc.append(p); expect(p,"calc",[G("Rosemary balm",ex0(R))])
# 2 soap, coloured bars
p=O+"Oat & lavender soap.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Soap"
bar(ws,1,1,3,"Oat & lavender soap","CCC0DA",size=14,align="center"); ws.cell(2,1,"5 % superfat, mould for 12 bars")
R=[("Oils","F8CBAD",[("Olive oil","500"),("Coconut oil","250"),("Shea butter","150"),("Castor oil","100")]),("Lye water","BDD7EE",[("Water","300"),("Sodium hydroxide","138")]),("At trace","C6E0B4",[("Ground oats","20"),("Lavender essential oil","30")])]
put(ws,3,1,["","g","Remarks"],bold=True); r=4; ex=[]
for h,c,rows in R:
    bar(ws,r,1,3,h,c); r+=1
    for n,a in rows: put(ws,r,1,[n,num(a)]); ex.append((n,a,h)); r+=1
ws.cell(10,3,"cold, from fridge"); ws.cell(11,3,"gloves, goggles!"); put(ws,r,1,["Whole batch",1488],bold=True); widths(ws,30,8,22); wb.save(p); expect(p,"openpyxl",[G("Oat & lavender soap",ex)])
# 3 two batch sizes side by side
p=O+"bath bombs.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Sheet1"
R=[("Bicarbonate of soda","500"),("Citric acid","250"),("Cornflour","130"),("Epsom salt, fine","60"),("Sunflower oil","30"),("Polysorbate 80","14"),("Sweet orange oil","10"),("Yellow mica","2"),("Witch hazel","4")]
put(ws,1,1,["Bath bombs, sweet orange"],bold=True); put(ws,3,1,["Ingredient","Small batch (1 kg)","Large batch (2.5 kg)"],bold=True,color="FFE699")
for r,(n,a) in enumerate(R,4):
    put(ws,r,1,[n,num(a),f"=B{r}*2.5"])
put(ws,13,1,["Total g","=SUM(B4:B12)","=SUM(C4:C12)"],bold=True); put(ws,14,1,["Bombs of 125 g",8,20]); widths(ws,26,20,20); wb.save(p); calc.append(p); expect(p,"calc",[G("Bath bombs, sweet orange",ex0(R))])
# 4 csv no total
p=O+"sugar scrub.csv"
R=[("Sugar, fine","420"),("Coconut oil","110"),("Sweet almond oil","85"),("Emulsifying wax","30"),("Coffee, ground","25"),("Vitamin E","3.5"),("Vanilla fragrance","4"),("Preservative, oil soluble","5.5")]
text(p,"Coffee sugar scrub,\nfor 6 jars,\n,\nIngredient,g\n"+"".join(f'"{n}",{a}\n' if "," in n else f"{n},{a}\n" for n,a in R)); expect(p,"text",[G("Coffee sugar scrub",ex0(R))])
# 5 ounces
p=O+"foot powder.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Powder"
R=[("Arrowroot powder","8"),("White kaolin","4"),("Bicarbonate of soda","2"),("Zinc oxide","1"),("Magnesium stearate","0.5"),("Tea tree oil","0.15"),("Peppermint oil","0.1")]
put(ws,1,1,["Foot powder (old recipe, in ounces by weight)"],bold=True); put(ws,2,1,["Ingredient","oz"],bold=True)
for r,(n,a) in enumerate(R,3): put(ws,r,1,[n,num(a)])
put(ws,10,1,["Total",15.75],bold=True); put(ws,12,1,["Sieve twice, rest a week. Fills 8 shakers of 55 g."]); widths(ws,30,8); wb.save(p); expect(p,"openpyxl",[G("Foot powder (old recipe, in ounces by weight)",ex0(R))])
# 6 amount first with g, no header, no total, title = sheet name
p=O+"lip tubes.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Honey lip balm"
R=[("Beeswax, yellow","24"),("Cocoa butter","20"),("Castor oil","26"),("Sweet almond oil","22"),("Lanolin","6"),("Honey flavour oil","1.2"),("Vitamin E","0.8")]
for r,(n,a) in enumerate(R,1): put(ws,r,1,[a+" g",n])
put(ws,9,2,["20 tubes of 5 g"]); widths(ws,10,30); wb.save(p); expect(p,"openpyxl",[G("Honey lip balm",ex0(R))])
# 7 two recipes side by side
p=O+"milk baths.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Milk baths"
A=[("Whole milk powder","300"),("Colloidal oatmeal","150"),("Bicarbonate of soda","100"),("Cornflour","40"),("Dried rose petals","6"),("Rose geranium oil","4")]
B=[("Coconut milk powder","280"),("Epsom salt","220"),("Bicarbonate of soda","80"),("Tapioca starch","20"),("Cocoa powder","15"),("Cocoa butter, grated","32"),("Vanilla powder","3")]
for c,t,R in ((1,"Rose milk bath",A),(4,"Coconut milk bath",B)):
    bar(ws,1,c,c+1,t,"F8CBAD" if c==1 else "DDEBF7"); put(ws,2,c,["Ingredient","grams"],bold=True)
    for r,(n,a) in enumerate(R,3): put(ws,r,c,[n,num(a)])
put(ws,10,1,["Total",600],bold=True); put(ws,10,4,["Total",650],bold=True); widths(ws,26,9,4,26,9); wb.save(p); expect(p,"openpyxl",[G("Rose milk bath",ex0(A)),G("Coconut milk bath",ex0(B))])
# 8 goat milk soap csv with subtotal
p=O+"goat milk soap.csv"
A=[("Olive oil","450"),("Coconut oil","270"),("Rapeseed oil","200"),("Cocoa butter","80")]; B=[("Sodium hydroxide","140"),("Water","120"),("Goat milk, frozen","180")]; C=[("Honey","15"),("Kaolin","10"),("Colloidal oatmeal","10")]
q=lambda n: f'"{n}"' if "," in n else n
s="Goat milk & honey soap,,\nIngredient,Weight (g),Note\n"+"".join(f"{q(n)},{a},\n" for n,a in A)+"Total oils,1000,\n"+"".join(f"{q(n)},{a},{'5% superfat' if n[0]=='S' else ''}\n" for n,a in B)+"".join(f"{q(n)},{a},at light trace\n" for n,a in C)+"Total batch,1475,\n,,\n\"No gel phase, put in freezer overnight\",,\nCure 6 weeks,,\n"
text(p,s,nl="\r\n"); expect(p,"text",[G("Goat milk & honey soap",ex0(A+B+C))])
# 9 stage column merged downwards, tick column
p=O+"healing salve.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Salve"
put(ws,1,1,["Comfrey & calendula salve"],bold=True); put(ws,2,1,["1 batch = 20 tins of 50 g"]); put(ws,4,1,["Stage","Ingredient","Weigh (g)","Done"],bold=True,color="D9D9D9")
R=[("Melt",[("Beeswax","150"),("Cocoa butter","90")]),("Add oils",[("Calendula oil (infused)","420"),("Comfrey oil (infused)","220"),("St John's wort oil (infused)","90")]),("Cool to 50",[("Tocopherol","8"),("Lavender essential oil","14"),("Tea tree essential oil","8")])]
r=5; ex=[]
for h,rows in R:
    r0=r
    for n,a in rows: put(ws,r,2,[n,num(a),"☐"]); ex.append((n,a,h)); r+=1
    ws.cell(r0,1,h).alignment=Alignment(vertical="top"); ws.merge_cells(start_row=r0,end_row=r-1,start_column=1,end_column=1)
put(ws,r,2,["TOTAL",f"=SUM(C5:C{r-1})"],bold=True); widths(ws,13,32,11,8); wb.save(p); calc.append(p); expect(p,"calc",[G("Comfrey & calendula salve",ex)])
# 10 unit column kg / g mixed
p=O+"sea salt soak big batch.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Big batch"
R=[("Epsom salt","6","kg"),("Sea salt","2.5","kg"),("Bicarbonate of soda","1","kg"),("Magnesium chloride flakes","350","g"),("Seaweed powder","60","g"),("Fractionated coconut oil","50","g"),("Eucalyptus oil","25","g"),("Pine oil","15","g")]
put(ws,1,1,["Sea salt soak"],bold=True); put(ws,2,1,["20 bags of 500 g"]); put(ws,3,1,["Ingredient","Amount","Unit","Lot used"],bold=True)
for r,(n,a,u) in enumerate(R,4): put(ws,r,1,[n,num(a),u])
put(ws,12,1,["Total",10,"kg"],bold=True); widths(ws,28,9,6,12); wb.save(p); expect(p,"openpyxl",[G("Sea salt soak",[(n,D(a)*(1000 if u=="kg" else 1),"") for n,a,u in R])])
# 11 drops and a little
p=O+"shower steamers.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Steamers"
R=[("Bicarbonate of soda","400 g"),("Citric acid","200 g"),("Cornflour","100 g"),("Kaolin","40 g"),("Menthol crystals","10 g"),("Eucalyptus essential oil","60 drops"),("Witch hazel","a few sprays")]
bar(ws,1,1,2,"Shower steamers","BDD7EE",size=13); put(ws,2,1,["for 15 pieces of 50 g"])
for r,(n,a) in enumerate(R,4): put(ws,r,1,[n,a])
put(ws,12,1,["Dry overnight on baking paper"]); widths(ws,30,14); wb.save(p); expect(p,"openpyxl",[G("Shower steamers",[(n,a.split()[0] if a.endswith(" g") else "unknown","") for n,a in R])])
# 12 one sheet a recipe, per-piece column, bars merged
p=O+"solid bars.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Lotion bar"; fs=[]
for t,k,R in (("Lotion bar",10,[("Waxes",[("Beeswax","170"),("Candelilla wax","20")]),("Butters",[("Cocoa butter","180"),("Shea butter","110")]),("Oils",[("Rice bran oil","95"),("Vitamin E","5"),("Sweet orange oil","6"),("Jojoba oil","14")])]),
 ("Massage bar",8,[("Butters",[("Cocoa butter","280"),("Mango butter","90")]),("Oils",[("Fractionated coconut oil","70"),("Arnica oil (infused)","25")]),("Extras",[("Adzuki beans","9"),("Ginger essential oil","3"),("Black pepper essential oil","3")])])):
    ws=wb["Lotion bar"] if t=="Lotion bar" else wb.create_sheet(t)
    put(ws,1,1,["Ingredient","Batch (g)","Per bar (g)"],bold=True); ws.cell(1,5,f"Bars: {k}"); r=2; ex=[]
    for h,rows in R:
        bar(ws,r,1,3,h,"FFF2CC"); r+=1
        for n,a in rows: put(ws,r,1,[n,num(a),f"=B{r}/{k}"]); ws.cell(r,3).number_format="0.0"; ex.append((n,a,h)); r+=1
    put(ws,r,1,["Sum",f"=SUM(B2:B{r-1})",f"=SUM(C2:C{r-1})"],bold=True); widths(ws,30,11,11); fs.append(G(t,ex))
wb.save(p); calc.append(p); expect(p,"calc",fs)
through_calc(calc)
