from sheet_kit import *
O=HERE + "/by-southern-and-dutch/"; calc=[]
# ---------- Spanish maker
# 1 phase column merged downwards, INCI in second column, grams by formula
p=O+"crema_calendula.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Fórmula"
bar(ws,1,1,6,"Crema facial de caléndula","FFF2CC",size=14)
put(ws,2,1,["Lote (g):",200]); put(ws,3,1,["Fecha:","12/03/2024"])
put(ws,5,1,["Fase","Ingrediente","INCI","%","Gramos","Función"],bold=True,color="E2EFDA")
R=[("A",[("Agua destilada","Aqua","64.3","disolvente"),("Glicerina vegetal","Glycerin","3","humectante"),("Goma xantana","Xanthan Gum","0.3","espesante")]),
("B",[("Aceite de almendras dulces","Prunus Amygdalus Dulcis Oil","10","emoliente"),("Oleato de caléndula","Helianthus Annuus Seed Oil (and) Calendula Officinalis Flower Extract","8","calmante"),("Emulsionante de oliva","Cetearyl Olivate (and) Sorbitan Olivate","5","emulsionante"),("Manteca de karité","Butyrospermum Parkii Butter","4","emoliente"),("Alcohol cetílico","Cetyl Alcohol","2","consistencia")]),
("C",[("Pantenol","Panthenol","2","hidratante"),("Conservante","Benzyl Alcohol (and) Dehydroacetic Acid","0.8","conservante"),("Vitamina E","Tocopherol","0.5","antioxidante"),("Aceite esencial de lavanda","Lavandula Angustifolia Oil","0.1","perfume")])]
r=6; ex=[]
for ph,rows in R:
    r0=r
    for n,i,a,f in rows:
        put(ws,r,2,[n,i,num(a)]); ws.cell(r,4).number_format="0.00"
        ws.cell(r,5,f"=D{r}*$B$2/100").number_format="0.0"; ws.cell(r,6,f); ex.append((i,a,ph)); r+=1
    ws.cell(r0,1,ph).alignment=Alignment(vertical="center",horizontal="center"); ws.merge_cells(start_row=r0,end_row=r-1,start_column=1,end_column=1)
put(ws,r,2,["TOTAL",None,f"=SUM(D6:D{r-1})",f"=SUM(E6:E{r-1})"],bold=True)
ws.cell(r+2,1,"Modo: calentar A y B a 70 °C, emulsionar 3 min, añadir C por debajo de 40 °C."); widths(ws,8,28,50,8,9,14)
wb.save(p); calc.append(p); expect(p,"calc",[F("Crema facial de caléndula",ex)])
# 2 cp1252 csv, INCI in brackets
p=O+"balsamo labial.csv"
L2=fill([("Cera de abejas (Cera Alba)","22"),("Manteca de cacao (Theobroma Cacao Seed Butter)","18"),("Manteca de karité (Butyrospermum Parkii Butter)","12.5"),("Aceite de ricino (Ricinus Communis Seed Oil)","20"),("Aceite de jojoba (Simmondsia Chinensis Seed Oil)",None),("Vitamina E (Tocopherol)","0.5"),("Aroma de vainilla (Aroma)","1")],1)
notes=["fundir primero","","al final del fundido","brillo","","por debajo de 60 ºC","apto para labios"]
text(p,"Bálsamo labial de cacao;;\n;;\nIngrediente;Cantidad (%);Observaciones\n"+"".join(f"{n};{de(a,2)};{o}\n" for (n,a),o in zip(L2,notes))+"Suma;100,00;\n;;\nRinde unas 40 barritas de 5 g;;\n","cp1252","\r\n")
expect(p,"text",[F("Bálsamo labial de cacao",[(n,a,"") for n,a in L2])])
# 3 phases as headings, text amounts, csp and cs
p=O+"champú suave.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Hoja1"
put(ws,1,1,["CHAMPÚ SUAVE DE AVENA"],bold=True); put(ws,2,1,["versión 3, más suave que la anterior"])
put(ws,4,1,["Materia prima","Cantidad","Notas"],bold=True)
R=[("FASE A",[("Agua","c.s.p. 100 %","rest","desmineralizada"),("Glicerina","2,0 %","2",""),("Goma guar catiónica","0,3 %","0.3","dispersar en la glicerina"),("Extracto de avena","3,0 %","3","")]),
("FASE B",[("Coco glucósido","12,0 %","12","50 % materia activa"),("Cocamidopropil betaína","9,0 %","9",""),("Cocoil glutamato sódico","8,0 %","8","")]),
("FASE C",[("Benzoato sódico","0,5 %","0.5",""),("Sorbato potásico","0,3 %","0.3",""),("Perfume","0,4 %","0.4","sin alérgenos"),("Ácido cítrico (sol. 20 %)","c.s. pH 5,2","ph","poco a poco")])]
r=5; ex=[]
for h,rows in R:
    put(ws,r,1,[h],bold=True); r+=1
    for n,t,a,o in rows:
        put(ws,r,1,[n,t,o or None]); ex.append((n,a,h[5:])); r+=1
    if h=="FASE A": put(ws,r,1,["Remover hasta que no queden grumos."]); r+=1
