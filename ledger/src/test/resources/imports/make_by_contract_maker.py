"""Makes the sheets of a small contract manufacturer. Raw-material codes, INCI beside a trade-neutral name, CAS,
costs, kilograms for the kettle, subtotals and check totals, revision blocks, lots and stock."""
import os, datetime, csv, io
from sheet_kit import *
P = lambda n: os.path.join(HERE, "by-contract-maker", n)
calc = []
# code: INCI, material, CAS, function, supplier, price per kg
RM = {
"RM-0001":("Aqua","Purified water","7732-18-5","Solvent","in house",0.02),
"RM-0010":("Glycerin","Glycerine 99.5% veg.","56-81-5","Humectant","Supplier 1",1.85),
"RM-0012":("Propanediol","Propanediol, plant","504-63-2","Humectant","Supplier 2",6.4),
"RM-0015":("Betaine","Betaine anhydrous","107-43-7","Humectant","Supplier 2",7.1),
"RM-0021":("Xanthan Gum","Xanthan, clear grade","11138-66-2","Thickener","Supplier 3",14.2),
"RM-0022":("Carbomer","Carbomer powder","9003-01-4","Thickener","Supplier 3",19.5),
"RM-0023":("Hydroxyethylcellulose","HEC medium visc.","9004-62-0","Thickener","Supplier 3",17.3),
"RM-0030":("Caprylic/Capric Triglyceride","MCT oil","73398-61-5","Emollient","Supplier 1",4.9),
"RM-0031":("Helianthus Annuus Seed Oil","Sunflower oil, high oleic","8001-21-6","Emollient","Supplier 4",2.75),
"RM-0032":("Butyrospermum Parkii Butter","Shea butter, refined","194043-92-0","Emollient","Supplier 4",6.2),
"RM-0033":("Isopropyl Palmitate","IPP","142-91-6","Emollient","Supplier 1",3.6),
"RM-0034":("Dimethicone","Silicone fluid 350","63148-62-9","Skin protectant","Supplier 5",8.4),
"RM-0035":("Cera Alba","Beeswax, bleached","8012-89-3","Consistency","Supplier 4",12.8),
"RM-0036":("Ricinus Communis Seed Oil","Castor oil","8001-79-4","Emollient","Supplier 4",4.1),
"RM-0037":("Squalane","Squalane, olive","111-01-3","Emollient","Supplier 4",31.0),
"RM-0040":("Cetearyl Alcohol","Fatty alcohol 50/50","67762-27-0","Consistency","Supplier 1",3.3),
"RM-0041":("Glyceryl Stearate (and) PEG-100 Stearate","Self-emulsifying base","31566-31-1 / 9004-99-3","Emulsifier","Supplier 1",5.6),
"RM-0042":("Stearic Acid","Stearic acid 50%","57-11-4","Consistency","Supplier 1",2.2),
"RM-0043":("Behentrimonium Chloride","BTC 80%","17301-53-0","Conditioner","Supplier 2",9.7),
"RM-0044":("Polyglyceryl-3 Methylglucose Distearate","Sugar emulsifier","68239-42-9","Emulsifier","Supplier 2",16.9),
"RM-0050":("Sodium Laureth Sulfate","SLES 28%","68891-38-3","Surfactant","Supplier 6",1.15),
"RM-0051":("Cocamidopropyl Betaine","CAPB 30%","61789-40-0","Surfactant","Supplier 6",1.45),
"RM-0052":("Coco-Glucoside","Coco glucoside 50%","68515-73-1","Surfactant","Supplier 6",2.6),
"RM-0053":("Sodium Chloride","Salt, vacuum","7647-14-5","Viscosity","Supplier 7",0.4),
"RM-0060":("Phenoxyethanol","Phenoxyethanol","122-99-6","Preservative","Supplier 2",5.9),
"RM-0061":("Ethylhexylglycerin","EHG","70445-33-9","Preservative booster","Supplier 2",28.0),
"RM-0062":("Sodium Benzoate","Sodium benzoate gran.","532-32-1","Preservative","Supplier 7",3.1),
"RM-0063":("Potassium Sorbate","Potassium sorbate","24634-61-5","Preservative","Supplier 7",5.2),
"RM-0070":("Citric Acid","Citric acid monohydrate","5949-29-1","pH adjuster","Supplier 7",1.9),
"RM-0071":("Sodium Hydroxide","Caustic soda 20%","1310-73-2","pH adjuster","Supplier 7",0.9),
"RM-0080":("Panthenol","D-Panthenol 75%","81-13-0","Active","Supplier 2",18.4),
"RM-0081":("Niacinamide","Niacinamide","98-92-0","Active","Supplier 2",12.6),
"RM-0082":("Tocopheryl Acetate","Vitamin E acetate","7695-91-2","Active","Supplier 2",22.0),
"RM-0083":("Allantoin","Allantoin","97-59-6","Active","Supplier 2",11.2),
"RM-0084":("Urea","Urea, cosmetic","57-13-6","Active","Supplier 7",2.4),
"RM-0085":("Salicylic Acid","Salicylic acid","69-72-7","Active","Supplier 2",14.0),
"RM-0086":("Disodium EDTA","Disodium EDTA","139-33-3","Chelating","Supplier 7",4.3),
"RM-0090":("Parfum","Fragrance, green tea type","n/a","Fragrance","Supplier 8",38.0),
"RM-0091":("Zinc Oxide","Zinc oxide, micronised","1314-13-2","UV/Skin protectant","Supplier 5",13.7),
"RM-0092":("Prunus Armeniaca Seed Powder","Apricot kernel granules","72869-69-3","Exfoliant","Supplier 4",9.0),
"RM-0093":("Kaolin","White clay","1332-58-7","Absorbent","Supplier 5",1.6),
"RM-0094":("Polyquaternium-7","PQ-7 solution","26590-05-6","Conditioner","Supplier 6",4.4),
}
def rm(k): return RM["RM-"+k]
def full(l, total="100"):
    """(phase, code, pct or None)"""
    return fill(l,2,total)
