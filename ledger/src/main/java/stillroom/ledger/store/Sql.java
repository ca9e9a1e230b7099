package stillroom.ledger.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Statements within one transaction. Arguments may be text, whole numbers, booleans (as 0 or 1), enum constants (as their
 * name), days (ISO text), moments (milliseconds since 1970 UTC), and {@code Optional} of these. For one thread.
 */
public final class Sql {
    private final Connection connection;

    Sql(Connection connection) {
        this.connection = connection;
    }

    public <T> List<T> list(String sql, Function<Row, T> reader, Object... arguments) {
        return asked(() -> {
            try (PreparedStatement statement = prepared(sql, arguments);
                    ResultSet result = statement.executeQuery()) {
                Row row = new Row(result);
                List<T> answer = new ArrayList<>();
                while (row.next()) {
                    answer.add(reader.apply(row));
                }
                return answer;
            }
        });
    }

    /** Shows each row of an answer that need not fit into memory. */
    public void each(String sql, Consumer<Row> reader, Object... arguments) {
        asked(() -> {
            try (PreparedStatement statement = prepared(sql, arguments);
                    ResultSet result = statement.executeQuery()) {
                Row row = new Row(result);
                while (row.next()) {
                    reader.accept(row);
                }
                return true;
            }
        });
    }

    /** The first row of the answer, if there is one. */
    public <T> Optional<T> first(String sql, Function<Row, T> reader, Object... arguments) {
        return list(sql, reader, arguments).stream().findFirst();
    }

    /** The document in column {@code body} of the first row, if there is one. */
    public Optional<String> body(String sql, Object... arguments) {
        return first(sql, row -> row.text("body"), arguments);
    }

    /** The number in column {@code n} of the only row, 0 where it is missing. */
    public long number(String sql, Object... arguments) {
        return first(sql, row -> row.integer("n"), arguments).orElse(0L);
    }

    /** Changes rows and says how many. */
    public int run(String sql, Object... arguments) {
        return asked(() -> {
            try (PreparedStatement statement = prepared(sql, arguments)) {
                return statement.executeUpdate();
            }
        });
    }

    /**
     * Begins, commits or rolls back in so many words. The driver's own way begins the next transaction right after each
     * commit, which would hold the file against every other program.
     */
    void control(String words) {
        asked(() -> {
            try (Statement statement = connection.createStatement()) {
                return statement.execute(words);
            }
        });
    }

    private PreparedStatement prepared(String sql, Object... arguments) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        try {
            for (int i = 0; i < arguments.length; i++) {
                statement.setObject(i + 1, stored(arguments[i]));
            }
            return statement;
        } catch (SQLException | RuntimeException e) {
            statement.close();
            throw e;
        }
    }

    private static @Nullable Object stored(Object argument) {
        if (argument instanceof Optional<?> optional) {
            return optional.isPresent() ? stored(optional.get()) : null;
        }
        if (argument instanceof Enum<?> constant) {
            return constant.name();
        }
        if (argument instanceof Instant moment) {
            return moment.toEpochMilli();
        }
        if (argument instanceof Boolean flag) {
            return flag ? 1 : 0;
        }
        return argument instanceof LocalDate day ? day.toString() : argument;
    }

    /** Something that asks the database. */
    interface Asking<T> {
        T ask() throws SQLException;
    }

    static <T> T asked(Asking<T> asking) {
        try {
            return asking.ask();
        } catch (SQLException e) {
            throw Trouble.sentence(e);
        }
    }
}
