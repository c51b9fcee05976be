package org.loomwright.core.open;

import org.loomwright.core.electrical.simulation.Behaviour;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.open.Expectation.Need;

import java.util.Locale;
import java.util.Set;

/** Has every added consumer a feed, a way back, and on these ways what its service needs? */
final class ConsumerQuestions {

    /** Services whose switches decide about a whole group of circuits and so do not count as a consumer's own. */
    private static final Set<String> MAIN_SWITCHES = Set.of("ignition", "lighting", "charging");

    private static final String EARTHED = "earthed";
    private static final String UNFUSED = "has no fuse before it.";
    private static final String UNSWITCHED = "has no switch of its own.";
    private static final String FUSE = "Which fuse protects %s, and where does it sit?";
    private static final String SWITCH = "What switches %s, in the feed or on the earth side?";
    private static final String EARTH =
            "Does %s stand on bare metal, or does it need an earth wire of its own? If metal earths"
                    + " it, say 'earthed' in its name.";
    private static final String EARTHED_THROUGH_BODY =
            "has no earth wire, so it has to be earthed through its body.";

    private final Inquiry inquiry;

    ConsumerQuestions(Inquiry inquiry) {
        this.inquiry = inquiry;
    }

    void ask() {
        for (Device device : inquiry.newConsumers()) {
            askForFeed(device);
            askForReturn(device);
            askForService(device);
            if (!Inquiry.isTellTale(device)) {
                expect(device, Need.FUSE, isFused(device), UNFUSED, FUSE);
                expect(device, Need.SWITCH, isSwitched(device), UNSWITCHED, SWITCH);
                expect(device, Need.OWN_EARTH, isEarthed(device), EARTHED_THROUGH_BODY, EARTH);
            }
        }
    }

    private void askForFeed(Device device) {
        boolean isFed =
                inquiry.loadsOf(device).stream()
                        .anyMatch(load -> isFed(load.fromNode()) || isFed(load.toNode()));
        inquiry.ask(
                OpenRule.FEED,
                Inquiry.subject(device),
                isFed,
                "%s has no feed: no source reaches it.".formatted(Inquiry.called(device)),
                "Where does %s take its feed from?".formatted(device.id()));
    }

    private boolean isFed(String node) {
        return inquiry.tracing().supplyAt(node).isPresent();
    }

    private void askForReturn(Device device) {
        inquiry.ask(
                OpenRule.RETURN,
                Inquiry.subject(device),
                inquiry.loadsOf(device).stream().allMatch(this::isReturned),
                "%s has no return: no wire leads from it to earth, and nothing switches it on the earth side."
                        .formatted(Inquiry.called(device)),
                "Where is %s earthed?".formatted(device.id()));
    }

    /** A load that a source reaches on both sides stands between two supplies, as a charge warning lamp does. */
    private boolean isReturned(Placed load) {
        return reachesBody(load.toNode())
                || reachesBody(load.fromNode())
                || (isFed(load.fromNode()) && isFed(load.toNode()));
    }

    private boolean reachesBody(String node) {
        return node.equals(Behaviour.BODY) || inquiry.tracing().reachesBody(node);
    }

    private void askForService(Device device) {
        if (inquiry.serviceOf(device).isPresent()) {
            return;
        }
        inquiry.ask(
                OpenRule.SERVICE,
                inquiry.expectations().heaviestService(),
                Inquiry.subject(device),
                false,
                "Nobody said what %s serves, and its name does not tell. What else it needs depends on that."
                        .formatted(Inquiry.called(device)),
                "What is %s for?".formatted(device.id()),
                null);
    }

    private void expect(Device device, Need need, boolean said, String text, String question) {
        inquiry.expectations()
                .find(inquiry.serviceOf(device), device.kind(), need)
                .ifPresent(
                        expected ->
                                inquiry.ask(
                                        expected,
                                        Inquiry.subject(device),
                                        said,
                                        Inquiry.called(device) + " " + text,
                                        question.formatted(device.id())));
    }

    private boolean isFused(Device device) {
        return inquiry.feedPath(device).anyMatch(passed -> passed.element() == Element.FUSE);
    }

    /** The contact of a relay counts, because whoever looks at the relay asks what switches its coil. */
    private boolean isSwitched(Device device) {
        boolean inFeed = inquiry.feedPath(device).anyMatch(this::isOwnContact);
        return inFeed || inquiry.earthSideSwitches(device).anyMatch(this::isOwnSwitch);
    }

    private boolean isOwnContact(Passed passed) {
        return switch (passed.element()) {
            case MAKE, BREAK -> true;
            case CONTACT -> isOwnSwitch(passed.device());
            case SOURCE,
                    GENERATOR,
                    CUT_OUT,
                    LINK,
                    FUSE,
                    COIL,
                    FIELD,
                    SENSE,
                    ENGINE_OFF,
                    LOAD,
                    EARTH,
                    NONE ->
                    false;
        };
    }

    private boolean isOwnSwitch(String id) {
        return isOwnSwitch(inquiry.loom().getDevice(id));
    }

    private boolean isOwnSwitch(Device device) {
        return device.kind() == DeviceKind.SWITCH
                && MAIN_SWITCHES.stream().noneMatch(main -> inquiry.serves(device, main));
    }

    private boolean isEarthed(Device device) {
        boolean throughBody =
                inquiry.loadsOf(device).stream()
                        .anyMatch(load -> load.toNode().equals(Behaviour.BODY));
        return !throughBody || device.name().toLowerCase(Locale.ROOT).contains(EARTHED);
    }
}