def T(l): return [(rm(k)[0],a,p) for p,k,a in l]

# D01 the full card: subtotals by phase, costs, revisions
f=full([("A","0001",None),("A","0086","0.1"),("A","0010","4"),("A","0021","0.2"),("B","0041","5"),("B","0040","2.5"),("B","0030","6"),("B","0032","2"),("B","0034","1"),("C","0080","1"),("C","0060","0.9"),("C","0061","0.1"),("C","0090","0.3")])
wb=Workbook(); ws=wb.active; ws.title="F-2031"; ws.merge_cells("A1:K1"); ws["A1"]="Hand Cream Green Tea"; ws["A1"].font=Font(bold=True,size=14)
put(ws,2,1,["Formula no.","F-2031",None,"Batch size kg",50]); put(ws,3,1,["Revision","03",None,"Date",datetime.date(2025,4,2)]); ws["E3"].number_format="dd/mm/yyyy"
H=["Phase","Code","INCI","Material","CAS no.","Function","Supplier","% w/w","kg / batch","£ / kg","£ / batch"]; put(ws,5,1,H,bold=True,color="D9D9D9"); r=6; sub=[]
for ph in "ABC":
    r0=r
    for p,k,a in f:
        if p==ph: x=rm(k); put(ws,r,1,[p,"RM-"+k,x[0],x[1],x[2],x[3],x[4],num(a),"=H%d/100*$E$2"%r,x[5],"=I%d*J%d"%(r,r)]); ws.cell(r,8).number_format="0.00"; ws.cell(r,9).number_format="0.000"; ws.cell(r,11).number_format="0.00"; r+=1
    put(ws,r,3,["Subtotal phase "+ph,None,None,None,None]+["=SUM(%s%d:%s%d)"%(c,r0,c,r-1) for c in "HI"]+[None,"=SUM(K%d:K%d)"%(r0,r-1)],bold=True); sub.append(r); r+=1
put(ws,r,3,["TOTAL",None,None,None,None]+["="+"+".join(c+str(s) for s in sub) for c in "HI"]+[None,"="+"+".join("K%d"%s for s in sub)],bold=True); put(ws,r+1,3,["Check",None,None,None,None,'=IF(ROUND(H%d,4)=100,"OK","ERROR")'%r])
r+=3; put(ws,r,1,["Rev.","Date","Change","By"],bold=True); put(ws,r+1,1,["01",datetime.date(2024,9,12),"First issue","QA"]); put(ws,r+2,1,["02",datetime.date(2024,12,1),"Glycerin 3 to 4 %","R&D"]); put(ws,r+3,1,["03",datetime.date(2025,4,2),"Fragrance 0.4 to 0.3 %","R&D"])
widths(ws,10,10,38,24,20,18,12,9,10,8,9); wb.save(P("d01-F-2031.xlsx")); calc.append(P("d01-F-2031.xlsx")); expect(P("d01-F-2031.xlsx"),"calc",[F("Hand Cream Green Tea",T(f))])

