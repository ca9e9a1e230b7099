package stillroom.desk.reformulation;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The last few searches by their address, so that a page that is loaded again finds its own. Thread-safe. */
final class Searches {
    private static final int MOST = 8;

    private final Map<String, Searching> byAddress = new LinkedHashMap<>();
    private final ReformulationRoutes.Beginning beginning;

    Searches(ReformulationRoutes.Beginning beginning) {
        this.beginning = beginning;
    }

    ReformulationRoutes.Beginning beginning() {
        return beginning;
    }

    /** The search of this address, begun where there is none. */
    synchronized Searching at(String address, Supplier<Searching> begin) {
        Searching there = byAddress.get(address);
        if (there == null) {
            there = begin.get();
            byAddress.put(address, there);
            if (byAddress.size() > MOST) {
                String oldest = byAddress.keySet().iterator().next();
                Optional.ofNullable(byAddress.remove(oldest)).ifPresent(Searching::stop);
            }
        }
        return there;
    }

    synchronized void stop(String address) {
        Optional.ofNullable(byAddress.get(address)).ifPresent(Searching::stop);
    }
}
