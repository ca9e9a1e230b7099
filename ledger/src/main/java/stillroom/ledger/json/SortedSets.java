package stillroom.ledger.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import java.util.List;
import java.util.Set;

/** Sets in ascending order: an immutable set of Java keeps none, and equal records must be equal texts. */
final class SortedSets extends JsonSerializer<Set<?>> {
    @Override
    public void serialize(Set<?> set, JsonGenerator out, SerializerProvider provider) throws IOException {
        List<?> sorted = set.stream().sorted().toList();
        out.writeStartArray();
        for (Object element : sorted) {
            provider.defaultSerializeValue(element, out);
        }
        out.writeEndArray();
    }

    @Override
    public boolean isEmpty(SerializerProvider provider, Set<?> set) {
        return set.isEmpty();
    }
}