# D02 percentage-formatted, hidden column with the per cents of the revision before
f=full([("A","0001",None),("A","0023","0.8"),("A","0010","3"),("B","0052","12"),("B","0051","10"),("B","0094","1.5"),("C","0080","0.5"),("C","0062","0.45"),("C","0063","0.25"),("C","0070","0.35"),("C","0090","0.4")])
old={"0052":14,"0051":9,"0090":0.5}
wb=Workbook(); ws=wb.active; ws.title="Body wash"; put(ws,1,1,["F-2044 Body Wash, mild, rev. B"],bold=True); put(ws,3,1,["Code","INCI","Function","Phase","Rev A","% w/w","kg in 200"],bold=True,color="DDEBF7")
for i,(p,k,a) in enumerate(f):
    q=4+i; x=rm(k); o=float(old.get(k,float(a)))/100
    if k=="0001": o=round(1-sum(float(old.get(kk,float(aa))) for _,kk,aa in f if kk!="0001")/100,6)
    put(ws,q,1,["RM-"+k,x[0],x[3],p,o,float(D(a)/100),"=F%d*200"%q]); ws.cell(q,5).number_format=ws.cell(q,6).number_format="0.00%"; ws.cell(q,7).number_format="0.00"
q=4+len(f); put(ws,q,2,["Total",None,None,"=SUM(E4:E%d)"%(q-1),"=SUM(F4:F%d)"%(q-1),"=SUM(G4:G%d)"%(q-1)],bold=True); ws.cell(q,5).number_format=ws.cell(q,6).number_format="0.00%"
ws.column_dimensions["E"].hidden=True; ws.column_dimensions["B"].width=30; wb.save(P("d02-bodywash.xlsx")); calc.append(P("d02-bodywash.xlsx")); expect(P("d02-bodywash.xlsx"),"calc",[F("F-2044 Body Wash, mild, rev. B",T(f))])

# D03 flat export, formula number on every row
fa=full([("A","0001",None),("A","0015","2"),("A","0081","2"),("A","0012","3"),("B","0080","1"),("B","0062","0.4"),("B","0070","0.12")]); fb=full([("A","0001",None),("A","0010","3"),("B","0040","5"),("B","0043","3"),("B","0033","2"),("C","0080","0.5"),("C","0060","0.8"),("C","0090","0.5")])
s="FORMULA_NO,FORMULA_NAME,REV,LINE,PHASE,RM_CODE,INCI,PCT_WW\n"
for no,nm,rv,l in (("F-1101","Facial Toner Niacinamide","02",fa),("F-1107","Hair Conditioner Daily","01",fb)):
    for i,(p,k,a) in enumerate(l): s+="%s,%s,%s,%d,%s,RM-%s,%s,%.3f\n"%(no,nm,rv,(i+1)*10,p,k,rm(k)[0],float(a))
text(P("d03-export-formulas.csv"),s,"utf-8","\r\n"); expect(P("d03-export-formulas.csv"),"text",[F("Facial Toner Niacinamide",T(fa)),F("Hair Conditioner Daily",T(fb))])

# D04 stock list, kg, several lots of a material
st=[("0010","25-0113",86.4,"2026-11"),("0010","25-0340",200,"2027-02"),("0021","24-1187",7.35,"2026-05"),("0030","25-0212",142,"2026-09"),("0032","25-0090",38.5,"2026-03"),("0040","24-0977",61.25,"2026-12"),("0041","25-0301",45,"2027-01"),("0060","25-0155",18.6,"2026-08"),("0080","25-0266",4.125,"2026-10"),("0090","25-0410",0.85,"2026-04")]
wb=Workbook(); ws=wb.active; ws.title="Stock"; put(ws,1,1,["RAW MATERIAL STOCK","","","","as of",datetime.date(2025,5,30)],bold=True); ws["F1"].number_format="dd/mm/yyyy"; put(ws,3,1,["Code","INCI","Material","Supplier","Lot","Qty kg","Price £/kg","Value £","Retest"],bold=True,color="D9D9D9")
for i,(k,lot,q,ex) in enumerate(st): x=rm(k); put(ws,4+i,1,["RM-"+k,x[0],x[1],x[4],lot,q,x[5],"=F%d*G%d"%(4+i,4+i),ex]); ws.cell(4+i,6).number_format="0.000"; ws.cell(4+i,7).number_format=ws.cell(4+i,8).number_format="0.00"
put(ws,15,7,["Total","=SUM(H4:H13)"],bold=True); widths(ws,10,38,24,12,10,10,10,10,10); wb.save(P("d04-stock.xlsx")); calc.append(P("d04-stock.xlsx"))
expect(P("d04-stock.xlsx"),"calc",[],[M(rm(k)[0],"%.2f"%rm(k)[5],1000,plain(D(str(q))*1000),lot) for k,lot,q,_ in st])

