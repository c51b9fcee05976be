package org.loomwright.document.sheet.electrical;

import org.loomwright.core.electrical.charging.ChargingBalance;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.electrical.report.ScenarioFigures;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.simulation.StandardScenario;
import org.loomwright.core.quantity.Current;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.style.Type;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is drawn and what the generator can give in every state of the vehicle, and the balance of a day. */
final class StatesTable {

    private final ElectricalSide side;
    private final Set<String> lasting;

    StatesTable(ElectricalSide side) {
        this.side = side;
        this.lasting =
                side.basis().scenarios().rows().stream()
                        .filter(StandardScenario::lasts)
                        .map(StandardScenario::name)
                        .collect(Collectors.toSet());
    }

    void set(Flow flow) {
        flow.heading("States of the vehicle: what is drawn, what the generator can give");
        ElectricalReport report = side.report();
        if (report.scenarios().isEmpty()) {
            flow.text("This loom can be in none of the states that are looked at.");
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("State", 120),
                                Column.words("Engine", 43),
                                Column.figures("Drawn at\nmost, stock\nA", 49),
                                Column.figures("Drawn at\nmost, new\nA", 49),
                                Column.figures("Average,\nstock\nA", 44),
                                Column.figures("Average,\nnew\nA", 44),
                                Column.figures("Generator\ncan give\nA", 47),
                                Column.figures("Balance,\nnew\nA", 44),
                                Column.figures("Flat\nafter\nh", 34)));
        report.scenarios().forEach(state -> state(table, state));
        flow.table(table);
        flow.note(
                "Stock is the loom as recorded, new with the additions. The average counts what"
                    + " works now and then by its share of the time. A balance of 1 A is 1 Ah an"
                    + " hour; flat: a full battery, used as the limits at the end of this sheet"
                    + " say. A moment is there to find the greatest currents and empties no"
                    + " battery. “–”: not in that state, or not emptied.");
        flow.text(day(report.ampereHoursPerDay()), Type.TEXT_STRONG, 0);
    }

    private void state(Table table, ScenarioFigures state) {
        ChargingBalance now = state.charging();
        ChargingBalance before = state.recordedCharging();
        Current drawnBefore = state.recordedDrawn();
        table.row(
                Type.strong(state.scenario().name()),
                Type.words(words(now.engine())),
                Type.figure(drawnBefore == null ? "–" : Figures.tenthsA(drawnBefore)),
                Type.figure(Figures.tenthsA(state.drawn())),
                Type.figure(before == null ? "–" : Figures.tenthsA(before.drawn())),
                Type.figure(Figures.tenthsA(now.drawn())),
                Type.figure(Figures.tenthsA(now.output())),
                now.isNegative()
                        ? Type.strongFigure(Figures.tenthsA(now.balance()))
                        : Type.figure(Figures.tenthsA(now.balance())),
                Type.figure(flat(now)));
    }

    private String flat(ChargingBalance balance) {
        BigDecimal hours = balance.hoursToFlat();
        if (!lasting.contains(balance.scenario())) {
            return "moment";
        }
        return hours == null ? "–" : hours.toPlainString();
    }

    private static String words(Engine engine) {
        return switch (engine) {
            case OFF -> "off";
            case IDLE -> "at idle";
            case AT_SPEED -> "at speed";
        };
    }

    private static String day(BigDecimal ampereHours) {
        return "Balance of a winter day with the additions: %s Ah. %s How the day is divided among the states is this program's own choice, from memory."
                .formatted(
                        Figures.signed(ampereHours),
                        ampereHours.signum() < 0
                                ? "The battery gives more than it gets."
                                : "The battery gets no less than it gives.");
    }
}
