package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.testing.TestLooms;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** Every way in which the form of a document can be wrong. */
class LoomReaderTest {

    private static final String RIGHT = LoomWriter.write(TestLooms.front().document()).toString();

    private static List<Finding> faults(String json) {
        Outcome<LoomDocument> outcome =
                StrictJson.parse(json.getBytes(StandardCharsets.UTF_8)).then(LoomReader::read);
        return switch (outcome) {
            case Outcome.Accepted<LoomDocument> accepted -> List.of();
            case Outcome.Rejected<LoomDocument>(List<Finding> reasons) -> reasons;
        };
    }

    private static void assertFault(String json, String code, String pointer) {
        assertThat(faults(json))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo(code);
                            assertThat(finding.subject().pointer()).isEqualTo(pointer);
                            assertThat(finding.text()).isNotBlank();
                        });
    }

    private static String changed(String from, String to) {
        assertThat(RIGHT).contains(from);
        return RIGHT.replaceFirst(Pattern.quote(from), to);
    }

    @Test
    void theDocumentItselfIsRight() {
        assertThat(faults(RIGHT)).isEmpty();
    }

    @Test
    void brokenJsonIsRefusedWithItsPlace() {
        assertThat(faults("{\"name\": ]"))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("json.malformed");
                            assertThat(finding.text()).contains("line 1");
                        });
    }

    @Test
    void emptyBodiesAndWrongRootsAreRefused() {
        assertThat(faults("")).extracting(Finding::code).containsExactly("json.malformed");
        assertThat(faults("[]")).extracting(Finding::code).contains("json.wrong-type");
        assertThat(faults("null")).extracting(Finding::code).contains("json.wrong-type");
    }

    @Test
    void notANumberIsNotJson() {
        assertThat(faults(changed("\"lengthMm\":600", "\"lengthMm\":NaN")))
                .extracting(Finding::code)
                .containsExactly("json.malformed");
    }

    @Test
    void aNameThatStandsTwiceIsRefused() {
        assertThat(faults(changed("\"name\":", "\"datum\":\"N1\",\"name\":")))
                .extracting(Finding::code)
                .containsExactly("json.malformed");
    }

    @Test
    void somethingAfterTheEndIsRefused() {
        assertThat(faults(RIGHT + "{}"))
                .extracting(Finding::code)
                .containsExactly("json.malformed");
    }

    @Test
    void deepNestingIsRefused() {
        assertThat(faults("[".repeat(5_000)))
                .extracting(Finding::code)
                .containsExactly("json.malformed");
    }

    @Test
    void aNumberAsTextIsAWrongType() {
        assertFault(
                changed("\"lengthMm\":600", "\"lengthMm\":\"600\""),
                "json.wrong-type",
                "/segments/0/lengthMm");
    }

    @Test
    void aLengthFinerThanAMicrometreIsRefused() {
        assertFault(
                changed("\"lengthMm\":600", "\"lengthMm\":600.0001"),
                "json.number-too-fine",
                "/segments/0/lengthMm");
    }

    @Test
    void anAbsurdExponentIsRefusedAtOnce() {
        assertFault(
                changed("\"lengthMm\":600", "\"lengthMm\":1e999999999"),
                "json.number-too-fine",
                "/segments/0/lengthMm");
    }

    @Test
    void aFieldThatDoesNotExistIsRefused() {
        assertFault(
                changed("\"lengthMm\":600", "\"lengthMm\":600,\"colour\":\"red\""),
                "json.unknown-field",
                "/segments/0/colour");
    }

    @Test
    void aMissingFieldIsNamed() {
        assertFault(changed("\"lengthMm\":600,", ""), "json.missing-field", "/segments/0/lengthMm");
    }

    @Test
    void unpairedSurrogatesAndControlCharactersAreRefused() {
        assertFault(
                changed("\"id\":\"N1\"", "\"id\":\"N\\\\ud800\""),
                "json.text-malformed",
                "/nodes/0/id");
        assertFault(
                changed("\"id\":\"N1\"", "\"id\":\"N\\\\u0000\""),
                "json.text-malformed",
                "/nodes/0/id");
    }

    @Test
    void anUnknownWordListsTheKnownOnes() {
        assertThat(faults(changed("\"hand\":\"right\"", "\"hand\":\"middle\"")))
                .singleElement()
                .satisfies(finding -> assertThat(finding.text()).contains("right, left"));
    }

    @Test
    void colourLettersMustHaveTheShapeOfTheCode() {
        assertFault(
                changed("\"colour\":\"", "\"colour\":\"zz9"),
                "loom.colour-unknown",
                "/wires/0/colour");
    }

    private static String withDevice(String fields) {
        return changed("\"kind\":\"fuse-box\"", "\"kind\":\"fuse-box\"," + fields);
    }

    @Test
    void whatNobodySaysOfADeviceIsNotWritten() {
        assertThat(RIGHT).contains("\"kind\":\"fuse-box\"");
        for (String field :
                List.of(
                        "serves",
                        "ratingA",
                        "voltageV",
                        "needsEarth",
                        "fuses",
                        "takes",
                        "fitted")) {
            assertThat(RIGHT).doesNotContain("\"" + field + "\"");
        }
    }

    @Test
    void everyParticularOfADeviceIsRead() {
        assertThat(
                        faults(
                                withDevice(
                                        """
                                        "serves":"horns","ratingA":30,"voltageV":12,"needsEarth":"negative",
                                        "fuses":[{"from":"1","to":"2","style":"blade","markedA":15.5}]
                                        """)))
                .isEmpty();
    }

    @Test
    void aFuseThatSaysTooLittleOrTooMuchIsRefusedWithItsPlace() {
        assertThat(
                        faults(
                                withDevice(
                                        """
                                        "ratingA":1.0001,"fuses":[{"from":"1","style":"wire","markedA":"15","colour":"blue"}]
                                        """)))
                .extracting(finding -> finding.code() + " " + finding.subject().pointer())
                .containsExactlyInAnyOrder(
                        "json.number-too-fine /devices/1/ratingA",
                        "json.missing-field /devices/1/fuses/0/to",
                        "json.unknown-word /devices/1/fuses/0/style",
                        "json.wrong-type /devices/1/fuses/0/markedA",
                        "json.unknown-field /devices/1/fuses/0/colour");
    }

    @Test
    void whatIsLeftOutMayNotBeNull() {
        assertFault(withDevice("\"serves\":null"), "json.wrong-type", "/devices/1/serves");
        assertFault(withDevice("\"needsEarth\":null"), "json.wrong-type", "/devices/1/needsEarth");
    }

    @Test
    void aTerminalIsFittedBeforeOrAfterTheCoveringOrEither() {
        String at = "\"terminal\":\"bullet-4.7\"";
        assertThat(faults(changed(at, at + ",\"fitted\":\"before-covering\""))).isEmpty();
        assertFault(
                changed(at, at + ",\"fitted\":\"later\""),
                "json.unknown-word",
                "/wires/0/a/fitted");
    }

    @Test
    void allFaultsAreReportedTogether() {
        String json =
                changed("\"lengthMm\":600", "\"lengthMm\":true")
                        .replaceFirst("\"hand\":\"right\"", "\"hand\":7")
                        .replaceFirst("\"datum\":\"N1\",", "");
        assertThat(faults(json))
                .extracting(finding -> finding.subject().pointer())
                .containsExactlyInAnyOrder("/segments/0/lengthMm", "/vehicle/hand", "/datum");
    }

    @Test
    void coloursOfTheLoomComeBackAndAreLeftOutWhereThereAreNone() {
        assertThat(RIGHT).doesNotContain("customColours");
        String gold = "{\"letters\":\"XD\",\"name\":\"gold\",\"swatch\":\"#c9a227\"}";
        String coloured =
                RIGHT.substring(0, RIGHT.length() - 1) + ",\"customColours\":[" + gold + "]}";

        LoomDocument read =
                StrictJson.parse(coloured.getBytes(StandardCharsets.UTF_8))
                        .then(LoomReader::read)
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));

        assertThat(read.customColours()).containsExactly(new CustomColour("XD", "gold", "#c9a227"));
        assertThat(LoomWriter.write(read).toString()).isEqualTo(coloured);
        assertThat(LoomWriter.write(read.withCustomColours(List.of())).toString()).isEqualTo(RIGHT);
        assertFault(
                coloured.replace("\"swatch\"", "\"shade\":1,\"swatch\""),
                "json.unknown-field",
                "/customColours/0/shade");
    }
}
