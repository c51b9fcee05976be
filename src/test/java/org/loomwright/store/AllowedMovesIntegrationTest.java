package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.loomwright.testing.DatabaseTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The database and the program know the same moves. */
@DatabaseTest
class AllowedMovesIntegrationTest {

    private final JdbcClient jdbc;

    @Autowired
    AllowedMovesIntegrationTest(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Test
    void theDatabaseAllowsTheMovesOfTheTableAndNoOthers() {
        Set<String> stored =
                Set.copyOf(
                        jdbc.sql("select from_status || ' > ' || to_status from work_order_move")
                                .query(String.class)
                                .list());
        Set<String> programmed =
                Stream.of(WorkOrderStatus.values())
                        .flatMap(
                                from ->
                                        from.next().stream()
                                                .map(to -> stored(from) + " > " + stored(to)))
                        .collect(Collectors.toSet());
        assertThat(stored).isEqualTo(programmed);
    }

    private static String stored(WorkOrderStatus status) {
        return status.words().replace(' ', '-');
    }
}
