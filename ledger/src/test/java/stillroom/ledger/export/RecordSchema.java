package stillroom.ledger.export;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;

/** The JSON Schema of the written form of records, derived from their components. Fields of a newer version are allowed. */
final class RecordSchema {
    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    ObjectNode reference(Class<?> record) {
        String name = name(record);
        if (!definitions.containsKey(name)) {
            ObjectNode schema = JsonNodeFactory.instance.objectNode();
            definitions.put(name, schema);
            if (record.isSealed()) {
                var any = schema.putArray("anyOf");
                for (Class<?> shape : record.getPermittedSubclasses()) {
                    any.add(reference(shape));
                }
            } else {
                describe(record, schema);
            }
        }
        return JsonNodeFactory.instance.objectNode().put("$ref", "#/$defs/" + name);
    }

    Map<String, ObjectNode> definitions() {
        return definitions;
    }

    private static String name(Class<?> type) {
        return type.getEnclosingClass() == null
                ? type.getSimpleName()
                : name(type.getEnclosingClass()) + "." + type.getSimpleName();
    }

    private void describe(Class<?> record, ObjectNode schema) {
        schema.put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        for (RecordComponent part : record.getRecordComponents()) {
            boolean isKind =
                    record == BatchEvent.ReadingTaken.class && part.getName().equals("kind");
            properties.set(isKind ? "reading" : part.getName(), of(part.getGenericType()));
        }
        if (!properties.has("kind") && inAClosedSet(record)) {
            properties.putObject("kind").put("type", "string");
        }
    }

    private static boolean inAClosedSet(Class<?> record) {
        for (Class<?> set : record.getInterfaces()) {
            if (set.isSealed()) {
                return true;
            }
        }
        return false;
    }

    private ObjectNode of(Type type) {
        if (type instanceof ParameterizedType generic) {
            return container(generic);
        }
        Class<?> plain = (Class<?>) type;
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        if (plain == String.class) {
            return schema.put("type", "string");
        }
        if (plain == boolean.class || plain == Boolean.class) {
            return schema.put("type", "boolean");
        }
        if (plain == int.class || plain == Integer.class || plain == long.class || plain == Long.class) {
            return schema.put("type", "integer");
        }
        if (plain == double.class
                || plain == Double.class
                || plain == BigDecimal.class
                || plain == Grams.class
                || plain == Percent.class
                || plain == Money.class) {
            return schema.put("type", "number");
        }
        if (plain == LocalDate.class) {
            return schema.put("type", "string").put("format", "date");
        }
        if (plain == Instant.class) {
            return schema.put("type", "string").put("format", "date-time");
        }
        if (plain.isEnum()) {
            var words = schema.putArray("enum");
            for (Object constant : plain.getEnumConstants()) {
                words.add(((Enum<?>) constant).name());
            }
            return schema;
        }
        return reference(plain);
    }

    private ObjectNode container(ParameterizedType generic) {
        Class<?> raw = (Class<?>) generic.getRawType();
        Type[] of = generic.getActualTypeArguments();
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        if (raw == Optional.class) {
            return of(of[0]);
        }
        if (Collection.class.isAssignableFrom(raw)) {
            schema.put("type", "array").set("items", of(of[0]));
            return schema;
        }
        schema.put("type", "object").set("additionalProperties", of(of[1]));
        return schema;
    }
}
