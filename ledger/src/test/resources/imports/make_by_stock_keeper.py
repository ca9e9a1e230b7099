from sheet_kit import *
from datetime import date
O=HERE + "/by-stock-keeper/"; calc=[]
def grams(t):
    a,u=t.split(); return plain(D(a)*(1000 if u=="kg" else 1))
# 1 price per kg, stock g, lot, best before, total of value
p=O+"Materials 2024.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Materials"
bar(ws,1,1,8,"Raw materials, counted 2 January 2024","E2EFDA",size=13)
put(ws,3,1,["No.","Material","Price per kg (£)","Stock (g)","Value (£)","Lot","Best before","Supplier 1"],bold=True,color="D9D9D9")
R=[("Sweet almond oil","9.8","3200","SA-2311",(2025,3,1),"S2"),("Jojoba oil, golden","26.5","850","JG-0417",(2025,9,1),"S2"),("Shea butter, refined","8.4","4600","SB-22",(2025,6,1),"S1"),("Cocoa butter","14.2","1950","CB-118",(2025,12,1),"S1"),("Beeswax, yellow","15.9","2300","BW-7",None,"S3"),("Cetyl alcohol","7.25","1400","CA-90",(2026,1,1),"S1"),("Glycerin","4.1","5000","GL-331",(2026,4,1),"S1"),("Xanthan gum","19","420","XG-12",(2025,11,1),"S1"),("Tocopherol","58","260","TO-5",(2025,2,1),"S2"),("Lavender essential oil","96","140","LA-2209",(2025,8,1),"S4"),("Phenoxyethanol and ethylhexylglycerin","31.5","600","PE-64",(2026,2,1),"S1")]
for r,(n,a,s,l,b,su) in enumerate(R,4):
    put(ws,r,1,[r-3,n,num(a),num(s),f"=C{r}*D{r}/1000",l,date(*b) if b else None,su]); ws.cell(r,3).number_format="0.00"; ws.cell(r,5).number_format="0.00"
    if b: ws.cell(r,7).number_format="mm/yyyy"
put(ws,15,2,["Total value",None,None,"=SUM(E4:E14)"],bold=True); ws.cell(15,5).number_format="0.00"; widths(ws,5,38,16,10,10,11,12,11)
wb.save(p); calc.append(p); expect(p,"calc",[],[M(n,a,1000,s,l) for n,a,s,l,b,su in R])
# 2 csv per 100 g, stock "2.4 kg"
p=O+"stocklist.csv"
R=[("Olive oil","0.72","4.5 kg","OO17"),("Coconut oil","0.65","2.4 kg","CO04"),("Castor oil","0.81","900 g","CA33"),("Rosehip oil","4.95","350 g","RH08"),("Mango butter","1.60","1.2 kg","MB11"),("Candelilla wax","2.85","750 g",""),("Stearic acid","0.58","1.8 kg","ST02"),("Sodium cocoyl isethionate","1.35","3 kg","SC21"),("Decyl glucoside","0.69","2.75 kg","DG15"),("Panthenol","3.10","180 g","PA06"),("Citric acid","0.45","650 g","")]
text(p,"Material,Price / 100 g,In stock,Lot no.\n"+"".join(",".join(x)+"\n" for x in R)); expect(p,"text",[],[M(n,a,100,grams(s),l) for n,a,s,l in R])
# 3 grouped by kind, pack size text, value total
p=O+"Stock by kind.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Stock"
put(ws,1,1,["Name","Pack size","Pack price","On hand","Batch","BBE"],bold=True,color="FFE699")
R=[("OILS",[("Sunflower oil","5 kg","18.50","3.1 kg","SF9","Oct 25"),("Apricot kernel oil","1 kg","13.20","640 g","AK2","Jul 25"),("Fractionated coconut oil","5 kg","39.00","4.2 kg","FC1","Mar 26")]),("BUTTERS AND WAXES",[("Shea butter","2 kg","17.90","1.5 kg","SH5","Dec 25"),("Emulsifying wax","1 kg","11.40","820 g","EW3","May 26"),("Beeswax pellets","500 g","9.75","500 g","BP8","")]),("POWDERS AND SALTS",[("Arrowroot powder","1 kg","6.30","1 kg","AR4","Jan 26"),("Zinc oxide","250 g","5.20","90 g","ZN2",""),("Epsom salt","25 kg","27.00","14.5 kg","EP6","")]),("PRESERVATIVES AND EXTRAS",[("Sodium benzoate","500 g","6.80","310 g","SB7","Aug 26"),("Niacinamide","100 g","7.45","65 g","NI1","Nov 25")])]
r=2; ms=[]
for h,rows in R:
    bar(ws,r,1,6,h,"DDEBF7"); r+=1
    for n,s,pr,st,l,b in rows:
        put(ws,r,1,[n,s,float(pr),st,l,b or None]); ws.cell(r,3).number_format='"£"0.00'; ms.append(M(n,pr,grams(s),grams(st),l)); r+=1
