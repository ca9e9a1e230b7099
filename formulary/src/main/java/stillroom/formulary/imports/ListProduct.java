package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * A relation between three columns of a list that should hold row by row: one times another, over so much, makes the third.
 *
 * @param held rows in which it does
 * @param broken rows in which all three stand and it does not
 */
record ListProduct(List<Integer> held, List<Integer> broken) {
    private static final BigDecimal CENT = new BigDecimal("0.011");
    private static final BigDecimal PART = new BigDecimal("0.006");

    /** @param factors what is multiplied; @param product what it should make */
    static ListProduct of(
            ListTable table,
            IntFunction<Optional<BigDecimal>> one,
            IntFunction<Optional<BigDecimal>> other,
            IntFunction<Optional<BigDecimal>> over,
            IntFunction<Optional<BigDecimal>> product) {
        List<Integer> held = new ArrayList<>();
        List<Integer> broken = new ArrayList<>();
        table.rows().forEach(row -> {
            Optional<BigDecimal> a = one.apply(row);
            Optional<BigDecimal> b = other.apply(row);
            Optional<BigDecimal> c = over.apply(row).filter(value -> value.signum() > 0);
            Optional<BigDecimal> is = product.apply(row);
            if (a.isPresent() && b.isPresent() && c.isPresent() && is.isPresent()) {
                BigDecimal should = a.get().multiply(b.get()).divide(c.get(), MathContext.DECIMAL64);
                boolean near = should.subtract(is.get())
                                .abs()
                                .compareTo(CENT.add(should.abs().multiply(PART)))
                        <= 0;
                boolean says = should.signum() > 0 || is.get().signum() > 0;
                if (says) {
                    (near ? held : broken).add(row);
                }
            }
        });
        return new ListProduct(held, broken);
    }

    /** Two rows or more, and at least four of five. */
    boolean holds() {
        return held.size() >= 2 && held.size() >= 4 * broken.size();
    }
}
