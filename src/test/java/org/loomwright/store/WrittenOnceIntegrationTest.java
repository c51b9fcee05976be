package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.config.DatabaseAccess;
import org.loomwright.config.DatabaseAccess.Login;
import org.loomwright.testing.PostgresForTests;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;

/** What a work order pins cannot be changed: not by the application's role at all, and not by plain SQL of the owner. */
class WrittenOnceIntegrationTest {

    private static final String NO_RIGHT = "42501";
    private static final String WRITTEN_ONCE = "23001";
    private static final String DISAGREES = "23000";

    private static final DatabaseAccess DATABASE = PostgresForTests.freshDatabase();

    /** Each pinned table with one of its columns. */
    private static final List<String> PINNED =
            List.of(
                    "loom_content/name",
                    "vehicle_remark/remark",
                    "custom_colour/name",
                    "node/name",
                    "segment/length_um",
                    "segment_tracer/yarn",
                    "segment_reading/length_um",
                    "opening/name",
                    "device/load_ma",
                    "device_point/tail_um",
                    "device_fuse/marked_ma",
                    "wire/body",
                    "end_to_end_check/measured_um",
                    "revision/document",
                    "work_order/customer",
                    "work_order/revision_hash",
                    "work_order_event/to_status");

    private static final List<String> CONTENT =
            List.of(
                    """
                    insert into loom_content (
                        content_hash, format_version, name, datum,
                        vehicle_name, vehicle_year, hand, earth, system_voltage_mv)
                    values (repeat('a', 64), 1, 'loom', 'N1', 'Averley', 1950, 'right', 'positive', 12000)
                    """,
                    "insert into vehicle_remark values (1, 0, 'remark')",
                    "insert into custom_colour values (1, 'XD', 'gold', '#c9a227')",
                    "insert into node values (1, 'N1', 'one'), (1, 'N2', 'two')",
                    """
                    insert into segment values (
                        1, 'S1', 'N1', 'N2', 5, null, null, 0, 'tape', null, null, 0, 'assumed', '')
                    """,
                    "insert into segment_tracer values (1, 'S1', 0, 'R')",
                    "insert into segment_reading values (1, 'S1', 0, 5)",
                    "insert into opening values (1, 'O1', 'S1', 'hole', 'hole', 1, 1, 'opens')",
                    "insert into device values (1, 'D1', 'lamp', 'lamp', 5)",
                    "insert into device_point values (1, 'D1', '1', 'N1', 0), (1, 'D1', '2', 'N2',"
                            + " 0)",
                    "insert into device_fuse values (1, 'D1', '1', '2', 'blade', 15000)",
                    """
                    insert into wire values (
                        1, 'W1', 'side', 'R', null, '9/0.30', 'D1', '1', 't', 'D1', '2', 't', 'good')
                    """,
                    "insert into end_to_end_check values (1, 'C1', 'N1', 'N2', 5)");

    private static final List<String> ORDER =
            List.of(
                    """
                    insert into specification values (
                        '00000000-0000-0000-0000-000000000001', 'title', 1, null, '[]', '{}', 1, now(), now(), '[]')
                    """,
                    """
                    insert into revision values (
                        repeat('b', 64), '00000000-0000-0000-0000-000000000001', 1, 1, 1, '{}', now(), 'me')
                    """,
                    """
                    insert into work_order values (
                        '00000000-0000-0000-0000-000000000002', 'WO-2026-0001', repeat('b', 64),
                        'customer', 'workshop', null, '', 'enquiry', 1, now())
                    """,
                    """
                    insert into work_order_event values (
                        '00000000-0000-0000-0000-000000000002', 1, null, 'enquiry', 'me', '', now())
                    """);