widths(ws,30,11,11,11,9,9); ws.cell(r+1,1,"Order more zinc oxide before summer"); wb.save(p); expect(p,"openpyxl",[],ms)
# 4 pack weight + unit columns, stock + unit, reorder level
p=O+"prices & reorder.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Sheet1"
put(ws,1,1,["Prices and stock – bench cupboard"],bold=True)
put(ws,3,1,["INCI name","Trade name","Pack","Unit","Pack price EUR","Stock","Unit","Reorder at (g)","Lot"],bold=True)
R=[("Glycerin","vegetable glycerine","5","kg","21.9","3.4","kg",1000,"G24-01"),("Butyrospermum Parkii Butter","shea, unrefined","1","kg","10.6","450","g",500,"B23-17"),("Simmondsia Chinensis Seed Oil","jojoba","1","kg","29.8","1.1","kg",400,"J24-02"),("Cetearyl Alcohol","cetearyl 50/50","1","kg","8.9","730","g",300,"C23-09"),("Glyceryl Stearate Citrate","emulsifier pellets","500","g","11.25","280","g",250,"E24-03"),("Sodium PCA","","250","g","9.6","120","g",100,"S23-04"),("Allantoin","","100","g","6.4","75","g",25,"A22-11"),("Xanthan Gum","clear type","250","g","7.95","190","g",100,"X24-01"),("Tocopherol","vitamin E","250","g","17.5","60","g",100,"T24-02"),("Lactic Acid","lactic acid 80 %","500","g","8.2","410","g",100,"L23-03")]
for r,x in enumerate(R,4):
    n,t,a,u,pr,s,su,ro,l=x; put(ws,r,1,[n,t or None,num(a),u,num(pr),num(s),su,ro,l]); ws.cell(r,5).number_format="0.00"
widths(ws,30,22,7,6,14,8,6,14,10); wb.save(p); expect(p,"openpyxl",[],[M(n,pr,grams(a+" "+u),grams(s+" "+su),l) for n,t,a,u,pr,s,su,ro,l in R])
# 5 several lots, name merged over the lots
p=O+"Lots.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Lots on shelf"
put(ws,1,1,["Material","Lot","Received","Best before","Paid per kg","Left (kg)"],bold=True,color="E4DFEC")
R=[("Sweet almond oil",[("24-003",(2024,1,15),(2025,7,31),"9.4","0.35"),("24-041",(2024,5,3),(2025,11,30),"9.95","5")]),("Argan oil",[("24-012",(2024,2,8),(2025,8,31),"34","0.62")]),("Cocoa butter",[("23-088",(2023,10,20),(2025,10,31),"12.8","0.2"),("24-030",(2024,4,11),(2026,4,30),"15.5","2.5"),("24-055",(2024,6,27),(2026,6,30),"18.9","5")]),("Calendula extract",[("24-019",(2024,3,1),(2025,3,31),"22","0.4")]),("Rice starch",[("24-022",(2024,3,14),(2027,3,31),"5.6","1.75"),("24-060",(2024,7,9),(2027,6,30),"5.8","3")]),("Squalane",[("24-035",(2024,4,22),(2027,4,30),"41.5","0.88")])]
r=2; ms=[]
for n,ls in R:
    ws.cell(r,1,n).alignment=Alignment(vertical="top")
    if len(ls)>1: ws.merge_cells(start_row=r,end_row=r+len(ls)-1,start_column=1,end_column=1)
    for l,d,b,pr,s in ls:
        put(ws,r,2,[l,date(*d),date(*b),num(pr),num(s)]); ws.cell(r,3).number_format=ws.cell(r,4).number_format="dd/mm/yyyy"; ws.cell(r,5).number_format='"€"0.00'; ms.append(M(n,pr,1000,plain(D(s)*1000),l)); r+=1