# D05 stock csv, price for a pack
st=[("0030","25","122.50","60.0","L25-0212"),("0031","190","522.50","310.5","L25-0188"),("0035","10","128.00","12.4","L24-0871"),("0036","25","102.50","8.75","L25-0067"),("0050","200","230.00","415","L25-0333"),("0051","200","290.00","180","L25-0334"),("0053","25","10.00","75","L24-0555"),("0091","5","68.50","3.2","L25-0019"),("0093","25","40.00","0","")]
s="Code,Material name,INCI,Pack kg,Pack price GBP,On hand kg,Lot,Status\n"+"".join('RM-%s,"%s","%s",%s,%s,%s,%s,%s\n'%(k,rm(k)[1],rm(k)[0],a,b,c,d,"released" if d else "out of stock") for k,a,b,c,d in st)
text(P("d05-rm-prices.csv"),s,"utf-8-sig","\r\n"); expect(P("d05-rm-prices.csv"),"text",[],[M(rm(k)[0],b,plain(D(a)*1000),plain(D(c)*1000),d) for k,a,b,c,d in st])

# D06 batch record: kilograms only, boxes to fill in
l=[("A","0001",151.6),("A","0086",0.2),("A","0010",8),("A","0022",0.8),("B","0042",6),("B","0041",8),("B","0031",16),("B","0082",1),("C","0071",1.6),("C","0060",1.8),("C","0084",5)]
tot=sum(D(str(x)) for *_,x in l)
wb=Workbook(); ws=wb.active; ws.title="Batch record"; bar(ws,1,1,8,"BATCH MANUFACTURING RECORD","D9D9D9",size=14,align="center"); put(ws,2,1,["Product:","Body Lotion Urea",None,None,"Batch no.:","250519-1"]); put(ws,3,1,["Vessel:","V2 (250 L)",None,None,"Batch size:","%s kg"%plain(tot)]); put(ws,5,1,["Step","Phase","Code","INCI name","Lot","Required kg","Weighed kg","Sign"],bold=True)
lots=["-","24-0902","25-0113","24-1010","25-0044","25-0301","25-0188","25-0071","24-0987","25-0155","25-0230"]
for i,(p,k,x) in enumerate(l): put(ws,6+i,1,[i+1,p,"RM-"+k,rm(k)[0],lots[i],x]); ws.cell(6+i,6).number_format="0.000"
q=6+len(l); put(ws,q,4,["Total",None,"=SUM(F6:F%d)"%(q-1)],bold=True); ws.cell(q,6).number_format="0.000"; put(ws,q+2,1,["Yield:",None,None,"kg","Checked by:"])
widths(ws,9,14,10,40,11,12,12,8); wb.save(P("d06-batch-record.xlsx")); calc.append(P("d06-batch-record.xlsx")); expect(P("d06-batch-record.xlsx"),"calc",[G("Body Lotion Urea",[(rm(k)[0],x,p) for p,k,x in l])])

