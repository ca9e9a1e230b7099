package stillroom.desk.batches.premix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.ledger.document.Drawer;

/** Where recipes of premixes lie, and for which plan a premix is being made. */
public record PremixDrawers(Desk desk) {
    /** For which plan a batch of premix is made, so that one finds back. */
    public record Purpose(String materialKey, String lineId, String plan) {}

    Drawer<PremixRecipe> recipes() {
        return desk.ledger().drawer("premix-recipe", PremixRecipe.class);
    }

    Drawer<Purpose> purposes() {
        return desk.ledger().drawer("premix-purpose", Purpose.class);
    }

    /** The cards of all premixes. */
    public Set<String> keys() {
        return recipes().list().stream().map(PremixRecipe::materialKey).collect(Collectors.toSet());
    }

    public Optional<PremixRecipe> ofProduct(long productId) {
        return recipes().list().stream()
                .filter(recipe -> recipe.productId() == productId)
                .findFirst();
    }

    /** The premixes that, in one step or several, dilute this raw material in that carrier. */
    public List<PremixRecipe> diluting(String materialKey, String carrierKey) {
        List<PremixRecipe> all = recipes().list();
        List<PremixRecipe> found = new ArrayList<>();
        List<String> keys = new ArrayList<>(List.of(materialKey));
        for (int i = 0; i < keys.size(); i++) {
            String key = keys.get(i);
            all.stream()
                    .filter(recipe -> recipe.concentrateKey().equals(key)
                            && recipe.carrierKey().equals(carrierKey)
                            && !keys.contains(recipe.materialKey()))
                    .forEach(recipe -> {
                        found.add(recipe);
                        keys.add(recipe.materialKey());
                    });
        }
        return List.copyOf(found);
    }
}