widths(ws,24,10,13,13,13,11); wb.save(p); expect(p,"openpyxl",[],ms)
# 6 csv price + "per" column, £ signs
p=O+"price comparison.csv"
R=[("Hemp seed oil","£11.80","kg","S1"),("Avocado oil","£13.40","kg","S1"),("Sea buckthorn oil","£9.90","100 g","S2"),("Carnauba wax","£4.60","250 g","S1"),("Polysorbate 80","£12.20","kg","S3"),("Hydrolysed oat protein","£7.15","250 g","S3"),("Hyaluronic acid","£6.90","10 g","S3"),("Kaolin, white","£3.25","500 g","S2"),("Frankincense oil","£14.50","50 g","S4"),("Menthol crystals","£5.75","100 g","S4")]
text(p,"Prices checked in May;;;\nMaterial;Price;per;Supplier 1\n"+"".join(";".join(x)+"\n" for x in R),"cp1252","\r\n"); expect(p,"text",[],[M(n,a[1:],grams(("1 kg" if u=="kg" else u)),"","") for n,a,u,su in R])
# 7 comma decimals, groups with subtotals of value
p=O+"inventory year end.xlsx"; wb=Workbook(); ws=wb.active; ws.title="31 Dec"
put(ws,1,1,["Inventory at year end"],bold=True); put(ws,2,1,["Code","Description","Qty (kg)","EUR/kg","Value EUR","Lot number","Use by"],bold=True,color="D9D9D9")
R=[("Surfactants",[("R101","Coco glucoside","4.2","6.9","CG-3","2025-09"),("R102","Cocamidopropyl betaine","6.5","4.35","CB-8","2025-05"),("R103","Sodium coco sulfate","2","8.1","SS-1","2026-01")]),("Emollients",[("R201","Caprylic/capric triglyceride","3.75","7.8","CC-5","2026-03"),("R202","Isoamyl laurate","0.9","24.5","IL-2","2025-12"),("R203","Rapeseed oil","5.1","3.2","RO-9","2025-04")]),("Actives and aroma",[("R301","Urea","1.35","6.6","UR-4","2026-06"),("R302","Bisabolol","0.075","138","BI-1","2025-10"),("R303","Tea tree oil","0.28","62","TT-6","2025-07"),("R304","Ginger oil","0.12","118.5","GI-2","2025-07")])]
r=3; ms=[]; subs=[]
for h,rows in R:
    ws.cell(r,1,h).font=Font(bold=True,italic=True); r+=1; r0=r
    for c,n,q,pr,l,b in rows:
        put(ws,r,1,[c,n,num(q),num(pr),f"=C{r}*D{r}",l,b]); ms.append(M(n,pr,1000,plain(D(q)*1000),l))
        for k,f in ((3,"0.000"),(4,"0.00"),(5,"0.00")): ws.cell(r,k).number_format=f
        r+=1
    put(ws,r,2,["Subtotal "+h.lower(),None,None,f"=SUM(E{r0}:E{r-1})"],bold=True); ws.cell(r,5).number_format="0.00"; subs.append(f"E{r}"); r+=2
