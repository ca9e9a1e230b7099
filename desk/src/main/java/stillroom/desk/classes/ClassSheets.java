package stillroom.desk.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.recipes.Recipe;
import stillroom.desk.recipes.Recipes;
import stillroom.desk.shell.Format;

/**
 * One sheet for each set, all with the same recipe. Names and allergies are asked on paper and never stored.
 *
 * @param codes of the batches; numbers of the sets before the class has begun
 * @param waiting materials that are to come as a premix which was not ready when this was printed
 */
public record ClassSheets(
        String title, String day, boolean demonstration, List<String> codes, List<String> waiting, Recipe recipe) {
    static ClassSheets of(Lesson lesson) {
        Lesson.Set set = lesson.set();
        Recipes recipes = new Recipes(
                lesson.product().name(),
                lesson.product().brief(),
                set.formula(),
                set.book(),
                Map.of(),
                lesson.desk().today());
        List<String> codes = new ArrayList<>();
        for (int i = 1; i <= lesson.of().sets(); i++) {
            codes.add("Set " + i);
        }
        for (int i = 0; i < lesson.of().batches().size(); i++) {
            codes.set(
                    i,
                    codes.get(i) + ", batch "
                            + BatchWork.of(lesson.desk(), lesson.of().batches().get(i))
                                    .batch()
                                    .code());
        }
        return new ClassSheets(
                lesson.of().title(),
                Format.day(lesson.of().day()),
                lesson.desk().ledger().settings().read().demonstration(),
                codes,
                lesson.waitingNames(),
                recipes.recipe(lesson.of().each(), lesson.of().step().value()));
    }
}
