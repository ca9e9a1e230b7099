package stillroom.ledger.export;

import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/** What materials are called; by their key where no card stands for it. */
record CardNames(MaterialBook book) {
    String of(String materialKey) {
        return book.material(materialKey).map(Material::name).orElse(materialKey);
    }
}
