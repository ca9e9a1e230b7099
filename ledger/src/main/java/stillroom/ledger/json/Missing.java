package stillroom.ledger.json;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** What is not written is empty where the type has an empty value, 0 or false where it is a number or flag, else refused. */
final class Missing extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1;

    @Override
    public JsonSetter.Value findSetterInfo(Annotated place) {
        Class<?> type = place.getRawType();
        if (type.isPrimitive()) {
            return JsonSetter.Value.empty();
        }
        boolean hasEmpty = type == String.class
                || type == Optional.class
                || Collection.class.isAssignableFrom(type)
                || Map.class.isAssignableFrom(type);
        return JsonSetter.Value.forValueNulls(hasEmpty ? Nulls.AS_EMPTY : Nulls.FAIL);
    }
}
