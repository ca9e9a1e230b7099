package stillroom.ledger.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.function.Function;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;

/** Exact decimals as JSON numbers written out in full; read from numbers or from texts that hold one. */
final class Decimals {
    /** Written out, 1e999999999 would fill the memory. */
    private static final int MOST_DIGITS = 100;

    private Decimals() {}

    static SimpleModule module() {
        SimpleModule module = new SimpleModule("decimals");
        add(module, Grams.class, Grams::value, Grams::new);
        add(module, Percent.class, Percent::value, Percent::new);
        add(module, Money.class, Money::value, Money::new);
        return module;
    }

    private static <T> void add(
            SimpleModule module, Class<T> type, Function<T, BigDecimal> figure, Function<BigDecimal, T> made) {
        module.addSerializer(type, new Writer<>(figure));
        module.addDeserializer(type, new Reader<>(type, made));
    }

    private static final class Writer<T> extends JsonSerializer<T> {
        private final Function<T, BigDecimal> figure;

        Writer(Function<T, BigDecimal> figure) {
            this.figure = figure;
        }

        @Override
        public void serialize(T value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeNumber(figure.apply(value));
        }
    }

    private static final class Reader<T> extends JsonDeserializer<T> {
        private final Class<T> type;
        private final Function<BigDecimal, T> made;

        Reader(Class<T> type, Function<BigDecimal, T> made) {
            this.type = type;
            this.made = made;
        }

        @Override
        public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
            try {
                BigDecimal figure = in.currentToken() == JsonToken.VALUE_STRING
                        ? new BigDecimal(in.getText().trim())
                        : in.getDecimalValue();
                if (Math.abs((long) figure.scale()) > MOST_DIGITS || figure.precision() > MOST_DIGITS) {
                    throw new IllegalArgumentException("a figure of more than " + MOST_DIGITS + " digits");
                }
                return made.apply(figure);
            } catch (IllegalArgumentException e) {
                return context.reportInputMismatch(type, "%s: %s", type.getSimpleName(), e.getMessage());
            }
        }
    }
}
