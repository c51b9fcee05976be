package org.loomwright.document.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.document.pdf.Table.Column;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

class FlowTest {

    private static final TextStyle STYLE = TextStyle.of(Face.REGULAR, 9);

    private final Flow flow = new Flow(Paper.A4);

    private List<String> pages() {
        return PdfPages.texts(write(flow));
    }

    static byte[] write(Flow flow) {
        DocumentFacts facts =
                new DocumentFacts(
                        "t", "a", "s", "k", "en-GB", LocalDate.of(2027, 1, 31), "identity");
        return new PdfFile(facts, (canvas, paper, page, of) -> {})
                .write(flow.pages(), flow.bookmarks());
    }

    private static Table table() {
        return new Table(List.of(Column.words("Heading", 1), Column.figures("mm", 1)));
    }

    private static Cell cell(String text) {
        return Cell.of(text, STYLE);
    }

    @Test
    void theHeadingsOfATableComeAgainOnEveryPage() {
        Table table = table();
        IntStream.range(0, 200).forEach(i -> table.row(cell("row" + i + "."), cell("1")));

        flow.table(table);

        assertThat(pages()).hasSize(5).allMatch(page -> page.startsWith("Heading mm row"));
        assertThat(PdfPages.solid(write(flow))).contains(rows(200));
    }

    private static String[] rows(int count) {
        return IntStream.range(0, count).mapToObj(i -> "row" + i + ".").toArray(String[]::new);
    }

    @Test
    void aRowIsNotTornFromOnePageToTheNext() {
        Table table = table();
        for (int i = 0; i < 60; i++) {
            table.row(cell("first" + i + ".\nmiddle\nlast" + i + "."), cell("1"));
        }

        flow.table(table);

        List<String> pages = pages();
        assertThat(pages).hasSizeGreaterThan(2);
        for (int i = 0; i < 60; i++) {
            String first = "first" + i + ".";
            String last = "last" + i + ".";
            assertThat(pages)
                    .filteredOn(page -> page.contains(first))
                    .singleElement()
                    .matches(page -> page.contains(last));
        }
    }

    @Test
    void aRowHigherThanAPageGoesOnWithoutLosingALine() {
        String tall = String.join("\n", rows(150));

        flow.table(table().row(cell(tall), cell("1")));

        assertThat(pages()).hasSize(3).allMatch(page -> page.startsWith("Heading mm row"));
        assertThat(PdfPages.solid(write(flow))).contains(rows(150));
    }

    @Test
    void aGroupsHeadIsNeverTheLastRowOfAPage() {
        for (int before = 30; before < 60; before++) {
            Flow own = new Flow(Paper.A4);
            Table table = table();
            IntStream.range(0, before).forEach(i -> table.row(cell("row"), cell("1")));
            table.group(cell("Group")).row(cell("member"), cell("1"));
            own.table(table);

            assertThat(PdfPages.texts(write(own)))
                    .filteredOn(page -> page.contains("Group"))
                    .singleElement()
                    .matches(page -> page.contains("member"));
        }
    }

    @Test
    void aRowWithTheWrongNumberOfCellsIsRefused() {
        assertThatThrownBy(() -> table().row(cell("alone")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 cells");
    }

    @Test
    void aLongParagraphGoesOnOnTheNextPage() {
        flow.text("word ".repeat(4000) + "end");

        List<String> pages = pages();
        assertThat(pages).hasSizeGreaterThan(1);
        assertThat(String.join(" ", pages).split("word", -1)).hasSize(4001);
        assertThat(pages.getLast()).contains("end");
    }
}
