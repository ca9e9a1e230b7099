package stillroom.desk.imports;

import java.util.List;

/**
 * What became of a formula or a list.
 *
 * @param what its name
 * @param path where it now stands; empty where it was not stored
 * @param reasons why it was not stored, or what is to be looked at
 */
public record Outcome(String file, String what, String path, List<String> reasons) {
    public Outcome {
        reasons = List.copyOf(reasons);
    }

    public boolean isStored() {
        return !path.isEmpty();
    }
}
