package stillroom.desk.start;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** The starter library, read when it is first asked for. */
final class Starter {
    static final Supplier<MaterialBook> LIBRARY = () -> new MaterialBook() {
        @Override
        public Optional<Material> material(String key) {
            return Optional.empty();
        }

        @Override
        public Optional<Substance> substance(String key) {
            return Optional.empty();
        }

        @Override
        public List<Material> materials() {
            return List.of();
        }

        @Override
        public List<Substance> substances() {
            return List.of();
        }
    };

    private Starter() {}
}
