package org.loomwright.document.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourProposal;
import org.loomwright.core.colour.ColourProposal.Choice;
import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.electrical.report.CheckLimit;
import org.loomwright.core.electrical.report.CheckLimits;
import org.loomwright.core.electrical.report.ScenarioFigures;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.document.pdf.PdfPages;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.electrical.ElectricalSide;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;

class JobSheetElectricalTest {

    private static final JobSheet DEMO = TestJobs.withoutPictures(DemoJob.sheet());
    private static final ElectricalSide SIDE = DEMO.electrical();

    private static String text(JobSheet sheet) {
        return String.join(" ", PdfPages.texts(JobSheetPdf.write(sheet))).replace('\u00a0', ' ');
    }

    /** Words without spaces, in which a text is found wherever its lines and pages break. */
    private static String solid(String text) {
        return text.replaceAll("[\\s\u00a0]+", "");
    }

    private static String section(String text, int number, String title, String next) {
        int from = text.indexOf(number + " " + title);
        int to = text.indexOf((number + 1) + " " + next);
        assertThat(from).as(title).isPositive();
        assertThat(to).as(next).isGreaterThan(from);
        return text.substring(from, to);
    }

    private static List<ElectricalFinding> findings(Predicate<Finding> which) {
        return SIDE.report().findings().stream()
                .map(CheckedFinding::finding)
                .filter(one -> which.test(one.finding()))
                .toList();
    }

    private static boolean isNote(Finding finding) {
        return finding.severity() == Severity.NOTE;
    }

    @Test
    void theFirstPageSaysWhereElectricalFindingsFollowAndHowManyThereAre() {
        long faults = findings(one -> one.severity() == Severity.FAULT).size();

        assertThat(PdfPages.texts(JobSheetPdf.write(DEMO)).getFirst())
                .contains("Electrical findings follow in section 7: %d faults,".formatted(faults));
    }

    @Test
    void everyStateIsPrintedWithItsFiguresOfStockAndAdditions() {
        String text = section(text(DEMO), 7, "Electrical summary", "Colours");

        assertThat(SIDE.report().scenarios()).hasSizeGreaterThan(10);
        for (ScenarioFigures state : SIDE.report().scenarios()) {
            Current stock = Objects.requireNonNull(state.recordedDrawn());
            assertThat(text)
                    .containsPattern(
                            "%s (off|at idle|at speed) %s %s "
                                    .formatted(
                                            state.scenario().name(),
                                            Figures.tenthsA(stock),
                                            Figures.tenthsA(state.drawn())));
        }
        assertThat(text)
                .contains("everything at once at speed")
                .contains(Figures.signed(SIDE.report().ampereHoursPerDay()) + " Ah.");
    }

    @Test
    void everyFaultAndWarningIsPrintedInFullWithFigureLimitAndMargin() {
        String text = solid(text(DEMO));

        List<ElectricalFinding> grave = findings(finding -> !isNote(finding));
        assertThat(grave).hasSizeGreaterThan(20);
        for (ElectricalFinding one : grave) {
            String figures =
                    one.figure() == null || one.limit() == null
                            ? ""
                            : Figures.words(one.figure())
                                    + Figures.words(one.limit())
                                    + one.margin().map(Figures::words).orElseThrow();
            assertThat(text).contains(solid(figures));
            assertThat(text).contains(solid(one.finding().text()));
        }
    }

    @Test
    void aRemedyThatWasTriedIsPrintedWithItsFinding() {
        String text = text(DEMO);

        assertThat(text).containsPattern("To put it right: Take [0-9/.]+ instead of 44/0\\.30");
    }

    @Test
    void notesOfARuleStandTogetherWithTheThingsTheyAreAbout() {
        String text = section(text(DEMO), 7, "Electrical summary", "Colours");
        List<ElectricalFinding> unfused =
                findings(one -> isNote(one) && one.code().equals("electrical.short-unfused"));

        assertThat(unfused).hasSizeGreaterThan(20);
        assertThat(text).contains("short: no fuse before the wire %d".formatted(unfused.size()));
        for (ElectricalFinding note : unfused) {
            assertThat(text).contains(note.finding().subject().id() + " (");
        }
        assertThat(solid(text)).doesNotContain(solid(unfused.get(1).finding().text()));
    }

    @Test
    void everyFuseSaysWhatItCarriesAndWhatGoesDark() {
        String text = section(text(DEMO), 7, "Electrical summary", "Colours");

        assertThat(text)
                .contains("FUSE-BOX, A1 to A2")
                .containsPattern("marked 50 A glass, marked with its blow value 25 published: U4")
                .containsPattern("SOCKET-FUSE, IN to OUT .*power socket in the boot");
    }