put(ws,r,2,["TOTAL STOCK VALUE",None,None,"="+"+".join(subs)],bold=True); widths(ws,18,30,10,10,11,12,10); wb.save(p); calc.append(p); expect(p,"calc",[],ms)
# ---- formulas with cost
# 8 phase, INCI, %, price/kg, cost in 100 g
p=O+"night cream costed.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Night cream"
R=[("A","Aqua","63.4","0.3"),("A","Glycerin","4","4.1"),("A","Sodium PCA","1.5","38"),("B","Argania Spinosa Kernel Oil","8","34"),("B","Caprylic/Capric Triglyceride","7","7.8"),("B","Butyrospermum Parkii Butter","5","8.4"),("B","Cetearyl Olivate (and) Sorbitan Olivate","5","27"),("B","Cetyl Alcohol","2","7.25"),("C","Niacinamide","2","61"),("C","Tocopherol","0.8","58"),("C","Phenoxyethanol (and) Ethylhexylglycerin","1","31.5"),("C","Parfum","0.3","75")]
put(ws,1,1,["Night cream, costed"],bold=True); put(ws,3,1,["Phase","INCI","%","Price per kg","Cost in 100 g"],bold=True,color="E2EFDA")
for r,(f,n,a,pr) in enumerate(R,4):
    put(ws,r,1,[f,n,num(a),num(pr),f"=C{r}*D{r}/1000"]); ws.cell(r,4).number_format="0.00"; ws.cell(r,5).number_format="0.000"
put(ws,16,2,["Total","=SUM(C4:C15)",None,"=SUM(E4:E15)"],bold=True); ws.cell(16,5).number_format="0.000"; widths(ws,8,42,8,13,14); wb.save(p); calc.append(p); expect(p,"calc",[F("Night cream, costed",[(n,a,f) for f,n,a,pr in R])])
# 9 grams, cost, then packaging and labour below
p=O+"balm cost sheet.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Cost sheet"
R=[("Sunflower oil","700","3.7"),("Beeswax pellets","260","19.5"),("Shea butter","240","8.95"),("Cocoa butter","150","14.2"),("Castor oil","120","8.1"),("Tocopherol","15","58"),("Lavender essential oil","15","96")]
put(ws,1,1,["Product","Lavender hand balm"]); put(ws,2,1,["Batch","25 tins of 60 g"]); put(ws,4,1,["Ingredient","Weight g","£/kg","Cost £"],bold=True)
for r,(n,a,pr) in enumerate(R,5): put(ws,r,1,[n,num(a),num(pr),f"=B{r}*C{r}/1000"]); ws.cell(r,3).number_format=ws.cell(r,4).number_format="0.00"
put(ws,12,1,["Total ingredients","=SUM(B5:B11)",None,"=SUM(D5:D11)"],bold=True)
put(ws,14,1,["Packaging"],bold=True); put(ws,15,1,["Tins, 25 pieces",None,None,13.75]); put(ws,16,1,["Labels, 25 pieces",None,None,4]); put(ws,17,1,["Labour, 1.5 hours",None,None,21])
put(ws,19,1,["Cost of batch",None,None,"=D12+D15+D16+D17"],bold=True); put(ws,20,1,["Cost per tin",None,None,"=D19/25"],bold=True)
for r in (12,15,16,17,19,20): ws.cell(r,4).number_format="0.00"
widths(ws,28,20,9,9); wb.save(p); calc.append(p); expect(p,"calc",[G("Lavender hand balm",[(n,a,"") for n,a,pr in R])])
# 10 csv comma decimals, batch cost
p=O+"shower gel cost.csv"
R=[("Water","rest","0.3"),("Sodium coco sulfate","8","8.1"),("Coco glucoside","9","6.9"),("Cocamidopropyl betaine","7","4.35"),("Glycerin","2.5","4.1"),("Sodium benzoate","0.5","11.6"),("Sweet orange oil","0.6","29"),("Polysorbate 20","1.2","9.4"),("Salt","1.5","0.8")]
w=D(100)-sum(D(a) for n,a,pr in R if a!="rest"); s="Orange shower gel;;;;\nMaterial;%;EUR per kg;EUR in 100 g;EUR for 5 kg\n"; t=D(0)
for n,a,pr in R:
    v=w if a=="rest" else D(a); c=v*D(pr)/1000; t+=c
    s+=f"{n};{'q.s. 100' if a=='rest' else de(a,2)};{de(pr,2)};{de(c,3)};{de(c*50,2)}\n"
