package stillroom.ledger.imports;

import java.util.List;
import java.util.Map;

/** Words of lists of materials in six languages (invented data; headings as they are common, no source). */
final class LaidListWords {
    /** What a column may be called. A bar parts languages: English, German, French, Spanish, Italian, Dutch. */
    private static final Map<String, String> HEADINGS = Map.ofEntries(
            Map.entry(
                    "name",
                    "Material,Ingredient,Item,Raw material,Product name|Rohstoff,Bezeichnung,Artikel,Zutat|Matière première,Désignation,Ingrédient|Materia prima,Ingrediente,Producto|Materia prima,Ingrediente,Denominazione|Grondstof,Ingrediënt,Omschrijving"),
            Map.entry(
                    "inci",
                    "INCI,INCI name|INCI,INCI-Bezeichnung|Nom INCI,INCI|Nombre INCI,INCI|Nome INCI,INCI|INCI,INCI-naam"),
            Map.entry(
                    "code",
                    "Code,Item no.,RM code,SKU|Art.-Nr.,Artikelnummer|Réf.,Code article|Código,Ref.|Codice,Rif.|Code,Artikelnr."),
            Map.entry(
                    "stock",
                    "Stock,In stock,On hand,Left,Have left,Quantity in stock,Remaining|Bestand,Restmenge,Vorrat,Lagerbestand,Auf Lager,Rest|Stock,En stock,Reste,Quantité en stock,Stock restant|Existencias,Stock,En stock,Queda|Giacenza,Scorta,Rimanenza,Disponibile|Voorraad,In voorraad,Resterend"),
            Map.entry(
                    "price",
                    "Price,Cost,Net price,Unit cost|Preis,EK,Einkaufspreis,Preis netto|Prix,Prix HT,Coût,Tarif|Precio,Coste|Prezzo,Costo|Prijs,Inkoopprijs"),
            Map.entry(
                    "paid",
                    "Pack price,Price per pack,Paid,Cost of pack|Gebindepreis,Preis pro Gebinde,Bezahlt,EK|Prix du conditionnement,Prix HT,Payé|Precio envase,Precio por envase,Pagado|Prezzo confezione,Pagato|Prijs per verpakking,Betaald"),
            Map.entry(
                    "pack",
                    "Pack,Pack size,Size,Container|Gebinde,Packung,Gebindegröße,Packungsgröße|Conditionnement,Contenance|Envase,Formato|Confezione,Formato|Verpakking,Inhoud"),
            Map.entry("per", "per,/|je,pro,/|au,par,/|por,/,el|al,per,/|per,/"),
            Map.entry(
                    "value",
                    "Value,Stock value,Total value|Wert,Lagerwert,Bestandswert|Valeur,Valeur du stock|Valor,Valor total|Valore,Valore totale|Waarde,Voorraadwaarde"),
            Map.entry(
                    "lot",
                    "Lot,Lot no.,Batch no.,Batch|Charge,Chargennummer,Ch.-Nr.,Charge Nr.|N° de lot,Lot,Numéro de lot|Lote,N.º de lote|Lotto,N. lotto|Partijnummer,Lotnummer,Charge"),
            Map.entry(
                    "best",
                    "Best before,Expiry,BBE,Use by,Retest|MHD,Haltbar bis,Verfall|DLUO,DDM,À utiliser avant (péremption)|Caducidad,Fecha de caducidad|Scadenza,Data di scadenza|THT,Houdbaar tot"),
            Map.entry(
                    "supplier",
                    "Supplier,Bought from,Vendor,Source|Lieferant,Bezugsquelle,Hersteller|Fournisseur|Proveedor|Fornitore|Leverancier"),
            Map.entry(
                    "level",
                    "Reorder level,Minimum,Min. stock,Reorder at|Meldebestand,Mindestbestand,Mindestmenge|Seuil d'alerte,Stock mini|Stock mínimo,Punto de pedido|Scorta minima,Riordino|Bestelpunt,Minimale voorraad"),
            Map.entry("place", "Location,Shelf,Status|Lagerort,Regal,Status|Emplacement|Ubicación|Ubicazione|Locatie"),
            Map.entry("unit", "Unit,UoM|Einheit,ME|Unité|Unidad|Unità,UM|Eenheid"),
            Map.entry(
                    "received",
                    "Received,Date received|Wareneingang,Gekauft am|Reçu le,Date d'achat|Fecha de compra|Data di acquisto|Ontvangen,Aankoopdatum"),
            Map.entry(
                    "title",
                    "Stock list,Raw materials,What we have,Inventory 2025|Lagerliste,Rohstoffe,Inventur|Inventaire,Matières premières|Inventario,Materias primas|Inventario,Materie prime|Voorraadlijst,Grondstoffen"),
            Map.entry(
                    "kinds",
                    "Oils,Actives,Powders|Öle,Wirkstoffe,Pulver|Huiles,Actifs,Poudres|Aceites,Activos,Polvos|Oli,Attivi,Polveri|Oliën,Actieve stoffen,Poeders"),
            Map.entry("total", "Total,Grand total|Summe,Gesamt|Total,TOTAL|Total,Suma|Totale|Totaal"),
            Map.entry(
                    "note",
                    "Checked every quarter|Bitte nach Entnahme austragen|Mis à jour le lundi|Revisado cada mes|Aggiornato ogni mese|Elke maand nagekeken"));

    static final List<List<String>> MATERIALS = List.of(
            List.of("Almond oil", "Prunus Amygdalus Dulcis Oil"),
            List.of("Shea butter, refined", "Butyrospermum Parkii Butter"),
            List.of("Glycerin 99.5 %", "Glycerin"),
            List.of("Xanthan gum", "Xanthan Gum"),
            List.of("Cetyl alcohol", "Cetyl Alcohol"),
            List.of("Kaolin", "Kaolin"),
            List.of("Panthenol 75 %", "Panthenol"),
            List.of("Zinc oxide", "Zinc Oxide"),
            List.of("Lavender oil", "Lavandula Angustifolia Oil"),
            List.of("Beeswax", "Cera Alba"),
            List.of("Lactic acid 80 %", "Lactic Acid"),
            List.of("Sodium benzoate", "Sodium Benzoate"),
            List.of("Betaine", "Betaine"),
            List.of("Vitamin E", "Tocopherol"));

    private LaidListWords() {}

    /** All that a column may be called in a language. */
    static List<String> of(String column, int language) {
        return List.of(HEADINGS.get(column).split("\\|")[language].split(","));
    }
}