put(ws,r,1,["Total","100 %"],bold=True); widths(ws,32,16,30)
wb.save(p); expect(p,"openpyxl",[F("CHAMPÚ SUAVE DE AVENA",ex)])
# 4 two formulas stacked
p=O+"tonico y serum.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Rostro"; r=1; fs=[]
for t,rows in [("Tónico de hamamelis",[("Agua de hamamelis","40"),("Agua de rosas","30"),("Agua destilada",None),("Glicerina","2"),("Alantoína","0.2"),("Pantenol","1"),("Ácido láctico","0.1"),("Alcohol bencílico y ácido dehidroacético","0.8")]),
 ("Sérum de noche",[("Aceite de rosa mosqueta","30"),("Aceite de jojoba",None),("Escualano vegetal","20"),("Aceite de argán","15"),("Vitamina E","0.7"),("Bisabolol","0.5"),("Aceite esencial de geranio","0.15")])]:
    rows=fill(rows,1); bar(ws,r,1,3,t,"FCE4D6"); put(ws,r+1,1,["Nº","Componente","g por 100 g"],bold=True); r+=2; r0=r
    for i,(n,a) in enumerate(rows,1): put(ws,r,1,[i,n,num(a)]); ws.cell(r,3).number_format="0.00"; r+=1
    put(ws,r,2,["Suma total",f"=SUM(C{r0}:C{r-1})"],bold=True); r+=3
    fs.append(F(t,[(n,a,"") for n,a in rows]))
widths(ws,5,42,12); wb.save(p); calc.append(p); expect(p,"calc",fs)
# ---------- Italian maker
# 5 phase column in the middle, q.b. a 100, grams for 500 g as text/number
p=O+"crema_mani.xlsx"; wb=Workbook(); ws=wb.active; ws.title="crema mani"
put(ws,1,1,["Nome formula:","Crema mani alla camomilla"]); put(ws,2,1,["Versione:","2.1"]); put(ws,3,1,["Quantità da preparare:","500 g"])
put(ws,5,1,["Ingrediente","INCI","Fase","%","per 500 g"],bold=True,color="D9D9D9")
R=[("Acqua demineralizzata","Aqua","A","rest"),("Glicerina","Glycerin","A","6"),("Gomma xantana","Xanthan Gum","A","0.4"),("Burro di karité","Butyrospermum Parkii Butter","B","7"),("Olio di riso","Oryza Sativa Bran Oil","B","8.5"),("Gliceril stearato","Glyceryl Stearate","B","4"),("Alcol cetearilico","Cetearyl Alcohol","B","3"),("Stearoil lattilato di sodio","Sodium Stearoyl Lactylate","B","2"),("Estratto di camomilla","Chamomilla Recutita Flower Extract","C","2.5"),("Conservante","Phenoxyethanol (and) Ethylhexylglycerin","C","0.9"),("Profumo","Parfum","C","0.3"),("Acido lattico","Lactic Acid","C","ph")]
for r,(n,i,f,a) in enumerate(R,6):
    t={"rest":"q.b. a 100","ph":"q.b. a pH 5,5"}.get(a)
    put(ws,r,1,[n,i,f,t or num(a),"q.b." if t else f"=D{r}*5"])
    ws.cell(r,4).number_format="0.00"; ws.cell(r,5).number_format="0.0"
