package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.testing.RandomLooms;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

class RandomDocumentsProperties {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatIsWrittenIsReadBack(long seed) {
        LoomDocument document = RandomLooms.documentOf(seed, RandomLooms.Size.CAR);
        String text = LoomWriter.write(document).toString();

        Outcome<LoomDocument> read =
                StrictJson.parse(text.getBytes(StandardCharsets.UTF_8)).then(LoomReader::read);

        assertThat(read).isEqualTo(Outcome.accepted(document.ordered()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theContentHashDoesNotDependOnTheOrderOfTheLists(long seed) {
        LoomDocument document = RandomLooms.documentOf(seed, RandomLooms.Size.CAR);
        LoomDocument shuffled = shuffled(document, new Random(seed));

        assertThat(shuffled).isNotEqualTo(document);
        assertThat(hash(shuffled)).isEqualTo(hash(document));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theContentHashChangesWithTheContent(long seed) {
        LoomDocument document = RandomLooms.documentOf(seed, RandomLooms.Size.SMALL);
        LoomDocument renamed =
                new LoomDocument(
                        document.name() + " 2",
                        document.vehicle(),
                        document.datum(),
                        document.nodes(),
                        document.segments(),
                        document.devices(),
                        document.wires(),
                        document.checks());
        assertThat(hash(renamed)).isNotEqualTo(hash(document));
    }

    private static String hash(LoomDocument document) {
        return CanonicalJson.of(LoomWriter.write(document)).hash();
    }

    private static LoomDocument shuffled(LoomDocument document, Random random) {
        return new LoomDocument(
                document.name(),
                document.vehicle(),
                document.datum(),
                shuffled(document.nodes(), random),
                shuffled(document.segments(), random),
                shuffled(document.devices(), random),
                shuffled(document.wires(), random),
                shuffled(document.checks(), random));
    }

    private static <T> List<T> shuffled(List<T> parts, Random random) {
        List<T> copy = new ArrayList<>(parts);
        Collections.shuffle(copy, random);
        return copy;
    }
}
