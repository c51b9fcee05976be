package org.loomwright.document.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.routing.CutLength;
import org.loomwright.document.pdf.PdfPages;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.WireChange;
import org.loomwright.document.sheet.content.WireWork;
import org.loomwright.document.sheet.style.Type;
import org.loomwright.testing.TestCatalogue;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.SimpleBookmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

class JobSheetPdfTest {

    private static final List<String> SECTIONS =
            List.of(
                    "1 Summary",
                    "2 Loom drawing",
                    "3 Wires to add, change and remove",
                    "4 Cut list",
                    "5 Branch schedule",
                    "6 Bundle cross-sections of the branches that change",
                    "7 Electrical summary",
                    "8 Colours",
                    "9 Findings that the customer accepts",
                    "10 What nobody has said yet",
                    "11 Checks, their limits and sources",
                    "12 Cautions",
                    "13 Sign-off");

    @Test
    void everyPageCarriesWorkOrderRevisionHashAndItsNumberOfHowMany() {
        List<String> pages = PdfPages.texts(JobSheetPdf.write(DemoJob.sheet()));

        assertThat(pages).hasSizeGreaterThan(5);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains("work order " + TestJobs.NUMBER)
                    .contains("Content hash " + TestJobs.HASH)
                    .contains("Page %d of %d".formatted(i + 1, pages.size()));
        }
    }

    @Test
    void everyWireToMakeIsPrintedWithEveryPartOfItsCutLength() {
        JobSheet sheet = DemoJob.sheet();
        String text = String.join(" ", PdfPages.texts(JobSheetPdf.write(sheet)));

        List<WireChange> made =
                new WireWork(sheet.change(), sheet.amendments(), sheet.catalogue()).made();
        assertThat(made).hasSizeGreaterThan(20);
        for (WireChange wire : made) {
            CutLength cut = sheet.change().after().getCutLength(wire.wire().id());
            assertThat(text)
                    .containsPattern(
                            "%s %s %s %s %s .{1,60} %s "
                                    .formatted(
                                            wire.wire().id(),
                                            wire.wire().circuit(),
                                            Figures.exactMm(cut.alongLoom()),
                                            Figures.exactMm(cut.tailA()),
                                            Figures.exactMm(cut.tailB()),
                                            Figures.exactMm(cut.cut())));
        }
    }

    @Test
    void anOpeningThatNoLongerPassesSaysSoInWordsWithWhatWouldFit() {
        String text = String.join(" ", PdfPages.texts(JobSheetPdf.write(DemoJob.sheet())));

        assertThat(text)
                .containsPattern(
                        "Opening O26, grommet .{1,80}: NO LONGER PASSES\\. A grommet of 12 mm");
    }

    @Test
    void theDrawingIsPrintedAtItsOwnScaleAndEveryBranchThatChangesIsCutThrough() {
        JobSheet sheet = DemoJob.drawn();
        List<String> pages = PdfPages.texts(JobSheetPdf.write(sheet));

        assertThat(pages.get(1)).contains("2 Loom drawing").doesNotContain("reduced to fit");
        String text = String.join(" ", pages);
        String cuts = text.substring(text.indexOf("6 Bundle cross-sections"));
        sheet.change().segments().stream()
                .filter(segment -> segment.isChanged())
                .forEach(segment -> assertThat(cuts).contains("Segment " + cutName(segment)));
        assertThat(cuts).contains("Segment S01, before").contains("Segment S01, after");
    }

    private static String cutName(SegmentChange segment) {
        return segment.segment() + (segment.before() == null ? "" : ", after");
    }

    @Test
    void theSameSheetGivesTheSameBytes() {
        assertThat(JobSheetPdf.write(TestJobs.spotLamps()))
                .isEqualTo(JobSheetPdf.write(TestJobs.spotLamps()));
    }

    @Test
    void anotherRevisionGivesAnotherIdentifier() {
        JobSheet sheet = TestJobs.nothing();
        byte[] one = JobSheetPdf.write(sheet);
        byte[] other = JobSheetPdf.write(TestJobs.withHash(sheet, "0".repeat(64)));

        assertThat(identifier(one)).isNotEqualTo(identifier(other)).hasSize(2);
    }

    private static List<PdfObject> identifier(byte[] file) {
        return PdfPages.open(file).getTrailer().getAsArray(PdfName.ID).getElements().stream()
                .toList();
    }

    @Test
    void everyFontIsEmbeddedAsASubset() {
        PdfReader reader = PdfPages.open(JobSheetPdf.write(TestJobs.spotLamps()));

        List<PdfDictionary> descriptors = dictionaries(reader, new PdfName("FontDescriptor"));
        assertThat(descriptors).hasSize(3);
        assertThat(descriptors)
                .allSatisfy(
                        descriptor -> {
                            assertThat(descriptor.get(PdfName.FONTFILE2)).isNotNull();
                            assertThat(descriptor.get(PdfName.FONTNAME).toString())
                                    .matches("/[A-Z]{6}\\+LiberationSans.*");
                        });
    }

    private static List<PdfDictionary> dictionaries(PdfReader reader, PdfName type) {
        List<PdfDictionary> found = new ArrayList<>();
        for (int i = 0; i < reader.getXrefSize(); i++) {
            if (reader.getPdfObject(i) instanceof PdfDictionary dictionary
                    && type.equals(dictionary.get(PdfName.TYPE))) {
                found.add(dictionary);
            }
        }
        return found;
    }

    @Test
    void theFileSaysWhatItIsAndInWhichLanguageAndIsTagged() {
        PdfReader reader = PdfPages.open(JobSheetPdf.write(TestJobs.spotLamps()));

        assertThat(reader.getInfo())
                .containsEntry("Title", "Job sheet LW-2027-0042, sketch")
                .containsEntry("Author", "Tenter Lane Loom Works")
                .containsEntry("Subject", "Rebinding of sketch, revision 3")
                .containsEntry("CreationDate", "D:20270308000000Z")
                .containsEntry("ModDate", "D:20270308000000Z");
        PdfDictionary catalogue = reader.getCatalog();
        assertThat(catalogue.get(PdfName.LANG)).hasToString("en-GB");
        assertThat(catalogue.getAsDict(PdfName.VIEWERPREFERENCES).get(PdfName.DISPLAYDOCTITLE))
                .hasToString("true");
        assertThat(catalogue.getAsDict(PdfName.MARKINFO).get(PdfName.MARKED)).hasToString("true");
        assertThat(catalogue.get(PdfName.STRUCTTREEROOT)).isNotNull();
    }

    @Test
    void thereIsABookmarkForEverySection() {
        PdfReader reader = PdfPages.open(JobSheetPdf.write(TestJobs.spotLamps()));

        List<?> bookmarks = SimpleBookmark.getBookmarkList(reader);
        assertThat(bookmarks)
                .map(bookmark -> String.valueOf(((Map<?, ?>) bookmark).get("Title")))
                .map(title -> title.replaceAll(" +", " "))
                .isEqualTo(SECTIONS);
    }

    @Test
    void aLongCircuitNameIsPrintedToItsLastLetter() {
        String name = "Reversinglampsandradiofeed".repeat(11).substring(0, 280) + "LASTLETTERS";

        byte[] file = JobSheetPdf.write(TestJobs.crowd(1, name));

        assertThat(PdfPages.solid(file).split(name, -1)).hasSizeGreaterThan(2);
    }

    @Test
    void aLoomOfThreeHundredNewWiresRepeatsTheHeadingsOnEveryPageOfATable() {
        List<String> pages = PdfPages.texts(JobSheetPdf.write(TestJobs.crowd(300, "fog lamps")));

        String text = String.join(" ", pages);
        for (int i = 1; i <= 300; i++) {
            String id = "X%03d".formatted(i);
            assertThat(text.split(id + " fog lamps", -1)).as(id).hasSize(3);
        }
        assertThat(pages)
                .filteredOn(page -> page.matches(".*X\\d\\d\\d fog lamps.*"))
                .hasSizeGreaterThan(15)
                .allMatch(page -> page.contains("Wire Circuit"));
    }

    @Test
    void aColourThatOnlyTheLoomHasIsPrintedWithItsNameAndSwatch() {
        JobSheet sheet = TestJobs.goldTracer();

        assertThat(String.join(" ", PdfPages.texts(JobSheetPdf.write(sheet))))
                .contains("GXD", "green with gold", "IN NO LIST: say it in words")
                .doesNotContain("green with XD");
        assertThat(Type.swatch(WireColour.parse("GXD"), sheet.catalogue()).tracer())
                .isEqualTo(new Ink("#c9a227"));
        assertThat(SheetPictures.of(sheet.change(), TestCatalogue.get(), "").branches())
                .isNotEmpty()
                .allSatisfy(
                        branch ->
                                assertThat(branch.scene().shapes())
                                        .anyMatch(
                                                shape ->
                                                        shape instanceof Shape.Area area
                                                                && new Ink("#c9a227")
                                                                        .equals(area.fill())));
    }

    @Test
    void anEmptySetOfChangesIsSaidInWords() {
        String text = String.join(" ", PdfPages.texts(JobSheetPdf.write(TestJobs.nothing())));

        assertThat(text)
                .contains("Wires to add: 0 No wire is added.")
                .contains("No wire is changed.")
                .contains("No wire is removed.")
                .contains("No wire is to be cut.")
                .contains("5 wires of the amended loom stay as they are");
    }

    @Test
    void whatIsNotKnownIsSaidInWords() {
        JobSheet sheet = TestJobs.bare();

        String text = String.join(" ", PdfPages.texts(JobSheetPdf.write(sheet)));

        assertThat(text)
                .contains("Due not agreed yet")
                .contains("This sheet was made without a drawing.")
                .contains("No cross-sections are shown on this sheet.");
    }

    @Test
    void earthHandAndVoltageStandOnTheFirstPage() {
        assertThat(PdfPages.texts(JobSheetPdf.write(TestJobs.nothing())).getFirst())
                .contains("POSITIVE EARTH")
                .contains("RIGHT-HAND DRIVE")
                .contains("12 V");
    }

    @Test
    void aSheetWithoutAProperHashIsRefused() {
        assertThatThrownBy(() -> TestJobs.withHash(TestJobs.nothing(), "abc"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("abc");
    }
}
