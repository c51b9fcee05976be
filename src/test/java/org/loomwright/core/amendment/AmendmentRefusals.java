package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.amendment.Amending.refuse;
import static org.loomwright.testing.LoomSketch.plainWire;

import org.assertj.core.api.AbstractListAssert;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.TestLooms;

import java.util.List;

/** What the tests of refusals share. */
abstract class AmendmentRefusals {

    final Loom stock = TestLooms.front();

    /** Asserts on "code pointer text" of every reason. */
    AbstractListAssert<?, List<? extends String>, String, ?> reasons(Amendment... amendments) {
        return assertThat(lines(refuse(stock, amendments)));
    }

    static List<String> lines(List<Finding> findings) {
        return findings.stream()
                .map(
                        finding ->
                                String.join(
                                        " | ",
                                        finding.code(),
                                        finding.subject().pointer(),
                                        finding.text()))
                .toList();
    }

    static AddWire wire(String id, String wire, String a, String b) {
        return new AddWire(id, "", plainWire(wire, "G", a, b));
    }
}