put(ws,19,1,["Totale",None,None,100,500],bold=True); widths(ws,28,40,7,14,12)
wb.save(p); calc.append(p); expect(p,"calc",[F("Crema mani alla camomilla",[(i,a,f) for n,i,f,a in R])])
# 6 tab separated, INCI last
p=O+"olio_corpo.csv"
R=fill([("Olio di mandorle dolci","40","Prunus Amygdalus Dulcis Oil"),("Olio di vinaccioli",None,"Vitis Vinifera Seed Oil"),("Olio di jojoba","12.5","Simmondsia Chinensis Seed Oil"),("Oleolito di iperico","10","Olea Europaea Fruit Oil, Hypericum Perforatum Flower Extract"),("Squalano","7.5","Squalane"),("Vitamina E","0.5","Tocopherol"),("Olio essenziale di arancio dolce","0.4","Citrus Aurantium Dulcis Peel Oil")],1)
text(p,"Olio corpo all'arancio\nNome comune\tPercentuale\tINCI\n"+"".join(f"{n}\t{de(a,2)}\t{i}\n" for n,a,i in R)+"TOTALE\t100,00\t\n")
expect(p,"text",[F("Olio corpo all'arancio",[(i,a,"") for n,a,i in R])])
# 7 headed phases by words, percent format cells
p=O+"detergente delicato.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Foglio1"
put(ws,1,2,["Detergente viso delicato"],bold=True); put(ws,3,2,["Materia prima","Quantità","Annotazioni"],bold=True)
R=[("Fase acquosa",[("Acqua","0.6645"),("Glicerina","0.04"),("Succo di aloe","0.1"),("Idrossietilcellulosa","0.01")]),
("Fase tensioattivi",[("Lauril glucoside","0.08"),("Cocoamidopropil betaina","0.07"),("Olio di ricino idrogenato etossilato","0.015")]),
("Fase finale",[("Pantenolo","0.01"),("Sodio benzoato","0.005"),("Acido citrico","0.0025"),("Olio essenziale di lavanda","0.003")])]
r=4; ex=[]; first=r
for h,rows in R:
    bar(ws,r,2,4,h,"DDEBF7"); r+=1
    for n,a in rows:
        put(ws,r,2,[n,float(a)]); ws.cell(r,3).number_format="0.00%"; ex.append((n,D(a)*100,h)); r+=1
ws.cell(7,4,"senza zucchero"); ws.cell(8,4,"sciogliere in acqua fredda")
put(ws,r,2,["Somma",f"=SUM(C{first}:C{r-1})"],bold=True); ws.cell(r,3).number_format="0.00%"
ws.cell(r+1,2,"Il pH viene da solo a circa 5,3"); widths(ws,3,38,12,28)
wb.save(p); calc.append(p); expect(p,"calc",[F("Detergente viso delicato",ex)])
# 8 two sheets, titles are the sheet names; one in grams
p=O+"burri.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Burro montato"
a1=[("Burro di karité","180"),("Burro di mango","60"),("Olio di cocco","45"),("Olio di girasole","90"),("Amido di mais","20"),("Vitamina E","2.5"),("Olio essenziale di lavanda","2.5")]
put(ws,1,1,["Ingrediente","Grammi","Note"],bold=True)
for r,(n,a) in enumerate(a1,2): put(ws,r,1,[n,num(a)])
ws.cell(6,3,"setacciare"); put(ws,9,1,["Totale g",400],bold=True); widths(ws,30,10,20)
w2=wb.create_sheet("Stick solido"); put(w2,1,1,["Ingrediente","%"],bold=True)
a2=[("Cera candelilla","14"),("Burro di cacao","32"),("Burro di karité","20.5"),("Olio di jojoba","18"),("Olio di ricino","14"),("Ossido di zinco","1"),("Vitamina E","0.5")]
for r,(n,a) in enumerate(a2,2): put(w2,r,1,[n,num(a)])
widths(w2,30,10); put(w2,10,1,["Totale",100],bold=True)
wb.save(p); expect(p,"openpyxl",[G("Burro montato",[(n,a,"") for n,a in a1]),F("Stick solido",[(n,a,"") for n,a in a2])])
# ---------- Dutch maker
# 9 merged bars with temperature
p=O+"handcreme lavendel.xlsx"; wb=Workbook(); ws=wb.active; ws.title="recept"
bar(ws,1,1,4,"Handcrème lavendel","E4DFEC",size=14,align="center")
put(ws,3,1,["Grondstof","INCI-naam","Gew.%","Functie"],bold=True)
R=[("Waterfase","Waterfase (70 °C)",[("Demiwater","Aqua","62.25","oplosmiddel"),("Glycerine","Glycerin","5","vochtinbrenger"),("Allantoïne","Allantoin","0.3","verzachtend")]),
("Vetfase","Vetfase (70 °C)",[("Amandelolie","Prunus Amygdalus Dulcis Oil","12","verzorgend"),("Sheaboter","Butyrospermum Parkii Butter","6","verzorgend"),("Emulgator","Glyceryl Stearate Citrate","5.5","emulgator"),("Cetylalcohol","Cetyl Alcohol","3","verdikker"),("Bijenwas","Cera Alba","1.5","verdikker")]),
("Afkoelfase","Afkoelfase (onder 40 °C)",[("Panthenol","Panthenol","2","verzorgend"),("Conserveermiddel","Benzyl Alcohol, Dehydroacetic Acid","0.9","conservering"),("Vitamine E-acetaat","Tocopheryl Acetate","1","antioxidant"),("Lavendelolie","Lavandula Angustifolia Oil","0.55","geur")])]
r=4; ex=[]
for ph,h,rows in R:
    bar(ws,r,1,4,h,"F2F2F2"); r+=1
    for n,i,a,f in rows: put(ws,r,1,[n,i,de(a,2),f]); ex.append((i,a,ph)); r+=1