    private static final List<String> PARTS_FOR_OLD_CONTENT =
            List.of(
                    "insert into vehicle_remark values (1, 9, 'late')",
                    "insert into custom_colour values (1, 'T', 'tan', '#c8a06a')",
                    "insert into node values (1, 'N9', 'late')",
                    """
                    insert into segment values (
                        1, 'S9', 'N2', 'N1', 5, null, null, 0, 'tape', null, null, 0, 'assumed', '')
                    """,
                    "insert into segment_tracer values (1, 'S1', 9, 'R')",
                    "insert into segment_reading values (1, 'S1', 9, 5)",
                    "insert into opening values (1, 'O9', 'S1', 'late', 'hole', 1, 1, 'opens')",
                    "insert into device values (1, 'D9', 'late', 'lamp', 5)",
                    "insert into device_point values (1, 'D1', '9', 'N1', 0)",
                    "insert into device_fuse values (1, 'D1', '2', '1', 'blade', 15000)",
                    """
                    insert into wire values (
                        1, 'W9', 'late', 'R', null, '9/0.30', 'D1', '1', 't', 'D1', '2', 't', 'good')
                    """,
                    "insert into end_to_end_check values (1, 'C9', 'N1', 'N2', 5)");

    private static final List<String> BEYOND_THE_APPLICATION =
            List.of(
                    "set role test_owner",
                    "set session authorization test_owner",
                    "set session_replication_role = replica",
                    "create table another (a int)",
                    "create temporary table wire (a int)",
                    "create schema another",
                    "drop function refuse_change() cascade",
                    "alter function refuse_change() owner to test_app",
                    "drop trigger written_once on wire",
                    "alter function refuse_change() set search_path = pg_temp",
                    """
                    create or replace function refuse_change() returns trigger
                    language plpgsql as $$ begin return null; end $$
                    """,
                    "insert into work_order_status values ('lost')",
                    "delete from loom",
                    "delete from specification",
                    "delete from work_order_counter",
                    "delete from idempotency_key",
                    "select * from flyway_schema_history");

    @BeforeAll
    static void pinOneLoom() throws SQLException {
        try (Connection connection = connect(DATABASE.app())) {
            connection.setAutoCommit(false);
            for (String step : Stream.concat(CONTENT.stream(), ORDER.stream()).toList()) {
                execute(connection, step);
            }
            connection.commit();
        }
    }

    @ParameterizedTest
    @FieldSource("PINNED")
    void theApplicationCanNeitherChangeNorRemoveNorReshapeAPinnedTable(String tableAndColumn) {
        String table = tableAndColumn.split("/")[0];
        String column = tableAndColumn.split("/")[1];
        List<String> attempts =
                List.of(
                        "update %1$s set %2$s = %2$s",
                        "update %1$s set %2$s = %2$s where false",
                        "delete from %1$s",
                        "truncate %1$s",
                        "truncate %1$s cascade",
                        "alter table %1$s add column another int",
                        "alter table %1$s drop column %2$s",
                        "alter table %1$s disable trigger all",
                        "alter table %1$s owner to test_app",
                        "alter table %1$s rename to another",
                        "drop table %1$s cascade",
                        "create trigger another before insert on %1$s execute function"
                                + " refuse_change()",
                        "create rule another as on insert to %1$s do instead nothing",
                        "merge into %1$s using (select 1) one on true when matched then delete");
        for (String attempt : attempts) {
            assertRefused(DATABASE.app(), attempt.formatted(table, column), NO_RIGHT);
        }
    }

    @ParameterizedTest
    @FieldSource("PINNED")
    void plainSqlOfTheOwnerIsRefusedToo(String tableAndColumn) {
        String table = tableAndColumn.split("/")[0];
        String column = tableAndColumn.split("/")[1];
        String change =
                column.equals("customer") || column.equals("revision_hash")
                        ? "update %1$s set %2$s = repeat('c', 64)"
                        : "update %1$s set %2$s = %2$s";
        assertRefused(DATABASE.owner(), change.formatted(table, column), WRITTEN_ONCE);
        assertRefused(DATABASE.owner(), "delete from " + table, WRITTEN_ONCE);
        assertRefused(DATABASE.owner(), "truncate %s cascade".formatted(table), WRITTEN_ONCE);
    }

    @ParameterizedTest
    @FieldSource("PARTS_FOR_OLD_CONTENT")
    void nobodyAddsAPartToAContentThatIsThere(String attempt) {
        assertRefused(DATABASE.app(), attempt, WRITTEN_ONCE);
        assertRefused(DATABASE.owner(), attempt, WRITTEN_ONCE);
    }

    @ParameterizedTest
    @FieldSource("BEYOND_THE_APPLICATION")
    void theApplicationHasNoOtherWayRound(String attempt) {
        assertRefused(DATABASE.app(), attempt, NO_RIGHT);
    }

