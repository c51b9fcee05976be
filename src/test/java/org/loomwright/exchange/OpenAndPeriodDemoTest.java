package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.open.OpenPoint;
import org.loomwright.core.open.OpenPoints;
import org.loomwright.core.open.OpenReport;
import org.loomwright.core.open.OpenRule;
import org.loomwright.core.period.Judgement;
import org.loomwright.core.period.PeriodCheck;
import org.loomwright.core.period.PeriodItem;
import org.loomwright.core.period.PeriodItem.Aspect;
import org.loomwright.core.period.PeriodReport;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.TestCatalogue;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

import java.util.List;

/** What has to be asked about the demonstration's additions and what must not, how they are judged, and both as JSON. */
class OpenAndPeriodDemoTest {

    private final Loom stock = DemoLooms.main();
    private final AmendedLoom amended = DemoLooms.amended();
    private final OpenReport open =
            new OpenPoints(
                            TestCatalogue.get(),
                            ElectricalFiles.behaviours(),
                            ExpectationFiles.load(TestCatalogue.get()))
                    .of(stock, amended);
    private final PeriodReport period =
            new PeriodCheck(
                            TestCatalogue.get(),
                            ElectricalFiles.behaviours(),
                            PeriodFiles.load(TestCatalogue.get()))
                    .of(stock, amended, List.of());

    private List<String> asked(OpenRule rule) {
        return open.points().stream()
                .filter(point -> point.rule() == rule)
                .map(point -> point.subject().id())
                .toList();
    }

    /** The relay's coil hangs on the side lamps, which have no fuse; fog lamps have no tell-tale. */
    @Test
    void whatTheCustomerForgotIsAsked() {
        assertThat(asked(OpenRule.FUSE)).containsExactly("FOG-RELAY");
        assertThat(asked(OpenRule.TELL_TALE)).containsExactly("FOGLAMP-NS");
        assertThat(asked(OpenRule.FINISH)).containsExactly("S30");
        assertThat(asked(OpenRule.ROOM)).isSubsetOf(DemoPlaces.FEEDS);
    }

    /** Points of the recorded loom from which the additions are fed. */
    private static final class DemoPlaces {

        static final List<String> FEEDS =
                List.of(
                        "FUSE-BOX/A3",
                        "JOINT-GREEN/JOINT",
                        "LIGHT-SWITCH/SIDE",
                        "PANEL-LAMP-2/FEED",
                        "SOLENOID/BATT");
    }

    @Test
    void whatIsThereIsNotAsked() {
        assertThat(asked(OpenRule.FEED)).isEmpty();
        assertThat(asked(OpenRule.RETURN)).isEmpty();
        assertThat(asked(OpenRule.SWITCH)).isEmpty();
        assertThat(asked(OpenRule.RELAY)).isEmpty();
        assertThat(asked(OpenRule.PANEL_LAMP)).isEmpty();
        assertThat(asked(OpenRule.SENDER)).isEmpty();
        assertThat(asked(OpenRule.OWN_EARTH)).isEmpty();
        assertThat(asked(OpenRule.SERVICE)).isEmpty();
        assertThat(asked(OpenRule.LOAD)).isEmpty();
        assertThat(asked(OpenRule.CONDITION)).isEmpty();
        assertThat(asked(OpenRule.NOT_STANDARD)).isEmpty();
    }

    @Test
    void theScoreIsWrittenAndTheNextQuestionIsTheHeaviest() {
        ObjectNode json = OpenWriter.write(open);
        assertThat(json.required("price").required("percent").asInt())
                .isEqualTo(open.price().percent())
                .isBetween(80, 99);
        assertThat(json.required("points")).hasSize(open.points().size());
        assertThat(json.required("next")).isEqualTo(json.required("points").get(0));
        JsonNode next = json.required("next");
        assertThat(next.required("code").asString()).isEqualTo("open.fuse");
        assertThat(next.required("kind").asString()).isEqualTo("device");
        assertThat(next.required("neededFor").asString()).isEqualTo("both");
        assertThat(next.required("weight").asInt()).isEqualTo(10);
        assertThat(next.required("status").asString()).isEqualTo("from memory");
        assertThat(json.required("cautions")).hasSize(2);
    }

    @Test
    void whatFollowsFromTheWorkHasNoSource() {
        JsonNode points = OpenWriter.write(open).required("points");
        for (int i = 0; i < points.size(); i++) {
            OpenPoint point = open.points().get(i);
            assertThat(points.get(i).has("source")).isEqualTo(point.basis() != null);
        }
    }

    @Test
    void theAddedLegsLookLikeTheirNeighbours() {
        assertThat(period.items())
                .filteredOn(item -> item.aspect() == Aspect.COVERING)
                .extracting(item -> item.subject().id())
                .contains("S51", "S53", "S55", "S57", "S59");
        assertThat(period.items())
                .filteredOn(item -> item.aspect() == Aspect.COVERING)
                .allMatch(item -> item.judgement() == Judgement.AS_PERIOD);
    }

    @Test
    void theBladesAtTheBatteryAreSeenAndThoseOnTheRelayPlateAreAskedAbout() {
        assertThat(judgement("W102", Aspect.TERMINAL_A)).isEqualTo(Judgement.VISIBLE_DEVIATION);
        assertThat(judgement("W102", Aspect.TERMINAL_B)).isEqualTo(Judgement.UNKNOWN);
        assertThat(judgement("W102", Aspect.SIZE)).isEqualTo(Judgement.HIDDEN_DEVIATION);
        assertThat(judgement("SOCKET", Aspect.DEVICE)).isEqualTo(Judgement.VISIBLE_DEVIATION);
    }

    private Judgement judgement(String id, Aspect aspect) {
        return period.items().stream()
                .filter(item -> item.subject().id().equals(id) && item.aspect() == aspect)
                .map(PeriodItem::judgement)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyAddedWireAndDeviceIsOnTheWayBack() {
        long added =
                amended.loom().wires().keySet().stream()
                                .filter(id -> !stock.wires().containsKey(id))
                                .count()
                        + amended.loom().devices().keySet().stream()
                                .filter(id -> !stock.devices().containsKey(id))
                                .count();
        assertThat(period.wayBack().stream().map(step -> step.act().name()))
                .filteredOn(act -> act.equals("CAP_WIRE") || act.equals("TAKE_OUT_DEVICE"))
                .hasSize((int) added);
    }

    @Test
    void judgementsAreWrittenWithTheirCounts() {
        ObjectNode json = PeriodWriter.write(period);
        assertThat(json.required("items")).hasSize(period.items().size());
        assertThat(json.required("wayBack")).hasSize(period.wayBack().size());
        int sum = 0;
        for (JsonNode count : json.required("counts")) {
            sum += count.asInt();
        }
        assertThat(sum).isEqualTo(period.items().size());
        JsonNode first = json.required("items").get(0);
        assertThat(first.required("judgement").asString()).isNotEmpty();
        assertThat(first.required("wayBack").asString()).endsWith(".");
    }

    /** Holds also once the demonstration says which fuses are fitted. */
    @Test
    void onlyFusesOfWhichNobodySaidTheMarkAreAsked() {
        for (Device device : amended.loom().devices().values()) {
            List<FittedFuse> fuses = device.particulars().fuses();
            if (!fuses.isEmpty() && device.points().size() == 2) {
                assertThat(asked(OpenRule.FUSE_RATING)).doesNotContain(device.id());
            }
        }
        assertThat(asked(OpenRule.FUSE_RATING)).doesNotHaveDuplicates();
    }
}
