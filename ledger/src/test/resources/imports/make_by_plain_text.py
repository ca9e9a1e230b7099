from sheet_kit import *
O=HERE + "/by-plain-text/"
def flat(R): return [(n,a,p) for p,rows in R for n,a in rows]
# 1 tabs, PHASE headings with heat
p=O+"day cream.txt"
R=[("A","PHASE A (heat to 75C)",[("Distilled water","66.2"),("Glycerin","4.0"),("Allantoin","0.2")]),("B","PHASE B (heat to 75C)",[("Apricot kernel oil","12.0"),("Shea butter","5.0"),("Glyceryl stearate SE","5.5"),("Cetyl alcohol","2.5")]),("C","PHASE C (below 40C)",[("Panthenol","2.0"),("Niacinamide","1.5"),("Phenoxyethanol and ethylhexylglycerin","0.9"),("Rose fragrance","0.2")])]
s="Everyday Day Cream\n\nMakes about 1 jar of 100 g\n\n"
for ph,h,rows in R: s+=h+"\n"+"".join(f"{n}\t{a}%\n" for n,a in rows)+"\n"
s+="Total\t100.0%\n\nMethod\nPour A into B, blend for two minutes, stir until cool, then add C.\n"
text(p,s,nl="\r\n"); expect(p,"text",[F("Everyday Day Cream",[(n,a,ph) for ph,h,rows in R for n,a in rows])])
# 2 aligned blanks
p=O+"lip balm.txt"
R=[("Beeswax","21.00"),("Candelilla wax","3.50"),("Cocoa butter","15.00"),("Castor oil","28.00"),("Sweet almond oil","24.50"),("Lanolin","7.00"),("Vitamin E","0.50"),("Peppermint oil","0.50")]
s="PEPPERMINT LIP BALM\n-------------------\n\n"+f"{'Ingredient':<28}{'%':>8}\n"+"".join(f"{n:<28}{a:>8}\n" for n,a in R)+" "*28+"  ------\n"+f"{'Total':<28}{'100.00':>8}\n\nMelt waxes first. Pour at about 68C.\n"
text(p,s); expect(p,"text",[F("PEPPERMINT LIP BALM",[(n,a,"") for n,a in R])])
# 3 semicolons, phase column, q.s.
p=O+"cleansing gel.csv"
R=[("A","Water","q.s. to 100","rest"),("A","Glycerin","3.0","3"),("A","Xanthan gum","0.8","0.8"),("B","Decyl glucoside","14.0","14"),("B","Cocamidopropyl betaine","7.5","7.5"),("C","Chamomile extract","1.0","1"),("C","Sodium benzoate","0.4","0.4"),("C","Potassium sorbate","0.2","0.2"),("C","Lactic acid 80%","q.s. to pH 5","ph")]
s="Gentle cleansing gel;;\nPhase;Ingredient;% w/w\n"+"".join(f"{f};{n};{t}\n" for f,n,t,a in R)+";Total;100\n;;\nGel goes cloudy in the fridge, that is normal.;;\n"
text(p,s); expect(p,"text",[F("Gentle cleansing gel",[(n,a,f) for f,n,t,a in R])])
# 4 numbered list, amount behind
p=O+"Face oil.txt"
R=[("Jojoba oil","40"),("Rosehip oil","18"),("Hemp seed oil","12"),("Squalane","25.2"),("Sea buckthorn oil","3"),("Vitamin E (mixed tocopherols)","1"),("Frankincense essential oil","0.5"),("Neroli essential oil","0.3")]
s="Face Oil no. 4\n\n"+"".join(f"{i}. {n} {a}%\n" for i,(n,a) in enumerate(R,1))+"\nMix cold. Decant in 30 ml droppers.\nKeep away from light – rosehip turns quickly.\n"
text(p,s,"cp1252","\r\n"); expect(p,"text",[F("Face Oil no. 4",[(n,a,"") for n,a in R])])
# 5 amounts before the name, grams
p=O+"whipped body butter.txt"
R=[("120 g","Shea butter"),("60 g","Mango butter"),("40 g","Coconut oil"),("55 g","Sunflower oil"),("15 g","Arrowroot powder"),("2.5 g","Vitamin E"),("2.5 g","Vanilla fragrance oil")]
s="Whipped body butter\n\nYou need:\n"+"".join(f"{a} {n}\n" for a,n in R)+"\n(295 g, fills three 100 ml jars when whipped)\n\nMelt butters, chill 40 minutes, whip.\n"
text(p,s); expect(p,"text",[G("Whipped body butter",[(n,a.split()[0],"") for a,n in R])])
# 6 notes app export: one note per row, body in one cell
p=O+"notes-export.csv"
R1=[("Phase A",[("Water","82.3"),("Behentrimonium methosulfate and cetearyl alcohol","6")]),("Phase B",[("Cetyl alcohol","4"),("Coconut oil","3"),("Broccoli seed oil","2")]),("Phase C",[("Hydrolysed oat protein","1.5"),("Preservative","0.8"),("Fragrance","0.4")])]
R2=[("Rose water","45"),("Witch hazel water","30"),("Water","20.7"),("Glycerin","2.5"),("Sodium PCA","1"),("Preservative","0.8")]
b1="".join("\n"+h+"\n"+"".join(f"{n} - {a}%\n" for n,a in rows) for h,rows in R1).strip()+"\n\npH 4.5, checked with strips"
b2="".join(f"{n} - {a}%\n" for n,a in R2).strip()
s='"Title","Content","Folder","Modified"\n'+f'"Rinse-out conditioner","{b1}","Hair","2024-02-11"\n"Rose mist","{b2}","Face","2024-02-19"\n'
text(p,s,"utf-8-sig"); expect(p,"text",[F("Rinse-out conditioner",[(n,a,h[6:]) for h,rows in R1 for n,a in rows]),F("Rose mist",[(n,a,"") for n,a in R2])])
# 7 notes app table export
p=O+"Hydrating toner.csv"
R=[("Water","88.45%","Water","boil first, let cool"),("Glycerin","4.00%","Water",""),("Aloe vera juice","5.00%","Water","10x, diluted"),("Hyaluronic acid, low weight","0.25%","Water","sprinkle, wait"),("Panthenol","1.00%","Actives",""),("Sodium lactate","0.50%","Actives",""),("Gluconolactone, sodium benzoate","0.80%","Actives","preservative")]
s='Ingredient,Amount,Phase,Notes,Bought\n'+"".join(f'{chr(34)+n+chr(34) if "," in n else n},{a},{f},{chr(34)+o+chr(34) if "," in o else o},{"Yes" if i%3 else "No"}\n' for i,(n,a,f,o) in enumerate(R,1))
text(p,s,"utf-8-sig"); expect(p,"text",[F("Hydrating toner",[(n,a[:-1],f) for n,a,f,o in R])])
# 8 dashes, grams, total
p=O+"bath salts.txt"
R=[("Epsom salt","600"),("Sea salt, coarse","250"),("Bicarbonate of soda","120"),("Sweet almond oil","12"),("Colloidal oatmeal","10"),("Lavender buds","5"),("Lavender essential oil","3")]
s="Lavender bath salts (4 jars of 250 g)\n\n"+"".join(f"{n} – {a} g\n" for n,a in R)+"\nTotal – 1000 g\n\nOil and essential oil together first, then over the salt.\n"
text(p,s,"cp1252","\r\n"); expect(p,"text",[G("Lavender bath salts (4 jars of 250 g)",[(n,a,"") for n,a in R])])
# 9 bullets, phases as plain headings with colon
p=O+"cream deodorant.txt"
R=[("Melt",[("Coconut oil","24"),("Shea butter","20"),("Beeswax","6"),("Caprylic/capric triglyceride","9")]),("Stir in",[("Arrowroot powder","22.5"),("Zinc oxide","8"),("Bicarbonate of soda","7"),("Magnesium hydroxide","2")]),("When cooling",[("Vitamin E","0.5"),("Tea tree oil","0.6"),("Bergamot oil, FCF","0.4")])]
s="Cream Deodorant\n\n"
for h,rows in R: s+=h+":\n"+"".join(f"• {n}, {a}%\n" for n,a in rows)
s+="\nLeave overnight before capping.\n"
text(p,s); expect(p,"text",[F("Cream Deodorant",[(n,a,h) for h,rows in R for n,a in rows])])
# 10 markdown tables, two formulas
p=O+"hand lotion.txt"
A=[("A","Aqua","70.5"),("A","Glycerin","5"),("A","Xanthan Gum","0.3"),("B","Caprylic/Capric Triglyceride","9"),("B","Cetearyl Olivate, Sorbitan Olivate","5"),("B","Butyrospermum Parkii Butter","5"),("B","Cetyl Alcohol","2"),("C","Tocopheryl Acetate","1"),("C","Urea","1.2"),("C","Benzyl Alcohol, Dehydroacetic Acid","1")]
B=[("A","Aqua","79.8"),("A","Glycerin","4"),("A","Xanthan Gum","0.4"),("B","Caprylic/Capric Triglyceride","8"),("B","Cetearyl Olivate, Sorbitan Olivate","4"),("B","Isoamyl Laurate","2.3"),("C","Tocopheryl Acetate","0.5"),("C","Benzyl Alcohol, Dehydroacetic Acid","1")]
def md(t,R): return f"# {t}\n\n| Phase | INCI | % |\n|-------|------|---|\n"+"".join(f"| {f} | {n} | {a} |\n" for f,n,a in R)+"| | **Total** | **100** |\n\n"
text(p,md("Hand lotion, rich",A)+"Nice in winter.\n\n"+md("Hand lotion, light",B)); expect(p,"text",[F(t,[(n,a,f) for f,n,a in R]) for t,R in (("Hand lotion, rich",A),("Hand lotion, light",B))])
# 11 xlsx, pasted: whole lines in column A
p=O+"body lotion pasted.xlsx"; wb=Workbook(); ws=wb.active; ws.title="Sheet1"
R=[("Phase A: (70C)","A",[("Water","72.7"),("Glycerin","3")]),("Phase B: (70C)","B",[("Sunflower oil","9"),("Isopropyl myristate","4"),("Emulsifying wax","6"),("Stearic acid","1.5")]),("Phase C: (cool)","C",[("Oat extract","2.5"),("Preservative","1"),("Cotton fragrance","0.3")])]
r=1; ws.cell(r,1,"Oat Body Lotion").font=Font(bold=True); r+=2; ex=[]
for h,ph,rows in R:
    ws.cell(r,1,h); r+=1
    for n,a in rows: ws.cell(r,1,f"{n} {a}%"); ex.append((n,a,ph)); r+=1
    r+=1
ws.cell(r,1,"Total 100%"); ws.cell(r+2,1,"Stir C in slowly, it thickens overnight."); wb.save(p); expect(p,"openpyxl",[F("Oat Body Lotion",ex)])
# 12 dotted leaders, a few drops, INCI in brackets
p=O+"shampoo bar.txt"
R=[("Sodium cocoyl isethionate","46.0"),("Sodium coco sulfate","18.0"),("Cocamidopropyl betaine","9.0"),("Stearic acid","8.0"),("Cetyl alcohol","6.0"),("Cocoa butter","5.0"),("Kaolin (white clay)","4.0"),("Panthenol","2.0"),("Preservative","1.0"),("Citric acid","1.0"),("Rosemary essential oil","a few drops")]
s="Shampoo bar, “Green Garden”\n\n"+"".join(f"{n} {'.'*(44-len(n)-len(a))} {a}\n" for n,a in R)+f"TOTAL {'.'*34} 100.0\n\nAll in per cent. Press 60 g into each mould.\n"
text(p,s,"cp1252","\r\n"); expect(p,"text",[F("Shampoo bar, “Green Garden”",[(n,a if a[0].isdigit() else "unknown","") for n,a in R])])