    @Test
    void newWiresHaveTheirColourInLettersAndWordsWithTheRuleBehindIt() {
        String text = section(text(DEMO), 8, "Colours", "Findings that");

        assertThat(text)
                .containsPattern("W110, W112, W113 RY red with yellow RY is there for: fog lamp");
        assertThat(SIDE.colours().clashes()).isNotEmpty();
        SIDE.colours()
                .clashes()
                .forEach(clash -> assertThat(text).contains(String.join(", ", clash.wires())));
        assertThat(SIDE.colours().audit()).isNotEmpty();
        SIDE.colours()
                .audit()
                .forEach(finding -> assertThat(solid(text)).contains(solid(finding.text())));
    }

    @Test
    void aNewWireOfAnotherColourThanTheCodesIsMarked() {
        Choice choice =
                new Choice(
                        WireColour.parse("RU"),
                        "RU is for tests",
                        new Provenance(Status.MEMORY, "own rule"));
        Finding differs =
                Finding.note("colour.new-differs", Subject.of(ThingKind.WIRE, "W110"), "differs");
        ColourReport colours =
                new ColourReport(
                        new TreeMap<>(Map.of("W110", new ColourProposal(choice, List.of()))),
                        List.of(differs),
                        List.of(),
                        List.of());
        JobSheet sheet =
                TestJobs.with(
                        DEMO,
                        new ElectricalSide(
                                SIDE.basis(), SIDE.report(), colours, SIDE.open(), List.of()));

        assertThat(section(text(sheet), 8, "Colours", "Findings that"))
                .contains(
                        "W110 RY red with yellow RU is for tests from memory: own rule RU red with"
                                + " blue DIFFERS: the code would have this")
                .contains("nothing leads to a colour – not judged");
    }

    @Test
    void anAcceptedFindingPointsToItsReasonInsteadOfBeingOpen() {
        JobSheet sheet =
                TestJobs.accepting(
                        DEMO,
                        List.of(
                                accepted("electrical.unfused-new", ThingKind.WIRE, "W109"),
                                accepted("opening.no-longer-passes", ThingKind.OPENING, "O26")));
        String text = text(sheet);

        assertThat(text)
                .containsPattern("Wire W109 [^:]{1,160} lamps\\. Accepted, see section 9\\.")
                .contains("accepted of these: 1. Colours follow")
                .containsPattern("Findings about the loom itself: .{1,40}; accepted of these: 1");
        assertThat(section(text, 9, "Findings that the customer accepts", "What nobody"))
                .contains("Wire W109 (fog lamps")
                .contains("Because of W109.")
                .contains("Segment S39 no longer passes grommet O26")
                .contains("Because of O26.")
                .doesNotContain("does not occur");
    }

    @Test
    void anAcceptedFindingThatIsGoneOrNotOnTheSheetSaysSo() {
        JobSheet sheet =
                TestJobs.accepting(
                        DEMO,
                        List.of(
                                accepted("electrical.polarity", ThingKind.DEVICE, "RADIO"),
                                accepted("period.parts", ThingKind.DEVICE, "FAN-FUSE")));

        assertThat(section(text(sheet), 9, "Findings that the customer accepts", "What nobody"))
                .containsPattern("RADIO .{1,30}This finding does not occur any more\\.")
                .containsPattern("FAN-FUSE .{1,30}Not looked at on this sheet\\.");
    }

    private static AcceptedFinding accepted(String code, ThingKind kind, String id) {
        return new AcceptedFinding(code, kind, id, "Because of " + id + ".");
    }

    @Test
    void openQuestionsAreScoredAndTheRestIsCounted() {
        String text = section(text(DEMO), 10, "What nobody has said yet", "Checks");

        assertThat(text)
                .contains("%d %% of what a price needs".formatted(SIDE.open().price().percent()))
                .contains("%d %% of what the work needs".formatted(SIDE.open().build().percent()))
                .contains((SIDE.open().points().size() - 10) + " further questions are open");
        SIDE.open().points().stream()
                .limit(10)
                .forEach(point -> assertThat(solid(text)).contains(solid(point.question())));
        SIDE.open().cautions().forEach(words -> assertThat(text).contains(words));
    }

    @Test
    void everyLimitIsPrintedAndThoseFromMemoryAreCounted() {
        String text = section(text(DEMO), 11, "Checks, their limits and sources", "Cautions");
        List<CheckLimit> limits = CheckLimits.of(SIDE.basis());
        long recalled =
                limits.stream().filter(one -> one.provenance().status() == Status.MEMORY).count();

        assertThat(text)
                .contains(
                        "%d of these %d limits are from memory".formatted(recalled, limits.size()));
        limits.forEach(limit -> assertThat(solid(text)).contains(solid(limit.limit())));
    }

    @Test
    void aJobThatAddsNothingSaysSoInWords() {
        assertThat(text(TestJobs.nothing()))
                .contains("No wire is new.")
                .contains("The customer has accepted no finding.")
                .doesNotContain("null");
    }
}