# D07 dossier workbook: formula, process, specification, revisions
f=full([("A","0001",None),("A","0010","5"),("A","0083","0.2"),("A","0021","0.4"),("B","0044","3"),("B","0040","2"),("B","0037","4"),("B","0030","8"),("C","0081","4"),("C","0060","0.9"),("C","0061","0.1")])
wb=Workbook(); ws=wb.active; ws.title="Cover"; put(ws,1,1,["Product","Face Cream Niacinamide 4%"]); put(ws,2,1,["Code","F-3005"]); put(ws,3,1,["Shelf life","24 months"]); put(ws,4,1,["PAO","6 M"])
ws=wb.create_sheet("Formula"); put(ws,1,1,["Face Cream Niacinamide 4%"],bold=True); put(ws,3,1,["No.","INCI","CAS","% (w/w)","Function","Phase"],bold=True)
for i,(p,k,a) in enumerate(f): x=rm(k); put(ws,4+i,1,[i+1,x[0],x[2],num(a),x[3],p]); ws.cell(4+i,4).number_format="0.000"
put(ws,4+len(f),2,["Total",None,100],bold=True); widths(ws,5,40,14,10,20,7)
ws=wb.create_sheet("Process"); put(ws,1,1,["Step","Instruction","Temp °C","rpm"],bold=True)
for i,x in enumerate([(1,"Charge A, disperse xanthan in glycerin",75,600),(2,"Melt B",75,None),(3,"Add B to A, homogenise 5 min",75,3000),(4,"Cool, add C",38,200)]): put(ws,2+i,1,x)
ws=wb.create_sheet("Specification"); put(ws,1,1,["Test","Method","Min","Max"],bold=True)
for i,x in enumerate([("pH (25 °C)","TM-01",5.5,6.5),("Viscosity mPas","TM-04",12000,20000),("Density g/ml","TM-02",0.96,1.0),("Total count cfu/g","TM-20",None,100)]): put(ws,2+i,1,x)
ws=wb.create_sheet("Revisions"); put(ws,1,1,["Rev","Date","Reason"],bold=True); put(ws,2,1,["1","2024-10-01","New"]); put(ws,3,1,["2","2025-02-17","Niacinamide 3 % to 4 %"])
wb.save(P("d07-dossier-F3005.xlsx")); expect(P("d07-dossier-F3005.xlsx"),"openpyxl",[F("Face Cream Niacinamide 4%",T(f))])

# D08 formula that looks prices up in the price sheet
f=full([("","0036",None),("","0035","14"),("","0032","18"),("","0031","25"),("","0042","2"),("","0082","0.5"),("","0090","0.2")])
pl=["0031","0032","0035","0036","0042","0082","0090"]
wb=Workbook(); ws=wb.active; ws.title="F-4002"; put(ws,1,1,["F-4002 Lip Care Stick"],bold=True); put(ws,2,1,["Batch kg",None,None,20]); put(ws,4,1,["Code","INCI","%","kg","£/kg","Cost £"],bold=True)
for i,(p,k,a) in enumerate(f): q=5+i; put(ws,q,1,["RM-"+k,"=VLOOKUP(A%d,'RM list'!$A$2:$E$8,2,FALSE)"%q,num(a),"=C%d/100*$D$2"%q,"=VLOOKUP(A%d,'RM list'!$A$2:$E$8,4,FALSE)"%q,"=D%d*E%d"%(q,q)]); ws.cell(q,6).number_format="0.00"
q=5+len(f); put(ws,q,2,["Total"]+["=SUM(%s5:%s%d)"%(c,c,q-1) for c in "CD"]+[None,"=SUM(F5:F%d)"%(q-1)],bold=True); put(ws,q+1,2,["Cost per kg",None,None,None,"=F%d/D2"%q]); widths(ws,10,34,8,8,8,9)
ws=wb.create_sheet("RM list"); put(ws,1,1,["Code","INCI","Material","Price £ per kg","Stock kg"],bold=True)
sk=[310.5,38.5,12.4,8.75,55,3.6,0.85]
for i,k in enumerate(pl): x=rm(k); put(ws,2+i,1,["RM-"+k,x[0],x[1],x[5],sk[i]]); ws.cell(2+i,4).number_format="0.00"
widths(ws,10,34,26,14,10); wb.save(P("d08-lipstick-cost.xlsx")); calc.append(P("d08-lipstick-cost.xlsx"))
expect(P("d08-lipstick-cost.xlsx"),"calc",[F("F-4002 Lip Care Stick",T(f))],[M(rm(k)[0],"%.2f"%rm(k)[5],1000,plain(D(str(sk[i]))*1000),"") for i,k in enumerate(pl)])

