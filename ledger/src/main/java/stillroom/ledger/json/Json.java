package stillroom.ledger.json;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent;

/**
 * The written form of every record: equal records are equal texts. Documented in {@code docs/file-format.md}. Thread-safe.
 */
public final class Json {
    private Json() {}

    /** Built when first needed: it costs a tenth of a second, which opening a ledger should not. */
    private static final class Lazy {
        static final ObjectMapper MAPPER = mapper();
        /** Trees in which every digit of a decimal stays. */
        static final ObjectReader EXACT = MAPPER.reader()
                .with(JsonNodeFactory.withExactBigDecimals(true))
                .with(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .without(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES);
    }

    /** One line, as stored and hashed. */
    public static String write(Object value) {
        try {
            return Lazy.MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("cannot be written as JSON: " + e.getOriginalMessage(), e);
        }
    }

    /**
     * As {@link #write}, over what stood there before: fields of a newer version that this one does not know stay in the text.
     *
     * @param before what was stored under the same key, if anything
     */
    public static String writeOver(Optional<String> before, Object value) {
        String now = write(value);
        if (before.isEmpty()) {
            return now;
        }
        try {
            String known = write(read(before.get(), value.getClass()));
            if (known.equals(before.get())) {
                return now;
            }
            JsonNode tree = Lazy.EXACT.readTree(now);
            NewerFields.carry(Lazy.EXACT.readTree(before.get()), Lazy.EXACT.readTree(known), tree);
            return Lazy.MAPPER.writeValueAsString(tree);
        } catch (UnreadableJson | JsonProcessingException cannotBeRead) {
            return now;
        }
    }

    /** Indented, one figure a line, for files that people read and compare. */
    public static String writeIndented(Object value) {
        try {
            return Lazy.MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(value) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("cannot be written as JSON: " + e.getOriginalMessage(), e);
        }
    }

    /**
     * Reads what {@link #write} or a person wrote. What is missing is empty where that makes sense; fields of a newer version are passed over.
     *
     * @throws UnreadableJson with one sentence that names the place
     */
    public static <T> T read(String text, Class<T> type) {
        try {
            T value = Lazy.MAPPER.readValue(text, type);
            if (value == null) {
                throw new UnreadableJson("The text holds nothing.", null);
            }
            return value;
        } catch (JsonProcessingException e) {
            throw UnreadableJson.from(e);
        }
    }

    /** The written form of a record without some of its fields; text that is no record comes back as it is. */
    public static String without(String text, Set<String> fields) {
        try {
            JsonNode tree = Lazy.MAPPER.readTree(text);
            if (tree instanceof ObjectNode record) {
                record.remove(fields);
            }
            return Lazy.MAPPER.writeValueAsString(tree);
        } catch (JsonProcessingException noRecord) {
            return text;
        }
    }

    /** The word for this kind of event in documents. */
    public static String kind(BatchEvent event) {
        return Kinds.of(event.getClass());
    }

    private static ObjectMapper mapper() {
        JsonMapper.Builder builder = JsonMapper.builder()
                .addModule(new Jdk8Module())
                .addModule(new JavaTimeModule())
                .addModule(Decimals.module())
                .addModule(new SimpleModule("sets").addSerializer(setClass(), new SortedSets()))
                .annotationIntrospector(new Missing())
                .visibility(PropertyAccessor.FIELD, Visibility.ANY)
                .visibility(PropertyAccessor.GETTER, Visibility.NONE)
                .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
                .defaultPropertyInclusion(
                        JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS))
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .addMixIn(BatchEvent.ReadingTaken.class, Shapes.ReadingTaken.class);
        for (Class<?> set : Kinds.SETS) {
            builder.addMixIn(set, Shapes.Kinded.class);
            for (Class<?> shape : set.getPermittedSubclasses()) {
                builder.registerSubtypes(new NamedType(shape, Kinds.of(shape)));
            }
        }
        return builder.build();
    }

    @SuppressWarnings("unchecked")
    private static Class<Set<?>> setClass() {
        return (Class<Set<?>>) (Class<?>) Set.class;
    }
}
