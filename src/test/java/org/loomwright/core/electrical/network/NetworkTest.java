package org.loomwright.core.electrical.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.solver.SparseCholesky;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Nets whose answer is known in closed form, and nets that are not as they should be. */
class NetworkTest {

    private static final double EXACT = 1e-9;

    private static Branch ohms(String id, String from, String to, String ohms) {
        return Branch.resistor(id, from, to, Resistance.ofOhms(new BigDecimal(ohms)));
    }

    private static Branch battery(String id, String from, String to, long volts, String ohms) {
        return new Branch(
                id,
                from,
                to,
                Resistance.ofOhms(new BigDecimal(ohms)),
                Voltage.ofMillivolts(volts * 1_000));
    }

    private static NetworkSolution solve(List<Branch> branches) {
        return new Network("body", branches).solve(new SparseCholesky());
    }

    @Test
    void aLoadOnABatteryFollowsOhmsLaw() {
        NetworkSolution solution =
                solve(
                        List.of(
                                battery("B", "body", "live", 12, "0.01"),
                                ohms("W", "live", "lamp", "0.09"),
                                ohms("L", "lamp", "body", "2.3")));

        assertThat(solution.amperes("L")).isCloseTo(5, within(EXACT));
        assertThat(solution.current("B")).isEqualTo(Current.ofMilliamperes(5_000));
        assertThat(solution.findVoltage("lamp")).contains(Voltage.ofMillivolts(11_500));
        assertThat(solution.isExact()).isTrue();
    }