# D09 typed for the customer: phase headings, q.s. words
blocks=[("Phase A",[("0001","q.s. to 100.00"),("0010","3.00"),("0022","0.40"),("0086","0.10")]),("Phase B",[("0012","5.00"),("0085","0.50"),("0060","0.80")]),("Phase C",[("0071","q.s. pH 4.0"),("0083","0.20"),("0090","q.s.")])]
wb=Workbook(); ws=wb.active; ws.title="Quantitative formula"; bar(ws,1,1,5,"QUANTITATIVE FORMULA","FFFFFF",size=14,align="center"); put(ws,3,1,["Product name:",None,"Clarifying Gel"]); put(ws,4,1,["Version:",None,"1.2"]); put(ws,6,1,["Item","Code","INCI","% w/w","Function"],bold=True); r=7; n=1; ls=[]
for ph,l in blocks:
    bar(ws,r,1,5,ph,"EDEDED"); r+=1
    for k,a in l: put(ws,r,1,[n,"RM-"+k,rm(k)[0],a,rm(k)[3]]); ls.append((rm(k)[0],"rest" if "100" in a else "ph" if "pH" in a else "unknown" if a=="q.s." else a,ph[6:])); r+=1; n+=1
put(ws,r,3,["Total","100.00"],bold=True); ws.cell(r+2,1,"This document is confidential. Not to be copied without written consent."); widths(ws,6,10,30,15,20); wb.save(P("d09-customer-formula.xlsx")); expect(P("d09-customer-formula.xlsx"),"openpyxl",[F("Clarifying Gel",ls)])

# D10 csv with min / target / max
l=full([("1","0001",None),("1","0023","0.6"),("1","0010","4"),("2","0050","22"),("2","0051","8"),("2","0092","4"),("2","0093","3"),("3","0062","0.5"),("3","0070","0.3"),("3","0053","0.9"),("3","0090","0.25")])
s="Product,Face & Body Scrub Apricot,,,,,,\nFormula,F-5110 rev 4,,,,,,\n\nPhase,RM code,INCI,CAS,Min %,Target %,Max %,Function\n"
for p,k,a in l: s+='%s,RM-%s,"%s",%s,%.4f,%.4f,%.4f,%s\n'%(p,k,rm(k)[0],rm(k)[2],float(a)*.95,float(a),float(a)*1.05,rm(k)[3])
s+=",,TOTAL,,,100.0000,,\n"; text(P("d10-F-5110.csv"),s); expect(P("d10-F-5110.csv"),"text",[F("Face & Body Scrub Apricot",T(l))])

# D11 shampoo made with a premix; the premix stands beneath
main=[("0001","48.3"),("P-12","45"),("0094","2"),("0080","0.5"),("0053","1.5"),("0070","0.2"),("0062","0.5"),("0052","1.5"),("0090","0.5")]; pre=[("0050","62"),("0051","25"),("0001","9.5"),("0010","3"),("0062","0.5")]
assert sum(D(a) for _,a in main)==100
nm=lambda k: "Surfactant premix P-12" if k=="P-12" else rm(k)[0]
wb=Workbook(); ws=wb.active; ws.title="F-6001"; r=1; fs=[]
for t,l,kg in (("F-6001 Shampoo Everyday",main,500),("P-12 Surfactant premix",pre,1000)):
    bar(ws,r,1,4,t,"DDEBF7"); put(ws,r+1,1,["Code","INCI / premix","% w/w","kg per %d"%kg],bold=True); r+=2; r0=r
    for k,a in l: put(ws,r,1,[k if k=="P-12" else "RM-"+k,nm(k),num(a),"=C%d/100*%d"%(r,kg)]); r+=1
    put(ws,r,2,["Total","=SUM(C%d:C%d)"%(r0,r-1),"=SUM(D%d:D%d)"%(r0,r-1)],bold=True); r+=3; fs.append(F(t,[(nm(k),a,"") for k,a in l]))
widths(ws,10,30,9,12); wb.save(P("d11-shampoo-premix.xlsx")); calc.append(P("d11-shampoo-premix.xlsx")); expect(P("d11-shampoo-premix.xlsx"),"calc",fs)