s+=f"Total;100,00;;{de(t,3)};{de(t*50,2)}\n"; text(p,s,"utf-8","\r\n"); expect(p,"text",[F("Orange shower gel",[(n,a,"") for n,a,pr in R])])
# 11 cost columns before the per cents, phases as bars
p=O+"clay mask costing.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Mask"
bar(ws,1,1,5,"Clay mask – costing for 2 kg","FCE4D6",size=13); put(ws,2,1,["€ per kg","Material","% w/w","Batch g","€ batch"],bold=True)
R=[("Water phase",[("0.3","Water","47.6"),("4.1","Glycerin","6"),("19","Xanthan gum","0.4")]),("Powders",[("6.5","White kaolin","28"),("7.2","Green clay","8"),("9.6","Zinc oxide","1")]),("Oil phase",[("7.8","Caprylic/capric triglyceride","4"),("22.5","Glyceryl stearate citrate","3")]),("Cool down",[("28","Preservative","1.2"),("96","Lavender essential oil","0.3"),("12","Chamomile extract","0.5")])]
r=3; ex=[]
for h,rows in R:
    bar(ws,r,1,5,h,"F2F2F2"); r+=1
    for pr,n,a in rows:
        put(ws,r,1,[num(pr),n,num(a),f"=C{r}*20",f"=A{r}*D{r}/1000"]); ex.append((n,a,h)); ws.cell(r,1).number_format=ws.cell(r,5).number_format="0.00"; r+=1
put(ws,r,2,["Sum",f"=SUM(C3:C{r-1})",f"=SUM(D3:D{r-1})",f"=SUM(E3:E{r-1})"],bold=True); ws.cell(r,5).number_format="0.00"; widths(ws,10,32,9,10,10); wb.save(p); calc.append(p); expect(p,"calc",[F("Clay mask – costing for 2 kg",ex)])
# 12 formula sheet looking up a price sheet
p=O+"serum with price sheet.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Barrier serum"; w2=wb.create_sheet("Prices")
P=[("Squalane","41.5","880","SQ-35"),("Jojoba oil","26.5","850","JG-0417"),("Hemp seed oil","11.8","1200","HS-10"),("Rosehip oil","49.5","350","RH08"),("Tocopherol","58","260","TO-5"),("Bisabolol","138","75","BI-1"),("Rosemary antioxidant","72","90","RX-2"),("Carrot tissue oil","24","0","")]
put(w2,1,1,["Material","Price per kg","Stock g","Lot"],bold=True)
for r,(n,a,s,l) in enumerate(P,2): put(w2,r,1,[n,num(a),num(s),l or None]); w2.cell(r,2).number_format="0.00"
R=[("Squalane","35"),("Jojoba oil","30"),("Hemp seed oil","18.3"),("Rosehip oil","15"),("Tocopherol","1"),("Bisabolol","0.5"),("Rosemary antioxidant","0.2")]
put(ws,1,1,["Barrier serum"],bold=True); put(ws,2,1,["Material","%","Price/kg","Cost 100 g","Cost batch (600 g)"],bold=True)
for r,(n,a) in enumerate(R,3):
    put(ws,r,1,[n,num(a),f"=VLOOKUP(A{r},Prices!$A$2:$B$9,2,FALSE)",f"=B{r}*C{r}/1000",f"=D{r}*6"])
    for k in (3,4,5): ws.cell(r,k).number_format="0.00"
put(ws,10,1,["Total","=SUM(B3:B9)",None,"=SUM(D3:D9)","=SUM(E3:E9)"],bold=True); widths(ws,26,8,10,12,18); widths(w2,26,13,9,11); wb.save(p); calc.append(p); expect(p,"calc",[F("Barrier serum",[(n,a,"") for n,a in R])],[M(n,a,1000,s,l) for n,a,s,l in P])
through_calc(calc)
