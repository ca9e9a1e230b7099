package stillroom.ledger.store;

import java.nio.file.Path;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings a file to this program's schema. Flyway is loaded only where there is something to bring. */
final class Migrations {
    /** Number of the newest migration in {@code resources/migrations}. */
    static final int LATEST = 10;

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
        long version = sql.number("select max(cast(version as integer)) as n from flyway_schema_history where success");
        return version == LATEST ? Standing.CURRENT : version < LATEST ? Standing.OLDER : Standing.NEWER;
    }

    static void run(Path file) {
        try {
            Flyway.configure(Migrations.class.getClassLoader())
                    .dataSource(Connections.url(file), null, null)
                    .locations("classpath:migrations/shared", "classpath:migrations/sqlite")
                    .placeholders(Map.of("strict", "strict", "int64", "integer"))
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new LedgerException("The data file could not be brought up to this version of the program.", e);
        }
    }
}
