package org.loomwright.core.electrical.check.current;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.DemoLooms;

import java.util.List;

class DemoCheckTest {
    static Scenario night(String name, Engine engine) {
        return Scenario.of(name, engine, Temperature.ofCelsius(20))
                .with("IGN-SWITCH", "IGN")
                .with("LIGHT-SWITCH", "SIDE", "HEAD")
                .with("DIP-SWITCH", "DIP")
                .with("PANEL-SWITCH", "OUT")
                .with("WIPER-SWITCH", "MOTOR")
                .with("HEATER-SWITCH", "MOTOR");
    }

    @Test
    void look() {
        AmendedLoom amended = DemoLooms.amended();
        List<Scenario> all =
                List.of(
                        night("night idle", Engine.IDLE),
                        night("night", Engine.AT_SPEED),
                        new Scenario(
                                        "hot",
                                        night("x", Engine.AT_SPEED).closed(),
                                        Engine.AT_SPEED,
                                        Temperature.ofCelsius(50))
                                .with("FOG-SWITCH", "OUT")
                                .with("FAN-SWITCH", "SWITCH")
                                .with("REVERSE-SWITCH", "OUT"),
                        new Scenario(
                                        "stop",
                                        night("x", Engine.AT_SPEED).closed(),
                                        Engine.IDLE,
                                        Temperature.ofCelsius(20))
                                .with("HORN-PUSH", "PUSH")
                                .with("STOP-SWITCH", "OUT")
                                .with("INDICATOR-SWITCH", "LEFT"));
        for (int i = 0; i < 3; i++) {
            System.out.println("=== stock");
            long t = System.nanoTime();
            var stock = Checked.find(DemoLooms.main(), all.get(0), all.get(1));
            System.out.println((System.nanoTime() - t) / 1e6);
            if (i == 0)
                stock.forEach(
                        f ->
                                System.out.println(
                                        f.finding().severity()
                                                + " "
                                                + f.finding().code()
                                                + " "
                                                + f.finding().subject().id()
                                                + ": "
                                                + f.finding().text()
                                                + " || "
                                                + f.remedy()));
            System.out.println("=== amended");
            t = System.nanoTime();
            var found = Checked.findWithChanges(amended, DemoLooms.main(), all);
            System.out.println((System.nanoTime() - t) / 1e6);
            if (i == 0)
                found.forEach(
                        f ->
                                System.out.println(
                                        f.finding().finding().severity()
                                                + " "
                                                + f.finding().finding().code()
                                                + " "
                                                + f.finding().finding().subject().id()
                                                + ": "
                                                + f.finding().finding().text()
                                                + " || "
                                                + f.finding().remedy()
                                                + " >> "
                                                + f.change().map(c -> c.kind() + " " + c.cost())));
        }
    }
}
