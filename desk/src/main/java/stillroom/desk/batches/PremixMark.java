package stillroom.desk.batches;

/** Whether a batch is a dilution for the shelf: the log of its product's recipes says so. */
final class PremixMark {
    private PremixMark() {}

    static boolean of(BatchWork work) {
        return work.desk().ledger().drawer("premix-recipe", stillroom.formulary.plan.PremixRecipe.class).list().stream()
                .anyMatch(recipe -> recipe.productId() == work.product().id());
    }
}