put(ws,r,1,["Totaal",None,"100,00"],bold=True); widths(ws,24,36,9,18)
wb.save(p); expect(p,"openpyxl",[F("Handcrème lavendel",ex)])
# 10 grams with unit, semicolons
p=O+"lippenbalsem.csv"
R=[("Bijenwas","33"),("Cacaoboter","24"),("Sheaboter","22.5"),("Kokosolie","30"),("Castorolie","26.5"),("Honingaroma (olieoplosbaar)","1.5"),("Vitamine E","0.75"),("Zonnebloemolie","11.75")]
text(p,"Lippenbalsem honing\nvoor 30 stiftjes van 5 gram\n\nIngrediënt;Hoeveelheid\n"+"".join(f"{n};{de(a)} g\n" for n,a in R)+"Totaal;150 g\n\nSmelten op 75 graden, aroma en vitamine E bij 60 graden.\n","utf-8-sig","\r\n")
expect(p,"text",[G("Lippenbalsem honing",[(n,a,"") for n,a in R])])
# 11 nr column, aanvullen tot 100, pH, grams by formula
p=O+"reinigingsgel.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Blad1"
put(ws,1,1,["Recept",None,"Milde reinigingsgel"]); put(ws,2,1,["Batch",None,"250 gram"])
put(ws,4,1,["nr.","fase","naam","%","gram"],bold=True)
R=[("A","Gedemineraliseerd water","rest"),("A","Xanthaangom","1"),("A","Glycerine","3"),("B","Decylglucoside","10"),("B","Cocamidopropylbetaïne","8"),("B","Natriumcocoylglutamaat","6"),("C","Komkommerextract","2"),("C","Natriumbenzoaat","0.5"),("C","Kaliumsorbaat","0.25"),("C","Citroenzuuroplossing 50%","ph")]
for r,(f,n,a) in enumerate(R,5):
    put(ws,r,1,[r-4,f,n,{"rest":"aanvullen tot 100","ph":"naar behoefte, pH 5,0"}.get(a) or num(a)])
    if a not in WORDS: ws.cell(r,5,f"=D{r}*2.5").number_format="0.00"
put(ws,15,3,["totaal",100,250],bold=True); put(ws,17,1,["Let op: gom eerst door de glycerine roeren, dan pas water erbij."]); widths(ws,6,6,30,22,9)
wb.save(p); calc.append(p); expect(p,"calc",[F("Milde reinigingsgel",[(n,a,f) for f,n,a in R])])
# 12 "Fase 1", a few drops, names with INCI in brackets
p=O+"bodylotion.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Bodylotion sinaasappel"
put(ws,1,1,["Fase","Ingrediënt (INCI)","Percentage"],bold=True,color="FFE699")
R=[("Fase 1","Water (Aqua)","71.6"),("","Glycerine (Glycerin)","4"),("Fase 2","Zonnebloemolie (Helianthus Annuus Seed Oil)","11"),("","Kokosolie (Cocos Nucifera Oil)","3"),("","Emulgerende was (Cetearyl Alcohol, Sodium Cetearyl Sulfate)","6"),("","Stearinezuur (Stearic Acid)","1.5"),("Fase 3","Conserveermiddel (Phenoxyethanol, Ethylhexylglycerin)","0.9"),("","Aloë-verasap (Aloe Barbadensis Leaf Juice)","2"),("","Sinaasappelolie (Citrus Aurantium Dulcis Peel Oil)","enkele druppels")]
ph=""; ex=[]
for r,(f,n,a) in enumerate(R,2):
    ph=f[5:] or ph
    if a[0].isdigit(): put(ws,r,1,[f or None,n,de(a,1)+"%"]); ex.append((n,a,ph))
    else: put(ws,r,1,[f or None,n,a]); ex.append((n,"unknown",ph))
put(ws,12,2,["Totaal (zonder geur)","100,0%"],bold=True); widths(ws,9,58,16)
wb.save(p); expect(p,"openpyxl",[F("Bodylotion sinaasappel",ex)])
through_calc(calc)