    /** Source of the closed form: own derivation, R(n) = 1 + R(n-1) / (1 + R(n-1)) gives Fibonacci numbers F(2n+1) / F(2n). */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 10, 30})
    void aLadderOfEqualResistorsHasFibonacciNumbers(int sections) {
        List<Branch> branches = new ArrayList<>();
        branches.add(battery("B", "body", "n0", 1_000, "1"));
        for (int i = 1; i <= sections; i++) {
            branches.add(ohms("S" + i, "n" + (i - 1), "n" + i, "1"));
            branches.add(ohms("P" + i, "n" + i, "body", "1"));
        }
        double ladder = (double) fibonacci(2 * sections + 1) / fibonacci(2 * sections);

        NetworkSolution solution = solve(branches);

        assertThat(solution.amperes("S1")).isCloseTo(1_000 / (1 + ladder), within(1e-7));
        assertThat(solution.volts("n0")).isCloseTo(1_000 * ladder / (1 + ladder), within(1e-7));
    }

    private static long fibonacci(int n) {
        long before = 0;
        long now = 1;
        for (int i = 1; i < n; i++) {
            long next = before + now;
            before = now;
            now = next;
        }
        return now;
    }

    @Test
    void aSharedFeedDropsMoreTheFartherALoadIs() {
        // Three equal currents could only be had with current sources; with 1 ohm steps and 3 equal
        // loads of 5 ohm the chain is solved by hand:
        // R3 = 1 + 5 = 6; R2 = 1 + 5*6/11 = 41/11; R1 = 1 + 5*(41/11)/(5 + 41/11) = 301/96. I = 301
        // V / (301/96) = 96 A.
        NetworkSolution solution =
                solve(
                        List.of(
                                battery("B", "body", "n0", 398, "1.010416667"),
                                ohms("S1", "n0", "n1", "1"),
                                ohms("P1", "n1", "body", "5"),
                                ohms("S2", "n1", "n2", "1"),
                                ohms("P2", "n2", "body", "5"),
                                ohms("S3", "n2", "n3", "1"),
                                ohms("P3", "n3", "body", "5")));
        assertThat(solution.amperes("S1")).isCloseTo(96, within(1e-6));
        assertThat(solution.amperes("S2")).isCloseTo(96 * 5 / (5 + 41.0 / 11), within(1e-6));
        assertThat(solution.amperes("P3"))
                .isCloseTo(96 * 5 / (5 + 41.0 / 11) * 5 / 11, within(1e-6));
    }

    @Test
    void aBalancedBridgeCarriesNothingInTheMiddle() {
        NetworkSolution solution = solve(bridge("4"));
        assertThat(solution.amperes("M")).isCloseTo(0, within(EXACT));

        // Unbalanced, 6 for 4 ohms, by Thevenin: 12 V x (2/3 - 6/8) = -1 V behind 2/3 + 3/2 ohm and
        // 5 ohm.
        assertThat(solve(bridge("6")).amperes("M"))
                .isCloseTo(-1 / (5 + 2.0 / 3 + 1.5), within(1e-4));
    }

    private static List<Branch> bridge(String last) {
        return List.of(
                battery("B", "body", "top", 12, "0.000001"),
                ohms("1", "top", "left", "1"),
                ohms("2", "left", "body", "2"),
                ohms("3", "top", "right", "2"),
                ohms("4", "right", "body", last),
                ohms("M", "left", "right", "5"));
    }

    @Test
    void acrossACubeOfOneOhmEdgesThereAreFiveSixthsOfAnOhm() {
        List<Branch> branches = new ArrayList<>();
        branches.add(battery("B", "c0", "c7", 11, "1"));
        for (int corner = 0; corner < 8; corner++) {
            for (int bit = 1; bit < 8; bit *= 2) {
                if ((corner & bit) == 0) {
                    String from = "c" + corner;
                    String to = "c" + (corner | bit);
                    branches.add(ohms(from + to, from, to, "1"));
                }
            }
        }
        // 11 V / (1 + 5/6) ohm = 6 A, and the cube floats: nothing joins it with the body.
        NetworkSolution solution = solve(branches);
        assertThat(solution.amperes("B")).isCloseTo(6, within(EXACT));
        assertThat(solution.findVoltage("c0")).isEmpty();
        assertThat(solution.across(branches.getFirst())).isEqualTo(Voltage.ofMillivolts(-5_000));
    }

    @Test
    void idealConnectionsCarryWhatEntersBeyondThem() {
        NetworkSolution solution =
                solve(
                        List.of(
                                battery("B", "body", "stud", 12, "1"),
                                Branch.ideal("A", "stud", "meter"),
                                Branch.ideal("F", "fused", "meter"),
                                ohms("L1", "fused", "body", "2"),
                                ohms("L2", "meter", "body", "2"),
                                Branch.ideal("E", "earth", "body")));

        assertThat(solution.amperes("A")).isCloseTo(6, within(EXACT));
        assertThat(solution.amperes("F")).isCloseTo(-3, within(EXACT));
        assertThat(solution.amperes("E")).isZero();
        assertThat(solution.undetermined()).isEmpty();
        assertThat(solution.isExact()).isTrue();
    }

    @Test
    void aLoopOfIdealConnectionsIsSolvedAndSaysSo() {
        NetworkSolution solution =
                solve(
                        List.of(
                                battery("B", "body", "a", 12, "1"),
                                Branch.ideal("1", "a", "b"),
                                Branch.ideal("2", "b", "c"),
                                Branch.ideal("3", "c", "a"),
                                Branch.ideal("4", "c", "c"),
                                ohms("L", "c", "body", "5")));

        assertThat(solution.current("L")).isEqualTo(Current.ofMilliamperes(2_000));
        assertThat(solution.undetermined()).hasSize(2).contains("4");
        assertThat(solution.isExact()).isTrue();
    }

    @Test
    void aShortAcrossTheSourceGivesItsShortCircuitCurrent() {
        NetworkSolution solution =
                solve(
                        List.of(
                                battery("B", "body", "live", 12, "0.01"),
                                Branch.ideal("short", "live", "body")));
        assertThat(solution.current("short")).isEqualTo(Current.ofMilliamperes(1_200_000));
        assertThat(solution.findVoltage("live")).contains(Voltage.ZERO);
        assertThat(solution.isExact()).isTrue();
    }

    @Test
    void whatHangsInTheAirHasNoVoltageAndNoCurrent() {
        NetworkSolution solution =
                solve(
                        List.of(
                                battery("B", "body", "live", 12, "0.01"),
                                ohms("W1", "live", "open end", "0.1"),
                                ohms("W2", "x", "y", "0.1")));
        assertThat(solution.findVoltage("open end")).contains(Voltage.ofMillivolts(12_000));
        assertThat(solution.findVoltage("x")).isEmpty();
        assertThat(solution.findVoltage("nowhere")).isEmpty();
        assertThat(solution.current("W2")).isEqualTo(Current.ZERO);
    }

    @Test
    void anEmptyNetHasNothing() {
        assertThat(solve(List.of()).findVoltage("body")).contains(Voltage.ZERO);
        assertThat(solve(List.of()).isExact()).isTrue();
    }

    @Test
    void whatIsNoNetIsRefused() {
        assertThatThrownBy(() -> ohms("R", "a", "b", "-1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
        assertThatThrownBy(() -> battery("B", "a", "b", 12, "0"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> solve(List.of(ohms("R", "a", "b", "1"), ohms("R", "a", "c", "1"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("R");
        assertThatThrownBy(() -> solve(List.of()).current("R"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