    /** PostgreSQL answers such a grant with a warning only. */
    @Test
    void aGrantOfItsOwnGivesTheApplicationNothing() throws SQLException {
        try (Connection connection = connect(DATABASE.app())) {
            execute(connection, "grant update on wire to test_app");
        }
        assertRefused(DATABASE.app(), "update wire set body = 'G'", NO_RIGHT);
    }

    @Test
    void theApplicationOwnsNothingAndBelongsToNobody() throws SQLException {
        assertThat(count("select count(*) from pg_class where relowner = 'test_app'::regrole"))
                .isZero();
        assertThat(count("select count(*) from pg_auth_members where member = 'test_app'::regrole"))
                .isZero();
        assertThat(
                        count(
                                """
                                select count(*) from pg_roles
                                where rolname = 'test_app'
                                    and not (rolsuper or rolcreaterole or rolcreatedb or rolbypassrls)
                                """))
                .isOne();
    }

    @Test
    void everyTableOfAContentIsGuarded() throws SQLException {
        assertThat(
                        count(
                                """
                                select count(*) from information_schema.columns c
                                where c.table_schema = 'public' and c.column_name = 'content_id'
                                    and c.table_name not in ('loom_content', 'loom')
                                    and 2 <> (
                                        select count(*) from pg_trigger t
                                        where t.tgrelid = c.table_name::regclass
                                            and t.tgname in ('written_once', 'only_with_its_content'))
                                """))
                .isZero();
    }

    @Test
    void theStampOfAContentCannotBeForged() throws SQLException {
        try (Connection connection = connect(DATABASE.app())) {
            connection.setAutoCommit(false);
            execute(
                    connection,
                    """
                    insert into loom_content (
                        content_hash, format_version, name, datum, vehicle_name, vehicle_year,
                        hand, earth, system_voltage_mv, made_in, created_at)
                    values (repeat('d', 64), 1, 'loom', 'N1', 'Averley', 1950,
                        'right', 'positive', 12000, '99999999', 'infinity')
                    """);
            assertThat(
                            count(
                                    connection,
                                    """
                                    select count(*) from loom_content
                                    where content_hash = repeat('d', 64)
                                        and made_in = pg_current_xact_id()
                                        and created_at = transaction_timestamp()
                                    """))
                    .isOne();
            connection.rollback();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update work_order set status = 'closed'",
                "update work_order set version = 2",
                "update work_order set status = 'quoted', version = 2",
                """
                insert into work_order_event values (
                    '00000000-0000-0000-0000-000000000002', 2, 'enquiry', 'quoted', 'me', '', now())
                """,
                """
                insert into work_order_event values (
                    '00000000-0000-0000-0000-000000000002', 3, 'enquiry', 'quoted', 'me', '', now())
                """
            })
    void aWorkOrderAndItsEventsMoveTogetherOrNotAtAll(String attempt) {
        assertRefused(DATABASE.app(), attempt, DISAGREES);
    }

    @Test
    void anEventFollowsFromTheOneBefore() throws SQLException {
        try (Connection connection = connect(DATABASE.app())) {
            connection.setAutoCommit(false);
            execute(connection, "update work_order set status = 'ready', version = 2");
            execute(
                    connection,
                    """
                    insert into work_order_event values (
                        '00000000-0000-0000-0000-000000000002', 2, 'testing', 'ready', 'me', '', now())
                    """);
            assertThatThrownBy(connection::commit).hasMessageContaining("does not agree");
        }
    }

    private static void assertRefused(Login login, String sql, String state) {
        assertThatThrownBy(
                        () -> {
                            try (Connection connection = connect(login)) {
                                execute(connection, sql);
                            }
                        })
                .as("%s: %s", login.user(), sql)
                .isInstanceOfSatisfying(
                        SQLException.class,
                        refusal ->
                                assertThat(refusal.getSQLState())
                                        .as("%s: %s: %s", login.user(), sql, refusal.getMessage())
                                        .isEqualTo(state));
    }

    private static Connection connect(Login login) throws SQLException {
        return DriverManager.getConnection(DATABASE.url(), login.user(), login.password());
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static int count(String sql) throws SQLException {
        try (Connection connection = connect(DATABASE.owner())) {
            return count(connection, sql);
        }
    }

    private static int count(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            assertThat(rows.next()).isTrue();
            return rows.getInt(1);
        }
    }
}
