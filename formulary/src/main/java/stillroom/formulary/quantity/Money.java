package stillroom.formulary.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** An amount in the workshop's one currency, exact; rounded to cents only where it is shown. */
public record Money(BigDecimal value) implements Comparable<Money> {
    public static final Money ZERO = new Money(BigDecimal.ZERO);

    public Money {
        value = Exact.normal(value);
    }

    public static Money of(String figure) {
        return new Money(new BigDecimal(figure));
    }

    public Money plus(Money other) {
        return new Money(value.add(other.value));
    }

    /** As shown: two decimals, half even. */
    public String shown() {
        return value.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    @Override
    public int compareTo(Money other) {
        return value.compareTo(other.value);
    }
}
