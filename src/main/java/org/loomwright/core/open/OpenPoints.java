package org.loomwright.core.open;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Finds what nobody has said about a loom and its additions.
 *
 * <p>The score is the weight of the questions that are answered, as a share of all questions that are asked of this loom. Which questions
 * are asked depends on the parts that there are and on what they serve, not on the answers, so <em>saying a fact never lowers it</em>: a
 * fact that leads to further questions (what a device serves) weighs at least as much as all of them together. Adding parts adds their own
 * questions: a part whose facts are all said never lowers the score either. Nothing asked is 100 %. Own definition.
 *
 * <p>Deterministic and without state. Cost: that of tracing, and the length of the routes of all wires.
 */
public final class OpenPoints {

    private static final String NO_CLEARANCE =
            "Nothing open on this list does not mean that the loom is right or safe; local rules"
                    + " and a qualified person come first.";
    private static final String LAMPS =
            "Added lamps have rules for number, colour, position, power, switching and tell-tale,"
                    + " which differ between countries and with the date of first use. Check local"
                    + " rules before fitting them.";
    private static final Set<String> INSIDE =
            Set.of("panel-lamps", "interior-lamps", "ignition-warning", "oil-pressure");

    private final Catalogue catalogue;
    private final Behaviours behaviours;
    private final Expectations expectations;

    /**
     * @param catalogue the tables that the looms refer to
     * @param behaviours what devices do
     * @param expectations what services need
     */
    public OpenPoints(Catalogue catalogue, Behaviours behaviours, Expectations expectations) {
        this.catalogue = catalogue;
        this.behaviours = behaviours;
        this.expectations = expectations;
    }

    /**
     * @param stock the loom as it was recorded
     * @param amended what came out of it
     * @return what is open
     */
    public OpenReport of(Loom stock, AmendedLoom amended) {
        Inquiry inquiry = new Inquiry(stock, amended, catalogue, behaviours, expectations);
        new ConsumerQuestions(inquiry).ask();
        new ServiceQuestions(inquiry).ask();
        new DeviceQuestions(inquiry).ask();
        new EndQuestions(inquiry).ask();
        new SegmentQuestions(inquiry).ask();
        new RecordQuestions(inquiry).ask();
        return new OpenReport(
                inquiry.score(NeededFor::isForPrice),
                inquiry.score(NeededFor::isForBuild),
                inquiry.score(neededFor -> true),
                inquiry.open(),
                cautions(inquiry));
    }

    private static List<String> cautions(Inquiry inquiry) {
        List<String> cautions = new ArrayList<>(List.of(NO_CLEARANCE));
        boolean addsLamps =
                inquiry.newConsumers().stream()
                        .filter(device -> device.kind() == DeviceKind.LAMP)
                        .filter(device -> !Inquiry.isTellTale(device))
                        .anyMatch(
                                lamp -> INSIDE.stream().noneMatch(it -> inquiry.serves(lamp, it)));
        if (addsLamps) {
            cautions.add(LAMPS);
        }
        return cautions;
    }
}