# D12 costing sheet: costs first, per cent of cost beside per cent of formula
f=full([("","0001",None),("","0091","15"),("","0030","12"),("","0044","4"),("","0035","2"),("","0040","3"),("","0010","3"),("","0080","2"),("","0060","0.9"),("","0061","0.1")])
wb=Workbook(); ws=wb.active; ws.title="Costing"; put(ws,1,1,["Costing sheet"],bold=True,); put(ws,2,1,["Product","Barrier Cream Zinc"]); put(ws,4,1,["Supplier","Price £/kg","Cost £ per 100 kg","Share of cost %","Material","INCI","Formula % w/w"],bold=True,color="FFF2CC"); n=len(f)
for i,(p,k,a) in enumerate(f):
    q=5+i; x=rm(k); put(ws,q,1,[x[4],x[5],"=B%d*G%d"%(q,q),"=C%d/$C$%d*100"%(q,5+n),x[1],x[0],num(a)]); ws.cell(q,2).number_format=ws.cell(q,3).number_format=ws.cell(q,7).number_format="0.00"; ws.cell(q,4).number_format="0.0"
q=5+n; put(ws,q,1,["Total",None,"=SUM(C5:C%d)"%(q-1),"=SUM(D5:D%d)"%(q-1),None,None,"=SUM(G5:G%d)"%(q-1)],bold=True); ws.cell(q,4).number_format="0.0"; widths(ws,12,11,17,15,26,40,14)
wb.save(P("d12-costing-barrier.xlsx")); calc.append(P("d12-costing-barrier.xlsx")); expect(P("d12-costing-barrier.xlsx"),"calc",[F("Barrier Cream Zinc",T(f))])

# D13 csv, grams with thousands commas
l=[("0001",172500),("0010",12500),("0015",5000),("0023",1750),("0081",5000),("0012",45000),("0080",2500),("0060",2250),("0061",250),("0084",3250)]
tot=sum(x for _,x in l); g=lambda x: '"{:,.1f}"'.format(x)
s='"WEIGHING LIST"\n"Product","Hydrating Serum"\n"Batch","%s g"\n\n"Pos","Code","INCI","Amount g","Lot","Balance"\n'%"{:,.0f}".format(tot)
for i,(k,x) in enumerate(l): s+='%d,"RM-%s","%s",%s,"25-%04d","%s"\n'%(i+1,k,rm(k)[0],g(x),113+37*i,"floor" if x>=10000 else "bench")
s+=',,"Sum",%s,,\n'%g(tot); text(P("d13-weighing-list.csv"),s,"utf-8","\r\n"); expect(P("d13-weighing-list.csv"),"text",[G("Hydrating Serum",[(rm(k)[0],x,"") for k,x in l])])

# D14 stock by groups with subtotals
gr=[("Emollients",[("0030","25-0212",60),("0031","25-0188",310.5),("0033","24-0760",22),("0034","25-0101",14.5)]),("Surfactants",[("0050","25-0333",415),("0051","25-0334",180),("0052","25-0290",96)]),("Preservatives",[("0060","25-0155",18.6),("0062","24-0955",11),("0063","24-0956",7.8)])]
wb=Workbook(); ws=wb.active; ws.title="Valuation"; ws.merge_cells("A1:G1"); ws["A1"]="STOCK VALUATION - RAW MATERIALS"; ws["A1"].font=Font(bold=True,size=13); put(ws,3,1,["Code","INCI","Lot no.","Stock (g)","Unit price (£ per kg)","Value (£)","Location"],bold=True); r=4; ms=[]; sub=[]
for t,l in gr:
    put(ws,r,1,[t],bold=True,color="E7E6E6"); r+=1; r0=r
    for k,lot,q in l: x=rm(k); put(ws,r,1,["RM-"+k,x[0],lot,num(D(str(q))*1000),x[5],"=D%d/1000*E%d"%(r,r),"R%d"%(1+r%4)]); ws.cell(r,4).number_format="#,##0"; ws.cell(r,5).number_format=ws.cell(r,6).number_format="#,##0.00"; ms.append(M(x[0],"%.2f"%x[5],1000,plain(D(str(q))*1000),lot)); r+=1
    put(ws,r,2,["Subtotal",None,None,None,"=SUM(F%d:F%d)"%(r0,r-1)],bold=True); ws.cell(r,6).number_format="#,##0.00"; sub.append(r); r+=1
put(ws,r+1,2,["Grand total",None,None,None,"="+"+".join("F%d"%s for s in sub)],bold=True); ws.cell(r+1,6).number_format="#,##0.00"; widths(ws,11,32,10,11,18,11,9)
wb.save(P("d14-valuation.xlsx")); calc.append(P("d14-valuation.xlsx")); expect(P("d14-valuation.xlsx"),"calc",[],ms)
through_calc(calc)
