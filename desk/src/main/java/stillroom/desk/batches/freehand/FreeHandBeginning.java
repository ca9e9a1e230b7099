package stillroom.desk.batches.freehand;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchCode;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.ledger.Ledger;

/** Opens a batch without a formula, on a product that exists or is new. */
final class FreeHandBeginning {
    private static final BatchEvent BEGUN = new BatchEvent.Begun("Weighed free hand, without a formula.");
    private static final int LONGEST_NAME = 120;

    private final Desk desk;
    private final Input input;

    FreeHandBeginning(Desk desk, Input input) {
        this.desk = desk;
        this.input = input;
    }

    /** The batch, or none where the form says why not. */
    Optional<Long> begin() {
        String code = BatchCode.read(input);
        String who = input.required("who", "The name of who weighs");
        Optional<Product> known = known();
        String name = known.map(Product::name).orElseGet(this::newName);
        if (!input.isSound()) {
            return Optional.empty();
        }
        Optional<Batch> taken = desk.ledger().batches().byCode(code);
        return taken.isPresent() ? sameAgain(taken.get(), name, code) : open(code, who, known, name);
    }

    private Optional<Product> known() {
        if (input.text("product").isEmpty()) {
            return Optional.empty();
        }
        Optional<Product> product = input.whole("product", "The product", 1, Integer.MAX_VALUE)
                .flatMap(id -> desk.ledger().products().product(id));
        if (product.isEmpty() && !input.hasProblem("product")) {
            input.refuse("product", "This product is not on file.");
        }
        return product;
    }

    private String newName() {
        String name = input.required("name", "The name of the new product");
        if (name.length() > LONGEST_NAME) {
            input.refuse("name", "A name has up to " + LONGEST_NAME + " characters.");
        }
        return name;
    }

    /** The same form sent twice begins one batch, as long as nothing was done with it since. */
    private Optional<Long> sameAgain(Batch taken, String name, String code) {
        List<LogEntry> log = desk.ledger().batches().log(taken.id());
        boolean sameProduct = desk.ledger()
                .products()
                .product(taken.productId())
                .filter(product -> product.name().equals(name))
                .isPresent();
        boolean untouched = log.size() == 1 && log.get(0).event().equals(BEGUN);
        return sameProduct && untouched ? Optional.of(taken.id()) : input.refuse("code", BatchCode.taken(code));
    }

    private Optional<Long> open(String code, String who, Optional<Product> known, String name) {
        Ledger ledger = desk.ledger();
        ProductType type =
                input.choice("type", "The kind of product", ProductType.class).orElse(ProductType.OTHER_LEAVE_ON);
        return ledger.together(() -> {
            Product product = known.orElseGet(() -> ledger.products().add(name, Brief.of(type), ""));
            Optional<Batch> batch = ledger.batches().open(product.id(), Optional.empty(), code, desk.today());
            batch.ifPresent(
                    opened -> ledger.batches().append(opened.id(), "begin-" + opened.id(), desk.now(), who, BEGUN));
            return batch.map(Batch::id);
        });
    }
}
