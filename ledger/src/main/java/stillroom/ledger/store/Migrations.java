package stillroom.ledger.store;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings a file to this program's schema. Flyway is loaded only where there is something to bring. */
final class Migrations {
    /** Numbers of the migrations in {@code resources/migrations}; they may have come out of order. */
    static final Set<Long> KNOWN = Set.of(1L, 2L, 3L, 4L, 7L, 10L);

    private Migrations() {}

    /** How a file stands to this program. */
    enum Standing {
        EMPTY,
        OLDER,
        CURRENT,
        NEWER,
        FOREIGN
    }

    /** Reads the schema version without changing anything. */
    static Standing standing(Sql sql) {
        if (sql.number("select count(*) as n from sqlite_master") == 0) {
            return Standing.EMPTY;
        }
        if (sql.number("select count(*) as n from sqlite_master where name = 'flyway_schema_history'") == 0) {
            return Standing.FOREIGN;
        }
        Set<Long> applied = Set.copyOf(sql.list(
                "select cast(version as integer) as n from flyway_schema_history where success and version is not null",
                row -> row.integer("n")));
        if (!KNOWN.containsAll(applied)) {
            return Standing.NEWER;
        }
        return applied.containsAll(KNOWN) ? Standing.CURRENT : Standing.OLDER;
    }

    static void run(Path file) {
        try {
            Flyway.configure(Migrations.class.getClassLoader())
                    .dataSource(Connections.url(file), null, null)
                    .locations("classpath:migrations/shared", "classpath:migrations/sqlite")
                    .placeholders(Map.of("strict", "strict", "int64", "integer"))
                    .outOfOrder(true)
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new LedgerException("The data file could not be brought up to this version of the program.", e);
        }
    }
}
